"""The frozen record of one note, and the states it goes through.

A note's bytes and words are never changed: a correction, a new hearing, a decision are other records. Times
are aware datetimes in the job's zone.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime

from logbook import clock
from logbook.mistake import Mistake
from logbook.said import Reading
from logbook.transcript import Transcript

# state -> the acts that lead on from it. Flagged, corrected, settled, signed and taken back are not states:
# they follow from acts.
STATES: Mapping[str, Mapping[str, str]] = {
    "waiting": {"lease": "hearing", "type": "answered"},
    "hearing": {"answer": "answered", "fail": "unheard", "lapse": "waiting"},
    "answered": {"hear_again": "waiting"},
    "unheard": {"hear_again": "waiting", "type": "answered"},
}


def step(state: str, act: str) -> str | None:
    """The next state, or None where the act does not go on from here."""
    return STATES[state].get(act)


@dataclass(frozen=True)
class Pressed:
    """What the hand said: tapped before or with the note."""

    mark: str | None = None
    kind: str | None = None
    run: str | None = None


@dataclass(frozen=True)
class Place:
    latitude: float
    longitude: float
    accuracy_m: float | None = None


@dataclass(frozen=True)
class Photo:
    """A photo of a note. `of` are positions of the note's entries, `of_from` only, tag or pressed.

    `seen` holds what decoding measured (width, height, sharpness, light, likeness, pixels digest, camera), or
    is empty while nobody has decoded it; `readable` is None until then.
    """

    sha256: str
    taken_at: datetime | None = None
    taken_from: str | None = None  # phone exif
    place: Place | None = None
    place_from: str | None = None
    tags: tuple[str, ...] = ()
    of: tuple[int, ...] | None = None
    of_from: str | None = None
    readable: bool | None = None
    copy_of: str | None = None  # a small copy that a phone made; the digest of the original, which follows
    seen: Mapping[str, object] = field(default_factory=dict)


@dataclass(frozen=True)
class Correction:
    """A fact set right by a press: kept beside what was heard, never over it. `by` is the person."""

    id: str
    position: int
    name: str
    value: object
    by: str
    at: datetime


@dataclass(frozen=True)
class Note:
    id: str
    job: str
    spoken_by: str
    handed_in_by: str
    spoken_at: datetime
    sent_at: datetime | None
    received_at: datetime
    state: str
    problem: Mistake | None = None
    answers: str | None = None
    pressed: Pressed = Pressed()
    language: str | None = None  # asked for when handed in, else None
    transcript: Transcript | None = None
    reading: Reading | None = None
    photos: tuple[Photo, ...] = ()
    photos_to_come: tuple[str, ...] = ()
    copies: tuple[tuple[str, str], ...] = ()  # (small copy, original): the original came and is the photo
    audio_digests: tuple[str, ...] = ()
    text_digest: str | None = None
    corrections: tuple[Correction, ...] = ()
    confirmed: tuple[str, ...] = ()  # ids of "that is right" acts
    heard_right: bool = False  # one of them, by who said it, is about the words that stand now
    withdrawn_at: datetime | None = None  # taken back
    earlier: tuple[Mapping[str, object], ...] = ()
    as_lead: bool = False  # a lead's inspection note: its facts never join, they are the piece's `looked`
    answered_at: datetime | None = None

    @property
    def counted_at(self) -> datetime:
        """When it counts as spoken: as the phone's clock said, where that can be believed."""
        return clock.counted_at(self.spoken_at, self.sent_at, self.received_at)
