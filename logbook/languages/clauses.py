"""The shape of the words that a sentence about two pieces is cut by: "31 is done, and I left the tape off 12"."""

from __future__ import annotations

from dataclasses import dataclass

_NONE: frozenset[str] = frozenset()


@dataclass(frozen=True)
class Clauses:
    """Single words in lower case."""

    joints: frozenset[str] = _NONE  # between two clauses, beside the signs
    leads: frozenset[str] = _NONE  # may stand before who or what the second is of
    people: frozenset[str] = _NONE  # begin a clause
    it: frozenset[str] = _NONE  # the same, with how warm it was: "it was 38 degrees when I taped 12"
    there: frozenset[str] = _NONE  # the same: "there's no tape on 12"
    points: frozenset[str] = _NONE  # begin what a clause is of: "the staples in 12"
    wholes: frozenset[str] = _NONE  # the same, that need no verb: "no problem with 12"
    at_it: frozenset[str] = _NONE  # between such a thing and the name of its piece
    to_another: frozenset[str] = _NONE  # before a name: it is only where the piece goes
    between: frozenset[str] = _NONE  # the same of the second of two: "the joint between it and 72"
    got_to: frozenset[str] = _NONE  # before those: it is the piece all the same
    verbs: frozenset[str] = _NONE  # right behind who or what the clause is of
    past: tuple[str, ...] = ()  # how other verbs end
    of_several: frozenset[str] = _NONE  # the same of several things: right behind the name, that is one of several pieces
    short: frozenset[str] = _NONE  # behind the name, and nothing else: the first clause tells what
    leans: frozenset[str] = _NONE  # in the second: the first tells what is meant
    binds: frozenset[str] = _NONE  # in the first: the second hangs on it
    binds_ahead: frozenset[str] = _NONE  # the same, before the name
    opens: frozenset[str] = _NONE  # the same, as its first word
    deeds: frozenset[str] = _NONE  # makes a clause of the first without a verb
    unnamed: frozenset[str] = _NONE  # runs and other things with a number that are no pieces
