"""The number alone that names a piece, written as one: "taped 17 cold" is read as "taped piece 17 cold".

Crews that number their pieces say the number and nothing else. It is a name where a name stands: what an act of the trade is done to, what a thing is on or in,
what a sentence is about. A number that names is no measure, so it is told before any measure is looked for. A note that names its piece otherwise is left as it is.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from logbook.languages import LANGUAGES
from logbook.languages.bare_names import BareNames
from logbook.reading import measures
from logbook.reading.items import book
from logbook.reading.spelled import Cut
from logbook.reading.tokens import Token
from logbook.said import Reading

_COUNTS_UP_TO = 12  # what things, feet and inches are counted with
_LARGEST = 999
_TURNS = (90, 45, 30, 60, 22)
_CLASSES = (181, 475, 723, 800)  # of tape, of board and of the standard of either
_PLACED_FROM = 100  # "screws at 119": nothing is so far apart
_ENDS = frozenset(".,;:!?)-–—…")
_HEADS = frozenset(",.:")
_STOPS = frozenset(".;!?")
_EVEN = 6  # inches, in which distances are counted
_FAR = 8  # tokens


@dataclass(frozen=True, slots=True)
class BareMarks:
    """What is written before the numbers that name pieces, the marks they are, and whether other numbers beside them could name pieces too."""

    cuts: tuple[Cut, ...] = ()
    marks: frozenset[str] = frozenset()
    several: bool = False


NONE = BareMarks()


def names(found: tuple[Token, ...], code: str) -> BareMarks:
    """The word for a piece before each number that names one."""
    words = LANGUAGES[code].bare_names
    if not words.name:
        return NONE
    said, starts = _numbers(found, code)
    if not said or any(_is_named(found, at, words) for at, _, _ in said):
        return NONE
    free = [(at, last, value) for at, last, value in said if value <= _LARGEST and value not in _CLASSES and _may_be(found, at, last, starts, words)]
    named = [(at, last, value) for at, last, value in free if _stands(found, at, last, value, starts, words)]
    marks = frozenset(str(value) for _, _, value in named)
    others = marks.union(str(value) for _, _, value in free if value > _COUNTS_UP_TO)
    return BareMarks(tuple(_written(found, at, last, value, words) for at, last, value in named), marks, len(others) > 1)


def _written(found: tuple[Token, ...], at: int, last: int, value: int, words: BareNames) -> Cut:
    """Hundreds in figures: "one-oh-two" is 102."""
    word = words.number if _low(found, at - 1) == "," else words.name
    if value < _PLACED_FROM or found[at].sort == "number":
        return Cut(found[at].start, found[at].start, f"{word} ")
    return Cut(found[at].start, found[last - 1].end, f"{word} {value}")


def all_named(told: Reading, marks: Iterable[str]) -> bool:
    """Whether a reading has a piece of each of these marks."""
    return {fact.value for one in told.fittings for fact in one.facts if fact.name == "mark"}.issuperset(marks)


def _numbers(found: tuple[Token, ...], code: str) -> tuple[list[tuple[int, int, int]], set[int]]:
    """(first token, the one behind it, value) of whole numbers without a unit, and the first tokens of all measures."""
    lexicon = book(code)
    made: list[tuple[int, int, int]] = []
    starts: set[int] = set()
    at = 0
    while at < len(found):
        if not measures.may_begin(found, at, lexicon.language, lexicon.units) or (one := measures.read(found, at, lexicon.language, lexicon.units)) is None:
            at += 1
            continue
        if one.sort == "NUM" and one.value.denominator == 1 and one.value > 0 and not one.near and (one.digits or found[at].bare not in lexicon.language.numbers.articles):
            made.append((at, one.end, int(one.value)))
            if len(made) > 1 and _in_two(found, made[-2], made[-1]):
                (first, _, hundreds), (_, last, rest) = made[-2:]
                made[-2:] = [(first, last, 100 * hundreds + rest)]
        starts.add(at)
        at = max(one.end, at + 1)
    return made, starts


def _in_two(found: tuple[Token, ...], one: tuple[int, int, int], other: tuple[int, int, int]) -> bool:
    """ "One twenty-two": hundreds, and the rest."""
    return one[1] == other[0] and one[2] <= 9 < other[2] < 100 and found[other[0]].gap == " " and found[one[0]].sort == found[other[0]].sort == "word"


def _low(found: tuple[Token, ...], at: int) -> str:
    return found[at].low if 0 <= at < len(found) else ""


def _is_named(found: tuple[Token, ...], at: int, words: BareNames) -> bool:
    """ "Straight 31", "fitting 9", "elbow number 12", "#4"."""
    return _low(found, at - 1) in words.naming or _low(found, at - 1) == "#"


def _may_be(found: tuple[Token, ...], at: int, last: int, starts: set[int], words: BareNames) -> bool:
    """Whether nothing right beside the number makes it a measure, an hour or money."""
    before, behind = _low(found, at - 1), found[last] if last < len(found) else None
    if before in ("$", "/", "+", "=", "<", ">", "~", "'", '"', "x", "by", "×") or found[at].gap == "-" or at and not found[at].gap and found[at - 1].sort != "sign":
        return False
    if behind is None:
        return True
    if behind.sort == "number" or behind.gap == "-" or behind.sort == "word" and not behind.gap and behind.low != "'s":
        return False
    if behind.low in words.thru:
        return last + 1 not in starts
    if behind.sort == "sign":
        ahead = found[last + 1] if last + 1 < len(found) else None
        return behind.low in _ENDS and not (ahead is not None and not ahead.gap and ahead.sort == "number")
    return behind.low in words.behind


def _stands(found: tuple[Token, ...], at: int, last: int, value: int, starts: set[int], words: BareNames) -> bool:
    large = value > _COUNTS_UP_TO
    before, then = _low(found, at - 1), _low(found, at - 2)
    if large and value not in _TURNS and _opens(found, at, last, starts, words):
        return True
    if before in words.on:
        return large and _on(found, at, last, value, starts, words)
    if before in words.of:
        return then in words.shares and (large or then not in ("length", "bit", "top", "bottom", "end", "back", "half"))
    if before in words.inside:
        return large and then in words.held and before != "into" and _within(found, at, words)
    if before in words.of_use:
        return large and then in words.things and not _low(found, last) == "the"
    if before in words.along:
        return large and then in words.troubles
    if before in words.off:
        return large and not (words.things | words.acts).isdisjoint(found[k].low for k in range(_clause(found, at, last)[0], at - 1))
    if before in words.at:
        return value not in _TURNS and (large and then in words.joined | words.places or value >= _PLACED_FROM and then in words.things)
    if before in words.to:
        return large and then in words.back and bool(words.going & {_low(found, at - 3), _low(found, at - 4)})
    if before in words.where:
        return _low(found, last) in words.meets or _low(found, last) in words.has | words.is_ and _leads(found, at, last, value, words)
    if _is_done(found, at, last, value, words):
        return True
    return _leads(found, at, last, value, words) or _beside(found, at, last, value, words) or _between(found, at, last, value, words)


def _opens(found, at: int, last: int, starts: set[int], words: BareNames) -> bool:
    """ "44, tabs are flat", "31. Stapled every two": the first words of a note, with the trade behind."""
    if last + 1 >= len(found) or found[last].low not in _HEADS or any(one.low not in words.fillers for one in found[:at]) or found[last + 1].low in words.doubts:
        return False
    if found[last + 1].low in words.denials and not starts.isdisjoint(range(last + 2, last + 5)):
        return False  # "44, not 46", "16, I said 18"
    trade = words.things | words.acts | words.shares | words.kinds
    return any(one.low in trade for one in found[last:])


def _on(found, at: int, last: int, value: int, starts: set[int], words: BareNames) -> bool:
    """ "Straps are six feet apart on 58", "heat tape on 57", "on 84 I've got the collar in", "I'm on 33 now"."""
    first, end = _clause(found, at, last)
    before = [found[k].low for k in range(first, at - 1)]
    if before and before[-1] in words.busy:
        return _low(found, last) in words.now or last >= len(found) or _low(found, last) in _ENDS
    if before and before[-1] in words.spaced and value % _EVEN == 0 and starts.isdisjoint((*range(first, at), *range(last, end))):
        return False  # "straps on 48": how far apart, where it is not told otherwise
    if before and before[-1] in words.are and not words.spaced.isdisjoint(before):
        return False  # "screws every twelve, mine are on eighteen"
    trade = words.things | words.acts | words.shares
    if not before:
        return any(found[k].low in trade for k in range(last, min(len(found), last + 2 * _FAR)))
    return not trade.isdisjoint(before)


def _within(found, at: int, words: BareNames) -> bool:
    """Not "the offset moves a side in 20"."""
    first, _ = _clause(found, at, at)
    return all(found[k].low not in words.sloped for k in range(first, at))


def _is_done(found, at: int, last: int, value: int, words: BareNames) -> bool:
    """ "Taped 17 cold", "closed 18 up", "stapled all of 126", "got 103 closed up", "took 51 in three inches"."""
    k = at - 1
    while k > 0 and found[k].low in words.ways and at - k < 3:
        k -= 1
    act, behind = _low(found, k), _low(found, last)
    if act in words.acts:
        if value > _COUNTS_UP_TO:
            return True
        return k == at - 1 and behind in words.ways | words.turned_out
    if k != at - 1 or value <= _COUNTS_UP_TO:
        return False
    if act in words.moves and behind in words.directions and last + 1 < len(found):
        return value > 30 and (found[last + 1].sort == "number" or found[last + 1].gap == " " and found[last + 1].sort == "word" and _low(found, last + 2) in ("inch", "inches", "foot", "feet"))
    return act in words.handlings and behind in words.turned_out and not (behind in words.ways and last + 1 < len(found) and (found[last + 1].sort == "number" or found[last + 1].low in words.pronouns))


def _leads(found, at: int, last: int, value: int, words: BareNames) -> bool:
    """ "64's got", "103 is closed up", "75 comes right off the heater"."""
    before = _low(found, at - 1)
    if before and before not in _STOPS and before != "," and before not in words.leads:
        return False
    behind = _low(found, last)
    if behind in words.is_:
        k = last + 1
        while k < len(found) and found[k].low in words.barely:
            k += 1
        said = _low(found, k)
        if said in words.states:
            return value > _COUNTS_UP_TO or not before or before in _STOPS
        return value > _COUNTS_UP_TO and (said in words.has or behind == "'s" and said in words.things)
    return value > _COUNTS_UP_TO and before != "," and behind in words.has


def _beside(found, at: int, last: int, value: int, words: BareNames) -> bool:
    """ "The reducer, 112": behind the kind and a comma."""
    if _low(found, at - 1) != "," or value <= _COUNTS_UP_TO or last < len(found) and found[last].low not in _ENDS:
        return False
    kind = _low(found, at - 2)
    if kind not in words.kinds or not any(_low(found, at - k) in words.points for k in range(3, 6)):
        return False
    return not (kind in words.turns and value in _TURNS)


def _between(found, at: int, last: int, value: int, words: BareNames) -> bool:
    """ "From the female end, 44, transition", "": between two commas, before the kind."""
    if value <= _COUNTS_UP_TO or value in _TURNS or _low(found, at - 1) != "," or _low(found, last) != "," or found[at - 2].sort == "number":
        return False
    return _low(found, last + 1) in words.kinds


def _clause(found, at: int, last: int) -> tuple[int, int]:
    """The tokens of the sentence around the number."""
    first = at
    while first > 0 and found[first - 1].low not in _STOPS:
        first -= 1
    while last < len(found) and found[last].low not in _STOPS:
        last += 1
    return first, last
