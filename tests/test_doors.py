"""The doors, line by line: what a password is kept as, what a stranger can learn, how often he may try, what ends a session."""

from __future__ import annotations

import re
import threading
from datetime import UTC, datetime, timedelta

import argon2
import pytest
from desk import NAMES, PAGE, PASSWORD, Settings, note_form, open_desk, token

from logbook import store
from logbook.store import folder as folders
from logbook.store import people
from logbook.web import create_app, first_link
from logbook.web.guard import MAY

SAFE = {"GET", "HEAD", "OPTIONS"}


@pytest.fixture
def desk(tmp_path):
    return open_desk(tmp_path)


def sign_in(desk, name, password, client=None):
    client = client or desk.browser()
    return client.post("/enter", data={"name": name, "password": password, "csrf_token": token(client, "/enter")})


# --- passwords (RFC 9106: argon2id; 64 MiB and three passes are its second recommended choice)


def test_a_password_is_kept_as_argon2id_with_the_parameters_of_the_standard(desk):
    with desk.folder() as folder:
        kept = [row["password"] for row in folder.db.query("select password from people")]
    for one in (*kept, people._NOBODY):
        told = argon2.extract_parameters(one)
        assert (told.type, told.memory_cost, told.time_cost) == (argon2.Type.ID, 65_536, 3)
    assert len(set(kept)) == 1, "the tests hash once for four people"
    assert people.hashed(PASSWORD) != people.hashed(PASSWORD), "a salt of its own each time"


def test_a_name_that_nobody_has_costs_as_much_as_a_wrong_password(desk, monkeypatch):
    """Not measured with a clock: the hasher is asked once, with the same cost, whoever is named."""
    asked = []
    verify = argon2.PasswordHasher.verify

    def told(self, kept, password):
        asked.append(str(argon2.extract_parameters(kept)))
        return verify(self, kept, password)

    monkeypatch.setattr(argon2.PasswordHasher, "verify", told)
    with desk.folder() as folder, store.writing(folder) as db:
        people.add(db, "No Password", "lead", datetime.now(UTC))
        gone = people.add(db, "Long Gone", "lead", datetime.now(UTC))
        people.keep_password(db, gone.id, people.hashed(PASSWORD))
        people.leave(db, gone.id, datetime.now(UTC))
    answers = [sign_in(desk, name, password) for name, password in ((NAMES["lead"], "wrong wrong"), ("Nobody At All", PASSWORD), ("No Password", PASSWORD), ("Long Gone", PASSWORD), (NAMES["lead"], PASSWORD + "x" * 300), ("\u0000", PASSWORD))]
    assert len(asked) == 6 and len(set(asked)) == 1
    assert len({(one.status_code, one.text, str(sorted(one.headers.keys()))) for one in answers}) == 1 and answers[0].status_code == 401


def test_a_password_with_more_behind_it_does_not_open(tmp_path):
    whole = "long " * 40
    desk = open_desk(tmp_path)
    with desk.folder() as folder, store.writing(folder) as db:
        people.keep_password(db, desk.ids["lead"], people.hashed(whole))
    assert sign_in(desk, NAMES["lead"], whole + "more").status_code == 401
    assert sign_in(desk, NAMES["lead"], whole).status_code == 303


# --- tries


def test_many_tries_at_once_get_no_more_than_five(desk):
    """Each try is written down before the password is looked at."""
    clients = [desk.browser() for _ in range(12)]
    tokens = [token(client, "/enter") for client in clients]
    statuses, gate = [], threading.Barrier(len(clients))

    def guess(client, csrf):
        gate.wait()
        statuses.append(client.post("/enter", data={"name": NAMES["lead"], "password": "wrong wrong", "csrf_token": csrf}).status_code)

    threads = [threading.Thread(target=guess, args=pair) for pair in zip(clients, tokens)]
    for each in threads:
        each.start()
    for each in threads:
        each.join()
    assert sorted(statuses) == [401] * people.TRIES_OF_A_NAME + [429] * (len(clients) - people.TRIES_OF_A_NAME)


def test_a_right_password_counts_as_no_failure(desk):
    for _ in range(people.TRIES_OF_A_NAME + 2):
        assert sign_in(desk, NAMES["lead"], PASSWORD).status_code == 303


# --- what a stranger can learn


def test_what_is_not_yours_is_as_if_it_were_not_there(desk):
    """Another installer's note, a note that never was; somebody's id as voice, an id that nobody has: the same answer."""
    note = desk.hand_in("lead").json["id"]
    there, never = (desk.by_key("installer", "GET", f"/notes/{id}") for id in (note, "11111111-1111-4111-8111-111111111111"))
    assert (there.status_code, there.json) == (never.status_code, never.json) == (404, never.json)
    known, unknown = (desk.by_key("installer", "POST", "/notes", data=note_form(spoken_by=id)) for id in (desk.ids["keeper"], "keeper-9"))
    assert known.status_code == unknown.status_code == 403
    assert known.json["error"].replace(desk.ids["keeper"], "") == unknown.json["error"].replace("keeper-9", "")


def test_a_link_that_is_void_tells_nobody_why(desk, tmp_path):
    with desk.folder() as folder, store.writing(folder) as db:
        used = people.invite(db, desk.ids["lead"], "password", datetime.now(UTC))
        people.use_invitation(db, used, "password", datetime.now(UTC))
        ended = people.invite(db, desk.ids["installer"], "password", datetime.now(UTC) - timedelta(days=3))
    client = desk.browser()
    told = {client.get(f"/password/{code}").text for code in (used, ended, "never", "..", "x" * 500)}
    assert len(told) == 1


# --- the first start


def test_of_two_that_take_the_first_link_at_once_one_becomes_the_keeper(tmp_path):
    settings = Settings(tmp_path / "job", tmp_path / "state")
    store.open_folder(settings.folder, create=True).close()
    app = create_app(settings)
    with store.open_folder(settings.folder) as folder:
        assert people.everybody(folder.db) == [], "nobody is there, with no password, before the link is used"
    link = first_link(settings).removeprefix("http://localhost")
    clients = [app.test_client() for _ in range(4)]
    tokens = [token(client, link) for client in clients]
    statuses, gate = [], threading.Barrier(len(clients))

    def take(number):
        gate.wait()
        data = {"name": f"Keeper {number}", "password": PASSWORD, "again": PASSWORD, "csrf_token": tokens[number]}
        statuses.append(clients[number].post(link, data=data, headers=PAGE).status_code)

    threads = [threading.Thread(target=take, args=(number,)) for number in range(len(clients))]
    for each in threads:
        each.start()
    for each in threads:
        each.join()
    assert sorted(statuses) == [303, 403, 403, 403]
    with store.open_folder(settings.folder) as folder:
        assert [one.role for one in people.everybody(folder.db)] == ["keeper"]


# --- sessions end


def test_a_session_ends_by_itself_and_by_a_new_password(desk):
    lead, other = desk.browser("lead"), desk.browser("lead")
    with desk.folder() as folder, store.writing(folder) as db:
        assert people.LASTS["browser"] <= timedelta(days=14)
        db.execute("update devices set ends_at = '2020-01-01T00:00:00+00:00' where id = (select id from devices where kind = 'browser' order by made_at, rowid limit 1)")
        link = people.invite(db, desk.ids["lead"], "password", datetime.now(UTC))
    assert sorted(client.get("/me").status_code for client in (lead, other)) == [200, 401]
    third = desk.browser()
    data = {"password": "another good one", "again": "another good one", "csrf_token": token(third, f"/password/{link}")}
    assert third.post(f"/password/{link}", data=data).status_code == 303
    assert third.get("/me").status_code == 200
    assert [client.get("/me").status_code for client in (lead, other)] == [401, 401], "whoever was in with the old password is out"
    assert desk.by_key("lead", "GET", "/me").status_code == 200, "keys of scripts and phones are cut off by name"
    assert sign_in(desk, NAMES["lead"], PASSWORD).status_code == 401


def test_a_cookie_of_a_server_with_tls_is_never_sent_in_the_open(tmp_path):
    desk = open_desk(tmp_path)
    app = create_app(Settings(desk.settings.folder, desk.settings.state, "https://localhost", secure=True))
    client = app.test_client()
    csrf = re.search(r'name="csrf_token" value="([^"]+)"', client.get("/enter", headers=PAGE, base_url="https://localhost").text).group(1)
    answer = client.post("/enter", data={"name": NAMES["lead"], "password": PASSWORD, "csrf_token": csrf}, base_url="https://localhost", headers={"Referer": "https://localhost/enter"})
    (cookie,) = [one for one in answer.headers.getlist("Set-Cookie") if one.startswith("logbook=")]
    assert {"Secure", "HttpOnly", "SameSite=Lax"} <= set(cookie.split("; "))


# --- tokens and keys


def test_no_session_changes_anything_without_its_token(desk):
    """Every route that changes something, for a role that may: without the token 400, and with another's token 400."""
    values = {"note": "11111111-1111-4111-8111-111111111111", "piece": "none", "sha256": "0" * 64, "date": "2026-10-14", "person": "lead-1", "device": "none", "code": "none"}
    clients, stranger = {role: desk.browser(role) for role in NAMES}, token(desk.browser(), "/enter")
    tried = 0
    for rule in desk.app.url_map.iter_rules():
        for method in sorted(rule.methods - SAFE):
            role = next((one for one in NAMES if one in MAY[rule.endpoint]), None)
            path = re.sub(r"<(?:[^:<>]+:)?(\w+)>", lambda found: values.get(found.group(1), "1"), rule.rule)
            client = clients.get(role) or desk.browser()
            for headers in ({}, {"X-CSRFToken": stranger}, {"X-CSRFToken": "x"}):
                status = client.open(path, method=method, headers=headers).status_code
                tried += 1
                assert status == 400 or (status == 404 and role == "installer" and "note" in rule.arguments), (method, path, status)
    assert tried > 60


def test_a_key_is_told_once_and_kept_as_a_digest_and_no_session_goes_by_a_key(desk):
    with desk.folder() as folder:
        dump = "\n".join(folder.db.conn.iterdump())
        assert not any(key in dump for key in desk.keys.values())
        browser = next(one for one in people.devices(folder.db) if one.kind == "script")
        assert browser.ends_at > datetime.now(UTC).isoformat()
    page = desk.browser("keeper").get("/people", headers=PAGE).text
    assert not any(key in page for key in desk.keys.values())
    session = desk.browser("lead").get_cookie("logbook").value
    for wrong in (session, desk.keys["lead"] + "x", desk.keys["lead"].swapcase(), "", "a b c"):
        assert desk.app.test_client().get("/me", headers={"Authorization": f"Bearer {wrong}"}).status_code == 401
    for wrong in ("Basic", "Token"):
        assert desk.app.test_client().get("/me", headers={"Authorization": f"{wrong} {desk.keys['lead']}"}).status_code == 401


def test_the_bare_address_leads_everybody_to_a_page_of_his_own(desk):
    """The contractor and the office, who hand nothing in, were told that it was not open to them."""
    for role in NAMES:
        client = desk.browser(role)
        assert client.get("/", headers=PAGE, follow_redirects=True).status_code == 200, role
        assert client.get("/", headers={"Accept": "application/json"}).status_code in (200, 403), role


def test_below_the_floor_people_come_in_and_read_and_nothing_is_handed_in(desk, monkeypatch):
    kept = desk.hand_in()
    monkeypatch.setattr(folders, "free_bytes", lambda path: 60_000_000)
    lead = desk.browser("lead")  # by name and password, its device and its row written
    assert lead.get("/desk", headers=PAGE).status_code == lead.get(f"/notes/{kept.json['id']}").status_code == 200
    with desk.folder() as folder, store.writing(folder) as db:
        code = people.invite(db, desk.ids["installer"], "pair", datetime.now(UTC))
    phone = desk.app.test_client()
    paired = phone.post("/pair", data={"code": code, "csrf_token": token(phone, "/pair")}, headers=PAGE)
    assert paired.status_code == 303 and phone.get("/me").status_code == 200
    full = desk.hand_in()
    assert full.status_code == 507 and "60 MB free" in full.json["error"] and "notes on the phones stay there" in full.json["cure"]
    assert "Retry-After" in full.headers, "the phone keeps it and comes again"
