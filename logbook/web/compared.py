"""What today's rule book would say of a day, beside what was said then: what became otherwise first. It changes nothing."""

from __future__ import annotations

from flask import Blueprint, g, render_template

from logbook.mistake import Mistake
from logbook.store.again import again
from logbook.web import answers, opened

screen = Blueprint("compared", __name__)


@screen.get("/day/<date>/again")
def page(date: str):
    if opened.day_of(date) is None:
        return answers.refuse(Mistake("pages.bad-date", "date", {"came": date[:20]}))
    found = again(opened.folder(), date, g.language)
    if isinstance(found, Mistake):
        return answers.refuse(found, 404)
    otherwise = [piece for piece in map(_parted, found["pieces"]) if piece["otherwise"]]
    same = [piece for piece in found["pieces"] if all(row["same"] for row in piece["findings"])]
    return render_template("compared.html", date=date, found=found, otherwise=otherwise, same=same)


def _parted(piece: dict) -> dict:
    """A piece with its findings in two lists: those that became otherwise, those that both books say."""
    return piece | {"otherwise": [row for row in piece["findings"] if not row["same"]], "same": [row for row in piece["findings"] if row["same"]]}
