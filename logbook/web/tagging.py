"""Tags to print: the marks of the schedule, a run at a time or all, as a sheet to cut out."""

from __future__ import annotations

from flask import Blueprint, Response, g, render_template, request

from logbook.mistake import Mistake
from logbook.photos import tags
from logbook.web import answers, opened
from logbook.wording import say

screen = Blueprint("tagging", __name__)
MOST = 600  # tags of one print: a few seconds of typesetting


@screen.get("/tags")
def page():
    job = opened.folder().job
    plan = job.revision()
    rows = () if plan is None else plan.rows
    counts: dict[str, int] = {}
    for row in rows:
        counts[row.run or ""] = counts.get(row.run or "", 0) + 1
    return render_template("tags.html", counts=counts, total=len(rows), most=MOST, on=job.tags, revision=plan, twice=tags.said_twice((row.mark, row.run) for row in rows))


@screen.get("/tags/sheet.pdf")
def sheet():
    """`?run=` one run (empty: the rows without one), `?mark=` single marks; neither: all."""
    from logbook.paper import tags as paper  # the typesetter: loaded when somebody prints

    job, run = opened.folder().job, request.args.get("run")
    plan = job.revision()
    wanted = [] if plan is None else tags.of_schedule(plan.rows, run, request.args.getlist("mark"))
    if not wanted:
        why = say(f"tags.no-marks.{'why-no-schedule' if plan is None else 'why-none-named'}", g.language)
        return answers.refuse(Mistake("tags.no-marks", "run", {"why": why}), 404)
    if len(wanted) > MOST:
        return answers.refuse(Mistake("tags.too-many", "run", {"count": len(wanted), "most": MOST}))
    answer = Response(paper.pdf(job.id, job.name, wanted, g.language), mimetype="application/pdf")
    answer.headers["Content-Disposition"] = 'inline; filename="tags.pdf"'
    return answer
