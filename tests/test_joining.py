"""Joining: which piece a spoken sentence belongs to, and what all sentences of a piece add up to.

The cases are the contract's section "joining" told in sentences; there is no published standard for it.
"""

from log_cases import cases, laid

import pytest

from logbook import facts
from logbook.joining.whose import Asks

CASES = list(cases("joining", "runs_and_marks", "adding_up", "correcting", "not_understood"))


@pytest.mark.parametrize("case", CASES, ids=[case["name"] for case in CASES])
def test_what_the_notes_add_up_to(case):
    log = laid(case)
    pieces = list(log.book.pieces.values())
    assert [(p.mark and facts.bare_mark(p.mark), list(p.notes)) for p in pieces] == [
        (e.get("mark") and facts.bare_mark(e["mark"]), e["notes"]) for e in case["pieces"]
    ]
    for piece, expected in zip(pieces, case["pieces"]):
        _is(piece, expected)
    why = {f"{note}/{place}": list(piece.mark_unclear) for (note, place), (piece, _) in log.book.asked.items()}
    assert why == case.get("joined_to_nothing", {})


@pytest.mark.parametrize("case", [c for c in CASES if "finds" in c], ids=[c["name"] for c in CASES if "finds" in c])
def test_what_the_rules_find_of_it(case):
    book = laid(case).book
    for expected in case["finds"]:
        found = [f for f in book.findings_of(expected["note"], 0) if f.rule == expected["rule"]]
        assert found, f"{expected['rule']} is not due"
        told = {"verdict": found[0].verdict, "stands": found[0].stands, "shows": found[0].shows}
        told["changed"] = found[0].changed_after_answer
        assert {name: told[name] for name in expected if name in told} == {n: v for n, v in expected.items() if n in told}


def test_every_entry_has_a_piece_or_is_asked_about():
    for case in CASES:
        book = laid(case).book
        for note in book.notes.values():
            for entry in book.log.standing(note):
                place = book.log.placed[note.id, entry.position]
                assert ((note.id, entry.position) in book.asked) == isinstance(place, Asks)


def _is(piece, expected):
    assert piece.run == expected.get("run"), "run"
    for name, value in expected.get("facts", {}).items():
        assert facts.to_json(name, piece.value(name)) == value, name
    for name, values in expected.get("was", {}).items():
        assert [facts.to_json(name, e.value) for e in piece.fact(name).was] == values, name
    for name in expected.get("unsaid", ()):
        assert piece.fact(name) is None, name
    if "conflict" in expected:
        assert sorted({f.name for f in piece.facts if f.conflict}) == expected["conflict"]
    if "open" in expected:
        assert [item.text for item in piece.open_items] == expected["open"]
    if "unclear" in expected:
        assert list(piece.mark_unclear) == expected["unclear"]
    if "looked" in expected:
        assert [row["name"] for row in piece.looked if row["name"] != "kind"] == expected["looked"]
    if "assumed" in expected:
        assert sorted(word.name for word in piece.assumed) == expected["assumed"]
    if "backs" in expected:
        assert [str(m.back) for m in piece.value("side_moves") if m.back is not None] == expected["backs"]
