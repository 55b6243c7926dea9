"""A word heard faintly decides nothing; a number needs to be heard better than a word."""

from fractions import Fraction

import pytest

from logbook import job, rules
from logbook.facts import Move
from logbook.piece import Piece
from logbook.runs import site
from logbook.said import Fact


def verdict(rule: str, *facts: Fact) -> str:
    piece = Piece("p", "j", "2", "7", ("n",), (Fact("kind", "straight", "Straight", 0, 8, heard=0.9), *facts), checked_without_photos=True)
    found = rules.judge(piece, site(job.DEFAULT, [piece]).around(piece))
    return next(one.verdict for one in found if one.rule == rule)


@pytest.mark.parametrize(("heard", "expected"), [(None, "meets"), (0.9, "meets"), (0.45, "meets"), (0.39, "unclear")])
def test_a_word(heard, expected):
    assert verdict("taped", Fact("taped", True, "taped", 0, 5, heard=heard)) == expected


@pytest.mark.parametrize(("heard", "expected"), [(None, "meets"), (0.5, "meets"), (0.49, "unclear")])
def test_a_number(heard, expected):
    stapled = Fact("stapled", True, "stapled", 0, 7, heard=0.9)
    spacing = Fact("staple_spacing", Fraction(2), "every two", 8, 17, heard=heard)
    assert verdict("staple-spacing", stapled, spacing) == expected


@pytest.mark.parametrize(
    ("other", "rule", "expected"),
    [
        (Move(None, None, Fraction(24), None), "transition-slope", "meets"),  # the same words with some of them lost
        (Move(None, None, Fraction(24), None), "sizes-agree", "meets"),
        (Move("top", Fraction(3), Fraction(12), "in"), "transition-slope", "unclear"),  # and then it is too steep
        (Move("top", Fraction(5), Fraction(24), "in"), "sizes-agree", "unclear"),
    ],
)
def test_another_hearing_of_a_move(other, rule, expected):
    move = Fact("side_moves", (Move("top", Fraction(3), Fraction(24), "in"),), "top down three, back twenty-four", 9, 41, heard=0.9, alternatives=((other,),))
    kind = Fact("kind", "transition", "Transition", 0, 8, heard=0.9)
    sizes = [Fact(f"{end}_size", size, "18 by 14", 0, 8, heard=0.9) for end, size in (("inlet", (Fraction(18), Fraction(14))), ("outlet", (Fraction(18), Fraction(11))))]
    piece = Piece("p", "j", "2", "7", ("n",), (kind, *sizes, move), checked_without_photos=True)
    found = rules.judge(piece, site(job.DEFAULT, [piece]).around(piece))
    assert next(one.verdict for one in found if one.rule == rule) == expected


def test_what_departs_as_heard_is_never_met_for_being_faint():
    assert verdict("taped", Fact("taped", False, "not taped", 0, 9, heard=0.1)) == "unclear"
