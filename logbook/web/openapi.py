"""What the server speaks, as an OpenAPI 3.1 document. A test compares every line of it with the running server."""

from __future__ import annotations

from functools import cache

from logbook import __version__, facts
from logbook.note import STATES
from logbook.walk import lots, rounds

_UUID = {"type": "string", "format": "uuid"}
_TIME = {"type": "string", "format": "date-time", "description": "ISO 8601 with offset"}
_AT = {"anyOf": [_TIME, {"type": "null"}]}
_DIGEST = {"type": "string", "pattern": "^[0-9a-f]{64}$"}
_NULL_TEXT = {"type": ["string", "null"]}
REFUSALS = {
    "400": "the request cannot be read, or its CSRF token does not fit", "401": "nobody is signed in", "403": "not open to this role",
    "404": "no such thing for this reader", "409": "the same id with other content", "413": "too large", "415": "neither sound nor picture",
    "422": "a field does not fit", "429": "too many tries", "507": "the disk is full",
}  # fmt: skip


def _refs(*codes: str) -> dict:
    return {code: {"$ref": f"#/components/responses/refused-{code}"} for code in codes}


def _json(schema: dict, told: str) -> dict:
    return {"description": told, "content": {"application/json": {"schema": schema}}}


def _ref(name: str) -> dict:
    return {"$ref": f"#/components/schemas/{name}"}


def _in_path(name: str, schema: dict) -> dict:
    return {"name": name, "in": "path", "required": True, "schema": schema}


def _in_query(name: str, schema: dict, told: str = "") -> dict:
    return {"name": name, "in": "query", "required": False, "schema": schema, "description": told}


def _act(told: str, body: dict, answer: dict, *codes: str) -> dict:
    return {
        "summary": told,
        "requestBody": {"required": True, "content": {"application/json": {"schema": body}}},
        "responses": {
            "201": _json(answer, "kept"),
            "200": _json(answer, "kept before; nothing changed"),
            **_refs("400", "401", "403", "404", "409", "422", "507", *codes),
        },
    }


def _note_form() -> dict:
    return {
        "type": "object",
        "required": ["id", "spoken_at"],
        "properties": {
            "id": _UUID,
            "spoken_at": _TIME,
            "sent_at": _TIME,
            "audio": {"type": "array", "items": {"type": "string", "contentMediaType": "application/octet-stream"}, "description": "parts of one recording, in order; or text"},
            "text": {"type": "string", "maxLength": 20000},
            "photo": {"type": "array", "items": {"type": "string", "contentMediaType": "application/octet-stream"}},
            "photo_facts": {"type": "string", "description": "JSON list in the order of the photos: taken_at, latitude, longitude, accuracy_m, of, copy_of (these bytes are a small copy of an announced photo)"},
            "photos_to_come": {"type": "string", "description": "JSON list of SHA-256 digests that follow by PUT"},
            "language": {"enum": ["en", "es"]},
            "spoken_by": {"type": "string", "description": "one of the people who share this phone"},
            "answers": _UUID,
            "mark": {"type": "string", "maxLength": 80},
            "kind": {"enum": list(facts.KINDS)},
            "run": {"type": "string", "maxLength": 80},
        },
    }  # fmt: skip


def _paths() -> dict:
    note, piece = _in_path("note", _UUID), _in_path("piece", {"type": "string"})
    digest = _in_path("sha256", _DIGEST)
    plain_act = {"type": "object", "required": ["id"], "properties": {"id": _UUID, "at": _AT}}
    return {
        "/notes": {
            "post": {
                "summary": "Hand a note in. Answered only when every byte is on the disk and the row is committed.",
                "requestBody": {"required": True, "content": {"multipart/form-data": {"schema": _note_form()}}},
                "responses": {
                    "201": _json(_ref("receipt"), "kept"),
                    "200": _json(_ref("receipt"), "the same note was kept before; nothing changed"),
                    **_refs("400", "401", "403", "409", "413", "415", "422", "507"),
                },
            },
            "get": {
                "summary": "Notes in order of receipt, after a cursor",
                "parameters": [
                    _in_query("since", {"type": "string"}, "the `next` of the answer before"),
                    _in_query("limit", {"type": "integer", "minimum": 1, "maximum": 200}),
                    _in_query("date", {"anyOf": [{"type": "string", "format": "date"}, {"type": "string", "maxLength": 0}]}, "empty: every day"),
                    _in_query("run", {"type": "string"}),
                    _in_query("mark", {"type": "string"}),
                    _in_query("speaker", {"type": "string"}),
                    _in_query("state", {"enum": list(STATES)}),
                    _in_query("flagged", {"enum": ["yes", "no"]}),
                ],
                "responses": {"200": _json(_ref("notes"), "notes and the next cursor"), **_refs("401", "422")},
            },
        },
        "/notes/{note}": {"get": {"summary": "A note with state, transcript, facts and findings; `place` of photos is null for everybody but lead and keeper", "parameters": [note], "responses": {"200": _json(_ref("note"), "the note"), **_refs("401", "404")}}},
        "/notes/{note}/photos/{sha256}": {
            "parameters": [note, digest],
            "put": {
                "summary": "One photo's raw bytes: announced, or added to the note later",
                "parameters": [_in_query("facts", {"type": "string"}, "JSON: what photo_facts says of this photo")],
                "requestBody": {"required": True, "content": {"application/octet-stream": {"schema": {"type": "string", "contentMediaType": "application/octet-stream"}}}},
                "responses": {"201": _json(_ref("receipt"), "kept"), "200": _json(_ref("receipt"), "kept before"), **_refs("400", "401", "403", "404", "409", "413", "415", "422", "507")},
            },
            "get": {"summary": "The photo: to lead and keeper as handed in, to the others without position and camera data", "responses": {"200": {"description": "the bytes", "content": {"image/*": {}}}, **_refs("401", "403", "404")}},
        },
        "/notes/{note}/photos/{sha256}/small": {"get": {"summary": "At most 640 px, upright, without EXIF", "parameters": [note, digest], "responses": {"200": {"description": "the picture", "content": {"image/jpeg": {}}}, **_refs("401", "404")}}},
        "/notes/{note}/sound/{part}": {"get": {"summary": "A part of the recording; to a contractor only where the job file says so", "parameters": [note, _in_path("part", {"type": "integer", "minimum": 0})], "responses": {"200": {"description": "the bytes", "content": {"audio/*": {}}}, **_refs("401", "403", "404")}}},
        "/notes/{note}/corrections": {
            "post": _act(
                "Set one fact right; what was heard stays beside it",
                {"type": "object", "required": ["id", "name", "value"], "properties": {"id": _UUID, "position": {"type": "integer", "minimum": 0, "default": 0}, "name": {"enum": [row.name for row in facts.FACTS]}, "value": {}, "at": _AT}},
                _ref("act"),
            ) | {"parameters": [note]}
        },
        "/notes/{note}/right": {"post": _act("What was heard is what was said", {"type": "object", "required": ["id"], "properties": {"id": _UUID, "text": {"type": "string", "description": "the words that were shown; only these are confirmed"}, "at": _AT}}, _ref("act")) | {"parameters": [note]}},
        "/notes/{note}/withdraw": {"post": _act("Take the note back", plain_act, _ref("act")) | {"parameters": [note]}},
        "/notes/{note}/hear-again": {"post": _act("Hear the sound again", plain_act, _ref("act")) | {"parameters": [note]}},
        "/notes/{note}/words": {
            "post": _act(
                "Type the words of a note that could not be heard",
                {"type": "object", "required": ["id", "text"], "properties": {"id": _UUID, "text": {"type": "string", "maxLength": 20000}, "language": {"enum": ["en", "es"]}, "at": _AT}},
                _ref("act"),
            ) | {"parameters": [note]}
        },
        "/questions": {"get": {"summary": "Notes of a day that still need a word", "parameters": [_in_query("date", {"type": "string", "format": "date"})], "responses": {"200": _json({"type": "object", "required": ["notes", "total", "date"], "properties": {"notes": {"type": "array", "items": _ref("note")}, "earlier": {"type": "array", "items": _ref("note"), "description": "of other days, about which the lead wants something done"}, "total": {"type": "integer"}, "date": {"type": "string", "format": "date"}}}, "the list"), **_refs("401", "403", "422")}}},
        "/pieces/{piece}": {"get": {"summary": "The joined piece", "parameters": [piece], "responses": {"200": _json(_ref("piece"), "the piece"), **_refs("401", "404")}}},
        "/pieces/{piece}/drawing.svg": {"get": {"summary": "The piece as it was said, drawn", "parameters": [piece], "responses": {"200": {"description": "the drawing", "content": {"image/svg+xml": {}}}, **_refs("401", "404")}}},
        "/pieces/{piece}/decisions": {"post": _act("Settle a flagged finding", _decision_body(), _ref("decision")) | {"parameters": [piece]}},
        "/holds/{hold}": {
            "post": _act(
                "Release a hold point, or hold it again; words are needed where something stands open behind it",
                {"type": "object", "required": ["id"], "properties": {"id": _UUID, "words": {"type": "string", "maxLength": 2000}, "witness": {"type": "string", "maxLength": 200}, "again": {"type": "boolean"}, "at": _AT}},
                _ref("act"),
            ) | {"parameters": [_in_path("hold", {"type": "string"})]}
        },
        "/days/{date}": {"get": {"summary": "Everything of one day", "parameters": [_in_path("date", {"type": "string", "format": "date"})], "responses": {"200": _json({"type": "object", "required": ["notes", "pieces", "decisions"]}, "the day"), **_refs("401", "403", "422")}}},
        "/days/{date}/signatures": {
            "post": _act(
                "Sign a day",
                {"type": "object", "required": ["id"], "properties": {"id": _UUID, "words": {"type": "string"}, "report": {"anyOf": [_DIGEST, {"type": "null"}]}, "at": _AT}},
                _ref("act"),
            ) | {"parameters": [_in_path("date", {"type": "string", "format": "date"})]}
        },
        **_walk_paths(piece),
        "/me": {"get": {"summary": "Who is signed in, and a fresh CSRF token", "responses": {"200": _json(_ref("me"), "this device's person"), **_refs("401")}}},
        "/health": {"get": {"summary": "The server runs", "security": [], "responses": {"200": _json({"type": "object", "required": ["alive"]}, "alive")}}},
        "/ready": {"get": {"summary": "The server can take notes", "security": [], "responses": {"200": _json({"type": "object", "required": ["ready"]}, "ready"), **_refs("507")}}},
    }  # fmt: skip


def _walk_paths(piece: dict) -> dict:
    """What people go and see: spot checks, the walk list, leak tests. The same addresses answer browsers with pages."""
    text, number = {"type": "string"}, {"anyOf": [{"type": "number"}, {"type": "string", "description": "as the trade writes it"}]}
    day = {"type": "string", "format": "date"}
    found = {"type": "object", "required": ["name", "answer"], "properties": {"name": text, "answer": {"enum": list(lots.ANSWERS)}, "value": {"description": "needed for otherwise, but not of a yes or no"}, "words": text}}
    record = {
        "id": _UUID, "section": text, "pressure": number, "area": number, "measured": number, "leakage_class": number, "instrument": text, "serial": text,
        "tested_on": day, "calibrated_on": day, "calibrated_until": day, "tested_by": text, "witness": text, "words": text, "instead_of": _UUID, "at": _AT,
    }  # fmt: skip
    needed = ["id", "section", "pressure", "area", "measured", "instrument", "tested_on", "tested_by"]
    return {
        "/walk/draws": {"post": _act("Draw a few pieces of a day that are good as said; the seed stands in the answer", {"type": "object", "required": ["id", "day", "count"], "properties": {"id": _UUID, "day": day, "count": {"type": "integer", "minimum": 1, "maximum": lots.MOST}, "at": _AT}}, _ref("act"))},
        "/walk/look/{piece}": {"post": _act("What was found of a drawn piece, against what was said; every fact has an answer", {"type": "object", "required": ["id", "how", "found"], "properties": {"id": _UUID, "how": {"enum": list(lots.WAYS)}, "words": text, "found": {"type": "array", "items": found}, "at": _AT}}, _ref("act")) | {"parameters": [piece]}},
        "/walk/list": {"post": _act("Answer one question of the walk list in one area", {"type": "object", "required": ["id", "area", "question", "answer"], "properties": {"id": _UUID, "area": {"type": "string", "description": "area:NAME, place:NAME, run:NAME or nowhere:"}, "question": {"enum": list(rounds.IDS)}, "answer": {"enum": list(rounds.ANSWERS)}, "words": {"type": "string", "description": "needed for a no"}, "at": _AT}}, _ref("act"))},
        "/leaks": {
            "get": {"summary": "Leak-test records with their allowable and what they prove", "responses": {"200": _json({"type": "object", "required": ["records"], "properties": {"records": {"type": "array", "items": {"type": "object"}}}}, "the records, oldest first"), **_refs("401", "403")}},
            "post": _act("Keep a leak test, or set one right", {"type": "object", "required": needed, "properties": record}, {"type": "object", "required": ["id", "by", "at", "allowed_cfm", "verdict", "why"]}),
        },
    }  # fmt: skip


def _decision_body() -> dict:
    fact = {"type": "object", "required": ["name", "value"], "properties": {"name": {"type": "string"}, "value": {}}}
    return {
        "type": "object",
        "required": ["id", "rule", "edition", "decision"],
        "properties": {
            "id": _UUID, "rule": {"type": "string"}, "edition": _DIGEST,
            "decision": {"enum": ["rework", "repair", "concession", "scrap", "heard_wrong", "looked", "asked"]},
            "reason": _NULL_TEXT, "corrected": {"anyOf": [fact, {"type": "null"}]},
            "looked": {"anyOf": [{"type": "object", "required": ["how", "facts"], "properties": {"how": {"enum": ["seen", "felt", "measured", "photo"]}, "facts": {"type": "array", "items": fact}}}, {"type": "null"}]},
            "granted_by": _NULL_TEXT, "document": {"anyOf": [_DIGEST, {"type": "null"}]}, "at": _AT,
            "owner": {"type": "string", "description": "who ends what stays open"}, "due": {"type": "string", "format": "date"},
        },
    }  # fmt: skip


def _schemas() -> dict:
    fitting = {"type": "object", "required": ["position", "facts", "open_items"]}
    return {
        "refusal": {"type": "object", "required": ["error", "cure"], "properties": {"error": {"type": "string", "minLength": 1}, "cure": {"type": "string"}}},
        "receipt": {
            "type": "object", "required": ["id", "received_at", "digests"],
            "properties": {"id": _UUID, "received_at": _TIME, "digests": {"type": "object", "required": ["audio", "photos", "text"], "properties": {"audio": {"type": "array", "items": _DIGEST}, "photos": {"type": "array", "items": _DIGEST}, "text": {"anyOf": [_DIGEST, {"type": "null"}]}}}},
        },
        "note": {
            "type": "object",
            "required": ["id", "job", "spoken_by", "handed_in_by", "spoken_at", "received_at", "state", "text", "transcript", "fittings", "questions", "photos", "photos_to_come", "digests", "earlier"],
            "properties": {"id": _UUID, "state": {"enum": list(STATES)}, "fittings": {"type": "array", "items": fitting}, "questions": {"type": "array", "maxItems": 2}},
        },
        "notes": {"type": "object", "required": ["notes", "next"], "properties": {"notes": {"type": "array", "items": _ref("note")}, "next": _NULL_TEXT}},
        "piece": {"type": "object", "required": ["id", "job", "run", "mark", "notes", "facts", "assumed", "open_items", "photos", "findings", "decisions", "looked"]},
        "decision": {"type": "object", "required": ["id", "piece", "rule", "edition", "decision", "reason", "corrected", "looked", "granted_by", "document", "by", "at"]},
        "act": {"type": "object", "required": ["id"], "properties": {"id": _UUID}},
        "me": {"type": "object", "required": ["person", "role", "job", "language", "crew", "csrf"], "properties": {"role": {"enum": ["installer", "lead", "contractor", "keeper"]}, "language": {"enum": ["en", "es"]}, "csrf": {"type": "string"}}},
    }  # fmt: skip


@cache
def document() -> dict:
    refused = {
        f"refused-{code}": {"description": told, "content": {"application/json": {"schema": _ref("refusal")}}}
        for code, told in REFUSALS.items()
    }
    return {
        "openapi": "3.1.0",
        "info": {"title": "Fitting logbook", "version": __version__, "description": "Notes said on a job site, and what was found in them. Errors carry `error` and `cure` in the reader's language."},
        "security": [{"key": []}, {"session": [], "csrf": []}],
        "paths": _paths(),
        "components": {
            "schemas": _schemas(),
            "responses": refused,
            "securitySchemes": {
                "key": {"type": "http", "scheme": "bearer", "description": "a key that `logbook people add NAME --key` printed once"},
                "session": {"type": "apiKey", "in": "cookie", "name": "logbook"},
                "csrf": {"type": "apiKey", "in": "header", "name": "X-CSRFToken", "description": "the `csrf` of GET /me, on every request that changes something"},
            },
        },
    }  # fmt: skip
