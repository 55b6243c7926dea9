"""What neighbours far apart put right before two measures of one sort are compared: pairs, work that somebody has to do, measures taken for others."""

from __future__ import annotations

from logbook.languages.language import Forms
from logbook.reading.composed.have_to_do import have_to_do
from logbook.reading.words.items import Item
from logbook.reading.composed.not_but import not_but
from logbook.reading.composed.pairs_set_right import pairs_set_right
from logbook.reading.composed.swapped import swapped
from logbook.reading.composed.taken_for import taken_for


def put_right(items: tuple[Item, ...], text: str, forms: Forms) -> tuple[Item, ...]:
    return taken_for(have_to_do(pairs_set_right(not_but(swapped(items, text, forms), text)), text), text)
