"""A measure that nothing else has read, told of the thing named beside it or last before it: "stapled. I'm at two and a half", "hangers, it works out to eight feet".

It is a claim only where every word around it is one that people put around what a thing came out as; where other words
stand there it states nothing, and is asked for (`logbook.reading.unread`).
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row, code
from logbook.reading.clauses.parts import Part
from logbook.reading.words.phrasing import apart, finds, rows, word, words_of
from logbook.reading.words.tokens import plain

_MEASURES = ("NUM", "LEN", "FRAC")
_STAPLES = ("STAPLES", "STAPLED", "STAPLE")
_THINGS = {
    **dict.fromkeys(_STAPLES, "staples"), "LEG": "staple_leg", "SCREWS": "screw_spacing", "WASHERS": "washer_size", "K_HANGER": "hanger_spacing",
    "TAPE": "tape_width", "TAPE_IT": "tape_width", "MARK181": "tape_width", "CLOSURE": "tape_width", "COUNTED": "tape_width",  # of these only a roll of tape
}  # fmt: skip
_NAMES = ("FITTING", "NUMBER", "RUN", "MARKED", "DASH", "LETTER", "BY")
# inches; what else a bare number may be is left out: a leg is under an inch, and no tape is sold wider
_WITHIN = {"staple_spacing": (1, 12), "staple_leg": (Fraction(1, 8), Fraction(15, 16)), "screw_spacing": (4, 48), "washer_size": (Fraction(1, 2), 6), "hanger_spacing": (12, 240), "tape_width": (1, 4)}
_FAR = {"staple_spacing": 6}  # the same of a thing that is named in another clause
_WEAKLY = ("staples", "staple_leg", "tape_width")  # of a piece that is closed; the others are told once a note
_TAPES = ("TAPE", "TAPED", "MARK181", "CLOSURE")
_WEATHER = ("PLACE_NOUN", "TEMP", "ROOM", "BUILDING", "FACING", "BOARD", "OUTSIDE", "INSIDE", "WHEN", "COLD_ON", "PREHEATED", "UNHEATED")  # where and when it was so cold
_WIDER = ("hanger_spacing",)  # "every four feet, nine over the corridor": the widest counts
_SAYS_TOO = {"staple_spacing": "stapled"}
_OTHERS = frozenset("SIZE SLOPE BACK LONG HIGH SIDE SIDE_WORD SIDES_ALL GAP PARTED TIGHT DAMAGE TABS BOARD DEG TEMP_F CFM INWG LB STATIC THROAT VANES NOT_DONE PENDING IF QUERY".split())
_OF_THEIR_OWN = ("DAMAGE", "GAP", "PARTED", "TABS", "THROAT", "FLAP", "VANES")  # things with measures of theirs
_WHERE = ("PLACE_NOUN", "BUILDING", "ROOM")
_LOOK_BACK = 24  # items


def lone_measures(row: Row, stated: Row, taken: set[int], claims: list[Claim], cut_up: tuple[Part, ...], language: Language) -> list[Claim]:
    """Weak claims: they stand where nothing else tells the same of the piece."""
    if not language.told.wanted.around:
        return []
    spent = taken | {at for one in claims for at in (range(one.first, one.last) if one.name in _WITHIN else one.uses)}
    known = {one.name for one in claims}
    made: list[Claim] = []
    for place, part in enumerate(cut_up):
        left = [at for at in range(part.first, part.last) if at not in spent and row.items[at].concept in _MEASURES and stated.string[at] == code(row.items[at].concept) and not _names(row, at) and not _stands_for_a_thing(row, at)]
        left = [at for at in left if not _used_up(row, part, at)]
        if len(left) == 2:
            left = [at for at in left if not _rejected(row, part, at, language)]
        if len(left) == 1:
            made += _stands_open(row, cut_up, place, left[0], claims, language) or list(_told(row, stated, cut_up, place, left[0], claims, language)) or _how_warm(row, cut_up[place], left[0], known, language)
    return made


def _stands_open(row: Row, cut_up: tuple[Part, ...], place: int, at: int, claims: list[Claim], language: Language) -> list[Claim]:
    """ "An eighth is as close as I could get it", "it doesn't touch, an eighth between them", "tight, well, a quarter on the far side": a gap that is not called one."""
    part, item = cut_up[place], row.items[at]
    start = next((one.first for one in cut_up[max(0, place - 2) : place] if one.sentence == part.sentence), part.first)
    start = row.items[start].start
    if item.concept == "NUM" or not 0 < item.value.value <= 1 or row.items[min(at + 1, len(row.items) - 1)].concept in ("LEG", "STAPLES", "BOARD", "WIDE"):
        return []
    said = plain(f"{row.text[start : item.start]}<m>{row.text[item.end : row.items[part.last - 1].end]}")
    shut = any(one.name == "gap" and one.value == 0 and one.last <= at and row.sentence_start(at) <= one.first for one in claims)
    if finds(apart(language.code, "told.wanted.gapes"), said) is None and not (shut and finds(apart(language.code, "told.wanted.gapes_there"), said) is not None):
        return []
    hedged = any(row.items[k].concept in ("HEDGE", "THINK", "AROUND") for k in range(part.first, at))
    return [claim(row, "gap", item.value.value, at, at + 1, uses=(at,), said_unit=unit_of(item), corrects=shut, hedged=hedged)]


_WARMTH = (15, 60)  # °F; what a bare number may be where it is too cold for tape, or nearly


def _how_warm(row: Row, part: Part, at: int, known: set[str], language: Language) -> list[Claim]:
    """ "It was thirty-five when I put the tape on": of the facing, where a note about tape tells of cold or of warming anywhere."""
    value, item = row.items[at].value, row.items[at]
    part = _up_to_the_reason(row, part, at, language)
    if item.concept != "NUM" or "surface_temperature" in known or not _WARMTH[0] <= value.value <= _WARMTH[1] or value.value.denominator != 1 or not any(one.concept in _TAPES for one in row.items):
        return []
    said = [row.text[row.items[k].start : row.items[k].end] for k in range(part.first, part.last) if k != at and row.items[k].concept not in (*_TAPES, "TAPED", *_WEATHER)]
    plainly = set(_WORDS.findall(plain(" ".join(said)))) <= language.told.wanted.around | language.told.wanted.weather
    reads = word(language.code, "told.wanted.reads").search(plain(row.text[row.items[part.first].start : item.start]).rstrip()) is not None or _beside_the_cold(row, part, at, language)
    if not plainly or not reads or word(language.code, "told.wanted.cold").search(plain(row.text)) is None:
        return []
    near = any(row.items[k].concept in ("HEDGE", "THINK", "AROUND") for k in range(part.first, at))
    return [claim(row, "surface_temperature", value.value, at, at + 1, uses=(at,), hedged=near)]


def _beside_the_cold(row: Row, part: Part, at: int, language: Language) -> bool:
    """ "Cold, 37, and no heat", "45 on the thermometer": a number alone, behind how cold it was or before what showed it."""
    if at != part.first:
        return False
    first = row.sentence_start(at)
    ahead = plain(row.text[row.items[first].start : row.items[at].start]).rstrip(" ,")
    behind = plain(row.text[row.items[at].end : row.items[at].end + 40])
    return word(language.code, "told.wanted.cold_ahead").search(ahead) is not None and at + 1 == part.last or word(language.code, "told.wanted.off_a_thermometer").match(behind) is not None


def _used_up(row: Row, part: Part, at: int) -> bool:
    """The "half inch" of "I was out of half inch, so it's got three-eighths"."""
    before = plain(row.text[row.items[part.first].start : row.items[at].start]).rstrip()
    return before.endswith(tuple(words_of("small.ran_out")))


def _rejected(row: Row, part: Part, at: int, language: Language) -> bool:
    """The "two" of "closer to three than two"."""
    return word(language.code, "told.wanted.than").search(plain(row.text[row.items[part.first].start : row.items[at].start]).rstrip()) is not None


def _thing_at(row: Row, at: int) -> str | None:
    concept = row.items[at].concept
    if concept == "COUNTED" and not (words_of("told.wanted.rolls") & set(_WORDS.findall(plain(row.words(at, at + 1))))):
        return None
    if concept == "TAPE" and row.items[at - 1].concept == "DET" and row.words(at - 1, at).lower() in words_of("numbers.articles"):
        return None  # "I put a tape on it": that measures
    if concept == "TAPED" and (row.words(at, at + 1).lower().startswith("tape ") or row.words(at, at + 1).lower().endswith(" tape")):
        return "tape_width"  # "the tape over it is three inches", "stapled, foil tape, three inch"
    return _THINGS.get(concept)


def _told(row: Row, stated: Row, cut_up: tuple[Part, ...], place: int, at: int, claims: list[Claim], language: Language) -> Iterator[Claim]:
    part = _up_to_the_reason(row, cut_up[place], at, language)
    concepts = {row.items[k].concept for k in range(part.first, part.last)}
    if concepts & _OTHERS or any(row.items[k].concept == "COUNTED" and _thing_at(row, k) is None for k in range(part.first, part.last)) or cut_up[place].last < len(row.items) and row.items[cut_up[place].last].concept == "QUERY" or not _is_plain(row, part, at, language):
        return
    here = [k for k in range(part.first, part.last) if _thing_at(row, k) is not None]
    noun = min(here, key=lambda k: abs(k - at)) if here else _named_behind(row, cut_up, place, language) or _named_before(row, part.first)
    if noun is None or not here and any(row.items[k].concept in ("TO", "FROM", "OFF") and {item.concept for item in row.items[k + 1 : k + 3]} & set(_WHERE) for k in range(part.first, at)):
        return  # "the distance to the wall is three inches"
    thing = _thing_at(row, noun)
    item = row.items[at]
    if item.concept == "NUM" and at and row.items[at - 1].concept == "ALL":
        return  # "put tape on it all four": so many sides
    if not here and thing == "staples" and item.value.value < 1 and (item.value.value < Fraction(1, 4) or any(row.items[k].concept in ("TAPED", "JOINT", "END") for k in range(noun, part.last))):
        return
    if item.concept == "NUM" and not _bare(row, cut_up, place, at, thing, language) or item.concept == "FRAC" and item.value.value == Fraction(1, 2) and at + 1 < part.last and row.items[at + 1].concept != "LEG":
        return
    name = thing if thing != "staples" else "staple_leg" if item.value.value < 1 else "staple_spacing"
    unit = getattr(item.value, "unit", None)
    if name == "hanger_spacing" and unit != "ft" and not 3 <= item.value.value <= 16 and not 36 <= item.value.value:
        return
    value = item.value.value * 12 if name == "hanger_spacing" and item.concept == "NUM" and item.value.value <= 16 else item.value.value
    if name == "hanger_spacing" and at + 1 < len(row.items) and (row.items[at + 1].concept in ("RUN", "COUNTED", "FITTING") or row.items[at + 1].concept.startswith("K_")) and row.items[at + 1].concept != "K_HANGER":
        return  # "hangers every eight feet, it's a twenty foot run"
    if at + 1 < len(row.items) and row.items[at + 1].concept in ("BY", "FROM", "OFF", "OVER") and name in ("hanger_spacing",) and row.words(at + 1, at + 2).lower().split()[0] in words_of("told.wanted.away"):
        return  # "ten feet off the floor"
    low, high = _WITHIN[name]
    if not low <= value <= (high if here else _FAR.get(name, high)) or unit == "ft" and name in ("staple_spacing", "tape_width", "washer_size"):
        return
    weak = thing in _WEAKLY
    told = [one.value for one in claims if one.name == name]
    wider = bool(told) and name in _WIDER and value > max(told)
    if not weak and told and not wider:
        return
    yield claim(row, name, value, at, at + 1, uses=(at,), said_unit=unit_of(item), weak=weak, corrects=wider, hedged=any(row.items[k].concept in ("HEDGE", "THINK") for k in range(part.first, at)) or item.value.near)
    if name in _SAYS_TOO and not stated.is_blank(noun) and not {"NOT", "NO", "MISSING"} & {row.items[k].concept for k in range(row.sentence_start(noun), noun)}:
        yield claim(row, _SAYS_TOO[name], True, noun, noun + 1, weak=True, hedged=False)


def _up_to_the_reason(row: Row, part: Part, at: int, language: Language) -> Part:
    """The part without what is told behind the measure: why it came out so, or of another act where words run on."""
    why = word(language.code, "told.wanted.reason").search(plain(row.text[row.items[at].end : row.items[part.last - 1].end]))
    until = row.items[at].end + why.start() if why is not None else row.items[part.last - 1].end
    last = next((k for k in range(at + 1, part.last) if row.items[k].start >= until or k > at + 1 and row.items[k].concept in ("STAPLED", "TAPED", "RUBBED")), part.last)
    return Part(part.first, last, part.sentence, plain(row.words(part.first, last)))


def _bare(row: Row, cut_up: tuple[Part, ...], place: int, at: int, thing: str, language: Language) -> bool:
    """Whether a bare number is a measure: a whole one may count sides, wherever sides are spoken of, and how wide tape is needs a word for it."""
    value, part = row.items[at].value.value, cut_up[place]
    if value.denominator != 1:
        return True
    if at + 1 < part.last and row.items[at + 1].concept in ("STAPLED", "TAPED", "RUBBED", "STAPLES", "STAPLE", "K_HANGER", "SCREWS", "WASHERS", "JOINT", "END"):
        return False  # "three taped": of sides; "eleven hangers", "three seams"
    near = [one for one in cut_up if part.sentence - 2 <= one.sentence <= part.sentence + 1]
    if thing == "tape_width":
        return bool(row.items[at].took_back) or any(word(language.code, "told.wanted.wide").search(one.words) is not None for one in near if one.sentence == part.sentence and one.first <= part.first)
    if value <= 4 and any(row.items[k].concept in ("SIDE_WORD", "SIDES_ALL", "COUNTED") for one in near for k in range(one.first, one.last)):
        return False
    return at == part.first or word(language.code, "told.wanted.counted").search(plain(row.text[row.items[part.first].start : row.items[at].start]).rstrip()) is None


def _is_plain(row: Row, part: Part, at: int, language: Language) -> bool:
    """Whether nothing stands around the measure but words for what a thing came out as, and a reason behind it."""
    said = [row.text[row.items[k].start : row.items[k].end] for k in range(part.first, part.last) if not _named(row, k) and row.items[k].concept not in _WHERE]
    return set(_WORDS.findall(plain(" ".join(said)))) <= language.told.wanted.around


def _named(row: Row, at: int) -> bool:
    concept = row.items[at].concept
    return concept in _THINGS or concept in _MEASURES or concept.startswith("K_") or _names(row, at)


_WORDS = re.compile(r"[\w']+")


def _stands_for_a_thing(row: Row, at: int) -> bool:
    """The "one" of "one staple and the next", the "two" of "the last two"."""
    one = row.items[at].concept == "NUM" and row.items[at].value.value == 1 and not row.items[at].value.digits
    before = row.words(at - 1, at).lower().split()[-1:] if at and row.items[at - 1].concept not in ("COMMA", "STOP", "QUERY") else []
    return one or row.items[at].concept == "NUM" and not words_of("told.wanted.ordinal").isdisjoint(before)


_WAYS = {"OUT": "outward", "OUTSIDE": "outward", "MOVE_OUT": "outward", "IN": "inward", "INSIDE": "inward", "MOVE_IN": "inward"}
_CLINCHED = (*_STAPLES, "LEG", "CLINCHED")
_OF_LEGS = frozenset("STAPLES STAPLE STAPLED LEG CLINCHED EVERY LEN FRAC NUM AND COMMA BE ALL BOTH IT OTHER FILLER DET".split())
_FACE = frozenset("GROOVE SHIPLAP SIDE END FEMALE MALE SCREWS TABS SIZE VANES FLAP PANEL".split())  # other things that have a way


def lone_ways(row: Row, stated: Row, claims: list[Claim], cut_up: tuple[Part, ...], language: Language) -> list[Claim]:
    """Which way staples are clinched, told apart from them: "clinch is the wrong way, inward", "they should flare out. Mine went in"."""
    if not any(item.concept in _CLINCHED for item in row.items) or any(one.name == "staple_clinch" for one in claims):
        return []
    for place, part in enumerate(cut_up):
        for at in range(part.first, part.last):
            way = _WAYS.get(row.items[at].concept)
            if way is None or stated.is_blank(at) or any(row.items[k].concept in ("NOT", "NO", "IF", *_FACE) for k in range(part.first, part.last)):
                continue
            plainly = word(language.code, "told.wanted.clinched").search(plain(row.words(at, at + 1))) is not None
            plainly = plainly and (row.items[at].concept not in ("MOVE_OUT", "MOVE_IN") or _OF_LEGS.issuperset(row.items[k].concept for k in range(part.first, at)))  # "the mouth is flared out"
            noun = next((k for k in (*range(part.first, part.last), *range(part.first - 1, max(-1, part.first - _LOOK_BACK), -1)) if row.items[k].concept in (*_CLINCHED, *_FACE) or k < part.first and row.items[k].concept.startswith("K_") and row.items[k - 1].concept not in ("ON", "IN", "OF")), None)
            if noun is not None and row.items[noun].concept in _CLINCHED and (plainly or place and _against(row, cut_up[place - 1], part, way, language)):
                return [claim(row, "staple_clinch", way, at, at + 1, hedged=False)]
    return []


def _against(row: Row, wished: Part, part: Part, way: str, language: Language) -> bool:
    """ "Mine went in", where the way they should have gone was told right before."""
    said = [row.text[row.items[k].start : row.items[k].end] for k in range(part.first, part.last)]
    other = any(_WAYS.get(row.items[k].concept, way) != way for k in range(wished.first, wished.last))
    return other and finds(rows(language.code, "told.wanted.wants"), wished.words) is not None and set(_WORDS.findall(plain(" ".join(said)))) <= language.told.wanted.around


def _names(row: Row, at: int) -> bool:
    before = row.items[at - 1].concept if at else ""
    return row.items[at].concept in ("NUM", "LETTER", "MARKED", *_NAMES[:3]) and (before.startswith("K_") and before != "K_HANGER" or before in _NAMES)


def _named_behind(row: Row, cut_up: tuple[Part, ...], place: int, language: Language) -> int | None:
    """ "They're at three, the staples": the thing by itself right behind."""
    for part in cut_up[place + 1 : place + 2]:
        things = [k for k in range(part.first, part.last) if _thing_at(row, k) is not None]
        rest = [row.text[row.items[k].start : row.items[k].end] for k in range(part.first, part.last) if k not in things]
        if len(things) == 1 and row.items[things[0]].concept != "STAPLED" and part.sentence == cut_up[place].sentence and set(_WORDS.findall(plain(" ".join(rest)))) <= language.told.wanted.alone:
            return things[0]
    return None


def _named_before(row: Row, at: int) -> int | None:
    """Where the thing is named last before these words, in their sentence or the one before it, of the same piece."""
    stops = 0
    for k in range(at - 1, max(-1, at - _LOOK_BACK), -1):
        concept = row.items[k].concept
        if _thing_at(row, k) is not None:
            return k
        stops += concept in ("STOP", "QUERY")
        if concept in _OF_THEIR_OWN or concept.startswith("K_") and row.items[k - 1].concept not in ("ON", "OF", "IN") or stops > 2:
            return None
    return None
