"""What is denied and promised in one breath: "no tape, tomorrow I put it", "forgot to rub it, will do it Monday". The act waits, so it is work still to do.

Where another pattern has read those words as work to do, nothing is added.
"""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, Open
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain

_ACTS = frozenset(("stapled", "taped", "rubbed_down", "trimmed", "vanes", "damage_repaired", "tabs_bent", "cross_tabs"))


def put_off(row: Row, claims: list[Claim], language: Language) -> list[Claim]:
    """The claims, those that deny an act with what is promised of it right behind."""
    denied = [one for one in claims if one.value is False and one.name in _ACTS and not one.opens]
    if not denied:
        return claims
    said, promise = plain(row.text), word(language.code, "acts.promise")
    if len(said) != len(row.text) or not promise.may(said):
        return claims
    waits: dict[int, int] = {id(one): match.end() for one in denied if (match := promise.match(said, one.end)) is not None}
    opened = [other for other in claims if any(item.about == "piece" for item in other.opens)]
    return [
        replace(one, opens=(Open("piece", one.name, one.start, waits[id(one)]),), pending=True)
        if id(one) in waits and not any(other.start < waits[id(one)] and other.end > one.start for other in opened)
        else one
        for one in claims
    ]
