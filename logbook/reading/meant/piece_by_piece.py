"""A note on several pieces, each told in sentences of its own, is read piece by piece: what is said of one can then never be taken for another's.

Every part is read as if it were a note alone. Where a part leans on what stands before it ("straight ten isn't", "then eleven, not taped") the note as a
whole tells what it means.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from logbook.facts import ORDER
from logbook.reading.words.stretches import moved, put_together
from logbook.said import Entry, Fact, Reading


@dataclass
class _Part:
    """What is told of a piece: its stretches of the text, its marks, and what was read of it where that is still so."""

    spans: list[tuple[int, int]]
    marks: frozenset[str]
    read: Reading | None


@dataclass(frozen=True)
class PartRead:
    """What was read of a piece, and its stretches of the text."""

    read: Reading
    spans: tuple[tuple[int, int], ...]

    def holds(self, at: int) -> bool:
        return any(start <= at < end for start, end in self.spans)


def read_parts(text: str, places: list[tuple[int, frozenset[str]]], read_part: Callable[[str], Reading]) -> tuple[PartRead, ...]:
    """Each part read alone. One that names no other piece than the part before it is read together with that one, and one that goes back to an earlier piece
    with that; nothing where that leaves one part.
    """
    starts = [start for start, _ in places]
    kept: list[_Part] = []
    now = 0
    for (start, named), end in zip(places, [*starts[1:], len(text)], strict=True):
        one = read_part(text[start:end])
        own = frozenset(mark for entry in one.fittings if (mark := _mark(entry)) is not None)
        goes_on = bool(kept) and (own.isdisjoint(named) or not kept[now].marks or own <= kept[now].marks)
        earlier = now if goes_on else next((place for place, part in enumerate(kept) if own <= part.marks), None)
        if earlier is None:
            kept.append(_Part([(start, end)], own, one))
            now = len(kept) - 1
        else:
            now = earlier
            kept[now] = _Part([*kept[now].spans, (start, end)], kept[now].marks | own, None)
    if len(kept) < 2 or len(frozenset().union(*(part.marks for part in kept))) < sum(len(part.marks) for part in kept):
        return ()
    return tuple(PartRead(moved(part.read if part.read is not None else read_part(put_together(text, part.spans)), text, part.spans), tuple(part.spans)) for part in kept)


def tell_all(parts: tuple[PartRead, ...]) -> bool:
    """Whether every part names its piece, its kind and what was done, so that the note as a whole has nothing to add to it."""
    own = [entry for one in parts for entry in one.read.fittings]
    if not all(one.read.fittings and one.read.shift is None and one.read.withdraws is None for one in parts) or len({entry.fact("run") is None for entry in own}) > 1:
        return False
    return all(entry.same_as is None and {"kind", "mark"} <= {fact.name for fact in entry.facts} and any(fact.value in (True, False) for fact in entry.facts) for entry in own)


def joined(whole: Reading, parts: tuple[PartRead, ...]) -> Reading:
    """The parts as one reading; the whole note where it tells of the work as such, or names a piece that no part does."""
    seen = {_mark(entry): entry for entry in whole.fittings}
    own: list[tuple[PartRead | None, Entry]] = [(part, entry) for part in parts for entry in part.read.fittings if not _counts_them(entry, seen)]
    if any(one.shift is not None or one.withdraws is not None for one in (whole, *(part.read for part in parts))) or any(entry.same_as is not None for entry in (*whole.fittings, *(entry for _, entry in own))):
        return whole
    told = {_mark(entry) for _, entry in own}
    own += [(None, entry) for mark, entry in seen.items() if mark is not None and mark not in told and not entry.open_items and {fact.name for fact in entry.facts} <= _NAMES]  # of which nothing is told
    order = {mark: place for place, mark in enumerate(seen)}
    own.sort(key=lambda one: order.get(_mark(one[1]), len(order)))
    marks = [_mark(entry) for _, entry in own]
    if not seen.keys() - {None} <= set(marks):
        return whole
    fittings = []
    for place, (mark, (part, entry)) in enumerate(zip(marks, own, strict=True)):
        other = seen.get(mark)
        if part is not None and other is not None:
            entry = replace(entry, facts=_with_more(entry, other, whole, marks, part), amends=other.amends)
        fittings.append(replace(entry, position=place))
    return replace(whole, fittings=tuple(fittings), reason=None if fittings else whole.reason, unread=tuple(words for part in parts for words in part.read.unread))


_NAMES = {"kind", "mark"}


def _counts_them(entry: Entry, seen: dict[str | None, Entry]) -> bool:
    """ "Got three done. Straight 130 … Straight 131 … Elbow 132 …": of such a piece nothing is told, and the note as a whole names none."""
    return _mark(entry) not in seen and {fact.name for fact in entry.facts} == {"mark"} and not entry.open_items


def _with_more(entry: Entry, other: Entry, whole: Reading, marks: list[str | None], part: PartRead) -> tuple[Fact, ...]:
    """The facts of a piece, with those of the whole note: its run and kind, and where its own words tell nothing of the work, what they mean behind the others."""
    known = {fact.name for fact in entry.facts}
    tells = any(fact.value in (True, False) for fact in entry.facts) and ("kind" in known or other.fact("kind") is None)
    first = min((fact.start for fact in entry.facts if fact.start is not None), default=0)
    more = []
    for fact in other.facts:
        if fact.name in known or not (fact.name in ("run", "kind") or fact.from_fitting is not None or not tells and fact.start is not None and fact.start >= first and part.holds(fact.start)):
            continue
        source = None if fact.from_fitting is None else _mark(whole.fittings[fact.from_fitting])
        if fact.from_fitting is None or source in marks:
            more.append(replace(fact, from_fitting=None if fact.from_fitting is None else marks.index(source)))
    return tuple(sorted((*entry.facts, *more), key=in_order)) if more else entry.facts


def in_order(fact: Fact) -> tuple[int, int]:
    """What names the piece first, then as the words stand."""
    if fact.name in ("kind", "mark", "run"):
        return 0, ORDER[fact.name]
    return 1, (fact.also[-1].end if fact.from_fitting is not None and fact.also else fact.end) or 0


def _mark(entry: Entry) -> str | None:
    fact = entry.fact("mark")
    return None if fact is None else fact.value
