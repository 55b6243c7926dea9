"""A measure that does not hold all the way: "two inches, then past the middle they go to three", "every eight feet but the last span is ten". The worst of it counts for the piece."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.compared.part_by_part import MEASURED, bars
from logbook.reading.words.phrasing import word
from logbook.reading.composed.size_pairs import LENGTHS

_LED = frozenset("BE TO ON EVERY HEDGE MOVE ONLY OUT WORD FILLER COMMA THIS IT THROUGH BY OPENING GENERIC AROUND".split())
_COUNTS = frozenset("SIDE_WORD SIDE JOINT STAPLES STAPLE TABS SCREWS WASHERS TAPE CLOSURE PANEL END COUNTED K_HANGER BY OF DEG MINUTES LONG HIGH BACK TIMES DAYS".split())
_TAKEN_BACK = frozenset("FIX REDID CONDITION IF SHOULD_HAVE NOT WILL GOING_TO PENDING DRAWING SAYS DAMAGE GAP".split())
_FAR = 26  # items behind the first measure


def measured_again(row: Row, claims: list[Claim], marks: set[str], language: Language) -> list[Claim]:
    """The claims, with the worst of what was measured in one breath."""
    told = [one for one in claims if one.name in MEASURED and type(one.value) is Fraction and one.uses and not one.took_back and not one.corrects and one.for_mark is None]
    if not told or sum(item.concept in LENGTHS for item in row.items) < 2 or not word(language.code, "told.does_not_hold").may(row.text.lower()):
        return claims
    spent = {at for one in claims if type(one.value) is not bool for at in one.uses}
    for one in told:
        if any(other.name == one.name and (other.value != one.value or other.first > one.first) for other in told):
            continue
        again = _again(row, one, spent, marks, language)
        if again is not None:
            claims = [replace(again, also=((one.start, one.end),)) if c is one else c for c in claims]
    return claims


def _again(row: Row, one: Claim, spent: set[int], marks: set[str], language: Language) -> Claim | None:
    """The measure of the same thing that is told behind and is worse; none where it is not sure to be of the same."""
    of, first = MEASURED[one.name], max(one.uses)
    stops = 0
    for at in range(first + 1, min(first + _FAR, len(row.items))):
        item = row.items[at]
        stops += item.concept in ("STOP", "QUERY")
        if stops > 1 or row.is_blank(at) or item.concept in _TAKEN_BACK or bars(row, at, of, marks):
            return None
        if item.concept not in LENGTHS or at in spent or not _is_led(row, at, marks):
            continue
        said = row.words(first + 1, at).lower()
        if word(language.code, "told.does_not_hold").search(said) is None or word(language.code, "told.holds_by_now").search(row.words(row.sentence_start(first), row.sentence_end(at)).lower()) is not None:
            continue
        value = item.value.value * _factor(row, first, item)
        if of.least <= value <= of.most and of.worst(value, one.value) == value != one.value:
            return claim(row, one.name, value, at, at + 1, uses=(at,), said_unit=unit_of(item) or one.said_unit, weak=False)
    return None


def _is_led(row: Row, at: int, marks: set[str]) -> bool:
    """Whether the number is a measure, told of something; no piece and no count."""
    item, ahead = row.items[at], row.items[at + 1].concept if at + 1 < len(row.items) else ""
    if row.items[at - 1].concept not in _LED or ahead in _COUNTS or ahead.startswith("K_") or row.words(at, at + 1) in marks:
        return False
    return item.concept != "NUM" or item.value.value.denominator > 1 or row.items[at - 1].concept != "WORD" and item.value.value > 1


def _factor(row: Row, first: int, item) -> Fraction:
    """ "Every eight feet, the last one is ten": in the unit that was told with the first."""
    value = row.items[first].value
    return value.value / value.raw if item.concept == "NUM" and row.items[first].concept == "LEN" and value.unit in ("ft", "mm", "cm", "m") and value.raw else Fraction(1)
