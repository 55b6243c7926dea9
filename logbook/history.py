"""The history of a piece as one finding tells it, and before and after a rework side by side.

Pure, on the documents of `GET /pieces/PIECE` and `GET /notes/ID`, so that a page and a report tell the same.
Times are ISO texts of one zone, as the documents carry them; they are compared as moments.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime

ENDS = ("rework", "repair")


def history(piece: Mapping, notes: Sequence[Mapping], rule: str) -> list[dict]:
    """What happened to the piece, oldest first: {"at", "what", ...}.

    `what`: said and looked (a note), right (a fact set right by a press), was (the finding as it stood until another
    word changed it), decided.
    """
    told = [
        {"at": counted(note), "what": "looked" if note.get("as_lead") else "said", "by": note["spoken_by"], "note": note["id"], "text": note["text"]}
        for note in notes
    ]
    told += [
        {"at": press["at"], "what": "right", "by": press["by"], "note": note["id"], "name": press["name"], "value": press["value"]}
        for note in notes
        for press in note.get("corrections", ())
    ]
    finding = next((one for one in piece["findings"] if one["rule"] == rule), None)
    told += [{"at": row["at"], "what": "was", "verdict": row["verdict"], "shows": row["shows"]} for row in (finding or {}).get("earlier", ())]
    told += [{"at": made["at"], "what": "decided", "by": made["by"], "decision": made} for made in piece["decisions"]]
    return sorted(told, key=lambda one: _moment(one["at"]))


def counted(note: Mapping) -> str:
    """When a note counts as spoken, where its phone's clock could not be believed too."""
    return note.get("counted_at") or note["spoken_at"]


def beside(piece: Mapping, notes: Sequence[Mapping], rule: str) -> dict | None:
    """Before and after the newest rework or repair of a finding: words, photos, and the facts that changed.

    None where none was decided. `after` is empty while nobody told what was done.
    """
    made = [one for one in piece["decisions"] if one["rule"] == rule and one["decision"] in ENDS]
    if not made:
        return None
    since = _moment(made[-1]["at"])
    own = [note for note in notes if not note.get("as_lead")]
    before = [note for note in own if _moment(counted(note)) <= since]
    after = [note for note in own if _moment(counted(note)) > since]
    later = {note["id"] for note in after}
    return {
        "decision": made[-1],
        "before": {"notes": before, "photos": _photos(piece, before)},
        "after": {"notes": after, "photos": _photos(piece, after)},
        "changed": [row for fact in piece["facts"] if fact.get("note") in later and (row := _changed(fact, later)) is not None],
    }


def _photos(piece: Mapping, notes: Sequence[Mapping]) -> list[Mapping]:
    ids = {note["id"] for note in notes}
    return [photo for photo in piece["photos"] if photo["note"] in ids]


def _changed(fact: Mapping, later: set[str]) -> dict | None:
    """The fact now, and its last value from before; `before` None where it had not been said."""
    old = [was for was in fact.get("was", ()) if was.get("note") not in later]
    before = old[-1] if old else None
    if before is not None and before["value"] == fact["value"]:
        return None
    return {"name": fact["name"], "before": before, "after": fact}


def _moment(iso: str) -> datetime:
    return datetime.fromisoformat(iso)
