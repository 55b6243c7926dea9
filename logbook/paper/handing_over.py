"""From the job folder to a closeout package on the disk.

    hand_over(folder, out, language, now, key=None, voices=None) -> HandedOver | Mistake

The day reports are made first, then the package is written to a part file beside `out`, put on the disk and named.
The journal in the package ends before the row that says it was handed over.
"""

from __future__ import annotations

import os
import sysconfig
from contextlib import suppress
from dataclasses import dataclass
from datetime import date, datetime
from hashlib import file_digest
from pathlib import Path
from tempfile import TemporaryDirectory

import logbook
from logbook import rules, store
from logbook.handover import signing
from logbook.handover.seen import Seen
from logbook.mistake import Mistake
from logbook.paper.making import make_day, named, planned_rows
from logbook.paper.package import Built, Closeout, build
from logbook.store import holding, journal, people, walked


@dataclass(frozen=True)
class HandedOver:
    """`sha256` is that of the ZIP itself: tell it to whoever receives the package, by another way."""

    path: Path
    sha256: str
    bytes: int
    built: Built


def hand_over(folder: store.JobFolder, out: Path, language: str, now: datetime, key: Path | None = None, voices: str | None = None) -> HandedOver | Mistake:
    """`voices` says who asked the crew and when: only then their recordings go along."""
    sign = signing.signer(key) if key else None
    if isinstance(sign, Mistake):
        return sign
    days = []
    for one in reversed(list(store.days(folder))):
        made = make_day(folder, one["date"], (language,), now)
        if isinstance(made, Mistake):
            return made
        days.append(one["date"])
    part = out.with_name(f".{out.name}.part")
    try:
        out.parent.mkdir(parents=True, exist_ok=True)
        with TemporaryDirectory(prefix=".handover-", dir=out.parent) as spool, open(part, "wb") as file:
            built = build(file, closeout(folder, days, language, voices), Path(spool), sign)
            file.flush()
            os.fsync(file.fileno())
        if isinstance(built, Mistake):
            return built
        with open(part, "rb") as file:
            digest = file_digest(file, "sha256").hexdigest()
        os.replace(part, out)
    except OSError as error:
        return Mistake("handover.no-room", str(out), {"file": str(out), "why": error.strerror or str(error)})
    finally:
        with suppress(OSError):
            part.unlink()
    with store.writing(folder) as db:
        journal.write(db, "handed_over", {"package": digest}, {"file": out.name, "sha256": digest, "journal": built.journal["hash"], "voices": voices}, now)
    return HandedOver(out, digest, out.stat().st_size, built)


def closeout(folder: store.JobFolder, days: list[str], language: str, voices: str | None = None) -> Closeout:
    """What the log holds, as a package wants it; people by the names they go by."""
    job, known = folder.job, people.names(folder.db)
    return Closeout(
        job={"id": job.id, "name": job.name, "place": job.place, "roles": dict(job.roles)},
        language=language,
        notes=lambda: (named(note, known) for note in store.each_note(folder, language)),
        pieces=lambda: (named(piece, known) for piece in store.each_piece(folder, language)),
        journal=lambda: journal.rows(folder),
        original=lambda sha256: store.original(folder, sha256),
        small=lambda sha256: store.thumbnail(folder, sha256),
        rules=rules.book(job, language),
        planned=planned_rows(job, None, language),
        keep_place=job.photos.keep_place,
        files=carried(folder),
        seen=_seen(folder, known),
        voices=voices,
        days=[{"date": day, "signatures": named(list(store.signatures_of(folder, date.fromisoformat(day))), known), "pdf": _signed_or_newest(folder, day)} for day in days],
    )


def _seen(folder: store.JobFolder, known: dict[str, str]) -> Seen:
    acts = {
        "draws": walked.draws(folder), "looks": walked.looks(folder), "answers": walked.walk_answers(folder),
        "records": walked.leak_records(folder), "releases": holding.release_acts(folder.db),
    }  # fmt: skip
    return Seen(**named(acts, known), holds=tuple((hold.key, hold.name) for hold in folder.job.holds.values()))


def carried(folder: store.JobFolder) -> list[tuple[str, Path]]:
    """Files that go in as they lie: day reports, documents of the job, job file and schedules, schemas."""
    root = folder.path
    found = [(f"days/{path.relative_to(root / 'reports').as_posix()}", path) for path in sorted((root / "reports").rglob("day-*.*"))]
    found += [(f"documents/{path.name}", path) for path in sorted((root / "documents").iterdir()) if not path.name.startswith(".")]
    found += [(f"job/{path.name}", path) for path in sorted(root.iterdir()) if path.is_file() and path.suffix in (".toml", ".csv")]
    found += [(f"schemas/{path.name}", path) for path in schemas()]
    return [(place, path) for place, path in found if path.is_file()]


def schemas() -> list[Path]:
    """The schemas of everything that leaves the process: beside the code in a clone, under share/ once installed."""
    places = (Path(logbook.__file__).parents[1] / "schemas", Path(sysconfig.get_path("data")) / "share" / "fitting-logbook" / "schemas")
    return next((found for place in places if (found := sorted(place.glob("*.json")))), [])


def _signed_or_newest(folder: store.JobFolder, day: str) -> str | None:
    """The day report that was signed last, else the newest."""
    signed = sorted((folder.path / "reports" / "signed").glob(f"day-{day}-*.pdf"), key=lambda path: path.stat().st_mtime)
    if signed:
        return f"days/signed/{signed[-1].name}"
    return f"days/day-{day}.pdf" if (folder.path / "reports" / f"day-{day}.pdf").is_file() else None
