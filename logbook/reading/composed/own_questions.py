"""A question about the speaker's own work that the words behind it answer: "Is it okay if the staples are three apart? Because that's how I did it".

What is asked about is how it is built, so it is read as if it had been said plainly. Acts by themselves are answered for in `logbook.reading.own.echoes`;
here it is measures, ways and materials, which nobody says again.
"""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.items import Item
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain

_MEASURES = ("NUM", "LEN", "FRAC", "DEG", "TEMP_F", "INWG")
_MATTERS = frozenset((*_MEASURES, "GROOVE", "IN", "OUT", "INSIDE", "OUTSIDE", "GAP", "DAMAGE", "CLOSURE", "MARK181", "C_MASTIC", "SIDE_WORD", "CLINCHED", "VANES", "NO", "NOT"))
_DONE = {"STAPLE": "STAPLED", "TAPE_IT": "TAPED", "RUB": "RUBBED", "TRIM": "TRIMMED", "WIPE": "WIPED"}


def as_built(text: str, items: tuple[Item, ...], language: Language) -> tuple[Item, ...]:
    """The items of a text in which such questions are statements, without the words that only asked."""
    if "?" not in text:
        return items
    row, spent, made = Row.of(text, items), set(), list(items)
    for at, item in enumerate(items):
        if item.concept == "QUERY" and at + 1 < len(items):
            spent |= _plainly(row, at, made, language.code)
    return tuple(item for at, item in enumerate(made) if at not in spent)


def _plainly(row: Row, at: int, made: list[Item], code: str) -> set[int]:
    """Turns the question that ends at this item into a statement among the items `made`; answers which of them only asked."""
    items, sentence = row.items, row.sentence_start(at)
    for first in (k for k in range(sentence, at) if k == sentence or items[k - 1].concept == "COMMA"):
        said = plain(row.words(first, at))
        lead, tail = word(code, "told.own_questions.leads").match(said), None
        if lead is None and (lead := word(code, "told.own_questions.bare").match(said)) is not None:
            tail = word(code, "told.own_questions.tails").search(said)
        if lead is None or (tail is None and lead.group().endswith(" ")):
            continue
        start = items[first].start
        begin = next((k for k in range(first, at) if items[k].start >= start + lead.end() - lead.group().endswith(" ")), at)
        end = at if tail is None else next(k for k in range(first, at) if items[k].end > start + tail.start() + 1)
        verdict = {k for k in range(end, at) if items[k].start < start + tail.end()} if tail is not None else set()
        concepts = {items[k].concept for k in range(begin, at)}
        if not concepts & _MATTERS or "IF" in concepts or not _is_owned(row, at, begin, code):
            return set()
        for k in range(begin, end):
            made[k] = replace(items[k], concept=_DONE.get(items[k].concept, items[k].concept))
        made[at] = replace(items[at], concept="STOP")
        return {*range(first, begin), *verdict}
    return set()


def _is_owned(row: Row, at: int, begin: int, code: str) -> bool:
    """Whether the words behind the question say that it is built so."""
    last = next((k for k in range(at + 1, len(row.items)) if row.items[k].concept in ("STOP", "QUERY", "COMMA")), len(row.items))
    words = plain(row.words(at + 1, last)) if last > at + 1 else ""
    if word(code, "told.own_questions.owns").match(words) is not None:
        return True
    asked = {row.items[k].value.value for k in range(begin, at) if row.items[k].concept in _MEASURES}
    again = {row.items[k].value.value for k in range(at + 1, last) if row.items[k].concept in _MEASURES}
    return bool(asked & again) and word(code, "told.own_questions.restates").match(words) is not None
