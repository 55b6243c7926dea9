"""An act that was done to nothing: "wiped nothing off before I taped", "trimmed none of the male end", "bent none of them"."""

from __future__ import annotations

from logbook.reading.clauses.denials import DENIED, live
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.stance import Clause
from logbook.reading.words.phrasing import words_of

DONE = {concept: DENIED[concept] for concept in ("STAPLED", "TAPED", "RUBBED", "TRIMMED", "WIPED", "REPAIRED", "PREHEATED", "BENT")} | {"CLINCHED": ("tabs_bent", False)}
_BEHIND = ("DOWN", "UP", "OVER", "FROM", "IN", "OUT")
_WORDS = 3  # "down", "off"


def done_to_none(row: Row, clause: Clause, at: int) -> int | None:
    """Past what the act at `at` was done to, where that is nothing; None where it was done to something."""
    k = at + 1
    while k < min(clause.last, at + _WORDS) and live(row, k) in _BEHIND and row.words(k, k + 1).lower() in words_of("small.off_it"):
        k += 1
    if k >= clause.last or live(row, k) not in ("NOT", "NO") or row.words(k, k + 1).lower() not in words_of("small.nothing"):
        return None
    if live(row, at) in ("BENT", "CLINCHED") and not any(item.concept in ("TABS", "TAB_WORD", "K_COLLAR") for item in row.items):
        return None
    behind = row.words(k + 1, k + 2).lower() if k + 1 < len(row.items) else ""
    return None if behind in words_of("small.nothing_more") or live(row, k + 1 if k + 1 < clause.last else k) in ("BUT", "EXCEPT", "ALL_BUT", "OTHER", *DONE) else k + 1
