"""Hold points: what waits behind each, who released it, and what opened since. "Hold point" is the trade's own word."""

from __future__ import annotations

import re
import uuid
from dataclasses import replace
from datetime import date

import pytest

from desk import NAMES, PAGE, finding, open_desk, piece_of, work
from logbook import holds, store
from logbook import job as jobs
from logbook.job import Hold, canonical
from logbook.store import holding, proving
from logbook.wording import say
from logbook.worklist import Item

TODAY = date(2026, 10, 14)
JOB = """
id = "qmvtkrha"
name = "Test job"
zone = "America/Chicago"
[photos]
wanted = false
[holds.ceiling]
name = "before the ceiling closes"
runs = ["2"]
[holds.test]
name = "before the leak test"
runs = ["5"]
"""
OFF = "Straight seven on run two, eighteen by twelve, stapled every three, taped with 181A-P, rubbed down."


@pytest.fixture(scope="module")
def planned(tmp_path_factory):
    folder = tmp_path_factory.mktemp("job")
    (folder / "schedule.csv").write_text("mark,run,kind,area\n7,2,straight,hall\n8,2,straight,rooms\n9,3,straight,hall\n", encoding="utf-8")
    return jobs.parse('[[schedule]]\nfile = "schedule.csv"\n', folder=folder)


def item(mark: str | None = "7", run: str | None = "2", edition: str = "e") -> Item:
    return Item(f"piece {mark}", "taped", edition, "unsaid", "open", run, mark)


@pytest.mark.parametrize(
    ("hold", "mark", "run", "behind"),
    [
        (Hold("h", "the whole job"), None, None, True),
        (Hold("h", "a run", runs=("2",)), "7", "2", True),
        (Hold("h", "a run", runs=("2",)), "9", "3", False),
        (Hold("h", "a run, as people write it", runs=("Run-2",)), "7", "run 2", True),
        (Hold("h", "a run", runs=("2",)), "7", None, True),  # nobody said which run: it may be this one
        (Hold("h", "an area", area="Hall"), "7", "2", True),
        (Hold("h", "an area", area="hall"), "8", "2", False),
        (Hold("h", "an area", area="hall"), "77", "2", True),  # not on the schedule: nobody knows where it is
        (Hold("h", "runs and an area", runs=("2",), area="hall"), "8", "2", True),
        (Hold("h", "runs and an area", runs=("2",), area="hall"), "9", "3", True),
        (Hold("h", "runs and an area", runs=("4",), area="rooms"), "9", "3", False),
    ],
)
def test_what_waits_behind_a_hold_point(planned, hold, mark, run, behind):
    assert holds.covers(hold, item(mark, run), planned, TODAY) is behind


def test_what_opens_after_a_release_is_told_apart_from_what_was_open_then():
    job = replace(jobs.DEFAULT, holds={"h": Hold("h", "the whole job")})
    released = {"act": "released", "hold": "h", "open": [{"piece": "piece 7", "rule": "taped", "edition": "e"}]}
    [before] = holds.standing(job, [], [item("7")], TODAY)
    assert before.release is None and before.since == ()
    [one] = holds.standing(job, [released], [item("7"), item("8")], TODAY)
    assert one.release is released and [i.mark for i in one.open] == ["7", "8"] and [i.mark for i in one.since] == ["8"]
    [other_words] = holds.standing(job, [released], [item("7", edition="f")], TODAY)
    assert [i.mark for i in other_words.since] == ["7"], "the same finding on other words was not released"
    [again] = holds.standing(job, [released, {"act": "held_again", "hold": "h"}], [item("7")], TODAY)
    assert again.release is None and len(again.acts) == 2


def test_the_job_file_names_hold_points_and_they_change_no_finding():
    job = jobs.parse(JOB)
    assert job.holds["ceiling"] == Hold("ceiling", "before the ceiling closes", ("2",))
    assert canonical(job) == canonical(replace(job, holds={}))


@pytest.mark.parametrize(
    ("text", "key", "line"),
    [
        ("[holds.a]\nruns = [\"1\"]\n", "job.missing-key", 1),
        ("[holds.a]\nname = \"x\"\nrun = \"1\"\n", "job.unknown-key", 3),
        ("[holds.a]\nname = \"x\"\nruns = \"1\"\n", "job.wrong-value", 3),
    ],
)
def test_a_hold_point_with_a_fault_is_refused_with_its_line(text, key, line):
    [wrong] = jobs.parse(text)
    assert (wrong.key, wrong.where) == (key, f"job.toml:{line}")


# --- over the store and on screen


@pytest.fixture
def desk(tmp_path):
    made = open_desk(tmp_path)
    (made.settings.folder / "job.toml").write_text(JOB, encoding="utf-8")
    made.hand_in(text=OFF)
    work(made)
    return made


def press(desk, hold: str, **fields):
    client = desk.browser("lead")
    form = {"csrf_token": client.get("/me").json["csrf"], "id": str(uuid.uuid4())}
    return client.post(f"/holds/{hold}", data=form | fields, headers=PAGE)


def test_a_hold_point_says_what_is_open_behind_it(desk):
    page = desk.browser("lead").get("/holds", headers=PAGE).text
    assert say("holds.open", "en", count=1) in page and f"/desk/{piece_of(desk, '7')}/staple-spacing" in page
    assert "before the ceiling closes" in desk.browser("lead").get("/desk", headers=PAGE).text


def test_the_press_is_in_reach_however_much_is_open_and_all_of_it_stays_in_reach(desk):
    for first, last in ((20, 31), (32, 43), (44, 55)):
        desk.hand_in(text=f"Straight sections {first} through {last} on run two, 18 by 12, stapled every three, taped with 181A-P, rubbed down.")
    work(desk)
    page = desk.browser("lead").get("/holds", headers=PAGE).text
    before_press, after = page.split(say("holds.release", "en"), 1)[0], page.split(say("holds.release-press", "en"), 1)[1].split("</section>", 1)[0]
    behind = re.compile(r'<li class="departs"><span></span><a href="/desk/([^/]+)/staple-spacing"')
    assert say("holds.open", "en", count=37) in before_press, "what is released over is told before the press"
    assert len(behind.findall(before_press)) == 3 and before_press.split("<section", 1)[1].count("<details") == 1, "the most serious ones, in sight"
    assert say("holds.others", "en", count=34) in after and len(behind.findall(after)) == 34
    assert len({*behind.findall(before_press), *behind.findall(after)}) == 37, "each once"


def test_what_opened_since_a_release_stands_before_what_was_open_then(desk):
    desk.hand_in(text="Straight sections 20 through 25 on run two, 18 by 12, stapled every three, taped with 181A-P, rubbed down.")
    work(desk)
    assert press(desk, "ceiling", words="As agreed.").status_code == 303
    desk.hand_in(text=OFF.replace("seven", "ninety"), spoken_at="2026-10-14T12:00:00-05:00")
    work(desk)
    page = desk.browser("lead").get("/holds", headers=PAGE).text
    assert page.index(f"/desk/{piece_of(desk, '90')}/") < page.index(say("holds.hold-again", "en"))
    first = re.search(r'<ul class="work"><li[^>]*><span></span><a href="/desk/([^/]+)/', page).group(1)
    assert first == piece_of(desk, "90")


def test_a_release_over_something_open_needs_a_reason_and_keeps_what_was_open(desk):
    refused = press(desk, "ceiling", witness="the inspector")
    assert refused.status_code == 422 and say("holds.no-words.cure", "en") in refused.text and "the inspector" in refused.text
    assert press(desk, "ceiling", words="The piece hangs over the shaft, it stays open.", witness="the inspector").status_code == 303
    with desk.folder() as folder:
        [act] = holding.release_acts(folder.db)
    edition = finding(desk, "7", "staple-spacing")["edition"]
    assert act["open"] == [{"piece": piece_of(desk, "7"), "rule": "staple-spacing", "edition": edition}]
    page = desk.browser("contractor").get("/holds", headers=PAGE).text
    assert NAMES["lead"] in page and "the inspector" in page and say("holds.open-then", "en", count=1) in page


def test_nothing_open_needs_no_reason_and_a_second_release_is_refused(desk):
    assert press(desk, "test").status_code == 303
    assert press(desk, "test").status_code == 422
    assert press(desk, "test", again="yes").status_code == 422, "to hold again needs a reason"
    assert press(desk, "test", again="yes", words="The door was cut in after all.").status_code == 303
    with desk.folder() as folder:
        assert [act["act"] for act in holding.release_acts(folder.db)] == ["released", "held_again"]


def test_what_opens_since_a_release_is_shown(desk):
    press(desk, "test")
    desk.hand_in(text=OFF.replace("seven on run two", "eight on run five"), spoken_at="2026-10-14T12:00:00-05:00")
    work(desk)
    page = desk.browser("lead").get("/holds", headers=PAGE).text
    assert say("holds.since", "en", count=1) in page
    listed = desk.browser("lead").get("/desk", headers=PAGE).text
    assert say("holds.opened-since", "en", name="before the leak test", count=1) in re.sub(r"\s+", " ", listed)


def test_a_release_is_an_act_that_can_be_repeated_and_stands_in_the_journal(desk):
    same = {"id": str(uuid.uuid4()), "words": "As agreed."}
    assert [desk.by_key("lead", "POST", "/holds/ceiling", json=same).status_code for _ in range(2)] == [201, 200]
    assert desk.by_key("lead", "POST", "/holds/none", json=same | {"id": str(uuid.uuid4())}).status_code == 422
    assert desk.by_key("contractor", "POST", "/holds/ceiling", json=same).status_code == 403
    with desk.folder() as folder:
        assert [row["act"] for row in store.journal.rows(folder)].count("released") == 1


def test_a_release_that_was_written_over_is_found(desk):
    desk.by_key("lead", "POST", "/holds/ceiling", json={"id": str(uuid.uuid4()), "words": "As agreed."})
    with desk.folder() as folder:
        assert not [one for one in proving.contents(folder.db, proving.Compared()) if one.key == "store.content-altered"]
        folder.db.execute("DROP TRIGGER acts_stay")
        folder.db.execute("UPDATE acts SET content = replace(content, 'As agreed', 'Approved') WHERE act = 'released'")
        assert [one.values["act"] for one in proving.contents(folder.db, proving.Compared()) if one.key == "store.content-altered"] == ["released"]
