"""Words on a piece that was told of in an earlier note: "regarding piece two recorded this morning", "the entry for tee nine overstated it"."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.mention import Mention
from logbook.reading.words.phrasing import apart, finds, words_of

_MOST = 400  # characters of a sentence looked at


def told_of_before(row: Row, named: list[Mention], language: Language) -> list[Mention]:
    """The pieces, those amended that a sentence says were recorded before."""
    return [replace(one, amends=True) if one.mark is not None and not one.amends and (_speaks_of_a_record(row, one, language) or _set_right(row, one, named, language)) else one for one in named]


def _set_right(row: Row, one: Mention, named: list[Mention], language: Language) -> bool:
    """ "Thirty-seven again. I said fourteen by ten, …", "about that straight nine, correction, …": the one piece of a note that begins by setting it right."""
    if one is not next((m for m in named if m.mark is not None), None) or any(m.mark is not None and m.mark != one.mark for m in named) or one.first > _EARLY:
        return False
    ahead = row.items[one.last : one.last + 3]
    corrects = [item.concept for item in ahead[:2]] == ["COMMA", "FIX"] and row.words(one.last + 1, one.last + 2).lower() in words_of("small.corrections")
    again = bool(ahead) and row.words(one.last, one.last + 1).lower() in words_of("small.again")
    stop = row.sentence_end(one.last)
    behind = row.text[row.items[one.last - 1].end : row.items[min(len(row.items), stop + 14) - 1].end].lower().replace("’", "'")
    told = behind.lstrip(" .,")
    formerly = any(pattern.match(told) or again and pattern.search(behind) for pattern in apart(language.code, "turns.formerly"))
    wrong = again and stop + 1 < len(row.items) and row.items[stop + 1].concept == "FIX"
    about = one.first > 0 and row.items[one.first - 1].concept in ("HEDGE", "OF", "ON", "THIS") or row.items[one.first].concept in ("HEDGE", "OF", "ON", "THIS")
    return corrects or formerly and (again or about) or wrong


_EARLY = 6  # items


def _speaks_of_a_record(row: Row, one: Mention, language: Language) -> bool:
    first, last = row.sentence_start(one.first), row.sentence_end(one.last)
    said = row.words(first, last).lower().replace("’", "'")[:_MOST]
    return finds(apart(language.code, "turns.records"), said) is not None
