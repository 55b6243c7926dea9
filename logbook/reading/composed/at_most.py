""" "The staples aren't over two inches apart", "never go past two": a bound that is kept. They are in, and the figure is the most of it."""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.composed.size_pairs import LENGTHS
from logbook.reading.words.items import Item, concept_at
from logbook.reading.words.phrasing import in_any

_ON_THE_WAY = ("MOVE", "RUN", "WORD", "BE", "GENERIC", "OVER", "TAKES", "HEDGE", "FILLER", "EVERY", "UP")
_AT_LEAST = ("TAPE", "CLOSURE", "LEG", "TABS")  # of which the figure is the least
_FARTHEST = 5  # items between the "not" and the figure


def at_most(items: tuple[Item, ...], text: str) -> tuple[Item, ...]:
    bounds = in_any("told.keeps_within")
    if not any(item.concept == "NOT" for item in items) or not bounds.may(text.lower()):
        return items
    made: list[Item] = []
    skip = 0
    for at, item in enumerate(items):
        if at < skip:
            continue
        figure = _figure(items, at) if item.concept == "NOT" else None
        if figure is None or bounds.search(text[item.end : items[figure].end].lower()) is None:
            made.append(item)
            continue
        made += [replace(item, concept="BE", value=None), *(one for one in items[at + 1 : figure] if one.concept == "EVERY"), replace(items[figure], value=replace(items[figure].value, near=concept_at(items, at - 1) in _AT_LEAST and items[figure].value.near))]
        skip = figure + 1
    return tuple(made)


def _figure(items: tuple[Item, ...], at: int) -> int | None:
    """The figure that is not passed, where nothing but the way to it stands between."""
    for place in range(at + 1, min(at + _FARTHEST, len(items))):
        if items[place].concept in LENGTHS:
            return place if items[place].concept != "NUM" or concept_at(items, place + 1) == "APART" or concept_at(items, place - 1) == "EVERY" else None
        if items[place].concept not in _ON_THE_WAY:
            return None
    return None
