"""Words that end a note as much as they set anything right: "le faltan las aletas. Ya quedó."

Behind a lack that was so before ("le faltaban las aletas, ya quedó") they tell that it is mended. Behind one that is so
they tell that he is through with the piece, and the lack stays.
"""

from __future__ import annotations

from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.likely import Likely


@cache
def _closers(code: str) -> tuple[tuple[Likely, Likely], ...]:
    return tuple((Likely(closing), Likely(lack)) for closing, lack in LANGUAGES[code].turns.closers)


def ends_it(words: str, lack: str, language: Language) -> bool:
    """Whether these words, behind the words of a lack, say no more than that he is done."""
    return any(closing.fullmatch(words) is not None and mended.search(lack) is None for closing, mended in _closers(language.code))
