"""The day's report and the package, as files made by the paper and handover stages."""

from __future__ import annotations

from flask import Blueprint, send_file

from logbook.mistake import Mistake
from logbook.web import answers, opened

screen = Blueprint("paper", __name__)
KINDS = {"html": "text/html", "pdf": "application/pdf", "json": "application/json"}


@screen.get("/day/<date>/report.<kind>")
def report(date: str, kind: str):
    """The report that `logbook day` wrote last for this date, as it lies in the job folder."""
    if kind not in KINDS or opened.day_of(date) is None:
        return answers.refuse(Mistake("pages.no-such-page"))
    path = opened.folder().path / "reports" / f"day-{opened.day_of(date).isoformat()}.{kind}"
    if not path.is_file():
        return answers.refuse(Mistake("pages.report-not-made", "", {"date": date}), 404)
    return send_file(path, mimetype=KINDS[kind], as_attachment=kind != "pdf", download_name=path.name)


@screen.get("/package")
def package():
    """The newest closeout package of the reports folder."""
    made = sorted((opened.folder().path / "reports").glob("*.zip"), key=lambda path: path.stat().st_mtime)
    if not made:
        return answers.refuse(Mistake("pages.package-not-made"), 404)
    return send_file(made[-1], mimetype="application/zip", as_attachment=True, download_name=made[-1].name)
