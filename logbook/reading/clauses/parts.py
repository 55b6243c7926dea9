"""A clause cut into its parts: the stretches between its "and"s, with their words, past the words that only name the piece."""

from __future__ import annotations


from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.stance import Clause
from logbook.reading.words.tokens import plain
from logbook.record import record


@record
class Part:
    """A stretch of a clause between its "and"s, with its words in lower case."""

    first: int
    last: int
    sentence: int
    words: str


def parts(row: Row, cut: tuple[Clause, ...]) -> tuple[Part, ...]:
    """The parts of all clauses, in order."""
    made: list[Part] = []
    for clause in cut:
        first = begin = _past_heading(row, clause)
        for at in range(begin, clause.last + 1):
            excepted = at < clause.last and (row.items[at].concept == "EXCEPT" or (row.items[at].concept == "ALL_BUT" and not _joins(row, at, clause.last)))
            if at == clause.last or ((excepted or _joins(row, at, clause.last)) and at > first):
                if at > first:
                    made.append(Part(first, at, clause.sentence, plain(row.words(first, at))))
                first = at if excepted else at + 1
    return tuple(made)


def _past_heading(row: Row, clause: Clause) -> int:
    """Past "collarín nueve de ocho pulgadas" where the words run on without a comma."""
    at, named = clause.first, False
    while at < clause.last:
        concept, before = row.items[at].concept, row.items[at - 1].concept if at else ""
        heads = concept.startswith("K_") or concept in ("FITTING", "NUMBER", "RUN", "MARKED", "SIZE", "ROUND", "LONG", "SERVICE")
        marks = concept == "NUM" and (before.startswith("K_") or before in ("FITTING", "NUMBER", "RUN"))
        sizes = concept in ("LEN", "NUM") and named and before == "OF"
        joins = named and concept in ("OF", "ON") and at + 1 < clause.last and row.items[at + 1].concept in ("LEN", "NUM", "SIZE", "RUN")
        if not (heads or marks or sizes or joins or (not named and concept in ("DET", "FILLER"))):
            break
        named = named or heads
        at += 1
    return at if named and at < clause.last else clause.first


def _joins(row: Row, at: int, last: int) -> bool:
    """ "and", "so", "then", and the "but" of "all but I couldn't reach the back": words a new thought begins behind."""
    if row.items[at].concept == "ALL_BUT":
        return at + 1 < last and row.items[at + 1].concept == "I"
    item = row.items[at]
    if item.concept != "AND" and (item.end - item.start not in (2, 4) or row.words(at, at + 1).lower() not in ("so", "then", "so i")):
        return False
    return not (at + 1 < last and row.words(at, at + 2).lower().startswith("so much"))
