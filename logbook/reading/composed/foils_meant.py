"""Foil that is the tape and no facing: "two-inch foil on elbow five", "the foil I put on is only two inches", "le puse foil de tres"."""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.words.items import concept_at
from logbook.reading.words.phrasing import words_of

CONCEPTS = ("FACING",)
_WIDEST = 4  # inches
_ENDS = ("ON", "COMMA", "STOP", "", "AROUND", "AND", "OVER", "ALL", "BE", "OF", "WITH", "BUT", "FILLER", "IN", "RUBBED", "DOWN")
_GO_ON = ("THRU", "WHEN", "OR", "WORD", "RUB", "STAPLED", "STAPLES", "HAVE", "LATER", "ONLY", "WIDE", "BECAUSE", "BY", "NO", "NOT", "BENT")
_LOOKS = ("IN", "OUT", "INSIDE", "OUTSIDE", "UP", "DOWN", "LOOKS", "OF")
_FROM = ("OFF", "FROM", "DAMAGE", "TRIMMED", "CUT_TO", "CUT_LENGTH", "NO", "FACING", "GAP", "MISSING")


def meant(done, items, place: int, ahead: str, past_article: str, said: str, text: str) -> None:
    if said.split()[-1] not in words_of("small.foil"):
        return
    wide = items[place - 1] if concept_at(items, place - 1) == "LEN" else None
    by_width = wide is not None and wide.value.unit == "in" and 1 < wide.value.value <= _WIDEST and ahead in _ENDS and not _taken_off(items, place, text)
    if by_width or ahead == "I" and _laid(items, place + 2, text) or _of_a_width(items, place, ahead) or _is_laid(items, place, ahead, text) or _is_put_on(items, place, ahead, text) or ahead == "FILLER" and concept_at(items, place + 2) == "HAVE" and _lays(items, place + 2, text):
        done[place] = replace(items[place], concept="TAPE", value=None)


def _of_a_width(items, place: int, ahead: str) -> bool:
    """ "foil de dos y media", "tape de foil de tres": so wide, and what tells how wide ends there; a piece of it that came off is none."""
    if ahead != "OF" or concept_at(items, place + 2) not in ("NUM", "LEN") or concept_at(items, place + 3) not in (*_ENDS, *_GO_ON):
        return False
    wide = items[place + 2].value
    of_tape = concept_at(items, place - 1) == "OF" and concept_at(items, place - 2) == "TAPE"
    return wide.unit in ("in", None) and 1 < wide.value <= _WIDEST and (of_tape or concept_at(items, place - 1) not in (*_FROM, "OF", "WORD", "UNDONE"))


def _is_laid(items, place: int, ahead: str, text: str) -> bool:
    """ "le puse foil", "le tengo que poner el foil": the board has its facing by itself, so what is put on is tape; which way it looks is told of the facing."""
    at = place - 1 if concept_at(items, place - 1) != "DET" else place - 2
    if ahead in _LOOKS or concept_at(items, at) not in ("HAVE", "NO", "WORD", "WILL", "PENDING", "NOT"):
        return False
    return _lays(items, at, text)


_LAID_ALONG = ("ON", "AROUND", "OVER", "ALL", "BOTH", "ACROSS")


def _is_put_on(items, place: int, ahead: str, text: str) -> bool:
    """ "Put the foil on and rubbed it", "ran foil around it": what a man lays along a joint is tape."""
    at = place - 1 if concept_at(items, place - 1) != "DET" else place - 2
    if ahead not in _LAID_ALONG or at < 0 or concept_at(items, at) not in ("FILLER", "LAID", "MOVE", "I", "WORD", "HAVE", "AND"):
        return False
    facing = concept_at(items, place + 2) in ("OUT", "INSIDE", "OUTSIDE") or concept_at(items, place + 3) in ("OUT", "INSIDE", "OUTSIDE")
    return not facing and text[items[at].start : items[at].end].lower().split()[-1] in words_of("small.lays_tape") - {"had"}


def _lays(items, at: int, text: str) -> bool:
    """ "el foil que le puse es de dos" """
    return text[items[at].start : items[at].end].lower().split()[-1] in words_of("small.lays_foil")


def _taken_off(items, place: int, text: str) -> bool:
    """ "Peeled back two inches foil": what is taken off is no tape that he used."""
    if any(concept_at(items, at) in _FROM for at in (place - 2, place - 3)):
        return True
    return place > 1 and text[items[place - 2].start : items[place - 2].end].lower() in words_of("small.peels")


def _laid(items, at: int, text: str) -> bool:
    """ "the foil I put on": it was put on, so it is tape."""
    return at < len(items) and text[items[at].start : items[at].end].lower().split()[0] in words_of("small.lays_tape")
