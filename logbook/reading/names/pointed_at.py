"""Pieces that an article points at ("la siete"): the one a sentence is about, one that takes another's place, one that is set right."""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.marks import mark_text
from logbook.reading.clauses.mention import Mention
from logbook.reading.names import article_marks

_WRONG_BEFORE = re.compile(r"(?:^|[.!?] )\W*(?:(?:oye|perd[oó]n|ah|ay|espera|disculpa|no),? )*(?:me equivoqu[eé]|la regu[eé]|dije mal|anot[eé] mal|te di mal|les di mal|est[aá] mal|estaba mal|hay (?:un )?error|corrijo|rectifico)(?: lo)?(?: (?:en|con|de|sobre|la medida de|las medidas de|el tamaño de))* (?:la|el|al|del)$")
_SAID_BEFORE = re.compile(r"^,? que (?:te |les |le |ya )*(?:dij|mand|anot|report|pas|puse|di)\w*\b[^.]*?,? (?:es|era|son|va|no es|no era)\b")


def pointed_at(row: Row, taken: set[int], made: list[Mention], add, language: Language) -> None:
    """ "Se me mojó la siete": the first of a sentence that names no piece otherwise, and one that takes its place."""
    for first, last in article_marks.pointed_at(row, taken):
        if (told := article_marks.of_the_one(row, first)) is not None:
            add(Mention(told, last, mark=mark_text(row, first, last, language), mark_at=(first, last), pointed=True))  # "la encintada es la cuarenta y siete"
            continue
        mention = Mention(first, last, mark=mark_text(row, first, last, language), mark_at=(first, last), corrects=_takes_its_place(row, first), pointed=True, amends=_set_right(row, first, last))
        here = [m for m in made if (m.mark is not None or m.batch) and not _parted(row, m.first, first)]
        one_of = any(m.last <= first and mention.mark in dict(m.batch) for m in here)  # "tramos 69 y 70 engrapados, al 70 le falta la cinta"
        latest = max(here, key=lambda m: m.first, default=None)
        turned_to = latest is not None and all(m.last <= first for m in here) and not one_of and mention.mark != (before := latest.mark or latest.batch[-1][0]) and article_marks.turns_to(row, first, last, before)  # "las rectas 5 y 6 …; la 7 …"
        if turned_to and row.items[first - 1].concept in ("DET", "ON"):
            mention = replace(mention, first=first - 1)
        if not here or one_of or turned_to or article_marks.stands_ahead(row, first, last, here) or (mention.corrects and all(m.last <= first for m in here)):
            add(mention)


def _set_right(row: Row, first: int, last: int) -> bool:
    """ "Me equivoqué en la 50, …", "la 50 que te dije de doce por diez es …": a piece that was told of before, and is set right."""
    before, behind = row.text[: row.items[first].start].lower().rstrip(), row.text[row.items[last - 1].end :].lower()
    return _WRONG_BEFORE.search(before) is not None or _SAID_BEFORE.match(behind) is not None


def _takes_its_place(row: Row, first: int) -> bool:
    before = [item.concept for item in row.items[max(0, first - 4) : first] if item.concept not in ("DET", "BE", "FILLER")]
    return "FIX" in before or before[-2:] == ["NO", "COMMA"] or before[-2:] == ["NOT", "COMMA"]


def _parted(row: Row, first: int, last: int) -> bool:
    return any(item.concept in ("STOP", "QUERY") for item in row.items[min(first, last) : max(first, last)])
