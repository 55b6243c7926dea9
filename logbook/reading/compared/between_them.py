"""A gap between two pieces is of both: "straight 7 and elbow 8, half an inch of daylight between them"."""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of
from logbook.reading.words.tokens import plain

_JOINS = frozenset(("AND", "TO", "DET", "WITH", "COMMA"))
_NEAR = 3  # items
_WIDE = 16  # letters
_WORD = re.compile(r"\w+")


def between_them(row: Row, named, claims: list[Claim]) -> list[Claim]:
    """The gap told of the second, of the first too, where both are named right before it in its sentence."""
    made: list[Claim] = []
    for one in claims:
        if one.name != "gap" or not _said_of_two(row, one):
            continue
        start = row.sentence_start(one.first)
        here = [m for m in named if start <= m.first and m.last <= one.first]
        if len(here) == 2 and all(m.mark and not m.batch for m in here) and {item.concept for item in row.items[here[0].last : here[1].first]} <= _JOINS:
            made.append(replace(one, first=here[0].last - 1, last=here[0].last, uses=()))
    return made


def _said_of_two(row: Row, one: Claim) -> bool:
    for at in range(one.last - 1, min(one.last + _NEAR, row.sentence_end(one.first))):
        if row.words(at, at + 1).lower() in words_of("small.between"):
            behind = _WORD.findall(plain(row.text[row.items[at].end : row.items[at].end + _WIDE]))
            return not words_of("small.the_two").isdisjoint((" ".join(behind[:1]), " ".join(behind[:2])))
    return False
