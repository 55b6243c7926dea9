"""What is said in a roundabout way is read as the plain words for it: "let me put the tape on it" between two measures tapes nothing, "Length was
forty-eight. Length is forty-six." sets right.

Only whole turns of words are read so whose plain form says neither more nor less. What is read of them keeps the places and the words of the note.
"""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.reading.words.letters import Cues, beginnings, by_start
from logbook.reading.words.likely import Likely, index_of
from logbook.reading.words.spelled import Cut
from logbook.reading.words.tokens import Token, plain


@cache
def _rows(code: str, of: str) -> tuple[tuple[Cues, Cues, Likely, tuple[tuple[str, str], ...], re.Pattern[str] | None], ...]:
    """Of each row the letters of which a note must hold one, and of which one too, its pattern, what its groups mean, and what a note must not hold."""
    return tuple((by_start(one.cues), by_start(one.beside), Likely(rf"(?<![\w'])(?:{one.words})", (one.cues, one.beside)), one.means, re.compile(one.unless) if one.unless else None) for one in getattr(LANGUAGES[code], of))


@cache
def _patterns(code: str, of: str) -> tuple[Likely, ...]:
    return tuple(pattern for _, _, pattern, *_ in _rows(code, of))


def first(text: str, found: tuple[Token, ...], code: str) -> tuple[Cut, ...]:
    """Those that must be read plainly before the pieces are told apart."""
    return cuts(text, found, code, "plainer_first")


def cuts(text: str, found: tuple[Token, ...], code: str, of: str = "plainer") -> tuple[Cut, ...]:
    """The turns of words of a note and what stands in their place, in order; none within another. `of`: the rows that they are in."""
    said = plain(text)
    if len(said) != len(text):
        return ()
    made: list[Cut] = []
    rows, starts = _rows(code, of), beginnings(said)
    for at in index_of(_patterns(code, of)).rough(said):
        cues, beside, pattern, groups, unless = rows[at]
        for start, cue in cues:
            if (start in starts or not start) and cue in said:
                break
        else:
            continue
        if beside and not any([cue in said for start, cue in beside if start in starts or not start]):
            continue
        found = list(pattern.at_words(said))
        if found and unless is not None and unless.search(said):
            continue
        for match in found:
            here = [Cut(*match.span(group), match.expand(means)) for group, means in groups if match.start(group) >= 0]
            if all(cut.end <= other.start or cut.start >= other.end for cut in here for other in made):
                made += here
    return tuple(sorted(made, key=lambda cut: cut.start))
