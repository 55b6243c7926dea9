"""Numbers spelled out as people say them, for the laws of the reader; written apart from the reader's own grammar."""

from __future__ import annotations

from fractions import Fraction

_ONES = {
    "en": "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(),
    "es": "cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve "
    "veinte veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve".split(),
}
_TENS = {
    "en": "_ _ twenty thirty forty fifty sixty seventy eighty ninety".split(),
    "es": "_ _ veinte treinta cuarenta cincuenta sesenta setenta ochenta noventa".split(),
}
_PARTS = {
    "en": {2: ("half", "halves"), 4: ("quarter", "quarters"), 8: ("eighth", "eighths"), 16: ("sixteenth", "sixteenths")},
    "es": {2: ("medio", "medios"), 4: ("cuarto", "cuartos"), 8: ("octavo", "octavos"), 16: ("dieciseisavo", "dieciseisavos")},
}


def spelled(value: Fraction, language: str) -> str:
    """14-3/8 is "fourteen and three eighths", "catorce y tres octavos". Whole part below 100, not zero."""
    whole, part = divmod(value.numerator, value.denominator)
    words = _whole(whole, language)
    if not part:
        return words
    one = part == 1
    name = _PARTS[language][value.denominator][0 if one else 1]
    if language == "es":
        return f"{words} y media" if value.denominator == 2 else f"{words} y {'un' if one else _whole(part, 'es')} {name}"
    return f"{words} and {'a' if one else _whole(part, 'en')} {name}"


def _whole(number: int, language: str) -> str:
    ones = _ONES[language]
    if number < len(ones):
        return ones[number]
    ten, one = divmod(number, 10)
    between = " y " if language == "es" else "-"
    return _TENS[language][ten] + (between + ones[one] if one else "")
