"""Decisions about findings: the pure `review.decide` says whether it may be, the act keeps it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import UTC, datetime

from logbook import intake, review
from logbook.mistake import Mistake
from logbook.piece import Decision, decision_to_json
from logbook.store import files
from logbook.store.acts import Act, _do, _keep
from logbook.store.folder import JobFolder, answers, writing
from logbook.store.shelf import whole_piece


@answers
def decide(folder: JobFolder, piece_id: str, body: Mapping[str, object], by: str, at: datetime | None = None) -> Act | Mistake:
    """A decision on a finding of a piece; `body` as in the contract. The same id again answers the same."""
    decision = _allowed(folder, piece_id, body, by, _now(folder, at))
    if isinstance(decision, Mistake):
        return decision
    return _do(folder, decision.id, "decided", by, decision.at, _content(decision), piece=piece_id)


@answers
def decide_together(
    folder: JobFolder, bodies: Sequence[tuple[str, Mapping[str, object]]], by: str, at: datetime | None = None
) -> tuple[Act, ...] | tuple[Mistake, ...] | Mistake:
    """Several decisions, (piece, body) each, in one transaction: every act, or every mistake and nothing kept."""
    now = _now(folder, at)
    made = [(piece, _allowed(folder, piece, body, by, now)) for piece, body in bodies]
    wrong = tuple(one for _, one in made if isinstance(one, Mistake))
    if wrong:
        return wrong
    try:
        with writing(folder) as db:
            return tuple(
                _kept(_keep(folder, db, one.id, "decided", by, one.at, _content(one), piece=piece)) for piece, one in made
            )
    except _Refused as refused:
        return (refused.mistake,)


class _Refused(Exception):
    """Takes the transaction back; never leaves this file."""

    def __init__(self, mistake: Mistake):
        super().__init__(mistake.key)
        self.mistake = mistake


def _kept(act: Act | Mistake) -> Act:
    if isinstance(act, Mistake):
        raise _Refused(act)
    return act


def _now(folder: JobFolder, at: datetime | None) -> datetime:
    return (at or datetime.now(UTC)).astimezone(folder.job.timezone()).replace(microsecond=0)


def _allowed(folder: JobFolder, piece_id: str, body: Mapping[str, object], by: str, at: datetime) -> Decision | Mistake:
    held = whole_piece(folder, piece_id)
    if held is None:
        return Mistake("store.no-piece", "PIECE", {"id": intake.shown(piece_id)})
    piece, findings, decisions = held
    known = next((one for one in decisions if one.id == body.get("id")), None)
    decision = known or review.decide(body, piece, findings, by=by, at=at, today=folder.job.day_of(at))
    if isinstance(decision, Decision) and decision.document is not None and files.original(folder, decision.document) is None:
        return Mistake("store.no-document", "document", {"document": intake.shown(decision.document)})
    return decision


def _content(decision: Decision) -> dict:
    return {name: value for name, value in decision_to_json(decision).items() if name not in ("id", "piece", "by", "at")}
