"""Numbers with their units: what a measure is of, exactly, in the contract's unit.

A measure's `sort` is what the grammar sees: NUM (no unit), FRAC (only a part of one, no unit), LEN, DEG (degrees
of nothing named), TEMP_F, CFM, INWG, LB, FT2, or COUNT for what measures nothing of a fitting (times, boxes,
people, room numbers). Unit factors: 1 in. = 25.4 mm and 1 lb = 0.45359237 kg exactly (international yard and
pound, 1959); 1 in. w.g. = 249.08891 Pa (water at 4 °C, conventional, from memory of NIST SP 811).
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from functools import cache

from logbook import measure
from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.words import numbers
from logbook.reading.words.phrasing import table_of, words_of
from logbook.reading.words.tokens import Token
from logbook.record import record

_NOMINAL_BOARD = {Fraction(25): Fraction(1), Fraction(38): Fraction(3, 2), Fraction(51): Fraction(2), Fraction(50): Fraction(2)}
_PA = Fraction(100000, 24908891)
_LPS = 60 / Fraction(12 * 254, 1000) ** 3  # one litre is a cubic decimetre, one foot 3.048 of them
_TO_CONTRACT = {
    "cfm": ("CFM", Fraction(1)), "lps": ("CFM", _LPS), "inwg": ("INWG", Fraction(1)), "pa": ("INWG", _PA), "kpa": ("INWG", 1000 * _PA), "lb": ("LB", Fraction(1)),
    "kg": ("LB", Fraction(100000000, 45359237)), "ft2": ("FT2", Fraction(1)),
    "m2": ("FT2", (1000 * measure.MM / 12) ** 2),
}  # fmt: skip


@record
class Measure:
    sort: str
    value: Fraction
    unit: str | None  # as spoken
    end: int  # the token behind it
    digits: bool
    raw: Fraction  # the number as spoken, before any unit
    near: bool = False  # it is not quite that: "two and change"


Units = Mapping[str, tuple[tuple[tuple[str, ...], str], ...]]


def read(tokens: tuple[Token, ...], at: int, language: Language, units: Units) -> Measure | None:
    """The measure that starts at this token, or None."""
    token = tokens[at]
    if token.sort == "sign":
        return None
    lone = _unit_alone(tokens, at, language, units)
    if lone is not None:
        return lone
    number = numbers.mixed(tokens, at, language)
    if number is None:
        return None
    return _with_unit(tokens, at, number, language, units)


def may_begin(tokens: tuple[Token, ...], at: int, language: Language, units: Units) -> bool:
    """Whether a measure can start at this token: most words are no number, no unit and no article."""
    token = tokens[at]
    if token.sort != "word":
        return token.sort == "number"
    if token.bare in _counting(language.code) or token.low in units or token.bare in units:
        return True
    return token.bare.endswith("s") and at > 0  # "two ten by tens"


@cache
def _counting(code: str) -> frozenset[str]:
    said = LANGUAGES[code].numbers
    return frozenset((*said.ones, *said.teens, *said.tens, *said.hundreds, *said.scales, *said.point, *said.articles, *said.halves, "hundred", "mil"))


def _with_unit(tokens, at, number, language, units: Units) -> Measure | None:
    unit, end = unit_at(tokens, _past_of_an(tokens, number, language, units), units)
    unit, end = (None, number.end) if unit == "of water" else (unit, end)
    if unit is None and tokens[at].bare in ("un", "una") and number.value == 1:
        return None  # an article, not a number
    if unit is None or (unit == "in" and _is_in_word(tokens, number, end)):
        value = number.value
        plain = "FRAC" if not number.whole and value < 1 and value.denominator in (2, 3, 4, 8, 16, 32, 64) else "NUM"
        return Measure(plain, value, None, number.end, number.digits, value)
    if unit in measure.UNITS:
        return _length(tokens, number, unit, end, language, units)
    if unit == "deg":
        return Measure("DEG", number.value, "°", end, number.digits, number.value)
    if unit in ("degF", "degC"):
        every = end < len(tokens) and tokens[end].low == "/" and tokens[end - 1].gap != ""  # "12x12 c/2": "cada", no degrees
        if every or not number.digits and end == number.end + 1 and len(tokens[end - 1].low) == 1:
            return Measure("NUM", number.value, None, number.end, number.digits, number.value)
        value = number.value if unit == "degF" else number.value * Fraction(9, 5) + 32
        return Measure("TEMP_F", value, "°F" if unit == "degF" else "°C", end, number.digits, number.value)
    sort, factor = _TO_CONTRACT[unit]
    return Measure(sort, number.value * factor, unit, end, number.digits, number.value)


def _length(tokens, number, unit, end, language: Language, units: Units) -> Measure:
    value, last = number.value * measure.UNITS[unit], number.value
    smaller = numbers.Number(number.value, end, number.digits, number.whole)
    if number.whole:
        more = numbers.with_fraction(tokens, smaller, language)  # two inches and a quarter
        if more is not None:
            again, after = unit_at(tokens, more.end, units)
            part = more.value - number.value
            if again == "in" and unit == "ft":
                value, end = value + part, after
            else:
                value, last = value + part * measure.UNITS[unit], more.value
                end = after if again == unit else more.end
            tail, past = unit_at(tokens, end, units)
            if unit == "in" and tail in ("of water", "inwg"):  # "an inch and a quarter water column"
                return Measure("INWG", value, "inwg", past, number.digits, last)
            return Measure("LEN", value, unit, end, number.digits, last)
    if unit in ("ft", "m"):
        dash = _foot_dash(tokens, end)
        step = end + 1 if dash or end < len(tokens) and tokens[end].bare in language.numbers.joins else end
        below = numbers.mixed(tokens, step, language)
        if below is not None and not (step == end and below.value == 1 and below.end < len(tokens) and tokens[below.end].bare in words_of("small.each_other")):
            under, after = unit_at(tokens, below.end, units)
            wanted, most = ("in", 12) if unit == "ft" else ("cm", 100)
            loose = under is None and not (below.end < len(tokens) and tokens[below.end].bare in ("de", "del") and below.value == 1) and (below.whole or _lengthwise(tokens, below.end) or below.value > 1 and (below.end >= len(tokens) or tokens[below.end].sort == "sign")) and (dash or step == end) and not _by_follows(tokens, below.end, language)
            if below.value < most and (under == wanted or (loose and (unit == "ft" or below.value >= 10))):
                value += below.value * measure.UNITS[wanted]
                end = after if under == wanted else below.end
                if loose and unit == "ft" and end + 1 < len(tokens) and tokens[end].low == "in" and tokens[end + 1].bare in words_of("small.beside_inches"):
                    end += 1  # "4 ft 2 in long"
    return Measure("LEN", value, unit, end, number.digits, last)


def _foot_dash(tokens, at: int) -> bool:
    """The dash of 2'-6", as lengths are written."""
    return at + 1 < len(tokens) and tokens[at].low in ("-", "–") and tokens[at - 1].low in ("'", "’") and tokens[at + 1].sort == "number"


def _lengthwise(tokens, end: int) -> bool:
    """ "siete pies once y media de largo": inches, though they are no whole number."""
    said = [token.bare for token in tokens[end : end + 2]]
    return said[:1] == ["long"] or said == ["de", "largo"]


def _by_follows(tokens, at, language: Language) -> bool:
    return at < len(tokens) and tokens[at].bare in ("by", "x", "×", "por")


def _past_of_an(tokens, number, language: Language, units: Units) -> int:
    """three eighths (of an) inch, half (an) inch"""
    at, articles = number.end, language.numbers.articles
    if number.whole or at >= len(tokens):
        return at
    step = at + 1 if tokens[at].bare in ("of", "de") else at
    step = step + 1 if step < len(tokens) and tokens[step].bare in articles else step
    unit = unit_at(tokens, step, units)[0] if step != at else None
    return step if unit in measure.UNITS or unit == "inwg" else at


def _unit_alone(tokens, at, language: Language, units: Units) -> Measure | None:
    """ "inch and a half", "an inch", "a foot and a half", "pulgada y media"; a bare "inch" only before a board."""
    step = at + 1 if tokens[at].bare in language.numbers.articles else at
    if step >= len(tokens) or tokens[step].sort != "word":
        return None
    unit, end = unit_at(tokens, step, units)
    if unit not in ("in", "ft", "m") or len(tokens[step].bare) < 3:
        return None
    one = numbers.Number(Fraction(1), end, False, True)
    if step == at and numbers.with_fraction(tokens, one, language) is None:
        if end < len(tokens) and tokens[end].bare in ("wide", "ancho") and tokens[end].gap == "-":  # "an inch-wide rip"
            return Measure("LEN", measure.UNITS[unit], unit, end, False, Fraction(1))
        if end < len(tokens) and tokens[end].bare == "apart":  # "tabs nine inches long, foot apart"
            return Measure("LEN", measure.UNITS[unit], unit, end, False, Fraction(1))
        if end < len(tokens) and tokens[end].bare in ("board", "panel", "ductboard", "duct"):
            return Measure("LEN", measure.UNITS[unit], unit, end, False, Fraction(1))
        if unit == "m" and tokens[step].bare in table_of("small.one_unit") and not (at and tokens[at - 1].bare in words_of("small.articles")):
            more = _length(tokens, one, unit, end, language, units)
            return more if more.end > end else None  # "metro veinte de largo"; but "con el metro"
        return None
    return _length(tokens, one, unit, end, language, units)


def unit_at(tokens, at: int, units: Units) -> tuple[str | None, int]:
    """The unit that stands at this token and the place behind it; the longest spelling wins."""
    if at >= len(tokens):
        return None, at
    for words, unit in units.get(tokens[at].low, ()) or units.get(tokens[at].bare, ()):
        if all(at + k < len(tokens) and not (word.isdigit() and tokens[at + k].gap) and word in (tokens[at + k].low, tokens[at + k].bare) for k, word in enumerate(words)):
            end = at + len(words)
            if words[0] in ("'", "’") and end < len(tokens) and not tokens[end].gap and tokens[end].sort == "word" and tokens[end].low != "x":
                continue  # "20 'cause that's all I had", "24'til": the mark opens a word
            if words == ("pa",) and end + 1 < len(tokens) and tokens[end].low in ("'", "’") and not tokens[end].gap and tokens[end + 1].sort == "word":
                continue  # "veintiséis pa' atrás"
            if words == ("pa",) and end < len(tokens) and tokens[end].sort == "word" and tokens[end].low != "de" and tokens[at].text != "Pa":
                continue  # "la T 37 pa ver": the short "para"
            if words[-1] in ("in", "ft", "lb", "lbs") and end < len(tokens) and tokens[end].low == "." and _goes_on(tokens, end):
                end += 1
            return unit, end
    return None, at


def _goes_on(tokens, dot: int) -> bool:
    """A dot that shortens a word: the next word does not start a sentence."""
    return dot + 1 < len(tokens) and not tokens[dot + 1].text[:1].isupper() and tokens[dot + 1].sort != "sign"


def _is_in_word(tokens, number, end: int) -> bool:
    """ "comes in", "2 in 12", "six in on the left": the word, not the unit."""
    if tokens[end - 1].low not in ("in",):
        return False
    if not number.digits:
        return True
    if end >= len(tokens):
        return tokens[end - 1].gap != ""
    after = tokens[end]
    if after.low in ("/", "|"):
        return False  # "STAPLES: 2 in / TAPE: …"
    if after.sort == "number" or after.bare in words_of("small.behind_in"):
        return True
    return tokens[end - 1].gap != "" and after.bare not in words_of("small.behind_inches")  # "2in taped", "46 in long"; "4 in, back 18" moves in


def nominal_board(found: Measure) -> Fraction:
    """Metric board is named by nominal inches: 25, 38 and 51 mm are 1, 1-1/2 and 2 in."""
    if found.unit == "mm":
        return _NOMINAL_BOARD.get(found.raw, found.value)
    if found.unit == "cm":
        return _NOMINAL_BOARD.get(found.raw * 10, found.value)
    return found.value
