"""A piece that does not go home in the next one: "offset 59 doesn't seat all the way" is said of the joint, and of no panel in its groove; and a gap that is found or left: "the collar joint left a gap"."""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.clauses.claims import Claim, Found, Frame, Open
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of

_OF_A_PANEL = frozenset(("PANEL", "GROOVE", "SHIPLAP", "BUTT", "CUT_TO", "CUT_LENGTH", "TRIMMED", "FACING"))


def _open(found: Found):
    if found.row.words(found.at("o"), found.at("o") + 1).lower() in words_of("told.wanted.home"):
        first, last = found.match.span("w")
        yield found.claim("(open)", None, group="w", opens=(Open("piece", None, found.row.items[first].start, found.row.items[last - 1].end),))


def _a_gap_left(found: Found):
    """A gap without its size, that nobody says he closed."""
    row, (first, last) = found.row, found.match.span("w")
    behind = [item.concept for item in row.items[found.last : row.sentence_end(found.last)]]
    then = set(behind[behind.index("AND") :]) if "AND" in behind else set()
    if row.words(found.at("v"), found.at("v") + 1).lower() in words_of("small.finds") and _CLOSED.isdisjoint(behind) and then.isdisjoint(("WORD", "MOVE")):
        yield found.claim("(open)", None, group="w", opens=(Open("piece", None, row.items[first].start, row.items[last - 1].end),))


_CLOSED = frozenset("TAPED SEALED REPAIRED C_MASTIC FIX REDID TIGHT LEN FRAC".split())  # of its size, or what may tell that it was closed since

FRAMES = (
    Frame("(?<!NO)(?<!NOT)(?<!OTHER)(?P<w>(?P<v>WORD|SIDE) DET (?:HEDGE|WORD)? GAP) (?=ON DET? (?:JOINT|END|SIDE|SIDE_WORD|WORD)|SEP|$|WORD I|IN_PLACE)", _a_gap_left),
    Frame("(?P<w>NOT (?:MOVE|WORD|BE|HAVE){0,2} (?:ALL DET WORD)? (?P<o>WORD)) (?=IN|ON|SEP|$|AND|TO)", _open),
)


def of_the_joint(row: Row, claims: list[Claim]) -> list[Claim]:
    """The claims, where a piece that is said not to seat is open at its joint."""
    if not any(one.name == "panel_seated" for one in claims) or any(item.concept in _OF_A_PANEL for item in row.items):
        return claims
    return [_as_open(row, one) if one.name == "panel_seated" and one.value is False and _names(row, one.first - 1) else one for one in claims]


def _names(row: Row, at: int) -> bool:
    return at >= 0 and (row.items[at].concept in ("NUM", "MARKED") or row.items[at].concept.startswith("K_"))


def _as_open(row: Row, one: Claim) -> Claim:
    return replace(one, name="(open)", value=None, opens=(Open("piece", None, row.items[one.first].start, row.items[one.last - 1].end),), corrects=False)
