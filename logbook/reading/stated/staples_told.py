"""Staples that are told of by their distance or their piece, with no word that they went in: "every two inches a staple", "three inches. That's what I stapled it at", "half inch staples in elbow 9"."""

from __future__ import annotations

from logbook.reading.clauses.claims import Found, Frame, unit_of

_LEAST, _MOST = 1, 12  # inches: less is a leg, more is no spacing of staples


def _stapled(found: Found):
    before = found.row.items[found.first - 1].concept if found.first else ""
    if before not in ("NO", "NOT", "NEED", "PENDING", "WILL"):
        yield found.claim("stapled", True, group="w", weak=True, hedged=False)


def _so_far_apart(found: Found):
    item = found.item("n")
    if item.value.unit != "ft" and _LEAST <= item.value.value <= _MOST:
        yield found.claim("staple_spacing", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))


_THAT_IS = "(?:STOP|COMMA) (?:FILLER|AND){0,2} (?:BE|IT BE)"
FRAMES = (
    Frame("EVERY (?:FILL|OF|ON){0,2} NUMB (?:BE|HAVE|FILLER|DET|WORD|COMMA){0,3} (?P<w>STAPLE) (?=SEP|$|ON|IN|AND|ALL|AROUND)", _stapled),
    Frame("(?:LEN|FRAC) (?P<w>STAPLES) (?=IN DET? (?:KIND|FITTING) NUMBER? (?:NUM|MARKED))", _stapled),
    Frame(f"(?:^|(?<=SEP)) (?:HEDGE|FILLER)? (?P<w>(?P<n>LEN)) APART? {_THAT_IS} QUESTION (?:WORD|APART|FILLER){{0,3}} (?:I|ME) FILLER? STAPLED", _so_far_apart),
    Frame(f"(?:^|(?<=SEP)) (?:HEDGE|FILLER)? (?P<w>(?P<n>LEN)) APART? {_THAT_IS} DET? (?:STAPLES|EVERY (?:ON|OF|FROM) DET? STAPLES)", _so_far_apart),
)
