"""What a man says to himself between the words of a note: "back, how much, eighteen", "static is, let me see, two point eight".

A look at the gauge and a question without a word of the trade tell nothing and are passed over, so that what he was about to say goes on behind them.
"""

from __future__ import annotations

from collections.abc import Iterator

from logbook.languages import LANGUAGES
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import Token, plain

PAUSES = frozenset((",", "-", "–", "—", "…", ";"))
STOPS = frozenset((".", "!", "?"))
_MOST = 16  # words of a thought or of a question


def passed_over(text: str, found: tuple[Token, ...], code: str) -> set[int]:
    """The places of such thoughts, with the sign of a question behind them."""
    words = LANGUAGES[code].thoughts
    low = {token.low for token in found}
    if words.opens.isdisjoint(low) or PAUSES.isdisjoint(low):
        return set()
    made: set[int] = set()
    for first, last in between_signs(found):
        if not begins(found, first, last, words.leads, words.opens) or not _amid(found, first, last):
            continue
        before = {found[at].text for at in range(first) if found[at].sort == "number"}
        said = " ".join("it" if token.text in before else plain(token.text) for token in found[first:last]).replace(" 's", "'s")  # "what did I do with 8": the piece he speaks of
        if word(code, "thoughts.said").fullmatch(said) is not None and word(code, "thoughts.never").search(said) is None:
            made.update(range(first, last))
            if last < len(found) and found[last].low == "?":
                made.add(last)
    return made


def between_signs(found: tuple[Token, ...]) -> Iterator[tuple[int, int]]:
    """Where the words between two signs begin and end."""
    first = 0
    for at in range(len(found) + 1):
        if at == len(found) or found[at].low in PAUSES or found[at].low in STOPS:
            if 0 < at - first <= _MOST:
                yield first, at
            first = at + 1


def begins(found: tuple[Token, ...], first: int, last: int, leads: frozenset[str], opens: frozenset[str]) -> bool:
    while first < last and found[first].low in leads and found[first].low not in opens:
        first += 1
    return first < last and found[first].low in opens


def _amid(found: tuple[Token, ...], first: int, last: int) -> bool:
    """Whether it stands in a sentence, and is none by itself."""
    if last < len(found) and first > 0 and found[first - 1].low == "?" and found[last].low in STOPS:
        return True  # "taped? Let me look. No."
    return last < len(found) and (found[last].low in PAUSES or first > 0 and found[first - 1].low in PAUSES)
