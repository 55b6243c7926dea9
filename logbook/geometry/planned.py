"""A row of the fitting schedule as the facts that a drawing needs: what was planned, drawn like what was said."""

from __future__ import annotations

from logbook import facts
from logbook.geometry.drawing import Drawing, draw
from logbook.schedule import Row

OF_A_ROW = (
    ("kind", "kind"), ("mark", "mark"), ("run", "run"), ("inlet_size", "inlet"), ("outlet_size", "outlet"), ("branch_size", "branch"),
    ("collar_diameter", "diameter"), ("length", "length"),
)  # fmt: skip


def row_facts(row: Row) -> list[dict]:
    """Fact documents of what the row asks for; what the schedule leaves open is no fact."""
    named = [(name, getattr(row, column)) for name, column in OF_A_ROW]
    named.append(("level_sides", None if row.flat_side is None else (row.flat_side,)))
    return [_document(name, value) for name, value in named if value is not None]


def _document(name: str, value: object) -> dict:
    exact = facts.exact_to_json(name, value)
    said = {"words": None, "start": None, "end": None, "hedged": False, "via": "job"}
    return {"name": name, "value": facts.to_json(name, value), "unit": facts.BY_NAME[name].unit} | said | ({} if exact is None else {"exact": exact})


def draw_row(row: Row, language: str, tag: str = "") -> Drawing:
    return draw(row_facts(row), language, tag, planned=True)
