"""How many denials an act stands under: "I didn't leave the tape off" is two, and it is on; "without so much as an inch of tape" is one."""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.afar import Afar
from logbook.reading.afar import _compiled as patterns
from logbook.reading.claims import claim
from logbook.reading.grammar import Row
from logbook.reading.sketch import Sketch


@cache
def found_by(code: str, member: str) -> tuple[re.Pattern[str], ...]:
    """The patterns of one row of a language's weighing."""
    rows = getattr(LANGUAGES[code].told.weighed, member)
    return tuple(re.compile(rf"(?<![\w'])(?:{row})(?![\w'])") for row in rows)


@cache
def _word(code: str, member: str) -> re.Pattern[str]:
    return re.compile(getattr(LANGUAGES[code].told.weighed, member) or "(?!)")


def weighed(row: Row, drawn: tuple[Sketch, ...], language: Language) -> Afar:
    """The acts whose denials are to be counted, and the items that this uses up."""
    found = Afar()
    if not language.told.weighed.lacking:
        return found
    for place, one in enumerate(drawn):
        if one.acts and not (_counted(row, one, _of_any(drawn, place, language), language, found) or _not_a_bit(row, one, language, found)):
            continue
    return found


def _of_any(drawn: tuple[Sketch, ...], place: int, language: Language) -> bool:
    """ "I never hang an elbow without vanes": how he works, which tells of no piece; unless he says that this one is no exception."""
    if not _word(language.code, "in_general").search(drawn[place].words):
        return False
    return not any(pattern.search(later.words) for later in drawn[place + 1 : place + 3] for pattern in patterns(language.code, "nor_this"))


def _counted(row: Row, one: Sketch, of_any: bool, language: Language, found: Afar) -> bool:
    """One denial inside another: of the verb that denies ("skip", "leave out", "untaped") or of a second "not"."""
    code = language.code
    for member in ("lacking", "denied"):
        for pattern in found_by(code, member):
            match = pattern.search(one.words)
            if match is None:
                continue
            acts = one.acts_in(match.start(), match.end())
            acts = acts[-1:] if match.group().endswith("<u>") else acts
            before = one.words[: match.start()]
            if len(acts) != 1 or of_any or "<" in before and not _of_the_same(one, acts[0], before) or _word(code, "holds_back").search(before):
                continue
            denials = list(_word(code, "nots").finditer(before))
            nots = len(denials)
            if member == "denied" and (nots == 0 or _word(code, "concord").search(one.words[: match.end()].rsplit(" <", 1)[0])):
                continue
            if nots == 0 and member == "lacking" and not _new_to_others(row, acts[0][0]):
                continue
            at, name = acts[0]
            first = one.item(denials[0].start() if denials else match.start())
            found.claims.append(claim(row, name, nots % 2 == 1, min(first, at), max(at, one.item(match.end() - 1)) + 1, hedged=False))
            _spend(row, one, at, found)
            return True
    return False


def _of_the_same(one: Sketch, act: tuple[int, str], before: str) -> bool:
    """ "The tabs are unbent": the noun is of the word that denies."""
    return {name for item, name in one.acts if item < act[0]} <= {act[1], "cross_tabs" if act[1] == "tabs_bent" else act[1], "taped" if act[1] == "rubbed_down" else act[1]} and not re.search("<[dbu]>", before)


def _new_to_others(row: Row, at: int) -> bool:
    """A word by itself ("untrimmed") is read nowhere else."""
    return row.items[at].concept == "WORD"


def _not_a_bit(row: Row, one: Sketch, language: Language, found: Afar) -> bool:
    for pattern in found_by(language.code, "not_a_bit"):
        match = pattern.search(one.words)
        acts = one.acts_in(match.start(), match.end()) if match is not None else []
        if len(acts) != 1 or _word(language.code, "holds_back").search(one.words[: match.start()]):
            continue
        at, name = acts[0]
        nots = len(_word(language.code, "nots").findall(one.words[: match.start()]))
        found.claims.append(claim(row, name, nots % 2 == 1, min(one.item(match.start()), at), at + 1, hedged=False))
        _spend(row, one, at, found)
        return True
    return False


def _spend(row: Row, one: Sketch, until: int, found: Afar) -> None:
    """Everything up to the act but what names a piece or measures something."""
    naming = ("NUM", "FITTING", "NUMBER", "LETTER", "DASH", "MARKED", "RUN", "THRU", "SIZE", "LEN")
    found.spent.update(at for at in range(one.first, min(one.last, until + 2)) if row.items[at].concept not in naming and not row.items[at].concept.startswith("K_"))
