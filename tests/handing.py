"""Hand-ins for the tests of the store: small sound and pictures of our own, and a folder to hand them in to."""

import io
import math
import random
import struct
import uuid
import wave
from datetime import UTC, datetime

from logbook import store
from logbook.intake import Incoming, Part

SPOKEN = datetime(2026, 10, 14, 15, tzinfo=UTC)
SAID = "Straight four on run two, eighteen by twelve, stapled every two, taped with 181A-P, rubbed down."


def tone(hertz: float, seconds: float = 0.2) -> bytes:
    """A WAV of a plain tone, told apart from others by its pitch."""
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setparams((1, 2, 16_000, 0, "NONE", ""))
        file.writeframes(b"".join(struct.pack("<h", int(8000 * math.sin(2 * math.pi * hertz * n / 16_000))) for n in range(int(16_000 * seconds))))
    return out.getvalue()


def picture(number: int) -> bytes:
    """A JPEG of coarse blocks, unlike that of any other number."""
    from PIL import Image

    out = io.BytesIO()
    blocks = Image.frombytes("RGB", (9, 8), random.Random(number).randbytes(9 * 8 * 3))
    blocks.resize((144, 128), Image.Resampling.NEAREST).save(out, "JPEG")
    return out.getvalue()


def note(id: str | None = None, by: str = "rosa", **fields) -> Incoming:
    """A note with one sound, unless `text` or `audio` is given."""
    if "text" not in fields and "audio" not in fields:
        fields["audio"] = (tone(440),)
    for name in ("audio", "photos"):
        if name in fields:
            fields[name] = tuple(Part(one, "part") for one in fields[name])
    return Incoming(id or str(uuid.uuid4()), fields.pop("spoken_at", SPOKEN), by, by, **fields)


def new_folder(path, **more):
    return store.open_folder(path, create=True, **more)
