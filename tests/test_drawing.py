"""The drawing of a fitting as it was spoken: exact dimensions, and a "?" where nothing was said."""

import json
from pathlib import Path
from xml.etree import ElementTree

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from logbook import facts, measure
from logbook.geometry.drawing import DRAWN, draw

CASES = json.loads((Path(__file__).parent / "cases" / "drawing" / "fittings.json").read_text(encoding="utf-8"))


def said(values: dict, hedged: tuple = ()) -> list[dict]:
    return [
        {"name": name, "value": value, "unit": facts.BY_NAME[name].unit, "words": name, "start": 0, "end": 1, "hedged": name in hedged, "via": "typed"}
        for name, value in values.items()
    ]  # fmt: skip


def texts(svg: str) -> list[str]:
    return [node.text for node in ElementTree.fromstring(svg).iter("{http://www.w3.org/2000/svg}text")]


@pytest.mark.parametrize("case", CASES, ids=[case["name"] for case in CASES])
def test_what_was_said_is_drawn(case):
    drawn = draw(said(case["said"], tuple(case.get("hedged", ()))), case.get("language", "en"))
    shown = texts(drawn.svg)
    for text in case["shows"]:
        assert text in shown, f"{text!r} of {shown}"
    for text in case.get("never", ()):
        assert text not in shown
    assert shown.count("?") == case.get("unsaid", 0)


@pytest.mark.parametrize("kind", [kind for kind in DRAWN if kind])
@pytest.mark.parametrize("language", ["en", "es"])
def test_every_kind_has_a_drawing_with_a_name_and_a_description(kind, language):
    drawn = draw(said({"kind": kind, "mark": "7"}), language, "d-7")
    root = ElementTree.fromstring(drawn.svg)
    assert root.get("role") == "img" and root.get("aria-labelledby") == "d-7-t d-7-d"
    assert root.find("{http://www.w3.org/2000/svg}title").text == drawn.title
    assert "7" in drawn.title and drawn.told
    assert "style=" not in drawn.svg, "a strict page policy refuses inline styles"


def test_kinds_are_those_of_the_facts_table():
    assert set(DRAWN) - {None} == set(facts.KINDS)


def test_user_words_are_escaped():
    drawn = draw(said({"kind": "elbow", "mark": "<script>&"}), "en")
    assert "<script>" not in drawn.svg
    ElementTree.fromstring(drawn.svg)


lengths = st.fractions(min_value="1/8", max_value=120).map(lambda value: round(value * 64) / 64 or 1)


@settings(max_examples=50, derandomize=True)
@given(lengths, lengths, lengths, lengths)
def test_a_dimension_is_printed_exactly_as_it_was_said(a, b, by, back):
    drawn = draw(said({"kind": "transition", "inlet_size": [a, b], "side_moves": [{"side": "top", "by": by, "back": back, "way": "in"}]}), "en")
    shown = texts(drawn.svg)
    printed = [measure.printed(measure.from_json(value)) for value in (a, b, by, back)]
    assert printed[0] in shown and printed[1] in shown
    assert any(f"in {printed[2]} over {printed[3]}" in text for text in shown)


@settings(max_examples=50, derandomize=True)
@given(st.sampled_from([kind for kind in DRAWN]), st.lists(lengths, min_size=4, max_size=4), st.booleans())
def test_nothing_leaves_the_sheet(kind, numbers, bent):
    values = {"inlet_size": numbers[:2], "outlet_size": numbers[2:], "offset_by": numbers[0], "length": numbers[1], "turn_angle": 45 if bent else 90}
    drawn = draw(said(({"kind": kind} if kind else {}) | values), "en")
    assert drawn.width == 360 and 60 < drawn.height < 700
    for node in ElementTree.fromstring(drawn.svg).iter("{http://www.w3.org/2000/svg}text"):
        assert -1 <= float(node.get("x")) <= 361
