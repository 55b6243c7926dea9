"""What a rule is, what it answers, and the loop that asks every rule of the book.

A rule is data plus one pure function. The function gets the joined piece and what lies around it and answers
an `Outcome` (or None: the rule is not due). Weight and silence come from the job; the texts come from
`wording/<language>/rules.toml`, keys `<rule id>.<case>.says` and `.do`, filled from `reckoned` and `tells`.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace

VERDICTS = ("meets", "departs", "unsaid", "unclear")
WEIGHTS = ("must", "should", "keep")
SILENCES = ("flag", "ask", "count", "not due")
SHOWS = ("flag", "ask", "count", "file")


@dataclass(frozen=True)
class Lean:
    """A finding leaned on a word that nobody said on this piece: `via` is job, shift or phrase."""

    name: str
    via: str


@dataclass(frozen=True)
class Outcome:
    """What a rule function answers. `reckoned` numbers are Fractions or ints (three places in JSON)."""

    case: str
    verdict: str
    reckoned: Mapping[str, object] = field(default_factory=dict)
    facts: tuple[str, ...] = ()
    leans_on: tuple[Lean, ...] = ()
    asks: str | None = None
    evidence: tuple[str, ...] = ()
    limit: object = None  # as printed in the finding: number, text, list; part of its edition
    tolerance: object = None
    conflict: bool = False  # unclear because two facts conflict: shown as a departure
    departs_as_heard: bool = False  # unclear by hedge or faint hearing, but departs on the reading as heard
    tells: Mapping[str, object] = field(default_factory=dict)  # words for the text that are no numbers (side, mark)


@dataclass(frozen=True)
class Example:
    """A spoken example of a rule: these words under the default job (or `job` settings) give this verdict."""

    words: str
    verdict: str
    case: str | None = None
    language: str = "en"
    job: Mapping[str, object] = field(default_factory=dict)


@dataclass(frozen=True)
class Source:
    """Where a limit comes from. `confidence` a, a*, b, b? or c decides the words people see."""

    ref: str  # handbook ids, e.g. "CL-01, CL-07"
    confidence: str
    document: str = ""


@dataclass(frozen=True)
class Rule:
    id: str
    concerns: tuple[str, ...]  # kinds, or () for all
    weight: str
    silent: str
    may_stand: tuple[str, ...]  # job shift phrase tag
    limits: tuple[str, ...]  # names in `limits.py`
    source: Source
    judge: Callable  # (piece, around) -> Outcome | None
    examples: tuple[Example, ...] = ()


@dataclass(frozen=True)
class Finding:
    rule: str
    piece: str | None
    case: str
    verdict: str
    weight: str
    shows: str
    limit: object
    tolerance: object
    reckoned: Mapping[str, object]  # JSON numbers, three places
    facts: tuple[str, ...]
    leans_on: tuple[Lean, ...]
    asks: str | None
    source: str
    edition: str
    evidence: tuple[str, ...] = ()
    tells: Mapping[str, object] = field(default_factory=dict)
    stands: str | None = None  # open, in hand, settled, closed; only in the log
    changed_after_answer: bool = False
    earlier: tuple[Mapping[str, object], ...] = ()


def shows(outcome: Outcome, weight: str, silent: str) -> str:
    """Who is bothered: flag, ask, count or file, from the weight and the rule's silence setting."""
    as_departs = {"must": "flag", "should": "count", "keep": "file"}[weight]
    match outcome.verdict:
        case "meets":
            return "file"
        case "departs":
            return as_departs
        case "unsaid":
            return silent
    if outcome.conflict:
        return as_departs
    return "flag" if outcome.departs_as_heard and weight == "must" else "ask"


def flagged(findings) -> bool:
    return any(finding.shows == "flag" for finding in findings)


def with_stands(finding: Finding, stands: str | None) -> Finding:
    return replace(finding, stands=stands)
