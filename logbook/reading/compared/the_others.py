"""The rest of a batch: "80, 81 and 82, 81 isn't rubbed, the other two are rubbed", "el 81 sin cinta, los otros sí llevan"."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.mention import Mention
from logbook.reading.clauses.parts import plain

_OPENS = ("STOP", "QUERY", "COMMA", "BUT", "AND", "ONLY")


@cache
def _begins(code: str) -> re.Pattern[str]:
    return re.compile(rf"(?:{LANGUAGES[code].turns.others_of_them or '(?!)'})(?![\w'])")


def of_the_others(row: Row, named: list[Mention], claims: list[Claim], language: Language) -> list[Claim]:
    """The claims, where what is said of the others is of each of a batch but those that were told of apart before."""
    claims = _only_these(row, named, claims)
    batch = next((m for m in named if len(m.batch) > 1), None)
    if batch is not None:
        claims = _only_so_many(row, batch, claims, language)
    if batch is None or not language.turns.others_of_them or _begins(language.code).search(plain(row.text)) is None:
        return claims
    marks = [mark for mark, _ in batch.batch]
    made = list(claims)
    for first, item in enumerate(row.items):
        if first < batch.last or (row.items[first - 1].concept not in _OPENS) or _begins(language.code).match(plain(row.text[_start(row, first) : item.start + 40])) is None:
            continue
        apart = {m.mark for m in named if batch.first < m.first < first and m.mark in marks}
        end = min([row.sentence_end(first), *(m.first for m in named if m.first > first)])
        told = [c for c in made if first <= c.first < end and c.for_mark is None]
        if apart and told and len(apart) < len(marks):
            made = [c for c in made if c not in told] + [replace(c, for_mark=mark, both_at=-1) for mark in marks if mark not in apart for c in told]
    return made


def _start(row: Row, at: int) -> int:
    """Where the words of this item begin, with an article that belongs to its phrase."""
    before = row.items[at - 1].end if at else 0
    return before + len(row.text[before : row.items[at].start]) - len(row.text[before : row.items[at].start].lstrip())


_TOLD_OF_ONE = ("stapled", "taped", "rubbed_down", "vanes", "trimmed", "surface_clean", "preheated", "tabs_bent")


def _only_these(row: Row, named: list[Mention], claims: list[Claim]) -> list[Claim]:
    """ "Both taped, only 92 is rubbed": so the others that were named before are not."""
    made = list(claims)
    for one in named:
        marks = [one.mark] if one.mark is not None else [mark for mark, _ in one.batch]
        before = list(dict.fromkeys(mark for m in named if m.first < one.first for mark in ([m.mark] if m.mark is not None else [mark for mark, _ in m.batch])))
        lead = range(max(0, one.first - 1), one.last)
        if not marks or len(before) < 2 or not set(marks) < set(before) or not any(row.items[k].concept == "ONLY" or row.words(k, k + 1).lower() in ("just", "solo", "sólo", "nomás") for k in lead):
            continue
        end = min([row.sentence_end(one.last), *(m.first for m in named if m.first > one.first), *(k for k in range(one.last, len(row.items)) if row.items[k].concept in ("COMMA", "BUT"))])
        told = {c.name: c for c in claims if one.first <= c.first < end and c.name in _TOLD_OF_ONE and c.value is True and c.for_mark is None and not any(d.name == c.name and d.first < one.first for d in claims)}
        first = next(k for k in lead if row.items[k].concept == "ONLY" or k < one.first)
        span = {"first": first, "start": row.items[first].start, "end": row.items[one.last - 1].end}  # what denies it is that it is only this one
        made += [replace(c, **span, value=False, for_mark=mark, both_at=-1, uses=(), also=((c.start, c.end),), corrects=True, weak=False) for c in told.values() for mark in before if mark not in marks]
    return made


def _only_so_many(row: Row, batch: Mention, claims: list[Claim], language: Language) -> list[Claim]:
    """ "Todos engrapados, encintados nomás los dos primeros", "only the first two are taped": the others of the batch are not."""
    pattern = _so_many(language.code)
    match = pattern.search(plain(row.text))
    if match is None:
        return claims
    marks = [mark for mark, _ in batch.batch]
    count = next((n for n, words in enumerate(language.turns.so_many, 1) if re.fullmatch(words, match.group("n") or "")), 1)
    first, last = _items_of(row, match)
    begin = max((k + 1 for k in range(first) if row.items[k].concept in _OPENS), default=0)
    end = next((k for k in range(last, len(row.items)) if row.items[k].concept in ("STOP", "QUERY", "COMMA")), len(row.items))
    rest = marks[count:] if match.group("first") else marks[:-count]
    told = [c for c in claims if begin <= c.first < end and c.name in _TOLD_OF_ONE and c.value is True and c.for_mark is None]
    if not rest or len(rest) == len(marks) or not told:
        return claims
    span = {"first": first, "start": row.items[first].start, "end": row.items[last - 1].end}
    return [*claims, *(replace(c, **span, value=False, for_mark=mark, both_at=-1, uses=(), also=((c.start, c.end),), corrects=True, weak=False) for c in told for mark in rest)]


def _items_of(row: Row, match: re.Match[str]) -> tuple[int, int]:
    inside = [k for k, item in enumerate(row.items) if item.start < match.end() and match.start() < item.end]
    return inside[0], inside[-1] + 1


@cache
def _so_many(code: str) -> re.Pattern[str]:
    return re.compile(LANGUAGES[code].turns.only_so_many or "(?!)")
