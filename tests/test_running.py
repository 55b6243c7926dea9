"""A server that runs: its lines hold no words, names or keys; asked to stop, it answers who waits and loses no note."""

from __future__ import annotations

import hashlib
import http.client
import io
import json
import logging
import os
import re
import shutil
import signal
import socket
import sqlite3
import ssl
import subprocess
import sys
import threading
import time
import uuid
from dataclasses import dataclass
from datetime import UTC, datetime
from functools import partial
from pathlib import Path

import pytest
from handing import note, picture, tone

from logbook import running, store
from logbook.store import people

HERE = Path(__file__).parent
PASSWORD = "seven grey gulls"
NAMES = {"installer": "Rosa Quint", "lead": "Ada Fenn", "contractor": "Moss Pike", "keeper": "Una Vale"}


# --- lines


def lines(capfd) -> list[dict]:
    return [json.loads(line) for line in capfd.readouterr().err.splitlines()]


@pytest.fixture
def begun(monkeypatch):
    """`running.begin` in this process, undone afterwards."""
    root, own = logging.getLogger(), logging.getLogger("logbook")
    before = root.handlers[:], root.level, own.level, sys.excepthook
    running.begin("server")
    yield
    root.handlers[:], sys.excepthook = before[0], before[3]
    root.setLevel(before[1])
    own.setLevel(before[2])
    logging.captureWarnings(False)


def test_a_line_is_one_json_object_with_its_hour(begun, capfd):
    running.tell("heard", notes=3, ms=120)
    (line,) = lines(capfd)
    assert datetime.fromisoformat(line.pop("at")).tzinfo is not None
    assert line == {"level": "info", "part": "server", "event": "heard", "notes": 3, "ms": 120}


def test_nothing_free_gets_into_a_line(begun, capfd):
    with pytest.raises(KeyError):
        running.tell("heard", text="Straight seven")
    running.tell("heard", key="Straight seven, taped")
    running.tell("request", route="/notes/<note>/photos/<sha256>", note=str(uuid.UUID(int=7)))
    told = lines(capfd)
    assert told[0]["key"] == "?"
    assert (told[1]["route"], told[1]["note"]) == ("/notes/<note>/photos/<sha256>", str(uuid.UUID(int=7)))


def test_of_another_library_only_the_pattern_is_told(begun, capfd):
    logging.getLogger("waitress").error("Exception while serving %s", "/password/secret-code")
    logging.getLogger("another").warning(f"could not read {'Rosa Quint'}")
    one, other = lines(capfd)
    assert (one["library"], one["pattern"]) == ("waitress", "Exception while serving %s")
    assert "pattern" not in other and other["where"].startswith("test_running:")


def test_of_an_error_its_kind_and_place_are_told_and_never_its_words(begun, capfd):
    try:
        int("Rosa said seven")
    except ValueError as error:
        try:
            raise RuntimeError("Rosa Quint") from error
        except RuntimeError:
            sys.excepthook(*sys.exc_info())
    (line,) = lines(capfd)
    assert (line["event"], line["error"], line["from"]) == ("fell-over", "RuntimeError", "ValueError")
    assert "Rosa" not in json.dumps(line) and "test_running.py" in line["frames"][-1]


# --- a real server


@dataclass
class Site:
    home: Path
    port: int
    keys: dict[str, str]
    ids: dict[str, str]
    server: subprocess.Popen
    tls: bool = False

    @property
    def job(self) -> Path:
        return self.home / "job"

    @property
    def authority(self) -> Path:
        """The certificate that phones trust, as the server keeps it."""
        return next((self.home / "state").rglob("authority.crt"))

    def ask(self, method: str, path: str, who: str | None = None, body: bytes | None = None, headers: dict | None = None):
        own = {"Accept": "application/json"} | ({"Authorization": f"Bearer {self.keys[who]}"} if who else {}) | (headers or {})
        own_authority = ssl.create_default_context(cafile=self.authority) if self.tls else None
        kind = partial(http.client.HTTPSConnection, context=own_authority) if self.tls else http.client.HTTPConnection
        connection = kind("localhost" if self.tls else "127.0.0.1", self.port, timeout=60)
        connection.request(method, path, body, own)
        answer = connection.getresponse()
        data = answer.read()
        connection.close()
        return answer, data

    def hand_in(self, **parts):
        kind, body = form({"id": str(uuid.uuid4()), "spoken_at": "2026-10-14T10:00:00-05:00"} | parts)
        return self.ask("POST", "/notes", "installer", body, {"Content-Type": kind})

    def log(self) -> str:
        return (self.home / "log.jsonl").read_text()


def form(fields: dict) -> tuple[str, bytes]:
    edge, out = uuid.uuid4().hex, io.BytesIO()
    for name, value in fields.items():
        for one in value if isinstance(value, list) else [value]:
            file = f'; filename="{name}.bin"' if isinstance(one, bytes) else ""
            data = one if isinstance(one, bytes) else one.encode()
            out.write(f'--{edge}\r\nContent-Disposition: form-data; name="{name}"{file}\r\n\r\n'.encode() + data + b"\r\n")
    out.write(f"--{edge}--\r\n".encode())
    return f"multipart/form-data; boundary={edge}", out.getvalue()


def wait_for(true, what: str, seconds: float = 180):
    end, patience = time.monotonic() + seconds, threading.Event()
    while not (found := true()):
        assert time.monotonic() < end, f"{what} did not come"
        patience.wait(0.01)
    return found


def environment(home: Path) -> dict:
    return os.environ | {"PYTHONPATH": str(HERE.parent), "PYTHONUNBUFFERED": "1", "XDG_STATE_HOME": str(home / "state")}


@pytest.fixture
def site(tmp_path):
    yield from serving(tmp_path)


@pytest.fixture
def site_with_tls(tmp_path):
    yield from serving(tmp_path, "--tls", "--name", "localhost")


def serving(tmp_path, *more):
    (tmp_path / "prepared").mkdir()
    keys, ids, hashed = {}, {}, people.hashed(PASSWORD)
    with store.open_folder(tmp_path / "job", create=True) as folder, store.writing(folder) as db:
        for role, name in NAMES.items():
            person = people.add(db, name, role, datetime.now(UTC))
            people.keep_password(db, person.id, hashed)
            ids[role] = person.id
            _, keys[role] = people.give_device(db, person.id, "script", "test", datetime.now(UTC))
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    command = [sys.executable, "-m", "logbook", "serve", "--folder", tmp_path / "job", "--port", str(port), "--engine", "scripted", "--prepared", tmp_path / "prepared", *more]
    with open(tmp_path / "log.jsonl", "wb") as log:
        server = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=log, env=environment(tmp_path))
    assert server.stdout.readline(), (tmp_path / "log.jsonl").read_text()
    yield Site(tmp_path, port, keys, ids, server, bool(more))
    if server.poll() is None:
        server.kill()
        server.wait()
    server.stdout.close()


def prepare(home: Path, sound: bytes, text: str) -> None:
    (home / "prepared" / f"{hashlib.sha256(sound).hexdigest()}.txt").write_text(text)


SAID = (
    "Straight seventeen on run two, eighteen by twelve, stapled every two, taped with 181A-P, rubbed down.",
    "Mezzanine transition quokka, twenty by sixteen down to fourteen by twelve, top drops three back eighteen.",
)


def test_the_log_of_a_day_holds_no_word_name_or_key(site):
    """Hand-ins typed and spoken, photos, refusals, a search, acts, a wrong password, a code, a link, a torn log."""
    csrf = re.compile(rb'name="csrf_token" value="([^"]+)"')
    secrets = [PASSWORD, *site.keys.values()]
    prepare(site.home, tone(440), SAID[0])
    assert site.hand_in(audio=tone(440), photo=[picture(1), picture(2)])[0].status == 201
    answer, receipt = site.hand_in(text=SAID[1])
    assert answer.status == 201
    told = json.loads(receipt)["id"]
    assert site.hand_in(text=SAID[1], kind="igloo quokka")[0].status == 422
    assert site.hand_in(audio=b"#EXTM3U quokka")[0].status == 415
    wait_for(lambda: json.loads(site.ask("GET", f"/notes/{told}", "lead")[1])["state"] == "answered", "the answer")
    wait_for(lambda: '"heard"' in site.log(), "the hearing")
    assert site.ask("GET", "/search?q=quokka+mezzanine", "lead", headers={"Accept": "text/html"})[0].status == 200
    right = json.dumps({"id": str(uuid.uuid4()), "text": SAID[1]}).encode()
    assert site.ask("POST", f"/notes/{told}/right", "installer", right, {"Content-Type": "application/json"})[0].status == 201
    cookie, page = site.ask("GET", "/enter", headers={"Accept": "text/html"})
    typed = {"name": NAMES["lead"], "password": "wrong wrong quokka", "csrf_token": csrf.search(page)[1].decode()}
    kind, body = form(typed)
    jar = cookie.getheader("Set-Cookie").split(";")[0]
    assert site.ask("POST", "/enter", body=body, headers={"Content-Type": kind, "Cookie": jar})[0].status == 401
    kind, body = form({"what": "password"})
    answer, page = site.ask("POST", f"/people/{site.ids['installer']}/pair", "keeper", body, {"Content-Type": kind, "Accept": "text/html"})
    link = re.search(rb"/password/([\w-]{20,})", page)[1].decode()
    secrets.append(link)
    assert site.ask("GET", f"/password/{link}", headers={"Accept": "text/html"})[0].status == 200
    assert site.ask("GET", f"/no/such/{NAMES['installer'].split()[0]}quokka", "lead")[0].status == 404
    (site.job / "job.toml").write_text('name = "quokka" = [')
    assert site.ask("GET", "/log", "lead")[0].status == 503
    site.server.send_signal(signal.SIGTERM)
    assert site.server.wait(60) == 0
    log = site.log()
    seen = [json.loads(line) for line in log.splitlines()]  # every line is JSON, the worker's too
    assert {"starts", "stopping", "stops", "request", "heard"} <= {line["event"] for line in seen}
    assert {line["part"] for line in seen} == {"server", "worker"}
    routes = {(line["route"], line["status"]) for line in seen if line["event"] == "request"}
    assert {("/notes", 201), ("/notes", 422), ("/notes", 415), ("/enter", 401), ("/password/<code>", 200), ("/search", 200), (None, 404), ("/log", 503)} <= routes
    words = {word.lower() for text in SAID for word in re.findall(r"\w{5,}", text)} | {"quokka", "igloo"}
    names = {part.lower() for name in NAMES.values() for part in name.split()}
    assert not {one for one in words | names if one in log.lower()} - {"route"}
    assert not [one for one in secrets if one in log]
    assert not [one for one in secrets if hashlib.sha256(one.encode()).hexdigest() in log]


# --- asked to stop


def test_what_is_being_heard_is_finished_before_the_server_ends(site):
    """The worker waits for its words at a pipe: only after it was asked to stop do they come."""
    pipe = site.home / "prepared" / f"{hashlib.sha256(tone(440)).hexdigest()}.txt"
    os.mkfifo(pipe)
    heard = json.loads(site.hand_in(audio=tone(440))[1])["id"]
    words = wait_for(lambda: _open(pipe), "the worker at the pipe")
    assert json.loads(site.ask("GET", f"/notes/{heard}", "lead")[1])["state"] == "hearing"
    site.server.send_signal(signal.SIGTERM)
    wait_for(lambda: [line for line in site.log().splitlines() if '"worker"' in line and '"stopping"' in line], "the worker's last line")
    os.write(words, SAID[0].encode())
    os.close(words)
    assert site.server.wait(60) == 0
    with store.open_folder(site.job) as folder:
        doc = store.note_document(folder, heard, "en")
        assert doc["state"] == "answered" and doc["text"] == SAID[0] and doc["fittings"][0]["findings"]
        assert folder.db.execute("SELECT attempt, tries, held_by FROM notes").fetchone() == (1, 1, None)


def _open(pipe: Path) -> int | None:
    """The writing end, as soon as somebody reads."""
    try:
        return os.open(pipe, os.O_WRONLY | os.O_NONBLOCK)
    except OSError:
        return None


def test_a_worker_beside_the_server_that_cannot_begin_says_so_in_a_line_of_the_log(tmp_path):
    store.open_folder(tmp_path / "job", create=True).close()
    (tmp_path / "job" / "job.toml").write_text('name = "quokka" = [')
    command = [sys.executable, "-m", "logbook", "work", "--folder", tmp_path / "job", "--engine", "scripted", "--prepared", tmp_path, "--beside"]
    ended = subprocess.run(command, env=environment(tmp_path), capture_output=True, text=True, check=False)
    assert ended.returncode == 2
    (line,) = [json.loads(line) for line in ended.stderr.splitlines()]
    assert (line["part"], line["level"], line["event"]) == ("worker", "error", "cannot-go-on") and "quokka" not in ended.stderr


def test_a_worker_that_is_asked_twice_puts_its_note_back_as_if_never_taken(tmp_path):
    (tmp_path / "prepared").mkdir()
    pipe = tmp_path / "prepared" / f"{hashlib.sha256(tone(440)).hexdigest()}.txt"
    os.mkfifo(pipe)
    with store.open_folder(tmp_path / "job", create=True) as folder:
        id = store.receive(folder, note(audio=(tone(440),))).id
    command = [sys.executable, "-m", "logbook", "work", "--folder", tmp_path / "job", "--engine", "scripted", "--prepared", tmp_path / "prepared"]
    worker = subprocess.Popen(command, stderr=subprocess.PIPE, env=environment(tmp_path))
    words = wait_for(lambda: _open(pipe), "the worker at the pipe")
    deaf = [1 << (signal.SIGTERM - 1) & int(re.search(r"SigBlk:\s*(\w+)", task.read_text())[1], 16) for task in Path(f"/proc/{worker.pid}/task").glob("*/status") if task.parent.name != str(worker.pid)]
    assert deaf and all(deaf)  # whoever does not hear does not take the signal away from the one who does
    worker.send_signal(signal.SIGTERM)
    events = iter(lambda: json.loads(worker.stderr.readline())["event"], "stopping")
    assert list(events) == ["starts"]
    worker.send_signal(signal.SIGTERM)
    assert worker.wait(60) == 0
    os.close(words)
    worker.stderr.close()
    with store.open_folder(tmp_path / "job") as folder:
        assert folder.db.execute("SELECT state, wants, tries FROM notes WHERE id = ?", [id]).fetchone() == ("waiting", "hearing", 0)
    pipe.unlink()
    prepare(tmp_path, tone(440), SAID[0])
    assert subprocess.run([*command, "--once"], env=environment(tmp_path), capture_output=True, check=False).returncode == 0
    with store.open_folder(tmp_path / "job") as folder:
        assert store.note_document(folder, id, "en")["state"] == "answered"


@pytest.mark.parametrize("kind", ["site", "site_with_tls"])
def test_a_note_that_is_being_received_is_answered_before_the_server_ends(request, kind):
    """The log is locked while the note comes, so that the server is asked to stop in the middle of it."""
    site = request.getfixturevalue(kind)
    assert site.ask("GET", "/me", "installer")[0].status == 200  # writes when this key was last used, before the lock
    lock = sqlite3.connect(site.job / "log.db", isolation_level=None)
    lock.execute("BEGIN IMMEDIATE")
    got = []
    phone = threading.Thread(target=lambda: got.append(site.hand_in(audio=tone(550))))
    phone.start()
    name = f"{hashlib.sha256(tone(550)).hexdigest()}.wav"
    wait_for(lambda: (site.job / "originals" / name).exists(), "the sound")
    site.server.send_signal(signal.SIGTERM)
    lock.execute("ROLLBACK")
    lock.close()
    phone.join(60)
    assert site.server.wait(60) == 0
    assert got[0][0].status == 201
    with store.open_folder(site.job) as folder:
        assert [id for (id,) in folder.db.execute("SELECT id FROM notes")] == [json.loads(got[0][1])["id"]]


def test_ready_says_no_when_notes_cannot_be_kept(site):
    assert site.ask("GET", "/ready")[0].status == 200 and site.ask("GET", "/health")[0].status == 200
    kept = (site.job / "job.toml").read_text()
    (site.job / "job.toml").write_text("[[[")
    answer, body = site.ask("GET", "/ready")
    assert answer.status == 503 and json.loads(body)["cure"] and answer.getheader("Retry-After")
    assert site.ask("GET", "/health")[0].status == 200, "alive, though it can take nothing"
    (site.job / "job.toml").write_text(kept)
    assert site.ask("GET", "/ready")[0].status == 200


def test_a_copy_made_while_phones_hand_in_brings_a_destroyed_job_back(site):
    """The real server, the real verbs: whatever was acknowledged before the copy began is there, whole, after the job is gone."""
    over, acknowledged = threading.Event(), []

    def phone(number: int) -> None:
        while not over.is_set():
            answer, body = site.hand_in(audio=tone(200 + number * 1000 + len(acknowledged)), photo=[picture(len(acknowledged))])
            if answer.status == 201:
                acknowledged.append(json.loads(body))

    phones = [threading.Thread(target=phone, args=(number,)) for number in range(2)]
    for each in phones:
        each.start()

    def verb(*words) -> subprocess.CompletedProcess:
        return subprocess.run([sys.executable, "-m", "logbook", *words], env=environment(site.home), capture_output=True, text=True, check=False)

    known = []
    try:
        for count in (3, 8):
            wait_for(lambda: len(acknowledged) >= count, "hand-ins")
            known = list(acknowledged)
            assert verb("backup", site.home / "copy", "--folder", site.job).returncode == 0
    finally:
        over.set()
        for each in phones:
            each.join()
    site.server.kill()
    site.server.wait()
    shutil.rmtree(site.job)
    done = verb("restore", site.home / "copy", "--folder", site.home / "back")
    assert done.returncode == 0, done.stderr
    assert verb("doctor", "--folder", site.home / "back").returncode == 0
    with store.open_folder(site.home / "back") as folder:
        for receipt in known:
            doc = store.note_document(folder, receipt["id"], "en")
            assert doc["digests"] == receipt["digests"] and doc["received_at"] == receipt["received_at"]
            for sha256 in (*receipt["digests"]["audio"], *receipt["digests"]["photos"]):
                assert hashlib.sha256(store.original(folder, sha256).read_bytes()).hexdigest() == sha256
        assert people.by_name(folder.db, NAMES["keeper"]) is not None
