"""Numbers in words and digits, exactly: 14, fourteen, 14-3/8, fourteen and three eighths, one oh five.

Every function takes the tokens and a place and answers what it read there and the place behind it, or None.
"""

from __future__ import annotations

from fractions import Fraction

from logbook.languages.language import Language
from logbook.reading.words.phrasing import words_of
from logbook.reading.words.tokens import Token
from logbook.record import record

_VULGAR = {
    "¼": Fraction(1, 4), "½": Fraction(1, 2), "¾": Fraction(3, 4), "⅓": Fraction(1, 3), "⅔": Fraction(2, 3),
    "⅛": Fraction(1, 8), "⅜": Fraction(3, 8), "⅝": Fraction(5, 8), "⅞": Fraction(7, 8),
}  # fmt: skip


@record
class Number:
    value: Fraction
    end: int  # the token behind it
    digits: bool  # written in digits
    whole: bool  # no fraction said


def whole(tokens: tuple[Token, ...], at: int, language: Language) -> Number | None:
    """A cardinal or a decimal: 105, one oh five, treinta y seis, twelve point five, 14.375."""
    if at >= len(tokens):
        return None
    token = tokens[at]
    if token.sort == "number":
        if token.low in _VULGAR:
            return None
        figures = token.low.replace(",", "")
        value = Fraction(int(figures)) if figures.isdecimal() else Fraction(figures)
        return Number(value, at + 1, True, value.denominator == 1)
    if token.sort != "word":
        return None
    if token.bare in language.numbers.point and (not at or tokens[at - 1].bare not in words_of("small.some_point")):  # "static point four"
        part = _after_point(tokens, Number(Fraction(0), at, False, True), language)
        return part if part.end > at else None
    said = _cardinal(tokens, at, language)
    return said and _after_point(tokens, said, language)


def _cardinal(tokens, at, language: Language) -> Number | None:
    numbers = language.numbers
    value, end = _below_hundred(tokens, at, numbers)
    if value is None and tokens[at].bare in numbers.hundreds:
        value, end = numbers.hundreds[tokens[at].bare], at + 1
        more, after = _below_hundred(tokens, end, numbers)
        if more is not None and tokens[at].bare != "cien":
            value, end = value + more, after
    if value is None and tokens[at].bare in numbers.articles and _is(tokens, at + 1, numbers.scales):
        value, end = 1, at + 1
    hundred = value is None and tokens[at].bare == "hundred" and not (at and tokens[at - 1].bare in ("couple", "few", "several", "of", "and")) and "hundred" in numbers.scales
    if value is None and tokens[at].bare in numbers.scales and (tokens[at].bare == "mil" or hundred):
        value, end = 1, at
    if value is None:
        return None
    if 1 <= value <= 99 and tokens[at].sort == "word" and _is(tokens, end, numbers.zero_between) and not _is(tokens, end, numbers.joins):  # one oh five
        unit, after = _below_hundred(tokens, end + 1, numbers)
        if unit is not None and unit <= 9:
            return Number(Fraction(value * 100 + unit), after, False, True)
    if 1 <= value <= 9 and numbers.zero_between and end < len(tokens) and tokens[end].gap == "-":  # "one-ten", "two-oh-four", "one-twenty-one"; a slope is "two-twelve"
        below, after = _below_hundred(tokens, end, numbers)
        sloped = _is(tokens, after, _SLOPES) or any(tokens[k].bare in _SLOPES for k in range(max(0, at - 2), at))
        if below is not None and below >= 10 and not sloped and not _is(tokens, after, numbers.parts):
            return Number(Fraction(value * 100 + below), after, False, True)
    while _is(tokens, end, numbers.scales):
        value, end = value * numbers.scales[tokens[end].bare], end + 1
        skip = end + 1 if _is(tokens, end, numbers.joins) else end
        if value >= 1000 and _is(tokens, skip, numbers.hundreds):
            value, end = value + numbers.hundreds[tokens[skip].bare], skip + 1
            skip = end
        more, after = _below_hundred(tokens, skip, numbers)
        if more is not None and not _is(tokens, after, numbers.parts):
            value, end = value + more, after
    return Number(Fraction(value), end, False, True)


_SLOPES = ("pitch", "slope", "taper")


def _below_hundred(tokens, at, numbers) -> tuple[int | None, int]:
    if at >= len(tokens) or tokens[at].sort != "word":
        return None, at
    word = tokens[at].bare
    if word in numbers.tens:
        step = at + 2 if _is(tokens, at + 1, numbers.joins) and "y" in numbers.joins else at + 1
        if _is(tokens, step, numbers.ones) and 0 < numbers.ones[tokens[step].bare] and not (_is(tokens, step + 1, numbers.parts) and numbers.ones[tokens[step].bare] < numbers.parts[tokens[step + 1].bare]):
            return numbers.tens[word] + numbers.ones[tokens[step].bare], step + 1
        return numbers.tens[word], at + 1
    if word in numbers.teens:
        return numbers.teens[word], at + 1
    if word in numbers.ones:
        return numbers.ones[word], at + 1
    if word.endswith("s") and at and tokens[at - 1].bare in ("by", "x"):  # "two ten by tens"
        for single in (word[:-1], word[:-2]):
            value = numbers.teens.get(single) or numbers.ones.get(single) or numbers.tens.get(single)
            if value is not None:
                return value, at + 1
    return None, at


def _after_point(tokens, number: Number, language: Language) -> Number:
    """twelve point five, twelve point three seven five"""
    if not _is(tokens, number.end, language.numbers.point):
        return number
    digits, at = "", number.end + 1
    while at < len(tokens):
        if _is(tokens, at, language.numbers.ones):
            digits += str(language.numbers.ones[tokens[at].bare])
        elif _is(tokens, at, language.numbers.zero_between):
            digits += "0"
        else:
            break
        at += 1
    if not digits:
        value, after = _below_hundred(tokens, at, language.numbers)
        if value is None:
            return number
        digits, at = str(value), after
    return Number(number.value + Fraction(int(digits), 10 ** len(digits)), at, False, False)


def fraction(tokens: tuple[Token, ...], at: int, language: Language) -> Number | None:
    """A part of one: 3/8, three eighths, a half, half, quarter, tres octavos."""
    if at >= len(tokens):
        return None
    token, numbers = tokens[at], language.numbers
    if token.low in _VULGAR:
        return Number(_VULGAR[token.low], at + 1, True, False)
    if token.sort == "number":
        if token.low.isdigit() and _sign(tokens, at + 1, "/") and at + 2 < len(tokens) and tokens[at + 2].low.isdigit():
            under = int(tokens[at + 2].low)
            if 0 < at < len(tokens) - 3 and tokens[at - 1].low in ("x", "×") and tokens[at + 3].low in ("x", "×"):
                return None  # "20x10/16x10": two sizes
            if (tokens[at + 1].gap or tokens[at + 2].gap) and not (under in (2, 4, 8, 16, 32) and int(token.low) < under and not _sign_of_size(tokens, at + 3)):
                return None  # "14x8 / 30": the stroke parts two things
            return Number(Fraction(int(token.low), under), at + 3, True, False) if under else None
        if token.low.isdigit() and _is(tokens, at + 1, numbers.parts) and not (token.low != "1" and tokens[at + 1].bare in numbers.halves):
            return Number(Fraction(int(token.low), numbers.parts[tokens[at + 1].bare]), at + 2, True, False)
        return None
    if token.sort != "word":
        return None
    over, end = _below_hundred(tokens, at, numbers)
    if over is not None and over > 0:
        end = end + 1 if _is(tokens, end, numbers.articles) and _is(tokens, end + 1, numbers.parts) else end
        part = _part(tokens, end, numbers)
        return Number(Fraction(over, part[0]), part[1], False, False) if part and over < part[0] else None  # "twelve half inch staples" are two measures
    step = at + 1 if token.bare in numbers.articles else at
    if _is(tokens, step, numbers.halves):
        return Number(Fraction(*numbers.halves[tokens[step].bare]), step + 1, False, False)
    part = _part(tokens, step, numbers) if step > at else None
    return Number(Fraction(1, part[0]), part[1], False, False) if part else None


def _part(tokens, at, numbers) -> tuple[int, int] | None:
    """A denominator: eighths, or thirty-seconds as two tokens."""
    if _is(tokens, at, numbers.tens) and at + 1 < len(tokens):
        pair = f"{tokens[at].bare}-{tokens[at + 1].bare}"
        if pair in numbers.parts:
            return numbers.parts[pair], at + 2
    return (numbers.parts[tokens[at].bare], at + 1) if _is(tokens, at, numbers.parts) else None


def mixed(tokens: tuple[Token, ...], at: int, language: Language) -> Number | None:
    """A whole number with or without a fraction behind it, or a fraction alone."""
    part = fraction(tokens, at, language)
    if part is not None:
        return part
    number = whole(tokens, at, language)
    if number is None or not number.whole:
        return number
    return with_fraction(tokens, number, language) or number


def with_fraction(tokens, number: Number, language: Language) -> Number | None:
    """ "fourteen and three eighths", "12 1/2", "12-1/2", "catorce y media"; None where no fraction follows."""
    at = number.end
    if _is(tokens, at, language.numbers.joins):
        part = fraction(tokens, at + 1, language)
        part = part or _as_written_down(tokens, at - 2, at + 1, language)
        if part is None and not number.digits and _is(tokens, at + 1, ("cuarto", "quarter", "eighth", "octavo")):  # "uno y cuarto"
            part = Number(Fraction(1, language.numbers.parts[tokens[at + 1].bare]), at + 2, False, False)
    else:
        part = fraction(tokens, at, language)
        if part is not None and not part.digits and tokens[at].bare in language.numbers.halves:
            part = None  # "eighteen half inch staples" are two things
        if part is not None and part.digits and not number.digits:
            part = None
    if part is None or part.value >= 1:
        return None
    if part.digits and _is(tokens, at, language.numbers.joins) and _is(tokens, part.end, _FASTENED_WITH):
        return None  # "18 by 12 and 3/8 staples" are two things
    return Number(number.value + part.value, part.end, number.digits, False)


_FASTENED_WITH = ("staple", "staples", "grapa", "grapas")
_LEADS_TO_A_LENGTH = ("to", "in", "back", "over", "at", "long", "length", "down", "up", "out", "by", "x", "a", "de", "por", "baja", "entra", "atras", "sube")


def _as_written_down(tokens, before: int, at: int, language: Language) -> Number | None:
    """ "and 5-8", "and an 8th": so the ears write five eighths and an eighth. Read only behind "and", and only where the halves of an inch leave one reading."""
    step = at + 1 if _is(tokens, at, language.numbers.articles) else at
    if step + 1 >= len(tokens) or not tokens[step].low.isdigit():
        return None
    number, behind = int(tokens[step].low), tokens[step + 1]
    if behind.low in ("th", "ths") and behind.gap == "" and number in (8, 16):
        return Number(Fraction(1, number), step + 2, True, False)
    led = before >= 0 and tokens[before].bare in _LEADS_TO_A_LENGTH  # "straights 4 and 5-8" are pieces
    if step == at and behind.low == "," and behind.gap == "" and step + 2 < len(tokens) and tokens[step + 2].low in ("4", "8", "16") and number % 2 and number < int(tokens[step + 2].low):  # "40 and 3, 4 inches"
        unit = step + 3 < len(tokens) and tokens[step + 3].low in ("inch", "inches", "in", '"', "long")
        return Number(Fraction(number, int(tokens[step + 2].low)), step + 3, True, False) if led or unit else None
    if led and step == at and behind.gap == "-" and behind.low in ("8", "16") and number % 2 and number < int(behind.low):
        return Number(Fraction(number, int(behind.low)), step + 2, True, False)
    return None


def _sign_of_size(tokens, at: int) -> bool:
    return at < len(tokens) and tokens[at].low in ("x", "×", "by", "por", '"')


def _is(tokens, at: int, words) -> bool:
    return at < len(tokens) and tokens[at].sort == "word" and tokens[at].bare in words


def _sign(tokens, at: int, sign: str) -> bool:
    return at < len(tokens) and tokens[at].low == sign
