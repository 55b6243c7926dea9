"""Laws of the reader: every spelling reads back, chatter changes nothing, nothing raises. That a fact's own words say it again is asked of every case in test_reading.py."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from num_words import spelled  # our own speller, tests/num_words.py
from reading_cases import FILES, drawn, facts_read, sentences

from logbook import measure
from logbook.facts import Move
from logbook.languages import LANGUAGES
from logbook.reading import read
from logbook.reading.stated import condition, ends, moves, sizes, staples, supports, tapes
from logbook.reading.names.bare_marks import SAID_BARE
from logbook.reading.clauses.batches import SAID_OF_SEVERAL
from logbook.reading.composed.compose import compose
from logbook.reading.clauses.grammar import Row, compiled, one_of_each
from logbook.reading.words.items import book, itemise
from logbook.reading.clauses.marks import SAID_OTHERWISE
from logbook.reading.words.tokens import tokens

LAW = settings(derandomize=True, max_examples=50, deadline=None)
wholes = st.integers(4, 96)
parts = st.sampled_from([Fraction(0), *(Fraction(n, d) for d in (2, 4, 8, 16) for n in range(1, d, 2))])
lengths = st.builds(lambda whole, part: whole + part, wholes, parts)


def only(text: str, name: str):
    return read(text, language="en").fittings[0].fact(name).value


@LAW
@given(lengths)
def test_a_length_reads_back_in_every_spelling(value):
    printed = measure.printed(value)
    spellings = [printed, printed.replace("-", " "), f'{printed}"', f"{printed} inches", spelled(value, "en"), f"{spelled(value, 'en')} inches", f"{float(value)}"]
    assert [only(f"Straight 3, {s} long.", "length") for s in spellings] == [value] * len(spellings)


@LAW
@given(lengths)
def test_a_length_reads_back_in_spanish(value):
    spellings = [measure.printed(value), spelled(value, "es"), f"{spelled(value, 'es')} pulgadas"]
    got = [read(f"Recto tres, {s} de largo.", language="es").fittings[0].fact("length").value for s in spellings]
    assert got == [value] * len(spellings)


@LAW
@given(lengths, lengths, st.sampled_from([" by ", " x ", "x", " × "]))
def test_a_size_reads_back_in_every_spelling(one, two, between):
    by_digits = f"{measure.printed(one)}{between}{measure.printed(two)}"
    assert only(f"Straight 3, {by_digits}.", "inlet_size") == (one, two)
    assert only(f"Straight 3, {spelled(one, 'en')} by {spelled(two, 'en')}.", "inlet_size") == (one, two)


@LAW
@given(st.integers(1, 6), st.sampled_from(["slope is {} in 12", "slope of {} in twelve", "pitch {}:12", "{} in 12 slope"]))
def test_a_slope_reads_back(rise, spelling):
    assert only(f"Transition 3, {spelling.format(rise)}.", "stated_slope") == (rise, 12)


@LAW
@given(st.sampled_from(["top", "bottom", "left", "right"]), st.integers(1, 9), st.integers(10, 48))
def test_a_side_move_reads_back_with_its_way(side, by, back):
    say = {"top": "top comes down", "bottom": "bottom comes up", "left": "left side comes in", "right": "right side comes in"}[side]
    expected = (Move(side, Fraction(by), Fraction(back), "in"),)
    assert only(f"Transition 3, {say} {by}, back {back}.", "side_moves") == expected
    assert only(f"Transition 3, {say} {spelled(Fraction(by), 'en')}, back {spelled(Fraction(back), 'en')}.", "side_moves") == expected


@LAW
@given(st.integers(100, 2000), st.integers(100, 2000))
def test_millimetres_convert_exactly(one, two):
    assert only(f"Straight 3, {one} by {two} mm.", "inlet_size") == (one * measure.MM, two * measure.MM)


SENTENCES = [case for name in FILES for case in sentences(name)]


BEFORE = ("Okay so, ", "Hey, alright. ", "Let's see. ", "Um, okay. ", "It's a nice day. ")
AFTER = (" Thank you.", " Okay.", " That's it for now.", " It's hot in here, I need some water.", " Going to lunch.")


@LAW
@given(st.sampled_from([c for c in SENTENCES if c.language == "en" and c.text[-1] in ".?!" and c.fittings and not c.withdraws and "same_as" not in c.fittings[0] and "should be" not in c.text]), st.sampled_from(BEFORE), st.sampled_from(AFTER))
def test_chatter_around_a_sentence_changes_no_fact(case, before, after):
    """Sentences that end: where text runs on, chatter behind it cannot be told from it."""
    assert facts_read(read(before + case.text + after, language="en")) == facts_read(read(case.text, language="en"))


SPELLINGS = {
    "typographic": lambda text: text.replace("'", "’"),
    "without apostrophes": lambda text: re.sub(r"(?i)\b(did|is|was|have|has|do|does|are|were|could|would)n't\b", r"\1nt", re.sub(r"(?i)\b(that|there|what|they|you)'(s|re)\b", r"\1\2", text)),
    "in full": lambda text: re.sub(r"(?i)\b(did|is|was|have|has|do|does|are|were|could|would)n't\b", r"\1 not", re.sub(r"(?i)\b(they|we|you)'re (?=\w)", r"\1 are ", text)),
    "as spoken": lambda text: re.sub(r"\bthem\b", "'em", re.sub(r"\bout of\b", "outta", re.sub(r"\bbecause\b", "'cause", text))),
    "with signs": lambda text: text.replace(" and ", " & "),
}


def test_a_list_of_words_with_nothing_between_two_strokes_is_refused(monkeypatch):
    english = LANGUAGES["en"]
    monkeypatch.setitem(LANGUAGES, "en", replace(english, concepts=(*english.concepts, ("TAPE", "foil tape||tape"))))
    with pytest.raises(ValueError, match="has no word"):
        book.__wrapped__("en")


@pytest.mark.parametrize("spelling", SPELLINGS)
def test_small_words_read_alike_in_every_spelling(spelling):
    """What may differ is what was said: facts and the places of their words, never what is read of them."""
    told = [(case, SPELLINGS[spelling](case.text)) for case in drawn(SENTENCES, 11) if case.language == "en"]
    told = [(case, text) for case, text in told if text != case.text]
    assert len(told) > 5
    for case, text in told:
        reading = read(text, language="en")
        assert facts_read(reading) == facts_read(read(case.text, language="en")), text
        for fact in (fact for entry in reading.fittings for fact in entry.facts):
            assert text[fact.start : fact.end] == fact.words


def test_a_word_in_another_spelling_is_no_doubt():
    """A contraction is the same word; one whose letters slipped was taken for another."""
    sure, slipped = read("Straight 9 isnt taped.").fittings[0].fact("taped"), read("Straight 9 isnt taepd.").fittings[0].fact("taped")
    assert (sure.value, sure.words, sure.read_as) == (False, "isnt taped", None)
    assert slipped.value is False and slipped.read_as is not None


WORDS = sorted({word for case in SENTENCES for word in case.text.split()})


@settings(derandomize=True, max_examples=200, deadline=None)
@given(st.one_of(st.text(max_size=200), st.lists(st.sampled_from(WORDS), max_size=40).map(" ".join)), st.sampled_from([None, "en", "es"]))
def test_reading_never_raises_and_every_fact_keeps_its_words(text, language):
    reading = read(text, language=language)
    for entry in reading.fittings:
        for fact in entry.facts:
            assert text[fact.start : fact.end] == fact.words
        for item in entry.open_items:
            assert text[item.start : item.end] == item.text


def test_what_a_pattern_needs_stands_in_every_row_it_matches():
    """Rows without it are not searched: so nothing may match there."""
    frames = [frame.pattern for part in (condition, ends, moves, sizes, staples, supports, tapes) for frame in part.FRAMES]
    patterns = [*frames, *(pattern for table in (SAID_BARE, SAID_OF_SEVERAL, SAID_OTHERWISE) for pattern, _ in table)]
    for case in drawn(SENTENCES, 9):
        lexicon = book(case.language)
        row = Row.of(case.text, compose(itemise(tokens(case.text), lexicon), case.text, lexicon.language.letters))
        for pattern in patterns:
            if any(needs.isdisjoint(row.string) for needs in one_of_each(pattern)):
                assert compiled(pattern).search(row.string) is None, pattern
