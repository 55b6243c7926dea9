"""Writes logbook/reading/words/known.json: what is reckoned of every pattern that notes in both languages bring up.

    python tests/making/known_patterns.py          writes it
    python tests/making/known_patterns.py --look   says whether it holds these patterns, and of every fourth what is reckoned of it (exit 1: it does not)
"""

from __future__ import annotations

import gc
import json
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE.parent), str(HERE.parent.parent)]
from reading_cases import FILES, drawn, sentences  # noqa: E402

from logbook.languages import LANGUAGES  # noqa: E402
from logbook.reading import read  # noqa: E402
from logbook.reading.own import asides  # noqa: E402
from logbook.reading.words.known import digest, reckoned, words_reckoned  # noqa: E402
from logbook.reading.words.likely import Likely  # noqa: E402

EVERY_FOURTH = "048c"  # first letters of the digests of which all is reckoned again
FILE = HERE.parent.parent / "logbook" / "reading" / "words" / "known.json"


def lines(whole: bool = True) -> dict[str, str | None]:
    """By digest, what stands in the file of each pattern; of three in four nothing where it is not asked for whole: reckoning takes longest."""
    for name in FILES:
        for case in drawn(sentences(name), 40):
            read(case.text, language=case.language)
    patterns = {one.pattern for one in gc.get_objects() if type(one) is Likely}
    worded = {pattern for code in LANGUAGES for pattern in asides.patterns(code)}
    found = {digest(pattern): pattern for pattern in patterns}
    return {key: line(pattern, pattern in worded) if whole or key[0] in EVERY_FOURTH else None for key, pattern in sorted(found.items())}


def line(pattern: str, worded: bool) -> str:
    one = reckoned(pattern)
    return json.dumps([*one[:4], sorted(one.opens), *([words_reckoned(pattern)] if worded else [])], ensure_ascii=False, separators=(",", ":"))


def main() -> int:
    if "--look" in sys.argv:
        kept = dict(row.rstrip(",").split(":", 1) for row in FILE.read_text(encoding="utf-8").splitlines()[1:-1])
        made = {f'"{key}"': one for key, one in lines(whole=False).items()}
        same = kept.keys() == made.keys() and all(one is None or one == kept[key] for key, one in made.items())
        print("as it would be written" if same else "the patterns have changed: python tests/making/known_patterns.py")
        return not same
    FILE.write_text("{\n" + ",\n".join(f'"{key}":{one}' for key, one in lines().items()) + "\n}\n", encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
