"""Words on a piece that was told of in an earlier note: "regarding piece two recorded this morning", "the entry for tee nine overstated it"."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.fell_short import patterns
from logbook.reading.grammar import Row
from logbook.reading.headings import Mention

_MOST = 400  # characters of a sentence looked at


def told_of_before(row: Row, named: list[Mention], language: Language) -> list[Mention]:
    """The pieces, those amended that a sentence says were recorded before."""
    return [replace(one, amends=True) if one.mark is not None and not one.amends and _speaks_of_a_record(row, one, language) else one for one in named]


def _speaks_of_a_record(row: Row, one: Mention, language: Language) -> bool:
    first, last = one.first, one.last
    while first > 0 and row.items[first - 1].concept not in ("STOP", "QUERY"):
        first -= 1
    while last < len(row.items) and row.items[last].concept not in ("STOP", "QUERY"):
        last += 1
    said = row.words(first, last).lower().replace("’", "'")[:_MOST]
    return any(pattern.search(said) for pattern, _ in patterns(language.code, "records"))
