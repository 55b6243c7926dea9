"""The pieces of a note that tells of several at once, and the words that stand for all of them, for some or for one: "both", "the first", "none of them", "the elbow"."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.several import Several
from logbook.reading.words import measures
from logbook.reading.words.items import book
from logbook.reading.words.tokens import tokens


@dataclass(frozen=True)
class Named:
    """One piece: its number and kind as they are said, and where."""

    mark: str
    at: tuple[int, int]
    kind: str | None = None
    kind_at: tuple[int, int] | None = None


@dataclass(frozen=True)
class Pointer:
    """Words that stand for pieces; `plural` where what is behind them is said of several, `none` where it is denied of all."""

    start: int
    end: int
    marks: tuple[str, ...]
    plural: bool = False
    sort: str = "one"
    none: bool = False


@dataclass
class Told:
    code: str
    pieces: dict[str, Named] = field(default_factory=dict)
    lists: list[tuple[int, int, tuple[str, ...]]] = field(default_factory=list)
    denied: set[int] = field(default_factory=set)  # where lists begin of which none is so
    pointers: list[Pointer] = field(default_factory=list)


class Unclear(Exception):
    """Which pieces some words stand for is not sure: the note is left as it is."""


def named(said: str, code: str) -> Told | None:
    """None where the note is not of this sort."""
    words = LANGUAGES[code].several
    if _re(code, "cues").search(said) is None or _re(code, "leans").search(said) is not None:
        return None
    told = Told(code)
    _lists(said, code, told)
    singles = _singles(said, code, told)
    if len(told.pieces) < 2 or not told.pieces.keys().isdisjoint(LANGUAGES[code].several.classes):
        return None
    _kinds_of_all(said, code, told)
    try:
        told.pointers = _pointers(said, code, words, told, singles)
    except Unclear:
        return None
    return told


def _lists(said: str, code: str, told: Told) -> None:
    for match in _re(code, "list").finditer(said):
        if _measures(said, match.start(), match.end(), code) or match["w"] and not _re(code, "listed").match(match.group()):
            continue
        some = _elements(said, code, match)
        if len(some) < 2:
            continue
        kind, marks = None, []
        for one in some:
            if one["k"]:
                kind = one.span("k")
            marks.append(_add(said, told, one.span("m"), kind))
        told.lists.append((match.start(), some[-1].end(), tuple(marks)))
        if _re(code, "neither").search(said, 0, match.start()):
            told.denied.add(match.start())
    for match in _re(code, "range").finditer(said):
        first, last = match["a"], match["b"]
        if not (first.isdigit() and last.isdigit()) or not 1 <= int(last) - int(first) <= _MOST or _measures(said, match.start("a"), match.end(), code) or not (match["k"] or match["l"] or _re(code, "whole").search(said) or _re(code, "theirs").search(said)):
            continue
        kind = match.span("k") if match["k"] else None
        marks = [_add(said, told, match.span("a" if value == int(first) else "b"), kind, str(value)) for value in range(int(first), int(last) + 1)]
        told.lists.append((match.start(), match.end(), tuple(marks)))


def _elements(said: str, code: str, match: re.Match[str]) -> list[re.Match[str]]:
    """The names of a list, up to where one is said again or is the first word of what is told of it: "straight 76 and 77, 76 is taped"."""
    made: list[re.Match[str]] = []
    for one in _re(code, "element").finditer(said, match.start(), match.end()):
        joint = said[made[-1].end() : one.start()] if made else ""
        alone = one.end() == match.end() and _re(code, "subject_of_one").match(said, one.end()) is not None
        if one["m"] in [other["m"] for other in made] or alone and (joint == ", " or made and one["k"] and not _re(code, "neither").search(said, 0, match.start())):
            break
        made.append(one)
    return made


_MOST = 12


def _singles(said: str, code: str, told: Told) -> list[tuple[int, int, str]]:
    """Where one piece is named: (start, end, mark)."""
    made: list[tuple[int, int, str]] = []
    free = [match for name in ("called", "kind_number", "led_number") for match in _re(code, name).finditer(said)]
    for match in free:
        if any(start <= match.start("m") < end for start, end, _ in told.lists) or _unit_behind(said, match.end("m"), code):
            continue
        kind = match.span("k") if match.groupdict().get("k") and not match.groupdict().get("s") else None
        made.append((match.start(), match.end("m"), _add(said, told, match.span("m"), kind)))
    for match in _re(code, "placed").finditer(said):
        if match["m"] and not _unit_behind(said, match.end("m"), code):
            _add(said, told, match.span("m"), None)
    for match in _re(code, "one_of").finditer(said):
        _add(said, told, match.span("m"), None)
    for match in _re(code, "bare").finditer(said):
        mark = _digits(told.code, match["m"])
        if any(start <= match.start("m") < end for start, end, _ in [*told.lists, *made]) or _measures(said, match.start("m"), match.end("m"), code):
            continue
        heads = _re(code, "subject").match(said, match.end("m")) is not None and _re(code, "to_it").search(said, 0, match.start("m")) is not None
        on_it = bool(told.lists) and _re(code, "on_it").search(said, 0, match.start()) is not None and _re(code, "told_of").match(said, match.end()) is not None
        done_to = _re(code, "done_to").search(said, 0, match.start()) is not None and _re(code, "ends").match(said, match.end()) is not None
        if mark in told.pieces or (heads or done_to) and (not mark.isdigit() or int(mark) >= _LEAST) or on_it or _re(code, "the_one_in").search(said, 0, match.start()):
            made.append((match.start(), match.end("m"), _add(said, told, match.span("m"), None)))
    return sorted(made)


_LEAST = 13  # a number below it counts more often than it names


def _add(said: str, told: Told, at: tuple[int, int], kind: tuple[int, int] | None, mark: str | None = None) -> str:
    mark = mark or _digits(told.code, said[slice(*at)])
    known = told.pieces.get(mark)
    if known is None or known.kind is None and kind is not None:
        told.pieces[mark] = Named(mark, known.at if known else at, said[slice(*kind)] if kind else None, kind)
    return mark


def _digits(code: str, name: str) -> str:
    """ "Forty-one" is 41."""
    if any(letter.isdigit() for letter in name):
        return name
    found = tokens(name)
    lexicon = book(code)
    one = measures.read(found, 0, lexicon.language, lexicon.units)
    return str(int(one.value)) if one is not None else name


def _kinds_of_all(said: str, code: str, told: Told) -> None:
    """ "Got three done, 4, 5 and 6, all straights": of that kind are all, where no other kind is named."""
    kinds = {_one(match["k"], code): match.span("k") for match in _re(code, "any_kind").finditer(said) if match["k"] in _several(code)}
    several = all(one.kind is None for one in told.pieces.values())
    for mark, one in told.pieces.items():
        if one.kind is not None:
            told.pieces[mark] = Named(one.mark, one.at, _one(one.kind, code), one.kind_at)
        elif len(kinds) == 1 and several:
            kind, at = next(iter(kinds.items()))
            told.pieces[mark] = Named(one.mark, one.at, kind, at)


def _pointers(said: str, code: str, words: Several, told: Told, singles: list[tuple[int, int, str]]) -> list[Pointer]:
    found: list[tuple[int, int, str, object]] = [(start, end, "list", marks) for start, end, marks in told.lists]
    found += [(start, end, "one", mark) for start, end, mark in singles]
    for sort in ("nothing", "rest", "few", "some", "one_of", "placed", "whole", "theirs", "the_kind", "a_one", "size"):
        found += [(match.start(), match.end(), sort, match) for match in _re(code, sort).finditer(said)]
    found.sort(key=lambda one: (one[0], -one[1]))
    made: list[Pointer] = []
    looks: dict[str, str] = {}
    for start, end, sort, what in found:
        if made and start < agreed(said, made[-1], len(said), words)[0]:
            continue  # "they're both"
        marks = what if sort == "list" else (what,) if sort == "one" else _stands_for(said, code, words, told, made, looks, sort, what)
        if marks:
            sort = "the_one_in" if sort == "one" and _re(code, "the_one_in").search(said, 0, start) else sort
            none = sort == "nothing" or sort == "list" and start in told.denied
            begin = start - len("neither ") if sort == "list" and none else start
            end = end if sort != "list" or not none else _verb_behind(said, end, code)
            made.append(Pointer(begin, end, marks, len(marks) > 1, sort, none))
    return made


def _verb_behind(said: str, end: int, code: str) -> int:
    match = re.compile(r" (?:" + "|".join(LANGUAGES[code].several.nots) + r")(?![\w'])").match(said, end)
    return match.end() if match is not None else end


def agreed(said: str, pointer: Pointer, last: int, words: Several) -> tuple[int, str]:
    """Where what is said of several ends behind a pointer, and the same said of one."""
    end, behind = pointer.end, ""
    while pointer.plural and end < last:
        found = next(((many, single) for many, single in words.agree if said.startswith(many, end) and not said[end + len(many) : end + len(many) + 1].isalpha()), None)
        if found is None:
            break
        end, behind = end + len(found[0]), behind + found[1]
    return end, behind


def _stands_for(said: str, code: str, words: Several, told: Told, made: list[Pointer], looks: dict[str, str], sort: str, match) -> tuple[str, ...]:
    known = tuple(told.pieces)
    if sort in ("whole", "nothing"):
        begin = said.rfind(". ", 0, match.start()) + 1
        listed = told.lists or sum(begin <= one.at[0] < match.start() for one in told.pieces.values()) > 1  # "46 is an elbow with vanes, 47 is a straight, both taped"
        return _all(match, words, told, code) if listed or not _re(code, "of_one_piece").search(said, begin, match.start()) else _unsure()
    if sort == "theirs":
        begins = _re(code, "to_it").search(said, 0, match.start()) is not None or bool(made) and not said[made[-1].end : match.start()].strip(" ,")
        return (made[-1].marks if made else _the_list(told, None, match.start())) if begins and (not made or made[-1].plural) else _the_list(told, None, match.start()) if begins and re.search(words.apart, said[: made[-1].start]) else ()
    if sort == "rest":
        last = made[-1].marks if made else ()
        fits = next((marks for _, _, marks in reversed(told.lists) if set(last) < set(marks)), known)
        rest = tuple(mark for mark in fits if mark not in last)
        count = next((words.counts[one] for one in match.group().split() if one in words.counts), len(rest))
        return rest if len(rest) == count and set(last) < set(fits) else _unsure()
    if sort == "few":
        ahead = next((marks for start, _, marks in told.lists if match.end() < start <= match.end() + 3 and len(marks) == words.counts[match["c"]]), None)
        if ahead is not None:
            return ahead
        known, count = _the_list(told, None, match.start()) or known, words.counts[match["c"]]
        return () if count >= len(known) else known[:count] if words.places[match["n"]] == 0 else known[-count:]
    if sort == "one_of":
        return (_digits(told.code, match["m"]),) if _digits(told.code, match["m"]) in told.pieces else ()
    if sort == "some":
        count = words.counts[match["c"]]
        end = _sentence_end(said, match.end())
        later = {mark for start, stop, mark in _later(said, code, told, match.end(), end)}
        if len(later) == count:
            return ()
        rest = tuple(mark for mark in known if mark not in later)
        if len(rest) != count:
            raise Unclear
        return rest
    if sort == "the_kind":
        alike = [mark for mark in known if told.pieces[mark].kind == _one(match["k"], code)]
        return (alike[0],) if len(alike) == 1 and told.pieces[alike[0]].at[0] < match.start() else ()
    if sort == "size":
        called = {one["s"]: one["m"] for one in _re(code, "called").finditer(said) if one["s"] and one.start() != match.start()}
        return (called[match["s"]],) if match["s"] in called and not _re(code, "called").match(said, match.start()) else ()
    if sort == "a_one":
        other = next((one["m"] for one in _re(code, "placed").finditer(said, match.end()) if words.places.get(one["n"], 0) is None), None)
        return tuple(mark for mark in known if mark != other) if len(known) == 2 and other in known else ()
    return _placed(match, words, told, made, looks)


def _placed(match, words: Several, told: Told, made: list[Pointer], looks: dict[str, str]) -> tuple[str, ...]:
    which = match["n"]
    if match["m"] and _digits(told.code, match["m"]) in told.pieces:
        looks[which] = _digits(told.code, match["m"])
        return (looks[which],)
    if which in looks:
        return (looks[which],)
    if which not in words.places:
        return ()
    known = _the_list(told, None, match.start()) or tuple(told.pieces)
    if match["k"] and any(told.pieces[mark].kind not in (None, match["k"]) for mark in known):
        return _unsure()
    place = words.places[which]
    if place is None:
        last = made[-1].marks if made else ()
        rest = tuple(mark for mark in known if mark not in last)
        return rest if len(known) == 2 and len(last) == 1 and len(rest) == 1 else ()
    return (known[place],) if place < len(known) and (which != "middle" or len(known) == 3) else ()


def _all(match, words: Several, told: Told, code: str) -> tuple[str, ...]:
    said = match.group()
    count = next((words.counts[one] for one in re.findall(r"[a-z]+", said) if words.counts.get(one, 0) > 1), None) or (2 if said.startswith(("both", "neither", "either")) else None)
    kind = next((_one(one, code) for one in sorted(_several(code), key=len, reverse=True) if re.search(rf"\b{one}\b", said)), None)
    alike = tuple(mark for mark, one in told.pieces.items() if kind is not None and one.kind == kind)
    if kind is not None and len(alike) > 1 and count in (None, len(alike)):
        return alike
    return _the_list(told, count, match.start()) or _unsure()


def _unsure() -> tuple[str, ...]:
    raise Unclear


def _the_list(told: Told, count: int | None, at: int) -> tuple[str, ...]:
    """The list that is meant: the last before, or else the first behind, of so many."""
    fits = [one for one in told.lists if count in (None, len(one[2]))]
    before = [one for one in fits if one[0] < at]
    if before or fits:
        return (before[-1] if before else fits[0])[2]
    return tuple(told.pieces) if count in (None, len(told.pieces)) else ()


def _later(said: str, code: str, told: Told, start: int, end: int) -> list[tuple[int, int, str]]:
    return [(match.start(), match.end(), _digits(told.code, match["m"])) for match in _re(code, "bare").finditer(said, start, end) if _digits(told.code, match["m"]) in told.pieces]


def _sentence_end(said: str, at: int) -> int:
    return min((place for sign in ".;?!" if (place := said.find(sign, at)) >= 0), default=len(said))


def _measures(said: str, start: int, end: int, code: str) -> bool:
    return _unit_behind(said, end, code) or _re(code, "no_name_before").search(said, 0, start) is not None


def _unit_behind(said: str, end: int, code: str) -> bool:
    return _re(code, "no_name").match(said, end) is not None


@cache
def _several(code: str) -> dict[str, str]:
    """The words for several pieces of a kind, and those for one."""
    kinds = LANGUAGES[code].pointed.kinds
    return {word + ("es" if word.endswith("ch") else "s"): word for word in kinds}


def _one(word: str, code: str) -> str:
    return _several(code).get(word, word)


@cache
def _re(code: str, which: str) -> re.Pattern[str]:
    words, kinds = LANGUAGES[code].several, LANGUAGES[code].pointed.kinds
    kind = "|".join(sorted(kinds, key=len, reverse=True))
    several = "|".join(sorted(_several(code), key=len, reverse=True))
    name, led, before = words.number, words.led, r"(?<![\w/.'-])"

    def element(sort: str) -> str:
        return rf"(?:(?:the |a )?(?:{kind}|{several}) )?(?:{led} ?)?{words.digits if sort == 'digits' else words.numerals}"

    rows = {
        "list": rf"{before}(?:{element('digits')}(?:{words.joins}{element('digits')})+|(?P<w>{element('words')}(?:{words.joins}{element('words')})+))(?![\w/-])",
        "element": rf"{before}(?:(?P<k>{several}|{kind}) )?(?:{led} ?)?(?P<m>{name})(?!\w)",
        "range": rf"{before}(?:(?P<k>{several}) )?(?:(?P<l>{led}) )?(?P<a>\d{{1,3}}){words.ranges}(?P<b>\d{{1,3}})(?![\w/-])",
        "kind_number": rf"{before}(?:the )?(?P<k>{kind}),? (?:{led} )?(?P<m>{name})(?![\w/-])",
        "led_number": rf"{before}{led} (?P<m>{name})(?![\w/-])",
        "bare": rf"{before}(?:{led} )?(?P<m>{name})(?![\w/-])",
        "any_kind": rf"(?<![a-z])(?P<k>{several}|{kind})(?![a-z])",
        "the_kind": rf"(?<![a-z])(?:the|my|that) (?P<k>{kind})(?='s|[ ,.;]|$)",
        "a_one": r"(?:^|(?<=[.;?!] ))one(?='s| is| has)",
        "size": r"(?<![a-z])the (?P<s>\w+ by \w+)(?= |'s)",
        "subject_of_one": r"(?:'s| is| isn't| was| wasn't| has| hasn't| does| doesn't| needs| i)(?![\w'])",
        "ends": r"[.,;!?]|$| (?:and|but|too|either)(?!\w)",
        "to_it": rf"(?:^|{words.starts}){words.leads}$",
    }
    pattern = rows[which] if which in rows else getattr(words, which)
    return re.compile(pattern.replace("{kind}", f"(?:{kind})").replace("{several}", f"(?:{several})").replace("{name}", name).replace("{no_name}", words.no_name))


def pattern(code: str, which: str) -> re.Pattern[str]:
    return _re(code, which)
