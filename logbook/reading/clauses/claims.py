"""A claim: one fact as one stretch of words states it, before anybody knows which fitting it belongs to."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from logbook.reading.clauses.grammar import Row, compiled, one_of_each
from logbook.reading.words.items import Item
from logbook.reading.words.measures import Measure
from logbook.record import record

HEDGES = ("HEDGE", "THINK", "DOUBT")


@dataclass(frozen=True, slots=True)
class TakenBack:
    value: object
    start: int
    end: int
    name: str | None = None


@dataclass(frozen=True, slots=True)
class Open:
    """An open item a claim comes with: `about` piece, hanging or other."""

    about: str
    denies: str | None
    start: int
    end: int


@record
class Claim:
    name: str  # a fact name, or a name in brackets for what only the assembling needs
    value: object
    first: int  # items first to last - 1
    last: int
    start: int
    end: int
    uses: tuple[int, ...] = ()  # items no other frame may read
    hedged: bool = False
    weak: bool = False  # stands only where nothing stronger says the same name
    corrects: bool = False
    said_unit: str | None = None
    read_as: str | None = None
    also: tuple[tuple[int, int], ...] = ()
    took_back: tuple[TakenBack, ...] = ()
    kinds: tuple[str, ...] = ()  # kinds of fitting that alone can have it
    opens: tuple[Open, ...] = ()
    pending: bool = False
    both_at: int = -1  # item of a "both of them": of every fitting named before that
    for_run: str | None = None
    for_mark: str | None = None  # of this one piece of a batch
    via: str = "typed"
    part: str = ""  # "side": denies it of one side only; "undone": it was done and came off again
    fills: bool = False  # "back eighteen each": of every move before it too


@record
class Found:
    """One match of a pattern, with its groups as items."""

    row: Row
    match: object

    def at(self, group: str) -> int | None:
        start = self.match.start(group) if group in self.match.re.groupindex else -1
        return None if start < 0 else start

    def item(self, group: str) -> Item | None:
        at = self.at(group)
        return None if at is None else self.row.items[at]

    def items(self, group: str) -> tuple[Item, ...]:
        if self.at(group) is None:
            return ()
        return self.row.items[self.match.start(group) : self.match.end(group)]

    @property
    def first(self) -> int:
        return self.match.start()

    @property
    def last(self) -> int:
        return self.match.end()

    def claim(self, name: str, value, group: str | None = None, uses: Iterable[str] = (), **more) -> Claim:
        """A claim whose words are the group (or the whole match); measures in `uses` are spent."""
        first, last = (self.match.start(group), self.match.end(group)) if group else (self.first, self.last)
        spent = tuple(at for g in uses if self.at(g) is not None for at in range(self.match.start(g), self.match.end(g)))
        return claim(self.row, name, value, first, last, uses=spent, **more)


Build = Callable[[Found], Iterable[Claim]]


@dataclass(frozen=True)
class Frame:
    """A pattern of concepts and what it states."""

    pattern: str
    build: Build

    @cached_property
    def regex(self) -> re.Pattern[str]:
        return compiled(self.pattern)

    @cached_property
    def needs(self) -> tuple[frozenset[str], ...]:
        """The letters of a row without one of each of which it finds nothing."""
        return one_of_each(self.pattern)


def claim(row: Row, name: str, value, first: int, last: int, **more) -> Claim:
    items = row.items[first:last]
    start, end = items[0].start, items[-1].end
    if end <= start:  # a measure set right stands in the place of the one before it
        start, end = min(item.start for item in items), max(item.end for item in items)
    said = {"first": first, "last": last, "start": start, "end": end, "read_as": _read_as(row, first, last), "hedged": any(item.concept in HEDGES for item in items) or (type(value) is Fraction or name == "stated_slope") and any(item.value.near for item in items if type(item.value) is Measure)}
    before = first - 1
    if before >= 0 and row.items[before].concept == "HEDGE" and row.string[before] != row.string[first] and not (before and row.items[before - 1].concept in ("LEN", "FRAC") and items[0].concept not in ("LEN", "FRAC", "NUM")):  # "about two inches apart"; but "six inches or so with no tape"
        said |= {"hedged": True, "first": before, "start": row.items[before].start}
    return Claim(name, value, **(said | more))


def _read_as(row: Row, first: int, last: int) -> str | None:
    items = row.items[first:last]
    if not any(item.read_as for item in items):
        return None
    parts, at = [], items[0].start
    for item in items:
        parts.append(row.text[at : item.start] if item.start > at else "")
        parts.append(item.read_as or row.text[item.start : item.end])
        at = item.end
    return "".join(parts).strip()


def unit_of(item: Item) -> str | None:
    """The spoken unit where it was not inches."""
    unit = getattr(item.value, "unit", None)
    return unit if unit in ("ft", "mm", "cm", "m") else None


def taken_back(items: Iterable[Item], value_of) -> tuple[TakenBack, ...]:
    return tuple(TakenBack(value_of(back), back.start, back.end) for item in items for back in item.took_back)
