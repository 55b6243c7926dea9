"""A number set right by itself behind what was told with it: "straight 17, … every two. Wait, that's sixteen I'm holding, not seventeen", "… It's not two, it's three".

The wrong number must stand once in the note: the name of the last piece that was named, or what was measured or counted of it.
"""

from __future__ import annotations

import re

from logbook.languages import LANGUAGES
from logbook.reading.meant.bare_names import numbers_said
from logbook.reading.words.phrasing import rows, word
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import Token, plain


def cuts(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """The right number in the place of the wrong one, and nothing where it was set right."""
    words = LANGUAGES[code].number_set_right
    said = plain(text)
    if len(said) != len(text) or not any(cue in said for cue in words.cues):
        return ()
    numbers = [(found[first].start, found[last - 1].end, value) for first, last, value in numbers_said(found, code)[0]]
    drawn, places = _drawn(said, numbers)
    for pattern in rows(code, "number_set_right.fixes"):
        for fix in pattern.finditer(drawn):
            if (made := _set_right(text, drawn, places, numbers, fix, code)) is not None:
                return made
    return ()


def _set_right(text: str, drawn: str, places: list[int], numbers: list[tuple[int, int, int]], fix: re.Match[str], code: str) -> tuple[Cut, ...] | None:
    named = list(word(code, "number_set_right.named").finditer(drawn[: fix.start()]))
    wrong, right = fix.group("n"), fix.group("m")
    start, end = places[fix.start()], places[fix.end()]
    told = [value for first, _, value in numbers if not start <= first < end]
    marks = [one.group("n") for one in named]
    if not marks or wrong == right or told.count(int(wrong)) != 1 or right in marks or wrong in marks[:-1]:
        return None
    first, last, _ = next(one for one in numbers if one[2] == int(wrong) and not start <= one[0] < end)
    if first > start:
        return None
    here = next(one for one in numbers if one[0] == places[fix.start("m") - 1])
    return (Cut(first, last, text[here[0] : here[1]]), Cut(start, end, ""))


def _drawn(said: str, numbers: list[tuple[int, int, int]]) -> tuple[str, list[int]]:
    """The words with the numbers as `<7>`, and of each of its letters the place in the note."""
    made, places, at = [], [], 0
    for start, end, value in numbers:
        sign = f"<{value}>"
        made += [said[at:start], sign]
        places += [*range(at, start), *([start] * len(sign))]
        at = end
    return "".join((*made, said[at:])), [*places, *range(at, len(said) + 1)]
