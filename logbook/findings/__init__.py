"""What a rule is, what it answers, and the loop that asks every rule of the book.

A rule is data plus one pure function. The function gets the joined piece and what lies around it and answers
an `Outcome` (or None: the rule is not due). Weight and silence come from the job; the texts come from
`wording/<language>/rules.toml`, keys `<rule id>.<case>.says` and `.do`, filled from `reckoned` and `tells`.

`judging.py` asks the rules, `doubt.py` decides what hedges, faint words and conflicts make of an answer,
`telling.py` turns a finding into sentences and JSON.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace

from logbook.record import record
from logbook.runs import Around

VERDICTS = ("meets", "departs", "unsaid", "unclear")
WEIGHTS = ("must", "should", "keep")
SILENCES = ("flag", "ask", "count", "not due")
SHOWS = ("flag", "ask", "count", "file")


@dataclass(frozen=True)
class Lean:
    """A finding leaned on a word that nobody said on this piece: `via` is job or shift."""

    name: str
    via: str


@dataclass(frozen=True)
class Word:
    """A word of a sentence by its key under `word` in rules.toml, so that every language has its own."""

    key: str


@dataclass(frozen=True)
class Told:
    """A fact's value inside a sentence, printed as the reader's language prints it."""

    name: str
    value: object


@dataclass(frozen=True)
class Source:
    """Where a limit comes from: handbook ids, how sure we are, and the document's key under `document` in rules.toml.

    `confidence` decides the words people see: a and a* name the document, b says that it is from memory, c that it is
    the job's own rule. An empty confidence is a source that was read back from a document, as it was printed.
    """

    ref: str  # handbook ids, e.g. "CL-01, CL-07"
    confidence: str
    document: str = ""


@record
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
    quiet: bool = False  # unclear, but nobody is asked: other rules ask for what matters of it
    departs_as_heard: bool = False  # unclear by hedge or faint hearing, but departs on the reading as heard
    tells: Mapping[str, object] = field(default_factory=dict)  # words for the text that are no numbers (side, mark)
    text: str | None = None  # the sentence, where one case has several; the case itself if None
    stated: str | None = None  # job or shift, where the fact that decides was not said on this piece
    weight: str | None = None  # where it is not the rule's own (advice rows)
    silent: str | None = None  # where it is not the rule's own (depends on the job or the run)
    source: Source | None = None  # where one row of the limit has another source than the rule
    offers: tuple[str, ...] = ()  # values of the fact it asks for that it names: each is answered by one press


@dataclass(frozen=True)
class Example:
    """A spoken example of a rule: these words under the default job (or `job`, a TOML text) give this verdict.

    `verdict` None: the rule is not due. `photos` counts good photos that come with the words.
    """

    words: str
    verdict: str | None
    case: str | None = None
    language: str = "en"
    job: str = ""
    shift: str = ""  # said before, as the note that starts the shift


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
    kind_unsaid: bool = False  # due as well where nobody said what kind it is
    leak_test: bool = False  # about the entry of a leak test, which is no fitting
    defers: bool = False  # about pressure, temperature or a place: prints the deferral


@record
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
    source: Source
    edition: str
    evidence: tuple[str, ...] = ()
    tells: Mapping[str, object] = field(default_factory=dict)
    text: str | None = None
    stated: str | None = None
    phrase: str | None = None  # the crew phrase that said one of the facts
    defers: bool = False
    offers: tuple[str, ...] = ()
    printed: tuple[str, str | None] | None = None  # says and do as printed, of a finding read back from a document
    stands: str | None = None  # open, in hand, settled, closed; only in the log
    changed_after_answer: bool = False
    earlier: tuple[Mapping[str, object], ...] = ()
    wants: Mapping[str, object] | None = None  # what the lead wants done about it, while it is not closed


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
    if outcome.quiet:
        return "file"
    return "flag" if outcome.departs_as_heard and weight == "must" else "ask"


def flagged(findings) -> bool:
    return any(finding.shows == "flag" for finding in findings)


def with_stands(finding: Finding, stands: str | None) -> Finding:
    return replace(finding, stands=stands)


from logbook.findings.judging import judge, questions  # noqa: E402  (they need the records above)
from logbook.findings.telling import does, from_json, says, source_says, to_json  # noqa: E402

__all__ = [
    "Around", "Example", "Finding", "Lean", "Outcome", "Rule", "SHOWS", "SILENCES", "Source", "Told", "VERDICTS",
    "WEIGHTS", "Word", "does", "flagged", "from_json", "judge", "questions", "says", "shows", "source_says", "to_json",
    "with_stands",
]  # fmt: skip
