"""A pattern that is tried only where its letters stand answers as the pattern itself, checked against the standard library's `re`."""

import gc
import re
import subprocess
import sys
from pathlib import Path

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from logbook.reading import read
from logbook.reading.clauses.grammar import Row, compiled
from logbook.reading.composed.compose import compose
from logbook.reading.stated import stated
from logbook.reading.words.items import book, itemise
from logbook.reading.words.likely import AnyOf, Likely, alternatives
from logbook.reading.words.tokens import tokens

from reading_cases import FILES, drawn, sentences

PATTERNS = (
    r"(?<![\w'])(?:no tape|tape to follow)(?![\w'])", r"(?:still|yet) (?:to|not)", r"(?:tap(?:e|ed))?", r"un(?:taped|stapled)|bare", r"left [\w ]+ open",
    r"(?:the )?(?:first|last) (?:two|three)$", r"^(?:i |we )*(?:skipped|forgot)", r"(?<![\w'])(?:\d left|no tape)", r"ta[px]e", r"(?!taped)tape\w*", r"(?:half )+done", r"a|taped", r"",
)  # fmt: skip
WORDS = st.lists(st.sampled_from("no tape taped untaped bare to follow still yet not left it open the first last two i we skipped forgot half done a 3 ٣".split()), max_size=9)


@pytest.mark.parametrize("pattern", PATTERNS)
@given(words=WORDS)
@example(words=["٣", "left"])
def test_it_finds_what_re_finds(pattern, words):
    text, likely = " ".join(words), Likely(pattern)
    assert likely.findall(text) == re.findall(pattern, text)
    for how in ("search", "match", "fullmatch"):
        ours, theirs = getattr(likely, how)(text), getattr(re.compile(pattern), how)(text)
        assert (ours and ours.span()) == (theirs and theirs.span())


@given(words=WORDS)
def test_the_first_of_many_that_matches_is_found(words):
    text = " ".join(words)
    first = next((m for pattern in PATTERNS if (m := re.search(pattern, text))), None)
    found = AnyOf(PATTERNS).search(text)
    assert (found and found.span()) == (first and first.span())


@pytest.mark.parametrize("pattern", [*PATTERNS, r"\b(?:no|un(?:taped|stapled)|left [|(] it)", r"\b(?:no|not)(?: yet)", r"tape|[|)]|still \|"])
@given(words=WORDS)
@example(words=["٣", "left"])  # a digit of another script is one to a pattern
def test_the_alternatives_of_a_pattern_find_something_where_it_does(pattern, words):
    text = " ".join(words)
    assert bool(AnyOf(alternatives(pattern)).search(text)) == bool(re.search(pattern, text))


def test_what_is_kept_of_the_patterns_is_what_is_reckoned_of_them():
    looked = subprocess.run([sys.executable, Path(__file__).parent / "making" / "known_patterns.py", "--look"], capture_output=True, text=True)
    assert looked.returncode == 0, looked.stdout + looked.stderr


def test_no_pattern_of_the_reader_is_left_untried_where_it_matches():
    texts = [case.text for name in FILES for case in drawn(sentences(name), 61)]
    for text in texts:
        read(text)
    built = [one for one in gc.get_objects() if type(one) is Likely]
    assert len(built) > 300 and sum(bool(one.needs) for one in built) > 200
    lower = [text.lower() for text in texts]
    for one in built:
        assert all(one.search(text) for text in lower if one.regex.search(text)), one.pattern


def test_no_frame_is_left_untried_where_it_finds_something():
    lexicon = book("en")
    for text in [case.text for name in FILES for case in drawn(sentences(name), 23)]:
        row = Row.of(text, compose(itemise(tokens(text), lexicon), text, lexicon.language.letters, lexicon.language.forms))
        tried = {frame.pattern for frame in stated._FRAMES.standing(row)}
        assert tried.issuperset(frame.pattern for frame in stated._FRAMES.rows if compiled(frame.pattern).search(row.string)), text
