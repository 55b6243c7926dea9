"""A sentence that tells of two pieces, each in a clause of its own, is read as two: "31 is done, and I left the tape off 12" as "31 is done. I left the tape off 12".

What stands before a name in its own clause is of that piece and not of the one before it. A clause that leans on the other ("31 is taped but 12 isn't") is left
where it is.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from logbook.languages import LANGUAGES
from logbook.languages.bare_names import BareNames
from logbook.languages.clauses import Clauses
from logbook.reading.meant.bare_names import numbers_said
from logbook.reading.meant.name_places import COUNTS_UP_TO, Spot, low, may_be, stands
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import Token

_SIGNS = frozenset(",;-–—:")
_ENDS = frozenset(".!?")
_FAR = 9  # tokens between the first word of a clause and its name


@dataclass(frozen=True, slots=True)
class _Name:
    """A name of a piece: its first token, that of its number, the one behind it, and the mark."""

    first: int
    at: int
    last: int
    mark: str
    bare: bool


def cuts(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """The joints that are stops, in order."""
    words = LANGUAGES[code].clauses
    names = LANGUAGES[code].bare_names
    if not words.joints or not any(token.low in words.joints or token.low in _SIGNS for token in found) or _may_name(found, words, names) < 2:
        return ()
    said, starts = numbers_said(found, code)
    named = _named(found, said, starts, words, names)
    made: list[Cut] = _told_by_turns(found, said, names)
    apart: set[_Name] = set()
    for one, other in zip(named, named[1:]):
        if one.mark == other.mark or (joint := _joint(found, one, other, words, names)) is None:
            continue
        begin = _begin(found, one.first, made)
        if _is_whole(found, begin, joint[0], one, words) and _tells(found, joint[1], other, named, words):
            made.append(Cut(found[joint[0] - 1].end, found[joint[1]].start, ". "))
            apart |= {one, other}
    known = {one.mark for one in named if not one.bare}
    if known and not any(low(found, one.last) in names.to_another for one in named):  # a number alone is known for a name by itself only where none is named otherwise
        made += [Cut(found[one.at].start, found[one.at].start, f"{names.name} ") for one in apart if one.bare and one.mark not in known]
    return tuple(_together(sorted(made, key=lambda one: (one.start, one.end))))


def _together(made: list[Cut]) -> list[Cut]:
    """With a stop and the word right behind it as one."""
    kept: list[Cut] = []
    for one in made:
        if kept and kept[-1].end == one.start:
            kept[-1] = Cut(kept[-1].start, one.end, kept[-1].means + one.means)
        else:
            kept.append(one)
    return kept


def _may_name(found: tuple[Token, ...], words: Clauses, names: BareNames) -> int:
    """How many numbers could be names, by the words right beside them alone."""
    told = 0
    for at, token in enumerate(found):
        if token.sort == "sign" or token.sort == "word" and token.low not in _SPELLED and not token.low.endswith(("teen", "ty")) or low(found, at + 1) in _MEASURED:
            continue
        before = low(found, at - 1)
        told += not before or len(before) == 1 or before in names.naming or before in words.at_it or before in words.joints or before in names.acts or before in words.to_another
    return told


_MEASURED = frozenset("by x inch inches foot feet degrees degree apart pound pounds ' \"".split())
_SPELLED = frozenset("one two three four five six seven eight nine ten eleven twelve".split())


def _told_by_turns(found: tuple[Token, ...], said: list[tuple[int, int, int]], names: BareNames) -> list[Cut]:
    """ "Straight 95 and 96 95 I stapled", "95 and 96 and 95 is taped": a comma behind a list whose first is told of right behind it."""
    made = []
    for one, other, again in zip(said, said[1:], said[2:]):
        if all(token.low in names.joins or token.low in names.points for token in found[other[1] : again[0]]) and low(found, other[1]) != "," and again[2] in (one[2], other[2]) and one[2] != other[2] and low(found, one[1]) in names.joins and all(token.low in names.joins or token.low in names.naming for token in found[one[1] : other[0]]):
            made.append(Cut(found[other[1] - 1].end, found[again[0]].start, ", "))
    return made


def _named(found: tuple[Token, ...], said: list[tuple[int, int, int]], starts: set[int], words: Clauses, names: BareNames) -> list[_Name]:
    """Every number that names a piece, with its kind and its article."""
    made = []
    for at, last, value in said:
        first = _first_of_name(found, at, names, words)
        bare = first is None
        if bare and value > COUNTS_UP_TO and may_be(spot := Spot(found, at, last, value, starts, names)) and (stands(spot) or low(found, at - 1) in words.at_it or _heads(found, at, last, words)):
            first = at
        if bare and low(found, at - 1) in words.joints and any(low(found, at - back) in words.between for back in (3, 4, 5)):
            continue  # "the joint between it and 72"
        if first is not None:
            while low(found, first - 1) in words.points:
                first -= 1
            made.append(_Name(first, at, last, bare=bare, mark="".join(token.low for token in found[at - (low(found, at - 1).isalpha() and len(low(found, at - 1)) == 1) : last])))
    return made


def _heads(found: tuple[Token, ...], at: int, last: int, words: Clauses) -> bool:
    """ "16 is good": a clause begins with it, and its verb is right behind."""
    return (not at or found[at - 1].low in _ENDS or _joins(found, at - 1, words)) and low(found, last) in words.verbs


def _first_of_name(found: tuple[Token, ...], at: int, names: BareNames, words: Clauses) -> int | None:
    """ "Straight 31", "the elbow, number 12", "tee T-5"; None where no word names a piece before it."""
    k = at
    if k and len(found[k - 1].low) == 1 and found[k - 1].low.isalpha() and found[k].gap in ("", "-"):
        k -= 1
    lettered = k < at
    while k and (found[k - 1].low in ("#", "number", "no", ".") or found[k - 1].low == "," and low(found, k - 2) in names.kinds) and at - k < 5:
        k -= 1
    before = low(found, k - 1)
    if before in words.unnamed or low(found, at - 1) in names.places_numbered:
        return None
    if before in names.naming:
        return k - 1
    return k if lettered or k < at and found[k].low in ("#", "number") else None


def _joint(found: tuple[Token, ...], one: _Name, other: _Name, words: Clauses, names: BareNames) -> tuple[int, int] | None:
    """The first token of the last joint between two names, and the first of the clause behind it."""
    end = other.first
    while True:
        last = end
        while last > one.last and not _joins(found, last - 1, words):
            last -= 1
        k = last
        while k > one.last and (_joins(found, k - 1, words) or found[k - 1].low in words.leads and _joins(found, k - 2, words)):
            k -= 1
        if last == end or k == last or not all(token.low in names.acts for token in found[last:end]):
            break
        end = k  # "I taped and rubbed 12"
    if k == last or any(found[at].low in _ENDS for at in range(one.last, other.first)):
        return None
    while last < other.first and found[last].low in words.leads:
        last += 1
    return (k, last) if _opens(found, last, other, words, names) else None


def _joins(found: tuple[Token, ...], at: int, words: Clauses) -> bool:
    token = found[at]
    return token.low in words.joints or token.low in _SIGNS and (token.low not in "-–—" or token.gap == " ")


def _opens(found: tuple[Token, ...], at: int, name: _Name, words: Clauses, names: BareNames) -> bool:
    """Whether a clause begins here: with who does something, with the piece and its verb, with a thing of it and its verb."""
    said, before = found[at].low, low(found, name.first - 1)
    if at < name.first and before in words.to_another and low(found, name.first - 2) not in words.got_to | names.troubles:
        return False  # "I tied it into 12"
    if name.first - at > _FAR:
        return said in words.people and name.first - at < 2 * _FAR
    if said in words.people or said in words.there or said in words.it and low(found, at + 1) in words.verbs and found[at + 2].sort == "number":
        return at < name.first
    behind = low(found, name.last + (low(found, name.last) == ","))
    if at == name.first:
        return behind in words.verbs or behind.endswith(words.past)
    if before not in words.at_it:
        return False
    verbs = words.verbs | words.of_several
    return said in words.wholes or said in words.points and (behind in verbs or behind.endswith(words.past) or any(token.low in verbs for token in found[at + 1 : name.first]))


def _begin(found: tuple[Token, ...], at: int, made: Sequence[Cut]) -> int:
    """The first token of its sentence."""
    while at and found[at - 1].low not in _ENDS and not (made and found[at].start == made[-1].end):
        at -= 1
    return at


def _is_whole(found: tuple[Token, ...], begin: int, end: int, name: _Name, words: Clauses) -> bool:
    """Whether what stands before the joint is a clause that nothing behind it hangs on."""
    said = [token.low for token in found[begin:end]]
    if said[0] in words.opens and begin < name.first or not words.binds.isdisjoint(said) or not words.binds_ahead.isdisjoint(said[: max(0, name.first - begin)]):
        return False
    behind = said[name.last - begin :]
    return said[0] in words.people or said[0] in words.there or said[0] in words.wholes or any(one in words.verbs or one in words.of_several or one in words.deeds or one.endswith(words.past) for one in (*behind, *said[: max(0, name.first - begin)]))


def _tells(found: tuple[Token, ...], begin: int, name: _Name, named: Sequence[_Name], words: Clauses) -> bool:
    """Whether what stands behind the joint tells something by itself, of one piece, and asks nothing."""
    end = next((at for at in range(name.last, len(found)) if found[at].low in _ENDS), len(found))
    if end < len(found) and found[end].low == "?":
        return False
    behind = [token.low for token in found[name.last : end] if token.low not in _SIGNS]
    if begin == name.first and behind[:1] and behind[0] in words.of_several or not words.leans.isdisjoint(token.low for token in found[begin:end]):
        return False
    return begin < name.first or any(one not in words.short and one not in words.joints for one in behind)
