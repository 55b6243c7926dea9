"""The shape of the words that tell where a clause ends that no comma or stop ends."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class RunOn:
    """Words in lower case, each the first of an item or the whole of it; a language without `bare` has no such text read apart."""

    bare: frozenset[str] = frozenset()  # acts as a list of what was done tells them: with no object and nobody who did them
    auxiliaries: frozenset[str] = frozenset()  # deny a verb that stands behind them as the dictionary has it
    copulas: frozenset[str] = frozenset()  # deny how a thing is
    there: frozenset[str] = frozenset()  # before such a one: that a thing is there at all
    causes: frozenset[str] = frozenset()  # verbs that reach an act behind them or their object: "didn't get it stapled", "didn't come stapled"
    senses: frozenset[str] = frozenset()  # of those, the ones that reach only an act on the piece: "couldn't find the wide roll"
    better: frozenset[str] = frozenset()  # how a verb wants its object, so that it needs no act behind
    it_is: frozenset[str] = frozenset()  # a subject with its verb, before an act
    now: frozenset[str] = frozenset()  # behind "it is": what was not done before was done since
    several: frozenset[str] = frozenset()  # stand for parts, and not for the piece
    this_one: frozenset[str] = frozenset()  # stands for the piece, so that "it" behind is no piece
    opinions: frozenset[str] = frozenset()  # verbs and denials of what is said or thought: all behind them is
    fills: frozenset[str] = frozenset()  # behind such an object: the verb has what it needs
    wholes: frozenset[str] = frozenset()  # a lack by itself: "has none"
    adjectives: frozenset[str] = frozenset()  # behind a denied copula they are what is denied, however small they are elsewhere
    would: frozenset[str] = frozenset()  # a verb behind it is not done
