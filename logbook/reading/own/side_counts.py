"""On how many sides an act was done, wherever in its sentence the count stands: "three sides got their tape", "two sides is what it got".

A count is of the act in its own words, else of the act last named in the sentence; a count that is denied counts nothing.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.likely import Likely
from logbook.reading.clauses.parts import Part
from logbook.reading.words.phrasing import word, words_of

_ACTS = {"STAPLED": "stapled", "STAPLES": "stapled", "STAPLE": "stapled", "TAPED": "taped", "TAPE": "taped", "TAPE_IT": "taped", "CLOSURE": "taped", "MARK181": "taped", "RUBBED": "rubbed_down", "RUB": "rubbed_down", "WIPED": "surface_clean", "WIPE": "surface_clean"}
_ALL_OR_NONE = ("rubbed_down", "surface_clean")
_OF_THE_SHAPE = ("LEVEL", "FLAT", "SHIPLAP", "BUTT", "MOVE_IN", "MOVE_OUT", "MOVE_DOWN", "MOVE_UP", "FEMALE", "MALE", "LEN", "SIDE")


def counts(row: Row, own: Row, cut_up: tuple[Part, ...], language: Language) -> tuple[list[Claim], set[int]]:
    """The counts, and the items that are numbers of sides and no piece's."""
    made: list[Claim] = []
    spent: set[int] = set()
    if not language.acts.sides:
        return made, spent
    of_four = frozenset(_of_four(row))
    if not of_four and not any(item.concept in ("SIDE_WORD", "ONE_SIDE", "SIDES_ALL", "ALL", "JOINT", "K_END_CAP") for item in row.items):
        return made, spent
    before: list[str] = []
    done: dict[str, int] = {}
    sentence, sided = -1, -9
    for place, part in enumerate(cut_up):
        if part.sentence != sentence:
            sentence, before, done = part.sentence, [], {}
        if own.is_blank(part.first) and own.is_blank(part.last - 1):
            continue
        here = list(dict.fromkeys(_ACTS[row.items[at].concept] for at in range(part.first, part.last) if row.items[at].concept in _ACTS and not own.is_blank(at)))
        found = _count(part.words, language, sided >= place - 2)
        sided = place if re.search(language.acts.a_side, part.words) else sided
        if found is not None and not _shape(row, part, bool(here)):
            number, more, match = found
            sided = place
            first, last = row.within(part.first, part.last, match)
            if match.groupdict().get("on") is not None:  # past the act and the piece, the count alone
                first = next(at for at in range(first, last) if row.items[at].end > row.items[part.first].start + match.start("on"))
            spent.update(at for at in range(first, last) if row.items[at].concept in ("NUM", "FRAC", "LEN"))
            acts = _nearest(row, part, first, last) or before[-1:] or _next(row, cut_up, place)
            said = bool(here) or re.search(language.acts.stands_for_act, part.words) is not None or bool(before or acts) and (match.end() - match.start() == len(part.words.strip()) or more and word(language.code, "told.at_another_time").fullmatch(part.words[match.end() :].strip()) is not None)
            to_come = more and re.search(language.acts.side_to_come, part.words) is not None
            if acts and said and not to_come and not _denied(part.words, match, language):
                corrects = match.groupdict().get("minus") is not None
                for act in acts:
                    had = done.get(act, 0) if more else 0  # "two sides had staples on Friday, the other two have them now"
                    made = [c for c in made if not (had and c.name == (act if act in _ALL_OR_NONE else f"sides_{act}"))]
                    made += _of(row, act, min(4, number + had), first, last, corrects=corrects or bool(had))
                    done[act] = number
        before += here
    for act, number, first, last in _the_same_way(row, own):
        made += _of(row, act, number, first, last, corrects=False)
        spent.update(range(first, last))
    for act, number, first, last in _set_right(row, own):
        made += _of(row, act, number, first, last, corrects=True)
        spent.update(range(first, last))
    return made, spent


def _of_four(row: Row) -> Iterator[int]:
    """ "Taped three of four on straight nine": of sides, as a piece has four, where nothing that is counted stands behind."""
    for match in row.find("(?P<n>NUM) (?:OF|FROM) (?P<all>NUM) (?=SEP|$|AND|BUT|ON|OF|IN|STAPLED|TAPED|RUBBED|BE|HAVE)"):
        if row.items[match.start("all")].value.value == 4 and row.items[match.start("n")].value.value in (1, 2, 3):
            yield match.start("n")


def _set_right(row: Row, own: Row) -> Iterator[tuple[str, int, int, int]]:
    """ "Taped three sides, wait no, all four": the count of the same act."""
    for match in row.find("NOT (?:DET|ONLY|ALL|FILLER){0,2} (?P<o>NUM) SIDE_WORD (?:[^STOP QUERY COMMA]){0,12} COMMA (?:BUT|BE|IT|FILLER|THIS){1,3} ALL? (?P<n>NUM) SIDE_WORD? (?=SEP|$)"):
        at, number = match.start("n"), row.items[match.start("n")].value.value
        act = next((k for k in range(match.start("o"), at) if row.items[k].concept in _ACTS), None)
        if act is not None and number in (1, 2, 3, 4) and not own.is_blank(act):  # "it isn't four sides that's taped, it's three"
            yield _ACTS[row.items[act].concept], int(number), at, at + 1
    for match in row.find("(?P<a>STAPLES|TAPE|STAPLED|TAPED) (?:[^STOP QUERY COMMA]){0,8} (?:STOP|COMMA|AND|BUT){1,2} (?P<w>FILLER) (?:IT|BE|HAVE|ON){1,3} ALL? (?P<n>NUM) SIDE_WORD? (?=SEP|$)"):
        at, number = match.start("n"), row.items[match.start("n")].value.value
        sided = re.search(r"\b(?:sides?|sided|lados?)\b", row.words(max(0, match.start() - 3), match.start("w")).lower())
        if sided and number in (1, 2, 3, 4) and not own.is_blank(at) and words_of("small.since").intersection(row.words(*match.span("w")).lower().split()):
            act = _ACTS[row.items[match.start("a")].concept]  # "three-sided staples this morning. Now it's four."
            yield act, int(number), at, at + 1
    for match in row.find("(?P<o>NUM) SIDE_WORD COMMA? (?P<f>FIX|NO|FIX COMMA? NO) COMMA? ALL? (?P<n>NUM) SIDE_WORD? (?=SEP|$)"):
        at, number = match.start("n"), row.items[match.start("n")].value.value
        act = next((k for k in range(match.start(), max(-1, match.start() - 5), -1) if row.items[k].concept in _ACTS), None)
        if act is not None and number in (1, 2, 3, 4) and not own.is_blank(act):
            yield _ACTS[row.items[act].concept], int(number), at, at + 1


def _of(row: Row, act: str, number: int, first: int, last: int, corrects: bool) -> list[Claim]:
    """So many sides of an act. Of a rubbing down and a wiping no count is kept: on fewer than all four they are not done; "wiped both sides" may be of a seam."""
    if act == "surface_clean" and number == 2:
        return []
    if act in _ALL_OR_NONE:
        return [claim(row, act, number == 4, first, last, hedged=False, corrects=number < 4)]
    made = [claim(row, f"sides_{act}", number, first, last, uses=tuple(range(first, last)), hedged=False, corrects=corrects)]
    return made + ([claim(row, act, True, first, last, hedged=False, weak=True)] if number else [])


_AGAIN = (
    "(?P<a>STAPLED|TAPED|RUBBED|STAPLES|TAPE) (?:ON|ONLY|FILLER|ALL){0,2} (?P<n>NUM) (?=SEP|$|BUT|FILLER (?:SEP|$))",
    "(?P<a>STAPLED|TAPED|RUBBED|STAPLES|TAPE) ALL (?P<n>NUM) (?=AND|ON|STAPLED|TAPED|RUBBED)",
    "(?P<a>TAPED|TAPE) (?P<n>NUM) (?=RUBBED)",
    "(?:(?P<all>ALL|ONLY) |FILLER )?(?P<n>NUM) (?P<a>STAPLED|TAPED|RUBBED|STAPLES|TAPE) (?!EVERY|ON|NUM|SIDE_WORD)",
)
_OPENS = frozenset(("FILLER", "AND", "BUT", "ONLY"))


def _the_same_way(row: Row, own: Row) -> Iterator[tuple[str, int, int, int]]:
    """ "Staples on all four sides, tape on three", "taped all four, rubbed two", "Stapled four sides. Three taped.": a bare number beside an act, once sides are counted."""
    counted_at = -1
    for pattern in _AGAIN:
        for match in row.find(pattern):
            at, number = match.start("n"), row.items[match.start("n")].value.value
            if number not in (1, 2, 3, 4) or own.is_blank(match.start("a")) or not _apart(row, match):
                continue
            if pattern is _AGAIN[3] and row.items[match.start("a")].concept == "STAPLES" and row.items[min(match.end(), len(row.items) - 1)].concept not in ("COMMA", "STOP", "QUERY", "AND", "BUT", "STAPLES"):
                continue  # "four staples in it": counted are the staples
            start = row.sentence_start(match.start())
            concepts = [item.concept for item in row.items[start : match.start()]]
            act = row.items[match.start("a")].concept
            alone = _OPENS.issuperset(concepts) and act in ("TAPED", "RUBBED", "TAPE") and start > 1
            if alone:
                before = row.sentence_start(start - 2)
                concepts = [item.concept for item in row.items[before : start - 1]]
                alone = bool({"STAPLED", "STAPLES", "TAPED", "TAPE"} & set(concepts))
                alone_counts = alone and (counted_at >= before or "K_END_CAP" in [item.concept for item in row.items[:start]])  # all that a cap has four of
            else:
                alone_counts = False
            all_four = number == 4 and any(row.items[k].concept == "ALL" for k in (at - 1, at - 2) if k >= 0)
            all_four = all_four or number == 4 and pattern is _AGAIN[3] and row.items[at - 1].concept == "COMMA" and sum(item.concept.startswith("K_") for item in row.items) == 1
            counted = alone_counts or "SIDE_WORD" in concepts or "SIDES_ALL" in concepts or any(one == "ALL" and two == "NUM" for one, two in zip(concepts, concepts[1:]))
            counted = counted or all_four and any(item.concept in ("SIDE_WORD", "SIDES_ALL") for item in row.items[max(0, match.start() - 24) : match.start()])
            if counted and (alone or all_four or pattern is _AGAIN[2] or {"COMMA", "AND", "BUT"} & set(concepts[-2:])):
                counted_at = at
                yield _ACTS[act], int(number), at, at + 1


def _apart(row: Row, match) -> bool:
    """Whether the number stands free before its act: "but two taped", "all four taped", no measure of what stands before it."""
    if match.start("a") < match.start("n"):
        return True
    before = row.items[match.start() - 1].concept if match.start() else ""
    if match.start("all") < 0 and " " in row.words(match.start("a"), match.end("a")):
        return False  # "Four is taped": a piece
    return before in ("STOP", "COMMA", "AND", "BUT") or match.start("all") >= 0


def beside(made: list[Claim], claims: list[Claim], row: Row) -> list[Claim]:
    """Those that no other reading of the same sentence has found."""
    kept = []
    for one in made:
        name = one.name if one.name.startswith("sides_") else f"sides_{one.name}"
        same = [c for c in claims if c.name == name and not any(item.concept in ("STOP", "QUERY") for item in row.items[min(c.first, one.first) : max(c.first, one.first)])]
        if not same or one.corrects:
            kept.append(one)
    return kept


def not_whole(made: list[Claim], claims: list[Claim], row: Row) -> list[Claim]:
    """The claims without the plain "rubbed" or "wiped" beside "two sides": what was rubbed on some sides is not rubbed down."""
    partly = [one for one in made if one.name in _ALL_OR_NONE and one.value is False]

    def beside_it(one: Claim) -> bool:
        return any(c.name == one.name and not any(item.concept in ("STOP", "QUERY", "COMMA") for item in row.items[min(c.first, one.first) : max(c.last, one.last)]) for c in partly)

    return [one for one in claims if not (one.name in _ALL_OR_NONE and one.value is True and partly and beside_it(one))]


def _nearest(row: Row, part: Part, first: int, last: int) -> list[str]:
    """Where text runs on without a comma, the act that stands nearest to the count."""
    acts = [at for at in range(part.first, part.last) if row.items[at].concept in _ACTS]
    return [_ACTS[row.items[min(acts, key=lambda at: min(abs(at - first), abs(at - last + 1)))].concept]] if acts else []


def _count(words: str, language: Language, sided: bool) -> tuple[int, bool, re.Match[str]] | None:
    for number, only_after, pattern in _patterns(language.code):
        match = pattern.search(words) if sided or not only_after else None
        if match is not None:
            less = match.groupdict().get("minus")
            return (number if less is None else number - dict(language.acts.numbers)[less]), only_after, match
    return None


def _shape(row: Row, part: Part, act: bool) -> bool:
    concepts = [item.concept for item in row.items[part.first : part.last]]
    return any(c in (_OF_THE_SHAPE[:8] if act else _OF_THE_SHAPE) for c in concepts) or "DAMAGE" in concepts


def _denied(words: str, match: re.Match[str], language: Language) -> bool:
    rest = f"{words[: match.start()]} {re.sub(language.acts.because, '', re.sub(language.acts.rest_left, '', words[match.end() :]))}"
    return re.search(language.acts.denied_side, rest) is not None


def _next(row: Row, cut_up: tuple[Part, ...], place: int) -> list[str]:
    """ "Two sides, that's all I stapled" """
    for part in cut_up[place + 1 : place + 2]:
        if part.sentence == cut_up[place].sentence:
            return [_ACTS[row.items[at].concept] for at in range(part.first, part.last) if row.items[at].concept in _ACTS][:1]
    return []


@cache
def _patterns(code: str) -> tuple[tuple[int, bool, Likely], ...]:
    return tuple((number, after, Likely(rf"(?<![\w'/-])(?:{words})(?![\w'])")) for number, after, words in LANGUAGES[code].acts.sides)


def recodes(row: Row, language: Language) -> dict[int, str]:
    """The "of the four" of "three of the four sides", which counts nothing, and the "3" of "sides taped 3", which is no distance: item -> the concept it then is."""
    found = {match.start("n"): "COUNT" for match in row.find("SIDE_WORD BE? (?:STAPLED|TAPED|STAPLES|TAPE) (?P<n>NUM|LEN|FRAC) (?=SEP|$)")}
    for match in row.find("NUM (?P<w>(?P<of>OUT? OF|FROM|NO|OFF) (?:DET|ALL|IT){0,2} (?P<all>NUM)) SIDE_WORD"):
        number = row.items[match.start("all")].value.value
        if number == 4 and re.fullmatch(language.acts.of_all, row.words(*match.span("of")).lower()) is not None:
            found.update(dict.fromkeys(range(*match.span("w")), "FILLER"))
            if match.start() > 1 and row.items[match.start() - 1].concept == "ON" and row.items[match.start() - 2].concept in _ACTS:  # "grapas en dos de los cuatro lados": no distance
                found[match.start()] = "COUNT"
    for match in row.find("(?P<w>OF DET? (?P<all>NUM)) SIDE_WORD (?:COMMA|FILL|ONLY){0,3} (?:STAPLED|TAPED|HAVE) (?:ON|FILL|ONLY|TAPE|STAPLES|TO|THRU){0,3} (?P<n>NUM|LEN)"):
        if row.items[match.start("all")].value.value == 4:  # "de los cuatro lados encinté dos"
            found.update(dict.fromkeys(range(*match.span("w")), "FILLER"))
            found[match.start("n")] = "COUNT"
    for match in row.find("(?P<on>ON) (?P<n>NUM) (?=SEP|$|AND|BUT|AROUND|ALL|ON|IN)"):  # "stapled on twos"
        if re.fullmatch(language.forms.in_twos, row.words(*match.span("n")).lower()):
            found[match.start("on")] = "EVERY"
    return found
