"""Pieces that are named one after another, and then told of together: "straight 6, elbow 7 and tee 5 are stapled", "hung elbow 4 and tee 5"."""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of

_ACTS_OF_BOTH = ("stage", "stapled", "taped", "rubbed_down")


def _past_run(row: Row, at: int) -> int:
    """Past "on run two" behind a piece."""
    concepts = [item.concept for item in row.items[at : at + 3]]
    return at + 3 if concepts[:2] == ["ON", "RUN"] else at + 2 if concepts[:1] == ["RUN"] else at


def of_both(row: Row, named, claims: list[Claim]) -> list[Claim]:
    """ "Hung elbow 4 and tee 5": the act right before the first is of the second too."""
    made: list[Claim] = []
    for place, (one, other) in enumerate(zip(named, named[1:])):
        known = len(made)
        between = [item.concept for item in row.items[one.last : other.first]] + [row.items[other.first].concept]
        if not (one.mark or one.batch) or not (other.mark or other.batch) or "AND" not in between[:1] + between[1:2] * (between[:1] == ["COMMA"]) or len([c for c in between if c not in ("DET", "COMMA")]) > 2 or not {"STAPLED", "TAPED", "RUBBED", "HUNG"}.isdisjoint(between):
            continue
        said = row.words(after, after + 1).lower().split() if (after := _past_run(row, other.last)) < len(row.items) else []
        verb = row.items[min(after, len(row.items) - 1)].concept
        if verb in ("BE", "FILLER") and not words_of("small.several_are").isdisjoint(said) or verb == "HUNG" and said[:1] and said[0] in words_of("small.several_are"):  # "straight 4 and elbow 5 on run two are taped"
            stop = row.sentence_end(after)
            stop = min([stop, *(m.first for m in named if m.first >= after)])
            made += [replace(c, first=one.last - 1, last=one.last, uses=()) for c in claims if other.last <= c.first < stop and c.name in (*_ACTS_OF_BOTH, "run")]
        elif row.items[min(after, len(row.items) - 1)].concept == "COMMA":  # "la recta 4 y la recta 5, engrapadas": a form that is said only of several
            stop = next((k for k in range(after + 1, len(row.items)) if row.items[k].concept in ("STOP", "QUERY", "BUT", "EXCEPT")), len(row.items))
            stop = min([stop, *(m.first for m in named if m.first >= after)])
            made += [replace(c, first=one.last - 1, last=one.last, uses=()) for c in claims if after < c.first < stop and c.name in _ACTS_OF_BOTH and row.words(c.first, c.last).lower().endswith(("adas", "ados"))]
        elif (after > other.last and row.items[min(after, len(row.items) - 1)].concept in ("STOP", "COMMA")) or other.last < after == len(row.items):  # "straight 4 and elbow 5 on run two"
            made += [replace(c, first=one.last - 1, last=one.last, uses=()) for c in claims if other.last <= c.first < after and c.name == "run"]
        acts = [c for c in claims if c.last in (one.first, one.first + 1) and c.first <= one.first and c.name in _ACTS_OF_BOTH]
        if acts and other.last < len(row.items) and not words_of("small.one_is").isdisjoint(row.words(other.last, other.last + 1).lower().split()):
            continue  # "taped straight 4 and elbow 5 has no vanes"
        if acts and acts[0].first > 1 and row.items[acts[0].first - 1].concept in ("AND", "COMMA"):  # "stapled and taped straight 38 and elbow 39"
            acts += [c for c in claims if c.last == acts[0].first - 1 and c.name in _ACTS_OF_BOTH]
        made += [replace(c, first=other.last - 1, last=other.last, uses=()) for c in acts]
        made += [replace(c, first=m.last - 1, last=m.last) for m in _listed_ahead(row, named[: place + 1]) for c in made[known:] if c.last == one.last]
    return made


def _listed_ahead(row: Row, named) -> list:
    """The "straight 6" of "straight 6, elbow 7 and tee 5 are stapled"."""
    at = len(named) - 1
    while at and (named[at - 1].mark or named[at - 1].batch) and {item.concept for item in row.items[named[at - 1].last : named[at].first]} <= {"COMMA", "AND", "DET"}:
        at -= 1
    return list(named[at:-1])
