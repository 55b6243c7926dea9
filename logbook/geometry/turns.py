"""Drawings of pieces that turn or part the air: elbow, tee, branch, wye."""

from __future__ import annotations

from fractions import Fraction
from math import cos, radians, sin, tan

from logbook.geometry import pen
from logbook.geometry.spoken import Spoken

NOMINAL = Fraction(14)
WIDTH = 74.0  # drawing units across the duct


def elbow(spoken: Spoken) -> tuple[list[str], float]:
    """The turn in its own plane; its width is the first number of the size, as nobody says which way it lies."""
    size, angle = spoken.value("inlet_size"), spoken.value("turn_angle")
    throat, pieces = spoken.value("throat_radius"), spoken.value("elbow_pieces")
    turn = float(min(max(angle if angle else 90, 15), 120))
    wide = float(size[0]) if size else float(NOMINAL)
    segments = 18 if throat else (pieces or 2)
    inner = float(throat) / wide * WIDTH if throat else (14.0 if segments > 2 else 0.0)
    radius = min(inner, 90) + WIDTH / 2
    centre = _bend(radius if segments > 2 else 0, turn, segments)
    outer, near = pen.offset_line(centre, -WIDTH / 2), pen.offset_line(centre, WIDTH / 2)
    xs, ys = [x for x, _ in outer + near], [y for _, y in outer + near]
    dx, dy = 74 - min(xs), 50 - min(ys)
    outer, near, centre = ([(x + dx, y + dy) for x, y in line] for line in (outer, near, centre))
    parts = [pen.words(0, 16, spoken.say("view.turn"), "start", pen.SMALL, pen.SOFT), pen.board(outer + near[::-1])]
    if segments < 18:
        parts += [pen.fine([a, b]) for a, b in zip(outer[1:-1], near[1:-1])]
    parts += [pen.edge(line[:2]) + pen.edge(line[1:], angle is not None) for line in (outer, near)]
    parts += [pen.edge([outer[0], near[0]], size is not None), pen.edge([outer[-1], near[-1]], size is not None)]
    parts += [_air(spoken, centre[0], centre[1])]
    parts += [pen.upright(outer[0][0] - 10, outer[0][1], near[0][1], spoken.side("inlet_size", 0))]
    floor = max(y for _, y in outer + near)
    right = max(x for x, _ in outer + near)
    parts += _beside(spoken, min(right + 14, 240), outer[1][1] + 6, angle, pieces)
    if throat:
        parts += [pen.words(near[segments // 2][0] - 12, near[segments // 2][1] + 20, spoken.say("throat", radius=spoken.length("throat_radius")), "end")]
    else:
        parts += _vanes(spoken, outer, near, turn / max(segments - 1, 1))
    return parts, floor + 22


def _bend(radius: float, turn: float, segments: int) -> list[pen.Point]:
    """The centre line: a leg, the bends, a leg; it starts along x and turns downwards."""
    leg, cuts = 62.0, segments - 1
    step = radians(turn / cuts)
    chord = 2 * radius * tan(step / 2) if radius else 0.0
    points, x, y, heading = [(0.0, 0.0)], leg + WIDTH / 2 * (0 if radius else 1), 0.0, 0.0
    for cut in range(cuts):
        points.append((x, y))
        heading += step
        long = chord if cut < cuts - 1 else leg + (0 if radius else WIDTH / 2 * tan(min(step, 1.9) / 2))
        x, y = x + long * cos(heading), y + long * sin(heading)
    return [*points, (x, y)]


def _beside(spoken: Spoken, x: float, y: float, angle, pieces) -> list[str]:
    """The turn and the number of pieces, right of the elbow."""
    text = None if angle is None else f"{spoken.length('turn_angle')}°"
    found = [pen.label(x, y, text, "start", 18)]
    texts = [_two(spoken, "inlet_size")] + ([spoken.say("pieces", pieces=pieces)] if pieces else [])
    found += [pen.words(x, y + 26 + 19 * at, text, "start") for at, text in enumerate(filter(None, texts))]
    return found


def _vanes(spoken: Spoken, outer, near, each: float) -> list[str]:
    """Vanes along the first cut: drawn when said in, crossed out in words when said not, dashed when not said."""
    vanes = spoken.value("vanes")
    if vanes is None and each < 60:
        return []
    (ox, oy), (ix, iy) = outer[1], near[1]
    found = []
    for share in (0.22, 0.5, 0.78):
        x, y = ox + (ix - ox) * share, oy + (iy - oy) * share
        if vanes is not False:
            colour, dash = (pen.INK, "") if vanes else (pen.UNSAID, ' stroke-dasharray="4 3"')
            found.append(
                f'<path d="M{pen.n(x - 13)} {pen.n(y - 4)} Q{pen.n(x + 3)} {pen.n(y - 3)} {pen.n(x + 4)} {pen.n(y + 13)}" '
                f'fill="none" stroke="{colour}" stroke-width="2"{dash}/>'
            )
    key = "vanes-unsaid" if vanes is None else "vanes" if vanes else "no-vanes"
    colour = pen.UNSAID if vanes is None else pen.INK
    found.append(pen.words(ix - 8, iy + 20, spoken.say(key), "end", colour=colour, bold=vanes is None))
    return found


def _size(spoken: Spoken, name: str) -> str:
    return spoken.say("size", one=spoken.side(name, 0), other=spoken.side(name, 1))


def _air(spoken: Spoken, start, end) -> str:
    return pen.air(start[0] + 8, start[1], spoken.say("air"), against=spoken.against)


def branched(spoken: Spoken) -> tuple[list[str], float]:
    """Tee and branch: a trunk and what leaves it, at a right angle."""
    inlet, outlet, branch = (spoken.value(f"{end}_size") for end in ("inlet", "outlet", "branch"))
    wide, out = _ends(inlet, outlet)
    scale = 84 / max(wide, out)
    left, right, top = 66.0, 294.0, 44.0
    deep, after = wide * scale, out * scale
    across = min(max(float(branch[0]) * scale if branch else 50, 26), 110)
    middle, leg = 196.0, 40.0
    low = top + deep
    turned = middle + across / 2 + 8
    outline = [(left, top), (right, top), (right, top + after), (turned, top + after), (turned, low), (middle + across / 2, low)]
    outline += [(middle + across / 2, low + leg), (middle - across / 2, low + leg), (middle - across / 2, low), (left, low)]
    parts = [pen.words(0, 16, spoken.say("view.branch"), "start", pen.SMALL, pen.SOFT), pen.board(outline)]
    parts += [pen.edge([(left, top), (right, top)]), pen.edge([(left, low), (middle - across / 2, low)]), pen.edge(outline[2:6])]
    parts += [pen.edge(outline[5:7], branch is not None), pen.edge(outline[7:9], branch is not None), pen.edge(outline[6:8], branch is not None)]
    parts += [pen.edge([(left, top), (left, low)], inlet is not None), pen.edge([(right, top), (right, top + after)])]
    parts += [pen.air(left + 8, top + deep / 2, spoken.say("air"), against=spoken.against)]
    parts += [pen.label(middle, top + min(deep, after) / 2, _two(spoken, "inlet_size"))]
    parts += [pen.label(middle, low + leg + 16, _two(spoken, "branch_size"))]
    if outlet is not None:
        parts += [pen.label(right, top + after + 14, _two(spoken, "outlet_size"))]
    return parts, low + leg + 34


def wye(spoken: Spoken) -> tuple[list[str], float]:
    """A trunk that parts in two."""
    inlet, branch, angle = spoken.value("inlet_size"), spoken.value("branch_size"), spoken.value("turn_angle")
    lean = radians(float(min(max(angle if angle else 45, 20), 80)))
    half, leg = 26.0, 96.0
    parts = [pen.words(0, 16, spoken.say("view.branch"), "start", pen.SMALL, pen.SOFT)]
    start, fork = (66.0, 108.0), (150.0, 108.0)
    for sign in (-1, 1):
        end = (fork[0] + leg * cos(lean), fork[1] + sign * leg * sin(lean))
        outer, near = (pen.offset_line([start, fork, end], side * half) for side in (sign, -sign))
        crotch = (fork[0] + half / sin(lean), fork[1])
        parts += [pen.board([*outer, near[2], crotch, start])]
        parts += [pen.edge(outer, angle is not None), pen.edge([outer[2], near[2]], branch is not None)]
        parts += [pen.edge([crotch, near[2]], angle is not None)]
    parts += [pen.edge([(66, 82), (66, 134)], inlet is not None), pen.air(74, 108, spoken.say("air"), against=spoken.against)]
    parts += [pen.label(106, 66, _two(spoken, "inlet_size"))]
    parts += [pen.label(306, 108, None if angle is None else f"{spoken.length('turn_angle')}°", "start", 18)]
    parts += [pen.label(292, 30, _two(spoken, "branch_size"))]
    return parts, 108 + leg * sin(lean) + half + 16


def _ends(inlet, outlet) -> tuple[float, float]:
    start = inlet or outlet or (NOMINAL, NOMINAL)
    return float(start[0]), float((outlet or start)[0])


def _two(spoken: Spoken, name: str) -> str | None:
    return None if spoken.value(name) is None else _size(spoken, name)
