"""Sizes, lengths, and the measures that belong to one kind: offsets, angles, throats, collars."""

from __future__ import annotations

import re

from logbook.reading.clauses.claims import Claim, Found, Frame, TakenBack, claim, taken_back, unit_of
from logbook.reading.words.phrasing import table_of, words_of

_MOST_SIDE = 192  # inches; two boards end to end. A bare number above it is no side of a duct of rigid board
ANGLES = (90, 45, 30, 60, 22, 15)


def sizes(row, taken: set[int]) -> list[Claim]:
    """Every size as a claim `(size)` with its role where one was said; which end it is of is settled later."""
    made: list[Claim] = []
    for frame in _SIZE_FRAMES:
        for match in row.find(frame.pattern):
            found = Found(row, match)
            at = found.at("size")
            if at in taken:
                continue
            taken.add(at)
            if frame.build == "size" and _was_to_be(row, at):
                continue
            made.extend(_size(found, at, frame.build))
    return made


_TO_BE = re.compile(r"\b(?:iba|iban|era para|tenía que ser|debía ser|querían|pedían)(?: a ser)? (?:de |una de |uno de )?$")


def _was_to_be(row, at: int) -> bool:
    """ "Iba de veintidós por diez y yo la hice de veintidós por doce": what it was to be, where another size says what it is."""
    said = row.text[max(0, row.items[at].start - 24) : row.items[at].start].lower()
    return _TO_BE.search(said) is not None and any(item.concept == "SIZE" for item in row.items[at + 1 :])


def _size(found: Found, at: int, role: str):
    row, item = found.row, found.row.items[at]
    size = item.value
    if size.unit is None and max(size.pair) > _MOST_SIDE:
        return  # numbers that ran together or a unit left unsaid: in doubt, so it is not said
    backs = tuple(
        TakenBack(b.value.pair if b.concept == "SIZE" else (b.value.value,), b.start, b.end) for b in item.took_back
    )
    end = at + 1
    first = at
    if role == "branch_size" and found.at("after") is not None:
        end = found.at("after") + 1
    one = claim(row, f"({role})", size.pair, first, end, uses=(at,), said_unit=size.unit if size.unit in ("ft", "mm", "cm", "m") else None, took_back=backs)
    yield one
    if size.long is not None:
        start = size.long_start
        yield Claim("length", size.long.value, at, at + 1, start, item.end, said_unit=size.long.unit if size.long.unit in ("ft", "mm", "cm", "m") else None)


_SIZE_FRAMES = (
    Frame("(?P<size>SIZE) (?P<after>BRANCH_WORD) (?=(?:FILL|OF){0,2} SIZE INLET)", "branch_size"),  # "a twelve by six tap off the twenty-four by twelve trunk"
    Frame("SIZE BRANCH_WORD (?:FILL|OF){0,2} (?P<size>SIZE) INLET (?!(?:FILL|OF){0,2} SIZE)", "inlet_size"),
    Frame("(?:BRANCH_WORD|K_BRANCH) (?:NUM|MARKED|FITTING|NUMBER)? COMMA? (?P<size>SIZE) (?=COMMA? FROM (?:OF|DET){0,2} SIZE INLET)", "branch_size"),
    Frame("(?:BRANCH_WORD|LEG) (?:FILL|OF|ON|COMMA|SIZE_WORD|OPENING|AND|TO){0,3} NUM? (?P<size>SIZE)", "branch_size"),
    Frame("(?:WITH|HAVE|AND|COMMA) (?:FILL){0,2} (?P<size>SIZE) (?P<after>BRANCH_WORD|K_BRANCH|LEG) (?!NUM|MARKED|NUMBER|OF SIZE|COMMA NUM COMMA)", "branch_size"),
    Frame("(?P<size>SIZE) ON DET? (?P<after>BRANCH_WORD|LEG)", "branch_size"),
    Frame("(?P<size>SIZE) (?P<after>BRANCH_WORD|LEG) (?!(?:FILL|OF){0,2} (?:SIZE|NUM)|(?:OF|ON) DET? (?:STAPLES|STAPLE))", "branch_size"),
    Frame("(?:K_BRANCH) (?:BE|OF|FILL|HAVE){1,3} (?P<size>SIZE)", "branch_named"),
    Frame("OUTLET (?:FILL|OF|ON|COMMA|SIZE_WORD|END|TO){0,3} (?P<size>SIZE) (?! ON DET? INLET|INLET (?:SEP|$|AND|WITH))", "outlet_size"),
    Frame("INLET (?:FILL|OF|ON|COMMA|SIZE_WORD|END){0,3} (?P<size>SIZE) (?! ON DET? OUTLET|OUTLET (?:SEP|$|AND|WITH))", "inlet_size"),
    Frame("(?P<size>SIZE) (?:ON)? DET? (?:OUTLET)", "outlet_size"),
    Frame("(?P<size>SIZE) (?:ON)? DET? (?:INLET)", "inlet_size"),
    Frame("SIZE (?:COMMA)? (?:FROM|OFF) (?:OF|FROM|DET){0,2} (?P<size>SIZE)", "host_size"),
    Frame("(?:FROM|OFF|BRANCH_WORD|OUT|MOVE_OUT) (?:DET|SIDE|SIDE_WORD|OTHER_SIDE|OF|FROM|WORD|OUT){0,5} (?P<size>SIZE)", "trunk_size"),
    Frame("TO (?:FILL|HEDGE|DET|SIZE_WORD|OUTLET){0,2} NUM? (?P<size>SIZE)", "to_size"),
    Frame("(?P<size>SIZE)", "size"),
)


def _length_of(name, group="w", kinds=(), least=0, most=10**6):
    def build(found: Found):
        item = found.item("n")
        value = item.value.value
        if least <= value <= most:
            backs = taken_back((item,), lambda back: back.value.value)
            yield found.claim(name, value, group=group, uses=("n",), said_unit=unit_of(item), took_back=backs, kinds=kinds)

    return build


def _lone_length(found: Found):
    """ "Straight ten, eight by eight, thirty-six inches": of a straight a lone measure behind its size."""
    item, row = found.item("n"), found.row
    if any(one.concept in ("K_HANGER", "EVERY") for one in row.items[row.sentence_start(found.first) : found.first]):
        return  # "hanger spacing on straight 9 is nine feet"
    if item.value.value >= 8 and all(back.concept == "LEN" and back.value.value >= 8 for back in item.took_back):
        yield found.claim("length", item.value.value, group="w", said_unit=unit_of(item), kinds=("straight",), weak=True)


def _same_trunk(found: Found):
    """ "Eight by six off the same trunk": the size is the branch's."""
    if found.row.words(found.at("s"), found.at("s") + 1).lower().split()[-1] in ("same", "mismo", "misma"):
        yield found.claim("(same_trunk)", None, group="w")


_A_RADIUS_ONE = (["radius", "one"], ["radiused", "one"])


def _throat(found: Found):
    """ "A radius ninety" is a turn, no radius, and "the radius one" a piece."""
    said = found.row.words(found.at("n") - 1, found.at("n") + 1).lower().split()
    if not (said in _A_RADIUS_ONE or found.item("n").concept == "NUM" and found.item("n").value.value in (90, 45)):
        yield from _length_of("throat_radius")(found)


def _throat_behind(found: Found):
    """ "codo de noventa el radio ..." tells how far it turns."""
    if not (found.item("n").concept == "NUM" and found.item("n").value.value in (90, 45)):
        yield from _length_of("throat_radius")(found)


def _should_be(found: Found):
    """ "I told you thirty long, should've been thirty-six": of what was told wrong right before."""
    before = [item.concept for item in found.row.items[max(0, found.first - 4) : found.first]]
    if {"LONG", "LENGTH"} & set(before):
        yield from _length_of("length", "w", least=4)(found)


def _measures(found: Found):
    """ "mide cuarenta y dos pulgadas" """
    said = found.row.words(found.at("m"), found.at("m") + 1).lower().split()[-1]
    if said in ("mide", "miden") and found.item("n").value.value >= 12:
        yield from _length_of("length", "n", kinds=("straight",))(found)


def _cut_to(found: Found):
    item = found.item("n")
    backs = taken_back((item,), lambda back: back.value.value)
    yield found.claim("cut_to_length", True, group="cut")
    yield found.claim("length", item.value.value, group="n", uses=("n",), said_unit=unit_of(item), took_back=backs)


def _cut(found: Found):
    yield found.claim("cut_to_length", True)


def _cut_there(found: Found):
    """ "cut section 32 to length" """
    if found.row.words(found.at("cut"), found.at("cut") + 1).lower() == "cut":
        yield found.claim("cut_to_length", True, group="cut")


def _offset(found: Found):
    item, over = found.item("n"), found.item("over")
    if item.value.value > 72:
        return
    yield found.claim("offset_by", item.value.value, group="w", uses=("n",), said_unit=unit_of(item),
                      took_back=taken_back((item,), lambda back: back.value.value))  # fmt: skip
    if over is not None:
        yield found.claim("length", over.value.value, group="l", uses=("over",), said_unit=unit_of(over))


def _bare_offset(found: Found):
    """ "Offset nine, five over in thirty": of an offset the way over and its length."""
    item, over = found.item("n"), found.item("over")
    if item.value.value > 72 or over.value.value <= item.value.value:
        return
    yield found.claim("offset_by", item.value.value, group="w", uses=("n",), said_unit=unit_of(item), kinds=("offset",), took_back=taken_back((item,), lambda back: back.value.value))
    yield found.claim("length", over.value.value, group="l", uses=("over",), said_unit=unit_of(over), kinds=("offset",))


def _lone_diameter(found: Found):
    """ "Collar three. Eight inch. Tabs bent.": of a collar a lone measure is its width."""
    item = found.item("n")
    led = found.first and found.row.items[found.first - 1].concept not in ("COMMA", "STOP", "QUERY")
    if led and not any(one.concept == "K_COLLAR" or one.concept == "COUNTED" and table_of("small.several").get(found.row.text[one.start : one.end].lower()) == "collar" for one in found.row.items):
        return
    if any(one.concept in ("TAPED", "TAPE", "CLOSURE", "MARK181") for one in found.row.items[max(0, found.first - 2) : found.first]):
        return  # "taped it, three inch"
    if 3 <= item.value.value <= 36:
        yield found.claim("collar_diameter", item.value.value, group="w", said_unit=unit_of(item), kinds=("collar",), weak=True, took_back=taken_back((item,), lambda back: back.value.value))


def _angle(found: Found):
    item = found.item("n")
    value = item.value.value
    bare = item.concept == "NUM"
    if value in ANGLES or (not bare and 0 < value <= 90):
        if not bare or value in (90, 45):
            yield found.claim("(angle)", value, uses=(), took_back=taken_back((item,), lambda back: back.value.value))


def _cut_the_piece(found: Found):
    """ "Corté la ochenta y cinco a veintiocho pulgadas": the piece's number between the cut and its length."""
    if found.row.words(found.at("cut"), found.at("cut") + 1).lower() in words_of("small.cut_words") and found.item("n").value.value >= 4:
        yield from _cut_to(found)


def _pieces(found: Found):
    value = found.item("n").value.value
    named = found.row.words(found.at("p"), found.at("p") + 1).lower()
    if found.item("p").concept == "FITTING" and not named.startswith(("piece", "pieza", "part")):
        return  # "eight fittings"
    if not any(item.concept in ("K_ELBOW", "DEG", "K_WYE") or (item.concept == "NUM" and item.value.value in ANGLES) for item in found.row.items[max(0, found.first - 40) : found.last + 20]):
        return  # "quedan ocho piezas"
    ahead = found.row.items[found.last].concept if found.last < len(found.row.items) else ""
    told = any(item.concept in ("K_ELBOW", "K_WYE", "NUM", "DEG") for item in found.row.items[: found.first])
    if not told and (ahead == "STOP" or _counts_the_work(found.row, found.last)):
        return  # "Two pieces. Straight five, elbow six.", "Three pieces today. Elbow 161 is good."
    if 2 <= value <= 9 and value.denominator == 1:
        yield found.claim("elbow_pieces", int(value), group="w", uses=("n",), kinds=("elbow",))


def _counts_the_work(row, at: int) -> bool:
    """Whether nothing of a piece stands between these words and the stop, or pieces of two kinds do."""
    behind = [item.concept for item in row.items[at : row.sentence_end(at)]]
    kinds = [concept for concept in behind if concept.startswith("K_")]
    return set(behind) <= _OF_THE_DAY or len(set(kinds)) > 1


_OF_THE_DAY = frozenset("FILLER WORD LATER DAY HAVE BUILT BE DET IT THIS NOT_DONE DONE I".split())


def _footer(found: Found):
    """ "A full four footer", "it's a two footer": a length as the trade names a section."""
    if found.row.words(found.at("n"), found.at("n") + 1).lower().endswith("footer"):
        yield from _length_of("length")(found)


FRAMES = (
    Frame("(?P<w>(?P<n>NUM) (?P<p>FITTING|PIECE_COUNT)) (?=COMMA? (?:FILL|HEDGE)? (?:NUM|DEG|K_ELBOW)|NUMBER|SEP|$|OF|WITH|AND|VANES|STAPLED|TAPED|SIZE|RUN|ME FILL|FILLER|ME|NO|LEFT_OUT)", _pieces),
    Frame("(?P<cut>CUT_TO) (?:FILL|TO|ON|SIDE_WORD){0,2} (?P<n>NUMB) (?!BY|APART|IN NUM|ON NUM)", _cut_to),
    Frame("(?P<cut>CUT_TO|CUT_LENGTH) (?:DET|FITTING|KIND|NUMBER|FILL){1,3} (?:MARKED|NUM LETTER?)? TO (?P<n>NUMB) (?!BY|APART)", _cut_to),
    Frame("(?P<cut>CUT_LENGTH) (?:FILL|TO|ON|COMMA){0,3} (?P<n>NUMB) (?!BY|APART|WIDE|TABS|STAPLES)", _cut_to),
    Frame("(?P<cut>WORD) (?:DET|KIND|FITTING|NUMBER){1,3} (?:NUM|MARKED) TO (?P<n>NUMB) (?!BY|APART|K_HANGER)", _cut_the_piece),
    Frame("CUT_TO (?:DET|K_STRAIGHT|IT|FITTING){1,3} TO (?P<n>NUMB)", _length_of("length", "n")),
    Frame("(?P<cut>MOVE) (?:DET|FITTING|KIND|NUMBER){1,3} (?:NUM|MARKED) TO LENGTH", _cut_there),
    Frame("CUT_LENGTH|CUT_TO (?!OUT|DET (?:WORD|BUILDING|PLACE_NOUN|ROOM)|NUM IN NUM|NUM ON NUM|RATIO)", _cut),
    # the offset before the length, which may follow it
    Frame("(?P<w>(?:OFFSETS|K_OFFSET) (?:FILL|OF|BY|OVER|HEDGE){0,3} (?P<n>NUMB)) (?:(?:TO|ON) DET? SIDE)? COMMA? (?:OVER|IN|ON){1,2} (?:FILL|OF|DET){0,2} (?P<l>(?P<over>NUMB) LONG?) (?!SIDE_WORD)", _offset),
    Frame("(?:(?<=STOP)|(?<=COMMA)|(?<=K_OFFSET NUM)) (?:FILL|MOVE|WORD){0,2} (?P<w>(?P<n>NUMB)) (?:ON|IN|OVER) (?:FILL|OF|ONLY){0,2} (?P<l>(?P<over>NUMB) LONG?) (?=SEP|$|AND|MALE|FEMALE|ME)", _bare_offset),
    Frame("(?<!NUM)(?<!LEN)(?<!FRAC)(?P<w>OVER HEDGE? (?P<n>NUMB)) (?:IN|ON|BACK|OVER) (?:FILL|OF|ONLY){0,2} (?P<l>(?P<over>NUMB) LONG?) (?!BY|SIDE_WORD|STAPLES)", _bare_offset),
    Frame("(?P<w>(?P<n>NUMB) (?:TO|ON) DET? SIDE) (?:IN|OVER) (?:FILL|OF|ONLY){0,2} (?P<l>(?P<over>NUMB) LONG?) (?!BY|SIDE_WORD|STAPLES)", _bare_offset),
    Frame("(?P<w>(?P<n>NUMB) (?:MOVE_UP|MOVE_DOWN)) (?:COMMA|AND|IN|OVER|ON|WITH){1,2} (?:FILL|OF){0,2} (?P<l>(?P<over>NUMB) (?:LONG|RUN)?) (?!BY|SIDE_WORD|STAPLES)", _bare_offset),  # "six inch rise, twenty-four run"
    Frame("(?:^|(?<=SEP)) (?:MOVE|FILL){0,2} (?P<w>(?:UP|DOWN|MOVES) (?P<n>NUMB)) COMMA (?P<l>(?P<over>NUMB) LONG) (?!BY|SIDE_WORD|STAPLES)", _bare_offset),
    Frame("(?P<w>(?P<n>NUMB) OFFSETS) (?:SEP|AND|FILL|IN|ON|OVER){0,3} (?P<l>(?P<over>NUMB) LONG?) (?!BY|SIDE_WORD|STAPLES)", _bare_offset),
    Frame("(?P<w>(?P<n>NUMB) OVER) (?:AND|COMMA){1,2} (?P<l>(?P<over>NUMB) OF? (?:LONG|LENGTH))", _bare_offset),
    Frame("(?P<w>(?P<n>NUMB) OVER) (?:IN|ON)? (?:FILL|OF){0,2} (?P<l>(?P<over>NUMB) LONG?) (?!BY|SIDE_WORD|STAPLES)", _bare_offset),
    Frame("K_OFFSET (?:NUM|MARKED) (?:COMMA? SIZE)? COMMA? (?P<w>MOVE (?:FILL|BY|OVER){0,2} (?P<n>NUMB)) (?:IN|OVER|ON) (?P<l>(?P<over>NUMB))", _offset),
    Frame("K_OFFSET (?:NUM|MARKED) (?:COMMA? SIZE)? COMMA? (?P<w>OVER (?:FILL)? (?P<n>NUMB)) COMMA (?:IN|ON) (?P<l>(?P<over>NUMB))", _offset),
    Frame("(?P<w>(?P<n>LEN) OF? (?:K_OFFSET|OFFSETS)) (?:IN|OVER|ON) (?:FILL|OF|DET|HEDGE){0,2} (?P<l>(?P<over>NUMB) LONG?) (?!BY|SIDE_WORD|STAPLES)", _offset),
    Frame("(?P<w>OFFSETS (?:FILL|OF|BY|HEDGE|TO|DET|SIDE){0,3} (?P<n>NUMB)) (?!BY)", _length_of("offset_by", most=72)),
    Frame("(?<!WASHERS WORD)(?<!WASHERS LAID)(?<!WASHERS BE)(?<!TAPE LAID)(?P<w>(?P<n>NUMB) OVER) (?=SEP|$)", _length_of("offset_by", most=72, kinds=("offset",))),
    Frame("(?<!NUM)(?<!LEN)(?<!FRAC)(?P<w>OVER HEDGE? (?P<n>LEN)) (?=SEP|$|TO)", _length_of("offset_by", most=72, kinds=("offset",))),
    Frame("(?<=SEP) (?P<w>OVER (?P<n>NUMB)) (?=SEP|$)", _length_of("offset_by", most=72, kinds=("offset",))),  # "14 by 12. Over 6, length 48"
    Frame("(?P<w>K_OFFSET (?:OF|BY|FILL){1,2} (?P<n>NUMB)) (?!BY)", _length_of("offset_by", most=72)),
    Frame("(?P<w>K_OFFSET (?P<n>LEN)) (?!BY|LONG)", _length_of("offset_by", most=72)),
    Frame("(?P<w>(?P<n>LEN) (?:K_OFFSET|OFFSETS))", _length_of("offset_by", most=72)),
    Frame("(?<=KIND NUM) (?P<w>LONG (?:FILL|OF){0,2} (?P<n>NUMB)) (?!BY|LONG)", _length_of("length", least=4)),
    Frame("(?P<w>(?P<n>NUMB) HEDGE? LONG) (?!(?<=KIND NUM LONG) OF? (?:NUM|LEN))", _length_of("length", least=1)),
    Frame("(?:^|(?<=SEP)|(?<=SIZE)|(?<=AND)) (?:FILL|OF)? (?P<w>LONG (?:FILL|OF){0,2} (?P<n>NUM)) (?=SEP|$|AND|STAPLED|TAPED|HAVE|STAPLES|WITH)", _length_of("length", least=4)),
    Frame("(?P<w>(?P<m>BE|TAKES) (?P<n>LEN)) (?!WIDE|HIGH|BY|APART|TABS|STAPLES|LEG|GAP|BOARD|THROAT|ROUND|BACK|ON)", _measures),
    Frame("K_STRAIGHT (?:NUM|MARKED) (?:COMMA? RUN NUM)? (?:COMMA|OF){0,2} HEDGE? (?P<w>(?P<n>LEN)) (?=SEP|$|STAPLED|TAPED|CUT_LENGTH)", _lone_length),
    Frame("(?:CUT_LENGTH|CUT_TO) [^STOP QUERY]{0,16} COMMA (?:AND|IT|FILLER){0,2} BE (?P<w>(?P<n>NUMB)) (?=FILLER? (?:SEP|$))", _length_of("length", least=6)),
    Frame("(?:DET|FILLER|WORD|KIND|COMMA|BE) (?P<w>(?P<n>LEN)) (?=SEP|$|AND|KIND)", _footer),
    Frame("(?:SAME_AS|SAME_THING) [^STOP QUERY]{0,8} (?:ONLY|EXCEPT|BUT) (?:IT|BE|FILLER|DET){0,3} (?P<w>(?P<n>LEN) LONG?) (?=SEP|$)", _length_of("length", least=8)),
    Frame("(?P<w>(?:FROM|OFF) DET? (?P<s>WORD|SAME_THING) INLET) (?!SIZE|NUM)", _same_trunk),
    Frame("SHOULD_HAVE (?P<w>(?P<n>NUM|LEN)) (?=SEP|$)", _should_be),
    Frame("K_STRAIGHT (?:NUM|MARKED) BE (?P<w>(?P<n>LEN)) (?=SEP|$|AND|STAPLED|TAPED)", _lone_length),
    Frame("(?:NUM|MARKED) BE DET K_STRAIGHT (?:COMMA? (?:ON)? RUN NUM)? COMMA HEDGE? (?P<w>(?P<n>LEN)) (?=SEP|$|STAPLED|TAPED|AND)", _lone_length),  # "number 4 is a straight, four foot"
    Frame("TAPE SAYS (?P<w>(?P<n>NUMB)) (?!BY|BACK|APART)", _length_of("length", least=4, kinds=("straight",))),
    Frame("(?P<w>LENGTH (?:FILL|OF|HEDGE|COMMA|ON){0,3} (?P<n>NUMB))", _length_of("length")),
    Frame("(?P<w>LONG (?:FILL|OF){0,2} (?P<n>LEN))", _length_of("length", least=4)),
    Frame("(?P<w>(?P<n>LEN)) OF? K_STRAIGHT (?!BY|EACH|ON|IN|BOTH)", _length_of("length", least=6)),
    Frame("SIZE COMMA? (?:FULL_LENGTH|WORD)? (?P<w>(?P<n>LEN)) (?=SEP|$|STAPLED|TAPED|AND|EACH|HEDGE)", _lone_length),
    Frame("SIZE K_STRAIGHT COMMA (?P<w>(?P<n>LEN)) (?=SEP|$|STAPLED|TAPED|AND)", _lone_length),
    Frame("SIZE COMMA RUN NUM SERVICE? COMMA (?P<w>(?P<n>LEN)) (?=STOP|$)", _lone_length),
    Frame("SIZE STOP (?P<w>(?P<n>LEN)) (?=STOP|$)", _lone_length),
    Frame("SIZE COMMA (?:FULL_LENGTH|WORD)? (?P<w>(?P<n>NUM)) (?=SEP|$)", _lone_length),
    Frame("SIZE (?P<w>(?P<n>NUM)) (?=STAPLED|TAPED)", _lone_length),  # in text that runs on
    Frame("(?P<w>(?P<n>NUMB) FILL? THROAT) (?!(?:IN|INSIDE|OF|BE|HEDGE|ONLY|FILLER){0,4} NUMB)", _throat_behind),
    Frame("(?<!SQUARE)(?P<w>THROAT (?:IN|INSIDE)? (?:FILL|OF|HEDGE|THROAT|COMMA){0,3} (?P<n>NUMB)) (?!BY)", _throat),
    Frame("(?P<w>(?P<n>LEN|NUM|FRAC) (?:ROUND){0,2} FILL?) (?:HIGH)? K_COLLAR", _length_of("collar_diameter", "n", least=3, most=40)),
    Frame("(?P<w>(?P<n>NUMB) (?:LEN)? ROUND) (?!WASHERS)", _length_of("collar_diameter", most=40)),
    Frame("(?<!LEN)(?P<w>ROUND (?:OF|BE){0,2} (?P<n>NUMB)) (?!(?:OF|DET|WORD|FROM){0,3} (?:TABS|TAB_WORD|STAPLES|SCREWS|WASHERS|SIDE_WORD))", _length_of("collar_diameter", least=3, most=40)),
    Frame("K_COLLAR (?:NUM|MARKED)? COMMA? OF (?P<w>(?P<n>NUM)) (?=SEP|$|WITH|AND|BE|TAPES)", _length_of("collar_diameter", "n", least=3, most=40)),
    Frame("K_COLLAR (?:OF|COMMA|FILL|NUM|NUMBER){1,4} (?P<w>(?P<n>LEN)) (?!WIDE|LONG|SCREWS|APART)", _length_of("collar_diameter", "n", least=3, most=40)),
    Frame("(?:^|(?<=SEP)|(?<=BE)|(?<=BOTH)|(?<=FILLER)) (?:FILL){0,2} (?P<w>(?P<n>LEN)) (?=SEP|$|NUMBER|TABS)", _lone_diameter),
    Frame("(?P<n>DEG)", _angle),
    Frame("(?<!RUN)(?<!NUMBER)(?<!EVERY)(?P<n>NUM) (?!BY|LONG|BACK|BOARD|TEMP)", _angle),
)
