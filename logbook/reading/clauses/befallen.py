"""What another did to this piece is how it is: "the plumber stepped on it", "somebody poked a hole in it"."""

from __future__ import annotations

import re

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import in_any, words_of

_ITSELF = ("IT", "FITTING", "BRANCH_WORD", "FACING", "BOARD", "JOINT", "SIDE", "SIDE_WORD", "PANEL")
_BEFALLEN = ("FACING", "BOARD", "JOINT", "SIDE", "SIDE_WORD", "PANEL", "MALE", "FEMALE", "SHIPLAP", "GROOVE", "END", "IT")
_NAMED = ("FITTING", "NUMBER")


def harmed(row: Row, first: int, last: int, language: Language) -> bool:
    """Whether the clause of these items tells so, of this piece and of nothing else."""
    if _did_it(row, first, last):
        return True
    items = row.items[first:last]
    struck = len(items) > 1 and items[-1].concept in ("NUM", "MARKED") and items[-2].concept in ("TRADE_NOISE", "THROUGH")
    if not (struck or any(item.concept in _ITSELF or item.concept.startswith("K_") for item in items) or _of_itself(row, first, last, language)):
        return False
    return in_any("told.voices.harm").search(row.words(first, last).lower()) is not None


def _did_it(row: Row, first: int, last: int) -> bool:
    """ "somebody nicked the facing", "my partner gouged the top": the deed right behind who did it, and what it befell behind that."""
    at = next((k for k in range(first, last) if row.items[k].concept == "OTHER"), last) + 1
    while at < last and row.items[at].concept in ("FILLER", "HAVE", "HAVING"):
        at += 1
    if at >= last or row.items[at].concept != "DAMAGE":
        return False
    if not (words_of("small.skins") | words_of("small.edges")).isdisjoint(row.words(at, at + 1).lower().split()):
        return True  # "nicked the facing", one word of the book
    at += 1
    while at < last and row.items[at].concept in ("DET", "UP", "IN", "THIS"):
        at += 1
    return at < last and row.items[at].concept in _BEFALLEN


def _of_itself(row: Row, first: int, last: int, language: Language) -> bool:
    """Whether the harm says what it befell, or its words end with it where a piece was named before: "a hole in the wall" is in the wall."""
    for at in range(first, last):
        item = row.items[at]
        if item.concept != "DAMAGE":
            continue
        if re.search(language.told.voices.befell, row.text[item.start : item.end].lower()):
            return True
        if (at + 1 == last or row.items[at + 1].concept == "WITH" or row.words(at + 1, at + 2).lower() in language.told.voices.in_it) and any(one.concept.startswith("K_") or one.concept in _NAMED for one in row.items[:first]):
            return True
    return False
