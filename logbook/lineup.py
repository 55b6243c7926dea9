"""The fittings of a job, run by run in the schedule's order: planned, logged, settled, missing.

    lines(plan, logged, counted) -> list[Line]

`logged` are short rows of the log: id, run, mark, kind and how many findings stand open, in hand, asked, settled.
`counted` are (run, state, how many) of pieces that no row of the schedule can be and that are not listed: of a long log.
Nothing here says that a fitting is good: the best it can be is logged, with nothing open.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import cached_property

from logbook.facts import bare_mark
from logbook.schedule import Revision, Row, bare_run

STATES = ("missing", "open", "in-hand", "asked", "settled", "logged")


@dataclass(frozen=True)
class Slot:
    """One fitting: its row of the schedule, what the log holds of it, or both. `state` is one of STATES."""

    row: Row | None
    piece: Mapping | None
    state: str

    @property
    def mark(self) -> str:
        return (self.piece or {}).get("mark") or (self.row.mark if self.row else "")

    @property
    def kind(self) -> str | None:
        return (self.piece or {}).get("kind") or (self.row.kind if self.row else None)


@dataclass(frozen=True)
class Line:
    """One run; `run` None gathers what nobody gave a run. `more`: pieces by state that are counted and not listed."""

    run: str | None
    slots: tuple[Slot, ...]
    more: Mapping[str, int] = field(default_factory=dict)

    @cached_property
    def counts(self) -> dict[str, int]:
        told = dict.fromkeys(("planned", "unplanned", *STATES), 0) | self.more | {"unplanned": sum(self.more.values())}
        for one in self.slots:
            told["unplanned" if one.row is None else "planned"] += 1
            told[one.state] += 1
        return told

    @property
    def size(self) -> int:
        return len(self.slots) + sum(self.more.values())


def lines(plan: Revision | None, logged: Iterable[Mapping], counted: Iterable[tuple[str | None, str, int]] = ()) -> list[Line]:
    """Every row of the schedule and every piece of the log, once; runs in counting order."""
    more: dict[str, dict[str, int]] = {}
    by_mark: dict[str, list[Mapping]] = {}
    every = list(logged)
    for one in every:
        by_mark.setdefault(bare_mark(one["mark"] or ""), []).append(one)
    runs: dict[str, tuple[str | None, list[Slot]]] = {}
    taken: set[str] = set()

    def of(run: str | None) -> list[Slot]:
        return runs.setdefault(bare_run(run or ""), (run, []))[1]

    for row in _ordered(plan):
        borne = [one for one in by_mark.get(bare_mark(row.mark), ()) if one["id"] not in taken and bare_run(one["run"] or "") in ("", bare_run(row.run or ""))]
        one = min(borne, key=lambda each: each["run"] is None, default=None)
        of(row.run).append(Slot(row, one, state_of(one)))
        if one is not None:
            taken.add(one["id"])
    for one in every:
        if one["id"] not in taken:
            of(one["run"]).append(Slot(None, one, state_of(one)))
    for run, state, count in counted:
        of(run)
        states = more.setdefault(bare_run(run or ""), {})
        states[state] = states.get(state, 0) + count
    return [Line(run, tuple(slots), more.get(bare, {})) for bare, (run, slots) in sorted(runs.items(), key=lambda item: (not item[0], _counted(item[0])))]


def planned_marks(plan: Revision | None) -> set[str]:
    """The bare marks of the schedule: pieces that bear one may be its rows."""
    return {bare_mark(row.mark) for row in plan.rows} if plan else set()


def _ordered(plan: Revision | None) -> list[Row]:
    if plan is None:
        return []
    in_runs = [row for of_run in plan.by_run.values() for row in of_run]
    return in_runs + [row for row in plan.rows if row.run is None]


def state_of(piece: Mapping | None) -> str:
    """What somebody has to do first."""
    if piece is None:
        return "missing"
    return next((state for state in ("open", "in-hand", "asked", "settled") if piece[state]), "logged")


def _counted(name: str) -> tuple:
    digits = "".join(sign if sign.isdecimal() else " " for sign in name).split()
    return (int(digits[0]) if digits else 10**9, name)
