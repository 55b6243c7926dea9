"""Rows become frozen records and back.

Transcripts and readings stand in the log in the JSON of the contract. Pieces and findings, which can be reckoned
again from them, are packed as they are: a record by its name and the members that differ from their defaults.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import MISSING, fields, is_dataclass
from datetime import date, datetime
from fractions import Fraction
from functools import cache
from types import MappingProxyType

from logbook import facts, said, transcript
from logbook.findings import Finding, Lean, Source, Told, Word
from logbook.intake import text_digest
from logbook.mistake import Mistake
from logbook.note import Correction, Note, Photo, Place, Pressed
from logbook.piece import Assumed, Decision, Found, Looked, Piece, PiecePhoto
from logbook.said import Reading
from logbook.store.folder import JobFolder

RECORDS = {
    kind.__name__: kind
    for kind in (
        Finding, Lean, Word, Told, Source, Mistake, Photo, Place, Assumed, Piece, PiecePhoto, Found, Decision, Looked, said.Fact, said.OpenItem, said.Muffled, said.Unread, said.Span,
        said.Earlier, facts.Move,
    )
}  # fmt: skip
IS = "is a"  # the member that names a record or an exact value


def pack(value: object) -> object:
    """A record as JSON, so that `unpack` gives an equal one. Sequences come back as tuples."""
    if is_dataclass(value):
        kind = type(value).__name__
        if kind not in RECORDS:
            raise TypeError(f"{kind} is not kept in the log")
        return {IS: kind} | {
            each.name: pack(part) for each in fields(value) if not _default(each, part := getattr(value, each.name))
        }
    match value:
        case Fraction():
            return {IS: "Fraction", "value": str(value)}
        case datetime():
            return {IS: "datetime", "value": value.isoformat()}
        case date():
            return {IS: "date", "value": value.isoformat()}
        case Mapping():
            return {str(key): pack(one) for key, one in value.items()}
        case tuple() | list() | set() | frozenset():
            return [pack(one) for one in value]
        case str() | int() | float() | bool() | None:
            return value
    raise TypeError(f"{type(value).__name__} is not kept in the log")


def _default(each, part: object) -> bool:
    if each.default is not MISSING:
        return part == each.default and type(part) is type(each.default)
    return each.default_factory is not MISSING and part == each.default_factory()


@cache
def _named(record: type) -> frozenset[str]:
    return frozenset(each.name for each in fields(record))


def unpack(doc: object) -> object:
    """What `pack` packed. Every page reads what is kept through here."""
    if isinstance(doc, list):
        return tuple([unpack(one) if isinstance(one, list | dict) else one for one in doc])
    if not isinstance(doc, dict):
        return doc
    match doc.get(IS):
        case None:
            return MappingProxyType({key: unpack(one) if isinstance(one, list | dict) else one for key, one in doc.items()})
        case "Fraction":
            return Fraction(doc["value"])
        case "datetime":
            return datetime.fromisoformat(doc["value"])
        case "date":
            return date.fromisoformat(doc["value"])
        case kind:
            record = RECORDS[kind]
            known = _named(record)
            return record(**{key: unpack(one) if isinstance(one, list | dict) else one for key, one in doc.items() if key in known})


def packed(value: object) -> str:
    return json.dumps(pack(value), ensure_ascii=False, separators=(",", ":"))


def unpacked(text: str) -> object:
    return unpack(json.loads(text))


# --- notes

_NOTE = (
    "id", "job", "spoken_by", "handed_in_by", "as_lead", "spoken_at", "sent_at", "received_at", "state", "problem",
    "answers", "mark", "kind", "run", "language", "digests", "announced", "answered_at", "withdrawn_at",
)  # fmt: skip


def note(folder: JobFolder, note_id: str, *, earlier: bool = False) -> Note | None:
    """One note as it stands; `earlier` reads its replaced hearings too."""
    return next(notes(folder, "n.id = ?", [note_id], earlier=earlier), None)


def notes(folder: JobFolder, where: str, values: Iterable = (), *, earlier: bool = False) -> Iterator[Note]:
    """The notes that fit, in order of receipt. `where` speaks of `notes n`."""
    db, values, zone = folder.db, list(values), folder.job.timezone()
    found = list(db.execute(f"SELECT {', '.join('n.' + name for name in _NOTE)} FROM notes n WHERE {where} ORDER BY n.seq", values))
    inner = f"SELECT n.id FROM notes n WHERE {where}"
    said_now, before = _readings(db, inner, values, earlier)
    pictures = _pictures(db, inner, values, zone)
    acts = _acts(db, inner, values)
    for row in found:
        doc = dict(zip(_NOTE, row))
        heard, reading = said_now.get(doc["id"], (None, None))
        photos = pictures.get(doc["id"], ())
        here = {photo.sha256 for photo in photos}
        copies = tuple((photo.sha256, photo.copy_of) for photo in photos if photo.copy_of in here)
        photos = [photo for photo in photos if photo.copy_of not in here]
        digests = json.loads(doc["digests"])
        yield Note(
            id=doc["id"],
            job=doc["job"],
            spoken_by=doc["spoken_by"],
            handed_in_by=doc["handed_in_by"],
            spoken_at=_moment(doc["spoken_at"], zone),
            sent_at=_moment(doc["sent_at"], zone),
            received_at=_moment(doc["received_at"], zone),
            state=doc["state"],
            problem=None if doc["problem"] is None else unpacked(doc["problem"]),
            answers=doc["answers"],
            pressed=Pressed(doc["mark"], doc["kind"], doc["run"]),
            language=doc["language"],
            transcript=heard,
            reading=reading,
            photos=tuple(photos),
            photos_to_come=tuple(one for one in json.loads(doc["announced"]) if one not in here),
            copies=copies,
            audio_digests=tuple(digests["audio"]),
            text_digest=digests["text"],
            corrections=tuple(_correction(act, zone) for act in acts.get(doc["id"], ()) if act[1] == "corrected"),
            confirmed=tuple(act[0] for act in acts.get(doc["id"], ()) if act[1] == "confirmed"),
            heard_right=_heard_right(doc, reading, acts.get(doc["id"], ())),
            withdrawn_at=_moment(doc["withdrawn_at"], zone),
            earlier=tuple(before.get(doc["id"], ())),
            as_lead=bool(doc["as_lead"]),
            answered_at=_moment(doc["answered_at"], zone),
        )


def _moment(text: str | None, zone) -> datetime | None:
    """A time in the job's zone; one without an offset (a camera's) is read as the job's own."""
    if text is None:
        return None
    read = datetime.fromisoformat(text)
    return read.replace(tzinfo=zone) if read.tzinfo is None else read.astimezone(zone)


def _readings(db, inner: str, values: list, earlier: bool) -> tuple[dict, dict]:
    """Note -> (transcript, reading) that are current; note -> the replaced ones as documents, oldest first."""
    now, before = {}, {}
    only = "" if earlier else "AND r.current = 1"
    found = db.execute(
        f"SELECT r.note, r.current, r.reading, r.at, w.transcript FROM readings r JOIN words w ON w.id = r.words "
        f"WHERE r.note IN ({inner}) {only} ORDER BY r.id",
        values,
    )
    for note_id, current, reading, at, heard in found:
        if reading == '"erased"':
            continue
        reading, heard = json.loads(reading), None if heard is None else json.loads(heard)
        if current:
            now[note_id] = transcript.from_json(heard), said.reading_from_json(reading)
        else:
            old = {"transcript": heard, "text": reading["text"], "fittings": reading["fittings"], "at": at}
            before.setdefault(note_id, []).append(old)
    return now, before


def _pictures(db, inner: str, values: list, zone) -> dict[str, list[Photo]]:
    photos: dict[str, list[Photo]] = {}
    found = db.execute(
        f"SELECT p.note, p.sha256, p.taken_at, p.latitude, p.longitude, p.accuracy_m, p.shows, p.copy_of, i.readable, i.seen "
        f"FROM parts p LEFT JOIN pictures i ON i.sha256 = p.sha256 WHERE p.what = 'picture' AND p.note IN ({inner}) "
        f"ORDER BY p.note, p.place",
        values,
    )
    for note_id, *row in found:
        photos.setdefault(note_id, []).append(_photo(row, zone))
    return photos


def _photo(row: list, zone) -> Photo:
    """A photo with what the phone said of it first, then what stands in the file."""
    sha256, taken_at, latitude, longitude, accuracy, shows, copy_of, readable, seen = row
    seen = {} if seen is None else json.loads(seen)
    captured = seen.get("captured")
    taken, taken_from = _moment(taken_at, zone), "phone"
    if taken is None:
        taken, taken_from = _moment(captured, zone), "exif"
    place, place_from = None, None
    if latitude is not None:
        place, place_from = Place(latitude, longitude, accuracy), "phone"
    elif seen.get("latitude") is not None:
        place, place_from = Place(seen["latitude"], seen["longitude"]), "exif"
    return Photo(
        sha256=sha256,
        taken_at=taken,
        taken_from=taken_from if taken else None,
        place=place,
        place_from=place_from,
        tags=tuple(seen.get("tags", ())),
        of=None if shows is None else tuple(json.loads(shows)),
        of_from=None if shows is None else "pressed",
        readable=None if readable is None else bool(readable),
        copy_of=copy_of,
        seen=seen,
    )


def _acts(db, inner: str, values: list) -> dict[str, list]:
    acts: dict[str, list] = {}
    found = db.execute(f"SELECT note, id, act, done_by, at, content FROM acts WHERE note IN ({inner}) ORDER BY seq", values)
    for note_id, *row in found:
        acts.setdefault(note_id, []).append(row)
    return acts


def _heard_right(doc: dict, reading: Reading | None, acts: Iterable) -> bool:
    """Whether who said it (or handed it in for him) pressed "that is right" under these very words."""
    if reading is None:
        return False
    own, words = (doc["spoken_by"], doc["handed_in_by"]), text_digest(reading.text)
    return any(act == "confirmed" and by in own and json.loads(content).get("words") == words for _, act, by, _, content in acts)


def _correction(act: list, zone) -> Correction:
    id, _, by, at, content = act
    doc = json.loads(content)
    name, value = doc["name"], doc["value"]
    exact = None if value is None else facts.from_json(name, value, doc.get("exact"))
    return Correction(id, doc["position"], name, exact, by, _moment(at, zone))
