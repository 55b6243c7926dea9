"""A word heard faintly decides nothing; a number needs to be heard better than a word."""

from dataclasses import replace
from fractions import Fraction

import pytest

from logbook import job, pipeline, rules
from logbook.facts import Move
from logbook.piece import Piece
from logbook.runs import site
from logbook.said import Fact
from logbook.transcript import Alternative, Doubt, Transcript, Unheard, Word


def verdict(rule: str, *facts: Fact) -> str:
    piece = Piece("p", "j", "2", "7", ("n",), (Fact("kind", "straight", "Straight", 0, 8, heard=0.9), *facts), checked_without_photos=True)
    found = rules.judge(piece, site(job.DEFAULT, [piece]).around(piece))
    return next(one.verdict for one in found if one.rule == rule)


@pytest.mark.parametrize(("heard", "expected"), [(None, "meets"), (0.9, "meets"), (0.45, "meets"), (0.39, "unclear")])
def test_a_word(heard, expected):
    assert verdict("taped", Fact("taped", True, "taped", 0, 5, heard=heard)) == expected


@pytest.mark.parametrize(("heard", "expected"), [(None, "meets"), (0.5, "meets"), (0.49, "unclear")])
def test_a_number(heard, expected):
    stapled = Fact("stapled", True, "stapled", 0, 7, heard=0.9)
    spacing = Fact("staple_spacing", Fraction(2), "every two", 8, 17, heard=heard)
    assert verdict("staple-spacing", stapled, spacing) == expected


@pytest.mark.parametrize(
    ("other", "rule", "expected"),
    [
        (Move(None, None, Fraction(24), None), "transition-slope", "meets"),  # the same words with some of them lost
        (Move(None, None, Fraction(24), None), "sizes-agree", "meets"),
        (Move("top", Fraction(3), Fraction(12), "in"), "transition-slope", "unclear"),  # and then it is too steep
        (Move("top", Fraction(5), Fraction(24), "in"), "sizes-agree", "unclear"),
    ],
)
def test_another_hearing_of_a_move(other, rule, expected):
    move = Fact("side_moves", (Move("top", Fraction(3), Fraction(24), "in"),), "top down three, back twenty-four", 9, 41, heard=0.9, alternatives=((other,),))
    kind = Fact("kind", "transition", "Transition", 0, 8, heard=0.9)
    sizes = [Fact(f"{end}_size", size, "18 by 14", 0, 8, heard=0.9) for end, size in (("inlet", (Fraction(18), Fraction(14))), ("outlet", (Fraction(18), Fraction(11))))]
    piece = Piece("p", "j", "2", "7", ("n",), (kind, *sizes, move), checked_without_photos=True)
    found = rules.judge(piece, site(job.DEFAULT, [piece]).around(piece))
    assert next(one.verdict for one in found if one.rule == rule) == expected


def test_what_departs_as_heard_is_never_met_for_being_faint():
    assert verdict("taped", Fact("taped", False, "not taped", 0, 9, heard=0.1)) == "unclear"


def heard(*words: tuple) -> Transcript:
    """A transcript of (word, probability, alternative or None), one second a word."""
    text, made = " ".join(word for word, _, _ in words), []
    for n, (word, probability, other) in enumerate(words):
        start = len(" ".join(w for w, _, _ in words[:n])) + (n > 0)
        made.append(Word(word, start, start + len(word), float(n), n + 1.0, probability, (Alternative(other, 0.3),) if other else ()))
    return Transcript("scripted", "none", {}, "en", text, tuple(made), Doubt(0.0, 0.0, 1.0))


def open_work(transcript: Transcript) -> tuple[str, str, str]:
    document = pipeline.check(transcript)
    return next((f["verdict"], f["shows"], f["says"]) for f in document["fittings"][0]["findings"] if f["rule"] == "nothing-open")


SAID = [(word, 0.9, None) for word in "Straight 4 18 by 12 stapled every 2 taped.".split()]


def test_where_words_were_lost_nobody_says_that_nothing_was_left():
    assert open_work(heard(*SAID))[0] == "meets"
    assert open_work(heard(*SAID, ("Nottle", 0.2, None), ("yat.", 0.2, None)))[:2] == ("unclear", "file")
    assert open_work(heard(*SAID, ("Well,", 0.2, None), ("okay.", 0.1, None)))[0] == "meets"  # these turn nothing, however faint
    lost = replace(heard(*SAID), unheard=(Unheard(9.0, 12.0, "noise"),))
    assert open_work(lost)[:2] == ("unclear", "file")
    assert open_work(replace(lost, unheard=(Unheard(9.0, 18.0, "no_speech"),)))[0] == "meets"  # nobody spoke


def test_work_that_may_have_been_left_is_asked_for():
    verdict, shows, says = open_work(heard(*SAID[:-1], ("now", 0.6, "not"), ("taped", 0.9, None), ("yet.", 0.9, None)))
    assert (verdict, shows) == ("unclear", "ask") and "not taped yet" in says


@pytest.mark.parametrize(("between", "expected"), [(0.9, "meets"), (0.2, "unclear")])
def test_an_act_behind_a_no_and_something_faint_is_not_done(between, expected):
    words = [*SAID[:-1], ("no", 0.9, None), ("bother,", between, None), ("taped.", 0.9, None)]
    found = pipeline.check(heard(*words))["fittings"][0]["findings"]
    assert next(f["verdict"] for f in found if f["rule"] == "taped") == expected


@pytest.mark.parametrize(
    ("said", "expected"),
    [
        ([("taped", 0.9), ("and", 0.6), ("stiff", 0.36), ("on", 0.9), ("top.", 0.9)], "unclear"),  # "tape didn't stick on top"
        ([("taped", 0.9), ("and", 0.6), ("stuffed", 0.6), ("on", 0.9), ("top.", 0.9)], "meets"),
        ([("taped.", 0.9), ("Stiff", 0.36), ("wind", 0.9), ("today.", 0.9)], "meets"),  # of another clause
        ([("lapasta,", 0.14), ("mastic,", 0.83), ("escullamas.", 0.2)], "unclear"),  # one word between two that nobody made out
        ([("lapasta,", 0.14), ("mastic,", 0.83), ("by", 0.9), ("hand.", 0.9)], "meets"),
    ],
)
def test_what_was_heard_well_beside_what_nobody_could_make_out_is_a_guess(said, expected):
    words = [*SAID[:-1], *((word, probability, None) for word, probability in said)]
    found = pipeline.check(heard(*words))["fittings"][0]["findings"]
    assert next(f["verdict"] for f in found if f["rule"] == "taped") == expected


@pytest.mark.parametrize(("gap", "expected"), [("1/8", "departs"), ("1/4", "departs"), ("0", "unclear")])
def test_about_an_eighth_of_a_gap_is_a_gap(gap, expected):
    assert verdict("joint-tight", Fact("gap", Fraction(gap), "about so much", 0, 13, hedged=True)) == expected


@pytest.mark.parametrize(("one", "other", "expected"), [("3", "13/4", "departs"), ("2", "3", "unclear"), ("3", "2", "unclear"), ("1", "2", "unclear")])
def test_two_measures_that_both_depart(one, other, expected):
    stapled = Fact("stapled", True, "stapled", 0, 7)
    said = [Fact("staple_spacing", Fraction(value), value, at, at + 1, conflict=True) for at, value in ((8, one), (12, other))]
    assert verdict("staple-spacing", stapled, *said) == expected


@pytest.mark.parametrize(("asked", "expected"), [("Did you tape the back side? No, not the back side.", "unclear"), ("Did you tape it? Yes.", "meets")])
def test_a_no_to_another_voice_leaves_what_was_told_in_doubt(asked, expected):
    found = pipeline.check(f"Straight 20, stapled and taped. {asked}")["fittings"][0]["findings"]
    assert next(f["verdict"] for f in found if f["rule"] == "taped") == expected
