"""Load: phones that hand in over the TLS relay while hearing runs, on two cores. Prints; asserts nothing but that nothing is lost.

    python tests/bench/load.py [--phones 50] [--rounds 1] [--engine scripted|whisper]

With the scripted ears the words are prepared, decoding, reading, judging and photos are real; with whisper all of it is.

Each phone hands in a note of a 20 s recording and two photos of 3 MB, all at once, then asks for its answer as the phone's page
does. The clients run in a process of their own, as phones do. What is told: seconds until the acknowledgement (p50, p95, p99, most),
bytes a second, the largest memory of the server and its worker, how long a plain page took meanwhile, and the baseline: one phone alone.
"""

from __future__ import annotations

import argparse
import io
import json
import math
import os
import random
import statistics
import struct
import sys
import tempfile
import threading
import time
import wave
from pathlib import Path

sys.path[:0] = [str(Path(__file__).resolve().parents[1]), str(Path(__file__).resolve().parents[2])]
import serving  # noqa: E402


def recording(number: int, seconds: int = 20) -> bytes:
    """A recording of 20 s as 16 kHz WAV, 640 KB, unlike any other by its pitch."""
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setparams((1, 2, 16_000, 0, "NONE", ""))
        step = (300 + number) * 2 * math.pi / 16_000
        file.writeframes(b"".join(struct.pack("<h", int(6000 * math.sin(step * n))) for n in range(16_000 * seconds)))
    return out.getvalue()


def photo(number: int) -> bytes:
    """A JPEG of 3 MB, 12 megapixels as phones make them; filled up behind its end so that every one is another file."""
    from PIL import Image

    out = io.BytesIO()
    Image.effect_noise((1000, 750), 60).resize((4000, 3000)).convert("RGB").save(out, "JPEG", quality=80)
    made = out.getvalue()[:2_900_000]
    return made + random.Random(number).randbytes(3_000_000 - len(made))


def memory(pid: int) -> int:
    """Largest resident size so far, in KB; 0 where it is gone."""
    try:
        return next(int(line.split()[1]) for line in Path(f"/proc/{pid}/status").read_text().splitlines() if line.startswith("VmHWM"))
    except (OSError, StopIteration):
        return 0


def processor(pid: int) -> float:
    """Seconds of processor time a process has used, its ended children with it."""
    told = Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()
    return sum(map(int, told[11:13])) / os.sysconf("SC_CLK_TCK")


def watch(served, peak: dict, pages: list, over: threading.Event) -> None:
    line = served.connection()
    while not over.wait(0.5):
        peak["server"] = max(peak.get("server", 0), memory(served.process.pid))
        worker = served.worker()
        peak["worker"] = max(peak.get("worker", 0), memory(worker) if worker else 0)
        began = time.monotonic()
        status, _, _ = served.ask("GET", "/log", who="lead", over=line, Accept="text/html")
        pages.append((status, time.monotonic() - began))
    line.close()


def one_phone(served, number: int, sent: list, gate: threading.Barrier | None, image: bytes) -> None:
    parts = [("audio", "note.wav", "audio/wav", recording(number)), *(("photo", f"{n}.jpg", "image/jpeg", image[:-8] + struct.pack("<II", number, n)) for n in range(2))]
    served.prepare(parts[0][3])
    if gate:
        gate.wait()
    began = time.monotonic()
    status, id, body = served.hand_in(parts=parts)
    sent.append((status, id, time.monotonic() - began, sum(len(part[3]) for part in parts), body[:200]))


def told(name: str, seconds: list[float]) -> str:
    ordered = sorted(seconds)
    at = lambda share: ordered[min(len(ordered) - 1, int(share * len(ordered)))]  # noqa: E731
    return f"{name}: p50 {statistics.median(ordered):.2f} s, p95 {at(0.95):.2f}, p99 {at(0.99):.2f}, most {ordered[-1]:.2f} ({len(ordered)})"


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--phones", type=int, default=50)
    parser.add_argument("--rounds", type=int, default=1)
    parser.add_argument("--engine", default="scripted", choices=("scripted", "whisper"))
    args = parser.parse_args()
    print(f"{os.cpu_count()} cores, load average before {os.getloadavg()[0]:.1f}")
    with tempfile.TemporaryDirectory() as home:
        served = serving.lay(Path(home)).start(args.engine)
        image, sent, alone, peak, pages, over = photo(0), [], [], {}, [], threading.Event()
        for number in range(3):
            one_phone(served, 1000 + number, alone, None, image)
        print(told("one phone alone, acknowledgement", [one[2] for one in alone]))
        watcher = threading.Thread(target=watch, args=(served, peak, pages, over))
        watcher.start()
        began, used = time.monotonic(), processor(served.process.pid)
        for round_number in range(args.rounds):
            gate = threading.Barrier(args.phones)
            phones = [threading.Thread(target=one_phone, args=(served, round_number * args.phones + number, sent, gate, image)) for number in range(args.phones)]
            for each in phones:
                each.start()
            for each in phones:
                each.join()
        took = time.monotonic() - began
        statuses = {status: sum(one[0] == status for one in sent) for status in {one[0] for one in sent}}
        print(told(f"{args.phones} phones at once, acknowledgement", [one[2] for one in sent]), statuses)
        print(f"{sum(one[3] for one in sent) / 1e6:.0f} MB in {took:.1f} s; the server used {(processor(served.process.pid) - used) / len(sent):.3f} s of processor a note")
        waiting = [note for note in sent if served.note(note[1])["state"] != "answered"]
        print(f"not answered yet when the last was acknowledged: {len(waiting)}")
        serving.PATIENCE = 900
        served.settled([one[1] for one in sent])
        print(f"all answered or told as unheard after {time.monotonic() - began:.0f} s ({args.engine} ears)")
        over.set()
        watcher.join()
        print(told("the log as a page meanwhile", [one[1] for one in pages]), {status for status, _ in pages})
        print("largest memory:", {name: f"{kb // 1024} MB" for name, kb in peak.items()}, f"load average {os.getloadavg()[0]:.1f}")
        lost = [one for one in sent + alone if one[0] != 201]
        assert not lost, lost[:3]
        assert served.stop() == 0
        print(json.dumps({"acknowledged": len(sent) + len(alone), "lost": 0}))


if __name__ == "__main__":
    main()
