"""Pieces of a run in order, and what lies around one piece: its schedule row, its neighbours, photos seen elsewhere.

`site(job, pieces)` lays everything out once, in one pass; `site.around(piece)` then answers for one piece without
looking at the others again, so that judging grows in line with the notes. Pieces come in the order they were made:
a finding between two pieces stands on the later one.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from logbook import job as jobs
from logbook.facts import bare_mark
from logbook.job import Job
from logbook.piece import Piece, PiecePhoto
from logbook.schedule import BESIDE, Revision, Row, bare_run

THROUGH = ("straight", "elbow", "offset", "tee", "branch", "equipment_connection", "damper_sleeve")  # one size in and out
LAID_BY_END = ("transition", "offset", "straight", "elbow")  # kinds of which the end that air leaves by is asked
PRINT_BITS, CHUNK = 64, 16  # a picture print in four chunks: two prints that differ in at most 3 bits share one


@dataclass(frozen=True)
class Neighbour:
    """A piece of the same run that this one meets. `side` before or after it, None where nobody said which."""

    mark: str
    side: str | None
    inlet: tuple[Fraction, Fraction] | None
    outlet: tuple[Fraction, Fraction] | None
    leaves_by: str | None


@dataclass(frozen=True)
class Elsewhere:
    """A photo that stands in another fitting's note as well: `how` bytes, pixels, moment or alike."""

    number: int | None
    how: str
    mark: str | None
    sha256: str
    other: str  # digest of the other photo


@dataclass(frozen=True)
class Around:
    """What a rule may look at besides the piece. All of it is empty for a piece that stands alone."""

    job: Job = jobs.DEFAULT
    row: Row | None = None  # of the schedule in force when the piece was made
    revision: str | None = None
    scheduled: bool = False  # a schedule was in force
    nearest: tuple[str, ...] = ()  # the two marks spelled most alike, where the mark is not on the schedule
    before: tuple[Neighbour, ...] = ()  # neighbours that were logged before this piece
    next_mark: str | None = None  # by the schedule's order
    joined_by: tuple[str, ...] = ()  # marks of the pieces that were said closed to this one
    run_done: bool = False
    air_end_asked: bool = False  # another piece of the run asks for the end that air leaves by
    elsewhere: tuple[Elsewhere, ...] = ()


@dataclass(frozen=True)
class Site:
    """Every piece of the job laid out for `around`. Made by `site`."""

    job: Job
    places: Mapping[str | None, int]
    by_mark: Mapping[tuple[str, str], Piece]
    closed_to: Mapping[tuple[str, str], tuple[str, ...]]
    asks_air_end: Mapping[str, str | None]
    photos: Mapping[tuple[str, object], tuple[tuple[int, str | None, str, str], ...]] = field(repr=False)
    # (what, value) -> (place of the piece, its mark, note, digest)

    def around(self, piece: Piece) -> Around:
        day = None if piece.made_at is None else self.job.day_of(piece.made_at)
        plan = self.job.revision(day)
        row = None if plan is None or piece.mark is None else plan.row(piece.mark, piece.run)
        links = _links(plan, row)
        of_run = self.job.run(piece.run)
        return Around(
            job=self.job,
            row=row,
            revision=None if plan is None else plan.name,
            scheduled=plan is not None,
            nearest=plan.nearest(piece.mark) if plan is not None and row is None and piece.mark is not None else (),
            before=self._neighbours(piece, links),
            next_mark=None if links[1] is None else links[1].mark,
            joined_by=self.closed_to.get(_key(piece.run, piece.mark), ()),
            run_done=of_run is not None and of_run.done,
            air_end_asked=self.asks_air_end.get(bare_run(piece.run or ""), piece.id) != piece.id,
            elsewhere=tuple(self._elsewhere(piece)),
        )

    def _neighbours(self, piece: Piece, links: tuple[Row | None, Row | None]) -> tuple[Neighbour, ...]:
        mine = self.places.get(piece.id, len(self.places))
        found: dict[str | None, Neighbour] = {}
        named = [(row.mark, row.run, side) for row, side in zip(links, ("before", "after")) if row is not None]
        named += [(mark, piece.run, None) for mark in piece.value("joined_to") or ()]
        for mark, run, side in named:
            other = self.by_mark.get(_key(run, mark))
            if other is None or other.id == piece.id or self.places[other.id] > mine or other.id in found:
                continue
            if other.value("kind") in BESIDE:
                continue
            inlet, outlet = ends(other)
            found[other.id] = Neighbour(other.mark or mark, side, inlet, outlet, leaves_by(other))
        return tuple(found.values())

    def _elsewhere(self, piece: Piece) -> Iterable[Elsewhere]:
        mine = self.places.get(piece.id, len(self.places))
        for held in piece.photos:
            for how, keys in prints(held):
                others = [
                    (mark, digest)
                    for key in keys
                    for place, mark, note, digest in self.photos.get(key, ())
                    if place < mine and note not in piece.notes and (how != "alike" or self._alike(held, key, digest))
                ]
                if others:
                    mark, digest = others[0]
                    yield Elsewhere(held.number, how, mark, held.photo.sha256, digest)
                    break

    def _alike(self, held: PiecePhoto, key: tuple[str, object], digest: str) -> bool:
        mine, other = _picture_print(held.photo.seen), self.photos[("print", digest)][0][3]
        return bin(mine ^ int(other, 16)).count("1") <= self.job.limit("photo_likeness")


def site(job: Job, pieces: Iterable[Piece]) -> Site:
    """Lays the pieces of a job out, in the order they were made."""
    pieces = tuple(pieces)
    places = {piece.id: place for place, piece in enumerate(pieces)}
    by_mark: dict[tuple[str, str], Piece] = {}
    closed_to: dict[tuple[str, str], list[str]] = {}
    asks: dict[str, str | None] = {}
    photos: dict[tuple[str, object], list] = {}
    for place, piece in enumerate(pieces):
        if piece.mark is not None:
            by_mark[_key(piece.run, piece.mark)] = piece
        for mark in piece.value("joined_to") or ():
            closed_to.setdefault(_key(piece.run, mark), []).append(piece.mark or "")
        silent = piece.fact("air_leaves_by") is None and piece.stands("air_leaves_by") is None
        if silent and piece.value("kind") in LAID_BY_END:
            asks.setdefault(bare_run(piece.run or ""), piece.id)
        for held in piece.photos:
            shown = (place, piece.mark, held.note, held.photo.sha256)
            for _, keys in prints(held):
                for key in keys:
                    photos.setdefault(key, []).append(shown)
            picture = _picture_print(held.photo.seen)
            if picture is not None:
                photos[("print", held.photo.sha256)] = [(place, None, "", f"{picture:x}")]
    return Site(
        job,
        places,
        by_mark,
        {key: tuple(marks) for key, marks in closed_to.items()},
        asks,
        {key: tuple(found) for key, found in photos.items()},
    )


def _key(run: str | None, mark: str | None) -> tuple[str, str]:
    return bare_run(run or ""), bare_mark(mark or "")


def _links(plan: Revision | None, row: Row | None) -> tuple[Row | None, Row | None]:
    """The rows before and after a row in the chain of its run."""
    if plan is None or row is None or row.run is None:
        return None, None
    return plan.links.get((bare_run(row.run), row.line), (None, None))


def ends(piece: Piece) -> tuple[tuple | None, tuple | None]:
    """The two sizes that a piece shows to its neighbours, as spoken: where it comes from, where it goes on."""
    inlet, outlet = piece.value("inlet_size"), piece.value("outlet_size")
    if outlet is None and piece.value("kind") in THROUGH:
        outlet = inlet
    return inlet, outlet


def leaves_by(piece: Piece) -> str | None:
    """The end that air leaves by, said or standing."""
    word = piece.stands("air_leaves_by")
    return piece.value("air_leaves_by") or (None if word is None else word.value)


def missing(job: Job, pieces: Iterable[Piece], run: str, day=None) -> tuple[Row, ...]:
    """The rows of a run's schedule that nobody has logged yet, in the run's order."""
    plan = job.revision(day)
    logged = {_key(piece.run, piece.mark) for piece in pieces}
    rows = () if plan is None else plan.by_run.get(bare_run(run), ())
    return tuple(row for row in rows if _key(row.run, row.mark) not in logged and _key(None, row.mark) not in logged)


def in_order(job: Job, pieces: Iterable[Piece], run: str, day=None) -> tuple[Piece, ...]:
    """The pieces of a run by the schedule's order; those that are not on it follow in the order they were made."""
    plan = job.revision(day)
    rows = () if plan is None else plan.by_run.get(bare_run(run), ())
    order = {_key(row.run, row.mark): place for place, row in enumerate(rows)}
    of_run = [piece for piece in pieces if piece.run is not None and bare_run(piece.run) == bare_run(run)]
    return tuple(sorted(of_run, key=lambda piece: order.get(_key(piece.run, piece.mark), len(order))))


def prints(held: PiecePhoto) -> tuple[tuple[str, tuple[tuple[str, object], ...]], ...]:
    """What a photo is looked up by, the surest first."""
    seen = held.photo.seen
    found = [("bytes", (("bytes", held.photo.sha256),))]
    if seen.get("pixels"):
        found.append(("pixels", (("pixels", seen["pixels"]),)))
    if seen.get("camera") and seen.get("captured"):
        found.append(("moment", (("moment", (seen["camera"], str(seen["captured"])[:19])),)))
    picture = _picture_print(seen)
    if picture is not None:
        chunks = [(at, picture >> at & (1 << CHUNK) - 1) for at in range(0, PRINT_BITS, CHUNK)]
        found.append(("alike", tuple(("chunk", chunk) for chunk in chunks)))
    return tuple(found)


def _picture_print(seen: Mapping[str, object]) -> int | None:
    value = seen.get("dhash")
    return int(value, 16) if isinstance(value, str) and value else value if isinstance(value, int) else None
