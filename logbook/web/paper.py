"""The day's report and the package, as files made by the paper and handover stages."""

from __future__ import annotations

from flask import Blueprint, request, send_file

from logbook.mistake import Mistake
from logbook.paper import making
from logbook.store.folder import room_for_derived
from logbook.web import answers, opened

screen = Blueprint("paper", __name__)
KINDS = {"html": "text/html", "pdf": "application/pdf", "json": "application/json"}


@screen.get("/day/<date>/report.<kind>")
def report(date: str, kind: str):
    """The report of a day as the log stands now; `in` names a language or "both". Written anew only where the day changed."""
    day = opened.day_of(date)
    if kind not in KINDS or day is None:
        return answers.refuse(Mistake("pages.no-such-page"))
    made = made_now(day.isoformat(), request.args.get("in"))
    path = opened.folder().path / "reports" / f"day-{day.isoformat()}.{kind}"
    if not path.is_file():
        return answers.refuse(made if isinstance(made, Mistake) else Mistake("pages.report-not-made", "", {"date": date}), 404)
    return send_file(path, mimetype=KINDS[kind], as_attachment=kind != "pdf", download_name=path.name)


def made_now(day: str, asked: str | None = None) -> making.Made | Mistake | None:
    """The report of a day brought up to the log; None where the disk has no room for anything derived."""
    folder = opened.folder()
    if folder.read_only or not room_for_derived(folder):
        return None
    return making.make_day(folder, day, making.languages_of(folder, day, asked), opened.now())


@screen.get("/package")
def package():
    """The newest closeout package of the reports folder."""
    made = sorted((opened.folder().path / "reports").glob("*.zip"), key=lambda path: path.stat().st_mtime)
    if not made:
        return answers.refuse(Mistake("pages.package-not-made"), 404)
    return send_file(made[-1], mimetype="application/zip", as_attachment=True, download_name=made[-1].name)
