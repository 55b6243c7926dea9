"""Ordinary sentences by real people: python tests/bench/people.py [FOLDER] [--keep FILE]

What the trade's expectations cost where nobody speaks of the trade. The sentences (a novel read aloud for LibriVox, in the public
domain) lie in the source distribution of `pocketsphinx`, which is fetched into FOLDER with pip when the bench runs; nothing of it
is kept in the project and no code of it is run but what its own packaging asks for. Our ears beside the released
`whisper.transcribe` with the same weights, its own defaults; folded word error, and trade words and facts that nobody said.

Asserts nothing.
"""

from __future__ import annotations

import argparse
import json
import re
import subprocess
import sys
import tarfile
import tempfile
from pathlib import Path
from statistics import mean, median

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE), str(HERE.parent)]

from ears import TRADE  # noqa: E402
from folding import errors, fold  # noqa: E402

from logbook.decoding import sound  # noqa: E402
from logbook.hearing import engine, weights  # noqa: E402
from logbook.reading import read  # noqa: E402

INSIDE = re.compile(r"[^/]+/test/data/librivox/[\w-]+\.(wav|txt|transcription)|[^/]+/test/data/librivox/(transcription|fileids)")


def fetched(folder: Path) -> list[tuple[Path, str]]:
    """(sound, what is said) of every sentence."""
    if not list(folder.glob("pocketsphinx-*.tar.gz")):
        subprocess.run([sys.executable, "-m", "pip", "download", "-q", "--no-deps", "--no-binary", "pocketsphinx", "-d", folder, "pocketsphinx"], check=True)
    (archive,) = folder.glob("pocketsphinx-*.tar.gz")
    with tarfile.open(archive) as tar:
        tar.extractall(folder, [one for one in tar.getmembers() if INSIDE.fullmatch(one.name)], filter="data")
    return [(wav, wav.with_suffix(".txt").read_text("utf-8")) for wav in sorted(folder.rglob("librivox/*.wav")) if wav.with_suffix(".txt").exists()]


def measure(folder: Path) -> dict:
    import whisper

    sentences = fetched(folder)
    sounds = [sound.decode(file) for file, _ in sentences]
    ears = engine.make("whisper")
    ours = [one.text for one in ears.hear(sounds, languages=["en"] * len(sounds))]
    model = whisper.load_model(str(weights.find().path), device="cpu")
    theirs = [model.transcribe(one.samples.copy(), language="en", fp16=False)["text"] for one in sounds]

    def wrong(texts: list[str]) -> list[float]:
        return [errors(fold(said, "en"), fold(text, "en")) / len(fold(said, "en")) for (_, said), text in zip(sentences, texts, strict=True)]

    invented = [word for (_, said), text in zip(sentences, ours, strict=True) for word in set(fold(text, "en")) & TRADE - set(fold(said, "en"))]
    facts = [fact.name for text in ours for entry in read(text, language="en").fittings for fact in entry.facts]
    return {
        "sentences": len(sentences), "seconds": round(sum(one.seconds for one in sounds)),
        "error": round(mean(wrong(ours)), 4), "error_median": round(median(wrong(ours)), 4),
        "released": round(mean(wrong(theirs)), 4), "released_median": round(median(wrong(theirs)), 4),
        "invented": sorted(invented), "facts": facts, "heard": ours,
    }  # fmt: skip


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("folder", type=Path, nargs="?")
    parser.add_argument("--keep", type=Path)
    given = parser.parse_args()
    with tempfile.TemporaryDirectory() as place:
        found = measure(given.folder or Path(place))
    print(*found["heard"], sep="\n")
    print(f"{found['sentences']} sentences, {found['seconds']} s; word error mean {found['error']:.3f} (median {found['error_median']:.3f}),"
          f" released {found['released']:.3f} ({found['released_median']:.3f}); trade words invented {found['invented']}, facts {found['facts']}")  # fmt: skip
    if given.keep:
        given.keep.write_text(json.dumps(found, indent=1) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
