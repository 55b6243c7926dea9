"""Single values of the job file: each function gives the value as the job keeps it, or WRONG."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import date, time
from fractions import Fraction
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from logbook import measure

NOMINAL = {25: Fraction(1), 38: Fraction(3, 2), 51: Fraction(2), 50: Fraction(2)}  # mm of board -> trade inches
WRONG = object()
_SLOPE = re.compile(r"\s*([\d./ -]+?)\s*(?:in|to|:|en)\s*([\d./ -]+?)\s*")


def shown(came: object) -> str:
    return came if isinstance(came, str) else str(came)


def length(came: object) -> object:
    value = measure.written(came)
    return WRONG if value is None or value < 0 else value


def board(came: object) -> object:
    value = length(came)
    if value is WRONG:
        return WRONG
    value = NOMINAL.get(round(float(value / measure.MM)), value)
    return value if value in NOMINAL.values() else WRONG


def number(came: object) -> object:
    if isinstance(came, bool) or not isinstance(came, int | float):
        return WRONG
    return Fraction(str(came))


def positive(came: object) -> object:
    value = number(came)
    return WRONG if value is WRONG or value < 0 else value


def share(came: object) -> object:
    value = positive(came)
    return WRONG if value is WRONG or value > 1 else value


def slope(came: object) -> object:
    found = _SLOPE.fullmatch(came) if isinstance(came, str) else None
    rise, run = (measure.parse(found[1]), measure.parse(found[2])) if found else (None, None)
    return WRONG if not rise or not run or rise < 0 or run < 0 else (rise, run)


def flag(came: object) -> object:
    return came if isinstance(came, bool) else WRONG


def text(came: object) -> object:
    return came if isinstance(came, str) else WRONG


def clock(came: object) -> object:
    if isinstance(came, time):
        return came
    found = re.fullmatch(r"([01]?\d|2[0-3]):([0-5]\d)", came) if isinstance(came, str) else None
    return time(int(found[1]), int(found[2])) if found else WRONG


def zone(came: object) -> object:
    try:
        return ZoneInfo(came).key if isinstance(came, str) and came else WRONG
    except (ZoneInfoNotFoundError, ValueError, OSError):
        return WRONG


def job_id(came: object) -> object:
    return came if isinstance(came, str) and re.fullmatch(r"[a-z]{8}", came) else WRONG


def day(came: object) -> object:
    return came if isinstance(came, date) else WRONG


SHAPES: dict[str, tuple[Callable, str]] = {
    "length": (length, '2, 2.5, "2-1/2 in", "50 mm"'),
    "optional": (length, '2, 2.5, "2-1/2 in", "50 mm"'),
    "number": (positive, "2, 0.5"),
    "share": (share, "0.05"),
    "slope": (slope, '"2 in 12"'),
}
