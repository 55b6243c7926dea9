"""The table of facts: its values survive JSON, marks and sizes compare as people mean them."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from logbook import facts

number = st.fractions(min_value=-500, max_value=500, max_denominator=200)
a_side = st.sampled_from(facts.SIDES)
move = st.builds(
    facts.Move, st.none() | a_side, st.none() | number, st.none() | number, st.sampled_from([None, "in", "out"])
)
SHAPES = {
    "flag": st.booleans(),
    "count": st.integers(0, 2000),
    "text": st.text(max_size=20),
    "length": number,
    "angle": number,
    "number": number,
    "size": st.tuples(number, number),
    "slope": st.tuples(number, number),
    "moves": st.lists(move, max_size=4).map(tuple),
    "sides": st.lists(a_side, max_size=4).map(tuple),
    "marks": st.lists(st.text(max_size=5), max_size=4).map(tuple),
}


@pytest.mark.parametrize("row", facts.FACTS, ids=lambda row: row.name)
def test_every_value_survives_json(row):
    values = st.sampled_from(row.values) if row.shape == "choice" else SHAPES[row.shape]

    @given(values)
    def survives(value):
        doc, exact = facts.to_json(row.name, value), facts.exact_to_json(row.name, value)
        assert facts.from_json(row.name, doc, exact) == value

    survives()


@pytest.mark.parametrize(
    ("one", "other", "same"),
    [("B-12", "b12", True), ("B dash", "bdash", True), ("1-2", "12", False), ("T 4", "t4", True), ("7", "8", False), ("1 - 2", "1-2", True), ("1 - 2", "12", False)],
)
def test_marks_compare_without_case_spaces_and_hyphens(one, other, same):
    assert (facts.bare_mark(one) == facts.bare_mark(other)) is same


def test_sizes_have_no_order():
    assert facts.same_size((Fraction(8), Fraction(12)), (Fraction(12), Fraction(8)))
    assert not facts.same_size((Fraction(8), Fraction(12)), (Fraction(8), Fraction(13)))
    assert facts.same_size((Fraction(8), Fraction(12)), (Fraction(97, 8), Fraction(8)), within=Fraction(1, 8))


def test_acts_and_sizes_never_stand_in_for_speech():
    never = {
        "taped", "stapled", "cross_tabs", "rubbed_down", "trimmed", "surface_clean", "vanes", "gap", "facing_damage",
        "damage_repaired", "inlet_size", "outlet_size", "branch_size", "side_moves", "mark", "stage",
    }  # fmt: skip
    assert {row.name for row in facts.FACTS if row.may_stand} & never == set()
