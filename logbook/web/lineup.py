"""The job on one page: each run with its fittings in order, planned beside logged, and what is missing."""

from __future__ import annotations

from flask import Blueprint, Response, g, render_template, request

from logbook import labels, lineup, measure, store
from logbook.geometry.planned import draw_row
from logbook.mistake import Mistake
from logbook.web import answers, opened, secrecy

screen = Blueprint("lineup", __name__)
SHOWN = 120  # fittings whose rows are drawn without asking for one run


@screen.get("/job")
def page():
    folder = opened.folder()
    plan = folder.job.revision(None)
    every = lineup.lines(plan, store.lineup(folder))
    wanted = request.args.get("run")
    shown = [line for line in every if (line.run or "") == wanted] if wanted is not None else every if sum(len(line.slots) for line in every) <= SHOWN else []
    total = {name: sum(line.counts[name] for line in every) for name in ("planned", "unplanned", *lineup.STATES)}
    return render_template("job.html", lines=every, shown=shown, total=total, planned=plan is not None, revision=plan, states=lineup.STATES, size=_size, wanted=wanted)


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
