"""The shape of the words that tell of several pieces at once and of one of them: "all three are taped, only the middle one isn't rubbed"."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True)
class Several:
    """Regular expressions over lower-case letters; `{kind}` stands for a word for one piece, `{several}` for one for more, `{name}` for the number of one."""

    cues: str = "(?!)"  # the letters without which no note tells so
    digits: str = "(?!)"  # what names a piece by itself, in figures, in words and either
    numerals: str = "(?!)"
    number: str = "(?!)"
    no_name: str = "(?!)"  # behind such a number: it measures or counts
    no_name_before: str = "(?!)"  # right before it
    joins: str = "(?!)"  # between two numbers of a list
    neither: str = "(?!)"  # before a list of pieces of which none is so
    on_it: str = "(?!)"  # before a low number of which something is told, and behind it
    told_of: str = "(?!)"
    listed: str = "(?!)"  # before numbers in words that are a list
    with_act: str = "(?!)"  # behind an "and" that joins two acts done to what is named next
    done_to: str = "(?!)"  # an act right before the number of what it is done to
    the_one_in: str = "(?!)"  # "the one in", "those on": before a number
    rest: str = "(?!)"  # all but those that were spoken of last
    beside: str = "(?!)"  # before a name that what is behind it is not said of
    few: str = "(?!)"  # "the last two": which end in `n`, how many in `c`
    ranges: str = "(?!)"  # between the first and the last of a row of numbers
    led: str = ""  # words for a number: "number", "mark"
    whole: str = "(?!)"  # what stands for all of them
    theirs: str = "(?!)"  # the same, where no single one was spoken of last
    nothing: str = "(?!)"  # what stands for none of them, with the verb
    some: str = "(?!)"  # so many of them, in the group `c`
    counts: Mapping[str, int] = field(default_factory=dict)
    one_of: str = "(?!)"  # one of them, which is named behind
    placed: str = "(?!)"  # one by its place, in the group `n`; a number behind it in `m`
    places: Mapping[str, int | None] = field(default_factory=dict)
    called: str = "(?!)"  # "the straight's 80": the kind in `k`, the number in `m`
    subject: str = "(?!)"  # behind a number that names a piece by what is told of it
    starts: str = "(?!)"  # where a clause begins
    leads: str = "(?!)"  # between the start of a clause and a name
    apart: str = "(?!)"  # what sets one apart, right before its clause
    leans: str = "(?!)"  # what names a piece beside another, or puts a name right: no note of this sort
    agree: tuple[tuple[str, str], ...] = ()  # behind what stands for several, and the same of one
    hollow: str = "(?!)"  # words that tell nothing of a piece
    things: str = "(?!)"  # what is measured or done
    measure: str = "(?!)"  # one measure, its unit in `u`
    laid: str = "(?!)"  # how long or wide: such a measure stands for no other
    denied: str = "(?!)"
    hedged: str = "(?!)"
    same: str = "(?!)"  # "the same": the whole of what is told of it
    same_but: str = "(?!)"  # "the same but two inches": told by what another has, so that it is read beside it
    short: str = "(?!)"  # "isn't", "does": what was told before, or not, in the groups `no` and `yes`
    acts: str = "(?!)"
    is_not: str = ""
    is_so: str = ""
    not_it: str = "(?!)"  # all that is told of the one: that it is not so
    nouns: str = "(?!)"  # what "they" stands for where one piece is spoken of, and the article before it
    the: str = ""
    sides: str = "(?!)"  # a part of one piece
    of_one_piece: str = "(?!)"  # what one piece has several of
    classes: frozenset[str] = frozenset()  # numbers of tapes and boards
    nots: Mapping[str, str] = field(default_factory=dict)  # the verb behind "none of them", and the same denied of one
    never: str = ""  # where there is no verb
    it: str = ""
    doubt: str = ""  # before a measure that is not sure
    farewell: int = 0  # so many words of a last sentence tell of nothing, unless it is about one of `things` or holds one of `answers`
    answers: str = "(?!)"
    bye: str = "(?!)"  # the whole of a last sentence that tells of nothing
    next_one: str = ""  # what may stand between the start of a sentence and the piece that it names
    of_all: tuple[tuple[str, str], ...] = ()  # in a sentence that closes a note: words for all of its pieces, each with what stands for one of them
    of_two: str = "(?!)"  # those of these words that tell of no more than two
    of_mark: str = "(?!)"  # there: a piece named before, named again by its number; `{mark}` stands for it, `{subject}` for what is told of it
    of_others: str = "(?!)"  # in a sentence on one piece: words that tell of another, or of several; `{kind}` stands for its words
    of_one: str = ""  # before the number of a piece of no kind
