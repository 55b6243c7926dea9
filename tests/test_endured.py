"""What a bad day brings: a worker that is stopped and goes on, a clock that is set, a disk that fills, a log that somebody locks.

Each is brought about, not played: a real process gets SIGSTOP, a real small disk is mounted, a real lock is held.
"""

from __future__ import annotations

import os
import signal
import sqlite3
import subprocess
import sys
import threading
import time
import uuid
from datetime import UTC, datetime, timedelta
from pathlib import Path

import disks
import pytest
from desk import note_form, open_desk
from handing import new_folder, note, picture, tone

from logbook import lease, store, worker
from logbook.hearing import scripted
from logbook.mistake import Mistake
from logbook.store import doctoring, people
from logbook.store import folder as job_folder

HERE = Path(__file__).parent
NOW = datetime(2026, 10, 14, 15, tzinfo=UTC)
FIRST = "Straight {} on run two, eighteen by twelve, stapled every two, taped with 181A-P, rubbed down."
SECOND = "Elbow {} on run nine, twenty by ten, ninety degrees, vanes in, stapled every two, taped with 181A-M, rubbed down."


def until(true, what: str):
    """Looks again until it is so; a worker that never gets there is a failure, not a wait without an end."""
    end, pause = time.monotonic() + 180, threading.Event()
    while not true():
        assert time.monotonic() < end, what
        pause.wait(0.01)


# --- a worker that is stopped and goes on


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="asks the process by /proc")
def test_a_stopped_worker_that_goes_on_writes_nothing_over_the_one_that_took_over(tmp_path):
    """SIGSTOP while it holds three notes; its hold ends, another hears them; SIGCONT: what it brings is thrown away, and it works on."""
    prepared = {who: tmp_path / who for who in ("first", "second")}
    sounds = [tone(300 + 10 * number, 1.0) for number in range(4)]
    with new_folder(tmp_path / "job") as folder:
        notes = [note(audio=(sound,)) for sound in sounds]
        for one in notes[:3]:
            assert not isinstance(store.receive(folder, one), Mistake)
    for who, said in (("first", FIRST), ("second", SECOND)):
        prepared[who].mkdir()
        for number, sound in enumerate(sounds):
            (prepared[who] / f"{store.files.hashlib.sha256(sound).hexdigest()}.txt").write_text(said.format(number))

    def states():
        log = sqlite3.connect(f"file:{tmp_path / 'job' / 'log.db'}?mode=ro", uri=True, timeout=5)
        try:
            return [state for (state,) in log.execute("SELECT state FROM notes ORDER BY seq")]
        finally:
            log.close()

    command = [sys.executable, "-m", "logbook", "work", "--folder", tmp_path / "job", "--engine", "scripted", "--prepared", prepared["first"]]
    stopped = subprocess.Popen(command, env={**os.environ, "PYTHONPATH": str(HERE.parent)}, stderr=subprocess.PIPE)
    try:
        until(lambda: "hearing" in states(), "the worker takes the notes up")
        stopped.send_signal(signal.SIGSTOP)
        until(lambda: Path(f"/proc/{stopped.pid}/stat").read_text().rpartition(")")[2].split()[0] == "T", "it stands still")
        assert states() == ["hearing"] * 3, "it holds all three and has written nothing"

        ahead = lease.Clock(lease.clock().boot, lambda: lease.clock().seconds() + lease.SECONDS + 1)
        with store.open_folder(tmp_path / "job") as folder:
            before = lease.Clock(lease.clock().boot, lease.clock().seconds)
            assert lease.lapse(folder, before) == [], "a worker that stands still for a moment keeps its notes"
            bench = worker.Bench(lambda: scripted.make(prepared["second"]), clock=ahead)
            while worker.work_once(folder, bench).notes:
                pass
            assert states() == ["answered"] * 3

        stopped.send_signal(signal.SIGCONT)
        with store.open_folder(tmp_path / "job") as folder:
            assert not isinstance(store.receive(folder, notes[3]), Mistake)
        until(lambda: states()[3] == "answered", "the one that went on hears the next note")
        stopped.send_signal(signal.SIGTERM)
        assert stopped.wait(60) == 0, stopped.stderr.read().decode()
    finally:
        if stopped.poll() is None:
            stopped.send_signal(signal.SIGCONT)
            stopped.kill()
            stopped.wait()
        stopped.stderr.close()
    with store.open_folder(tmp_path / "job") as folder:
        said = [store.note_document(folder, one.id, "en")["text"] for one in notes]
        assert said == [SECOND.format(0), SECOND.format(1), SECOND.format(2), FIRST.format(3)]
        heard = [row for (row,) in folder.db.execute("SELECT json_extract(ids, '$.note') FROM journal WHERE act = 'heard'")]
        assert sorted(heard) == sorted(one.id for one in notes), "each was heard once"
    assert doctoring.examine(tmp_path / "job").problems == []


# --- a clock that is set


def test_a_clock_that_jumps_loses_no_note_and_breaks_no_chain(tmp_path):
    """A day back, a year ahead, and right again: notes keep the order they came in, receipts are given again as they were."""
    with new_folder(tmp_path / "job") as folder:
        came, receipts = [], []
        for jump in (timedelta(), timedelta(days=-1), timedelta(days=365), timedelta(days=-3650), timedelta(minutes=1)):
            sent = note(text=FIRST.format(len(came)))
            receipts.append(store.receive(folder, sent, NOW + jump))
            came.append(sent)
            worker.work_once(folder, worker.Bench(lambda: None), NOW + jump)
        assert [store.receive(folder, sent, NOW).received_at for sent in came] == [one.received_at for one in receipts]
        listed = store.notes_since(folder, None, 50, store.Filters(), "en")["notes"]
        assert [one["id"] for one in listed] == [sent.id for sent in came], "in order of receipt, whatever the clock said"
        assert {one["state"] for one in listed} == {"answered"}
        first = store.notes_since(folder, None, 2, store.Filters(), "en")
        rest = store.notes_since(folder, first["next"], 50, store.Filters(), "en")
        assert [one["id"] for one in (*first["notes"], *rest["notes"])] == [sent.id for sent in came], "a cursor misses none"
    assert doctoring.examine(tmp_path / "job").problems == []


def test_a_clock_that_was_ahead_shuts_nobody_out_and_opens_no_door_to_guessing(tmp_path):
    desk = open_desk(tmp_path)
    with desk.folder() as folder, store.writing(folder) as db:
        for _ in range(people.TRIES_OF_A_NAME):
            people.note_attempt(db, "Rosa", "10.0.0.1", False, NOW + timedelta(days=300))
        assert people.must_wait(db, "Rosa", "10.0.0.1", NOW + timedelta(days=300)) > 0
        assert people.must_wait(db, "Rosa", "10.0.0.1", NOW) == 0, "not for 300 days"
        people.note_attempt(db, "Rosa", "10.0.0.1", True, NOW + timedelta(days=300))
        for _ in range(people.TRIES_OF_A_NAME):
            people.note_attempt(db, "Rosa", "10.0.0.2", False, NOW)
        assert 0 < people.must_wait(db, "Rosa", "10.0.0.3", NOW) <= people.WINDOW.total_seconds() + 1
        assert 0 < people.must_wait(db, "Rosa", "10.0.0.3", NOW - timedelta(minutes=10)) <= people.WINDOW.total_seconds() + 1


# --- a disk that fills, over HTTP


@pytest.fixture
def small_disk(tmp_path):
    with disks.mounted(tmp_path / "disk", 112) as disk:
        yield disk


def test_a_disk_that_fills_up_is_told_before_a_body_is_read_and_every_acknowledged_note_stays(small_disk):
    """Below 100 MB: 507 with a cure, to notes and to acts; reading goes on; with room again the same note is taken."""
    desk = open_desk(small_disk.path)
    kept, refused = [], None
    for number in range(30):
        form = note_form(photo=[picture(number) + bytes(2_000_000)])
        answer = desk.by_key("installer", "POST", "/notes", data=dict(form))
        if answer.status_code == 507:
            refused = form
            break
        assert answer.status_code == 201
        kept.append(answer.json["id"])
    assert refused and len(kept) >= 3 and answer.json["cure"] and int(answer.headers["Retry-After"]) > 0
    assert desk.app.test_client().get("/ready").status_code == 507
    assert desk.by_key("installer", "POST", f"/notes/{kept[0]}/right", json={"id": str(uuid.uuid4())}).status_code == 507
    assert [desk.by_key("installer", "GET", f"/notes/{id}").status_code for id in kept] == [200] * len(kept)
    small_disk.mount_anew("size=160m")
    again = note_form(id=refused["id"], photo=[picture(40)])
    assert desk.by_key("installer", "POST", "/notes", data=again).status_code == 201
    assert doctoring.examine(desk.settings.folder).problems == []


# --- a log that somebody locks


def test_a_log_locked_by_another_program_answers_503_and_takes_the_note_afterwards(tmp_path, monkeypatch):
    """A copy made with another program may hold the log for longer than a note waits: the phone is told to come again."""
    desk = open_desk(tmp_path)
    monkeypatch.setattr(job_folder, "PATIENCE", 0.2)
    form = {"id": str(uuid.uuid4()), "spoken_at": "2026-10-14T10:00:00-05:00", "text": FIRST.format(1)}
    other = sqlite3.connect(desk.settings.folder / "log.db", isolation_level=None)
    other.execute("BEGIN EXCLUSIVE")
    answer = desk.by_key("installer", "POST", "/notes", data=dict(form))
    assert answer.status_code == 503 and answer.json["cure"] and int(answer.headers["Retry-After"]) > 0
    assert desk.by_key("installer", "GET", "/notes").status_code == 200, "reading goes on"
    other.execute("ROLLBACK")
    other.close()
    assert desk.by_key("installer", "POST", "/notes", data=dict(form)).status_code == 201
    assert doctoring.examine(desk.settings.folder).problems == []
