"""The shape of a sentence that tells its piece at the last: "only thing left on seven is the vanes", "closed with cloth tape is eighty two"."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class ToldAtLast:
    """Patterns, on words in lower case with one blank between them; `#` stands for a number."""

    leads: frozenset[str] = frozenset()  # the words that can stand right before such a number
    slots: tuple[tuple[str, str, int], ...] = ()  # what ends right before it, what begins right behind it, and the least number that counts nothing there
    behind: str = ""  # what may stand behind it in all of them: who is told of goes on, or something new begins
    measured: str = ""  # ends right before it: it is rather how long, how far or how many
    within: str = ""  # the same where a word ahead takes it in: "closed with cloth tape is"
    spaced: str = ""  # before it: of a number in which distances are counted it is how far apart
