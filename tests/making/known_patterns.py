"""Writes logbook/reading/words/known.json: what is reckoned of every pattern that notes in both languages bring up.

    python tests/making/known_patterns.py          writes it
    python tests/making/known_patterns.py --look   says whether it is as it would be written (exit 1: it is not)
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

FILE = HERE.parent.parent / "logbook" / "reading" / "words" / "known.json"


def lines() -> dict[str, str]:
    """By digest, what stands in the file of each pattern."""
    for name in FILES:
        for case in drawn(sentences(name), 40):
            read(case.text, language=case.language)
    patterns = {one.pattern for one in gc.get_objects() if type(one) is Likely}
    found = {digest(pattern): reckoned(pattern) for pattern in patterns}
    worded = {digest(pattern): words_reckoned(pattern) for code in LANGUAGES for pattern in asides.patterns(code)}
    return {key: json.dumps([*one[:4], sorted(one.opens), *([worded[key]] if key in worded else [])], ensure_ascii=False, separators=(",", ":")) for key, one in sorted(found.items())}


def main() -> int:
    made = "{\n" + ",\n".join(f'"{key}":{line}' for key, line in lines().items()) + "\n}\n"
    if "--look" in sys.argv:
        same = FILE.read_text(encoding="utf-8") == made
        print("as it would be written" if same else "the patterns have changed: python tests/making/known_patterns.py")
        return not same
    FILE.write_text(made, encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
