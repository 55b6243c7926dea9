"""A fact's value as somebody pressed or sent it, checked against the table of facts."""

from __future__ import annotations

import re
from fractions import Fraction

from logbook import facts
from logbook.mistake import Mistake

_EXACT = re.compile(r"-?\d{1,9}(?:\.\d{1,9})?(?:/[1-9]\d{0,8})?")
_MAY_BE_BELOW_ZERO = {"static_pressure", "surface_temperature", "air_temperature", "leak_pressure"}
_MAY_BE_ZERO = {"gap", "sides_stapled", "sides_taped", "damage_width", "leak_flow"}
LONGEST_TEXT = 200


def read_value(name: str, given: object, exact: object = None) -> object | Mistake:
    """The value of fact `name` inside the process; lengths in inches, as everywhere in the documents.

    A `Mistake` where there is no such fact, or the value is not one of its shape or choice.
    """
    row = facts.BY_NAME.get(name)
    if row is None:
        return Mistake("joining.no-such-fact", name, {"name": name})
    wrong = Mistake("joining.bad-value", name, {"name": name, "shape": _expected(row), "came": repr(given)[:80]})
    source = given if exact is None else exact
    match row.shape:
        case "flag":
            return given if isinstance(given, bool) else wrong
        case "choice":
            return given if given in row.values else wrong
        case "text":
            good = isinstance(given, str) and given.strip() and len(given) <= LONGEST_TEXT and given.isprintable()
            return given.strip() if good else wrong
        case "count":
            value = given if isinstance(given, int) and not isinstance(given, bool) else None
            allowed = str(value) in row.values if row.values else value is not None and _in_range(name, value)
            return value if value is not None and allowed and value <= 2000 else wrong
        case "length" | "angle" | "number":
            value = _number(source)
            return wrong if value is None or not _in_range(name, value) else value
        case "size" | "slope":
            if not isinstance(source, list | tuple) or len(source) != 2:
                return wrong
            both = tuple(_number(one) for one in source)
            return wrong if any(one is None or one <= 0 for one in both) else both
        case "sides" | "marks":
            words = facts.SIDES if row.shape == "sides" else None
            good = isinstance(given, list | tuple) and all(isinstance(one, str) and one.strip() for one in given)
            if not good or (words and not set(given) <= set(words)) or len(set(given)) != len(given):
                return wrong
            return tuple(given)
    return _moves(source) or wrong


def _moves(given: object) -> tuple[facts.Move, ...] | None:
    if not isinstance(given, list | tuple) or not given:
        return None
    moves = []
    for one in given:
        if not isinstance(one, dict) or set(one) != {"side", "by", "back", "way"}:
            return None
        by, back = (None if one[part] is None else _number(one[part]) for part in ("by", "back"))
        unread = any(one[part] is not None and read is None for part, read in (("by", by), ("back", back)))
        if unread or one["side"] not in (*facts.SIDES, None) or one["way"] not in ("in", "out", None):
            return None
        if (by is not None and by < 0) or (back is not None and back <= 0):
            return None
        moves.append(facts.Move(one["side"], by, back, one["way"]))
    return tuple(moves)


def _number(given: object) -> Fraction | None:
    if isinstance(given, bool) or not isinstance(given, int | float | str | Fraction):
        return None
    text = str(given)
    return Fraction(text) if isinstance(given, Fraction) or _EXACT.fullmatch(text) else None


def _in_range(name: str, value: Fraction | int) -> bool:
    return value > 0 or name in _MAY_BE_BELOW_ZERO or (value == 0 and name in _MAY_BE_ZERO)


def _expected(row: facts.FactName) -> str:
    words = row.values or (facts.SIDES if row.shape == "sides" else ())
    unit = f" {row.unit}" if row.unit else ""
    return f"{row.shape}{unit}" + (f": {', '.join(words)}" if words else "")
