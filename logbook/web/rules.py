"""The rule book as people read it: what holds, with this job's limit, the source and spoken examples."""

from __future__ import annotations

from fractions import Fraction

from flask import Blueprint, g, render_template

from logbook import measure
from logbook import rules as book
from logbook.findings.telling import source_says
from logbook.mistake import Mistake
from logbook.web import answers, opened
from logbook.wording import has, say

screen = Blueprint("rules", __name__)


@screen.get("/rules")
def page():
    return render_template("rules.html", rules=[_told(rule) for rule in book.RULES])


@screen.get("/rules/<rule>")
def one(rule: str):
    found = next((each for each in book.RULES if each.id == rule), None)
    if found is None:
        return answers.refuse(Mistake("pages.no-such-page"))
    return render_template("rules.html", rules=[_told(found)], one=True)


def _told(rule) -> dict:
    """A rule with the limits, weight and silence of this job, in the reader's words."""
    job = opened.folder().job
    return {
        "id": rule.id,
        "name": _text(rule.id, "name") or rule.id,
        "asks": _text(rule.id, "holds"),
        "concerns": rule.concerns,
        "limit": "; ".join(_limit(job.limit(name)) for name in rule.limits if job.limit(name) is not None),
        "weight": job.weights.get(rule.id, rule.weight),
        "silent": job.silence.get(rule.id, rule.silent),
        "source": source_says(rule.source, g.language),
        "examples": rule.examples,
    }


def _text(rule_id: str, part: str) -> str:
    key = f"rules.{rule_id}.{part}"
    return say(key, g.language) if has(key, g.language) else ""


def _limit(value) -> str:
    if isinstance(value, tuple):
        return say("facts.slope", g.language, rise=_limit(value[0]), run=_limit(value[1]))
    return measure.printed(value) if isinstance(value, Fraction) else str(value)
