"""One thing measured on several parts of a piece ("stapled at two on the sides, at three on the top", "tape three wide, two on the bottom"): the worst of them counts for the piece."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import word
from logbook.reading.composed.size_pairs import LENGTHS
from logbook.record import record

_STAPLES, _TAPE = frozenset("STAPLED STAPLES STAPLE EVERY APART".split()), frozenset("TAPE TAPED CLOSURE MARK181 WIDE".split())


@record
class Measured:
    worst: object  # of several
    things: frozenset[str]  # what may be named beside it
    least: Fraction  # inches
    most: Fraction


MEASURED = {
    "staple_spacing": Measured(max, _STAPLES, Fraction(1, 2), Fraction(12)),
    "screw_spacing": Measured(max, frozenset(("SCREWS", "EVERY", "APART")), Fraction(3), Fraction(48)),
    "tape_width": Measured(min, _TAPE, Fraction(1), Fraction(4)),
    "staple_leg": Measured(min, frozenset(("STAPLES", "STAPLE", "LEG", "LONG")), Fraction(1, 8), Fraction(1)),
    "cross_tab_spacing": Measured(max, frozenset(("TABS", "EVERY", "APART")), Fraction(3), Fraction(48)),
    "cross_tab_length": Measured(min, frozenset(("TABS", "LONG")), Fraction(3), Fraction(24)),
    "hanger_spacing": Measured(max, frozenset(("K_HANGER", "EVERY", "APART")), Fraction(24), Fraction(240)),
}
_COUNTED = {"staple_spacing": "sides_stapled", "tape_width": "sides_taped"}
_PARTS = frozenset("SIDE SIDE_WORD SIDES_ALL ONE_SIDE OTHER_SIDE JOINT END PANEL".split())
_BETWEEN = frozenset("FROM BY ON IN DOWN AT DET BE EVERY APART WIDE LONG LEG TAPE CLOSURE COMMA AROUND OVER OF ALL BOTH ONLY THROUGH HAVE AND FILLER".split())
BARS = frozenset("STAPLED STAPLES STAPLE TAPE TAPED CLOSURE MARK181 TABS LEG SCREWS WASHERS K_HANGER GAP DAMAGE SIZE BOARD STATIC MOVE MOVE_IN MOVE_OUT MOVE_UP MOVE_DOWN OFFSETS SLOPE VANES RUBBED RUB REDID FIX BACK BY COUNTED TIMES FLAP".split())
MOVED = ("IN", "OUT", "UP", "DOWN", "BACK", "OVER", "MOVE_IN", "MOVE_OUT", "MOVE_UP", "MOVE_DOWN", "OFFSETS", "SLOPE", "THROAT")  # before a measure: how far a side moves
_FARTHEST = 5  # items between a measure and its part


def part_by_part(row: Row, claims: list[Claim], marks: set[str], language: Language) -> list[Claim]:
    """The claims, with the worst of the parts alone."""
    told = [one for one in claims if one.name in MEASURED and type(one.value) is Fraction and one.uses and not one.took_back and one.for_mark is None]
    if not told:
        return claims
    several = [at for at, item in enumerate(row.items) if item.concept in LENGTHS and not (item.concept == "NUM" and item.value.value == 1 and not item.value.digits)]  # "the rest is the right one" measures nothing
    if len(several) < 2 or word(language.code, "told.part_by_part").search(row.text.lower()) is None:
        return claims
    for name in dict.fromkeys(one.name for one in told):
        mine = [one for one in told if one.name == name]
        claims = _worst(row, claims, name, mine, several, marks, language)
    return claims


def _worst(row: Row, claims: list[Claim], name: str, mine: list[Claim], several: list[int], marks: set[str], language: Language) -> list[Claim]:
    of = MEASURED[name]
    first = mine[0]
    begin, end = row.sentence_start(first.first), row.sentence_end(first.first)
    spent = {at for one in claims if one.name != name and type(one.value) is not bool for at in one.uses}
    used = {at for one in mine for at in one.uses}
    low, high = min(used), max(used)
    factor = _factor(row, used)
    size = lambda at: row.items[at].value.value * (factor if row.items[at].concept == "NUM" else 1)  # noqa: E731
    placed = {}
    for at in several:
        fits = begin <= at < end and at not in spent and not row.is_blank(at) and row.items[at - 1].concept not in MOVED and row.words(at, at + 1) not in marks and not (at not in used and _counts_parts(row, at, language)) and of.least <= size(at) <= of.most
        if fits and (at in used or not any(bars(row, k, of, marks) for k in range(min(at, high) + 1, max(at, low)))):
            part = _part(row, at, begin, end, language)
            if part is not None or at in used:
                placed[at] = part
    parts = [part for part in placed.values() if part is not None]
    if not parts or len(placed) < 2 or len(set(parts)) < len(parts) or any(row.items[k].concept in ("FIX", "REDID", "CONDITION", "IF") for k in range(begin, end)):
        return claims
    if any(one.corrects for one in mine) or word(language.code, "told.done_anew").search(row.words(min(placed), end).lower()) is not None:
        return claims  # "every three across the bottom, then I fixed that": by now it is otherwise
    values = {at: size(at) for at in placed}
    at = of.worst(values, key=values.get)
    claims = [one for one in claims if not (one.name == _COUNTED.get(name) and begin <= one.first < end)]
    if len(set(values.values())) < 2:
        return claims
    keep = next((one for one in mine if at in one.uses), None)
    others = tuple((one.start, one.end) for one in mine if one is not keep and begin <= one.first < end)
    kept = [one for one in claims if not (one.name == name and begin <= one.first < end)]
    if keep is None:
        keep = claim(row, name, values[at], at, at + 1, uses=(at,), said_unit=unit_of(row.items[at]))
    return [*kept, replace(keep, weak=False, also=(*keep.also, *others))]


def bars(row: Row, at: int, of: Measured, marks: set[str]) -> bool:
    """Whether something else is told of there, or another piece; "down one side of straight 41" names the piece."""
    concept = row.items[at].concept
    if concept.startswith("K_") and concept not in of.things:
        return not (at + 1 < len(row.items) and row.words(at + 1, at + 2) in marks and len(marks) == 1)
    return concept in BARS and concept not in of.things


def _factor(row: Row, used: set[int]) -> Fraction:
    """ "60 mm apart down one side, the rest are 45": in the unit that was told with the first."""
    values = [row.items[at].value for at in used if row.items[at].concept == "LEN" and row.items[at].value.unit in ("mm", "cm") and row.items[at].value.raw]
    return values[0].value / values[0].raw if values else Fraction(1)


def _part(row: Row, at: int, begin: int, end: int, language: Language) -> int | None:
    """The item of the part of the piece that a measure is told of: "three on the top", "the top at three"."""
    for place in range(at + 1, min(end, at + _FARTHEST)):
        if _is_a_part(row, place, language):
            led = any(row.items[k].concept in ("ON", "IN", "DOWN", "AT", "OVER", "AROUND", "THROUGH") for k in range(at + 1, place)) or row.items[place - 1].concept in ("FROM", "OF", "BY") and row.items[at - 1].concept in ("TO", "EVERY")  # "a tres del otro"
            return place if place == at + 1 or led or row.items[place].concept == "WORD" else None
        if row.items[place].concept not in _BETWEEN or row.items[place].concept in ("COMMA", "AND"):
            break
    for place in range(at - 1, max(begin - 1, at - _FARTHEST), -1):
        if _is_a_part(row, place, language):
            return place
        if row.items[place].concept == "NUM" and place > begin and _is_a_part(row, place - 1, language):
            continue  # "the last two are three apart"
        if row.items[place].concept not in (*_BETWEEN, "TO") or row.items[place].concept in ("COMMA", "AND"):
            break
    return None


def _counts_parts(row: Row, at: int, language: Language) -> bool:
    """ "Three inch tape, but one panel isn't seated": how many of them, and no width."""
    item = row.items[at]
    if item.concept != "NUM" or item.value.value not in (1, 2, 3, 4) or at + 1 >= len(row.items):
        return False
    return _is_a_part(row, at + 1, language) and (item.value.value == 1 or row.words(at + 1, at + 2).lower().endswith("s"))


def _is_a_part(row: Row, place: int, language: Language) -> bool:
    concept = row.items[place].concept
    return concept in _PARTS or concept in ("WORD", "FILLER", "GENERIC", "ANOTHER", "DET", "LEG", "BACK") and word(language.code, "told.part_by_part").fullmatch(row.words(place, place + 1).lower()) is not None
