"""Numbers are weighed once more: other numbers are put in the place of a heard one, and what follows must still fit.

At its own step "20" may be a little likelier than "24" where a speaker said "twenty-four by ten", and the next step then
writes "for by 10". So a number that the decoder weighed is put in place of the word, alone or together with one or two
words after it ("24" for "20 for"), and the words that follow are scored behind it, one token a step, on the kept
keys and values. What comes within `AT_LEAST` of the words as heard is offered as their alternative. No word is changed.

    again(decoder, found, memory, spoken, grammar, barred) -> {place in `spoken`: (Alternative, …)}

The grammar of numbers: whole ones to 99 as Whisper writes them, halves, quarters and eighths.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from torch import Tensor

from logbook.hearing.branches import Branches
from logbook.hearing.decoder import Decoder, Hypothesis
from logbook.hearing.memory import Memory
from logbook.hearing.words import Spoken, number
from logbook.transcript import Alternative

AT_LEAST = 0.03  # share of all that was weighed: below it half of the offers were false and none more was right
FOLLOWING = 2  # tokens behind it that must fit
WORDS = 3  # at most that one number takes the place of: "30 y 3"
MOST = 24  # number words of one window; a text with more is a list, and faint in other ways

FRACTIONS = {
    "en": ("half", "quarter", "eighth", "eighths", "1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8"),
    "es": ("medio", "media", "cuarto", "octavo", "1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8"),
}


@dataclass(frozen=True)
class Grammar:
    """What may stand in a number's place, by its first token: (text, all its tokens)."""

    language: str
    ways: Mapping[int, tuple[tuple[str, tuple[int, ...]], ...]]
    end: int


@dataclass(frozen=True)
class _Way:
    """One number in place of the words from `word` on: tokens that are forced, and what is known of the first of them."""

    word: int
    text: str
    over: int
    start: int  # place in the text's tokens
    tokens: tuple[int, ...]
    first: float
    as_heard: float  # log probability of the words it replaces and of what follows them, as they were heard


def grammar(tokenizer, language: str) -> Grammar:
    ways: dict[int, list] = {}
    for text in (*map(str, range(1, 100)), *FRACTIONS[language]):
        tokens = tuple(tokenizer.encode(f" {text}"))
        ways.setdefault(tokens[0], []).append((text, tokens))
    return Grammar(language, {first: tuple(some) for first, some in ways.items()}, tokenizer.eot)


def again(
    decoder: Decoder, found: Hypothesis, memory: Memory, spoken: Sequence[Spoken], allowed: Grammar, barred: Tensor
) -> dict[int, tuple[Alternative, ...]]:
    """The numbers that may have been said, likeliest first, for each word of `spoken` that holds a number.

    `memory` is of this one item. `barred` (vocabulary) is added to the logits. A number word without other numbers has an empty tuple.
    """
    numbers = [n for n, one in enumerate(spoken) if number(one.text, allowed.language) is not None]
    if found.kept is None or not 0 < len(numbers) <= MOST:
        return {}
    ways = [way for n in numbers for way in _ways(n, found, spoken, allowed)]
    best: dict[int, dict[str, tuple[float, int]]] = {n: {} for n in numbers}
    for way, log in zip(ways, _weighed(decoder, Branches(found.kept), memory, ways, barred), strict=True):
        ahead = log - way.as_heard
        if ahead > best[way.word].get(way.text, (-math.inf, 0))[0]:
            best[way.word][way.text] = (ahead, way.over)
    offered = {}
    for n, others in best.items():
        whole = 1.0 + sum(math.exp(ahead) for ahead, _ in others.values())
        some = [Alternative(text, round(math.exp(ahead) / whole, 3), over) for text, (ahead, over) in others.items()]
        offered[n] = tuple(sorted((one for one in some if one.heard >= AT_LEAST), key=lambda one: -one.heard))
    return offered


def _ways(n: int, found: Hypothesis, spoken: Sequence[Spoken], allowed: Grammar) -> list[_Way]:
    """Every number that the decoder weighed there, before each place where the heard words may go on."""
    start, own = spoken[n].first, number(spoken[n].text, allowed.language)
    text, logs = (*found.tokens, allowed.end), (*found.logs, 0.0)
    made = []
    for token, first in found.candidates[start]:
        for said, tokens in allowed.ways.get(token, ()):
            for over, place, rest in _goes_on(n, spoken):
                if said + rest == own:
                    continue
                behind = text[place : place + FOLLOWING]
                counted = (*tokens, *behind)
                if counted == text[start : start + len(counted)]:
                    continue  # the words as heard
                made.append(_Way(n, said + rest, over, start, counted, first, sum(logs[start : place + len(behind)])))
    return made


def _goes_on(n: int, spoken: Sequence[Spoken]) -> list[tuple[int, int, str]]:
    """(words replaced, token at which the heard text goes on, what stays of the word): within the word ("-inch"), and after
    it and the next ones, with the last one's comma left standing and without it."""
    word = spoken[n]
    places = []
    for at, (piece, first, _) in enumerate(word.parts[1:], 1):
        rest = "".join(text for text, a, _ in word.parts[at:] if a <= word.bearing[-1])
        if first <= word.bearing[-1] and not piece[0].isdigit():
            places.append((1, first, rest))
    for over, one in enumerate(spoken[n : n + WORDS], 1):
        places += [(over, place, "") for place in sorted({one.bearing[-1] + 1, one.after})]
    return places


def _weighed(decoder: Decoder, branches: Branches, memory: Memory, ways: Sequence[_Way], barred: Tensor) -> list[float]:
    """Log probability of each way's tokens after the text before it; -inf as soon as it is too unlikely to be offered."""
    sums = [way.first for way in ways]
    least = math.log(AT_LEAST)
    for depth in range(max((len(way.tokens) for way in ways), default=0) - 1):
        for n, way in enumerate(ways):
            if sums[n] - way.as_heard < least:  # what follows can only make it less likely
                sums[n] = -math.inf
        fed: dict[tuple, list[int]] = {}  # ways that are alike so far go as one
        for n, way in enumerate(ways):
            if sums[n] > -math.inf and depth + 1 < len(way.tokens):
                fed.setdefault((way.start, way.tokens[: depth + 1]), []).append(n)
        if not fed:
            break
        logs = decoder.branch(branches, memory, list(fed), barred)
        for row, some in enumerate(fed.values()):
            for n in some:
                sums[n] += float(logs[row, ways[n].tokens[depth + 1]])
    return [log if log - way.as_heard >= least else -math.inf for log, way in zip(sums, ways, strict=True)]
