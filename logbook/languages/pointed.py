"""The shape of the words that point back to a piece that was named before: "the tee", "the second one", "the other"."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True)
class Pointed:
    """Regular expressions over lower-case letters; `{kind}` in them stands for any of the words for a piece."""

    kinds: Mapping[str, str] = field(default_factory=dict)  # the word for one piece, and its kind
    several: Mapping[str, str] = field(default_factory=dict)  # the same for several of it
    kind: tuple[str, ...] = ()  # where such a word alone points back; what the group `x` holds does
    place: tuple[str, ...] = ()  # the same of its place among those named, which the group `n` holds
    places: Mapping[str, int | None] = field(default_factory=dict)  # what it holds, counted from nought; None: the other of two
    counts: Mapping[str, int] = field(default_factory=dict)  # how many of them, which the group `c` holds
    looks: str = "(?!)"  # the letters without which none of them stands in a text
    joins: str = " "  # between the last two numbers
    piece: str = ""  # before the number of a piece that has no kind
    pieces: str = ""  # the same of several
    listed: str = "(?!)"  # several by nothing but their numbers, in the group `all`, with the word for their kind in `k` where there is one (`{several}` stands for those): of these there are pieces though nothing more is told of some
    other: str = ""  # the words without which there is no other of two
    no_piece: str = "(?!)"  # of what else there may be two, and what makes the other somebody else's: where these stand before it, "the other one" is no piece of his
    parts: str = "(?!)"  # parts of a piece that come in twos: behind its name
    harms: str = "(?!)"  # the same of what is wrong with it
    of_it: str = "(?!)"  # right before "the other one": what only a piece has
