"""Which language this reader reads: pressed, else his own, else what his browser asks for."""

from __future__ import annotations

from flask import Flask, g, request

from logbook.wording import LANGUAGES

COOKIE = "language"
YEAR = 365 * 24 * 3600


def install(app: Flask) -> None:
    app.before_request(_first_guess)


def _first_guess() -> None:
    """Before anybody is known: the address, the cookie, the browser."""
    pressed = request.args.get("language") or request.cookies.get(COOKIE)
    g.pressed_language = pressed if pressed in LANGUAGES else None
    g.language = g.pressed_language or request.accept_languages.best_match(LANGUAGES) or LANGUAGES[0]


def of_person(language: str | None) -> None:
    """A known person's language counts where nothing was pressed on this device."""
    if g.pressed_language is None and language in LANGUAGES:
        g.language = language


def remember(answer, language: str):
    """Keeps the press on this device for a year."""
    answer.set_cookie(COOKIE, language, max_age=YEAR, samesite="Lax", secure=request.is_secure, httponly=False)
    return answer
