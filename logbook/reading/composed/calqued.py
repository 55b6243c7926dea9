"""What is said with the words of one language and the build of another: "the legs they are to inside", "I put to him the vanes", "the tape still no".

Only the words between a thing and what is told of it are set right; what is told stays as it was said.
"""

from __future__ import annotations

from dataclasses import replace
from functools import cache

from logbook.languages.calques import Calques
from logbook.reading.words.items import Item, concept_at
from logbook.reading.words.phrasing import words_of

_ENDS = ("COMMA", "STOP", "QUERY", "AND", "BUT", "")
_LENGTHS = ("LEN", "NUM", "FRAC")
_THINGS = frozenset(("TAPE", "STAPLES", "VANES", "TABS", "CLOSURE", "MARK181", "FLAP"))
_ACTS = frozenset(("RUB", "RUBBED", "TAPED", "TAPE_IT", "STAPLED", "STAPLE", "TRIM", "TRIMMED"))
_SPACED = ("STAPLES", "STAPLE", "TABS", "SCREWS", "K_HANGER")
_BETWEEN = frozenset(("TO", "OF", "DET", "FILLER", "IT", "I", "BE", "MOVE", "OTHER", "WORD", "SIDE", "PENDING", "TIED", "CLINCHED", "STAPLES", "SHIPLAP", "BENT", "BOTH", "ALL"))
_MOST_BETWEEN = 8  # items


def calqued(items: tuple[Item, ...], text: str, words: Calques) -> tuple[Item, ...]:
    """The items, with such words as the grammar knows them."""
    if not words.stays:
        return items
    concepts = {item.concept for item in items}
    done = list(items)
    if not concepts.isdisjoint(("INSIDE", "OUTSIDE")) and not concepts.isdisjoint(("LEG", "STAPLES", "GROOVE")):
        _to_one_side(done, text, words)
    if "NO" in concepts:
        _still_none(done, text, words)
    if "WORD" in concepts:
        known = _looked_at(words)
        for at, item in enumerate(done):
            if item.concept == "WORD" and (said := text[item.start : item.end].lower()) in known:
                _word(done, at, said, text, words)
    if "TABS" in concepts:
        _so_long(done, text, words)
    return tuple(done)


@cache
def _looked_at(words: Calques) -> frozenset[str]:
    return words.me | words.his | words.him | words.separated | words.between | words.doubled


def _said(item: Item, text: str) -> str:
    return text[item.start : item.end].lower()


def _to_one_side(done: list[Item], text: str, words: Calques) -> None:
    """ "The legs they are to inside", "the staples closed to inside", "the step I cut it for outside": which way they look."""
    for at, item in enumerate(done):
        if item.concept not in ("INSIDE", "OUTSIDE"):
            continue
        head, turned = at - 1, False
        while head >= 0 and at - head <= _MOST_BETWEEN and done[head].concept in _BETWEEN and _leads(done, head, text, words):
            said = _said(done[head], text).split()[0]
            turned = turned or said in words.turned or done[head].concept == "CLINCHED"
            if done[head].concept == "STAPLES" and concept_at(done, head - 1) != "OF" and concept_at(done, head - 2) != "OF":
                break
            head -= 1
        there = concept_at(done, head)
        if there == "GROOVE" and head < at - 1:
            done[head + 1] = replace(done[head + 1], concept="BE", value=None)
            for k in range(head + 2, at):
                done[k] = replace(done[k], concept="FILLER", value=None)
        elif there == "LEG" or there == "STAPLES" and turned:
            if there == "LEG" and [concept_at(done, k) for k in range(head + 1, at)] == ["OF", "STAPLES"]:
                done[head], done[head + 1] = replace(done[head], concept="CLINCHED"), replace(done[head + 1], concept="FILLER", value=None)
                done[head + 2] = replace(done[head + 2], concept="FILLER", value=None)
                continue
            if concept_at(done, at - 1) == "CLINCHED" or there == "LEG" and head == at - 1:
                continue  # "the legs bent inside" is known
            for k in range(head + 1, at):
                done[k] = replace(done[k], concept="FILLER", value=None)
            done[at - 1] = replace(done[at - 1], concept="CLINCHED")


def _leads(done: list[Item], at: int, text: str, words: Calques) -> bool:
    """Whether this may stand between a thing and the way it looks: no denial, no wish and nothing else."""
    concept, said = done[at].concept, _said(done[at], text)
    if not words_of("small.governs").isdisjoint(said.split()):
        return False
    if concept == "WORD":
        return said in words.turned or said in words.stays
    if concept in ("SIDE", "PENDING"):
        return said.split()[0] == "left"  # "it was left to the outside"
    return concept != "OF" or said in ("of", "for")


def _still_none(done: list[Item], text: str, words: Calques) -> None:
    """ "The tape still no", "the rub lacks": it is still to come, or is not there."""
    for at, item in enumerate(done):
        if item.concept != "NO" or concept_at(done, at + 1) not in _ENDS:
            continue
        before = concept_at(done, at - 1)
        if _said(item, text) in words.lacks and (before in _THINGS or before in _ACTS):
            done[at] = replace(item, concept="MISSING", value=None)
        elif before == "FILLER" and _said(done[at - 1], text) in words.still and (concept_at(done, at - 2) in _THINGS or concept_at(done, at - 2) in _ACTS):
            done[at - 1], done[at] = replace(done[at - 1], concept="NOT", value=None), replace(item, concept="YET", value=None)


def _word(done: list[Item], at: int, said: str, text: str, words: Calques) -> None:
    item = done[at]
    before, behind = concept_at(done, at - 1), concept_at(done, at + 1)
    if said in words.me and behind == "I" and before in (*_ENDS, "NUM", "MARKED"):
        done[at] = replace(item, concept="FILLER", value=None)  # "me, I staple it every three"
    elif said in words.his and (behind in _THINGS or behind == "K_HANGER" or behind == "WORD" and concept_at(done, at + 2) == "K_HANGER"):
        done[at] = replace(item, concept="DET", value=None)
    elif said in words.him and before == "TO" and concept_at(done, at - 2) == "FILLER" and (behind in _THINGS or behind == "DET" and concept_at(done, at + 2) in _THINGS):
        done[at - 1], done[at] = replace(done[at - 1], concept="FILLER", value=None), replace(item, concept="FILLER", value=None)
    elif said in words.separated and (behind in _LENGTHS or behind in ("OF", "HEDGE") and concept_at(done, at + 2) in _LENGTHS) and any(concept_at(done, k) in _SPACED for k in range(max(0, at - 6), at)):
        done[at] = replace(item, concept="EVERY", value=None)
        if behind == "OF":
            done[at + 1] = replace(done[at + 1], concept="FILLER", value=None)
    elif said in words.between:
        _between(done, at)
    elif said in words.doubled and any(concept_at(done, k) == "TABS" for k in range(max(0, at - 4), at)):
        done[at] = replace(item, concept="BENT", value=None)
        if behind == "IT" and before in ("I", "NOT"):
            done[at + 1] = replace(done[at + 1], concept="FILLER", value=None)


def _between(done: list[Item], at: int) -> None:
    """ "Between tabs there is fifteen inches", "between hanger and hanger there is ten feet": how far apart they are."""
    thing = at + 1 + (concept_at(done, at + 1) == "DET")
    if concept_at(done, thing) not in _SPACED:
        return
    link = thing + 1
    if concept_at(done, link) == "AND" and concept_at(done, link + 1) == done[thing].concept:
        link += 2
    if concept_at(done, link) in ("HAVE", "HAVING", "BE") and (concept_at(done, link + 1) == "LEN" or concept_at(done, link + 1) in _LENGTHS and done[thing].concept != "K_HANGER"):
        for k in range(thing + 1, link):
            done[k] = replace(done[k], concept="FILLER", value=None)
        done[link] = replace(done[link], concept="EVERY", value=None)


def _so_long(done: list[Item], text: str, words: Calques) -> None:
    """ "The cross tabs I cut them of six inches", "they measure six", "have six inches of long": how long they are."""
    for at, item in enumerate(done):
        if item.concept != "TABS":
            continue
        if [concept_at(done, at + k) for k in (1, 3, 4)] == ["I", "IT", "OF"] and concept_at(done, at + 2) in ("MOVE", "FILLER", "WORD") and concept_at(done, at + 5) in ("LEN", "FRAC"):
            done[at + 1] = replace(done[at + 1], concept="BE", value=None)
            done[at + 2], done[at + 3] = replace(done[at + 2], concept="FILLER", value=None), replace(done[at + 3], concept="FILLER", value=None)
        elif concept_at(done, at + 1) in ("SIZE_WORD", "WORD") and _said(done[at + 1], text) in words.measures and concept_at(done, at + 2) in ("LEN", "FRAC"):
            done[at + 1] = replace(done[at + 1], concept="BE", value=None)
        elif concept_at(done, at + 1) == "HAVING" and concept_at(done, at + 2) in ("LEN", "FRAC") and concept_at(done, at + 3) == "OF" and concept_at(done, at + 4) in ("LONG", "LENGTH"):
            done[at + 1], done[at + 3] = replace(done[at + 1], concept="BE", value=None), replace(done[at + 3], concept="FILLER", value=None)
