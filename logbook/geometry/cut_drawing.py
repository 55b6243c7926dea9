"""A cut sheet as a picture: every panel flat and to one scale, with its lengths from the end it is laid out from.

The view box is as wide as a phone and no taller than a half-sheet print takes, so that letters stay legible on both:
the scale gives way, never the letters. Panels that are alike are drawn once.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from xml.sax.saxutils import escape

from logbook.geometry import cut_panel
from logbook.geometry.cut_sheet import CutSheet, Panel
from logbook.wording import say

WIDTH = 360  # of the view box
TALLEST = 560
BETWEEN = 14  # panels side by side
LARGEST_SCALE, SMALLEST_SCALE = 9.0, 0.5  # units an inch: a small cap does not fill the page
STEP = 0.96  # the scale is tried ever smaller until the panels fit


def svg(sheet: CutSheet, language: str) -> str:
    """The drawing as one SVG text with a title and a description for people who hear the page."""
    named = _named(sheet.panels, language)
    scale = LARGEST_SCALE
    parts, height, fits = _laid(named, scale, language)
    while not fits and scale > SMALLEST_SCALE:
        scale *= STEP
        parts, height, fits = _laid(named, scale, language)
    title = say("layout.drawing-title", language, kind=say(f"facts.kind.{sheet.kind}", language))
    about = say("layout.drawing-about", language, panels=len(sheet.panels))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {height:.0f}" width="{WIDTH}" height="{height:.0f}" role="img" '
        f'aria-labelledby="cut-title cut-about" font-family="Atkinson Hyperlegible Next, sans-serif" font-size="{cut_panel.LETTER}" fill="{cut_panel.INK}">'
        f'<title id="cut-title">{escape(title)}</title><desc id="cut-about">{escape(about)}</desc>'
        f"{''.join(parts)}</svg>"
    )


def _named(panels: Sequence[Panel], language: str) -> list[tuple[str, Panel]]:
    """Every panel that is drawn, with its name: two alike are one drawing with both names."""
    alike: dict[Panel, list[str]] = {}
    for panel in panels:
        shape = next((one for one in alike if replace(one, name=panel.name) == panel and cut_panel.stands(one.name) == cut_panel.stands(panel.name)), panel)
        alike.setdefault(shape, []).append(say(f"layout.panels.{panel.name}", language))
    return [
        (names[0] if len(names) == 1 else say("layout.panels.both", language, one=names[0], other=names[1].lower()), panel)
        for panel, names in alike.items()
    ]


def _laid(named: Sequence[tuple[str, Panel]], scale: float, language: str) -> tuple[list[str], float, bool]:
    """The panels at a scale, side by side while they fit; how tall that is, and whether it fits the page."""
    parts: list[str] = []
    left = top = row = widest = 0.0
    for name, panel in named:
        drawn = cut_panel.draw(panel, name, scale, language)
        if left and left + drawn.width > WIDTH:
            left, top, row = 0.0, top + row, 0.0
        parts += drawn.at(left, top)
        widest, left, row = max(widest, left + drawn.width), left + drawn.width + BETWEEN, max(row, drawn.height)
    return parts, top + row, widest <= WIDTH and top + row <= TALLEST
