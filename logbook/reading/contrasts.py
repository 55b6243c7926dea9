"""One piece of several told from the others by its number alone: "five I rubbed, six I didn't", "cap nine isn't taped, eight is"."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.claims import Claim, claim
from logbook.reading.denials import ACTS
from logbook.reading.grammar import Row
from logbook.reading.marks import mark_text
from logbook.reading.mention import Mention
from logbook.reading.phrasing import words_of
from logbook.reading.stance import Clause

_AHEAD = (
    "(?:^|(?<=SEP)|(?<=AND)|(?<=BUT)) (?:FILLER|AND|BUT|ON|OF|IN|NUMBER|FITTING|DET|ONLY){0,3} (?P<m>NUM|MARKED) COMMA?"
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


def so_is(row: Row, cut: tuple[Clause, ...]) -> list[Claim]:
    """ "Cap nine isn't taped. Eight is.": the act denied of the one is done on the other."""
    made: list[Claim] = []
    for place, clause in enumerate(cut[1:], 1):
        items = row.items[clause.first : clause.last]
        head = [item.concept for item in items if item.concept not in ("FILLER", "AND", "BUT", "FITTING", "NUMBER", "DET", "ON", "OF", "IN", "I", "IT") and not item.concept.startswith("K_")]
        if not row.is_blank(clause.first) and head[:2] == ["NUM", "EVERY"]:  # "forty-one stapled every two, forty-two every three"
            act = _last_done(row, cut, place)
            if act is not None and row.items[act].concept == "STAPLED":
                made.append(claim(row, "stapled", True, clause.last - 1, clause.last, hedged=False, weak=True))
                continue
        if not row.is_blank(clause.first) and head in _NOT_ON and items[-2].concept in ("ON", "IN", "OF", "MISSING"):  # "vanes in five, none in six"
            act = _last_done(row, cut, place)
            if act is not None:
                at = next(k for k in range(clause.first, clause.last) if row.items[k].concept in ("NO", "NOT", "MISSING"))
                made.append(claim(row, ACTS.get(row.items[act].concept, "scrim_shows"), False, at, at + 1, hedged=False))
                continue
        if not row.is_blank(clause.first) and head[:1] in (["NUM"], ["MARKED"]):
            rest = _past_marks(head)
            denies = rest in _LACKS and (items[-1].concept in ("NOT", "NO") or rest[-1] == "BE" or row.words(clause.last - 1, clause.last).lower() in ("any", "one"))
            too = not rest and row.words(clause.last - 1, clause.last).lower() in words_of("small.too")
            act = _last_done(row, cut, place) if denies or too else None
            if act is not None:
                made.append(claim(row, _DONE_TOO.get(row.items[act].concept) or ACTS[row.items[act].concept], too, clause.last - 1, clause.last, hedged=False))  # "four is taped, five too, six isn't"
                continue
        if row.is_blank(clause.first) or [item.concept for item in items if item.concept not in ("FILLER", "AND", "BUT", "FITTING", "NUMBER")] != ["NUM", "BE"]:
            continue
        before = cut[place - 1]
        acts = [at for at in range(before.first, before.last) if row.items[at].concept in ACTS]
        if acts and any(row.items[at].concept in ("NOT", "NOT_DONE") for at in range(before.first, acts[0])):
            made.append(claim(row, ACTS[row.items[acts[0]].concept], True, clause.last - 2, clause.last, hedged=False))
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
_DONE_TOO = {"SHOWS": "scrim_shows"}


def _last_done(row: Row, cut: tuple[Clause, ...], place: int) -> int | None:
    """The act done in the clause before, past clauses that only say "five too"."""
    for clause in reversed(cut[max(0, place - 4) : place]):
        concepts = [row.items[at].concept for at in range(clause.first, clause.last)]
        if any(c in ("NOT", "NO", "NOT_DONE", "PENDING") for c in concepts) or row.is_blank(clause.first):
            return None
        acts = [clause.first + k for k, c in enumerate(concepts) if c in ("STAPLED", "TAPED", "RUBBED", "TRIMMED", "VANES", "WIPED", "PREHEATED", "SHOWS", "TAPE", "STAPLES")]
        if acts:
            return acts[-1]
        if len(concepts) > 4:
            return None
    return None
