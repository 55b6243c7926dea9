"""Laws that hold for every verdict: a piece may be measured in other units, seen in a mirror, laid on its side or be
larger as a whole, and the rules say the same; and no rule is good without the words it stands on."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from types import MappingProxyType

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from logbook import facts, pipeline
from logbook import job as jobs
from logbook.facts import Move
from logbook.findings import Around, judge
from logbook.piece import Piece
from logbook.rules import BY_ID, RULES
from logbook.said import Fact

ALL = settings(derandomize=True, max_examples=200, deadline=None)
# what compares lengths with lengths of the same piece: these know no size
SCALE_FREE = ("transition-slope", "sizes-agree", "slope-agrees", "transition-angle", "offset-angle", "elbow-throat", "aspect-ratio")
TOLERANCES = ("set_back_tolerance", "size_tolerance", "slope_said_tolerance", "hedge_length")

quarters = st.integers(1, 160).map(lambda n: Fraction(n, 4))
sizes = st.tuples(quarters, quarters)
moves = st.builds(Move, st.sampled_from([None, *facts.SIDES]), st.none() | quarters, st.none() | quarters, st.sampled_from([None, "in", "out"]))
LENGTHS = {
    "inlet_size": sizes, "outlet_size": sizes, "side_moves": st.lists(moves, min_size=1, max_size=3).map(tuple), "taper_length": quarters, "length": quarters,
    "offset_by": quarters, "throat_radius": quarters, "branch_size": sizes,
}  # fmt: skip
OTHERS = {
    "stated_slope": st.tuples(st.integers(1, 6).map(Fraction), st.just(Fraction(12))), "level_sides": st.lists(st.sampled_from(facts.SIDES), max_size=2, unique=True).map(tuple),
    "turn_angle": st.sampled_from([Fraction(45), Fraction(90)]), "elbow_pieces": st.sampled_from([2, 3]), "vanes": st.booleans(), "stapled": st.booleans(), "taped": st.booleans(),
    "shiplap_sides": st.just(("top", "bottom")), "butt_sides": st.just(("left",)),
}  # fmt: skip
kinds = st.sampled_from(["transition", "transition", "transition", "offset", "elbow", "straight", "tee"])
made = st.tuples(kinds, st.fixed_dictionaries({}, optional=LENGTHS | OTHERS))


def piece(kind: str, said: dict) -> Piece:
    every = {"kind": kind, "mark": "7", "run": "2"} | said
    return Piece("p", "aaaaaaaa", "2", "7", ("n",), tuple(Fact(name, value, name, 0, 1) for name, value in every.items()), checked_without_photos=True)


def verdicts(one: Piece, job: jobs.Job = jobs.DEFAULT, rules=RULES) -> dict[str, tuple[str, str]]:
    return {found.rule: (found.verdict, found.shows) for found in judge(one, Around(job=job), rules)}


MIRROR = {"left": "right", "right": "left", "top": "bottom", "bottom": "top", None: None}
QUARTER_TURN = {"top": "right", "right": "bottom", "bottom": "left", "left": "top", None: None}


def sides_named(said: dict, names: dict) -> dict:
    """The same piece with its sides called otherwise."""
    changed = {}
    for name, value in said.items():
        if name == "side_moves":
            value = tuple(replace(move, side=names[move.side]) for move in value)
        elif name in ("level_sides", "shiplap_sides", "butt_sides"):
            value = tuple(names[side] for side in value)
        changed[name] = value
    return changed


@ALL
@given(made)
def test_a_piece_seen_in_a_mirror_is_as_good(made):
    kind, said = made
    assert verdicts(piece(kind, sides_named(said, MIRROR))) == verdicts(piece(kind, said))


@ALL
@given(made)
def test_a_piece_laid_on_its_side_is_as_good(made):
    """A quarter turn: every side is the next one, and width and height change places."""
    kind, said = made
    turned = sides_named(said, QUARTER_TURN)
    turned |= {name: value[::-1] for name, value in said.items() if name in ("inlet_size", "outlet_size", "branch_size")}
    # which side of a size lies in the plane of a turn nobody says, so an elbow's throat is judged by the worse of both
    assert verdicts(piece(kind, turned)) == verdicts(piece(kind, said))


@ALL
@given(made, st.sampled_from(["mm", "cm", "m", "ft"]))
def test_the_unit_that_was_spoken_changes_nothing(made, unit):
    kind, said = made
    one = piece(kind, said)
    spoken_so = replace(one, facts=tuple(replace(fact, said_unit=unit) for fact in one.facts))
    assert verdicts(spoken_so) == verdicts(one)


@ALL
@given(made, st.sampled_from([Fraction(1, 3), Fraction(2), Fraction(127, 50)]))
def test_a_piece_that_is_larger_as_a_whole_has_the_same_slopes_and_angles(made, times):
    """Its lengths and the shop's tolerances grow alike; 127/50 is an inch in centimetres."""
    kind, said = made
    larger = {name: _times(value, times) if name in LENGTHS else value for name, value in said.items()}
    limits = MappingProxyType(dict(jobs.DEFAULT.limits) | {name: jobs.DEFAULT.limits[name] * times for name in TOLERANCES})
    rules = [BY_ID[name] for name in SCALE_FREE]
    assert verdicts(piece(kind, larger), replace(jobs.DEFAULT, limits=limits), rules) == verdicts(piece(kind, said), rules=rules)


def _times(value, times: Fraction):
    if isinstance(value, Fraction):
        return value * times
    if value and isinstance(value[0], Move):
        return tuple(replace(move, by=move.by and move.by * times, back=move.back and move.back * times) for move in value)
    return tuple(side * times for side in value)


def test_the_laws_can_fail():
    """A steeper piece is not as good: what the laws compare does change."""
    steep = {"inlet_size": (Fraction(20), Fraction(14)), "outlet_size": (Fraction(20), Fraction(11)), "side_moves": (Move("top", Fraction(3), Fraction(9), "in"),)}
    easy = steep | {"side_moves": (Move("top", Fraction(3), Fraction(18), "in"),)}
    assert verdicts(piece("transition", steep))["transition-slope"][0] == "departs" != verdicts(piece("transition", easy))["transition-slope"][0]
    assert verdicts(piece("transition", easy | {"side_moves": (Move("left", Fraction(3), Fraction(18), "out"),)}))["sizes-agree"] != verdicts(piece("transition", easy))["sizes-agree"]


@pytest.mark.parametrize("inches, millimetres", [("twenty by fifteen", "508 by 381 millimeters"), ("ten by five", "254 by 127 millimeters")])
def test_the_same_words_in_millimetres_are_the_same_piece(inches, millimetres):
    """25.4 mm is an inch exactly (ISO 31-1, the international inch)."""
    said = "Transition five on run two, from {} to ten by five, stapled every {}, taped."
    found = [
        {f["rule"]: (f["verdict"], f["case"]) for f in pipeline.check(said.format(size, spacing), language="en")["fittings"][0]["findings"]}
        for size, spacing in ((inches, "two inches"), (millimetres, "50.8 millimeters"))
    ]
    assert found[0] == found[1] and found[0]["staple-spacing"][0] == "meets"


# --- silence, for every rule of the book

MEETS = [(rule, example) for rule in RULES for example in rule.examples if example.verdict == "meets" and not example.job and not example.shift]
WHO = {"kind", "mark", "run"}  # what the piece is called: that is said of it, and is no answer to a rule
ABOUT_NOTHING = {"nothing-open", "mark-said"}  # about what was left undone, and about the name itself


@pytest.mark.parametrize("rule, example", MEETS, ids=[f"{rule.id}: {example.words[:40]}" for rule, example in MEETS])
def test_a_rule_that_was_met_is_not_met_without_the_words_it_stands_on(rule, example):
    from datetime import UTC, datetime

    from logbook.note import Note
    from logbook.reading import read

    at = datetime(2026, 1, 5, 9, tzinfo=UTC)
    note = Note("n", jobs.DEFAULT.id, "p", "p", at, at, at, "answered", reading=read(example.words, language=example.language, job=jobs.DEFAULT), answered_at=at)
    book = pipeline.reckon([note], (), jobs.DEFAULT, at, without_photos=True)
    entry = note.reading.fittings[-1].position
    whole, (found,) = book.piece_of("n", entry), [one for one in book.findings_of("n", entry) if one.rule == rule.id]
    assert found.verdict == "meets"
    if rule.id in ABOUT_NOTHING:
        return
    stands_on = set(found.facts) - WHO
    assert stands_on or found.leans_on, "a verdict stands on words"
    silent = replace(whole, facts=tuple(fact for fact in whole.facts if fact.name not in stands_on), assumed=())
    after = [one.verdict for one in judge(silent, Around(), (rule,))]
    assert "meets" not in after


def test_every_rule_that_can_be_met_is_asked_here_or_by_a_made_piece():
    """What no spoken example meets is met in tests/cases/rules/more.toml, or is about pictures and looks."""
    import tomllib
    from pathlib import Path

    cases = tomllib.loads((Path(__file__).parent / "cases" / "rules" / "more.toml").read_text(encoding="utf-8"))["case"]
    of_cases = {case["rule"] for case in cases if case["is"] != "not due" and case["is"][0] == "meets"}
    asked = {rule.id for rule, _ in MEETS} | of_cases
    assert {rule.id for rule in RULES} - asked == UNMET


UNMET = {"allowed-there", "looked-agrees"}  # only ever departs; compares with what a lead saw
