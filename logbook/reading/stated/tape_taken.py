"""How wide the tape is that went on, named as men name a tape, by its inches alone: "ran out of three inch so the last joint got two inch"."""

from __future__ import annotations

from fractions import Fraction

from logbook.reading.clauses.claims import Found, Frame, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import in_any

_LEAST, _MOST = Fraction(3, 2), 4  # inches; no roll is narrower or wider
_CLOSES = frozenset(("TAPE", "TAPED", "MARK181", "CLOSURE", "UNTAPED"))
_OTHERS = frozenset("STAPLES STAPLED STAPLE LEG GAP DAMAGE BOARD K_HANGER TABS SCREWS SIZE SLOPE OFFSETS K_OFFSET MOVE_IN MOVE_OUT MOVE_UP MOVE_DOWN THROAT GLASS".split())  # measures of other things


def _taken(found: Found):
    row, at, item = found.row, found.at("n"), found.item("n")
    said = row.words(at, at + 1).lower()
    first = row.sentence_start(at)
    if not _LEAST <= item.value.value <= _MOST or not ("inch" in said and "inches" not in said or said.endswith('"')):
        return  # "two inches" is how much, "two inch" is of what sort
    clause = next((k + 1 for k in range(at - 1, first - 1, -1) if row.items[k].concept in ("COMMA", "BUT", "VOID") or row.is_blank(k)), first)
    if not _OTHERS.isdisjoint(one.concept for one in row.items[clause:at]) or not _speaks_of_tape(row, at):
        return
    if in_any("told.tape_taken").search(row.text[row.items[first].start : item.start].lower().strip()) is None:
        return
    wider = any(one.concept == "LEN" and one.value.value > item.value.value and "inches" not in row.words(k, k + 1).lower() for k, one in enumerate(row.items[:at]))
    yield found.claim("tape_width", item.value.value, group="w", uses=("n",), said_unit=unit_of(item), corrects=wider)
    if any(one.concept in ("EXCEPT", "ALL_BUT") for one in row.items[first:at]):
        yield found.claim("taped", True, group="w", corrects=True)  # "three inch except the last side, that one got two inch": it got some


def _speaks_of_tape(row: Row, at: int) -> bool:
    """Whether tape was spoken of before, or another roll that is used up: "out of three inch"."""
    return not _CLOSES.isdisjoint(item.concept for item in row.items[:at]) or in_any("told.tape_used_up").search(row.text[: row.items[at].start].lower()) is not None


FRAMES = (Frame("(?P<w>(?P<n>LEN)) (?=SEP|$|ON|AND|BUT|FILLER|WHEN|AROUND|ALL|OVER|ONLY|WORD)", _taken),)
