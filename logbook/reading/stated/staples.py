"""Staples, cross tabs, screws and hangers: what was fastened, how far apart, with what."""

from __future__ import annotations

from fractions import Fraction

from logbook.reading.clauses.claims import Found, Frame, taken_back, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of
from logbook.reading.stated.leg_lengths import LEGS
from logbook.reading.stated.spaced_apart import OF_A_SIDE

_OWNERS = {
    "STAPLED": "staple_spacing", "STAPLES": "staple_spacing", "STAPLE": "staple_spacing", "TABS": "cross_tab_spacing",
    "SCREWS": "screw_spacing", "K_HANGER": "hanger_spacing", "TIE_RODS": None, "HUNG": "hanger_spacing",
}  # fmt: skip
_LOOK_BACK = 17  # items; further away a spacing is nobody's
_HANGS = 24  # inches; nearer to one another no hanger is set
_SPACING_MOST = {"staple_spacing": 24, "cross_tab_spacing": 36, "screw_spacing": 48, "hanger_spacing": 240}


def _owner(found: Found) -> str | None:
    """Whose spacing it is: the nearest thing that can be spaced, before it in the sentence, else right behind it."""
    items, string_at = found.row.items, found.first
    if items[string_at].concept in _OWNERS and string_at != found.at("n"):
        return _OWNERS[items[string_at].concept]  # "tied in, stapled two"
    for at in range(string_at - 1, max(-1, string_at - _LOOK_BACK), -1):
        concept = items[at].concept
        if concept == "HANG" and at and items[at - 1].concept == "I":
            return "hanger_spacing"  # "I hang it each ten feet"
        if concept == "WORD" and (said := found.row.words(at, at + 1).lower()) in words_of("small.hangs") | words_of("small.rivets"):
            concept = "HUNG" if said in words_of("small.hangs") else "TIE_RODS"  # of rivets no spacing is read
        if concept == "HUNG" and items[found.at("n")].concept == "LEN" and items[found.at("n")].value.value < _HANGS:
            continue  # "hung, every two inches stapled"
        if concept in _OWNERS and not _denied(found.row, at):
            return "hanger_spacing" if concept == "TIE_RODS" and (any(item.concept == "K_HANGER" for item in items) or any(item.concept in ("HANG", "HUNG") for item in items[found.row.sentence_start(at) : at])) else _OWNERS[concept]
        if concept in ("K_COLLAR", "K_DAMPER_SLEEVE") and "SCREWS" in [item.concept for item in items[max(0, at - 3) : at]]:
            return "screw_spacing"  # "screwed the metal collar to 80, with washers, every eighteen inches"
        if concept.startswith("K_") and concept != "K_HANGER" and items[at - 1].concept not in ("ON", "OF", "IN", "FROM", "HUNG"):
            break  # but not where it only tells where the thing is: "how long are the tabs on tee six? Four. Every eight"
    for at in range(found.last, min(len(items), found.last + 3)):
        if items[at].concept in _OWNERS:
            return _OWNERS[items[at].concept]
    there = {item.concept for item in items}
    if any(item.concept == "TABS" and not _denied(found.row, at) for at, item in enumerate(items)) and "K_COLLAR" not in there and all(_denied(found.row, at) for at, item in enumerate(items) if item.concept in ("STAPLED", "STAPLES", "STAPLE")):
        return "cross_tab_spacing"
    if "K_HANGER" in there and not there & {"STAPLED", "STAPLES", "STAPLE", "TABS", "SCREWS"}:
        return "hanger_spacing"
    if there & {"STAPLED", "STAPLES", "STAPLE"}:
        return "staple_spacing"
    return "screw_spacing" if there & {"SCREWS", "WASHERS"} else "cross_tab_spacing" if "TABS" in there else "staple_spacing"


def _denied(row: Row, at: int) -> bool:
    """ "tabs instead of staples", "no staples": what is not there has no spacing."""
    return row.items[at].concept in _OWNERS and (row.is_blank(at) and row.items[at].concept != "TABS" and at > 0 and row.items[at - 1].concept in ("OF", "WORD") or at > 0 and row.items[at - 2 if row.items[at - 1].concept == "DET" else at - 1].concept in ("NO", "NOT"))


def _spacing(found: Found):
    item = found.item("n")
    name = _OWNERS[found.item("o").concept] if found.item("o") is not None else _owner(found)
    if name is None:
        return
    value = item.value.value
    if name == "staple_spacing" and next((found.row.items[k].concept for k in range(found.first, max(-1, found.row.sentence_start(found.first) - 1), -1) if found.row.items[k].concept in ("STAPLES", "STAPLED", "STAPLE", "TIE_RODS")), "") == "TIE_RODS":
        return  # "tie rods every two feet"
    if item.concept == "NUM" and value == 1 and not item.value.digits and (found.row.items[found.first].concept == "EVERY" or found.row.words(found.last - 1, found.last).lower() == "in between"):
        return  # "on every one but nine", "put one in between each"
    if found.first and found.row.items[found.first].concept == "EVERY" and found.row.items[found.first - 1].concept == "NOT":
        return  # "not every three, not every two and a half, every two"
    if name == "hanger_spacing" and item.concept == "NUM" and value < 12:
        if not 3 <= value <= 10 or found.row.items[found.first].concept != "EVERY":
            return
        value *= 12  # "ours are every four": of hangers, feet
    if value > _SPACING_MOST[name] and item.concept == "LEN" and not words_of("small.hangs_it").isdisjoint(found.row.words(found.row.sentence_start(found.first), found.row.sentence_end(found.first)).lower().replace(",", " ").split()):
        name = "hanger_spacing"  # "de soporte a soporte hay doce pies"
    if value > _SPACING_MOST[name] or value <= 0 or name == "staple_spacing" and value < Fraction(1, 2):
        return
    backs = taken_back((item,), lambda back: back.value.value)
    yield found.claim(name, value, group="w", uses=("n",), said_unit=unit_of(item), took_back=backs)


def on_a_piece(row: Row, marks: set[str]) -> dict[int, str]:
    """ "The staples on nine", where straight nine is spoken of, are those of that piece; "staples on two" are two inches apart."""
    found: dict[int, str] = {}
    for match in row.find("(?:STAPLED|STAPLES) (?P<o>ON) (?P<n>NUM)"):
        at = match.start("n")
        ahead = row.items[at + 1].concept if at + 1 < len(row.items) else ""
        if str(row.items[at].value.value) in marks and (row.items[at].value.value > 4 or ahead in _TELLS_OF_THEM):
            found |= {match.start("o"): "FILLER", at: "FILLER"}
    return found


_TELLS_OF_THEM = ("CLINCHED", "BE", "HAVE", "BENT", "ON", "NOT")


def _so_many_in(found: Found):
    """ "six staples per foot", "three screws in two feet": how many lie on a length."""
    length, count = found.item("n"), found.item("k").value.value
    if length.concept == "WORD" and found.row.words(found.at("n"), found.at("n") + 1).lower() not in ("foot", "pie"):
        return
    if length.concept == "LEN" and length.value.unit != "ft" and "c" not in found.match.re.groupindex or found.item("o") is not None and found.row.words(found.at("o"), found.at("o") + 1).lower().endswith("ed"):
        return  # "thirty by eighteen screwed every twenty inches"
    inches = 12 if length.concept == "WORD" else length.value.value
    name = _OWNERS[found.item("o").concept] if found.item("o") is not None else "staple_spacing"
    if count.denominator == 1 and 1 <= count <= 24 and inches >= 12:
        yield found.claim(name, Fraction(inches) / count, group="w", uses=("k", "n"), said_unit="ft")
        if name == "staple_spacing":
            yield found.claim("stapled", True, group="w", weak=True)


def _so_many_a_foot(found: Found):
    """ "five staples a foot" """
    if found.item("n").value.value == 12 and found.row.words(found.at("n"), found.at("n") + 1).lower().split()[0] in words_of("small.articles"):
        yield from _so_many_in(found)


def _between(found: Found):
    """ "Three inches between staples on nine", "tres pulgadas entre grapas" """
    if found.row.words(found.at("b"), found.at("b") + 1).lower() in ("between", "entre"):
        yield from _spacing(found)
        if _OWNERS[found.item("o").concept] == "staple_spacing":
            yield found.claim("stapled", True, group="w", weak=True, hedged=False)  # about so far apart, and there they are


def _between_them(found: Found):
    """ "I got three between them": of the staples, where they were spoken of before."""
    if found.row.words(found.at("b"), found.at("b") + 1).lower() == "between" and 1 <= found.item("n").value.value <= 6 and _owner(found) == "staple_spacing":
        yield from _spacing(found)


def _lies_between(found: Found):
    """ "La distancia entre grapas es de cuatro" """
    said = found.row.words(max(0, found.at("b") - 1), found.at("b") + 1).lower()
    if not words_of("small.hangs_it").isdisjoint(said.split()) and found.item("n").concept == "LEN":
        yield from _spacing(found)  # "de soporte a soporte hay doce pies"
    elif any(noun in said for noun in ("grapa", "staple")) and 1 <= found.item("n").value.value <= 12:
        yield from _spacing(found)
        if "staple" in said:
            yield found.claim("stapled", True, group="w", weak=True)


def _at_spacing(found: Found):
    """ "Engrapado a dos pulgadas", "grapas a dos": how far apart, where nothing was cut to it."""
    if found.row.words(found.at("a"), found.at("a") + 1).lower() == "a" and found.item("n").value.value <= 6:
        yield from _spacing(found)


def _screws_at(found: Found):
    if found.row.words(found.at("a"), found.at("a") + 1).lower() == "a" and 3 <= found.item("n").value.value <= 48:
        yield from _spacing(found)


def _legs_at(found: Found):
    """ "staples, half-inch leg at two inches" """
    if found.row.words(found.at("a"), found.at("a") + 1).lower() in ("at", "@") and 1 <= found.item("n").value.value <= 6:
        yield from _spacing(found)


def _flag(name: str, value: bool = True):
    return lambda found: [found.claim(name, value, group="w")]


def _bears(found: Found):
    """ "Le metí grapas", "ya trae grapas", "las grapas ya están": of the piece, not of the box."""
    words = found.row.words(found.at("b"), found.at("b") + 1).lower().split()
    if not words_of("small.bears").isdisjoint(words):
        yield found.claim("stapled", True, group="w", weak=True)


def _lone_spacing(found: Found):
    """ "I just stapled it, two inch", "two inch stapling": how far apart, where it can be nothing else of a staple."""
    item, at = found.item("n"), found.at("n")
    of_the_tape = at > 1 and found.row.items[at - 1].concept == "COMMA" and found.row.items[at - 2].concept in _OF_TAPE  # "stapled, 181A-P, three inch"
    if not of_the_tape and 1 <= item.value.value <= 6 and getattr(item.value, "unit", None) != "ft":
        yield found.claim("staple_spacing", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))
        yield found.claim("stapled", True, group="w", weak=True)


_OF_TAPE = ("TAPE", "CLOSURE", "MARK181")


def _lie_at(found: Found):
    """ "Staples are around two inches", "staples are good at two inches": how far apart, in doubt where it is about so."""
    item = found.item("n")
    if 1 <= item.value.value <= 12 and "BE" in [i.concept for i in found.row.items[found.first : found.at("g")]]:
        near = found.item("g").concept == "AROUND"
        yield found.claim("staple_spacing", item.value.value, group="w", uses=("n",), said_unit=unit_of(item), hedged=near)
        yield found.claim("stapled", True, group="w", weak=True, hedged=False)


def _length(name, most=10**6, least=0):
    def build(found: Found):
        item = found.item("n")
        if least <= item.value.value <= most:
            yield found.claim(name, item.value.value, group="w", uses=("n",), said_unit=unit_of(item))

    return build


def _tab_length(found: Found):
    row, last = found.row, found.last
    if found.item("n").concept == "NUM" and row.items[last - 1].concept == "TABS" and found.item("n").value.value <= 2:
        return  # "one cross tab in the middle of each side"
    if found.item("n").concept == "NUM" and row.items[last - 1].concept == "TABS" and [item.concept for item in row.items[last : last + 2]] == ["COMMA", "LEN"]:
        return  # "four tabs, ten inches each": how many
    if found.item("n").concept == "NUM" and row.items[last - 1].concept == "TABS" and row.items[last : last + 1] and row.items[last].concept in ("OF", "EACH", "ON") and row.items[last + 1 : last + 2] and row.items[last + 1].concept in ("SIDE_WORD", "SIDE", "JOINT", "DET", "EACH", "END"):
        return  # "two tabs per side"
    if not any(item.concept == "K_COLLAR" for item in found.row.items[max(0, found.first - 60) : found.last]):  # a collar's tabs are its own, and are counted
        yield from _length("cross_tab_length", most=48)(found)


def _clinch(found: Found):
    outward = found.item("to").concept in ("OUT", "OUTSIDE")
    if any(item.concept in ("GROOVE", "SHIPLAP") for item in found.row.items[max(0, found.first - 4) : found.first]):
        return  # "the shiplap is turned out"
    if found.row.items[found.first].concept == "CLINCHED" and any(item.concept == "TABS" for item in found.row.items[max(0, found.first - 2) : found.first]):
        return  # "lengüetas dobladas por dentro": those of a collar
    yield found.claim("staple_clinch", "outward" if outward else "inward", group="w")


def _clinched(found: Found):
    """ "stapled outward": which way the legs go; "stapled in" says nothing of it."""
    if found.row.words(found.at("to"), found.at("to") + 1).lower() in ("outward", "outwards", "inward", "inwards"):
        yield from _clinch(found)


def _legs_go(found: Found):
    """ "the staple legs are folding in": which way they are clinched."""
    way = found.at("o") if "o" in found.match.re.groupindex else found.at("to")
    if found.row.words(way, way + 1).lower().split()[0] in words_of("small.legs_go"):
        yield from _clinch(found)


def _folded(found: Found):
    """ "folded the legs in", "bent the staple legs out": but not the legs of a trestle or a tee, where no staples are spoken of."""
    if found.row.words(found.at("o"), found.at("o") + 1).lower().split()[0] in (*words_of("small.legs_go"), "bent") and any(item.concept in ("STAPLES", "STAPLE", "STAPLED") for item in found.row.items):
        yield from _clinch(found)


def _hangers_apart(found: Found):
    """ "hanger spacing on run five is four feet" """
    item = found.item("n")
    if 12 <= item.value.value <= _SPACING_MOST["hanger_spacing"]:
        yield found.claim("hanger_spacing", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))


def _spread_out(found: Found):
    """ "eight inch ones, but I stretched them out to eighteen inches": how far apart by now."""
    if found.row.words(found.at("v"), found.at("v") + 1).lower().split()[-1] in words_of("small.spread"):
        yield from _spacing(found)


SPACING_FRAMES = (
    Frame("(?P<v>WORD|MOVE|LAID|OPENING|EVERY) IT (?:OUT|APART) (?:TO|ON|HEDGE){1,2} (?P<w>(?P<n>LEN)) (?!BY|LONG|BACK)", _spread_out),
    Frame("K_HANGER EVERY (?:ON|OF|RUN|NUM|DET|GENERIC|COMMA){0,5} BE (?P<w>(?P<n>LEN)) (?!BY)", _hangers_apart),
    Frame("(?P<w>TABS (?:FILL|AND|COMMA){0,4} (?:BENT|CLINCHED) TIGHT?)", _flag("tabs_bent")),
    Frame("(?P<w>(?:BENT|CLINCHED) (?:FILL|EVERY|EACH){0,2} (?:TABS|TAB_WORD))", _flag("tabs_bent")),
    Frame("(?P<w>(?P<n>LEN) FILL? LONG? TABS) (?!(?:FILL)? (?:BENT|CLINCHED)|(?:FILL|ALL|EACH|COMMA){0,3} LEN LONG)", _tab_length),  # not "four cross tabs, eight inches long"
    Frame("TABS [^STOP QUERY]{0,14} (?:COMMA|AND) (?P<w>ONLY? (?P<n>LEN) (?:EACH|LONG))", _tab_length),
    Frame("TABS (?:I|WORD|MOVE|CUT_TO|CUT_LENGTH|OF|ON|FILLER) [^STOP QUERY COMMA NUM LEN TABS STAPLES]{0,4} (?:NUM|MARKED)? (?P<w>BE (?P<n>LEN)) (?=SEP|$|AND|LONG)", _tab_length),  # "the tabs I cut for straight 4 were eight inches"
    Frame("TABS [^STOP QUERY STAPLES STAPLED]{0,14} (?:COMMA|AND) (?P<w>(?:EACH|BOTH|IT|BE) BE? (?P<n>NUMB) LONG?) (?=SEP|$|AND|BUT)", _tab_length),
    Frame("TABS [^STOP QUERY]{0,12} (?:COMMA|WITH|OF) (?P<w>(?P<n>LEN) (?P<o>WORD)) (?=SEP|$|BUT|AND)", lambda found: _tab_length(found) if found.row.words(found.at("o"), found.at("o") + 1).lower() in words_of("small.strips") else []),
    Frame("TABS (?:FILL|OF|COMMA|ON|ONLY){0,6} (?<!ON)(?P<w>(?P<n>NUMB) LONG?) (?!APART|BY|SIDE_WORD|SIDE|OF|WORD IT|FROM APART)", _tab_length),
    Frame("TABS [^STOP QUERY NUM LEN SIZE]{0,16} (?P<w>(?P<n>LEN) LONG)", _tab_length),
    Frame("TABS [^STOP QUERY TAPE TAPED STAPLES STAPLED LEN]{1,12} COMMA (?P<w>(?P<n>LEN)) (?=COMMA EVERY)", _tab_length),  # "cross tabs on the end with no flap, eight inches, every foot"
    Frame("TABS [^STOP QUERY TAPE TAPED STAPLES STAPLED LEN]{0,12} COMMA OF (?P<w>(?P<n>LEN)) (?=SEP|$|AND|EVERY)", _tab_length),  # "tabs porque no había flap, de ocho pulgadas"
    Frame("(?P<o>SCREWS) (?:SEATED|IN|MOVE_IN|FILL){0,3} (?P<w>ON? (?P<n>NUM|LEN)) (?=WITH|WASHERS|AND|SEP|$) (?!WITH? WASHERS (?:SEP|$))", _spacing),
    Frame("(?P<w>(?P<n>NUMB) WASHERS)", _length("washer_size", most=6)),
    Frame("WASHERS (?:FILL|OF|COMMA){0,2} (?P<w>(?P<n>NUMB)) (?!SCREWS|STAPLES|OF SIDE_WORD|ON|SIDE_WORD|EVERY)", _length("washer_size", most=6)),
    *LEGS,
    Frame("(?P<w>STAPLES (?:FILL|HEDGE|WORD){1,3} (?P<g>AROUND|ON) (?P<n>LEN)) (?!LEG|SIDE|SIDE_WORD|BACK|TABS)", _lie_at),
)
FRAMES = (
    Frame("(?P<k>NUM) (?P<w>(?P<o>STAPLES|STAPLE|SCREWS|TABS) (?:EVERY|OF|TO|IN|BY) DET? (?P<n>LEN|WORD)) (?!BY|BACK|LONG)", _so_many_in),
    Frame("(?P<k>NUM) (?P<w>(?P<o>STAPLES|STAPLE|SCREWS) (?P<n>LEN)) (?=SEP|$|AND|ON|ALL)", _so_many_a_foot),
    Frame("(?P<k>NUM) (?P<w>(?P<o>STAPLES|STAPLE|TABS|SCREWS) (?P<c>IN|OVER|ON) (?:DET|HEDGE){0,2} (?P<n>LEN)) (?!BY|BACK|LONG|KIND|BOARD|SIZE|STAPLES|LEG|APART|SIDE)", _so_many_in),
    Frame("(?P<w>STAPLED (?P<k>NUM) (?:OF|TO) DET? (?P<n>LEN|WORD)) (?!BY|BACK|LONG)", _so_many_in),
    Frame("(?P<w>EVERY (?:FILL|OF|ON){0,2} (?P<n>NUMB) (?:APART)?) (?!OF (?:IT|DET|THIS|JOINT|EACH|BOTH))", _spacing),
    Frame("(?:ON|OF)? (?P<w>(?P<n>NUMB) (?:EVERY)? APART)", _spacing),
    Frame("LEG COMMA? (?P<a>ON) (?P<w>(?P<n>LEN)) (?!TABS|BOARD|BY)", _legs_at),
    Frame("(?P<o>SCREWS) (?:FILL|WORD){0,3} (?P<w>(?P<a>TO) (?P<n>NUM)) (?=SEP|$|AND|WITH|NO|BUT)", _screws_at),  # "tornillos a doce"
    Frame("(?P<w>(?P<n>NUMB) EVERY) (?!NUMB)", _spacing),
    Frame("(?:^|(?<=SEP)|(?<=AND)) (?P<a>TO) (?P<w>(?P<n>NUM|LEN) DET? (?P<o>STAPLES|STAPLE)) (?=SEP|$|AND)", _at_spacing),  # "a dos las grapas"
    Frame("(?P<o>STAPLES|STAPLED) (?:FILL|IN|OUT|INSIDE|OUTSIDE){0,3} STOP (?P<a>TO) (?P<w>(?P<n>LEN)) (?=SEP|$)", _at_spacing),
    Frame("(?P<w>EVERY COMMA HEDGE TO? (?P<n>LEN))", _spacing),  # "muy separadas, como a cuatro pulgadas"
    Frame("(?P<w>(?P<n>NUMB) (?P<b>WORD) (?:DET|THIS|EACH)? (?P<o>STAPLES|STAPLE|SCREWS|TABS|K_HANGER))", _between),
    Frame("(?:STAPLES|STAPLED|TABS) [^STOP QUERY]{0,8} (?P<w>(?P<n>NUMB) (?P<b>WORD) (?:IT|EACH|BOTH)) (?!SIDE|JOINT|SCREWS|K_HANGER)", lambda found: _spacing(found) if found.row.words(found.at("b"), found.at("b") + 1).lower() in ("between", "entre") else []),
    Frame("(?:STAPLED|STAPLES) (?:FILL)? (?P<w>ON (?P<n>NUMB)) (?!SIDE_WORD|SIDE)", _spacing),
    Frame("(?:STAPLED|STAPLES) (?:FILL|OF){0,2} (?P<w>(?P<a>TO) (?P<n>LEN|FRAC|NUM)) (?!BY|BACK|SIDE_WORD|KIND)", _at_spacing),
    Frame("(?<=REDID) (?:FILL)? (?P<w>ON (?P<n>LEN|FRAC|NUM)) (?!SIDE_WORD|SIDE)", _spacing),
    Frame("(?P<o>SCREWS|TABS|K_HANGER) (?:FILL|OF|WITH|COMMA){0,2} (?P<w>ON (?P<n>LEN|FRAC|NUM)) (?!SIDE_WORD|SIDE|(?:BE|HAVE) (?:HEDGE|FILLER)? NUMB)", _spacing),
    Frame("(?P<w>(?P<a>TO) (?P<n>LEN)) (?=DET? STAPLES)", _at_spacing),
    Frame("TO LEN DET? (?P<w>STAPLES) (?=SEP|$|AND)", lambda found: [found.claim("stapled", True, group="w")] if found.row.words(found.first, found.first + 1).lower() == "a" else []),
    Frame("(?<!NUM SIDE_WORD) STAPLED (?P<w>(?P<n>LEN)) (?!STAPLES|LEG|TAPE|CLOSURE|MARK181|GAP|LONG)", _spacing),
    Frame("(?<=NUM SIDE_WORD) STAPLED (?P<w>(?P<n>LEN)) (?!STAPLES|LEG|TAPE|TAPED|CLOSURE|MARK181|GAP|LONG)", _spacing),  # "four sides stapled, four taped" counts them again
    Frame("(?P<w>CLINCHED (?:FILL|TO|ON|DET|BOTH){0,2} (?P<to>OUT|IN|OUTSIDE|INSIDE))", _clinch),
    Frame("(?P<w>(?P<to>OUT|IN) CLINCHED)", _clinch),
    Frame("STAPLES (?:EVERY|NUM|LEN|FRAC|COMMA|FILL){0,5} (?P<w>BENT (?:TIGHT|FILL){0,2} (?P<to>OUT|OUTSIDE|IN|INSIDE))", _clinch),  # "grapas cada dos todas dobladas para afuera"
    Frame("(?:STAPLE|STAPLES|LEG) (?:FILL|MOVE_IN|MOVE|LEG|ON){0,3} (?P<w>(?P<to>OUT|IN))", _clinched),
    Frame("(?:STAPLE|STAPLES) (?:FILL|LEN|FRAC|NUM|EVERY|APART|LEG|ON|OF|WITH|HAVING|COMMA|STOP|I|KIND|MARKED){0,14} (?:AND|COMMA|STOP|WITH) (?:BE|ALL|IT|BOTH|LEG){0,3} (?P<w>(?P<to>OUTSIDE|INSIDE))", _legs_go),  # "the staples are half inch and turned out"
    Frame("STAPLED (?P<w>(?P<to>OUT|IN)) (?=ON|EVERY|SEP|$|LEN|AND|WITH)", _clinched),
    Frame("LEG (?:FILL|WORD|MOVE|MOVE_IN|K_STRAIGHT|IN|AND){0,7} (?P<w>(?P<o>WORD) (?P<to>INSIDE|OUTSIDE))", _legs_go),
    Frame("STAPLES (?:ME|HAVE|ONLY|FILL){0,4} (?P<w>MOVE (?P<n>LEN|FRAC) HIGH)", _length("staple_leg", most=Fraction(3, 2))),
    Frame("(?:STAPLED|STAPLES) (?:FILL|COMMA|WITH|AND|EVERY|LEN|NUM|OF|FRAC){0,7} (?P<w>LEG (?:FILL|CLINCHED|MOVE_OUT){0,2} (?P<to>OUT|IN|OUTSIDE|INSIDE)) (?!DET? (?:LEN|FRAC|BOARD|NUM|WORD))", _clinch),
    Frame("(?:STAPLE|STAPLES) (?P<w>LEG (?:FILL|I|WORD){0,3} (?P<o>WORD|MOVE|CLINCHED|BENT|TURNING|LEVEL|SHOWS|DAMAGE|UNDONE|MOVE_IN|MOVE_OUT) (?P<to>OUT|IN|OUTSIDE|INSIDE))", _legs_go),
    Frame("(?P<w>(?P<o>WORD|CLINCHED|BENT|TURNING|LAID) (?:DET|ALL|OF|BOTH){0,2} (?:STAPLE|STAPLES)? LEG (?P<to>IN|INSIDE|OUT|OUTSIDE)) (?!DET? (?:LEN|FRAC|NUM|BOARD))", _folded),  # "folded the staple legs in"
    Frame("(?P<w>LEG COMMA (?P<to>OUTSIDE|INSIDE)) (?=SEP|$|AND)", _clinch),  # "half inch legs, turned out"
    Frame("COMMA DET? (?P<w>LEG (?:BE|ALL){0,2} (?P<to>OUT|OUTSIDE)) (?=SEP|$|AND|EVERY)", _clinch),  # "quarter inch staples in it, legs out"
    Frame("(?<!NO)LEN EVERY (?:ON|FROM|WITH) DET? (?P<w>STAPLES) (?=SEP|$|AND)", _flag("stapled")),  # "two inch spacing on the staples"
    Frame("(?P<w>LEG (?:(?:ON|OF) DET? STAPLES)? (?:FILL){0,2} (?P<to>OUTSIDE|INSIDE))", _legs_go),
    Frame("(?P<w>LEG (?:(?:ON|OF) DET? STAPLES)? (?:FILL|ALL){0,2} (?P<o>WORD|CLINCHED|BENT|TURNING) (?P<to>IN|OUT)) (?=SEP|$|WORD OF|AND|BUT|NOT|ON)", _legs_go),  # "legs folding in instead of out"
    Frame("(?P<w>STAPLES (?:FILL|BOTH|ALL){0,3} (?P<o>WORD|CLINCHED|BENT|TURNING) (?P<to>IN|INSIDE|OUTSIDE)) (?=SEP|$|WORD OF|AND|BUT)", _legs_go),  # "the staples are bending in"
    Frame("(?:STAPLED|STAPLES) (?:EVERY|NUM|LEN|FRAC|COMMA|BUT|FILLER|STOP|DET|IT){0,6} (?P<w>BOTH (?P<o>WORD|CLINCHED|BENT|TURNING) (?P<to>IN|INSIDE)) (?=SEP|$|WORD OF)", _legs_go),  # "stapled every two, but they're all curling in"
    Frame("(?P<w>LEG (?:ON|OF) DET? STAPLES (?:FILL|WORD){0,2} (?P<o>WORD|MOVE|CLINCHED|BENT|TURNING|MOVE_IN|MOVE_OUT) (?P<to>OUT|IN|OUTSIDE|INSIDE))", _legs_go),
    Frame("(?P<w>(?P<n>NUM) (?P<b>WORD) IT) (?=SEP|$)", _between_them),
    Frame("(?P<w>(?P<b>APART) (?:BE|HAVE|WORD|LAID|TAKES|FILL|ME){0,3} OF? (?P<n>NUMB)) (?!SIDE_WORD|SIDE|BY)", _lies_between),
    Frame("(?P<o>K_HANGER) (?:FILL){0,2} (?P<w>TO (?P<n>LEN)) (?=SEP|$|AND|APART)", _spacing),
    Frame("(?P<w>THROUGH (?P<w2>ON (?P<n>NUM|LEN))) (?!SIDE_WORD|SIDE)", lambda found: [found.claim("staple_spacing", found.item("n").value.value, group="w2", uses=("n",))] if found.item("n").value.value <= 12 else []),
    *OF_A_SIDE,
    Frame("STAPLES OUT? (?:FILL)? (?P<w>TO (?:HEDGE)? (?P<n>NUM|LEN)) (?=SEP|$|TO|AND|APART)", _spacing),
    Frame("(?:STAPLE|STAPLES|STAPLED) [^STOP QUERY TAPE TAPED SIZE EVERY APART TABS SCREWS]{0,10} COMMA (?P<w>(?P<n>LEN)) (?=ALL? AROUND|SEP|$)", _lone_spacing),
    Frame("(?P<w>(?P<n>LEN) STAPLE) (?=SEP|$)", _lone_spacing),
    Frame("(?P<w>UNSTAPLED)", _flag("stapled", False)),
    Frame("(?P<w>STAPLED)", _flag("stapled")),
    Frame("(?P<w>STAPLES (?:MOVE_IN|THROUGH DET? FLAP))", _flag("stapled")),
    Frame("(?P<w>STAPLES) (?=(?:FILL|ON|IN|COMMA|OF|LEN|FRAC|CLINCHED|OUT|OUTSIDE|INSIDE|MOVE|TAKES|SEATED|RUN|WORD){0,5} (?:EVERY|NUMB (?:EVERY)? APART|IN_PLACE|AROUND|ON (?:NUMB|ALL|BOTH|SIDE|SIDES_ALL)))", _flag("stapled")),
    Frame("(?P<w>STAPLES) (?=(?:FILL){0,2} TO (?:LEN|FRAC|NUM) (?:SEP|$|AND|APART))", lambda found: found.row.words(found.last, min(found.last + 3, len(found.row.items))).lower().split()[:1] in (["a"], ["quedaron"], ["van"], ["sí"], ["si"]) and [found.claim("stapled", True, group="w")] or []),
    Frame("(?P<w>STAPLES) (?=(?:IN|ON) (?:DET|KIND|NUMBER|FITTING|NUM|MARKED){1,4} (?:FILL){0,2} (?:EVERY|NUMB APART))", _flag("stapled")),  # "staples in straight 31 are every two"
    Frame("(?P<w>STAPLES) (?=IN (?:SEP|$)|(?:ALL)? (?:DOWN|UP|OVER) (?:BOTH|SIDE|SIDES_ALL|ALL|DET))" , _flag("stapled")),
    Frame("(?P<w>REDID DET? STAPLES)", _flag("stapled")),
    Frame("(?P<w>STAPLES) (?P<f>BE (?:FILLER|IN_PLACE|TIGHT|ALL){0,2} (?:FILLER|IN_PLACE|TIGHT)) (?=SEP|$)", lambda found: [found.claim("stapled", True, group="w", weak=True)]),
    Frame("(?P<w>STAPLES) (?=EVERY|ON|IN_PLACE|AND (?:TAPE (?!BE? (?:ON|IN) DET? (?:WORD|BUILDING|ROOM|PLACE_NOUN)|BE? ON_BENCH)|TAPED|RUBBED))", _flag("stapled")),
    Frame("(?P<w>EVERY (?:STAPLE|STAPLES) BE? (?:IN|IN_PLACE|FILLER))", _flag("stapled")),
    Frame("(?P<b>HAVE|WITH|BE) (?:FILL){0,2} (?P<w>STAPLES) (?!NUM|OF LEN|COUNTED)", _bears),
    Frame("(?P<w>STAPLES) (?:FILL){0,3} (?P<b>BE|IN_PLACE) (?=SEP|$|FILLER|IN_PLACE|AND)", _bears),
    Frame("(?P<b>BE) (?:FILL){0,2} IN_PLACE (?:FILL){0,2} (?P<w>STAPLES)", _bears),
    Frame("(?:NUMB) (?:APART|EVERY) (?P<w>STAPLES)", _flag("stapled")),
    Frame("(?P<w>(?:WITH|THROUGH|ON) DET? FLAP)", _flag("staple_flap")),
    Frame("(?P<w>DET? FLAP)", lambda found: [found.claim("staple_flap", True, group="w", weak=True)]),
    Frame("(?P<w>TABS) (?! (?:FILL|AND){0,3} (?:BENT|CLINCHED|TIGHT)|(?:OF|ON|OFF|FROM|DET){1,3} K_COLLAR)", lambda found: [found.claim("cross_tabs", True, group="w")]),
)
