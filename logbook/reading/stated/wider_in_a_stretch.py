""" "Stapled every two, the first few feet are at three", "at the start I was a bit wide, like three": a stretch of the piece in which the staples lie wider.

No word there says staples or how far apart: it is the stretch, told behind the distance of the rest, and a length that is no other thing's. It counts for the piece.
Wider by an unsaid measure leaves the distance in doubt where it was not mended, and so does a measure that was.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row, code
from logbook.reading.clauses.parts import Part
from logbook.reading.words.phrasing import word

_LED = frozenset("ON BE TO EVERY HEDGE THINK FILLER COMMA AROUND CLOSER".split())
_ANOTHERS = frozenset(
    "TAPE TAPED CLOSURE MARK181 TABS LEG SCREWS WASHERS K_HANGER HANG HUNG GAP DAMAGE SIZE BOARD STATIC MOVE MOVE_IN MOVE_OUT MOVE_UP MOVE_DOWN OFFSETS SLOPE VANES"
    " RUBBED RUB FLAP REDID FIX CUT WARMED WIPED FACING DEG TEMP NOT NO".split()
)
_COUNTS = frozenset("WIDE LONG BY BACK SIDE_WORD JOINT STAPLES STAPLE TAPE DEG OF END".split())
_MOST = Fraction(12)  # inches
_FARTHEST = 12  # parts behind the distance


def wider_in_a_stretch(row: Row, looked: Row, taken: set[int], claims: list[Claim], cut_up: tuple[Part, ...], language: Language) -> list[Claim]:
    """The claims, and how far apart the staples are there."""
    told = [one for one in claims if one.name == "staple_spacing" and not one.took_back and one.for_mark is None]
    if len(told) != 1 or type(told[0].value) is not Fraction:
        return claims
    stretch = word(language.code, "told.stretches.stretch")
    if stretch.search(row.text.lower()) is None:
        return claims
    one = told[0]
    behind = [at for at, part in enumerate(cut_up) if part.first >= one.last][:_FARTHEST]
    for at in behind:
        part = cut_up[at]
        if any(item.concept.startswith("K_") or item.concept in ("MARKED", "STAPLES", "STAPLED") for item in row.items[part.first : part.last]):
            return claims
        if row.is_blank(part.first) or not _is_one(row, part, stretch):
            continue
        wide = word(language.code, "told.stretches.wide").search(_told(row, cut_up, at)) is not None
        more = _measure(row, looked, part, taken, one.value)
        if more is None and wide and at + 1 < len(cut_up):
            more = _measure(row, looked, cut_up[at + 1], taken, one.value, alone=True)
        if more is None and not wide:
            continue
        after = row.words(part.last, min(len(row.items), part.last + 40)).lower() if part.last < len(row.items) else ""
        mended = word(language.code, "told.stretches.mended").search(after)
        if more is None and mended is not None:
            return claims
        if more is None or mended is not None:
            return [replace(c, hedged=True) if c is one else c for c in claims]
        taken.update(more.uses)
        return [*claims, more]
    return claims


def _told(row: Row, cut_up: tuple[Part, ...], at: int) -> str:
    """What is said of the stretch: its words, and what runs on from them ("al final más separadas")."""
    part, after = cut_up[at], cut_up[at + 1] if at + 1 < len(cut_up) else None
    if after is None or after.last > row.sentence_end(part.first) or not _ANOTHERS.isdisjoint(item.concept for item in row.items[after.first : after.last]):
        return part.words
    between = row.items[part.last : after.first]
    return part.words if any(item.concept in ("COMMA", "JOINT") for item in between) else row.words(part.first, after.last).lower()


def _is_one(row: Row, part: Part, stretch) -> bool:
    return stretch.search(part.words) is not None and _ANOTHERS.isdisjoint(item.concept for item in row.items[part.first : part.last])


def _measure(row: Row, looked: Row, part: Part, taken: set[int], before: Fraction, alone: bool = False) -> Claim | None:
    """The one length of a part; `alone`: with nothing else in it."""
    found = [at for at in range(part.first, part.last) if row.items[at].concept in ("LEN", "NUM", "FRAC") and at not in taken]
    if len(found) != 1:
        return None
    at = found[0]
    item, ahead = row.items[at], row.items[at + 1].concept if at + 1 < len(row.items) else ""
    led = at == part.first or row.items[at - 1].concept in _LED
    if not led or ahead in _COUNTS or getattr(item.value, "unit", None) == "ft" or not before < item.value.value <= _MOST or looked.string[at] != code(item.concept):
        return None
    if alone and not all(k == at or row.items[k].concept in _LED for k in range(part.first, part.last)):
        return None
    return claim(row, "staple_spacing", item.value.value, at, at + 1, uses=(at,), corrects=True, said_unit=unit_of(item))
