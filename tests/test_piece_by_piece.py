"""A note on several pieces, each told whole: what is read of it is what is read of its parts alone."""

from __future__ import annotations

from bisect import bisect
from zlib import crc32

import pytest
from reading_cases import FILES, drawn, sentences

from logbook.reading import read, reader


def told_whole(text: str) -> str | None:
    """The mark of the one piece that is named at once and told with its work; None of any other note, and of one with a run, which holds for the next piece too."""
    told = read(text, language="en")
    if len(told.fittings) != 1 or told.shift or told.withdraws or told.fittings[0].same_as or text[-1] not in ".!" or " of them" in text or "he last two" in text or "The last one" in text:  # "every one of them" may be of both, and so may "the last two"; "the last one" is the piece before
        return None
    facts = {fact.name: fact for fact in told.fittings[0].facts}
    whole = {"mark", "kind"} <= facts.keys() and "run" not in facts and facts["kind"].start == 0 and any(fact.value is True for fact in facts.values())
    return facts["mark"].value if whole else None


def facts_of(text: str, since: int = 0, until: int | None = None) -> list[set[tuple]]:
    """The facts of each piece, and whether their words lie in its own part of the text; how far they reach may differ where a turn of words is read otherwise beside another."""
    until = len(text) if until is None else until
    return [{(fact.name, fact.value, fact.hedged, since <= fact.start <= fact.end <= until) for fact in entry.facts} for entry in read(text, language="en").fittings]


@pytest.fixture(scope="module")
def pairs() -> list[tuple[str, str]]:
    """Drawn by the words of both: a case that is added changes no other pair but one."""
    whole = [(case.text, mark) for file in FILES for case in drawn(sentences(file), 16) if case.language == "en" and "\n" not in case.text and (mark := told_whole(case.text)) is not None]
    behind = sorted((crc32(text.encode()), text, mark) for text, mark in whole)
    return [(one, other) for one, mark in whole for _, other, another in [behind[bisect(behind, (crc32(one[::-1].encode()),)) % len(behind)]] if mark != another]


def test_each_piece_is_read_as_if_it_were_told_alone(pairs):
    assert len(pairs) > 100
    assert [(one, other) for one, other in pairs if together(one, other) != facts_of(one) + facts_of(other)] == []


def together(one: str, other: str) -> list[set[tuple]]:
    """The facts of each piece of the two notes joined."""
    both = f"{one} {other}"
    return [facts_of(both, 0, len(one))[0], *facts_of(both, len(one))[1:]]


def test_what_takes_a_piece_back_is_read_of_the_whole_note():
    told = read("Straight 204, taped. Drop that last one. Straight 9, stapled, taped.", language="en")
    assert told.withdraws.what == "last" and [entry.fact("mark").value for entry in told.fittings] == ["204", "9"]


def test_a_run_told_of_the_first_piece_holds_for_the_next():
    told = read("Straight 4 on run two, taped. Elbow 5, taped.", language="en")
    assert [entry.fact("run").value for entry in told.fittings] == ["2", "2"]


@pytest.mark.parametrize("behind", ["Going to lunch.", "Okay.", "Thank you.", "Alright, that's it."])
def test_a_farewell_changes_nothing_of_several_pieces(behind):
    text = "Straights 56 and 57 are taped, all but the last one, 57."
    assert [(entry.fact("mark").value, entry.fact("taped").value) for entry in read(f"{text} {behind}", language="en").fittings] == [("56", True), ("57", False)]


def test_a_last_sentence_that_tells_of_the_pieces_is_no_farewell():
    told = read("Straights 56 and 57 are stapled every two, but on 57 the legs turn in. Not taped yet.", language="en")
    assert [entry.fact("taped").value for entry in told.fittings if entry.fact("taped") is not None] and told.fittings[-1].open_items


@pytest.mark.parametrize("note", ["Straight 9, taped. Elbow 10, stapled. That elbow has no vanes. Straight 9 isn't rubbed.", "Elbow 4 and 5, both taped. 4 isn't stapled. Tee 6 is hung."])
def test_a_part_that_stands_as_it_stood_is_not_read_again(note, monkeypatch):
    seen, reads = [], reader._read_as_one
    monkeypatch.setattr(reader, "_read_as_one", lambda text, *more: seen.append(text) or reads(text, *more))
    told = read(note, language="en")
    assert len(told.fittings) > 1 and len(seen) == len(set(seen)) > 2
