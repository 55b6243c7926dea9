"""The piece of what is told before any piece is named: another's words named it ("the lead said put vanes in elbow 4, I didn't"), or its bare number."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.names import bare_marks
from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.names.headings import mentions
from logbook.reading.clauses.mention import Mention

_OF_NO_PIECE = ("place", "service", "run")


def with_a_mark(row: Row, headed: Row, not_own, named, claims: list[Claim], taken: set[int], language: Language) -> list[Mention]:
    """The pieces named, and where none has a mark, or what is told ahead of them has none, the one that a number elsewhere gives."""
    if not (named or claims):
        return named
    used = taken | {at for one in claims for at in one.uses}
    if any(m.mark is not None or m.batch for m in named):
        first = _told_ahead(row, named, claims)
        return named if not first else sorted([*bare_marks.bare_marks(headed.blanked(range(first, len(row.items))), used, language), *named], key=lambda m: m.first)
    kind = next((m.kind for m in named if m.kind is not None), None)
    late = bare_marks.bare_marks(headed, used, language) or bare_marks.mark_asked_after(row, not_own, used, language, kind) or bare_marks.lone_number(row, used, language)
    return sorted([*named, *late], key=lambda m: m.first)


def named_by_others(row: Row, named, claims: list[Claim], taken: set[int], language: Language) -> list[Mention]:
    """ "Drawing calls for vanes in elbow nine. What I built is hollow": the one piece named is the one he goes on about, though another's words named it."""
    first = _told_ahead(row, named, claims)
    if not first:
        return named
    late = [m for m in mentions(row, taken, language) if m.mark is not None and not m.batch and m.first < first]
    if len({m.mark for m in late}) > 1:  # "What's missing from elbow 9? Vanes. Carl has his in elbow 77": the one named ahead of what is told
        told = row.sentence_end(min(one.first for one in claims if _of_a_piece(one)))
        late = [m for m in late if m.first < told]
    return sorted([*named, *late[:1]], key=lambda m: m.first) if len({m.mark for m in late}) == 1 else named


def _told_ahead(row: Row, named, claims: list[Claim]) -> int:
    """Where the sentence of the first piece named begins, if something was told before it; 0 if nothing was."""
    first = min((row.sentence_start(m.first) for m in named if m.kind is not None or m.mark is not None or m.batch), default=len(row.items))
    return first if any(one.first < first and _of_a_piece(one) for one in claims) else 0


def _of_a_piece(one: Claim) -> bool:
    return not one.name.startswith("(") and one.name not in _OF_NO_PIECE
