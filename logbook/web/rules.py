"""The rule book as people read it: what holds, with this job's limit, the source and spoken examples."""

from __future__ import annotations

from flask import Blueprint, g, render_template

from logbook import rules as book
from logbook.mistake import Mistake
from logbook.web import answers, opened

screen = Blueprint("rules", __name__)


@screen.get("/rules")
def page():
    return render_template("rules.html", rules=book.RULES, job=opened.folder().job, language=g.language)


@screen.get("/rules/<rule>")
def one(rule: str):
    found = next((each for each in book.RULES if each.id == rule), None)
    if found is None:
        return answers.refuse(Mistake("pages.no-such-page"))
    return render_template("rules.html", rules=(found,), job=opened.folder().job, one=True)
