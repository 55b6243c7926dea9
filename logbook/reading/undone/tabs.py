"""The metal tabs of a collar: bent down tight, all of them, or some left standing."""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.own.fell_short import _NOT
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.items import concept_at
from logbook.reading.clauses.parts import Part
from logbook.reading.words.phrasing import apart, finds, in_any, is_whole, words_of
from logbook.reading.clauses.set_right import is_mended
from logbook.reading.words.tokens import plain

_LOOK_BACK = 20  # items


def tabs_said(row: Row, own: Row, cut_up: tuple[Part, ...], to_come: frozenset[int], language: Language) -> list[Claim]:
    """What is said of a collar's tabs in any words, where `to_come` are the items of what is still to do; of other pieces these claims are dropped."""
    made: list[Claim] = []
    if not language.turns.tabs_done:
        return made
    if not any(item.concept in ("TABS", "TAB_WORD") for item in row.items):
        return made
    spent_by = -1
    for place, part in enumerate(cut_up):
        if own.is_blank(part.first):
            continue
        counted = _counted(row, cut_up, place)
        if counted is not None:
            made.append(claim(row, "tabs_bent", counted, cut_up[place].first, cut_up[place + 1].last, kinds=("collar",), part="" if counted else "side", hedged=False))
            spent_by = place + 1
            continue
        if place == spent_by:
            continue
        told = _past_straights(row, part)
        words = re.sub(language.acts.because, "", told) if language.acts.because else told  # "they stick out because I couldn't get a hand in"
        named = any(row.items[at].concept in ("TABS", "TAB_WORD") and not own.is_blank(at) and "cross" not in row.words(at, at + 1).lower() for at in range(part.first, part.last))
        stands = _found(words, language, "standing")
        if not named and is_whole(apart(language.code, "turns.tabs_all"), part.words) and _named_before(row, part.first):
            made.append(claim(row, "tabs_bent", True, part.first, part.last, kinds=("collar",)))  # "twelve tabs, all twelve bent"
            continue
        if not named and not (stands and _named_before(row, part.first)):
            continue
        left = _found(part.words, language, "tabs_left")  # "a couple of the tabs I couldn't get bent"
        if _NOT.search(words) and not left:
            continue  # a denial: read as every denial is
        short = left or stands or _found(part.words, language, "tabs_short") or _but_some(row, cut_up, place)
        if short and (is_mended(cut_up, place, language, "tabs_bent") or _bent_all_the_same(row, cut_up, place)):  # "bent half the tabs, came back and bent the rest"
            made.append(claim(row, "tabs_bent", True, part.first, part.last, kinds=("collar",), corrects=True, hedged=False))
            continue
        if not short and any(row.items[at].concept in ("TABS", "TAB_WORD") and at in to_come for at in range(part.first, part.last)):
            continue  # "gonna bend the tabs over after lunch"
        if short or _found(part.words, language, "tabs_done"):
            made.append(claim(row, "tabs_bent", not short, part.first, part.last, kinds=("collar",), part="side" if short else "", **({"hedged": False} if short else {})))
    for match in row.find("(?:TABS|TAB_WORD) (?:COMMA|IT|BE|ALL|QUESTION|FILLER){0,4} (?:BENT|CLINCHED) (?:DOWN|OVER|FILLER){0,2} QUERY (?P<w>ALL_BUT NUM)"):  # "Are the tabs bent? All but two."
        if not own.is_blank(match.start("w")):
            made.append(claim(row, "tabs_bent", False, match.start("w"), match.end("w"), kinds=("collar",), part="side", hedged=False))
    for match in row.find("ALL (?:DET|OF|THIS){0,2} (?P<w>(?:TABS|TAB_WORD) (?:BUT|EXCEPT) (?:DET)? NUM)"):  # "all the tabs but two are bent"
        if not own.is_blank(match.start("w")):
            made.append(claim(row, "tabs_bent", False, *match.span("w"), kinds=("collar",), part="side", hedged=False))
    return made


def of_tabs(row: Row, claims: list[Claim]) -> list[Claim]:
    """Without what is said of bent tabs where neither tabs nor a collar are spoken of ("half the legs turned in" bends none), and with tabs that one bends as those of metal."""
    if any(one.name in _OF_TAPE for one in claims) and not any(one.name in _OF_TAPE[1:] and one.value >= _SHORTEST for one in claims):
        sits_in = any(item.concept == "K_COLLAR" for item in row.items)  # "straight 9 has a collar in the side and I didn't bend the tabs"
        claims = [told for one in claims if (told := _of_metal(row, one) if one.value is False or not sits_in else one) is not None]
    if not any(one.name == "tabs_bent" for one in claims) or any(item.concept in ("TABS", "TAB_WORD", "K_COLLAR") for item in row.items):
        return claims
    return [one for one in claims if one.name != "tabs_bent"]


_SHORTEST = 4  # inches: so long, or so far apart, are tabs of tape
_OF_TAPE = ("cross_tabs", "cross_tab_length", "cross_tab_spacing")


def _of_metal(row: Row, one: Claim) -> Claim | None:
    """ "No doblé las pestañas del takeoff", "the tabs on the sleeve aren't bent": what one bends is of metal, and holds no joint."""
    if one.name not in _OF_TAPE:
        return one
    said = row.words(row.sentence_start(one.first), row.sentence_end(one.first)).lower()
    if not said or words_of("small.bends").isdisjoint(plain(said).replace(",", " ").split()) or in_any("small.of_tape").search(plain(said)) is not None:
        return one
    if one.name == "cross_tabs" and one.value is False:
        return replace(one, name="tabs_bent", opens=tuple(replace(item, denies="tabs_bent") if item.denies == "cross_tabs" else item for item in one.opens))
    return None


def _but_some(row: Row, cut_up: tuple[Part, ...], place: int) -> bool:
    """ "Every tab's down except three" """
    behind = cut_up[place + 1] if place + 1 < len(cut_up) and cut_up[place + 1].sentence == cut_up[place].sentence else None
    opens = behind is not None and (row.items[behind.first].concept in ("EXCEPT", "ALL_BUT") or row.items[behind.first].concept == "BUT" and (behind.last - behind.first <= 3 or _told_where(row, behind)))  # "all tabs bent but 3"
    return opens and any(row.items[at].concept == "NUM" for at in range(behind.first + 1, min(behind.first + 3, behind.last)))


def _told_where(row: Row, behind: Part) -> bool:
    """ "All bent but the two by the beam", "… but the last two I couldn't reach": some, and where they are or why; not "but the two by the beam fought me"."""
    at = next((k for k in range(behind.first + 1, min(behind.first + 4, behind.last)) if row.items[k].concept == "NUM"), None)
    told = None if at is None or at + 1 >= behind.last else row.words(at + 1, behind.last).lower().split()
    return bool(told) and told[0] in words_of("small.where_they_are") and words_of("small.fought").isdisjoint(told)


def _bent_all_the_same(row: Row, cut_up: tuple[Part, ...], place: int) -> bool:
    """ "Two of the tabs fought me, but they're bent now": they, not the others."""
    if place + 1 >= len(cut_up) or cut_up[place + 1].sentence != cut_up[place].sentence:
        return False
    concepts = [row.items[at].concept for at in range(cut_up[place + 1].first, cut_up[place + 1].last)]
    bent = next((k for k, c in enumerate(concepts) if c in ("BENT", "CLINCHED")), None)
    return bent is not None and "BE" in concepts[:bent] and {"BUT", "BE", "IT", "ALL", "FILLER", "OTHER"}.issuperset(concepts[:bent]) and not {"NOT", "NO"} & set(concepts)


def _counted(row: Row, cut_up: tuple[Part, ...], place: int) -> bool | None:
    """ "Ten tabs, ten bent", "ten tabs, nine bent": whether all that there are are bent."""
    if place + 1 >= len(cut_up) or cut_up[place + 1].sentence != cut_up[place].sentence:
        return None
    one, two = (range(part.first, part.last) for part in cut_up[place : place + 2])
    counts = [[row.items[at].value.value for at in part if row.items[at].concept == "NUM"] for part in (one, two)]
    there = {row.items[at].concept for at in one} - {"FILLER", "HAVE", "DET", "IT", "BE", "ON"}
    bent = {row.items[at].concept for at in two} - {"FILLER", "ALL", "BE", "DOWN", "OVER", "OF", "IT", "BOTH"}
    if there not in ({"NUM", "TABS"}, {"NUM", "TAB_WORD"}) or bent not in ({"NUM", "BENT"}, {"NUM", "CLINCHED"}) or [len(one) for one in counts] != [1, 1]:
        return None
    return counts[1][0] >= counts[0][0]


def _past_straights(row: Row, part: Part) -> str:
    """The words of a part without the straight that the collar sits in: "all the tabs on the collar in straight 31" stand nowhere."""
    if not any(row.items[at].concept == "K_STRAIGHT" for at in range(part.first, part.last)):
        return part.words
    kept, at = [], part.first
    while at < part.last:
        behind = at + 1 if row.items[at].concept in ("IN", "ON", "OF", "OFF") else at
        behind += behind < part.last and row.items[behind].concept == "DET"
        if behind < part.last and row.items[behind].concept == "K_STRAIGHT" and concept_at(row.items, behind + 1) in _NAMES:
            at = behind + 1
            while at < part.last and row.items[at].concept in _NAMES:
                at += 1
            continue
        kept.append(row.words(at, at + 1))
        at += 1
    return plain(" ".join(kept))


_NAMES = ("NUM", "MARKED", "NUMBER", "LETTER", "COMMA", "RUN")


def _found(words: str, language: Language, member: str) -> bool:
    return finds(apart(language.code, f"turns.{member}"), words) is not None


def _named_before(row: Row, first: int) -> bool:
    """Whether the tabs were spoken of shortly before, of this piece."""
    for at in range(first - 1, max(-1, first - _LOOK_BACK), -1):
        if row.items[at].concept in ("TABS", "TAB_WORD"):
            return True
        if row.items[at].concept.startswith("K_"):
            return False
    return False
