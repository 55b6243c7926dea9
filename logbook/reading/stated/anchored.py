"""Measures by the thing they stand beside: "the screws went in at a foot and a half", "a five millimetre crack", "hangers landed at six foot six".

Read last, from what no frame has taken: of a thing that has one measure and got none, the nearest in its sentence is its own.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from logbook.reading.stated.leak_told import of_the_allowed
from logbook.reading.clauses.another_part import of_another_part
from logbook.reading.clauses.claims import Claim, Open, claim, unit_of
from logbook.reading.clauses.grammar import Row, code
from logbook.reading.words.phrasing import words_of

_AHEAD, _BEHIND = 14, 8  # items
_FAR_AHEAD = 16  # items; "there's a gap, let me put the rule on it, yes, an eighth"


@dataclass(frozen=True, slots=True)
class Anchor:
    """A thing and the fact that its measure states. A bare number counts where `bare`, else only before one of `bare_before`."""

    name: str
    things: tuple[str, ...]
    sorts: tuple[str, ...]
    least: float
    most: float
    kinds: tuple[str, ...] = ()
    bare_before: tuple[str, ...] = ()
    far: int = 24  # items


ANCHORS = (
    Anchor("washer_size", ("WASHERS",), ("LEN", "FRAC", "NUM"), 0.25, 6),
    Anchor("screw_spacing", ("SCREWS",), ("LEN", "NUM"), 2, 48),
    Anchor("throat_radius", ("THROAT",), ("LEN", "NUM", "FRAC"), 0, 72, ("elbow",)),
    Anchor("hanger_spacing", ("K_HANGER",), ("LEN",), 12, 160),
    Anchor("gap", ("GAP", "PARTED"), ("LEN", "FRAC"), 0, 4),
    Anchor("damage_width", ("DAMAGE",), ("LEN", "FRAC"), 0, 36, bare_before=("WIDE",)),
    Anchor("static_pressure", ("STATIC",), ("LEN", "FRAC", "INWG"), 0, 20),
    Anchor("static_pressure", ("LEAK_TEST",), ("LEN", "FRAC"), 0, 10),
    Anchor("air_temperature", ("AIR_TEMP",), ("DEG", "TEMP_F"), -40, 1000),
)
_THINGS = frozenset(thing for anchor in ANCHORS for thing in anchor.things) | {"STAPLES", "TABS", "LEG", "SLOPE", "STATIC", "AIRFLOW", "CLOSURE", "MARK181"}
_ENDS = ("STOP", "QUERY", "TAPED", "STAPLED", "BRANCH_WORD", "K_COLLAR", "LEAK_TEST")
_NOT_BEHIND = ("BY", "BACK", "BOARD", "TAPE", "LEG", "LONG", "STAPLES", "TABS", "OVER", "FROM", "OFF", "THICK")
_NOT_BEFORE = ("EVERY", "BACK", "LONG", "OFFSETS", "SIDE", "MOVE_IN", "MOVE_OUT", "MOVE_UP", "MOVE_DOWN", "BY", "RUN", "NUMBER", "FITTING", "ROUND", "LENGTH")


def anchored(row: Row, claims: list[Claim], taken: set[int]) -> list[Claim]:
    """The claims, with those of things whose measure stood apart; a gap whose size was found is no longer only an open item."""
    spent = taken | {at for one in claims for at in one.uses}
    made: list[Claim] = []
    for anchor in ANCHORS:
        letters = {code(thing) for thing in anchor.things}
        for at, letter in enumerate(row.string if not letters.isdisjoint(row.letters) else ""):
            if letter not in letters or anchor.name == "throat_radius" and _tells_the_shape(row, at) or any(one.name == anchor.name and _one_sentence(row, one.first, at) and not _tight_before(row, one, at) for one in [*claims, *made]):
                continue
            found = _nearest(row, at, anchor, spent)
            if found is None or anchor.name == "static_pressure" and of_the_allowed(row, found):
                continue
            spent.add(found)
            item = row.items[found]
            made.append(claim(row, anchor.name, item.value.value, min(at, found), max(at, found) + 1, uses=(found,), said_unit=unit_of(item), kinds=anchor.kinds, hedged=_hedged(row, found)))
    sized = [one for one in made if one.name == "gap"]
    kept = [one for one in claims if not (one.name == "(open)" and not one.pending and any(one.first < gap.last and gap.first < one.last for gap in sized))]
    return [*kept, *made, *_parted(row, [*kept, *made])]


def _tight_before(row: Row, one: Claim, at: int) -> bool:
    """ "Tight, correction, it's open an eighth", "tight save one that stands open an eighth": what stands open behind is not tight."""
    return one.name == "gap" and one.value == 0 and (one.last <= at and not _denied(row, at) or at < one.first and of_another_part(row, at, one.first))


def _tells_the_shape(row: Row, at: int) -> bool:
    """ "30, square throat ninety", "29, radius elbow": what sort of elbow it is."""
    ahead = row.items[at + 1] if at + 1 < len(row.items) else None
    turn = ahead is not None and (ahead.concept.startswith("K_") or ahead.concept == "NUM" and ahead.value.value in (90, 45))
    return turn or at > 0 and row.items[at - 1].concept == "SQUARE" or _tells_where(row, at)


def _tells_where(row: Row, at: int) -> bool:
    """ "A gap on the throat side, a good quarter inch": the place, and not the radius."""
    return row.items[at + 1 : at + 2] != () and row.items[at + 1].concept in ("SIDE_WORD", "JOINT") or {"GAP", "PARTED"} & {item.concept for item in row.items[max(0, at - 4) : at + 4]} != set() and any(item.concept in ("ON", "IN", "BY") for item in row.items[max(0, at - 2) : at])


def _hedged(row: Row, at: int) -> bool:
    return row.items[at].value.near or at > 0 and row.items[at - 1].concept in ("HEDGE", "THINK") and not row.is_blank(at - 1)


def _parted(row: Row, claims: list[Claim]) -> list[Claim]:
    """A joint that does not close, and nobody said by how much: it is left open."""
    letter, joints = code("PARTED"), {code("JOINT"), code("END"), code("TIED")}
    told = [one for one in claims if one.name in ("gap", "(open)")]
    return [
        claim(row, "(open)", None, at, at + 1, opens=(Open("piece", None, row.items[at].start, row.items[at].end),))
        for at, one in enumerate(row.string)
        if one == letter and joints & set(row.string[max(0, at - 6) : at + 7]) and not _denied(row, at) and not any(_one_sentence(row, other.first, at) for other in told)
    ][:1]


def _denied(row: Row, at: int) -> bool:
    return any(item.concept in ("NOT", "NO") for item in row.items[max(0, at - 3) : at])


def _one_sentence(row: Row, one: int, other: int) -> bool:
    return not any(item.concept in ("STOP", "QUERY") for item in row.items[min(one, other) : max(one, other)])


def _nearest(row: Row, at: int, anchor: Anchor, spent: set[int]) -> int | None:
    """The measure nearest to the thing in its sentence, on either side, with no other thing between that it could be of."""
    found = []
    for step, reach in ((1, _FAR_AHEAD if anchor.name == "gap" else _AHEAD), (-1, _BEHIND)):
        k = at + step
        while 0 <= k < len(row.items) and abs(k - at) <= reach:
            concept = row.items[k].concept
            if concept in _ENDS or (concept in _THINGS and concept not in anchor.things):
                break
            if k not in spent and not row.is_blank(k) and concept in (*anchor.sorts, "NUM") and _fits(row, k, anchor):
                found.append((abs(k - at), -step, k))
                break
            k += step
    return min(found)[2] if found else None


def _fits(row: Row, at: int, anchor: Anchor) -> bool:
    item = row.items[at]
    ahead = row.items[at + 1].concept if at + 1 < len(row.items) else ""
    before = row.items[at - 1].concept if at else ""
    if item.concept not in anchor.sorts and ahead not in anchor.bare_before:
        return False
    if (ahead in _NOT_BEHIND and (anchor.name, ahead) != ("hanger_spacing", "FROM")) or before in _NOT_BEFORE or (item.concept == "NUM" and before.startswith("K_")):
        return False
    if anchor.name == "hanger_spacing" and (ahead in ("COUNTED", "FITTING") or ahead.startswith("K_") and ahead != "K_HANGER"):
        return False  # "both eight foot straights": how long they are
    if item.concept == "NUM" and ahead not in ("COMMA", "STOP", "AND", "", "WORD", "ON", "OF", "IN", "SQUARE", "WHEN", "APART", *anchor.bare_before):
        return False
    if anchor.name == "damage_width" and ahead in ("WORD", "AROUND", "OUT", "OUTSIDE", "OTHER") and row.words(at + 1, at + 2).lower().split()[0] in words_of("small.reaches_past"):
        return False  # "a patch two inches bigger all the way around"
    if anchor.name == "gap" and ahead in ("FROM", "OFF", "OVER") or (anchor.name == "gap" and before in ("FROM", "OFF")):
        return False  # "stands two inches off the wall"
    if item.concept == "FRAC" and item.value.value == Fraction(1, 2) and ahead in ("IT", "I", "OF", "DET", "THIS"):
        return False  # "half of it", "the other half I …"
    if anchor.name == "static_pressure" and any(one.concept == "NEGATIVE" for one in row.items[max(0, at - 3) : at]):
        return False
    if not words_of("small.than").isdisjoint(row.words(max(0, at - 2), at).lower().split()[-2:] if at else ()):
        return False
    return anchor.least <= item.value.value <= anchor.most
