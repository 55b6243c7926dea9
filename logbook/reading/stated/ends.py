"""Ends and edges: laid out from, air leaves by, shiplap and butt edges, the groove, the freed panel."""

from __future__ import annotations

import re

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, Found, Frame, claim, taken_back
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.parts import Part
from logbook.reading.words.phrasing import words_of
from logbook.reading.words.tokens import plain

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
    inside = found.item("to").concept in ("INSIDE", "IN", "MOVE_IN")
    backs = taken_back((found.item("to"),), lambda back: "inside" if back.concept == "INSIDE" else "outside")
    at, items = found.at("to"), found.row.items
    if any(one.ends.merely_known and re.search(one.ends.merely_known, plain(found.row.words(found.first, at))) for one in LANGUAGES.values()):
        return  # "low step, I know it goes inside"
    if _no_step(found, at):
        return
    if any(items[k].concept in ("INSIDE", "OUTSIDE", "STOP") or found.row.is_blank(k) for k in range(found.first, at)):  # "wanted the low step inside, got it outside": the way it came out, and the step
        yield claim(found.row, "groove_step", "inside" if inside else "outside", at, at + 1, took_back=backs, also=((items[found.first].start, items[found.first].end),))
        return
    if _only_wished(found, at):
        return
    yield found.claim("groove_step", "inside" if inside else "outside", group="w", took_back=backs)


def _no_step(found: Found, at: int) -> bool:
    """ "There's no step outside", "the groove is flush outside": none that looks so; "the step in the groove": where it is, and not how it looks."""
    items, row = found.row.items, found.row
    before = [item.concept for item in items[max(0, found.first - 2) : found.first]]
    none = before[-1:] in (["NO"], ["NOT"]) or before[:1] in (["NO"], ["NOT"]) and before[1:] in (["DET"], ["WORD"])
    if none and not row.words(found.first, found.first + 1).lower().replace("’", "'").endswith("'s"):
        return True
    if any(row.words(k, k + 1).lower() in words_of("small.flush") for k in range(found.first, at)):
        return True
    behind = [item.concept for item in items[at + 1 : at + 3] if item.concept != "DET"][:1]
    return row.words(at, at + 1).lower() == "in" and behind in (["GROOVE"], ["SHIPLAP"])


def _only_wished(found: Found, at: int) -> bool:
    """ "Step in is how they want it", "low step, I know it goes inside": how it ought to look, and not how it does."""
    row = found.row
    said, behind = plain(row.words(found.first, at)), plain(row.text[row.items[at].end : row.items[at].end + 40])
    return any((one.ends.known and re.search(one.ends.known, said)) or (one.ends.wished and re.match(one.ends.wished, behind)) for one in LANGUAGES.values())


def step_after_wish(row: Row, claims: list[Claim], language: Language) -> list[Claim]:
    """ "Step in is how they want it and mine's out": the way it came out, told of the step that was wished otherwise."""
    words = language.ends
    if not words.turned_out or any(one.name == "groove_step" for one in claims):
        return []
    for at, item in enumerate(row.items):
        if item.concept != "GROOVE" or row.is_blank(at):
            continue
        last = row.sentence_end(at)
        said = plain(row.text[item.end : row.items[last - 1].end])
        wish = re.search(words.known, said) or re.search(words.wished.removeprefix("^"), said)
        came = next((m for m in re.finditer(words.turned_out, said) if wish is not None and m.start() > wish.end() + 1), None)
        if came is not None:
            first, until = row.within(at, last, came, item.end)
            return [claim(row, "groove_step", "inside" if came["to"].startswith("in") else "outside", first, until, also=((item.start, item.end),))]
    return []


def _wrong_way(found: Found):
    """ "groove is backwards", "the step's on the wrong side": there are two ways, and this is the other one."""
    if found.row.words(found.at("to"), found.at("to") + 1).lower() in words_of("small.wrong_way"):
        yield found.claim("groove_step", "outside", group="w")


def _went(found: Found):
    """ "The groove step could have gone in or out. It went out." """
    row, first = found.row, found.first
    if any(item.concept == "GROOVE" for item in row.items[first : first + 3]) and row.words(found.at("to"), found.at("to") + 1).lower() in ("went out", "went in", "goes out", "goes in"):
        yield found.claim("groove_step", "inside" if found.item("to").concept == "MOVE_IN" else "outside", group="w")


def _edge_looks(found: Found):
    """ "the shiplap faces out": which way the recut edge looks is which way its step does."""
    if found.row.words(found.at("to"), found.at("to") + 1).lower().split()[0] in words_of("small.looks"):
        yield from _groove(found)


def _mine_looks(found: Found):
    """ "The low step should face in, mine faces out": the speaker's own, of what was wanted before it."""
    if found.row.words(found.at("o"), found.at("o") + 1).lower() in ("mine", "ours", "mío", "mía"):
        yield from _groove(found)


def _seated(value: bool):
    return lambda found: [found.claim("panel_seated", value, group="w")]


_SIDES = "(?P<side>(?:SIDE|SIDE_WORD)(?:(?:COMMA|AND){1,2} (?:ON)? DET? (?:SIDE|SIDE_WORD)(?!(?:FILL)? (?:BUTT|SHIPLAP)))*)"
_TWO = "(?P<side>SIDE (?:(?:COMMA|AND){1,2} DET? SIDE)* | (?:DET|BOTH|ALL)? SIDE_WORD)"

def _sits_by_now(found: Found):
    """ "the panel wouldn't sit, I shaved it and now it sits" """
    if found.row.words(found.at("f"), found.at("f") + 1).lower() == "now":
        yield found.claim("panel_seated", True, group="w", corrects=True)


def by_words(row: Row, claims: list[Claim], cut_up: tuple[Part, ...], language: Language) -> list[Claim]:
    """What is said of an end that no frame took: "marks came off the male edge", "the female catches the air now"."""
    if not language.ends.air or not any(item.concept in ("FEMALE", "MALE") for item in row.items):
        return []
    made: list[Claim] = []
    told = [one for one in claims if one.name in ("made_from", "air_leaves_by")]
    for place, part in enumerate(cut_up):
        ats = [at for at in range(part.first, part.last) if row.items[at].concept in ("FEMALE", "MALE") and not row.is_blank(at) and not any(one.first <= at < one.last for one in told)]
        if any(one.name == "trimmed" and part.first <= one.first < part.last for one in claims):
            continue  # "nobody pulled the insulation out of the male end"
        if not ats or any(row.items[k].concept in ("NOT", "NO", "SHIPLAP", "BUTT") for k in range(max(part.first, ats[0] - 3), ats[0])):
            continue
        name, value = _said_of(row, cut_up, place, ats, language)
        earlier = max((one for one in [*told, *made] if one.last <= part.first), key=lambda one: one.first, default=None)
        if name is None and earlier is not None and _says_nothing_else(row, part):  # "… by the female. Male. Yes, male."
            value = "female" if row.items[ats[-1]].concept == "FEMALE" else "male"
            made.append(claim(row, earlier.name, value, ats[-1], ats[-1] + 1, corrects=True))
        elif name is not None and not any(one.name == name for one in [*told, *made]):
            made.append(claim(row, name, value, part.first, part.last))
    return made


_OTHER = {"female": "male", "male": "female"}


def _looks_to(words, text: str, towards_unit: bool) -> str | None:
    """Which way the air goes by the end that looks to the unit or to the rooms: "female toward the air handler", "male to the grille"."""
    way = "enters" if words.to_source and _find(words.to_source, text) else "leaves" if words.to_rooms and _find(words.to_rooms, text) else None
    return way if way is None or not towards_unit else "leaves" if way == "enters" else "enters"


def _says_nothing_else(row: Row, part: Part) -> bool:
    return all(item.concept in ("FEMALE", "MALE", "DET", "END", "FILLER", "FIX", "NO", "IT", "BE") for item in row.items[part.first : part.last])


def _said_of(row: Row, cut_up, place: int, ats: list[int], language: Language) -> tuple[str | None, str]:
    words, part, said = language.ends, _with_its_heading(row, cut_up[place]), "female" if row.items[ats[-1]].concept == "FEMALE" else "male"
    start = row.items[part.first].start
    before = part.words[: row.items[ats[-1]].start - start].strip()
    behind = part.words[row.items[ats[-1]].end - start :]
    looks = _looks_to(words, part.words, any(item.concept == "SERVICE" and item.value in ("return", "exhaust") for item in row.items))
    if looks is not None and len(ats) == 1 and not _find(words.acts, part.words) and not _find(words.layout, part.words):
        return "air_leaves_by", said if looks == "leaves" else _OTHER[said]
    near = [cut_up[k] for k in (place - 1, place + 1) if 0 <= k < len(cut_up) and cut_up[k].sentence == part.sentence and not any(row.items[at].concept in ("FEMALE", "MALE") for at in range(cut_up[k].first, cut_up[k].last))]
    for told in ([part], near[:1]):
        text = " ".join(one.words for one in told)
        if _find(words.air, text) and not _find(words.acts, text):
            if len(ats) == 2 and any(row.items[k].concept in ("TO", "THRU", "THROUGH") for k in range(*ats)):
                return "air_leaves_by", said
            way = _nearest_way(words, text, before, behind) if told == [part] else _way_of(words, text)
            if way is not None:
                return "air_leaves_by", said if way == "leaves" else _OTHER[said]
    wanted = cut_up[place - 1] if place and words.mine and re.match(words.mine, cut_up[place].words) else None
    if wanted is not None and part.sentence - wanted.sentence <= 1 and _find(words.air, wanted.words) and (way := _way_of(words, cut_up[place].words)) is not None:
        return "air_leaves_by", said if way == "leaves" else _OTHER[said]  # "The job wants air out the female. Mine's out the male."
    if len(ats) > 1:
        return None, ""
    if _find(words.layout, part.words) and not _find(words.acts, part.words) and _ends_with(words.leads, before):
        return "made_from", said
    if place and cut_up[place - 1].sentence == part.sentence and part.last - part.first <= 3 and _find(words.layout, cut_up[place - 1].words) and not before.strip("the ") and cut_up[place - 1].last - cut_up[place - 1].first <= 3:
        return "made_from", said  # "Layout: male end"
    if place + 1 < len(cut_up) and cut_up[place + 1].sentence == part.sentence and _find(words.layout, cut_up[place + 1].words) and re.search(words.from_there, cut_up[place + 1].words):
        return "made_from", said  # "I only had the male end free, so that's where I struck my lines from"
    return None, ""


def _with_its_heading(row: Row, part: Part) -> Part:
    """ "Laid elbow 61 out from the male end": the words before the piece belong to it."""
    first = part.first
    while first > 0 and row.items[first - 1].concept not in ("COMMA", "STOP", "QUERY", "AND", "BUT"):
        first -= 1
    return part if first == part.first else Part(first, part.last, part.sentence, plain(row.words(first, part.last)))


def _find(pattern: str, text: str) -> re.Match | None:
    return re.search(rf"(?<![\w'])(?:{pattern})(?![\w'])", text)


def _ends_with(pattern: str, text: str) -> bool:
    return re.search(rf"(?<![\w'])(?:{pattern})", text) is not None


def _way_of(words, text: str) -> str | None:
    return "leaves" if _find(words.leaves, text) else "enters" if _find(words.enters, text) else None


def _nearest_way(words, text: str, before: str, behind: str) -> str | None:
    """Which way the air goes by the verb nearest to the end."""
    found = []
    for way in ("leaves", "enters"):
        pattern = rf"(?<![\w'])(?:{getattr(words, way)})(?![\w'])"
        found += [(len(before) - m.end(), way) for m in re.finditer(pattern, before)] + [(m.start(), way) for m in re.finditer(pattern, behind)]
    return min(found)[1] if found else None


_SEATS = ("seat", "drop", "sits in")  # what only a panel does to its groove


def _seated_alone(found: Found):
    """ "Cut, low step in, seated, trimmed", "Transition nine, … Seats good.": the panel of the cut."""
    said = found.row.words(found.first, found.last).lower()
    if said.startswith(_SEATS) and any(item.concept == "K_TRANSITION" for item in found.row.items) or said in ("seated", "dropped in", "sits in") and any(item.concept in ("GROOVE", "CUT_TO", "CUT_LENGTH", "TRIMMED", "SHIPLAP") or found.row.text[item.start : item.end].lower() == "cut" for item in found.row.items):
        yield from _seated(True)(found)


def _worked_from(found: Found):
    """ "cut it from the male end", "went off the male end this time": where his measures began."""
    said = found.row.words(found.at("o"), found.at("o") + 1).lower().split()
    if not words_of("small.works_from").isdisjoint(said) and not ("cut" in said and found.item("f").concept == "OFF"):  # "cut it off the male end": a piece of it
        yield from _made_from(found)


FRAMES = (
    Frame("(?P<w>LAID (?:FILL|GENERIC|FITTING|KIND|OUT|LENGTH|AND|LAID|NUMBER|NUM){0,4} (?:FROM|OFF|ON|OF|TO|IN|BY){1,2} DET? (?P<end>ENDING) END?)", _made_from),
    Frame("(?P<w>(?P<o>MOVE|FILLER|WORD|CUT_TO|CUT_LENGTH) IT? (?P<f>FROM|OFF) DET? (?P<end>ENDING) END?)", _worked_from),
    Frame("(?P<w>MADE_FROM DET? (?P<end>ENDING) END?)", _made_from),
    Frame("(?P<w>AIR (?:FILL|WILL|I){0,2} (?:LEAVES|MOVE_OUT|MOVE|OUT|OUTLET){1,2} (?:OUT|BY|THROUGH|FROM|OF|ON|TO|DET|OFF|FILL){0,4} (?P<end>ENDING) END?)", _leaves),
    Frame("LEAVES (?:OUT|BY|THROUGH|FROM|OF|ON|DET){0,4} ENDING END? (?:COMMA|AND|BUT){1,2} (?:MARKED|NUM) (?P<w>BY DET? (?P<end>ENDING) END?)", _leaves),  # "41 leaves by the female, 42 by the male"
    Frame("(?<!AIR)(?P<w>(?:LEAVES) (?:OUT|BY|THROUGH|FROM|OF|ON|DET){0,4} (?P<end>ENDING) END?)", _leaves),
    Frame("(?P<w>(?:LEAVES|MOVE_OUT|OUT) AIR (?:BY|THROUGH|ON|OF|FROM|DET){1,3} (?P<end>ENDING) END?)", _leaves),
    Frame("(?P<w>(?:BY|ON|FROM|THROUGH) DET? (?P<end>ENDING) END? (?:FILL){0,2} (?:LEAVES|MOVE_OUT) AIR?)", _leaves),
    Frame("(?P<w>AIR BE (?P<o>LEFT_OUT) (?P<end>ENDING) END?)", lambda found: _leaves(found) if found.row.words(found.at("o"), found.at("o") + 1).lower().startswith("leaving") else ()),  # "air's leaving the male end"
    Frame("(?P<w>AIR BE (?:BY|THROUGH) DET? (?P<end>ENDING) END?)", _leaves),
    Frame("(?P<w>(?P<end>ENDING) BE OUTLET OF AIR)", _leaves),
    Frame("(?P<w>(?P<end>ENDING) END? (?:FILL|ON|SIDE_WORD){0,2} (?:DOWNSTREAM|OUTLET))", _leaves),
    Frame("(?P<w>(?P<end>ENDING) END? OUT) (?=SEP|$)", _leaves),
    Frame(f"(?P<w>SHIPLAP (?:END|FILL|ON|ALL|SIDE_WORD(?= FILL? SIDE)){{0,3}} {_SIDES})", _edge("shiplap_sides")),
    Frame(f"(?P<w>BUTT (?:END|FILL|ON|ALL|SIDE_WORD(?= FILL? SIDE)){{0,3}} {_SIDES})", _edge("butt_sides")),
    Frame(f"(?P<w>{_TWO} (?:SIDE_WORD|PANEL)? (?:FILL|HAVE|HAVING){{0,2}} SHIPLAP)", _edge("shiplap_sides")),
    Frame(f"(?P<w>{_TWO} (?:SIDE_WORD|PANEL)? (?:FILL|HAVE|HAVING){{0,2}} BUTT)", _edge("butt_sides")),
    Frame("(?P<w>GROOVE (?:IN DET? GROOVE|(?:FROM|OF) DET? SHIPLAP)? (?:(?:ON|OF|FROM|OFF) DET? (?:KIND|FITTING)? (?:NUM|MARKED))? (?:FILL|OF|ON|TO|WORD|GROOVE|SHIPLAP|MOVE|WITH|COMMA|END|THROUGH|SIDE_WORD|CLINCHED|SEATED){0,5} (?P<to>INSIDE|OUTSIDE|IN (?!DET? GROOVE)|OUT))", _groove),
    Frame("GROOVE (?:BE|FILL|MOVE){0,2} (?:INSIDE|OUTSIDE|IN|OUT|IN_PLACE) (?:ON|OF|IN) (?:NUM|MARKED) (?:AND|COMMA|BUT|FILLER){1,3} (?P<w>(?P<to>INSIDE|OUTSIDE|OUT)) (?=ON (?:NUM|MARKED))", _groove),  # "the step's inside on nine and outside on ten"
    Frame("(?:^|(?<=SEP)) DET? (?P<w>(?P<to>INSIDE|OUTSIDE) GROOVE) (?=SEP|$)", _groove),  # "Inside step."
    Frame("(?P<w>SHIPLAP DET? (?:BE|MOVE) (?:FILL|ON|WORD|COMMA|BENT){0,4} (?P<to>OUTSIDE|OUT|INSIDE)) (?=SEP|$|AND)", lambda found: _groove(found) if " " in found.row.words(found.at("to"), found.at("to") + 1) else ()),  # "el rebaje me quedó al revés, para afuera"
    Frame("GROOVE (?:NOT|WORD|FILL|MOVE|SIDE_WORD){1,4} (?:OUTSIDE|INSIDE|OUT|IN) COMMA (?:IT|FILL|WORD|MOVE){0,3} (?P<w>(?P<to>INSIDE|OUTSIDE|IN|OUT))", _groove),
    Frame("GROOVE (?:ON|OF) (?:KIND|NUM|FITTING|DET){1,3} (?:NOT|WORD|FILL|MOVE){1,3} (?:OUTSIDE|INSIDE|OUT|IN) COMMA (?:(?:ME|WORD|FILL){1,3} COMMA)? (?:IT|FILL|WORD|MOVE){0,3} (?P<w>(?P<to>INSIDE|OUTSIDE|IN|OUT)) (?=SEP|$)", _groove),
    Frame("(?P<w>VOID{2,10} STOP IT (?P<to>MOVE_OUT|MOVE_IN)) (?=SEP|$)", _went),
    Frame("(?P<w>GROOVE VOID (?:VOID|KIND|NUM|FITTING|COMMA|AND|BUT|ME|FILL|I|WORD|MOVE|IT|STOP){1,12}? (?:(?:HAVE|MOVE|WORD|CUT_TO) IT|BE) FILL? (?P<to>INSIDE|OUTSIDE))", _groove),
    Frame("(?P<w>GROOVE (?:BE|FILL|ON|DET|SIDE_WORD){0,3} (?P<to>WORD)) (?:SIDE_WORD|WORD)? (?=SEP|$|ON|AND|BUT)", _wrong_way),
    Frame("(?P<w>GROOVE VOID{1,6} (?:COMMA|STOP) (?:BUT|AND|FILLER){0,2} (?P<o>WORD) BE? (?P<to>INSIDE|OUTSIDE|MOVE_IN|MOVE_OUT)) (?=SEP|$)", _mine_looks),
    Frame("(?P<w>GROOVE (?:VOID|COMMA|AND|BUT|ME|FILL|I){1,14} (?:FILL|WORD|MOVE){0,2} IT (?P<to>INSIDE|OUTSIDE))", _groove),
    Frame("(?P<w>SHIPLAP (?:(?:ON|OF) (?:KIND|FITTING) (?:NUM|MARKED))? (?:FILL){0,2} CLINCHED (?:FILL|TO){0,2} (?P<to>INSIDE|OUTSIDE|IN|OUT))", _groove),
    Frame("(?P<w>SHIPLAP (?:FILL){0,2} (?P<to>INSIDE|OUTSIDE|IN|OUT))", _edge_looks),
    Frame("(?P<w>PANEL (?:FILL|AND|COMMA|I|WORD){0,3} SEATED)", _seated(True)),
    Frame("(?:(?<=COMMA)|(?<=STOP)) (?P<w>SEATED (?:AND SEATED)?) (?=COMMA|STOP|$|AND)", _seated_alone),
    Frame("(?:PANEL|VOID) (?:FILL|AND|COMMA|ME|VOID|NOT|WORD|STOP|TRIMMED|END|ON|SEATED){2,14} (?P<f>FILLER) (?P<w>IT SEATED)", _sits_by_now),
    Frame("(?P<w>SEATED (?:DET|FILL){0,2} PANEL)", _seated(True)),
)
