"""Sides that move, and sides that stay level."""

from __future__ import annotations

from logbook.facts import Move
from logbook.reading.clauses.claims import Claim, Found, Frame, claim, taken_back, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.stated.slopes import DIRECTION, FEWEST, STEEP, TAPERS, slope_in_a_foot, slope_of_twelve, so_much_in_so_much
from logbook.reading.words.phrasing import words_of

_WAY = {
    ("top", "down"): "in", ("top", "up"): "out", ("bottom", "up"): "in", ("bottom", "down"): "out",
}  # fmt: skip
_MEASURED = ("NUM", "LEN", "FRAC")
_BACK = (
    "(?: (?:SEP|AND|BUT|WITH){0,2} (?:FILL|ON|OFF){0,3} (?:BACK|OVER) (?:FILL|OF|ON|SIDE_WORD|ONLY){0,3} (?P<back>NUMB) (?:EACH|BACK|BOTH)?"
    "| (?:SEP|AND|WITH|FILL){0,2} (?P<back2>NUMB) (?:FILL){0,3} BACK (?!NUM|(?:ON|OF) (?:NUM|MARKED))"
    "| IN (?:FILL|OF|ONLY|LENGTH){0,3} (?P<back3>NUMB) (?!DEGREE)"
    "| (?:COMMA AND?|AND) IN (?:FILL|OF|ONLY){0,2} (?P<back6>LEN) (?=SEP|$|AND|OF)"
    "| (?:COMMA|AND) HAVE (?:FILL|ONLY){0,2} (?P<back7>NUM|LEN) (?=SEP|$)"
    "| (?:COMMA|AND)? (?:ME|IT)? TAKES (?:FILL|ME|ONLY){0,2} (?P<back5>NUMB)"
    "| ON (?P<back4>NUM|LEN) (?=SEP|$|AND|SIDE|LEVEL|FLAT|STAPLED|TAPED|ONLY|ONE_SIDE|LONG))"
)
_SIDES = "(?P<side>SIDE(?:AND DET? SIDE)?) (?:SIDE_WORD|PANEL|END)?"


def _way(side: str | None, direction: str | None) -> str | None:
    if direction in ("in", "out"):
        return direction
    return _WAY.get((side, direction))


def _move(found: Found, way: str | None = None):
    if {"DAMAGE"} & {item.concept for item in found.row.items[max(0, found.first - 2) : found.first]} or found.first and found.row.items[found.first - 1].concept == "EVERY":
        return  # "ripped about four inches down the left side", "staples every two inches in the top"
    by, back = found.item("by"), next((i for g in ("back", "back2", "back3", "back4", "back5", "back6", "back7") if (i := found.item(g))), None)
    direction = next((DIRECTION[i.concept] for i in found.items("dir") if i.concept in DIRECTION), None)
    direction = direction or way
    if found.first and [item.concept for item in found.items("dir")] in (["FROM"], ["OFF"]) and found.row.items[found.first - 1].concept in ("AND", "COMMA") and _opens_out(found.row, found.first):
        direction = "out"
    sides = tuple(s for item in found.items("side") if item.concept == "SIDE" for s in item.value) or (None,)
    if by is not None and (by.value.value > 60 or by.concept == "FRAC" and found.row.words(found.at("by"), found.at("by") + 1).lower() in words_of("small.half")):
        return  # "eight inches total, half each side" tells no length
    lead = [item.concept for item in found.row.items[max(0, found.first - 4) : found.first]]
    if lead[-1:] == ["DET"] and "COMMA" in lead:
        lead = lead[len(lead) - lead[::-1].index("COMMA") :]  # "entra dos, el top baja dos": the side begins its own
    if lead[-2:] == ["AND", "DET"] and lead[-3:-2] and lead[-3] in ("NUM", "LEN", "FRAC"):
        lead = []  # "left comes in two and the right comes in two": the second begins its own
    over = [i.concept for i in found.items("dir")] == ["IN"] and ({"ON", "OFF", "FROM", "TO"} & set(lead) or len(lead) > 1 and lead[-2] in ("NUM", "LEN", "FRAC"))  # "four on the right in twenty-four"
    if found.at("side") == found.first and lead[-1:] and lead[-1] in ("ON", "DET", "FROM", "OFF") and (over or {"MOVES", *DIRECTION} & set(lead)) and {"NUM", "LEN", "FRAC"} & set(lead):
        return  # "six inches in on the right in two feet": the side belongs to what stands before it
    lead = lead[:-1] if len(sides) > 1 and lead[-2:-1] and lead[-2] in _MEASURED and lead[-1] in DIRECTION else lead  # "three out each side in twelve"
    alone = by is not None and (by.concept == "LEN" or len(sides) > 1 and (lead[-2:-1] or ["COMMA"])[0] in ("COMMA", "STOP", "SIZE"))
    if found.at("side") == found.first and lead[-1:] and lead[-1] in ("NUM", "LEN", "FRAC") and alone and [i.concept for i in found.items("dir")] in (["IN"], []):
        return  # "widening four each side in a foot", "two inches each side in eight": over what length, not how far
    if by is not None and _told_apart(found.row, found.first, sides) and back is None and found.row.items[found.at("by") - 1].concept in ("IN", "ON"):
        return  # "left in two and right in two, each side in six": over what length
    moves = tuple(
        Move(side, by and by.value.value, back and back.value.value, _way(side, direction)) for side in sides
    )
    measures = [item for item in (by, back) if item is not None]
    unit = next((u for item in measures if (u := unit_of(item))), None)
    backs = taken_back((by,) if by else (), lambda item: tuple(Move(m.side, item.value.value, m.back, m.way) for m in moves))
    backs += taken_back((back,) if back else (), lambda item: tuple(Move(m.side, m.by, item.value.value, m.way) for m in moves))
    after = [item.concept for item in found.row.items[found.match.end("w") - 1 : found.match.end("w") + 2]]
    between = [item.concept for item in found.row.items[max(found.first, (found.at("by") or found.first)) : found.last]]
    fills = back is not None and bool({"EACH", "BOTH"} & set(after) or {"ALL", "BOTH"} & set(between))
    yield found.claim("side_moves", moves, group="w", fills=fills, uses=("by", "back", "back2", "back3", "back4", "back5", "back6", "back7", "side"), said_unit=unit, took_back=backs)


def _way_of_the_sizes(found: Found, by) -> str | None:
    """ "three on each side": in or out as the sizes change by just so much."""
    sizes = [item.value.pair for item in found.row.items if item.concept == "SIZE"]
    sides = sum(len(item.value) for item in found.items("side") if item.concept == "SIDE")
    if len(sizes) != 2 or not sides or not any(item.concept == "K_TRANSITION" for item in found.row.items):
        return None
    changes = {one - other for one, other in zip(*sizes) if one != other}
    return {by * sides: "in", -by * sides: "out"}.get(changes.pop()) if len(changes) == 1 else None


def _each_side(found: Found):
    """ "three on each side, izquierda y derecha, in eighteen": of two sides at once, of a piece that changes its size."""
    if len(found.item("side").value) > 1 and any(item.concept == "K_TRANSITION" for item in found.row.items):
        yield from _move(found, _way_of_the_sizes(found, found.item("by").value.value))


def _whole_change(found: Found):
    """ "18 by 10 to 14 by 10, all on the left, sixteen back": how far it moves, the sizes tell."""
    if sum(item.concept == "SIZE" for item in found.row.items) in (0, 2) and len(found.items("side")) == 1:
        yield from _move(found)


def _slides(found: Found):
    """ "left comes over four" of a piece that changes its size: which way, the sizes tell."""
    concepts = [item.concept for item in found.row.items]
    before = [concept for concept in concepts[max(0, found.first - 3) : found.first] if concept != "DET"][-2:]
    if "K_TRANSITION" in concepts and "K_OFFSET" not in concepts and not (before[-1:] in (["ON"], ["FROM"]) and before[0] in _MEASURED) and not (before[-1:] and before[-1] in _MEASURED and before[0] in DIRECTION):  # "three on the top over eighteen", "entra cuatro por la izquierda en un largo de doce"
        yield from _move(found)


def _one_of_several(found: Found):
    """ "Bottom comes up three, left side moves six": of one side, where another is told of beside it."""
    first, last = found.row.sentence_start(found.first), found.row.sentence_end(found.first)
    if found.item("by").value.value <= 12 and len({item.value for item in found.row.items[first:last] if item.concept == "SIDE"}) > 1:
        yield from _slides(found)


_FETCHES = ["back", "for"]  # "went back for the one missing strip"


def _back(found: Found):
    said = found.row.text[max(0, found.row.items[found.first].start - 8) : found.row.items[found.first].end + 3].lower()
    if any(words in said for words in ("went back", "go back", "going back", "gone back", "come back", "came back", "got back")) and "back to" in said:
        return  # "went back to twelve": a piece
    if found.item("back") is not None and found.row.words(found.first, found.last - 1).lower().split()[:2] == _FETCHES:
        return
    back = found.item("back") or found.item("back2")
    if found.item("back2") is not None and {"GAP", "DAMAGE", "PARTED"} & {item.concept for item in found.row.items[max(0, found.first - 3) : found.first]}:
        return  # "una abertura de media pulgada atrás"
    move = (Move(None, None, back.value.value, None),)
    backs = taken_back((back,), lambda item: (Move(None, None, item.value.value, None),))
    lead = found.first - 2 if found.first > 1 and found.row.items[found.first - 1].concept in ("WITH", "HAVE") else found.first - 1  # "las dos con back de doce"
    both = found.row.items[max(0, lead)].concept in ("BOTH", "EACH", "ALL")  # "left in two, right in two, both back twelve"
    yield found.claim("side_moves", move, uses=("back", "back2"), said_unit=unit_of(back), took_back=backs, fills=both)


def _back_of_a_side(found: Found):
    """ "The set-back on the right's eighteen, on the left it's fourteen" """
    for side, back in (("side", "back"), ("side2", "back2")):
        if found.item(side) is not None:
            value = found.item(back).value.value
            yield found.claim("side_moves", tuple(Move(one, None, value, None) for one in found.item(side).value), uses=(back,), said_unit=unit_of(found.item(back)), took_back=taken_back((found.item(back),), lambda item: tuple(Move(one, None, item.value.value, None) for one in found.item(side).value)))


def _both_back(found: Found):
    """ "…, los dos en dieciocho": the length of every move before."""
    if any(item.concept == "SIDE" for item in found.row.items[max(0, found.first - 14) : found.first]):
        back = found.item("back")
        yield found.claim("side_moves", (Move(None, None, back.value.value, None),), uses=("back",), said_unit=unit_of(back), fills=True)


def _opens_out(row: Row, at: int) -> bool:
    """ "se abre dos del lado izquierdo y dos del derecho": the other side goes out too."""
    verb = next((item.concept for item in reversed(row.items[max(row.sentence_start(at), at - 8) : at]) if item.concept in ("MOVE_OUT", "MOVE_IN", "OUT", "IN")), None)
    return verb in ("MOVE_OUT", "OUT")


def _told_apart(row: Row, first: int, sides: tuple[str, ...]) -> bool:
    """ "dos del lado izquierdo y dos del derecho, cada lado en doce": each of these sides was told of by itself right before."""
    before = row.items[max(row.sentence_start(first), first - 10) : first]
    return len(sides) > 1 and set(sides) <= {item.value[0] for item in before if item.concept == "SIDE" and len(item.value) == 1} and any(item.concept in _MEASURED for item in before)


def _each_back(found: Found):
    """The length of the moves that were told side by side."""
    if _told_apart(found.row, found.first, found.item("side").value):
        yield from _both_back(found)


def _back_behind(found: Found):
    """ "lado derecho entra dos, lado izquierdo entra dos, en seis pulgadas": the length, a pause behind the moves."""
    before = [item.concept for item in found.row.items[max(0, found.first - 7) : found.first] if item.concept not in ("DET", "FILLER", "MOVE")]
    if before[-1:] and before[-1] in ("LEVEL", "FLAT", "K_STRAIGHT") and before[-3:-1] == ["COMMA", "SIDE"]:
        before = before[:-3]  # "el derecho entra seis, el izquierdo recto, en treinta y seis"
    before = before[-2:]
    if found.row.words(found.first + 1, found.first + 2).lower() == "en" and before[1:] and before[0] in DIRECTION and before[1] in ("NUM", "LEN", "FRAC"):
        back = found.item("back")
        yield found.claim("side_moves", (Move(None, None, back.value.value, None),), uses=("back",), said_unit=unit_of(back), fills=True)


def _level(found: Found):
    sides = tuple(s for item in found.items("side") if item.concept == "SIDE" for s in item.value)
    yield found.claim("level_sides", sides, uses=("side",))


def sided(row: Row, claims: list[Claim]) -> list[Claim]:
    """ "top's the one that travels, in two": a move without a side of its own is of the side named last in its sentence, unless that one stays."""
    level = {at for one in claims if one.name == "level_sides" for at in one.uses}
    moved = {at for one in claims if one.name == "side_moves" and one.value[0].side is not None for at in range(one.first, one.last)}
    return [_of_side_before(row, one, level, moved) if one.name == "side_moves" and len(one.value) == 1 and one.value[0].side is None and one.value[0].by is not None else one for one in claims]


def _of_side_before(row: Row, one: Claim, level: set[int], moved: set[int]) -> Claim:
    move = one.value[0]
    for at in range(one.first - 1, max(-1, one.first - _SIDE_BEFORE), -1):
        item = row.items[at]
        if item.concept in ("STOP", "QUERY", "ONE_SIDE", "OTHER_SIDE", "SIZE", "BOTH", "BACK", "BUT", "EXCEPT") or at in level or at in moved:
            break
        if item.concept == "SIDE" and not row.is_blank(at):
            said = next((DIRECTION[i.concept] for i in row.items[one.first : one.last] if i.concept in DIRECTION), None)
            moves = tuple(Move(side, move.by, move.back, _way(side, said)) for side in item.value)
            return claim(row, "side_moves", moves, at, one.last, uses=(*one.uses, at), said_unit=one.said_unit, fills=one.fills, took_back=one.took_back)
    return one


_SIDE_BEFORE = 9  # items


def _same_way(found: Found):
    """ "Right comes in six, and the left two": the way is that of the move before it."""
    for at in range(found.first - 1, max(-1, found.first - 12), -1):
        concept = found.row.items[at].concept
        if concept in ("STOP", "QUERY", "SIZE", "LEVEL", "FLAT"):
            return
        if concept in DIRECTION and concept.startswith("MOVE_"):
            for side in found.item("side").value:
                yield found.claim("side_moves", (Move(side, found.item("by").value.value, None, _way(side, DIRECTION[concept])),), group="w", uses=("by", "side"))
            return


def _one_of_two(found: Found):
    """ "Left three, right three": of a piece that changes its size; which way, the sizes tell."""
    concepts = [item.concept for item in found.row.items]
    if "K_TRANSITION" in concepts or any(concepts[at : at + 3] == ["SIZE", "TO", "SIZE"] for at in range(len(concepts) - 2)):
        yield from _move(found)


def _measures_alone(found: Found):
    """ "Right side, four, twenty-four", "it all comes off the left. Four over twenty-eight": how far, and over what length."""
    by, back = found.item("by").value.value, found.item("back3").value.value
    if by < back != 12 and by <= 12 <= back:
        yield from _one_of_two(found)


def _of_no_offset(found: Found):
    """ "Kicks five in sixteen": on a transition a side that moves, on an offset the whole of it."""
    if not any(item.concept == "K_OFFSET" for item in found.row.items):
        yield from _measures_alone(found)


def _other_of_two(found: Found):
    """ "Left, three. Right, three." """
    before = [item.concept for item in found.row.items[max(0, found.first - 4) : found.first]]
    if before[-4:] in (["SIDE", "COMMA", "NUM", "STOP"], ["SIDE", "COMMA", "LEN", "STOP"]):
        yield from _one_of_two(found)


LEVEL_FRAMES = (
    Frame("(?P<side>SIDE SIDE_WORD? (?:COMMA AND? DET? SIDE SIDE_WORD?)+) COMMA? FILL{1,3} (?:LEVEL|FLAT|K_STRAIGHT) (?=SEP|$|AND|BUT)", _level),  # "left side, top, bottom are all straight"
    Frame("(?:LEVEL|FLAT) (?:ON|FILL|IN|OF){0,2} (?P<side>SIDE(?:AND DET? SIDE)?) (?! (?:FILL){0,2} (?:MOVES))", _level),
    Frame("(?P<side>SIDE(?:AND DET? SIDE)?) SIDE_WORD? (?:FILL|AND){0,2} (?:LEVEL|FLAT) (?!SIDE (?:SEP|$))", _level),
    Frame("(?P<side>SIDE) (?P<o>NUM) (?:FILL|MOVE){0,2} (?:LEVEL|FLAT|K_STRAIGHT) (?=SEP|$|AND|BUT)", lambda found: _level(found) if found.item("o").value.value == 1 and not found.item("o").value.digits else ()),  # "the left one stays straight"
    Frame("(?P<side>SIDE) SIDE_WORD? BE? DET (?:NUM|GENERIC) (?:THIS|BE){1,2} (?:LEVEL|FLAT)", _level),  # "the top's the one that's flat"
    Frame("(?P<side>SIDE(?:AND DET? SIDE)?) SIDE_WORD? (?:FILL|MOVE){0,2} K_STRAIGHT (?=SEP|$|AND|BUT)", _level),
)
FRAMES = (
    *STEEP,
    Frame(f"(?P<w>{_SIDES} (?:FILL){{0,2}} (?P<dir>MOVES) (?:FILL|BY){{0,2}} (?P<by>NUMB) (?:IN|OVER) DET? (?P<back3>LEN)) SLOPE", _move),
    *TAPERS,
    # a side, a way, how far, over what length
    Frame(f"(?P<w>(?:ALL|ONLY) (?:FILL|MOVE){{0,2}} (?:ON|OFF|FROM|TO|BRANCH_WORD)? DET? {_SIDES} (?:MOVE|MOVES|FILL){{0,2}} COMMA? {_BACK})", _whole_change),
    Frame(f"(?P<w>(?P<by>NUMB) (?P<dir>DIRECTION|FROM|OFF) (?:IN|OVER) (?:FILL){{0,2}} (?P<back3>NUMB) (?:ON|OF|FROM) DET? {_SIDES})", _move),  # "three inches in over a foot on the right side"
    Frame(f"(?<!MOVES)(?P<w>(?P<by>NUMB) (?:IN|OVER) (?:FILL)? (?P<back3>NUMB) (?:ON|FROM|OFF|COMMA(?=DET? SIDE SIDE_WORD? (?:SEP|$))) DET? {_SIDES})", lambda found: _one_of_two(found) if found.item("by").value.value < found.item("back3").value.value else ()),
    Frame(f"(?P<w>{_SIDES} (?:(?:OF|ON) DET? KIND NUMBER? (?:NUM|MARKED))? (?:FILL){{0,2}} TAKES (?:FILL|ONLY){{0,2}} (?P<by>NUMB) (?P<dir>DIRECTION) {_BACK})", _move),
    Frame(f"(?P<w>(?P<dir>MOVES) (?:FILL|BY){{0,2}} (?P<by>NUMB) (?:IN|OVER) (?:FILL|OF){{0,2}} (?P<back3>NUMB) (?:ON|OF|FROM) DET? {_SIDES})", _move),
    Frame(f"(?P<w>(?P<dir>OFF|FROM) DET? {_SIDES} COMMA? (?P<by>NUMB) (?:IN|OVER) (?:FILL)? (?P<back3>NUM|LEN)) (?=SEP|$|AND)", _move),  # "all of it off the left, eight inches in thirty-six"
    Frame(f"(?P<w>{_SIDES} BE (?:FILL|NUM|GENERIC|WORD|MOVE|MOVES){{2,5}} COMMA (?:AND|IT|THIS){{0,2}} (?P<dir>MOVES) (?:FILL|BY){{0,2}} (?P<by>NUMB) {_BACK}?)", _move),
    Frame(f"(?P<w>{_SIDES} BE? (?:FILL|NUM|GENERIC|WORD|MOVE|MOVES){{2,5}} COMMA (?P<by>NUM|LEN)) (?=SEP|$)", lambda found: _one_of_two(found) if any(item.concept in ("MOVE", "MOVES", "MOVE_IN", "MOVE_OUT") for item in found.row.items[found.first : found.last]) else ()),  # "the right side's the one that moves, five inches"
    Frame(f"(?P<w>(?P<dir>OFF|FROM) DET? {_SIDES} COMMA (?P<by>LEN)) (?=COMMA|STOP|$|AND)", lambda found: _move(found) if any(item.concept == "K_TRANSITION" for item in found.row.items) else ()),
    Frame(f"(?P<w>{_SIDES} (?:FILL|WILL|GENERIC|I){{0,3}} COMMA? (?:(?P<dir>(?:MOVE FILL{{0,2}})? DIRECTION (?:IN|OUT|DOWN|UP)?)) (?:FILL|OF|BY|ON|IT){{0,3}} (?P<by>NUMB) (?:IN(?=COMMA|STOP|BACK|OVER)|(?:IN|OUT|UP|DOWN)(?=ON NUM))?"
          f"(?:(?:ON(?!NUMB)|OF|FROM){{0,1}} (?:IT|THIS|GENERIC|DET){{0,2}})? (?:EACH(?=ON NUMB))? {_BACK}?)", _move),
    Frame(f"(?P<w>{_SIDES} (?:FILL|ONLY){{0,2}} (?:WORD|OFFSETS|TAKES) (?P<dir>DIRECTION) (?:FILL|BY|ONLY){{0,2}} (?P<by>NUMB) {_BACK}?)", _move),
    Frame(f"(?P<w>{_SIDES} (?:FILL|MOVE|COMMA){{0,3}} (?P<by>NUMB) (?P<dir>IN (?!(?:FILL|OF|ONLY){{0,2}} NUMB)|OUT|DOWN|UP) {_BACK}?)", _move),
    Frame(f"(?P<w>{_SIDES} (?:FILL|MOVE|ONLY){{0,2}} (?:OFFSETS|OVER) (?:FILL|BY|ONLY){{0,2}} (?P<by>NUMB) {_BACK}?)", _slides),
    Frame(f"(?P<w>(?P<dir>MOVES) DET? {_SIDES} COMMA (?P<by>NUMB) {_BACK})", _move),
    Frame(f"(?P<w>(?P<dir>MOVES) DET? {_SIDES} (?:FILL){{0,2}} (?P<by>NUMB) {_BACK}?)", _move),
    Frame(f"(?:(?<!NUM)(?<!LEN)(?<!FRAC)|(?<=KIND NUM))(?P<w>(?P<dir>(?:MOVE FILL{{0,2}})? DIRECTION) (?:ON|FROM|OF|OFF) DET? {_SIDES} (?:BY|FILL|ONLY){{0,3}} (?P<by>NUMB) {_BACK}?)", _move),
    Frame(f"(?P<w>{_SIDES} (?:FILL|MOVE|COMMA|BY|ON(?=NUMB)){{0,3}} (?P<by>NUMB) {_BACK})", _move),
    Frame(f"(?:(?<!NUM)(?<!LEN)(?<!FRAC)|(?!IN)) (?P<w>(?P<dir>(?:MOVE FILL{{0,2}})? DIRECTION) (?:FILL|OF|BY){{0,3}} (?P<by>NUMB) (?:ON|FROM|OF|IN|OFF|COMMA){{0,1}} (?:DET|ALL){{0,2}} {_SIDES} {_BACK}?)", _move),
    Frame(f"(?P<w>(?P<by>NUMB) (?P<dir>DIRECTION|FROM|OFF) (?:ON|FROM|OF|IN|OFF){{0,1}} DET? {_SIDES} {_BACK}?)", _move),
    Frame("(?P<w>(?P<by>NUMB) (?P<dir>DIRECTION)? (?:ON|FROM|OF|BY)? (?:DET|FILL){0,2} (?P<side>SIDE) COMMA? (?:SIDE COMMA)? (?:BUT|AND|COMMA)? (?:FILL|WORD|LAID){0,3} (?:ON|IN|OVER) (?:FILL|OF|ONLY){0,2} (?P<back3>NUMB)) (?=SEP|$|AND|STAPLED|TAPED|LEVEL|FLAT|ONLY)", _each_side),  # "tres por cada lado, en doce"
    Frame(f"(?P<w>(?P<by>NUMB) (?:ON|FROM|OF)? (?:DET|FILL){{0,2}} {_SIDES} {_BACK})", _move),
    Frame(f"(?P<w>(?P<by>NUMB) (?:ON|FROM|OF|OFF)? ONE_SIDE (?:ONLY)? {_BACK})", _move),
    Frame("(?P<w>(?P<by>NUMB) (?:ON|FROM|OF|OFF)? ONE_SIDE (?:ONLY)?) (?=COMMA? (?:ON|OVER|IN) (?:NUMB|LEN) LONG)", _move),  # "seis de un solo lado en veinticuatro de largo": how long it is over all
    Frame("(?P<w>(?:ONE_SIDE FILL{0,2})? (?:MOVE|OFFSETS) OVER? (?:FILL|BY){0,2} (?P<by>NUM|LEN) OVER? (?:IN|OVER|ON) (?:FILL|ONLY){0,2} (?P<back3>NUM|LEN)) (?=SEP|$|AND|BUT|ON|FILLER|LONG|ONE_SIDE|TO DET? SIDE)", _of_no_offset),  # "transition 15 kicks five in sixteen"
    Frame("(?P<w>(?P<by>NUM|LEN) OVER IN (?:FILL|ONLY){0,2} (?P<back3>NUM|LEN)) (?=SEP|$|AND|BUT|ON|FILLER)", _of_no_offset),  # "reducer 15, five over in twenty"
    Frame("(?P<w>ONE_SIDE COMMA? (?P<by>NUMB) (?:IN|OVER) (?:FILL)? (?P<back3>NUMB)) (?=SEP|$|AND)", lambda found: _one_of_two(found) if found.item("by").value.value < found.item("back3").value.value else ()),  # "one side, four inches in ten"
    Frame("(?P<w>(?P<by>NUM|LEN) (?:IN|OVER) (?:FILL)? (?P<back3>NUM|LEN)) COMMA ONE_SIDE", lambda found: _one_of_two(found) if found.item("by").value.value < found.item("back3").value.value else ()),
    Frame(f"(?P<w>(?P<dir>MOVES|DOWN|UP|IN|OUT) (?:FILL|BY|OF){{0,2}} (?P<by>NUMB) {_BACK})", _move),
    Frame(f"(?P<w>{_SIDES} (?:COMMA|MOVE){{0,1}} (?P<by>NUMB)) (?=(?:COMMA|STOP|AND){{1,2}} DET? SIDE (?:COMMA|MOVE){{0,1}} NUMB (?:SEP|$|{_BACK}))", _one_of_two),
    Frame("(?P<w>(?P<side>SIDE) COMMA (?P<by>NUMB)) (?=SEP|$)", _other_of_two),
    Frame("(?P<w>(?P<side>SIDE) SIDE_WORD? (?:ME|NOT|NOT_DONE|WORD|FILLER|HAVE){1,3} COMMA (?:IT|BE|HAVE|MOVE|ONLY){0,3} (?P<by>NUMB) (?:IN|OVER) (?:FILL|ONLY){0,2} (?P<back3>NUM|LEN)) (?=SEP|$|AND)", _one_of_two),  # "left I couldn't, two over eight"
    Frame("(?P<w>(?P<side>SIDE) (?P<o>IN_PLACE) (?P<by>NUMB)) (?=SEP|$|BUT|AND|BACK|OVER)", lambda found: _move(found, "in") if found.row.words(found.at("o"), found.at("o") + 1).lower().split()[-1] == "in" and any(item.concept == "K_TRANSITION" for item in found.row.items) else ()),  # "the right is in three"
    Frame("(?P<w>(?P<side>SIDE) SIDE_WORD? COMMA (?P<by>NUMB) COMMA (?P<back3>NUMB)) (?=SEP|$)", _measures_alone),
    Frame("(?:^|(?<=STOP)) (?P<w>(?P<by>NUMB) (?:OVER|IN) (?P<back3>NUMB)) (?=SEP|$)", _measures_alone),
    Frame("(?P<w>(?P<side>SIDE) COMMA? (?P<by>NUMB) EACH) (?=SEP|$)", _one_of_two),
    Frame("AND DET? (?P<w>(?P<side>SIDE) (?P<by>NUMB)) (?=COMMA|STOP|$|BACK|BOTH)", _same_way),
    Frame("BACK (?:ON|OF) DET? (?P<side>SIDE) SIDE_WORD? (?:BE|FILL|ONLY){0,3} (?P<back>NUM|LEN) (?:(?:COMMA|AND|BUT){1,2} (?:ON|OF)? DET? (?P<side2>SIDE) SIDE_WORD? (?:BE|FILL|ONLY){0,3} (?P<back2>NUM|LEN))? (?=SEP|$|AND|BUT)", _back_of_a_side),  # "the set-back on the right's eighteen"
    Frame("BACK (?:ON|OF) (?:DET|KIND|FITTING|NUMBER){0,2} (?:NUM|MARKED) (?:BE|FILL|ONLY){1,3} (?P<back>NUM|LEN) (?=SEP|$|AND|BUT)", _back),  # "the set-back on nine is twelve"
    Frame("(?:(?<!ON)(?<!ON DET)(?<!IN)(?<!IN DET)|(?=BACK (?!BE|IT|THIS))) BACK (?:FILL|OF|TO|BY|IN|ONLY){0,3} (?P<back>NUMB) (?!BY)", _back),  # "on the back they're three": a side
    Frame("(?:BOTH|EACH) (?:FILL)? (?:ON|OVER) (?P<back>NUMB) (?=SEP|$|AND)", _both_back),
    Frame("COMMA EACH SIDE_WORD? IN (?P<back>NUMB) (?=SEP|$|AND)", _both_back),  # "left in two and right in two, each in twelve"
    Frame("(?P<side>SIDE) (?:IN|ON|OVER) (?P<back>NUMB) (?=SEP|$|AND)", _each_back),
    Frame("(?<=SEP) (?:NUM|MARKED) BE OVER (?P<back>NUM|LEN) (?=SEP|$)", lambda found: _back(found) if found.item("back").value.value >= FEWEST and any(item.concept == "K_TRANSITION" for item in found.row.items) else ()),  # "right in four. Nine's over twenty-four, ten's over twelve."
    Frame("BOTH (?:FILL)? IN (?:FILL|ONLY)? (?P<back>LEN) (?=SEP|$|AND)", _both_back),  # "both in eighteen inches"
    Frame("COMMA ON (?P<back>NUMB) (?=SEP|$)", _back_behind),
    Frame("BOTH (?:FILL)? WITH (?:DET)? BACK (?:FILL|OF){0,2} (?P<back>NUMB)", _both_back),  # "los dos con retroceso de doce"
    Frame("BACK (?:FILL|OF|ON|IN){0,2} BOTH (?:SIDE_WORD|SIDE)? (?:BE|FILL){1,2} OF? (?P<back>NUMB)", _both_back),  # "el retroceso de los dos es de doce"
    Frame("MOVES (?:FILL)? NUMB COMMA? (?:AND|WITH)? DET? RUN OF (?P<back>NUM|LEN)", _back),  # "sube cuatro, corrida de dieciocho"
    Frame("(?P<back2>NUMB) (?:FILL|OF){0,3} BACK (?!NUM)", _back),
    Frame("(?P<o>WORD) BACK COMMA (?:IT|BE|THIS){1,2} (?P<back>NUMB) (?=SEP|$|NOT)", lambda found: _back(found) if found.row.words(found.first, found.first + 1).lower() in words_of("small.wrong_way") else ()),  # "I gave you the wrong set back, it's thirty"
    Frame("BACK COMMA (?P<back>NUMB) (?=SEP|$)", lambda found: _back(found) if found.row.words(found.first, found.first + 1).lower().startswith("set") else ()),
    Frame("(?P<w>(?P<rise>NUMB) (?:IN|OVER) (?P<run>NUM|LEN)) (?=COMMA? (?:ON|OF|DOWN) (?:DET|BOTH|EACH|ALL){0,2} (?:K_TRANSITION|SIDE_WORD|SIDES_ALL))", so_much_in_so_much),
    Frame("(?P<w>(?P<rise>NUM|FRAC) (?:IN|ON) (?P<run>NUM)) (?!BACK|BY|LEN|OF)", slope_of_twelve),
    Frame("SIDE (?:IN|OUT|UP|DOWN|MOVES) (?:NUM|LEN) ON (?P<w>(?P<rise>NUM) IN (?P<run>NUM)) (?=SEP|$|AND)", slope_in_a_foot),  # "left in six at five in twelve"
    Frame("(?<=SEP) (?:FILL|LAID|ON){0,3} (?P<w>(?P<rise>NUM|FRAC) OVER (?P<run>NUM)) (?=SEP|$)", lambda found: slope_of_twelve(found) if any(item.concept == "K_TRANSITION" for item in found.row.items) else ()),
    Frame(f"(?P<w>{_SIDES} (?:MOVE|MOVES) (?:BY|ONLY|HEDGE)? (?P<by>NUMB)) (?=SEP|$|AND|BUT)", _one_of_several),
    Frame("(?P<w>TAKES (?:FILL|ONLY|HEDGE){0,2} (?P<back>NUMB) TO (?P<dir>DIRECTION) (?:FILL|BY){0,2} (?P<by>NUMB))", _move),
)
