"""Hangers and collars that are told of by themselves, with the piece they are of behind them: "hangers nine feet apart under straight 85", "the spin-in's tabs aren't folded on branch 62"."""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.mention import Mention

_SPACED = frozenset("LONG LEN NUM FRAC EVERY APART ON IN OF BE DET HAVE FILLER HEDGE THINK WORD UNDER ALL AROUND IT EACH ONLY K_HANGER ALONG OVER THROUGH I HUNG".split())
_LEADS = ("ON", "OF", "IN", "FROM")
_WORKED = frozenset("TAPED STAPLED RUBBED TRIMMED WIPED VANES SCRIM GAP DAMAGE FLAP TAPE STAPLES STAPLE CLOSURE MARK181 C_MASTIC JOINT GROOVE".split())  # what is told of a piece and of no hanger
_NEXT_TO = frozenset("ON OF DET EVERY FOR WORD FILLER COMMA".split())
_LED_BY = ("under", "beneath", "underneath", "below", "along", "holding", "carrying", "supporting")


def of_the_piece(row: Row, named: list[Mention]) -> list[Mention]:
    """The mentions, where hangers that stand before their piece make none of their own, and a collar has the mark of the piece that it sits in."""
    done: list[Mention] = []
    skip = False
    for one, other in zip(named, [*named[1:], None]):
        if skip:
            skip = False
            continue
        follows = other is not None and other.mark is not None and not other.batch and other.kind not in ("hanger", "collar") and one.mark is None and not one.batch and one.kind_at is not None
        if follows and one.kind == "hanger" and other.kind is not None and _leads(row, one, other):
            continue
        if one.kind == "hanger" and one.mark is None and not one.batch and _of_what_hangs(row, one, named):
            continue
        if follows and one.kind == "collar" and other.kind is not None and _tabs_on(row, one, other):
            done.append(replace(one, mark=other.mark, mark_at=other.mark_at))
            skip = True
            continue
        done.append(one)
    return done


def _of_what_hangs(row: Row, one: Mention, named: list[Mention]) -> bool:
    """ "Hangers on straight 9 are ten feet apart. It's taped.", "the hanger spacing on 9 is nine feet, it's a straight": where work on the piece is told too, it is no note of hangers alone."""
    piece = next((two for two in named if two.first >= one.last and two.mark is not None), None)
    if piece is None or piece.kind == "hanger" or piece.batch or not {row.items[at].concept for at in range(one.last, piece.first)} <= _NEXT_TO:
        piece = next((two for two in reversed(named) if two.last <= one.first), None)
        if piece is None or piece.mark is None or piece.kind is not None or piece.batch:
            return False
    end = next((two.first for two in named if two.first > one.first and (two.mark not in (None, piece.mark) or two.batch)), len(row.items))
    return any(row.items[at].concept in _WORKED for at in range(min(one.first, piece.first), end))


def _leads(row: Row, one: Mention, other: Mention) -> bool:
    between = range(one.last, other.first)
    colon = other.first > one.last and row.words(other.first - 1, other.first) == ":" and row.sentence_end(other.last) == other.last
    between = range(one.last, other.first - 1) if colon else between
    concepts = {row.items[at].concept for at in between}
    if not concepts <= _SPACED or concepts.isdisjoint(("LEN", "FRAC", "NUM", "EVERY")):
        return False
    return colon or any(row.items[at].concept in _LEADS or row.words(at, at + 1).lower() in _LED_BY for at in range(max(one.last, other.first - 3), other.first + 1))


def _tabs_on(row: Row, one: Mention, other: Mention) -> bool:
    between = [row.items[at].concept for at in range(one.last, other.first)]
    led = between[-1:] + [row.items[other.first].concept]
    return "TABS" in between and not {"COMMA", "STOP", "QUERY", "BUT"} & set(between) and not set(_LEADS).isdisjoint(led)
