"""Words that turn round, and behind them words that nobody read: "it's trimmed. Scratch that, I never cut it", "or rather, was meant to be".

What was told right before is in doubt then, and is asked for. Where he says of it that he did not do it, whatever he calls the act, it is not done.
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.stance import Clause
from logbook.reading.words.tokens import plain

_ACTS = ("stapled", "taped", "rubbed_down", "vanes", "trimmed", "surface_clean", "tabs_bent", "preheated", "damage_repaired", "cross_tabs", "staple_flap")
_TURNS = ("FIX", "SCRATCH")
_LEADS = ("FILLER", "NO", "COMMA", "AND", "BUT", "THIS", "OR")


def turned_round(row: Row, claims: list[Claim], cut: tuple[Clause, ...], language: Language) -> list[Claim]:
    """The claims, those that such words take back not done or in doubt."""
    if not language.turns.takes_it_back or not any(item.concept in _TURNS for item in row.items):
        return claims
    for place, clause in enumerate(cut):
        behind = _behind(row, cut, place)
        if place == 0 or behind is None:
            continue
        turn, first, last = behind
        told = _told_before(row, cut, place, claims)
        if not told or any(one.first < last and one.last > first and one.name not in ("(open)", "kind", "mark") for one in claims):
            continue
        said = plain(row.words(first, last)).strip(" ,") if first < last else ""
        sure = _pattern(language.code, "takes_it_back").search(plain(row.words(turn, first))) is not None
        if not said or not sure and _pattern(language.code, "turns_to_no").match(said) is None:
            continue
        undone = sure and len({one.name for one in told}) == 1 and _pattern(language.code, "did_it_not").fullmatch(said) is not None
        claims = [one for one in claims if one not in told]
        if undone:
            claims = [*claims, replace(claim(row, told[0].name, False, turn, last, hedged=False), also=((told[0].start, told[0].end),), first=told[0].first, last=told[0].last)]
        else:
            claims += [replace(one, hedged=True) for one in told]
    return claims


def _behind(row: Row, cut: tuple[Clause, ...], place: int) -> tuple[int, int, int] | None:
    """Where the turn begins, where it ends, and where what is said behind it ends: of its sentence, or of the next where it is one by itself."""
    clause = cut[place]
    at = clause.first
    while at < clause.last and row.items[at].concept in _LEADS:
        at += 1
    if at >= clause.last or row.items[at].concept not in _TURNS:
        return None
    while at < clause.last and row.items[at].concept in (*_TURNS, "THIS", "IT", "ALL_THAT", "FILLER"):
        if row.items[at].concept in ("IT", "THIS") and row.items[at - 1].concept != "SCRATCH":
            break
        at += 1
    end = next((one.last for one in reversed(cut) if one.sentence == clause.sentence), clause.last)
    while at < end and row.items[at].concept in ("COMMA", "FILLER"):
        at += 1
    if at >= end:
        return clause.first, end, next((one.last for one in reversed(cut) if one.sentence == clause.sentence + 1), end)
    return clause.first, at, end


def _told_before(row: Row, cut: tuple[Clause, ...], place: int, claims: list[Claim]) -> list[Claim]:
    """The acts done that the last clause before it tells of which tells of any."""
    for back in range(place - 1, max(-1, place - 6), -1):
        if cut[back].sentence < cut[place].sentence - 1:
            return []
        told = [one for one in claims if cut[back].first <= one.first < cut[back].last and one.name in _ACTS]
        if told:
            return [one for one in told if one.value is True and not one.hedged] if not any(one.value is False for one in told) else []
    return []


@cache
def _pattern(code: str, member: str) -> re.Pattern[str]:
    return re.compile(getattr(LANGUAGES[code].turns, member))
