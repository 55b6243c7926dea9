"""Coming in and going out: sign in, the first keeper, pairing a phone, the language press, trust of the address."""

from __future__ import annotations

from flask import Blueprint, g, jsonify, make_response, redirect, render_template, request, send_file, session, url_for
from flask_wtf.csrf import generate_csrf

from logbook import store
from logbook.mistake import Broken, Mistake
from logbook.store import people
from logbook.web import answers, authority as local_authority, devices, guard, opened, tongue
from logbook.wording import LANGUAGES

screen = Blueprint("doors", __name__)


def local(path: str | None) -> str:
    """A path of this server to go on to, or the start: an address elsewhere is never followed."""
    if path and path.startswith("/") and not path.startswith("//") and "\\" not in path and path.isprintable():
        return path
    return "/"


@screen.get("/enter")
def enter_form():
    if g.person is not None:
        return redirect(_home(g.person.role))
    return render_template("enter.html", then=local(request.args.get("then")))


@screen.post("/enter")
def enter():
    """Name and password. Wrong name and wrong password answer the same, at the same pace; five failures wait.

    The try is written down as failed before the password is looked at, so that many at once get no more than five.
    """
    folder, now = opened.folder(), opened.now()
    name, password, place = request.form.get("name", "")[:200], request.form.get("password", ""), request.remote_addr or ""
    with store.writing(folder) as db:
        seconds = people.must_wait(db, name, place, now)
        attempt = None if seconds else people.note_attempt(db, name, place, False, now)
    if seconds:
        return _again(Mistake("pages.wait", "name", {"seconds": seconds, "minutes": -(-seconds // 60)}))
    person = people.check_password(folder.db, name, password)
    with store.writing(folder) as db:
        people.forget_attempts(db, now)
        if person is not None:
            people.attempt_worked(db, attempt)
            device, token = people.give_device(db, person.id, "browser", _browser(), now)
            store.journal.write(db, "signed-in", {"person": person.id, "device": device.id}, None)
    if person is None:
        return _again(Mistake("pages.wrong-sign-in"))
    _open(token)
    return redirect(local(request.form.get("then")) if request.form.get("then", "/") != "/" else _home(person.role), 303)


def _again(mistake: Mistake):
    """The form again with what was wrong; the password is not sent back."""
    if not answers.wants_page():
        return answers.refuse(mistake)
    status = answers.status_of(mistake)
    error, cure = answers.sentences(mistake, g.language)
    page = render_template(
        "enter.html", then=local(request.form.get("then")), error=error, cure=cure, name=request.form.get("name", "")[:80]
    )
    answer = make_response(page, status)
    if status == 429:
        answer.headers["Retry-After"] = str(mistake.values["seconds"])
    return answer


def _open(token: str) -> None:
    """A fresh session that holds this device: nothing of the one before goes on.

    It holds the secret of the forms from the start. Every answer sends the cookie again as the request brought it; were the
    secret laid only when it is first asked for, an answer on its way meanwhile would take it off the device again.
    """
    session.clear()
    session.permanent = True
    session["device"] = token
    generate_csrf()


def _browser() -> str:
    return devices.known_by(request.user_agent.string or "")


def _home(role: str) -> str:
    return url_for("handing.page") if role == "installer" else url_for("desk.page") if role == "lead" else url_for("days.newest") if role != "keeper" else url_for("staff.page")


@screen.post("/leave")
def leave():
    """Signs this device out for good."""
    if g.device is not None:
        folder = opened.folder()
        with store.writing(folder) as db:
            people.cut_off(db, g.device.id, opened.now())
    session.clear()
    return redirect(url_for("doors.enter_form"), 303)


@screen.post("/language")
def language():
    """One press, remembered on this device and for this person."""
    pressed = request.form.get("language")
    pressed = pressed if pressed in LANGUAGES else LANGUAGES[0]
    if g.person is not None and g.person.language != pressed:
        folder = opened.folder()
        with store.writing(folder) as db:
            people.speak(db, g.person.id, pressed)
    return tongue.remember(redirect(local(request.form.get("then")), 303), pressed)


@screen.get("/me")
def me():
    """Who is signed in here, and a fresh CSRF token for what is sent next."""
    job = opened.folder().job
    return jsonify(
        person={"id": g.person.id, "name": g.person.name},
        role=g.person.role,
        job={"id": job.id, "name": job.name},
        language=g.language,
        crew=[{"id": id, "name": name} for id, name in guard.voices().items()],
        csrf=generate_csrf(),
    )


# --- the first keeper, and passwords by link


def first_link(settings) -> str | None:
    folder = store.open_folder(settings.folder)
    if isinstance(folder, Mistake):
        raise Broken(folder)
    with folder:
        if people.has_keeper(folder.db):
            return None
        with store.writing(folder) as db:
            code = people.invite(db, None, "first", opened.now())
    return f"{settings.address}/first/{code}"


@screen.get("/first/<code>")
def first_form(code: str):
    return _choose(code, "first")


@screen.post("/first/<code>")
def first(code: str):
    """Makes the one keeper, with a name and a password of his own choosing."""
    return _chosen(code, "first")


@screen.get("/password/<code>")
def password_form(code: str):
    return _choose(code, "password")


@screen.post("/password/<code>")
def password(code: str):
    """A person sets the password by the link that the office gave."""
    return _chosen(code, "password")


def _choose(code: str, purpose: str, mistake: Mistake | None = None):
    folder = opened.folder()
    found = people.invited(folder.db, code, purpose, opened.now())
    if found is None or (purpose == "first" and people.has_keeper(folder.db)):
        return answers.refuse(Mistake("pages.code-void"))
    whose = people.person(folder.db, found["person"]) if found["person"] else None
    error, cure = answers.sentences(mistake, g.language) if mistake else ("", "")
    page = render_template(
        "choose.html", whose=whose, error=error, cure=cure, shortest=people.SHORTEST_PASSWORD,
        typed=request.form.get("name", "")[:80],
    )  # fmt: skip
    return make_response(page, answers.status_of(mistake) if mistake else 200)


def _chosen(code: str, purpose: str):
    folder, now = opened.folder(), opened.now()
    if request.form.get("password") != request.form.get("again"):
        return _choose(code, purpose, Mistake("pages.not-the-same"))
    hashed = people.hashed(request.form.get("password", ""))
    if isinstance(hashed, Mistake):
        return _choose(code, purpose, hashed)
    with store.writing(folder) as db:
        person, refused = _taken_up(db, code, purpose, now)
        if refused is None:
            people.keep_password(db, person.id, hashed)
            people.end_sessions(db, person.id, now)
            device, token = people.give_device(db, person.id, "browser", _browser(), now)
            store.journal.write(db, "password-set", {"person": person.id, "device": device.id}, None)
    if refused is not None:
        return _choose(code, purpose, refused) if refused.key.startswith("people.") else answers.refuse(refused)
    _open(token)
    return redirect(_home(person.role), 303)


def _taken_up(db, code: str, purpose: str, now):
    """(person, None) or (None, why not); the invitation is used up only when all fits."""
    void = Mistake("pages.code-void")
    found = people.invited(db, code, purpose, now)
    if found is None or (purpose == "first" and people.has_keeper(db)):
        return None, void
    if purpose == "password":
        person = people.person(db, found["person"])
    else:
        person = people.add(db, request.form.get("name", ""), "keeper", now, g.language)
        if isinstance(person, Mistake):
            return None, person
        store.journal.write(db, "person-added", {"person": person.id, "role": person.role}, person.name)
    people.use_invitation(db, code, purpose, now)
    return person, None


# --- pairing a phone


@screen.get("/pair")
def pair_form():
    """Where the 8 signs are typed in the installed page; the QR code carries them behind the #, unseen by logs."""
    return render_template("pair.html")


@screen.post("/pair")
def pair():
    """The code of the lead's screen signs this phone in for one person, once."""
    folder, now = opened.folder(), opened.now()
    code, place = people.tidy_code(request.form.get("code", "")[:40]), request.remote_addr or ""
    seconds = people.must_wait(folder.db, f"pair {place}", place, now)
    if seconds:
        return _pair_again(Mistake("pages.wait", "code", {"seconds": seconds, "minutes": -(-seconds // 60)}))
    token = None
    with store.writing(folder) as db:
        found = people.use_invitation(db, code, "pair", now)
        people.note_attempt(db, f"pair {place}", place, found is not None, now)
        if found is not None:
            device, token = people.give_device(db, found["person"], "phone", _browser(), now)
            store.journal.write(db, "phone-paired", {"person": found["person"], "device": device.id}, None)
    if token is None:
        return _pair_again(Mistake("pages.code-void"))
    _open(token)
    if answers.wants_page():
        return redirect(url_for("phone.shell"), 303)
    return jsonify(paired=True)


def _pair_again(mistake: Mistake):
    if not answers.wants_page():
        return answers.refuse(mistake)
    error, cure = answers.sentences(mistake, g.language)
    return make_response(render_template("pair.html", error=error, cure=cure), answers.status_of(mistake))


# --- trust of this address


@screen.get("/trust")
def trust():
    """How a phone comes to trust this server's own certificate."""
    return render_template("trust.html", own=local_authority.path(opened.settings().state) is not None)


@screen.get("/trust/authority.crt")
def authority():
    path = local_authority.path(opened.settings().state)
    if path is None:
        return answers.refuse(Mistake("pages.no-such-file"))
    return send_file(path, mimetype="application/x-x509-ca-cert", as_attachment=True, download_name="logbook-authority.crt")


@screen.get("/trust/authority.mobileconfig")
def profile():
    """The same certificate as an iPhone takes it: a configuration profile."""
    made = local_authority.profile(opened.settings().state)
    if made is None:
        return answers.refuse(Mistake("pages.no-such-file"))
    answer = make_response(made)
    answer.headers["Content-Type"] = "application/x-apple-aspen-config"
    answer.headers["Content-Disposition"] = 'attachment; filename="logbook-authority.mobileconfig"'
    return answer
