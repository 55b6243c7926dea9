"""Crew phrases of the job ("closed our way"): said aloud they expand to the facts the job lists."""

from __future__ import annotations

from dataclasses import dataclass

from logbook.reading.tokens import Token, tokens


@dataclass(frozen=True, slots=True)
class Said:
    facts: tuple[str, ...]
    first: int  # tokens
    last: int
    start: int
    end: int


def phrases_said(found: tuple[Token, ...], job, language: str) -> tuple[Said, ...]:
    """Every standing phrase that stands in the text word for word."""
    made: list[Said] = []
    for code, words, facts in getattr(job, "phrases", None) or ():
        if code not in (language, None, ""):
            continue
        wanted = [t.bare for t in tokens(words)]
        if not wanted:
            continue
        for at in range(len(found) - len(wanted) + 1):
            if all(found[at + k].bare == word for k, word in enumerate(wanted)):
                made.append(Said(tuple(facts), at, at + len(wanted), found[at].start, found[at + len(wanted) - 1].end))
    return tuple(made)
