"""What needs a person: findings that stand open or in hand, the most serious first, by run and place.

    in_order(items, job, today) -> tuple[Item, ...]     the order in which a lead goes through them
    groups(items, job, today) -> [(level, [(run, place, items)])]     the same, under its headings
    after(items, piece, rule) -> Item | None            the next one, without going back to the list

An item is a light row; the piece and its words are read when it is opened. The levels, from the most serious:
    overdue     somebody was to end it by a day that is over
    elsewhere   off, and nobody on site may accept it: the engineer's or the authority's (`review.GRANTED_ELSEWHERE`)
    departs     off
    unclear     said, but nobody can tell
    changed     another's word made it go away, and nobody decided
    unsaid      not said
    asked       back with the installer, who has not answered yet
    in-hand     rework or repair, waiting for the note that closes it
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from itertools import groupby

from logbook import limits, review
from logbook.job import Job

LEVELS = ("overdue", "elsewhere", "departs", "unclear", "changed", "unsaid", "asked", "in-hand")
WAITING = ("asked", "in-hand")  # somebody else is at it
_RULE = {rule: place for place, rule in enumerate(limits.RULE_IDS)}
_LAST = 1_000_000  # behind everything that the schedule knows


@dataclass(frozen=True)
class Item:
    """A finding that stands open or in hand, with the last decision made of it as it stands now."""

    piece: str
    rule: str
    edition: str
    verdict: str
    stands: str
    run: str | None = None
    mark: str | None = None
    kind: str | None = None
    decision: str | None = None
    by: str | None = None
    at: datetime | None = None
    reason: str | None = None
    owner: str | None = None
    due: date | None = None
    made: str | None = None  # the id of that decision


def level(item: Item, today: date) -> str:
    if item.due is not None and item.due < today:
        return "overdue"
    if item.stands == "in hand":
        return "in-hand"
    if item.decision == "asked":
        return "asked"
    if item.verdict == "departs" and review.granted_elsewhere(item.rule, item.kind):
        return "elsewhere"
    return {"meets": "changed"}.get(item.verdict, item.verdict)


def place(item: Item, job: Job, today: date) -> str | None:
    """Where the schedule in force puts it."""
    row = job.row(item.mark, item.run, today)
    return None if row is None else row.area


def in_order(items: Iterable[Item], job: Job, today: date) -> tuple[Item, ...]:
    return tuple(sorted(items, key=lambda item: _key(item, job, today)))


def _key(item: Item, job: Job, today: date) -> tuple:
    row = job.row(item.mark, item.run, today)
    order = _LAST if row is None or row.order is None else row.order
    where = (_natural(item.run), "" if row is None else row.area or "", order, _natural(item.mark))
    named = level(item, today)
    due = item.due if named in ("overdue", *WAITING) and item.due else date.max
    return LEVELS.index(named), due, *where, _RULE.get(item.rule, len(_RULE)), item.piece


def _natural(text: str | None) -> tuple:
    """Run 2 before run 10; what has no run or mark comes last."""
    if text is None:
        return ((2, ""),)
    return tuple((0, int(part)) if part.isdecimal() else (1, part.casefold()) for part in re.findall(r"\d+|\D+", text))


def groups(ordered: Sequence[Item], job: Job, today: date) -> list[tuple[str, list[tuple[str | None, str | None, list[Item]]]]]:
    """Level -> (run, place, its items), of items that are in order."""
    return [
        (name, [(*where, list(found)) for where, found in groupby(of_level, key=lambda item: (item.run, place(item, job, today)))])
        for name, of_level in groupby(ordered, key=lambda item: level(item, today))
    ]


def after(ordered: Sequence[Item], piece: str, rule: str, today: date) -> Item | None:
    """The one that follows in the list, then from its top again; only those that nobody else is at."""
    own = next((number for number, item in enumerate(ordered) if (item.piece, item.rule) == (piece, rule)), -1)
    round_again = [*ordered[own + 1 :], *ordered[: max(own, 0)]]
    return next((item for item in round_again if level(item, today) not in WAITING), None)


def before(ordered: Sequence[Item], piece: str, rule: str) -> Item | None:
    own = next((number for number, item in enumerate(ordered) if (item.piece, item.rule) == (piece, rule)), 0)
    return ordered[own - 1] if own else None
