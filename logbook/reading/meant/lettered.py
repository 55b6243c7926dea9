"""A mark that is told as a number in words with its letter is written as one: "el diecisiete B se aplastó" is "el 17B", "access door AD two" is "AD2"."""

from __future__ import annotations

from logbook.languages import LANGUAGES
from logbook.reading.words import numbers
from logbook.reading.words.phrasing import words_of
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import Token

_NO_MARKS = frozenset("IX")  # the speaker, and the sign of a size
_LETTERS = 3
_LONGEST = 3  # words of such a number: "ciento treinta y uno" is told with its kind
_SIGNS = frozenset(".,;:!?")


def cuts(found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """Each number behind an article, or where a sentence begins, with the capital letter behind it."""
    made = []
    for at, token in enumerate(found):
        if at and len(token.text) == 1 and token.text.isupper() and token.text not in _NO_MARKS and token.gap == " " and (first := _number_before(found, at, code)) is not None:
            made.append(Cut(found[first].start, token.end, f"{numbers.whole(found, first, LANGUAGES[code]).value}{token.text}"))
        elif at and 1 < len(token.text) <= _LETTERS and token.text.isupper() and found[at - 1].low in LANGUAGES[code].bare_names.naming and (said := _number_behind(found, at, code)) is not None:
            made.append(Cut(token.start, found[said.end - 1].end, f"{token.text}{said.value}"))
    return tuple(made)


def _number_behind(found: tuple[Token, ...], at: int, code: str) -> numbers.Number | None:
    """ "Access door AD two": the number of letters that name a piece behind its kind."""
    said = numbers.whole(found, at + 1, LANGUAGES[code]) if at + 1 < len(found) and found[at + 1].sort == "word" and found[at + 1].gap == " " else None
    return said if said is not None and (said.end == len(found) or found[said.end].low in _SIGNS) else None


def _number_before(found: tuple[Token, ...], at: int, code: str) -> int | None:
    for first in range(max(0, at - _LONGEST), at):
        said = numbers.whole(found, first, LANGUAGES[code]) if found[first].sort == "word" else None
        before = found[first - 1].low if first else "."
        if said is not None and said.end == at and (before in words_of("small.articles") or before in ("al", "del") or before in _SIGNS):
            return first
    return None
