"""Photos as evidence: that there is one, of this piece, taken then, not seen before, and good enough to read."""

from __future__ import annotations

from fractions import Fraction
from urllib.parse import unquote

from logbook.facts import bare_mark
from logbook.findings import Outcome, Rule, Source, Word
from logbook.piece import Piece, PiecePhoto
from logbook.rules.using import Use
from logbook.runs import Around

OWN = Source("", "c")
TAG = "duct-tag:1:"
SPELLED = 10  # counts up to here are words in a sentence


def _not_due(piece: Piece, around: Around) -> bool:
    return piece.checked_without_photos or piece.value("kind") == "hanger"


def _own(piece: Piece) -> tuple[PiecePhoto, ...]:
    return tuple(held for held in piece.photos if held.photo.of is not None)


def _count(number: int) -> Word | int:
    return Word(f"count-{number}") if number <= SPELLED else number


def photo_there(piece: Piece, around: Around) -> Outcome | None:
    if _not_due(piece, around) or not around.job.photos.wanted:
        return None
    use = Use(piece, around)
    own, limit = _own(piece), use.limit("photos")
    if len(own) >= limit:
        evidence = tuple(held.photo.sha256 for held in own)
        told = {"count": _count(len(own))}
        text = "one" if len(own) == 1 else None
        reckoned = {"photos": len(own), "limit": limit}
        return use.meets("enough", limit=limit, reckoned=reckoned, evidence=evidence, text=text, tells=told)
    loose = tuple(held for held in piece.photos if held.photo.of is None)
    waiting = 0 if piece.photos_overdue else piece.photos_to_come
    reckoned = {"photos": len(own), "limit": limit, "without_piece": piece.photos_without_piece, "to_come": waiting}
    evidence = tuple(held.photo.sha256 for held in loose) + (piece.coming if waiting else ())
    more = {"limit": limit, "reckoned": reckoned, "evidence": evidence}
    if piece.photos_without_piece:
        numbers = [str(held.number) for held in loose if held.number is not None]
        told = {"number": numbers[0] if numbers else "?", "coming": _count(waiting)}
        text = None if not waiting else "which-piece-one-to-come" if waiting == 1 else "which-piece-and-to-come"
        return use.unclear("which-piece", "photo", text=text, tells=told, **more)
    if waiting:
        text = "one-to-come" if waiting == 1 else None
        return use.unclear("to-come", "photo", text=text, tells={"coming": _count(waiting)}, **more)
    return use.unsaid("none", "photo", text="overdue" if piece.photos_overdue else None, **more)


PHOTO_THERE = Rule(
    id="photo-there",
    concerns=(),
    weight="must",
    silent="flag",
    may_stand=(),
    limits=("photos",),
    source=OWN,
    judge=photo_there,
)


def photo_of_other(piece: Piece, around: Around) -> Outcome | None:
    if _not_due(piece, around):
        return None
    use = Use(piece, around)
    read = [(held, _mark_of(tag, piece.job)) for held in _own(piece) for tag in held.photo.tags]
    read = [(held, mark) for held, mark in read if mark is not None]
    if not read or use.said("mark") is None:
        return None
    mine = bare_mark(piece.value("mark"))
    ours = [(held, mark) for held, mark in read if bare_mark(mark) == mine]
    held, mark = (ours or read)[0]
    evidence = tuple(dict.fromkeys(one.photo.sha256 for one, _ in (ours or read)))
    told = {"number": str(held.number or ""), "tag": mark, "mark": piece.value("mark")}
    if ours:
        return use.meets("tag-is-the-mark", evidence=evidence, tells=told)
    return use.departs("tag-of-another", evidence=evidence, tells=told)


def _mark_of(tag: str, job: str) -> str | None:
    """The mark on a tag of this job, or None: a tag of another job is no tag here."""
    head = f"{TAG}{job}:"
    return unquote(tag.removeprefix(head)) if tag.startswith(head) else None


PHOTO_OF_OTHER = Rule(
    id="photo-of-other",
    concerns=(),
    weight="must",
    silent="not due",
    may_stand=(),
    limits=(),
    source=OWN,
    judge=photo_of_other,
)


def photo_reused(piece: Piece, around: Around) -> Outcome | None:
    own = _own(piece)
    if _not_due(piece, around) or not own:
        return None
    use = Use(piece, around)
    sure = [found for found in around.elsewhere if found.how != "alike"]
    found = (sure or list(around.elsewhere) or [None])[0]
    if found is None:
        return use.meets("first-seen", evidence=tuple(held.photo.sha256 for held in own))
    told = {"number": str(found.number or ""), "mark": found.mark or "?"}
    evidence = (found.sha256, found.other)
    if sure:
        return use.departs(f"same-{found.how}", evidence=evidence, tells=told)
    return use.unclear("alike", "photo", evidence=evidence, tells=told)


PHOTO_REUSED = Rule(
    id="photo-reused",
    concerns=(),
    weight="must",
    silent="not due",
    may_stand=(),
    limits=("photo_likeness",),
    source=OWN,
    judge=photo_reused,
)


def photo_time(piece: Piece, around: Around) -> Outcome | None:
    if _not_due(piece, around):
        return None
    use = Use(piece, around)
    timed = [held for held in _own(piece) if held.minutes_from_note is not None]
    if not timed:
        return None
    minutes = max(abs(Fraction(str(round(held.minutes_from_note, 3)))) for held in timed)
    limit = use.limit("photo_minutes")
    more = {"limit": limit, "reckoned": {"minutes": minutes, "limit_min": limit}, "tells": {"whole": Fraction(-(-minutes // 1))}}
    evidence = tuple(held.photo.sha256 for held in timed)
    answer = use.meets if minutes <= limit else use.departs
    return answer("near" if minutes <= limit else "far-off", evidence=evidence, **more)


PHOTO_TIME = Rule(
    id="photo-time",
    concerns=(),
    weight="should",
    silent="not due",
    may_stand=(),
    limits=("photo_minutes",),
    source=OWN,
    judge=photo_time,
)


def photo_sharp(piece: Piece, around: Around) -> Outcome | None:
    if _not_due(piece, around):
        return None
    use = Use(piece, around)
    seen = [held for held in _own(piece) if held.photo.readable is False or "sharpness" in held.photo.seen]
    if not seen:
        return None
    least, dark = use.limit("photo_sharpness"), use.limit("photo_light")
    evidence = tuple(held.photo.sha256 for held in seen)
    readable = [held for held in seen if held.photo.readable is not False and "sharpness" in held.photo.seen]
    if not readable:
        return use.departs("unreadable", evidence=evidence)
    best = max(readable, key=lambda held: (_good(held, least, dark), held.photo.seen["sharpness"]))
    sharpness, light = _measured(best, "sharpness"), _measured(best, "light")
    reckoned = {"sharpness": sharpness, "light": light, "least_sharpness": least, "least_light": dark}
    more = {"limit": [least, dark], "reckoned": reckoned, "evidence": evidence}
    if _good(best, least, dark):
        return use.meets("readable", **more)
    return use.departs("dark" if light < dark else "blurred", **more)


def _measured(held: PiecePhoto, name: str) -> Fraction:
    return Fraction(str(round(float(held.photo.seen.get(name) or 0), 3)))


def _good(held: PiecePhoto, least: Fraction, dark: Fraction) -> bool:
    return _measured(held, "sharpness") >= least and _measured(held, "light") >= dark


PHOTO_SHARP = Rule(
    id="photo-sharp",
    concerns=(),
    weight="should",
    silent="not due",
    may_stand=(),
    limits=("photo_sharpness", "photo_light"),
    source=OWN,
    judge=photo_sharp,
)
