"""What one rule book found beside what another finds of the same piece: rule by rule, nothing decided."""

from __future__ import annotations

from collections.abc import Sequence

from logbook.findings import Finding
from logbook.findings.telling import says

SAME = ("verdict", "shows", "limit", "tolerance")


def side_by_side(kept: Sequence[Finding], today: Sequence[Finding], language: str) -> list[dict]:
    """A row a rule that is due under either book, in the order of the book.

    `same` is False where the verdict, who is bothered or the limit differ; None on a side: not due under that book.
    """
    left, right = ({one.rule: one for one in found} for found in (kept, today))
    order = [*right, *(rule for rule in left if rule not in right)]
    return [
        {
            "rule": rule,
            "same": rule in left and rule in right and all(_bare(left[rule], name) == _bare(right[rule], name) for name in SAME),
            "kept": _told(left.get(rule), language),
            "today": _told(right.get(rule), language),
        }
        for rule in order
    ]


def _bare(finding: Finding, name: str) -> object:
    """A limit of several numbers comes back from the log as a tuple and fresh from a rule as a list."""
    value = getattr(finding, name)
    return tuple(value) if isinstance(value, list) else value


def _told(finding: Finding | None, language: str) -> dict | None:
    if finding is None:
        return None
    return {"verdict": finding.verdict, "shows": finding.shows, "limit": finding.limit, "says": says(finding, language)}
