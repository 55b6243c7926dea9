"""The installable page: its shell, its service worker, its words, and the plan of pieces to tap.

The shell holds no data and needs no sign-in, so that the phone can keep it and open it without signal.
"""

from __future__ import annotations

import json
from hashlib import sha256
from importlib.resources import files

from flask import Blueprint, Response, g, jsonify, render_template, request

from logbook import facts
from logbook.web import opened, sheets
from logbook.wording import LANGUAGES, texts

screen = Blueprint("phone", __name__)
# what the phone keeps to open without signal, in the order it is asked for
KEPT = (
    "/phone", "/manifest.webmanifest", "/static/logbook.css", "/static/phone.css", "/static/sign.svg",
    *(f"/static/{part}.js" for part in (
        "phone", "page", "outbox", "asking", "hands", "making", "pictures", "recorder", "sending", "told", "setting-right", "lists", "answer", "sheets",
        "qr/decode", "qr/index",  # a library, loaded with the first photo
    )),
    "/static/face/atkinson-hyperlegible-next-latin-400-normal.woff2",
    "/static/face/atkinson-hyperlegible-next-latin-700-normal.woff2",
    *(f"/phone/words/{language}.json" for language in LANGUAGES),
)  # fmt: skip
# What an installer says of each kind, in the order he would: the list that ticks off. Facts of the table by name.
TO_SAY = {
    "straight": ("mark", "run", "inlet_size", "length"),
    "transition": ("mark", "run", "inlet_size", "outlet_size", "side_moves", "groove_step"),
    "offset": ("mark", "run", "inlet_size", "offset_by", "length"),
    "elbow": ("mark", "run", "inlet_size", "turn_angle", "vanes"),
    "tee": ("mark", "run", "inlet_size", "branch_size"),
    "branch": ("mark", "run", "inlet_size", "branch_size"),
    "wye": ("mark", "run", "inlet_size", "branch_size", "turn_angle"),
    "end_cap": ("mark", "run", "inlet_size"),
    "collar": ("mark", "run", "collar_diameter", "tabs_bent"),
    "plenum": ("mark", "run", "inlet_size"),
    "hanger": ("run", "hanger_spacing"),
    "equipment_connection": ("mark", "run", "screw_spacing", "washer_size"),
    "damper_sleeve": ("mark", "run", "screw_spacing", "washer_size"),
    "repair": ("mark", "run", "facing_damage", "damage_width", "repair_method"),
}
CLOSED = ("stapled", "staple_spacing", "taped", "rubbed_down")
NOT_CLOSED_SO = ("hanger", "equipment_connection", "damper_sleeve", "access_door", "register", "repair")


@screen.get("/phone")
def shell():
    return _kept_short(Response(render_template("phone.html")))


@screen.get("/sw.js")
def worker():
    """The service worker, from the root so that it may answer for every page; its number follows the content."""
    source = files("logbook.web").joinpath("static/worker.js").read_text(encoding="utf-8")
    kept = json.dumps(KEPT)
    body = source.replace("/*KEPT*/ []", kept).replace("/*EDITION*/", edition())
    return _kept_short(Response(body, mimetype="text/javascript"))


def edition() -> str:
    """Changes when any shipped file of the phone changes."""
    digest = sha256()
    for name in ("worker.js", *(path.removeprefix("/static/") for path in KEPT if path.startswith("/static/"))):
        digest.update(files("logbook.web").joinpath("static", *name.split("/")).read_bytes())
    digest.update(files("logbook.web").joinpath("templates/phone.html").read_bytes())
    for language in LANGUAGES:
        digest.update(_words(language).encode())
    return digest.hexdigest()[:16]


@screen.get("/manifest.webmanifest")
def manifest():
    language = g.language
    own = texts(language)
    body = {
        "name": own["pages.name"], "short_name": own["phone.short-name"], "lang": language, "id": "/phone",
        "start_url": "/phone", "scope": "/", "display": "standalone", "orientation": "portrait",
        "background_color": "#f4f1ea", "theme_color": "#1b2733",
        "icons": [
            {"src": "/static/sign-192.png", "sizes": "192x192", "type": "image/png"},
            {"src": "/static/sign-512.png", "sizes": "512x512", "type": "image/png", "purpose": "any maskable"},
            {"src": "/static/sign.svg", "sizes": "any", "type": "image/svg+xml"},
        ],
    }  # fmt: skip
    return _kept_short(Response(json.dumps(body, ensure_ascii=False), mimetype="application/manifest+json"))


@screen.get("/phone/words/<language>.json")
def words(language: str):
    """Every text that the phone's page prints, of one language."""
    return _kept_short(Response(_words(language if language in LANGUAGES else LANGUAGES[0]), mimetype="application/json"))


def _words(language: str) -> str:
    own = {key: text for key, text in texts(language).items() if key.startswith(("phone.", "facts."))}
    own |= {key: text for key, text in texts(language).items() if key.startswith("rules.") and key.endswith(".name")}
    return json.dumps(own, ensure_ascii=False, sort_keys=True)


@screen.get("/phone/plan")
def plan():
    """The schedule in force, what each kind must say, and the token of its cut sheets: `{"rows": [{mark, run, kind}], "say": {kind: [facts]}, "sheets"}`."""
    revision = opened.folder().job.revision(opened.local_now().date())
    rows = [] if revision is None else [{"mark": row.mark, "run": row.run, "kind": row.kind} for row in revision.rows]
    return jsonify(rows=rows, say={kind: to_say(kind) for kind in facts.KINDS}, shapes=_shapes(), sheets=sheets.token(opened.folder().job))


def to_say(kind: str) -> list[str]:
    closed = () if kind in NOT_CLOSED_SO else CLOSED
    return ["kind", *TO_SAY.get(kind, ("mark", "run")), *closed, *(() if kind == "hanger" else ("photo",))]


def _shapes() -> dict:
    """Shape, unit and choices of every fact, for the form that sets one right by a tap."""
    return {row.name: {"shape": row.shape, "unit": row.unit, "choices": row.values} for row in facts.FACTS}


def _kept_short(answer: Response) -> Response:
    """May be kept, must be asked again: a phone that has signal gets the newest."""
    answer.headers["Cache-Control"] = "no-cache"
    answer.headers["Vary"] = "Accept-Language, Cookie"
    answer.add_etag()
    return answer.make_conditional(request)
