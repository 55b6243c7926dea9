"""A piece that has to wait for what was done to the others: "taped 4 and 5, 6 has to wait for the lift".

The act is that of the sentence, or of the one before where the piece begins its own, and only where it is one alone.
"""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, Open, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.mention import Mention
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain

_ACTS = ("stapled", "taped", "rubbed_down")


@cache
def _named(code: str) -> tuple[tuple[str, re.Pattern[str]], ...]:
    """The acts, by the thing, the doing and the deed: no plan."""
    return tuple((row[0], re.compile(rf"(?<![\w'])(?:{row[1]}|{row[3]}|{row[4]})(?![\w'])")) for row in LANGUAGES[code].acts.forms if row[0] in _ACTS)


def waits_its_turn(row: Row, named: list[Mention], language: Language) -> list[Claim]:
    """Of each such piece, the act that it waits for."""
    waits = word(language.code, "acts.piece_waits")
    if not waits.may(plain(row.text)):
        return []
    made: list[Claim] = []
    for one in (m for m in named if m.mark_at is not None and m.first > 0):
        first, last = one.mark_at[1], row.sentence_end(one.mark_at[1])
        if first >= last or row.is_blank(one.mark_at[0]) or waits.match(plain(row.words(first, last))) is None:
            continue
        start = row.sentence_start(one.first)
        if start >= one.first - 1 and start > 1:
            start = row.sentence_start(start - 1)
        said = plain(row.words(start, one.first))
        acts = [name for name, pattern in _named(language.code) if pattern.search(said)]
        if len(acts) == 1 and any(m.first < one.first and m.first >= start for m in named):
            begin, end = row.items[one.first].start, row.items[last - 1].end
            made.append(claim(row, acts[0], False, first, last, opens=(Open("piece", acts[0], begin, end),), pending=True, hedged=False))
    return made
