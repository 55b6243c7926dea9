"""Tokens become the words of a transcript: what stands between blanks, with seconds, probability, alternatives."""

from __future__ import annotations

import math
import re
from dataclasses import replace

from logbook.hearing.alignment import Timed
from logbook.hearing.decoder import Hypothesis
from logbook.transcript import Alternative, Word

HEARD_AT_LEAST = 0.05  # an alternative less likely than this is no alternative
TURNS_AT_LEAST = 0.02  # but a number in a number's place, or a word that turns an act ("now", "not"), counts from here
ALTERNATIVES = 4
HALF_HEARD = 0.3  # of a word in which the recording ends, at most: "twenty" may have been twenty-four, below every doubt limit
WORD = re.compile(r"\w")
NUMBER = re.compile(r" \d{1,2}")
TURNING = {"en": ("not", "now", "no", "new", "know", "don't"), "es": ("no", "ya", "sí", "si", "así", "ni", "falta")}


def words_of(tokenizer, found: Hypothesis, timed: Timed, start: float) -> tuple[Word, ...]:
    """Words of one window that begins at `start` seconds; offsets count in the window's stripped text.

    `heard` is the lowest probability of the tokens that carry letters or digits; a doubtful comma does not
    make its word doubtful.
    """
    pieces, groups = tokenizer.split_tokens_on_unicode(list(found.tokens))
    words: list[list[tuple[str, int, int]]] = []  # (text, first token, after the last token) of each piece
    at = 0
    for piece, group in zip(pieces, groups, strict=True):
        part = (piece, at, at + len(group))
        at += len(group)
        if words and not piece.startswith(" "):
            words[-1].append(part)
        else:
            words.append([part])
    made, offset = [], 0
    for parts in words:
        text = "".join(piece for piece, _, _ in parts).strip()
        if not text:
            continue
        first, after = parts[0][1], parts[-1][2]
        bearing = [n for piece, a, b in parts if WORD.search(piece) for n in range(a, b)] or list(range(first, after))
        heard = math.exp(min(found.logs[n] for n in bearing))
        second, until = start + timed.seconds[first], start + timed.seconds[after]
        made.append(
            Word(
                text, offset, offset + len(text), round(second, 2), round(max(until, second), 2), round(heard, 3),
                _alternatives(tokenizer, found, bearing, parts, text),
            )  # fmt: skip
        )
        offset += len(text) + 1
    return tuple(made)


def half_heard(word: Word) -> Word:
    """The last word of a recording that ends while somebody speaks."""
    return replace(word, heard=min(word.heard, HALF_HEARD))


def _alternatives(tokenizer, found: Hypothesis, bearing: list[int], parts, text: str) -> tuple[Alternative, ...]:
    """Other whole words that the decoder weighed where this one-token word stands."""
    if len(bearing) != 1:
        return ()
    (n,) = bearing
    own = tokenizer.decode([found.tokens[n]])
    tail = "".join(piece for piece, a, _ in parts if a > n)
    others = []
    for token, log in found.candidates[n]:
        said = tokenizer.decode([token])
        if token == found.tokens[n] or not said.startswith(" ") or not WORD.search(said):
            continue
        if math.exp(log) < (TURNS_AT_LEAST if _turns(own, said) else HEARD_AT_LEAST):
            continue
        if said.strip().casefold() != text.casefold().strip(".,;:!?"):
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
