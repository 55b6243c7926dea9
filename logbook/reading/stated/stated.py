"""What the words state, and which pieces they name: every frame and pass that makes claims of them, in order."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.names import article_marks, contrasts, places
from logbook.reading.own import side_counts
from logbook.reading.stated import (
    air_told,
    anchored,
    condition,
    cut_from_a_roll,
    ends,
    how_big,
    legs_told,
    line_pressure,
    lone_measures,
    moves,
    not_home,
    out_of_tape,
    read_off,
    room,
    sides_done,
    sizes,
    slope_of,
    spaced_past,
    staples,
    staples_told,
    supports,
    tape_taken,
    tapes,
    told_acts,
)
from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.frames import Frames
from logbook.reading.clauses.grammar import Row
from logbook.reading.names.disowned import disowned
from logbook.reading.names.headings import mentions
from logbook.reading.stated.how_hot import how_hot
from logbook.reading.words.items import kind_concept
from logbook.reading.undone.left_undone import LeftUndone
from logbook.reading.stated.lone_spacing import lone_spacings
from logbook.reading.clauses.mention import Mention
from logbook.reading.own.own_words import OwnWords
from logbook.reading.stated.pieced_moves import pieced_moves
from logbook.reading.names.runs import runs
from logbook.reading.clauses.sameness import Copy, copies
from logbook.reading.names.told_alike import told_alike
from logbook.reading.stated.used_that import used_that
from logbook.reading.stated.waits_its_turn import waits_its_turn
from logbook.reading.stated.wider_in_a_stretch import wider_in_a_stretch
from logbook.record import record

_LEVEL = Frames(moves.LEVEL_FRAMES)
_FRAMES = Frames(
    (
        *tape_taken.FRAMES,
        *legs_told.FRAMES,
        *staples_told.FRAMES,
        *cut_from_a_roll.FRAMES,
        *air_told.FRAMES,
        *not_home.FRAMES,
        *spaced_past.FRAMES,
        *how_big.FRAMES,
        *ends.FRAMES,
        *moves.FRAMES,
        *slope_of.FRAMES,
        *staples.SPACING_FRAMES,
        *tapes.BOARD_FRAMES,
        *supports.FRAMES,
        *condition.FRAMES,
        *sides_done.FRAMES,
        *sizes.FRAMES,
        *staples.FRAMES,
        *tapes.FRAMES,
    )
)
_ON_THEM = ("OF", "ON", "IN")
_THINGS = ("SIDE", "PANEL", "STAPLES", "TAPE", "VANES", "GROOVE", "SHIPLAP")


@record
class Stated:
    """The claims of a note and the pieces that it names, before they are weighed and shared out."""

    row: Row  # in which facts were looked for
    named: list[Mention]
    claims: list[Claim]
    taken: set[int]  # items whose measures are spent
    copied: list[Copy]


def stated(told: OwnWords, left: LeftUndone, language: Language) -> Stated:
    row, cut, cut_up = left.row, told.cut, told.cut_up
    taken = set(article_marks.counted(left.headed, language))
    headed = left.headed.blanked(taken)
    copied = copies(headed, taken, language)
    claims = [*left.claims, *runs(headed, taken, language)]
    looked = left.stated.blanked(places.of_the_joined(left.stated))
    claims += places.joins(looked, taken, language)
    claims += _LEVEL.run(looked, taken)
    named = _named(row, headed, left.short_at, taken, language)
    looked = _with_pieces(row, looked, named)
    claims += _FRAMES.run(looked, taken)
    claims += line_pressure.pressures(row, looked, cut, taken, language)
    claims += read_off.read_off(row, taken, claims, language)
    claims += sizes.sizes(looked, taken)
    claims += lone_spacings(looked, taken, language)
    claims = wider_in_a_stretch(row, looked, taken, claims, cut_up, language)
    claims += waits_its_turn(row, named, language)
    claims += places.places(looked, language)
    claims = side_counts.not_whole(left.sided, claims, row)
    claims += side_counts.beside(left.sided, claims, row)
    claims += room.room(row, looked, cut, language, taken, claims)
    claims = moves.sided(looked, claims)
    claims = anchored.anchored(looked, claims, taken)
    claims += lone_measures.lone_measures(row, looked, taken, claims, cut_up, language)
    named, claims = told_alike(row, named, claims, taken)
    claims += how_hot(row, looked, taken, claims, language)
    claims = pieced_moves(row, looked, claims, taken, language)
    claims += told_acts.told(row, looked, cut_up, language)
    claims += used_that(row, claims, language)
    claims += out_of_tape.out_of_tape(row, left.own, cut_up, language)
    claims += lone_measures.lone_ways(row, looked, claims, cut_up, language)
    claims += ends.by_words(looked, claims, cut_up, language)
    claims += ends.step_after_wish(left.own, claims, language)
    return Stated(looked, named, claims, taken, copied)


def _named(row: Row, headed: Row, short_at: set[int], taken: set[int], language: Language) -> list[Mention]:
    """The places where a piece is named, whose numbers are spent then."""
    named = [one for one in disowned(row, mentions(headed, taken, language), language) if one.kind is not None or one.mark_at is None or one.mark_at[0] not in short_at]
    named = contrasts.with_each(row, named, language)
    taken.update(at for one in named if one.mark_at for at in range(*one.mark_at))
    taken.update(at for one in named for _, span in one.batch for at in range(*span))
    return named


def _with_pieces(row: Row, looked: Row, named: list[Mention]) -> Row:
    """The row in which what names a piece is known for that."""
    marks = {mark for one in named for mark in (one.mark, *(mark for mark, _ in one.batch)) if mark is not None}
    looked = looked.recoded(staples.on_a_piece(row, marks))
    looked = looked.recoded({at: "FILLER" for one in named if one.mark_at and _tells_where(row, one.mark_at[0]) for at in (one.mark_at[0] - 1, one.mark_at[0])})
    return looked.recoded({one.kind_at[0]: kind_concept(one.kind) for one in named if one.kind_at and row.items[one.kind_at[0]].concept == "BRANCH_WORD"})


def _tells_where(row: Row, at: int) -> bool:
    """ "The top of eighteen comes down": the piece between a thing and what is said of it."""
    return at > 1 and row.items[at - 1].concept in _ON_THEM and row.items[at - 2].concept in _THINGS
