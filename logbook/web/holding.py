"""Hold points on screen: what waits behind each, who released it, and the press that does."""

from __future__ import annotations

from flask import Blueprint, g, jsonify, make_response, redirect, render_template, request, url_for

from logbook.mistake import Mistake
from logbook.store import holding, people
from logbook.web import answers, asked, opened

screen = Blueprint("holding", __name__)
IN_SIGHT = 3  # of what stands open, the most serious ones, stand before the press: it is in reach of a thumb, and nobody presses blindly
SHOWN = 100  # open findings of a hold point on its page, unfolded by a press; the worklist holds the rest


@screen.get("/holds")
def page():
    return _page()


def _page(wrong: Mistake | None = None, about: str | None = None):
    folder = opened.folder()
    told = None if wrong is None else answers.sentences(wrong, g.language)
    shown = render_template(
        "holds.html", points=holding.hold_points(folder), names=people.names(folder.db), told=told, about=about,
        pressed=request.form, sight=IN_SIGHT, shown=SHOWN,
    )  # fmt: skip
    return shown, 200 if wrong is None else answers.status_of(wrong)


@screen.post("/holds/<hold>")
def release(hold: str):
    """Body: id, words, witness, `again` (hold once more) or none, at."""
    body = asked.body()
    if isinstance(body, Mistake):
        return answers.refuse(body)
    given = {name: str(body.get(name) or "") for name in ("id", "words", "witness")}
    folder, by, at = opened.folder(), g.person.id, body["at"]
    if body.get("again"):
        act = holding.hold_again(folder, given["id"], hold, by, given["words"], at)
    else:
        act = holding.release(folder, given["id"], hold, by, given["words"], given["witness"], at)
    if isinstance(act, Mistake):
        return _page(act, hold) if answers.wants_page() else answers.refuse(act)
    if answers.wants_page():
        return redirect(url_for("holding.page"), 303)
    return make_response(jsonify(act.document), 200 if act.repeated else 201)
