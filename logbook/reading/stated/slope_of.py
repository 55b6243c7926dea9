"""A slope that is told past the name of its piece, or as it was measured: "the slope on transition 152 is eight inches in thirty-six", "I measured the slope and got five in twenty-four"."""

from __future__ import annotations

from logbook.reading.clauses.claims import Found, Frame

_PIECE = "(?:ON|OF|IN) (?:DET|THIS|GENERIC){0,2} (?:KIND|FITTING)? (?:COMMA|NUMBER|FITTING|DET|KIND){0,3} (?:NUM|MARKED|LETTER NUM)"
_CAME_TO = "(?:COMMA|AND|BE|HAVE|HAVING|FILL|ONLY|SIZE_WORD|SAYS|SHOWS|I|IT)"
_SO_MUCH = "(?P<w>(?P<rise>NUM|LEN|FRAC) (?:IN|ON|TO|OVER) (?P<run>NUM|LEN)) (?!BY)"


def _slope(found: Found):
    rise, run = found.item("rise").value.value, found.item("run").value.value
    if 0 < rise < run:
        yield found.claim("stated_slope", (rise, run), group="w", uses=("rise", "run"))


FRAMES = (
    Frame(f"(?P<slope>SLOPE) {_PIECE} {_CAME_TO}{{1,5}} {_SO_MUCH}", _slope),
    Frame(f"(?P<slope>SLOPE) {_CAME_TO}{{1,5}} {_SO_MUCH}", _slope),
)
