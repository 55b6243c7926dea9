"""Cut sheets of elbows: mitred from a section (square throat), in several pieces, or a radius elbow from flat board.

A mitre is half the turn of its joint; a piece cut off is turned over and makes the turn. Vanes are due where a
joint turns 60 degrees or more and there is no throat radius (the rule `elbow-vanes` says the same). The radius
elbow's cheeks are rings of the turn, its throat and heel panels are arc lengths. Plain trigonometry.
"""

from __future__ import annotations

from fractions import Fraction
from math import cos, radians, sin

from logbook.geometry import seams, stock
from logbook.geometry.angles import across, arc, near, slant
from logbook.geometry.cut_sheet import CutSheet, Panel, Size, Step, Stroke
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
    closed: seams.Seams = seams.USUAL,
) -> CutSheet | Mistake:
    """`size` (width in the plane of the turn, height); `throat` inches on the inside between first and last joint's bend centre, 0 for two pieces."""
    board = stock.board(thickness)
    if isinstance(board, Mistake):
        return board
    if not 0 < turn <= 90 or pieces < 2:
        return Mistake("layout.turn", "turn", {"turn": printed(turn), "pieces": pieces})
    if pieces > 2 and throat <= 0:
        return Mistake("layout.needs-throat", "throat", {"pieces": pieces})
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
    marks = _marks(stub, step, short, pieces)
    section = Panel(
        "section-cheek", ((zero, zero), (length, zero), (length, width), (zero, width)),
        strokes=tuple(Stroke("cut", (on_near, zero), (on_far, width)) for on_near, on_far in marks),
    )  # fmt: skip
    vanes = joint >= VANES_FROM
    sizes = [Size("joint-turn", joint, "°"), Size("mitre", mitre, "°"), Size("mitre-step", step)]
    if pieces > 2:
        sizes += [Size("gore-throat", short), Size("gore-heel", long)]
    steps = [Step("lay-from", {"end": closed.made_from}), Step("mitre-first", {"stub": stub, "far": stub + step, "angle": mitre})]
    steps += [Step("mitre-next", {"near": on_near, "far": on_far}) for on_near, on_far in marks[1:]]
    steps += [Step("square-off", {"length": length}), Step("cut-facing-first"), Step("turn-second")]
    steps += [Step("vanes")] if vanes else []
    steps += [Step("tabs-at-mitre", {"length": closed.cross_tab_length, "spacing": closed.cross_tab_spacing}), Step("close-tabs")]
    return CutSheet(
        "elbow", "section", {"size": size, "turn": turn, "pieces": pieces, "thickness": thickness},
        tuple(sizes), tuple(steps), (section, *panels), stock.stock(width, height, length, board),
        closed.tabbed((pieces - 1) * [slant(width, step), slant(width, step), height, height]),
    )  # fmt: skip


def _marks(stub: Fraction, step: Fraction, short: Fraction, pieces: int) -> list[tuple[Fraction, Fraction]]:
    """Where each mitre crosses the near and the far face of the section, from the end it is laid out from.

    Neighbouring mitres lean opposite ways: the middle pieces lie head to foot and none of the board between is lost.
    """
    marks, long = [(stub, stub + step)], short + 2 * step
    for n in range(pieces - 2):
        on_near, on_far = marks[-1]
        marks.append((on_near + long, on_far + short) if n % 2 == 0 else (on_near + short, on_far + long))
    return marks


def radius(
    size: tuple[Fraction, Fraction],
    turn: Fraction,
    throat: Fraction,
    thickness: Fraction,
    stub: Fraction = stock.STUB,
    closed: seams.Seams = seams.USUAL,
) -> CutSheet | Mistake:
    """A radius elbow from flat board: two cheeks, a throat and a heel panel. `throat` is the inside radius."""
    board = stock.board(thickness)
    if isinstance(board, Mistake):
        return board
    if not 0 < turn <= 90 or throat <= 0:
        return Mistake("layout.turn", "turn", {"turn": printed(turn), "pieces": 1})
    width, height = size
    heel = throat + width
    cheek = _cheek(throat, heel, turn, stub)
    inner, outer = arc(throat, turn), arc(heel, turn)
    zero = Fraction(0)

    def wrapper(name, length):
        long = length + 2 * stub
        return Panel(name, ((zero, zero), (long, zero), (long, height), (zero, height)), ("butt", "butt"))

    wide, tall = (max(corner[way] for corner in cheek.outline) for way in (0, 1))
    parts = [(wide, tall), (wide, tall), (inner + 2 * stub, height), (outer + 2 * stub, height)]
    refused = stock.no_sheet_for(parts, "size")
    if refused:
        return refused
    return CutSheet(
        "elbow", "board", {"size": size, "turn": turn, "throat": throat, "thickness": thickness},
        (
            Size("throat-radius", throat), Size("heel-radius", heel), Size("throat-panel", inner + 2 * stub),
            Size("heel-panel", outer + 2 * stub), Size("centre-ratio", (throat + width / 2) / width, ""),
        ),
        (
            Step("cheeks", {"throat": throat, "heel": heel, "stub": stub}), Step("kerf", {"throat": inner, "heel": outer}),
            Step("inside-lines"), Step("cut-facing-first"), Step("cheek-flap", {"flap": board.flap}), Step("close", {"spacing": closed.staple_spacing}),
        ),
        (cheek, wrapper("throat", inner), wrapper("heel", outer)),
        stock.flat(parts), closed.flapped(2 * (inner + outer + 4 * stub)),
    )  # fmt: skip


def _cheek(throat: Fraction, heel: Fraction, turn: Fraction, stub: Fraction) -> Panel:
    """The ring between the two radii with a straight stub at each end; its low corner at nought."""

    def on_ring(at: Fraction, share: Fraction, ahead: Fraction = Fraction(0)) -> tuple[Fraction, Fraction]:
        angle = radians(float(turn * share))
        return near(float(at) * sin(angle) + float(ahead) * cos(angle)), near(float(at) * cos(angle) - float(ahead) * sin(angle))

    ways = [Fraction(n, RING_STEPS) for n in range(RING_STEPS + 1)]
    ring = [on_ring(throat, Fraction(0), -stub), *(on_ring(throat, way) for way in ways), on_ring(throat, Fraction(1), stub)]
    ring += [on_ring(heel, Fraction(1), stub), *(on_ring(heel, way) for way in reversed(ways)), on_ring(heel, Fraction(0), -stub)]
    left, low = (min(corner[way] for corner in ring) for way in (0, 1))
    left, low = min(left, Fraction(0)), min(low, Fraction(0))  # the centre of the turn is drawn too

    def moved(corner):
        return corner[0] - left, corner[1] - low

    centre = moved((Fraction(0), Fraction(0)))
    radii = tuple(Stroke("radius", centre, moved(on_ring(at, share))) for at, share in ((throat, Fraction(3, 4)), (heel, Fraction(1, 4))))
    return Panel("cheek", tuple(map(moved, ring)), ("shiplap", "shiplap"), strokes=radii)
