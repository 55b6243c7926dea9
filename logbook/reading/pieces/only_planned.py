"""A piece that is only going to be made: "gonna make 103 after break, it's a wye off the return" tells which, and states nothing."""

from __future__ import annotations

from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.mention import Mention

_TELLS_WHICH = frozenset("(angle) (size) size sizes inlet_size outlet_size branch_size (branch_size) service place run length turn_angle stage collar_diameter".split())


def only_planned(row: Row, named: list[Mention], claims: list[Claim], plans: set[int]) -> bool:
    """Whether a plan comes first, no piece has a mark, and nothing but its kind, its size and where it goes is told of it behind that."""
    if not plans or any(one.mark is not None or one.batch for one in named) or any(one.name not in _TELLS_WHICH for one in claims):
        return False
    first = min((one.first for one in (*named, *claims)), default=-1)
    return first > min(plans) and not any(one.another for one in named)
