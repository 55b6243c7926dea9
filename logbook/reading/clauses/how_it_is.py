"""How a piece is, told behind what he will do to it: no part of his plan."""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row

_ACTED = ("STAPLED", "TAPED", "RUBBED", "TRIMMED", "SEALED")
_OF_IT = frozenset("IT SIDE SIDE_WORD DET BRANCH_WORD END JOINT PANEL".split())
_TO_COME = frozenset("WILL GOING_TO NEED PENDING IF".split())
_IS_NOT = ("isn't", "is not", "hasn't", "has not", "ain't", "'s not", "still isn't")


def is_so_now(row: Row, first: int, last: int) -> bool:
    """ "I need to go back to tee 24 tomorrow, the branch still isn't taped": whether these items tell of what is."""
    concepts = [item.concept for item in row.items[first:last]]
    at = next((k for k, concept in enumerate(concepts[:-1]) if concept == "NOT" and concepts[k + 1] in _ACTED), None)
    if not at or _OF_IT.isdisjoint(concepts[:at]) or not _TO_COME.isdisjoint(concepts):
        return False
    return row.words(first + at, first + at + 1).lower().replace("’", "'").startswith(_IS_NOT)
