"""One thing taken off and another put on: "peeled the two inch and put three on", "pulled the quarter inch staples and shot half inch".

What came off and what went on are told as a slip of the tongue and its correction are, so the words between become one: the second counts,
and the first is kept as withdrawn. A closure has no measure to set right; there what came off is a mere word.
"""

from __future__ import annotations

from dataclasses import replace
from functools import cache

from logbook.languages.language import Forms
from logbook.reading.composed.corrections import replacing
from logbook.reading.words.items import Item
from logbook.reading.words.likely import Likely
from logbook.reading.composed.size_pairs import MEASURES

_CLOSURES = ("CLOSURE", "MARK181", "C_MASTIC")
_NOUNS = ("TAPE", "STAPLES", "STAPLE", "LEG", "TABS", "BOARD", "SCREWS", "WASHERS")
_CODE = {**dict.fromkeys(MEASURES, "<m>"), **dict.fromkeys(_CLOSURES, "<c>"), "COMMA": ",", "STOP": ".", "QUERY": "?"}


@cache
def _patterns(swaps: tuple[str, ...]) -> tuple[Likely, ...]:
    return tuple(Likely(rf"(?<![\w<'])(?:{pattern})") for pattern in swaps)


@cache
def _verb(words: str) -> Likely:
    return Likely(rf"(?<![\w'])(?:{words})(?![\w'])")


def _names_a_piece(items: tuple[Item, ...], at: int) -> bool:
    """ "Straight fifty-five, recut it to thirty inches": the first is the piece's number."""
    before = items[at - 1].concept if at else ""
    return items[at].concept == "NUM" and (before.startswith("K_") or before in ("FITTING", "NUMBER", "BRANCH_WORD", "RUN"))


def swapped(items: tuple[Item, ...], text: str, forms: Forms) -> tuple[Item, ...]:
    """The items, where what was taken off is set right by what was put on.

    A language's `swaps` are patterns over words, with `<m>` for a measure and `<c>` for a closure; their groups are `off` and `out` (the words of
    taking off), `old`, `link` (the words between, that become a correction) and `new`; where the group `noun` stands,
    `swap_nouns` tell what it is.
    """
    if not forms.swaps or _verb(forms.swap_verbs).search(text.lower()) is None:
        return items
    starts, words = [], ""
    for item in items:
        starts.append(len(words))
        words += _CODE.get(item.concept) or text[item.start : item.end].lower().replace("’", "'")
        words += " "
    done = list(items)
    dropped: set[int] = set()
    for pattern in _patterns(forms.swaps):
        for match in pattern.finditer(words) if pattern.may(words) else ():
            span = {name: [at for at, start in enumerate(starts) if match.start(name) <= start < match.end(name)] for name in match.groupdict() if match.start(name) >= 0}
            old, new = items[span["old"][0]], items[span["new"][0]]
            if (old.concept in _CLOSURES) != (new.concept in _CLOSURES) or _names_a_piece(items, span["old"][0]):
                continue
            off = span.get("off", ())
            if "noun" in match.groupdict() and match.start("noun") >= 0:
                _of_the_noun(items, done, starts, match, span, forms)
                continue
            if any(starts[at] + items[at].end - items[at].start > match.end("off") for at in off):
                continue  # "pulled the staples" is one thing told
            if old.concept in _CLOSURES:
                done[span["old"][0]] = replace(old, concept="WORD", value=None)
                for at in (*off, *span.get("out", ()), *(at for at in span["link"] if items[at].concept == "WIPED")):
                    done[at] = replace(items[at], concept="FILLER", value=None)
                continue
            for at in (*off, *span.get("out", ()), *span["link"], *span.get("tail", ())):
                done[at] = replace(items[at], concept="FILLER", value=None)
            if len(span["link"]) > _MOST:  # "… pero la saqué porque se salía del otro lado, y ahora lleva …": all of it is one word of correction
                dropped.update(span["link"][:-1])
            link = span["link"][-1]
            of = next((item.concept for item in items[span["old"][0] + 1 : span["link"][0]] if item.concept in _NOUNS), None)
            if of is not None:
                done[span["old"][0]] = replace(old, concept="FILLER", value=None)
                done[link] = replace(items[link], concept=of, value=None)  # what the measure is of was told with the first
                done[span["new"][0]] = replacing(new, old)
            else:
                first = items[span["link"][0]] if len(span["link"]) > _MOST else items[link]
                done[link] = replace(items[link], concept="FIX", value=None, start=first.start, first=first.first)
    return tuple(item for at, item in enumerate(done) if at not in dropped)


_MOST = 6  # items


def _of_the_noun(items, done, starts, match, span, forms: Forms) -> None:
    """ "quité la cinta de dos y puse la de tres": the thing stands in the words of taking off, and stays."""
    noun = match.group("noun")
    at = next(k for k in range(len(items)) if starts[k] <= match.start("noun") and (k + 1 == len(items) or starts[k + 1] > match.start("noun")))
    for k in (*span.get("off", ()), *span["link"][1:]):
        if items[k].concept != "EVERY":
            done[k] = replace(items[k], concept="FILLER", value=None)
    concept = next(concept for concept, words in forms.swap_nouns if noun in words)
    done[at] = replace(items[at], concept=concept, value=None)
    done[span["link"][0]] = replace(items[span["link"][0]], concept="FIX", value=None)
