"""The pieces and findings in the log, brought up to what was said and done since they were last reckoned.

Reckoning happens outside a transaction, by one process at a time (a lock on `derived/`); its result is written in
one. A process keeps the book it reckoned last and goes on from it as long as nobody else wrote meanwhile; else it
starts from the rows, and pieces keep their ids because every id an entry ever had is a row of its own.
"""

from __future__ import annotations

import fcntl
import os
import secrets
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime

from logbook import pipeline
from logbook.facts import bare_mark
from logbook.job import Job
from logbook.joining import current
from logbook.piece import decision_from_json
from logbook.pipeline import Book
from logbook.rules import book_digest
from logbook.store import books, journal, search
from logbook.store.acts import act_document
from logbook.store.folder import JobFolder, writing
from logbook.store.records import notes, packed


@dataclass
class Reckoner:
    """One per process and job folder: the book as of `revision`, and the token it was written under."""

    book: Book | None = None
    revision: int = 0
    acts: int = 0
    token: str = ""
    digested: tuple[Job, str] | None = None  # the job last asked for, and the digest of the book under it
    lock: threading.Lock = field(default_factory=threading.Lock)


def catch_up(folder: JobFolder, reckoner: Reckoner, now: datetime | None = None, *, again: bool = False) -> bool:
    """Reckon what changed and write it. False: nothing had changed. `again`: time passed, look at what waits for photos."""
    now = (now or datetime.now(UTC)).astimezone(folder.job.timezone())
    with reckoner.lock, _alone(folder):
        revision, reckoned, token, judged_by = _about(folder)
        known = reckoner.book is not None and reckoner.token == token
        if revision == reckoned and not again and reckoned and _same_book(folder, reckoner, known, judged_by):
            return False
        if not known:
            reckoner.book, reckoner.revision, reckoner.acts = None, -1, 0
        fresh = list(notes(folder, "n.revision > ? AND n.answered_at IS NOT NULL", [reckoner.revision]))
        decided, last = _decisions(folder, reckoner.acts)
        book = pipeline.reckon(
            fresh, decided, folder.job, now, reckoner.book, ids=None if reckoner.book is not None else _ids(folder),
            judged_by=books.of_pieces(folder),
        )
        reckoner.token = secrets.token_hex(8)
        _write(folder, book, revision, reckoner.token, now, last, _digest(reckoner, book.job))
        reckoner.book, reckoner.revision, reckoner.acts = book, revision, last
    return True


def _same_book(folder: JobFolder, reckoner: Reckoner, known: bool, judged_by: str | None) -> bool:
    """Whether the job file says what it said when the log was judged, by this process or by one before it."""
    if known:
        return reckoner.book.job == folder.job
    return judged_by is None or _digest(reckoner, folder.job) == judged_by


def _digest(reckoner: Reckoner, job: Job) -> str:
    if reckoner.digested is None or reckoner.digested[0] is not job:
        reckoner.digested = (job, book_digest(job))
    return reckoner.digested[1]


@contextmanager
def _alone(folder: JobFolder) -> Iterator[None]:
    handle = os.open(folder.path / "derived", os.O_RDONLY | os.O_DIRECTORY)
    try:
        fcntl.flock(handle, fcntl.LOCK_EX)
        yield
    finally:
        os.close(handle)


def _about(folder: JobFolder) -> tuple[int, int, str, str | None]:
    about = dict(folder.db.execute("SELECT key, value FROM about"))
    return int(about["revision"]), int(about["reckoned"]), about.get("reckoner", ""), about.get("book")


def _decisions(folder: JobFolder, after: int):
    found = list(
        folder.db.execute(
            "SELECT seq, id, act, note, piece, day, done_by, at, content FROM acts WHERE act = 'decided' AND seq > ? ORDER BY seq", [after]
        )
    )
    return [decision_from_json(act_document(row[1:])) for row in found], (found[-1][0] if found else after)


def _ids(folder: JobFolder) -> dict[tuple[str, int], tuple[str, ...]]:
    ids: dict[tuple[str, int], tuple[str, ...]] = {}
    for note, position, piece in folder.db.execute("SELECT note, position, piece FROM entries ORDER BY rowid"):
        ids[note, position] = (*ids.get((note, position), ()), piece)
    return ids


def _write(folder: JobFolder, book: Book, revision: int, token: str, now: datetime, acts: int, digest: str) -> None:
    at = now.isoformat(timespec="seconds")
    touched = set(book.changed_notes)
    for piece_id in book.changed:
        if piece_id in book.pieces:
            touched.update(book.pieces[piece_id].notes)
    touched &= set(book.notes)
    with writing(folder) as db:
        for piece_id in sorted(book.changed):
            _piece(db, book, piece_id, at)
        for note_id in sorted(touched):
            _entries(db, book, note_id)
            _note(db, book, note_id)
        for key, value in (("reckoned", str(revision)), ("reckoned_acts", str(acts)), ("reckoner", token), ("book", digest)):
            db.execute("INSERT INTO about VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET value = excluded.value", [key, value])
        if book.changed:
            told = {one: [f.edition for f in book.findings.get(one, ())] for one in sorted(book.changed)}
            journal.write(db, "judged", {"pieces": sorted(book.changed)}, told, now)


def _piece(db, book: Book, piece_id: str, at: str) -> None:
    piece = book.pieces.get(piece_id)
    if piece is None:
        db.execute("UPDATE pieces SET gone = 1 WHERE id = ?", [piece_id])
        db.execute("UPDATE findings SET current = 0 WHERE piece = ?", [piece_id])
        search.drop_piece(db, piece_id)
        return
    found = book.findings[piece_id]
    plan = book.job.revision(None)
    search.keep_piece(db, piece, found, plan.row(piece.mark, piece.run) if plan and piece.mark else None)
    whole = {"piece": piece, "findings": found, "decisions": book.decisions.get(piece_id, ())}
    flagged = sum(one.shows == "flag" for one in found)
    standing = sum(one.stands in ("open", "in hand") for one in found)
    row = [
        piece_id, piece.run, piece.mark, None if piece.mark is None else bare_mark(piece.mark), piece.value("kind"),
        flagged, standing, at, packed(whole),
    ]  # fmt: skip
    db.execute(
        "INSERT INTO pieces (id, run, mark, bare_mark, kind, flagged, stands_open, since, document) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) "
        "ON CONFLICT (id) DO UPDATE SET run = excluded.run, mark = excluded.mark, bare_mark = excluded.bare_mark, kind = excluded.kind, "
        "flagged = excluded.flagged, stands_open = excluded.stands_open, document = excluded.document, gone = 0",
        row,
    )
    before = {
        rule: (number, *rest)
        for number, rule, *rest in db.execute(
            "SELECT id, rule, verdict, shows, stands, edition FROM findings WHERE piece = ? AND current = 1", [piece_id]
        )
    }
    for place, one in enumerate(found):
        held = before.pop(one.rule, None)
        if held is not None and held[1:] == (one.verdict, one.shows, one.stands, one.edition):
            continue
        if held is not None:
            db.execute("UPDATE findings SET current = 0 WHERE id = ?", [held[0]])
        db.execute(
            "INSERT INTO findings (piece, rule, place, verdict, weight, shows, stands, edition, document, at, current) "
            "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 1)",
            [piece_id, one.rule, place, one.verdict, one.weight, one.shows, one.stands, one.edition, packed(one), at],
        )
    for number, *_ in before.values():
        db.execute("UPDATE findings SET current = 0 WHERE id = ?", [number])


def _entries(db, book: Book, note_id: str) -> None:
    db.execute("UPDATE entries SET current = 0 WHERE note = ?", [note_id])
    for key in _keys(book, note_id):
        for piece in book.ids.get(key, ()):
            if db.execute("SELECT 1 FROM pieces WHERE id = ?", [piece]).fetchone():
                db.execute("INSERT OR IGNORE INTO entries (note, position, piece, current) VALUES (?, ?, ?, 0)", [*key, piece])
        if key in book.entries:
            db.execute("UPDATE entries SET current = 1 WHERE note = ? AND position = ? AND piece = ?", [*key, book.entries[key]])


def _keys(book: Book, note_id: str) -> list[tuple[str, int]]:
    return [(note_id, entry.position) for entry in current.entries(book.notes[note_id])]


def _note(db, book: Book, note_id: str) -> None:
    note = book.notes[note_id]
    keys = _keys(book, note_id)
    held = [key for key in keys if key in book.entries]
    asked = {str(key[1]): {"piece": book.asked[key][0], "findings": book.asked[key][1]} for key in keys if key in book.asked}
    found = [f for key in held for f in book.findings[book.entries[key]]] + [f for one in asked.values() for f in one["findings"]]
    back = book.log.back.get(note_id) or {}
    told = {"questions": book.questions.get(note_id, ()), "asked": asked, "back": dict(back)}
    db.execute(
        "INSERT INTO questions VALUES (?, ?) ON CONFLICT (note) DO UPDATE SET document = excluded.document", [note_id, packed(told)]
    )
    flagged = int(any(one.shows == "flag" for one in found)) if note.withdrawn_at is None else 0
    db.execute("UPDATE notes SET flagged = ? WHERE id = ?", [flagged, note_id])

