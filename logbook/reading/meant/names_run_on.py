"""Where a number is a name in talk that runs on and has no stops: "and then 57 I stapled", "went on to 35 and", "54 joint was open", "dropped 47 off the lift".

What counts or measures stands in the middle of what is told; a name stands at its head, or is what somebody turned to. A number that stands twice
in a note without a unit names something even where things are counted with it: "I did nine and ten, ten I never taped".
"""

from __future__ import annotations

from logbook.reading.meant.heads_a_line import heads_a_line
from logbook.reading.meant.name_places import COUNTS_UP_TO, Spot

_TURNS = (90, 45, 30, 60, 22)
_TOO_MANY = 30  # tabs, staples on one side
_BACK = 9  # tokens


def names_here(spot: Spot, twice: frozenset[int]) -> bool:
    """`twice`: numbers that stand more than once in the note, and never with a unit."""
    again = spot.value in twice
    if heads_a_line(spot):
        return True
    if spot.value in _TURNS and not _one_of_two(spot, again) or spot.value <= COUNTS_UP_TO and not again:
        return False
    return not _anothers(spot) and (_heads(spot, again) or _turned_to(spot) or _that_is(spot) or _off_the_lift(spot) or _one_of_two(spot, again) or _behind_its_kind(spot) or _minded(spot) or _with_its_spacing(spot))


def may_run_on(spot: Spot) -> bool:
    """Whether what stands right behind leaves it a name where `may_be` takes it for a number: one thing and how it is, a measure of what was done to it."""
    words, behind = spot.words, spot.behind()
    if spot.before() in words.places_numbered or not (spot.at == 0 or spot.found[spot.at].gap):
        return False
    if behind == "&" or spot.before() == "&":
        return spot.large
    if heads_a_line(spot):
        return True
    if behind in words.one_thing:
        return spot.behind(1) in words.is_ | words.has | words.barely | words.denials
    if behind in words.has and spot.behind(1) in words.at or behind in words.texted or behind in words.us or behind in words.told_of:
        return True
    if spot.before() in words.acts and spot.last in spot.starts and spot.large:
        return words.counted.isdisjoint(one.low for one in spot.found[spot.last : spot.last + 5])
    return spot.value > _TOO_MANY and spot.before() in words.other_kinds and behind in words.things


def _anothers(spot: Spot) -> bool:
    """ "That's 18 and Danny built it": what somebody else did is told right behind."""
    words, k = spot.words, spot.last
    while k < len(spot.found) and (spot.found[k].low in words.joins or spot.found[k].low in words.points):
        k += 1
    said = [one.low for one in spot.found[k : k + 3]]
    return len(said) == 3 and spot.found[k].sort == "word" and said[0] not in words.people | words.us | words.told_of and said[1] in words.did | words.took and said[2] in words.pronouns


def _opens_clause(spot: Spot) -> bool:
    """Nothing before it in its clause but words that lead to it, or one of those that a new clause begins with."""
    before = spot.before()
    return not before or before in ".;!?," or before in spot.words.fillers or before in spot.words.leads


def _opens_note(spot: Spot) -> bool:
    words = spot.words
    return all(one.low in words.fillers or one.low in words.leads for one in spot.found[spot.clause()[0] : spot.at])


def _heads(spot: Spot, again: bool) -> bool:
    """ "57 I stapled it", "twelve I gotta rub", "27 and there's a rip", "54 joint was open", "79 is the one off the heater", "117 in the freezer, no tape"."""
    if not _opens_clause(spot):
        return False
    words, behind, ahead = spot.words, spot.behind(), spot.behind(1)
    if spot.before() == "," and spot.at - 2 in spot.starts:
        return False
    if behind in words.people:
        return (ahead in words.deeds or ahead in words.acts) and (spot.before() not in words.joins or not _in_a_row(spot))
    if behind in words.one_thing:
        return True
    if behind in words.us:
        return ahead in words.joins
    if behind in words.is_:
        if again:
            k = spot.last + 1
            while k < len(spot.found) and spot.found[k].low in words.barely:
                k += 1
            return spot.found[k].low in words.states or spot.found[k].low in words.well if k < len(spot.found) else False
        return ahead in words.points and any(spot.behind(k) in words.ones or spot.behind(k) in words.kinds for k in (2, 3))
    if not _opens_note(spot) or not spot.large:
        return False
    if behind in words.joins:
        return (ahead in words.people or ahead in words.told_of or ahead in words.points and spot.behind(2) in words.ones or ahead in words.that and spot.behind(2) in words.ones) and spot.trade_behind()
    if behind in words.spots or behind in words.inside:
        return ahead in words.points and spot.behind(2) not in words.shares and spot.trade_behind()
    if behind in words.points:
        return (ahead in words.bosses or ahead in words.one_thing) and spot.trade_behind()
    if behind in words.told_of:
        return spot.trade_behind()
    return behind in words.texted and ahead not in words.line_bought or behind in words.has and ahead in words.at


def _in_a_row(spot: Spot) -> bool:
    """ "Every 12 and 16 I think": another number right before the "and"."""
    return any(spot.at - k in spot.starts for k in (2, 3))


def _turned_to(spot: Spot) -> bool:
    """ "Went on to 35 and", "moved over to 71", "then I went to 92 and it's"."""
    words = spot.words
    if spot.before() not in words.to or spot.behind() not in words.joins and spot.behind() not in ",.;" :
        return False
    if spot.before(2) in words.onward and spot.before(3) in words.going:
        return not any(one.low in words.spaced for one in spot.found[max(0, spot.at - _BACK) : spot.at])
    return spot.before(2) in words.going and spot.before(3) in words.people and spot.behind() in words.joins and (spot.behind(1) in words.people or spot.behind(1) in words.told_of | words.that or spot.behind(1) in words.acts)


def _that_is(spot: Spot) -> bool:
    """ "I'm on the last one and that's 26 and", "the short one that's 39 and", "next is 93 and", "the other one 85 no tape"."""
    words = spot.words
    if spot.before() in words.ones and spot.before(2) in words.in_turn or spot.before() in words.is_ and (spot.before(2) in words.in_turn or spot.before(2) in words.ones and spot.before(3) in words.in_turn):
        return spot.large and spot.behind() not in words.measuring and spot.trade_behind()
    if spot.before() in words.is_ and spot.before(2) in words.ones and spot.before(3) in words.that:
        return spot.large and spot.behind() in words.joins and (spot.behind(1) in words.people or spot.behind(1) in words.told_of) and spot.trade_behind()  # "this one's 78 and I taped it"
    if spot.before() not in words.thats and (spot.before() not in words.is_ or spot.before(2) not in words.that):
        return False
    before = [one.low for one in spot.found[max(0, spot.at - _BACK) : spot.at - 1]]
    return any(one in words.points and any(other in words.ones or other in words.kinds for other in before[k + 1 : k + 4]) for k, one in enumerate(before)) and words.measuring.isdisjoint(before)


def _off_the_lift(spot: Spot) -> bool:
    """ "Dropped 47 off the lift", "pulled 36 down off the cart"."""
    words, k = spot.words, spot.last
    if spot.before() not in words.handlings and spot.before() not in words.knocks:
        return False
    while spot.found[k].low in words.directions if k < len(spot.found) else False:
        k += 1
    said = [one.low for one in spot.found[k : k + 5]]
    return said[:1] == ["off"] and any(one in words.carriers for one in said[1:])


def _one_of_two(spot: Spot, again: bool) -> bool:
    """ "Took 45 and 46 and stapled", "I did nine and ten today and ten I"."""
    words = spot.words
    if spot.before() in words.took:
        return spot.behind() in words.joins and spot.last + 1 in spot.starts and _ends_list(spot, spot.behind(2))
    return spot.before() in words.joins and spot.at - 2 in spot.starts and spot.before(3) in words.took and (spot.large or again) and _ends_list(spot, spot.behind())


def _ends_list(spot: Spot, behind: str) -> bool:
    return not behind or behind in ",.;" or behind in spot.words.joins or behind in spot.words.ways


def _behind_its_kind(spot: Spot) -> bool:
    """ "The splitter 119", "return 96", "sleeve 49 tabs not bent": words for a piece that are other things too."""
    return spot.large and spot.before() in spot.words.other_kinds and spot.trade_behind()


def _minded(spot: Spot) -> bool:
    """ "I messed up on 38 the staples are three apart", "I was thinking on 96 that the staples"."""
    words = spot.words
    return spot.large and spot.before() in words.on and spot.before(2) in words.minds and spot.trade_behind()


def _with_its_spacing(spot: Spot) -> bool:
    """ "The fan collar at 66, 16 in apart": the distance is told besides."""
    words = spot.words
    return spot.large and spot.before() in words.at and spot.before(2) in words.joined and spot.behind() == "," and spot.last + 1 in spot.starts
