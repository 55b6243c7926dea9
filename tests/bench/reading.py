"""How long reading and judging take: a note of 60, 600 and 6,000 words, median of several; prints, asserts nothing.

    python tests/bench/reading.py

Processor time of this process, so that other work on the machine does not count.
"""

from __future__ import annotations

import statistics
import time
from datetime import UTC, datetime

from logbook import job as jobs
from logbook.note import Note
from logbook.pipeline import reckon
from logbook.reading import read

NOTE = (
    "Okay so fitting {n} is a transition on run two, twenty by fourteen going down to sixteen by fourteen, the right side comes in four, back "
    "twenty-four, flat on the left. Laid out from the female end. Stapled every two inches, taped with one eighty-one A-P, rubbed down till the scrim shows, "
    "and it is hung in the east corridor. "
)


def judged(text: str):
    at = datetime.now(UTC)
    note = Note("said", jobs.DEFAULT.id, "", "", at, at, at, "answered", reading=read(text))
    return reckon([note], (), jobs.DEFAULT, at, without_photos=True)


def median_of(work, text: str, rounds: int) -> float:
    took = []
    for _ in range(rounds):
        begin = time.process_time()
        work(text)
        took.append(time.process_time() - begin)
    return statistics.median(took) * 1000


def main() -> None:
    judged(NOTE.format(n=1))  # builds the lexicon, the patterns and the rules once
    base = None
    for times in (1, 10, 100):
        text = "".join(NOTE.format(n=n + 1) for n in range(times))
        rounds = max(3, 60 // times)
        alone, both = median_of(read, text, rounds), median_of(judged, text, rounds)
        base = base or both
        print(f"{len(text.split()):6} words  read {alone:8.2f} ms  read and judged {both:8.2f} ms  {both / base:7.1f} times the short note")


if __name__ == "__main__":
    main()
