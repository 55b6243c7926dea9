"""A job folder examined from its pages to its paper; only what is safe to mend is mended, and it is told.

    examine(path, mend=True) -> Checkup | Mistake

Safe to mend: a sub-folder that is gone; parts of hand-ins that nobody acknowledged, while no server holds the folder
(the phone sends them again); notes whose worker is gone; small copies of photos, which are made from the originals.
What was said, found or decided is never touched.
"""

from __future__ import annotations

import json
import os
import sqlite3
from dataclasses import dataclass, field
from pathlib import Path

from logbook import chain, lease
from logbook.decoding import pictures
from logbook.mistake import Mistake
from logbook.store import erasing, files, journal, proving
from logbook.store.folder import SUBFOLDERS, JobFolder, hold, open_database, sync_folder, told
from logbook.store.jobfile import read_job


@dataclass
class Checkup:
    """`problems` is empty for a whole folder; `remarks` do no harm; `mended` are wording keys with their values."""

    path: Path
    notes: int = 0
    files: int = 0
    rows: int = 0
    hash: str = chain.START
    compared: proving.Compared = field(default_factory=proving.Compared)
    problems: list[Mistake] = field(default_factory=list)
    remarks: list[Mistake] = field(default_factory=list)
    mended: list[tuple[str, dict]] = field(default_factory=list)


def examine(path: Path | str, *, mend: bool = True) -> Checkup | Mistake:
    """Mistakes: no job folder, or one that a newer version wrote. Everything else stands in the Checkup."""
    path = Path(path).resolve()
    if not (path / "log.db").is_file():
        return Mistake("store.no-folder", str(path), {"folder": str(path)})
    found = Checkup(path)
    mend = mend and os.access(path, os.W_OK)
    _subfolders(found, mend)
    job = read_job(path / "job.toml")
    if isinstance(job, Mistake):
        found.problems.append(job)
        job = None
    folder = open_database(path, job)
    if isinstance(folder, Mistake):
        if folder.key == "store.newer-schema":
            return folder
        found.problems.append(folder)
        _names_alone(found)
        return found
    with folder:
        _examine(found, folder, mend and not folder.read_only)
    return found


def _examine(found: Checkup, folder: JobFolder, mend: bool) -> None:
    db = folder.db
    for ask in (
        lambda: proving.database(db),
        lambda: proving.received_files(db, found.path),
        lambda: proving.journal_chain(db, printed(found.path)),
        lambda: proving.contents(db, found.compared),
        lambda: _orphans(found, db),
        lambda: _counts(found, folder),
        lambda: [] if mend else _unfinished(found, folder),
    ):
        try:
            found.problems.extend(ask() or ())
        except (sqlite3.DatabaseError, ValueError) as error:  # a table that cannot be read does not end the examination
            found.problems.append(Mistake("store.database-damaged", "log.db", {"came": str(error)}))
    if mend and not any(one.key == "store.database-damaged" for one in found.problems):
        _mend(found, folder)
    _parts(found, mend)


def _counts(found: Checkup, folder: JobFolder) -> None:
    found.notes = folder.db.execute("SELECT count(*) FROM notes").fetchone()[0]
    found.files = folder.db.execute("SELECT count(*) FROM files WHERE erased_at IS NULL").fetchone()[0]
    newest = journal.newest(folder)
    found.rows, found.hash = newest["seq"], newest["hash"]


def _unfinished(found: Checkup, folder: JobFolder) -> None:
    if erasing.unfinished(folder.db):
        found.remarks.append(Mistake("erasing.unfinished", "log.db"))


def printed(path: Path) -> set[str]:
    """The journal hashes on the day reports that lie in the folder; paper elsewhere is compared by a person."""
    hashes = set()
    for file in (path / "reports").rglob("day-*.json"):
        try:
            reports = json.loads(file.read_text(encoding="utf-8"))["reports"]
            hashes |= {one["journal"]["hash"] for one in reports if one["journal"]["seq"]}
        except (OSError, ValueError, KeyError, TypeError):
            continue  # a report can be printed again; what it was printed from is examined itself
    return hashes


def _subfolders(found: Checkup, mend: bool) -> None:
    for name in SUBFOLDERS:
        if (found.path / name).is_dir():
            continue
        if not mend:
            found.problems.append(Mistake("keeping.no-subfolder", name, {"name": name}))
            continue
        (found.path / name).mkdir()
        sync_folder(found.path)
        found.mended.append(("store.doctor.folders", {"name": name}))


def _lying(path: Path) -> list[Path]:
    """The files that were handed in, by their place; parts and hidden files aside."""
    places = [path / name for name in dict.fromkeys(files.WHERE.values())]
    return [each for place in places if place.is_dir() for each in sorted(place.iterdir()) if not each.name.startswith(".")]


def _orphans(found: Checkup, db) -> None:
    known = {f"{files.WHERE[what]}/{sha256}.{kind}" for sha256, what, kind in db.execute("SELECT sha256, what, kind FROM files WHERE what IN ('sound', 'picture', 'document')")}
    for each in _lying(found.path):
        name = each.relative_to(found.path).as_posix()
        if name not in known:
            found.remarks.append(Mistake("store.file-orphan", name, {"name": name}))


def _names_alone(found: Checkup) -> None:
    """Without a database a file still carries its digest in its name."""
    for each in _lying(found.path):
        found.files += 1
        if each.is_file() and proving.whole(each, each.name.partition(".")[0]):
            name = each.relative_to(found.path).as_posix()
            found.problems.append(Mistake("store.file-altered", name, {"name": name}))


def _mend(found: Checkup, folder: JobFolder) -> None:
    if erasing.unfinished(folder.db):
        left = erasing.sweep(found.path)
        if left is None:
            found.mended.append(("erasing.swept", {}))
        else:
            found.remarks.append(left)
    over = lease.lapse(folder, lease.clock())
    if over:
        found.mended.append(("store.doctor.lapsed", {"count": len(over)}))
    made = 0
    for (sha256,) in list(folder.db.execute("SELECT sha256 FROM pictures WHERE readable = 1")):
        photo = files.original(folder, sha256)
        if photo is None or files.thumbnail(folder, sha256):
            continue
        seen = pictures.look_and_shrink(photo)
        if not isinstance(seen, Mistake):
            files.keep_derived(files.thumbnail_place(folder, sha256), seen[1])
            made += 1
    if made:
        found.mended.append(("keeping.small-copies", {"count": made}))


def _parts(found: Checkup, mend: bool) -> None:
    """Parts that a hand-in left behind. While a server runs they may be on their way in."""
    parts = [part for name in dict.fromkeys(files.WHERE.values()) for part in (found.path / name).glob(".*.part")]
    if not parts:
        return
    held = hold(found.path) if mend else None
    if held is None or isinstance(held, Mistake):
        found.remarks.append(Mistake("keeping.parts-left", str(found.path), {"count": len(parts)}))
        return
    try:
        for part in parts:
            part.unlink(missing_ok=True)
    except OSError as error:
        found.problems.append(told(error, found.path))
    else:
        found.mended.append(("store.doctor.parts", {"count": len(parts)}))
    finally:
        os.close(held)
