""" "Same as fifteen": what a piece of the log is, copied into the entry that names it; never what was done to it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from logbook import facts
from logbook.joining.adding import Held
from logbook.said import Entry, Fact, SameAs, Span

# what tells the same slope in another way: it goes with the moves that the entry says anew
BESIDE_MOVES = ("stated_slope", "taper_length")


def copied(entry: Entry, source: Mapping[str, tuple[Held, ...]], note: str) -> Entry:
    """The entry with the facts it names by `same_as`, placed where it says so; what it says itself stands."""
    same = entry.same_as
    if same is None or not source:
        return entry
    left_out = {*same.besides, *(fact.name for fact in entry.facts)}
    if "side_moves" in left_out:
        left_out |= set(BESIDE_MOVES)
    more = [
        _copy(held.fact, same, note)
        for name, all_held in source.items()
        if facts.BY_NAME[name].family == "is" and name not in left_out and (same.names is None or name in same.names)
        for held in all_held
    ]
    place = next((i for i, f in enumerate(entry.facts) if f.start is not None and f.start > same.start), len(entry.facts))
    return replace(entry, facts=(*entry.facts[:place], *more, *entry.facts[place:]))


def _copy(fact: Fact, same: SameAs, note: str) -> Fact:
    return replace(fact, from_note=fact.from_note or fact.note, also=(_naming(same, note),), was=(), withdrawn=(), between=())


def _naming(same: SameAs, note: str) -> Span:
    """The words that name the other piece, without the word that opens the exceptions."""
    words = same.words.rsplit(None, 1)[0] if same.besides else same.words
    return Span(words, same.start, same.start + len(words), note)
