"""The joints as a whole: tight, closed to the next piece, and nothing left to do."""

from __future__ import annotations

from logbook.facts import KINDS, bare_mark
from logbook.findings import Example, Outcome, Rule, Source
from logbook.piece import Piece
from logbook.rules.using import Use
from logbook.runs import Around


def joint_tight(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    limit, gap = use.limit("gap"), use.said("gap")
    if gap is None:
        return None
    reckoned = {"gap_in": gap, "limit_in": limit}
    answer = use.meets if gap <= limit else use.departs
    return answer("tight" if gap <= limit else "open", limit=limit, reckoned=reckoned)


JOINT_TIGHT = Rule(
    id="joint-tight",
    concerns=tuple(kind for kind in KINDS if kind not in ("hanger", "access_door", "register")),
    weight="must",
    silent="not due",
    may_stand=(),
    limits=("gap",),
    source=Source("SJ-01", "a", "ah121-joints"),
    judge=joint_tight,
    kind_unsaid=True,
    examples=(
        Example("Straight four, eighteen by twelve, joint tight.", "meets", "tight"),
        Example("Straight four, eighteen by twelve, a quarter inch gap at the joint.", "departs", "open"),
    ),
)


def joined(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    if piece.run is None or use.said("stage") != "hung":
        return None
    named = {bare_mark(mark) for mark in use.said("joined_to") or ()}
    others = {bare_mark(mark) for mark in around.joined_by}
    evidence = tuple(f"{mark} joined" for mark in around.joined_by)
    following = None if around.next_mark is None else bare_mark(around.next_mark)
    if following in named | others if following is not None else named or others:
        return use.meets("joined", evidence=evidence)
    silent = "flag" if around.run_done else None
    if following is not None:
        return use.unsaid("next-unsaid", "joined_to", silent=silent, evidence=evidence, tells={"mark": around.next_mark})
    return use.unsaid("unsaid", "joined_to", silent=silent)


JOINED = Rule(
    id="joined",
    concerns=(),
    weight="must",
    silent="count",
    may_stand=(),
    limits=(),
    source=Source("CL-02", "a", "umc-6-5"),
    judge=joined,
    examples=(
        Example("Straight four on run two, hung, tied in and taped to three.", "meets", "joined"),
        Example("Straight four on run two, hung.", "unsaid", "unsaid"),
        Example("Straight four on run two, made on the bench.", None),
    ),
)


def nothing_open(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    left = tuple(item.text for item in piece.open_items if item.about == "piece")
    if left:
        return use.departs("left-open", evidence=left, tells={"items": "; ".join(left)})
    maybe = tuple(one.maybe for one in piece.muffled if one.maybe)
    if maybe:
        denied = next((one.denies for one in piece.muffled if one.maybe), None)
        return use.unclear("maybe-left-open", denied, evidence=maybe, tells={"items": "; ".join(maybe)})
    if piece.muffled:  # what was not understood may have been "not taped yet"; who did not say taped is asked that anyway
        return use.unclear("not-all-heard", None, quiet=True, evidence=tuple(one.words for one in piece.muffled))
    return use.meets("none")


NOTHING_OPEN = Rule(
    id="nothing-open",
    concerns=(),
    weight="must",
    silent="not due",
    may_stand=(),
    limits=(),
    source=Source("", "c"),
    judge=nothing_open,
    examples=(
        Example("Straight four, eighteen by twelve, stapled and taped.", "meets", "none"),
        Example("Straight four, eighteen by twelve, stapled, still have to tape the far side.", "departs", "left-open"),
        Example("Straight four, eighteen by twelve, stapled and taped, still have to hang it.", "meets", "none"),
    ),
)
