"""News of other people before his own work: "my cousin's wedding is Saturday, straight 94 is stapled". What another said or called about is his."""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row
from logbook.reading.words.items import Item
from logbook.reading.words.phrasing import words_of

_TOLD = ("STAPLED", "TAPED", "RUBBED", "NOT", "NOT_DONE", "NO")


def is_told_of_it(row: Row, last: int, behind: Item) -> bool:
    """Whether what stands right behind a named piece tells how it is ("is stapled", "isn't", "has no"), and nobody before it in the sentence, up to `last`, tells of work."""
    words = row.text[behind.start : behind.end].lower().split()
    if behind.concept not in _TOLD or behind.concept in ("STAPLED", "TAPED", "RUBBED") and words[0] not in words_of("small.is_or_got"):
        return False
    before = row.items[row.sentence_start(last) : last]
    return not any(item.concept in ("SAYS", "QUESTION", "DRAWING") for item in before) and words_of("small.reports").isdisjoint(row.text[before[0].start : before[-1].end].lower().replace(",", " ").split() if before else ())
