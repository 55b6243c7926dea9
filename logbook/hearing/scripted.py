"""Prepared transcripts: for machines without torch, for notes heard elsewhere, for tests.

A folder holds, for a sound, `<sha256 of the file>.json` or `<stem>.json` (a transcript document), or
`<sha256>.txt` or `<stem>.txt` (plain text, its words spread evenly over the sound and all heard well). An empty
text is a sound without speech.
"""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

from logbook.decoding.sound import Sound
from logbook.mistake import Mistake
from logbook.transcript import Doubt, Transcript, Unheard, Word, from_json, misfit


def make(folder: Path | str | None) -> Scripted | Mistake:
    if folder is None or not Path(folder).is_dir():
        return Mistake("hearing.no-folder", str(folder), {"folder": str(folder)})
    return Scripted(Path(folder))


class Scripted:
    name = "scripted"
    in_stretches = False

    def __init__(self, folder: Path):
        self.folder = folder

    def hear(self, sounds: Sequence[Sound], *, languages: Sequence[str | None]) -> list[Transcript | Mistake]:
        return [self._one(sound, language) for sound, language in zip(sounds, languages, strict=True)]

    def hear_again(self, sound: Sound, *, language: str | None) -> Transcript | Mistake | None:
        """What is prepared as `STEM.again.json` or `.txt`, or nothing."""
        again = replace(sound, name=f"{Path(sound.name).stem}.again.prepared", sha256=f"{sound.sha256}.again")
        found = self._one(again, language)
        return None if isinstance(found, Mistake) and found.key == "hearing.no-prepared" else found

    def _one(self, sound: Sound, language: str | None) -> Transcript | Mistake:
        stem = Path(sound.name).stem
        for name in filter(None, (sound.sha256, stem)):
            for kind, read in ((".json", self._document), (".txt", self._text)):
                if (file := self.folder / f"{name}{kind}").exists():  # a pipe too: then it waits for its words
                    return read(file, sound, language)
        values = {"name": sound.name, "folder": str(self.folder), "sha256": sound.sha256, "stem": stem}
        return Mistake("hearing.no-prepared", sound.name, values)

    def _document(self, file: Path, sound: Sound, language: str | None) -> Transcript | Mistake:
        try:
            doc = json.loads(file.read_text(encoding="utf-8"))
            read = from_json(doc.get("transcript", doc))
            wrong = "null" if read is None else misfit(read)
            if wrong is None:
                return read
            return Mistake("hearing.bad-prepared", str(file), {"file": file.name, "came": wrong})
        except (ValueError, KeyError, TypeError, AttributeError, RecursionError) as error:
            came = f"{type(error).__name__}: {error}"
            return Mistake("hearing.bad-prepared", str(file), {"file": file.name, "came": came})

    def _text(self, file: Path, sound: Sound, language: str | None) -> Transcript | Mistake:
        try:
            text = " ".join(file.read_text(encoding="utf-8").split())
        except UnicodeDecodeError as error:
            return Mistake("hearing.bad-prepared", str(file), {"file": file.name, "came": str(error)})
        return spread(text, sound.seconds, language)


def spread(text: str, seconds: float, language: str | None) -> Transcript:
    """A transcript of `text` with its words spread evenly over `seconds`, each heard with probability 1."""
    places = [(match.group(), match.start(), match.end()) for match in re.finditer(r"\S+", text)]
    step = seconds / max(1, len(places))
    words = tuple(
        Word(word, start, end, round(n * step, 2), round((n + 1) * step, 2), 1.0)
        for n, (word, start, end) in enumerate(places)
    )
    unheard = () if words else (Unheard(0.0, round(seconds, 2), "no_speech"),)
    return Transcript("scripted", "none", {"words": "spread evenly"}, language, text, words, Doubt(0.0, 0.0, 1.0), unheard)
