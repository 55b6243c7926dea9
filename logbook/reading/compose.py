"""Items that belong together: sizes ("18 by 12", "20 wide, 14 high"), and a measure taken back right where it stands
("twenty by sixteen, no, make that twenty by fourteen")."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from types import MappingProxyType

from logbook import measure
from logbook.reading.items import Item
from logbook.reading.mark_shapes import marked
from logbook.reading.measures import Measure
from logbook.reading.small_words import meant_by_neighbours

LENGTHS = ("NUM", "LEN", "FRAC")
MEASURES = (*LENGTHS, "DEG", "TEMP_F", "CFM", "INWG", "LB", "FT2", "SIZE", "RATIO")
_LABELS = {"WIDE": 0, "HIGH": 1}
_LUMBER = {(2, 4), (2, 6), (1, 4), (1, 2)}  # a "two by four" is lumber, no duct is that small
_BETWEEN_FIX = ("LONG", "APART", "COMMA", "STOP", "FILLER", "AND", "HEDGE", "DET", "BE", "NO", "FIX", "THINK", "NOT", "OUTLET_SIZE", "OF")


@dataclass(frozen=True, slots=True)
class Size:
    """Two inside dimensions, width first where "wide" or "high" said so, else in spoken order; perhaps a length."""

    pair: tuple[Fraction, Fraction]
    unit: str | None
    long: Measure | None
    long_start: int | None = None


def compose(items: tuple[Item, ...], text: str, letters=MappingProxyType({})) -> tuple[Item, ...]:
    """Sizes first, then the corrections between two measures of one sort."""
    return _corrected(_of_the_building(_one_unit(_sized(_counted(_named_kinds(_small_words(_split_decimals(meant_by_neighbours(marked(items, text, letters), text), text), text), text)), text)), text), text)


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


_SOUNDS = {"for": (4, "four"), "fore": (4, "four"), "too": (2, "two"), "to": (2, "two"), "free": (3, "three"), "tree": (3, "three"), "ate": (8, "eight"),
           "won": (1, "one"), "sex": (6, "six"), "tu": (2, "two")}  # fmt: skip
_CUT_NOUNS = {"recta": "straight", "recto": "straight", "tramo": "straight", "sección": "straight", "ducto": "straight", "pieza": None}
_IN_TWOS = {"ones": 1, "twos": 2, "threes": 3, "fours": 4, "sixes": 6}  # "stapled on twos"
_SINGLE_UNIT = {"foot": Fraction(12), "inch": Fraction(1), "pie": Fraction(12), "pulgada": Fraction(1)}
_MOVED = ("MOVE_DOWN", "MOVE_UP", "MOVE_IN", "MOVE_OUT", "MOVE", "DOWN", "UP", "IN")


def _small_words(items, text: str):
    """Numbers that stand in small words: "every for", "drops for, back 18", "comes into", "every foot", "ninety three piece", "one nineteen"."""
    done: list[Item] = []
    for place, item in enumerate(items):
        said = text[item.start : item.end].lower()
        before, ahead = _concept(items, place - 1), _concept(items, place + 1)
        ends = ahead in ("COMMA", "STOP", "AND", "BACK", "TAPED", "APART", "", "BOTH") or (ahead == "WORD" and text[items[place + 1].start : items[place + 1].end].lower() in ("inches", "inch", "pulgadas"))
        if said in _SOUNDS and ends and (before == "EVERY" or (before in _MOVED and _moves_a_side(items, place))):
            value, meant = _SOUNDS[said]
            item = replace(item, concept="NUM", value=_plain(value), read_as=meant)
        elif said == "into" and ahead in ("COMMA", "STOP", "BACK", "") and before in ("MOVE", "MOVE_IN") and _moves_a_side(items, place):
            done.append(replace(item, concept="IN", end=item.start + 2))
            item = replace(item, concept="NUM", value=_plain(2), start=item.start + 2, read_as="two")
        elif before == "EVERY" and item.concept in ("WORD", "ROUND") and said in _SINGLE_UNIT:
            item = replace(item, concept="LEN", value=Measure("LEN", _SINGLE_UNIT[said], "ft" if said in ("foot", "pie") else "in", 0, False, Fraction(1)))
        elif item.concept == "NUM" and ahead in ("FITTING", "PIECE_COUNT") and item.value.value in (92, 93, 94, 95, 96, 97) and " " in said:
            first, _, last = said.rpartition(" ")
            done.append(replace(item, end=item.start + len(first), value=_plain(90)))
            item = replace(item, start=item.end - len(last), value=_plain(int(item.value.value) % 10))
        elif item.concept == "LETTER" and said == "s" and before == "NUM" and done and items[place - 1].end == item.start:
            continue  # "stapled on 3s"
        elif item.concept == "WORD" and said in _IN_TWOS and before == "ON":
            item = replace(item, concept="NUM", value=_plain(_IN_TWOS[said]))
        elif item.concept == "WORD" and said == "know" and ahead in ("VANES", "STAPLES", "TAPE", "TABS", "FLAP", "TIE_RODS") and before not in ("I", "NOT", "TO", "OTHER", "WILL", "QUESTION", "WORD"):
            item = replace(item, concept="NO", value=None, read_as="no")  # nothing else can stand there; what it denies stays in doubt
        elif item.concept == "BUTT" and said == "but" and any(_concept(items, k) in ("ALL", "TAPED", "STAPLED", "RUBBED") for k in range(place - 4, place)):
            item = replace(item, concept="EXCEPT", read_as=None)  # "everything's taped but the bottom"
        elif item.concept == "FIX" and said == "not that" and ahead in ("IT", "THIS", "DET", "I") and _concept(items, place + 2) in ("NOT", "NOT_DONE", "NO"):
            done.append(replace(item, concept="NOT", end=item.start + 3))  # "it's not that it isn't taped"
            item = replace(item, concept="THIS", start=item.end - 4)
        elif item.concept == "THIS" and before == "IF" and said == "that" and ahead in ("COMMA", "STOP", "") and done:
            item = replace(done.pop(), concept="HEDGE", end=item.end, last=item.last)
        elif item.concept == "CUT_LENGTH" and ahead in ("NUM", "MARKED") and said.split()[-1] in _CUT_NOUNS:  # "corté la recta nueve a treinta": its number, no length
            noun = item.end - len(said.split()[-1])
            done.append(replace(item, end=noun - 1))
            kind = _CUT_NOUNS[said.split()[-1]]
            item = replace(item, start=noun, concept="K_STRAIGHT" if kind else "FITTING", value=kind)
        elif item.concept == "OTHER" and said.replace("’", "'") == "she's" and ahead in ("STAPLED", "TAPED", "RUBBED", "HUNG", "TIGHT") and before in ("COMMA", "STOP", "NUM", "MARKED", "SIZE"):
            item = replace(item, concept="BE")  # the piece: "straight nine, she's stapled"
        elif item.concept == "FILLER" and ahead == "NEED" and said.replace("’", "'").endswith("n't"):  # "so it doesn't need vanes"
            item = replace(item, concept="NOT")
        elif item.concept == "NUM" and item.value.value == 0 and ahead in ("VANES", "STAPLES", "TAPE", "TABS", "GAP", "DAMAGE", "FLAP"):
            item = replace(item, concept="NO", value=None)
        elif item.concept in LENGTHS and done and _ends_a_range(items, place, text):
            while done[-1].concept in ("TO", "OR", "COMMA", "THRU"):
                done.pop()
            low = done.pop()
            done.append(replace(low, concept="HEDGE", value=None))  # "every two to three": the wider one, and in doubt
            if low.value.value > item.value.value:
                item = replace(item, value=replace(item.value, value=low.value.value))
        elif _in_a_pair(items, place, text) and done:
            first = done.pop()
            item = replace(item, start=first.start, first=first.first, value=_plain(int(first.value.value) * 100 + int(item.value.value)))
        done.append(item)
    return tuple(done)


def _ends_a_range(items, place: int, text: str) -> bool:
    """ "every two to three", "2-3 inches apart" """
    first = place - 1
    while first >= 0 and items[first].concept in ("TO", "OR", "THRU") and place - first <= 1:
        first -= 1
    if first < 0 or items[first].concept not in LENGTHS:
        return False
    between = text[items[first].end : items[place].start]
    joined = first == place - 2 or between.strip() in ("-", "–")
    return joined and (_concept(items, first - 1) == "EVERY" or _concept(items, place + 1) == "APART")


def _moves_a_side(items, place: int) -> bool:
    return any(_concept(items, k) == "SIDE" for k in range(place - 5, place))


def _in_a_pair(items, place: int, text: str) -> bool:
    """ "elbow one nineteen": a number over a hundred said in two, right behind the kind."""
    item, before = items[place], items[place - 1] if place else None
    if item.concept != "NUM" or before is None or before.concept != "NUM" or item.value.digits or before.value.digits:
        return False
    named, ahead = _concept(items, place - 2), _concept(items, place + 1)
    fits = 1 <= before.value.value <= 9 and 10 <= item.value.value <= 99 and " " not in text[before.start : before.end]
    if not fits or text[before.end : item.start] != " ":
        return False
    kind = named.startswith("K_") or named in ("FITTING", "NUMBER") or (named == "COUNTED" and text[items[place - 2].start : items[place - 2].end].lower() in _SEVERAL)
    if kind and not (named in ("K_ELBOW", "K_WYE") and item.value.value in (90, 45, 30, 60)):
        return ahead in _ENDS_A_MARK or ahead.startswith("K_") or (ahead == "NUM" and _concept(items, place + 2) == "BY")
    if named in ("AND", "COMMA", "THROUGH", "THRU", "TO") and ahead in _ENDS_A_MARK and _concept(items, place - 3) == _concept(items, place - 4) == "NUM":
        return True  # "straights one twelve and one thirteen"
    opens = named in ("", "STOP", "QUERY") or (named in _BEFORE_A_MARK and place - 2 >= 0)
    return opens and (ahead in ("BE", "AND", "ON", "HAVE", "NOT", "WITH", "YET", "") or (ahead in ("COMMA", "STOP") and (named in _BEFORE_A_MARK or _concept(items, place + 2).startswith("K_"))))


_ENDS_A_MARK = ("THROUGH", "THRU", "COMMA", "STOP", "ON", "RUN", "BE", "", "AND", "STAPLED", "TAPED", "RUBBED", "HUNG", "WITH", "HAVE", "NOT", "NO", "TIED", "FILLER", "PENDING", "NOT_DONE", "SERVICE", "WIPED", "VANES")
_BEFORE_A_MARK = ("HUNG", "HANG", "STAPLED", "TAPED", "RUBBED", "SEALED", "REDID", "REPAIRED", "TAPE_IT", "FILLER", "BE", "ON", "TIED", "WITH")


_SEVERAL = {
    "straights": "straight", "elbows": "elbow", "transitions": "transition", "tees": "tee", "caps": "end_cap", "collars": "collar", "codos": "elbow",
    "tapas": "end_cap", "reducciones": "transition", "tramos": "straight", "rectos": "straight", "rectas": "straight", "transiciones": "transition", "collarines": "collar", "derivaciones": "branch", "tes": "tee", "rejillas": "register", "piezas": "fitting", "offsets": "offset", "branches": "branch", "wyes": "wye", "fittings": "fitting",
}  # fmt: skip


def _named_kinds(items, text: str):
    """ "twelve and thirteen, both straights": a plural that counts nothing names the kind."""
    done = list(items)
    for place, item in enumerate(items):
        if item.concept == "K_TEE" and text[item.start : item.end].lower() == "te" and _concept(items, place + 1) in ("WORD", "SEE", "SHOWS", "LEAVES", "MOVE", "MOVE_IN", "MOVE_OUT"):
            done[place] = replace(item, concept="WORD", value=None)  # "te ves bien": the pronoun
        kind = _SEVERAL.get(text[item.start : item.end].lower()) if item.concept == "COUNTED" else None
        if kind is None:
            continue
        of_a_size = _concept(items, place - 2) == "BY" or (_concept(items, place - 1) in ("STOP", "") and _concept(items, place + 1) == "COMMA")  # "both ten by ten straights", "Straights, ten by ten"
        in_a_row = _concept(items, place - 1) == _concept(items, place - 2) == "NUM" and items[place - 1].value.value == items[place - 2].value.value + 1  # "86 87 88 straights"
        turned = _concept(items, place - 1) == "NUM" and items[place - 1].value.value in (90, 45) and kind == "elbow"
        step = next((k for k in range(place + 1, place + 4) if _concept(items, k) not in ("FROM", "OF", "DET", "OFF")), place + 1)
        numbered = _concept(items, step) in ("NUM", "MARKED", "NUMBER") and _concept(items, step + 1) not in ("BY", "LEN") and _concept(items, place - 1) != "NUM"
        numbered = numbered or (_concept(items, place + 1) == "COMMA" and _concept(items, place + 2) in ("NUM", "MARKED") and _concept(items, place + 3) in ("AND", "COMMA") and _concept(items, place + 4) in ("NUM", "MARKED"))
        listed = _concept(items, place - 1) in ("COMMA", "BE") and any(_concept(items, k) in ("NUM", "MARKED") for k in range(place - 4, place - 1))
        if (numbered or listed or of_a_size or in_a_row or turned or _concept(items, place - 1) in ("BOTH", "ALL", "THIS") or _of_marks(items, place, text)):
            done[place] = replace(item, concept="K_" + kind.upper(), value=kind) if kind != "fitting" else replace(item, concept="FITTING", value=None)
    return tuple(done)


def _of_marks(items, place: int, text: str) -> bool:
    """ "Las dos son rectas", "…, puras rectas", "tres rectas, la 260, la 261 y la 262", "dos codos gemelos, el 3 y el 4": the kind of pieces that are named."""
    before = [_concept(items, place - k) for k in (1, 2)]
    if before == ["BE", "BOTH"] or text[items[place - 1].start : items[place - 1].end].lower() in ("puras", "puros") and place > 0:
        return True
    ahead = [_concept(items, place + k) for k in (1, 2, 3, 4)]
    ahead = ahead[1:] if ahead[0] in ("WORD", "FILLER") else ahead
    return before[0] in ("NUM", "COUNT") and ahead[:3] in (["COMMA", "DET", "NUM"], ["COMMA", "DET", "MARKED"])


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


_METRIC = {"mm": 75, "cm": 13}  # a bare number from here on is of this unit, where the note speaks it


def _one_unit(items):
    """ "600 by 250 to 450 by 250 millimetres, 900 long": a unit said once holds for the bare sizes and lengths of the note."""
    spoken = {item.value.unit for item in items if item.concept in ("SIZE", "LEN") and getattr(item.value, "unit", None) in _METRIC}
    if len(spoken) != 1:
        return items
    unit = next(iter(spoken))
    factor, least = measure.UNITS[unit], _METRIC[unit]
    if unit == "mm" and any(item.concept == "SIZE" and item.value.unit is None and max(item.value.pair) < least for item in items):
        return items  # inches and millimetres side by side
    done: list[Item] = []
    for place, item in enumerate(items):
        if item.concept == "SIZE" and item.value.unit is None and min(item.value.pair) >= least:
            item = replace(item, value=replace(item.value, pair=tuple(side * factor for side in item.value.pair), unit=unit))
        elif item.concept == "NUM" and item.value.value >= least and _measures_length(items, place):
            item = replace(item, concept="LEN", value=replace(item.value, sort="LEN", value=item.value.value * factor, unit=unit))
        done.append(item)
    return tuple(done)


def _measures_length(items, place: int) -> bool:
    before = [_concept(items, place - k) for k in (1, 2)]
    return _concept(items, place + 1) in ("LONG", "BACK") or any(c in ("BACK", "LENGTH", "CUT_TO", "LONG", "THROAT", "OFFSETS") for c in before) or before[0] in ("MOVE_IN", "MOVE_DOWN", "MOVE_UP", "MOVE_OUT", "IN")


def _of_the_building(items, text: str):
    """ "a ceiling tile 24 by 24", "the 36 by 80 door": measures of what is no duct."""
    done = list(items)
    for place, item in enumerate(items):
        if item.concept != "BUILDING" and not (_concept(items, place - 1) == "SIZE" and text[item.start : item.end].lower() in _STOCK):
            continue
        at = place + 1
        while _concept(items, at) in ("BE", "DET", "HEDGE", "OF", "ON") and at - place < 4:
            at += 1
        if _concept(items, at) in ("SIZE", "LEN") and _concept(items, at + 1) not in _OWN_NOUNS:
            done[at] = replace(done[at], concept="COUNT")
        before = place - 1 if _concept(items, place - 1) not in ("COUNTED", "LONG", "WIDE", "HIGH") else place - 2
        if _concept(items, before) in ("SIZE", "LEN"):
            done[before] = replace(done[before], concept="COUNT")
    return tuple(done)


_STOCK = ("scrap", "scraps", "sheet", "sheets", "blank", "retal", "retazo", "lámina", "hoja")  # "a six by six scrap"
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


def _corrected(items, text: str = ""):
    """A measure, a word that takes it back, a measure of the same sort: the second counts and remembers the first."""
    done: list[Item] = []
    for place, item in enumerate(items):
        if item.concept in MEASURES and done:
            contrast = len(done) > 2 and done[-1].concept == "OF" and done[-2].concept == "NOT"  # "de catorce por diez, no de doce"
            if contrast or _not_the(item, done, text):
                done.pop()
            spanish = not contrast and done[-1].concept == "NOT" and len(done) > 1 and text[done[-1].start : done[-1].end].lower() == "no" and done[-2].concept == "SIZE"  # "doce por diez no catorce por diez"
            before = None if done[-1].concept == "NOT" and not spanish else _taken_back_by(item, done)
            if before is None and done[-1].concept != "NOT":
                before = _said_again(items, place, done)
            if before is not None:
                first = done[before]
                long = [kept for kept in done[before + 1 :] if kept.concept in ("LONG", "APART")]
                del done[before:]
                done.append(_replacing(item, first))
                done.extend(long[:1] if _concept(items, place + 1) not in ("LONG", "APART") else ())
                continue
            elif _not_that(items, place, done):
                first = next(i for i in range(len(done) - 1, -1, -1) if done[i].concept == item.concept or {done[i].concept, item.concept} <= set(LENGTHS))
                del done[first + 1 :]
                done[first] = replace(done[first], took_back=(*done[first].took_back, item))
                continue
        elif item.concept == "LETTER" and done and (first := _mark_before(items, place, done, text)) is not None:
            old, start = done[first], done[-1].start if done[-1].concept == "DET" else item.start
            del done[first:]
            value = f"181A-{text[item.start : item.end].upper()}"
            item = replace(item, concept="MARK181", value=value, start=start, read_as=value, took_back=(*old.took_back, replace(old, took_back=())))
        elif done and any(item.concept in pair for pair in _OPPOSITES):
            before = _opposite_before(item, done)
            if before is not None:
                first = done[before]
                del done[before:]
                item = replace(item, took_back=(*first.took_back, replace(first, took_back=())))
        elif item.concept == "SIDE" and len(done) > 2 and (before := _other_side_before(item, done)) is not None:
            first = done[before]
            del done[before:]
            item = replace(item, took_back=(*first.took_back, replace(first, took_back=())))
        done.append(item)
    return tuple(done)


def _other_side_before(item: Item, done: list[Item]) -> int | None:
    """ "Entra por la izquierda, no, por la derecha, cuatro": the way a side moves stands before the side that was wrong."""
    at, fixed = len(done) - 1, False
    while at >= 0 and len(done) - at <= 6 and (done[at].concept in _BETWEEN_FIX or done[at].concept in ("BY", "TO", "ON")):
        fixed = fixed or done[at].concept == "FIX" or (done[at].concept in ("NO", "NOT") and _says_no(done[at]) and at > 0 and done[at - 1].concept in ("COMMA", "STOP"))
        at -= 1
    moves = at > 0 and fixed and done[at].concept == "SIDE" and done[at - 1].concept in _MOVED
    return at if moves and len(done[at].value) == len(item.value) == 1 and done[at].value != item.value else None


def _mark_before(items, place: int, done: list[Item], text: str) -> int | None:
    """ "181A-H, no wait, read it again, A-P": the end of the print alone, behind a word that takes the whole print back."""
    if text[items[place].start : items[place].end].upper() not in ("P", "H", "M") or _concept(items, place + 1) not in ("COMMA", "STOP", "QUERY", ""):
        return None
    at, fixed = len(done) - 1, False
    while at >= 0 and len(done) - at <= _FURTHEST and (done[at].concept in _LOOSE or done[at].concept in _BETWEEN_FIX or done[at].concept == "DASH"):
        fixed = fixed or done[at].concept == "FIX" or (done[at].concept in ("NO", "NOT") and _says_no(done[at]))
        at -= 1
    return at if at >= 0 and fixed and done[at].concept == "MARK181" else None


_OPPOSITES = (("FEMALE", "MALE"), ("INSIDE", "OUTSIDE"))


def _opposite_before(item: Item, done: list[Item]) -> int | None:
    """ "by the male, no, the female": the other of a pair, with a word that takes it back between."""
    at, fixed = len(done) - 1, False
    while at >= 0 and len(done) - at <= 6 and (done[at].concept in _BETWEEN_FIX or done[at].concept in ("BY", "TO", "ON", "END", "IT", "THIS")):
        fixed = fixed or done[at].concept == "FIX" or (done[at].concept == "NO" and _says_no(done[at]) and at > 0 and done[at - 1].concept in ("COMMA", "STOP"))
        at -= 1
    mates = next(pair for pair in _OPPOSITES if item.concept in pair)
    return at if at >= 0 and fixed and done[at].concept in mates else None


def _replacing(item: Item, first: Item) -> Item:
    if first.concept == "SIZE" and item.concept in LENGTHS:  # "eighteen by twelve, no, fourteen"
        pair = (first.value.pair[0], item.value.value)
        item = Item("SIZE", Size(pair, first.value.unit, None), first.start, item.end, first.first, item.last, item.read_as)
    return replace(item, took_back=(*first.took_back, replace(first, took_back=())))


_LOOSE = ("WORD", "GENERIC", "SIDE_WORD", "ON", "OF", "I", "IT", "THIS", "LAID", "QUESTION", "SEE", "HAVE", "HAVING", "SAYS", "REDID", "TO", "FIX", "WILL", "ANOTHER", "TRADE_NOISE", "BE", "DET", "COMMA", "FILLER")
_REPEATED = ("BACK", "EVERY", "ON", "LENGTH", "SIZE_WORD", "OUTLET", "INLET", "BRANCH_WORD", "OFFSETS", "IN", "BY")
_ENDS_SO = ("COMMA", "STOP", "QUERY", "AND", "", "LONG", "APART", "BACK", "STAPLED", "TAPED", "RUBBED")
_FURTHEST = 14  # items


def _said_again(items, place: int, done: list[Item]) -> int | None:
    """ "back twenty-four, uh, no, I measured that again, back sixteen", "a forty-five, wait what am I saying, it's a ninety": words of no trade between."""
    if _concept(items, place + 1) not in _ENDS_SO or _just_one(items[place]):
        return None
    item, at = items[place], len(done) - 1
    label = done[at].concept if done and done[at].concept in _REPEATED else None
    at -= label is not None
    fixed = loose = False
    while at >= 0 and len(done) - at <= _FURTHEST:
        concept = done[at].concept
        if _just_one(done[at]) and not fixed:
            at -= 1
            continue
        if concept in MEASURES or (concept not in _BETWEEN_FIX and (fixed or concept not in _LOOSE)):
            break
        bare = concept == "NO" and _says_no(done[at]) and at > 0 and done[at - 1].concept in ("COMMA", "STOP", "FILLER") and done[min(at + 1, len(done) - 1)].concept in ("COMMA", "FIX")
        fixed = fixed or concept == "FIX" or bare
        loose = loose or concept in ("WORD", "LAID", "QUESTION", "REDID")
        at -= 1
    if at < 1 or not fixed or not loose and label is None:
        return None
    if label is not None and done[at - 1].concept != label or done[at].concept == "NUM" and done[at - 1].concept.startswith("K_"):
        return None
    same = done[at].concept == item.concept or {done[at].concept, item.concept} <= set(LENGTHS)
    return at if same else None


def _just_one(item: Item) -> bool:
    """ "The wrong one": no number."""
    return item.concept == "NUM" and item.value.value == 1 and not item.value.digits


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


def _not_the(item: Item, done: list[Item], text: str) -> bool:
    """ "La ocho, no la nueve": behind "no la" stands the other one; "la ocho, no, la nueve" sets it right."""
    if item.concept != "NUM" or len(done) < 4 or [one.concept for one in done[-2:]] != ["NOT", "DET"] or done[-3].concept != "COMMA" or done[-4].concept != "NUM":
        return False
    return text[done[-2].start : done[-1].end].lower() in ("no la", "no el")


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
