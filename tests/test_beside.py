"""A plain sentence beside a note turns no act of it from not done to done: what departs goes on departing, whatever is said next.

Of the notes of the reader's cases that deny an act every other is read with one sentence of `cases/beside/` behind it.
"""

from functools import cache
from pathlib import Path
from zlib import crc32

import pytest
from reading_cases import FILES, Case, Said, drawn, sentences

from logbook.reading import read

BESIDE = Path(__file__).parent / "cases" / "beside"


@cache
def besides(language: str) -> list[tuple[str | None, str]]:
    lines = (BESIDE / {"en": "english.txt", "es": "spanish.txt"}[language]).read_text(encoding="utf-8").splitlines()
    parted = (line.rpartition(" | ") for line in lines if line and not line.startswith("#"))
    return [(act or None, said) for act, _, said in parted]


def denied(case: Case) -> list[tuple[str, str]]:
    """(mark, act) of what a note on one piece says that was not done."""
    facts = case.fittings[0] if len(case.fittings) == 1 and case.text.rstrip().endswith(".") else {}
    mark = facts["mark"].value if "mark" in facts else None
    return [(mark, name) for name, said in facts.items() if isinstance(said, Said) and said.value is False]


def with_one_beside(case: Case) -> str | None:
    """The note and one of the sentences, always the same; None where none is free of what the note tells."""
    told = set(case.fittings[0])
    free = [said for act, said in besides(case.language) if act not in told and not (act and act[:4] in case.text.lower())]
    return f"{case.text} {free[crc32(case.text.encode()) % len(free)]}" if free else None


@pytest.mark.parametrize("name", FILES)
def test_what_is_said_beside_makes_nothing_done(name):
    turned = []
    for case in drawn(sentences(name), 2):
        text = with_one_beside(case) if denied(case) else None
        done = {(entry.fact("mark").value if entry.fact("mark") else None, fact.name) for entry in read(text).fittings for fact in entry.facts if fact.value is True} if text else set()
        turned += [f"{text} -> {act}" for mark, act in denied(case) if (mark, act) in done]
    assert not turned, "\n".join(turned)
