"""Foil that is the tape and no facing: "two-inch foil on elbow five", "the foil I put on is only two inches"."""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.items import concept_at
from logbook.reading.phrasing import words_of

CONCEPTS = ("FACING",)
_WIDEST = 4  # inches
_ENDS = ("ON", "COMMA", "STOP", "", "AROUND", "AND", "OVER", "ALL", "BE", "OF", "WITH", "BUT", "FILLER", "IN", "RUBBED", "DOWN")
_FROM = ("OFF", "FROM", "DAMAGE", "TRIMMED", "CUT_TO", "CUT_LENGTH", "NO", "FACING", "GAP", "MISSING")


def meant(done, items, place: int, ahead: str, past_article: str, said: str, text: str) -> None:
    if said.split()[-1] not in words_of("small.foil"):
        return
    wide = items[place - 1] if concept_at(items, place - 1) == "LEN" else None
    by_width = wide is not None and wide.value.unit == "in" and 1 < wide.value.value <= _WIDEST and ahead in _ENDS and not _taken_off(items, place)
    if by_width or ahead == "I" and _laid(items, place + 2, text):
        done[place] = replace(items[place], concept="TAPE", value=None)


def _taken_off(items, place: int) -> bool:
    """ "Peeled back two inches foil": what is taken off is no tape that he used."""
    return any(concept_at(items, at) in _FROM for at in (place - 2, place - 3))


def _laid(items, at: int, text: str) -> bool:
    """ "the foil I put on": it was put on, so it is tape."""
    return at < len(items) and text[items[at].start : items[at].end].lower().split()[0] in words_of("small.lays_tape")
