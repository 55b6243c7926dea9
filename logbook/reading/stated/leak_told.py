"""What a test for leaks tells beside its numbers: a share of what is allowed, and flows without their unit."""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of
from logbook.reading.words.tokens import plain

_MOST = 5  # inches of water; a bare number above it, in a test, is a flow


def of_the_allowed(row: Row, at: int) -> bool:
    """ "Half of what's allowed", "18 on the gauge and the allowance is 25": neither is a pressure."""
    item = row.items[at]
    if item.concept == "FRAC":
        return plain(row.text[item.end : item.end + 24]).lstrip().startswith(tuple(words_of("small.of_the_allowed")))
    if item.concept != "NUM" or item.value.value <= _MOST:
        return False
    said = plain(row.text[row.items[row.sentence_start(at)].start : row.items[row.sentence_end(at) - 1].end])
    return not words_of("small.leak_words").isdisjoint(said.replace(",", " ").replace(".", " ").split())
