""" "No gaps except at the heel", "no gap but one": what is told behind a joint without gaps has one."""

from __future__ import annotations

from logbook.reading.clauses.claims import Claim, Open, claim, unit_of
from logbook.reading.clauses.denials import ACTS
from logbook.reading.clauses.grammar import Row

_BETWEEN = ("COMMA", "WORD", "ALL", "AROUND", "ON", "IN", "DET", "JOINT", "OVER")
_LEADS = ("DET", "ON", "IN", "OF", "FILLER", "ONLY", "BACK")
_PARTS = ("JOINT", "SIDE", "SIDE_WORD", "END", "THROAT", "ONE_SIDE", "OTHER_SIDE", "GAP", "WHEN", "FLAP")
_OF_THE_WORK = frozenset((*ACTS, "PENDING", "NOT_DONE", "NOT")) - {"SHOWS"}
_FAR = 6  # items
_WIDEST = 2  # inches


def gap_at_one(row: Row, claims: list[Claim]) -> list[Claim]:
    made: list[Claim] = []
    measured = {at for one in claims if one.name == "gap" and one.value > 0 for at in range(one.first, one.last) if row.items[at].concept == "GAP"}
    for one in claims:
        if measured and one.name == "(open)" and not one.pending and not measured.isdisjoint(range(one.first, one.last)):
            continue  # "there's a gap, it's a quarter": its measure tells of it
        none = one.name == "gap" and one.value == 0 and not one.corrects and any(item.concept == "GAP" for item in row.items[one.first : one.last])
        at = _left_out(row, one) if none else None
        made.append(one if at is None else _open(row, one, at))
    return made


def _left_out(row: Row, one: Claim) -> int | None:
    """The item of the part, or of the one gap, that is left out of what was said."""
    at = one.last
    while at < len(row.items) and row.items[at].concept in _BETWEEN and at - one.last < _FAR:
        at += 1
    if at >= len(row.items) or row.items[at].concept not in ("EXCEPT", "ALL_BUT", "BUT"):
        return None
    but, at = row.items[at].concept == "BUT", at + 1
    first = at
    while at < len(row.items) and row.items[at].concept in _LEADS:
        at += 1
    if at == len(row.items) or any(row.items[k].concept in _OF_THE_WORK for k in range(at, row.sentence_end(at))):
        return None
    alone = row.items[at].concept == "NUM" and not row.items[at].value.digits and row.items[at].value.value == 1
    on_a_back = at > first and any(row.items[k].concept == "BACK" for k in range(first, at))
    if alone or not but and (on_a_back or row.items[at].concept in _PARTS or at - first > 0 and row.items[first].concept in ("ON", "IN")):
        return at
    return None


def _open(row: Row, one: Claim, at: int) -> Claim:
    """Of the size that is told for it, or without one."""
    until = min(row.sentence_end(at), at + _FAR)
    size = next((k for k in range(at, until) if row.items[k].concept in ("LEN", "FRAC") and row.items[k].value.value <= _WIDEST), None)
    if size is not None:
        return claim(row, "gap", row.items[size].value.value, one.first, size + 1, uses=(size,), said_unit=unit_of(row.items[size]), hedged=False)
    last = min(at + 1, len(row.items))
    return claim(row, "(open)", None, one.first, last, opens=(Open("piece", None, row.items[one.first].start, row.items[last - 1].end),), hedged=False)
