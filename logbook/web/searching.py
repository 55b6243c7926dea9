"""Search: one field over what was said, the pieces, reasons and the rule book."""

from __future__ import annotations

import json

from flask import Blueprint, g, render_template, request, url_for

from logbook import rules as book
from logbook import store
from logbook.store import people, search, walked
from logbook.web import guard, opened
from logbook.wording import has, say

screen = Blueprint("searching", __name__)
A_PAGE = 25
ONLY = (*search.KINDS, "rule")


@screen.get("/search")
def page():
    """Every part of the question is a field of the address, so that it can be kept and sent."""
    asked, only = request.args.get("q", ""), request.args.get("in") or None
    start = request.args.get("from", "0")
    start = int(start) if start.isdecimal() and len(start) < 8 else 0
    folder = opened.folder()
    voices = None if guard.sees_all() else tuple(guard.voices())
    only = only if only in ONLY else None
    found = search.search(folder, asked, None if only == "rule" else only, voices, start, A_PAGE)
    if only == "rule":
        found = search.Found((), 0, None)
    names = people.names(folder.db)
    rows = [_told(folder, hit, names) for hit in found.hits]
    ruled = _rules(asked) if only in (None, "rule") and not start else []
    return render_template(
        "search.html", asked=asked, only=only, kinds=_offered(), found=found, rows=rows, ruled=ruled, start=start,
        any_term=bool(search.terms(asked)),
    )  # fmt: skip


def _offered() -> tuple[str, ...]:
    return ONLY if guard.sees_all() else tuple(one for one in ONLY if one != "act")


def _told(folder, hit: search.Hit, names: dict[str, str]) -> dict:
    """A hit with where it leads and who it is of; what is gone since has no link."""
    row = {"what": hit.what, "shown": hit.shown, "link": None}
    if hit.what == "piece":
        found = store.piece_document(folder, hit.id, g.language)
        if found:
            verdicts = {name: sum(one["verdict"] == name for one in found["findings"]) for name in ("departs", "unclear", "unsaid", "meets")}
            tally = [(name, count) for name, count in verdicts.items() if count]
            row |= {"link": url_for("piece.page", piece=hit.id), "facts": found["facts"], "run": found["run"], "tally": tally}
            row["place"] = next((fact["value"] for fact in found["facts"] if fact["name"] == "place"), None)
    elif hit.what == "note":
        note = store.note_document(folder, hit.id, g.language)
        if note:
            row |= {"link": url_for("entry.page", note=hit.id), "at": note["spoken_at"], "by": names.get(note["spoken_by"], note["spoken_by"])}
            row["gone"] = folder.db.execute("SELECT withdrawn_at IS NOT NULL FROM notes WHERE id = ?", [hit.id]).fetchone()[0]
    else:
        row |= _act(folder, hit.id, names)
    return row


def _act(folder, act_id: str, names: dict[str, str]) -> dict:
    found = folder.db.execute("SELECT act, note, piece, day, done_by, at, content FROM acts WHERE id = ?", [act_id]).fetchone()
    if found is None:
        return {}
    act, note, piece, day, by, at, content = found
    match act:
        case walked.WALKED:
            link = url_for("walking.walk_list", area=json.loads(content)["area"])
        case walked.LEAK:
            link = url_for("leaking.page", _anchor=f"t-{act_id}")
        case walked.LOOKED:
            link = url_for("walking.look_page", piece=piece)
        case _:
            where = (piece and url_for("piece.page", piece=piece), note and url_for("entry.page", note=note), day and url_for("days.page", date=day))
            link = next((one for one in where if one), None)
    key = f"search.of-act-{act}"
    return {"link": link, "at": at, "by": names.get(by, by), "act": say(key, g.language) if has(key, g.language) else act}


def _rules(asked: str) -> list[dict]:
    """The rules in whose id, name or sentence every term stands."""
    wanted = [search.folded(term) for term in search.terms(asked)]
    found = []
    for rule in book.RULES if wanted else ():
        name, holds = (say(key, g.language) if has(key := f"rules.{rule.id}.{part}", g.language) else "" for part in ("name", "holds"))
        text = search.folded(f"{rule.id} {name} {holds}")
        if all(term in text for term in wanted):
            found.append({"id": rule.id, "name": name or rule.id, "holds": holds})
    return found
