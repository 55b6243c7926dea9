"""So much over so much, set right as a whole ("five in twenty, correction, four in thirty"): neither number of the second pair stands for the second number of the first."""

from __future__ import annotations

from logbook.reading.composed.corrections import replacing
from logbook.reading.words.items import concept_at
from logbook.reading.composed.size_pairs import LENGTHS

_OVER = ("IN", "OVER")
_BETWEEN = ("COMMA", "STOP", "DASH", "FIX", "NO", "BUT", "AND", "FILLER", "IT", "THIS", "BE", "I", "DET", "THINK", "HEDGE", "SAYS", "SLOPE")
_FARTHEST = 9  # items between the two pairs
_WORDS_OF_A_NAME = 5


def pairs_set_right(items):
    """The items, where the second of two pairs stands in the place of the first, which it remembers."""
    concepts = {item.concept for item in items}
    if not ("IN" in concepts or "OVER" in concepts) or concepts.isdisjoint(("FIX", "NO", "SAYS", "NOT")):
        return items
    if "NOT" in concepts:
        items = _without_what_it_is_not(items)
    place = 3
    while place < len(items) - 2:
        if _is_a_pair(items, place) and (at := _taken_back(items, place)) is not None:
            first, behind = at
            both = (replacing(items[place], items[first]), items[first + 1], replacing(items[place + 2], items[first + 2]))
            items = (*items[:first], *both, *items[first + 3 : behind], *items[place + 3 :])
            continue
        place += 1
    return items


def _without_what_it_is_not(items):
    """ "Four in twenty-four, not five in twenty": the pair behind "not" is no measure of the piece, and what stands before it is."""
    place = 5
    while place < len(items) - 2:
        at = place - 1
        if items[at].concept == "NOT" and _is_a_pair(items, place):
            before = at - 1 if items[at - 1].concept != "COMMA" else at - 2
            if before > 1 and _is_a_pair(items, before - 2):
                items = (*items[: before + 1], *items[place + 3 :])
                continue
        place += 1
    return items


def _is_a_pair(items, place: int) -> bool:
    return items[place].concept in LENGTHS and items[place + 1].concept in _OVER and concept_at(items, place + 2) in LENGTHS and concept_at(items, place + 3) not in ("BY", "LONG")


def _taken_back(items, place: int) -> tuple[int, int] | None:
    """Where the pair that is taken back begins, and where the words begin that take it back."""
    at, fixed, told = place - 1, False, False
    while at > 2 and place - at <= _FARTHEST and items[at].concept in _BETWEEN:
        bare = items[at].concept == "NO" and items[at].end - items[at].start == 2
        fixed = fixed or items[at].concept == "FIX" or bare
        told = told or items[at].concept == "BE"
        at -= 1
    behind = at + 1
    if items[behind].concept not in ("COMMA", "STOP", "DASH", "BUT", "FIX"):
        return None
    if not _is_a_pair(items, at - 2):
        at = _before_its_name(items, at)
    if at < 2 or not _is_a_pair(items, at - 2):
        return None
    said = told and concept_at(items, at - 3) == "SAYS" and concept_at(items, at - 4) in ("", "I", "STOP")
    return (at - 2, behind) if fixed or said else None


def _before_its_name(items, at: int) -> int:
    """ "four in twenty-four on reducer 128; scratch that": past the piece that the first pair was told of."""
    for back in range(at, max(1, at - _WORDS_OF_A_NAME), -1):
        if items[back].concept in ("ON", "OF") and any(items[k].concept in ("NUM", "MARKED") for k in range(back + 1, at + 1)):
            return back - 1
        if items[back].concept in ("STOP", "QUERY"):
            break
    return -1
