"""A measure that is denied, and the one that it is, right behind: "they are not eighteen inches apart, they are twelve" is twelve inches apart."""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.composed.corrections import replacing
from logbook.reading.composed.size_pairs import LENGTHS
from logbook.reading.words.items import Item, concept_at
from logbook.reading.words.phrasing import words_of

_LEADS = ("EVERY", "ON", "HEDGE")
_UNITS = ("APART", "LONG", "WIDE", "STATIC", "INWG")
_PARTS = ("COMMA", "STOP", "AND", "BUT", "DASH")
_ENDS = ("COMMA", "STOP", "AND", "BUT", "")


def not_but(items: tuple[Item, ...], text: str) -> tuple[Item, ...]:
    if not any(item.concept == "NOT" for item in items):
        return items
    made: list[Item] = []
    at = 0
    while at < len(items):
        right = _told_right(items, at, text) if items[at].concept == "NOT" and at else None
        if right is None:
            made.append(items[at])
            at += 1
            continue
        put, at = right
        made.extend(put)
    return tuple(made)


def _told_right(items: tuple[Item, ...], at: int, text: str) -> tuple[list[Item], int] | None:
    """What stands in the place of the denial at `at` and of what it is instead, and where that ends."""
    k = _past(items, at + 1, _LEADS)
    wrong = k
    if concept_at(items, wrong) not in LENGTHS:
        return None
    k += 1
    unit = items[k] if concept_at(items, k) in _UNITS else None
    k += unit is not None
    parted = _past(items, k, _PARTS)
    if not 0 < parted - k <= 2 or concept_at(items, parted) != "BE" or text[items[parted].start : items[parted].end].lower().replace("’", "'") not in words_of("small.it_is"):
        return None
    right = _past(items, parted + 1, _LEADS)
    if concept_at(items, right) not in LENGTHS or items[right].value.value == items[wrong].value.value:
        return None
    end = right + 1
    if concept_at(items, end) in _UNITS:
        unit, end = items[end], end + 1
    if concept_at(items, end) not in _ENDS:
        return None
    told = [*items[parted:right], replacing(items[right], items[wrong])]
    return ([*told, replace(items[right], concept=unit.concept, value=unit.value)] if unit is not None else told), end


def _past(items: tuple[Item, ...], at: int, concepts: tuple[str, ...]) -> int:
    while concept_at(items, at) in concepts:
        at += 1
    return at
