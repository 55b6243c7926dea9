"""Hangers, accessories, reinforcement, stage, what a piece was closed to, service, air and leak tests."""

from __future__ import annotations

import re

from logbook.reading.stated.leak_told import of_the_allowed
from logbook.reading.clauses.claims import Found, Frame, unit_of


def _flag(name: str, value: bool = True):
    return lambda found: [found.claim(name, value, group="w")]


def _stage(value: str):
    return lambda found: [found.claim("stage", value, group="w")]


def _hung(found: Found):
    """Not where something else is what hangs: "with its own damper hung on it"."""
    at = found.at("w")
    if found.row.words(at, at + 1).lower() == "hanging" and at + 1 < len(found.row.items) and found.row.items[at + 1].concept in ("OUT", "OFF", "FROM", "DOWN", "OVER", "BY"):
        return  # "insulation hanging out of the cut"
    things = [item.concept for item in found.row.items[at + 1 : at + 3]]
    if found.row.words(at, at + 1).lower() == "hanging" and (things[:1] == ["BUILDING"] or things[:2] == ["DET", "BUILDING"]):
        return  # "I was on the lift hanging lights"
    if "ACCESSORY" in (things[:1] + things[1:2] if things[:1] == ["DET"] else things[:1]):
        return  # "hung the damper on its own straps"
    near = [item.concept for item in found.row.items[max(0, at - 4) : at]]
    cut = max((k for k, c in enumerate(near) if c in ("COMMA", "STOP", "AND")), default=-1)
    behind = found.row.text[found.row.items[at].end :].lower().split()[:2]
    if "ACCESSORY" in near[cut + 1 :] or ("ACCESSORY" in near and behind == ["on", "it"]):
        return
    yield found.claim("stage", "hung", group="w")


def _put_up(found: Found):
    """ "put 7 up today", "7 went up" """
    said = found.row.words(found.at("f"), found.at("f") + 1).lower()
    if said.split()[-1] == "put" or (said == "went up" and found.first and found.row.items[found.first - 1].concept in ("NUM", "MARKED", "IT", "THIS")):
        yield found.claim("stage", "hung", group="w")


def _raised(found: Found):
    """ "lo subí ayer": up it went, where "subí tres" is a side that moves."""
    at = found.at("w")
    behind = [item.concept for item in found.row.items[at + 1 : at + 4]]
    if found.row.words(at, at + 1).lower().split()[-1] in ("subí", "subimos", "subi") and not {"LEN", "FRAC"} & set(behind) and behind[:1] != ["NUM"]:
        if not (behind[:1] == ["DET"] and "SIDE" in behind):
            yield found.claim("stage", "hung", group="w")


def _number(name: str, signed=False):
    def build(found: Found):
        item = found.item("n")
        value = -item.value.value if signed and found.item("neg") is not None else item.value.value
        unit = item.value.unit if item.value.unit in ("kg", "m2", "pa") else unit_of(item)
        yield found.claim(name, value, group="w", uses=("n",), said_unit=unit)

    return build


def _spaced(found: Found):
    """ "Hanger. Four foot.": how far apart, where it says no more."""
    if 12 <= found.item("n").value.value <= 160:
        yield from _number("hanger_spacing")(found)


def _reads_now(found: Found):
    """ "Last week it read thirty cfm, we resealed, today it's eighteen": what a leak test reads by now."""
    row = found.row
    if any(item.concept == "LEAK_TEST" for item in row.items[: found.first]) and row.words(found.at("f"), found.at("f") + 1).lower() in ("today", "now", "this morning"):
        yield found.claim("airflow", found.item("n").value.value, group="w", uses=("n",), corrects=True)


def _hangers_now(found: Found):
    """ "Hangers were at six feet, I moved them all to four", "… couldn't hit the joists so they're at six": the feet are said once."""
    row, item = found.row, found.item("n")
    word = row.words(found.at("o"), found.at("o") + 1).lower()
    feet = [one for one in row.items[found.first : found.at("o") + 1] if one.concept == "LEN" and getattr(one.value, "unit", None) == "ft"]
    if word not in ("moved", "they're", "are") or not feet:
        return
    value = item.value.value * 12 if item.concept == "NUM" else item.value.value
    if 12 <= value <= 144:
        yield found.claim("hanger_spacing", value, group="w", uses=("n",), said_unit="ft", corrects=True, hedged=False)


def _pressure(found: Found):
    item = found.item("n")
    if found.last < len(found.row.items) and found.row.words(found.last, found.last + 1).lower() in ("more", "less", "above", "higher", "lower", "past", "beyond"):
        return  # "three inches of static, an inch more than board is for"
    if of_the_allowed(found.row, found.at("n")):
        return
    value = item.value.value if item.concept != "LEN" else item.value.raw
    value = -value if found.item("neg") is not None else value
    if abs(value) <= 20:
        unit = item.value.unit if item.value.unit == "pa" else None
        yield found.claim("static_pressure", value, group="w", uses=("n",), said_unit=unit)


def _moved(found: Found):
    """ "airflow twelve hundred": cubic feet a minute, where no unit was said; "gets air at a hundred forty" tells how hot it is."""
    hot = found.row.words(found.at("n") - 1, found.at("n")).lower() == "at" and found.row.words(found.first, found.first + 1).lower().split()[-1] == "air" and found.item("n").value.value <= 600
    if hot:
        yield found.claim("air_temperature", found.item("n").value.value, group="w", uses=("n",))
    elif found.row.items[found.first].concept == "AIR" and found.row.words(found.first, found.first + 1).lower() == "air" and any(item.concept == "BE" for item in found.row.items[found.first : found.at("n")]):
        return  # "the air in it is a hundred and twenty": how warm, or how much
    elif found.item("n").value.value >= 100:
        yield from _number("airflow")(found)


def _reinforced(found: Found):
    """Channel and rod in a note of hangers are what the hangers are made of."""
    if not any(item.concept == "K_HANGER" for item in found.row.items):
        yield found.claim("reinforced", True, group="w")


def _service(found: Found):
    yield found.claim("service", found.item("s").value, group="s")


def _own(found: Found):
    """ "44 is fine on its own" tells of no weight that hangs."""
    said = found.row.words(found.last - 1, found.last).lower()
    if said not in ("on its own", "on their own") or any(item.concept in ("ACCESSORY", "LB", "WEIGHS", "HUNG", "K_HANGER", "K_DAMPER_SLEEVE") for item in found.row.items):
        yield from _flag("accessory_supported")(found)

_DENIES_IT = re.compile(r"(?:not|isn't|nothing|no|only|just)\b")


def _on_the_duct(found: Found):
    """ "Riding on the duct"; where it is denied it may hang on anything else, and that is told beside it or asked."""
    before = {item.concept for item in found.row.items[max(0, found.first - 2) : found.first]}
    if before.isdisjoint(("NOT", "NO", "NOT_DONE")) or _DENIES_IT.match(found.row.words(found.first, found.last).lower()):
        yield found.claim("accessory_supported", False, group="w")


_RUNS_AT = "(?:BE|HAVE|RUN|SAYS|SHOWS|SEE|LAID|WORD|MOVE|MOVE_OUT|MOVE_UP|DET|IT|IF|TAKES) (?:BE|LAID|WORD|ON|IN|OF|TO|HEDGE|ONLY|FILLER|WITH){0,3}"
_NO_OTHER = "(?=SEP|$|AND|BUT|FILLER|STATIC|ON|IN|WITH|WHEN|SAYS|OF STATIC)"
FRAMES = (
    Frame("(?:^|(?<=STOP)) K_HANGER (?:NUM|MARKED|NUMBER|LETTER){0,3} STOP (?P<w>(?P<n>LEN)) (?=STOP|$)", _spaced),
    Frame("(?P<w>(?P<n>LB))", _number("accessory_weight")),
    Frame("(?P<w>WEIGHS (?:FILL|ON){0,2} (?P<n>NUM)) (?!BY)", _number("accessory_weight")),
    Frame("(?P<w>(?:HUNG)? (?:IT|FILL|WITH|HAVE|ON){0,3} ON_ITS_OWN) (?!JOINT|STAPLES|SIDE|END)", _own),
    Frame("(?P<w>ON_DUCT)", _on_the_duct),
    Frame("(?P<w>TIE_RODS)", _reinforced),
    Frame("(?P<w>HUNG) (?! (?:IT|FILL|WITH|HAVE|ON){0,3} ON_ITS_OWN)", _hung),
    Frame("(?P<w>ON_BENCH)", _stage("made")),
    Frame("HUNG (?:FILL|IT|COMMA|AND|BUT|ANOTHER){0,3} (?P<w>DOWN_AGAIN)", lambda found: [found.claim("stage", "made", group="w", corrects=True)]),
    Frame("CFM (?:ME|WORD|FILL|COMMA|SEALED|REPAIRED|TAPED|AND|BUT|REDID|STOP|IT|UP|JOINT){1,12} (?P<f>FILLER|LATER) (?:IT|BE|WORD|COMMA|ON){1,3} (?P<w>(?P<n>NUM|CFM)) (?=STOP|$|COMMA)", _reads_now),
    Frame("K_HANGER [^STOP QUERY]{1,24} (?P<o>MOVE|BE) (?:BOTH|IT)? (?:TO|ON) (?P<w>(?P<n>NUM|LEN)) (?=STOP|$)", _hangers_now),
    Frame("(?P<w>(?P<n>CFM))", _number("airflow")),
    Frame("(?P<w>(?:AIR|AIRFLOW) (?:FILL|OF|ON|COMMA){0,3} (?P<n>NUM)) (?=SEP|$|AND)", _moved),
    Frame("(?P<w>(?:AIR|AIRFLOW) ON DET? KIND (?:NUM|MARKED) BE (?P<n>NUM)) (?=SEP|$|AND)", lambda found: _moved(found) if found.row.words(found.first, found.first + 1).lower() != "air" else ()),
    Frame("(?P<w>(?P<neg>NEGATIVE) (?P<n>LEN)) (?=ON|IN|SEP|$)", _pressure),
    Frame("(?P<w>(?P<neg>NEGATIVE)? (?:FILL)? (?P<n>INWG) STATIC?)", _pressure),
    Frame("(?P<w>(?P<neg>NEGATIVE)? (?P<n>LEN|FRAC|NUM) (?:OF)? (?:DET)? (?P<neg2>NEGATIVE)? STATIC)", _pressure),
    Frame(f"(?P<w>STATIC (?:STATIC|INSIDE)? (?:FROM|OF|ON|IN|THROUGH|THRU) (?:DET|THIS)? SIZE? (?:KIND|FITTING)? NUMBER? (?:NUM|MARKED) COMMA? {_RUNS_AT} (?P<n>LEN|FRAC|NUM)) {_NO_OTHER}", _pressure),  # "the static on straight 42 runs two and a half"
    Frame(f"(?:(?<=STOP)|(?<=COMMA)|^) (?P<w>(?:OF|FROM|ON)? STATIC STATIC? COMMA? (?:DET|THIS)? (?:KIND|FITTING)? NUMBER? (?:NUM|MARKED) {_RUNS_AT} (?P<n>LEN|FRAC|NUM)) {_NO_OTHER}", _pressure),  # "de presión el 42 anda en una y media"
    Frame("(?P<w>STATIC (?:IN_PLACE|TEMP|INSIDE|(?:IN|ON) (?:DET|THIS|IT) (?:WORD|RUN NUM|KIND|RUN)?) BE HEDGE? (?P<n>LEN|FRAC|NUM)) (?!BY|TAPE|DEG)", _pressure),
    Frame("(?P<w>(?P<n>LEN|FRAC) (?P<neg>NEGATIVE)) (?=SEP|$|ON|IN)", _pressure),
    Frame("(?P<w>STATIC (?:ON RUN NUM)? (?:FILL|ON|OF|STATIC|COMMA){0,4} (?P<neg>NEGATIVE)? (?:FILL)? (?P<n>LEN|FRAC|NUM|INWG)) (?!BY|TAPE|AND DET? NUM BE)", _pressure),
    Frame("(?P<w>(?P<f>FILLER) (?:DET|FITTING|NUMBER|KIND|IT){0,3} (?:NUM|MARKED|IT) UP) (?!NUM|LEN|TO)", _put_up),
    Frame("(?P<w>(?P<f>MOVE_UP)) (?=SEP|$|FILLER|LATER|AND|ON RUN)", _put_up),
    Frame("(?P<w>MOVE_UP) (?=(?:FILL|LATER|COMMA|STOP|AND|ON|WORD|TIED|KIND|$))", _raised),
    Frame("LEAK_TEST (?:FILL|RUN|NUM|ON|OF|COMMA|STOP|TO|THRU|FITTING|LETTER|MARKED){0,6} (?P<w>(?P<n>LEN|FRAC))", _pressure),
    Frame("LEAK_TEST (?:[^STOP QUERY]){0,9} COMMA (?:WORD|FILLER|I|ME|MOVE_UP|LEVEL|UP|IT){1,4} (?:TO|ON)? (?P<w>(?P<n>LEN|FRAC)) (?=COMMA|STOP|$|AND|FILLER|CFM)", _pressure),
    Frame("LEAK_TEST (?:[^STOP QUERY]){0,9} (?P<w>(?:TO|ON) (?P<n>LEN|FRAC)) (?!LONG|BY|WIDE)", _pressure),
    Frame("(?:LEAK_TEST|CFM) (?:FILL|COMMA|ON|OF|IN|WORD){0,4} (?P<w>(?P<n>LEN|FRAC)) (?=(?:OVER|COMMA|ON|IN|FILL|OF|NUM|SIZE){0,5} FT2)", _pressure),
    Frame("FT2 (?:FILL|COMMA|OF|GENERIC|WORD){0,4} ON (?P<w>(?P<n>LEN|FRAC))", _pressure),
    Frame("(?P<w>(?P<n>FT2))", _number("(leak_area)")),
    Frame("(?P<s>SERVICE) (?!AIR? (?:FILL|ON|OF){1,3} (?:DEG|TEMP_F))", _service),
)
