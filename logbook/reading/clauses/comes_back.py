"""Where, in a clause that tells of somebody else or of what is asked for, he comes back to a piece of his own: "Lou's got the squeegee so straight 47 isn't rubbed"."""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import in_any, words_of

_BETWEEN = frozenset(("DET", "FILLER", "SIDE", "SIDE_WORD", "PANEL", "JOINT", "FACING", "FLAP", "OF", "ON", "IN", "TAPE", "STAPLES", "VANES", "TABS", "GROOVE", "BE", "NUMBER", "SIZE", "QUESTION"))
_TELLS = frozenset(("BE", "HAVE", "STAPLED", "TAPED", "RUBBED", "HUNG", "NO", "NOT", "NOT_DONE", "WITHOUT", "GOT", "MISSING", "PENDING", "COMMA"))
_NAMES = ("NUM", "MARKED", "LETTER")
_FARTHEST = 6  # items from the word to the piece


def back_at(row: Row, first: int, last: int) -> int | None:
    """The item of the word ("so", "till then") behind which a piece is named by its number, and something is told of it."""
    for at in range(first, last - 2):
        if row.words(at, at + 1).lower().split()[-1] in words_of("elsewhere.comes_back") and _tells_of_a_piece(row, at + 1, last):
            return at
    return _why_it_was_turned_down(row, first, last)


def _why_it_was_turned_down(row: Row, first: int, last: int) -> int | None:
    """ "The inspector wrote up 88 because the staples run every four": that he did is his; why he did is how the piece is."""
    for at in range(first + 1, last - 1):
        if in_any("acts.because").match(row.words(at, at + 1).lower()) is not None:
            return at if in_any("told.voices.judges").search(row.words(first, at).lower()) is not None else None
    return None


def _tells_of_a_piece(row: Row, first: int, last: int) -> bool:
    for at in range(first, min(first + _FARTHEST, last - 1)):
        concept = row.items[at].concept
        if concept.startswith("K_") or concept == "FITTING":
            return row.items[at + 1].concept in _NAMES and (at + 2 >= last or any(row.items[k].concept in _TELLS for k in range(at + 2, min(at + 5, last))))
        if concept not in _BETWEEN:
            return False
    return False
