"""The shape of words that tell that what is not done on a piece is still to come."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Left:
    """Regular expressions over lower-case words; each is looked for only where an act was told as not done, or done in part.

    `beside` is found in the sentence of that act, `behind` begins the sentence behind it, `ahead` is found in the one before it.
    """

    beside: str = "(?!)"
    behind: str = "(?!)"
    ahead: str = "(?!)"
    in_part: str = "(?!)"  # beside what was done in part alone: the rest is still to be done
    mends: str = "(?!)"  # behind a damage: somebody has still to see to it
    others: str = "(?!)"  # in those words: they are of other work
