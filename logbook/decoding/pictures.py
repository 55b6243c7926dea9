"""A picture file becomes numbers and a small upright copy, whatever phone or person made it.

The file is read in a limited child process (`child.py`, `picture_reading.py`); nothing here opens it. `look` gives
what the photo rules look at:

    width, height   of the upright picture, pixels          dhash     64-bit picture print, 16 hex digits
    sharpness       variance of the Laplacian of the grey picture at 1024 px    light   mean grey value, 0 to 255
    pixels          SHA-256 of the upright pixels            tags      texts of the codes seen in it
    camera          maker, model and serial number, or None  captured  ISO 8601, with an offset where the file has one
    latitude, longitude   degrees, or None                   screenshot, no_exif   bool: said, not held against anybody
"""

from __future__ import annotations

from pathlib import Path

from logbook.decoding import child
from logbook.mistake import Mistake

MAX_PIXELS = 50_000_000  # what phones make (48 MP); more is refused before it is unpacked
MAX_RATIO = 20  # long over short side: no camera makes more
THUMBNAIL = 640  # pixels of the longest side
LIMITS = child.Limits(memory=640 * 2**20, cpu=20, wall=60.0)  # 50 megapixels take 4 s


def look(path: Path | str) -> dict | Mistake:
    """What is seen in the picture. Mistakes: `photos.*`, and `decoding.*` when it took more than it may have."""
    both = look_and_shrink(path)
    return both if isinstance(both, Mistake) else both[0]


def look_and_shrink(path: Path | str) -> tuple[dict, bytes] | Mistake:
    """What is seen, and the thumbnail: a JPEG of at most 640 px, upright, without EXIF."""
    path = Path(path)
    if path.is_file() and path.stat().st_size == 0:
        return Mistake("photos.empty-file", path.name, {"name": path.name})
    bars = {"max_pixels": MAX_PIXELS, "max_ratio": MAX_RATIO, "thumbnail": THUMBNAIL}
    answer = child.run("logbook.decoding.picture_reading:read", path, LIMITS, **bars)
    return answer if isinstance(answer, Mistake) else (answer.values, answer.data)
