"""What somebody has to do, with the thing between ("still have the last foot of straight 110 to rub down"): the act waits."""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.words.items import Item, concept_at
from logbook.reading.words.phrasing import in_any

_ACTS = frozenset("RUBBED RUB STAPLE STAPLED TAPE TAPE_IT TAPED TRIM TRIMMED WIPE WIPED BENT HEAT_IT REPAIR_IT".split())
_BY_NAME = ("RUBBED", "STAPLED", "TAPED", "TRIMMED", "WIPED")  # "there's the rubbing to do"
_WAITING = ("NUM", "LEN", "FRAC", "MARKED", "SIDE", "SIDE_WORD", "SIDES_ALL", "JOINT", "END", "ONE_SIDE", "OTHER_SIDE", "PANEL", "CORNER", "TABS", "DAMAGE", "FLAP", "GLASS", "ALL")
_DENIED = ("NO", "NOT", "NOT_DONE", "IF", "QUERY", "WHEN", "LEFT_OUT")
_FARTHEST = 12  # items between what is had and what is to be done


def have_to_do(items: tuple[Item, ...], text: str) -> tuple[Item, ...]:
    """The items, where the small word before such an act tells that it waits."""
    done = None
    if len(items) > 1 and items[0].concept == "TO" and items[1].concept in _ACTS:  # "to rub down": a list of what is left
        done = [replace(items[0], concept="PENDING"), *items[1:]]
    for place in range(3, len(items)):
        if items[place].concept == "WORD" and items[place - 1].concept == "TO" and items[place - 2].concept in _BY_NAME and items[place - 3].concept == "DET":
            first = _begins(items, place)
            if in_any("forms.work_to_do").search(text[items[first].start : items[place].end].lower()) is not None:
                done = list(items) if done is None else done
                done[place - 2 : place + 1] = [replace(items[place - 2], concept="FILLER"), replace(items[place - 1], concept="PENDING"), replace(items[place], concept=items[place - 2].concept)]
            continue
        if items[place].concept not in _ACTS or items[place - 1].concept != "TO" or not (items[place - 2].concept in _WAITING or items[place - 2].concept.startswith("K_")):
            continue
        first = _begins(items, place)
        if any(item.concept in _DENIED for item in items[first:place]):
            continue
        behind = items[place].end
        if concept_at(items, place + 1) in ("YET", "FILLER"):
            behind = items[place + 1].end
        if in_any("forms.has_to_do").search(text[items[first].start : behind].lower()) is not None:
            done = list(items) if done is None else done
            done[place - 1] = replace(items[place - 1], concept="PENDING")
    return items if done is None else tuple(done)


def _begins(items: tuple[Item, ...], place: int) -> int:
    """Where the words that tell of the act at `place` begin."""
    first = place - 2
    while first > 0 and place - first < _FARTHEST and items[first - 1].concept not in ("STOP", "COMMA", "AND", "BUT", "QUERY"):
        first -= 1
    return first
