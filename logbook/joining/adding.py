"""How a later saying meets what a piece already says.

The same person's last word wins and the earlier one goes into `was`. Between two people a different value is a
conflict and both stand, except: an act that goes from false to true; made to hung; a note that answers or amends;
anything said after a rework or repair was decided. Lists add; moves join side by side.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from logbook import facts
from logbook.joining import moves
from logbook.record import record
from logbook.said import Earlier, Entry, Fact, Muffled, OpenItem, Unread

SPOKEN_FREELY = ("place",)  # the speaker's own words for where: two of them are no disagreement


@record
class Held:
    """A fact of a piece with who said it when; `parts` are the traced moves of `side_moves`."""

    fact: Fact
    by: str
    at: datetime
    parts: tuple[moves.Traced, ...] = ()


@dataclass(frozen=True)
class Saying:
    """Who says it, when, in which note, and whether it may replace another person's word (answers, amends)."""

    note: str | None
    by: str
    at: datetime
    replaces: bool = False


def noted(fact: Fact, note: str | None) -> Fact:
    """The fact with the note whose text its places count in; a copied fact keeps the note it came from."""
    note = fact.note or note
    if not (fact.also or fact.withdrawn or fact.was):
        return fact if fact.note == note else fact.of_note(note)
    return replace(
        fact,
        note=note,
        also=tuple(s if s.note else replace(s, note=note) for s in fact.also),
        withdrawn=tuple(e if e.note else replace(e, note=note) for e in fact.withdrawn),
        was=tuple(e if e.note else replace(e, note=note) for e in fact.was),
    )


def meet(old: tuple[Held, ...], new: Sequence[Fact], saying: Saying, reopened: datetime | None) -> tuple[Held, ...]:
    """What stands of one fact name after a note said `new` of it (several where the note contradicts itself)."""
    name = new[0].name
    joins = facts.BY_NAME[name].joins
    if old and joins == "add":
        return (_added(old[0], new, saying),)
    if old and joins == "side" and len(old) == len(new) == 1 and not new[0].conflict:
        return _sides(old[0], new[0], saying, reopened)
    yields = [held for held in old if _yields(held, new, saying, reopened)]
    stays = tuple(held for held in old if held not in yields)
    was = tuple(e for held in yields for e in (*held.fact.was, _earlier(held.fact)))
    first = replace(new[0], was=(*was, *new[0].was)) if was else new[0]
    said = tuple(_held(fact, saying) for fact in (first, *new[1:]))
    return _in_conflict(stays + said) if stays else said


def _held(fact: Fact, saying: Saying) -> Held:
    return Held(fact, saying.by, saying.at, moves.traced(fact) if fact.name == "side_moves" else ())


def _earlier(fact: Fact) -> Earlier:
    return Earlier(fact.value, fact.words, fact.start, fact.end, fact.note)


def _in_conflict(held: tuple[Held, ...]) -> tuple[Held, ...]:
    between = tuple(dict.fromkeys(h.fact.note for h in held if h.fact.note))
    return tuple(replace(h, fact=replace(h.fact, conflict=True, between=between)) for h in held)


def _free(held: Held, saying: Saying, reopened: datetime | None) -> bool:
    return held.by == saying.by or saying.replaces or (reopened is not None and held.at <= reopened < saying.at)


def _yields(held: Held, new: Sequence[Fact], saying: Saying, reopened: datetime | None) -> bool:
    """Whether the earlier saying gives way to the new one."""
    name, before = held.fact.name, held.fact.value
    if _free(held, saying, reopened) or name in SPOKEN_FREELY:
        return True
    return len(new) == 1 and (same(name, before, new[0].value) or (before, new[0].value) in ((False, True), ("made", "hung")))


def same(name: str, one: object, other: object) -> bool:
    """Whether two values of a fact say the same thing: sizes and sides have no order, marks no case."""
    match facts.BY_NAME[name].shape:
        case "size":
            return facts.same_size(one, other)
        case "sides" | "marks" | "moves":
            return set(one) == set(other)
        case "text":
            return facts.bare_mark(one) == facts.bare_mark(other)
    return one == other


def _added(held: Held, new: Sequence[Fact], saying: Saying) -> Held:
    """A list with the new marks behind the old ones."""
    old, fact = held.fact, new[-1]
    known = {facts.bare_mark(mark) for mark in old.value}
    more = tuple(m for one in new for m in one.value if facts.bare_mark(m) not in known)
    spans = tuple(span for span in (*old.also, moves.place_of(old)) if span.words is not None)
    return Held(replace(fact, value=old.value + more, also=spans + fact.also), saying.by, saying.at)


def _sides(held: Held, new: Fact, saying: Saying, reopened: datetime | None) -> tuple[Held, ...]:
    if not _free(held, saying, reopened) and moves.contradicts(held.parts, new):
        return _in_conflict((held, _held(new, saying)))
    met = moves.meet(held.fact, held.parts, new)
    if met is None:
        return (held,)
    fact, parts = met
    return (Held(fact, saying.by, saying.at, parts),)


def open_items(old: tuple[OpenItem, ...], entry: Entry, note: str) -> tuple[OpenItem, ...]:
    """What is still open: an item closes with a later true value of the fact it denied, hanging with "hung"."""
    done = {fact.name for fact in entry.facts if fact.value is True}
    hung = any(fact.name == "stage" and fact.value == "hung" for fact in entry.facts)
    still = tuple(i for i in old if i.denies not in done and not (hung and i.about == "hanging" and i.denies is None))
    return still + tuple(replace(item, note=note) for item in entry.open_items)


def muffled(old: tuple[Muffled, ...], entry: Entry, note: str) -> tuple[Muffled, ...]:
    """What nobody could make out; a suspicion of work left goes with a later true value of the fact it denied."""
    done = {fact.name for fact in entry.facts if fact.value is True}
    return tuple(one for one in old if one.denies not in done) + tuple(replace(one, note=note) for one in entry.muffled)


def unread(old: tuple[Unread, ...], entry: Entry, note: str) -> tuple[Unread, ...]:
    """What nobody understood, until a later note says it in other words: a word about any of what it may tell of."""
    still = told_again(old, [fact.name for fact in entry.facts])
    return still + tuple(replace(one, note=note) for one in entry.unread)


def told_again(old: tuple[Unread, ...], names: Iterable[str]) -> tuple[Unread, ...]:
    """Those of `old` that none of the facts `names` answers."""
    said = set(names)
    return tuple(one for one in old if not said & set(one.about))
