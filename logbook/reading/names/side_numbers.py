"""Numbers that count sides and name no piece."""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row


def side_numbers(row: Row) -> set[int]:
    """The "tres" of "engrapé tres lados y encinté tres", the "uno" of "tres lados encintados y uno no": counts of sides, and no piece's number."""
    counted = row.find("NUM SIDE_WORD (?:AND|COMMA|BUT){1,2} (?:STAPLED|TAPED) ONLY? (?P<n>NUM) (?=SEP|$)")
    left = row.find("NUM SIDE_WORD (?:BE)? (?:STAPLED|TAPED) (?:AND|COMMA|BUT){1,2} (?P<n>NUM) NOT (?=SEP|$)")
    both = [m for m in row.find("(?P<n>NUM) (?:STAPLED|TAPED) (?:COMMA|AND){1,2} (?P<n2>NUM) (?:STAPLED|TAPED)") if _of_sides(row, m)]  # "not three sides, four. Four stapled, four taped"
    return {m.start("n") for found in (counted, left, both) for m in found} | {m.start("n2") for m in both}


def _of_sides(row: Row, match) -> bool:
    """Whether sides were spoken of right before, and neither number is more than a piece has."""
    before = [item.concept for item in row.items[max(0, match.start() - 5) : match.start()]]
    return "SIDE_WORD" in before and all(row.items[match.start(n)].value.value <= 4 for n in ("n", "n2"))
