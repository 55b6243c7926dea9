"""One fitting's sheet in the day report: drawing, words, facts, findings with their decisions, photos.

Works on the documents of a piece and of its notes (`GET /pieces/PIECE`, `GET /notes/ID`) and answers plain
members in the reader's language, so that HTML, PDF and JSON carry the same words. What was looked at or measured
by somebody else stands in members of its own, never among what was said.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence

from logbook import labels
from logbook.day import moments
from logbook.facts import BY_NAME
from logbook.geometry.drawing import draw
from logbook.wording import has, say

DASH = "–"
TONGUE = re.compile("[a-z]{2,3}")  # ISO 639, as paper and page can carry it
IDENTITY = ("kind", "mark", "run")  # told by the heading of the sheet


def sheet_of(piece: Mapping, notes: Mapping[str, Mapping], date: str, language: str) -> dict:
    """Everything the report prints of one fitting. `notes` are the documents of its notes, by id."""
    found = piece["facts"]
    what = labels.fitting(found, language)
    own = [notes[note] for note in piece["notes"] if note in notes]
    return {
        "piece": piece["id"],
        "what": what,
        "mark": piece["mark"],
        "run": piece["run"],
        "run_text": say("report.run", language, run=piece["run"]) if piece["run"] else say("report.run-unsaid", language),
        "drawing": _drawing(piece, language),
        "words": [words(note, date, language) for note in own if note.get("text")],
        "facts": [fact(doc, language) for doc in found if doc["name"] not in IDENTITY],
        "assumed": assumed(piece.get("assumed", ()), language),
        "open_items": [item["text"] for item in piece.get("open_items", ())],
        "findings": [finding(doc, piece, date, language) for doc in piece["findings"] if doc["verdict"] != "meets"],
        "good": [finding(doc, piece, date, language) for doc in piece["findings"] if doc["verdict"] == "meets"],
        "photos": [photo(doc, number, what, notes, language) for number, doc in enumerate(photos_of(piece, notes), 1)],
        "photos_to_come": _to_come(own, language),
        "looked": [look(doc, date, language) for doc in piece.get("looked", ()) if doc.get("how") != "measured"],
        "measured": [look(doc, date, language) for doc in piece.get("looked", ()) if doc.get("how") == "measured"],
        "stands": standing(piece),
    }


def _to_come(own: Sequence[Mapping], language: str) -> str:
    """Announced photos of notes about this piece alone; which piece the others will show nobody knows yet."""
    number = sum(len(note.get("photos_to_come", ())) for note in own if len(note["fittings"]) == 1)
    return say("report.photos-to-come", language, number=number) if number else ""


def _drawing(piece: Mapping, language: str) -> dict:
    drawn = draw(piece["facts"], language, f"d-{language}-{piece['id']}")
    return {"svg": drawn.svg, "title": drawn.title, "told": drawn.told, "width": drawn.width, "height": round(drawn.height, 1)}


def words(note: Mapping, date: str, language: str) -> dict:
    return {
        "note": note["id"],
        "by": note["spoken_by"],
        "at": note["spoken_at"],
        "line": moments.said_by(note, date, language),
        "text": note["text"],
        "language": note["language"] if TONGUE.fullmatch(note["language"] or "") else None,
    }


def fact(doc: Mapping, language: str) -> dict:
    """Label and text of a fact, with what was taken back and what is in doubt."""
    label, text = labels.fact(doc, language)
    remarks = [say(f"report.{sign}", language) for sign in ("hedged", "conflict") if doc.get(sign)]
    remarks += [
        say("report.was", language, text=labels.value(doc["name"], was["value"], was.get("exact"), language))
        for was in (*doc.get("withdrawn", ()), *doc.get("was", ()))
        if was["value"] != doc["value"]
    ]
    if doc["via"] not in ("spoken", "typed"):
        remarks.append(say(f"facts.via.{doc['via']}", language))
    return {"name": doc["name"], "label": label, "text": text, "remarks": remarks}


def assumed(docs: Sequence[Mapping], language: str) -> list[dict]:
    """What nobody said of this piece and stands all the same, together by where it comes from."""
    groups: dict[str, list[str]] = {}
    for doc in docs:
        text = labels.value(doc["name"], doc["value"], doc.get("exact"), language)
        groups.setdefault(doc["via"], []).append(f"{labels.name(doc['name'], language)}: {text}")
    return [
        {"via": via, "label": say("report.assumed", language, via=say(f"facts.via.{via}", language)), "text": " · ".join(texts)}
        for via, texts in groups.items()
    ]


def finding(doc: Mapping, piece: Mapping, date: str, language: str) -> dict:
    """A finding with the decisions made on it, oldest first."""
    made = [one for one in piece.get("decisions", ()) if one["rule"] == doc["rule"]]
    return {
        "rule": doc["rule"],
        "verdict": doc["verdict"],
        "verdict_text": say(f"report.verdict.{doc['verdict']}", language),
        "shows": doc["shows"],
        "says": doc["says"],
        "do": doc["do"],
        "source": doc["source"],
        "stands": doc.get("stands"),
        "stands_text": say(f"facts.stands.{doc['stands'].replace(' ', '-')}", language) if doc.get("stands") else None,
        "changed_after_answer": doc.get("changed_after_answer", False),
        "leans_on": [labels.name(lean["name"], language) for lean in doc.get("leans_on", ())],
        "decisions": [decision(one, doc, date, language) for one in made],
    }


def decision(doc: Mapping, about: Mapping, date: str, language: str) -> dict:
    """Who decided what, when and why; a decision made on another edition says so."""
    key = f"facts.decision.{doc['decision']}"
    words_of = say(key, language) if has(key, language) else doc["decision"]
    when = moments.on_day(doc["at"], date, language)
    more = [say("report.reason", language, reason=doc["reason"])] if doc.get("reason") else []
    if doc.get("granted_by"):
        more.append(say("report.granted", language, name=doc["granted_by"]))
    if doc.get("document"):
        more.append(say("report.document", language, digest=doc["document"][:16]))
    if doc.get("corrected"):
        name, value = doc["corrected"]["name"], doc["corrected"]["value"]
        text = labels.value(name, value, doc["corrected"].get("exact"), language) if name in BY_NAME else str(value)
        more.append(say("report.corrected", language, name=labels.name(name, language), text=text))
    if doc["edition"] != about["edition"]:
        more.append(say("report.earlier-words", language))
    line = say("report.decided", language, decision=words_of, name=doc["by"], at=when)
    return {"decision": doc["decision"], "by": doc["by"], "at": doc["at"], "line": line, "more": more}


def look(doc: Mapping, date: str, language: str) -> dict:
    """What somebody other than the builder found."""
    label, text = labels.fact(doc, language)
    how = say(f"facts.how.{doc['how']}", language) if has(f"facts.how.{doc['how']}", language) else str(doc["how"])
    when = moments.on_day(doc["at"], date, language)
    return {"label": label, "text": text, "line": say("report.how", language, how=how, name=doc["by"], at=when)}


def photos_of(piece: Mapping, notes: Mapping[str, Mapping]) -> list[dict]:
    """The photos that show this piece, each with its note; from the piece, else from its notes."""
    listed = [dict(one.get("photo", one)) | {"note": one.get("note")} for one in piece.get("photos", ())]
    if listed:
        return listed
    found = []
    for note in (notes[one] for one in piece["notes"] if one in notes):
        places = {entry["position"] for entry in note["fittings"] if entry.get("piece") == piece["id"]}
        found += [dict(one) | {"note": note["id"]} for one in note["photos"] if places & set(one.get("of") or ())]
    return found


def photo(doc: Mapping, number: int, what: str, notes: Mapping[str, Mapping], language: str) -> dict:
    note = notes.get(doc.get("note") or "")
    spoken = moments.at(note["spoken_at"], language) if note else DASH
    taken = ""
    if doc.get("taken_at"):
        clock = say(f"report.clock.{doc.get('taken_from') or 'phone'}", language)
        taken = say("report.photo-at", language, at=moments.at(doc["taken_at"], language), clock=clock)
    return {
        "sha256": doc["sha256"],
        "readable": doc.get("readable"),
        "alt": say("report.photo-alt", language, number=number, what=what, at=spoken),
        "taken": taken,
        "instead": say("report.photo-unread" if doc.get("readable") is False else "report.photo-later", language, digest=doc["sha256"][:12]),
    }


def standing(piece: Mapping) -> dict[str, int]:
    """How many flagged findings stand where."""
    counts = {"open": 0, "in hand": 0, "settled": 0, "closed": 0}
    for doc in piece["findings"]:
        if doc.get("stands") in counts:
            counts[doc["stands"]] += 1
    return counts


def verdicts(piece: Mapping) -> dict[str, int]:
    """How many findings of each verdict; not a score."""
    return {name: sum(doc["verdict"] == name for doc in piece["findings"]) for name in ("meets", "departs", "unsaid", "unclear")}


def size_text(found: Sequence[Mapping], language: str) -> str:
    """`20 by 14 in.`, and what it becomes where that was said."""
    by_name = {doc["name"]: doc for doc in found}
    ends = [by_name[name] for name in ("inlet_size", "outlet_size") if name in by_name]
    if not ends and "collar_diameter" in by_name:
        ends = [by_name["collar_diameter"]]
    return " › ".join(labels.fact(doc, language)[1] for doc in ends)
