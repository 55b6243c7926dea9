"""The log: all notes with filters as a page, as JSON since a cursor, and the list for the break."""

from __future__ import annotations

from flask import Blueprint, g, render_template, request

from logbook import intake, store
from logbook.mistake import Mistake
from logbook.note import STATES
from logbook.store import people
from logbook.web import answers, guard, opened, places

screen = Blueprint("log", __name__)
A_PAGE, MOST = 40, 200


@screen.get("/log")
def page():
    """Newest first. Every filter is a field of the address, so that a view can be kept and sent."""
    folder = opened.folder()
    filters = _filters(request.args)
    if isinstance(filters, Mistake):
        return answers.refuse(filters)
    found = store.notes_since(folder, request.args.get("from"), A_PAGE, filters, g.language, newest_first=True)
    if isinstance(found, Mistake):
        return answers.refuse(found)
    names = people.names(folder.db)
    return render_template(
        "log.html", notes=found["notes"], next=found["next"], asked=request.args, names=names, states=STATES,
    )  # fmt: skip


@screen.get("/notes")
def notes():
    """`{"notes", "next"}` in order of receipt; an installer gets what his device said."""
    limit = request.args.get("limit", "50")
    if not limit.isdecimal() or not 1 <= int(limit) <= MOST:
        return answers.refuse(Mistake("pages.bad-number", "limit", {"field": "limit", "most": MOST, "came": limit[:20]}))
    filters = _filters(request.args)
    if isinstance(filters, Mistake):
        return answers.refuse(filters)
    since = request.args.get("since") or None
    found = store.notes_since(opened.folder(), since, int(limit), filters, g.language)
    return answers.refuse(found) if isinstance(found, Mistake) else places.told(found)


def _filters(asked) -> store.Filters | Mistake:
    """The filters of the address; an installer's own voice is always one of them."""
    given = {name: asked.get(name) or None for name in ("date", "run", "mark", "speaker", "state")}
    if given["state"] not in (None, *STATES):
        return Mistake("pages.bad-state", "state", {"states": ", ".join(STATES)})
    if given["date"] and opened.day_of(given["date"]) is None:
        return Mistake("pages.bad-date", "date", {"came": given["date"][:20]})
    flagged = {"": None, "yes": True, "no": False}.get(asked.get("flagged", ""), "?")
    if flagged == "?":
        return Mistake("pages.bad-state", "flagged", {"states": "yes, no"})
    if not guard.sees_all() and given["speaker"] not in guard.voices():
        given["speaker"] = g.person.id
    return store.Filters(**given, flagged=flagged)


@screen.get("/questions")
def questions():
    """The list for the break: notes of this device that still need a word, oldest first.

    `earlier` are notes of other days about which the lead wants something done.
    """
    folder, asked = opened.folder(), request.args.get("date")
    today = opened.local_now().date() if asked is None else opened.day_of(asked)
    if today is None:
        return answers.refuse(Mistake("pages.bad-date", "date", {"came": intake.shown(asked)}))
    wanting, total = [], 0
    for voice in guard.voices():
        filters = store.Filters(date=today.isoformat(), speaker=voice)
        found = store.notes_since(folder, None, MOST, filters, g.language)["notes"]
        total += len(found)
        wanting += [note for note in found if _needs_a_word(note)]
    today_ids = {note["id"] for note in wanting}
    earlier = [store.note_document(folder, one, g.language) for one in store.wanted_notes(folder, tuple(guard.voices())) if one not in today_ids]
    if answers.wants_page():
        return render_template("questions.html", notes=wanting, earlier=earlier, total=total, date=today, names=people.names(folder.db))
    return places.told({"notes": wanting, "earlier": earlier, "total": total, "date": today.isoformat()})


def _needs_a_word(note: dict) -> bool:
    """It asks something, or departs, or the lead wants something done, or it could not be heard."""
    return bool(note["questions"]) or note["state"] == "unheard" or any(
        (finding["shows"] == "flag" and finding.get("stands") == "open") or finding.get("wants")
        for fitting in note["fittings"]
        for finding in fitting.get("findings", ())
    )
