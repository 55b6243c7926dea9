"""What a hedge, a faint word, a second hearing or a conflict makes of a rule's answer.

A rule function judges the words as they were heard. Here the same function is asked again with every value that
the words may have meant: if its verdict turns, nobody can tell, and the finding is `unclear`. So one place decides
for all rules, and no rule knows of hedges. `about` is worth the greater of a length and a share of the value (limits
`hedge_length`, `hedge_share`); a hedged yes may be a no.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from itertools import product

from logbook import facts
from logbook.facts import Move
from logbook.findings import Outcome, Rule, Told
from logbook.job import Job
from logbook.piece import Piece
from logbook.runs import Around
from logbook.said import Fact

# What the finding is about is asked by the rules that name the piece, not by every rule that reads it.
_NAMES_THE_PIECE = {"kind": ("sizes-said",), "mark": ("mark-said",), "run": ()}
_WAYS = (-1, 0, 1)


def answer(rule: Rule, piece: Piece, around: Around) -> Outcome | None:
    """The rule's answer, made unclear where the words leave it open."""
    outcome = rule.judge(piece, around)
    if outcome is None or outcome.verdict == "unclear":
        return outcome
    used = [fact for fact in piece.named(outcome.facts) if _asked_here(rule, fact)]
    conflict = next((fact for fact in used if fact.conflict), None)
    if conflict is not None and not (outcome.verdict == "departs" and _departs_either_way(rule, piece, around, conflict.name)):
        values = [fact.value for fact in piece.facts if fact.name == conflict.name and fact.conflict]
        told = {"one": Told(conflict.name, values[0]), "other": Told(conflict.name, values[-1])}
        return _unclear(outcome, "in-conflict", conflict, conflict=True, reckoned={}, departs_as_heard=False, tells=told)
    if outcome.verdict == "unsaid":
        return outcome
    faint = next((fact for fact in used if _faint(fact, around.job)), None)
    for fact in used:
        for other in () if fact.confirmed else fact.alternatives:
            if not _says_less(other, fact.value) and _turns(rule, piece, around, fact, other, outcome):
                told = {"value": Told(fact.name, fact.value), "other": Told(fact.name, other)}
                return _unclear(outcome, "maybe-misheard", fact, tells=outcome.tells | told)
    if faint is not None:
        told = {"value": Told(faint.name, faint.value), "words": faint.words or ""}
        return _unclear(outcome, "heard-faintly", faint, tells=outcome.tells | told)
    return _hedges(rule, piece, around, used, outcome)


def _departs_either_way(rule: Rule, piece: Piece, around: Around, name: str) -> bool:
    """ "Three inches, three and a quarter apart": whichever of them is so, it is too far."""
    said = [fact for fact in piece.facts if fact.name == name]
    rest = tuple(fact for fact in piece.facts if fact.name != name)
    judged = [rule.judge(replace(piece, facts=(*rest, replace(one, conflict=False))), around) for one in said]
    return all(one is not None and one.verdict == "departs" for one in judged)


def _faint(fact: Fact, job: Job) -> bool:
    """Heard too faintly to stand on; a number that is wrong is wronger than a word, so it needs more."""
    if fact.heard is None or fact.confirmed:
        return False
    name = "faint" if facts.BY_NAME[fact.name].shape in ("flag", "choice", "text", "sides", "marks") else "faint_number"
    return fact.heard < job.limit(name)


def _says_less(other: object, value: object) -> bool:
    """Another hearing that only lost words (a move without its side) is no other reading of them."""
    if not (isinstance(value, tuple) and isinstance(other, tuple) and value and all(isinstance(one, Move) for one in (*value, *other))):
        return False
    return len(other) <= len(value) and all(
        any(all(getattr(less, part) in (None, getattr(more, part)) for part in ("side", "by", "back", "way")) for more in value)
        for less in other
    )


def _asked_here(rule: Rule, fact: Fact) -> bool:
    return fact.name not in _NAMES_THE_PIECE or rule.id in _NAMES_THE_PIECE[fact.name]


def _hedges(rule: Rule, piece: Piece, around: Around, used: list[Fact], outcome: Outcome) -> Outcome:
    hedged = [fact for fact in used if fact.hedged]
    if not hedged:
        return outcome
    for fact in hedged:
        worth = worth_of(fact, around.job)
        for other in variants(fact, around.job):
            if _turns(rule, piece, around, fact, other, outcome):
                case = "hedged" if worth is None else "hedged-at-the-limit"
                told = outcome.tells | {"value": Told(fact.name, fact.value)}
                reckoned = dict(outcome.reckoned) | ({} if worth is None else {"doubt_in": worth})
                return _unclear(outcome, case, fact, reckoned=reckoned, tells=told)
    worth = max((w for w in (worth_of(fact, around.job) for fact in hedged) if w is not None), default=None)
    return outcome if worth is None else replace(outcome, reckoned=dict(outcome.reckoned) | {"doubt_in": worth})


def _unclear(outcome: Outcome, case: str, fact: Fact, **changes) -> Outcome:
    as_heard = {"departs_as_heard": outcome.verdict == "departs", "text": None}
    return replace(outcome, case=case, verdict="unclear", asks=fact.name, **(as_heard | changes))


def _turns(rule: Rule, piece: Piece, around: Around, fact: Fact, other: object, outcome: Outcome) -> bool:
    changed = tuple(replace(one, value=other) if one is fact else one for one in piece.facts)
    second = rule.judge(replace(piece, facts=changed), around)
    return (None if second is None else second.verdict) != outcome.verdict


def worth_of(fact: Fact, job: Job) -> Fraction | None:
    """How much a hedge is worth on this value, in its own unit; None where it has no numbers."""
    match facts.BY_NAME[fact.name].shape:
        case "length":
            return _length(fact.value, job)
        case "size":
            return max(_length(side, job) for side in fact.value)
        case "moves":
            numbers = [number for move in fact.value for number in (move.by, move.back) if number is not None]
            return max((_length(number, job) for number in numbers), default=None)
        case "number" | "angle":
            return abs(fact.value) * job.limit("hedge_share")
        case "slope":
            return abs(fact.value[0]) * job.limit("hedge_share")
    return None


def _length(value: Fraction, job: Job) -> Fraction:
    return max(job.limit("hedge_length"), abs(value) * job.limit("hedge_share"))


_THERE_OR_NOT = ("gap",)  # about an eighth of a gap is a gap, however wide


def variants(fact: Fact, job: Job) -> Iterator[object]:
    """Every value at the edge of what the hedged words may have meant, in the fact's shape."""
    row = facts.BY_NAME[fact.name]
    match row.shape:
        case "length":
            yield from (other for other in _around(fact.value, _length(fact.value, job)) if other or fact.name not in _THERE_OR_NOT)
        case "number" | "angle":
            yield from _around(fact.value, worth_of(fact, job))
        case "slope":
            rise, run = fact.value
            yield from ((other, run) for other in _around(rise, worth_of(fact, job)))
        case "size":
            sides = [(side, *_around(side, _length(side, job))) for side in fact.value]
            yield from (size for size in product(*sides) if size != fact.value)
        case "moves":
            for place, move in enumerate(fact.value):
                yield from (fact.value[:place] + (other,) + fact.value[place + 1 :] for other in _moves(move, job))
        case "flag":
            yield not fact.value
        case "choice":
            yield from (value for value in row.values if value != fact.value)


def _around(value: Fraction, worth: Fraction) -> tuple[Fraction, ...]:
    """Both edges; a length does not fall below nothing."""
    low = value - worth
    return (low if value < 0 or low > 0 else Fraction(0), value + worth)


def _moves(move: Move, job: Job) -> Iterator[Move]:
    def edges(number: Fraction | None):
        return (number,) if number is None else (number, *_around(number, _length(number, job)))

    yield from (Move(move.side, by, back, move.way) for by, back in product(edges(move.by), edges(move.back)))
