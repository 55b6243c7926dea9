"""A figure that the thing itself goes past: "over two inches apart", "under two and a half wide". How far past is not told, so that the figure alone is no measure of it."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.composed.size_pairs import LENGTHS
from logbook.reading.words.phrasing import word

_AT_MOST = frozenset(("staple_spacing", "cross_tab_spacing", "screw_spacing", "hanger_spacing", "static_pressure", "air_temperature", "accessory_weight", "leak_flow"))
_AT_LEAST = frozenset(("staple_leg", "tape_width", "cross_tab_length", "washer_size", "surface_temperature"))
_FIGURES = (*LENGTHS, "INWG", "DEG", "TEMP_F", "LB", "CFM")
_BACK = 40  # letters before a figure in which it is told that it is passed


def gone_past(row: Row, claims: list[Claim], language: Language) -> list[Claim]:
    """The claims, in doubt where the thing goes past the figure to the side that may depart, or is told to keep to that side of it."""
    text = row.text.lower()
    over, under = word(language.code, "told.goes_over"), word(language.code, "told.stays_under")
    if not (over.may(text) or under.may(text)):
        return claims
    denied = word(language.code, "told.denied_before")
    made = []
    for one in claims:
        before = _before_the_figure(row, one, text, language) if one.name in _AT_MOST or one.name in _AT_LEAST else ""
        passes, keeps = (over, under) if one.name in _AT_MOST else (under, over)
        made.append(replace(one, hedged=True) if before and (_says(passes, before, denied) is True or _says(keeps, before, denied) is False) else one)
    return made


def _before_the_figure(row: Row, one: Claim, text: str, language: Language) -> str:
    """The words before its figure; none where it is doubted already."""
    if one.hedged or one.took_back:
        return ""
    figure = next((at for at in one.uses or range(one.first, one.last) if row.items[at].concept in _FIGURES), None)
    if figure is None:
        return ""
    begin = row.items[figure].start
    taken_in = word(language.code, "told.bound_ahead").match(text, begin) if row.items[figure].value.near else None
    begin = taken_in.end() if taken_in is not None else begin
    return text[max(0, begin - _BACK) : begin]


def _says(bound, before: str, denied) -> bool | None:
    """Whether the bound is told, or that it is not so; None where neither is."""
    found = bound.search(before)
    return None if found is None else denied.search(before[: found.start("w")].rstrip()) is None
