"""One piece while its notes add up, and the record that the rules judge."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import field, replace
from datetime import date, datetime, timedelta
from types import MappingProxyType

from logbook import facts
from logbook.job import Job
from logbook.joining import adding
from logbook.joining.adding import Held, Saying
from logbook.note import Note
from logbook.piece import Assumed, Decision, Found, Piece, PiecePhoto, looked_fact
from logbook.record import record
from logbook.said import Entry, Fact, Muffled, OpenItem, Unread

Key = tuple[str, int]  # an entry: (note id, position)
ONE_FAMILY = ({"tee", "branch", "wye"},)  # kinds that people call by each other's names
SIZES = ("inlet_size", "outlet_size", "branch_size")


@record
class Joined:
    """What the notes of one piece say of it so far. `founder` is the entry it began with.

    `by_name` keeps the facts in the order in which their names were first stated; two for one name are a conflict.
    `reopened` is the newest rework or repair: what was said before it gives way to what is said after.
    """

    founder: Key
    run: str | None
    made_at: datetime | None
    mark: str | None = None
    entries: tuple[Key, ...] = ()
    notes: tuple[str, ...] = ()
    builders: tuple[str, ...] = ()
    by_name: Mapping[str, tuple[Held, ...]] = field(default_factory=lambda: MappingProxyType({}))
    open_items: tuple[OpenItem, ...] = ()
    muffled: tuple[Muffled, ...] = ()
    unread: tuple[Unread, ...] = ()
    shift_words: tuple[Assumed, ...] = ()
    photos: tuple[PiecePhoto, ...] = ()
    loose_photos: tuple[PiecePhoto, ...] = ()
    coming: tuple[tuple[str, datetime], ...] = ()  # announced digest, when its note was received
    looked: tuple[Mapping[str, object], ...] = ()
    found: Mapping[str, tuple[datetime, Found]] = field(default_factory=lambda: MappingProxyType({}))  # with its time
    reopened: datetime | None = None
    scrapped: bool = False

    def value(self, name: str):
        held = self.by_name.get(name)
        return held[0].fact.value if held else None


def add(piece: Joined, key: Key, entry: Entry, saying: Saying, run: str | None, shift: Sequence[Assumed]) -> Joined:
    """The piece with one entry more. `run` is the run the entry means; shift words already there stay."""
    by_name = dict(piece.by_name)
    said: dict[str, list[Fact]] = {}
    for fact in entry.facts:
        said.setdefault(fact.name, []).append(adding.noted(fact, key[0]))
    if "kind" in said and said["kind"][0].value == "repair" and "kind" in by_name:
        del said["kind"]  # a mend on a piece does not make it another kind
    for name, new in said.items():
        by_name[name] = adding.meet(by_name.get(name, ()), new, saying, piece.reopened)
    known = {word.name for word in piece.shift_words}
    return replace(
        piece,
        run=run if run is not None else piece.run,
        mark=by_name["mark"][-1].fact.value if "mark" in said else piece.mark,
        entries=(*piece.entries, key),
        notes=piece.notes if key[0] in piece.notes else (*piece.notes, key[0]),
        builders=piece.builders if saying.by in piece.builders else (*piece.builders, saying.by),
        by_name=MappingProxyType(by_name),
        open_items=adding.open_items(piece.open_items, entry, key[0]),
        muffled=adding.muffled(piece.muffled, entry, key[0]),
        unread=adding.unread(piece.unread, entry, key[0]),
        shift_words=(*piece.shift_words, *(word for word in shift if word.name not in known)),
    )


def with_photos(piece: Joined, note: Note, shown: Sequence, position: int) -> Joined:
    """The piece with the photos of one of its notes: its own, and those that nobody tied to an entry."""
    own, loose = list(piece.photos), list(piece.loose_photos)
    for number, photo in enumerate(shown, 1):
        minutes = None if photo.taken_at is None else abs((photo.taken_at - note.spoken_at) / timedelta(minutes=1))
        one = PiecePhoto(note.id, photo, minutes, number)
        if photo.of is None and one not in loose:
            loose.append(one)
        elif photo.of is not None and position in photo.of and one not in own:
            own.append(one)
    coming = dict(piece.coming) | {digest: note.received_at for digest in note.photos_to_come}
    return replace(piece, photos=tuple(own), loose_photos=tuple(loose), coming=tuple(coming.items()))


def decided(piece: Joined, decision: Decision) -> Joined:
    """The piece after a decision: what it changes for later notes, and what the lead saw or set right."""
    if decision.decision in ("rework", "repair"):
        piece = replace(piece, reopened=decision.at)
    if decision.decision == "scrap":
        piece = replace(piece, scrapped=True)
    if decision.corrected is not None:
        name, value = decision.corrected
        old = piece.by_name.get(name, ())
        new = Fact(name, value, None, None, None, via="lead")
        saying = Saying(None, old[0].by if old else decision.by, decision.at, replaces=True)
        by_name = dict(piece.by_name) | {name: adding.meet(old, [new], saying, None)}
        piece = replace(piece, by_name=MappingProxyType(by_name), unread=adding.told_again(piece.unread, (name,)))
        if name in ("mark", "run"):
            piece = replace(piece, **{name: value})
    if decision.looked is not None:
        seen = {"how": decision.looked.how, "by": decision.by, "at": decision.at.isoformat(), "decision": decision.id}
        rows = tuple(looked_fact(name, value) | seen for name, value in decision.looked.facts)
        own = [Found(name, value, None, decision.rule) for name, value in decision.looked.facts]
        piece = replace(piece, looked=piece.looked + rows, found=_found(piece, own, decision.at))
    return piece


def looked_at(piece: Joined, entry: Entry, note: Note) -> Joined:
    """The piece with what a lead said of it: beside the facts, never among them."""
    seen = {"how": None, "by": note.spoken_by, "at": note.counted_at.isoformat(), "decision": None, "note": note.id}
    own = [fact for fact in entry.facts if facts.BY_NAME[fact.name].family != "where"]
    plain = [Found(fact.name, fact.value, fact.heard) for fact in own if not fact.hedged and not fact.conflict]
    rows = tuple(looked_fact(fact.name, fact.value) | seen for fact in own)
    return replace(piece, looked=piece.looked + rows, found=_found(piece, plain, note.counted_at))


def _found(piece: Joined, own: Sequence[Found], at: datetime) -> Mapping[str, tuple[datetime, Found]]:
    return MappingProxyType(dict(piece.found) | {one.name: (at, one) for one in own})


def _found_now(piece: Joined) -> tuple[Found, ...]:
    """What the lead found counts until the piece was made anew: a rework or repair after his look, and a word after that."""
    since = piece.reopened

    def anew(name: str, looked_at: datetime) -> bool:
        return since is not None and looked_at <= since and any(held.at > since for held in piece.by_name.get(name, ()))

    return tuple(replace(one, anew=anew(name, at)) for name, (at, one) in piece.found.items())


def contradicts(piece: Joined, entry: Entry) -> bool:
    """Whether kind or sizes of the entry speak of another fitting than this one.

    What was said before a rework or repair does not count: the piece may have been made anew.
    """

    def held(name):
        return [h for h in piece.by_name.get(name, ()) if piece.reopened is None or h.at > piece.reopened]

    kind = entry.fact("kind")
    if kind is not None and kind.value != "repair":
        kinds = [h.fact.value for h in held("kind") if h.fact.value != "repair"]
        if kinds and not any(one_family(kind.value, value) for value in kinds):
            return True
    for name in SIZES:
        said, before = entry.fact(name), held(name)
        if said is not None and before and not any(facts.same_size(said.value, h.fact.value) for h in before):
            return True
    return False


def one_family(one: str, other: str) -> bool:
    return one == other or any({one, other} <= family for family in ONE_FAMILY)


def piece_of(piece: Joined, piece_id: str | None, job: Job, now: datetime, unclear: tuple[str, ...]) -> Piece:
    """The record that the rules judge."""
    said = tuple(held.fact for all_held in piece.by_name.values() for held in all_held)
    late = timedelta(hours=job.photos.come_within_hours)
    return Piece(
        id=piece_id,
        job=job.id,
        run=piece.run,
        mark=piece.mark,
        notes=piece.notes,
        facts=said,
        assumed=assumed(said, piece.shift_words, piece.run, job),
        open_items=piece.open_items,
        muffled=piece.muffled,
        unread=piece.unread,
        photos=piece.photos or piece.loose_photos,
        photos_without_piece=len(piece.loose_photos),
        photos_to_come=len(piece.coming),
        coming=tuple(digest for digest, _ in piece.coming),
        photos_overdue=any(now - since > late for _, since in piece.coming),
        looked=piece.looked,
        found=_found_now(piece),
        mark_unclear=unclear,
        made_at=piece.made_at,
        scrapped=piece.scrapped,
        builders=piece.builders,
    )


def assumed(said: Sequence[Fact], shift_words: Sequence[Assumed], run: str | None, job: Job) -> tuple[Assumed, ...]:
    """What stands in for speech: the words of the shift, then the job's; what was said itself needs none."""
    spoken = {fact.name for fact in said}
    of_shift = tuple(word for word in shift_words if word.name not in spoken and word.name not in of_closure(said, word))
    closure = next((fact.value for fact in said if fact.name == "closure"), None)
    closure = closure or next((word.value for word in of_shift if word.name == "closure"), None)
    taken = spoken | {word.name for word in of_shift}
    of_job = tuple(Assumed(name, value, "job") for name, value in job.stands(closure, run) if name not in taken)
    return of_shift + of_job


def of_closure(said: Sequence[Fact], word: Assumed) -> tuple[str, ...]:
    """The mark and width a shift note states belong to its own closure, not to another that was said of the piece."""
    closure = next((fact.value for fact in said if fact.name == "closure"), None)
    mark = {"181A-P": "tape_pressure", "181A-H": "tape_heat", "181A-M": "mastic"}
    return ("closure_mark",) if word.name == "closure_mark" and closure not in (None, mark[word.value]) else ()


def made_on(piece: Joined, job: Job) -> date | None:
    return None if piece.made_at is None else job.day_of(piece.made_at)
