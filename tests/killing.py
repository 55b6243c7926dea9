"""Phones that hand in while the server and its worker are killed at random moments; what was acknowledged is kept here.

The server is the ordinary `logbook serve` with its own worker; the transcripts are prepared. A phone sends a note until
it is acknowledged, as a real one does; some notes it sends once only, whatever comes back.
"""

from __future__ import annotations

import hashlib
import http.client
import json
import os
import random
import select
import signal
import socket
import sqlite3
import subprocess
import sys
import threading
import uuid
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from pathlib import Path

from handing import picture, tone

from logbook import store
from logbook.mistake import Mistake
from logbook.store import people

HERE = Path(__file__).parent
MORNING = datetime(2026, 10, 14, 12, tzinfo=UTC)

@dataclass
class Sent:
    """One note: words typed or in a sound, with or without a photo."""

    id: str
    mark: int
    text: str | None
    sound: bytes | None
    photo: bytes | None

    @property
    def digests(self) -> dict:
        """What the receipt must say, computed here."""
        each = {"audio": self.sound, "photos": self.photo}
        told = {name: [] if data is None else [hashlib.sha256(data).hexdigest()] for name, data in each.items()}
        return told | {"text": None if self.text is None else hashlib.sha256(self.text.encode()).hexdigest()}


@dataclass
class Site:
    """One job folder under load. `acknowledged` by id; `given_up` were sent once and not acknowledged."""

    home: Path
    rng: random.Random
    key: str = ""
    port: int = 0
    acknowledged: dict[str, Sent] = field(default_factory=dict)
    given_up: dict[str, Sent] = field(default_factory=dict)
    unexpected: list = field(default_factory=list)
    kills: dict[str, int] = field(default_factory=lambda: {"server": 0, "worker": 0, "both": 0})
    repeats: int = 0
    heard_then: int = 0  # kills at a moment when a worker held notes that it was hearing
    marks: int = 0
    left_alone: list[int] = field(default_factory=list)  # workers whose server was killed; they end by themselves
    sending: threading.Event = field(default_factory=threading.Event)
    lock: threading.Lock = field(default_factory=threading.Lock)

    @property
    def job(self) -> Path:
        return self.home / "job"

    @property
    def prepared(self) -> Path:
        return self.home / "prepared"


def lay(home: Path, seed: int) -> Site:
    site = Site(home, random.Random(seed))
    site.prepared.mkdir()
    with store.open_folder(site.job, create=True) as folder, store.writing(folder) as db:
        now = datetime.now(UTC)
        person = people.add(db, "Rosa Quint", "installer", now)
        _, site.key = people.give_device(db, person.id, "script", "test", now)
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        site.port = free.getsockname()[1]
    return site


def start(site: Site) -> subprocess.Popen:
    """A server that listens: its first line says so."""
    command = [sys.executable, "-m", "logbook", "serve", "--folder", site.job, "--port", str(site.port), "--engine", "scripted", "--prepared", site.prepared]
    with open(site.home / "server.log", "ab") as log:
        more = {"PYTHONPATH": str(HERE.parent), "PYTHONUNBUFFERED": "1", "XDG_STATE_HOME": str(site.home / "state")}
        server = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=log, env=os.environ | more)
    line = server.stdout.readline()
    assert line, (site.home / "server.log").read_text()
    return server


def workers_of(server: subprocess.Popen) -> list[int]:
    found = []
    for task in Path(f"/proc/{server.pid}/task").iterdir():
        try:
            found += [int(pid) for pid in (task / "children").read_text().split()]
        except (FileNotFoundError, ProcessLookupError):
            continue
    return found


def kill(site: Site, server: subprocess.Popen) -> None:
    """-9, without a word before it: the server, its worker, or both."""
    what, workers = site.rng.choice(list(site.kills)), workers_of(server)
    what = what if workers else "server"  # a worker that was killed a moment ago is not there yet again
    site.kills[what] += 1
    if what in ("worker", "both"):
        for pid in workers:
            try:
                os.kill(pid, signal.SIGKILL)
            except ProcessLookupError:
                continue
    if what == "server":
        for pid in workers:
            try:
                site.left_alone.append(os.pidfd_open(pid))
            except ProcessLookupError:
                continue
    if what in ("server", "both"):
        server.kill()
        server.wait()
        server.stdout.close()


def phone(site: Site, rng: random.Random, over: threading.Event) -> None:
    while not over.is_set():
        with site.lock:
            site.marks += 1
            mark = site.marks
        words = f"Straight {mark} on run {1 + mark % 25}, taped with 181A-P, rubbed down."
        sound = tone(200 + mark * 0.5) if rng.random() < 0.3 else None
        photo = picture(mark) if rng.random() < 0.1 else None
        sent = Sent(str(uuid.UUID(int=rng.getrandbits(128), version=4)), mark, None if sound else words, sound, photo)
        if sound:
            part = site.prepared / f".{mark}"
            part.write_text(words, encoding="utf-8")
            part.rename(site.prepared / f"{hashlib.sha256(sound).hexdigest()}.txt")
        hand_in(site, sent, over, 1 if rng.random() < 0.2 else None)
        over.wait(rng.random() * 0.4)


def hand_in(site: Site, sent: Sent, over: threading.Event, tries: int | None) -> None:
    while True:
        status, body = post(site, sent)
        if status in (200, 201):
            told = json.loads(body)
            if told["digests"] != sent.digests or told["id"] != sent.id:
                site.unexpected.append((status, body))
            with site.lock:
                site.acknowledged[sent.id] = sent
                site.repeats += status == 200
            return
        if status not in (None, 503):
            site.unexpected.append((status, body))
        tries = None if tries is None else tries - 1
        if tries == 0 or over.is_set():
            with site.lock:
                site.given_up[sent.id] = sent
            return
        over.wait(0.02)


def post(site: Site, sent: Sent) -> tuple[int | None, bytes]:
    edge = uuid.uuid4().hex
    fields = {"id": sent.id, "spoken_at": (MORNING + sent.mark * timedelta(seconds=30)).isoformat()} | ({} if sent.text is None else {"text": sent.text})
    body = b"".join(f'--{edge}\r\nContent-Disposition: form-data; name="{name}"\r\n\r\n{value}\r\n'.encode() for name, value in fields.items())
    for name, data in (("audio", sent.sound), ("photo", sent.photo)):
        if data is None:
            continue
        head = f'--{edge}\r\nContent-Disposition: form-data; name="{name}"; filename="{name}"\r\nContent-Type: application/octet-stream\r\n\r\n'
        body += head.encode() + data + b"\r\n"
    body += f"--{edge}--\r\n".encode()
    connection = http.client.HTTPConnection("127.0.0.1", site.port, timeout=20)
    try:
        site.sending.set()
        connection.request("POST", "/notes", body, {"Authorization": f"Bearer {site.key}", "Content-Type": f"multipart/form-data; boundary={edge}"})
        answer = connection.getresponse()
        return answer.status, answer.read()
    except (OSError, http.client.HTTPException):
        return None, b""
    finally:
        connection.close()


def run(site: Site, kills: int, phones: int = 2, while_hearing: bool = False) -> None:
    """Kill `kills` times under load, then let the server finish what is on its way and stop it politely.

    `while_hearing`: each kill waits, for half a minute at most, until a worker holds notes, and then for a moment of its own.
    """
    over, server = threading.Event(), start(site)
    threads = [threading.Thread(target=phone, args=(site, random.Random(site.rng.random()), over)) for _ in range(phones)]
    for each in threads:
        each.start()
    try:
        for number in range(kills):
            if while_hearing:
                until(site, server, hearing_now)
                wait(server, site.rng.random() * 0.6)
                site.heard_then += hearing_now(site) > 0
            elif number == kills // 2:
                until(site, server, answered_now)  # on a machine that is busy with other things too, a worker gets to answer once
            else:
                wait(server, site.rng.random() * (2.5 if site.rng.random() < 0.25 else 0.15))  # now and then a worker gets to hear
            if site.rng.random() < 0.6:  # in the middle of a hand-in, where a receipt may be lost on its way
                site.sending.clear()
                site.sending.wait(1.0)
                wait(server, site.rng.random() * 0.02)
            kill(site, server)
            if server.poll() is not None:
                server = start(site)
        over.set()
        for each in threads:
            each.join()
        server.terminate()
        server.wait(30)
        for worker in site.left_alone:
            assert select.select([worker], [], [], 30)[0], "a worker outlived its server"
            os.close(worker)
    finally:
        over.set()
        if server.poll() is None:
            server.kill()
            server.wait()
        server.stdout.close()


def hearing_now(site: Site) -> int:
    """How many notes a worker holds."""
    return _counted(site, "SELECT count(*) FROM notes WHERE state = 'hearing'")


def answered_now(site: Site) -> int:
    """How many answers were written."""
    return _counted(site, "SELECT count(*) FROM journal WHERE act IN ('heard', 'read')")


def _counted(site: Site, sql: str) -> int:
    """Read beside everybody else."""
    log = sqlite3.connect(f"file:{site.job / 'log.db'}?mode=ro", uri=True, timeout=5)
    try:
        return log.execute(sql).fetchone()[0]
    finally:
        log.close()


def until(site: Site, server: subprocess.Popen, counted) -> None:
    """Until `counted(site)` is not 0, for half a minute at most."""
    left = 600
    while left and not counted(site):
        wait(server, 0.05)
        left -= 1


def wait(server: subprocess.Popen, seconds: float) -> None:
    try:
        server.wait(seconds)
    except subprocess.TimeoutExpired:
        return
    raise AssertionError("the server ended by itself")


def finish(site: Site) -> None:
    """Hear what still waits, as the next start of a worker would."""
    from logbook.cli import main

    assert main(["work", "--once", "--folder", str(site.job), "--engine", "scripted", "--prepared", str(site.prepared)]) == 0


def hear_given_up_again(site: Site) -> int:
    """A note whose worker was killed three times over it is kept and told as unheard; one press hears it again."""
    with store.open_folder(site.job) as folder:
        unheard = [note for (note,) in folder.db.execute("SELECT id FROM notes WHERE state = 'unheard'")]
        for note in unheard:
            assert not isinstance(store.hear_again(folder, str(uuid.uuid4()), note, "installer-1"), Mistake)
    if unheard:
        finish(site)
    return len(unheard)


def check(site: Site) -> dict:
    """Every acknowledged note is there, whole, once, heard once; what was not acknowledged is there whole or not at all."""
    from logbook.store import doctoring, files

    with store.open_folder(site.job) as folder:
        under_kills = folder.db.execute("SELECT count(*) FROM journal WHERE act IN ('heard', 'read')").fetchone()[0]
    finish(site)
    asked_again = hear_given_up_again(site)
    examined = doctoring.examine(site.job)
    assert examined.problems == [], examined.problems
    assert site.unexpected == []
    with store.open_folder(site.job) as folder:
        db = folder.db
        there = [id for (id,) in db.execute("SELECT id FROM notes")]
        assert len(there) == len(set(there))
        lost = site.acknowledged.keys() - set(there)
        assert lost == set()
        assert set(there) <= site.acknowledged.keys() | site.given_up.keys()
        for sent in [(site.acknowledged | site.given_up)[id] for id in there]:
            parts = list(db.execute("SELECT what, sha256 FROM parts WHERE note = ? ORDER BY what DESC", [sent.id]))
            assert parts == [("sound", one) for one in sent.digests["audio"]] + [("picture", one) for one in sent.digests["photos"]]
            assert sent.text is None or db.execute("SELECT text FROM words WHERE note = ?", [sent.id]).fetchall() == [(sent.text,)]
            for _, sha256 in parts:
                assert files.file_digest(store.original(folder, sha256)) == sha256
        for acts in (("received",), ("heard", "read")):
            rows = [note for (note,) in db.execute(f"SELECT json_extract(ids, '$.note') FROM journal WHERE act IN ({','.join('?' * len(acts))})", acts)]
            assert sorted(rows) == sorted(there), f"every note was {acts} once"
        assert set(db.execute("SELECT state FROM notes")) == {("answered",)}
        marks = {int(piece["mark"]) for piece in store.each_piece(folder, "en")}
        assert marks == {(site.acknowledged | site.given_up)[id].mark for id in there}
    return {
        "acknowledged": len(site.acknowledged), "lost": len(lost), "answered under kills": under_kills, "sent again": site.repeats, "given up": len(site.given_up),
        "kept without a receipt": len(set(there) - site.acknowledged.keys()), "kills": dict(site.kills), "kills while notes were held": site.heard_then, "unheard after three kills and heard again": asked_again, "parts removed": sum(values.get("count", 0) for key, values in examined.mended if key == "store.doctor.parts"),
    }  # fmt: skip
