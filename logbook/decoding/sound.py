"""A sound file becomes 16 kHz mono samples, whatever phone made it; a half file gives the half that is there.

The container and the samples are read in a limited child process (`child.py`) from an open file: the decoder
cannot open a second file or an address, and playlists are refused by a list of allowed formats.
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np

from logbook.decoding import child
from logbook.mistake import Mistake

RATE = 16_000  # samples a second, what Whisper hears
MAX_SECONDS = 30 * 60  # of one recording; the rest is kept and said to be unheard
FORMATS = "matroska,webm,mov,mp4,m4a,3gp,3g2,mj2,ogg,wav,mp3,flac,aac"
SILENT_PEAK = 0.0005  # -66 dB: below the noise of any open microphone, so nothing was recorded
LIMITS = child.Limits(cpu=60, wall=180.0)


@dataclass(frozen=True)
class Sound:
    """`samples` float32, mono, 16 kHz, -1 to 1; `seconds` of them; `whole_seconds` of the recording.

    `broken` is true when the file ended or tore before its own end. `sha256` is the digest of the file.
    """

    samples: np.ndarray = field(repr=False)
    seconds: float
    whole_seconds: float
    sha256: str
    name: str = ""
    broken: bool = False


def decode(path: Path | str, *, max_seconds: float = MAX_SECONDS) -> Sound | Mistake:
    """The sound in a file. Mistakes: `hearing.empty-file`, `.unreadable`, `.no-sound`, `.nothing-in-it`, `.silent`,
    and `decoding.*` when the file took more than a decoder may have."""
    path = Path(path)
    if path.is_file() and path.stat().st_size == 0:
        return Mistake("hearing.empty-file", path.name, {"name": path.name})
    answer = child.run("logbook.decoding.samples:read", path, LIMITS, max_seconds=max_seconds)
    if isinstance(answer, Mistake):
        return answer
    samples = np.frombuffer(answer.data, np.float32)
    if not samples.size:
        return Mistake("hearing.nothing-in-it", path.name, {"name": path.name})
    if np.abs(samples).max() < SILENT_PEAK:
        return Mistake("hearing.silent", path.name, {"name": path.name, "seconds": round(samples.size / RATE)})
    with open(path, "rb") as file:
        sha256 = hashlib.file_digest(file, "sha256").hexdigest()
    seconds = samples.size / RATE
    return Sound(samples, seconds, max(seconds, answer.values["whole"]), sha256, path.name, answer.values["broken"])


def joined(sounds: Sequence[Sound]) -> Sound:
    """The parts of one recording in order, as one sound; seconds count on. The digest of one part stays its own."""
    if len(sounds) == 1:
        return sounds[0]
    return Sound(
        samples=np.concatenate([one.samples for one in sounds]),
        seconds=sum(one.seconds for one in sounds),
        whole_seconds=sum(one.whole_seconds for one in sounds),
        sha256=hashlib.sha256("".join(one.sha256 for one in sounds).encode()).hexdigest(),
        name=sounds[0].name,
        broken=any(one.broken for one in sounds),
    )
