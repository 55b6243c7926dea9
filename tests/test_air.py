"""The air side against published tables and worked examples; each check names where its numbers stand."""

from fractions import Fraction
from html import unescape

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from logbook import air, limits
from logbook.wording import say

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


# --- a row of the schedule


def row(line: str):
    from logbook import schedule

    rows, wrong = schedule.read("mark,run,kind,inlet,outlet,length,airflow,pressure class\n" + line, "s")
    assert not wrong
    return rows[0]


LIMIT = limits.DEFAULTS.__getitem__


def test_a_planned_straight_tells_its_air():
    """By hand: 24 x 12 in. are 2 ft²; 1200 cfm make 600 fpm and (600/4005)² = 0.0224; 120 in. of it are 2 x 36/12 x 10 = 60 ft²,
    and class 6 at 0.5 in. w.g. lets 6 x 0.5^0.65 x 60/100 = 2.29 cfm go."""
    found = air.side(row("1,2,straight,24x12,,120,1200,0.5"), LIMIT)
    (end,) = found.ends
    assert (end.area, end.velocity, end.ratio) == (2, 600, 2) and end.pressure == pytest.approx(0.0224, abs=1e-4) and end.round == pytest.approx(18.3, abs=0.05)
    assert found.surface == pytest.approx(60) and found.leak == pytest.approx(2.29, abs=0.01) and not (found.fast or found.flat)


@pytest.mark.parametrize(
    ("line", "fast", "flat"),
    [
        ("1,2,transition,24x12,12x12,,2400,", False, False),  # 2400 fpm in the smaller end: at the limit is within it
        ("1,2,transition,24x12,12x12,,2401,", True, False),
        ("1,2,straight,40x10,,46,,", False, False),
        ("1,2,straight,41x10,,46,,", False, True),
        ("1,2,branch,20x12,,,,", False, False),
    ],
)
def test_rows_beyond_the_job_s_limits(line, fast, flat):
    found = air.side(row(line), LIMIT)
    assert (found.fast, found.flat) == (fast, flat)


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_job_page_and_the_cut_sheet_tell_the_air(tmp_path, language):
    from desk import PAGE, open_desk

    made = open_desk(tmp_path)
    folder = made.settings.folder
    (folder / "s.csv").write_text("mark,run,kind,inlet,length,airflow,pressure class\n1,2,straight,24x12,40,1200,0.5\n2,2,straight,12x12,40,2500,\n3,2,straight,12x12,40,,\n")
    (folder / "job.toml").write_text((folder / "job.toml").read_text() + '\n[[schedule]]\nfile = "s.csv"\nrevision = "A"\n')
    lead = made.browser("lead")
    page = lead.get(f"/job?language={language}", headers=PAGE).text
    assert say("air.beyond", language, count=1, fpm="2400", ratio="4") in unescape(page) and say("air.no-flow", language, count=1) in page
    sheet = unescape(lead.get(f"/layout?mark=1&run=2&language={language}", headers=PAGE).text)
    assert "600 fpm" in sheet and "0.022" in sheet and say("air.source", language) in sheet
    assert say("air.fast", language, limit="2400") in unescape(lead.get(f"/layout?mark=2&run=2&language={language}", headers=PAGE).text)
