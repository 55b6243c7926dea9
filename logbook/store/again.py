"""What today's rule book says of a day's pieces, beside what is kept of them. It writes nothing."""

from __future__ import annotations

import json
from collections.abc import Collection, Mapping, Sequence
from dataclasses import replace

from logbook import runs
from logbook.findings import Finding
from logbook.findings.again import side_by_side
from logbook.job import Job
from logbook.joining import joined
from logbook.mistake import Mistake
from logbook.piece import Piece
from logbook.rules import book_digest, judge
from logbook.schedule import bare_run
from logbook.store import books
from logbook.store.folder import JobFolder
from logbook.store.records import unpacked
from logbook.store.shelf import runs_spelled

AT_ONCE = 500  # ids in one question


def again(folder: JobFolder, day: str, language: str) -> dict | Mistake:
    """The document of `logbook check --again DAY`. Mistake `again.no-day` where the log has no note of that day."""
    if not folder.db.execute("SELECT 1 FROM notes WHERE day = ? LIMIT 1", [day]).fetchone():
        return Mistake("again.no-day", day, {"date": day})
    of_day = {
        piece
        for (piece,) in folder.db.execute(
            "SELECT DISTINCT e.piece FROM entries e JOIN notes n ON n.id = e.note WHERE n.day = ? AND e.current = 1", [day]
        )
    }
    pieces = _kept(folder, of_day)
    near = _of_runs(folder, {piece.run for piece, _ in pieces.values()}) | _showing_alike(folder, [piece for piece, _ in pieces.values()])
    pieces |= _kept(folder, near - pieces.keys())
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


def _kept(folder: JobFolder, ids: Collection[str]) -> dict[str, tuple[Piece, Sequence[Finding]]]:
    """The pieces that are, with what is kept of them."""
    found, wanted = {}, sorted(ids)
    for first in range(0, len(wanted), AT_ONCE):
        some = wanted[first : first + AT_ONCE]
        rows = folder.db.execute(f"SELECT id, document FROM pieces WHERE gone = 0 AND id IN ({','.join('?' * len(some))})", some)
        for piece_id, document in rows:
            whole = unpacked(document)
            found[piece_id] = (whole["piece"], whole["findings"])
    return found


def _of_runs(folder: JobFolder, wanted: Collection[str | None]) -> set[str]:
    """The pieces of these runs: neighbours are of one run, and the end that air leaves by is asked once a run."""
    bare = {bare_run(run or "") for run in wanted}
    spelled = [run for run in (None, *runs_spelled(folder)) if bare_run(run or "") in bare]
    return {
        piece for run in spelled for (piece,) in folder.db.execute("SELECT id FROM pieces WHERE gone = 0 AND run IS ?", [run])
    }


def _showing_alike(folder: JobFolder, pieces: Sequence[Piece]) -> set[str]:
    """The pieces that show a photo that one of these shows too, or one that may be called alike."""
    mine = {key for piece in pieces for held in piece.photos for _, keys in runs.prints(held) for key in keys}
    if not mine:
        return set()
    shared = [
        sha256
        for sha256, seen in folder.db.execute("SELECT sha256, seen FROM pictures")
        if any(key in mine for _, keys in runs.prints_of(sha256, json.loads(seen)) for key in keys)
    ]
    return {
        piece
        for sha256 in shared
        for (piece,) in folder.db.execute(
            "SELECT DISTINCT e.piece FROM parts p JOIN entries e ON e.note = p.note WHERE p.sha256 = ? AND e.current = 1", [sha256]
        )
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
