"""Acts told by their names and not by a sentence of their own: "stapling got skipped", "before I could trim it", "a rubdown is on my list".

One frame is read for every act: the forms of an act and the frames are data of the language (`ActWords`).
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from functools import cache
from itertools import takewhile

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, Open, claim
from logbook.reading.clauses.denials import ACTS, DENIED, listed_on
from logbook.reading.own.fell_short import _NOT, shortfalls
from logbook.reading.own.things_to_follow import waits
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.how_it_sits import only_how
from logbook.reading.words.likely import Likely, standing, where_standing
from logbook.reading.clauses.parts import Part
from logbook.reading.words.phrasing import choice, in_any, word
from logbook.reading.clauses.set_right import is_mended
from logbook.reading.undone.lacking import of_one_side
from logbook.reading.clauses.stance import Clause
from logbook.reading.words.tokens import plain
from logbook.reading.undone.undone import came_true

_FORMS = ("noun", "verb", "doing", "done")
_NAMES_IT = ("FITTING", "NUMBER", "MARKED", "RUN")
_THEIRS = re.compile(r"\b(?:his|her|hers|their|theirs)\b")
_CLOSING = ("TAPE", "TAPED", "MARK181", "CLOSURE", "C_MASTIC", "COLD_ON", "MOVE", "MOVE_DOWN", "ON", "DOWN")  # "tape went down over dust": it did go down
_CAN_BE_MENDED = ("stapled", "taped", "rubbed_down", "surface_clean", "preheated", "trimmed")
_BY_SIDES = ("stapled", "taped", "rubbed_down")
_STAPLED_KINDS = ("straight", "transition", "offset", "elbow", "tee", "branch", "wye", "end_cap", "plenum")  # a collar that is "tape only" lacks no staples
_ONLY_ACTS = ("DET", "AND", "COMMA", "FILLER", "IT", "DOWN", "ALL", "BE", "STILL", "WORD")


def short_of_done(row: Row, own: Row, why: dict[int, str], cut: tuple[Clause, ...], cut_up: tuple[Part, ...], language: Language) -> tuple[list[Claim], set[int]]:
    """All that is told of acts that were not done, or not all the way, without a sentence of their own."""
    short, short_at = shortfalls(row, own, cut_up, language)
    waiting, waiting_at = waits(row, own.blanked(short_at), cut_up, language)
    named, named_at = told_by_name(row.blanked(short_at | waiting_at), own, why, cut, cut_up, language)
    return [*short, *waiting, *named], short_at | waiting_at | named_at


def told_by_name(row: Row, own: Row, why: dict[int, str], cut: tuple[Clause, ...], cut_up: tuple[Part, ...], language: Language) -> tuple[list[Claim], set[int]]:
    """What is said so of every act, and the items that say it."""
    made: list[Claim] = []
    spent: set[int] = set()
    if not language.acts.forms:
        return made, spent
    hints = choice(language.code, "acts.hints")
    for place, clause in enumerate(cut):
        first = next((at for at in range(clause.first, clause.last) if not row.is_blank(at)), None)
        reason = why.get(clause.last - 1)
        said = plain(row.words(clause.first, clause.last))
        lists = reason == "question" and re.fullmatch(language.acts.lists, said) if language.acts.lists else None  # "what's left: tape, rub"
        lists = lists or reason == "reminder" and place and word(language.code, "told.voices.left_to_others").match(said)
        if first is None or reason in ("question", "condition", "reminder", "drawing") and not lists:
            continue
        if not hints.search(said):
            continue
        for one, used in _said(row, cut, place, said, reason == "other", cut_up, language):
            if spent.isdisjoint(used):
                made.append(one)
                spent.update(used)
    for one, used in _of_sentences(row, why, cut, language):
        if spent.isdisjoint(used):
            made.append(one)
            spent.update(used)
    for one, used in _across(row, why, cut, cut_up, language):
        if spent.isdisjoint(used):
            made.append(one)
            spent.update(used)
    unmarked, unmarked_at = _unlisted(row, own, cut, language)
    return [*made, *unmarked], spent | unmarked_at


def _said(row: Row, cut, place: int, said: str, theirs: bool, cut_up, language: Language) -> Iterator[tuple[Claim, set[int]]]:
    clause = cut[place]
    if theirs and _THEIRS.search(said):
        return
    listed = re.fullmatch(language.acts.lists, said) if language.acts.lists else None
    if listed is not None and clause.last < len(row.items) and row.text[row.items[clause.last].start : row.items[clause.last].end] in (":", "-", "–", "—", "="):
        yield from _listed(row, cut, place)
        return
    for how, pattern in _standing(_frames, language.code, said):
        for match in pattern.finditer(said):
            name = _act(match, language)
            if name is None or _denied_before(said[: match.start()], language) or re.match(language.acts.needless, said[match.end() :]):
                continue
            if how == "to_do" and "verb" in match.re.groupindex and match.start("verb") >= 0 and _of_a_whole_run(said[match.start("verb") :], language):
                continue  # "we'll tape the whole run on Monday": of no piece
            if how == "undone" and match.group().startswith("before") and re.search(language.acts.waits_for, said[: match.start()]):
                continue
            first, last = row.within(clause.first, clause.last, match)
            if any(row.is_blank(at) for at in range(first, last)):
                continue
            used = {at for at in range(first, last) if not row.items[at].concept.startswith("K_") and row.items[at].concept not in (*_NAMES_IT, "NUM")}
            if how == "to_do" and row.items[first].concept in ("WILL", "GOING_TO") and came_true(row, last, name):
                continue
            if how == "to_do":
                start, end = row.items[first].start, row.items[last - 1].end
                yield claim(row, name, False, first, last, opens=(Open("piece", name, start, end),), pending=True, hedged=False), used
                for at in takewhile(lambda at: _as_a_thing(row, at), listed_on(row, last, clause.last, ("AND", "OR"))):
                    too = DENIED[row.items[at].concept][0]
                    yield claim(row, too, False, first, at + 1, opens=(Open("piece", too, start, row.items[at].end),), pending=True, hedged=False), {at}
            elif not _mended(row, cut_up, first, name, language):
                one = claim(row, name, False, first, last, hedged=False)
                of_a_part = how == "partly" or name in _BY_SIDES and re.search(language.acts.a_side, said) or row.items[first].concept in ("NO", "NOT") and of_one_side(row, _so_far(row, clause, one), one)
                yield replace(one, part="side") if of_a_part else one, used
                for at in listed_on(row, last, clause.last, ("OR",)) if how == "undone" else ():
                    yield claim(row, DENIED[row.items[at].concept][0], False, at, at + 1, hedged=False), {at}
    if theirs:
        return
    for name, value, pattern in _standing(_of_one, language.code, said):
        match = pattern.search(said)
        if match is not None and value is None and _named_elsewhere(row, clause, name):
            continue  # "stapled only, no tabs. Taped.": it is told
        if match is None or (value and _NOT.search(said[: match.start()])) or (not value and _NOT.search(" ".join(said[: match.start()].split()[-3:]))):
            continue
        if re.match(language.acts.needless, said[match.end() :]):
            continue
        first, last = row.within(clause.first, clause.last, match)
        if any(row.is_blank(at) for at in range(first, last)):
            continue
        if value is False and only_how(row, first, last - 1, clause.last) is not None:
            continue
        if not value and name in _CAN_BE_MENDED and _mended(row, cut_up, first, name, language):
            continue
        if name == "taped" and value is False and _the_other_closes(row, first, last):
            continue
        used = {at for at in range(first, last) if not row.items[at].concept.startswith("K_") and row.items[at].concept not in (*_NAMES_IT, "NUM", *(_CLOSING if name in ("surface_clean", "preheated") else ()))} if value is not None else set()
        yet = value is False and re.search(language.acts.yet, said) is not None  # "no tape or mastic on it yet": still to do
        opens = (Open("piece", name, row.items[clause.first].start, row.items[clause.last - 1].end),) if yet else ()
        one = claim(row, name, bool(value) if value is None else value, first, last, opens=opens, pending=yet, corrects=value is False and row.items[clause.first].concept == "BUT", hedged=False, kinds=_STAPLED_KINDS if value is None and name == "stapled" else ())
        yield replace(one, part="side") if value is False and row.items[first].concept in ("NO", "NOT") and of_one_side(row, _so_far(row, clause, one), one) else one, used  # "no staples in the throat"
        for at in listed_on(row, last, clause.last, ("OR",)) if value is False and row.items[first].concept == "NO" else ():
            yield claim(row, DENIED[row.items[at].concept][0], False, at, at + 1, hedged=False), {at}


def _so_far(row: Row, clause: Clause, one: Claim) -> Clause:
    """ "No staples in the throat" tells of which part behind; "couldn't get into the back corner" only where he could not."""
    return clause if row.items[one.first].concept == "NO" else replace(clause, last=one.last)


def _as_a_thing(row: Row, at: int) -> bool:
    """ "Still wants taping and a rub down": an act by its name, where "and taped it" is one that was done."""
    words = row.words(at, at + 1).lower()
    return not words.split()[0].endswith("ed") and (words.split()[0].endswith("ing") or words.endswith("down") or row.items[at - 1].concept == "DET")


def _of_a_whole_run(said: str, language: Language) -> bool:
    return any(re.match(pattern, said) for pattern in language.forms.planned)


def _denied_before(said: str, language: Language) -> bool:
    return _NOT.search(" ".join(re.split(language.acts.begins_anew, said)[-1].split()[-4:])) is not None


def _named_elsewhere(row: Row, clause: Clause, name: str) -> bool:
    return any(ACTS.get(item.concept) == name for at, item in enumerate(row.items) if not clause.first <= at < clause.last)


def _the_other_closes(row: Row, first: int, last: int) -> bool:
    """ "Ran out of mastic, used foil tape": what closes it stands behind."""
    ends = row.sentence_end(last)
    return any(item.concept == "C_MASTIC" for item in row.items[first:last]) and any(item.concept in ("TAPE", "TAPED", "CLOSURE", "MARK181") for item in row.items[last:ends])


def _listed(row: Row, cut, place: int) -> Iterator[tuple[Claim, set[int]]]:
    """ "To do: tape, rub": each act of the list is still to do."""
    first = cut[place].first
    for clause in cut[place + 1 : place + 5]:
        acts = [at for at in range(clause.first, clause.last) if row.items[at].concept in DENIED and DENIED[row.items[at].concept][1] is False]
        if clause.sentence != cut[place].sentence or not acts or any(row.items[at].concept not in _ONLY_ACTS for at in range(clause.first, clause.last) if at not in acts):
            return
        start, end = row.items[first].start, row.items[clause.last - 1].end
        for at in acts:
            name = DENIED[row.items[at].concept][0]
            yield claim(row, name, False, at, at + 1, opens=(Open("piece", name, start, end),), pending=True, hedged=False), {at}


def _mended(row: Row, cut_up, first: int, name: str, language: Language) -> bool:
    place = next((k for k, part in enumerate(cut_up) if part.first <= first < part.last), None)
    return place is not None and is_mended(cut_up, place, language, name)


def _act(match: re.Match[str], language: Language) -> str | None:
    for form in _FORMS:
        if form in match.re.groupindex and match.group(form) is not None:
            return next((name for name, pattern in _forms(language.code, form) if pattern.fullmatch(match.group(form))), None)
    return None


@cache
def _forms(code: str, form: str) -> tuple[tuple[str, Likely], ...]:
    at = _FORMS.index(form) + 1
    return tuple((row[0], Likely(row[at])) for row in LANGUAGES[code].acts.forms)


@cache
def _with_patterns(rows, code: str) -> tuple[tuple, tuple[Likely, ...]]:
    """The rows of a language, and the pattern at the end of each."""
    return rows(code), tuple(row[-1] for row in rows(code))


def _standing(rows, code: str, said: str) -> list[tuple]:
    """The rows of whose patterns the letters stand in the words."""
    made, patterns = _with_patterns(rows, code)
    return [made[at] for at in where_standing(patterns, said)]


_MEASURES = ("EVERY", "LEN", "FRAC", "APART", "MARK181", "CLOSURE")


def _across(row: Row, why: dict[int, str], cut, cut_up: tuple[Part, ...], language: Language) -> Iterator[tuple[Claim, set[int]]]:
    """ "Staples on one seam, none on the other", "normally I'd tape it but the lift was leaving": an act, and behind a comma what became of it."""
    frames = _standing(_frames_across, language.code, plain(row.text))
    ends = {clause.sentence: clause.last for clause in cut} if frames else {}
    for place, clause in enumerate(cut if frames else ()):
        last = ends[clause.sentence]
        asked = last < len(row.items) and row.items[last].concept == "QUERY"
        if place and cut[place - 1].sentence == clause.sentence or asked:
            continue
        said = plain(row.words(clause.first, last))
        for how, pattern in frames:
            match = pattern.search(said)
            name = _act(match, language) if match is not None else None
            if name is None or _denied_before(said[: match.start()], language):
                continue
            first, end = row.within(clause.first, last, match)
            other = how != "against" and {why.get(at) for at in range(first, end)} & {"question", "condition", "reminder", "drawing", "other"}
            if other or all(row.is_blank(at) for at in range(first, end)) or (how != "to_do" and _mended(row, cut_up, end - 1, name, language)):
                continue
            used = {at for at in range(first, end) if not row.items[at].concept.startswith("K_") and row.items[at].concept not in (*_NAMES_IT, *_MEASURES, "NUM")}
            used |= {at for at in range(first, end - 1) if row.items[at].concept == "NUM" and row.items[at + 1].concept in ("JOINT", "SIDE_WORD", "END")}
            opens = (Open("piece", name, row.items[first].start, row.items[end - 1].end),) if how == "to_do" else ()
            yield claim(row, name, False, first, end, part="side" if how == "partly" else "", opens=opens, pending=how == "to_do", hedged=False), used


@cache
def _frames_across(code: str) -> tuple[tuple[str, Likely], ...]:
    return tuple((how, Likely(rf"(?<![\w'])(?:{_filled(frame, code)})")) for how, frame in LANGUAGES[code].acts.across)


@cache
def _filled_with(code: str) -> dict[str, str]:
    return {form: f"(?P<{form}>{'|'.join(row[at] for row in LANGUAGES[code].acts.forms)})" for at, form in enumerate(_FORMS, 1)}


def _filled(frame: str, code: str) -> str:
    """The frame with the forms of all acts; behind "!" they only stand there and name none."""
    for form, words in _filled_with(code).items():
        frame = frame.replace("{!" + form + "}", words.replace(f"?P<{form}>", "?:", 1)).replace("{" + form + "}", words)
    return frame


@cache
def _frames(code: str) -> tuple[tuple[str, Likely], ...]:
    acts = LANGUAGES[code].acts
    return tuple((how, Likely(rf"(?<![\w'])(?:{_filled(frame, code)})")) for how in ("to_do", "partly", "undone") for frame in getattr(acts, how))


@cache
def _of_one(code: str) -> tuple[tuple[str, object, Likely], ...]:
    return tuple((name, value, Likely(rf"(?<![\w'])(?:{words})")) for name, value, words in LANGUAGES[code].acts.of_one)


def _of_sentences(row: Row, why: dict[int, str], cut, language: Language) -> Iterator[tuple[Claim, set[int]]]:
    """ "The gun jammed, so it's tape only": what ails, and what came of it, in one sentence."""
    looks = choice(language.code, "acts.looks")
    ends = {clause.sentence: clause.last for clause in cut}
    for place, clause in enumerate(cut):
        if place and cut[place - 1].sentence == clause.sentence:
            continue
        last = ends[clause.sentence]
        said = plain(row.words(clause.first, last))
        if row.is_blank(clause.first) and row.is_blank(last - 1) or not looks.search(said) or set(why.get(at) for at in range(clause.first, last)) & {"question", "condition", "reminder", "drawing"}:
            continue
        whole = Clause(clause.first, last, clause.sentence)
        for name, value, pattern in _of_a_sentence(language.code):
            match = pattern.search(said)
            if match is not None:
                first, end = row.within(whole.first, whole.last, match)
                used = {at for at in range(first, end) if not row.items[at].concept.startswith("K_") and row.items[at].concept not in (*_NAMES_IT, "NUM", *(_CLOSING if name in ("stapled", "closure", "surface_clean", "rubbed_down") else ()), *(("STAPLED", "STAPLES", "EVERY") if name == "taped" else ()))}
                yield claim(row, name, value, first, end, hedged=False), used


@cache
def _of_a_sentence(code: str) -> tuple[tuple[str, object, Likely], ...]:
    return tuple((name, value, Likely(rf"(?<![\w'])(?:{words})")) for name, value, words in LANGUAGES[code].acts.of_sentence)


def _unlisted(row: Row, own: Row, cut: tuple[Clause, ...], language: Language) -> tuple[list[Claim], set[int]]:
    """ "no UL mark on it", "some off-brand roll": tape without a listing; where a mark that is one was said, that one counts."""
    made: list[Claim] = []
    spent: set[int] = set()
    patterns = standing(_no_listing(language.code), plain(row.text))
    for clause in cut if patterns else ():
        if own.is_blank(clause.first) and own.is_blank(clause.last - 1):
            continue
        said = plain(row.words(clause.first, clause.last))
        match = next((m for pattern in patterns if (m := pattern.search(said)) is not None), None)
        if match is None:
            continue
        if _of_no_tape(row, clause, said, match.group()):
            continue
        marked = any(item.concept == "MARK181" for at, item in enumerate(row.items) if clause.first - 6 <= at < clause.last)
        if marked and re.search(r"(?:\b(?:no|not|without|nor|zero|lacks|181 ?b|blank|bare)\b|n't\b|\bun)", match.group()) is None:
            continue  # "181A-P, skinny stuff from the bargain bin": listed, wherever it was bought
        first, last = row.within(clause.first, clause.last, match)
        made.append(claim(row, "closure", "other_tape", first, last, hedged=False))
        spent.update(at for at in range(first, last) if row.items[at].concept not in ("TAPE", "TAPED", "I", "MARK181"))
    return made, spent



def _of_no_tape(row: Row, clause: Clause, said: str, words: str) -> bool:
    """ "Straight, no number on it" is of the piece where no tape was spoken of, and "wiped with a cloth" of a rag."""
    if in_any("acts.numberless").fullmatch(words) is not None:
        return not any(item.concept in ("TAPE", "TAPED", "TAPE_IT", "CLOSURE", "FACING") for item in row.items[: clause.last])
    return words.endswith("cloth") and in_any("acts.cleans_with").search(said) is not None


@cache
def _no_listing(code: str) -> tuple[Likely, ...]:
    return tuple(Likely(rf"(?<![\w'])(?:{words})") for words in LANGUAGES[code].acts.unlisted)
