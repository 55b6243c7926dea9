"""Slopes and tapers: how steep a side goes, and the length that a change of size takes."""

from __future__ import annotations

from logbook.facts import Move
from logbook.reading.clauses.claims import Found, Frame, unit_of

DIRECTION = {
    "DOWN": "down", "MOVE_DOWN": "down", "UP": "up", "MOVE_UP": "up", "IN": "in", "MOVE_IN": "in", "OUT": "out",
    "MOVE_OUT": "out", "FROM": "in", "OFF": "in",
}  # fmt: skip
FEWEST = 6  # inches; less room than that is said of something else


def _slope(found: Found):
    ratio = found.item("ratio")
    if ratio is not None:
        rise, run = ratio.value
    else:
        rise, run = found.item("rise").value.value, found.item("run").value.value
    named = found.item("slope") is not None or found.item("slope2") is not None
    foot = rise == 1 and run <= 12 and any(item.concept == "K_TRANSITION" for item in found.row.items)  # "had to go steep on it, one in four"
    if rise < run and (named or run == 12 or foot):
        yield found.claim("stated_slope", (rise, run), group="w", uses=("rise", "run", "ratio"))


def _laid_slope(found: Found):
    """ "I laid it out at two in twelve", "cut at three in twelve": no side of its own moves so."""
    near = [item.concept for item in found.row.items[max(0, found.first - 5) : found.first]]
    own = max((at for at, concept in enumerate(near[:-1]) if concept in ("AND", "COMMA") and near[at + 1] == "I"), default=-1)  # "top drops six and I cut it three in twelve"
    if near[-1:] == ["COMMA"] and found.row.items[found.first].concept in ("CUT_TO", "LAID"):
        own = len(near)  # "left in six, cut it at five in twelve"
    if "SIDE" not in near[own + 1 :] and found.item("rise").value.value < 12:
        yield from _slope(found)


def _slope_to_the_foot(found: Found):
    """ "three inches to the foot", "drops an inch every six": of what slopes, and of nothing that is spaced."""
    row, run = found.row, found.item("run")
    near = {item.concept for item in row.items[max(row.sentence_start(found.first), found.first - 8) : found.first]}
    in_feet = run.concept == "LEN" and run.value.value == 12
    moved = near & {"SLOPE", "MOVES", "MOVE", *DIRECTION}
    if near & {"STAPLED", "STAPLES", "TABS", "SCREWS", "VANES", "K_HANGER", "TAPED", "TIE_RODS"} or not (moved or in_feet and any(item.concept == "K_TRANSITION" for item in row.items)):
        return
    if found.item("rise").value.value < run.value.value <= 12:
        yield found.claim("stated_slope", (found.item("rise").value.value, run.value.value), group="w", uses=("rise", "run"))


def slope_of_twelve(found: Found):
    """ "two in twelve it is", "the lines are four in twelve": no side of its own moves so, and nothing else is told in twelves."""
    near = [item.concept for item in found.row.items[max(0, found.first - 4) : found.first]]
    if found.item("run").value.value == 12 and not {"SIDE", "OFFSETS", "OVER", "MOVE", "GAP", "DAMAGE", "EVERY", *DIRECTION} & set(near):
        yield from _slope(found)


def so_much_in_so_much(found: Found):
    """ "four inches in two feet on transition 124", "one in eight on the sides" """
    row, rise, run = found.row, found.item("rise"), found.item("run")
    near = {item.concept for item in row.items[max(row.sentence_start(found.first), found.first - 4) : found.first]}
    if not any(item.concept == "K_TRANSITION" for item in row.items) or near & _SPACED_OR_HARMED or not rise.value.value < run.value.value:
        return
    if rise.value.value == 1 and rise.concept == "NUM" or run.value.value == 12:
        yield from _slope(found)
    elif run.value.value >= FEWEST and rise.value.value * 2 <= run.value.value:
        move = (Move(None, rise.value.value, run.value.value, None),)
        yield found.claim("side_moves", move, group="w", uses=("rise", "run"), said_unit=unit_of(rise) or unit_of(run))


_SPACED_OR_HARMED = frozenset("STAPLED STAPLES TABS SCREWS VANES K_HANGER TAPED TIE_RODS DAMAGE GAP PARTED EVERY MOVE OFFSETS".split())


def slope_in_a_foot(found: Found):
    """ "three in twelve on the right side" """
    if found.item("run").value.value == 12:
        yield from _slope(found)


def _slope_misheard(found: Found):
    """ "to in twelve" is "two in twelve": before "in twelve" nothing else can stand."""
    run = found.item("run").value.value
    if run == 12:
        words = found.row.words(found.at("to"), found.last)
        yield found.claim("stated_slope", (2, run), group="w", uses=("run",), read_as="two " + words.split(maxsplit=1)[1])


def _taper(found: Found):
    item = found.item("by")
    yield found.claim("taper_length", item.value.value, group="w", uses=("by",), said_unit=unit_of(item))


def _taper_of_a_transition(found: Found):
    """ "twenty by twelve down to twelve by twelve in two feet": the length that the change of size takes."""
    if any(item.concept == "K_TRANSITION" for item in found.row.items) and found.item("by").value.value >= FEWEST:
        yield from _taper(found)


STEEP = (
    Frame("(?P<w>(?P<slope>SLOPE) (?:FILL|OF|ON|COMMA|WITH|IN){0,3} (?P<rise>NUMB) (?:IN|TO|AND|OVER|ON|OUT|OF|BY){1,2} (?P<run>NUMB)) (?!SLOPE)", _slope),
    Frame("(?P<slope>SLOPE) (?:FILL|OF|ON|COMMA|IN){0,3} (?P<w>(?P<ratio>RATIO))", _slope),
    Frame("(?P<w>(?P<ratio>RATIO)) (?P<slope2>SLOPE)?", _slope),
    Frame("(?P<w>(?P<rise>NUM|LEN) (?:IN|TO|ON|AND) (?P<run>NUM)) (?:ON|FILL|OF){0,2} (?P<slope2>SLOPE)", _slope),
    Frame("(?:^|(?<=COMMA)|(?<=STOP)|(?<=HAVE)) (?P<w>(?P<rise>NUM) (?:IN|ON) (?P<run>NUM)) (?=COMMA|STOP|AND|$)", _slope),
    Frame("(?:^|(?<=COMMA)|(?<=STOP)) (?P<w>(?P<rise>NUM) IN (?P<run>NUM)) (?=ON DET? SIDE (?:COMMA|STOP|AND|$))", slope_in_a_foot),
    Frame("(?:LAID|CUT_TO|CUT_LENGTH|MOVE IT|MOVE|ON|OUT|OFF|FROM|BE TO) (?:FILL|ON|TO){0,2} (?P<w>(?P<rise>NUM) (?:IN|TO|ON) (?P<run>NUM)) (?!BACK|BY)", _laid_slope),
    Frame("(?P<slope>SLOPE) (?:FILL|OF|ON|COMMA|WITH|IN|WORD|NUMBER|LAID){1,4} (?P<w>(?P<rise>NUM|FRAC) (?:IN|ON|TO) (?P<run>NUM))", _slope),
    Frame("(?P<slope>SLOPE) (?:FILL|OF|ON|COMMA|IN){0,3} (?P<w>(?P<to>TO) IN (?P<run>NUM))", _slope_misheard),
    Frame("(?P<w>(?P<to>TO) IN (?P<run>NUM)) (?:SLOPE)", _slope_misheard),
    Frame("(?P<w>SLOPE (?:FILL|OFF|PANEL|SIDE_WORD|ON|OF|FITTING|NUMBER|KIND|NUM|MARKED|COMMA|RUN){0,6} (?:TAKES|OVER|LENGTH) (?:FILL|OF|IT|OVER|ONLY|ME){0,3} (?P<by>NUMB)) (?!BY)", _taper),
    Frame("SIZE TO (?:DET|FILLER)? SIZE (?P<w>(?:IN|OVER) (?:FILL)? (?P<by>LEN)) (?=SEP|$|AND|BUT|FLAT|LEVEL|WITH)", _taper_of_a_transition),
    Frame("(?P<w>SLOPE (?:FILL|ON|OF|FITTING|NUMBER|KIND|NUM|MARKED|COMMA){0,5} RUN (?:FILL|ONLY){0,2} (?P<by>LEN))", _taper),
    Frame("(?P<w>SLOPE (?:FILL|OF|ONLY|ON|NUM|KIND){0,4} (?P<by>NUMB) LONG)", _taper),
    Frame("(?P<w>SLOPE (?:WORD|FILLER|HAVE|FILL){1,3} IN (?:FILL|ONLY)? (?P<by>LEN))", _taper),
)
TAPERS = (
    Frame("(?P<w>(?P<by>LEN) SLOPE)", _taper),
    Frame("(?P<w>(?P<by>LEN) (?:OF|ON|IN) DET? SLOPE) (?=SEP|$|ON|AND|BUT)", _taper_of_a_transition),  # "I had eighteen inches for the slope"
    Frame("(?P<w>SLOPE (?:(?:ON|OF) (?:DET|IT|THIS){1,2})? (?:BE|HAVE|FILL|ONLY|IN_PLACE){0,3} (?P<by>LEN)) (?=SEP|$|AND|BUT|LONG|FLAT|LEVEL)", _taper_of_a_transition),  # "the slope got eighteen inches"
    Frame("(?P<w>(?P<rise>NUMB) (?:OF|OF DET|TO DET|IN? EVERY) (?P<run>LEN|NUM)) (?=SEP|$|SLOPE|ON|BUT|AND|OVER)", _slope_to_the_foot),
    Frame("(?P<w>(?P<rise>NUM) BY EVERY (?P<run>NUM))", _slope),  # "tres por cada doce"
)
