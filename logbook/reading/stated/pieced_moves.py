"""How far a side moves and over what length, where the two stand apart: "the left has four inches of taper in sixteen", "three on the right. The taper takes up ten inches".

Read last, from what no frame has taken. Only where the words leave one reading: one side, and no more measures than a move has.
"""

from __future__ import annotations

from dataclasses import dataclass

from logbook.facts import Move
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain

_MEASURES = ("NUM", "LEN", "FRAC")
_MOST, _FEWEST = 12, 6  # inches: what a side moves by at most, and the length that it has at least
_NAMES = ("FITTING", "NUMBER", "RUN", "MARKED", "DASH", "LETTER")
_NOT_BEFORE = ("EVERY", "STAPLED", "STAPLES", "TAPE", "MARK181", "TABS", "LEG", "BOARD", "GAP", "DAMAGE", "STATIC", "AIR", "AIR_TEMP", "TEMP", "BY", "OFFSETS", *_NAMES)
_NOT_BEHIND = ("BY", "BOARD", "TAPE", "TAPED", "CLOSURE", "MARK181", "STAPLES", "STAPLE", "STAPLED", "TABS", "LEG", "SIDE_WORD", "SIDES_ALL", "APART", "WIDE", "HIGH", "ROUND", "DEG", "CFM", "STATIC", "GAP", "DAMAGE", "SCREWS", "WASHERS", "COUNTED", "TIMES", "NUM", "PIECE_COUNT")
_OF_OTHERS = frozenset("STAPLED STAPLES STAPLE TAPED TAPE MARK181 CLOSURE TABS LEG BOARD GAP PARTED DAMAGE K_HANGER SCREWS WASHERS STATIC CFM INWG DEG TEMP_F AIR LB RUBBED".split())
_ENDS = ("STOP", "QUERY")


@dataclass(frozen=True, slots=True)
class _Said:
    """One sentence: what is free in it, and the claims of moves."""

    first: int
    last: int
    free: tuple[int, ...]
    sides: tuple[str, ...]
    side_at: int | None
    backs: tuple[Claim, ...]  # how long alone
    halves: tuple[Claim, ...]  # how far alone


def pieced_moves(row: Row, stated: Row, claims: list[Claim], taken: set[int], language: Language) -> list[Claim]:
    """The claims, with the moves that are told piece by piece."""
    concepts = {item.concept for item in row.items}
    if "K_TRANSITION" not in concepts or "K_OFFSET" in concepts or word(language.code, "told.wanted.of_moves").search(plain(row.text)) is None:
        return claims
    lacks = any(_lacking(one) for one in claims if one.name == "side_moves") or not any(one.name in ("side_moves", "stated_slope") for one in claims)
    taper = any(one.name in ("taper_length", "length") for one in claims)
    if not lacks:
        return claims
    used = taken | {at for one in claims for at in one.uses}
    for said in _sentences(row, stated, claims, used, language):
        claims = _pieced(row, said, claims, taper, language)
    return claims


def _lacking(one: Claim) -> bool:
    return any(move.by is None or move.back is None for move in one.value)


def _sentences(row: Row, stated: Row, claims: list[Claim], used: set[int], language: Language):
    level = {at for one in claims if one.name == "level_sides" for at in range(one.first, one.last)}
    first = 0
    while first < len(row.items):
        last = row.sentence_end(first)
        if last > first:
            free = tuple(at for at in range(first, last) if _is_free(row, stated, at, first, last, used, language))
            named = [at for at in range(first, last) if row.items[at].concept == "SIDE" and at not in level and not stated.is_blank(at)]
            sides = {row.items[at].value for at in named}
            here = [one for one in claims if one.name == "side_moves" and first <= one.first < last]
            backs = tuple(one for one in here if len(one.value) == 1 and one.value[0].by is None and one.value[0].side is None)
            halves = tuple(one for one in here if all(move.by is not None and move.back is None for move in one.value))
            if len(backs) + len(halves) == len(here) and len(sides) <= 1:
                yield _Said(first, last, free, next(iter(sides), ()), named[0] if named else None, backs, halves)
        first = last + 1


def _is_free(row: Row, stated: Row, at: int, first: int, last: int, used: set[int], language: Language) -> bool:
    item = row.items[at]
    if item.concept not in _MEASURES or at in used or stated.is_blank(at):
        return False
    before = row.items[at - 1].concept if at else ""
    behind = row.items[at + 1].concept if at + 1 < len(row.items) else ""
    if item.concept == "NUM" and item.value.value == 1 and behind in ("END", "JOINT"):
        return False  # "between the one end and the other"
    if before in _NOT_BEFORE or before.startswith("K_") or behind in _NOT_BEHIND:
        return False
    if before in ("OF", "BACK", "DET", "WORD") and word(language.code, "told.wanted.instead_of").search(plain(row.text[row.items[first].start : item.start]).rstrip()) is not None:
        return False
    begin, end = at, at
    while begin > first and row.items[begin - 1].concept != "COMMA":
        begin -= 1
    while end < last and row.items[end].concept != "COMMA":
        end += 1
    return _OF_OTHERS.isdisjoint(one.concept for one in row.items[begin:end])


def _pieced(row: Row, said: _Said, claims: list[Claim], taper: bool, language: Language) -> list[Claim]:
    small = [at for at in said.free if 0 < row.items[at].value.value <= _MOST]
    great = [at for at in said.free if row.items[at].value.value >= _FEWEST]
    words = plain(row.words(said.first, said.last))
    if word(language.code, "told.wanted.not_a_move").search(words) is not None:
        return claims
    one_side = said.sides or any(item.concept == "ONE_SIDE" for item in row.items[said.first : said.last]) or word(language.code, "told.wanted.one_side").search(words) is not None
    if len(said.backs) == 1 and not said.halves and len(said.free) == len(small) == 1 and one_side:
        back = said.backs[0]
        at = small[0]
        if row.items[at].value.value < back.value[0].back:
            return [*[one for one in claims if one is not back], _move(row, said, at, back.uses[0] if back.uses else back.first, back.value[0].back)]
    if len(said.backs) == 1 and not said.halves and not said.free and len(said.sides) == 1 and word(language.code, "told.wanted.all_of_it").search(words) is not None:
        back = said.backs[0]
        at = back.uses[0] if back.uses else back.first
        return [*[one for one in claims if one is not back], _all_of_it(row, said, at, back.value[0].back)]
    if len(said.halves) == 1 and not said.backs and len(said.free) == len(great) == 1 and not taper and word(language.code, "told.wanted.so_long").search(words) is not None:
        at = great[0]
        if all(move.by < row.items[at].value.value for move in said.halves[0].value):
            return [*claims, claim(row, "side_moves", (Move(None, None, row.items[at].value.value, None),), at, at + 1, uses=(at,), said_unit=unit_of(row.items[at]))]
    if said.backs or said.halves or not one_side:
        return claims
    if len(said.free) == 2:
        by, back = sorted(said.free, key=lambda at: row.items[at].value.value)
        if by in small and back in great and row.items[by].value.value * 2 <= row.items[back].value.value:
            return [*claims, _move(row, said, by, back, row.items[back].value.value)]
    if len(said.free) == len(small) == 1 and one_side and (taper or any(_lacking(one) for one in claims if one.name == "side_moves")):
        return [*claims, _move(row, said, small[0], small[0], None)]
    return claims


def _all_of_it(row: Row, said: _Said, at: int, back) -> Claim:
    """ "Set back eighteen, all on the top": how far it moves, the sizes tell."""
    side = row.items[said.side_at]
    return claim(row, "side_moves", (Move(said.sides[0], None, back, None),), at, at + 1, uses=(at,), said_unit=unit_of(row.items[at]), also=((side.start, side.end),))


def _move(row: Row, said: _Said, by: int, at: int, back) -> Claim:
    sides = said.sides or (None,)
    value = row.items[by].value.value
    apart = tuple((row.items[place].start, row.items[place].end) for place in (at, said.side_at) if place not in (None, by))
    return claim(row, "side_moves", tuple(Move(side, value, back, None) for side in sides), by, by + 1, uses=tuple(sorted({by, at})), said_unit=unit_of(row.items[by]), also=apart)
