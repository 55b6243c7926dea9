"""Cut sheets of elbows: mitred from a section (square throat), in several pieces, or a radius elbow from flat board.

A mitre is half the turn of its joint; a piece cut off is turned over and makes the turn. Vanes are due where a
joint turns 60 degrees or more and there is no throat radius (the rule `elbow-vanes` says the same). The radius
elbow's cheeks are rings of the turn, its throat and heel panels are arc lengths. Plain trigonometry.
"""

from __future__ import annotations

from fractions import Fraction
from math import cos, radians, sin

from logbook.geometry import stock
from logbook.geometry.angles import across, arc, near, slant
from logbook.geometry.cut_sheet import CutSheet, Panel, Size, Step, closing
from logbook.measure import printed
from logbook.mistake import Mistake

VANES_FROM = Fraction(60)  # degrees of turn at one joint
RING_STEPS = 12  # straight strokes that draw a ring's arc


def mitred(
    size: tuple[Fraction, Fraction],
    turn: Fraction,
    pieces: int,
    throat: Fraction,
    thickness: Fraction,
    stub: Fraction = stock.STUB,
    spacing: Fraction = Fraction(2),
) -> CutSheet | Mistake:
    """`size` (width in the plane of the turn, height); `throat` inches on the inside between first and last joint's bend centre, 0 for two pieces."""
    board = stock.board(thickness)
    if isinstance(board, Mistake):
        return board
    if not 0 < turn <= 90 or pieces < 2:
        return Mistake("layout.turn", "turn", {"turn": printed(turn), "pieces": pieces})
    width, height = size
    joint = turn / (pieces - 1)
    mitre = joint / 2
    step = across(width, mitre)
    short = 2 * across(throat, mitre)  # a middle piece, on the throat and on the heel
    long = short + 2 * step
    zero = Fraction(0)
    end = Panel("end-cheek", ((zero, zero), (stub, zero), (stub + step, width), (zero, width)))
    panels = [end]
    if pieces > 2:
        panels.append(Panel("gore-cheek", ((step, zero), (step + short, zero), (long, width), (zero, width))))
    # neighbouring cuts lean opposite ways and every second piece is turned over, so a step serves two pieces
    length = 2 * stub + step + (pieces - 2) * (short + step)
    refused = stock.too_long(length, "size")
    if refused:
        return refused
    seam = (pieces - 1) * (2 * slant(width, step) + 2 * height)
    staples, tape = closing(seam, spacing)
    vanes = joint >= VANES_FROM
    sizes = [Size("joint-turn", joint, "°"), Size("mitre", mitre, "°"), Size("mitre-step", step)]
    if pieces > 2:
        sizes += [Size("gore-throat", short), Size("gore-heel", long)]
    steps = [Step("lay-from", {"end": "female"}), Step("mitre-first", {"stub": stub, "far": stub + step, "angle": mitre})]
    if pieces > 2:
        steps.append(Step("gores", {"count": pieces - 2, "short": short, "long": long}))
    steps += [Step("turn-middle"), Step("cut-facing-first")]
    steps += [Step("vanes")] if vanes else []
    steps += [Step("tabs-at-mitre"), Step("close", {"spacing": spacing})]
    return CutSheet(
        "elbow", "section", {"size": size, "turn": turn, "pieces": pieces, "thickness": thickness},
        tuple(sizes), tuple(steps), tuple(panels), stock.stock(width, height, length, board), seam, staples, tape,
    )  # fmt: skip


def radius(
    size: tuple[Fraction, Fraction],
    turn: Fraction,
    throat: Fraction,
    thickness: Fraction,
    stub: Fraction = stock.STUB,
    spacing: Fraction = Fraction(2),
) -> CutSheet | Mistake:
    """A radius elbow from flat board: two cheeks, a throat and a heel panel. `throat` is the inside radius."""
    board = stock.board(thickness)
    if isinstance(board, Mistake):
        return board
    if not 0 < turn <= 90 or throat <= 0:
        return Mistake("layout.turn", "turn", {"turn": printed(turn), "pieces": 1})
    width, height = size
    heel = throat + width
    if heel + stub > stock.SHEET_WIDTH:
        return Mistake("layout.larger-than-a-sheet", "size", {"needed": printed(heel + stub), "sheet": printed(stock.SHEET_WIDTH)})
    ring = [_on_ring(throat, turn, n) for n in range(RING_STEPS + 1)]
    ring += [_on_ring(heel, turn, n) for n in range(RING_STEPS, -1, -1)]
    inner, outer = arc(throat, turn), arc(heel, turn)
    zero = Fraction(0)

    def wrapper(name, length):
        long = length + 2 * stub
        return Panel(name, ((zero, zero), (long, zero), (long, height), (zero, height)), ("butt", "butt"))

    seam = 2 * (inner + outer + 4 * stub)
    staples, tape = closing(seam, spacing)
    sheets = stock.stock(width, height, outer + 2 * stub, board)
    return CutSheet(
        "elbow", "board", {"size": size, "turn": turn, "throat": throat, "thickness": thickness},
        (
            Size("throat-radius", throat), Size("heel-radius", heel), Size("throat-panel", inner + 2 * stub),
            Size("heel-panel", outer + 2 * stub), Size("centre-ratio", (throat + width / 2) / width, ""),
        ),
        (
            Step("cheeks", {"throat": throat, "heel": heel, "stub": stub}), Step("kerf", {"throat": inner, "heel": outer}),
            Step("cut-facing-first"), Step("close", {"spacing": spacing}),
        ),
        (Panel("cheek", tuple(ring), ("shiplap", "shiplap")), wrapper("throat", inner), wrapper("heel", outer)),
        sheets, seam, staples, tape,
    )  # fmt: skip


def _on_ring(at: Fraction, turn: Fraction, n: int) -> tuple[Fraction, Fraction]:
    angle = radians(float(turn)) * n / RING_STEPS
    return near(float(at) * sin(angle)), near(float(at) * cos(angle))
