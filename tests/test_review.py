"""Decisions: which are refused, and where a finding stands after notes and decisions.

Source of the words: ISO 9000:2015, 3.12 (rework, repair, concession, scrap) and 3.8.12 (verification).
"""

import pytest
from log_cases import cases, laid, when

from logbook import review
from logbook.mistake import Mistake
from logbook.piece import Decision
from logbook.wording import LANGUAGES, has, say

REFUSALS = list(cases("review", "refusals"))
STANDING = list(cases("review", "standing"))
LOOKING = list(cases("review", "looking"))
PIECE = {
    "notes": [
        {"id": "a", "by": "ana", "at": "08:00", "says": "Straight seven on run two, eighteen by twelve, stapled every three, taped with cloth tape."}
    ]
}


def piece_and_findings():
    book = laid(PIECE).book
    [piece] = book.pieces.values()
    return piece, book.findings[piece.id]


def body(case: dict, findings) -> dict:
    asks = {"id": "d", "rule": "staple-spacing"} | case["asks"]
    edition = next((f.edition for f in findings if f.rule == asks["rule"]), None)
    return {"edition": edition} | asks


@pytest.mark.parametrize("case", REFUSALS, ids=[case["name"] for case in REFUSALS])
def test_a_decision_is_taken_or_refused(case):
    piece, findings = piece_and_findings()
    made = review.decide(body(case, findings), piece, findings, by=case.get("by", "rosa"), at=when("10:00"))
    if "refused" not in case:
        assert isinstance(made, Decision)
        assert review.decision_from_json(review.decision_to_json(made)) == made
        return
    assert isinstance(made, Mistake) and made.key == case["refused"]
    for language in LANGUAGES:
        told = say(f"{made.key}.error", language, **made.values)
        assert ("lost" if language == "en" else "se perdió nada") in told and "{" not in told
        assert say(f"{made.key}.cure", language, **made.values)


def test_every_refusal_has_a_case():
    keys = {f"review.{key}" for key in _refusals_of_the_wording()} - {"review.long-reason"}
    assert keys == {case["refused"] for case in REFUSALS if case.get("refused", "").startswith("review.")}


def _refusals_of_the_wording():
    from logbook.wording import texts

    return {key.split(".")[1] for key in texts("en") if key.startswith("review.") and key.endswith(".error")}


def test_a_reason_has_an_end():
    piece, findings = piece_and_findings()
    asks = {"asks": {"decision": "rework", "reason": "x" * 2001}}
    made = review.decide(body(asks, findings), piece, findings, by="rosa", at=when("10:00"))
    assert made.key == "review.long-reason" and has("review.long-reason.cure")


def test_several_at_once_are_all_taken_or_none():
    piece, findings = piece_and_findings()
    good, bad = ({"asks": {"decision": "concession", "reason": "Low pressure."} | more} for more in ({}, {"rule": "closure-listed"}))
    both = [(body(one, findings), piece, findings) for one in (good, bad)]
    made = review.decide_all(both, by="rosa", at=when("10:00"))
    assert [one.key for one in made] == ["review.granted-elsewhere-neither"]
    assert all(isinstance(one, Decision) for one in review.decide_all(both[:1] * 2, by="rosa", at=when("10:00")))


@pytest.mark.parametrize("case", STANDING, ids=[case["name"] for case in STANDING])
def test_where_a_finding_stands(case):
    book = laid(case).book
    [finding] = [f for f in book.findings_of("a", 0) if f.rule == case["rule"]]
    assert (finding.stands or "none") == case["stands"]


@pytest.mark.parametrize("case", LOOKING, ids=[case["name"] for case in LOOKING])
def test_what_the_lead_found_against_what_was_said(case):
    found = [f for f in laid(case).book.findings_of("a", 0) if f.rule == "looked-agrees"]
    assert [f"{f.verdict} {f.case}" for f in found] == ([] if case["finds"] == "not due" else [case["finds"]])
    assert [f.stands or "none" for f in found] == ([case["stands"]] if "stands" in case else [])


WANTS = [
    ("asked", "open", {"decision": "asked", "reason": "Show me the tape."}),
    ("rework", "in hand", {"decision": "rework", "reason": "Show me the tape."}),
    ("concession", "settled", None),
]


@pytest.mark.parametrize(("decision", "stands", "wants"), WANTS)
def test_what_the_lead_wants_stands_in_the_finding_that_the_builder_sees(decision, stands, wants):
    case = PIECE | {"decisions": [{"on": "a", "rule": "staple-spacing", "decision": decision, "at": "09:00", "reason": "Show me the tape.", "owner": "ana", "due": "2026-10-13"}]}
    [finding] = [f for f in laid(case).book.findings_of("a", 0) if f.rule == "staple-spacing"]
    assert finding.stands == stands
    assert finding.wants == (None if wants is None else wants | {"by": "rosa", "at": when("09:00").isoformat(), "owner": "ana", "due": "2026-10-13"})


def test_what_the_lead_wanted_of_other_words_is_wanted_no_more():
    case = PIECE | {
        "notes": [*PIECE["notes"], {"id": "b", "by": "ana", "at": "10:00", "says": "Fitting seven on run two, staples every four."}],
        "decisions": [{"on": "a", "rule": "staple-spacing", "decision": "asked", "at": "09:00"}],
    }
    [finding] = [f for f in laid(case).book.findings_of("a", 0) if f.rule == "staple-spacing"]
    assert (finding.stands, finding.wants) == ("open", None)


def test_a_decision_is_kept_with_the_piece_it_was_made_on():
    case = next(c for c in STANDING if c["name"].startswith("rework that meets"))
    log = laid(case)
    [piece_id] = log.book.pieces
    assert log.book.decisions[piece_id] == log.decisions
    [finding] = [f for f in log.book.findings[piece_id] if f.rule == "staple-spacing"]
    assert [row["edition"] for row in finding.earlier] == [log.decisions[0].edition]
