"""A dash between two clauses is a comma: "Straight 9 - closure still to be done"."""

from __future__ import annotations

from logbook.reading.words.phrasing import words_of
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import Token

_DASHES = frozenset("-–—")
_LONG = 3  # letters: what is ticked off has shorter answers ("tape - y")
_SUBJECTS = ("i", "it", "he", "we")


def cuts(found: tuple[Token, ...]) -> tuple[Cut, ...]:
    """The dashes that stand apart between two words, in order; those before an answer or a number tick it off and stay."""
    return tuple(Cut(found[at - 1].end, token.end, ",") for at, token in enumerate(found) if token.low in _DASHES and _parts(found, at))


def _parts(found: tuple[Token, ...], at: int) -> bool:
    if not 0 < at < len(found) - 1 or found[at].gap != " " or found[at + 1].gap != " ":
        return False
    before, behind = found[at - 1], found[at + 1]
    answers = behind.low in words_of("small.yes") or behind.low in words_of("small.no") or len(behind.low) < _LONG and behind.low not in _SUBJECTS
    return before.sort != "sign" and behind.sort == "word" and not answers
