"""How things were left, told without an act: "vanes are still in the truck", "the hole's still there", "the duct is holding it".

Read before the frames, since the thing's name alone would state what these words deny. What was set right again states nothing here.
"""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language, State
from logbook.reading.clauses.claims import Claim, Open, claim
from logbook.reading.clauses.denials import DENIED, listed_on
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.likely import AnyOf, Likely, alternatives, where_standing
from logbook.reading.names.other_things import of_something_else
from logbook.reading.clauses.parts import Part
from logbook.reading.words.phrasing import words_of
from logbook.reading.clauses.set_right import is_mended
from logbook.reading.words.tokens import plain

_BACK = 30  # items
_SENTENCES = 1
_NAMING = ("NUM", "FITTING", "NUMBER", "LETTER", "DASH", "MARKED", "RUN", "THRU", "SIZE", "LEN", "FRAC", "LB", "DET", "COMMA")
_ANCHORS = re.compile(r"(?<!\[)\^|\$")  # not the sign of a set: "[^.;]"
_DENIAL = re.compile(r"(?:\b(?:not|no|never|nothing|nobody|without|no longer|stopped|quit|hardly|ni|nada|nunca|sin)|n't)(?: (?:\w+ )?)$")


def told(own: Row, cut_up: tuple[Part, ...], language: Language) -> tuple[list[Claim], set[int]]:
    """What the words tell, and the items they have used up."""
    made: list[Claim] = []
    spent: set[int] = set()
    rows = _likely(own, language) if language.states else ()
    if not rows:
        return made, spent
    for place, part in enumerate(cut_up):
        if own.is_blank(part.first):
            continue
        said: set[str] = set()
        for state, pattern in rows:
            match = pattern.search(part.words)
            if match is None or state.fact in said or _DENIAL.search(part.words[: match.start()]):
                continue
            thing = _thing(own, part, state)
            if thing is None and state.apart and "DAMAGE" in state.things:  # "his ladder went through it and I left it like that"
                thing = next((one.first for one in made if one.name == "facing_damage" and one.value != "none" and part.first - one.first < _BACK), None)
            if state.fact == "damage_repaired" and state.apart and _of_the_joint(own, part):
                continue
            righted = _righted(own, cut_up, place, match.end(), state)
            if righted is not None and state.fact == "(open)":  # "got called away but came back and finished it"
                continue
            if righted is not None and thing is not None:  # "wouldn't seat so I shaved it till it dropped in"
                said.add(state.fact)
                made.append(claim(own, state.fact, True, righted.first, righted.last, kinds=state.kinds, corrects=True, hedged=False))
                spent.update(at for at in range(*own.within(part.first, part.last, match)) if own.items[at].concept not in _NAMING)
                continue
            if state.things and thing is None or (state.value is False and is_mended(cut_up, place, language, state.fact)):
                continue
            first, last = own.within(part.first, part.last, match)
            if any(own.is_blank(at) for at in range(first, last)) or thing is not None and state.fact == "damage_repaired" and match.group().endswith(tuple(words_of("small.so_it_is"))) and _mended_before(own, thing, first):
                continue
            said.add(state.fact)
            yet = state.value is False and bool(language.acts.yet) and re.search(language.acts.yet, part.words) is not None
            pending = state.pending or yet
            but = state.value is False and "BUT" in (own.items[part.first].concept, own.items[part.first - 1].concept if part.first else "")  # "trimmed, but there's still glass in one corner"
            ajar = state.fact == "(open)"  # a gap is no act, and of what width may stand behind
            opens = (Open("piece", None if ajar else state.fact, own.items[part.first if yet else first].start, own.items[(part.last if yet else last) - 1].end),) if pending else ()
            made.append(claim(own, state.fact, state.value, first, last, kinds=state.kinds, opens=opens, pending=pending and not ajar, corrects=but or state.fact == "panel_seated" and thing is not None and thing < part.first, part=state.part, hedged=False))
            for at in listed_on(own, last, part.last, ("OR",)) if state.value is False else ():  # "never got a flap or tabs"
                made.append(claim(own, DENIED[own.items[at].concept][0], False, at, at + 1, hedged=False))
                spent.add(at)
            spent.update(at for at in range(first, last) if own.items[at].concept not in _NAMING and not ajar and not (own.items[at].concept == "DAMAGE" and state.fact == "damage_repaired") and not (own.items[at].concept.startswith("K_") and own.items[at].concept != "K_HANGER"))
            if state.uses:
                spent.update(at for at in {thing, *range(part.first, part.last)} if at is not None and own.items[at].concept in state.things)
    return made, spent


def _of_the_joint(row: Row, part: Part) -> bool:
    """ "Crushed. Got half of it stapled.", "stepped on. Taped, but the bottom's not taped.": staples mend no harm, and a side is of the joint."""
    here = {row.items[at].concept for at in range(part.first, part.last) if not row.is_blank(at)}
    return "DAMAGE" not in here and ("STAPLED" in here or "TAPED" in here and not here.isdisjoint(("SIDE", "JOINT")))


def _mended_before(row: Row, harm: int, at: int) -> bool:
    """ "Crushed, plugged it, it's up that way": it hangs so as it was mended."""
    return any(row.items[k].concept in ("METHOD", "REPAIRED") and not row.is_blank(k) and row.items[k - 1].concept not in ("NO", "NOT", "NOT_DONE", "WITH") for k in range(harm + 1, at))


def _righted(row: Row, cut_up: tuple[Part, ...], place: int, behind: int, state: State) -> Part | None:
    """The words right behind, or in the two parts after, that tell that it came right."""
    if (state.value is not False and state.fact != "(open)") or not state.righted:
        return None
    for later in cut_up[place : place + 4]:
        words = later.words[behind:] if later is cut_up[place] else later.words
        match = re.search(state.righted, words) if later.sentence <= cut_up[place].sentence + 1 and not row.is_blank(later.first) else None
        if match is not None:
            return later
    return None


@cache
def _compiled(code: str) -> tuple[tuple[State, Likely], ...]:
    return tuple((state, Likely(rf"(?<![\w'])(?:{'|'.join(state.words)})(?![\w'])")) for state in LANGUAGES[code].states)


@cache
def _anywhere(code: str) -> tuple[Likely, ...]:
    """The same patterns for a whole text, where the ends of a part are none."""
    return tuple(Likely(_ANCHORS.sub("", pattern.pattern), (state.cues,)) for state, pattern in _compiled(code))


@cache
def _apart(code: str, at: int) -> AnyOf:
    """One of these patterns by its alternatives, each with its own letters."""
    return AnyOf(rf"(?<![\w'])(?:{_ANCHORS.sub('', one)})(?![\w'])" for words in LANGUAGES[code].states[at].words for one in alternatives(words))


def _likely(row: Row, language: Language) -> list[tuple[State, Likely]]:
    """The states whose thing is spoken of and whose words are somewhere: of most notes none."""
    concepts, said = {item.concept for item in row.items}, plain(row.text)
    found, harmed = [], "DAMAGE" in concepts
    for at in where_standing(_anywhere(language.code), said):
        state, pattern = _compiled(language.code)[at]
        if (not state.things or not concepts.isdisjoint(state.things)) and (not state.cues or any(cue in said for cue in state.cues)) and _apart(language.code, at).search(said):
            found.append((at, state, pattern))
            harmed = harmed or state.fact == "facing_damage"
    if harmed and "DAMAGE" not in concepts:  # "his ladder went through it and I left it like that": the harm is told in words of its own
        for at in where_standing(_anywhere(language.code), said):
            state, pattern = _compiled(language.code)[at]
            if "DAMAGE" in state.things and concepts.isdisjoint(state.things) and (not state.cues or any(cue in said for cue in state.cues)) and _apart(language.code, at).search(said):
                found.append((at, state, pattern))
        found.sort(key=lambda one: one[0])
    return [(state, pattern) for _, state, pattern in found]


def _thing(row: Row, part: Part, state: State) -> int | None:
    """The thing that is so: named in these words, or shortly before where it may be."""
    here = next((at for at in range(part.first, part.last) if _is(row, at, state)), None)
    if here is not None or not state.apart:
        return here
    first, stops = part.first, 0
    while first > max(0, part.first - _BACK) and stops <= _SENTENCES:
        first -= 1
        stops += row.items[first].concept in ("STOP", "QUERY")
    return next((at for at in range(part.first - 1, first - 1, -1) if _is(row, at, state)), None)


def _is(row: Row, at: int, state: State) -> bool:
    return row.items[at].concept in state.things and not row.is_blank(at) and not (row.items[at].concept == "DAMAGE" and of_something_else(row, at))
