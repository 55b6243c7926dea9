"""Which of many patterns can find something in a text, known by the words that stand in it: a note is looked through once for all of them."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from functools import lru_cache

from logbook.reading.words.needs import BEGINS, IN_MOST, SHORTEST, of_word

Cues = tuple[tuple[str, str], ...]  # letters, each behind the first three of them, or behind nothing where they are fewer
_LONG = 5
_MOST_SETS = 5  # of a pattern: more of them tell nothing new
_THREE = re.compile("." * SHORTEST, re.DOTALL).findall
_AT_WORD = re.compile(r"(?<![^\W\d_])(?=(\w..))", re.DOTALL).finditer
_AT_WORDS = re.compile(r"(?<![^\W\d_])(?=(\w.{4}))", re.DOTALL).findall


@lru_cache(maxsize=512)
def beginnings(text: str) -> frozenset[str]:
    """Every three letters that stand in a text behind one another, a blank before it: a clause is asked for them many times."""
    text = " " + text
    return frozenset([*_THREE(text), *_THREE(text, 1), *_THREE(text, 2)])


def by_start(letters: Iterable[str]) -> Cues:
    """Each with its first three letters: of most that a text does not hold it does not hold these, which is known sooner."""
    return tuple([(one[:SHORTEST] if len(one) >= SHORTEST else "", one) for one in letters])


@lru_cache(maxsize=512)
def _words(text: str) -> frozenset[str]:
    """The first letters of every word of a text with what stands behind it, three and five of them."""
    five = _AT_WORDS(text + " " * _LONG)
    return frozenset([*five, *[one[:SHORTEST] for one in five]])


@lru_cache(maxsize=512)
def word_places(text: str) -> Mapping[str, list[int]]:
    """The first three letters of every word of a text with what stands behind it, and where such words begin. Nobody writes into it."""
    places: dict[str, list[int]] = {}
    for match in _AT_WORD(text + " " * SHORTEST):
        places.setdefault(match[1], []).append(match.start())
    return places


class Index:
    """The places of many patterns by what they need: sets of letters, of each of which a text must hold one.

    Each pattern is a bit of a number, once for each of its sets. A text has all sets of all patterns looked at together, in one number of
    many bits, by the first few letters of their words, and by three letters of those in which no word is known to begin. Of the sets of a pattern the few that tell most count,
    and the letters with which it begins where a word does.
    """

    __slots__ = ("_anywhere", "_free", "_layers", "_masks", "_needs", "_starts", "_whole", "_wide")

    def __init__(self, needed: Iterable[tuple[Cues, Iterable[Iterable[str]], Iterable[str]]]):
        """Of each pattern letters of which a text must hold one as they are, all its sets, and the letters with which a word begins wherever it finds something (none: it may begin elsewhere)."""
        needed = list(needed)
        each = [sorted([frozenset(map(_cue, some)) for some in sets if min(map(len, some)) >= SHORTEST], key=_commonness)[:_MOST_SETS] for _, sets, _ in needed]
        self._wide, self._layers = len(each), max(map(len, each), default=0)
        self._whole, self._free = (1 << self._wide) - 1, 0
        self._needs = tuple([some for some, _, _ in needed])
        self._masks: dict[str, int] = {}
        for place, (sets, (_, _, opens)) in enumerate(zip(each, needed, strict=True)):
            for layer in range(self._layers + 1):
                some = opens if layer == self._layers else sets[layer] if layer < len(sets) else ()
                bit = 1 << layer * self._wide + place
                if not some:
                    self._free |= bit
                for start in some:
                    self._masks[start] = self._masks.get(start, 0) | bit
        self._starts = frozenset([one for one in self._masks if not one.startswith(_ANYWHERE)])
        self._anywhere = frozenset([one[1:] for one in self._masks if one.startswith(_ANYWHERE)])

    def places(self, text: str) -> list[int]:
        """The places of the patterns that can find something in the text, in order."""
        found, said, needs = [], beginnings(text), self._needs
        for place in self.rough(text):
            for start, letters in needs[place]:
                if (start in said or not start) and letters in text:
                    found.append(place)
                    break
            else:
                if not needs[place]:
                    found.append(place)
        return found

    def rough(self, text: str) -> list[int]:
        """The same and more: no letters are looked for whole. For who tries each of them once."""
        stand, masks = self._free, self._masks
        for start in _words(text) & self._starts:
            stand |= masks[start]
        for start in beginnings(text) & self._anywhere if self._anywhere else ():
            stand |= masks[_ANYWHERE + start]
        able, wide = self._whole, self._wide
        for _ in range(self._layers + text.isascii()):  # the last layer is that of how they begin; digits of other scripts: see `Likely.match`
            able &= stand
            stand >>= wide
        found = []
        while able:
            found.append((able & -able).bit_length() - 1)
            able &= able - 1
        return found


_ANYWHERE = "\1"  # before letters that may stand within a word


def _cue(letters: str) -> str:
    """The first letters of a word in these, or else their own first three."""
    return _start(letters) or _ANYWHERE + letters.removeprefix(BEGINS)[:SHORTEST]


def _commonness(cues: frozenset[str]) -> tuple:
    return any(one.strip() in IN_MOST for one in cues), len(cues), sorted(cues)


def _start(letters: str) -> str:
    """The first letters of a word in these, of the one that tells most; nothing where none begins in them."""
    begins, letters = letters.startswith(BEGINS), letters.removeprefix(BEGINS)
    at = [place for place, one in enumerate(letters) if of_word(one) and (not of_word(letters[place - 1]) if place else begins)]
    starts = [letters[place : place + _LONG] if len(letters) >= place + _LONG else letters[place : place + SHORTEST] for place in at if len(letters) >= place + SHORTEST]
    return max(starts, key=lambda one: (one.strip() not in IN_MOST, len(one)), default="")
