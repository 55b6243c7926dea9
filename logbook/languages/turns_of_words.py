"""The shape of whole turns of words: an act and what is said of it, wherever its noun stands."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Turn:
    """A whole turn of words and the facts it states: `cue` is looked for first, `beside` must and `unless` must not stand in its sentence.

    A value `n` is the number that the group `n` names, a value `m` the measure that its group `m` is; a measure sets right what was told of the fact before.
    Where a group `w` stands, the facts stand on its words alone; what stands in a group `a` tells nothing else, though it be a number or a piece.
    """

    cue: str
    words: str
    states: tuple[tuple[str, object], ...]
    beside: str = ""
    unless: str = ""
    one: bool = False  # only where the note names one piece
    asked: bool = False  # what a drawing or another asks for, or did, and what might have been, may stand in it


@dataclass(frozen=True)
class WholeTurns:
    """Words that say of a thing or an act that it was done or was not, wherever its noun stands: regular expressions over a sentence in lower case.

    `{acts}` is one of `nouns` or `deeds` (an act as a thing) or a list of them, with `before` before each.
    """

    cue: str = ""
    nouns: tuple[tuple[str, str], ...] = ()
    deeds: tuple[tuple[str, str], ...] = ()
    before: str = ""
    before_deeds: str = "(?!)"
    joins: str = "(?!)"  # between the nouns of a list
    denied: tuple[str, ...] = ()
    open: tuple[str, ...] = ()  # not done, and work still to do
    done: tuple[str, ...] = ()
    bears: tuple[str, ...] = ()  # done where nothing else is said of it
    alone: tuple[str, ...] = ()  # the same, a noun between commas
    asked_not: tuple[str, ...] = ()  # what a drawing or another asks for, and he did or did not do
    asked_done: tuple[str, ...] = ()
    instead: str = ""  # before a noun: it was not used, and nothing is said of it
    faulty: str = ""  # behind a noun: it is the fault that there is none of
    facts: tuple[Turn, ...] = ()
    plans: tuple[str, ...] = ()  # from the start of a clause: states nothing
    others: tuple[str, ...] = ()
    another: tuple[str, ...] = ()  # from the start of a clause, where one piece alone was named before: told of another
    orders: tuple[str, ...] = ()  # how it is to be done, and what would be if not
    leads: str = ""  # what may stand before a plan
    own_again: str = ""  # from here on it is the speaker's own piece again
    unless: str = ""  # before it in its sentence: says nothing
    was_so: str = "(?!)"  # a lack that was, and may be none by now
    after_all: tuple[tuple[str, str], ...] = ()  # (fact, words) right behind a denial of it: it is done by now
