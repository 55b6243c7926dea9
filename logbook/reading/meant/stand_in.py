"""The mark that a piece without a name has while its note is read: "elbow 27 is taped, the other one isn't" tells of a second piece, and what is told of it is never the first one's.

With a mark of its own it is read as any other piece; what was read of it has none.
"""

from __future__ import annotations

from dataclasses import replace

from logbook.said import Entry, Reading

MARK = "Z989"
_NAMES = ("kind", "mark", "run", "stage", "place", "service")  # what alone makes no piece of one that has no name


def without(told: Reading) -> Reading:
    """The reading, with the piece that has no name told of without a mark; without it where nothing is told of it."""
    if told.withdraws is not None and told.withdraws.mark == MARK:
        told = replace(told, withdraws=None)
    if not any(fact.value == MARK for entry in told.fittings for fact in entry.facts):
        return told
    kept = [entry for entry in told.fittings if not _is_empty(entry)]
    places = {entry.position: place for place, entry in enumerate(kept)}
    return replace(told, fittings=tuple(_bare(entry, places) for entry in kept))


def _is_empty(entry: Entry) -> bool:
    return any(fact.name == "mark" and fact.value == MARK for fact in entry.facts) and not entry.open_items and all(fact.name in _NAMES or fact.from_fitting is not None for fact in entry.facts)


def _bare(entry: Entry, places: dict[int, int]) -> Entry:
    facts = tuple(fact if fact.from_fitting is None else replace(fact, from_fitting=places[fact.from_fitting]) for fact in entry.facts if not _names_it(fact.value) and (fact.from_fitting is None or fact.from_fitting in places))
    same = entry.same_as if entry.same_as is None or entry.same_as.mark != MARK else None
    return replace(entry, position=places[entry.position], facts=facts, same_as=same)


def _names_it(value: object) -> bool:
    return value == MARK or isinstance(value, tuple) and MARK in value
