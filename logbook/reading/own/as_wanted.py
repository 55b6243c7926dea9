"""A measure that was asked for, drawn or meant, and the one it came out as: "spec says two inches, mine came out closer to three".

What was wanted states nothing of the piece. What stands behind it (or right before it) with a measure of the same sort is what was built, whoever's
measure it is: the thing is named once, with either of them or before both.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from fractions import Fraction

from logbook.facts import Move
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.parts import Part
from logbook.reading.words.likely import Likely, standing
from logbook.reading.words.phrasing import apart, choice, finds, is_whole, rows, word
from logbook.reading.words.tokens import plain

_MEASURES = ("NUM", "LEN", "FRAC")
_NAMES = ("FITTING", "NUMBER", "RUN", "MARKED", "DASH", "LETTER", "BY", "THROUGH", "THRU")
_STAPLES = ("STAPLES", "STAPLE", "STAPLED")
_OWNERS = {
    **dict.fromkeys(_STAPLES, "staples"), "LEG": "staple_leg", "SCREWS": "screw_spacing", "WASHERS": "washer_size", "TABS": "tabs", "K_HANGER": "hanger_spacing", "HANG": "hanger_spacing", "HUNG": "hanger_spacing", "TAPE": "tape_width",
    "MARK181": "tape_width", "CLOSURE": "tape_width", "THROAT": "throat_radius", "GAP": "gap", "PARTED": "gap", "TIGHT": "gap", "JOINT": "gap", "BACK": "back", "SLOPE": "taper_length", "LONG": "length", "LENGTH": "length",
}  # fmt: skip
_MATTERS = frozenset((*_OWNERS, "TAPED", "RUBBED", "SIZE", "VANES", "DAMAGE", "STATIC", "CFM", "LB", "DEG", "TEMP_F", "SLOPE", "BOARD", "SIDE", "SIDES_ALL", "SIDE_WORD", "QUERY"))
_NAMED_FAR = ("staples", "screw_spacing", "tabs", "hanger_spacing", "washer_size", "throat_radius", "back")  # things that were named before both measures
_WITHIN = {
    "staple_spacing": (Fraction(1, 2), 24), "staple_leg": (Fraction(1, 8), Fraction(3, 2)), "screw_spacing": (2, 48), "washer_size": (Fraction(1, 4), 6), "cross_tab_length": (1, 48),
    "cross_tab_spacing": (1, 48), "hanger_spacing": (12, 240), "tape_width": (Fraction(1, 2), 6), "throat_radius": (0, 72), "gap": (0, 6), "length": (4, 600), "back": (1, 240), "taper_length": (6, 240),
}  # fmt: skip
_PLAIN = ("back", "length")  # of a thing that is named beside it, else of the piece
_SAYS_TOO = {"staple_spacing": "stapled", "cross_tab_length": "cross_tabs", "cross_tab_spacing": "cross_tabs"}
_HEADING = ("SIZE", "DET", "FILLER", "AND", "ON", "OF", "DEG", "SERVICE", "MARKED", "NUMBER", "FITTING", "LETTER", "RUN")
_LOOK_BACK = 40  # items
_FEWEST_BACK = 8  # inches; less than that is no length that a side moves over
_TAB = 8  # inches a cross tab is long, which tells its length from how far apart; source: the rules' own limit


@dataclass
class AsWanted:
    claims: list[Claim] = field(default_factory=list)
    spent: set[int] = field(default_factory=set)
    wished: set[int] = field(default_factory=set)  # items that tell only what was wanted
    of_piece: set[int] = field(default_factory=set)


def as_wanted(row: Row, cut_up: tuple[Part, ...], language: Language) -> AsWanted:
    found = AsWanted()
    if not language.told.wanted.looks or not choice(language.code, "told.wanted.looks").search(plain(row.text)):
        return found
    wants = standing(rows(language.code, "told.wanted.wants"), plain(row.text))
    for place, part in enumerate(cut_up):
        if found.spent.intersection(range(part.first, part.last)) or row.is_blank(part.first):
            continue
        wanted = _wanted(row, part, wants, language)
        if wanted is None or _acts_to_do(row, part):
            continue
        if _of_a_sort(row, cut_up, place, wanted, language, found):
            continue
        for last, one in _told_apart(row, cut_up, place, wanted, language):
            asked = _once(row, _measures(row, one.first, one.last, language))
            thing = _thing(row, cut_up, place, one, asked, language) if len(asked) <= 1 else None
            if thing is None or (not asked and thing != "gap"):
                continue
            if _settle(row, cut_up, last, one, asked, thing, language, found, wanted) or one is wanted:
                break
    return found


def _acts_to_do(row: Row, part: Part) -> bool:
    """ "still needs to be stapled every two and taped": work to do, and no measure of work that was done."""
    behind = [item.concept for item in row.items[part.last : part.last + 2]]
    return behind[:1] == ["AND"] and behind[1:] in (["TAPED"], ["RUBBED"]) and any(row.items[k].concept == "PENDING" for k in range(part.first, part.last))


def _told_apart(row: Row, cut_up, place: int, wanted: Part, language: Language) -> Iterator[tuple[int, Part]]:
    """What was asked for, with the part where it ends: with the clause beside it that has its measure or its thing ("staples every two, that was the order"), then by itself."""
    part = cut_up[place]
    if wanted is part:
        told = _measures(row, part.first, part.last, language)
        before, behind = cut_up[place - 1] if place else None, cut_up[place + 1] if place + 1 < len(cut_up) else None
        if not told and before is not None and before.sentence == part.sentence and word(language.code, "told.wanted.says_of_it").match(part.words) and len(_measures(row, before.first, before.last, language)) == 1:
            yield place, Part(before.first, part.last, part.sentence, f"{before.words} {part.words}")
        elif len(told) == 1 and behind is not None and behind.sentence == part.sentence and not any(row.items[k].concept in _OWNERS for k in range(part.first, part.last)):
            again = _measures(row, behind.first, behind.last, language)
            thing = any(row.items[k].concept in _OWNERS for k in range(behind.first, behind.last))
            if thing and (not again or len(_once(row, [*told, *again])) == 1):
                yield place + 1, Part(part.first, behind.last, part.sentence, f"{part.words} {behind.words}")
    yield place, wanted


def _once(row: Row, measures: list[int]) -> list[int]:
    """The measures, the same one said twice but once."""
    seen = {row.items[at].value.value: at for at in reversed(measures)}
    return sorted(seen.values())


_SORTS = (("C_MASTIC", "MARK181", "CLOSURE", "COLD_ON", "TAPE"), ("SIZE",))


def _of_a_sort(row: Row, cut_up, place: int, wanted: Part, language: Language, found: AsWanted) -> bool:
    """ "They wanted mastic, they got 181A-P": of another sort than was asked for, whoever is said to have got it."""
    whole = cut_up[place]
    for sort in _SORTS:
        asked = [at for at in range(whole.first, whole.last) if row.items[at].concept in sort]
        if not asked or any(row.items[k].concept in ("STAPLED", "TAPED", "RUBBED") for k in range(whole.first, whole.last)):
            continue
        for part in cut_up[place + 1 : place + 3]:
            got = [at for at in range(part.first, part.last) if row.items[at].concept in sort]
            if got and part.sentence <= whole.sentence + 1 and word(language.code, "told.wanted.gets").match(part.words):
                found.wished.update(k for k in range(whole.first, whole.last) if not _names(row, k, language))
                found.of_piece.update(range(part.first, part.last))
                found.of_piece.update(k for k in range(whole.first, whole.last) if _names(row, k, language))
                return True
    return False


def _settle(row: Row, cut_up, place: int, wanted: Part, asked: list[int], thing: str, language: Language, found: AsWanted, alone: Part) -> bool:
    """Puts what came out among the claims; whether something did."""
    before = len(found.claims)
    rejected = finds(rows(language.code, "told.wanted.wants"), wanted.words) is None
    denied = rejected and _is_denied(row, wanted, language)
    for part in _beside(row, cut_up, place, wanted):
        if denied:
            if part.first < wanted.first or part.sentence != wanted.sentence and row.items[part.first].concept not in ("BE", "IT", "I", "THIS"):
                break
            if _is_denied(row, part, language):
                continue
            if not {row.items[k].concept for k in range(part.first, part.last)} <= _BARE:
                break
        elif rejected and (part.first < wanted.first or not word(language.code, "told.wanted.instead").search(plain(row.words(part.first, part.last)))):
            continue
        got = _measures(row, part.first, part.last, language)
        words = plain(row.words(part.first, part.last))
        if not got and asked and part.first > wanted.last and is_whole(rows(language.code, "told.wanted.agrees"), words):
            got = asked
        if not got and asked and word(language.code, "told.wanted.differs").fullmatch(words):
            found.spent.update(range(part.first, part.last))
            break
        if len(got) != 1 or not _tells(row, part, words, thing, got, language):
            if got or word(language.code, "told.wanted.not_yet").search(words) or (_MATTERS - _mine(thing)).intersection(item.concept for item in row.items[part.first : part.last]):
                break
            continue
        if row.items[got[0] - 1].concept == "FROM":
            break  # "so out of four there's one I can answer for"
        name = _name(row, thing, wanted, part, asked, got[0])
        name = "staple_spacing" if name == "gap" and row.items[got[0] - 1].concept == "EVERY" else name  # "he likes it tight so I went every inch and a half"
        value = _value(row, name, asked, got[0])
        low, high = _WITHIN[name]
        if not low <= value <= high or (name == "gap" and row.items[got[0]].concept == "NUM"):
            break
        item, hedged = row.items[got[0]], any(row.items[k].concept in ("HEDGE", "THINK", "AROUND") for k in range(part.first, got[0]))
        if name == "back":
            found.claims.append(claim(row, "side_moves", (Move(None, None, value, None),), part.first, part.last, uses=(got[0],), said_unit=unit_of(item), hedged=hedged))
        else:
            found.claims.append(claim(row, name, value, part.first, part.last, uses=(got[0],), said_unit=unit_of(row.items[asked[0]]) if asked and value != item.value.value else unit_of(item), hedged=hedged, corrects=True))
        too = _SAYS_TOO.get(name)
        if too is not None:
            found.claims.append(claim(row, too, True, part.first, part.last, weak=True, hedged=False))
        found.spent.update(k for k in range(part.first, part.last) if not _names(row, k, language) and row.items[k].concept not in ("STAPLED", "TAPED"))
        found.of_piece.update(k for k in range(_clause_start(row, wanted.first), wanted.last) if _names(row, k, language))
        break
    told = len(found.claims) > before
    if not told:
        wanted = alone
    elif denied:
        found.spent.update(k for k in range(wanted.first, wanted.last) if not _names(row, k, language) and row.items[k].concept not in ("STAPLED", "TAPED", "STAPLES", "TAPE", "TABS"))
    elif place + 1 < len(cut_up) and _every_so(row, cut_up[place + 1], wanted) and found.claims[before].first > cut_up[place + 1].first:
        found.wished.update(range(cut_up[place + 1].first, cut_up[place + 1].last))  # "eight inch tabs is what they asked for, every twelve"
    if told or wanted is alone and (not rejected or found.spent):
        found.wished.update(k for k in range(wanted.first, wanted.last) if not _names(row, k, language))
    return told


_BARE = frozenset((*_MEASURES, "EVERY", "APART", "ON", "BE", "IT", "DET", "FILLER", "STAPLED", "HEDGE", "I", "THIS", "WORD", "BUT", "AT", "ALL", "AROUND", "STAPLE", "TO", "HAVE", "TIGHT"))


def _is_denied(row: Row, part: Part, language: Language) -> bool:
    """ "Not every three, …": one measure, that it is not."""
    return word(language.code, "told.wanted.denied").match(part.words) is not None and len(_measures(row, part.first, part.last, language)) == 1


def _clause_start(row: Row, at: int) -> int:
    while at > 0 and row.items[at - 1].concept not in ("COMMA", "STOP", "QUERY"):
        at -= 1
    return at


def _every_so(row: Row, part: Part, wanted: Part) -> bool:
    return part.sentence == wanted.sentence and row.items[part.first].concept == "EVERY" and all(row.items[k].concept in ("EVERY", *_MEASURES, "APART", "ON") for k in range(part.first, part.last))


def _tabs_apart(row: Row, wanted: Part, part: Part) -> bool:
    """ "Eight inch tabs is what they asked for, every twelve": asked for too, and of another sort."""
    return any(row.items[k].concept == "TABS" for k in range(wanted.first, wanted.last)) and _every_so(row, part, wanted)


def _heads(row: Row, part: Part) -> bool:
    """Only which piece it is: "elbow 12", "twelve by ten", "mark 55"."""
    return all(row.items[k].concept in _HEADING or row.items[k].concept.startswith("K_") or row.items[k].concept == "NUM" and row.items[k - 1].concept.startswith(("K_", *_NAMES)) for k in range(part.first, part.last))


def _wanted(row: Row, part: Part, wants: tuple[Likely, ...], language: Language) -> Part | None:
    """The words that ask for something; None where they ask for nothing, or tell that it was done so."""
    if word(language.code, "told.wanted.never").search(part.words) or any(item.concept == "IF" for item in row.items[part.first : part.last]):
        return None
    if any(row.items[k].concept == "SIDE_WORD" for k in range(part.first, part.last)):
        return None  # sides are counted
    match = finds(wants, part.words)
    if match is None and _is_denied(row, part, language):
        return part
    if match is None:
        return part if word(language.code, "told.wanted.rejected").search(part.words) else None
    start = row.items[part.first].start
    built = any(row.items[k].concept in ("STAPLED", "TAPED", "RUBBED", "SIZE", "VANES") and row.items[k].end <= start + match.start() for k in range(part.first, part.last))
    if built and not word(language.code, "told.wanted.set_against").search(part.words):
        return None  # "stapled every two, as drawn"
    if len({row.items[k].concept for k in range(part.first, part.last)} & {"STAPLED", "TAPED", "RUBBED", "VANES"}) > 1:
        return None
    measures = _measures(row, part.first, part.last, language)
    for k in range(measures[0] + 1, measures[-1]) if measures else ():
        words = plain(row.words(k, part.last))
        if row.items[k].start - start >= match.end() and word(language.code, "told.wanted.runs_on").match(words):
            return Part(part.first, k, part.sentence, plain(row.words(part.first, k)))  # "they want two on the staples I went three"
        if row.items[k].start - start <= match.start() and word(language.code, "told.wanted.set_against").match(words):
            return Part(k, part.last, part.sentence, words)  # "the screws on eighteen where the detail says twelve"
    return None if built else part


def _names(row: Row, at: int, language: Language) -> bool:
    concept = row.items[at].concept
    before = row.items[at - 1].concept if at else ""
    if before == "RUN" and at > 1 and plain(row.words(at - 2, at - 1)) in language.told.wanted.verb_of.split():
        return False  # "mine run three"
    return concept.startswith("K_") or concept in ("FITTING", "NUMBER", "RUN", "MARKED") or (concept in ("NUM", "LETTER") and (before.startswith("K_") or before in _NAMES))


def _measures(row: Row, first: int, last: int, language: Language) -> list[int]:
    """Measures of a thing: no marks, no counts, no "one" that stands for a thing."""
    return [at for at in range(first, last) if row.items[at].concept in _MEASURES and not row.is_blank(at) and not _names(row, at, language) and not _counts(row, at)]


def _counts(row: Row, at: int) -> bool:
    item, ahead = row.items[at], row.items[at + 1].concept if at + 1 < len(row.items) else ""
    one = item.concept == "NUM" and item.value.value == 1 and not item.value.digits
    by = ahead == "BY" and at + 2 < len(row.items) and row.items[at + 2].concept in _MEASURES
    return one or by or ahead in ("SIDE_WORD", "COUNTED", "PIECE_COUNT") or ahead.startswith("K_") and item.concept == "NUM"


def _beside(row: Row, cut_up, place: int, wanted: Part) -> Iterator[Part]:
    """Where what came out may be told: the rest of the words, the next parts, else the one right before."""
    whole = cut_up[place]
    if wanted is not whole and wanted.first >= whole.first:
        yield Part(wanted.last, whole.last, whole.sentence, whole.words) if wanted.last < whole.last else Part(whole.first, wanted.first, whole.sentence, whole.words)
        return
    behind = [part for part in cut_up[place + 1 : place + 7] if part.sentence <= whole.sentence + 1]
    behind = [part for part in behind if not _heads(row, part) and not (part is cut_up[place + 1] and _tabs_apart(row, wanted, part))][:3]
    yield from behind
    if place and wanted.first >= whole.first and cut_up[place - 1].sentence == whole.sentence and not any(part.sentence == whole.sentence for part in behind):
        yield cut_up[place - 1]


def _tells(row: Row, part: Part, words: str, thing: str, got: list[int], language: Language) -> bool:
    """Whether these words tell of the same thing, as it came out."""
    concepts = {item.concept for item in row.items[part.first : part.last]}
    if (concepts & _MATTERS) - _mine(thing) - {"QUERY"} or "QUERY" in concepts or row.is_blank(part.first):
        return False
    return not (word(language.code, "told.wanted.not_yet").search(words) or word(language.code, "told.wanted.others").match(words) or finds(rows(language.code, "told.wanted.wants")[:2], words))


def _mine(thing: str) -> frozenset[str]:
    """The words that may stand beside a measure of this thing."""
    return frozenset(concept for concept, name in _OWNERS.items() if name == thing or {name, thing} <= {"staples", "staple_leg"} or name == "length" and thing in ("tabs", "staple_leg", "staples"))


def _thing(row: Row, cut_up, place: int, part: Part, asked: list[int], language: Language) -> str | None:
    """What the measure that was asked for is of: the thing nearest to it in its words, else the one named last before them that it can be of."""
    last = part.last
    at = asked[0] if asked else part.first
    near = sorted((_OWNERS[row.items[k].concept] in _PLAIN, abs(k - at), k) for k in range(part.first, last) if row.items[k].concept in _OWNERS)
    if near and (near[0][0] is False or not any(row.items[k].concept in _STAPLES + ("TABS", "TAPE") for k in range(part.first, last))):
        return _OWNERS[row.items[near[0][2]].concept]
    if any(row.items[k].concept in _MATTERS for k in range(part.first, last)):
        return None
    whole = cut_up[place]
    if part is not whole and part.first >= whole.first and part.last <= whole.last:  # "six feet between hangers versus four on the print"
        beside = [_OWNERS[row.items[k].concept] for k in range(whole.first, whole.last) if row.items[k].concept in _OWNERS]
        if len(set(beside)) == 1:
            return beside[0]
    for k in range(part.first - 1, max(-1, part.first - _LOOK_BACK), -1):
        thing = _OWNERS.get(row.items[k].concept)
        if thing in _NAMED_FAR:
            return thing
        if row.items[k].concept == "SIDE" and asked:  # "left in four. The drawing gives it twenty-four, the wall gave me fifteen"
            told = " ".join(one.words for one in cut_up[place : place + 2])
            back_told = any(row.items[j].concept in ("BACK", "OVER") for j in range(k, part.first))
            return "back" if finds(apart(language.code, "turns.room"), told) is not None or not back_told and row.items[asked[0]].value.value >= _FEWEST_BACK else None
    return None


def _name(row: Row, thing: str, wanted: Part, part: Part, asked: list[int], got: int) -> str:
    near = {row.items[k].concept for one in (wanted, part) for k in range(one.first, one.last)}
    first = row.items[asked[0]] if asked else None
    if thing == "staples":
        return "staple_leg" if first is not None and first.value.value < 1 and not near & {"APART", "EVERY"} else "staple_spacing"
    if thing == "tabs":
        if asked and row.items[asked[0] + 1].concept == "TABS":
            return "cross_tab_length"  # "six inch tabs came up short"
        spaced = near & {"APART", "EVERY"} and not near & {"LONG", "LENGTH"}
        return "cross_tab_length" if not spaced and (near & {"LONG", "LENGTH"} or first.value.value == _TAB) else "cross_tab_spacing"
    return thing


def _value(row: Row, name: str, asked: list[int], got: int) -> Fraction:
    """The measure in inches; feet are said once."""
    item = row.items[got]
    unit = getattr(row.items[asked[0]].value, "unit", None) if asked else None
    feet = item.concept != "LEN" and (unit == "ft" or name == "hanger_spacing" and unit is None) and item.value.value < 12
    return item.value.value * 12 if feet else item.value.value
