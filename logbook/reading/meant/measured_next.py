"""What was measured of one piece and then of the next by the number alone is said of that one too: "27 is hung every six feet, 28 every nine".

The thing that is measured and its unit are said once; they are put in again behind the next piece, and the word for a piece before its bare number. Nothing is
added where the words before tell of two things that are measured, or deny, ask or plan one.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from logbook.languages import LANGUAGES
from logbook.languages.measured_next import Measured, MeasuredNext
from logbook.reading.words.phrasing import word
from logbook.reading.words.spelled import Cut
from logbook.reading.words import measures
from logbook.reading.words.items import book
from logbook.reading.words.tokens import Token, plain, tokens

_LEAST = 13  # a bare number from here on counts nothing
_SENTENCE = re.compile(r"[.?!] ")
_BEFORE = 110  # letters of the words before that are looked at


def cuts(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """What is left out and put in, in order."""
    words = LANGUAGES[code].measured_next
    said = plain(text)
    if len(said) != len(text) or not any(cue in said for cue in words.cues):
        return ()
    made = _apart(said, words, code) if any(cue in said for cue in words.apart_cues) else []
    for where, match in _found(said, code):
        if any(cut.start < match.end() and match.start() < cut.end for cut in made):
            continue
        before = _SENTENCE.split(said[max(0, match.start() - _BEFORE) : match.start()].rstrip(" ,;."))[-1]
        thing = _measured(before, words, code)
        if thing is not None and _is_piece(match) and _may_be(match.group("v"), thing, before, code) and not _of_another(match, before, words):
            made += _put_in(match, thing, words, before, code, where)
    return tuple(sorted(made, key=lambda cut: cut.start))


def _may_be(value: str, thing: Measured, before: str, code: str) -> bool:
    """Whether the number is one of such a thing: an elbow of ninety is not stapled every ninety."""
    return word(code, "measured_next.metric").search(before) is not None or re.match(thing.value, value) is not None


def _of_another(match: re.Match[str], before: str, words: MeasuredNext) -> bool:
    """ "Stapled every two. 47 has five eighths legs": the thing that is named with the measure is not the one measured before."""
    behind = (match.groupdict().get("t") or "").split()
    return any(noun in behind and noun not in before for noun in words.nouns)


def _found(said: str, code: str) -> Iterator[tuple[str, re.Match[str]]]:
    """The places where the next piece stands before its measure, and where it stands behind it."""
    yield from (("behind", match) for match in word(code, "measured_next.behind").finditer(said))
    for one in word(code, "measured_next.told_so").finditer(said):
        match = word(code, "measured_next.ahead").match(said, one.end("end"))
        if match is not None:
            yield "ahead", match


def _is_piece(match: re.Match[str]) -> bool:
    if match.group("k") or match.group("n"):
        return True
    digits = re.sub(r"\D", "", match.group("m"))
    return bool(digits) and int(digits) >= _LEAST and (match.group("m") == digits or bool(match.group("on")))


def _measured(before: str, words: MeasuredNext, code: str) -> Measured | None:
    """The one thing that the words before measure, of a piece that they name."""
    if word(code, "measured_next.names").search(before) is None:
        return None
    return _thing(before, words, code)


def _thing(before: str, words: MeasuredNext, code: str) -> Measured | None:
    if word(code, "measured_next.ends").search(before) is None or word(code, "measured_next.unless").search(before) is not None:
        return None
    told = [one for one in words.things if re.search(one.told, before) is not None]
    if len(told) == 2 and told[0] is words.things[0] and told[1] is words.things[1] or len(told) == 2 and told[0] is words.things[-2]:
        return told[0]  # legs are the staples', how long tabs are is nearer than how far apart
    return told[0] if len(told) == 1 else None


def _put_in(match: re.Match[str], thing: Measured, words: MeasuredNext, before: str, code: str, where: str) -> list[Cut]:
    value = match.group("v")
    unit = match.group("u").strip(" -") or _unit(value, thing, before, code)
    says = thing.says.format(v=value, u=unit)
    named = "" if match.group("k") or match.group("n") else words.number
    if where == "behind":
        return [*([Cut(*match.span("on"), "")] if match.group("on") else []), Cut(match.start("m"), match.start("m"), named), Cut(match.end("m"), match.end("end"), f" {says}")]
    return [Cut(match.start("v") - len(_led(match)), match.end("on"), ""), Cut(match.start("m"), match.start("m"), named), Cut(match.end("m"), match.end("m"), f" {says}")]


def _led(match: re.Match[str]) -> str:
    """The words between the joint and the measure."""
    return match.group()[match.end("j") - match.start() + 1 : match.start("v") - match.start()]


def _unit(value: str, thing: Measured, before: str, code: str) -> str:
    metric = word(code, "measured_next.metric").search(before)
    if metric is not None:
        return metric.group()
    return "inches" if thing.unit == "feet" and re.search(r"hundred|ty\b|[3-9]\d$|1\d\d", value) else thing.unit


def _apart(said: str, words: MeasuredNext, code: str) -> list[Cut]:
    """One measure of the whole and another of a part that is set apart: the worse of the two is that of the piece."""
    made: list[Cut] = []
    for match in word(code, "measured_next.apart").finditer(said):
        start = max(0, match.start() - _BEFORE)
        before = _SENTENCE.split(said[start : match.start()])[-1].rstrip(" ,")
        thing = _thing(before, words, code)
        begin = match.start() - (len(said[:match.start()]) - len(said[:match.start()].rstrip(" ,"))) - len(before)
        led = word(code, "measured_next.led").search(before)
        past = before[: led.start()].rstrip() if led is not None else ""
        whole = list(word(code, "measured_next.said").finditer(past if word(code, "measured_next.ends").search(past) else before))
        if thing is None or not whole or not _may_be(match.group("v"), thing, before, code):
            continue
        whole = whole[-1]
        one, other = _number(whole.group("n"), code), _number(match.group("v"), code)
        if one is None or other is None:
            continue
        if one == other or (other > one) is thing.least:
            made.append(Cut(match.start("x"), match.end("t"), ""))
            continue
        behind = before[whole.end("u") :] if match.group("u") else before[whole.end("n") :]
        made += [Cut(begin + whole.start("n"), match.end("x"), ""), Cut(match.end("u"), match.end("t"), behind)]
    return made


def _number(words: str, code: str) -> Fraction | None:
    found = tokens(words)
    lexicon = book(code)
    one = measures.read(found, 0, lexicon.language, lexicon.units) if found else None
    return one.value if one is not None and one.end == len(found) else None
