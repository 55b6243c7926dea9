"""On how many sides an act was done, where the count stands right beside it: "stapled all four sides", "tape on three sides", "the other three are stapled"."""

from __future__ import annotations

from logbook.reading.clauses.claims import Found, Frame
from logbook.reading.clauses.denials import ACTS
from logbook.reading.words.phrasing import words_of


def _sides(found: Found):
    count = found.item("n")
    number = 4 if count is None else count.value.value
    if number.denominator != 1 or not 0 <= number <= 4:
        return
    if found.first > 0 and found.at("n") is not None and found.at("n") <= found.first + 2 and found.row.items[found.first - 1].concept in ("STAPLED", "TAPED") and found.at("acts") > found.at("n") and not (found.first > 1 and found.row.items[found.first - 2].concept == "SIDE_WORD"):
        return  # "stapled 3 sides taped 3 sides": the count is of the act before it
    if found.at("n") is not None and found.at("acts") > found.at("n") and _has_its_own(found.row, found.last):
        return  # "engrapado cada dos los cuatro lados teip nomás tres lados"
    ahead = [item.concept for item in found.row.items[found.last : found.last + 2] if item.concept not in ("BE", "FILLER")]
    if ahead[:1] == ["RUBBED"] and "COMMA" in [item.concept for item in found.row.items[found.first : found.last]]:
        return  # "taped, two sides rubbed"
    beside = [item.concept for item in found.row.items[found.last : found.last + 3] if item.concept not in ("DET", "FILLER")]
    if beside[:1] in (["OF"], ["ON"]) and beside[1:2] == ["JOINT"]:
        return  # "stapled both sides of the joint"
    acts = {item.concept for item in found.items("acts")}
    nouns = {"STAPLES": "stapled", "TAPE": "taped"}
    for noun in acts & set(nouns):  # "staples on three sides" says stapled too
        yield found.claim(nouns[noun], True, group="w", weak=True)
    if "STAPLED" in acts or "STAPLES" in acts:
        yield found.claim("sides_stapled", int(number), group="w", uses=("n",))
    if acts & {"TAPED", "TAPE", "CLOSURE", "MARK181"}:
        yield found.claim("sides_taped", int(number), group="w", uses=("n",))


def _has_its_own(row: Row, at: int) -> bool:
    """Whether a count of sides stands right behind the act, so that the one ahead is of the act before it."""
    only = False
    while at < len(row.items) and row.items[at].concept in ("ONLY", "ON", "OF", "BY", "FILLER"):
        only, at = only or row.items[at].concept == "ONLY", at + 1
    if at >= len(row.items) or row.items[at].concept != "NUM" or row.items[at].value.value not in (1, 2, 3, 4):
        return False
    behind = row.items[at + 1].concept if at + 1 < len(row.items) else "STOP"
    return behind == "SIDE_WORD" or only and behind in ("STOP", "COMMA", "AND", "BUT")


def _counted(found: Found):
    """ "taped all four", "stapled just two": sides without the word."""
    said = found.row.words(found.at("o"), found.at("n")).lower().split()
    count = found.item("n").value.value
    few = said[0] in ("just", "only", "nomás", "nomas", "solo", "sólo", "solamente", "nada") and count <= 3
    if (said[:1] in (["all"], ["por"]) and count == 4) or (few and said[-1] != "on"):  # "only on two": how far apart
        yield from _sides(found)


def _of_the_sides(found: Found):
    """ "Three sides of the cap are pretty. All four are stapled": sides, where sides were spoken of and no other pieces."""
    before = found.row.items[max(0, found.first - 25) : found.first]
    sided = any(item.concept in ("SIDE_WORD", "SIDES_ALL") for item in before)
    counts = any(item.concept in ("K_END_CAP", "K_PLENUM") for item in found.row.items) and sum(item.concept.startswith("K_") for item in found.row.items) == 1
    if sided and counts and found.item("n").value.value in (2, 3, 4):
        yield from _sides(found)


def _rest(found: Found):
    """ "the other three are stapled": a count of sides without the word."""
    if found.row.words(found.at("o"), found.at("o") + 1).lower().split()[-1] not in words_of("small.rest"):
        return
    number = found.item("n").value.value
    if number.denominator == 1 and 1 <= number <= 3:
        for item in found.items("acts"):
            if item.concept in ("STAPLED", "TAPED"):
                name = ACTS[item.concept]
                yield found.claim(f"sides_{name}", int(number), group="w", uses=("n",), hedged=False)


def _listed(found: Found):
    """ "Taped on top, bottom and left": three sides named are three sides done."""
    sides = {side for item in found.items("sides") if item.concept == "SIDE" for side in item.value}
    if len(sides) >= 3:
        for item in found.items("acts"):
            if item.concept in ("STAPLED", "TAPED"):
                yield found.claim(f"sides_{ACTS[item.concept]}", len(sides), group="w", hedged=False)


def _one_side(found: Found):
    """ "Stapled one side", "tape on one side only"; "one side and then the other" are two."""
    ahead = [item.concept for item in found.row.items[found.last : found.last + 5]]
    if "OTHER_SIDE" in ahead or "ANOTHER" in ahead or "OTHER" in ahead or found.row.items[found.at("o") - 1].concept == "EXCEPT":
        return
    acts = found.items("acts")
    last = max((at + 1 for at, item in enumerate(acts) if item.concept == "COMMA"), default=0)  # "stapled, taped one side"
    for item in acts[last:]:
        if item.concept in ACTS:
            yield found.claim(f"sides_{ACTS[item.concept]}", 1, group="w", hedged=False)


def _only(found: Found):
    """ "The tape is on both sides only", "nomás en los dos lados lleva cinta": no more than these."""
    sides = {side for item in found.items("sides") for side in (item.value if item.concept == "SIDE" else ("one",))}
    if len(sides) < 4:
        yield found.claim("taped", True, group="w", weak=True)
        yield found.claim("sides_taped", len(sides), group="w", hedged=False)


def _of_four(found: Found):
    """ "three of the four sides" """
    number = found.item("n").value.value
    if number.denominator == 1 and 1 <= number <= 4:
        for item in found.items("acts"):
            if item.concept in ("STAPLED", "TAPED"):
                yield found.claim(f"sides_{ACTS[item.concept]}", int(number), group="w", uses=("n",), hedged=False)


def _out_of_four(found: Found):
    """ "Taped three out of four": sides, as a piece has four; "out of five" counts something else."""
    if found.row.words(found.at("o"), found.at("o") + 1).lower() == "out of" and found.item("all").value.value == 4 and found.item("n").value.value <= 4:
        yield from _of_four(found)


_COUNT = "(?:ALL)? (?:DET)? (?P<n>NUM) (?:OF DET)? (?:SIDE_WORD)"
_ACTS = "(?P<acts>(?:STAPLED|TAPED)(?:(?:COMMA|AND){1,2} (?:FILL){0,2} (?:STAPLED|TAPED))*)"
def _rubbed(found: Found):
    """ "Tallé la cinta del plenum 310 en tres lados": on fewer than all of them it is not rubbed down."""
    if found.item("n").value.value in (1, 3):
        yield found.claim("rubbed_down", False, group="w", uses=("n",), hedged=False, corrects=True)


def _of_them(found: Found):
    """ "Taped all four seams, rubbed three of them": of the four that were told of, and not of pieces."""
    number = found.item("n").value.value
    behind = set(found.row.words(found.last, min(len(found.row.items), found.last + 12)).lower().split()) if found.last < len(found.row.items) else set()
    if number not in (1, 2, 3) or behind & words_of("small.rest") or behind & words_of("small.ordinals"):
        return  # "rubbed three of them, then the last one", "… and the fourth I didn't"
    for item in found.items("acts"):
        if item.concept == "RUBBED":
            yield found.claim("rubbed_down", False, group="w", uses=("n",), hedged=False, corrects=True)
        else:
            yield found.claim(f"sides_{ACTS[item.concept]}", int(number), group="w", uses=("n",), hedged=False)


_WITH_TAPE = "(?P<acts>TAPED|TAPE|CLOSURE)"
_NO_MORE = "(?P<sides>SIDE|ONE_SIDE)"
FRAMES = (
    Frame("(?:ALL|NUM|ALL NUM) (?:SIDE_WORD|JOINT) (?:[^STOP QUERY]){0,14} (?P<w>(?P<acts>RUBBED|TAPED|STAPLED) ONLY? (?P<n>COUNT) COUNTED)", _of_them),
    Frame("(?P<w>RUBBED (?:DET|TAPE|FROM|OF|KIND|FITTING|ON|BY|IT|ONLY|FILLER){1,5} (?:NUM|MARKED)? (?:ON|BY|ONLY|OF){1,2} DET? (?P<n>NUM) SIDE_WORD)", _rubbed),
    Frame(f"(?P<w>{_WITH_TAPE} (?:BE|HAVE|FILL|ON|OF|BY|IT){{0,4}} {_NO_MORE} ONLY) (?=SEP|$|AND|BUT)", _only),
    Frame(f"(?P<w>{_WITH_TAPE} (?:BE|HAVE|FILL|IT){{0,3}} ONLY (?:ON|OF|BY|FILL){{0,2}} {_NO_MORE}) (?=SEP|$|AND|BUT)", _only),
    Frame(f"(?P<w>ONLY (?:ON|OF|BY|FILL){{0,2}} {_NO_MORE} (?:(?:FROM|OF)? (?:KIND) (?:NUM|MARKED))? (?:HAVE|BE)? {_WITH_TAPE}) (?=SEP|$|AND|BUT)", _only),
    Frame(f"(?P<w>(?P<o>WORD|OTHER) (?P<n>NUM) SIDE_WORD? (?:FILL){{0,2}} {_ACTS})", _rest),
    Frame(f"(?P<w>{_ACTS} (?:FILL|ON|OF){{0,2}} (?P<o>WORD|OTHER) (?P<n>NUM) SIDE_WORD?)", _rest),
    Frame(f"(?P<w>{_ACTS} IT? (?:STOP|COMMA|BUT|FILLER){{1,4}} (?:ONLY|FILLER)? (?P<n>NUM) SIDE_WORD (?:OF|ON)? IT?) (?=SEP|$)", _of_four),
    Frame(f"(?P<w>{_ACTS} (?P<n>NUM) OF DET? NUM) (?=SEP|$)", _of_four),
    Frame(f"(?P<w>{_ACTS} (?:ONLY|FILLER)? (?P<n>NUM) (?P<o>FROM) DET? (?P<all>NUM) SIDE_WORD?) (?=SEP|$|AND|BUT)", _out_of_four),
    Frame(f"(?P<w>{_ACTS} (?P<n>NUM)) (?=COMMA COUNT COUNTED)", _of_four),
    Frame(f"(?P<w>(?P<sides>SIDE (?:(?:COMMA|AND){{0,2}} DET? SIDE)+) (?:FILL){{0,3}} {_ACTS})", _listed),
    Frame(f"(?P<w>{_ACTS} (?:FILL|ON|OF|ONLY){{0,2}} (?P<o>ONE_SIDE))", _one_side),
    Frame(f"(?P<w>{_ACTS} (?:FILL|ON|OF){{0,2}} (?P<sides>SIDE (?:(?:COMMA|AND){{1,2}} DET? SIDE)+))", _listed),
    Frame("(?<!SIDE_WORD)(?P<w>(?P<acts>STAPLES|TAPE) (?P<n>NUM) SIDE_WORD) (?=COMMA|AND|STOP|$|TAPE NUM|STAPLES NUM)", _sides),  # "grapa 4 lados tape 4 lados"
    Frame(f"(?P<w>{_COUNT} (?:FILL|OF|ON){{0,4}} {_ACTS})", _sides),
    Frame(f"(?P<w>{_COUNT} (?:FILL|OF|ON|WITH){{0,3}} (?P<acts>TAPE|STAPLES|CLOSURE))", _sides),
    Frame(f"(?P<w>{_ACTS} (?:FILL|ON|OF|IT|BY){{0,3}} (?P<o>ALL|FILLER|ONLY|BY) (?:ON|OF|BY)? (?:DET)? (?P<n>NUM)) (?=SEP|$|AND|WITH|BUT)", _counted),
    Frame("(?P<w>(?P<acts>STAPLED) ON (?P<n>NUM)) (?=(?:COMMA|AND){1,2} TAPED ON NUM (?:SEP|$|BUT))", _sides),  # "stapled on three, taped on two"
    Frame("(?:K_END_CAP|K_STRAIGHT|K_PLENUM|K_ELBOW|K_TEE|K_WYE) (?:NUM|MARKED) COMMA? (?P<w>(?P<acts>TAPED) ON (?P<n>NUM)) (?=SEP|$|BUT)", lambda found: _sides(found) if found.item("n").value.value in (2, 3) else ()),  # "cap nine is taped on three"
    Frame("STAPLED (?:[^STOP QUERY]){0,6} (?P<w>(?P<acts>TAPED) ON (?P<n>NUM)) (?=SEP|$|BUT)", lambda found: _sides(found) if found.item("n").value.value in (2, 3) else ()),
    Frame(f"(?P<acts>STAPLED|STAPLES) (?:FILLER)? EVERY NUMB COMMA? (?P<w>(?:ON|AROUND|BY|ONLY){{0,2}} {_COUNT}) (?=SEP|$|AND|TAPED|RUBBED|WIPED|TRIMMED|TAPE|MARK181)", _sides),  # "stapled every two all four sides"
    Frame(f"(?P<w>ALL DET? (?P<n>NUM) (?:BE)? {_ACTS}) (?=SEP|$)", _of_the_sides),
    Frame("(?P<w>ALL DET? (?P<n>NUM) (?:HAVE|BE) (?P<acts>TAPE|STAPLES)) (?=SEP|$|AND)", _of_the_sides),
    Frame("(?P<w>SIDE_WORD (?:BE)? (?P<acts>STAPLED|TAPED) (?:COMMA|ON|ALL){0,2} (?P<n>NUM)) (?=SEP|$)", _sides),
    Frame(f"(?P<w>(?P<acts>TAPE|STAPLES|CLOSURE|MARK181) (?:FILL|ON|OF|TO|AROUND|BY|ONLY){{0,3}} {_COUNT})", _sides),
    Frame(f"(?P<w>{_ACTS} (?:FILL|ON|OF|COMMA|IT|BY|AROUND|TIGHT|ONLY){{0,3}} {_COUNT})", _sides),
    Frame(f"(?P<w>{_ACTS} (?:FILL|ON|OF|IT|BY|AROUND){{0,3}} SIDES_ALL)", _sides),
    Frame("NUM SIDE_WORD (?:FILL|OF|ON){0,3} (?:STAPLED|TAPED)? (?:COMMA|AND|BUT){1,2} (?:ONLY|FILLER)? (?P<w>(?P<n>NUM) (?:FILL)? (?P<acts>STAPLED|TAPED))", _sides),
    Frame("NUM SIDE_WORD (?:[^STOP QUERY]){0,14} (?P<w>(?P<acts>STAPLED|TAPED) OF DET? (?P<n>NUM)) (?=SEP|$)", _sides),  # "grapada de tres lados y encintada de tres"
    Frame("NUM SIDE_WORD (?:[^STOP QUERY]){0,6} (?P<w>(?P<acts>STAPLED|TAPED) ONLY? BY DET? (?P<n>NUM)) (?=SEP|$|WORD|BUT)", lambda found: _sides(found) if found.item("n").value.value <= 4 else ()),  # "la engrapé por los cuatro lados pero solo la encinté por tres"
    Frame("NUM SIDE_WORD (?:AND|COMMA|BUT){1,2} (?P<w>(?P<acts>STAPLED|TAPED) ONLY? (?P<n>NUM)) (?=SEP|$)", _sides),  # "engrapé tres lados y encinté tres"
)
