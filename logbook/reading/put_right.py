"""What neighbours far apart put right before two measures of one sort are compared: pairs, work that somebody has to do, measures taken for others."""

from __future__ import annotations

from logbook.languages.language import Forms
from logbook.reading.have_to_do import have_to_do
from logbook.reading.items import Item
from logbook.reading.pairs_set_right import pairs_set_right
from logbook.reading.swapped import swapped
from logbook.reading.taken_for import taken_for


def put_right(items: tuple[Item, ...], text: str, forms: Forms) -> tuple[Item, ...]:
    return taken_for(have_to_do(pairs_set_right(swapped(items, text, forms)), text), text)
