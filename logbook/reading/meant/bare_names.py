"""The number alone that names a piece, written as one: "taped 17 cold" is read as "taped piece 17 cold".

Crews that number their pieces say the number and nothing else. It is a name where a name stands (`name_places`), and a number that names is no measure, so it is
told before any measure is looked for. A note that names its piece otherwise is left as it is.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from logbook.languages import LANGUAGES
from logbook.languages.bare_names import BareNames
from logbook.reading.words import measures
from logbook.reading.meant.heads_a_line import goes_on_behind, heads_a_line, may_go_on, told
from logbook.reading.words.items import book
from logbook.reading.meant.names_run_on import may_run_on, names_here
from logbook.reading.meant.name_places import COUNTS_UP_TO, TURNS, Spot, low, may_be, stands
from logbook.reading.meant.told_at_last import told_at_last
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import Token
from logbook.said import Reading

LARGEST = 999
_BY = ("by", "x", "×")
CLASSES = (181, 475, 723, 800)  # of tape, of board and of the standard of either


@dataclass(frozen=True, slots=True)
class BareMarks:
    """What is written before the numbers that name pieces, the marks they are, and whether other numbers beside them could name pieces too, where all stand as names do in talk that has stops."""

    cuts: tuple[Cut, ...] = ()
    marks: frozenset[str] = frozenset()
    several: bool = False


NONE = BareMarks()


def names(found: tuple[Token, ...], code: str) -> BareMarks:
    """The word for a piece before each number that names one."""
    words = LANGUAGES[code].bare_names
    if not words.name:
        return NONE
    if "&" in words.joins:
        found = tuple([one._replace(low="and", sort="word") if one.low == "&" else one for one in found]) if any(one.low == "&" for one in found) else found  # "eleven & twelve"
    at = next((at for at in range(1, len(found)) if _is_named(found, at, words) and _number_at(found, at, code) is not None and not _is_within(found, at, code)), None)
    if at is not None:  # told before all numbers of the note are read: most notes name their piece so
        return _further(found, at, code) if may_go_on(found, at, words) else NONE
    said, starts = numbers_said(found, code)
    twice = _twice(said)
    spots = [Spot(found, at, last, value, starts, words) for at, last, value in said if value <= LARGEST and value not in CLASSES]
    at_last = {one.at for one in spots if told_at_last(one, LANGUAGES[code].told_at_last)}
    free = [one for one in spots if one.at in at_last or may_be(one) or may_run_on(one)]
    named = [one for one in free if one.at in at_last or stands(one) or names_here(one, twice)]
    if not named:
        return NONE
    ran_on = any(one.at not in at_last and not stands(one) for one in named)
    marks = frozenset(str(one.value) for one in named)
    others = marks.union(str(one.value) for one in free if one.value > COUNTS_UP_TO)
    listed = {other.at for one, other in zip(named, named[1:]) if all(token.low in words.joins for token in found[one.last : other.at])}
    heads = {one.at for one, other in zip(named, named[1:]) if ran_on and one.at not in listed and other.at in listed}
    return BareMarks(tuple(_written(one, one.at in heads) for one in named if one.at not in listed), marks, len(others) > 1 and not ran_on)


def _further(found: tuple[Token, ...], first: int, code: str) -> BareMarks:
    """ "Straight 44 staples 2, 46 staples 3": behind the piece that is named by its kind, one by its number alone."""
    words = LANGUAGES[code].bare_names
    said, starts = numbers_said(found, code)
    spots = [Spot(found, at, last, value, starts, words) for at, last, value in said if at > first]
    named = [one for one in spots if goes_on_behind(one, int(found[first].low)) and (may_be(one) or may_run_on(one) or told(one))]
    return BareMarks(tuple(_written(one, False) for one in named), frozenset(str(one.value) for one in named)) if named else NONE


def all_named(told: Reading, marks: Iterable[str]) -> bool:
    """Whether a reading has a piece of each of these marks."""
    return {fact.value for one in told.fittings for fact in one.facts if fact.name == "mark"}.issuperset(marks)


def _written(spot: Spot, heads: bool) -> Cut:
    """Hundreds in figures: "one-oh-two" is 102. `heads`: the first of a list."""
    first, last = spot.found[spot.at], spot.found[spot.last - 1]
    before = low(spot.found, spot.at - 1)
    beside = before in spot.words.ones or before in spot.words.line_turned or before == "," and not heads_a_line(spot) and not told(spot)
    word = spot.words.names if heads else spot.words.number if beside else spot.words.name
    if spot.behind() in spot.words.line_turned and heads_a_line(spot):
        return Cut(first.start, spot.found[spot.last].end, f"{spot.behind()} {spot.value}")
    if spot.value < 100 or first.sort == "number":
        return Cut(first.start, first.start, f"{word} ")
    return Cut(first.start, last.end, f"{word} {spot.value}")


def numbers_said(found: tuple[Token, ...], code: str) -> tuple[list[tuple[int, int, int]], set[int]]:
    """(first token, the one behind it, value) of whole numbers without a unit, and the first tokens of all measures."""
    made: list[tuple[int, int, int]] = []
    starts: set[int] = set()
    at = 0
    while at < len(found):
        one = _measure_at(found, at, code)
        if one is None:
            at += 1
            continue
        if _counts(found, at, one, code):
            made.append((at, one.end, int(one.value)))
            if len(made) > 1 and _in_two(found, made[-2], made[-1]):
                (first, _, hundreds), (_, last, rest) = made[-2:]
                made[-2:] = [(first, last, 100 * hundreds + rest)]
        starts.add(at)
        at = max(one.end, at + 1)
    return made, starts


def _measure_at(found: tuple[Token, ...], at: int, code: str) -> measures.Measure | None:
    lexicon = book(code)
    return measures.read(found, at, lexicon.language, lexicon.units) if measures.may_begin(found, at, lexicon.language, lexicon.units) else None


def _number_at(found: tuple[Token, ...], at: int, code: str) -> measures.Measure | None:
    one = _measure_at(found, at, code)
    return one if one is not None and _counts(found, at, one, code) else None


def _counts(found: tuple[Token, ...], at: int, one: measures.Measure, code: str) -> bool:
    """Whether it is a whole number and no measure."""
    return one.sort == "NUM" and one.value.denominator == 1 and one.value > 0 and not one.near and (one.digits or found[at].bare not in LANGUAGES[code].numbers.articles)


def _in_two(found: tuple[Token, ...], one: tuple[int, int, int], other: tuple[int, int, int]) -> bool:
    """ "One twenty-two": hundreds, and the rest."""
    return one[1] == other[0] and one[2] <= 9 < other[2] < 100 and found[other[0]].gap == " " and found[one[0]].sort == found[other[0]].sort == "word"


def _twice(said: list[tuple[int, int, int]]) -> frozenset[int]:
    values = [value for _, _, value in said]
    return frozenset(value for value in values if value > 1 and values.count(value) > 1) if len(values) > 1 else frozenset()


def _is_named(found: tuple[Token, ...], at: int, words: BareNames) -> bool:
    """ "Straight 31", "fitting 9", "elbow number 12", "#4"."""
    return low(found, at - 1) in words.naming or low(found, at - 1) == "#"


def _is_within(found: tuple[Token, ...], at: int, code: str) -> bool:
    """ "Straight eighteen by twelve", "ninety two": how big it is, the rest of a number whose first word is the name of a turn too, "a two piece ninety"."""
    one, whole = _measure_at(found, at, code), _measure_at(found, at - 1, code)
    if whole is not None and whole.end > at or one is not None and one.value in TURNS and _measure_at(found, at - 2, code) is not None:
        return True
    return one is not None and low(found, one.end) in _BY and _measure_at(found, one.end + 1, code) is not None
