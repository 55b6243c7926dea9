"""How long the legs are of the staples that went in, told behind those that did not: "half inch never came, so elbow 31 got three-eighths"."""

from __future__ import annotations

from logbook.reading.clauses.claims import Found, Frame, unit_of

_LONGEST = 1  # in.; a bare fraction less than this is a leg, where staples are spoken of


def _leg(found: Found):
    if found.item("n").value.value < _LONGEST:
        yield found.claim("staple_leg", found.item("n").value.value, group="w", uses=("n",), said_unit=unit_of(found.item("n")))


_PIECE = "(?:DET|THIS)? SIZE? (?:KIND|FITTING)? COMMA? NUMBER? (?:NUM|MARKED)? COMMA? (?:(?:ON|OF)? RUN NUM)?"
FRAMES = (
    Frame(f"(?:STAPLES|LEG) (?:ON|IN|OF|FROM) {_PIECE} (?:WORD|BE|SHOWS|FILL){{1,2}} (?P<w>(?P<n>LEN|FRAC) LONG)", _leg),
    Frame("(?:LEN|FRAC) (?:STAPLES|LEG) (?:[^STOP QUERY STAPLES LEG LEN FRAC]){2,14} (?:WITH|HAVE|BE) DET? (?P<w>(?P<n>FRAC)) (?=SEP|$|ON|IN|AND|BUT)", _leg),
)
