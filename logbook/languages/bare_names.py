"""The shape of the words among which a number alone is the name of a piece: "taped 17 cold", "straps on 58", "where 56 goes onto the unit"."""

from __future__ import annotations

from dataclasses import dataclass

_NONE: frozenset[str] = frozenset()


@dataclass(frozen=True)
class BareNames:
    """Single words in lower case."""

    name: str = ""  # the word that is put before such a number
    names: str = ""  # the same before several
    number: str = ""  # the same beside the kind of the piece
    naming: frozenset[str] = _NONE  # right before a number: this is a name already
    kinds: frozenset[str] = _NONE  # words for a piece
    acts: frozenset[str] = _NONE  # what is done to a piece
    handlings: frozenset[str] = _NONE  # the same, of anything: they need a word of how it came out
    turned_out: frozenset[str] = _NONE  # that word
    ways: frozenset[str] = _NONE  # between an act and what it is done to, or behind that
    shares: frozenset[str] = _NONE  # "all of", "the bottom of"
    things: frozenset[str] = _NONE  # what is on a piece, in it or for it
    held: frozenset[str] = _NONE  # what can be in a piece
    spaced: frozenset[str] = _NONE  # of these: what is so far apart that the number could be its distance
    joined: frozenset[str] = _NONE  # where pieces meet: "the seam at"
    placed: frozenset[str] = _NONE  # "over at", "up at"
    on: frozenset[str] = _NONE
    inside: frozenset[str] = _NONE
    of: frozenset[str] = _NONE
    at: frozenset[str] = _NONE
    to: frozenset[str] = _NONE
    of_use: frozenset[str] = _NONE  # "for"
    along: frozenset[str] = _NONE  # "with"
    where: frozenset[str] = _NONE
    going: frozenset[str] = _NONE  # before "back to"
    back: frozenset[str] = _NONE
    busy: frozenset[str] = _NONE  # before "on": what he works at
    now: frozenset[str] = _NONE
    troubles: frozenset[str] = _NONE  # before "with"
    is_: frozenset[str] = _NONE
    has: frozenset[str] = _NONE  # what a piece does, or is said to have
    meets: frozenset[str] = _NONE  # what it does where it ends
    states: frozenset[str] = _NONE  # behind "is"
    barely: frozenset[str] = _NONE  # between "is" and those: "not", "all"
    leads: frozenset[str] = _NONE  # the clause begins behind these
    moves: frozenset[str] = _NONE  # "took 51 in three inches"
    directions: frozenset[str] = _NONE
    behind: frozenset[str] = _NONE  # what may stand right behind a name
    points: frozenset[str] = _NONE  # "the", "that": before the kind that a name stands beside
    turns: frozenset[str] = _NONE  # kinds of which some numbers are a turn
    sloped: frozenset[str] = _NONE  # in the sentence: a side moves so much in so much
    to_another: frozenset[str] = _NONE  # "fifteen through nineteen", "14 by 10"
    are: frozenset[str] = _NONE
    pronouns: frozenset[str] = _NONE
    fillers: frozenset[str] = _NONE  # before the first words of a note
    doubts: frozenset[str] = _NONE  # behind a number that opens a note: it is a measure
    denials: frozenset[str] = _NONE  # the same where another number follows
    off: frozenset[str] = _NONE  # "off", "except"
    joins: frozenset[str] = _NONE  # between the names of a list
    places_numbered: frozenset[str] = _NONE  # rooms, floors, crews and what else has a number
    does_so: tuple[str, ...] = ()  # how a word ends that tells what is done or happens
    lengths: frozenset[str] = _NONE  # of what could be so long: "the top of 8"
    units: frozenset[str] = _NONE  # "the last four foot of 76"
    holes: frozenset[str] = _NONE  # one thing on a piece, of which no number counts the places
    warmth: frozenset[str] = _NONE  # where these are told of, a number is how warm
    got: frozenset[str] = _NONE
    people: frozenset[str] = _NONE
    over: frozenset[str] = _NONE  # "all over 19", "halfway round 56"
    right: frozenset[str] = _NONE  # "all", "halfway"
    square: frozenset[str] = _NONE  # "square throat 123"
    throat: frozenset[str] = _NONE
    cuts: frozenset[str] = _NONE  # "cut 54 two inches short"
    points_at_one: frozenset[str] = _NONE
    whole: frozenset[str] = _NONE  # "407 complete"
    ones: frozenset[str] = _NONE  # "the long one"
    fresh: frozenset[str] = _NONE  # "cut 54 fresh"
    each: frozenset[str] = _NONE  # "16 on each side"
    about: frozenset[str] = _NONE  # "regarding 427", "what I said on 115"
    told: frozenset[str] = _NONE
    did: frozenset[str] = _NONE  # "what I did to 423"
    through: frozenset[str] = _NONE
    one_thing: frozenset[str] = _NONE  # a thing in the singular, which no number counts: "54 joint was open"
    texted: frozenset[str] = _NONE  # acts as thumbs write them
    counted: frozenset[str] = _NONE  # what is bought, cut or driven by the number and has a length
    other_kinds: frozenset[str] = _NONE  # words for a piece that are words for other things as well
    deeds: frozenset[str] = _NONE  # behind "57 I": what was done, or is to be
    well: frozenset[str] = _NONE  # "ten is good"
    told_of: frozenset[str] = _NONE  # "27 and there's"
    spots: frozenset[str] = _NONE  # "68 by the elevator"
    bosses: frozenset[str] = _NONE  # "91 the boss had me"
    onward: frozenset[str] = _NONE  # "moved on to"
    measuring: frozenset[str] = _NONE
    knocks: frozenset[str] = _NONE  # what else befalls a piece: "knocked 81 off the horses"
    carriers: frozenset[str] = _NONE  # what a piece falls off
    took: frozenset[str] = _NONE  # "took 45 and 46"
    minds: frozenset[str] = _NONE  # before "on": "I messed up on 38"
    us: frozenset[str] = _NONE  # "71 me and Joe taped"
    in_turn: frozenset[str] = _NONE  # "next is 93", "the other one 85"
    that: frozenset[str] = _NONE
    thats: frozenset[str] = _NONE  # with its verb, as one word
    line_things: frozenset[str] = _NONE  # right behind the number that a typed line begins with: one thing, or how it is
    line_wide: frozenset[str] = _NONE  # the same, where a small number is how wide it is
    line_counts: frozenset[str] = _NONE  # the same, of what is counted too
    line_told: frozenset[str] = _NONE  # and how those are told: "125 staples every two"
    line_every: frozenset[str] = _NONE
    line_bought: frozenset[str] = _NONE  # "50 tape rolls"
    line_kinds: frozenset[str] = _NONE
    line_places: frozenset[str] = _NONE  # "125 buried"
    line_grounds: frozenset[str] = _NONE  # "125 in the slab"
    line_same: frozenset[str] = _NONE  # "125 is not taped, 126 same"
    everything: frozenset[str] = _NONE  # "everything on 34 got stapled"
    sits: frozenset[str] = _NONE  # what is fixed to a piece: "the collar of 96"
    tells_apart: frozenset[str] = _NONE  # behind "the elbow": which of them it is
    line_turned: frozenset[str] = _NONE  # words for a piece that stand before its number everywhere else
    line_sides: frozenset[str] = _NONE  # "125 top not taped", but not "18 back"
