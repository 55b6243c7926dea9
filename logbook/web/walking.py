"""The walk: spot checks of the day, the walk list by area, and the sheet before a ceiling closes."""

from __future__ import annotations

import re
import uuid
from collections.abc import Mapping

from flask import Blueprint, g, jsonify, make_response, redirect, render_template, request, send_file, url_for
from markupsafe import Markup

from logbook import facts, intake, labels, lineup, store
from logbook.day import moments
from logbook.facts import bare_mark
from logbook.intake import Part
from logbook.mistake import Mistake
from logbook.rules.checklist import CHECKLIST
from logbook.store import people, walked
from logbook.walk import areas, leaks, lots, releases, rounds
from logbook.web import answers, asked, opened, pressing

screen = Blueprint("walking", __name__)
LISTED = 120  # pieces beyond which those that the schedule does not name are counted by area


@screen.get("/walk")
def page():
    """The spot check of a day, said against found, and all areas."""
    folder = opened.folder()
    day = opened.day_of(request.args.get("date", "")) or _newest_day(folder)
    drawn, looks, given = walked.draws(folder), walked.newest_looks(folder), walked.walk_answers(folder)
    held = [_pieced(folder, draw, looks) for draw in drawn if draw["day"] == day.isoformat()]
    return render_template(
        "walk.html", date=day.isoformat(), draws=held, names=people.names(folder.db), count=lots.A_DRAW, most=lots.MOST,
        against=_against(drawn, looks), areas=[_area_told(one, given) for one in _areas(folder, LISTED)],
    )  # fmt: skip


def _newest_day(folder):
    newest = store.newest_day(folder)
    return opened.day_of(newest) if newest else opened.local_now().date()


def _pieced(folder, draw: dict, looks: Mapping[str, dict]) -> dict:
    rows = []
    for piece_id in draw["drawn"]:
        piece = store.piece_document(folder, piece_id, g.language)
        look = looks.get(piece_id)
        look = look if look and look["draw"] == draw["id"] else None
        rows.append({"id": piece_id, "piece": piece, "look": look, "first": piece_id in draw["first"], "before": piece_id in draw.get("before", ()), "told": look and look_told(look)})
    return draw | {"rows": rows}


def look_told(look: Mapping) -> dict:
    counted = lots.against(1, [look])
    return {"looked": counted.looked, "otherwise": counted.otherwise}


def _against(drawn: list[dict], looks: Mapping[str, dict]) -> dict:
    """By day of the draw, then all together. A piece counts on the day of the draw that it was looked at for."""
    days = []
    for day in sorted({one["day"] for one in drawn}, reverse=True):
        of_day = [one for one in drawn if one["day"] == day]
        ids = {one["id"] for one in of_day}
        days.append((day, lots.against(len({p for one in of_day for p in one["drawn"]}), [one for one in looks.values() if one["draw"] in ids])))
    every = {piece for one in drawn for piece in one["drawn"]}
    return {"days": days, "all": lots.against(len(every), looks.values()), "waiting": len(every - looks.keys())}


@screen.post("/walk/draws")
def draw():
    """Body: id, day, count."""
    body = asked.body(("count",))
    if isinstance(body, Mistake):
        return answers.refuse(body)
    day = opened.day_of(str(body.get("day", "")))
    if day is None:
        return answers.refuse(Mistake("pages.bad-date", "day", {"came": str(body.get("day"))[:20]}))
    act = walked.draw_spot(opened.folder(), str(body.get("id", "")), day, g.person.id, body["count"], body["at"])
    if isinstance(act, Mistake):
        return answers.refuse(act)
    if answers.wants_page():
        return redirect(url_for("walking.page", date=day.isoformat()), 303)
    return make_response(jsonify(act.document), 200 if act.repeated else 201)


@screen.get("/walk/look/<piece>")
def look_page(piece: str):
    return _look_form(piece)


def _look_form(piece_id: str, refused: Mistake | None = None, status: int = 200):
    folder = opened.folder()
    found = store.piece_document(folder, piece_id, g.language)
    if found is None:
        return answers.refuse(Mistake("pages.no-such-piece"))
    before = walked.looks(folder, piece_id)
    page = render_template(
        "look.html", piece=found, sayings=lots.sayings(found), ways=lots.WAYS, choices=lots.ANSWERS, before=before, press=pressing.field, own=_own_fields, shape=lambda name: facts.BY_NAME[name].shape, names=people.names(folder.db),
        told=look_told, posted=request.form, refused=refused and _sentences(refused), fresh=request.form.get("id") or str(uuid.uuid4()),
    )  # fmt: skip
    return make_response(page, status)


def _own_fields(form: Markup, name: str) -> Markup:
    """The press form of a fact with fields of its own among the others of the page; nothing is filled or chosen beforehand."""
    own = str(form).replace(' name="', f' name="of-{name}-').replace(" required", "")
    return Markup(re.sub(r'(<select[^>]*>)(?!<option value="">)', r'\1<option value=""></option>', own))


def _sentences(mistake: Mistake) -> tuple[str, str]:
    """The two sentences of a refusal, with the name of a fact as people read it."""
    values = dict(mistake.values)
    if "fact" in values:
        values["fact"] = labels.name(str(values["fact"]), g.language)
    return answers.sentences(Mistake(mistake.key, mistake.where, values), g.language)


@screen.post("/walk/look/<piece>")
def look(piece: str):
    """Body: id, how, words, found [{name, answer, value, words}]; a form names its fields answer-FACT, words-FACT and of-FACT-…"""
    body = asked.body()
    if isinstance(body, Mistake):
        return answers.refuse(body)
    if asked.is_form():
        body["found"] = [_pressed(body, key.removeprefix("answer-")) for key in [*body] if key.startswith("answer-")]
        wrong = next((one["value"] for one in body["found"] if isinstance(one["value"], Mistake)), None)
        if wrong:
            return _look_form(piece, wrong, answers.status_of(wrong))
        photos = _photos("photo")
        if isinstance(photos, Mistake):
            return _look_form(piece, photos, answers.status_of(photos))
        body["photos"] = photos
    act = walked.keep_look(opened.folder(), str(body.get("id", "")), piece, body, g.person.id, body["at"])
    if isinstance(act, Mistake):
        return _look_form(piece, act, answers.status_of(act)) if answers.wants_page() else answers.refuse(act)
    if answers.wants_page():
        off = any(one["answer"] == "otherwise" for one in act.document["found"])
        return redirect(url_for("walking.look_page", piece=piece) if off else url_for("walking.page"), 303)
    return make_response(jsonify(act.document), 200 if act.repeated else 201)


def _pressed(body: Mapping, name: str) -> dict:
    """One line of the form; the value that was found stands in fields of its own, `of-FACT-…`."""
    row = {"name": name, "answer": body[f"answer-{name}"], "words": body.get(f"words-{name}"), "value": None}
    own = {key.removeprefix(f"of-{name}-"): value for key, value in body.items() if key.startswith(f"of-{name}-")}
    if row["answer"] == "otherwise" and any(value.strip() for key, value in own.items() if not key.startswith(("way", "side-0", "side-1"))):
        row["value"] = pressing.value(own | {"name": name})
    elif row["answer"] == "otherwise" and any(key.startswith("side-") and value == "yes" for key, value in own.items()):
        row["value"] = pressing.value(own | {"name": name})
    return row


def _photos(field: str) -> list[str] | Mistake:
    """The pictures of one field, kept; nothing chosen is no picture."""
    given = [file for file in request.files.getlist(field) if file.filename]
    if len(given) > walked.MOST_PHOTOS:
        return Mistake("walk.too-many-photos", field, {"most": walked.MOST_PHOTOS})
    kept = []
    for file in given:
        one = walked.keep_photo(opened.folder(), Part(file.stream, file.filename), g.person.id)
        if isinstance(one, Mistake):
            return one
        kept.append(one)
    return kept


# --- areas


def _areas(folder, most: int = -1) -> list[areas.Area]:
    """With pieces in short. Of more than `most` some are only counted."""
    plan = folder.job.revision(None)
    return areas.areas(plan, *walked.short_pieces(folder, lineup.planned_marks(plan), most))


def _area(key: str) -> areas.Area | None:
    """One area with all its pieces in short; no other piece is read."""
    folder, (what, _, name) = opened.folder(), key.partition(":")
    plan = folder.job.revision(None)
    rows = [row for row in plan.rows if areas.same_name(row.area or "", name)] if plan and what.casefold() == areas.AREA else []
    pieces = walked.pieces_in(folder, what.casefold(), name, {bare_mark(row.mark) for row in rows})
    return next((one for one in areas.areas(plan, pieces) if one.key.casefold() == key.casefold()), None)


def _area_told(area: areas.Area, acts: list[dict]) -> dict:
    return {
        "key": area.key, "what": area.what, "name": area.name, "pieces": len(area.pieces) + area.more, "missing": len(areas.missing(area)), "planned": bool(area.rows),
        "counts": rounds.counts(rounds.standing(area.key, acts)),
    }  # fmt: skip


@screen.get("/walk/list")
def walk_list():
    return _list_page()


def _list_page(refused: Mistake | None = None, kept: int | None = None):
    folder, area = opened.folder(), _area(request.values.get("area", ""))
    if area is None:
        return answers.refuse(Mistake("walk.no-area", "area"), 404)
    held = rounds.standing(area.key, walked.walk_answers(folder))
    kept = request.args.get("kept") if kept is None else kept
    page = render_template(
        "walk-list.html", area=_area_told(area, walked.walk_answers(folder)), groups=_grouped(held), choices=rounds.ANSWERS, names=people.names(folder.db),
        posted=request.form, refused=refused and _sentences(refused), kept=kept if kept and str(kept).isdecimal() else None,
        fresh=request.form.get("id") or str(uuid.uuid4()),
    )  # fmt: skip
    return make_response(page, answers.status_of(refused) if refused else 200)


def _grouped(held) -> list[tuple[str, list[dict]]]:
    by_id = {one.id: one for one in CHECKLIST}
    rows = [
        {"id": one.question, "now": one.now, "before": one.before, "read": by_id[one.question].read, "papers": rounds.of_lead(one.question) and not rounds.of_walk(one.question),
         "rules": [rule for rule in by_id[one.question].covered_by if rule not in ("walk", "lead")]}
        for one in held
    ]  # fmt: skip
    return [(group, [row for row in rows if row["id"][0] == group]) for group in rounds.GROUPS]


@screen.post("/walk/list")
def answer():
    """A form gives answer-ID, words-ID and photo-ID of each question; JSON one answer: id, area, question, answer, words."""
    body = asked.body()
    if isinstance(body, Mistake):
        return answers.refuse(body)
    folder, by = opened.folder(), g.person.id
    area = _area(str(body.get("area", "")))
    if area is None:
        return answers.refuse(Mistake("walk.no-area", "area"))
    if not asked.is_form():
        act = walked.answer_walk(folder, str(body.get("id", "")), area.key, body.get("question"), body.get("answer"), by, body.get("words") or "", at=body["at"])
        return answers.refuse(act) if isinstance(act, Mistake) else make_response(jsonify(act.document), 200 if act.repeated else 201)
    if not intake.is_id(str(body.get("id", ""))):
        return answers.refuse(Mistake("intake.id", "id", {"came": intake.shown(body.get("id"))}))
    pressed = [one for one in rounds.IDS if body.get(f"answer-{one}")]
    for one in pressed:  # nothing is kept before all of it may be
        wrong = rounds.answer(area.key, one, body[f"answer-{one}"], body.get(f"words-{one}"))
        if isinstance(wrong, Mistake):
            return _list_page(wrong)
    for one in pressed:
        photos = _photos(f"photo-{one}")
        act = photos if isinstance(photos, Mistake) else walked.answer_walk(
            folder, str(uuid.uuid5(uuid.UUID(body["id"]), one)), area.key, one, body[f"answer-{one}"], by, body.get(f"words-{one}") or "", photos, body["at"]
        )  # fmt: skip
        if isinstance(act, Mistake):
            return _list_page(act)
    return redirect(url_for("walking.walk_list", area=area.key, kept=len(pressed)), 303)


@screen.get("/walk/release")
def release():
    """What is missing before this ceiling closes, to print."""
    folder, area = opened.folder(), _area(request.args.get("area", ""))
    if area is None:
        return answers.refuse(Mistake("walk.no-area", "area"), 404)
    looks = walked.newest_looks(folder)
    off = {piece for piece, look in looks.items() if any(one["answer"] == "otherwise" for one in look["found"])}
    seen = {piece for piece, look in looks.items() if any(one["answer"] != "not_seen" for one in look["found"])}
    area.pieces = walked.for_release(folder, [piece["id"] for piece in area.pieces])
    sheet = releases.sheet(area, walked.walk_answers(folder), seen, off)
    records = [one | {"told": leaks.told(one)} for one in leaks.standing(walked.leak_records(folder)) if _names(one["section"], area)]
    return render_template(
        "release.html", sheet=sheet, area=_area_told(area, walked.walk_answers(folder)), records=records, names=people.names(folder.db),
        made=moments.full(opened.local_now().replace(microsecond=0).isoformat(), g.language), journal=store.journal.newest(folder),
    )  # fmt: skip


def _names(section: str, area: areas.Area) -> bool:
    return any(run.casefold() in leaks.section_words(section) for run in area.runs)


@screen.get("/walk/photos/<sha256>")
def photo(sha256: str):
    """The small copy of a walk's photo; it carries no position."""
    path = store.thumbnail(opened.folder(), sha256) if intake.is_digest(sha256) else None
    if path is None:
        return answers.refuse(Mistake("pages.not-made-yet"))
    return send_file(path, mimetype="image/jpeg", max_age=86400)
