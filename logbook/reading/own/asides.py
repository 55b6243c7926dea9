"""What is told beside the work: another day, another man's collars, a dream, a list, the wish before the result.

Read before anything else of a note, over sketches of whole sentences. The words of an aside state nothing; what the aside itself says of an act
("it isn't the vanes that are missing") is stated in their place.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from functools import cache

from logbook.facts import BY_NAME
from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.languages.told import Aside
from logbook.reading.clauses.claims import Claim, Open, claim
from logbook.reading.clauses.grammar import VOID, Row
from logbook.reading.words.items import Item
from logbook.reading.words.letters import Index, beginnings, by_start
from logbook.reading.words.known import words_of_each
from logbook.reading.words.likely import Likely
from logbook.reading.words.needs import SHORTEST
from logbook.reading.clauses.parts import Part
from logbook.reading.clauses.sketch import Sketch, sketches
from logbook.reading.words.tokens import plain

_NAMES = ("NUM", "BRANCH_WORD", "FITTING", "NUMBER", "LETTER", "DASH", "MARKED", "RUN", "THRU", "SIZE", "GROOVE", "LEAK_TEST")
_THINGS = {"K_HANGER": "K_HANGER", "HANG": "K_HANGER", "HUNG": "K_HANGER", "TABS": "TABS", "STAPLES": "STAPLES", "SCREWS": "SCREWS"}
_CLAUSE = re.compile(r"[^.?,;]*")
_AHEAD = 14  # items
_LONGEST = 120  # items of one sentence that are looked at together: so that what this costs grows in line with the note
_Words = tuple[tuple[frozenset[str], tuple[str, ...]], ...]  # sets of words, each with their first letters
_MEASURES = ("CFM", "LEN", "DEG", "TEMP_F", "INWG", "FT2")


@dataclass
class Told:
    claims: list[Claim] = field(default_factory=list)
    spent: set[int] = field(default_factory=set)
    recoded: dict[int, str] = field(default_factory=dict)  # numbers that are of the sort of the one wished for


@cache
def _rows(code: str) -> tuple[tuple[Aside, Likely, re.Pattern[str] | None], ...]:
    names = "|".join(sorted(LANGUAGES[code].names))
    said = LANGUAGES[code].told.asides.said
    return tuple((one, Likely(rf"(?<![\w'])(?:{_apart(one.words).replace('{name}', names)})"), re.compile(one.unless) if one.unless else None) for one in said)


def patterns(code: str) -> tuple[str, ...]:
    """Those of all rows, of each of which its words are asked for."""
    return tuple(pattern.pattern for _, pattern, _ in _rows(code))


def _apart(words: str) -> str:
    """The ending of "let's" may stand apart as an item of its own."""
    return re.sub(r"(?<!n)(?<!\?)'(?=(?:s|d|m|re|ll)(?![\w?]))", " ?'", words)


@cache
def _own_again(code: str) -> re.Pattern[str]:
    return re.compile(LANGUAGES[code].told.asides.own_again)


@cache
def _asked(code: str) -> tuple[Index, tuple[_Words, ...]]:
    """The rows by their cues and the words of which a text must hold one of each for a row to find something; and these words."""
    words = [words_of_each(pattern) for pattern in patterns(code)]
    index = Index((by_start(one.cues), (one.cues, *some), ()) for (one, *_), some in zip(_rows(code), words, strict=True))
    return index, tuple(tuple((frozenset([one[:SHORTEST] for one in some]), some) for some in each) for each in words)


def _looked_for(code: str, said: str) -> list[tuple[tuple[Aside, Likely, re.Pattern[str] | None], _Words]]:
    """The rows that may find something, each with its words. A sketch has other signs between the words, but no other words."""
    index, words = _asked(code)
    return [(_rows(code)[place], words[place]) for place in index.places(said) if _stand(words[place], said)]


def _stand(words: _Words, said: str) -> bool:
    lacks = beginnings(said).isdisjoint
    for starts, some in words:
        if lacks(starts):
            return False
        for one in some:
            if one in said:
                break
        else:
            return False
    return True


def asides(row: Row, language: Language) -> Told:
    """The claims that asides make, the items that they use up, and numbers that they tell the sort of."""
    found = Told()
    said = " " + plain(row.text)
    looked_for = _looked_for(language.code, said)
    for part, until in _sentences(row) if looked_for else ():
        here = said[1 + row.items[part.first].start : 1 + row.items[part.last - 1].end]
        rows = [aside for aside, words in looked_for if _stand(words, here)]
        one = sketches(row, (part,), language)[0] if rows else None
        for aside, pattern, unless in rows:
            match = pattern.search(one.words)
            if match is None or one.item(match.start()) >= until or (unless is not None and unless.search(match.group() + _CLAUSE.match(one.words, match.end()).group())):
                continue
            used = _used(row, one, match, aside, until, language)
            if found.spent.isdisjoint(used) or aside.reach == "before":
                found.claims += _claims(row, one, match, aside)
                found.spent |= used
                found.recoded.update(_like(row, one, match))
                if used and aside.reach == "sentence":
                    found.recoded.update(_mine(row, used, language))
    return found


def without(text: str, items: tuple[Item, ...], told: Told) -> Row:
    """The row where the words of asides are blotted out, letter for letter, so that nobody reads them; and what "mine" is of."""
    made, letters = list(items), list(text) if told.spent else text
    for at in told.spent:
        made[at] = replace(items[at], concept=VOID)
        letters[items[at].start : items[at].end] = "_" * (items[at].end - items[at].start)
    for at, concept in told.recoded.items():
        made[at] = replace(items[at], concept=concept, value="hanger" if concept == "K_HANGER" else items[at].value)
    return Row.of("".join(letters), tuple(made))


def _sentences(row: Row) -> Iterator[tuple[Part, int]]:
    """Each sentence with the one behind it, and the item where the second begins."""
    bounds = [0, *(at + 1 for at, item in enumerate(row.items) if item.concept in ("STOP", "QUERY")), len(row.items)]
    bounds = sorted({at for first, last in zip(bounds, bounds[1:]) for at in range(first, last, _LONGEST)} | {bounds[-1]})
    for place in range(len(bounds) - 1):
        last = bounds[min(place + 2, len(bounds) - 1)]
        yield Part(bounds[place], last, place, ""), bounds[place + 1]


def _used(row: Row, one: Sketch, match: re.Match[str], aside: Aside, until: int, language: Language) -> set[int]:
    spans = [match.span(name) for name in ("x", "y", "z") if name in match.re.groupindex and match.start(name) >= 0] or [match.span()]
    used = {at for start, end in spans if end > start for at in range(one.item(start), _behind(one, end))}
    if not used:  # what it says of the piece stands in its claims alone
        return used
    if aside.reach != "words":
        begin, last = min(used), max(until - 1, max(used) + 1)
        after = one.words[match.end() :]
        again = _own_again(language.code).search(after)
        if again is not None and again.start() + match.end() < len(one.words):
            last = min(last, _behind(one, match.end() + again.start()))
        used.update(range(begin, last))
    if aside.reach == "before":
        begin, stops = min(used), 0
        while begin > 0 and stops < 2:
            begin -= 1
            stops += row.items[begin].concept in ("STOP", "QUERY")
        used.update(range(begin, min(used)))
    kinds = {at for at in used if row.items[at].concept.startswith("K_")}
    if aside.names:
        return used - kinds - {at for at in used if row.items[at].concept in _NAMES}
    return used - kinds if _told_by_theirs(row, max(used) + 1, language) and "K_HANGER" not in {row.items[at].concept for at in kinds} else used


def _mine(row: Row, used: set[int], language: Language) -> dict[int, str]:
    """ "Everybody else's tabs stand up. Collar 3, mine are bent": mine are tabs."""
    noun = next((_THINGS[row.items[at].concept] for at in sorted(used) if row.items[at].concept in _THINGS), None)
    for at in range(max(used) + 1, min(max(used) + _AHEAD, len(row.items))):
        if noun is not None and re.fullmatch(language.told.asides.of_the_kind, row.words(at, at + 1).lower()):
            return {at: noun}
    return {}


def _told_by_theirs(row: Row, at: int, language: Language) -> bool:
    """ "Everybody else's straights leave by the female. Mine, nine, ...": what mine is, theirs tells."""
    while at < len(row.items) and row.items[at].concept in ("COMMA", "STOP", "AND", "BUT"):
        at += 1
    return at < len(row.items) and re.match(language.told.asides.of_the_kind, row.text[row.items[at].start :].lower()) is not None


def _behind(one: Sketch, end: int) -> int:
    """The item after the one whose sign or words end here."""
    return next((item for start, item in one.places if start >= end), one.last)


def _claims(row: Row, one: Sketch, match: re.Match[str], aside: Aside) -> Iterator[Claim]:
    if match.groupdict().get("later") is not None:
        first, last = one.item(match.start("later")), _behind(one, match.end("later"))
        denies = next((fact for _, fact in one.acts_in(*match.span("later"))), None) if ("<act>", False) in aside.states else None
        opened = Open("piece", denies, row.items[first].start, row.items[last - 1].end)
        yield claim(row, "(open)", None, first, last, opens=(opened,), hedged=False)
    for name, value in aside.states:
        ahead, sign, _ = name.partition("<")
        group = name[len(ahead) + 1 : -1] if sign else None
        span = match.span(group) if group else match.span()
        if isinstance(value, str) and value.startswith("="):
            span = match.span(value[1:])
        if span[0] < 0:
            continue
        if value is False and "x" in match.re.groupindex:  # what denies it is told too
            span = min(span[0], match.start("x")), max(span[1], match.end("x"))
        first, last = one.item(span[0]), _behind(one, span[1])
        if isinstance(value, str) and value.startswith("="):
            value = _measured(row, first) if row.items[first].concept in ("NUM", "LEN", "FRAC") else match.group(value[1:])
        facts = [ahead + fact for _, fact in one.acts_in(*match.span(group))][:1] if group else [name]
        if group and value is False:  # the words that deny it belong to it
            first, last = one.item(match.start()), _behind(one, match.end())
        for fact in facts:
            if not isinstance(value, str) or _may_be(fact, value):
                yield claim(row, fact, value, first, last, hedged=False, kinds=aside.kinds, corrects=aside.corrects)


def _may_be(fact: str, said: str) -> bool:
    """Words in the place of a number are no value."""
    return BY_NAME[fact].shape == "text" or said in BY_NAME[fact].values


def _measured(row: Row, at: int):
    value = row.items[at].value.value
    return int(value) if row.items[at].concept == "NUM" and value.denominator == 1 else value


def _like(row: Row, one: Sketch, match: re.Match[str]) -> dict[int, str]:
    """ "Expected twenty cfm and got fourteen": fourteen of the same."""
    if "measure" not in match.re.groupindex or match.start("measure") < 0:
        return {}
    at = one.item(match.start("measure"))
    wanted = next((row.items[k].concept for k in range(one.item(match.start()), at) if row.items[k].concept in _MEASURES), None)
    return {at: wanted} if wanted == "CFM" and row.items[at].concept == "NUM" else {}
