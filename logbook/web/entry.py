"""One note: its document, its page, its sound and photos, and what may be done with it."""

from __future__ import annotations

from flask import Blueprint, g, jsonify, make_response, redirect, render_template, send_file, url_for

from logbook import store
from logbook.mistake import Mistake
from logbook.store import people
from logbook.web import answers, asked, guard, opened, places, pressing, secrecy

screen = Blueprint("entry", __name__)


@screen.get("/notes/<note>")
def document(note: str):
    found = store.note_document(opened.folder(), note, g.language)
    return answers.refuse(Mistake("pages.no-such-note")) if found is None else places.told(found)


@screen.get("/entry/<note>")
def page(note: str):
    folder = opened.folder()
    found = store.note_document(folder, note, g.language)
    if found is None:
        return answers.refuse(Mistake("pages.no-such-note"))
    return render_template("entry.html", note=found, names=people.names(folder.db), press=pressing.field)


@screen.get("/notes/<note>/sound/<int:part>")
def sound(note: str, part: int):
    """A part of the recording as it was handed in; ranges are answered, so that a second can be jumped to."""
    found = store.note_document(opened.folder(), note, g.language)
    if found is None or not 0 <= part < len(found["digests"]["audio"]):
        return answers.refuse(Mistake("pages.no-such-file"))
    if store.files.erased_at(opened.folder(), found["digests"]["audio"][part]):
        return answers.refuse(Mistake("erasing.sound-gone", "", {"date": found["sound_erased_at"][:10]}))
    return _file(found["digests"]["audio"][part])


@screen.get("/notes/<note>/photos/<sha256>/small")
def small_photo(note: str, sha256: str):
    """At most 640 px, upright, without the place it was taken."""
    if not _belongs(note, sha256):
        return answers.refuse(Mistake("pages.no-such-file"))
    path = store.thumbnail(opened.folder(), sha256)
    if path is None:
        return answers.refuse(Mistake("pages.not-made-yet"))
    return _kept(send_file(path, mimetype="image/jpeg", conditional=True, etag=sha256 + "-small"))


@screen.get("/notes/<note>/photos/<sha256>")
def photo(note: str, sha256: str):
    """To lead and office as handed in, with everything the camera wrote into it; to the others without that."""
    if not _belongs(note, sha256):
        return answers.refuse(Mistake("pages.no-such-file"))
    return _file(sha256) if guard.sees_places() else _copy(note, sha256)


def _copy(note: str, sha256: str):
    original = store.original(opened.folder(), sha256)
    if original is None:
        return answers.refuse(Mistake("pages.no-such-file"))
    copy = places.copy(original)
    if copy is None:
        return small_photo(note, sha256)
    kind = store.media_type(opened.folder(), sha256)
    return _kept(send_file(copy, mimetype=kind, etag=sha256 + "-copy"))


def _belongs(note: str, sha256: str) -> bool:
    found = store.note_document(opened.folder(), note, g.language)
    return found is not None and sha256 in found["digests"]["photos"]


def _file(sha256: str):
    folder = opened.folder()
    path = store.original(folder, sha256)
    if path is None:
        return answers.refuse(Mistake("pages.no-such-file"))
    kind = store.media_type(folder, sha256) or "application/octet-stream"
    return _kept(send_file(path, mimetype=kind, conditional=True, etag=sha256))


def _kept(answer):
    """Originals never change: this reader's browser may keep them; nothing in them runs."""
    answer.headers["Content-Security-Policy"] = secrecy.FILE_POLICY
    answer.headers["Cache-Control"] = "private, max-age=604800, immutable"
    return answer


# --- acts: each has an id from the phone or the form and can be repeated


@screen.post("/notes/<note>/corrections")
def correct(note: str):
    """Body: id, position, name, value (JSON of the contract; null: "I did not say that"), or the press form."""
    body = asked.body(whole=("position",))
    if isinstance(body, Mistake):
        return answers.refuse(body)
    if not asked.is_form() and "value" not in body:
        return answers.refuse(Mistake("pages.bad-body", "value"))  # left out is not "I did not say that"
    value = pressing.value(body) if asked.is_form() else body["value"]
    if isinstance(value, Mistake):
        return answers.refuse(value)
    act = store.correct(
        opened.folder(), str(body.get("id", "")), note, body.get("position", 0), str(body.get("name", "")), value, g.person.id,
        at=body["at"],
    )  # fmt: skip
    return _done(act, note)


@screen.post("/notes/<note>/right")
def right(note: str):
    """"That is right": what was heard is what was said, and nothing else. `text`: the words that stood on the page."""
    body = asked.body()
    if isinstance(body, Mistake):
        return answers.refuse(body)
    text = body.get("text")
    if text is not None and not isinstance(text, str):
        return answers.refuse(Mistake("pages.bad-body"))
    return _done(store.confirm(opened.folder(), str(body.get("id", "")), note, g.person.id, at=body["at"], text=text), note)


@screen.post("/notes/<note>/withdraw")
def withdraw(note: str):
    """Takes the note back; it stays in the log, its entries leave the pieces."""
    return _plain(store.withdraw, note)


@screen.post("/notes/<note>/hear-again")
def hear_again(note: str):
    return _plain(store.hear_again, note)


@screen.post("/notes/<note>/words")
def type_words(note: str):
    """The words of a note that could not be heard, typed."""
    body = asked.body()
    if isinstance(body, Mistake):
        return answers.refuse(body)
    act = store.type_words(
        opened.folder(), str(body.get("id", "")), note, str(body.get("text", "")), g.person.id,
        language=body.get("language") or None, at=body["at"],
    )  # fmt: skip
    return _done(act, note)


def _plain(act, note: str):
    body = asked.body()
    if isinstance(body, Mistake):
        return answers.refuse(body)
    return _done(act(opened.folder(), str(body.get("id", "")), note, g.person.id, at=body["at"]), note)


def _done(act, note: str):
    if isinstance(act, Mistake):
        return answers.refuse(act)
    if answers.wants_page():
        return redirect(url_for("entry.page", note=note), 303)
    return make_response(jsonify(act.document), 200 if act.repeated else 201)
