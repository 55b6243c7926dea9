"""The rule books that signed days stand under.

Whoever signs a day signs it as this job's limits, standing words and schedules judged it then. The job file and its
schedules are kept as they read at that moment; from then on the pieces of that day are judged by them, whatever the
job file says later. What today's book would say of them is asked with `again.py` and changes nothing.
"""

from __future__ import annotations

import json
import tempfile
import tomllib
from collections.abc import Mapping
from functools import lru_cache
from pathlib import Path

from logbook import job as jobs
from logbook.job import Job
from logbook.store.folder import JobFolder


def keep(db, folder: JobFolder, day: str, at: str) -> str:
    """Keeps the book in force for a day that is signed now, inside the signature's transaction; its digest.

    A day keeps the book of its first signature: a later one signs what was judged by that book.
    """
    from logbook.rules import book_digest  # the book is long: imported when somebody signs

    digest = book_digest(folder.job)
    db.execute("INSERT OR IGNORE INTO books (digest, files, at) VALUES (?, ?, ?)", [digest, json.dumps(_files(folder.path)), at])
    db.execute("INSERT OR IGNORE INTO signed_under (day, book) VALUES (?, ?)", [day, digest])
    return digest


def _files(place: Path) -> dict[str, str]:
    """The job file and the schedules that it names, as they read."""
    text = (place / jobs.FILE).read_text(encoding="utf-8")
    named = tomllib.loads(text).get("schedule", [])
    schedules = [block["file"] for block in (named if isinstance(named, list) else [named])]
    return {jobs.FILE: text} | {name: (place / name).read_text(encoding="utf-8") for name in schedules}


def of_days(folder: JobFolder) -> dict[str, str]:
    """Signed day -> digest of the book it stands under."""
    return dict(folder.db.execute("SELECT day, book FROM signed_under"))


def book_of_day(folder: JobFolder, day: str) -> tuple[str, Job] | None:
    """(digest, job) that a signed day stands under; None for a day that nobody signed."""
    digest = of_days(folder).get(day)
    return None if digest is None else (digest, _job(folder, digest))


def of_pieces(folder: JobFolder) -> Mapping[str, Job]:
    """Piece -> the job that judges it, of every piece with a note on a signed day; the day signed first decides."""
    found: dict[str, Job] = {}
    for piece, book in folder.db.execute(
        "SELECT e.piece, s.book FROM signed_under s JOIN notes n ON n.day = s.day JOIN entries e ON e.note = n.id AND e.current = 1 ORDER BY s.rowid"
    ):
        found.setdefault(piece, book)
    kept = {book: _job(folder, book) for book in set(found.values())}
    # the job of today where it says the same: thousands of comparisons then end at once
    same = {book: folder.job if job == folder.job else job for book, job in kept.items()}
    return {piece: same[book] for piece, book in found.items()}


def _job(folder: JobFolder, digest: str) -> Job:
    (files,) = folder.db.execute("SELECT files FROM books WHERE digest = ?", [digest]).fetchone()
    return _read(digest, files)


@lru_cache(maxsize=32)
def _read(digest: str, files: str) -> Job:
    with tempfile.TemporaryDirectory() as place:
        for name, text in json.loads(files).items():
            (Path(place) / name).parent.mkdir(parents=True, exist_ok=True)
            (Path(place) / name).write_text(text, encoding="utf-8")
        found = jobs.load(Path(place))
    if not isinstance(found, Job):
        raise ValueError(f"the job file kept with {digest[:12]} does not read any more")
    return found
