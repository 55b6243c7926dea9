"""The demonstration: an invented day of work, handed in, heard, judged and put on paper on the ordinary path.

    lay(folder_path) -> JobFolder | Mistake        the job file and its schedule, and the store beside them
    hand_in(folder) -> {stem: note id} | Mistake   people, then every note of `day.toml`; again changes nothing
    sign_ins(folder) -> [{"name", "role", "password"}]   a fresh password each, kept only as its hash
    built(folder, ...) -> the document of `logbook demo --json`

Nothing here knows what is wrong with the work: the recordings and pictures go in like anybody's.
"""

from __future__ import annotations

import secrets
import shutil
import tomllib
import uuid
from collections.abc import Mapping
from datetime import datetime
from importlib.resources import files
from pathlib import Path

from logbook import store
from logbook.intake import Incoming, Part
from logbook.mistake import Mistake
from logbook.store import people

HERE = Path(str(files(__name__)))
PREPARED = HERE / "heard"  # what real Whisper made of the recordings, for machines without it
NAMES = uuid.UUID("5c1f6a0e-9d43-4c1b-8d0a-2b7f4e6a9c11")  # the space of ids of these notes
LETTERS = "abcdefghjkmnpqrstuvwxyz23456789"  # without those that look alike


def day() -> dict:
    """`day.toml`: the people, and who handed in what at which hour."""
    return tomllib.loads((HERE / "day.toml").read_text(encoding="utf-8"))


def lay(path: Path) -> store.JobFolder | Mistake:
    """The folder of the demonstration. Mistake `demo.other-job`: another job lies there already."""
    if not (path / "job.toml").exists():
        path.mkdir(parents=True, exist_ok=True)
        for name in ("schedule.csv", "job.toml"):
            shutil.copyfile(HERE / name, path / name)
    folder = store.open_folder(path, create=True)
    if not isinstance(folder, Mistake) and folder.job.id != day()["job"]:
        folder.close()
        return Mistake("demo.other-job", str(path), {"folder": str(path), "name": folder.job.name})
    return folder


def hand_in(folder: store.JobFolder) -> dict[str, str] | Mistake:
    """Every note as its speaker would hand it in, in the order spoken."""
    told = day()
    crew = _people(folder, told["people"])
    taken: dict[str, str] = {}
    for note in sorted(told["notes"], key=lambda note: note["at"]):
        got = store.receive(folder, _incoming(note, crew[note["by"]], folder.job.id))
        if isinstance(got, Mistake):
            return got
        taken[note["stem"]] = got.id
    return taken


def _people(folder: store.JobFolder, told: list[dict]) -> dict[str, str]:
    """The crew, each made once: name in `day.toml` -> person id."""
    now = datetime.now(folder.job.timezone())
    with store.writing(folder) as db:
        for one in told:
            if people.by_name(db, one["name"]) is None:
                people.add(db, one["name"], one["role"], now, one["language"])
    return {one["name"]: people.by_name(folder.db, one["name"]).id for one in told}


def _incoming(note: Mapping, speaker: str, job: str) -> Incoming:
    made = uuid.uuid5(NAMES, f"{job} {note['stem']}")
    sound = (Part(HERE / "notes" / note["sound"], note["sound"]),) if "sound" in note else ()
    at = datetime.fromisoformat(note["at"])
    return Incoming(
        id=str(uuid.UUID(bytes=made.bytes, version=4)),
        spoken_at=at,
        spoken_by=speaker,
        handed_in_by=speaker,
        audio=sound,
        text=note.get("text"),
        photos=tuple(Part(HERE / "notes" / photo["file"], photo["file"]) for photo in note.get("photos", ())),
        language="es" if "text" in note else None,
    )


def sign_ins(folder: store.JobFolder) -> list[dict]:
    """A new password for everybody of the demonstration; they are printed once and stand nowhere."""
    fresh = [(one, "-".join("".join(secrets.choice(LETTERS) for _ in range(4)) for _ in range(3))) for one in day()["people"]]
    hashes = [people.hashed(password) for _, password in fresh]  # outside the transaction: each takes a tenth of a second
    with store.writing(folder) as db:
        for (one, _), kept in zip(fresh, hashes, strict=True):
            people.keep_password(db, people.by_name(db, one["name"]).id, kept)
    return [{"name": one["name"], "role": one["role"], "password": password} for one, password in fresh]


def built(folder: store.JobFolder, engine: str, made: Mapping[str, Path], package: Path, seconds: float) -> dict:
    """What was built, counted from the log as it stands."""
    documents = store.day_documents(folder, day()["date"].isoformat(), "en")
    notes, pieces = documents["notes"], documents["pieces"]
    flagged = [
        {"run": one["run"], "mark": one["mark"], "rules": [found["rule"] for found in one["findings"] if found["shows"] == "flag"]}
        for one in pieces
    ]
    flagged = [one for one in flagged if one["rules"]]
    return {
        "folder": str(folder.path),
        "job": folder.job.id,
        "date": day()["date"].isoformat(),
        "engine": engine,
        "notes": len(notes),
        "heard": sum(1 for note in notes if note["transcript"] and note["state"] == "answered"),
        "typed": sum(1 for note in notes if not note["transcript"] and note["state"] == "answered"),
        "unheard": sum(1 for note in notes if note["state"] == "unheard"),
        "photos": sum(len(note["photos"]) for note in notes),
        "pieces": len(pieces),
        "flagged": len(flagged),
        "flagged_pieces": flagged,
        "questions": sum(len(note["questions"]) for note in notes),
        "files": {kind: str(file) for kind, file in made.items()} | {"package": str(package), "database": str(folder.path / "log.db")},
        "seconds": round(seconds, 1),
    }
