"""One piece of several told from the others by its number alone: "five I rubbed, six I didn't", "scrim shows on seven, on eight it doesn't"."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.grammar import Row
from logbook.reading.headings import Mention
from logbook.reading.marks import mark_text

_AHEAD = (
    "(?:^|(?<=SEP)|(?<=AND)|(?<=BUT)) (?:FILLER|AND|BUT|ON|OF|IN|NUMBER|FITTING|DET){0,3} (?P<m>NUM|MARKED) COMMA?"
    " (?=ME|EVERY|IT|HAVE|DET|STAPLED|TAPED|RUBBED|WIPED|TRIMMED|PREHEATED|NOT|NO|BE|SCRIM|TABS|STAPLES|TAPE|VANES|VOID|WORD) (?!BE? (?:NUM|LEN|FRAC|DEG|BY) (?:SEP|$|BY))"
)
_BEHIND = "(?:^|(?<=SEP)|(?<=AND)|(?<=BUT)) (?P<c>(?:[^STOP QUERY COMMA AND BUT]){0,6} (?:SHOWS|TAPED|RUBBED|WIPED|TRIMMED|VANES|TABS|TAPE|STAPLES|IN_PLACE|IN|NOT|NO) (?:ON|IN|OF)|MISSING) (?P<m>NUM|MARKED) (?=SEP|$|BUT|AND (?:NOT|NO))"


def with_each(row: Row, named: list[Mention], language: Language) -> list[Mention]:
    """The mentions, with those of a number alone that is the mark of a piece named before among several."""
    known = {mark for one in named for mark, _ in one.batch} | {one.mark for one in named if one.mark is not None}
    if len(known) < 2:
        return named
    spoken = {at for one in named for at in range(one.first, one.last)}
    made = list(named)
    for pattern in (_AHEAD, _BEHIND):
        for match in row.find(pattern):
            span = match.span("m")
            mark = mark_text(row, *span, language)
            before = any(one.first < span[0] and (one.mark == mark or any(m == mark for m, _ in one.batch)) for one in named)
            if mark in known and before and not spoken & set(range(*span)):
                first = match.start("c") if "c" in match.re.groupindex else span[0]
                made.append(Mention(first, span[1], mark=mark, mark_at=span))
                spoken.update(range(*span))
    return sorted(made, key=lambda m: m.first)
