"""A fuzzer of the reader: sentences cut, shuffled, doubled and spoilt by the thousand; nothing raises, every fact keeps its words.

    python -m pytest -q tests/long/test_any_words.py
    FUZZ_SECONDS=600 python -m pytest -q tests/long/test_any_words.py
"""

from __future__ import annotations

import os
import random
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from reading_cases import FILES, sentences  # noqa: E402

from logbook.facts import BY_NAME, to_json  # noqa: E402
from logbook.reading import read  # noqa: E402

SECONDS = float(os.environ.get("FUZZ_SECONDS", "60"))
SENTENCES = [case for name in FILES for case in sentences(name)]
WORDS = sorted({word for case in SENTENCES for word in case.text.split()})
STRANGE = ("\u200f", "\u202e", "👍", "\x00", "½", "''", "—", "…", "«", "’", "ñ", "\n", "  ", "/", "x", "%", "0", "99999999999", "1/0", "-", ".", "?")


def spoilt(chance: random.Random) -> tuple[str, str | None]:
    """One text: whole sentences, pieces of sentences, or loose words, with signs put in or letters taken out."""
    one, other = chance.choice(SENTENCES), chance.choice(SENTENCES)
    match chance.randrange(5):
        case 0:
            words = one.text.split()[chance.randrange(3) :] + other.text.split()[: chance.randrange(12)]
        case 1:
            words = chance.sample(one.text.split(), len(one.text.split()))
        case 2:
            words = [chance.choice(WORDS) for _ in range(chance.randrange(40))]
        case 3:
            words = [word.strip(".,?;:") for word in (one.text + " " + other.text).lower().split()]
        case _:
            words = one.text.split() * chance.randrange(1, 4)
    for _ in range(chance.randrange(4)):
        if words:
            at = chance.randrange(len(words))
            words[at] = chance.choice((chance.choice(STRANGE), words[at][:-1], words[at] + chance.choice(STRANGE), words[at].upper()))
    return " ".join(words), chance.choice((None, one.language))


def test_nothing_raises_and_every_fact_keeps_its_words():
    seed = int(os.environ.get("FUZZ_SEED", str(time.time_ns() % 10**9)))
    chance, end, count = random.Random(seed), time.monotonic() + SECONDS, 0
    while time.monotonic() < end:
        text, language = spoilt(chance)
        try:
            reading = read(text, language=language)
            for entry in reading.fittings:
                for fact in entry.facts:
                    assert fact.name in BY_NAME and text[fact.start : fact.end] == fact.words
                    to_json(fact.name, fact.value)
                    for span in (*fact.also, *fact.withdrawn):
                        assert text[span.start : span.end] == span.words
                for item in entry.open_items:
                    assert text[item.start : item.end] == item.text
            assert reading.fittings or reading.shift or reading.withdraws or reading.reason
        except Exception as error:
            raise AssertionError(f"seed {seed}, text {count}: {text!r} in {language}") from error
        count += 1
    assert count > 100
