"""What is not done on a piece and is told as still to come, in words that name no act: "the tape isn't on. I'll get it tomorrow".

The act is denied where it is told; here it becomes work left open too. Who skipped it and says no more has left nothing open.
"""

from __future__ import annotations

import re

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, Open, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain

_ACTS = frozenset("stapled taped rubbed_down trimmed tabs_bent vanes damage_repaired cross_tabs reinforced".split())
_COUNTS = {"sides_taped": "taped", "sides_stapled": "stapled"}
_ALL_SIDES = 4
_WHOLE = "whole"  # of the piece as it stands, and of no act


def still_coming(row: Row, claims: list[Claim], language: Language) -> list[Claim]:
    """The claims, with an open item for each act that waits so."""
    whole = [one for one in claims if one.part == _WHOLE]
    if whole:
        made = still_coming(row, [one for one in claims if one.part != _WHOLE], language)
        return _told_once(row, [*made, *whole])
    short = [one for one in claims if _falls_short(one) and not _done_after(claims, one)]
    harmed = _not_seen_to(row, claims, language)
    if harmed:  # the same words, told of no act
        claims = [one for one in claims if not (one.name == "(open)" and all(told.denies is None for told in one.opens) and any(harm.first < one.last and one.first < harm.last for harm in harmed))]
    if not short:
        return [*claims, *harmed]
    made: list[Claim] = []
    opened = [one for one in claims if any(told.about != "other" for told in one.opens)]
    for one in sorted(short, key=lambda one: one.name in _COUNTS):
        act = _COUNTS.get(one.name, one.name)
        if any(row.sentence_start(one.first) - 1 <= row.sentence_start(other.first) <= row.sentence_end(one.last - 1) + 1 for other in opened) or any(told.denies in (act, None) for other in made for told in other.opens):
            continue  # that something waits is told there already
        told = _told(row, one, language)
        if told is not None:
            first, last = told
            made.append(claim(row, "(open)", None, one.first, one.last, opens=(Open("piece", act, row.items[first].start, row.items[last - 1].end),), hedged=False))
    return [*claims, *made, *harmed]


def _told_once(row: Row, claims: list[Claim]) -> list[Claim]:
    """ "Not taped yet, saving it for tomorrow": one thing is to do. That the piece waits says no more than the act beside it that does."""
    acts = [one for one in claims if any(told.denies is not None for told in one.opens)]
    return [one for one in claims if one.part != _WHOLE or not any(_told_beside(row, one, other) for other in acts)]


def _told_beside(row: Row, one: Claim, other: Claim) -> bool:
    """Of the same piece: no other is named, or none between them."""
    named = [at for at in range(len(row.items)) if _begins_a_piece(row, at)]
    return len(named) < 2 or not any(min(one.first, other.first) < at < max(one.first, other.first) for at in named)


def _done_after(claims: list[Claim], one: Claim) -> bool:
    """What was not done then, and is: nothing of it is to come."""
    return any(other.name == one.name and other.value is True and other.corrects and other.first >= one.last for other in claims)


def _not_seen_to(row: Row, claims: list[Claim], language: Language) -> list[Claim]:
    """ "A tear in the facing, I'll get to it": a damage of which no mending is told, behind which it is told that it waits."""
    told = [one for one in claims if one.name == "facing_damage" and one.value != "none"]
    if not told or any(one.name in ("damage_repaired", "(method)", "repair_method") for one in claims):
        return []
    made: list[Claim] = []
    for one in told:
        last = row.sentence_end(one.last)
        behind = row.sentence_end(last + 1) if last + 1 < len(row.items) and row.items[last].concept == "STOP" else last
        behind = next((at for at in range(one.last, behind) if _begins_a_piece(row, at)), behind)
        found = _in(row, one.last, behind, "left.mends", language) if one.last < behind else None
        if found is not None and not (behind < len(row.items) and row.items[behind].concept == "QUERY") and not any(other.opens and other.first < found[1] and found[0] < other.last and other.name != "(open)" for other in claims):
            first, end = found
            made.append(claim(row, "damage_repaired", False, first, end, opens=(Open("piece", "damage_repaired", row.items[first].start, row.items[end - 1].end),), pending=True, hedged=False))
    return made[:1]


def _falls_short(one: Claim) -> bool:
    if one.name in _COUNTS:
        return isinstance(one.value, int) and one.value < _ALL_SIDES
    return one.name in _ACTS and one.value is False and not one.hedged and one.part != "undone"


def _told(row: Row, one: Claim, language: Language) -> tuple[int, int] | None:
    """Where it is told that this is still to come."""
    first, last = row.sentence_start(one.first), row.sentence_end(one.last - 1)
    first, last = _of_this_piece(row, first, last, one)
    found = _in(row, first, last, "left.beside", language)
    if found is None and (one.part == "side" or one.name in _COUNTS):
        found = _in(row, first, last, "left.in_part", language)
    if found is None and last + 1 < len(row.items) and row.items[last].concept == "STOP":
        behind = row.sentence_end(last + 1)
        if behind > last + 1 and not _names_another(row, last + 1, behind) and not (behind < len(row.items) and row.items[behind].concept == "QUERY"):
            said = plain(row.words(last + 1, behind))
            match = word(language.code, "left.behind").match(said)
            if match is not None and word(language.code, "left.others").search(said) is None:
                found = row.within(last + 1, behind, match)
    if found is None and first > 1 and row.items[first - 1].concept == "STOP":
        begin = row.sentence_start(first - 1)
        if begin < first - 1:
            found = _in(row, begin, first - 1, "left.ahead", language)
    return found


def _in(row: Row, first: int, last: int, where: str, language: Language) -> tuple[int, int] | None:
    said = plain(row.words(first, last)) if first < last else ""
    for match in word(language.code, where).finditer(said):
        rest = re.split(r"[,;]| and | so ", said[match.start() :])[0]
        if word(language.code, "left.others").search(rest) is None:
            return row.within(first, last, match)
    return None


def _of_this_piece(row: Row, first: int, last: int, one: Claim) -> tuple[int, int]:
    """The items of its sentence from the piece before it up to the next piece named behind it."""
    named = [at for at in range(first, last) if _begins_a_piece(row, at)]
    start = max((at for at in named if at <= one.first), default=first)
    end = min((at for at in named if at >= one.last and any(at > k for k in named)), default=last)
    return (first if len(named) < 2 else start), end


def _names_another(row: Row, first: int, last: int) -> bool:
    return any(_begins_a_piece(row, at) for at in range(first, last))


def _begins_a_piece(row: Row, at: int) -> bool:
    concept = row.items[at].concept
    return (concept.startswith("K_") or concept in ("FITTING", "NUMBER", "MARKED")) and at + 1 < len(row.items) and (row.items[at + 1].concept in ("NUM", "MARKED") or concept == "MARKED")
