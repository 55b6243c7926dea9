"""Cut sheets close when they are folded, and agree with published tables.

The folding is an independent construction: it takes only the flat outlines of the sheet, turns the panels about
their hinge lines in three dimensions and measures the gaps. A fitting is held to 1/64 in. at every edge.
"""

import json
import re
from fractions import Fraction as F
from itertools import product
from pathlib import Path

import numpy as np
import page  # the validator of the distribution page-validation
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from logbook.facts import SIDES
from logbook.geometry import angles, cut_drawing, cut_sheet, cut_text, elbow, offset, stock, take_off, transition
from logbook.mistake import Mistake
from logbook.paper import cut_sheet as paper

CLOSED = 1 / 64
SLOPE = F(2, 12)

sixteenths = st.integers(1, 8 * 16).map(lambda n: F(n, 16))
duct_side = st.integers(6, 40).map(F)


# --- published values


@pytest.mark.parametrize(
    ("thickness", "size", "length"),
    [(1, (12, 8), 48), (1, (20, 12), 72), (1, (24, 12), 80), (F(3, 2), (12, 8), F(105, 2)), (F(3, 2), (24, 12), F(169, 2)), (2, (12, 8), F(453, 8)), (2, (20, 12), F(645, 8))],
)
def test_the_blank_is_that_of_the_fabrication_sheet(thickness, size, length):
    """Source: stretch-out table of a board maker's fabrication sheet (blank = 2 (w + h) + 8, 12-1/2 or 16-5/8 in.)."""
    assert stock.blank(*map(F, size), stock.board(F(thickness))) == length


def test_the_largest_one_piece_square_of_one_inch_board():
    """Source: the same sheet, and a how-to page that prints 22 in. from a 96 in. blank and 28 in. from 120 in."""
    one_inch = stock.board(F(1))
    assert stock.blank(F(22), F(22), one_inch) == 96
    assert stock.blank(F(28), F(28), one_inch) == 120


@pytest.mark.parametrize(("rise", "degrees"), [(1, 4.76), (2, 9.46), (3, 14.04), (4, 18.43), (6, 26.57)])
def test_the_angle_of_a_slope(rise, degrees):
    """Source: plain trigonometry, atan(rise / 12), the handbook's slope table."""
    assert float(angles.slope_angle(F(rise), F(12))) == pytest.approx(degrees, abs=0.005)


@pytest.mark.parametrize(("by", "back", "short"), [(2, 12, 0.163), (3, 18, 0.245), (4, 24, 0.327), (6, 36, 0.49)])
def test_how_far_a_dropped_panel_ends_short(by, back, short):
    """Source: back (1 - cos) worked by hand for the four common set-backs."""
    assert float(angles.short_by(F(by), F(back))) == pytest.approx(short, abs=0.001)


def test_the_hip_of_three_and_two_over_eighteen():
    """Source: the square root of 3² + 2² + 18² = 337."""
    assert float(angles.slant(F(3), F(2), F(18))) == pytest.approx(18.358, abs=0.001)


@pytest.mark.parametrize(("change", "sides", "back"), [(6, 2, 18), (6, 1, 36), (8, 2, 24), (8, 1, 48)])
def test_set_backs_at_two_in_twelve(change, sides, back):
    """Source: 24 to 18 in. and 20 to 12 in., moved on one side and on both, length = drop per side x 6."""
    flat = ("bottom",) if sides == 1 else ()
    sheet = transition.lay_out(wanted((30, 20 + change), (30, 20), flat, "board"))
    assert sheet.sizes[0] == cut_sheet.Size("set-back", F(back))


# --- folding


def wanted(large, small, flat=(), method="section", **more):
    return transition.Wanted(tuple(map(F, large)), tuple(map(F, small)), tuple(flat), SLOPE, F(1), method, **more)


def flat_corners(panel):
    return np.array([[float(x), float(y)] for x, y in panel.outline])


CORNERS = tuple(product(("top", "bottom"), ("left", "right")))
HIGH = {"left": False, "right": True, "bottom": False, "top": True}


def end_of(points, high):
    """(how far the finished end reaches along the panel, how far its corner stands in from the panel's edge)."""
    reach = points[:, 0].max()
    across = [y for x, y in points if x == reach]
    return reach, (points[:, 1].max() - max(across)) if high else min(across)


def gaps(sheet):
    """Turn every panel about its hinge until it lies on its neighbour's cut; how far its end then misses the end plane,
    and how far the two corners of one panel disagree about the opening."""
    hinge = float(stock.STUB)
    end = float(next(size.value for size in sheet.sizes if size.name == "overall"))
    panels = {panel.name: flat_corners(panel) for panel in sheet.panels}
    inward = {}
    for level, upright in CORNERS:
        for side, neighbour in ((level, upright), (upright, level)):
            reach, _ = end_of(panels[side], HIGH[neighbour])
            _, stands_in = end_of(panels[neighbour], HIGH[side])
            yield abs(hinge + np.sqrt((reach - hinge) ** 2 - stands_in**2) - end)
            inward.setdefault(side, []).append(stands_in)
    yield from (max(both) - min(both) for both in inward.values())


@st.composite
def transitions(draw):
    large = draw(st.tuples(duct_side, duct_side))
    change = draw(st.tuples(st.just(F(0)) | sixteenths, st.just(F(0)) | sixteenths))
    small = tuple(one - by for one, by in zip(large, change, strict=True))
    assume(min(small) > 2 and any(change))
    flat = tuple(side for side in draw(st.sets(st.sampled_from(SIDES), max_size=2)))
    assume(not {"left", "right"} <= set(flat) and not {"top", "bottom"} <= set(flat))
    return wanted(large, small, flat, draw(st.sampled_from(["section", "board"])))


@given(transitions())
def test_a_transition_closes_when_it_is_folded(asked):
    sheet = transition.lay_out(asked)
    if isinstance(sheet, Mistake):
        assert sheet.key in ("layout.longer-than-a-section", "layout.one-side-too-long", "layout.both-sides-too-long")
        return
    assert max(gaps(sheet)) <= CLOSED


def test_a_wrong_trim_does_not_close():
    """The folding can fail: one cut an eighth of an inch off leaves a gap."""
    asked = wanted((20, 14), (20, 8), ("bottom",), "section")
    sheet = transition.lay_out(asked)
    panels = tuple(
        panel if panel.name != "left" else cut_sheet.Panel("left", tuple((x, y + F(1, 8)) if x > 4 else (x, y) for x, y in panel.outline))
        for panel in sheet.panels
    )
    spoiled = cut_sheet.CutSheet(**{**vars(sheet), "panels": panels})
    assert max(gaps(spoiled)) > CLOSED


@given(transitions())
def test_from_a_section_no_moved_panel_is_longer_than_the_board_that_was_freed(asked):
    """The freed panel is only as long as the set-back; the steepest one is used whole, the others are trimmed to it."""
    sheet = transition.lay_out(asked)
    assume(not isinstance(sheet, Mistake) and asked.method == "section")
    back = next(size.value for size in sheet.sizes if size.name == "set-back")
    moved = {size.name.removeprefix("in-") for size in sheet.sizes if size.name.startswith("in-")}
    lengths = [max(x for x, _ in panel.outline) - asked.stub for panel in sheet.panels if panel.name in moved]
    assert float(max(lengths)) == pytest.approx(float(back), abs=CLOSED)


@given(transitions())
def test_neighbouring_edges_are_equally_long(asked):
    """Every slanted corner is cut on two panels: both cuts must be one length."""
    sheet = transition.lay_out(asked)
    assume(not isinstance(sheet, Mistake))
    edges = {panel.name: flat_corners(panel) for panel in sheet.panels}

    def slanted(side, high):
        points = edges[side]
        reach, start = points[:, 0].max(), 4.0
        at = (max if high else min)(y for x, y in points if x == reach)
        edge = points[:, 1].max() if high else 0.0
        return np.hypot(reach - start, at - edge)

    for level, upright in product(("top", "bottom"), ("left", "right")):
        assert slanted(level, upright == "right") == pytest.approx(slanted(upright, level == "top"), abs=CLOSED)


@given(transitions())
def test_scaling_a_transition_scales_its_lengths_and_keeps_its_angles(asked):
    one = transition.lay_out(asked)
    twice = transition.lay_out(
        transition.Wanted(tuple(2 * x for x in asked.large), tuple(2 * x for x in asked.small), asked.flat, SLOPE, F(1), asked.method, stub=2 * asked.stub)
    )
    assume(not isinstance(one, Mistake) and not isinstance(twice, Mistake))
    for a, b in zip(one.sizes, twice.sizes, strict=True):
        assert float(b.value) == pytest.approx(float(a.value) * (1 if a.unit == "°" else 2), abs=0.01), a.name


@given(transitions())
def test_a_mirrored_transition_has_mirrored_panels(asked):
    mirror = {"left": "right", "right": "left"}
    other = transition.Wanted(asked.large, asked.small, tuple(mirror.get(s, s) for s in asked.flat), SLOPE, F(1), asked.method)
    one, two = transition.lay_out(asked), transition.lay_out(other)
    assume(not isinstance(one, Mistake))
    lengths = [{p.name: max(x for x, _ in p.outline) for p in sheet.panels} for sheet in (one, two)]
    assert {mirror.get(name, name): x for name, x in lengths[0].items()} == lengths[1]
    assert one.closing == two.closing


# --- offsets, elbows


@given(st.integers(6, 20).map(F), st.integers(1, 10).map(F), st.integers(8, 20).map(F))
def test_a_mitred_offset_keeps_its_depth_and_lands_where_it_was_asked(depth, by, over):
    sheet = offset.lay_out((depth, F(10)), by, over, "width", F(1))
    assume(not isinstance(sheet, Mistake))
    middle = flat_corners(next(p for p in sheet.panels if p.name == "middle-cheek"))
    end = flat_corners(next(p for p in sheet.panels if p.name == "end-cheek"))
    cut_on_end, cut_on_middle = np.subtract(end[2], end[1]), np.subtract(middle[3], middle[0])
    assert np.linalg.norm(cut_on_end) == pytest.approx(np.linalg.norm(cut_on_middle), abs=CLOSED)
    assert np.ptp(middle[:, 1]) == float(depth)  # the full depth is kept on the slant
    # the middle, turned over, leans by twice the mitre: its length must reach exactly `by` aside and `over` along
    mitre = np.arctan2(cut_on_end[0], cut_on_end[1])
    length = middle[1, 0] - middle[0, 0]
    assert length * np.sin(2 * mitre) == pytest.approx(float(by), abs=CLOSED)
    assert length * np.cos(2 * mitre) == pytest.approx(float(over), abs=CLOSED)


@given(st.integers(6, 12).map(F), st.sampled_from([F(30), F(45), F(60), F(90)]), st.integers(2, 4), st.integers(2, 8).map(F))
def test_the_pieces_of_a_mitred_elbow_make_its_turn(width, turn, pieces, throat):
    sheet = elbow.mitred((width, F(10)), turn, pieces, throat if pieces > 2 else F(0), F(1))
    assume(not isinstance(sheet, Mistake))
    end = flat_corners(next(p for p in sheet.panels if p.name == "end-cheek"))
    mitre = np.degrees(np.arctan2(end[2, 0] - end[1, 0], float(width)))
    assert 2 * mitre * (pieces - 1) == pytest.approx(float(turn), abs=0.1)
    for gore in (flat_corners(p) for p in sheet.panels if p.name == "gore-cheek"):
        left, right = gore[3] - gore[0], gore[2] - gore[1]
        assert np.linalg.norm(left) == pytest.approx(np.linalg.norm(right), abs=CLOSED)
        assert np.linalg.norm(left) == pytest.approx(np.linalg.norm(end[2] - end[1]), abs=CLOSED)


def test_a_radius_elbow_of_one_and_a_half_widths():
    """Source: arc length = radius x angle; centreline radius of 1.5 W has a throat of one width."""
    sheet = elbow.radius((F(12), F(10)), F(90), F(12), F(1))
    sizes = {size.name: size.value for size in sheet.sizes}
    assert sizes["centre-ratio"] == F(3, 2)
    assert float(sizes["throat-panel"]) == pytest.approx(12 * np.pi / 2 + 8, abs=CLOSED)
    assert float(sizes["heel-panel"]) == pytest.approx(24 * np.pi / 2 + 8, abs=CLOSED)


def test_a_square_ninety_gets_vanes_and_a_forty_five_does_not():
    steps = [{step.key for step in elbow.mitred((F(12), F(10)), F(turn), 2, F(0), F(1)).steps} for turn in (90, 45)]
    assert ["vanes" in keys for keys in steps] == [True, False]


# --- what is refused


@pytest.mark.parametrize(
    ("sheet", "key"),
    [
        (transition.lay_out(wanted((20, 14), (20, 16))), "layout.not-smaller"),
        (transition.lay_out(wanted((20, 14), (20, 14))), "layout.nothing-changes"),
        (transition.lay_out(wanted((20, 14), (20, 11), ("top", "bottom"))), "layout.no-side-free"),
        (transition.lay_out(wanted((20, 14), (20, 2))), "layout.too-small"),
        (transition.lay_out(wanted((20, 14), (20, 6), ("bottom",))), "layout.one-side-too-long"),
        (transition.lay_out(wanted((20, 24), (20, 6), ("bottom",))), "layout.both-sides-too-long"),
        (transition.lay_out(wanted((20, 24), (20, 6))), "layout.longer-than-a-section"),
        (transition.lay_out(wanted((20, 14), (20, 11), ("bottom",), set_back=F(17))), "layout.set-back-too-short"),
        (transition.lay_out(transition.Wanted((F(9), F(9)), (F(8), F(8)), (), SLOPE, F(3), "section")), "layout.no-such-board"),
        (offset.lay_out((F(10), F(10)), F(0), F(10), "width", F(1)), "layout.not-positive"),
        (elbow.mitred((F(10), F(10)), F(120), 2, F(0), F(1)), "layout.turn"),
        (take_off.branch("tee", (F(20), F(10)), (F(10), F(12)), F(12), "45", F(1)), "layout.branch-too-high"),
        (take_off.branch("tee", (F(20), F(10)), (F(10), F(8)), F(2), "45", F(1)), "layout.too-near-the-end"),
        (take_off.branch("tee", (F(20), F(10)), (F(30), F(8)), F(12), "45", F(1)), "layout.longer-than-a-section"),
        (take_off.straight((F(20), F(10)), F(60), F(1)), "layout.longer-than-a-section"),
        (take_off.straight((F(20), F(10)), F(0), F(1)), "layout.bad-length"),
        (take_off.end_cap((F(60), F(50)), F(1)), "layout.larger-than-a-sheet"),
    ],
    ids=lambda value: value if isinstance(value, str) else "",
)
def test_what_can_not_be_cut_is_refused_with_the_reason(sheet, key):
    assert isinstance(sheet, Mistake) and sheet.key == key


SHEETS = {
    "transition": transition.lay_out(wanted((20, 14), (16, 12), ("bottom",), "board")),
    "section": transition.lay_out(wanted((20, 14), (20, 11), ("bottom",), "section")),
    "offset": offset.lay_out((F(12), F(10)), F(4), F(20), "width", F(1)),
    "elbow": elbow.mitred((F(10), F(10)), F(90), 3, F(5), F(1)),
    "radius": elbow.radius((F(12), F(10)), F(90), F(12), F(1)),
    "tee": take_off.branch("tee", (F(20), F(12)), (F(10), F(8)), F(12), "45", F(1)),
    "cap": take_off.end_cap((F(10), F(8)), F(1)),
    "straight": take_off.straight((F(18), F(12)), F(30), F(1)),
}


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("name", SHEETS)
def test_every_sheet_is_told_and_drawn_in_both_languages(name, language):
    lines = list(cut_text.lines(SHEETS[name], language))
    assert len(lines) > 15 and all("{" not in line for line in lines)
    picture = cut_drawing.svg(SHEETS[name], language)
    shapes = {(panel.outline, panel.edges, panel.name in ("left", "right")): 1 + bool(panel.inner) for panel in SHEETS[name].panels}
    assert picture.count("<polygon") == sum(shapes.values()) and "<title" in picture, "panels that are alike are drawn once"


@pytest.mark.parametrize("name", SHEETS)
def test_no_side_has_the_article_of_the_panel_in_spanish(name):
    told = " ".join(cut_text.steps(SHEETS[name], "es"))
    assert not re.search(r"\bel (panel )?(izquierda|derecha)\b", told), told


@pytest.mark.parametrize("name", SHEETS)
def test_every_sheet_is_what_its_schema_says(name):
    schema = json.loads((Path(__file__).parents[1] / "schemas" / "layout.json").read_text(encoding="utf-8"))
    document = cut_sheet.to_json(SHEETS[name])
    assert list(Draft202012Validator(schema).iter_errors(json.loads(json.dumps(document)))) == []
    assert not Draft202012Validator(schema).is_valid(document | {"method": "guess"})


def test_every_kind_asks_for_what_it_needs(capsys):
    from logbook.cli import main

    assert main(["layout", "offset", "--size", "12x10", "--by", "4"]) == 2
    assert "--over" in capsys.readouterr().err
    assert main(["layout", "transition", "--from", "20x14", "--to", "20-11"]) == 2
    assert "20-11" in capsys.readouterr().err


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_half_sheet_print_is_archivable_and_accessible(language):
    """Source: ISO 19005-2 (PDF/A-2a) and ISO 14289-1 (PDF/UA-1), judged by an outside validator."""
    print_ = paper.pdf(SHEETS["transition"], language)
    assert print_ == paper.pdf(SHEETS["transition"], language)
    for profile in (page.ValidationProfile.PDF_A_2A, page.ValidationProfile.PDF_UA_1):
        assert page.is_pdf_compliant_bytes(print_, profile=profile)


def test_a_print_that_cannot_be_written_is_told_and_is_no_flag(capsys, tmp_path):
    """A traceback came, with the exit code that means "something flagged"."""
    from logbook.cli import main

    assert main(["layout", "straight", "--size", "18x12", "--length", "40", "--pdf", str(tmp_path / "none" / "x.pdf")]) == 2
    told = capsys.readouterr().err
    assert "cannot be read or written" in told and "x.pdf" in told and "Traceback" not in told
