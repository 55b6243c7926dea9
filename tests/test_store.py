"""The store: what is acknowledged is on the disk, comes twice without harm, and is never changed afterwards."""

import hashlib
import json
import os
import re
import shutil
import sqlite3
import subprocess
import sys
import uuid
from datetime import date
from pathlib import Path

import disks
import pytest
from handing import SAID, SPOKEN, new_folder, note, picture, tone

from logbook import intake, store
from logbook.intake import Part, PhotoFacts, from_form
from logbook.mistake import Broken, Mistake
from logbook.pipeline.documents import answer_to_json
from logbook.pipeline.reading_back import answer_from_json
from logbook.store import files

HERE = Path(__file__).parent


@pytest.fixture
def folder(tmp_path):
    with new_folder(tmp_path / "job") as opened:
        yield opened


def sha256(data: bytes) -> str:
    return hashlib.sha256(data).hexdigest()


def count(folder, table: str) -> int:
    return folder.db.execute(f"SELECT count(*) FROM {table}").fetchone()[0]


def parts_left(folder) -> list[Path]:
    return list(folder.path.rglob(".*.part"))


# --- a hand-in


def test_a_receipt_names_the_digest_of_every_part_and_the_bytes_lie_under_it(folder):
    sound, photo = tone(440), picture(10)
    got = store.receive(folder, note(audio=(sound,), photos=(photo,)))
    assert got.digests == {"audio": [sha256(sound)], "photos": [sha256(photo)], "text": None}
    assert store.original(folder, sha256(sound)).read_bytes() == sound
    assert store.original(folder, sha256(photo)).read_bytes() == photo
    assert parts_left(folder) == []


def test_the_same_note_again_gives_the_same_receipt_and_changes_nothing(folder):
    sent = note(audio=(tone(440), tone(550)), photos=(picture(1),))
    first, rows = store.receive(folder, sent), count(folder, "journal")
    again = store.receive(folder, sent)
    assert (again.id, again.received_at, again.digests) == (first.id, first.received_at, first.digests)
    assert (first.repeated, again.repeated) == (False, True)
    assert (count(folder, "notes"), count(folder, "parts"), count(folder, "journal")) == (1, 3, rows)
    assert parts_left(folder) == []


@pytest.mark.parametrize("other", [{"audio": (tone(441),)}, {"audio": (tone(440),), "by": "omar"}, {"text": SAID}, {"audio": (tone(440),), "photos": (picture(1),)}])
def test_another_note_under_a_known_id_is_refused_and_the_first_stays(folder, other):
    id = str(uuid.uuid4())
    first = store.receive(folder, note(id, audio=(tone(440),)))
    refused = store.receive(folder, note(id, **other))
    assert refused.key == "store.note-differs" and intake.STATUS[refused.key] == 409
    kept = [one for (one,) in folder.db.execute("SELECT sha256 FROM parts WHERE note = ?", [id])]
    assert kept == first.digests["audio"] and count(folder, "notes") == 1
    assert parts_left(folder) == []


def test_one_sound_in_two_notes_is_kept_once(folder):
    for _ in range(2):
        store.receive(folder, note(audio=(tone(440),)))
    assert (count(folder, "notes"), count(folder, "files"), len(list((folder.path / "originals").iterdir()))) == (2, 1, 1)


def test_a_torn_file_of_that_name_is_replaced_by_the_whole_one(folder):
    sound = tone(440)
    store.receive(folder, note(audio=(sound,)))
    kept = store.original(folder, sha256(sound))
    kept.write_bytes(sound[:100])
    store.receive(folder, note(audio=(sound,)))
    assert kept.read_bytes() == sound


@pytest.mark.parametrize("bad, key", [((b"",), "intake.empty"), ((b"<svg onload=alert(1)>",), "intake.not-sound"), ((tone(440), picture(1)), "intake.not-sound")])
def test_what_is_no_sound_is_refused_whole_and_leaves_nothing(folder, bad, key):
    assert store.receive(folder, note(audio=bad)).key == key
    assert (count(folder, "notes"), count(folder, "files"), list((folder.path / "originals").iterdir())) == (0, 0, [])


# --- photos that come later


def test_a_photo_comes_later_once_and_only_with_the_bytes_that_were_announced(folder):
    photo, other = picture(20), picture(21)
    sent = note(photos_to_come=(sha256(photo),))
    store.receive(folder, sent)
    assert store.note_document(folder, sent.id, "en")["photos_to_come"] == [sha256(photo)]
    assert store.add_photo(folder, sent.id, sha256(photo), Part(other), "rosa").key == "intake.digest-differs"
    first = store.add_photo(folder, sent.id, sha256(photo), Part(photo), "rosa")
    again = store.add_photo(folder, sent.id, sha256(photo), Part(photo), "rosa")
    assert (first.repeated, again.repeated) == (False, True)
    doc = store.note_document(folder, sent.id, "en")
    assert doc["photos_to_come"] == [] and [one["sha256"] for one in doc["photos"]] == [sha256(photo)]
    assert parts_left(folder) == []


def test_a_small_copy_stands_in_until_its_original_came_and_both_are_kept(folder):
    small, whole = picture(22), picture(23)
    told = PhotoFacts(SPOKEN, 45.5, -122.6, 8.0, copy_of=sha256(whole))
    sent = note(text=SAID, photos=(small,), photo_facts=(told,), photos_to_come=(sha256(whole),))
    store.receive(folder, sent)
    doc = store.note_document(folder, sent.id, "en")
    assert [(one["sha256"], one["copy_of"]) for one in doc["photos"]] == [(sha256(small), sha256(whole))]
    assert doc["photos_to_come"] == [sha256(whole)] and "copies" not in doc
    store.add_photo(folder, sent.id, sha256(whole), Part(whole), "rosa")
    doc = store.note_document(folder, sent.id, "en")
    assert [one["sha256"] for one in doc["photos"]] == [sha256(whole)], "the original is the photo"
    assert doc["copies"] == [{"sha256": sha256(small), "copy_of": sha256(whole)}] and doc["photos_to_come"] == []
    (photo,) = doc["photos"]
    assert photo["taken_from"] == photo["place_from"] == "phone" and photo["place"]["latitude"] == 45.5, "time and place go on to it"
    for digest, data in ((sha256(small), small), (sha256(whole), whole)):
        assert store.original(folder, digest).read_bytes() == data
    assert answer_to_json(answer_from_json(doc), "en") == doc, "a package reads it back"


def test_a_small_copy_of_what_was_not_announced_is_refused():
    fields = {"id": str(uuid.uuid4()), "spoken_at": SPOKEN.isoformat(), "text": SAID, "photo_facts": json.dumps([{"copy_of": "ab" * 32}])}
    assert from_form(fields, "rosa", (), (Part(picture(1)),)).key == "intake.photo-facts"
    assert from_form(fields | {"photos_to_come": json.dumps(["ab" * 32])}, "rosa", (), (Part(picture(1)),)).photo_facts[0].copy_of == "ab" * 32


def test_a_photo_of_no_note_is_refused(folder):
    photo = picture(20)
    assert store.add_photo(folder, str(uuid.uuid4()), sha256(photo), Part(photo), "rosa").key == "store.no-note"


# --- acts


def acts_on(folder, id: str, act: str):
    return {
        "confirm": lambda key: store.confirm(folder, key, id, "rosa"),
        "correct": lambda key: store.correct(folder, key, id, 0, "mark", "7", "rosa"),
        "withdraw": lambda key: store.withdraw(folder, key, id, "rosa"),
        "sign": lambda key: store.sign(folder, key, date(2026, 10, 14), "rosa", "lead"),
    }[act]


@pytest.mark.parametrize("act", ["confirm", "correct", "withdraw", "sign"])
def test_an_act_may_be_sent_again_and_stands_once(folder, act):
    sent = note(text=SAID)
    store.receive(folder, sent)
    do, key = acts_on(folder, sent.id, act), str(uuid.uuid4())
    first = do(key)
    again = do(key)
    assert not isinstance(first, Mistake) and (first.repeated, again.repeated) == (False, True)
    assert again.document == first.document and count(folder, "acts") == 1


def test_another_act_under_a_known_id_is_refused(folder):
    sent, key = note(text=SAID), str(uuid.uuid4())
    store.receive(folder, sent)
    store.correct(folder, key, sent.id, 0, "mark", "7", "rosa")
    for refused in (store.correct(folder, key, sent.id, 0, "mark", "8", "rosa"), store.confirm(folder, key, sent.id, "rosa")):
        assert refused.key == "store.act-differs"
    assert count(folder, "acts") == 1


def test_a_note_that_was_taken_back_stays_and_takes_no_more(folder):
    sent = note(text=SAID)
    store.receive(folder, sent)
    store.withdraw(folder, str(uuid.uuid4()), sent.id, "rosa")
    assert store.confirm(folder, str(uuid.uuid4()), sent.id, "rosa").key == "store.taken-back"
    assert store.note_document(folder, sent.id, "en")["text"] is not None or count(folder, "words") == 1


CHANGES = [
    "UPDATE journal SET act = 'x'", "DELETE FROM journal", "UPDATE acts SET content = '{}'", "UPDATE acts SET done_by = 'x', content = content",
    "UPDATE words SET text = 'taped'", "UPDATE words SET at = '2020-01-01'",
]  # fmt: skip


@pytest.mark.parametrize("sql", CHANGES)
def test_the_database_itself_refuses_to_change_what_was_said(folder, sql):
    sent = note(text=SAID)
    store.receive(folder, sent)
    store.confirm(folder, str(uuid.uuid4()), sent.id, "rosa")
    with pytest.raises(sqlite3.DatabaseError, match="never"):
        folder.db.execute(sql)


def test_every_hand_in_and_act_is_a_row_of_the_journal(folder):
    sent = note(text=SAID)
    store.receive(folder, sent)
    store.confirm(folder, str(uuid.uuid4()), sent.id, "rosa")
    store.withdraw(folder, str(uuid.uuid4()), sent.id, "rosa")
    rows = list(store.journal.rows(folder))
    assert [row["act"] for row in rows] == ["received", "confirmed", "taken_back"]
    assert SAID not in repr(rows), "the journal holds no words"


# --- a folder that cannot take


def test_a_newer_schema_is_refused_and_not_touched(tmp_path):
    new_folder(tmp_path / "job").close()
    conn = sqlite3.connect(tmp_path / "job" / "log.db")
    conn.execute("INSERT INTO _sqlite_migrations (migration_set, name, applied_at) VALUES ('logbook', 'a_step_of_tomorrow', '2030')")
    conn.commit()
    conn.close()
    refused = store.open_folder(tmp_path / "job")
    assert refused.key == "store.newer-schema" and refused.values["came"] == "a_step_of_tomorrow"


def test_a_folder_that_is_none_is_not_made_by_looking(tmp_path):
    assert store.open_folder(tmp_path / "nothing").key == "store.no-folder"
    assert not (tmp_path / "nothing").exists()


def test_a_log_that_is_no_database_is_told(tmp_path):
    new_folder(tmp_path / "job").close()
    (tmp_path / "job" / "log.db").write_bytes(b"not a database at all, but long enough to look at" * 100)
    assert store.open_folder(tmp_path / "job").key == "store.damaged"


def test_a_locked_log_answers_and_takes_the_note_when_it_is_free(folder):
    folder.db.execute("PRAGMA busy_timeout=50")
    other = sqlite3.connect(folder.path / "log.db", isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    sent = note()
    assert store.receive(folder, sent).key == "store.locked"
    other.execute("ROLLBACK")
    other.close()
    assert store.receive(folder, sent).repeated is False


def test_below_the_floor_of_free_space_nothing_is_received(tmp_path):
    with new_folder(tmp_path / "job", floors=store.Floors(receive=1 << 60)) as folder:
        assert store.room(folder).key == "store.disk-full"
        assert store.receive(folder, note()).key == "store.disk-full"
        assert count(folder, "notes") == 0


def test_an_error_inside_a_transaction_takes_all_of_it_back(folder):
    with pytest.raises(ZeroDivisionError), store.writing(folder) as db:
        store.journal.write(db, "received", {"note": "n"}, None)
        1 / 0
    assert count(folder, "journal") == 0
    with pytest.raises(Broken), store.writing(folder):
        raise OSError(28, "No space left on device")


# --- disks of their own: only where a mount may be made


@pytest.fixture
def disk(tmp_path):
    with disks.mounted(tmp_path / "disk", 3) as made:
        yield made


def test_a_full_disk_refuses_keeps_what_was_acknowledged_and_takes_the_note_when_there_is_room(disk):
    with new_folder(disk.path / "job", floors=store.Floors(0, 0)) as folder:
        kept, refused = [], None
        for number in range(60):
            sent = note(audio=(tone(200 + number, 4.0),))
            got = store.receive(folder, sent)
            if isinstance(got, Mistake):
                refused = got
                break
            kept.append(got)
        assert refused.key == "store.disk-full" and len(kept) > 5
        assert parts_left(folder) == []
        for got in kept:
            assert files.file_digest(store.original(folder, got.digests["audio"][0])) == got.digests["audio"][0]
        disk.mount_anew("size=20m")
        assert store.receive(folder, sent).repeated is False
        assert count(folder, "notes") == len(kept) + 1


def test_a_disk_that_is_full_for_the_log_alone_refuses_too(disk):
    """The bytes still fit; the row does not."""
    with new_folder(disk.path / "job", floors=store.Floors(0, 0)) as folder:
        (disk.path / "ballast").write_bytes(bytes(shutil.disk_usage(disk.path).free - 12_000))
        got = store.receive(folder, note(text=SAID * 200))
        assert got.key == "store.disk-full"
        (disk.path / "ballast").unlink()
        assert count(folder, "notes") == 0


def test_a_read_only_disk_can_be_read_and_takes_nothing(disk):
    with new_folder(disk.path / "job", floors=store.Floors(0, 0)) as folder:
        sent = note(text=SAID)
        store.receive(folder, sent)
    disk.mount_anew("ro")
    with store.open_folder(disk.path / "job") as folder:
        assert folder.read_only
        assert store.note_document(folder, sent.id, "en")["id"] == sent.id
        assert store.receive(folder, note()).key == "store.read-only"
        assert store.confirm(folder, str(uuid.uuid4()), sent.id, "rosa").key == "store.read-only"


def test_a_file_that_may_not_grow_is_a_full_disk(tmp_path):
    new_folder(tmp_path / "job").close()
    done = subprocess.run([sys.executable, HERE / "store_intake.py", tmp_path / "job", "2000"], capture_output=True, text=True, env=environment())
    assert done.stdout.split() == ["begin", "store.disk-full"], done.stderr
    with store.open_folder(tmp_path / "job") as folder:
        assert count(folder, "notes") == 0 and parts_left(folder) == []


# --- the order of an intake, as the system calls tell it


def environment() -> dict:
    return os.environ | {"PYTHONPATH": os.pathsep.join([str(HERE), str(HERE.parent)])}


CALL = re.compile(r"(?P<call>fsync|fdatasync|rename\w*|pwrite64|write)\((?P<rest>.*)")
STRACE = ["strace", "-f", "-y", "-e", "trace=fsync,fdatasync,rename,renameat,renameat2,write,pwrite64"]


@pytest.mark.skipif(not shutil.which("strace"), reason="strace is not installed")
def test_bytes_names_and_row_reach_the_disk_in_this_order_before_the_receipt(tmp_path):
    new_folder(tmp_path / "job").close()
    trace = tmp_path / "trace"
    done = subprocess.run([*STRACE, "-o", trace, sys.executable, HERE / "store_intake.py", tmp_path / "job"], capture_output=True, text=True, env=environment())
    if "PTRACE" in done.stderr.upper() or "Operation not permitted" in done.stderr:
        pytest.skip("this machine does not let one process watch another")
    assert done.stdout.split() == ["begin", "acknowledged"], done.stderr
    steps = list(told(trace.read_text(errors="replace")))
    steps = steps[steps.index("begin") : steps.index("acknowledged") + 1]  # closing the log moves its pages once more
    part = ["write part", "fsync part"]
    assert steps[:8] == ["begin", *part, *part, "rename", "rename", "fsync originals"], steps
    assert steps[8] == "write log" and steps[-2:] == ["fsync log", "acknowledged"], steps
    assert set(steps[8:-1]) == {"write log", "fsync log"}


def told(trace: str):
    """The calls that matter, in order; writes to one file that follow one another count once."""
    last = None
    for line in trace.splitlines():
        found = CALL.search(line)
        if not found:
            continue
        call, rest = found["call"], found["rest"]
        step = None
        if '"begin' in rest or '"acknowledged' in rest:
            step = "begin" if '"begin' in rest else "acknowledged"
        elif call.startswith("rename") and ".part" in rest:
            step = "rename"
        elif re.search(r"log\.db-wal>", rest):
            step = "write log" if "write" in call else "fsync log"
        elif ".part>" in rest:
            step = "write part" if "write" in call else "fsync part"
        elif call == "fsync" and "/originals>" in rest:
            step = "fsync originals"
        if step and not (step == last and step.startswith("write")):
            yield step
        last = step or last
