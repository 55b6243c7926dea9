"""When a recording is worth a second hearing, and which of two hearings is the better one.

One number tells a good hearing from a bad one: the mean log probability of its words, each word as likely as its
least likely token, and a stretch that gave no words counted as unlikely words. On 140 spoken notes the word error
rose with it from 0.05 (-0.1) over 0.17 (-0.3) to 0.6 (below -0.7).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import TYPE_CHECKING

from logbook.mistake import Mistake
from logbook.reading import read
from logbook.said import Reading
from logbook.transcript import Transcript

if TYPE_CHECKING:
    from logbook.decoding.sound import Sound
    from logbook.hearing.engine import Engine
    from logbook.job import Job

DOUBTFUL = -0.4  # below it a third of the notes, and two thirds of the wrong words
AHEAD = 0.05  # a second hearing replaces the first when it is this much better
FEWEST = 0.8  # of the first hearing's words: leaving out what is hard to hear makes no better hearing
LEAST = 0.01  # a word is never less likely than this
LOST = ("noise", "repetition", "echo")  # why a stretch with sound gave no words
LOST_WORDS, LOST_AT = 2.0, 0.05  # words a second of such a stretch, and how likely each


def score(heard: Transcript) -> float:
    """Mean log probability of the words; 0 is certain."""
    logs = [math.log(max(LEAST, word.heard)) for word in heard.words]
    lost = LOST_WORDS * sum(gap.until - gap.second for gap in heard.unheard if gap.why in LOST)
    count = len(logs) + lost
    return (sum(logs) + lost * math.log(LOST_AT)) / count if count else math.log(LEAST)


def is_doubtful(heard: Transcript) -> bool:
    return score(heard) < DOUBTFUL


def is_better(second: Transcript, first: Transcript) -> bool:
    """Whether the second hearing of a recording sounds better than the first."""
    return len(second.words) >= FEWEST * len(first.words) and score(second) > score(first) + AHEAD


def says_no_less(second: Reading, first: Reading) -> bool:
    """Whether every fact and every open item of the first stands in the second, with the same value.

    Else a departure that was heard once could go, or a good piece lose an act: the first stands, with its doubts, and asks.
    """

    def told(reading: Reading) -> set:
        return {(one.position, fact.name, fact.value) for one in reading.fittings for fact in one.facts} | {
            (one.position, "(open)", item.about, item.denies) for one in reading.fittings for item in one.open_items
        }

    return told(first) <= told(second)


def taking_the_place(second: Transcript, first: Transcript, language: str | None, job: Job | None = None) -> Reading | None:
    """What a second hearing says, where it takes the place of the first; None: the first stands."""
    if not is_better(second, first):
        return None
    before, after = (read(one.text, language=language, transcript=one, job=job) for one in (first, second))
    return after if says_no_less(after, before) else None


def hear_twice(ears: Engine, sounds: Sequence[Sound], languages: Sequence[str | None]) -> list[Transcript | Mistake]:
    """Every sound heard, the doubtful ones twice; the better hearing of each. For those who wait anyway."""
    found = list(ears.hear(sounds, languages=languages))
    for place, (heard, sound, language) in enumerate(zip(found, sounds, languages, strict=True)):
        if isinstance(heard, Transcript) and heard.words and is_doubtful(heard):
            again = ears.hear_again(sound, language=language or heard.language)
            if isinstance(again, Transcript) and taking_the_place(again, heard, language):
                found[place] = again
    return found
