"""The number that a typed line begins with and that names the piece, with no sign behind it: "125 flap not stapled", "74 static 1.5", "83 straight buried in the slab".

What is counted stands in the plural, with how it is told behind it where the number is a name: "125 staples 2 in." but not "16 staples on a side". Behind
one such number others of its mould may stand at the head of what follows: "125 staples 2, 126 staples 3".
"""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.bare_names import BareNames
from logbook.reading.meant.name_places import COUNTS_UP_TO, Spot, low
from logbook.reading.words.tokens import Token

_TURNS = (90, 45, 30, 60, 22)
_WHOLE_SHEETS = 30  # widths of a damper, of a collar
_NEAR = 40  # numbers of pieces of one note


def heads_a_line(spot: Spot) -> bool:
    words = spot.words
    if spot.value <= COUNTS_UP_TO or not words.line_things:
        return False
    if any(one.low not in words.fillers for one in spot.found[: spot.at]):
        return spot.before() in ".;," and _goes_on(spot) and (told(spot) or _is_done(spot))
    return spot.value not in _TURNS and told(spot)


def _goes_on(spot: Spot) -> bool:
    """Whether the note begins with such a number too."""
    first = min(spot.starts)
    found = spot.found
    if first >= spot.at or not found[first].low.isdigit() or not 0 < abs(int(found[first].low) - spot.value) <= (1 if spot.value in _TURNS else _NEAR):
        return False
    opening = replace(spot, at=first, last=first + 1, value=int(found[first].low))
    return heads_a_line(opening) or opening.large and all(one.low in spot.words.fillers for one in found[:first]) and _is_done(opening)


def may_go_on(found: tuple[Token, ...], first: int, words: BareNames) -> bool:
    """Whether a clause behind the piece that is named here begins with another number in figures."""
    if not words.line_things or not found[first].low.isdigit():
        return False
    return any(found[at].low.isdigit() and found[at - 1].low in ".;," and found[at - 1].sort == "sign" for at in range(first + 2, len(found) - 1))


def goes_on_behind(spot: Spot, first: int) -> bool:
    """Whether it stands at the head of a clause as the name of a piece does whose neighbour `first` is."""
    near = spot.value > COUNTS_UP_TO and 0 < abs(first - spot.value) <= (1 if spot.value in _TURNS else _NEAR)
    return near and spot.found[spot.at].low.isdigit() and spot.before() in ".;," and told(spot)


def _is_done(spot: Spot) -> bool:
    """ "45 all taped", "126 good", "46 same"."""
    words, behind = spot.words, spot.behind()
    return behind in words.acts or behind in words.well or behind in words.denials or behind in words.is_ or behind in words.barely and spot.behind(1) in words.acts | words.well or behind in words.line_same


def told(spot: Spot) -> bool:
    words, behind, ahead = spot.words, spot.behind(), spot.behind(1)
    if behind in words.line_counts:
        return ahead in words.line_told or spot.last + 1 in spot.starts or ahead in words.directions and spot.behind(2) in ",.;"
    if behind in words.line_things:
        return ahead not in words.line_bought and spot.trade_behind()
    if behind in words.line_sides:
        return ahead in words.things or ahead in words.acts or ahead in words.line_told or ahead in words.denials | words.is_ | words.barely
    if behind in words.line_wide:
        return spot.value > _WHOLE_SHEETS and ahead not in words.line_bought
    if behind in words.line_kinds:
        return ahead in words.line_places or ahead in words.line_counts or ahead in words.each | words.line_every or ahead in words.inside | words.on and _a_place(spot, 2)
    if behind in words.directions and (ahead in words.inside or ahead in words.on):
        return _a_place(spot, 2)
    return behind in words.line_places or (behind in words.inside or behind in words.on) and _a_place(spot, 1)


def _a_place(spot: Spot, on: int) -> bool:
    """ "In the slab", "on roof", "in a kitchen exhaust"."""
    at = spot.last + on
    while low(spot.found, at) in spot.words.points or low(spot.found, at) in spot.words.points_at_one:
        at += 1
    return low(spot.found, at) in spot.words.line_grounds
