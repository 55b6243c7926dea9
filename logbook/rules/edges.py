"""Edges and ends: the re-cut shiplap, the trimmed insulation, which panels have which edge, and the two ends."""

from __future__ import annotations

from logbook.findings import Example, Outcome, Rule, Source, Word
from logbook.piece import Piece
from logbook.rules.using import Use, against_the_air
from logbook.runs import LAID_BY_END, Around

RECUT = (
    "transition", "straight", "offset", "elbow", "tee", "branch", "wye", "end_cap", "plenum",
)  # fmt: skip


def groove_step(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    step = use.known("groove_step")
    cut = use.peek("kind") == "transition" or use.peek("cut_to_length") is True or step not in (None, use.limit("groove_step")) or use.peek("panel_seated") is False  # a step that looks out and a panel that was freed were cut, said or not
    butt_with_tabs = use.peek("cross_tabs") is True and (use.peek("kind") != "transition" or use.peek("butt_sides"))
    if around.job.groove != "shiplap" or not cut or (butt_with_tabs and step is None):
        return None
    limit = use.limit("groove_step")
    if step is not None and step != limit:
        return use.departs("step-outside", limit=limit, stated_by="groove_step", tells={"side": Word(f"step-{step}")})
    seated = use.said("panel_seated")
    if seated is False:
        return use.departs("not-seated", limit=limit)
    if step is not None:
        return use.meets("step-inside", limit=limit, stated_by="groove_step", tells={"side": Word(f"step-{step}")})
    if seated:
        return use.meets("panel-seated", limit=limit)
    return use.unsaid("step-unsaid", "groove_step", limit=limit)


GROOVE_STEP = Rule(
    id="groove-step",
    concerns=RECUT,
    weight="must",
    silent="ask",
    may_stand=("shift", "phrase"),
    limits=("groove_step",),
    source=Source("SJ-11", "c"),
    judge=groove_step,
    examples=(
        Example("Transition five, twenty by fourteen to twenty by eleven, step inside.", "meets", "step-inside"),
        Example("Transition five, twenty by fourteen to twenty by eleven, low step outside.", "departs", "step-outside"),
        Example("Transition five, twenty by fourteen to twenty by eleven, the panel dropped in and sits.", "meets", "panel-seated"),
        Example("Transition five, twenty by fourteen to twenty by eleven.", "unsaid", "step-unsaid"),
    ),
)


def trimmed(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    match use.said("trimmed"):
        case True:
            return use.meets("trimmed")
        case False:
            return use.departs("not-trimmed")
    return use.unsaid("unsaid", "trimmed")


TRIMMED = Rule(
    id="trimmed",
    concerns=("transition",),
    weight="should",
    silent="count",
    may_stand=(),
    limits=(),
    source=Source("", "c"),
    judge=trimmed,
    examples=(
        Example("Transition five, extra insulation trimmed.", "meets", "trimmed"),
        Example("Transition five, extra insulation not trimmed.", "departs", "not-trimmed"),
        Example("Transition five, stapled and taped.", "unsaid", "unsaid"),
    ),
)


def edges_known(piece: Piece, around: Around) -> Outcome | None:
    if around.job.groove != "shiplap":
        return None
    use = Use(piece, around)
    shiplap, butt = use.known("shiplap_sides"), use.known("butt_sides")
    if shiplap and butt:
        both = [side for side in shiplap if side in butt]
        if both:
            return use.departs("both", tells={"side": Word(f"side-{both[0]}")})
        return use.meets("known", stated_by="shiplap_sides")
    return use.unsaid("unsaid" if not shiplap and not butt else "one-unsaid", "butt_sides" if shiplap else "shiplap_sides")


EDGES_KNOWN = Rule(
    id="edges-known",
    concerns=("transition",),
    weight="keep",
    silent="count",
    may_stand=("shift",),
    limits=(),
    source=Source("SJ-02", "c"),
    judge=edges_known,
    examples=(
        Example("Transition five, shiplap on top and bottom, butt on left and right.", "meets", "known"),
        Example("Transition five, shiplap on top and bottom, butt on top and left.", "departs", "both"),
        Example("Transition five, stapled.", "unsaid", "unsaid"),
    ),
)


def made_from_end(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    if use.peek("kind") == "transition" and _widens(piece):
        return None
    limit, end = use.limit("made_from"), use.known("made_from")
    if end is None:
        return use.unsaid("unsaid", "made_from", limit=limit)
    told = {"end": Word(f"end-{end}"), "limit_end": Word(f"end-{limit}")}
    answer = use.meets if end == limit else use.departs
    return answer("right-end" if end == limit else "other-end", limit=limit, stated_by="made_from", tells=told)


def _widens(piece: Piece) -> bool:
    """Along the air the second size is the larger one (the first, where people speak against the air)."""
    first, second = piece.value("inlet_size"), piece.value("outlet_size")
    if first is None or second is None:
        return False
    first, second = first[0] * first[1], second[0] * second[1]
    return first > second if against_the_air(piece) else second > first


MADE_FROM_END = Rule(
    id="made-from-end",
    concerns=("transition", "offset", "elbow", "branch", "tee"),
    weight="keep",
    silent="count",
    may_stand=("shift",),
    limits=("made_from",),
    source=Source("SJ-07", "c"),
    judge=made_from_end,
    examples=(
        Example("Elbow three, twelve by ten, laid out from the female end.", "meets", "right-end"),
        Example("Elbow three, twelve by ten, laid out from the male end.", "departs", "other-end"),
        Example("Elbow three, twelve by ten.", "unsaid", "unsaid"),
    ),
)


def air_leaves_by(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    limit, end = use.limit("air_leaves_by"), use.known("air_leaves_by")
    if end is None:
        return use.unsaid("unsaid", "air_leaves_by", limit=limit, silent="not due" if around.air_end_asked else None)
    told = {"end": Word(f"end-{end}"), "limit_end": Word(f"end-{limit}")}
    answer = use.meets if end == limit else use.departs
    return answer("the-job-s-end" if end == limit else "other-end", limit=limit, stated_by="air_leaves_by", tells=told)


AIR_LEAVES_BY = Rule(
    id="air-leaves-by",
    concerns=LAID_BY_END,
    weight="must",
    silent="ask",
    may_stand=("job", "shift"),
    limits=("air_leaves_by",),
    source=Source("SJ-07", "c"),
    judge=air_leaves_by,
    examples=(
        Example("Elbow three, twelve by ten, air leaves by the female end.", "meets", "the-job-s-end"),
        Example("Elbow three, twelve by ten, air leaves by the male end.", "departs", "other-end"),
        Example("Elbow three, twelve by ten.", "unsaid", "unsaid"),
    ),
)
