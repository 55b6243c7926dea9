"""An act that he began, where the words tell of when or where, and not that he got no further: "it was forty when I started taping it", "started stapling at the male end and worked my way down"."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import word


def goes_on(row: Row, at: int, before: str, language: Language) -> bool:
    """Whether the act at this item, which `before` tells was begun, is not told to have stopped there."""
    begun = word(language.code, "told.begun").search(before)
    if begun is None:
        return False
    end = row.sentence_end(at)
    rest = row.words(at + 1, end).lower() if at + 1 < end else ""
    if word(language.code, "told.stopped").search(rest) is not None:
        return False
    return begun.group("when") is not None or word(language.code, "told.worked_on").search(rest) is not None
