"""What thumbs wrote short or wrong, written out: "str 4 w/o tpe" is read as "str 4 without tape".

The note is read as it would have been written with more time, and every place in what was read is put back on the letters that stand in the note. A word
stands for another only where its neighbours leave one reading; a note without such words is not touched.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping
from dataclasses import is_dataclass
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.thumbs import Short, Thumbs
from logbook.reading.words.items import book
from logbook.reading.words.spelled import Cut, Row, cuts_of, laid_out
from logbook.reading.words.stretches import changed, members, word_at
from logbook.reading.words.tokens import Token

_LEAST = 5  # letters of a word whose slips are known


@cache
def _rows(code: str) -> Mapping[str, tuple[Row, ...]]:
    thumbs = LANGUAGES[code].thumbs
    return laid_out((*thumbs.shorts, *_slips(thumbs, book(code).known)))


def _slips(thumbs: Thumbs, known: frozenset[str]):
    """Every word that one slip of a thumb makes of a trade word, where it is no word of its own."""
    near = {group[0]: group[1:] for group in thumbs.keys.split()}
    shorts = {one.words for one in thumbs.shorts}
    made: dict[str, str] = {}
    for word in thumbs.slips:
        for at in range(1, len(word)):
            behind = word[at + 1 :]
            for slip in (
                word[:at] + behind,
                word[:at] + word[at] + word[at:],
                *([word[:at] + word[at + 1] + word[at] + word[at + 2 :]] if behind else ()),
                *(word[:at] + key + behind for key in near.get(word[at], "")),
            ):
                if len(slip) >= _LEAST - 1 and slip not in known and slip not in thumbs.true_words and slip not in shorts:
                    made.setdefault(slip, word)
    return (Short(slip, word) for slip, word in made.items() if slip not in thumbs.slips)


def cuts(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """What of the note is written short, in order."""
    if not LANGUAGES[code].thumbs.shorts:
        return ()
    made, signs = cuts_of(text, found, _rows(code)), _signs(text, code)
    if not signs:
        return made
    taken = [(one.start, one.end) for one in signs]
    return tuple(sorted([*(one for one in made if not any(one.start < b and one.end > a for a, b in taken)), *signs], key=lambda one: one.start))


def _signs(text: str, code: str) -> tuple[Cut, ...]:
    """Ticks and pictures. Ticks before the acts are words before them; those behind are left as they are, in one spelling; a picture is a comma."""
    if text.isascii() and "[" not in text:
        return ()
    thumbs = LANGUAGES[code].thumbs
    ticks = list(_ticks(code).finditer(text))
    made = [Cut(at, at + 1, ",") for at, letter in enumerate(text) if letter > _PICTURES and unicodedata.category(letter) in ("So", "Sk", "Mn", "Cf") and not any(one.start() <= at < one.end() for one in ticks)]
    if ticks:
        low = text.lower() if len(text.lower()) == len(text) else text
        behind = [re.search(thumbs.ticked, low[: one.start()]) is not None for one in ticks]
        leads = not behind[0] and re.match(r"\s*[^\W\d_]", text[ticks[-1].end() :]) is not None
        for one, follows in zip(ticks, behind):
            done = re.match(rf"\s*(?:{thumbs.was_done})", low[one.end() :]) is not None
            denial = f", {thumbs.denials[0 if done else 1]}"
            means = (", " if one["yes"] else denial) if leads else ("✓" if one["yes"] else "✗") if follows else ","
            made.append(Cut(one.start(), one.end(), means))
            noun = re.match(r"\s*[^\W\d_]+", low[one.end() :])
            if leads and one["yes"] and not done and noun is not None:
                made.append(Cut(one.end() + noun.end(), one.end() + noun.end(), " ✓"))
    return tuple(sorted(made, key=lambda one: one.start))


@cache
def _ticks(code: str) -> re.Pattern[str]:
    thumbs = LANGUAGES[code].thumbs
    return re.compile(f"(?P<yes>{thumbs.yes})|(?P<no>{thumbs.no})")


_PICTURES = "\u2190"  # from here on signs are pictures; "✓" and arrows are known to the reader


def with_apostrophes(text: str) -> str:
    """The text with the one sign for what stands between "didn" and "t", letter for letter."""
    return text if text.isascii() else text.translate(_APOSTROPHES)


def signs(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """ "Isnt" as "isn't" and "&" as "and", where that is no other word: before all else, so that no way to read the note need know both."""
    return cuts_of(text, found, _of_signs(code))


@cache
def _of_signs(code: str) -> Mapping[str, tuple[Row, ...]]:
    return {first: rows for first, rows in _rows(code).items() if len(rows) == 1 and rows[0].same and rows[0].before is rows[0].after is None and (rows[0].means.replace("'", "") == first or not first.isalnum())}


_APOSTROPHES = str.maketrans(dict.fromkeys("’‘ʼ´＇", "'"))


def as_written(told, text: str, made: tuple[Cut, ...], slips: bool = True):
    """What was read of the text written out, with its places and words as they stand in the note; with what the words were taken for, where they were `slips`."""
    if isinstance(told, tuple):
        return tuple([as_written(one, text, made, slips) for one in told]) if told else told
    if not is_dataclass(told):
        return told
    changes = {}
    for name in members(type(told)):
        value = getattr(told, name)
        if value and (isinstance(value, tuple) or is_dataclass(value)):
            written = as_written(value, text, made, slips)
            if written is not value and written != value:
                changes[name] = written
    if getattr(told, "start", None) is not None:
        start, end = _place(told.start, made, False), _place(told.end, made, True)
        stands, read_out = text[start:end], not all(one.same for one in made if one.start < end and start < one.end)
        if not stands or stands[0] == " " or stands[-1] == " ":
            start, end = (start + len(stands) - len(stands.lstrip()), end - len(stands) + len(stands.rstrip())) if stands.strip() else word_at(text, min(start, end))
        words = "words" if hasattr(told, "words") else "text"
        said = getattr(told, words)
        if (start, end, text[start:end]) != (told.start, told.end, said):
            changes |= {"start": start, "end": end, words: text[start:end]}
        if slips and getattr(told, "read_as", "") is None and said != text[start:end] and read_out:
            changes["read_as"] = said  # what the short or mistyped words were taken for
    return changed(told, changes) if changes else told


def _place(at: int, made: tuple[Cut, ...], ends: bool) -> int:
    """Where a place of the text written out is in the note; inside a word that was written short, its start or its end."""
    moved = 0
    for cut in made:
        start = cut.start + moved
        if at < start or at == start and not ends and (cut.means or cut.end == cut.start) or ends and at <= start:
            break
        if at < start + len(cut.means) or ends and at == start + len(cut.means):
            return cut.end if ends else cut.start
        moved += len(cut.means) - (cut.end - cut.start)
    return at - moved
