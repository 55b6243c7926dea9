"""How well the ears hear: word error, facts, wrong meets and doubt on the clips that `clips.py` made.

    python tests/bench/ears.py FOLDER [--part open|held|ordinary] [--every N] [--keep FILE]

What a clip should give is what the reader and the rules make of its written text; what it gives is what they make
of the hearing. So the reader's own mistakes cancel and what is left is the ears'. Prints, asserts nothing.

* word error: folded as `folding.py` folds (numbers as digits), median over clips;
* facts: precision and F1 over (fitting, name, value);
* wrong meets: a rule that departs on the written words and meets on the heard ones. There must be none;
* lost departures: departs on the written words, no finding at all on the heard ones (the fact was not heard);
* trade words invented: heard oftener than said;
* doubtful: findings that the written words settle and the heard ones leave `unclear`.
"""

from __future__ import annotations

import argparse
import json
import sys
import time
from collections import Counter, defaultdict
from pathlib import Path
from statistics import mean, median

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE), str(HERE.parent)]

from folding import errors, fold  # noqa: E402
from reading_cases import facts_read  # noqa: E402

from logbook import pipeline  # noqa: E402
from logbook.decoding import sound  # noqa: E402
from logbook.hearing import engine  # noqa: E402
from logbook.reading import read  # noqa: E402
from logbook.transcript import Transcript, to_json  # noqa: E402

AT_ONCE = 8
TRADE = frozenset(
    "fitting run transition elbow tee wye collar cap plenum offset straight shiplap butt edge stapled staples taped tape"
    " mastic rubbed scrim vanes female male flap tabs facing clinched groove panel trimmed"
    " pieza línea transición codo derivación tapa collarín rebaje grapada grapas cinta frotada aletas hembra macho masilla".split()
)


def hear(ears, rows: list[dict], folder: Path) -> tuple[list[Transcript], float]:
    """Transcripts in the order of `rows`, and the seconds of hearing for each second of sound."""
    sounds = [sound.decode(folder / row["file"]) for row in rows]
    found: list[Transcript] = []
    began = time.perf_counter()
    for first in range(0, len(rows), AT_ONCE):
        some = slice(first, first + AT_ONCE)
        found += ears.hear(sounds[some], languages=[row["language"] for row in rows[some]])
    return found, (time.perf_counter() - began) / sum(one.seconds for one in sounds)


def verdicts(document: dict) -> dict[tuple[int, str], str]:
    return {
        (entry["position"], finding["rule"]): finding["verdict"]
        for entry in document["fittings"]
        for finding in entry["findings"]
    }


def score(row: dict, heard: Transcript) -> dict:
    language, text = row["language"], row["text"]
    said, got = fold(text, language), fold(heard.text, language)
    facts = facts_read(read(text, language=language))
    facts_heard = facts_read(read(heard.text, language=language, transcript=heard)) if heard.text else set()
    should, came = verdicts(pipeline.check(text, language=language)), verdicts(pipeline.check(heard, language=language)) if heard.text else {}
    trade = lambda words: Counter(word for word in words if word in TRADE)  # noqa: E731
    return {
        "error": errors(said, got) / max(1, len(said)),
        "right": len(facts & facts_heard),
        "missed": sorted(map(str, facts - facts_heard)),
        "wrong": sorted(map(str, facts_heard - facts)),
        "departs": sum(verdict == "departs" for verdict in should.values()),
        "wrong_meets": sorted(f"{at}:{rule}" for (at, rule), v in should.items() if v == "departs" and came.get((at, rule)) == "meets"),
        "wrong_departs": sorted(f"{at}:{rule}" for (at, rule), v in should.items() if v == "meets" and came.get((at, rule)) == "departs"),
        "caught": sum(v == "departs" and came.get(key) in ("departs", "unclear") for key, v in should.items()),
        "settled": sum(v in ("meets", "departs") for v in should.values()),
        "doubtful": sum(v in ("meets", "departs") and came.get(key) == "unclear" for key, v in should.items()),
        "trade": sum(trade(said).values()),
        "trade_heard": sum((trade(said) & trade(got)).values()),
        "invented": sum((trade(got) - trade(said)).values()),
    }


def line(name: str, scores: list[dict]) -> str:
    right, missed = sum(s["right"] for s in scores), sum(len(s["missed"]) for s in scores)
    wrong = sum(len(s["wrong"]) for s in scores)
    total = lambda key: sum(s[key] if isinstance(s[key], int) else len(s[key]) for s in scores)  # noqa: E731
    return (
        f"{name:28} {len(scores):3}  error {median(s['error'] for s in scores):.3f}/{mean(s['error'] for s in scores):.3f}"
        f"  precision {right / max(1, right + wrong):.3f}  F1 {2 * right / max(1, 2 * right + missed + wrong):.3f}"
        f"  wrong meets {total('wrong_meets')} of {total('departs')} (caught {total('caught')})  wrong departs {total('wrong_departs')}"
        f"  doubtful {total('doubtful')} of {total('settled')}"
        f"  trade {total('trade_heard')} of {total('trade')}, invented {total('invented')}"
    )


def table(rows: list[dict], scores: list[dict]) -> list[str]:
    groups = defaultdict(list)
    for row, one in zip(rows, scores, strict=True):
        groups["all"].append(one)
        for key in ("language", "condition", "kind", "voice"):
            groups[f"{key} {row.get(key)}"].append(one)
    return [line(name, some) for name, some in groups.items()]


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("folder", type=Path)
    parser.add_argument("--part", default="open")
    parser.add_argument("--every", type=int, default=1)
    parser.add_argument("--keep", type=Path, help="write transcripts and scores there, as JSON")
    given = parser.parse_args()
    rows = [r for r in json.loads((given.folder / "clips.json").read_text("utf-8")) if r["part"] == given.part][:: given.every]
    ears = engine.make("whisper")
    heard, share = hear(ears, rows, given.folder)
    scores = [score(row, one) for row, one in zip(rows, heard, strict=True)]
    print("\n".join(table(rows, scores)))
    print(f"hearing took {share:.3f} of the sound, {AT_ONCE} at once, {ears.settings}")
    if given.keep:
        kept = [{"clip": r, "transcript": to_json(h), "score": s} for r, h, s in zip(rows, heard, scores, strict=True)]
        given.keep.write_text(json.dumps(kept, ensure_ascii=False, indent=1), encoding="utf-8")


if __name__ == "__main__":
    main()
