"""Pieces that are named by a number alone where a sentence leads to them: "the return elbow is 141", "… On 13 the roll ran out", "with 37 I forgot"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.marks import START, mark_text
from logbook.reading.clauses.mention import Mention, mention_at
from logbook.reading.names.no_marks import angle_not_mark
from logbook.reading.words.phrasing import words_of

_IS = f"{START} (?:DET|THIS)? (?:SERVICE|SIZE|ROUND|WORD|FILLER|ANOTHER|THROAT|SQUARE){{0,3}} (?P<k>KIND) (?P<b>WORD (?:IT|THIS))? BE NUMBER? (?P<m>MARKED|NUM) (?=COMMA|STOP)"
_LED = f"{START} (?P<f>ON|OF|WITH|WORD OF) (?:DET|NUMBER|FITTING)? (?P<m>MARKED|NUM) (?=COMMA? (?:ME|IT|DET|THIS|NO|HAVE|FORGOT|NOT_DONE|ONLY|ALL|STAPLES|TAPE|VANES|FLAP|TABS|FILLER|TAPED|STAPLED))"
_SAID_OF = "(?:(?<=STOP)|(?<=AND)|(?<=BUT)|(?<=COMMA)) (?:FILLER|ONLY)? (?P<m>MARKED|NUM) (?=WILL|ME)"
_BUT = "(?:BUT|EXCEPT|ONLY) [^STOP QUERY NUM MARKED BUT EXCEPT]{1,10} (?:ON|OF|IN|OFF|WITH|FROM) (?:DET|NUMBER)? (?P<m>MARKED|NUM) (?=SEP|$|AND|FILLER|BUT)"
_DID = "(?P<f>FILLER|WORD|TAPED|STAPLED|LAID|HUNG) (?P<m>MARKED|NUM) (?=SEP|$|AND|BUT)"
_MEASURED = ("K_COLLAR", "K_HANGER", "K_REGISTER", "K_OFFSET")  # a number behind these is rather how wide or how far
_NO_MEASURE = 40  # inches
_COUNTS = 5  # below it "on 2" is a floor or counts, unless a piece of that number is spoken of


def led_in(row: Row, taken: set[int], made: list[Mention], language: Language) -> Iterator[Mention]:
    for match in row.find(_IS):  # "the reducer's 12, fourteen by ten to ten by ten", "elbow after it is 13"
        item = row.items[match.start("m")]
        measured = row.items[match.start("k")].concept in _MEASURED and item.concept == "NUM" and item.value.value < _NO_MEASURE
        if not measured and not angle_not_mark(row, match) and not taken.intersection(range(*match.span("m"))):
            yield mention_at(row, match, mark=mark_text(row, *match.span("m"), language))
    known = {mark for m in made for mark in (m.mark, *(one for one, _ in m.batch)) if mark is not None}
    for match in row.find(_LED) if known else ():
        item, mark = row.items[match.start("m")], mark_text(row, *match.span("m"), language)
        led = row.words(*match.span("f")).lower().split()[-1] in words_of("small.leads_to_piece")
        if led and mark is not None and (mark in known or item.concept == "MARKED" or item.value.value >= _COUNTS) and not taken.intersection(range(*match.span("m"))):
            yield mention_at(row, match, mark=mark)
    for match in row.find(_SAID_OF) if len(known) > 1 else ():
        mark = mark_text(row, *match.span("m"), language)
        if mark in known and len(mark) > 1 and not taken.intersection(range(*match.span("m"))):  # "12 and 13 are stapled. 13 I'll finish tomorrow"
            yield mention_at(row, match, mark=mark)
    for match in row.find(_BUT) if len(known) > 1 else ():
        mark = mark_text(row, *match.span("m"), language)
        if mark in known and not taken.intersection(range(*match.span("m"))):  # "50 through 53 are taped, but I ran out on 53"
            yield mention_at(row, match, mark=mark)
    for match in row.find(_DID) if len(known) > 1 else ():
        mark = mark_text(row, *match.span("m"), language)
        did = row.words(*match.span("f")).lower().split()[-1] in words_of("small.worked")
        if did and mark in known and len(mark) > 1 and not taken.intersection(range(*match.span("m"))):  # "… are taped, but it was forty degrees when I did 51"
            yield replace(mention_at(row, match, mark=mark), first=_clause_of(row, match.start(), made))


def _clause_of(row: Row, at: int, made: list[Mention]) -> int:
    """Where begins what is told of the piece that is named in "when I did 51": behind the stop or the "but", and behind the piece named before."""
    named = max((m.last for m in made if m.last <= at), default=0)
    first = at
    while first > named and row.items[first - 1].concept not in ("STOP", "QUERY", "BUT", "EXCEPT"):
        first -= 1
    return first if first > named or named == 0 else at
