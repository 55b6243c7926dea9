"""What people went and saw on a day, in sections of their own: the spot check, the walk list, leak tests with an instrument."""

from __future__ import annotations

from collections.abc import Mapping

from logbook import labels, measure
from logbook.day import moments
from logbook.day.one_day import Day
from logbook.walk import leaks, lots
from logbook.wording import has, say


def spot_check(day: Day, language: str) -> dict:
    """The pieces that were drawn, each with what was found otherwise; what nobody looked at yet says so."""
    pieces = {one["id"]: one for one in day.pieces}
    looks = {one["piece"]: one for one in day.looks}
    drawn = list(dict.fromkeys(piece for draw in day.draws for piece in draw["drawn"]))
    rows = []
    for piece in drawn:
        what = labels.fitting(pieces[piece]["facts"], language) if piece in pieces else piece
        run = pieces[piece]["run"] if piece in pieces else None
        look = looks.get(piece)
        rows.append({"piece": piece, "what": what, "run": say("report.run", language, run=run) if run else say("report.run-unsaid", language), "looked": look is not None, **_look(look, day.date, language)})
    told = lots.against(len(drawn), looks.values())
    line = ""
    if drawn:
        line = say("walk.report-spot-line", language, drawn=told.drawn, looked=told.pieces, off=told.off) if looks else say("walk.report-spot-unseen", language, drawn=told.drawn)
    seeds = [say("walk.seed", language, seed=draw["seed"], count=len(draw["drawn"])) for draw in day.draws]
    return {"title": say("walk.report-title", language), "line": line, "rows": rows, "seeds": seeds, "nothing": say("walk.report-none", language)}


def _look(look: Mapping | None, date: str, language: str) -> dict:
    if look is None:
        return {"line": say("walk.report-drawn-not", language), "otherwise": []}
    seen = sum(one["answer"] == "as_said" for one in look["found"])
    how = say(f"facts.how.{look['how']}", language) if has(f"facts.how.{look['how']}", language) else look["how"]
    line = say("report.how", language, how=how, name=look["by"], at=moments.on_day(look["at"], date, language))
    off = [
        say("walk.report-one", language, label=labels.name(one["name"], language), said=labels.value(one["name"], one["said"], one.get("exact"), language),
            found=labels.value(one["name"], one["found"], one.get("found_exact"), language)) + (f": {one['words']}" if one["words"] else "")
        for one in look["found"] if one["answer"] == "otherwise"
    ]  # fmt: skip
    hidden = sum(one["answer"] == "not_seen" for one in look["found"])
    more = [say("walk.report-all", language, looked=seen)] + ([say("walk.report-hidden", language, hidden=hidden)] if hidden else []) + ([look["words"]] if look["words"] else [])
    return {"line": f"{line} {'; '.join(more)}.", "otherwise": off}


def walk_list(day: Day, language: str) -> dict:
    """Answers of the day, each no with its words first."""
    order = ("no", "yes", "not_applicable")
    rows = [
        {"area": one["area"].partition(":")[2] or say("walk.area-nowhere", language), "question": one["question"], "asks": say(f"checklist.{one['question']}.asks", language),
         "answer": one["answer"], "answer_text": say(f"walk.answer-{one['answer']}", language), "words": one["words"],
         "line": say("report.said-at", language, name=one["by"], at=moments.on_day(one["at"], day.date, language))}
        for one in sorted(day.answers, key=lambda one: order.index(one["answer"]))
    ]  # fmt: skip
    heads = {name: say(f"walk.report-column-{name}", language) for name in ("area", "question", "answer", "who")}
    return {"title": say("walk.report-walk", language), "columns": heads, "rows": rows, "nothing": say("walk.report-walk-none", language)}


def leak_records(day: Day, language: str) -> dict:
    """Measured flow against the allowable, with instrument, calibration and witness."""
    rows = [leak_row(one, language) for one in leaks.standing(list(day.records))]
    off = sum(one["verdict"] != "meets" for one in rows)
    line = say("leaks.report-line", language, count=len(rows), off=off) if rows else ""
    return {"title": say("leaks.report-title", language), "line": line, "rows": rows, "source": say("leaks.source", language), "nothing": say("leaks.none", language)}


def leak_row(one: Mapping, language: str) -> dict:
    told = leaks.told(one)
    number = {name: measure.decimal(leaks.value(one, name)) for name in ("pressure_in_wg", "area_ft2", "measured_cfm", "leakage_class")}
    untold, nobody = say("leaks.untold", language), say("leaks.nobody", language)
    return {
        "id": one["id"], "section": one["section"], "verdict": told.verdict, "verdict_text": say(f"leaks.verdict-{told.verdict}", language), "why": say(f"leaks.why-{told.why}", language),
        "measured": say("leaks.line", language, measured=number["measured_cfm"], pressure=number["pressure_in_wg"], area=number["area_ft2"]),
        "allowed": say("leaks.allowed", language, allowed=f"{told.allowed:.1f}", per=f"{told.per_100:.2f}", **{"class": number["leakage_class"]}),
        "by": say("leaks.by", language, name=one["tested_by"], date=one["tested_on"], witness=one["witness"] or nobody, instrument=one["instrument"], serial=one["serial"]),
        "calibrated": say("leaks.calibrated", language, on=one["calibrated_on"] or untold, until=one["calibrated_until"] or untold), "words": one["words"],
    }  # fmt: skip
