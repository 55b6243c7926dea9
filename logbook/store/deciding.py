"""Decisions about findings: the pure `review.decide` says whether it may be, the act keeps it."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC, datetime

from logbook import intake, review
from logbook.mistake import Mistake
from logbook.piece import decision_to_json
from logbook.store import files
from logbook.store.acts import Act, _do
from logbook.store.folder import JobFolder, answers
from logbook.store.shelf import whole_piece


@answers
def decide(folder: JobFolder, piece_id: str, body: Mapping[str, object], by: str, at: datetime | None = None) -> Act | Mistake:
    """A decision on a finding of a piece; `body` as in the contract. The same id again answers the same."""
    at = (at or datetime.now(UTC)).astimezone(folder.job.timezone()).replace(microsecond=0)
    held = whole_piece(folder, piece_id)
    if held is None:
        return Mistake("store.no-piece", "PIECE", {"id": intake.shown(piece_id)})
    piece, findings, decisions = held
    known = next((one for one in decisions if one.id == body.get("id")), None)
    decision = known or review.decide(body, piece, findings, by=by, at=at, today=folder.job.day_of(at))
    if isinstance(decision, Mistake):
        return decision
    if decision.document is not None and files.original(folder, decision.document) is None:
        return Mistake("store.no-document", "document", {"document": intake.shown(decision.document)})
    content = {name: value for name, value in decision_to_json(decision).items() if name not in ("id", "piece", "by", "at")}
    return _do(folder, decision.id, "decided", by, decision.at, content, piece=piece_id)
