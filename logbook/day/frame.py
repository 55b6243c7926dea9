"""What frames a day report: its head, how to read it, the cautions, who signed, and the journal's last row."""

from __future__ import annotations

from logbook.day import moments
from logbook.day.one_day import Day
from logbook.day.sheet import DASH
from logbook.wording import say

CAUTIONS = ("fibre", "clothes", "respirator", "cutting", "staples", "heights", "asbestos", "mastic")
DEFERRALS = ("compared", "approval", "licensed", "habit", "memory")
READINGS = ("said", "unsaid", "shapes", "drawings")


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
