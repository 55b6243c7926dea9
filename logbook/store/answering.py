"""What a worker found out about a note goes into the log: only for the attempt that is current, all of it at once."""

from __future__ import annotations

import json
from datetime import datetime

from logbook import said, transcript
from logbook.intake import text_digest
from logbook.lease import Hold
from logbook.mistake import Mistake
from logbook.said import Reading
from logbook.store import files, journal
from logbook.store.folder import JobFolder, writing
from logbook.store.receiving import touch
from logbook.store.records import packed
from logbook.transcript import Transcript

READER = "1"  # rises when a new reader reads old words anew


def heard(
    folder: JobFolder, hold: Hold, words: Transcript, reading: Reading, now: datetime, *, doubtful: bool = False
) -> bool:
    """A hearing and its reading; a doubtful one is to be heard again when there is time.

    False: this attempt is no longer current, and nothing was written.
    """
    with writing(folder) as db:
        if not _ends(db, hold, "answered", None, now):
            return False
        number, told = _hearing(db, hold.note, words, now)
        _reading(db, hold.note, number, reading, now)
        db.execute("DELETE FROM second_hearings WHERE note = ?", [hold.note])
        if doubtful:
            db.execute("INSERT INTO second_hearings (note, words) VALUES (?, ?)", [hold.note, number])
        journal.write(db, "heard", {"note": hold.note, "attempt": hold.attempt}, told, now)
    return True


def heard_again(
    folder: JobFolder, note_id: str, first: int, words: Transcript | None, reading: Reading | None, now: datetime
) -> bool:
    """A second hearing of the words numbered `first`: with a reading it takes their place, without one it lies beside them.

    The words stay where somebody typed, pressed, confirmed or took back anything meanwhile. True: they were replaced.
    """
    with writing(folder) as db:
        untouched = db.execute(
            "SELECT 1 FROM words w JOIN notes n ON n.id = w.note WHERE w.id = ? AND w.current = 1 AND n.state = 'answered' "
            "AND n.withdrawn_at IS NULL AND NOT EXISTS (SELECT 1 FROM acts a WHERE a.note = n.id)", [first],
        ).fetchone()
        replaces = bool(untouched) and reading is not None
        kept = "second" if replaces else "first"
        db.execute("UPDATE second_hearings SET ended_at = ?, kept = ? WHERE note = ?", [now.isoformat(), kept, note_id])
        if words is not None and words.text:
            number, told = _hearing(db, note_id, words, now, current=replaces)
            if replaces:
                _reading(db, note_id, number, reading, now)
                touch(db, note_id)
            journal.write(db, "heard", {"note": note_id, "kept": kept}, told, now)
    return replaces


def _hearing(db, note_id: str, words: Transcript, now: datetime, *, current: bool = True) -> tuple[int, dict]:
    """A row of heard words, and what the journal digests of it."""
    document = json.dumps(transcript.to_json(words), ensure_ascii=False)
    if current:
        db.execute("UPDATE words SET current = 0 WHERE note = ?", [note_id])
    row = [note_id, words.text, document, words.language, now.isoformat(), int(current)]
    number = db.execute(
        "INSERT INTO words (note, source, text, transcript, language, at, current) VALUES (?, 'heard', ?, ?, ?, ?, ?)", row
    ).lastrowid
    return number, heard_told(words.text, document)


def heard_told(text: str, document: str) -> dict:
    """What the journal's digest of a hearing covers: the words, and the document with their seconds and doubts."""
    return {"text": text, "transcript": text_digest(document)}


def unheard(folder: JobFolder, hold: Hold, problem: Mistake, now: datetime, words: Transcript | None = None) -> bool:
    """No words could be heard; the bytes stay and the problem says what to do. Words of an earlier hearing stay current."""
    with writing(folder) as db:
        had = db.execute("SELECT 1 FROM readings WHERE note = ? AND current = 1", [hold.note]).fetchone()
        if not _ends(db, hold, "answered" if had else "unheard", None if had else problem, now):
            return False
        if words is not None:
            row = [hold.note, json.dumps(transcript.to_json(words), ensure_ascii=False), words.language, now.isoformat()]
            db.execute(
                "INSERT INTO words (note, source, text, transcript, language, at, current) VALUES (?, 'heard', '', ?, ?, ?, 0)", row
            )
        journal.write(db, "unheard", {"note": hold.note, "attempt": hold.attempt}, {"problem": problem.key}, now)
    return True


def gave_up(folder: JobFolder, note_id: str, problem: Mistake, now: datetime) -> None:
    """Too many attempts ended without a result: the note waits for a person, its bytes are kept."""
    with writing(folder) as db:
        found = db.execute("SELECT state FROM notes WHERE id = ?", [note_id]).fetchone()
        if found and found[0] == "waiting":
            db.execute("UPDATE notes SET state = 'unheard', wants = NULL, problem = ? WHERE id = ?", [packed(problem), note_id])
            touch(db, note_id)
            journal.write(db, "unheard", {"note": note_id}, {"problem": problem.key}, now)


def read_typed(folder: JobFolder, note_id: str, words: int, reading: Reading, now: datetime) -> bool:
    """The reading of typed words. False: other words became current meanwhile."""
    with writing(folder) as db:
        found = db.execute(
            "SELECT 1 FROM words w JOIN notes n ON n.id = w.note WHERE w.id = ? AND w.current = 1 AND n.state = 'waiting' "
            "AND n.wants = 'reading'", [words]
        ).fetchone()
        if not found:
            return False
        db.execute(
            "UPDATE notes SET state = 'answered', wants = NULL, problem = NULL, answered_at = coalesce(answered_at, ?) WHERE id = ?",
            [now.isoformat(), note_id],
        )
        _reading(db, note_id, words, reading, now)
        touch(db, note_id)
        journal.write(db, "read", {"note": note_id}, {"text": reading.text}, now)
    return True


def seen(folder: JobFolder, sha256: str, found: tuple[dict, bytes] | Mistake, now: datetime) -> None:
    """What decoding saw in a picture, and its small copy; a picture nobody can decode is kept and told."""
    if isinstance(found, Mistake):
        row = [sha256, 0, "{}", packed(found), now.isoformat()]
    else:
        numbers, small = found
        files.keep_derived(files.thumbnail_place(folder, sha256), small)
        row = [sha256, 1, json.dumps(numbers), None, now.isoformat()]
    with writing(folder) as db:
        db.execute("INSERT OR IGNORE INTO pictures VALUES (?, ?, ?, ?, ?)", row)
        for (note,) in list(db.execute("SELECT DISTINCT note FROM parts WHERE sha256 = ?", [sha256])):
            touch(db, note)


def _ends(db, hold: Hold, state: str, problem: Mistake | None, now: datetime) -> bool:
    """End a hold with its result; the fence: nothing happens where another attempt is current."""
    told = None if problem is None else packed(problem)
    ended = db.execute(
        "UPDATE notes SET state = ?, wants = NULL, problem = ?, held_by = NULL, held_until = NULL, "
        "answered_at = CASE WHEN ? = 'answered' THEN coalesce(answered_at, ?) ELSE answered_at END "
        "WHERE id = ? AND attempt = ? AND state = 'hearing'",
        [state, told, state, now.isoformat(), hold.note, hold.attempt],
    ).rowcount
    if ended:
        touch(db, hold.note)
    return bool(ended)


def _reading(db, note_id: str, words: int, reading: Reading, now: datetime) -> None:
    db.execute("UPDATE readings SET current = 0 WHERE note = ?", [note_id])
    document = json.dumps(said.reading_to_json(reading), ensure_ascii=False)
    db.execute(
        "INSERT INTO readings (note, words, reader, reading, at, current) VALUES (?, ?, ?, ?, ?, 1)",
        [note_id, words, READER, document, now.isoformat()],
    )
