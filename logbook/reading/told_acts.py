"""Acts told by what was done with the tool or the stuff: "leaned on it with the squeegee", "ran staples through it", "legs kick outward"."""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.claims import Claim, claim
from logbook.reading.fell_short import Part
from logbook.reading.grammar import Row

_UNDOES = ("NOT", "NO", "NOT_DONE", "PENDING", "NEED", "WILL", "LATER", "FORGOT", "IF", "QUESTION", "REMIND", "LEFT_OUT", "GOING_TO", "DRAWING", "OTHER", "ALL_BUT", "EXCEPT", "MISSING", "HEDGE_NOT")


@cache
def _patterns(code: str) -> tuple[tuple[str, object, re.Pattern[str]], ...]:
    return tuple((name, value, re.compile(rf"(?<![\w'])(?:{pattern})(?![\w'])")) for name, value, pattern in LANGUAGES[code].forms.acts)


@cache
def _any(code: str) -> re.Pattern[str]:
    return re.compile("|".join(pattern.pattern for *_, pattern in _patterns(code)) or r"(?!)")


def told(row: Row, stated: Row, cut_up: tuple[Part, ...], language: Language) -> list[Claim]:
    """The acts of parts that are the speaker's own and deny nothing; "not a scratch on it" denies only what it means to."""
    made: list[Claim] = []
    for part in cut_up:
        if not _any(language.code).search(part.words):
            continue
        for name, value, pattern in _patterns(language.code):
            match = pattern.search(part.words)
            if match is None:
                continue
            start, end = row.items[part.first].start + match.start(), row.items[part.first].start + match.end()
            first = next(at for at in range(part.first, part.last) if row.items[at].end > start)
            last = next((at for at in range(first + 1, part.last) if row.items[at].start >= end), part.last)
            denied = any(row.items[at].concept in _UNDOES for at in range(part.first, part.last))
            if value != "none" and (denied or any(stated.is_blank(at) for at in range(first, last))):
                continue
            made.append(claim(row, name, value, first, last, weak=value is True, hedged=False))
    return made
