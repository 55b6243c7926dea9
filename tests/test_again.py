"""A signed day stands under the rule book it was signed under; what today's book would say is shown beside it."""

from __future__ import annotations

import json
import uuid
from datetime import date

import pytest
from jsonschema import Draft202012Validator

from desk import PAGE, open_desk
from handing import picture
from logbook import rules, store
from logbook.cli import main
from logbook.store import Reckoner, catch_up
from logbook.store.again import again
from logbook.worker import Bench, work_once

DAY, LATER = "2026-10-14", "2026-10-15"
SAID = "Straight {mark} on run two, eighteen by twelve, stapled every two, taped."


@pytest.fixture
def desk(tmp_path):
    made = open_desk(tmp_path)
    made.hand_in(text=SAID.format(mark=1), spoken_at=f"{DAY}T10:00:00-05:00")
    with made.folder() as folder:
        work_once(folder, Bench(None))
    return made


def sign(desk, day=DAY):
    with desk.folder() as folder:
        act = store.sign(folder, str(uuid.uuid4()), date.fromisoformat(day), desk.ids["lead"], "lead")
    assert act.act == "signed", act
    return act


def limit(desk, line: str):
    """A setting of the job file is written anew."""
    file = desk.settings.folder / "job.toml"
    file.write_text(file.read_text().replace("[limits]", f"[limits]\n{line}", 1))


def reckon(desk, reckoner=None):
    with desk.folder() as folder:
        return catch_up(folder, reckoner or Reckoner())


def spacing(desk, mark="1") -> dict:
    with desk.folder() as folder:
        (piece,) = (one for one in store.each_piece(folder, "en") if one["mark"] == mark)
    return next(finding for finding in piece["findings"] if finding["rule"] == "staple-spacing")


def everything(desk) -> list:
    with desk.folder() as folder:
        return [list(folder.db.execute(f"SELECT * FROM {table}")) for table in ("pieces", "findings", "questions", "acts", "journal", "about")]


@pytest.mark.parametrize("restarted", [False, True])
def test_a_signed_day_keeps_its_findings_when_a_limit_changes(desk, restarted):
    reckoner = Reckoner()
    reckon(desk, reckoner)
    sign(desk)
    before = spacing(desk)
    limit(desk, "staple_spacing = 1")
    reckon(desk, Reckoner() if restarted else reckoner)
    desk.hand_in(text=SAID.format(mark=2), spoken_at=f"{LATER}T10:00:00-05:00")
    with desk.folder() as folder:
        work_once(folder, Bench(None))
    reckon(desk, Reckoner() if restarted else reckoner)
    assert spacing(desk) == before and before["verdict"] == "meets" and before["limit"] == 2
    assert spacing(desk, "2")["verdict"] == "departs", "what is made after the change is judged by it"


def test_a_day_that_nobody_signed_is_judged_by_the_new_limit(desk):
    limit(desk, "staple_spacing = 1")
    assert reckon(desk), "a process that starts after the change sees that the book is another"
    assert spacing(desk)["verdict"] == "departs"
    assert not reckon(desk), "and does nothing a second time"


def test_words_added_later_are_judged_by_the_book_that_was_signed(desk):
    sign(desk)
    limit(desk, "staple_spacing = 1")
    desk.hand_in(text="Correction, straight 1 on run two, stapled every one and a half.", spoken_at=f"{LATER}T10:00:00-05:00")
    with desk.folder() as folder:
        work_once(folder, Bench(None))
    found = spacing(desk)
    assert found["reckoned"]["spacing_in"] == 1.5 and found["limit"] == 2 and found["verdict"] == "meets"


def test_a_day_keeps_the_book_of_its_first_signature(desk):
    sign(desk)
    limit(desk, "staple_spacing = 1")
    sign(desk)
    with desk.folder() as folder:
        digest, job = store.books.book_of_day(folder, DAY)
        assert job.limit("staple_spacing") == 2 and digest == rules.book_digest(job) != rules.book_digest(folder.job)


def test_the_schedule_that_held_is_kept_with_the_signature(desk):
    """Wherever in the folder it lies, and whatever else lies there."""
    (desk.settings.folder / "plans").mkdir()
    plan = desk.settings.folder / "plans" / "schedule.csv"
    plan.write_text("mark,run,kind,inlet\n1,2,straight,18x12\n")
    (desk.settings.folder / "other.csv").write_bytes(b"\xff\xfe no text")
    file = desk.settings.folder / "job.toml"
    file.write_text(file.read_text() + '\n[[schedule]]\nfile = "plans/schedule.csv"\nrevision = "A"\n')
    reckon(desk)
    sign(desk)
    plan.write_text("mark,run,kind,inlet\n1,2,straight,20x12\n")
    reckon(desk)
    with desk.folder() as folder:
        (piece,) = store.each_piece(folder, "en")
        planned = next(one for one in piece["findings"] if one["rule"] == "as-planned")
        assert planned["verdict"] == "meets" and folder.job.revision().rows[0].inlet[0] == 20


def test_today_s_book_is_shown_beside_what_was_signed_and_nothing_is_written(desk, capsys):
    sign(desk)
    limit(desk, "staple_spacing = 1")
    reckon(desk)
    before = everything(desk)
    assert main(["check", "--again", DAY, "--folder", str(desk.settings.folder)]) == 1
    shown = capsys.readouterr().out
    assert "staple-spacing" in shown and "Nothing that was signed is changed" in shown
    assert "2 in." in shown and "1 in." in shown
    assert everything(desk) == before
    assert main(["check", "--again", DAY, "--folder", str(desk.settings.folder), "--language", "es"]) == 1
    assert "guardado" in capsys.readouterr().out


def test_the_document_says_rule_by_rule_what_is_the_same(desk, capsys):
    sign(desk)
    limit(desk, "staple_spacing = 1")
    main(["check", "--again", DAY, "--folder", str(desk.settings.folder), "--json"])
    found = json.loads(capsys.readouterr().out)
    assert list(Draft202012Validator(AGAIN).iter_errors(found)) == []
    (piece,) = found["pieces"]
    other = [row["rule"] for row in piece["findings"] if not row["same"]]
    assert other == ["staple-spacing"] and found["differ"] == 1 and found["signed"] and found["kept_under"] != found["today"]


def test_under_the_same_book_nothing_differs(desk, capsys):
    sign(desk)
    assert main(["check", "--again", DAY, "--folder", str(desk.settings.folder)]) == 0
    assert "says the same of all 1 pieces" in capsys.readouterr().out


def test_a_standing_word_that_came_later_stands_only_in_today_s_book(desk, capsys):
    sign(desk)
    file = desk.settings.folder / "job.toml"
    file.write_text(file.read_text().replace("[standing]", '[standing]\nair_leaves_by = "female"', 1))
    assert main(["check", "--again", DAY, "--folder", str(desk.settings.folder), "--json"]) == 0
    (piece,) = json.loads(capsys.readouterr().out)["pieces"]
    row = next(row for row in piece["findings"] if row["rule"] == "air-leaves-by")
    assert (row["kept"]["verdict"], row["today"]["verdict"], row["same"]) == ("unsaid", "meets", False)


def test_what_a_piece_leans_on_is_looked_at_on_other_runs_and_days_too(desk):
    """A photo of another run's piece, a neighbour of another day: both books find the same of them."""
    one = picture(3)
    desk.hand_in(text="Straight 5 on run three, eighteen by twelve, taped.", photo=[one], spoken_at=f"{DAY}T12:00:00-05:00")
    desk.hand_in(text="Straight 2 on run two, twenty by twelve, taped, joined to 1.", photo=[one], spoken_at=f"{LATER}T12:00:00-05:00")
    with desk.folder() as folder:
        work_once(folder, Bench(None))
        reckon(desk)
        (told,) = again(folder, LATER, "en")["pieces"]
    rows = {row["rule"]: row for row in told["findings"]}
    assert rows["photo-reused"]["today"]["verdict"] == "departs" and rows["run-sizes"]["today"]["verdict"] == "departs"
    assert [row for row in rows.values() if not row["same"]] == []


@pytest.mark.parametrize("who", ["lead", "contractor"])
def test_the_page_shows_then_and_now_with_what_became_otherwise_first(desk, who):
    desk.hand_in(text="Elbow 9 on run two, ten by ten, turning vanes in, taped.", spoken_at=f"{DAY}T11:00:00-05:00")
    with desk.folder() as folder:
        work_once(folder, Bench(None))
    sign(desk)
    limit(desk, "staple_spacing = 1")
    reckon(desk)
    reader = desk.browser(who)
    assert f"/day/{DAY}/again" in reader.get(f"/day/{DAY}", headers=PAGE).text
    before = everything(desk)
    page = reader.get(f"/day/{DAY}/again", headers=PAGE).text.split("<main")[1]
    assert everything(desk) == before, "a page that compares writes nothing"
    assert "This day is signed" in page and "1 times, in 1 pieces" in page
    changed, alike = page.split("Pieces of which both books say the same: 1")
    assert "Straight section 1" in changed and "elbow 9" in alike.lower() and "elbow 9" not in changed.lower()
    first_row = changed.split("<tbody>")[1].split("</tr>")[0]
    then, now = first_row.split("<td")[2:4]
    assert "Staple spacing" in first_row and "meets" in then and "2 in." in then and "departs" in now and "1 in." in now and "For the lead." in now


def test_the_page_of_a_day_without_notes_or_of_no_day_says_so(desk):
    lead = desk.browser("lead")
    assert "no note of 2026-01-01" in lead.get("/day/2026-01-01/again", headers=PAGE).text
    assert lead.get("/day/soon/again", headers=PAGE).status_code in (400, 422)
    assert desk.browser("installer").get(f"/day/{DAY}/again", headers=PAGE).status_code == 403


@pytest.mark.parametrize(
    ("line", "words"),
    [(["--again", "yesterday"], "2026-10-13"), (["--again", "2026-01-01"], "no note"), (["--again", DAY, "--job", "job.toml"], "--folder")],
)
def test_what_cannot_be_compared_is_refused(desk, capsys, line, words):
    assert main(["check", *line, "--folder", str(desk.settings.folder)]) == 2
    assert words in capsys.readouterr().err


SIDE = {
    "type": ["object", "null"], "additionalProperties": False, "required": ["verdict", "shows", "limit", "says"],
    "properties": {"verdict": {"enum": ["meets", "departs", "unsaid", "unclear"]}, "shows": {"enum": ["flag", "ask", "count", "file"]}, "limit": True, "says": {"type": "string"}},
}  # fmt: skip
AGAIN = {
    "type": "object", "additionalProperties": False, "required": ["day", "signed", "kept_under", "today", "pieces", "differ"],
    "properties": {
        "day": {"type": "string"}, "signed": {"type": "boolean"}, "kept_under": {"type": ["string", "null"]}, "today": {"type": "string"}, "differ": {"type": "integer"},
        "pieces": {"type": "array", "items": {"type": "object", "required": ["piece", "mark", "run", "kind", "findings"], "properties": {"findings": {"type": "array", "items": {
            "type": "object", "required": ["rule", "same", "kept", "today"], "properties": {"kept": SIDE, "today": SIDE}}}}}},
    },
}  # fmt: skip
