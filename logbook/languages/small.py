"""The shape of a language's sets of small words: each is what one place of the reading looks for beside a thing, an act or a measure."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True)
class Small:
    """Words and short phrases in lower case. The reading looks for those of all languages at once, since crews mix them."""

    yes: frozenset[str] = frozenset()  # the whole of an answer, or its first word
    no: frozenset[str] = frozenset()  # the same
    than: frozenset[str] = frozenset()  # behind it a measure is no measure of its own: "closer than sixteen", "the size of a quarter"
    back_to_it: frozenset[str] = frozenset()  # begins to go on about the piece that was asked after
    that_went_on: frozenset[str] = frozenset()  # behind a tape that was found somewhere: "that's what's on it"
    leads_to_piece: frozenset[str] = frozenset()  # before a number that a sentence begins with: "on 13 the roll ran out"
    worked: frozenset[str] = frozenset()  # before numbers that are pieces: "did 73 and 74 together"
    gone: frozenset[str] = frozenset()  # of a thing that was there: it no longer is
    held: frozenset[str] = frozenset()  # how a thing is fixed or stands: no gap beside it
    several_harms: frozenset[str] = frozenset()  # damages of which there is more than one
    falls_short: frozenset[str] = frozenset()  # right behind a thing of which there are too few
    takes_so_many: frozenset[str] = frozenset()  # words behind which stands how many of a thing a piece takes: "it wants five"
    object_of_verb: frozenset[str] = frozenset()  # in the words of an act: what was done to the piece, no name of the act
    denies_deed: frozenset[str] = frozenset()  # a denial of what was done, and not of how it is
    works_from: frozenset[str] = frozenset()  # before "from the male end": laying out a piece
    lies_elsewhere: frozenset[str] = frozenset()  # where parts lie that are not in
    in_the_piece: frozenset[str] = frozenset()  # places in a piece: parts that lie there are in
    led_to_piece: frozenset[str] = frozenset()  # before a number in a question after what is missing: it is a piece
    so_it_is_not: frozenset[str] = frozenset()  # what the work is for, or, before an act, that it was not done
    how_it_sits: frozenset[str] = frozenset()  # behind "no" and a thing: how the thing might have come out, that is there
    joints: frozenset[str] = frozenset()  # where two parts meet, and not a corner of one
    flush: frozenset[str] = frozenset()  # of a groove that has no step there
    so_it_is: frozenset[str] = frozenset()  # the harm stays as it is, where nothing was done about it
    finds: frozenset[str] = frozenset()  # before a gap: it is there
    minds: frozenset[str] = frozenset()  # before a gap: only thought of
    puts: frozenset[str] = frozenset()  # between a thing and the "none" that is of it
    none: frozenset[str] = frozenset()  # behind a thing: there is none of it
    found_then: frozenset[str] = frozenset()  # before "later" and a deed: what came up at that time, and was dealt with
    where_they_are: frozenset[str] = frozenset()  # behind "but two": which of them they are
    fought: frozenset[str] = frozenset()  # behind such: they were only hard to do
    runs_short: frozenset[str] = frozenset()  # before "short of": there were too few, and nothing is set apart
    of_the_allowed: frozenset[str] = frozenset()  # behind a fraction: of what a test allows, no measure
    leak_words: frozenset[str] = frozenset()  # in a sentence of a test for leaks, where a number without a unit is a flow
    nothing: frozenset[str] = frozenset()  # behind an act: it was done to none of it
    off_it: frozenset[str] = frozenset()  # between an act and what it was done to: "wiped down", "warmed up"
    nothing_more: frozenset[str] = frozenset()  # behind "nothing": it is no more than what was told, or but this
    at_hand: frozenset[str] = frozenset()  # behind such a word: of what he has with him
    wishes: frozenset[str] = frozenset()  # before what is only to be done
    flaws: frozenset[str] = frozenset()  # behind "no tape with": the same
    lacks: frozenset[str] = frozenset()  # behind a denial and before a thing: it is there
    any_one: frozenset[str] = frozenset()  # between them
    tells_on: frozenset[str] = frozenset()  # behind "everything but": begins a sentence of its own, where it goes on with what was not done
    nobody: frozenset[str] = frozenset()  # denies of everybody
    seen: frozenset[str] = frozenset()  # the same, where harm was told of before it
    shows_at_all: frozenset[str] = frozenset()  # what is to be seen of anything, harm too
    gives_reason: frozenset[str] = frozenset()  # between what he tells and what must be done about it
    knows: frozenset[str] = frozenset()  # behind a denial: how a thing has to be, that he had not heard
    so_then: frozenset[str] = frozenset()  # begins what came of it
    or_so: frozenset[str] = frozenset()  # a doubt of what stands before it alone
    is_or_got: frozenset[str] = frozenset()  # first words of an act that tell how the piece is
    reports: frozenset[str] = frozenset()  # what another does who tells of work
    was: frozenset[str] = frozenset()  # before a plan: one of then
    arrives: frozenset[str] = frozenset()  # behind a denial: what was ordered is not there
    breaks_off: frozenset[str] = frozenset()  # begins a clause that a denial does not reach
    sheets: frozenset[str] = frozenset()  # duct board, where its thickness stands behind it
    them: frozenset[str] = frozenset()  # before a verb: stands for the piece, and begins what is told anew
    looks: frozenset[str] = frozenset()  # stands between the edge and the way it looks
    since: frozenset[str] = frozenset()  # between a denial and the act: it was done since
    corrections: frozenset[str] = frozenset()  # right behind the piece: a note that sets it right
    again: frozenset[str] = frozenset()  # right behind the piece: it was told of before
    ordinals: frozenset[str] = frozenset()  # tell one of several that were named
    beside_it: frozenset[str] = frozenset()  # another piece, by where it is: "its neighbor, thirty-one, …"
    in_so_long: frozenset[str] = frozenset()  # between how much a piece changes and the length that the change takes
    before_mark: frozenset[str] = frozenset()  # behind it a bare number is the piece that the clause tells of
    mine: frozenset[str] = frozenset()  # a piece is the speaker's own
    at_all: frozenset[str] = frozenset()  # between a denial and how a thing is: it is not so in the least
    too: frozenset[str] = frozenset()  # what was said before holds of this one too
    nor: frozenset[str] = frozenset()  # what was denied before is denied of this one
    bends: frozenset[str] = frozenset()  # what is done to tabs of metal, and to none of tape
    of_tape: str = ""  # tabs that are of tape
    two_of_four: frozenset[str] = frozenset()  # "the two long sides": there are two others
    just_the_sides: frozenset[str] = frozenset()  # with an "only", no top and no bottom
    quite: frozenset[str] = frozenset()  # behind a "not", before a figure: it is nearly that
    hangs: frozenset[str] = frozenset()  # a piece does: so far apart are its hangers
    sorts: frozenset[str] = frozenset()  # what is of one sort among others
    hangs_it: frozenset[str] = frozenset()  # one of what holds a duct up: so far apart are no staples
    not_yet: frozenset[str] = frozenset()  # it is still to be done
    is_so: frozenset[str] = frozenset()  # behind a piece's number alone: what was told before is done on it
    so: frozenset[str] = frozenset()  # before "is" and a number: as the one before
    joins: frozenset[str] = frozenset()  # before two pieces: makes them one
    the: frozenset[str] = frozenset()  # articles that point at a thing known
    past_it: frozenset[str] = frozenset()  # before a piece that only tells where another is
    without: frozenset[str] = frozenset()  # ends a clause: what the one before has is not on this one
    onto: frozenset[str] = frozenset()  # between them
    not_that: frozenset[str] = frozenset()  # before a number: it is not that piece
    not_this: frozenset[str] = frozenset()  # behind an act: it was done to another piece
    made: frozenset[str] = frozenset()  # before a bare number: the piece that was made
    rolls: frozenset[str] = frozenset()  # behind a measure: it is of a roll of tape
    my_fault: frozenset[str] = frozenset()  # takes back what was said, right before what is said again
    decades: Mapping[str, int] = field(default_factory=dict)  # "forties", of degrees
    in_a_decade: Mapping[str, int] = field(default_factory=dict)  # right before them: how far into the ten
    whose_age: frozenset[str] = frozenset()  # right before them: years
    calls_it: frozenset[str] = frozenset()  # right before the measure that puts the one before it right
    before_letter: frozenset[str] = frozenset()  # a capital letter behind it is a mark
    articles: frozenset[str] = frozenset()  # belong to a phrase, and not to its words
    points_at_mark: frozenset[str] = frozenset()  # before letters that are a mark
    letter_words: frozenset[str] = frozenset()  # names of letters that are words
    each_other: frozenset[str] = frozenset()  # between a measure and "the other"
    beside_inches: frozenset[str] = frozenset()  # beside a number of inches
    behind_inches: frozenset[str] = frozenset()  # the "in" before it is inches
    behind_in: frozenset[str] = frozenset()  # the "in" before it is a word
    holes: frozenset[str] = frozenset()  # a damage by such a word may be a joint that does not meet
    where: frozenset[str] = frozenset()  # begins the words that tell it
    meets: frozenset[str] = frozenset()  # what such a joint does not do
    turns_nothing: frozenset[str] = frozenset()  # however faintly it was heard, it turns no meaning
    turns_all: frozenset[str] = frozenset()  # a word that ears mix up here may turn the meaning
    some_point: frozenset[str] = frozenset()  # before "point": no number goes on
    no_duct: frozenset[str] = frozenset()  # what may be wet or torn and is no duct
    tools: frozenset[str] = frozenset()  # leave a hole that is named for them
    of_them: frozenset[str] = frozenset()  # "half of the staples"
    legs_turn: frozenset[str] = frozenset()  # what legs do, with "in" behind
    rub_as_order: frozenset[str] = frozenset()  # how the act begins that somebody is asked to do
    handed_on: frozenset[str] = frozenset()  # "left to Kim"
    kept_up: frozenset[str] = frozenset()  # tools that are themselves cleaned, warmed and mended
    owners: frozenset[str] = frozenset()  # before a thing that is somebody's
    machines: frozenset[str] = frozenset()  # have parts that are named like fittings
    of_a_duct: frozenset[str] = frozenset()  # in the words of a damage: it is of a duct
    half: frozenset[str] = frozenset()  # before an act: it is not all done
    half_behind: frozenset[str] = frozenset()  # behind an act: it is not all done
    is_in: frozenset[str] = frozenset()  # before a place: a piece is there
    close_to: frozenset[str] = frozenset()  # before "to" and a place: beside it, and not in it
    part_names: frozenset[str] = frozenset()  # the parts of a piece that have names of their own
    trimmed_parts: frozenset[str] = frozenset()  # of these, what is trimmed by itself
    kept: frozenset[str] = frozenset()  # before a place, and part of it
    led: frozenset[str] = frozenset()  # before a place, and no part of it
    mends: frozenset[str] = frozenset()  # to mend, as it is said of what is still to be done: "patch"
    governs: frozenset[str] = frozenset()  # right before such a verb: it is not done yet
    several_are: frozenset[str] = frozenset()  # a verb of several pieces
    several_lack: frozenset[str] = frozenset()  # the same, and it denies
    none_of_all: frozenset[str] = frozenset()  # denies it of every piece that was named
    one_is: frozenset[str] = frozenset()  # a verb of one piece alone
    some_lack: frozenset[str] = frozenset()  # a verb that denies, of one or of several
    closes_with: frozenset[str] = frozenset()  # behind "run": no number of a run
    forgets: frozenset[str] = frozenset()  # right before a thing: none of it is there
    foil: frozenset[str] = frozenset()  # the tape, where it is so wide or was put on
    lays_tape: frozenset[str] = frozenset()
    lays_foil: frozenset[str] = frozenset()  # right before it: foil that is put on is tape
    pair: frozenset[str] = frozenset()  # before "of" and a kind: two of them
    first_of_them: frozenset[str] = frozenset()
    whose_work: str = ""  # behind "I built 84": by whom or why, so that 84 is its name
    rest: frozenset[str] = frozenset()  # the sides that were not spoken of yet
    cut_words: frozenset[str] = frozenset()  # cuts whose measure is a length
    ought_to: frozenset[str] = frozenset()  # behind "que": what somebody ought to do
    bits: frozenset[str] = frozenset()  # a part of a thing
    of_ours: frozenset[str] = frozenset()  # things that verbs of ours have behind them, and other work has not
    somebody: frozenset[str] = frozenset()  # people who are spoken of, and not to
    on_some: frozenset[str] = frozenset()  # some of the staples, or those of one place
    bears: frozenset[str] = frozenset()  # has staples, or got them
    parts_of_it: frozenset[str] = frozenset()  # of an elbow, a tee
    corners: frozenset[str] = frozenset()
    stands_by: frozenset[str] = frozenset()  # behind "the side": which one it is
    bits_of_it: frozenset[str] = frozenset()  # behind "the last": not all of it
    reaches_past: frozenset[str] = frozenset()  # behind a measure: so far past the harm a patch reaches
    sees: frozenset[str] = frozenset()  # who did not see it done denies nothing
    legs_go: frozenset[str] = frozenset()  # what staple legs do
    staplers: frozenset[str] = frozenset()  # the tool that shoots staples
    loaded: frozenset[str] = frozenset()  # what it is with staples
    ran_out: frozenset[str] = frozenset()  # before a measure that took the place of another: there were no more of that
    spread: frozenset[str] = frozenset()  # before a distance: so far apart they are by now
    strips: frozenset[str] = frozenset()  # what tabs are told to be
    reads: frozenset[str] = frozenset()  # what a thermometer does
    that_is: frozenset[str] = frozenset()  # what was just said comes once more, in other measures
    over_again: frozenset[str] = frozenset()  # how words begin that tell of an act done anew, with a second act behind
    lays: frozenset[str] = frozenset()  # has tape, or got it
    is_on: frozenset[str] = frozenset()  # behind the tape: it is on
    one_side: frozenset[str] = frozenset()  # a side, and not several
    nothing_but: frozenset[str] = frozenset()  # before the tape: that is all it has
    soon: frozenset[str] = frozenset()  # beside a verb in the present: it is a plan
    takes_back: frozenset[str] = frozenset()  # with nothing said instead
    all_of_it: frozenset[str] = frozenset()  # before a measure that a side moves by, which they do not change: "the whole eight"
    parted: frozenset[str] = frozenset()  # phrases of a side or a way that may be two words of a move
    lost: frozenset[str] = frozenset()  # before a measure: a side came in by so much
    takes_off: frozenset[str] = frozenset()  # before a measure and "off it": the piece was made shorter
    it_is: frozenset[str] = frozenset()  # behind a measure that was denied: what it is instead
    wrong_way: frozenset[str] = frozenset()  # of a step that looks out where it should look in
    turn: frozenset[str] = frozenset()  # before a number: an elbow turns by so many degrees
    middles: frozenset[str] = frozenset()  # before a radius that is not the throat's
    went_in: frozenset[str] = frozenset()  # behind vanes: they are in
    lets_into: frozenset[str] = frozenset()  # between two sizes: the second is what the first opens on
    between: frozenset[str] = frozenset()  # before two pieces that this one stands between, or two measures
    the_two: frozenset[str] = frozenset()  # behind it: two pieces named before
    i: frozenset[str] = frozenset()  # begins words in which he tells of his own making
    stands: frozenset[str] = frozenset()  # behind a piece: verbs that tell how it stands
    loosely: frozenset[str] = frozenset()  # a clause of its own: what was done before it was not done in full
    by_now: str = ""  # ends what stands before an act that was lacking before and is done
    and_so: frozenset[str] = frozenset()  # before "I": what he did about what he told
    into: frozenset[str] = frozenset()  # before a piece that others were only let into
    sounds_like_no: frozenset[str] = frozenset()  # what ears write for "no"
    is_new: frozenset[str] = frozenset()  # right before "new" or "know": it was said so
    skins: frozenset[str] = frozenset()  # the facing of the board: where it let go, no staple and no tape came off
    peels: frozenset[str] = frozenset()  # before a measure of foil: so much of the facing was taken off, and no tape went on
    sleeves: frozenset[str] = frozenset()  # without a number: of a shirt
    shifted: frozenset[str] = frozenset()  # what an offset is, before how far
    in_all: frozenset[str] = frozenset()  # behind a number: so many
    box: frozenset[str] = frozenset()  # with a number of its own: a plenum
    pressed: frozenset[str] = frozenset()  # which tape it is
    an_inch: frozenset[str] = frozenset()  # behind "of": how thick board is, how wide tape
    a_quarter: frozenset[str] = frozenset()  # the same of the legs of staples
    sounds: Mapping[str, tuple[int, str]] = field(default_factory=dict)  # what ears write for a number, and the number
    in_twos: Mapping[str, int] = field(default_factory=dict)  # numbers that are a spacing: "stapled on twos"
    one_unit: Mapping[str, str] = field(default_factory=dict)  # "every foot": a unit by itself, and its sign
    panel_sides: Mapping[str, str] = field(default_factory=dict)  # a panel by its side, which moves as that side: "la tapa de arriba baja cuatro"
    cut_nouns: Mapping[str, str | None] = field(default_factory=dict)  # at the end of a word of cutting: the piece, and its kind
    which: Mapping[str, int | None] = field(default_factory=dict)  # "the first", "the other": one of several by its place among them; None: not the one told of last
    several: Mapping[str, str] = field(default_factory=dict)  # kinds in the plural
    headings: Mapping[str, str] = field(default_factory=dict)  # words that are a kind only beside the number of the piece: "38, door"
