"""Damage done by hand to a job folder: each kind is found and named, and what is mended is told."""

import json
import os
import shutil
import sqlite3

import pytest
from handing import new_folder
from test_copying import fill

from logbook import chain, lease, store
from logbook.cli import main
from logbook.mistake import Mistake
from logbook.store import doctoring, people
from logbook.store.folder import hold


@pytest.fixture(scope="module")
def filled(tmp_path_factory):
    path = tmp_path_factory.mktemp("doctor") / "job"
    fill(path)
    return path


@pytest.fixture
def job(filled, tmp_path):
    shutil.copytree(filled, tmp_path / "job")
    return tmp_path / "job"


def keys(job, **more) -> list[str]:
    return [one.key for one in doctoring.examine(job, **more).problems]


def by_hand(job, *statements, guards=()) -> None:
    """Change the database as somebody with a tool would: the guards are taken away and put back."""
    conn = sqlite3.connect(job / "log.db")
    conn.execute("PRAGMA foreign_keys=OFF")
    kept = [conn.execute("SELECT sql FROM sqlite_master WHERE name = ?", [name]).fetchone()[0] for name in guards]
    for name in guards:
        conn.execute(f"DROP TRIGGER {name}")
    for statement, *values in statements:
        conn.execute(statement, values)
    for sql in kept:
        conn.execute(sql)
    conn.commit()
    conn.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    conn.close()


def test_a_whole_folder_is_whole_and_left_as_it_is(job):
    with store.open_folder(job) as folder:
        rows = store.journal.newest(folder)
    found = doctoring.examine(job)
    assert (found.problems, found.remarks, found.mended) == ([], [], [])
    assert (found.notes, found.files, found.rows, found.hash) == (2, 4, rows["seq"], rows["hash"])
    assert found.compared.rows >= 5


# --- files


@pytest.mark.parametrize("place", ["originals", "documents"])
@pytest.mark.parametrize("harm, key", [("flip", "store.file-altered"), ("empty", "store.file-altered"), ("remove", "store.file-missing")])
def test_a_file_that_is_not_what_came_is_named(job, place, harm, key):
    file = sorted((job / place).iterdir())[0]
    whole = file.read_bytes()
    if harm == "remove":
        file.unlink()
    else:
        file.write_bytes(b"" if harm == "empty" else whole[:-1] + bytes([whole[-1] ^ 1]))
    found = doctoring.examine(job)
    assert [(one.key, one.where) for one in found.problems] == [(key, f"{place}/{file.name}")]


def test_a_file_nobody_speaks_of_is_remarked_and_kept(job):
    (job / "originals" / "stray.wav").write_bytes(b"?")
    found = doctoring.examine(job)
    assert (found.problems, [one.key for one in found.remarks]) == ([], ["store.file-orphan"])
    assert (job / "originals" / "stray.wav").exists()


# --- database


def test_a_torn_database_is_told_and_its_files_are_looked_at_all_the_same(job):
    whole = (job / "log.db").read_bytes()
    (job / "log.db").write_bytes(b"\0" * 4096 + whole[4096:])
    sorted((job / "originals").iterdir())[0].write_bytes(b"rot")
    assert keys(job) == ["store.damaged", "store.file-altered"]


def test_a_page_that_was_overwritten_is_found(job):
    by_hand(job)
    conn = sqlite3.connect(job / "log.db")
    page = conn.execute("SELECT rootpage FROM sqlite_master WHERE name = 'parts'").fetchone()[0]
    size = conn.execute("PRAGMA page_size").fetchone()[0]
    conn.close()
    with open(job / "log.db", "r+b") as file:
        file.seek((page - 1) * size)
        file.write(b"\xa5" * size)
    assert "store.database-damaged" in keys(job)


def test_a_reference_to_nothing_is_found(job):
    by_hand(job, ("DELETE FROM files WHERE what = 'sound'",))
    assert "store.database-damaged" in keys(job)


@pytest.mark.parametrize("guard", ["journal_stays", "journal_keeps", "acts_stay", "words_stay", "readings_stay"])
def test_a_guard_that_was_taken_away_is_found(job, guard):
    by_hand(job, (f"DROP TRIGGER {guard}",))
    assert keys(job) == ["keeping.guard-gone"]


def test_a_guard_that_guards_nothing_any_more_is_found(job):
    by_hand(job, ("DROP TRIGGER acts_stay",), ("CREATE TRIGGER acts_stay BEFORE UPDATE ON acts BEGIN SELECT 1; END",))
    assert keys(job) == ["keeping.guard-gone"]


# --- journal, and what it speaks of


def seq_of(job, act: str) -> int:
    conn = sqlite3.connect(job / "log.db")
    found = conn.execute("SELECT seq FROM journal WHERE act = ?", [act]).fetchone()[0]
    conn.close()
    return found


JOURNAL = ("journal_stays", "journal_keeps")


def test_a_changed_row_of_the_journal_is_found(job):
    by_hand(job, ("UPDATE journal SET at = '2020-01-01T00:00:00+00:00' WHERE seq = 2",), guards=JOURNAL)
    assert keys(job) == ["store.chain-altered"]


def test_a_row_taken_out_of_the_journal_is_found(job):
    by_hand(job, ("DELETE FROM salts WHERE seq = 2",), ("DELETE FROM journal WHERE seq = 2",), guards=JOURNAL)
    assert "store.chain-gap" in keys(job)


def test_a_journal_with_its_end_cut_off_is_found_by_what_it_no_longer_speaks_of(job):
    seq = seq_of(job, "corrected")
    by_hand(job, ("DELETE FROM salts WHERE seq >= ?", seq), ("DELETE FROM journal WHERE seq >= ?", seq), guards=JOURNAL)
    assert keys(job) == ["keeping.not-in-journal"]


def test_a_journal_written_anew_is_found_by_a_printed_day_report(job):
    """Everything fits together again, but the report of that day carries the old hash."""
    with store.open_folder(job) as folder:
        newest = store.journal.newest(folder)
    report = {"reports": [{"journal": newest}]}
    (job / "reports" / "day-2026-10-14.json").write_text(json.dumps(report))
    assert keys(job) == []
    rows, last = [], None
    with store.open_folder(job) as folder:
        for row in store.journal.each(folder.db):
            at = "2026-10-14T23:00:00+00:00" if row.seq == newest["seq"] else row.at
            last = chain.following(last, at, row.act, row.ids, row.digest)
            rows.append(("UPDATE journal SET at = ?, before = ?, hash = ? WHERE seq = ?", last.at, last.before, last.hash, last.seq))
    by_hand(job, *rows, guards=JOURNAL)
    assert keys(job) == ["store.chain-not-printed"]


CHANGED = {
    "the speaker": ("UPDATE notes SET spoken_by = 'somebody'", (), "store.content-altered"),
    "the hour": ("UPDATE notes SET spoken_at = '2026-10-13T10:00:00-05:00'", (), "store.content-altered"),
    "heard words": ("UPDATE words SET text = 'All taped and rubbed down.' WHERE source = 'heard'", ("words_stay",), "store.content-altered"),
    "their seconds": ("UPDATE words SET transcript = replace(transcript, '\"second\": 0.0', '\"second\": 0.1') WHERE source = 'heard'", ("words_stay",), "store.content-altered"),
    "typed words": ("UPDATE words SET text = text || ' Taped.' WHERE source = 'typed'", ("words_stay",), "keeping.words-altered"),
    "a correction": ("UPDATE acts SET content = replace(content, '14', '15')", ("acts_stay",), "store.content-altered"),
    "who corrected": ("UPDATE acts SET done_by = 'rosa'", ("acts_stay",), "store.content-altered"),
    "where a photo was taken": ("UPDATE parts SET latitude = 41.0, longitude = -87.0 WHERE what = 'picture'", (), "store.content-altered"),
    "which photo": ("UPDATE parts SET sha256 = (SELECT sha256 FROM parts WHERE what = 'picture' AND place = 1) WHERE what = 'picture' AND place = 0", (), "keeping.part-gone"),
    "the size of a document": ("UPDATE files SET bytes = bytes + 1 WHERE what = 'document'", (), "store.content-altered"),
    "a salt": ("DELETE FROM salts WHERE seq = 1", (), "store.content-gone"),
    "an act that is gone": ("DELETE FROM acts", (), "store.content-gone"),
    "an act that never was": ("INSERT INTO acts (id, act, note, done_by, at, content) SELECT 'x', 'confirmed', id, 'rosa', '2026', '{}' FROM notes LIMIT 1", (), "keeping.not-in-journal"),
}  # fmt: skip


@pytest.mark.parametrize("what", CHANGED)
def test_a_change_behind_the_journals_back_is_found(job, what):
    statement, guards, key = CHANGED[what]
    by_hand(job, (statement,), guards=guards)
    assert key in keys(job), what


def test_a_name_that_was_erased_on_request_is_no_damage(job, capsys):
    assert main(["people", "--folder", str(job), "add", "Rosa Quint", "--role", "installer"]) == 0
    by_hand(job, ("UPDATE people SET name = 'Rosa Quinn', folded = 'rosa quinn'",))
    assert keys(job) == ["store.content-altered"]
    by_hand(job, ("UPDATE people SET name = 'Rosa Quint', folded = 'rosa quint'",))
    assert main(["people", "--folder", str(job), "erase", "Rosa Quint"]) == 0
    assert keys(job) == []
    capsys.readouterr()
    assert main(["doctor", "--folder", str(job)]) == 0
    assert "erased on" in capsys.readouterr().out
    with store.open_folder(job) as folder:
        seq = seq_of(job, "person-added")
        assert folder.db.execute("SELECT count(*) FROM salts WHERE seq = ?", [seq]).fetchone() == (0,), "nobody can try names against the digest"
        assert people.everybody(folder.db)[0].name is None


def test_a_name_that_is_gone_without_an_erasure_is_found(job):
    main(["people", "--folder", str(job), "add", "Rosa Quint", "--role", "installer"])
    by_hand(job, ("UPDATE people SET name = NULL",))
    assert keys(job) == ["store.content-gone"]


# --- mending


def test_parts_of_hand_ins_that_nobody_acknowledged_go_when_no_server_holds_the_folder(job):
    part = job / "originals" / ".0123.part"
    part.write_bytes(b"half a note")
    held = hold(job)
    try:
        found = doctoring.examine(job)
        assert part.exists() and [one.key for one in found.remarks] == ["keeping.parts-left"]
    finally:
        os.close(held)
    assert doctoring.examine(job, mend=False).mended == [] and part.exists()
    found = doctoring.examine(job)
    assert found.mended == [("store.doctor.parts", {"count": 1})] and not part.exists() and found.problems == []


def test_a_sub_folder_and_the_small_copies_in_it_are_made_anew(job):
    before = {file.name for file in (job / "derived").iterdir()}
    shutil.rmtree(job / "derived")
    assert keys(job, mend=False) == ["keeping.no-subfolder"]
    found = doctoring.examine(job)
    assert found.problems == [] and [key for key, _ in found.mended] == ["store.doctor.folders", "keeping.small-copies"]
    assert {file.name for file in (job / "derived").iterdir()} == before != set()


def test_a_note_whose_worker_is_gone_waits_again(job):
    by_hand(job, ("UPDATE notes SET state = 'hearing', held_by = 'x', held_boot = 'a boot before', held_until = 1e12 WHERE seq = 1",))
    assert doctoring.examine(job, mend=False).mended == []
    assert doctoring.examine(job).mended == [("store.doctor.lapsed", {"count": 1})]
    assert doctoring.examine(job).mended == []


def test_a_note_that_is_being_heard_is_left_to_its_worker(job):
    me, now = lease.worker_name(), lease.clock()
    by_hand(job, ("UPDATE notes SET state = 'hearing', held_by = ?, held_boot = ?, held_until = ? WHERE seq = 1", me, now.boot, now.seconds() + 600))
    assert doctoring.examine(job).mended == []


def test_nothing_is_mended_in_a_damaged_database(job):
    by_hand(job, ("DELETE FROM files WHERE what = 'sound'",), ("UPDATE notes SET state = 'hearing', held_boot = 'x', held_until = 0 WHERE seq = 1",))
    assert doctoring.examine(job).mended == []


# --- the verb


def test_the_verb_tells_whole_from_not_and_from_no_folder(job, tmp_path, capsys):
    assert main(["doctor", "--folder", str(job)]) == 0
    assert "Whole: 2 notes, 4 files" in capsys.readouterr().out
    sorted((job / "originals").iterdir())[0].unlink()
    assert main(["doctor", "--folder", str(job), "--language", "es"]) == 1
    assert "se recibió y no está" in capsys.readouterr().out
    assert main(["doctor", "--folder", str(tmp_path / "nothing")]) == 2
    assert not (tmp_path / "nothing").exists()


def test_the_verb_speaks_json(job, capsys):
    sorted((job / "originals").iterdir())[0].unlink()
    assert main(["doctor", "--folder", str(job), "--json"]) == 1
    doc = json.loads(capsys.readouterr().out)
    assert doc["whole"] is False and [one["key"] for one in doc["problems"]] == ["store.file-missing"]
    assert all(one["error"] and one["cure"] for one in doc["problems"])


def test_a_torn_job_file_does_not_end_the_examination(job):
    (job / "job.toml").write_text("[[[", encoding="utf-8")
    sorted((job / "originals").iterdir())[0].unlink()
    assert len(keys(job)) == 2 and "store.file-missing" in keys(job)


def test_a_folder_of_a_newer_version_is_left_alone(tmp_path):
    new_folder(tmp_path / "job").close()
    by_hand(tmp_path / "job", ("INSERT INTO _sqlite_migrations (migration_set, name, applied_at) VALUES ('logbook', 'tomorrow', '2030')",))
    refused = doctoring.examine(tmp_path / "job")
    assert isinstance(refused, Mistake) and refused.key == "store.newer-schema"
