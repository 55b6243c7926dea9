"""Cut sheets on a page: choose what to make, give the sizes, see the marks before the knife goes in; print a half sheet.

Everything stands in the address of a form that is only asked, so that a sheet can be sent on and nothing is kept.
`mark` and `run` take the sizes from the schedule; a field that is given too wins over the schedule.
"""

from __future__ import annotations

from flask import Blueprint, Response, g, render_template, request

from logbook import job as jobs
from logbook import air, measure
from logbook.geometry import asked, cut_drawing, cut_text
from logbook.geometry.cut_sheet import CutSheet
from logbook.mistake import Mistake
from logbook.web import answers, opened, secrecy
from logbook.wording import say

screen = Blueprint("cutting", __name__)
NAMES = ("large", "small", "size", "branch", "flat", "set_back", "air", "by", "over", "axis", "turn", "pieces", "throat", "at", "entry", "length", "board", "method")


@screen.get("/layout")
def page():
    given, row = _given()
    job = opened.folder().job
    sheet = _sheet(given, row, job) if _is_asked(given) else None
    wrong = sheet if isinstance(sheet, Mistake) else None
    told = None if sheet is None or wrong else _told(sheet, row.mark if row else "")
    answer = render_template(
        "cutting.html", kinds=asked.KINDS, kind=given.get("kind"), fields=asked.FIELDS.get(given.get("kind"), ()), given=_filled(given, job),
        needed=asked.NEEDED.get(given.get("kind"), ()), choices=asked.CHOICES | {"pieces": asked.PIECES, "board": asked.BOARDS}, sizes=asked.SIZES,
        marks=_marks(job), row=row if not isinstance(row, Mistake) else None, revision=job.revision(_today()), asks=_asks(given), sheet=told,
        air=_air(row, job), slope=[measure.printed(side) for side in job.limit("slope")], wrong=wrong and (wrong.where, cut_text.refusal(wrong, g.language)),
    )  # fmt: skip
    return (answer, 422) if wrong else answer


@screen.get("/layout/drawing.svg")
def drawing():
    given, row = _given()
    sheet = _sheet(given, row, opened.folder().job)
    if isinstance(sheet, Mistake):
        return _refuse(sheet)
    answer = Response(cut_drawing.svg(sheet, g.language), mimetype="image/svg+xml")
    answer.headers["Content-Security-Policy"] = secrecy.FILE_POLICY
    return answer


@screen.get("/layout/sheet.pdf")
def paper():
    """A half-sheet print with a bar to check its size by."""
    from logbook.paper import cut_sheet  # the typesetter: loaded when somebody prints

    given, row = _given()
    sheet = _sheet(given, row, opened.folder().job)
    if isinstance(sheet, Mistake):
        return _refuse(sheet)
    mark = "" if row is None else row.mark
    answer = Response(cut_sheet.pdf(sheet, g.language, mark), mimetype="application/pdf")
    answer.headers["Content-Disposition"] = 'inline; filename="cut-sheet.pdf"'
    return answer


def _refuse(wrong: Mistake):
    error, cure = cut_text.refusal(wrong, g.language)
    return answers.refuse(Mistake("asked.not-drawn", wrong.where, {"error": error, "cure": cure}), 422)


def _given():
    """The fields as asked, and the row of the schedule that they began with (a Mistake where there is no such mark)."""
    fields = {name: ",".join(request.args.getlist(name))[:60] for name in ("kind", *NAMES) if request.args.get(name)}
    mark, run = request.args.get("mark", "").strip()[:80], request.args.get("run", "").strip()[:80] or None
    if not mark:
        return fields, None
    row = opened.folder().job.row(mark, run, _today())
    if row is None:
        return fields, Mistake("layout.not-planned", "mark", {"came": mark})
    planned = asked.of_row(row)
    if planned is None:
        return fields, Mistake("layout.bad-kind", "mark", {"came": row.kind or "?", "kinds": ", ".join(asked.KINDS)})
    if fields.get("kind", planned["kind"]) != planned["kind"]:
        return fields, None  # another kind was chosen: the schedule's sizes are not its own
    return planned | fields, row


def _is_asked(given: dict) -> bool:
    """Whether enough is there to lay out; a kind that was only chosen is not refused for what is still empty."""
    return "laid" in request.args or "mark" in request.args or any(name in request.args for name in NAMES) and "kind" in given


def _sheet(given: dict, row, job: jobs.Job) -> CutSheet | Mistake:
    if isinstance(row, Mistake):
        return row
    return laid_out(given, job)


def laid_out(given: dict, job: jobs.Job) -> CutSheet | Mistake:
    """The sheet of fields, with this job's defaults for what they leave open and this job's limits."""
    return asked.lay_out(given.get("kind", ""), _filled(given, job), job.limit)


def _filled(given: dict, job: jobs.Job) -> dict:
    """The fields with their defaults; the board is what the job says is on the truck."""
    board = dict(job.standing).get("board_thickness")
    offered = asked.DEFAULTS | ({} if board is None else {"board": measure.printed(board)})
    return {name: value for name, value in offered.items() if name in asked.FIELDS.get(given.get("kind", ""), ())} | given


def _asks(given: dict) -> dict:
    """The address of the same sheet as a drawing or a print."""
    run = {name: request.args[name] for name in ("mark", "run") if request.args.get(name)}
    return given | run


def _today():
    """The schedule in force today holds, not one that is only announced."""
    return opened.local_now().date()


def _marks(job: jobs.Job) -> list:
    """The rows of the schedule in force that a cut sheet can be drawn of."""
    plan = job.revision(_today())
    return [] if plan is None else [row for row in plan.rows if row.kind in asked.FIELDS]


def _air(row, job: jobs.Job) -> list[str]:
    """What the row means for the air, in lines; empty where the sizes are somebody's own."""
    return [] if row is None or isinstance(row, Mistake) else air_lines(air.side(row, job.limit), job, g.language)


def air_lines(found: air.AirSide, job: jobs.Job, language: str) -> list[str]:
    lines = []
    for end in found.ends:
        told = {"end": say(f"air.{end.name}", language), "size": " x ".join(map(measure.printed, end.size)), "area": measure.decimal(end.area, 2), "round": f"{end.round:.1f}"}
        if end.velocity is None:
            lines.append(say("air.end-no-flow", language, **told))
        else:
            lines.append(say("air.end", language, fpm=f"{float(end.velocity):.0f}", pressure=f"{end.pressure:.3f}", **told))
    if found.leak is not None:
        lines.append(say("air.leak", language, cfm=f"{found.leak:.1f}", surface=f"{found.surface:.1f}", leakage_class=measure.decimal(job.limit("leakage_class"), 0)))
    lines += [say("air.fast", language, limit=measure.decimal(job.limit("velocity"), 0))] if found.fast else []
    lines += [say("air.flat", language, limit=measure.decimal(job.limit("aspect_ratio"), 1))] if found.flat else []
    return lines


def _told(sheet: CutSheet, mark: str) -> dict:
    return {
        "heading": cut_text.heading(sheet, g.language, mark), "sizes": cut_text.sizes(sheet, g.language), "steps": cut_text.steps(sheet, g.language),
        "stock": cut_text.stock_line(sheet, g.language), "closing": cut_text.closing_line(sheet, g.language), "cautions": cut_text.cautions(g.language),
        "panels": len(sheet.panels), "method": sheet.method,
    }  # fmt: skip
