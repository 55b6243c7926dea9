"""Whose words they are: what of a note tells of his own work on his own piece, and what of another's, of a plan, a question, a drawing or a story."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.composed import own_questions
from logbook.reading.own import afar, answers, as_wanted, asides, one_left_out, side_counts, turned
from logbook.reading.clauses.claims import Claim
from logbook.reading.own.elsewhere import elsewhere
from logbook.reading.clauses.grammar import Row
from logbook.reading.names.headings import mentions
from logbook.reading.words.items import Item
from logbook.reading.clauses.parts import Part, parts
from logbook.reading.words.phrases import phrases_said
from logbook.reading.own.retold import retold
from logbook.reading.clauses.sameness import of_measures
from logbook.reading.clauses.stance import Clause, clauses, stances
from logbook.reading.own.taking_back import withdraws
from logbook.reading.own.ticked_off import ticked_off
from logbook.reading.own.ticked_parts import parts_ticked
from logbook.reading.words.tokens import Token
from logbook.reading.composed.two_voices import by_turns
from logbook.reading.own.whole_turns import whose
from logbook.record import record
from logbook.said import Withdraws


@record
class OwnWords:
    """A note with whose words are whose. All places are items of `whole`."""

    whole: Row  # as it was said
    row: Row  # without what is spent, taken back or a phrase of the crew
    own: Row  # without what is not his own either
    cut: tuple[Clause, ...]
    cut_up: tuple[Part, ...]
    not_own: dict[int, str]  # item -> why
    of_piece: set[int]  # items that are not his own and still name his piece
    turned_at: set[int]  # items of what he turned from
    doubted: set[int]  # items of which he is not sure
    aside: dict[int, str]  # items of what was said beside the work
    spent: set[int]  # items that the claims here have used up
    claims: tuple[Claim, ...]  # questions answered, things told twice, wishes met, what was said from afar
    turned_to: tuple[Claim, ...]
    replies: answers.Answers
    but_one: tuple[tuple[int, int, int], ...]  # "all but one": first item, its number, the one behind
    taken_back: Withdraws | None
    saying_so: set[int]  # items that take back
    phrase_at: set[int]  # items of phrases of the crew


def own_words(text: str, items: tuple[Item, ...], found: tuple[Token, ...], job, language: Language) -> OwnWords:
    """The stretches of a note, each taken out of what the next is looked for in."""
    items = own_questions.as_built(text, by_turns(text, items, language), language)
    beside = asides.asides(Row.of(text, items), language)
    whole = answers.topics(asides.without(text, items, beside), language)
    taken_back, saying_so = withdraws(whole, language, text)
    phrase_at = {at for said in phrases_said(found, job, language.code) for at, item in enumerate(whole.items) if item.first < said.last and item.last > said.first}
    row = whole.blanked(saying_so | phrase_at)
    row = row.recoded(side_counts.recodes(row, language) | of_measures(row))
    cut = clauses(row)
    ticks = ticked_off(row, language)
    parts_ticked(row, language, ticks)
    row = row.blanked(ticks.spent)
    aside = elsewhere(row, cut, language)
    replies = answers.answers(row.blanked(aside), cut, language)
    replies.names |= ticks.names
    spent = beside.spent | ticks.spent | replies.spent
    row = row.blanked(spent)
    cut_up, but_one = _parted(row, cut, language)
    wanted = as_wanted.as_wanted(row, cut_up, language)
    row = row.blanked(wanted.spent)
    first = retold(row.blanked(aside), cut_up, language)
    row = row.blanked(first.spent)
    away = afar.afar(row.blanked(aside), cut_up, language)
    row = row.blanked(away.spent)
    spent |= wanted.spent | first.spent | away.spent
    supposed, doubted = turned.supposed(row, cut, language)
    not_own = _not_own(row, spent, replies, wanted, away, language)
    not_own |= {at: "condition" for at in supposed if at not in not_own and at not in spent and [item.concept for item in row.items[at + 1 : at + 2]] != ["STATIC"]}  # whatever he said it needs at a pressure, that is the pressure
    not_own |= {at: why for at, why in (whose(row, cut, language) | aside).items() if at not in not_own and at not in spent}
    turned_to, turned_at, of_piece = turned.turned(row, not_own, cut, language)
    return OwnWords(
        whole=whole,
        row=row,
        own=row.blanked(not_own).blanked(turned_at),
        cut=cut,
        cut_up=cut_up,
        not_own=not_own,
        of_piece=of_piece | set(away.not_own) | first.of_piece,
        turned_at=turned_at,
        doubted=doubted | away.doubted | turned.forgotten(row, cut, language),
        aside=aside,
        spent=spent,
        claims=(*(one for one in beside.claims if aside.get(one.first) != "plan"), *ticks.claims, *replies.claims, *first.claims, *wanted.claims, *away.claims),
        turned_to=tuple(turned_to),
        replies=replies,
        but_one=but_one,
        taken_back=taken_back,
        saying_so=saying_so,
        phrase_at=phrase_at,
    )


def _parted(row: Row, cut: tuple[Clause, ...], language: Language):
    """The parts of all clauses, and the one that an act was done to all but."""
    cut_up, but_one = parts(row, cut), one_left_out.places(row)
    if but_one:
        marks = list(dict.fromkeys(mark for one in mentions(row, set(), language) for mark, _ in one.batch))
        but_one = one_left_out.of_these(row, but_one, marks, language)
        cut_up = one_left_out.without(cut_up, but_one)
    return cut_up, but_one


def _not_own(row: Row, spent: set[int], replies: answers.Answers, wanted: as_wanted.AsWanted, away: afar.Afar, language: Language) -> dict[int, str]:
    """What the clauses themselves say whose they are."""
    why = {at: why for at, why in {**stances(row, language), **away.not_own}.items() if at not in spent and at not in replies.names}
    why = {at: why for at, why in why.items() if at not in wanted.of_piece} | {at: "drawing" for at in wanted.wished}
    return {at: why for at, why in why.items() if row.items[at].concept != "GROOVE" or why not in ("drawing", "other")}  # "the step should face in, mine faces out": it is the step that faces out
