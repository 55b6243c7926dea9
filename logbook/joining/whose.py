"""Which piece an entry belongs to: one it joins, one it begins, or none, and then somebody has to be asked.

A note without a run means the run pressed or on the tag; else this speaker's last run of the shift; else the only
piece of that mark; else nothing is joined. A note whose kind or sizes contradict the piece joins it only where it
corrects, answers, or follows a rework; otherwise it begins a second piece, and the mark of both is unclear.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from logbook import facts
from logbook.joining.joined import SIZES, Joined, Key, contradicts, one_family
from logbook.note import Note
from logbook.said import Entry

LEAK = ("leak_pressure", "leak_flow", "leak_area")


@dataclass(frozen=True)
class Joins:
    piece: Key
    run: str | None = None


@dataclass(frozen=True)
class Begins:
    run: str | None


@dataclass(frozen=True)
class Asks:
    """Joined to nothing. `why` goes into `Piece.mark_unclear`: runs in question, or a word (see `piece`)."""

    why: tuple[str, ...]


@dataclass(frozen=True)
class Before:
    """What was said before the entry, as far as it tells the piece."""

    of_mark: Sequence[Joined]  # standing pieces with the entry's mark
    last_run: str | None  # this speaker's, of this shift
    of_answered: Sequence[Joined]  # pieces of the note that is answered
    spoken_of_today: Sequence[tuple[str, Joined]]  # (note, piece) this speaker spoke of, in order


def whose(entry: Entry, note: Note, before: Before) -> Joins | Begins | Asks:
    mark, kind = _value(entry, "mark"), _value(entry, "kind")
    if note.answers is not None:
        found = _answered(entry, mark, kind, before.of_answered)
        if found is not None:
            return found
    if mark is None and entry.amends:
        return _amended(kind, before.spoken_of_today)
    said_run = _value(entry, "run")
    run = said_run if said_run is not None else before.last_run
    if mark is None:
        tells = kind is not None or any(entry.fact(name) for name in (*SIZES, *LEAK))
        return Begins(run) if tells else Asks(("no-mark",))
    if run is None:
        here = list(before.of_mark)
        if len(here) > 1:
            return Asks(tuple(dict.fromkeys(piece.run or "?" for piece in here)) if _runs(here) > 1 else ("several-pieces",))
    else:
        here = _on_run(entry, run, said_run is not None, note.spoken_by, before.of_mark)
    fitting = [piece for piece in here if entry.amends or not contradicts(piece, entry)]
    if len(fitting) == 1:
        keeps_run = said_run is None and fitting[0].run is not None
        return Joins(fitting[0].founder, None if keeps_run else run)
    return Asks(("several-pieces",)) if fitting else Begins(run)


def _on_run(entry: Entry, run: str, said: bool, speaker: str, of_mark: Sequence[Joined]) -> list[Joined]:
    """The pieces of the mark on this run; where there is none, the one the words can only mean."""
    here = [piece for piece in of_mark if piece.run is not None and same_run(piece.run, run)]
    if here:
        return here
    if not said and entry.fact("kind") is None and len(of_mark) == 1:
        return list(of_mark)  # tells no new fitting, and there is one piece of that mark
    without_run = [piece for piece in of_mark if piece.run is None]
    if len(without_run) == 1:
        return without_run
    own = [piece for piece in of_mark if speaker in piece.builders]
    return own if entry.amends and len(own) == 1 else []  # the run itself is corrected


def _answered(entry: Entry, mark: str | None, kind: str | None, pieces: Sequence[Joined]) -> Joins | Asks | None:
    """The piece of the note that is answered; None: the entry speaks of something else, or nothing was joined there."""
    if not pieces:
        return None
    if mark is not None:
        same = [p for p in pieces if p.mark is not None and facts.bare_mark(p.mark) == facts.bare_mark(mark)]
        nameless = [p for p in pieces if p.mark is None]
        if not same and len(nameless) != 1:
            return None if kind is not None else Asks(("other-mark", pieces[0].mark or "?", mark))
        pieces = same or nameless
    if len(pieces) > 1 and kind is not None:
        pieces = [p for p in pieces if p.value("kind") is not None and one_family(p.value("kind"), kind)]
    if len(pieces) > 1:
        names = {fact.name for fact in entry.facts}
        pieces = [p for p in pieces if not names & set(p.by_name)]
    return Joins(pieces[0].founder, _value(entry, "run")) if len(pieces) == 1 else Asks(("several-pieces",))


def _amended(kind: str | None, spoken_of: Sequence[tuple[str, Joined]]) -> Joins | Asks:
    """A correction without a mark means the piece this speaker spoke of last today (of that kind, if he says one)."""
    fitting = [(n, p) for n, p in spoken_of if kind is None or (p.value("kind") and one_family(p.value("kind"), kind))]
    if not fitting:
        return Asks(("no-piece",))
    last = {piece.founder for note, piece in fitting if note == fitting[-1][0]}
    return Joins(last.pop()) if len(last) == 1 else Asks(("several-pieces",))


def same_run(one: str, other: str) -> bool:
    return facts.bare_mark(one) == facts.bare_mark(other)


def _runs(pieces: Sequence[Joined]) -> int:
    return len({facts.bare_mark(piece.run or "?") for piece in pieces})


def _value(entry: Entry, name: str):
    fact = entry.fact(name)
    return None if fact is None else fact.value
