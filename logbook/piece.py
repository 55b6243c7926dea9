"""The piece is the unit of record: the facts of all its notes add up, the last word wins, the history stays."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from logbook.note import Photo
from logbook.said import Fact, OpenItem


@dataclass(frozen=True)
class Assumed:
    """A word that stands in for speech: `via` job or shift, `note` the shift note."""

    name: str
    value: object
    via: str
    note: str | None = None


@dataclass(frozen=True)
class PiecePhoto:
    """A photo that shows this piece (or may show it: `of` is None), with the note it came with."""

    note: str
    photo: Photo
    minutes_from_note: float | None = None
    number: int | None = None  # its place among the photos of its note, from 1


@dataclass(frozen=True)
class Piece:
    """One fitting of the job as its notes say it. `id` is opaque; run and mark are attributes."""

    id: str | None
    job: str
    run: str | None
    mark: str | None
    notes: tuple[str, ...]
    facts: tuple[Fact, ...]
    assumed: tuple[Assumed, ...] = ()
    open_items: tuple[OpenItem, ...] = ()
    photos: tuple[PiecePhoto, ...] = ()
    photos_without_piece: int = 0  # photos of its notes that nobody tied to a piece yet
    photos_to_come: int = 0
    coming: tuple[str, ...] = ()  # the announced digests of those photos
    photos_overdue: bool = False  # announced photos did not come within 24 h
    checked_without_photos: bool = False  # `logbook check` without --photo: photo rules are not due
    looked: tuple[Mapping[str, object], ...] = ()
    mark_unclear: tuple[str, ...] = ()  # runs in question, or why the mark does not tell the piece

    def fact(self, name: str) -> Fact | None:
        """The fact of this name; where two conflict, the first (see `conflicting`)."""
        return next((fact for fact in self.facts if fact.name == name), None)

    def value(self, name: str):
        fact = self.fact(name)
        return None if fact is None else fact.value

    def conflicting(self, name: str) -> bool:
        return any(fact.conflict for fact in self.facts if fact.name == name)

    def stands(self, name: str) -> Assumed | None:
        return next((word for word in self.assumed if word.name == name), None)
