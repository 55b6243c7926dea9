"""The drawing of a fitting as it was spoken: SVG from the facts of a note's fitting or of a joined piece.

    draw(facts, language, tag="") -> Drawing

`facts` are fact documents (`facts` of a fitting or a piece). Dimensions are printed exactly, in trade fractions;
what was not said is a dashed edge and a dashed "?". The picture is not to scale. Pure: the same facts give the
same bytes. 360 units wide with texts of 14, so that it can be read on a telephone 390 px wide.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from hashlib import sha256

from logbook import labels
from logbook.geometry import pen, plain, tapers, turns
from logbook.geometry.spoken import Spoken, spoken

WIDE = 360
DRAWN: Mapping[str | None, Callable[[Spoken], tuple[list[str], float]]] = {
    "straight": plain.straight,
    "transition": tapers.transition,
    "offset": tapers.offset,
    "elbow": turns.elbow,
    "tee": turns.branched,
    "branch": turns.branched,
    "wye": turns.wye,
    "end_cap": plain.end_cap,
    "collar": plain.collar,
    "access_door": plain.opening,
    "register": plain.opening,
    "equipment_connection": plain.to_metal,
    "damper_sleeve": plain.to_metal,
    "plenum": plain.box,
    "hanger": plain.hanger,
    "repair": plain.mend,
    None: plain.unknown,
}
# What the picture needs to be told: the facts that a drawing of the kind prints or marks with "?".
NEEDED: Mapping[str | None, tuple[str, ...]] = {
    "straight": ("inlet_size",),
    "transition": ("inlet_size", "outlet_size", "side_moves"),
    "offset": ("inlet_size", "offset_by", "length"),
    "elbow": ("inlet_size", "turn_angle"),
    "tee": ("inlet_size", "branch_size"),
    "branch": ("inlet_size", "branch_size"),
    "wye": ("inlet_size", "branch_size", "turn_angle"),
    "end_cap": ("inlet_size",),
    "collar": ("collar_diameter",),
    "access_door": ("inlet_size",),
    "register": ("inlet_size",),
    "equipment_connection": ("inlet_size", "screw_spacing"),
    "damper_sleeve": ("inlet_size", "screw_spacing"),
    "plenum": ("inlet_size",),
    "hanger": ("hanger_spacing",),
    "repair": ("damage_width",),
    None: ("kind",),
}
DIMENSIONS = (
    "inlet_size", "outlet_size", "branch_size", "collar_diameter", "side_moves", "level_sides", "taper_length", "stated_slope",
    "length", "offset_by", "turn_angle", "elbow_pieces", "vanes", "throat_radius", "hanger_spacing", "screw_spacing", "damage_width",
)  # fmt: skip


@dataclass(frozen=True)
class Drawing:
    """`svg` with `title` as its name and `told` as its description: the same in words."""

    svg: str
    title: str
    told: str
    width: float
    height: float


def draw(found: Sequence[Mapping], language: str, tag: str = "", planned: bool = False, below: Sequence[str] = ()) -> Drawing:
    """`tag` keeps the ids of several drawings of one page apart; without it they follow from the content.

    `planned`: the facts are a row of the schedule, and the picture says so instead of "as said". `below`: lines
    under the picture that also end its description.
    """
    said = spoken(found, language, planned)
    kind = said.value("kind")
    parts, height = DRAWN[kind](said)
    title = labels.fitting(list(found), language)
    told = " ".join([_told(said, found, kind, title), *below])
    lines = [pen.words(WIDE, height + 10 + 15 * at, line, "end", 11, pen.SOFT) for at, line in enumerate([*below, said.say("note")])]
    height += 15 * len(below)
    tag = tag or "drawn-" + sha256(f"{title}\n{told}".encode()).hexdigest()[:10]
    svg = pen.framed([*parts, *lines], WIDE, height + 16, title, told, tag)
    return Drawing(svg, title, told, WIDE, height + 16)


def _told(said: Spoken, found: Sequence[Mapping], kind: str | None, title: str) -> str:
    """The drawing in words: every dimension said, then what was not."""
    dimensions = [f"{label}: {text.removesuffix('.')}." for label, text in (labels.fact(doc, said.language) for doc in found if doc["name"] in DIMENSIONS)]
    names = [labels.name(name, said.language) for name in NEEDED[kind] if said.value(name) is None]
    unsaid = said.say("told-unsaid", names=", ".join(names)) if names else ""
    return said.say("told", what=title, dimensions=" ".join(dimensions), unsaid=unsaid).strip()
