"""An "and" where a breath was: "taped and not yet" is read as "taped, not yet", "taped, no and stapled" as two sentences; "stapled and taped, not yet" asks for both and denies both."""

from __future__ import annotations

from logbook.languages import LANGUAGES
from logbook.reading.words.phrasing import word
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import Token, plain

_SIGNS = frozenset(".!?,;:")


def cuts(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """The words that are signs, in order."""
    words = LANGUAGES[code].fluent
    joints = [at for at, token in enumerate(found) if token.low in words.joins and 0 < at < len(found) - 1]
    if not joints:
        return ()
    made = [Cut(match.start("at"), match.end("at"), "?") for match in word(code, "fluent.both_asked").finditer(text.lower())] if len(text.lower()) == len(text) else []
    for at in joints:
        sign = _sign(text, found, at, code)
        if sign:
            made.append(Cut(found[at - 1].end, found[at].end, sign))
    return tuple(sorted(made, key=lambda one: one.start))


def _sign(text: str, found: tuple[Token, ...], at: int, code: str) -> str:
    words = LANGUAGES[code].fluent
    first = next((k + 1 for k in range(at - 1, -1, -1) if found[k].low in _SIGNS), 0)
    if 0 < first < at and found[first - 1].low == "," and at - first <= 2 and plain(text[found[first].start : found[at - 1].end]) in words.joined_replies:
        return "" if found[at + 1].low in words.joined_replies else "."
    if found[at - 1].low in _SIGNS:
        return ""
    last = next((k for k in range(at + 1, len(found)) if found[k].low in _SIGNS or found[k].low in words.joins), len(found))
    if last < len(found) and found[last].low == "?":
        return ""
    behind = plain(text[found[at + 1].start : found[last - 1].end])
    if word(code, "fluent.left_out").fullmatch(behind) is not None:
        return ","
    if found[at + 1].low not in words.joined_leads:
        return ""
    topic = next((k + 1 for k in range(at - 1, first - 1, -1) if found[k].low in words.joins), first)
    named = topic < at and word(code, "fluent.of_topic").fullmatch(behind) is not None and word(code, "fluent.topics").fullmatch(plain(text[found[topic].start : found[at - 1].end])) is not None
    return "," if named or word(code, "fluent.joined_on").fullmatch(behind) is not None else ""
