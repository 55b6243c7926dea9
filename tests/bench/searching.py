"""Search over a long log: python tests/bench/searching.py [notes …]   (prints, asserts nothing)

Prints milliseconds for a question, best of five, beside reading every note's words with LIKE (the named baseline), and
what the index adds to handing a note in.
"""

import random
import sys
import tempfile
import time
import uuid
from datetime import UTC, datetime
from pathlib import Path

from logbook import store
from logbook.intake import Incoming
from logbook.store import search

WORDS = "straight elbow transition run two eighteen by twelve stapled every inches taped rubbed down scrim shows kitchen corridor lobby vanes in top comes down back wiped dry".split()
ASKED = ("vanes", "kitchen corridor", '"rubbed down" scrim', "zinnia", "t")


def filled(path: Path, count: int) -> tuple[store.JobFolder, float]:
    made, folder = random.Random(7), store.open_folder(path, create=True)
    begun = time.perf_counter()
    for number in range(count):
        text = " ".join(made.choices(WORDS, k=40)) + (" zinnia" if number == count // 2 else "")
        store.receive(folder, Incoming(str(uuid.UUID(int=number, version=4)), datetime(2026, 10, 14, 15, tzinfo=UTC), "rosa", "rosa", text=text))
    return folder, time.perf_counter() - begun


def best(ask) -> float:
    times = []
    for _ in range(5):
        begun = time.perf_counter()
        ask()
        times.append(time.perf_counter() - begun)
    return min(times) * 1000


for count in [int(one) for one in sys.argv[1:]] or [10_000]:
    with tempfile.TemporaryDirectory() as place:
        folder, spent = filled(Path(place) / "job", count)
        print(f"{count} notes handed in, {spent / count * 1000:.2f} ms each")
        for asked in ASKED:
            term = search.terms(asked)[0]
            like = best(lambda: folder.db.execute("SELECT count(*) FROM words WHERE text LIKE ?", [f"%{term}%"]).fetchone())
            found = search.search(folder, asked)
            print(f"  {asked!r}: {best(lambda: search.search(folder, asked)):.1f} ms for {found.total} hits (LIKE of its first term: {like:.1f} ms)")
        folder.close()
