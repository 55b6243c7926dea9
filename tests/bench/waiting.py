"""How long others wait beside a forgotten recording: python tests/bench/waiting.py [--minutes 10] [--keep FILE]

A note whose microphone was forgotten (the note, then engine, talk across a hall, music and an empty room) is handed in, and four
short notes right after it, and one more each time the worker has heard a stretch. One worker, real ears. In the same run:

* alone: the four short notes with nothing beside them;
* beside: the same four, handed in after the forgotten one; and the longest wait of those that come while it is being heard;
* in one go: the same five where the long one is not heard in stretches, as it was before.

Asserts nothing.
"""

from __future__ import annotations

import argparse
import json
import resource
import sys
import tempfile
import time
import uuid
from datetime import UTC, datetime
from pathlib import Path

import numpy as np

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE), str(HERE.parent), str(HERE.parent / "making")]

import bad_sound  # noqa: E402

from logbook import store, worker  # noqa: E402
from logbook.decoding import sound  # noqa: E402
from logbook.decoding.sound import RATE  # noqa: E402
from logbook.hearing import engine  # noqa: E402
from logbook.intake import Incoming, Part  # noqa: E402

CASES = HERE.parent / "cases" / "hearing"
SHORT = [(CASES / f"{n:02}.ogg").read_bytes() for n in (5, 20, 29, 35, 0)]  # about ten seconds each


def forgotten(minutes: float) -> bytes:
    """A note of 11 s, then everything else that a microphone hears, each for about half a minute."""
    hall = sound.decode(CASES / "bad" / "across-a-hall.ogg").samples
    parts, n = [sound.decode(CASES / "bad" / "plain.ogg").samples], 0
    while sum(part.size for part in parts) < minutes * 60 * RATE:
        kind = ("engine", "talk", "empty room", "music", "hammering")[n % 5]
        parts.append(hall if kind == "talk" else bad_sound.noise(kind, 30, n, 0.1))
        n += 1
    return bad_sound.as_wav(np.concatenate(parts)[: int(minutes * 60 * RATE)])


class Site:
    """One job folder, one worker, and when each note came and was answered."""

    def __init__(self, home: Path, ears):
        self.folder = store.open_folder(home / "job", create=True)
        self.bench, self.came, self.answered = worker.Bench(lambda: ears), {}, {}

    def hand_in(self, recording: bytes) -> str:
        note, at = str(uuid.uuid4()), datetime.now(UTC)
        store.receive(self.folder, Incoming(note, at, "rosa", "rosa", audio=(Part(recording, "a"),)), at)
        self.came[note] = time.perf_counter()
        return note

    def round(self) -> bool:
        went_on = any(worker.work_once(self.folder, self.bench))
        for note in self.came.keys() - self.answered.keys():
            if self.folder.db.execute("SELECT state FROM notes WHERE id = ?", [note]).fetchone()[0] in ("answered", "unheard"):
                self.answered[note] = time.perf_counter() - self.came[note]
        return went_on


def run(ears, long: bytes | None, more: bool = False) -> tuple[float | None, float, float]:
    """Seconds until the long one was answered, until the last of the four, and the longest wait of those that came later."""
    with tempfile.TemporaryDirectory() as home:
        site = Site(Path(home), ears)
        with site.folder:
            first = site.hand_in(long) if long else None
            four, later = [site.hand_in(recording) for recording in SHORT[:4]], []
            while site.round():
                if more and site.bench.long is not None and len(later) < 8:
                    later.append(site.hand_in(SHORT[4]))
        return site.answered.get(first), max(site.answered[note] for note in four), max((site.answered[note] for note in later), default=0.0)


def measure(minutes: float) -> dict:
    ears, long = engine.make("whisper"), forgotten(minutes)
    run(ears, None)  # warm
    _, alone, _ = run(ears, None)
    ours, beside, later = run(ears, long, more=True)
    after = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    ears.in_stretches = False
    whole, before, _ = run(ears, long)
    found = {"minutes": minutes, "alone": alone, "beside": beside, "later": later, "long": ours, "before": before, "before_long": whole,
             "memory": after, "memory_before": resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024}  # fmt: skip
    return {name: round(value, 2) for name, value in found.items()}


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--minutes", type=float, default=10)
    parser.add_argument("--keep", type=Path)
    given = parser.parse_args()
    found = measure(given.minutes)
    print(f"four short notes alone {found['alone']:.1f} s; handed in after {given.minutes:g} forgotten minutes {found['beside']:.1f} s ({found['beside'] / found['alone']:.1f} times),"
          f" in one go {found['before']:.1f} s ({found['before'] / found['alone']:.1f} times)")  # fmt: skip
    print(f"a note that comes while it is being heard waits {found['later']:.1f} s at most; the forgotten one {found['long']:.0f} s, in one go {found['before_long']:.0f} s")
    print(f"largest memory {found['memory']:.0f} MB, in one go {found['memory_before']:.0f} MB")
    if given.keep:
        given.keep.write_text(json.dumps(found, indent=1) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
