"""A language's pattern that is searched only where its words can stand.

The patterns of how people talk are long lists of alternatives, and most notes hold none of them. A note is looked
through for the few letters without which nothing of a pattern can match; only where some are there is the pattern tried.
The answer is the same, the time is not: on a note of 60 words the patterns took a third of the reading.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import cache

from logbook.reading.words.known import known
from logbook.reading.words.letters import Index, beginnings, by_start, word_places
from logbook.reading.words.needs import SHORTEST, of_word

_AT_WORD = r"(?<![\w'])"


class Likely:
    """A compiled pattern with the letters of which a text must hold one (`needs`, each with its first three; none: every text is tried), the further sets of which it must hold one of each (`besides`), how few and how many letters it can match, the letters with which that begins (`opens`, each `deep` letters; none: with any), and whether it is known by these at which words it can begin (`at_a_word`)."""

    __slots__ = ("at_a_word", "besides", "deep", "high", "low", "needs", "opens", "pattern", "regex", "starts")

    def __init__(self, pattern: str, cues: Iterable[tuple[str, ...]] = ()):
        """`cues`: sets of letters of each of which a text must hold one, whatever the pattern itself would find."""
        self.pattern = pattern
        told = known(pattern)
        self.needs, self.low, self.high, self.opens = by_start(told.needs), told.low, told.high, told.opens
        self.starts = frozenset([start for start, _ in self.needs])
        self.besides = (*told.besides, *(one for one in cues if one))
        self.deep = len(next(iter(self.opens), ""))
        self.at_a_word = self.deep == SHORTEST and pattern.startswith(_AT_WORD) and all(of_word(one[0]) for one in self.opens)

    def __getattr__(self, name: str) -> re.Pattern[str]:
        """`regex`, compiled when it is first tried: a note tries few of the thousands, and compiling all took a third of the first reading."""
        if name != "regex":
            raise AttributeError(name)
        self.regex = re.compile(self.pattern)
        return self.regex

    def search(self, text: str, at: int = 0) -> re.Match[str] | None:
        if not self.needs:
            return self._first_at_a_word(text) if self.at_a_word and not at and text.isascii() else self.regex.search(text, at)
        said = beginnings(text)
        if self.starts.isdisjoint(said):
            return None
        if self.at_a_word and not at and text.isascii():
            return self._first_at_a_word(text)
        for start, letters in self.needs:
            if start in said and letters in text:
                return self.regex.search(text, at)
        return None

    def _first_at_a_word(self, text: str) -> re.Match[str] | None:
        """The same of a pattern that begins where a word does: it is tried only at words that begin as it can."""
        places = word_places(text)
        starts = self.opens.intersection(places)
        if not starts:
            return None
        for at in sorted([at for start in starts for at in places[start]]):
            if (match := self.regex.match(text, at)) is not None:
                return match
        return None

    def match(self, text: str, at: int = 0) -> re.Match[str] | None:
        if self.opens and text[at : at + self.deep] not in self.opens and text.isascii():
            return None
        return self.regex.match(text, at) if self._stands(text) else None

    def fullmatch(self, text: str) -> re.Match[str] | None:
        if not self.low <= len(text) <= self.high or self.opens and text[: self.deep] not in self.opens and text.isascii():
            return None
        return self.regex.fullmatch(text) if self._stands(text) else None

    def finditer(self, text: str):
        return self.at_words(text) if self.may(text) else ()

    def at_words(self, text: str) -> Iterable[re.Match[str]]:
        """What `finditer` gives, of a pattern that begins where a word does tried only at words that begin as it can."""
        if not self.at_a_word or not text.isascii():
            return self.regex.finditer(text)
        places, found, end = word_places(text), [], 0
        for at in sorted([at for start in self.opens.intersection(places) for at in places[start]]):
            if at >= end and (match := self.regex.match(text, at)) is not None:
                found.append(match)
                end = match.end()
        return found

    def findall(self, text: str) -> list:
        return self.regex.findall(text) if self.may(text) else []

    def may(self, text: str) -> bool:
        """Whether its letters stand in the text, or in that of which the text is a part."""
        return len(text) >= self.low and self._stands(text)

    def _stands(self, text: str) -> bool:
        if not self.needs:
            return True
        said = beginnings(text)
        if self.starts.isdisjoint(said):
            return False
        for start, letters in self.needs:
            if start in said and letters in text:
                return True
        return False


@cache
def index_of(patterns: tuple[Likely, ...]) -> Index:
    return _index(patterns)


def _index(patterns: Iterable[Likely]) -> Index:
    return Index((one.needs, one.besides, one.opens if one.at_a_word else ()) for one in patterns)


def where_standing(patterns: tuple[Likely, ...], text: str) -> list[int]:
    """The places of those of the patterns whose letters stand in a text, in order."""
    return index_of(patterns).places(text)


def standing(patterns: tuple[Likely, ...], text: str) -> tuple[Likely, ...]:
    """Those of the patterns whose letters stand in a text, so that each of its parts is tried with these alone."""
    return tuple([patterns[at] for at in index_of(patterns).places(text)])


class AnyOf:
    """Many patterns as one: each is tried only where its own letters stand. `search` finds the first in order that matches."""

    __slots__ = ("_index", "_parts")

    def __init__(self, patterns: Iterable[str]):
        made = [Likely(pattern) for pattern in patterns]
        self._parts = tuple(made)
        self._index = _index(made)

    def search(self, text: str) -> re.Match[str] | None:
        for at in self._index.rough(text):
            match = self._parts[at].search(text)
            if match is not None:
                return match
        return None


def alternatives(pattern: str) -> list[str]:
    """The patterns of which this one is a choice, "a|b", "(?:a|b)" or "\\b(?:a|b)"; itself where it is none."""
    made = _parted(pattern)
    if len(made) > 1:
        return [inner for one in made for inner in alternatives(one)]
    for opens in _OPENS:
        inner = _parted(pattern[len(opens) : -1]) if pattern.startswith(opens) and pattern.endswith(")") else ()
        if inner:
            return [f"{opens}{one})" for one in inner] if opens != "(?:" else [one for each in inner for one in alternatives(each)]
    return [pattern]


_OPENS = (r"\b(?:", "(?:")
_STEP = re.compile(r"\\.|\[\^?\]?(?:\\.|[^\]\\])*\]|[(|)]|[^\\\[(|)]+", re.DOTALL)  # a sign with its stroke, a set of signs, a bracket, anything else


def _parted(pattern: str) -> list[str]:
    """Parted at the strokes that stand in no group; nothing where a group is closed that was not opened."""
    made, depth = [""], 0
    for step in _STEP.findall(pattern):
        depth += (step == "(") - (step == ")")
        if depth < 0:
            return []
        if step == "|" and not depth:
            made.append("")
        else:
            made[-1] += step
    return made
