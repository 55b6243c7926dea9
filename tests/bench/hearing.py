"""How fast the ears hear beside other ways to run the same weights: python tests/bench/hearing.py FOLDER [--clips N] [--keep FILE]

FOLDER holds the clips of `clips.py`; N of its English and Spanish notes are heard (default 24), the same by everybody, in one
run, two threads each, word times included, one after another on a machine that does nothing else:

* alone, together: our ears, note by note as they come, and eight at once as a backlog (together is what the others are measured by);
* transcribe: `whisper.load_model(...).transcribe(..., word_timestamps=True)`, warm, its own defaults;
* command: the `whisper` command over all the files at once, its start included;
* faster int8: faster-whisper in int8, warm, its own defaults (pip install faster-whisper; it is no dependency of the project).

Prints seconds of hearing for a second of sound, how many times as long as `together` that is, and the folded word error
(median, mean). Asserts nothing.
"""

from __future__ import annotations

import argparse
import json
import os
import platform
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from statistics import mean, median

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE), str(HERE.parent)]

from folding import errors, fold  # noqa: E402

from logbook.decoding import sound  # noqa: E402
from logbook.hearing import engine, weights  # noqa: E402

THREADS, AT_ONCE = 2, 8


def alone(rows, sounds, folder):
    ears = engine.make("whisper", threads=THREADS)
    ears.hear(sounds[:1], languages=[rows[0]["language"]])  # warm
    spent, texts = [], []
    for row, one in zip(rows, sounds, strict=True):
        begun = time.perf_counter()
        texts.append(ears.hear([one], languages=[row["language"]])[0].text)
        spent.append(time.perf_counter() - begun)
    return spent, texts


def together(rows, sounds, folder):
    ears = engine.make("whisper", threads=THREADS)
    ears.hear(sounds[:1], languages=[rows[0]["language"]])
    begun, texts = time.perf_counter(), []
    for at in range(0, len(rows), AT_ONCE):
        some = slice(at, at + AT_ONCE)
        texts += [one.text for one in ears.hear(sounds[some], languages=[row["language"] for row in rows[some]])]
    return [time.perf_counter() - begun], texts


def transcribe(rows, sounds, folder):
    import torch
    import whisper

    torch.set_num_threads(THREADS)
    model = whisper.load_model(str(weights.find().path), device="cpu")
    return _each(rows, sounds, lambda row, one: model.transcribe(one.samples.copy(), language=row["language"], word_timestamps=True, fp16=False)["text"])


def faster(rows, sounds, folder):
    from faster_whisper import WhisperModel

    parts = weights._installed("base")
    with tempfile.TemporaryDirectory() as place:
        for file in parts[0].parent.glob("*"):
            if not file.name.startswith("model.bin"):
                shutil.copy(file, place)
        with open(Path(place) / "model.bin", "wb") as whole:
            for part in parts:
                whole.write(part.read_bytes())
        model = WhisperModel(place, device="cpu", compute_type="int8", cpu_threads=THREADS)

        def hear(row, one):
            return "".join(part.text for part in model.transcribe(one.samples, language=row["language"], word_timestamps=True)[0])

        return _each(rows, sounds, hear)


def command(rows, sounds, folder):
    begun, texts = time.perf_counter(), {}
    with tempfile.TemporaryDirectory() as place:
        for language in sorted({row["language"] for row in rows}):
            files = [str(folder / row["file"]) for row in rows if row["language"] == language]
            subprocess.run(
                [sys.executable, "-m", "whisper", *files, "--model", str(weights.find().path), "--language", language, "--word_timestamps", "True", "--threads", str(THREADS), "--fp16", "False", "--output_dir", place, "--output_format", "json", "--verbose", "False"],
                check=True, capture_output=True,
            )  # fmt: skip
        spent = time.perf_counter() - begun
        for row in rows:
            texts[row["file"]] = json.loads((Path(place) / f"{Path(row['file']).stem}.json").read_text("utf-8"))["text"]
    return [spent], [texts[row["file"]] for row in rows]


def _each(rows, sounds, hear):
    hear(rows[0], sounds[0])  # warm
    spent, texts = [], []
    for row, one in zip(rows, sounds, strict=True):
        begun = time.perf_counter()
        texts.append(hear(row, one))
        spent.append(time.perf_counter() - begun)
    return spent, texts


LISTENERS = {"together": together, "alone": alone, "transcribe": transcribe, "faster int8": faster, "command": command}


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("folder", type=Path)
    parser.add_argument("--clips", type=int, default=24)
    parser.add_argument("--keep", type=Path)
    given = parser.parse_args()
    every = [row for row in json.loads((given.folder / "clips.json").read_text("utf-8")) if row.get("kind") != "ordinary"]
    rows = every[:: max(1, len(every) // given.clips)][: given.clips]
    sounds = [sound.decode(given.folder / row["file"]) for row in rows]
    seconds = sum(one.seconds for one in sounds)
    print(f"{len(rows)} notes, {seconds:.0f} s of sound, {os.cpu_count()} cores, {platform.processor() or platform.machine()}")
    kept, ours = [], None
    for name, listen in LISTENERS.items():
        spent, texts = listen(rows, sounds, given.folder)
        share = sum(spent) / seconds
        ours = ours or share
        wrong = [errors(fold(row["text"], row["language"]), fold(text, row["language"])) / len(fold(row["text"], row["language"])) for row, text in zip(rows, texts, strict=True)]
        each = f", median note {median(s / one.seconds for s, one in zip(spent, sounds, strict=True)):.3f} of its length" if len(spent) == len(sounds) else ""
        print(f"{name:12} {share:.3f} of the sound ({share / ours:.1f} times together){each}; word error {median(wrong):.3f} / {mean(wrong):.3f}", flush=True)
        kept.append({"listener": name, "share": round(share, 4), "times": round(share / ours, 2), "error_median": round(median(wrong), 4), "error_mean": round(mean(wrong), 4)})
    if given.keep:
        given.keep.write_text(json.dumps({"notes": len(rows), "seconds": round(seconds), "cores": os.cpu_count(), "listeners": kept}, indent=1) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
