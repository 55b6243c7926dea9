"""A closure that is named where it was found, and then said to be what went on: "I had cloth tape in my bag, and that's what's on it"."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.grammar import Row, code
from logbook.reading.words.phrasing import words_of
from logbook.reading.words.tokens import plain

_OTHERS = ("TAPE", "TAPED", "MARK181", "MARKED", "FACING", "C_MASTIC", "QUERY", "NOT", "NO", "INSTEAD")  # another tape between: which of them went on is not clear
_FARTHEST = 16  # items


def used_that(row: Row, claims: list[Claim], language: Language) -> list[Claim]:
    """Only of a closure that nothing else tells of, where no other stands between."""
    if code("CLOSURE") not in row.letters or any(one.name == "closure" for one in claims):
        return []
    said = plain(row.text)
    for words in words_of("small.that_went_on"):
        begin = said.find(words)
        first = next((at for at, item in enumerate(row.items) if begin >= 0 and item.end > begin), 0)
        last = next((at for at, item in enumerate(row.items) if item.start >= begin + len(words)), len(row.items))
        at = next((k for k in range(first - 1, max(-1, first - _FARTHEST), -1) if row.items[k].concept == "CLOSURE"), None)
        if at is not None and not any(item.concept in _OTHERS for item in row.items[max(row.sentence_start(at), at - 4) : at] + row.items[at + 1 : first]):
            return [claim(row, "closure", row.items[at].value, first, last), claim(row, "taped", True, first, last, weak=True)]
    return []
