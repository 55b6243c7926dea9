"""The shape of the words before which an article may be left out."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Articles:
    """Words in lower case; a language without `article` has none put back."""

    article: str = ""
    things: frozenset[str] = frozenset()  # there is one of it on a piece, on a man or on a job
    which: frozenset[str] = frozenset()  # the word before it that tells which
    of_which: frozenset[str] = frozenset()  # of the things, those before which such a word may stand
    only_which: frozenset[str] = frozenset()  # those that stand alone only as many, or as what they are made of
    behind: frozenset[str] = frozenset()  # right behind it the article is left out
    own: frozenset[str] = frozenset()  # before such a word, that is none of these but belongs to another thing: "the left cheek"
    only_to: frozenset[str] = frozenset()  # of the things, those that lack it behind "to" alone
    counts: frozenset[str] = frozenset()  # a number, right behind the thing or before the word that it stands behind
    not_before: frozenset[str] = frozenset()  # right behind the thing, that then is another
    as_they_are: frozenset[tuple[str, str]] = frozenset()  # two words that are said so by everybody
    opens: frozenset[str] = frozenset()  # before the first word of what is told
    tells: frozenset[str] = frozenset()  # right behind the thing, where it is the first word
