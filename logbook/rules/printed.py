"""The rule book as JSON: what each rule asks under a job, where its limits come from, and how people say it.

What `logbook rules --json` prints and a closeout package keeps. Limits are those of the job, three places; a length
whose decimal is rounded carries its fraction as `exact`.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from logbook import limits, measure
from logbook.findings import Example, Rule, source_says
from logbook.findings.judging import plain
from logbook.job import Job
from logbook.wording import say


def book(rules: Iterable[Rule], job: Job, language: str) -> list[dict[str, object]]:
    """The documents of the rules, in the order given, in the reader's language."""
    return [document(rule, job, language) for rule in rules]


def document(rule: Rule, job: Job, language: str) -> dict[str, object]:
    """One rule. `concerns` is empty where every fitting is meant; weight and silence are those of the job."""
    return {
        "id": rule.id,
        "name": say(f"rules.{rule.id}.name", language),
        "holds": say(f"rules.{rule.id}.holds", language),
        "concerns": list(rule.concerns),
        "weight": job.weights.get(rule.id, rule.weight),
        "silent": job.silence.get(rule.id, rule.silent),
        "may_stand": list(rule.may_stand),
        "limits": [limit(name, job) for name in rule.limits],
        "source": source_says(rule.source, language),
        "ref": rule.source.ref,
        "confidence": rule.source.confidence,
        "examples": [example(one) for one in rule.examples],
    }


def limit(name: str, job: Job) -> dict[str, object]:
    """A limit as the job sets it; `value` null where nobody published one and the job left it open."""
    row, value = limits.BY_NAME[name], job.limit(name)
    exact = measure.exact(value) if isinstance(value, Fraction) else None
    return {
        "name": name,
        "value": plain(value),
        **({} if exact is None else {"exact": exact}),
        "unit": row.unit,
        "of_the_job": value != row.default,
    }


def example(one: Example) -> dict[str, object]:
    """Spoken words and the verdict they get; null: the rule is not due. `job` and `shift` only where they are needed."""
    doc: dict[str, object] = {"words": one.words, "language": one.language, "verdict": one.verdict, "case": one.case}
    return doc | ({"job": one.job} if one.job else {}) | ({"shift": one.shift} if one.shift else {})
