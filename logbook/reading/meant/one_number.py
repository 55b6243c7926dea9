"""The one number of a note that nothing has read, where nothing has named its piece: "inspector wrote up 88", "cross 28 off", "the strip of 206 that goes behind the beam".

Looked for last. A number that measures or counts is read as such or has its unit or its thing beside it; what is left over names the piece
that the note is about, if it stands where a thing is spoken of and no other number is left over.
"""

from __future__ import annotations

from logbook.languages import LANGUAGES
from logbook.reading.meant.bare_names import CLASSES, LARGEST, numbers_said
from logbook.reading.meant.name_places import PLACED_FROM, TURNS, Spot, may_be
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import Token
from logbook.said import Reading

_LEAST = 20  # below it men count and measure


def cuts(found: tuple[Token, ...], told: Reading, code: str) -> tuple[Cut, ...]:
    words = LANGUAGES[code].bare_names
    if not words.spoken_of or not told.fittings or any(fact.name in _NAMED for one in told.fittings for fact in one.facts):
        return ()
    said, starts = numbers_said(found, code)
    read = [(span.start, span.end) for one in told.fittings for fact in one.facts for span in (fact, *fact.also) if span.start is not None]
    spots = [Spot(found, *one, starts, words) for one in said if not any(found[one[0]].start < end and start < found[one[1] - 1].end for start, end in read)]
    if {one.value for one in spots if one.value >= _LEAST} != {one.value for one in spots if _is_spoken_of(one)}:
        return ()
    named = [one for one in spots if _is_spoken_of(one)]
    if not named or len({one.value for one in named}) > 1:
        return ()
    first = named[0]
    if first.value >= 100 and found[first.at].sort != "number":
        return (Cut(found[first.at].start, found[first.last - 1].end, f"{words.name} {first.value}"),)
    return (Cut(found[first.at].start, found[first.at].start, f"{words.name} "),)


def _is_spoken_of(spot: Spot) -> bool:
    words, before = spot.words, spot.before()
    if not _LEAST <= spot.value <= LARGEST or spot.value in CLASSES or not (may_be(spot) or spot.behind() in words.well | words.beside) or spot.behind() in words.of:
        return False
    if spot.behind() in words.inside | words.on and spot.behind(1) in words.pronouns:
        return False  # "put thirty in it"
    first, end = spot.clause()
    clause = {one.low for one in spot.found[first:end]}
    if spot.value in TURNS and not words.turns.isdisjoint(one.low for one in spot.found):
        return False
    if not (clause.isdisjoint(words.warmth) and clause.isdisjoint(words.blown)):
        return False
    if spot.value < PLACED_FROM and not words.measured.isdisjoint(one.low for one in spot.found[first : spot.at]):
        return False  # "the hangers went on 48"
    if not spot.trade_ahead(0) and not any(one.low in words.things or one.low in words.acts for one in spot.found):
        return False
    back = 2 if before in words.points else 1
    before = spot.before(back)
    if before in words.onward or before in words.off:
        return spot.before(back + 1) in words.spoken_of or spot.before(back + 1).endswith(words.does_so)
    if before in words.spoken_of:
        return True
    if before in words.leads_to_it:
        return spot.before(back + 1) not in words.measured | words.back
    return before.endswith(words.does_so) and before not in words.measured


_NAMED = ("mark", "run", "joined_to")
