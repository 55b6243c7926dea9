"""What a gauge showed: "put the gauge on 82. Inch and a half.", "he stuck his probe in it, got an inch and three quarters".

The length that comes first behind the gauge, in its sentence or alone at the head of the next, can only be inches of water. It is so whoever held
the gauge; what was asked, planned or wished for was not read.
"""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain

_MOST = 20  # inches of water
NOT_READ = frozenset("IF QUESTION QUERY WILL GOING_TO NEED PENDING REMIND DRAWING NOT NO NOT_DONE LATER GAP DAMAGE TAPE STAPLES TABS".split())
_NOT_PAST = frozenset("TAPE TAPED STAPLED STAPLES STAPLE TABS GAP DAMAGE THROAT ROUND SCREWS WASHERS QUERY SIDE K_HANGER BACK LONG".split())  # behind these a length is theirs
_BEFORE = frozenset("COMMA SAYS SHOWS HAVE HAVING BE HEDGE AROUND WORD ON THINK FILLER DET IT AND IN_PLACE".split())
_HEAD = frozenset("STOP COMMA HEDGE THINK FILLER BE HAVE IT THIS SAYS AND I ALL AROUND WORD".split())  # of the next sentence, before the length
_OF_SOMETHING = frozenset("BY BACK LONG WIDE HIGH APART BOARD TAPE STAPLES STAPLE TABS GAP ROUND LEG DAMAGE THICK LENGTH OVER FROM OFF EVERY CLOSURE K_COLLAR WASHERS SCREWS".split())
_WORDS_AT_HEAD = 3


def read_off(row: Row, taken: set[int], claims: list[Claim], language: Language) -> list[Claim]:
    pattern = word(language.code, "gauge")
    text = plain(row.text)
    if not pattern.may(text) or any(one.name == "static_pressure" for one in claims):
        return []
    for match in pattern.finditer(text):
        at = next((k for k, item in enumerate(row.items) if item.start >= match.end()), len(row.items))
        if NOT_READ.isdisjoint(item.concept for item in row.items[row.sentence_start(max(0, at - 1)) : at]):
            shown = _behind(row, at, taken)
            if shown is not None:
                taken.add(shown)
                hedged = any(item.concept in ("HEDGE", "THINK") for item in row.items[at:shown])
                return [claim(row, "static_pressure", row.items[shown].value.value, shown, shown + 1, uses=(shown,), hedged=hedged)]
    return []


def _behind(row: Row, at: int, taken: set[int]) -> int | None:
    """The item of the length that it showed."""
    since = None
    for place in range(at, len(row.items)):
        item = row.items[place]
        if item.concept in ("LEN", "FRAC") or item.concept == "NUM" and item.value.value.denominator != 1:
            follows = row.items[place + 1].concept if place + 1 < len(row.items) else ""
            pressure = (since is not None or row.items[place - 1].concept in _BEFORE) and place not in taken and 0 < item.value.value <= _MOST and item.value.unit in (None, "in") and follows not in _OF_SOMETHING
            return place if pressure else None
        if item.concept == "STOP" and since is None:
            since = place
        elif item.concept in _NOT_PAST if since is None else item.concept not in _HEAD or place - since > _WORDS_AT_HEAD:
            return None
    return None
