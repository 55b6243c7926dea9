"""What was said of a piece and what he found when he looked: "I told you it had staples every two. I went and checked, it's every four".

Two words on one thing that contradict each other both stand, and the speaker is asked; where he says himself that the first was only what he had said or
thought, or that he looks again, the second is how it is.
"""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import apart, finds
from logbook.reading.words.tokens import plain

_OF_THE_PIECE = frozenset(
    "stapled taped rubbed_down vanes trimmed surface_clean preheated tabs_bent damage_repaired scrim_shows staple_spacing staple_leg staple_clinch tape_width closure gap groove_step".split()
)
_BEFORE = 60  # letters before the first that tell that it was only said
_BEHIND = 30  # letters behind the second: "I've rubbed it since"


def found_out(row: Row, old: Claim, one: Claim, language: Language) -> bool:
    """Whether the second of two claims on one thing takes the place of the first."""
    if one.name not in _OF_THE_PIECE or old.end >= one.start or not language.thoughts.found_out:
        return False
    text = plain(row.text)
    if finds(apart(language.code, "thoughts.found_out"), text[old.end : one.start]) is not None:
        return True
    if one.value is True and finds(apart(language.code, "thoughts.since"), text[one.end : one.end + _BEHIND].split(".")[0]) is not None:
        return True
    begin = max(row.items[row.sentence_start(old.first)].start, old.start - _BEFORE)
    return finds(apart(language.code, "thoughts.told_so"), text[begin : old.start]) is not None
