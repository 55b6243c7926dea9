"""One day of a job as the log tells it, and what of its schedule nobody logged."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

from logbook.facts import bare_mark
from logbook.geometry.run_drawing import Line


@dataclass(frozen=True)
class Planned:
    """A row of the schedule in force."""

    mark: str
    run: str | None
    kind: str | None
    size: str = ""


@dataclass(frozen=True)
class Day:
    """One day of a job, as the log tells it. Documents are those of `GET /notes/ID` and `GET /pieces/PIECE`.

    `logged` holds (run, mark) of every piece of the whole job; `planned` the schedule in force, or None where the
    job has none. `journal` is {"seq", "hash"} of the newest row. `job` is {"id", "name", "place", "roles"}.
    """

    date: str
    job: Mapping
    notes: Sequence[Mapping]
    pieces: Sequence[Mapping]
    signatures: Sequence[Mapping] = ()
    journal: Mapping | None = None
    planned: Sequence[Planned] | None = None
    logged: Iterable[tuple[str | None, str | None]] = ()
    ids: Mapping[str, str] = field(default_factory=dict)  # name as printed -> id; a name can be erased, an id stays
    draws: Sequence[Mapping] = ()  # spot checks drawn from this day, and the newest look at each drawn piece
    looks: Sequence[Mapping] = ()
    answers: Sequence[Mapping] = ()  # of the walk list, given on this day
    records: Sequence[Mapping] = ()  # leak tests with an instrument, kept on this day
    lines: Sequence[Line] = ()  # the runs that were worked on, each with all its pieces

    def fittings(self) -> list[Mapping]:
        """Everything with a kind or a mark, by run and mark; leak tests stand apart."""
        return sorted((one for one in self.pieces if not is_test(one)), key=by_run_and_mark)

    def tests(self) -> list[Mapping]:
        return sorted((one for one in self.pieces if is_test(one)), key=by_run_and_mark)


def missing(day: Day) -> list[Planned] | None:
    """Rows of the schedule on today's runs that no piece of the log bears; None without a schedule."""
    if day.planned is None:
        return None
    runs = {bare_mark(piece["run"]) for piece in day.pieces if piece["run"]}
    marks = [*day.logged, *((piece["run"], piece["mark"]) for piece in day.pieces)]
    borne = {(bare_mark(run or ""), bare_mark(mark or "")) for run, mark in marks}
    return [
        row for row in day.planned
        if bare_mark(row.run or "") in runs and not {(bare_mark(row.run or ""), bare_mark(row.mark)), ("", bare_mark(row.mark))} & borne
    ]  # fmt: skip


def is_test(piece: Mapping) -> bool:
    names = {doc["name"] for doc in piece["facts"]}
    return "kind" not in names and bool(names & {"leak_pressure", "leak_flow", "leak_area"})


def value_of(piece: Mapping, name: str):
    return next((doc["value"] for doc in piece["facts"] if doc["name"] == name), None)


def by_run_and_mark(piece: Mapping):
    """Runs and marks in counting order: 2 before 10, B-2 before B-12."""
    return [_counted(piece.get(name) or "") for name in ("run", "mark")] + [piece["id"] or ""]


def _counted(text: str) -> tuple:
    parts, digits = [], ""
    for sign in text + " ":
        if sign.isdecimal():
            digits += sign
            continue
        if digits:
            parts.append((0, int(digits), ""))
            digits = ""
        parts.append((1, 0, sign.casefold()))
    return tuple(parts)
