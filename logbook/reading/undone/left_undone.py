"""What of his own work was not done, not all the way, came off again or waits; and what is left in which facts and names of pieces are looked for."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.clauses import set_right
from logbook.reading.names import contrasts
from logbook.reading.own import side_counts, turned
from logbook.reading.undone import not_happened, partly, states, tabs
from logbook.reading.own.but_not import but_not
from logbook.reading.own.came_off import undoings
from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.own.own_words import OwnWords
from logbook.reading.names.side_numbers import side_numbers
from logbook.reading.undone.undone import undone, unfinished
from logbook.reading.own.whole_turns import whole_turns
from logbook.record import record


@record
class LeftUndone:
    """What is left undone of the work that a note tells of. All places are items of its rows."""

    row: Row
    own: Row  # his own words, without what is told here by how it stands, waits or a whole turn of words
    stated: Row  # in which facts are looked for
    headed: Row  # in which names of pieces are looked for
    claims: tuple[Claim, ...]  # his own and those told by others before, in the order in which the first to say a thing is believed
    sided: list[Claim]  # "three sides taped"
    short_at: set[int]
    in_turns_at: set[int]
    waiting_at: set[int]
    plans: frozenset[int]


def left_undone(told: OwnWords, language: Language) -> LeftUndone:
    row, own, cut, cut_up, not_own = told.row, told.own, told.cut, told.cut_up, told.not_own
    left_so, left_so_at = states.told(own, cut_up, language)
    row, own = row.blanked({at for at in left_so_at if row.items[at].concept == "K_HANGER"}), own.blanked(left_so_at)
    waiting, waiting_at = unfinished(own, cut_up, not_own, language)
    own = own.blanked(waiting_at)
    asked, wished = _without(row, not_own, ("drawing", "other")), _without(row, not_own, ("drawing", "other", "condition"))
    in_turns, in_turns_at = whole_turns(row, own, asked.blanked(told.turned_at), wished, language)
    own = own.blanked(in_turns_at)
    short, short_at = not_happened.short_of_done(row.blanked(told.aside), own, not_own, cut, cut_up, language)
    done = own.blanked(short_at)
    left = undone(done, cut, language)
    gone = [(set_right.righted(row, cut_up, one, at, language), at) for one, at in undoings(row, done)]
    left_out = [*partly.sides_left_out(own.blanked({first for first, _, _ in told.but_one}), cut), *partly.half_done(done, cut, language)]
    sided, sided_at = side_counts.counts(row, own.blanked(left.plans), cut_up, language)
    headed = row.blanked({at for at in not_own if at not in told.of_piece} | (told.turned_at - told.of_piece)).blanked(left.plans | side_numbers(row) | sided_at)
    claims = [*told.claims, *left_so, *waiting, *(one for one in left.claims if not _told_of_the_piece(one, left_so)), *left_out, *(one for one, _ in gone), *but_not(row, not_own, cut), *contrasts.so_is(own, cut, language), *turned.not_after_all(own), *short]
    claims += tabs.tabs_said(row, done, cut_up, left.blank | left.plans, language)
    return LeftUndone(
        row=row,
        own=own,
        stated=own.blanked(left.blank | left.plans | short_at | {at for _, at in gone}),
        headed=headed.blanked({at for at in in_turns_at if row.items[at].concept == "NUM" or row.items[at].concept.startswith("K_")}),
        claims=(*claims, *told.turned_to, *in_turns),
        sided=sided,
        short_at=short_at,
        in_turns_at=in_turns_at,
        waiting_at=waiting_at,
        plans=left.plans,
    )


def _without(row: Row, not_own: dict[int, str], kept: tuple[str, ...]) -> Row:
    """The row without what is not his own for any other reason than these."""
    return row.blanked({at for at, why in not_own.items() if why not in kept})


def _told_of_the_piece(one: Claim, told: list[Claim]) -> bool:
    """Work still to do of which it was not known whose it is, where the same words tell that it is the piece's."""
    return bool(one.opens) and one.name == "(open)" and one.opens[0].about == "other" and any(so.name == "(open)" and so.opens and so.first < one.last and one.first < so.last for so in told)
