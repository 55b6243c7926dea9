"""What people go and see: the spot check, the walk list, the release sheet, leak-test records. Pure parts first.

The leak vectors are those of the handbook: SMACNA's F = C_L · P^0.65 with the Bureau of Reclamation's worked example
(class 6, 2.5 in. w.g., 800 ft²: 10.9 cfm/100 ft²). The bound of the spot check is the exact one of Clopper and Pearson;
for nothing found in n looks it is 1 − 0.05^(1/n).
"""

from __future__ import annotations

from datetime import date
from fractions import Fraction
from hashlib import sha256

import pytest
from hypothesis import given
from hypothesis import strategies as st

from logbook import schedule
from logbook.facts import BY_NAME
from logbook.mistake import Mistake
from logbook.rules.checklist import CHECKLIST
from logbook.walk import areas, leaks, lots, releases, rounds

TODAY = date(2026, 10, 14)
IDS = st.sets(st.uuids().map(str), min_size=1, max_size=20)


def fact(name, value, via="spoken"):
    return {"name": name, "value": value, "unit": BY_NAME[name].unit, "via": via, "words": "x"}


def finding(rule="taped", verdict="meets", shows="file", stands=None, **more):
    return {"rule": rule, "verdict": verdict, "shows": shows, "stands": stands} | more


def piece(id="p1", run="2", mark="7", said=None, findings=(), **more):
    facts = [fact("kind", "straight"), fact("mark", mark), *([fact("run", run)] if run else []), *(fact(*one) for one in (said or {}).items())]
    return {"id": id, "run": run, "mark": mark, "facts": facts, "assumed": [], "findings": list(findings), "looked": []} | more


# --- the draw


@given(IDS, st.text(min_size=1), st.integers(1, 12))
def test_the_same_seed_draws_the_same_pieces_in_any_order(ids, seed, count):
    drawn = lots.draw(seed, sorted(ids), (), count)
    assert drawn == lots.draw(seed, sorted(ids, reverse=True), (), count)
    assert len(drawn) == len(set(drawn)) == min(count, len(ids)) and set(drawn) <= ids


@given(IDS, st.data())
def test_pieces_changed_after_an_answer_are_drawn_first(ids, data):
    first = data.draw(st.sets(st.sampled_from(sorted(ids))))
    drawn = lots.draw("seed", ids, first, len(ids))
    assert set(drawn[: len(first)]) == first


@given(IDS, st.text(min_size=1), st.data())
def test_what_was_drawn_before_comes_last_and_what_is_left_keeps_its_lot(ids, seed, data):
    before = data.draw(st.sets(st.sampled_from(sorted(ids))))
    first = data.draw(st.sets(st.sampled_from(sorted(ids))))
    drawn = lots.draw(seed, ids, first, len(ids), before)
    others = ids - before
    assert drawn[: len(others)] == lots.draw(seed, others, first, len(ids)), "as if the others alone were in the hat"
    assert set(drawn[len(others) :]) == before
    assert lots.draw(seed, ids, first, len(ids), ()) == lots.draw(seed, ids, first, len(ids)), "a first draw is what it was"


def test_common_tools_can_draw_again():
    ids = ["a", "b", "c", "d"]
    by_hand = sorted(ids, key=lambda one: sha256(f"5eed:{one}".encode()).hexdigest())
    assert lots.draw("5eed", ids, (), 2) == tuple(by_hand[:2])


def test_every_piece_has_the_same_chance():
    ids = [f"p{at}" for at in range(10)]
    counts = {one: 0 for one in ids}
    for seed in range(3000):
        for one in lots.draw(str(seed), ids, (), 2):
            counts[one] += 1
    assert all(abs(count - 600) < 5 * (3000 * 0.2 * 0.8) ** 0.5 for count in counts.values()), "five standard deviations of 600"


@pytest.mark.parametrize(
    ("found", "good"),
    [
        ([finding()], True),
        ([finding(verdict="unsaid", shows="count")], True),
        ([finding(verdict="departs", shows="flag", stands="open")], False),
        ([finding(verdict="departs", shows="flag", stands="settled")], False),
        ([finding(verdict="unsaid", shows="ask")], False),
        ([finding(stands="in hand")], False),
        ([finding(stands="closed")], True),
    ],
)
def test_only_what_nobody_would_look_at_is_drawn_from(found, good):
    assert lots.good_as_said(piece(findings=found)) is good


def test_what_can_be_looked_at_is_what_was_said_and_what_stood_for_it():
    one = piece(said={"place": "above the lobby", "stapled": True, "surface_temperature": 70})
    one["assumed"] = [fact("staple_spacing", 2, "shift")]
    assert [(row.name, row.via) for row in lots.sayings(one)] == [("kind", "spoken"), ("stapled", "spoken"), ("staple_spacing", "shift")]


SAID = (lots.Saying("kind", "elbow"), lots.Saying("taped", True))


def look(*answers, how="seen", words=""):
    return lots.found({"how": how, "words": words, "found": [{"name": one.name, "answer": given, "words": said} for one, (given, said) in zip(SAID, answers)]}, SAID)


def test_a_look_keeps_said_beside_found():
    kept = look(("as_said", ""), ("otherwise", "  no tape on   the bottom "))
    assert kept["found"] == [
        {"name": "kind", "said": "elbow", "via": "spoken", "answer": "as_said", "words": ""},
        {"name": "taped", "said": True, "via": "spoken", "answer": "otherwise", "words": "no tape on the bottom", "found": False},
    ]


@pytest.mark.parametrize(
    ("key", "refused"),
    [
        ("walk.no-way", lambda: look(("as_said", ""), ("as_said", ""), how="guessed")),
        ("walk.no-answer", lambda: look(("as_said", ""))),
        ("walk.no-answer", lambda: look(("as_said", ""), ("fine", ""))),
        ("walk.otherwise-how", lambda: look(("otherwise", "a tee"), ("as_said", ""))),
        ("walk.otherwise-same", lambda: lots.found({"how": "seen", "found": [{"name": "kind", "answer": "otherwise", "value": "elbow"}, {"name": "taped", "answer": "as_said"}]}, SAID)),
        ("joining.bad-value", lambda: lots.found({"how": "seen", "found": [{"name": "kind", "answer": "otherwise", "value": "boat"}, {"name": "taped", "answer": "as_said"}]}, SAID)),
        ("walk.nothing-seen", lambda: look(("not_seen", ""), ("not_seen", ""))),
        ("walk.other-facts", lambda: lots.found({"how": "seen", "found": [{"name": "vanes", "answer": "as_said"}]}, SAID)),
    ],
)
def test_half_an_answer_is_refused(key, refused):
    assert isinstance(made := refused(), Mistake) and made.key == key


def test_what_was_found_goes_to_the_first_finding_that_leans_on_it():
    kept = look(("as_said", ""), ("otherwise", ""))
    found = [{"rule": "mark-said", "facts": ["mark"]}, {"rule": "taped", "facts": ["taped", "kind"]}, {"rule": "all-sides", "facts": ["taped"]}]
    assert lots.as_looked(kept, found) == {"taped": [{"name": "kind", "value": "elbow"}, {"name": "taped", "value": False}]}
    assert lots.as_looked(look(("not_seen", ""), ("as_said", "")), found[:1]) == {}


def test_said_against_found_counts_pieces_and_facts():
    looks = [look(("as_said", ""), ("otherwise", "none")), look(("as_said", ""), ("not_seen", "")), look(("not_seen", ""), ("not_seen", ""), words="closed up")]
    told = lots.against(4, looks)
    assert (told.drawn, told.pieces, told.off, told.looked, told.otherwise, told.not_seen) == (4, 2, 1, 3, 1, 3)
    assert told.by_fact == {"kind": (2, 0), "taped": (1, 1)}


@pytest.mark.parametrize("looked", [1, 3, 10, 59, 300])
def test_nothing_found_proves_only_as_much_as_was_looked_at(looked):
    assert lots.at_most(0, looked) == pytest.approx(1 - 0.05 ** (1 / looked), abs=1e-9)


def test_the_bound_of_the_statisticians_tables():
    """Clopper and Pearson's one-sided 95 % bound for 1 of 10 is 0.3942 and for 2 of 20 0.2826 (as tabled from the beta distribution)."""
    assert lots.at_most(1, 10) == pytest.approx(0.3942, abs=5e-5)
    assert lots.at_most(2, 20) == pytest.approx(0.2826, abs=5e-5)
    assert lots.at_most(3, 3) == 1.0 and lots.at_most(0, 0) is None


# --- leak tests

RECORD = {
    "section": "run 2", "pressure": "1", "area": "360", "measured": "18", "leakage_class": "6", "instrument": "orifice tube", "serial": "0417",
    "tested_on": "2026-10-13", "calibrated_on": "2026-03-01", "calibrated_until": "2027-03-01", "tested_by": "Ada Fenn", "witness": "Moss Pike",
}  # fmt: skip


def recorded(**more):
    return leaks.record(RECORD | more, Fraction(6), TODAY)


@pytest.mark.parametrize(("klass", "pressure", "area", "per_100", "cfm"), [(6, "2.5", 800, 10.88, 87.1), (6, "1", 360, 6, 21.6), (6, "0.5", 360, 3.82, 13.8), (6, "-0.5", 360, 3.82, 13.8)])
def test_the_allowable_is_that_of_the_published_examples(klass, pressure, area, per_100, cfm):
    told = leaks.told(recorded(leakage_class=klass, pressure=pressure, area=area))
    assert (round(told.per_100, 2), round(told.allowed, 1)) == (per_100, cfm)


@pytest.mark.parametrize(
    ("more", "verdict", "why"),
    [
        ({}, "meets", "within"),
        ({"measured": "21.6"}, "meets", "within"),
        ({"measured": "21.61"}, "departs", "leaks"),
        ({"measured": "0"}, "meets", "within"),
        ({"calibrated_until": "2026-10-13"}, "meets", "within"),
        ({"calibrated_until": "2026-10-12"}, "unclear", "calibration-over"),
        ({"calibrated_until": "2026-10-12", "measured": "40"}, "departs", "leaks"),
        ({"calibrated_on": "2026-10-14"}, "unclear", "calibrated-after"),
        ({"calibrated_until": ""}, "unsaid", "calibration-untold"),
        ({"calibrated_on": ""}, "unsaid", "calibration-untold"),
        ({"leakage_class": "4"}, "departs", "leaks"),
    ],
)
def test_a_number_below_the_allowable_counts_only_with_an_instrument_that_can_be_trusted(more, verdict, why):
    told = leaks.told(recorded(**more))
    assert (told.verdict, told.why) == (verdict, why)


@pytest.mark.parametrize(
    ("more", "key"),
    [
        ({"section": " "}, "leaks.needed"), ({"instrument": ""}, "leaks.needed"), ({"tested_by": None}, "leaks.needed"), ({"tested_on": ""}, "leaks.needed"),
        ({"pressure": "0"}, "leaks.number"), ({"area": "-4"}, "leaks.number"), ({"measured": "-1"}, "leaks.number"), ({"measured": "some"}, "leaks.number"),
        ({"area": "1e9"}, "leaks.number"), ({"area": float("nan")}, "leaks.number"), ({"area": True}, "leaks.number"), ({"leakage_class": "0"}, "leaks.number"),
        ({"tested_on": "13.10.2026"}, "leaks.date"), ({"tested_on": "2026-10-15"}, "leaks.not-yet"), ({"calibrated_on": "2027-04-01"}, "leaks.dates-crossed"),
        ({"witness": "ada fenn"}, "leaks.own-witness"),
    ],
)  # fmt: skip
def test_a_record_that_cannot_be_is_refused(more, key):
    assert recorded(**more).key == key


def test_a_fraction_stays_exact_and_the_class_of_the_day_is_kept():
    kept = recorded(measured="17-1/3", leakage_class="")
    assert leaks.value(kept, "measured_cfm") == Fraction(52, 3) and kept["leakage_class"] == 6


def test_a_record_set_right_stays_beside_the_new_one():
    one, two, three = {"id": "1"}, {"id": "2", "instead_of": "1"}, {"id": "3"}
    assert leaks.standing([one, two, three]) == [two, three]


# --- the walk list and the release sheet


def answered(question, given, words="", area="area:hall", id="1"):
    return rounds.answer(area, question, given, words) | {"id": id}


def test_every_question_of_the_published_list_can_be_answered_and_no_other():
    assert len(rounds.IDS) == len(CHECKLIST) == 26
    for one in rounds.IDS:
        assert answered(one, "yes")["question"] == one
    assert rounds.answer("area:hall", "z9", "yes", "").key == "walk.no-question"
    assert rounds.answer("area:hall", "g1", "perhaps", "").key == "walk.no-such-answer"
    assert rounds.answer(" ", "g1", "yes", "").key == "walk.no-area"
    assert rounds.answer("area:hall", "g1", "no", " ").key == "walk.no-needs-words"


def test_the_newest_answer_stands_and_the_others_stay():
    acts = [answered("g1", "no", "outdoors", id="1"), answered("g1", "yes", id="2"), answered("g1", "no", "still", area="area:shop", id="3")]
    held = rounds.standing("AREA:hall", acts)
    assert (held[0].now["id"], [one["id"] for one in held[0].before]) == ("2", ["1"])
    assert rounds.counts(held) == {"yes": 1, "not_applicable": 0, "no": 0, "none": 25}


def plan(*rows):
    return schedule.revision("r1", None, tuple(schedule.Row(mark=mark, line=at, run=run, kind="straight", area=area) for at, (mark, run, area) in enumerate(rows)))


def test_no_piece_drops_off_the_walk_list():
    rows = plan(("7", "2", "Hall"), ("8", "2", "Hall"), ("1", "10", None))
    pieces = [piece("a", "2", "7"), piece("b", "3", "9", {"place": "above the lobby"}), piece("c", "9", "4"), piece("d", None, "5"), piece("e", "10", "1")]
    found = areas.areas(rows, pieces)
    assert [(one.key, [p["id"] for p in one.pieces], len(areas.missing(one))) for one in found] == [
        ("area:Hall", ["a"], 1), ("place:above the lobby", ["b"], 0), ("run:9", ["c"], 0), ("run:10", ["e"], 0), ("nowhere:", ["d"], 0),
    ]  # fmt: skip
    assert sum(len(one.pieces) for one in found) == len(pieces)


@pytest.mark.parametrize(
    ("one", "looked", "lacks"),
    [
        (piece(), (), ("hung", "joined", "looked")),
        (piece(said={"stage": "hung", "joined_to": ["6"]}), ("p1",), ()),
        (piece(said={"stage": "hung"}, findings=[finding("joined", "meets")]), ("p1",), ()),
        (piece(said={"stage": "hung"}, findings=[finding("joined", "unsaid")]), ("p1",), ("joined",)),
        (piece(said={"stage": "made", "joined_to": ["6"]}, looked=[{"by": "lead"}]), (), ("hung",)),
        (piece(findings=[finding(stands="in hand")]), (), ("open", "hung", "joined", "looked")),
    ],
)
def test_silence_is_no_release(one, looked, lacks):
    assert releases.lacks(one, looked) == lacks


def test_the_sheet_lists_what_is_missing_what_was_denied_and_what_nobody_asked():
    area = areas.areas(plan(("7", "2", "Hall"), ("8", "2", "Hall")), [piece("a", "2", "7", {"stage": "hung", "joined_to": ["8"]})])[0]
    sheet = releases.sheet(area, [answered("g4", "no", "bare steel", area="area:Hall")], looked={"a"}, otherwise={"a"})
    assert [line.lacks for line in sheet.lines] == [("otherwise",)] and sheet.ready == ()
    assert [row.mark for row in sheet.missing] == ["8"]
    assert [one.question for one in sheet.noes] == ["g4"] and "g4" not in sheet.unasked and "g1" in sheet.unasked
