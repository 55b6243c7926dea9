"""Where a number alone is the piece that a sentence tells at its last: "only thing left on seven is the vanes", "closed with cloth tape is eighty two".

What is told of the piece stands ahead of the verb, and where a subject would stand ahead there is none: the number behind is who is told of. A number that has
what it measures right before it ("spacing is three"), a unit, or a thing it counts behind it is none.
"""

from __future__ import annotations

import re
from functools import cache

from logbook.languages.told_at_last import ToldAtLast
from logbook.reading.meant.name_places import COUNTS_UP_TO, TURNS, Spot

_EVEN = 6  # inches, in which distances are counted
_FAR = 24  # tokens
_ON = 4  # tokens


def told_at_last(spot: Spot, words: ToldAtLast) -> bool:
    if spot.before() not in words.leads or spot.before() in spot.words.places_numbered:
        return False
    if spot.value in TURNS and any(one.low in spot.words.turns for one in spot.found):
        return False
    first, end = spot.clause()
    before, behind = _said(spot, max(first, spot.at - _FAR), spot.at), _said(spot, spot.last, min(end, spot.last + _ON))
    slots, may_follow, measured, within, spaced = _patterns(words)
    if not may_follow.match(behind) or behind.startswith("#") and not _a_size(spot) or measured.search(before) and not within.search(before):
        return False
    if spaced.search(before) and (spot.value <= COUNTS_UP_TO or spot.value % _EVEN == 0) and spot.before() not in spot.words.is_:
        return False
    return any(spot.value >= least and here.search(before) and there.match(behind) for here, there, least in slots)


def _said(spot: Spot, first: int, last: int) -> str:
    return " ".join("#" if k in spot.starts and spot.found[k].low not in spot.words.ones | spot.words.points_at_one else spot.found[k].low for k in range(first, last))


def _a_size(spot: Spot) -> bool:
    """A size of its own behind it: "was sixty, twelve by ten"."""
    return any(one.low in ("by", "x") for one in spot.found[spot.last + 1 : spot.last + 3])


@cache
def _patterns(words: ToldAtLast):
    slots = tuple((re.compile(rf"{before}$"), re.compile(behind), least) for before, behind, least in words.slots)
    return slots, re.compile(words.behind), re.compile(rf"{words.measured}$"), re.compile(rf"{words.within}$"), re.compile(words.spaced)
