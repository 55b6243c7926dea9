"""A part set apart from what was told of the whole piece: "taped, all but the last foot", "The right? Nope.", "all four sides. Well, three."."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.denials import DENIED
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.measured_there import measured_there
from logbook.reading.words.likely import Likely
from logbook.reading.words.tokens import plain

_OF_ANOTHER = ("EVERY", "APART", "TIGHT", "LEN", "SIZE", "EXCEPT")  # what stands apart is apart from these
_LEADS = ("FILLER", "AND", "BUT", "ALL", "AROUND", "EXCEPT", "ALL_BUT", "SIDES_ALL", "OK")  # what may stand before what is set apart ahead of its act
_NEAR = 5  # items: "except for the back seam by the wall, …"
_VERBS = ("STAPLED", "TAPED", "RUBBED", "WIPED", "SHOWS")
_ACTS = ("stapled", "taped", "rubbed_down", "surface_clean", "scrim_shows")


def all_but(row: Row, claims: list[Claim], language: Language) -> list[Claim]:
    """The claims, with those of the part."""
    if not language.all_but.numbers or not any(one.value is True and one.name in _ACTS for one in claims):
        return claims
    said = plain(row.text)
    for member in ("apart", "side"):
        for match in _pattern(language.code, member).finditer(said):
            claims = _without_it(row, claims, match, member == "side", said, language)
    for match in _pattern(language.code, "fewer").finditer(said):
        first, last = _items(row, match)
        here = row.sentence_start(first)
        number = language.all_but.numbers[match["n"]]
        claims = [replace(one, value=number, corrects=True, last=last, end=row.items[last - 1].end) if one.name in ("sides_taped", "sides_stapled") and here <= one.first < last else one for one in claims]
    return claims


def _without_it(row: Row, claims: list[Claim], match: re.Match[str], behind: bool, said: str, language: Language) -> list[Claim]:
    first, last = _items(row, match)
    begin, end = row.sentence_start(first), row.sentence_end(first)
    if behind and begin == first or behind and begin > 0:
        begin = row.sentence_start(max(0, begin - 2))  # told in the sentence before
    ahead = next((at for at in range(first - 1, begin - 1, -1) if row.items[at].concept in DENIED or not behind and row.items[at].concept in _OF_ANOTHER), None)
    behind_it = any(row.items[at].concept in DENIED for at in range(last, next((at for at in range(last, end) if row.items[at].concept in ("COMMA", "BUT")), end)))
    if not behind and _act_behind(row, first, last, end) is not None:
        ahead, behind_it = None, False
    if ahead is None and not behind and not behind_it and all(row.items[at].concept in _LEADS for at in range(_begins(row, begin, first), first)):
        for name in _told_behind(row, first, last, end):
            claims = _not_there(row, claims, name, (begin, last, begin, end), said[match.end() :], language, until=end)
        return claims
    if ahead is None or behind_it or row.items[ahead].concept not in DENIED:
        return claims
    listed = [ahead]
    while listed[-1] - 2 >= begin and row.items[listed[-1] - 1].concept == "AND" and row.items[listed[-1] - 2].concept in DENIED:  # "tape and staples on all four sides but the bottom"
        listed.append(listed[-1] - 2)
    for name in dict.fromkeys(DENIED[row.items[at].concept][0] for at in listed):
        claims = _not_there(row, claims, name, (first, last, begin, end), said[match.end() :], language)
    return claims


def _begins(row: Row, begin: int, first: int) -> int:
    """Where what is told of the place set apart begins: "straight 12, 14 by 14, except for the bottom, it's taped"."""
    return next((at + 1 for at in range(first - 1, begin - 1, -1) if row.items[at].concept == "COMMA"), begin)


def _act_behind(row: Row, first: int, last: int, end: int) -> int | None:
    """ "All but the heel is taped", "all but the bottom seam got stapled": where the act is told of all else, right behind."""
    at = last
    while at < end and row.items[at].concept in ("JOINT", "SIDE_WORD", "END", "BE", "HAVE", "ALL", "FILLER"):
        at += 1
    return at if row.items[first].concept == "ALL_BUT" and at < end and row.items[at].concept in _VERBS else None


def _told_behind(row: Row, first: int, last: int, end: int) -> list[str]:
    """ "Except for the bottom, it's stapled and taped", "all but the heel is taped": the acts of the clause behind the place set apart; how far apart staples are is told of the rest alone."""
    comma = next((at for at in range(last, min(last + _NEAR, end)) if row.items[at].concept == "COMMA"), -1)
    if (act := _act_behind(row, first, last, end)) is not None:
        comma = act - 1
    until = next((at for at in range(comma + 1, end) if row.items[at].concept in ("COMMA", "BUT")), end)
    if comma < 0 or any(row.items[at].concept in ("EVERY", "APART", "NOT", "NO", "NOT_DONE", "PENDING", "NEED", "WILL", "OTHER") for at in range(comma, until)):
        return []
    return list(dict.fromkeys(DENIED[row.items[at].concept][0] for at in range(comma, until) if row.items[at].concept in DENIED))


def _not_there(row: Row, claims: list[Claim], name: str, place: tuple[int, int, int, int], behind: str, language: Language, until: int = 0) -> list[Claim]:
    """The claims, with that of the act that was not done at the place set apart. `place`: its items and those of its sentence; `until`: how far behind it the act may stand."""
    first, last, begin, end = place
    act = next((one for one in reversed(claims) if one.value is True and one.name == name and name in _ACTS and begin <= one.first < max(first, until) and one.for_mark is None), None)
    if act is None or act.name in ("stapled", "taped") and measured_there(row, last) or _cured(behind, act.name, language):
        return claims
    if any(one.value is False and one.name == act.name and begin <= one.first < max(end, last) for one in claims) or any(one.name in ("sides_taped", "sides_stapled") and begin <= one.first < last and one.name.endswith(act.name) and one.value < 4 for one in claims):
        return claims
    if act.name == "stapled" and any(one.name == "staple_spacing" and one.corrects and last <= one.first < end for one in claims):
        return claims  # "every two except on the branch side, it's more like four there": they are in
    begins = act.first if act.name == "scrim_shows" else first  # of the scrim nothing else tells
    return [*claims, claim(row, act.name, False, begins, last, hedged=act.hedged, part="side", corrects=True)]


def _cured(said: str, name: str, language: Language) -> bool:
    """Whether it was done there after all; "the right? Nope. Stapled it." tells of another act."""
    match = _pattern(language.code, "cured").match(said)
    return match is not None and not any(told is not None and act != name for act, told in match.groupdict().items())


def _items(row: Row, match: re.Match[str]) -> tuple[int, int]:
    inside = [at for at, item in enumerate(row.items) if item.start < match.end() and match.start() < item.end]
    return inside[0], inside[-1] + 1


@cache
def _pattern(code: str, member: str) -> Likely:
    return Likely(getattr(LANGUAGES[code].all_but, member))
