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
    # --- for a note without any sign
    subjects: frozenset[str] = frozenset()  # a subject with its verb, or of things seen here: a sentence begins with it
    people: frozenset[str] = frozenset()  # who did it, or what it is, before a verb in one item with it
    names: frozenset[str] = frozenset()  # first names, each somebody else right before what was done
    so: frozenset[str] = frozenset()  # what follows from what was said
    breaths: frozenset[str] = frozenset()  # said between two things
    binders: frozenset[str] = frozenset()  # last words that a subject behind them belongs to: "because", "said", "than"
    links: frozenset[str] = frozenset()  # first words of an item that need what stands before them: "is taped", "has no"
    closers: frozenset[str] = frozenset()  # small words that end what was said
    plain_not: frozenset[str] = frozenset()  # deny what stands behind them by themselves
    right_angles: frozenset[str] = frozenset()  # numbers that are a turn and count nothing
    adverbs: frozenset[str] = frozenset()  # stand between somebody and what he did
    takers: frozenset[str] = frozenset()  # last words that a piece behind them belongs to: "finished", "your"
    ticks: frozenset[str] = frozenset()  # answer what stands right before them
    some: frozenset[str] = frozenset()  # before a thing that was not told of: "a good eighth"
    reaching: frozenset[str] = frozenset()  # last words of an item that reach for what stands behind it: "flat on"
    shares: frozenset[str] = frozenset()  # how much of it: "half"
    partly: frozenset[str] = frozenset()  # the same as one word before an act
    claims: frozenset[str] = frozenset()  # last words that a whole sentence or a piece behind them belongs to: "pretend", "send"
    lacking: frozenset[str] = frozenset()  # first words of a lack that hang on what stands before them
    asking: frozenset[str] = frozenset()  # first words of a question
    within: frozenset[str] = frozenset()  # "in": the place may follow
    relative: frozenset[str] = frozenset()  # tells which one, behind a thing that was not told of
    did: frozenset[str] = frozenset()  # "I did": an answer by itself
    nots: frozenset[str] = frozenset()  # before "yet"
    denials: frozenset[str] = frozenset()  # deny what stands before them, all by themselves
    mocking: tuple[tuple[str, ...], ...] = ()  # the same in more words
    deeds: frozenset[str] = frozenset()  # verbs with nobody before them: "left them out"
    objects: frozenset[str] = frozenset()  # last words of such a verb
    doings: frozenset[str] = frozenset()  # acts as things: "the rubbing"
    verbs: frozenset[str] = frozenset()  # of a thing: "the tape ran out"
    had: frozenset[str] = frozenset()  # "had to": what came over what he did
    short: frozenset[str] = frozenset()  # "short on one side"
    gonna: frozenset[str] = frozenset()  # a plan with nobody before it
    few: frozenset[str] = frozenset()  # "a few popped": some of what was told of
    idle: frozenset[str] = frozenset()  # said of the day's work when nothing is left
    each: frozenset[str] = frozenset()  # before a side that is moved as much as the other
    across: frozenset[str] = frozenset()  # "taped over": the damage follows
    him: frozenset[str] = frozenset()  # people who did nothing: "us"
    one: frozenset[str] = frozenset()  # "the fourth one"
    zero: frozenset[str] = frozenset()  # so many of what stands before it
    pointing: frozenset[str] = frozenset()  # before a thing that is told of, so that a word before them is none of its names
    anybody: frozenset[str] = frozenset()  # whoever it was that did, or did not do, what stands behind
    sorts: frozenset[str] = frozenset()  # "kind of": before a noun they name it, and doubt nothing
    whys: frozenset[str] = frozenset()  # "don't ask me why": a sentence ends with them
    extents: frozenset[str] = frozenset()  # how well or how far: no sentence of its own is made of them
    opening: frozenset[str] = frozenset()  # first words of what only leads to a sentence: "halfway through"
    so_many_sides: frozenset[str] = frozenset()  # as a piece has
