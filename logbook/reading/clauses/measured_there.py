"""A place set apart where the thing is there and measures otherwise: "at two everywhere but the heel, where they run at three", "three inch tape all over but the throat, which got two inch"."""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row

_BEFORE_IT = frozenset("EVERY ON BE TO THIS IT COMMA HEDGE FILLER HAVE ONLY".split())
_COUNTS = frozenset("SIDE_WORD STAPLES BY LONG".split())
_ENDS = frozenset("TAPED RUBBED TAPE STAPLES STAPLED NOT NO NOT_DONE".split())
_LENGTHS = frozenset("NUM LEN FRAC".split())
# what is measured of an act, the words for it before the place, and what a measure of it is
_OF = (
    (frozenset("STAPLED STAPLES STAPLE".split()), _LENGTHS, _COUNTS | {"TAPE"}),
    (frozenset("TAPE TAPED CLOSURE MARK181".split()), frozenset(("LEN",)), _COUNTS),
    (frozenset("TEMP DEG TEMP_F".split()), frozenset("NUM DEG TEMP_F".split()), _COUNTS | {"TAPE"}),
)
_FARTHEST = 15  # items: "where, except for the first foot, they run at three"


def measured_there(row: Row, place: int) -> bool:
    """Whether behind the place that is set apart it is told how much it measures there."""
    first, end = row.sentence_start(place), row.sentence_end(place)
    before = {item.concept for item in row.items[first:place]}
    of = [(sorts, counts) for things, sorts, counts in _OF if not things.isdisjoint(before)]
    for at in range(place, min(place + _FARTHEST, end) if of else place):
        ahead = row.items[at + 1].concept if at + 1 < len(row.items) else ""
        if any(row.items[at].concept in sorts and ahead not in counts for sorts, counts in of) and row.items[at - 1].concept in _BEFORE_IT:
            return True
        if row.items[at].concept in _ENDS:
            return False
    return False
