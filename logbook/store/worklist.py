"""The rows of the worklist: findings that stand open or in hand, and notes that nobody could place or hear.

Light rows of what stands open only; a piece with its words is read when somebody opens it. A decision counts here at
once, also before the pieces were reckoned with it.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from datetime import date, datetime

from logbook.findings import says
from logbook.review import STAYS_OPEN
from logbook.store.folder import JobFolder
from logbook.store.records import unpacked
from logbook.worklist import Item

_OPEN = "current = 1 AND stands IN ('open', 'in hand')"
_AFTER = {"rework": "in hand", "repair": "in hand", "asked": "open"}  # the others end it, until reckoning says otherwise


def waiting(folder: JobFolder) -> list[Item]:
    """Every finding that a person has to act on, in no order."""
    rows = list(
        folder.db.execute(
            f"SELECT f.piece, f.rule, f.edition, f.verdict, f.stands, p.run, p.mark, p.kind FROM findings f "
            f"JOIN pieces p ON p.id = f.piece AND p.gone = 0 WHERE f.{_OPEN}"
        )
    )
    made, reckoned = _decided(folder), _reckoned_acts(folder)
    scrapped = {piece for (piece, _), (seq, doc) in made.items() if doc["decision"] == "scrap" and seq > reckoned}
    items = []
    for piece, rule, edition, verdict, stands, run, mark, kind in rows:
        seq, doc = made.get((piece, rule), (0, None))
        if doc is not None and doc["edition"] != edition and stands != "in hand":
            doc = None  # made on other words: what stands now was not decided yet
        if piece in scrapped or (doc is not None and seq > reckoned and doc["decision"] not in _AFTER):
            continue
        if doc is not None and seq > reckoned:
            stands = _AFTER[doc["decision"]]
        items.append(Item(piece, rule, edition, verdict, stands, run, mark, kind, **told(doc)))
    return items


def told(doc: dict | None) -> dict:
    """A decision as members of an `Item`."""
    if doc is None:
        return {}
    due = doc.get("due")
    return {
        "decision": doc["decision"], "by": doc["by"], "at": datetime.fromisoformat(doc["at"]), "reason": doc["reason"],
        "owner": doc.get("owner"), "due": None if due is None else date.fromisoformat(due), "made": doc.get("id"),
    }  # fmt: skip


def _decided(folder: JobFolder) -> dict[tuple[str, str], tuple[int, dict]]:
    """(piece, rule) -> (number of the act, the newest decision), for pieces that stand open.

    A decision made on a piece that has since joined another belongs to that one.
    """
    found = folder.db.execute(
        f"SELECT o.piece, a.seq, a.id, a.done_by, a.at, a.content FROM (SELECT DISTINCT piece FROM findings WHERE {_OPEN}) o "
        "JOIN acts a ON a.piece = o.piece AND a.act = 'decided' "
        "UNION ALL SELECT now.piece, a.seq, a.id, a.done_by, a.at, a.content FROM pieces p JOIN acts a ON a.piece = p.id AND a.act = 'decided' "
        "JOIN entries was ON was.piece = p.id JOIN entries now ON now.note = was.note AND now.position = was.position AND now.current = 1 "
        "WHERE p.gone = 1"
    )
    newest: dict[tuple[str, str], tuple[int, dict]] = {}
    for piece, seq, id, by, at, content in found:
        doc = json.loads(content) | {"id": id, "by": by, "at": at}
        if seq > newest.get((piece, doc["rule"]), (0, None))[0]:
            newest[piece, doc["rule"]] = (seq, doc)
    return newest


def _reckoned_acts(folder: JobFolder) -> int:
    """The newest act that the pieces were reckoned with."""
    found = folder.db.execute("SELECT value FROM about WHERE key = 'reckoned_acts'").fetchone()
    return 0 if found is None else int(found[0])


def lost_notes(folder: JobFolder, limit: int = 20) -> list[dict]:
    """Notes that need somebody before any finding can: not heard, or an entry that joined no piece. Oldest first."""
    found = folder.db.execute(
        "SELECT id, spoken_by, spoken_at, state FROM notes WHERE state = 'unheard' AND withdrawn_at IS NULL "
        "UNION SELECT n.id, n.spoken_by, n.spoken_at, n.state FROM notes n JOIN questions q ON q.note = n.id "
        "WHERE n.flagged = 1 AND n.withdrawn_at IS NULL AND json_extract(q.document, '$.asked') <> '{}' ORDER BY 3, 1 LIMIT ?",
        [limit],
    )
    return [dict(zip(("id", "spoken_by", "spoken_at", "state"), row, strict=True)) for row in found]


def builder_of(folder: JobFolder, piece: str) -> str | None:
    """Who spoke the newest note of a piece, leads who only looked left out."""
    found = folder.db.execute(
        "SELECT n.spoken_by FROM entries e JOIN notes n ON n.id = e.note WHERE e.piece = ? AND e.current = 1 AND n.as_lead = 0 AND n.withdrawn_at IS NULL ORDER BY n.seq DESC LIMIT 1", [piece]
    ).fetchone()
    return None if found is None else found[0]


def last_reasons(folder: JobFolder, by: str, rule: str, limit: int = 5) -> list[dict]:
    """The newest decisions with a reason that this person made of a rule, each pair of decision and reason once."""
    found = folder.db.execute("SELECT content FROM acts WHERE act = 'decided' AND done_by = ? ORDER BY seq DESC LIMIT 200", [by])
    told: dict[tuple, dict] = {}
    for (content,) in found:
        doc = json.loads(content)
        if doc["rule"] == rule and doc.get("reason"):
            told.setdefault((doc["decision"], doc["reason"]), doc)
    return list(told.values())[:limit]


def pending(folder: JobFolder, piece_id: str, rule: str) -> dict | None:
    """The newest decision of a finding that the pieces were not reckoned with yet."""
    found = folder.db.execute(
        "SELECT id, done_by, at, content FROM acts WHERE piece = ? AND act = 'decided' AND seq > ? ORDER BY seq DESC",
        [piece_id, _reckoned_acts(folder)],
    )
    made = (json.loads(content) | {"id": id, "by": by, "at": at} for id, by, at, content in found)
    return next((doc for doc in made if doc["rule"] == rule or doc["decision"] == "scrap"), None)


def looks_of(folder: JobFolder, piece: dict) -> list[str]:
    """The notes of leads about a piece (its document), also those that are not heard yet, by the time spoken."""
    told = {look["note"] for look in piece["looked"] if look.get("note")}
    marks = ",".join("?" * len(piece["notes"]))
    found = folder.db.execute(f"SELECT id FROM notes WHERE as_lead = 1 AND withdrawn_at IS NULL AND answers IN ({marks})", piece["notes"])
    unplaced = {note for (note,) in found} - told
    other = {note for (note,) in folder.db.execute(f"SELECT note FROM entries WHERE current = 1 AND note IN ({','.join('?' * len(unplaced))})", list(unplaced))} if unplaced else set()
    ids = sorted(told | (unplaced - other))
    rows = folder.db.execute(f"SELECT id FROM notes WHERE id IN ({','.join('?' * len(ids))}) ORDER BY spoken_utc", ids) if ids else []
    return [note for (note,) in rows]


def finding_says(folder: JobFolder, items: Sequence[Item], language: str) -> dict[tuple[str, str], str]:
    """(piece, rule) -> the sentence of the finding, for the items of one page."""
    found = {}
    for item in items:
        row = folder.db.execute("SELECT document FROM findings WHERE piece = ? AND rule = ? AND current = 1", [item.piece, item.rule]).fetchone()
        if row is not None:
            found[item.piece, item.rule] = says(unpacked(row[0]), language)
    return found


def closed_lately(folder: JobFolder, limit: int = 10) -> list[Item]:
    """What a later note closed after a rework or repair, the newest first: nobody has seen before and after yet."""
    found = folder.db.execute(
        # from the decisions: there are far fewer of them than of findings that closed without one
        "SELECT f.piece, f.rule, f.edition, f.verdict, f.stands, p.run, p.mark, p.kind, max(a.seq), a.content, a.done_by, a.at FROM acts a "
        "CROSS JOIN findings f ON f.piece = a.piece AND f.rule = json_extract(a.content, '$.rule') AND f.current = 1 AND f.stands = 'closed' "
        "CROSS JOIN pieces p ON p.id = f.piece AND p.gone = 0 "
        "WHERE a.act = 'decided' AND json_extract(a.content, '$.decision') IN ('rework', 'repair') GROUP BY f.id ORDER BY f.id DESC LIMIT ?",
        [limit],
    )
    return [
        Item(piece, rule, edition, verdict, stands, run, mark, kind, **told(json.loads(content) | {"by": by, "at": at}))
        for piece, rule, edition, verdict, stands, run, mark, kind, _, content, by, at in found
    ]


def wanted_notes(folder: JobFolder, voices: Sequence[str], limit: int = 50) -> list[str]:
    """Of each piece about which the lead wants something done: the newest note that one of these people spoke, oldest first."""
    pieces = list(dict.fromkeys(item.piece for item in waiting(folder) if item.decision in STAYS_OPEN))
    newest: dict[str, tuple[int, str]] = {}
    for at in range(0, len(pieces), 400):
        some = pieces[at : at + 400]
        found = folder.db.execute(
            f"SELECT e.piece, n.seq, n.id FROM entries e JOIN notes n ON n.id = e.note WHERE e.current = 1 AND n.as_lead = 0 "
            f"AND n.withdrawn_at IS NULL AND e.piece IN ({','.join('?' * len(some))}) AND n.spoken_by IN ({','.join('?' * len(voices))}) ORDER BY n.seq",
            [*some, *voices],
        )
        newest |= {piece: (seq, note) for piece, seq, note in found}
    return [note for _, note in sorted(set(newest.values()))][:limit]
