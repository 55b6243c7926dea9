"""The pages and the HTTP interface: `create_app(settings)` joins everything, once.

A file a screen; `guard.py` is the only place that checks who may do what. Pages are rendered here and work
without JavaScript, except speaking into the page; `static/phone.js` is the installable page of the phone.
"""

from __future__ import annotations

from datetime import timedelta

from flask import Flask
from flask_wtf import CSRFProtect

from logbook.web import (
    answers, closing, compared, cutting, days, desk, doors, entry, forgetting, guard, handing, health, holding, leaking, lineup, log, opened, paper, pencil, phone, piece,
    rules, run, searching, secrecy, sheets, staff, tagging, told, tongue, walking,
)  # fmt: skip

SCREENS = (handing, log, entry, piece, desk, holding, days, compared, paper, lineup, run, cutting, tagging, walking, leaking, closing, rules, searching, staff, forgetting, doors, phone, sheets, health)


def create_app(settings) -> Flask:
    """The application over one job folder.

    `settings` has `.folder`, `.state` (paths), `.address`, `.secure`, `.upload_limit`. The state folder and its
    cookie secret are made where they are missing.
    """
    app = Flask(__name__, static_folder="static", static_url_path="/static")
    app.config.update(
        SECRET_KEY=secrecy.cookie_secret(settings.state),
        SESSION_COOKIE_NAME="logbook",
        SESSION_COOKIE_HTTPONLY=True,
        SESSION_COOKIE_SAMESITE="Lax",
        SESSION_COOKIE_SECURE=bool(settings.secure),
        PERMANENT_SESSION_LIFETIME=timedelta(days=400),
        MAX_CONTENT_LENGTH=settings.upload_limit,
        MAX_FORM_MEMORY_SIZE=2_000_000,  # the fields of a note, not its files
        MAX_FORM_PARTS=200,
        WTF_CSRF_CHECK_DEFAULT=False,  # the guard asks, so that keys of scripts need no token
        WTF_CSRF_TIME_LIMIT=None,  # a page may lie open all shift; the token dies with the session
        SEND_FILE_MAX_AGE_DEFAULT=3600,
    )
    app.json.sort_keys = False
    app.url_map.merge_slashes = False  # no redirect, which would repeat the host that the request named
    app.extensions["settings"] = settings
    CSRFProtect(app)
    told.install(app)
    opened.install(app)
    tongue.install(app)
    guard.install(app)
    pencil.install(app)
    answers.install(app)
    secrecy.install(app)
    for screen in SCREENS:
        app.register_blueprint(screen.screen)
    return app


def first_link(settings) -> str | None:
    """The address of the one-time page where the first keeper signs in; None where there is a keeper.

    Each call makes the link before it void: whoever can start the server can read it.
    """
    return doors.first_link(settings)
