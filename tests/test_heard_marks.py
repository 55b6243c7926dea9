"""Marks that the schedule does not have: what is one letter away or sounds alike is asked about, never put in its place."""

import pytest

from logbook import pipeline
from logbook.job import parse

ROWS = "mark,run,kind,inlet\nT-17,2,tee,12x10\nT-31,2,tee,12x10\n14,4,straight,12x10\n7,3,straight,12x10\n27,3,straight,12x10\n37,3,straight,12x10\n"


@pytest.fixture
def job(tmp_path):
    (tmp_path / "schedule.csv").write_text(ROWS, encoding="utf-8")
    return parse('[[schedule]]\nfile = "schedule.csv"\nrevision = "B"\n', folder=tmp_path)


def planned(job, text):
    document = pipeline.check(text, job=job)
    (fitting,) = document["fittings"]
    finding = next(one for one in fitting["findings"] if one["rule"] == "as-planned")
    mark = next(fact["value"] for fact in fitting["facts"] if fact["name"] == "mark")
    return finding, mark


@pytest.mark.parametrize(
    ("said", "case", "words"),
    [
        ("Tee, T-7 on run two, 12 by 10.", "maybe-another-mark", "T-17"),
        ("Straight 40 on run four, 12 by 10.", "maybe-another-mark", "14"),
        ("Straight 17 on run three, 12 by 10.", "not-on-schedule", "nearest"),  # one digit from 7, 27 and 37
        ("Straight 99 on run three, 12 by 10.", "not-on-schedule", "nearest"),
        ("Straight 14 on run three, 12 by 10.", "other-run", "run 4"),
        ("Straight 14 on run four, 12 by 10.", "as-planned", "14"),
    ],
)
def test_a_mark_near_to_one_that_is_planned_is_a_question(job, said, case, words):
    finding, mark = planned(job, said)
    assert (finding["case"], finding["verdict"]) == (case, "meets" if case == "as-planned" else "unclear")
    assert words in finding["says"] and "revision B" in finding["says"]


@pytest.mark.parametrize("said", ["Tee, T-7 on run two, 12 by 10.", "Straight 40 on run four, 12 by 10."])
def test_the_mark_stays_as_it_was_heard(job, said):
    finding, mark = planned(job, said)
    assert mark in ("T-7", "40")
    assert finding["asks"] == "mark"
