"""What a tradesman says becomes facts: tokens, measures, clauses, claims, entries. One call: `read`."""

from __future__ import annotations

import unicodedata

from logbook.languages import LANGUAGES
from logbook.reading.meant import found_language
from logbook.reading.heard import with_alternatives, with_heard
from logbook.reading.muffled import with_muffled
from logbook.reading.reader import read_text
from logbook.reading.words.tokens import tokens
from logbook.said import Reading
from logbook.transcript import Transcript

MOST_CHARACTERS = 200_000  # a spoken hour is about 60,000; more is no note
_MOST_STRANGE = 0.1  # share of characters that no spoken note holds
_RIGHT_TO_LEFT = ("R", "AL", "AN")


def read(text: str, *, language: str | None = None, transcript: Transcript | None = None, job=None) -> Reading:
    """The facts of one text.

    `language` is `en` or `es`, or None: then the transcript's ears decide, else the words. `transcript` gives
    seconds and doubts, its text must be `text`. `job` narrows: its crew phrases expand. Never raises on any text;
    where nothing can be read `reason` holds a wording key (`reading.…`).
    """
    given = language if language in LANGUAGES else None
    ears = transcript.language if transcript is not None and transcript.language in LANGUAGES else None
    reason = _unreadable(text)
    if reason is not None:
        return Reading(given, "given" if given else None, text, reason=reason)
    found = tokens(text)
    words = None if given or ears else found_language.found(found)
    code = given or ears or words
    source = "given" if given else "ears" if ears else "words" if words else None
    if code is None:
        return Reading(None, None, text, reason="reading.no-words" if not any(t.sort == "word" for t in found) else "reading.other-language")
    reading = read_text(text, found, code, source, job)
    if transcript is None:
        return reading
    reading = with_muffled(with_heard(reading, transcript), transcript)
    return with_alternatives(reading, transcript, lambda other: read_text(other, tokens(other), code, source, job))


def _unreadable(text: str) -> str | None:
    if not text.strip():
        return "reading.empty"
    if len(text) > MOST_CHARACTERS:
        return "reading.too-long"
    looked = text[:4000]
    if "\ufffd" in looked or not looked.isprintable():
        strange = sum(1 for c in looked if not c.isprintable() and unicodedata.category(c) in ("Cc", "Cn", "Co", "Cs") and c not in "\n\r\t" or c == "\ufffd")
        if strange > _MOST_STRANGE * len(looked):
            return "reading.not-text"
    if not looked.isascii() and sum(1 for c in looked if unicodedata.bidirectional(c) in _RIGHT_TO_LEFT) > len(looked) / 4:
        return "reading.other-language"
    return None


__all__ = ["MOST_CHARACTERS", "read"]
