"""Staples that lie wider in one place: "every two but the corners are at four". They are in; how far apart is what departs."""

from __future__ import annotations

import re
from fractions import Fraction

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row

_TURNS = ("BUT", "EXCEPT", "ALL_BUT")
_SPACED = {"STAPLED": "staple_spacing", "STAPLES": "staple_spacing", "STAPLE": "staple_spacing", "SCREWS": "screw_spacing"}
_OTHERS_SPACED = ("SCREWS", "TABS", "K_HANGER", "VANES", "WASHERS", "TIE_RODS", "HANG")
_BEFORE = ("FIX", "ON", "TO", "EVERY", "BE", "BUT", "HEDGE", "THIS", "IT")
_COUNTS = ("SIDE_WORD", "SIDE", "JOINT", "STAPLES", "PLACE_NOUN", "OF", "BY", "COUNTED", "END", "TABS", "WIDE", "LEG", "TAPE", "BOARD", "DAMAGE", "GAP", "BOARD", "STATIC", "LONG")
_ACTS = {"TAPED", "STAPLED", "SIDE_WORD", "TAPE", "GAP", "LONG", "BACK", "LEG", "WIDE", "BOARD", "MOVE_IN", "MOVE_OUT", "MOVE_UP", "MOVE_DOWN"}
_THEM = {"IT", "STAPLES"}  # "On the branch I spread them out to three.": of the sentence before
_LEAST, _MOST = Fraction(1, 2), {"staple_spacing": 12, "screw_spacing": 48}  # inches
_FAR = 14  # items back to the staples


def spaced_otherwise(row: Row, own: Row, cut_up, place: int, language: Language) -> Claim | None:
    """The distance told of one place where another was told of staples before it in the sentence; it corrects that one where it is wider, and states nothing where it is not."""
    part = cut_up[place]
    wider = _goes_wider(part, language)
    here = {item.concept for item in row.items[part.first : part.last]}
    if wider and "FIX" in here and here & {"STAPLES", "STAPLE"}:  # "my two inches between staples became three"
        return _told_behind(row, part.first + 1, "staple_spacing")
    lead = part.first - 1 if part.first and row.items[part.first - 1].concept in _TURNS else part.first
    on_others = _on_the_others(row, part, language)
    if not (row.items[lead].concept in _TURNS or _of_one_spot(row, part) or wider or on_others):
        return None
    spaced = _spaced(row, own, lead) or (_spaced(row, own, row.sentence_start(lead) - 1) if wider and _THEM & here else None)
    if spaced is None or any(row.items[k].concept in ("SAME_THING", "SAME_AS") for k in range(max(row.sentence_start(lead), lead - 5), lead)):
        return None  # "tapa 28 igual pero cada dos": of another piece
    name, before = spaced
    if on_others:
        at = next(k for k in range(part.first, part.last) if row.items[k].concept in ("NUM", "LEN", "FRAC"))
        told = claim(row, name, row.items[at].value.value, at, at + 1, uses=(at,), corrects=True, said_unit=unit_of(row.items[at]))
    else:
        told = _told_behind(row, _past_the_place(row, lead), name)
    if told is not None and told.value < before:
        first = told.first - (row.items[told.first - 1].concept == "EVERY")
        return claim(row, "(nothing)", None, first, told.last)  # "every four, but two at the corners": the rest is at four
    return told


def _on_the_others(row: Row, part, language: Language) -> bool:
    """ "every two on the long sides and three on the short ones", "every two till the last foot and then three": a bare distance, and where."""
    concepts = [item.concept for item in row.items[part.first : part.last] if item.concept not in ("HEDGE", "FILLER")]
    if concepts[:1] == ["ANOTHER"] and concepts[1:2] and concepts[1] in ("NUM", "LEN", "FRAC") and "THRU" in [item.concept for item in row.items[max(0, part.first - 6) : part.first]]:
        return not set(_COUNTS) & set(concepts[2:3]) and row.words(part.first, part.first + 1).lower() in ("then", "after that")
    if concepts[:1] and concepts[0] in ("NUM", "LEN", "FRAC") and concepts[1:2] != ["ON"] and not _ACTS & set(concepts):
        at = next(k for k in range(part.first, part.last) if row.items[k].concept in ("NUM", "LEN", "FRAC"))
        return language.turns.over_there != "" and at + 1 < part.last and re.match(language.turns.over_there, row.words(at + 1, part.last).lower()) is not None
    return concepts[:1] and concepts[0] in ("NUM", "LEN", "FRAC") and concepts[1:2] == ["ON"] and concepts[2:3] and concepts[2] in ("DET", "SIDE", "OTHER_SIDE") and not {"TAPED", "STAPLED", "TAPE"} & set(concepts) and ("SIDE_WORD" not in concepts or concepts.index("SIDE_WORD") == len(concepts) - 1)


def _past_the_place(row: Row, lead: int) -> int:
    """Behind "except where I couldn't reach, there it's …": where it is, is told first."""
    if lead + 2 < len(row.items) and row.items[lead + 1].concept == "QUESTION":
        comma = next((k for k in range(lead + 2, len(row.items)) if row.items[k].concept in ("COMMA", "STOP", "QUERY")), len(row.items))
        if comma < len(row.items) and row.items[comma].concept == "COMMA":
            return comma + 1
    return lead + 1


def _told_behind(row: Row, at: int, name: str) -> Claim | None:
    while at < len(row.items) and row.items[at].concept not in ("STOP", "QUERY", "TAPED", "RUBBED", "TAPE", "RUB", "NOT", "NO", "WASHERS", "DAMAGE", "GAP", "FACING"):
        item = row.items[at]
        ahead = row.items[at + 1].concept if at + 1 < len(row.items) else ""
        if item.concept in ("NUM", "LEN", "FRAC") and row.items[at - 1].concept in _BEFORE and (ahead not in _COUNTS or ahead == "BY" and row.items[at + 2 : at + 3] and row.items[at + 2].concept == "DET") and _LEAST <= item.value.value <= _MOST[name] and not (name == "staple_spacing" and getattr(item.value, "unit", None) == "ft"):
            return claim(row, name, item.value.value, at, at + 1, uses=(at,), corrects=True, said_unit=unit_of(item))
        at += 1
    return None


def _goes_wider(part, language: Language) -> bool:
    """ "… at two, the bottom ones drift to three"."""
    return re.search(rf"(?<!\w)(?:{language.turns.spreads})\b", part.words) is not None


def _of_one_spot(row: Row, part) -> bool:
    """ "…, the staples go at three in the corner": the staples named again, with a place of theirs."""
    concepts = [item.concept for item in row.items[part.first : part.last] if item.concept != "DET"]
    return concepts[:1] == ["STAPLES"] and bool({"JOINT", "SIDE", "SIDE_WORD", "END"} & set(concepts))


def _spaced(row: Row, own: Row, at: int) -> tuple[str, Fraction] | None:
    """The distance that was told right before: whether of staples or of screws, and how much."""
    start = at
    while start > 0 and at - start < _FAR and row.items[start - 1].concept not in ("STOP", "QUERY"):
        start -= 1
    here = [k for k in range(start, at) if not own.is_blank(k)]
    concepts = [row.items[k].concept for k in here]
    name = next((_SPACED[concept] for concept in reversed(concepts) if concept in _SPACED), None)
    if name is None and "EVERY" in concepts and not any(item.concept in _OTHERS_SPACED for item in row.items):
        name = "staple_spacing"  # "every two all around but the last foot is three"
    if name is None:
        return None
    told = [row.items[two].value.value for one, two in zip(here, here[1:]) if (row.items[one].concept in ("EVERY", "ON", "STAPLED", "STAPLES") or row.items[one].concept == "COMMA" and row.items[one - 1].concept in ("STAPLED", "STAPLES")) and row.items[two].concept in ("NUM", "LEN", "FRAC")]
    told = told or [row.items[one].value.value for one, two in zip(here, here[1:]) if row.items[two].concept in ("STAPLES", "STAPLE") and row.items[one].concept in ("LEN", "FRAC") and row.items[one].value.value >= 1]  # "two inch staples everywhere but on the heel"
    return (name, told[-1]) if told else None
