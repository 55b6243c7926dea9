"""Where a piece is, in the speaker's words; and which pieces it was closed to."""

from __future__ import annotations

import re

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.items import WHOLE
from logbook.reading.clauses.marks import MARK, mark_text
from logbook.reading.words.phrasing import words_of

_STOPS = ("COMMA", "STOP", "QUERY", "KIND", "SIZE", "TAPED", "STAPLED", "RUBBED", "AND", "BUT", "RUN", "FITTING", "STAPLES", "TAPE")
_MOST = 6


def places(row: Row, language: Language) -> list[Claim]:
    made = _risers(row, language)
    done = max((one.last - 1 for one in made), default=-1)
    for match in row.find("HUNG IT? (?P<w>OUTSIDE) (?=SEP|$)"):  # "hung it outside"
        made.append(claim(row, "place", row.words(*match.span("w")), *match.span("w")))
    for at, item in enumerate(row.items):
        room = item.concept == "ROOM" and row.words(at, at + 1).lower() in words_of("small.numbered_rooms") and at + 1 < len(row.items) and row.items[at + 1].concept == "COUNT" and [one.concept for one in row.items[at + 2 : at + 3]] != ["COUNTED"]  # "since four o'clock"
        if not (item.concept == "PLACE_NOUN" or room) or at <= done or row.is_blank(at):
            continue
        if item.value == WHOLE:
            if not _denied(row, at):
                done, first = _whole(row, at) - 1, _kept_before(row, at)
                made.append(claim(row, "place", row.words(first, done + 1), first, done + 1))
                if done + 1 < len(row.items) and row.items[done + 1].concept == "COMMA":
                    done = row.sentence_end(done)  # "goes in the ground, below the floor": what bars it is told first
            continue
        first = at
        start = None
        while first > 0 and at - first < _MOST:
            before = row.items[first - 1]
            words = row.text[before.start : before.end].lower()
            last_word = words.split()[-1]
            if words in words_of("small.kept") or last_word in words_of("small.kept"):
                start, first = before.start, first - 1
                break
            if words in words_of("small.led") or before.concept == "ON" or _it_is_in(row, first - 1):
                break
            if before.concept in _STOPS or before.concept.startswith("K_") or before.concept in ("NUM", "LEN", "BE", "HAVE", "I", "OF", "HUNG") and first != at:
                break
            first -= 1
        last = at + 1
        while last < len(row.items) and (row.items[last].concept in ("NUM", "COUNT", "PLACE_NOUN") or (row.items[last].concept in ("OF", "DET") and last + 1 < len(row.items) and row.items[last + 1].concept in ("PLACE_NOUN", "DET"))):
            last += 1
        led = first > 0 and not _leads_there(row, first - 1) and (row.items[first - 1].concept == "ON" or _it_is_in(row, first - 1) or row.text[row.items[first - 1].start : row.items[first - 1].end].lower() in words_of("small.led"))
        while start is None and first < at and row.items[first].concept in ("DET", "THIS"):
            first += 1
        if start is None and not led or first > 1 and row.items[first - 1].concept in ("ON", "DET") and _none_there(row, first):
            continue
        one = claim(row, "place", row.words(first, last), first, last)
        made.append(one)
        done = last
    return made


def _denied(row: Row, at: int) -> bool:
    """ "No va enterrada", "it isn't going outdoors"."""
    first = at - 1
    while first > 0 and row.items[first].concept in ("BE", "HUNG", "MOVE", "GOING_TO"):
        first -= 1
    return first >= 0 and row.items[first].concept == "NOT"


def _it_is_in(row: Row, at: int) -> bool:
    """ "Elbow 51 is in the mechanical room"."""
    return row.items[at].concept == "IN_PLACE" and at > 0 and row.items[at - 1].concept in ("NUM", "MARKED", "LETTER") and row.words(at, at + 1).lower() in words_of("small.is_in")


def _none_there(row: Row, first: int) -> bool:
    """ "Porque no había en la bodega": where there was none of it, and not where the piece is."""
    at = first - 1
    while at > 0 and row.items[at].concept in ("ON", "DET"):
        at -= 1
    return row.items[at].concept == "NO" and " " in row.words(at, at + 1)


def _kept_before(row: Row, at: int) -> int:
    """ "above the kitchen hood" is not the hood's own duct."""
    before = at - 1
    while before >= 0 and row.items[before].concept == "DET":
        before -= 1
    if before > 0 and row.items[before].concept == "TO" and row.words(before - 1, before).lower() in words_of("small.close_to"):
        return before - 1  # "next to the fan room"
    return before if before >= 0 and row.words(before, before + 1).lower() in words_of("small.kept") else at


def _risers(row: Row, language: Language) -> list[Claim]:
    """ "part of a riser that climbs three stories": how many it passes belongs to the place."""
    if not language.storeys or not any(item.concept in ("PLACE_NOUN", "COUNTED") for item in row.items):
        return []
    match = re.search(rf"\b(?:{language.storeys})", row.text.lower())
    if match is None:
        return []
    first, last = row.within(0, len(row.items), match, 0)
    said = row.words(first, last)
    if language.bare_names.name:
        said = re.sub(rf"\b{language.bare_names.name} (?=\d)", "", said)  # nobody said "piece": "Riser 88 … goes up four stories"
    return [claim(row, "place", said, first, last, hedged=False)] if not any(row.is_blank(at) for at in range(first, last)) else []


def _leads_there(row: Row, at: int) -> bool:
    """ "runs up to the roof": where it leads to, not where it is."""
    said = row.words(max(0, at - 1), at + 1).lower().split()
    return said[-1:] == ["to"] and (row.items[at].concept == "TO" or said[-2:-1] in (["up"], ["down"], ["out"], ["over"], ["back"]))


def _whole(row: Row, at: int) -> int:
    """The end of a place that needs no other word, with the nearer place said right after it."""
    for last in range(at + 1, min(at + _MOST, len(row.items))):
        concept = row.items[last].concept
        if concept == "PLACE_NOUN":
            return last + 1
        if concept in _STOPS:
            break
    return at + 1


_TIES = re.compile(r"\b(?:amarrad|unid|pegad|colgad|conectad|empatad|juntad|montad|colgu|colgam|arriba|enganchad|embonad|ensamblad|acoplad)")


def _tied(row: Row, at: int) -> bool:
    """Whether the piece was tied in the same breath: "a la veintiuno" is then another piece."""
    return _TIES.search(row.words(max(0, at - 12), at + 1).lower()) is not None


def of_the_joined(row: Row) -> set[int]:
    """ "tied into 27, which is a twelve by eight": the size is the other piece's; its own note says it."""
    found = row.find(f"(?:TIED|HUNG|TO|TAPED|STAPLED) (?:DET|FITTING|NUMBER|KIND){{0,3}} {MARK} COMMA? (?P<f>FILLER|THIS BE?) (?:FILLER|DET|HEDGE){{0,2}} (?P<s>SIZE) (?!TO)")
    return {match.start("s") for match in found if row.words(match.start("f"), match.start("f") + 1).lower().split()[0] in ("which", "that's", "that")}


_LED = "(?:DET|FITTING|NUMBER|KIND){0,2}"
_BESIDE = f"(?P<m>MARKED|NUM) (?P<w>(?P<to>TO|AND|WORD|WITH) {_LED} (?P<m2>MARKED|NUM)) (?!BY|LONG|WIDE|HIGH|TO|THRU|THROUGH)"
_JOINED = f"(?P<v>TAPED|STAPLED|SEALED|HUNG|TIED|WORD) {_LED} {_BESIDE}"  # "joined fifteen to sixteen"
_BETWEEN = f"(?P<j>JOINT)? (?P<b>WORD|FROM) {_LED} {_BESIDE}"  # "the joint between 22 and 23"
_NEXT_TO = f"(?:^|(?<=SEP)|(?<=AND)|(?<=BUT)|(?P<j>JOINT) (?:FROM|OF|ON|COMMA)) (?:FILLER|DET){{0,2}} {_BESIDE} (?=BE|NOT|HAVE|NO|NOT_DONE|PENDING|TIGHT|COMMA (?:GAP|NO|NOT|TIGHT))"  # "22 to 23 has a gap"
_NOT_CLOSED = ("NOT", "NO", "NOT_DONE", "PENDING", "GAP", "NEED", "FORGOT", "MISSING", "WILL", "GOING_TO", "LATER", "IF")


def joints(row: Row, language: Language) -> list[tuple[int, tuple[int, int], str, tuple[int, int], bool]]:
    """Where two pieces are named by the joint between them: its first item, the one it is told of, the other's mark, the items that name the other, and whether it is said closed."""
    made: list[tuple[int, tuple[int, int], str, tuple[int, int], bool]] = []
    for pattern, said in ((_JOINED, "small.joins"), (_BETWEEN, "small.between"), (_NEXT_TO, "")):
        for match in row.find(pattern):
            one, other = (mark_text(row, *match.span(group), language) for group in ("m", "m2"))
            to, next_to = row.words(*match.span("to")).lower(), _next_to(one, other)
            if one is None or other is None or one == other or any(span[0] <= match.start("m") < span[1] or at == match.start("m") for _, (at, _), _, span, _ in made):
                continue
            if pattern is _JOINED and (row.words(*match.span("v")).lower() not in words_of(said) or to not in words_of("small.onto") or row.items[match.start("v")].concept in ("TAPED", "STAPLED") and not next_to):
                continue
            told = any(item.concept in _OF_A_JOINT for item in row.items[match.end() : row.sentence_end(match.end())])
            if pattern is _BETWEEN and (row.words(*match.span("b")).lower() not in words_of(said) or to not in ("and", "y", "to") or any(item.concept.startswith("K_") for item in row.items[match.start() : match.end()]) or match.start("j") < 0 and not (told or any(item.concept in _OF_A_JOINT for item in row.items[row.sentence_start(match.start()) : match.start()]))):
                continue
            if pattern is _NEXT_TO and (to not in words_of("small.onto") or not next_to or not told or match.end() < len(row.items) and row.words(match.end(), match.end() + 1).lower() in words_of("small.several_are")):
                continue
            stop = min((at for at in range(match.end(), len(row.items)) if row.items[at].concept in ("STOP", "QUERY", "BUT")), default=len(row.items))
            begin = row.sentence_start(match.start())
            open_ = any(item.concept in _NOT_CLOSED for item in row.items[begin:stop])
            done = pattern is _JOINED or any(item.concept in ("TAPED", "SEALED", "TIED", "TAPE") for item in row.items[begin:stop])
            made.append((match.start(), match.span("m"), other, match.span("w"), done and not open_))
    return made


_OF_A_JOINT = ("TAPED", "SEALED", "TIED", "TAPE", "GAP", "TIGHT", "JOINT", "NOT_DONE", "STAPLED", "STAPLES", "C_MASTIC", "LEN", "FRAC")


def _next_to(one: str | None, other: str | None) -> bool:
    """Whether a piece's number is right beside the other's, so that "22 to 23" is their joint and no list of pieces."""
    numbers = [re.sub(r"^\D+", "", mark or "") for mark in (one, other)]
    return not all(number.isdigit() for number in numbers) or int(numbers[1]) - int(numbers[0]) <= 1


def joins(row: Row, taken: set[int], language: Language) -> list[Claim]:
    """ "tied in and taped to six", "tied into seventeen and nineteen" """
    made: list[Claim] = []
    for _, _, other, span, closed in joints(row, language):
        taken.update(range(*span))
        if closed:
            made.append(claim(row, "joined_to", (other,), *span, uses=tuple(range(*span))))
    one_mark = f"(?:DET|FITTING|NUMBER|KIND|SIDE_WORD|FILLER){{0,3}} {MARK}"
    for match in row.find(f"(?P<w>(?P<t>TIED|HUNG) (?:TO|ON|IN|WITH|FILLER){{0,2}} (?P<marks>{one_mark} (?:(?:COMMA|AND){{1,2}} {one_mark})*)) (?!BY (?!ME)|WIDE|SIDE_WORD)"):
        if row.items[match.start("t")].concept == "HUNG" and not row.words(match.start("t"), match.start("t") + 1).lower().endswith(("tied in", "connected", "joined")):
            continue
        marks = []
        for part in row.find(MARK, *match.span("marks")):
            first, last = part.span()
            if not taken.intersection(range(first, last)):
                value = mark_text(row, first, last, language)
                if value is not None:
                    marks.append(value)
        if marks:
            taken.update(range(*match.span("w")))
            made.append(claim(row, "joined_to", tuple(marks), *match.span("w"), uses=tuple(range(*match.span("w")))))
    for match in row.find("(?:TAPED|STAPLED|HUNG|IN_PLACE) (?P<w>(?:WITH|TO|THRU|ON) DET? (?:KIND|FITTING|NUMBER)? (?P<m>MARKED|NUM)) (?=SEP|$|AND (?!NUM))"):  # "colgada y encintada con la veintidós", "amarrado y encintado al noventa"
        if row.items[match.start()].concept == "IN_PLACE" and _TIES.search(row.words(match.start(), match.start() + 1).lower()) is None:
            continue  # "quedó pegado con el 17"
        said = row.words(match.start("w"), match.start("m")).lower().split()
        to = row.items[match.start("w")].concept == "WITH" or row.text[: row.items[match.start("m")].start].lower().rstrip().endswith((" a la", " al", " a el")) and _tied(row, match.start())
        pointed = to and said[-1:] in (["la"], ["el"], ["al"]) or to and row.items[match.start("m") - 1].concept in ("FITTING", "NUMBER")
        if pointed and match.start("m") not in taken and (value := mark_text(row, *match.span("m"), language)) is not None:
            taken.update(range(*match.span("w")))
            made.append(claim(row, "joined_to", (value,), *match.span("w"), uses=tuple(range(*match.span("w")))))
    return made
