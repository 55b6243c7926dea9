"""Two pieces and a measure for each ("on the first twelve apart, on the second fourteen", "9 at two and 10 at two and a half"): each measure is of its own piece."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.names.headings import Mention
from logbook.reading.words.phrasing import word
from logbook.reading.composed.size_pairs import LENGTHS

_LEADS = ("ON", "AT", "BE", "HAVE", "EVERY", "STAPLED", "STAPLES", "COMMA", "DET", "ONLY", "HEDGE", "FILLER", "IT", "MOVE", "TO", "NUM", "SPACING")
_STARTS = ("COMMA", "STOP", "AND", "BUT", "ON", "OF", "DET", "")


def first_and_second(row: Row, named: list[Mention], claims: list[Claim], language: Language) -> list[Claim]:
    """The claims, where what was told by such a pair is told of each of the two."""
    marks = list(dict.fromkeys(mark for one in named for mark in (one.mark, *(mark for mark, _ in one.batch)) if mark is not None))
    if len(marks) != 2:
        return claims
    text = row.text.lower()
    either = word(language.code, "told.first_and_second")
    places = [(at, marks[0] if match["first"] else marks[1]) for match in either.finditer(text) for at in [next((k for k, item in enumerate(row.items) if item.start >= match.start("n")), None)] if at is not None]
    again = [at for mark in marks for at in _said_of(row, mark)[1:]]
    places += [(at, row.words(at, at + 1)) for at in again if row.items[at - 1].concept in _STARTS or row.items[at - 1].concept.startswith("K_")]
    places.sort()
    for (one, its), (other, others) in zip(places, places[1:]):
        if its != others and row.sentence_end(one) == row.sentence_end(other):
            claims = _told_apart(row, claims, (one, its), (other, others))
    return claims


def _said_of(row: Row, mark: str) -> list[int]:
    """Where a piece is named."""
    return [at for at, item in enumerate(row.items) if item.concept in ("NUM", "MARKED") and row.words(at, at + 1) == mark]


def _told_apart(row: Row, claims: list[Claim], one: tuple[int, str], other: tuple[int, str]) -> list[Claim]:
    end = row.sentence_end(other[0])
    before = _measure_before(row, one[0]), _measure_before(row, other[0])
    behind = _measure_behind(row, one[0], other[0]), _measure_behind(row, other[0], end)
    x, y = before if None not in before and before[0] < one[0] < before[1] else behind
    if x is None or y is None:
        return claims
    told = next((c for c in claims if (x in c.uses or y in c.uses) and type(c.value) is Fraction and c.for_mark is None and not c.kinds), None)
    if told is None:
        name = _name(row, one[0], x)
        return claims if name is None else [*(c for c in claims if not (c.kinds and (x in c.uses or y in c.uses))), *(claim(row, name, row.items[at].value.value, at, at + 1, uses=(at,), said_unit=unit_of(row.items[at]), for_mark=mark) for at, (_, mark) in ((x, one), (y, other)))]
    kept = [c for c in claims if not ((c.name == told.name or c.kinds) and (x in c.uses or y in c.uses))]
    return [*kept, *(_of(row, told, at, mark, x if at == y else y) for at, (_, mark) in ((x, one), (y, other)))]


def _name(row: Row, one: int, x: int) -> str | None:
    """ "Both stapled, 9 at two and 10 at three": what is spaced, where nothing else was told of before."""
    before = {row.items[at].concept for at in range(row.sentence_start(one), one)}
    spaced = {row.words(at, at + 1).lower() for at in range(one, x)} & {"at", "every"}
    if before & {"TAPED", "TAPE"} and before.isdisjoint(("STAPLED", "STAPLES", "SIZE", "DAMAGE", "GAP")) and row.items[x].concept == "LEN" and row.items[x].value.value <= _WIDEST:
        return "tape_width"
    return "staple_spacing" if spaced and before & {"STAPLED", "STAPLES"} and before.isdisjoint(_OTHERS) else None


_WIDEST = 4  # inches, of tape
_OTHERS = frozenset("TAPE TAPED TABS SCREWS K_HANGER CLOSURE LEG WASHERS STATIC".split())


def _of(row: Row, told: Claim, at: int, mark: str, other: int) -> Claim:
    item = row.items[at]
    if at in told.uses:
        return replace(told, for_mark=mark, fills=False)
    value = item.value.value
    unit = row.items[other].value
    if item.concept in ("NUM", "FRAC") and row.items[other].concept == "LEN" and unit.raw:
        value *= unit.value / unit.raw
    return claim(row, told.name, value, at, at + 1, uses=(at,), said_unit=unit_of(item) or told.said_unit, for_mark=mark)


def _measure_before(row: Row, at: int) -> int | None:
    """ "two on the first" """
    at -= 1
    on = False
    while at >= 0 and (row.items[at].concept in ("DET", "ON", "OF", "APART", "TAPE", "FITTING") or row.items[at].concept.startswith("K_")):
        on = on or row.items[at].concept in ("ON", "OF")
        at -= 1
    return at if on and at >= 0 and row.items[at].concept in LENGTHS else None


def _measure_behind(row: Row, at: int, end: int) -> int | None:
    """ "the first at two", "on the first twelve apart" """
    for place in range(at + 1, end):
        if row.items[place].concept in LENGTHS and not (row.items[place].value.value == 1 and row.words(place, place + 1).lower() == "one"):
            return place
        if row.items[place].concept not in _LEADS or row.items[place].concept == "COMMA" and place > at + 1:
            return None
    return None
