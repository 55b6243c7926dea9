"""How much disk a job takes: python tests/bench/room.py [notes]

Hands the demonstration's recordings and pictures in again and again under new ids and other bytes, with its prepared
transcripts, and prints bytes a note of the log, of small copies and of reports. Prints, asserts nothing.
"""

from __future__ import annotations

import os
import sys
import tempfile
import uuid
from datetime import UTC, datetime, timedelta
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent.parent))
import demo_day  # noqa: E402

from logbook import store, worker  # noqa: E402
from logbook.intake import Incoming, Part, Receipt  # noqa: E402
from logbook.paper.making import make_day  # noqa: E402

START = datetime(2026, 10, 14, 13, tzinfo=UTC)
A_DAY = 120  # notes


class Ears:
    """The demonstration's transcripts, in the order that its recordings come."""

    name = "prepared"

    def __init__(self, stems: list[str]):
        self.stems = stems

    def hear(self, sounds, *, languages):
        return [demo_day.heard(self.stems.pop(0)) for _ in sounds]


def measure(notes: int) -> None:
    rows = [row for row in demo_day.day()["notes"] if "sound" in row]
    stems: list[str] = []
    with tempfile.TemporaryDirectory() as home, store.open_folder(Path(home) / "job", create=True) as folder:
        handed_in = photos = 0
        bench = worker.Bench(lambda: Ears(stems))
        for number in range(notes):
            row = rows[number % len(rows)]
            sound = (demo_day.DEMO / "notes" / f"{row['stem']}.ogg").read_bytes() + os.urandom(0 if number < len(rows) else 8)
            pictures = tuple(Part((demo_day.DEMO / "notes" / one["file"]).read_bytes() + os.urandom(8), "p") for one in row.get("photos", ()))
            at = START + timedelta(days=number // A_DAY, seconds=60 * (number % A_DAY))
            receipt = store.receive(folder, Incoming(str(uuid.uuid4()), at, row["by"], row["by"], audio=(Part(sound, "s"),), photos=pictures))
            assert isinstance(receipt, Receipt), receipt
            stems.append(row["stem"])
            handed_in += len(sound) + sum(len(part.source) for part in pictures)
            photos += len(pictures)
            if number % 40 == 39:
                while any(worker.work_once(folder, bench)):
                    pass
        while any(worker.work_once(folder, bench)):
            pass
        folder.db.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        days = [day["date"] for day in store.days(folder)]
        for day in days:
            make_day(folder, day, ("en", "es"), datetime.now(UTC))
        size = {name: sum(file.stat().st_size for file in (folder.path / name).rglob("*") if file.is_file()) for name in ("originals", "derived", "reports")}
        log = (folder.path / "log.db").stat().st_size
        answered = folder.db.execute("SELECT count(*) FROM notes WHERE state = 'answered'").fetchone()[0]
        print(f"{notes} notes ({answered} answered), {photos} photos, {len(days)} days")
        print(f"handed in {handed_in / notes / 1000:.1f} kB a note, kept in originals {size['originals'] / notes / 1000:.1f} kB")
        print(f"log {log / notes / 1000:.1f} kB a note; small copies {size['derived'] / max(photos, 1) / 1000:.1f} kB a photo; reports {size['reports'] / len(days) / 1e6:.2f} MB a day")
        seconds = sum(one.until for one in [demo_day.heard(row["stem"]).words[-1] for row in rows])
        sound = sum((demo_day.DEMO / "notes" / f"{row['stem']}.ogg").stat().st_size for row in rows)
        print(f"sound of the demonstration {sound / seconds / 1000:.2f} kB a second spoken")


if __name__ == "__main__":
    measure(int(sys.argv[1]) if len(sys.argv) > 1 else 240)
