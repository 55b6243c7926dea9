"""The journal in the database: every act writes its row inside the transaction of the act itself."""

from __future__ import annotations

import json
import secrets
from collections.abc import Iterator, Mapping
from datetime import UTC, datetime

from sqlite_utils import Database

from logbook import chain


def write(
    db: Database, act: str, ids: Mapping[str, object], content: object, now: datetime | None = None
) -> chain.Row:
    """One act more, in the open transaction. `ids` hold ids alone; `content` is digested with a fresh salt."""
    salt = secrets.token_bytes(chain.SALT_BYTES)
    at = (now or datetime.now(UTC)).astimezone(UTC).isoformat()
    row = chain.following(last(db), at, act, ids, chain.digest(salt, content))
    db.execute(
        "INSERT INTO journal VALUES (?, ?, ?, ?, ?, ?, ?)",
        [row.seq, row.at, row.act, chain.canonical(row.ids).decode(), row.digest, row.before, row.hash],
    )
    db.execute("INSERT INTO salts VALUES (?, ?)", [row.seq, salt])
    return row


def forget(db: Database, act: str, person: str) -> None:
    """Erasing takes the salt along: the row keeps its place, and nobody can try names against its digest."""
    db.execute(
        "DELETE FROM salts WHERE seq IN (SELECT seq FROM journal WHERE act = ? AND json_extract(ids, '$.person') = ?)", [act, person]
    )


def last(db: Database) -> chain.Row | None:
    found = db.execute("SELECT * FROM journal ORDER BY seq DESC LIMIT 1").fetchone()
    return None if found is None else _row(found)


def each(db: Database, start: int = 1) -> Iterator[chain.Row]:
    """The rows from `start` on, a few at a time."""
    for found in db.execute("SELECT * FROM journal WHERE seq >= ? ORDER BY seq", [start]):
        yield _row(found)


def newest(folder) -> dict:
    """The newest hash, as every day report prints it; `seq` 0 in an empty journal."""
    row = last(folder.db)
    return {"seq": 0, "hash": chain.START} if row is None else {"seq": row.seq, "hash": row.hash}


def rows(folder, start: int = 1) -> Iterator[dict]:
    """The rows as the package carries them."""
    for row in each(folder.db, start):
        yield {
            "seq": row.seq, "at": row.at, "act": row.act, "ids": dict(row.ids), "digest": row.digest,
            "before": row.before, "hash": row.hash,
        }  # fmt: skip


def _row(found) -> chain.Row:
    seq, at, act, ids, digest, before, made = found
    return chain.Row(seq, at, act, json.loads(ids), digest, before, made)
