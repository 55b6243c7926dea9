"""A slope that is told past the name of its piece, or as it was measured: "the slope on transition 152 is eight inches in thirty-six", "I measured the slope and got five in twenty-four"."""

from __future__ import annotations

from logbook.reading.clauses.claims import Found, Frame

_PIECE = "(?:ON|OF|IN) (?:DET|THIS|GENERIC){0,2} (?:KIND|FITTING)? (?:COMMA|NUMBER|FITTING|DET|KIND){0,3} (?:NUM|MARKED|LETTER NUM)"
_PART = "(?:ON|OF|IN) (?:DET|THIS)? (?:LONG|BACK|WORD)? (?:SIDE_WORD|SIDE|ONE_SIDE|OTHER_SIDE)"
_CAME_TO = "(?:COMMA|AND|BE|HAVE|HAVING|FILL|ONLY|SIZE_WORD|SAYS|SHOWS|I|IT)"
_SO_MUCH = "(?P<w>(?P<rise>NUM|LEN|FRAC) (?:IN|ON|TO|OVER) (?P<run>NUM|LEN)) (?!BY)"


def _slope(found: Found):
    rise, run = found.item("rise").value.value, found.item("run").value.value
    if 0 < rise < run:
        yield found.claim("stated_slope", (rise, run), group="w", uses=("rise", "run"))


def _of_a_side(found: Found):
    """ "One side goes five inches in twenty": of a transition, and longer than it is moved."""
    run = found.item("run")
    if run.value.value >= 8 and any(item.concept == "K_TRANSITION" or item.concept == "SLOPE" for item in found.row.items):
        yield from _slope(found)


FRAMES = (
    Frame(f"(?P<slope>SLOPE) {_PIECE} {_CAME_TO}{{1,5}} {_SO_MUCH}", _slope),
    Frame(f"(?P<slope>SLOPE) {_PART} {_CAME_TO}{{1,5}} {_SO_MUCH}", _slope),
    Frame(f"(?P<slope>ONE_SIDE|OTHER_SIDE) (?:MOVE|MOVE_IN|MOVE_DOWN|MOVE_UP|BE|FILL){{1,3}} {_SO_MUCH} (?=SEP|$)", _of_a_side),
    Frame(f"(?P<slope>SLOPE) {_CAME_TO}{{1,5}} {_SO_MUCH}", _slope),
)
