"""A plot of one kind of measure against its limit: a row a fitting, what nobody said drawn as a dashed "?".

    plot(rows, language, title, unit, tag) -> Drawing-like (svg, title, told, width, height)

The limit is a line with its number; what departs stands hollow and struck through, so that colour is not needed to tell it apart.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from logbook.geometry import pen
from logbook.wording import say

WIDE, LEFT, RIGHT, ROW = 360, 92, 318, 19


@dataclass(frozen=True)
class Mark:
    """One fitting: its name, the value (None: not said), its limit, and the verdict of the rule."""

    name: str
    value: float | None
    limit: float | None
    verdict: str


@dataclass(frozen=True)
class Plot:
    svg: str
    title: str
    told: str
    width: float
    height: float


def plot(rows: Sequence[Mark], language: str, title: str, unit: str, tag: str) -> Plot:
    """`rows` in the order they are printed, at most about 25 so that the plot stands on one page."""
    numbers = [n for row in rows for n in (row.value, row.limit) if n is not None]
    most = 1.2 * max(numbers, default=1) or 1
    floor = 30 + ROW * len(rows)

    def x(value: float) -> float:
        return LEFT + (RIGHT - LEFT) * value / most

    parts = [pen.fine([(LEFT, 22), (LEFT, floor)], pen.LINE)]
    limits = sorted({row.limit for row in rows if row.limit is not None})
    for limit in limits[:1] if len(limits) == 1 else ():
        parts.append(pen.fine([(x(limit), 20), (x(limit), floor)], pen.OFF, 1.6))
        parts.append(pen.words(x(limit), 14, say("drawing.limit", language, limit=_text(limit), unit=unit), size=pen.SMALL, colour=pen.OFF))
    for at, row in enumerate(rows):
        y = 34 + ROW * at
        parts += [pen.words(LEFT - 8, y + 4, row.name, "end", pen.SMALL), pen.fine([(LEFT, y), (RIGHT, y)], "#e4e8eb")]
        if len(limits) > 1 and row.limit is not None:
            parts.append(pen.fine([(x(row.limit), y - 8), (x(row.limit), y + 8)], pen.OFF, 2))
        parts.append(_dot(x, y, row))
    told = " ".join(_told(row, language, unit) for row in rows)
    svg = pen.framed(parts, WIDE, floor + 6, title, told, tag)
    return Plot(svg, title, told, WIDE, floor + 6)


def _dot(x, y: float, row: Mark) -> str:
    if row.value is None:
        return pen.label(LEFT + 14, y, None)
    at, text = x(row.value), _text(row.value)
    if row.verdict == "departs":
        cross = pen.fine([(at - 7, y + 7), (at + 7, y - 7)], pen.OFF, 2)
        shape = f'<circle cx="{pen.n(at)}" cy="{pen.n(y)}" r="5" fill="{pen.PAPER}" stroke="{pen.OFF}" stroke-width="2"/>{cross}'
        return shape + pen.words(WIDE - 4, y + 4.5, text, "end", pen.SMALL, pen.OFF, bold=True)
    fill = pen.INK if row.verdict == "meets" else pen.PAPER
    shape = f'<circle cx="{pen.n(at)}" cy="{pen.n(y)}" r="5" fill="{fill}" stroke="{pen.INK}" stroke-width="1.6"/>'
    return shape + pen.words(WIDE - 4, y + 4.5, text, "end", pen.SMALL)


def _text(value: float) -> str:
    return f"{value:.2f}".rstrip("0").rstrip(".")


def _told(row: Mark, language: str, unit: str) -> str:
    key = "plot-unsaid" if row.value is None else "plot-row" if row.limit is None else "plot-row-limit"
    value = "" if row.value is None else _text(row.value)
    limit = "" if row.limit is None else _text(row.limit)
    return say(f"drawing.{key}", language, name=row.name, value=value, limit=limit, unit=unit)
