"""Does a log hold together? The questions that doctor and restore both ask, answered with Mistakes; nothing is changed.

    database(db)                the pages of the file, its references, and the guards that keep what was said
    received_files(db, path)    every file that was received lies there, whole
    journal_chain(db, printed)  the hashes follow one another, and what paper carries is among them
    contents(db)                what the journal speaks of is what stands in the tables
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import Path

from sqlite_utils import Database

from logbook import chain, intake
from logbook.mistake import Mistake
from logbook.store import journal
from logbook.store.acts import digested
from logbook.store.answering import heard_told
from logbook.store.files import WHERE, file_digest
from logbook.store.folder import migration_sets
from logbook.store.receiving import parts_told, received

MOST = 20  # faults of the database itself that are told; more say nothing new


def database(db: Database) -> Iterator[Mistake]:
    """SQLite's own checks, and a guard (trigger) that was taken away."""
    for (line,) in db.execute(f"PRAGMA integrity_check({MOST})"):
        if line != "ok":
            yield Mistake("store.database-damaged", "log.db", {"came": line})
    for table, row, parent, _ in list(db.execute("PRAGMA foreign_key_check"))[:MOST]:
        yield Mistake("store.database-damaged", "log.db", {"came": f"{table} {row} → {parent}"})
    guards = "SELECT name, sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name"
    new = Database(memory=True)
    for each in migration_sets():
        each.apply(new)
    there = dict(db.execute(guards))
    for name, sql in new.execute(guards):
        if there.get(name) != sql:
            yield Mistake("keeping.guard-gone", "log.db", {"name": name})
    new.close()


def received_files(db: Database, path: Path) -> Iterator[Mistake]:
    """Files that are missing or not what came, then parts of notes without a file behind them."""
    for sha256, what, kind in list(db.execute("SELECT sha256, what, kind FROM files WHERE erased_at IS NULL ORDER BY sha256")):
        name = f"{WHERE.get(what, 'originals')}/{sha256}.{kind}"
        wrong = whole(path / name, sha256)
        if wrong:
            yield Mistake(f"store.file-{wrong}", name, {"name": name})
    held: dict[str, set[str]] = {}
    for note, sha256 in db.execute("SELECT note, sha256 FROM parts"):
        held.setdefault(note, set()).add(sha256)
    for note, digests in db.execute("SELECT id, digests FROM notes ORDER BY seq"):
        told = json.loads(digests)
        for sha256 in {*told["audio"], *told["photos"]} - held.get(note, set()):
            yield Mistake("keeping.part-gone", note, {"note": note, "sha256": sha256[:16]})


def whole(file: Path, sha256: str) -> str | None:
    """"missing", "altered", or None for a file that has the bytes of that digest."""
    try:
        return None if file_digest(file) == sha256 else "altered"
    except (FileNotFoundError, NotADirectoryError):
        return "missing"
    except OSError:
        return "altered"  # a disk that cannot give the bytes back has lost them


def journal_chain(db: Database, printed: Iterable[str] = ()) -> Iterator[Mistake]:
    """The chain from its first row; `printed` are hashes known from paper, which must be in it."""
    seen: set[str] = set()

    def rows() -> Iterator[chain.Row]:
        for row in journal.each(db):
            seen.add(row.hash)
            yield row

    try:
        yield from chain.problems(rows())
    except ValueError as error:
        yield Mistake("store.database-damaged", "journal", {"came": str(error)})
    for one in sorted(set(printed) - seen - {chain.START}):
        yield Mistake("store.chain-not-printed", "journal", {"hash": one[:16]})


@dataclass
class Compared:
    """Rows of the journal whose content could be compared with the tables; the others speak of what passes
    (a sign-in, a judgement that was reckoned anew) or of a name that was erased on request."""

    rows: int = 0
    of: int = 0
    erased: list[tuple[int, str]] = field(default_factory=list)  # rows that say that something was erased, and when


def contents(db: Database, count: Compared) -> Iterator[Mistake]:
    """What the tables hold against the digest that the journal made when it came, and what no row speaks of."""
    salts = dict(db.execute("SELECT seq, salt FROM salts"))
    spoken: dict[str, set[str]] = {"note": set(), "act": set()}
    for row in journal.each(db):
        count.of += 1
        if row.act == "received":
            spoken["note"].add(row.ids.get("note"))
        if "act" in row.ids:
            spoken["act"].add(row.ids["act"])
        if row.act == "erased":
            count.erased.append((row.seq, row.at))
        found = _content(db, row)
        if found is None:
            continue
        count.rows += 1
        told = {"seq": row.seq, "act": row.act}
        if not found or row.seq not in salts:
            yield Mistake("store.content-gone", f"journal {row.seq}", told)
        elif not any(chain.digest(salts[row.seq], one) == row.digest for one in found):
            yield Mistake("store.content-altered", f"journal {row.seq}", told)
    for table, what in (("notes", "note"), ("acts", "act")):
        for (id,) in db.execute(f"SELECT id FROM {table} ORDER BY seq"):
            if id not in spoken[what]:
                yield Mistake("keeping.not-in-journal", id, {"what": what, "id": id})
    yield from _typed(db)
    yield from _erased_files(db)


def _erased_files(db: Database) -> Iterator[Mistake]:
    """A file may be gone only where a row of the journal says that a voice was erased at that moment."""
    rows = {row.at for row in journal.each(db) if row.act == "erased" and "voice" in row.ids.get("what", ())}
    for sha256, what, at in list(db.execute("SELECT sha256, what, erased_at FROM files WHERE erased_at IS NOT NULL ORDER BY sha256")):
        if what != "sound" or at not in rows:
            yield Mistake("erasing.no-row", sha256, {"sha256": sha256[:16], "at": at})


def _content(db: Database, row: chain.Row) -> list | None:
    """What a row may have digested, as it stands now; [] where it is gone, None where it cannot be known."""
    note = row.ids.get("note")
    match row.act:
        case "received":
            there = db.execute("SELECT 1 FROM notes WHERE id = ?", [note]).fetchone()
            return [received(db, note)] if there else []
        case "photo_received":
            return [one | {"note": note} for one in parts_told(db, note) if one["what"] == "picture"]
        case "document_received":
            return [{"document": sha256, "bytes": size} for sha256, size in db.execute("SELECT sha256, bytes FROM files WHERE what = 'document'")]
        case "heard":
            words = db.execute("SELECT text, transcript FROM words WHERE note = ? AND source = 'heard' AND text <> ''", [note])
            return [heard_told(text, document or "") for text, document in words]
        case "read":
            return [{"text": json.loads(reading)["text"]} for (reading,) in db.execute("SELECT reading FROM readings WHERE note = ?", [note])]
        case "person-added":
            name = db.execute("SELECT name FROM people WHERE id = ?", [row.ids.get("person")]).fetchone()
            return None if name == (None,) and _erased(db, row) else [name[0]] if name and name[0] else []
    if "act" not in row.ids:
        return None
    found = db.execute("SELECT act, note, piece, day, done_by, at, content FROM acts WHERE id = ?", [row.ids["act"]]).fetchone()
    if found is None:
        return []
    act, *about, by, at, content = found
    about = {name: value for name, value in zip(("note", "piece", "day"), about, strict=True) if value is not None}
    return [digested(act, about, by, at, json.loads(content))]


def _erased(db: Database, row: chain.Row) -> bool:
    """Is there a row after this one that says the person's name was erased on request?"""
    later = "SELECT 1 FROM journal WHERE act = 'erased' AND seq > ? AND json_extract(ids, '$.person') = ?"
    return db.execute(later, [row.seq, row.ids.get("person")]).fetchone() is not None


def _typed(db: Database) -> Iterator[Mistake]:
    """Typed words against the digest that the receipt or the act gave them."""
    known: dict[str, set[str]] = {}
    for note, digests in db.execute("SELECT id, digests FROM notes"):
        known[note] = {json.loads(digests)["text"]}
    for note, content in db.execute("SELECT note, content FROM acts WHERE act = 'typed'"):
        known.setdefault(note, set()).add(json.loads(content).get("text_digest"))
    for number, note, text in db.execute("SELECT id, note, text FROM words WHERE source = 'typed'"):
        if intake.text_digest(text) not in known.get(note, set()):
            yield Mistake("keeping.words-altered", note, {"note": note, "row": number})
