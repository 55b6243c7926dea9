"""The job on one page: each run with its fittings in order, planned beside logged, and what is missing."""

from __future__ import annotations

from flask import Blueprint, Response, g, render_template, request

from logbook import air, labels, lineup, measure, store
from logbook.geometry.planned import draw_row
from logbook.mistake import Mistake
from logbook.web import answers, opened, secrecy
from logbook.web.cutting import air_lines

screen = Blueprint("lineup", __name__)
SHOWN = 120  # fittings whose rows are drawn without asking for one run


@screen.get("/job")
def page():
    folder = opened.folder()
    plan = folder.job.revision(None)
    wanted = request.args.get("run")
    every = lineup.lines(plan, *store.lineup(folder, lineup.planned_marks(plan), wanted, SHOWN))
    shown = [line for line in every if (line.run or "") == wanted] if wanted is not None else every if sum(line.size for line in every) <= SHOWN else []
    total = {name: sum(line.counts[name] for line in every) for name in ("planned", "unplanned", *lineup.STATES)}
    return render_template("job.html", lines=every, shown=shown, total=total, planned=plan is not None, revision=plan, states=lineup.STATES, size=_size, wanted=wanted, **_air(plan, folder.job))


def _air(plan, job) -> dict:
    """The rows of the schedule that are faster or flatter than the job's limits, and how many say no airflow."""
    sides = [(row, air.side(row, job.limit)) for row in (() if plan is None else plan.rows)]
    return {
        "beyond": [(row, air_lines(found, job, g.language)) for row, found in sides if found.fast or found.flat],
        "no_flow": sum(row.airflow is None and bool(found.ends) for row, found in sides),
        "air_limits": {"fpm": measure.decimal(job.limit("velocity"), 0), "ratio": measure.decimal(job.limit("aspect_ratio"), 1)},
    }


def _size(row) -> str:
    """The sizes of a row of the schedule as people read them."""
    ends = [size for size in (row.inlet, row.outlet) if size] if row else []
    return " › ".join(labels.value("inlet_size", [measure.in_json(side) for side in size], [str(side) for side in size], g.language) for size in ends)


@screen.get("/job/planned.svg")
def planned():
    """A row of the schedule, drawn as planned."""
    plan = opened.folder().job.revision(None)
    row = plan.row(request.args.get("mark", ""), request.args.get("run") or None) if plan else None
    if row is None:
        return answers.refuse(Mistake("pages.no-such-piece"))
    answer = Response(draw_row(row, g.language, opened.folder().job.limit("slope")).svg, mimetype="image/svg+xml")
    answer.headers["Content-Security-Policy"] = secrecy.FILE_POLICY
    return answer
