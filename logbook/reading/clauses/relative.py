"""Words that hang on a place or a piece named before them: "…, where I still need tape", "the one Dave put together"."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain


def tells_where(row: Row, first: int, language: Language) -> bool:
    """ "Done but the top edge, where I still need tape", "where it meets the plenum I used mastic": he tells what is there, and asks for no place."""
    start, end = row.sentence_start(first), row.sentence_end(first)
    behind = any(item.concept == "COMMA" for item in row.items[start:first])
    return word(language.code, "told.voices.tells_where" if behind else "told.voices.where_it_meets").match(plain(row.words(first, end))) is not None


def the_one_of(row: Row, items, at: int, language: Language) -> bool:
    """ "Tee 8 is the one Dave put together", "that's the one the night crew taped": another made it; `at` is the "one" among the items of the clause."""
    if at < 1 or not row.text[items[at - 1].start : items[at].end].lower().endswith(language.told.voices.the_one):
        return False
    who = at + 1
    while who < len(items) - 1 and items[who].concept in ("THIS", "DET", "FILLER"):
        who += 1
    return (items[who].concept == "OTHER" or items[who].value in language.names) and who + 1 < len(items) and items[who + 1].concept not in ("AND", "COMMA", "OR")
