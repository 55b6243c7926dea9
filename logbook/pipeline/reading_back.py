"""Documents read back into records: what was printed of notes and pieces, for whoever only has the documents."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime

from logbook import facts, said, transcript
from logbook.findings import from_json as finding_from_json
from logbook.note import Correction, Note, Photo, Place, Pressed
from logbook.piece import Assumed, Piece, PiecePhoto, decision_from_json
from logbook.pipeline.documents import Answer, Fitting, Sheet
from logbook.said import Reading

ACTS = ("as_lead", "corrections", "confirmed", "heard_right", "withdrawn_at", "taken_back_by", "sound_erased_at")


def answer_from_json(doc: Mapping) -> Answer:
    """A `GET /notes/ID` document. The entries are those that were printed: with the presses already in them."""
    photos = tuple(photo_from_json(photo) for photo in doc["photos"])
    return Answer(
        note=_note(doc, photos),
        fittings=tuple(
            Fitting(
                said.entry_from_json(one),
                one["piece"],
                tuple(assumed_from_json(word) for word in one["assumed"]),
                tuple(finding_from_json(finding) for finding in one["findings"]),
                one.get("of_piece", {}),
            )
            for one in doc["fittings"]
        ),
        photos=photos,
        questions=tuple((position, rule) for position, rule in doc["questions"]),
        problem=doc["problem"],
        acts={name: doc[name] for name in ACTS if name in doc},
        unread=tuple((said.unread_from_json(one), one.get("stands")) for one in doc.get("unread", ())),
    )


def sheet_from_json(doc: Mapping) -> Sheet:
    """A `GET /pieces/PIECE` document."""
    piece = Piece(
        id=doc["id"],
        job=doc["job"],
        run=doc["run"],
        mark=doc["mark"],
        notes=tuple(doc["notes"]),
        facts=tuple(said.fact_from_json(fact) for fact in doc["facts"]),
        assumed=tuple(assumed_from_json(word) for word in doc["assumed"]),
        open_items=tuple(said.open_item_from_json(item) for item in doc["open_items"]),
        photos=tuple(PiecePhoto(photo["note"], photo_from_json(photo)) for photo in doc["photos"]),
        looked=tuple(doc["looked"]),
        scrapped=doc.get("scrapped", False),
    )
    findings = tuple(finding_from_json(finding) for finding in doc["findings"])
    return Sheet(piece, findings, tuple(decision_from_json(decision) for decision in doc["decisions"]))


def _note(doc: Mapping, photos: tuple[Photo, ...]) -> Note:
    reading = None
    if doc["text"] is not None:
        reading = Reading(
            language=doc["language"],
            language_from=doc["language_from"],
            text=doc["text"],
            fittings=tuple(said.entry_from_json(entry) for entry in doc["fittings"]),
            shift=None if doc["shift"] is None else tuple(said.fact_from_json(fact) for fact in doc["shift"]["facts"]),
            withdraws=said.withdraws_from_json(doc["withdraws"]),
            reason=doc.get("reason"),
            unread=tuple(said.unread_from_json(one) for one in doc.get("unread", ())),
        )
    return Note(
        id=doc["id"],
        job=doc["job"],
        spoken_by=doc["spoken_by"],
        handed_in_by=doc["handed_in_by"],
        spoken_at=datetime.fromisoformat(doc["spoken_at"]),
        sent_at=_time(doc["sent_at"]),
        received_at=datetime.fromisoformat(doc["received_at"]),
        state=doc["state"],
        answers=doc["answers"],
        pressed=Pressed(**doc["pressed"]),
        transcript=transcript.from_json(doc["transcript"]),
        reading=reading,
        photos=photos,
        photos_to_come=tuple(doc["photos_to_come"]),
        copies=tuple((one["sha256"], one["copy_of"]) for one in doc.get("copies", ())),
        audio_digests=tuple(doc["digests"]["audio"]),
        text_digest=doc["digests"]["text"],
        corrections=tuple(_correction(one) for one in doc.get("corrections", ())),
        confirmed=tuple(doc.get("confirmed", ())),
        heard_right=doc.get("heard_right", False),
        withdrawn_at=_time(doc.get("withdrawn_at")),
        earlier=tuple(doc["earlier"]),
        as_lead=doc.get("as_lead", False),
    )


def _correction(doc: Mapping) -> Correction:
    value = None if doc["value"] is None else facts.from_json(doc["name"], doc["value"], doc.get("exact"))
    return Correction(doc["id"], doc["position"], doc["name"], value, doc["by"], datetime.fromisoformat(doc["at"]))


def photo_from_json(doc: Mapping) -> Photo:
    place = doc["place"]
    return Photo(
        sha256=doc["sha256"],
        taken_at=_time(doc["taken_at"]),
        taken_from=doc["taken_from"],
        place=None if place is None else Place(place["latitude"], place["longitude"], place["accuracy_m"]),
        place_from=doc["place_from"],
        tags=tuple(doc["tags"]),
        of=None if doc["of"] is None else tuple(doc["of"]),
        of_from=doc["of_from"],
        readable=doc["readable"],
        copy_of=doc.get("copy_of"),
    )


def assumed_from_json(doc: Mapping) -> Assumed:
    value = facts.from_json(doc["name"], doc["value"], doc.get("exact"))
    return Assumed(doc["name"], value, doc["via"], doc["note"])


def _time(text: str | None) -> datetime | None:
    return None if text is None else datetime.fromisoformat(text)
