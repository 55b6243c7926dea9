"""A day's report from the job folder to its files, and the bytes of a signed day kept for good.

    make_day(folder, date, languages, now) -> Made | Mistake

`reports/day-DATE.html`, `.pdf` and `.json` are the newest; they are written only when something changed. When
somebody has signed this content, a copy goes to `reports/signed/` and is never written again; a day that changes
after that is a new edition, which says what changed.
"""

from __future__ import annotations

import fcntl
import json
import os
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, replace
from datetime import date, datetime
from pathlib import Path

from logbook import labels, measure, store
from logbook.day import Day, Planned, content_of, document
from logbook.job import Job
from logbook.mistake import Mistake
from logbook.geometry.run_drawing import Line
from logbook.paper import reports
from logbook.runs import line
from logbook.schedule import Row, bare_run
from logbook.store import people, walked
from logbook.wording import LANGUAGES

KINDS = ("json", "html", "pdf")


@dataclass(frozen=True)
class Made:
    """`files` by kind, `document` the JSON; `written` False where the files stood already and nothing changed."""

    files: dict[str, Path]
    document: dict
    written: bool


def make_day(folder: store.JobFolder, day: str, languages: Sequence[str], now: datetime) -> Made | Mistake:
    """`day` is an ISO date of the job's days. Mistake `report.no-day` where the log has nothing of that day."""
    with _alone(folder.path / "reports"):
        return _make(folder, day, languages, now)


@contextmanager
def _alone(place: Path) -> Iterator[None]:
    """One writer of reports at a time, whoever asks: the server and the command line share the folder."""
    place.mkdir(parents=True, exist_ok=True)
    handle = os.open(place, os.O_RDONLY | os.O_DIRECTORY)
    try:
        fcntl.flock(handle, fcntl.LOCK_EX)
        yield
    finally:
        os.close(handle)


def _make(folder: store.JobFolder, day: str, languages: Sequence[str], now: datetime) -> Made | Mistake:
    days = _gathered(folder, day, languages)
    return days if isinstance(days, Mistake) else _written(folder, day, days, now)


def _gathered(folder: store.JobFolder, day: str, languages: Sequence[str]) -> dict[str, Day] | Mistake:
    """The day in each language."""
    days = {}
    for language in languages:
        found = gather(folder, day, language)
        if isinstance(found, Mistake):
            return found
        days[language] = found
    return days


def sign_day(folder: store.JobFolder, day: str, languages: Sequence[str], now: datetime, read: str | None, sign: Callable[[str], store.Act | Mistake]) -> store.Act | Mistake:
    """Sign what was read and keep its bytes for good: nobody prints this day between the two.

    `read` is the content that stood on the reader's page, None where a script takes what the log holds now;
    `sign(content)` writes the act. Mistake `pages.day-changed` where the log holds another content by now.
    """
    with _alone(folder.path / "reports"):
        days = _gathered(folder, day, languages)
        if isinstance(days, Mistake):
            return days
        content = content_of(next(iter(days.values())))
        if read not in (None, content):
            return Mistake("pages.day-changed", "report", {"date": day})
        act = sign(content)
        if isinstance(act, Mistake):
            return act
        signatures = named(list(store.signatures_of(folder, date.fromisoformat(day))), people.names(folder.db))
        _written(folder, day, {language: replace(one, signatures=signatures) for language, one in days.items()}, now)
        return act


def _written(folder: store.JobFolder, day: str, days: dict[str, Day], now: datetime) -> Made:
    place = folder.path / "reports"
    files = {kind: place / f"day-{day}.{kind}" for kind in KINDS}
    made_at = now.astimezone(folder.job.timezone()).replace(microsecond=0).isoformat()
    before, edition = _signed_before(place / "signed", next(iter(days.values())))
    made = document(days, made_at, before, edition)
    if before is not None and before["content"] == made["content"]:
        made = document(days, made_at, None, edition - 1)
    standing = _read(files["json"])
    if standing is not None and _lasting(standing) == _lasting(made) and all(path.is_file() for path in files.values()):
        return Made(files, standing, False)
    copies = _copies(folder, made)
    whole = {"json": json.dumps(made, ensure_ascii=False, indent=1).encode(), "html": reports.html(made, copies), "pdf": reports.pdf(made, copies)}
    for kind, path in files.items():
        _write(path, whole[kind])
    if any(one.get("report") == made["content"] for one in next(iter(days.values())).signatures):
        for kind in KINDS:
            kept = place / "signed" / f"day-{day}-{made['content'][:12]}.{kind}"
            if not kept.exists():
                _write(kept, whole[kind])
    return Made(files, made, True)


def languages_of(folder: store.JobFolder, day: str, asked: str | None = None) -> tuple[str, ...]:
    """The languages to print a day in: as asked (a language or "both"), else as it was printed last, else the job's first."""
    job = folder.job.languages or ("en",)
    if asked == "both":
        return tuple(job) if len(job) > 1 else LANGUAGES
    if asked in LANGUAGES:
        return (asked,)
    standing = _read(folder.path / "reports" / f"day-{day}.json")
    return tuple(standing["languages"]) if standing else (job[0],)


def gather(folder: store.JobFolder, day: str, language: str) -> Day | Mistake:
    """What the log holds of one day, with people by the names they go by."""
    found = store.day_documents(folder, date.fromisoformat(day), language)
    if isinstance(found, Mistake):
        return found
    if not found["notes"]:
        return Mistake("report.no-day", day, {"date": day, "newest": store.newest_day(folder) or "–"})
    return told_of(folder, day, language, found)


def told_of(folder: store.JobFolder, day: str, language: str, found: dict, drawn: bool = True) -> Day:
    """The day of its documents, which a page has at hand already. The whole job's marks are read only where a schedule asks for them,
    the runs' other pieces only where the runs are `drawn`."""
    known = people.names(folder.db)
    job: Job = folder.job
    planned = planned_rows(job, date.fromisoformat(day), language)
    about = {"id": job.id, "name": job.name, "place": job.place, "roles": dict(job.roles)}
    logged = () if planned is None else tuple((one["run"], one["mark"]) for one in store.logged(folder))
    told = named(found, known)
    went = named(walked.of_day(folder, date.fromisoformat(day)), known)
    ids = {name: id for id, name in known.items()}
    lines = _runs(folder, found["pieces"], date.fromisoformat(day)) if drawn else ()
    return Day(day, about, told["notes"], told["pieces"], told["signatures"], found["journal"], planned, logged, ids, lines=lines, **went)


def _runs(folder: store.JobFolder, pieces: Sequence[dict], day: date) -> tuple[Line, ...]:
    """The runs of these pieces, each whole, as the schedule of that day orders it; one piece alone is no run."""
    named = {bare_run(piece["run"]): piece["run"] for piece in pieces if piece["run"]}
    lines = (line.lay_out(folder.job, store.run_pieces(folder, run), run, day) for _, run in sorted(named.items(), key=lambda one: (len(one[0]), one[0])))
    return tuple(one for one in lines if len(one.stops) > 1)


_PEOPLE = frozenset(("by", "spoken_by", "handed_in_by"))


def named(value, known: dict[str, str], key: str = ""):
    """The same documents with the names of people in place of their ids."""
    if isinstance(value, str):
        return known.get(value, value) if key in _PEOPLE else value
    if isinstance(value, dict):
        return {name: named(one, known, name) if name in _PEOPLE or isinstance(one, dict | list) else one for name, one in value.items()}
    return [named(one, known, key) for one in value] if isinstance(value, list) else value


def planned_rows(job: Job, day: date | None, language: str) -> tuple[Planned, ...] | None:
    """The schedule in force on a day (None: the newest), as reports print it; None where the job has none."""
    revision = job.revision(day)
    return None if revision is None else tuple(_planned(row, language) for row in revision.rows)


def _planned(row: Row, language: str) -> Planned:
    ends = [size for size in (row.inlet, row.outlet) if size]
    text = " › ".join(labels.value("inlet_size", [measure.in_json(side) for side in size], [str(side) for side in size], language) for size in ends)
    return Planned(row.mark, row.run, row.kind, text)


def _copies(folder: store.JobFolder, made: dict) -> dict[str, bytes]:
    wanted = {photo["sha256"] for report in made["reports"] for sheet in report["fittings"]["sheets"] for photo in sheet["photos"]}
    found = {sha256: store.thumbnail(folder, sha256) for sha256 in sorted(wanted)}
    return {sha256: path.read_bytes() for sha256, path in found.items() if path is not None}


def _signed_before(place: Path, day: Day) -> tuple[dict | None, int]:
    """The document that was signed last, and the number of the edition after it."""
    contents = list(dict.fromkeys(one["report"] for one in day.signatures if one.get("report")))
    kept = [_read(place / f"day-{day.date}-{content[:12]}.json") for content in contents]
    kept = [one for one in kept if one is not None]
    return (kept[-1], len(kept) + 1) if kept else (None, 1)


def _lasting(document: dict) -> dict:
    """What makes a report worth writing again: everything but the hour of printing."""
    reports_of = [{key: value for key, value in one.items() if key != "made"} for one in document["reports"]]
    return {key: value for key, value in document.items() if key != "made_at"} | {"reports": reports_of}


def _read(path: Path) -> dict | None:
    return json.loads(path.read_text(encoding="utf-8")) if path.is_file() else None


def _write(path: Path, content: bytes) -> None:
    """Whole or not at all."""
    path.parent.mkdir(parents=True, exist_ok=True)
    part = path.with_name(f".{path.name}.part")
    part.write_bytes(content)
    os.replace(part, path)
