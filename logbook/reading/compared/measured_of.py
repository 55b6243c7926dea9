"""What can be measured more than once on one piece, which of several measures counts for it, and what stands beside such a measure."""

from __future__ import annotations

from fractions import Fraction

from logbook.reading.clauses.grammar import Row
from logbook.reading.composed.size_pairs import LENGTHS
from logbook.record import record

_STAPLES, _TAPE = frozenset("STAPLED STAPLES STAPLE EVERY APART".split()), frozenset("TAPE TAPED CLOSURE MARK181 WIDE".split())
_WARMTH = ("NUM", "TEMP_F", "DEG")


@record
class Measured:
    worst: object  # of several
    things: frozenset[str]  # what may be named beside it
    least: Fraction  # inches, or degrees
    most: Fraction
    sorts: tuple[str, ...] = LENGTHS
    by_the_hour: bool = False  # it is what it is everywhere, and another only in another hour


MEASURED = {
    "staple_spacing": Measured(max, _STAPLES, Fraction(1, 2), Fraction(12)),
    "screw_spacing": Measured(max, frozenset(("SCREWS", "EVERY", "APART")), Fraction(3), Fraction(48)),
    "tape_width": Measured(min, _TAPE, Fraction(1), Fraction(4)),
    "staple_leg": Measured(min, frozenset(("STAPLES", "STAPLE", "LEG", "LONG")), Fraction(1, 8), Fraction(1)),
    "cross_tab_spacing": Measured(max, frozenset(("TABS", "EVERY", "APART")), Fraction(3), Fraction(48)),
    "cross_tab_length": Measured(min, frozenset(("TABS", "LONG")), Fraction(3), Fraction(24)),
    "hanger_spacing": Measured(max, frozenset(("K_HANGER", "EVERY", "APART")), Fraction(24), Fraction(240)),
    "side_moves": Measured(min, frozenset(("BACK", "MOVE_IN", "MOVE_OUT", "MOVE_UP", "MOVE_DOWN")), Fraction(6), Fraction(96)),  # how far back
    "gap": Measured(max, frozenset(("GAP",)), Fraction(1, 32), Fraction(1), ("LEN", "FRAC")),
    "surface_temperature": Measured(min, frozenset(("TAPED", "TAPE", "SURFACE")), Fraction(10), Fraction(100), _WARMTH),
    "air_temperature": Measured(max, frozenset(), Fraction(100), Fraction(900), _WARMTH, by_the_hour=True),
    "static_pressure": Measured(max, frozenset(("STATIC",)), Fraction(1, 8), Fraction(20), ("LEN", "FRAC", "NUM", "INWG"), by_the_hour=True),
}

MOVED = ("IN", "OUT", "UP", "DOWN", "BACK", "OVER", "MOVE_IN", "MOVE_OUT", "MOVE_UP", "MOVE_DOWN", "OFFSETS", "SLOPE", "THROAT")  # before a measure: how far a side moves
_BARS = frozenset("STAPLED STAPLES STAPLE TAPE TAPED CLOSURE MARK181 TABS LEG SCREWS WASHERS K_HANGER GAP DAMAGE SIZE BOARD STATIC MOVE_IN MOVE_OUT MOVE_UP MOVE_DOWN OFFSETS SLOPE VANES RUBBED RUB REDID FIX TIMES".split())
_COUNTS = frozenset("SIDE_WORD SIDE SIDES_ALL JOINT STAPLES STAPLE TABS SCREWS WASHERS STRAPS TAPE CLOSURE PANEL END COUNTED K_HANGER BY OF OFF FROM MINUTES LONG HIGH THICK BACK DOWN UP TIMES DAYS".split())

_THINGS = ("STAPLES", "STAPLE", "TABS", "SCREWS", "WASHERS", "STRAPS")


def bars(row: Row, at: int, of: Measured, marks: set[str]) -> bool:
    """Whether something else is told of there, or another piece; "down one side of straight 41" names the piece."""
    concept = row.items[at].concept
    if concept.startswith("K_") and concept not in of.things:
        return not (at + 1 < len(row.items) and row.words(at + 1, at + 2) in marks and len(marks) == 1)
    return concept in _BARS and concept not in of.things


def counts_things(row: Row, at: int) -> bool:
    """ "Three staples in the corner"."""
    return row.items[at].concept == "NUM" and at + 1 < len(row.items) and row.items[at + 1].concept in _THINGS


def counts_something(ahead: str, of: Measured) -> bool:
    """Whether a number with this behind it counts, or measures something else."""
    return ahead in _COUNTS and ahead not in of.things or ahead.startswith("K_")
