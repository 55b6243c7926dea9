"""Work still to do, told by its thing alone and without a verb: "tape to follow", "the only thing left is the tape"."""

from __future__ import annotations

from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, Open, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.parts import Part
from logbook.reading.clauses.set_right import without_leads
from logbook.reading.words.likely import Likely, where_standing
from logbook.reading.words.tokens import plain


def waits(row: Row, own: Row, cut_up: tuple[Part, ...], language: Language) -> tuple[list[Claim], set[int]]:
    """ "tape to follow", "the only thing left is the tape": work still to do, told without a verb."""
    made, spent, text = [], set(), plain(row.text)
    waiting = [_waiting(language.code)[at] for at in where_standing(_waiting_patterns(language.code), text)]
    for part in cut_up if waiting else ():
        if own.is_blank(part.first) or not any(item.concept in _WAITING for item in row.items[part.first : part.last]):
            continue
        words = without_leads(part.words, language)
        for pattern, name in waiting:
            if pattern.fullmatch(words):
                start, end = row.items[part.first].start, row.items[part.last - 1].end
                made.append(claim(row, name, False, part.first, part.last, opens=(Open("piece", name, start, end),), pending=True, hedged=False))
                spent.update(range(part.first, part.last))
                break
    return made, spent


_WAITING = ("TAPE", "TAPED", "STAPLES", "STAPLE", "STAPLED", "VANES", "TABS", "RUB", "RUBBED", "TAPE_IT", "WORD")


@cache
def _waiting(code: str) -> tuple[tuple[Likely, str], ...]:
    turns = LANGUAGES[code].turns
    return tuple((Likely(pattern.replace("{act}", act)), name) for pattern in turns.waits for act, name in turns.waiting)


@cache
def _waiting_patterns(code: str) -> tuple[Likely, ...]:
    return tuple(pattern for pattern, _ in _waiting(code))
