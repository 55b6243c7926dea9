"""A row of the fitting schedule as the facts that a drawing needs: what was planned, drawn like what was said.

A transition's set-back is no column of the schedule: it follows from the change of size, the side that stays flat and
the slope that the job allows. Where the schedule leaves open which side moves, nothing is guessed: the picture marks
the side with "?" and its words give the set-back for one side and for both.
"""

from __future__ import annotations

from fractions import Fraction

from logbook import facts, measure
from logbook.facts import Move
from logbook.geometry.drawing import Drawing, draw
from logbook.geometry.taper import AXES
from logbook.schedule import Row
from logbook.wording import say

OF_A_ROW = (
    ("kind", "kind"), ("mark", "mark"), ("run", "run"), ("inlet_size", "inlet"), ("outlet_size", "outlet"), ("branch_size", "branch"),
    ("collar_diameter", "diameter"), ("length", "length"),
)  # fmt: skip


def row_facts(row: Row, slope: tuple[Fraction, Fraction]) -> list[dict]:
    """Fact documents of what the row asks for; what the schedule leaves open is no fact. `slope`: rise and run that the job allows."""
    named = [(name, getattr(row, column)) for name, column in OF_A_ROW]
    named.append(("level_sides", None if row.flat_side is None else (row.flat_side,)))
    named.append(("side_moves", tuple(_moves(row, slope)) or None))
    return [_document(name, value) for name, value in named if value is not None]


def _changes(row: Row) -> list[tuple[tuple[str, str], Fraction]]:
    """The axes of a transition that change, each with its two sides and by how much; negative where it widens."""
    if row.kind != "transition" or row.inlet is None or row.outlet is None:
        return []
    changed = [(sides, row.inlet[at] - row.outlet[at]) for at, sides in enumerate(AXES.values())]
    return [(sides, by) for sides, by in changed if by]


def _moves(row: Row, slope: tuple[Fraction, Fraction]) -> list[Move]:
    """The sides of which the schedule tells that they move: each across from the one that stays flat."""
    found = []
    for sides, by in _changes(row):
        if row.flat_side in sides:
            (side,) = (one for one in sides if one != row.flat_side)
            found.append(Move(side, abs(by), abs(by) * slope[1] / slope[0], "in" if by > 0 else "out"))
    return found


def open_set_backs(row: Row, slope: tuple[Fraction, Fraction]) -> list[tuple[Fraction, Fraction]]:
    """Of every axis whose moving side the schedule leaves open: the set-back where one side moves, and where both do."""
    backs = [abs(by) * slope[1] / slope[0] for sides, by in _changes(row) if row.flat_side not in sides]
    return [(back, back / 2) for back in backs]


def _document(name: str, value: object) -> dict:
    exact = facts.exact_to_json(name, value)
    said = {"words": None, "start": None, "end": None, "hedged": False, "via": "job"}
    return {"name": name, "value": facts.to_json(name, value), "unit": facts.BY_NAME[name].unit} | said | ({} if exact is None else {"exact": exact})


def draw_row(row: Row, language: str, slope: tuple[Fraction, Fraction], tag: str = "") -> Drawing:
    """The row drawn; under it the slope that its set-backs were reckoned at, where it has any."""
    steep = {"rise": measure.printed(slope[0]), "run": measure.printed(slope[1])}
    left_open = [
        say("drawing.planned-open-back", language, one=measure.printed(one), both=measure.printed(both), **steep) for one, both in open_set_backs(row, slope)
    ]
    below = [say("drawing.planned-slope", language, **steep)] if _moves(row, slope) else []
    return draw(row_facts(row, slope), language, tag, planned=True, below=tuple(left_open + below))
