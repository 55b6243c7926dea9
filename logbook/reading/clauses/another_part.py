""" "A gap on the throat side … the heel side is tight": what is told of another part by its name says nothing of this one."""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row

_PARTS = ("SIDE", "SIDE_WORD", "END", "JOINT", "OTHER_SIDE", "ONE_SIDE", "THROAT", "BACK")
_LED = ("DET", "BE", "FILLER", "WORD", "ALL", "HAVE", "OF", "THROAT", "SIDE", "NUM", "UP", "NO", "GAP", "ON", "IN", "FEMALE", "MALE", "OTHER_SIDE", "EXCEPT", "AND")
_BOUNDS = ("STOP", "QUERY", "COMMA", "BUT")
_SMALL = frozenset("the a an its my is are was were 's and on at in of one ones side sides end ends joint joints seam seams corner corners edge edges".split())
_WHOLE = frozenset("all every each both everything everywhere whole four".split())
_RESTS = frozenset("one ones others rest remainder".split())
_SINCE = frozenset("now again since after then them it".split())


def of_another_part(row: Row, one: int, at: int, since: bool = True) -> bool:
    """Whether what is told at `at` is of a part that is named there, and that the sentence of `one` does not name. `since`: not where it is told as done since."""
    first = at
    while first > 0 and row.items[first - 1].concept not in _BOUNDS and (row.items[first - 1].concept in _LED or row.items[first - 1].concept in _PARTS):
        first -= 1
    if first == at or first and row.items[first - 1].concept not in (*_BOUNDS, "AND"):
        return False
    if not _WHOLE.isdisjoint(_said(row, first, at)):
        return False  # "all four sides taped as of two o'clock"
    named = any(item.concept in _PARTS for item in row.items[first:at]) or not _RESTS.isdisjoint(_said(row, first, at)[-2:])
    if not named or since and not _SINCE.isdisjoint(_said(row, at, min(row.sentence_end(at), at + 4))):
        return False
    own = set(_said(row, first, at)) - _SMALL
    start, until = row.sentence_start(one), first if one < first else row.sentence_end(one)
    there = set(_said(row, start, min(until, row.sentence_end(one)))) if start < until else set()
    return bool(own) and own.isdisjoint(there) and own.isdisjoint(_SINCE)


def _said(row: Row, first: int, last: int) -> list[str]:
    return row.words(first, last).lower().replace("’", "'").replace("'s", " 's").replace(",", " ").split() if first < last else []
