"""The shape of what is said in a roundabout way, and of the plain words that it is read as."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Plainer:
    """A regular expression over lower-case letters of the whole note; each of the groups named in `means` is read as the words beside it.

    `\\1` and `\\g<name>` in those words are what the groups hold. A note without one of the `cues` is not looked at, nor one that `unless` finds.
    """

    cues: tuple[str, ...]
    words: str
    means: tuple[tuple[str, str], ...]
    unless: str = ""
    beside: tuple[str, ...] = ()  # of these too the note must hold one
