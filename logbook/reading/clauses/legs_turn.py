"""How the legs of staples go: "curl in", "are bent inward". That tells of the legs, and not how many staples are in."""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of


def legs_turn(row: Row, first: int, last: int) -> bool:
    """Whether these items tell which way legs go."""
    return any(row.items[k].concept == "CLINCHED" or row.items[k].concept == "IN" and row.words(k - 1, k).lower() in words_of("small.legs_turn") for k in range(first, last))
