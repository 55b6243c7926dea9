"""The journal's hashes: every act is a row with a hash over the row before, so that a later rewrite shows.

A row holds ids and a digest of what happened, never names, words or bytes. The digest is salted: SHA-256 of a
random salt and the canonical JSON (RFC 8785) of the content. Whoever erases the content erases the salt too,
and the row keeps its place in the chain while telling nothing any more.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

import rfc8785

from logbook.mistake import Mistake

START = "0" * 64  # stands for the row before the first
SALT_BYTES = 16


@dataclass(frozen=True)
class Row:
    """`seq` counts from 1, `at` is an ISO 8601 time, `ids` says whose act about what, by ids alone."""

    seq: int
    at: str
    act: str
    ids: Mapping[str, object]
    digest: str
    before: str
    hash: str


def canonical(document: object) -> bytes:
    """RFC 8785: one byte string for one JSON value. Raises for numbers that JSON cannot carry."""
    return rfc8785.dumps(document)


def digest(salt: bytes, content: object) -> str:
    return hashlib.sha256(salt + canonical(content)).hexdigest()


def hash_of(seq: int, at: str, act: str, ids: Mapping[str, object], content_digest: str, before: str) -> str:
    body = {"seq": seq, "at": at, "act": act, "ids": dict(ids), "digest": content_digest, "before": before}
    return hashlib.sha256(canonical(body)).hexdigest()


def following(last: Row | None, at: str, act: str, ids: Mapping[str, object], content_digest: str) -> Row:
    """The row that comes after `last`."""
    seq, before = (1, START) if last is None else (last.seq + 1, last.hash)
    made = hash_of(seq, at, act, ids, content_digest, before)
    return Row(seq, at, act, dict(ids), content_digest, before, made)


def problems(rows: Iterable[Row], before: Row | None = None, newest: str | None = None) -> Iterator[Mistake]:
    """Every place where the chain does not hold, in order; nothing where it is whole.

    `before` is the row that the first one must follow (None: it is the journal's first). `newest`, where known
    from paper, must be among the hashes.
    """
    last, seen = before, before is not None and before.hash == newest
    for row in rows:
        expected = 1 if last is None else last.seq + 1
        if row.seq != expected:
            yield Mistake("store.chain-gap", f"journal {row.seq}", {"expected": expected, "came": row.seq})
        elif row.before != (START if last is None else last.hash):
            yield Mistake("store.chain-broken", f"journal {row.seq}", {"seq": row.seq})
        if row.hash != hash_of(row.seq, row.at, row.act, row.ids, row.digest, row.before):
            yield Mistake("store.chain-altered", f"journal {row.seq}", {"seq": row.seq})
        seen = seen or row.hash == newest
        last = row
    if newest is not None and not seen:
        yield Mistake("store.chain-not-printed", "journal", {"hash": newest[:16]})
