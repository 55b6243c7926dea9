"""Orders, and whether they were followed: "they told me leave the vanes out, I didn't listen", "skip the rub, said the lead, and I did"."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.own.afar import Afar
from logbook.reading.clauses.claims import claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import word
from logbook.reading.clauses.sketch import Sketch

_AHEAD = 3  # parts
_NAMES = ("NUM", "FITTING", "NUMBER", "LETTER", "DASH", "MARKED", "RUN", "THRU", "SIZE", "LEN")


def orders(row: Row, drawn: tuple[Sketch, ...], language: Language) -> Afar:
    """What was done about an order, where the words behind it tell; an order alone states nothing."""
    found = Afar()
    if not language.told.orders.followed:
        return found
    for place, one in enumerate(drawn):
        if row.is_blank(one.first) or len({name for _, name in one.acts}) != 1:
            continue
        told = _ordered(drawn, place, language.code)
        if told is None:
            continue
        wanted, behind = told
        did = _done(row, drawn, place, behind, wanted, language.code)
        if did is None:
            continue
        value, at, reply = did
        name, last = one.acts[0][1], drawn[reply].last
        found.claims.append(claim(row, name, value, at, last, hedged=False, also=((row.items[one.acts[0][0]].start, row.items[one.acts[0][0]].end),)))
        measures = ("EVERY",) if value else ()  # "he said staple it every two, so I did"
        found.spent.update(k for k in range(one.first, last) if row.items[k].concept not in (*_NAMES, *measures) and not row.items[k].concept.startswith("K_"))
    return found


def _joint(row: Row, one: Sketch) -> str:
    """ "so" of what was done for an order: "he said not to, so I didn't"; else "and"."""
    said = row.words(one.first - 1, one.first).lower().split()[:1]
    return "so" if said == ["so"] else "and"


def _ordered(drawn: tuple[Sketch, ...], place: int, code: str) -> tuple[bool, int] | None:
    """Whether the act was to be done, and the part in which the answer may begin."""
    words = drawn[place].words
    begins = word(code, "told.orders.told").match(words)
    if begins is not None:
        for member, wanted in (("to_leave", False), ("to_do", True)):
            if word(code, f"told.orders.{member}").match(words[begins.end() :]) is not None:
                return wanted, place + 1
        return None
    theirs = drawn[place + 1] if place + 1 < len(drawn) else None
    if word(code, "told.orders.plainly").match(words) is not None and theirs is not None and theirs.sentence <= drawn[place].sentence + 1 and word(code, "told.orders.his_word").match(theirs.words) is not None:
        return False, place + 2
    return None


def _done(row: Row, drawn: tuple[Sketch, ...], place: int, behind: int, wanted: bool, code: str) -> tuple[bool, int, int] | None:
    """Whether the act was done, the item where that is told, and the part."""
    for reply in range(behind, min(len(drawn), behind + _AHEAD)):
        one = drawn[reply]
        if one.sentence > drawn[place].sentence + 1:
            return None
        if one.acts:
            own = word(code, "told.orders.mine").match(one.words)
            return (True, one.first, reply) if own is not None and one.acts[0][1] == drawn[place].acts[0][1] and len(one.acts) == 1 else None
        words = one.words if row.items[one.first - 1].concept in ("COMMA", "STOP", "QUERY") else f"{_joint(row, one)} {one.words}"  # "and" and "so" part two and belong to neither
        for member, value in (("put_in", True), ("left_out", False), ("refused", not wanted), ("followed", wanted)):
            if word(code, f"told.orders.{member}").fullmatch(words):
                return value, one.first, reply
    return None
