"""A talk written down with who speaks: "Foreman: any gap at straight 19? Me: half an inch."

Read before anything else. The names before the words are no words of either, and fall away; so does what another tells, unless
it is answered by a yes or a no. What he asks is asked of the speaker.
"""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.words.items import Item
from logbook.reading.words.phrasing import word


@cache
def _name(code: str) -> re.Pattern[str]:
    voices = LANGUAGES[code].told.voices
    return re.compile(rf"(?:^|(?<=[.?!\n]\s)|(?<=[.?!\n]))[\"“ ]*(?:(?P<me>{voices.me})|(?:{voices.speakers})) ?: ?")


def by_turns(text: str, items: tuple[Item, ...], language: Language) -> tuple[Item, ...]:
    """The items without the names of those who speak, and without what another told."""
    said = text.lower().replace("’", "'")
    turns = list(_name(language.code).finditer(said)) if ":" in text and language.told.voices.me else []
    if not any(turn.group("me") for turn in turns):
        return items
    gone: list[tuple[int, int]] = []
    for place, turn in enumerate(turns):
        end = turns[place + 1].start() if place + 1 < len(turns) else len(text)
        answered = place + 1 < len(turns) and word(language.code, "told.voices.replies").match(said, turns[place + 1].end()) is not None
        kept = turn.group("me") or answered or said[turn.end() : end].rstrip(' "”').endswith("?")
        gone.append((turn.start(), turn.end() if kept else end))
    return tuple(item for item in items if not any(start <= item.start < end for start, end in gone))


def asked_by_name(text: str, last: int, first: int) -> bool:
    """Whether the name of who speaks stood between these two places of the text."""
    return ":" in text[last:first]
