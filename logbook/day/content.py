"""What a signature on a day stands for: a digest of what the day holds, in whatever language it is printed."""

from __future__ import annotations

from collections.abc import Mapping
from hashlib import sha256

import rfc8785

from logbook.day.one_day import Day


def content_of(day: Day) -> str:
    """SHA-256 of what the day holds, in whatever language it is printed: words, facts, findings, decisions, looks,
    photos. Not part of it: signatures, journal, hour of printing, and what is missing, which other days change."""
    told = {
        "date": day.date, "job": day.job["id"],
        "notes": [_only(note, "id", "spoken_by", "spoken_at", "state", "text", "shift", "photos_to_come") for note in day.notes],
        "pieces": [
            _only(piece, "id", "run", "mark", "notes", "facts", "assumed", "open_items", "decisions", "looked")
            | {"photos": [_only(one.get("photo", one), "sha256", "of", "readable") for one in piece.get("photos", ())],
               "findings": [_only(one, "rule", "verdict", "shows", "stands", "edition", "reckoned") for one in piece["findings"]]}
            for piece in sorted(day.pieces, key=lambda one: one["id"] or "")
        ],
    }  # fmt: skip
    went = {"draws": day.draws, "looks": day.looks, "answers": day.answers, "records": day.records}
    told |= {name: [dict(one) for one in found] for name, found in went.items() if found}
    return sha256(rfc8785.dumps(_by_ids(told, day.ids))).hexdigest()


def _by_ids(value, ids: Mapping[str, str], key: str = ""):
    """The same with people's ids in place of the names they go by: erasing a name makes no other day."""
    match value:
        case Mapping():
            return {name: _by_ids(one, ids, name) for name, one in value.items()}
        case list() | tuple():
            return [_by_ids(one, ids, key) for one in value]
        case str() if key in ("by", "spoken_by", "handed_in_by"):
            return ids.get(value, value)
    return value


def _only(document: Mapping, *names: str) -> dict:
    return {name: document[name] for name in names if document.get(name) is not None}
