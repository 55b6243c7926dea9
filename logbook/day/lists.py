"""The lists of a day: what is open, what is missing, what was not heard or not said, and the words of the shift."""

from __future__ import annotations

from collections.abc import Mapping

from logbook import labels
from logbook.day import moments
from logbook.day.one_day import Day, missing
from logbook.day.sheet import DASH, fact, words
from logbook.findings.not_followed import NOT_UNDERSTOOD
from logbook.wording import say


def open_list(day: Day, language: str) -> dict:
    rows = [
        {"what": labels.fitting(piece["facts"], language), "run": piece["run"] or DASH, "verdict": doc["verdict"], "rule": doc["rule"],
         "verdict_text": say(f"report.verdict.{doc['verdict']}", language), "says": doc["says"], "do": doc["do"] or "",
         "stands": say(f"facts.stands.{doc['stands'].replace(' ', '-')}", language)}
        for piece in [*day.fittings(), *day.tests()]
        for doc in piece["findings"]
        if doc.get("stands") in ("open", "in hand")
    ]  # fmt: skip
    heads = {name: say(f"report.column.{name}", language) for name in ("fitting", "run", "finding", "state")}
    return {"title": say("report.open-list", language), "columns": heads, "rows": rows, "nothing": say("report.nothing-open", language)}


def missing_list(day: Day, language: str) -> dict:
    absent = missing(day)
    rows = [
        {"mark": row.mark, "run": row.run or DASH, "kind": labels.kind(row.kind, language), "size": row.size} for row in absent or ()
    ]
    nothing = say("report.no-schedule" if absent is None else "report.nothing-missing", language)
    heads = {name: say(f"report.column.{name}", language) for name in ("mark", "run", "kind", "size")}
    return {"title": say("report.missing-list", language), "columns": heads, "rows": rows, "nothing": nothing}


def not_heard(day: Day, language: str) -> dict:
    rows = []
    for note in day.notes:
        if note["state"] == "answered":
            continue
        problem = note.get("problem") or {}
        why = problem.get("why") or say(f"facts.state.{note['state']}", language)
        line = moments.said_by(note, day.date, language)
        rows.append({"note": note["id"], "line": line, "why": why, "cure": problem.get("cure") or ""})
    return {"title": say("report.not-heard", language), "rows": rows}


def unanswered(note: Mapping) -> list[str]:
    """Words of a note document that nobody understood, told by nobody since and quoted by no finding that a lead has to settle."""
    listed = {words for fitting in note["fittings"] for one in fitting.get("findings", ()) if one["case"] == NOT_UNDERSTOOD and one.get("stands") for words in one["evidence"]}
    return [one["words"] for one in note.get("unread", ()) if one.get("stands") != "answered" and one["words"] not in listed]


def not_understood(day: Day, language: str) -> dict:
    """Words that tell of the work and became no fact, by note, where they stand on no other list."""
    rows = [
        {"note": note["id"], "what": "; ".join(labels.entry(one, language) for one in note["fittings"]) or (say("report.shift", language) if note.get("shift") else ""), "says": unanswered(note),
         "line": moments.said_by(note, day.date, language)}
        for note in day.notes
        if not note.get("withdrawn_at") and unanswered(note)
    ]  # fmt: skip
    return {"title": say("report.not-understood", language), "told": say("report.not-understood-told", language), "rows": rows}


def shift_words(day: Day, language: str) -> dict:
    """Start-of-shift notes: their words and what they let stand for the pieces."""
    rows = [
        words(note, day.date, language) | {"facts": [fact(doc, language) for doc in note["shift"]["facts"]]}
        for note in day.notes
        if note.get("shift") and note.get("text")
    ]
    return {"title": say("report.shift", language), "rows": rows}


def not_said(day: Day, language: str) -> dict:
    rows = [
        {"what": labels.fitting(piece["facts"], language), "run": piece["run"] or DASH,
         "says": [doc["says"] for doc in piece["findings"] if doc["verdict"] == "unsaid"]}
        for piece in day.fittings()
    ]  # fmt: skip
    rows = [row for row in rows if row["says"]]
    heads = {name: say(f"report.column.{name}", language) for name in ("fitting", "run", "what")}
    return {"title": say("report.not-said", language), "columns": heads, "rows": rows, "nothing": say("report.nothing-unsaid", language)}
