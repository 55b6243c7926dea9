"""Collects what base Whisper writes for the words of the trade, so that the lexicon's aliases rest on counts.

    python tests/bench/mishearings.py WORK [--part collect|check|ordinary] [--times 3] [--seed 1]

speaks the sentences of `trade_speech.toml` in several synthetic voices over several sites (`clips.py` makes both),
hears them with the project's own engine in this process, and lays what was written over what was said. For every
trade word it prints how often it was said, how often it was read as itself (its recall), and what was written where it
was not. `WORK/PART-SEED.json` keeps every sentence with what was heard: run it again without hearing with `--again`
after the lexicon changed. Voices are synthetic: the counts tell one spelling from another, not how well people are heard.
"""

from __future__ import annotations

import argparse
import json
import random
import sys
import tomllib
from collections import Counter, defaultdict
from pathlib import Path

import numpy as np
from rapidfuzz import fuzz

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE))

import clips  # noqa: E402

from logbook.reading.composed.compose import compose  # noqa: E402
from logbook.reading.words.items import book, itemise  # noqa: E402
from logbook.reading.words.tokens import tokens  # noqa: E402

TRADE = frozenset(
    "STAPLED STAPLES STAPLE TAPED TAPE RUBBED RUB SCRIM SHOWS VANES SHIPLAP BUTT GROOVE INSIDE FEMALE MALE FLAP TABS CLINCHED BENT WIPED"
    " PREHEATED TRIMMED GAP TIGHT DAMAGE NO_DAMAGE REPAIRED METHOD C_MASTIC CLOSURE MARK181 HUNG TIED PANEL SEATED TIE_RODS SCREWS WASHERS"
    " ON_ITS_OWN BOARD STATIC THROAT OFFSETS SLOPE LEAK_TEST RUN FITTING LEVEL LAID CUT_TO CUT_LENGTH EVERY APART BACK BRANCH_WORD INLET"
    " FACING AIR LEAVES MOVE_IN MOVE_DOWN MOVE_UP SERVICE EI JOINT".split()
)
SKIP = 0.55  # what leaving a word out or putting one in costs, where a wholly other word costs 1


def sentences(language: str, part: str, seed: int) -> list[str]:
    r = random.Random(seed)
    number = clips.en if language == "en" else clips.es
    by = " by " if language == "en" else " por "
    even = (8, 10, 12, 14, 16, 18, 20, 24, 30)

    def filled(text: str) -> str:
        for slot, make in (
            ("{s}", lambda: number(r.choice(even)) + by + number(r.choice(even))),
            ("{m}", lambda: number(r.randint(2, 40))),
            ("{r}", lambda: number(r.randint(1, 7))),
            ("{l}", lambda: number(r.choice((12, 18, 20, 24, 30, 36)))),
            ("{b}", lambda: number(r.randint(2, 6))),
        ):
            while slot in text:
                text = text.replace(slot, make(), 1)
        return text

    return [filled(text) for text in tomllib.loads((HERE / "trade_speech.toml").read_text(encoding="utf-8"))[language][part]]


def heard(plan: list[dict], threads: int) -> None:
    """Speaks and hears every row of the plan; puts `heard` into it."""
    import tempfile

    from logbook.decoding.sound import Sound
    from logbook.hearing import engine

    ears = engine.make("whisper", threads=threads)
    with tempfile.TemporaryDirectory() as folder:
        raw = Path(folder) / "raw.wav"
        for start in range(0, len(plan), 8):
            rows, sounds = plan[start : start + 8], []
            for row in rows:
                clips.speak(row["voice"], row["said"], raw)
                samples = clips.on_site(row["site"], clips.load(raw), row["n"]).astype(np.float32)
                sounds.append(Sound(samples, samples.size / clips.RATE, samples.size / clips.RATE, f"{row['n']}"))
            for row, transcript in zip(rows, ears.hear(sounds, languages=[row["language"] for row in rows])):
                row["heard"], row["seconds"] = transcript.text, sounds[rows.index(row)].seconds
            print(f"{start + len(rows)} of {len(plan)}", file=sys.stderr, flush=True)


def items(text: str, language: str):
    return compose(itemise(tokens(text), book(language)), text)


def laid_over(said, written) -> list[tuple[int | None, int | None]]:
    """The cheapest way to lay one line of words over another: pairs of places, None where one has no mate."""
    alike = [[1 - fuzz.ratio(a.low, b.low) / 100 for b in written] for a in said]
    cost = [[0.0] * (len(written) + 1) for _ in range(len(said) + 1)]
    for i in range(len(said) + 1):
        for j in range(len(written) + 1):
            if i or j:
                cost[i][j] = min(
                    cost[i - 1][j] + SKIP if i else 9e9,
                    cost[i][j - 1] + SKIP if j else 9e9,
                    cost[i - 1][j - 1] + alike[i - 1][j - 1] if i and j else 9e9,
                )
    pairs, i, j = [], len(said), len(written)
    while i or j:
        if i and j and cost[i][j] == cost[i - 1][j - 1] + alike[i - 1][j - 1]:
            i, j = i - 1, j - 1
            pairs.append((i, j))
        elif i and cost[i][j] == cost[i - 1][j] + SKIP:
            i -= 1
            pairs.append((i, None))
        else:
            j -= 1
            pairs.append((None, j))
    return pairs[::-1]


def compared(row: dict):
    """(trade word, its concept, what was written there, whether it was read as itself) of one sentence."""
    said, written = tokens(row["said"]), tokens(row["heard"])
    pairs = laid_over(said, written)
    mine, theirs = items(row["said"], row["language"]), items(row["heard"], row["language"])
    for item in mine:
        if item.concept not in TRADE and not item.concept.startswith("K_"):
            continue
        places = [n for n, (i, _) in enumerate(pairs) if i is not None and item.first <= i < item.last]
        if not places:
            continue
        first, last = places[0], places[-1] + 1
        while first > 0 and pairs[first - 1][0] is None:
            first -= 1
        while last < len(pairs) and pairs[last][0] is None:
            last += 1
        there = [j for _, j in pairs[first:last] if j is not None]
        here = [other for other in theirs if there and other.first <= max(there) and other.last > min(there)]
        near = [other for other in theirs if there and other.first <= max(there) + 1 and other.last > min(there) - 1]
        right = any(other.concept == item.concept and other.value == item.value for other in near)
        yield item_words(row["said"], item), item.concept, " ".join(w.low for w in written[min(there) : max(there) + 1]) if there and here else "", right


def item_words(text: str, item) -> str:
    return text[item.start : item.end].lower()


def told(rows: list[dict]) -> None:
    total, right = Counter(), Counter()
    wrong: dict[tuple[str, str], Counter] = defaultdict(Counter)
    for row in rows:
        for word, concept, written, good in compared(row):
            total[concept] += 1
            right[concept] += good
            if not good:
                wrong[word, concept][written] += 1
    for concept in sorted(total, key=lambda c: right[c] / total[c]):
        print(f"{concept:14} said {total[concept]:4}  read as itself {right[concept]:4}  {right[concept] / total[concept]:.3f}")
    print(f"all            said {sum(total.values()):4}  read as itself {sum(right.values()):4}  {sum(right.values()) / sum(total.values()):.4f}")
    for (word, concept), others in sorted(wrong.items(), key=lambda row: -sum(row[1].values())):
        print(f"  {word} ({concept}): " + ", ".join(f"{written or '-'} {count}" for written, count in others.most_common(12)))


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("work", type=Path)
    parser.add_argument("--part", choices=("collect", "check", "ordinary"), default="collect")
    parser.add_argument("--times", type=int, default=3, help="voices a sentence is spoken in")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--threads", type=int, default=2)
    parser.add_argument("--again", action="store_true", help="compare what was heard before; hear nothing")
    args = parser.parse_args()
    args.work.mkdir(parents=True, exist_ok=True)
    kept = args.work / f"{args.part}-{args.seed}.json"
    if not args.again:
        plan = []
        for language, voices in (("en", clips.EN_VOICES), ("es", clips.ES_VOICES)):
            for time in range(args.times):
                for n, said in enumerate(sentences(language, args.part, args.seed * 100 + time)):
                    voice = voices[(n + time * 3 + args.seed) % len(voices)]
                    site = clips.CONDITIONS[(n // 2 + time * 2 + args.seed) % len(clips.CONDITIONS)]
                    plan.append({"n": len(plan), "language": language, "said": said, "voice": voice, "site": site})
        heard(plan, args.threads)
        kept.write_text(json.dumps(plan, ensure_ascii=False, indent=1) + "\n", encoding="utf-8")
    rows = json.loads(kept.read_text(encoding="utf-8"))
    for language in ("en", "es"):
        some = [row for row in rows if row["language"] == language]
        print(f"\n{language}: {len(some)} sentences, {sum(row['seconds'] for row in some):.0f} s of sound")
        told(some)


if __name__ == "__main__":
    main()
