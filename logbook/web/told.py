"""One line a request for whoever runs the server: the route and its answer, never the address that was asked for.

An address can hold a code, a link or words that somebody searched for; its route holds names of variables instead.
"""

from __future__ import annotations

import time

from flask import Flask, g, request

from logbook import running

QUIET = ("static", "health.alive", "health.ready")  # asked for all day long


def install(app: Flask) -> None:
    app.before_request(_begins)
    app.after_request(_ends)


def _begins() -> None:
    g.began = time.monotonic()


def _ends(answer):
    if request.endpoint not in QUIET:
        running.tell(
            "request", method=request.method, route=request.url_rule.rule if request.url_rule else None, status=answer.status_code,
            ms=round(1000 * (time.monotonic() - g.began)), bytes=answer.calculate_content_length(),
            role=g.person.role if g.get("person") else None,
        )  # fmt: skip
    return answer
