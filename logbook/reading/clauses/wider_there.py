"""A place set apart where the staples are in and lie wider: "at two everywhere but the heel, where they run at three"."""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row

_BEFORE_IT = frozenset("EVERY ON BE TO THIS IT COMMA HEDGE FILLER".split())
_COUNTS = frozenset("SIDE_WORD TAPE STAPLES BY LONG".split())
_SPACED = frozenset("STAPLED STAPLES STAPLE".split())
_ENDS = frozenset("TAPED RUBBED TAPE STAPLES STAPLED NOT NO NOT_DONE".split())
_FARTHEST = 15  # items: "where, except for the first foot, they run at three"


def wider_there(row: Row, place: int) -> bool:
    """Whether behind the place that is set apart it is told how far apart they are there."""
    first, end = row.sentence_start(place), row.sentence_end(place)
    if _SPACED.isdisjoint(item.concept for item in row.items[first:place]):
        return False
    for at in range(place, min(place + _FARTHEST, end)):
        ahead = row.items[at + 1].concept if at + 1 < len(row.items) else ""
        if row.items[at].concept in ("NUM", "LEN", "FRAC") and row.items[at - 1].concept in _BEFORE_IT and ahead not in _COUNTS:
            return True
        if row.items[at].concept in _ENDS:
            return False
    return False
