"""Receiving: a note, a photo that comes later, a document. Acknowledged only when nothing can take it away again."""

from __future__ import annotations

import json
from datetime import UTC, datetime

from logbook import clock, intake
from logbook.intake import Incoming, Part, PhotoFacts, Receipt
from logbook.mistake import Mistake
from logbook.store import files, journal
from logbook.store.folder import JobFolder, answers, room, writing


@answers
def receive(folder: JobFolder, incoming: Incoming, now: datetime | None = None) -> Receipt | Mistake:
    """Take a note in. The receipt means: every byte is on the disk and the row is committed.

    The same id from the same person with the same digests gives the same receipt again; anything else under
    that id is `store.note-differs`, and what came first stays.
    """
    refused = intake.refuse(incoming) or room(folder)
    if refused:
        return refused
    known = _known(folder.db, incoming.id)
    if known and known["handed_in_by"] != incoming.handed_in_by:
        return _differs(incoming.id)
    laid = _lay_all(folder, incoming)
    if isinstance(laid, Mistake):
        return laid
    sounds, pictures = laid
    text = None if incoming.text is None else intake.text_digest(incoming.text)
    came = intake.digests(tuple(s.sha256 for s in sounds), tuple(p.sha256 for p in pictures), text)
    if known:
        files.drop((*sounds, *pictures))
        return _again(known, incoming, came)
    try:
        files.name(folder, (*sounds, *pictures))
    except OSError:
        files.drop((*sounds, *pictures))
        raise
    now = _in_zone(folder, now)
    with writing(folder) as db:
        known = _known(db, incoming.id)
        if known:
            return _again(known, incoming, came)
        _write_note(folder, incoming, came, now)
        for what, each in (("sound", sounds), ("picture", pictures)):
            for place, laid_part in enumerate(each):
                facts = incoming.photo_facts[place] if what == "picture" and place < len(incoming.photo_facts) else None
                _write_part(db, incoming.id, place, laid_part, incoming.handed_in_by, facts, now)
        if incoming.text is not None:
            db.execute(
                "INSERT INTO words (note, source, text, language, said_by, at, current) VALUES (?, 'typed', ?, ?, ?, ?, 1)",
                [incoming.id, incoming.text, incoming.language, incoming.spoken_by, now.isoformat()],
            )
        journal.write(db, "received", {"note": incoming.id, "by": incoming.handed_in_by}, received(db, incoming.id), now)
    return Receipt(incoming.id, now, came)


def _lay_all(folder: JobFolder, incoming: Incoming) -> tuple[list, list] | Mistake:
    """All parts on the disk, or none."""
    done: dict[str, list] = {"sound": [], "picture": []}
    left = intake.NOTE_BYTES
    for what, field, parts in (("sound", "audio", incoming.audio), ("picture", "photo", incoming.photos)):
        for number, part in enumerate(parts, 1):
            where = f"{field} {number}" + (f" ({intake.shown(part.name)})" if part.name else "")
            laid = files.lay(folder, part, what, where)
            if not isinstance(laid, Mistake):
                done[what].append(laid)
                left -= laid.bytes
                if left < 0:
                    laid = Mistake("intake.too-big", where, {"where": where, "limit": intake.NOTE_BYTES // intake.MB})
            if isinstance(laid, Mistake):
                files.drop((*done["sound"], *done["picture"]))
                return laid
    return done["sound"], done["picture"]


def _known(db, note_id: str) -> dict | None:
    found = db.execute("SELECT handed_in_by, received_at, digests FROM notes WHERE id = ?", [note_id]).fetchone()
    return None if found is None else dict(zip(("handed_in_by", "received_at", "digests"), found))


def _again(known: dict, incoming: Incoming, came: dict) -> Receipt | Mistake:
    if known["handed_in_by"] != incoming.handed_in_by or json.loads(known["digests"]) != came:
        return _differs(incoming.id)
    return Receipt(incoming.id, datetime.fromisoformat(known["received_at"]), came, repeated=True)


def _differs(note_id: str) -> Mistake:
    return Mistake("store.note-differs", "id", {"id": intake.shown(note_id)})


def _in_zone(folder: JobFolder, now: datetime | None) -> datetime:
    """The server's clock, to the second, in the job's zone."""
    now = (now or datetime.now(UTC)).astimezone(folder.job.timezone())
    return now.replace(microsecond=0)


def _write_note(folder: JobFolder, incoming: Incoming, came: dict, now: datetime) -> None:
    spoken_at = incoming.spoken_at.astimezone(folder.job.timezone())
    counted_at = clock.counted_at(spoken_at, incoming.sent_at, now).astimezone(folder.job.timezone())
    row = {
        "id": incoming.id,
        "job": folder.job.id,
        "spoken_by": incoming.spoken_by,
        "handed_in_by": incoming.handed_in_by,
        "as_lead": int(incoming.as_lead),
        "spoken_at": spoken_at.isoformat(),
        "spoken_utc": counted_at.astimezone(UTC).isoformat(),
        "sent_at": incoming.sent_at and incoming.sent_at.astimezone(folder.job.timezone()).isoformat(),
        "received_at": now.isoformat(),
        "day": folder.job.day_of(counted_at).isoformat(),
        "answers": incoming.answers,
        "mark": incoming.mark,
        "kind": incoming.kind,
        "run": incoming.run,
        "language": incoming.language,
        "digests": json.dumps(came),
        "announced": json.dumps(list(incoming.photos_to_come)),
        "state": "waiting",
        "wants": "reading" if incoming.text is not None else "hearing",
    }
    folder.db["notes"].insert(row)


def _write_part(db, note: str, place: int, laid: files.Laid, by: str, facts: PhotoFacts | None, now: datetime) -> None:
    db.execute(
        "INSERT OR IGNORE INTO files (sha256, what, kind, bytes, received_at) VALUES (?, ?, ?, ?, ?)",
        [laid.sha256, laid.what, laid.kind, laid.bytes, now.isoformat()],
    )
    db.execute("UPDATE files SET erased_at = NULL WHERE sha256 = ?", [laid.sha256])  # erased before, handed in once more
    facts = facts or PhotoFacts()
    row = [
        note, laid.what, place, laid.sha256, now.isoformat(), by, facts.taken_at and facts.taken_at.isoformat(),
        facts.latitude, facts.longitude, facts.accuracy_m, None if facts.of is None else json.dumps(facts.of), facts.copy_of,
    ]  # fmt: skip
    db.execute(
        "INSERT INTO parts (note, what, place, sha256, received_at, handed_in_by, taken_at, latitude, longitude, accuracy_m, shows, copy_of) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        row,
    )


def received(db, note_id: str) -> dict:
    """What the journal's `received` digest covers: what was handed in, as it stands in the tables."""
    names = (
        "id", "job", "spoken_by", "handed_in_by", "as_lead", "spoken_at", "sent_at", "received_at", "answers",
        "mark", "kind", "run", "language", "digests", "announced",
    )  # fmt: skip
    found = dict(zip(names, db.execute(f"SELECT {', '.join(names)} FROM notes WHERE id = ?", [note_id]).fetchone()))
    told = json.loads(found["digests"])
    parts = [one for one in parts_told(db, note_id) if one["sha256"] in (*told["audio"], *told["photos"])]
    return found | {"parts": parts}


def parts_told(db, note_id: str) -> list[dict]:
    """What the phone said of each part: when it was taken, where, what it shows. The journal's digests cover it."""
    names = ("what", "place", "sha256", "received_at", "handed_in_by", "taken_at", "latitude", "longitude", "accuracy_m", "shows", "copy_of")
    rows = db.execute(f"SELECT {', '.join(names)} FROM parts WHERE note = ? ORDER BY what, place", [note_id])
    every = [dict(zip(names, row)) for row in rows]
    return [{name: value for name, value in one.items() if name != "copy_of" or value is not None} for one in every]


@answers
def add_photo(
    folder: JobFolder,
    note_id: str,
    sha256: str,
    part: Part,
    by: str,
    facts: PhotoFacts | None = None,
    now: datetime | None = None,
) -> Receipt | Mistake:
    """One photo of a note, come later. The same again changes nothing; other bytes are refused."""
    if not intake.is_digest(sha256):
        return Mistake("intake.digest", "SHA256", {"came": intake.shown(sha256)})
    refused = room(folder)
    if refused:
        return refused
    if _known(folder.db, note_id) is None:
        return Mistake("store.no-note", "ID", {"id": intake.shown(note_id)})
    laid = files.lay(folder, part, "picture", "photo")
    if isinstance(laid, Mistake):
        return laid
    if laid.sha256 != sha256:
        files.drop([laid])
        return Mistake("intake.digest-differs", "SHA256", {"expected": sha256[:16], "came": laid.sha256[:16]})
    files.name(folder, [laid])
    now = _in_zone(folder, now)
    came = intake.digests((), (sha256,), None)
    with writing(folder) as db:
        held = list(db.execute("SELECT sha256, received_at, place FROM parts WHERE note = ? AND what = 'picture'", [note_id]))
        for held_sha256, received_at, _ in held:
            if held_sha256 == sha256:
                return Receipt(note_id, datetime.fromisoformat(received_at), came, repeated=True)
        if len(held) >= intake.PICTURES:
            came = {"sounds": intake.SOUNDS, "pictures": intake.PICTURES, "came": len(held) + 1}
            return Mistake("intake.too-many-parts", "photo", came)
        place = max((place for *_, place in held), default=-1) + 1
        _write_part(db, note_id, place, laid, by, _of_small_copy(db, note_id, sha256) if facts in (None, PhotoFacts()) else facts, now)
        touch(db, note_id)
        ids = {"note": note_id, "by": by}
        content = next(one for one in parts_told(db, note_id) if one["sha256"] == sha256)
        journal.write(db, "photo_received", ids, content | {"note": note_id}, now)
    return Receipt(note_id, now, came)


def _of_small_copy(db, note_id: str, sha256: str) -> PhotoFacts | None:
    """What the phone said of a photo when its small copy came: it holds for the original too."""
    names = ("taken_at", "latitude", "longitude", "accuracy_m", "shows")
    row = db.execute(f"SELECT {', '.join(names)} FROM parts WHERE note = ? AND copy_of = ?", [note_id, sha256]).fetchone()
    if row is None:
        return None
    taken_at, latitude, longitude, accuracy_m, shows = row
    return PhotoFacts(
        taken_at and datetime.fromisoformat(taken_at), latitude, longitude, accuracy_m, None if shows is None else tuple(json.loads(shows))
    )


@answers
def add_document(folder: JobFolder, part: Part, by: str, now: datetime | None = None) -> str | Mistake:
    """Keep a document that a decision speaks of (a letter, a data sheet); its SHA-256."""
    refused = room(folder)
    if refused:
        return refused
    laid = files.lay(folder, part, "document", intake.shown(part.name) or "document")
    if isinstance(laid, Mistake):
        return laid
    files.name(folder, [laid])
    now = _in_zone(folder, now)
    with writing(folder) as db:
        row = [laid.sha256, "document", laid.kind, laid.bytes, now.isoformat()]
        new = db.execute(
            "INSERT OR IGNORE INTO files (sha256, what, kind, bytes, received_at) VALUES (?, ?, ?, ?, ?)", row
        ).rowcount
        if new:
            content = {"document": laid.sha256, "bytes": laid.bytes}
            journal.write(db, "document_received", {"by": by}, content, now)
    return laid.sha256


def touch(db, note_id: str | None = None) -> int:
    """One more change that the pieces have to be reckoned for; `note_id` is the note that changed."""
    db.execute("UPDATE about SET value = CAST(value AS INTEGER) + 1 WHERE key = 'revision'")
    revision = int(db.execute("SELECT value FROM about WHERE key = 'revision'").fetchone()[0])
    if note_id is not None:
        db.execute("UPDATE notes SET revision = ? WHERE id = ?", [revision, note_id])
    return revision
