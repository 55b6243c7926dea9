"""Words in another spelling than the one the patterns know, found in a text by what stands around them."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from logbook.languages.thumbs import Short
from logbook.reading.words.tokens import Token, lows

_NEAR = 32  # letters on either side that are looked at


@dataclass(frozen=True, slots=True)
class Cut:
    """Letters of the note, and what stands in their place; `same` where that is the same word."""

    start: int
    end: int
    means: str
    same: bool = False


@dataclass(frozen=True, slots=True)
class Row:
    spelled: str
    tokens: int
    means: str
    same: bool
    before: re.Pattern[str] | None
    after: re.Pattern[str] | None


def laid_out(shorts: Iterable[Short]) -> Mapping[str, tuple[Row, ...]]:
    """The first word of each spelling, with its rows, the longest first and those that ask for neighbours before those that ask for none."""
    rows: dict[str, list[Row]] = {}
    for one in shorts:
        words = lows(one.words)
        rows.setdefault(words[0], []).append(Row(one.words, len(words), one.means, one.same, re.compile(one.before) if one.before else None, re.compile(one.after) if one.after else None))
    return {first: tuple(sorted(told, key=lambda row: (-row.tokens, row.before is row.after is None))) for first, told in rows.items()}


def cuts_of(text: str, found: tuple[Token, ...], rows: Mapping[str, tuple[Row, ...]]) -> tuple[Cut, ...]:
    """Every place of the text where one of the rows stands, in order; none within another."""
    if rows.keys().isdisjoint([token.low for token in found]):
        return ()
    low = text.lower() if len(text.lower()) == len(text) else text
    made: list[Cut] = []
    end = 0
    for at, token in enumerate(found):
        if token.start < end or (first := rows.get(token.low)) is None:
            continue
        for row in first:
            if _stands(row, low, found, at):
                end = found[at + row.tokens - 1].end
                made.append(Cut(token.start, end, _as_great(row, token.text), row.same))
                break
    return tuple(made)


def _as_great(row: Row, first: str) -> str:
    """ "Didnt" is "Didn't": the same word keeps its capital."""
    return row.means[:1].upper() + row.means[1:] if row.same and first[0].isupper() else row.means


def _stands(row: Row, low: str, found, at: int) -> bool:
    last = at + row.tokens - 1
    if last >= len(found) or low[found[at].start : found[last].end] != row.spelled:
        return False
    if row.same and len(found[at].text) == 1 == row.tokens and found[at].text.isupper():  # "line N" is no "and"
        return False
    start, end = found[at].start, found[last].end
    if row.before is not None and row.before.search(low[max(0, start - _NEAR) : start]) is None:
        return False
    return row.after is None or row.after.match(low[end : end + _NEAR]) is not None


def written_out(text: str, made: tuple[Cut, ...]) -> str:
    """The text with what is meant in the place of what was written."""
    parts, end = [], 0
    for cut in made:
        parts += [text[end : cut.start], cut.means]
        end = cut.end
    return "".join([*parts, text[end:]])
