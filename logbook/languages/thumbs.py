"""The shape of what thumbs write short, or wrong, and of the words that are meant."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Short:
    """A short spelling and the words it stands for, where what stands around it leaves one reading.

    `words` is the whole spelling, lower case; `before` is found at the end of the text before it and `after` at the start of the text behind it
    (regular expressions over lower-case text); without them it means nothing else.
    """

    words: str
    means: str
    before: str = ""
    after: str = ""
    same: bool = False  # another word for the same thing, or its letters without their marks: nothing was taken for anything


@dataclass(frozen=True)
class Thumbs:
    """What a language's thumbs write; `slips` are words whose letters are easily dropped, doubled, swapped or missed by a key."""

    shorts: tuple[Short, ...] = ()
    slips: tuple[str, ...] = ()
    true_words: frozenset[str] = frozenset()  # a slip of one of them, and a word of its own
    keys: str = ""  # for each letter those beside it on the keyboard: "asqwz bvghn …"
    yes: str = "(?!)"  # ticks, regular expressions over the signs of a note
    no: str = "(?!)"
    ticked: str = "(?!)"  # at the end of the text before a tick: what it stands behind
    was_done: str = "(?!)"  # the word behind a tick that stands before it: an act told as done, and no thing
    denials: tuple[str, str] = ("not", "no")  # before what was done, before a thing
