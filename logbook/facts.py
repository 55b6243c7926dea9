"""The one table of facts: what a note may state about a fitting, in which shape and unit.

Everything that knows facts (reading, joining, "same as", schemas, the press form, the docs) reads this table;
nothing else lists fact names. Names and values are the contract of the documents in `schemas/`.

Shapes and their value inside the process:
    choice, text   str                      flag    bool             count   int
    length, angle, number   Fraction        size, slope   (Fraction, Fraction)
    moves   tuple of Move                   sides, marks  tuple of str
Families decide what "same as" copies: `is` (what a piece is) is copied, `done` (what was done to it),
`measured` (read off it) and `where` (which piece and where) are not.
`joins`: how a later saying meets an earlier one: `replace`, `side` (moves, side by side) or `add` (lists).
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from logbook import measure

SIDES = ("top", "bottom", "left", "right")
KINDS = (
    "straight", "transition", "offset", "elbow", "tee", "branch", "wye", "end_cap", "collar", "access_door",
    "register", "equipment_connection", "damper_sleeve", "plenum", "hanger", "repair",
)  # fmt: skip


@dataclass(frozen=True)
class Move:
    """A side that moves: `by` inches over `back` inches along the duct, `way` in or out of the middle.

    Any member may be None where it was not said.
    """

    side: str | None
    by: Fraction | None
    back: Fraction | None
    way: str | None


@dataclass(frozen=True)
class FactName:
    name: str
    shape: str
    unit: str | None
    family: str
    joins: str = "replace"
    values: tuple[str, ...] = ()
    may_stand: bool = False  # only materials and method may stand in for speech


def _row(name, shape, unit=None, family="is", joins="replace", values=(), may_stand=False):
    return FactName(name, shape, unit, family, joins, tuple(values), may_stand)


FACTS: tuple[FactName, ...] = (
    _row("kind", "choice", values=KINDS),
    _row("mark", "text", family="where"),
    _row("run", "text", family="where"),
    _row("place", "text", family="where"),
    _row("service", "choice", values=("supply", "return", "exhaust", "outside"), family="where", may_stand=True),
    _row("stage", "choice", values=("made", "hung"), family="done"),
    _row("joined_to", "marks", family="done", joins="add"),
    _row("inlet_size", "size", "in"),
    _row("outlet_size", "size", "in"),
    _row("branch_size", "size", "in"),
    _row("collar_diameter", "length", "in"),
    _row("side_moves", "moves", "in", joins="side"),
    _row("taper_length", "length", "in"),
    _row("level_sides", "sides"),
    _row("stated_slope", "slope"),
    _row("length", "length", "in"),
    _row("offset_by", "length", "in"),
    _row("turn_angle", "angle", "°"),
    _row("elbow_pieces", "count"),
    _row("vanes", "flag", family="done"),
    _row("throat_radius", "length", "in"),
    _row("made_from", "choice", values=("female", "male"), may_stand=True),
    _row("air_leaves_by", "choice", values=("female", "male"), may_stand=True),
    _row("shiplap_sides", "sides", may_stand=True),
    _row("butt_sides", "sides", may_stand=True),
    _row("groove_step", "choice", values=("inside", "outside"), family="done", may_stand=True),
    _row("panel_seated", "flag", family="done"),
    _row("cut_to_length", "flag", family="done"),
    _row("stapled", "flag", family="done"),
    _row("staple_flap", "flag", family="done"),
    _row("staple_spacing", "length", "in", family="done", may_stand=True),
    _row("staple_leg", "length", "in", family="done", may_stand=True),
    _row("staple_clinch", "choice", values=("outward", "inward"), family="done", may_stand=True),
    _row("sides_stapled", "count", family="done"),
    _row("cross_tabs", "flag", family="done"),
    _row("cross_tab_length", "length", "in", family="done", may_stand=True),
    _row("cross_tab_spacing", "length", "in", family="done", may_stand=True),
    _row("taped", "flag", family="done"),
    _row("closure", "choice", values=("tape_pressure", "tape_heat", "mastic", "other_tape"), family="done", may_stand=True),
    _row("closure_mark", "choice", values=("181A-P", "181A-H", "181A-M"), family="done", may_stand=True),
    _row("tape_width", "length", "in", family="done", may_stand=True),
    _row("sides_taped", "count", family="done"),
    _row("rubbed_down", "flag", family="done"),
    _row("scrim_shows", "flag", family="done"),
    _row("surface_clean", "flag", family="done"),
    _row("surface_temperature", "number", "°F", family="measured", may_stand=True),
    _row("preheated", "flag", family="done"),
    _row("trimmed", "flag", family="done"),
    _row("gap", "length", "in", family="measured"),
    _row("facing_damage", "choice", values=("none", "tear", "puncture", "crushed", "wet", "delaminated"), family="measured"),
    _row("damage_width", "length", "in", family="measured"),
    _row("damage_repaired", "flag", family="done"),
    _row("repair_method", "choice", values=("tape", "mastic", "plug", "replaced"), family="done"),
    _row("hanger_spacing", "length", "in", family="done", may_stand=True),
    _row("accessory_weight", "number", "lb", family="measured"),
    _row("accessory_supported", "flag", family="done"),
    _row("reinforced", "flag", family="done", may_stand=True),
    _row("board_thickness", "length", "in", may_stand=True),
    _row("board_class", "count", values=("475", "800", "1400"), may_stand=True),
    _row("airflow", "number", "cfm", family="measured", may_stand=True),
    _row("static_pressure", "number", "in. w.g.", family="measured", may_stand=True),
    _row("air_temperature", "number", "°F", family="measured", may_stand=True),
    _row("leak_pressure", "number", "in. w.g.", family="measured"),
    _row("leak_flow", "number", "cfm", family="measured"),
    _row("leak_area", "number", "ft²", family="measured"),
    _row("screw_spacing", "length", "in", family="done", may_stand=True),
    _row("washer_size", "length", "in", family="done", may_stand=True),
    _row("tabs_bent", "flag", family="done"),
)

BY_NAME = {row.name: row for row in FACTS}
ORDER = {row.name: place for place, row in enumerate(FACTS)}


def to_json(name: str, value):
    """The JSON value of a fact, numbers rounded to six places."""
    match BY_NAME[name].shape:
        case "length" | "angle" | "number":
            return measure.in_json(value)
        case "size" | "slope":
            return [measure.in_json(side) for side in value]
        case "moves":
            return [
                {"side": m.side, "by": _maybe(m.by), "back": _maybe(m.back), "way": m.way} for m in value
            ]
        case "sides" | "marks":
            return list(value)
    return value


def exact_to_json(name: str, value):
    """The exact fractions in the shape of the value, or None where the JSON value is exact already."""
    match BY_NAME[name].shape:
        case "length" | "angle" | "number":
            return measure.exact(value)
        case "size" | "slope":
            if all(measure.exact(side) is None for side in value):
                return None
            return [str(side) for side in value]
        case "moves":
            if all(x is None or measure.exact(x) is None for m in value for x in (m.by, m.back)):
                return None
            return [
                {"side": m.side, "by": _text(m.by), "back": _text(m.back), "way": m.way} for m in value
            ]
    return None


def from_json(name: str, value, exact=None):
    """The value inside the process; `exact`, where it stands, is read first."""
    source = value if exact is None else exact
    match BY_NAME[name].shape:
        case "length" | "angle" | "number":
            return Fraction(str(source))
        case "size" | "slope":
            return tuple(Fraction(str(side)) for side in source)
        case "moves":
            return tuple(Move(m["side"], _read(m["by"]), _read(m["back"]), m["way"]) for m in source)
        case "sides" | "marks":
            return tuple(source)
    return source


def _maybe(value):
    return None if value is None else measure.in_json(value)


def _text(value):
    return None if value is None else str(value)


def _read(value):
    return None if value is None else Fraction(str(value))


@lru_cache(maxsize=16384)  # every look-up by mark or run asks it
def bare_mark(mark: str) -> str:
    """A mark as it is compared: no case, spaces or hyphens, but a hyphen between two digits counts."""
    return re.sub(r"(?<!\d)-|-(?!\d)", "", re.sub(r"\s", "", mark)).casefold()


def same_size(one, other, within: Fraction = Fraction(0)) -> bool:
    """Sizes have no order: people say 8 by 12 and 12 by 8 of the same duct."""
    return any(
        abs(a[0] - b[0]) <= within and abs(a[1] - b[1]) <= within for a, b in ((one, other), (one, other[::-1]))
    )
