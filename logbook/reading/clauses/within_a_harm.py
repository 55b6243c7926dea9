"""Words of a fault that tell of a harm: "el foil está suelto" is of the board, and of no act."""

from __future__ import annotations

import re

from logbook.reading.clauses.grammar import Row


def within_a_harm(row: Row, first: int, last: int, match: re.Match[str]) -> bool:
    """Whether the match is told within the words of one harm, beside what it befell."""
    begin, end = row.within(first, last, match)
    return end == begin + 1 and row.items[begin].concept == "DAMAGE" and row.items[begin].end - row.items[begin].start > match.end() - match.start()
