"""Which language a text is in, by the words only one of the two uses; neither is an answer too."""

from __future__ import annotations

from collections import Counter
from functools import cache

from logbook.languages import LANGUAGES
from logbook.reading.words.items import book
from logbook.reading.words.tokens import Token, bare

_LEAST = 0.2  # share of telling words among all words, in a text of more than a few words
_KNOWN = 0.6  # share of words a lexicon knows, where too few words tell
_ENOUGH = 20_000  # tokens looked at


def found(tokens: tuple[Token, ...]) -> str | None:
    """`en`, `es` or None. Digits and signs tell nothing."""
    looked_at = tokens[:_ENOUGH]
    labels = {at for at, token in enumerate(looked_at[1:]) if token.low == ":"}  # "todo: tape" is a label in whatever language
    words = [token.low for at, token in enumerate(looked_at) if token.sort == "word" and (at not in labels or len(labels) > 1)]
    if not words:
        return None
    heard = Counter(words)
    hits = {code: (heard.keys() & lang.telling) | ({w for w in heard if not w.isascii() and bare(w) in lang.telling} if code == "es" else set()) for code, lang in LANGUAGES.items()}
    scores = {code: sum(heard[w] for w in told) for code, told in hits.items()}
    if all(scores.values()):  # trade English stands in Spanish notes too: where both are told, the words of one alone decide
        alone = {code: sum(heard[w] for w in told if not any(w in book(other).known for other in LANGUAGES if other != code)) for code, told in hits.items()}
        scores = alone if any(alone.values()) and max(alone.values()) != min(alone.values()) else scores
    best = max(scores, key=lambda code: (scores[code], code == "en"))
    if scores[best] >= _LEAST * len(words) or (scores[best] and len(words) <= 6):
        return best
    known = {code: _known(heard, code) for code in LANGUAGES}
    best = max(known, key=lambda code: (known[code], scores[code], code == "en"))
    return best if known[best] >= _KNOWN * len(words) else None


def _known(heard: Counter[str], code: str) -> int:
    """How many of the words a language knows, as words of its own, numbers or units."""
    words, plain = _words(code)
    return sum(times for word, times in heard.items() if word in words or (word if word.isascii() else bare(word)) in plain)


@cache
def _words(code: str) -> tuple[frozenset[str], frozenset[str]]:
    """The words of a language as they are written, and those that count without their accents too."""
    numbers = LANGUAGES[code].numbers
    counted = frozenset().union(numbers.ones, numbers.teens, numbers.tens, numbers.hundreds, numbers.scales, numbers.parts)
    return book(code).known | book(code).units.keys(), book(code).known | counted
