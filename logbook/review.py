"""Decisions about findings, and where a finding stands.

The words are those of ISO 9000:2015 section 3.12: rework (done again so that it meets), repair (made fit for use),
concession (accepted as it is), scrap; and three acts about the record: heard_wrong (with the corrected fact), looked
(verification, 3.8.12: who, when, how, and what he saw himself), asked (back to the installer, which leaves it open).
A decision holds for the edition it was made on; nothing is ever decided by silence.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime

from logbook.findings import Finding
from logbook.joining.values import read_value
from logbook.mistake import Mistake
from logbook.piece import Decision, Looked, Piece, decision_from_json, decision_to_json

DECISIONS = ("rework", "repair", "concession", "scrap", "heard_wrong", "looked", "asked")
WAYS_TO_LOOK = ("seen", "felt", "measured", "photo")
STAYS_OPEN = ("rework", "repair", "asked")  # somebody has to do something, and by a day
STANDS = ("open", "in hand", "settled", "closed")
# A concession on these is the engineer's or the authority's, never the shop's own: it needs their name and document.
GRANTED_ELSEWHERE = (
    "closure-listed", "metal-closure", "static-pressure", "span-unreinforced", "leak-test", "air-temperature",
    "allowed-there",
)  # fmt: skip
GRANTED_ELSEWHERE_FOR = {"metal-fastening": "damper_sleeve"}  # only for this kind
LONGEST_REASON = 2000

__all__ = [
    "DECISIONS", "STANDS", "STAYS_OPEN", "WAYS_TO_LOOK", "Decision", "Looked", "Row", "decide", "decide_all",
    "decision_from_json", "decision_to_json", "stands", "wants",
]  # fmt: skip


@dataclass(frozen=True)
class Row:
    """A finding as it was before something changed it, and what ended it.

    `ended`: said (what was missing was said), done (an act went from not done to done), reworked (a note after
    rework or repair), looked (a lead looked again and found it so), corrected and corrected_after_answer (by the
    builder), lead (a lead's decision), other.
    """

    verdict: str
    case: str
    shows: str
    reckoned: Mapping[str, object]
    edition: str
    at: datetime
    ended: str

    def to_json(self) -> dict:
        head = {"verdict": self.verdict, "case": self.case, "shows": self.shows, "reckoned": dict(self.reckoned)}
        return head | {"edition": self.edition, "at": self.at.isoformat()}


def stands(
    finding: Finding,
    rows: Sequence[Row],
    decisions: Sequence[Decision],
    *,
    scrapped: bool = False,
    looked_meets: Collection[str] = (),
    told_after: Collection[str] = (),
) -> str | None:
    """Where the finding stands: open, in hand, settled, closed, or None where nobody has to act.

    `rows` and `decisions` are those of this rule on this piece, oldest first. `looked_meets` holds the looks with
    whose facts the rule is met; `told_after` the decisions after which a note told what was done. A departure leaves
    `open` by a decision or by the builder's own correction; anything else that makes it go away keeps it open.
    """
    flagged = [place for place, row in enumerate(rows) if row.shows == "flag"]
    if finding.shows != "flag" and not flagged:
        return None
    if scrapped:
        return "settled"
    made = [d for d in decisions if d.decision != "asked"]
    if finding.shows == "flag":
        held = [d for d in made if d.edition == finding.edition]
        where = _while_flagged(held[-1], looked_meets, told_after) if held else "open"
        asked_since = bool(held) and [d for d in decisions if d.edition == finding.edition][-1].decision == "asked"
        return "open" if where == "settled" and asked_since else where  # accepted, and then asked about after all
    now = [d for d in made if d.edition == finding.edition]
    if now:  # decided on it as it stands now, flagged no more
        match now[-1].decision:
            case "rework" | "repair":
                return "closed" if now[-1].id in told_after else "in hand"
            case "looked":
                return "settled" if now[-1].id in looked_meets else "open"
        return "settled"
    last = rows[flagged[-1]]
    editions = {row.edition for row in rows[flagged[-1] :]}
    held = [d for d in made if d.edition in editions]
    if held:
        if held[-1].decision in ("rework", "repair"):
            return "closed" if last.ended == "reworked" or held[-1].id in told_after else "in hand"
        return "settled"
    if last.ended in ("said", "done", "reworked", "looked"):
        return "closed"
    return None if last.ended in ("corrected", "corrected_after_answer") else "open"


def _while_flagged(decision: Decision, looked_meets: Collection[str], told_after: Collection[str]) -> str:
    match decision.decision:
        case "rework":
            return "in hand"
        case "repair":
            return "closed" if decision.id in told_after else "in hand"
        case "concession" | "scrap":
            return "settled"
        case "looked":
            return "settled" if decision.id in looked_meets else "open"
    return "open"  # heard_wrong that answers as before


def wants(finding: Finding, where: str | None, decisions: Sequence[Decision]) -> dict | None:
    """What the lead wants done about a finding that is not closed: the contract's members of his newest decision on it.

    `where` is what `stands` answered, `decisions` those of this rule, oldest first.
    """
    newest = decisions[-1] if decisions else None
    if newest is None or newest.decision not in STAYS_OPEN or where not in ("open", "in hand"):
        return None
    if newest.edition != finding.edition and where == "open":
        return None  # made on other words
    told = decision_to_json(newest)
    return {name: told[name] for name in ("decision", "by", "at", "reason", "owner", "due") if name in told}


def decide(
    body: Mapping[str, object],
    piece: Piece,
    findings: Sequence[Finding],
    *,
    by: str,
    at: datetime,
    today: date | None = None,
) -> Decision | Mistake:
    """The decision that `body` asks for (members as in the contract: id, rule, edition, decision, ...), or why not.

    `findings` are the piece's as they stand now. Nothing is changed by a refusal.
    """
    rule, word = body.get("rule"), body.get("decision")
    where = f"{piece.mark or '?'} {rule}"
    if word not in DECISIONS:
        return Mistake("review.no-such-decision", where, {"came": str(word)[:40], "expected": ", ".join(DECISIONS)})
    finding = next((one for one in findings if one.rule == rule), None)
    if finding is None:
        return Mistake("review.no-such-finding", where, {"rule": str(rule)[:60]})
    if body.get("edition") != finding.edition:
        return Mistake("review.other-edition", where, {"rule": rule})
    reason, granted_by, document = (_text(body.get(name)) for name in ("reason", "granted_by", "document"))
    if reason is not None and len(reason) > LONGEST_REASON:
        return Mistake("review.long-reason", where, {"longest": LONGEST_REASON, "came": len(reason)})
    refused = _refused(word, finding, piece, by, reason, granted_by, document, where)
    if refused is not None:
        return refused
    corrected = looked = None
    if word == "heard_wrong":
        corrected = _corrected(body.get("corrected"), finding, piece, where)
        if isinstance(corrected, Mistake):
            return corrected
    if word == "looked":
        looked = _looked(body.get("looked"), finding, where)
        if isinstance(looked, Mistake):
            return looked
    due = _due(body.get("due"), today or at.date(), where)
    if isinstance(due, Mistake):
        return due
    return Decision(
        id=str(body["id"]), piece=piece.id, rule=rule, edition=finding.edition, decision=word, by=by, at=at,
        reason=reason, corrected=corrected, looked=looked, granted_by=granted_by, document=document,
        owner=_text(body.get("owner")), due=due,
    )  # fmt: skip


def decide_all(
    bodies: Sequence[tuple[Mapping[str, object], Piece, Sequence[Finding]]], *, by: str, at: datetime
) -> tuple[Decision, ...] | tuple[Mistake, ...]:
    """Several at once, all or none: every decision, or every mistake there is."""
    made = [decide(body, piece, findings, by=by, at=at) for body, piece, findings in bodies]
    wrong = tuple(one for one in made if isinstance(one, Mistake))
    return wrong or tuple(made)


def _refused(word, finding, piece, by, reason, granted_by, document, where) -> Mistake | None:
    if word != "concession":
        return None
    if finding.verdict == "meets":
        return Mistake("review.nothing-to-concede", where, {"rule": finding.rule})
    if reason is None:
        return Mistake("review.no-reason", where, {"rule": finding.rule})
    if granted_elsewhere(finding.rule, piece.value("kind")) and (granted_by is None or document is None):
        missing = "neither" if granted_by is None and document is None else "document" if document is None else "granted-by"
        return Mistake(f"review.granted-elsewhere-{missing}", where, {"rule": finding.rule})
    if (granted_by or by) in piece.builders:
        return Mistake("review.own-work", where, {"name": granted_by or by})
    return None


def granted_elsewhere(rule: str, kind: str | None) -> bool:
    """Whether nobody on site may accept it: a concession needs the engineer's or the authority's name and paper."""
    return rule in GRANTED_ELSEWHERE or (rule in GRANTED_ELSEWHERE_FOR and kind == GRANTED_ELSEWHERE_FOR[rule])


def _corrected(given: object, finding: Finding, piece: Piece, where: str) -> tuple[str, object] | Mistake:
    may = tuple(dict.fromkeys((*finding.facts, *((finding.asks,) if finding.asks not in (None, "photo") else ()))))
    if not isinstance(given, Mapping) or "name" not in given or "value" not in given:
        return Mistake("review.no-corrected-fact", where, {"rule": finding.rule, "facts": ", ".join(may) or "-"})
    name = given["name"]
    if name not in may:
        return Mistake("review.other-fact", where, {"name": str(name)[:60], "facts": ", ".join(may) or "-"})
    value = read_value(name, given["value"], given.get("exact"))
    if isinstance(value, Mistake):
        return value
    if value == piece.value(name) and not piece.conflicting(name):
        return Mistake("review.same-fact", where, {"name": name})
    return name, value


def _looked(given: object, finding: Finding, where: str) -> Looked | Mistake:
    if not isinstance(given, Mapping) or given.get("how") not in WAYS_TO_LOOK:
        return Mistake("review.no-way-to-look", where, {"expected": ", ".join(WAYS_TO_LOOK)})
    facts = given.get("facts")
    by_eye = not finding.facts and finding.asks in (None, "photo")  # the piece itself instead of its photo
    if not isinstance(facts, list | tuple) or (not facts and not by_eye):
        return Mistake("review.nothing-looked-at", where, {"rule": finding.rule})
    seen = []
    for fact in facts:
        if not isinstance(fact, Mapping) or "name" not in fact or "value" not in fact:
            return Mistake("review.nothing-looked-at", where, {"rule": finding.rule})
        value = read_value(fact["name"], fact["value"], fact.get("exact"))
        if isinstance(value, Mistake):
            return value
        seen.append((fact["name"], value))
    return Looked(given["how"], tuple(seen))


def _due(given: object, today: date, where: str) -> date | None | Mistake:
    if given is None:
        return None
    try:
        due = date.fromisoformat(str(given))
    except ValueError:
        return Mistake("review.bad-date", where, {"came": str(given)[:40]})
    return Mistake("review.past-date", where, {"came": due.isoformat()}) if due < today else due


def _text(given: object) -> str | None:
    text = " ".join(str(given).split()) if given is not None else ""
    return text or None
