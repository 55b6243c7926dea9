"""The spot check: the only measure of a log that reports on itself.

    draw(seed, candidates, first, count, before) -> ids     the lot: anybody who has the seed can draw it again
    sayings(piece) -> tuple[Saying, ...]            what was said of a piece and can be looked at
    as_looked(look, findings)                       what was found, as the lead's looks at the findings
    against(looks) -> Against                       said against found, and what so few looks can prove

The lot of a piece is the SHA-256 of the seed, a colon and its id: common tools reckon it. Pieces whose builder
changed his words after an answer are drawn first; those that an earlier draw of the day took come last.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from hashlib import sha256
from math import comb

from logbook import facts
from logbook.joining.values import read_value
from logbook.mistake import Mistake

FORMAT = "sha256(seed:piece)"
A_DRAW, MOST = 3, 12
ANSWERS = ("as_said", "otherwise", "not_seen")
WAYS = ("seen", "felt", "measured")
SURE = 0.95  # one-sided
LONGEST_WORDS = 2000
_NOT_TO_SEE = ("surface_temperature", "static_pressure", "airflow", "air_temperature")  # gone, or no eye tells them


@dataclass(frozen=True)
class Saying:
    """One fact as said: `value` as in the contract's JSON; `via` tells where a standing word comes from."""

    name: str
    value: object
    exact: object = None
    via: str = "spoken"


def lot(seed: str, piece: str) -> str:
    return sha256(f"{seed}:{piece}".encode()).hexdigest()


def draw(seed: str, candidates: Iterable[str], first: Collection[str] = (), count: int = A_DRAW, before: Collection[str] = ()) -> tuple[str, ...]:
    """The lowest lots; those of `first` come before the others, and those drawn `before` after them all."""
    ordered = sorted(set(candidates), key=lambda piece: (piece in before, piece not in first, lot(seed, piece)))
    return tuple(ordered[:count])


def good_as_said(piece: Mapping) -> bool:
    """Somebody said what it is, and nothing of it is off, asked or open: nobody would look without a draw."""
    return any(one["name"] == "kind" for one in piece["facts"]) and not any(
        one["shows"] in ("flag", "ask") or one.get("stands") in ("open", "in hand") for one in piece["findings"]
    )


def changed_after_answer(piece: Mapping) -> bool:
    return any(one.get("changed_after_answer") for one in piece["findings"])


def sayings(piece: Mapping) -> tuple[Saying, ...]:
    """What was said of a piece, then what stood for it by job or shift, as far as it can be looked at."""
    said = [Saying(one["name"], one["value"], one.get("exact"), one["via"]) for one in piece["facts"]]
    said += [Saying(one["name"], one["value"], one.get("exact"), one["via"]) for one in piece.get("assumed", ())]
    return tuple(one for one in said if facts.BY_NAME[one.name].family != "where" and one.name not in _NOT_TO_SEE)


def found(body: Mapping[str, object], said: Sequence[Saying]) -> dict | Mistake:
    """What a looker answers: `how`, `words` and `found`, a list of {"name", "answer", "value", "words"}.

    Every saying has an answer. Otherwise than said needs the value that was found; of a yes or no it is the other one.
    """
    if body.get("how") not in WAYS:
        return Mistake("walk.no-way", "how", {"expected": ", ".join(WAYS)})
    given = body.get("found")
    rows = {one.get("name"): one for one in given if isinstance(one, Mapping)} if isinstance(given, list | tuple) else {}
    unknown = sorted(str(name)[:40] for name in rows.keys() - {one.name for one in said})
    if unknown:
        return Mistake("walk.other-facts", "found", {"names": ", ".join(unknown)})
    answers = []
    for one in said:
        row = rows.get(one.name, {})
        if row.get("answer") not in ANSWERS:
            return Mistake("walk.no-answer", one.name, {"fact": one.name, "expected": ", ".join(ANSWERS)})
        kept = {"name": one.name, "said": one.value, "via": one.via, "answer": row["answer"], "words": _text(row.get("words"))}
        kept |= {} if one.exact is None else {"exact": one.exact}
        if row["answer"] == "otherwise":
            value = _otherwise(one, row)
            if isinstance(value, Mistake):
                return value
            beside = facts.exact_to_json(one.name, value)
            kept |= {"found": facts.to_json(one.name, value)} | ({} if beside is None else {"found_exact": beside})
        answers.append(kept)
    if all(one["answer"] == "not_seen" for one in answers) and not _text(body.get("words")):
        return Mistake("walk.nothing-seen", "words")
    return {"how": body["how"], "found": answers, "words": _text(body.get("words"))}


def _otherwise(said: Saying, row: Mapping) -> object | Mistake:
    if facts.BY_NAME[said.name].shape == "flag":
        return not said.value
    if row.get("value") is None:
        return Mistake("walk.otherwise-how", said.name, {"fact": said.name})
    value = read_value(said.name, row["value"], row.get("exact"))
    if not isinstance(value, Mistake) and value == facts.from_json(said.name, said.value, said.exact):
        return Mistake("walk.otherwise-same", said.name, {"fact": said.name})
    return value


def as_looked(look: Mapping, findings: Sequence[Mapping]) -> dict[str, list[dict]]:
    """Rule -> the facts of a look that speak to it, as a `looked` decision carries them: each fact goes to the first
    finding that leans on it, so that what was seen stands beside what the rule made of the words."""
    by_rule: dict[str, list[dict]] = {}
    for one in look["found"]:
        rule = next((each["rule"] for each in findings if one["name"] in each["facts"]), None)
        if rule is None or one["answer"] == "not_seen":
            continue
        off = one["answer"] == "otherwise"
        value, exact = (one["found"], one.get("found_exact")) if off else (one["said"], one.get("exact"))
        by_rule.setdefault(rule, []).append({"name": one["name"], "value": value} | ({} if exact is None else {"exact": exact}))
    return by_rule


def _text(given: object) -> str:
    return " ".join(str(given).split())[:LONGEST_WORDS] if given is not None else ""


@dataclass(frozen=True)
class Against:
    """Said against found. `pieces` looked at, `off` of them with anything otherwise; `by_fact`: name -> (looked, otherwise)."""

    drawn: int
    pieces: int
    off: int
    looked: int
    otherwise: int
    not_seen: int
    by_fact: Mapping[str, tuple[int, int]]
    at_most: float | None  # share of pieces that may be otherwise, at SURE


def against(drawn: int, looks: Iterable[Mapping]) -> Against:
    """`looks` are the contents of looks at drawn pieces, the newest of each piece."""
    looks, by_fact, hidden = list(looks), {}, 0
    for look in looks:
        for one in look["found"]:
            if one["answer"] == "not_seen":
                hidden += 1
                continue
            seen, off = by_fact.get(one["name"], (0, 0))
            by_fact[one["name"]] = (seen + 1, off + (one["answer"] == "otherwise"))
    seen = [look for look in looks if any(one["answer"] != "not_seen" for one in look["found"])]
    off = sum(any(one["answer"] == "otherwise" for one in look["found"]) for look in seen)
    looked, otherwise = (sum(pair[at] for pair in by_fact.values()) for at in (0, 1))
    return Against(drawn, len(seen), off, looked, otherwise, hidden, by_fact, at_most(off, len(seen)))


def at_most(off: int, looked: int, sure: float = SURE) -> float | None:
    """The largest share of bad pieces with which so few would still be found this often: the exact one-sided bound of
    Clopper and Pearson (Biometrika 26, 1934), by halving. None where nobody looked."""
    if not looked:
        return None
    low, high = off / looked, 1.0
    for _ in range(50):
        middle = (low + high) / 2
        tail = sum(comb(looked, k) * middle**k * (1 - middle) ** (looked - k) for k in range(off + 1))
        low, high = (middle, high) if tail > 1 - sure else (low, middle)
    return high
