"""What is known of a pattern before any text is looked through: the letters that it needs, how long a match can be, how one begins.

Reckoning it from some four thousand patterns took five of the six seconds before the first note of a process. It hangs on the
pattern alone, so it is kept in known.json, by the digest of the pattern; of one that is not there it is reckoned anew.
`python tests/making/known_patterns.py` writes the file.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from functools import cache
from hashlib import blake2b
from importlib.resources import files
from re import _parser  # the standard library's own reading of a pattern; it has no public door
from types import MappingProxyType
from typing import NamedTuple

from logbook.reading.words.needs import MOST, needed, shortest, words_needed
from logbook.reading.words.openings import openings


class Known(NamedTuple):
    """`needs`: letters of which a text must hold one (none: every text is tried); `besides`: all such sets; `low`, `high`: how few and how many letters it can match; `opens`: the letters with which that begins, each as long (none: with any)."""

    needs: tuple[str, ...]
    besides: tuple[tuple[str, ...], ...]
    low: int
    high: int
    opens: frozenset[str]


def known(pattern: str) -> Known:
    kept = _kept().get(digest(pattern))
    if kept is None:
        return reckoned(pattern)
    needs, besides, low, high, opens = kept[:5]
    return Known(tuple(needs), tuple(map(tuple, besides)), low, high, frozenset(opens))


def reckoned(pattern: str) -> Known:
    parsed = _parser.parse(pattern)
    each = needed(parsed)
    needs = next((letters for one in each if (letters := shortest(one))), ())
    return Known(needs, tuple(tuple(sorted(one)) for one in each), *parsed.getwidth(), openings(parsed))


def words_of_each(pattern: str) -> tuple[tuple[str, ...], ...]:
    """Sets of words or parts of words, of each of which every match of the pattern holds one, wherever the signs between its words may stand."""
    kept = _kept().get(digest(pattern), ())
    return tuple(map(tuple, kept[5])) if len(kept) > 5 else words_reckoned(pattern)


def words_reckoned(pattern: str) -> tuple[tuple[str, ...], ...]:
    return tuple(sorted((shortest(one) for one in set(words_needed(pattern)) if len(one) <= MOST), key=lambda one: (len(one), one)))


def digest(pattern: str) -> str:
    return blake2b(pattern.encode(), digest_size=8).hexdigest()


@cache
def _kept() -> Mapping[str, list]:
    return MappingProxyType(json.loads((files("logbook") / "reading" / "words" / "known.json").read_text(encoding="utf-8")))
