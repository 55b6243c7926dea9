"""The shape of the words that set a number right by itself: "that's sixteen I'm holding, not seventeen", "it's not two, it's three"."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class NumberSetRight:
    """Regular expressions over lower-case letters in which every whole number that is no measure stands as `<7>`.

    `named` finds the names of pieces, with the number in `n`; each of `fixes` what sets one right, with the wrong number in `n`, the right one in `m`.
    """

    cues: tuple[str, ...] = ()  # the letters without which nothing is set right so
    named: str = "(?!)"
    fixes: tuple[str, ...] = ()
