"""What today's rule book says of a day's pieces, beside what is kept of them. It writes nothing."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from logbook import runs
from logbook.findings.again import side_by_side
from logbook.job import Job
from logbook.joining import joined
from logbook.mistake import Mistake
from logbook.piece import Piece
from logbook.rules import book_digest, judge
from logbook.store import books
from logbook.store.folder import JobFolder
from logbook.store.records import unpacked


def again(folder: JobFolder, day: str, language: str) -> dict | Mistake:
    """The document of `logbook check --again DAY`. Mistake `again.no-day` where the log has no note of that day."""
    pieces = {}
    for piece_id, document in folder.db.execute("SELECT id, document FROM pieces WHERE gone = 0"):
        whole = unpacked(document)
        pieces[piece_id] = (whole["piece"], whole["findings"])
    if not folder.db.execute("SELECT 1 FROM notes WHERE day = ? LIMIT 1", [day]).fetchone():
        return Mistake("again.no-day", day, {"date": day})
    of_day = {
        piece
        for (piece,) in folder.db.execute(
            "SELECT DISTINCT e.piece FROM entries e JOIN notes n ON n.id = e.note WHERE n.day = ? AND e.current = 1", [day]
        )
    }
    signed = books.of_days(folder).get(day)
    judged = {piece_id: _under(folder.job, piece) for piece_id, (piece, _) in pieces.items()}
    site = runs.site(folder.job, sorted(judged.values(), key=lambda piece: (piece.made_at is not None, piece.made_at, piece.id)))
    told = []
    for piece_id in sorted(of_day & pieces.keys(), key=lambda one: _place(pieces[one][0])):
        piece, kept = pieces[piece_id]
        rows = side_by_side(kept, judge(judged[piece_id], site.around(judged[piece_id])), language)
        told.append({"piece": piece_id, "mark": piece.mark, "run": piece.run, "kind": piece.value("kind"), "findings": rows})
    return {
        "day": day,
        "signed": signed is not None,
        "kept_under": signed or _last_judged(folder),
        "today": book_digest(folder.job),
        "pieces": told,
        "differ": sum(not row["same"] for one in told for row in one["findings"]),
    }


def _under(job: Job, piece: Piece) -> Piece:
    """The piece with what stands for it under a job; what was said, and said for the shift, stays."""
    shift = [word for word in piece.assumed if word.via == "shift"]
    return replace(piece, assumed=joined.assumed(piece.facts, shift, piece.run, job))


def _last_judged(folder: JobFolder) -> str | None:
    found: Mapping[str, str] = dict(folder.db.execute("SELECT key, value FROM about"))
    return found.get("book")


def _place(piece: Piece) -> tuple:
    return (piece.run or "", len(piece.mark or ""), piece.mark or "", piece.id)
