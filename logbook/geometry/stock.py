"""Duct board as it comes: sheets, sections, and the blank that a section is folded from.

Blank = 2 x (inside width + inside height) + add-on by thickness. The add-ons are the table of a board maker's
four-page fabrication sheet (read in a secondary copy): three fold allowances, a side joint and the flap. Makers
and tools differ, so they are data here. A 48 in. section keeps 46 to 47 in. between its ends after the male and
female ends are cut (same sheet); 46 is used, the shorter.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from logbook.measure import printed
from logbook.mistake import Mistake


@dataclass(frozen=True)
class Board:
    """Inches of board that each of three folds, the side joint and the flap take out of a blank."""

    thickness: Fraction
    fold: Fraction
    side_joint: Fraction
    flap: Fraction

    @property
    def add_on(self) -> Fraction:
        return 3 * self.fold + self.side_joint + self.flap


BOARDS = (
    Board(Fraction(1), Fraction(7, 4), Fraction(11, 8), Fraction(11, 8)),
    Board(Fraction(3, 2), Fraction(11, 4), Fraction(17, 8), Fraction(17, 8)),
    Board(Fraction(2), Fraction(15, 4), Fraction(23, 8), Fraction(5, 2)),
)
SHEET_WIDTH = Fraction(48)
SHEET_LENGTHS = (Fraction(96), Fraction(120))
SECTION = Fraction(48)
SECTION_USABLE = Fraction(46)
STUB = Fraction(4)  # straight left at an end for the shiplap and flap; common practice, no published source
LARGEST_SPAN = Fraction(96)  # inches inside; guide specification of a trade association's insulated-duct manual


def board(thickness: Fraction) -> Board | Mistake:
    found = next((one for one in BOARDS if one.thickness == thickness), None)
    if found is None:
        return Mistake("layout.no-such-board", "board", {"came": printed(thickness)})
    return found


def no_such_duct(size: tuple[Fraction, Fraction], thickness: Fraction, where: str) -> Mistake | None:
    """Why no duct of this inside size is made of board, or None where one can be: its sides neither fold nor span."""
    if min(size) <= 2 * thickness:
        return Mistake("layout.too-small", where, {"size": printed(min(size)), "thickness": printed(thickness)})
    if max(size) > LARGEST_SPAN:
        return Mistake("layout.too-wide", where, {"size": printed(max(size)), "most": printed(LARGEST_SPAN)})
    return None


def too_long(length: Fraction, where: str) -> Mistake | None:
    """Why a piece of `length` can't come out of one section, or None where it can."""
    if length <= SECTION_USABLE:
        return None
    return Mistake("layout.longer-than-a-section", where, {"needed": printed(length), "usable": printed(SECTION_USABLE)})


def too_long_on_one_side(length: Fraction, shared: Fraction, where: str) -> Mistake | None:
    """The same of a transition: where both sides of an axis could share the move, what that would take is told too."""
    refused = too_long(length, where)
    if refused is None or shared == length:
        return refused
    key = "layout.one-side-too-long" if shared <= SECTION_USABLE else "layout.both-sides-too-long"
    return Mistake(key, where, {**refused.values, "shared": printed(shared)})


def blank(width: Fraction, height: Fraction, of: Board) -> Fraction:
    """Length of the blank, in inches, that folds to an inside size of width by height."""
    return 2 * (width + height) + of.add_on


@dataclass(frozen=True)
class Stock:
    """What the piece takes out of sheets: areas in square inches, `pieces` of board that the wrap is made of.

    `blank` is the length of the wrap's blank, None where nothing is wrapped (an end cap).
    """

    blank: Fraction | None
    sheet: tuple[Fraction, Fraction]
    pieces: int
    area: Fraction
    waste: Fraction


def stock(width: Fraction, height: Fraction, length: Fraction, of: Board) -> Stock:
    """Sheets for a wrap of `length` along the duct: the smallest sheet that does it with the fewest pieces.

    One piece where the blank fits a sheet's length; else the fewest equal parts, each part with a side joint and
    a flap of its own, one out of each sheet.
    """
    whole = blank(width, height, of)
    across = ceil(length / SHEET_WIDTH)
    best = None
    for sheet_length in SHEET_LENGTHS:
        pieces = 1
        while _part(whole, pieces, of) > sheet_length:
            pieces += 1
        area = pieces * _part(whole, pieces, of) * length
        waste = across * pieces * sheet_length * SHEET_WIDTH - area
        if best is None or (pieces, waste) < (best.pieces, best.waste):
            best = Stock(whole, (SHEET_WIDTH, sheet_length), pieces, area, waste)
    return best


def _part(whole: Fraction, pieces: int, of: Board) -> Fraction:
    """Length of one of `pieces` parts: every further part costs one more side joint and flap, less a fold."""
    if pieces == 1:
        return whole
    return (whole + (pieces - 1) * (of.side_joint + of.flap - of.fold)) / pieces


def no_sheet_for(parts: Sequence[tuple[Fraction, Fraction]], where: str) -> Mistake | None:
    """Why one of the flat parts can't come out of one sheet, or None where each can."""
    for part in parts:
        for needed, most in ((min(part), SHEET_WIDTH), (max(part), SHEET_LENGTHS[-1])):
            if needed > most:
                return Mistake("layout.larger-than-a-sheet", where, {"needed": printed(needed), "sheet": printed(most)})
    return None


def flat(parts: Sequence[tuple[Fraction, Fraction]]) -> Stock:
    """Sheets for flat parts (length, width) laid on shelves across sheets of the length that wastes least.

    The longest first, each on the first shelf with room: what a person does with a tape, and never fewer sheets than it takes.
    """
    area = sum((long * wide for long, wide in parts), Fraction(0))
    counted = [(_sheets(parts, length), length) for length in SHEET_LENGTHS if max(map(max, parts)) <= length]
    count, length = min(counted, key=lambda one: one[0] * one[1])
    return Stock(None, (SHEET_WIDTH, length), count, area, count * SHEET_WIDTH * length - area)


def _sheets(parts: Sequence[tuple[Fraction, Fraction]], length: Fraction) -> int:
    """How many sheets of 48 in. by `length` the parts take, along the sheet; `used` is what each shelf's strip has taken."""
    shelves: list[list[Fraction]] = []  # [width of the strip, length used]
    for long, wide in sorted(((max(part), min(part)) for part in parts), key=lambda part: (-part[1], -part[0])):
        shelf = next((one for one in shelves if wide <= one[0] and one[1] + long <= length), None)
        if shelf is None:
            shelves.append([wide, long])
        else:
            shelf[1] += long
    sheets: list[Fraction] = []
    for wide, _ in shelves:
        place = next((n for n, used in enumerate(sheets) if used + wide <= SHEET_WIDTH), None)
        if place is None:
            sheets.append(wide)
        else:
            sheets[place] += wide
    return len(sheets)
