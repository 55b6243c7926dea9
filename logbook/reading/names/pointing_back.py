"""A kind named again without its number: "straight 4 and elbow 5. The elbow has no vanes", where one piece alone of that kind was named before."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.names.kind_gone_to import gone_to
from logbook.reading.clauses.mention import Mention

_LEADS = frozenset("DET THIS FILLER AND BUT COMMA STOP QUERY NOW SO ALSO".split())
_SAYS = frozenset("BE HAVE NO NOT IT COMMA STAPLED TAPED RUBBED HUNG WIPED TRIMMED PENDING FILLER HAS NEEDS NEED STILL I GOT NONE".split())  # what begins to tell of a piece
_ACTS = ("STAPLED", "TAPED", "RUBBED")
_NUMBERED = frozenset("NUM MARKED NUMBER FITTING LETTER".split())


def pointing_back(row: Row, named: list[Mention], language: Language) -> list[Mention]:
    """The pieces, a kind alone with the number of the one piece that it can be; one that was not yet found put where it stands."""
    if len(named) < 2 or all(one.mark is None for one in named):
        return named
    done: list[Mention] = []
    places = {one.kind_at[0]: one for one in named if one.kind_at is not None}
    for first, at in gone_to(row) if language.code == "es" else [*((at, at) for at in _kinds_alone(row)), *_worked_on(row)]:
        one = places.get(at)
        if one is not None and (one.mark is not None or one.batch or one.another):
            continue
        mark = _only_one(named, row.items[at].value, at)
        if mark is None:
            continue
        found = one or Mention(at, at + 1, row.items[at].value, (at, at + 1))
        done.append(replace(found, first=min(found.first, first), mark=mark, mark_at=found.kind_at, another=False, corrects=False))
    if not done:
        return named
    ours = {one.kind_at for one in done}
    return sorted([one for one in named if one.kind_at not in ours] + done, key=lambda one: one.first)


def points_back(row: Row, language: Language) -> bool:
    """Whether a sentence goes back, by its kind alone, to a piece that was named before another."""
    heads = [(at, row.items[at].value) for at in range(len(row.items) - 1) if row.items[at].concept.startswith("K_") and row.items[at + 1].concept in _NUMBERED]
    if len({kind for _, kind in heads}) < 2:
        return False
    for at in [at for _, at in gone_to(row)] if language.code == "es" else _kinds_alone(row):
        before = [kind for head, kind in heads if head < at]
        if row.items[at].value in before[:-1] and before[-1] != row.items[at].value:
            return True
    return False


def _only_one(named: list[Mention], kind: str, at: int) -> str | None:
    """The number of the one piece of this kind before a place."""
    before = [one for one in named if one.kind == kind and one.first < at and (one.mark is not None or one.batch or one.another)]
    marks = {one.mark for one in before}
    return before[0].mark if len(marks) == 1 and not any(one.batch for one in before) else None


def _worked_on(row: Row) -> list[tuple[int, int]]:
    """ "I stapled the straight and taped the tee": where each act stands, and the kind behind it."""
    found = []
    for at in range(2, len(row.items)):
        act = at - 2
        if row.items[at].concept.startswith("K_") and row.items[at - 1].concept == "DET" and row.items[act].concept in _ACTS and row.items[min(at + 1, len(row.items) - 1)].concept not in (*_NUMBERED, "BUILDING", "TO", "IN"):
            lead = row.items[act - 1].concept if act else "STOP"
            if lead in ("STOP", "QUERY", "I", "AND", "COMMA") and "a" not in row.words(at - 1, at).lower().split():
                found.append((act, at))
    return found


def _kinds_alone(row: Row) -> list[int]:
    """The places where a kind without a number begins what is told: "the elbow is", "straight's good"."""
    found = []
    for at, item in enumerate(row.items):
        if not item.concept.startswith("K_") or at == 0 or at + 1 >= len(row.items) or row.items[at + 1].concept not in _SAYS:
            continue
        lead = at - 1
        while lead >= 0 and row.items[lead].concept in ("DET", "FILLER", "THIS"):
            lead -= 1
        begins = lead < 0 or row.items[lead].concept in ("STOP", "QUERY") or row.items[at - 1].concept in ("DET", "THIS") and row.items[lead].concept in ("AND", "BUT", "COMMA")
        if begins and "a" not in row.text[row.items[lead + 1].start : item.start].lower().split():
            found.append(at)
    return found
