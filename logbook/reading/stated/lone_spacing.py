"""How far apart staples are where no word says "every": "stapled four sides two inch", "I spaced them out three inches", "staples landed at four".

A length that stands alone behind staples, with no other thing of the trade between, can only be their distance.
"""

from __future__ import annotations

import re

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim, taken_back, unit_of
from logbook.reading.words.tokens import plain
from logbook.reading.clauses.grammar import Row, code

_STAPLES = ("STAPLED", "STAPLES", "STAPLE")
_BETWEEN = frozenset(
    "DET IT BE HEDGE THINK FILLER THIS HAVE ALL EACH WORD ON IN OUT AROUND IN_PLACE GENERIC SIDE_WORD SIDES_ALL NUM EVERY APART SEATED TIGHT MOVE"
    " COMMA THROUGH FLAP TO LEG TURNING GOING_TO BOTH BACK DOWN UP STAPLES STAPLED".split()
)  # what may stand between staples and their distance; a count of sides is a NUM
_BEHIND = frozenset("LEG LONG WIDE HIGH BACK BY BOARD GAP TAPE CLOSURE MARK181 TABS THROAT ROUND SCREWS WASHERS K_HANGER OVER DAMAGE SIDE SIDE_WORD STAPLES STAPLE TAPED DEG".split())
_FARTHEST = 7  # items
_LIKELY = 6  # inches; behind a comma more is rather something else
_LEAST, _MOST = 1, 12  # inches: less is a leg, more is no spacing of staples


def lone_spacings(row: Row, taken: set[int], language: Language) -> list[Claim]:
    """Weak claims: they stand where nothing else says how far apart the staples are."""
    made: list[Claim] = []
    for at, item in enumerate(row.items):
        if item.concept in _STAPLES and not row.is_blank(at):
            length = _behind(row, at, taken, language)
            made += _spacing(row, at, length, at) if length is not None else []
        if item.concept == "APART" and not row.is_blank(at):
            made += _stand_apart(row, at)
        if item.concept == "EVERY" and at + 1 < len(row.items) and not row.is_blank(at):
            made += _spaced(row, at, taken)
    return made


def _spread(row: Row, at: int, place: int, language: Language) -> bool:
    """ "the staples wander out to three": staples that go on wider."""
    return place - at > 2 and re.search(rf"(?<!\w)(?:{language.turns.spreads})$", plain(row.words(at + 1, place))) is not None


def _behind(row: Row, at: int, taken: set[int], language: Language) -> int | None:
    """The item of a lone length behind staples. "Sides stapled 4" counts sides; "three inch tape" is wide; "collar 4, stapled, eight inch" is the collar's."""
    if at and row.items[at - 1].concept == "SIDE_WORD":
        return None
    for place in range(at + 1, min(at + 1 + _FARTHEST, len(row.items))):
        item = row.items[place]
        said = place not in taken and row.string[place] == code(item.concept)  # neither blank nor a count of sides
        led = row.items[place - 1].concept in ("ON", "SEATED") or _spread(row, at, place, language) or place == at + 1 and "EVERY" in (row.items[at - 1].concept, row.items[at - 2].concept if row.items[at - 1].concept == "DET" else "")
        if said and (item.concept == "LEN" or (led and item.concept in ("NUM", "FRAC"))) and _LEAST <= item.value.value <= _MOST:
            follows = row.items[place + 1].concept if place + 1 < len(row.items) else ""
            far = item.value.value > _LIKELY and row.items[place - 1].concept == "COMMA"
            return None if far or follows in _BEHIND else place
        if item.concept in ("FRAC", "LEN") and item.value.value < _LEAST and row.items[min(place + 1, len(row.items) - 1)].concept == "LEG":
            continue
        if item.concept == "OF" and row.items[place + 1 : place + 2] and row.items[place + 1].concept == "SIDE_WORD" and place == at + 1 or item.concept == "SIDE" and row.items[place + 1 : place + 2] and row.items[place + 1].concept == "ON" and row.items[place - 1].concept == "ON":
            continue  # "eleven staples per side at two inches", "ten staples on each side at two inches"
        if item.concept not in _BETWEEN or (item.concept == "NUM" and row.items[min(place + 1, len(row.items) - 1)].concept not in ("SIDE_WORD", "COMMA")):
            return None
        if item.concept == "COMMA" and (place + 1 >= len(row.items) or row.items[place + 1].concept not in ("LEN", "HEDGE", "AROUND", "ON")):
            return None
    return None


def _stand_apart(row: Row, at: int) -> list[Claim]:
    """ "the staples, they came out three apart": staples that stand apart are in."""
    first = max(at - _FARTHEST - 2, row.sentence_start(at))
    concepts = [item.concept for item in row.items[first:at]]
    if "STAPLES" not in concepts or {"NOT", "NO", "WILL", "GOING_TO", "PENDING", "SAYS", "DRAWING"} & set(concepts):
        return []
    noun = first + len(concepts) - 1 - concepts[::-1].index("STAPLES")
    return [claim(row, "stapled", True, noun, noun + 1, weak=True)] if not row.is_blank(noun) else []


def _spaced(row: Row, at: int, taken: set[int]) -> list[Claim]:
    """ "Two inch staple spacing", "two inch spacing on the staples": the length before the word."""
    first = at - 1
    while first >= 0 and row.items[first].concept in ("STAPLES", "STAPLE", "STAPLED", "HEDGE") and at - first < 3:
        first -= 1
    staples = {item.concept for item in row.items[max(0, first) : at + 4]} & set(_STAPLES)
    if first < 0 or not staples or first in taken or row.is_blank(first):
        return []
    item = row.items[first]
    if item.concept == "NUM" and item.value.value == 1 and not item.value.digits:
        return []  # "one staple every hand's width"
    if item.concept in ("LEN", "NUM", "FRAC") and _LEAST <= item.value.value <= _MOST:
        noun = next(k for k in range(max(0, first), at + 4) if row.items[k].concept in _STAPLES)
        return _spacing(row, noun, first, min(first, noun))
    return []


def _spacing(row: Row, noun: int, length: int, first: int) -> list[Claim]:
    item = row.items[length]
    backs = taken_back((item,), lambda back: back.value.value)
    near = {"hedged": True} if row.words(length - 1, length).lower() == "around" else {}  # "stapled around two inches"
    said = [claim(row, "staple_spacing", item.value.value, length, length + 1, uses=(length,), said_unit=unit_of(item), took_back=backs, weak=True, **near)]
    return [*said, claim(row, "stapled", True, noun, noun + 1, weak=True)]
