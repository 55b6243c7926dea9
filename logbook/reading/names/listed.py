"""Several pieces named one after another, each with its own kind: "straight four, elbow five, both ten by eight"; what is said behind them is of each.

And what is said of one of several by its number: "eight by six for three, six by six for four".
"""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.batches import plural
from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.marks import mark_text
from logbook.reading.clauses.mention import Mention
from logbook.reading.words.phrasing import table_of, words_of
from logbook.reading.clauses.stance import Clause

_BETWEEN = ("COMMA", "AND", "DET", "FILLER", "ANOTHER", "STOP")
_OF_EACH = ("BOTH", "ALL", "EACH")
_SPECIAL = {  # facts that one kind alone has: in a list of several kinds they are of that one
    "vanes": ("elbow",), "turn_angle": ("elbow", "wye"), "(angle)": ("elbow", "wye"), "elbow_pieces": ("elbow",), "tabs_bent": ("collar",), "collar_diameter": ("collar",),
    "branch_size": ("tee", "branch", "wye"), "(branch_size)": ("tee", "branch", "wye"), "offset_by": ("offset",), "side_moves": ("transition", "offset"),
}  # fmt: skip


def together(row: Row, named: list[Mention]) -> list[Mention]:
    """The mentions, those of one list joined: each begins where the first of them does."""
    done = list(named)
    at = 0
    while at < len(done):
        end = at
        while end + 1 < len(done) and _next_in_list(row, done[end], done[end + 1]):
            end += 1
        twins = end == at + 1 and done[end].kind is None and any(item.concept == "AND" for item in row.items[done[at].last : _named_at(row, done[end])]) and not _told_alone(row, done[at], done[end])  # "straight 23 and its twin 24"
        if end > at and (twins or _alike(row, done[at : end + 1]) or _said_of_each(row, done[end]) or _told_ahead(row, done[at])):
            for place in range(at, end + 1):
                done[place] = replace(done[place], listed=at if place > at else -2)
        at = end + 1
    return done


def _told_alone(row: Row, one: Mention, other: Mention) -> bool:
    """ "No engrapé el recto 135 y el 136 va engrapado": behind an act on the first the second is told of by itself."""
    acted = any(item.concept not in ("DET", "THRU", "ON", "FILLER", "I", "AND", "BUT") for item in row.items[row.sentence_start(one.first) : one.kind_at[0]])
    said = row.words(other.last, other.last + 1).lower().split() if other.last < len(row.items) else []
    return acted and not words_of("small.one_is").isdisjoint(said)


def _alike(row: Row, some: list[Mention]) -> bool:
    """ "Elbow 7 and elbow 8, twelve by twelve nineties", "straight 9 and straight 10, stapled and taped": of one kind, and told of together."""
    first, last = some[0], some[-1]
    behind = [item.concept for item in row.items[last.last : last.last + 2]]
    joined = any(item.concept == "AND" for item in row.items[some[-2].last : _named_at(row, last)])
    opens = row.sentence_start(first.first) in (first.first, first.first - 1, first.first - 2)
    return joined and opens and len({one.kind for one in some}) == 1 and behind[:1] == ["COMMA"] and behind[1:] in (["SIZE"], ["STAPLED"], ["TAPED"], ["LEN"], ["BOTH"], ["ALL"])


def _next_in_list(row: Row, one: Mention, other: Mention) -> bool:
    if one.mark is None or other.mark is None or one.batch or other.batch or one.kind is None or other.amends:
        return False
    between = [item.concept for item in row.items[one.last : _named_at(row, other)]]
    if other.kind is None and between[-3:] == ["AND", "DET", "WORD"]:
        between = between[:-2]
    return all(concept in _BETWEEN for concept in between) and between.count("STOP") <= 0 + (between == ["STOP"])


def _named_at(row: Row, one: Mention) -> int:
    return one.kind_at[0] if one.kind_at else one.mark_at[0]


def _said_of_each(row: Row, last: Mention) -> bool:
    """Whether what comes behind the last is said in the plural, up to the end of its sentence."""
    for at in range(last.last, len(row.items)):
        item = row.items[at]
        if item.concept in ("STOP", "QUERY"):
            return at == last.last and at + 2 < len(row.items) and row.items[at + 1].concept == "BOTH" and row.items[at + 2].concept in ("SIZE", "LEN", "STAPLED", "TAPED", "BE")
        if item.concept in ("STAPLED", "TAPED", "RUBBED") and row.words(at - 1, at) == "," and row.words(at, at + 1).lower().startswith("all "):
            return True
        if item.concept in _OF_EACH:
            behind = row.items[at + 1].concept if at + 1 < len(row.items) else ""
            if item.concept != "ALL" or behind not in ("AROUND", "SIDE_WORD", "SIDES_ALL", "NUM", "OVER", "DET"):
                return True
        if item.concept.startswith("K_") and at > last.last:
            return False
    return False


def _told_ahead(row: Row, first: Mention) -> bool:
    """ "Everything on run six is stapled and taped: straight one, elbow three": said of all, and then which."""
    at = first.first
    while at > 0 and row.items[at - 1].concept in ("DET", "FILLER"):
        at -= 1
    if at == 0 or row.text[row.items[at - 1].start : row.items[at - 1].end] != ":" and row.items[at - 1].concept != "COMMA":
        return False
    begin = row.sentence_start(at - 1)
    return any(item.concept in ("ALL_THAT", "BOTH") for item in row.items[begin : at - 1])


def kept_for(kind: str | None, name: str) -> bool:
    """Whether a fact said of a list is of this kind at all."""
    return kind is None or name not in _SPECIAL or kind in _SPECIAL[name]


def directed(row: Row, marks: set[str], language: Language) -> dict[int, str]:
    """Item of a measure -> the mark of the piece it is said for."""
    if len(marks) < 2:
        return {}
    found: dict[int, str] = {}
    for match in row.find("(?P<c>SIZE|LEN) (?:ON|OF) (?:DET|NUMBER|KIND|FITTING){0,2} (?P<m>MARKED|NUM) (?=SEP|$|AND)"):
        mark = mark_text(row, *match.span("m"), language)
        if mark in marks:
            found[match.start("c")] = mark
    return found | _each_its_act(row, marks, language)


def _each_its_act(row: Row, marks: set[str], language: Language) -> dict[int, str]:
    """ "Stapled straight 5 and taped straight 6": each act is of the piece right behind it, where the sentence begins so."""
    found: dict[int, str] = {}
    first = -1  # where the sentence began that tells so
    for match in row.find("(?P<c>STAPLED|TAPED|RUBBED|HUNG) (?:DET|NUMBER|KIND|FITTING){0,3} (?P<m>MARKED|NUM) (?!BY|SIDE_WORD|DEG|SIDE)"):
        begin = match.start("c")
        while begin > 0 and row.items[begin - 1].concept not in ("STOP", "QUERY"):
            begin -= 1
        leads = [item.concept for item in row.items[begin : match.start("c")]]
        goes_on = begin == first and leads[-1:] and leads[-1] in ("AND", "COMMA", "I", "FILLER", "ANOTHER", "DET")
        mark = mark_text(row, *match.span("m"), language)
        if mark in marks and (goes_on or set(leads) <= {"I", "FILLER", "HAVE", "COMMA", "DET", "LATER"}):
            first = begin
            found[match.start("c")] = mark
    found = found if len(set(found.values())) > 1 else {}
    for match in row.find("(?:MARKED|NUM) COMMA? (?:AND|BUT) (?:ME|FILLER|ANOTHER){0,2} (?P<c>STAPLED|TAPED|RUBBED|HUNG) (?:DET|NUMBER|FITTING){0,2} KIND NUMBER? (?P<m>MARKED|NUM) (?!BY|SIDE_WORD|DEG|SIDE)"):
        mark = mark_text(row, *match.span("m"), language)
        if mark in marks and mark_text(row, match.start(), match.start() + 1, language) in marks:  # "haven't stapled straight 4 and I taped tee 5"
            found.setdefault(match.start("c"), mark)
    return found


def kinds_ahead(row: Row, named: list[Mention]) -> list[Mention]:
    """ "Two boots done. Fifteen is a six inch. Sixteen …": the kind that a count tells ahead is of those that follow."""
    done = list(named)
    for match in row.find(_COUNTED_AHEAD):
        if any(one.mark_at is not None and one.mark_at[0] == match.start("n") for one in named):
            continue  # "Forty-three straight, …": a mark, and no count
        at = match.start("k")
        kind = row.items[at].value if row.items[at].concept.startswith("K_") else table_of("small.several").get(row.words(at, at + 1).lower())
        left = min(_MOST_AHEAD, _how_many(row, match.start("n")))
        for place, one in enumerate(done):
            if left and one.mark is not None and one.first > at and one.kind is None and not one.batch and kind not in (None, "fitting"):
                done[place] = replace(one, kind=kind, kind_at=(at, at + 1))
                left -= 1
            elif one.first > at and one.kind is not None and one.kind != kind:
                break
    return done


def _how_many(row: Row, at: int) -> int:
    """ "Two boots", "both elbows", "all three boots"."""
    if row.items[at].concept == "BOTH":
        return 3 if "three" in row.words(at, at + 1).lower() else 2
    return int(row.items[at].value.value)


_MOST_AHEAD = 12
_COUNTED_AHEAD = "(?:^|(?<=STOP)|(?<=QUERY)) (?:FILLER|DET|I|HAVE|COMMA|HUNG){0,3} (?P<n>NUM|COUNT|BOTH) (?:NUM|DEG|SIZE)? (?P<k>COUNTED|KIND) (?:FILLER|HUNG|LATER|ON RUN NUM|OFF|OF|DET|FROM|BRANCH_WORD|INLET|K_TEE){0,4} (?=STOP|COMMA)"


def told_ahead(row: Row, named: list[Mention], claims: list[Claim]) -> tuple[list[Mention], list[Claim]]:
    """ "Two straights, both ten by ten. Number three is stapled, number four …": what the counting sentence says of both is of each that follows."""
    for match in row.find(_COUNTED_AHEAD):
        end = next((k for k in range(match.end(), len(row.items)) if row.items[k].concept in ("STOP", "QUERY")), len(row.items))
        here = [m for m in named if match.start() <= m.first < end]
        group = [m for m in named if m.first >= end and m.mark is not None and not m.batch][: _how_many(row, match.start("n"))]
        said_of_all = any(row.items[k].concept in _OF_EACH for k in range(match.end(), end))
        if len(group) < 2 or not said_of_all or any(m.mark is not None or m.batch for m in here):
            continue
        told = [c for c in claims if match.start() <= c.first < end and c.last <= end]
        told = [replace(c, name="turn_angle") if c.name == "(angle)" else c for c in told]
        claims = [c for c in claims if not (match.start() <= c.first < end and c.last <= end)] + [replace(c, first=m.last - 1, last=m.last, uses=(), both_at=-1) for m in group for c in told]
        named = [m for m in named if m not in here]
    return named, claims


def all_of_them(row: Row, at: int) -> bool:
    """ "…, all ten by ten, all stapled": of the pieces, where "all four sides", "all around" and "it's all taped" are of one."""
    before, behind = (row.items[at - 1].concept if at else ""), row.items[at + 1].concept if at + 1 < len(row.items) else ""
    first = row.sentence_start(at)
    kinds = [k for k in range(first, at) if row.items[k].concept.startswith("K_")]
    if len(kinds) == 1 and not plural(row, kinds[0]):
        return False  # "tee five, twelve by ten, all stapled": of this one
    if before in ("STOP", "QUERY"):
        last = next((k for k in range(at - 1, -1, -1) if row.items[k].concept.startswith("K_")), None)
        several = sum(row.items[k].concept.startswith("K_") for k in range(row.sentence_start(at - 1), at)) > 1
        return behind in ("SIZE", "LEN") or behind in ("STAPLED", "TAPED", "RUBBED") and last is not None and (several or plural(row, last))  # "Straights one, two and three: … All taped and rubbed."
    return before == "COMMA" and behind in ("SIZE", "STAPLED", "TAPED", "LEN", "OF")


def each_behind(row: Row, clause: Clause, one: Claim) -> int | None:
    """ "Taped both", "ten by ten each", "ten by eight the pair": said behind, and nothing between."""
    at = one.last
    while at < clause.last and row.items[at].concept in ("DET", "OF", "ON", "FILLER", "IN", "IT"):
        at += 1
    ends = at + 1 >= len(row.items) or row.items[at + 1].concept in ("COMMA", "STOP", "AND", "QUERY", "STAPLED", "TAPED", "RUBBED", "EVERY")
    if at < clause.last and row.words(at, at + 1).lower().endswith("them") and _has_several(row, at):
        return None  # "straight 5, four seams, stapled all of them"
    return at if at < clause.last and row.items[at].concept in ("BOTH", "EACH") and ends else None


def _has_several(row: Row, at: int) -> bool:
    """Whether what one piece has several of was named in this sentence, behind the piece."""
    before = [item.concept for item in row.items[row.sentence_start(at) : at]]
    last = next((k for k in range(len(before) - 1, -1, -1) if before[k].startswith("K_")), -1)
    return not _SEVERAL_OF_ONE.isdisjoint(before[last + 1 :])


_SEVERAL_OF_ONE = frozenset("SIDE SIDE_WORD JOINT TABS TAB_WORD SCREWS STAPLES PANEL DAMAGE".split())
