"""How reckoning grows with the log: python tests/bench/joining.py [notes …]   (prints, asserts nothing)

Prints seconds for a log reckoned from the start and for one note more, and the ratio against ten times fewer notes.
"""

import sys
import time
from datetime import UTC, datetime, timedelta
from fractions import Fraction

from logbook import pipeline
from logbook.job import DEFAULT
from logbook.note import Note
from logbook.said import Entry, Fact, Reading

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


def main() -> None:
    for count in [int(word) for word in sys.argv[1:]] or [300, 3000]:
        whole, one = measured(count)
        tenth, one_of_tenth = measured(max(count // 10, 1))
        print(f"{count} notes: {whole:.2f} s, {whole / tenth:.1f} times a tenth of them; one more {one * 1000:.1f} ms ({one / one_of_tenth:.1f} times)")


if __name__ == "__main__":
    main()
