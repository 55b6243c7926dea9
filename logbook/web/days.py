"""One day of the job: what was handed in, what is open, what was not said, decisions and signatures."""

from __future__ import annotations

import json

from flask import Blueprint, g, jsonify, make_response, redirect, render_template, url_for

from logbook import store
from logbook.mistake import Mistake
from logbook.store import people
from logbook.web import answers, asked, opened, places

screen = Blueprint("days", __name__)


@screen.get("/day")
def newest():
    """The newest day with notes, else today."""
    listed = store.days(opened.folder())
    return redirect(url_for("days.page", date=listed[0]["date"] if listed else opened.local_now().date().isoformat()))


@screen.get("/day/<date>")
def page(date: str):
    found = _documents(date)
    if isinstance(found, Mistake):
        return answers.refuse(found)
    folder = opened.folder()
    return render_template(
        "day.html", date=date, day=found, names=people.names(folder.db), days=store.days(folder),
        content=_content(folder, date), **_sorted(found),
    )  # fmt: skip


def _content(folder, date: str) -> str | None:
    """What a signature stands for: the content of the newest report of the day, where one is written."""
    try:
        return json.loads((folder.path / "reports" / f"day-{date}.json").read_text(encoding="utf-8"))["content"]
    except (OSError, ValueError, KeyError):
        return None


def _sorted(found: dict) -> dict:
    """The day's findings, by what somebody has to do: [(piece, finding)] lists."""
    pairs = [(piece, finding) for piece in found["pieces"] for finding in piece["findings"]]
    return {
        "open_findings": [p for p in pairs if p[1]["shows"] == "flag" and p[1].get("stands") in ("open", "in hand")],
        "settled_findings": [p for p in pairs if p[1].get("stands") in ("settled", "closed")],
        "asked_findings": [p for p in pairs if p[1]["shows"] == "ask"],
        "counted_findings": [p for p in pairs if p[1]["shows"] == "count"],
    }


def _documents(date: str) -> dict | Mistake:
    if opened.day_of(date) is None:
        return Mistake("pages.bad-date", "date", {"came": date[:20]})
    return store.day_documents(opened.folder(), date, g.language)


@screen.get("/days/<date>")
def document(date: str):
    found = _documents(date)
    return answers.refuse(found) if isinstance(found, Mistake) else places.told(found)


@screen.post("/days/<date>/signatures")
def sign(date: str):
    """Body: id, words, report (SHA-256 of what is signed, or null), at."""
    body = asked.body()
    if isinstance(body, Mistake):
        return answers.refuse(body)
    if opened.day_of(date) is None:
        return answers.refuse(Mistake("pages.bad-date", "date", {"came": date[:20]}))
    act = store.sign(
        opened.folder(), str(body.get("id", "")), date, g.person.id, g.person.role, words=str(body.get("words") or ""),
        report=body.get("report") or None, at=body["at"],
    )  # fmt: skip
    if isinstance(act, Mistake):
        return answers.refuse(act)
    if answers.wants_page():
        return redirect(url_for("days.page", date=date), 303)
    return make_response(jsonify(act.document), 200 if act.repeated else 201)
