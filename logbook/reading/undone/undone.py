"""Work still to do ("still have to tape it"), which is an open item too, and the denials beside it."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from functools import cache

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, Open, claim
from logbook.reading.clauses.denials import DENIED, GOVERN_A_CHAIN, PAST, chained, goes_up, live
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.how_it_is import is_so_now
from logbook.reading.undone.done_after_all import done_after_all
from logbook.reading.undone.lacking import lacking, of_one_side
from logbook.reading.meant.name_places import COUNTS_UP_TO
from logbook.reading.words.likely import Likely, standing
from logbook.reading.clauses.parts import Part
from logbook.reading.words.phrasing import choice, rows, word, words_of
from logbook.reading.clauses.set_right import mending
from logbook.reading.clauses.stance import Clause
from logbook.reading.undone.still_to_do import HANGING, begins_what_is_left, ends_the_list, more_of_them, side_waits, still_to_do
from logbook.reading.words.tokens import plain


_NAMED_BEHIND = ("TAPE_IT", "TAPE", "STAPLE", "RUB", "TRIM", "FITTING", "NUMBER", "DET")  # behind these a number is the piece


@dataclass(frozen=True)
class Undone:
    claims: tuple[Claim, ...]
    blank: frozenset[int]  # items these words have used up
    plans: frozenset[int]  # items that are plans of something else


@cache
def _not_begun(patterns: tuple[str, ...]) -> Likely:
    return Likely("|".join(patterns) or r"(?!)")


def _is_planned(row: Row, clause: Clause, begin: int, language: Language) -> bool:
    """ "Tomorrow I'll knock out elbows five and six", "I was gonna make it a tee": of a piece that is not there."""
    at = begin
    if row.items[at].concept == "LATER":
        at = next((k for k in range(begin, clause.last) if row.items[k].concept in ("WILL", "GOING_TO")), begin)
    if row.items[at].concept not in ("WILL", "GOING_TO") or at + 1 >= clause.last:
        return False
    return _not_begun(language.forms.planned).match(row.words(at + 1, clause.last).lower()) is not None


def undone(row: Row, cut: tuple[Clause, ...], language: Language) -> Undone:
    """The work still to do and the denials of a note, with the items that their words have used up."""
    claims: list[Claim] = []
    blank: set[int] = set()
    plans: set[int] = set()
    skip_to = 0
    cut = _at_each_yet(row, cut, language)
    for place, clause in enumerate(cut):
        if clause.first < skip_to or row.is_blank(clause.first) and (clause := begins_what_is_left(row, clause)) is None:
            continue
        begin = _pending_at(row, clause, language)
        if begin is None:
            continue
        if place and cut[place - 1].sentence == clause.sentence and row.items[begin].concept == "WILL" and begin - clause.first <= 1 and _goes_back_to_it(row, cut[place - 1].first, clause.first, clause.last, language):
            continue  # told with what is not done, below
        if row.items[begin].concept in ("PENDING", "NEED") and _only_known(row, clause, begin, language):
            plans.update(k for k in range(begin, clause.last) if row.items[k].concept not in ("LEN", "STATIC", "INWG"))
            continue
        if _is_planned(row, clause, begin, language) or row.items[begin].concept == "WILL" and word(language.code, "acts.no_deed").match(plain(row.words(begin, clause.last))) is not None:
            plans.update(range(begin, clause.last))
            continue
        if row.items[begin].concept == "NOT_DONE" and begin + 1 < len(row.items) and language.forms.not_begun.intersection(row.words(begin + 1, begin + 2).lower().split()[:1]):
            plans.update(range(begin, clause.last))
            continue
        later = next((k for k in range(begin + 2, clause.last) if row.items[k].concept in ("WILL", "GOING_TO") and _is_planned(row, clause, k, language)), None)
        if later is not None:
            plans.update(range(later, clause.last))
        end = min(_pending_end(row, cut, place, begin), later or len(row.items))
        made = still_to_do(row, clause, begin, end, language)
        if [item.concept for item in row.items[end : end + 3]] == ["AND", "I", "TAPED"] and all(one.name == "(open)" for one in made):
            plans.update(range(begin, end))  # "I know it wants fabric and mastic and I taped it": what should be there, and what is
            continue
        if made and row.items[begin].concept in ("WILL", "GOING_TO") and done_after_all(row, begin, end, made[0].name):
            plans.update(k for k in range(begin, end) if not (row.items[k].concept in ("NUM", "MARKED") and (row.items[k - 1].concept in _NAMED_BEHIND or row.items[k - 1].concept.startswith("K_")) or row.items[k].concept.startswith("K_")))
            skip_to = end
        elif made and row.items[begin].concept == "WILL" and all(came_true(row, end, one.name) for one in made):
            plans.update(range(begin, end))
            skip_to = end
        elif made:
            claims.extend(made)
            blank.update(at for at in range(made[0].first, end) if not _its_size(row, at))
            skip_to = end
        else:
            plans.update(range(begin, clause.last))
            if row.items[begin].concept == "NEED":
                told = any(live(row, at) in DENIED or live(row, at) in ("UNTAPED", "UNSTAPLED") for at in range(clause.first, begin)) or begin > clause.first and row.words(begin - 1, begin).lower() in words_of("small.gives_reason")  # "left it untaped because I need to get back in there"
                behind = [c for c in _rest_of_sentence(cut, place) if not is_so_now(row, c.first, c.last)]
                plans.update(i for c in behind for i in range(max(c.first, begin if told else 0), c.last))
                if any(is_so_now(row, c.first, c.last) for c in _rest_of_sentence(cut, place)):
                    plans -= {i for i in range(begin, clause.last) if row.items[i].concept.startswith("K_") or row.items[i].concept in ("NUM", "MARKED", "FITTING", "NUMBER")}  # "I need to go back to tee 24 tomorrow, the branch isn't taped": of tee 24
    rest = row.blanked(blank | plans)
    for place, clause in enumerate(cut):
        told = lacking(rest, clause)
        behind = cut[place + 1] if told and place + 1 < len(cut) else None
        if behind is not None and told[-1].value is False and behind.sentence == clause.sentence and re.match(language.acts.still_to_do, row.words(behind.first, behind.last).lower().replace("’", "'")):
            behind = replace(behind, last=next((k for k in range(behind.first + 1, behind.last) if row.items[k].concept in PAST and row.items[k - 1].concept in ("LATER", "DAY")), behind.last))
            start, end = row.items[told[-1].first].start, row.items[behind.last - 1].end
            told[-1] = replace(told[-1], opens=(Open("piece", told[-1].name, start, end),), pending=True)  # "all but the rub, which I haven't done yet"
            blank.update(range(behind.first, behind.last))
        for one in told:
            claims.append(replace(one, part="side") if of_one_side(row, clause, one) else one)
            blank.update(range(one.first, one.last))
    return Undone(tuple(claims), frozenset(blank), frozenset(plans))


def unfinished(own: Row, cut_up: tuple[Part, ...], why: dict[int, str], language: Language) -> tuple[list[Claim], set[int]]:
    """ "It isn't finished", "needs remaking", "I'm coming back to it": the piece itself waits, and no act of ours is named; and the items that say so."""
    made: list[Claim] = []
    spent: set[int] = set()
    if choice(language.code, "acts.unfinished_looks").search(plain(own.text)) is None:
        return made, spent
    looks, over = (standing(rows(language.code, where), plain(own.text)) for where in ("acts.unfinished", "acts.done_over"))
    if not (looks or over) or not any(item.concept.startswith("K_") or item.concept in ("FITTING", "NUMBER", "BRANCH_WORD", "MARKED") or _is_a_name(own, at) for at, item in enumerate(own.items)):
        return made, spent
    for place, part in enumerate(cut_up):
        asked = part.last < len(own.items) and own.items[part.last].concept == "QUERY"
        anew = any(pattern.match(part.words) for pattern in over)
        if asked or own.is_blank(part.first) and not (anew and why.get(part.first) == "drawing") or not anew and _names_an_act(own, part) or (part.words.endswith(" back") and place + 1 < len(cut_up) and _names_an_act(own, cut_up[place + 1])):
            continue
        if place and cut_up[place - 1].sentence == part.sentence and _goes_back_to_it(own, cut_up[place - 1].first, part.first, part.last, language):
            continue  # told with the act that is not done
        if own.items[part.first].concept == "ANOTHER" and part.first + 1 < part.last:  # "then tee 13 isn't finished"
            part = replace(part, first=part.first + 1, words=plain(own.words(part.first + 1, part.last)))
        said = _without_names(own, part)
        if own.items[part.first].concept in ("EXCEPT", "ALL_BUT") and (first := own.sentence_start(part.first)) < part.first:  # "it's done, except the top"
            part = replace(part, first=first, words=plain(own.words(first, part.last)))
            said = _without_names(own, part)
        stood = None if anew or any(pattern.match(said) for pattern in looks) else _good_but(own, cut_up[place], looks)
        if stood is not None:
            part, said = stood, "#" * len(stood.words)  # "taped, good except the bottom": what was not done there is read from the same words
        elif not anew and not any(pattern.match(said) for pattern in looks):
            continue
        mended = mending(cut_up, place, language, "(open)")
        if mended is not None and not (anew and mended.sentence == part.sentence):  # "to be pulled off and redone" is one thing to do
            continue
        start, end = own.items[part.first].start, own.items[part.last - 1].end
        made.append(claim(own, "(open)", None, part.first, part.last, opens=(Open("piece", None, start, end),), pending=True, hedged=False))
        spent.update(at for at in range(part.first, part.last) if anew or "#" not in said[own.items[at].start - start : own.items[at].end - start])
    return made, spent


def _good_but(own: Row, part: Part, looks) -> Part | None:
    """The words of a clause of its own that set this part apart, behind others of its sentence."""
    if own.items[part.first].concept not in ("EXCEPT", "ALL_BUT", "BUT"):
        return None
    first = part.first
    while first and own.items[first - 1].concept not in ("STOP", "QUERY", "COMMA"):
        first -= 1
    whole = replace(part, first=first, words=plain(own.words(first, part.last)))
    said = _without_names(own, whole)
    return whole if any(pattern.match(said) for pattern in looks) else None


def _names_an_act(own: Row, part: Part) -> bool:
    return any(live(own, at) in DENIED and live(own, at) != "SEATED" for at in range(part.first, part.last))


def _without_names(own: Row, part: Part) -> str:
    """The words of a part with a sign for the piece and its number, letter for letter."""
    start, said = own.items[part.first].start, list(part.words)
    for at in range(part.first, part.last):
        concept, before = own.items[at].concept, own.items[at - 1].concept if at else ""
        if concept.startswith("K_") or concept in ("FITTING", "NUMBER", "MARKED", "BRANCH_WORD") or at == part.first and _is_a_name(own, at) or concept in ("NUM", "LETTER") and (before.startswith("K_") or before in ("FITTING", "NUMBER", "NUM", "BRANCH_WORD")):
            said[own.items[at].start - start : own.items[at].end - start] = "#" * (own.items[at].end - own.items[at].start)
    return "".join(said)


def _is_a_name(own: Row, at: int) -> bool:
    """ "41 isn't finished": a number that counts nothing."""
    item = own.items[at]
    return item.concept == "NUM" and item.value.value.denominator == 1 and item.value.value > COUNTS_UP_TO and at + 1 < len(own.items) and own.items[at + 1].concept in ("BE", "NOT", "NOT_DONE", "HAVE", "NEED")


def _at_each_yet(row: Row, cut: tuple[Clause, ...], language: Language) -> tuple[Clause, ...]:
    """ "It isn't stapled yet and it isn't taped yet", "I haven't stapled it and I haven't taped it": two things to do, each with its own words."""
    made: list[Clause] = []
    for clause in cut:
        first = clause.first
        for at in range(clause.first + 1, clause.last - 2):
            if row.items[at].concept == "WILL" and _goes_back_to_it(row, first, at, clause.last, language):
                made.append(replace(clause, first=first, last=at))
                first = at
            if row.items[at].concept not in ("AND", "BUT"):
                continue
            again = [item.concept for item in row.items[at + 1 : min(at + 4, clause.last)]]
            waits = row.items[at - 1].concept == "YET" and {"NOT", "NOT_DONE", "NO"} & set(again)
            if waits or "NOT_DONE" in again and again[0] in ("NOT_DONE", "I", "IT", "THIS") and any(row.items[k].concept == "NOT_DONE" for k in range(first, at)):
                made.append(replace(clause, first=first, last=at))
                first = at + 1
        made.append(clause if first == clause.first else replace(clause, first=first))
    return tuple(made)


def _goes_back_to_it(row: Row, first: int, at: int, last: int, language: Language) -> bool:
    """ "I left it without tape for now gonna get it after lunch", where nothing parts what is not done and that it is still to do."""
    denied = any(row.items[k].concept in ("NO", "NOT", "NOT_DONE") and any(item.concept in DENIED for item in row.items[k + 1 : k + 3]) for k in range(first, at))
    half = any(row.items[k].concept == "FRAC" and row.items[k + 1].concept in DENIED for k in range(first, at))  # "half stapled, finishing it in the morning"
    return half or denied and re.match(language.acts.still_to_do, plain(row.words(at, last))) is not None


def _rest_of_sentence(cut: tuple[Clause, ...], place: int):
    for clause in cut[place : place + 40]:
        if clause.sentence != cut[place].sentence:
            return
        yield clause


_SOON_TOLD = 14  # items


def came_true(row: Row, at: int, name: str) -> bool:
    """ "I said I'd tape it, and I taped it", "I'll staple it when I get to it. I got to it, stapled": the act told as done right behind its plan, by itself."""
    stops, parted = 0, row.items[at - 1].concept in ("AND", "I", "BUT") if at else False
    for k in range(at, min(at + _SOON_TOLD, len(row.items))):
        concept = row.items[k].concept
        stops += concept == "STOP"
        parted = parted or concept in ("COMMA", "STOP", "AND", "BUT")
        if stops > 2 or concept in ("QUERY", "NOT", "NO", "NOT_DONE", "IF", "OTHER", "WILL", "PENDING", "DRAWING", "SIZE") or parted and concept in ("LATER", "NUM", "MARKED") or concept.startswith("K_"):
            return False
        if concept in PAST:
            behind = [item.concept for item in row.items[k + 1 : k + 4]]
            alone = not behind or behind[0] in ("STOP", "IT") or (behind[0] == "FILLER" and behind[1:2] in ([], ["STOP"]))
            return parted and alone and DENIED[concept][0] == name and row.items[k - 1].concept not in ("BE", "TO") if concept in DENIED else False
    return False


def _pending_at(row: Row, clause: Clause, language: Language) -> int | None:
    """Where work still to do begins to be told in this clause."""
    concepts = [live(row, at) for at in range(clause.first, clause.last)]
    for at, concept in enumerate(concepts):
        if concept in ("PENDING", "NEED") and at and concepts[at - 1] == "NOT":
            return None
        if concept == "NEED" and at and (concepts[at - 1] == "NO" or row.words(clause.first + at - 1, clause.first + at).lower().replace("’", "'").endswith("n't")):
            return None  # "no need for vanes", "so it doesn't need any"
        if concept == "WILL" and word(language.code, "acts.no_plan").match(row.words(clause.first + at, clause.last).lower().replace("’", "'")):
            continue
        if concept in ("PENDING", "NOT_DONE", "WILL", "NEED"):
            return clause.first + at
        if concept in _TO_DO and _is_soon(row, clause, clause.first + at):
            return clause.first + at
        if concept == "GOING_TO" and "NOT" in concepts[:at]:
            return clause.first + concepts.index("NOT")
    if "LATER" in concepts and not any(c in PAST for c in concepts[: concepts.index("LATER")]) and not _i_did(concepts, concepts.index("LATER")) and not _deed_behind(row, clause, concepts.index("LATER"), language) and not _made_then(row, clause, concepts.index("LATER"), language) and not _found_then(row, clause, concepts.index("LATER")):
        return clause.first + concepts.index("LATER")
    if "WHEN" in concepts and not any(c in PAST for c in concepts) and side_waits(row, clause, language):
        return clause.first + concepts.index("WHEN")
    if "YET" in concepts:
        for denial in ("NOT", "NO"):
            if denial in concepts:
                return clause.first + concepts.index(denial)
    return None


def _only_known(row: Row, clause: Clause, begin: int, language: Language) -> bool:
    """ "I know it wants vanes. I built it without.": what it needs, and behind it what was done in spite of that."""
    if begin == clause.first or word(language.code, "acts.only_known").search(plain(row.words(clause.first, begin))) is None:
        return False
    behind = row.words(clause.last + 1, min(clause.last + 10, len(row.items))) if clause.last + 1 < len(row.items) else ""
    return word(language.code, "acts.did_otherwise").match(plain(behind)) is not None


def _i_did(concepts: list[str], at: int) -> bool:
    """ "After lunch I taped it", "I came back after lunch and rubbed it down": the time is past."""
    behind = [concept for concept in concepts[at + 1 :] if concept != "FILLER"][:2]
    return len(behind) == 2 and behind[1] in PAST and (behind[0] == "I" or behind[0] == "AND" and "I" in concepts[:at] and not {"WILL", "GOING_TO", "NEED", "PENDING"} & set(concepts[:at]))


def _deed_behind(row: Row, clause: Clause, at: int, language: Language) -> bool:
    """ "Then after lunch we did the access door and we put mastic around it": told of what he did, where nothing is to come."""
    first = clause.first + at + 1
    to_come = any(row.items[k].concept in ("WILL", "GOING_TO", "NEED", "PENDING") for k in range(clause.first, clause.last))
    return first < clause.last and not to_come and word(language.code, "elsewhere.own_deed").match(plain(row.words(first, clause.last))) is not None


def _made_then(row: Row, clause: Clause, at: int, language: Language) -> bool:
    """ "I did straight three this afternoon and the staples are every two": when he made it; "built it, the vanes after lunch" is still to do."""
    last = clause.first + at
    if any(row.items[k].concept in DENIED or row.items[k].concept in _NOT_YET for k in range(clause.first, last)):
        return False
    if word(language.code, "elsewhere.made_then").fullmatch(plain(row.words(clause.first, last + 1))) is None:
        return False
    return last + 1 == clause.last or word(language.code, "elsewhere.goes_then").match(plain(row.words(last + 1, clause.last))) is None


def _found_then(row: Row, clause: Clause, at: int) -> bool:
    """ "Found a loose end later and rubbed it down again": when he found it; "found a loose end, rub it later" is still to do."""
    later = clause.first + at
    if words_of("small.found_then").isdisjoint(row.words(clause.first, later).lower().split()):
        return False
    return any(row.items[k].concept in PAST for k in range(later + 1, clause.last)) and not any(row.items[k].concept in _NOT_YET for k in range(clause.first, clause.last))


_NOT_YET = ("WILL", "GOING_TO", "NEED", "PENDING", "NOT", "NO", "NOT_DONE", "IF", "WHEN")


def _its_size(row: Row, at: int) -> bool:
    """ "Me falta encintar la tapa dos de ocho por ocho": the size of the piece, no work still to do."""
    return row.items[at].concept == "SIZE" and any(row.items[k].concept.startswith("K_") for k in range(max(0, at - 4), at))


_TO_DO = ("TAPE_IT", "STAPLE", "RUB")


def _is_soon(row: Row, clause: Clause, at: int) -> bool:
    """ "Ahorita lo encinto": the present of a verb beside a time that comes is a plan."""
    said = row.words(at, at + 1).lower().split()[-1]
    return said.endswith("o") and "ar" not in said[-4:] and not words_of("small.soon").isdisjoint(row.words(clause.first, clause.last).lower().split())


def _pending_end(row: Row, cut, place: int, begin: int) -> int:
    """The end of the clause, and of those behind it that only go on listing ("staple, tape and rub it")."""
    clause, end = cut[place], cut[place].last
    base = row.items[begin].concept != "NOT_DONE"
    seen_act = False
    listed = _listed(row, begin, end)
    for at in range(begin + 1, end):
        concept = row.items[at].concept
        if at in listed:
            seen_act = True
            continue
        if seen_act and concept in ("AND", "BUT") and _another_told(row, at, end):
            return at
        if base and row.words(at, at + 1).lower() == "ya" and any(row.items[k].concept in PAST for k in range(at + 1, min(at + 4, end))):  # "le faltaba una esquina y ya la encinté"
            return at - 1 if row.items[at - 1].concept == "AND" else at
        if base and seen_act and (concept in PAST or concept == "STAPLES" and not ends_the_list(row, at, end)) and row.items[at - 1].concept not in ("BE", "DET", "TO", "OF", "OR", "NOT"):
            return at - 1 if row.items[at - 1].concept == "AND" else at
        if base and concept in PAST and row.items[at - 1].concept in ("LATER", "DAY") and not any(row.items[k].concept in DENIED for k in range(begin, at)):
            return at  # "gonna get them tomorrow stapled every two"
        if seen_act and concept in ("NOT", "NO") and row.items[at - 1].concept in ("AND", "BUT"):
            return at - 1  # "didn't get to the tape and not stapled": each with its own word
        if concept in PAST and (told := _told_anew(row, begin, at)) is not None:
            return told
        if concept in PAST and not seen_act and at - begin > 2 and row.items[at - 1].concept == "I" and row.items[at - 2].concept in ("WORD", "IT", "FILLER", "SEATED") and row.items[begin].concept in ("NOT_DONE", "WILL", "GOING_TO", "NOT"):
            return at - 1  # "that's not going to last I taped it": what is done has a sentence of its own
        if base and concept in PAST and [item.concept for item in row.items[at - 2 : at]] == ["AND", "I"]:
            return at - 2  # "it wants fabric and mastic at this pressure and I taped it"
        if seen_act and concept == "HAVE" and row.items[at - 1].concept == "ONLY":
            return at - 1  # "no se ha grapado solo le metí las aletas": what it has
        runs_on = row.items[begin].concept == "NOT_DONE" and seen_act and concept in PAST
        if runs_on and row.items[at - 1].concept not in ("AND", "OR", "BE", "FILLER", "WILL", "BOTH", "NOT", "NO"):  # "no se ha grapado ni encintado"
            return at
        seen_act = concept != "PENDING" and (seen_act or concept in DENIED or concept in HANGING)  # "falta tallar y le faltan grapas"
    for following in cut[place + 1 : place + 12]:
        first = row.items[following.first].concept
        second = row.items[min(following.first + 1, following.last - 1)].concept
        listing = first in ("STAPLE", "TAPE", "TAPE_IT", "RUB", "TRIM", "HANG", "WIPE") or (first in ("AND", "OR") and second in ("STAPLE", "TAPE", "TAPE_IT", "RUB", "TRIM", "HANG", "WIPE"))
        if first == "TAPE" and (second in ("BE", "HAVE", "ON", "IN_PLACE", "MOVE", "FILLER") or row.words(following.first, following.first + 1).lower().replace("’", "'").endswith("'s")):
            listing = False  # "…, tape's already on it"
        listing = listing or (row.items[begin].concept == "NOT_DONE" and first == "OR") or row.items[begin].concept == "PENDING" and more_of_them(row, following)
        if following.sentence != clause.sentence or not listing:
            break
        end = following.last
    return end


def _another_told(row: Row, at: int, end: int) -> bool:
    """ "le faltan grapas y al 136 le puse cinta": behind the "and" another piece is told of, by its number."""
    k = at + 1
    while k < end and row.items[k].concept in ("DET", "ON", "THRU", "TO"):
        k += 1
    pointed = k > at + 1
    if k < end and row.items[k].concept.startswith("K_"):
        k, pointed = k + 1, True
    if not pointed or k + 1 >= end or row.items[k].concept not in ("NUM", "MARKED"):
        return False
    said = row.items[k + 1].concept
    return said in ("HAVE", "BE", "NO", "NOT", "NOT_DONE") or said == "FILLER" and k + 2 < end and row.items[k + 2].concept in ("HAVE", "BE", "DET", "NO", "NOT")


def _told_anew(row: Row, begin: int, at: int) -> int | None:
    """ "still needs mastic at the corner and it's stapled": where a sentence of its own begins to tell what was done."""
    said = [item.concept for item in row.items[max(begin, at - 3) : at]]
    if said[-2:] == ["AND", "BE"] and "'" in row.words(at - 1, at).replace("’", "'"):
        return at - 2
    return at - 3 if said[-3:] in (["AND", "IT", "BE"], ["AND", "THIS", "BE"]) else None


def _listed(row: Row, begin: int, end: int) -> set[int]:
    """ "needs to be stapled every two taped and rubbed", "hasn't been taped or rubbed": the acts behind the first hang on what that hangs on."""
    first = next((at for at in range(begin + 1, end) if live(row, at) in PAST), end)
    to_be = row.words(begin, begin + 1).lower().split()[-1] == "be"
    if first == end or not (to_be or any(row.items[k].concept in GOVERN_A_CHAIN for k in range(begin + 1, first))) or any(row.items[k].concept in DENIED for k in range(begin + 1, first)):
        return set()
    acts = list(chained(row, first, end))
    stop = next((k for k in range(1, len(acts)) if not goes_up(row, acts[k - 1], acts[k])), len(acts))
    return set(acts[1:stop])
