"""A run as it was spoken: its order, the odd joint, what is missing, and that the drawing says what the rules say."""

from datetime import UTC, datetime, timedelta
from fractions import Fraction
from xml.etree import ElementTree

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from logbook import job as jobs
from logbook import pipeline, schedule
from logbook.geometry import run_drawing
from logbook.note import Note
from logbook.reading import read
from logbook.rules import judge
from logbook.runs import line, site
from logbook.said import Entry, Fact, Reading

FIRST = datetime(2026, 1, 5, 7, tzinfo=UTC)
PLAN = """mark,run,order,kind,inlet,outlet,branch,diameter
1,1,1,straight,24x12,,,
2,1,2,transition,24x12,20x12,,
3,1,3,straight,20x12,,,
4,1,4,branch,20x12,,10x6,
8,1,5,collar,20x12,,,8
5,1,6,elbow,20x12,,,
6,1,7,end cap,20x12,,,
"""


def job(plan: str | None = PLAN, **more) -> jobs.Job:
    if plan is None:
        return jobs.Job(**more)
    rows, wrong = schedule.read(plan, "plan.csv")
    assert not wrong
    return jobs.Job(revisions=(schedule.revision("A", None, rows),), **more)


def pieces(of: jobs.Job, *readings: Reading):
    at = [FIRST + timedelta(minutes=n) for n in range(len(readings))]
    notes = [Note(f"n{n}", of.id, "p", "p", t, t, t, "answered", reading=one, answered_at=t) for n, (t, one) in enumerate(zip(at, readings))]
    return list(pipeline.reckon(notes, (), of, FIRST + timedelta(days=1)).pieces.values())


def spoken(of: jobs.Job, *texts: str) -> run_drawing.Line:
    return line.lay_out(of, pieces(of, *(read(text, language="en", job=of) for text in texts)), "1")


def states(found: run_drawing.Line) -> list[str]:
    return [joint.state for joint in found.joints]


def test_the_order_is_the_schedule_s_whatever_was_made_first():
    found = spoken(job(), "Run one, fitting three, straight, twenty by twelve.", "Run one, fitting one, straight, twenty-four by twelve.")
    assert [(stop.mark, stop.logged) for stop in found.stops] == [("1", True), ("2", False), ("3", True), ("4", False), ("5", False), ("6", False)]
    assert states(found) == ["absent"] * 5 and found.planned


def test_without_a_schedule_the_order_is_that_of_making_and_only_what_was_said_joined_meets():
    found = spoken(
        job(None), "Run one, fitting three, straight, twenty by twelve.", "Run one, fitting one, straight, eighteen by twelve.",
        "Run one, fitting two, straight, twenty by twelve, hung and taped to one.",
    )  # fmt: skip
    assert [stop.mark for stop in found.stops] == ["3", "1", "2"] and not found.planned
    assert found.joints == (run_drawing.Joint("loose"), run_drawing.Joint("sizes", closed=True))


def test_what_stands_on_a_piece_is_no_link_of_the_chain():
    found = spoken(job(), "Branch four, run one, twenty by twelve.", "Collar eight, run one, eight inch.")
    assert "8" not in [stop.mark for stop in found.stops]
    (beside,) = next(stop for stop in found.stops if stop.mark == "4").beside
    assert beside.mark == "8"


def test_a_piece_that_is_not_on_the_schedule_follows_and_nothing_is_held_against_it():
    found = spoken(job(), "Run one, fitting five, elbow, twenty by twelve.", "Run one, fitting ninety, straight, eight by six.")
    assert found.stops[-1].mark == "90" and not found.stops[-1].planned and states(found)[-1] == "loose"


@pytest.mark.parametrize(
    ("texts", "state"),
    [
        (("Run one, fitting one, straight, twenty-four by twelve.", "Run one, fitting two, transition from twenty-four by twelve to twenty by twelve."), "mates"),
        (("Run one, fitting one, straight, twenty-four by twelve.", "Run one, fitting two, transition from twenty by twelve to eighteen by twelve."), "sizes"),
        (("Run one, fitting one, straight.", "Run one, fitting two, transition from twenty by twelve to eighteen by twelve."), "unsaid"),
        (
            (
                "Run one, fitting one, straight, twenty-four by twelve, air leaves by the female end.",
                "Run one, fitting two, transition from twenty-four by twelve to twenty by twelve, air leaves by the male end.",
            ),
            "ends",
        ),
    ],
)
def test_a_joint_is_told_by_what_was_said_of_both_its_pieces(texts, state):
    found = spoken(job(), *texts)
    assert states(found)[0] == state
    assert [(one.mark, other.mark) for one, _, other in found.odd()] == ([("1", "2")] if state in run_drawing.ODD else [])


@pytest.mark.parametrize(
    ("texts", "departs"),
    [
        (("Run one, straight one, eighteen by twelve, tied in to two.", "Run one, straight two, sixteen by twelve."), ["2"]),  # the earlier named the later
        (("Run one, straight two, sixteen by twelve.", "Run one, straight one, eighteen by twelve, tied in to two."), ["1"]),
        (("Run one, straight one, eighteen by twelve, tied in to two.", "Run one, straight two, eighteen by twelve."), []),
        (("Run one, tee one, twenty by twelve, branch ten by eight, tied in to two.", "Run one, straight two, ten by eight."), []),  # to its leg
        (("Run one, tee one, twenty by twelve, branch ten by eight, tied in to two.", "Run one, straight two, ten by ten."), ["2"]),
    ],
)
def test_a_joint_that_was_said_is_held_against_the_later_piece_whoever_named_the_other(texts, departs):
    of = job(None)
    found = pieces(of, *(read(text, language="en") for text in texts))
    ground = site(of, found)
    assert [one.mark for one in found for finding in judge(one, ground.around(one)) if finding.rule == "run-sizes" and finding.verdict == "departs"] == departs
    assert bool(line.lay_out(of, found, "1").odd()) == bool(departs)


SIZES = st.sampled_from([None, (24, 12), (20, 12), (12, 20), (20, 10)])


@settings(derandomize=True, max_examples=60, deadline=None)
@given(st.lists(st.tuples(st.sampled_from(["straight", "transition", "elbow", None]), SIZES, SIZES), min_size=6, max_size=6), st.permutations(range(6)))
def test_the_joints_marked_odd_are_those_that_the_rules_find(said, made):
    """Every departure of the rule `run-sizes` is an odd joint, or a piece that keeps no size, and the other way round."""
    of = job()
    marks = ["1", "2", "3", "4", "5", "6"]
    readings = []
    for place in made:
        kind, inlet, outlet = said[place]
        values = {"mark": marks[place], "run": "1", "kind": kind, "inlet_size": inlet, "outlet_size": outlet}
        values = {name: tuple(map(Fraction, value)) if isinstance(value, tuple) else value for name, value in values.items() if value}
        readings.append(Reading("en", "words", "", (Entry(0, tuple(Fact(name, value, name, 0, 1) for name, value in values.items())),)))
    found = pieces(of, *readings)
    ground = site(of, found)
    departs = [one.id for one in found for finding in judge(one, ground.around(one)) if finding.rule == "run-sizes" and finding.verdict == "departs"]
    laid = line.lay_out(of, found, "1")
    later = {piece.id: at for at, piece in enumerate(found)}
    odd = {max(one.piece, other.piece, key=later.get) for one, joint, other in laid.odd() if joint.state == "sizes"}
    assert set(departs) == odd | {stop.piece for stop in laid.stops if not stop.keeps_size}


def test_the_drawing_is_one_named_image_with_everything_in_words():
    found = spoken(job(), "Run one, fitting one, straight, twenty-four by twelve.", "Run one, fitting two, transition from twenty by twelve to eighteen by twelve.")
    for language, words in (("en", ("sizes do not mate", "24 × 12 meets 20 × 12", "not logged yet")), ("es", ("no casan", "topa con", "sin anotar"))):
        drawn = run_drawing.draw(found, language)
        root = ElementTree.fromstring(drawn.svg)
        shown = " ".join(root.itertext())
        assert root.get("role") == "img" and drawn.told in shown
        assert all(word in drawn.told and word in shown for word in words)
        assert drawn == run_drawing.draw(found, language), "the same run is the same bytes"


def test_every_line_of_text_fits_its_place():
    """Texts begin at the same place; a line of this face is about half its size a character wide."""
    found = spoken(job(), "Branch four, run one, twenty and three eighths by twelve and five eighths, branch ten and a half by six.")
    for language in ("en", "es"):
        for text in ElementTree.fromstring(run_drawing.draw(found, language).svg).iter("{http://www.w3.org/2000/svg}text"):
            if text.get("text-anchor") == "start":
                assert float(text.get("x")) + 0.52 * float(text.get("font-size")) * len(text.text) <= run_drawing.WIDE, text.text


def test_a_long_run_is_cut_for_paper_without_losing_a_joint():
    plan = "mark,run,order,kind,inlet\n" + "".join(f"{n},1,{n},straight,20x12\n" for n in range(1, 31))
    whole = spoken(job(plan), "Run one, fitting one, straight, twenty by twelve.")
    parts = run_drawing.pages(whole, 12)
    assert max(len(part.stops) for part in parts) <= 12
    assert [joint for part in parts for joint in part.joints] == list(whole.joints)
    assert [stop.mark for part in parts for stop in part.stops[: len(part.joints)]] + [whole.stops[-1].mark] == [stop.mark for stop in whole.stops]


def test_nothing_that_was_said_becomes_markup():
    of = job(None)
    hostile = Reading("en", "words", "", (Entry(0, (Fact("mark", '<script>"&', "x", 0, 1), Fact("run", "1", "x", 0, 1))),))
    drawn = run_drawing.draw(line.lay_out(of, pieces(of, hostile), "1"), "en")
    assert "<script" not in drawn.svg and ElementTree.fromstring(drawn.svg) is not None
