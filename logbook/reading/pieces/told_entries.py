"""The entries of a reading, from the drafts of its pieces and the claims that each of them kept."""

from __future__ import annotations

from collections.abc import Iterable

from logbook.facts import BY_NAME
from logbook.reading.pieces import entries
from logbook.reading.clauses.claims import Claim, Open
from logbook.reading.pieces.drafts import Draft
from logbook.reading.clauses.grammar import Row
from logbook.reading.compared.in_its_clause import UNHEDGED
from logbook.reading.words.items import WHOLE
from logbook.reading.words.phrasing import in_any
from logbook.said import Earlier, Entry, Fact, OpenItem, SameAs, Span

Kept = list[tuple[Claim, bool]]  # the claims of a piece, and whether each is at odds with another


def told_entries(row: Row, made: list[Draft], done: list[Kept]) -> tuple[Entry, ...]:
    """An entry of each piece of which something was told, in order."""
    kept: list[tuple[int, Entry]] = []
    where: dict[int, int] = {}
    for place, draft in enumerate(made):
        own = [(one, conflict, None) for one, conflict in done[place] if one.name in BY_NAME]
        opens = [item for one, _ in done[place] for item in one.opens]
        if not own and not opens and draft.same_as is None and not draft.withdrawn:
            continue
        if not _worth(row, own, opens, draft) or _only_goes_on(row, draft, own):
            continue
        where[place] = len(kept)
        kept.append((place, own))
    entries_made = []
    for place, own in kept:
        draft = made[place]
        rows = own + [(one, False, where[source]) for one, source in draft.carried if source in where]
        rows.sort(key=lambda r: entries.order(r[0]) if r[2] is None or not r[0].also else (1, r[0].also[-1][1], 0, 0))
        facts = tuple(fact_of(one, row, conflict, source) for one, conflict, source in rows)
        opens = tuple(OpenItem(row.text[o.start : o.end], o.about, o.denies, o.start, o.end) for o in _each_once(o for one, _ in done[place] for o in one.opens))
        withdrawn = tuple(Earlier(b.value, row.text[b.start : b.end], b.start, b.end, name=b.name) for b in draft.withdrawn)
        same = None
        if draft.same_as is not None:
            copy, names = draft.same_as
            same = SameAs(copy.mark, copy.run, copy.names, names, row.text[copy.start : copy.end], copy.start, copy.end)
        entries_made.append(Entry(where[place], facts, opens, withdrawn, draft.amends, same))
    return tuple(entries_made)


def _each_once(opens: Iterable[Open]) -> list[Open]:
    """Work that two ways of reading found in the same words is left once."""
    kept: list[Open] = []
    for one in opens:
        if not any((one.about, one.denies) == (other.about, other.denies) and one.start < other.end and one.end > other.start for other in kept):
            kept.append(one)
    return kept


def _worth(row: Row, own, opens, draft) -> bool:
    """An entry that says nothing but where and on which run ("all good on run two") is none."""
    names = {one.name for one, *_ in own}
    barred = any(one.name == "place" and any(item.value == WHOLE for item in row.items[one.first : one.last]) for one, *_ in own)  # "la que va bajo tierra es la 78"
    if draft.pointed and draft.kind is None and not barred:  # "nos vemos el quince"
        names -= {"mark"}
    if draft.mark is None and draft.kind is None and any(one.name == "stage" and one.value == "made" for one, *_ in own):
        names = names - {"stage"}
    if draft.mark is None and draft.kind is None and all(one.about == "other" for one in opens):
        opens = ()  # "just waiting on the lift"
    if draft.mark is None and draft.kind is None and own and all(one.value is False and in_any("acts.short_of").search(row.words(one.first, one.last).lower()) for one, *_ in own):
        names, opens = set(), ()  # "we're out of staples, somebody bring up a box": no piece was told of
    return bool(opens or draft.same_as or draft.withdrawn or names - {"run", "place", "service"})


def _only_goes_on(row: Row, draft, own) -> bool:
    """ "Moving on to the cap": what he turns to next; nothing is said of it yet."""
    if draft.mark is not None or [one.name for one, *_ in own if one.name not in ("run", "place", "service")] != ["kind"]:
        return False
    said = row.text[max(0, draft.kind.start - 24) : draft.kind.start].lower()
    return draft.another and any(words in said for words in ("moving on", "on to", "onto", "next", "sigue", "siguiente", "sigo", "seguimos"))


def fact_of(one: Claim, row: Row, conflict: bool, source: int | None = None) -> Fact:
    return Fact(
        name=one.name,
        value=one.value,
        words=row.text[one.start : one.end],
        start=one.start,
        end=one.end,
        hedged=one.hedged and one.name not in UNHEDGED,
        via=one.via,
        said_unit=one.said_unit,
        also=tuple(Span(row.text[start:end], start, end) for start, end in one.also),
        withdrawn=tuple(Earlier(b.value, row.text[b.start : b.end], b.start, b.end) for b in one.took_back),
        conflict=conflict,
        from_fitting=source,
        read_as=one.read_as,
        for_run=one.for_run,
    )
