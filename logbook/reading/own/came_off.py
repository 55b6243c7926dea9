"""Work that is no more, and work that is put back: "stapled it, then tore every one back out", "undid the staples and shot new ones"."""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.own.afar import Afar
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.denials import ACTS
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.likely import Likely, standing
from logbook.reading.words.phrasing import apart, word, words_of
from logbook.reading.clauses.set_right import of_the_work
from logbook.reading.clauses.sketch import Sketch

_BACK = 4  # parts
_AHEAD = 4
_WORDS_OF_IT = 20  # letters before a thing that tell which one
_KEPT = ("NUM", "FITTING", "NUMBER", "LETTER", "DASH", "MARKED", "RUN", "SIZE", "LEN", "EVERY", "GENERIC")

_FAR = 14  # items
_BEFORE_UNDONE = (
    "BE", "DET", "IT", "FILLER", "THIS", "HAVE", "ON", "OF", "IN", "WITH", "YET", "I", "ANY", "COMMA", "STOP", "BUT", "AND", "ANOTHER", "SIDE", "SIDE_WORD", "OTHER_SIDE", "JOINT", "ALL",
    "BOTH", "AROUND", "LATER", "OTHER", "OFF", "END", "OVER", "NUM", "EVERY", "FITTING", "TO", "WHEN", "IN_PLACE", "LEN", "MARK181", "BACK", "UP",
)  # fmt: skip


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
        name, worn, at, behind = told
        again = place if _goes_over(one.words[behind:], name, language) else next((k for k in range(place + 1, min(len(drawn), place + 1 + _AHEAD)) if _is_back(row, drawn, place, k, name, language)), None)
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


def _gone(row: Row, drawn: tuple[Sketch, ...], place: int, taken: tuple[Likely, ...], taken_it: tuple[Likely, ...], language: Language) -> tuple[str, bool, int, int] | None:
    """The fact that is no more; whether only what was worn was taken; the item where that is told; the place behind its words."""
    code, one = language.code, drawn[place]
    for pattern in taken:
        match = pattern.search(one.words)
        acts = one.acts_in(match.start(), match.end()) if match is not None else []
        if len({name for _, name in acts}) != 1 or word(code, "told.came_off.unsettled").search(one.words[: match.start()]):
            continue
        if "<d>" in one.words[: match.start()]:
            continue
        name = "tabs_bent" if acts[0][1] == "cross_tabs" and _of_metal(row, match.group(), language) else acts[0][1]
        if match.group().startswith("<"):  # "the tape came loose", "half the tape fell off": of the piece, if it was not the old one
            worn = word(code, "told.came_off.earlier").search(one.words[max(0, match.start() - _WORDS_OF_IT) : match.start()]) is not None
        else:
            worn = word(code, "told.came_off.worn").search(match.group()) is not None
        return name, worn, one.item(match.start()), match.end()
    for pattern in taken_it:
        match = pattern.search(one.words)
        if match is None or word(code, "told.came_off.unsettled").search(one.words[: match.start()].replace("had to ", "")) or "<" in match.group():
            continue
        name = _act_before(row, drawn, place, one.words[: match.start()])
        name = next((fact for words, fact in language.told.came_off.facts if re.search(words, match.group())), name) if name is not None else None
        if name is not None:
            return name, False, one.item(match.start()), match.end()
    match = next((m for pattern, fact in _with_it(code) if (m := pattern.search(one.words)) is not None and fact in _names(drawn, place)), None)
    if match is not None and not word(code, "told.came_off.unsettled").search(one.words[: match.start()]):
        return next(fact for words, fact in language.told.came_off.facts if re.search(words, match.group())), False, one.item(match.start()), match.end()
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


def _goes_over(words: str, name: str, language: Language) -> bool:
    """ "pulled them and went back every two": what goes on along a joint, and nothing else, is on again."""
    if name not in ("stapled", "taped"):
        return False
    match = next((m for pattern in apart(language.code, "told.came_off.back_over") if (m := pattern.search(words)) is not None), None)
    return match is not None and not word(language.code, "told.came_off.not_again").search(words[: match.end()])


def _is_back(row: Row, drawn: tuple[Sketch, ...], place: int, later: int, name: str, language: Language) -> bool:
    one, code = drawn[later], language.code
    if one.sentence > drawn[place].sentence + 1 or any(row.items[at].concept.startswith("K_") for at in range(one.first, one.last)):
        return False  # "redid straight 77": another piece
    if _goes_over(one.words, name, language):
        return True
    for pattern in apart(code, "told.came_off.back_on"):
        match = pattern.search(one.words)
        if match is None or word(code, "told.came_off.not_again").search(one.words[: match.end()].replace("<", " <")):
            continue
        if not of_the_work(one.words[match.start() :].partition(" ")[2], language):
            continue  # "used a new blade", "put another board on the bench"
        acts = one.acts_in(match.start(), match.end())
        if acts and name == "taped" and row.items[acts[0][0]].concept == "REPAIRED" and row.words(acts[0][0], acts[0][0] + 1).lower().startswith("tape"):
            return True  # "taped it over again"
        if (acts and acts[0][1] != name) or (not acts and "<" in match.group()):
            continue
        return True
    return False


def undoings(row: Row, own: Row) -> list[tuple[Claim, int]]:
    """ "Taped it, then tore it off", "the tape came off": the act before it no longer holds. With the item that says so."""
    made: list[tuple[Claim, int]] = []
    for at, item in enumerate(row.items):
        peels = item.concept == "DAMAGE" and item.value == "delaminated" and words_of("small.skins").isdisjoint(row.words(at, at + 1).lower().split())
        gone = item.concept == "MISSING" and row.words(at, at + 1).lower() in words_of("small.gone")
        if item.concept != "UNDONE" and not peels and not gone or row.is_blank(at):
            continue
        if item.concept == "UNDONE" and not own.is_blank(at):
            made += [(claim(row, "(nothing)", None, k, k + 1), k) for k in _reason(row, at)]
        if item.concept == "UNDONE" and not own.is_blank(at) and not _off_something(row, at):
            noun = next((name for word, name in _OF_THE_PHRASE.items() if word in row.words(at, at + 1).lower()), None)
            if noun is not None and not _done_again(row, at):
                made.append((claim(row, noun, False, at, at + 1, corrects=True, part="undone", hedged=False), at))
                continue
        if gone and row.items[at - 1].concept == "BE" and row.items[at - 2].concept in ("LEN", "FRAC"):
            continue  # "used the short ones, the half inch were gone": the other kind
        act = None if _off_something(row, at) or _done_again(row, at) else _done_before(row, at)
        if peels and at + 1 < len(row.items) and row.items[at + 1].concept == "TAPE" and not own.is_blank(at):
            made.append((claim(row, "taped", False, at, at + 2, corrects=True, part="undone", hedged=False), at))
            continue
        of = _named_in(row, at) if item.concept == "UNDONE" and not _done_again(row, at) else None
        if of is not None and (act is None or ACTS[row.items[act].concept] != of[0]):
            if not own.is_blank(at):
                made.append((claim(row, of[0], False, at, of[1], corrects=True, part="undone", hedged=False), at))
            continue
        if act is None or own.is_blank(act) or ((peels or gone) and row.items[act].concept not in ("TAPE", "STAPLES", "CLOSURE")):
            continue
        name = ACTS[row.items[act].concept]
        near = act if all(row.items[k].concept not in ("COMMA", "STOP") for k in range(act, at)) else at
        made.append((claim(row, name, False, near, at + 1, corrects=True, part="undone", hedged=False), at))
    return made


_NOUNS = {"cinta": "taped", "teip": "taped", "tape": "taped", "grapas": "stapled", "aletas": "vanes"}


def _named_in(row: Row, at: int) -> tuple[str, int] | None:
    """ "Le quité la cinta", "se le cayó el teip": the act is named by the words that undo it, or right behind them."""
    last = row.words(at, at + 1).lower().split()[-1]
    noun = at + 2 if at + 1 < len(row.items) and row.items[at + 1].concept == "DET" else at + 1
    if last in _NOUNS:
        if row.words(noun, noun + 1).lower().startswith(("vieja", "mala", "sobrante")) if noun < len(row.items) else False:
            return None
        return _NOUNS[last], at + 1
    if noun < len(row.items) and row.items[noun].concept in ("TAPE", "STAPLES", "VANES") and row.words(at, at + 1).lower().startswith(("se le", "se les", "se está", "se esta", "se cay")):
        return ACTS[row.items[noun].concept], noun + 1
    return None


_OF_THE_PHRASE = {"vane": "vanes", "staple": "stapled", "tape": "taped"}  # "pulled the vanes out": the act is named in it


def _reason(row: Row, at: int) -> range:
    """ "pulled them since the flap had ripped": why he did, which says nothing of the piece as it is."""
    if row.words(at + 1, at + 2).lower().split()[0] not in ("since", "because", "cause", "cuz", "porque") if at + 1 < len(row.items) else True:
        return range(0)
    last = at + 1
    while last < len(row.items) and row.items[last].concept not in ("COMMA", "STOP", "BUT"):
        last += 1
    return range(at + 1, last)


def _done_again(row: Row, at: int) -> bool:
    """ "pulled that, did it again at two", "pulled them and went back every two": it holds again."""
    for k in range(at + 1, min(at + 6, len(row.items))):
        concept = row.items[k].concept
        if concept in ("STOP", "QUERY", "NOT", "WILL"):
            return False
        if concept == "REDID" or concept == "EVERY" and row.items[k - 1].concept == "BACK":
            return True
    return False


def _off_something(row: Row, at: int) -> bool:
    """ "took it off the bench", "se cayó la etiqueta": it is of another thing; "tore it off the top" is of the act."""
    behind = [item.concept for item in row.items[at + 1 : at + 3]]
    return behind[:1] in (["DET"], ["ON_BENCH"], ["BUILDING"], ["FITTING"]) and behind[1:] not in (["SIDE"], ["JOINT"], ["TAPE"], ["STAPLES"], ["VANES"])


def _done_before(row: Row, at: int) -> int | None:
    """The act that "tore it off" is of: right before, with nothing between that it could be of instead."""
    stops = 0
    for back in range(at - 1, max(-1, at - _FAR), -1):
        concept = row.items[back].concept
        if row.is_blank(back):
            continue
        if concept == "CLINCHED" and not any(row.items[k].concept == "TABS" for k in range(max(0, back - 4), back)):
            return None
        if concept in ACTS:
            if back + 1 == at and back and row.items[back - 1].concept == "NO":
                return None  # "no tape lifting": none of it does
            return back if concept != "TIE_RODS" else None  # nothing that peels or falls off
        stops += concept == "STOP"
        if (concept.startswith("K_") or concept == "FITTING") and back > 0 and row.items[back - 1].concept in ACTS:  # "stapled straight nine, then pulled every one"
            return back - 1
        if (concept.startswith("K_") or concept in ("NUM", "MARKED")) and back > 1 and row.items[back - 1].concept in ("ON", "IN", "OF", "FROM", "OFF") and row.items[back - 2].concept in ACTS:  # "tape's on tee nine. It's falling off"
            return back - 2
        passing = concept in ("DAY", "SHIFT") or row.words(back, back + 1).lower() in ("yesterday", "overnight", "last night", "last week", "monday", "friday", "by", "lunch", "noon", "by noon", "morning", "by morning", "ayer", "anoche")
        if stops > 1 or (concept not in _BEFORE_UNDONE and not passing):
            return None
    return None
