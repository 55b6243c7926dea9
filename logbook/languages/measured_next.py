"""The shape of what is measured of one piece and then, by the number alone, of the next: "staples on 27 are two inches apart, on 28 three"."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Measured:
    """A thing that is measured: where `told` is found in the words before, the next piece's measure is said as `says` (`{v}` its number, `{u}` its unit)."""

    told: str
    says: str
    unit: str
    value: str = ""  # begins what its number may be
    least: bool = False  # the less of it the worse


@dataclass(frozen=True)
class MeasuredNext:
    """Regular expressions over lower-case letters; a language without `cues` has none of this.

    `behind` and `ahead` find the next piece (`k` its kind, `m` its number, `on` what leads to it) with its measure (`v`, up to `end`) behind or before it.
    """

    cues: tuple[str, ...] = ()  # a note without one of them measures nothing
    behind: str = "(?!)"
    ahead: str = "(?!)"
    ends: str = "(?!)"  # ends the words before: the measure, and nothing told behind it
    apart: str = "(?!)"  # behind a measure, a part that has another (`v`): "…, everywhere but the heel, where they're at three"
    apart_cues: tuple[str, ...] = ()
    said: str = "(?!)"  # a measure, its number `n` and its unit `u`
    told_so: str = "(?!)"  # a piece told so, and right behind it (`end`) what may begin to tell of the next
    led: str = "(?!)"  # ends the words before a measure that stands before its piece: a piece told so too
    number: str = ""  # the word for a piece before its number
    nouns: tuple[str, ...] = ()  # a thing named right behind the next measure (`t`), which is then of that thing alone
    names: str = "(?!)"  # a piece, in the words before
    unless: str = "(?!)"  # in the words before: what was measured is not said plainly
    metric: str = "(?!)"  # a unit in the words before that the next number has too
    things: tuple[Measured, ...] = ()
