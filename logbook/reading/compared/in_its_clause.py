"""What its clause does to a claim: a word of correction before it, a doubt in front or behind, "both of them"."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from dataclasses import dataclass, replace

from logbook.reading.names import listed
from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.denials import DENIED
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import in_any, words_of

UNHEDGED = ("kind", "mark", "run", "place", "service", "joined_to", "stage")
ACT_FACTS = frozenset(name for name, _ in DENIED.values())
_SENTENCE = 60  # items; further back in a sentence without an end nothing reaches
_BEFORE_FIX = ("COMMA", "FILLER", "BE", "DET", "IT", "HEDGE", "AND", "STOP", "NO", "THIS", "ON", "TO", "THINK", "I", "HAVE", "LEFT_OUT", "SIDE_WORD", "OUTLET", "INLET", "BRANCH_WORD", "SIZE_WORD")


@dataclass(frozen=True)
class Places:
    """Items that are looked for before every claim, found once in a note."""

    firsts: list[int]  # of the clauses
    ends: list[int]  # signs behind which words begin anew
    together: list[int]  # "both", "each", "all"

    @classmethod
    def of(cls, row: Row, cut) -> Places:
        concepts = [item.concept for item in row.items]
        ends = [at for at, concept in enumerate(concepts) if concept in ("COMMA", "STOP", "QUERY")]
        return cls([clause.first for clause in cut], ends, [at for at, concept in enumerate(concepts) if concept in ("BOTH", "EACH", "ALL")])


def marked(row: Row, cut, places: Places, one: Claim) -> Claim:
    """The claim with what its clause does to it: a correction before it, a doubt, "both of them"."""
    corrects = _corrects(row, places, one.first)
    place = bisect_right(places.firsts, one.first) - 1
    clause = cut[place] if place >= 0 and one.first < cut[place].last else None
    hedged, both_at = one.hedged, -1
    if clause is not None:
        before = [row.items[k].concept for k in range(max(clause.first, one.first - _SENTENCE), one.first)]
        place_of = place
        if "THINK" in before and "WHEN" in before[before.index("THINK") :] and one.name in ACT_FACTS:
            before = []  # "pretty sure it was sixty degrees when I taped it": the warmth is in doubt
        if one.value is False and one.corrects and row.items[one.first].concept == "I" and one.name in ACT_FACTS:
            before = []  # "I kind of figured somebody else was taping it so I never did": what he did himself is in no doubt
        if one.name == "stapled" and one.value is True and _how_far_apart(row, one):
            before = []
        begin = max(clause.first, one.first - _SENTENCE)
        thinks = [begin + k for k, concept in enumerate(before) if concept == "THINK" and not _of_the_measure(row, begin + k, one.first)]
        hedged = hedged or bool(thinks) or one.last < clause.last and row.items[one.last].concept == "THINK" and not _of_the_measure(row, one.last, one.last + _SENTENCE)
        while place > 0 and cut[place - 1].sentence == clause.sentence and one.first - cut[place - 1].first <= _SENTENCE:
            place -= 1
        begin = cut[place].first
        both = next((at for at in reversed(places.together) if begin <= at < one.first and (row.items[at].concept != "ALL" or listed.all_of_them(row, at))), None)
        if both is not None and not (one.name == "side_moves" and one.fills) and not any(row.items[k].concept == "ONLY" or (row.items[k].concept.startswith("K_") or row.items[k].concept == "FITTING") and not _is_gone_into(row, k) for k in range(both, one.first)):
            both_at = both
        if both_at < 0 and one.name != "side_moves" and (behind := listed.each_behind(row, clause, one)) is not None:
            both_at = behind
        hedged = hedged or (one.last >= clause.last - 1 or one.name in ACT_FACTS) and _doubt_behind(row, cut, place_of, one.name in ACT_FACTS)
    corrects = corrects or (one.value is True and _already(row, one.first))
    follows = [item.concept for item in row.items[one.last : one.last + 3]]
    hedged = hedged or ("DOUBT" in follows and "KIND" not in follows) or (follows[:1] == ["HEDGE"] and _trailing_hedge(row, one.last))
    hedged = hedged or (one.value is True and _sounds_like_no(row, one.first)) or (one.value is False and any(item.concept == "NO" and item.read_as for item in row.items[one.first : one.last]))
    if one.name in UNHEDGED or (one.pending and not one.hedged) or (one.part == "side" and not one.hedged):
        hedged = False
    corrects = one.corrects or corrects or _corrects_behind(row, one)
    same = (corrects, hedged, both_at) == (one.corrects, one.hedged, one.both_at)
    return one if same else replace(one, corrects=corrects, hedged=hedged, both_at=both_at)


def _is_gone_into(row: Row, at: int) -> bool:
    """ "both cut into straight 17 with no gaps": a piece that is only where they go."""
    return at > 0 and row.words(at - 1, at).lower() in words_of("small.into") and row.items[at - 2].concept == "MOVE"


def _how_far_apart(row: Row, one: Claim) -> bool:
    """ "I'd say four inches between staples", "I think the staples are three apart": the distance is in doubt, and not that they are there."""
    for at in range(one.first, min(one.last, len(row.items) - 1)):
        if row.items[at].concept == "STAPLES":
            behind = [item.concept for item in row.items[at + 1 : at + 4]]
            before = at - 1 - (row.items[at - 1].concept == "DET")
            return row.words(before, before + 1).lower() in words_of("small.between") or behind[0] == "BE" and any(concept in ("LEN", "NUM", "EVERY") for concept in behind)
    return False


def _of_the_measure(row: Row, at: int, first: int) -> bool:
    """ "A tear maybe half an inch wide, I taped over it", "I think straight 57 is 16 by 14 stapled every two": the doubt is of the measure right behind it, which ends before this."""
    at += 1
    named = False
    while at < first and at < len(row.items) and (row.items[at].concept in _BEFORE_MEASURE or row.items[at].concept.startswith("K_") or named and row.items[at].concept in ("NUM", "MARKED")):
        named = row.items[at].concept.startswith("K_") or row.items[at].concept in ("FITTING", "NUMBER", "RUN")
        at += 1
    return at < first and at < len(row.items) and row.items[at].concept in ("SIZE", "LEN", "FRAC", "DEG", "TEMP_F")


_BEFORE_MEASURE = ("DET", "HEDGE", "FILLER", "BE", "IT", "THIS", "FITTING", "NUMBER", "RUN", "ON", "OF", "LIKE")


def _doubt_behind(row: Row, cut, place: int, act: bool) -> bool:
    """ "taped, I think", "every two, give or take": a clause that only doubts the one before it."""
    if place + 1 >= len(cut) or cut[place + 1].sentence > cut[place].sentence + 1:
        return False
    concepts = [item.concept for item in row.items[cut[place + 1].first : cut[place + 1].last]]
    loosely = row.words(cut[place + 1].first, cut[place + 1].last).lower() in words_of("small.loosely")
    return bool({"THINK", "DOUBT", "HEDGE" if loosely or not act else ""} & set(concepts)) and set(concepts) <= {"THINK", "HEDGE", "DOUBT", "FILLER", "I", "THIS", "OR", "BUT", "NOT", "DET"}


_OF_THE_WORK = ("NUM", "LEN", "FRAC", "SIZE", "STAPLED", "TAPED", "RUBBED", "VANES", "MARKED", "DEG", "MARK181", "CLOSURE", "SIDE", "STAPLES", "TAPE", "NOT_DONE", "PENDING", "DAMAGE", "GAP")


def _clause_start(places: Places, at: int) -> int:
    before = bisect_left(places.ends, at)
    return places.ends[before - 1] + 1 if before else 0


def _behind_an_aside(row: Row, first: int) -> bool:
    """ "Left in three, no I'm looking at it backwards, right in three": a clause of no work between, that begins by taking back."""
    at = first - 1
    if at < 1 or row.items[first - 1].concept not in ("COMMA", "STOP"):
        return False
    begin = at
    while begin > 0 and row.items[begin - 1].concept not in ("COMMA", "STOP", "QUERY"):
        begin -= 1
    aside = row.items[begin:at]
    takes_back = bool(aside) and (aside[0].concept == "FIX" or aside[0].concept == "NO" and aside[0].end - aside[0].start == 2)
    return takes_back and len(aside) > 1 and not any(item.concept in _OF_THE_WORK or item.concept.startswith("K_") for item in aside)


def _corrects_behind(row: Row, one: Claim) -> bool:
    """ "Every two, I misspoke.": the word of correction stands behind what is said again."""
    at = one.last
    if at < len(row.items) and row.items[at].concept == "COMMA":
        at += 1
    ends = at + 1 >= len(row.items) or row.items[at + 1].concept in ("STOP", "QUERY")
    return at < len(row.items) and row.items[at].concept == "FIX" and ends and at > one.last and row.words(at, at + 1).lower() in words_of("small.my_fault")


def _already(row: Row, first: int) -> bool:
    """ "no estaba encintado, ya lo encinté", "and now it sits": what is done by now takes the place of what was not."""
    behind = row.items[first].start
    return in_any("small.by_now").search(row.text[max(0, behind - 24) : behind].lower().rstrip()) is not None


def _sounds_like_no(row: Row, first: int) -> bool:
    """ "new vanes", "know tape": the ears write so what may have been "no vanes", "no tape"."""
    said = row.words(max(0, first - 2), first).lower().split() if first else []
    return bool(said) and said[-1] in words_of("small.sounds_like_no") and words_of("small.is_new").isdisjoint(said[-2:-1])


def _trailing_hedge(row: Row, at: int) -> bool:
    """ "eighteen or so", "twenty more or less": a hedge with nothing to hedge behind it."""
    return at + 1 >= len(row.items) or row.items[at + 1].concept in ("COMMA", "STOP", "AND", "QUERY")


def _corrects(row: Row, places: Places, first: int) -> bool:
    at, steps = first - 1, 0
    while at >= 0 and steps < 6:
        concept = row.items[at].concept
        if concept in ("FIX", "SHOULD_HAVE"):
            return True
        if concept == "NOT" and row.items[at].end - row.items[at].start == 2 and row.items[at + 1].concept == "COMMA":
            return True
        if concept == "FILLER" and row.items[at + 1].concept == "I" and row.text[row.items[at].start : row.items[at].end].lower() in words_of("small.and_so"):
            return True  # "it wasn't taped, so I taped it"
        if concept in ("NUM", "MARKED") and (row.items[at + 1].concept in ("BE", "HAVE") or at and row.items[at - 1].concept.startswith("K_")) or concept.startswith("K_") and row.items[at + 1].concept in ("NUM", "MARKED"):
            at, steps = at - 1, steps + 1  # "hold on, nine's ten by twelve"
            continue
        if concept not in _BEFORE_FIX:
            return _behind_an_aside(row, _clause_start(places, first))
        if concept == "NO" and at > 0 and row.items[at - 1].concept in ("COMMA", "STOP") and (row.items[at - 1].concept == "COMMA" or row.items[at + 1].concept == "COMMA") and row.items[at].end - row.items[at].start == 2:
            return True
        at, steps = at - 1, steps + 1
    return False
