"""A thing measured, and measured again in a clause of its own at a part or in another hour: "at two inches, the last stretch by the tee got away from me, that's three".

The worst of them counts for the piece. Measures of one clause are set against one another in `part_by_part`.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.stance import Clause
from logbook.reading.compared.part_by_part import BARS, MEASURED, MOVED, Measured
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain

_AGAIN = {
    "air_temperature": Measured(max, frozenset(), Fraction(100), Fraction(900)),
    "static_pressure": Measured(max, frozenset(("STATIC",)), Fraction(1, 8), Fraction(20)),
    "surface_temperature": Measured(min, frozenset(("TAPED", "TAPE")), Fraction(10), Fraction(100)),
}
_OF = MEASURED | _AGAIN
_SORTS = {"air_temperature": ("NUM", "TEMP_F", "DEG"), "surface_temperature": ("NUM", "TEMP_F", "DEG"), "static_pressure": ("LEN", "FRAC", "NUM", "INWG")}
_LENGTHS = ("LEN", "FRAC", "NUM")
_BEHIND = frozenset("COMMA STOP QUERY AND BUT APART WHEN WITH THIS THERE INSTEAD ON IN".split())  # behind a bare number that measures
_BESIDE = frozenset("LONG HIGH THICK BACK DOWN UP FROM OFF OF BY SIDE_WORD SIDES_ALL JOINT COUNTED STAPLES TABS SCREWS WASHERS K_HANGER STRAPS".split())  # behind a measure of something else
_TURNED = frozenset("FIX REDID CONDITION IF NOT_DONE PENDING WILL GOING_TO NEED QUESTION DRAWING DAMAGE GAP SIZE OFFSETS SLOPE THROAT".split())
_DENIED = frozenset("NOT NO NOT_DONE".split())  # shortly before a measure
_BACK = 3  # clauses


def measured_there(row: Row, not_own: Mapping[int, str], cut: tuple[Clause, ...], claims: list[Claim], marks: set[str], language: Language) -> list[Claim]:
    """The claims, with the worse measure where one was told again."""
    told = [one for one in claims if one.name in _OF and type(one.value) in (Fraction, int) and one.for_mark is None and not one.took_back]
    if not told or not language.told.asides.set_apart.part:
        return claims
    used = {at for one in claims for at in (*one.uses, *(range(one.first, one.last) if one in told else ()))}
    for place in range(1, len(cut)):
        claims = _again(row, not_own, cut, place, claims, told, used, marks, language)
    return claims


def _again(row: Row, not_own: Mapping[int, str], cut: tuple[Clause, ...], place: int, claims: list[Claim], told: list[Claim], used: set[int], marks: set[str], language: Language) -> list[Claim]:
    clause = cut[place]
    planned = next((at for at in range(clause.first, clause.last) if row.items[at].concept in ("WILL", "LATER", "PENDING", "GOING_TO")), None)  # "after that there's a ten foot jump" plans nothing
    sorts = {concept for one in told for concept in _SORTS.get(one.name, _LENGTHS)}
    worse = _told_worse(row, cut, place, claims, told, language)
    if worse is not None:
        return [replace(one, corrects=True, weak=False) if one is worse else one for one in claims]
    measures = [at for at in range(clause.first, clause.last) if row.items[at].concept in sorts and at not in used and (not_own.get(at) is None or not_own[at] == "plan" and planned is None) and row.words(at, at + 1) not in marks]
    if not measures or any(one.name in _OF and clause.first <= one.first < clause.last for one in claims) or not _TURNED.isdisjoint(item.concept for item in row.items[clause.first : clause.last]):
        return claims
    before = _told_before(cut, place, claims, told)
    if before is None or _names_another(row, before, clause, marks):
        return claims
    part = _part(row, cut, place, claims, language)
    if part is None or before.name in _AGAIN:
        found = word(language.code, "told.asides.set_apart.again").search(plain(row.words(clause.first, clause.last))) if before.name in _AGAIN else None
        if found is None:
            return claims
    of = _OF[before.name]
    if any(_bars(row, at, before.name) for at in range(clause.first, clause.last) if part is None or not part[0] <= at < part[1]):
        return claims  # "three-inch tape on all of the seams" tells of no staples
    for at in reversed(measures):
        item = row.items[at]
        if item.concept in _SORTS.get(before.name, _LENGTHS) and not (part is not None and part[0] <= at < part[1]) and of.least <= item.value.value <= of.most and _measures(row, at, before.name) and _DENIED.isdisjoint(each.concept for each in row.items[max(clause.first, at - 4) : at]) and of.worst(item.value.value, before.value) != before.value:
            made = claim(row, before.name, item.value.value, at, at + 1, uses=(at,), said_unit=unit_of(item), corrects=True)
            return [*claims, made]
    return claims


def _bars(row: Row, at: int, name: str) -> bool:
    """Whether something else is told of there."""
    concept = row.items[at].concept
    return concept in BARS and concept not in (*_OF[name].things, "FLAP", "COUNTED") and not concept.startswith("MOVE")


def _told_worse(row: Row, cut: tuple[Clause, ...], place: int, claims: list[Claim], told: list[Claim], language: Language) -> Claim | None:
    """ "The last roll was narrower, two inch": the measure of a part that is worse than what was told before it."""
    clause = cut[place]
    here = [one for one in told if clause.first <= one.first < clause.last and not one.corrects and one in claims]
    if len(here) != 1 or (before := next((one for one in reversed(told) if one.name == here[0].name and one.last <= clause.first), None)) is None:
        return None
    one = here[0]
    if one.name not in MEASURED or MEASURED[one.name].worst(one.value, before.value) == before.value or before.value == one.value:
        return None
    near, part = cut[place - 1], word(language.code, "told.asides.set_apart.part")
    if one.first > clause.first and part.search(plain(row.words(clause.first, one.first))) is not None:
        return one
    apart = part.search(plain(row.words(near.first, near.last))) if near.sentence == clause.sentence else None
    return one if apart is not None and not any(near.first <= each.first < near.last and each.name != "place" for each in claims) else None


def _told_before(cut: tuple[Clause, ...], place: int, claims: list[Claim], told: list[Claim]) -> Claim | None:
    """What was measured last before the clause, where nothing else was told since."""
    for back in range(place - 1, max(-1, place - 1 - _BACK), -1):
        before = cut[back]
        if before.sentence < cut[place].sentence - 1:
            return None
        here = [one for one in told if before.first <= one.first < before.last]
        if here:
            return here[-1]
        if any(before.first <= one.first < before.last and not one.name.startswith("(") and one.name not in ("kind", "mark", "place") for one in claims):
            return None
    return None


def _names_another(row: Row, before: Claim, clause: Clause, marks: set[str]) -> bool:
    """Whether a piece is named between the two."""
    return len(marks) > 1 and any(row.words(at, at + 1) in marks or row.items[at].concept.startswith("K_") for at in range(before.last, clause.last))


def _part(row: Row, cut: tuple[Clause, ...], place: int, claims: list[Claim], language: Language) -> tuple[int, int] | None:
    """The items of the part that the clause is of; "that's three" is of the one told right before it."""
    clause = cut[place]
    said = plain(row.words(clause.first, clause.last))
    pattern = word(language.code, "told.asides.set_apart.part")
    match = pattern.search(said)
    if match is not None:
        return row.within(clause.first, clause.last, match)
    if word(language.code, "told.asides.set_apart.then").match(said) is not None:
        return clause.first, clause.first
    before = cut[place - 1]
    if word(language.code, "told.asides.set_apart.that").match(said) is None or any(before.first <= one.first < before.last and one.name != "place" for one in claims):
        return None
    return (clause.first, clause.first) if pattern.search(plain(row.words(before.first, before.last))) is not None else None


def _measures(row: Row, at: int, name: str) -> bool:
    """Whether a number measures this, and counts nothing."""
    item, ahead = row.items[at], row.items[at + 1].concept if at + 1 < len(row.items) else "STOP"
    if ahead in _BESIDE and not (ahead == "LONG" and name == "cross_tab_length") or at and row.items[at - 1].concept in MOVED and name not in _AGAIN:
        return False
    return item.concept != "NUM" or item.value.value.denominator != 1 or ahead in _BEHIND or item.value.value >= 100
