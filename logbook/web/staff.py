"""People and phones: who works on the job, what signs in for whom, pairing, cutting off."""

from __future__ import annotations

import io

import segno
from flask import Blueprint, g, redirect, render_template, request, url_for

from logbook import store
from logbook.mistake import Mistake
from logbook.store import people
from logbook.web import answers, authority as local_authority, devices, opened

screen = Blueprint("staff", __name__)


@screen.get("/people")
def page():
    return _page()


def _page(status: int = 200, **more):
    folder = opened.folder()
    everybody = people.everybody(folder.db)
    by_person: dict[str, list] = {}
    for device in people.devices(folder.db):
        if device.cut_off_at is None and device.ends_at > opened.now().isoformat(timespec="seconds"):
            by_person.setdefault(device.person, []).append(device)
    crews = {device.id: people.crew(folder.db, device.id) for listed in by_person.values() for device in listed}
    page = render_template(
        "people.html", everybody=everybody, devices=by_person, crews=crews, roles=people.ROLES,
        device_told=lambda called: devices.told(called, g.language), **more
    )
    return page, status


@screen.post("/people")
def add():
    folder, now = opened.folder(), opened.now()
    with store.writing(folder) as db:
        made = people.add(db, request.form.get("name", ""), request.form.get("role", ""), now)
        if not isinstance(made, Mistake):
            store.journal.write(db, "person-added", {"person": made.id, "role": made.role, "by": g.person.id}, made.name)
    if isinstance(made, Mistake):
        error, cure = answers.sentences(made, g.language)
        return _page(answers.status_of(made), error=error, cure=cure, typed=request.form.get("name", "")[:80])
    return redirect(url_for("staff.page") + f"#{made.id}", 303)


@screen.post("/people/<person>/pair")
def pair(person: str):
    """A code for a phone (10 minutes) or a link to set a password (a day), each works once."""
    folder = opened.folder()
    whose = people.person(folder.db, person)
    purpose = "password" if request.form.get("what") == "password" else "pair"
    if whose is None or whose.left_at or (purpose == "password" and g.person.role != "keeper" and whose.role == "keeper"):
        return answers.refuse(Mistake("pages.no-such-person"))
    with store.writing(folder) as db:
        code = people.invite(db, person, purpose, opened.now())
        store.journal.write(db, "invited", {"person": person, "by": g.person.id, "for": purpose}, None)
    address = opened.settings().address
    link = f"{address}/password/{code}" if purpose == "password" else f"{address}/pair#{code}"
    return render_template(
        "pairing.html", whose=whose, code=code if purpose == "pair" else None, link=link, picture=qr(link),
        address=address, trust=qr(f"{address}/trust") if opened.settings().secure and local_authority.path(opened.settings().state) else None, until=opened.now().astimezone(folder.job.timezone()) + people.INVITATION_LASTS[purpose],
    )  # fmt: skip


def qr(text: str) -> str:
    """A QR code (ISO/IEC 18004) as inline SVG without styles, for a dark ink on white."""
    kept = io.BytesIO()
    segno.make(text, error="m").save(
        kept, kind="svg", scale=6, border=4, xmldecl=False, svgns=True, nl=False, light="#ffffff", dark="#1b2733", omitsize=True
    )
    return kept.getvalue().decode()


@screen.post("/devices/<device>/cut-off")
def cut_off(device: str):
    folder = opened.folder()
    if device not in {one.id for one in people.devices(folder.db)}:
        return answers.refuse(Mistake("pages.no-such-person"))
    with store.writing(folder) as db:
        if people.cut_off(db, device, opened.now()):
            store.journal.write(db, "cut-off", {"device": device, "by": g.person.id}, None)
    return redirect(url_for("staff.page"), 303)


@screen.post("/devices/<device>/crew")
def share(device: str):
    """Who speaks on this phone beside its owner."""
    folder = opened.folder()
    picked = tuple(request.form.getlist("person"))
    known = {one.id for one in people.everybody(folder.db) if one.role in ("installer", "lead") and not one.left_at}
    if not set(picked) <= known or device not in {one.id for one in people.devices(folder.db)}:
        return answers.refuse(Mistake("pages.no-such-person"))
    with store.writing(folder) as db:
        people.share(db, device, picked)
        store.journal.write(db, "phone-shared", {"device": device, "people": list(picked), "by": g.person.id}, None)
    return redirect(url_for("staff.page"), 303)


@screen.post("/people/<person>/leave")
def leave(person: str):
    """Works here no more: all devices end; what he said stays."""
    folder = opened.folder()
    if people.person(folder.db, person) is None or person == g.person.id:
        return answers.refuse(Mistake("pages.no-such-person"))
    with store.writing(folder) as db:
        people.leave(db, person, opened.now())
        store.journal.write(db, "person-left", {"person": person, "by": g.person.id}, None)
    return redirect(url_for("staff.page"), 303)
