"""Marks on a drawing as SVG text: board, edges, dimensions, and the dashed "?" of what nobody said.

Every function answers a string of SVG elements; coordinates are drawing units, y downwards. Colours and faces
stand as attributes, so that a strict page policy and a typesetter both draw the same thing.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from html import escape
from math import hypot

from logbook.labels import legible

Point = tuple[float, float]

FACE = "Atkinson Hyperlegible Next"
INK, SOFT, LINE, BOARD, PAPER = "#1b2733", "#5b6875", "#c9d1d8", "#f4f1ea", "#ffffff"
UNSAID, OFF, AIR = "#8a5a00", "#a3341c", "#1f5f8b"
SMALL, TEXT = 12.5, 14


def n(value: float) -> str:
    """A coordinate, one decimal: the same drawing is the same bytes."""
    text = f"{value:.1f}"
    return "0" if text in ("0.0", "-0.0") else text.removesuffix(".0")


def _path(points: Iterable[Point], closed: bool) -> str:
    joined = " L".join(f"{n(x)} {n(y)}" for x, y in points)
    return f"M{joined}{'z' if closed else ''}"


def board(points: Sequence[Point]) -> str:
    """The filled body of a piece, without its edges."""
    return f'<path d="{_path(points, True)}" fill="{BOARD}"/>'


def edge(points: Sequence[Point], said: bool = True, wide: float = 2) -> str:
    """An edge of the piece; dashed where its place was not said."""
    return (
        f'<path d="{_path(points, False)}" fill="none" stroke="{INK}" stroke-width="{n(wide)}" stroke-linecap="round"/>'
        if said
        else f'<path d="{_path(points, False)}" fill="none" stroke="{UNSAID}" stroke-width="{n(wide)}" stroke-dasharray="5 4"/>'
    )


def fine(points: Sequence[Point], colour: str = SOFT, wide: float = 1) -> str:
    return f'<path d="{_path(points, False)}" fill="none" stroke="{colour}" stroke-width="{n(wide)}"/>'


def words(x: float, y: float, text: str, anchor: str = "middle", size: float = TEXT, colour: str = INK, bold: bool = False) -> str:
    if not text:
        return ""
    weight = ' font-weight="700"' if bold else ""
    return (
        f'<text x="{n(x)}" y="{n(y)}" text-anchor="{anchor}" font-size="{n(size)}"{weight} fill="{colour}">'
        f"{escape(legible(text), quote=False)}</text>"
    )


def label(x: float, y: float, text: str | None, anchor: str = "middle", size: float = TEXT) -> str:
    """A dimension's text centred on `y`; None was not said: a "?" in a dashed box."""
    if text is not None:
        return words(x, y + size * 0.35, text, anchor, size)
    left = {"middle": x - 9, "start": x, "end": x - 18}[anchor]
    box = f'<rect x="{n(left)}" y="{n(y - 10)}" width="18" height="20" rx="3" fill="{PAPER}" stroke="{UNSAID}" stroke-width="1.2" stroke-dasharray="3 2.5"/>'
    return box + words(left + 9, y + 5, "?", size=15, colour=UNSAID, bold=True)


def _tick(x: float, y: float) -> str:
    return fine([(x - 3.5, y + 3.5), (x + 3.5, y - 3.5)], SOFT, 1.4)


def across(x1: float, x2: float, y: float, text: str | None, above: bool = True, edge_y: float | None = None) -> str:
    """A dimension along the duct; `edge_y` is where its witness lines start."""
    witness = "" if edge_y is None else "".join(fine([(x, edge_y), (x, y)], LINE) for x in (x1, x2))
    middle = (x1 + x2) / 2
    return witness + fine([(x1, y), (x2, y)]) + _tick(x1, y) + _tick(x2, y) + label(middle, y + (-11 if above else 12), text)


def upright(x: float, y1: float, y2: float, text: str | None, left: bool = True) -> str:
    """A dimension across the duct, its text outside."""
    at = x - 7 if left else x + 7
    return fine([(x, y1), (x, y2)]) + _tick(x, y1) + _tick(x, y2) + label(at, (y1 + y2) / 2, text, "end" if left else "start")


def arrow(x1: float, y1: float, x2: float, y2: float, colour: str = AIR) -> str:
    """An arrow from the first point to the second."""
    long = hypot(x2 - x1, y2 - y1) or 1
    ux, uy = (x2 - x1) / long, (y2 - y1) / long
    back = (x2 - 8 * ux, y2 - 8 * uy)
    head = [(x2, y2), (back[0] - 4 * uy, back[1] + 4 * ux), (back[0] + 4 * uy, back[1] - 4 * ux)]
    return fine([(x1, y1), back], colour, 1.8) + f'<path d="{_path(head, True)}" fill="{colour}"/>'


def air(x: float, y: float, text: str, along: float = 34, against: bool = False) -> str:
    """Which way the air goes; `against` where sizes are said from the unit outward, against the air."""
    return (arrow(x + along, y, x, y) if against else arrow(x, y, x + along, y)) + words(x + along + 5, y + 4, text, "start", SMALL, AIR)


def circle(x: float, y: float, radius: float, said: bool = True) -> str:
    dash = "" if said else ' stroke-dasharray="5 4"'
    colour = INK if said else UNSAID
    return f'<circle cx="{n(x)}" cy="{n(y)}" r="{n(radius)}" fill="{PAPER}" stroke="{colour}" stroke-width="2"{dash}/>'


def framed(parts: Iterable[str], width: float, height: float, title: str, told: str, tag: str) -> str:
    """The whole drawing: one image with a name and a description for those who cannot see it."""
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {n(width)} {n(height)}" width="{n(width)}" height="{n(height)}" role="img" '
        f'aria-labelledby="{tag}-t {tag}-d" font-family="{FACE}, sans-serif">'
        f'<title id="{tag}-t">{escape(legible(title), quote=False)}</title><desc id="{tag}-d">{escape(legible(told), quote=False)}</desc>'
        f'{"".join(parts)}</svg>'
    )


def shifted(parts: Iterable[str], x: float, y: float) -> str:
    return f'<g transform="translate({n(x)} {n(y)})">{"".join(parts)}</g>'


def offset_line(points: Sequence[Point], aside: float) -> list[Point]:
    """A line beside a bent centre line, mitred at its bends; `aside` is to the right of the way it goes."""
    found: list[Point] = []
    for at, (x, y) in enumerate(points):
        before = _unit(points[at - 1], points[at]) if at else _unit(points[0], points[1])
        after = _unit(points[at], points[at + 1]) if at + 1 < len(points) else before
        nx, ny = -before[1] - after[1], before[0] + after[0]
        square = nx * nx + ny * ny or 1
        found.append((x + 2 * aside * nx / square, y + 2 * aside * ny / square))
    return found


def _unit(a: Point, b: Point) -> Point:
    long = hypot(b[0] - a[0], b[1] - a[1]) or 1
    return ((b[0] - a[0]) / long, (b[1] - a[1]) / long)
