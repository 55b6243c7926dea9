"""What was decided of findings: the newest decision of one, and those that a decision ended lately, so that one can be looked at again.

A decision is never taken back: another one follows it, and both stay. Two people may be at one finding at once; the
newest decision tells the second of them that the first was quicker.
"""

from __future__ import annotations

import json
from collections.abc import Sequence

from logbook.review import STAYS_OPEN
from logbook.store.folder import JobFolder
from logbook.store.worklist import told
from logbook.worklist import Item


def last_decision(folder: JobFolder, piece: str, rule: str, edition: str) -> dict | None:
    """The newest decision of a finding as it stands in these words, reckoned already or not."""
    found = folder.db.execute("SELECT id, done_by, at, content FROM acts WHERE piece = ? AND act = 'decided' ORDER BY seq DESC", [piece])
    made = (json.loads(content) | {"id": id, "by": by, "at": at} for id, by, at, content in found)
    return next((doc for doc in made if doc["rule"] == rule and doc["edition"] == edition), None)


def settled_lately(folder: JobFolder, waiting: Sequence[Item], limit: int = 100) -> list[Item]:
    """Findings that one of the newest decisions ended, the newest first. What stands open or in hand is on the list `waiting`, not here."""
    rows = folder.db.execute(
        "SELECT a.piece, a.id, a.done_by, a.at, a.content, f.rule, f.edition, f.verdict, coalesce(f.stands, ''), p.run, p.mark, p.kind "
        "FROM (SELECT * FROM acts WHERE act = 'decided' ORDER BY seq DESC LIMIT ?) a JOIN pieces p ON p.id = a.piece AND p.gone = 0 "
        "JOIN findings f ON f.piece = a.piece AND f.rule = json_extract(a.content, '$.rule') AND f.current = 1 ORDER BY a.seq DESC", [limit]
    )
    on_list = {(item.piece, item.rule) for item in waiting}
    found: dict[tuple[str, str], Item | None] = {}
    for piece, id, by, at, content, rule, edition, verdict, stands, run, mark, kind in rows:
        doc = json.loads(content) | {"id": id, "by": by, "at": at}
        ended = doc["decision"] not in STAYS_OPEN and doc["edition"] == edition and (piece, rule) not in on_list
        found.setdefault((piece, rule), Item(piece, rule, edition, verdict, stands, run, mark, kind, **told(doc)) if ended else None)
    return [item for item in found.values() if item is not None]


def spoken_last(folder: JobFolder, items: Sequence[Item]) -> dict[str, tuple[str, str]]:
    """Piece -> (who, when) of its newest note, leads who only looked left out."""
    pieces = list(dict.fromkeys(item.piece for item in items))
    rows = folder.db.execute(
        "SELECT e.piece, n.spoken_by, n.spoken_at FROM entries e JOIN notes n ON n.id = e.note WHERE e.current = 1 AND n.as_lead = 0 AND n.withdrawn_at IS NULL "
        f"AND e.piece IN ({','.join('?' * len(pieces))}) ORDER BY n.seq", pieces
    )
    return {piece: (by, at) for piece, by, at in rows}
