"""Work that is no more, and work that is put back: "stapled it, then tore every one back out", "undid the staples and shot new ones"."""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.afar import Afar
from logbook.reading.claims import claim
from logbook.reading.grammar import Row
from logbook.reading.likely import Likely, standing
from logbook.reading.phrasing import apart, word
from logbook.reading.sketch import Sketch

_BACK = 4  # parts
_AHEAD = 4
_KEPT = ("NUM", "FITTING", "NUMBER", "LETTER", "DASH", "MARKED", "RUN", "SIZE", "LEN", "EVERY", "GENERIC")


@cache
def _with_it(code: str) -> tuple[tuple[Likely, str], ...]:
    return tuple((Likely(rf"(?:{words})\w* (?:them|it|'em|those|all)"), fact) for words, fact in LANGUAGES[code].told.came_off.facts)


def came_off(row: Row, drawn: tuple[Sketch, ...], language: Language) -> Afar:
    """The acts that came to nothing or were done anew, and the items that tell so."""
    found = Afar()
    code = language.code
    if not language.told.came_off.taken or not word(code, "told.came_off.looks").search(row.text.lower()):
        return found
    words = "\n".join(one.words for one in drawn)
    taken = standing((*apart(code, "told.came_off.taken"), *apart(code, "told.came_off.fell")), words)
    taken_it = standing(apart(code, "told.came_off.taken_it"), words)
    for place, one in enumerate(drawn):
        if row.is_blank(one.first):
            continue
        told = _gone(row, drawn, place, taken, taken_it, language)
        if told is None:
            continue
        name, worn, at = told
        again = next((k for k in range(place + 1, min(len(drawn), place + 1 + _AHEAD)) if _is_back(row, drawn, place, k, name, code)), None)
        found.spent.update(k for k in range(one.first, one.last) if row.items[k].concept not in _KEPT and not row.items[k].concept.startswith("K_"))
        for later in drawn[place + 1 : place + 3]:
            if word(code, "told.came_off.lies").search(later.words):
                found.spent.update(range(later.first, later.last))
        if again is None and not worn:
            found.claims.append(claim(row, name, False, at, one.last, corrects=True, part="undone", hedged=False))
        elif again is not None:
            later = drawn[again]
            found.claims.append(claim(row, name, True, later.first, later.last, corrects=True, hedged=False))
    return found


def _gone(row: Row, drawn: tuple[Sketch, ...], place: int, taken: tuple[Likely, ...], taken_it: tuple[Likely, ...], language: Language) -> tuple[str, bool, int] | None:
    """The fact that is no more; whether only what was worn was taken; the item where that is told."""
    code, one = language.code, drawn[place]
    for pattern in taken:
        match = pattern.search(one.words)
        acts = one.acts_in(match.start(), match.end()) if match is not None else []
        if len({name for _, name in acts}) != 1 or word(code, "told.came_off.unsettled").search(one.words[: match.start()]):
            continue
        if "<d>" in one.words[: match.start()]:
            continue
        name = "tabs_bent" if acts[0][1] == "cross_tabs" and _of_metal(row, match.group(), language) else acts[0][1]
        worn = word(code, "told.came_off.worn").search(match.group()) is not None
        return name, worn, one.item(match.start())
    for pattern in taken_it:
        match = pattern.search(one.words)
        if match is None or word(code, "told.came_off.unsettled").search(one.words[: match.start()].replace("had to ", "")) or "<" in match.group():
            continue
        name = _act_before(row, drawn, place, one.words[: match.start()])
        name = next((fact for words, fact in language.told.came_off.facts if re.search(words, match.group())), name) if name is not None else None
        if name is not None:
            return name, False, one.item(match.start())
    match = next((m for pattern, fact in _with_it(code) if (m := pattern.search(one.words)) is not None and fact in _names(drawn, place)), None)
    if match is not None and not word(code, "told.came_off.unsettled").search(one.words[: match.start()]):
        return next(fact for words, fact in language.told.came_off.facts if re.search(words, match.group())), False, one.item(match.start())
    return None


def _names(drawn: tuple[Sketch, ...], place: int) -> set[str]:
    made = {name for one in drawn[max(0, place - _BACK) : place + 1] for _, name in one.acts}
    return made | ({"tabs_bent"} if "cross_tabs" in made else set())


def _of_metal(row: Row, words: str, language: Language) -> bool:
    return any(re.search(rf"{pattern}", words) for pattern, _ in language.told.came_off.facts) or "bent" in words


def _act_before(row: Row, drawn: tuple[Sketch, ...], place: int, said: str) -> str | None:
    """The act that "them" is of: the last one told in these words or right before, of the same piece."""
    if "<" in said:
        return [name for _, name in drawn[place].acts][-1]
    for back in range(place - 1, max(-1, place - 1 - _BACK), -1):
        one = drawn[back]
        if one.sentence < drawn[place].sentence - 1:
            return None
        if one.acts:
            return one.acts[-1][1]
        if len(one.words.split()) > 5:
            return None
    return None


def _is_back(row: Row, drawn: tuple[Sketch, ...], place: int, later: int, name: str, code: str) -> bool:
    one = drawn[later]
    if one.sentence > drawn[place].sentence + 1:
        return False
    for pattern in apart(code, "told.came_off.back_on"):
        match = pattern.search(one.words)
        if match is None or word(code, "told.came_off.not_again").search(one.words[: match.end()].replace("<", " <")):
            continue
        acts = one.acts_in(match.start(), match.end())
        if acts and name == "taped" and row.items[acts[0][0]].concept == "REPAIRED" and row.words(acts[0][0], acts[0][0] + 1).lower().startswith("tape"):
            return True  # "taped it over again"
        if (acts and acts[0][1] != name) or (not acts and "<" in match.group()):
            continue
        return True
    return False
