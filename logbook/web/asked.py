"""The body of an act: JSON from a phone or script, or the fields of a form, with its time read."""

from __future__ import annotations

from flask import request

from logbook import intake
from logbook.mistake import Mistake


def is_form() -> bool:
    return request.mimetype in ("application/x-www-form-urlencoded", "multipart/form-data")


def body(whole: tuple[str, ...] = ()) -> dict | Mistake:
    """The fields of an act with `at` as an aware datetime or None. `whole` names fields that are whole numbers."""
    if is_form():
        read = request.form.to_dict()
        read.pop("csrf_token", None)
    else:
        try:
            read = request.get_json(silent=True)
        except RecursionError:  # brackets in brackets
            read = None
        if not isinstance(read, dict):
            return Mistake("pages.bad-body")
    at = read.get("at")
    if at is None or (at == "" and is_form()):
        at = None
    else:
        at = intake.moment(at, "at")
        if isinstance(at, Mistake):
            return at
    for name in whole:
        given = read.get(name, 0)
        if isinstance(given, str) and given.isdecimal() and len(given) < 5:
            given = int(given)
        if type(given) is not int or given < 0:
            return Mistake("pages.bad-number", name, {"field": name, "most": 999, "came": intake.shown(given)})
        read[name] = given
    return read | {"at": at}
