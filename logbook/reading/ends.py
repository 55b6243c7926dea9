"""Ends and edges: laid out from, air leaves by, shiplap and butt edges, the groove, the freed panel."""

from __future__ import annotations

from logbook.reading.claims import Found, Frame, taken_back

_LEFT_RIGHT = ("left", "right")


def _end(found: Found) -> str:
    return "female" if found.item("end").concept == "FEMALE" else "male"


def _other_end(found: Found):
    return taken_back((found.item("end"),), lambda back: "female" if back.concept == "FEMALE" else "male")


def _made_from(found: Found):
    yield found.claim("made_from", _end(found), group="w", took_back=_other_end(found))


def _leaves(found: Found):
    yield found.claim("air_leaves_by", _end(found), group="w", took_back=_other_end(found))


def _edge(name):
    def build(found: Found):
        sides: list[str] = []
        for item in found.items("side"):
            sides.extend(item.value if item.concept == "SIDE" else _LEFT_RIGHT if item.concept == "SIDE_WORD" else ())
        if sides:
            yield found.claim(name, tuple(dict.fromkeys(sides)), group="w", uses=("side",))

    return build


def _groove(found: Found):
    inside = found.item("to").concept in ("INSIDE", "IN")
    backs = taken_back((found.item("to"),), lambda back: "inside" if back.concept == "INSIDE" else "outside")
    yield found.claim("groove_step", "inside" if inside else "outside", group="w", took_back=backs)


def _went(found: Found):
    """ "The groove step could have gone in or out. It went out." """
    row, first = found.row, found.first
    if any(item.concept == "GROOVE" for item in row.items[first : first + 3]) and row.words(found.at("to"), found.at("to") + 1).lower() in ("went out", "went in", "goes out", "goes in"):
        yield found.claim("groove_step", "inside" if found.item("to").concept == "MOVE_IN" else "outside", group="w")


_LOOKS = frozenset("mira faces facing points pointing looks looking da apunta ve turned queda quedó quedo quedando apuntando mirando viendo para pa pa' hacia por al adentro afuera me nos".split())


def _edge_looks(found: Found):
    """ "the shiplap faces out": which way the recut edge looks is which way its step does."""
    if found.row.words(found.at("to"), found.at("to") + 1).lower().split()[0] in _LOOKS:
        yield from _groove(found)


def _seated(value: bool):
    return lambda found: [found.claim("panel_seated", value, group="w")]


_SIDES = "(?P<side>(?:SIDE|SIDE_WORD)(?:(?:COMMA|AND){1,2} (?:ON)? DET? (?:SIDE|SIDE_WORD)(?!(?:FILL)? (?:BUTT|SHIPLAP)))*)"
_TWO = "(?P<side>SIDE (?:(?:COMMA|AND){1,2} DET? SIDE)* | (?:DET|BOTH|ALL)? SIDE_WORD)"

def _sits_by_now(found: Found):
    """ "the panel wouldn't sit, I shaved it and now it sits" """
    if found.row.words(found.at("f"), found.at("f") + 1).lower() == "now":
        yield found.claim("panel_seated", True, group="w", corrects=True)


FRAMES = (
    Frame("(?P<w>LAID (?:FILL|GENERIC|FITTING|KIND|OUT|LENGTH|AND|LAID|NUMBER|NUM){0,4} (?:FROM|OFF|ON|OF|TO|IN|BY){1,2} DET? (?P<end>ENDING) END?)", _made_from),
    Frame("(?P<w>MADE_FROM DET? (?P<end>ENDING) END?)", _made_from),
    Frame("(?P<w>AIR (?:FILL|WILL|I){0,2} (?:LEAVES|MOVE_OUT|MOVE|OUT|OUTLET){1,2} (?:OUT|BY|THROUGH|FROM|OF|ON|TO|DET|OFF|FILL){0,4} (?P<end>ENDING) END?)", _leaves),
    Frame("(?<!AIR)(?P<w>(?:LEAVES) (?:OUT|BY|THROUGH|FROM|OF|ON|DET){0,4} (?P<end>ENDING) END?)", _leaves),
    Frame("(?P<w>(?:LEAVES|MOVE_OUT|OUT) AIR (?:BY|THROUGH|ON|OF|FROM|DET){1,3} (?P<end>ENDING) END?)", _leaves),
    Frame("(?P<w>(?:BY|ON|FROM|THROUGH) DET? (?P<end>ENDING) END? (?:FILL){0,2} (?:LEAVES|MOVE_OUT) AIR?)", _leaves),
    Frame("(?P<w>AIR BE (?:BY|THROUGH) DET? (?P<end>ENDING) END?)", _leaves),
    Frame("(?P<w>(?P<end>ENDING) BE OUTLET OF AIR)", _leaves),
    Frame("(?P<w>(?P<end>ENDING) END? (?:FILL|ON|SIDE_WORD){0,2} (?:DOWNSTREAM|OUTLET))", _leaves),
    Frame(f"(?P<w>SHIPLAP (?:END|FILL|ON|ALL){{0,3}} {_SIDES})", _edge("shiplap_sides")),
    Frame(f"(?P<w>BUTT (?:END|FILL|ON|ALL){{0,3}} {_SIDES})", _edge("butt_sides")),
    Frame(f"(?P<w>{_TWO} (?:SIDE_WORD|PANEL)? (?:FILL|HAVE){{0,2}} SHIPLAP)", _edge("shiplap_sides")),
    Frame(f"(?P<w>{_TWO} (?:SIDE_WORD|PANEL)? (?:FILL|HAVE){{0,2}} BUTT)", _edge("butt_sides")),
    Frame("(?P<w>GROOVE (?:FILL|OF|ON|TO|WORD|GROOVE|SHIPLAP|MOVE|WITH|COMMA|END|THROUGH|SIDE_WORD){0,5} (?P<to>INSIDE|OUTSIDE|IN|OUT))", _groove),
    Frame("GROOVE (?:NOT|WORD|FILL|MOVE|SIDE_WORD){1,4} (?:OUTSIDE|INSIDE|OUT|IN) COMMA (?:IT|FILL|WORD|MOVE){0,3} (?P<w>(?P<to>INSIDE|OUTSIDE|IN|OUT))", _groove),
    Frame("GROOVE (?:ON|OF) (?:KIND|NUM|FITTING|DET){1,3} (?:NOT|WORD|FILL|MOVE){1,3} (?:OUTSIDE|INSIDE|OUT|IN) COMMA (?:(?:ME|WORD|FILL){1,3} COMMA)? (?:IT|FILL|WORD|MOVE){0,3} (?P<w>(?P<to>INSIDE|OUTSIDE|IN|OUT)) (?=SEP|$)", _groove),
    Frame("(?P<w>VOID{2,10} STOP IT (?P<to>MOVE_OUT|MOVE_IN)) (?=SEP|$)", _went),
    Frame("(?P<w>GROOVE (?:VOID|COMMA|AND|BUT|ME|FILL){1,14} (?:FILL|WORD|MOVE){0,2} IT (?P<to>INSIDE|OUTSIDE))", _groove),
    Frame("(?P<w>SHIPLAP (?:FILL){0,2} (?P<to>INSIDE|OUTSIDE|IN|OUT))", _edge_looks),
    Frame("(?P<w>PANEL (?:FILL|AND|COMMA|I|WORD){0,3} SEATED)", _seated(True)),
    Frame("(?:PANEL|VOID) (?:FILL|AND|COMMA|ME|VOID|NOT|WORD|STOP|TRIMMED|END|ON|SEATED){2,14} (?P<f>FILLER) (?P<w>IT SEATED)", _sits_by_now),
    Frame("(?P<w>SEATED (?:DET|FILL){0,2} PANEL)", _seated(True)),
)
