"""Every route against every role, as one table: who gets in, who is told to sign in, who is refused."""

from __future__ import annotations

import uuid

import pytest

from desk import NAMES, open_desk
from logbook.web import guard, secrecy
from logbook.web.guard import MAY, NOBODY

WHO = (NOBODY, *NAMES)


@pytest.fixture(scope="module")
def desk(tmp_path_factory):
    return open_desk(tmp_path_factory.mktemp("roles"))


@pytest.fixture(scope="module")
def note(desk):
    """A note of the installer, so that his own routes have something to answer about."""
    return desk.hand_in().json["id"]


def routes(app):
    """(endpoint, method, path with its variables filled)."""
    values = {"note": str(uuid.uuid4()), "piece": "none", "sha256": "0" * 64, "part": 0, "date": "2026-10-14", "person": "nobody-1", "device": "none", "code": "none", "rule": "none", "kind": "pdf", "language": "en", "hold": "none", "filename": "logbook.css"}  # fmt: skip
    adapter = app.url_map.bind("localhost")
    for rule in app.url_map.iter_rules():
        for method in sorted(rule.methods - {"HEAD", "OPTIONS"}):
            given = {name: values[name] for name in rule.arguments}
            yield rule.endpoint, method, adapter.build(rule.endpoint, given, method=method)


def test_every_route_stands_in_the_table_and_every_row_is_a_route(desk):
    assert {endpoint for endpoint, _, _ in routes(desk.app)} == set(MAY)


@pytest.mark.parametrize("who", WHO)
def test_every_route_against_every_role(desk, note, who):
    """Whoever the table does not name gets 401 or 403 and nothing else; whoever it names never gets those.

    Codes, forms and sign-in answer their own refusals to anybody, so for the doors only the table is asked.
    """
    wrong = []
    for endpoint, method, path in routes(desk.app):
        if endpoint == "doors.leave" or (method == "POST" and endpoint.startswith("doors.")):
            continue
        client = desk.app.test_client()
        headers = {"Accept": "application/json"}
        if who != NOBODY:
            headers["Authorization"] = f"Bearer {desk.keys[who]}"
        answer = client.open(path, method=method, headers=headers)
        status = answer.status_code
        lacking = [name for name, value in secrecy.HEADERS.items() if answer.headers.get(name) != value]
        if lacking or answer.headers.get("Content-Security-Policy") not in (secrecy.POLICY, secrecy.FILE_POLICY):
            wrong.append((endpoint, method, who, "headers", lacking))
        expected = 401 if who == NOBODY else 403
        refused = status == expected and endpoint not in ("doors.first_form", "doors.password_form")
        if refused == (who in MAY[endpoint]) or status >= 500:
            wrong.append((endpoint, method, who, status))
    assert not wrong


def test_other_methods_ask_the_same_guard(desk, note):
    """HEAD and OPTIONS of a route answer nobody more than GET does."""
    for endpoint, method, path in routes(desk.app):
        if NOBODY in MAY[endpoint] or method != "GET":
            continue
        for other in ("HEAD", "OPTIONS"):
            assert desk.app.test_client().open(path, method=other, headers={"Accept": "application/json"}).status_code == 401, (other, path)


def test_the_table_gives_nobody_more_than_pages_without_data():
    open_to_all = {endpoint for endpoint, roles in MAY.items() if NOBODY in roles}
    assert {one.split(".")[0] for one in open_to_all} == {"static", "health", "doors", "phone"}


def test_an_installer_does_not_see_another_installers_note(desk, note):
    from datetime import UTC, datetime

    from logbook import store
    from logbook.store import people

    folder = desk.folder()
    with folder, store.writing(folder) as db:
        other = people.add(db, "Ivo Lark", "installer", datetime.now(UTC))
        _, key = people.give_device(db, other.id, "script", "test", datetime.now(UTC))
    client = desk.app.test_client()
    for path in (f"/notes/{note}", f"/notes/{note}/sound/0", f"/notes/{note}/photos/{'0' * 64}/small"):
        assert client.get(path, headers={"Authorization": f"Bearer {key}"}).status_code == 404
    for act in ("right", "withdraw", "corrections"):
        answer = client.post(f"/notes/{note}/{act}", json={"id": str(uuid.uuid4())}, headers={"Authorization": f"Bearer {key}"})
        assert answer.status_code == 404
    assert client.get("/notes", headers={"Authorization": f"Bearer {key}"}).json["notes"] == []
    assert client.get(f"/notes?speaker={desk.ids['installer']}", headers={"Authorization": f"Bearer {key}"}).json["notes"] == []
    assert desk.by_key("installer", "GET", f"/notes/{note}").status_code == 200
    assert desk.by_key("lead", "GET", f"/notes/{note}").status_code == 200


def test_only_a_lead_decides_and_only_the_keeper_adds_people():
    assert MAY["piece.decide"] == {"lead"}
    assert MAY["staff.add"] == {"keeper"}
    assert "contractor" not in MAY["entry.sound"] and guard.SEES_PLACES == {"lead", "keeper"}


def test_unknown_addresses_are_the_same_to_everybody(desk):
    for who in NAMES:
        assert desk.by_key(who, "GET", "/no/such/page").status_code == 404
    assert desk.app.test_client().get("/no/such/page").status_code == 404


def test_screens_do_not_check_roles_themselves():
    """Roles are compared in the guard alone; screens may only ask it."""
    import ast
    from pathlib import Path

    for file in sorted(Path(guard.__file__).parent.glob("*.py")):
        if file.name == "guard.py":
            continue
        for node in ast.walk(ast.parse(file.read_text())):
            if isinstance(node, ast.Compare) and isinstance(node.left, ast.Attribute) and node.left.attr == "role":
                allowed = {"handing.py", "doors.py", "staff.py"}  # as_lead of a note, the home page, who invites a keeper
                assert file.name in allowed, f"{file.name}:{node.lineno} compares a role"
