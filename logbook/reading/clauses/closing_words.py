"""Words that end a note as much as they set anything right: "le faltan las aletas. Ya quedó."

Behind a lack that was so before ("le faltaban las aletas, ya quedó") they tell that it is mended. Behind one that is so
they tell that he is through with the piece, and the lack stays.
"""

from __future__ import annotations

from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.words.likely import Likely


@cache
def _closers(code: str) -> tuple[tuple[Likely, Likely, Likely], ...]:
    return tuple((Likely(closing), Likely(beside), Likely(before)) for closing, beside, before in LANGUAGES[code].turns.closers)


def ends_it(words: str, lack: str, apart: bool, language: Language) -> bool:
    """Whether these words, behind the words of a lack or in a sentence `apart` from it, say no more than that he is done."""
    return any(closing.fullmatch(words) is not None and (before if apart else beside).search(lack) is None for closing, beside, before in _closers(language.code))
