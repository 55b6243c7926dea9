"""The sections of the day report, from documents in the contract's shapes."""

import json
from dataclasses import replace
from pathlib import Path

import paper_days
import pytest
from jsonschema import Draft202012Validator

from logbook.day import SECTIONS, Planned, document, missing, report

MADE_AT = "2026-10-13T17:05:00-05:00"


@pytest.fixture(scope="module")
def day():
    return paper_days.one_day()


def figures(day):
    return {one["name"]: one["number"] for one in report(day, "en")["must_know"]["figures"]}


def test_sections_stand_in_the_order_they_are_printed(day):
    assert [*report(day, "en")][1:] == [name for name, _ in SECTIONS]
    assert [name for name, _ in SECTIONS][:4] == ["heading", "must_know", "open", "missing"]


def test_figures_count_sayings(day):
    assert figures(day) == {
        "made": "5", "hung": "1", "joined": "1", "open": "3", "in-hand": "1", "settled": "2", "missing": "1",
        "looked": "1", "measured": "1", "tested": "1",
    }  # fmt: skip


def test_what_was_said_looked_at_measured_and_tested_never_share_a_column(day):
    rows = {row["what"]: row for row in report(day, "en")["register"]["rows"]}
    elbow, cap = rows["elbow 5"], rows["end cap 13"]
    assert (elbow["looked"], elbow["measured"], elbow["tested"]) == ("Dana W.", "Dana W.", "run 2, as said")
    assert (cap["looked"], cap["measured"]) == ("–", "–")
    assert rows["elbow 6"]["tested"] == "–", "a test of run 2 says nothing of a piece whose run nobody said"


def test_marks_come_in_counting_order(day):
    assert [sheet["mark"] for sheet in report(day, "en")["fittings"]["sheets"]] == ["4", "5", "13", "B-12", "6"], "what has no run comes last"


def test_missing_are_the_rows_of_todays_runs_that_nobody_logged(day):
    assert [row.mark for row in missing(day)] == ["7"], "run 9 was not worked on today; B12 is B-12"
    assert missing(replace(day, planned=None)) is None
    assert missing(replace(day, logged=[("2", "7")])) == []


def test_without_a_schedule_the_report_says_that_nobody_can_tell(day):
    bare = replace(day, planned=None)
    assert figures(bare)["missing"] == "–"
    assert "nobody can say what is missing" in report(bare, "en")["missing"]["nothing"]


def test_an_empty_day_claims_nothing():
    empty = replace(paper_days.one_day(), notes=[], pieces=[])
    told = report(empty, "en")
    assert told["register"]["nothing"] == "No fitting was logged on this day."
    assert "no approval" in told["open"]["nothing"]
    assert told["must_know"]["temperature"]["text"] == "not said"


def test_a_decision_stands_with_its_finding(day):
    tee = next(sheet for sheet in report(day, "en")["fittings"]["sheets"] if sheet["mark"] == "B-12")
    spacing = next(one for one in tee["findings"] if one["rule"] == "staple-spacing")
    assert spacing["decisions"][0]["line"].startswith("concession: accepted as it is. Dana W., 12:25")
    assert spacing["stands_text"] == "settled"


def test_what_is_still_to_do_is_printed_as_it_was_said():
    day = paper_days.one_day()
    day.pieces[0]["open_items"] = [{"text": "far side still needs tape", "about": "piece", "denies": "taped", "start": 0, "end": 1}]
    day.notes[1]["photos_to_come"] = ["a" * 64]
    sheet = report(day, "en")["fittings"]["sheets"][0]
    assert sheet["open_items"] == ["far side still needs tape"]
    assert sheet["photos_to_come"] == "Announced photos that have not come: 1"


def test_a_decision_on_earlier_words_says_so(day):
    other = paper_days.one_day()
    other.pieces[2]["decisions"][0]["edition"] = "0" * 64
    tee = next(sheet for sheet in report(other, "en")["fittings"]["sheets"] if sheet["mark"] == "B-12")
    assert "made on earlier words" in tee["findings"][0]["decisions"][0]["more"]


def test_departures_and_silences_are_plotted_beside_what_holds(day):
    plots = {plot["rule"]: plot for plot in report(day, "en")["limits"]["plots"]}
    assert "run 2 · 4: 2.67 in 12, limit 2." in plots["transition-slope"]["told"]
    assert "run 2 · 13: not said." in plots["staple-spacing"]["told"]


def test_content_is_the_same_for_the_same_day_and_another_after_a_change(day):
    one, again = (document({"en": paper_days.one_day()}, at)["content"] for at in (MADE_AT, "2026-10-14T08:00:00-05:00"))
    assert one == again
    other = paper_days.one_day()
    other.pieces[0]["findings"][0]["stands"] = "closed"
    assert document({"en": other}, MADE_AT)["content"] != one


def test_content_is_the_same_in_whatever_language_it_is_printed(day):
    assert len({document(days, MADE_AT)["content"] for days in ({"en": day}, {"es": day}, {"es": day, "en": day})}) == 1


@pytest.mark.parametrize(
    "change",
    [
        lambda day: day.notes[1].update(text="Other words."),
        lambda day: day.pieces[0]["facts"][2].update(value=[20, 18]),
        lambda day: day.pieces[0]["decisions"][0].update(reason="Another reason."),
        lambda day: day.pieces[1]["looked"].pop(),
        lambda day: day.pieces[0]["photos"].pop(),
    ],
)
def test_content_is_another_when_anything_said_or_decided_is(day, change):
    other = paper_days.one_day()
    change(other)
    assert document({"en": other}, MADE_AT)["content"] != document({"en": day}, MADE_AT)["content"]


def test_what_other_days_log_does_not_change_a_signed_day(day):
    other = replace(day, planned=[*day.planned, Planned("8", "2", "elbow")], logged=[("2", "7")])
    assert document({"en": other}, MADE_AT)["content"] == document({"en": day}, MADE_AT)["content"]


def test_what_changed_is_told_whatever_language_was_signed(day):
    signed = document({"es": day}, MADE_AT)
    assert document({"en": day}, MADE_AT, signed, 2)["reports"][0]["changes"]["rows"] == []
    later = paper_days.one_day()
    later.pieces[0]["findings"][0]["stands"] = "closed"
    rows = document({"en": later}, MADE_AT, signed, 2)["reports"][0]["changes"]["rows"]
    assert rows == ["transition 4, run 2: transition-slope was off, in hand, is off, closed by a later note"]


def test_a_signature_stands_for_the_content_it_was_given_for(day):
    content = document({"en": day}, MADE_AT)["content"]
    signature = {"by": "Dana W.", "role": "lead", "at": MADE_AT, "report": content, "words": "Read on site."}
    told = document({"en": replace(day, signatures=[signature])}, MADE_AT)
    assert told["content"] == content, "signing does not change what was signed"
    assert told["reports"][0]["signed"]["rows"][0]["same"]
    other = document({"en": replace(day, signatures=[signature | {"report": "f" * 64}])}, MADE_AT)
    assert "the day changed afterwards" in other["reports"][0]["signed"]["rows"][0]["over"]


def test_an_edition_after_a_signed_one_says_what_changed(day):
    signed = document({"en": day}, MADE_AT)
    later = paper_days.one_day()
    later.pieces[0]["findings"][0]["stands"] = "closed"
    del later.pieces[3]
    told = document({"en": later}, MADE_AT, signed, 2)
    assert told["reports"][0]["edition"]["line"] == "Edition 2"
    rows = told["reports"][0]["changes"]["rows"]
    assert any("transition 4" in row and "closed" in row for row in rows)
    assert any("end cap 13" in row and "no longer" in row for row in rows)


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_language_tells_everything(day, language):
    told = report(day, language)
    assert told["language"] == language
    assert told["cautions"]["defer"] and len(told["cautions"]["cautions"]) == 8


def test_the_document_is_what_its_schema_says(day):
    schema = json.loads((Path(__file__).parents[1] / "schemas" / "day.json").read_text(encoding="utf-8"))
    Draft202012Validator.check_schema(schema)
    made = document({"en": day, "es": day}, MADE_AT)
    assert [error.message for error in Draft202012Validator(schema).iter_errors(made)] == []
    broken = made | {"as_said": False, "content": "x"}
    assert len(list(Draft202012Validator(schema).iter_errors(broken))) == 2


# --- what people went and saw


@pytest.fixture(scope="module")
def seen():
    return paper_days.seen_day()


def test_a_spot_check_tells_what_was_drawn_what_was_found_and_what_nobody_looked_at(seen):
    told = report(seen, "en")
    rows = {row["piece"]: row for row in told["spot_check"]["rows"]}
    assert list(rows) == ["p4", "p13", "p6"]
    assert rows["p4"]["otherwise"] == ["Staples every: said 2 in., found 3-1/2 in.: on the far side"] and "as said: 1" in rows["p4"]["line"]
    assert rows["p13"]["otherwise"] == [] and rows["p6"]["line"] == "drawn, nobody looked yet"
    assert told["must_know"]["seen"][0] == "Spot check: 3 drawn, 2 looked at, 1 with something otherwise than said."
    assert "5eed" in told["spot_check"]["seeds"][0]


def test_a_test_with_an_instrument_stands_apart_from_one_that_was_said(seen):
    told = report(seen, "en")
    assert [(row["verdict"], row["verdict_text"]) for row in told["leak_records"]["rows"]] == [("unclear", "couldn't tell"), ("departs", "above the allowable")]
    assert "run out before the test" in told["leak_records"]["rows"][0]["why"] and "Allowable 21.6 cfm" in told["leak_records"]["rows"][0]["allowed"]
    assert {row["what"]: row["tested"] for row in told["register"]["rows"]}["elbow 5"] == "run 2, as said; run 2, with an instrument"
    assert told["must_know"]["seen"][1].endswith("2, of them 2 not within the allowable or not to be trusted.")


def test_a_no_on_the_walk_list_comes_first_with_its_words(seen):
    rows = report(seen, "en")["walk_list"]["rows"]
    assert [(row["question"], row["answer"], row["words"]) for row in rows] == [("g4", "no", "bare straps"), ("g1", "yes", "")]


def test_a_day_without_a_walk_claims_none(day):
    told = report(day, "en")
    assert told["spot_check"]["rows"] == [] and told["must_know"]["seen"] == [] and "No piece was drawn" in told["spot_check"]["nothing"]


@pytest.mark.parametrize("part", ["draws", "looks", "answers", "records"])
def test_content_is_another_when_anything_was_seen_since(seen, part):
    from logbook.day import content_of

    assert content_of(replace(seen, **{part: ()})) != content_of(seen)


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_document_of_a_walked_day_is_what_its_schema_says(seen, language):
    schema = json.loads((Path(__file__).parents[1] / "schemas" / "day.json").read_text(encoding="utf-8"))
    Draft202012Validator(schema).validate(document({language: seen}, MADE_AT))
