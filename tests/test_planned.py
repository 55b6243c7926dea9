"""A row of the schedule as a drawing: the set-back follows from the sizes, the flat side and the job's slope; an open side stays open."""

from __future__ import annotations

from fractions import Fraction as F
from xml.etree import ElementTree

import pytest
from hypothesis import given
from hypothesis import strategies as st

from logbook import limits, schedule
from logbook.geometry import transition
from logbook.geometry.planned import draw_row, open_set_backs, row_facts

SLOPE = limits.DEFAULTS["slope"]


def row(inlet, outlet, flat=""):
    rows, wrong = schedule.read(f"mark,run,kind,inlet,outlet,flat side\n1,2,transition,{inlet},{outlet},{flat}\n", "s")
    assert not wrong
    return rows[0]


def moves(one):
    return [(m["side"], m["way"], m["by"], m["back"]) for fact in row_facts(one, SLOPE) if fact["name"] == "side_moves" for m in fact["value"]]


@pytest.mark.parametrize(
    ("inlet", "outlet", "flat", "expected"),
    [  # worked by hand: the change of size times six is the set-back at 2 in 12
        ("20x14", "20x11", "bottom", [("top", "in", 3, 18)]),
        ("20x11", "20x14", "bottom", [("top", "out", 3, 18)]),
        ("24x12", "20x12", "right", [("left", "in", 4, 24)]),
        ("20x14", "20x11", "", []),
        ("20x14", "16x11", "bottom", [("top", "in", 3, 18)]),
        ("20x14", "20x14", "bottom", []),
    ],
)
def test_the_side_across_from_the_flat_one_moves(inlet, outlet, flat, expected):
    assert moves(row(inlet, outlet, flat)) == expected


def test_a_side_that_the_schedule_leaves_open_is_not_guessed_and_both_set_backs_are_told():
    open_row = row("20x14", "20x11")
    drawn = draw_row(open_row, "en", SLOPE)
    assert "Set-back at 2 in 12: one side alone 18 in., both 9 in." in drawn.told
    assert "?" in drawn.svg or "moves" in drawn.svg
    assert open_set_backs(row("20x14", "16x11", "bottom"), SLOPE) == [(24, 12)], "the other axis is open"


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_drawing_shows_the_set_back_and_the_slope_it_was_reckoned_at(language):
    drawn = draw_row(row("24x12", "20x12", "right"), language, SLOPE)
    texts = [text.text for text in ElementTree.fromstring(drawn.svg).iter("{http://www.w3.org/2000/svg}text")]
    assert any("24" in text and "4" in text for text in texts if text) and any(text and ("2 in 12" in text or "2 en 12" in text) for text in texts)


@given(st.integers(8, 40), st.integers(1, 6), st.sampled_from(["top", "bottom"]))
def test_the_plan_and_the_cut_sheet_set_the_line_back_alike(height, by, flat):
    one = row(f"20x{height + by}", f"20x{height}", flat)
    ((_, _, _, back),) = moves(one)
    cut = transition.lay_out(transition.Wanted((F(20), F(height + by)), (F(20), F(height)), (flat,), F(1, 6), F(1), "board"))
    assert next(size.value for size in cut.sizes if size.name == "set-back") == back
