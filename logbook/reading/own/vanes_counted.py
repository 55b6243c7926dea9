"""How many vanes are in, and how many it takes: "three of the five vanes", "two vanes, it wants five", "only put one vane in"."""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of

_ONE = ("una", "a", "just one")
_IS_DUE = 8  # items behind the vanes: how many there should be


def more_are_due(row: Row, first: int, last: int) -> int | None:
    """ "three vanes in out of six", "two vanes, it wants five": the end of the words behind the vanes that count more of them as the whole, or as what it takes."""
    if not first or row.items[first - 1].concept not in ("NUM", "COUNT") or row.items[first - 1].value is None:
        return None
    for at in range(last, min(last + _IS_DUE, len(row.items) - 1)):
        concept, ahead, said = row.items[at].concept, row.items[at + 1], row.words(at, at + 1).lower()
        if concept in ("STOP", "QUERY", "SIZE") or concept.startswith("K_"):
            return None
        of = concept == "OF" and row.items[at - 1].concept in ("OUT", "IN", "IN_PLACE", "OF") or said == "out of"
        if (of or concept in ("PENDING", "NEED") or said.split()[-1] in words_of("small.takes_so_many")) and ahead.concept == "NUM":
            behind = row.items[at + 2].concept if at + 2 < len(row.items) else ""
            more = ahead.value.value > row.items[first - 1].value.value and behind in ("", "COMMA", "STOP", "AND", "BUT", "OF", "VANES", "IT")
            return at + 2 if more else None
    return None


def only_so_many(row: Row, first: int, last: int) -> bool:
    """ "only put one vane in": whether that is enough is not said."""
    if not first or not (row.items[first - 1].concept == "NUM" or row.words(first - 1, first).lower() in _ONE):
        return False
    at = first - 2
    while at >= 0 and row.items[at].concept in ("FILLER", "HAVE", "DET"):
        at -= 1
    return (at >= 0 and row.items[at].concept == "ONLY") or (last < len(row.items) and row.items[last].concept == "ONLY")


def fewer_than(row: Row, first: int) -> bool:
    """ "three of the five vanes", "four out of six vanes": not all that it needs."""
    at = first - 1
    if at < 0 or row.items[at].concept not in ("NUM", "COUNT") or row.items[at].value is None:
        return False
    of = at - 1
    while of >= 0 and row.items[of].concept in ("DET", "OUT", "THIS"):
        of -= 1
    few = of - 1
    while few >= 0 and row.items[few].concept == "OUT":
        few -= 1
    return of > 0 and (row.items[of].concept == "OF" or row.words(of, of + 1).lower().startswith("out of")) and row.items[few].concept == "NUM" and row.items[few].value.value < row.items[at].value.value
