"""A piece that is named in the middle of what is told of it is read as if it was named ahead: "the staples on straight 31 are turned in" as
"straight 31, the staples are turned in".

The note is read as it stands first; what it tells with the name ahead is added to that.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from functools import cache

from logbook.languages import LANGUAGES
from logbook.reading.meant.piece_by_piece import in_order
from logbook.reading.words.stretches import moved, put_together
from logbook.reading.words.tokens import plain
from logbook.said import Entry, Fact, Reading

_NEAR = 12  # letters between a name and its run
_WITH_IT = 40  # letters before a name that can go with it
_ON_RUN = r",? (?:on |of |in |en |de |del )?(?:(?:the |el |la )?(?:run|ramal|corrida|línea|linea) )?"


def with_names_ahead(text: str, told: Reading, code: str, read: Callable[[str], Reading]) -> Reading:
    """`told` with what is told besides where the names stand ahead."""
    stretches, ahead = _stretches(text, told, code)
    return _with_more(told, moved(read(put_together(text, stretches)), text, stretches), ahead) if ahead else told


def _stretches(text: str, told: Reading, code: str) -> tuple[list[tuple[int, int] | str], frozenset[int]]:
    """The stretches of the text in the order in which they are to be read, and the entries of which the names stand ahead then."""
    said = plain(text)
    if len(said) != len(text) or not _turns(code):
        return [], frozenset()
    ahead: set[int] = set()
    names = [_name(said, entry, code) for entry in told.fittings]
    made: list[tuple[int, int] | str] = []
    done = 0
    for place, name in enumerate(names):
        if name is None or name[0] < done:
            continue
        begin = max(said.rfind(sign, 0, name[0]) for sign in (". ", "? ", "! ", "; "))
        begin = max(begin + 2, done) if begin >= 0 else done
        end = min((at for sign in (". ", "? ", "! ", "; ") if (at := said.find(sign, name[1])) >= 0), default=len(said))
        if sum(other is not None and begin <= other[0] < end for other in names) > 1:
            continue
        behind_it = name[1] + (said.startswith(",", name[1]) and "," in said[slice(*name)])  # "on the straight, 31, it is ..."
        for before, behind in _turns(code):
            match = before.search(said, max(0, begin - 2), name[0])  # with the sign before the sentence
            if match is None or behind.match(said, behind_it) is None:
                continue
            kept = match.start("drops") if "drops" in before.groupindex else name[0]
            after = behind_it + (2 if said.startswith("'s ", behind_it) else 0)
            made += [(done, begin), name, ", ", (begin, kept), (after, end)] if kept > begin else [(done, begin), name, ",", (after, end)]
            done = end
            ahead.add(place)
            break
    return [*made, (done, len(text))], frozenset(ahead)


def _name(said: str, entry: Entry, code: str) -> tuple[int, int] | None:
    """Where the kind and the number stand, with the words that go with them; None where they stand apart."""
    mark, kind = entry.fact("mark"), entry.fact("kind")
    if mark is None or mark.start is None:
        return None
    start, end = mark.start, mark.end
    if kind is not None and kind.start is not None and kind.from_fitting is None:
        if kind.end <= start and re.fullmatch(r"[ ,]*(?:number |no\.? ?|#)*", said[kind.end : start]):
            start = kind.start
        elif end <= kind.start and said[end : kind.start] == " ":
            end = kind.end
    run = entry.fact("run")
    if run is not None and run.from_fitting is None and run.start is not None and end < run.start < end + _NEAR and re.fullmatch(_ON_RUN, said[end : run.start]):
        end = run.end
    words = _words(code).search(said, max(0, start - _WITH_IT), start)
    return (words.start(), end) if words is not None else (start, end)


def _with_more(told: Reading, other: Reading, ahead: frozenset[int]) -> Reading:
    """`told` with what `other` tells besides, and where the one takes an act for done and the other does not, not done; as it was where they contradict one another otherwise."""
    if len(other.fittings) != len(told.fittings) or other.shift is not None or other.withdraws is not None:
        return told
    fittings = []
    for place, (was, one) in enumerate(zip(told.fittings, other.fittings, strict=True)):
        if place not in ahead:
            fittings.append(was)
            continue
        known = {fact.name: fact for fact in was.facts}
        denied = {fact.name: fact for fact in one.facts if fact.value is False and not fact.hedged and fact.name in known and known[fact.name].value is True}
        if any(fact.name in known and fact.name not in denied and not _alike(fact, known[fact.name]) for fact in one.facts):
            return told
        more = tuple(fact for fact in one.facts if fact.name not in known and not _names_it(fact, known.get("mark")))
        kept = tuple(denied.get(fact.name, fact) for fact in was.facts)
        opens = {(item.about, item.denies) for item in was.open_items}
        waits = tuple(item for item in one.open_items if (item.about, item.denies) not in opens)
        facts = tuple(sorted((*kept, *more), key=in_order)) if more or denied else was.facts
        fittings.append(replace(was, facts=facts, open_items=(*was.open_items, *waits), unread=one.unread if more or denied else was.unread))
    return replace(told, fittings=tuple(fittings), unread=other.unread)


def _names_it(one: Fact, mark: Fact | None) -> bool:
    """ "The card for elbow 45 says vanes": the number that names the piece is no angle, where its name stands ahead."""
    return mark is not None and one.name == "turn_angle" and (one.start, one.end) == (mark.start, mark.end)


def _alike(one: Fact, other: Fact) -> bool:
    return (one.value, one.hedged, one.conflict) == (other.value, other.hedged, other.conflict)


@cache
def _turns(code: str) -> tuple[tuple[re.Pattern[str], re.Pattern[str]], ...]:
    return tuple((re.compile(before), re.compile(behind)) for before, behind in LANGUAGES[code].named_ahead.turns)


@cache
def _words(code: str) -> re.Pattern[str]:
    return re.compile(LANGUAGES[code].named_ahead.names)
