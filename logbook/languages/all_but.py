"""The shape of the words that set a part of a piece apart from what was told of the whole: "all but the last foot", "The right? Nope."."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True)
class AllBut:
    """Regular expressions over lower-case letters of the whole note."""

    apart: str = "(?!)"  # a part that is set apart from the whole, beside the act
    side: str = "(?!)"  # a side that the act told before was not done on
    seen_to: str = "(?!)"  # behind a part that was left out: somebody did it after all
    cured: str = "(?!)"  # behind either: it was done there too; words that tell of one act alone in a group of its name
    fewer: str = "(?!)"  # so many sides, and then, in the group `n`, that it is so many
    numbers: Mapping[str, int] = field(default_factory=dict)
    left_out_part: str = ""  # a part (group `of`) that an act told before was not done to; without the group `part` it is only "the other"
    left_out_harm: str = "(?!)"  # the same of harm that was not mended
    left_out_told: str = "(?!)"  # a part with its act, and "no" behind
    only_one: str = "(?!)"  # several harms, and (group `of`) one of them
    so_many: str = "(?!)"  # some of the parts, counted, beside an act
    a_part: str = "(?!)"  # a part, in the words before "the other"
