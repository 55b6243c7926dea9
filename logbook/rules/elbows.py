"""Elbows: vanes in a square throat, and the radius of a round one."""

from __future__ import annotations

from logbook.findings import Example, Outcome, Rule, Source
from logbook.piece import Piece
from logbook.rules.using import Use
from logbook.runs import Around

CUT_IN_TWO = 2  # pieces of an elbow with one cut, which is what people mean by "ninety" alone


def elbow_vanes(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    use.said("kind")
    if use.said("throat_radius"):
        return None
    limit, turn = use.limit("bare_turn"), use.said("turn_angle")
    reckoned = {"limit": limit}
    if turn is not None:
        pieces = use.said("elbow_pieces") or CUT_IN_TWO
        a_cut = turn / max(pieces - 1, 1)
        if a_cut < limit:
            return None
        reckoned = {"turn_a_cut": a_cut, "limit": limit}
    match use.said("vanes"):
        case True:
            return use.meets("vanes-in", reckoned=reckoned)
        case False:
            return use.departs("no-vanes", reckoned=reckoned)
    return use.unsaid("vanes-unsaid", "vanes", reckoned=reckoned)


ELBOW_VANES = Rule(
    id="elbow-vanes",
    concerns=("elbow",),
    weight="must",
    silent="flag",
    may_stand=(),
    limits=("bare_turn",),
    source=Source("EL-01", "a", "naima-check-list"),
    judge=elbow_vanes,
    examples=(
        Example("Ninety twelve, twelve by ten, vanes in.", "meets", "vanes-in"),
        Example("Ninety twelve, twelve by ten, no vanes.", "departs", "no-vanes"),
        Example("Ninety twelve, twelve by ten, stapled and taped.", "unsaid", "vanes-unsaid"),
        Example("Forty-five twelve, twelve by ten, stapled and taped.", None),
        Example("Codo doce de noventa, doce por diez, con aletas.", "meets", "vanes-in", language="es"),
    ),
)


def elbow_throat(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    if not use.said("throat_radius") or use.said("inlet_size") is None:
        return None
    throat, limit = piece.value("throat_radius"), use.limit("throat_ratio")
    width = max(piece.value("inlet_size"))  # the plane of the turn is not known: the wider side is the worse
    ratio = (throat + width / 2) / width
    reckoned = {"ratio": ratio, "limit": limit, "needed_throat_in": limit * width - width / 2}
    answer = use.meets if ratio >= limit else use.departs
    return answer("wide-enough" if ratio >= limit else "too-tight", limit=limit, reckoned=reckoned)


ELBOW_THROAT = Rule(
    id="elbow-throat",
    concerns=("elbow",),
    weight="keep",
    silent="not due",
    may_stand=(),
    limits=("throat_ratio",),
    source=Source("EL-02", "b", "hvac-dcs-4-2"),
    judge=elbow_throat,
    examples=(
        Example("Elbow twelve, twelve by twelve, throat radius twelve inches.", "meets", "wide-enough"),
        Example("Elbow twelve, twelve by twelve, throat radius six inches.", "departs", "too-tight"),
    ),
)
