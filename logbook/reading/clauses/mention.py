"""One place of a note where a fitting is named: its kind, its mark, and whether it is another piece, one told of before, or one put right.

`headings` finds the places; here is what a place says, from the words of its heading and those right before and behind it.
"""

from __future__ import annotations

from dataclasses import dataclass

from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.marks import told_before, told_then


@dataclass(frozen=True, slots=True)
class Mention:
    """A place where a fitting is named."""

    first: int
    last: int
    kind: str | None = None
    kind_at: tuple[int, int] | None = None
    mark: str | None = None
    mark_at: tuple[int, int] | None = None
    another: bool = False
    amends: bool = False
    corrects: bool = False
    batch: tuple[tuple[str, tuple[int, int]], ...] = ()
    listed: int = -1  # place of the first of its list among the mentions, or -2 where it is the first
    pointed: bool = False  # a bare number behind an article: a piece only where something is said of it


def mention_at(row: Row, match, mark=None, batch=()) -> Mention:
    """The place that a match of the grammar names: groups `k` and `k2` its kind, `m` its mark, `on` and `lead` the words before it."""
    groups = match.re.groupindex
    at = match.start("k") if "k" in groups and match.start("k") >= 0 else None
    kind_at = None
    if at is not None and row.items[at].concept.startswith("K_"):
        kind_at = (at, at + 1)
    if "k2" in groups and match.start("k2") >= 0:
        kind_at = match.span("k2")
    kind = row.items[kind_at[0]].value if kind_at else None
    first = match.start()
    if "lead" in groups and match.start("lead") >= 0:
        while row.items[first].concept in ("COMMA", "AND") and first < match.end() - 1:
            first += 1
    for back in range(first - 1, max(-1, first - 7), -1):
        if row.items[back].concept in ("STOP", "QUERY", "NUM", "MARKED", "SIZE", "STAPLED", "TAPED", "RUBBED"):
            break
        if row.items[back].concept == "ANOTHER" and mark is not None:
            first = back
            break
    another = any(item.concept == "ANOTHER" for item in row.items[max(0, first - 2) : match.end()])
    amends = mark is not None and _returns_to(row, first)
    amends = amends or mark is not None and at is not None and (told_before(row, at + 1, match.start("m")) or told_then(row, match.end("m")))
    amends = amends or "back" in groups
    amends = amends or "on" in groups and match.start("on") >= 0 and row.items[match.start("on")].concept == "CORRECTION_ON"
    before = [item.concept for item in row.items[max(0, first - 3) : first]]
    corrects = "FIX" in before or (before[-2:] == ["NO", "COMMA"]) or before[-1:] == ["NO"]
    # "correction, fitting nine": the words right before it take back what was said of that fitting earlier
    if mark is not None and "FIX" in before and first <= 3 and set(before) <= {"FIX", "COMMA", "FILLER", "STOP"}:
        amends = True
    mark_at = match.span("m") if mark is not None else None
    return Mention(first, match.end(), kind, kind_at, mark, mark_at, another, amends, corrects, batch)


def _oh_and(row: Row, first: int) -> bool:
    """ "Oh, and cap nine": an afterthought on another piece."""
    said = row.text[row.items[max(0, first - 2)].start :].lower().replace(",", "").replace(".", "").split()[:4]
    return "oh" in said and said[said.index("oh") + 1 : said.index("oh") + 2] == ["and"]


def _returns_to(row: Row, first: int) -> bool:
    """ "Correction on wye nine", "back to tee two", "oh, and cap nine": words on a piece that was spoken of before."""
    at = first - 1
    while at >= 0 and row.items[at].concept in ("DET", "ON", "OF", "FITTING", "NUMBER", "COMMA", "AND"):
        at -= 1
    if at >= 0 and row.items[at].concept == "CORRECTION_ON":
        return True
    said = row.text[row.items[max(0, first - 4)].start : row.items[first].start].lower().replace(",", "").split()
    if first > 0 and _oh_and(row, first):
        return True
    return said[-2:] in (["back", "to"],) and (at < 2 or any(row.items[k].concept in ("STOP", "QUERY", "FILLER") for k in range(max(0, at - 3), at)))


def how_many(row: Row, one: Mention) -> bool:
    """ "Collar two. Three are still up.": so many of its tabs, and no piece of its own."""
    at = one.mark_at[1] if one.mark_at is not None else 0
    if one.kind is not None or one.batch or not 0 < at < len(row.items) or row.items[at].concept != "BE" or row.items[at - 1].concept != "NUM" or row.items[at - 1].value.digits:
        return False
    many = row.text[row.items[at].start : row.items[at].end].lower().split()[:1]
    return many in (["are"], ["were"]) and (at < 2 or row.items[at - 2].concept not in ("AND", "NUM", "TO", "THRU", "THROUGH", "ON", "IN", "OF", "NUMBER", "FITTING"))
