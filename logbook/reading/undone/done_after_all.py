"""What he was about to do, and then did: "I was about to tape it cold but Joey lit the heater and then I taped it"."""

from __future__ import annotations

from logbook.reading.clauses.denials import DENIED, PAST
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of

_SOON = 40  # items
_STOPS = ("NOT", "NO", "NOT_DONE", "IF", "WILL", "PENDING", "DRAWING", "QUERY")
_TURNS = ("BUT", "AND", "ANOTHER", "COMMA", "STOP")


def done_after_all(row: Row, begin: int, end: int, name: str) -> bool:
    """Whether the plan at `begin` was one of then ("was about to"), and he himself tells behind `end` that he did the act."""
    if not begin or row.items[begin - 1].concept != "BE" or row.words(begin - 1, begin).lower().split()[-1] not in words_of("small.was"):
        return False
    turned = row.items[end - 1].concept in _TURNS
    for at in range(end, min(end + _SOON, len(row.items))):
        concept = row.items[at].concept
        if concept in _STOPS or concept.startswith("K_"):
            return False
        turned = turned or concept in _TURNS
        if turned and concept in PAST and DENIED.get(concept, ("", None))[0] == name and row.items[at - 1].concept in ("I", "ANOTHER"):
            return True
    return False
