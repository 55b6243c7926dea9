"""How hot the air is that goes through a piece, with the piece between: "supply air through tee 111 is 120 degrees", "the air in offset 108 would be 275"."""

from __future__ import annotations

from logbook.reading.clauses.claims import Found, Frame

_PIECE = "(?:DET|THIS)? SIZE? (?:KIND|FITTING)? COMMA? NUMBER? (?:NUM|MARKED)? COMMA? (?:(?:ON|OF)? RUN NUM)? COMMA?"
_BARE = (150, 600)  # °F; a number without its unit
_SORTS = (60, 900)  # °F; with it


def _temperature(found: Found):
    item = found.item("n")
    if found.item("air").concept == "SERVICE" and not found.row.words(found.at("air"), found.at("air") + 1).lower().endswith((" air", "aire")):
        return
    low, high = _BARE if item.concept == "NUM" else _SORTS
    if low <= item.value.value <= high:
        yield found.claim("air_temperature", item.value.value, group="w", uses=("n",), said_unit="°C" if item.value.unit == "°C" else None)


_BEHIND = "(?=SEP|$|AND|BUT|SIDE|ALL|WHEN|FILLER|ON|IN)"
FRAMES = (
    Frame(f"(?P<w>(?P<air>SERVICE|AIR|AIR_TEMP) AIR? (?:THIS? WORD (?:BY|THROUGH|IN)|IN|THROUGH|INSIDE|OF|ON|WORD) {_PIECE} (?:BE|IF|TAKES|MOVE|SHOWS) (?:HEDGE|ONLY|FILLER|ON|TO){{0,2}} (?P<n>DEG|TEMP_F|NUM)) {_BEHIND}", _temperature),
    Frame(f"(?P<w>(?P<air>SERVICE|AIR|AIR_TEMP) AIR? (?:(?:IN|THROUGH|INSIDE|OF|ON|WORD) {_PIECE})? NOT (?:HAVE|MOVE|BE|WORD)? OVER (?P<n>DEG|TEMP_F|NUM)) {_BEHIND}", _temperature),
)
