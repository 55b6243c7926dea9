"""Cut sheets on a page: the same numbers as the command, from the schedule or given; what can't be cut is refused in its place."""

from __future__ import annotations

import json
import subprocess
from xml.etree import ElementTree

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desk import PAGE, open_desk
from logbook import limits, schedule
from logbook.cli import main
from logbook.geometry import asked, cut_sheet
from logbook.geometry.cut_sheet import CutSheet
from logbook.mistake import Mistake

LIMIT = limits.DEFAULTS.__getitem__
SCHEDULE = """mark,run,order,kind,inlet,outlet,branch,flat side,length,drawing
3,2,1,transition,20x14,20x11,,bottom,,M-7
4,2,2,transition,20x11,20x14,,bottom,
5,2,3,branch,20x14,,8x6,,
6,2,4,straight,20x14,,,,36
7,2,5,collar,20x14,,,,
3,4,1,elbow,12x10,,,,
"""
# what each kind is asked, as an address and as a command line
WAYS = {
    "transition": ("large=20x14&small=20x11&flat=bottom", ["--from", "20x14", "--to", "20x11", "--flat", "bottom"]),
    "offset": ("size=12x10&by=4&over=20", ["--size", "12x10", "--by", "4", "--over", "20"]),
    "elbow": ("size=10x10&pieces=3&throat=5", ["--size", "10x10", "--pieces", "3", "--throat", "5"]),
    "tee": ("size=20x12&branch=10x8", ["--size", "20x12", "--branch", "10x8"]),
    "branch": ("size=20x12&branch=10x8&entry=square", ["--size", "20x12", "--branch", "10x8", "--entry", "square"]),
    "end_cap": ("size=10x8&board=1-1/2", ["--size", "10x8", "--board", "1-1/2"]),
    "straight": ("size=18x12&length=30", ["--size", "18x12", "--length", "30"]),
}


@pytest.fixture(scope="module")
def desk(tmp_path_factory):
    made = open_desk(tmp_path_factory.mktemp("cutting"))
    folder = made.settings.folder
    (folder / "schedule.csv").write_text(SCHEDULE)
    job = (folder / "job.toml").read_text()
    (folder / "job.toml").write_text(job + '\n[[schedule]]\nfile = "schedule.csv"\nrevision = "B"\n')
    return made


@pytest.fixture(scope="module")
def bench(desk):
    return desk.browser("installer")


def test_every_kind_is_a_way_on_the_page():
    assert set(WAYS) == set(asked.KINDS)


@pytest.mark.parametrize("kind", WAYS)
@pytest.mark.parametrize("language", ["en", "es"])
def test_the_page_says_what_the_command_says(bench, capsys, kind, language):
    address, line = WAYS[kind]
    page = bench.get(f"/layout?kind={kind}&{address}&language={language}", headers=PAGE)
    assert page.status_code == 200
    assert main(["layout", kind, *line, "--language", language]) == 0
    told = [one.strip() for one in capsys.readouterr().out.splitlines() if one.strip()]
    shown = page.get_data(as_text=True)
    from html import unescape

    shown = unescape(shown)
    for number in (one.rsplit("  ", 1)[-1] for one in told if one.endswith(("in.", "°")) and not one[0].isdigit()):
        assert number.strip() in shown
    assert told[0] in shown
    steps = [one.split(". ", 1)[1] for one in told if one[0].isdigit() and ". " in one[:5]]
    assert steps and all(step in shown for step in steps)


@pytest.mark.parametrize("kind", WAYS)
def test_the_drawing_and_the_print_are_of_the_same_address(bench, kind):
    drawn = bench.get(f"/layout/drawing.svg?kind={kind}&{WAYS[kind][0]}")
    assert drawn.status_code == 200 and ElementTree.fromstring(drawn.get_data()).get("role") == "img"


def test_a_scheduled_mark_brings_its_sizes_and_its_name_to_the_print(bench):
    page = bench.get("/layout?mark=3&run=2", headers=PAGE).text
    assert "transition 3, 20 x 14 – 20 x 11" in page and "revision B" in page and "mark 3, run 2" in page and "Drawing M-7." in page
    pdf = bench.get("/layout/sheet.pdf?mark=3&run=2")
    assert pdf.status_code == 200 and pdf.mimetype == "application/pdf"
    told = subprocess.run(["pdftotext", "-", "-"], input=pdf.get_data(), capture_output=True, check=True).stdout.decode()
    assert "transition 3" in told and "18 in." in told


def test_what_is_given_wins_over_the_schedule_and_the_rest_of_the_row_stays(bench):
    page = bench.get("/layout?mark=3&run=2&small=20x12", headers=PAGE).text
    assert "20 x 14 – 20 x 12" in page and 'value="bottom" checked' in page


def test_a_piece_that_widens_is_laid_out_from_its_larger_end(bench):
    assert "20 x 14 – 20 x 11" in bench.get("/layout?mark=4&run=2", headers=PAGE).text


def test_a_row_that_leaves_something_open_asks_for_it_and_keeps_the_rest(bench):
    bare = bench.get("/layout?mark=3", headers=PAGE)
    assert bare.status_code == 422 and "no mark 3" in bare.text, "two runs have a mark 3: it does not tell which"


@pytest.mark.parametrize(
    ("address", "words"),
    [
        ("kind=transition&large=20x14&small=20x16", "is not inside"),
        ("kind=transition&large=20x14&small=20x11&flat=top&flat=bottom", "are both to stay flat"),
        ("kind=transition&large=20x14&small=20x11&set_back=10&flat=bottom", "needs 18"),
        ("kind=transition&large=20x14&small=20x6&flat=bottom", "of a section"),
        ("kind=straight&size=18x12&length=60", "of a section"),
        ("kind=straight&size=18x12&length=-3", "A length in inches"),
        ("kind=straight&size=twelve&length=30", "A size like"),
        ("kind=straight&size=18x12", "Length"),
        ("kind=elbow&size=10x10&turn=130", "at most 90°"),
        ("kind=elbow&size=10x10&pieces=40", "2 – 12"),
        ("kind=tee&size=20x12&branch=10x14", "does not fit a side"),
        ("kind=spiral&size=10x10", "no cut sheet"),
        ("kind=end_cap&size=10x10&by=4&axis=height", "not laid out from “Shift”, “It shifts along its”"),
        ("kind=elbow&size=10x10&method=board&throat=6&pieces=3", "not laid out from “Pieces”"),
        ("mark=3&run=2&length=40", "not laid out from “Length”"),
        ("mark=99", "no mark 99"),
        ("mark=7&run=2", "no cut sheet"),
    ],
)
def test_what_can_not_be_cut_is_refused_with_reason_and_cure(bench, address, words):
    page = bench.get(f"/layout?{address}", headers=PAGE)
    assert page.status_code == 422 and words in page.text and 'role="alert"' in page.text and "<img class" not in page.text
    for other in ("drawing.svg", "sheet.pdf"):
        answer = bench.get(f"/layout/{other}?{address}", headers={"Accept": "application/json"})
        assert answer.status_code == 422 and words in json.loads(answer.text)["error"]


def test_the_field_that_is_wrong_says_so_and_keeps_what_was_typed(bench):
    page = bench.get("/layout?kind=straight&size=twelve&length=30", headers=PAGE).text
    assert 'value="twelve"' in page and 'aria-invalid="true"' in page and 'value="30"' in page


def test_a_kind_that_was_only_chosen_is_not_refused_yet(bench):
    page = bench.get("/layout?kind=offset", headers=PAGE)
    assert page.status_code == 200 and 'role="alert"' not in page.text and "script" not in page.text.split("<main")[1].split("</main")[0]


def test_the_slope_is_the_job_s(tmp_path):
    made = open_desk(tmp_path)
    file = made.settings.folder / "job.toml"
    file.write_text(file.read_text().replace("[limits]", '[limits]\nslope = "1 in 12"', 1))
    page = made.browser("lead").get("/layout?kind=transition&large=20x14&small=20x11&flat=bottom", headers=PAGE).text
    assert "36 in." in page and "1 in 12" in page


def test_the_row_of_each_kind_becomes_fields_that_lay_out():
    rows, wrong = schedule.read(SCHEDULE, "s")
    assert not wrong
    laid = [asked.lay_out(fields["kind"], fields, LIMIT) for fields in map(asked.of_row, rows) if fields]
    assert len(laid) == 5 and all(isinstance(one, CutSheet) for one in laid)


TEXTS = st.one_of(
    st.sampled_from(["", "20x14", "14 x 20", "12", "3/8", "0", "-1", "1e9", "999999", "500x350 mm", "x", "1/0", "45", "square", "width", "bottom", "2", "90"]),
    st.text(st.characters(exclude_characters="{}", exclude_categories=("Cs",)), max_size=8),
)


def test_the_command_draws_nothing_past_an_option_that_the_fitting_does_not_use_and_names_it(capsys):
    assert main(["layout", "tee", "--size", "20x12", "--branch", "8x6", "--length", "48", "--by", "3"]) == 2
    told = capsys.readouterr()
    assert not told.out and "(--by, --length)" in told.err and "“Branch size”" in told.err
    assert main(["layout", "elbow", "--size", "10x10", "--method", "board", "--throat", "6"]) == 0


def test_the_page_that_sends_every_choice_as_it_is_offered_is_not_refused_for_it(bench):
    assert bench.get("/layout?kind=elbow&laid=1&size=10x10&turn=90&pieces=2&throat=6&board=1&method=board", headers=PAGE).status_code == 200


TYPED = st.sampled_from(asked.KINDS).flatmap(lambda kind: st.tuples(st.just(kind), st.dictionaries(st.sampled_from(asked.FIELDS[kind]), TEXTS, max_size=8)))


@settings(derandomize=True, max_examples=300, deadline=None)
@given(TYPED)
def test_whatever_is_typed_is_a_sheet_or_a_mistake_with_its_words(asked_for):
    kind, typed = asked_for
    from logbook.geometry.cut_text import refusal

    found = asked.lay_out(kind, typed, LIMIT)
    if isinstance(found, Mistake):
        for language in ("en", "es"):
            assert all(part and "{" not in part for part in refusal(found, language))
    else:
        assert cut_sheet.to_json(found)["kind"] == kind
