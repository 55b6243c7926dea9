"""The shape of the words that deny of a piece by its name what was told of another: "31 is taped, 32 isn't"."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class NotThatOne:
    """Regular expressions over lower-case letters."""

    cues: str = "(?!)"  # a note without one of these has none
    leads: str = ""  # between the start of the clause and the piece
    ahead: str = "(?!)"  # the same, where they deny by themselves: "I can't say the same for"
    behind: str = "(?!)"  # the whole of what stands behind the piece up to the end of the clause
    later: str = "(?!)"  # found in it: that is still to do
