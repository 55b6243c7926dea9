"""The air side against published tables and worked examples; each check names where its numbers stand."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from logbook import air

SIZES = st.tuples(*[st.integers(4, 96).map(Fraction)] * 2)


# ASHAE Guide 1956, chapter 32, table 1: circular equivalents in inches, printed to one place. 12 x 10 is left out:
# that table prints 11.9 and later ones 12.0.
@pytest.mark.parametrize(
    "long, short, printed",
    [
        (12, 6, 9.1), (12, 8, 10.7), (12, 12, 13.1), (14, 8, 11.5), (16, 8, 12.2), (16, 10, 13.7), (20, 12, 16.8),
        (24, 8, 14.6), (24, 10, 16.6), (24, 12, 18.3), (24, 16, 21.3),
    ],
)  # fmt: skip
def test_circular_equivalents_of_the_1956_guide(long, short, printed):
    assert air.equivalent_diameter((Fraction(long), Fraction(short))) == pytest.approx(printed, abs=0.1)


# ASHRAE Handbook, Fundamentals 2021, chapter 21, table 3: circular equivalents in millimetres.
@pytest.mark.parametrize(
    "long, short, printed",
    [
        (300, 200, 266), (400, 200, 305), (500, 250, 381), (600, 300, 457), (600, 400, 533), (800, 400, 609),
        (1000, 500, 762), (1200, 600, 914),
    ],
)  # fmt: skip
def test_circular_equivalents_of_ashrae_2021(long, short, printed):
    assert air.equivalent_diameter((Fraction(long), Fraction(short))) == pytest.approx(printed, abs=1)


# US Bureau of Reclamation, HVAC guide, page 14: class 6, 2.5 in. w.g., 800 ft² print 10.9 cfm/100 ft² and 87.2 cfm,
# the second from the rounded first.
def test_leakage_of_the_bureau_of_reclamation_s_example():
    assert air.leakage_allowed(6, 2.5, 100) == pytest.approx(10.9, abs=0.05)
    assert air.leakage_allowed(6, 2.5, 800) == pytest.approx(87.2, abs=0.4)


# Reckoned by hand from F = C_L P^0.65 (SMACNA leakage test manual): 60 ft of 24 x 12 are 360 ft².
@pytest.mark.parametrize("pressure, cfm", [(0.5, 13.8), (1, 21.6), (2, 33.9), (-1, 21.6)])
def test_leakage_of_sixty_feet_of_duct_board(pressure, cfm):
    surface = air.surface((Fraction(24), Fraction(12)), 60)
    assert surface == pytest.approx(360)
    assert air.leakage_allowed(6, pressure, surface) == pytest.approx(cfm, abs=0.05)


# Reckoned by hand from V = Q / A (ASHRAE Fundamentals 2021, chapter 21, equation 10).
@pytest.mark.parametrize("cfm, size, fpm", [(400, (12, 8), 600), (1200, (20, 12), 720), (2000, (24, 12), 1000)])
def test_velocity(cfm, size, fpm):
    assert air.velocity(Fraction(cfm), tuple(map(Fraction, size))) == fpm


# Reckoned by hand from (V / 4005)², standard air of 0.075 lb/ft³.
@pytest.mark.parametrize("fpm, inches", [(600, 0.0224), (1000, 0.0623), (2400, 0.3591), (4005, 1.0), (5000, 1.5586)])
def test_velocity_pressure(fpm, inches):
    assert air.velocity_pressure(fpm) == pytest.approx(inches, abs=0.00005)


# The same from the SI form of ASHRAE Fundamentals 2021, chapter 21, equation 9: 0.602 V² in Pa; 249.09 Pa an inch.
@pytest.mark.parametrize("fpm", [400, 1000, 2400])
def test_velocity_pressure_agrees_with_the_si_form(fpm):
    pascal = 0.602 * (fpm * 0.00508) ** 2
    assert air.velocity_pressure(fpm) == pytest.approx(pascal / 249.09, rel=0.005)


@settings(derandomize=True, max_examples=50)
@given(SIZES)
def test_a_size_has_no_order(size):
    turned = size[::-1]
    assert air.area(size) == air.area(turned) and air.aspect_ratio(size) == air.aspect_ratio(turned) >= 1
    assert air.equivalent_diameter(size) == pytest.approx(air.equivalent_diameter(turned))


@settings(derandomize=True, max_examples=50)
@given(SIZES, st.integers(1, 20))
def test_twice_the_duct_is_twice_the_equivalent(size, times):
    larger = tuple(side * times for side in size)
    assert air.equivalent_diameter(larger) == pytest.approx(times * air.equivalent_diameter(size))
    assert air.area(larger) == times**2 * air.area(size)
