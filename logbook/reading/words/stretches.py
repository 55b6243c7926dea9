"""What was read of stretches of a text put one behind the other, with its places as they stand in the whole text."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import fields, is_dataclass, replace
from functools import cache


def moved(told, text: str, stretches: Sequence[tuple[int, int] | str]):
    """`told` of the stretches (start, end) of the text, in whatever order they were put; letters that stand in no text may stand between them."""
    return _moved(told, text, _places(stretches))


def put_together(text: str, stretches: Sequence[tuple[int, int] | str]) -> str:
    return "".join(one if isinstance(one, str) else text[one[0] : one[1]] for one in stretches)


def _places(stretches: Sequence[tuple[int, int] | str]) -> list[int]:
    """Where each letter of the stretches stands in the text; of those that stand in none, the letter before."""
    places: list[int] = []
    for one in stretches:
        places += [places[-1] if places else 0] * len(one) if isinstance(one, str) else range(*one)
    return places


def _moved(told, text: str, places: list[int]):
    if isinstance(told, tuple):
        return tuple(_moved(one, text, places) for one in told)
    if not is_dataclass(told):
        return told
    changes = {name: _moved(value, text, places) for name in members(type(told)) if (value := getattr(told, name)) and (isinstance(value, tuple) or is_dataclass(value))}
    if getattr(told, "start", None) is not None:
        own = places[told.start : told.end] or [places[min(told.start, len(places) - 1)]]
        start, end = min(own), max(own) + 1
        if not text[start:end].strip():
            start, end = word_at(text, start)
        changes |= {"start": start, "end": end, "words" if hasattr(told, "words") else "text": text[start:end]}
    return changed(told, changes) if changes else told


def changed(told, changes: dict):
    """What `replace` gives, made for every fact of every note and so without a look at each member."""
    if not hasattr(told, "__dict__"):
        return replace(told, **changes)
    made = object.__new__(type(told))
    made.__dict__.update(told.__dict__, **changes)
    return made


@cache
def members(cls: type) -> tuple[str, ...]:
    """Those that may hold records with places of their own: no plain words, numbers and signs."""
    return tuple(one.name for one in fields(cls) if _OF_RECORDS.search(one.type))


_OF_RECORDS = re.compile(r"object|\b(?!None\b)[A-Z]")  # in what a member is said to hold


def word_at(text: str, at: int) -> tuple[int, int]:
    """The word at the place, before it, or behind it where none is before: what stands for words that were left unsaid."""
    words = [word.span() for word in _WORD.finditer(text)]
    return next((word for word in reversed(words) if word[0] < at), words[0] if words else (0, len(text)))


_WORD = re.compile(r"[^\W_]+(?:['’./-][^\W_]+)*")
