"""In the child process: the samples of an open sound file, read with PyAV (see `sound.py`).

Imported by the parent never: PyAV is loaded before the child measures what it may take.
"""

from __future__ import annotations

import io
import wave
from typing import BinaryIO

import av
import numpy as np

from logbook.decoding.sound import FORMATS, RATE
from logbook.mistake import Mistake


def warm_up() -> None:
    """Decode a moment of our own, so that everything PyAV imports at first use is there before the limits are."""
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setparams((2, 2, 8_000, 0, "NONE", ""))
        file.writeframes(bytes(800))
    out.seek(0)
    read(out, lambda samples: None, max_seconds=1)


def read(file: BinaryIO, put, *, max_seconds: float) -> dict | Mistake:
    """Decode packet by packet, stepping over torn ones, and `put` the samples."""
    av.logging.set_level(av.logging.PANIC)
    options = {"format_whitelist": FORMATS, "protocol_whitelist": "pipe"}
    try:
        container = av.open(file, options=options, metadata_errors="replace")  # a title in an old encoding is no torn sound
    except av.error.MemoryError as error:
        raise MemoryError from error
    except (av.error.FFmpegError, OSError) as error:
        return Mistake("hearing.unreadable", "", {"came": error.strerror or type(error).__name__})
    with container:
        if not container.streams.audio:
            return Mistake("hearing.no-sound")
        return _samples(container, put, max_seconds)


def _samples(container, put, max_seconds: float) -> dict:
    stream = container.streams.audio[0]
    stream.thread_type = "NONE"
    resampler = _Resampler()
    wanted, count, end, broken = int(max_seconds * RATE), 0, 0.0, False
    packets = container.demux(stream)
    while True:
        try:
            packet = next(packets)
        except StopIteration:
            break
        except av.error.FFmpegError:
            broken = True
            break
        if packet.pts is not None:
            end = max(end, float((packet.pts + (packet.duration or 0)) * packet.time_base))
        if count >= wanted:
            continue  # past the limit only the length is wanted
        try:
            frames = [piece for frame in packet.decode() for piece in resampler.of(frame)]
        except av.error.FFmpegError:
            broken = True
            continue
        for frame in frames:
            count += _put(frame, put, wanted - count)
    if 0 < count < wanted:
        for frame in resampler.rest():
            count += _put(frame, put, wanted - count)
    declared = (container.duration or 0) / av.time_base
    return {"whole": max(end, count / RATE), "broken": broken or declared > end + 1.0}


class _Resampler:
    """16 kHz mono of whatever comes; a recording whose rate or channels change on the way goes on in a new one."""

    def __init__(self) -> None:
        self._now = self._new()

    @staticmethod
    def _new() -> av.AudioResampler:
        return av.AudioResampler(format="flt", layout="mono", rate=RATE)

    def of(self, frame) -> list:
        try:
            return self._now.resample(frame)
        except av.error.FFmpegError:  # also a ValueError, and no change of format
            raise
        except ValueError:  # another rate, layout or format than the frames before
            before, self._now = self.rest(), self._new()
            return before + self._now.resample(frame)

    def rest(self) -> list:
        """The last few samples that it still holds; none where it cannot give them, the rest of the note is there."""
        try:
            return self._now.resample(None)
        except av.error.FFmpegError:
            return []


def _put(frame, put, room: int) -> int:
    samples = frame.to_ndarray()[0][: max(room, 0)]
    put(samples.astype(np.float32, copy=False).tobytes())
    return samples.size
