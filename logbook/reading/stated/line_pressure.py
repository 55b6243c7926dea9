"""Static pressure said of the line: "that line's at two inches", "we're running an inch and a quarter there".

A length that the line, the main or the system runs at can only be inches of water.
"""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import word
from logbook.reading.clauses.stance import Clause
from logbook.reading.words.tokens import plain

_MOST = 20  # inches of water
_NOT_BEHIND = ("BY", "BACK", "BOARD", "TAPE", "CLOSURE", "MARK181", "LEG", "LONG", "STAPLES", "TABS", "WASHERS", "OVER", "WIDE", "HIGH", "THICK", "APART", "FROM", "OFF", "GAP", "DAMAGE", "ROUND", "EVERY", "K_COLLAR", "K_HANGER")
_SPACED = ("STAPLES", "STAPLED", "STAPLE", "SCREWS", "TABS", "TAPE", "VANES")  # "eleven staples per side at two inches"
_LINES = ("K_TRANSITION", "K_OFFSET", "STATIC", "LEAK_TEST")  # lines are drawn on these, or the pressure has its own word


def _held(row: Row, stated: Row, taken: set[int]) -> list[Claim]:
    """ "It took fifty cfm to hold two inches, four hundred square feet of duct": the one length of a test for leaks."""
    lengths = [at for at, item in enumerate(row.items) if item.concept in ("LEN", "FRAC") and at not in taken and not stated.is_blank(at)]
    if len(lengths) != 1 or not 0 < row.items[lengths[0]].value.value <= _MOST or row.items[lengths[0]].value.unit not in (None, "in"):
        return []
    taken.add(lengths[0])
    return [claim(row, "static_pressure", row.items[lengths[0]].value.value, lengths[0], lengths[0] + 1, uses=(lengths[0],))]


def pressures(row: Row, stated: Row, cut: tuple[Clause, ...], taken: set[int], language: Language) -> list[Claim]:
    """Claims of static pressure, from lengths that nothing else has taken."""
    concepts = {item.concept for item in row.items}
    if {"CFM", "FT2"} <= concepts and not concepts & {"INWG", "STATIC", "LEAK_TEST"}:
        return _held(row, stated, taken)
    if word(language.code, "line_cue").search(plain(row.text)) is None or concepts & set(_LINES):
        return []
    made: list[Claim] = []
    for clause in cut:
        for at in range(clause.first + 1, clause.last):
            item = row.items[at]
            if item.concept not in ("LEN", "FRAC") or at in taken or stated.is_blank(at) or not 0 < item.value.value <= _MOST or item.value.unit not in (None, "in"):
                continue
            ahead = row.items[at + 1].concept if at + 1 < len(row.items) else ""
            match = word(language.code, "line_runs_at").search(plain(row.text[row.items[clause.first].start : item.start]))
            is_so = word(language.code, "line_is").match(plain(row.text[item.end : item.end + 24]))
            if (match is None and is_so is None) or ahead in _NOT_BEHIND or any(row.items[k].concept in _SPACED for k in range(clause.first, at)):
                continue
            taken.add(at)
            first = at if match is None else row.within(clause.first, at + 1, match)[0]
            made.append(claim(row, "static_pressure", item.value.value, first, at + 1, uses=(at,)))
    return made
