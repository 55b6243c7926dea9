"""A doubt that is of what stands before it alone: "I ran the tool upside down or something so the step is outside"."""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of


def or_something_so(row: Row, last: int, at: int) -> bool:
    """Whether what came of it is told behind the doubt at `at`, before the clause ends at `last`."""
    return at + 2 < last and row.words(at, at + 1).lower() in words_of("small.or_so") and row.words(at + 1, at + 2).lower().split()[0] in words_of("small.so_then")
