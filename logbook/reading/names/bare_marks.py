"""Marks that are only a number somewhere in the words: "fifty-six fell off the lift", "half a roll on fifty-three", "is twelve meant to get vanes?".

Looked for last, in a note that named no piece otherwise, among the numbers nothing else needed. A mark that is not
found is asked for; one made up is believed: so every way of speaking has its own row, and two different numbers found by one row name none.
"""

from __future__ import annotations

import re

from logbook.languages.language import Language
from logbook.reading.names import article_marks
from logbook.reading.clauses.grammar import Row
from logbook.reading.names.headings import of_others
from logbook.reading.clauses.marks import MARK, START, mark_text, no_length
from logbook.reading.clauses.mention import Mention
from logbook.reading.names.no_marks import angle_not_mark
from logbook.reading.words.phrasing import word, words_of
from logbook.reading.words.tokens import plain

_M = f"(?P<m>{MARK})"
_ENDS = "(?=SEP|$|ON ALL|BE|HAVE|BUT|AND|NOT|NOT_DONE|KIND|SIZE|ME|WITH|OR|FILLER)"
_PART = "(?:VANES|NO|DAMAGE|DAMAGE_PLACE|REPAIRED|STAPLES|TAPE|TAPES|FACING|PANEL|BOARD|GAP|JOINT|FLAP|SIDE|SIDES_ALL|SIDE_WORD|END|GROOVE|C_MASTIC|CLOSURE|TABS|APART|SCRIM|THROAT|K_REPAIR|TIE_RODS)"
_MEASURES = "NUM|LEN|FRAC|SIZE|MARKED|DEG|TEMP_F|COUNT|COUNTED"
_LEAST = 10  # below it "cut four", "on two" count or measure more often than they name


def _said(*words: str):
    """The words of group `f` end in one of these."""
    ends = tuple(f" {word}" for word in words)

    def fits(row: Row, match) -> bool:
        return f" {row.words(*match.span('f')).lower()}".replace("’", "'").endswith(ends)

    return fits


def _named(row: Row, match) -> bool:
    """Whether the number is too great, or too marked, to count things."""
    item = row.items[match.start("m")]
    return item.concept == "MARKED" or match.end("m") - match.start("m") > 1 or (item.concept == "NUM" and item.value.value >= _LEAST)


def _lettered(row: Row, match) -> bool:
    """ "Collar for the office, C nine, six inch": a letter and a number between two stops."""
    first = row.items[match.start("m")]
    if first.concept == "MARKED":
        return first.value[:1].isalpha()
    return match.end("m") - match.start("m") > 1 and first.concept == "LETTER" and row.text[first.start : first.end].isupper()


def _big(*words: str):
    fits = _said(*words)
    return lambda row, match: _named(row, match) and fits(row, match)


_WORK = ("picked up", "carried", "started", "grabbed", "did", "doing", "built", "made", "rubbing down", "rubbing", "taping", "stapling", "brought", "moved", "opened", "opened up", "closed", "closed up",
         "folded", "folded up", "redid", "finished", "finishing", "building", "making", "checked", "checking", "measured", "marked", "laid out", "fixed", "looking at", "looked at", "dropped", "banged", "hit", "we're at", "over at", "handed me", "done with", "finished with", "through with", "that makes", "you about", "word on", "story on", "wrapped up", "wrapped", "one i'm on is", "i'm on is", "going on", "moving to", "moved to", "over to", "up to", "back to", "walked to", "walked over to", "deal with", "tackled", "starting",
         "terminé", "hice", "armé", "levanté", "cargué", "empecé", "revisé", "moví")  # fmt: skip
_HAPPENS = ("fell", "came", "went", "took", "turned", "ended", "started", "sat", "gave", "looks", "needed", "fit", "lost", "picked", "failed", "passed", "caught", "slipped", "tipped", "blew", "got", "sits", "stands", "fights", "fought", "turned out", "wanted", "runs",
            "se cayó", "quedó", "salió", "llevó")  # fmt: skip

_PART_OF = f"{_PART} (?:FILL|TIGHT|IN_PLACE|WORD){{0,2}} (?P<f>ON|OF|IN) DET? {_M} {_ENDS}"

# pattern with the mark in group m, and what else must hold; the first row that finds a number names the piece
SAID_BARE: tuple[tuple[str, object], ...] = (
    (f"NOT {_M} (?:COMMA|BUT) FILLER{{0,2}} (?P<m2>{MARK}) (?=SEP|$|HUNG|TAPED|STAPLED|RUBBED|BE|HAVE)", lambda row, match: not _measured(row, match.span("m2"))),  # "not sixty-six, sixty-seven"
    (f"FIX COMMA? (?:BE|THIS|IT){{1,2}} NUMBER? {_M} (?=STOP|$)", _named),  # "… no, hold on, it's A10."
    (f"{START} {_M} (?=(?P<n>WORD|MOVE|MOVE_IN|MOVE_OUT|MOVE_DOWN|TAKES|FILLER|UNDONE|DAMAGE|END|PENDING|SEATED))", lambda row, match: _named(row, match) and _happens(row, match)),
    (f"{START} {_M} (?:COMMA|STOP|QUERY) (?:(?:FILLER|TRADE_NOISE|SEE|WORD){{1,3}} (?:COMMA|STOP))? (?=(?:FILL){{0,2}} (?:SIZE COMMA?)? KIND)", _named),  # "Twenty-eight? Straight, …", "twenty-six, let's see, straight"
    (f"{START} {_M} (?:COMMA|STOP) (?:(?!{_MEASURES}|KIND|ACT)[^STOP QUERY]){{1,9}} STOP (?=(?:FILL){{0,2}} (?:SIZE COMMA?)? KIND)", _named),  # "So forty-eight, that was a bear. Straight, …"
    (f"{START} {_M} COMMA (?:(?!{_MEASURES}|KIND|ACT)[^STOP QUERY]|LEN BOARD){{1,9}} COMMA (?=(?:FILL){{0,2}} (?:SIZE COMMA?)? KIND)", _named),  # "Thirty-seven, two inch board, straight, …"
    (f"{START} {_M} DAMAGE (?:(?!{_MEASURES}|KIND|ACT)[^STOP QUERY]){{0,9}} COMMA (?=(?:FILL){{0,2}} (?:SIZE COMMA?)? KIND)", _named),  # "Fifty-six got wet last night, straight, …"
    (f"{START} {_M} COMMA? (?:(?P<f>FILLER) (?=SEP|$)|(?=SAME_THING))", lambda row, match: match.start("f") < 0 or _big("again", "otra vez", "de nuevo")(row, match)),
    (f"{START} (?P<f>WORD|MOVE|CUT_TO) DET? (?:KIND|FITTING|NUMBER)? {_M} (?=FILLER? (?:TO|ON|ON_BENCH|UP|DOWN|OVER) (?:DET|ON_BENCH|BUILDING|PLACE_NOUN))", _named),  # "carried eighteen back to the bench"
    (f"{START} {_M} (?=KIND (?:NUM|DEG|SIZE|VANES|LEN))", lambda row, match: _named(row, match) and not _turn(row, match.span("m"))),
    (f"(?:STAPLED|STAPLES|TAPED|TAPE|RUBBED|MARK181|CLOSURE) (?:EVERY|ON|AROUND|FILLER|FILL)* (?:NUM|LEN)? ON DET? {_M} (?=SEP|$|KIND|SIZE|FILLER|SHIPLAP|AND|WITH)", _named),  # "stapled every two on thirty-nine"
    (f"(?:(?<=RUN NUM COMMA)|(?<=RUN LETTER COMMA)) NUMBER? {_M} (?=COMMA|STOP|$)", _named),
    (f"(?:(?<=SEP)) {_M} (?=SEP|$)", _lettered),
    (f"(?P<f>OF|UP|ON|FILLER|WITH) {_M} ON RUN (?:NUM|LETTER) (?=COMMA|STOP)", _big("for", "up", "with", "done", "finished", "doing", "para")),  # "done with A2 on run six"
    (f"{START} (?P<f>FILLER UP) {_M} ON_BENCH (?=COMMA|STOP)", _big("up")),  # "I made up seventy on the bench"
    (f"(?P<f>OF|UP|ON|FILLER|WITH) {_M} ON NUM (?=COMMA|STOP)", _big("for", "up", "with", "done", "finished", "doing", "para")),  # "that's it for twelve on two"
    (f"(?:STAPLED|TAPED|RUBBED|HUNG) {_M} (?=WITH|FILLER|AND|BUT|SEP|$)", _named),
    (f"(?:^|(?<=SEP)) (?:HAVE|FILLER) {_M} (?=SEALED|STAPLED|TAPED|HUNG|RUBBED)", _named),  # "got thirty-nine closed up"
    (f"{START} {_M} (?=(?:BE|QUESTION|FILLER|DET){{1,3}} SAME_AS)", None),
    (f"(?P<k>KIND) COMMA {_M} (?=COMMA|STOP|$)", lambda row, match: _no_measure(row, match)),
    (f"{START} {_M} ME (?=WORD|FILLER|STAPLED|TAPED|RUBBED|LAID|REDID|CUT_TO|HUNG)", None),
    (f"(?P<f>WORD|GENERIC) COMMA NUMBER? {_M} (?=COMMA)", _said("mine", "ours", "mío", "mía", "one")),
    (f"(?P<f>(?:FILLER|WORD|WITH|HEDGE|THIS|OVER|OUT|OF|IT|GENERIC|ANOTHER|TO|ME|ON|UP|DOWN|DET|BE|MOVE|LAID|SEALED|REDID|CUT_TO|MOVE_UP|RUBBED|TAPED|TAPE|STAPLE|DAMAGE|AND){{1,4}}) {_M} (?=COMMA|STOP|$|FILLER|TRADE_NOISE|UP|DOWN|KIND|AND|WITH|WORD (?:COMMA|STOP|AND))", _big(*_WORK)),
    (f"(?P<f>BE (?:DET|HEDGE|FILLER){{0,2}} OF|ON|OF|BE OF) DET? {_M} COMMA (?=(?:FILL){{0,2}} (?:KIND|SIZE))", _big("on", "for", "en")),  # "that's for seventy-six, straight"
    (_PART_OF, _said("on", "of", "in", "for", "de", "en")),
    (f"(?<!BE)(?P<f>ON) DET? {_M} {_ENDS}", _big("on", "en")),
    (f"(?:(?<=SEP)|(?<=BUT)|(?<=AND)|(?<=WORD)|(?<=SAYS)|(?<=THINK)|(?<=IT)) FILLER? {_M} (?=BE (?!NUM|DEG|LEN|BY|SIZE)|HAVE (?!NUM|LEN|SIZE)|NOT|PENDING|MISSING)", _named),
    (f"(?:(?<=SIZE COMMA)|(?<=DEG COMMA)) {_M} (?=COMMA|STOP|$)", lambda row, match: _named(row, match) and any(item.concept == "K_ELBOW" for item in row.items)),
    (f"{START} {_M} (?P<c>COMMA) (?!{_MEASURES})", lambda row, match: _named(row, match) and row.words(*match.span("c")) == ":"),  # "Thirty: the print wants mastic, …"
    (f"(?:^|(?<=SEP)) (?:FILLER|AND|BUT){{0,2}} {_M} (?=UNTAPED|UNDONE|NOT_DONE|NOT|DAMAGE|SEALED|TIGHT)", _named),
    (f"(?:IF|SAYS|THINK|THIS|EXCEPT|QUESTION|NOT_LOGGED|(?P<f>WORD)) {_M} (?=BE (?!{_MEASURES})|HAVE (?!{_MEASURES})|NOT (?!BY)|NOT_DONE|DAMAGE|UNTAPED|UNDONE|LEAK_TEST|TAPED|STAPLED|RUBBED|SEALED|HUNG|MISSING|IF)", lambda row, match: _named(row, match) and (match.start("f") < 0 or _of_it(row, match))),  # "if forty-six leaks, …", "whoever says 23 has a hole …"
    (f"EXCEPT (?:ON|DET|OF)* {_M} (?=STOP)", _named),
    (f"TRADE_NOISE {_M} (?=IF SEALED|IF (?:TAPED|STAPLED|RUBBED))", _named),  # "had I not run out of tape fifty-four would be closed"
)


def _of_it(row: Row, match) -> bool:
    return row.words(*match.span("f")).lower() in words_of("small.before_mark")


def _happens(row: Row, match) -> bool:
    return re.match(rf"(?:{'|'.join(_HAPPENS)})\b", row.words(match.start("n"), min(len(row.items), match.start("n") + 2)).lower()) is not None


def _measured(row: Row, span: tuple[int, int]) -> bool:
    """ "Six foot. Not eight, six": the number of a measure said before."""
    said = row.words(*span).lower()
    return any(item.concept == "LEN" and row.text[item.start : item.end].lower().startswith(f"{said} ") for item in row.items[: span[0]])


def _no_measure(row: Row, match) -> bool:
    """ "Collar, one-thirty-one, six inch": too great for its width."""
    item = row.items[match.start("m")]
    return no_length(row, match) or item.concept == "MARKED" or (item.concept == "NUM" and item.value.value > 40)


def bare_marks(row: Row, used: set[int], language: Language) -> list[Mention]:
    """The piece a note speaks of without naming it as one; several only where each has its own part ("vanes in 54, none in 55").

    `used` are the items that state something already."""
    kinded = {m.mark: m for match in row.find(f"(?:^|(?<=SEP)|(?<=FILLER)) DET? {_KIND_AND_MARK}") if (m := _of_a_kind(row, match, used, language))}
    if len(kinded) == 1:
        return list(kinded.values())
    for pattern, fits in SAID_BARE:
        found: dict[str, Mention] = {}
        for match in row.find(pattern):
            group = "m2" if "m2" in match.re.groupindex else "m"
            span = match.span(group)
            if used.intersection(range(*span)) or (fits is not None and not fits(row, match)) or _turn(row, span) or row.words(*span).lower().startswith("a "):
                continue  # "a hundred" is how many
            mark = mark_text(row, *span, language)
            if mark is not None:
                found.setdefault(mark, Mention(match.start() if pattern is _PART_OF else span[0], span[1], mark=mark, mark_at=span))
        if len(found) == 1 or (pattern is _PART_OF and _in_one_breath(row, list(found.values()))):
            return list(found.values())
        if found:
            return []
    return []


def lone_number(row: Row, used: set[int], language: Language) -> list[Mention]:
    """The piece that a story is about, where one number alone is nothing else: "the forklift kissed sixty-three", "so sixty-one only got staples on top"."""
    found: dict[str, Mention] = {}
    for at, item in enumerate(row.items):
        last = _ends_at(row, at)
        if last == at or row.is_blank(at) or not used.isdisjoint(range(at, last)) or _turn(row, (at, last)):
            continue
        start, stop = row.sentence_start(at), row.sentence_end(at)
        before, behind = plain(row.text[row.items[start].start : item.start]).rstrip(), plain(row.text[row.items[last - 1].end : row.items[stop - 1].end])
        thing = word(language.code, "lone_numbers.behind").match(behind) and any(word(language.code, f"lone_numbers.{one}").search(before) for one in ("before_thing", "before_doing"))
        subject = word(language.code, "lone_numbers.subject").match(behind) and word(language.code, "lone_numbers.before_subject").search(before)
        whole = f"{before} # {behind}".lstrip()
        if not (thing or subject or word(language.code, "lone_numbers.opens").search(whole)) or word(language.code, "lone_numbers.no_piece").search(whole):
            continue
        mark = mark_text(row, at, last, language)
        if mark is not None:
            found.setdefault(mark, Mention(at, last, mark=mark, mark_at=(at, last)))
    return list(found.values()) if len(found) == 1 else []


def _ends_at(row: Row, at: int) -> int:
    """Behind a number that is too great to count with, alone or said in two: "one eighteen"; `at` itself where there is none."""
    item, behind = row.items[at], row.items[at + 1] if at + 1 < len(row.items) else None
    if item.concept == "MARKED" or item.concept == "NUM" and item.value.value >= _LEAST and (at == 0 or row.items[at - 1].concept != "NUM"):
        return at + 1
    in_two = item.concept == "NUM" and item.value.value.denominator == 1 and behind is not None and behind.concept == "NUM" and _LEAST <= behind.value.value < 100
    return at + 2 if in_two and row.text[item.end : behind.start] == " " else at


def _of_a_kind(row: Row, match, used: set[int], language: Language) -> Mention | None:
    span, at = match.span("m"), match.start("k")
    mark = mark_text(row, *span, language)
    if mark is None or used.intersection(range(*span)) or _turn(row, span) or angle_not_mark(row, match):
        return None
    made = Mention(at, match.end("m"), kind=row.items[at].value, kind_at=(at, at + 1), mark=mark, mark_at=span)
    return None if of_others(row, made, language) else made


def _in_one_breath(row: Row, found: list[Mention]) -> bool:
    """ "Vanes in 54, vanes in 55, none in 56": one list, each right behind the other."""
    return len(found) > 1 and all(two.first - one.last <= 2 and row.items[one.last].concept in ("COMMA", "AND", "BUT") for one, two in zip(found, found[1:]))


def _turn(row: Row, span: tuple[int, int]) -> bool:
    """ "A ninety", "it's a forty-five": a turn where an elbow or nothing is named; and "it's 30 wide": a measure."""
    item = row.items[span[0]]
    if span[1] < len(row.items) and row.items[span[1]].concept in ("WIDE", "HIGH", "LONG"):
        return True
    if span[1] - span[0] > 1 or item.concept != "NUM" or item.value.value not in (90, 45):
        return False
    return not any(other.concept == "NUM" and other.value.value in (90, 45) for other in row.items if other is not item)


_KIND_AND_MARK = f"(?P<k>KIND) (?:NUMBER|FITTING|FILLER|COMMA BRANCH_WORD){{0,2}} {_M} (?!BY|LONG)"
_DRAWN_AS = f"(?:HAVE|WORD|SAYS|DRAWING) {_M} (?=(?:ON|WORD|DET|BE){{1,2}} SIZE)"  # "the drawing's got seventeen at fourteen by ten"
_STATED = ("question", "condition", "drawing", "other")


def mark_asked_after(row: Row, why: dict[int, str], used: set[int], language: Language, kind: str | None) -> list[Mention]:
    """The piece that only a question, a condition, a drawing or another man's words name, where the speaker goes on with "it": "did anybody tape straight
    twenty-eight? I stapled it". `kind` is what the note calls its piece itself."""
    away = [at for at, reason in why.items() if reason in _STATED or (reason == "reminder" and _no_order(row, at, why))]
    if not away:
        return []
    own_after = [at for at in range(min(away) + 1, len(row.items)) if at not in why and row.items[at].concept not in ("STOP", "COMMA", "QUERY")]
    others = any(why.get(at) == "other" for at in away)
    if not own_after or (others and words_of("small.back_to_it").isdisjoint(row.text[row.items[own_after[0]].start :].lower().replace("’", "'").replace(",", " ").replace(".", " ").split()[:14])):
        return []
    theirs = row.blanked({at for at, item in enumerate(row.items) if at not in away and item.concept not in ("STOP", "COMMA", "QUERY")})
    found: dict[str, Mention] = {}
    for match in theirs.find(_KIND_AND_MARK):
        one = _of_a_kind(row, match, used, language)
        if one is not None and kind in (None, one.kind):
            found.setdefault(one.mark, one)
    for match in theirs.find(_DRAWN_AS):
        mark = mark_text(row, *match.span("m"), language)
        if mark is not None and _named(row, match) and not used.intersection(range(*match.span("m"))):
            found.setdefault(mark, Mention(*match.span("m"), mark=mark, mark_at=match.span("m")))
    for span in article_marks.pointed_at(theirs, used) if language.code == "es" and not found else ():
        if not theirs.is_blank(span[0]) and (mark := mark_text(row, *span, language)) is not None:
            found.setdefault(mark, Mention(*span, mark=mark, mark_at=span))
    if not found:
        return bare_marks(theirs, used, language)
    return list(found.values()) if len(found) == 1 else []


def _no_order(row: Row, at: int, why: dict[int, str]) -> bool:
    """ "Remember that hole in twelve?", "the stuff everybody's always grabbing": nobody is told to do anything."""
    first = at
    while first > 0 and why.get(first - 1) == "reminder":
        first -= 1
    last = at
    while last < len(row.items) - 1 and row.items[last].concept not in ("STOP", "QUERY"):
        last += 1
    said = row.words(first, first + 1).lower()
    return said == "always" or (said == "remember" and row.items[last].concept == "QUERY")
