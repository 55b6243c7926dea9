"""What sets a fault right again: "went back and got them", "pressed it back down", "stapled it again".

Words that name an act mend what that act makes and nothing else: "pulled the vanes out. Stapled it." leaves the vanes out.
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.parts import Part
from logbook.reading.words.phrasing import apart, begins, valued, word

_AHEAD = 5  # parts
_FAULTS = frozenset(("gap", "facing_damage", "damage_repaired"))
_SIGN = re.compile(r"<\w>|\b181\S*|\b\d+")  # an act, in words that are drawn; the print of a tape and how many
_WORDS = re.compile(r"[\w']+")


def is_mended(cut_up: tuple[Part, ...], place: int, language: Language, *at_fault: str) -> bool:
    """Whether the words right behind, up to the end of the next sentence, set these facts right, or one of them."""
    return mending(cut_up, place, language, *at_fault) is not None


def mending(cut_up: tuple[Part, ...], place: int, language: Language, *at_fault: str) -> Part | None:
    """The words that do."""
    for at in range(place + 1, min(place + _AHEAD, len(cut_up))):
        part = cut_up[at]
        if part.sentence > cut_up[place].sentence + 1:
            return None
        if part.sentence > cut_up[place].sentence and _begins_with_another(cut_up, at, at_fault, language):
            return None
        if word(language.code, "turns.regardless").search(part.words) is not None:
            continue  # "it won't lie flat, taped it anyway"
        words = without_leads(part.words, language)
        match = begins(apart(language.code, "turns.mended"), words)
        if match is not None and _is_for(words, at_fault, language) and of_the_work(words[match.end() :], language):
            return part
    return None


def _begins_with_another(cut_up: tuple[Part, ...], at: int, at_fault: tuple[str, ...], language: Language) -> bool:
    """ "The tape didn't stick. Gap, half inch, closed it up.": the sentence begins with another fault, which its own words set right."""
    begins_it = cut_up[at - 1].sentence != cut_up[at].sentence
    return begins_it and _FAULTS.isdisjoint(at_fault) and word(language.code, "turns.fault_ahead").match(cut_up[at].words) is not None


def _is_for(words: str, at_fault: tuple[str, ...], language: Language) -> bool:
    """Whether the act these words name, if they name one, is for what is at fault."""
    made = next((facts for pattern, facts in valued(language.code, "turns.mends_only") if pattern.match(words)), None)
    return made is None or not set(made).isdisjoint(at_fault)


def of_the_work(rest: str, language: Language) -> bool:
    """Whether what is told with the mending is of the work: "put it in the truck" and "went back to the shop" mend nothing."""
    turns = language.turns
    return not turns.of_mending or (turns.beside | turns.of_mending).issuperset(_WORDS.findall(_SIGN.sub("", rest)))


def righted(row: Row, cut_up: tuple[Part, ...], one: Claim, at: int, language: Language) -> Claim:
    """What came off at this item; where the words behind say that it is on again, it is, and they are told with it."""
    place = next((k for k, part in enumerate(cut_up) if part.first <= at < part.last), None)
    again = mending(cut_up, place, language, one.name) if place is not None and language.turns.mended else None
    if again is None:
        return one
    return replace(one, value=True, part="", weak=True, last=again.last, end=row.items[again.last - 1].end, read_as=None)


@cache
def _leads(code: str) -> re.Pattern[str]:
    return re.compile(LANGUAGES[code].turns.leads + r"(?:i |we |i've |we've |just |had to |so i |so we )*")


def without_leads(words: str, language: Language) -> str:
    """Words past those that only lead on to what was done."""
    return words[_leads(language.code).match(words).end() :]
