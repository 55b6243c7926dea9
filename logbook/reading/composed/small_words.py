"""Words whose meaning hangs on the words beside them: "por encintar" is still to do, "menos el fondo" leaves the bottom out."""

from __future__ import annotations

from types import MappingProxyType

from logbook.reading.composed import acts_meant, foils_meant, kinds_meant, measures_meant, sayings_meant, sides_meant
from logbook.reading.words.items import concept_at

_LEFT_AS_THEY_ARE = ("NUM", "DET", "STOP", "AND", "IT", "BE", "IN", "OUT", "OF", "K_TRANSITION", "RUN", "MARKED")  # but behind "of"; the commonest, so that they cost nothing
_BY_CONCEPT = MappingProxyType({concept: one.meant for one in (acts_meant, foils_meant, kinds_meant, measures_meant, sayings_meant, sides_meant) for concept in one.CONCEPTS})


def meant_by_neighbours(items, text: str):
    done = list(items)
    for place, item in enumerate(items):
        look = _BY_CONCEPT.get(item.concept)
        if look is None or (item.concept in _LEFT_AS_THEY_ARE or item.concept == "COMMA" and text[item.start] not in "-–") and concept_at(done, place - 1) != "OF":
            continue
        ahead = concept_at(items, place + 1)
        past_article = concept_at(items, place + 2) if ahead in ("DET", "FILLER", "ON") else ahead
        look(done, items, place, ahead, past_article, text[item.start : item.end].lower(), text)
    return tuple(done)
