"""Tape that ran out right behind the staples: "Straight nine, stapled. Ran out of tape." is not taped.

Only where nothing else is said of its tape: "stapled and taped, out of tape now" is taped, and of what was fetched then the words behind tell.
"""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.parts import Part
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain

_CLOSES = ("TAPE", "TAPED", "TAPE_IT", "UNTAPED", "MARK181", "CLOSURE", "C_MASTIC", "RUBBED", "QUERY")
_FASTENS = ("STAPLED", "STAPLES", "FLAP")


def out_of_tape(row: Row, own: Row, cut_up: tuple[Part, ...], language: Language) -> list[Claim]:
    """The pieces that have no tape, for there was no more."""
    ran_out = word(language.code, "acts.ran_out")
    made: list[Claim] = []
    for part in cut_up if ran_out.may(plain(row.text)) else ():
        if own.is_blank(part.first) or ran_out.fullmatch(part.words) is None:
            continue
        first, last = _of_the_piece(row, part)
        concepts = [row.items[at].concept for at in (*range(first, part.first), *range(part.last, last))]
        before = [row.items[at].concept for at in range(first, part.first)]
        fetched = word(language.code, "acts.fetched").search(plain(row.words(part.last, last))) if part.last < last else None
        if not any(c in _CLOSES for c in concepts) and any(c in _FASTENS for c in before) and fetched is None:
            made.append(claim(row, "taped", False, part.first, part.last, weak=True, hedged=False))
    return made


def _of_the_piece(row: Row, part: Part) -> tuple[int, int]:
    """From the piece named last before these words up to the next one."""
    first = row.sentence_start(next((at for at in range(part.first - 1, -1, -1) if row.items[at].concept.startswith("K_")), 0))
    last = next((at for at in range(part.last, len(row.items)) if row.items[at].concept.startswith("K_")), len(row.items))
    return first, last
