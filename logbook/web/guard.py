"""Who may do what: the only role check. One table of every route; a route that is not in it answers nobody.

An installer sees what he himself said or handed in, and what the crew of his phone said. That too is decided
here, from the note or piece in the address, before a screen is asked.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from contextlib import suppress

from flask import Flask, current_app, g, redirect, request, session, url_for

from logbook import store
from logbook.mistake import Broken, Mistake
from logbook.store import people
from logbook.web import answers, opened, tongue

NOBODY = "nobody"  # not signed in
EVERYBODY = frozenset({NOBODY, *people.ROLES})
CREW = frozenset({"installer", "lead"})
DESK = frozenset({"lead", "contractor", "keeper"})
SIGNED_IN = frozenset(people.ROLES)
LEAD = frozenset({"lead"})
OFFICE = frozenset({"lead", "keeper"})
KEEPER = frozenset({"keeper"})

# endpoint -> roles. What a contractor may not: hand in, decide, hear voices unless the job lets him.
MAY: Mapping[str, frozenset[str]] = {
    "static": EVERYBODY,
    "health.alive": EVERYBODY,
    "health.ready": EVERYBODY,
    "health.described": EVERYBODY,
    "doors.enter": EVERYBODY,
    "doors.enter_form": EVERYBODY,
    "doors.leave": EVERYBODY,
    "doors.first": EVERYBODY,
    "doors.first_form": EVERYBODY,
    "doors.password": EVERYBODY,
    "doors.password_form": EVERYBODY,
    "doors.pair": EVERYBODY,
    "doors.pair_form": EVERYBODY,
    "doors.language": EVERYBODY,
    "doors.trust": EVERYBODY,
    "doors.authority": EVERYBODY,
    "doors.profile": EVERYBODY,
    "doors.me": SIGNED_IN,
    "phone.shell": EVERYBODY,
    "phone.worker": EVERYBODY,
    "phone.manifest": EVERYBODY,
    "phone.words": EVERYBODY,
    "phone.plan": CREW,
    "sheets.kept": CREW,
    "handing.page": CREW,
    "handing.hand_in": CREW,
    "handing.photo": CREW,
    "log.page": SIGNED_IN,
    "log.notes": SIGNED_IN,
    "log.questions": CREW,
    "entry.document": SIGNED_IN,
    "entry.page": SIGNED_IN,
    "entry.sound": frozenset({"installer", "lead", "keeper"}),
    "entry.small_photo": SIGNED_IN,
    "entry.photo": SIGNED_IN,
    "entry.correct": CREW,
    "entry.right": CREW,
    "entry.withdraw": CREW,
    "entry.type_words": CREW,
    "entry.hear_again": CREW,
    "piece.document": SIGNED_IN,
    "piece.page": SIGNED_IN,
    "piece.drawing": SIGNED_IN,
    "piece.decide": LEAD,
    "piece.paper": DESK,
    "desk.page": DESK,
    "desk.first": DESK,
    "desk.item": DESK,
    "desk.planned": DESK,
    "desk.settle": LEAD,
    "desk.settle_several": LEAD,
    "desk.look": LEAD,
    "holding.page": DESK,
    "holding.release": LEAD,
    "days.newest": DESK,
    "days.page": DESK,
    "days.document": DESK,
    "compared.page": DESK,
    "days.sign": frozenset({"lead", "contractor"}),
    "paper.report": DESK,
    "paper.package": DESK,
    "lineup.page": DESK,
    "lineup.planned": DESK,
    "walking.page": DESK,
    "walking.draw": LEAD,
    "walking.look_page": DESK,
    "walking.look": LEAD,
    "walking.walk_list": DESK,
    "walking.answer": LEAD,
    "walking.release": DESK,
    "walking.photo": DESK,
    "closing.page": DESK,
    "closing.write": OFFICE,
    "leaking.page": DESK,
    "leaking.record": LEAD,
    "searching.page": SIGNED_IN,
    "tagging.page": DESK,
    "tagging.sheet": DESK,
    "cutting.page": SIGNED_IN,
    "cutting.drawing": SIGNED_IN,
    "cutting.paper": SIGNED_IN,
    "run.page": DESK,
    "run.drawing": DESK,
    "rules.page": SIGNED_IN,
    "rules.one": SIGNED_IN,
    "staff.page": OFFICE,
    "staff.add": KEEPER,
    "staff.pair": OFFICE,
    "staff.cut_off": OFFICE,
    "staff.leave": KEEPER,
    "staff.share": OFFICE,
    "forgetting.page": KEEPER,
    "forgetting.forget": KEEPER,
}
# endpoint -> (role, what the job file says that lets this role in too)
OPENED_BY_THE_JOB: Mapping[str, tuple[str, Callable]] = {"entry.sound": ("contractor", lambda job: job.voice.contractor_hears)}
SEES_PLACES = frozenset({"lead", "keeper"})  # where a photo was taken; everybody else gets copies without it
OPEN_WHEN_FULL = frozenset({"doors.leave", "doors.language", "doors.enter", "doors.pair"})  # unsafe methods that write next to nothing: who comes in can read


def install(app: Flask) -> None:
    app.before_request(_stand_at_the_door)


def _stand_at_the_door():
    """None lets the request through; anything else is the answer."""
    g.person = g.device = None
    if request.endpoint is None:
        return None  # no such page: Flask answers 404 or 405
    if request.endpoint not in MAY:
        raise Broken(Mistake("pages.no-such-page"))
    if request.endpoint == "static":
        return None
    by_key = _recognise()
    if not may(request.endpoint):
        return _turned_away()
    refused = _not_his_own() or _no_room()
    if refused is not None:
        return answers.refuse(refused)
    if request.method not in ("GET", "HEAD", "OPTIONS") and not by_key:
        current_app.extensions["csrf"].protect()
    return None


def _recognise() -> bool:
    """Sets `g.person` and `g.device`; True where a script's key opened, which needs no CSRF token."""
    kind, _, key = request.headers.get("Authorization", "").partition(" ")
    by_key = kind.lower() == "bearer"
    token = key.strip() if by_key else session.get("device")
    if not token:
        return False
    folder, now = opened.folder(), opened.now()
    found = people.device_of(folder.db, token, now)
    if found is None or (by_key and found[1].kind != "script"):
        return False
    g.person, g.device = found
    tongue.of_person(g.person.language)
    if people.is_stale(g.device, now):  # when it was last used is worth no refusal: a log that is locked or read-only can be read
        with suppress(Broken), store.writing(folder) as db:
            people.seen(db, g.device.id, now)
    return by_key


def _turned_away():
    if g.person is not None:
        if request.path == "/" and request.method == "GET" and answers.wants_page():
            return redirect(url_for("doors.enter_form"))  # the bare address leads everybody to a page of his own
        return answers.refuse(Mistake("pages.not-for-you"))
    if answers.wants_page() and request.method == "GET":
        return redirect(url_for("doors.enter_form", then=request.full_path.rstrip("?")))
    return answers.refuse(Mistake("pages.sign-in-first"))


def _not_his_own() -> Mistake | None:
    """An installer asks for somebody else's note or piece: it does not exist for him."""
    if g.person is None or g.person.role != "installer" or not request.view_args:
        return None
    note, piece = request.view_args.get("note"), request.view_args.get("piece")
    if note and not _spoke(people.speakers(opened.folder().db, note)):
        return Mistake("pages.no-such-note")
    if piece and not _spoke(people.piece_speakers(opened.folder().db, piece)):
        return Mistake("pages.no-such-piece")
    return None


def _spoke(speakers) -> bool:
    return bool(set(speakers or ()) & set(voices()))


def voices() -> dict[str, str | None]:
    """Who may speak on this device: id -> name. The owner first, then the crew that shares it."""
    if g.person is None:
        return {}
    crew = people.crew(opened.folder().db, g.device.id)
    return {one.id: one.name for one in (g.person, *crew)}


def of_the_crew(person) -> bool:
    """Whether this person builds or leads, and may be asked to end something."""
    return person.role in CREW


def sees_all() -> bool:
    """False: only what this person's device said."""
    return g.person is not None and g.person.role != "installer"


def may(endpoint: str) -> bool:
    """Whether this reader may; pages offer no press that would be refused."""
    role = g.person.role if g.person else NOBODY
    if role in MAY[endpoint]:
        return True
    let_in, by_job = OPENED_BY_THE_JOB.get(endpoint, (None, None))
    return role == let_in and by_job(opened.folder().job)


def sees_places() -> bool:
    """False: whatever is told or given of a photo goes out without the place it was taken."""
    return g.person is not None and g.person.role in SEES_PLACES


def _no_room() -> Mistake | None:
    """507 before a body is read."""
    if request.method in ("GET", "HEAD", "OPTIONS") or request.endpoint in OPEN_WHEN_FULL:
        return None
    return store.room(opened.folder())
