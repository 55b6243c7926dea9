"""The letters without which a pattern finds nothing: sets, of each of which every match holds one."""

from __future__ import annotations

import re
from re import _constants as sre
from re import _parser  # the standard library's own reading of a pattern; it has no public door

SHORTEST = 3  # letters: shorter ones stand in almost every note
MOST = 400  # sets of more letters are not worth the look
BEGINS = "\0"  # before letters that begin a word wherever the pattern finds them
IN_MOST = frozenset("the and of to in it is was on for with that this all not have had from down side tape taped staple stapled run el la los las de en que con por una uno".split())  # letters that most notes hold tell nothing
_LETTERS = re.compile(r"[a-z]+")


def needed(parsed) -> list[frozenset[str]]:
    """Every set that is known of a parsed pattern, the one that tells most first."""
    return sorted(set(_walk(parsed, False, _by_letters)[0]), key=lambda one: (_by_letters(one), sorted(one)))


def words_needed(pattern: str) -> list[frozenset[str]]:
    """The same by the longest word of each, wherever the signs between the words of the pattern may stand."""
    found = _walk(_parser.parse(pattern), False, _by_word)[0]
    return [frozenset(map(_longest_word, one)) for one in found if _by_word(one)[0] is False]


def shortest(needs: frozenset[str]) -> tuple[str, ...]:
    """Without those that hold another of them; none where they are too many to be worth it."""
    needs = frozenset([one.removeprefix(BEGINS) for one in needs])
    kept = tuple(sorted((one for one in needs if not any(other != one and other in one for other in needs)), key=lambda one: (len(one), one)))
    return kept if len(kept) <= MOST else ()


def _longest_word(letters: str) -> str:
    return max(_LETTERS.findall(letters), key=len, default="")


def _by_word(one: frozenset[str]) -> tuple:
    words = [_longest_word(letters) for letters in one]
    return any(len(word) < SHORTEST for word in words), any(word in IN_MOST for word in words), len(words), -min(map(len, words))


def _by_letters(one: frozenset[str]) -> tuple:
    return any(letters.strip(" '\0") in IN_MOST for letters in one), len(one), -min(map(len, one))


def _walk(parsed, begins: bool, rank) -> tuple[list[frozenset[str]], bool]:
    """The sets, and whether what comes next begins a word if it is one; `begins`: whether the first does."""
    found: list[frozenset[str]] = []
    letters = ""
    for kind, value in [*parsed, (None, None)]:
        if kind is sre.LITERAL:
            one = chr(value)
            letters, begins = (letters or BEGINS * begins) + one, not of_word(one)
            continue
        if len(letters.removeprefix(BEGINS)) >= SHORTEST:
            found.append(frozenset((letters,)))
        letters = ""
        if kind is sre.BRANCH:
            each = [_walk(one, begins, rank) for one in value[1]]
            if all(sets for sets, _ in each):
                found.append(frozenset().union(*(min(sets, key=rank) for sets, _ in each)))
            begins = all(after for _, after in each)
        elif kind is sre.SUBPATTERN:
            sets, begins = _walk(value[-1], begins, rank)
            found += sets
        elif kind in (sre.MAX_REPEAT, sre.MIN_REPEAT, sre.POSSESSIVE_REPEAT):
            sets, after = _walk(value[-1], begins and value[1] == 1, rank)
            if value[0] > 0:
                found += sets
            begins = after and (begins or value[0] > 0)
        elif kind is sre.AT:
            begins = begins or value in (sre.AT_BEGINNING, sre.AT_BEGINNING_STRING, sre.AT_BOUNDARY)
        elif kind is sre.ASSERT:
            side, inner = value
            if side > 0:
                found += _walk(inner, begins, rank)[0]
            else:
                begins = begins or _is_sign(*inner[-1])
        elif kind is sre.ASSERT_NOT:
            begins = begins or value[0] < 0 and _all_of_words(value[1])
        elif kind is not None:
            begins = _is_sign(kind, value)
    return found, begins


def _is_sign(kind, value) -> bool:
    """Whether a step is no letter and no digit."""
    if kind is sre.LITERAL:
        return not of_word(chr(value))
    return kind is sre.IN and all(sort is sre.LITERAL and not of_word(chr(one)) or sort is sre.CATEGORY and one is sre.CATEGORY_SPACE for sort, one in value)


def _all_of_words(inner) -> bool:
    """Whether what must not stand before is any letter: the word begins here."""
    return len(inner) == 1 and inner[0][0] is sre.IN and inner[0][1][0][0] is not sre.NEGATE and (sre.CATEGORY, sre.CATEGORY_WORD) in inner[0][1]


def of_word(letter: str) -> bool:
    return letter == "_" or letter.isalnum()
