"""The job folder of this request: opened when first asked for, closed when the answer went out."""

from __future__ import annotations

from datetime import UTC, date, datetime

from flask import Flask, current_app, g

from logbook import store
from logbook.mistake import Broken, Mistake
from logbook.store import JobFolder


def install(app: Flask) -> None:
    app.teardown_appcontext(_close)


def settings():
    return current_app.extensions["settings"]


def folder() -> JobFolder:
    """The open job folder. Broken: it cannot be opened; the answer says what to do (503)."""
    if "folder" not in g:
        found = store.open_folder(settings().folder)
        if isinstance(found, Mistake):
            raise Broken(found)
        g.folder = found
    return g.folder


def _close(_error) -> None:
    found = g.pop("folder", None)
    if found is not None:
        found.close()


def now() -> datetime:
    return datetime.now(UTC)


def local_now() -> datetime:
    """Now, in the job's zone: what people read is job time."""
    return now().astimezone(folder().job.timezone())


def day_of(text: str) -> date | None:
    """A date as ISO 8601 writes it, or None."""
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None
