"""The shape of how a piece is named in the middle of what is told of it: "the staples on straight 31 are turned in"."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class NamedAhead:
    """Regular expressions over lower-case letters: of what stands before a name, up to it, and of what stands behind it, from it on.

    The group `drops` of what stands before is left out where the name is put ahead.
    """

    turns: tuple[tuple[str, str], ...] = ()
    names: str = "(?!)"  # words that go with a name, up to its kind or number: "the", "number"
