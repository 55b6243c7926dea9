"""How long, how wide and how far apart the things of a joint are, where the measure stands apart from its thing: "the tabs … they're eight long", "the two-inch stuff".

Read before the piece's own length and offsets, which would take such a measure for theirs.
"""

from __future__ import annotations

from fractions import Fraction

from logbook.reading.clauses.claims import Found, Frame, unit_of
from logbook.reading.words.phrasing import words_of

_NEAR = 12  # items between a roll and its tape


def _length(name: str, most):
    def build(found: Found):
        item = found.item("n")
        if 0 < item.value.value <= most and not (name.startswith("cross_tab") and (_of_a_collar(found) or _another_between(found))):
            yield found.claim(name, item.value.value, group="w", uses=("n",), said_unit=unit_of(item))

    return build


def _another_between(found: Found) -> bool:
    """Whether another piece is named between the tabs and the measure, which is then its own: "…, tabs bent, straight four, ten long"."""
    items = found.row.items[found.first : found.at("n")]
    return any(item.concept.startswith("K_") and items[at - 1].concept not in ("ON", "OF", "IN") for at, item in enumerate(items))


def _of_a_collar(found: Found) -> bool:
    """A collar's tabs are its own, and are counted."""
    return any(item.concept == "K_COLLAR" for item in found.row.items[max(0, found.first - 60) : found.last])


def _of_damage(found: Found) -> bool:
    """ "a gouge an inch and a half across, got a strip of tape" """
    near = [item.concept for item in found.row.items[max(0, found.at("n") - 8) : found.at("n")] if item.concept in ("DAMAGE", "TAPE", "CLOSURE", "MARK181", "STOP")]
    return near[-1:] == ["DAMAGE"]


def _width(found: Found):
    if _of_damage(found):
        return
    if 1 <= found.item("n").value.value <= 6:
        yield from _length("tape_width", 6)(found)


def _of_the_tape(found: Found):
    """ "I slit the tape down the middle, so it's an inch and a half wide": where tape is what was named last."""
    for at in range(found.first - 1, max(-1, found.first - 2 * _NEAR), -1):
        concept = found.row.items[at].concept
        if concept in ("TAPE", "TAPED", "MARK181", "CLOSURE") and not found.row.is_blank(at):
            yield from _length("tape_width", 6)(found)
            return
        if concept in ("STOP", "QUERY", "DAMAGE", "SIZE", "GAP", "PANEL", "WASHERS", "FLAP", "BOARD", "OPENING", "JOINT") or concept.startswith("K_"):
            return


def _its_width(found: Found):
    """ "Heat tape was used for 63, straight, and its width is two and a half": of the tape that the sentence tells of."""
    row = found.row
    tells = any(row.items[at].concept in ("TAPE", "MARK181", "CLOSURE") and not row.is_blank(at) for at in range(row.sentence_start(found.first), found.first))
    if tells and row.words(found.first, found.first + 1).lower() == "its" and 1 <= found.item("n").value.value:
        yield from _length("tape_width", 6)(found)


def _roll(found: Found):
    """ "the two-inch stuff", "a two and a half inch roll": where tape is spoken of in the sentence."""
    if not words_of("small.rolls").isdisjoint(found.row.words(found.at("o"), found.at("o") + 1).lower().split()) and _tape_near(found):
        yield from _width(found)


def _tape_near(found: Found) -> bool:
    for step in (-1, 1):
        at = found.first if step < 0 else found.last - 1
        while 0 <= at + step < len(found.row.items) and abs(at + step - found.first) <= _NEAR:
            at += step
            concept = found.row.items[at].concept
            if concept in ("STOP", "QUERY"):
                break
            if concept in ("TAPE", "TAPED", "CLOSURE", "MARK181") and not found.row.is_blank(at):
                return True
    return False


_SPACED = {"TABS": ("cross_tab_spacing", 48), "STAPLES": ("staple_spacing", 12), "STAPLED": ("staple_spacing", 12), "SCREWS": ("screw_spacing", 48)}
_OTHERS = ("GAP", "DAMAGE", "WASHERS", "K_HANGER", "TIE_RODS", "QUERY", "BRANCH_WORD")


def _apart_first(found: Found):
    """ "cross tabs …. From one to the next is sixteen inches": the word for it before the measure, of the thing that was named last."""
    items = found.row.items
    for at in range(found.first - 1, max(-1, found.first - 2 * _NEAR), -1):
        concept = items[at].concept
        if concept in _SPACED and not found.row.is_blank(at):
            yield from _length(*_SPACED[concept])(found)
            return
        if concept in _OTHERS or concept.startswith("K_") and items[at - 1].concept in ("STOP", "QUERY"):
            return


def _they_are(found: Found):
    if found.row.words(found.at("b"), found.at("b") + 1).lower() in ("they're", "they are", "each", "all", "was", "were", "are", "is"):
        yield from _length("cross_tab_length", 48)(found)


def _both(found: Found):
    """ "cross tabs 8 x 18 o.c." """
    if _of_a_collar(found):
        return
    long, apart = found.item("z").value.pair
    yield found.claim("cross_tab_length", long, group="w", uses=("z",))
    yield found.claim("cross_tab_spacing", apart, group="w", uses=("z",))


def _one_in_each(found: Found):
    """ "a staple a foot" """
    if found.row.words(found.at("n"), found.at("n") + 1).lower().startswith(("a ", "per ", "every ", "each ")):
        yield from _length("staple_spacing", 24)(found)
        yield found.claim("stapled", True, group="s", weak=True, hedged=False)


_THINGS = {"TABS": "cross_tab_spacing", "STAPLES": "staple_spacing", "STAPLE": "staple_spacing", "STAPLED": "staple_spacing", "SCREWS": "screw_spacing", "K_HANGER": "hanger_spacing"}
_FARTHEST = {"cross_tab_spacing": 48, "staple_spacing": 24, "screw_spacing": 48, "hanger_spacing": 240}


def _between(found: Found):
    """ "Distance between them, fourteen inches", "cross tabs, ten inches between": of the things named last."""
    word = found.row.words(found.at("o"), found.at("o") + 1).lower()
    if word != "between" or found.at("d") is not None and found.row.words(found.at("d"), found.at("d") + 1).lower() not in ("distance", "space", "spacing", "spread", "room"):
        return
    stops = 0
    for at in range(found.last - 1, max(-1, found.first - 2 * _NEAR), -1):
        concept = found.row.items[at].concept
        stops += concept in ("STOP", "QUERY")
        if concept in _THINGS and not found.row.is_blank(at):
            yield from _length(_THINGS[concept], _FARTHEST[_THINGS[concept]])(found)
            return
        if stops > 2 or concept in ("GAP", "JOINT", "PANEL", "DAMAGE", "SIZE", "VANES"):
            return


_POINTING = ("turned in", "facing in", "faces in", "points in", "pointing in", "turned out", "facing out", "faces out", "points out", "pointing out", "inward", "outward")


def _points(found: Found):
    """ "the staples turned in on me" """
    if found.row.words(found.at("to"), found.at("to") + 1).lower() in _POINTING:
        yield found.claim("staple_clinch", "outward" if found.item("to").concept == "OUTSIDE" else "inward", group="w")


def _fold(found: Found):
    """ "the staples fold in" """
    if found.row.words(found.at("g"), found.at("g") + 1).lower().startswith(("fold", "curl", "bend", "bent", "hook", "roll", "point", "lay", "lie")):
        yield found.claim("staple_clinch", "outward" if found.item("to").concept in ("OUT", "OUTSIDE") else "inward", group="w")


def _clinch(found: Found):
    if found.row.words(found.at("c"), found.at("c") + 1) in (":", "=", "-", "–", "/"):
        outward = found.item("to").concept in ("OUT", "OUTSIDE")
        yield found.claim("staple_clinch", "outward" if outward else "inward", group="w")


def _cut_down(found: Found):
    """ "ripped the three inch tape down to two": how wide it is by now."""
    if found.row.words(found.at("t"), found.at("t") + 1).lower().split()[0] in ("down", "into"):
        yield from _width(found)
        yield found.claim("(nothing)", None, group="o", uses=("o",)) if found.match.end("o") > found.match.start("o") else found.claim("(nothing)", None, group="t")


def _halved(found: Found):
    """ "cut the three inch tape in half": no longer so wide, and how wide is not said."""
    if found.item("n").value.value == Fraction(1, 2):
        yield found.claim("(nothing)", None, group="o", uses=("o", "n"))


FRAMES = (
    Frame("JOINT (?:FILL|SIDE|SIDE_WORD){0,3} MOVE_OUT UP? (?:FILL|HEDGE){0,2} (?P<w>(?P<n>FRAC)) (?=ON|IN|SEP|$|AND)", _length("gap", 1)),
    Frame("(?P<o>(?:NUMB)?) (?:TAPE|CLOSURE|MARK181) TAPE? (?P<t>TO) (?:DET|HEDGE)? (?P<w>(?P<n>NUMB)) (?=SEP|$|AND|WIDE)", _cut_down),
    Frame("(?P<w>(?P<o>NUMB) (?:TAPE|CLOSURE|MARK181) TAPE? IN (?P<n>FRAC)) (?=SEP|$|AND|LONG|DOWN)", _halved),
    Frame("(?:TAPE|CLOSURE|MARK181) (?:FILL|ME|WORD|ONLY|COMMA|ON|HAVING){0,7} (?P<w>(?P<n>NUMB) (?:FILL)? WIDE)", _width),
    Frame("(?:TAPE|CLOSURE|MARK181) WIDE (?:ON|OF|IN) DET? (?:KIND|FITTING|GENERIC)? NUMBER? (?:NUM|MARKED) (?:BE|COMMA|HEDGE){1,3} (?P<w>(?P<n>LEN|FRAC)) (?=SEP|$|AND|BUT)", _width),  # "the tape width on 34 is two inches"
    Frame("(?:IT|BE){1,2} (?:HEDGE|ONLY|FILLER){0,2} (?P<w>(?P<n>NUMB) WIDE) (?=SEP|$|AND|BUT)", _of_the_tape),
    Frame("APART (?:BE|HEDGE|IT|COMMA){1,3} (?P<w>(?P<n>LEN|FRAC|NUM)) (?=SEP|$|AND|BUT)", _apart_first),
    Frame("DET WIDE (?:BE|COMMA|HEDGE){1,2} (?P<w>(?P<n>NUMB)) (?=SEP|$|AND|BUT)", _its_width),
    Frame("TAPED (?:HEDGE|ONLY|FILLER|AROUND|ALL|ON){0,3} (?P<w>(?P<n>NUMB) WIDE) (?=SEP|$|AND|BUT|ON|WITH)", _width),  # "taped two inches wide"
    Frame("(?:TAPE|CLOSURE|MARK181) (?:ON|OF|AROUND) DET? (?:SIDE|BRANCH_WORD|JOINT|END|BACK|THROAT|SIDE_WORD|FLAP|WORD){1,2} (?:OF KIND (?:NUM|MARKED))? (?:FILL|ONLY){0,3} (?P<w>(?P<n>NUMB) WIDE) (?=SEP|$|AND|BUT)", _width),
    Frame("(?:TAPE|CLOSURE|MARK181) (?:ON|OF|AROUND) DET? (?:SIDE|BRANCH_WORD|JOINT|END|BACK|THROAT|SIDE_WORD|FLAP|WORD){1,2} (?:OF KIND (?:NUM|MARKED))? (?:BE|HEDGE|ONLY){1,3} (?P<w>(?P<n>LEN|FRAC)) (?=SEP|$|AND|BUT)", _width),
    Frame("(?P<w>(?P<n>NUMB) (?P<o>WORD|COUNTED|OVER)) (?!NUMB)", _roll),
    Frame("(?:TAPE|CLOSURE|MARK181) BE DET (?P<w>(?P<n>NUMB)) (?=SEP|$)", _width),
    Frame("(?:TAPE|CLOSURE|MARK181) TAPE? SIZE_WORD (?:HEDGE|FILLER|ONLY)? (?P<w>(?P<n>NUMB)) (?!BY|SIDE_WORD)", _width),
    Frame("(?:TAPE|CLOSURE|MARK181) COMMA (?:ME|ONLY|FILLER|HAVE|WORD|WITH|ALL|HAVING){1,5} DET (?P<w>(?P<n>LEN)) (?=SEP|$)", _width),
    Frame("WIDE OF IT (?:COMMA|BE|HEDGE){0,2} (?P<w>(?P<n>LEN|FRAC|NUM)) (?=SEP|$|AND|BUT)", _of_the_tape),
    Frame("(?P<d>WORD|EVERY) (?P<o>WORD) (?:DET|IT|TABS|STAPLES|SCREWS|K_HANGER|EACH){1,2} (?:COMMA|BE|HEDGE|FILL|ON){0,3} (?P<w>(?P<n>NUMB)) (?=SEP|$|AND|BUT)", _between),
    Frame("(?P<w>(?P<n>LEN|FRAC) (?P<o>WORD)) (?=SEP|$|IT|EACH|DET|AND|BUT|TABS|STAPLES|SCREWS|K_HANGER)", _between),
    Frame("(?:STAPLE|STAPLES) LENGTH (?:COMMA|BE|HEDGE|FILL|OF){0,3} (?P<w>(?P<n>FRAC|LEN))", _length("staple_leg", 1.5)),
    Frame("TABS (?:[^STOP QUERY SIZE SIDE]){0,10} LENGTH (?:COMMA|BE|HEDGE|FILL|OF){0,3} (?P<w>(?P<n>NUMB)) (?!BY|KIND)", _length("cross_tab_length", 48)),
    Frame("TABS (?:COMMA|STOP) (?P<w>(?P<n>LEN)) COMMA (?=LEN|EVERY|NUM|HEDGE|ON)", _length("cross_tab_length", 48)),
    Frame("(?P<w>STAPLES (?:FILL){0,2} (?P<to>INSIDE|OUTSIDE))", _points),
    Frame("(?P<w>STAPLES (?:FILL|CLINCHED){0,2} (?P<g>WORD|BENT) (?P<to>IN|OUT|INSIDE|OUTSIDE)) (?=SEP|$|ON|AND|BUT)", _fold),
    Frame("(?P<w>LEG (?:FILL|ON|OF|STAPLES|STAPLE|ONLY|SIZE_WORD|WORD){0,6} (?P<n>FRAC|LEN)) (?!STAPLES|APART|BOARD|BACK|TAPE|COUNTED)", _length("staple_leg", 1.5)),
    Frame("TABS (?:[^STOP QUERY SIZE SIDE]){0,10} (?P<w>(?P<n>NUMB) LONG) (?!KIND)", _length("cross_tab_length", 48)),
    Frame("TABS (?:[^STOP QUERY]){0,14} STOP (?P<b>BE|EACH|ALL) (?:FILL){0,2} (?P<w>(?P<n>NUMB) LONG)", _they_are),
    Frame("TABS (?:[^STOP QUERY SIZE]){0,6} COMMA (?:BUT)? (?:ON? NUM)? (?P<b>BE) (?:HEDGE|ONLY|FILLER){0,2} (?P<w>(?P<n>NUMB)) (?=COMMA|STOP|$)", _they_are),
    Frame("TABS (?:ON|OF) (?:DET|KIND|FITTING|NUMBER){0,2} (?:NUM|MARKED) (?:BE|ONLY|HAVE){1,2} (?P<w>(?P<n>LEN)) (?!APART|BY)", _length("cross_tab_length", 48)),  # "cross tabs on seventy-nine are six inches"
    Frame("TABS FROM (?:DET|KIND|FITTING|NUMBER){0,2} (?:NUM|MARKED) (?:COMMA|DET|IT|BE|ONLY|HAVE){1,4} OF (?P<w>(?P<n>LEN)) (?!APART|BY)", _length("cross_tab_length", 48)),  # "los tabs del 98 son de seis pulgadas"
    Frame("TABS ONLY (?P<w>(?P<n>NUMB) LONG?) (?!APART|BY)", _length("cross_tab_length", 48)),
    Frame("(?:NUM|LEN) LONG? TABS ON (?P<w>(?P<n>NUM|LEN)) (?!LONG|SIDE|SIDE_WORD)", _length("cross_tab_spacing", 48)),
    Frame("TABS (?:FILL|WORD|MOVE|MOVE_OUT|EVERY){0,2} OUT? TO (?P<w>(?P<n>LEN))", _length("cross_tab_spacing", 48)),
    Frame("TABS (?:FILL|COMMA){0,2} (?P<w>(?P<z>SIZE)) APART", _both),
    Frame("TABS (?:FILL|OF){0,2} (?:LEN|NUM) LONG? ON (?P<w>(?P<n>LEN|NUM)) (?!SIDE|SIDE_WORD)", _length("cross_tab_spacing", 48)),
    Frame("(?:STAPLE|STAPLES|STAPLED) SLOPE (?:BE|OF|COMMA)? (?P<w>(?P<n>NUMB))", _length("staple_spacing", 24)),
    Frame("(?P<s>STAPLE) (?P<w>(?P<n>LEN)) (?!STAPLES)", _one_in_each),
    Frame("(?P<w>CLINCHED (?P<c>COMMA) (?P<to>IN|OUT|INSIDE|OUTSIDE)) (?=SEP|$)", _clinch),
)
