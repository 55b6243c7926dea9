"""What was told of one piece, denied of another by its name alone: "31 is taped, 32 isn't", "elbow 7 I rubbed down, elbow 8 I haven't", "I can't say the same for 32".

The clause names the piece and has no act of its own; denied is what was told last, in its sentence or the one before, of another piece.
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, Open, claim
from logbook.reading.clauses.denials import DENIED
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.likely import Likely
from logbook.reading.clauses.marks import mark_text
from logbook.reading.clauses.mention import Mention
from logbook.reading.clauses.stance import Clause
from logbook.reading.words.tokens import plain

_ACTS = ("stapled", "taped", "rubbed_down", "vanes", "trimmed", "surface_clean", "tabs_bent", "preheated", "damage_repaired", "cross_tabs", "staple_flap")
_NUMBERS = ("NUM", "MARKED")
_BACK = 7  # clauses


def not_that_one(row: Row, named: list[Mention], claims: list[Claim], cut: tuple[Clause, ...], language: Language) -> tuple[list[Mention], list[Claim]]:
    """The pieces and the claims, with what is so denied."""
    done = [one for one in claims if one.value is True and one.name in _ACTS and one.for_mark is None]
    if not done or not language.not_that_one.leads or not _cues(language.code).search(plain(row.text)):
        return named, claims
    marks = {one.mark for one in named if one.mark is not None} | {mark for one in named for mark, _ in one.batch}
    for place, clause in enumerate(cut):
        if place == 0 or clause.last < len(row.items) and row.items[clause.last].concept == "QUERY" or any(row.items[at].concept in DENIED for at in range(clause.first, clause.last)):
            continue
        piece = _piece(row, named, clause, language)
        if piece is None or piece.last > clause.last or piece.mark is None and not piece.batch:
            continue
        if piece.last == clause.last and place + 1 < len(cut) and cut[place + 1].sentence == clause.sentence and row.items[clause.last].concept == "COMMA" and not _denies(row, clause, piece, language):
            clause = replace(clause, last=cut[place + 1].last)  # "the next one, 32, isn't"
        if not _denies(row, clause, piece, language):
            continue
        owner, told = _told_of_another(row, cut, place, piece, [*named, piece], done, language)
        if not told:
            continue
        for one in (owner, piece):
            if one.mark is not None and one.mark not in marks:
                named = sorted([*named, one], key=lambda one: one.first)
                marks.add(one.mark)
        if any(clause.first <= one.first < clause.last and one.name in _ACTS for one in claims):
            continue  # another way of reading found it
        later = re.search(language.not_that_one.later, plain(row.words(clause.first, clause.last))) is not None
        claims = [one for one in claims if not (one.name == "(open)" and clause.first <= one.first < clause.last)]
        for one in told:
            opens = (Open("piece", one.name, row.items[clause.first].start, row.items[clause.last - 1].end),) if later else ()
            made = claim(row, one.name, False, piece.last - 1, clause.last, hedged=one.hedged, opens=opens, pending=later)
            claims = [*claims, replace(made, corrects=True)]
    return named, claims


def _piece(row: Row, named: list[Mention], clause: Clause, language: Language) -> Mention | None:
    """The one piece that the clause names; a number alone names one where others are named."""
    here = [one for one in named if clause.first <= one.first < clause.last]
    if here:
        return here[0] if len(here) == 1 and not here[0].corrects else None
    return _bare(row, clause, language)


def _bare(row: Row, clause: Clause, language: Language) -> Mention | None:
    """The number that the clause begins with."""
    at = clause.first
    while at < clause.last and row.items[at].concept in ("AND", "BUT", "FILLER", "NUMBER", "ONLY", "DET"):
        at += 1
    if at >= clause.last or row.items[at].concept not in _NUMBERS or (mark := mark_text(row, at, at + 1, language)) is None or not mark.isdigit() or int(mark) < 5:
        return None
    return Mention(at, at + 1, mark=mark, mark_at=(at, at + 1))


def _denies(row: Row, clause: Clause, piece: Mention, language: Language) -> bool:
    first = min(at[0] for at in (piece.kind_at, piece.mark_at, *(at for _, at in piece.batch)) if at is not None)
    ahead, behind = (plain(row.words(*at)).strip(" ,") if at[0] < at[1] else "" for at in ((clause.first, first), (piece.last, clause.last)))
    if not behind:
        return _whole(language.code, "ahead").fullmatch(ahead) is not None
    return _whole(language.code, "leads").fullmatch(f"{ahead} " if ahead else "") is not None and _whole(language.code, "behind").fullmatch(behind) is not None


def _told_of_another(row: Row, cut: tuple[Clause, ...], place: int, piece: Mention, named: list[Mention], done: list[Claim], language: Language) -> tuple[Mention, list[Claim]]:
    """Another piece, and what the last clause before it that tells of an act tells of that."""
    for back in range(place - 1, max(-1, place - _BACK), -1):
        before = cut[back]
        told = [one for one in done if before.first <= one.first < before.last] if before.sentence >= cut[place].sentence - 1 else []
        if told:
            behind = next((one for one in named if told[-1].last <= one.first < before.last), None)  # "I taped 31, 32 I haven't"
            owner = max((one for one in named if one.first < cut[place].first and one.first < told[-1].last), key=lambda one: one.first, default=behind or _bare(row, before, language))
            marks = {owner.mark, *(mark for mark, _ in owner.batch)} if owner is not None else set()
            same = owner is None or (piece.mark in marks if piece.mark is not None else owner.kind == piece.kind)
            return (piece, []) if same else (owner, list({one.name: one for one in told}.values()))
        if before.sentence < cut[place].sentence - 1 or any(row.items[at].concept in DENIED for at in range(before.first, before.last)):
            break
    return piece, []


@cache
def _cues(code: str) -> Likely:
    return Likely(LANGUAGES[code].not_that_one.cues)


@cache
def _whole(code: str, member: str) -> re.Pattern[str]:
    return re.compile(getattr(LANGUAGES[code].not_that_one, member))
