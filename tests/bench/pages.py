"""Every page on a long log: python tests/bench/pages.py [notes …] [--keep FILE]   (prints, asserts nothing)

A real log of a thousand typed notes (five a piece, forty notes a day, one piece in fifty with a fault that stands open) is
handed in, read and judged as ever; a longer one is that log over again, row for row, with other ids, marks, runs and years.
Each page is asked for forty times as the lead, of other days, notes and pieces each time, straight from the app without a
network. Prints milliseconds of the processor (median, 95 of a hundred) of each page and how the median grew from the shortest log.
"""

import argparse
import gc
import json
import re
import statistics
import sys
import tempfile
import time
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))
from desk import PAGE, open_desk  # noqa: E402

from logbook import store, worker  # noqa: E402
from logbook.intake import Incoming  # noqa: E402

BASE, A_DAY, PER_PIECE, PER_RUN, ASKED = 1_000, 40, 5, 40, 40
PIECES, RUNS = BASE // PER_PIECE, BASE // PER_PIECE // PER_RUN
FIRST = date(2001, 1, 8)
SAID = (
    "Straight piece {mark} on run {run}, eighteen by twelve, cut to forty inches, the shiplap step is to the inside, made from the female end.",
    "Fitting {mark} on run {run}, stapled through the flap every {every} inches, half inch staples clinched outward.",
    "Fitting {mark} on run {run}, wiped it clean, taped all four sides with 181A-P, rubbed it down until the scrim shows.",
    "Fitting {mark} on run {run}, air leaves by the female end, trimmed the insulation.",
    "Fitting {mark} on run {run} is hung and taped to {before}.",
)
COPIED = ("notes", "words", "readings", "pieces", "entries", "findings", "questions", "sought_of")
OTHER = re.compile(r"\b([0-9a-f]{8})(?=-[0-9a-f]{4}-4)|\bT(1[01]\d\d)\b|\b(81\d)\b|\b2001(?=-\d\d-\d\d)")

PAGES = (
    "/", "/log", "/log?from={seq}", "/log?flagged=yes", "/log?run={run}", "/log?mark={mark}", "/notes?since={seq}", "/entry/{note}", "/notes/{note}",
    "/fitting/{piece}", "/pieces/{piece}", "/pieces/{piece}/drawing.svg", "/day", "/day/{day}", "/questions?date={day}", "/desk", "/desk?run={run}",
    "/desk/next", "/run?run={run}", "/job", "/job?run={run}", "/search?q=flap+{mark}", "/search?q=scrim", "/walk", "/walk/list?area=run:{run}", "/walk/release?area=run:{run}",
    "/holds", "/leaks", "/rules", "/layout", "/people", "/phone", "/ready", "/closeout",
)  # fmt: skip


def mark(piece: int) -> str:
    return f"T{1_000 + piece}"


def fill(path: Path) -> None:
    """The thousand notes, as they would have come."""
    job = path / "job.toml"
    job.write_text(job.read_text(encoding="utf-8").replace("# wanted = true", "wanted = false"), encoding="utf-8")  # typed notes alone
    with store.open_folder(path) as folder:
        for number in range(BASE):
            piece, part = divmod(number, PER_PIECE)
            at = datetime(FIRST.year, FIRST.month, FIRST.day, 13, tzinfo=UTC) + timedelta(days=number // A_DAY, minutes=10 * (number % A_DAY))
            every = "two" if piece % 50 else "three"
            text = SAID[part].format(mark=mark(piece), run=810 + piece // PER_RUN, before=mark(max(piece - 1, 0)), every=every)
            store.receive(folder, Incoming(f"00000000-0000-4000-8000-{number:012d}", at, "rosa", "rosa", text=text), at)
        bench = worker.Bench(lambda: None)
        while worker.work_once(folder, bench).notes:
            pass


def other(copy: int):
    """What turns a row of the base into that of another year: ids, marks, runs, years."""

    def swap(found: re.Match) -> str:
        id, piece, run = found.groups()
        if id:
            return f"{int(id, 16) ^ copy:08x}"
        if piece:
            return f"T{int(piece) + PIECES * copy}"
        return str(int(run) + RUNS * copy) if run else str(FIRST.year + copy)

    return lambda value: OTHER.sub(swap, value) if isinstance(value, str) else value


def grow(path: Path, times: int) -> None:
    """`times` copies of the base in place of one."""
    with store.open_folder(path) as folder, store.writing(folder) as db:
        base = {}
        for table in COPIED:
            columns = [row[1] for row in db.execute(f"PRAGMA table_info({table})")]
            kept = list(db.execute(f"SELECT {', '.join(columns)} FROM {table}" + (" WHERE what = 'piece'" if table == "sought_of" else "")))
            base[table] = columns, kept
        for copy in range(1, times):
            swap = other(copy)
            for table, (columns, rows) in base.items():
                numbered = {"notes": "seq", "words": "id", "readings": "id", "findings": "id", "sought_of": "row"}.get(table)
                most = max((row[columns.index(numbered)] for row in rows), default=0) if numbered else 0
                for row in rows:
                    new = [swap(value) for value in row]
                    if numbered:
                        new[columns.index(numbered)] += most * copy
                    if table == "readings":
                        new[columns.index("words")] += max(one[0] for one in base["words"][1]) * copy
                    db.execute(f"INSERT INTO {table} ({', '.join(columns)}) VALUES ({', '.join('?' * len(new))})", new)


def measured(times: int) -> dict[str, tuple[float, float]]:
    with tempfile.TemporaryDirectory() as place:
        desk = open_desk(Path(place))
        fill(desk.settings.folder)
        begun = time.perf_counter()
        grow(desk.settings.folder, times)
        with store.open_folder(desk.settings.folder) as folder:
            size = (desk.settings.folder / "log.db").stat().st_size
            notes, pieces, standing = (
                folder.db.execute(sql).fetchone()[0]
                for sql in ("SELECT count(*) FROM notes", "SELECT count(*) FROM pieces", "SELECT count(*) FROM pieces WHERE stands_open > 0")
            )
            step = max(notes // ASKED, 1)
            seen = list(folder.db.execute("SELECT n.seq, n.id, n.day, e.piece, p.run, p.mark FROM notes n JOIN entries e ON e.note = n.id JOIN pieces p ON p.id = e.piece WHERE n.seq % ? = 0", [step]))
        print(f"{notes} notes, {pieces} pieces, {standing} standing open, {size / 1e6:.0f} MB, grown in {time.perf_counter() - begun:.0f} s")
        gc.collect()
        gc.freeze()  # as the server does
        client, key, times_of = desk.app.test_client(), {"Authorization": f"Bearer {desk.keys['lead']}"} | PAGE, {}
        for page in PAGES:
            spent = []
            for at in range(ASKED + 1):
                seq, note, day, piece, run, said = seen[at % len(seen)]
                path = page.format(seq=seq, note=note, day=day, piece=piece, run=run, mark=said)
                begun = time.process_time()
                answer = client.get(path, headers=key)
                answer.get_data()
                spent.append((time.process_time() - begun) * 1000)
                if answer.status_code not in (200, 303):
                    print(f"  {path}: {answer.status_code}")
                    break
            spent = sorted(spent[1:])  # the first opens templates
            if spent:
                times_of[page] = statistics.median(spent), spent[int(0.95 * len(spent))]
        return times_of


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("notes", type=int, nargs="*", default=[1_000, 10_000, 100_000])
    parser.add_argument("--keep", type=Path)
    given = parser.parse_args()
    first: dict[str, tuple[float, float]] = {}
    kept = {}
    for count in given.notes:
        found = measured(max(count // BASE, 1))
        kept[count] = {page: [round(middle, 1), round(high, 1)] for page, (middle, high) in found.items()}
        first = first or found
        for page, (middle, high) in sorted(found.items(), key=lambda row: -row[1][1]):
            print(f"  {page:34} median {middle:7.1f} ms   95 of 100 {high:7.1f} ms   {middle / first.get(page, (middle,))[0]:5.2f} times")
    if given.keep:
        given.keep.write_text(json.dumps(kept, indent=1) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
