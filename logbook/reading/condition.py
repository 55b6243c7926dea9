"""How the piece came out: gaps, damage and its mending."""

from __future__ import annotations

from fractions import Fraction

from logbook.reading.claims import Found, Frame, Open, unit_of


def _tight(found: Found):
    yield found.claim("gap", Fraction(0), group="w")


def _gap(found: Found):
    item = found.item("n")
    if item.value.value <= 12:
        yield found.claim("gap", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))


def _open_corner(found: Found):
    """ "the corner's open half an inch" """
    if found.row.words(found.at("o"), found.at("o") + 1).lower() in ("open", "opened", "abierta", "abierto") and found.item("n").value.value <= 12:
        yield found.claim("gap", found.item("n").value.value, group="w", uses=("n",), said_unit=unit_of(found.item("n")))


def _some_gap(found: Found):
    """A gap without its size: no length was said, but it is not closed either."""
    row, first, last = found.row, found.first, found.last
    yield found.claim("(open)", None, group="w", opens=(Open("piece", None, row.items[first].start, row.items[last - 1].end),))


def _damage(found: Found):
    yield found.claim("facing_damage", found.item("d").value, group="d")


def _width(found: Found):
    item = found.item("n")
    yield found.claim("damage_width", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))


def _none(found: Found):
    yield found.claim("facing_damage", "none", group="w")


def _repaired(found: Found):
    yield found.claim("damage_repaired", True, group="w")


def _method(found: Found):
    yield found.claim("(method)", found.item("m").value, group="w")


FRAMES = (
    Frame("(?P<w>TURNING? VANES (?:FILL){0,2} (?:IN|IN_PLACE)|TURNING? VANES)", lambda found: [found.claim("vanes", True, group="w")]),
    Frame("(?P<w>NO_DAMAGE)", _none),
    Frame("(?P<w>(?P<n>LEN|FRAC|NUM) (?:FILL|WIDE|LONG){0,2} DAMAGE)", _width),
    Frame("DAMAGE (?:FILL|COMMA|IN|ON|FITTING|NUM|DET|FACING|OF|WORD|SIDE|JOINT|DAMAGE_PLACE|SIDE_WORD){0,5} (?P<w>(?P<n>LEN|FRAC) (?:WIDE|LONG|ROUND)?) (?!BOARD|TAPE)", _width),
    Frame("(?<!TAPE)(?P<d>DAMAGE)", _damage),
    Frame("(?P<w>REPAIRED)", _repaired),
    Frame("(?P<w>(?P<m>METHOD))", _method),
    Frame("(?P<w>(?P<n>LEN|FRAC|NUM) (?:FILL|OF){0,2} GAP)", _gap),
    Frame("(?P<w>JOINT (?:FILL){0,2} (?P<o>WORD) (?:FILL|ON|OF){0,2} (?P<n>LEN|FRAC))", _open_corner),
    Frame("(?P<w>(?:HAVE|BE) (?:DET|HEDGE|FILLER|WORD){0,3} GAP) (?!(?:FILL|OF|ON|COMMA|SIDE|SIDE_WORD|JOINT|AND){0,6} (?:(?:LEN|FRAC) (?!STAPLES|BOARD|TAPE|LEG)|REPAIRED|SEALED|TAPED|C_MASTIC)|THROUGH)(?<!(?:TIGHT))", _some_gap),
    Frame("(?P<w>GAP (?:FILL|OF|ON|COMMA|SIDE|SIDE_WORD|JOINT){0,6} (?P<n>LEN|FRAC)) (?!APART|BOARD|STAPLES|TAPE|LEG|LONG)", _gap),
    Frame("(?<!NOT)(?<!BENT)(?P<w>(?:JOINT FILL{0,2})? TIGHT) (?!(?:FILL)? TABS)", _tight),
)
