"""Exact lengths: inside the process a length is a `fractions.Fraction` of inches, never a float.

JSON carries a decimal rounded to six places and, where that is not the exact value, the fraction beside it
(`exact`). People read trade fractions ("12-1/2"). 1 in. = 25.4 mm exactly (international yard, 1959).
"""

from __future__ import annotations

import re
from fractions import Fraction

MM = Fraction(10, 254)  # inches in a millimetre
UNITS = {"in": Fraction(1), "ft": Fraction(12), "mm": MM, "cm": 10 * MM, "m": 1000 * MM}
PLACES = 6
FINEST = 64  # trade fractions go down to 1/64 in.; anything finer is printed as a decimal

_PRINTED = re.compile(r"\s*(-)?\s*(?:(\d+)(?:[\s-]+(\d+)/(\d+))?|(\d+)/(\d+)|(\d*\.\d+))\s*(?:in\.?|\")?\s*")


def in_json(value: Fraction) -> int | float:
    """The JSON number of an exact value, rounded to six places; whole numbers stay integers."""
    return int(value) if value.denominator == 1 else round(float(value), PLACES)


def exact(value: Fraction) -> str | None:
    """The fraction as text where the JSON number is not the exact value, else None."""
    return None if Fraction(str(in_json(value))) == value else f"{value.numerator}/{value.denominator}"


def from_json(number: int | float | str, exact_text: str | None = None) -> Fraction:
    """The exact value: the fraction beside the number if there is one, else the decimal as written."""
    return Fraction(exact_text) if exact_text is not None else Fraction(str(number))


def printed(value: Fraction) -> str:
    """A length as the trade writes it: 12, 12-1/2, 3/8; a decimal of two places where no 1/64 fits."""
    sign, value = ("-" if value < 0 else ""), abs(value)
    if FINEST % value.denominator:
        return sign + decimal(value)
    whole, part = divmod(value.numerator, value.denominator)
    if not part:
        return f"{sign}{whole}"
    fraction = f"{part}/{value.denominator}"
    return f"{sign}{whole}-{fraction}" if whole else f"{sign}{fraction}"


def decimal(value: Fraction, places: int = 2) -> str:
    """A decimal without trailing zeros: 2.67, 2.4, 2."""
    text = f"{float(round(value, places)):.{places}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def parse(text: str) -> Fraction | None:
    """Reads back what `printed` wrote, and decimals; None for anything else."""
    found = _PRINTED.fullmatch(text)
    if not found:
        return None
    minus, whole, over, under, over_alone, under_alone, decimals = found.groups()
    if "0" in {(under or "").lstrip("0") or ("0" if under else ""), (under_alone or "").lstrip("0") or ("0" if under_alone else "")}:
        return None
    if decimals:
        value = Fraction(decimals)
    elif over_alone:
        value = Fraction(int(over_alone), int(under_alone))
    else:
        value = Fraction(int(whole)) + (Fraction(int(over), int(under)) if over else 0)
    return -value if minus else value


_WITH_UNIT = re.compile(r"(?P<number>.+?)\s*(?P<unit>in\.?|\"|ft\.?|'|mm|cm|m)?")


def written(value: object) -> Fraction | None:
    """A length as somebody wrote it into a file: 2, 2.5, "2-1/2 in", "50 mm", "3 ft"; None for anything else."""
    if isinstance(value, bool):
        return None
    if isinstance(value, int | float):
        return Fraction(str(value))
    if not isinstance(value, str):
        return None
    found = _WITH_UNIT.fullmatch(value.strip())
    number = parse(found["number"]) if found else None
    if number is None:
        return None
    unit = (found["unit"] or "in").rstrip(".")
    return number * UNITS[{'"': "in", "'": "ft"}.get(unit, unit)]
