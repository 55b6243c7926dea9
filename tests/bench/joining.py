"""How reckoning grows with the log: python tests/bench/joining.py [notes …]   (prints, asserts nothing)

Prints seconds for a log reckoned from the start and for one note more, and the ratio against ten times fewer notes;
then a press on the note in the middle and on the newest one, beside a log that lays everything after it anew.
"""

import sys
import time
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from fractions import Fraction
from pathlib import Path

from logbook import pipeline
from logbook.job import DEFAULT
from logbook.joining.log import Log
from logbook.note import Correction, Note
from logbook.said import Entry, Fact, Reading

sys.path.insert(0, str(Path(__file__).parent.parent))
from relaying import EagerLog  # noqa: E402

FIRST = datetime(2026, 1, 5, 7, tzinfo=UTC)
SIZE = (Fraction(18), Fraction(12))
SAID = (
    {"kind": "straight", "inlet_size": SIZE, "stapled": True, "staple_spacing": Fraction(2)},
    {"taped": True, "closure": "tape_pressure", "closure_mark": "181A-P", "rubbed_down": True},
    {"stage": "hung", "joined_to": ("1",)},
)


def note(number: int) -> Note:
    """Three notes a piece, forty pieces a run, five people; one in 37 comes an hour late."""
    at = FIRST + timedelta(minutes=4 * number)
    said = {"mark": str(number // 3), "run": str(number // 120)} | SAID[number % 3]
    facts = tuple(Fact(name, value, name, 0, 1) for name, value in said.items())
    late = timedelta(hours=1) if number % 37 == 0 else timedelta(seconds=20)
    reading = Reading("en", "words", "", (Entry(0, facts),))
    return Note(f"n{number}", DEFAULT.id, f"p{number % 5}", "p", at, at, at + late, "answered", reading=reading, answered_at=at + late)


def measured(count: int) -> tuple[float, float]:
    notes, now = [note(i) for i in range(count)], FIRST + timedelta(days=3650)
    begun = time.perf_counter()
    book = pipeline.reckon(notes, (), DEFAULT, now)
    whole = time.perf_counter() - begun
    begun = time.perf_counter()
    for more in range(10):
        book = pipeline.reckon([note(count + more)], (), DEFAULT, now, previous=book)
    return whole, (time.perf_counter() - begun) / 10


def pressed(count: int, log: Log) -> tuple[float, float]:
    """Milliseconds of reckoning a press on the note in the middle, and one on the newest."""
    notes, now = [note(i) for i in range(count)], FIRST + timedelta(days=3650)
    book = replace(pipeline.reckon([], (), DEFAULT, now), log=log)
    book = pipeline.reckon(notes, (), DEFAULT, now, previous=book)
    took = []
    for n, which in enumerate((count // 2, count - 1)):
        press = Correction(f"c{n}", 0, "place", "attic", "p", now + timedelta(minutes=n))
        begun = time.perf_counter()
        book = pipeline.reckon([replace(notes[which], corrections=(press,))], (), DEFAULT, now + timedelta(minutes=n), previous=book)
        took.append((time.perf_counter() - begun) * 1000)
    return took[0], took[1]


def main() -> None:
    for count in [int(word) for word in sys.argv[1:]] or [300, 3000]:
        whole, one = measured(count)
        tenth, one_of_tenth = measured(max(count // 10, 1))
        print(f"{count} notes: {whole:.2f} s, {whole / tenth:.1f} times a tenth of them; one more {one * 1000:.1f} ms ({one / one_of_tenth:.1f} times)")
        (middle, newest), (eager, _) = pressed(count, Log(DEFAULT)), pressed(count, EagerLog(DEFAULT))
        print(f"  a press on the middle note {middle:.1f} ms, on the newest {newest:.1f} ms; laying everything after it anew {eager:.1f} ms ({eager / middle:.0f} times)")


if __name__ == "__main__":
    main()
