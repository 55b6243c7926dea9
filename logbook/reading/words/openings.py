"""How what a pattern finds can begin: the letters that one of them must stand in a text, before the pattern is tried there.

What cannot be told, a sign of a set without end or letters of both cases, is left open; so nothing that the pattern finds is ever missed.
"""

from __future__ import annotations

from re import IGNORECASE
from re import _constants as sre

_LONG = 3  # letters of a beginning
_MOST = 600  # beginnings: more of them stand in any text
_MOST_OF_SET = 40  # letters of one set
_DIGITS = frozenset("0123456789")  # those of other scripts: see `Likely.match`

_Begun = dict[str, bool]  # letters, and whether more can be told behind them


def openings(parsed) -> frozenset[str]:
    """Letters, all of one length and at most three, with one of which every match begins. None: it cannot be told."""
    begun = None if parsed.state.flags & IGNORECASE else _begin(parsed)
    long = min(map(len, begun), default=0) if begun is not None else 0
    return frozenset([one[:long] for one in begun]) if long else frozenset()


def _begin(parsed) -> _Begun | None:
    """None: too many."""
    begun: _Begun = {"": True}
    for kind, value in parsed:
        if not any(goes_on and len(one) < _LONG for one, goes_on in begun.items()):
            break
        further = _of(kind, value)
        if further is None:
            begun = dict.fromkeys(begun, False)
            break
        made: _Begun = {}
        for one, goes_on in begun.items():
            if not goes_on or len(one) >= _LONG:
                made[one] = made.get(one, True) and goes_on
                continue
            for more, still in further.items():
                whole = (one + more)[:_LONG]
                made[whole] = made.get(whole, True) and (still or len(whole) == _LONG)
        if len(made) > _MOST:
            return None
        begun = made
    return begun


def _of(kind, value) -> _Begun | None:
    """The beginnings of one step; None: it cannot be told."""
    if kind is sre.LITERAL:
        return {chr(value): True}
    if kind is sre.IN:
        letters = _set(value)
        return None if letters is None else dict.fromkeys(letters, True)
    if kind is sre.BRANCH:
        made: _Begun = {}
        for one in value[1]:
            each = _begin(one)
            if each is None:
                return None
            for letters, goes_on in each.items():
                made[letters] = made.get(letters, True) and goes_on
        return made
    if kind is sre.SUBPATTERN:
        return None if value[1] & IGNORECASE else _begin(value[-1])
    if kind in (sre.MAX_REPEAT, sre.MIN_REPEAT, sre.POSSESSIVE_REPEAT):
        low, high, inner = value
        each = _begin(inner)
        if each is None:
            return None
        if high == 1:
            return {**({} if low else {"": True}), **each}
        return {**({} if low else {"": True}), **dict.fromkeys(each, False), **{one: True for one in each if len(one) == _LONG}}
    if kind in (sre.AT, sre.ASSERT, sre.ASSERT_NOT):
        return {"": True}
    return None


def _set(value) -> frozenset[str] | None:
    letters: set[str] = set()
    for kind, one in value:
        if kind is sre.LITERAL:
            letters.add(chr(one))
        elif kind is sre.RANGE:
            letters.update(map(chr, range(one[0], one[1] + 1)))
        elif kind is sre.CATEGORY and one is sre.CATEGORY_DIGIT:
            letters |= _DIGITS
        else:
            return None
        if len(letters) > _MOST_OF_SET:
            return None
    return frozenset(letters)
