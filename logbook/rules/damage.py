"""Damage of the facing or the board, and how it was mended."""

from __future__ import annotations

from logbook.findings import Example, Outcome, Rule, Source, Word
from logbook.piece import Piece
from logbook.rules.using import Use
from logbook.runs import Around

OF_THE_BOARD = ("crushed", "delaminated")  # tape never mends these
SOUND = ("plug", "replaced")


def damage_repaired(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    damage, repaired = use.said("facing_damage"), use.said("damage_repaired")
    method = use.said("repair_method")
    if damage is None and repaired is None:
        return None
    if damage == "none":
        return use.meets("none")
    told = {"tells": {"damage": Word(f"damage-{damage or 'some'}")}}
    if damage == "wet":
        return use.meets("replaced", **told) if method == "replaced" else use.departs("wet", **told)
    if repaired is False:
        return use.departs("not-repaired", **told)
    if repaired is None:
        return use.unsaid("repair-unsaid", "damage_repaired", silent="flag", **told)
    if damage in OF_THE_BOARD:
        if method is None:
            return use.unsaid("method-unsaid", "repair_method", silent="flag", **told)
        if method not in SOUND:
            return use.departs("only-covered", **told)
    return use.meets("repaired", **told)


DAMAGE_REPAIRED = Rule(
    id="damage-repaired",
    concerns=(),
    weight="must",
    silent="not due",
    may_stand=(),
    limits=(),
    source=Source("DM-01, DM-05, DM-06, DM-07", "a", "naima-check-list"),
    judge=damage_repaired,
    examples=(
        Example("Straight four, small tear on the facing, patched it with tape.", "meets", "repaired"),
        Example("Straight four, tear on the facing, not patched yet.", "departs", "not-repaired"),
        Example("Straight four, the board got wet.", "departs", "wet"),
        Example("Straight four, there is a tear on the facing.", "unsaid", "repair-unsaid"),
        Example("Straight four, no tears.", "meets", "none"),
    ),
)


def damage_method(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    if use.said("damage_repaired") is not True:
        return None
    width, method, limit = use.said("damage_width"), use.said("repair_method"), use.limit("tape_mends")
    if width is None or method is None:
        return None
    more = {"limit": limit, "reckoned": {"width_in": width, "limit_in": limit}, "tells": {"method": Word(f"method-{method}")}}
    if width > limit and method == "tape":
        return use.departs("too-wide-for-tape", **more)
    return use.meets("right-method", **more)


DAMAGE_METHOD = Rule(
    id="damage-method",
    concerns=(),
    weight="should",
    silent="not due",
    may_stand=(),
    limits=("tape_mends",),
    source=Source("DM-02, DM-04", "b", "ah116-viii"),
    judge=damage_method,
    examples=(
        Example("Straight four, half-inch tear patched with tape.", "meets", "right-method"),
        Example("Straight four, two-inch tear patched with tape.", "departs", "too-wide-for-tape"),
    ),
)
