"""The shape of the words by which one language shines through another: "the legs they are to inside", "I put to him the vanes"."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Calques:
    """Words in lower case. A language without them is not looked through."""

    turned: frozenset[str] = frozenset()  # how legs are bent, between them and the side they go to
    stays: frozenset[str] = frozenset()  # between a thing and how it is: "the step remained outside"
    me: frozenset[str] = frozenset()  # before "I": the same man
    his: frozenset[str] = frozenset()  # before a thing that the piece has: "it has his vanes"
    him: frozenset[str] = frozenset()  # behind "put to": the piece
    lacks: frozenset[str] = frozenset()  # behind a thing that is not there: "the tape lacks"
    separated: frozenset[str] = frozenset()  # before a measure: so far apart
    between: frozenset[str] = frozenset()  # before things that are spaced, "there is" and a measure
    measures: frozenset[str] = frozenset()  # between a thing and how long or wide it is
    still: frozenset[str] = frozenset()  # between a thing and "no": not yet
    doubled: frozenset[str] = frozenset()  # of tabs: bent
