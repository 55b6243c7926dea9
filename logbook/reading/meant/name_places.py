"""Where a number stands as a name does: what is done to it, what is on it or in it, what is said of it, what it is called beside its kind.

Nothing is a name that counts, measures, tells the hour or the floor: a unit, a thing in the plural or a word that nobody knows right behind it leaves it a number.
"""

from __future__ import annotations

from dataclasses import dataclass

from logbook.languages.bare_names import BareNames
from logbook.reading.words.tokens import Token

COUNTS_UP_TO = 12  # what things, feet and inches are counted with
TURNS = (90, 45, 30, 60, 22)
PLACED_FROM = 100  # "screws at 119": nothing is so far apart
_EVEN = 6  # inches, in which distances are counted
_ENDS = frozenset(".,;:!?)-–—…")
_HEADS = frozenset(",.:-–—")
_STOPS = frozenset(".;!?")
_NOT_AHEAD = ("$", "/", "+", "=", "<", ">", "~", "'", '"', "x", "by", "×", "(", "&")
_SHOT = 30  # staples on a side
_FAR = 16  # tokens


@dataclass(frozen=True, slots=True)
class Spot:
    """A number of a note: its tokens, its value, where all numbers begin, and the words of the language."""

    found: tuple[Token, ...]
    at: int
    last: int
    value: int
    starts: set[int]
    words: BareNames

    @property
    def large(self) -> bool:
        return self.value > COUNTS_UP_TO

    def before(self, back: int = 1) -> str:
        return low(self.found, self.at - back)

    def behind(self, on: int = 0) -> str:
        return low(self.found, self.last + on)

    def clause(self) -> tuple[int, int]:
        """The tokens of its sentence."""
        first, end = self.at, self.last
        while first > 0 and self.found[first - 1].low not in _STOPS:
            first -= 1
        while end < len(self.found) and self.found[end].low not in _STOPS:
            end += 1
        return first, end

    def trade_ahead(self, back: int = 1) -> bool:
        """Whether a word of the trade stands before it in its sentence."""
        words = self.words
        return any(one.low in words.things or one.low in words.acts or one.low in words.shares for one in self.found[self.clause()[0] : self.at - back])

    def trade_behind(self) -> bool:
        words = self.words
        return any(one.low in words.things or one.low in words.acts or one.low in words.shares or one.low in words.kinds for one in self.found[self.last : self.last + _FAR])


def low(found: tuple[Token, ...], at: int) -> str:
    return found[at].low if 0 <= at < len(found) else ""


def may_be(spot: Spot) -> bool:
    """Whether nothing right beside the number makes it a measure, an hour or money."""
    found, at, last, words = spot.found, spot.at, spot.last, spot.words
    behind = found[last] if last < len(found) else None
    by_what_hangs = spot.before() == "by" and spot.before(2) in words.hung_things
    if spot.before() in _NOT_AHEAD and not by_what_hangs or spot.before() in words.places_numbered or found[at].gap == "-" or at and not found[at].gap and found[at - 1].sort != "sign":
        return False
    if behind is None:
        return True
    if behind.gap == "-" or behind.sort == "word" and not behind.gap and behind.low != "'s":
        return False
    if behind.sort == "sign":
        ahead = found[last + 1] if last + 1 < len(found) else None
        return behind.low in _ENDS and not (ahead is not None and not ahead.gap and ahead.sort == "number")
    if behind.low in words.to_another:
        return last + 1 not in spot.starts
    if spot.before() in words.throat and spot.before(2) in words.square or last in spot.starts and spot.before() in words.cuts:
        return True
    return behind.low in words.behind or behind.low in words.turned_out or behind.low in words.fresh or behind.sort == "word" and behind.low.endswith(words.does_so)


def stands(spot: Spot) -> bool:
    words, before, then, large = spot.words, spot.before(), spot.before(2), spot.large
    if large and spot.value not in TURNS and _opens(spot):
        return True
    if before in words.on:
        return _on(spot)
    if before in words.of and large and then in words.sits and spot.before(3) in words.points:
        return True
    if before in words.of:
        so_long = then in words.lengths and spot.behind() in words.is_ and spot.last + 1 in spot.starts  # "half of 24 is 12"
        if spot.before(3) in words.each:
            return False  # "the top and both sides of 88": what is told of the rest would be lost
        if then in words.lengths and spot.before(3) in words.points_at_one and spot.before(3) not in words.points:
            return False  # "shifts five to one side in a length of 20"
        return then in words.shares and not so_long and (large or then not in words.lengths) or large and then in words.units
    if before in words.inside:
        placed = large and then in words.placings and any(spot.before(k) in words.held for k in range(3, 6))  # "the staples I shot in 88"
        return ((large or then in words.holes) and then in words.held or placed) and before != "into" and _not_sloped(spot)
    if before in words.of_use:
        return then in words.things and (large or spot.last not in spot.starts) or large and _starts(spot) or spot.value >= PLACED_FROM and (spot.trade_ahead() or spot.trade_behind())
    if before in words.along:
        in_it = spot.behind() in words.inside | words.on and spot.behind(1) in words.pronouns  # "the line with 139 in it"
        return large and (then in words.troubles or in_it and then in words.lines | words.kinds or _starts(spot))
    if large and then in words.hung_things and before in words.at | words.spots:
        return any(one.low in words.pounds for one in spot.found[slice(*spot.clause())])  # "the coil at 61 is ninety pounds"
    if large and before in words.lines_named and (then in words.points or then in words.inside | words.on | words.of or not then or then in _STOPS):
        return spot.trade_behind() or spot.trade_ahead()
    if before in words.at and spot.behind() == ":":
        return large and spot.value not in TURNS and _heads(spot, 3) and then in words.things
    if before in words.at:
        return spot.value not in TURNS and bool(large and (then in words.placed or then in words.joined and spot.value % _EVEN) or spot.value >= PLACED_FROM and (then in words.things or spot.trade_behind() and words.warmth.isdisjoint(one.low for one in spot.found)))
    if before in words.about:
        return large and (spot.behind() in _ENDS and _heads(spot, 2) or then in words.told)
    if before in words.to:
        return large and (then in words.did or then in words.back and bool(words.going & {spot.before(3), spot.before(4)}) or then in words.got and spot.before(3) in words.people)
    if before in words.where:
        return spot.behind() in words.meets or large and spot.behind() in words.has | words.is_ and _leads(spot)
    if before in words.off:
        return large and spot.trade_ahead()
    if before in words.over and (then in words.right or before in words.through and spot.starts.isdisjoint(range(spot.at - 4, spot.at - 1))):
        return large and (spot.trade_ahead() or spot.trade_behind())
    if before in words.is_ and large and spot.value not in TURNS and _told_apart(spot):
        return True
    return _is_done(spot) or _leads(spot) or _beside(spot) or _between(spot) or large and spot.value not in TURNS and then in words.square and before in words.throat


def _opens(spot: Spot) -> bool:
    """ "44, tabs are flat", "31. Stapled every two", "fyi 27 got two inch tape", "eighty-three I did in heat tape": the first words of a note, with the trade behind."""
    found, last, words = spot.found, spot.last, spot.words
    goes_on = spot.behind() in words.people and any(one.low in words.acts for one in found[last + 1 : last + 4])  # "64 I already taped"
    first = spot.clause()[0] if spot.value >= PLACED_FROM or goes_on else 0
    if last + 1 >= len(found) or any(one.low not in words.fillers for one in found[first : spot.at]):
        return False
    if found[last].low in _HEADS:
        ahead = found[last + 1].low
        if ahead in words.doubts or ahead in words.denials and not spot.starts.isdisjoint(range(last + 2, last + 5)):
            return False  # "44, not 46", "16, I said 18"
        return spot.trade_behind()
    if found[last].low in words.to:
        return found[last + 1].low in words.points and spot.trade_behind()
    if found[last].low in words.people or (found[last].low in words.points or found[last].low in words.each) and (found[last + 1].low in words.things or found[last + 1].low in words.shares):
        return spot.trade_behind()
    return False


def _heads(spot: Spot, back: int) -> bool:
    """Whether a clause begins so many tokens before the number."""
    before = spot.before(back)
    return not before or before in _STOPS or before in ",:" or before in spot.words.leads


def _starts(spot: Spot) -> bool:
    """ "For 57 I used the listed tape", "with 33 the hangers landed every ten feet": at the head of a sentence, with what it is about behind."""
    behind = spot.behind()
    return _heads(spot, 2) and (behind == "," or behind in spot.words.people or behind in spot.words.points) and spot.trade_behind()


def _on(spot: Spot) -> bool:
    """ "Straps are six feet apart on 58", "heat tape on 57", "on 84 I've got the collar in", "I'm on 33 now"."""
    words = spot.words
    first, end = spot.clause()
    before = [one.low for one in spot.found[first : spot.at - 1]]
    if not spot.large:
        return bool(before) and before[-1] in words.holes and bool(spot.behind()) and spot.behind() not in _ENDS
    if before and before[-1] in words.busy:
        return spot.behind() in words.now or spot.last >= len(spot.found) or spot.behind() in _ENDS
    if before and before[-1] in words.acts and before[-1] not in words.things:
        return False  # "hung on 14": a floor as well
    if before and before[-1] in words.spaced and spot.value % _EVEN == 0 and not any(k in spot.starts and spot.found[k].low != "one" for k in (*range(first, spot.at), *range(spot.last, end))):
        return False  # "straps on 48": how far apart, where it is not told otherwise
    if before and before[-1] in words.are and not words.spaced.isdisjoint(before):
        return False  # "screws every twelve, mine are on eighteen"
    if before and before[-1] in words.everything and (len(before) < 2 or before[-2] in words.leads or before[-2] in words.did or before[-2] in _ENDS):
        return spot.trade_behind()
    return spot.trade_ahead() or (not before or before[-1] in words.leads or before[-1] == "," or spot.value >= PLACED_FROM) and spot.trade_behind()


def _not_sloped(spot: Spot) -> bool:
    """Not "the offset moves a side in 20"."""
    return all(one.low not in spot.words.sloped for one in spot.found[spot.clause()[0] : spot.at])


def _is_done(spot: Spot) -> bool:
    """ "Taped 17 cold", "closed 18 up", "stapled all of 126", "got 103 closed up", "took 51 in three inches"."""
    found, last, words = spot.found, spot.last, spot.words
    k = spot.at - 1
    while k > 0 and found[k].low in words.ways and spot.at - k < 3:
        k -= 1
    act, behind, ahead = low(found, k), spot.behind(), spot.behind(1)
    if act in words.acts:
        if spot.large:
            return not (behind in words.on | words.to and (ahead in words.each or ahead in words.points and spot.behind(2) in words.shares) and spot.value <= _SHOT)
        return k == spot.at - 1 and behind in words.ways | words.turned_out
    if k != spot.at - 1:
        return False
    if not spot.large:
        return act in words.got and behind in words.states
    if act in words.moves and behind in words.directions and last + 1 in spot.starts:
        return spot.value > 30
    if act in words.cuts and (behind in words.fresh or last in spot.starts):
        return True  # "cut 54 fresh", "cut 175 two inches too short"
    if act in words.handlings and spot.value >= PLACED_FROM and any(low(found, k) in words.earth for k in range(last, last + 4)):
        return spot.starts.isdisjoint(range(last, last + 4))  # "put 145 in the ground"
    if act in words.handlings and (behind in words.turned_out or behind in words.states):
        if behind in words.inside:
            return (not ahead or ahead in _ENDS or ahead in words.leads or ahead in words.fresh) and spot.starts.isdisjoint(range(last, last + 4))
        return not (behind in words.directions or behind in words.along or behind in words.back) or spot.starts.isdisjoint(range(last, last + 4)) and (ahead not in words.pronouns or behind not in words.along)
    if act in words.handlings and spot.value >= PLACED_FROM:
        return spot.starts.isdisjoint(range(last, last + 4)) and spot.trade_behind()
    return False


def _leads(spot: Spot) -> bool:
    """ "64's got", "103 is closed up", "75 comes right off the heater", "407 complete"."""
    words, before, behind = spot.words, spot.before(), spot.behind()
    opens = not before or before in _STOPS or before == ":"
    if before in words.is_ and behind in words.states:
        return spot.large and (not spot.before(2) or spot.before(2) in _STOPS)  # "Is 31 taped? No."
    if not opens and before != "," and before not in words.leads:
        return False
    if behind in words.is_:
        k = spot.last + 1
        while low(spot.found, k) in words.barely:
            k += 1
        said = low(spot.found, k)
        if said in words.states:
            return spot.large or opens
        if said in words.inside or said in words.on or said in words.line_places:
            ground = k + 1 + (low(spot.found, k + 1) in words.points) if said not in words.line_places else k
            if spot.large and (said in words.line_places or low(spot.found, ground) in words.line_grounds):
                return True  # "fifty-nine is in the ground", "41 is outside"
        if spot.value >= PLACED_FROM and k not in spot.starts and (spot.trade_ahead(0) or spot.trade_behind()):
            return True
        return spot.large and (said in words.has or behind == "'s" and said in words.things)
    if not spot.large:
        return opens and behind in words.got and spot.behind(1) in words.points_at_one and spot.behind(2) in words.holes
    if behind in words.whole and before != ",":
        return True
    if before == "," and (spot.at - 2 in spot.starts or spot.value <= _SHOT):
        return False
    return (behind in words.has or behind in words.meets) and (spot.trade_ahead(0) or spot.trade_behind() or opens and spot.value >= PLACED_FROM)


def _beside(spot: Spot) -> bool:
    """ "The reducer, 112": behind the kind and a comma."""
    words, kind = spot.words, spot.before(2)
    if spot.before() != "," or not spot.large or spot.behind() and spot.behind() not in _ENDS:
        return False
    points = any(spot.before(k) in words.points for k in range(3, 6))
    if spot.behind() == ":" and spot.at - 2 not in spot.starts and spot.trade_behind():
        return True
    if kind in words.ones and points and spot.value not in TURNS:
        return spot.trade_ahead(3)  # "I didn't tape the long one, 31."
    if kind not in words.kinds or not points:
        return False
    return not (kind in words.turns and spot.value in TURNS)


def _told_apart(spot: Spot) -> bool:
    """ "The elbow with the crushed corner is 93", "the one I never taped is 28": which of them it is, told by what it has."""
    words, (first, _) = spot.words, spot.clause()
    said = [one.low for one in spot.found[first : spot.at - 1]]
    while said and (said[0] in words.leads or said[0] in words.fillers):
        said = said[1:]
    if len(said) < 4 or said[0] not in words.points or spot.behind() and spot.behind() not in _ENDS and spot.behind() not in words.leads:
        return False
    named = next((k for k, one in enumerate(said[1:4], 1) if one in words.kinds or one in words.ones), None)
    return named is not None and named + 1 < len(said) and said[named + 1] in words.tells_apart and not any(k in spot.starts and spot.found[k].low not in words.ones for k in range(first, spot.at - 1))


def _between(spot: Spot) -> bool:
    """ "From the female end, 44, transition", "the elbow by the mechanical room, 51, has", "the long one, 212, me and Pete": between two commas."""
    words = spot.words
    if not spot.large or spot.value in TURNS or spot.before() != "," or spot.behind() != "," or {k for k in (spot.at - 2, spot.at - 3, spot.last + 1) if low(spot.found, k) not in words.ones} & spot.starts:
        return False
    if spot.behind(1) in words.kinds or spot.value >= PLACED_FROM and spot.behind(1) in words.people:
        return True
    k = spot.at - 2
    while k > 0 and spot.found[k].low not in _ENDS and spot.at - k < 10:
        k -= 1
    said = [one.low for one in spot.found[max(0, k) : spot.at - 1]]
    return any(one in words.points and any(other in words.kinds or other in words.ones or other in words.lines and spot.value >= PLACED_FROM for other in said[place + 1 : place + 4]) for place, one in enumerate(said))
