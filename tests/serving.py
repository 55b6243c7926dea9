"""A real `logbook serve` with TLS and its own worker (prepared transcripts), and clients that trust its authority alone."""

from __future__ import annotations

import hashlib
import http.client
import json
import os
import signal
import socket
import ssl
import subprocess
import sys
import threading
import time
import uuid
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path

from logbook import store
from logbook.store import people
from logbook.web import authority

HERE = Path(__file__).parent
NAMES = {"installer": "Rosa Quint", "other": "Ivo Lark", "lead": "Ada Fenn", "contractor": "Moss Pike", "keeper": "Una Vale"}
SAID = "Straight seven on run two, eighteen by twelve, stapled every two, taped with 181A-P, rubbed down."
PATIENCE = 480  # seconds until a test gives up waiting for the worker


@dataclass
class Served:
    home: Path
    port: int = 0
    keys: dict[str, str] = field(default_factory=dict)
    ids: dict[str, str] = field(default_factory=dict)
    process: subprocess.Popen | None = None
    trust: ssl.SSLContext | None = None

    @property
    def job(self) -> Path:
        return self.home / "job"

    @property
    def prepared(self) -> Path:
        return self.home / "prepared"

    @property
    def log(self) -> Path:
        return self.home / "server.log"

    @property
    def host(self) -> str:
        return f"localhost:{self.port}"

    def start(self, engine: str = "scripted") -> Served:
        command = [sys.executable, "-m", "logbook", "serve", "--folder", self.job, "--port", str(self.port), "--tls", "--name", "localhost", "--engine", engine, "--prepared", self.prepared]
        more = {"PYTHONPATH": str(HERE.parent), "PYTHONUNBUFFERED": "1", "XDG_STATE_HOME": str(self.home / "state")}
        with open(self.log, "ab") as log:
            self.process = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=log, env=os.environ | more)
        assert self.process.stdout.readline(), self.log.read_text()
        from logbook.settings import state_of

        os.environ["XDG_STATE_HOME"], before = str(self.home / "state"), os.environ.get("XDG_STATE_HOME")
        self.trust = ssl.create_default_context(cafile=str(authority.path(state_of(self.job))))
        os.environ.pop("XDG_STATE_HOME") if before is None else os.environ.update(XDG_STATE_HOME=before)
        return self

    def stop(self) -> int:
        self.process.send_signal(signal.SIGTERM)
        code = self.process.wait(60)
        self.process.stdout.close()
        return code

    def worker(self) -> int | None:
        """The process that hears beside the server."""
        for task in Path(f"/proc/{self.process.pid}/task").iterdir():
            for pid in (task / "children").read_text().split():
                return int(pid)
        return None

    def line(self, timeout: float = 30) -> ssl.SSLSocket:
        """A bare connection, for what no client library would send."""
        return self.trust.wrap_socket(socket.create_connection(("127.0.0.1", self.port), timeout), server_hostname="localhost")

    def connection(self) -> http.client.HTTPSConnection:
        return http.client.HTTPSConnection("localhost", self.port, context=self.trust, timeout=60)

    def ask(self, method: str, path: str, body: bytes | None = None, who: str | None = "installer", *, over=None, **headers: str):
        """(status, headers, body) on a connection of its own, or on `over`."""
        line = over or self.connection()
        told = {"Accept": "application/json"} | ({"Authorization": f"Bearer {self.keys[who]}"} if who else {}) | {name.replace("_", "-"): value for name, value in headers.items()}
        line.putrequest(method, path, skip_host="Host" in told, skip_accept_encoding=True)
        for name, value in told.items():
            line.putheader(name, value)
        if body is not None:
            line.putheader("Content-Length", str(len(body)))
        line.endheaders(body)
        answer = line.getresponse()
        came = answer.status, answer.headers, answer.read()
        if over is None:
            line.close()
        return came

    def hand_in(self, who: str = "installer", parts=(), over=None, **fields: str):
        """`parts`: (field, file name, declared type, bytes). A note with words unless it has sound. (status, id, body)."""
        fields = {"id": str(uuid.uuid4()), "spoken_at": "2026-10-14T10:00:00-05:00"} | fields
        if "text" not in fields and not any(part[0] == "audio" for part in parts):
            fields["text"] = SAID
        edge, body = uuid.uuid4().hex, b""
        for name, value in fields.items():
            body += f'--{edge}\r\nContent-Disposition: form-data; name="{name}"\r\n\r\n'.encode() + value.encode("utf-8", "surrogatepass") + b"\r\n"
        for name, called, kind, data in parts:
            quoted = called.replace("\\", "\\\\").replace('"', '\\"')
            body += f'--{edge}\r\nContent-Disposition: form-data; name="{name}"; filename="{quoted}"\r\nContent-Type: {kind}\r\n\r\n'.encode() + data + b"\r\n"
        body += f"--{edge}--\r\n".encode()
        status, _, told = self.ask("POST", "/notes", body, who, over=over, Content_Type=f"multipart/form-data; boundary={edge}")
        return status, fields["id"], told

    def prepare(self, sound: bytes, words: str = SAID) -> None:
        """What the prepared ears hear in this sound."""
        (self.prepared / f"{hashlib.sha256(sound).hexdigest()}.txt").write_text(words, encoding="utf-8")

    def note(self, id: str, who: str = "lead", over=None) -> dict:
        status, _, body = self.ask("GET", f"/notes/{id}", who=who, over=over)
        assert status == 200, (status, body)
        return json.loads(body)

    def settled(self, ids, also=lambda note: True) -> dict[str, dict]:
        """The notes once the worker is through with them."""
        found, until, line, pause = {}, time.monotonic() + PATIENCE, self.connection(), threading.Event()
        for id in ids:
            while True:
                found[id] = self.note(id, over=line)
                if found[id]["state"] in ("answered", "unheard") and not found[id].get("reckoning") and also(found[id]):
                    break
                assert time.monotonic() < until, (id, found[id]["state"], self.log.read_text()[-2000:])
                pause.wait(0.1)
        line.close()
        return found


def lay(home: Path) -> Served:
    """A job with people, each with a key; not started yet."""
    served = Served(home)
    served.prepared.mkdir(parents=True)
    now = datetime.now(UTC)
    with store.open_folder(served.job, create=True) as folder, store.writing(folder) as db:
        for who, name in NAMES.items():
            person = people.add(db, name, "installer" if who == "other" else who, now)
            served.ids[who] = person.id
            _, served.keys[who] = people.give_device(db, person.id, "script", "test", now)
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        served.port = free.getsockname()[1]
    return served
