"""A measure set right behind the thing that it is of: "half inch legs, no, three eighths", "three inch tape, no, two and a half"."""

from __future__ import annotations

from logbook.reading.composed.size_pairs import LENGTHS
from logbook.reading.words.items import Item, concept_at

_THINGS = frozenset("TAPE CLOSURE LEG STAPLES STAPLE TABS GAP DAMAGE WASHERS WIDE LONG BOARD APART THROAT".split())
_SAYS_SO = frozenset("COMMA STOP NO FIX FILLER IT THIS OTHER DET BE HEDGE THINK I".split())
_ENDS = frozenset(("", "COMMA", "STOP", "QUERY", "AND", "BUT", "TAPED", "STAPLED", "RUBBED"))
_MOST = 7  # items of what takes back


def behind_its_thing(items, place: int, done: list[Item]) -> tuple[int, int] | None:
    """The measure before that the one at `place` sets right, and the last item of its thing; nothing more is said of the second."""
    item = items[place]
    if item.concept not in LENGTHS or concept_at(items, place + 1) not in _ENDS:
        return None
    at, last = len(done) - 1, len(done) - 1
    while at > 0 and last - at < _MOST and done[at].concept in _SAYS_SO:
        at -= 1
    if not _takes_back(done[at + 1 :], item) or done[at].concept not in _THINGS:
        return None
    behind = at
    while at > 0 and behind - at < 2 and done[at].concept in _THINGS:
        at -= 1
    if done[at].concept not in LENGTHS or at == behind:
        return None
    return at, behind


def _takes_back(between: list[Item], item: Item) -> bool:
    """Whether a word of correction stands there, or a bare "no" with a sign behind it; "no two are alike" takes nothing back."""
    fixes = [one for one in between if one.concept == "FIX" or one.concept == "NO" and one.end - one.start == 2]
    if not fixes or between[0].concept not in ("COMMA", "STOP", "FIX", "NO"):
        return False
    bare = all(one.concept == "NO" for one in fixes) and between[-1].concept == "NO"
    return not bare or item.concept != "NUM"  # "three inch tape, no 12"
