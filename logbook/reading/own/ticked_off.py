"""Acts ticked off as thumbs do it: "stapled y, taped n", "vanes=0", "preheat: no", "rubbed: not yet", "tabs bent: all but 2"."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, Open, claim
from logbook.reading.clauses.denials import DENIED
from logbook.reading.clauses.grammar import Row

# right before a tick without a sign: nothing that could make a sentence of it
_BEFORE = frozenset("COMMA STOP QUERY SIGN SIZE NUM LEN FRAC DEG MARKED MARK181 AND BUT FEMALE MALE LETTER".split())
_MOST = 40  # characters behind an act


@dataclass(frozen=True, slots=True)
class _Tick:
    act: int
    last: int  # items act to last - 1
    how: str  # yes, no, later, partly, idle
    sign: str  # "" where none stands between


@dataclass
class Ticked:
    claims: list[Claim] = field(default_factory=list)
    spent: set[int] = field(default_factory=set)  # items of acts and ticks
    names: set[int] = field(default_factory=set)  # items before "vanes? n", which is no question


def ticked_off(row: Row, language: Language) -> Ticked:
    """What the ticks state."""
    found = Ticked()
    runs: list[list[_Tick]] = []
    at = 0
    while at < len(row.items):
        one = _tick(row, at, language) if row.items[at].concept in _ACTS and not row.is_blank(at) else None
        if one is None:
            at += 1
            continue
        if runs and runs[-1][-1].last == one.act:
            runs[-1].append(one)
        else:
            runs.append([one])
        at = one.last
    listed = sum(one.how in ("yes", "no") for run in runs for one in run) > 1
    for run in runs:
        _read(row, run, found, listed)
    return found


_ACTS = frozenset(concept for concept, (name, value) in DENIED.items() if value is False and name not in ("scrim_shows", "staple_flap", "accessory_supported", "cut_to_length")) | {"CLINCHED"}


_NOUNS = ("TABS", "VANES", "TAPE", "STAPLES", "TIE_RODS")  # behind which what it is not may stand: "cross tabs: not the eight-inch ones"


@cache
def _pattern(code: str) -> re.Pattern[str]:
    ticks = LANGUAGES[code].told.ticks
    kinds = "|".join(f"(?P<{how}>{getattr(ticks, how)})" for how in ("later", "idle", "partly", "no", "yes", "zero"))
    return re.compile(rf"{ticks.small}\s*(?P<sign>[=:\[(?]|-+>?|[–—])?\s*(?:{kinds})(?![\w'/])\s*[\])]?")


def _tick(row: Row, at: int, language: Language) -> _Tick | None:
    item = row.items[at]
    if any(one.end > item.end for one in row.items[max(0, at - 2) : at]):
        return None  # "three inch tape no I mean two inch": of the measure, which was set right behind it
    match = _pattern(language.code).match(row.text[item.end : item.end + _MOST].lower())
    if match is None or (item.concept == "CLINCHED" and (at == 0 or row.items[at - 1].concept != "TABS")):
        return None
    how, sign = match.lastgroup, match.group("sign") or ""
    if how is None or how == "sign":
        return None
    stop = item.end + match.end()
    last = at + 1
    while last < len(row.items) and row.items[last].start < stop:
        last += 1
    if row.items[last - 1].end > stop:
        return None  # the tick is part of a longer word
    return _Tick(at, last, how, sign)


def _read(row: Row, run: list[_Tick], found: Ticked, listed: bool) -> None:
    """Ticks in a row, which stand only where nothing goes on behind them that they could belong to instead."""
    if not (_ends(row, run[-1].last) or _told_again(row, run[-1]) or listed and _names_it(row, run[-1].last)):
        last = run[-1]
        if last.sign[:1] in (":", "=") and last.how in ("no", "zero") and row.items[last.act].concept not in _NOUNS and row.items[last.last].concept != "TROUBLE":
            found.claims.append(claim(row, "(nothing)", None, last.act, last.act + 1))  # "taped: no need"
            found.spent.add(last.act)
        return
    if not run[0].sign and not _stands_apart(row, run[0].act, found) and not (listed and row.items[run[0].act - 1].concept == "BE"):
        return
    for one in run:
        if not _is_a_tick(row, one, alone=len(run) == 1):
            continue
        bent = row.items[one.act].concept == "CLINCHED"
        name = "tabs_bent" if bent else DENIED[row.items[one.act].concept][0]
        opens = (Open("piece", name, row.items[one.act].start, row.items[one.last - 1].end),) if one.how == "later" else ()
        if one.how == "idle":
            found.claims.append(claim(row, "(nothing)", None, one.act, one.last))
        else:
            found.claims.append(claim(row, name, one.how == "yes", one.act, one.last, hedged=False, opens=opens, pending=bool(opens)))
        found.spent.update(range(one.act - bent, one.last))
        if one.sign == "?":
            first = one.act
            while first and row.items[first - 1].concept not in ("STOP", "QUERY"):
                first -= 1
            found.names.update(range(first, one.act))


def _stands_apart(row: Row, act: int, found: Ticked) -> bool:
    before = act - 2 if act and row.items[act - 1].concept == "DET" else act - 1
    return before < 0 or row.items[before].concept in _BEFORE or before in found.spent


def _ends(row: Row, at: int) -> bool:
    return at >= len(row.items) or row.items[at].concept in ("STOP", "QUERY", "COMMA", "AND", "BUT", "SIGN") or "\n" in row.text[row.items[at - 1].end : row.items[at].start]


def _names_it(row: Row, at: int) -> bool:
    """ "Stapled yes, rubbed no on straight 59": the piece that the list is of."""
    concepts = [item.concept for item in row.items[at : at + 5]]
    while concepts and concepts[0] in ("ON", "FOR", "IN", "OF", "DET"):
        concepts = concepts[1:]
    while len(concepts) > 1 and (concepts[0].startswith("K_") or concepts[0] in ("FITTING", "NUMBER", "BRANCH_WORD", "COMMA")):
        concepts = concepts[1:]
    return concepts[:1] in (["NUM"], ["MARKED"])


def _told_again(row: Row, one: _Tick) -> bool:
    """ "Vanes no I left them out", "vanes no there's none in it": what the no is of is told once more behind it."""
    another = row.items[one.last].concept == "BE" and one.last + 1 < len(row.items) and DENIED.get(row.items[one.last + 1].concept, ("", None))[0] not in ("", DENIED[row.items[one.act].concept][0])
    return one.how == "no" and not one.sign and row.items[one.act].concept in _NOUNS and row.items[one.last].concept in ("I", "BE", "NO", "NOT_DONE") and not another  # "el tape no va frotado": of the rub


def _is_a_tick(row: Row, one: _Tick, alone: bool) -> bool:
    """"Taped - no, stapled" corrects, "taped 1" counts, "sides taped: 0" counts too."""
    if one.act and row.items[one.act - 1].concept == "SIDE_WORD":
        return False
    if one.how in ("partly", "later", "idle") and not one.sign:
        return one.how != "partly" and "/" in row.words(one.act, one.last)
    word = row.words(one.last - 1, one.last).lower()
    if one.sign == "?" and len(word) > 1:
        return False  # a question, and its answer
    follows = row.items[one.last].concept if one.last < len(row.items) else ""
    if one.sign[:1] in ("-", "–", "—", "?") and len(word) > 1 and follows == "COMMA":
        return not alone
    if not one.sign and alone and one.how == "yes" and word not in ("y", "ok", "check", "yes", "✓", "✔", "✅"):
        return False
    return True
