"""Releases of hold points, as acts of the journal: who, when, in whose presence, over what stood open."""

from __future__ import annotations

from datetime import UTC, datetime

from logbook import holds, intake, review
from logbook.holds import HELD_AGAIN, RELEASED
from logbook.mistake import Mistake
from logbook.store.acts import Act, _do, act_document
from logbook.store.folder import JobFolder, answers
from logbook.store.worklist import waiting

LONGEST_NAME = 200


def release_acts(db) -> list[dict]:
    """Every release and every "held again" of the job, oldest first; what was erased is left out."""
    found = db.execute(
        "SELECT id, act, note, piece, day, done_by, at, content FROM acts "
        "WHERE act IN ('released', 'held_again') AND content <> '\"erased\"' ORDER BY seq"
    )
    return [act_document(row) for row in found]


def hold_points(folder: JobFolder, now: datetime | None = None) -> list[holds.Standing]:
    """Every hold point of the job with what stands open behind it."""
    if not folder.job.holds:
        return []
    return holds.standing(folder.job, release_acts(folder.db), waiting(folder), folder.job.day_of(now or datetime.now(UTC)))


@answers
def release(
    folder: JobFolder, id: str, hold: str, by: str, words: str = "", witness: str = "", at: datetime | None = None
) -> Act | Mistake:
    """Release a hold point; where something stands open behind it, only with words that say why.

    What stood open is kept in the act: (piece, rule, edition) of each.
    """
    return _act(folder, id, RELEASED, hold, by, words, witness, at)


@answers
def hold_again(folder: JobFolder, id: str, hold: str, by: str, words: str, at: datetime | None = None) -> Act | Mistake:
    """Take hold once more of what was released; the release stays in the journal."""
    return _act(folder, id, HELD_AGAIN, hold, by, words, "", at)


def _act(folder: JobFolder, id: str, act: str, hold: str, by: str, words: str, witness: str, at: datetime | None) -> Act | Mistake:
    words, witness = " ".join(words.split()), " ".join(witness.split())
    if hold not in folder.job.holds:
        return Mistake("holds.no-such", "HOLD", {"came": intake.shown(hold)})
    if len(words) > review.LONGEST_REASON or len(witness) > LONGEST_NAME:
        return Mistake("review.long-reason", "words", {"longest": review.LONGEST_REASON, "came": len(words)})
    known = next((one for one in release_acts(folder.db) if one["id"] == id), None)
    stands = next(one for one in hold_points(folder, at) if one.hold.key == hold)
    open_now = known.get("open", []) if known else [{"piece": one.piece, "rule": one.rule, "edition": one.edition} for one in stands.open]

    def check(_db) -> Mistake | None:
        newest = [one for one in release_acts(folder.db) if one["hold"] == hold][-1:]
        released = bool(newest) and newest[0]["act"] == RELEASED
        if released == (act == RELEASED):
            return Mistake("holds.released-already" if released else "holds.not-released", hold, {"name": stands.hold.name})
        if not words and (act == HELD_AGAIN or open_now):
            return Mistake("holds.no-words", hold, {"name": stands.hold.name, "count": len(open_now)})
        return None

    content = {"hold": hold, "name": stands.hold.name, "words": words}
    content |= {"witness": witness, "open": open_now} if act == RELEASED else {}
    return _do(folder, id, act, by, at, content, check=check)
