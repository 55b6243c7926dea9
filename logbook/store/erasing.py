"""Forgetting a person on request: the name, and where the job says so the voice, without breaking the journal.

    standing(folder, person) -> Standing            what would go and what would stay; nothing is done
    told(standing, job, language) -> (goes, stays)  the same as sentences
    erase(folder, person_id, by, now) -> Erased | Mistake
    unfinished(db) -> bool; sweep(path) -> Mistake | None     bytes that an erasure left behind; doctor does it too

The journal holds ids and salted digests only. Erasing takes the name, the salt of the row that added it, the digests
of sign-in attempts under it, and the names of devices; a row `erased` says when. The log is then written anew
(VACUUM) and its write-ahead log cut to nothing, so that the bytes are gone from both files. Reports that nobody
signed and that print the name are removed, to be printed anew from the log. What was signed stays as it was signed;
copies, packages and paper that left the folder are out of reach, and are named so that a person can see to them.
"""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from sqlite_utils import Database

from logbook.mistake import Mistake
from logbook.store import files, journal, people
from logbook.store.folder import JobFolder, answers, open_database, sync_folder, writing
from logbook.store.folder import told as machine_told
from logbook.wording import say

MARK = "sweep"  # stands in `about` from the erasure until its bytes are gone
ROW = "erased"
MOST_NAMED = 20  # files or notes on one line

_VOICE = (
    "SELECT DISTINCT f.sha256, f.bytes FROM files f JOIN parts p ON p.sha256 = f.sha256 JOIN notes n ON n.id = p.note "
    "WHERE p.what = 'sound' AND f.erased_at IS NULL AND n.spoken_by = :person AND f.sha256 NOT IN "
    "(SELECT p.sha256 FROM parts p JOIN notes n ON n.id = p.note WHERE n.spoken_by <> :person) ORDER BY f.sha256"
)


@dataclass(frozen=True)
class Standing:
    """Where a person stands in the job folder. Paths are within it; `notes` and `acts` speak the name in their words."""

    person: people.Person
    sounds: tuple[str, ...] = ()  # recordings of this voice alone; empty where the job keeps voices
    sound_bytes: int = 0
    reports: tuple[str, ...] = ()  # not signed: removed, and printed anew when somebody asks
    signed: tuple[str, ...] = ()
    packages: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    acts: tuple[str, ...] = ()


@dataclass(frozen=True)
class Erased:
    """What was done. `left` is why the bytes of the log could not be cleared yet; doctor does it later."""

    standing: Standing
    seq: int
    at: str
    left: Mistake | None = None


def standing(folder: JobFolder, person: people.Person) -> Standing:
    voice = list(folder.db.execute(_VOICE, {"person": person.id})) if folder.job.voice.goes_with_the_name else []
    place = folder.path / "reports"
    return Standing(
        person,
        tuple(sha256 for sha256, _ in voice),
        sum(size for _, size in voice),
        _printed(folder, place, person.name),
        _printed(folder, place / "signed", person.name),
        tuple(path.relative_to(folder.path).as_posix() for path in sorted(place.glob("*.zip"))),
        _speaking(folder.db.execute("SELECT note, text FROM words WHERE text <> ''"), person.name),
        _speaking(((id, _plain(content)) for id, content in folder.db.execute("SELECT id, content FROM acts")), person.name),
    )


def told(stands: Standing, job, language: str) -> tuple[list[str], list[str]]:
    """(what goes, what stays) as sentences, for a page and for the terminal."""
    person = stands.person
    name = person.name or person.id

    def line(key: str, files: tuple[str, ...] = (), **values) -> str:
        return say(f"erasing.{key}", language, id=person.id, name=name, files=", ".join(files[:MOST_NAMED]) + (", …" if len(files) > MOST_NAMED else ""), count=len(files), **values)

    goes = [line("goes-name"), line("goes-doors")]
    if stands.sounds:
        goes.append(line("goes-sounds", stands.sounds, size=f"{stands.sound_bytes / 1e6:.2f}"))
    if stands.reports:
        goes.append(line("goes-reports", stands.reports))
    stays = [line("stays-work")] + ([] if job.voice.goes_with_the_name else [line("stays-sounds")])
    for key in ("signed", "packages", "notes", "acts"):
        if getattr(stands, key):
            stays.append(line(f"stays-{key}", getattr(stands, key)))
    return goes, [*stays, line("stays-copies"), line("stays-paper")]


def _printed(folder: JobFolder, place: Path, name: str | None) -> tuple[str, ...]:
    """Reports that print the name: all files of a day whose JSON holds it."""
    held = [file for file in sorted(place.glob("day-*.json")) if name and name in _text(file)]
    return tuple(path.relative_to(folder.path).as_posix() for file in held for path in sorted(place.glob(f"{file.stem}.*")))


def _text(file: Path) -> str:
    return file.read_text(encoding="utf-8", errors="replace")


def _speaking(texts: Iterable[tuple[str, str]], name: str | None) -> tuple[str, ...]:
    wanted = people.folded(name or "")
    return tuple(dict.fromkeys([id for id, text in texts if wanted and wanted in people.folded(text)]))


def _plain(content: str) -> str:
    return json.dumps(json.loads(content), ensure_ascii=False)


@answers
def erase(folder: JobFolder, person_id: str, by: str | None, now: datetime | None = None) -> Erased | Mistake:
    """Forget the person. Mistakes: nobody of that id; the last one of the office, without whom nobody could add people."""
    now = (now or datetime.now(UTC)).astimezone(UTC)
    with writing(folder) as db:
        person = people.person(db, person_id)
        if person is None:
            return Mistake("people.nobody", "NAME", {"name": person_id})
        if person.role == "keeper" and not [one for one in people.everybody(db) if one.role == "keeper" and not one.left_at and one.id != person.id]:
            return Mistake("erasing.last-keeper", "NAME", {"name": person.name or person.id})
        stands = standing(folder, person)
        if person.name:
            people.forget_attempts_of(db, person.name)
        people.erase(db, person.id, now)
        journal.forget(db, "person-added", person.id)
        at = now.isoformat()
        db.conn.executemany("UPDATE files SET erased_at = ? WHERE sha256 = ?", [[at, one] for one in stands.sounds])
        ids = {"person": person.id, "what": ["name", "voice"] if stands.sounds else ["name"]} | ({"by": by} if by else {})
        row = journal.write(db, ROW, ids, content_of(person.id, stands.sounds), now)
        reports = json.dumps([*stands.reports, *json.loads(_mark(db) or "[]")])
        db.execute("INSERT INTO about VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET value = excluded.value", [MARK, reports])
    # a report that was printed while the name was being erased is found by looking once more
    late = [path for path in _printed(folder, folder.path / "reports", person.name) if path not in stands.reports]
    return Erased(stands, row.seq, at, sweep(folder.path, also=tuple(late)))


def content_of(person: str, sounds: tuple[str, ...] | list[str]) -> dict:
    """What the journal's digest of an erasure covers."""
    return {"person": person, "sounds": list(sounds)}


def _mark(db: Database) -> str | None:
    found = db.execute("SELECT value FROM about WHERE key = ?", [MARK]).fetchone()
    return None if found is None else found[0]


def unfinished(db: Database) -> bool:
    return _mark(db) is not None


def sweep(path: Path, *, also: tuple[str, ...] = (), patience: int = 5000) -> Mistake | None:
    """Take away what erased rows leave behind: files, unsigned reports, and the old pages of the log.

    On a connection of its own, because nothing may be being read while the log is written anew. `patience` is in
    milliseconds. What could not be done now is done by the next sweep.
    """
    opened = open_database(path, None)
    if isinstance(opened, Mistake):
        return opened
    try:
        with opened:
            db = opened.db
            db.execute(f"PRAGMA busy_timeout={patience}")
            _unlink(opened, [*json.loads(_mark(db) or "[]"), *also])
            db.execute("VACUUM")
            busy, *_ = db.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()
            if busy:
                return Mistake("erasing.busy", "log.db", {"folder": str(path)})
            with writing(opened):
                db.execute("DELETE FROM about WHERE key = ?", [MARK])
    except (OSError, sqlite3.Error) as error:
        return machine_told(error, path)
    return None


def _unlink(folder: JobFolder, reports: list[str]) -> None:
    gone = [files.place(folder, sha256) for (sha256,) in list(folder.db.execute("SELECT sha256 FROM files WHERE erased_at IS NOT NULL"))]
    inside = [folder.path / one for one in reports if Path(one).parent == Path("reports") and Path(one).name.startswith("day-")]
    for each in (*gone, *inside):
        each.unlink(missing_ok=True)
    for parent in sorted({each.parent for each in (*gone, *inside)}):
        sync_folder(parent)
