"""Sides that move join side by side, and every member remembers the words it came from.

"Left side comes in four" and, an hour later, "back eighteen" are one move with two places in two texts.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from logbook.facts import Move
from logbook.said import Earlier, Fact, Span

MEMBERS = ("by", "back", "way")


@dataclass(frozen=True)
class Traced:
    """A move with the words behind each member that was said."""

    move: Move
    sources: tuple[tuple[str, Span], ...]  # (member, words); a press has no words and stands as None


def place_of(fact: Fact) -> Span:
    return Span(fact.words, fact.start, fact.end, fact.note)


def traced(fact: Fact) -> tuple[Traced, ...]:
    """The moves of one saying."""
    here = place_of(fact)
    return tuple(
        Traced(move, tuple((part, here) for part in ("side", *MEMBERS) if getattr(move, part) is not None))
        for move in fact.value
    )


def meet(old: Fact, parts: tuple[Traced, ...], new: Fact) -> tuple[Fact, tuple[Traced, ...]] | None:
    """The joined fact and its parts; None where a member could belong to two sides, so that nothing changes."""
    here = place_of(new)
    joined, restated = list(parts), False
    for move in new.value:
        place = _target(joined, move)
        if place is None:
            return None
        if place == len(joined):
            joined += [t for t in traced(new) if t.move == move][:1]
            continue
        part = joined[place]
        said = {name: getattr(move, name) for name in MEMBERS if getattr(move, name) is not None}
        restated = restated or any(getattr(part.move, name) is not None for name in said)
        side = {"side": move.side} if move.side is not None else {}
        kept = tuple((name, source) for name, source in part.sources if name not in said and name not in side)
        joined[place] = Traced(replace(part.move, **said, **side), kept + tuple((name, here) for name in (*side, *said)))
    used = {source for part in joined for name, source in part.sources}
    still = tuple(span for span in (*old.also, place_of(old)) if span in used and span != here and span.words is not None)
    was = (*old.was, Earlier(old.value, old.words, old.start, old.end, old.note)) if restated else old.was
    heard = [one for one in (new, *((old,) if still else ())) if one.heard is not None]
    doubted = [one for one in heard if not one.confirmed]
    fact = replace(
        new,
        value=tuple(part.move for part in joined),
        also=still + new.also,
        was=was,
        hedged=new.hedged or (old.hedged and bool(still)),
        heard=min((one.heard for one in doubted or heard), default=None),
        confirmed=bool(heard) and not doubted,
    )
    return fact, tuple(joined)


def contradicts(parts: tuple[Traced, ...], new: Fact) -> bool:
    """Whether the new saying gives another value to a member that was said before."""
    for move in new.value:
        place = _target(list(parts), move)
        if place is None or place == len(parts):
            continue
        old = parts[place].move
        if any(
            getattr(move, name) is not None and getattr(old, name) not in (None, getattr(move, name)) for name in MEMBERS
        ):
            return True
    return False


def _target(parts: list[Traced], move: Move) -> int | None:
    """Which part the move speaks of; len(parts) for a side not spoken of before; None where two could be meant."""
    if move.side is not None:
        same = [i for i, part in enumerate(parts) if part.move.side == move.side]
        if same:
            return same[0]
        nameless = [i for i, part in enumerate(parts) if part.move.side is None and part.move.by in (None, move.by)]
        return nameless[0] if len(nameless) == 1 and len(parts) == 1 else len(parts)
    said = [name for name in MEMBERS if getattr(move, name) is not None]
    lacking = [i for i, part in enumerate(parts) if any(getattr(part.move, name) is None for name in said)]
    if len(lacking) == 1:
        return lacking[0]
    return 0 if not lacking and len(parts) == 1 else None
