"""In the child: opens one picture, stands it upright, measures it and shrinks it. The only import of PIL.

Only formats that phones make are tried, so a drawing with a script in it, a page or a film is not a picture
whatever its name says.
"""

from __future__ import annotations

import hashlib
import io
import re
import struct
from datetime import datetime
from typing import BinaryIO

import numpy as np
from PIL import Image, UnidentifiedImageError

from logbook.mistake import Mistake

try:
    import pillow_heif
except ImportError:  # the extra `heic` is not installed: such a photo is kept, and said to be unreadable here
    pillow_heif = None
else:
    pillow_heif.register_heif_opener(thumbnails=False)
try:
    import zxingcpp
except ImportError:  # tags are then not read; a press says which piece a photo shows
    zxingcpp = None

FORMATS = ("JPEG", "PNG", "WEBP")  # a phone with two lenses writes MPO, which opens as JPEG
GREY_SIDE = 1024  # the Laplacian is taken at this size, so that sharpness of two cameras can be compared
Image.init()  # every format is registered before the child limits itself
EXIF, GPS = 0x8769, 0x8825
MAKE, MODEL, SERIAL, TAKEN, OFFSET, COMMENT = 0x010F, 0x0110, 0xA431, 0x9003, 0x9011, 0x9286
HEIF_BRANDS = (b"heic", b"heix", b"mif1", b"msf1", b"heim", b"heis", b"hevc")


def warm_up() -> None:
    """Look at a small picture of our own in every way, so that what Pillow imports at first use is there before the limits are."""
    exif = Image.Exif()
    exif[0x0112] = 6
    exif.get_ifd(EXIF)[TAKEN] = "2026:01:01 00:00:00"
    exif.get_ifd(GPS)[2] = (1.0, 2.0, 3.0)
    for mode, made_as in (("RGB", "JPEG"), ("CMYK", "JPEG"), ("P", "PNG"), ("I;16", "PNG"), ("LA", "PNG"), ("RGBA", "WEBP")):
        out = io.BytesIO()
        Image.new(mode, (40, 30)).save(out, made_as, exif=exif)
        out.seek(0)
        read(out, lambda body: None, max_pixels=2000, max_ratio=2, thumbnail=8)


def read(file: BinaryIO, put, *, max_pixels: int, max_ratio: int, thumbnail: int) -> dict | Mistake:
    start = file.read(12)
    file.seek(0)
    heif = start[4:8] == b"ftyp" and start[8:12] in HEIF_BRANDS
    if heif and pillow_heif is None:
        return Mistake("photos.no-heic")
    Image.MAX_IMAGE_PIXELS = None  # our own bar below is lower and answers in words
    try:
        picture = Image.open(file, formats=("HEIF",) if heif else FORMATS)
        width, height = picture.size
        if width * height > max_pixels:
            return Mistake("photos.too-many-pixels", "", {"came": f"{width} × {height}", "most": max_pixels // 1_000_000})
        if max(width, height) > max_ratio * min(width, height):
            return Mistake("photos.odd-shape", "", {"came": f"{width} × {height}"})
        made_as, exif = picture.format, _exif(picture)
        upright = _upright(picture)
        upright = upright if upright.mode == "RGB" else upright.convert("RGB")
    except (UnidentifiedImageError, OSError, SyntaxError, ValueError, EOFError, struct.error, IndexError) as error:
        return Mistake("photos.unreadable", "", {"came": type(error).__name__})
    small = upright.copy()
    small.thumbnail((thumbnail, thumbnail), Image.Resampling.LANCZOS)
    out = io.BytesIO()
    Image.fromarray(np.asarray(small)).save(out, "JPEG", quality=82)
    put(out.getvalue())
    grey = upright.convert("L")
    seen = {"width": upright.width, "height": upright.height, "pixels": pixels_digest(upright), "dhash": print_of(grey)}
    tags = codes(grey)
    grey.thumbnail((GREY_SIDE, GREY_SIDE), Image.Resampling.BOX)
    values = np.asarray(grey, np.float32)
    seen |= {"sharpness": sharpness(values), "light": round(float(values.mean()), 1), "tags": tags}
    told, bare = exif.pop("told_screenshot"), exif["captured"] is None and exif["camera"] is None
    return seen | exif | {"no_exif": bare, "screenshot": told or (bare and made_as == "PNG")}


def pixels_digest(upright: Image.Image) -> str:
    """SHA-256 of the upright pixels and their size: the same for two files of one picture, however they are packed."""
    digest = hashlib.sha256(f"{upright.width}x{upright.height}".encode())
    for top in range(0, upright.height, 256):
        digest.update(upright.crop((0, top, upright.width, min(top + 256, upright.height))).tobytes())
    return digest.hexdigest()


def print_of(grey: Image.Image) -> str:
    """The difference print: is each of 8 x 8 places brighter than its left neighbour? 16 hex digits.

    Measured on 24 distinct pictures: 0 bits apart after recompression or halving, 2 after brightening by 1.3, 18 at
    least between two pictures; a crop of 5 % is 14 apart and is not found.
    """
    rows = np.asarray(grey.resize((9, 8), Image.Resampling.LANCZOS), np.int16)
    bits = (rows[:, 1:] > rows[:, :-1]).flatten()
    return f"{int(''.join('1' if bit else '0' for bit in bits), 2):016x}"


def sharpness(grey: np.ndarray) -> float:
    """Variance of the five-point Laplacian of a grey picture."""
    if min(grey.shape) < 3:
        return 0.0
    middle = grey[1:-1, 1:-1]
    bend = grey[:-2, 1:-1] + grey[2:, 1:-1] + grey[1:-1, :-2] + grey[1:-1, 2:] - 4 * middle
    return round(float(bend.var()), 1)


CODE_SIDES = (4096, 2048, 1024)  # longest side of the picture as codes are looked for in it


def codes(grey: Image.Image) -> list[str]:
    """The texts of the square codes in the picture, each once, left to right as found.

    As it is first: a small tag needs every pixel (measured by tests/bench/tags.py, 0.02 s for 12 megapixels); then
    smaller, which mends blur.
    """
    if zxingcpp is None:
        return []
    found: list[str] = []
    for side in (one for one in CODE_SIDES if one == CODE_SIDES[0] or max(grey.size) > one):
        one = grey
        if max(grey.size) > side:
            one = grey.copy()
            one.thumbnail((side, side), Image.Resampling.BOX)
        for code in zxingcpp.read_barcodes(np.asarray(one), formats=zxingcpp.BarcodeFormat.QRCode):
            if code.text and len(code.text) <= 200 and code.text not in found:
                found.append(code.text)
        if found:
            break
    return found


_TURNED = {
    2: Image.Transpose.FLIP_LEFT_RIGHT, 3: Image.Transpose.ROTATE_180, 4: Image.Transpose.FLIP_TOP_BOTTOM, 5: Image.Transpose.TRANSPOSE,
    6: Image.Transpose.ROTATE_270, 7: Image.Transpose.TRANSVERSE, 8: Image.Transpose.ROTATE_90,
}  # fmt: skip


def _upright(picture: Image.Image) -> Image.Image:
    """Turned as the EXIF orientation tells (CIPA DC-008). Nothing else of a torn EXIF block matters for this, so that
    a good picture with a bad block is not lost: Pillow's own turning writes the whole block anew and falls over it."""
    picture.load()
    try:
        how = _TURNED.get(picture.getexif().get(0x0112))
    except Exception:  # whatever the block raises, see `_exif`
        how = None
    return picture if how is None else picture.transpose(how)


def _exif(picture: Image.Image) -> dict:
    """Camera, moment and place as the file tells them; what cannot be read is not there, the picture still is."""
    nothing = {"camera": None, "captured": None, "latitude": None, "longitude": None, "told_screenshot": False}
    try:
        exif = picture.getexif()
        inner, gps = exif.get_ifd(EXIF), exif.get_ifd(GPS)
    except Exception:  # whatever a torn EXIF block raises: it says nothing, and the picture is still looked at
        return nothing
    parts = [_text(exif.get(MAKE)), _text(exif.get(MODEL)), _text(inner.get(SERIAL))]
    camera = " ".join(part for part in parts if part) or None
    latitude, longitude = _degrees(gps, 1, 2, "S"), _degrees(gps, 3, 4, "W")
    if latitude is None or longitude is None or abs(latitude) > 90 or abs(longitude) > 180:
        latitude = longitude = None
    told = "screenshot" in _text(inner.get(COMMENT)).lower()
    captured = _captured(_text(inner.get(TAKEN)), _text(inner.get(OFFSET)))
    return {"camera": camera, "captured": captured, "latitude": latitude, "longitude": longitude, "told_screenshot": told}


def _text(value: object) -> str:
    text = value.decode("latin-1") if isinstance(value, bytes) else value if isinstance(value, str) else ""
    return "".join(sign for sign in text if sign.isprintable()).strip()[:100]


def _captured(text: str, offset: str) -> str | None:
    try:
        moment = datetime.strptime(text[:19], "%Y:%m:%d %H:%M:%S")
    except ValueError:
        return None
    return moment.isoformat() + (offset if re.fullmatch(r"[+-]\d\d:\d\d", offset) else "")


def _degrees(gps: dict, side: int, at: int, minus: str) -> float | None:
    try:
        degrees, minutes, seconds = (float(part) for part in gps[at])
    except (KeyError, TypeError, ValueError, ZeroDivisionError):
        return None
    value = degrees + minutes / 60 + seconds / 3600
    if value != value:
        return None
    return round(-value if _text(gps.get(side)).upper() == minus else value, 6)
