"""How long the first thing takes: python tests/bench/cold.py [--keep FILE]

* `logbook --help` beside an interpreter that does nothing, in turns (median of nine each);
* the first answer of a server that starts with a recorded note waiting, from the start of its process to the note's answer over
  TLS, beside a process that loads the released `whisper` and transcribes the same recording once.

Asserts nothing.
"""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
import tempfile
import time
import uuid
from datetime import UTC, datetime
from pathlib import Path
from statistics import median

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE.parent), str(HERE.parents[1])]

import serving  # noqa: E402

from logbook import store  # noqa: E402
from logbook.decoding import sound  # noqa: E402
from logbook.hearing import weights  # noqa: E402
from logbook.intake import Incoming, Part  # noqa: E402

CLIP = HERE.parent / "cases" / "hearing" / "bad" / "plain.ogg"
RELEASED = "import sys, whisper\nprint(whisper.load_model(sys.argv[1], device='cpu').transcribe(sys.argv[2], language='en', word_timestamps=True, fp16=False)['text'])"


def timed(*command: str) -> float:
    """Seconds of a process whose threads sleep while they wait, as ours do."""
    begun = time.perf_counter()
    subprocess.run(command, check=True, capture_output=True, env=os.environ | {"OMP_WAIT_POLICY": "PASSIVE"})
    return time.perf_counter() - begun


def helped(times: int = 9) -> dict:
    ours, nothing = [], []
    for _ in range(times):
        nothing.append(timed(sys.executable, "-c", "pass"))
        ours.append(timed(sys.executable, "-m", "logbook", "--help"))
    return {"help": median(ours), "interpreter": median(nothing)}


def answered() -> dict:
    model = weights.find()
    released = timed(sys.executable, "-c", RELEASED, str(model.path), str(CLIP))
    with tempfile.TemporaryDirectory() as home:
        served = serving.lay(Path(home))
        at, note = datetime.now(UTC), str(uuid.uuid4())
        with store.open_folder(served.job) as folder:
            store.receive(folder, Incoming(note, at, served.ids["installer"], served.ids["installer"], audio=(Part(CLIP.read_bytes(), "a.ogg"),)), at)
        begun = time.perf_counter()
        served.start("whisper")
        ready = time.perf_counter() - begun
        try:
            state = served.settled([note])[note]["state"]
            spent = time.perf_counter() - begun
        finally:
            served.stop()
    return {"ready": ready, "first_answer": spent, "released": released, "state": state, "seconds_of_sound": sound.decode(CLIP).seconds}


def measure() -> dict:
    return {name: round(value, 3) if isinstance(value, float) else value for name, value in (helped() | answered()).items()}


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--keep", type=Path)
    given = parser.parse_args()
    found = measure()
    print(f"logbook --help {found['help']:.2f} s, an interpreter that does nothing {found['interpreter']:.2f} s: {found['help'] / found['interpreter']:.1f} times")
    print(f"server ready after {found['ready']:.2f} s, the waiting note {found['state']} after {found['first_answer']:.1f} s;"
          f" released whisper from its start to the text {found['released']:.1f} s: {found['first_answer'] / found['released']:.2f} times")  # fmt: skip
    if given.keep:
        given.keep.write_text(json.dumps(found, indent=1) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
