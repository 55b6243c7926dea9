"""The lead's desk: what needs a person, the most serious first, and one page to settle each, without going back."""

from __future__ import annotations

import re
import uuid
from collections import Counter
from datetime import date, datetime, timedelta
from fractions import Fraction

from flask import Blueprint, Response, g, redirect, render_template, request, url_for

from logbook import measure, review, store, worklist
from logbook.geometry.drawing import draw
from logbook.geometry.planned import draw_row
from logbook.history import beside, history
from logbook.mistake import Mistake
from logbook.store import holding, people, settled, walked
from logbook.web import answers, asked, deciding, guard, opened, pencil, pressing, secrecy
from logbook.wording import say

screen = Blueprint("desk", __name__)
_DIGEST = re.compile(r"[0-9a-f]{64}")
A_PAGE = 40
MOST_AT_ONCE = 100
WHO_BUILT = "who-built"  # as the owner of several: of each fitting the one who spoke its newest note
NAMES = uuid.UUID("7a9d0b52-30f5-4b0e-9b67-3f5a1c6e8d24")  # the space of ids of several decisions of one press


def _today() -> date:
    return opened.folder().job.day_of(opened.now())


def _ordered(run: str | None = None) -> tuple[worklist.Item, ...]:
    folder = opened.folder()
    items = [item for item in store.waiting(folder) if not run or (item.run or "").casefold() == run.casefold()]
    return worklist.in_order(items, folder.job, _today())


@screen.get("/desk")
def page():
    return _list(request.args.get("run") or None, request.args.get("rule") or None, request.args.get("from", ""))


def _list(run: str | None, rule: str | None, start: str, told: tuple[Mistake, ...] = (), status: int = 200):
    """A page of the worklist, of one run or of one rule; after a refusal with what was pressed, so that nothing has to
    be pressed twice. Of one rule as many stand on a page as may be settled at once."""
    folder, today, every = opened.folder(), _today(), _ordered()
    of_run = [item for item in every if not run or (item.run or "").casefold() == run.casefold()]
    ordered = [item for item in of_run if not rule or item.rule == rule]
    begin, a_page = int(start) if start.isdecimal() else 0, MOST_AT_ONCE if rule else A_PAGE
    shown = ordered[begin : begin + a_page]
    newest, ended = store.newest_day(folder), settled.settled_lately(folder, every) if not begin else []
    return render_template(
        "desk.html", says=store.finding_says(folder, [*shown, *ended], g.language), spoken=settled.spoken_last(folder, [*shown, *ended]), ended=ended, groups=worklist.groups(shown, folder.job, today), ordered=ordered, counts=_counts(ordered, today),
        begin=begin, more=len(ordered) > begin + a_page, a_page=a_page, run=run, runs=_runs(every), rule=rule, rules=_rules(of_run),
        lost=store.lost_notes(folder) if not begin else [], newest=newest, not_understood=store.not_understood_on(folder, newest) if newest else 0, points=holding.hold_points(folder), closed=store.closed_lately(folder) if not begin else [], spot=walked.spot_summary(folder, today), names=people.names(folder.db), today=today,
        tomorrow=today + timedelta(days=1), owners=_owners(), who_built=WHO_BUILT, decisions=deciding.ALIKE, pressed=request.form,
        picked={" ".join(pick.split(" ")[:3]) for pick in request.form.getlist("pick")}, wrong=[(_of_which(one), *answers.sentences(one, g.language)) for one in told],
    ), status  # fmt: skip


def _of_which(mistake: Mistake) -> str:
    """Mark and rule of the finding that was refused, where several were asked for at once."""
    mark, _, rule = mistake.where.rpartition(" ")
    return f"{mark} {answers.rule_name(rule, g.language)}" if mistake.key.startswith("review.") or mistake.key == "desk.decided-meanwhile" else ""


def _counts(ordered, today: date) -> list[tuple[str, int, int]]:
    """(level, how many, place of its first in the list) of every level that has any."""
    found = [worklist.level(item, today) for item in ordered]
    return [(name, found.count(name), found.index(name)) for name in worklist.LEVELS if name in found]


def _runs(ordered) -> list[str]:
    found = dict.fromkeys(item.run for item in sorted(ordered, key=lambda item: (len(item.run or ""), item.run or "")) if item.run)
    return list(found)


def _rules(ordered) -> list[tuple[str, int]]:
    """Rules that several findings wait of, the most frequent first."""
    return [(rule, count) for rule, count in Counter(item.rule for item in ordered).most_common() if count > 1]


def _owners() -> dict[str, str | None]:
    """Who may be asked to end something: everybody who speaks or decides on this job."""
    found = people.everybody(opened.folder().db)
    return {one.id: one.name or one.id for one in found if guard.of_the_crew(one)}


@screen.post("/desk")
def settle_several():
    """The same decision, for the same reason, on every finding that was picked: all of them are kept, or none."""
    fields = asked.body()
    if isinstance(fields, Mistake):
        return answers.refuse(fields)
    picked = request.form.getlist("pick")[:MOST_AT_ONCE]
    run, rule = fields.get("run") or None, request.form.get("of-rule") or None
    made = deciding.body(fields)
    wrong = made if isinstance(made, Mistake) else _unfit(made, picked)
    if wrong is not None:
        return _list(run, rule, "", (wrong,), 422)
    bodies = _each(made, picked)
    wrong = next((one for _, body in bodies if (one := deciding.unowned(body)) is not None), None)
    if wrong is not None:
        return _list(run, rule, "", (wrong,), 422)
    if quicker := _quicker(bodies, [pick.split(" ")[3:] for pick in picked]):
        return _list(run, rule, "", quicker, 409)
    done = store.decide_together(opened.folder(), bodies, g.person.id)
    if not _kept(done):
        return _list(run, rule, "", done if isinstance(done, tuple) else (done,), 422)
    return redirect(url_for("desk.page", run=run, rule=rule, done=len(done)), 303)


def _unfit(made: dict, picked: list[str]) -> Mistake | None:
    if not picked:
        return Mistake("desk.nothing-picked")
    if made["decision"] not in deciding.ALIKE:
        return Mistake("desk.one-by-one", "decision", {"expected": ", ".join(deciding.ALIKE)})
    return deciding.unowned(made)


def _each(made: dict, picked: list[str]) -> list[tuple[str, dict]]:
    """(piece, body) of every pick ("piece rule edition"), each with an id of its own that follows from the press."""
    bodies = []
    for pick in picked:
        piece, rule, edition = (pick.split(" ") + ["", "", ""])[:3]
        own = str(uuid.uuid5(NAMES, f"{made['id']} {piece} {rule}"))
        named = {"owner": store.builder_of(opened.folder(), piece)} if made.get("owner") == WHO_BUILT else {}
        bodies.append((piece, made | named | {"id": own, "rule": rule, "edition": edition}))
    return bodies


def _quicker(bodies: list[tuple[str, dict]], seen: list[list[str]]) -> tuple[Mistake, ...]:
    """Decisions that somebody else made since the page was loaded, which showed those of `seen` (none: nothing is compared)."""
    folder, found = opened.folder(), []
    for (piece, body), shown in zip(bodies, seen):
        last = settled.last_decision(folder, piece, body["rule"], body["edition"]) if shown else None
        if last is not None and last["id"] not in (*shown, body["id"]):
            who, mark = people.names(folder.db).get(last["by"], last["by"]), (store.piece_document(folder, piece, g.language) or {}).get("mark") or ""
            found.append(Mistake("desk.decided-meanwhile", f"{mark} {body['rule']}", {"name": who, "made": say(f"desk.decision.{last['decision']}", g.language), "when": pencil.moment(last["at"], g.language)}))
    return tuple(found)


def _kept(done) -> bool:
    return isinstance(done, tuple) and not any(isinstance(one, Mistake) for one in done)


# --- one item


@screen.get("/desk/next")
def first():
    """The most serious one that nobody is at."""
    run = request.args.get("run") or None
    found = worklist.after(_ordered(run), "", "", _today())
    return redirect(url_for("desk.page", run=run) if found is None else url_for("desk.item", piece=found.piece, rule=found.rule, run=run))


@screen.get("/desk/<piece>/<rule>")
def item(piece: str, rule: str):
    return _item(piece, rule)


def _item(piece: str, rule: str, told: tuple[Mistake, ...] = (), status: int = 200):
    folder, language = opened.folder(), g.language
    found = store.piece_document(folder, piece, language)
    finding = None if found is None else next((one for one in found["findings"] if one["rule"] == rule), None)
    if finding is None:
        return answers.refuse(Mistake("pages.no-such-piece" if found is None else "desk.no-such-finding", "", {"rule": rule}))
    run = request.values.get("run") or None
    today, ordered = _today(), _ordered(run)
    looks = store.looks_of(folder, found)
    notes = [store.note_document(folder, one, language) for one in dict.fromkeys((*found["notes"], *looks))]
    kind = next((fact["value"] for fact in found["facts"] if fact["name"] == "kind"), None)
    row = _row(found, notes)
    about = _about(finding)
    return render_template(
        "desk-item.html", run=run, piece=found, finding=finding, notes=[one for one in notes if not one.get("as_lead")],
        looks=[one for one in notes if one.get("as_lead")], behind=_behind(found, finding, notes),
        names=people.names(folder.db), row=row, drawn=draw(found["facts"], language).told,
        drawn_row="" if row is None else draw_row(row, language, folder.job.limit("slope")).told, numbers=_numbers(finding),
        weighed=_weighed(finding), history=history(found, notes, rule), beside=beside(found, notes, rule), about=about,
        about_was=next((fact["value"] for fact in found["facts"] if fact["name"] == about), None), press=pressing.field,
        decisions=review.DECISIONS, hows=review.WAYS_TO_LOOK, elsewhere=review.granted_elsewhere(rule, kind),
        said_found=_said_found(found), others=[(one, _seen(piece, one)) for one in found["findings"] if one["rule"] != rule and one.get("stands") == "open"],
        here=next((number for number, one in enumerate(ordered, 1) if (one.piece, one.rule) == (piece, rule)), None),
        of=len(ordered), following=worklist.after(ordered, piece, rule, today), before=worklist.before(ordered, piece, rule),
        place=worklist.place(_light(found, finding), folder.job, today), owners=_owners(), owner=_builder(notes),
        today=today, tomorrow=today + timedelta(days=1), reasons=store.last_reasons(folder, g.person.id, rule),
        pending=store.pending(folder, piece, rule), seen=_seen(piece, finding), done=_done(request.args.get("done")), pressed=request.form,
        also={one.split(" ")[0] for one in request.form.getlist("also")}, wrong=[(_of_which(one) if len(told) > 1 or one.where.rpartition(" ")[2] != rule else "", *answers.sentences(one, language)) for one in told],
    ), status  # fmt: skip


def _seen(piece: str, finding: dict) -> str:
    """The newest decision that this page shows of a finding, by its id."""
    return (settled.last_decision(opened.folder(), piece, finding["rule"], finding["edition"]) or {}).get("id", "")


def _weighed(finding: dict) -> list[str]:
    """What else a rule looked at, as people read it: the digest of a photo says nothing, and the photo stands below."""
    if finding["rule"] == "looked-agrees" or finding.get("case") == "not-understood":
        return []
    return [one for one in finding.get("evidence") or () if not _DIGEST.fullmatch(one)]


def _light(piece: dict, finding: dict) -> worklist.Item:
    return worklist.Item(piece["id"], finding["rule"], finding["edition"], finding["verdict"], finding["stands"] or "", piece["run"], piece["mark"])


def _row(piece: dict, notes: list[dict]):
    """The schedule row in force when the piece was made."""
    job = opened.folder().job
    day = job.day_of(datetime.fromisoformat(notes[0]["spoken_at"])) if notes else None
    return job.row(piece["mark"], piece["run"], day)


def _about(finding: dict) -> str | None:
    """The fact that a look or a set-right word is most likely about."""
    if finding["asks"] and finding["asks"] != "photo":
        return finding["asks"]
    return finding["facts"][-1] if finding["facts"] else None


def _behind(piece: dict, finding: dict, notes: list[dict]) -> list[dict]:
    """Where the words behind the finding are heard: {"note", "second", "fact"}, what it is most likely about first."""
    by_id = {note["id"]: note for note in notes}
    heard = [
        {"note": fact["note"], "second": fact["second"], "fact": fact}
        for fact in piece["facts"]
        if fact["name"] in (*finding["facts"], finding["asks"]) and fact.get("second") is not None and by_id.get(fact.get("note"), {}).get("digests", {}).get("audio")
    ]
    return sorted(heard, key=lambda one: one["fact"]["name"] != _about(finding))


def _numbers(finding: dict) -> list[tuple[str, str]]:
    """(key of its label, text) of every number that was reckoned, and the tolerance that counts."""
    tolerance = finding["tolerance"]
    length = tolerance.get("length") if isinstance(tolerance, dict) else tolerance
    found = finding["reckoned"] | {"tolerance_in": length}
    return [(name, _number(value)) for name, value in found.items() if isinstance(value, int | float) and not isinstance(value, bool)]


def _number(value) -> str:
    exact = Fraction(str(value))
    return measure.printed(exact) if (exact * 16).denominator == 1 else measure.decimal(exact)


def _said_found(piece: dict) -> list[dict]:
    """What was said beside what was found, by fact: the newest look of each."""
    said = {fact["name"]: fact for fact in piece["facts"]}
    newest = {look["name"]: look for look in piece["looked"]}
    return [{"name": name, "said": said.get(name), "found": look} for name, look in newest.items()]


def _builder(notes: list[dict]) -> str | None:
    said = [note["spoken_by"] for note in notes if not note.get("as_lead")]
    return said[-1] if said else None


def _done(text: str | None) -> dict | None:
    """What was settled a moment ago: "piece rule"."""
    piece, _, rule = (text or "").partition(" ")
    found = store.piece_document(opened.folder(), piece, g.language) if rule else None
    made = None if found is None else store.pending(opened.folder(), piece, rule) or next((one for one in reversed(found["decisions"]) if one["rule"] == rule), None)
    return None if made is None else {"piece": found, "rule": rule, "decision": made["decision"]}


@screen.post("/desk/<piece>/<rule>")
def settle(piece: str, rule: str):
    """One decision on this finding and, where it is the same, on others of the piece; then the next one."""
    fields = asked.body()
    if isinstance(fields, Mistake):
        return answers.refuse(fields)
    made = deciding.body(fields | {"rule": rule})
    wrong = made if isinstance(made, Mistake) else deciding.unowned(made)
    also = request.form.getlist("also")[:MOST_AT_ONCE]
    if wrong is None and also and made["decision"] not in deciding.ALIKE:
        wrong = Mistake("desk.one-by-one", "decision", {"expected": ", ".join(deciding.ALIKE)})
    if wrong is not None:
        return _item(piece, rule, (wrong,), 422)
    run = fields.get("run") or None
    ordered = _ordered(run)  # as it was before this one is gone from it
    bodies = [(piece, made), *_each(made, [f"{piece} {one}" for one in also])]
    if quicker := _quicker(bodies, [request.form.getlist("seen"), *(one.split(" ")[2:] for one in also)]):
        return _item(piece, rule, quicker, 409)
    done = store.decide_together(opened.folder(), bodies, g.person.id)
    if not _kept(done):
        return _item(piece, rule, done if isinstance(done, tuple) else (done,), 422)
    with_it = {one.split(" ")[0] for one in also}
    left = [one for one in ordered if one.piece != piece or one.rule == rule or (one.rule not in with_it and made["decision"] != "scrap")]
    following = worklist.after(left, piece, rule, _today())
    if following is None:
        return redirect(url_for("desk.page", run=run, done=len(done)), 303)
    return redirect(url_for("desk.item", piece=following.piece, rule=following.rule, run=run, done=f"{piece} {rule}"), 303)


@screen.get("/pieces/<piece>/planned.svg")
def planned(piece: str):
    """The fitting as the schedule has it, drawn."""
    found = store.piece_document(opened.folder(), piece, g.language)
    if found is None:
        return answers.refuse(Mistake("pages.no-such-piece"))
    row = _row(found, [one for one in [store.note_document(opened.folder(), found["notes"][0], g.language)] if one])
    if row is None:
        return answers.refuse(Mistake("pages.no-such-file"))
    answer = Response(draw_row(row, g.language, opened.folder().job.limit("slope")).svg, mimetype="image/svg+xml")
    answer.headers["Content-Security-Policy"] = secrecy.FILE_POLICY
    return answer


# --- the lead's own look


@screen.get("/look/<piece>")
def look(piece: str):
    """The page where a lead says what he found on a piece; it is kept beside what the installer said."""
    found = store.piece_document(opened.folder(), piece, g.language)
    if found is None:
        return answers.refuse(Mistake("pages.no-such-piece"))
    return render_template("dictate.html", piece=found, id=str(uuid.uuid4()), rule=request.args.get("rule", ""))
