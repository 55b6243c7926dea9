"""Notes of a case file as the log gets them: spoken sentences read by the reader, at times of an invented day."""

import tomllib
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from itertools import count
from pathlib import Path
from zoneinfo import ZoneInfo

from logbook import job as jobs
from logbook import pipeline, reading, review
from logbook.joining.values import read_value
from logbook.note import Correction, Note, Pressed
from logbook.piece import Decision

CASES = Path(__file__).parent / "cases"
JOB = replace(jobs.DEFAULT, id="qmvtkrha", zone="America/Chicago")
ZONE = ZoneInfo("America/Chicago")
NOW = datetime(2026, 10, 20, 12, tzinfo=ZONE)


@dataclass(frozen=True)
class Log:
    notes: tuple[Note, ...]
    decisions: tuple[Decision, ...]
    book: pipeline.Book


def cases(area: str, *names: str):
    for name in names:
        for case in tomllib.loads((CASES / area / f"{name}.toml").read_text(encoding="utf-8"))["case"]:
            yield case


def when(text: str) -> datetime:
    """ "08:00" of the first day, "2T08:00" of the second (Monday the 12th of October 2026 is the first)."""
    day, _, time = text.rpartition("T")
    hour, minute = map(int, time.split(":"))
    return datetime(2026, 10, 11 + int(day or 1), hour, minute, tzinfo=ZONE)


def note(row: dict) -> Note:
    spoken = when(row["at"])
    answered = when(row["answered"]) if "answered" in row else spoken + timedelta(seconds=20)
    presses = tuple(
        Correction(f"{row['id']}-{i}", p.get("position", 0), p["name"], read_value(p["name"], p["value"]), row["by"], when(p["at"]))
        for i, p in enumerate(row.get("presses", ()))
    )
    return Note(
        id=row["id"],
        job=JOB.id,
        spoken_by=row["by"],
        handed_in_by=row["by"],
        spoken_at=spoken,
        sent_at=spoken,
        received_at=answered - timedelta(seconds=10),
        state="answered",
        answers=row.get("answers"),
        pressed=Pressed(row.get("mark"), row.get("kind"), row.get("run")),
        reading=reading.read(row["says"], language=row.get("language")),
        corrections=presses,
        withdrawn_at=when(row["withdrawn"]) if "withdrawn" in row else None,
        as_lead=row.get("lead", False),
        answered_at=answered,
    )


def numbered():
    """Piece ids that can be read: p1, p2, ..."""
    numbers = count(1)
    return lambda: f"p{next(numbers)}"


def laid(case: dict, **more) -> Log:
    """The case as a book: notes first as they come, then decisions at their time, each made by `review.decide`."""
    notes = tuple(note(row) for row in case["notes"])
    new_id = numbered()
    book, decisions, job = None, [], more.pop("job", JOB)
    for place, row in enumerate(case.get("decisions", ())):
        at = when(row["at"])
        heard = [n for n in notes if n.answered_at <= at]
        book = pipeline.reckon(heard, decisions, job, at, previous=book, new_id=new_id, **more)
        piece_id = book.entries[row["on"], row.get("position", 0)]
        findings = book.findings[piece_id]
        edition = next(f.edition for f in findings if f.rule == row["rule"])
        body = {"id": f"d{place}", "edition": edition} | row
        made = review.decide(body, book.pieces[piece_id], findings, by=row.get("by", "rosa"), at=at)
        assert isinstance(made, Decision), made
        decisions.append(made)
    book = pipeline.reckon(notes, decisions, job, NOW, previous=book, new_id=new_id, **more)
    return Log(notes, tuple(decisions), book)
