"""A decision from the fields of a form: the body of the contract, a document that came as a file, who ends it by when."""

from __future__ import annotations

from collections.abc import Mapping

from flask import g, request

from logbook import review, store
from logbook.intake import Part
from logbook.mistake import Mistake
from logbook.web import opened, pressing

ALIKE = ("rework", "repair", "concession", "scrap", "asked")  # may be the same for several findings at once


def body(fields: Mapping[str, str]) -> dict | Mistake:
    """The body of one decision; a file that came along is kept first and named by its SHA-256."""
    made = {name: fields.get(name) or None for name in ("id", "rule", "edition", "decision", "reason", "granted_by")}
    made |= {"corrected": None, "looked": None, "document": None}
    if made["decision"] in review.STAYS_OPEN:
        made |= {name: fields[name] for name in ("owner", "due") if fields.get(name)}
    file = request.files.get("document")
    if file and file.filename:
        kept = store.add_document(opened.folder(), Part(file.stream, file.filename), g.person.id)
        if isinstance(kept, Mistake):
            return kept
        made["document"] = kept
    if made["decision"] in ("heard_wrong", "looked") and fields.get("name"):
        value = pressing.value(fields)
        if isinstance(value, Mistake):
            return value
        fact = {"name": fields["name"], "value": value}
        if made["decision"] == "heard_wrong":
            made["corrected"] = fact
        else:
            made["looked"] = {"how": fields.get("how") or None, "facts": [fact]}
    elif made["decision"] == "looked":
        made["looked"] = {"how": fields.get("how") or None, "facts": []}
    return made


def unowned(made: Mapping) -> Mistake | None:
    """At the desk, what stays open has an owner and a day; why, if either is missing."""
    if made["decision"] not in review.STAYS_OPEN:
        return None
    missing = next((name for name in ("owner", "due") if not made.get(name)), None)
    return None if missing is None else Mistake(f"desk.no-{missing}", missing)
