"""Words that make nothing of how a thing would be: "ninguna costura rasgada", "la cinta no quedó desgarrada", "ninguna junta sucia"."""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of

_THINGS = ("JOINT", "FACING", "TAPE", "BOARD", "END", "MALE", "FEMALE", "SHIPLAP", "SIDE_WORD", "FITTING", "BE", "PANEL")


def of_none(row: Row, at: int) -> int | None:
    """Where the words begin that deny the item at this place."""
    before = at - 1
    if before >= 0 and row.words(before, at).lower() in words_of("small.was_left_not"):
        return before
    while before > 0 and at - before < 4 and row.items[before].concept in _THINGS:
        before -= 1
    return before if 0 <= before < at - 1 and row.words(before, before + 1).lower() in words_of("small.none_is") else None
