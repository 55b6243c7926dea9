"""The press form of a fact: which fields its shape needs, and the JSON value that was pressed.

One table knows the facts; nothing here names one. Lengths may be typed as the trade writes them ("12-1/2").
"""

from __future__ import annotations

from collections.abc import Mapping

from logbook import facts, intake, measure
from logbook.mistake import Mistake

LONGEST_TEXT = 80
MOST_MOVES = 4


def field(name: str, value=None) -> dict:
    """What a template needs to draw the form of a fact: shape, choices, the numbers as they stand."""
    row = facts.BY_NAME[name]
    form = {"name": name, "shape": row.shape, "unit": row.unit, "choices": row.values, "sides": facts.SIDES}
    if row.shape in ("size", "slope"):
        one, other = value or (None, None)
        form |= {"one": _typed(one), "other": _typed(other)}
    elif row.shape == "moves":
        form["moves"] = [
            {"side": m["side"], "way": m["way"], "by": _typed(m["by"]), "back": _typed(m["back"])} for m in value or ()
        ]
    elif row.shape in ("sides", "marks"):
        form["picked"] = value or []
    else:
        form["typed"] = _typed(value) if row.shape in ("length", "angle", "number") else value
    return form


def _typed(value) -> str:
    return "" if value is None else measure.printed(measure.from_json(value))


def value(fields: Mapping[str, str]):
    """The JSON value of the pressed fields (`name` tells the fact), or the Mistake that tells what does not fit."""
    row = facts.BY_NAME.get(fields.get("name", ""))
    if row is None:
        return Mistake("joining.no-such-fact", "name", {"name": intake.shown(fields.get("name"))})
    typed = fields.get("value", "").strip()
    match row.shape:
        case "flag":
            pressed = {"yes": True, "no": False}.get(typed)
        case "choice":
            pressed = typed if typed in row.values else None
        case "count":
            pressed = int(typed) if typed.isdecimal() and len(typed) < 6 else None
        case "text":
            pressed = typed if 0 < len(typed) <= LONGEST_TEXT else None
        case "length" | "angle" | "number":
            pressed = _number(typed)
        case "size" | "slope":
            pair = [_number(fields.get(part, "")) for part in ("one", "other")]
            pressed = None if None in pair else pair
        case "moves":
            pressed = _moves(fields)
        case "sides":
            pressed = [side for side in facts.SIDES if fields.get(f"side-{side}")]
        case "marks":
            pressed = [mark.strip()[:LONGEST_TEXT] for mark in typed.split(",") if mark.strip()]
    return _unfit(row.name) if pressed is None else pressed


def _number(typed: str):
    read = measure.parse(typed.strip().replace(",", ".").replace("−", "-"))
    return None if read is None else measure.in_json(read)


def _moves(fields: Mapping[str, str]) -> list[dict] | None:
    """Rows `side-0`, `way-0`, `by-0`, `back-0`, …; a row without a `by` and a `back` was left empty."""
    moves = []
    for at in range(MOST_MOVES):
        by, back = (fields.get(f"{part}-{at}", "").strip() for part in ("by", "back"))
        if not by and not back:
            continue
        numbers = [None if not typed else _number(typed) for typed in (by, back)]
        if (by and numbers[0] is None) or (back and numbers[1] is None):
            return None
        moves.append(
            {"side": fields.get(f"side-{at}") or None, "by": numbers[0], "back": numbers[1], "way": fields.get(f"way-{at}") or None}
        )
    return moves or None


def _unfit(name: str) -> Mistake:
    return Mistake("pages.unfit-value", name, {"fact": name})
