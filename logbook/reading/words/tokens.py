"""Text to tokens: words, digits and signs, each with its place in the text.

Letters and digits are kept apart ("18x12" is three tokens, "T4" two) and a hyphen inside a word is no token: the
next token remembers it in `gap`. So one spelling of a thing is enough in the lexicon.
"""

from __future__ import annotations

import re
import unicodedata
from typing import NamedTuple
from functools import lru_cache

_TOKEN = re.compile(
    r"(?P<number>\d{1,3}(?:,\d{3})+(?!\d)|\d+(?:\.\d+)?|\.\d+|[¼½¾⅓⅔⅛⅜⅝⅞])"
    r"|(?P<word>['’]s\b|[^\W\d_]+(?:['’](?!s\b)[^\W\d_]+)*\.?(?:[^\W\d_]\.)*)"
    r"|(?P<sign>''|[^\w\s])"
)
_DOTTED = re.compile(r"(?:[^\W\d_]\.){2,}")  # o.c. and w.g. keep their dots, the end of a sentence does not


class Token(NamedTuple):
    text: str
    low: str  # lower case
    bare: str  # lower case without accents
    start: int
    end: int
    sort: str  # number word sign
    gap: str  # what stands before it: nothing, a blank, or a hyphen


@lru_cache(maxsize=4096)
def bare(word: str) -> str:
    """Lower case without accents: "sección" is "seccion". One word in, one word out."""
    return "".join(c for c in unicodedata.normalize("NFD", word.lower()) if not unicodedata.combining(c))


@lru_cache(maxsize=4096)
def plain(words: str) -> str:
    """Lower case without the accents of Spanish, letter for letter: hands and ears leave them out."""
    return words.lower().translate(_BARE)


_BARE = str.maketrans("áéíóúü’", "aeiouu'")


def tokens(text: str) -> tuple[Token, ...]:
    """All tokens of a text in order; offsets count code points of the text as given."""
    found: list[Token] = []
    last_end, hyphen = 0, False
    for match in _TOKEN.finditer(text):
        sort, (start, end) = match.lastgroup, match.span()
        if sort == "word" and text[end - 1] == "." and not _DOTTED.fullmatch(match.group()):
            word = match.group().rstrip(".")
            word = word.split(".")[0]
            found.append(_token(text, start, start + len(word), "word", _gap(text, last_end, start, hyphen)))
            last_end, hyphen = start + len(word), False
            found.extend(_rest(text, start + len(word), end))
            last_end = end
            continue
        if sort == "sign" and match.group() in "-‐‑" and _inside_word(text, start, end):
            hyphen = True
            continue
        found.append(_token(text, start, end, sort, _gap(text, last_end, start, hyphen)))
        last_end, hyphen = end, False
    return tuple(found)


def lows(phrase: str) -> tuple[str, ...]:
    """The words of a phrase in lower case, as its tokens have them. Most of the hundred thousand phrases of a lexicon are letters and blanks alone, and are parted without looking for signs."""
    if phrase.replace(" ", "").isalpha():
        return tuple(phrase.lower().split())
    return tuple(token.low for token in tokens(phrase))


def _rest(text: str, start: int, end: int):
    """What a word with a dot left over: the dot, and perhaps another word right behind it."""
    for match in _TOKEN.finditer(text, start, end):
        piece = match.group().rstrip(".")
        if match.lastgroup == "word" and piece:
            yield _token(text, match.start(), match.start() + len(piece), "word", "")
            for at in range(match.start() + len(piece), match.end()):
                yield _token(text, at, at + 1, "sign", "")
        else:
            yield _token(text, match.start(), match.end(), match.lastgroup, "")


def _token(text, start, end, sort, gap) -> Token:
    word = text[start:end]
    low = word.lower()
    if low.isascii():
        return Token(word, low, low, start, end, sort, gap)
    low = low.replace("’", "'")
    return Token(word, low, bare(low), start, end, sort, gap)


def _gap(text, last_end, start, hyphen) -> str:
    if hyphen:
        return "-"
    return "" if last_end == start else " "


def _inside_word(text: str, start: int, end: int) -> bool:
    return 0 < start and end < len(text) and text[start - 1].isalnum() and text[end].isalnum()
