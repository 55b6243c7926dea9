"""Work told in the present by who learned the language late: "I staple every two inch, I tape the joint, rub it down".

Of a piece that was named before it is done. A habit ("I always staple every two") and a rule ("I staple, you tape") are not.
"""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.reading.items import Item, concept_at

_DONE = {"STAPLE": "STAPLED", "RUB": "RUBBED", "WIPE": "WIPED", "TRIM": "TRIMMED", "TAPE": "TAPED", "TAPE_IT": "TAPED"}
_BEGINS = ("", "COMMA", "STOP", "AND", "BUT")
_BEHIND = ("EVERY", "COMMA", "STOP", "", "AND", "DET", "JOINT", "IT", "SIDE", "BOTH", "ALL", "FILLER", "DOWN", "WORD", "SIDES_ALL", "NUM", "ROOM", "WITH", "ON")


def _what_i_did(items: tuple[Item, ...], text: str) -> tuple[Item, ...]:
    """ "The next thing I did was wipe the facing down": behind what he did the bare act is done."""
    done = list(items)
    told = False
    for at, item in enumerate(items):
        if item.concept in ("STOP", "QUERY", "I", "BUT"):
            told = False
        if item.concept in _DONE and (told and concept_at(items, at - 1) in ("AND", "COMMA") or concept_at(items, at - 1) == "BE" and _DID.search(text[: items[at - 1].start].lower())):
            done[at] = replace(item, concept=_DONE[item.concept], value=None)
            told = True
    return tuple(done)


_DID = re.compile(r"\b(?:i|we) (?:just |then |only )?did(?: (?:first|next|then|today|here|after that|on it|to it|with it))* $")


def done_in_the_present(items: tuple[Item, ...], text: str, habit: str) -> tuple[Item, ...]:
    """The items, where such acts are told as done; `habit` are a language's words for what is done time and again."""
    items = _what_i_did(items, text)
    acts = [at for at in range(1, len(items)) if items[at].concept in _DONE and items[at - 1].concept == "I"]
    if not habit or not acts or re.search(habit, text.lower()):
        return items
    done = list(items)
    told = -2
    for at, item in enumerate(items):
        if item.concept not in _DONE or concept_at(items, at + 1) not in _BEHIND or not any(one.concept.startswith("K_") or one.concept == "FITTING" for one in items[:at]):
            continue
        own = concept_at(items, at - 1) == "I" and text[items[at - 1].start : items[at - 1].end].lower() == "i" and concept_at(items, at - 2) in _BEGINS
        goes_on = concept_at(items, at - 1) in ("COMMA", "AND") and told >= 0 and not any(one.concept in ("STOP", "QUERY") for one in items[told:at])
        if own or goes_on:
            done[at] = replace(item, concept=_DONE[item.concept], value=None)
            told = at
    return tuple(done)
