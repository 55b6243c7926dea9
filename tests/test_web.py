"""The web: doors, tokens, headers, refusals, handing in; over the real store."""

from __future__ import annotations

import hashlib
import re
import uuid
from datetime import UTC, datetime

import jsonschema
import pytest

from desk import NAMES, PAGE, PASSWORD, note_form, open_desk, token
from logbook import store
from logbook.store import people
from logbook.web import authority, devices, doors, secrecy

WEBM = b"\x1a\x45\xdf\xa3" + bytes(100)
JPEG = b"\xff\xd8\xff\xe0" + bytes(100)


@pytest.fixture
def desk(tmp_path):
    return open_desk(tmp_path)


# --- doors


def test_wrong_name_and_wrong_password_answer_the_same(desk):
    told = []
    for name, password in ((NAMES["lead"], "wrong wrong wrong"), ("Nobody Here", PASSWORD)):
        client = desk.browser()
        answer = client.post("/enter", data={"name": name, "password": password, "csrf_token": token(client, "/enter")})
        told.append((answer.status_code, answer.json))
    assert told[0] == told[1] and told[0][0] == 401


def test_five_failures_wait_even_after_a_restart(desk):
    client = desk.browser()
    data = {"name": NAMES["lead"], "password": "wrong wrong", "csrf_token": token(client, "/enter")}
    assert [client.post("/enter", data=data).status_code for _ in range(6)] == [401] * 5 + [429]
    from logbook.web import create_app

    again = create_app(desk.settings).test_client()
    data = {"name": NAMES["lead"], "password": PASSWORD, "csrf_token": token(again, "/enter")}
    answer = again.post("/enter", data=data)
    assert answer.status_code == 429 and int(answer.headers["Retry-After"]) > 0


@pytest.mark.parametrize("then", ["https://elsewhere.example/", "//elsewhere.example", "/\\elsewhere.example", "javascript:1"])
def test_sign_in_never_leads_elsewhere(then):
    assert doors.local(then) == "/"


def test_the_session_is_fresh_after_sign_in_and_dead_after_sign_out(desk):
    client = desk.browser("lead")
    cookie = client.get_cookie("logbook").value
    assert client.get("/me").json["role"] == "lead"
    client.post("/leave", data={"csrf_token": client.get("/me").json["csrf"]})
    client.set_cookie("logbook", cookie)
    assert client.get("/me").status_code == 401


def test_an_answer_on_its_way_takes_no_token_off_the_device(desk):
    """Every answer sends the cookie again as its request brought it; one asked for before the token was may arrive after it."""
    client = desk.browser("installer")
    before = client.get_cookie("logbook").value
    csrf = client.get("/me").json["csrf"]
    client.set_cookie("logbook", before)
    assert client.post("/notes", data=note_form(text="Straight seven on run two."), headers={"X-CSRFToken": csrf}).status_code == 201


def test_a_token_that_is_too_old_is_no_refusal_of_what_was_sent(desk):
    client = desk.browser("installer")
    client.get("/me")
    answer = client.post("/notes", data=note_form(text="Straight seven on run two."), headers={"X-CSRFToken": "old"})
    assert answer.status_code == 400 and answer.headers["Retry-After"] == "0"
    assert client.post("/notes", data=note_form(text="Straight seven on run two."), headers={"X-CSRFToken": client.get("/me").json["csrf"]}).status_code == 201


def test_cookies_are_hidden_from_scripts_and_tied_to_the_site(desk):
    client = desk.browser()
    client.get("/enter", headers=PAGE)
    answer = client.post("/enter", data={"name": NAMES["lead"], "password": PASSWORD, "csrf_token": token(client, "/enter")}, headers=PAGE)
    cookie = next(one for one in answer.headers.getlist("Set-Cookie") if one.startswith("logbook="))
    assert "HttpOnly" in cookie and "SameSite=Lax" in cookie


def test_the_first_keeper_comes_by_a_link_that_works_once(tmp_path):
    from desk import Settings
    from logbook.web import create_app, first_link

    settings = Settings(tmp_path / "job", tmp_path / "state")
    store.open_folder(settings.folder, create=True).close()
    app = create_app(settings)
    void = first_link(settings).removeprefix("http://localhost")
    link = first_link(settings).removeprefix("http://localhost")
    client = app.test_client()
    assert client.get(void, headers=PAGE).status_code == 403, "a newer link makes the older void"
    data = {"name": "Una Vale", "password": PASSWORD, "again": PASSWORD, "csrf_token": token(client, link)}
    assert client.post(link, data=data | {"again": "something else"}, headers=PAGE).status_code == 422
    assert client.post(link, data=data | {"password": "short", "again": "short"}, headers=PAGE).status_code == 422
    assert client.post(link, data=data, headers=PAGE).status_code == 303
    assert client.get("/me").json["role"] == "keeper"
    assert client.get(link, headers=PAGE).status_code == 403
    assert first_link(settings) is None


def test_a_phone_pairs_once_and_can_be_cut_off(desk):
    keeper = desk.browser("keeper")
    page = keeper.post(f"/people/{desk.ids['installer']}/pair", data={"what": "phone", "csrf_token": keeper.get("/me").json["csrf"]}, headers=PAGE)
    code = "".join(re.search(r'class="code-big"[^>]*>(\w{4}) (\w{4})<', page.text).groups())
    phone = desk.browser()
    body = {"code": code.lower(), "csrf_token": token(phone, "/pair")}
    assert phone.post("/pair", data=body).json == {"paired": True}
    assert phone.get("/me").json["person"]["id"] == desk.ids["installer"]
    other = desk.browser()
    assert other.post("/pair", data={"code": code, "csrf_token": token(other, "/pair")}).status_code == 403
    with desk.folder() as folder:
        device = next(one for one in people.devices(folder.db, desk.ids["installer"]) if one.kind == "phone")
    keeper.post(f"/devices/{device.id}/cut-off", data={"csrf_token": keeper.get("/me").json["csrf"]})
    assert phone.get("/me").status_code == 401


IPHONE = "Mozilla/5.0 (iPhone; CPU iPhone OS 17_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/17.5 Mobile/15E148 Safari/604.1"
ANDROID = "Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/126.0.0.0 Mobile Safari/537.36"


@pytest.mark.parametrize(
    ("line", "kept", "words"),
    [
        (IPHONE, "iphone safari", "iPhone with Safari"),
        (ANDROID, "android-phone chrome", "Android phone with Chrome"),
        (ANDROID.replace("Chrome/126.0.0.0", "SamsungBrowser/25.0 Chrome/121.0.0.0"), "android-phone samsung", "Android phone with Samsung Internet"),
        ("Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/126.0.0.0 Safari/537.36 Edg/126.0.0.0", "windows edge", "Windows computer with Edge"),
        ("Mozilla/5.0 (Macintosh; Intel Mac OS X 10.15; rv:127.0) Gecko/20100101 Firefox/127.0", "mac firefox", "Mac or iPad with Firefox"),
        ("curl/8.5.0", "unknown unknown", "Device of an unknown kind with an unknown browser"),
    ],
)
def test_a_lead_reads_what_signed_in_and_the_browsers_line_is_not_kept(desk, line, kept, words):
    assert devices.known_by(line) == kept and devices.told(kept, "en") == words
    client = desk.app.test_client()
    data = {"name": NAMES["installer"], "password": PASSWORD, "csrf_token": token(client, "/enter")}
    assert client.post("/enter", data=data, headers=PAGE | {"User-Agent": line}).status_code == 303
    with desk.folder() as folder:
        assert [one.called for one in people.devices(folder.db, desk.ids["installer"]) if one.kind == "browser"] == [kept]
    page = desk.browser("keeper").get("/people", headers=PAGE).text
    assert words in page and "Mozilla" not in page and "signed in" in page


def test_what_was_kept_of_a_browser_before_is_told_from_its_beginning(desk):
    assert devices.told(IPHONE[:80], "en") == "iPhone" and devices.told(ANDROID[:80], "es") == "Teléfono o tableta Android"
    assert devices.told("Rosa Quint's phone", "en") == "Rosa Quint's phone", "a name that somebody gave stays"


def test_guessing_codes_makes_the_place_wait(desk):
    client = desk.browser()
    body = {"code": "22222222", "csrf_token": token(client, "/pair")}
    assert [client.post("/pair", data=body).status_code for _ in range(6)] == [403] * 5 + [429]


# --- tokens and headers


def test_a_session_needs_the_token_and_a_key_does_not(desk):
    client = desk.browser("installer")
    assert client.post("/notes", data=note_form()).status_code == 400
    csrf = client.get("/me").json["csrf"]
    assert client.post("/notes", data=note_form(), headers={"X-CSRFToken": csrf}).status_code == 201
    assert desk.hand_in().status_code == 201


@pytest.mark.parametrize("path", ["/enter", "/health", "/static/logbook.css", "/no/such", "/notes", "/phone", "/sw.js"])
def test_every_answer_carries_the_headers(desk, path):
    answer = desk.browser().get(path, headers=PAGE)
    for name, value in secrecy.HEADERS.items():
        assert answer.headers[name] == value
    assert "default-src 'none'" in answer.headers["Content-Security-Policy"]
    assert "unsafe" not in answer.headers["Content-Security-Policy"]
    assert "Strict-Transport-Security" not in answer.headers


def test_pages_hold_no_inline_script_or_style(desk):
    client = desk.browser("lead")
    for path in ("/", "/log", "/questions", "/people", "/day/2026-10-14", "/rules", "/trust", "/pair", "/phone"):
        page = client.get(path, headers=PAGE).text
        assert not re.search(r"<script(?![^>]*\bsrc=)|<style|\sstyle=|\son\w+=|https?://(?!localhost)", page), path


def test_what_people_say_is_text_never_markup(desk):
    said = '<script>alert(1)</script> Straight seven "><img src=x>'
    note = desk.hand_in(text=said).json["id"]
    page = desk.browser("lead").get(f"/entry/{note}", headers=PAGE).text
    assert "<script>alert" not in page and "<img src=x>" not in page


# --- handing in


def test_a_note_is_acknowledged_with_the_digests_of_its_bytes(desk):
    form = note_form(audio=[WEBM, WEBM + b"2"], photo=[JPEG])
    answer = desk.by_key("installer", "POST", "/notes", data=form)
    assert answer.status_code == 201
    own = [hashlib.sha256(part).hexdigest() for part in (WEBM, WEBM + b"2", JPEG)]
    assert answer.json["digests"] == {"audio": own[:2], "photos": own[2:], "text": None}


def test_the_same_note_again_changes_nothing_and_another_under_its_id_is_refused(desk):
    one = str(uuid.uuid4())
    first = desk.hand_in(id=one)
    assert (desk.hand_in(id=one).status_code, desk.hand_in(id=one).json) == (200, first.json)
    assert desk.hand_in(id=one, text="Elbow eight.").status_code == 409
    assert desk.hand_in(role="lead", id=one).status_code == 409


@pytest.mark.parametrize(
    ("fields", "status"),
    [
        ({"id": "seven"}, 422),
        ({"spoken_at": "yesterday"}, 422),
        ({"spoken_at": "2026-10-14T10:00:00"}, 422),
        ({"text": " "}, 422),
        ({"language": "de"}, 422),
        ({"kind": "igloo"}, 422),
        ({"photo_facts": "{"}, 422),
        ({"audio": [b"#EXTM3U\nhttp://elsewhere.example/a.ts"]}, 415),
        ({"photo": [b"<svg xmlns='http://www.w3.org/2000/svg'/>"]}, 415),
        ({"spoken_by": "lead-1"}, 403),
    ],
)
@pytest.mark.parametrize("language", ["en", "es"])
def test_refusals_say_what_and_what_to_do_in_the_readers_language(desk, fields, status, language):
    answer = desk.by_key("installer", "POST", f"/notes?language={language}", data=note_form(**fields))
    assert answer.status_code == status
    assert set(answer.json) == {"error", "cure"} and all(answer.json.values())
    other = desk.by_key("installer", "POST", f"/notes?language={'es' if language == 'en' else 'en'}", data=note_form(**fields))
    assert other.json["error"] != answer.json["error"]


def test_too_large_is_refused_before_it_is_kept(desk):
    answer = desk.by_key("installer", "POST", "/notes", data=note_form(photo=[JPEG + bytes(desk.settings.upload_limit)]))
    assert answer.status_code == 413 and answer.json["cure"]


def test_an_announced_photo_follows(desk):
    digest = hashlib.sha256(JPEG).hexdigest()
    note = desk.hand_in(photos_to_come=f'["{digest}"]').json["id"]
    path = f"/notes/{note}/photos/{digest}"
    assert desk.by_key("installer", "PUT", path, data=JPEG).status_code == 201
    assert desk.by_key("installer", "PUT", path, data=JPEG).status_code == 200
    assert desk.by_key("installer", "PUT", path, data=JPEG + b"other").status_code == 409
    seen = desk.by_key("lead", "GET", path)
    assert seen.data == JPEG and seen.mimetype == "image/jpeg" and "sandbox" in seen.headers["Content-Security-Policy"]
    assert desk.by_key("contractor", "GET", path).status_code == 404, "torn: its camera data cannot be cut out, and no small copy is made yet"


def test_sound_answers_ranges(desk):
    note = desk.by_key("installer", "POST", "/notes", data=note_form(audio=[WEBM])).json["id"]
    answer = desk.by_key("installer", "GET", f"/notes/{note}/sound/0", headers={"Range": "bytes=1-3"})
    assert (answer.status_code, answer.data) == (206, WEBM[1:4])
    assert desk.by_key("installer", "GET", f"/notes/{note}/sound/1").status_code == 404


def test_the_plain_form_hands_in_without_javascript(desk):
    client = desk.browser("installer")
    page = client.get("/", headers=PAGE).text
    fields = dict(re.findall(r'<input type="hidden" name="(\w+)" value="([^"]*)"', page))
    answer = client.post("/notes", data=fields | {"text": "Straight seven, run two, eighteen by twelve."}, headers=PAGE)
    assert answer.status_code == 303 and answer.headers["Location"] == f"/entry/{fields['id']}"
    assert client.get(answer.headers["Location"], headers=PAGE).status_code == 200
    assert client.post("/notes", data=fields | {"text": "Straight seven, run two, eighteen by twelve."}, headers=PAGE).status_code == 303


def test_acts_can_be_repeated(desk):
    note = desk.hand_in().json["id"]
    act = {"id": str(uuid.uuid4()), "at": "2026-10-14T10:05:00-05:00"}
    assert [desk.by_key("installer", "POST", f"/notes/{note}/withdraw", json=act).status_code for _ in range(2)] == [201, 200]


@pytest.mark.parametrize("body", [b"", b"[1]", b"{", b'"text"'])
def test_a_body_that_is_no_act_is_told_so(desk, body):
    note = desk.hand_in().json["id"]
    answer = desk.by_key("installer", "POST", f"/notes/{note}/right", data=body, content_type="application/json")
    assert answer.status_code == 400 and answer.json["cure"]


def test_one_press_changes_the_language_and_is_remembered(desk):
    client = desk.browser("installer")
    answer = client.post("/language", data={"language": "es", "then": "/log", "csrf_token": client.get("/me").json["csrf"]})
    assert answer.headers["Location"] == "/log"
    assert client.get("/log", headers=PAGE).text.count('<html lang="es">') == 1
    assert desk.browser("installer").get("/me").json["language"] == "es", "the person keeps it on another device"


# --- the interface as it is described


def test_openapi_names_every_route_of_the_interface_and_no_other(desk):
    described = {
        (re.sub(r"{\w+}", "*", path), method.upper())
        for path, each in desk.browser().get("/openapi.json").json["paths"].items()
        for method in each
        if method != "parameters"
    }
    pages = ("log.page", "entry.page", "piece.page", "piece.paper", "handing.page", "days.page", "days.newest", "holding.page", "walking.page", "walking.look_page", "walking.walk_list", "walking.release", "walking.photo")
    served = {
        (re.sub(r"<[^>]+>", "*", rule.rule), method)
        for rule in desk.app.url_map.iter_rules()
        for method in rule.methods - {"HEAD", "OPTIONS"}
        if rule.endpoint.split(".")[0] in ("handing", "log", "entry", "piece", "days", "holding", "walking", "leaking", "health") and rule.endpoint not in pages
    } | {("/me", "GET")}
    assert described == served - {("/openapi.json", "GET")}


def test_answers_have_the_described_shape(desk):
    document = desk.browser().get("/openapi.json").json
    note = desk.hand_in()
    seen = [
        ("/notes", "post", note),
        ("/notes", "post", desk.hand_in(id="seven")),
        ("/notes", "get", desk.by_key("installer", "GET", "/notes")),
        ("/notes", "get", desk.by_key("installer", "GET", "/notes?limit=0")),
        ("/notes/{note}", "get", desk.by_key("lead", "GET", f"/notes/{note.json['id']}")),
        ("/notes/{note}", "get", desk.by_key("lead", "GET", f"/notes/{uuid.uuid4()}")),
        ("/notes/{note}/right", "post", desk.by_key("installer", "POST", f"/notes/{note.json['id']}/right", json={"id": str(uuid.uuid4())})),
        ("/pieces/{piece}", "get", desk.by_key("lead", "GET", "/pieces/none")),
        ("/me", "get", desk.by_key("lead", "GET", "/me")),
        ("/me", "get", desk.browser().get("/me")),
        ("/leaks", "get", desk.by_key("contractor", "GET", "/leaks")),
        ("/leaks", "post", desk.by_key("lead", "POST", "/leaks", json={"id": str(uuid.uuid4()), "section": "run 2", "pressure": 1, "area": 360, "measured": 18, "instrument": "orifice tube", "tested_on": "2026-10-14", "tested_by": "Ada Fenn"})),
        ("/leaks", "post", desk.by_key("lead", "POST", "/leaks", json={"id": str(uuid.uuid4())})),
        ("/walk/draws", "post", desk.by_key("lead", "POST", "/walk/draws", json={"id": str(uuid.uuid4()), "day": "2026-01-01", "count": 3})),
        ("/health", "get", desk.browser().get("/health")),
        ("/ready", "get", desk.browser().get("/ready")),
    ]
    for path, method, answer in seen:
        told = document["paths"][path][method]["responses"][str(answer.status_code)]
        if "$ref" in told:
            told = document["components"]["responses"][told["$ref"].rsplit("/", 1)[1]]
        schema = told["content"]["application/json"]["schema"]
        jsonschema.Draft202012Validator({**schema, "components": document["components"]}).validate(answer.json)


# --- the certificate authority


def test_the_authority_vouches_for_this_name_and_private_addresses_alone(tmp_path):
    from cryptography import x509

    now = datetime.now(UTC)
    chain, key = authority.ensure(tmp_path / "state", ("box.local", "192.168.1.20", "127.0.0.1"), now)
    leaf, own = x509.load_pem_x509_certificates(chain.read_bytes())
    leaf.verify_directly_issued_by(own)
    limits = own.extensions.get_extension_for_class(x509.NameConstraints)
    assert limits.critical and "10.0.0.0/8" in {str(one.value) for one in limits.value.permitted_subtrees}
    assert (leaf.not_valid_after_utc - leaf.not_valid_before_utc).days <= 825
    assert key.stat().st_mode & 0o077 == 0 and (tmp_path / "state").stat().st_mode & 0o077 == 0
    before = own.fingerprint(leaf.signature_hash_algorithm)
    again, _ = authority.ensure(tmp_path / "state", ("box.local", "10.0.0.9"), now)
    renewed, same = x509.load_pem_x509_certificates(again.read_bytes())
    assert same.fingerprint(leaf.signature_hash_algorithm) == before, "phones trust the authority once"
    assert renewed.serial_number != leaf.serial_number


def test_a_day_is_signed_once_and_stands_in_the_day(desk):
    desk.hand_in()
    act = str(uuid.uuid4())
    first = desk.by_key("lead", "POST", "/days/2026-10-14/signatures", json={"id": act, "words": "seen"})
    assert first.status_code == 201, first.text
    assert desk.by_key("lead", "POST", "/days/2026-10-14/signatures", json={"id": act, "words": "seen"}).status_code == 200
    assert desk.by_key("installer", "POST", "/days/2026-10-14/signatures", json={"id": str(uuid.uuid4())}).status_code == 403
    assert desk.by_key("lead", "POST", "/days/2026-13-40/signatures", json={"id": str(uuid.uuid4())}).status_code == 422
    told = desk.by_key("lead", "GET", "/days/2026-10-14").json
    assert "seen" in str(told), told.keys()
