"""The headers on every answer, and the secret that signs cookies.

The policy lets a page load from this server alone: no other place, no inline script, no inline style. No HSTS:
a local name behind an own authority must stay reachable when the authority changes.
"""

from __future__ import annotations

import os
import secrets
from pathlib import Path

from flask import Flask, request

POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; media-src 'self' blob:; "
    "font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self'; "
    "base-uri 'none'; frame-ancestors 'none'"
)
# what people handed in is shown as a picture or played, never run: not even if a browser is fooled about its kind
FILE_POLICY = "default-src 'none'; style-src 'unsafe-inline'; sandbox; frame-ancestors 'none'"
HEADERS = {
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
    "Referrer-Policy": "same-origin",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "microphone=(self), camera=(self), geolocation=(self), screen-wake-lock=(self), payment=(), usb=()",
}
SECRET = "cookie.key"


def install(app: Flask) -> None:
    app.after_request(_headers)


def _headers(answer):
    for name, value in HEADERS.items():
        answer.headers[name] = value
    answer.headers.setdefault("Content-Security-Policy", POLICY)
    if request.endpoint != "static":
        answer.headers.setdefault("Cache-Control", "no-store")
    return answer


def cookie_secret(state: Path) -> bytes:
    """32 random bytes kept in the state folder (0700), made at first use; two starts at once agree on one."""
    state.mkdir(mode=0o700, parents=True, exist_ok=True)
    path = state / SECRET
    try:
        handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    except FileExistsError:
        return path.read_bytes()
    with os.fdopen(handle, "wb") as file:
        file.write(secrets.token_bytes(32))
        file.flush()
        os.fsync(file.fileno())
    return path.read_bytes()
