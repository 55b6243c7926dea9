"""Cut sheets of a tee or branch take-off, an end cap, and a straight cut to length.

The 45-degree entry is a quarter of the branch width long, at least 4 in. (from memory of a sheet-metal duct
standard's branch figure, confirm in the printed figure). The rest is plain arithmetic on inside sizes; the way
edges meet is common practice, no published source.
"""

from __future__ import annotations

from fractions import Fraction

from logbook.geometry import stock
from logbook.geometry.angles import slant
from logbook.geometry.cut_sheet import CutSheet, Panel, Size, Step, closing
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
    spacing: Fraction = Fraction(2),
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
    cheek = Panel("branch-cheek", ((ZERO, ZERO), (stub + toe, ZERO), (stub + toe, opening), (toe, size[0]), (ZERO, size[0])) if toe else ((ZERO, ZERO), (stub, ZERO), (stub, size[0]), (ZERO, size[0])))
    seam = 2 * (opening + size[1])
    staples, tape = closing(seam, spacing)
    sizes = [Size("opening-along", opening), Size("opening-across", size[1]), Size("from-end", at), Size("from-edge", low)]
    sizes += [Size("entry", toe), Size("entry-slant", slant(toe, toe))] if toe else []
    steps = [Step("opening", {"at": at, "low": low, "along": opening, "across": size[1]}), Step("cut-facing-first")]
    steps += [Step("entry", {"toe": toe})] if toe else []
    steps += [Step("branch-shiplap"), Step("tabs-at-mitre"), Step("close", {"spacing": spacing})]
    title = {"trunk": trunk, "branch": size, "entry": entry, "thickness": thickness}
    return CutSheet(kind, "section", title, tuple(sizes), tuple(steps), (trunk_panel, cheek), stock.stock(*size, stub + toe, board), seam, staples, tape)


def end_cap(size: tuple[Fraction, Fraction], thickness: Fraction, spacing: Fraction = Fraction(2)) -> CutSheet | Mistake:
    """A cap whose core drops inside the duct and whose rim, half the thickness, lands on the four panel ends."""
    board = stock.board(thickness)
    if isinstance(board, Mistake):
        return board
    if max(size) + 2 * thickness > stock.SHEET_LENGTHS[-1] or min(size) + 2 * thickness > stock.SHEET_WIDTH:
        return Mistake("layout.larger-than-a-sheet", "size", {"needed": printed(max(size) + 2 * thickness), "sheet": printed(stock.SHEET_LENGTHS[-1])})
    outside = tuple(one + 2 * thickness for one in size)
    seam = 2 * sum(outside)
    staples, tape = closing(seam, spacing)
    area = outside[0] * outside[1]
    sheet = (stock.SHEET_WIDTH, stock.SHEET_LENGTHS[0])
    taken = stock.Stock(None, sheet, 1, area, sheet[0] * sheet[1] - area)
    sizes = (Size("cap-width", outside[0]), Size("cap-height", outside[1]), Size("core-width", size[0]), Size("core-height", size[1]), Size("rim", thickness))
    steps = (Step("cap-cut"), Step("cap-step", {"half": thickness / 2, "rim": thickness}), Step("cap-flap", {"flap": board.flap}), Step("four-sides", {"spacing": spacing}))
    core = tuple((x + thickness, y + thickness) for x, y in _rectangle("", *size).outline)
    panels = (Panel("cap", _rectangle("", *outside).outline, inner=core),)
    return CutSheet("end_cap", "board", {"size": size, "thickness": thickness}, sizes, steps, panels, taken, seam, staples, tape)


def straight(
    size: tuple[Fraction, Fraction], length: Fraction, thickness: Fraction, spacing: Fraction = Fraction(2)
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
    seam = 2 * sum(size) + 8 * thickness
    staples, tape = closing(seam, spacing)
    sizes = (Size("finished-length", length), Size("cut-line", cut), Size("off-cut", stock.SECTION - cut))
    steps = (Step("lay-from", {"end": "female"}), Step("cut-square", {"cut": cut}), Step("cut-facing-first"), Step("new-end", {"rim": thickness}), Step("four-sides", {"spacing": spacing}))
    panels = tuple(_rectangle(name, cut, size[0] if name in ("top", "bottom") else size[1]) for name in ("top", "bottom", "left", "right"))
    return CutSheet("straight", "section", {"size": size, "length": length, "thickness": thickness}, sizes, steps, panels, stock.stock(*size, cut, board), seam, staples, tape)
