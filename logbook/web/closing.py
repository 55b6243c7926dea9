"""Closing the job: what is missing and open, a press that writes the closeout package, and the package to take."""

from __future__ import annotations

import json
import threading
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from flask import Blueprint, current_app, g, redirect, render_template, url_for

from logbook import lineup, store
from logbook.mistake import Mistake
from logbook.paper.handing_over import hand_over
from logbook.store import holding, walked
from logbook.web import answers, asked, opened
from logbook.wording import LANGUAGES

screen = Blueprint("closing", __name__)
SHOWN = 10  # packages of the past
COMING_IN = ("signed-in", "password-set", "invited", "phone-paired", "phone-shared", "key-given", "cut-off")  # acts of who comes in: the log holds no more for it
LISTED = 2_000  # fittings beyond which those that the schedule does not name are counted by run


@dataclass
class Desk:
    """The package that is being written, at most one at a time: a long job takes minutes, longer than a page waits."""

    thread: threading.Thread | None = None
    since: datetime | None = None
    problem: Mistake | None = None

    def busy(self) -> bool:
        return self.thread is not None and self.thread.is_alive()


def _desk() -> Desk:
    return current_app.extensions.setdefault("closing", Desk())


@screen.get("/closeout")
def page():
    folder, desk = opened.folder(), _desk()
    plan = folder.job.revision(None)
    lines = lineup.lines(plan, *store.lineup(folder, lineup.planned_marks(plan), most=LISTED))
    total = {name: sum(line.counts[name] for line in lines) for name in ("planned", "missing", "open", "in-hand", "asked")}
    made = sorted((folder.path / "reports").glob("*.zip"), key=lambda path: path.stat().st_mtime, reverse=True)
    return render_template(
        "closeout.html", total=total, planned=plan is not None, held=[one.hold.name for one in holding.hold_points(folder) if not one.release],
        spot=walked.spot_summary(folder, opened.local_now().date()), busy=desk.busy(), since=desk.since, languages_of=folder.job.languages or LANGUAGES,
        problem=answers.sentences(desk.problem, g.language) if desk.problem and not desk.busy() else None, newest=made[0] if made else None,
        size=made[0].stat().st_size / 1e6 if made else 0, digest=_digest(made[0]) if made else None, handed=_handed(folder), grown=_grown(folder),
    )  # fmt: skip


def _handed(folder) -> list[dict]:
    """Packages that were written, newest first: when, and the SHA-256 of the ZIP, as the journal keeps them."""
    found = folder.db.execute("SELECT at, ids FROM journal WHERE act = 'handed_over' ORDER BY seq DESC LIMIT ?", [SHOWN])
    zone = folder.job.timezone()
    return [{"at": datetime.fromisoformat(at).astimezone(zone).isoformat(), "sha256": json.loads(ids)["package"]} for at, ids in found]


def _grown(folder) -> bool:
    """Whether anything was said, pressed or decided since the newest package was written."""
    others = ", ".join("?" * len(COMING_IN))
    found = folder.db.execute(
        f"SELECT EXISTS (SELECT 1 FROM journal WHERE seq > (SELECT max(seq) FROM journal WHERE act = 'handed_over') AND act NOT IN ({others}))", COMING_IN
    )
    return found.fetchone()[0] == 1


@screen.post("/closeout")
def write():
    """Begins to write; the page tells when it is done. A second press while one is being written changes nothing."""
    body, desk = asked.body(), _desk()
    if isinstance(body, Mistake):
        return answers.refuse(body)
    if not desk.busy():
        now = opened.local_now()
        language = body.get("language") if body.get("language") in LANGUAGES else (opened.folder().job.languages or LANGUAGES)[0]
        out = opened.folder().path / "reports" / f"closeout-{now:%Y-%m-%d-%H%M%S}.zip"
        desk.since, desk.problem = now, None
        desk.thread = threading.Thread(target=_write, args=(desk, opened.settings().folder, out, language, now), daemon=True)
        desk.thread.start()
    return redirect(url_for("closing.page"), 303) if answers.wants_page() else ({"since": desk.since.isoformat()}, 202)


def _write(desk: Desk, path: Path, out: Path, language: str, now: datetime) -> None:
    folder = store.open_folder(path)
    if isinstance(folder, Mistake):
        desk.problem = folder
        return
    with folder:
        done = hand_over(folder, out, language, now)
    if isinstance(done, Mistake):
        desk.problem = done
    else:
        _beside(out).write_text(f"{done.sha256}  {out.name}\n", encoding="utf-8")


def _beside(package: Path) -> Path:
    """Where the digest of a package stands, in the form that `sha256sum -c` reads."""
    return package.with_name(f"{package.name}.sha256")


def _digest(package: Path) -> str | None:
    """Reading a whole package again would take as long as writing it; one written elsewhere has its digest in the journal."""
    beside = _beside(package)
    return beside.read_text(encoding="utf-8").partition(" ")[0] if beside.is_file() else None
