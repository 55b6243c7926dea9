"""A finding as sentences and as JSON. What is kept is the rule, the case and the numbers; words belong to the reader."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from logbook import facts, labels, measure
from logbook.findings import Finding, Lean, Source, Told, Word
from logbook.wording import has, say


class Number(Fraction):
    """A reckoned number inside a sentence: a decimal of two places; `{x:trade}` prints 2-1/2."""

    def __format__(self, spec: str) -> str:
        return measure.printed(Fraction(self)) if spec == "trade" else measure.decimal(Fraction(self))


class Spelled(str):
    """A word inside a sentence; `{x:first}` begins the sentence with it."""

    def __format__(self, spec: str) -> str:
        return self[:1].upper() + self[1:] if spec == "first" else str(self)


def says(finding: Finding, language: str) -> str:
    """The finding in one or two sentences: what was reckoned, and the limit."""
    if finding.printed is not None:
        return finding.printed[0]
    sentences = [say(_key(finding, "says"), language, **_values(finding, language))]
    if finding.verdict == "meets" and "doubt_in" in finding.reckoned:
        sentences.append(say("rules.any.within-doubt", language, **_values(finding, language)))
    if finding.phrase is not None:
        sentences.append(say("rules.any.by-phrase", language, phrase=finding.phrase))
    if finding.defers:
        sentences.append(say("rules.any.defers", language))
    return " ".join(sentences)


def does(finding: Finding, language: str) -> str | None:
    """What to do about it, or None where there is nothing to do."""
    if finding.printed is not None:
        return finding.printed[1]
    key = _key(finding, "do")
    return say(key, language, **_values(finding, language)) if has(key, language) else None


def source_says(source: Source, language: str) -> str:
    """The source in the words that its confidence allows."""
    if not source.confidence:
        return source.document
    form = {"a": "read", "a*": "quoted", "b": "memory", "b?": "memory", "c": "own"}[source.confidence]
    document = say(f"rules.document.{source.document}", language) if source.document else ""
    return say(f"rules.source.{form}", language, document=document)


def _key(finding: Finding, part: str) -> str:
    """The case's own sentence, else the sentence that every rule shares for it."""
    for case in (finding.text, finding.case):
        if case is not None and has(f"rules.{finding.rule}.{case}.{part}"):
            return f"rules.{finding.rule}.{case}.{part}"
    return f"rules.any.{finding.case}.{part}"


def _values(finding: Finding, language: str) -> dict[str, object]:
    values = {name: _shown(value, language) for name, value in (dict(finding.reckoned) | dict(finding.tells)).items()}
    stated = "" if finding.stated is None else say(f"rules.stated.{finding.stated}", language)
    fact = Spelled(labels.name(finding.asks, language) if finding.asks in facts.BY_NAME else "")
    return {"fact": fact, "revision": "–", **values, "as_stated": stated}


def _shown(value: object, language: str) -> object:
    match value:
        case bool():
            return say("facts.yes" if value else "facts.no", language)
        case int() | float() | Fraction():
            return Number(str(value))
        case Word():
            return Spelled(say(f"rules.word.{value.key}", language))
        case Told():
            exact = facts.exact_to_json(value.name, value.value)
            return Spelled(labels.value(value.name, facts.to_json(value.name, value.value), exact, language))
        case tuple() | list():
            return ", ".join(format(_shown(one, language)) for one in value)
    return Spelled(value)


def to_json(finding: Finding, language: str, *, log: bool = False) -> dict[str, object]:
    """The contract's shape. In the log a finding also carries where it `stands`."""
    doc: dict[str, object] = {
        "rule": finding.rule,
        "piece": finding.piece,
        "case": finding.case,
        "verdict": finding.verdict,
        "weight": finding.weight,
        "shows": finding.shows,
        "says": says(finding, language),
        "do": does(finding, language),
        "limit": finding.limit,
        "tolerance": finding.tolerance,
        "reckoned": dict(finding.reckoned),
        "facts": list(finding.facts),
        "leans_on": [{"name": lean.name, "via": lean.via} for lean in finding.leans_on],
        "asks": finding.asks,
        "source": source_says(finding.source, language),
        "edition": finding.edition,
    }
    if finding.evidence:
        doc["evidence"] = list(finding.evidence)
    if finding.offers:
        doc["offers"] = list(finding.offers)
    if finding.changed_after_answer:
        doc["changed_after_answer"] = True
    if log or finding.stands is not None:
        doc["stands"] = finding.stands
    if finding.earlier:
        doc["earlier"] = [dict(row) for row in finding.earlier]
    if finding.wants is not None:
        doc["wants"] = dict(finding.wants)
    return doc


def from_json(doc: Mapping[str, object]) -> Finding:
    """A finding as a document keeps it; its sentences and its source stay as they were printed."""
    return Finding(
        rule=doc["rule"],
        piece=doc["piece"],
        case=doc["case"],
        verdict=doc["verdict"],
        weight=doc["weight"],
        shows=doc["shows"],
        limit=doc["limit"],
        tolerance=doc["tolerance"],
        reckoned=doc["reckoned"],
        facts=tuple(doc["facts"]),
        leans_on=tuple(Lean(lean["name"], lean["via"]) for lean in doc["leans_on"]),
        asks=doc["asks"],
        source=Source("", "", doc["source"]),
        edition=doc["edition"],
        evidence=tuple(doc.get("evidence", ())),
        offers=tuple(doc.get("offers", ())),
        printed=(doc["says"], doc["do"]),
        stands=doc.get("stands"),
        changed_after_answer=doc.get("changed_after_answer", False),
        earlier=tuple(doc.get("earlier", ())),
        wants=doc.get("wants"),
    )
