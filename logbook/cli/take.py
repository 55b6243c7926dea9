"""Hand notes in from files: sound or text, each with the photos of the same stem, in the order given."""

from __future__ import annotations

import re
import sys
import uuid
from datetime import UTC, datetime
from pathlib import Path

SOUND = {".ogg", ".opus", ".webm", ".m4a", ".mp4", ".mp3", ".flac", ".wav", ".aac"}
PICTURE = {".jpg", ".jpeg", ".png", ".heic", ".webp"}
NAMES = uuid.UUID("6f0c3f0e-7d8c-4a52-9a3c-5d2b7a1e9c40")  # the space of ids made from files


def configure(parser) -> None:
    parser.add_argument("files", nargs="+", type=Path, metavar="FILE")
    parser.add_argument("--folder", type=Path, default=Path("uploads"), help="the job folder (default ./uploads), made if missing")
    parser.add_argument("--as", dest="speaker", default="office", metavar="NAME", help="who spoke")
    parser.add_argument("--at", metavar="TIME", help="when, as 2026-10-14T10:43:00-05:00; without it the time of the file")
    parser.add_argument("--language", choices=("en", "es"))


def run(args) -> int:
    from logbook import store
    from logbook.mistake import BAD, OK, Mistake
    from logbook.wording import say

    at = datetime.fromisoformat(args.at) if args.at else None
    folder = store.open_folder(args.folder, create=True)
    if isinstance(folder, Mistake):
        return _refused(folder)
    worst = OK
    with folder:
        for file in args.files:
            got = take(folder, file, args.speaker, at, args.language)
            if isinstance(got, Mistake):
                worst = _refused(got)
                continue
            key = "store.take.again" if got.repeated else "store.take.taken"
            told = {"name": file.name, "id": got.id, "photos": len(got.digests["photos"])}
            print(say(key, "en", **told))
        waiting = folder.db.execute("SELECT count(*) FROM notes WHERE state = 'waiting'").fetchone()[0]
        if waiting:
            print(say("store.take.waiting", "en", count=waiting), file=sys.stderr)
    return worst if worst == OK else BAD


def take(folder, file: Path, speaker: str, at: datetime | None, language: str | None):
    """One file as a note. Its id comes from its bytes and the speaker, so that taking it twice changes nothing."""
    from logbook import store
    from logbook.intake import Incoming, Part
    from logbook.mistake import Mistake
    from logbook.store.files import file_digest

    if not file.is_file():
        return Mistake("store.no-files", str(file), {"name": file.name})
    kind = file.suffix.lower()
    if kind not in SOUND | {".txt"}:
        return Mistake("store.not-taken", str(file), {"name": file.name, "came": kind or "?"})
    photos = photos_of(file)
    at = at or datetime.fromtimestamp(file.stat().st_mtime, UTC)
    note = str(_version_4(uuid.uuid5(NAMES, f"{speaker} {file_digest(file)}")))
    words = file.read_text(encoding="utf-8", errors="replace").strip() if kind == ".txt" else None
    incoming = Incoming(
        id=note,
        spoken_at=at if at.tzinfo else at.replace(tzinfo=folder.job.timezone()),
        spoken_by=speaker,
        handed_in_by=speaker,
        audio=() if words is not None else (Part(file, file.name),),
        text=words,
        photos=tuple(Part(photo, photo.name) for photo in photos),
        language=language,
    )
    return store.receive(folder, incoming)


def photos_of(file: Path) -> list[Path]:
    """`7.jpg` and `7-2.jpg` beside `7.ogg`, in the order of their numbers."""
    found = []
    for beside in file.parent.iterdir():
        told = re.fullmatch(re.escape(file.stem) + r"(?:-(\d+))?", beside.stem)
        if told and beside.suffix.lower() in PICTURE:
            found.append((int(told[1] or 1), beside.name, beside))
    return [beside for *_, beside in sorted(found)]


def _version_4(made: uuid.UUID) -> uuid.UUID:
    """The contract asks for version 4 ids; the bits of a digest serve as well as random ones."""
    return uuid.UUID(bytes=made.bytes, version=4)


def _refused(mistake) -> int:
    from logbook.mistake import BAD
    from logbook.wording import say

    for part in ("error", "cure"):
        print(say(f"{mistake.key}.{part}", "en", **mistake.values), file=sys.stderr)
    return BAD
