"""Refusals: one sentence of what was expected and came, one of what to do, in the reader's language.

A script gets `{"error", "cure"}`; a person's browser gets the same two sentences as a page.
"""

from __future__ import annotations

import logging

from flask import Flask, g, jsonify, make_response, render_template, request
from flask_wtf.csrf import CSRFError
from werkzeug.exceptions import HTTPException

from logbook import intake
from logbook.mistake import Broken, Mistake
from logbook.wording import has, say

STATUS = {
    "pages.sign-in-first": 401, "pages.not-for-you": 403, "pages.wrong-sign-in": 401, "pages.wait": 429,
    "pages.form-expired": 400, "pages.not-yours-to-speak": 403, "pages.no-such-page": 404, "pages.no-such-note": 404,
    "pages.no-such-piece": 404, "pages.no-such-file": 404, "pages.code-void": 403, "erasing.sound-gone": 404, "erasing.not-that-name": 422, "erasing.last-keeper": 409, "people.nobody": 404, "pages.bad-body": 400,
    "pages.bad-number": 422, "pages.bad-date": 422, "pages.not-made-yet": 404, "pages.no-such-person": 404,
    "people.bad-name": 422, "people.bad-role": 422, "people.name-taken": 409, "people.bad-password": 422,
    "review.other-edition": 409, "desk.decided-meanwhile": 409, "run.no-such-run": 404, "pages.day-changed": 409,
}  # fmt: skip


def install(app: Flask) -> None:
    app.register_error_handler(CSRFError, _form_expired)
    app.register_error_handler(HTTPException, _of_the_standard)
    app.register_error_handler(Broken, lambda broken: refuse(broken.mistake, status_of(broken.mistake, 503)))
    app.register_error_handler(Exception, _fell_over)


def _form_expired(_error):
    """Nothing is wrong with what was sent: with a fresh token it is taken, so a phone keeps it and sends it again."""
    answer = refuse(Mistake("pages.form-expired"))
    answer.headers["Retry-After"] = "0"
    return answer


def status_of(mistake: Mistake, otherwise: int = 422) -> int:
    return STATUS.get(mistake.key) or intake.STATUS.get(mistake.key) or otherwise


def wants_page() -> bool:
    """A browser asks for HTML by name; scripts and the phone's page do not."""
    kinds = request.accept_mimetypes
    return "text/html" in kinds.values() and kinds["text/html"] >= kinds["application/json"]


def sentences(mistake: Mistake, language: str) -> tuple[str, str]:
    """(error, cure) of a mistake."""
    error, cure = (f"{mistake.key}.{part}" for part in ("error", "cure"))
    values = dict(mistake.values)
    if "rule" in values and wants_page():
        values["rule"] = rule_name(values["rule"], language)
    return say(error, language, **values), say(cure, language, **values) if has(cure) else ""


def rule_name(rule: object, language: str) -> str:
    """What people call a rule; a script keeps the id."""
    return say(f"rules.{rule}.name", language) if has(f"rules.{rule}.name") else str(rule)


def refuse(mistake: Mistake, status: int | None = None):
    """The answer to a request that cannot be done."""
    status = status or status_of(mistake)
    error, cure = sentences(mistake, g.get("language", "en"))
    if wants_page():
        answer = make_response(render_template("refused.html", error=error, cure=cure, status=status), status)
    else:
        answer = make_response(jsonify(error=error, cure=cure), status)
    if status == 401 and not wants_page():
        answer.headers["WWW-Authenticate"] = 'Bearer realm="logbook"'
    if status in (429, 503, 507):
        answer.headers["Retry-After"] = str(mistake.values.get("seconds", 60))
    return answer


def _of_the_standard(error: HTTPException):
    key = {404: "pages.no-such-page", 405: "pages.wrong-method", 413: "pages.too-big"}.get(error.code, "pages.bad-body")
    answer = refuse(Mistake(key), error.code)
    if error.code == 405 and getattr(error, "valid_methods", None):
        answer.headers["Allow"] = ", ".join(error.valid_methods)
    return answer


def _fell_over(error: Exception):
    logging.getLogger("logbook").error("request-failed", exc_info=error, extra={"numbers": {"route": request.endpoint}})
    return refuse(Mistake("pages.fell-over"), 500)
