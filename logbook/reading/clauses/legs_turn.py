"""How the legs of staples go: "curl in", "are bent inward". That tells of the legs, and not how many staples are in."""

from __future__ import annotations

from logbook.reading.words.items import Item
from logbook.reading.words.phrasing import words_of


def legs_turn(items: tuple[Item, ...], text: str, at: int) -> bool:
    """Whether this item tells which way legs go."""
    return items[at].concept == "CLINCHED" or items[at].concept == "IN" and text[items[at - 1].start : items[at - 1].end].lower() in words_of("small.legs_turn")
