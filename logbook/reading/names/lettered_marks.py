"""Pieces named by a letter with a number wherever it is said: "I cut S-11 before coffee", "did the whole of D-16 with it", "C1, C2 and C3 hang eight feet on center".

A number alone measures and counts; a letter with a number does neither, so it is a piece unless the words beside it make it
a sheet, a door, a paper or a place beside the piece (`languages.lettered`).
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache

from logbook.languages.language import Language
from logbook.reading.clauses.batches import up_to
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.mention import Mention
from logbook.reading.words.phrasing import in_any, words_of

_PAPERS = frozenset("A3 A4 A5".split())
_STAPLE_SIZES = frozenset("T20 T25 T27 T50 T55 T-20 T-25 T-27 T-50 T-55 A11".split())  # what the box of staples or the gun is called
_OF_THINGS = frozenset("VD SD CD LD".split())  # dampers and diffusers, by their number
_THINGS = frozenset("N95 F150 F250 F350 G60 G90 G-60 G-90 A36 WD40 WD-40 E84 M12 M18".split())  # a mask, a truck, zinc, steel, an oil, a test, a drill
_MOST_LETTERS = 2
_NEAR = 5
_LETTERS = re.compile("[A-Z]*")
_THROUGH = ("THRU", "THROUGH")
_BETWEEN = (["COMMA"], ["AND"], ["COMMA", "AND"], ["AND", "DET"], ["COMMA", "DET"], *([one] for one in _THROUGH))
_ACTS = ("STAPLED", "TAPED", "RUBBED", "HUNG", "WIPED", "TRIMMED", "STAPLE", "TAPE_IT", "RUB", "HANG", "CUT_TO", "LAID")
_OF_AN_ACT = (*_ACTS, "I", "FILLER", "HAVE", "NOT", "UP", "DOWN", "NOT_DONE", "FORGOT", "TO")
_ENDS = ("COMMA", "STOP", "QUERY", "BUT", "AND")


def lists(row: Row, used: set[int]) -> list[Mention]:
    """Those named together: "C1, C2 and C3", "D3 through D6", "no tape on B7 or B8"."""
    return [one for one in lettered(row, used, []) if one.batch]


def lettered(row: Row, used: set[int], made: list[Mention]) -> list[Mention]:
    """Every piece named so that nothing else named yet; several in one list together."""
    ats = [at for at, item in enumerate(row.items) if item.concept == "MARKED" and at not in used and not row.is_blank(at) and _shaped(item.value)]
    taken, found = set(used), []
    for several in (part for one in _lists(row, ats) if _names(row, one, made) for part in _parted(row, one)):
        first, last = _begins(row, several[0], taken), several[-1] + 1
        if len(several) == 1:
            corrects = any(item.concept == "FIX" for item in row.items[max(0, last - _NEAR) : last])  # "no, hold on, it's B5"
            found.append(Mention(first, last, mark=row.items[last - 1].value, mark_at=(last - 1, last), corrects=corrects, pointed=not corrects))
        elif row.items[several[0] + 1].concept in (*_THROUGH, "TO"):
            if batch := up_to(row.items[several[0]], row.items[last - 1], (several[0], last)):
                found.append(Mention(first, last, batch=batch))
        else:
            found.append(Mention(first, last, batch=tuple((row.items[at].value, (at, at + 1)) for at in several)))
        taken.update(range(first, last))
    return found


def _shaped(mark: str) -> bool:
    letters = _LETTERS.match(mark).group()
    return 0 < len(letters) <= _MOST_LETTERS and len(mark) > len(letters) and letters not in _OF_THINGS and mark not in _THINGS


def _lists(row: Row, ats: list[int]) -> list[list[int]]:
    """The items that name pieces, those of one list together: "C1, C2 and C3", "D3 through D6"."""
    made: list[list[int]] = []
    for at in ats:
        between = [item.concept for item in row.items[made[-1][-1] + 1 : at]] if made else []
        if between and (between in _BETWEEN or between == ["OR"] and _denied(row, made[-1][0]) or between[0] == "TO" and _ranged(row, made[-1][-1], at)):
            made[-1].append(at)
        else:
            made.append([at])
    return made


def _denied(row: Row, at: int) -> bool:
    """ "No tape on B7 or B8" denies it of both."""
    return any(item.concept in ("NO", "NOT", "NOT_DONE", "UNDONE") for item in row.items[row.sentence_start(at) : at])


def _ranged(row: Row, low: int, high: int) -> bool:
    """ "From S-2 to S-6", "de la S-2 a la S-6"."""
    return _leading("ranges").search(row.text[row.items[row.sentence_start(low)].start : row.items[low].start].lower().rstrip()) is not None and len(up_to(row.items[low], row.items[high], (low, high + 1))) > 1


def _parted(row: Row, ats: list[int]) -> list[list[int]]:
    """ "D3, D4 I left", "did D3 and D4 has no vanes": told of one by one where no word joins the last two, or where what is behind is said of one alone."""
    if len(ats) == 1:
        return [ats]
    joined = {item.concept for item in row.items[ats[-2] + 1 : ats[-1]]} & {"AND", "OR", "TO", *_THROUGH}
    behind = row.words(ats[-1] + 1, ats[-1] + 2).lower().split()[:1] if ats[-1] + 1 < len(row.items) else []
    alone = not words_of("lettered.one_is").isdisjoint(behind) and not (ats[0] == 0 or row.items[ats[0] - 1].concept in ("STOP", "QUERY", "COMMA", "BOTH", "ALL"))
    if joined and not alone:
        return [ats]
    return [ats[:-1], ats[-1:]] if joined else [[at] for at in ats]


def _names(row: Row, ats: list[int], made: list[Mention]) -> bool:
    if any(one.last == ats[0] and one.mark is not None for one in made):
        return False  # "straight 4 R2": its run, or its revision
    start = row.sentence_start(ats[0])
    before = row.text[row.items[start].start : row.items[ats[0]].start].lower().rstrip(" #:")
    behind = row.text[row.items[ats[-1]].end : row.items[row.sentence_end(ats[-1]) - 1].end].lower()
    mark = row.items[ats[0]].value
    if any(_leading(where).search(before) for where in ("of_others", "aside", "of_that")):
        return False
    if _behind("makes").match(behind) or mark in _STAPLE_SIZES and _behind("staplers").match(behind):
        return False
    if mark in _PAPERS and _within("papers").search(before + behind) or mark[0] == "R" and _within("insulation").search(before + behind):
        return False
    return not (_leading("joins").search(before) and any(start <= one.first < ats[0] and (one.mark is not None or one.batch) for one in made))


@cache
def _leading(where: str) -> re.Pattern[str]:
    """Words right before, past an article."""
    return re.compile(rf"(?<![\w'])(?:{in_any(f'lettered.{where}').pattern})(?: (?:{in_any('lettered.articles').pattern}))?$")


@cache
def _behind(where: str) -> re.Pattern[str]:
    return re.compile(rf"[ -](?:{in_any(f'lettered.{where}').pattern})(?![\w'])")


@cache
def _within(where: str) -> re.Pattern[str]:
    return re.compile(rf"(?<![\w'])(?:{in_any(f'lettered.{where}').pattern})(?![\w'])")


def _begins(row: Row, at: int, taken: set[int]) -> int:
    """The first item that is told of it: its clause, where no other piece stands in that."""
    first = at
    while first > 0 and first - 1 not in taken:
        concept = row.items[first - 1].concept
        if concept == "AND" and first > 1 and _an_act_alone(row, first - 1):
            first -= 1
            continue
        if concept in _ENDS:
            return first
        first -= 1
    return first if first == 0 else at


def _an_act_alone(row: Row, at: int) -> bool:
    """ "Wiped and taped D4": nothing but what was done stands before the "and"."""
    begin = at
    while begin > 0 and row.items[begin - 1].concept not in _ENDS:
        begin -= 1
    said = [item.concept for item in row.items[begin:at]]
    return bool(set(said) & set(_ACTS)) and set(said) <= set(_OF_AN_ACT)


def shapes(row: Row, made: list[Mention], language: Language) -> list[Mention]:
    """ "La T 37 va engrapada": the tee of that number, where its letter stands apart behind such an article and no other kind is told of it."""
    return [_as_a_shape(row, one, language) if one.kind is None and one.mark is not None and one.mark_at is not None and one.mark[:1] in language.forms.lettered else one for one in made]


def _as_a_shape(row: Row, one: Mention, language: Language) -> Mention:
    at = one.mark_at[0]
    said, number = row.words(*one.mark_at).split(), one.mark[1:]
    before = row.text[: row.items[at].start].lower().split()[-1:]
    if len(said) != 2 or not number.isdigit() or not before or before[0] not in language.forms.before_lettered:
        return one
    if any(item.concept.startswith("K_") and item.concept not in ("K_BRANCH", "K_HANGER") for item in row.items[max(0, at - 3) : row.sentence_end(one.mark_at[1])]):
        return one
    return replace(one, mark=number, kind=language.forms.lettered[one.mark[:1]][2:].lower(), kind_at=one.mark_at)
