"""A cut sheet as a picture: every panel flat and to one scale, with its lengths, and a 4 in. check bar.

The SVG has its sizes in inches of board in the view box; printed on paper, the check bar is a real 4 in. long
where the print was not scaled (the PDF sets it in inches).
"""

from __future__ import annotations

from fractions import Fraction
from xml.sax.saxutils import escape

from logbook.geometry.cut_sheet import CutSheet, Panel
from logbook.measure import printed
from logbook.wording import say

WIDTH = 720  # px of the view box across
MARGIN = 24
GAP = 58  # between panels, room for a name and a length
LETTER = 15
EDGE_LOOK = {"fold": "", "shiplap": "8 3", "butt": "2 3"}
NEAREST = 32  # lengths are lettered to 1/32 in., a knife's width


def lettered(length: Fraction) -> str:
    """A length to the nearest 1/32 in., as the trade writes it."""
    return printed(Fraction(round(length * NEAREST), NEAREST))


def svg(sheet: CutSheet, language: str) -> str:
    """The drawing as one SVG text with a title and a description for people who hear the page."""
    scale = (WIDTH - 2 * MARGIN) / float(max(x for panel in sheet.panels for x, _ in panel.outline))
    scale = min(scale, 14.0)
    top, parts = MARGIN, []
    for panel in sheet.panels:
        parts.append(_panel(panel, top, scale, language))
        top += float(max(y for _, y in panel.outline)) * scale + GAP
    title = say("layout.drawing-title", language, kind=say(f"facts.kind.{sheet.kind}", language))
    about = say("layout.drawing-about", language, panels=len(sheet.panels))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {top:.0f}" role="img" '
        f'aria-labelledby="cut-title cut-about" font-family="sans-serif" font-size="{LETTER}" fill="#111">'
        f'<title id="cut-title">{escape(title)}</title><desc id="cut-about">{escape(about)}</desc>'
        f'{"".join(parts)}</svg>'
    )


def _panel(panel: Panel, top: float, scale: float, language: str) -> str:
    points = [(MARGIN + float(x) * scale, top + 18 + float(y) * scale) for x, y in panel.outline]
    path = " ".join(f"{x:.1f},{y:.1f}" for x, y in points)
    long = max(x for x, _ in panel.outline)
    tall = max(y for _, y in panel.outline)
    name = say(f"layout.panels.{panel.name}", language)
    edges = "" if set(panel.edges) == {"fold"} else ", " + " / ".join(
        say(f"layout.edges.{edge}", language) for edge in dict.fromkeys(panel.edges)
    )
    foot = top + 18 + float(tall) * scale
    marks = "".join(
        f'<text x="{MARGIN + float(x) * scale:.1f}" y="{foot + 16:.1f}" text-anchor="middle">{lettered(x)}</text>'
        f'<line x1="{MARGIN + float(x) * scale:.1f}" y1="{top + 18:.1f}" x2="{MARGIN + float(x) * scale:.1f}" y2="{foot + 3:.1f}" '
        f'stroke="#111" stroke-width="0.7" stroke-dasharray="2 3"/>'
        for x in _apart(sorted({x for x, _ in panel.outline if 0 < x < long}), long, scale)
    )
    return (
        f'<text x="{MARGIN}" y="{top + 10:.1f}" font-weight="bold">{escape(name + edges)}</text>'
        f'<polygon points="{path}" fill="#fff" stroke="#111" stroke-width="2" stroke-dasharray="{EDGE_LOOK[panel.edges[0]]}"/>'
        f"{marks}"
        f'<text x="{MARGIN + float(long) * scale:.1f}" y="{foot + 16:.1f}" text-anchor="end">{lettered(long)}</text>'
        f'<text x="{MARGIN + 6}" y="{top + 18 + float(tall) * scale / 2 + 5:.1f}">{lettered(tall)}</text>'
    )


def _apart(places: list[Fraction], long: Fraction, scale: float, room: float = 48) -> list[Fraction]:
    """Places along a panel far enough apart to be lettered; the end is lettered anyway."""
    kept: list[Fraction] = []
    for place in places:
        clear = float(place - kept[-1]) * scale >= room if kept else float(place) * scale >= 20
        if clear and float(long - place) * scale >= room:
            kept.append(place)
    return kept
