"""A part of the piece told of in words that nobody read: "taped right round. Oh, the back against the wall I couldn't get at".

What was told right before it may not hold there, so it is in doubt: the installer is asked, and nobody reads it as fine.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Mapping

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.stance import Clause
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain
from logbook.said import Entry, Unread

# of each fact the one whose rule asks for it
_ASKED_BY = {
    "stapled": "stapled",
    "staple_flap": "stapled",
    "sides_stapled": "stapled",
    "taped": "taped",
    "sides_taped": "taped",
    "rubbed_down": "rubbed_down",
    "scrim_shows": "rubbed_down",
    "surface_clean": "surface_clean",
    "trimmed": "trimmed",
    "vanes": "vanes",
    "groove_step": "groove_step",
    "staple_clinch": "staple_clinch",
    "closure": "closure",
    "closure_mark": "closure",
    "cross_tabs": "cross_tabs",
    "tabs_bent": "tabs_bent",
    "damage_repaired": "facing_damage",
    "preheated": "surface_temperature",
    "gap": "gap",
}
_MEASURED = {
    "staple_spacing": "staple_spacing",
    "staple_leg": "staple_leg",
    "cross_tab_spacing": "cross_tabs",
    "cross_tab_length": "cross_tabs",
    "tape_width": "tape_width",
    "screw_spacing": "screw_spacing",
    "hanger_spacing": "hanger_spacing",
    "surface_temperature": "surface_temperature",
    "air_temperature": "air_temperature",
    "static_pressure": "static_pressure",
}
_OWN = _ASKED_BY | _MEASURED
_SMALL = ("DET", "FILLER", "AND", "BE", "IT", "ON", "OF", "BUT", "THIS", "I", "ALL", "BY", "PLACE_NOUN", "IN", "FROM")  # words that tell of nothing by themselves
_NUMBERS = ("LEN", "FRAC", "NUM", "TEMP_F", "DEG", "INWG")
_AGAIN = frozenset(("air_temperature", "static_pressure"))  # told of another hour, and not of another part
_QUESTIONS = ("question", "condition")  # "what I didn't manage is the underside" asks nothing

Told = tuple[tuple[int, int, str], ...]


def told_of(row: Row, entries: Iterable[Entry]) -> Told:
    """The facts of the pieces, each with the items that state it, in their order."""
    starts, ends = [item.start for item in row.items], [item.end for item in row.items]
    return tuple(sorted((bisect_right(ends, fact.start), bisect_left(starts, fact.end), fact.name) for one in entries for fact in one.facts if fact.start is not None and fact.name in _OWN))


def theirs_too(known: set[int], not_own: Mapping[int, str]) -> set[int]:
    """The items that are known, without those that only look like a question."""
    return known - {at for at, why in not_own.items() if why in _QUESTIONS}


def set_apart(row: Row, cut: tuple[Clause, ...], place: int, known: set[int], told: Told, language: Language) -> tuple[int, int, tuple[str, ...]] | None:
    """The items of a clause that set a part apart, and the facts that are in doubt with them: those told last before it, in its sentence or the one before."""
    clause = cut[place]
    unread = [at for at in range(clause.first, clause.last) if at not in known and row.items[at].concept not in _SMALL]
    if not unread:
        return None
    said = plain(row.words(clause.first, clause.last))
    code = language.code
    whole = not any(at in known and row.items[at].concept not in _SMALL for at in range(clause.first, clause.last))
    measured = any(row.items[at].concept in _NUMBERS for at in unread)
    ill = word(code, "told.asides.set_apart.otherwise").search(said) or word(code, "told.asides.set_apart.some").search(said)
    match = ill or (word(code, "told.asides.set_apart.part").search(said) if whole else None)
    if match is None and not (measured and whole):
        return None
    first, last = (clause.first, clause.last) if match is None else row.within(clause.first, clause.last, match)
    if match is not None and ill is None and all(first <= at < last or row.items[at].concept == "HAVE" for at in unread):
        return None  # the part and no more: "has the first two"
    if any(at in known and row.items[at].concept not in _SMALL for at in range(first, last)) or any(last <= at < clause.last for at, _, _ in told):
        return None  # "I ran low on staples so the last side got one every four inches": what came of it is told
    names = _told_last(row, cut, place, first, told)
    if "hanger_spacing" not in names and any(row.items[at].concept == "K_HANGER" for at in range(clause.first, clause.last)):
        return None  # "I only got the hangers up on one end": of how it hangs
    if match is None:
        names = [name for name in names if name in _AGAIN]
    if not names or word(code, "told.asides.set_apart.harmless").search(said) is not None:
        return None
    while first > clause.first and first - 1 not in known:
        first -= 1
    while last < clause.last and last not in known:
        last += 1
    return first, last, _asked(names, measured)


def narrows_there(one: Unread, language: Language) -> bool:
    """Whether words that were not read set a part apart of what was told."""
    said, code = plain(one.words), language.code
    found = _AGAIN.intersection(one.about) or any(word(code, f"told.asides.set_apart.{member}").search(said) for member in ("part", "some"))
    return bool(found) and word(code, "told.asides.set_apart.harmless").search(said) is None


def _told_last(row: Row, cut: tuple[Clause, ...], place: int, until: int, told: Told) -> list[str]:
    clause = cut[place]
    own = [name for first, _, name in told if clause.first <= first < until]
    if own:
        return own
    for back in range(place - 1, -1, -1):
        before = cut[back]
        if before.sentence < clause.sentence - 1:
            break
        names = [name for first, _, name in told if before.first <= first < before.last]
        if names:
            return names
        if any(item.concept.startswith("K_") or item.concept == "MARKED" for item in row.items[before.first : before.last]) and before.sentence < clause.sentence:
            break
    return []


def _asked(names: list[str], measured: bool) -> tuple[str, ...]:
    """A measure that was not read is of what was measured before it."""
    owners = [_MEASURED[name] for name in names if name in _MEASURED] if measured else []
    return tuple(dict.fromkeys(owners or [_OWN[name] for name in names]))
