"""What a lead found himself, against what the installer said: two people, one fitting."""

from __future__ import annotations

from fractions import Fraction

from logbook import facts
from logbook.facts import Move
from logbook.findings import Outcome, Rule, Source, Told
from logbook.job import Job
from logbook.joining.joined import one_family
from logbook.piece import Found, Piece
from logbook.rules.using import Use
from logbook.runs import Around

ID = "looked-agrees"
ONWARD = ((False, True), ("made", "hung"))  # an act that was done since it was spoken of: no disagreement


def looked_agrees(piece: Piece, around: Around) -> Outcome | None:
    """Departs where a fact that the installer said is another than the one the lead found.

    A look that answered a flagged finding is that finding's own matter: it counts here only where its rule is met as said.
    """
    use, job = Use(piece, around), around.job
    compared = [one for one in piece.found if piece.value(one.name) is not None and _sure(one, job) and _counts(one, piece, around)]
    if not compared:
        return None
    said = {one.name: use.said(one.name) for one in compared}
    counted = [one for one in compared if not one.anew]
    if not counted:
        return use.meets("said-anew")
    evidence = tuple(f"found {one.name}: {facts.to_json(one.name, one.value)}" for one in counted)
    more = {"tolerance": use.limit("size_tolerance"), "evidence": evidence}
    other = next((one for one in counted if not same(one.name, said[one.name], one.value, job)), None)
    if other is None:
        return use.meets("same", **more)
    told = {"said": Told(other.name, said[other.name]), "found": Told(other.name, other.value)}
    return use.departs("other", asks=other.name, tells=told, **more)


def _sure(one: Found, job: Job) -> bool:
    """Whether the lead himself was heard well enough to stand against another's word."""
    return one.heard is None or one.heard >= job.limit("faint_number")


def _counts(one: Found, piece: Piece, around: Around) -> bool:
    if one.rule is None or one.rule == ID:
        return True
    from logbook.rules import BY_ID  # the whole book: read when a look is asked about, not while the book is laid out

    outcome = BY_ID[one.rule].judge(piece, around) if one.rule in BY_ID else None
    return outcome is None or outcome.verdict == "meets"


def same(name: str, said: object, found: object, job: Job) -> bool:
    """Whether two people told the same of a fact: lengths inside `size_tolerance`, other numbers inside `hedge_share`."""
    near, share = job.limit("size_tolerance"), job.limit("hedge_share")
    match facts.BY_NAME[name].shape:
        case "length":
            return abs(said - found) <= near
        case "number" | "angle":
            return abs(said - found) <= abs(said) * share
        case "size":
            return facts.same_size(said, found, near)
        case "slope":
            return abs(Fraction(said[0]) / said[1] - Fraction(found[0]) / found[1]) * said[1] <= said[0] * share
        case "moves":
            return all(_same_move(one, other, near) for one in said for other in found if one.side == other.side)
        case "sides":
            return set(said) == set(found)
        case "marks":
            return {facts.bare_mark(mark) for mark in found} <= {facts.bare_mark(mark) for mark in said}
    return said == found or (said, found) in ONWARD or (name == "kind" and one_family(said, found))


def _same_move(one: Move, other: Move, near: Fraction) -> bool:
    """Two words of one side: what only one of them said is no difference."""
    ways = one.way == other.way or None in (one.way, other.way)
    pairs = ((one.by, other.by), (one.back, other.back))
    return ways and all(a is None or b is None or abs(a - b) <= near for a, b in pairs)


LOOKED_AGREES = Rule(
    id=ID,
    concerns=(),
    weight="must",
    silent="not due",
    may_stand=(),
    limits=("size_tolerance", "hedge_share"),
    source=Source("", "c"),
    judge=looked_agrees,
)
