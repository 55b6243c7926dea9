"""Measures and headings as a shop says them short: "two seventy degrees", "eighteen twelve", "three inches to the foot", "38, door"."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from logbook import measure
from logbook.reading.words.items import Item, concept_at
from logbook.reading.words.measures import Measure
from logbook.reading.composed.measures_meant import SIDE_LETTERS
from logbook.reading.words.phrasing import table_of, words_of

_LENGTHS = ("NUM", "LEN", "FRAC")
_LEAST, _MOST = 4, 96  # inches of a side that is said without "by"
_TURNS = (90, 45)
_PARTS = (2, 4, 8, 16, 32, 64)  # of an inch
_BEFORE_A_PAIR = ("COMMA", "STOP", "TO", "INLET", "OUTLET", "BRANCH_WORD", "IN", "FROM", "OFF", "BE", "K_TRANSITION", "K_STRAIGHT")
_BEHIND_A_PAIR = ("COMMA", "STOP", "TO", "", "INLET", "OUTLET", "BRANCH_WORD", "THROUGH", "STAPLED", "TAPED", "LEG")
_WAYS = ("IN", "OUT", "UP", "DOWN", "SIDE", "MOVE_IN", "MOVE_OUT", "MOVE_UP", "MOVE_DOWN", "LETTER")
_FASTENS = ("STAPLED", "STAPLES", "STAPLE", "TABS", "SCREWS", "K_HANGER", "VANES", "TAPED", "EVERY", "COUNTED")


_LEFT_AS_THEY_ARE = frozenset(("STOP", "DET", "AND", "IT", "BE", "OF", "BY", "TO", "IN", "ON", "RUN", "SIDE", "BACK", "EVERY", "STAPLED", "TAPED", "RUBBED", "FILLER", "FITTING"))  # the commonest, so that they cost nothing


def said_short(items, text: str):
    """The items, where what is said short stands as what it means."""
    done: list[Item] = []
    skip = 0
    shaped = any(item.concept.startswith("K_") or item.concept == "NUM" and item.value.value in _TURNS for item in items)
    for place, item in enumerate(items):
        if skip:
            skip -= 1
            continue
        concept = item.concept
        if concept in _LEFT_AS_THEY_ARE:
            done.append(item)
            continue
        if concept in ("MOVE_IN", "IN_PLACE") and concept_at(items, place - 1) in ("VANES", "GROOVE"):
            item = _in_there(items, place, text, done)
        elif concept == "NUM" and concept_at(items, place - 1) == "STATIC" and text[item.start : item.end].lower() == "one" and concept_at(items, place + 1) in ("COMMA", "STOP"):
            item = replace(item, concept="GENERIC", value=None)  # "that's the high pressure one, an inch and a half"
        elif concept == "THROAT" and concept_at(items, place - 1) == "WORD" and text[items[place - 1].start : items[place - 1].end].lower() in words_of("small.middles"):
            done.append(replace(item, concept="WORD", value=None))  # "centerline radius eighteen" is no throat
            at = place + 1
            while at < len(items) and at < place + 4 and items[at].concept in ("BE", "OF", "DET", "HEDGE"):
                done.append(items[at])
                at += 1
            if at < len(items) and items[at].concept in _LENGTHS:
                done.append(replace(items[at], concept="COUNT"))
                at += 1
            elif len(done) > 2 and done[-3].concept in _LENGTHS:
                done[-3] = replace(done[-3], concept="COUNT")
            skip = at - place - 1
            continue
        elif concept in ("DEG", "TEMP_F"):
            item = _hundreds_of_degrees(items, place, text, done)
        elif concept in ("WORD", "SIDE_WORD", "TAKES"):
            item = _word(items, place, text)
        elif concept == "COMMA" and concept_at(items, place + 1) == concept_at(items, place - 1) == "NUM" and concept_at(items, place - 2) in _WAYS and text[item.start : item.end] == "/":
            item = replace(item, concept="OVER", value=None)  # "R in 4 / 24"
        elif concept == "LETTER" and _moves_by_letter(items, place, text):
            item = replace(item, concept="SIDE", value=(SIDE_LETTERS[text[item.start : item.end].lower()],))
        elif concept == "NUM" and concept_at(items, place + 1) in ("COMMA", "STOP", "") and item.value.value <= 90 and _of_the_turn(items, place, text):
            item = replace(item, concept="DEG", value=replace(item.value, sort="DEG", unit="°"))  # "turn is sixty"
        elif concept == "NUM" and (shaped or "/" in text[item.start : item.end]) and (pair := _pair(items, place, text)) is not None:
            made, skip = pair
            done += made
            continue
        elif concept in ("BUILDING", "OFFSETS", "ACCESSORY"):
            item = _heading(items, place, text)
        elif concept == "BRANCH_WORD" and concept_at(items, place - 2) == "BY" and text[item.start : item.end].lower().endswith(" off") and concept_at(items, place + 1) == "DET" and concept_at(items, place + 3) == "BY":
            item = replace(item, concept="OFF", value=None)  # "twelve by ten comes off the twenty-four by fourteen"
        elif concept == "MARKED" and concept_at(items, place - 1) == "BY" and text[item.start : item.end - 1].isdigit() and text[item.end - 1] == "s":
            item = replace(item, concept="NUM", value=_plain(int(text[item.start : item.end - 1])))  # "two 12 by 12s"
        elif concept == "TRIMMED":
            item = _off_its_length(items, place, text)
        elif concept in ("LEN", "NUM", "FRAC") and done and done[-1].concept == "CUT_LENGTH" != items[place - 1].concept:
            item = replace(item, concept="COUNT")  # how much came off is no length of it
        done.append(item)
    return _neighbours(tuple(done), text)


def _moves_by_letter(items, place: int, text: str) -> bool:
    """ "20x10 to 16x10, R 4/24", "R 4 in 24": behind the sizes of a piece that changes its size."""
    said = [items[k] for k in range(place + 1, min(place + 4, len(items)))]
    if text[items[place].start : items[place].end].lower() not in SIDE_LETTERS or not said or said[0].concept != "NUM" or not _changes(items):
        return False
    over = "/" in text[said[0].start : said[0].end] or [one.concept for one in said] == ["NUM", "IN", "NUM"] and said[0].value.value < said[2].value.value
    return over and concept_at(items, place - 1) in ("COMMA", "NUM") and any(one.concept == "BY" for one in items[:place])


_STANDS = ("FITTING", "GENERIC", "SEATED", "MOVE", "BE", "FILLER", "IT", "K_STRAIGHT", "COMMA")


def _neighbours(items, text: str):
    """ "the piece between the elbow and the tee": what stands on either side of it."""
    for place, item in enumerate(items):
        if item.concept != "WORD" or text[item.start : item.end].lower() not in words_of("small.between") or concept_at(items, place - 1) not in _STANDS:
            continue
        until = place + 1
        while until < len(items) and until < place + 9 and (items[until].concept in ("DET", "AND", "NUM", "MARKED", "NUMBER", "THIS") or items[until].concept.startswith("K_")):
            until += 1
        near = [one.concept for one in items[place + 1 : until]]
        if "AND" in near and any(concept.startswith("K_") for concept in near[: near.index("AND")]):
            named = tuple(replace(one, concept="WORD" if one.concept.startswith("K_") else "COUNT", value=None) if one.concept.startswith("K_") or one.concept in ("NUM", "MARKED") else one for one in items[place + 1 : until])
            return (*items[: place - 1], *(replace(one, concept="FILLER" if one.concept in ("SEATED", "MOVE") else one.concept) for one in items[max(0, place - 1) : place]), item, *named, *items[until:])
    return items


def _hundreds_of_degrees(items, place: int, text: str, done: list[Item]) -> Item:
    """ "two seventy degrees": no elbow is told in the plural so, and nothing else has so many."""
    item, before = items[place], items[place - 1] if place else None
    said = text[item.start : item.end].lower()
    if before is None or before.concept != "NUM" or before.value.digits or item.value.digits or text[before.end : item.start] != " " or not said.endswith(("degrees", "fahrenheit")):
        return item
    hundreds, rest = before.value.value, item.value.raw
    if not (1 <= hundreds <= 9 and 10 <= rest <= 99) or rest in (30, 45, 60, 90) and not _of_the_air(items) or hundreds.denominator != 1 or " " in text[before.start : before.end]:
        return item
    done.pop()
    whole = hundreds * 100 + rest
    return replace(item, start=before.start, first=before.first, value=replace(item.value, value=whole, raw=whole))


def _in_there(items, place: int, text: str, done: list[Item]) -> Item:
    """ "vanes went in fine", "step is in": where the thing is, and which way."""
    item, said = items[place], text[items[place].start : items[place].end].lower()
    if done[-1].concept == "VANES":
        return replace(item, concept="IN_PLACE", value=None) if said in words_of("small.went_in") else item
    if said.endswith(" in") and item.concept == "IN_PLACE" and concept_at(items, place + 1) in ("COMMA", "STOP", "AND", ""):
        done.append(replace(item, concept="BE", value=None, end=item.end - 3))
        return replace(item, concept="IN", value=None, start=item.end - 2)
    return item


def _of_the_turn(items, place: int, text: str) -> bool:
    """ "The turn is sixty", "turned it thirty": of an elbow."""
    at = place - 1
    while at >= 0 and items[at].concept in ("BE", "IT", "HEDGE", "ON", "DET") and place - at < 4:
        at -= 1
    return at >= 0 and text[items[at].start : items[at].end].lower().split()[0] in words_of("small.turn") and any(item.concept == "K_ELBOW" for item in items)


def _of_the_air(items) -> bool:
    concepts = {item.concept for item in items}
    return not concepts & {"K_ELBOW", "K_WYE", "K_OFFSET"} or bool(concepts & {"AIR", "AIR_TEMP"})


def _word(items, place: int, text: str) -> Item:
    item = items[place]
    said = text[item.start : item.end].lower()
    before, ahead = concept_at(items, place - 1), concept_at(items, place + 1)
    if said in table_of("small.one_unit") and _per_foot(items, place):
        unit = table_of("small.one_unit")[said]
        return replace(item, concept="LEN", value=Measure("LEN", measure.UNITS[unit], unit, 0, False, Fraction(1)))
    if said in words_of("small.sheets") and ahead == "OF" and concept_at(items, place + 2) == "LEN":
        return replace(item, concept="BOARD", value=None)  # "plancha de una pulgada"; else it irons
    if item.concept == "SIDE_WORD" and said == "side" and before == "DET" and concept_at(items, place - 2) in _LENGTHS and ahead in ("IN", "OVER", "COMMA", "STOP", "BACK", "") and _changes(items) and not {concept_at(items, place - k) for k in (3, 4, 5)} & set(_FASTENS):
        return replace(item, concept="SIDE", value=("left", "right"))  # "four a side in thirty"
    if item.concept == "WORD" and said in words_of("small.lost") and ahead in _LENGTHS and (_changes(items) or "SIDE" in [concept_at(items, place + k) for k in (3, 4)]):
        return replace(item, concept="MOVE_IN", value=None)  # "lost four on the right in twenty-four"
    if said in words_of("small.takes_off") and ahead in _LENGTHS:
        return _off_its_length(items, place, text)
    if item.concept == "WORD" and said in words_of("small.lets_into") and concept_at(items, place - 2) == "BY":
        at = place + 2 if ahead == "DET" else place + 1
        if concept_at(items, at) in _LENGTHS and concept_at(items, at + 1) == "BY":  # "8 by 8 into the 20 by 10", "20 by 12 into 16 by 12"
            return replace(item, concept="OFF" if any(one.concept == "K_BRANCH" for one in items) else "TO", value=None)
    if item.concept == "WORD" and said in table_of("small.headings"):
        return _heading(items, place, text)
    if item.concept == "WORD" and said == "rods" and before == "PENDING":
        return replace(item, concept="TIE_RODS", value=None)
    return item


def _changes(items) -> bool:
    return any(item.concept == "K_TRANSITION" for item in items)


def _per_foot(items, place: int) -> bool:
    """ "two inches per foot", "three inches to the foot", "an inch to a foot": a slope, and nothing that is spaced."""
    before = [concept_at(items, place - k) for k in (1, 2, 3)]
    at = place - 2 if before[0] == "OF" else place - 3 if before[:2] == ["DET", "TO"] else None
    return at is not None and concept_at(items, at) in _LENGTHS and not {concept_at(items, k) for k in range(at - 4, at)} & set(_FASTENS)


def _bare(item: Item, text: str, least=_LEAST) -> bool:
    """A side as it is said without "by": a whole number in words."""
    return item.concept == "NUM" and not item.value.digits and item.value.value.denominator == 1 and least <= item.value.value <= _MOST and item.value.value not in _TURNS


def _pair(items, place: int, text: str) -> tuple[list[Item], int] | None:
    """ "eighteen twelve to fourteen twelve", "18/12 to 14/12", "right in 4/24": two numbers in one, and how many items behind they take."""
    item, before = items[place], concept_at(items, place - 1)
    said = text[item.start : item.end]
    top, slash, under = said.partition("/")
    if slash and top.isdigit() and under.isdigit():
        over = text.index("/", item.start)
        first = replace(item, end=over, value=_plain(int(top)))
        second = replace(item, start=over + 1, value=_plain(int(under)))
        if before in _WAYS and int(top) < int(under) and int(under) not in _PARTS and not (before == "LETTER" and concept_at(items, place - 2) == "RUN"):
            return [first, replace(item, concept="OVER", value=None, start=over, end=over + 1), second], 0
        if int(top) >= _LEAST and int(under) >= _LEAST and (int(top) > int(under) or int(under) not in _PARTS) and (before in _BEFORE_A_PAIR or before in ("NUM", "MARKED")) and concept_at(items, place + 1) in (*_BEHIND_A_PAIR, "SIGN"):
            return [first, replace(item, concept="BY", value=None, start=over, end=over + 1), second], 0
        return None
    if place + 1 >= len(items) or not _bare(item, text) or not _bare(items[place + 1], text) or text[item.end : items[place + 1].start] != " ":
        return None
    named = before.startswith("K_") and concept_at(items, place - 2) in ("NUM", "MARKED")  # "one oh six straight twelve twelve"
    if not (named or before in _BEFORE_A_PAIR and not before.startswith("K_") or before == "NUM" and concept_at(items, place - 2) in ("K_STRAIGHT", "K_TRANSITION", "K_TEE", "K_END_CAP", "K_PLENUM")):
        return None
    if concept_at(items, place + 2) not in _BEHIND_A_PAIR or before in ("IN", "BE", "OFF", "FROM") and concept_at(items, place + 2) not in ("TO", "THROUGH", "BRANCH_WORD", "OUTLET"):
        return None
    return [item, replace(items[place + 1], concept="BY", value=None, start=item.end, end=item.end + 1), items[place + 1]], 1


def _plain(value: int) -> Measure:
    return Measure("NUM", Fraction(value), None, 0, True, Fraction(value))


def _opens(items, place: int) -> bool:
    """Whether a number and a comma right before, or a number right behind, makes this word the kind of a piece: "38, door, 10 by 10", "door 63, …"."""
    before = [concept_at(items, place - k) for k in (1, 2, 3)]
    if before[0] == "COMMA" and before[1] in ("NUM", "MARKED") and before[2] in ("", "STOP", "NUMBER", "FITTING"):
        return concept_at(items, place + 1) in ("COMMA", "STOP", "SIZE", "NUM", "LEN")
    return before[0] in ("", "STOP") and concept_at(items, place + 1) in ("NUM", "MARKED", "NUMBER") and concept_at(items, place + 2) in ("COMMA", "STOP", "NUM", "IN", "ON")


def _heading(items, place: int, text: str) -> Item:
    item = items[place]
    said = text[item.start : item.end].lower()
    if item.concept == "ACCESSORY":
        named = concept_at(items, place + 1) in ("NUM", "MARKED", "NUMBER") and concept_at(items, place - 1) in ("", "STOP", "AIRFLOW", "WORD", "FILLER")
        return replace(item, concept="FITTING", value=None) if named and said.endswith("damper") else item
    kind = table_of("small.headings").get(said)
    return replace(item, concept=f"K_{kind.upper()}", value=kind) if kind is not None and _opens(items, place) else item


def _off_its_length(items, place: int, text: str) -> Item:
    """ "trimmed six inches off it", "took two inches off the end": the piece was shortened, where no side of it is named."""
    item = items[place]
    off = place + 2
    if concept_at(items, place + 1) not in _LENGTHS or concept_at(items, off) not in ("FROM", "OFF") and text[items[off].start : items[off].end].lower() not in ("off",) if off < len(items) else True:
        return item
    ahead = [concept_at(items, off + k) for k in (1, 2, 3)]
    whole = ahead[0] in ("COMMA", "STOP", "", "IT", "THIS", "END", "AND") or ahead[:2] in (["DET", "END"], ["DET", "LENGTH"], ["DET", "FEMALE"], ["DET", "MALE"]) or concept_at(items, off) == "OFF" and ahead[0] in ("END", "FEMALE", "MALE")
    return replace(item, concept="CUT_LENGTH", value=None) if whole else item
