"""The cut sheets of the schedule for a phone that goes where there is no signal: each with its words and its drawing.

Rows that ask for the same piece share one sheet. The phone asks again only where the token of `/phone/plan` is another:
the job's limits or schedule changed, or what lays out and words a sheet did.
"""

from __future__ import annotations

import json
from hashlib import sha256
from importlib.resources import files

from flask import Blueprint, Response, g, jsonify, request

from logbook import __version__
from logbook import job as jobs
from logbook.geometry import asked, cut_drawing, cut_text
from logbook.geometry.cut_sheet import CutSheet
from logbook.job import Job
from logbook.mistake import Mistake
from logbook.schedule import Revision, Row
from logbook.web import cutting, opened
from logbook.wording import LANGUAGES, say, texts

screen = Blueprint("sheets", __name__)
MOST = 600  # sheets that differ: some 2 MB on the phone; what is beyond is told as left out
HEADS = ("method", "numbers", "steps-heading", "stock-heading", "cautions-heading", "source-note", "deferral")


@screen.get("/phone/sheets")
def kept():
    """In the language asked for, `{"token", "revision", "rows": [{mark, run, kind, sheet | why, cure}], "sheets": […]}`."""
    language = request.args.get("language") if request.args.get("language") in LANGUAGES else g.language
    job, plan = opened.folder().job, _in_force()
    own = token(job)
    if request.if_none_match.contains(own):
        return Response(status=304, headers={"ETag": f'"{own}"'})
    rows, sheets = _of_rows(() if plan is None else plan.rows, job, language)
    answer = jsonify(
        token=own, revision=None if plan is None else plan.name, rows=rows, sheets=sheets,
        heads={name: say(f"layout.{name}", language) for name in HEADS}, cautions=cut_text.cautions(language),
    )  # fmt: skip
    answer.headers["ETag"] = f'"{own}"'
    return answer


def _in_force() -> Revision | None:
    return opened.folder().job.revision(opened.local_now().date())


def token(job: Job) -> str:
    """Another one where any sheet could be another: the job, the revision in force, the geometry, the words."""
    plan = _in_force()
    digest = sha256(f"{__version__} {None if plan is None else plan.name} ".encode())
    digest.update(json.dumps(jobs.canonical(job), sort_keys=True, default=str).encode())
    for file in sorted(files("logbook.geometry").iterdir(), key=lambda one: one.name):
        if file.name.endswith(".py"):
            digest.update(file.read_bytes())
    for language in LANGUAGES:
        digest.update(json.dumps([text for key, text in texts(language).items() if key.startswith("layout.")], sort_keys=True).encode())
    return digest.hexdigest()[:16]


def _of_rows(rows: tuple[Row, ...], job: Job, language: str) -> tuple[list[dict], list[dict]]:
    """Every row of a kind that is laid out, with the number of its sheet, or why there is none; and the sheets."""
    told: list[dict] = []
    sheets: list[dict] = []
    numbers: dict[tuple, int] = {}
    for row in rows:
        fields = asked.of_row(row)
        if fields is None:
            continue
        own = {"mark": row.mark, "run": row.run, "kind": row.kind}
        key = tuple(sorted(fields.items()))
        if key not in numbers and len(sheets) < MOST:
            sheet = cutting.laid_out(fields, job)
            if isinstance(sheet, Mistake):
                why, cure = cut_text.refusal(sheet, language)
                told.append(own | {"why": why, "cure": cure})
                continue
            numbers[key] = len(sheets)
            sheets.append(_told(sheet, language))
        told.append(own | ({"sheet": numbers[key]} if key in numbers else {"why": say("phone.cut-left-out", language), "cure": ""}))
    return told, sheets


def _told(sheet: CutSheet, language: str) -> dict:
    return {
        "heading": cut_text.heading(sheet, language), "method": say(f"layout.methods.{sheet.method}", language),
        "sizes": cut_text.sizes(sheet, language), "steps": cut_text.steps(sheet, language),
        "stock": [cut_text.stock_line(sheet, language), cut_text.closing_line(sheet, language)],
        "drawing": cut_drawing.svg(sheet, language),
    }  # fmt: skip
