"""What tells of the work and became no fact. It is shown as not understood, so that nobody takes a silence for "read and fine".

Chatter is left out: a stretch counts only where it names a thing, an act or a measure of the trade, or denies something.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Mapping
from functools import cache
from dataclasses import replace

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.set_apart import narrows_there, set_apart, theirs_too, told_of
from logbook.reading.words.likely import AnyOf, Likely, where_standing
from logbook.reading.matters import DENYING, about, named_in
from logbook.reading.words.phrasing import any_of, word
from logbook.reading.clauses.stance import Clause
from logbook.reading.words.tokens import plain
from logbook.said import Entry, Fact, Unread

_NARROWING = DENYING | {"BUT", "ONLY", "EXCEPT"}
_OF_THE_TRADE = frozenset(
    "TAPE TAPED TAPE_IT STAPLES STAPLED STAPLE RUB RUBBED TRIM TRIMMED WIPE WIPED VANES GAP JOINT FACING BOARD SCRIM TABS FLAP PANEL SEATED GROOVE"
    " SHIPLAP BUTT TIGHT HANGER C_MASTIC CLOSURE DAMAGE REPAIR_IT TIE_RODS SIDE LEN FRAC DEG TEMP_F INWG CFM LB AMISS".split()
)

_SCREWED = frozenset(("SCREWS", "WASHERS"))


def unread(row: Row, cut: tuple[Clause, ...], read: Iterable[tuple[int, int]], told: Iterable[int], not_own: Mapping[int, str], language: Language, stated: Iterable[Entry] = ()) -> tuple[Unread, ...]:
    """The stretches of the clauses `cut` that stand in none of the places `read` of the text and in none of the items `told`. `stated`: the pieces, with their facts.

    The items `not_own` state nothing; of what was told around them they may take something back all the same.
    """
    known = set(told)
    theirs = set(not_own) - known
    known |= theirs
    starts, ends = [item.start for item in row.items], [item.end for item in row.items]
    for start, end in read:
        known.update(range(bisect_right(ends, start), bisect_left(starts, end)))
    found: list[Unread] = []
    text = plain(row.text)
    doubting, elliptic = (any_of(language.code, f"told.asides.{member}") for member in ("doubting", "elliptic"))
    facts = told_of(row, stated) if language.told.asides.set_apart.part else ()
    unknown = theirs_too(known, not_own) if facts else known
    ailing = [_ailing(language.code)[1][at] for at in where_standing(_ailing(language.code)[2], text)]
    for place, clause in enumerate(cut):
        at = clause.first
        if ailing and (ails := _ails(row, cut, place, known, theirs, ailing, language)):
            start, end = row.items[clause.first].start, row.items[clause.last - 1].end
            found.append(Unread(row.text[start:end], start, end, ails))
            continue
        if doubted := _in_doubt(row, cut, place, known - theirs, doubting, elliptic, language):
            start, end = row.items[clause.first].start, row.items[clause.last - 1].end
            found.append(Unread(row.text[start:end], start, end, doubted))
            continue
        if facts and (part := set_apart(row, cut, place, unknown, facts, language)) is not None:
            start, end = row.items[part[0]].start, row.items[part[1] - 1].end
            found.append(Unread(row.text[start:end], start, end, part[2]))
            continue
        while at < clause.last:
            last = at
            while last < clause.last and last not in known:
                last += 1
            if last > at and _tells(row, at, last, whole=last - at == clause.last - clause.first):
                start, end = row.items[at].start, row.items[last - 1].end
                found.append(Unread(row.text[start:end], start, end, about(row, at, last, cut[max(0, place - 1)].first)))
            at = last + 1
    return tuple(found)


@cache
def _ailing(code: str) -> tuple[AnyOf, tuple[tuple[tuple[str, ...], Likely], ...], tuple[Likely, ...]]:
    """Whether any of what ails a thing is there, each with its facts, and each alone."""
    rows = tuple((names, Likely(_words(pattern))) for names, pattern in LANGUAGES[code].told.asides.ailing)
    return AnyOf(pattern.pattern for _, pattern in rows), rows, tuple(pattern for _, pattern in rows)


def _words(pattern: str) -> str:
    return rf"(?<![\w'-])(?:{pattern})(?![\w'-])"


def _ails(row: Row, cut: tuple[Clause, ...], place: int, known: set[int], theirs: set[int], ailing, language: Language) -> tuple[str, ...]:
    """ "The staples went in crooked", "gun kept skipping": what may not hold, unless he did it over since, or another frame has read these words as a lack."""
    clause = cut[place]
    if theirs.issuperset(range(clause.first, clause.last)):
        return ()
    said = plain(row.words(clause.first, clause.last))
    start = row.items[clause.first].start
    found: list[str] = []
    ill: set[int] = set()
    behind = 0
    for names, pattern in ailing:
        match = pattern.search(said)
        here = () if match is None else [at for at in range(clause.first, clause.last) if row.items[at].end > start + match.start() and row.items[at].start < start + match.end()]
        if not known.issuperset(here):
            found += names
            ill.update(here)
            behind = max(behind, match.end())
    if found and word(language.code, "told.asides.righted").search(plain(row.words(clause.first, cut[min(place + 2, len(cut) - 1)].last))[behind:]) is not None:
        known |= ill  # what was the matter is told, and is so no more
        return ()
    if found and any(row.items[at].concept in _DONE_OVER for one in cut[place : place + 3] for at in range(one.first, one.last)):
        return ()
    return tuple(dict.fromkeys(found))


_DONE_OVER = frozenset({"REDID", "REPAIRED"})


def _in_doubt(row: Row, cut: tuple[Clause, ...], place: int, known: set[int], doubting: AnyOf, elliptic: AnyOf, language: Language) -> tuple[str, ...]:
    """ "…, the last one being a lie", "but between the two of us it isn't": the acts told around such words, or right before them, where nobody read them."""
    clause = cut[place]
    said = plain(row.words(clause.first, clause.last))
    match = doubting.search(said)
    if match is not None and word(language.code, "told.weighed.nots").search(" ".join(said[: match.start()].split()[-3:])) is not None:
        match = None  # "no lie", "no exceptions", "I'm not kidding"
    last = match is None
    match = elliptic.search(said) if last else match
    if match is None:
        return ()
    start = row.items[clause.first].start
    if any(at in known for at in range(clause.first, clause.last) if row.items[at].end > start + match.start() and row.items[at].start < start + match.end()):
        return ()
    around = [one for one in cut if clause.sentence - 1 <= one.sentence <= clause.sentence]
    if not last:
        return named_in(row, around[0].first, around[-1].last)
    named = named_in(row, clause.first, clause.last)
    return named or next((names for one in reversed(around) if one.first < clause.first and (names := named_in(row, one.first, one.last))), ())


def _tells(row: Row, first: int, last: int, whole: bool) -> bool:
    """A whole clause about the work, or any stretch that denies something of it."""
    concepts = {item.concept for item in row.items[first:last]}
    denies, of_the_trade = bool(concepts & DENYING), bool(concepts & _OF_THE_TRADE)
    if "AMISS" in concepts or concepts & DENYING and concepts & _SCREWED and last - first > 1:
        return True  # "quedó torcido": something is the matter, and nobody knows with what
    if whole:
        return (of_the_trade and last - first > 1) or (denies and last - first > 2)
    return denies and of_the_trade


def read_places(facts: Iterable[Fact], entries: Iterable[Entry]) -> list[tuple[int, int]]:
    """Where the words of facts, of what they replaced, of open work and of "the same as" stand."""
    places: list[tuple[int, int]] = []
    for fact in facts:
        places += [(one.start, one.end) for one in (fact, *fact.also, *fact.withdrawn) if one.start is not None]
    for entry in entries:
        places += read_places(entry.facts, ())
        places += [(one.start, one.end) for one in (*entry.withdrawn, *entry.open_items) if one.start is not None]
        places += [(entry.same_as.start, entry.same_as.end)] if entry.same_as is not None else []
    return places


def given(row: Row, fittings: tuple[Entry, ...], found: tuple[Unread, ...], language: Language) -> tuple[Entry, ...]:
    """The entries, each with what was not understood from its first words up to those of the next, where it is known what of.

    What the entry states anyway is in doubt only where the words deny or narrow something.
    """
    if not fittings or not found:
        return fittings
    starts = [min((start for start, _ in read_places((), (entry,))), default=0) for entry in fittings]
    mine: list[list[Unread]] = [[] for _ in fittings]
    for one in found:
        place = max((place for place, start in enumerate(starts) if start <= one.start), default=0)
        denies = any(item.concept in _NARROWING for item in row.items if one.start <= item.start < one.end)
        narrows = denies or any_of(language.code, "told.asides.doubting", "told.asides.elliptic").search(plain(one.words)) is not None or narrows_there(one, language)
        narrows = narrows or _ailing(language.code)[0].search(plain(one.words)) is not None
        told = (*one.about, "stapled") if denies and "cross_tabs" in one.about and fittings[place].fact("stapled") is None else one.about  # where nothing else holds the joint
        # of what befell it he has told all, where he tells of the facing: "it fell off the horses, not a mark on it"
        matters = tuple(name for name in told if narrows and name != "facing_damage" or fittings[place].fact(name) is None)
        if matters:
            mine[place].append(replace(one, about=matters))
    return tuple(replace(entry, unread=tuple(more)) if more else entry for entry, more in zip(fittings, mine, strict=True))
