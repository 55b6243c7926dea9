"""A piece's mark as one item, whatever its shape: X100, D4-100, B-12, SA-3, 14A, 3-2, "B dash twelve", "ell fourteen A", "P as in papa twelve".

A bare number is not made a mark here: only the words around it tell whether it is one (`headings`).
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace

from logbook.reading.words.items import Item
from logbook.reading.words.phrasing import in_any, words_of

_HEADS = ("FITTING", "NUMBER", "RUN")
_ROOMS = ("ROOM", "NOT_MARK", "BUILDING", "PLACE_NOUN")
_MACHINES = frozenset("AHU RTU VAV FCU EF MERV HVAC UL AC FD PVC OSHA ISO RFI CO PO EI AP MM CFM PSI".split())  # what they number is no fitting
_BEHIND_A = ("COMMA", "STOP", "QUERY", "", "ON", "RUN", "BE", "HAVE", "STAPLED", "TAPED", "RUBBED", "HUNG", "NOT", "NO", "SIZE", "WITH", "TIED", "SERVICE")
_HEAT = re.compile(r"\d{1,3}[CFM]")
_ANGLES = (90, 45, 30, 60, 22, 15)


def marked(items: tuple[Item, ...], text: str, letters: Mapping[str, str]) -> tuple[Item, ...]:
    done: list[Item] = []
    at = 0
    while at < len(items):
        if items[at].concept in ("TEMP_F", "LEN") and _HEAT.fullmatch(text[items[at].start : items[at].end]) and _head_before(items, at):
            done.append(replace(items[at], concept="MARKED", value=text[items[at].start : items[at].end]))  # "mark 3C": no degrees
            at += 1
            continue
        if items[at].concept == "DET" and text[items[at].start : items[at].end] == "A" and _concept(items, at - 1).startswith("K_") and _concept(items, at + 1) in _BEHIND_A:
            done.append(replace(items[at], concept="LETTER"))  # "Cap A, eight by eight. Cap B, …"
            at += 1
            continue
        found = _mark_at(items, at, text, letters)
        if found is None:
            done.append(items[at])
            at += 1
            continue
        value, end = found
        if value is not None and _is_a_run(done, value, items, at, text):  # "str 81 r2 14x10"
            number = items[end - 1]
            done += [Item("RUN", None, items[at].start, number.start, items[at].first, number.first), number]
        elif value is None:  # "straights 4-6": a range
            first, last = items[at], items[at + 1]
            done += [first, Item("THRU", None, first.end, last.start, first.last, last.first), last]
        else:
            machine = not _head_before(items, at) and value.split("-")[0].rstrip("0123456789") in _MACHINES
            concept = "COUNT" if machine or _concept(items, at - 1) in _ROOMS or not _head_before(items, at) and _of_a_place(done, value, text) else "MARKED"
            if concept == "COUNT" and done and done[-1].concept == "BUILDING" and _has_a_door(items):
                done[-1], concept = replace(done[-1], concept="NUMBER"), "MARKED"  # "that's door D1"
            done.append(Item(concept, value, items[at].start, items[end - 1].end, items[at].first, items[end - 1].last))
        at = end
    return tuple(done)


def _of_a_place(done, value: str, text: str) -> bool:
    """ "On sheets M-4 and M-5", "bay C4": behind a word for what is no piece, and the second of two such."""
    if not value[:1].isalpha() or not done:
        return False
    if done[-1].concept in ("AND", "COMMA") and len(done) > 1:
        return done[-2].concept == "COUNT" and isinstance(done[-2].value, str) and done[-2].value[:1] == value[:1]
    return in_any("lettered.of_others").fullmatch(text[done[-1].start : done[-1].end].lower()) is not None


def _has_a_door(items) -> bool:
    return any(item.concept == "K_ACCESS_DOOR" for item in items)


def _mark_at(items, at: int, text: str, letters) -> tuple[str | None, int] | None:
    item = items[at]
    if item.concept != "NUM" and item.end - item.start > 1 and _concept(items, at + 1) not in ("NUM", "DASH"):
        return None  # several letters are part of a mark only before a number or a dash
    spelled = _spelled(items, at, text, letters)
    if spelled is not None:
        return spelled
    parts: list[str] = []
    letter = _letter(items, at, text, letters)
    if letter is not None:
        parts.append(letter)
    elif _whole(items[at]):
        parts.append(str(int(items[at].value.value)))
    else:
        return None
    place = at + 1
    while place < len(items):
        tight = text[items[place - 1].end : items[place].start]
        dash = tight in ("-", "‐", "‑")
        if items[place].concept == "DASH" and not parts[-1] == "-":
            follows = place + 1 < len(items) and (_whole(items[place + 1]) or _letter(items, place + 1, text, letters) is not None or _capital(items, place + 1, text))
            if not follows:
                break
            parts.append("-")
            place += 1
            dash = False
            tight = ""
        elif tight and not dash and not (place == at + 1 and letter is not None and (len(text[items[at].start : items[at].end]) > 1 and _head_before(items, at) or "equis" in letters and tight == " ")):
            break
        if dash:
            parts.append("-")
        spoken = parts[-1] == "-" and not dash
        if _whole(items[place]) and (tight == "" or dash or spoken or place == at + 1) and not (parts[-1].isdigit()):
            parts.append(_figures(items[place], text))
        elif _capital(items, place, text) and parts[-1 if parts[-1] != "-" else -2].isdigit():
            parts.append(text[items[place].start : items[place].end].upper())
        else:
            if parts[-1] == "-":
                parts.pop()
                place -= 0 if dash else 1
            break
        place += 1
    if len(parts) < 2 or not any(part.isdigit() for part in parts):
        return None
    if all(part.isdigit() or part == "-" for part in parts):
        return _of_numbers(items, at, place, parts, text)
    if _followed_by_measure(items, place):
        return None
    return "".join(parts), place


def _is_a_run(done, value: str, items, at: int, text: str) -> bool:
    """ "str 81 r2": a small r behind a piece that has its mark already is its run; a great one could be a revision."""
    if value[:1] != "R" or text[items[at].start] != "r" or not value[1:].isdigit() or items[at].concept not in ("LETTER", "WORD"):
        return False
    if not done or done[-1].concept == "STOP" or text[done[-1].end - 1] in ":/":  # "r5: straights 10 & 11"
        return _concept(items, at + 2) != "STOP"
    if len(done) < 2:
        return False
    if _concept(items, at + 2) in ("", "STOP") and done[-1].concept in ("COMMA", "STOP") and any(one.concept in ("NUM", "MARKED") and (other.concept.startswith("K_") or other.concept in ("FITTING", "NUMBER")) for other, one in zip(done, done[1:])):
        return True  # "ell 9 12x10, taped, r2"
    behind = done[-2] if done[-1].concept == "COMMA" else done[-1]
    before = done[-3:-1] if done[-1].concept == "COMMA" else done[-2:-1]
    return behind.concept in ("NUM", "MARKED") and bool(before) and (before[0].concept.startswith("K_") or before[0].concept in ("FITTING", "NUMBER", "MISHEARD") or text[before[0].start : before[0].end].islower())


def _figures(item: Item, text: str) -> str:
    """The figures as they are written: "R-3-07" keeps its nought."""
    said = text[item.start : item.end]
    return said if said.isdigit() else _number(item)


def _of_numbers(items, at: int, end: int, parts: list[str], text: str):
    """ "Straight 3-2" is a mark, "straights 4-6" a range, "2-3 inches" neither."""
    said_dash = any(item.concept == "DASH" for item in items[at:end])
    if said_dash:
        return "".join(parts), end
    counted = _concept(items, at - 1) == "COUNTED" and text[items[at - 1].start : items[at - 1].end].lower().endswith("s")
    opens = _concept(items, at - 1) in ("", "STOP") and _concept(items, end) == "BE" and text[items[end].start : items[end].end].lower() in ("are", "están", "estan", "son")
    after_list = len(parts) == 3 and _concept(items, at - 1) in ("AND", "COMMA") and _in_list_of_several(items, at, text)
    if len(parts) == 3 and (counted or opens or after_list) and int(parts[0]) < int(parts[2]) and not _followed_by_measure(items, end):
        return None, end
    if not _head_before(items, at) or len(parts) != 3 or _followed_by_measure(items, end):
        return None
    head = text[items[at - 1].start : items[at - 1].end].lower()
    if head.endswith("s") and items[at - 1].concept != "NUMBER" and int(parts[0]) < int(parts[2]):
        return None, end
    return "".join(parts), end


def _in_list_of_several(items, at: int, text: str) -> bool:
    """ "Straights 4 and 5-8": a range behind other numbers of a kind in the plural."""
    while at > 0 and _concept(items, at - 1) in ("AND", "COMMA", "NUM"):
        at -= 1
    head = _concept(items, at - 1)
    return at > 0 and (head.startswith("K_") or head in ("COUNTED", "FITTING")) and text[items[at - 1].start : items[at - 1].end].lower().endswith("s")


def _followed_by_measure(items, place: int) -> bool:
    return _concept(items, place) in ("BY", "APART", "LONG", "WIDE", "HIGH", "BOARD", "EI", "STATIC")


def _letter(items, at: int, text: str, letters) -> str | None:
    """The letters a mark begins with: one or up to three capitals right before a number, or a letter's name before a dash."""
    item = items[at]
    said = text[item.start : item.end]
    ahead = items[at + 1] if at + 1 < len(items) else None
    if ahead is None or not said.isalpha():
        return None
    gap = text[item.end : ahead.start]
    tight = _whole(ahead) and gap in ("", "-", "‐", "‑")
    dashed = ahead.concept == "DASH"
    alone = at == 0 or text[items[at - 1].end : item.start] != ""
    if len(said) == 1 and (tight or dashed) and alone:
        if said.lower() == "x" and (at and items[at - 1].concept in ("NUM", "LEN", "FRAC")):
            return None
        return said.upper()
    spaced = gap == " " and _whole(ahead) and _concept(items, at - 1) == "NUMBER"  # "mark FD two"
    if 2 <= len(said) <= 3 and said.isupper() and (tight or spaced) and alone and (item.concept in ("WORD", "DET", "LETTER", "K_TEE") or item.read_as is not None):
        return said
    if "equis" in letters and _whole(ahead) and gap == " " and _pointed_letters(items, at, text, said, letters):
        return letters.get(said.lower(), said.upper()) if not said.isupper() and len(said) > 1 else said.upper()
    named = letters.get(said.lower())
    if named is not None and (dashed or (_whole(ahead) and _head_before(items, at) and item.concept == "WORD")):
        return named
    return None


def _pointed_letters(items, at: int, text: str, said: str, letters) -> bool:
    """ "el E dos", "marca D siete", "la EQ uno", "la be dos", ", PL uno,": letters that an article or two commas point at, before a number in words."""
    before = text[max(0, items[at].start - 10) : items[at].start].lower().split()
    points = bool(before) and before[-1] in words_of("small.points_at_mark")
    behind = _concept(items, at + 2)
    if said.isupper() and len(said) <= 3 and said not in _MACHINES:
        return behind not in ("BY", "LONG", "COUNTED") and (points or (_concept(items, at - 1) in ("COMMA", "NUMBER") or _concept(items, at - 1).startswith("K_")) and behind in ("COMMA", "STOP", ""))
    spelled = said.lower() in letters and said.lower() not in words_of("small.letter_words") or len(said) == 1 and said.lower() not in "aeouyx"
    return spelled and points and behind in ("COMMA", "STOP", "", "BE", "ON", "RUN", "OF", "STAPLED", "TAPED", "NOT", "HAVE", "SIZE")


def _spelled(items, at: int, text: str, letters) -> tuple[str, int] | None:
    """Letters and numbers said one by one: "S A three", "P as in papa twelve", "ell fourteen A", "A seven,"."""
    said = lambda k: text[items[k].start : items[k].end] if k < len(items) else ""  # noqa: E731
    if len(said(at)) == 1 and said(at).isalpha():
        if said(at + 1).lower() in ("as", "de", "for", "como") and at + 3 < len(items):
            word = at + 3 if said(at + 2).lower() in ("in", "de", "en") else at + 2
            if said(word)[:1].lower() == said(at).lower() and _whole_at(items, word + 1):
                return said(at).upper() + _number(items[word + 1]), word + 2
        two = said(at).isupper() and len(said(at + 1)) == 1 and said(at + 1).isalpha() and said(at + 1).isupper()
        if two and _whole_at(items, at + 2) and (_head_before(items, at) or at == 0):
            return said(at) + said(at + 1) + _number(items[at + 2]), at + 3
        small = items[at].concept == "LETTER" and said(at) in "bcdefgh" and _whole_at(items, at + 1) and all(one.concept == "FILLER" for one in items[:at])
        if small and _concept(items, at + 2) == "DET" and _concept(items, at + 3).startswith("K_"):  # "okay b eight a straight"
            return said(at).upper() + _number(items[at + 1]), at + 2
        if items[at].concept == "DET" and _whole_at(items, at + 1) and items[at + 1].value.value not in _ANGLES and text[items[at].end : items[at + 1].start] == " ":
            opens = (at == 0 or items[at - 1].concept == "STOP") and _concept(items, at + 2) == "COMMA" and (_concept(items, at + 3).startswith("K_") or _concept(items, at + 3) == "RUN")
            great = said(at) == "A" and at > 0 and _concept(items, at + 2) not in ("BY", "LONG", "WIDE", "PIECE_COUNT", "DEG", "COUNTED", "K_ELBOW")  # a great letter in the middle of a sentence
            if opens or (_head_before(items, at) and (great or _concept(items, at + 2) in ("COMMA", "STOP", ""))):
                return said(at).upper() + _number(items[at + 1]), at + 2
    if _whole(items[at]) and len(said(at + 1)) == 1 and said(at + 1) in "BCDEFGH" and text[items[at].end : items[at + 1].start] == " " and (at == 0 or _concept(items, at - 1) == "STOP" or _head_before(items, at)) and _concept(items, at + 2) in (*_BEHIND_A, "SAME_THING", "SAME_AS"):
        return _number(items[at]) + said(at + 1), at + 2
    if _whole(items[at]) and said(at + 1) == "A" and text[items[at].end : items[at + 1].start] == " " and _concept(items, at + 1) in ("DET", "TO") and _head_before(items, at) and _concept(items, at + 2) in _BEHIND_A:
        return _number(items[at]) + "A", at + 2
    return None


def _number(item: Item) -> str:
    return str(int(item.value.value))


def _capital(items, at: int, text: str) -> bool:
    """A letter behind a number: "14A", "7-b"; never a unit."""
    item = items[at]
    said = text[item.start : item.end]
    return len(said) == 1 and said.isalpha() and item.concept in ("LETTER", "DET", "K_TEE") and said.lower() not in ("m", "f", "c", "x")


def _head_before(items, at: int) -> bool:
    before = _concept(items, at - 1)
    return before.startswith("K_") or before in _HEADS


def _whole(item: Item) -> bool:
    return item.concept == "NUM" and item.value.value.denominator == 1 and 0 <= item.value.value.numerator <= 9999


def _whole_at(items, at: int) -> bool:
    return at < len(items) and _whole(items[at])


def _concept(items, at: int) -> str:
    return items[at].concept if 0 <= at < len(items) else ""

