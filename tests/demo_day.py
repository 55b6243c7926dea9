"""The day of the demonstration as notes, from the prepared transcripts that real Whisper made: no store, no torch."""

from __future__ import annotations

import hashlib
import json
import tomllib
from datetime import datetime
from functools import cache
from pathlib import Path

from logbook import job
from logbook.decoding import pictures
from logbook.note import Note, Photo, Place
from logbook.reading import read
from logbook.transcript import from_json

DEMO = Path(__file__).parent.parent / "logbook" / "demo"


def day() -> dict:
    return tomllib.loads((DEMO / "day.toml").read_text(encoding="utf-8"))


@cache
def the_job():
    return job.load(DEMO)


def heard(stem: str):
    digest = hashlib.sha256((DEMO / "notes" / f"{stem}.ogg").read_bytes()).hexdigest()
    return from_json(json.loads((DEMO / "heard" / f"{digest}.json").read_text(encoding="utf-8")))


def notes() -> list[Note]:
    return [_note(row) for row in day()["notes"]]


def _note(row: dict) -> Note:
    at = datetime.fromisoformat(row["at"])
    transcript = heard(row["stem"]) if "sound" in row else None
    text = transcript.text if transcript else row["text"]
    return Note(
        id=row["stem"], job=the_job().id, spoken_by=row["by"], handed_in_by=row["by"], spoken_at=at, sent_at=at,
        received_at=at, answered_at=at, state="answered", transcript=transcript,
        reading=read(text, transcript=transcript, job=the_job()),
        photos=tuple(_photo(DEMO / "notes" / photo["file"]) for photo in row.get("photos", ())),
    )  # fmt: skip


@cache
def _photo(file: Path) -> Photo:
    seen = pictures.look(file)
    taken = datetime.fromisoformat(seen["captured"]) if seen["captured"] else None
    place = None if seen["latitude"] is None else Place(seen["latitude"], seen["longitude"])
    return Photo(
        hashlib.sha256(file.read_bytes()).hexdigest(), taken, "exif" if taken else None, place,
        "exif" if place else None, tuple(seen["tags"]), readable=True, seen=seen,
    )  # fmt: skip
