"""The pieces and planned fittings of a job by area.

An area is what the schedule calls it; else the place that was said; else the run. What has none of the three stands
under its own name, so that nothing drops off a walk list.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from logbook.facts import bare_mark
from logbook.schedule import Revision, Row

AREA, PLACE, RUN, NOWHERE = "area", "place", "run", "nowhere"


@dataclass
class Area:
    """`key` names it in addresses and acts; `what` tells which word made it. `rows` are planned, `pieces` logged."""

    key: str
    what: str
    name: str
    rows: list[Row] = field(default_factory=list)
    pieces: list[Mapping] = field(default_factory=list)
    more: int = 0  # pieces of a long log that are counted and not listed: no row of the schedule can be theirs

    @property
    def runs(self) -> list[str]:
        found = [one["run"] for one in self.pieces] + [row.run for row in self.rows]
        return list({bare_mark(run): run for run in found if run}.values())


def areas(plan: Revision | None, pieces: Iterable[Mapping], counted: Iterable[tuple[str | None, str, int]] = ()) -> list[Area]:
    """All areas by name; those of the schedule first. Leak tests are no pieces of an area.

    `counted`: (run, place, how many) of further pieces whose marks are not in the schedule.
    """
    found: dict[str, Area] = {}

    def at(what: str, name: str) -> Area:
        key = f"{what}:{_key(name)}"
        return found.setdefault(key.casefold(), Area(key, what, name))

    for row in plan.rows if plan else ():
        at(*_of_row(row)).rows.append(row)
    for piece in pieces:
        if any(one["name"] in ("kind", "mark") for one in piece["facts"]):
            at(*_of_piece(piece, plan)).pieces.append(piece)
    for run, place, count in counted:
        at(*((PLACE, place) if place else (RUN, run) if run else (NOWHERE, ""))).more += count
    order = (AREA, PLACE, RUN, NOWHERE)
    return sorted(found.values(), key=lambda area: (order.index(area.what), _counted(area.name)))


def same_name(one: str, other: str) -> bool:
    """Whether two spellings make the same area."""
    return _key(one).casefold() == _key(other).casefold()


def _key(name: str) -> str:
    return " ".join(name.split())


def missing(area: Area) -> list[Row]:
    """Planned rows of the area that no piece bears."""
    borne = {(bare_mark(one["run"] or ""), bare_mark(one["mark"] or "")) for one in area.pieces}
    return [row for row in area.rows if not {(bare_mark(row.run or ""), bare_mark(row.mark)), ("", bare_mark(row.mark))} & borne]


def _of_row(row: Row) -> tuple[str, str]:
    return (AREA, row.area) if row.area else (RUN, row.run) if row.run else (NOWHERE, "")


def _of_piece(piece: Mapping, plan: Revision | None) -> tuple[str, str]:
    row = plan.row(piece["mark"], piece["run"]) if plan and piece["mark"] else None
    if row is not None and row.area:
        return AREA, row.area
    place = next((one["value"] for one in piece["facts"] if one["name"] == "place"), None)
    if place:
        return PLACE, str(place)
    return (RUN, piece["run"]) if piece["run"] else (NOWHERE, "")


def _counted(name: str) -> tuple:
    """2 before 10."""
    digits = "".join(sign if sign.isdecimal() else " " for sign in name).split()
    return (int(digits[0]) if digits and name.strip().startswith(digits[0]) else 10**9, name.casefold())
