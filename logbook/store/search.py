"""Search over what was said, made, placed, ruled and decided, kept in step with the log by the database itself.

    search(folder, asked, only=None, voices=None, start=0, limit=25) -> Found

`sought_of` holds one row a note (its current words), a piece (mark, run, place, kind, rules that do not hold) and an
act with words of its own (a reason, a remark); `sought` is SQLite's FTS5 over it, accents folded. Words and acts come
in by triggers, so that what is erased or heard again cannot be found any longer; a piece when it was reckoned. What a
reader types is never FTS5's own query language: every term is quoted, and all of them must be there.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Collection, Sequence
from dataclasses import dataclass

from sqlite_utils import Database, Migrations

from logbook import labels
from logbook.facts import bare_mark
from logbook.findings import Finding
from logbook.piece import Piece
from logbook.schedule import Row
from logbook.store.folder import JobFolder
from logbook.wording import LANGUAGES, has, say

migrations = Migrations("search")

KINDS = ("piece", "note", "act")
MOST_TERMS, LONGEST = 12, 200
OPEN, CLOSE = "\x02", "\x03"  # around the words of a hit; no text that people type holds them
_WEIGHTS = "10.0, 4.0, 3.0, 1.0"  # marks, runs, places, words
_SAID = "trim(coalesce(json_extract(NEW.content, '$.reason'), '') || ' ' || coalesce(json_extract(NEW.content, '$.words'), ''))"
_KEPT = "ON CONFLICT (what, id) DO UPDATE SET words = excluded.words"

_LAID = (
    """CREATE TABLE sought_of (
        row INTEGER PRIMARY KEY, what TEXT NOT NULL, id TEXT NOT NULL, marks TEXT NOT NULL DEFAULT '',
        runs TEXT NOT NULL DEFAULT '', places TEXT NOT NULL DEFAULT '', words TEXT NOT NULL DEFAULT '',
        UNIQUE (what, id)) STRICT""",
    """CREATE VIRTUAL TABLE sought USING fts5(marks, runs, places, words, content='sought_of', content_rowid='row',
        tokenize='unicode61 remove_diacritics 2', prefix='2 3')""",
    """CREATE TRIGGER sought_comes AFTER INSERT ON sought_of BEGIN
        INSERT INTO sought (rowid, marks, runs, places, words) VALUES (NEW.row, NEW.marks, NEW.runs, NEW.places, NEW.words); END""",
    """CREATE TRIGGER sought_goes AFTER DELETE ON sought_of BEGIN
        INSERT INTO sought (sought, rowid, marks, runs, places, words)
            VALUES ('delete', OLD.row, OLD.marks, OLD.runs, OLD.places, OLD.words); END""",
    """CREATE TRIGGER sought_turns AFTER UPDATE ON sought_of BEGIN
        INSERT INTO sought (sought, rowid, marks, runs, places, words)
            VALUES ('delete', OLD.row, OLD.marks, OLD.runs, OLD.places, OLD.words);
        INSERT INTO sought (rowid, marks, runs, places, words) VALUES (NEW.row, NEW.marks, NEW.runs, NEW.places, NEW.words); END""",
    f"""CREATE TRIGGER words_sought AFTER INSERT ON words WHEN NEW.current = 1 BEGIN
        INSERT INTO sought_of (what, id, words) VALUES ('note', NEW.note, NEW.text) {_KEPT}; END""",
    f"""CREATE TRIGGER words_sought_again AFTER UPDATE OF current, text ON words WHEN NEW.current = 1 BEGIN
        INSERT INTO sought_of (what, id, words) VALUES ('note', NEW.note, NEW.text) {_KEPT}; END""",
    f"""CREATE TRIGGER acts_sought AFTER INSERT ON acts WHEN {_SAID} <> '' BEGIN
        INSERT INTO sought_of (what, id, words) VALUES ('act', NEW.id, {_SAID}) {_KEPT}; END""",
    """CREATE TRIGGER acts_sought_no_more AFTER UPDATE OF content ON acts BEGIN
        DELETE FROM sought_of WHERE what = 'act' AND id = NEW.id; END""",
    "INSERT INTO sought_of (what, id, words) SELECT 'note', note, text FROM words WHERE current = 1",
    f"""INSERT INTO sought_of (what, id, words) SELECT 'act', NEW.id, {_SAID} FROM acts NEW
        WHERE json_type(NEW.content) = 'object' AND {_SAID} <> ''""",
    # pieces come in when they are reckoned: once more from the rows
    "UPDATE about SET value = '0' WHERE key = 'reckoned'",
    "UPDATE about SET value = '' WHERE key = 'reckoner'",
)


@migrations()
def lay_the_search(db: Database) -> None:
    for statement in _LAID:
        db.execute(statement)


def keep_piece(db: Database, piece: Piece, findings: Sequence[Finding], planned: Row | None = None) -> None:
    """What a piece can be found by, in the open transaction. `planned` is its row of the schedule when it was reckoned."""
    kind, mark, run = piece.value("kind"), piece.mark or "", piece.run or ""
    marks = " ".join(dict.fromkeys(part for part in (mark, bare_mark(mark), *(piece.value("joined_to") or ())) if part))
    runs = " ".join(say("search.run", language, run=run) for language in LANGUAGES) if run else ""
    off = [one.rule for one in findings if one.verdict != "meets" and one.shows != "file"]
    said = [*(labels.kind(kind, language) for language in LANGUAGES), *_where(planned)]
    said += [word for rule in off for word in (rule, *(say(f"rules.{rule}.name", one) for one in LANGUAGES if has(f"rules.{rule}.name", one)))]
    row = ["piece", piece.id, marks, runs, str(piece.value("place") or ""), " · ".join(part for part in said if part)]
    db.execute(
        "INSERT INTO sought_of (what, id, marks, runs, places, words) VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (what, id) DO UPDATE "
        "SET marks = excluded.marks, runs = excluded.runs, places = excluded.places, words = excluded.words", row,
    )  # fmt: skip


def _where(row: Row | None) -> tuple[str, ...]:
    return () if row is None else tuple(dict.fromkeys(one for one in (row.area, row.system, row.drawing) if one))


def drop_piece(db: Database, piece_id: str) -> None:
    db.execute("DELETE FROM sought_of WHERE what = 'piece' AND id = ?", [piece_id])


def squeeze(db: Database) -> None:
    """After erasing: writes the index anew, so that no erased word lingers in its old parts. In the open transaction."""
    db.execute("INSERT INTO sought (sought) VALUES ('rebuild')")


@dataclass(frozen=True)
class Hit:
    """`what`: piece, note or act; `shown`: the words around the hit as (text, is it the hit) pieces."""

    what: str
    id: str
    shown: tuple[tuple[str, bool], ...]


@dataclass(frozen=True)
class Found:
    """`total` counts all hits; `next` is where the next page starts, None at the end."""

    hits: tuple[Hit, ...]
    total: int
    next: int | None


def terms(asked: str) -> tuple[str, ...]:
    """The terms of a question: words, and what stands between double quotes as one; signs alone are none."""
    cut = re.findall(r'"([^"]*)"?|(\S+)', asked[:LONGEST])
    found = (" ".join((quoted or bare).split()) for quoted, bare in cut)
    return tuple(dict.fromkeys(one for one in found if any(sign.isalnum() for sign in one)))[:MOST_TERMS]


def _match(found: Sequence[str]) -> str:
    """All terms, each quoted; a word may go on, a number may not, and a mark is found however it is written."""
    parts = []
    for term in found:
        plain = "".join(sign for sign in term if sign.isprintable()).replace('"', " ")
        ways = dict.fromkeys(one for one in (plain, bare_mark(plain)) if one.strip())
        parts.append("(" + " OR ".join(f'"{one}"' + ("" if one[-1].isdigit() else " *") for one in ways) + ")")
    return " AND ".join(parts)


def search(
    folder: JobFolder, asked: str, only: str | None = None, voices: Collection[str] | None = None, start: int = 0, limit: int = 25
) -> Found:
    """Best first, then newest. `only` is one of KINDS; `voices` keeps to what these people said or handed in."""
    found = terms(asked)
    if not found or (only is not None and only not in KINDS):
        return Found((), 0, None)
    where, values = ["sought MATCH ?"], [_match(found)]
    if only is not None:
        where.append("o.what = ?")
        values.append(only)
    if voices is not None:
        marks = ",".join("?" * len(voices))
        own = f"SELECT id FROM notes WHERE spoken_by IN ({marks}) OR handed_in_by IN ({marks})"
        where.append(f"((o.what = 'note' AND o.id IN ({own})) OR (o.what = 'piece' AND o.id IN (SELECT piece FROM entries WHERE current = 1 AND note IN ({own}))))")
        values += [*voices] * 4
    told = "JOIN sought_of o ON o.row = sought.rowid" if len(where) > 1 else ""  # whose words they are is asked of what is shown alone
    joined = f"FROM sought {told} WHERE {' AND '.join(where)}"
    total = folder.db.execute(f"SELECT count(*) {joined}", values).fetchone()[0]
    best = f"SELECT sought.rowid, bm25(sought, {_WEIGHTS}) AS far {joined} ORDER BY far, sought.rowid DESC LIMIT ? OFFSET ?"
    rows = [row for row, _ in folder.db.execute(best, [*values, limit, start])]
    held = ",".join("?" * len(rows))
    shown = folder.db.execute(
        f"SELECT o.row, o.what, o.id, snippet(sought, -1, ?, ?, '…', 24) FROM sought JOIN sought_of o ON o.row = sought.rowid "
        f"WHERE sought MATCH ? AND sought.rowid IN ({held})", [OPEN, CLOSE, values[0], *rows],
    )  # fmt: skip
    by_row = {row: Hit(what, id, _cut(text)) for row, what, id, text in shown}
    return Found(tuple(by_row[row] for row in rows), total, start + limit if total > start + limit else None)


def _cut(text: str) -> tuple[tuple[str, bool], ...]:
    parts = re.split(f"[{OPEN}{CLOSE}]", text)
    return tuple((part, at % 2 == 1) for at, part in enumerate(parts) if part)


def folded(text: str) -> str:
    """Small letters without accents, as the index compares."""
    return "".join(sign for sign in unicodedata.normalize("NFD", text.casefold()) if not unicodedata.combining(sign))
