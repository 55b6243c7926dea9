"""What an "it isn't" behind a condition, a drawing or another's words denies: "if it was taped I'd hang it, but it isn't", "the drawing has vanes, mine doesn't"."""

from __future__ import annotations

from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.denials import ACTS, PAST
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of
from logbook.reading.clauses.stance import Clause, would
from logbook.reading.own.turned import acts_of_the_piece

_SMALL = ("BE", "DET", "IT", "FILLER", "THIS", "HAVE", "ON", "OF", "IN", "WITH", "YET", "I", "ANY")


def but_not(row: Row, why: dict[int, str], cut: tuple[Clause, ...]) -> list[Claim]:
    """ "If it was taped I'd hang it, but it isn't", "the drawing has vanes, mine doesn't": the act named before is denied."""
    made: list[Claim] = []
    for place, clause in enumerate(cut):
        if place == 0 or clause.first in why and not _own_again(row, clause):
            continue
        not_at = next((at for at in range(clause.first, clause.last) if row.items[at].concept in ("NOT", "NO")), None)
        if not_at is None or not _only_small(row, clause, not_at) or not words_of("small.sees").isdisjoint(row.words(clause.first, clause.last).lower().split()):
            continue  # "the kid says he taped it, I didn't see it": he may have
        act = _act_of_others(row, why, cut, place)
        if act is not None and not _so_far(row, act) and not _told_next(row, cut, place, ACTS[row.items[act].concept]):
            made.append(claim(row, ACTS[row.items[act].concept], False, clause.first, clause.last, corrects=True, hedged=False))
    return made


def _told_next(row: Row, cut: tuple[Clause, ...], place: int, name: str) -> bool:
    """ "I thought I'd forgotten the tape but no, it's taped": the "no" is of what he thought."""
    if place + 1 >= len(cut) or cut[place + 1].sentence != cut[place].sentence:
        return False
    concepts = [row.items[at].concept for at in range(cut[place + 1].first, cut[place + 1].last)]
    return any(concept in PAST and ACTS[concept] == name for concept in concepts if concept in ACTS) and not {"NO", "NOT", "NOT_DONE", "PENDING", "WILL"} & set(concepts)


def _so_far(row: Row, act: int) -> bool:
    """ "I thought the staples were three apart, they're not": of their measure, and not of the staples."""
    if row.items[act].concept not in ("STAPLES", "TABS"):
        return False
    for at in range(act + 1, min(act + 8, len(row.items))):
        if row.items[at].concept in ("COMMA", "STOP", "QUERY", "BUT"):
            return False
        if row.items[at].concept in ("LEN", "FRAC", "APART", "EVERY") or row.items[at].concept == "NUM" and row.items[at - 1].concept in ("BE", "ON", "AT"):
            return True
    return False


def _own_again(row: Row, clause: Clause) -> bool:
    return row.items[clause.first].concept == "BUT"


def _only_small(row: Row, clause: Clause, not_at: int) -> bool:
    for at in range(clause.first, clause.last):
        item = row.items[at]
        if at == not_at or item.concept in ("BUT", "AND", *_SMALL):
            continue
        if item.concept in ("FITTING", "NUMBER", "NUM", "GENERIC") and at < not_at:
            continue
        if item.concept in ("IN_PLACE", "MOVE_IN") and at < not_at:  # "this one went in without"
            continue
        if row.words(at, at + 1).lower() in ("went", "comes", "goes", "mine", "ours", "any", "them", "there", "mío", "mía", "that", "ninguna", "actually", "though"):
            continue
        return False
    return True


def _act_of_others(row: Row, why: dict[int, str], cut, place: int) -> int | None:
    """The act last named in a clause right before, of this sentence, that was a condition, a drawing or another's."""
    for before in range(place - 1, max(-1, place - 5), -1):
        if cut[before].sentence != cut[place].sentence:
            return None
        acts = acts_of_the_piece(row, cut[before], ACTS)
        if acts and would(row, cut[before]):
            return None
        if acts:
            return acts[0] if why.get(acts[0]) in ("condition", "drawing", "other") else None
    return None
