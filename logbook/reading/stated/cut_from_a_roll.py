"""How wide the tape is by its roll, and how long the pieces are that were cut off it for cross tabs: "taped with the two inch", "the roll said 48 mm", "six inch pieces for the tabs"."""

from __future__ import annotations

from logbook.reading.clauses.claims import Found, Frame, unit_of
from logbook.reading.words.phrasing import words_of

_WIDTHS = (1, 6)  # in.
_LONGEST = 48  # in.
_PIECE = "(?:DET|THIS)? SIZE? (?:KIND|FITTING)? COMMA? NUMBER? (?:NUM|MARKED)? COMMA? (?:(?:ON|OF)? RUN NUM)?"
_ENDS = "(?=SEP|$|AND|BUT|COUNTED|WORD|FILLER|TAPE|RUBBED|ON|IN)"
_OF_NO_TAPE = "(?!COUNTED? (?:GAP|DAMAGE|STAPLES|LEG|TABS|BOARD|WASHERS|APART|BY|LONG|BACK|THROAT|SCREWS|OVER|SIDE|SIDE_WORD|FITTING|WORD (?:STAPLES|TABS|WASHERS)))"


def _width(found: Found):
    item = found.item("n")
    rolled = found.at("o")
    if rolled is not None and words_of("told.wanted.rolls").isdisjoint(found.row.words(rolled, rolled + 1).lower().split()):
        return
    if _WIDTHS[0] <= item.value.value <= _WIDTHS[1] and getattr(item.value, "unit", None) != "ft":
        yield found.claim("tape_width", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))


def _long(found: Found):
    item, cut = found.item("n"), found.at("o")
    if cut is not None and words_of("told.wanted.cut_off").isdisjoint(found.row.words(cut, cut + 1).lower().split()):
        return
    if 1 <= item.value.value <= _LONGEST:
        yield found.claim("cross_tab_length", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))


FRAMES = (
    Frame(f"TAPED {_PIECE} WITH (?:DET|ONLY|FILLER){{0,2}} (?P<w>(?P<n>LEN)) {_OF_NO_TAPE} {_ENDS}", _width),
    Frame("WITH (?:DET|ONLY|FILLER){0,2} (?P<w>(?P<n>LEN) (?P<o>COUNTED)) (?!OF (?!TAPE))", _width),
    Frame(f"(?P<o>COUNTED) (?:OF|ON|IN) {_PIECE} (?:SAYS|BE|SHOWS|WORD) (?:HEDGE|ONLY|FILLER){{0,2}} (?P<w>(?P<n>LEN) WIDE?) (?=SEP|$|AND|BUT|ON)", _width),
    Frame("DET (?P<o>COUNTED) (?:I|ME|HAVE|FILLER){0,3} (?:SAYS|SHOWS) (?:HEDGE|ONLY|FILLER){0,2} (?P<w>(?P<n>LEN) WIDE?) (?=SEP|$|AND|BUT|ON|WHEN)", _width),
    Frame("TABS [^STOP QUERY COMMA LEN NUM FRAC EVERY APART]{0,4} (?:ON|IN|OF) " + _PIECE + " (?:I|ME|MOVE|UP|WORD|BE|FILL){0,5} (?P<w>(?P<n>LEN) (?P<o>FITTING|WORD|COUNTED))", _long),
    Frame("TABS COMMA? (?:I|ME|MOVE|UP|WORD|BE|FILL|WITH){1,5} (?P<w>(?P<n>LEN) (?P<o>FITTING|WORD|COUNTED))", _long),
    Frame("(?P<w>(?P<n>LEN) OF TAPE) (?:OF|ON) (?:EACH|EVERY|DET|ALL)? TABS", _long),
)
