"""A note without what is uttered between its words: "no, uh, vanes" is read as "no vanes", "I, I taped it" as "I taped it", "sta- stapled" as "stapled".

What stands between two words is weighed by these two: where the first ends no sentence or the second begins none, they belong together whatever sign was
heard there, and else the pause counts as a comma. A line that ends without a sign ends a sentence.
"""

from __future__ import annotations

from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.fluent import Fluent
from logbook.reading.words.spelled import Cut
from logbook.reading.meant.thoughts import passed_over
from logbook.reading.words.tokens import Token

_PAUSES = frozenset((",", "-", "–", "—", "…", ";"))
_STOPS = frozenset((".", "!", "?"))
_DASHES = frozenset(("-", "–", "—"))
_MOST_AGAIN = 3  # words said twice in a row
_NEAR = _MOST_AGAIN + 3  # tokens: the pause between is no longer than three
_FULL_LINE = 60  # letters: a line as long as this was broken by the width of the page


def smoothed(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """What is uttered between the words, pauses and ends of lines, with the signs that stand in their place, in order."""
    words = LANGUAGES[code].fluent
    if not words.sounds:
        return ()
    low = {token.low for token in found}
    heard = not words.sounds.isdisjoint(low) or not words.assures.isdisjoint(low) or "," in low and any(said[0] in low for said in words.between_commas)
    thought = passed_over(text, found, code)
    if not heard and not thought and "\n" not in text and "..." not in text:
        return ()
    dropped = thought | (_dropped(found, words) if heard else set())
    made, at = [], 0
    while at < len(found):
        first = at
        while at < len(found) and (at in dropped or found[at].low in _PAUSES or found[at].low in _STOPS):
            at += 1
        means = _instead(text, found, first, at, dropped, words, code)
        start, end = found[first - 1].end if first else 0, found[at].start if at < len(found) else len(text)
        if means is not None and means != text[start:end]:
            made.append(Cut(start, end, means))
            if means == "" or means[0] in _STOPS:
                made += _large(found, at)
        at += 1
    return tuple(made)


def _large(found, at: int) -> list[Cut]:
    """The first letter of a sentence, where what was uttered before it had the large one."""
    token = found[at] if at < len(found) else None
    return [Cut(token.start, token.start + 1, token.text[0].upper())] if token is not None and token.text[0].islower() else []


def _dropped(found: tuple[Token, ...], words: Fluent) -> set[int]:
    """The places of what is uttered and means nothing."""
    made: set[int] = set()
    for at, token in enumerate(found):
        if token.low in words.sounds and token.gap != "-" and not (at + 1 < len(found) and found[at + 1].gap == "-"):
            made.add(at)
        if token.low in words.assures and _assures(found, at, words):
            made.add(at)
        if token.low != ",":
            continue
        for said in words.between_commas:
            end = at + 1 + len(said)
            if tuple(one.low for one in found[at + 1 : end]) == said and end < len(found) and found[end].low == "," and not _is_number(found, end + 1, words):
                made.update(range(at + 1, end))
    return made


def _assures(found, at: int, words: Fluent) -> bool:
    """ "it isn't actually taped", "I honestly never got there": beside the denial that it assures."""
    before = found[at - 1].low if at else ""
    behind = found[at + 1].low if at + 1 < len(found) else ""
    return before in words.denials or before in words.speakers and behind in words.denials


def _is_number(found, at: int, words: Fluent) -> bool:
    return at < len(found) and (found[at].sort == "number" or found[at].low in words.counts)


def _instead(text: str, found, first: int, last: int, dropped: set[int], words: Fluent, code: str) -> str | None:
    """What is read between the words before `first` and from `last` on; None: what stands there."""
    signs = [found[at].low for at in range(first, last) if at not in dropped]
    stop = next((sign for sign in signs if sign in _STOPS), None)
    uttered = len(signs) < last - first
    dots = signs.count(".") > 1
    lines = first > 0 and last < len(found) and not _end_it(signs) and _ends_a_line(text, found[first - 1], found[last])
    if not (uttered or dots or lines):
        return None
    if first == 0:
        return ""
    if last == len(found):
        return stop or ""
    if joined(found, first - 1, last, words) or _measured(found, first - 1, last, words, code) if uttered else found[first - 1].low in words.open:
        return " "
    if lines or stop is not None and not (dots and _goes_on(found[last])):
        return f"{stop or '.'} "
    return ", " if signs else " "


def _measured(found, before: int, behind: int, words: Fluent, code: str) -> bool:
    """ "it goes back, uh, fifteen inches": how far, heard behind a moment's thought; "it's in, uh, four sides taped" begins anew."""
    if found[before].low not in words.before_measure or not (found[behind].sort == "number" or found[behind].low in _number_words(code)):
        return False
    return not (behind + 1 < len(found) and found[behind + 1].low in ("side", "sides", "staple", "staples"))


def _goes_on(token: Token) -> bool:
    """Whether a word behind dots goes on with the sentence: one that is written small, or "I"."""
    return token.text[0].islower() or token.low.split("'")[0] == "i"


def _end_it(signs: list[str]) -> bool:
    return bool(signs) and signs[0] not in _DASHES


def _ends_a_line(text: str, before: Token, behind: Token) -> bool:
    """Whether a line ends between these two, and not only because the page was full."""
    between = text[before.end : behind.start]
    if "\n" not in between:
        return False
    full = before.end - (text.rfind("\n", 0, before.end) + 1) > _FULL_LINE
    return not (full and behind.text[0].islower() and between.count("\n") == 1)


def joined(found, before: int, behind: int, words: Fluent) -> bool:
    """Whether these two words belong together, so that no sign can stand between them."""
    one, other = found[before].low, found[behind].low
    earlier = found[before - 1].low if before else ""
    if other in words.bound or other in words.leans:
        return True
    if one in words.binds:
        return one not in words.answers or not (earlier in _PAUSES or earlier in _STOPS) or other in words.things
    if found[before].sort == "number" or one in words.counts:
        return other in words.counted and earlier not in words.numbered and not earlier.endswith("ed") and found[before].gap != "-"
    if one in words.numbered and _is_number(found, behind, words):
        return not (behind + 1 < len(found) and found[behind + 1].low in words.numbered)
    return other in words.verbs and not one.endswith("ed") and not (one in words.leans and earlier.endswith("ed"))


def once(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """What is said twice, or begun and said again whole, in order."""
    words = LANGUAGES[code].fluent
    if not words.sounds:
        return ()
    made, at = [], 0
    low = [token.low for token in found]
    while at < len(found) - 1:
        near = low[at + 1 : at + 1 + _NEAR]
        behind = _again(found, at, words, code) if (low[at] in near or near[0] in _DASHES or found[at + 1].gap == "-") and found[at].sort != "sign" else None
        if behind is None:
            at += 1
            continue
        made.append(Cut(found[at].start, found[behind].start, ""))
        at = behind
    return tuple(made)


def _again(found, at: int, words: Fluent, code: str) -> int | None:
    """Where what begins here is said once more, right behind or past a pause."""
    first = found[at].low
    for many in range(_MOST_AGAIN, 0, -1):
        last = at + many
        behind = last
        while behind < len(found) and found[behind].low in _PAUSES or found[behind : behind + 1] and found[behind].low == "." and behind - last < 3 and _dots(found, last):
            behind += 1
        if behind + many > len(found) or any(one.low != other.low or one.sort == "sign" for one, other in zip(found[at:last], found[behind : behind + many])):
            continue
        paused, once_more = behind > last, found[at:last]
        if paused and many > 1 and at and found[at - 1].low in words.denies:
            continue  # "wait, not the end cap, the end cap isn't taped": told of once more
        numbers = many > 1 and not _number_words(code).isdisjoint([one.low for one in once_more]) or any(one.sort == "number" for one in once_more)
        if numbers:
            goes_on = behind + many < len(found) and found[behind + many].gap == "-" and many > 1
            if paused and (found[last - 1].low in words.binds or goes_on):
                return behind  # "twenty by, twenty by ten", "back twenty, back twenty-four"
            continue
        if first in words.says_again and (many > 1 or len(first) > 1 or found[at].text == found[behind].text) or paused and (many > 1 or found[last].low != ","):
            return behind
        if first in words.again_at_once and not paused:
            return behind
    return _begun(found, at)


@cache
def _number_words(code: str) -> frozenset[str]:
    numbers = LANGUAGES[code].numbers
    return frozenset((*numbers.ones, *numbers.teens, *numbers.tens, *numbers.hundreds))


def _dots(found, at: int) -> bool:
    return [one.low for one in found[at : at + 2]] == [".", "."]


def _begun(found, at: int) -> int | None:
    """ "sta- stapled": the word that was broken off, where the whole of it comes right behind."""
    part = found[at]
    behind = at + 1
    if found[behind].low in _DASHES and found[behind].gap == "":
        behind += 1
    elif found[behind].gap != "-" or len(part.low) < 2:
        return None
    whole = found[behind] if behind < len(found) else None
    begins = whole is not None and whole.sort == "word" and part.text.islower() and len(whole.low) > len(part.low) and whole.low.startswith(part.low)
    return behind if begins else None
