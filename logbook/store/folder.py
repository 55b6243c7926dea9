"""Opening a job folder: its sub-folders, one connection with the settings that keep it whole, one kind of write.

Settings of every connection: write-ahead log, synchronous FULL (a commit is on the disk before it returns),
foreign keys on, five seconds of patience with a lock, freed bytes overwritten. Every write is one BEGIN IMMEDIATE transaction: a read
that later turns into a write fails at once when somebody else wrote between.
"""

from __future__ import annotations

import errno
import fcntl
import functools
import os
import secrets
import shutil
import sqlite3
import string
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from importlib import import_module
from pathlib import Path

from sqlite_utils import Database

from logbook.job import template
from logbook.mistake import Broken, Mistake
from logbook.store.jobfile import read_job, zone_here
from logbook.store.migrations import migrations

MB = 1_000_000
PATIENCE = 5.0  # seconds that a write waits for a lock
SUBFOLDERS = ("originals", "derived", "reports", "documents")
FULL = (errno.ENOSPC, errno.EDQUOT, errno.EFBIG)


@dataclass(frozen=True)
class Floors:
    """Free bytes below which nothing derived is made, and below which nothing more is received."""

    derived: int = 500 * MB
    receive: int = 100 * MB


@dataclass(frozen=True)
class JobFolder:
    """One job, one connection. Belongs to one thread at a time; `close()` or a `with` block ends the connection."""

    path: Path
    job: object
    db: Database = field(repr=False)
    floors: Floors = Floors()
    read_only: bool = False

    def close(self) -> None:
        self.db.close()

    def __enter__(self) -> JobFolder:
        return self

    def __exit__(self, *_) -> None:
        self.close()


def open_folder(path: Path | str, *, create: bool = False, floors: Floors = Floors()) -> JobFolder | Mistake:
    """The job folder at `path`. Mistakes: no such folder, not writable, a newer schema, a job file with faults."""
    path = Path(path).resolve()
    if not (path / "log.db").exists():
        if not create:
            return Mistake("store.no-folder", str(path), {"folder": str(path)})
        refused = _make(path)
        if refused:
            return refused
    job = read_job(path / "job.toml")
    return job if isinstance(job, Mistake) else open_database(path, job, floors)


def open_database(path: Path, job: object, floors: Floors = Floors()) -> JobFolder | Mistake:
    """The log of a folder whose job is known already, or is not wanted (doctor looks at logs whose job file is torn)."""
    try:
        db, read_only = _connect(path / "log.db")
    except sqlite3.Error as error:
        return told(error, path)
    try:
        refused = _migrate(db, path, read_only)
    except sqlite3.Error as error:
        refused = told(error, path)
    if refused:
        db.close()
        return refused
    return JobFolder(path, job, db, floors, read_only)


def _make(path: Path) -> Mistake | None:
    """Lay down an empty job folder; `log.db` comes last and makes it one."""
    try:
        path.mkdir(parents=True, exist_ok=True)
        for name in SUBFOLDERS:
            (path / name).mkdir(exist_ok=True)
        if not (path / "job.toml").exists():
            job_id = "".join(secrets.choice(string.ascii_lowercase) for _ in range(8))
            part = path / f".job-{job_id}.part"
            part.write_text(template(job_id, path.name, zone_here()), encoding="utf-8")
            with suppress(FileExistsError):
                os.link(part, path / "job.toml")  # two processes may start together: the first one names the job
            part.unlink()
        db = Database(sqlite3.connect(path / "log.db", timeout=PATIENCE, isolation_level=None))
        db.execute("PRAGMA journal_mode=WAL")
        db.close()
        sync_folder(path)
        sync_folder(path.parent)
    except (OSError, sqlite3.Error) as error:
        return told(error, path)
    return None


def _connect(file: Path) -> tuple[Database, bool]:
    """A connection with the settings of this store, and whether it can only read (a read-only disk)."""
    writable = os.access(file.parent, os.W_OK) and os.access(file, os.W_OK)
    if writable:
        conn = sqlite3.connect(file, timeout=PATIENCE, isolation_level=None, check_same_thread=False)
    elif Path(f"{file}-wal").exists() and Path(f"{file}-wal").stat().st_size:
        conn = sqlite3.connect(f"file:{file}?mode=ro", uri=True, isolation_level=None, check_same_thread=False)
    else:
        conn = sqlite3.connect(f"file:{file}?immutable=1", uri=True, isolation_level=None, check_same_thread=False)
    conn.execute("PRAGMA foreign_keys=ON")
    conn.execute("PRAGMA synchronous=FULL")
    conn.execute("PRAGMA secure_delete=ON")  # what is erased leaves zeros, not old bytes in free pages
    if writable and conn.execute("PRAGMA journal_mode").fetchone()[0] != "wal":
        conn.execute("PRAGMA journal_mode=WAL")
    return Database(conn), not writable


def migration_sets() -> tuple:
    """The steps of the log, then those of tables that have an owner of their own."""
    return (migrations, *(import_module(f"logbook.store.{owner}").migrations for owner in ("people", "search", "walked")))


def _migrate(db: Database, path: Path, read_only: bool) -> Mistake | None:
    known = {(each.name, step.name) for each in migration_sets() for step in each._migrations}
    applied = set()
    if db["_sqlite_migrations"].exists():
        applied = set(db.execute("SELECT migration_set, name FROM _sqlite_migrations"))
    newer = sorted(name for _, name in applied - known)
    if newer:
        return Mistake("store.newer-schema", str(path), {"folder": str(path), "came": newer[0]})
    if applied == known:
        return None
    if read_only:
        return Mistake("store.read-only", str(path), {"folder": str(path)})
    db.execute("BEGIN IMMEDIATE")
    try:
        for each in migration_sets():
            each.apply(db)
        db.execute("COMMIT")
    except BaseException:
        db.rollback()
        raise
    return None


@contextmanager
def writing(folder: JobFolder) -> Iterator[Database]:
    """One transaction that will not be interrupted: all of it is on the disk afterwards, or none.

    Raises Broken with `store.locked`, `store.disk-full`, `store.read-only` or `store.damaged`.
    """
    db = folder.db
    try:
        db.execute("BEGIN IMMEDIATE")
        try:
            yield db
            db.execute("COMMIT")
        except BaseException:
            db.rollback()
            raise
    except (sqlite3.Error, OSError) as error:
        mistake = told(error, folder.path)
        raise Broken(mistake) from error


def answers(function: Callable) -> Callable:
    """A public function of the store hands a machine's trouble to the caller as the Mistake that tells it."""

    @functools.wraps(function)
    def asked(*args, **kwargs):
        try:
            return function(*args, **kwargs)
        except Broken as broken:
            return broken.mistake
        except (sqlite3.Error, OSError) as error:  # outside a transaction: a file that could not get its name
            return told(error, args[0].path)

    return asked


def told(error: Exception, path: Path) -> Mistake:
    """The sentence for what the disk or the database answered; raises what has none."""
    values = {"folder": str(path)}
    text = str(error).lower()
    if isinstance(error, OSError):
        if error.errno in FULL:
            return Mistake("store.disk-full", str(path), values | {"free": _megabytes(path)})
        if error.errno in (errno.EROFS, errno.EACCES, errno.EPERM):
            return Mistake("store.read-only", str(path), values)
        if error.errno in (errno.ENOENT, errno.ENOTDIR, errno.EEXIST, errno.EISDIR):
            return Mistake("store.no-folder", str(path), values)
    elif "locked" in text or "busy" in text:
        return Mistake("store.locked", str(path), values)
    elif "readonly" in text or "read-only" in text:
        return Mistake("store.read-only", str(path), values)
    elif "disk is full" in text or "disk i/o" in text:
        return Mistake("store.disk-full", str(path), values | {"free": _megabytes(path)})
    elif "unable to open" in text:
        return Mistake("store.read-only", str(path), values)
    elif "malformed" in text or "not a database" in text:
        return Mistake("store.damaged", str(path), values)
    raise error


def free_bytes(path: Path) -> int:
    return shutil.disk_usage(path).free


def _megabytes(path: Path) -> int:
    try:
        return free_bytes(path) // MB
    except OSError:
        return 0


def room(folder: JobFolder) -> Mistake | None:
    """Asked before a body is read: is there room to receive it?"""
    if folder.read_only:
        return Mistake("store.read-only", str(folder.path), {"folder": str(folder.path)})
    free = free_bytes(folder.path)
    if free < folder.floors.receive:
        return Mistake("store.disk-full", str(folder.path), {"folder": str(folder.path), "free": free // MB})
    return None


def room_for_derived(folder: JobFolder) -> bool:
    return free_bytes(folder.path) >= folder.floors.derived


def sync_folder(path: Path) -> None:
    """Put the names in a folder on the disk: without it a new file can lose its name in a power cut."""
    handle = os.open(path, os.O_RDONLY | os.O_DIRECTORY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def hold(path: Path) -> int | Mistake:
    """Hold a job folder for one server; the handle keeps it until it is closed or the process ends."""
    handle = os.open(path, os.O_RDONLY | os.O_DIRECTORY)
    try:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError:
        os.close(handle)
        return Mistake("store.served-already", str(path), {"folder": str(path)})
    return handle
