"""The shape of the turns of words by which acts are told as left, waiting, mended or short."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Turns:
    """Words that take an act back, in part or whole, or set it right again. Regular expressions over the lower-case words of a clause.

    `faults` and `unhappened` carry the facts they can be wrong with; none: whichever was named last.
    """

    beside: frozenset[str] = frozenset()
    nouns: tuple[tuple[str, str], ...] = ()
    faults: tuple[tuple[str, tuple[str, ...]], ...] = ()
    meanwhile: str = "(?!)"  # behind a fault: when it came about
    any_side: str = "(?!)"  # in the words of a fault: a side that a word beside it tells from the others
    standing: tuple[str, ...] = ()
    tabs_short: tuple[str, ...] = ()
    tabs_done: tuple[str, ...] = ()
    tabs_left: tuple[str, ...] = ()
    tabs_all: tuple[str, ...] = ()
    unhappened: tuple[tuple[str, tuple[str, ...]], ...] = ()
    missed: tuple[str, ...] = ()
    ran_short: tuple[str, ...] = ()
    extents: tuple[str, ...] = ()
    fractions: tuple[str, ...] = ()
    degrees: tuple[str, ...] = ()
    alone: tuple[str, ...] = ()
    left_to_do: tuple[str, ...] = ()
    keeps: str = "(?!)"  # in a sentence that would take something back: it is not to be taken back
    excepts: tuple[str, ...] = ()
    sides_only: tuple[str, ...] = ()
    closes: tuple[str, ...] = ()
    goes_over: tuple[str, ...] = ()
    strips: str = "(?!)"  # the tape that was on is taken off
    only_meant: str = "(?!)"
    anew: tuple[str, ...] = ()
    records: tuple[str, ...] = ()
    mended: tuple[str, ...] = ()
    on_the_way: str = ""  # what may be told before the mending: "I opened it up again and ..."
    mends_only: tuple[tuple[str, tuple[str, ...]], ...] = ()  # how work begins that mends no other facts than these
    of_mending: frozenset[str] = frozenset()  # besides `beside`, the words that tell of mending no other thing than the work
    tab_word: str = ""
    bare: tuple[str, ...] = ()
    thought: tuple[str, ...] = ()
    said_so: tuple[str, ...] = ()
    affirms: tuple[str, ...] = ()
    says_done: tuple[str, ...] = ()  # of the piece, where he himself told that an act was not done
    closers: tuple[tuple[str, str, str], ...] = ()  # words of `affirms` that end a note as well, and what a lack must be told with for them to set it right, in their sentence and in the one before
    denies: tuple[str, ...] = ()
    out_again: tuple[str, ...] = ()  # at the end of a clause: what was in was taken out
    too_much: str = "(?!)"  # … but nothing that holds the piece: "la fibra se la quité"
    in_after_all: tuple[str, ...] = ()  # at the end of a clause: what was forgotten was put in
    past_is_plain: str = "(?!)"  # how words begin in which those verbs are never told of what is to come
    one_was_put: str = "(?!)"  # of those words: one thing, and not several
    of_his_deed: str = "(?!)"  # of the words that deny: what he did not do, and not how it is
    leads: str = ""
    room: tuple[str, ...] = ()
    wishes: tuple[str, ...] = ()
    seems: tuple[str, ...] = ()
    cuts_out: str = "(?!)"  # a hole that a branch or a collar sits in; at the end of these words
    goes_on: str = "(?!)"  # with his work, past damage
    mends: tuple[str, ...] = ()
    on_damage: tuple[str, ...] = ()  # tape, up to the damage that it lies on
    tapes_it: tuple[str, ...] = ()  # the same, where only "it" tells that the damage is meant
    hollow: tuple[str, ...] = ()
    formerly: tuple[str, ...] = ()
    takes_it_back: str = ""  # words that take back what was said right before, whatever comes behind
    turns_to_no: str = "(?!)"  # how words begin that deny it, behind words that may turn round: "hold on", "I mean"
    did_it_not: str = "(?!)"  # the whole of them: he did not do it, whatever he calls the act
    only_so_many: str = ""  # "only the first two": group `n` how many, group `first` where they are the first and not the last
    so_many: tuple[str, ...] = ()  # one, two, three, …, as it names them
    others_of_them: str = ""  # begins what is said of the rest of a batch
    untrue: str = "(?!)"  # in what denies: another's word, and no act
    besides: str = r" (?:and|so) "  # what is told besides begins
    used_to: tuple[str, ...] = ()  # how it was; states nothing where `by_now` begins the words behind
    by_now: tuple[str, ...] = ()
    earlier: str = ""
    takes_back: tuple[tuple[str, str], ...] = ()
    no_such: str = ""  # why a piece is taken back: there is none of that number, or it was told twice
    unsaid: str = ""  # what he said right before is not so: "forget I said that"
    tells: tuple[str, ...] = ()
    fault_ahead: str = "(?!)"  # with what a sentence begins that tells of a gap or of harm
    regardless: str = "(?!)"  # what was done so in spite of a fault, and mends nothing
    forgets: str = "(?!)"  # he does not know any more whether he did it; before the act
    waiting: tuple[tuple[str, str], ...] = ()
    waits: tuple[str, ...] = ()
    over_there: str = ""  # right behind a bare distance: the place where staples are so far apart
    spreads: str = "(?!)"  # staples that go on wider: verb and "to", the whole of it
    why_wide: tuple[str, ...] = ()  # staples in short supply: the whole of it, behind how it was done
