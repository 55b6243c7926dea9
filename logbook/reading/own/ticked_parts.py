"""An act ticked off part by part: "trimmed: male end yes, flap no", "tape: heel on, throat missing". One no is enough."""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Open, claim
from logbook.reading.clauses.denials import DENIED
from logbook.reading.clauses.grammar import Row
from logbook.reading.own.ticked_off import Ticked

_ACTS = frozenset(concept for concept, (name, value) in DENIED.items() if value is False and name not in ("scrim_shows", "staple_flap", "accessory_supported", "cut_to_length"))
_MOST = 120  # characters behind an act


@cache
def _pairs(code: str) -> tuple[re.Pattern[str], re.Pattern[str], re.Pattern[str]]:
    """What stands between an act and its list, one part with its tick, and how a list of them begins."""
    told = LANGUAGES[code].told
    ticks, parts = told.ticks, told.stretches.ticked_parts
    one = rf"\s*(?:{told.stretches.ticked_leads})*(?:{parts})\s*[:=?-]?\s+(?:(?P<later>{ticks.later})|(?P<no>{ticks.no})|(?P<yes>{ticks.yes}|{told.stretches.ticked_yes}))(?![\w'])\s*(?P<over>[,;.]|$|(?= and\b| y\b| e\b))"
    return re.compile(rf"(?:{told.stretches.ticked_on})?\s*[:,–—-]?"), re.compile(one), re.compile(rf"(?<![\w'])(?:{parts})(?![\w'])\s*[:=?-]?\s+\w+\s*[,;]")


def parts_ticked(row: Row, language: Language, found: Ticked) -> None:
    if not language.told.stretches.ticked_parts:
        return
    text = row.text.lower()
    if _pairs(language.code)[2].search(text) is None:
        return
    for at, item in enumerate(row.items):
        if item.concept in _ACTS and at not in found.spent and not row.is_blank(at):
            _list(row, at, text, language, found)


def _list(row: Row, act: int, text: str, language: Language, found: Ticked) -> None:
    leads, pair, _ = _pairs(language.code)
    place = leads.match(text, row.items[act].end).end()
    start, told, opens = place, [], False
    while place - start < _MOST and (match := pair.match(text, place)) is not None:
        told.append("yes" if match.group("yes") else "no")
        opens = opens or match.group("later") is not None
        place = match.end()
        if match.group("over") in (".", ""):
            if match.group("over") == "" and re.match(r"\s*(?:and|y|e)\b", text[place:]):
                continue
            break
    if len(told) < 2:
        return
    last = next((k for k in range(act, len(row.items)) if row.items[k].start >= place), len(row.items))
    first = next(k for k in range(act + 1, last) if row.items[k].start >= start)
    name, value = DENIED[row.items[act].concept][0], "no" not in told
    left = (Open("piece", name, row.items[act].start, row.items[last - 1].end),) if opens else ()
    found.claims.append(claim(row, name, value, act, act + 1, hedged=False, opens=left, pending=opens, corrects=True))
    found.spent.update((act, *(k for k in range(first, last) if row.items[k].concept not in ("STOP", "QUERY"))))
