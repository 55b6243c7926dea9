"""Judging a big job: python tests/bench/judging.py [notes …]   (prints, asserts nothing)

Five notes a piece with two photos each, forty pieces a run, a schedule with a row for every piece: 10,000 notes against
2,000 rows by default, beside a tenth of both. Prints seconds of the processor for reading the schedule, reading the words, reckoning
the whole log (join, judge, ask), judging every piece once more on its own, and how each grew from the smaller log.
With `--each` the seconds of every rule, so that a slow one is seen.
"""

import random
import sys
import time
from datetime import UTC, datetime, timedelta

from logbook import job as jobs
from logbook import pipeline, runs, schedule
from logbook.findings import judging
from logbook.note import Note, Photo
from logbook.reading import read
from logbook.rules import RULES, judge

FIRST = datetime(2026, 1, 5, 7, tzinfo=UTC)
PER_RUN, PER_PIECE = 40, 5
HEADER = "mark,run,order,kind,inlet,outlet,flat side,airflow,pressure class"
MADE = {
    "straight": "Run {run}, fitting {mark}, straight piece, eighteen by twelve, cut to forty inches, the ship lap step is to the inside.",
    "transition": "Run {run}, fitting {mark}, transition from eighteen by twelve to eighteen by twelve, bottom flat, two in twelve.",
    "elbow": "Run {run}, fitting {mark}, ninety degree elbow, eighteen by twelve, with vanes.",
}
AFTER = (
    "Run {run}, fitting {mark}, stapled through the flap every two inches, taped all four sides with 181A-P, rubbed it down.",
    "Run {run}, fitting {mark}, staples are half inch, clinched outward. Wiped it clean before tape.",
    "Run {run}, fitting {mark}, air leaves by the female end, laid it out from the female end.",
    "Run {run}, fitting {mark} is hung and taped to {before}.",
)


def kind_of(place: int) -> str:
    return ("straight", "straight", "transition", "elbow")[place % 4]


def rows(pieces: int) -> str:
    out = [HEADER]
    for place in range(pieces):
        mark = f"X{place + 1}" if place % 20 == 19 else place + 1  # the crew says another mark: not on the schedule
        out.append(f"{mark},{place // PER_RUN + 1},{place % PER_RUN + 1},{kind_of(place)},18x12,18x12,bottom,1600,0.5")
    return "\n".join(out)


def notes(pieces: int) -> list[Note]:
    chance, made = random.Random(7), []
    for place in range(pieces):
        said = {"run": place // PER_RUN + 1, "mark": place + 1, "before": max(place, 1)}
        for part, words in enumerate((MADE[kind_of(place)], *AFTER)[:PER_PIECE]):
            at = FIRST + timedelta(minutes=2 * (PER_PIECE * place + part))
            photos = ()
            if part in (0, 1):
                seen = {"dhash": f"{chance.getrandbits(64):016x}", "pixels": f"{chance.getrandbits(256):064x}", "sharpness": 40.0, "light": 120.0}
                photos = (Photo(f"{chance.getrandbits(256):064x}", taken_at=at, readable=True, seen=seen),)
            text = words.format(**said)
            made.append((Note(f"n{place}.{part}", "aaaaaaaa", f"p{place % 6}", "p", at, at, at, "answered", photos=photos, answered_at=at), text))
    return made


def timed(do):
    begun = time.process_time()
    found = do()
    return found, time.process_time() - begun


def measured(count: int, each: bool) -> dict[str, float]:
    pieces = max(count // PER_PIECE, 1)
    took = {}
    (planned, wrong), took["schedule"] = timed(lambda: schedule.read(rows(pieces), "schedule.csv"))
    assert not wrong and len(planned) == pieces
    job = jobs.Job(revisions=(schedule.revision("A", None, planned),))
    given = notes(pieces)
    read_notes, took["reading"] = timed(lambda: [pipeline.with_reading(n, read(text, language="en", job=job), n.received_at) for n, text in given])
    now = FIRST + timedelta(days=3650)
    book, took["reckoning"] = timed(lambda: pipeline.reckon(read_notes, (), job, now))
    assert len(book.pieces) == pieces, len(book.pieces)
    pieces_made = list(book.pieces.values())
    site, took["lay out"] = timed(lambda: runs.site(job, pieces_made))
    around, took["around"] = timed(lambda: [(piece, site.around(piece)) for piece in pieces_made])
    found, took["judging"] = timed(lambda: [judge(piece, near) for piece, near in around])
    one = read_notes[len(read_notes) // 2]
    more = pipeline.with_reading(one, read("Run 1, fitting 1, taped.", language="en", job=job), now)
    _, took["one more"] = timed(lambda: pipeline.reckon([more], (), job, now, previous=book))
    print(f"  {count} notes, {pieces} pieces, {sum(map(len, found))} findings, {sum(one.shows == 'flag' for f in found for one in f)} flagged")
    if each:
        slow = []
        for rule in RULES:
            _, took_rule = timed(lambda: [judging.judge(piece, near, (rule,)) for piece, near in around])
            slow.append((took_rule, rule.id))
        print("  " + ", ".join(f"{name} {seconds:.2f} s" for seconds, name in sorted(slow, reverse=True)[:8]))
    return took


def main() -> None:
    words = [word for word in sys.argv[1:] if word != "--each"]
    for count in [int(word) for word in words] or [10_000]:
        small, big = measured(max(count // 10, PER_PIECE), False), measured(count, "--each" in sys.argv)
        for name, seconds in big.items():
            print(f"{name:10} {seconds:8.3f} s, {seconds / small[name]:5.1f} times a tenth of it")


if __name__ == "__main__":
    main()
