"""One of several told by its measure alone: "110 to 114 are stapled at two except 113, which is at three", "… have three inch tape, 113 has two".

What is measured is what was measured last of all of them.
"""

from __future__ import annotations

from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.mention import Mention

_BOUNDS = {"staple_spacing": (1, 12), "staple_leg": (0, 1), "tape_width": (1, 4), "hanger_spacing": (24, 144), "screw_spacing": (2, 48), "gap": (0, 2), "cross_tab_spacing": (4, 36)}  # inches
_LEADS = frozenset("COMMA THIS BE IT HAVE QUESTION EVERY ON WITH DET ONLY GENERIC HEDGE FILLER OTHER APART AND PARTED MOVE WHEN".split())
_ENDS = frozenset("STOP QUERY COMMA AND BUT APART INCH TAPE STAPLES LEG WIDE GAP CLOSURE GENERIC ON WHEN".split())
_MEASURES = ("NUM", "LEN", "FRAC")
_FAR = 8  # items


def of_one_of_them(row: Row, named: list[Mention], claims: list[Claim]) -> list[Claim]:
    batch = next((one for one in named if len(one.batch) > 1), None)
    if batch is None:
        return claims
    marks = {mark for mark, _ in batch.batch}
    made = claims
    for one in named:
        if one.mark not in marks or one.first <= batch.first or one.mark_at is None:
            continue
        at = measured_at(row, one.mark_at[1])
        told = max((c for c in claims if c.name in _BOUNDS and batch.first <= c.first < one.first and c.for_mark is None), key=lambda c: c.first, default=None)
        if at is None or told is None or any(at in c.uses or c.first <= at < c.last for c in made if c.name in _BOUNDS):
            continue
        value, unit = row.items[at].value.value, _unit_told(row, told)
        if row.items[at].concept != "LEN" and unit is not None:
            value *= unit
        least, most = _BOUNDS[told.name]
        if least <= value <= most:
            made = [*made, claim(row, told.name, value, at, at + 1, uses=(at,), said_unit=unit_of(row.items[at]) or told.said_unit, for_mark=one.mark, corrects=True)]
    return made


def measured_at(row: Row, first: int) -> int | None:
    """The measure that is told right behind a name."""
    for at in range(first, min(first + _FAR, len(row.items))):
        concept = row.items[at].concept
        if concept in _MEASURES:
            single = concept == "NUM" and row.words(at, at + 1).lower() == "one"
            behind = row.items[at + 1].concept if at + 1 < len(row.items) else "STOP"
            return at if not single and behind in _ENDS else None
        if concept not in _LEADS:
            return None
    return None


def _unit_told(row: Row, told: Claim):
    """How many inches the unit of the measure told before has."""
    for at in range(told.first, told.last):
        value = row.items[at].value
        if row.items[at].concept == "LEN" and value.raw:
            return value.value / value.raw
    return None
