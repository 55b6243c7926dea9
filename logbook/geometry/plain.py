"""Drawings of pieces told by one size: straight, cap, collar, door, register, connection, plenum, hanger, mend."""

from __future__ import annotations

from logbook.geometry import pen
from logbook.geometry.spoken import Spoken

LEFT, RIGHT, TOP, DEEP = 66.0, 294.0, 44.0, 84.0


def _head(spoken: Spoken, view: str) -> str:
    return pen.words(0, 16, spoken.say(f"view.{view}"), "start", pen.SMALL, pen.SOFT)


def _size(spoken: Spoken, name: str = "inlet_size") -> str | None:
    if spoken.value(name) is None:
        return None
    return spoken.say("size", one=spoken.side(name, 0), other=spoken.side(name, 1))


def _body(spoken: Spoken, right: float = RIGHT) -> list[str]:
    """A stretch of duct from the left, its open end on the left, with its size."""
    low, said = TOP + DEEP, spoken.value("inlet_size") is not None
    return [
        pen.board([(LEFT, TOP), (right, TOP), (right, low), (LEFT, low)]),
        pen.edge([(LEFT, TOP), (right, TOP)], said) + pen.edge([(LEFT, low), (right, low)], said),
        pen.edge([(LEFT, TOP), (LEFT, low)], said),
        pen.air(LEFT + 8, TOP + DEEP / 2, spoken.say("air"), against=spoken.against),
        pen.label((LEFT + right) / 2 + 32, TOP + DEEP / 2, _size(spoken)),
    ]


def straight(spoken: Spoken) -> tuple[list[str], float]:
    low = TOP + DEEP
    parts = [_head(spoken, "along"), *_body(spoken), pen.edge([(RIGHT, TOP), (RIGHT, low)], spoken.value("inlet_size") is not None)]
    length = spoken.length("length")
    if length or spoken.value("cut_to_length"):
        parts.append(pen.across(LEFT, RIGHT, low + 14, length, above=False))
    return parts, low + 42


def end_cap(spoken: Spoken) -> tuple[list[str], float]:
    low = TOP + DEEP
    return [_head(spoken, "along"), *_body(spoken, 240), pen.edge([(240, TOP - 5), (240, low + 5)], wide=7)], low + 22


def box(spoken: Spoken) -> tuple[list[str], float]:
    """A plenum: a closed box that the duct feeds."""
    low = TOP + DEEP
    wall = [(LEFT, TOP - 14), (270, TOP - 14), (270, low + 14), (LEFT, low + 14)]
    said = spoken.value("inlet_size") is not None
    return [
        _head(spoken, "along"), pen.board(wall), pen.edge([*wall, wall[0]], said),
        pen.air(LEFT - 44, TOP + DEEP / 2, "", 38), pen.label(168, TOP + DEEP / 2, _size(spoken)),
    ], low + 34  # fmt: skip


def collar(spoken: Spoken) -> tuple[list[str], float]:
    """A round take-off, looking at the face it stands on."""
    low, across = TOP + 112, spoken.length("collar_diameter")
    face = [(LEFT, TOP), (RIGHT, TOP), (RIGHT, low), (LEFT, low)]
    text = None if across is None else spoken.say("diameter", diameter=across)
    return [
        _head(spoken, "face"), pen.board(face), pen.edge([*face, face[0]]), pen.circle(180, TOP + 56, 44, across is not None),
        pen.label(180, TOP + 56, text),
        *([pen.words(LEFT, low + 20, _size(spoken), "start", pen.SMALL)] if spoken.value("inlet_size") else []),
    ], low + 34  # fmt: skip


def opening(spoken: Spoken) -> tuple[list[str], float]:
    """An access door, register or flange, looking at the face it stands on."""
    low, said = TOP + 112, spoken.value("inlet_size") is not None
    face = [(LEFT, TOP), (RIGHT, TOP), (RIGHT, low), (LEFT, low)]
    door = [(120, TOP + 26), (240, TOP + 26), (240, TOP + 86), (120, TOP + 86)]
    louvres = [pen.fine([(128, TOP + y), (232, TOP + y)]) for y in (38, 74)] if spoken.value("kind") == "register" else []
    return [
        _head(spoken, "face"), pen.board(face), pen.edge([*face, face[0]]),
        f'<rect x="120" y="{pen.n(TOP + 26)}" width="120" height="60" fill="{pen.PAPER}"/>', pen.edge([*door, door[0]], said),
        *louvres, pen.label(180, TOP + 56, _size(spoken)),
    ], low + 22  # fmt: skip


def to_metal(spoken: Spoken) -> tuple[list[str], float]:
    """Duct board on sheet metal: equipment connection, damper sleeve."""
    low = TOP + DEEP
    hatch = "".join(pen.fine([(x, low - 2), (x + 14, TOP + 2)], pen.SOFT) for x in range(214, 284, 14))
    metal = [(208, TOP + 4), (300, TOP + 4), (300, low - 4), (208, low - 4)]
    screws = spoken.length("screw_spacing")
    parts = [_head(spoken, "along"), *_body(spoken, 222), hatch, pen.edge([*metal, metal[0]], wide=1.4)]
    parts += [pen.across(222, 300, low + 14, None if screws is None else spoken.say("every", length=screws), above=False)]
    return parts, low + 42


def hanger(spoken: Spoken) -> tuple[list[str], float]:
    low = TOP + DEEP + 16
    parts = [_head(spoken, "along"), pen.shifted(_body(spoken), 0, 16), pen.edge([(RIGHT, TOP + 16), (RIGHT, low)], spoken.value("inlet_size") is not None)]
    for x in (110, 250):
        parts.append(pen.edge([(x, 26), (x, low + 4)], wide=3))
    return [*parts, pen.across(110, 250, low + 16, spoken.length("hanger_spacing"), above=False)], low + 44


def mend(spoken: Spoken) -> tuple[list[str], float]:
    """A repair, looking at the face: the damage and what covers it."""
    low, width = TOP + 124, spoken.length("damage_width")
    face = [(LEFT, TOP), (RIGHT, TOP), (RIGHT, low), (LEFT, low)]
    tear = [(150, TOP + 44), (164, TOP + 52), (174, TOP + 45), (188, TOP + 55), (210, TOP + 47)]
    method = spoken.value("repair_method")
    said = method is not None or spoken.value("taped") is not None
    patch = [(132, TOP + 24), (228, TOP + 24), (228, TOP + 76), (132, TOP + 76)]
    return [
        _head(spoken, "face"), pen.board(face), pen.edge([*face, face[0]]), pen.edge([*patch, patch[0]], said, 1.4),
        pen.edge(tear, True, 2.4), pen.across(150, 210, TOP + 90, width, above=False),
    ], low + 26  # fmt: skip


def unknown(spoken: Spoken) -> tuple[list[str], float]:
    """Nobody said what it is: a body with its sizes, dashed."""
    low = TOP + DEEP
    body = [(LEFT, TOP), (RIGHT, TOP), (RIGHT, low), (LEFT, low)]
    size = _size(spoken)
    return [
        pen.edge([*body, body[0]], False), pen.label(180, TOP + DEEP / 2 - 22, None),
        pen.words(180, TOP + DEEP / 2 + 7, spoken.say("kind-unsaid"), size=pen.SMALL, colour=pen.UNSAID),
        *([pen.label(180, TOP + DEEP / 2 + 27, size)] if size else []),
    ], low + 22  # fmt: skip
