"""Items that belong together: sizes ("18 by 12", "20 wide, 14 high"), and a measure taken back right where it stands
("twenty by sixteen, no, make that twenty by fourteen")."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from logbook import measure
from logbook.reading.items import Item
from logbook.reading.measures import Measure

LENGTHS = ("NUM", "LEN", "FRAC")
MEASURES = (*LENGTHS, "DEG", "TEMP_F", "CFM", "INWG", "LB", "FT2", "SIZE", "RATIO")
_LABELS = {"WIDE": 0, "HIGH": 1}
_LUMBER = {(2, 4), (2, 6), (1, 4), (1, 2)}  # a "two by four" is lumber, no duct is that small
_BETWEEN_FIX = ("COMMA", "STOP", "FILLER", "AND", "HEDGE", "DET", "BE", "NO", "FIX", "THINK", "NOT", "OUTLET_SIZE")


@dataclass(frozen=True, slots=True)
class Size:
    """Two inside dimensions, width first where "wide" or "high" said so, else in spoken order; perhaps a length."""

    pair: tuple[Fraction, Fraction]
    unit: str | None
    long: Measure | None
    long_start: int | None = None


def compose(items: tuple[Item, ...], text: str) -> tuple[Item, ...]:
    """Sizes first, then the corrections between two measures of one sort."""
    return _corrected(_of_the_building(_sized(_counted(_split_decimals(items, text)), text), text))


def _split_decimals(items, text: str):
    """ "20 x 14.16 x 14" is what ears write for "20 x 14, 16 x 14": two sizes, no decimal."""
    done: list[Item] = []
    for place, item in enumerate(items):
        whole, dot, part = text[item.start : item.end].partition(".")
        between = 0 < place < len(items) - 1 and items[place - 1].concept == items[place + 1].concept == "BY"
        if item.concept == "NUM" and dot and between and part.isdigit() and len(part) == 2 and int(part) >= 4 and int(whole or 0) >= 4:
            middle = item.start + len(whole)
            done.append(replace(item, end=middle, value=_plain(int(whole)), read_as=f"{whole}, {part}"))
            done.append(Item("COMMA", ".", middle, middle + 1, item.first, item.last))
            done.append(replace(item, start=middle + 1, value=_plain(int(part))))
        else:
            done.append(item)
    return tuple(done)


def _counted(items):
    """Numbers that count or name something else: boxes, people, hours, rooms, telephones."""
    done: list[Item] = []
    for place, item in enumerate(items):
        if item.concept == "NUM":
            step = place + 2 if _concept(items, place + 1) in ("FILLER", "OF") else place + 1
            other = _concept(items, step) == "COUNTED" or _concept(items, place - 1) == "ROOM"
            other = other or any(_concept(items, k) == "NOT_MARK" for k in range(place - 3, place))
            item = replace(item, concept="COUNT") if other else item
        done.append(item)
    return tuple(done)


def _plain(value: int) -> Measure:
    return Measure("NUM", Fraction(value), None, 0, True, Fraction(value))


def _sized(items, text: str):
    done: list[Item] = []
    at = 0
    while at < len(items):
        sized = _size_at(items, at, text) if items[at].concept in LENGTHS else None
        if sized is None:
            done.append(items[at])
            at += 1
        else:
            done.append(sized[0])
            at = sized[1]
    return tuple(done)


def _size_at(items, at: int, text: str) -> tuple[Item, int] | None:
    ratio = _ratio_at(items, at, text)
    if ratio is not None:
        return ratio
    if _concept(items, at + 1) == "SQUARE" and items[at].value.value >= 4:
        side = items[at].value
        return _item(items, at, at + 2, Size((side.value, side.value), side.unit, None)), at + 2
    first, end = items[at], at + 1
    label = _LABELS.get(_concept(items, end))
    end = end + 1 if label is not None else end
    if _concept(items, end) == "BY":
        end += 1
        end = next((end + k for k in range(4) if _concept(items, end + k) not in ("DET", "FILLER", "HEDGE", "COMMA")), end)
    elif label is not None:
        while _concept(items, end) in ("COMMA", "AND"):
            end += 1
    else:
        return None
    if _concept(items, end) not in LENGTHS:
        return None
    second, end = items[end], end + 1
    second_label = _LABELS.get(_concept(items, end))
    if second_label is not None:
        end += 1
    elif label is not None and items[end - 2].concept != "BY":
        return None
    one, two = _in_one_unit(first.value, second.value)
    if (one, two) in _LUMBER:
        return replace(_item(items, at, end, None), concept="COUNT"), end
    pair = (two, one) if label == 1 or second_label == 0 else (one, two)
    long, long_start = None, None
    if _concept(items, end) == "BY" and _concept(items, end + 1) in LENGTHS and _concept(items, end + 2) != "BY":
        long, long_start, end = items[end + 1].value, items[end + 1].start, end + 2
        if _concept(items, end) == "LONG":
            end += 1
    return _item(items, at, end, Size(pair, second.value.unit or first.value.unit, long, long_start)), end


def _of_the_building(items, text: str):
    """ "a ceiling tile 24 by 24", "the 36 by 80 door": measures of what is no duct."""
    done = list(items)
    for place, item in enumerate(items):
        if item.concept != "BUILDING":
            continue
        at = place + 1
        while _concept(items, at) in ("BE", "DET", "HEDGE", "OF") and at - place < 4:
            at += 1
        if _concept(items, at) in ("SIZE", "LEN") and _concept(items, at + 1) not in _OWN_NOUNS:
            done[at] = replace(done[at], concept="COUNT")
        before = place - 1 if _concept(items, place - 1) not in ("COUNTED", "LONG", "WIDE", "HIGH") else place - 2
        if _concept(items, before) in ("SIZE", "LEN"):
            done[before] = replace(done[before], concept="COUNT")
    return tuple(done)


_OWN_NOUNS = ("GAP", "TAPE", "STAPLES", "BOARD", "BACK", "THROAT", "OFFSETS", "K_COLLAR", "ROUND")


def _ratio_at(items, at: int, text: str):
    """ "2:12": a slope where the second number is 12 or a slope word stands near; never a time of day."""
    if _concept(items, at + 1) == "COMMA" and text[items[at + 1].start : items[at + 1].end] == ":" and _concept(items, at + 2) == "NUM":
        tight = items[at].end == items[at + 1].start and items[at + 1].end == items[at + 2].start
        rise, run = items[at].value.value, items[at + 2].value.value
        if tight and run != 12 and len(text[items[at + 2].start : items[at + 2].end]) == 2:
            return replace(_item(items, at, at + 3, None), concept="COUNT"), at + 3
        if tight:
            return replace(_item(items, at, at + 3, (rise, run)), concept="RATIO"), at + 3
    return None


def _in_one_unit(one: Measure, two: Measure) -> tuple[Fraction, Fraction]:
    """ "five hundred by three hundred millimetres": the unit said last holds for both."""
    if one.unit is None and two.unit not in (None, "in") and (two.unit != "ft" or one.raw < 10):
        return one.value * measure.UNITS[two.unit], two.value
    if two.unit is None and one.unit in ("mm", "cm"):
        return one.value, two.value * measure.UNITS[one.unit]
    return one.value, two.value


def _item(items, first: int, end: int, value) -> Item:
    read_as = next((i.read_as for i in items[first:end] if i.read_as), None)
    back = tuple(b for i in items[first:end] for b in i.took_back)
    return Item("SIZE", value, items[first].start, items[end - 1].end, items[first].first, items[end - 1].last, read_as, back)


def _corrected(items):
    """A measure, a word that takes it back, a measure of the same sort: the second counts and remembers the first."""
    done: list[Item] = []
    for place, item in enumerate(items):
        if item.concept in MEASURES and done:
            before = None if done[-1].concept == "NOT" else _taken_back_by(item, done)
            if before is not None:
                first = done[before]
                del done[before:]
                item = _replacing(item, first)
            elif _not_that(items, place, done):
                first = next(i for i in range(len(done) - 1, -1, -1) if done[i].concept == item.concept)
                del done[first + 1 :]
                done[first] = replace(done[first], took_back=(*done[first].took_back, item))
                continue
        done.append(item)
    return tuple(done)


def _replacing(item: Item, first: Item) -> Item:
    if first.concept == "SIZE" and item.concept in LENGTHS:  # "eighteen by twelve, no, fourteen"
        pair = (first.value.pair[0], item.value.value)
        item = Item("SIZE", Size(pair, first.value.unit, None), first.start, item.end, first.first, item.last, item.read_as)
    return replace(item, took_back=(*first.took_back, replace(first, took_back=())))


def _taken_back_by(item: Item, done: list[Item]) -> int | None:
    at, fixed, no = len(done) - 1, False, False
    while at >= 0 and len(done) - at <= 7 and done[at].concept in _BETWEEN_FIX:
        fixed = fixed or done[at].concept == "FIX"
        no = no or (done[at].concept in ("NO", "NOT") and _says_no(done[at]))
        at -= 1
    if at < 0 or not (fixed or no):
        return None
    same = done[at].concept == item.concept or {done[at].concept, item.concept} <= set(LENGTHS)
    partial = done[at].concept == "SIZE" and item.concept == "NUM" and len(done) - at <= 4
    return at if same or partial else None


def _says_no(item: Item) -> bool:
    return item.end - item.start == 2  # the bare word "no", not "without" or "there's no"


def _not_that(items, place: int, done: list[Item]) -> bool:
    """ "forty-two, not forty": what stands behind "not" is the withdrawn one."""
    if items[place].concept == "NUM" and items[place].value.value == 1 and not items[place].value.digits:
        return False  # "not one side of it"
    if len(done) < 2 or done[-1].concept != "NOT" or done[-1].took_back:
        return False
    behind = done[-3:-1] if len(done) >= 3 else done[-2:-1]
    last = behind[-1]
    if last.concept == "COMMA" and len(behind) > 1:
        last = behind[-2]
    return last.concept == items[place].concept or {last.concept, items[place].concept} <= set(LENGTHS)


def _concept(items, at: int) -> str:
    return items[at].concept if 0 <= at < len(items) else ""
