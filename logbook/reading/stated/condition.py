"""How the piece came out: vanes, gaps and damage."""

from __future__ import annotations

import re
from fractions import Fraction
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.another_part import of_another_part
from logbook.reading.clauses.claims import Claim, Found, Frame, Open, claim, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.names.other_things import of_something_else
from logbook.reading.stated.mended import method, repaired
from logbook.reading.stated.of_none import of_none
from logbook.reading.words.phrasing import apart, finds, words_of
from logbook.reading.words.tokens import plain
from logbook.reading.own.vanes_counted import fewer_than, more_are_due, only_so_many


def _vanes(found: Found):
    """Not where they are or do something these words do not know, or are counted short: "vanes are MIA", "los álabes juegan", "le puse nomás una aleta"."""
    row, at = found.row, found.last - 1 if found.row.words(found.last - 1, found.last).lower().endswith(" are") else found.last
    if at + 1 < len(row.items) and row.items[at].concept in ("BE", "VANES") and row.items[at + 1].concept == "WORD" and row.words(at + 1, at + 2).lower() not in words_of("small.held"):
        behind = row.words(at + 1, min(at + 16, len(row.items))).lower().split()
        if not {"own", "propias"} & set(behind):  # "vanes were ordered, they never came, so I bent my own"
            return
    verb = at + 1 if at < len(row.items) and row.items[at].concept == "DET" else at  # "las aletas se movieron"
    if verb < len(row.items) and row.items[verb].concept == "WORD" and _does().match(plain(row.words(verb, verb + 1))) is not None:
        return
    if found.last < len(row.items) and row.words(found.last, found.last + 1).lower() in words_of("small.falls_short"):
        return  # "one vane short of what it needs"
    if _are_missing(row, found.last):
        return  # "the vanes for the next one are missing"
    until = more_are_due(row, found.first, found.last)
    if until is not None:
        yield claim(row, "vanes", False, found.first - 1, until, hedged=False)
        return
    if fewer_than(row, found.first):
        yield found.claim("vanes", False, group="w", hedged=False)
        return
    if only_so_many(row, found.first, found.last) or _among_strange_words(row, found.first, found.last) or _denied_behind(row, found.last):
        return
    yield found.claim("vanes", True, group="w")


def _are_missing(row: Row, at: int) -> bool:
    while at < len(row.items) and row.items[at].concept not in _ENDS:
        if row.items[at].concept == "MISSING" and row.items[at - 1].concept == "BE" and not row.is_blank(at):
            return True
        at += 1
    return False


def _denied_behind(row: Row, at: int) -> bool:
    """ "The vanes nobody found": where what is denied was not understood, nothing says that they are in."""
    first = at
    while at < len(row.items) and row.items[at].concept in ("I", "OTHER", "FILLER", "HAVE", "HAVING", "WILL"):
        at += 1
    return at > first and row.items[first].concept in ("I", "OTHER") and at < len(row.items) and row.items[at].concept in ("NOT", "NO", "NOT_DONE", "FORGOT") and not row.is_blank(at)


_NEAR = 4  # items
_ENDS = ("COMMA", "STOP", "QUERY", "AND", "BUT")


def _among_strange_words(row: Row, first: int, last: int) -> bool:
    """ "The vanes you sent are lovely", "vanes are for other people": the noun by itself states nothing where words that nobody knows stand beside it."""
    noun = row.words(first, last).lower()
    language = next((one for one in LANGUAGES.values() if one.acts.with_vanes and re.search(one.acts.vanes, noun)), None)
    if language is None:
        return False
    behind = last
    while behind < len(row.items) and row.items[behind].concept == "BE":
        behind += 1
    if last < behind < len(row.items) and row.items[behind].concept == "OF":
        return True
    for step, edge in ((-1, first), (1, last - 1)):
        for at in range(edge + step, edge + step * (_NEAR + 1), step):
            if not 0 <= at < len(row.items) or row.items[at].concept in _ENDS:
                break
            if step > 0 and row.items[at].concept == "WORD" and re.match(language.acts.because, row.words(at, at + 1).lower()):
                break  # "the vanes are in because I had them left over"
            if row.items[at].concept == "WORD" and row.words(at, at + 1).lower() not in language.acts.with_vanes:
                return True
    return False


@cache
def _does() -> re.Pattern[str]:
    return re.compile("|".join(language.acts.does for language in LANGUAGES.values()))


def _tight(found: Found):
    """Not where it is the tabs that are tight, or the room to work in."""
    last = found.first - 1
    if "PARTED" in [item.concept for item in found.row.items[max(0, found.first - 2) : found.first]]:
        return  # "didn't pull up tight"
    if last >= 0 and found.row.items[last].concept in ("LAID", "IT", "FILLER"):  # "a loose flap, but I pulled it tight": of the flap
        before = [item.concept for item in found.row.items[max(0, last - 6) : last]]
        if "FLAP" in before and not {"STOP", "QUERY", "JOINT"} & set(before[before.index("FLAP") :]):
            return
    if _not_so_tight(found):
        yield from _some_gap(found)
        return
    behind = found.row.text[found.row.items[found.last - 1].end : found.row.items[found.last - 1].end + 24].lower().split()
    if behind and behind[0].strip(",.") in ("against", "spot", "squeeze", "quarters", "space", "up", "back", "to") and (behind[0] not in ("up", "back", "to") or behind[1:2] in (["against"], ["there"], ["in"], ["reach"], ["get"], ["the"])):
        return
    if behind[:2] in (["i", "know"], ["i", "know."], ["little"]) or _turns_tight(found) or (found.row.words(found.first, found.last).lower().endswith("fit") and behind[:1] in (["in"], ["up"], ["between"], ["around"], ["there"])):
        return
    said = found.row.words(max(0, found.first - 2), found.first).lower() if found.first else ""
    if said.endswith((" was", " a")) and (behind[:1] == ["but"] or found.row.words(found.first, found.last).lower().endswith("fit")):
        return
    for item in reversed(found.row.items[max(0, found.first - 6) : found.first]):
        if item.concept in ("TABS", "TAB_WORD", "VANES", "STAPLES", "SCREWS", "BENT", "CLINCHED"):  # "vanes are in and screwed tight", "never bent them tight"
            return
        if item.concept in ("COMMA", "STOP", "BUT"):
            break
    yield found.claim("gap", Fraction(0), group="w")


def _not_so_tight(found: Found) -> bool:
    """ "not butted tight", "isn't really pulled up tight": the denial stands before a word that is nobody's."""
    at = found.first - 1
    while at >= max(0, found.first - 3) and found.row.items[at].concept in ("WORD", "UP", "FILLER", "LAID", "SEATED", "MOVE", "BUTT"):
        at -= 1
    return 0 <= at < found.first - 1 and found.row.items[at].concept == "NOT"


def _turns_tight(found: Found) -> bool:
    """ "a two inch radius, it's a tight little thing": the turn is, not the joint."""
    for item in reversed(found.row.items[max(0, found.first - 16) : found.first]):
        if item.concept in ("STOP", "QUERY", "JOINT"):
            return False
        if item.concept == "THROAT":
            return True
    return False


def _gap(found: Found):
    item = found.item("n")
    lead = [i.concept for i in found.row.items[max(0, found.first - 5) : found.first]]
    lead = lead[max((k + 1 for k, concept in enumerate(lead) if concept in ("STOP", "QUERY", "TAPED")), default=0) :]
    spaced = bool({"STAPLES", "STAPLED", "TABS", "SCREWS"} & set(lead))
    if spaced and found.row.text[found.row.items[found.last - 1].end :].lower().lstrip().startswith("between"):
        yield found.claim("staple_spacing", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))
    elif item.value.value <= 12:
        yield found.claim("gap", item.value.value, group="w", uses=("n",), said_unit=unit_of(item))


def _through(found: Found):
    """ "I can see my flashlight through the corner": open, whatever else is said of it."""
    if found.row.words(found.at("g"), found.at("g") + 1).lower().endswith("through"):
        yield from _some_gap(found)


def _left_open(found: Found):
    """ "codo 4 con la junta abierta" """
    if found.row.words(found.at("g"), found.at("g") + 1).lower().endswith(("abierta", "abiertas")):
        yield from _some_gap(found)


def _opening(found: Found):
    """ "a three-sixteenths opening": so small a one is at the joint, and not for a branch."""
    before = [item.concept for item in found.row.items[max(0, found.first - 3) : found.first]]
    if found.item("n").value.value < 1 and "BRANCH_WORD" not in before:
        yield from _gap(found)


def _gap_after(found: Found):
    """ "tight except the one corner, call it a sixteenth": the size of the gap stands behind the corner that has it."""
    if found.item("n").value.value <= 2:
        yield found.claim("gap", found.item("n").value.value, group="w", uses=("n",), said_unit=unit_of(found.item("n")), corrects=True)


def _open_corner(found: Found):
    """ "the corner's open half an inch" """
    if found.row.words(found.at("o"), found.at("o") + 1).lower() in ("open", "opened", "abierta", "abierto") and found.item("n").value.value <= 12:
        yield found.claim("gap", found.item("n").value.value, group="w", uses=("n",), said_unit=unit_of(found.item("n")))


_BETWEEN = ("between", "entre")
_SPACED = ("STAPLES", "STAPLED", "TABS", "SCREWS", "K_HANGER", "EVERY", "WASHERS", "DAMAGE", "LEG", "TAPE")


def _ends_apart(found: Found):
    """ "a sixteenth apart at the heel", "a quarter inch between the pieces": of the joint, where nothing else is spaced."""
    if found.at("o") is not None and found.row.words(found.at("o"), found.at("o") + 1).lower() not in _BETWEEN:
        return
    lead = [item.concept for item in found.row.items[max(0, found.first - 8) : found.first]]
    lead = lead[max((k + 1 for k, concept in enumerate(lead) if concept in ("STOP", "QUERY")), default=0) :]
    if found.item("n").value.value <= 2 and not set(_SPACED) & set(lead):
        yield found.claim("gap", found.item("n").value.value, group="w", uses=("n",), said_unit=unit_of(found.item("n")))


def _opened(found: Found):
    """ "opened up half an inch" """
    if found.row.words(found.at("o"), found.at("n")).lower().startswith(("opened", "gapped", "spread")) and found.item("n").value.value <= 2:
        yield found.claim("gap", found.item("n").value.value, group="w", uses=("n",), said_unit=unit_of(found.item("n")))


def _stands_open(found: Found):
    """ "joint's open on the left" """
    if found.row.words(found.at("o"), found.at("o") + 1).lower() not in ("open", "gapped", "gapping", "abierta"):
        return
    lead = [item.concept for item in found.row.items[max(0, found.first - 3) : found.first]]
    while lead and lead[-1] in ("DET", "OF"):
        lead.pop()
    if lead[-1:] == ["NO"]:  # "none of the joints are open"
        yield found.claim("gap", Fraction(0), group="w", hedged=False)
    else:
        yield from _some_gap(found)


def closed_again(row: Row, claims: list[Claim], language: Language) -> list[Claim]:
    """ "gap, half inch, closed it up, tight now": it was, and is no more."""
    gaps = [c for c in claims if (c.name == "gap" and c.value > 0) or (c.name == "(open)" and any(row.items[k].concept in ("GAP", "PARTED") or row.items[k].concept == "JOINT" and not c.pending for k in range(c.first, c.last)))]
    done = list(claims)
    for one in gaps:  # "tight, except the corner gaps": it is not tight
        if one.name == "(open)":
            done = [c for c in done if not (c.name == "gap" and c.value == 0 and (0 <= one.first - c.last <= 12 and not _another_piece(row, c.last, one.first) or _elsewhere(row, one, c)))]
    for one in gaps:
        last, stops = one.last, 0
        while last < len(row.items) and stops < 2:
            if _another_piece(row, last, last + 1) and not _sits_on(row, one.last, last):
                break
            stops += row.items[last].concept in ("STOP", "QUERY")
            last += 1
        if last == one.last:
            continue
        behind = row.text[row.items[one.last - 1].end : row.items[last - 1].end].lower().replace("’", "'")
        match = finds(apart(language.code, "turns.closes"), behind)
        if match is None:
            continue
        at, _ = row.within(one.last, last, match, row.items[one.last - 1].end)
        if of_another_part(row, one.first, at):
            continue
        if one.name == "(open)":
            done.remove(one)
        done.append(claim(row, "gap", Fraction(0), at, at + 1, corrects=True, hedged=False))
    return done


def _elsewhere(row: Row, one: Claim, other: Claim) -> bool:
    """ "The heel side is tight", behind a gap of the throat side: it is of the heel alone."""
    return one.last <= other.first and not other.corrects and not _another_piece(row, one.last, other.first) and of_another_part(row, one.first, other.first)


def _sits_on(row: Row, behind: int, at: int) -> bool:
    """ "the joint is open on straight 4": the one piece of the note, by its joint."""
    return all(item.concept in ("ON", "IN", "OF", "FROM", "OFF", "DET", "JOINT", "END", "SIDE", "SIDE_WORD", "WORD") for item in row.items[behind:at]) and not _another_piece(row, 0, behind)


def _another_piece(row: Row, first: int, last: int) -> bool:
    return any(item.concept.startswith("K_") or item.concept == "FITTING" for item in row.items[first:last])


_OF_MINE = re.compile(r"\W*(?:in|between|of) (?:my|his|her|their|your) (?:own )?(?:\w+ )?(?:tooth|teeth|smile|schedule|day|week|knowledge|memory|fingers|toes|pants|shirt|gloves?)\b")


def _some_gap(found: Found):
    """A gap without its size: no length was said, but it is not closed either."""
    row, first, last = found.row, found.first, found.last
    if _OF_MINE.match(row.text[row.items[last - 1].end :].lower()) or not words_of("small.minds").isdisjoint(row.words(first, last).lower().split()):
        return
    yield found.claim("(open)", None, group="w", opens=(Open("piece", None, row.items[first].start, row.items[last - 1].end),))


def _damage(found: Found):
    if of_something_else(found.row, found.at("d")):
        return
    if (first := of_none(found.row, found.at("d"))) is not None:
        yield claim(found.row, "facing_damage", "none", first, found.last, weak=True)
        return
    told = found.row.words(found.at("d"), found.at("d") + 1).lower().startswith(("le pegaron", "le dieron", "le pegó", "le di ", "le dimos")) or found.row.words(found.at("d"), found.at("d") + 1).lower().endswith("azo")  # what was done to it; what it left may be told by its name
    yield found.claim("facing_damage", found.item("d").value, group="d", weak=told)


_WIDEST = 12  # in.: what a bare number before a harm may tell the width of


def _width(found: Found):
    item = found.item("n")
    if item.concept == "NUM" and found.row.words(found.last - 1, found.last).lower() in words_of("small.several_harms"):
        return  # "nine holes": how many, not how wide
    if item.concept == "NUM" and item.value.value == 1 and not item.value.digits:
        return  # "one tear is patched"
    if item.concept == "NUM" and item.value.value > _WIDEST:
        return  # "it's fifty-six that got wet": a mark
    if found.row.items[found.last - 1].concept == "LONG" and _wide_behind(found.row, found.last):
        return  # "three inches long, quarter inch wide": the width is told next
    yield found.claim("damage_width", item.value.value, group="w", uses=("n", "l"), said_unit=unit_of(item))


def _wide_behind(row: Row, at: int) -> bool:
    concepts = [item.concept for item in row.items[at : at + 6]]
    return any(one in ("LEN", "FRAC", "NUM") and two == "WIDE" for one, two in zip(concepts, concepts[1:])) and "STOP" not in concepts[: concepts.index("WIDE")]


def _small_width(found: Found):
    """ "A tear in the foil on the plenum, mark two, maybe a quarter inch": of the tear, where it could be no piece's length."""
    if found.item("n").value.value <= 6:
        yield from _width(found)


def _none(found: Found):
    yield found.claim("facing_damage", "none", group="w")


FRAMES = (
    Frame("(?P<w>TURNING? VANES (?:FILL){0,2} (?:IN|IN_PLACE)|TURNING? VANES)", _vanes),
    Frame("(?P<w>NO_DAMAGE)", _none),
    Frame("(?P<w>(?P<n>LEN|FRAC|NUM) (?:FILL|WIDE|LONG){0,2} DAMAGE)", _width),
    Frame("DAMAGE (?:FILL|COMMA|IN|ON|FITTING|KIND|NUM|DET|FACING|OF|WORD|SIDE|JOINT|SIDE_WORD){0,6} (?P<l>LEN|FRAC|NUM) LONG (?:COMMA|AND|BY){0,2} (?:FILL){0,2} (?P<w>(?P<n>LEN|FRAC|NUM) WIDE)", _width),
    Frame("DAMAGE (?:FROM|OF|ON|IN) DET? (?:KIND|FITTING) NUMBER? (?:NUM|MARKED) COMMA (?:FILLER|WORD){1,2} BE (?P<w>(?P<n>LEN|FRAC) WIDE)", _width),  # "la rotura del codo 7, que mide una pulgada de ancho, la arreglé"
    Frame("DAMAGE (?:IN|ON|OF) (?:DET|FACING|BOARD|DAMAGE_PLACE|ON|IN|OF|SIDE){0,4} (?:KIND|NUMBER|FITTING) (?:COMMA? NUMBER)? (?:NUM|MARKED)? COMMA (?:FILL){0,2} (?P<w>(?P<n>LEN|FRAC) (?:WIDE|LONG|ROUND|OVER)?) (?=COMMA|STOP|$|AND|WITH)", _small_width),
    Frame("DAMAGE (?:FILL|COMMA|IN|IN_PLACE|ON|FITTING|NUM|DET|FACING|OF|WORD|SIDE|JOINT|DAMAGE_PLACE|SIDE_WORD|SIZE_WORD){0,5} (?P<w>(?P<n>LEN|FRAC) (?:WIDE|LONG|ROUND)?) (?!BOARD|TAPE)", _width),
    Frame("DAMAGE (?:FILL|HEDGE|BE|HAVE){0,2} (?P<w>(?P<n>LEN|FRAC) LONG?) (?=(?:DOWN|UP|ON|OVER|IN|AROUND) (?:DET|SIDE|FACING|JOINT))", _width),
    Frame("DAMAGE [^STOP QUERY LEN FRAC NUM EVERY STAPLED STAPLES TABS SCREWS GAP JOINT LONG TAPED CUT_LENGTH SIZE KIND WASHERS OFFSETS]{2,9} COMMA (?:HEDGE|FILLER){0,2} (?P<w>(?P<n>LEN|FRAC) (?:WIDE|LONG|ROUND)?) (?=SEP|$|IT BE)", _small_width),
    Frame("(?<!TAPE)(?P<d>DAMAGE) (?!(?:DET|MARK181|CLOSURE|NUMB|WIDE){0,3} TAPE (?!BE|OVER|WORD)|(?:DET|NUMB|WIDE){0,3} WORD (?:OFF|OF|FROM) (?:DET|WORD|WIDE){0,2} (?:COUNTED|TAPE))", _damage),
    Frame("(?P<w>REPAIRED)", repaired),
    Frame("(?P<w>(?P<m>METHOD))", method),
    Frame("(?P<w>(?P<n>LEN|FRAC|NUM) (?:FILL|OF){0,2} GAP)", _gap),
    Frame("(?P<w>GAP (?:FILL|OF|ON|IN|JOINT|SIDE|SIDE_WORD|END|KIND|NUM|MARKED|FITTING|NUMBER){0,8} (?:STOP|COMMA) BE? (?:HEDGE|ONLY|FILLER|DET){0,3} (?P<n>LEN|FRAC)) (?=SEP|$|ON|IN|AND|BUT|WIDE)", _gap),  # "there's a gap at the joint. It's about a quarter inch"
    Frame("(?P<w>GAP (?:FILL|OF|ON|IN){0,2} (?:JOINT|SIDE|END)? (?:FILL|OF|ON|IN){0,2} KIND (?:NUM|MARKED) COMMA (?:FILL|HEDGE){0,2} (?P<n>LEN|FRAC)) (?!APART|BOARD|STAPLES|TAPES|LEG|LONG|DAMAGE|WASHERS|STATIC|OF STATIC)", _gap),
    Frame("(?:SEATED|JOINT|END|BRANCH_WORD) (?P<w>LEAVES (?:HEDGE|DET|ME|FILLER){0,2} (?P<n>FRAC|LEN)) (?=SEP|$|(?:ON|IN|OF|AROUND|OVER) (?:DET|NUM|WORD){0,2} (?:JOINT|SIDE|SIDE_WORD|END|BACK))", _gap),
    Frame("TIGHT (?:AROUND|FILL|ON|OF|SIDE_WORD){0,3} COMMA? (?:EXCEPT|BUT|ALL_BUT) (?:FILL|ON|OF){0,4} (?P<w>(?P<n>LEN|FRAC)) (?!STAPLES|BOARD|TAPE|LEG)", _gap),
    Frame("TIGHT (?:AROUND|FILL|ON|OF|SIDE_WORD|EXCEPT (?=BUT)){0,3} COMMA? (?:EXCEPT|BUT|ALL_BUT|ONLY) (?:FILL|ON|OF|IN|ONLY|NUM (?=JOINT|SIDE_WORD|SIDE|END)){0,4} (?:JOINT|SIDE|SIDE_WORD|END|WORD) (?:FILL|WORD|ME|IN|ON|UP|SEE|COMMA|NUMBER|JOINT|SIDE|FITTING|BACK|THROUGH|QUESTION|SHOWS|BUILDING|MOVES|MOVE|PLACE_NOUN|IN_PLACE|PARTED|GAP){0,12} (?P<w>(?P<n>LEN|FRAC)) (?!STAPLES|BOARD|TAPE|LEG|APART|BACK)", _gap_after),
    Frame("(?P<w>(?P<n>LEN|FRAC) APART) (?=(?:FILL|ON|IN){1,3} WORD? (?:THROAT|JOINT|END))", _ends_apart),
    Frame("(?P<w>(?P<n>LEN|FRAC) (?P<o>WORD)) (?=DET? (?:NUM (?=FITTING|END|JOINT))? (?:FITTING|END|JOINT))", _ends_apart),
    Frame("(?:END|JOINT|FITTING|PANEL|BOTH) (?:FILL|SEATED|WORD|MOVE|LAID){0,3} (?P<w>(?P<n>LEN|FRAC) APART)", _ends_apart),
    Frame("(?P<w>(?P<n>LEN|FRAC) OPENING) (?=(?:ON|IN|BACK)? DET? SIDE? (?:SIDE|JOINT|END|SIDE_WORD)?(?:SEP|$|AND|WITH|FILLER))", _opening),
    Frame("(?P<w>OPENING (?:FILL|OF|HEDGE){1,3} (?P<n>LEN|FRAC)) (?=SEP|$|AND|ON|IN|SIDE|LEFT_OUT|LEAVES|BACK)", _opening),
    Frame("(?<!NOT)(?<!NO)(?<!SEE)(?P<w>(?P<g>GAP)) (?=(?:FILL|ON|IN|BY (?=JOINT)){0,2} (?:JOINT|SIDE|END|SIDE_WORD|BRANCH_WORD|THROAT|WORD|IT|FITTING))", _through),
    Frame("(?P<w>WITH (?P<g>GAP)) (?=SEP|$|AND|BUT)", _left_open),
    Frame("(?P<w>GAP (?P<n>NUM)) (?=SEP|$)", lambda found: _gap(found) if found.item("n").value.value == 0 else ()),
    Frame("(?P<w>GAP NO) (?=SEP|$)", lambda found: [found.claim("gap", Fraction(0), group="w")]),
    Frame("(?P<w>(?P<n>LEN|FRAC) OPENING) (?=(?:FILL|SHOWS|ON|IN|OF|LEFT_OUT|SIDE){1,4} (?:JOINT|END))", _gap),
    Frame("(?P<w>OPENING (?:FILL|OF|HEDGE){1,3} (?P<n>LEN|FRAC)) (?=(?:FILL|ON|IN){1,3} (?:JOINT|END))", _gap),
    Frame("(?P<w>(?P<n>LEN|FRAC) (?:OF WORD)? SHOWS) (?=ON|IN|SEP|$|BACK|OVER|ALL|AROUND)", _gap),
    Frame("(?P<w>(?P<n>LEN|FRAC) (?P<o>WORD)) (?!END|SIDE)", _open_corner),
    Frame("(?P<w>(?P<o>WORD|MOVE_OUT) UP? (?P<n>LEN|FRAC)) (?!BACK|ON SIDE|STAPLES|TAPE)", _opened),
    Frame("(?P<w>JOINT (?:FILL){0,2} (?P<o>WORD) (?:FILL|ON|OF){0,2} (?P<n>LEN|FRAC))", _open_corner),
    Frame("(?P<w>JOINT SIDE (?:FILL|DET){0,3} (?P<o>WORD) (?:FILL|ON|OF){0,2} (?P<n>LEN|FRAC)) (?!APART|BOARD|STAPLES|TAPES|LEG|LONG|DAMAGE|WASHERS|STATIC|OF STATIC)", _open_corner),  # "la junta de abajo quedó abierta un octavo"
    Frame("(?P<w>JOINT (?:ON|IN|SIDE|SIDE_WORD|FILL){0,4} (?P<o>WORD) (?:DET WORD)? COMMA (?:HEDGE|FILLER){0,2} (?P<n>FRAC|LEN)) (?!APART|BOARD|STAPLES|TAPE|LEG|LONG)", _open_corner),
    Frame("(?P<w>(?:HAVE|BE|(?<!NOT)(?<!NO)(?<!NOT_DONE)SIDE (?=DET)) (?:DET|HEDGE|FILLER|WORD){0,3} GAP) (?!(?:FILL|OF|ON|COMMA|SIDE|SIDE_WORD|THROAT|JOINT|AND|NUMBER|NUM (?=SIDE|SIDE_WORD|JOINT)){0,7} (?:(?:LEN|FRAC) (?!STAPLES|BOARD|TAPE|LEG)|REPAIRED|SEALED|TAPED|C_MASTIC)|THROUGH)(?<!(?:TIGHT))", _some_gap),
    Frame("(?P<w>(?:SEE|JOINT|(?:(?<=COMMA)|(?<=STOP)|(?<=BUT)) (?:DET|WORD|HEDGE){1,2}) (?:DET|FILLER){0,2} GAP) (?!(?:FILL|OF|ON|COMMA|SIDE|SIDE_WORD|THROAT|JOINT|AND|NUMBER|NUM (?=SIDE|SIDE_WORD|JOINT)){0,7} (?:(?:LEN|FRAC) (?!STAPLES|BOARD|TAPE|LEG)|REPAIRED|SEALED|TAPED|C_MASTIC))", _some_gap),
    Frame("(?:^|(?<=COMMA)|(?<=STOP)|(?<=BUT)|(?<=AND)) (?P<w>GAP) (?=(?:ON|IN|BY) DET? (?:SIDE|WORD)? JOINT{1,2} (?:STOP|COMMA (?!NO|LEN|FRAC|HEDGE|REPAIRED|SEALED|TAPED)|$))", _some_gap),  # "gap at the corner joint"
    Frame("(?P<w>GAP (?:BE|FILL|COMMA|SHOWS|DET){1,4} (?P<o>WORD) (?:FILL|ON|OF){0,2} (?P<n>LEN|FRAC))", _open_corner),  # "no me cerró la unión, está abierta tres octavos"
    Frame("(?P<w>JOINT (?:FILL|SIDE){0,3} MOVE_OUT (?:FILL|OF|HEDGE){0,2} (?P<n>LEN|FRAC)) (?!BACK|ON (?:SIDE|NUMB))", _gap),  # "la junta abre un octavo"
    Frame("(?P<w>GAP COMMA (?:SHOWS|SEE|BE|HAVE) (?:FILL|OF|HEDGE){0,2} (?P<n>LEN|FRAC)) (?!APART|BOARD|STAPLES|TAPES|LEG|LONG|DAMAGE|WASHERS|STATIC|OF STATIC)", _gap),
    Frame("(?P<w>JOINT (?:FILL){0,2} (?P<o>WORD)) (?!(?:FILL|ON|OF){0,2} (?:LEN|FRAC))", _stands_open),
    Frame("(?P<w>GAP (?:ON|IN) DET? (?:WORD|JOINT|SIDE|SIDE_WORD|END|BACK|THROAT) (?:FILL){1,3} (?P<n>LEN|FRAC)) (?!APART|BOARD|STAPLES|TAPES|LEG|LONG|DAMAGE|WASHERS|STATIC|OF STATIC)", _gap),
    Frame("(?P<w>GAP (?:FILL|OF|ON|BY|COMMA|SIDE|SIDE_WORD|THROAT|JOINT|NUM (?=SIDE|SIDE_WORD|JOINT)){0,7} (?P<n>LEN|FRAC)) (?!APART|BOARD|STAPLES|TAPES|LEG|LONG|DAMAGE|WASHERS|STATIC|OF STATIC)", _gap),
    Frame("(?<!NOT)(?<!BENT)(?P<w>(?:JOINT FILL{0,2})? TIGHT) (?!(?:FILL)? TABS)(?!(?:WORD|FILLER) (?:WORD|GENERIC))", _tight),
)
