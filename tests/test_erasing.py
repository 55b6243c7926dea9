"""A person is forgotten on request: the bytes of the name are gone, the journal holds, and what stays is told."""

from __future__ import annotations

import hashlib
import json
import sqlite3
import uuid
import zipfile
from datetime import UTC, datetime
from pathlib import Path

import pytest
from handing import note, tone

from desk import NAMES, PAGE, PASSWORD, open_desk, token
from logbook import store, worker
from logbook.cli import main
from logbook.handover.verify import verify
from logbook.hearing import scripted
from logbook.mistake import Mistake
from logbook.paper.handing_over import hand_over
from logbook.paper.making import make_day
from logbook.store import copying, doctoring, erasing, people

NAME = "Zebulon Quaverly-Öst"
SAID = "Straight four on run two, eighteen by twelve, stapled every two, taped with 181A-P, rubbed down."
NOW = datetime(2026, 10, 14, 16, tzinfo=UTC)
VOICE = tone(311)


class Ears:
    name = "prepared"

    def hear(self, sounds, *, languages):
        return [scripted.spread(SAID, sound.seconds, "en") for sound in sounds]


def job_with(path: Path, *, voice_goes: bool = False) -> tuple[str, str]:
    """A job in which somebody spoke, signed in wrongly and had phones; the ids of him and of another. Many people lie
    around him, so that his row has moved from page to page."""
    with store.open_folder(path, create=True) as folder:
        folder.db.execute("PRAGMA secure_delete=OFF")  # as a log that another program wrote: freed pages keep old bytes
        with store.writing(folder) as db:
            for number in range(60):
                people.add(db, f"Filler Number {number}", "installer", NOW)
            him, other = people.add(db, NAME, "installer", NOW), people.add(db, "Ada Fenn", "lead", NOW)
            for person in (him, other):
                store.journal.write(db, "person-added", {"person": person.id, "role": person.role}, person.name)
            for number in range(300):
                people.give_device(db, him.id, "phone", f"phone {number} of {NAME}", NOW)
            people.note_attempt(db, NAME, "10.0.0.1", False, NOW)
            people.note_attempt(db, "Ada Fenn", "10.0.0.1", False, NOW)
            db.execute("delete from devices where person = ? and called like '%1%'", [him.id])
            db.execute("delete from people where name like 'Filler%1%'")
        store.receive(folder, note(by=him.id, audio=(VOICE,)))
        store.receive(folder, note(by=other.id, audio=(tone(440),)))
        if voice_goes:
            file = path / "job.toml"
            file.write_text(file.read_text().replace("# goes_with_the_name = false", "goes_with_the_name = true"))
    with store.open_folder(path) as folder:
        while any(worker.work_once(folder, worker.Bench(Ears))):
            pass
    return him.id, other.id


def holds(path: Path, *wanted: bytes) -> list[str]:
    """Every file under a folder in whose bytes one of these stands: the database, its log, whatever lies there."""
    return sorted(
        file.relative_to(path).as_posix() for file in path.rglob("*") if file.is_file() and any(one in file.read_bytes() for one in wanted)
    )


TRACES = (
    NAME.encode(), people.folded(NAME).encode(), json.dumps(NAME)[1:-1].encode(), b"Zebulon", b"zebulon",
    hashlib.sha256(people.folded(NAME).encode()).hexdigest().encode(),
)  # fmt: skip


@pytest.mark.parametrize("voice_goes", [False, True])
def test_no_byte_of_the_name_is_left_and_the_journal_holds(tmp_path, voice_goes):
    him, other = job_with(tmp_path / "job", voice_goes=voice_goes)
    with store.open_folder(tmp_path / "job") as folder:
        make_day(folder, "2026-10-14", ("en", "es"), NOW)
        assert "log.db" in {name.removesuffix("-wal") for name in holds(tmp_path / "job", *TRACES)}, "it was there, or this shows nothing"
        assert "reports/day-2026-10-14.html" in holds(tmp_path / "job", *TRACES)
        for number in range(120):  # each a transaction, so that the write-ahead log holds the name many times over
            with store.writing(folder) as db:
                people.give_device(db, him, "phone", f"late phone {number} of {NAME}", NOW)
        assert {"log.db", "log.db-wal"} <= set(holds(tmp_path / "job", *TRACES))
        done = erasing.erase(folder, him, other, NOW)
        assert not isinstance(done, Mistake) and done.left is None
        assert holds(tmp_path / "job", *TRACES) == [], "while the server's connection is still open"
        assert make_day(folder, "2026-10-14", ("en", "es"), NOW).written
        assert holds(tmp_path / "job", *TRACES) == []
        assert him in (tmp_path / "job" / "reports" / "day-2026-10-14.html").read_text()
        assert people.names(folder.db)[other] == "Ada Fenn"
    assert (holds(tmp_path / "job", VOICE) == []) is voice_goes
    found = doctoring.examine(tmp_path / "job")
    assert (found.problems, found.remarks, found.mended) == ([], [], [])
    assert [seq for seq, _ in found.compared.erased] == [done.seq]


def test_a_voice_goes_its_words_stay_and_everybody_is_told_since_when(tmp_path, capsys):
    him, other = job_with(tmp_path / "job", voice_goes=True)
    with store.open_folder(tmp_path / "job") as folder:
        before = {doc["id"]: doc for doc in store.each_note(folder, "en")}
        erasing.erase(folder, him, other, NOW)
        after = {doc["id"]: doc for doc in store.each_note(folder, "en")}
        (his,) = [id for id, doc in before.items() if doc["spoken_by"] == him]
        assert after[his] == before[his] | {"sound_erased_at": NOW.isoformat()}
        assert {id: doc for id, doc in after.items() if id != his} == {id: doc for id, doc in before.items() if id != his}
        refused = store.hear_again(folder, str(uuid.uuid4()), his, other)
        assert refused.key == "store.no-sound-kept"
    assert main(["doctor", "--folder", str(tmp_path / "job")]) == 0
    assert "erased on 2026-10-14" in capsys.readouterr().out


def test_a_recording_that_was_never_heard_says_why_it_cannot_be(tmp_path):
    him, other = job_with(tmp_path / "job", voice_goes=True)
    with store.open_folder(tmp_path / "job") as folder:
        late = store.receive(folder, note(by=him, audio=(tone(555),))).id
        erasing.erase(folder, him, other, NOW)
        worker.work_once(folder, worker.Bench(Ears))
        doc = store.note_document(folder, late, "es")
        assert doc["state"] == "unheard" and "2026-10-14" in doc["problem"]["why"]


def test_a_recording_that_somebody_else_handed_in_too_stays(tmp_path):
    him, other = job_with(tmp_path / "job", voice_goes=True)
    with store.open_folder(tmp_path / "job") as folder:
        store.receive(folder, note(by=other, audio=(VOICE,)))
        assert erasing.erase(folder, him, other, NOW).standing.sounds == ()
        assert store.original(folder, hashlib.sha256(VOICE).hexdigest()) is not None


def test_an_erased_recording_that_is_handed_in_once_more_is_kept_like_any(tmp_path):
    him, other = job_with(tmp_path / "job", voice_goes=True)
    with store.open_folder(tmp_path / "job") as folder:
        erasing.erase(folder, him, other, NOW)
        store.receive(folder, note(by=other, audio=(VOICE,)))
        assert store.original(folder, hashlib.sha256(VOICE).hexdigest()).read_bytes() == VOICE
    assert doctoring.examine(tmp_path / "job").problems == []


# --- what stays is told


def test_signed_reports_packages_and_spoken_names_stay_and_are_named(tmp_path):
    him, other = job_with(tmp_path / "job")
    with store.open_folder(tmp_path / "job") as folder:
        content = make_day(folder, "2026-10-14", ("en",), NOW).document["content"]
        store.sign(folder, str(uuid.uuid4()), datetime(2026, 10, 14).date(), other, "lead", f"Seen with {NAME}.", content)
        make_day(folder, "2026-10-14", ("en",), NOW)
        spoken = store.receive(folder, note(by=other, text=f"This is {NAME.upper()}, straight nine.")).id
        signed = tuple(f"reports/signed/day-2026-10-14-{content[:12]}.{kind}" for kind in ("html", "json", "pdf"))
        (tmp_path / "job" / "reports" / "closeout.zip").write_bytes(b"PK")
        stands = erasing.standing(folder, people.person(folder.db, him))
        assert (stands.signed, stands.packages, stands.notes, len(stands.acts)) == (signed, ("reports/closeout.zip",), (spoken,), 1)
        kept = [(tmp_path / "job" / one).read_bytes() for one in signed]
        done = erasing.erase(folder, him, other, NOW)
        assert [(tmp_path / "job" / one).read_bytes() for one in signed] == kept, "what was signed stays as it was signed"
        for language in ("en", "es"):
            told = "\n".join(erasing.told(done.standing, folder.job, language)[1])
            assert all(one in told for one in (*signed, "closeout.zip", spoken))
        again = make_day(folder, "2026-10-14", ("en",), NOW).document
        assert again["content"] == content or spoken in json.dumps(again), "a name that is gone makes no new edition"


def test_a_name_that_is_gone_does_not_change_what_was_signed(tmp_path):
    him, other = job_with(tmp_path / "job")
    with store.open_folder(tmp_path / "job") as folder:
        content = make_day(folder, "2026-10-14", ("en",), NOW).document["content"]
        store.sign(folder, str(uuid.uuid4()), datetime(2026, 10, 14).date(), other, "lead", "", content)
        erasing.erase(folder, him, other, NOW)
        made = make_day(folder, "2026-10-14", ("en",), NOW).document
        assert (made["content"], made["edition"]) == (content, 1)


def test_a_copy_made_before_still_knows_the_name_until_it_is_made_once_more(tmp_path):
    him, other = job_with(tmp_path / "job", voice_goes=True)
    with store.open_folder(tmp_path / "job") as folder:
        copying.back_up(folder, tmp_path / "copy")
        assert holds(tmp_path / "copy", *TRACES) and holds(tmp_path / "copy", VOICE)
        erasing.erase(folder, him, other, NOW)
        assert holds(tmp_path / "copy", *TRACES), "a copy lies elsewhere: the sentence on the page says so"
        copying.back_up(folder, tmp_path / "copy")
    assert holds(tmp_path / "copy", *TRACES, VOICE) == []
    back = copying.restore(tmp_path / "copy", tmp_path / "new")
    assert not isinstance(back, Mistake) and back.problems == ()


def test_a_package_written_after_an_erasure_is_whole_and_says_since_when(tmp_path):
    him, other = job_with(tmp_path / "job", voice_goes=True)
    with store.open_folder(tmp_path / "job") as folder:
        erasing.erase(folder, him, other, NOW)
        hand_over(folder, tmp_path / "out.zip", "en", NOW)
    verdict = verify(tmp_path / "out.zip")
    assert (verdict.status, verdict.problems) == (0, [])
    assert ("verify.erased", "2026-10-14") in [(one.key, one.values.get("date")) for one in verdict.remarks]
    with zipfile.ZipFile(tmp_path / "out.zip") as archive:
        assert not any(trace in archive.read(name) for name in archive.namelist() for trace in TRACES)


# --- cut short, and done by hand


def test_bytes_that_somebody_was_reading_go_with_the_next_doctor(tmp_path):
    him, other = job_with(tmp_path / "job")
    reader = sqlite3.connect(tmp_path / "job" / "log.db", isolation_level=None)
    reader.execute("BEGIN")
    reader.execute("SELECT count(*) FROM people").fetchone()
    with store.open_folder(tmp_path / "job") as folder:
        assert erasing.erase(folder, him, other, NOW).left.key == "erasing.busy"
        assert erasing.unfinished(folder.db) and holds(tmp_path / "job", *TRACES)
    assert [one.key for one in doctoring.examine(tmp_path / "job", mend=False).remarks] == ["erasing.unfinished"]
    reader.close()
    found = doctoring.examine(tmp_path / "job")
    assert found.mended == [("erasing.swept", {})] and found.problems == []
    assert holds(tmp_path / "job", *TRACES) == []


def test_an_erasure_that_was_killed_before_its_files_were_gone_is_finished(tmp_path):
    him, other = job_with(tmp_path / "job", voice_goes=True)
    with store.open_folder(tmp_path / "job") as folder:
        erasing.erase(folder, him, other, NOW)
        with store.writing(folder) as db:
            db.execute("INSERT INTO about VALUES (?, '[]')", [erasing.MARK])
        (tmp_path / "job" / "originals" / f"{hashlib.sha256(VOICE).hexdigest()}.wav").write_bytes(VOICE)
    assert doctoring.examine(tmp_path / "job").mended == [("erasing.swept", {})]
    assert holds(tmp_path / "job", VOICE) == []


def test_a_file_that_is_called_erased_without_a_row_is_found(tmp_path):
    job_with(tmp_path / "job")
    with store.open_folder(tmp_path / "job") as folder, store.writing(folder) as db:
        db.execute("UPDATE files SET erased_at = '2026-10-14T16:00:00+00:00' WHERE sha256 = ?", [hashlib.sha256(VOICE).hexdigest()])
    assert [one.key for one in doctoring.examine(tmp_path / "job").problems] == ["erasing.no-row"]


def test_a_sweep_takes_nothing_but_reports_of_days(tmp_path):
    job_with(tmp_path / "job")
    with store.open_folder(tmp_path / "job") as folder, store.writing(folder) as db:
        db.execute("INSERT INTO about VALUES (?, ?)", [erasing.MARK, json.dumps(["job.toml", "../out.txt", "reports/../job.toml", "/etc/hosts"])])
    (tmp_path / "out.txt").write_text("mine")
    assert erasing.sweep(tmp_path / "job") is None
    assert (tmp_path / "out.txt").exists() and (tmp_path / "job" / "job.toml").exists()


# --- the verb and the page


def test_the_verb_looks_first_and_then_erases(tmp_path, capsys):
    him, _ = job_with(tmp_path / "job")
    folder = ["people", "--folder", str(tmp_path / "job")]
    assert main([*folder, "erase", NAME, "--only-look"]) == 0
    assert NAME in capsys.readouterr().out and holds(tmp_path / "job", NAME.encode())
    assert main([*folder, "erase", NAME]) == 0
    told = capsys.readouterr()
    assert him in told.err and "logbook backup" in told.out and "The recordings." in told.out
    assert holds(tmp_path / "job", *TRACES) == []
    assert main([*folder, "erase", NAME]) == 2


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_page_tells_what_stays_and_wants_the_name_typed(tmp_path, language):
    desk = open_desk(tmp_path)
    him = desk.ids["installer"]
    desk.hand_in()
    keeper = desk.browser("keeper")
    path = f"/people/{him}/forget"
    assert path in keeper.get("/people", headers=PAGE).text
    page = keeper.get(f"{path}?language={language}", headers=PAGE)
    assert page.status_code == 200 and NAMES["installer"] in page.text and "logbook backup" in page.text
    body = {"csrf_token": token(keeper, path)}
    assert keeper.post(path, data=body | {"name": NAMES["lead"]}, headers=PAGE).status_code == 422
    done = keeper.post(path, data=body | {"name": f" {NAMES['installer'].lower()} "}, headers=PAGE)
    assert done.status_code == 200 and him in done.text and NAMES["installer"] not in done.text
    assert keeper.get(path, headers=PAGE).status_code == 404
    assert desk.by_key("installer", "GET", "/me").status_code == 401, "every key is cut off"
    assert holds(tmp_path / "job", NAMES["installer"].encode()) == []
    with desk.folder() as folder:
        assert people.check_password(folder.db, NAMES["installer"], PASSWORD) is None
    assert doctoring.examine(tmp_path / "job").problems == []


def test_nobody_erases_himself_or_the_last_of_the_office(tmp_path):
    desk = open_desk(tmp_path)
    assert desk.browser("keeper").get(f"/people/{desk.ids['keeper']}/forget", headers=PAGE).status_code == 404
    with desk.folder() as folder:
        assert erasing.erase(folder, desk.ids["keeper"], None).key == "erasing.last-keeper"
        assert erasing.erase(folder, "installer-99", None).key == "people.nobody"
