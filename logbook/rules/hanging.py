"""Hangers and what hangs on the duct."""

from __future__ import annotations

from fractions import Fraction

from logbook.findings import Example, Outcome, Rule, Source
from logbook.piece import Piece
from logbook.rules.using import Use
from logbook.runs import Around

ROWS = ("wide", "low", "middle", "deep")


def _row(use: Use, size: tuple[Fraction, Fraction]) -> str:
    """The row of the table: the first number is the width, the second the height."""
    width, height = size
    if width >= use.limit("hanger_wide_from"):
        return "wide"
    if height < use.limit("hanger_low_below"):
        return "low"
    return "deep" if height >= use.limit("hanger_deep_from") else "middle"


def hanger_spacing(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    if use.peek("kind") != "hanger" and use.peek("hanger_spacing") is None:
        return None  # of a piece it is due where he told how far apart its hangers are, and of the hangers always
    spacing, size = use.known("hanger_spacing"), use.said("inlet_size")
    limits = {row: use.limit(f"hanger_spacing_{row}") for row in ROWS}
    limit = min(limits.values()) if size is None else limits[_row(use, size)]
    if spacing is None:
        return use.unsaid("unsaid", "hanger_spacing", limit=limit)
    more = {"limit": limit, "reckoned": {"spacing_in": spacing, "limit_in": limit}, "stated_by": "hanger_spacing"}
    if spacing <= limit:
        return use.meets("close-enough", **more)
    if size is None and spacing <= max(limits.values()):
        return use.unsaid("size-unsaid", "inlet_size", **more)
    return use.departs("too-far-apart", **more)


HANGER_SPACING = Rule(
    id="hanger-spacing",
    concerns=(),
    weight="should",
    silent="ask",
    may_stand=("job",),
    limits=tuple(f"hanger_spacing_{row}" for row in ROWS) + ("hanger_wide_from", "hanger_low_below", "hanger_deep_from"),
    source=Source("HG-01, HG-02, HG-03, HG-04", "b", "ah116-vii"),
    judge=hanger_spacing,
    examples=(
        Example("Hangers on run two, twenty by fourteen, every six feet.", "meets", "close-enough"),
        Example("Hangers on run two, fifty by fourteen, every six feet.", "departs", "too-far-apart"),
        Example("Hangers on run two, twenty by fourteen.", "unsaid", "unsaid"),
        Example("Straight four, twenty by fourteen, hung every ten feet.", "departs", "too-far-apart"),
        Example("Straight four, twenty by fourteen, hung.", None),
    ),
)


def accessory_hung(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    weight, limit = use.said("accessory_weight"), use.limit("accessory_weight")
    if weight is None:
        return None
    more = {"limit": limit, "reckoned": {"weight_lb": weight, "limit_lb": limit}}
    if weight <= limit:
        return use.meets("light", **more)
    match use.said("accessory_supported"):
        case True:
            return use.meets("hung-alone", **more)
        case False:
            return use.departs("on-the-duct", **more)
    return use.unsaid("support-unsaid", "accessory_supported", **more)


ACCESSORY_HUNG = Rule(
    id="accessory-hung",
    concerns=(),
    weight="keep",
    silent="not due",
    may_stand=(),
    limits=("accessory_weight",),
    source=Source("AC-01", "b?", "ah116-vii"),
    judge=accessory_hung,
    examples=(
        Example("Straight four, the damper weighs thirty pounds.", "meets", "light"),
        Example("Straight four, the coil weighs eighty pounds, hung on its own hangers.", "meets", "hung-alone"),
    ),
)
