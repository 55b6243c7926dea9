"""Pieces of a run in order, and what lies around one piece: its schedule row, its neighbours, photos seen elsewhere.

`site(job, pieces)` lays everything out once, in one pass; `site.around(piece)` then answers for one piece without
looking at the others again, so that judging grows in line with the notes. Pieces come in the order they were made:
a finding between two pieces stands on the later one.
"""

from __future__ import annotations

from collections.abc import Container, Iterable, Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from functools import lru_cache

from logbook import job as jobs
from logbook.facts import bare_mark
from logbook.job import Job
from logbook.piece import Piece, PiecePhoto
from logbook.record import record
from logbook.schedule import BESIDE, Row, bare_run

THROUGH = ("straight", "elbow", "offset", "tee", "branch", "equipment_connection", "damper_sleeve")  # one size in and out
KEEPS_SIZE = ("elbow", "straight")
LAID_BY_END = ("transition", "offset", "straight", "elbow")  # kinds of which the end that air leaves by is asked
PRINT_BITS, CHUNK = 64, 16  # a picture print in four chunks: two prints that differ in at most 3 bits share one
MOST_UNLIKE = 12  # bits: prints of two scenes differ in about half of their 64 bits


@record
class Neighbour:
    """A piece of the same run that this one meets. `side` before or after it, None where nobody said which."""

    mark: str
    side: str | None
    inlet: tuple[Fraction, Fraction] | None
    outlet: tuple[Fraction, Fraction] | None
    leaves_by: str | None
    branch: tuple[Fraction, Fraction] | None = None  # what is tied in to a tee may be tied to its leg


@record
class Elsewhere:
    """A photo that stands in another fitting's note as well: `how` bytes, pixels, moment or alike."""

    number: int | None
    how: str
    mark: str | None
    sha256: str
    other: str  # digest of the other photo


@record
class Around:
    """What a rule may look at besides the piece. All of it is empty for a piece that stands alone."""

    job: Job = jobs.DEFAULT
    row: Row | None = None  # of the schedule in force when the piece was made
    revision: str | None = None
    scheduled: bool = False  # a schedule was in force
    nearest: tuple[str, ...] = ()  # the two marks spelled most alike, where the mark is not on the schedule
    before: tuple[Neighbour, ...] = ()  # neighbours that were logged before this piece
    meant: str | None = None  # the only mark of the schedule that a mark without a row may be a mishearing of
    on_run: str | None = None  # the only run of the schedule that has this mark, where another run was said
    next_mark: str | None = None  # by the schedule's order
    joined_by: tuple[str, ...] = ()  # marks of the pieces that were said closed to this one
    run_done: bool = False
    air_end_asked: bool = False  # nobody said which end air leaves by, and another piece of the run asks for it
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

    def around(self, piece: Piece, job: Job | None = None) -> Around:
        """`job`: where another than the site's judges this piece."""
        job = self.job if job is None else job
        day = None if piece.made_at is None else job.day_of(piece.made_at)
        plan = job.revision(day)
        row, links, nearest, meant, on_run = (None, (None, None), (), None, None) if plan is None else plan.place(piece.mark, piece.run)
        of_run = job.run(piece.run)
        return Around(
            job=job,
            row=row,
            revision=None if plan is None else plan.name,
            scheduled=plan is not None,
            nearest=nearest,
            meant=meant,
            on_run=on_run,
            before=self._neighbours(piece, links),
            next_mark=None if links[1] is None else links[1].mark,
            joined_by=self.closed_to.get(_key(piece.run, piece.mark), ()),
            run_done=of_run is not None and of_run.done,
            air_end_asked=_air_end_unsaid(piece) and self.asks_air_end.get(bare_run(piece.run or ""), piece.id) != piece.id,
            elsewhere=tuple(self._elsewhere(piece, job)),
        )

    def _neighbours(self, piece: Piece, links: tuple[Row | None, Row | None]) -> tuple[Neighbour, ...]:
        mine = self.places.get(piece.id, len(self.places))
        found: dict[str | None, Neighbour] = {}
        named = [(row.mark, row.run, side) for row, side in zip(links, ("before", "after")) if row is not None]
        named += [(mark, piece.run, None) for mark in (*(piece.value("joined_to") or ()), *self.closed_to.get(_key(piece.run, piece.mark), ()))]  # the earlier may have named the later
        for mark, run, side in named:
            other = self.by_mark.get(_key(run, mark))
            if other is None or other.id == piece.id or self.places[other.id] > mine or other.id in found:
                continue
            if other.value("kind") in BESIDE:
                continue
            inlet, outlet = ends(other)
            found[other.id] = Neighbour(other.mark or mark, side, inlet, outlet, leaves_by(other), other.value("branch_size"))
        return tuple(found.values())

    def _elsewhere(self, piece: Piece, job: Job) -> Iterable[Elsewhere]:
        mine = self.places.get(piece.id, len(self.places))
        for held in piece.photos if self.photos else ():
            for how, keys in prints(held):
                others = [
                    (mark, digest)
                    for key in keys
                    for place, mark, note, digest in self.photos.get(key, ())
                    if place < mine and note not in piece.notes and (how != "alike" or self._alike(held, key, digest, job))
                ]
                if others:
                    mark, digest = others[0]
                    yield Elsewhere(held.number, how, mark, held.photo.sha256, digest)
                    break

    def _alike(self, held: PiecePhoto, key: tuple[str, object], digest: str, job: Job) -> bool:
        mine, other = _picture_print(held.photo.seen), self.photos[("print", digest)][0][3]
        return (mine ^ int(other, 16)).bit_count() <= min(job.limit("photo_likeness"), MOST_UNLIKE)


def site(job: Job, pieces: Iterable[Piece], shown: Container[str | None] | None = None) -> Site:
    """Lays the pieces of a job out, in the order they were made.

    `shown`: ids of the pieces that may share a photo with another; None: any of them may.
    """
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
        if _air_end_unsaid(piece) and piece.value("kind") in LAID_BY_END:
            asks.setdefault(bare_run(piece.run or ""), piece.id)
        for held in piece.photos if shown is None or piece.id in shown else ():
            seen = (place, piece.mark, held.note, held.photo.sha256)
            for _, keys in prints(held):
                for key in keys:
                    photos.setdefault(key, []).append(seen)
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


def _air_end_unsaid(piece: Piece) -> bool:
    return piece.fact("air_leaves_by") is None and piece.stands("air_leaves_by") is None


def shown(piece: Piece | None) -> tuple | None:
    """All that `around` reads of a piece for the others of its run, but its photos: while it stays the same, nothing around them changes."""
    if piece is None:
        return None
    own = (piece.id, piece.run, piece.mark, piece.made_at, piece.value("kind"), piece.value("branch_size"), piece.value("joined_to"))
    return (*own, ends(piece), leaves_by(piece))


def _key(run: str | None, mark: str | None) -> tuple[str, str]:
    return bare_run(run or ""), bare_mark(mark or "")


def ends(piece: Piece) -> tuple[tuple | None, tuple | None]:
    """The two sizes that a piece shows to its neighbours, as spoken: where it comes from, where it goes on."""
    inlet, outlet = piece.value("inlet_size"), piece.value("outlet_size")
    if outlet is None and piece.value("kind") in THROUGH:
        outlet = inlet
    return inlet, outlet


def meeting(one: tuple, other: tuple) -> tuple[tuple, ...]:
    """The sizes of two pieces said joined that may meet there, nobody having said with which ends; only both said. Each is its inlet, outlet and branch."""
    (inlet, outlet, branch), (near_inlet, near_outlet, near_branch) = one, other
    pairs = ((inlet, near_outlet), (outlet, near_inlet), (inlet, near_branch), (outlet, near_branch), (branch, near_inlet), (branch, near_outlet))
    return tuple((mine, theirs) for mine, theirs in pairs if mine is not None and theirs is not None)


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
    return prints_of(held.photo.sha256, held.photo.seen)


def prints_of(sha256: str, seen: Mapping[str, object]) -> tuple[tuple[str, tuple[tuple[str, object], ...]], ...]:
    """The same of a picture by its digest and what was measured of it."""
    moment = (seen["camera"], str(seen["captured"])[:19]) if seen.get("camera") and seen.get("captured") else None
    return _prints(sha256, seen.get("pixels") or None, moment, _picture_print(seen))


@lru_cache(maxsize=65536)  # the same photos are laid out again with every note of their run
def _prints(sha256: str, pixels: str | None, moment: tuple[str, str] | None, picture: int | None):
    found = [("bytes", (("bytes", sha256),))]
    if pixels is not None:
        found.append(("pixels", (("pixels", pixels),)))
    if moment is not None:
        found.append(("moment", (("moment", moment),)))
    if picture is not None:
        chunks = [(at, picture >> at & (1 << CHUNK) - 1) for at in range(0, PRINT_BITS, CHUNK)]
        found.append(("alike", tuple(("chunk", chunk) for chunk in chunks)))
    return tuple(found)


def share_a_photo(one: Piece, other: Piece | None) -> bool:
    """Whether two pieces show the same photo, or two that may be called alike under any limit of a job."""
    if other is None:
        return False
    mine, theirs = ({key: held for held in piece.photos for _, keys in prints(held) for key in keys} for piece in (one, other))
    both = mine.keys() & theirs.keys()
    if any(what != "chunk" for what, _ in both):
        return True
    pictures = [{_picture_print(held.photo.seen) for held in piece.photos} - {None} for piece in (one, other)]
    return bool(both) and any((a ^ b).bit_count() <= MOST_UNLIKE for a in pictures[0] for b in pictures[1])


def _picture_print(seen: Mapping[str, object]) -> int | None:
    value = seen.get("dhash")
    return int(value, 16) if isinstance(value, str) and value else value if isinstance(value, int) else None
