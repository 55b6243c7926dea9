"""How often a fact is right, by how well its words were heard: the curve from which the doubt limits come, as SVG.

    python tests/bench/ears.py FOLDER --keep kept.json
    python tests/bench/doubting.py kept.json [more.json …] --draw docs/hearing-doubt.svg

`heard` of a fact is its least likely word. Numbers and words are counted apart, in steps of a tenth; right means that
the written text of the clip gives the same fact.
"""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from logbook.facts import BY_NAME  # noqa: E402
from logbook.limits import BY_NAME as LIMITS  # noqa: E402
from logbook.reading import read  # noqa: E402
from logbook.transcript import from_json  # noqa: E402

WORDS = ("flag", "choice", "text", "sides", "marks")
WIDE, HIGH, LEFT, TOP = 640, 360, 60, 30
COLOURS = {"numbers": "#0b57a4", "words": "#a4420b"}


def counted(files: list[Path]) -> dict[str, list[list[int]]]:
    """Sort of fact -> for each tenth of probability [wrong, right]."""
    found = {sort: [[0, 0] for _ in range(10)] for sort in COLOURS}
    for kept in (row for file in files for row in json.loads(file.read_text("utf-8"))):
        heard, language = from_json(kept["transcript"]), kept["clip"]["language"]
        said = {(e.position, f.name, f.value) for e in read(kept["clip"]["text"], language=language).fittings for f in e.facts}
        for entry in read(heard.text, language=language, transcript=heard).fittings:
            for fact in (fact for fact in entry.facts if fact.heard is not None):
                sort = "words" if BY_NAME[fact.name].shape in WORDS else "numbers"
                found[sort][min(9, int(fact.heard * 10))][(entry.position, fact.name, fact.value) in said] += 1
    return found


def drawn(found: dict[str, list[list[int]]]) -> str:
    def x(share: float) -> float:
        return LEFT + share * (WIDE - LEFT - 20)

    def y(share: float) -> float:
        return TOP + (1 - share) * (HIGH - TOP - 50)

    parts = [f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDE} {HIGH}" font-family="sans-serif" font-size="13">',
             f'<rect width="{WIDE}" height="{HIGH}" fill="#fff"/>']  # fmt: skip
    for tenth in range(0, 11, 2):
        share = tenth / 10
        parts.append(f'<path d="M{x(0)} {y(share)}H{x(1)}M{x(share)} {y(0)}V{y(1)}" stroke="#ddd" fill="none"/>')
        parts.append(f'<text x="{LEFT - 8}" y="{y(share) + 4}" text-anchor="end">{tenth * 10} %</text>')
        parts.append(f'<text x="{x(share)}" y="{y(0) + 18}" text-anchor="middle">{share:g}</text>')
    parts.append(f'<text x="{x(0.5)}" y="{HIGH - 10}" text-anchor="middle">probability of the least likely word of a fact</text>')
    parts.append(f'<text x="{LEFT}" y="18">facts that were right</text>')
    for place, (sort, colour) in enumerate(COLOURS.items()):
        points = [((n + 0.5) / 10, right / (wrong + right), wrong + right) for n, (wrong, right) in enumerate(found[sort]) if wrong + right]
        parts.append(f'<polyline points="{" ".join(f"{x(a):.1f},{y(b):.1f}" for a, b, _ in points)}" fill="none" stroke="{colour}" stroke-width="2"/>')
        parts += [f'<circle cx="{x(a):.1f}" cy="{y(b):.1f}" r="{2 + min(6, n**0.5 / 2):.1f}" fill="{colour}"/>' for a, b, n in points]
        limit = float(LIMITS["faint" if sort == "words" else "faint_number"].default)
        parts.append(f'<path d="M{x(limit)} {y(0)}V{y(1)}" stroke="{colour}" stroke-dasharray="5 4"/>')
        parts.append(f'<text x="{x(1) - 4}" y="{y(0.28) + 20 * place}" text-anchor="end" fill="{colour}">{sort}: unclear below {limit:g}</text>')
    return "\n".join([*parts, "</svg>", ""])


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("files", nargs="+", type=Path)
    parser.add_argument("--draw", type=Path)
    given = parser.parse_args()
    found = counted(given.files)
    for sort, rows in found.items():
        for n, (wrong, right) in enumerate(rows):
            print(f"{sort:8} {n / 10:.1f}  right {right:4}  wrong {wrong:4}  {right / max(1, wrong + right):.2f}")
    if given.draw:
        given.draw.write_text(drawn(found), encoding="utf-8")


if __name__ == "__main__":
    main()
