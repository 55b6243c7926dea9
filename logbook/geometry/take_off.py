"""Cut sheets of a tee or branch take-off, an end cap, and a straight cut to length.

The 45-degree entry is a quarter of the branch width long, at least 4 in. (from memory of a sheet-metal duct
standard's branch figure, confirm in the printed figure). The rest is plain arithmetic on inside sizes; the way
edges meet is common practice, no published source.
"""

from __future__ import annotations

from fractions import Fraction

from logbook.geometry import seams, stock
from logbook.geometry.angles import slant
from logbook.geometry.cut_sheet import CutSheet, Panel, Size, Step
from logbook.measure import printed
from logbook.mistake import Mistake

ENTRY_SHARE = Fraction(1, 4)
ENTRY_LEAST = Fraction(4)
ZERO = Fraction(0)


def _rectangle(name: str, along: Fraction, across: Fraction, edges=("fold", "fold")) -> Panel:
    return Panel(name, ((ZERO, ZERO), (along, ZERO), (along, across), (ZERO, across)), edges)


def branch(
    kind: str,
    trunk: tuple[Fraction, Fraction],
    size: tuple[Fraction, Fraction],
    at: Fraction,
    entry: str,
    thickness: Fraction,
    stub: Fraction = stock.STUB,
    closed: seams.Seams = seams.USUAL,
) -> CutSheet | Mistake:
    """`size` (along the trunk, across its side panel); `at` from the end to the near edge; `entry` square or 45."""
    board = stock.board(thickness)
    if isinstance(board, Mistake):
        return board
    side = trunk[1]
    if size[1] > side:
        return Mistake("layout.branch-too-high", "branch", {"branch": printed(size[1]), "side": printed(side)})
    toe = max(ENTRY_SHARE * size[0], ENTRY_LEAST) if entry == "45" else ZERO
    opening = size[0] + toe
    if at < stub:
        return Mistake("layout.too-near-the-end", "at", {"at": printed(at), "stub": printed(stub)})
    refused = stock.too_long(at + opening + stub, "at")
    if refused:
        return refused
    low = (side - size[1]) / 2
    hole = ((at, low), (at + opening, low), (at + opening, low + size[1]), (at, low + size[1]))
    trunk_panel = Panel("trunk-side", _rectangle("", at + opening + stub, side).outline, inner=hole)
    cheek = Panel("branch-cheek", ((ZERO, ZERO), (stub + toe, ZERO), (stub + toe, opening), (stub, size[0]), (ZERO, size[0])) if toe else ((ZERO, ZERO), (stub, ZERO), (stub, size[0]), (ZERO, size[0])))
    sizes = [Size("opening-along", opening), Size("opening-across", size[1]), Size("from-end", at), Size("from-edge", low)]
    sizes += [Size("entry", toe), Size("entry-slant", slant(toe, toe))] if toe else []
    steps = [Step("opening", {"at": at, "low": low, "along": opening, "across": size[1]}), Step("cut-facing-first")]
    steps += [Step("entry", {"toe": toe})] if toe else []
    steps += [Step("branch-shiplap"), Step("tabs-at-mitre", {"length": closed.cross_tab_length, "spacing": closed.cross_tab_spacing}), Step("close-tabs")]
    title = {"trunk": trunk, "branch": size, "entry": entry, "thickness": thickness}
    return CutSheet(kind, "section", title, tuple(sizes), tuple(steps), (trunk_panel, cheek), stock.stock(*size, stub + toe, board), closed.tabbed(2 * [opening, size[1]]))


def end_cap(size: tuple[Fraction, Fraction], thickness: Fraction, closed: seams.Seams = seams.USUAL) -> CutSheet | Mistake:
    """A cap whose core drops inside the duct and whose rim, half the thickness, lands on the four panel ends."""
    board = stock.board(thickness)
    if isinstance(board, Mistake):
        return board
    outside = (size[0] + 2 * thickness, size[1] + 2 * thickness)
    refused = stock.no_sheet_for([outside], "size")
    if refused:
        return refused
    sizes = (Size("cap-width", outside[0]), Size("cap-height", outside[1]), Size("core-width", size[0]), Size("core-height", size[1]), Size("rim", thickness))
    steps = (Step("cap-cut"), Step("cap-step", {"half": thickness / 2, "rim": thickness}), Step("cap-flap", {"flap": board.flap}), Step("four-sides", {"spacing": closed.staple_spacing}))
    core = tuple((x + thickness, y + thickness) for x, y in _rectangle("", *size).outline)
    panels = (Panel("cap", _rectangle("", *outside).outline, inner=core),)
    return CutSheet("end_cap", "board", {"size": size, "thickness": thickness}, sizes, steps, panels, stock.flat([outside]), closed.flapped(2 * sum(outside)))


def straight(
    size: tuple[Fraction, Fraction], length: Fraction, thickness: Fraction, closed: seams.Seams = seams.USUAL
) -> CutSheet | Mistake:
    """A section shortened to `length` between its ends, its cut end made new."""
    board = stock.board(thickness)
    if isinstance(board, Mistake):
        return board
    if length <= 0:
        return Mistake("layout.bad-length", "length", {"came": printed(length)})
    refused = stock.too_long(length, "length")
    if refused:
        return refused
    cut = length + thickness  # the male end keeps one thickness of board for its step
    sizes = (Size("finished-length", length), Size("cut-line", cut), Size("off-cut", stock.SECTION - cut))
    steps = (Step("lay-from", {"end": closed.made_from}), Step("cut-square", {"cut": cut}), Step("cut-facing-first"), Step("new-end", {"rim": thickness, "end": closed.other_end}), Step("four-sides", {"spacing": closed.staple_spacing}))
    panels = tuple(_rectangle(name, cut, size[0] if name in ("top", "bottom") else size[1]) for name in ("top", "bottom", "left", "right"))
    return CutSheet("straight", "section", {"size": size, "length": length, "thickness": thickness}, sizes, steps, panels, stock.stock(*size, cut, board), closed.flapped(2 * sum(size) + 8 * thickness))
