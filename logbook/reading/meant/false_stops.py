"""Stops that were set for a breath: "taped. Not yet." is read as "taped, not yet", "stapled every two. Three on the back." as one sentence.

What stands between two stops and could be no sentence goes on with the one before it. A question is left alone: what stands behind it answers it.
"""

from __future__ import annotations

import re

from logbook.languages import LANGUAGES
from logbook.languages.fluent import Fluent
from logbook.reading.words.phrasing import word
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import Token, plain

_ENDS = frozenset((".", "!", "?"))
_ENDS_A_FRAGMENT = re.compile(r",| and ")
_LONGEST = 90  # letters of what goes on with a sentence


def cuts(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """The stops that are commas, in order."""
    words = LANGUAGES[code].fluent
    if not words.leads:
        return ()
    stops = [at for at, token in enumerate(found) if token.low in _ENDS and 0 < at < len(found) - 1]
    made = []
    for place, at in enumerate(stops):
        if found[at].low != "." or found[at + 1].low in _ENDS or not _may_go_on(found, at, words):
            continue
        before, asked = _before(text, found, stops, place), place > 0 and found[stops[place - 1]].low == "?"
        if plain(before).strip(" ,") in words.misspoke and place:
            if asked:
                continue  # "vanes? No. Ten by ten."
            before = _before(text, found, stops, place - 1) + "," + before
        end = found[stops[place + 1]].start if place + 1 < len(stops) else len(text)
        behind = plain(text[found[at].end : end]).strip(" .!\n")
        if end < len(text) and text[end] == "?" or len(behind) > _LONGEST:
            continue
        if _goes_on(plain(before).strip(" ,"), behind, words, code):
            made.append(Cut(found[at].start, found[at].end, ","))
    return tuple(made)


def _before(text: str, found, stops: list[int], place: int) -> str:
    return text[found[stops[place - 1]].end if place else 0 : found[stops[place]].start]


def _may_go_on(found, at: int, words: Fluent) -> bool:
    return found[at + 1].low in words.leads or found[at - 1].low in words.misspoke


def _goes_on(before: str, behind: str, words: Fluent, code: str) -> bool:
    if before.rpartition(",")[2].strip() in words.misspoke:
        return word(code, "fluent.begins_value").fullmatch(behind) is not None and word(code, "fluent.ends_value").search(before) is not None
    if word(code, "fluent.begins_own").fullmatch(behind) is not None:
        return False  # "stapled at two. Except for the bottom, it's taped."
    first = _ENDS_A_FRAGMENT.split(behind, maxsplit=1)[0]
    if any(word(code, "fluent.fragments").fullmatch(said) is not None for said in ((behind, first) if " " in first else (behind,))):  # "has vanes. None of them in, taped."
        return True
    topic = before.rpartition(",")[2].strip()
    return word(code, "fluent.of_topic").fullmatch(behind) is not None and word(code, "fluent.topics").fullmatch(topic) is not None
