"""Lists of the log: notes by filters, days, the documents of one day, pieces that stand open. No list reads every row."""

from __future__ import annotations

import json
from collections.abc import Collection
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from logbook.day.lists import unanswered
from logbook.facts import bare_mark
from logbook.schedule import bare_run
from logbook.store import journal
from logbook.store.acts import acts_of
from logbook.store.folder import JobFolder
from logbook.store.records import notes
from logbook.store.shelf import being_reckoned, note_documents, piece_document, runs_spelled


@dataclass(frozen=True)
class Filters:
    """Which notes; None: no filter. `date` is an ISO date of the job's days, `speaker` a person's id."""

    date: str | None = None
    run: str | None = None
    mark: str | None = None
    speaker: str | None = None
    state: str | None = None
    flagged: bool | None = None


def notes_since(
    folder: JobFolder,
    cursor: str | None = None,
    limit: int = 50,
    filters: Filters = Filters(),
    language: str = "en",
    newest_first: bool = False,
) -> dict:
    """`{"notes", "next"}` in order of receipt; `next` is None where there are no more."""
    where, values = _where(filters)
    if cursor is not None and cursor.isdecimal():
        where.append("n.seq < ?" if newest_first else "n.seq > ?")
        values.append(int(cursor))
    order = "DESC" if newest_first else "ASC"
    sql = f"SELECT n.seq, n.id FROM notes n WHERE {' AND '.join(where) or '1'} ORDER BY n.seq {order} LIMIT ?"
    rows = list(folder.db.execute(sql, [*values, limit + 1]))
    kept = rows[:limit]
    ids = [one for _, one in kept]
    found = {note.id: note for note in notes(folder, f"n.id IN ({','.join('?' * len(ids))})", ids)} if ids else {}
    documents = being_reckoned(folder, note_documents(folder, [found[one] for one in ids], language))
    return {"notes": documents, "next": str(kept[-1][0]) if len(rows) > limit else None}


def _where(filters: Filters) -> tuple[list[str], list]:
    where, values = [], []
    for column, value in (("day", filters.date), ("spoken_by", filters.speaker), ("state", filters.state)):
        if value is not None:
            where.append(f"n.{column} = ?")
            values.append(value.isoformat() if isinstance(value, date) else value)
    for column, value in (("run", filters.run), ("bare_mark", None if filters.mark is None else bare_mark(filters.mark))):
        if value is not None:
            where.append(
                f"n.id IN (SELECT e.note FROM pieces p JOIN entries e ON e.piece = p.id AND e.current = 1 WHERE p.{column} = ? COLLATE NOCASE)"
            )
            values.append(value)
    if filters.flagged is not None:
        where.append("n.flagged = 1" if filters.flagged else "coalesce(n.flagged, 0) = 0")
    return where, values


def newest_day(folder: JobFolder) -> str | None:
    """The newest of the job's days with notes, or None where there are none yet."""
    return folder.db.execute("SELECT max(day) FROM notes").fetchone()[0]


def not_understood_on(folder: JobFolder, day: str) -> int:
    """How many notes of a day hold words that nobody understood and that stand on no other list. Only such notes are read."""
    where = "n.day = ? AND n.withdrawn_at IS NULL AND n.id IN (SELECT r.note FROM readings r WHERE r.current = 1 AND json_type(r.reading, '$.unread') = 'array')"
    return sum(1 for doc in note_documents(folder, list(notes(folder, where, [day])), "en") if unanswered(doc))


def days(folder: JobFolder, most: int = -1) -> list[dict]:
    """The job's days with notes, newest first; `most`: no more than so many, and no row of an older day is read."""
    found = folder.db.execute(
        "SELECT day, count(*), total(flagged), total(state IN ('waiting', 'hearing')), total(state = 'unheard') "
        "FROM notes GROUP BY day ORDER BY day DESC LIMIT ?", [most]
    )
    return [
        {"date": day, "notes": count, "flagged": int(flagged), "waiting": int(waiting), "unheard": int(unheard)}
        for day, count, flagged, waiting, unheard in found
    ]


def day_documents(folder: JobFolder, day: date | str, language: str) -> dict:
    """Notes and decisions of one day of the job, every piece they touch, its signatures, and the newest journal hash."""
    day = day if isinstance(day, str) else day.isoformat()
    found = list(notes(folder, "n.day = ?", [day], earlier=True))
    decided = _decided_on(folder, day)
    pieces = {
        piece
        for (piece,) in folder.db.execute(
            "SELECT DISTINCT e.piece FROM entries e JOIN notes n ON n.id = e.note "
            "WHERE n.day = ? AND e.current = 1", [day]
        )
    } | {one["piece"] for one in decided}
    documents = [piece_document(folder, one, language) for one in _ordered(folder, pieces)]
    return {
        "notes": note_documents(folder, found, language),
        "pieces": [one for one in documents if one is not None],
        "decisions": decided,
        "signatures": acts_of(folder.db, "day", day, "signed"),
        "journal": journal.newest(folder),
    }


def _decided_on(folder: JobFolder, day: str) -> list[dict]:
    """Decisions whose moment belongs to a day of the job; the two dates around it can hold them."""
    low = (date.fromisoformat(day) - timedelta(days=1)).isoformat()
    high = (date.fromisoformat(day) + timedelta(days=2)).isoformat()
    found = folder.db.execute(
        "SELECT id FROM acts WHERE act = 'decided' AND at >= ? AND at < ? ORDER BY seq", [low, high]
    )
    zone = folder.job.timezone()
    every = [acts_of(folder.db, "id", one, "decided")[0] for (one,) in list(found)]
    return [one for one in every if folder.job.day_of(datetime.fromisoformat(one["at"]).astimezone(zone)).isoformat() == day]


def _ordered(folder: JobFolder, pieces: set[str]) -> list[str]:
    wanted = sorted(pieces)
    found = []
    for at in range(0, len(wanted), 500):
        some = wanted[at : at + 500]
        found += list(
            folder.db.execute(f"SELECT run, bare_mark, id FROM pieces WHERE id IN ({','.join('?' * len(some))})", some)
        )
    return [piece for *_, piece in sorted(found, key=lambda row: (row[0] or "", len(row[1] or ""), row[1] or "", row[2]))]


def open_findings(folder: JobFolder, limit: int = 50, cursor: str | None = None, language: str = "en") -> dict:
    """Pieces whose flagged findings stand open, longest open first: `{"pieces", "next"}`."""
    start = int(cursor) if cursor and cursor.isdecimal() else 0
    rows = list(
        folder.db.execute(
            "SELECT id FROM pieces WHERE stands_open > 0 AND gone = 0 ORDER BY since, id LIMIT ? OFFSET ?", [limit + 1, start]
        )
    )
    documents = [piece_document(folder, one, language) for (one,) in rows[:limit]]
    return {"pieces": documents, "next": str(start + limit) if len(rows) > limit else None}


def logged(folder: JobFolder) -> list[dict]:
    """Every piece in short: what a schedule is compared with."""
    found = folder.db.execute("SELECT id, run, mark, kind, flagged, stands_open FROM pieces WHERE gone = 0 ORDER BY run, bare_mark")
    return [dict(zip(("id", "run", "mark", "kind", "flagged", "stands_open"), row, strict=True)) for row in found]


def documents(folder: JobFolder) -> list[dict]:
    """The job's documents (letters, data sheets) as they were received."""
    found = folder.db.execute("SELECT sha256, kind, bytes, received_at FROM files WHERE what = 'document' ORDER BY received_at")
    return [dict(zip(("sha256", "kind", "bytes", "received_at"), row, strict=True)) for row in found]


# each with an index of its own, so that the findings that ask for nothing are not read
_COUNTED = {
    "open": "stands IN ('open', 'in hand') AND stands = 'open'", "in-hand": "stands IN ('open', 'in hand') AND stands = 'in hand'",
    "asked": "shows = 'ask' AND verdict IN ('unsaid', 'unclear')", "settled": "stands IN ('settled', 'closed')",
}  # fmt: skip


# pieces that a job's page names, and whose place in their run is their mark's
_NAMED = "p.gone = 0 AND (p.kind IS NOT NULL OR p.mark IS NOT NULL)"
_ONE_BY_ONE = "(p.bare_mark IN (SELECT value FROM json_each(:marks)) OR coalesce(p.run, '') IN (SELECT value FROM json_each(:runs)))"


def lineup(folder: JobFolder, marks: Collection[str] = (), run: str | None = None, most: int = -1) -> tuple[list[dict], list[tuple]]:
    """Pieces with a kind or a mark in short, with how many of their findings stand where; leak tests are none.

    Where there are more than `most`, only those with one of these bare marks or of this run are given one by one;
    the others are counted: (run, what somebody has to do first, how many).
    """
    if most < 0 or folder.db.execute(f"SELECT count(*) FROM (SELECT 1 FROM pieces p WHERE {_NAMED} LIMIT ?)", [most + 1]).fetchone()[0] <= most:
        return _one_by_one(folder, "1", {}), []
    spelled = [] if run is None else [name for name in ("", *runs_spelled(folder)) if bare_run(name) == bare_run(run)]
    of = {"marks": json.dumps(sorted(marks)), "runs": json.dumps(spelled)}
    ranked = " UNION ALL ".join(f"SELECT piece, {rank} AS rank FROM findings WHERE current = 1 AND {one}" for rank, one in enumerate(_COUNTED.values()))
    counted = folder.db.execute(
        f"SELECT p.run, s.rank, count(*) FROM pieces p LEFT JOIN (SELECT piece, min(rank) AS rank FROM ({ranked}) GROUP BY piece) s ON s.piece = p.id "
        f"WHERE {_NAMED} AND NOT coalesce({_ONE_BY_ONE}, 0) GROUP BY p.run, s.rank", of
    )
    states = [*_COUNTED, "logged"]
    return _one_by_one(folder, _ONE_BY_ONE, of), [(run, states[-1 if rank is None else rank], count) for run, rank, count in counted]


def _one_by_one(folder: JobFolder, which: str, of: dict) -> list[dict]:
    found = list(folder.db.execute(
        f"SELECT p.id, p.run, p.mark, p.kind FROM pieces p WHERE {_NAMED} AND {which} ORDER BY p.run, length(p.bare_mark), p.bare_mark, p.id", of
    ))
    some = "AND piece IN (SELECT value FROM json_each(:ids))" if of else ""
    ids = {"ids": json.dumps([id for id, *_ in found])} if of else {}
    counts: dict[str, dict[str, int]] = {}
    for name, stands in _COUNTED.items():
        for piece, count in folder.db.execute(f"SELECT piece, count(*) FROM findings WHERE current = 1 AND {stands} {some} GROUP BY piece", ids):
            counts.setdefault(piece, dict.fromkeys(_COUNTED, 0))[name] = count
    none = dict.fromkeys(_COUNTED, 0)
    return [{"id": id, "run": run, "mark": mark, "kind": kind} | counts.get(id, none) for id, run, mark, kind in found]
