"""The shape of the words for the speaker and somebody with him: "Rick and me", "my helper and I", "the two of us"."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Together:
    """Regular expressions over a text as it stands; `{name}` in them stands for whoever can be named beside the speaker."""

    looks: str = ""  # the letters without which nobody is with him
    people: str = "(?!)"  # who may stand there without a name
    pairs: tuple[str, ...] = ()
    not_behind: str = "(?!)"  # at the end of the words before: they are what something is done to, or with, or for
    before: str = "(?!)"  # how the words behind begin, where these are who does it
    days: frozenset[str] = frozenset()  # written with a capital, and nobody's name
    we: str = ""
    as_one: tuple[tuple[str, str], ...] = ()  # how the speaker says it who speaks for himself alone; the earlier row first
    only_as_many: str = "(?!)"  # how the words behind begin, where it is the crew at large that does it, or the words of one mean another thing
