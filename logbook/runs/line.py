"""A run laid out in order: which piece meets which, whether they mate, what is missing, what stands beside.

The order is the schedule's; pieces that are not on it follow in the order they were made, and a run without a schedule
is in that order altogether. Two pieces meet where the schedule puts them next to each other or where somebody said
that they are joined; elsewhere nobody knows, and nothing is held against them.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from logbook.facts import bare_mark, same_size
from logbook.geometry.run_drawing import Joint, Line, Stop
from logbook.job import Job
from logbook.piece import Piece
from logbook.runs import KEEPS_SIZE, ends, leaves_by, meeting
from logbook.schedule import BESIDE, Row, bare_run


def lay_out(job: Job, pieces: Iterable[Piece], run: str, day=None) -> Line:
    """The run as it was spoken. `pieces`: those of the job, or of the run, in the order they were made; `day` decides
    which schedule holds (None: the newest)."""
    of_run = [piece for piece in pieces if piece.run is not None and bare_run(piece.run) == bare_run(run) and not piece.scrapped]
    plan = job.revision(day)
    rows = () if plan is None else plan.by_run.get(bare_run(run), ())
    by_mark = {bare_mark(piece.mark): piece for piece in of_run if piece.mark is not None}
    planned = {bare_mark(row.mark) for row in rows}
    every = [_stop(job, by_mark[bare_mark(row.mark)], True) if bare_mark(row.mark) in by_mark else _absent(row) for row in rows]
    every += [_stop(job, piece, False) for piece in of_run if by_mark.get(bare_mark(piece.mark or "")) is not piece or bare_mark(piece.mark) not in planned]
    stops = _with_beside(every)
    joints = tuple(_joint(job, one, other) for one, other in zip(stops, stops[1:]))
    return Line(run, tuple(_with_also(stops)), joints, bool(rows), _against(job, of_run, run))


def _stop(job: Job, piece: Piece, planned: bool) -> Stop:
    inlet, outlet = ends(piece)
    changes = bool(inlet and outlet) and not same_size(inlet, outlet, job.limit("size_tolerance"))
    return Stop(
        mark=piece.mark,
        kind=piece.value("kind"),
        facts=piece.facts,
        inlet=inlet,
        outlet=outlet,
        branch=piece.value("branch_size"),
        planned=planned,
        keeps_size=not (changes and piece.value("kind") in KEEPS_SIZE),
        leaves_by=leaves_by(piece),
        piece=piece.id,
    )


def _absent(row: Row) -> Stop:
    through = row.outlet or (row.inlet if row.kind != "transition" else None)
    return Stop(row.mark, row.kind, inlet=row.inlet, outlet=through, branch=row.branch, round=row.diameter, logged=False, planned=True)


def _with_beside(stops: list[Stop]) -> list[Stop]:
    """Collars, doors and the like are no link of the chain: each stands on what it was said joined to, else on the piece before it."""
    chain: list[Stop] = []
    for stop in stops:
        if stop.kind not in BESIDE or not chain:
            chain.append(stop)
            continue
        said = {bare_mark(mark) for mark in _joined(stop)}
        at = next((n for n, one in enumerate(chain) if bare_mark(one.mark or "") in said), len(chain) - 1)
        chain[at] = replace(chain[at], beside=(*chain[at].beside, stop))
    return chain


def _joint(job: Job, one: Stop, other: Stop) -> Joint:
    closed = _names(one, other) or _names(other, one)
    if not closed and not (one.planned and other.planned):
        return Joint("loose")
    if not (one.logged and other.logged):
        return Joint("absent", closed)
    if one.kind in BESIDE or other.kind in BESIDE:
        return Joint("loose", closed)
    pairs = _meeting(one, other)
    if not pairs:
        return Joint("unsaid", closed)
    if not any(same_size(mine, theirs, job.limit("size_tolerance")) for mine, theirs in pairs):
        return Joint("sizes", closed)
    if one.leaves_by and other.leaves_by and one.leaves_by != other.leaves_by:
        return Joint("ends", closed)
    return Joint("mates", closed)


def _meeting(one: Stop, other: Stop) -> tuple[tuple, ...]:
    """As the rule `run-sizes` has it: the schedule's order says which ends meet, somebody's word that they are joined does not."""
    if one.planned and other.planned:
        return () if one.outlet is None or other.inlet is None else ((one.outlet, other.inlet),)
    return meeting((one.inlet, one.outlet, one.branch), (other.inlet, other.outlet, other.branch))


def _with_also(stops: list[Stop]) -> Iterable[Stop]:
    for at, stop in enumerate(stops):
        near = {bare_mark(one.mark or "") for one in (*stops[max(at - 1, 0) : at], *stops[at + 1 : at + 2])}
        yield replace(stop, also=tuple(mark for mark in _joined(stop) if bare_mark(mark) not in near))


def _joined(stop: Stop) -> tuple[str, ...]:
    return next((fact.value for fact in stop.facts if fact.name == "joined_to"), ()) or ()


def _names(one: Stop, other: Stop) -> bool:
    return other.mark is not None and bare_mark(other.mark) in {bare_mark(mark) for mark in _joined(one)}


def _against(job: Job, pieces: list[Piece], run: str) -> bool:
    of_run = job.run(run)
    said = [piece.value("service") for piece in pieces if piece.value("service")]
    service = said[-1] if said else of_run.service if of_run is not None else dict(job.standing).get("service")
    return service in ("return", "exhaust")
