"""What falls short of an act that was said to be done: "taped, but the corner's peeling", "stapled, missed a couple on the back".

A shortfall takes the whole act back, unless it was set right again ("went back and got them"). It is one only where nothing
stands beside it but the work itself: "my ladder is loose" is none.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, Open, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.how_it_sits import of_the_joint
from logbook.reading.clauses.legs_turn import legs_turn
from logbook.reading.words.likely import AnyOf
from logbook.reading.clauses.parts import Part
from logbook.reading.words.phrasing import any_of, apart, begins, is_whole, valued, word
from logbook.reading.clauses.set_right import is_mended
from logbook.reading.clauses.within_a_harm import within_a_harm
from logbook.reading.own.once_begun import goes_on
from logbook.reading.own.spaced_otherwise import spaced_otherwise
from logbook.reading.clauses.measured_there import measured_there
from logbook.reading.words.tokens import plain

_ACTS = {
    "STAPLED": "stapled", "STAPLES": "stapled", "TAPED": "taped", "TAPE": "taped", "CLOSURE": "taped", "MARK181": "taped", "RUBBED": "rubbed_down", "VANES": "vanes",
    "TABS": "cross_tabs", "STAPLE": "stapled", "TIGHT": "gap", "SEATED": "panel_seated", "BENT": "tabs_bent", "CLINCHED": "tabs_bent", "TRIMMED": "trimmed", "WIPED": "surface_clean", "SHOWS": "scrim_shows",
}  # fmt: skip
_VERBS = ("STAPLED", "TAPED", "RUBBED", "TRIMMED", "WIPED", "SHOWS", "BENT", "CLINCHED")
_LOOK_BACK = 24  # items
_WORDS = re.compile(r"[\w']+")
_NOT = re.compile(r"(?<![\w'])(?:no|not|none|nothing|never|nobody|without|neither|hardly|\w+n't|ni|ninguna?|sin|nada|nunca)(?![\w'])")


def shortfalls(row: Row, own: Row, cut_up: tuple[Part, ...], language: Language) -> tuple[list[Claim], set[int]]:
    """The acts that are taken back, and the items that say so."""
    made, spent = list[Claim](), set[int]()
    if language.turns.beside:
        wrong = any_of(language.code, *(f"turns.{how}" for how in _WRONG))
        for place, part in enumerate(cut_up):
            if own.is_blank(part.first) and not _stands_alone(row, part, language):
                continue
            for one, used in _short(row, own, cut_up, place, wrong, language):
                made.append(_to_finish(row, cut_up, place, one, language))
                spent.update(used)
    return made, spent


_FINISHES = re.compile(
    r"(?:i'll|i will|we'll|we will|will|gonna|i'm gonna|going to|i'm going to|i have to|i need to|need to|gotta|have to|still have to|still need to|tengo que|voy a|luego)\b[\w' ]*?"
    r"\b(?:finish|get|do|catch|grab|hit|redo|fix|termino|acabo|terminar|acabar)\b(?: (?:it|them|that|those|up|off|the rest|the others?|the last \w+|lo|las|los)|(?<=\bfinish) (?:later|tomorrow|after|when|in the))"
)


def _to_finish(row: Row, cut_up, place: int, one: Claim, language: Language) -> Claim:
    """ "… a third of the staples in, I'll finish them tomorrow": the rest is work still to do."""
    if one.value is not False or one.name.startswith("("):
        return one
    for part in cut_up[place + 1 : place + 3]:
        if part.sentence <= cut_up[place].sentence + 1 and (match := _FINISHES.match(part.words) or re.match(language.acts.still_to_do, part.words)) is not None:
            start = row.items[part.first].start
            return replace(one, opens=(Open("piece", one.name, start, row.items[part.last - 1].end),)) if match else one
    return one


def _stands_alone(row: Row, part: Part, language: Language) -> bool:
    """ "…, where I could": no question, though it begins like one."""
    asked = part.last < len(row.items) and row.items[part.last].concept == "QUERY"
    return not asked and any_of(language.code, "turns.alone").search(part.words) is not None


def _short(row: Row, own: Row, cut_up, place: int, wrong: AnyOf, language: Language) -> Iterator[tuple[Claim, Iterable[int]]]:
    found = list(_faults(row, own, cut_up, place, wrong, language))
    short = [] if found else list(_extents(row, own, cut_up[place], language))
    yield from found or (one for one in short if not is_mended(cut_up, place, language, _fact(one[0])))


def _faults(row: Row, own: Row, cut_up, place: int, looks: AnyOf, language: Language) -> Iterator[tuple[Claim, Iterable[int]]]:
    """What is wrong with an act, or with the thing it left: the first reading of the words that an act was said for."""
    if (wider := spaced_otherwise(row, own, cut_up, place, language)) is not None:
        yield wider, range(wider.first, wider.last)
        return
    for wrong in _wrongs(row, cut_up[place], language) if looks.search(cut_up[place].words) is not None else ():
        found = list(_fault(row, own, cut_up, place, wrong, language))
        if found:
            yield from found
            return


def _fault(row: Row, own: Row, cut_up, place: int, wrong: Wrong, language: Language) -> Iterator[tuple[Claim, Iterable[int]]]:
    noun, names, part = wrong.noun, wrong.names, wrong.part
    if wrong.how == "excepts" and row.sentence_start(part.first) == part.first and word(language.code, "fluent.begins_own").fullmatch(plain(row.words(part.first, row.sentence_end(part.first))).rstrip(" .!")) is not None:
        return  # "Stapled. Except for the bottom, it's taped.": of what is told behind it
    acts = _acts_before(row, own, part, cut_up, place, names, wrong.every) if noun is None and not (wrong.how == "excepts" and measured_there(row, part.last)) else ()
    if wrong.how == "excepts" and language.turns.tab_word and place and cut_up[place - 1].sentence == cut_up[place].sentence and language.turns.tab_word in cut_up[place - 1].words:
        acts = tuple(at for at in acts if _ACTS[row.items[at].concept] in ("tabs_bent", "cross_tabs"))  # "every tab's down except three": of the tabs, not of the act before
    mended = is_mended(cut_up, place, language, *_at_fault(row, noun, names, acts))
    used = range(part.first, _until_what_is_left(row, part) if wrong.how != "alone" else part.first)
    if wrong.how == "alone" and place and cut_up[place - 1].sentence == part.sentence and _only_spaces(row, cut_up[place - 1]):
        return  # "Every two inches, mostly.": of how far apart they are
    if mended and not acts and noun is None and not any(item.concept == "DAMAGE" and item.value == "crushed" for item in row.items[part.first : part.last]):  # "the corner got crushed, taped it": of the board
        yield claim(row, "(nothing)", None, part.first, part.last), used
    if wrong.how in ("missed", "excepts") and acts and not mended and (_counted(row, max(acts)) or _of_so_many(row, max(acts))):
        yield claim(row, "(nothing)", None, part.first, part.last), used
        return
    for at in acts if not mended else [at for at in acts if not is_mended(cut_up, place, language, _ACTS[row.items[at].concept])]:
        if row.items[at].concept == "SEATED" and not any(item.concept in ("PANEL", "SHIPLAP", "GROOVE", "FLAP", "K_TRANSITION", "CUT_LENGTH", "CUT_TO") for item in row.items):
            continue  # "it wouldn't fit so I made two": the piece
        if row.items[at].concept == "SEATED" and any(row.items[k].concept == "JOINT" for k in range(part.first, part.last)) and any(row.items[k].concept == "TIGHT" for k in range(part.first, part.last)):
            continue  # "panel sits good, …, joint isn't tight": the joint
        if row.items[at].concept == "SEATED" and any(item.concept == "BACK" for item in row.items[row.sentence_start(part.first) : part.last]):
            continue  # "thirty back didn't fit": the length
        fallen = _fallen(row, at, part)
        if wrong.how == "left_to_do" or wrong.how == "excepts" and word(language.code, "acts.yet").search(part.words) is not None:
            start, end = row.items[part.first].start, row.items[part.last - 1].end
            fallen = replace(fallen, opens=(Open("piece", _ACTS[row.items[at].concept], start, end),))
        yield fallen, used if row.items[at].concept != "TIGHT" else {*used, at}
    if noun == "stapled" and _only_wide(row, part, language):
        yield claim(row, "(nothing)", None, part.first, part.last), used
        return
    if noun == "taped" and names == ("rubbed_down",):
        noun = "rubbed_down"  # "the tape's got bubbles in it": it is on, and not down
    if noun is not None and (not names or noun in names or (noun == "cross_tabs" and "tabs_bent" in names)):
        last = next((one.last for one in reversed(cut_up) if one.sentence == part.sentence), part.last) if mended else part.last  # what set it right is of its words
        yield claim(row, noun, mended, part.first, last, part="" if mended else "side", corrects=mended, weak=mended, hedged=False), used


def _until_what_is_left(row: Row, part: Part) -> int:
    """ "algunas lengüetas quedaron sin doblar y me falta la cinta": what is still to do is told behind it."""
    return next((at for at in range(part.first + 2, part.last - 1) if row.items[at].concept in ("AND", "BUT") and row.items[at + 1].concept == "PENDING"), part.last)


def _at_fault(row: Row, noun: str | None, names: tuple[str, ...], acts: tuple[int, ...]) -> tuple[str, ...]:
    """The facts that a fault takes back, which only what is done for one of them sets right."""
    if noun is None:
        return tuple([_ACTS[row.items[at].concept] for at in acts]) or names
    return ("cross_tabs", "tabs_bent") if noun == "cross_tabs" else (noun,) if not names or noun in names else names


def _fact(one: Claim) -> str:
    """What is told of a joint that is not tight is of its gap."""
    return one.name if one.name != "(open)" else "gap"


def _counted(row: Row, at: int) -> bool:
    """ "Taped three. Couldn't get at the back.": why it is three, and no more than that."""
    behind = [k for k in range(at + 1, min(at + 4, len(row.items))) if row.items[k].concept not in ("ON", "ONLY", "FILLER")][:2]
    counts = bool(behind) and row.items[behind[0]].concept == "NUM" and row.items[behind[0]].value.value in (1, 2, 3)
    return counts and (len(behind) == 1 or row.items[behind[1]].concept in ("SIDE_WORD", "STOP", "COMMA", "BUT"))


def _only_spaces(row: Row, part: Part) -> bool:
    return row.items[part.first].concept == "EVERY" and part.last - part.first <= 3 and row.items[part.last - 1].concept in ("NUM", "LEN", "APART")


def _only_wide(row: Row, part: Part, language: Language) -> bool:
    """ "Stapled every three, ran short on staples": why they are so far apart."""
    first = row.sentence_start(part.first)
    told = {item.concept for item in row.items[first : part.first]}
    return "EVERY" in told and bool({"STAPLED", "STAPLES"} & told) and is_whole(apart(language.code, "turns.why_wide"), part.words)


def _extents(row: Row, own: Row, part: Part, language: Language) -> Iterator[tuple[Claim, Iterable[int]]]:
    """How far the acts of these words go."""
    until = part.first
    for at in range(part.first, part.last):
        concept = row.items[at].concept
        if concept == "TIGHT" and _measured(row, part):
            continue
        if concept not in _ACTS or own.is_blank(at) or concept == "STAPLES" and any(legs_turn(row.items, row.text, k) for k in range(at + 1, part.last)):
            continue
        torn = concept == "TAPE" and any(item.concept == "DAMAGE" for item in row.items[row.sentence_start(at) : at])
        if torn and any_of(language.code, "turns.mends").search(part.words) is not None:
            continue  # "una rajada …, le puse un pedazo de cinta": the mend's
        reach = _goes_short(row, part, at, language)
        if reach is None or reach[0] < until:
            continue
        until = reach[1]
        if concept != "TIGHT":
            yield claim(row, _ACTS[concept], False, *reach, part="side", hedged=False), range(0)
            continue
        yield _fallen(row, at, part), range(at, at + 1)


_GAPES = re.compile(r"(?<![\w'])(?:tight|open|loose)(?![\w'])")  # of a joint that was taped: what gapes is the joint, and the tape is on


def _fallen(row: Row, at: int, part: Part) -> Claim:
    """The act denied; a joint that is tight only in part is left open."""
    if row.items[at].concept == "TIGHT" or (row.items[at].concept == "STAPLED" or row.items[at].concept == "TAPED" and _GAPES.search(part.words)) and of_the_joint(row, part.first, part.last):
        start, end = row.items[part.first].start, row.items[part.last - 1].end
        return claim(row, "(open)", None, part.first, part.last, opens=(Open("piece", None, start, end),), hedged=False)
    first, last = (at, at + 1) if part.first <= at < part.last else (part.first, part.last)
    return claim(row, _ACTS[row.items[at].concept], False, first, last, part="side", hedged=False)


_WRONG = ("alone", "left_to_do", "unhappened", "faults", "missed", "ran_short", "excepts")


@dataclass(frozen=True, slots=True)
class Wrong:
    """One reading of words as a fault: the noun at fault, the facts it can be of (none: any), whether all acts before fall short with it."""

    noun: str | None
    names: tuple[str, ...]
    every: bool
    part: Part
    how: str


def _wrongs(row: Row, part: Part, language: Language) -> Iterator[Wrong]:
    code = language.code
    here = {item.concept for item in row.items[part.first : part.last]}
    if word(code, "told.echoes.of_the_piece").match(part.words) is not None:
        return  # "It's taped. It isn't done yet.": the piece is not
    if "PARTED" in here and here & {"JOINT", "END"} or "GAP" in here and here & {"LEN", "FRAC"} and not here & {"TAPE", "STAPLES", "TABS", "VANES", "PANEL"}:
        return  # "the joint won't close up": that is a gap, not the tape
    for member in _WRONG:
        for pattern, names in valued(code, f"turns.{member}"):
            match = pattern.search(part.words)
            if match is None or within_a_harm(row, part.first, part.last, match):
                continue
            if member in ("alone", "left_to_do"):
                if match.groupdict().get("bare") is not None and part.first and row.items[part.first - 1].concept == "AND":
                    continue  # "taped the top before and the bottom after lunch": when he did it
                yield Wrong(None, names, True, part, member)
                continue
            before, behind = part.words[: match.start()], re.sub(language.turns.meanwhile, "", part.words[match.end() :])
            if (member == "faults" and _NOT.search(before)) or (member == "excepts" and before.strip()):
                continue
            mine = part if language.turns.beside.issuperset(_WORDS.findall(re.sub(language.turns.any_side, "", before + behind))) else _own_words(row, part, match, language)
            if mine is None or (member == "excepts" and mine.last < part.last):
                continue
            noun = next((name for said in (mine.words[: max(0, match.end() - row.items[mine.first].start + row.items[part.first].start)], mine.words) for words, name in valued(code, "turns.nouns") if words.search(said)), None)  # what stands behind the fault is another thing: "las grapas quedaron chuecas el tape sí quedó bien"
            yield Wrong(noun if member != "excepts" else None, names, member not in ("unhappened", "faults"), mine, member)


_BOUNDS = frozenset((*_ACTS, "NUM", "SIZE", "EVERY", "APART", "GAP", "DEG", "SERVICE", "FLAP", "REPAIRED", "C_MASTIC", "HUNG", "MARKED", "SIDES_ALL"))


def _measures(row: Row, at: int) -> bool:
    """The "two" of "every two" and of "straight two" is no word of the fault."""
    before = row.items[at - 1].concept if at else ""
    return row.items[at].concept in ("NUM", "LEN", "FRAC") and (before in ("EVERY", "ON", "BY", "RUN", "NUMBER", "FITTING", "OF") or before.startswith("K_") or row.items[at].concept == "LEN" and before in ("NUM", "MARKED"))  # "spin-in eleven seven inch two of the tabs …"


def _own_words(row: Row, part: Part, match: re.Match[str], language: Language) -> Part | None:
    """The words of the fault where text runs on without a comma: up to the act or the measure on either side; None where other things stand beside it."""
    start = row.items[part.first].start
    first, last = row.within(part.first, part.last, match)
    edges = part.words[row.items[first].start - start : match.start()] + " " + part.words[match.end() : row.items[last - 1].end - start]
    if not language.turns.beside.issuperset(_WORDS.findall(edges)):
        return None
    while first > part.first and not _measures(row, first - 1) and language.turns.beside.issuperset(_WORDS.findall(plain(row.words(first - 1, first)))):
        first -= 1
    while last < part.last and language.turns.beside.issuperset(_WORDS.findall(plain(row.words(last, last + 1)))):
        last += 1
    if last < part.last and row.items[last - 1].concept == "TO":
        return None  # "couldn't get in there to bend the tabs": of that act, which is denied by itself
    if row.items[last - 1].concept == "FITTING" and last < len(row.items) and row.items[last].concept in ("NUM", "MARKED") and any(item.concept in ("RUB", "RUBBED") for item in row.items[first:last]):
        return None  # "didn't rub the tape on piece 31": the piece by its name, and no part of its tape
    bounded = (first == part.first or row.items[first - 1].concept in _BOUNDS or row.items[first - 1].concept.startswith("K_")) and (last == part.last or row.items[last].concept in _BOUNDS)
    return Part(first, last, part.sentence, plain(row.words(first, last))) if bounded else None


_OTHERWISE = ("LEVEL", "FLAT", "SHIPLAP", "BUTT", "BRANCH_WORD", "GROOVE", "MOVE_IN", "MOVE_DOWN", "MOVE_UP", "MOVE_OUT", "FEMALE", "MALE", "GAP", "DAMAGE")

_OF_ITS_OWN = frozenset(("SIZE", "JOINT", "FLAP", "GAP", "K_HANGER", "SERVICE"))


def _acts_before(row: Row, own: Row, part: Part, cut_up, place: int, names: tuple[str, ...], every: bool) -> tuple[int, ...]:
    """The act the fault is of: the one named last that it can be wrong with, in this sentence or the one before."""
    stops = 0
    for at in range(part.last - 1, max(-1, part.first - _LOOK_BACK), -1):
        concept = row.items[at].concept
        stops += concept in ("STOP", "QUERY")
        if stops == 1 and concept in ("STOP", "QUERY") and not _OF_ITS_OWN.isdisjoint(item.concept for item in row.items[at + 1 : part.first]):
            return ()  # "Stapled. 20x10 to 16x10, one side": of what its own sentence tells of
        if stops > 1 or (not stops and concept in _ACTS and at < part.first and own.is_blank(at)) or (at < part.first and (concept.startswith("K_") or concept in ("FITTING", "NUMBER")) and not _of_the_act(row, at, part)):
            return ()
        if every and at < part.first and concept in _OTHERWISE:
            return ()  # "top's flat, bottom isn't": of that, not of the tape
        if concept not in _ACTS or own.is_blank(at) or (at >= part.first and concept in ("TIGHT", "BENT", "CLINCHED")):
            continue
        if not every and not names and concept in ("WIPED", "TRIMMED", "SHOWS", "TIGHT"):
            continue
        if names and _ACTS[concept] not in names and not (concept == "TIGHT" and "taped" in names):
            continue
        if concept in ("BENT", "CLINCHED") and not any(item.concept in ("TABS", "TAB_WORD", "K_COLLAR") for item in row.items):
            continue  # "the tape is folded over itself": no tab
        if concept == "TIGHT" and _measured(row, part):
            return ()
        if not every:
            return (at, *_tape_under(row, own, at)) if concept == "RUBBED" and not names else (at,)
        if at < part.first and _of_so_many(row, at):
            return (at,)  # "stapled and three taped, couldn't reach the back": of these three
        home = next(one for one in cut_up if one.first <= at < one.last)
        listed = [k for k in range(home.first, at + 1) if row.items[k].concept in _VERBS and not own.is_blank(k)]
        joined = place - 1
        while joined > 0 and cut_up[joined].first > home.first:
            joined -= 1
        mate = cut_up[joined - 1] if joined > 0 else None
        if mate is not None and mate.last + 1 == home.first and row.items[mate.last].concept == "AND" and not _of_its_own(row, mate):  # "stapled and taped, missed the back"
            listed += [k for k in range(mate.first, mate.last) if row.items[k].concept in _VERBS and not own.is_blank(k)]
        return tuple(dict.fromkeys([at, *(k for k in listed if not names or _ACTS[row.items[k].concept] in names)]))
    return ()


def _of_so_many(row: Row, at: int) -> bool:
    """ "Three sides are taped", "three taped": not all four."""
    before = at - 1
    while before > 0 and row.items[before].concept in ("SIDE_WORD", "BE", "HAVE", "ONLY", "FILLER"):
        before -= 1
    return before >= 0 and row.items[before].concept == "NUM" and row.items[before].value.value < 4 and (before < at - 1 or row.items[before - 1].concept in ("AND", "BUT", "COMMA", "ONLY", "HAVE"))


def _tape_under(row: Row, own: Row, at: int) -> tuple[int, ...]:
    """ "Taped and rubbed, the end came loose": what is loose is the tape that was rubbed."""
    for before in range(at - 1, row.sentence_start(at) - 1, -1):
        if row.items[before].concept in ("TAPED", "TAPE") and not own.is_blank(before):
            return (before,)
    return ()


def _of_its_own(row: Row, part: Part) -> bool:
    """ "Stapled the seams every two and taped all but the bottom": the first act has what it was done to."""
    return any(row.items[k].concept in ("JOINT", "SIDES_ALL", "AROUND", "SIDE", "FLAP") for k in range(part.first, part.last))


def _of_the_act(row: Row, at: int, part: Part) -> bool:
    """ "every side is taped on straight nine, except the back", "tape on the top of straight nine. The bottom's bare.": the piece is named behind the act."""
    stops = sum(row.items[k].concept in ("STOP", "QUERY") for k in range(at, part.first))
    if _taken_by_an_act(row, at):
        return stops < 2  # "I taped straight 304 but missed the bottom", "I taped straight 31. I missed the bottom."
    if at == 0 or row.items[at - 1].concept not in ("ON", "OF", "IN", "IN_PLACE", "FROM", "OFF", "THRU", "TO") or stops > 1:
        return False
    begin = at - 1
    while begin > 0 and row.items[begin - 1].concept not in ("STOP", "QUERY", "COMMA"):
        begin -= 1
    return any(row.items[k].concept in _ACTS for k in range(begin, at))


_WITH_ITS_NAME = ("DET", "THIS", "ALL", "OF", "UP", "FILLER", "SIZE")


def _taken_by_an_act(row: Row, at: int) -> bool:
    """ "I taped straight 31. I missed the bottom.": the piece is what was taped."""
    before = at - 1
    while before > 0 and at - before < 4 and row.items[before].concept in _WITH_ITS_NAME:
        before -= 1
    return before >= 0 and row.items[before].concept in _VERBS


def _measured(row: Row, part: Part) -> bool:
    """ "tight except for a quarter inch": the gap has its size."""
    return any(row.items[at].concept in ("LEN", "FRAC") for at in range(part.first, part.last))


def _goes_short(row: Row, part: Part, at: int, language: Language) -> tuple[int, int] | None:
    """ "taped what I could reach", "most of it is taped": how far the act itself goes; the items that say so, with it."""
    start = row.items[part.first].start
    before = part.words[: row.items[at].start - start].strip()
    named = _behind_its_name(row, part, at)
    behind = part.words[row.items[named].end - start :].strip()
    for pattern in apart(language.code, "turns.extents"):
        match = pattern.search(behind)
        if match is not None and language.turns.beside.issuperset(_WORDS.findall(behind[: match.start()])):
            return at, _item_to(row, part, row.items[named].end + part.words[row.items[named].end - start :].index(behind) + match.end())
    if row.items[at].concept in ("BENT", "CLINCHED", "TABS", "TIGHT", "VANES") and begins(apart(language.code, "turns.sides_only"), behind) is not None:
        return at, part.last
    for member, most in (("fractions", 4), ("degrees", 0)):
        for pattern in apart(language.code, f"turns.{member}"):
            for match in pattern.finditer(before):
                rest = _WORDS.findall(before[match.end() :])
                if len(rest) <= most and language.turns.beside.issuperset(rest) and not _NOT.search(before[: match.start()]) and not goes_on(row, at, before, language):
                    return row.within(part.first, at + 1, match)[0], at + 1
    return None


def _behind_its_name(row: Row, part: Part, at: int) -> int:
    """ "Taped tee 6 halfway": the last item of the piece that is named right behind the act, else the act itself."""
    last = at + 1
    while last < part.last and row.items[last].concept in ("DET", "THIS", "FITTING", "NUMBER", "ON", "DOWN", "UP"):
        last += 1
    if not (row.items[last - 1].concept in ("FITTING", "NUMBER") or last < part.last and row.items[last].concept.startswith("K_")):
        return at
    last += last < part.last and row.items[last].concept.startswith("K_")
    while last < part.last and row.items[last].concept in ("NUMBER", "NUM", "MARKED", "LETTER"):
        last += 1
    return last - 1


def _item_to(row: Row, part: Part, end: int) -> int:
    return next((k for k in range(part.first, part.last) if row.items[k].start >= end), part.last)
