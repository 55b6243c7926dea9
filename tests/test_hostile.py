"""Hostile input over real HTTP: every case of tests/cases/hostile is answered in words, brings nothing down, harms nothing else.

The server is `logbook serve` with TLS and its own worker. After every case the next good note goes through; at the end the
same server and the same worker still run, every good note is answered, and the doctor finds the folder whole.
"""

from __future__ import annotations

import csv
import hashlib
import io
import json
import os
import re
import shutil
import socket
import subprocess
import sys
import threading
import time
import tomllib
import uuid
import zipfile
from contextlib import suppress
from pathlib import Path

import hostile
import openpyxl
import pytest
import serving
from handing import picture

from logbook.cli import main
from logbook.store import doctoring
from logbook.web import create_app, secrecy
from logbook.web.guard import MAY

HERE = Path(__file__).parent
CASES = HERE / "cases" / "hostile"
pytestmark = pytest.mark.skipif(not sys.platform.startswith("linux"), reason="looks the worker up in /proc")


def cases(file: str, table: str) -> list[dict]:
    return tomllib.loads((CASES / f"{file}.toml").read_text(encoding="utf-8"))[table]


def named(found: list[dict]):
    return [pytest.param(one, id=one["name"]) for one in found]


@pytest.fixture(scope="module")
def trap(tmp_path_factory):
    """A file that must not be read and an address that must not be called; `calls` counts who came."""
    place = tmp_path_factory.mktemp("trap") / "secret.wav"
    place.write_bytes(hostile.wav_as_is(hostile.Trap()))
    box = socket.create_server(("127.0.0.1", 0))
    calls: list = []

    def listen():
        while True:
            try:
                calls.append(box.accept())
            except OSError:
                return

    threading.Thread(target=listen, daemon=True).start()
    yield hostile.Trap(str(place), f"http://127.0.0.1:{box.getsockname()[1]}/trap"), calls
    box.close()


@pytest.fixture(scope="module")
def site(tmp_path_factory):
    """(server, good notes handed in so far, counts). What has to hold at the end is looked at in the last test of this file."""
    served = serving.lay(tmp_path_factory.mktemp("site")).start()
    good: list[str] = []
    served.first_worker = served.worker()
    yield served, good, {"tried": 0, "refused": 0, "taken and told": 0}
    if served.process.poll() is None:
        served.stop()


@pytest.fixture
def then_good(site):
    """After the case: a good note goes through."""
    yield
    served, good, _ = site
    status, id, body = served.hand_in(text=f"Straight {len(good) + 100} on run nine, eighteen by twelve, stapled every two, taped with 181A-P, rubbed down.")
    assert status == 201, body
    good.append(id)
    assert served.process.poll() is None


# --- files


@pytest.fixture(scope="module")
def handed_in(site, trap):
    """Every file case handed in with good words or a good photo beside it: name -> (status, note, body, bytes)."""
    served, good, counts = site
    done, line = {}, served.connection()
    for field in ("photo", "audio"):
        for case in cases("files", field):
            if case.get("slow"):
                continue
            data = getattr(hostile, case["make"])(trap[0])
            served.prepare(data)
            part = (field, case.get("as", "note.webm" if field == "audio" else "photo.jpg"), case.get("type", "application/octet-stream"), data)
            done[field, case["name"]] = (*served.hand_in(parts=[part], over=line), data)
            counts["tried"] += 1
            status, id, body = served.hand_in(text=serving.SAID, over=line)
            assert status == 201, (case["name"], body)
            good.append(id)
    line.close()
    taken = [id for status, id, *_ in done.values() if status == 201]
    notes = served.settled(taken, lambda note: all(photo["readable"] is not None for photo in note["photos"]))
    return done, notes


@pytest.mark.parametrize("field, case", [pytest.param(field, case, id=f"{field}, {case['name']}") for field in ("photo", "audio") for case in cases("files", field) if not case.get("slow")])
def test_a_file_that_means_harm_is_refused_or_kept_and_told(site, handed_in, field, case):
    done, notes = handed_in
    status, id, body, _ = done[field, case["name"]]
    assert status == case["status"], body
    if status != 201:
        site[2]["refused"] += 1
        assert json.loads(body)["cure"]
        return
    site[2]["taken and told"] += 1
    note = notes[id]
    if field == "photo":
        read = note["photos"][0]["readable"]
        assert note["state"] == "answered", "the words beside a bad photo are read all the same"
    else:
        read = note["state"] == "answered"
        assert read or note["problem"]["cure"]
    assert case["then"] == "either" or read == (case["then"] == "read"), note


def test_a_list_of_addresses_calls_nobody(handed_in, trap):
    assert trap[1] == []


@pytest.mark.skipif(not shutil.which("strace"), reason="strace is not installed")
@pytest.mark.parametrize("make", ["mp4_in_a_file", "mp4_at_an_address", "mp4_reference_movie", "id3_then_list", "ogg_then_list", "flac_with_linked_cover"])
def test_once_the_child_has_its_limits_it_asks_the_system_for_no_file_and_no_socket(tmp_path, trap, make):
    """Read from the system calls, as `test_store` reads the order of an intake."""
    order = json.dumps({"task": "logbook.decoding.samples:read", "limits": {"memory": 2**28, "cpu": 60, "files": 0}, "settings": {"max_seconds": 60}})
    (tmp_path / "note").write_bytes(getattr(hostile, make)(trap[0]))
    command = ["strace", "-f", "-e", "trace=%network,open,openat,openat2,creat,prlimit64", "-o", str(tmp_path / "calls"), sys.executable, "-m", "logbook.decoding.child", order]
    with open(tmp_path / "note", "rb") as file:
        done = subprocess.run(command, stdin=file, capture_output=True, env={**os.environ, "PYTHONPATH": str(HERE.parent), "OMP_NUM_THREADS": "1"}, check=False)
    assert done.returncode == 0, done.stderr
    calls = (tmp_path / "calls").read_text().splitlines()
    limited = next(number for number, call in enumerate(calls) if "RLIMIT_NOFILE" in call and "rlim_cur=3" in call)
    after = [call for call in calls[limited + 1 :] if re.search(r"\b(open\w*|creat|socket|connect|sendto)\(", call)]
    assert after == []


def test_what_was_handed_in_is_shown_and_never_run(site, handed_in):
    """Kept bytes go out under the kind that their first bytes tell, to be looked at or played, in a sandbox."""
    served, done = site[0], handed_in[0]
    for name in ("a picture and a page in one", "a picture that says it is a page", "a picture and a script in one"):
        _, id, _, data = done["photo", name]
        sha256 = hashlib.sha256(data).hexdigest()
        status, headers, body = served.ask("GET", f"/notes/{id}/photos/{sha256}", who="lead")
        assert (status, body) == (200, data) and headers["Content-Type"] in ("image/jpeg", "image/png")
        assert headers["X-Content-Type-Options"] == "nosniff" and headers["Content-Security-Policy"] == secrecy.FILE_POLICY
        status, headers, small = served.ask("GET", f"/notes/{id}/photos/{sha256}/small", who="lead")
        assert status == 200 and headers["Content-Type"] == "image/jpeg"
        assert b"<script" not in small and b"\xff\xe1" not in small[:200], "the small copy is made of pixels alone"
    for page in ("/log", f"/entry/{done['photo', 'EXIF with markup and formulas'][1]}", f"/entry/{done['photo', 'a tag with markup'][1]}"):
        text = served.ask("GET", page, who="lead", Accept="text/html")[2].decode()
        assert "<script>alert" not in text and "<img src=x" not in text


@pytest.mark.parametrize("name", tomllib.loads((CASES / "files.toml").read_text(encoding="utf-8"))["names"])
def test_what_a_sender_calls_a_file_becomes_no_path(site, then_good, name):
    served, _, counts = site
    counts["tried"] += 1
    before = _outside(served)
    status, _, body = served.hand_in(parts=[("photo", name, "image/jpeg", picture(hash(name) % 1000))])
    assert status == 201, body
    status, _, body = served.hand_in(parts=[("photo", name, "image/jpeg", hostile.HTML)])
    assert status == 415
    told = json.loads(body)
    assert all(sign.isprintable() for sign in told["error"])
    page = served.ask("POST", "/notes", b"", "installer", Accept="text/html")[2].decode()
    assert "<script>alert" not in page
    assert _outside(served) == before
    counts["taken and told"] += 1


def _outside(served) -> set[str]:
    """What lies beside the job folder, and in it under a name that is not ours."""
    beside = {path.name for path in served.home.iterdir()}
    ours = re.compile(r"[0-9a-f]{64}\.\w+|\.[0-9a-f]{32}\.part|[0-9a-f]{64}-640\.jpg")
    return beside | {path.name for part in ("originals", "documents", "derived") for path in (served.job / part).iterdir() if not ours.fullmatch(path.name)}


# --- requests that lie


@pytest.mark.parametrize("case", named(cases("http", "request")))
def test_a_request_that_lies_is_refused_or_let_go(site, then_good, case):
    served, good, counts = site
    counts["tried"] += 1
    sent = case["send"].replace("{note}", good[0] if good else "none").replace("{host}", served.host).replace("{key}", served.keys["lead"]).replace("\n", "\r\n")
    sent = sent.replace("{many}", case.get("of", "").replace("\n", "\r\n") * case.get("repeat", 1))
    with served.line() as line:
        answer = _said(line, sent, case.get("close"))
    statuses = [int(one) for one in re.findall(rb"^HTTP/1\.[01] (\d{3}) ", answer, re.M)] or [0]
    assert statuses[0] in case["statuses"], answer[:600]
    assert not any(500 <= one < 600 and one not in case["statuses"] for one in statuses)
    assert b"installer-1" not in answer and b"Una Vale" not in answer, "what followed was answered to nobody who has no key"
    if statuses[0]:
        _headers(_parsed(answer))
    counts["refused"] += 1


def _said(line, sent: str, close: bool | None) -> bytes:
    """The answer; nothing where the server cut the line while it was still being sent to: that is status 0 of the case."""
    with suppress(OSError):
        line.sendall(sent.encode("utf-8"))
        if close:
            line.shutdown(socket.SHUT_WR)
    return _all(line)


def _all(line) -> bytes:
    """What comes back until the server closes, or has answered and waits for more."""
    came = b""
    line.settimeout(20)
    try:
        while bite := line.recv(65536):
            came += bite
            head, found, body = came.partition(b"\r\n\r\n")
            length = re.search(rb"(?i)content-length: (\d+)", head)
            if found and length and len(body) >= int(length.group(1)) and b"onnection: close" not in head:
                line.settimeout(0.2)
    except (TimeoutError, OSError):
        pass
    return came


def _parsed(answer: bytes) -> dict:
    lines = answer.partition(b"\r\n\r\n")[0].decode("latin-1").split("\r\n")[1:]
    return {name.strip().lower(): value.strip() for name, _, value in (one.partition(":") for one in lines)}


def _headers(told) -> None:
    for name, value in secrecy.HEADERS.items():
        assert told.get(name.lower()) == value, name
    assert told.get("content-security-policy") in (secrecy.POLICY, secrecy.FILE_POLICY)
    assert "server" not in told or "waitress" not in told["server"]


def test_slow_bodies_and_half_handshakes_keep_nobody_waiting(site, then_good):
    """150 phones stalled in the middle of a body, 20 that send a byte now and then, 30 in the middle of a handshake."""
    served, _, counts = site
    counts["tried"] += 1
    stalled = []
    try:
        for number in range(170):
            line = served.line()
            line.sendall(f"POST /notes HTTP/1.1\r\nHost: {served.host}\r\nAuthorization: Bearer {served.keys['installer']}\r\nContent-Length: 1000000\r\n\r\nhalf".encode())
            stalled.append(line)
        for _ in range(30):
            bare = socket.create_connection(("127.0.0.1", served.port))
            bare.sendall(b"\x16\x03\x01")
            stalled.append(bare)
        for _ in range(3):
            for line in stalled[150:170]:
                line.sendall(b"x")
            assert served.ask("GET", "/health", who=None)[0] == 200
            assert served.hand_in()[0] == 201
    finally:
        for line in stalled:
            line.close()
    counts["refused"] += 1


def test_one_address_cannot_take_every_connection(site, then_good):
    """Of one address 200 connections are carried; the next is closed at once, and those that end make room."""
    from logbook.web.relay import MOST_OF_ONE

    served, _, counts = site
    counts["tried"] += 1
    lines = [served.line() for _ in range(MOST_OF_ONE + 5)]
    refused = 0
    for line in lines:
        line.settimeout(20)
        try:
            line.sendall(f"GET /health HTTP/1.1\r\nHost: {served.host}\r\n\r\n".encode())
            refused += not line.recv(100)
        except OSError:
            refused += 1
    for line in lines:
        line.close()
    assert refused >= 5
    until = time.monotonic() + serving.PATIENCE
    while True:
        try:
            assert served.ask("GET", "/health", who=None)[0] == 200
            break
        except OSError:
            assert time.monotonic() < until
    counts["refused"] += 1


@pytest.mark.parametrize("parts, status", [(10_000, 413), (199, 422)], ids=["10,000 parts", "199 parts"])
def test_a_form_of_many_parts(site, then_good, parts, status):
    served, _, counts = site
    counts["tried"] += 1
    came, _, body = served.hand_in(parts=[("photo", "a.jpg", "image/jpeg", b"\xff\xd8\xff")] * (parts - 3), who="installer")
    assert came == status, body
    counts["refused"] += 1


def test_fields_told_twice_and_fields_too_long(site, then_good):
    served, _, counts = site
    for fields, status in (({"text": "x" * 20_001}, 422), ({"text": "x" * 3_000_000}, 413), ({"mark": "7" * 81}, 422), ({"id": "../../etc"}, 422), ({"spoken_by": "keeper-1"}, 403), ({"photo_facts": "[" * 50_000}, 422), ({"photo_facts": '[{"latitude": 1e999, "longitude": 0}]'}, 422), ({"photos_to_come": '["' + "0" * 63 + '/"]'}, 422), ({"spoken_at": "9" * 400}, 422), ({"sent_at": "0001-01-01T00:00:00+00:00"}, 422), ({"answers": "\u0000"}, 422)):
        counts["tried"] += 1
        came, _, body = served.hand_in(**fields)
        assert came == status, (fields, body)
        counts["refused"] += 1


# --- one id from two people


def test_an_id_that_another_person_used_is_refused_and_his_note_stays(site, then_good):
    served, _, counts = site
    _, id, first = served.hand_in()
    before = served.settled([id])[id]
    for who, fields in (("other", {}), ("lead", {}), ("other", {"text": "something else"}), ("installer", {"text": "something else"})):
        counts["tried"] += 1
        status, _, body = served.hand_in(who, id=id, **fields)
        assert status == 409, body
        assert first not in body and b"Quint" not in body
        counts["refused"] += 1
    assert served.note(id) == before
    status, _, again = served.hand_in(id=id)
    assert (status, json.loads(again)) == (200, json.loads(first))
    act = str(uuid.uuid4())
    told = json.dumps({"id": act}).encode()
    assert served.ask("POST", f"/notes/{id}/right", told, "installer", Content_Type="application/json")[0] == 201
    assert served.ask("POST", f"/notes/{id}/right", told, "lead", Content_Type="application/json")[0] == 409


# --- bodies that are no acts


@pytest.fixture(scope="module")
def about(site):
    """A note of the lead and its piece, for acts to speak of."""
    served = site[0]
    status, id, body = served.hand_in("lead", text="Straight ninety on run eight, eighteen by twelve, stapled every two.")
    assert status == 201, body
    served.settled([id])
    found = json.loads(served.ask("GET", "/days/2026-10-14", who="lead")[2])
    piece = next(one["id"] for one in found["pieces"] if id in one["notes"])
    return {"note": id, "piece": piece}


@pytest.mark.parametrize("case", named(cases("bodies", "body")))
def test_a_body_that_is_no_act_is_told_so(site, about, then_good, case):
    served, _, counts = site
    counts["tried"] += 1
    fill = about | {"id": str(uuid.uuid4()), "many": case.get("of", "") * case.get("repeat", 0) + case.get("then", "") * case.get("repeat", 0)}
    path, body = case["path"], case["body"]
    for name, value in fill.items():
        path, body = path.replace(f"{{{name}}}", value), body.replace(f"{{{name}}}", value)
    before = served.note(about["note"])
    status, headers, came = served.ask("POST", path, body.encode("latin-1", "replace") if case.get("latin") else body.encode(), "lead", Content_Type="application/json")
    assert status in (400, 404, 409, 413, 422), (status, came)
    assert json.loads(came)["error"]
    assert served.note(about["note"]) == before
    counts["refused"] += 1


# --- addresses


TRAVERSE = (
    "..%2f..%2f..%2f..%2fetc%2fpasswd", "../../../../etc/passwd", "%2e%2e/%2e%2e/job.toml", "..%5c..%5cjob.toml", "%2fetc%2fpasswd", "....//....//job.toml", "..%252f..%252fjob.toml",
    "job.toml%00.jpg", "%c0%ae%c0%ae%c0%afjob.toml", "file:%2f%2f%2fetc%2fpasswd", ";%2fjob.toml", "' OR 1=1 --".replace(" ", "%20"), "%0d%0aSet-Cookie:%20x=1", "{{7*7}}", "0" * 2000,
)  # fmt: skip


def test_no_address_leads_out_of_its_folder(site, about, then_good, tmp_path):
    """Every route with a parameter, each parameter, every way of writing `..`: 4xx, or the page that is there for everybody."""
    served, _, counts = site
    from desk import Settings

    app = create_app(Settings(served.job, served.home / "look"))
    secret = (served.job / "job.toml").read_bytes()[:200]
    line, fine = served.connection(), {"note": about["note"], "piece": about["piece"], "sha256": "0" * 64, "part": "0", "date": "2026-10-14", "person": "installer-1", "device": "none", "code": "none", "rule": "taped", "kind": "pdf", "language": "en", "filename": "logbook.css"}  # fmt: skip
    tried = 0
    for rule in app.url_map.iter_rules():
        for name in rule.arguments:
            for payload in TRAVERSE:
                path = re.sub(r"<(?:[^:<>]+:)?(\w+)>", lambda found, name=name, payload=payload: payload if found.group(1) == name else fine[found.group(1)], rule.rule)
                for method in sorted(rule.methods - {"HEAD", "OPTIONS"}):
                    body = b"{}" if method != "GET" else None
                    status, headers, came = served.ask(method, path, body, "keeper" if "keeper" in MAY[rule.endpoint] else "lead", over=line, Content_Type="application/json")
                    tried += 1
                    shown = 200 if rule.endpoint == "phone.words" else 0  # any language is answered, the first where there is none of that name
                    assert 400 <= status < 500 or status == shown, (method, path, status)
                    assert secret not in came and b"root:" not in came and "x=1" not in str(headers.get("Set-Cookie")), path
                    _headers({key.lower(): value for key, value in headers.items()})
    line.close()
    assert tried > 300
    counts["tried"] += tried
    counts["refused"] += tried


def test_the_host_that_a_request_names_goes_nowhere(site, then_good):
    """No answer repeats the host that came, in its body or its headers; links that go out use the address of the start."""
    served, _, counts = site
    line = served.connection()
    for path in ("/", "/enter", "/log", "/people", "/trust", "/pair", "/phone", "/manifest.webmanifest", "/openapi.json", "/me", "/day", "/day/2026-10-14", "/trust/authority.mobileconfig", "/nothing", "/static"):
        for who in ("lead", "keeper", None):
            counts["tried"] += 1
            status, headers, came = served.ask("GET", path, None, who, over=line, Accept="text/html", Host="elsewhere.example", X_Forwarded_Host="elsewhere.example", X_Forwarded_For="10.9.8.7", Forwarded="host=elsewhere.example", Origin="http://elsewhere.example", Referer="http://elsewhere.example/")
            assert status < 500
            assert b"elsewhere.example" not in came and "elsewhere.example" not in str(headers), path
            assert "Access-Control-Allow-Origin" not in headers
            counts["refused"] += 1
    line.close()


# --- words


@pytest.fixture(scope="module")
def spoken(site, tmp_path_factory):
    """(server, notes, package): every hostile sentence, typed, heard and pressed in a job of its own; then its report and its package."""
    counts = site[2]
    served = serving.lay(tmp_path_factory.mktemp("spoken")).start()
    ids, told = [], tomllib.loads((CASES / "words.toml").read_text(encoding="utf-8"))
    for number, words in enumerate(told["words"]):
        ids.append(_kept(served.hand_in(text=words)))
        if number % 3:
            continue
        sound = hostile.tone(900 + number)
        served.prepare(sound, words)
        ids.append(_kept(served.hand_in(parts=[("audio", "note.wav", "audio/wav", sound)])))
    for pressed in told["pressed"]:
        ids.append(_kept(served.hand_in(text="Straight, eighteen by twelve, stapled every two, taped.", mark=pressed, run=pressed)))
    counts["tried"] += len(ids)
    counts["taken and told"] += len(ids)
    notes = served.settled(ids)
    out = tmp_path_factory.mktemp("out") / "package.zip"
    assert main(["day", "2026-10-14", "--folder", str(served.job)]) == 0
    assert main(["handover", str(out), "--folder", str(served.job)]) == 0
    yield served, notes, out
    assert served.stop() == 0
    assert "Traceback" not in served.log.read_text(), served.log.read_text()[-3000:]


def _kept(answer) -> str:
    assert answer[0] == 201, answer
    return answer[1]


def test_words_that_another_program_would_run_are_words_on_every_page(spoken):
    served, notes, _ = spoken
    pages = ["/log", "/day/2026-10-14", "/day/2026-10-14/report.html", *(f"/entry/{id}" for id in notes)]
    day = json.loads(served.ask("GET", "/days/2026-10-14", who="lead")[2])
    pages += [f"/fitting/{one['id']}" for one in day["pieces"]] + [f"/pieces/{one['id']}/drawing.svg" for one in day["pieces"]]
    line = served.connection()
    for path in pages:
        status, headers, came = served.ask("GET", path, who="lead", over=line, Accept="text/html")
        assert status in (200, 404), (path, status)
        text = came.decode()
        assert not re.search(r"<script>alert|<img src=x|<svg onload|<b>7x</b>|href=\"javascript", text), path
        assert "\u202e" not in text or path.startswith(("/entry", "/log", "/day", "/fitting")), path
        assert not re.search(r"[\x00-\x08\x0b\x0c\x0e-\x1f]", text), path
    line.close()


def test_words_that_a_typesetter_would_run_stand_in_the_report(spoken):
    """typst reads no file and counts nothing: `#eval(\"1+1\")` stands there as it was said."""
    paper = spoken[0].job / "reports" / "day-2026-10-14.pdf"
    text = None
    if shutil.which("pdftotext"):
        text = subprocess.run(["pdftotext", "-layout", str(paper), "-"], capture_output=True, text=True, check=True).stdout
    assert paper.read_bytes().startswith(b"%PDF")
    if text is not None:
        squeezed = re.sub(r"\s+", "", text)
        assert "#read(" in squeezed and "#eval(" in squeezed
        assert Path("/etc/hostname").read_text().strip() not in squeezed


def test_no_cell_of_any_table_starts_a_formula(spoken):
    """CSV and XLSX of the package. The signs are those of OWASP's page on CSV injection, from memory, with their wide forms."""
    cells = 0
    with zipfile.ZipFile(spoken[2]) as package:
        for name in package.namelist():
            if name.endswith(".csv"):
                for row in csv.reader(io.StringIO(package.read(name).decode("utf-8"))):
                    for cell in row:
                        cells += 1
                        assert not cell.lstrip(" \u00a0\u200b\ufeff").startswith(("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")) or _number(cell), (name, cell)
            elif name.endswith(".xlsx"):
                for page in openpyxl.load_workbook(io.BytesIO(package.read(name))):
                    for row in page.iter_rows():
                        for cell in row:
                            cells += 1
                            assert cell.data_type != "f" and not (isinstance(cell.value, str) and cell.value.startswith("=")), (name, cell.value)
    assert cells > 500


def _number(cell: str) -> bool:
    try:
        float(cell)
    except ValueError:
        return False
    return True


def test_the_package_with_all_of_it_is_whole(spoken):
    from logbook.handover.verify import WHOLE, verify

    verdict = verify(spoken[2])
    assert verdict.status == WHOLE, verdict.problems


# --- and at the end


def test_nothing_crashed_nothing_else_was_harmed(site, handed_in, capsys):
    served, good, counts = site
    notes = served.settled(good)
    assert {note["state"] for note in notes.values()} == {"answered"}
    assert served.process.poll() is None and served.worker() == served.first_worker, "the same server and the same worker"
    assert "Traceback" not in served.log.read_text(), served.log.read_text()[-3000:]
    assert served.stop() == 0
    examined = doctoring.examine(served.job)
    assert examined.problems == [], examined.problems
    with capsys.disabled():
        print(f"\nhostile input: {counts}, crashed 0, good notes between them {len(good)}, all answered")
