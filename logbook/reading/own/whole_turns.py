"""Whole turns of words that say what was done and what was not, wherever the noun stands: "tabs no le puse", "me brinqué la engrapada".

The words of a sentence are read as they stand, so that neither the order of the noun and its verb nor the small words
between them matter. What is planned, and what is told of another's piece, states nothing to the end of its sentence.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.batches import plural
from logbook.reading.clauses.claims import HEDGES, Claim, Open, claim, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.known import known
from logbook.reading.words.likely import Likely, where_standing
from logbook.reading.words.phrasing import begins, in_any, rows, word
from logbook.reading.words.tokens import plain
from logbook.reading.own.vanes_counted import only_so_many

_STATES_NOTHING = frozenset(("PENDING", "NEED", "REMIND", "FORGOT", "NOT_DONE", "LATER", "WILL", "QUESTION", "IF", "DRAWING", "SHIFT", "MISSING", "UNDONE", "COUNTED", "NOT_LOGGED"))
_NAMES_A_PIECE = ("FITTING", "NUMBER", "MARKED", "SIZE")
_MENDS = ("DAMAGE", "REPAIRED", "GAP")
_CLOSED_WITH = ("MARK181", "CLOSURE")
_DEEDS = ("TAPED", "STAPLED", "RUBBED", "PREHEATED", "WIPED")
_HEADS = ("NUM", "MARKED", "NUMBER", "FITTING", "SIZE", "RUN", "LETTER")
_NOT = re.compile(r"\b(?:no|ni|nunca|tampoco|sin|nadie|jamas|dudo|falt\w+)\b[^,;:]{0,24}$")
_COUNTS = {"un": 1, "una": 1, "uno": 1, "dos": 2, "tres": 3, "cuatro": 4, "1": 1, "2": 2, "3": 3, "4": 4}
_YET = re.compile(r"\b(?:todavia|aun)\b(?! asi\b)")


@dataclass(frozen=True, slots=True)
class _Sentence:
    """The words of a sentence without their accents, and the items they are of."""

    first: int
    last: int
    begin: int  # place of its first character in the text
    words: str

    def items(self, row: Row, start: int, end: int) -> tuple[int, int]:
        first = next(k for k in range(self.first, self.last) if row.items[k].end > self.begin + start)
        last = next((k for k in range(first, self.last) if row.items[k].start >= self.begin + end), self.last)
        return first, last


def _sentences(row: Row) -> Iterator[_Sentence]:
    first = 0
    for at in range(len(row.items) + 1):
        if at == len(row.items) or row.items[at].concept in ("STOP", "QUERY"):
            if at > first:
                begin = row.items[first].start
                yield _Sentence(first, at, begin, in_any("acts.tells_why").regex.sub(",", plain(row.text[begin : row.items[at - 1].end])))
            first = at + 1


@cache
def _nouns(code: str) -> re.Pattern[str]:
    told = LANGUAGES[code].whole_turns
    return re.compile("|".join(rf"\b(?P<n{place}>(?:{words}))\b" for place, (_, words) in enumerate((*told.nouns, *told.deeds))))


@dataclass(frozen=True, slots=True)
class _Patterns:
    """The patterns of one row: what stands behind the nouns, and the whole of those that lead to them with what they begin with."""

    behind: re.Pattern[str]
    ahead: tuple[tuple[Likely, Likely], ...]


@cache
def _topic(code: str, alone: bool = False) -> re.Pattern[str]:
    """A noun, or a list of them, that stands before what is said of it."""
    one = _one(code)
    if alone:
        return re.compile(rf"(?:^|(?<=[,;:] ))(?P<acts>{one}(?: (?:y|e|mas|con) {one})*)")
    listed = rf"(?:(?<=[,;:] )|(?<=, y )|^){one}(?: (?:y|e|ni|o) {one})+"  # "chequé la cinta y el tallado lo dejé": not of the tape
    return re.compile(rf"(?P<acts>{listed}|{one}(?: (?:ni|o|u|ni tampoco) {one})*)")


@cache
def _deed(code: str) -> re.Pattern[str]:
    return re.compile("|".join(words for _, words in LANGUAGES[code].whole_turns.deeds))


@cache
def _one(code: str) -> str:
    told = LANGUAGES[code].whole_turns
    nouns, deeds = ("|".join(words for _, words in rows) for rows in (told.nouns, told.deeds))
    return rf"(?:{told.before}\b(?:{nouns})\b|(?:(?:(?<=[,;:] )|(?<=\by )|(?<=pero )|^)|{told.before_deeds})(?:{deeds})\b)"


@cache
def _compiled(code: str, member: str) -> _Patterns:
    told, one = LANGUAGES[code].whole_turns, _one(code)
    nouns = "|".join(words for _, words in told.nouns)
    listed = rf"(?P<acts>{one}(?:(?:,? (?:y|e|ni|o|u|y tambien|ni tampoco|mas) |, ){one})*)"
    deeds = "|".join(words for _, words in told.deeds)
    if member == "denied":  # "no lleva grapas, encintado y tallado": what was done stands behind what was not
        told_so = rf"(?:{told.before}\b(?:{nouns})\b|{told.before_deeds}(?:{deeds})\b)"
        listed = rf"(?P<acts>{one}(?:,? (?:ni|o|u|ni tampoco) {one}|(?:,? (?:y|e|y tambien|mas) |, ){told_so})*)"
    faulty = rf"(?! (?:{told.faulty}))" if member == "denied" else ""
    anything = rf"(?P<acts>{told.before}\b(?:{nouns}|{deeds})\b(?:(?: (?:y|e|ni|o|ni tampoco) ){told.before}\b(?:{nouns}|{deeds})\b)*)"
    of_deeds = rf"(?P<acts>\b(?:{deeds})\b)"
    behind, ahead = [], []
    for pattern in getattr(told, member):
        pattern = pattern.replace("{other}", rf"(?! (?:de )?{told.before}\b(?:{nouns}|{deeds})\b)")
        place = next(one for one in ("{acts}", "{any}", "{deeds}") if one in pattern)
        before, _, after = pattern.partition(place)
        if before:
            ahead.append((Likely(before), Likely(before + {"{acts}": listed, "{any}": anything, "{deeds}": of_deeds}[place] + faulty + after)))
        else:
            behind.append(after)
    return _Patterns(re.compile("|".join(behind) or "(?!)"), tuple(ahead))


def _found(sentence: _Sentence, code: str, member: str) -> Iterator[tuple[tuple[int, int], str]]:
    """Where one of these patterns stands, and the nouns that it is of."""
    patterns = _compiled(code, member)
    for topic in _topic(code).finditer(sentence.words):
        if sentence.words[topic.end() : topic.end() + 1] == "," and all(_deed(code).fullmatch(act) for act in re.split(LANGUAGES[code].whole_turns.joins, topic.group("acts"))):
            continue  # "encintada, no le pasé trapo": done, and not spoken of further
        if (match := patterns.behind.match(sentence.words, topic.end())) is not None:
            yield (topic.start(), match.end()), topic.group("acts")
    for first, whole in patterns.ahead:
        if first.search(sentence.words) is not None:
            for match in whole.finditer(sentence.words):
                yield match.span(), match.group("acts")


@cache
def _turns(code: str):
    """The turns; of each words and cue, which its sentence must hold."""
    return tuple((Likely(turn.cue), Likely(turn.words, known(turn.cue).besides), turn.states, turn.beside and re.compile(turn.beside), turn.unless and re.compile(turn.unless), turn.one, turn.asked) for turn in LANGUAGES[code].whole_turns.facts)


@cache
def _of_turns(code: str) -> tuple[Likely, ...]:
    return tuple(words for _, words, *_ in _turns(code))


@cache
def _whose(code: str) -> tuple[tuple[re.Pattern[str], str], ...]:
    told = LANGUAGES[code].whole_turns
    why = (("plan", told.plans), ("other", told.others), ("reminder", told.orders))
    names = "|".join(sorted(LANGUAGES[code].names))
    return tuple((re.compile(words.replace("{name}", f"(?:{names})")), reason) for reason, written in why for words in written)


def whose(row: Row, cut, language: Language) -> dict[int, str]:
    """Item -> why it states nothing: "el plan es …", "la de al lado, …", to the end of the sentence; what is to come also in bare words behind it."""
    found: dict[int, str] = {}
    if not language.whole_turns.plans:
        return found
    leads, own_again = word(language.code, "whole_turns.leads"), word(language.code, "whole_turns.own_again")
    carried: tuple[int, str] | None = None
    for clause in cut:
        said = plain(row.words(clause.first, clause.last))
        if carried is not None and carried[0] != clause.sentence and carried[1] == "plan" and _bare(row, clause):
            carried = (clause.sentence, "plan")
        if carried is not None and (carried[0] != clause.sentence or own_again.match(said)):
            carried = None
        if carried is None:
            said = said[leads.match(said).end() :]
            why = next((why for words, why in _whose(language.code) if words.match(said)), None)
            if why is None and begins(rows(language.code, "whole_turns.another"), said) is not None and _one_named(row, clause):
                why = "other"
            carried = None if why is None else (clause.sentence, why)
        if carried is not None:
            mine = next((at for at in range(clause.first + 2, clause.last) if row.items[at].concept == "I" and row.items[at - 1].concept in ("AND", "BUT")), None)
            found.update(dict.fromkeys(range(clause.first, mine or clause.last), carried[1]))
            carried = None if mine else carried  # "lo armó mi hermano sin aletas y yo se las metí"
    return found


_BARE = frozenset(("VANES", "TAPE", "STAPLES", "TABS", "C_MASTIC", "LEN", "NUM", "FRAC", "SIZE", "FILLER", "AND", "OF", "DET", "EVERY", "WITH", "IT", "THIS", "WIDE", "APART", "ALL", "TO"))


def _bare(row: Row, clause) -> bool:
    """ "Aletas también.", "Cinta de dos para ese.": no act, no verb, and no piece was named before."""
    named = any(row.items[at].concept.startswith("K_") and row.items[at + 1].concept in _HEADS for at in range(clause.first))
    return not named and all(row.items[at].concept in _BARE for at in range(clause.first, clause.last))


def _one_named(row: Row, clause) -> bool:
    """Whether one piece, and no more, was named by its number before."""
    kinds = [at for at in range(clause.first) if row.items[at].concept.startswith("K_")]
    named = [at for at in kinds if row.items[at + 1].concept in ("NUM", "MARKED", "NUMBER", "LETTER")]
    return len(named) == 1 and not any(plural(row, at) for at in kinds)


def whole_turns(row: Row, own: Row, asked: Row, told: Row, language: Language) -> tuple[list[Claim], set[int]]:
    """The claims that whole turns of words make, and the items that these have used up. `asked` is `own` with what drawings and others ask for, `told` with what might have been too."""
    made: list[Claim] = []
    spent: set[int] = set()
    if not language.whole_turns.nouns:
        return made, spent
    sentences = tuple(_sentences(row))
    turns = [_turns(language.code)[at] for at in where_standing(_of_turns(language.code), "\n".join([one.words for one in sentences]))]
    for sentence in sentences:
        taken: list[tuple[int, int]] = []
        _states(row, own, told, sentence, turns, language, made, spent, taken)
        if _nouns(language.code).search(sentence.words) is None:
            continue
        if word(language.code, "whole_turns.cue").search(sentence.words) is not None:
            for member, value, opens in (("done", True, False), ("open", False, True), ("denied", False, False)):
                for span, nouns in _found(sentence, language.code, member):
                    _acts(row, own, sentence, span, nouns, value, opens, language, made, spent, taken)
            for member, value in (("asked_not", False), ("asked_done", True)):
                for span, nouns in _found(sentence, language.code, member):
                    _acts(row, asked, sentence, span, nouns, value, False, language, made, spent, taken)
        _instead(row, own, sentence, language, spent, taken)
        _bears(row, own, sentence, language, made, taken)
        _unsettled(row, own, sentence, language, spent, taken)
    return made, spent


def _free(own: Row, sentence: _Sentence, span: tuple[int, int], row: Row, taken) -> tuple[int, int] | None:
    """The items of these words, where they are the speaker's own and no other turn has read them."""
    if any(span[0] < end and start < span[1] for start, end in taken):
        return None
    first, last = sentence.items(row, *span)
    return None if any(own.is_blank(at) for at in range(first, last)) else (first, last)


@cache
def _after_all(code: str) -> dict[str, re.Pattern[str]]:
    return {name: re.compile(words) for name, words in LANGUAGES[code].whole_turns.after_all}


def _done_since(row: Row, last: int, name: str, language: Language) -> int | None:
    """ "se me había ido sin recortar, ya lo recorté": right behind the denial, or behind its sentence, it is told to be done; the end of those words in the text."""
    until = row.items[last - 1].end
    pattern = _after_all(language.code).get(name)
    match = pattern.match(plain(row.text[until : until + 90])) if pattern is not None else None
    return None if match is None else until + match.end()


def _excused(sentence: _Sentence, start: int, language: Language) -> bool:
    """ "no es que la cinta no se la pusiera": what stands before it takes it back."""
    before = re.split(r"[,;:]", sentence.words[:start])[-1]
    return re.search(language.whole_turns.unless, before) is not None


def _denied_before(sentence: _Sentence, span: tuple[int, int], nouns: str, language: Language) -> bool:
    """ "va sin aletas, ya van": what stands behind the comma is no word of the vanes that were just denied."""
    end = span[0] + len(nouns)
    return sentence.words[span[0] : end] == nouns and sentence.words[end : end + 1] in (",", ";") and _NOT.search(sentence.words[: span[0]]) is not None and re.search(language.whole_turns.was_so, sentence.words[: span[0]]) is None


def _acts(row: Row, own: Row, sentence: _Sentence, span: tuple[int, int], nouns: str, value: bool, opens: bool, language: Language, made, spent, taken) -> None:
    items = _free(own, sentence, span, row, taken)
    if items is None or _excused(sentence, span[0], language) or value is True and _denied_before(sentence, span, nouns, language):
        return
    names = _named(nouns, language)
    opens = opens or value is False and any(match.start() < span[1] + 9 for match in _YET.finditer(sentence.words, span[0]))
    taken.append(span)
    first, last = items
    for name in (one for one in names if not one.startswith("(")):
        until = _done_since(row, last, name, language) if value is False else None
        if until is not None:
            last = next((k for k in range(last, len(row.items)) if row.items[k].start >= until), len(row.items))
            made.append(claim(row, name, True, first, last, hedged=False))
            continue
        pending = (Open("piece", name, row.items[first].start, row.items[last - 1].end),) if opens else ()
        made.append(claim(row, name, value, first, last, hedged=False, opens=pending, pending=opens))
    kept = (*_HEADS, "C_MASTIC", "CLOSURE", "MARK181") if value is True else _HEADS  # mastic has no act of its own here; what closes the joint is read from it
    spent.update(at for at in range(first, last) if not row.items[at].concept.startswith("K_") and row.items[at].concept not in kept)


def _named(words: str, language: Language) -> list[str]:
    told = language.whole_turns
    names = [name for name, _ in (*told.nouns, *told.deeds)]
    return list(dict.fromkeys(names[int(match.lastgroup[1:])] for match in _nouns(language.code).finditer(words)))


def _bears(row: Row, own: Row, sentence: _Sentence, language: Language, made: list[Claim], taken) -> None:
    """ "trae sus aletas y sus grapas", "grapas cada 2, tape.": weakly, so that whatever else is said of it goes before."""
    named = any(item.concept.startswith("K_") or item.concept in _NAMES_A_PIECE for item in row.items)
    for (start, end), nouns in (*_found(sentence, language.code, "bears"), *(_alone(sentence, language.code) if named else ())):
        begin = sentence.words.index(nouns, start)
        until = re.search(r"[,;]|$", sentence.words[end:]).start() + end
        concepts = {item.concept for item in row.items[sentence.first : sentence.items(row, begin, max(until, begin + 1))[1]]}
        if start == begin and concepts & _STATES_NOTHING:
            continue
        items = _free(own, sentence, (begin, begin + len(nouns)), row, taken)
        if items is None or _NOT.search(sentence.words[:start]) or _NOT.search(sentence.words[:begin]):
            continue
        for name in _named(nouns, language):
            mends = name == "taped" and any(c in concepts for c in _MENDS)
            short = name == "vanes" and any(row.items[at].concept == "VANES" and only_so_many(row, at, at + 1) for at in range(*items))
            if name in ("stapled", "taped", "vanes") and not mends and not short:
                made.append(claim(row, name, True, *items, weak=True, hedged=False))


def _instead(row: Row, own: Row, sentence: _Sentence, language: Language, spent: set[int], taken) -> None:
    """ "En lugar de aletas le hice garganta": the thing that was not used states nothing."""
    for match in re.finditer(language.whole_turns.instead, sentence.words):
        topic = _topic(language.code).match(sentence.words, match.end())
        if topic is not None and (items := _free(own, sentence, (match.start(), topic.end()), row, taken)) is not None:
            taken.append((match.start(), topic.end()))
            spent.update(range(*items))


def _unsettled(row: Row, own: Row, sentence: _Sentence, language: Language, spent: set[int], taken) -> None:
    """ "El encintado lo hago ..." : the act as a thing, of which nothing was said that is understood, is not done for its name."""
    for match in re.finditer(rf"\b(?:el|lo del|del) (?:{'|'.join(words for _, words in language.whole_turns.deeds)})\b", sentence.words):
        items = _free(own, sentence, match.span(), row, taken)
        if items is not None:
            spent.update(at for at in range(*items) if row.items[at].concept in _DEEDS and row.items[at].start >= sentence.begin + match.start())


def _alone(sentence: _Sentence, code: str) -> Iterator[tuple[tuple[int, int], str]]:
    for topic in _topic(code, alone=True).finditer(sentence.words):
        if (match := _compiled(code, "alone").behind.match(sentence.words, topic.end())) is not None:
            yield (topic.start(), match.end()), topic.group("acts")


_RANGE = {"staple_spacing": (Fraction(1, 2), 12), "staple_leg": (Fraction(1, 8), Fraction(3, 2)), "tape_width": (1, 6), "surface_temperature": (-20, 130), "air_temperature": (60, 1000), "gap": (0, 3), "cross_tab_length": (1, 24)}  # what such a measure can be


_WORST = {"staple_spacing": max, "gap": max}  # of two that are told of one piece


def _measured(row: Row, sentence: _Sentence, span: tuple[int, int], name: str) -> int | None:
    """The item that is the measure told there, where the fact can be so much."""
    first, last = sentence.items(row, *span)
    least, most = _RANGE[name]
    return next((at for at in range(first, last) if row.items[at].concept in ("NUM", "LEN", "FRAC", "DEG", "TEMP_F") and least <= row.items[at].value.value <= most), None)


def _states(row: Row, own: Row, told_by_others: Row, sentence: _Sentence, turns, language: Language, made: list[Claim], spent: set[int], taken) -> None:
    for cue, words, states, beside, unless, one, others in turns:
        if cue.search(sentence.words) is None or (beside and beside.search(plain(row.text)) is None):
            continue
        for match in words.finditer(sentence.words):
            items = _free(told_by_others if others else own, sentence, match.span(), row, taken)
            clause = re.split(r"[,;:]", sentence.words[: match.start()])[-1] + match.group()
            if items is None or (unless and unless.search(clause)):
                continue
            if one and sum(item.concept.startswith("K_") or item.concept == "FITTING" for item in row.items) != 1:
                continue
            if "m" in words.regex.groupindex and (told := _measured(row, sentence, match.span("m"), states[0][0])) is None:
                continue
            both = (told,) if "m" in words.regex.groupindex else ()
            if "m2" in words.regex.groupindex and (other := _measured(row, sentence, match.span("m2"), states[0][0])) is not None:
                both = (told, other)
                told = _WORST.get(states[0][0], min)(both, key=lambda at: row.items[at].value.value)  # "unas a tres, otras a dos"
            weakly = "n" not in words.regex.groupindex and all(name in ("taped", "stapled") and value is True for name, value in states) and bool(states)
            if not weakly:
                taken.append(match.span())
            if "w" in words.regex.groupindex and match.start("w") >= 0:
                items = sentence.items(row, *match.span("w"))
            for name, value in states:
                if value == "m":
                    near = {"hedged": True} if any(row.items[at].concept in HEDGES for at in range(max(items[0], told - 3), told)) else {}
                    made.append(claim(row, name, row.items[told].value.value, told, told + 1, uses=(told,), said_unit=unit_of(row.items[told]), corrects=True, **near))
                    continue
                value = _COUNTS[match.group("n")] if value == "n" else value
                until = _done_since(row, items[1], name, language) if value is False else None
                if until is not None:
                    items = items[0], next((k for k in range(items[1], len(row.items)) if row.items[k].start >= until), len(row.items))
                    value = True
                made.append(claim(row, name, value, *items, hedged=False, weak=name in ("taped", "stapled") and value is not False))
            if weakly:
                continue
            counted = [at for at in range(*items) if row.items[at].concept in ("NUM", "DET", "BOTH")] if "n" in words.regex.groupindex else ()
            if "m" in words.regex.groupindex:
                counted = list(both)
            if "a" in words.regex.groupindex and match.start("a") >= 0:
                counted = [*counted, *range(*sentence.items(row, *match.span("a")))]
            kept = (*_HEADS, *(() if any(value is False for _, value in states) else ("TAPED", "STAPLED")), *(("TAPE", "STAPLES") if "n" in words.regex.groupindex else ()), *(_CLOSED_WITH if "m" in words.regex.groupindex else ()))
            spent.update(at for at in range(*items) if not row.items[at].concept.startswith("K_") and row.items[at].concept not in kept)
            spent.update(counted)
