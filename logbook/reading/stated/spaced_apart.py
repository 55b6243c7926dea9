"""A second spacing of the same staples, on a side of their own: "stapled every two, the back side on three", "except along the long side, where they're at four"."""

from __future__ import annotations

from logbook.reading.clauses.claims import Found, Frame, unit_of
from logbook.reading.words.phrasing import words_of

_LOOK_BACK = 17  # items; further away a spacing is nobody's
_THEY = frozenset(("IT", "OTHER", "STAPLES"))
_ENDS = ("QUERY", "TABS", "SCREWS", "SIZE", "TAPED", "TAPE", "K_HANGER", "HUNG")
_OTHERS = "STOP QUERY NUM LEN FRAC SIZE SIDE SIDE_WORD STAPLED TAPED TAPE RUBBED TABS SCREWS WASHERS HUNG GAP DAMAGE TIE_RODS MARKED THROAT BOARD"


def _other_spacing(found: Found):
    """Only where a spacing was told before it: in the same sentence, or in the one before where "they" are at it."""
    item, at, items = found.item("n"), found.at("n"), found.row.items
    said = found.row.words(found.at("s"), found.at("s") + 1).lower().split()
    counts = items[at].concept == "NUM" and item.value.value == 1 and items[at - 1].concept == "WORD" and items[at - 2].concept == "EVERY"
    if not 1 <= item.value.value <= 12 or counts or (items[found.at("s")].concept == "WORD" and said[-1] not in words_of("small.on_some")):
        return
    goes_on = not _THEY.isdisjoint(one.concept for one in items[found.first : at])
    for k in range(found.first - 1, max(-1, at - _LOOK_BACK), -1):
        concept = items[k].concept
        if concept == "STOP" and goes_on:  # "stapled at two. The long side, I spread them out to three"
            goes_on = False
            continue
        if concept in ("STOP", *_ENDS) or concept.startswith(("K_", "MOVE_")):
            return
        if concept == "EVERY" or (concept in ("ON", "THROUGH") and items[k + 1].concept in ("NUM", "LEN", "ON") and items[k + 2].concept != "SIDE_WORD") or concept == "APART":
            yield found.claim("staple_spacing", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))
            return


OF_A_SIDE = (
    Frame("(?P<s>SIDE|OTHER_SIDE|BACK|SIDE_WORD|WORD|END|JOINT) (?:SIDE_WORD|FILL|MOVE|THROUGH|COUNTED|GENERIC|HEDGE){0,4} (?P<w>(?:ON|EVERY)? (?P<n>NUMB)) (?=SEP|$|AND|APART|EVERY|BUT|WORD)", _other_spacing),
    Frame("(?:COMMA|AND|BUT) (?:FILL|AND|HEDGE){0,2} (?P<w>(?P<n>NUMB)) ON DET? (?P<s>SIDE|BACK|OTHER_SIDE|END|SIDE_WORD|WORD)", _other_spacing),
    Frame(f"(?P<s>SIDE|OTHER_SIDE|ONE_SIDE|BACK|SIDE_WORD|JOINT|FLAP) (?:(?!KIND)[^{_OTHERS}]){{0,9}} (?:BE|IT|OTHER|ME|COMMA|WORD|MOVE|HAVE|OUT) (?P<w>(?:ON|TO|EVERY|MOVE|COUNTED) HEDGE? (?P<n>NUMB)) (?=SEP|$|AND|APART|BUT)", _other_spacing),
)
