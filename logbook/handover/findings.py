"""Flagged findings of the package: what stands open comes first."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from logbook import labels

COLUMNS = (
    ("piece", "string", "Id of the piece."), ("run", "string", "Run as spoken."), ("mark", "string", "Mark as spoken."),
    ("what", "string", "Kind and mark as people say them."), ("rule", "string", "Rule of job/rules.json."),
    ("verdict", "string", "departs, unsaid or unclear, or meets after a later note."),
    ("stands", "string", "open, in hand, settled or closed."), ("says", "string", "The finding."), ("do", "string", "What to do."),
    ("source", "string", "Where the limit comes from."), ("edition", "string", "SHA-256 of what the finding was reckoned from."),
    ("decisions", "string", "What was decided, by whom, when and why."),
)  # fmt: skip
OPEN = ("open", "in hand")


def flagged(piece: Mapping, language: str) -> Iterator[dict]:
    """The findings of a piece that flag or ever flagged."""
    for doc in piece["findings"]:
        if doc.get("stands") is None:
            continue
        made = [one for one in piece.get("decisions", ()) if one["rule"] == doc["rule"]]
        yield {
            "piece": piece["id"] or "", "run": piece["run"] or "", "mark": piece["mark"] or "", "what": labels.fitting(list(piece["facts"]), language),
            "rule": doc["rule"], "verdict": doc["verdict"], "stands": doc["stands"], "says": doc["says"], "do": doc["do"] or "",
            "source": doc["source"], "edition": doc["edition"], "decisions": "; ".join(_told(one) for one in made),
        }  # fmt: skip


def _told(one: Mapping) -> str:
    parts = [one["decision"], one["by"], one["at"], one.get("reason") or "", f"granted by {one['granted_by']}" if one.get("granted_by") else "", f"document {one['document']}" if one.get("document") else ""]
    return ", ".join(part for part in parts if part)


def open_first(rows: Iterable[dict]) -> list[dict]:
    return sorted(rows, key=lambda row: OPEN.index(row["stands"]) if row["stands"] in OPEN else len(OPEN))
