"""A photo, or what is told of one, without its position: the picture's own bytes, without what carries camera data.

Nothing is decoded or compressed again. What a segment told is gone with it, except how the picture lies: a small
EXIF of our own keeps the orientation. Kinds whose metadata cannot be cut out this way answer None.
JPEG: ITU-T T.81 annex B and the EXIF segment of CIPA DC-008; PNG: the chunks of the W3C
recommendation; WebP: the chunks of RFC 9649.
"""

from __future__ import annotations

import struct
import zlib
from collections.abc import Mapping

_EXIF = b"Exif\0\0"
_KEPT_CHUNKS = (b"IHDR", b"PLTE", b"IDAT", b"IEND", b"tRNS", b"cHRM", b"gAMA", b"iCCP", b"sBIT", b"sRGB", b"bKGD", b"pHYs")
_KEPT_WEBP = (b"VP8X", b"VP8 ", b"VP8L", b"ALPH", b"ANIM", b"ANMF", b"ICCP")


def stripped(content: bytes) -> bytes | None:
    """The same picture without camera data, or None where it has to stay behind."""
    if content.startswith(b"\xff\xd8"):
        return _jpeg(content)
    if content.startswith(b"\x89PNG\r\n\x1a\n"):
        return _png(content)
    if content[:4] == b"RIFF" and content[8:12] == b"WEBP":
        return _webp(content)
    return None


def without_place(document):
    """A document of notes or pieces without where their photos were taken. The same null as of a photo that has none."""
    match document:
        case Mapping():
            told = {key: without_place(one) for key, one in document.items()}
            return told | {"place": None, "place_from": None} if "place_from" in told else told
        case list() | tuple():
            return [without_place(one) for one in document]
    return document


def _jpeg(content: bytes) -> bytes | None:
    """Keeps JFIF (APP0), colour profiles (APP2 ICC) and Adobe's transform (APP14); all other APPn and comments go."""
    at, kept, turned = 2, [b"\xff\xd8"], 1
    while at + 4 <= len(content):
        if content[at] != 0xFF:
            return None
        marker = content[at + 1]
        if marker == 0xFF:  # fill byte
            at += 1
            continue
        if marker == 0xDA:
            end = _end_of_image(content, at)
            return None if end is None else kept[0] + _orientation_segment(turned) + b"".join(kept[1:]) + content[at:end]
        if 0xD0 <= marker <= 0xD9 or marker == 0x01:
            kept.append(content[at : at + 2])
            at += 2
            continue
        (length,) = struct.unpack(">H", content[at + 2 : at + 4])
        segment = content[at : at + 2 + length]
        if length < 2 or len(segment) < 2 + length:
            return None
        body = segment[4:]
        if marker == 0xE1 and body.startswith(_EXIF):
            turned = _orientation(body[6:])
        keep = not (0xE0 <= marker <= 0xEF or marker == 0xFE) or marker in (0xE0, 0xEE) or (marker == 0xE2 and body.startswith(b"ICC_PROFILE\0"))
        if keep:
            kept.append(segment)
        at += 2 + length
    return None


def _end_of_image(content: bytes, at: int) -> int | None:
    """Where the picture ends; what stands behind it (previews, trailers) does not travel."""
    while (at := content.find(b"\xff", at)) >= 0 and at + 1 < len(content):
        marker = content[at + 1]
        if marker == 0xD9:
            return at + 2
        if marker in (0x00, 0xFF) or 0xD0 <= marker <= 0xD7:
            at += 2 if marker != 0xFF else 1
        elif at + 4 <= len(content):
            at += 2 + struct.unpack(">H", content[at + 2 : at + 4])[0]
        else:
            return None
    return None


def _orientation(tiff: bytes) -> int:
    """Tag 0x0112 of the first directory, 1 where there is none."""
    order = {b"II": "<", b"MM": ">"}.get(tiff[:2])
    if order is None or len(tiff) < 8:
        return 1
    (start,) = struct.unpack(order + "I", tiff[4:8])
    if start + 2 > len(tiff):
        return 1
    (count,) = struct.unpack(order + "H", tiff[start : start + 2])
    for at in range(start + 2, min(start + 2 + 12 * count, len(tiff) - 11), 12):
        tag, _, _, value = struct.unpack(order + "HHIH", tiff[at : at + 10])
        if tag == 0x0112:
            return value if 1 <= value <= 8 else 1
    return 1


def _orientation_segment(turned: int) -> bytes:
    if turned == 1:
        return b""
    tiff = _orientation_tiff(turned)
    return struct.pack(">HH", 0xFFE1, 2 + len(_EXIF) + len(tiff)) + _EXIF + tiff


def _orientation_tiff(turned: int) -> bytes:
    return struct.pack(">2sHIHHHIHHI", b"MM", 42, 8, 1, 0x0112, 3, 1, turned, 0, 0)


def _png(content: bytes) -> bytes | None:
    at, kept = 8, [content[:8]]
    while at + 12 <= len(content):
        length, kind = struct.unpack(">I4s", content[at : at + 8])
        chunk = content[at : at + 12 + length]
        if len(chunk) < 12 + length or zlib.crc32(chunk[4:-4]) != struct.unpack(">I", chunk[-4:])[0]:
            return None
        if kind in _KEPT_CHUNKS:
            kept.append(chunk)
        at += 12 + length
        if kind == b"IEND":
            return b"".join(kept)
    return None


def _webp(content: bytes) -> bytes | None:
    """Keeps the picture, its transparency, animation and colour profile; EXIF, XMP and chunks nobody knows go."""
    (size,) = struct.unpack("<I", content[4:8])
    end, at, kept, turned = 8 + size, 12, [], 1
    if end > len(content):
        return None
    while at + 8 <= end:
        kind, length = struct.unpack("<4sI", content[at : at + 8])
        chunk = content[at : at + 8 + length + length % 2]
        if len(chunk) < 8 + length or at + 8 + length > end:
            return None
        if kind == b"EXIF":
            body = chunk[8 : 8 + length]
            turned = _orientation(body.removeprefix(_EXIF))
        elif kind in _KEPT_WEBP:
            kept.append(chunk)
        at += len(chunk)
    if not any(one[:4] in (b"VP8 ", b"VP8L", b"ANMF") for one in kept):
        return None
    if kept[0][:4] == b"VP8X":
        flags = kept[0][8] & ~0x0C | (0x08 if turned != 1 else 0)  # EXIF is bit 3, XMP bit 2
        kept[0] = kept[0][:8] + bytes([flags]) + kept[0][9:]
        if turned != 1:
            tiff = _orientation_tiff(turned)
            kept.append(struct.pack("<4sI", b"EXIF", len(tiff)) + tiff)
    body = b"WEBP" + b"".join(kept)
    return b"RIFF" + struct.pack("<I", len(body)) + body
