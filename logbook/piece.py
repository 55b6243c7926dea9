"""The piece is the unit of record: the facts of all its notes add up, the last word wins, the history stays."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime
from functools import cached_property

from logbook import facts as names
from logbook.note import Photo
from logbook.record import record
from logbook.said import Fact, Muffled, OpenItem, Unread


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
class Found:
    """What a lead found himself of one fact, in his own note or by a decision (`rule`: of which finding)."""

    name: str
    value: object
    heard: float | None = None  # how surely his own word was heard
    rule: str | None = None
    anew: bool = False  # said again since, after a rework or repair


@record
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
    muffled: tuple[Muffled, ...] = ()  # stretches of its notes that nobody could make out
    unread: tuple[Unread, ...] = ()  # words of its notes that nobody understood, until what they may tell of is said again
    photos: tuple[PiecePhoto, ...] = ()
    photos_without_piece: int = 0  # photos of its notes that nobody tied to a piece yet
    photos_to_come: int = 0
    coming: tuple[str, ...] = ()  # the announced digests of those photos
    photos_overdue: bool = False  # announced photos did not come within 24 h
    checked_without_photos: bool = False  # `logbook check` without --photo: photo rules are not due
    looked: tuple[Mapping[str, object], ...] = ()
    found: tuple[Found, ...] = ()  # his newest plain word of each fact
    made_at: datetime | None = None  # when its first note was spoken: decides which schedule was in force
    mark_unclear: tuple[str, ...] = ()  # runs in question, or why the mark does not tell the piece
    scrapped: bool = False  # thrown away by a decision; takes no further notes
    builders: tuple[str, ...] = ()  # who spoke its notes, without the leads who only looked

    def fact(self, name: str) -> Fact | None:
        """The fact of this name; where two conflict, the first (see `conflicting`)."""
        return self._by_name.get(name)

    @cached_property
    def _by_name(self) -> Mapping[str, Fact]:
        """The first fact of each name: every rule asks for several."""
        return {fact.name: fact for fact in reversed(self.facts)}

    def named(self, names: tuple[str, ...]) -> tuple[Fact, ...]:
        """All facts of these names, in the order of the piece."""
        places = self._places
        at = places.get(names[0], ()) if len(names) == 1 else sorted({at for name in names for at in places.get(name, ())})
        return tuple([self.facts[one] for one in at])

    @cached_property
    def _places(self) -> Mapping[str, tuple[int, ...]]:
        places: dict[str, tuple[int, ...]] = {}
        for at, fact in enumerate(self.facts):
            places[fact.name] = (*places.get(fact.name, ()), at)
        return places

    def value(self, name: str):
        fact = self._by_name.get(name)
        return None if fact is None else fact.value

    def conflicting(self, name: str) -> bool:
        return any(fact.conflict for fact in self.facts if fact.name == name)

    def stands(self, name: str) -> Assumed | None:
        return next((word for word in self.assumed if word.name == name), None)


@dataclass(frozen=True)
class Looked:
    """What somebody saw for himself: `how` seen, felt, measured or photo; facts as (name, value)."""

    how: str
    facts: tuple[tuple[str, object], ...]


@dataclass(frozen=True)
class Decision:
    """What a lead decided of one finding, on the edition he had before him.

    `decision` is rework, repair, concession, scrap, heard_wrong, looked or asked; `corrected` the fact set right
    (name, value); `document` the SHA-256 of a stored document; `owner` and `due` who ends it, by when.
    """

    id: str
    piece: str
    rule: str
    edition: str
    decision: str
    by: str
    at: datetime
    reason: str | None = None
    corrected: tuple[str, object] | None = None
    looked: Looked | None = None
    granted_by: str | None = None
    document: str | None = None
    owner: str | None = None
    due: date | None = None


def fact_of_to_json(name: str, value) -> dict:
    """A fact that no note says: its name and value, and the exact fraction where the number is rounded."""
    exact = names.exact_to_json(name, value)
    return {"name": name, "value": names.to_json(name, value)} | ({} if exact is None else {"exact": exact})


def decision_to_json(decision: Decision) -> dict:
    corrected, looked = decision.corrected, decision.looked
    doc = {
        "id": decision.id,
        "piece": decision.piece,
        "rule": decision.rule,
        "edition": decision.edition,
        "decision": decision.decision,
        "reason": decision.reason,
        "corrected": None if corrected is None else fact_of_to_json(*corrected),
        "looked": None if looked is None else {"how": looked.how, "facts": [looked_fact(*fact) for fact in looked.facts]},
        "granted_by": decision.granted_by,
        "document": decision.document,
        "by": decision.by,
        "at": decision.at.isoformat(),
    }
    if decision.owner is not None:
        doc["owner"] = decision.owner
    if decision.due is not None:
        doc["due"] = decision.due.isoformat()
    return doc


def looked_fact(name: str, value) -> dict:
    return fact_of_to_json(name, value) | {"unit": names.BY_NAME[name].unit}


def decision_from_json(doc: Mapping) -> Decision:
    """A decision as it was kept; see `review.decide` for one that somebody asks for."""

    def fact(one):
        return one["name"], names.from_json(one["name"], one["value"], one.get("exact"))

    corrected, looked = doc["corrected"], doc["looked"]
    return Decision(
        id=doc["id"],
        piece=doc["piece"],
        rule=doc["rule"],
        edition=doc["edition"],
        decision=doc["decision"],
        by=doc["by"],
        at=datetime.fromisoformat(doc["at"]),
        reason=doc["reason"],
        corrected=None if corrected is None else fact(corrected),
        looked=None if looked is None else Looked(looked["how"], tuple(fact(one) for one in looked["facts"])),
        granted_by=doc["granted_by"],
        document=doc["document"],
        owner=doc.get("owner"),
        due=date.fromisoformat(doc["due"]) if doc.get("due") else None,
    )
