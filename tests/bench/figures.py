"""Every bench that matters for hearing in one command, and the page of its last results.

    python tests/bench/figures.py CLIPS [--only speed accuracy people waiting cold pages]      CLIPS: the folder that clips.py made
    python tests/bench/figures.py --draw                                                        the page anew from what was kept

Each part is measured, kept in `docs/figures.json` with its day and its machine (cores, processor family, load before it began; no
name of it), and `docs/figures.md` and `docs/figures.svg` are written from what is kept. `tests/test_figures.py` holds the page to
the data. A part that is not measured keeps its last result. `speed` needs faster-whisper for one of its rows (it is no dependency).
"""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
import tempfile
from datetime import date
from pathlib import Path
from xml.sax.saxutils import escape

HERE = Path(__file__).resolve().parent
DOCS = HERE.parents[1] / "docs"
sys.path[:0] = [str(HERE), str(HERE.parent)]

PARTS = ("speed", "accuracy", "people", "waiting", "cold", "pages")
LISTENERS = {
    "together": "ours, eight notes at once", "alone": "ours, note by note", "transcribe": "`whisper.transcribe`, warm",
    "faster int8": "faster-whisper int8, warm", "command": "the `whisper` command, its start included",
}  # fmt: skip


def machine() -> dict:
    """What the figures depend on, and nothing that names the machine."""
    told = {}
    for line in Path("/proc/cpuinfo").read_text().splitlines():
        name, _, value = line.partition(":")
        told.setdefault(name.strip(), value.strip())
    words = told.get("model name", "").replace("(R)", "").replace("(TM)", "").split()
    return {
        "processor": " ".join(words[:2]) or "?", "family": told.get("cpu family", "?"),
        "bfloat16": "avx512_bf16" in told.get("flags", "").split(), "cores": len(os.sched_getaffinity(0)), "load": round(os.getloadavg()[0], 1),
    }  # fmt: skip


# --- measuring: each part is one of the benches


def speed(clips: Path, notes: int) -> dict:
    return _kept("hearing.py", str(clips), "--clips", str(notes))


def accuracy(clips: Path, every: int) -> dict:
    import ears

    from logbook.hearing import engine

    rows = [row for row in json.loads((clips / "clips.json").read_text("utf-8")) if row["part"] == "open"][::every]
    heard, _ = ears.hear(engine.make("whisper"), rows, clips)
    scores = [ears.score(row, one) for row, one in zip(rows, heard, strict=True)]
    groups = {"all": scores}
    for row, one in zip(rows, scores, strict=True):
        groups.setdefault({"en": "English", "es": "Spanish"}[row["language"]], []).append(one)
        groups.setdefault(row["condition"], []).append(one)
    return {name: _counted(some) for name, some in groups.items()}


def _counted(scores: list[dict]) -> dict:
    from statistics import mean, median

    right, wrong, missed = sum(s["right"] for s in scores), sum(len(s["wrong"]) for s in scores), sum(len(s["missed"]) for s in scores)
    return {
        "notes": len(scores), "error": round(median(s["error"] for s in scores), 3), "error_mean": round(mean(s["error"] for s in scores), 3),
        "precision": round(right / max(1, right + wrong), 3), "f1": round(2 * right / max(1, 2 * right + wrong + missed), 3),
        "departs": sum(s["departs"] for s in scores), "wrong_meets": sum(len(s["wrong_meets"]) for s in scores),
    }  # fmt: skip


def pages() -> dict:
    return _kept("pages.py", "1000", "10000", "100000")


def _kept(bench: str, *words: str) -> dict:
    """In a process of its own, so that one bench's memory and threads are not another's."""
    with tempfile.TemporaryDirectory() as place:
        file = Path(place) / "kept.json"
        subprocess.run([sys.executable, HERE / bench, *words, "--keep", file], check=True)
        return json.loads(file.read_text("utf-8"))


def measured(part: str, given) -> dict:
    if part == "speed":
        return speed(given.clips, given.notes)
    if part == "accuracy":
        return accuracy(given.clips, given.every)
    return pages() if part == "pages" else _kept(f"{part}.py")  # people, waiting, cold


# --- the page, from what is kept


def written(kept: dict) -> str:
    lines = ["# Figures: what was measured last", "", *INTRODUCTION, ""]
    for part in PARTS:
        if part in kept:
            lines += [*TOLD[part](kept[part]["found"]), "", _where(kept[part]), ""]
    return "\n".join(lines)


INTRODUCTION = (
    "This page is written by `python tests/bench/figures.py CLIPS` from `docs/figures.json`; a test holds the two together. `CLIPS` is",
    "the folder that `tests/bench/clips.py` makes. Every figure is a ratio within one run or a law of growth: seconds are told to be",
    "compared with their neighbours, not with another machine. Voices are synthetic but for one table. How the settings were chosen is told",
    "in [hearing.md](hearing.md).",
    "",
    "![Time and right facts](figures.svg)",
)


def _where(row: dict) -> str:
    on = row["machine"]
    busy = f"busy with other work too (load {on['load']})" if on["load"] > on["cores"] / 2 else "doing nothing else"
    return f"*{row['date']}, {on['cores']} cores of {on['processor']} (family {on['family']}, bfloat16 {'yes' if on['bfloat16'] else 'no'}), {busy}.*"


def _table(head: str, rows: list[str]) -> list[str]:
    return [head, "|" + "---|" * (head.count("|") - 1), *rows]


def _speed(found: dict) -> list[str]:
    rows = [
        f"| {LISTENERS[one['listener']]} | {one['share']:.3f} | {one['times']:.1f} | {one['error_median']:.3f} / {one['error_mean']:.3f} |"
        for one in found["listeners"]
    ]
    return [
        "## How long hearing takes", "",
        f"The same base weights, {found['notes']} notes of {found['seconds']} s in all, two threads, word times included, one listener after another.", "",
        *_table("| listener | of the sound's length | times ours at once | word error, median / mean |", rows),
    ]  # fmt: skip


def _accuracy(found: dict) -> list[str]:
    rows = [
        f"| {name} | {one['notes']} | {one['error']:.3f} / {one['error_mean']:.3f} | {one['precision']:.3f} | {one['f1']:.3f} | {one['wrong_meets']} of {one['departs']} |"
        for name, one in found.items()
    ]
    return ["## What is heard", "", "Facts and verdicts of the hearing beside those of the written text, first hearing only.", "",
            *_table("| notes | count | word error, median / mean | precision of facts | F1 of facts | departures that came out as meets |", rows)]  # fmt: skip


def _people(found: dict) -> list[str]:
    return [
        "## Ordinary sentences by real people", "",
        f"{found['sentences']} sentences of a novel read aloud ({found['seconds']} s, in the public domain): word error {found['error']:.3f} with the trade's",
        f"expectations, {found['released']:.3f} by `whisper.transcribe` with the same weights. Trade words that nobody said: {len(found['invented'])}; facts: {len(found['facts'])}.",
        "Five sentences show that nothing runs away; they are too few to tell the two word errors apart.",
    ]  # fmt: skip


def _waiting(found: dict) -> list[str]:
    rows = [
        f"| with nothing beside them | {found['alone']:.1f} | 1.0 |",
        f"| handed in after a forgotten recording of {found['minutes']:g} minutes | {found['beside']:.1f} | {found['beside'] / found['alone']:.1f} |",
        f"| the same where it is heard in one go, as it was before | {found['before']:.1f} | {found['before'] / found['alone']:.1f} |",
    ]
    return [
        "## Who waits beside a forgotten microphone", "",
        *_table("| four short notes | seconds until the last is answered | times alone |", rows), "",
        f"A note that comes while it is being heard waited {found['later']:.1f} s at most. The forgotten recording itself took {found['long']:.0f} s"
        f" ({found['before_long']:.0f} in one go), the largest memory was {found['memory']:.0f} MB ({found['memory_before']:.0f} in one go).",
    ]  # fmt: skip


def _cold(found: dict) -> list[str]:
    rows = [
        f"| `logbook --help` | {found['help']:.2f} | an interpreter that does nothing | {found['interpreter']:.2f} | {found['help'] / found['interpreter']:.1f} |",
        f"| a server starts with a note of {found['seconds_of_sound']:.0f} s waiting, until its answer | {found['first_answer']:.1f} | released whisper from its start to the text"
        f" | {found['released']:.1f} | {found['first_answer'] / found['released']:.2f} |",
    ]
    return ["## Cold starts", "", *_table("| what | seconds | beside | seconds | times |", rows)]


def _pages(found: dict) -> list[str]:
    counts = list(found)
    slowest = sorted(found[counts[-1]], key=lambda page: -found[counts[-1]][page][1])[:12]
    rows = [f"| `{page}` | " + " | ".join(f"{found[count][page][0]:.0f} / {found[count][page][1]:.0f}" if page in found[count] else "–" for count in counts) + " |" for page in slowest]
    return ["## Pages of a long log", "", "Milliseconds of the processor for the slowest pages, median / 95 of 100, by the number of notes.", "",
            *_table("| page | " + " | ".join(f"{int(count):,}" for count in counts) + " |", rows)]  # fmt: skip


TOLD = {"speed": _speed, "accuracy": _accuracy, "people": _people, "waiting": _waiting, "cold": _cold, "pages": _pages}

WIDE, ROW, LEFT = 720, 24, 270


def drawn(kept: dict) -> str:
    """Bars: the time of each listener, the wait beside a forgotten recording, and F1 of facts by condition."""
    panels = []
    if "speed" in kept:
        panels.append(("Seconds of hearing for a second of sound", "#0b57a4", [(LISTENERS[one["listener"]].replace("`", ""), one["share"], f"{one['share']:.3f}") for one in kept["speed"]["found"]["listeners"]]))
    if "waiting" in kept:
        found = kept["waiting"]["found"]
        rows = (("alone", "alone"), ("beside", "beside a forgotten recording"), ("before", "beside it, heard in one go"))
        panels.append(("Seconds until four short notes are answered", "#a4420b", [(name, found[key], f"{found[key]:.1f}") for key, name in rows]))
    if "accuracy" in kept:
        panels.append(("F1 of facts", "#1b6e3c", [(name, one["f1"], f"{one['f1']:.2f}") for name, one in kept["accuracy"]["found"].items()]))
    high = sum(34 + ROW * len(rows) + 14 for _, _, rows in panels) + 10
    parts = [f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDE} {high}" font-family="sans-serif" font-size="14">', f'<rect width="{WIDE}" height="{high}" fill="#fff"/>']
    y = 10
    for title, colour, rows in panels:
        parts.append(f'<text x="12" y="{y + 18}" font-weight="bold">{escape(title)}</text>')
        y += 34
        most = max(value for _, value, _ in rows) or 1
        for name, value, text in rows:
            long = max(1.0, value / most * (WIDE - LEFT - 70))
            parts.append(f'<text x="{LEFT - 8}" y="{y + 16}" text-anchor="end">{escape(name)}</text>')
            parts.append(f'<rect x="{LEFT}" y="{y + 3}" width="{long:.1f}" height="{ROW - 7}" fill="{colour}"/><text x="{LEFT + long + 6:.1f}" y="{y + 16}">{text}</text>')
            y += ROW
        y += 14
    return "\n".join([*parts, "</svg>", ""])


def load() -> dict:
    file = DOCS / "figures.json"
    return json.loads(file.read_text("utf-8")) if file.exists() else {}


def keep(kept: dict) -> None:
    ordered = {part: kept[part] for part in PARTS if part in kept}
    (DOCS / "figures.json").write_text(json.dumps(ordered, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
    (DOCS / "figures.md").write_text(written(ordered), encoding="utf-8")
    (DOCS / "figures.svg").write_text(drawn(ordered), encoding="utf-8")


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("clips", type=Path, nargs="?")
    parser.add_argument("--only", nargs="+", choices=PARTS, default=PARTS)
    parser.add_argument("--draw", action="store_true", help="measure nothing")
    parser.add_argument("--notes", type=int, default=24, help="notes of `speed`")
    parser.add_argument("--every", type=int, default=1, help="of the open clips of `accuracy`")
    given = parser.parse_args()
    os.environ.setdefault("OMP_WAIT_POLICY", "PASSIVE")  # for every listener alike
    kept = load()
    for part in () if given.draw else given.only:
        if given.clips is None and part in ("speed", "accuracy"):
            parser.error(f"{part} needs the folder of clips")
        on = machine()
        kept[part] = {"date": date.today().isoformat(), "machine": on, "found": measured(part, given)}
        keep(kept)
    keep(kept)


if __name__ == "__main__":
    main()
