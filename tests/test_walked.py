"""Spot checks, walk answers and leak tests as acts of the log: kept, proven by the journal, shown, and never changed."""

from __future__ import annotations

import io
import re
import uuid
from datetime import date

import pytest

from desk import PAGE, open_desk
from handing import picture
from logbook import store
from logbook.store import doctoring, walked
from logbook.walk import lots
from logbook.worker import Bench, work_once

DAY = date(2026, 10, 14)
GOOD = "Straight {mark} on run two, eighteen by twelve, forty-eight long, stapled every two, flap stapled, taped with 181A-P, rubbed down, scrim shows, air leaves by the female end, step to the inside."
LEAK = {
    "section": "run 2", "pressure": "1", "area": "360", "measured": "18", "instrument": "orifice tube", "tested_on": "2026-10-14", "calibrated_on": "2026-01-10",
    "calibrated_until": "2026-10-01", "tested_by": "Ada Fenn", "witness": "Moss Pike",
}  # fmt: skip


@pytest.fixture(scope="module")
def desk(tmp_path_factory):
    made = open_desk(tmp_path_factory.mktemp("walked"))
    for mark in range(1, 7):
        assert made.hand_in(text=GOOD.format(mark=mark), photo=[picture(mark)]).status_code == 201
    assert made.hand_in(text="Elbow nine on run two, twelve by ten, ninety, no vanes.").status_code == 201
    with made.folder() as folder:
        work_once(folder, Bench(None))
    return made


def an_id() -> str:
    return str(uuid.uuid4())


def drawn(desk, count=3):
    with desk.folder() as folder:
        act = walked.draw_spot(folder, an_id(), DAY, desk.ids["lead"], count)
    return act.document


def answers_of(desk, piece, off=(), hidden=()):
    with desk.folder() as folder:
        said = lots.sayings(store.piece_document(folder, piece, "en"))
    return [{"name": one.name, "answer": "otherwise" if one.name in off else "not_seen" if one.name in hidden else "as_said", "value": 4, "words": "every four" if one.name in off else ""} for one in said]


def test_a_draw_can_be_shown_again_from_the_log(desk):
    kept = drawn(desk)
    assert len(kept["drawn"]) == 3 and len(kept["among"]) == 6, "the elbow without vanes is not drawn from"
    assert tuple(kept["drawn"]) == lots.draw(kept["seed"], kept["among"], kept["first"], 3)
    with desk.folder() as folder:
        again = walked.draw_spot(folder, kept["id"], DAY, desk.ids["lead"], 3)
        assert again.repeated and again.document["drawn"] == kept["drawn"], "the same press draws nothing new"
        assert walked.draws(folder, DAY)[-1]["seed"] == kept["seed"]


def test_two_draws_have_seeds_of_their_own(desk):
    assert drawn(desk)["seed"] != drawn(desk)["seed"]


def test_a_second_draw_of_the_day_takes_others_and_can_be_shown_again_too(tmp_path):
    desk = open_desk(tmp_path)
    for mark in range(1, 8):
        desk.hand_in(text=GOOD.format(mark=mark), photo=[picture(mark)])
    with desk.folder() as folder:
        work_once(folder, Bench(None))
    first, second, third = (drawn(desk) for _ in range(3))
    assert "before" not in first, "the first draw of a day is written as ever"
    assert not set(first["drawn"]) & set(second["drawn"]) and len(second["drawn"]) == 3
    assert second["before"] == sorted(first["drawn"]) and third["before"] == sorted({*first["drawn"], *second["drawn"]})
    left = set(third["among"]) - set(third["before"])
    assert len(left) == 1 and third["drawn"][0] in left, "the one that nobody drew yet comes first, then the hat is full again"
    for one in (first, second, third):
        assert tuple(one["drawn"]) == lots.draw(one["seed"], one["among"], one["first"], 3, one.get("before", ()))
    page = desk.browser("lead").get("/walk?date=2026-10-14", headers=PAGE).text
    assert page.count('<span class="mark">drawn before</span>') == 2 and "had taken before came last" in page


@pytest.mark.parametrize(("day", "count", "key"), [(date(2026, 1, 1), 3, "walk.nothing-to-draw"), (DAY, 0, "walk.count"), (DAY, 99, "walk.count"), (DAY, "3", "walk.count")])
def test_a_draw_that_cannot_be_is_refused(desk, day, count, key):
    with desk.folder() as folder:
        assert walked.draw_spot(folder, an_id(), day, desk.ids["lead"], count).key == key


def test_a_look_is_kept_beside_what_was_said_and_otherwise_than_said_is_a_finding(desk):
    piece = drawn(desk)["drawn"][0]
    with desk.folder() as folder:
        before = store.piece_document(folder, piece, "en")
        id, body = an_id(), {"how": "measured", "found": answers_of(desk, piece, off=("staple_spacing",))}
        kept = walked.keep_look(folder, id, piece, body, desk.ids["lead"])
        off = [one for one in kept.document["found"] if one["answer"] == "otherwise"]
        assert [(one["name"], one["said"], one["found"], one["words"]) for one in off] == [("staple_spacing", 2, 4, "every four")]
        assert walked.newest_looks(folder)[piece]["id"] == kept.id
        work_once(folder, Bench(None))
        after = store.piece_document(folder, piece, "en")
        assert after["facts"] == before["facts"], "nobody's words are overwritten"
        found = next(one for one in after["findings"] if one["rule"] == "looked-agrees")
        assert (found["verdict"], found["shows"], found["stands"]) == ("departs", "flag", "open")
        assert {one["name"]: one["value"] for one in after["looked"]}["staple_spacing"] == 4
        again = walked.keep_look(folder, id, piece, body, desk.ids["lead"])
        assert again.repeated and len(store.piece_document(folder, piece, "en")["decisions"]) == len(after["decisions"])


def test_only_drawn_pieces_and_never_ones_own(desk):
    first = drawn(desk)["drawn"][0]
    with desk.folder() as folder:
        elbow = next(one["id"] for one in store.logged(folder) if one["kind"] == "elbow")
        body = {"how": "seen", "found": answers_of(desk, first)}
        assert walked.keep_look(folder, an_id(), elbow, body, desk.ids["lead"]).key == "walk.not-drawn"
        assert walked.keep_look(folder, an_id(), first, body, desk.ids["installer"]).key == "walk.own-work"
        assert walked.keep_look(folder, an_id(), "none", body, desk.ids["lead"]).key == "store.no-piece"


def test_the_desk_tells_said_against_found(desk):
    client = desk.browser("lead")
    kept = drawn(desk, 6)
    page = client.get("/walk?date=2026-10-14", headers=PAGE).text
    assert kept["seed"] in page
    link = re.search(r'href="(/walk/look/[^"]+)"', page).group(1)
    piece = link.rsplit("/", 1)[1]
    form = client.get(link, headers=PAGE).text
    assert 'name="of-kind-value"><option value=""></option>' in form and 'name="of-inlet_size-one"' in form, "nothing is chosen beforehand"
    fields = {"csrf_token": re.search(r'name="csrf_token" value="([^"]+)"', form).group(1), "id": an_id(), "how": "seen"}
    for one in answers_of(desk, piece, off=("staple_spacing",)):
        fields |= {f"answer-{one['name']}": one["answer"], f"words-{one['name']}": one["words"]}
    half = dict(fields)
    fields["of-staple_spacing-value"] = "3-1/2"
    refused = client.post(link, data=half, headers=PAGE)
    assert refused.status_code == 422 and 'value="otherwise" checked' in refused.text, "what was pressed stays on the page"
    fields["photo"] = (io.BytesIO(picture(77)), "far side.jpg")
    done = client.post(link, data=fields, headers=PAGE)
    assert done.status_code == 303 and done.location == link, "otherwise than said leads to the piece"
    told = client.get("/walk", headers=PAGE).text
    assert re.search(r"<b>\d of \d pieces had something otherwise than said", told) and "of all pieces could be otherwise" in told
    again = client.get(link, headers=PAGE).text
    assert "found 3-1/2 in.: every four" in again and "until it is settled there" in again


def test_a_walk_is_answered_by_form_with_a_photo_and_all_of_it_or_nothing(desk):
    client = desk.browser("lead")
    page = client.get("/walk/list?area=run:2", headers=PAGE).text
    fields = {"csrf_token": re.search(r'name="csrf_token" value="([^"]+)"', page).group(1), "id": an_id(), "area": "run:2", "answer-g1": "yes", "answer-f4": "no"}
    assert client.post("/walk/list", data=fields, headers=PAGE).status_code == 422
    with desk.folder() as folder:
        assert walked.walk_answers(folder) == []
    fields |= {"words-f4": "mastic piled up behind seven", "photo-f4": (io.BytesIO(picture(88)), "pile.jpg")}
    done = client.post("/walk/list", data=fields, headers=PAGE)
    assert done.status_code == 303 and "kept=2" in done.location
    with desk.folder() as folder:
        work_once(folder, Bench(None))
        kept = {one["question"]: one for one in walked.walk_answers(folder)}
        assert set(kept) == {"g1", "f4"} and kept["f4"]["by"] == desk.ids["lead"] and kept["f4"]["at"]
        shot = kept["f4"]["photos"][0]
        assert store.original(folder, shot).read_bytes() == picture(88)
    assert desk.by_key("contractor", "GET", f"/walk/photos/{shot}").status_code == 200
    assert "mastic piled up" in client.get("/walk/release?area=run:2", headers=PAGE).text
    found = client.get("/search?q=piled", headers=PAGE).text
    assert "mastic <mark>piled</mark> up" in found and "/walk/list?area=run:2" in found, "a remark is found and leads to its list"


@pytest.mark.parametrize("path", ["/walk/list?area=run:77", "/walk/release?area=", "/walk/look/none"])
def test_what_is_not_there_is_told(desk, path):
    assert desk.by_key("lead", "GET", path, headers=PAGE).status_code == 404


def test_a_leak_test_says_that_the_calibration_had_run_out(desk):
    kept = desk.by_key("lead", "POST", "/leaks", json=LEAK | {"id": an_id()})
    assert kept.status_code == 201
    assert (kept.json["allowed_cfm"], kept.json["verdict"], kept.json["why"]) == (21.6, "unclear", "calibration-over")
    page = desk.by_key("contractor", "GET", "/leaks", headers=PAGE).text
    assert "the calibration had run out before the test" in page and "Keep a leak test" not in page
    right = desk.by_key("lead", "POST", "/leaks", json=LEAK | {"id": an_id(), "calibrated_until": "2027-01-10", "instead_of": kept.json["id"]})
    assert right.json["verdict"] == "meets"
    assert "Set right by a later record" in desk.by_key("lead", "GET", "/leaks", headers=PAGE).text
    assert desk.by_key("lead", "POST", "/leaks", json=LEAK | {"id": an_id(), "instead_of": an_id()}).status_code == 422
    assert "run 2" in desk.by_key("lead", "GET", "/walk/release?area=run:2", headers=PAGE).text


def test_a_refused_record_keeps_what_was_typed(desk):
    client = desk.browser("lead")
    page = client.get("/leaks", headers=PAGE).text
    fields = LEAK | {"csrf_token": re.search(r'name="csrf_token" value="([^"]+)"', page).group(1), "id": an_id(), "measured": "many", "serial": "QX-19"}
    refused = client.post("/leaks", data=fields, headers=PAGE)
    assert refused.status_code == 422 and 'value="QX-19"' in refused.text and "Measured leakage (cfm): a number was expected" in refused.text


def test_the_journal_proves_every_act_and_the_doctor_finds_nothing(desk):
    with desk.folder() as folder:
        work_once(folder, Bench(None))
    found = doctoring.examine(desk.settings.folder, mend=False)
    assert [one.key for one in found.problems] == []
    with desk.folder() as folder:
        acts = {row["act"] for row in store.journal.rows(folder)}
    assert {"spot_drawn", "spot_looked", "walk_answered", "leak_tested", "picture_received"} <= acts


def test_an_act_is_never_changed(desk):
    import sqlite3

    with desk.folder() as folder, pytest.raises(sqlite3.IntegrityError):
        folder.db.execute("UPDATE acts SET content = '{}' WHERE act = 'leak_tested'")


def test_the_job_on_one_page_counts_what_the_log_holds(desk):
    page = desk.by_key("contractor", "GET", "/job", headers=PAGE).text
    assert "nobody can say what is missing" in page and page.count('class="slot') == 7
    assert 'class="slot open"' in page and "elbow 9" in page
    assert desk.by_key("contractor", "GET", "/job?run=77", headers=PAGE).text.count('class="slot') == 0
    assert desk.by_key("contractor", "GET", "/job/planned.svg?mark=7", headers=PAGE).status_code == 404
    assert desk.by_key("installer", "GET", "/job", headers=PAGE).status_code == 403


# --- the day on paper


def signed(desk, role="lead", **body):
    return desk.by_key(role, "POST", "/days/2026-10-14/signatures", json={"id": an_id()} | body)


def test_the_report_is_made_when_it_is_asked_for_and_holds_what_was_seen(desk):
    for kind, head in (("pdf", b"%PDF"), ("html", b"<!doc"), ("json", b"{")):
        answer = desk.by_key("contractor", "GET", f"/day/2026-10-14/report.{kind}")
        assert answer.status_code == 200 and answer.data.startswith(head)
    report = answer.json["reports"][0]
    assert report["spot_check"]["rows"] and report["must_know"]["seen"][0].startswith("Spot check:")
    both = desk.by_key("contractor", "GET", "/day/2026-10-14/report.json?in=both").json
    assert both["languages"] == ["en", "es"]
    assert desk.by_key("contractor", "GET", "/day/2026-01-01/report.pdf").status_code == 404


def test_signing_keeps_the_bytes_and_what_is_said_afterwards_makes_a_new_edition(desk):
    content = desk.by_key("lead", "GET", "/day/2026-10-14/report.json").json["content"]
    assert f'name="report" value="{content}"' in desk.by_key("lead", "GET", "/day/2026-10-14", headers=PAGE).text
    act = signed(desk, report=content)
    assert (act.status_code, act.json["report"]) == (201, content)
    kept = {path.suffix: path.read_bytes() for path in (desk.settings.folder / "reports" / "signed").glob(f"day-2026-10-14-{content[:12]}.*")}
    assert set(kept) == {".pdf", ".html", ".json"} and b"Ada Fenn" in kept[".json"], "the kept bytes carry the signature"
    assert desk.hand_in(text="Straight twelve on run two, eighteen by twelve, stapled every two.", spoken_at="2026-10-14T15:00:00-05:00").status_code == 201
    with desk.folder() as folder:
        work_once(folder, Bench(None))
    late = signed(desk, report=content)
    assert late.status_code == 409 and "changed" in late.json["error"], "nobody signs what he has not read"
    again = desk.by_key("lead", "POST", "/days/2026-10-14/signatures", json={"id": act.json["id"], "report": content})
    assert again.status_code == 200 and again.json == act.json
    newer = desk.by_key("lead", "GET", "/day/2026-10-14/report.json").json
    assert newer["edition"] == 2 and any("new in the report" in line for line in newer["reports"][0]["changes"]["rows"])
    assert {path.suffix: path.read_bytes() for path in (desk.settings.folder / "reports" / "signed").glob(f"day-2026-10-14-{content[:12]}.*")} == kept


def test_a_script_signs_what_the_log_holds_now(desk):
    act = signed(desk, "contractor")
    assert act.status_code == 201 and act.json["report"] == desk.by_key("lead", "GET", "/day/2026-10-14/report.json").json["content"]


def test_a_day_without_notes_cannot_be_signed(desk):
    assert desk.by_key("lead", "POST", "/days/2026-01-02/signatures", json={"id": an_id()}).status_code in (404, 422)


def test_the_desk_and_the_day_tell_the_spot_check(desk):
    piece = drawn(desk)["drawn"][0]
    with desk.folder() as folder:
        assert walked.keep_look(folder, an_id(), piece, {"how": "seen", "found": answers_of(desk, piece, off=("staple_spacing",))}, desk.ids["lead"]).id
    page = desk.by_key("lead", "GET", "/desk", headers=PAGE).text
    with desk.folder() as folder:
        told = walked.spot_summary(folder, DAY)
    assert told["looked"] and told["off"] and f"So far {told['off']} of {told['looked']} pieces" in page
    assert "Spot check:" in desk.by_key("contractor", "GET", "/day/2026-10-14", headers=PAGE).text


def test_short_pieces_stand_in_the_areas_of_whole_ones(desk):
    from logbook.walk import areas

    with desk.folder() as folder:
        plan = folder.job.revision(None)
        short, whole = (areas.areas(plan, found) for found in (walked.short_pieces(folder)[0], list(store.each_piece(folder, "en"))))
    assert [(one.key, [piece["id"] for piece in one.pieces]) for one in short] == [(one.key, [piece["id"] for piece in one.pieces]) for one in whole]


@pytest.mark.parametrize("planned", [False, True])
def test_of_a_long_log_pieces_are_counted_as_they_would_be_listed(desk, planned):
    """The pages of the job and of its areas read no piece that they do not name."""
    from logbook import lineup, schedule
    from logbook.walk import areas

    with desk.folder() as folder:
        every, counted = store.lineup(folder)
        rows = tuple(schedule.Row(mark=one["mark"], line=at, run=one["run"], kind=one["kind"], area="Level 2" if at else None) for at, one in enumerate(every[1:4]) if one["mark"])
        plan = schedule.revision("r1", None, rows) if planned else None
        marks = lineup.planned_marks(plan)
        listed = lineup.lines(plan, every)
        assert counted == [] and len(every) > 3
        some, rest = store.lineup(folder, marks, most=0)
        assert [(line.run, line.counts, line.size) for line in lineup.lines(plan, some, rest)] == [(line.run, line.counts, line.size) for line in listed]
        assert sum(count for *_, count in rest) + len(some) == len(every) and rest
        for wanted in [line.run for line in listed]:
            found = lineup.lines(plan, *store.lineup(folder, marks, wanted or "", 0))
            assert [line.slots for line in found if line.run == wanted] == [line.slots for line in listed if line.run == wanted]
        whole = areas.areas(plan, *walked.short_pieces(folder))
        short = areas.areas(plan, *walked.short_pieces(folder, marks, 0))
        assert [(one.key, len(one.pieces) + one.more, areas.missing(one)) for one in short] == [(one.key, len(one.pieces), areas.missing(one)) for one in whole]


def test_the_package_is_written_by_a_press_and_taken_by_the_contractor(desk):
    from logbook.handover.verify import WHOLE, verify

    assert desk.by_key("contractor", "POST", "/closeout", json={}).status_code == 403
    page = desk.by_key("contractor", "GET", "/closeout", headers=PAGE).text
    assert "No package has been written yet. The lead or the office writes it on this page" in page and "Write a new package" not in page
    assert desk.by_key("lead", "POST", "/closeout", json={"language": "en"}).status_code == 202
    desk.app.extensions["closing"].thread.join(60)
    taken = desk.by_key("contractor", "GET", "/package")
    out = desk.settings.folder.parent / "taken.zip"
    out.write_bytes(taken.data)
    told = verify(out)
    assert (told.status, told.problems) == (WHOLE, [])
    from hashlib import sha256

    page = desk.by_key("contractor", "GET", "/closeout", headers=PAGE).text
    assert page.count(sha256(taken.data).hexdigest()) == 2, "beside the package, and as the journal keeps it"
    assert "The log has grown since" not in page
    reader = desk.browser("contractor")
    assert "The log has grown since" not in reader.get("/closeout", headers=PAGE).text, "who comes in to read adds nothing to the log"
    desk.hand_in(text="Straight ninety on run nine, 18 by 12.")
    page = reader.get("/closeout", headers=PAGE).text
    assert "The log has grown since" in page and "Write a new one" not in page, "nobody is told to press what is not his to press"
    assert "Write a new one" in desk.by_key("lead", "GET", "/closeout", headers=PAGE).text


def test_a_package_that_could_not_be_written_says_why(desk, tmp_path):
    from logbook.web import closing

    desk_of = closing.Desk()
    closing._write(desk_of, tmp_path / "no-job", tmp_path / "out.zip", "en", __import__("datetime").datetime.now())
    assert desk_of.problem.key == "store.no-folder"


@pytest.mark.parametrize("planned", [True, False])
def test_one_area_read_by_itself_holds_what_it_holds_among_all(tmp_path, planned):
    from logbook import lineup, schedule
    from logbook.walk import areas

    said = (
        "Straight {} on run two, 18 by 12.", "Straight {}, 18 by 12.", "Straight {} on run bravo, 18 by 12.", "Straight {} on run Bravo, 18 by 12, in the kitchen.",
        "Straight {}, 18 by 12, in the Kitchen.", "Straight {} on run two, 18 by 12, in the hall.",
    )  # fmt: skip
    desk = open_desk(tmp_path)
    for mark in range(1, 19):
        assert desk.hand_in(text=said[mark % len(said)].format(mark), spoken_at=f"2026-10-14T08:{mark:02}:00-05:00").status_code == 201
    with desk.folder() as folder:
        work_once(folder, Bench(None))
        rows = tuple(schedule.Row(mark=str(mark), line=mark, run="2" if mark < 4 else None, kind="straight", area="Hall" if mark % 2 else None) for mark in (1, 2, 3, 8, 40))
        plan = schedule.revision("r1", None, rows) if planned else None
        every = areas.areas(plan, *walked.short_pieces(folder, lineup.planned_marks(plan)))
        assert {one.what for one in every} >= {areas.PLACE, areas.RUN, areas.NOWHERE} | ({areas.AREA} if planned else set())
        for one in every:
            near = walked.pieces_in(folder, one.what, one.name, {row.mark for row in one.rows})
            alone = next(each for each in areas.areas(plan, near) if each.key.casefold() == one.key.casefold())
            assert (alone.rows, sorted(p["id"] for p in alone.pieces)) == (one.rows, sorted(p["id"] for p in one.pieces)), one.key
            assert len(near) < 18
