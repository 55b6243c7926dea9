"""Cut sheet of a mitred offset: the air keeps its full cross-section on the slant.

A sheared offset loses depth by the cosine of its angle, so an offset is mitred: both bends are cut at half the
angle, and the middle piece, turned end for end about its length, makes the slant. Plain trigonometry.
"""

from __future__ import annotations

from fractions import Fraction

from logbook.geometry import seams, stock
from logbook.geometry.angles import across, slant, slope_angle
from logbook.geometry.cut_sheet import CutSheet, Panel, Size, Step, Stroke
from logbook.measure import printed
from logbook.mistake import Mistake


def lay_out(
    size: tuple[Fraction, Fraction],
    by: Fraction,
    over: Fraction,
    axis: str,
    thickness: Fraction,
    stub: Fraction = stock.STUB,
    closed: seams.Seams = seams.USUAL,
) -> CutSheet | Mistake:
    """`by` inches sideways (axis "width") or up and down ("height") over `over` inches between the bends."""
    board = stock.board(thickness)
    if isinstance(board, Mistake):
        return board
    if by <= 0 or over <= 0:
        return Mistake("layout.not-positive", "by", {"by": printed(by), "over": printed(over)})
    depth = size[0] if axis == "width" else size[1]
    angle = slope_angle(by, over)
    mitre = angle / 2
    step = across(depth, mitre)  # how far a mitre runs along the duct from one face to the other
    middle = slant(by, over)
    length = 2 * stub + step + middle  # the two cuts are parallel, so one step serves both ends
    refused = stock.too_long(length, "over")
    if refused:
        return refused
    width = size[1] if axis == "width" else size[0]
    zero = Fraction(0)
    second = stub + middle  # where the second mitre meets the near face
    section = Panel(
        "section-cheek", ((zero, zero), (length, zero), (length, depth), (zero, depth)),
        strokes=tuple(Stroke("cut", (at, zero), (at + step, depth)) for at in (stub, second)),
    )  # fmt: skip
    cheek_end = Panel("end-cheek", ((zero, zero), (stub, zero), (stub + step, depth), (zero, depth)), ("fold", "fold"))
    cheek_middle = Panel("middle-cheek", ((zero, zero), (middle, zero), (middle + step, depth), (step, depth)), ("fold", "fold"))
    near_side = Panel("middle-face", ((zero, zero), (middle, zero), (middle, width), (zero, width)))
    return CutSheet(
        kind="offset",
        method="section",
        title={"size": size, "by": by, "over": over, "thickness": thickness},
        sizes=(
            Size("offset-angle", angle, "°"),
            Size("mitre", mitre, "°"),
            Size("mitre-step", step),
            Size("slant-middle", middle),
            Size("overall", 2 * stub + step + over),
        ),
        steps=(
            Step("lay-from", {"end": closed.made_from}),
            Step("mitre-first", {"stub": stub, "far": stub + step, "angle": mitre}),
            Step("mitre-next", {"near": second, "far": second + step}),
            Step("square-off", {"length": length}),
            Step("cut-facing-first"),
            Step("turn-second"),
            Step("tabs-at-mitre", {"length": closed.cross_tab_length, "spacing": closed.cross_tab_spacing}),
            Step("close-tabs"),
        ),
        panels=(section, cheek_end, cheek_middle, near_side),
        stock=stock.stock(*size, length, board),
        closing=closed.tabbed(2 * [slant(depth, step), slant(depth, step), width, width]),
    )
