"""Who leaves out his articles has them back before the parts of a piece and what stands about it: "except bottom" is read as "except the bottom".

Many who learned their English on the job speak so, and so do hurried men. A word gets none where a number, an adjective or another name stands before it.
"""

from __future__ import annotations

from logbook.languages import LANGUAGES
from logbook.languages.articles import Articles
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import Token

_SIGNS = frozenset(".,;:!?")


def cuts(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """The articles that were left out, in order, each before its word."""
    words = LANGUAGES[code].fluent.articles
    if not words.article:
        return ()
    heads = [at for at, token in enumerate(found) if token.low in words.things]
    return tuple(Cut(found[first].start, found[first].start, f"{words.article} ") for at in heads if (first := _begins(found, at, words)) is not None)


def _begins(found: tuple[Token, ...], at: int, words: Articles) -> int | None:
    """Where the name of the thing begins, if it stands without an article."""
    first, head = at, found[at].low
    if at and found[at - 1].low in words.which and head in words.of_which:
        first = at - 1
    elif head in words.only_which:
        return None
    if any(found[one].gap == "-" for one in range(first, min(at + 2, len(found)))):
        return None
    before, earlier = found[first - 1].low if first else ".", found[first - 2].low if first > 1 else "."
    behind = found[at + 1].low if at + 1 < len(found) else "."
    if behind in words.not_before or behind in words.counts or at + 1 < len(found) and found[at + 1].sort == "number":
        return None
    if before in words.behind:
        told = earlier in words.own or earlier in words.counts or first > 1 and found[first - 2].sort == "number"
        return None if told or (before, found[first].low) in words.as_they_are or head in words.only_to and before != "to" else first
    opens = before in _SIGNS or before in words.opens
    return first if opens and behind in words.tells and (before, found[first].low) not in words.as_they_are else None
