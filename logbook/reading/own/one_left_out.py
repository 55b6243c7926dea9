"""One of a batch that an act leaves out: "three through seven are taped except five", "de la tres a la siete, menos la cinco"."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim
from logbook.reading.names.contrasts import place_word
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.marks import mark_text
from logbook.reading.clauses.mention import Mention
from logbook.reading.clauses.parts import Part

_LEFT_OUT = "(?:EXCEPT|NEGATIVE|ALL_BUT|(?P<n>(?:BUT|COMMA|AND) NOT)|(?P<b>BUT)) (?:ON|OF|IN|DET|NUMBER|FITTING|KIND|FILLER){0,3} (?P<m>MARKED|NUM|WORD|FILLER|ANOTHER) (?=NUM? (?:SEP|$)|FILLER (?:DET|I|FILLER){0,2} (?:FORGOT|PENDING NUM|NOT WORD|NOT HAVE) (?:SEP|$))"
_OF_WORK = ("STAPLED", "TAPED", "RUBBED", "VANES", "TRIMMED", "WIPED", "TABS", "BENT", "PREHEATED", "TAPE", "STAPLES", "CLOSURE")
_ACTS = ("stapled", "taped", "rubbed_down", "vanes", "trimmed", "surface_clean", "tabs_bent", "cross_tabs", "preheated", "reinforced")


def places(row: Row) -> tuple[tuple[int, int, int], ...]:
    """(first, place of the number, last) of every exception that could be of one piece."""
    found = [(match.start(), match.start("m"), match.end()) for match in row.find(_LEFT_OUT) if row.words(match.start(), match.start() + 1).lower() != "minus" and not _measured_behind(row, match.end()) and (match.start("b") < 0 or _of_all(row, match.start()))]
    return tuple((first, at, last) if where is None else (first, at, where[1]) for first, at, last in found if (where := place_word(row, at)) is not None or row.items[at].concept in ("MARKED", "NUM"))


def _measured_behind(row: Row, at: int) -> bool:
    """ "… stapled at two except 113, which is at three": it is stapled, and measures otherwise."""
    for place, item in enumerate(row.items[at : at + 7] if at < len(row.items) and row.items[at].concept == "COMMA" else ()):
        if place > 1 and item.concept in ("NUM", "LEN", "FRAC", "PARTED"):
            return True
        if item.concept not in ("COMMA", "THIS", "BE", "IT", "QUESTION", "EVERY", "ON", "HAVE", "OTHER", "GENERIC", "WHEN"):
            return False
    return False


def _of_all(row: Row, but: int) -> bool:
    """ "Everything's rubbed but six": where all were told of, "but" leaves one out."""
    return any(row.items[k].concept in ("ALL_THAT", "ALL", "BOTH", "EACH") for k in range(row.sentence_start(but), but))


def of_these(row: Row, found, marks: list[str], language: Language):
    """Those whose number is one of these marks, or can be nothing else: "all sides except two" is none."""
    return tuple((first, at, last) for first, at, last in found if _mark(row, at, marks, language) in marks or _a_piece(row, first, at))


_MOST_COUNTED = 9  # sides, staples, tabs: up to here "all but four" counts them more often than it names a piece


def _a_piece(row: Row, first: int, at: int) -> bool:
    """ "Vanes in every elbow except eleven", "I taped 21 but not 22": its number alone, beside what was told of all or of another by its number."""
    item = row.items[at]
    named = any(row.items[k].concept.startswith("K_") for k in range(first + 1, at)) and not any(one.concept in ("NO", "NOT", "NOT_DONE") for one in row.items[row.sentence_start(first) : first])  # "all taped except cap 6"
    if place_word(row, at) is not None or not named and item.concept == "NUM" and (item.value.value <= _MOST_COUNTED or item.value.value.denominator != 1):
        return False
    told = row.items[row.sentence_start(first) : first]
    if row.items[first + 1].concept != "NOT":
        return any(one.concept in _OF_WORK for one in told)
    beside = [one for one in told if one.concept in ("NUM", "MARKED", "SIZE", "LEN", "FRAC")]
    return any(one.concept in _OF_WORK for one in told) and bool(beside) and beside[-1].concept in ("NUM", "MARKED")


def _mark(row: Row, at: int, marks: list[str], language: Language) -> str | None:
    where = place_word(row, at)
    if where is None:
        return mark_text(row, at, at + 1, language) if row.items[at].concept in ("MARKED", "NUM") else None
    return marks[where[0]] if marks and where[0] is not None and where[0] < len(marks) else None


def without(cut_up: tuple[Part, ...], found) -> tuple[Part, ...]:
    """The parts that are no such exception: what it leaves out is no shortfall of all."""
    return tuple(part for part in cut_up if not any(first <= part.first < last for first, _, last in found))


def excepted(row: Row, found, named: list[Mention], claims: list[Claim], language: Language) -> tuple[list[Mention], list[Claim]]:
    """With a mention of the one left out, and its acts denied: those told last before it, in its sentence."""
    marks = list(dict.fromkeys(mark for one in named for mark, _ in one.batch))
    for first, at, last in found:
        mark = _mark(row, at, marks, language)
        mark = mark or mark_text(row, at, at + 1, language)
        if mark is None:
            continue
        acts: list[Claim] = []
        for one in sorted((c for c in claims if (c.name in _ACTS and c.value is True or c.name == "stage" and c.value == "hung") and c.last <= first), key=lambda c: -c.first):
            between = row.items[one.last : acts[-1].first if acts else first]
            if any(item.concept in ("STOP", "QUERY") for item in between) or (acts and any(item.concept not in ("AND", "COMMA", "BE", "FILLER") for item in between)):
                break
            acts.append(one)
        behind = row.sentence_end(last)
        told = {c.name for c in claims if last <= c.first < behind and c.value is False} & {c.name for c in acts}
        acts = [c for c in acts if not told or c.name in told]  # "all stapled and taped, except forty-one, no tape on that one"
        if acts:
            own = next((m for m in named if m.mark_at == (at, at + 1)), Mention(first, last, mark=mark, mark_at=(at, at + 1)))
            named = sorted([*(m for m in named if m is not own), replace(own, first=first, last=last)], key=lambda m: m.first)
            start, end = row.items[first].start, row.items[last - 1].end
            claims = claims + [replace(c, value="made" if c.name == "stage" else False, first=first, last=last, start=start, end=end, uses=(), took_back=(), corrects=True, both_at=-1) for c in acts]
    return named, claims
