"""The shipped face, and the one function that all words pass before they are typeset.

`face/characters.txt` lists the code points that all three files of the face have; a test reads them again from
the files. A PDF that is archived (PDF/A) may not hold a character without a shape.
"""

from __future__ import annotations

import unicodedata
from functools import cache
from importlib.resources import as_file, files
from pathlib import Path

NAME = "Atkinson Hyperlegible Next"
FILES = ("AtkinsonHyperlegibleNext-Regular.ttf", "AtkinsonHyperlegibleNext-Bold.ttf", "AtkinsonHyperlegibleNext-Italic.ttf")
LICENCE = "OFL.txt"
MISSING = "\u25a1"  # an empty square
BREAKS = str.maketrans({"\n": " ", "\r": " ", "\t": " ", "\u2028": " ", "\u2029": " ", "\u00a0": " "})


def folder() -> Path:
    """The folder of the face's files; the package is always installed as plain files."""
    with as_file(files("logbook") / "face") as path:
        return path


@cache
def characters() -> frozenset[str]:
    """Every character that regular, bold and italic can print."""
    found = set()
    for line in (folder() / "characters.txt").read_text(encoding="ascii").split():
        first, last = (int(part, 16) for part in line.split("-"))
        found.update(map(chr, range(first, last + 1)))
    return frozenset(found)


def printable(text: str) -> str:
    """The text with every character the face lacks, every control and private character as an empty square.

    Composed first (NFC), so that a letter with a loose accent keeps it; line breaks and tabs become spaces.
    """
    known = characters()
    composed = unicodedata.normalize("NFC", text.translate(BREAKS))
    return "".join(sign if sign in known else MISSING for sign in composed)


def printable_tree(value):
    """The same document with all its words printable; keys, numbers and truth values as they are."""
    match value:
        case str():
            return printable(value)
        case dict():
            return {key: printable_tree(one) for key, one in value.items()}
        case list() | tuple():
            return [printable_tree(one) for one in value]
    return value
