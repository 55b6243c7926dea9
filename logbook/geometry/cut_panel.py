"""One panel of a cut sheet, drawn to scale: its outline, how its edges meet the next panel, its lengths.

Lengths along the duct stand under the panel for the corners of its lower edge, above it for those of the upper edge
where they are others; a second row takes what would touch its neighbour. Nothing is left out for want of room.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import hypot
from xml.sax.saxutils import escape

from logbook.geometry.cut_sheet import Panel
from logbook.measure import printed
from logbook.wording import say

LETTER, WIDE_LETTER = 13, 7.3  # height of the type, and a width that no text of ours exceeds a letter, in units
INK, PAPER = "#1b2733", "#f4f1ea"
PAD = 8  # left of a panel
NAME, LINE, FOOT = 18, 15, 8  # the name's line, a line of lengths, the gap below
TICK = 5
EDGE_LOOK = {"fold": "", "shiplap": ' stroke-dasharray="9 3"', "butt": ' stroke-dasharray="2 3"'}
EDGE_WORD_ROOM = 58  # a panel this tall has room for a word at each edge; in a lower one it follows the name
MANY_CORNERS = 8  # an outline with more is a curve: its corners are no marks
NEAREST = 32  # lengths are lettered to 1/32 in., a knife's width
RADIUS_LETTERED = Fraction(7, 10)  # how far out on a radius its length stands: of a heel, beyond the throat's arc
UPRIGHT = ("left", "right")  # panels that stand: their low edge is drawn below


def lettered(length: Fraction) -> str:
    """A length to the nearest 1/32 in., as the trade writes it."""
    return printed(Fraction(round(length * NEAREST), NEAREST))


def stands(name: str) -> bool:
    return name in UPRIGHT


def letters_wide(text: str) -> float:
    return len(text) * WIDE_LETTER


@dataclass(frozen=True)
class Text:
    x: float
    y: float
    text: str
    anchor: str = "start"
    bold: bool = False

    def svg(self, left: float, top: float) -> str:
        bold = ' font-weight="bold"' if self.bold else ""
        return (
            f'<text x="{left + self.x:.1f}" y="{top + self.y:.1f}" text-anchor="{self.anchor}"{bold} '
            f'paint-order="stroke" stroke="#fff" stroke-width="{0 if self.bold else 3}">{escape(self.text)}</text>'
        )


@dataclass(frozen=True)
class Line:
    points: tuple[tuple[float, float], ...]
    look: str
    closed: bool = False

    def svg(self, left: float, top: float) -> str:
        at = " ".join(f"{left + x:.1f},{top + y:.1f}" for x, y in self.points)
        return f'<{"polygon" if self.closed else "polyline"} points="{at}" {self.look}/>'


@dataclass(frozen=True)
class Drawn:
    """A panel with its texts in units of the picture, from its own upper left corner."""

    lines: tuple[Line, ...]
    texts: tuple[Text, ...]
    width: float
    height: float

    def at(self, left: float, top: float) -> list[str]:
        return [one.svg(left, top) for one in (*self.lines, *self.texts)]


def draw(panel: Panel, name: str, scale: float, language: str) -> Drawn:
    tall = max(y for _, y in panel.outline)
    words = [say(f"layout.edges.{edge}", language) for edge in panel.edges]
    at_edges = panel.edges != ("fold", "fold") and float(tall) * scale >= EDGE_WORD_ROOM and len(panel.outline) <= MANY_CORNERS
    if panel.edges != ("fold", "fold") and not at_edges:
        name += ": " + " / ".join(dict.fromkeys(words))
    upper, lower = _marks(panel, tall)
    upper = [x for x in upper if x not in lower]
    above, below = _rows(upper, scale), _rows(lower, scale)
    head = NAME + LINE * _count(above)

    def place(x, y):
        return PAD + float(x) * scale, head + float(tall - y if stands(panel.name) else y) * scale

    foot = head + float(tall) * scale
    lines = [Line(tuple(place(*one) for one in panel.outline), f'fill="#fff" stroke="{INK}" stroke-width="{2 if panel.edges == ("fold", "fold") else 0}"', closed=True)]
    if panel.edges != ("fold", "fold"):
        lines += _edges(panel, place)
    texts = [Text(0, 13, name, bold=True)]
    if panel.inner:
        lines.append(Line(tuple(place(*one) for one in panel.inner), f'fill="{PAPER}" stroke="{INK}" stroke-width="2"', closed=True))
        far, high = (max(one[way] for one in panel.inner) for way in (0, 1))
        near, low = (min(one[way] for one in panel.inner) for way in (0, 1))
        x, y = place((near + far) / 2, (low + high) / 2)
        texts.append(Text(x, y + 5, f"{lettered(far - near)} x {lettered(high - low)}", "middle"))
    for stroke in panel.strokes:
        lines.append(Line((place(*stroke.start), place(*stroke.end)), f'fill="none" stroke="{INK}" stroke-width="1.5"' + (' stroke-dasharray="5 4"' if stroke.look == "cut" else "")))
        if stroke.look == "radius":
            x, y = place(*(one + (other - one) * RADIUS_LETTERED for one, other in zip(stroke.start, stroke.end, strict=True)))
            texts.append(Text(x, y + 5, lettered(Fraction(hypot(*(float(b - a) for a, b in zip(stroke.start, stroke.end, strict=True))))), "middle"))
    texts += _across(panel, tall, scale, place)
    if at_edges:
        texts += _edge_words(panel, words, place)
    for rows, edge, way in ((above, head, -1), (below, foot, 1)):
        for row, x, text, anchor in rows:
            at = PAD + float(x) * scale
            lines.append(Line(((at, edge), (at, edge + way * TICK)), f'stroke="{INK}" stroke-width="1"'))
            shift = {"start": -2, "middle": 0, "end": 2}[anchor]
            texts.append(Text(at + shift, edge - 6 - row * LINE if way < 0 else edge + 16 + row * LINE, text, anchor))
    return Drawn(tuple(lines), tuple(texts), max(map(_reach, texts)) + 2, foot + FOOT + LINE * _count(below))


def _reach(text: Text) -> float:
    return text.x + letters_wide(text.text) * {"start": 1, "middle": 0.5, "end": 0}[text.anchor]


def _marks(panel: Panel, tall: Fraction) -> tuple[list[Fraction], list[Fraction]]:
    """Places along the panel that get a length, at the upper and the lower edge as drawn; of a curve only its end."""
    long = max(x for x, _ in panel.outline)
    if len(panel.outline) > MANY_CORNERS:
        return [], [long]
    corners = [*panel.outline, *panel.inner, *(end for stroke in panel.strokes for end in (stroke.start, stroke.end))]
    high = [(x, (y > tall / 2) == stands(panel.name)) for x, y in corners if x > 0]
    upper, lower = (sorted({x for x, is_upper in high if is_upper is side}) for side in (True, False))
    if panel.inner:  # an opening is told by both its ends, below
        return [], sorted({*upper, *lower})
    return upper, lower


def _rows(places: Sequence[Fraction], scale: float) -> list[tuple[int, Fraction, str, str]]:
    """(row, place, text, anchor) so that no two lengths of a row touch."""
    laid, ends = [], []
    for n, x in enumerate(places):
        text, at = lettered(x), float(x) * scale
        wide = letters_wide(text)
        anchor = "end" if n == len(places) - 1 and at > wide else "middle" if at > wide / 2 else "start"
        start = at - wide * {"end": 1, "middle": 0.5, "start": 0}[anchor]
        row = next((number for number, end in enumerate(ends) if end + 6 <= start), len(ends))
        ends[row : row + 1] = [start + wide]
        laid.append((row, x, text, anchor))
    return laid


def _count(rows) -> int:
    return max((row for row, *_ in rows), default=-1) + 1


def _across(panel: Panel, tall: Fraction, scale: float, place) -> list[Text]:
    """How wide the panel is at its two ends; where an end is a point, its whole width in the middle."""
    long = max(x for x, _ in panel.outline)
    ends = [sorted(y for x, y in panel.outline if x == at) for at in (Fraction(0), long)]
    (left, right) = (None if len(ys) < 2 or ys[0] == ys[-1] else (ys[0], ys[-1]) for ys in ends)
    edge = place(long, 0)[0] + 5
    told = []
    if len(panel.outline) > MANY_CORNERS:
        return [Text(edge, place(0, right[0])[1] + 14, lettered(right[1] - right[0]))] if right else []
    if left is None and right is None:
        (x, y) = place(long / 2, tall / 2)
        return [Text(x, y + 5, lettered(tall), "middle")]
    if left is not None:
        text = lettered(left[1] - left[0])
        first = min((x for x, _ in panel.inner), default=long)
        outside = float(first) * scale < letters_wide(text) + 10
        told.append(Text(edge if outside else PAD + 5 + _past_cuts(panel, scale, letters_wide(text)), place(0, sum(left) / 2)[1] + 5, text))
        if outside:
            return told
    if right is not None and (left is None or right[1] - right[0] != left[1] - left[0]):
        told.append(Text(edge, place(0, sum(right) / 2)[1] + 5, lettered(right[1] - right[0])))
    return told


def _past_cuts(panel: Panel, scale: float, wide: float) -> float:
    """How far in a length at the left end begins, so that no cut straight across runs through it."""
    cuts = [float(stroke.start[0]) * scale for stroke in panel.strokes if stroke.start[0] == stroke.end[0]]
    return max((cut for cut in cuts if cut < wide + 8), default=0)


def _long_edges(panel: Panel) -> tuple[list, list]:
    """The corners of the low and of the high edge, each from where the panel begins."""
    long = max(x for x, _ in panel.outline)
    half = len(panel.outline) // 2 if len(panel.outline) > MANY_CORNERS else next(n for n, (x, _) in enumerate(panel.outline) if x == long) + 1
    return list(panel.outline[:half]), list(panel.outline[half:])[::-1]


def _edges(panel: Panel, place) -> list[Line]:
    low, high = _long_edges(panel)
    look = f'fill="none" stroke="{INK}" stroke-width="2"'
    ends = [Line((place(*low[n]), place(*high[n])), look) for n in (0, -1)]
    return ends + [Line(tuple(place(*one) for one in edge), look + EDGE_LOOK[kind]) for edge, kind in zip((low, high), panel.edges, strict=True)]


def _edge_words(panel: Panel, words: Sequence[str], place) -> list[Text]:
    """The word of an edge inside the panel, at the middle of it."""
    told = []
    for edge, kind, word in zip(_long_edges(panel), panel.edges, words, strict=True):
        if kind == "fold":
            continue
        (x1, y1), (x2, y2) = place(*edge[-2]), place(*edge[-1])
        middle = place(0, max(y for _, y in panel.outline) / 2)[1]
        x, y = (x1 + x2) / 2, (y1 + y2) / 2
        told.append(Text(x, y + 17 if y < middle else y - 8, word, "middle"))
    return told
