"""The loop: every rule of the book is asked about one piece, in the book's order."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction
from functools import lru_cache
from hashlib import sha256

import rfc8785

from logbook import facts, limits
from logbook.findings import Finding, Outcome, Rule, doubt, not_followed, shows
from logbook.job import Job, canonical
from logbook.piece import Piece
from logbook.runs import Around

LEAK = ("leak_flow", "leak_pressure", "leak_area")
DEFERS = ("damper_sleeve",)  # kinds of which every finding defers
_ORDER = {rule: place for place, rule in enumerate(limits.RULE_IDS)}


def judge(piece: Piece, around: Around, rules: Sequence[Rule]) -> tuple[Finding, ...]:
    """The due findings of a piece, in the order of `rules`.

    Where nobody said what kind of piece it is, a rule of some kinds only is due where what was said departs from it: "the step is on the outside, number six".
    """
    kind = piece.value("kind")
    leak_test = kind is None and any(piece.value(name) is not None for name in LEAK)
    found = ((finding(rule, piece, around), _concerned(rule, kind, leak_test)) for rule in rules if kind is None and not leak_test or _concerned(rule, kind, leak_test))
    return tuple(one for one, concerned in found if one is not None and (concerned or one.verdict == "departs"))


def _concerned(rule: Rule, kind: str | None, leak_test: bool) -> bool:
    if leak_test:
        return rule.leak_test
    return not rule.concerns or kind in rule.concerns or (kind is None and rule.kind_unsaid)


def finding(rule: Rule, piece: Piece, around: Around) -> Finding | None:
    """What one rule finds, or None where it is not due."""
    outcome = not_followed.answer(rule, piece, around.job, doubt.answer(rule, piece, around))
    return None if outcome is None else of_outcome(rule, outcome, piece, around.job)


def of_outcome(rule: Rule, outcome: Outcome, piece: Piece, job: Job) -> Finding | None:
    """The record of an answer under the job's weights and silence; None where silence is not due here."""
    weight = job.weights.get(rule.id) or outcome.weight or rule.weight
    silent = job.silence.get(rule.id) or outcome.silent or rule.silent
    if outcome.verdict == "unsaid" and silent == "not due":
        return None
    limit, tolerance = plain(outcome.limit), plain(outcome.tolerance)
    return Finding(
        rule=rule.id,
        piece=piece.id,
        case=outcome.case,
        verdict=outcome.verdict,
        weight=weight,
        shows=shows(outcome, weight, silent),
        limit=limit,
        tolerance=tolerance,
        reckoned={name: plain(value) for name, value in outcome.reckoned.items()},
        facts=outcome.facts,
        leans_on=outcome.leans_on,
        asks=outcome.asks,
        source=outcome.source or rule.source,
        edition=edition(rule.id, limit, tolerance, outcome, piece),
        evidence=outcome.evidence,
        tells=outcome.tells,
        text=outcome.text,
        stated=outcome.stated,
        phrase=_phrase(outcome, piece),
        defers=rule.defers or piece.value("kind") in DEFERS,
        offers=outcome.offers,
    )


def edition(rule: str, limit, tolerance, outcome: Outcome, piece: Piece) -> str:
    """The SHA-256 of the canonical JSON (RFC 8785) of everything the finding was reckoned from.

    The facts stand in the order of the piece, the standing words in the order of `leans_on`.
    """
    used = tuple([(one.name, one.value, one.hedged, one.conflict) for one in piece.named(outcome.facts)])
    stood = tuple(
        (word.name, word.value)
        for lean in outcome.leans_on
        for word in piece.assumed
        if (word.name, word.via) == (lean.name, lean.via)
    )
    bounds = UNBOUND if limit is None and tolerance is None else json.dumps([limit, tolerance])
    return _digest(rule, bounds, used, stood, outcome.evidence)


UNBOUND = "[null, null]"


@lru_cache(maxsize=16384)  # most pieces of a job say the same of staples and tape, and every piece is judged often
def _digest(rule: str, bounds: str, used: tuple, stood: tuple, evidence: tuple[str, ...]) -> str:
    limit, tolerance = json.loads(bounds)
    said = []
    for name, value, hedged, conflict in used:
        exact = facts.exact_to_json(name, value)
        entry = {"name": name, "value": facts.to_json(name, value)} | ({} if exact is None else {"exact": exact})
        said.append(entry | {flag: True for flag, holds in (("hedged", hedged), ("conflict", conflict)) if holds})
    assumed = [{"name": name, "value": facts.to_json(name, value)} for name, value in stood]
    body = {"rule": rule, "limit": limit, "tolerance": tolerance, "facts": said, "assumed": assumed}
    return sha256(rfc8785.dumps(body | {"evidence": list(evidence)})).hexdigest()


def plain(value: object) -> object:
    """The JSON form of a limit or a reckoned value: three places."""
    match value:
        case None | str():
            return value
        case Fraction():
            return int(value) if value.denominator == 1 else round(float(value), 3)
        case tuple() | list():
            return [plain(one) for one in value]
        case Mapping():
            return {name: plain(one) for name, one in value.items()}
    return value


def _phrase(outcome: Outcome, piece: Piece) -> str | None:
    for fact in piece.named(outcome.facts):
        if fact.via == "phrase":
            return fact.words
    return None


def questions(by_position: Mapping[int, Iterable[Finding]]) -> tuple[tuple[int, str], ...]:
    """At most two questions of a note: what is unsaid or unclear, bothers somebody and is not settled.

    In the order of the book, then of the note. A departure is told, not asked. One word answers every finding that
    waits for the same fact, so a fact is asked for once.
    """
    due = sorted(
        (_ORDER[one.rule], position, one.rule, one.asks or one.rule)
        for position, found in by_position.items()
        for one in found
        if one.verdict in ("unsaid", "unclear") and one.shows in ("flag", "ask") and one.stands in ("open", None)
    )
    first: dict[tuple[int, str], tuple[int, str]] = {}
    for _, position, rule, asked in due:
        first.setdefault((position, asked), (position, rule))
    return tuple(first.values())[:QUESTIONS]


QUESTIONS = 2


def job_digest(job: Job, rules: Sequence[Rule]) -> str:
    """The digest of the rule book under a job: what the findings of a signed day are kept with."""
    book = [
        {
            "id": rule.id,
            "concerns": list(rule.concerns),
            "weight": rule.weight,
            "silent": rule.silent,
            "may_stand": list(rule.may_stand),
            "limits": list(rule.limits),
            "source": [rule.source.ref, rule.source.confidence, rule.source.document],
        }
        for rule in rules
    ]
    return sha256(rfc8785.dumps({"rules": book, "job": canonical(job)})).hexdigest()
