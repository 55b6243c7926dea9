"""What was read of stretches of a text put one behind the other, with its places as they stand in the whole text."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import fields, is_dataclass, replace


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
    changes = {one.name: _moved(getattr(told, one.name), text, places) for one in fields(told) if isinstance(getattr(told, one.name), tuple) or is_dataclass(getattr(told, one.name))}
    if getattr(told, "start", None) is not None:
        own = places[told.start : told.end] or [places[min(told.start, len(places) - 1)]]
        start, end = min(own), max(own) + 1
        if not text[start:end].strip():
            start, end = word_at(text, start)
        changes |= {"start": start, "end": end, "words" if hasattr(told, "words") else "text": text[start:end]}
    return replace(told, **changes)


def word_at(text: str, at: int) -> tuple[int, int]:
    """The word at the place, before it, or behind it where none is before: what stands for words that were left unsaid."""
    words = [word.span() for word in _WORD.finditer(text)]
    return next((word for word in reversed(words) if word[0] < at), words[0] if words else (0, len(text)))


_WORD = re.compile(r"[^\W_]+(?:['’./-][^\W_]+)*")
