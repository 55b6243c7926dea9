"""Handing in: the page with the one big press, `POST /notes`, and photos that come later."""

from __future__ import annotations

import uuid

from flask import Blueprint, g, jsonify, make_response, redirect, render_template, request, url_for

from logbook import intake, store
from logbook.intake import Part
from logbook.mistake import Mistake
from logbook.store import people
from logbook.web import answers, doors, guard, opened

screen = Blueprint("handing", __name__)


@screen.get("/")
def page():
    """The hand-in form. `?answers=NOTE` makes what comes belong to that note; `?ask=FACT` says what is asked."""
    folder = opened.folder()
    answered = request.args.get("answers")
    asked = None
    if answered and _may_answer(folder, answered):
        asked = store.note_document(folder, answered, g.language)
    today = opened.local_now().date().isoformat()
    shown = request.cookies.get("cautioned") == today
    answer = make_response(
        render_template(
            "hand-in.html", id=str(uuid.uuid4()), asked=asked, voices=guard.voices(), caution=not shown,
            mine=_mine(folder),
        )
    )  # fmt: skip
    if not shown:
        answer.set_cookie("cautioned", today, max_age=24 * 3600, samesite="Lax", httponly=True)
    return answer


def _may_answer(folder, note_id: str) -> bool:
    return intake.is_id(note_id) and (
        guard.sees_all() or bool(set(people.speakers(folder.db, note_id)) & set(guard.voices()))
    )


def _mine(folder) -> list[dict]:
    """The last notes of this reader, newest first."""
    filters = store.Filters(speaker=g.person.id)
    return store.notes_since(folder, None, 5, filters, g.language, newest_first=True)["notes"]


@screen.post("/notes")
def hand_in():
    """`201` with the receipt once every byte is on the disk; `200` and the same receipt the second time."""
    fields = request.form.to_dict()
    page_form = answers.wants_page()
    if page_form:  # a form without JavaScript knows no clock and no UUID of its own
        fields["spoken_at"] = fields.get("spoken_at") or opened.local_now().isoformat(timespec="seconds")
    voice = fields.get("spoken_by") or g.person.id
    if voice not in guard.voices():
        return answers.refuse(Mistake("pages.not-yours-to-speak", "spoken_by", {"came": intake.shown(voice)}))
    fields["spoken_by"] = voice
    incoming = intake.from_form(
        fields, g.person.id, _parts("audio"), _parts("photo"), as_lead=g.person.role == "lead" and "as_lead" in fields
    )
    if isinstance(incoming, Mistake):
        return answers.refuse(incoming)
    receipt = store.receive(opened.folder(), incoming)
    if isinstance(receipt, Mistake):
        return answers.refuse(receipt)
    if page_form:
        then = doors.local(request.form.get("then"))
        return redirect(then if then != "/" else url_for("entry.page", note=receipt.id), 303)
    return jsonify(receipt.document), 200 if receipt.repeated else 201


def _parts(field: str) -> tuple[Part, ...]:
    """The files of a field, in order; a file field that was left empty is no part."""
    return tuple(Part(file.stream, file.filename or "") for file in request.files.getlist(field) if file.filename)


@screen.put("/notes/<note>/photos/<sha256>")
def photo(note: str, sha256: str):
    """The raw bytes of one photo: 201, the same again 200, other bytes 409. `?facts=` says of it what `photo_facts` says."""
    if not intake.is_digest(sha256):
        return answers.refuse(Mistake("intake.digest", "sha256", {"came": intake.shown(sha256)}))
    facts = intake.facts_of_one(request.args.get("facts"))
    if isinstance(facts, Mistake):
        return answers.refuse(facts)
    receipt = store.add_photo(opened.folder(), note, sha256, Part(request.stream, ""), g.person.id, facts)
    if isinstance(receipt, Mistake):
        return answers.refuse(receipt)
    return jsonify(receipt.document), 200 if receipt.repeated else 201
