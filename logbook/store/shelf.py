"""Documents of the contract from the rows: a note or a piece as it stands, without loading the rest of the log."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from types import MappingProxyType, SimpleNamespace

from logbook.findings import Finding
from logbook.note import Note
from logbook.piece import Decision, Piece
from logbook.pipeline import note_document as told_note
from logbook.pipeline.documents import Sheet, sheet_to_json
from logbook.schedule import bare_run
from logbook.store.folder import JobFolder
from logbook.store.records import note as one_note
from logbook.store.records import notes, unpacked


@dataclass(frozen=True)
class Shelf:
    """What the documents of a few notes need of a `pipeline.Book`, read from the rows."""

    pieces: Mapping[str, Piece]
    findings: Mapping[str, tuple[Finding, ...]]
    entries: Mapping[tuple[str, int], str]
    asked: Mapping[tuple[str, int], tuple[Piece, tuple[Finding, ...]]]
    questions: Mapping[str, tuple]
    log: SimpleNamespace  # only `back`: what voice took back

    def piece_of(self, note_id: str, position: int) -> Piece | None:
        key = (note_id, position)
        if key in self.entries:
            return self.pieces[self.entries[key]]
        return self.asked[key][0] if key in self.asked else None

    def findings_of(self, note_id: str, position: int) -> tuple[Finding, ...]:
        key = (note_id, position)
        if key in self.entries:
            return self.findings[self.entries[key]]
        return self.asked[key][1] if key in self.asked else ()


def shelf(folder: JobFolder, note_ids: list[str]) -> Shelf:
    """The pieces, findings and questions of these notes."""
    marks = ",".join("?" * len(note_ids))
    entries = {
        (note, position): piece
        for note, position, piece in folder.db.execute(
            f"SELECT note, position, piece FROM entries WHERE current = 1 AND note IN ({marks})", note_ids
        )
    }
    held = sorted(set(entries.values()))
    pieces, findings = {}, {}
    for at in range(0, len(held), 500):
        some = held[at : at + 500]
        for piece_id, document in folder.db.execute(
            f"SELECT id, document FROM pieces WHERE id IN ({','.join('?' * len(some))})", some
        ):
            whole = unpacked(document)
            pieces[piece_id], findings[piece_id] = whole["piece"], whole["findings"]
    asked, questions, back = {}, {}, {}
    for note, document in folder.db.execute(f"SELECT note, document FROM questions WHERE note IN ({marks})", note_ids):
        told = unpacked(document)
        questions[note] = told["questions"]
        back[note] = told["back"]
        for position, one in told["asked"].items():
            asked[note, int(position)] = (one["piece"], one["findings"])
    return Shelf(pieces, findings, entries, asked, questions, SimpleNamespace(back=MappingProxyType(back)))


_PLAIN = (str, int, float, bool, type(None))


def _document(value):
    """A document as JSON knows it: limits and numbers kept with a finding come back frozen."""
    if type(value) in _PLAIN:
        return value
    if isinstance(value, dict | Mapping):
        return {key: one if type(one) in _PLAIN else _document(one) for key, one in value.items()}
    return [one if type(one) in _PLAIN else _document(one) for one in value] if isinstance(value, list | tuple) else value


def note_document(folder: JobFolder, note_id: str, language: str) -> dict | None:
    """`GET /notes/ID`, with its earlier hearings; None where there is no such note."""
    note = one_note(folder, note_id, earlier=True)
    if note is None:
        return None
    (told,) = being_reckoned(folder, _voices_gone(folder, [_document(told_note(note, shelf(folder, [note_id]), language))]))
    return told


def _voices_gone(folder: JobFolder, documents: list[dict]) -> list[dict]:
    """The documents, with `sound_erased_at` on those whose recording was erased on request; the words stay."""
    ids = [doc["id"] for doc in documents]
    found = folder.db.execute(
        "SELECT p.note, max(f.erased_at) FROM parts p JOIN files f ON f.sha256 = p.sha256 "
        f"WHERE p.what = 'sound' AND f.erased_at IS NOT NULL AND p.note IN ({','.join('?' * len(ids))}) GROUP BY p.note", ids
    )
    gone = dict(found.fetchall())
    return [doc | {"sound_erased_at": gone[doc["id"]]} if doc["id"] in gone else doc for doc in documents]


def being_reckoned(folder: JobFolder, documents: list[dict]) -> list[dict]:
    """The documents, with `reckoning` on those whose findings do not know yet what was said or pressed last."""
    ids = [doc["id"] for doc in documents if doc["state"] == "answered"]
    found = folder.db.execute(
        f"SELECT id FROM notes WHERE id IN ({','.join('?' * len(ids))}) "
        "AND revision > (SELECT CAST(value AS INTEGER) FROM about WHERE key = 'reckoned')",
        ids,
    )
    behind = {one for (one,) in found}
    return [doc | {"reckoning": True} if doc["id"] in behind else doc for doc in documents]


def note_documents(folder: JobFolder, found: list[Note], language: str) -> list[dict]:
    held = shelf(folder, [note.id for note in found]) if found else None
    return _voices_gone(folder, [_document(told_note(note, held, language)) for note in found])


def whole_piece(folder: JobFolder, piece_id: str) -> tuple[Piece, tuple[Finding, ...], tuple[Decision, ...]] | None:
    found = folder.db.execute("SELECT document FROM pieces WHERE id = ? AND gone = 0", [piece_id]).fetchone()
    if found is None:
        return None
    whole = unpacked(found[0])
    return whole["piece"], whole["findings"], whole["decisions"]


def piece_document(folder: JobFolder, piece_id: str, language: str) -> dict | None:
    """`GET /pieces/PIECE`; None where there is no such piece."""
    found = whole_piece(folder, piece_id)
    return None if found is None else _document(sheet_to_json(Sheet(*found), language))


def runs_spelled(folder: JobFolder) -> list[str]:
    """Every run's name as pieces bear it, also those that are gone: from name to name through the index, not piece by piece."""
    found = folder.db.execute(
        "WITH RECURSIVE named (run) AS (SELECT min(run) FROM pieces WHERE run IS NOT NULL UNION ALL "
        "SELECT (SELECT min(run) FROM pieces WHERE run > named.run) FROM named WHERE named.run IS NOT NULL) SELECT run FROM named WHERE run IS NOT NULL"
    )
    return [run for (run,) in found]


def run_pieces(folder: JobFolder, run: str) -> list[Piece]:
    """The pieces of a run, however its name is written, in the order they were made."""
    named = [name for name in runs_spelled(folder) if bare_run(name) == bare_run(run)]
    rows = folder.db.execute(f"SELECT document FROM pieces WHERE gone = 0 AND run IN ({','.join('?' * len(named))})", named)
    found = [unpacked(document)["piece"] for (document,) in rows]
    return sorted(found, key=lambda piece: (piece.made_at is not None, piece.made_at, piece.id))


def each_note(folder: JobFolder, language: str) -> Iterator[dict]:
    """Every note of the job in order of receipt, a hundred at a time."""
    after = 0
    while True:
        rows = list(folder.db.execute("SELECT seq FROM notes WHERE seq > ? ORDER BY seq LIMIT 100", [after]))
        if not rows:
            return
        found = list(notes(folder, "n.seq > ? AND n.seq <= ?", [after, rows[-1][0]], earlier=True))
        yield from note_documents(folder, found, language)
        after = rows[-1][0]


def each_piece(folder: JobFolder, language: str) -> Iterator[dict]:
    """Every piece of the job by run and mark."""
    for (document,) in folder.db.execute("SELECT document FROM pieces WHERE gone = 0 ORDER BY run, bare_mark, id"):
        whole = unpacked(document)
        yield _document(sheet_to_json(Sheet(whole["piece"], whole["findings"], whole["decisions"]), language))
