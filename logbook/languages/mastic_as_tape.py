"""The shape of the words by which mastic is told of as tape is: "mastic on half of it"."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class MasticAsTape:
    """Regular expressions over plain letters."""

    words: tuple[tuple[str, str], ...] = ()  # a word of mastic, and that of tape that stands as it does in a sentence
    beside: str = ""  # tape, another thing that closes, or a mend: with one of these in the note the mastic is not told of as the tape would be
