"""Cut sheet of a transition: one side or both sides of one axis, or both axes over one set-back.

Two methods. *From a section*: the freed panel is laid on the cut. Over a set-back b at angle t it ends short of
the end by b(1 - cos t) along the duct, so the other panels are trimmed by that before the end is cut again, and
the finished opening is larger by the same share of the drop. *From flat board*: the moved panel is made to the
slant length and nothing is trimmed. With two axes four flat faces close only over one common set-back; the trim
is then that of the steeper face. Plain trigonometry; the limit of the slope is the job's own.

A section can only be made smaller: the larger end stays as it is, and the marks are measured from the other.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from logbook.geometry import seams, stock
from logbook.geometry.angles import near, short_by, slant, slope_angle
from logbook.geometry.cut_sheet import CutSheet, Panel, Size, Step, Stroke
from logbook.measure import printed
from logbook.mistake import Mistake

AXIS = {"left": 0, "right": 0, "top": 1, "bottom": 1}
OPPOSITE = {"left": "right", "right": "left", "top": "bottom", "bottom": "top"}


@dataclass(frozen=True)
class Wanted:
    """Sizes in inches, (width, height); `flat` the sides that stay straight; `slope` rise over run."""

    large: tuple[Fraction, Fraction]
    small: tuple[Fraction, Fraction]
    flat: tuple[str, ...]
    slope: Fraction
    thickness: Fraction
    method: str
    set_back: Fraction | None = None
    stub: Fraction = stock.STUB
    seams: seams.Seams = seams.USUAL
    widens: bool = False  # along the air: then the smaller end is where the air comes in


def moves(wanted: Wanted) -> Mapping[str, Fraction] | Mistake:
    """How far each side comes in. An axis whose sides are both free is shared by them half and half."""
    found = {}
    for axis, pair in enumerate((("left", "right"), ("top", "bottom"))):
        change = wanted.large[axis] - wanted.small[axis]
        if change < 0:
            large, small = (" x ".join(map(printed, size)) for size in (wanted.large, wanted.small))
            return Mistake("layout.not-smaller", "small", {"large": large, "small": small})
        free = [side for side in pair if side not in wanted.flat]
        if change and not free:
            return Mistake("layout.no-side-free", "flat", {"one": pair[0], "other": pair[1]})
        if change:
            found |= {side: change / len(free) for side in free}
    return found or Mistake("layout.nothing-changes", "small", {"size": " x ".join(map(printed, wanted.large))})


def lay_out(wanted: Wanted) -> CutSheet | Mistake:
    """The cut sheet, or why it can't be cut. Lengths in inches."""
    board, moved = stock.board(wanted.thickness), moves(wanted)
    for one in (board, moved):
        if isinstance(one, Mistake):
            return one
    if refused := stock.no_such_duct(wanted.small, wanted.thickness, "small"):
        return refused
    needed = max(moved.values()) / wanted.slope
    back = wanted.set_back or needed
    if back < needed:
        return Mistake("layout.set-back-too-short", "set_back", {"back": printed(back), "needed": printed(needed)})
    shared = max(back if wanted.set_back else Fraction(0), _needed_by_both(wanted) / wanted.slope)
    refused = stock.too_long_on_one_side(back + wanted.stub, shared + wanted.stub, "set_back") if wanted.method == "section" else None
    if refused:
        return refused
    trim = max(short_by(by, back) for by in moved.values()) if wanted.method == "section" else Fraction(0)
    return _sheet(wanted, board, moved, back, trim)


def _needed_by_both(wanted: Wanted) -> Fraction:
    """The largest move of a side where both sides of every axis share its change."""
    return max(large - small for large, small in zip(wanted.large, wanted.small, strict=True)) / 2


def _sheet(wanted, board, moved, back, trim):
    reach = back - trim  # along the duct, from the mark to the finished end
    finished = tuple(
        near(float(wanted.large[axis]) - sum(float(by) * float(reach / back) for side, by in moved.items() if AXIS[side] == axis))
        for axis in (0, 1)
    )
    sizes = [Size("set-back", back)]
    for side, by in moved.items():
        sizes += [Size(f"in-{side}", by), Size(f"angle-{side}", slope_angle(by, back), "°"), Size(f"slant-{side}", slant(back, by))]
    if len({AXIS[side] for side in moved}) == 2:
        hips = [(a, b) for a in moved for b in moved if AXIS[a] < AXIS[b]]
        sizes.append(Size("hip", slant(*(max(moved[s] for s in pair) for pair in zip(*hips, strict=True)), back)))
    if trim:
        sizes += [Size("trim", trim), Size("finished-width", finished[0]), Size("finished-height", finished[1])]
    sizes.append(Size("overall", wanted.stub + reach))
    panels = tuple(_panel(side, wanted, moved, back, reach) for side in ("top", "bottom", "left", "right"))
    length = wanted.stub + (back if wanted.method == "section" else max(slant(back, by) for by in moved.values()))
    return CutSheet(
        kind="transition",
        method=wanted.method,
        title={"large": wanted.large, "small": wanted.small, "thickness": wanted.thickness, "slope": wanted.slope * 12},
        sizes=tuple(sizes),
        steps=tuple(_steps(wanted, moved, back, trim)),
        panels=panels,
        stock=stock.stock(*wanted.large, length, board),
        closing=wanted.seams.flapped(_seam(moved, back) + 2 * sum(finished)),
    )


def _seam(moved, back) -> Fraction:
    """Inches of slanted corner to close: every corner of which at least one side moves."""
    corners = ((moved.get(a, Fraction(0)), moved.get(b, Fraction(0))) for a in ("left", "right") for b in ("top", "bottom"))
    return sum((slant(back, *legs) for legs in corners if any(legs)), Fraction(0))


def _panel(side: str, wanted, moved, back, reach) -> Panel:
    """The face of one side, flat. y runs from the lower-named neighbour: left to right, or bottom to top."""
    stub = wanted.stub
    low, high = ("left", "right") if AXIS[side] == 1 else ("bottom", "top")
    width = wanted.large[0] if AXIS[side] == 1 else wanted.large[1]
    share = reach / back
    lifted = moved.get(side, Fraction(0))
    long = stub + near(float(slant(back, lifted)) * float(share)) if lifted else stub + reach
    down, up = moved.get(low, Fraction(0)) * share, width - moved.get(high, Fraction(0)) * share
    outline = [(Fraction(0), Fraction(0)), (stub, Fraction(0)), (long, near(down)), (long, near(up)), (stub, width), (Fraction(0), width)]
    if not down:
        outline.remove((stub, Fraction(0)))
    if up == width:
        outline.remove((stub, width))
    across = (Stroke("cut", (stub, Fraction(0)), (stub, width)),) if lifted else ()
    return Panel(side, tuple(outline), tuple(_edge(side, neighbour, moved) for neighbour in (low, high)), strokes=across)


def _edge(side: str, neighbour: str, moved) -> str:
    """How a panel meets its neighbour: a corner that no side moves at stays folded. The panel that is laid in is the
    butt one; where both axes move, top and bottom are, so that no panel is both."""
    if side not in moved and neighbour not in moved:
        return "fold"
    return "butt" if side in laid_in(moved) else "shiplap"


def laid_in(moved) -> tuple[str, str]:
    """The pair of panels that drop into the others' shiplap."""
    return ("left", "right") if {AXIS[side] for side in moved} == {0} else ("top", "bottom")


def _steps(wanted, moved, back, trim):
    yield Step("cut-end", {"end": wanted.seams.other_end if wanted.widens else wanted.seams.made_from})
    yield Step("stub-line", {"stub": wanted.stub})
    for side, by in moved.items():
        neighbours = ("left", "right") if AXIS[side] == 1 else ("top", "bottom")
        yield Step("marks", {"side": side, "one": neighbours[0], "other": neighbours[1], "back": back, "by": by})
    yield Step("facing-flap")
    if wanted.method == "section":
        for side, by in moved.items():
            yield Step("free-panel", {"side": side, "back": back})
        yield Step("trim-others", {"trim": trim})
    else:
        for side, by in moved.items():
            yield Step("make-panel", {"side": side, "slant": slant(back, by)})
        yield Step("inside-lines")
    one, other = ("top", "bottom") if laid_in(moved) == ("left", "right") else ("left", "right")
    yield Step("shiplap", {"one": one, "other": other})
    yield Step("drop-in")
    yield Step("close", {"spacing": wanted.seams.staple_spacing})
