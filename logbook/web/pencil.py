"""What templates write with: texts by key, facts as people read them, times, words with their facts marked."""

from __future__ import annotations

import uuid
from datetime import datetime
from flask import Flask, g, request

from logbook import labels
from logbook.day import moments
from logbook.web import guard, opened
from logbook.wording import LANGUAGES, has, say

SHOWS_FIRST = ("flag", "ask", "count", "file")
VERDICTS_FIRST = ("departs", "unclear", "unsaid", "meets")


def install(app: Flask) -> None:
    app.context_processor(_pencils)
    app.jinja_env.finalize = labels.legible
    app.jinja_env.globals["verdict_word"] = verdict_word


def _pencils() -> dict:
    language = g.get("language", "en")
    return {
        "t": lambda key, **values: say(f"pages.{key}", language, **values),
        "word": lambda key, **values: say(key, language, **values),
        "language": language,
        "languages": LANGUAGES,
        "person": g.get("person"),
        "may": guard.may,
        "here": request.full_path.rstrip("?"),
        "job": _job(),
        "label": lambda name: labels.name(name, language),
        "text_of": lambda fact: labels.fact(fact, language)[1],
        "value_of": lambda name, value, exact=None: labels.value(name, value, exact, language),
        "choice": lambda value: labels.word(value, language),
        "kind_of": lambda kind: labels.kind(kind, language),
        "heading": lambda facts: labels.fitting(facts, language),
        "titled": lambda fitting: labels.entry(fitting, language),
        "moment": lambda iso: moment(iso, language),
        "clock": lambda iso: moments.at(iso, language) if iso else "",
        "day_text": lambda iso: moments.day(iso, language),
        "segments": segments,
        "by_weight": by_weight,
        "tally": tally,
        "loose": loose,
        "taken_back": taken_back,
        "new_id": lambda: str(uuid.uuid4()),
        "piece_of": lambda note, position: next((f for f in note["fittings"] if f["position"] == position), None),
        "finding_of": finding_of,
        "second": lambda number: f"{int(number // 60)}:{number % 60:04.1f}",
        "state_key": lambda text: text.replace(" ", "-"),
        "has_text": lambda key: has(key, language),
    }


def verdict_word(verdict: str) -> str:
    """Who spoke is told "you didn't say"; everybody else reads of the note."""
    area = "report.verdict" if guard.sees_all() else "facts.verdict"
    return say(f"{area}.{verdict}", g.get("language", "en"))


def _job():
    """The job, where the folder opens; a refusal must be printable without it."""
    if "folder" in g:
        return g.folder.job
    return opened.folder().job if g.get("person") else None


def moment(iso: str | None, language: str) -> str:
    """Date and hour on the job's clock; the offset stands in the page's `datetime`, not in its words."""
    if not iso:
        return ""
    return moments.full(datetime.fromisoformat(iso).replace(tzinfo=None).isoformat(), language).strip()


def segments(note: dict) -> list[dict]:
    """The text in pieces, each with the facts and open items that its characters state, or that they were not understood.

    Offsets count code points, as Python does. A fact carried from another fitting is marked where it was said.
    """
    text = note["text"] or ""
    spans = []
    for fitting in note["fittings"]:
        for fact in fitting["facts"]:
            own = {"fact": fact, "position": fitting["position"]}
            for place in (fact, *fact.get("also", ())):
                if place["start"] is not None and place.get("note") in (None, note["id"]) and "from_fitting" not in fact:
                    spans.append((place["start"], place["end"], own))
        spans += [(item["start"], item["end"], {"open": item, "position": fitting["position"]}) for item in fitting["open_items"]]
    for fact in (note["shift"] or {}).get("facts", ()):
        if fact["start"] is not None:
            spans.append((fact["start"], fact["end"], {"fact": fact, "position": "shift"}))
    unread = [(one["start"], one["end"]) for one in note.get("unread", ())]
    cuts = sorted({0, len(text), *(cut for start, end, *_ in (*spans, *unread) for cut in (start, end))})
    return [
        {
            "text": text[one:two],
            "said": [own for start, end, own in spans if start <= one and two <= end],
            "unread": any(start <= one and two <= end for start, end in unread),
        }
        for one, two in zip(cuts, cuts[1:])
    ]


def by_weight(findings: list[dict]) -> list[dict]:
    """What needs somebody first; the order of the book within."""
    return sorted(findings, key=lambda f: (SHOWS_FIRST.index(f["shows"]), VERDICTS_FIRST.index(f["verdict"])))


def tally(note: dict) -> list[tuple[str, int]]:
    """How many findings of each verdict, worst first, for a line of the log. What is only filed counts with `meets`."""
    found = [f for fitting in note["fittings"] for f in fitting.get("findings", ())]
    counts = {verdict: 0 for verdict in VERDICTS_FIRST}
    for finding in found:
        counts[finding["verdict"]] += 1
    return [(verdict, count) for verdict, count in counts.items() if count]


def taken_back(note: dict) -> bool:
    """The whole note was taken back, by a press or by voice; it stays in the log."""
    return bool(note.get("withdrawn_at")) or any(one["positions"] is None for one in note.get("taken_back_by", ()))


def loose(note: dict) -> list[dict]:
    """Words that nobody understood, and that no finding quotes and nobody told since in other words."""
    return [one for one in note.get("unread", ()) if "stands" not in one]


def finding_of(note: dict, position: int, rule: str) -> dict | None:
    for fitting in note["fittings"]:
        if fitting["position"] == position:
            return next((f for f in fitting.get("findings", ()) if f["rule"] == rule), None)
    return None
