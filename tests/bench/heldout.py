"""How the reader does on notes it was never tuned on: F1 of facts, what was missed, what was invented. Prints, asserts nothing.

    python tests/bench/heldout.py [--worst]
"""

from __future__ import annotations

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from reading_cases import CASES, facts_of, facts_read, load  # noqa: E402

from logbook.reading import read  # noqa: E402


def main() -> None:
    for path in sorted((CASES / "heldout").glob("*.txt")):
        hits = missed = invented = 0
        wrong = []
        cases = load(path)
        for case in cases:
            said, got = facts_of(case), facts_read(read(case.text))
            hits, missed, invented = hits + len(said & got), missed + len(said - got), invented + len(got - said)
            if said != got:
                wrong.append((len(said ^ got), case.text, said - got, got - said))
        print(f"{path.stem:12} {len(cases):3} notes  F1 {2 * hits / (2 * hits + missed + invented):.4f}  missed {missed}  invented {invented}  notes not exact {len(wrong)}")
        if "--worst" in sys.argv:
            for _, text, lost, made in sorted(wrong, key=lambda row: -row[0])[:10]:
                print("  >", text, "\n      missed", sorted(map(str, lost)), "\n      invented", sorted(map(str, made)))


if __name__ == "__main__":
    main()
