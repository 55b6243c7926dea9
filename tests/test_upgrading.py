"""A log of every earlier shape, with data in it, opened by today's code: nothing is lost and everything can be read."""

from __future__ import annotations

import shutil
import sqlite3
import uuid
from datetime import UTC, datetime
from pathlib import Path

import pytest
from handing import SAID, new_folder, note, picture, tone
from sqlite_utils import Database

from logbook import store, worker
from logbook.hearing import scripted
from logbook.store import doctoring, people, search
from logbook.store.folder import migration_sets

NOW = datetime(2026, 10, 14, 16, tzinfo=UTC)
STEPS = [(each.name, step.name) for each in migration_sets() for step in each._migrations]
# tables that are reckoned or indexed from others, and those of SQLite and of the steps themselves
MADE_ANEW = ("sought", "sqlite_", "_sqlite_migrations")


class Ears:
    name = "prepared"

    def hear(self, sounds, *, languages):
        return [scripted.spread(SAID, sound.seconds, "en") for sound in sounds]


@pytest.fixture(scope="module")
def full(tmp_path_factory) -> Path:
    """A job with something in every table that people write to."""
    path = tmp_path_factory.mktemp("upgrading") / "job"
    with new_folder(path) as folder:
        with store.writing(folder) as db:
            rosa = people.add(db, "Rosa Quint", "installer", NOW)
            store.journal.write(db, "person-added", {"person": rosa.id, "role": rosa.role}, rosa.name)
            device, _ = people.give_device(db, rosa.id, "phone", "yellow phone", NOW)
            people.share(db, device.id, (rosa.id,))
            people.invite(db, rosa.id, "pair", NOW)
            people.note_attempt(db, "Rosa Quint", "10.0.0.1", False, NOW)
        heard = store.receive(folder, note(by=rosa.id, audio=(tone(440),), photos=(picture(10),))).id
        store.receive(folder, note(by=rosa.id, text="Straight five on run two, not taped yet."))
        while any(worker.work_once(folder, worker.Bench(Ears))):
            pass
        store.correct(folder, str(uuid.uuid4()), heard, 0, "mark", "14", rosa.id)
        store.catch_up(folder, store.Reckoner())
    return path


def shape_of(path: Path, steps: int) -> Path:
    """The database as the first `steps` steps left it, without the later ones."""
    db = Database(sqlite3.connect(path, isolation_level=None))
    db.execute("PRAGMA journal_mode=WAL")
    left = steps
    for each in migration_sets():
        names = [step.name for step in each._migrations]
        if left >= len(names):
            each.apply(db)
        elif left > 0:
            each.apply(db, stop_before=names[left])
        left -= len(names)
    db.close()
    return path


def tables(conn: sqlite3.Connection) -> dict[str, list[str]]:
    """Every table with its columns, but those that are made anew."""
    names = [name for (name,) in conn.execute("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name")]
    return {name: [row[1] for row in conn.execute(f"PRAGMA table_info([{name}])")] for name in names if not name.startswith(MADE_ANEW)}


def carry(full: Path, old: Path) -> None:
    """Every row of the full log, as far as the old shape has a place for it."""
    conn = sqlite3.connect(old, isolation_level=None)
    conn.execute("PRAGMA foreign_keys=OFF")
    conn.execute("ATTACH ? AS whole", [str(full / "log.db")])
    for table, columns in tables(conn).items():
        held = {row[1] for row in conn.execute(f"PRAGMA whole.table_info([{table}])")}
        wanted = ", ".join(f"[{one}]" for one in columns if one in held)
        conn.execute(f"DELETE FROM main.[{table}]")
        conn.execute(f"INSERT INTO main.[{table}] ({wanted}) SELECT {wanted} FROM whole.[{table}]")
    conn.close()


def rows(path: Path, shape: dict[str, list[str]]) -> dict[str, list]:
    conn = sqlite3.connect(path)
    found = {table: sorted(conn.execute(f"SELECT {', '.join(f'[{one}]' for one in columns)} FROM [{table}]"), key=repr) for table, columns in shape.items()}
    conn.close()
    return found


@pytest.mark.parametrize("steps", range(1, len(STEPS) + 1), ids=lambda count: f"{count}-{STEPS[count - 1][1]}")
def test_nothing_is_lost_from_any_earlier_shape(full, tmp_path, steps):
    shutil.copytree(full, tmp_path / "job")
    for each in (tmp_path / "job").glob("log.db*"):
        each.unlink()
    shape_of(tmp_path / "job" / "log.db", steps)
    carry(full, tmp_path / "job" / "log.db")
    conn = sqlite3.connect(tmp_path / "job" / "log.db")
    shape = tables(conn)
    conn.close()
    before = rows(tmp_path / "job" / "log.db", shape)
    assert before["notes"] and before["journal"], "an empty log shows nothing"
    with store.open_folder(tmp_path / "job") as folder:
        assert {(each, name) for each, name in folder.db.execute("SELECT migration_set, name FROM _sqlite_migrations")} == set(STEPS)
        after = rows(tmp_path / "job" / "log.db", shape)
        marks = {("reckoned",), ("reckoner",)}  # the search asks for the pieces to be reckoned once more
        for table in shape:
            if table == "about":
                assert [row for row in after[table] if row[:1] not in marks] == [row for row in before[table] if row[:1] not in marks]
            else:
                assert after[table] == before[table], table
        store.catch_up(folder, store.Reckoner())
        with store.open_folder(full) as whole:
            assert list(store.each_note(folder, "es")) == list(store.each_note(whole, "es"))
            assert [one["mark"] for one in store.each_piece(folder, "en")] == [one["mark"] for one in store.each_piece(whole, "en")]
        assert search.search(folder, "rubbed").total == 1, "what was said before can be found"
        assert store.receive(folder, note(audio=(tone(999),))).repeated is False, "and the log goes on"
    found = doctoring.examine(tmp_path / "job")
    lacking = {"keeping.not-in-journal", "store.content-gone"} if "people" not in shape else set()
    assert {one.key for one in found.problems} <= lacking, found.problems


def test_an_upgrade_that_is_cut_short_leaves_the_old_shape(full, tmp_path):
    """All steps are one transaction: a table of the same name in the way stops them, and nothing of them is there."""
    shutil.copytree(full, tmp_path / "job")
    for each in (tmp_path / "job").glob("log.db*"):
        each.unlink()
    shape_of(tmp_path / "job" / "log.db", 1)
    carry(full, tmp_path / "job" / "log.db")
    conn = sqlite3.connect(tmp_path / "job" / "log.db")
    conn.execute("CREATE TABLE sought_of (in_the_way TEXT)")
    conn.commit()
    before = list(conn.execute("SELECT name, sql FROM sqlite_master ORDER BY name"))
    conn.close()
    with pytest.raises(sqlite3.OperationalError, match="sought_of"):
        store.open_folder(tmp_path / "job")
    conn = sqlite3.connect(tmp_path / "job" / "log.db")
    assert list(conn.execute("SELECT name, sql FROM sqlite_master ORDER BY name")) == before
    conn.close()
