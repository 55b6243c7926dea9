"""Who works with the speaker: "Rick and me never taped it" is read as "we never taped it" is.

Somebody else's name before an act tells of somebody else's work; beside the speaker's own it tells of his. Every place in what was read is put back on the words of the note.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache

from logbook.languages import LANGUAGES
from logbook.reading.words.items import book
from logbook.reading.words.spelled import Cut


@cache
def _looks(code: str) -> re.Pattern[str] | None:
    looks = LANGUAGES[code].together.looks
    return re.compile(looks) if looks else None


@cache
def _pairs(code: str) -> re.Pattern[str]:
    told = LANGUAGES[code].together
    names = "|".join(sorted(LANGUAGES[code].names))
    name = rf"(?:{told.people}|(?i:{names})|(?P<named%d>[A-Z][a-z]{{2,}}))"
    pairs = "|".join(told.pairs)
    for at in range(pairs.count("{name}")):
        pairs = pairs.replace("{name}", name % at, 1)
    return re.compile(rf"(?<![\w'-])(?:{pairs})(?={told.before})")


@cache
def _object(code: str) -> re.Pattern[str]:
    return re.compile(LANGUAGES[code].together.not_behind)


def cuts(text: str, code: str) -> tuple[Cut, ...]:
    """Where the speaker and somebody with him do something, in order, and the word that means both."""
    looks = _looks(code)
    if looks is None or looks.search(text) is None:
        return ()
    told = LANGUAGES[code].together
    known = book(code).known | told.days
    return tuple(
        Cut(match.start(), match.end(), told.we)
        for match in _pairs(code).finditer(text)
        if _object(code).search(text[max(0, match.start() - 16) : match.start()]) is None and not any(name is not None and name.lower() in known for name in match.groups())
    )


@cache
def _one(code: str) -> tuple[re.Pattern[str], Mapping[str, str]]:
    told = LANGUAGES[code].together
    said = dict(told.as_one)
    return re.compile(rf"(?i)(?<![\w'-])(?:{'|'.join(said) or '(?!)'})(?![\w-]|'re)(?!{told.only_as_many})"), said


def as_one(text: str, code: str) -> tuple[Cut, ...]:
    """ "we lied", "we mean two": whoever speaks for a crew says of his work what he says who is alone."""
    words, said = _one(code)
    return tuple(Cut(match.start(), match.end(), said[match[0].lower()], same=True) for match in words.finditer(text))
