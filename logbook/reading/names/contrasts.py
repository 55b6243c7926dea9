"""One piece of several told from the others by its number alone: "five I rubbed, six I didn't", "cap nine isn't taped, eight is"."""

from __future__ import annotations

from dataclasses import dataclass, replace

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, Open, claim
from logbook.reading.clauses.denials import ACTS
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.marks import mark_text
from logbook.reading.clauses.mention import Mention
from logbook.reading.words.phrasing import table_of, words_of
from logbook.reading.clauses.stance import Clause

_AHEAD = (
    "(?:^|(?<=SEP)|(?<=AND)|(?<=BUT)) (?:FILLER|AND|BUT|ON|OF|IN|NUMBER|FITTING|DET|ONLY){0,3} (?P<m>NUM|MARKED|LETTER) COMMA?"
    " (?=ME|EVERY|IT|HAVE|DET|STAPLED|TAPED|RUBBED|WIPED|TRIMMED|PREHEATED|NOT|NO|BE|SCRIM|TABS|STAPLES|TAPE|VANES|VOID|WORD|(?:FILLER )?WITH (?=CLOSURE|MARK181|DET? (?:CLOSURE|STAPLES|TAPE))) (?!BE? (?:NUM|LEN|FRAC|DEG|BY) (?:SEP|$|BY))"
)
_OPENS = "(?:^|(?<=STOP)|(?<=QUERY)) (?:FILLER|AND|BUT|ON|OF|IN|NUMBER|FITTING|ONLY){0,3} (?P<m>NUM|MARKED) (?=DAMAGE|FORGOT|MISSING|LEFT_OUT|PENDING|NOT_DONE|UNDONE|FILLER|GAP|C_MASTIC|JOINT|TIGHT|SEALED)"  # "Eleven got wet."
_BEHIND = "(?:^|(?<=SEP)|(?<=AND)|(?<=BUT)) (?P<c>(?:[^STOP QUERY COMMA AND BUT]){0,8} (?:ON|IN|OF|THROUGH)|(?:[^STOP QUERY COMMA AND BUT]){1,6} (?:TRADE_NOISE|VANES FROM)|(?:[^STOP QUERY COMMA AND BUT]){0,4} (?:NOT|NOT_DONE|FORGOT|LEFT_OUT) (?:HAVE|DET|FILLER|WORD|TO){0,2} (?:RUB|RUBBED|TAPE_IT|TAPED|TAPE|STAPLE|STAPLED|TRIM|TRIMMED|WIPE|WIPED)|(?:[^STOP QUERY COMMA AND BUT]){0,2} MISSING) NUMBER? (?P<m>NUM|MARKED) (?=SEP|$|BUT|AND)"  # "there's a gap on nine", "somebody put a boot through ten"

_THING_ON = "(?:^|(?<=SEP)|(?<=AND)|(?<=BUT)) (?:FILLER|DET|AND|BUT){0,3} (?P<c>(?:STAPLES|TAPE|VANES|TABS|SCRIM|FLAP|GAP|CLOSURE) (?:ON|IN|OF)) NUMBER? (?P<m>NUM|MARKED) (?=BE|HAVE|NOT|NO|EVERY|SHOWS|CLINCHED|COMMA)"  # "the staples on 23 are four inches apart"


def with_each(row: Row, named: list[Mention], language: Language) -> list[Mention]:
    """The mentions, with those of a number alone that is the mark of a piece named before among several, or of its place among them."""
    named = _by_their_figures(row, named)
    known = list(dict.fromkeys(mark for one in named for mark in ([m for m, _ in one.batch] or [one.mark]) if mark is not None))
    if len(known) < 2:
        return named
    spoken = {at for one in named for at in range(one.first, one.last)}
    made = list(named)
    for pattern in (_AHEAD, _OPENS, _BEHIND, _THING_ON):
        for match in row.find(pattern):
            span = match.span("m")
            mark = _of_known(mark_text(row, *span, language), known)
            before = any(one.first < span[0] and (one.mark == mark or any(m == mark for m, _ in one.batch)) for one in named)
            if mark in known and before and not spoken & set(range(*span)):
                first = match.start("c") if "c" in match.re.groupindex else match.start() + (row.items[match.start()].concept in ("AND", "BUT"))
                first = max([first, *(at + 1 for at in spoken if first <= at < span[0])])
                made.append(Mention(first, span[1], mark=mark, mark_at=span))
                spoken.update(range(*span))
    made += _by_their_places(row, made, known)
    return sorted([_from_its_clause(row, one, made) for one in made], key=lambda m: m.first)


def _by_their_places(row: Row, named: list[Mention], known: list[str]) -> list[Mention]:
    """ "First one's taped, second one isn't", "on the last one but not on the other": one of those that were named, by its place among them."""
    made: list[Mention] = []
    spoken = {at for one in named for at in range(one.first, one.last)}
    begins = max(min(one.last for one in named if one.mark == mark or any(m == mark for m, _ in one.batch)) for mark in known)
    last = known[-1]
    for at in range(begins, len(row.items)):
        where = place_word(row, at)
        last = next((one.mark for one in named if one.first == at and one.mark is not None), last)
        if where is None or at in spoken:
            continue
        which, end = where
        first = at
        while first > begins and row.items[first - 1].concept in ("DET", "FILLER", "ONLY", "ON", "OF", "IN"):
            first -= 1
        leads, behind = row.items[first - 1].concept, row.items[end].concept if end < len(row.items) else "STOP"
        if behind in _SEPARATE and first > begins:  # "… on the first", "not the last one"
            while first > begins and row.items[first - 1].concept not in _SEPARATE and first - 1 not in spoken:
                first -= 1
        elif leads not in _SEPARATE or behind not in _SAID_OF_ONE:
            continue
        if which is None:
            mark = next((one for one in known if one != last), None) if len(known) == 2 else None
        else:
            mark = known[which] if which < len(known) and (which != 1 or row.words(at, at + 1).lower().split()[0] not in _OF_THREE or len(known) == 3) else None
        if mark is not None:
            made.append(Mention(first, end, mark=mark, mark_at=(at, at + 1)))
            last = mark
    return made


def place_word(row: Row, at: int) -> tuple[int | None, int] | None:
    """ "The first", "second one", "the other one": which of those named (None: the other), and the item behind."""
    item = row.items[at]
    words = row.text[item.start : item.end].lower().split()
    if not words or len(words) > 3:  # a stop put in by the reading has no words
        return None
    article = bool(at) and row.items[at - 1].concept == "DET" or len(words) > 1 and words[0] in words_of("small.articles")
    words = words[1:] if len(words) > 1 and words[0] in words_of("small.articles") else words
    if words[0] not in (table := table_of("small.which")) or any(row.items[k].concept in _PARTS for k in range(row.sentence_start(at), at)):
        return None  # "three sides are taped but the fourth isn't"
    one = words[1:2] == ["one"] or len(words) == 1 and at + 1 < len(row.items) and row.words(at + 1, at + 2).lower() == "one"
    return (table[words[0]], at + 1 + (one and len(words) == 1)) if one or article and len(words) == 1 else None


_OF_THREE = ("middle",)
_PARTS = ("SIDE_WORD", "SIDES_ALL", "JOINT", "END")
_SEPARATE = ("STOP", "QUERY", "COMMA", "AND", "BUT", "EXCEPT")
_SAID_OF_ONE = ("BE", "HAVE", "NOT", "NO", "NOT_DONE", "I", "STAPLED", "TAPED", "RUBBED", "EVERY", "WITH", "MISSING", "DAMAGE", "GAP", "PENDING", "FORGOT", "VOID", "LEFT_OUT", "TIGHT")


def _of_known(mark: str | None, known: list[str]) -> str | None:
    """ "Thirteen" of A12 and A13 is A13."""
    if mark is None or mark in known or not mark.isdigit():
        return mark
    alike = [one for one in known if one.lstrip(_LETTERS) == mark]
    return alike[0] if len(alike) == 1 else mark


_LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ-"


def _by_their_figures(row: Row, named: list[Mention]) -> list[Mention]:
    """The mentions, where a number alone that is the figures of a lettered mark named before is that piece."""
    made: list[Mention] = []
    known: list[str] = []
    for one in named:
        new_kind = one.kind is not None or [item.concept for item in row.items[one.last : one.last + 2]] == ["BE", "DET"]
        if one.mark is not None and not new_kind and one.mark not in known:
            one = replace(one, mark=_of_known(one.mark, known))
        known += [mark for mark in ([m for m, _ in one.batch] or [one.mark]) if mark is not None]
        made.append(one)
    return made


def _from_its_clause(row: Row, one: Mention, named: list[Mention]) -> Mention:
    """ "I stapled and taped ten": what stands right before the number of a piece named before is of it, from where its clause begins."""
    if one.kind is not None and one.first > 0 and one.mark_at is not None and (row.items[one.first - 1].concept in ("ON", "IN", "OF") or _done_to(row, one)):
        return _with_what_is_on_it(row, one, named)
    if one.mark is None or one.kind is not None or not any(row.items[k].concept in ACTS or row.items[k].concept in ("ON", "IN") for k in range(one.first, one.mark_at[0])):
        return one
    if not any(other.first < one.first and (other.mark == one.mark or any(mark == one.mark for mark, _ in other.batch)) for other in named):
        return one
    if one.first > 1 and row.items[one.first].concept in ("ON", "IN") and row.items[one.first - 1].concept == "AND" and one.last < len(row.items):
        return one  # "126 is stapled taped and rubbed and on 127 I forgot the staples": what is behind is told of it
    first, spoken = one.first, {at for other in named for at in range(other.first, other.last)}
    while first > 0 and first - 1 not in spoken and (row.items[first - 1].concept not in _BREAKS or row.items[first - 1].concept == "AND" and first > 1 and row.items[first - 2].concept in ACTS):
        first -= 1
    return replace(one, first=first)


def _with_what_is_on_it(row: Row, one: Mention, named: list[Mention]) -> Mention:
    """ "Straight 15, elbow 16. No tape on straight 15": what a sentence says is on a piece named before is of that piece."""
    first = row.sentence_start(one.first)
    if _done_to(row, one) or any(first <= other.first < one.first for other in named):  # "I taped straight 8, not cap 9"
        first, begin = one.first, first
        while first > begin and (row.items[first - 1].concept not in _BREAKS or row.items[first - 1].concept == "AND" and first > 1 and row.items[first - 2].concept in ACTS):
            first -= 1
    before = [other for other in named if other.last <= first]
    own = first < one.first and not any(first <= other.first < one.first for other in named) and any(row.items[k].concept in _ON_IT for k in range(first, one.first))
    again = any(other.mark == one.mark or any(mark == one.mark for mark, _ in other.batch) for other in before)
    others = any(other.mark not in (None, one.mark) or other.batch for other in before)
    return replace(one, first=first) if own and again and others else one


def _done_to(row: Row, one: Mention) -> bool:
    """ "Taped straight 8", "forgot to tape straight 8": the act right before the piece is done to it, or not."""
    act = row.items[one.first - 1].concept
    return act in _DONE_TO or act == "TAPE" and one.first > 1 and row.items[one.first - 2].concept in ("NOT", "NOT_DONE", "FORGOT", "PENDING", "NEED")


_DONE_TO = ("STAPLED", "TAPED", "RUBBED", "WIPED", "TRIMMED", "STAPLE", "TAPE_IT", "RUB", "WIPE", "TRIM")
_ON_IT = (*ACTS, "NO", "TAPE", "STAPLES", "DAMAGE", "GAP", "SCRIM", "CLOSURE", "MARK181", "FLAP", "TABS", "DIRTY", "FORGOT", "MISSING", "LEFT_OUT", "PENDING")
_BREAKS = ("STOP", "QUERY", "COMMA", "BUT", "AND", "EXCEPT")


def _parted_at_and(row: Row, cut: tuple[Clause, ...]) -> tuple[Clause, ...]:
    """ "Straight 7 is taped and straight 8 isn't": parted at the "and" too, where the second says no more than that it is not."""
    made = list(cut)
    for match in row.find("(?P<a>AND) (?:DET|KIND|NUMBER|FITTING){0,3} (?:NUM|MARKED) (?:BE|HAVE)? NOT (?=SEP|$)"):
        at = match.start("a")
        place = next((k for k, one in enumerate(made) if one.first < at < one.last), None)
        if place is not None:
            one = made[place]
            made[place : place + 1] = [replace(one, last=at), replace(one, first=at + 1)]
    return tuple(made)


def so_is(row: Row, cut: tuple[Clause, ...], language: Language) -> list[Claim]:
    """ "Cap nine isn't taped. Eight is.": the act denied of the one is done on the other."""
    made: list[Claim] = []
    cut = _parted_at_and(row, cut)
    for place, clause in enumerate(cut[1:], 1):
        items = row.items[clause.first : clause.last]
        head = _concepts(row, clause)
        if not row.is_blank(clause.first) and head[:2] == ["NUM", "EVERY"]:  # "forty-one stapled every two, forty-two every three"
            act = _last_done(row, cut, place)
            if act is not None and row.items[act].concept == "STAPLED":
                made.append(claim(row, "stapled", True, clause.last - 1, clause.last, hedged=False, weak=True))
                continue
        if not row.is_blank(clause.first) and head in _NOT_ON and {"ON", "IN", "OF", "MISSING"} & {item.concept for item in items[-4:]}:  # "vanes in five, none in six"
            act = _last_done(row, cut, place)
            if act is not None:
                at = next(k for k in range(clause.first, clause.last) if row.items[k].concept in ("NO", "NOT", "MISSING"))
                made.append(claim(row, ACTS.get(row.items[act].concept, "scrim_shows"), False, at, at + 1, hedged=False))
                continue
        if not row.is_blank(clause.first) and head in (["NOT", "NUM"], ["NOT", "MARKED"]) and items[-1].concept in ("NUM", "MARKED") and _named_in(row, items[-1], 0, cut[place - 1].first) and not _named_in(row, items[-1], cut[place - 1].first, clause.first):
            act = _last_done(row, cut, place)  # "I taped eight, not nine": both were named before
            if act is not None and cut[place - 1].first <= act:
                made.append(replace(claim(row, ACTS.get(row.items[act].concept, "scrim_shows"), False, clause.last - 1, clause.last, hedged=False), for_mark=mark_text(row, clause.last - 1, clause.last, language)))
                continue
        if not row.is_blank(clause.first) and (told := _of_its_number(row, clause, head)) is not None:
            again = row.items[clause.first].concept == "DET" and row.words(clause.first, clause.first + 2).lower().endswith(" one")
            since = cut[max(0, place - 4) if again else place - 1]
            harmed = next((k for k in range(since.first, clause.first) if row.items[k].concept == "DAMAGE" and row.items[k].value not in (None, "none")), None)
            if harmed is not None:  # "the tear on fifty-five is patched, the one on fifty-six isn't"
                made += [claim(row, name, value, clause.last - 1, clause.last, hedged=False) for name, value in (("facing_damage", row.items[harmed].value), ("damage_repaired", told.done))]
                continue
            act = _last_done(row, cut, place, past_denials=told.follows is not True)
            if act is not None and told.follows in (None, _was_done(row, cut[place - 1], act)):
                yet = row.items[clause.last - 1].concept == "NOT_DONE"  # "la 18 todavía no"
                start, end = row.items[clause.first].start, row.items[clause.last - 1].end
                made += [claim(row, name, told.done, clause.last - 1, clause.last, hedged=False, **({"opens": (Open("piece", name, start, end),), "pending": True} if yet else {})) for name in _with_those_beside(row, act, told)]  # "four is taped, five too, six isn't"
                continue
    for match in row.find("(?P<a>STAPLED|TAPED|RUBBED|TRIMMED|VANES|WIPED) AND (?P<f>NOT|OR|WORD|FILLER) BE DET? (?P<m>MARKED|NUM) (?=SEP|$)"):  # "twelve isn't stapled and neither is thirteen"
        said = row.words(*match.span("f")).lower()
        clause = next((one for one in cut if one.first <= match.start("a") and match.end("m") <= one.last), None)
        told = _Told(False, follows=False) if said in words_of("small.nor") else _Told(True, follows=True) if said in words_of("small.so") else None
        if clause is not None and told is not None and told.follows == _was_done(row, clause, match.start("a")):
            made += [claim(row, name, told.done, match.end("m") - 1, match.end("m"), hedged=False) for name in _with_those_beside(row, match.start("a"), told)]
    return made


def _named_in(row: Row, item, first: int, last: int) -> bool:
    """Whether the same number stands between two places."""
    return any(other.concept == item.concept and row.text[other.start : other.end].lower() == row.text[item.start : item.end].lower() for other in row.items[first:last])


@dataclass(frozen=True)
class _Told:
    done: bool
    follows: bool | None = None  # only where the act told before is done, or is not


def _of_its_number(row: Row, clause: Clause, head: list[str]) -> _Told | None:
    """What a clause that names a piece by its number alone says of the act told before: "six isn't", "seven is", "eight too", "neither is nine"."""
    words = row.words(clause.first, clause.last).lower().replace("’", "'").split()
    if not words:
        return None
    if head[:1] in (["NUM"], ["MARKED"]):
        rest, last = _past_marks(head), words[-1]
        without = next((k for k, word in enumerate(words) if word in words_of("small.without")), None)
        if without is not None and (without + 1 == len(words) or words[without + 1] in words_of("small.gives_reason")) and not {"NOT", "NOT_DONE"} & set(head[: head.index("NO") if "NO" in head else 0]):
            return _Told(False)  # "fifteen went in without"
        if rest[-1:] == ["WORD"] and last in words_of("small.nor"):
            rest = rest[:-1]
        if last in words_of("small.nor") and rest in ([], ["NOT"], ["BE", "NOT"]):
            return _Told(False, follows=False)
        if rest in _LACKS and (row.items[clause.last - 1].concept in ("NOT", "NO") or row.items[clause.last - 1].concept == "NOT_DONE" and not words_of("small.not_yet").isdisjoint(words) or rest[-1] == "BE" or last in ("any", "one")):
            return _Told(False)
        if rest in (["BE"], ["HAVE"], ["WORD"], []) and last in words_of("small.is_so"):
            return _Told(True) if rest != ["WORD"] or row.items[clause.last - 1].concept == "WORD" else None  # "straight 32 Mike did": another's
        return _Told(True, follows=True) if not rest and last in words_of("small.too") else None
    turned = [concept for concept in head if concept != "BE"]
    if turned[-1:] in (["NUM"], ["MARKED"]) and len(turned) <= 2:
        if turned[0] in ("NOT", "OR", "WORD") and words_of("small.nor") & set(words[:3]):
            return _Told(False, follows=False)
        if len(turned) == 1 and len(head) == 2 and words_of("small.so") & set(words[:2]):
            return _Told(True, follows=True)
    return None


def _was_done(row: Row, clause: Clause, act: int) -> bool:
    """Whether what the clause before tells of the act is that it is done."""
    last = act if clause.first <= act < clause.last else clause.last
    return not any(item.concept in ("NOT", "NO", "NOT_DONE", "FORGOT", "MISSING") for item in row.items[clause.first : last])


def _with_those_beside(row: Row, act: int, told: _Told) -> list[str]:
    """The fact of an act; where a piece is as the one before, of those right before it, too: "stapled, taped and rubbed. So is thirteen"."""
    at, made = act, []
    while row.items[at].concept in ACTS or row.items[at].concept in _DONE_TOO or made and row.items[at].concept in ("AND", "COMMA", "OR"):
        if row.items[at].concept not in ("AND", "COMMA", "OR"):
            made.append(_DONE_TOO.get(row.items[at].concept) or ACTS[row.items[at].concept])
        if told.follows is None or at == 0:
            break
        at -= 1
    return list(dict.fromkeys(made))


def _concepts(row: Row, clause: Clause) -> list[str]:
    """What a clause says, without the words that say nothing; "the first one" counts as a number does."""
    made: list[str] = []
    at = clause.first
    while at < clause.last:
        item, where = row.items[at], place_word(row, at)
        if where is not None:
            made.append("NUM")
            at = where[1]
            continue
        if item.concept not in ("FILLER", "AND", "BUT", "FITTING", "NUMBER", "DET", "ON", "OF", "IN", "I", "IT", "ONLY") and not item.concept.startswith("K_"):
            made.append(item.concept)
        at += 1
    return made


def _past_marks(head: list[str]) -> list[str]:
    """What stands behind the numbers of pieces: behind "three and four" in "three and four don't"."""
    at = 0
    while at < len(head) and head[at] in ("NUM", "MARKED", "COMMA"):
        at += 1
    return head[at:]


# "six isn't", "six has none", "six never was", "six didn't get any"
_LACKS = (["NOT"], ["BE", "NOT"], ["NO"], ["HAVE", "NO"], ["NOT", "BE"], ["NOT", "HAVE"], ["HAVE", "NOT"], ["WORD", "NO"], ["NOT", "WORD", "NO"], ["NOT", "HAVE", "WORD"], ["NOT_DONE"])
_NOT_ON = tuple([no, mark] for no in ("NO", "NOT", "MISSING") for mark in ("NUM", "MARKED"))
_DONE_TOO = {"SHOWS": "scrim_shows", "SEE": "scrim_shows"}


def _last_done(row: Row, cut: tuple[Clause, ...], place: int, past_denials: bool = False) -> int | None:
    """The act done in the clause before, past clauses that only say "five too"; `past_denials` finds one that is not done, too."""
    for clause in reversed(cut[max(0, place - 4) : place]):
        concepts = [row.items[at].concept for at in range(clause.first, clause.last)]
        if any(c in ("PENDING", "NEED") or not past_denials and c in ("NOT", "NO", "NOT_DONE") for c in concepts) or row.is_blank(clause.first):
            return None
        acts = [clause.first + k for k, c in enumerate(concepts) if c in ("STAPLED", "TAPED", "RUBBED", "TRIMMED", "VANES", "WIPED", "PREHEATED", "SHOWS", "TAPE", "STAPLES", "CLINCHED") or c == "SEE" and "SCRIM" in concepts]
        if acts:
            return acts[-1]
        if len(concepts) > 4:
            return None
    return None
