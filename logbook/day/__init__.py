"""The daily QA report: its sections, one pure function each, from the documents of one day.

    report(day, language) -> dict      one language; `document(days, made_at)` holds one or both
    SECTIONS                           the order in which they are printed

Every number on the report counts sayings, never quality: no total may read like an approval. What was looked at,
measured or tested stands in columns of its own. HTML, PDF and JSON are made from the same dictionary.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from hashlib import sha256

import rfc8785

from logbook import labels
from logbook.day import moments, seen
from logbook.day.changed import changes
from logbook.facts import bare_mark
from logbook.geometry.plot import Mark, plot
from logbook.geometry.run_drawing import ODD, Line, joint_words, pages
from logbook.geometry.run_drawing import draw as draw_run
from logbook.day.sheet import DASH, fact, photos_of, sheet_of, size_text, standing, verdicts, words
from logbook.walk import leaks
from logbook.wording import say

FORMAT = "day-report/1"
PLOT_ROWS = 24  # a plot stays on one page
# rule, the value and the limit in `reckoned`, unit
RUN_STOPS = 12  # pieces of a run in one drawing: two of them stand beside each other on a page
PLOTS = (
    ("transition-slope", "slope_in_12", "limit_in_12", "in-12"),
    ("staple-spacing", "spacing_in", "limit_in", "in"),
    ("cross-tabs", "spacing_in", "most_spacing_in", "in"),
    ("hanger-spacing", "spacing_in", "limit_in", "in"),
    ("metal-fastening", "spacing_in", "limit_in", "in"),
)
CAUTIONS = ("fibre", "clothes", "respirator", "cutting", "staples", "heights", "asbestos", "mastic")
DEFERRALS = ("compared", "approval", "licensed", "habit", "memory")
READINGS = ("said", "unsaid", "shapes", "drawings")


@dataclass(frozen=True)
class Planned:
    """A row of the schedule in force."""

    mark: str
    run: str | None
    kind: str | None
    size: str = ""


@dataclass(frozen=True)
class Day:
    """One day of a job, as the log tells it. Documents are those of `GET /notes/ID` and `GET /pieces/PIECE`.

    `logged` holds (run, mark) of every piece of the whole job; `planned` the schedule in force, or None where the
    job has none. `journal` is {"seq", "hash"} of the newest row. `job` is {"id", "name", "place", "roles"}.
    """

    date: str
    job: Mapping
    notes: Sequence[Mapping]
    pieces: Sequence[Mapping]
    signatures: Sequence[Mapping] = ()
    journal: Mapping | None = None
    planned: Sequence[Planned] | None = None
    logged: Iterable[tuple[str | None, str | None]] = ()
    ids: Mapping[str, str] = field(default_factory=dict)  # name as printed -> id; a name can be erased, an id stays
    draws: Sequence[Mapping] = ()  # spot checks drawn from this day, and the newest look at each drawn piece
    looks: Sequence[Mapping] = ()
    answers: Sequence[Mapping] = ()  # of the walk list, given on this day
    records: Sequence[Mapping] = ()  # leak tests with an instrument, kept on this day
    lines: Sequence[Line] = ()  # the runs that were worked on, each with all its pieces

    def fittings(self) -> list[Mapping]:
        """Everything with a kind or a mark, by run and mark; leak tests stand apart."""
        return sorted((one for one in self.pieces if not _is_test(one)), key=_place)

    def tests(self) -> list[Mapping]:
        return sorted((one for one in self.pieces if _is_test(one)), key=_place)


def document(days: Mapping[str, Day], made_at: str, signed_before: Mapping | None = None, edition: int = 1) -> dict:
    """The JSON document, a report for each language of `days`.

    `content` is the digest of the day itself (see `content_of`): that is what a signature stands for. `signed_before`
    is the document that was signed last, where the day changed afterwards.
    """
    one_day = next(iter(days.values()))
    reports = [report(day, language) for language, day in days.items()]
    content = content_of(one_day)
    for one, (language, day) in zip(reports, days.items()):
        one["signed"] = signed(day, language, content)
        one["edition"] = {"number": edition, "line": say("report.edition", language, number=edition)}
        one["changes"] = {"title": say("report.changes", language), "rows": changes(signed_before, one, language)}
        one["content"] = {"sha256": content, "line": say("report.content", language, digest=content)}
        one["made"] = say("report.made", language, at=moments.full(made_at, language))
    return {
        "format": FORMAT, "date": one_day.date, "job": {"id": one_day.job["id"], "name": one_day.job.get("name", "")},
        "as_said": True, "languages": list(days), "edition": edition, "made_at": made_at, "content": content, "reports": reports,
    }  # fmt: skip


def content_of(day: Day) -> str:
    """SHA-256 of what the day holds, in whatever language it is printed: words, facts, findings, decisions, looks,
    photos. Not part of it: signatures, journal, hour of printing, and what is missing, which other days change."""
    told = {
        "date": day.date, "job": day.job["id"],
        "notes": [_only(note, "id", "spoken_by", "spoken_at", "state", "text", "shift", "photos_to_come") for note in day.notes],
        "pieces": [
            _only(piece, "id", "run", "mark", "notes", "facts", "assumed", "open_items", "decisions", "looked")
            | {"photos": [_only(one.get("photo", one), "sha256", "of", "readable") for one in piece.get("photos", ())],
               "findings": [_only(one, "rule", "verdict", "shows", "stands", "edition", "reckoned") for one in piece["findings"]]}
            for piece in sorted(day.pieces, key=lambda one: one["id"] or "")
        ],
    }  # fmt: skip
    went = {"draws": day.draws, "looks": day.looks, "answers": day.answers, "records": day.records}
    told |= {name: [dict(one) for one in found] for name, found in went.items() if found}
    return sha256(rfc8785.dumps(_by_ids(told, day.ids))).hexdigest()


def _by_ids(value, ids: Mapping[str, str], key: str = ""):
    """The same with people's ids in place of the names they go by: erasing a name makes no other day."""
    match value:
        case Mapping():
            return {name: _by_ids(one, ids, name) for name, one in value.items()}
        case list() | tuple():
            return [_by_ids(one, ids, key) for one in value]
        case str() if key in ("by", "spoken_by", "handed_in_by"):
            return ids.get(value, value)
    return value


def _only(document: Mapping, *names: str) -> dict:
    return {name: document[name] for name in names if document.get(name) is not None}


def report(day: Day, language: str) -> dict:
    return {"language": language} | {name: section(day, language) for name, section in SECTIONS}


# --- the sections, in the order they are printed


def heading(day: Day, language: str) -> dict:
    job = day.job
    lines = [job.get("place") or "", *(f"{role}: {name}" for role, name in (job.get("roles") or {}).items())]
    date = moments.day(day.date, language)
    title = say("report.title", language)
    return {
        "as_said": say("report.as-said", language), "title": title, "date": date, "job": job.get("name") or job["id"],
        "lines": [line for line in lines if line], "banner": say("report.banner", language),
        "document_title": say("report.pdf.title", language, title=title, date=date, job=job.get("name") or job["id"]),
        "short": say("report.pdf.short", language), "page": say("report.page", language, page="{page}", pages="{pages}"),  # counted by the typesetter
         "reviewed": "" if language == "en" else say("report.reviewed", language),
    }  # fmt: skip


def must_know(day: Day, language: str) -> dict:
    """Figures first, then what is open and what is missing."""
    pieces = day.fittings()
    stands = [standing(piece) for piece in day.pieces]
    absent = missing(day)
    figures = [
        ("made", len([one for one in pieces if _value(one, "kind") not in (None, "hanger", "repair")])),
        ("hung", sum(_value(one, "stage") == "hung" for one in pieces)),
        ("joined", sum(bool(_value(one, "joined_to")) for one in pieces)),
        ("open", sum(one["open"] for one in stands)),
        ("in-hand", sum(one["in hand"] for one in stands)),
        ("settled", sum(one["settled"] + one["closed"] for one in stands)),
        ("missing", DASH if absent is None else len(absent)),
        ("looked", sum(any(look.get("how") != "measured" for look in one.get("looked", ())) for one in pieces)),
        ("measured", sum(any(look.get("how") == "measured" for look in one.get("looked", ())) for one in pieces)),
        ("tested", len(day.tests())),
    ]  # fmt: skip
    return {
        "title": say("report.must-know", language),
        "figures": [{"name": name, "number": str(number), "label": say(f"report.figure.{name}", language)} for name, number in figures],
        "temperature": {"label": say("report.figure.temperature", language), "text": _temperature(day, language)},
        "seen": [line for line in (seen.spot_check(day, language)["line"], seen.leak_records(day, language)["line"]) if line],
    }


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
        line = say("report.said-at", language, name=note["spoken_by"], at=moments.on_day(note["spoken_at"], day.date, language))
        rows.append({"note": note["id"], "line": line, "why": why, "cure": problem.get("cure") or ""})
    return {"title": say("report.not-heard", language), "rows": rows}


def shift_words(day: Day, language: str) -> dict:
    """Start-of-shift notes: their words and what they let stand for the pieces."""
    rows = [
        words(note, day.date, language) | {"facts": [fact(doc, language) for doc in note["shift"]["facts"]]}
        for note in day.notes
        if note.get("shift") and note.get("text")
    ]
    return {"title": say("report.shift", language), "rows": rows}


def register(day: Day, language: str) -> dict:
    """The day in one table; what was said, looked at, measured and tested never share a column."""
    columns = ("fitting", "run", "said", "looked", "measured", "tested", "stands", "photos")
    rows = []
    tested = {bare_mark(test["run"]) for test in day.tests() if test["run"]}
    measured = [word for one in leaks.standing(list(day.records)) for word in leaks.section_words(one["section"])]
    notes = {note["id"]: note for note in day.notes}
    for piece in day.fittings():
        looks = piece.get("looked", ())
        stands = standing(piece)
        rows.append({
            "what": labels.fitting(piece["facts"], language), "size": size_text(piece["facts"], language), "run": piece["run"] or DASH,
            "verdicts": verdicts(piece),
            "looked": _lookers(look for look in looks if look.get("how") != "measured") or DASH,
            "measured": _lookers(look for look in looks if look.get("how") == "measured") or DASH,
            "tested": _tested(piece["run"], tested, measured, language),
            "open": stands["open"] + stands["in hand"], "photos": len(photos_of(piece, notes)),
        })  # fmt: skip
    names = {name: say(f"report.verdict.{name}", language) for name in ("meets", "departs", "unsaid", "unclear")}
    heads = {name: say(f"report.column.{name}", language) for name in columns}
    return {"title": say("report.register", language), "columns": heads, "verdicts": names, "rows": rows, "nothing": say("report.no-fittings", language)}


def fittings(day: Day, language: str) -> dict:
    notes = {note["id"]: note for note in day.notes}
    labels_of = {
        name: say(f"report.{name}", language)
        for name in ("words", "facts", "findings", "good", "photos", "no-photo", "still-to-do", "changed-after-answer")
    }
    sheets = [sheet_of(piece, notes, day.date, language) for piece in day.fittings()]
    return {"title": say("report.fittings", language), "labels": labels_of, "sheets": sheets}


def leak_tests(day: Day, language: str) -> dict:
    notes = {note["id"]: note for note in day.notes}
    return {"title": say("report.leak-tests", language), "sheets": [sheet_of(piece, notes, day.date, language) for piece in day.tests()]}


def limits(day: Day, language: str) -> dict:
    """Slopes and spacings plotted against their limits, a mark a fitting."""
    plots = []
    for rule, value, limit, unit in PLOTS:
        marks = [
            Mark(_short(piece, language), doc["reckoned"].get(value), doc["reckoned"].get(limit), doc["verdict"])
            for piece in day.fittings()
            for doc in piece["findings"]
            if doc["rule"] == rule and (doc["verdict"] == "unsaid" or doc["reckoned"].get(value) is not None)
        ]
        for start in range(0, len(marks), PLOT_ROWS):
            drawn = plot(marks[start : start + PLOT_ROWS], language, say(f"report.plot.{rule}", language), say(f"report.plot.{unit}", language), f"p-{language}-{rule}-{start}")
            plots.append({"rule": rule, "svg": drawn.svg, "title": drawn.title, "told": drawn.told, "width": drawn.width, "height": drawn.height})
    return {"title": say("report.limits", language), "plots": plots, "nothing": say("report.no-limits", language)}


def runs_drawn(day: Day, language: str) -> dict:
    """Every run of the day as it was said so far, cut where it is too long for a page, with the joints that do not mate in words."""
    plots, odd = [], []
    for line in day.lines:
        parts = pages(line, RUN_STOPS)
        for at, part in enumerate(parts):
            drawn = draw_run(part, language, f"run-{language}-{len(plots)}")
            title = drawn.title if len(parts) == 1 else say("report.run-part", language, title=drawn.title, part=at + 1, parts=len(parts))
            plots.append({"rule": "run-sizes", "svg": drawn.svg, "title": title, "told": drawn.told, "width": drawn.width, "height": round(drawn.height, 1)})
        odd += [
            say("report.run-odd", language, run=line.run, says=joint_words(line, at, language)) for at, joint in enumerate(line.joints) if joint.state in ODD
        ]
    return {"title": say("report.runs-drawn", language), "plots": plots, "odd": odd, "nothing": say("report.no-runs", language)}


def not_said(day: Day, language: str) -> dict:
    rows = [
        {"what": labels.fitting(piece["facts"], language), "run": piece["run"] or DASH,
         "says": [doc["says"] for doc in piece["findings"] if doc["verdict"] == "unsaid"]}
        for piece in day.fittings()
    ]  # fmt: skip
    rows = [row for row in rows if row["says"]]
    heads = {name: say(f"report.column.{name}", language) for name in ("fitting", "run", "what")}
    return {"title": say("report.not-said", language), "columns": heads, "rows": rows, "nothing": say("report.nothing-unsaid", language)}


def cautions(day: Day, language: str) -> dict:
    return {
        "read_title": say("report.read-limits", language),
        "read": [say(f"report.read.{name}", language) for name in READINGS],
        "defer": [say(f"report.defer.{name}", language) for name in DEFERRALS],
        "title": say("report.cautions", language),
        "cautions": [say(f"report.caution.{name}", language) for name in CAUTIONS],
    }


def signed(day: Day, language: str, content: str | None = None) -> dict:
    """Who signed what: a signature over another content than this one says so."""
    rows = []
    for one in day.signatures:
        line = say("report.signed-line", language, name=one["by"], role=one.get("role") or "", at=moments.full(one["at"], language))
        same = content is not None and one.get("report") == content
        over = say("report.signed-content" if same else "report.signed-other", language, digest=(one.get("report") or DASH)[:16])
        rows.append({"line": line, "over": over, "words": one.get("words") or "", "same": same})
    return {"title": say("report.signed", language), "rows": rows, "nothing": say("report.not-signed", language)}


def journal(day: Day, language: str) -> dict:
    newest = day.journal or {"seq": 0, "hash": "0" * 64}
    return dict(newest) | {"line": say("report.journal", language, seq=newest["seq"], hash=newest["hash"])}


SECTIONS: tuple[tuple[str, Callable[[Day, str], dict]], ...] = (
    ("heading", heading),
    ("must_know", must_know),
    ("open", open_list),
    ("missing", missing_list),
    ("not_heard", not_heard),
    ("shift", shift_words),
    ("register", register),
    ("spot_check", seen.spot_check),
    ("fittings", fittings),
    ("leak_tests", leak_tests),
    ("leak_records", seen.leak_records),
    ("walk_list", seen.walk_list),
    ("runs", runs_drawn),
    ("limits", limits),
    ("not_said", not_said),
    ("cautions", cautions),
    ("signed", signed),
    ("journal", journal),
)


# --- what the sections reckon with


def missing(day: Day) -> list[Planned] | None:
    """Rows of the schedule on today's runs that no piece of the log bears; None without a schedule."""
    if day.planned is None:
        return None
    runs = {bare_mark(piece["run"]) for piece in day.pieces if piece["run"]}
    marks = [*day.logged, *((piece["run"], piece["mark"]) for piece in day.pieces)]
    borne = {(bare_mark(run or ""), bare_mark(mark or "")) for run, mark in marks}
    return [
        row for row in day.planned
        if bare_mark(row.run or "") in runs and not {(bare_mark(row.run or ""), bare_mark(row.mark)), ("", bare_mark(row.mark))} & borne
    ]  # fmt: skip


def _is_test(piece: Mapping) -> bool:
    names = {doc["name"] for doc in piece["facts"]}
    return "kind" not in names and bool(names & {"leak_pressure", "leak_flow", "leak_area"})


def _value(piece: Mapping, name: str):
    return next((doc["value"] for doc in piece["facts"] if doc["name"] == name), None)


def _place(piece: Mapping):
    """Runs and marks in counting order: 2 before 10, B-2 before B-12."""
    return [_counted(piece.get(name) or "") for name in ("run", "mark")] + [piece["id"] or ""]


def _counted(text: str) -> tuple:
    parts, digits = [], ""
    for sign in text + " ":
        if sign.isdecimal():
            digits += sign
            continue
        if digits:
            parts.append((0, int(digits), ""))
            digits = ""
        parts.append((1, 0, sign.casefold()))
    return tuple(parts)


def _short(piece: Mapping, language: str) -> str:
    run = say("report.run", language, run=piece["run"]) if piece["run"] else ""
    return " · ".join(part for part in (run, piece["mark"] or DASH) if part)[:16]


def _tested(run: str | None, said: set[str], measured: Sequence[str], language: str) -> str:
    """How the run of a fitting was tested: as somebody said, or with an instrument."""
    if not run:
        return DASH
    ways = [("report.tested-said", bare_mark(run) in said), ("report.tested-measured", run.casefold() in measured)]
    return "; ".join(say(key, language, run=run) for key, so in ways if so) or DASH


def _lookers(looks: Iterable[Mapping]) -> str:
    return ", ".join(dict.fromkeys(look["by"] for look in looks))


def _temperature(day: Day, language: str) -> str:
    """Said with a piece, or once for the shift."""
    said = [
        doc["value"]
        for piece in day.pieces
        for doc in (*piece["facts"], *piece.get("assumed", ()))
        if doc["name"] == "surface_temperature"
    ] + [doc["value"] for note in day.notes if note.get("shift") for doc in note["shift"]["facts"] if doc["name"] == "surface_temperature"]
    if not said:
        return say("report.figure.not-said", language)
    low, high = (f"{value:g}" for value in (min(said), max(said)))
    return say("report.figure.degrees" if low == high else "report.figure.degrees-range", language, low=low, high=high)
