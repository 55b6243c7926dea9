"""Tokens become the words of a transcript: what stands between blanks, with seconds, probability, alternatives."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from logbook.hearing.alignment import Timed
from logbook.hearing.decoder import Hypothesis
from logbook.languages import LANGUAGES
from logbook.transcript import Alternative, Word

HEARD_AT_LEAST = 0.05  # an alternative less likely than this is no alternative
TURNS_AT_LEAST = 0.02  # but a number in a number's place, or a word that turns an act ("now", "not"), counts from here
ALTERNATIVES = 4
HALF_HEARD = 0.3  # of a word in which the recording ends, at most: "twenty" may have been twenty-four, below every doubt limit
WORD = re.compile(r"\w")
NUMBER = re.compile(r" \d{1,2}")
FIGURES = re.compile(r"\d+(?:[-/.x×]\d+)*(?:th|cm|-?inch)?")
NO_NUMBERS = ("un", "una")  # written where "a" is meant
TURNING = {"en": ("not", "now", "no", "new", "know", "don't"), "es": ("no", "ya", "sí", "si", "así", "ni", "falta")}


@dataclass(frozen=True)
class Spoken:
    """What stands between two blanks: its text, its pieces as (text, first token, after the last), and the tokens that
    carry letters or digits."""

    text: str
    parts: tuple[tuple[str, int, int], ...]
    bearing: tuple[int, ...]

    @property
    def first(self) -> int:
        return self.parts[0][1]

    @property
    def after(self) -> int:
        return self.parts[-1][2]


def spoken(tokenizer, tokens: Sequence[int]) -> list[Spoken]:
    """The words of a text, in order."""
    pieces, groups = tokenizer.split_tokens_on_unicode(list(tokens))
    words: list[list[tuple[str, int, int]]] = []
    at = 0
    for piece, group in zip(pieces, groups, strict=True):
        part = (piece, at, at + len(group))
        at += len(group)
        if words and not piece.startswith(" "):
            words[-1].append(part)
        else:
            words.append([part])
    found = []
    for parts in words:
        text = "".join(piece for piece, _, _ in parts).strip()
        if text:
            bearing = [n for piece, a, b in parts if WORD.search(piece) for n in range(a, b)] or list(range(parts[0][1], parts[-1][2]))
            found.append(Spoken(text, tuple(parts), tuple(bearing)))
    return found


def words_of(
    tokenizer, found: Hypothesis, timed: Timed, start: float, said: Sequence[Spoken], numbers: Mapping[int, tuple[Alternative, ...]]
) -> tuple[Word, ...]:
    """Words of one window that begins at `start` seconds; offsets count in the window's stripped text.

    `heard` is the lowest probability of the tokens that carry letters or digits; a doubtful comma does not
    make its word doubtful. `numbers` are other numbers that were weighed in the place of some words.
    """
    made, offset = [], 0
    for n, one in enumerate(said):
        heard = math.exp(min(found.logs[token] for token in one.bearing))
        second, until = start + timed.seconds[one.first], start + timed.seconds[one.after]
        made.append(
            Word(
                one.text, offset, offset + len(one.text), round(second, 2), round(max(until, second), 2), round(heard, 3),
                _alternatives(tokenizer, found, one, numbers.get(n)),
            )  # fmt: skip
        )
        offset += len(one.text) + 1
    return tuple(made)


def number(word: str, language: str) -> str | None:
    """The figures that a word is written with or stands for ("seven" and "7" are the same number); None: it is no number."""
    bare = word.strip(" .,;:!?").casefold()
    if FIGURES.fullmatch(bare):
        return bare
    names, total = LANGUAGES[language].numbers, 0
    for part in bare.split("-"):
        worth = None if part in NO_NUMBERS else names.tens.get(part, names.teens.get(part, names.ones.get(part)))
        if worth is None:
            return None
        total += worth
    return str(total)


def half_heard(word: Word) -> Word:
    """The last word of a recording that ends while somebody speaks."""
    return replace(word, heard=min(word.heard, HALF_HEARD))


def _alternatives(tokenizer, found: Hypothesis, word: Spoken, numbers: tuple[Alternative, ...] | None) -> tuple[Alternative, ...]:
    """Other whole words that the decoder weighed where this one-token word stands; other numbers are those of `numbers`
    where these were weighed with what follows."""
    others = list(numbers or ())
    (n,) = word.bearing if len(word.bearing) == 1 else (None,)
    own = "" if n is None else tokenizer.decode([found.tokens[n]])
    tail = "".join(piece for piece, a, _ in word.parts if n is not None and a > n)
    for token, log in () if n is None else found.candidates[n]:
        said = tokenizer.decode([token])
        if token == found.tokens[n] or not said.startswith(" ") or not WORD.search(said):
            continue
        if numbers is not None and number(said, tokenizer.language) is not None:
            continue
        if math.exp(log) < (TURNS_AT_LEAST if _turns(own, said) else HEARD_AT_LEAST):
            continue
        if said.strip().casefold() != word.text.casefold().strip(".,;:!?"):
            others.append(Alternative(said.strip() + tail, round(math.exp(log), 3)))
    return tuple(sorted(others, key=lambda one: -one.heard)[:ALTERNATIVES])


def _turns(own: str, other: str) -> bool:
    """Whether the two differ in what matters most: another number, or a word that turns the meaning of an act."""
    if NUMBER.fullmatch(own):
        return bool(NUMBER.fullmatch(other))
    words = {one.strip().casefold() for one in (own, other)}
    return any(len(words & set(turning)) > 0 for turning in TURNING.values())


def groups(tokenizer) -> tuple[list[int], list[int]]:
    """Token ids of the numbers to 99, and of the words that turn an act, in the tokenizer's own language."""
    numbers = [ids[0] for n in range(1, 100) if len(ids := tokenizer.encode(f" {n}")) == 1]
    turning = [ids[0] for word in TURNING[tokenizer.language] if len(ids := tokenizer.encode(f" {word}")) == 1]
    return numbers, turning
