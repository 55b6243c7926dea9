"""What ended a finding as it was: the builder's own correction, work done since, a decision, or something else."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from logbook.findings import Finding
from logbook.piece import Decision, Piece
from logbook.pipeline.happenings import Happening


def how_ended(
    old: Finding,
    since: datetime,
    new: Finding | None,
    before: Piece,
    after: Piece,
    cause: Happening,
    decisions: Sequence[Decision],
) -> str:
    """One of the words of `review.Row.ended`. `since` is when the old finding was reckoned: the installer's answer."""
    if cause.what == "decision":
        return "lead"
    if cause.what not in ("note", "press", "photos"):
        return "other"
    if old.verdict == "unsaid" or cause.what == "photos":
        return "said"
    reworks = [d for d in decisions if d.decision in ("rework", "repair") and d.edition == old.edition]
    if any(d.at < cause.said for d in reworks):
        return "reworked"
    if _done_since(old, new, before, after):
        return "done"
    if cause.note is not None and cause.note.as_lead and new is not None and new.verdict == "meets":
        return "looked"
    if cause.by not in before.builders:
        return "other"
    return "corrected_after_answer" if cause.said > since else "corrected"


def _done_since(old: Finding, new: Finding | None, before: Piece, after: Piece) -> bool:
    """Whether all that changed is an act that went from not done to done, or an open item that was closed."""
    names = {*old.facts, *(new.facts if new is not None else ()), *((old.asks,) if old.asks else ())}
    changed = [(before.value(name), after.value(name)) for name in names if before.value(name) != after.value(name)]
    if changed:
        return all(pair in ((False, True), ("made", "hung")) for pair in changed)
    return len(after.open_items) < len(before.open_items)
