"""What is cut out of a section or a sheet fits together, closes as the job says, and can be read where it is drawn."""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction as F
from itertools import combinations, product
from xml.etree import ElementTree

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from logbook import limits
from logbook.geometry import asked, cut_drawing, cut_panel, cut_text, elbow, offset, take_off, transition
from logbook.mistake import Mistake
from test_cut_sheets import CLOSED, SHEETS, transitions, wanted

USUAL = limits.DEFAULTS.__getitem__


def lay_out(kind, limit=USUAL, **given):
    return asked.lay_out(kind, given, limit)


# --- a section cut across by mitres: cut it up, turn every second piece half round about its length, put the cuts together


def put_together(sheet):
    """Each piece as it lies: start and end of its near face, then of its far face; and the widest misfit of two cuts."""
    section = next(panel for panel in sheet.panels if panel.name == "section-cheek")
    long, depth = (float(max(corner[way] for corner in section.outline)) for way in (0, 1))
    cuts = [(0.0, 0.0), *((float(s.start[0]), float(s.end[0])) for s in section.strokes), (long, long)]
    lying, misfit = [], 0.0
    for n, (start, end) in enumerate(zip(cuts, cuts[1:])):
        if n % 2:  # turned: what was the near face is the far one
            start, end = start[::-1], end[::-1]
        piece = np.array([[start[0], 0], [end[0], 0], [start[1], depth], [end[1], depth]])
        if lying:
            near, far = lying[-1][1], lying[-1][3]
            own, goal = piece[2] - piece[0], far - near
            misfit = max(misfit, abs(np.hypot(*own) - np.hypot(*goal)))
            angle = np.arctan2(goal[1], goal[0]) - np.arctan2(own[1], own[0])
            turn = np.array([[np.cos(angle), -np.sin(angle)], [np.sin(angle), np.cos(angle)]])
            piece = (piece - piece[0]) @ turn.T + near
        lying.append(piece)
    return lying, misfit


def heading(piece):
    along = piece[1] - piece[0]
    return np.degrees(np.arctan2(along[1], along[0]))


@given(st.integers(6, 14).map(F), st.sampled_from([F(30), F(45), F(60), F(75), F(90)]), st.integers(2, 5), st.integers(1, 8).map(F))
def test_an_elbow_cut_out_of_one_section_makes_its_turn_round_its_throat(width, turn, pieces, throat):
    sheet = elbow.mitred((width, F(10)), turn, pieces, throat if pieces > 2 else F(0), F(1))
    assume(not isinstance(sheet, Mistake))
    lying, misfit = put_together(sheet)
    assert len(lying) == pieces and misfit <= CLOSED
    assert abs(heading(lying[-1]) - heading(lying[0])) == pytest.approx(float(turn), abs=0.1)
    if pieces > 2:  # the near faces touch one circle of the throat radius
        radius, mitre = float(throat), np.radians(float(turn) / (pieces - 1) / 2)
        centre = np.array([float(lying[0][1][0]) - radius * np.tan(mitre), -radius])
        for piece in lying:
            along = (piece[1] - piece[0]) / np.hypot(*(piece[1] - piece[0]))
            to_centre = centre - piece[0]
            assert abs(along[0] * to_centre[1] - along[1] * to_centre[0]) == pytest.approx(radius, abs=CLOSED)


@given(st.integers(6, 20).map(F), st.integers(1, 10).map(F), st.integers(8, 20).map(F))
def test_an_offset_cut_out_of_one_section_lands_beside_itself(depth, by, over):
    sheet = offset.lay_out((depth, F(10)), by, over, "width", F(1))
    assume(not isinstance(sheet, Mistake))
    (first, _, last), misfit = put_together(sheet)
    assert misfit <= CLOSED and heading(last) == pytest.approx(heading(first), abs=0.1)
    overall = next(size.value for size in sheet.sizes if size.name == "overall")
    assert abs(last[1][1] - first[0][1]) == pytest.approx(float(by), abs=CLOSED)
    assert last[1][0] == pytest.approx(float(overall), abs=CLOSED) and last[3][0] == pytest.approx(float(overall), abs=CLOSED)


def test_a_mark_an_eighth_off_does_not_fit():
    """The construction above can fail."""
    sheet = elbow.mitred((F(12), F(10)), F(90), 3, F(6), F(1))
    section = sheet.panels[0]
    first = section.strokes[0]
    spoiled = [type(first)("cut", first.start, (first.end[0] + F(1, 8), first.end[1])), *section.strokes[1:]]
    panels = (type(section)(section.name, section.outline, strokes=tuple(spoiled)), *sheet.panels[1:])
    lying, misfit = put_together(type(sheet)(**{**vars(sheet), "panels": panels}))
    assert misfit > CLOSED or abs(abs(heading(lying[-1])) - 90) > 0.1


@given(st.integers(6, 40).map(F))
def test_the_entry_of_a_branch_slopes_at_forty_five_degrees(width):
    """Source: the handbook's branch figure: the entry is a quarter of the branch long, at least 4 in., at 45°."""
    sheet = take_off.branch("tee", (F(40), F(40)), (width, F(8)), F(4), "45", F(1))
    assume(not isinstance(sheet, Mistake))
    cheek = next(panel for panel in sheet.panels if panel.name == "branch-cheek")
    slanted = [(a, b) for a, b in zip(cheek.outline, cheek.outline[1:]) if a[0] != b[0] and a[1] != b[1]]
    ((a, b),) = slanted
    assert abs(a[0] - b[0]) == abs(a[1] - b[1]) == max(width / 4, 4)


@given(st.integers(6, 20).map(F), st.integers(4, 20).map(F), st.sampled_from([F(30), F(45), F(90)]))
def test_the_cheek_of_a_radius_elbow_is_a_ring_with_straight_ends(width, throat, turn):
    """Its area by the shoelace of its corners, against the ring's sector and its two stubs."""
    sheet = elbow.radius((width, F(10)), turn, throat, F(1))
    assume(not isinstance(sheet, Mistake))
    x, y = np.array([[float(a), float(b)] for a, b in sheet.panels[0].outline]).T
    area = abs(np.dot(x, np.roll(y, -1)) - np.dot(y, np.roll(x, -1))) / 2
    heel = float(throat + width)
    ring = np.radians(float(turn)) / 2 * (heel**2 - float(throat) ** 2) + 2 * 4 * float(width)
    assert area == pytest.approx(ring, rel=0.005), "twelve straight strokes stand for each arc"
    panels = {panel.name: max(corner[0] for corner in panel.outline) for panel in sheet.panels}
    assert float(panels["heel"] - panels["throat"]) == pytest.approx(np.radians(float(turn)) * float(width), abs=CLOSED)


# --- how edges meet


@given(transitions())
def test_every_corner_is_a_fold_or_a_shiplap_with_a_butt_in_it_and_no_panel_is_both(wanted_one):
    """Source: common practice, no published source; the rule edges-known says that no side is both."""
    sheet = transition.lay_out(wanted_one)
    assume(not isinstance(sheet, Mistake))
    edges = {panel.name: panel.edges for panel in sheet.panels}
    for level, upright in product(("top", "bottom"), ("left", "right")):
        corner = {edges[level][upright == "right"], edges[upright][level == "top"]}
        assert corner in ({"fold"}, {"shiplap", "butt"})
    for name, pair in edges.items():
        assert not {"shiplap", "butt"} <= set(pair), name


@pytest.mark.parametrize(("air", "end"), [("narrows", "female"), ("widens", "male")])
def test_a_piece_that_widens_is_cut_at_the_other_end(air, end):
    """The rule made-from-end: a piece that widens can only be laid out from the other end."""
    steps = lay_out("transition", large="20x14", small="20x11", flat="bottom", air=air).steps
    assert steps[0].key == "cut-end" and steps[0].values["end"] == end


# --- closing


def test_a_seam_has_staples_or_cross_tabs_as_it_has_a_flap_or_none():
    for sheet in SHEETS.values():
        closed, steps = sheet.closing, {step.key for step in sheet.steps}
        assert (closed.staples > 0) is not (closed.tabs > 0)
        assert ("tabs-at-mitre" in steps) is (closed.tabs > 0) and ("close" in steps or "four-sides" in steps) is (closed.staples > 0)


def test_cross_tabs_are_counted_a_side():
    """By hand: an opening of 14 x 8 in. has two sides of 14 in. (2 tabs each at 12 in.) and two of 8 in. (1 tab each): 6."""
    closed = lay_out("tee", size="20x12", branch="10x8").closing
    assert (closed.seam, closed.tabs, closed.tape) == (44, 6, 44 + 4 + 6 * 8)


def test_a_seam_closes_by_the_job_s_own_limits():
    own = dict(limits.DEFAULTS) | {"staple_spacing": F(1), "cross_tab_spacing": F(6), "cross_tab_length": F(10), "made_from": "male"}
    flapped = lay_out("straight", own.__getitem__, size="18x12", length="30")
    assert flapped.closing.staples == flapped.closing.seam + 1
    told = cut_text.steps(flapped, "en")
    assert "every 1 in." in told[-1] and told[0].startswith("Lay out from the male end") and "new female end" in told[3]
    tabbed = lay_out("elbow", own.__getitem__, size="12x10")
    assert any("10 in. or longer, every 6 in." in step for step in cut_text.steps(tabbed, "en"))


@given(transitions())
def test_millimetres_and_inches_lay_out_the_same_sheet(wanted_one):
    def written(size, unit):
        lengths = [Decimal(side.numerator) / side.denominator * (1 if unit == "in" else Decimal("25.4")) for side in size]
        return " x ".join(f"{length:f}" for length in lengths) + f" {unit}"

    one, other = (
        lay_out("transition", large=written(wanted_one.large, unit), small=written(wanted_one.small, unit), flat=",".join(wanted_one.flat), method=wanted_one.method)
        for unit in ("in", "mm")
    )
    assert one == other


# --- drawn

SVG = "{http://www.w3.org/2000/svg}"


def boxes(picture):
    """Every text of the picture with the box it takes, by the widest that letters of the face are."""
    for text in ElementTree.fromstring(picture).iter(SVG + "text"):
        wide, x, y = len(text.text) * 6.7, float(text.get("x")), float(text.get("y"))
        start = x - wide * {"start": 0, "middle": 0.5, "end": 1}[text.get("text-anchor")]
        yield text.text, (start, y - 10, start + wide, y + 3)


def readable(sheet, language="en"):
    picture = cut_drawing.svg(sheet, language)
    wide, tall = map(float, re.search(r'viewBox="0 0 (\S+) (\S+)"', picture).groups())
    told = list(boxes(picture))
    assert tall <= cut_drawing.TALLEST
    for text, (left, top, right, foot) in told:
        assert left >= -1 and top >= 0 and right <= wide + 1 and foot <= tall, f"{text} runs out of the picture"
    for (one, a), (other, b) in combinations(told, 2):
        assert a[0] >= b[2] or b[0] >= a[2] or a[1] >= b[3] or b[1] >= a[3], f"{one} lies on {other}"
    return [text for text, _ in told]


@given(transitions())
def test_nothing_on_the_drawing_of_a_transition_lies_on_anything_else(wanted_one):
    sheet = transition.lay_out(wanted_one)
    assume(not isinstance(sheet, Mistake))
    told = readable(sheet)
    for panel in sheet.panels:
        assert cut_panel.lettered(max(x for x, _ in panel.outline)) in told, "every panel's length is lettered"


@given(st.integers(6, 30).map(F), st.integers(2, 6), st.integers(1, 8).map(F), st.sampled_from(["en", "es"]))
def test_nothing_on_the_drawing_of_an_elbow_lies_on_anything_else(width, pieces, throat, language):
    sheet = elbow.mitred((width, F(10)), F(90), pieces, throat, F(1))
    assume(not isinstance(sheet, Mistake))
    told = readable(sheet, language)
    for stroke in sheet.panels[0].strokes:
        assert {cut_panel.lettered(stroke.start[0]), cut_panel.lettered(stroke.end[0])} <= set(told), "every mark is lettered"


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("name", SHEETS)
def test_nothing_on_a_drawing_lies_on_anything_else(name, language):
    assert readable(SHEETS[name], language)


@pytest.mark.parametrize("large", [(96, 40), (60, 60), (8, 6)])
def test_the_largest_and_the_smallest_duct_are_drawn_to_be_read(large):
    assert readable(transition.lay_out(wanted(large, (large[0] - 2, large[1]))))


# --- by hand


@pytest.mark.parametrize(
    ("kind", "given", "numbers"),
    [
        # 6 in. on one side at 2 in 12: set-back 6 x 6 = 36; slant sqrt(36² + 6²) = 36.497; short by 36 - 36²/36.497 = 0.490;
        # opening 20 - 6 x 35.510/36 = 14.082
        ("transition", {"large": "20x14", "small": "14x14", "flat": "left"}, {"set-back": 36, "slant-right": 36.497, "trim": 0.490, "finished-width": 14.082}),
        # 6 over 18: atan(1/3) = 18.435°; half of it 9.217°; 14 x tan 9.217° = 2.272; sqrt(360) = 18.974
        ("offset", {"size": "14x10", "by": "6", "over": "18"}, {"offset-angle": 18.435, "mitre": 9.217, "mitre-step": 2.272, "slant-middle": 18.974}),
        # 90° in three pieces: two joints of 45°, mitre 22.5°; 14 x 0.41421 = 5.799; throat 2 x 6 x 0.41421 = 4.971; heel 4.971 + 2 x 5.799 = 16.569
        ("elbow", {"size": "14x10", "pieces": "3", "throat": "6"}, {"mitre": 22.5, "mitre-step": 5.799, "gore-throat": 4.971, "gore-heel": 16.569}),
        # arcs of 90°: 14 x 1.5708 = 21.991 and 28 x 1.5708 = 43.982, 4 in. straight at each end
        ("elbow", {"size": "14x10", "throat": "14", "method": "board"}, {"throat-panel": 29.991, "heel-panel": 51.982}),
    ],
)
def test_the_numbers_worked_by_hand(kind, given, numbers):
    found = {size.name: float(size.value) for size in lay_out(kind, **given).sizes}
    for name, value in numbers.items():
        assert found[name] == pytest.approx(value, abs=0.002), name


def test_a_change_too_long_for_a_section_tells_what_both_sides_would_take():
    """By hand: 8 in. on one side need 48 + 4 in., on both 24 + 4; 18 in. need 108 + 4 and 54 + 4."""
    told = [cut_text.refusal(lay_out("transition", large="20x14", small="20x6", flat="bottom"), "en"), cut_text.refusal(lay_out("transition", large="20x24", small="20x6", flat="bottom"), "en")]
    assert "52 in." in told[0][0] and "then it needs 28 in." in told[0][1]
    assert "112 in." in told[1][0] and "still need 58 in." in told[1][0]


@pytest.mark.parametrize(
    ("kind", "given", "key", "where"),
    [
        ("straight", {"size": "99999999999x12", "length": "40"}, "layout.too-wide", "size"),  # took minutes to part into sheets
        ("straight", {"size": "97x12", "length": "40"}, "layout.too-wide", "size"),
        ("transition", {"large": "120x12", "small": "90x12"}, "layout.too-wide", "large"),
        ("straight", {"size": "1/64x12", "length": "40"}, "layout.too-small", "size"),  # was drawn as 0 x 12
        ("tee", {"size": "24x12", "branch": "2x12"}, "layout.too-small", "branch"),
        ("straight", {"size": "1x12", "length": "40", "board": "7"}, "layout.no-such-board", "board"),
        ("straight", {"size": "18x12", "length": "9" * 5000}, "layout.bad-length", "length"),  # more digits than can be printed
        ("straight", {"size": "9" * 5000 + "x12", "length": "40"}, "layout.bad-size", "size"),
        ("elbow", {"size": "18x12", "turn": "abc"}, "layout.bad-angle", "turn"),
    ],
)
def test_what_is_no_duct_is_refused_at_its_field_before_anything_is_reckoned(kind, given, key, where):
    refused = lay_out(kind, **given)
    assert isinstance(refused, Mistake) and (refused.key, refused.where) == (key, where)
    assert all("{" not in text for language in ("en", "es") for text in cut_text.refusal(refused, language))


def test_the_widest_and_the_smallest_duct_are_still_laid_out():
    for size in ("96x12", "2-1/2x3"):
        assert not isinstance(lay_out("straight", size=size, length="40"), Mistake)
