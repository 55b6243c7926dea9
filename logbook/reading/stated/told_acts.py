"""Acts told by what was done with the tool or the stuff: "leaned on it with the squeegee", "ran staples through it", "legs kick outward"."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.likely import AnyOf, Likely
from logbook.reading.clauses.parts import Part
from logbook.reading.words.tokens import plain

_UNDOES = ("NOT", "NO", "NOT_DONE", "PENDING", "NEED", "WILL", "LATER", "FORGOT", "IF", "QUESTION", "REMIND", "LEFT_OUT", "GOING_TO", "DRAWING", "OTHER", "ALL_BUT", "EXCEPT", "MISSING", "HEDGE_NOT")


@cache
def _patterns(code: str) -> tuple[tuple[str, object, Likely], ...]:
    return tuple((name, value, Likely(rf"(?<![\w'])(?:{pattern})(?![\w'])")) for name, value, pattern in LANGUAGES[code].forms.acts)


@cache
def _any(code: str) -> AnyOf:
    return AnyOf(pattern.pattern for *_, pattern in _patterns(code))


def told(row: Row, stated: Row, cut_up: tuple[Part, ...], language: Language) -> list[Claim]:
    """The acts of parts that are the speaker's own and deny nothing; "not a scratch on it" denies only what it means to."""
    made: list[Claim] = []
    for part in cut_up:
        if not _any(language.code).search(part.words):
            continue
        for name, value, pattern in _patterns(language.code):
            match = pattern.search(part.words)
            if match is None:
                continue
            first, last = row.within(part.first, part.last, match)
            denied = any(row.items[at].concept in _UNDOES for at in range(part.first, part.last))
            if value != "none" and (denied or any(stated.is_blank(at) for at in range(first, last))):
                continue
            made.append(claim(row, name, value, first, last, weak=value is True, corrects=value is False, hedged=False))
    return made


def unsaid(row: Row, claims: list[Claim], language: Language) -> list[Claim]:
    """ "The board was wet I guess. No, it's fine, it was dry": without what such words take back."""
    done = [replace(one, name="(nothing)", value=None) if one.name == "surface_clean" and one.value is True and _too_late(row, one, language) else one for one in claims]
    for name, value, pattern in language.forms.unsaid:
        for one in [c for c in done if c.name == name and c.value == value]:
            last, stops = one.last, 0
            while last < len(row.items) and stops < 2:
                stops += row.items[last].concept in ("STOP", "QUERY")
                last += 1
            behind = row.text[one.end : row.items[last - 1].end].lower().replace("’", "'") if last > one.last else ""
            if re.search(pattern, behind) is not None:
                done[done.index(one)] = replace(one, name="(nothing)", value=None)
                done = [c for c in done if c.name not in ("damage_repaired", "(method)", "repair_method")] if name == "facing_damage" else done
    return done


def _too_late(row: Row, one: Claim, language: Language) -> bool:
    """ "taped it and then wiped it down": what was wiped then was no facing under the tape."""
    return language.forms.too_late != "" and re.search(language.forms.too_late, plain(row.text[row.items[row.sentence_start(one.first)].start : one.start])) is not None
