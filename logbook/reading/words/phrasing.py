"""A language's patterns and words, each compiled once and found by where it stands in the language's record: `word("en", "told.echoes.leads")`.

`{name}` in a pattern is any of the language's first names.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from functools import cache
from operator import attrgetter

from logbook.languages import LANGUAGES
from logbook.reading.words.likely import AnyOf, Likely, alternatives, standing

_NOTHING = "(?!)"  # what a language without the pattern has


@cache
def word(code: str, where: str) -> Likely:
    """The one pattern that stands there."""
    return Likely(_filled(code, attrgetter(where)(LANGUAGES[code]) or _NOTHING))


@cache
def rows(code: str, where: str) -> tuple[Likely, ...]:
    """The patterns of a list, as they are written."""
    return tuple(Likely(pattern) for pattern in _written(code, where))


@cache
def apart(code: str, where: str) -> tuple[Likely, ...]:
    """The patterns of a list, of whole words."""
    return tuple(Likely(rf"(?<![\w'])(?:{pattern})(?![\w'])") for pattern in _written(code, where))


@cache
def valued(code: str, where: str) -> tuple[tuple[Likely, object], ...]:
    """The patterns of a list, of whole words, each with what stands beside it; nothing where it is written alone."""
    return tuple(zip(apart(code, where), (() if isinstance(row, str) else row[1] for row in attrgetter(where)(LANGUAGES[code])), strict=True))


@cache
def any_of(code: str, *where: str) -> AnyOf:
    """Whether any pattern of these lists finds something: most words hold none of them."""
    return AnyOf(pattern.pattern for one in where for pattern in apart(code, one))


@cache
def choice(code: str, where: str) -> AnyOf:
    """The one pattern that stands there, each of its alternatives with its own letters: whether it finds anything is known sooner so."""
    return AnyOf(alternatives(_filled(code, attrgetter(where)(LANGUAGES[code]) or _NOTHING)))


@cache
def in_any(where: str) -> Likely:
    """The one pattern that stands there, of every language that has one."""
    return Likely("|".join(pattern for language in LANGUAGES.values() if (pattern := attrgetter(where)(language))) or _NOTHING)


@cache
def words_of(where: str) -> frozenset[str]:
    """The words of all languages that stand there: crews mix them."""
    return frozenset().union(*(attrgetter(where)(language) for language in LANGUAGES.values()))


@cache
def table_of(where: str) -> Mapping[str, object]:
    """The same of words that each stand for something."""
    return {word: meant for language in LANGUAGES.values() for word, meant in attrgetter(where)(language).items()}


def finds(patterns: Iterable[Likely], text: str) -> re.Match[str] | None:
    """What the first of the patterns finds that finds anything."""
    long = len(text)
    for pattern in patterns:
        if pattern.low <= long and pattern.may(text) and (match := pattern.regex.search(text)) is not None:
            return match
    return None


def begins(patterns: Iterable[Likely], text: str) -> re.Match[str] | None:
    """The same, where the text begins with it."""
    long = len(text)
    for pattern in patterns:
        if pattern.low <= long and pattern.may(text) and (match := pattern.regex.match(text)) is not None:
            return match
    return None


def is_whole(patterns: tuple[Likely, ...], text: str) -> bool:
    """Whether one of the patterns is the whole text."""
    long = len(text)
    for pattern in standing(patterns, text):
        if pattern.low <= long <= pattern.high and pattern.regex.fullmatch(text) is not None:
            return True
    return False


def _written(code: str, where: str) -> tuple[str, ...]:
    return tuple(_filled(code, row if isinstance(row, str) else row[0]) for row in attrgetter(where)(LANGUAGES[code]))


def _filled(code: str, pattern: str) -> str:
    return pattern.replace("{name}", f"(?:{'|'.join(sorted(LANGUAGES[code].names))})")
