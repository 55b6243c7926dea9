"""What was read of stretches in another order stands at the words of the note itself."""

import pytest

from logbook.reading import read
from logbook.reading.words.stretches import moved, put_together
from logbook.said import Span

TEXT = "the staples on straight 31 are turned in"
STRETCHES = [(15, 26), ", ", (0, 11), (26, 40)]


def test_stretches_are_put_together_in_their_order():
    assert put_together(TEXT, STRETCHES) == "straight 31, the staples are turned in"


@pytest.mark.parametrize(("said", "words"), [("straight", "straight"), ("31", "31"), ("turned in", "turned in"), ("the staples", "the staples"), ("staples are turned in", "staples on straight 31 are turned in")])
def test_a_place_in_them_is_its_place_in_the_text(said, words):
    start = put_together(TEXT, STRETCHES).index(said)
    one = moved(Span(said, start, start + len(said)), TEXT, STRETCHES)
    assert one == Span(words, TEXT.index(words), TEXT.index(words) + len(words))


def test_a_fact_points_at_the_words_that_were_said():
    facts = {fact.name: fact.words for fact in read("The staples on straight 31 are turned in.").fittings[0].facts}
    assert (facts["kind"], facts["mark"]) == ("straight", "31")
    assert facts["staple_clinch"].endswith("are turned in")
