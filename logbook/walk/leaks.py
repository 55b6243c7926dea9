"""Leak-test records: what stood on the instrument, what the class allows, and whether the instrument could be trusted.

    record(body, leakage_class, today) -> dict | Mistake     the content of the act, from a form or from JSON
    told(record) -> Told                                     allowable, verdict and its reason

A record is a measurement by named people, not a saying of an installer; it stands in columns of its own. The
allowable is that of `air.leakage_allowed`. A calibration that ran out before the test, or that nobody told, leaves
the answer open: a flow below the allowable then proves nothing.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from fractions import Fraction

from logbook import air, measure
from logbook.mistake import Mistake

NUMBERS = (("pressure", "pressure_in_wg"), ("area", "area_ft2"), ("measured", "measured_cfm"))
TEXTS = ("section", "instrument", "serial", "tested_by", "witness", "words")
NEEDED = ("section", "instrument", "tested_by")
DATES = ("tested_on", "calibrated_on", "calibrated_until")
LONGEST, MOST = 200, Fraction(1_000_000)
PLACES = 1  # of an allowable as printed; compared as reckoned


@dataclass(frozen=True)
class Told:
    """`allowed` in cfm, unrounded; `verdict` meets, departs, unsaid or unclear; `why` is a key of the area `leaks`."""

    allowed: float
    per_100: float
    verdict: str
    why: str


def record(body: Mapping[str, object], leakage_class: Fraction, today: date) -> dict | Mistake:
    """Members: section, pressure (in. w.g.), area (ft²), measured (cfm), leakage_class, instrument, serial, tested_on,
    calibrated_on, calibrated_until, tested_by, witness, words, instead_of. Numbers as the trade writes them."""
    texts = {name: " ".join(str(body.get(name) or "").split())[:LONGEST] for name in TEXTS}
    for name in NEEDED:
        if not texts[name]:
            return Mistake("leaks.needed", name, {"field": name})
    numbers: dict[str, Fraction] = {}
    for field, name in (*NUMBERS, ("leakage_class", "leakage_class")):
        given = body.get(field)
        value = leakage_class if field == "leakage_class" and given in (None, "") else _number(given)
        if value is None or abs(value) > MOST or (value <= 0 if field not in ("pressure", "measured") else value < 0 if field == "measured" else value == 0):
            return Mistake("leaks.number", field, {"field": field, "came": str(given)[:40]})
        numbers[name] = value
    dates: dict[str, str | None] = {}
    for name in DATES:
        given = body.get(name) or None
        read = _date(given)
        if given is not None and read is None:
            return Mistake("leaks.date", name, {"field": name, "came": str(given)[:40]})
        dates[name] = read and read.isoformat()
    if dates["tested_on"] is None:
        return Mistake("leaks.needed", "tested_on", {"field": "tested_on"})
    if dates["tested_on"] > today.isoformat():
        return Mistake("leaks.not-yet", "tested_on", {"came": dates["tested_on"], "today": today.isoformat()})
    if dates["calibrated_on"] and dates["calibrated_until"] and dates["calibrated_until"] < dates["calibrated_on"]:
        return Mistake("leaks.dates-crossed", "calibrated_until", {"one": dates["calibrated_on"], "other": dates["calibrated_until"]})
    if texts["witness"] and texts["witness"].casefold() == texts["tested_by"].casefold():
        return Mistake("leaks.own-witness", "witness", {"name": texts["witness"]})
    shown = {name: measure.in_json(value) for name, value in numbers.items()}
    exact = {name: text for name, value in numbers.items() if (text := measure.exact(value)) is not None}
    return texts | shown | ({"exact": exact} if exact else {}) | dates | {"instead_of": str(body.get("instead_of") or "") or None}


def value(told: Mapping, name: str) -> Fraction:
    """A number of a record, exactly."""
    return measure.from_json(told[name], (told.get("exact") or {}).get(name))


def told(one: Mapping) -> Told:
    pressure, area, flow, klass = (value(one, name) for name in ("pressure_in_wg", "area_ft2", "measured_cfm", "leakage_class"))
    allowed = air.leakage_allowed(klass, pressure, area)
    per_100 = air.leakage_allowed(klass, pressure, air.PER_AREA)
    if flow > allowed:
        return Told(allowed, per_100, "departs", "leaks")
    if one["calibrated_until"] and one["calibrated_until"] < one["tested_on"]:
        return Told(allowed, per_100, "unclear", "calibration-over")
    if one["calibrated_on"] and one["calibrated_on"] > one["tested_on"]:
        return Told(allowed, per_100, "unclear", "calibrated-after")
    if not (one["calibrated_on"] and one["calibrated_until"]):
        return Told(allowed, per_100, "unsaid", "calibration-untold")
    return Told(allowed, per_100, "meets", "within")


def standing(records: list[Mapping]) -> list[Mapping]:
    """The records that no later one replaces, oldest first."""
    replaced = {one["instead_of"] for one in records if one.get("instead_of")}
    return [one for one in records if one["id"] not in replaced]


def section_words(section: str) -> set[str]:
    """The words of a section as they are compared with the names of runs: "run 2", "tramo 2", "runs 2 and 3"."""
    return {word.strip(".,;:()").casefold() for word in section.split()}


def _number(given: object) -> Fraction | None:
    if isinstance(given, bool) or given is None:
        return None
    if isinstance(given, int | float):
        return Fraction(str(given)) if given == given and abs(given) < float("inf") else None
    return measure.parse(str(given).strip().replace(",", ".").replace("−", "-"))


def _date(given: object) -> date | None:
    try:
        return date.fromisoformat(str(given)) if given is not None else None
    except ValueError:
        return None
