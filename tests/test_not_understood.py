"""Words of the work that nobody understood, from the answer to the day: they are told once, asked once, and end with an answer."""

from __future__ import annotations

import re
import tomllib
import uuid

import pytest

from desk import PAGE, finding, open_desk, piece_of, work
from logbook.findings.not_followed import OWNERS
from logbook.reading import matters, read
from logbook.wording import LANGUAGES, has, say
from test_desk import Lead

TAPE = "the tape has a mind of its own behind the beam"
SMILES = "but the tape smiles at me"
FLAGGED = f"Straight 4 on run two, 12 by 8, stapled every two, {TAPE}."
ASKED = f"Straight 6 on run two, 12 by 8, stapled every two, taped, rubbed down, {SMILES}."
SPACING = "Straight 7 on run two, 12 by 8, stapled every two, but the staples play three card tricks in the corner, taped with 181A-P, rubbed down."


@pytest.fixture
def desk(tmp_path):
    return open_desk(tmp_path)


def told(desk, *texts) -> list[str]:
    ids = [desk.hand_in(text=text, spoken_at=f"2026-10-14T10:{at:02}:00-05:00").json["id"] for at, text in enumerate(texts)]
    work(desk)
    return ids


def document(desk, note) -> dict:
    return desk.by_key("lead", "GET", f"/notes/{note}").json


def press(desk, note, name, value) -> None:
    done = desk.by_key("installer", "POST", f"/notes/{note}/corrections", json={"id": str(uuid.uuid4()), "position": 0, "name": name, "value": value})
    assert done.status_code == 201, done.text
    work(desk)


def day(desk) -> tuple[str, list, list]:
    """(the page, words under "not understood" of the report, what its open list says)."""
    report = desk.by_key("lead", "GET", "/day/2026-10-14/report.json").json["reports"][0]
    page = desk.browser("lead").get("/day/2026-10-14", headers=PAGE).text
    return page, [words for row in report["not_understood"]["rows"] for words in row["says"]], [row["says"] for row in report["open"]["rows"]]


MATTERS = sorted({name for *_, names in matters._ROWS for name in names})


def question(name: str, language: str) -> str:
    key = f"rules.{OWNERS[name]}.not-understood.do"
    return say(key, language) if has(key, language) else ""


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", MATTERS)
def test_each_matter_has_its_own_question(name, language):
    assert "?" in question(name, language), f"{OWNERS[name]} asks for {name} by its label alone"


@pytest.mark.parametrize(
    ("name", "language", "words"), [(name, language, words) for name in MATTERS for language in LANGUAGES for words in re.findall(r'"([^"]+)"', question(name, language))]
)
def test_the_words_that_a_question_proposes_are_understood(name, language, words):
    """Nobody is told to say what nobody would follow. A proposal that ends in a gap is said with a number."""
    said = words if not words.endswith((" every", " of", " cada", " de")) else f"{words} {'three' if language == 'en' else 'tres'} {'inches' if language == 'en' else 'pulgadas'}"
    reading = read(said.capitalize() + ".", language=language)
    assert name in {fact.name for entry in reading.fittings for fact in entry.facts} and not reading.unread


def test_words_that_a_finding_quotes_stand_nowhere_else_on_the_entry(desk):
    (note,) = told(desk, FLAGGED)
    (unread,) = document(desk, note)["unread"]
    assert (unread["words"], unread["about"], unread["stands"]) == (TAPE, ["taped"], "asked")
    page = desk.browser("installer").get(f"/entry/{note}", headers=PAGE).text
    assert f'<span class="said unread">{TAPE}</span>' in page, "marked among his words"
    assert "data-unread" not in page, "no box beside the question"
    assert f'<p class="says">Said and not understood: &#34;{TAPE}&#34;.</p><p class="question">Is it taped all around? Say &#34;taped all around&#34;, or what is not.</p>' in page


def test_two_sayings_about_one_matter_are_quoted_in_one_question(desk):
    (note,) = told(desk, f"{FLAGGED[:-1]}, and the tape smiles at me.")
    found = finding(desk, "4", "taped")
    assert found["evidence"] == [TAPE, "and the tape smiles at me"] and all(f'"{words}"' in found["says"] for words in found["evidence"])
    assert [one["stands"] for one in document(desk, note)["unread"]] == ["asked", "asked"]


@pytest.mark.parametrize(("pressed", "verdict"), [(True, "meets"), (False, "departs")])
def test_a_press_answers_them_and_their_box_is_gone_too(desk, pressed, verdict):
    (note,) = told(desk, FLAGGED)
    press(desk, note, "taped", pressed)
    after = document(desk, note)
    assert finding(desk, "4", "taped")["verdict"] == verdict
    assert [one["stands"] for one in after["unread"]] == ["answered"], "the words themselves stay in the log"
    assert "data-unread" not in desk.browser("installer").get(f"/entry/{note}", headers=PAGE).text


def test_the_value_that_was_said_pressed_once_more_answers_for_a_length(desk):
    (note,) = told(desk, SPACING)
    asked = finding(desk, "7", "staple-spacing")
    assert (asked["verdict"], asked["asks"]) == ("unclear", "staple_spacing") and "How far apart" in asked["do"]
    press(desk, note, "staple_spacing", 2)
    assert finding(desk, "7", "staple-spacing")["verdict"] == "meets"


def test_a_press_about_something_else_answers_nothing(desk):
    (note,) = told(desk, FLAGGED)
    press(desk, note, "rubbed_down", True)
    assert [one["stands"] for one in document(desk, note)["unread"]] == ["asked"] and finding(desk, "4", "taped")["verdict"] == "unclear"


def test_a_later_note_in_other_words_answers_them(desk):
    note, _ = told(desk, FLAGGED, "Straight 4 on run two is taped.")
    assert [one["stands"] for one in document(desk, note)["unread"]] == ["answered"]


def test_the_day_tells_them_once(desk):
    told(desk, FLAGGED, ASKED)
    page, loose, open_list = day(desk)
    assert loose == [SMILES], "what nobody has to settle stands under its own head"
    assert sum(TAPE in says for says in open_list) == 1 and page.count(TAPE) == 1
    assert "Said and not understood, Wednesday, October 14, 2026: 1" in desk.browser("lead").get("/desk", headers=PAGE).text


def test_what_was_answered_has_left_the_day(desk):
    flagged, asked = told(desk, FLAGGED, ASKED)
    press(desk, flagged, "taped", True)
    press(desk, asked, "taped", True)
    page, loose, open_list = day(desk)
    assert loose == [] and TAPE not in page and SMILES not in page
    assert "Said and not understood" not in desk.browser("lead").get("/desk", headers=PAGE).text


def test_the_lead_sets_it_right_looks_or_asks_back(desk):
    told(desk, FLAGGED, FLAGGED.replace("Straight 4", "Straight 5"), FLAGGED.replace("Straight 4", "Straight 8"))
    lead = Lead(desk)
    page = lead.page(f"/desk/{piece_of(desk, '4')}/taped")
    assert TAPE in page and say("desk.evidence", "en") not in page, "the finding quotes them; they are not told again as evidence"
    assert 'name="name" value="taped"' in page, "the fact that would answer it stands in the form"
    assert lead.settle("4", "taped", "heard_wrong", name="taped", value="yes", reason="he says it is closed").status_code == 303
    assert lead.settle("5", "taped", "looked", name="taped", value="yes", how="felt", reason="went there").status_code == 303
    assert lead.settle("8", "taped", "asked", owner=desk.ids["installer"], due="2026-12-01", reason="what is it with the tape?").status_code == 303
    work(desk)
    assert finding(desk, "4", "taped")["verdict"] == "meets"
    assert finding(desk, "5", "taped")["stands"] == "settled"
    waits = finding(desk, "8", "taped")
    assert waits["stands"] == "open" and waits["wants"]["reason"] == "what is it with the tape?"


# --- "Is this 3?"


@pytest.fixture
def planned(desk):
    (desk.settings.folder / "schedule.csv").write_text("mark,run,kind,inlet\n12,2,straight,20x14\n40,3,straight,20x14\n")
    job = desk.settings.folder / "job.toml"
    job.write_text(job.read_text() + '\n[[schedule]]\nfile = "schedule.csv"\nrevision = "B"\n')
    assert tomllib.loads(job.read_text())["schedule"]
    return desk


def test_a_question_that_names_a_mark_offers_it_and_the_press_tells_the_mark_alone(planned):
    (note,) = told(planned, "Straight 2 on run two, 20 by 14.")
    asked = finding(planned, "2", "as-planned")
    assert (asked["case"], asked["offers"]) == ("maybe-another-mark", ["12"]) and "Is this 12?" in asked["says"]
    before = {one["rule"]: one["verdict"] for one in document(planned, note)["fittings"][0]["findings"]}
    press(planned, note, "mark", "12")
    after = document(planned, note)
    assert "heard_right" not in after and "confirmed" not in after, "a yes to the mark is no yes to the words"
    (fitting,) = after["fittings"]
    assert {one["name"]: one["via"] for one in fitting["facts"]} == {"kind": "typed", "mark": "pressed", "run": "typed", "inlet_size": "typed"}
    changed = {one["rule"] for one in fitting["findings"] if one["verdict"] != before.get(one["rule"])}
    assert changed == {"as-planned"}, "nothing that was unsaid is said by it"


def test_a_mark_that_may_be_any_offers_none(planned):
    told(planned, "Straight 77 on run two, 20 by 14.")
    assert "offers" not in finding(planned, "77", "as-planned")
