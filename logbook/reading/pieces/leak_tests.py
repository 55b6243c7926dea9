"""Where a leak test stands in a note: it is told of no piece, or of the one before it."""

from __future__ import annotations

from logbook.reading.pieces import drafts
from logbook.reading.clauses.grammar import Row

_DRIPS = ("leaked", "leaks", "leaking", "leakage")


def leaks(row: Row, stated: Row, made, regions) -> None:
    """A leak test is an entry of its own, without a kind."""
    read = any(item.concept == "CFM" for item in row.items)
    tests = [at for at, item in enumerate(row.items) if item.concept == "LEAK_TEST" and stated.string[at] == row.string[at]]
    concepts = {item.concept for item in row.items}
    if not tests and read and "FT2" in concepts and ("INWG" in concepts or not any(draft.kind for draft in made)):  # so much air through so much duct is a test for leaks, whatever it is called
        tests = [at for at, item in enumerate(row.items) if item.concept in ("CFM", "FT2", "INWG") and stated.string[at] == row.string[at]][:1]
    tests = [at for at in tests if read or row.words(at, at + 1).lower() not in _DRIPS]  # "the roof leaked but this one stayed dry"
    if not tests:
        return
    at = tests[0]
    place = drafts.region_of(regions, at)
    holder = made[regions[place][1]]
    named = min((one.first for one in (holder.kind, holder.mark) if one is not None), default=0)
    ahead = named > row.sentence_end(at) and any(item.concept in ("CFM", "FT2") for item in row.items[at:named])  # the test is told before the piece
    if holder.kind is None and not ahead:
        holder.leak = True
        return
    start = at
    while start > regions[place][0] + 1 and row.items[start - 1].concept not in ("STOP", "QUERY"):
        start -= 1
    made.append(drafts.Draft(start, leak=True))
    regions.insert(place + 1, (start, len(made) - 1))
    back = _back_to_the_piece(row, at, regions[place + 2][0] if place + 2 < len(regions) else len(row.items))
    if back is not None:
        regions.insert(place + 2, (back, regions[place][1]))
    if ahead:  # "leak test on run three, …. Section twelve whistled": the piece comes behind the test
        own = regions[place][1]
        made.insert(own, made.pop())
        regions[:] = [(first, other + (own <= other < len(made) - 1)) for first, other in regions]
        regions[place], regions[place + 1] = (regions[place][0], own), (start, own)
        regions.insert(place + 2, (row.sentence_start(named), own + 1))


_OF_A_TEST = frozenset(("CFM", "FT2", "INWG", "LEAK_TEST", "STATIC"))
_OF_A_PIECE = frozenset(("STAPLED", "TAPED", "RUBBED", "VANES", "WIPED", "STAPLES", "TAPE", "CLOSURE"))


def _back_to_the_piece(row: Row, at: int, end: int) -> int | None:
    """ "The leak test on straight 105 came in high. Everything else is good, rubbed and stapled.": where what is told is of the piece again."""
    first = row.sentence_end(at) + 1
    while first < end:
        concepts = {item.concept for item in row.items[first : row.sentence_end(first)]}
        if concepts & _OF_A_PIECE and not concepts & _OF_A_TEST:
            return first
        first = row.sentence_end(first) + 1
    return None
