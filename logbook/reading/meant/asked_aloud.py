"""Questions that a man asks himself aloud, where only commas stand around them: "did I rub it, no, not yet", "flap, no, tabs, no".

The ear hears no sign of a question in a voice that goes on, or falls. What begins as a question and is answered right behind is read as one, and so is a
whole sentence in which the verb stands before who did it: "Did I rub it. Honestly, no."
"""

from __future__ import annotations

from logbook.languages import LANGUAGES
from logbook.reading.words.phrasing import word
from logbook.reading.words.spelled import Cut
from logbook.reading.meant.thoughts import PAUSES, STOPS, begins, between_signs
from logbook.reading.words.tokens import Token, plain


def questions(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """The commas that are signs of a question or end its answer, in order."""
    words = LANGUAGES[code].thoughts
    low = {token.low for token in found}
    if words.asks.isdisjoint(low) and words.answers.isdisjoint(low):
        return ()
    flatly = _asked_flatly(text, found, code)
    if "," not in low:
        return flatly
    parts = list(between_signs(found))
    said = [plain(text[found[first].start : found[last - 1].end]) for first, last in parts]
    made = {cut.start: cut for cut in (*_ticks(found, parts, said, code), *flatly)}
    for place in range(len(parts) - 1):
        (first, last), (begin, end) = parts[place], parts[place + 1]
        if end < len(found) and found[end].low == "?":
            continue  # "how far apart do the staples go, two or three?"
        if begin != last + 1 or found[last].low not in PAUSES or not begins(found, first, last, words.leads, words.asks):
            continue
        asked = word(code, "thoughts.asked").match(said[place]) is not None and word(code, "thoughts.replies").match(said[place + 1]) is not None
        if not asked and (word(code, "thoughts.asked_what").match(said[place]) is None or word(code, "thoughts.told").match(said[place + 1]) is None):
            continue
        made[found[last].start] = Cut(found[last].start, found[last].end, "?")
        if place and parts[place - 1][1] == first - 1 and found[first - 1].low in PAUSES:
            begun = parts[place - 1][0]
            if first - 1 - begun <= 2 and found[first - 2].low in {token.low for token in found[first:last]}:
                made[found[begun].start] = Cut(found[begun].start, found[first].start, "")  # "vanes, where are the vanes, none": named, and asked for
            elif word(code, "thoughts.part").fullmatch(said[place - 1]) is None:
                made.setdefault(found[first - 1].start, Cut(found[first - 1].start, found[first - 1].end, "."))
        if asked and end < len(found) and found[end].low in PAUSES and word(code, "thoughts.yes_or_no").fullmatch(said[place + 1]) and place + 2 < len(parts) and word(code, "thoughts.goes_on").match(said[place + 2]) is None:
            made[found[end].start] = Cut(found[end].start, found[end].end, ".")
    return tuple(sorted(made.values(), key=lambda cut: cut.start))


def _asked_flatly(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """The stops behind sentences that ask by the order of their words alone."""
    words = LANGUAGES[code].thoughts
    made, first = [], 0
    for at, token in enumerate(found):
        if token.low not in STOPS:
            continue
        begin = first
        while begin < at and (found[begin].low in words.leads or found[begin].low in PAUSES) and found[begin].low not in words.asks:
            begin += 1
        if token.low == "." and begin < at - 1 and found[begin].low in words.asks and word(code, "thoughts.asked_flatly").match(plain(text[found[begin].start : token.start])) is not None:
            made.append(Cut(token.start, token.end, "?"))
        first = at + 1
    return tuple(made)


def _ticks(found: tuple[Token, ...], parts: list[tuple[int, int]], said: list[str], code: str) -> list[Cut]:
    """ "Flap, no, tabs, no": two things or more, each with its own answer."""
    if LANGUAGES[code].thoughts.answers.isdisjoint([token.low for token in found]):
        return []
    made: list[Cut] = []
    place = 0
    while place < len(parts):
        run: list[int] = []
        while place + 2 * len(run) + 1 < len(parts) and _is_tick(found, parts, said, place + 2 * len(run), code):
            run.append(place + 2 * len(run))
        if len(run) > 1:
            made += [Cut(found[parts[at][1]].start, found[parts[at][1]].end, "?") for at in run]
            made += [Cut(found[end].start, found[end].end, ".") for at in run if (end := parts[at + 1][1]) < len(found) and found[end].low in PAUSES]
        place += max(1, 2 * len(run))
    return made


def _is_tick(found: tuple[Token, ...], parts: list[tuple[int, int]], said: list[str], at: int, code: str) -> bool:
    follows = parts[at + 1][0] == parts[at][1] + 1 and found[parts[at][1]].low in PAUSES
    return follows and word(code, "thoughts.thing").fullmatch(said[at]) is not None and word(code, "thoughts.yes_or_no").fullmatch(said[at + 1]) is not None
