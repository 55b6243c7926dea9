"""A job folder with one person of each role, and clients that are signed in: for the tests of the web."""

from __future__ import annotations

import io
import re
import uuid
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from logbook import store, worker
from logbook.hearing import scripted
from logbook.store import people
from logbook.web import create_app

PASSWORD = "seven grey gulls"
NAMES = {"installer": "Rosa Quint", "lead": "Ada Fenn", "contractor": "Moss Pike", "keeper": "Una Vale"}
PAGE = {"Accept": "text/html"}


@dataclass(frozen=True)
class Settings:
    folder: Path
    state: Path
    address: str = "http://localhost"
    secure: bool = False
    upload_limit: int = 20_000_000


@dataclass
class Desk:
    """`keys` are Bearer keys by role; `ids` the people."""

    app: object
    settings: Settings
    keys: dict[str, str]
    ids: dict[str, str]

    def folder(self):
        return store.open_folder(self.settings.folder)

    def browser(self, role: str | None = None):
        """A client; signed in by password where a role is named."""
        client = self.app.test_client()
        if role:
            answer = client.post(
                "/enter",
                data={"name": NAMES[role], "password": PASSWORD, "csrf_token": token(client, "/enter")},
                headers=PAGE,
            )
            assert answer.status_code == 303, answer.text
        return client

    def by_key(self, role: str, method: str, path: str, **more):
        headers = {"Authorization": f"Bearer {self.keys[role]}"} | more.pop("headers", {})
        return self.app.test_client().open(path, method=method, headers=headers, **more)

    def hand_in(self, role: str = "installer", **fields):
        return self.by_key(role, "POST", "/notes", data=note_form(**fields))


def open_desk(tmp_path: Path) -> Desk:
    settings = Settings(tmp_path / "job", tmp_path / "state")
    folder = store.open_folder(settings.folder, create=True)
    now = datetime.now(UTC)
    hashed = people.hashed(PASSWORD)
    keys, ids = {}, {}
    with folder, store.writing(folder) as db:
        for role, name in NAMES.items():
            person = people.add(db, name, role, now)
            people.keep_password(db, person.id, hashed)
            ids[role] = person.id
            _, keys[role] = people.give_device(db, person.id, "script", "test", now)
    return Desk(create_app(settings), settings, keys, ids)


def note_form(**fields) -> dict:
    """The fields of a typed note; `audio` and `photo` are lists of bytes."""
    form = {"id": str(uuid.uuid4()), "spoken_at": "2026-10-14T10:00:00-05:00"}
    if "audio" not in fields:
        form["text"] = "Straight seven on run two, eighteen by twelve, stapled every two, taped, rubbed down."
    for name in ("audio", "photo"):
        if name in fields:
            form[name] = [(io.BytesIO(part), f"{name}-{at}") for at, part in enumerate(fields.pop(name))]
    return form | fields


def token(client, path: str) -> str:
    """The CSRF token of a form on a page."""
    page = client.get(path, headers=PAGE)
    return re.search(r'name="csrf_token" value="([^"]+)"', page.text).group(1)


def work(desk) -> None:
    """Everything that waits is read and judged, as the worker of the server does."""
    folder = desk.folder()
    bench = worker.Bench(lambda: scripted.make(None))
    with folder:
        while any(worker.work_once(folder, bench)):
            pass


def piece_of(desk, mark: str) -> str:
    with desk.folder() as folder:
        return folder.db.execute("SELECT id FROM pieces WHERE mark = ? AND gone = 0", [mark]).fetchone()[0]


def finding(desk, mark: str, rule: str) -> dict:
    with desk.folder() as folder:
        found = store.piece_document(folder, piece_of(desk, mark), "en")["findings"]
    return next(one for one in found if one["rule"] == rule)
