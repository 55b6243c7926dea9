"""The log reckoned: pieces, what the rules find of them, where that stands, and what each note is asked."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime

from logbook.findings import Finding
from logbook.job import Job
from logbook.joining.joined import Key
from logbook.joining.log import Log
from logbook.note import Note
from logbook.piece import Decision, Piece
from logbook.review import Row
from logbook.runs import Around


@dataclass(frozen=True)
class Book:
    """A frozen view of the log; go on from it with `pipeline.reckon(..., previous=book)`.

    `entries` tells the piece of every entry that joined one. `ids` tells the pieces that every entry ever had, in
    order; it only grows, and is what has to be kept so that pieces have the same ids after a restart (`ids=`). `asked` holds the entries that joined nothing, each as a piece without
    an id and what the rules ask of it. `moved` leads from a piece that was joined into another to that one.
    `changed` and `changed_notes` name what is not as it was in the book before.
    """

    job: Job
    pieces: Mapping[str, Piece]
    findings: Mapping[str, tuple[Finding, ...]]
    entries: Mapping[Key, str]
    ids: Mapping[Key, tuple[str, ...]]
    asked: Mapping[Key, tuple[Piece, tuple[Finding, ...]]]
    questions: Mapping[str, tuple[tuple[int, str], ...]]
    notes: Mapping[str, Note]
    decisions: Mapping[str, tuple[Decision, ...]]  # piece -> its decisions, oldest first
    moved: Mapping[str, str]
    changed: frozenset[str]
    changed_notes: frozenset[str]
    log: Log = field(repr=False, compare=False)
    kept: Kept = field(repr=False, compare=False)

    def findings_of(self, note_id: str, position: int) -> tuple[Finding, ...]:
        """The findings of the piece an entry belongs to, as they stand now."""
        key = (note_id, position)
        piece_id = self.entries.get(key)
        if piece_id is not None:
            return self.findings[piece_id]
        return self.asked[key][1] if key in self.asked else ()

    def piece_of(self, note_id: str, position: int) -> Piece | None:
        key = (note_id, position)
        piece_id = self.entries.get(key)
        return self.pieces[piece_id] if piece_id is not None else self.asked[key][0] if key in self.asked else None


@dataclass
class Kept:
    """What reckoning keeps from one time to the next, besides the log of notes; copied before it is changed."""

    ids: dict[Key, str] = field(default_factory=dict)  # every entry that ever had a piece
    had: dict[Key, tuple[str, ...]] = field(default_factory=dict)  # the pieces it ever had, which it may come back to
    members: dict[str, tuple[Key, ...]] = field(default_factory=dict)  # piece -> its entries, as last seen
    id_of: dict[Key, str] = field(default_factory=dict)  # founder -> piece
    key_of: dict[str, Key] = field(default_factory=dict)
    moved: dict[str, str] = field(default_factory=dict)
    pieces: dict[str, Piece] = field(default_factory=dict)
    around: dict[str, Around] = field(default_factory=dict)
    raw: dict[str, tuple[Finding, ...]] = field(default_factory=dict)  # as the rules found them
    findings: dict[str, tuple[Finding, ...]] = field(default_factory=dict)  # with where they stand
    since: dict[tuple[str, str], datetime] = field(default_factory=dict)  # (piece, rule) -> when reckoned so
    rows: dict[tuple[str, str], tuple[tuple[Row, frozenset[str]], ...]] = field(default_factory=dict)
    asked: dict[Key, tuple[Piece, tuple[Finding, ...]]] = field(default_factory=dict)
    questions: dict[str, tuple[tuple[int, str], ...]] = field(default_factory=dict)
    decisions: dict[str, tuple[Decision, ...]] = field(default_factory=dict)
    prints: dict[tuple, frozenset[str]] = field(default_factory=dict)  # a photo's print -> pieces that show it
    sharing: dict[str, frozenset[str]] = field(default_factory=dict)  # piece -> other pieces that show one of its photos
    waiting: dict[str, bool] = field(default_factory=dict)  # pieces with photos still to come

    def copy(self) -> Kept:
        return Kept(**{name: dict(value) for name, value in vars(self).items()})
