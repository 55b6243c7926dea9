"""Sizes put together from two dimensions ("18 by 12", "20 wide, 14 high"), apart from those of what is no duct."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from logbook import measure
from logbook.reading.words.items import Item, concept_at
from logbook.reading.words.measures import Measure

LENGTHS = ("NUM", "LEN", "FRAC")
MEASURES = (*LENGTHS, "DEG", "TEMP_F", "CFM", "INWG", "LB", "FT2", "SIZE", "RATIO")
_LABELS = {"WIDE": 0, "HIGH": 1}
_WIDEST_SQUARE = 60  # inches, of a duct whose one size stands right behind its kind: above it the number is the name
_LUMBER = {(2, 4), (2, 6), (1, 4), (1, 2)}  # a "two by four" is lumber, no duct is that small


@dataclass(frozen=True, slots=True)
class Size:
    """Two inside dimensions, width first where "wide" or "high" said so, else in spoken order; perhaps a length."""

    pair: tuple[Fraction, Fraction]
    unit: str | None
    long: Measure | None
    long_start: int | None = None


def sized(items, text: str):
    """Two dimensions put together to one size item, and a slope to a ratio; lumber is only counted."""
    done: list[Item] = []
    at = 0
    while at < len(items):
        size = _size_at(items, at, text) if items[at].concept in LENGTHS else _named_sides(items, at) if items[at].concept in _LABELS else None
        if size is None:
            done.append(items[at])
            at += 1
        else:
            done.append(size[0])
            at = size[1]
    return tuple(done)


_LETTERED = {"w": 0, "h": 1, "d": 1}


def _label(items, at: int, text: str) -> int | None:
    """Which side a measure is of, by the word or the letter behind it: 20" W x 10" H."""
    if concept_at(items, at) == "LETTER" and concept_at(items, at - 1) in LENGTHS and (concept_at(items, at + 1) == "BY" or concept_at(items, at - 2) == "BY"):
        return _LETTERED.get(text[items[at].start : items[at].end].lower())
    return _LABELS.get(concept_at(items, at))


def _named_sides(items, at: int) -> tuple[Item, int] | None:
    """ "Width twelve, height ten": what each is stands before it, as a form read aloud has it."""
    end = at + 3 if concept_at(items, at + 2) in ("COMMA", "AND", "STOP") else at + 2
    said = [concept_at(items, k) for k in (at, at + 1, end, end + 1)]
    if concept_at(items, at - 1) in LENGTHS or {said[0], said[2]} != set(_LABELS) or said[1] not in LENGTHS or said[3] not in LENGTHS or concept_at(items, end + 2) in _LABELS:
        return None
    one, two = _in_one_unit(items[at + 1].value, items[end + 1].value)
    pair = (one, two) if said[0] == "WIDE" else (two, one)
    return _item(items, at, end + 2, Size(pair, items[at + 1].value.unit or items[end + 1].value.unit, None)), end + 2


def _size_at(items, at: int, text: str) -> tuple[Item, int] | None:
    if text[items[at].start : items[at].start + 10].lower() == "one by one" and concept_at(items, at + 1) == "BY":
        return None  # "he goes through them one by one"
    ratio = _ratio_at(items, at, text)
    if ratio is not None:
        return ratio
    if concept_at(items, at + 1) == "SQUARE" and items[at].value.value >= 4 and concept_at(items, at + 2) != "THROAT" and not (items[at].value.value > _WIDEST_SQUARE and concept_at(items, at - 1).startswith("K_")):  # "codo 122 cuadrado": its number
        side = items[at].value
        return _item(items, at, at + 2, Size((side.value, side.value), side.unit, None)), at + 2
    first, end = items[at], at + 1
    label = _label(items, end, text)
    end = end + 1 if label is not None else end
    if concept_at(items, end) == "BY":
        end += 1
        end = next((end + k for k in range(4) if concept_at(items, end + k) not in ("DET", "FILLER", "HEDGE", "COMMA")), end)
        if concept_at(items, end + 1) == "SIDE_WORD":
            return None  # "cada dos pulgadas por los cuatro lados"
    elif label is not None:
        while concept_at(items, end) in ("COMMA", "AND"):
            end += 1
    else:
        return None
    if concept_at(items, end) not in LENGTHS:
        return None
    second, end = items[end], end + 1
    second_label = _label(items, end, text)
    if second_label is not None:
        end += 1
    elif label is not None and items[end - 2].concept != "BY":
        return None
    one, two = _in_one_unit(first.value, second.value)
    if (one, two) in _LUMBER:
        return replace(_item(items, at, end, None), concept="COUNT"), end
    pair = (two, one) if label == 1 or second_label == 0 else (one, two)
    long, long_start = None, None
    if concept_at(items, end) == "BY" and concept_at(items, end + 1) in LENGTHS and concept_at(items, end + 2) != "BY":
        long, long_start, end = items[end + 1].value, items[end + 1].start, end + 2
        if concept_at(items, end) == "LONG":
            end += 1
    return _item(items, at, end, Size(pair, second.value.unit or first.value.unit, long, long_start)), end


_METRIC = {"mm": 75, "cm": 13}  # a bare number from here on is of this unit, where the note speaks it


def one_unit(items):
    """ "600 by 250 to 450 by 250 millimetres, 900 long": a unit said once holds for the bare sizes and lengths of the note."""
    of_length = [item for place, item in enumerate(items) if item.concept == "SIZE" or item.concept == "LEN" and concept_at(items, place - 1) not in ("EVERY", "GAP") and concept_at(items, place + 1) not in ("APART", "GAP")]
    spoken = {item.value.unit for item in of_length if getattr(item.value, "unit", None) in _METRIC}  # staples every six centimetres say nothing of the duct
    if len(spoken) != 1:
        spoken = {item.value.unit for item in of_length if item.concept == "SIZE" and item.value.unit in _METRIC}
        return _sizes_in(items, *spoken) if len(spoken) == 1 else items
    unit = next(iter(spoken))
    factor, least = measure.UNITS[unit], _METRIC[unit]
    if unit == "mm" and any(item.concept == "SIZE" and item.value.unit is None and max(item.value.pair) < least for item in items):
        return items  # inches and millimetres side by side
    done: list[Item] = []
    for place, item in enumerate(items):
        if item.concept == "SIZE" and item.value.unit is None and min(item.value.pair) >= least:
            item = replace(item, value=replace(item.value, pair=tuple(side * factor for side in item.value.pair), unit=unit))
        elif item.concept == "NUM" and unit == "mm" and concept_at(items, place - 1) == "EVERY" and 25 <= item.value.value < least:
            item = replace(item, concept="LEN", value=replace(item.value, sort="LEN", value=item.value.value * factor, unit=unit))  # "every fifty"
        elif item.concept == "NUM" and unit == "mm" and 25 <= item.value.value < least and concept_at(items, place - 1) in ("MOVE_IN", "MOVE_OUT", "MOVE_UP", "MOVE_DOWN", "IN", "OUT") and concept_at(items, place + 1) in ("COMMA", "BACK", "OVER", "IN", "ON", "SIDE", "STOP", ""):
            item = replace(item, concept="LEN", value=replace(item.value, sort="LEN", value=item.value.value * factor, unit=unit))  # "comes in 50, back 300"
        elif item.concept == "NUM" and item.value.value >= least and _measures_length(items, place):
            item = replace(item, concept="LEN", value=replace(item.value, sort="LEN", value=item.value.value * factor, unit=unit))
        done.append(item)
    return tuple(done)


def _sizes_in(items, unit: str):
    """ "600 por 300 a 500 por 300 milímetros, entra diez centímetros": one unit for the openings, another for the rest."""
    factor, least = measure.UNITS[unit], _METRIC[unit]
    return tuple(
        replace(item, value=replace(item.value, pair=tuple(side * factor for side in item.value.pair), unit=unit))
        if item.concept == "SIZE" and item.value.unit is None and min(item.value.pair) >= least else item
        for item in items
    )  # fmt: skip


def _measures_length(items, place: int) -> bool:
    before = [concept_at(items, place - k) for k in (1, 2)]
    if concept_at(items, place + 1) in ("NUM", "MARKED", "NUMBER"):
        return False  # "in ninety 33": an elbow and its number
    if before[0] in ("ON", "IN", "OVER") and before[1] in LENGTHS and concept_at(items, place - 3).startswith("MOVE"):
        return True  # "el lado izquierdo cierra 100 en 650"
    if before[0] in ("ON", "OVER") and before[1] == "SIDE" and concept_at(items, place - 3) in LENGTHS and concept_at(items, place - 4).startswith("MOVE"):
        return True  # "entra cien por la izquierda en seiscientos"
    return concept_at(items, place + 1) in ("LONG", "BACK", "WIDE") or any(c in ("BACK", "LENGTH", "CUT_TO", "LONG", "THROAT", "OFFSETS") for c in before) or before[0] in ("MOVE_IN", "MOVE_DOWN", "MOVE_UP", "MOVE_OUT", "IN", "OVER", "EVERY", "TAKES", "SCREWS") or concept_at(items, place + 1) == "APART"


def of_the_building(items, text: str):
    """ "a ceiling tile 24 by 24", "the 36 by 80 door": measures of what is no duct."""
    done = list(items)
    hatched = any(item.concept == "K_ACCESS_DOOR" for item in items)
    hung = any(item.concept == "K_HANGER" for item in items)
    for place, item in enumerate(items):
        if hung and item.concept == "SIZE" and max(item.value.pair) < _LEAST_DUCT:
            done[place] = replace(item, concept="COUNT")  # "channel, one and a half by three quarters"
        if hatched and concept_at(items, place - 1) == "SIZE" and max(items[place - 1].value.pair) <= _MOST_DOOR:
            continue  # "access door, twelve by twelve hatch"
        if item.concept != "BUILDING" and not (concept_at(items, place - 1) == "SIZE" and text[item.start : item.end].lower() in _STOCK):
            continue
        at = place + 1
        while concept_at(items, at) in ("BE", "DET", "HEDGE", "OF", "ON") and at - place < 4:
            at += 1
        if concept_at(items, at) in ("SIZE", "LEN") and concept_at(items, at + 1) not in _OWN_NOUNS:
            done[at] = replace(done[at], concept="COUNT")
        before = place - 1 if concept_at(items, place - 1) not in ("COUNTED", "LONG", "WIDE", "HIGH") else place - 2
        if concept_at(items, before) in ("SIZE", "LEN"):
            done[before] = replace(done[before], concept="COUNT")
    return tuple(done)


_LEAST_DUCT = 3  # inches; less is the channel that a duct hangs in
_MOST_DOOR = 36  # inches; no hatch in a duct is wider
_STOCK = ("scrap", "scraps", "sheet", "sheets", "blank", "retal", "retazo", "lámina", "hoja")  # "a six by six scrap"
_OWN_NOUNS = ("GAP", "TAPE", "STAPLES", "BOARD", "BACK", "THROAT", "OFFSETS", "K_COLLAR", "ROUND")


def _ratio_at(items, at: int, text: str):
    """ "2:12": a slope where the second number is 12 or a slope word stands near; never a time of day."""
    if concept_at(items, at + 1) == "COMMA" and text[items[at + 1].start : items[at + 1].end] == ":" and concept_at(items, at + 2) == "NUM":
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
