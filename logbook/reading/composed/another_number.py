"""A second piece by its number alone in a note that has no sign: "… taped rubbed | 47 elbow 18 by 12 …", "… taped and rubbed | thirty two the tape is on but …".

A number right behind an act counts and measures more often than it names. It names where its kind and a size or an act stand behind it and another piece was
named so before, or where it is the number of a piece that was named before.
"""

from __future__ import annotations

from logbook.reading.words.items import concept_at
from logbook.reading.words.kinds import KIND_CONCEPTS

_KINDS = frozenset(KIND_CONCEPTS) - {"K_COLLAR", "K_HANGER", "K_REGISTER", "K_REPAIR"}  # a number before these is rather how wide or how many
_ACTS = frozenset("STAPLED TAPED RUBBED WIPED TRIMMED SEATED BENT".split())
_TOLD = _ACTS | frozenset("YET IN_PLACE LATER MARK181 TIGHT VANES TAPE STAPLES IN".split())
_BEHIND_KIND = _ACTS | frozenset("NUM NO NOT VANES STAPLES TAPE DEG BE".split())
_BEHIND_NUMBER = _ACTS | frozenset("BE DET NO NOT HAVE I VANES STAPLES TAPE NOT_DONE PENDING IT".split())
_TURNS = (90, 60, 45, 30)


def names_another(items, at: int) -> bool:
    if not _may_name(items, at) or items[at - 1].concept not in _TOLD or not any(item.concept in _ACTS for item in items[:at]):
        return False
    value = items[at].value.value
    if concept_at(items, at + 1) in _KINDS:
        sized = concept_at(items, at + 2) != "NUM" or concept_at(items, at + 3) == "BY"
        return concept_at(items, at + 2) in _BEHIND_KIND and sized and any(_is_with_its_kind(items, k) and items[k].value.value != value for k in range(at))
    again = any(_may_name(items, k) and items[k].value.value == value and (_is_with_its_kind(items, k) or _is_listed(items, k)) for k in range(at))
    return again and concept_at(items, at + 1) in _BEHIND_NUMBER and value > 12


def _may_name(items, at: int) -> bool:
    return items[at].concept == "NUM" and items[at].value.value.denominator == 1 and items[at].value.value not in _TURNS


def _is_with_its_kind(items, at: int) -> bool:
    """ "46 elbow …" with nothing before it or an act, "straight 46"."""
    if not _may_name(items, at) or concept_at(items, at + 1) in ("BY", "COUNTED"):
        return False
    heads = at == 0 or items[at - 1].concept in _TOLD | {"FILLER", "ANOTHER", "NUMBER"}
    return heads and concept_at(items, at + 1) in _KINDS or at > 0 and items[at - 1].concept in _KINDS


def _is_listed(items, at: int) -> bool:
    """ "31 and 32 are up", "straights 31 and 32"."""
    return any(concept_at(items, at + step) == "AND" and concept_at(items, at + 2 * step) == "NUM" for step in (-1, 1) if at + step >= 0) and concept_at(items, at + 1) not in ("BY", "COUNTED")
