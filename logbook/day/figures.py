"""The day in figures: what was made, hung, looked at and tested, and the table that keeps saying and seeing apart."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from logbook import labels
from logbook.day import seen
from logbook.day.one_day import Day, missing, value_of
from logbook.day.sheet import DASH, photos_of, size_text, standing, verdicts
from logbook.facts import bare_mark
from logbook.walk import leaks
from logbook.wording import say


def must_know(day: Day, language: str) -> dict:
    """Figures first, then what is open and what is missing."""
    pieces = day.fittings()
    stands = [standing(piece) for piece in day.pieces]
    absent = missing(day)
    figures = [
        ("made", len([one for one in pieces if value_of(one, "kind") not in (None, "hanger", "repair")])),
        ("hung", sum(value_of(one, "stage") == "hung" for one in pieces)),
        ("joined", sum(bool(value_of(one, "joined_to")) for one in pieces)),
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


def _tested(run: str | None, said: set[str], measured: Sequence[str], language: str) -> str:
    """How the run of a fitting was tested: as somebody said, or with an instrument."""
    if not run:
        return DASH
    ways = [("report.tested-said", bare_mark(run) in said), ("report.tested-measured", run.casefold() in measured)]
    return "; ".join(say(key, language, run=run) for key, so in ways if so) or DASH


def _lookers(looks: Iterable[Mapping]) -> str:
    return ", ".join(dict.fromkeys(look["by"] for look in looks))
