"""What a cut sheet is asked for: the fields of each kind as somebody writes them, and the sheet or what is wrong.

    lay_out(kind, given, limit) -> CutSheet | Mistake        `given`: field name -> text, as typed on a page or a line
    of_row(row) -> fields of a row of the schedule, or None where the kind has no cut sheet

Sizes are width by height inside, "20x14", "12-1/2 by 10", "500x350 mm"; lengths "24", "12-1/2", "300 mm". A `Mistake`
names the field in `where`, so that a page can put it beside the field and a command can name its flag.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction

from logbook import measure, schedule
from logbook.facts import SIDES
from logbook.geometry import elbow, offset, seams, stock, take_off, transition
from logbook.geometry.cut_sheet import CutSheet
from logbook.mistake import Mistake
from logbook.schedule import Row

# The fields of each kind in the order they are asked; those in NEEDED can't be left empty.
FIELDS: Mapping[str, tuple[str, ...]] = {
    "transition": ("large", "small", "flat", "set_back", "air", "board", "method"),
    "offset": ("size", "by", "over", "axis", "board"),
    "elbow": ("size", "turn", "pieces", "throat", "board", "method"),
    "tee": ("size", "branch", "at", "entry", "board"),
    "branch": ("size", "branch", "at", "entry", "board"),
    "end_cap": ("size", "board"),
    "straight": ("size", "length", "board"),
}
NEEDED: Mapping[str, tuple[str, ...]] = {
    "transition": ("large", "small"), "offset": ("size", "by", "over"), "elbow": ("size",),
    "tee": ("size", "branch"), "branch": ("size", "branch"), "end_cap": ("size",), "straight": ("size", "length"),
}  # fmt: skip
KINDS = tuple(FIELDS)
CHOICES: Mapping[str, tuple[str, ...]] = {"axis": ("width", "height"), "entry": ("45", "square"), "method": ("section", "board"), "air": ("narrows", "widens")}
MOST_PIECES = 12
LONGEST_TEXT = 40  # characters of a size or a length; more digits are none
PIECES = ("2", "3", "4", "5")  # offered for an elbow; more can be asked for
BOARDS = ("1", "1-1/2", "2")
DEFAULTS: Mapping[str, str] = {"board": "1", "method": "section", "axis": "width", "air": "narrows", "turn": "90", "pieces": "2", "throat": "0", "at": "12", "entry": "45"}
SIZES, LENGTHS = ("large", "small", "size", "branch"), ("set_back", "by", "over", "turn", "throat", "at", "length", "board")


def lay_out(kind: str, given: Mapping[str, str], limit: Callable[[str], object]) -> CutSheet | Mistake:
    """The cut sheet, or the first thing that was given wrongly. `limit` is `Job.limit`: its slope, its seams, its end."""
    if kind not in FIELDS:
        return Mistake("layout.bad-kind", "kind", {"came": kind[:40], "kinds": ", ".join(KINDS)})
    text = dict(DEFAULTS) | {name: value.strip() for name, value in given.items() if value and value.strip()}
    if stray := unused(kind, given):
        return Mistake("layout.not-used", ", ".join(stray), {"kind": kind, "fields": ", ".join(stray), "known": ", ".join(used(kind, given))})
    for name in NEEDED[kind]:
        if name not in text:
            return Mistake("layout.needs", name, {"kind": kind, "missing": name})
    values = {}
    for name in FIELDS[kind]:
        values[name] = _value(name, text.get(name))
        if isinstance(values[name], Mistake):
            return values[name]
    if isinstance(known := stock.board(values["board"]), Mistake):
        return known
    for name in FIELDS[kind]:
        if name in SIZES and (refused := stock.no_such_duct(values[name], known.thickness, name)):
            return refused
    size, board, closed = values.get("size"), values["board"], seams.of(limit)
    match kind:
        case "transition":
            rise, run = limit("slope")
            return transition.lay_out(
                transition.Wanted(
                    values["large"], values["small"], values["flat"] or (), Fraction(rise) / Fraction(run), board, values["method"],
                    values["set_back"], seams=closed, widens=values["air"] == "widens",
                )
            )  # fmt: skip
        case "offset":
            return offset.lay_out(size, values["by"], values["over"], values["axis"], board, closed=closed)
        case "elbow" if values["method"] == "board":
            return elbow.radius(size, values["turn"], values["throat"], board, closed=closed)
        case "elbow":
            return elbow.mitred(size, values["turn"], values["pieces"], values["throat"], board, closed=closed)
        case "tee" | "branch":
            return take_off.branch(kind, size, values["branch"], values["at"], values["entry"], board, closed=closed)
        case "end_cap":
            return take_off.end_cap(size, board, closed)
    return take_off.straight(size, values["length"], board, closed)


def used(kind: str, given: Mapping[str, str]) -> tuple[str, ...]:
    """The fields that this fitting is laid out from: a radius elbow of flat board is not put together of pieces."""
    radius = kind == "elbow" and (given.get("method") or "").strip() == "board"
    return tuple(name for name in FIELDS[kind] if not (radius and name == "pieces"))


def unused(kind: str, given: Mapping[str, str]) -> tuple[str, ...]:
    """What was given and the sheet would pass over. A choice that the page always sends is not meant while it stands as it is offered."""
    own, known = used(kind, given), {name for fields in FIELDS.values() for name in fields}
    named = [name for name, value in given.items() if value and value.strip() and name in known - set(own)]
    return tuple(name for name in named if not (name in FIELDS[kind] and given[name].strip() == DEFAULTS.get(name)))


def _value(name: str, text: str | None):
    if text is None:
        return None
    if name in SIZES + LENGTHS and len(text) > LONGEST_TEXT:
        return Mistake(f"layout.bad-{'size' if name in SIZES else 'length'}", name, {"came": text[:LONGEST_TEXT] + "…"})
    if name == "flat":
        sides = tuple(side.strip() for side in text.split(",") if side.strip())
        return sides if set(sides) <= set(SIDES) else Mistake("layout.bad-side", name, {"came": text[:40]})
    if name in SIZES:
        size = schedule.size(text)
        return size if size is not None else Mistake("layout.bad-size", name, {"came": text[:40]})
    if name in LENGTHS:
        length = measure.written(text)
        return length if length is not None and length >= 0 else Mistake(f"layout.bad-{'angle' if name == 'turn' else 'length'}", name, {"came": text[:40]})
    if name == "pieces":
        return int(text) if text.isdecimal() and 2 <= int(text) <= MOST_PIECES else Mistake("layout.bad-choice", name, {"came": text[:40], "known": f"2 – {MOST_PIECES}"})
    if text not in CHOICES[name]:
        return Mistake("layout.bad-choice", name, {"came": text[:40], "known": ", ".join(CHOICES[name])})
    return text


def of_row(row: Row) -> dict[str, str] | None:
    """What the schedule says of a fitting, as fields; what it leaves open is left open. A transition that widens is
    laid out from its other end, so the larger size stands first."""
    if row.kind not in FIELDS:
        return None
    if row.kind == "transition":
        ends = [size for size in (row.inlet, row.outlet) if size is not None]
        ends.sort(key=lambda size: size[0] * size[1], reverse=True)
        found = dict(zip(("large", "small"), ends))
        widens = len(ends) == 2 and ends[0] == row.outlet != row.inlet
    else:
        found = {"size": row.inlet, "branch": row.branch if row.kind in ("tee", "branch") else None}
    fields = {"kind": row.kind} | {name: _written(size) for name, size in found.items() if size is not None}
    if row.kind == "transition" and widens:
        fields["air"] = "widens"
    if row.flat_side and row.kind == "transition":
        fields["flat"] = row.flat_side
    if row.length is not None and row.kind in ("straight", "offset"):
        fields["length" if row.kind == "straight" else "over"] = measure.printed(row.length)
    return fields


def _written(size: tuple[Fraction, Fraction]) -> str:
    return " x ".join(map(measure.printed, size))
