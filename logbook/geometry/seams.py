"""What closes a seam: staples through a flap, cross tabs where there is none, and tape over both.

Spacings and lengths are limits of the job. A cross tab stands on every side at least once, so far apart at most as
the limit says (UMC Standard 6-5, A.6.503(C)).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from logbook import limits

OVERLAP = Fraction(1)  # inches that a tape runs on past each of the four ends of a seam; common practice, no published source


@dataclass(frozen=True)
class Seams:
    """The job's limits of closing, and the end that it lays pieces out from. Lengths in inches."""

    staple_spacing: Fraction
    cross_tab_length: Fraction
    cross_tab_spacing: Fraction
    made_from: str

    @property
    def other_end(self) -> str:
        return next(end for end in limits.END if end != self.made_from)

    def flapped(self, seam: Fraction) -> Closing:
        """A seam with a flap to staple through: one staple more than the gaps between them."""
        return Closing(seam, int(seam / self.staple_spacing) + 1, 0, Fraction(ceil(seam + 4 * OVERLAP)))

    def tabbed(self, sides: Sequence[Fraction]) -> Closing:
        """Joints without a flap, each side given by its length: cross tabs and tape, no staples."""
        seam = sum(sides, Fraction(0))
        tabs = sum(max(1, ceil(side / self.cross_tab_spacing)) for side in sides)
        return Closing(seam, 0, tabs, Fraction(ceil(seam + 4 * OVERLAP + tabs * self.cross_tab_length)))


@dataclass(frozen=True)
class Closing:
    """`seam` and `tape` in inches; staples or cross tabs, as the joint has a flap or none."""

    seam: Fraction
    staples: int
    tabs: int
    tape: Fraction


def of(limit: Callable[[str], object]) -> Seams:
    """The seams of a job, `limit` being `Job.limit`."""
    return Seams(*map(limit, ("staple_spacing", "cross_tab_length", "cross_tab_spacing", "made_from")))


USUAL = of(limits.DEFAULTS.__getitem__)
