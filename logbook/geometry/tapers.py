"""Drawings of pieces that change size or shift along their length: transition and offset."""

from __future__ import annotations

from fractions import Fraction

from logbook import measure
from logbook.geometry import pen, taper
from logbook.geometry.spoken import Spoken

WIDE, LEFT, RIGHT = 360, 66, 300  # the drawing, and where the piece starts and may end
TALL = 92  # drawing units for the larger end
NOMINAL = Fraction(14)


def transition(spoken: Spoken) -> tuple[list[str], float]:
    """Two views below each other: from above and from the side. Answers parts and height."""
    parts, y = [], 0.0
    for view in taper.views(spoken):
        drawn, height = _view(spoken, view)
        parts.append(pen.shifted(drawn, 0, y))
        y += height
    return parts, y


def _view(spoken: Spoken, view: taper.View) -> tuple[list[str], float]:
    upper, lower = view.sides
    inlet = view.inlet if view.inlet is not None else (view.outlet or NOMINAL) + (upper.inward + lower.inward)
    outlet = view.outlet if view.outlet is not None else max(inlet - upper.inward - lower.inward, Fraction(2))
    # positions across the duct, in inches from the upper inlet corner
    across = [Fraction(0), inlet, upper.inward, upper.inward + outlet]
    top, low = min(across), max(across)
    backs = [side.back for side in view.sides if side.back]
    taper_length = spoken.value("taper_length")
    slope = max(backs) if backs else taper_length or NOMINAL * Fraction(3, 2)
    length = max(spoken.value("length") or 0, slope * Fraction(4, 3))
    tall = float(TALL / (low - top)) if low > top else 5.0
    long = min(float((RIGHT - LEFT) / length), tall * 1.6)
    tall = min(tall, long * 3.5)
    y0 = (34 if upper.how == "even" else 58) - float(top) * tall
    start = LEFT + float(length - slope) * long / 2
    end_x = LEFT + float(length) * long

    def corners(side, inlet_y, outlet_y):
        over = float(side.back if side.back else slope) * long
        return [(LEFT, inlet_y), (start, inlet_y), (start + over, outlet_y), (end_x, outlet_y)]

    up = corners(upper, y0, y0 + float(upper.inward) * tall)
    down = corners(lower, y0 + float(inlet) * tall, y0 + float(upper.inward + outlet) * tall)
    floor = max(down[0][1], down[-1][1])
    parts = [pen.words(0, 16, spoken.say(f"view.{view.axis}"), "start", pen.SMALL, pen.SOFT)]
    parts += [pen.board(up + down[::-1])]
    parts += [pen.edge(up[:2]), pen.edge(up[1:3], upper.how != "unsaid"), pen.edge(up[2:], upper.how != "unsaid")]
    parts += [pen.edge(down[:2]), pen.edge(down[1:3], lower.how != "unsaid"), pen.edge(down[2:], lower.how != "unsaid")]
    parts += [pen.edge([up[0], down[0]], view.inlet is not None), pen.edge([up[-1], down[-1]], view.outlet is not None)]
    parts += [pen.air(LEFT + 8, (up[0][1] + down[0][1]) / 2, spoken.say("air"), against=spoken.against)]
    parts += [pen.upright(LEFT - 10, up[0][1], down[0][1], spoken.side("inlet_size", view.inlet_at))]
    parts += [pen.upright(end_x + 10, up[-1][1], down[-1][1], spoken.side("outlet_size", view.outlet_at), left=False)]
    parts += [_move(spoken, upper, up, min(up[0][1], up[-1][1]) - 13, True)]
    parts += [_move(spoken, lower, down, floor + 13, False)]
    height = floor + (22 if lower.how == "even" else 46)
    return parts, height


def _move(spoken: Spoken, side: taper.Side, corners, y: float, above: bool) -> str:
    """What was said of one side, over the stretch where it slopes."""
    x1, x2 = corners[1][0], corners[2][0]
    middle = (x1 + x2) / 2
    text_y = y - 9 if above else y + 16
    if side.how == "even":
        return ""
    if side.how == "level":
        flat = spoken.say("flat", side=_name(spoken, side))
        return pen.words(middle, y + 4 if above else y + 6, flat, size=pen.SMALL, colour=pen.SOFT)
    if side.how == "unsaid" and side.move is None:
        return pen.words(middle, y + 2 if above else y + 8, spoken.say("side-unsaid", side=_name(spoken, side)), colour=pen.UNSAID, bold=True)
    fact = spoken.fact("side_moves")
    by = None if side.move.by is None else spoken.short(fact, side.move.by)
    back = None if side.back is None else spoken.short(fact, side.back)
    way = spoken.say(f"way.{side.move.way}") if side.move.way else ""
    line = spoken.say("move", side=_name(spoken, side), way=way, by=by or "?", back=back or "?")
    slope = "" if not side.back or side.move.by is None else "  " + spoken.say("in-12", rise=measure.decimal(side.move.by * 12 / side.back))
    colour, bold = (pen.INK, False) if by and back else (pen.UNSAID, True)
    text = " ".join(line.split()) + slope
    anchor_x = min(max(middle, 4.2 * len(text)), WIDE - 3.3 * len(text))
    return pen.across(x1, x2, y, "", edge_y=None) + pen.words(anchor_x, text_y, text, colour=colour, bold=bold)


def _name(spoken: Spoken, side: taper.Side) -> str:
    return spoken.say(f"side.{side.name}")


def offset(spoken: Spoken) -> tuple[list[str], float]:
    """The slant in the plane of its shift, which nobody names: width along the first number of the size."""
    size, shift, length = spoken.value("inlet_size"), spoken.value("offset_by"), spoken.value("length")
    wide = size[0] if size else NOMINAL
    by, run = shift or NOMINAL / 2, length or 2 * NOMINAL
    total = wide + by
    tall = float(110 / total)
    long = min(float((RIGHT - LEFT) / (run * Fraction(5, 3))), tall * 1.6)
    tall = min(tall, long * 3.5)
    stub, over = float(run) * long / 3, float(run) * long
    y0, drop, deep = 40.0, float(by) * tall, float(wide) * tall
    xs = [LEFT, LEFT + stub, LEFT + stub + over, LEFT + 2 * stub + over]
    up = list(zip(xs, (y0, y0, y0 + drop, y0 + drop)))
    down = [(x, y + deep) for x, y in up]
    said = shift is not None and length is not None
    parts = [pen.words(0, 16, spoken.say("view.shift"), "start", pen.SMALL, pen.SOFT), pen.board(up + down[::-1])]
    for line in (up, down):
        parts += [pen.edge(line[:2]), pen.edge(line[1:3], said), pen.edge(line[2:], said)]
    parts += [pen.edge([up[0], down[0]], size is not None), pen.edge([up[-1], down[-1]], size is not None)]
    parts += [pen.air(LEFT + 8, y0 + deep / 2, spoken.say("air"), against=spoken.against)]
    if size is not None:
        whole = spoken.say("size", one=spoken.side("inlet_size", 0), other=spoken.side("inlet_size", 1))
        parts += [pen.words(xs[-1], (y0 + drop + deep) + 30, whole, "end", pen.SMALL)]
    parts += [pen.upright(LEFT - 10, up[0][1], down[0][1], spoken.side("inlet_size", 0))]
    parts += [pen.fine([up[0], (xs[-1] + 10, y0)], pen.LINE), pen.upright(xs[-1] + 10, y0, y0 + drop, spoken.length("offset_by"), left=False)]
    floor = y0 + drop + deep
    parts += [pen.across(xs[1], xs[2], floor + 14, spoken.length("length"), above=False)]
    return parts, floor + 42
