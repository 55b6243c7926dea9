"""Two texts are compared as a reader of notes would: numbers as digits, no case, no punctuation, one spelling."""

from __future__ import annotations

import re

ONES = {w: n for n, w in enumerate(
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen"
    " eighteen nineteen".split())} | {"first": 1}  # fmt: skip
TENS = {w: 10 * n for n, w in enumerate("x x twenty thirty forty fifty sixty seventy eighty ninety".split()) if n > 1}
UNOS = {w: n for n, w in enumerate(
    "cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete"
    " dieciocho diecinueve veinte veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete"
    " veintiocho veintinueve".split())}  # fmt: skip
DIECES = {w: 10 * n for n, w in enumerate("x x x treinta cuarenta cincuenta sesenta setenta ochenta noventa".split()) if n > 2}
SAME = {"mister": "mr", "inches": "inch", "pulgadas": "pulgada", "okay": "ok", "degrees": "degree", "colour": "color"}


def fold(text: str, language: str) -> list[str]:
    text = text.casefold()
    text = re.sub(r"one eighty-one a (\w)\b", r"181a\1", text)
    text = re.sub(r"181[\s-]*a[\s-]*([phm])\b", r"181a\1", text)
    text = re.sub(r"(\d)\s*[x×]\s*(\d)", r"\1 by \2" if language == "en" else r"\1 por \2", text)
    text = re.sub(r'(\d)\s*(?:"|\'\')', r"\1 inch", text)
    text = re.sub(r"(\d)(?:th|st|nd|rd)\b", r"\1", text).replace("-", " ")
    said = re.findall(r"[^\W_]+", text)
    ones, tens, joint = (ONES, TENS, None) if language == "en" else (UNOS, DIECES, "y")
    out: list[str] = []
    at = 0
    while at < len(said):
        word = said[at]
        if word in tens:
            value, step = tens[word], 1
            rest = said[at + 1 : at + 3]
            if joint and rest[:1] == [joint] and len(rest) == 2 and ones.get(rest[1], 99) < 10:
                value, step = value + ones[rest[1]], 3
            elif not joint and rest and 0 < ones.get(rest[0], 99) < 10:
                value, step = value + ones[rest[0]], 2
            out.append(str(value))
            at += step
        else:
            out.append(str(ones[word]) if word in ones else SAME.get(word, word))
            at += 1
    return out


def errors(said: list[str], heard: list[str]) -> int:
    """Words to change, drop or add."""
    row = list(range(len(heard) + 1))
    for i, a in enumerate(said, 1):
        before, row[0] = row[0], i
        for j, b in enumerate(heard, 1):
            before, row[j] = row[j], min(row[j] + 1, row[j - 1] + 1, before + (a != b))
    return row[-1]
