"""How far apart hangers and screws are, past words that stand between: "hung straight 76 on ten foot centers", "the straps under 87 look to be nine foot apart", "screws and washers at ten inches"."""

from __future__ import annotations

from logbook.reading.clauses.claims import Found, Frame, unit_of
from logbook.reading.words.phrasing import words_of

_PIECE = "(?:DET|THIS)? SIZE? (?:KIND|FITTING)? COMMA? NUMBER? (?:NUM|MARKED)? COMMA? (?:(?:ON|OF)? RUN NUM)? COMMA?"
_HANGERS = (24, 240)  # in.
_SCREWS = (2, 48)  # in.


def _spaced(name: str, within: tuple[int, int]):
    def build(found: Found):
        spaced = "n" if found.item("n") is not None else "m"
        item, straps = found.item(spaced), found.at("o")
        if straps is not None and words_of("told.wanted.holds_up").isdisjoint(found.row.words(straps, straps + 1).lower().split()):
            return
        if within[0] <= item.value.value <= within[1]:
            yield found.claim(name, item.value.value, group="w", uses=(spaced,), said_unit=unit_of(item))

    return build


def _hangs(found: Found):
    """ "Straight 31 hangs every ten feet off the purlins"."""
    if found.row.words(found.at("o"), found.at("o") + 1).lower() in words_of("told.wanted.hangs"):
        found_of = "n" if found.item("n") is not None else "m"
        if _HANGERS[0] <= found.item(found_of).value.value <= _HANGERS[1]:
            yield found.claim("hanger_spacing", found.item(found_of).value.value, group="w", uses=(found_of,), said_unit=unit_of(found.item(found_of)))


FRAMES = (
    Frame(f"HUNG {_PIECE} (?P<w>(?:EVERY (?P<n>LEN)|ON DET? (?P<m>LEN) APART))", _spaced("hanger_spacing", _HANGERS)),
    Frame("(?P<o>WORD) (?:WORD|OFF|FROM|ON|DET|BUILDING|COMMA|UP){0,4} (?P<w>(?:EVERY (?P<n>LEN)|ON DET? (?P<m>LEN) APART))", _hangs),
    Frame(f"(?P<o>WORD) (?:WORD|ON|OF|IN) {_PIECE} (?:[^STOP QUERY COMMA STAPLES TABS SCREWS LEN EVERY]){{1,5}} (?P<w>(?P<n>LEN) APART)", _spaced("hanger_spacing", _HANGERS)),
    Frame("SCREWS (?:AND|WITH) (?:DET|ALL)? WASHERS (?:BE|FILLER|COMMA){0,2} (?P<w>ON (?P<n>LEN|FRAC) APART?)", _spaced("screw_spacing", _SCREWS)),
)
