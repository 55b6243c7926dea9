"""Lengths are exact: what is printed is read back, JSON loses nothing. 1 in. = 25.4 mm (international yard, 1959)."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from logbook import measure

lengths = st.fractions(min_value=-2000, max_value=2000, max_denominator=1000)
trade = st.builds(Fraction, st.integers(-99999, 99999), st.sampled_from([1, 2, 4, 8, 16, 32, 64]))


@given(trade)
def test_a_trade_length_is_read_back(length):
    assert measure.parse(measure.printed(length)) == length


@given(lengths)
def test_json_keeps_every_length_exactly(length):
    assert measure.from_json(measure.in_json(length), measure.exact(length)) == length


@pytest.mark.parametrize(
    ("value", "text"),
    [(Fraction(115, 8), "14-3/8"), (Fraction(1, 2), "1/2"), (Fraction(8, 3), "2.67"), (Fraction(-5, 2), "-2-1/2"), (Fraction(0), "0")],
)
def test_lengths_look_as_the_trade_writes_them(value, text):
    assert measure.printed(value) == text


@pytest.mark.parametrize("text", ["", "x", "1/0", "3-1/0", "twelve", "1//2", "--3"])
def test_what_is_no_length_is_none(text):
    assert measure.parse(text) is None


def test_units_are_the_international_ones():
    assert measure.UNITS["mm"] * 254 == 10
    assert measure.UNITS["m"] == Fraction(5000, 127)
    assert measure.UNITS["ft"] == 12
