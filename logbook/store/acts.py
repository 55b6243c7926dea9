"""Acts: what people do about a note, a piece or a day. An act is a row that is added; it never changes another.

An act carries an id that the phone made, so that it can be sent again: the same id with the same content answers
the same and changes nothing.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, date, datetime

from logbook import facts, intake
from logbook.joining.values import read_value
from logbook.mistake import Mistake
from logbook.note import step
from logbook.store import books, journal
from logbook.store.folder import JobFolder, answers, room, writing
from logbook.store.receiving import touch


@dataclass(frozen=True)
class Act:
    """An act that stands in the log. `document` is the JSON to answer."""

    id: str
    act: str
    by: str
    at: datetime
    document: Mapping[str, object]
    repeated: bool = False


def _do(folder, id, act, by, at, content, *, note=None, piece=None, day=None, check=None, then=None) -> Act | Mistake:
    """One act in one transaction: is it known? may it be (`check`)? write it, its journal row, and what follows."""
    with writing(folder) as db:
        return _keep(folder, db, id, act, by, at, content, note=note, piece=piece, day=day, check=check, then=then)


def _keep(folder, db, id, act, by, at, content, *, note=None, piece=None, day=None, check=None, then=None) -> Act | Mistake:
    """The same inside an open transaction: several acts are kept together or not at all."""
    if not intake.is_id(id):
        return Mistake("intake.id", "id", {"came": intake.shown(id)})
    refused = room(folder)
    if refused:
        return refused
    now = datetime.now(UTC)
    at = (at or now).astimezone(folder.job.timezone()).replace(microsecond=0)
    known = db.execute("SELECT act, note, piece, day, done_by, at, content FROM acts WHERE id = ?", [id]).fetchone()
    if known:
        same = known[:5] == (act, note, piece, day, by) and json.loads(known[6]) == content
        if not same:
            return Mistake("store.act-differs", "id", {"id": id})
        return _told(id, act, by, datetime.fromisoformat(known[5]), content, note, piece, day, repeated=True)
    refused = check(db) if check else None
    if refused:
        return refused
    row = [id, act, note, piece, day, by, at.isoformat(), json.dumps(content)]
    db.execute("INSERT INTO acts (id, act, note, piece, day, done_by, at, content) VALUES (?, ?, ?, ?, ?, ?, ?, ?)", row)
    if then:
        then(db, at)
    if note is not None or piece is not None:
        touch(db, note)
    about = {name: value for name, value in (("note", note), ("piece", piece), ("day", day)) if value is not None}
    journal.write(db, act, {"act": id, "by": by} | about, digested(act, about, by, at.isoformat(), content), now)
    return _told(id, act, by, at, content, note, piece, day)


def digested(act: str, about: Mapping, by: str, at: str, content: object) -> dict:
    """What the journal's digest of an act covers."""
    return {"act": act, "about": dict(about), "by": by, "at": at, "content": content}


def _told(id, act, by, at, content, note, piece, day, repeated=False) -> Act:
    about = {name: value for name, value in (("note", note), ("piece", piece), ("day", day)) if value is not None}
    return Act(id, act, by, at, {"id": id} | about | content | {"by": by, "at": at.isoformat()}, repeated)


def _note(db, note_id: str, *names: str) -> tuple | None:
    return db.execute(f"SELECT {', '.join(names)} FROM notes WHERE id = ?", [note_id]).fetchone()


def _there(note_id: str, *, standing: bool = True):
    """The note is in the log and, where it matters, was not taken back."""

    def check(db) -> Mistake | None:
        found = _note(db, note_id, "withdrawn_at")
        if found is None:
            return Mistake("store.no-note", "ID", {"id": intake.shown(note_id)})
        if standing and found[0] is not None:
            return Mistake("store.taken-back", "ID", {"at": found[0]})
        return None

    return check


@answers
def correct(
    folder: JobFolder, id: str, note_id: str, position: int, name: str, value: object, by: str, at: datetime | None = None
) -> Act | Mistake:
    """A fact of one entry set right by a press; what was heard stays beside it. None: "I did not say that"."""
    exact = value if value is None and name in facts.BY_NAME else read_value(name, value)
    if isinstance(exact, Mistake):
        return exact

    def check(db) -> Mistake | None:
        refused = _there(note_id)(db)
        if refused:
            return refused
        found = db.execute("SELECT reading FROM readings WHERE note = ? AND current = 1", [note_id]).fetchone()
        entries = len(json.loads(found[0])["fittings"]) if found else 0
        if type(position) is not int or not 0 <= position < max(entries, 1):
            return Mistake("store.no-entry", "position", {"came": intake.shown(position), "entries": entries})
        return None

    content = {"position": position, "name": name, "value": None if exact is None else facts.to_json(name, exact)}
    beside = None if exact is None else facts.exact_to_json(name, exact)
    content |= {} if beside is None else {"exact": beside}
    return _do(folder, id, "corrected", by, at, content, note=note_id, check=check)


@answers
def confirm(
    folder: JobFolder, id: str, note_id: str, by: str, at: datetime | None = None, text: str | None = None
) -> Act | Mistake:
    """"That is right": confirms what was heard and nothing else. `text` are the words that he saw: only these are confirmed."""
    content = {} if text is None else {"words": intake.text_digest(text)}
    return _do(folder, id, "confirmed", by, at, content, note=note_id, check=_there(note_id))


@answers
def withdraw(folder: JobFolder, id: str, note_id: str, by: str, at: datetime | None = None) -> Act | Mistake:
    """Take a note back: it stays in the log, its entries leave the pieces."""

    def then(db, at: datetime) -> None:
        db.execute("UPDATE notes SET withdrawn_at = ? WHERE id = ?", [at.isoformat(), note_id])

    return _do(folder, id, "taken_back", by, at, {}, note=note_id, check=_there(note_id), then=then)


@answers
def type_words(
    folder: JobFolder, id: str, note_id: str, text: str, by: str, language: str | None = None, at: datetime | None = None
) -> Act | Mistake:
    """Words typed for a note that could not be heard, or was not heard yet; the sound stays."""
    if not isinstance(text, str) or not text.strip():
        return Mistake("intake.nothing", "text")
    if len(text) > intake.TEXT_SIGNS:
        return Mistake("intake.text-too-long", "text", {"limit": intake.TEXT_SIGNS, "came": len(text)})
    if language is not None and language not in intake.LANGUAGES:
        return Mistake("intake.language", "language", {"came": intake.shown(language)})

    def check(db) -> Mistake | None:
        refused = _there(note_id)(db)
        if refused:
            return refused
        (state,) = _note(db, note_id, "state")
        if step(state, "type") is None:
            key = "store.busy-note" if state == "hearing" else "store.not-unheard"
            return Mistake(key, "ID", {"state": state})
        return None

    def then(db, at: datetime) -> None:
        db.execute("UPDATE words SET current = 0 WHERE note = ?", [note_id])
        row = [note_id, text, language, by, at.isoformat()]
        db.execute(
            "INSERT INTO words (note, source, text, language, said_by, at, current) VALUES (?, 'typed', ?, ?, ?, ?, 1)", row
        )
        db.execute("UPDATE notes SET state = 'waiting', wants = 'reading', problem = NULL WHERE id = ?", [note_id])

    content = {"text_digest": intake.text_digest(text), "language": language}
    return _do(folder, id, "typed", by, at, content, note=note_id, check=check, then=then)


@answers
def hear_again(folder: JobFolder, id: str, note_id: str, by: str, at: datetime | None = None) -> Act | Mistake:
    """Ask for a new hearing; the words there are stay current until the new ones are."""

    def check(db) -> Mistake | None:
        refused = _there(note_id)(db)
        if refused:
            return refused
        (state,) = _note(db, note_id, "state")
        if step(state, "hear_again") is None:
            return Mistake("store.busy-note", "ID", {"state": state})
        if not db.execute("SELECT 1 FROM parts p JOIN files f ON f.sha256 = p.sha256 WHERE p.note = ? AND p.what = 'sound' AND f.erased_at IS NULL", [note_id]).fetchone():
            return Mistake("store.no-sound-kept", "ID", {"id": note_id})
        return None

    def then(db, at: datetime) -> None:
        db.execute(
            "UPDATE notes SET state = 'waiting', wants = 'hearing', tries = 0, problem = NULL WHERE id = ?", [note_id]
        )

    return _do(folder, id, "hearing_asked", by, at, {}, note=note_id, check=check, then=then)


@answers
def sign(
    folder: JobFolder,
    id: str,
    day: date,
    by: str,
    role: str,
    words: str = "",
    report: str | None = None,
    at: datetime | None = None,
) -> Act | Mistake:
    """A day's signature: who, in which role, over which report (its SHA-256). The day keeps the rule book it stands under."""
    if report is not None and not intake.is_digest(report):
        return Mistake("intake.digest", "report", {"came": intake.shown(report)})
    if len(words) > intake.TEXT_SIGNS:
        return Mistake("intake.text-too-long", "words", {"limit": intake.TEXT_SIGNS, "came": len(words)})
    content = {"role": role, "words": words, "report": report}
    keep = lambda db, moment: books.keep(db, folder, day.isoformat(), moment.isoformat())  # noqa: E731
    return _do(folder, id, "signed", by, at, content, day=day.isoformat(), then=keep)


def acts_of(db, column: str, value: str, *wanted: str) -> list[dict]:
    """The acts about a note, a piece or a day, in order, as documents."""
    found = db.execute(
        f"SELECT id, act, note, piece, day, done_by, at, content FROM acts WHERE {column} = ? ORDER BY seq", [value]
    )
    return [act_document(row) for row in found if not wanted or row[1] in wanted]


def act_document(row) -> dict:
    id, act, note, piece, day, by, at, content = row
    about = {name: value for name, value in (("note", note), ("piece", piece), ("day", day)) if value is not None}
    return {"id": id, "act": act} | about | json.loads(content) | {"by": by, "at": at}


def corrections_of(folder: JobFolder, note_id: str) -> list[dict]:
    return acts_of(folder.db, "note", note_id, "corrected")


def confirmations_of(folder: JobFolder, note_id: str) -> list[dict]:
    return acts_of(folder.db, "note", note_id, "confirmed")


def signatures_of(folder: JobFolder, day: date) -> list[dict]:
    return acts_of(folder.db, "day", day.isoformat(), "signed")
