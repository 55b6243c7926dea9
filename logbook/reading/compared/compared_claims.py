"""The claims of a note set against one another: what was mended, put off, meant of a part, of the rest or of another piece, corrected or doubted in its clause."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.compared import denied_of_all, done_over, other_part, part_of_it, put_off, reasons, the_others
from logbook.reading.names import listed, other_things
from logbook.reading.own import one_left_out
from logbook.reading.stated import condition, not_home, told_acts
from logbook.reading.undone import partly, tabs
from logbook.reading.compared.all_but import all_but
from logbook.reading.compared.between_them import between_them
from logbook.reading.compared.by_now import by_now
from logbook.reading.clauses.claims import Claim
from logbook.reading.compared.first_and_second import first_and_second
from logbook.reading.compared.gap_at_one import gap_at_one
from logbook.reading.clauses.grammar import Row
from logbook.reading.compared.gone_past import gone_past
from logbook.reading.compared.in_its_clause import ACT_FACTS, Places, marked
from logbook.reading.clauses.mention import Mention
from logbook.reading.compared.not_that_one import not_that_one
from logbook.reading.compared.of_both import of_both
from logbook.reading.own.own_words import OwnWords
from logbook.reading.clauses.sameness import mirrored
from logbook.reading.stated.stated import Stated
from logbook.reading.compared.still_coming import still_coming
from logbook.reading.own.taking_back import scratched, unsaid_again
from logbook.reading.compared.turned_round import turned_round
from logbook.reading.compared.turned_there import turned_there
from logbook.reading.compared.turned_unread import without_turned
from logbook.reading.compared.worst_of_parts import worst_of_parts


def compared_claims(told: OwnWords, row: Row, stated: Stated, language: Language) -> tuple[list[Mention], list[Claim]]:
    """The mentions and the claims that stand. `row` is that of the note without what tells how a hanger is left."""
    cut, cut_up, named, claims = told.cut, told.cut_up, stated.named, stated.claims
    claims = not_home.of_the_joint(row, claims + mirrored(stated.row, claims))
    claims = other_things.made_anew(row, condition.closed_again(row, gap_at_one(row, claims), language), language)
    claims = done_over.done_over(row, told_acts.unsaid(row, tabs.of_tabs(row, claims), language), language)
    claims = [*part_of_it.of_a_part(row, partly.of_the_rest(row, reasons.without_reasons(row, claims), language)), *scratched(row)]
    claims += unsaid_again(row, claims, language)
    claims = put_off.put_off(row, claims, language)
    where = Places.of(row, cut)
    claims = [replace(one, hedged=True) if one.first in told.doubted and one.name in ACT_FACTS else one for one in claims]
    claims = [marked(row, cut, where, one) for one in claims]
    claims += [*of_both(row, named, claims), *between_them(row, named, claims), *denied_of_all.of_all(row, named, claims)]
    named, claims = not_that_one(row, named, turned_round(row, all_but(row, claims, language), cut, language), cut, language)
    claims = other_part.of_the_other_part(row, named, claims, language)
    claims = still_coming(row, by_now(row, cut_up, claims, language), language)
    claims = first_and_second(row, named, gone_past(row, claims, language), language)
    claims = worst_of_parts(row, told.not_own, cut, claims, _marks_of(named), language)
    named, claims = listed.told_ahead(row, named, turned_there(row, told.not_own, cut, claims, language))
    claims = the_others.of_the_others(row, named, _excepted(row, named, claims), language)
    if told.but_one:
        named, claims = one_left_out.excepted(row, told.but_one, named, claims, language)
    return named, without_turned(row, cut_up, claims, told.spent | set(told.not_own), language)


def _excepted(row: Row, named: list[Mention], claims: list[Claim]) -> list[Claim]:
    """ "All are rubbed, except 5 isn't": what is said of the exception counts for it."""
    made = claims
    for one in named:
        if one.mark is None or "EXCEPT" not in [item.concept for item in row.items[max(0, one.first - 1) : one.mark_at[0]]]:
            continue
        until = row.sentence_end(one.last)
        made = [replace(c, corrects=True) if one.last <= c.first < until else c for c in made]
    return made


def _marks_of(named: list[Mention]) -> set[str]:
    return {mark for one in named for mark in (one.mark, *(mark for mark, _ in one.batch)) if mark is not None}
