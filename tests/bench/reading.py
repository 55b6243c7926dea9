"""How long reading takes: a note of 60, 600 and 6,000 words, median of several; prints, asserts nothing.

    python tests/bench/reading.py
"""

from __future__ import annotations

import statistics
import time

from logbook.reading import read

NOTE = (
    "Okay so fitting {n} is a transition on run two, twenty by fourteen going down to sixteen by fourteen, the right side comes in four, back "
    "twenty-four, flat on the left. Laid out from the female end. Stapled every two inches, taped with one eighty-one A-P, rubbed down till the scrim shows, "
    "and it is hung in the east corridor. "
)


def main() -> None:
    read(NOTE.format(n=1))  # builds the lexicon and the patterns once
    base = None
    for times in (1, 10, 100):
        text = "".join(NOTE.format(n=n + 1) for n in range(times))
        rounds = []
        for _ in range(max(3, 60 // times)):
            begin = time.perf_counter()
            read(text)
            rounds.append(time.perf_counter() - begin)
        median = statistics.median(rounds) * 1000
        base = base or median
        print(f"{len(text.split()):6} words  {median:8.2f} ms  {median / base:7.1f} times the short note")


if __name__ == "__main__":
    main()
