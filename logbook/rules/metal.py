"""Metal on board: screws and washers, what seals the joint, tabs of a collar."""

from __future__ import annotations

from logbook.findings import Example, Outcome, Rule, Source
from logbook.piece import Piece
from logbook.rules.using import Use
from logbook.runs import Around

SLEEVE = Source("CN-02", "a", "umc-6-5-sleeve")


def metal_fastening(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    sleeve = use.said("kind") == "damper_sleeve"
    most, least = use.limit("screw_spacing_sleeve" if sleeve else "screw_spacing"), use.limit("washer_size")
    spacing, washer = use.known("screw_spacing"), use.known("washer_size")
    reckoned = {"most_spacing_in": most, "least_washer_in": least}
    reckoned |= {} if spacing is None else {"spacing_in": spacing}
    reckoned |= {} if washer is None else {"washer_in": washer}
    both = {"limit": [most, least], "reckoned": reckoned, "source": SLEEVE if sleeve else None}
    if spacing is not None and spacing > most:
        return use.departs("too-far-apart", stated_by="screw_spacing", **both)
    if washer is not None and washer < least:
        return use.departs("washer-too-small", stated_by="washer_size", **both)
    if spacing is None:
        return use.unsaid("spacing-unsaid", "screw_spacing", **both)
    if washer is None:
        return use.unsaid("washer-unsaid", "washer_size", **both)
    return use.meets("close-enough", stated_by="screw_spacing", **both)


METAL_FASTENING = Rule(
    id="metal-fastening",
    concerns=("equipment_connection", "damper_sleeve"),
    weight="must",
    silent="flag",
    may_stand=("shift",),
    limits=("screw_spacing", "screw_spacing_sleeve", "washer_size"),
    source=Source("CN-01, CN-02", "a", "naima-check-list"),
    judge=metal_fastening,
    examples=(
        Example("Equipment connection four, screws every sixteen inches, three-inch washers.", "meets", "close-enough"),
        Example("Damper sleeve four, screws every sixteen inches, three-inch washers.", "departs", "too-far-apart"),
        Example("Equipment connection four, screws every twelve inches, two-inch washers.", "departs", "washer-too-small"),
        Example("Equipment connection four, screwed on.", "unsaid", "spacing-unsaid"),
    ),
)


def metal_closure(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    if piece.value("kind") is None:
        return None  # a pressure is told of any piece, and tells of no metal
    pressure, limit = use.known("static_pressure"), use.limit("metal_tape_pressure")
    if pressure is None:
        return None
    closure = use.known("closure") or ("tape" if use.known("taped") else None)
    more = {"limit": limit, "reckoned": {"pressure": abs(pressure), "limit": limit}}
    if abs(pressure) < limit:
        return use.meets("low-pressure", stated_by="static_pressure", **more)
    if closure is None and use.said("taped") is True:  # "taped it": tape of some kind, and none of them is for this pressure
        return use.departs("tape", stated_by="static_pressure", **more)
    if closure is None:
        return use.unsaid("closure-unsaid", "closure", **more)
    if closure == "mastic":
        return use.meets("mastic", stated_by="static_pressure", **more)
    return use.departs("tape", stated_by="static_pressure", **more)


METAL_CLOSURE = Rule(
    id="metal-closure",
    concerns=("equipment_connection", "damper_sleeve", "collar", "access_door"),
    weight="must",
    silent="not due",
    may_stand=(),
    limits=("metal_tape_pressure",),
    source=Source("CL-24, CN-12", "a", "ah121-metal"),
    judge=metal_closure,
    defers=True,
    examples=(
        Example("Equipment connection four, one and a half inches of static pressure, closed with mastic.", "meets", "mastic"),
        Example("Equipment connection four, one and a half inches of static pressure, taped with 181A-P.", "departs", "tape"),
        Example("Equipment connection four, taped with 181A-P.", None),
    ),
)


def tabs_bent(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    match use.said("tabs_bent"):
        case True:
            return use.meets("bent")
        case False:
            return use.departs("not-bent")
    return use.unsaid("unsaid", "tabs_bent")


TABS_BENT = Rule(
    id="tabs-bent",
    concerns=("collar",),
    weight="should",
    silent="count",
    may_stand=(),
    limits=(),
    source=Source("CN-08", "a", "sws-collar"),
    judge=tabs_bent,
    examples=(
        Example("Collar four, ten inch, all tabs bent over tight.", "meets", "bent"),
        Example("Collar four, ten inch, taped.", "unsaid", "unsaid"),
    ),
)
