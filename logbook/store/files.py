"""Files of a job folder: laid down as a part, put on the disk, then named by their SHA-256 and never rewritten.

The order is what a power cut cannot undo: write the part, fsync it, rename it, fsync the folder. Only then may a
row speak of the file.
"""

from __future__ import annotations

import hashlib
import io
import os
import uuid
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from logbook import intake
from logbook.mistake import Mistake
from logbook.store.folder import JobFolder, sync_folder, told

PIECE = 1 << 18  # bytes written at a time
WHERE = {"sound": "originals", "picture": "originals", "document": "documents"}


@dataclass(frozen=True)
class Laid:
    """A part on the disk that has no name yet."""

    part: Path
    what: str
    kind: str
    sha256: str
    bytes: int


def lay(folder: JobFolder, part: intake.Part, what: str, where: str) -> Laid | Mistake:
    """Write one part to the disk and fsync it; its kind is told by its first bytes, its size while it comes."""
    place = folder.path / WHERE[what] / f".{uuid.uuid4().hex}.part"
    try:
        with _stream(part) as source, open(place, "xb") as file:
            laid = _copy(source, file, place, what, where)
            if isinstance(laid, Laid):
                file.flush()
                os.fsync(file.fileno())
    except OSError as error:
        place.unlink(missing_ok=True)
        return told(error, folder.path)
    if isinstance(laid, Mistake):
        place.unlink(missing_ok=True)
    return laid


def _stream(part: intake.Part):
    if isinstance(part.source, bytes):
        return io.BytesIO(part.source)
    if isinstance(part.source, Path):
        return open(part.source, "rb")
    return _Lent(part.source)


class _Lent:
    """A stream that belongs to somebody else: read here, closed there."""

    def __init__(self, stream):
        self.read = stream.read

    def __enter__(self):
        return self

    def __exit__(self, *_):
        return None


def _copy(source, file, place: Path, what: str, where: str) -> Laid | Mistake:
    head = source.read(PIECE)
    kind = intake.may_be(what, head[: intake.HEAD], where)
    if isinstance(kind, Mistake):
        return kind
    digest, size, most = hashlib.sha256(), 0, intake.LARGEST[what]
    while head:
        size += len(head)
        if size > most:
            return Mistake("intake.too-big", where, {"where": where, "limit": most // intake.MB})
        digest.update(head)
        file.write(head)
        head = source.read(PIECE)
    return Laid(place, what, kind, digest.hexdigest(), size)


def name(folder: JobFolder, laid: Iterable[Laid]) -> None:
    """Give parts their names and put the names on the disk. A file of that name stays, if it is whole."""
    touched = set()
    for one in laid:
        final = one.part.with_name(f"{one.sha256}.{one.kind}")
        if final.exists() and final.stat().st_size == one.bytes and file_digest(final) == one.sha256:
            one.part.unlink()
        else:
            os.replace(one.part, final)
        touched.add(final.parent)
    for each in sorted(touched):
        sync_folder(each)


def drop(laid: Iterable[Laid]) -> None:
    for one in laid:
        one.part.unlink(missing_ok=True)


def file_digest(path: Path) -> str:
    with open(path, "rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def place(folder: JobFolder, sha256: str) -> Path | None:
    """Where a file that was received lies, or None where none of that digest was."""
    found = folder.db.execute("SELECT what, kind FROM files WHERE sha256 = ?", [sha256]).fetchone()
    return None if found is None else folder.path / WHERE[found[0]] / f"{sha256}.{found[1]}"


def original(folder: JobFolder, sha256: str) -> Path | None:
    """A sound, picture or document as it was handed in."""
    path = place(folder, sha256)
    return path if path is not None and path.is_file() else None


def erased_at(folder: JobFolder, sha256: str) -> str | None:
    """When a file was erased on request; None for one that was not."""
    found = folder.db.execute("SELECT erased_at FROM files WHERE sha256 = ?", [sha256]).fetchone()
    return None if found is None else found[0]


def media_type(folder: JobFolder, sha256: str) -> str | None:
    found = folder.db.execute("SELECT kind FROM files WHERE sha256 = ?", [sha256]).fetchone()
    return None if found is None else intake.MEDIA[found[0]]


def thumbnail_place(folder: JobFolder, sha256: str) -> Path:
    return folder.path / "derived" / f"{sha256}-640.jpg"


def thumbnail(folder: JobFolder, sha256: str) -> Path | None:
    """The small upright copy of a photo, made once by a worker; None while there is none."""
    path = thumbnail_place(folder, sha256)
    return path if intake.is_digest(sha256) and path.is_file() else None


def keep_derived(path: Path, data: bytes) -> None:
    """Write a derived file whole or not at all. It can be made again, so it needs no fsync."""
    part = path.with_name(f".{uuid.uuid4().hex}.part")
    try:
        part.write_bytes(data)
        os.replace(part, path)
    finally:
        part.unlink(missing_ok=True)
