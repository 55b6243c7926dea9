"""Mastic that closes a joint in part: "mastic on half of it", "put mastic on most of the seam", "couldn't get mastic on the back".

All the ways of telling that a joint is not closed all round are known of tape. Where mastic alone closes the piece, the note is read once more with tape in its
place; what is so told to be open is told of the mastic, and the mastic closes nothing then.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from functools import cache

from logbook.languages import LANGUAGES
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import plain
from logbook.said import Entry, Reading, Unread

_ALL_SIDES = 4
_OF_TAPE = ("taped", "sides_taped")
_MENDED = ("damage_repaired", "repair_method")


@cache
def _words(code: str) -> re.Pattern[str] | None:
    rows = LANGUAGES[code].mastic_as_tape.words
    return re.compile(rf"(?<![\w'-])(?:{'|'.join(f'({said})' for said, _ in rows)})(?![\w-])") if rows else None


@cache
def _beside(code: str) -> re.Pattern[str]:
    return re.compile(LANGUAGES[code].mastic_as_tape.beside)


def mastic_as_tape(text: str, code: str, read: Callable[[], Reading], as_tape: Callable[[tuple[Cut, ...]], Reading]) -> Reading:
    """The reading of the note; `as_tape` reads it with the letters of the cuts as they mean."""
    told = read()
    made = _cuts(text, code) if told.fittings else ()
    if not made or any(fact.name in _MENDED or fact.name == "facing_damage" and fact.value != "none" for entry in told.fittings for fact in entry.facts):
        return told
    other = as_tape(made)
    if [_mark(one) for one in other.fittings] != [_mark(one) for one in told.fittings]:
        return told
    pairs = tuple((own, _open_too(own, taped)) for own, taped in zip(told.fittings, other.fittings, strict=True))
    if all(now is own for own, now in pairs):
        return told
    known = [(fact.start, fact.end) for own, now in pairs if now is not own for fact in now.facts if fact not in own.facts]
    return replace(told, fittings=tuple(_without(now, known) for _, now in pairs), unread=_past(told.unread, known))


def _without(entry: Entry, known: list[tuple[int, int]]) -> Entry:
    return replace(entry, unread=_past(entry.unread, known)) if entry.unread else entry


def _past(unread: tuple[Unread, ...], known: list[tuple[int, int]]) -> tuple[Unread, ...]:
    """What was not understood and is not known by now."""
    return tuple(one for one in unread if not any(one.start < end and start < one.end for start, end in known))


def _cuts(text: str, code: str) -> tuple[Cut, ...]:
    pattern = _words(code)
    said = plain(text)
    if pattern is None or len(said) != len(text) or pattern.search(said) is None or _beside(code).search(said) is not None:
        return ()
    means = [tape for _, tape in LANGUAGES[code].mastic_as_tape.words]
    return tuple(Cut(found.start(), found.end(), means[found.lastindex - 1]) for found in pattern.finditer(said))


def _mark(entry: Entry) -> object:
    return next((fact.value for fact in entry.facts if fact.name == "mark"), None)


def _open_too(own: Entry, taped: Entry) -> Entry:
    """The piece with what of its tape would be open, where nothing of its mastic was yet."""
    if any(fact.name in _OF_TAPE for fact in own.facts):
        return own
    of_tape = [fact for fact in taped.facts if fact.name in _OF_TAPE]
    facts = of_tape if any(fact.value is False or fact.name == "sides_taped" and fact.value < _ALL_SIDES for fact in of_tape) else []
    items = [item for item in taped.open_items if item.denies == "taped"]
    if not facts and not items or own.open_items and (not items or any(fact.name == "gap" for fact in own.facts)):
        return own
    denied = any(fact.value is False for fact in facts)
    kept = [fact for fact in own.facts if not (denied and fact.name == "closure" and fact.value == "mastic")]
    others = [one for one in own.open_items if not any(one.start < item.end and item.start < one.end for item in items)]  # "faltan las vanes y el mástique"
    return replace(own, facts=(*kept, *facts), open_items=(*others, *items))
