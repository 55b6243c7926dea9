"""What may come in: kinds by their first bytes, sizes, numbers of parts, the fields of a note. Decides, never decodes.

A declared media type or a file name decides nothing: the first bytes do. What could be sound or a picture is
let in; whether it can be heard or seen is found out later, and a note that cannot be heard is still kept.
The limits are common practice, no published source: they hold an hour of phone sound and a 48-megapixel photo.
"""

from __future__ import annotations

import hashlib
import json
import re
import uuid
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path
from typing import BinaryIO

from logbook import facts
from logbook.mistake import Mistake

HEAD = 64  # bytes that tell a kind
MB = 1_000_000
SOUND_BYTES = 100 * MB
PICTURE_BYTES = 40 * MB
DOCUMENT_BYTES = 40 * MB
NOTE_BYTES = 400 * MB
SOUNDS = 20  # parts of one recording
PICTURES = 30
TEXT_SIGNS = 20_000
NAME_SIGNS = 80  # of a mark, a run, a person's id
LANGUAGES = ("en", "es")

# The HTTP status that means a mistake; WEB reads it, so that the page and the store cannot disagree.
STATUS: Mapping[str, int] = {
    "intake.id": 422, "intake.time": 422, "intake.nothing": 422, "intake.both": 422, "intake.text-too-long": 422,
    "intake.too-many-parts": 422, "intake.empty": 422, "intake.photo-facts": 422, "intake.photos-to-come": 422,
    "intake.language": 422, "intake.field-too-long": 422, "intake.pressed-kind": 422, "joining.no-such-fact": 422,
    "joining.bad-value": 422, "intake.digest": 422, "intake.digest-differs": 409, "intake.too-big": 413,
    "intake.not-sound": 415, "intake.not-picture": 415, "intake.not-document": 415, "intake.broken-off": 400,
    "store.note-differs": 409, "store.act-differs": 409, "store.no-note": 404, "store.no-piece": 404,
    "store.no-entry": 404, "store.not-announced": 409, "store.not-unheard": 409, "store.busy-note": 409,
    "store.taken-back": 409, "store.no-day": 422, "store.disk-full": 507, "store.read-only": 507, "store.locked": 503,
    "store.newer-schema": 503, "store.no-folder": 503, "store.damaged": 503, "store.no-document": 422, "store.no-sound-kept": 409,
}  # fmt: skip

_OGG, _WEBM, _FLAC = b"OggS", b"\x1a\x45\xdf\xa3", b"fLaC"
_HEIF_BRANDS = {b"heic", b"heix", b"heim", b"heis", b"hevc", b"hevx", b"mif1", b"msf1"}
_SOUND_BRANDS = {
    b"M4A ", b"M4B ", b"mp41", b"mp42", b"isom", b"iso2", b"iso3", b"iso4", b"iso5", b"iso6", b"iso8", b"iso9",
    b"qt  ", b"dash", b"mp71", b"avc1", b"MSNV", b"3gp4", b"3gp5", b"3gp6", b"3gp7", b"3g2a",
}  # fmt: skip
MEDIA = {
    "webm": "audio/webm", "ogg": "audio/ogg", "m4a": "audio/mp4", "wav": "audio/wav", "flac": "audio/flac",
    "mp3": "audio/mpeg", "aac": "audio/aac", "jpg": "image/jpeg", "png": "image/png", "webp": "image/webp",
    "heic": "image/heic", "pdf": "application/pdf",
}  # fmt: skip
SOUND_KINDS = ("webm", "ogg", "m4a", "wav", "flac", "mp3", "aac")
PICTURE_KINDS = ("jpg", "png", "webp", "heic")
DOCUMENT_KINDS = ("pdf", *PICTURE_KINDS)


def kind(head: bytes) -> str | None:
    """The kind of a file by its first bytes (`MEDIA` lists them), or None for anything else.

    Sources: EBML header RFC 8794; Ogg RFC 3533; ISO base media ISO/IEC 14496-12 (`ftyp`); RIFF/WAVE; FLAC
    RFC 9639; MP3 frame sync ISO/IEC 11172-3 and ID3v2; ADTS ISO/IEC 13818-7; JPEG T.81; PNG and WebP RFC 9649;
    HEIF ISO/IEC 23008-12; PDF ISO 32000-2.
    """
    if head.startswith(_WEBM):
        return "webm"
    if head.startswith(_OGG):
        return "ogg"
    if head.startswith(_FLAC):
        return "flac"
    if head[:4] in (b"RIFF", b"RF64") and head[8:12] == b"WAVE":
        return "wav"
    if head[:4] == b"RIFF" and head[8:12] == b"WEBP":
        return "webp"
    if head[4:8] == b"ftyp":
        return _of_brand(head)
    if head.startswith(b"\xff\xd8\xff"):
        return "jpg"
    if head.startswith(b"\x89PNG\r\n\x1a\n"):
        return "png"
    if head.startswith(b"%PDF-"):
        return "pdf"
    if head.startswith(b"ID3"):
        return "mp3"
    if len(head) > 2 and head[0] == 0xFF and head[1] & 0xF6 == 0xF0:
        return "aac"
    if len(head) > 2 and head[0] == 0xFF and head[1] & 0xE0 == 0xE0 and head[1] & 0x06 and head[1] & 0x18 != 0x08:
        return "mp3"
    return None


def _of_brand(head: bytes) -> str | None:
    brand = head[8:12]
    if brand in _HEIF_BRANDS:
        return "heic"
    return "m4a" if brand in _SOUND_BRANDS else None


def may_be(what: str, head: bytes, where: str = "") -> str | Mistake:
    """The kind of a part that claims to be a `sound`, `picture` or `document`, or why it is refused."""
    if not head:
        return Mistake("intake.empty", where, {"where": where})
    found = kind(head)
    if found in {"sound": SOUND_KINDS, "picture": PICTURE_KINDS, "document": DOCUMENT_KINDS}[what]:
        return found
    return Mistake(f"intake.not-{what}", where, {"where": where, "came": found or "?"})


LARGEST = {"sound": SOUND_BYTES, "picture": PICTURE_BYTES, "document": DOCUMENT_BYTES}


@dataclass(frozen=True)
class Part:
    """One file handed in: bytes, a path, or a binary stream that is read once. `name` is only told to people."""

    source: bytes | Path | BinaryIO
    name: str = ""


@dataclass(frozen=True)
class PhotoFacts:
    """What the phone knew of a photo: browsers take time and position out of the file."""

    taken_at: datetime | None = None
    latitude: float | None = None
    longitude: float | None = None
    accuracy_m: float | None = None
    of: tuple[int, ...] | None = None
    copy_of: str | None = None  # these bytes are a small copy; the digest of the original, which follows


@dataclass(frozen=True)
class Incoming:
    """A note as handed in. Sound parts in order, or a text; `photo_facts` in the order of `photos`."""

    id: str
    spoken_at: datetime
    spoken_by: str
    handed_in_by: str
    audio: tuple[Part, ...] = ()
    text: str | None = None
    photos: tuple[Part, ...] = ()
    photo_facts: tuple[PhotoFacts, ...] = ()
    photos_to_come: tuple[str, ...] = ()
    language: str | None = None
    sent_at: datetime | None = None
    answers: str | None = None
    mark: str | None = None
    kind: str | None = None
    run: str | None = None
    as_lead: bool = False


def from_form(
    fields: Mapping[str, str],
    handed_in_by: str,
    audio: tuple[Part, ...] = (),
    photos: tuple[Part, ...] = (),
    as_lead: bool = False,
) -> Incoming | Mistake:
    """The fields of `POST /notes`, as text, become an `Incoming`; the first field that does not fit is told."""
    spoken_at = moment(fields.get("spoken_at", ""), "spoken_at")
    if isinstance(spoken_at, Mistake):
        return spoken_at
    sent_at = moment(fields["sent_at"], "sent_at") if fields.get("sent_at") else None
    photo_facts = _photo_facts(fields.get("photo_facts") or "[]")
    to_come = _digests(fields.get("photos_to_come") or "[]")
    for read in (sent_at, photo_facts, to_come):
        if isinstance(read, Mistake):
            return read
    if {facts.copy_of for facts in photo_facts} - {None, *to_come}:  # a copy of what nobody announced
        return Mistake("intake.photo-facts", "photo_facts", {"came": shown(fields["photo_facts"])})
    incoming = Incoming(
        id=fields.get("id", ""),
        spoken_at=spoken_at,
        spoken_by=fields.get("spoken_by") or handed_in_by,
        handed_in_by=handed_in_by,
        audio=audio,
        text=fields.get("text") or None,
        photos=photos,
        photo_facts=photo_facts,
        photos_to_come=to_come,
        language=fields.get("language") or None,
        sent_at=sent_at,
        answers=fields.get("answers") or None,
        mark=fields.get("mark") or None,
        kind=fields.get("kind") or None,
        run=fields.get("run") or None,
        as_lead=as_lead,
    )
    return refuse(incoming) or incoming


def refuse(incoming: Incoming) -> Mistake | None:
    """Why a note cannot come in, judged by its fields and the number of its parts; None where it can."""
    if not is_id(incoming.id):
        return Mistake("intake.id", "id", {"came": shown(incoming.id)})
    if incoming.answers is not None and not is_id(incoming.answers):
        return Mistake("intake.id", "answers", {"came": shown(incoming.answers)})
    if incoming.spoken_at.tzinfo is None:
        return Mistake("intake.time", "spoken_at", {"field": "spoken_at", "came": incoming.spoken_at.isoformat()})
    if incoming.audio and incoming.text:
        return Mistake("intake.both", "audio")
    if not incoming.audio and not (incoming.text or "").strip():
        return Mistake("intake.nothing", "audio")
    if incoming.text and len(incoming.text) > TEXT_SIGNS:
        return Mistake("intake.text-too-long", "text", {"limit": TEXT_SIGNS, "came": len(incoming.text)})
    if len(incoming.audio) > SOUNDS or len(incoming.photos) + len(incoming.photos_to_come) > PICTURES:
        came = {"sounds": SOUNDS, "pictures": PICTURES, "came": len(incoming.audio) + len(incoming.photos)}
        return Mistake("intake.too-many-parts", "audio", came)
    if incoming.language is not None and incoming.language not in LANGUAGES:
        return Mistake("intake.language", "language", {"came": shown(incoming.language)})
    if incoming.kind is not None and incoming.kind not in facts.KINDS:
        return Mistake("intake.pressed-kind", "kind", {"came": shown(incoming.kind)})
    for name in ("mark", "run", "spoken_by", "handed_in_by"):
        if len(getattr(incoming, name) or "") > NAME_SIGNS:
            return Mistake("intake.field-too-long", name, {"field": name, "limit": NAME_SIGNS})
    return None


def is_id(text: str) -> bool:
    """A UUID in its usual print (RFC 9562): what a phone makes for a note or an act."""
    try:
        return str(uuid.UUID(text)) == text.lower()
    except (ValueError, AttributeError, TypeError):
        return False


_MOMENT = re.compile(r"\d{4}-\d\d-\d\d[Tt ]\d\d:\d\d(:\d\d([.,]\d{1,9})?)?([Zz]|[+-]\d\d:\d\d)")


def moment(text: str, name: str) -> datetime | Mistake:
    """An ISO 8601 time with its offset, as RFC 3339 writes it (seconds may be left out)."""
    try:
        read = datetime.fromisoformat(text.upper()) if _MOMENT.fullmatch(text) else None
    except (TypeError, ValueError):
        read = None
    if read is None or read.tzinfo is None or not 2000 <= read.year <= 2200:
        return Mistake("intake.time", name, {"field": name, "came": shown(text)})
    return read


_DIGEST = re.compile(r"[0-9a-f]{64}")


def is_digest(text: object) -> bool:
    return isinstance(text, str) and _DIGEST.fullmatch(text) is not None


def _digests(text: str) -> tuple[str, ...] | Mistake:
    try:
        read = json.loads(text)
    except ValueError:
        read = [word for word in re.split(r"[\s,]+", text) if word]
    if not isinstance(read, list) or len(read) > PICTURES or not all(is_digest(one) for one in read):
        return Mistake("intake.photos-to-come", "photos_to_come", {"came": shown(text)})
    return tuple(dict.fromkeys(read))


def _photo_facts(text: str) -> tuple[PhotoFacts, ...] | Mistake:
    wrong = Mistake("intake.photo-facts", "photo_facts", {"came": shown(text)})
    try:
        read = json.loads(text)
    except (ValueError, RecursionError):
        return wrong
    if not isinstance(read, list) or len(read) > PICTURES:
        return wrong
    each = tuple(photo_facts(one) for one in read)
    return wrong if None in each else each


def facts_of_one(text: str | None) -> PhotoFacts | None | Mistake:
    """What the phone says of a photo that comes alone: a JSON object, or nothing."""
    if not text:
        return None
    read = _photo_facts(f"[{text}]")
    return read if isinstance(read, Mistake) else read[0]


def photo_facts(doc: object) -> PhotoFacts | None:
    """What the phone says of one photo; None where a member has the wrong shape."""
    if doc is None:
        return PhotoFacts()
    if not isinstance(doc, dict):
        return None
    taken_at = moment(doc["taken_at"], "taken_at") if doc.get("taken_at") else None
    numbers = [doc.get("latitude"), doc.get("longitude"), doc.get("accuracy_m")]
    of, copy_of = doc.get("of"), doc.get("copy_of")
    if copy_of is not None and not is_digest(copy_of):
        return None
    if isinstance(taken_at, Mistake) or not all(_number(n, most) for n, most in zip(numbers, (90, 180, 1e7))):
        return None
    if (numbers[0] is None) != (numbers[1] is None):
        return None
    if of is not None and not (isinstance(of, list) and all(type(p) is int and 0 <= p < 1000 for p in of)):
        return None
    return PhotoFacts(taken_at, *numbers, of=None if of is None else tuple(of), copy_of=copy_of)


def _number(value: object, most: float) -> bool:
    return value is None or (type(value) in (int, float) and -most <= value <= most)


def text_digest(text: str) -> str:
    """SHA-256 of the text in UTF-8, as typed."""
    return hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest()


def shown(text: object) -> str:
    """A stranger's text as an error may print it: short, on one line, without control characters."""
    plain = "".join(sign if sign.isprintable() else " " for sign in str(text))
    return plain if len(plain) <= 60 else plain[:57] + "..."


def digests(audio: tuple[str, ...], photos: tuple[str, ...], text: str | None) -> dict:
    """The digests of a receipt, and what makes two notes with one id the same note."""
    return {"audio": list(audio), "photos": list(photos), "text": text}


@dataclass(frozen=True)
class Receipt:
    """What is answered when every byte is on the disk. `repeated`: it was there already, nothing changed."""

    id: str
    received_at: datetime
    digests: Mapping[str, object] = field(default_factory=dict)
    repeated: bool = False

    @property
    def document(self) -> dict:
        return {"id": self.id, "received_at": self.received_at.isoformat(), "digests": dict(self.digests)}
