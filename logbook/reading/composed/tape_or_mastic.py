"""One closure told against another: "tape on it, not mastic", "no mastic, just tape", "mastic instead of tape".

What was used stands; what was not used states nothing, and denies nothing of the piece.
"""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.words.items import Item, concept_at

_USED = ("TAPE", "TAPED", "CLOSURE", "MARK181", "C_MASTIC", "SEALED")
_TAPES = ("TAPE", "CLOSURE", "MARK181")
_PASSED = ("ON", "IT", "COMMA", "IN_PLACE", "DET", "AND", "BE")


def told_apart(items: tuple[Item, ...], text: str, instead: frozenset[str]) -> tuple[Item, ...]:
    """The items, where of two closures the one that was not used is a mere word; `instead` are a language's words for it."""
    if not any(item.concept in ("C_MASTIC", "CLOSURE") for item in items):
        return items
    done = list(items)
    for place, item in enumerate(items):
        if item.concept not in ("NOT", "NO") and text[item.start : item.end].lower() not in instead:
            continue
        other = _ahead(items, place + 1, ("DET", "OF"))
        before = _back(items, place - 1) if item.concept != "NO" else None  # "mastic and no tape" denies the tape
        if other is None or not _differ(items, before, other):
            if item.concept in ("NOT", "NO") and other is not None and (used := _but(items, other, text)) is not None and _differ(items, used, other):
                before = used  # "no mastic, just tape"
            else:
                continue
        for at in range(place, other + 1):
            done[at] = replace(items[at], concept="WORD" if at == other else "FILLER", value=None)
        if items[before].concept == "TAPE":
            done[before] = replace(items[before], concept="TAPED", value=None)
    return tuple(done)


def _ahead(items, at: int, passed: tuple[str, ...]) -> int | None:
    while concept_at(items, at) in passed:
        at += 1
    return at if concept_at(items, at) in (*_TAPES, "C_MASTIC") else None


def _back(items, at: int) -> int | None:
    while at >= 0 and concept_at(items, at) in _PASSED:
        at -= 1
    return at if at >= 0 and concept_at(items, at) in _USED else None


def _but(items, other: int, text: str) -> int | None:
    """The closure that comes instead, behind "but" or "just"."""
    at = other + 1
    while concept_at(items, at) in ("COMMA", "BUT", "ONLY", "FILLER", "I"):
        at += 1
    between = {item.concept for item in items[other + 1 : at]}
    return at if between & {"BUT", "ONLY", "FILLER"} and concept_at(items, at) in (*_TAPES, "C_MASTIC") else None


def _differ(items, one: int | None, other: int) -> bool:
    if one is None:
        return False
    mastic = [items[at].concept == "C_MASTIC" for at in (one, other)]
    return mastic[0] != mastic[1] and items[one].concept != "SEALED" or items[one].concept == "CLOSURE" and items[other].concept == "MARK181"
