"""People and what opens the door: passwords, devices, codes, attempts."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from sqlite_utils import Database

from logbook.mistake import Mistake
from logbook.store import people

NOW = datetime(2026, 10, 14, 9, 0, tzinfo=UTC)
PASSWORD = "seven grey gulls"


@pytest.fixture
def db(tmp_path):
    db = Database(tmp_path / "log.db")
    people.migrations.apply(db)
    yield db
    db.close()


def hired(db, name="Rosa Quint", role="installer"):
    found = people.add(db, name, role, NOW)
    assert isinstance(found, people.Person), found
    return found


def test_a_person_gets_an_id_that_says_nothing_of_the_name(db):
    assert hired(db).id == "installer-1"
    assert hired(db, "Ivo Lark").id == "installer-2"
    assert hired(db, "Ada Fenn", "lead").id == "lead-1"


@pytest.mark.parametrize(
    ("name", "role", "key"),
    [
        ("", "installer", "people.bad-name"),
        ("   ", "installer", "people.bad-name"),
        ("x" * 81, "installer", "people.bad-name"),
        ("Rosa\x00Quint", "installer", "people.bad-name"),
        ("Rosa", "boss", "people.bad-role"),
        ("rosa  QUINT", "lead", "people.name-taken"),
    ],
)
def test_refused_people(db, name, role, key):
    hired(db)
    refused = people.add(db, name, role, NOW)
    assert isinstance(refused, Mistake) and refused.key == key


def test_a_password_opens_and_nothing_else_does(db):
    rosa = hired(db)
    people.keep_password(db, rosa.id, people.hashed(PASSWORD))
    assert people.check_password(db, " rosa quint", PASSWORD).id == rosa.id
    assert people.check_password(db, "Rosa Quint", PASSWORD + "!") is None
    assert people.check_password(db, "Nobody", PASSWORD) is None
    people.leave(db, rosa.id, NOW)
    assert people.check_password(db, "Rosa Quint", PASSWORD) is None


def test_without_a_password_no_password_opens(db):
    hired(db)
    assert people.check_password(db, "Rosa Quint", "") is None


@pytest.mark.parametrize("password", ["", "short one", "x" * 201])
def test_passwords_too_short_or_too_long_are_refused(password):
    assert people.hashed(password).key == "people.bad-password"


def test_nothing_that_opens_a_door_stands_in_the_database(db, tmp_path):
    rosa = hired(db)
    people.keep_password(db, rosa.id, people.hashed(PASSWORD))
    _, token = people.give_device(db, rosa.id, "phone", "yellow phone", NOW)
    code = people.invite(db, rosa.id, "pair", NOW)
    link = people.invite(db, rosa.id, "password", NOW)
    dump = "\n".join(db.conn.iterdump())
    for secret in (PASSWORD, token, code, link):
        assert secret not in dump


def test_a_device_opens_until_it_is_cut_off_or_ends(db):
    rosa = hired(db)
    device, token = people.give_device(db, rosa.id, "phone", "yellow phone", NOW)
    assert people.device_of(db, token, NOW)[0].id == rosa.id
    assert people.device_of(db, token + "x", NOW) is None
    assert people.device_of(db, token, NOW + people.LASTS["phone"]) is None
    assert people.cut_off(db, device.id, NOW) is True
    assert people.device_of(db, token, NOW) is None
    assert people.cut_off(db, device.id, NOW) is False


def test_who_leaves_takes_every_device_along(db):
    rosa, ivo = hired(db), hired(db, "Ivo Lark")
    _, one = people.give_device(db, rosa.id, "phone", "", NOW)
    _, other = people.give_device(db, ivo.id, "phone", "", NOW)
    people.leave(db, rosa.id, NOW)
    assert people.device_of(db, one, NOW) is None
    assert people.device_of(db, other, NOW) is not None


def test_an_erased_name_is_gone_and_the_id_stays(db):
    rosa = hired(db)
    people.give_device(db, rosa.id, "phone", "Rosa Quint's phone", NOW)
    people.erase(db, rosa.id, NOW)
    assert people.names(db) == {rosa.id: rosa.id}
    assert "Quint" not in "\n".join(db.conn.iterdump())
    assert people.by_name(db, "Rosa Quint") is None


def test_a_code_works_once_for_ten_minutes_for_one_purpose(db):
    rosa = hired(db)
    code = people.invite(db, rosa.id, "pair", NOW)
    assert len(code) == 8 and not set(code) & set("01OILU")
    assert people.invited(db, code, "pair", NOW + timedelta(minutes=9))
    assert people.invited(db, code, "first", NOW) is None
    assert people.invited(db, code, "pair", NOW + timedelta(minutes=10)) is None
    assert people.use_invitation(db, code, "pair", NOW)["person"] == rosa.id
    assert people.use_invitation(db, code, "pair", NOW) is None


def test_a_new_code_makes_the_old_one_void(db):
    rosa = hired(db)
    old = people.invite(db, rosa.id, "pair", NOW)
    new = people.invite(db, rosa.id, "pair", NOW)
    assert people.invited(db, old, "pair", NOW) is None
    assert people.invited(db, new, "pair", NOW)


def test_a_typed_code_may_have_spaces_and_small_letters():
    assert people.tidy_code("ab3d-ef gh") == "AB3DEFGH"


@pytest.mark.parametrize("name", ["Rosa Quint", "nobody of that name"])
def test_five_failures_make_anybody_wait_known_or_not(db, name):
    hired(db)
    for number in range(people.TRIES_OF_A_NAME):
        assert people.must_wait(db, name, f"10.0.0.{number}", NOW) == 0
        people.note_attempt(db, name, f"10.0.0.{number}", False, NOW)
    assert 0 < people.must_wait(db, name, "10.0.0.99", NOW) <= people.WINDOW.total_seconds() + 1
    assert people.must_wait(db, "somebody else", "10.0.0.99", NOW) == 0
    assert people.must_wait(db, name, "10.0.0.99", NOW + people.WINDOW) == 0


def test_the_limit_survives_a_restart(db, tmp_path):
    for _ in range(people.TRIES_OF_A_NAME):
        people.note_attempt(db, "Rosa", "10.0.0.1", False, NOW)
    db.conn.commit()
    again = Database(tmp_path / "log.db")
    assert people.must_wait(again, "Rosa", "10.0.0.2", NOW) > 0
    again.close()


def test_success_starts_a_name_anew_but_not_a_place(db):
    for number in range(people.TRIES_OF_A_PLACE):
        people.note_attempt(db, f"guess {number}", "10.0.0.1", False, NOW)
    people.note_attempt(db, "my own account", "10.0.0.1", True, NOW)
    assert people.must_wait(db, "guess 99", "10.0.0.1", NOW) > 0
    for _ in range(people.TRIES_OF_A_NAME):
        people.note_attempt(db, "Rosa", "10.0.0.2", False, NOW - timedelta(minutes=1))
    people.note_attempt(db, "Rosa", "10.0.0.3", True, NOW)
    assert people.must_wait(db, "Rosa", "10.0.0.3", NOW) == 0


def test_what_was_typed_as_a_name_is_not_kept(db):
    people.note_attempt(db, "oops my password", "10.0.0.1", False, NOW)
    assert "oops" not in "\n".join(db.conn.iterdump())


def test_a_crew_shares_one_phone(db):
    rosa, ivo = hired(db), hired(db, "Ivo Lark")
    device, _ = people.give_device(db, rosa.id, "phone", "", NOW)
    people.share(db, device.id, (ivo.id,))
    assert [one.id for one in people.crew(db, device.id)] == [ivo.id]
    people.share(db, device.id, ())
    assert people.crew(db, device.id) == []
