"""A cut sheet as a picture: every panel flat and to one scale, with its lengths from the end it is laid out from.

The view box is as wide as a phone, so that letters stay legible there and on a half-sheet print.
"""

from __future__ import annotations

from fractions import Fraction
from xml.sax.saxutils import escape

from logbook.geometry.cut_sheet import CutSheet, Panel
from logbook.measure import printed
from logbook.wording import say

WIDTH = 360  # of the view box
MARGIN = 10
RIGHT = 44  # room for the width of the far end
LETTER = 13
HEAD, FOOT = 20, 34  # above a panel for its name, below it for its lengths
LARGEST_SCALE = 7.5  # units an inch, so that a small cap does not fill the page
EDGE_LOOK = {"fold": "", "shiplap": ' stroke-dasharray="8 3"', "butt": ' stroke-dasharray="2 3"'}
MANY_CORNERS = 8  # an outline with more is a curve: its corners are no marks
NEAREST = 32  # lengths are lettered to 1/32 in., a knife's width


def lettered(length: Fraction) -> str:
    """A length to the nearest 1/32 in., as the trade writes it."""
    return printed(Fraction(round(length * NEAREST), NEAREST))


def svg(sheet: CutSheet, language: str) -> str:
    """The drawing as one SVG text with a title and a description for people who hear the page."""
    longest = max(x for panel in sheet.panels for x, _ in panel.outline)
    scale = min((WIDTH - MARGIN - RIGHT) / float(longest), LARGEST_SCALE)
    parts, top, left, row = [], 0.0, 0.0, 0.0
    for panel in sheet.panels:  # side by side while they fit, as one lays them out on a sheet
        wide, tall = (float(max(corner[way] for corner in panel.outline)) * scale for way in (0, 1))
        if left and left + MARGIN + wide + RIGHT > WIDTH:
            top, left, row = top + row, 0.0, 0.0
        parts.append(f'<g transform="translate({left:.1f} 0)">{_panel(panel, top + HEAD, scale, language)}</g>')
        left, row = left + MARGIN + wide + RIGHT - 8, max(row, HEAD + tall + FOOT)
    top += row
    title = say("layout.drawing-title", language, kind=say(f"facts.kind.{sheet.kind}", language))
    about = say("layout.drawing-about", language, panels=len(sheet.panels))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {top:.0f}" width="{WIDTH}" height="{top:.0f}" role="img" '
        f'aria-labelledby="cut-title cut-about" font-family="Atkinson Hyperlegible Next, sans-serif" font-size="{LETTER}" fill="#1b2733">'
        f'<title id="cut-title">{escape(title)}</title><desc id="cut-about">{escape(about)}</desc>'
        f"{''.join(parts)}</svg>"
    )


def _panel(panel: Panel, top: float, scale: float, language: str) -> str:
    def place(x, y):
        return MARGIN + float(x) * scale, top + float(y) * scale

    def points(outline):
        return " ".join(f"{x:.1f},{y:.1f}" for x, y in (place(*corner) for corner in outline))

    long, tall = (max(corner[way] for corner in panel.outline) for way in (0, 1))
    end = sorted(y for x, y in panel.outline if x == long)
    right, foot = place(long, tall)
    name = say(f"layout.panels.{panel.name}", language)
    edge = "" if panel.edges[0] == "fold" else f", {say(f'layout.edges.{panel.edges[0]}', language)}"
    text = [
        f'<text x="{MARGIN}" y="{top - 6:.1f}" font-weight="bold">{escape(name + edge)}</text>',
        f'<polygon points="{points(panel.outline)}" fill="#fff" stroke="#1b2733" stroke-width="2"{EDGE_LOOK[panel.edges[0]]}/>',
        f'<text x="{right:.1f}" y="{foot + 15:.1f}" text-anchor="end">{lettered(long)}</text>',
    ]
    if len(panel.outline) <= MANY_CORNERS:
        text.append(f'<text x="{MARGIN + 5}" y="{(top + foot) / 2 + 5:.1f}">{lettered(tall)}</text>')
    if panel.inner:
        low, high = min(y for _, y in panel.inner), max(y for _, y in panel.inner)
        near, far = min(x for x, _ in panel.inner), max(x for x, _ in panel.inner)
        middle = place((near + far) / 2, (low + high) / 2)
        text.append(f'<polygon points="{points(panel.inner)}" fill="#f4f1ea" stroke="#1b2733" stroke-width="2"/>')
        text.append(f'<text x="{middle[0]:.1f}" y="{middle[1] + 5:.1f}" text-anchor="middle">{lettered(far - near)} x {lettered(high - low)}</text>')
    if len(end) > 1 and end[-1] - end[0] != tall and len(panel.outline) <= MANY_CORNERS:
        text.append(f'<text x="{right + 5:.1f}" y="{place(0, (end[0] + end[-1]) / 2)[1] + 5:.1f}">{lettered(end[-1] - end[0])}</text>')
    for x in _marks(panel, long, scale):
        at = place(x, 0)[0]
        text.append(f'<line x1="{at:.1f}" y1="{top:.1f}" x2="{at:.1f}" y2="{foot + 3:.1f}" stroke="#1b2733" stroke-width="0.8" stroke-dasharray="2 3"/>')
        text.append(f'<text x="{at:.1f}" y="{foot + 15:.1f}" text-anchor="middle">{lettered(x)}</text>')
    return "".join(text)


def _marks(panel: Panel, long: Fraction, scale: float) -> list[Fraction]:
    """Places along a panel that get a line and a length: its corners, far enough apart to be lettered."""
    if len(panel.outline) > MANY_CORNERS:
        return []
    kept: list[Fraction] = []
    for x in sorted({x for x, _ in (*panel.outline, *panel.inner) if 0 < x < long}):
        before = float(x - (kept[-1] if kept else 0)) * scale
        if before >= (40 if kept else 14) and float(long - x) * scale >= 52:
            kept.append(x)
    return kept
