"""Words whose meaning hangs on the word behind them: "por encintar" is still to do, "menos el fondo" leaves the bottom out."""

from __future__ import annotations

from dataclasses import replace

_TO_DO = ("TAPE_IT", "STAPLE", "RUB", "TRIM", "WIPE", "HANG")
_LEFT_OUT = ("SIDE", "OTHER_SIDE", "ONE_SIDE", "TAPE", "STAPLES", "VANES", "TABS", "TAPE_IT", "STAPLE", "RUB", "JOINT", "SIDE_WORD")
_MINUS = ("menos", "minus")
_WRITES = frozenset("encinte engrape grape talle frote limpie".split())  # behind "que" it is what somebody ought to do


def meant_by_neighbours(items, text: str):
    done = list(items)
    for place, item in enumerate(items):
        ahead = _concept(items, place + 1)
        past_article = _concept(items, place + 2) if ahead in ("DET", "FILLER", "ON") else ahead
        said = text[item.start : item.end].lower()
        if item.concept == "BY" and said == "por" and ahead in _TO_DO:
            done[place] = replace(item, concept="PENDING")  # "está por encintar"
        elif item.concept == "LEVEL" and said in ("straight on", "recto en", "recta en") and ahead in ("RUN", "WORD", "ANOTHER"):
            done[place] = replace(item, concept="K_STRAIGHT", value="straight")
        elif item.concept in ("PARTLY", "FRAC") and ahead in _TO_DO:
            done[place] = replace(item, concept="PENDING")  # "a medio encintar"
        elif item.concept == "NEGATIVE" and said in _MINUS and past_article in _LEFT_OUT:
            done[place] = replace(item, concept="EXCEPT")
        elif item.concept in ("STAPLED", "TAPED", "RUBBED", "WIPED") and said in _WRITES and _wished(items, place, text):
            done[place] = replace(item, concept="WORD", value=None)  # "que lo encinte Juan"
    return tuple(done)


def _wished(items, place: int, text: str) -> bool:
    behind = [text[item.start : item.end].lower() for item in items[max(0, place - 4) : place]]
    return "que" in behind or "para que" in behind


def _concept(items, at: int) -> str:
    return items[at].concept if 0 <= at < len(items) else ""
