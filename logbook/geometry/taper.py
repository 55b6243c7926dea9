"""The sides of a transition as said: how far each comes in or goes out, and what is left unexplained.

Sizes have no order, moves have one: the pairing of the two sizes that the moves explain best tells which number
is the width. Pure arithmetic on exact inches; nothing that was not said is filled in, it is marked as not said.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from itertools import product

from logbook.facts import Move
from logbook.geometry.spoken import Spoken

AXES = {"plan": ("left", "right"), "side": ("top", "bottom")}


@dataclass(frozen=True)
class Side:
    """One side: `inward` inches (negative: outward) over `back` inches.

    `how` is `said`, `level` (said flat), `even` (not mentioned, and the sizes leave nothing for it to move) or
    `unsaid`: it must move, or may, and nobody said how far. `inward` is then the share that the sizes leave, for the drawing only.
    """

    name: str
    how: str
    inward: Fraction
    back: Fraction | None
    move: Move | None = None


@dataclass(frozen=True)
class View:
    """The duct on one axis: its size at both ends (None: not said) and the two sides, the upper one first.

    `inlet_at` and `outlet_at` tell which number of the spoken size this is.
    """

    axis: str
    inlet: Fraction | None
    outlet: Fraction | None
    inlet_at: int
    outlet_at: int
    sides: tuple[Side, Side]


def views(spoken: Spoken) -> tuple[View, View]:
    """Seen from above, seen from the side."""
    moves = {move.side: move for move in spoken.value("side_moves") or () if move.side}
    level = set(spoken.value("level_sides") or ())
    inlet, outlet = spoken.value("inlet_size"), spoken.value("outlet_size")
    first, second = _pairing(inlet, outlet, moves)
    return tuple(
        _view(axis, place, inlet, outlet, first, second, moves, level) for place, axis in enumerate(("plan", "side"))
    )


def _signed(move: Move | None) -> Fraction | None:
    if move is None or move.by is None:
        return None
    return -move.by if move.way == "out" else move.by


def _pairing(inlet, outlet, moves) -> tuple[bool, bool]:
    """Whether inlet and outlet are turned against the way they were said, so that the moves explain the change."""
    if inlet is None or outlet is None:
        return False, False
    moved = [sum((_signed(moves.get(name)) or Fraction(0) for name in AXES[axis]), Fraction(0)) for axis in ("plan", "side")]

    def misfit(turned):
        a = inlet[::-1] if turned[0] else inlet
        b = outlet[::-1] if turned[1] else outlet
        return sum(abs(a[axis] - b[axis] - moved[axis]) for axis in (0, 1)), sum(turned)

    return min(product((False, True), repeat=2), key=misfit)


def _view(axis, place, inlet, outlet, inlet_turned, outlet_turned, moves, level) -> View:
    inlet_at, outlet_at = (place ^ inlet_turned), (place ^ outlet_turned)
    start = None if inlet is None else inlet[inlet_at]
    end = None if outlet is None else outlet[outlet_at]
    change = None if start is None or end is None else start - end
    known = {name: _signed(moves.get(name)) for name in AXES[axis]}
    known |= {name: Fraction(0) for name in AXES[axis] if name in level and known[name] is None}
    open_sides = [name for name in AXES[axis] if known[name] is None]
    explained = sum((inward for inward in known.values() if inward is not None), Fraction(0))
    left = None if change is None else change - explained
    return View(
        axis, start, end, inlet_at, outlet_at,
        tuple(_side(name, moves.get(name), known[name], left, len(open_sides)) for name in AXES[axis]),
    )  # fmt: skip


def _side(name, move, inward, left, sharing) -> Side:
    if inward is not None:
        return Side(name, "said" if move else "level", inward, move.back if move else None, move)
    share = Fraction(0) if left is None else left / sharing
    how = "even" if left == 0 and move is None else "unsaid"
    return Side(name, how, share, move.back if move else None, move)
