"""One piece: all its notes joined, drawn, its findings, and the lead's decisions."""

from __future__ import annotations

from flask import Blueprint, Response, g, jsonify, make_response, redirect, render_template, send_file, url_for

from logbook import intake, store
from logbook.geometry.drawing import draw
from logbook.mistake import Mistake
from logbook.store import people
from logbook.web import answers, asked, deciding, guard, opened, places, secrecy

screen = Blueprint("piece", __name__)


@screen.get("/pieces/<piece>")
def document(piece: str):
    found = store.piece_document(opened.folder(), piece, g.language)
    return answers.refuse(Mistake("pages.no-such-piece")) if found is None else places.told(found)


@screen.get("/fitting/<piece>")
def page(piece: str):
    folder = opened.folder()
    found = store.piece_document(folder, piece, g.language)
    if found is None:
        return answers.refuse(Mistake("pages.no-such-piece"))
    return render_template(
        "piece.html", piece=found, names=people.names(folder.db), told=draw(found["facts"], g.language).told,
    )  # fmt: skip


@screen.get("/pieces/<piece>/drawing.svg")
def drawing(piece: str):
    """The fitting as it was said, drawn."""
    found = store.piece_document(opened.folder(), piece, g.language)
    if found is None:
        return answers.refuse(Mistake("pages.no-such-piece"))
    answer = Response(draw(found["facts"], g.language).svg, mimetype="image/svg+xml")
    answer.headers["Content-Security-Policy"] = secrecy.FILE_POLICY
    return answer


@screen.post("/pieces/<piece>/decisions")
def decide(piece: str):
    """A lead settles a finding. A form may carry the signed document as a file; JSON names its SHA-256."""
    body = asked.body()
    if isinstance(body, Mistake):
        return answers.refuse(body)
    at = body.pop("at")
    if asked.is_form():
        body = deciding.body(body)
        if isinstance(body, Mistake):
            return answers.refuse(body)
    act = store.decide(opened.folder(), piece, body, g.person.id, at=at)
    if isinstance(act, Mistake):
        return answers.refuse(act)
    if answers.wants_page():
        return redirect(url_for("piece.page", piece=piece), 303)
    return make_response(jsonify(act.document), 200 if act.repeated else 201)


@screen.get("/documents/<sha256>")
def paper(sha256: str):
    """A document that a decision leans on, to save, never to open inside the page."""
    folder = opened.folder()
    path = store.original(folder, sha256) if intake.is_digest(sha256) else None
    if path is None:
        return answers.refuse(Mistake("pages.no-such-file"))
    kind = store.media_type(folder, sha256) or "application/octet-stream"
    given = path if guard.sees_places() or not kind.startswith("image/") else places.copy(path)
    if given is None:  # a picture whose camera data cannot be cut out
        return answers.refuse(Mistake("pages.not-for-you"))
    answer = send_file(given, mimetype=kind, as_attachment=True, download_name=f"document-{sha256[:8]}")
    answer.headers["Content-Security-Policy"] = secrecy.FILE_POLICY
    return answer
