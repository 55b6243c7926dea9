"""Hears the recordings of the demonstration with real Whisper, shakes them, and keeps the transcripts.

`python tests/making/listen.py [STEM…] [--shake] [--keep]`

`--shake` hears each recording also 1 dB louder and softer, 20 ms later and earlier, and with one thread, and says
where the facts change: such a recording is said again in another wording or voice, its transcript is never
touched. `--keep` writes the transcripts of the recordings as they are into `heard/`, named by the SHA-256 of the
recording, for the scripted engine.
"""

from __future__ import annotations

import argparse
import json
import sys
from dataclasses import replace
from pathlib import Path

import numpy as np

from logbook.decoding import sound
from logbook.hearing import engine
from logbook.transcript import to_json

DEMO = Path(__file__).resolve().parent.parent.parent / "logbook" / "demo"
LATE = round(0.02 * sound.RATE)


def shaken(heard: sound.Sound):
    """The same sound as other ears would get it."""
    for decibels in (1, -1):
        yield f"{decibels:+d} dB", replace(heard, samples=(heard.samples * 10 ** (decibels / 20)).astype(np.float32))
    for name, samples in (
        ("20 ms later", np.concatenate([np.zeros(LATE, np.float32), heard.samples])),
        ("20 ms earlier", heard.samples[LATE:]),
    ):
        yield name, replace(heard, samples=samples, seconds=len(samples) / sound.RATE)


def facts(transcript) -> list:
    """What was said, without where: the facts must not move when the sound is shaken."""
    from logbook import job
    from logbook.reading import read
    from logbook.said import reading_to_json

    doc = reading_to_json(read(transcript.text, transcript=transcript, job=job.load(DEMO)))
    both = doc["fittings"] + ([doc["shift"]] if doc["shift"] else [])
    return [
        (n, fact["name"], fact["value"], fact["hedged"], fact.get("conflict", False))
        for n, entry in enumerate(both)
        for fact in entry["facts"]
    ]


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("stems", nargs="*")
    parser.add_argument("--shake", action="store_true")
    parser.add_argument("--keep", action="store_true")
    parser.add_argument("--notes", type=Path, default=DEMO / "notes")
    args = parser.parse_args()
    ears, moved = engine.make("whisper", threads=2), 0
    import torch  # after the engine, which tells its threads how to wait

    files = [file for file in sorted(args.notes.glob("*.ogg")) if not args.stems or file.stem in args.stems]
    for file in files:
        one = sound.decode(file)
        (first,) = ears.hear([one], languages=[None])
        print(f"{file.stem}  {one.seconds:.1f} s  {first.language}  {first.text}", flush=True)
        if args.keep:
            kept = DEMO / "heard" / f"{one.sha256}.json"
            kept.write_text(json.dumps(to_json(first), ensure_ascii=False, indent=1) + "\n", encoding="utf-8")
        if args.shake:
            for name, other, threads in (*((name, other, 2) for name, other in shaken(one)), ("one thread", one, 1)):
                torch.set_num_threads(threads)
                (again,) = ears.hear([other], languages=[None])
                torch.set_num_threads(2)
                if again.text != first.text:
                    same = facts(again) == facts(first)
                    moved += not same
                    print(f"    {name}: {'same facts' if same else 'OTHER FACTS'}: {again.text}", flush=True)
                    for fact in [] if same else sorted(set(map(repr, facts(first))) ^ set(map(repr, facts(again)))):
                        print(f"        {fact}")
    print(f"{len(files)} recordings, {moved} changes of facts", file=sys.stderr)
    return 1 if moved else 0


if __name__ == "__main__":
    sys.exit(main())
