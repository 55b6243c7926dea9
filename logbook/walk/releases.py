"""Before the ceiling closes: what in an area is not hung, joined, looked at or settled. A sheet to sign, no approval."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass

from logbook.schedule import Row
from logbook.walk import areas, rounds
from logbook.walk.areas import Area

NOT_IN_THE_CHAIN = ("hanger", "repair", "register", "access_door")  # nobody says of these that they were joined


@dataclass(frozen=True)
class Line:
    """A piece and what is missing of it, in the order of `LACKS`."""

    piece: Mapping
    lacks: tuple[str, ...]


@dataclass(frozen=True)
class Sheet:
    """`lines`: pieces that lack something, most first; `ready`: the others; `noes` and `unasked` of the walk list."""

    area: Area
    lines: tuple[Line, ...]
    ready: tuple[Mapping, ...]
    missing: tuple[Row, ...]
    noes: tuple[rounds.Standing, ...]
    unasked: tuple[str, ...]


LACKS = ("open", "otherwise", "hung", "joined", "looked")


def sheet(area: Area, answers: Iterable[Mapping], looked: Collection[str] = (), otherwise: Collection[str] = ()) -> Sheet:
    """`looked`: pieces that a spot check or a walk saw; `otherwise`: pieces found otherwise than said."""
    lines = [Line(piece, lacks(piece, looked, otherwise)) for piece in area.pieces]
    held = rounds.standing(area.key, answers)
    return Sheet(
        area,
        tuple(sorted((one for one in lines if one.lacks), key=lambda one: [-(lack in one.lacks) for lack in LACKS])),
        tuple(one.piece for one in lines if not one.lacks),
        tuple(areas.missing(area)),
        tuple(one for one in held if one.now and one.now["answer"] == "no"),
        tuple(one.question for one in held if one.now is None and rounds.of_walk(one.question)),
    )


def lacks(piece: Mapping, looked: Collection[str] = (), otherwise: Collection[str] = ()) -> tuple[str, ...]:
    """Joined and hung count as said; looked at by anybody but the builder."""
    said = {one["name"]: one["value"] for one in piece["facts"]}
    held = any(one["rule"] == "joined" and one["verdict"] == "meets" for one in piece["findings"])
    found = {
        "open": any(one.get("stands") in ("open", "in hand") for one in piece["findings"]),
        "otherwise": piece["id"] in otherwise,
        "hung": said.get("stage") != "hung",
        "joined": not said.get("joined_to") and not held and said.get("kind") not in NOT_IN_THE_CHAIN,
        "looked": not piece.get("looked") and piece["id"] not in looked,
    }
    return tuple(name for name in LACKS if found[name])
