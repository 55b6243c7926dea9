"""What hears: the contract of an engine, and the two engines by name.

An engine gets sounds and gives one transcript for each, in order. `languages` holds "en", "es" or None (find
it) for each sound. A sound without speech gives a transcript without words whose `unheard` says why.
"""

from __future__ import annotations

import os
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from logbook.mistake import Mistake
from logbook.transcript import Transcript

if TYPE_CHECKING:
    from logbook.decoding.sound import Sound

NAMES = ("whisper", "scripted")


class Engine(Protocol):
    name: str
    in_stretches: bool  # whether a long sound may be handed over in parts; prepared words are those of the whole

    def hear(self, sounds: Sequence[Sound], *, languages: Sequence[str | None]) -> list[Transcript | Mistake]:
        """One transcript a sound, in order; a Mistake only where this engine can never hear that sound."""

    def hear_again(self, sound: Sound, *, language: str | None) -> Transcript | Mistake | None:
        """The same sound by other, slower means; None where this engine has no others."""


def make(name: str, folder: Path | None = None, *, weights: str = "base", threads: int | None = None) -> Engine | Mistake:
    """The engine of that name, loaded. `folder` holds prepared transcripts (scripted only); `threads` None: all."""
    if name == "scripted":
        from logbook.hearing import scripted

        return scripted.make(folder)
    if name == "whisper":
        # Before torch loads: its threads must sleep while they wait. Spinning, two threads on two busy cores took
        # 10 s for a note that one thread heard in 1.5 s.
        os.environ.setdefault("OMP_WAIT_POLICY", "PASSIVE")
        try:
            from logbook.hearing import openai_whisper
        except ImportError as error:
            return Mistake("hearing.no-whisper", name, {"came": str(error)})
        return openai_whisper.make(weights, threads)
    return Mistake("hearing.no-engine", name, {"came": name, "known": ", ".join(NAMES)})
