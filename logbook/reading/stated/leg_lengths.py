"""How long the legs of the staples are."""

from __future__ import annotations

from fractions import Fraction

from logbook.reading.clauses.claims import Found, Frame, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of


def _leg(found: Found):
    item = found.item("n")
    if found.at("n") == found.first and item.value.value >= 1 and _is_of_the_board(found.row, found.first):
        return
    if found.first and found.row.items[found.first - 1].concept == "NO" or found.last < len(found.row.items) and found.row.items[found.last].concept == "NOT":
        return  # "no half-inch legs left", "the half-inch staples never came"
    if "BE" in [i.concept for i in found.row.items[found.first : found.at("n")]] and item.value.value >= 1:  # "staples are about an inch and a half": how far apart
        yield found.claim("staple_spacing", item.value.value, group="w", uses=("n",), said_unit=unit_of(item), **({"hedged": True} if item.value.value <= 1.5 else {}))  # no leg is longer
        yield found.claim("stapled", True, group="w", weak=True, hedged=False)
        return
    if found.row.items[found.first].concept == "STAPLES" and not item.value.unit == "ft" and 1.5 < item.value.value <= 12:  # "staples 50mm": no leg is so long
        yield found.claim("staple_spacing", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))
        yield found.claim("stapled", True, group="w", weak=True, hedged=False)
        return
    if found.last < len(found.row.items) and found.row.words(found.last, found.last + 1).lower() in ("between", "entre"):  # "staples, an inch and a half between them"
        yield found.claim("staple_spacing", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))
        yield found.claim("stapled", True, group="w", weak=True)
        return
    a_part = found.row.words(found.at("n"), found.at("n") + 2).lower().startswith(("half the", "half of"))  # "half the staples went through"
    if item.value.value <= 1.5 and not a_part:
        yield found.claim("staple_leg", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))


def _is_of_the_board(row: Row, at: int) -> bool:
    """ "el tablero es de una pulgada grapas de tres octavos": how thick the board is."""
    while at > 0 and row.items[at - 1].concept in ("BE", "OF", "DET"):
        at -= 1
    return at > 0 and row.items[at - 1].concept == "BOARD"


def _loaded_with(found: Found):
    """ "The gun was loaded with 3/8", with no word of staples: what a gun shoots."""
    if found.row.words(found.at("g"), found.at("g") + 1).lower() in words_of("small.staplers") and found.row.words(found.at("o"), found.at("o") + 1).lower() in words_of("small.loaded") and found.item("n").value.value < 1:
        yield found.claim("staple_leg", found.item("n").value.value, group="w", uses=("n",), said_unit=unit_of(found.item("n")))


def _out_of_the_right_ones(found: Found):
    """ "Out of half-inch so I used 3/8": a stock of half inch things is of staples; neither board nor tape nor washers come so."""
    item = found.item("n")
    backs = item.took_back
    if item.value.value < 1 and len(backs) == 1 and backs[0].value.value == Fraction(1, 2) and found.row.words(found.first, found.at("n")).lower() in words_of("small.ran_out"):
        yield found.claim("staple_leg", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))


def _the_short_ones(found: Found):
    """ "half-inch staples on 109. For 111, I only had the quarter-inch ones left": of the staples that were spoken of, where nothing else is so small."""
    said, value = found.row.words(found.at("o"), found.at("o") + 1).lower(), found.item("n").value.value
    before = [item.concept for item in found.row.items[: found.first]]
    if said == "ones" and Fraction(1, 8) <= value < 1 and {"STAPLES", "STAPLED"} & set(before) and not {"GAP", "BOARD", "WASHERS", "SCREWS", "DAMAGE"} & set(before):
        yield found.claim("staple_leg", value, group="w", uses=("n",), said_unit=unit_of(found.item("n")))


def _half_inch_ones(found: Found):
    """ "the staples on straight nine are the half-inch ones": their legs."""
    if found.item("n").value.value < 1:
        yield found.claim("staple_leg", found.item("n").value.value, group="w", uses=("n",), said_unit=unit_of(found.item("n")))


LEGS = (
    Frame("(?P<w>(?P<n>LEN|FRAC) (?:LEG|LONG)? (?:CLINCHED|OUT|OUTSIDE|FILL){0,2} STAPLES)", _leg),
    Frame("(?P<w>STAPLES (?:FILL|OF|WITH|COMMA|ONLY){0,3} (?P<n>LEN|FRAC) LEG?) (?!APART|CROWN|BOARD|BE (?:MISSING|OUT|NOT)) (?!(?<=COMMA LEN)(?:MARK181|TAPE|CLOSURE))", _leg),
    Frame("(?P<w>(?P<g>WORD) (?:BE|HAVE|FILLER)? (?P<o>WORD) WITH DET? (?P<n>LEN|FRAC)) (?=SEP|$|AND|BUT|GENERIC|WORD)", _loaded_with),
    Frame("(?P<w>(?:FILLER){1,2} (?P<n>LEN|FRAC)) (?=SEP|$|AND|BUT)", _out_of_the_right_ones),
    Frame("(?:ONLY|HAVE|WITH|FILLER|OF|WORD|LAID|BUT) DET? (?P<w>(?P<n>LEN|FRAC) (?P<o>WORD)) (?=SEP|$|AND|BUT|SIDE (?:SEP|$)|ON|OF|IN|LEFT_OUT)", _the_short_ones),
    Frame("(?P<w>(?P<n>LEN|FRAC) LEG)", _leg),
    Frame("(?P<w>(?P<n>LEN|FRAC) COMMA (?:THIS|IT)? BE DET? LEG) (?!BY|IN|OUT)", _leg),  # "seven-sixteenths, that's the leg on the staples"
    Frame("(?P<w>LEG BE (?P<n>LEN|FRAC)) (?!APART|BY)", _leg),
    Frame("(?P<w>STAPLES BE? (?:DET|WORD|FILLER|HEDGE|ME){1,4} COMMA (?P<n>FRAC)) (?=COMMA|STOP|$)", _leg),
    Frame("(?P<w>STAPLES WORD OF (?P<n>FRAC)) (?!APART|CROWN|BOARD)", _leg),
    Frame("(?P<w>STAPLES FILLER (?:DET)? (?:HAVE|WORD) (?:BE|FILL){1,2} OF? (?P<n>FRAC)) (?!APART|CROWN|BOARD)", _leg),  # "la grapa que traigo es de tres octavos"
    Frame("STAPLES (?:ON|IN|OF) (?:KIND|FITTING|NUMBER|NUM|MARKED|DET|IT){1,4} (?P<w>BE DET? (?P<n>LEN|FRAC) (?:GENERIC|WORD)?) (?=SEP|$|AND)", _half_inch_ones),
    Frame("STAPLES (?P<w>BE DET (?P<n>LEN|FRAC) (?:GENERIC|WORD)) (?=SEP|$|AND)", _half_inch_ones),
    Frame("STAPLES (?:IN_PLACE|THIS|ME|BE|FILLER|HAVE|WORD|IN|ON|DET){1,4} (?P<w>BE (?:ONLY|FILLER|HEDGE|DET){0,2} (?P<n>LEN|FRAC)) (?=SEP|$|AND|LEG|LONG)", _half_inch_ones),
    Frame("STAPLED (?P<w>WITH (?:ONLY|FILLER|HEDGE|DET){0,2} (?P<n>LEN|FRAC)) (?=SEP|$|AND|LEG|LONG)", _half_inch_ones),
)
