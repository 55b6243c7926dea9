"""Crew phrases of the job ("closed our way"): said aloud they expand to the facts the job lists."""

from __future__ import annotations

from dataclasses import dataclass

from logbook.reading.words.tokens import Token, tokens


@dataclass(frozen=True, slots=True)
class PhraseSaid:
    facts: tuple[tuple[str, object], ...]
    first: int  # tokens first to last - 1
    last: int
    start: int
    end: int


def phrases_said(found: tuple[Token, ...], job, language: str) -> tuple[PhraseSaid, ...]:
    """Every crew phrase of `job` (or of none, where it is None) that stands in the text word for word."""
    made: list[PhraseSaid] = []
    for phrase in job.phrases if job is not None else ():
        wanted = [token.bare for token in tokens(phrase.words)]
        if phrase.language not in (None, language) or not wanted:
            continue
        for at in range(len(found) - len(wanted) + 1):
            if all(found[at + k].bare == word for k, word in enumerate(wanted)):
                made.append(PhraseSaid(phrase.facts, at, at + len(wanted), found[at].start, found[at + len(wanted) - 1].end))
    return tuple(made)
