"""Pieces told of in turn without a stop between them: "both stapled nine is taped and rubbed ten is not taped".

A number that names a piece of the note begins its clause where a verb stands right behind it; a comma before it says so.
"""

from __future__ import annotations

from logbook.languages import LANGUAGES
from logbook.reading.meant.bare_names import numbers_said
from logbook.reading.meant.name_places import low
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import Token

_PEOPLE = frozenset("i we it all".split())
_JOINED = frozenset("and & n but , . ; : - –".split())


def cuts(found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """The commas, in order, where at least two pieces are named and then told of by their numbers alone."""
    words, names = LANGUAGES[code].clauses, LANGUAGES[code].bare_names
    if not words.verbs or sum(token.low in names.naming for token in found) < 2 and not any(token.low == "both" for token in found):
        return ()
    said, _ = numbers_said(found, code)
    named = {value for at, _, value in said if low(found, at - 1) in names.naming}
    named |= {value for (_, last, one), (at, _, value) in zip(said, said[1:]) if one in named and low(found, last) in names.joins and at - last == 1}
    if len(named) < 2:
        return ()
    turns = [at for at, last, value in said if value in named and at and low(found, last) in words.verbs - _PEOPLE and low(found, at - 1) not in names.naming and low(found, at - 1) not in words.at_it | words.to_another]
    made = tuple(Cut(found[at - 1].end, found[at].start, ", ") for at in turns if found[at - 1].low not in _JOINED and found[at - 1].sort == "word")
    return made if len(turns) > 1 else ()
