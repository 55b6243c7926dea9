"""A copy of a job made while it is used, and bringing it back.

    back_up(folder, out, now) -> Copied | Mistake
    restore(copy, into) -> Restored | Mistake

A copy is a folder of its own: `copy.json` names one database and every file by its digest; the files lie in `files/`
under their digests, so a second copy adds the new ones only. `copy.json` is renamed into place last: a copy that was
cut short leaves the one before it whole. Keys and certificates lie elsewhere and are not in it.
"""

from __future__ import annotations

import fcntl
import json
import os
import re
import shutil
import sqlite3
import uuid
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import UTC, datetime
from hashlib import sha256 as sha256_of
from pathlib import Path, PurePosixPath

from logbook import __version__, intake
from logbook.mistake import Mistake
from logbook.store import doctoring, files, journal, proving
from logbook.store.folder import JobFolder, sync_folder, told

PIECE = 1 << 20  # bytes copied at a time
LIST, FILES = "copy.json", "files"
_OURS = re.compile(r"copy\.json|files|log-[0-9a-f]{64}\.db|\..+\.part|\..+\.part-(journal|wal|shm)")


@dataclass(frozen=True)
class Copied:
    """`new` of `files` were not in the copy before; `problems` are files that this job lacks or that are damaged."""

    files: int
    new: int
    bytes: int
    seq: int
    hash: str
    problems: tuple[Mistake, ...] = ()


@dataclass(frozen=True)
class Restored:
    """What stands in the new folder, after it was examined; `problems` are files that the copy never had."""

    notes: int
    files: int
    seq: int
    hash: str
    problems: tuple[Mistake, ...] = ()


@dataclass
class _Copying:
    """The list of one copy as it grows."""

    out: Path
    prove: bool
    listed: dict[str, dict] = field(default_factory=dict)
    new: int = 0
    problems: list[Mistake] = field(default_factory=list)

    def lacks(self, kept: Path, sha256: str) -> bool:
        return not kept.exists() or (self.prove and proving.whole(kept, sha256) is not None)

    def have(self, place: str, sha256: str, size: int) -> None:
        self.listed[place] = {"path": place, "sha256": sha256, "bytes": size}


def back_up(folder: JobFolder, out: Path | str, now: datetime | None = None, *, prove: bool = False) -> Copied | Mistake:
    """Copy the job into `out`; a server may go on receiving meanwhile. Mistakes: `keeping.*`, `store.disk-full`, ...

    `prove` reads what the copy holds already too, and copies anew what was damaged there.
    """
    out = Path(out).resolve()
    if out == folder.path or out.is_relative_to(folder.path) or folder.path.is_relative_to(out):
        return Mistake("keeping.copy-inside", str(out), {"copy": str(out), "folder": str(folder.path)})
    try:
        out.mkdir(parents=True, exist_ok=True, mode=0o700)
        handle = os.open(out, os.O_RDONLY | os.O_DIRECTORY)
        try:
            fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
            before = _before(folder, out)
            return before if isinstance(before, Mistake) else _copy_all(folder, _Copying(out, prove), now or datetime.now(UTC))
        except BlockingIOError:
            return Mistake("keeping.copy-busy", str(out), {"copy": str(out)})
        finally:
            os.close(handle)
    except (OSError, sqlite3.Error) as error:
        return told(error, out)


def _before(folder: JobFolder, out: Path) -> dict | Mistake | None:
    """The list of the copy that is there; refused where it is none, another job's, or knows what this job does not."""
    odd = sorted(each.name for each in out.iterdir() if not _OURS.fullmatch(each.name))
    if odd:
        return Mistake("keeping.not-for-a-copy", str(out), {"copy": str(out), "came": odd[0]})
    if not (out / LIST).exists():
        return None
    before = read_list(out)
    if isinstance(before, Mistake):
        return before
    seq, newest = before["journal"]["seq"], before["journal"]["hash"]
    row = next(journal.each(folder.db, seq), None) if seq else None
    if seq and (row is None or row.seq != seq or row.hash != newest):
        return Mistake("keeping.copy-knows-more", str(out), {"copy": str(out), "folder": str(folder.path), "seq": seq, "hash": newest[:16]})
    return before


def _copy_all(folder: JobFolder, copying: _Copying, now: datetime) -> Copied | Mistake:
    """The database first: every file that it speaks of had its name before its row was written. One that does not hold
    together is no copy: the one before it may be the last good one, and stays."""
    out = copying.out
    (out / FILES).mkdir(exist_ok=True)
    part = out / f".{uuid.uuid4().hex}.part"
    try:
        target = sqlite3.connect(part)
        try:
            folder.db.conn.backup(target)
            if (came := target.execute("PRAGMA integrity_check(1)").fetchone()[0]) != "ok":
                return _log_damaged(folder, out, came)
            target.execute("PRAGMA journal_mode=DELETE")  # one file, without a log beside it
            wanted = list(target.execute("SELECT sha256, what, kind FROM files WHERE erased_at IS NULL ORDER BY sha256"))
            notes = target.execute("SELECT count(*) FROM notes").fetchone()[0]
            last = target.execute("SELECT seq, hash FROM journal ORDER BY seq DESC LIMIT 1").fetchone()
        finally:
            target.close()
        _received(folder, copying, wanted)
        for path in _others(folder.path):
            _other(folder, copying, path)
        digest = files.file_digest(part)
        base = out / f"log-{digest}.db"
        size = part.stat().st_size
        _synced(part)
        os.replace(part, base)
    finally:
        part.unlink(missing_ok=True)
    seq, newest = last or (0, journal.chain.START)
    whole = {
        "what": "copy of a job folder", "program": __version__, "made_at": now.astimezone(UTC).isoformat(timespec="seconds"),
        "job": folder.job.id, "notes": notes, "journal": {"seq": seq, "hash": newest},
        "database": {"sha256": digest, "bytes": size},
        "files": [copying.listed[place] for place in sorted(copying.listed)],
        "lacking": sorted(one.where for one in copying.problems if one.where not in copying.listed),
    }  # fmt: skip
    _write_list(out, whole)
    _clear(out, whole)
    total = size + sum(one["bytes"] for one in whole["files"])
    return Copied(len(copying.listed), copying.new, total, seq, newest, tuple(copying.problems))


def _log_damaged(folder: JobFolder, out: Path, came: str) -> Mistake:
    return Mistake("keeping.log-damaged", str(folder.path), {"folder": str(folder.path), "copy": str(out), "came": came.splitlines()[-1]})


def _received(folder: JobFolder, copying: _Copying, wanted: list) -> None:
    """What was handed in. A file that the copy has is not read again; one that the job lost stays in the copy, and is told."""
    for sha256, what, kind in wanted:
        place = f"{files.WHERE[what]}/{sha256}.{kind}"
        kept = copying.out / FILES / f"{sha256}.{kind}"
        source = folder.path / place
        wrong = None if source.is_file() else "missing"
        if copying.lacks(kept, sha256):
            wrong = _lay(source, kept, sha256)
            copying.new += not wrong
        if wrong:
            copying.problems.append(Mistake(f"store.file-{wrong}", place, {"name": place}))
        if not copying.lacks(kept, sha256):
            copying.have(place, sha256, kept.stat().st_size)


def _others(root: Path) -> Iterator[Path]:
    """Everything else that lies in the folder: job file, schedules, reports, small copies; no parts, no hidden files."""
    taken = {*files.WHERE.values()}
    for here, folders, names in os.walk(root):
        top = Path(here) == root
        folders[:] = sorted(one for one in folders if not one.startswith(".") and not (top and one in taken))
        for name in sorted(names):
            path = Path(here) / name
            if not name.startswith(".") and not (top and name.startswith("log.db")) and path.is_file() and not path.is_symlink():
                yield path


def _other(folder: JobFolder, copying: _Copying, path: Path) -> None:
    place = path.relative_to(folder.path).as_posix()
    data = path.read_bytes()
    digest = sha256_of(data).hexdigest()
    kept = copying.out / FILES / f"{digest}{path.suffix}"
    if copying.lacks(kept, digest):
        _keep(kept, data)
        copying.new += 1
    copying.have(place, digest, len(data))


def _lay(source: Path, kept: Path, sha256: str) -> str | None:
    """Copy a file that must have this digest: "missing", "altered", or None when it is on the disk under its name."""
    part = kept.with_name(f".{uuid.uuid4().hex}.part")
    digest = sha256_of()
    try:
        try:
            opened = open(source, "rb")
        except (FileNotFoundError, NotADirectoryError):
            return "missing"
        with opened, open(part, "xb") as file:
            while piece := opened.read(PIECE):
                digest.update(piece)
                file.write(piece)
            file.flush()
            os.fsync(file.fileno())
        if digest.hexdigest() != sha256:
            return "altered"
        os.replace(part, kept)
    finally:
        part.unlink(missing_ok=True)
    return None


def _keep(kept: Path, data: bytes) -> None:
    part = kept.with_name(f".{uuid.uuid4().hex}.part")
    try:
        with open(part, "xb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        os.replace(part, kept)
    finally:
        part.unlink(missing_ok=True)


def _synced(path: Path) -> None:
    with open(path, "rb+") as file:
        os.fsync(file.fileno())


def _write_list(out: Path, whole: dict) -> None:
    sync_folder(out / FILES)
    sync_folder(out)  # the database has its name before the list speaks of it
    _keep(out / LIST, json.dumps(whole, ensure_ascii=False, indent=1).encode())
    sync_folder(out)


def _clear(out: Path, whole: dict) -> None:
    """What the new list does not speak of: older databases, reports that were printed anew, parts of a copy cut short.
    Files that the job lost stay in the copy as long as a list before spoke of them, because they may be the last ones."""
    bases = {f"log-{whole['database']['sha256']}.db"}
    names = {_name(one) for one in whole["files"]}
    lost = {PurePosixPath(name).name for name in whole["lacking"]}
    for each in out.iterdir():
        if each.name not in bases and re.fullmatch(r"log-[0-9a-f]{64}\.db|\..+\.part(-\w+)?", each.name):
            each.unlink()
    for each in (out / FILES).iterdir():
        if each.name not in names | lost:
            each.unlink()


def _name(one: dict) -> str:
    return one["sha256"] + PurePosixPath(one["path"]).suffix


def read_list(copy: Path) -> dict | Mistake:
    """`copy.json`, with the shape that this program writes and no path that leads out of a folder."""
    try:
        whole = json.loads((copy / LIST).read_text(encoding="utf-8"))
        sound = (
            intake.is_digest(whole["database"]["sha256"])
            and type(whole["journal"]["seq"]) is int
            and intake.is_digest(whole["journal"]["hash"])
            and all(intake.is_digest(one["sha256"]) and _inside(one["path"]) for one in whole["files"])
            and all(isinstance(one, str) for one in whole["lacking"])
        )
    except (OSError, ValueError, KeyError, TypeError):
        sound = False
    return whole if sound else _no_copy(copy, LIST)


def _inside(place: object) -> bool:
    """A path that stays in the folder, hides nothing, and is not the log itself."""
    if not isinstance(place, str) or "\0" in place or "\\" in place:
        return False
    parts = PurePosixPath(place).parts
    return bool(parts) and not any(one.startswith((".", "/")) for one in parts) and not parts[0].startswith("log.db")


def _no_copy(copy: Path, came: str) -> Mistake:
    return Mistake("store.not-a-copy", str(copy), {"folder": str(copy), "came": came})


def prove(copy: Path | str) -> dict | Mistake:
    """Read every byte of a copy; its list, or the first thing that is not as it says."""
    copy = Path(copy)
    if not copy.is_dir():
        return Mistake("store.no-such-copy", str(copy), {"folder": str(copy)})
    whole = read_list(copy)
    if isinstance(whole, Mistake):
        return whole
    base = f"log-{whole['database']['sha256']}.db"
    for name, digest in [(base, whole["database"]["sha256"])] + [(f"{FILES}/{_name(one)}", one["sha256"]) for one in whole["files"]]:
        if proving.whole(copy / name, digest):
            return _no_copy(copy, name)
    return whole


def restore(copy: Path | str, into: Path | str) -> Restored | Mistake:
    """Bring a copy back into a new folder, which is a job folder only when everything in it has been proven."""
    copy, into = Path(copy).resolve(), Path(into).resolve()
    whole = prove(copy)
    if isinstance(whole, Mistake):
        return whole
    if into.exists() and (not into.is_dir() or any(into.iterdir())):
        return Mistake("store.not-empty", str(into), {"folder": str(into)})
    try:
        into.mkdir(parents=True, exist_ok=True)
        return _bring_back(copy, into, whole)
    except (OSError, sqlite3.Error) as error:
        _empty(into)
        return told(error, into)


def _bring_back(copy: Path, into: Path, whole: dict) -> Restored | Mistake:
    for place in doctoring.SUBFOLDERS:
        (into / place).mkdir()
    for one in whole["files"]:
        target = into / one["path"]
        target.parent.mkdir(parents=True, exist_ok=True)
        if _lay(copy / FILES / _name(one), target, one["sha256"]):
            _empty(into)
            return _no_copy(copy, one["path"])
    if _lay(copy / f"log-{whole['database']['sha256']}.db", into / "log.db", whole["database"]["sha256"]):
        _empty(into)
        return _no_copy(copy, "log.db")
    for here, _, _ in os.walk(into):
        sync_folder(Path(here))
    found = doctoring.examine(into)
    if isinstance(found, Mistake):
        _empty(into)
        return found
    lacking = set(whole["lacking"])
    bad = [one for one in found.problems if not (one.key in ("store.file-missing", "store.file-altered") and one.where in lacking)]
    if (found.rows, found.hash) != (whole["journal"]["seq"], whole["journal"]["hash"]):
        bad.append(_no_copy(copy, "journal"))
    if bad and bad[0].key in ("store.not-a-copy", "store.damaged", "store.database-damaged"):
        _empty(into)
        return bad[0]
    return Restored(found.notes, found.files - len(lacking), found.rows, found.hash, tuple(found.problems))


def _empty(into: Path) -> None:
    """Take back what a restore that failed has laid down; the folder was empty or new."""
    for each in list(into.iterdir()) if into.is_dir() else ():
        shutil.rmtree(each) if each.is_dir() and not each.is_symlink() else each.unlink()
