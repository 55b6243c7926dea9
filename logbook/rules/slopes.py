"""The geometry of transitions and offsets, from what was said: slopes, sizes against moves, angles."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import product

from logbook.facts import Move
from logbook.findings import Example, Outcome, Rule, Source, Told, Word
from logbook.piece import Piece
from logbook.rules.mishearing import meant
from logbook.rules.using import Use, against_the_air
from logbook.runs import Around

UPRIGHT = ("top", "bottom")
FLAT = ("left", "right")
TWELVE = Fraction(12)  # a slope is told as so many inches in twelve


@dataclass(frozen=True)
class Slope:
    """One sloped side: how far it moves and over what length, as far as the words tell.

    `whole` False: a length back was said of no side, so that the change may lie on one side or on both.
    """

    side: str | None
    way: str | None
    by: Fraction
    back: Fraction | None
    whole: bool = True


def changes(inlet, outlet) -> tuple[tuple[Fraction, Fraction], ...]:
    """Change of each spoken side, for both orders in which the second size may have been said."""
    same, crossed = ((b - a for a, b in zip(inlet, order)) for order in (outlet, outlet[::-1]))
    found = (tuple(same), tuple(crossed))
    return found if found[0] != found[1] else found[:1]


def change(inlet, outlet) -> tuple[Fraction, Fraction]:
    """The smaller reading of the change: sizes have no order."""
    return min(changes(inlet, outlet), key=lambda two: (sum(c != 0 for c in two), sum(map(abs, two))))


def _amounts(use: Use) -> tuple[list[Slope], list[Fraction]] | str:
    """The moved sides, and the changes of size that no side was named for; or the case that says what is missing."""
    inlet, outlet = use.said("inlet_size"), use.said("outlet_size")
    moves: tuple[Move, ...] = use.said("side_moves") or ()
    left = [abs(c) for c in change(inlet, outlet) if c] if inlet and outlet else []
    named = [move for move in moves if move.by is not None]
    blank = [move for move in moves if move.by is None and (move.side is not None or move.back is not None)]
    slopes = [Slope(move.side, move.way, move.by, move.back) for move in named if move.by]
    for axis in {UPRIGHT if move.side in UPRIGHT else FLAT if move.side in FLAT else None for move in named}:
        of_axis = [m for m in named if axis is None or m.side in axis]
        total = abs(sum((m.by if m.way == "out" else -m.by for m in of_axis), Fraction(0)))
        if left:
            left.remove(min(left, key=lambda c: abs(c - total)))
    for move in blank:
        if len(left) != 1 or len(blank) > 1:
            return "by-unsaid"
        slopes.append(Slope(move.side, move.way, left.pop(), move.back, whole=move.side is not None))
    return slopes, left


def transition_slope(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    use.said("kind")
    rise, run = use.limit("slope")
    limit = {"limit": [rise, run], "tolerance": _tolerance(use)}
    in_12 = {"limit_in_12": rise / run * TWELVE}
    found = _amounts(use)
    if found == "by-unsaid":
        return use.unsaid(found, "side_moves", reckoned=in_12, **limit)
    slopes, unnamed = found
    needs_back = any(slope.back is None for slope in slopes) or bool(unnamed) or not slopes
    stated = use.said("stated_slope") if needs_back else None
    taper = use.said("taper_length") if needs_back and stated is None else None
    longest = use.said("length") if needs_back and stated is None and taper is None else None
    slopes, unnamed = _flat_side_known(use, slopes, unnamed)
    judged = [
        _judged(use, slope, stated, taper, longest) if slope.whole else _split(use, slope.by, None, slope.back, None) for slope in slopes
    ]
    judged += [_split(use, amount, stated, taper, longest) for amount in unnamed]
    if not judged and stated is not None:
        judged = [_stated_alone(use, stated)]
    if not judged:
        sized = use.peek("inlet_size") and use.peek("outlet_size")
        if sized and not any(change(use.peek("inlet_size"), use.peek("outlet_size"))):
            return use.meets("no-change", reckoned=in_12, **limit)
        return use.unsaid("slope-unsaid", "side_moves", reckoned=in_12, **limit)
    rank = {"departs": 0, "unsaid": 1, "meets": 2}
    case, verdict, reckoned, told, asks, text = min(judged, key=lambda j: (rank[j[1]], -j[2].get("slope_in_12", 0)))
    return use._outcome(
        case, verdict, {"reckoned": reckoned | in_12, "tells": told, "asks": asks, "text": text} | limit
    )


def _tolerance(use: Use) -> dict[str, Fraction]:
    return {"length": use.limit("set_back_tolerance"), "share": use.limit("set_back_share")}


def _flat_side_known(use: Use, slopes: list[Slope], unnamed: list[Fraction]) -> tuple[list[Slope], list[Fraction]]:
    """A side that stays flat gives the whole change to the side across from it."""
    split = [slope for slope in slopes if not slope.whole]
    if len(unnamed) + len(split) != 1 or len(slopes) > len(split) or not use.peek("level_sides"):
        return slopes, unnamed
    use.said("level_sides")
    return [replace(slope, whole=True) for slope in split] or [Slope(None, None, unnamed[0], None)], []


def _needed(use: Use, by: Fraction) -> tuple[Fraction, Fraction]:
    """The set-back that the limit asks for, and the least that is met inside the tolerance."""
    rise, run = use.limit("slope")
    needed = by * run / rise
    return needed, needed - min(use.limit("set_back_tolerance"), needed * use.limit("set_back_share"))


def _judged(use: Use, slope: Slope, stated, taper, longest) -> tuple:
    back = slope.back
    if back is None and stated is not None:
        back = slope.by * stated[1] / stated[0]
    back = taper if back is None else back
    needed, least = _needed(use, slope.by)
    side = {} if slope.side is None else {"side": slope.side}
    told = {"move": _move(slope), "by": slope.by}
    if back is None:
        if longest is not None and longest < least:
            told |= {"back": longest}
            return "too-short", "departs", side | {"needed_set_back_in": needed, "length_in": longest}, told, None, None
        return "back-unsaid", "unsaid", side, told, "side_moves", None
    if not back:
        return "too-steep", "departs", side | {"needed_set_back_in": needed}, told | {"back": back}, None, "square-step"
    reckoned = side | {"slope_in_12": slope.by / back * TWELVE, "needed_set_back_in": needed}
    told |= {"back": back}
    return ("within", "meets", reckoned, told, None, None) if back >= least else ("too-steep", "departs", reckoned, told, None, None)


def _split(use: Use, amount: Fraction, stated, taper, longest) -> tuple:
    """A change of size whose sides nobody named: all on one side is the worst, half and half the best."""
    if stated is not None:
        return _stated_alone(use, stated)
    half = amount / 2
    (needed, least), (needed_half, least_half) = _needed(use, amount), _needed(use, half)
    told = {"change": amount}
    back = taper if taper is not None else longest
    if back is None:
        return "slope-unsaid", "unsaid", {}, told, "side_moves", None
    told |= {"back": back}
    if back < least_half:
        reckoned = {"slope_in_12": half / back * TWELVE} if back else {}
        return "too-steep-either-way", "departs", reckoned | {"needed_set_back_in": needed_half}, told, None, None
    if taper is not None and back >= least:
        reckoned = {"slope_in_12": amount / back * TWELVE, "needed_set_back_in": needed}
        return "within-either-way", "meets", reckoned, told, None, None
    if taper is None:
        return "slope-unsaid", "unsaid", {}, told, "side_moves", None
    return "side-unsaid", "unsaid", {"needed_set_back_in": needed}, told, "level_sides", None


def _stated_alone(use: Use, stated) -> tuple:
    rise, run = use.limit("slope")
    slope = stated[0] / stated[1]
    holds = slope <= rise / run
    reckoned = {"slope_in_12": slope * TWELVE}
    case = "within" if holds else "too-steep"
    return case, "meets" if holds else "departs", reckoned, {}, None, "said-within" if holds else "said-too-steep"


def _move(slope: Slope) -> Word:
    return Word(f"move-{slope.side}-{slope.way}" if slope.side and slope.way else "move-any")


TRANSITION_SLOPE = Rule(
    id="transition-slope",
    concerns=("transition",),
    weight="must",
    silent="flag",
    may_stand=(),
    limits=("slope", "set_back_tolerance", "set_back_share"),
    source=Source("TR-01", "c"),
    judge=transition_slope,
    examples=(
        Example("Transition five, twenty by fourteen to twenty by eleven, top down three, back eighteen.", "meets", "within"),
        Example("Transition five, twenty by fourteen to twenty by eleven, top down three, back fifteen.", "departs", "too-steep"),
        Example("Transition five, twenty by fourteen to twenty by eleven, top down three.", "unsaid", "back-unsaid"),
        Example("Transition five, twenty by fourteen to twenty by eleven, slope two in twelve.", "meets", "within"),
        Example("Transition five, twenty by fourteen to twenty by eleven, back twelve.", "unsaid", "side-unsaid"),
        Example("Transition five, twenty by fourteen to twenty by eleven, back eighteen.", "meets", "within-either-way"),
        Example("Transition five, twenty by fourteen to twenty by eleven, back eight.", "departs", "too-steep-either-way"),
        Example("Transition five, twenty by fourteen to twenty by eleven, bottom flat, back twelve.", "departs", "too-steep"),
        Example("Transición cinco, veinte por catorce a veinte por once, arriba baja tres, atrás dieciocho.", "meets", "within", language="es"),
    ),
)


# --- sizes against moves


def _moved(moves: tuple[Move, ...]) -> Iterator[tuple[Fraction | None, Fraction | None]]:
    """Every way in which the moves may add up: (upright, flat), None where nothing was said of that axis."""
    ways = []
    for move in moves:
        axes = (0,) if move.side in UPRIGHT else (1,) if move.side in FLAT else (0, 1)
        signs = {"in": (-1,), "out": (1,)}.get(move.way, (-1, 1))
        ways.append([(axis, sign * move.by) for axis in axes for sign in signs])
    for picked in product(*ways):
        sums: list[Fraction | None] = [None, None]
        for axis, amount in picked:
            sums[axis] = (sums[axis] or Fraction(0)) + amount
        yield sums[0], sums[1]


def sizes_agree(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    inlet, outlet, moves = use.said("inlet_size"), use.said("outlet_size"), use.said("side_moves")
    limit = use.limit("size_tolerance")
    if inlet is None or outlet is None or not moves or any(move.by is None for move in moves):
        return None
    best, verdict = _best_pairing(inlet, outlet, moves, limit)
    change_in, moved_in = best
    reckoned = {"change_in": list(change_in), "moved_in": [amount or Fraction(0) for amount in moved_in]}
    kept = {"limit": limit, "reckoned": reckoned}
    if verdict == "meets":
        return use.meets("moves-make-the-change", text=_one_move(moves), tells=_told(change_in, moves), **kept)
    if verdict == "unsaid":
        return use.unsaid("move-unsaid", "side_moves", **kept)
    fits = lambda first, second: _best_pairing(first, second, moves, limit)[1] == "meets"  # noqa: E731
    for name, other in meant({"inlet_size": inlet, "outlet_size": outlet}):
        if fits(other if name == "inlet_size" else inlet, other if name == "outlet_size" else outlet):
            heard = {"value": Told(name, piece.value(name)), "other": Told(name, other)}
            return use.unclear("maybe-misheard", name, departs_as_heard=True, tells=heard, **kept)
    return use.departs("moves-do-not-make-the-change", **kept)


def _best_pairing(inlet, outlet, moves, limit) -> tuple[tuple[tuple, tuple], str]:
    """The reading in which sizes and moves lie nearest, and what it says."""
    readings = []
    for change_in in changes(inlet, outlet):
        for upright, flat in _moved(moves):
            for moved_in in ((upright, flat), (flat, upright)):
                off = [abs(c - (m or 0)) for c, m in zip(change_in, moved_in)]
                holds = all(o <= limit for o in off)
                only_unsaid = all(o <= limit or m is None for o, m in zip(off, moved_in))
                readings.append((not holds, not only_unsaid, sum(off), (change_in, moved_in)))
    wrong, not_unsaid, _, best = min(readings, key=lambda reading: reading[:3])
    return best, "departs" if wrong and not_unsaid else "unsaid" if wrong else "meets"


def _one_move(moves: tuple[Move, ...]) -> str | None:
    one = len(moves) == 1 and moves[0].side and moves[0].way
    return "one-move" if one else None


def _told(change_in, moves: tuple[Move, ...]) -> dict[str, object]:
    if not _one_move(moves):
        return {}
    (move,) = moves
    amount = max(change_in, key=abs)
    axis = Word("axis-depth" if move.side in UPRIGHT else "axis-width")
    goes = Word("goes-down" if amount < 0 else "goes-up")
    return {"axis": axis, "goes": goes, "amount": abs(amount), "move": Word(f"move-{move.side}-{move.way}"), "by": move.by}


SIZES_AGREE = Rule(
    id="sizes-agree",
    concerns=("transition",),
    weight="must",
    silent="not due",
    may_stand=(),
    limits=("size_tolerance",),
    source=Source("SJ-10", "c"),
    judge=sizes_agree,
    examples=(
        Example("Transition five, twenty by fourteen to twenty by eleven, top down three, back eighteen.", "meets"),
        Example("Transition five, twenty by fourteen to twenty by eleven, top down two, back twelve.", "departs"),
        Example("Transition five, twenty by forty to twenty by eleven, top down three, back eighteen.", "unclear", "maybe-misheard"),
    ),
)


# --- the slope said beside a move


def slope_agrees(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    whole = [move for move in use.peek("side_moves") or () if move.by is not None and move.back]
    if not whole or use.peek("stated_slope") is None:
        return None
    use.said("side_moves")
    rise, run = use.said("stated_slope")
    limit = use.limit("slope_said_tolerance")
    off = {move: abs(move.by - rise / run * move.back) for move in whole}
    move = max(whole, key=lambda one: off[one])
    reckoned = {"by_in": move.by, "slope_makes_in": rise / run * move.back, "limit_in": limit}
    kept = {"limit": limit, "reckoned": reckoned, "tells": {"rise": rise, "run": run, "back": move.back}}
    if off[move] <= limit:
        return use.meets("agree", **kept)
    allowed = use.limit("slope")[0] / use.limit("slope")[1]
    if rise / run <= allowed and all(one.back >= _needed(use, one.by)[1] for one in whole):
        return use.unclear("both-within", "side_moves", **kept)
    return use.departs("disagree", **kept)


SLOPE_AGREES = Rule(
    id="slope-agrees",
    concerns=("transition",),
    weight="must",
    silent="not due",
    may_stand=(),
    limits=("slope_said_tolerance", "slope"),
    source=Source("", "c"),
    judge=slope_agrees,
    examples=(
        Example("Transition five, top down three, back eighteen, slope two in twelve.", "meets", "agree"),
        Example("Transition five, top down four, back eighteen, slope two in twelve.", "departs", "disagree"),
        Example("Transition five, top down two, back twenty-four, slope two in twelve.", "unclear", "both-within"),
    ),
)


# --- angles


def degrees(rise: Fraction, run: Fraction) -> Fraction:
    """The angle of a slope, to a thousandth of a degree."""
    return Fraction(str(round(math.degrees(math.atan2(rise, run)), 3)))


def transition_angle(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    moves = [move for move in use.peek("side_moves") or () if move.by is not None and move.back and move.side and move.way]
    if not moves:
        return None
    use.said("side_moves")
    opens = "in" if against_the_air(piece) else "out"
    use.known("service")
    angles = []
    for pair in (UPRIGHT, FLAT):
        signed = [degrees(move.by, move.back) * (1 if move.way == opens else -1) for move in moves if move.side in pair]
        angles.append(sum(signed, Fraction(0)))
    widest, limit = max(angles), use.limit("widening_angle")
    if widest <= 0:
        return None
    answer = use.meets if widest <= limit else use.departs
    reckoned = {"angle": widest, "limit": limit}
    return answer("gentle" if widest <= limit else "too-wide", limit=limit, reckoned=reckoned)


TRANSITION_ANGLE = Rule(
    id="transition-angle",
    concerns=("transition",),
    weight="keep",
    silent="not due",
    may_stand=(),
    limits=("widening_angle",),
    source=Source("TR-02", "a", "ashrae-fundamentals"),
    judge=transition_angle,
    examples=(
        Example("Transition five, twenty by eleven to twenty by fourteen, top up three, back eighteen.", "meets", "gentle"),
        Example("Transition five, twenty by ten to twenty by sixteen, top up three, back eighteen, bottom down three, back eighteen.", "departs", "too-wide"),
        Example("Transition five, twenty by fourteen to twenty by eleven, top down three, back eighteen.", None),
    ),
)


def offset_angle(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    between = "taper_length" if use.peek("taper_length") else "length"
    if use.peek("offset_by") is None or not use.peek(between):
        return None
    by, run = use.said("offset_by"), use.said(between)
    return use.meets("recorded", reckoned={"angle": degrees(by, run), "offset_in": by, "run_in": run})


OFFSET_ANGLE = Rule(
    id="offset-angle",
    concerns=("offset",),
    weight="keep",
    silent="not due",
    may_stand=(),
    limits=(),
    source=Source("OF-02", "c"),
    judge=offset_angle,
    examples=(
        Example("Offset eight, sixteen by ten, offset six inches over thirty-six.", "meets", "recorded"),
        Example("Offset eight, sixteen by ten, offset six inches.", None),
    ),
)
