"""Tape and mastic: closed with what, how wide, rubbed down, on which surface; and the board itself."""

from __future__ import annotations

import re
from fractions import Fraction

from logbook.reading.stated import tape_laid
from logbook.reading.clauses.claims import Found, Frame, claim, taken_back, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.stated.of_none import of_none
from logbook.reading.words.closure_marks import CLOSURE_OF
from logbook.reading.words.measures import nominal_board
from logbook.reading.words.phrasing import words_of


def _flag(name: str, value: bool = True, **more):
    return lambda found: [found.claim(name, value, group="w", **more)]


def _preheated(found: Found):
    """ "I had no iron to warm it with": what was lacking to do it with tells of no deed."""
    at = found.at("w")
    if not (at > 2 and found.row.items[at - 1].concept == "TO" and any(item.concept in ("NO", "NOT", "NOT_DONE") for item in found.row.items[max(0, at - 5) : at - 1])):
        yield found.claim("preheated", True, group="w")


def _rubbed(found: Found):
    """Not where only the name of the act stands beside words that nobody knows: "the rubdown got botched", "I fudged the rubdown"."""
    row, first, last = found.row, found.first, found.last
    if not words_of("small.rub_names").isdisjoint(row.words(first, last).lower().split()):
        behind = last
        while behind < len(row.items) and row.items[behind].concept in ("IT", "DOWN", "TAPE"):
            behind += 1
        behind = behind + 1 if behind < len(row.items) and row.items[behind].concept in ("BE", "HAVE") else None
        verb = first - 2 if first and row.items[first - 1].concept == "DET" else first - 1
        verb -= verb > 0 and row.items[verb].concept in ("ON", "OVER", "OF", "UP", "OUT", "THROUGH")
        mine = verb == 0 or verb > 0 and row.items[verb - 1].concept in ("I", "STOP", "COMMA", "AND", "BUT")
        before = row.words(max(0, first - 3), first).lower().split()[-3:]
        scarce = any(word in words_of("small.scarce") for word in before) and row.items[first - 1].concept in ("DET", "WORD", "OF", "ON", "NUM")
        if scarce or behind is not None and _is_strange(row, behind + (row.items[min(behind, len(row.items) - 1)].concept == "DET")) or mine and _is_strange(row, verb):
            return
    yield found.claim("rubbed_down", True, group="w")


def _is_strange(row: Row, at: int) -> bool:
    return 0 <= at < len(row.items) and row.items[at].concept in ("WORD", "NO", "SCREWS", "FRAC") and row.words(at, at + 1).lower() not in words_of("small.of_good_work")


def _mark(found: Found):
    value = found.item("m").value
    if _NOT_IT.match(found.row.text[found.item("m").end : found.item("m").end + 60].lower().replace("’", "'")):
        return  # "the 181A-P was locked in the trailer"
    yield found.claim("closure_mark", value, group="m", took_back=taken_back(found.items("m"), lambda back: back.value))
    yield found.claim("closure", CLOSURE_OF[value], group="m", took_back=taken_back(found.items("m"), lambda back: CLOSURE_OF[back.value]))
    on = _ON.match(found.row.text[found.item("m").end : found.item("m").end + 10].lower())  # "I put 181A-P on with no preheat"
    at = found.at("m") - 1
    while at > 0 and found.row.items[at].concept in ("DET", "TAPE", "FILLER", "OF") and not (on and tape_laid.lays(found.row, at)):
        at -= 1
    behind = found.at("m") + 1
    while behind < len(found.row.items) and found.row.items[behind].concept in ("DET", "FILLER", "I"):
        behind += 1
    after = behind > found.at("m") + 1 and behind < len(found.row.items) and found.row.items[behind].concept == "HAVE" and tape_laid.lays(found.row, behind)  # "la 181A-P la puse directo"
    laid = after or at >= 0 and (tape_laid.lays(found.row, at) or found.row.words(at, at + 1).lower() in ("con", "con la", "usando", "por"))
    if laid and value[-1:] in "PH":
        yield found.claim("taped", True, group="m", weak=True)


_ON = re.compile(r" ?(?:tape )?on\b")
_NOT_USED = re.compile(r"(?:instead of|rather than|in place of|thought about|thinking of|thinking about|considered|and not|but not|wanted|en vez del?|en lugar del?|a falta del?|no (?:lo |la |le )?(?:sell|cerr)(?:é|e|amos) con)(?: the| any| that| using| some| la| el)*$")
_NOT_IT = re.compile(r"^ ?(?:stuff |tape |roll )?(?:was|is|'s) (?:still |all )?(?:locked|left|stuck|buried|gone|in the|at the|on the truck|back (?:in|at))|^ ?(?:stuff |tape )?(?:(?:that|which|everybody|everyone|they|people|folks|you|(?:some|those|these|the other) guys)[\w' ]{1,40} )?(?:isn't|wasn't|is not|was not) (?:what|on|the|in)|^ ?(?:stuff |tape )?(?:not what|was in mind|in mind)|^,? (?:el otro |la otra )?(?:ya )?se (?:me |nos )?qued(?:ó|o|aron) en |^,? (?:ya )?no (?:me|nos) (?:qued(?:aba|aban|ó|o|aron)|alcanz(?:ó|o|aba|aron)|sobr(?:ó|o|aba))\b(?! bien)|^,? (?:ya |todavía |nunca )*(?:no |nunca )(?:me |nos |la |se )*(?:lleg(?:ó|aba|a)|trajeron|surtieron|mandaron|entregaron|había llegado)\b|^,? (?:yo )?(?:ya )?no (?:le |se le )?(?!(?:llev|tra[eí]|tien)\w* (?:(?:el |la |un |ni |su )?(?:n[uú]mero|marca|sello|letr|list|nombre|imp)))(?:llev|trae|traj|traí|tien|tuv|hay|hub|había|puse|puso|pusimos|pusieron|eché|echamos|usé|usamos|ocup|us[oó]\b)")


def _closure(found: Found):
    item = found.item("c")
    before = found.row.text[max(0, item.start - 40) : item.start].lower().rstrip()
    behind = found.row.text[item.end : item.end + 60].lower().replace("’", "'")
    if _NOT_USED.search(before) or _NOT_IT.match(behind):
        return  # "used 181A-P instead of mastic"
    yield found.claim("closure", item.value, group="c")
    if item.concept == "CLOSURE":
        yield found.claim("taped", True, group="c", weak=True)


def _taped_to(found: Found):
    """ "Taped it to the metal", "frame taped to the board": to what is no piece."""
    if found.row.words(found.first, found.first + 1).lower().startswith("tape"):
        yield found.claim("taped", True, group="w")


def _width_of_mark(found: Found):
    """ "181A-P two and a half, inch board": a bare number right behind the mark of a tape, where it is a width that tape has."""
    if Fraction(3, 2) <= found.item("n").value.value <= 4:
        yield from _width(found)


def _half_of_mark(found: Found):
    """ "Tape 181A-P, two and a half.": behind a comma only what counts nothing else."""
    if found.item("n").value.value == Fraction(5, 2):
        yield from _width(found)


def _width(found: Found):
    item = found.item("n")
    if 1 <= item.value.value <= 6:
        yield found.claim("tape_width", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))


def _narrow(found: Found):
    if found.item("n").value.value <= 4:  # what is wider is the piece
        yield from _width(found)


def _width_of_it(found: Found):
    """How wide the tape is, unless it is how long a piece of it is: "un pedazo de cinta de cuatro pulgadas en el hoyo"."""
    at = found.at("n") - 2
    before = found.row.text[max(0, found.row.items[at].start - 14) : found.row.items[at].start].lower()
    if not re.search(r"\b(?:pedazos?|cachos?|tiras?|tiritas?|parches?|tramos?) de $", before):
        yield from _width(found)


def _of_a_roll(found: Found):
    """ "taped with the skinny stuff, inch and seven-eighths" """
    if found.row.words(found.at("o"), found.at("o") + 1).lower() in ("stuff", "roll", "rolls", "kind", "one"):
        yield from _width(found)


def _board(found: Found):
    item = found.item("n")
    value = nominal_board(item.value)
    if Fraction(1, 2) <= value <= 3:
        yield found.claim("board_thickness", value, group="w", uses=("n",), said_unit=unit_of(item))


def _board_behind(found: Found):
    """A number and then the board, unless it tells how far apart the staples are: "cada dos el tablero es de una pulgada"."""
    spaced = found.first > 0 and found.row.items[found.first - 1].concept == "EVERY"
    behind = found.row.items[found.last].concept if found.last < len(found.row.items) else ""
    if not spaced or behind not in ("BE", "OF", "LEN", "EI", "NUM"):
        yield from _board(found)


def _class(found: Found):
    value = found.item("n").value.value
    if found.item("n2") is not None:
        value = value * 100 + found.item("n2").value.value
    if value in (475, 800, 1400):
        yield found.claim("board_class", int(value), group="w", uses=("n", "n2"))


def _temperature(found: Found):
    item = found.item("n")
    first = found.row.sentence_start(found.first)
    of_air = item.value.value >= _OF_AIR and any(one.concept in ("AIR", "AIR_TEMP") for one in found.row.items[first : found.last])
    name = "air_temperature" if found.item("air") is not None or of_air or _behind_air(found) else "surface_temperature"
    unit = "°C" if item.value.unit == "°C" else None
    if -40 <= item.value.value <= 600 and (name == "air_temperature" or item.value.value < _HOT):
        yield found.claim(name, item.value.value, group="w", uses=("n",), said_unit=unit)


def _behind_air(found: Found) -> bool:
    """ "Supply air in straight 201 is 140 F": what the clause is about."""
    items = found.row.items
    for at in range(found.at("n") - 1, max(-1, found.at("n") - 9), -1):
        concept = items[at].concept
        if concept in ("COMMA", "STOP", "QUERY", "FACING", "BOARD", "TEMP"):
            return False
        if concept == "AIR_TEMP" or concept == "SERVICE" and found.row.words(at, at + 1).lower().endswith(" air"):
            return True
    return False


_OF_AIR = 200  # degrees; told in a sentence about the air, it is how hot that is
_HOT = 150  # degrees; no facing is so warm


def _hundreds_warm(found: Found):
    """ "The air in there is two seventy degrees": two hundred and seventy, as no number of a piece stands behind "is"."""
    said, rest = found.item("hundreds"), found.item("n").value.value
    if said is None:
        yield from _temperature(found) if rest >= _HOT else ()
        return
    hundreds = said.value.value
    if 1 <= hundreds <= 9 and hundreds.denominator == 1 and 10 <= rest <= 99:
        unit = "°C" if found.item("n").value.unit == "°C" else None
        yield found.claim("air_temperature", hundreds * 100 + rest, group="w", uses=("hundreds", "n"), said_unit=unit, corrects=True)


def _it_was(found: Found):
    """ "It was sixty-eight on the facing when the tape went on", "it was sixty-five in there"."""
    if 20 <= found.item("n").value.value <= 130 and found.item("n").value.value.denominator == 1:
        yield from _temperature(found)


def _read_off(found: Found):
    """ "The board was in the cold room and it read forty-four": of what is cold or warm, on a thermometer."""
    row, at = found.row, found.at("o")
    of_board = any(item.concept in ("TEMP", "BOARD", "FACING", "AIR_TEMP") for item in row.items[max(0, at - 14) : at])
    warmth = any(item.concept in ("TEMP", "DEG", "TEMP_F") for item in row.items[max(0, at - 14) : at])
    if of_board and warmth and row.words(at, at + 1).lower() in words_of("small.reads") and 20 <= found.item("n").value.value <= 200:
        yield from _temperature(found)


_WARMING = re.compile(r"\b(?:pre-?heat\w*|warm\w*|heat(?:ed|ing|er| gun)?|iron(?:ed|ing)?|cold|chilly|freez\w+|thermometer|torch)\b")


def _cold(found: Found):
    """ "it was only thirty-nine out there, and I skipped the preheat": a bare number beside words of cold and of warming."""
    row, at = found.row, found.at("n")
    first, last = at, at
    first = row.sentence_start(first)
    while last < len(row.items) - 1 and row.items[last + 1].concept not in ("STOP", "QUERY"):
        last += 1
    before = row.items[at - 1].concept
    lead = row.items[at - 2].concept if at > 1 else ""
    if before == "ON" and lead in ("STAPLED", "STAPLES", "EVERY", "TABS") or row.items[at].value.unit is not None:
        return
    if row.words(at - 1, at).lower().split()[-1] in words_of("small.worked") or any(item.concept in ("DEG", "TEMP_F") for item in row.items[first : last + 1]):
        return  # "it was forty degrees when I did 51"
    if 15 <= found.item("n").value.value <= 60 and _WARMING.search(row.words(first, last + 1).lower()):
        yield from _temperature(found)


def _by_now(found: Found):
    """ "It was twenty-five degrees, now it's seventy": the present one counts."""
    item, first = found.item("n"), found.at("n")
    said = found.row.words(found.at("f"), found.at("f") + 1).lower().split()
    warm = any(i.concept in ("DEG", "TEMP_F") for i in found.row.items[max(0, first - 14) : first])
    if said[-1:] in (["now"], ["ahora"], ["ya"]) and warm and 20 <= item.value.value <= 130:
        yield found.claim("surface_temperature", item.value.value, group="w", uses=("n",), corrects=True)


def _dirty(found: Found):
    """ "wiped it, still a little dusty": what it is now counts."""
    said = found.row.words(max(0, found.first - 1), found.last).lower()
    begin = found.first
    while begin > 0 and found.row.items[begin - 1].concept not in ("STOP", "QUERY", "COMMA", "BUT", "AND"):
        begin -= 1
    if words_of("small.no_duct").intersection(re.findall(r"[a-z]+", found.row.words(begin, found.first).lower()) if begin < found.first else ()):
        return  # "my hands are greasy"
    behind = found.row.text[found.row.items[found.last - 1].end :][:40].lower().lstrip(" ,.y")
    if behind.startswith(tuple(words_of("small.took_it_off"))) or (words_of("small.rooms") | words_of("small.no_duct")).intersection(word.strip(".,;") for word in behind.split()[1:2]):
        return  # "traía aceite, se lo quité", "todo empolvado el cuarto"
    clean, first = _denied(found.row, found.first)
    if clean is not None:
        yield claim(found.row, "surface_clean", clean, first, found.last, corrects="still" in said)


def _denied(row: Row, at: int) -> tuple[bool | None, int]:
    """ "It wasn't dusty", "not at all greasy" are clean; "not too dusty" says neither; all else is dirty. And where that begins."""
    before = at - 1
    while before > 0 and at - before < 4 and row.items[before].concept in ("DET", "WORD", "FILLER", "ON", "ALL"):
        before -= 1
    if (none := of_none(row, at)) is not None:
        return True, none
    if before > 0 and row.items[before].concept == "BE" and row.items[before - 1].concept == "NOT":
        return None, at  # "no estaba empolvado": before something was done about it, or at all
    if before < 0 or row.items[before].concept != "NOT":
        return False, at
    return True if words_of("small.at_all").issuperset(row.words(before + 1, at).lower().split()) else None, at


def _wiped(found: Found):
    """ "it was dusty, wiped it", "The facing was dusty. Wiped it.": what was done about it counts."""
    first = found.row.sentence_start(found.first)
    first = found.row.sentence_start(first - 1) if first > 1 else first
    soiled = any(item.concept == "DIRTY" or not words_of("small.soils").isdisjoint(found.row.words(at, at + 1).lower().split()) for at, item in enumerate(found.row.items[first : found.first], first))
    yield found.claim("surface_clean", True, group="w", corrects=soiled)


_ELBOWS = "K_ELBOW|K_WYE"
_TEMPS = "(?:DEG|TEMP_F)"
BOARD_FRAMES = (
    # the board before the tape: "inch board", "475 board"
    Frame("(?P<w>(?P<n>NUM) (?:FILL)? (?:EI|BOARD) (?:BOARD|EI)?)", _class),
    Frame("(?P<w>(?P<n>NUM) (?P<n2>NUM) (?:EI|BOARD) (?:BOARD|EI)?)", _class),
    Frame("(?P<w>(?P<n>NUM) (?P<t>TEMP))", lambda found: _class(found) if found.row.words(found.at("t"), found.at("t") + 1).lower().startswith("board") else ()),  # "on 800 board at half an inch"
    Frame("(?P<w>(?P<n>LEN|NUM|FRAC) (?:NUM)? (?:FILL)? BOARD)", _board_behind),
    Frame("(?P<w>(?P<n>LEN) OF BOARD)", _board),
    Frame("(?:BOARD|PANEL) (?:EI|FILLER)? NUM OF (?P<w>(?P<n>LEN|FRAC)) (?=SEP|$|AND|STAPLED|TAPED)", _board),  # "board 800 de pulgada", "board clase 475 de una pulgada"
    Frame("(?:NUM|EI) BOARD COMMA (?P<w>(?P<n>LEN)) (?=SEP|$|STAPLED|TAPED)", _board),  # "fourteen hundred board, inch and a half"
    Frame("(?P<w>(?:BOARD|PANEL) OF (?P<n>NUM)) (?=SEP|$)", _board),
    Frame("(?P<w>(?:BOARD|PANEL) (?:FILL|OF|IN){0,3} (?P<n>LEN)) (?!TAPES|OF? STATIC)", _board),
    Frame("(?P<w>BOARD OF (?P<n>LEN)) (?=TAPES{1,2} (?:OF|IN|WIDE) (?:LEN|NUM|FRAC))", _board),  # "tablero de pulgada y media cinta 181A-P de tres pulgadas": the tape has a width of its own
    Frame("BOARD (?:OF|IN|ON) DET? (?:KIND|FITTING) NUMBER? (?:NUM|MARKED) BE OF? (?P<w>(?P<n>LEN)) (?!TAPES)", _board),
    Frame("(?:BOARD|EI|PANEL) (?:FILL|OF|COMMA){0,2} (?P<w>(?P<n>NUM) EI?)", _class),
)
FRAMES = (
    Frame("(?P<w>(?P<n>DEG)) COMMA? (?:FILL|ME|AND){0,4} PREHEATED", _temperature),  # "forty-five degrees, so I preheated it"
    Frame(f"TEMP (?:BE|ON|HEDGE|ONLY|FILLER){{0,3}} (?P<w>(?P<n>DEG)) (?!{_ELBOWS})", _temperature),
    Frame(f"BOARD (?:BE|ON|HEDGE|ONLY|FILLER){{1,3}} (?P<w>(?P<n>DEG)) (?!{_ELBOWS})", _temperature),  # "board at sixty degrees"
    Frame("TAPED OF (?P<w>(?P<n>NUM|LEN)) (?=SEP|$|AND|WIDE)", _width),
    Frame("TAPED (?:COMMA|WITH|IN){1,2} (?P<w>(?P<n>LEN)) ON (?:DET|ALL){0,2} (?:SIDE|BACK|OTHER_SIDE|SIDES_ALL|NUM SIDE_WORD)", _width),  # "taped, three inch on three sides"
    Frame("TAPED WITH DET? OF (?P<w>(?P<n>LEN)) (?=SEP|$|AND)", _width),  # "encintado con la de tres pulgadas"
    Frame("BOARD (?:FILL|COMMA){0,2} (?P<w>(?P<n>NUM) (?P<n2>NUM) EI?)", _class),
    Frame("BOARD (?:FILL|OF|COMMA|LEN){1,4} (?P<w>(?P<n>NUM) EI?)", _class),
    Frame("(?P<w>(?P<n>NUM)) (?=COMMA? LEN BOARD)", _class),
    # widths
    Frame("(?P<w>(?P<n>LEN)) (?:FILL|WIDE|HIGH){0,1} TAPES", _width),
    Frame("(?P<w>(?P<n>NUM)) (?:TAPE|CLOSURE)", _width),
    Frame("TAPES (?:TAPES|FILL|COMMA|IN|OF|WITH|ONLY|BUT){0,4} (?P<w>(?P<n>NUMB) WIDE)", _width),
    Frame("(?:CLOSURE|MARK181) IN (?P<w>(?P<n>LEN)) (?!BOARD|STAPLES|LEG|GAP|LONG|BY|BACK)", _width),
    Frame("TAPES (?:TAPES|FILL){0,2} WIDE (?:OF|BE){0,2} (?P<w>(?P<n>NUMB)) (?!BY)", _width),
    Frame("(?:TAPED|TAPES) (?:WITH|IN)? DET? (?:WORD|FILLER){0,2} (?P<o>WORD) COMMA DET? (?P<w>(?P<n>LEN)) (?=SEP|$|AND)", _of_a_roll),
    Frame("TAPES (?P<v>WORD) HEDGE? (?P<w>(?P<n>NUMB) (?:WIDE|OVER))", _width),
    Frame("TAPES (?:TAPES|OF|COMMA|FITTING|NUMBER|WORD){1,3} (?P<w>(?P<n>LEN)) (?=SEP|$|AND|VOID|WORD (?:NO|NOT|TRADE_NOISE)|TAPE|RUBBED|STAPLES|FROM|OF|MARK181)", _width),
    Frame("TAPES (?:TAPES|OF){0,2} (?P<w>(?P<n>LEN)) (?=SEP|$|ONLY (?:SEP|$)|VOID|WORD (?:NO|NOT|TRADE_NOISE)|IN_PLACE|FILLER|RUBBED)", _width),
    Frame("(?:TAPE|TAPED) COMMA (?P<w>(?P<n>LEN)) (?=COMMA? (?:MARK181|CLOSURE))", _width),
    Frame("MARK181 (?P<w>(?P<n>LEN) WIDE?) (?=ALL|AROUND|ON (?:ALL|BOTH|DET|EACH)|OVER|SEP|$|AND)", _width_of_mark),  # "ran the 181A-P three inch all four sides"
    Frame("(?:TAPED|WITH) (?P<w>(?P<n>NUM) IN) (?=MARK181)", _width_of_mark),  # "taped 3 in 181A-H"
    Frame("WITH DET? (?P<w>(?P<n>NUM)) TAPE? MARK181", _width_of_mark),  # "taped with two and a half 181A-P"
    Frame("MARK181 COMMA (?P<w>(?P<n>NUM)) (?=SEP|$)", _half_of_mark),
    Frame("MARK181 (?P<w>(?P<n>NUM)) (?=COMMA LEN BOARD|SEP RUBBED|RUBBED|AND RUBBED)", _width_of_mark),
    Frame("TAPES (?:FROM|OF|ON) DET? (?:KIND|FITTING|GENERIC) NUMBER? (?:NUM|MARKED)? (?:COMMA|SIZE|RUN|NUM|OF){0,6} (?:BE|TAKES) OF? (?P<w>(?P<n>LEN|FRAC) WIDE?) (?=SEP|$|AND|BUT)", _width),  # "la cinta del tramo nueve es de dos pulgadas"
    Frame("TAPES (?:COMMA|BUT|FILLER){1,3} TEMP (?P<w>(?P<n>NUMB) WIDE)", _width),  # "181A-H, but it's only two wide"
    Frame("TAPES (?:COMMA|BUT|FILLER){1,3} OF (?P<w>(?P<n>NUMB) WIDE?) (?!BY|SIDE_WORD|SIDE|LONG|BACK|STAPLES|APART|BOARD|LEG|NUM|COUNTED|JOINT|HIGH|KIND|DEG)", _width),  # "181A-H, pero de dos y media porque …"
    Frame("TAPES FILLER? DET? (?:HAVE|WORD) (?:BE|FILL){1,2} (?:OF|DET){0,3} (?P<w>(?P<n>LEN|FRAC) WIDE?) (?=SEP|$|AND|BUT)", _width),  # "la cinta que lleva es la de dos pulgadas"
    Frame("TAPES OF (?P<w>(?P<n>LEN)) (?=(?:ON|IN|TO|THRU|WITH|DET|ALL|WORD (?:NO|NOT)) )", _width_of_it),  # "usé cinta de dos pulgadas en la recta 38"
    Frame("TAPES OF (?P<w>(?P<n>NUM|FRAC|LEN)) (?=SIDE (?:COMMA|AND|STOP|$)|AND? FILLER? RUBBED)", _width_of_it),  # "cinta de tres arriba y de dos abajo"
    Frame("TAPES OF (?P<w>(?P<n>NUM|FRAC)) (?=(?:ON|IN|TO|THRU) (?:DET|ALL|NUMBER){0,2} (?:KIND|NUM|MARKED|FITTING|GENERIC|JOINT|SIDE))", _width_of_it),
    Frame("TAPES (?:HAVE|ME|I|FILLER){0,2} (?:ON|IN|TO|THRU|OF) DET? (?:KIND|FITTING|GENERIC)? NUMBER? (?:NUM|MARKED) (?:COMMA|BUT|FILLER){1,3} (?:OFF|OF|DET|BE){0,2} OF (?P<w>(?P<n>LEN|NUM|FRAC)) (?=SEP|$|AND|WIDE)", _width),  # "le puse cinta a la 6 pero de la de dos y media"
    Frame("TAPES (?:(?:FROM|OFF|OF) DET? (?:NUM|MARKED)|FILLER HAVE (?:ON|THRU|TO) DET? KIND? (?:NUM|MARKED))? BE OF (?P<w>(?P<n>NUMB) WIDE?) (?=SEP|$|AND|BUT|ONLY (?:SEP|$))", _width),  # "la cinta es de dos pulgadas"
    Frame("TAPES OF (?P<w>(?P<n>NUM)) (?=SEP|$|ONLY (?:SEP|$)|VOID|WORD (?:NO|NOT|TRADE_NOISE)|AND STAPLES|MARK181)", _width),
    Frame("MARK181 OF (?P<w>(?P<n>NUM|FRAC)) (?=(?:AND|BUT) (?:BE|FILLER|NO|NOT|IT|HEDGE){0,2} (?:RUBBED|RUB|STAPLED|STAPLES|WIPED)|(?:NO|NOT) (?:RUBBED|RUB)|BUT VOID|VOID)", _width_of_mark),  # "con 181A-P de tres y quedó bien tallado"
    Frame("TAPES (?:[^STOP QUERY KIND SIZE]){0,8} STOP (?:IT|THIS)? BE (?:OF|ONLY){0,2} (?P<w>(?P<n>NUMB) WIDE) (?!BY)", _narrow),  # "con cinta de calor. Es de dos y media de ancho"
    Frame("TAPES (?:BE|TAKES) (?P<w>(?P<n>LEN)) (?=SEP|$|AND|WIDE|FILLER)", _width),  # "la cinta mide dos pulgadas"
    Frame("TAPES (?:TAPES|COMMA|WITH|FILL|ON|DET|OF){0,4} COUNTED OF (?P<w>(?P<n>LEN|FRAC|NUM)) (?=SEP|$|AND|WIDE|RUBBED|FILLER)", _width),  # "181A-H, rollo de dos y media"
    Frame("TAPES (?:TAPES|COMMA|WITH|FILL){0,3} OF DET OF (?P<w>(?P<n>LEN|FRAC|NUM)) (?=SEP|$|AND|WIDE|RUBBED|FILLER)", _width),  # "cinta de la de tres"
    Frame("TAPES (?P<w>(?P<n>NUM)) (?=SEP|$)", lambda found: _width(found) if found.item("n").value.value.denominator > 1 else ()),  # "181A-P two and a half"
    # closures
    Frame("(?P<w>ME FILLER? (?P<f>FILLER) DET? MARK181) (?=SEP|$|AND|BUT)", tape_laid.i_put),  # "I put the 181A-P"
    Frame("(?P<m>MARK181)", _mark),
    Frame("(?P<w>(?:TAPE|CLOSURE|MARK181) TAPE? (?:COMMA|LEN|NUM|FRAC|WIDE|WORD|FILL|MARK181|CLOSURE){0,10} ON (?:ALL|EVERY|EACH|BOTH) (?:NUM|OF|DET|IT){0,3} (?:JOINT|SIDE_WORD|SIDES_ALL|END|PANEL)) (?!(?:BUT|EXCEPT))", lambda found: [found.claim("taped", True, group="w", weak=True)]),  # "181A-P, three inch, on all four seams"
    Frame("(?P<w>MARK181) (?:TAPE|OF|COMMA|AND|DET|FILLER|LEN|NUM|FRAC|WIDE){0,5} (?:STOP I?)? (?=RUBBED)", tape_laid.rubbed_on),  # "181A-P de tres pulgadas y tallado", "181A-P, three inch, rubbed"
    Frame("(?P<w>MARK181) (?:TAPE|OF|COMMA|AND|DET|FILLER|LEN|NUM|FRAC|WIDE|STOP){0,5} (?=SCRIM (?:FILL|WORD){0,3} SHOWS)(?!SCRIM (?:FILL|WORD){0,3} (?:NOT|NO))", tape_laid.rubbed_on),  # "181A-P, three inch, scrim visible"
    Frame("CLOSING (?:COMMA|BE|WITH|DET|TAPE){0,2} (?P<w>MARK181) TAPE? (?=SEP|$|AND|LEN|NUM)", tape_laid.of_the_piece),  # "Closure, 181A-P"
    Frame("(?P<c>CLOSURE|C_MASTIC)", _closure),
    Frame("(?P<w>NOT IT? SEALED (?:FILL|BRANCH_WORD|JOINT|SIDE|END){0,3} NOT?) (?=SEP|$|AND)", _flag("taped", False)),  # "no sellé el ramal"
    Frame("(?<!NOT)(?<!NOT_DONE)(?P<w>SEALED (?:FILL|ALL|UP|IT|EVERY|BOTH|JOINT|SIDES_ALL|SIDE|SIDE_WORD|END|NUM (?=JOINT|SIDE|SIDE_WORD)){0,5} (?:WITH|IN) (?:DET|WORD|FACING|LEN|NUM|WIDE){0,3} (?P<t>MARK181|TAPE))", tape_laid.sealed_with),
    Frame("(?P<w>EVERY JOINT BE? HAVE (?P<t>TAPE)) (?=SEP|$|ON|AND)", tape_laid.sealed_with),  # "every seam's got tape"
    Frame("(?P<w>UNTAPED)", _flag("taped", False)),
    Frame("(?P<w>TAPED) (?! (?:TO) NUM)", _flag("taped")),
    Frame("(?<!TO)(?<!WILL)(?<!I)(?<!NOT)(?P<w>TAPE) (?!(?:BE? (?:IN|ON)|IN_PLACE) DET? (?:WORD|ROOM))", tape_laid.laid),
    Frame("(?P<w>TAPE (?:BE|FILL|BACK|MOVE){1,3} ON) (?=SEP|$|FILLER|WORD|AND)", tape_laid.went_on),
    Frame("(?P<w>(?:TAPE|CLOSURE|MARK181) TAPE? (?P<v>MOVE_DOWN))", tape_laid.laid_on),
    Frame("(?P<w>(?:TAPE|CLOSURE|MARK181) TAPE? (?P<v>MOVE) ON) (?=(?:ON|FILL|HEDGE|TEMP){0,3} (?:DEG|TEMP_F|LEN|SEP|$))", tape_laid.laid_on),
    Frame("(?P<w>(?:TAPE|CLOSURE|MARK181) TAPE? (?P<v>MOVE) ON) (?=DET? (?:KIND|FITTING|NUMBER|NUM|MARKED|IT|THIS))", tape_laid.laid_on),
    Frame("(?:FILLER|I|WHEN) DET? (?P<w>MARK181 ON) (?=SEP|$|AND)", tape_laid.put_on),
    Frame("(?:NUM|MARKED) HAVE DET? (?P<w>MARK181 TAPE? ON IT) (?=SEP|$|AND|BUT)", lambda found: [found.claim("taped", True, group="w", weak=True)]),
    Frame("(?P<w>TIED) DET? (?=BOARD|WORD|FACING|OPENING)", _taped_to),
    Frame("(?P<w>REDID DET? TAPE)", _flag("taped")),
    Frame("(?P<w>TAPE ONLY) (?=SEP|$|AND)", _flag("taped", weak=True)),
    Frame("(?P<w>(?P<f>FILLER|ONLY) TAPE) (?=SEP|$)", tape_laid.nothing_but),
    Frame("(?P<w>TAPE THIS? ME (?P<f>FILLER)) (?=BE|TAKES|WORD|ON)", tape_laid.lay),
    Frame("(?P<w>TAPE) (?P<f>(?:FILLER|BE|IN_PLACE){1,3}) (?=SEP|$)", tape_laid.is_on),
    Frame("(?P<w>RUBBED)", _rubbed),
    Frame("(?P<w>DET? SCRIM (?:FILL|THROUGH|WORD){0,3} (?:SHOWS|SEE))", _flag("scrim_shows")),
    Frame("(?P<w>SCRIM COMMA (?:BE|IT){1,2} ALL? SHOWS)", _flag("scrim_shows")),  # "I checked the scrim, it's showing everywhere"
    Frame("(?P<w>DET? SCRIM (?:FILL|HAVE){0,2} MOVE_UP)", _flag("scrim_shows")),
    Frame("(?P<w>(?:SEE|SHOWS) (?:DET){0,1} SCRIM)", _flag("scrim_shows")),
    # the surface
    Frame("(?P<w>WIPED (?:AND WIPED)?)", _wiped),
    Frame("(?P<w>DIRTY)", _dirty),
    Frame("(?P<w>PREHEATED)", _preheated),
    Frame("(?P<w>UNHEATED)", _flag("preheated", False)),
    Frame("(?P<w>COLD_ON)", _flag("preheated", False)),
    Frame("(?<!NOT)(?P<w>COLD_ON)", _flag("taped", weak=True)),
    Frame("(?P<w>TRIMMED) (?!(?:FILL){0,2} (?:TO|NUM))", _flag("trimmed")),
    Frame(f"(?P<w>(?P<air>AIR_TEMP) (?:FILL|ON|OF|TEMP|COMMA|IN){{0,4}} (?P<n>{_TEMPS}))", _temperature),
    Frame(f"(?P<w>(?P<n>{_TEMPS})) (?=(?:FILL|OF|IN|ON){{0,2}} (?P<air>AIR_TEMP))", _temperature),
    Frame("(?P<w>(?P<air>AIR_TEMP) (?:FILL|ON|OF){0,3} (?P<n>NUM)) (?!NUM|SIZE|BY|CFM|BE (?:HEDGE|ONLY|AROUND){0,2} (?:NUM|DEG|TEMP_F))", _temperature),
    Frame("(?P<w>(?P<air>AIR_TEMP) (?:FILL|ON|OF|TO|MOVE|MOVE_UP|WORD|UP){1,4} (?P<n>NUM)) (?=SEP|$)", lambda found: [] if found.item("n").value.value < 60 else _temperature(found)),
    Frame(f"(?P<w>(?P<hundreds>NUM) (?P<n>{_TEMPS}) (?P<air>AIR))", _hundreds_warm),  # "two sixty degree air"
    Frame(f"(?P<w>(?P<air>SERVICE) AIR? BE (?P<hundreds>NUM) (?P<n>{_TEMPS}))", _hundreds_warm),
    Frame("(?P<w>(?P<air>AIR_TEMP) (?:FILL|ON|OF){0,3} (?P<hundreds>NUM) (?P<n>NUM)) (?=SEP|$)", _hundreds_warm),
    Frame(f"(?P<w>(?P<n>{_TEMPS}) (?P<air>AIR))", lambda found: [] if found.item("n").value.value < 100 else _temperature(found)),
    Frame(f"(?P<w>(?P<air>AIR) (?:IN|IT|IN_PLACE|FILL|NOT|COUNTED|WORD|OF|ON|GENERIC|TO|MOVE|THROUGH|RUN){{1,7}} (?P<n>{_TEMPS}))", lambda found: [] if found.item("n").value.value < 100 else _temperature(found)),
    Frame(f"(?P<w>(?P<air>AIR|AIR_TEMP) (?:KIND|NUM|MARKED|FITTING|NUMBER|RUN|FILL|WORD|OF|ON|IN|IT|THROUGH|MOVE){{1,8}} (?<=BE|ON|MOVE|WORD) (?P<hundreds>NUM)? (?P<n>{_TEMPS}))", _hundreds_warm),
    Frame("(?P<w>(?P<air>AIR_TEMP) (?:KIND|NUM|MARKED|FITTING|NUMBER|RUN|FILL|WORD|OF|ON|IN|INSIDE|IT|THROUGH|MOVE|TO|UP){1,8} (?<=BE|ON|TO) (?P<hundreds>NUM)? (?P<n>NUM)) (?=SEP|$|AND|BUT|IN|ON)", _hundreds_warm),  # "the air temperature in tee nine is two seventy"
    Frame("(?P<w>(?P<air>SERVICE) (?:AIR)? (?:FILL|ON|OF){1,3} (?:(?<=BE) WORD ON?)? (?P<n>(?:DEG|TEMP_F)))", _temperature),
    Frame("TEMP (?:FILL|ON|OF|TEMP|AROUND){0,3} (?P<w>(?P<n>NUM)) (?!BY|LONG)", lambda found: [] if not 20 <= found.item("n").value.value <= 150 else _temperature(found)),
    Frame("(?:^|(?<=STOP)|(?<=COMMA)) (?:FILLER|DET){0,2} (?:FACING|BOARD) (?P<w>BE (?:HEDGE|ONLY|FILLER|ON){0,2} (?P<n>NUM)) (?=STOP|COMMA|$|WHEN|AND|BUT|BY|IN)", _it_was),
    Frame("(?:^|(?<=STOP)|BE) FILLER? TEMP (?:FILL|DAY|TEMP|WORD){0,2} COMMA HEDGE? (?P<w>(?P<n>NUM)) (?=TEMP|FILLER? (?:STOP|$)|COMMA FILLER? (?:ME|PREHEATED))", lambda found: [] if not 20 <= found.item("n").value.value <= 80 else _temperature(found)),  # "Cold up here, thirty-eight."
    Frame("BE HEDGE? (?P<w>(?P<n>NUM)) (?=(?:ON|IN|OVER) DET? (?:FACING|BOARD|TEMP|JOINT|PLACE_NOUN|ROOM)|TEMP|DAMAGE_PLACE|IN_PLACE (?:WHEN|SEP|$|AND))", _it_was),
    Frame(f"(?P<w>(?P<air>AIR_TEMP) (?:KIND|NUM|MARKED|FITTING|NUMBER|FILL|TAKES|MOVE|ON|OF|RUN|IN|INSIDE|THROUGH){{1,7}} (?P<n>{_TEMPS}))", _temperature),
    Frame("(?:^|(?<=STOP)|COMMA|HEDGE|FILLER|AND|BUT|WORD) (?P<w>(?P<n>NUM)) (?=DAMAGE_PLACE|ON DET? FACING)", _it_was),  # "cold morning, forty-eight on the facing"
    Frame("(?:^|(?<=STOP)|COMMA|HEDGE|FILLER|AND|BUT|WORD) (?P<w>(?P<n>NUM)) (?=ON DET? BOARD)", _cold),
    Frame("IT (?P<o>WORD|SAYS|SHOWS) (?:HEDGE|DET){0,2} (?P<w>(?P<n>NUM)) (?=SEP|$|AND|BUT|WHEN)", _read_off),
    Frame("(?<!TAPED)(?P<w>(?P<n>NUM)) (?=TEMP (?:SEP|$|WHEN))", lambda found: [] if found.item("n").value.value < 20 else _temperature(found)),
    Frame("(?:BE|ON|ONLY|HEDGE|FILLER|COMMA (?=NUM (?:OUT|TEMP))) (?P<w>(?P<n>NUM)) (?=OUT|TEMP|SEP|$|AND|BUT|NO|WITH|VOID|FILLER|WORD|OUTSIDE)", _cold),
    Frame("(?P<f>FILLER) (?:IT|BE|COMMA|UP|TO|HEDGE|TEMP){0,4} (?P<w>(?P<n>NUM|DEG|TEMP_F))", _by_now),
    Frame("(?P<w>(?P<n>TEMP_F))", _temperature),
)
