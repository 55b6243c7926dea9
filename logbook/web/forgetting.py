"""Forgetting a person on request: what goes and what stays on one page, then the name typed, then done."""

from __future__ import annotations

from flask import Blueprint, g, make_response, render_template, request

from logbook.mistake import Mistake
from logbook.store import erasing, people
from logbook.web import answers, opened

screen = Blueprint("forgetting", __name__)


@screen.get("/people/<person>/forget")
def page(person: str):
    folder = opened.folder()
    whose = people.person(folder.db, person)
    if whose is None or whose.name is None or whose.id == g.person.id:
        return answers.refuse(Mistake("pages.no-such-person"))
    return _page(whose)


def _page(whose: people.Person, mistake: Mistake | None = None):
    folder = opened.folder()
    goes, stays = erasing.told(erasing.standing(folder, whose), folder.job, g.language)
    error, cure = answers.sentences(mistake, g.language) if mistake else ("", "")
    page = render_template("forget.html", whose=whose, goes=goes, stays=stays, error=error, cure=cure)
    return make_response(page, answers.status_of(mistake) if mistake else 200)


@screen.post("/people/<person>/forget")
def forget(person: str):
    """Erases for good; the name has to be typed, so that no slip of a thumb does it."""
    folder = opened.folder()
    whose = people.person(folder.db, person)
    if whose is None or whose.name is None or whose.id == g.person.id:
        return answers.refuse(Mistake("pages.no-such-person"))
    if people.folded(request.form.get("name", "")) != people.folded(whose.name):
        return _page(whose, Mistake("erasing.not-that-name", "name"))
    done = erasing.erase(folder, person, g.person.id)
    if isinstance(done, Mistake):
        return answers.refuse(done)
    stays = erasing.told(done.standing, folder.job, g.language)[1]
    error, cure = answers.sentences(done.left, g.language) if done.left else ("", "")
    return render_template("forgotten.html", id=person, seq=done.seq, stays=stays, error=error, cure=cure)
