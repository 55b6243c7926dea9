"""The daily QA report: its sections, one pure function each, from the documents of one day.

    report(day, language) -> dict      one language; `document(days, made_at)` holds one or both
    SECTIONS                           the order in which they are printed

Every number on the report counts sayings, never quality: no total may read like an approval. What was looked at,
measured or tested stands in columns of its own. HTML, PDF and JSON are made from the same dictionary.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from logbook.day import moments, seen
from logbook.day.changed import changes
from logbook.day.content import content_of
from logbook.day.drawn import limits, runs_drawn
from logbook.day.figures import must_know, register
from logbook.day.frame import cautions, heading, journal, signed
from logbook.day.lists import missing_list, not_heard, not_said, not_understood, open_list, shift_words
from logbook.day.one_day import Day, Planned, missing
from logbook.day.sheet import sheet_of
from logbook.wording import say

__all__ = ["SECTIONS", "Day", "Planned", "content_of", "document", "missing", "must_know", "not_understood", "report"]

FORMAT = "day-report/1"


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


def report(day: Day, language: str) -> dict:
    return {"language": language} | {name: section(day, language) for name, section in SECTIONS}


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


SECTIONS: tuple[tuple[str, Callable[[Day, str], dict]], ...] = (
    ("heading", heading),
    ("must_know", must_know),
    ("open", open_list),
    ("missing", missing_list),
    ("not_heard", not_heard),
    ("not_understood", not_understood),
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
