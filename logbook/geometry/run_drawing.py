"""The drawing of a run as it was spoken: its pieces below each other as the air goes, the odd joint marked.

    draw(line, language, tag="") -> Drawing          one picture, 360 units wide, readable on a telephone
    strip(line, language) -> (parts, height)         the same without its frame, to stand in a larger picture

A `Line` is what `runs.line` lays out. The breadth of a piece follows the sum of its two sides, so that a change of
size shows whichever side it is on; lengths are not drawn. A joint is a full line where it was said closed and a dashed
one where nobody said so; one that does not mate is broken open with the two sizes, or ends, that meet there.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from hashlib import sha256
from textwrap import wrap

from logbook import labels
from logbook.geometry import pen
from logbook.geometry.drawing import Drawing
from logbook.geometry.spoken import Spoken
from logbook.said import Fact

WIDE, MIDDLE, BROAD, TEXT_AT = 360, 62.0, 96.0, 136.0
TALL, GAP = 46.0, 44.0  # of a piece, of a joint that is broken open
HEAD, LINE = 29, 34  # characters of a heading, of a line, that fit beside the picture
ODD = ("sizes", "ends")  # states of a joint that cannot be closed as said
Size = tuple[Fraction, Fraction]


@dataclass(frozen=True)
class Stop:
    """One piece of the run, or a row of the schedule that nobody logged (`logged` False).

    `inlet` and `outlet` are the sizes that meet the neighbours, as said, else None; `keeps_size` False where a piece
    that cannot change size was said to. `beside`: collars, registers and doors that stand on it. `also` are marks it
    was said closed to that do not stand next to it. `piece` is the id of a logged one.
    """

    mark: str | None
    kind: str | None
    facts: tuple[Fact, ...] = ()
    inlet: Size | None = None
    outlet: Size | None = None
    branch: Size | None = None
    round: Fraction | None = None  # diameter of a collar
    logged: bool = True
    planned: bool = False  # it stands on the schedule
    keeps_size: bool = True
    leaves_by: str | None = None
    beside: tuple[Stop, ...] = ()
    also: tuple[str, ...] = ()
    piece: str | None = None


@dataclass(frozen=True)
class Joint:
    """Where a stop meets the one after it.

    `state`: mates; sizes (they differ); ends (one leaves by another end); unsaid (a size was not said); absent (one of
    the two is not logged); loose (neither the schedule nor anybody said that the two meet). `closed`: said closed.
    """

    state: str
    closed: bool = False


@dataclass(frozen=True)
class Line:
    """A run in order. There is one joint fewer than stops. `planned`: the order is the schedule's, not that of making."""

    run: str
    stops: tuple[Stop, ...]
    joints: tuple[Joint, ...]
    planned: bool = False
    against: bool = False  # a return or exhaust, spoken from the unit outward

    def odd(self) -> tuple[tuple[Stop, Joint, Stop], ...]:
        """The joints that cannot be closed as said, each with the two pieces it lies between."""
        met = zip(self.stops, self.joints, self.stops[1:])
        return tuple((one, joint, other) for one, joint, other in met if joint.state in ODD)


def draw(line: Line, language: str, tag: str = "") -> Drawing:
    """`tag` keeps the ids of several drawings of one page apart; without it they follow from the content."""
    parts, height = strip(line, language)
    title, text = Spoken((), language).say("run.title", run=line.run), told(line, language)
    for at, note in enumerate(("run.note-joints", "note")):
        parts.append(pen.words(WIDE, height + 12 + 15 * at, Spoken((), language).say(note), "end", 11, pen.SOFT))
    height += 34
    tag = tag or "run-" + sha256(f"{title}\n{text}".encode()).hexdigest()[:10]
    return Drawing(pen.framed(parts, WIDE, height, title, text, tag), title, text, WIDE, height)


def strip(line: Line, language: str) -> tuple[list[str], float]:
    """The marks of the picture from its upper left corner, and how high it is."""
    most = max((sum(size) for stop in line.stops for size in (stop.inlet, stop.outlet) if size), default=Fraction(1))
    say = Spoken((), language).say
    parts, joints = [_air(say("air"), line.against)], []
    y = 30.0
    for at, stop in enumerate(line.stops):
        if at:
            drawn, y = _joint(line, at - 1, y, language)
            joints += drawn
        drawn, y = _stop(stop, y, most, language)
        parts += drawn
    return parts + joints, y


def told(line: Line, language: str) -> str:
    """The drawing in words: every piece in order, and every joint that is not plainly closed."""
    say = Spoken((), language).say
    lines = []
    for at, stop in enumerate(line.stops):
        if at:
            lines += [text for text in [joint_words(line, at - 1, language)] if text]
        lines.append(". ".join(part for part in words(stop, language) if part) + ".")
    return say("run.told", run=line.run, order=say("run.by-schedule" if line.planned else "run.by-time"), pieces=" ".join(lines))


# --- one piece


def _breadth(size: Size | None, most: Fraction) -> float:
    return BROAD * 0.62 if size is None else max(float(BROAD * sum(size) / most), 18.0)


def _stop(stop: Stop, y: float, most: Fraction, language: str) -> tuple[list[str], float]:
    head, *rest = words(stop, language)
    heads = wrap(head, HEAD)
    texts = [*heads, *(line for text in rest for line in wrap(text, LINE))]
    tall = max(TALL, 18.0 * len(texts) + 10)
    known = stop.inlet or stop.outlet
    up, down = _breadth(stop.inlet or stop.outlet, most) / 2, _breadth(stop.outlet or stop.inlet, most) / 2
    low = y + tall
    corners = [(MIDDLE - up, y), (MIDDLE + up, y), (MIDDLE + down, low), (MIDDLE - down, low)]
    said = stop.logged and known is not None and (stop.kind != "transition" or bool(stop.inlet and stop.outlet))
    parts = [pen.board(corners)] if stop.logged else []
    parts += [pen.edge([corners[0], corners[3]], said) + pen.edge([corners[1], corners[2]], said)]
    parts += _sign(stop, y, low, up, down)
    if not stop.logged or stop.kind is None:
        parts.append(pen.label(MIDDLE, (y + low) / 2, None))
    for at, text in enumerate(texts):
        first = at < len(heads)
        odd = not first and not stop.keeps_size
        colour = pen.OFF if odd else pen.UNSAID if not stop.logged and not first else pen.INK
        parts.append(pen.words(TEXT_AT, y + 17 + 18 * at, text, "start", pen.TEXT if first else pen.SMALL, colour, bold=first or odd))
    return parts, low


def _sign(stop: Stop, y: float, low: float, up: float, down: float) -> list[str]:
    """What tells the kind at a glance: a cap, a mitre, a branch, the two bends of an offset, metal."""
    left, right, middle = MIDDLE - down, MIDDLE + down, (y + low) / 2
    match stop.kind:
        case "end_cap":
            return [pen.edge([(left - 5, low - 2), (right + 5, low - 2)], stop.logged, 6)]
        case "elbow":
            return [pen.edge([(left, low), (right, y)], stop.logged, 1.4)]
        case "offset":
            return [pen.edge([(left, y + 12), (right, y + 12)], stop.logged, 1), pen.edge([(left, low - 12), (right, low - 12)], stop.logged, 1)]
        case "tee" | "branch" | "wye":
            end = min(right + 16, TEXT_AT - 10)
            slant = 8 if stop.kind == "wye" else 0
            stub = [(right, middle - 8), (end, middle - 8 + slant), (end, middle + 8 + slant), (right, middle + 8)]
            return [pen.board(stub), pen.edge(stub[:2], stop.logged) + pen.edge(stub[2:], stop.logged), pen.fine([stub[1], stub[2]], pen.AIR, 1.8)]
        case "equipment_connection" | "damper_sleeve":
            return [pen.fine([(x, low - 4), (x + 10, y + 4)]) for x in range(int(left) + 4, int(right) - 8, 12)]
        case "plenum":
            wall = [(left - 6, y + 5), (right + 6, y + 5), (right + 6, low - 5), (left - 6, low - 5)]
            return [pen.edge([*wall, wall[0]], stop.logged, 1.4)]
    return []


def words(stop: Stop, language: str) -> list[str]:
    """The lines beside a piece: what it is, its sizes, its branch, what stands on it."""
    spoken = Spoken(stop.facts, language)
    head = " ".join(part for part in (stop.mark, labels.kind(stop.kind, language)) if part)
    lines = [head or spoken.say("run.no-name")]
    if not stop.logged:
        lines.append(spoken.say("run.not-logged", size=_sizes(stop, spoken)).strip())
    elif stop.keeps_size:
        lines.append(_sizes(stop, spoken) or spoken.say("run.no-size"))
    else:
        lines.append(spoken.say("run.keeps-no-size", size=_sizes(stop, spoken)))
    if stop.branch is not None:
        lines.append(spoken.say("run.branch", size=_size(spoken, "branch_size", stop.branch)))
    for other in stop.beside:
        of = Spoken(other.facts, language)
        name = " ".join(part for part in (other.mark, labels.kind(other.kind, language)) if part)
        size = of.length("collar_diameter") or ("" if other.round is None else labels.number(str(other.round)))
        if size:
            size = of.say("diameter", diameter=size)
        elif other.inlet is not None:
            size = _size(of, "inlet_size", other.inlet)
        lines.append(spoken.say("run.beside" if other.logged else "run.beside-missing", name=name or "?", size=size).strip())
    if stop.also:
        lines.append(spoken.say("run.closed-to", marks=", ".join(stop.also)))
    return lines


def _sizes(stop: Stop, spoken: Spoken) -> str:
    one = "" if stop.inlet is None else _size(spoken, "inlet_size", stop.inlet)
    other = "" if stop.outlet is None else _size(spoken, "outlet_size", stop.outlet)
    if stop.outlet is None or stop.outlet == stop.inlet:
        return one + (" – ?" if one and stop.kind == "transition" and stop.outlet is None else "")
    return f"{one or '?'} – {other}"


def _size(spoken: Spoken, name: str, value: Size) -> str:
    """As it was said, in its own unit; a size that only the schedule tells, or that follows from the inlet, in inches."""
    fact = spoken.fact(name)
    sides = [spoken.short(fact, side) if fact is not None and fact.value == value else labels.number(str(side)) for side in value]
    return spoken.say("size", one=sides[0], other=sides[1])


# --- one joint


def _joint(line: Line, at: int, y: float, language: str) -> tuple[list[str], float]:
    joint = line.joints[at]
    if joint.state not in ODD:
        reach = (MIDDLE - BROAD / 2 - 6, MIDDLE + BROAD / 2 + 6)
        if joint.state == "loose":
            return [pen.fine([(MIDDLE, y + 3), (MIDDLE, y + 15)], pen.LINE, 2)], y + 18
        return [pen.edge([(reach[0], y), (reach[1], y)], joint.closed, 2.6 if joint.closed else 1.6)], y
    left, right = MIDDLE - BROAD / 2 - 6, MIDDLE + BROAD / 2 + 6
    middle = y + GAP / 2
    teeth = [(left + (right - left) * step / 8, middle + (5 if step % 2 else -5)) for step in range(9)]
    first, second = _odd_texts(line, at, language)
    rest = wrap(second, LINE)
    return [
        pen.fine(teeth, pen.OFF, 3),
        pen.words(TEXT_AT, middle - 3, first, "start", pen.TEXT, pen.OFF, bold=True),
        *(pen.words(TEXT_AT, middle + 14 + 17 * n, text, "start", pen.SMALL, pen.OFF) for n, text in enumerate(rest)),
    ], y + GAP + 17 * (len(rest) - 1)


def _odd_texts(line: Line, at: int, language: str) -> tuple[str, str]:
    one, joint, other = line.stops[at], line.joints[at], line.stops[at + 1]
    say = Spoken((), language).say
    if joint.state == "sizes":
        a, b = Spoken(one.facts, language), Spoken(other.facts, language)
        name = "outlet_size" if a.fact("outlet_size") is not None else "inlet_size"
        return say("run.odd-sizes"), say("run.meets", one=_size(a, name, one.outlet), other=_size(b, "inlet_size", other.inlet))
    ends = [say(f"run.end.{stop.leaves_by}") for stop in (one, other)]
    return say("run.odd-ends"), say("run.meets", one=ends[0], other=ends[1])


def joint_words(line: Line, at: int, language: str) -> str:
    """One sentence of a joint; empty where one of its pieces is not logged."""
    joint, say = line.joints[at], Spoken((), language).say
    marks = {"one": line.stops[at].mark or "?", "other": line.stops[at + 1].mark or "?"}
    if joint.state in ODD:
        first, second = _odd_texts(line, at, language)
        return say("run.told-odd", what=first, meets=second, **marks)
    if joint.state in ("absent", "loose"):
        return say("run.told-loose", **marks) if joint.state == "loose" else ""
    key = "run.told-unsaid" if joint.state == "unsaid" else "run.told-closed" if joint.closed else "run.told-not-closed"
    return say(key, **marks)


def _air(text: str, against: bool) -> str:
    way = (24.0, 6.0) if against else (6.0, 24.0)
    return pen.arrow(MIDDLE, way[0], MIDDLE, way[1]) + pen.words(MIDDLE + 9, 19, text, "start", pen.SMALL, pen.AIR)


def pages(line: Line, most: int) -> Sequence[Line]:
    """The run in pieces of at most `most` stops, for paper; each begins with the stop the last one ended on."""
    if len(line.stops) <= most:
        return (line,)
    step = most - 1
    starts = range(0, len(line.stops) - 1, step)
    return tuple(
        Line(line.run, line.stops[at : at + most], line.joints[at : at + step], line.planned, line.against) for at in starts
    )
