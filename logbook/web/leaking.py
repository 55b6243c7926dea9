"""Leak tests: the records as they stand, and a form for one more."""

from __future__ import annotations

import uuid

from flask import Blueprint, g, jsonify, make_response, redirect, render_template, request, url_for

from logbook import measure
from logbook.mistake import Mistake
from logbook.store import people, walked
from logbook.walk import leaks
from logbook.web import answers, asked, opened
from logbook.wording import has, say

screen = Blueprint("leaking", __name__)
FIELDS = ("section", "pressure", "area", "measured", "leakage_class", "instrument", "serial", "tested_on", "calibrated_on", "calibrated_until", "tested_by", "witness", "words")
NEEDED = ("section", "pressure", "area", "measured", "instrument", "tested_on", "tested_by")


@screen.get("/leaks")
def page():
    if not answers.wants_page():
        return jsonify(records=[_document(one) for one in walked.leak_records(opened.folder())])
    return _page()


def _document(one: dict) -> dict:
    told = leaks.told(one)
    return one | {"allowed_cfm": round(told.allowed, 2), "allowed_cfm_per_100_ft2": round(told.per_100, 3), "verdict": told.verdict, "why": told.why}


def _page(refused: Mistake | None = None):
    folder = opened.folder()
    records = walked.leak_records(folder)
    stand = {one["id"] for one in leaks.standing(records)}
    again = next((one for one in records if one["id"] == (request.values.get("instead_of") or "")), None)
    typed = request.form or (_typed(again) if again else {"leakage_class": measure.printed(folder.job.limit("leakage_class"))})
    page = render_template(
        "leaks.html", records=[_told(one, folder.job) | {"stands": one["id"] in stand} for one in reversed(records)], names=people.names(folder.db),
        fields=FIELDS, needed=NEEDED, typed=typed, again=again, refused=refused and _sentences(refused), fresh=request.form.get("id") or str(uuid.uuid4()),
        today=opened.local_now().date().isoformat(),
    )  # fmt: skip
    return make_response(page, answers.status_of(refused) if refused else 200)


def _told(one: dict, job) -> dict:
    """A record with its numbers as people write them."""
    told = leaks.told(one)
    numbers = {name: measure.decimal(leaks.value(one, name)) for name in ("pressure_in_wg", "area_ft2", "measured_cfm", "leakage_class")}
    above = abs(leaks.value(one, "pressure_in_wg")) > job.limit("static_pressure")
    return one | {"told": told, "numbers": numbers, "allowed": f"{told.allowed:.1f}", "per": f"{told.per_100:.2f}", "above": measure.decimal(job.limit("static_pressure")) if above else None}


def _typed(one: dict) -> dict:
    numbers = {field: measure.decimal(leaks.value(one, name), 6) for field, name in (*leaks.NUMBERS, ("leakage_class", "leakage_class"))}
    return {name: one.get(name) or "" for name in FIELDS} | numbers


def _sentences(mistake: Mistake) -> tuple[str, str]:
    values = dict(mistake.values)
    key = f"leaks.{values.get('field')}"
    if has(key, g.language):
        values["field"] = say(key, g.language)
    return answers.sentences(Mistake(mistake.key, mistake.where, values), g.language)


@screen.post("/leaks")
def record():
    """Body: id and the fields of the record; numbers as the trade writes them; `instead_of` names one that it sets right."""
    body = asked.body()
    if isinstance(body, Mistake):
        return answers.refuse(body)
    act = walked.record_leak(opened.folder(), str(body.get("id", "")), body, g.person.id, body["at"])
    if isinstance(act, Mistake):
        return _page(act) if answers.wants_page() else answers.refuse(act)
    if answers.wants_page():
        return redirect(url_for("leaking.page"), 303)
    return make_response(jsonify(_document(act.document)), 200 if act.repeated else 201)
