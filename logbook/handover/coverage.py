"""Coverage against the schedule: what is missing comes first, not hidden among what is there."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from logbook.day import Planned
from logbook.facts import bare_mark


@dataclass(frozen=True)
class Coverage:
    """`missing` rows of the schedule that no piece bears; None where the job has no schedule."""

    planned: int | None
    missing: tuple[Planned, ...] | None


def coverage(planned: Sequence[Planned] | None, borne: Iterable[tuple[str | None, str | None]]) -> Coverage:
    """`borne`: (run, mark) of every piece. A piece whose run nobody said bears the mark on any run."""
    if planned is None:
        return Coverage(None, None)
    known = {(bare_mark(run or ""), bare_mark(mark or "")) for run, mark in borne}
    missing = tuple(row for row in planned if not {(bare_mark(row.run or ""), bare_mark(row.mark)), ("", bare_mark(row.mark))} & known)
    return Coverage(len(planned), missing)


def on_schedule(planned: Sequence[Planned] | None, run: str | None, mark: str | None) -> bool | None:
    if planned is None:
        return None
    bare = bare_mark(mark or "")
    return bool(mark) and any(bare_mark(row.mark) == bare and (run is None or row.run is None or bare_mark(row.run) == bare_mark(run)) for row in planned)
