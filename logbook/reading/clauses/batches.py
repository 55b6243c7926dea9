"""Several pieces named at once: "sections one through six", "fifteen, sixteen and seventeen are taped", "everything on 150 through 152", "86 87 88 straights"."""

from __future__ import annotations

import re
from collections.abc import Iterator

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.items import Item
from logbook.reading.clauses.marks import mark_text
from logbook.reading.words.phrasing import words_of

Marks = tuple[tuple[str, tuple[int, int]], ...]  # each with the items that say it

_M = "(?:NUM|MARKED)"
_LIST = f"(?P<list>{_M} (?:COMMA DET? {_M})* (?:COMMA)? AND DET? {_M})"
_RANGE = f"(?P<a>{_M}) (?:TO|THROUGH|THRU) DET? (?P<b>{_M})"


def _told_of_several(row: Row, match, ats: list[int]) -> bool:
    """Whether the words around a kind with a list are of several pieces: "straights 4 and 5", "hung elbow 4 and 5", "elbow 4 and 5, both"."""
    before, at = match.start() - 1, match.start("k")
    if not plural(row, at) and _counts_parts(row, match.end(), ats):
        return False
    if not plural(row, at) and match.end() < len(row.items) and row.items[match.end()].concept in ("BE", "HAVE", "FILLER") and before >= 0 and row.items[before].concept not in ("STOP", "COMMA", "QUERY") and row.words(match.end(), match.end() + 1).lower().split()[0] in words_of("small.one_is"):
        return False  # "no engrapé el recto 135 y el 136 va engrapado": told of the second alone
    acted = before >= 0 and row.items[before].concept in ("HUNG", "STAPLED", "TAPED", "RUBBED") and row.items[at].concept.startswith("K_")
    behind = [item.concept for item in row.items[match.end() : match.end() + 2]]
    return plural(row, at) or _counts_up(row, ats) or acted or behind[:1] == ["BOTH"] or behind[:1] in (["BE"], ["HUNG"]) and row.words(match.end(), match.end() + 1).lower().split()[0] in words_of("small.several_are") or behind[:1] in (["STAPLED"], ["TAPED"], ["HUNG"]) or behind == ["COMMA", "BOTH"] or _of_them(row, match.end()) or _whole_sentence(row, match, ats)


def _each_with_its_article(row: Row, match, ats: list[int]) -> bool:
    """ "Encinté la recta 4 y la 5", "le puse cinta al codo 4 y al 5", "no encinté la recta 4 ni la 5": an act is told before them, and of the second nothing by itself."""
    last = ats[-1]
    joins, leads = row.words(last - 2, last - 1).lower(), row.text[row.items[last - 2].end : row.items[last].start].lower().split()
    if tuple(leads) not in _ARTICLES or (joins not in ("ni", "y", "e")):
        return False
    behind = [item.concept for item in row.items[match.end() : match.end() + 2]]
    if behind[:1] == ["COMMA"] and behind[1:] != [] and behind[1] in ("NO", "NOT", "NOT_DONE", "FILLER", "WORD", "PENDING"):
        return False  # "encinté la recta 4 y la 5, no"
    first = row.sentence_start(match.start("k"))
    return any(row.items[at].concept in _ACTED for at in range(first, match.start("k")))


_ARTICLES = tuple(tuple(said.split()) for said in ("la", "el", "al", "a la", "a el", "en la", "en el", "de la", "del"))
_ACTED = ("STAPLED", "TAPED", "RUBBED", "HUNG", "TRIMMED", "WIPED", "PREHEATED", "TAPE_IT", "STAPLE", "RUB", "TRIM", "WIPE", "STAPLES", "TAPE", "VANES", "CLOSURE", "TABS", "REPAIRED")


def _counts_parts(row: Row, behind: int, ats: list[int]) -> bool:
    """ "Taped straight 12 and two corners are open", "… and one of the tabs is up": so many parts, and no second piece."""
    ahead, at = row.items[behind].concept if behind < len(row.items) else "", ats[-1]
    if row.items[at].concept != "NUM" or row.items[at].value.value > 4:
        return False
    spelled = row.words(at, at + 1).isalpha() and not row.words(ats[0], ats[0] + 1).isalpha()  # "straight 12 and two spots": one in figures, one in letters
    return ahead in _COUNTED or spelled and ahead in ("WORD", "GENERIC", "FITTING")


_COUNTED = frozenset("JOINT END SIDE_WORD SIDE STAPLES TABS VANES SCREWS OF ONE_SIDE PANEL K_HANGER DAMAGE GAP TAPE BACK".split())


def _whole_sentence(row: Row, match, ats: list[int]) -> bool:
    """ "Straight 20 and 21. Both taped.": nothing but the two of them up to the stop."""
    first, concepts = row.sentence_start(match.start("k")), [row.items[at].concept for at in ats]
    leads = {item.concept for item in row.items[first : match.start("k")]}
    turns = row.items[match.start("k")].concept in ("K_ELBOW", "K_WYE") and any(row.items[at].value.value in (90, 45, 30, 60) for at in ats if row.items[at].concept == "NUM")
    return len(ats) == 2 and concepts[0] == concepts[1] and not turns and leads <= _LEADS and (match.end() == len(row.items) or row.items[match.end()].concept == "STOP")


_LEADS = frozenset("FILLER DET I HAVE AND BUT COMMA ANOTHER BUILT HUNG NOW SO".split())


def _of_them(row: Row, first: int) -> bool:
    """ "el recto 3 y el 4, doce por ocho, engrapados": a form that is said only of several."""
    last = next((k for k in range(first, len(row.items)) if row.items[k].concept in ("STOP", "QUERY", "BUT", "EXCEPT") or row.items[k].concept.startswith("K_")), len(row.items))
    return any(item.concept in ("STAPLED", "TAPED", "RUBBED", "HUNG") and row.text[item.start : item.end].lower().endswith(("ados", "adas")) for item in row.items[first:last])


def _next_to_each_other(row: Row, match, ats: list[int]) -> bool:
    """ "86 87 88 straights": each the next, of a kind in the plural."""
    values = [row.items[at].value.value for at in ats if row.items[at].concept == "NUM"]
    return len(values) == len(ats) and all(b == a + 1 for a, b in zip(values, values[1:])) and plural(row, match.start("k"))


def _of_all(row: Row, match, ats: list[int]) -> bool:
    """ "Everything on 150 through 152", "I'm on four and five": of pieces, not of floors or streets."""
    return row.words(*match.span("f")).lower() in ("on", "of", "at", "for", "en", "para", "de")


def _worked_on(row: Row, match, ats: list[int]) -> bool:
    """ "Did 73 and 74 together": pieces, where "used two and three" counts."""
    return row.words(*match.span("f")).lower().split()[-1] in words_of("small.worked")


# pattern with the marks in group `list` or from `a` to `b`, and what else must hold
SAID_OF_SEVERAL: tuple[tuple[str, object], ...] = (
    (f"(?P<k>KIND|FITTING) NUMBER? (?P<mixed>{_M} (?:(?:COMMA|AND|THRU|THROUGH|TO){{1,2}} DET? {_M})+) (?!BY|LONG|APART|THRU|THROUGH|KIND|DEG|SIDE_WORD)", lambda row, match, ats: plural(row, match.start("k"))),
    (f"(?P<k>KIND|FITTING|NUMBER) (?:NUMBER|FITTING)? (?:OF|FROM|OFF)? DET? {_RANGE} (?!BY|LONG)", None),
    (f"(?P<k>KIND|FITTING) (?:NUMBER|FITTING|COMMA)? (?P<list>{_M} (?:(?:COMMA|AND)? DET? {_M})* (?:COMMA)? AND DET? (?:NUMBER|FITTING)? {_M}) (?!BY|LONG)", _told_of_several),
    (f"(?P<k>KIND) NUMBER? (?P<list>{_M} (?:AND|NOT) (?:DET|ON|THRU) {_M}) (?=SEP|$|WITH|EVERY|AND)", _each_with_its_article),
    (r"(?P<k>KIND) NUMBER? (?P<list>LETTER (?:COMMA LETTER)* COMMA? AND LETTER) (?=SEP|$|BE|ON|RUN|STAPLED|TAPED)", lambda row, match, ats: plural(row, match.start("k"))),
    (f"(?P<k>KIND|FITTING) (?:NUMBER|FITTING|COMMA)? (?P<list>{_M} (?:COMMA {_M})+) (?=COMMA|STOP|$|BE|STAPLED|TAPED) (?!COMMA {_M} BY)", lambda row, match, ats: plural(row, match.start("k")) or _counts_up(row, ats)),
    (f"(?P<k>KIND) COMMA (?P<list>{_M} (?:COMMA? {_M})* COMMA? AND {_M}) (?=SEP|$|BE|STAPLED|TAPED)", lambda row, match, ats: plural(row, match.start("k"))),
    (f"(?P<k>KIND) (?:FILLER|THIS|TIMES|DET|ON|RUN|NUM|WORD|LATER|HUNG|COUNTED|BE|STAPLED|TAPED|RUBBED|AND|SIZE){{0,6}} COMMA {_LIST} (?=SEP|$)", lambda row, match, ats: plural(row, match.start("k"))),
    (f"(?:^|(?<=SEP)|(?<=BUT)) (?:FILLER|DET|ONLY|BOTH){{0,3}} {_LIST} (?=(?:ON RUN NUM)? (?:COMMA)? (?:FILLER|BOTH)? (?:BE|HAVE|HAVING|HUNG|STAPLED|TAPED|NOT|BOTH|NEED|PENDING|NOT_DONE|MISSING|FORGOT|LEAVES|TIED|NO (?!NUM))|FILLER KIND|COMMA (?:SIZE|BOTH|FILLER){{0,2}} KIND)", None),
    (f"(?:^|(?<=SEP)) (?:FILLER|DET|ONLY){{0,3}} {_LIST} (?=COMMA DET? (?P<p>WORD) OF (?P<k>KIND))", lambda row, match, ats: row.words(*match.span("p")).lower() in words_of("small.pair")),  # "74 and 75, couple of straights"
    (f"(?:^|(?<=SEP)) (?:FILLER|DET|ONLY){{0,3}} {_LIST} (?=COMMA DET? (?P<p>WORD|ANOTHER))", lambda row, match, ats: row.words(*match.span("p")).lower().split()[0] in words_of("small.first_of_them")),  # "44 and 45: the first is stapled"
    (f"(?:^|(?<=SEP)) (?P<f>(?:FILLER|I|AND|ANOTHER|WORD){{1,4}}) {_LIST} (?=COMMA BOTH)", _worked_on),
    (f"(?:^|(?<=SEP)) (?:FILLER|DET|FROM|BE){{0,3}} {_RANGE} (?=COMMA? (?:FILL|BOTH|SIZE|COMMA){{0,4}} (?:KIND|STAPLED|TAPED|HUNG|RUBBED))", None),
    (f"(?:^|(?<=SEP)) (?:FILLER|I){{1,3}} {_LIST} (?=FILLER{{0,2}} COMMA (?:BOTH|ALL|FILL){{0,2}} (?:KIND|STAPLED|TAPED))", None),
    (f"(?:^|(?<=SEP)) (?P<f>(?:FILLER|I|AND|ANOTHER){{1,4}}) {_LIST} (?=(?:WORD|FILLER|LATER|ON RUN NUM){{0,3}} (?:SEP|$))", _worked_on),
    (f"(?:^|(?<=SEP)) (?:FILLER|DET|AND){{0,3}} {_LIST} (?=COMMA? (?:FILL|BE|ONLY){{0,2}} (?:SAME_THING|SAME_AS))", None),
    (f"(?:STAPLES|TAPE|CLOSURE|MARK181|C_MASTIC|VANES|TABS) (?P<f>ON|IN) DET? (?P<list>{_M} (?:COMMA DET? {_M})+ COMMA? AND DET? {_M}) (?=SEP|$)", None),  # "three-eighths staples on 7, 8 and 9"
    (f"VANES (?P<f>IN) DET? {_LIST} (?=SEP|$|BUT|EXCEPT)", None),
    (f"(?:(?<=STAPLES)|(?<=TAPE)|(?<=CLOSURE)|(?<=MARK181)|(?<=TABS)|(?<=FLAP)|(?<=LEG)|(?<=VANES)|(?<=MISSING)) (?P<f>ON|IN|OF) (?:BOTH|DET){{0,2}} {_LIST} (?=SEP|$|BUT|EXCEPT)", lambda row, match, ats: _of_all(row, match, ats) and all(row.items[at].concept == "MARKED" or row.items[at].value.value >= 5 for at in ats)),  # "half-inch staples on 109 and 110"
    (f"ALL_THAT (?P<f>FROM) DET? {_RANGE} (?=BE|HUNG|COMMA|STAPLED|TAPED|RUBBED|$)", None),
    (f"NUMBER (?P<a>{_M}) (?:TO|THROUGH|THRU) NUMBER (?P<b>{_M}) (?!BY|LONG)", None),
    (f"(?P<k>KIND) COMMA {_RANGE} (?=COMMA|BE|STOP|$)", None),
    (f"(?:STAPLED|TAPED|RUBBED|HUNG) (?:FILLER|UP|DET){{0,2}} {_LIST} (?=SEP|$|FILLER|ON RUN|BUT|EXCEPT)", None),
    (f"(?:STAPLED|TAPED|RUBBED|HUNG) (?:FILLER|UP|DET|AND|STAPLED|TAPED|RUBBED){{0,4}} (?P<a>{_M}) (?:THROUGH|THRU) DET? (?P<b>{_M}) (?=SEP|$|FILLER|ON RUN|BOTH|ALL)", None),
    (f"{_LIST} (?=(?:FILLER|COMMA){{0,3}} (?:BOTH|ALL|COUNT|NUM) (?:FILL|SIZE){{0,2}} (?P<k>KIND))", lambda row, match, ats: plural(row, match.start("k"))),
    (f"(?P<list>{_M} (?:COMMA? {_M})+) COMMA? SIZE? (?P<k>KIND) (?=SIZE|COMMA|STOP|$|ALL|STAPLED|TAPED|BE)", _next_to_each_other),
    (f"(?:ALL_THAT|ALL|BOTH|FITTING|I|^|(?<=SEP)) (?:FILLER|DET|WORD){{0,2}} (?P<f>ON|OF) DET? {_RANGE} (?=BE|HAVE|COMMA|STOP|FILLER|STAPLED|TAPED|HUNG|RUBBED|$)", _of_all),
    (f"(?:(?<=SEP)|^|(?<=AND)) (?:FILLER|ME|BE){{0,2}} (?P<f>ON) DET? {_LIST} (?=COMMA? (?:BOTH|ALL|EACH)|COMMA (?:SIZE|KIND))", _of_all),
)


def batches(row: Row, taken: set[int], language: Language) -> Iterator[tuple[re.Match[str], Marks]]:
    """Every place where several pieces are named, with their marks."""
    for pattern, fits in SAID_OF_SEVERAL:
        for match in row.find(pattern):
            if "mixed" in match.re.groupindex:
                marks = _mixed(row, match, language)
                if marks and fits(row, match, []) and not taken.intersection(range(*match.span("mixed"))):
                    yield match, marks
            elif "list" in match.re.groupindex:
                ats = [at for at in range(*match.span("list")) if row.items[at].concept in ("NUM", "MARKED", "LETTER")]
                if (fits is None or fits(row, match, ats)) and not taken.intersection(ats):
                    yield match, tuple((mark_text(row, at, at + 1, language), (at, at + 1)) for at in ats)
            elif not taken.intersection(range(*match.span("a"))) and (fits is None or fits(row, match, [])):
                marks = _between(row, match)
                if marks:
                    yield match, marks


def _mixed(row: Row, match, language: Language) -> Marks:
    """ "4 and 5-8": single numbers and ranges in one list; nothing where it is only the one or the other."""
    marks: list[tuple[str, tuple[int, int]]] = []
    ranges, at, last = 0, match.start("mixed"), match.end("mixed")
    ats = [k for k in range(at, last) if row.items[k].concept in ("NUM", "MARKED")]
    place = 0
    while place < len(ats):
        one = ats[place]
        between = [item.concept for item in row.items[one + 1 : ats[place + 1]]] if place + 1 < len(ats) else []
        if between and between[0] in ("THRU", "THROUGH", "TO"):
            several = up_to(row.items[one], row.items[ats[place + 1]], (one, ats[place + 1] + 1))
            if not several:
                return ()
            marks += several
            ranges, place = ranges + 1, place + 2
            continue
        mark = mark_text(row, one, one + 1, language)
        if mark is None or mark in ("90", "45"):  # a turn
            return ()
        marks.append((mark, (one, one + 1)))
        place += 1
    return tuple(marks) if ranges and len(ats) > 2 * ranges else ()


def _between(row: Row, match) -> Marks:
    """ "sections one through six", "B-12 through B-14": every mark between, where both begin alike."""
    low, high = (row.items[match.start(group)] for group in ("a", "b"))
    ranged = match.start() > 0 and row.items[match.start() - 1].concept == "FROM"  # "del recto treinta al treinta y dos"
    through = any(item.concept in ("THRU", "THROUGH") for item in row.items[match.end("a") : match.start("b")])  # "section one through three"
    if "k" in match.re.groupindex and not plural(row, match.start("k")) and not ranged and not through:
        return ()
    return up_to(low, high, (match.start("a"), match.end("b")))


def up_to(low: Item, high: Item, span: tuple[int, int]) -> Marks:
    """Every mark from the first to the last, where both begin alike and they are no more than forty apart."""
    if low.concept != high.concept:
        return ()
    before = ""
    if low.concept == "MARKED":
        cut = [item.value.rstrip("0123456789") for item in (low, high)]
        if cut[0] != cut[1] or any(item.value == cut[0] for item in (low, high)):
            return ()
        before = cut[0]
        a, b = (int(item.value[len(before) :]) for item in (low, high))
    else:
        a, b = low.value.value, high.value.value
        if a.denominator != 1 or b.denominator != 1:
            return ()
    if not a < b <= a + 40:
        return ()
    return tuple((f"{before}{n}", span) for n in range(int(a), int(b) + 1))


def _counts_up(row: Row, ats: list[int]) -> bool:
    """ "fitting 12, 13 and 14": three or more, each the next."""
    if any(row.items[at].concept != "NUM" for at in ats):
        return True
    values = [row.items[at].value.value for at in ats]
    return len(values) > 2 and all(b == a + 1 for a, b in zip(values, values[1:]))


def plural(row: Row, at: int) -> bool:
    item = row.items[at]
    if [one.concept for one in row.items[max(0, at - 3) : at]] == ["K_ELBOW", "OF", "NUM"]:  # "codo de tres piezas número siete": what it is made of
        return False
    return re.search(r"(?<!iu)s\b", row.text[item.start : item.end].lower()) is not None
