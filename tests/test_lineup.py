"""The job on one page: every row of the schedule and every piece of the log stands there once, in the run's order."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from logbook import lineup, schedule
from logbook.lineup import STATES

QUIET = {"kind": "straight", "open": 0, "in-hand": 0, "asked": 0, "settled": 0}


def piece(run, mark, **more):
    return QUIET | {"id": f"{run}/{mark}", "run": run, "mark": mark} | more


def plan(*rows):
    return schedule.revision("r1", None, tuple(schedule.Row(mark=mark, line=at, run=run, kind="straight", order=order) for at, (run, mark, order) in enumerate(rows)))


PLAN = plan(("10", "1", 1), ("2", "7", 2), ("2", "B-12", 1), ("2", "9", None), (None, "5", None))


def told(lines):
    return [(line.run, [(slot.mark, slot.state) for slot in line.slots]) for line in lines]


def test_runs_count_and_a_run_keeps_the_order_of_the_schedule():
    assert told(lineup.lines(PLAN, [piece("2", "7")])) == [
        ("2", [("B-12", "missing"), ("7", "logged"), ("9", "missing")]), ("10", [("1", "missing")]), (None, [("5", "missing")]),
    ]  # fmt: skip


def test_marks_are_compared_as_the_contract_does_and_a_piece_without_a_run_bears_its_mark():
    found = lineup.lines(PLAN, [piece("2", "b 12"), piece(None, "9"), piece("3", "7")])
    assert told(found) == [
        ("2", [("b 12", "logged"), ("7", "missing"), ("9", "logged")]), ("3", [("7", "logged")]), ("10", [("1", "missing")]), (None, [("5", "missing")]),
    ]  # fmt: skip
    assert found[1].counts["unplanned"] == 1 and found[0].counts["planned"] == 3


@pytest.mark.parametrize(
    ("more", "state"),
    [
        ({}, "logged"), ({"settled": 2}, "settled"), ({"asked": 1, "settled": 1}, "asked"), ({"in-hand": 1, "asked": 1}, "in-hand"), ({"open": 1, "in-hand": 1, "settled": 4}, "open"),
    ],
)  # fmt: skip
def test_what_somebody_has_to_do_first_is_what_a_piece_shows(more, state):
    assert lineup.state_of(piece("2", "7", **more)) == state


def test_without_a_schedule_nothing_is_missing_and_nothing_planned():
    counts = lineup.lines(None, [piece("2", "7"), piece(None, None)])[0].counts
    assert (counts["planned"], counts["missing"], counts["unplanned"]) == (0, 0, 1)


MARKS = st.sampled_from(["1", "2", "B-3", "b3", None])


@given(st.lists(st.tuples(st.sampled_from(["1", "2", None]), MARKS), max_size=8))
def test_every_piece_and_every_row_stands_there_once(said):
    pieces = [piece(run, mark) | {"id": str(at)} for at, (run, mark) in enumerate(said)]
    slots = [slot for line in lineup.lines(PLAN, pieces) for slot in line.slots]
    assert sorted(slot.piece["id"] for slot in slots if slot.piece) == sorted(one["id"] for one in pieces)
    assert sorted(slot.row.line for slot in slots if slot.row) == [row.line for row in PLAN.rows]
    assert {slot.state for slot in slots} <= set(STATES)
