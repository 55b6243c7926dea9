"""A measure that was taken for another ("I put down two, but the rule says two and three quarters"): what was found by measuring counts, and stands in the place of what was thought."""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.words.items import Item, concept_at
from logbook.reading.words.phrasing import in_any
from logbook.reading.composed.size_pairs import LENGTHS

_MEASURED = frozenset((*LENGTHS, "LB", "DEG", "TEMP_F", "INWG", "CFM"))
_THINGS = frozenset("STAPLED STAPLES STAPLE EVERY APART LEG TAPE TAPED WIDE TABS SCREWS WASHERS K_HANGER CLOSURE STATIC GAP HANGER".split())
_NAMED_BY = ("ON", "OF", "FITTING", "NUMBER", "MARKED", "RUN")
_HOW_FAR = ("at", "a")
_THOUGHT = ("THINK", "HEDGE", "SAYS", "BE", "WILL")
_FARTHEST = 90  # letters between the two measures


def taken_for(items: tuple[Item, ...], text: str) -> tuple[Item, ...]:
    """The items, where a measure that was found stands in the place of one that was thought, which it remembers."""
    if sum(item.concept in _MEASURED for item in items) < 2:
        return items
    said = text.lower()
    if in_any("forms.thought").search(said) is None and in_any("forms.thought_so").search(said) is None:
        return items
    found = in_any("forms.found_by")
    place = 1
    while place < len(items):
        if items[place].concept in _MEASURED and (at := _thought(items, place, said, found)) is not None:
            first, cut, own = at
            sentence = _start(items, first)
            kept = [replace(one, concept="FILLER", value=None) if k >= sentence and one.concept in _THOUGHT else one for k, one in enumerate(items[:first])]
            right = _in_its_place(items[place], items[first])
            so = in_any("forms.thought_so").search(said[items[first].end : cut])
            begin, end = (items[first].end + so.start(), items[first].end + so.end()) if so is not None else (cut, cut)
            between = items[first + 1 : place] if own else [one for one in items[first + 1 : place] if one.start < cut and not begin <= one.start < end]
            items = (*kept, right, *between, *((replace(right, took_back=()),) if own else ()), *items[place + 1 :])
            place = place if own else first
        place += 1
    return items


def _thought(items, place: int, said: str, found) -> tuple[int, int, bool] | None:
    """Which item was thought, where the words begin that tell what was found, and whether they are read on their own ("measured two")."""
    for first in range(place - 1, -1, -1):
        between = said[items[first].end : items[place].start]
        if len(between) > _FARTHEST or items[first].concept in ("QUERY", "SIZE"):
            return None
        if items[first].concept not in _MEASURED or _is_a_name(items, first, said):
            continue
        if not _alike(items[first], items[place]) or _counts(items, place):
            return None
        if [concept_at(items, first - k) for k in (1, 2)] == ["SAYS", "I"] and concept_at(items, first - 3) in ("COMMA", "STOP", "BUT"):
            return None  # "stapled every three, I said three, it's two": what he owns to have said wrong
        match = next((one for one in found.finditer(between) if one.end() == len(between)), None)
        begin = _start(items, first)
        if match is None or not (items[first].concept not in ("NUM", "FRAC") or any(one.concept in _THINGS for one in items[begin:place])):
            return None
        ahead = said[items[begin].start : items[first].start]
        set_right = match.groupdict().get("right") is not None
        if not set_right and in_any("forms.thought").search(ahead) is None and in_any("forms.thought_so").search(between[: match.start()]) is None:
            return None
        return first, items[first].end + match.start(), "own" in match.groupdict() and match["own"] is not None
    return None


def _counts(items, place: int) -> bool:
    """ "It's two sides taped", "it's four by six": no measure that was found."""
    ahead = concept_at(items, place + 1)
    return ahead.startswith("K_") or ahead in _COUNTED


_COUNTED = ("BY", "SIDE", "SIDES_ALL", "SIDE_WORD", "GENERIC", "STAPLES", "TAPE", "TABS", "SCREWS", "JOINT", "COUNTED", "TIMES", "DET", "IN", "OVER", "THRU")


def _start(items, at: int) -> int:
    while at > 0 and items[at - 1].concept not in ("STOP", "QUERY"):
        at -= 1
    return at


def _is_a_name(items, at: int, said: str) -> bool:
    """ "the spacing on straight 87", "the tape on 9"; "stapled at two" is none."""
    before = concept_at(items, at - 1)
    return items[at].concept == "NUM" and (before.startswith("K_") or before in _NAMED_BY and said[items[at - 1].start : items[at - 1].end] not in _HOW_FAR)


def _alike(one: Item, other: Item) -> bool:
    return one.concept == other.concept or other.concept in ("NUM", "FRAC") and one.concept != "SIZE" or {one.concept, other.concept} <= set(LENGTHS)


def _in_its_place(item: Item, first: Item) -> Item:
    """What was found, in the unit of what was thought where it has none of its own."""
    value = item.value
    if item.concept != first.concept and item.concept in ("NUM", "FRAC") and first.value.raw:
        value = replace(first.value, value=value.value * (first.value.value / first.value.raw), raw=value.raw, near=value.near)
        item = replace(item, concept=first.concept)
    return replace(item, value=value, took_back=(*first.took_back, replace(first, took_back=())))
