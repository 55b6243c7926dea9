"""One day of the job: what was handed in, what is open, what was not said, decisions and signatures."""

from __future__ import annotations

import json
from collections.abc import Callable

from flask import Blueprint, g, jsonify, make_response, redirect, render_template, url_for

from logbook import store
from logbook.day import content_of, must_know, not_understood
from logbook.mistake import Mistake
from logbook.paper import making
from logbook.store import people
from logbook.store.folder import free_bytes, room_for_derived
from logbook.web import answers, asked, guard, opened, pencil, places

screen = Blueprint("days", __name__)
UNFOLDED = 6  # entries of a list that stand open on a phone; a longer one is folded, with its counts in sight


@screen.get("/day")
def newest():
    """The newest day with notes, else today."""
    return redirect(url_for("days.page", date=store.newest_day(opened.folder()) or opened.local_now().date().isoformat()))


@screen.get("/day/<date>")
def page(date: str):
    found = _documents(date)
    if isinstance(found, Mistake):
        return answers.refuse(found)
    folder = opened.folder()
    told = making.told_of(folder, date, g.language, found, drawn=False) if found["notes"] else None
    return render_template(
        "day.html", date=date, day=found, seen=must_know(told, g.language)["seen"] if told else [], not_understood=not_understood(told, g.language) if told else {"rows": []}, names=people.names(folder.db), days=store.days(folder, 14), unfolded=UNFOLDED,
        content=content_of(told) if told and (found["signatures"] or guard.may("days.sign")) else None, **_sorted(found),
    )  # fmt: skip


def _sorted(found: dict) -> dict:
    """The day's findings, by what somebody has to do, each list by piece."""
    return {
        "open_findings": _by_piece(found, lambda one: one["shows"] == "flag" and one.get("stands") in ("open", "in hand")),
        "settled_findings": _by_piece(found, lambda one: one.get("stands") in ("settled", "closed")),
        "asked_findings": _by_piece(found, lambda one: one["shows"] == "ask"),
        "counted_findings": _by_piece(found, lambda one: one["shows"] == "count"),
    }


def _by_piece(found: dict, wanted: Callable[[dict], bool]) -> list[tuple[dict, list[tuple[list[str], dict]], int, list[tuple[str, int]]]]:
    """[(piece, [(rules, finding)], how many findings, [(verdict, how many)])]: what several rules say in the same words stands once."""
    listed = []
    for piece in found["pieces"]:
        mine = [one for one in piece["findings"] if wanted(one)]
        alike: dict[tuple, list[dict]] = {}
        for one in mine:
            alike.setdefault((one["verdict"], one["says"], one.get("stands")), []).append(one)
        if mine:
            verdicts = [one["verdict"] for one in mine]
            counts = [(verdict, verdicts.count(verdict)) for verdict in pencil.VERDICTS_FIRST if verdict in verdicts]
            listed.append((piece, [([one["rule"] for one in some], some[0]) for some in alike.values()], len(mine), counts))
    return listed


def _documents(date: str) -> dict | Mistake:
    if opened.day_of(date) is None:
        return Mistake("pages.bad-date", "date", {"came": date[:20]})
    return store.day_documents(opened.folder(), date, g.language)


@screen.get("/days/<date>")
def document(date: str):
    found = _documents(date)
    return answers.refuse(found) if isinstance(found, Mistake) else places.told(found)


@screen.post("/days/<date>/signatures")
def sign(date: str):
    """Body: id, words, report (SHA-256 of what is signed, or null), at."""
    body = asked.body()
    if isinstance(body, Mistake):
        return answers.refuse(body)
    if opened.day_of(date) is None:
        return answers.refuse(Mistake("pages.bad-date", "date", {"came": date[:20]}))
    act = _signed(opened.folder(), date, str(body.get("id", "")), body.get("report") or None, str(body.get("words") or ""), body["at"])
    if isinstance(act, Mistake):
        return answers.refuse(act)
    if answers.wants_page():
        return redirect(url_for("days.page", date=date), 303)
    return make_response(jsonify(act.document), 200 if act.repeated else 201)


def _signed(folder, day: str, act_id: str, read: str | None, words: str, at) -> store.Act | Mistake:
    """The act, with the bytes of what was signed kept; one that is sent again is answered as it was."""
    known = folder.db.execute("SELECT content FROM acts WHERE id = ? AND act = 'signed'", [act_id]).fetchone()

    def sign(content: str | None) -> store.Act | Mistake:
        return store.sign(folder, act_id, opened.day_of(day), g.person.id, g.person.role, words=words, report=content, at=at)

    if known is not None:
        told = json.loads(known[0])
        return sign(told["report"] if isinstance(told, dict) else read)
    if not room_for_derived(folder):
        return Mistake("store.disk-full", "report", {"folder": str(folder.path), "free": free_bytes(folder.path) // 1_000_000})
    return making.sign_day(folder, day, making.languages_of(folder, day), opened.now(), read, sign)
