"""Two measures that say between which the true one lies: "every two to three", "between two and two and a half", "forty-five to fifty degrees".

The one counts that is farther from what is right: of how far apart things are and how wide a gap is the wider, of tape, washers, legs, tabs and
warmth the lesser.
"""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.words.items import Item, concept_at
from logbook.reading.words.measures import Measure
from logbook.reading.words.phrasing import words_of
from logbook.reading.composed.size_pairs import LENGTHS

_JOINTS = ("TO", "OR", "THRU")
_AT_LEAST = ("WASHERS", "TAPE", "CLOSURE", "MARK181", "LEG", "TABS")
_STAPLES = ("STAPLED", "STAPLES", "STAPLE")
_OWNERS = frozenset((*_STAPLES, "EVERY", "SCREWS", "GAP", "STATIC", "K_HANGER", "HUNG", *_AT_LEAST))
_ON_THE_WAY = frozenset("WORD FROM OF DET BE FILLER MOVE ON RUN HAVE HEDGE OPENING IT WITH SIZE_WORD".split())
_NO_RANGE = ("SIDE_WORD", "BY", "COUNTED", "BOARD", "STAPLES", "TABS", "SCREWS")
_BEFORE_WARMTH = ("BE", "HEDGE", "AROUND", "FROM", "ON", "IT", "TEMP")


def one_of_a_range(items: tuple[Item, ...], place: int, text: str, done: list[Item]) -> Item | None:
    """The measure at this place as it counts, where it ends a range; what stood before it is taken from `done`, and a word for it put there."""
    item = items[place]
    if item.concept == "DEG":
        if not _warm(items, place, text):
            return None
        done.pop()
        low = done.pop()
        done.append(replace(low, concept="FILLER", value=None))
        return replace(item, value=replace(item.value, value=min(low.value.value, item.value.value)))
    first = _begins(items, place, text)
    if first is None:
        return None
    while done[-1].concept in (*_JOINTS, "COMMA", "AND"):
        done.pop()
    low, owner, apart = done.pop(), _owner(items, first, text), concept_at(items, place + 1) == "APART"
    doubted = concept_at(items, first - 1) == "EVERY" or apart and owner is None
    while not doubted and done and done[-1].concept in ("WORD", "FROM", "MOVE", "RUN") and text[done[-1].start : done[-1].end].lower() not in words_of("small.hangs"):
        done.pop()  # "the staples range from one and a half to three"
    between = owner in (*_STAPLES, "HUNG") and not doubted and not apart and (concept_at(items, first - 1) == "FROM" or _lies_between(items, first - 1, text))  # "stapled 15 between two and three inches": every so many
    done.append(replace(low, concept="HEDGE" if doubted else "EVERY" if between else "FILLER", value=None))
    bare = item.value.unit and not low.value.unit and low.value.raw.denominator == 1
    other = low.value.raw * item.value.value / item.value.raw if bare else low.value.value  # "50 to 60 mm"
    least = owner in _AT_LEAST and not apart
    value = min(other, item.value.value) if least else max(other, item.value.value)
    if item.concept == "NUM" and low.value.unit in ("ft", "m", "mm", "cm") and low.value.raw and owner is not None:  # "from seven feet to ten"
        other = item.value.raw * low.value.value / low.value.raw
        return replace(item, concept="LEN", value=replace(low.value, value=min(low.value.value, other) if least else max(low.value.value, other), end=item.value.end, raw=item.value.raw))
    if owner in _STAPLES and item.concept == "NUM":
        return replace(item, concept="LEN", value=Measure("LEN", value, "in", item.value.end, item.value.digits, value))
    return replace(item, value=replace(item.value, value=value))


def _begins(items, place: int, text: str) -> int | None:
    """Where the range begins that ends at this place."""
    first = place - 1
    while first >= 0 and items[first].concept in _JOINTS and place - first <= 1:
        first -= 1
    between = text[items[first].end : items[place].start].strip() if first >= 0 else ""
    if between == "a" and _owner(items, first, text) in ("K_HANGER", "HUNG", "STATIC"):
        return None  # "los hangers del 5 a ocho pies"
    if first == place - 1 and concept_at(items, first) in ("AND", "COMMA"):
        first -= 1
    if first < 0 or items[first].concept not in LENGTHS or concept_at(items, first - 1) == "BY":
        return None
    dash = between in ("-", "–")
    if first != place - 2 and not dash:
        return None
    of_screws = _owner(items, first, text) in ("SCREWS", "WASHERS")
    in_feet = items[first].concept == "LEN" and items[first].value.unit in ("ft", "m") and _owner(items, first, text) in ("K_HANGER", "HUNG")
    measured = of_screws or in_feet or items[place].concept != "NUM" or any(items[k].value.raw.denominator != 1 for k in (first, place))  # else they may be pieces: "stapled two to six"
    if concept_at(items, place - 1) in ("AND", "COMMA") and not dash:
        return first if measured and _lies_between(items, first - 1, text) and _owner(items, first - 1, text) is not None else None
    if concept_at(items, first - 1) == "EVERY" or concept_at(items, place + 1) == "APART":
        return first
    return first if measured and concept_at(items, place + 1) not in _NO_RANGE and _owner(items, first, text) is not None else None


def _lies_between(items, at: int, text: str) -> bool:
    return at >= 0 and text[items[at].start : items[at].end].lower() in words_of("small.between")


def _owner(items, at: int, text: str) -> str | None:
    """What the two measures are of, where it is named right before them: "the staples run from two to three"."""
    if concept_at(items, at - 1).startswith("K_") and concept_at(items, at - 1) != "K_HANGER":
        return None  # "no tape on straight 5 or 6 inches of it"
    for back in range(at - 1, max(-1, at - 8), -1):
        concept = items[back].concept
        if concept in _OWNERS:
            return concept
        if concept == "WORD" and text[items[back].start : items[back].end].lower() in words_of("small.hangs"):
            return "HUNG"
        if concept.startswith("K_") and concept != "K_HANGER" or concept in ("NUM", "MARKED") and _names_a_piece(concept_at(items, back - 1)):
            continue  # "I stapled straight 36 between two and three inches"
        if concept not in _ON_THE_WAY:
            return None
    return None


def _names_a_piece(before: str) -> bool:
    return before.startswith("K_") or before in ("STAPLED", "FITTING", "NUMBER", "ON", "OF")


def _warm(items, place: int, text: str) -> bool:
    """ "between forty-five and fifty-five degrees", "it was forty to fifty degrees" """
    if place < 3 or items[place - 2].concept not in ("NUM", "DEG") or not 0 < items[place - 2].value.value < 130:
        return False
    if items[place - 1].concept == "AND":
        return _lies_between(items, place - 3, text)
    turns = any(one.concept == "K_ELBOW" for one in items[max(0, place - 6) : place])
    return items[place - 1].concept in ("TO", "OR") and items[place - 3].concept in _BEFORE_WARMTH and not turns

