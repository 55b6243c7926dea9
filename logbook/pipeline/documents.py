"""Notes and pieces as the contract prints them, in the reader's language."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime

from logbook import facts, said, transcript
from logbook.findings import Finding, not_followed
from logbook.findings import to_json as finding_to_json
from logbook.joining import current
from logbook.mistake import Mistake
from logbook.note import Note, Photo
from logbook.piece import Assumed, Decision, Piece, decision_to_json
from logbook.pipeline.book import Book
from logbook.said import Entry, Unread
from logbook.wording import say


@dataclass(frozen=True)
class Fitting:
    """One entry of a note with the piece it joined, as that piece stands now."""

    entry: Entry
    piece: str | None = None
    assumed: tuple[Assumed, ...] = ()
    findings: tuple[Finding, ...] = ()
    of_piece: Mapping[str, str] = field(default_factory=dict)  # kind and mark of the piece, where these words leave them unsaid


@dataclass(frozen=True)
class Answer:
    """Everything `GET /notes/ID` tells. `problem` is printed already; `acts` what people did with the note since."""

    note: Note
    fittings: tuple[Fitting, ...]
    photos: tuple[Photo, ...]
    questions: tuple[tuple[int, str], ...]
    problem: Mapping[str, str] | None
    acts: Mapping[str, object]
    unread: tuple[tuple[Unread, str | None], ...] = ()  # words that nobody understood, each `asked`, `answered` or neither


@dataclass(frozen=True)
class Sheet:
    """Everything `GET /pieces/PIECE` tells."""

    piece: Piece
    findings: tuple[Finding, ...]
    decisions: tuple[Decision, ...]


def answer(note: Note, book: Book, language: str) -> Answer:
    entries = current.entries(note)
    return Answer(
        note,
        tuple(_fitting(note, entry, book) for entry in entries),
        current.photos(note, entries),
        book.questions.get(note.id, ()),
        problem(note.problem, language),
        _acts(note, book),
        () if note.reading is None else tuple((one, _followed(note, one, book)) for one in note.reading.unread),
    )


def _followed(note: Note, one: Unread, book: Book) -> str | None:
    """What became of words that nobody understood: a finding quotes them, or somebody told their matter since."""
    for entry in () if note.as_lead else note.reading.fittings:
        if not any((each.start, each.end) == (one.start, one.end) for each in entry.unread):
            continue
        if any(not_followed.quotes(finding, one.words) for finding in book.findings_of(note.id, entry.position)):
            return "asked"
        piece = book.piece_of(note.id, entry.position)
        if piece is not None and not any((each.note, each.start, each.end) == (note.id, one.start, one.end) for each in piece.unread):
            return "answered"
    return None


def note_document(note: Note, book: Book, language: str) -> dict:
    """`GET /notes/ID`: findings are those of the note's pieces as they stand now."""
    return answer_to_json(answer(note, book, language), language)


def answer_to_json(told: Answer, language: str) -> dict:
    note, read = told.note, told.note.reading
    doc = {
        "id": note.id,
        "job": note.job,
        "spoken_by": note.spoken_by,
        "handed_in_by": note.handed_in_by,
        "spoken_at": note.spoken_at.isoformat(),
        "sent_at": _time(note.sent_at),
        "received_at": note.received_at.isoformat(),
        "state": note.state,
        "problem": None if told.problem is None else dict(told.problem),
        "answers": note.answers,
        "pressed": {"mark": note.pressed.mark, "kind": note.pressed.kind, "run": note.pressed.run},
        "language": None if read is None else read.language,
        "language_from": None if read is None else read.language_from,
        "text": None if read is None else read.text,
        "transcript": transcript.to_json(note.transcript),
        "fittings": [_fitting_to_json(fitting, language) for fitting in told.fittings],
        "shift": None if read is None else said.reading_to_json(read)["shift"],
        "withdraws": None if read is None else said.withdraws_to_json(read.withdraws),
        "questions": [list(question) for question in told.questions],
        "photos": [photo_document(photo) for photo in told.photos],
        "photos_to_come": list(note.photos_to_come),
        "digests": {
            "audio": list(note.audio_digests),
            "photos": [photo.sha256 for photo in note.photos],
            "text": note.text_digest,
        },
        "earlier": [dict(row) for row in note.earlier],
    }
    if note.copies:
        doc["copies"] = [{"sha256": small, "copy_of": original} for small, original in note.copies]
    if read is not None and read.reason is not None:
        doc["reason"] = read.reason
    if told.unread:
        doc["unread"] = [said.unread_to_json(one) | ({} if stands is None else {"stands": stands}) for one, stands in told.unread]
    return doc | dict(told.acts)


def _acts(note: Note, book: Book) -> dict:
    """What people did with the note since; a member that says nothing is left out."""
    doc: dict = {}
    if note.as_lead:
        doc["as_lead"] = True
    if note.counted_at != note.spoken_at:
        doc["counted_at"] = note.counted_at.isoformat()
    if note.corrections:
        doc["corrections"] = [
            {"id": c.id, "position": c.position}
            | ({"name": c.name, "value": None} if c.value is None else _named(c.name, c.value))
            | {"by": c.by, "at": c.at.isoformat()}
            for c in note.corrections
        ]
    if note.confirmed:
        doc["confirmed"] = list(note.confirmed)
    if note.heard_right:
        doc["heard_right"] = True
    if note.withdrawn_at is not None:
        doc["withdrawn_at"] = note.withdrawn_at.isoformat()
    back = book.log.back.get(note.id)
    if back:
        doc["taken_back_by"] = [
            {"note": by, "positions": None if positions is None else list(positions)} for by, positions in back.items()
        ]
    return doc


def _fitting(note: Note, entry: Entry, book: Book) -> Fitting:
    piece = book.piece_of(note.id, entry.position)
    looked_only = note.as_lead and (note.id, entry.position) in book.entries
    found = () if looked_only else book.findings_of(note.id, entry.position)
    if piece is None:
        return Fitting(entry, findings=found)
    own = {fact.name for fact in entry.facts}
    is_a = {fact.name: fact.value for fact in piece.facts if fact.name in ("kind", "mark") and fact.name not in own}
    return Fitting(entry, piece.id, piece.assumed, found, is_a)


def _fitting_to_json(fitting: Fitting, language: str) -> dict:
    return said.entry_to_json(fitting.entry) | {
        "piece": fitting.piece,
        "assumed": [assumed_document(word) for word in fitting.assumed],
        "findings": [finding_to_json(finding, language, log=True) for finding in fitting.findings],
    } | ({"of_piece": dict(fitting.of_piece)} if fitting.of_piece else {})


def piece_document(piece: Piece, book: Book, language: str) -> dict:
    """`GET /pieces/PIECE`: the joined piece, what the rules find, what was decided and looked at."""
    sheet = Sheet(piece, book.findings.get(piece.id, ()), book.decisions.get(piece.id, ()))
    return sheet_to_json(sheet, language)


def sheet_to_json(sheet: Sheet, language: str) -> dict:
    piece = sheet.piece
    doc = {
        "id": piece.id,
        "job": piece.job,
        "run": piece.run,
        "mark": piece.mark,
        "notes": list(piece.notes),
        "facts": [said.fact_to_json(fact) for fact in piece.facts],
        "assumed": [assumed_document(word) for word in piece.assumed],
        "open_items": [said.open_item_to_json(item) for item in piece.open_items],
        "photos": [photo_document(held.photo) | {"note": held.note} for held in piece.photos],
        "findings": [finding_to_json(finding, language, log=True) for finding in sheet.findings],
        "decisions": [decision_to_json(decision) for decision in sheet.decisions],
        "looked": [dict(row) for row in piece.looked],
    }
    return doc | ({"scrapped": True} if piece.scrapped else {})


def check_document(note: Note, book: Book, language: str) -> dict:
    """`logbook check`: the reading with findings, no ids and nothing of the log."""
    read = note.reading
    doc = {"language": read.language, "language_from": read.language_from, "text": read.text}
    if note.transcript is not None:
        doc["transcript"] = transcript.to_json(note.transcript)
    fittings = []
    for entry in current.entries(note):
        piece = book.piece_of(note.id, entry.position)
        found = book.findings_of(note.id, entry.position)
        words = [] if piece is None else [assumed_document(word) | {"note": None} for word in piece.assumed]
        judged = [finding_to_json(f, language) | {"piece": None} for f in found]
        for one in judged:
            one.pop("stands", None)
        fittings.append(said.entry_to_json(entry) | {"assumed": words, "findings": judged})
    rest = said.reading_to_json(read)
    doc |= {
        "questions": [list(question) for question in book.questions.get(note.id, ())],
        "fittings": fittings,
        "shift": rest["shift"],
        "withdraws": rest["withdraws"],
    }
    return doc | {name: rest[name] for name in ("reason", "unread") if name in rest}


def photo_document(photo: Photo) -> dict:
    place = photo.place
    return {
        "sha256": photo.sha256,
        "taken_at": _time(photo.taken_at),
        "taken_from": photo.taken_from,
        "place": None
        if place is None
        else {"latitude": place.latitude, "longitude": place.longitude, "accuracy_m": place.accuracy_m},
        "place_from": photo.place_from,
        "tags": list(photo.tags),
        "of": None if photo.of is None else list(photo.of),
        "of_from": photo.of_from,
        "readable": photo.readable,
    } | ({} if photo.copy_of is None else {"copy_of": photo.copy_of})


def assumed_document(word: Assumed) -> dict:
    return _named(word.name, word.value) | {"via": word.via, "note": word.note}


def problem(mistake: Mistake | None, language: str) -> dict | None:
    if mistake is None:
        return None
    values: Mapping[str, object] = mistake.values
    return {"why": say(f"{mistake.key}.error", language, **values), "cure": say(f"{mistake.key}.cure", language, **values)}


def _named(name: str, value: object) -> dict:
    exact = facts.exact_to_json(name, value)
    return {"name": name, "value": facts.to_json(name, value)} | ({} if exact is None else {"exact": exact})


def _time(at: datetime | None) -> str | None:
    return None if at is None else at.isoformat()
