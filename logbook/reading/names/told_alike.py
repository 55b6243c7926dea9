"""What is told of one piece and only measured of the next: "stapled 1 at two, 2 at four, 3 at two".

A small number behind "at" and right behind a piece's name is how far apart its staples are, where those of the piece before it were told so in the same
sentence or the one before; nothing else is told between.
"""

from __future__ import annotations

from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.mention import Mention

_AT = ("at", "@", "a")
_ENDS = ("COMMA", "STOP", "AND", "BUT")
_LEAST, _MOST = 1, 12  # inches
_BETWEEN = frozenset("COMMA STOP AND BUT FILLER DET NUMBER FITTING BE WITH APART STAPLES GENERIC".split())


def told_alike(row: Row, named: list[Mention], claims: list[Claim], taken: set[int]) -> tuple[list[Mention], list[Claim]]:
    """The pieces, without those that such a number would name, and the claims with the spacings, each with its staples."""
    if not any(one.name == "staple_spacing" for one in claims):
        return named, claims
    made: list[Claim] = []
    for one in sorted((m for m in named if m.mark_at is not None), key=lambda m: m.first):
        at = one.mark_at[1]
        if at + 1 >= len(row.items) or row.items[at].concept != "ON" or row.words(at, at + 1).lower() not in _AT or row.is_blank(at):
            continue
        item, ahead = row.items[at + 1], row.items[at + 2].concept if at + 2 < len(row.items) else "STOP"
        if item.concept not in ("NUM", "LEN") or not _LEAST <= item.value.value <= _MOST or ahead not in _ENDS:
            continue
        start = row.sentence_start(one.first)
        start = row.sentence_start(start - 1) if start == one.first and start > 1 else start
        before = [c for c in (*claims, *made) if c.name == "staple_spacing" and start <= c.first < one.first]
        told = max(before, key=lambda c: c.first, default=None)
        if told is None or any(row.items[k].concept not in _BETWEEN for k in range(told.last, one.first)):
            continue
        taken.add(at + 1)
        made.append(claim(row, "staple_spacing", item.value.value, at, at + 2, uses=(at + 1,), said_unit=unit_of(item)))
        made.append(claim(row, "stapled", True, at, at + 2, weak=True))
    spent = {at for one in made for at in one.uses}
    return [m for m in named if m.mark_at is None or m.mark_at[0] not in spent], [*claims, *made]
