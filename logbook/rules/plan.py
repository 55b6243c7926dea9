"""A piece against the schedule and against its neighbours."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache

from logbook import measure
from logbook.facts import KINDS, same_size
from logbook.findings import Example, Outcome, Rule, Source, Told, Word
from logbook.piece import Piece
from logbook.rules.mishearing import meant
from logbook.rules.using import Use
from logbook.runs import KEEPS_SIZE, Around, Neighbour, ends, meeting
from logbook.schedule import BESIDE, Row

FAMILIES = (("tee", "branch", "collar"), ("straight",))  # kinds that a schedule and a crew name for each other
SIZES = (("inlet_size", "inlet"), ("outlet_size", "outlet"), ("branch_size", "branch"))


def _family(kind: str) -> tuple[str, ...]:
    return next((family for family in FAMILIES if kind in family), (kind,))


def as_planned(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    mark, row = use.said("mark"), around.row
    if not around.scheduled or mark is None:
        return None
    revision = {"revision": around.revision}
    if row is None:
        near = around.nearest
        if around.on_run is not None:
            told = revision | {"mark": mark, "said_run": str(piece.run), "planned_run": around.on_run}
            return use.unclear("other-run", "run", offers=(around.on_run,), evidence=(f"schedule {around.revision}: {mark} run {around.on_run}",), tells=told)
        if around.meant is not None:
            told = revision | {"mark": mark, "one": around.meant}
            return use.unclear("maybe-another-mark", "mark", offers=(around.meant,), evidence=(f"schedule {around.revision}: {around.meant}",), tells=told)
        evidence = tuple(f"schedule {around.revision}: {one}" for one in near)
        told = revision | {"mark": mark, "one": near[0] if near else "", "other": near[-1] if near else ""}
        return use.unclear("not-on-schedule", "mark", evidence=evidence, tells=told, text=None if near else "schedule-empty")
    tolerance = {"length": use.limit("size_tolerance")}
    kept = {"tolerance": tolerance, "evidence": (_row_text(row, around),), "tells": revision | {"mark": row.mark}}
    kind = use.said("kind")
    if kind is not None and row.kind is not None and row.kind not in _family(kind):
        told = revision | {"said": Word(f"kind-{kind}"), "planned": Word(f"kind-{row.kind}"), "mark": row.mark}
        return use.departs("other-kind", **kept | {"tells": told})
    planned = _planned(row)
    said = {name: use.said(name) for name, _ in SIZES}
    compared = [name for name in said if said[name] is not None and planned[name] is not None]
    within = use.limit("size_tolerance")
    wrong = [name for name in compared if not same_size(said[name], planned[name], within)]
    round_off = use.said("collar_diameter") is not None and row.diameter is not None
    if round_off and abs(piece.value("collar_diameter") - row.diameter) > within:
        told = revision | {"size": Told("collar_diameter", piece.value("collar_diameter")), "mark": row.mark}
        return use.departs("other-size", **kept | {"tells": told | {"planned": Told("collar_diameter", row.diameter)}})
    if wrong:
        name = wrong[0]
        told = revision | {"mark": row.mark, "size": Told(name, said[name]), "planned": Told(name, planned[name])}
        for _, other in meant({name: said[name]}):
            if len(wrong) == 1 and same_size(other, planned[name], within):
                heard = {"value": Told(name, said[name]), "other": Told(name, other)}
                return use.unclear("maybe-misheard", name, departs_as_heard=True, **kept | {"tells": told | heard})
        return use.departs("other-size", **kept | {"tells": told})
    if not compared and not round_off and (kind is None or row.kind is None):
        return use.unsaid("nothing-to-compare", "inlet_size", **kept)
    return use.meets("as-planned", **kept)


def _planned(row: Row) -> dict[str, tuple[Fraction, Fraction] | None]:
    """The sizes that the row asks for; a fitting with one size in the schedule goes out as it comes in."""
    through = row.inlet if row.kind != "transition" else None
    return {"inlet_size": row.inlet, "outlet_size": row.outlet or through, "branch_size": row.branch}


def _row_text(row: Row, around: Around) -> str:
    parts = [row.kind or ""] + [_size_text(size) for size in (row.inlet, row.outlet, row.branch) if size]
    parts += [] if row.diameter is None else [measure.printed(row.diameter)]
    return f"schedule {around.revision}: {row.mark} " + " ".join(part for part in parts if part)


@lru_cache(maxsize=1024)  # a job has few sizes, and every piece is judged often
def _size_text(size: tuple[Fraction, Fraction]) -> str:
    return "x".join(measure.printed(side) for side in size)


A_SCHEDULE = '[[schedule]]\nfile = "schedule.csv"\nrevision = "A"\n'

AS_PLANNED = Rule(
    id="as-planned",
    concerns=(),
    weight="must",
    silent="not due",
    may_stand=(),
    limits=("size_tolerance",),
    source=Source("SJ-10", "c"),
    judge=as_planned,
    examples=(
        Example("Elbow twelve on run two, twelve by ten.", "meets", "as-planned", job=A_SCHEDULE),
        Example("Elbow twelve on run two, twelve by eight.", "departs", "other-size", job=A_SCHEDULE),
        Example("Tee twelve on run two, twelve by ten.", "departs", "other-kind", job=A_SCHEDULE),
        Example("Elbow ninety-nine on run two, twelve by ten.", "unclear", "not-on-schedule", job=A_SCHEDULE),
        Example("Elbow twelve on run four, twelve by ten.", "unclear", "other-run", job=A_SCHEDULE),
        Example("Elbow twenty-two on run two, twelve by ten.", "unclear", "maybe-another-mark", job=A_SCHEDULE),
    ),
)


def run_sizes(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    limit = use.limit("size_tolerance")
    kind = piece.value("kind")
    if kind in BESIDE:
        return None
    inlet, outlet = ends(piece)
    meetings = [(near, *_meeting(near, inlet, outlet, piece.value("branch_size"))) for near in around.before]
    meetings = [(near, mine, theirs) for near, mine, theirs in meetings if mine]
    use.said("inlet_size")
    use.said("outlet_size")
    if any(near.side is None for near in around.before):
        use.said("branch_size")
    if kind in KEEPS_SIZE and inlet and outlet and not same_size(inlet, outlet, limit):
        told = {"one": Told("inlet_size", inlet), "other": Told("outlet_size", outlet)}
        return use.departs("keeps-no-size", limit=limit, tells=told)
    if not meetings:
        return None
    evidence = tuple(f"{near.mark}: {' '.join(_size_text(size) for size in theirs)}" for near, _, theirs in meetings)
    for near, mine, theirs in meetings:
        if not any(same_size(one, other, limit) for one, other in zip(mine, theirs)):
            told = {"mark": near.mark, "one": Told("inlet_size", mine[0]), "other": Told("inlet_size", theirs[0])}
            return use.departs("do-not-mate", limit=limit, evidence=evidence, tells=told)
    return use.meets("mate", limit=limit, evidence=evidence, tells={"marks": ", ".join(near.mark for near, _, _ in meetings)})


def _meeting(near: Neighbour, inlet, outlet, branch) -> tuple[list, list]:
    """The sizes of this piece and of its neighbour that may meet, as pairs; only both said."""
    if near.side is None:
        said = meeting((inlet, outlet, branch), (near.inlet, near.outlet, near.branch))
    else:
        mine, theirs = (inlet, near.outlet) if near.side == "before" else (outlet, near.inlet)
        said = () if mine is None or theirs is None else ((mine, theirs),)
    return [mine for mine, _ in said], [theirs for _, theirs in said]


RUN_SIZES = Rule(
    id="run-sizes",
    concerns=(),
    weight="must",
    silent="not due",
    may_stand=(),
    limits=("size_tolerance",),
    source=Source("SJ-10", "c"),
    judge=run_sizes,
    examples=(
        Example("Straight eleven on run two, twelve by ten to twelve by eight.", "departs", "keeps-no-size"),
        Example("Elbow twelve on run two, twelve by ten.", None),
    ),
)


def run_ends(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    mine = use.known("air_leaves_by")
    others = [near for near in around.before if near.leaves_by is not None]
    if mine is None or not others or piece.value("kind") in BESIDE:
        return None
    evidence = tuple(f"{near.mark}: {near.leaves_by}" for near in others)
    differs = next((near for near in others if near.leaves_by != mine), None)
    if differs is None:
        return use.meets("same-end", evidence=evidence, tells={"end": Word(f"end-{mine}")})
    told = {"end": Word(f"end-{mine}"), "other_end": Word(f"end-{differs.leaves_by}"), "mark": differs.mark}
    return use.departs("other-end", evidence=evidence, tells=told)


RUN_ENDS = Rule(
    id="run-ends",
    concerns=KINDS,
    weight="must",
    silent="not due",
    may_stand=(),
    limits=(),
    source=Source("SJ-07", "c"),
    judge=run_ends,
    examples=(Example("Straight eleven on run two, air leaves by the female end.", None),),
)
