"""The way the legs of staples or the step of a groove turn, told again of a part: "legs out, apart from a dozen at the heel that went inward". The wrong way counts for the piece."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.stance import Clause
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain

_WRONG = {"staple_clinch": "inward", "groove_step": "outside"}
_DONE_ANEW = frozenset("REDID FIX CONDITION IF DRAWING QUESTION".split())


def turned_there(row: Row, not_own, cut: tuple[Clause, ...], claims: list[Claim], language: Language) -> list[Claim]:
    """The claims, with the wrong way of a part."""
    told = [one for one in claims if one.name in _WRONG and one.for_mark is None]
    if not told or not language.told.asides.set_apart.part or any(item.concept in _DONE_ANEW for item in row.items):
        return claims
    for name in dict.fromkeys(one.name for one in told):
        mine = [one for one in told if one.name == name]
        right, wrong = ([one for one in mine if (one.value == _WRONG[name]) is bad] for bad in (False, True))
        if right and wrong and not any(one.corrects for one in mine):
            if all(one.first < wrong[-1].first for one in right) and (_of_a_part(row, cut, wrong[-1], claims, language) or _of_a_part(row, cut, right[-1], claims, language)):
                claims = [replace(one, corrects=True) if one is wrong[-1] else one for one in claims]
        elif right and not wrong and (made := _unread(row, not_own, cut, right[-1], claims, language)) is not None:
            claims = [*claims, made]
    return claims


def _place(cut: tuple[Clause, ...], at: int) -> int:
    return next((place for place, clause in enumerate(cut) if clause.first <= at < clause.last), -1)


def _names_a_part(row: Row, clause: Clause, language: Language) -> bool:
    said = plain(row.words(clause.first, clause.last))
    return any(word(language.code, f"told.asides.set_apart.{member}").search(said) is not None for member in ("part", "some", "counted"))


def _of_a_part(row: Row, cut: tuple[Clause, ...], one: Claim, claims: list[Claim], language: Language) -> bool:
    """Whether its clause names a part, or the one beside it that states nothing."""
    place = _place(cut, one.first)
    if place < 0:
        return False
    near = [cut[k] for k in (place - 1, place + 1) if 0 <= k < len(cut) and not any(cut[k].first <= each.first < cut[k].last for each in claims)]
    return any(_names_a_part(row, clause, language) for clause in (cut[place], *near))


def _unread(row: Row, not_own, cut: tuple[Clause, ...], right: Claim, claims: list[Claim], language: Language) -> Claim | None:
    """The wrong way in words of a part that state nothing else, behind the right one."""
    place = _place(cut, right.first)
    for at in range(place + 1, min(place + 4, len(cut))) if place >= 0 else ():
        clause = cut[at]
        if clause.sentence > cut[place].sentence + 1 or any(clause.first <= each.first < clause.last for each in claims) or any(k in not_own for k in range(clause.first, clause.last)):
            return None
        if not (_names_a_part(row, clause, language) or at > place + 1 and _names_a_part(row, cut[at - 1], language)):
            continue
        said = plain(row.words(clause.first, clause.last))
        match = word(language.code, f"told.asides.set_apart.{right.name}").search(said)
        if match is not None and word(language.code, "told.weighed.nots").search(" ".join(said[: match.start()].split()[-3:])) is None:
            first, last = row.within(clause.first, clause.last, match)
            return claim(row, right.name, _WRONG[right.name], first, last, corrects=True)
    return None
