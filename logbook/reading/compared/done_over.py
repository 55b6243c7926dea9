"""What he went back to and did again: "every four on the back, no, went over it again, every two all around".

The measure that stands behind such words is how it is now, and the one of the same thing told before them is withdrawn. A bare measure ("made it
two") is of the thing measured last. Where the second is of another side than the first both stand.
"""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import apart
from logbook.reading.words.tokens import plain

_MEASURED = frozenset(
    "staple_spacing staple_leg staple_clinch cross_tab_spacing cross_tab_length screw_spacing washer_size tape_width gap length hanger_spacing throat_radius side_moves groove_step closure_mark closure".split()
)
_NUMBERED = {"staple_spacing": 12, "cross_tab_spacing": 24, "cross_tab_length": 24, "screw_spacing": 24, "tape_width": 6, "washer_size": 6, "gap": 6, "length": 600, "throat_radius": 72}  # inches at most
_SIDES = ("SIDE", "OTHER_SIDE", "BACK", "END", "JOINT")
_ALL = ("ALL", "AROUND", "SIDES_ALL", "BOTH", "EACH")
_LEADS = ("IN", "ON", "TO", "BE", "COMMA", "STOP", "LAID", "IT", "HEDGE", "WITH", "OF", "AND", "THIS", "BY", "MOVE", "EVERY", "SAYS", "WORD")
_FOLLOWS = ("SIDE_WORD", "BY", "BACK", "LONG", "STAPLES", "DAMAGE", "DEG", "GAP", "LEG", "WIDE", "TAPE", "HIGH")
_REACH = 16  # items


def done_over(row: Row, claims: list[Claim], language: Language) -> list[Claim]:
    """The claims, where those behind such words correct those before them."""
    text = plain(row.text)
    done = list(claims)
    for pattern in apart(language.code, "turns.goes_over"):
        for match in pattern.finditer(text):
            first = next((k for k, item in enumerate(row.items) if item.end > match.start()), None)
            if first is None or row.is_blank(first) and row.is_blank(min(first + 1, len(row.items) - 1)) or _only_meant(text[: match.start()], language):
                continue
            last = next((k for k in range(first, len(row.items)) if row.items[k].start >= match.end()), len(row.items))
            done = _set_right(row, done, first, last)
    return _stripped(row, done, text, language)


_LISTS = re.compile(r"\b(?:listed|rated|good|right|proper|real|foil|pressure|heat|mastic|181\S*) ?")
_AFTER = ("REDID", "TAPED", "TAPE", "CLOSURE", "MARK181", "C_MASTIC")


def _stripped(row: Row, claims: list[Claim], text: str, language: Language) -> list[Claim]:
    """ "Had masking tape on it, peeled the lot and did it over with the listed foil": the tape that came off closes nothing any more."""
    old = [one for one in claims if one.name == "closure" and one.value == "other_tape"]
    if not old:
        return claims
    for match in re.finditer(language.turns.strips, text):
        first, last = (next((k for k, item in enumerate(row.items) if item.end > place), len(row.items)) for place in (match.start(), match.end()))
        until = _until(row, last)
        gone = [one for one in old if one.last <= first and not _another_piece(row, one.last, first)]
        if not gone or _only_meant(text[: match.start()], language) or any(last <= one.first < until for one in old):
            continue
        behind = text[match.end() : row.items[until - 1].end]
        if any(row.items[k].concept in _AFTER for k in range(last, until)) and _LISTS.search(behind):
            claims = [replace(one, name="(nothing)", value=None) if one in gone else one for one in claims]
    return claims


def _only_meant(before: str, language: Language) -> bool:
    """ "I should've gone back", "didn't go over it again": it was not done over."""
    clause = re.split(r"[.?,;]", before)[-1][-40:]
    return re.search(language.turns.only_meant, clause) is not None


def _set_right(row: Row, claims: list[Claim], first: int, last: int) -> list[Claim]:
    until = _until(row, last)
    before = [one for one in claims if one.name in _MEASURED and one.last <= first and not _another_piece(row, one.last, first)]
    behind = [one for one in claims if one.name in _MEASURED and last - 1 <= one.first < until]
    names = {one.name for one in before} & {one.name for one in behind}
    if names:
        return [replace(one, corrects=True, weak=False) if one in behind and one.name in names and not _of_another_side(row, before, one, first, last, until) else one for one in claims]
    bare = _bare(row, claims, last, until)
    old = max((one for one in before if one.name in _NUMBERED), key=lambda one: one.last, default=None)
    if bare is None or old is None or row.items[bare].value.value > _NUMBERED[old.name] or _of_another_side(row, before, replace(old, first=bare, last=bare + 1), first, last, until):
        return claims
    item = row.items[bare]
    return [*claims, claim(row, old.name, item.value.value, bare, bare + 1, uses=(bare,), corrects=True, said_unit=unit_of(item))]


def _until(row: Row, last: int) -> int:
    """The end of the sentence of these words and of the next, or of what is near, or where another piece begins."""
    stops, at = 0, last
    while at < len(row.items) and at - last < _REACH and not row.items[at].concept.startswith("K_"):
        stops += row.items[at].concept in ("STOP", "QUERY")
        if stops > 1:
            break
        at += 1
    return at


def _another_piece(row: Row, first: int, last: int) -> bool:
    return any(row.items[k].concept.startswith("K_") and row.items[k + 1].concept in ("NUM", "MARKED", "LETTER") for k in range(first, last - 1))


def _of_another_side(row: Row, before: list[Claim], new: Claim, first: int, last: int, until: int) -> bool:
    """ "every three on top, went back and did the bottom every two": the top is as it was."""
    old = max((one.last for one in before if one.name == new.name), default=first)
    near = range(last, min(new.last + 4, until, _end_of_clause(row, new.last)))
    if any(row.items[k].concept in _ALL for k in range(first, near.stop)):
        return False
    sides = {row.words(k, k + 1).lower() for k in (*range(first + 2, last), *near) if row.items[k].concept in _SIDES and not row.words(k - 1, k).lower().endswith("whole")}  # past "went back"; "the whole joint" is no side
    told = {row.words(k, k + 1).lower() for k in range(max(0, old - 4), first) if row.items[k].concept in _SIDES}
    return bool(sides - told)


def _end_of_clause(row: Row, at: int) -> int:
    return next((k for k in range(at, len(row.items)) if row.items[k].concept in ("STOP", "QUERY", "COMMA")), len(row.items))


def _bare(row: Row, claims: list[Claim], last: int, until: int) -> int | None:
    """A measure with no noun of its own."""
    used = {at for one in claims for at in one.uses}
    for at in range(last, until):
        item = row.items[at]
        if item.concept in ("LEN", "NUM", "FRAC") and at not in used and not row.is_blank(at):
            ahead = row.items[at + 1].concept if at + 1 < len(row.items) else ""
            one = item.concept == "NUM" and item.value.value == 1 and not item.value.digits
            return at if row.items[at - 1].concept in _LEADS and ahead not in _FOLLOWS and not ahead.startswith("K_") and not one else None
        if item.concept in ("TAPED", "STAPLED", "RUBBED", "SIZE", "TAPE", "TABS", "VANES", "SCREWS", "DAMAGE", "RUN") and at > last:
            return None
    return None
