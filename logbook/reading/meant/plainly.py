"""What is said in a roundabout way is read as the plain words for it: "let me put the tape on it" between two measures tapes nothing, "Length was
forty-eight. Length is forty-six." sets right.

Only whole turns of words are read so whose plain form says neither more nor less. What is read of them keeps the places and the words of the note.
"""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.plainer import Plainer
from logbook.reading.words.likely import Likely, index_of
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import Token, plain


@cache
def _rows(code: str) -> tuple[tuple[Plainer, Likely, re.Pattern[str] | None], ...]:
    return tuple((one, Likely(rf"(?<![\w'])(?:{one.words})", (one.cues, one.beside)), re.compile(one.unless) if one.unless else None) for one in LANGUAGES[code].plainer)


@cache
def _patterns(code: str) -> tuple[Likely, ...]:
    return tuple(pattern for _, pattern, _ in _rows(code))


def cuts(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """The turns of words of a note and what stands in their place, in order; none within another."""
    said = plain(text)
    if len(said) != len(text):
        return ()
    made: list[Cut] = []
    rows = _rows(code)
    for at in index_of(_patterns(code)).rough(said):
        one, pattern, unless = rows[at]
        for cue in one.cues:
            if cue in said:
                break
        else:
            continue
        if one.beside and not any([cue in said for cue in one.beside]):
            continue
        found = list(pattern.at_words(said))
        if found and unless is not None and unless.search(said):
            continue
        for match in found:
            here = [Cut(*match.span(group), match.expand(means)) for group, means in one.means if match.start(group) >= 0]
            if all(cut.end <= other.start or cut.start >= other.end for cut in here for other in made):
                made += here
    return tuple(sorted(made, key=lambda cut: cut.start))
