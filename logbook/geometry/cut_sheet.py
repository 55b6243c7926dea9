"""The record of a cut sheet: marks and steps before the knife, panels as they are cut, what it takes in stock.

Panels are flat outlines in inches: x runs along the duct from the end the piece is laid out from, y across the
panel. The text of a step is `layout.steps.<key>` in the wording; its values are lengths in inches.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from logbook.geometry.seams import Closing
from logbook.geometry.stock import Stock
from logbook.measure import in_json


@dataclass(frozen=True)
class Stroke:
    """A line on a panel: `cut` (a knife follows it) or `radius` (lettered with its own length)."""

    look: str
    start: tuple[Fraction, Fraction]
    end: tuple[Fraction, Fraction]


@dataclass(frozen=True)
class Panel:
    """One flat face as it is cut. `edges`: shiplap, butt or fold of each long edge (first low y, then high y)."""

    name: str  # top bottom left right, throat heel, cap …
    outline: tuple[tuple[Fraction, Fraction], ...]
    edges: tuple[str, str] = ("fold", "fold")
    inner: tuple[tuple[Fraction, Fraction], ...] = ()  # an opening cut into it, or the core that stands on it
    strokes: tuple[Stroke, ...] = ()


@dataclass(frozen=True)
class Step:
    key: str
    values: Mapping[str, object] = field(default_factory=dict)


@dataclass(frozen=True)
class Size:
    """A number of the sheet: `name` is a wording key under `layout.sizes`; unit in, ° or none."""

    name: str
    value: Fraction
    unit: str = "in"


@dataclass(frozen=True)
class CutSheet:
    kind: str
    method: str  # section or board
    title: Mapping[str, object]
    sizes: tuple[Size, ...]
    steps: tuple[Step, ...]
    panels: tuple[Panel, ...]
    stock: Stock
    closing: Closing


def to_json(sheet: CutSheet) -> dict:
    def plain(value):
        return in_json(value) if isinstance(value, Fraction) else value

    return {
        "kind": sheet.kind,
        "method": sheet.method,
        "of": {key: [plain(v) for v in value] if isinstance(value, tuple) else plain(value) for key, value in sheet.title.items()},
        "sizes": [{"name": s.name, "value": in_json(s.value), "unit": s.unit} for s in sheet.sizes],
        "steps": [{"key": s.key, "values": {k: plain(v) for k, v in s.values.items()}} for s in sheet.steps],
        "panels": [
            {"name": p.name, "edges": list(p.edges)}
            | {key: [[in_json(x), in_json(y)] for x, y in points] for key, points in (("outline", p.outline), ("inner", p.inner))}
            | {"strokes": [{"look": s.look, "points": [[in_json(x), in_json(y)] for x, y in (s.start, s.end)]} for s in p.strokes]}
            for p in sheet.panels
        ],
        "stock": {
            "blank": None if sheet.stock.blank is None else in_json(sheet.stock.blank),
            "sheet": [in_json(side) for side in sheet.stock.sheet],
            "pieces": sheet.stock.pieces,
            "area": in_json(sheet.stock.area),
            "waste": in_json(sheet.stock.waste),
        },
        "seam": in_json(sheet.closing.seam),
        "staples": sheet.closing.staples,
        "cross_tabs": sheet.closing.tabs,
        "tape": in_json(sheet.closing.tape),
    }
