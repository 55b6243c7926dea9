"""Hold points of the job: where the work waits until somebody releases it (before the ceiling closes, before the test).

A hold point stands in the job file (`[holds.KEY]`) and covers runs, an area of the schedule, or the whole job. Who
released it and when is an act of the journal; a release is never undone, it is followed by `held_again`.
"Hold point" is the trade's word for a point beyond which work does not go on without a release.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from logbook.job import Hold, Job
from logbook.schedule import bare_run
from logbook.worklist import Item, in_order, place

RELEASED, HELD_AGAIN = "released", "held_again"


@dataclass(frozen=True)
class Standing:
    """Where a hold point stands: `release` the act that holds now, or None; `open` what stands open behind it.

    `since` are those of them that came after the release, so that nobody takes an old release for a new one.
    """

    hold: Hold
    release: Mapping | None
    acts: tuple[Mapping, ...]
    open: tuple[Item, ...]
    since: tuple[Item, ...]


def covers(hold: Hold, item: Item, job: Job, today: date) -> bool:
    """Whether a finding is behind the hold point. Where its area or run is not known, it is: silence releases nothing."""
    if not hold.runs and hold.area is None:
        return True
    if hold.runs and item.run is not None and bare_run(item.run) in {bare_run(run) for run in hold.runs}:
        return True
    area = place(item, job, today)
    if hold.area is not None and area is not None:
        return area.casefold() == hold.area.casefold()
    return item.run is None or (hold.area is not None and area is None and not hold.runs)


def standing(job: Job, acts: Iterable[Mapping], items: Iterable[Item], today: date) -> list[Standing]:
    """Every hold point of the job, in the order of the job file. `acts` are oldest first."""
    acts, ordered = list(acts), in_order(items, job, today)
    return [_standing(hold, [act for act in acts if act["hold"] == hold.key], ordered, job, today) for hold in job.holds.values()]


def _standing(hold: Hold, acts: Sequence[Mapping], ordered: Sequence[Item], job: Job, today: date) -> Standing:
    release = acts[-1] if acts and acts[-1]["act"] == RELEASED else None
    found = tuple(item for item in ordered if covers(hold, item, job, today))
    known = {(one["piece"], one["rule"], one["edition"]) for one in release["open"]} if release else set()
    since = tuple(item for item in found if (item.piece, item.rule, item.edition) not in known) if release else ()
    return Standing(hold, release, tuple(acts), found, since)
