"""Makes the forty short clips of `tests/cases/hearing`: two phrases of a trade note each, synthetic voices, Opus.

    python tests/making/hearing_clips.py

needs the programs that `tests/bench/clips.py` names. The clips are kept in the project, so that no test needs
them. They show that a batch hears like one note alone and that words come out at all; they measure no accuracy.
"""

from __future__ import annotations

import json
import random
import sys
import tempfile
from pathlib import Path

import av
import numpy as np

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parent / "bench"))

import clips  # noqa: E402

TARGET = HERE.parent / "cases" / "hearing"
RATE = 48_000


def encode(samples: np.ndarray, file: Path) -> None:
    with av.open(str(file), "w", format="ogg") as out:
        stream = out.add_stream("libopus", rate=RATE)
        stream.layout, stream.bit_rate = "mono", 16_000
        resampler = av.AudioResampler(format="flt", layout="mono", rate=RATE)
        frame = av.AudioFrame.from_ndarray((samples * 32767).astype(np.int16)[None], format="s16", layout="mono")
        frame.rate = clips.RATE
        for part in (*resampler.resample(frame), *resampler.resample(None)):
            part.pts = None
            out.mux(stream.encode(part))
        out.mux(stream.encode(None))


def main() -> None:
    TARGET.mkdir(parents=True, exist_ok=True)
    r, rows = random.Random(40), []
    for n in range(40):
        language = "es" if n % 5 == 4 else "en"
        note = clips.spanish_note(r) if language == "es" else clips.english_note(r)
        text = ". ".join(note.split(". ")[: 1 + n % 3]).rstrip(".") + "."
        voices = clips.ES_VOICES if language == "es" else clips.EN_VOICES
        voice, condition = voices[n % len(voices)], clips.CONDITIONS[n % len(clips.CONDITIONS)]
        with tempfile.TemporaryDirectory() as folder:
            raw = Path(folder) / "raw.wav"
            clips.speak(voice, text, raw)
            encode(clips.on_site(condition, clips.load(raw), n), TARGET / f"{n:02}.ogg")
        rows.append({"file": f"{n:02}.ogg", "text": text, "language": language, "voice": voice, "condition": condition})
    (TARGET / "clips.json").write_text(json.dumps(rows, ensure_ascii=False, indent=1) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
