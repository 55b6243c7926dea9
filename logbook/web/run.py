"""One run as it was spoken: drawn, then told piece by piece, with the odd joints and what is missing."""

from __future__ import annotations

from flask import Blueprint, Response, g, render_template, request

from logbook import labels, store
from logbook.geometry import asked, run_drawing
from logbook.mistake import Mistake
from logbook.runs import line
from logbook.schedule import bare_run
from logbook.web import answers, opened, secrecy

screen = Blueprint("run", __name__)


@screen.get("/run")
def page():
    """`?run=` names the run as people say it."""
    found = _line()
    if isinstance(found, Mistake):
        return answers.refuse(found)
    told = []
    for at, stop in enumerate(found.stops):
        joint = run_drawing.joint_words(found, at - 1, g.language) if at else ""
        told.append({"stop": stop, "lines": run_drawing.words(stop, g.language), "joint": joint, "odd": at > 0 and found.joints[at - 1].state in run_drawing.ODD})
    every = [one for stop in found.stops for one in (stop, *stop.beside)]
    logged = sum(one.logged for one in every)
    job = opened.folder().job
    rows = [] if job.revision() is None else job.revision().by_run.get(bare_run(found.run), ())
    of_run = job.run(found.run)
    systems = dict.fromkeys(one for one in (of_run and of_run.system, *(row.system for row in rows)) if one)
    return render_template(
        "run.html", line=found, rows=told, systems=", ".join(systems), revision=job.revision(), name=labels.kind,
        in_words=run_drawing.told(found, g.language), absent=len(every) - logged, logged=logged, cut=asked.KINDS,
    )  # fmt: skip


@screen.get("/run/drawing.svg")
def drawing():
    found = _line()
    if isinstance(found, Mistake):
        return answers.refuse(found)
    answer = Response(run_drawing.draw(found, g.language).svg, mimetype="image/svg+xml")
    answer.headers["Content-Security-Policy"] = secrecy.FILE_POLICY
    return answer


def _line() -> run_drawing.Line | Mistake:
    run, folder = request.args.get("run", "").strip(), opened.folder()
    found = line.lay_out(folder.job, store.run_pieces(folder, run), run) if bare_run(run) else None
    return Mistake("run.no-such-run", "run", {"came": run[:40]}) if found is None or not found.stops else found
