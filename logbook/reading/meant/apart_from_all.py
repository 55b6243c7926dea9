"""One piece that is set apart from several, and what is told of it, is read in a sentence of its own: "stapled at two except 113, which is at three" as "stapled at two. Piece 113 is at three"."""

from __future__ import annotations

from logbook.languages import LANGUAGES
from logbook.languages.bare_names import BareNames
from logbook.reading.meant.bare_names import numbers_said
from logbook.reading.meant.name_places import COUNTS_UP_TO, low
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import Token

_FAR = 3  # tokens between the word that sets apart and the number
_TOLD = 12  # tokens of what is told of it


def cuts(found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    words = LANGUAGES[code].bare_names
    if not words.sets_apart or words.sets_apart.isdisjoint(token.low for token in found) or low(found, 0) in words.sets_apart:
        return ()
    said, starts = numbers_said(found, code)
    made = []
    for at, last, value in said:
        begin = next((k for k in range(at - 1, max(0, at - 1 - _FAR), -1) if found[k].low in words.sets_apart), None)
        if begin is None or value <= COUNTS_UP_TO or any(found[k].low not in words.naming | words.points | words.on | words.of_use | words.from_it for k in range(begin + 1, at)):
            continue
        behind = last + (low(found, last) == "'s")
        end = _pronoun(found, behind, words)
        if end is None or not _measured(found, end, starts, words):
            continue
        begin -= low(found, begin - 1) in words.sets_apart or low(found, begin - 1) in words.apart_ahead
        start = found[begin - 1].start if low(found, begin - 1) == "," else found[begin - 1].end
        named = low(found, at - 1) if low(found, at - 1) in words.naming else words.name
        made.append(Cut(start, found[end - 1].end, f". {named.capitalize()} {value}"))
    return tuple(made)


def _pronoun(found: tuple[Token, ...], at: int, words: BareNames) -> int | None:
    """Behind ", which", ", that one", ", it" and ", where it"."""
    if low(found, at) != ",":
        return None
    at += 1
    if low(found, at) in words.where:
        at += 1
        if low(found, at) not in words.stands_for:
            return None
    elif low(found, at) not in words.stands_for:
        return None
    return at + 1 + (low(found, at + 1) in words.ones)


def _measured(found: tuple[Token, ...], at: int, starts: set[int], words: BareNames) -> bool:
    """Whether a measure is told, or a way of standing, and nothing is denied."""
    end = next((k for k in range(at, min(at + _TOLD, len(found))) if found[k].low in (".", ";", "?", "!")), min(at + _TOLD, len(found)))
    told = [found[k].low for k in range(at, end)]
    if any(one in words.denials or one.endswith("n't") or one in ("none", "without", "never") for one in told):
        return False
    return any(k in starts for k in range(at, end)) or not words.ways_apart.isdisjoint(told)
