"""Backup while it is used, the original destroyed, and a restore that proves itself."""

import json
import shutil
import sqlite3
import threading
import uuid
from pathlib import Path

import pytest
from handing import SAID, new_folder, note, picture, tone

from logbook import store, worker
from logbook.cli import main
from logbook.hearing import scripted
from logbook.mistake import Mistake
from logbook.store import copying


class Ears:
    name = "prepared"

    def hear(self, sounds, *, languages):
        return [scripted.spread(SAID, sound.seconds, "en") for sound in sounds]


def fill(path: Path) -> None:
    """A job with sound, photos, typed words, a correction, a document and a schedule beside it."""
    with new_folder(path) as folder:
        heard = store.receive(folder, note(audio=(tone(440),), photos=(picture(10), picture(200))))
        store.receive(folder, note(text="Straight five on run two, taped with 181A-P."))
        store.add_document(folder, store_part(b"%PDF-1.7 a letter"), "ada")
        while any(worker.work_once(folder, worker.Bench(Ears))):
            pass
        store.correct(folder, str(uuid.uuid4()), heard.id, 0, "mark", "14", "ada")
        (path / "site-notes.csv").write_text("mark,run\n4,2\n", encoding="utf-8")
        (path / "reports" / "signed").mkdir()
        (path / "reports" / "signed" / "day-2026-10-14-abc.pdf").write_bytes(b"%PDF-1.7 a day")


def store_part(data: bytes):
    from logbook.intake import Part

    return Part(data, "letter.pdf")


@pytest.fixture(scope="module")
def filled(tmp_path_factory):
    path = tmp_path_factory.mktemp("copying") / "job"
    fill(path)
    return path


@pytest.fixture
def job(filled, tmp_path):
    shutil.copytree(filled, tmp_path / "job")
    return tmp_path / "job"


def back_up(job: Path, out: Path, **more):
    with store.open_folder(job) as folder:
        return copying.back_up(folder, out, **more)


def told(path: Path) -> dict:
    """Everything a job folder holds: rows of every table, documents for readers, bytes of every file."""
    with store.open_folder(path) as folder:
        tables = [name for (name,) in folder.db.execute("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name")]
        return {
            "rows": {name: list(folder.db.execute(f"SELECT * FROM [{name}]")) for name in tables},
            "notes": list(store.each_note(folder, "es")),
            "pieces": list(store.each_piece(folder, "en")),
            "newest": store.journal.newest(folder),
            "files": {file.relative_to(path).as_posix(): file.read_bytes() for file in sorted(path.rglob("*")) if file.is_file() and not file.name.startswith("log.db")},
        }


def test_what_was_destroyed_comes_back_as_it_was(job, tmp_path):
    before = told(job)
    assert before["notes"] and before["pieces"] and len(before["files"]) >= 9
    made = back_up(job, tmp_path / "copy")
    shutil.rmtree(job)
    back = copying.restore(tmp_path / "copy", tmp_path / "new")
    assert not isinstance(back, Mistake), back
    assert (back.notes, back.hash, back.problems) == (2, made.hash, ())
    assert told(tmp_path / "new") == before
    with store.open_folder(tmp_path / "new") as folder:
        assert store.receive(folder, note(audio=(tone(999),))).repeated is False, "and the log goes on"
        assert store.journal.newest(folder)["seq"] == made.seq + 1


def test_a_second_copy_takes_new_files_only(job, tmp_path):
    first = back_up(job, tmp_path / "copy")
    assert first.new == first.files
    again = back_up(job, tmp_path / "copy")
    assert (again.files, again.new) == (first.files, 0)
    with store.open_folder(job) as folder:
        store.receive(folder, note(audio=(tone(777),)))
    third = back_up(job, tmp_path / "copy")
    assert (third.files, third.new, third.seq) == (first.files + 1, 1, first.seq + 1)
    assert len(list((tmp_path / "copy").glob("log-*.db"))) == 1
    assert copying.restore(tmp_path / "copy", tmp_path / "new").notes == 3


def test_notes_go_on_coming_in_while_a_copy_is_made(job, tmp_path):
    """Whatever was acknowledged before a copy began is in it, and every copy is whole."""
    acknowledged, over = [], threading.Event()

    def hand_in():
        with store.open_folder(job) as folder:
            while not over.is_set():
                acknowledged.append(store.receive(folder, note(audio=(tone(300 + len(acknowledged)),))))

    phone = threading.Thread(target=hand_in)
    phone.start()
    try:
        for number in range(4):
            while len(acknowledged) < 5 * (number + 1):
                phone.join(0.001)
            known = list(acknowledged)
            assert not isinstance(back_up(job, tmp_path / "copy"), Mistake)
            back = copying.restore(tmp_path / "copy", tmp_path / f"new{number}")
            assert back.problems == ()
            with store.open_folder(tmp_path / f"new{number}") as folder:
                there = {id for (id,) in folder.db.execute("SELECT id FROM notes")}
            assert {one.id for one in known} <= there
    finally:
        over.set()
        phone.join()
    assert not any(isinstance(one, Mistake) for one in acknowledged)


def test_a_copy_that_was_cut_short_leaves_the_one_before_it_whole(job, tmp_path, monkeypatch):
    before = told(job)
    back_up(job, tmp_path / "copy")
    with store.open_folder(job) as folder:
        store.receive(folder, note(audio=(tone(777),)))

    def cut(*_):
        raise KeyboardInterrupt

    monkeypatch.setattr(copying, "_write_list", cut)
    with pytest.raises(KeyboardInterrupt):
        back_up(job, tmp_path / "copy")
    monkeypatch.undo()
    copying.restore(tmp_path / "copy", tmp_path / "new")
    assert told(tmp_path / "new") == before
    assert back_up(job, tmp_path / "copy").seq == before["newest"]["seq"] + 1
    assert len(list((tmp_path / "copy").glob("log-*.db"))) == 1


def listed(copy: Path) -> list[Path]:
    return sorted((copy / "files").iterdir()) + sorted(copy.glob("log-*.db"))


@pytest.mark.parametrize("harm", ["flip", "cut", "remove"])
def test_a_copy_with_any_damaged_file_is_refused_and_nothing_is_laid_down(job, tmp_path, harm):
    back_up(job, tmp_path / "copy")
    for file in listed(tmp_path / "copy"):
        whole = file.read_bytes()
        if harm == "remove":
            file.unlink()
        else:
            file.write_bytes(bytes([whole[0] ^ 1]) + whole[1:] if harm == "flip" else whole[:-1])
        refused = copying.restore(tmp_path / "copy", tmp_path / "new")
        assert refused.key == "store.not-a-copy" and file.name in refused.values["came"]
        assert not (tmp_path / "new").exists()
        file.write_bytes(whole)
    assert copying.restore(tmp_path / "copy", tmp_path / "new").problems == ()


def test_a_log_that_does_not_hold_together_never_takes_the_place_of_a_good_copy(job, tmp_path, capsys):
    """A disk that went bad under the log: the nightly copy is then the last good one."""
    before = told(job)
    assert main(["backup", "--folder", str(job), str(tmp_path / "copy")]) == 0
    with sqlite3.connect(job / "log.db") as db:
        (page,) = db.execute("SELECT rootpage FROM sqlite_master WHERE name = 'readings'").fetchone()
        (size,) = db.execute("PRAGMA page_size").fetchone()
    db.close()
    with open(job / "log.db", "r+b") as file:
        file.seek((page - 1) * size)
        file.write(b"\x55" * size)
    assert main(["backup", "--folder", str(job), str(tmp_path / "copy")]) == 2
    assert "nothing in it was replaced" in capsys.readouterr().err
    assert main(["restore", "--folder", str(tmp_path / "back"), str(tmp_path / "copy")]) == 0
    assert told(tmp_path / "back") == before


def test_proving_a_copy_mends_what_was_damaged_in_it(job, tmp_path):
    back_up(job, tmp_path / "copy")
    for file in sorted((tmp_path / "copy" / "files").iterdir()):
        file.write_bytes(b"rot")
    assert back_up(job, tmp_path / "copy").new == 0
    assert isinstance(copying.prove(tmp_path / "copy"), Mistake)
    mended = back_up(job, tmp_path / "copy", prove=True)
    assert mended.new == mended.files and not isinstance(copying.prove(tmp_path / "copy"), Mistake)


def test_a_file_that_the_job_lost_stays_in_the_copy_and_is_told(job, tmp_path):
    back_up(job, tmp_path / "copy")
    lost = sorted((job / "originals").iterdir())[0]
    whole = lost.read_bytes()
    lost.unlink()
    made = back_up(job, tmp_path / "copy")
    assert [one.key for one in made.problems] == ["store.file-missing"]
    assert copying.restore(tmp_path / "copy", tmp_path / "new").problems == ()
    assert (tmp_path / "new" / "originals" / lost.name).read_bytes() == whole


def test_a_file_that_was_damaged_before_its_first_copy_is_told_and_the_rest_comes_back(job, tmp_path):
    bad = sorted((job / "originals").iterdir())[0]
    bad.write_bytes(b"rot")
    assert [one.key for one in back_up(job, tmp_path / "copy").problems] == ["store.file-altered"]
    back = copying.restore(tmp_path / "copy", tmp_path / "new")
    assert [one.key for one in back.problems] == ["store.file-missing"] and back.notes == 2
    assert main(["restore", str(tmp_path / "copy"), "--folder", str(tmp_path / "other")]) == 1


@pytest.mark.parametrize("place", ["../out.txt", "/etc/out", "a/../../out", ".hidden", "log.db", "originals/../../x", "a\\b", ""])
def test_a_list_that_leads_out_of_the_folder_is_no_copy(job, tmp_path, place):
    back_up(job, tmp_path / "copy")
    whole = json.loads((tmp_path / "copy" / "copy.json").read_text())
    one = whole["files"][0]
    file = tmp_path / "copy" / "files" / (one["sha256"] + Path(one["path"]).suffix)
    file.rename(file.with_suffix(Path(place).suffix))  # all else fits, so that the place alone is refused
    one["path"] = place
    (tmp_path / "copy" / "copy.json").write_text(json.dumps(whole))
    refused = copying.restore(tmp_path / "copy", tmp_path / "new")
    assert refused.key == "store.not-a-copy" and refused.values["came"] == "copy.json"
    assert not (tmp_path / "new").exists() and not (tmp_path / "out.txt").exists()


def test_a_journal_changed_in_the_copy_with_fitting_digests_shows_when_it_comes_back(job, tmp_path):
    back_up(job, tmp_path / "copy")
    base = next((tmp_path / "copy").glob("log-*.db"))
    conn = sqlite3.connect(base)
    conn.execute("DROP TRIGGER journal_stays")
    conn.execute("UPDATE journal SET act = 'confirmed' WHERE seq = 1")
    conn.commit()
    conn.close()
    digest = store.files.file_digest(base)
    base.rename(base.with_name(f"log-{digest}.db"))
    whole = json.loads((tmp_path / "copy" / "copy.json").read_text())
    whole["database"]["sha256"] = digest
    (tmp_path / "copy" / "copy.json").write_text(json.dumps(whole))
    back = copying.restore(tmp_path / "copy", tmp_path / "new")
    assert {"store.chain-altered", "keeping.guard-gone"} <= {one.key for one in back.problems}


def test_nothing_is_ever_brought_back_over_something(job, tmp_path):
    back_up(job, tmp_path / "copy")
    before = told(job)
    assert copying.restore(tmp_path / "copy", job).key == "store.not-empty"
    assert told(job) == before
    (tmp_path / "empty").mkdir()
    assert copying.restore(tmp_path / "copy", tmp_path / "empty").problems == ()


def test_a_copy_is_never_made_over_something_else(job, tmp_path):
    for place in (job, job / "copy", tmp_path):
        assert back_up(job, place).key == "keeping.copy-inside"
    (tmp_path / "full").mkdir()
    (tmp_path / "full" / "my-photos.txt").write_text("mine")
    assert back_up(job, tmp_path / "full").key == "keeping.not-for-a-copy"
    assert (tmp_path / "full" / "my-photos.txt").read_text() == "mine"


def test_a_copy_that_knows_more_than_the_job_is_left_alone(job, filled, tmp_path):
    """An older state of the job, or another job, never takes the place of what a copy holds."""
    with store.open_folder(job) as folder:
        store.receive(folder, note(audio=(tone(777),)))
    back_up(job, tmp_path / "copy")
    assert back_up(filled, tmp_path / "copy").key == "keeping.copy-knows-more"
    with new_folder(tmp_path / "another") as folder:
        assert copying.back_up(folder, tmp_path / "copy").key == "keeping.copy-knows-more"
    assert copying.restore(tmp_path / "copy", tmp_path / "new").notes == 3


def test_the_verbs_say_what_they_did(job, tmp_path, capsys):
    copy, new = str(tmp_path / "copy"), str(tmp_path / "new")
    assert main(["backup", copy, "--folder", str(job), "--prove"]) == 0
    assert "Journal row" in capsys.readouterr().out
    assert main(["restore", copy, "--folder", new, "--language", "es"]) == 0
    assert "Traída de vuelta" in capsys.readouterr().out
    assert main(["restore", copy, "--folder", new]) == 2
    assert main(["restore", str(job), "--folder", new]) == 2
    assert main(["backup", copy, "--folder", str(tmp_path / "nothing")]) == 2
    assert (tmp_path / "copy").stat().st_mode & 0o077 == 0, "voices and names: for its owner alone"


def test_a_copy_that_is_not_there_is_told_as_that(tmp_path, capsys):
    for language, told in (("en", "There is no folder"), ("es", "No existe la carpeta")):
        assert main(["restore", "--language", language, "--folder", str(tmp_path / "new"), str(tmp_path / "gone")]) == 2
        said = capsys.readouterr().err
        assert told in said and "copy.json" not in said and not (tmp_path / "new").exists()
