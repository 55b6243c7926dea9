"""The order in which a lead goes through what needs him, and the history of a mark, as pure functions."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st
from log_cases import cases

from logbook import job as jobs
from logbook import limits, pipeline, worklist
from logbook.history import beside, history
from logbook.rules import RULES
from logbook.wording import has
from logbook.worklist import LEVELS, WAITING, Item

TODAY = date(2026, 10, 14)
SCHEDULE = "mark,run,order,kind,inlet,area\n8,2,1,straight,18x10,rooms\n9,2,2,elbow,18x10,rooms\n10,2,3,straight,18x10,hall\n30,10,1,straight,18x10,hall\n"
CASES = list(cases("review", "worklist"))


@pytest.fixture(scope="module")
def job(tmp_path_factory):
    folder = tmp_path_factory.mktemp("job")
    (folder / "schedule.csv").write_text(SCHEDULE, encoding="utf-8")
    made = jobs.parse('[[schedule]]\nfile = "schedule.csv"\n', folder=folder)
    assert isinstance(made, jobs.Job)
    return made


def item(row: dict) -> Item:
    due = row.get("due")
    more = {name: row.get(name) for name in ("run", "mark", "kind", "decision")}
    return Item(row["name"], row["rule"], "e", row["verdict"], row.get("stands", "open"), due=None if due is None else date.fromisoformat(due), **more)


@pytest.mark.parametrize("case", CASES, ids=[case["name"] for case in CASES])
def test_the_most_serious_comes_first(case, job):
    found = worklist.in_order([item(row) for row in case["items"]], job, TODAY)
    assert [one.piece for one in found] == case["order"]


def test_the_groups_hold_every_item_once_under_its_level_run_and_place(job):
    ordered = worklist.in_order([item(row) for case in CASES for row in case["items"]], job, TODAY)
    grouped = worklist.groups(ordered, job, TODAY)
    assert [one for _, places in grouped for *_, items in places for one in items] == list(ordered)
    names = [name for name, _ in grouped]
    assert names == sorted(set(names), key=LEVELS.index)
    assert all({(one.run, worklist.place(one, job, TODAY)) for one in items} == {(run, place)} for _, places in grouped for run, place, items in places)


rows = st.builds(
    Item, piece=st.sampled_from("abcdef"), rule=st.sampled_from(limits.RULE_IDS), edition=st.just("e"),
    verdict=st.sampled_from(("departs", "unclear", "unsaid", "meets")), stands=st.sampled_from(("open", "in hand")),
    run=st.sampled_from((None, "1", "2", "10", "B")), mark=st.sampled_from((None, "7", "8", "8-1")),
    decision=st.sampled_from((None, "asked", "rework")), due=st.sampled_from((None, date(2026, 10, 13), date(2026, 10, 15))),
)  # fmt: skip


@given(st.lists(rows, max_size=12, unique_by=lambda one: (one.piece, one.rule)))
def test_next_leads_through_everything_that_nobody_is_at_and_to_nothing_else(items):
    ordered = worklist.in_order(items, jobs.DEFAULT, TODAY)
    wanted = [(one.piece, one.rule) for one in ordered if worklist.level(one, TODAY) not in WAITING]
    seen, left, at = [], ordered, ("", "")
    while (following := worklist.after(left, *at, TODAY)) is not None:
        left = tuple(one for one in left if (one.piece, one.rule) != at)  # what is settled is gone from the list
        at = (following.piece, following.rule)
        if at in seen:
            break
        seen.append(at)
    assert seen == wanted


def test_the_order_does_not_depend_on_the_order_in_which_it_was_read(job):
    every = [item(row | {"name": f"{number} {row['name']}"}) for number, case in enumerate(CASES) for row in case["items"]]
    assert worklist.in_order(every, job, TODAY) == worklist.in_order(every[::-1], job, TODAY)


def test_every_number_that_a_rule_reckons_has_a_label_at_the_desk():
    found = {
        name
        for rule in RULES
        for example in rule.examples
        for fitting in pipeline.check(example.words, language=example.language)["fittings"]
        for finding in fitting["findings"]
        for name, value in finding["reckoned"].items()
        if isinstance(value, int | float)
    }
    assert len(found) > 20 and {name for name in found if not has(f"desk.reckoned.{name}")} == set()


# --- history, and before and after


def note(id: str, at: str, by: str = "ana", **more) -> dict:
    return {"id": id, "spoken_at": f"2026-10-14T{at}:00-05:00", "spoken_by": by, "text": f"words of {id}"} | more


def fact(name: str, value, note: str, *was) -> dict:
    return {"name": name, "value": value, "note": note, "was": [{"value": v, "note": n} for v, n in was]}


DECIDED = {"id": "d", "rule": "staple-spacing", "decision": "rework", "by": "rosa", "at": "2026-10-14T10:00:00-05:00"}
PIECE = {
    "facts": [
        fact("staple_spacing", 2, "c", (3, "a")), fact("taped", True, "a"), fact("rubbed_down", True, "c"),
        fact("tape_width", 3, "c", (2, "c")), fact("mark", "7", "c", ("7", "a")),
    ],
    "photos": [{"sha256": "p", "note": "a"}, {"sha256": "q", "note": "c"}],
    "findings": [{"rule": "staple-spacing", "earlier": [{"at": "2026-10-14T08:00:20-05:00", "verdict": "departs", "shows": "flag"}]}],
    "decisions": [DECIDED],
}  # fmt: skip
NOTES = [note("a", "08:00"), note("c", "13:00"), note("b", "09:30", "rosa", as_lead=True)]


def test_before_and_after_a_rework_stand_side_by_side():
    told = beside(PIECE, NOTES, "staple-spacing")
    assert [one["id"] for one in told["before"]["notes"]] == ["a"] and [one["id"] for one in told["after"]["notes"]] == ["c"]
    assert [one["sha256"] for one in told["before"]["photos"]] == ["p"] and [one["sha256"] for one in told["after"]["photos"]] == ["q"]
    changed = {one["name"]: (one["before"] and one["before"]["value"], one["after"]["value"]) for one in told["changed"]}
    assert changed == {"staple_spacing": (3, 2), "rubbed_down": (None, True), "tape_width": (None, 3)}


def test_without_a_rework_there_is_no_before():
    assert beside(PIECE | {"decisions": [DECIDED | {"decision": "concession"}]}, NOTES, "staple-spacing") is None
    assert beside(PIECE, NOTES, "taped") is None


def test_the_history_is_in_the_order_of_its_times_whatever_zone_they_are_written_in():
    late = note("z", "08:30") | {"spoken_at": "2026-10-14T16:10:00+02:00"}  # 09:10 on the job's clock
    told = history(PIECE, [*NOTES[::-1], late], "staple-spacing")
    assert [one.get("note", one["what"]) for one in told] == ["a", "was", "z", "b", "decided", "c"]
