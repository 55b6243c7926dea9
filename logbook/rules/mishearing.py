"""Numbers that ears take for each other: a rule that compares two sayings asks before it calls one of them wrong."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

# Teens and tens in English, and the Spanish pair; each taken for the other. Common experience, no published source.
ALIKE = (
    (13, 30), (14, 40), (15, 50), (16, 60), (17, 70), (18, 80), (19, 90),
    (60, 70), (2, 12),
)  # fmt: skip


def meant(sizes: Mapping[str, tuple[Fraction, Fraction]]) -> Iterator[tuple[str, tuple[Fraction, Fraction]]]:
    """Each size as it may have been meant: (fact name, size), one number changed at a time."""
    for name, size in sizes.items():
        for place in (0, 1):
            for other in _others(size[place]):
                changed = Fraction(other)
                yield name, (changed, size[1]) if place == 0 else (size[0], changed)


def _others(number: Fraction) -> tuple[int, ...]:
    return tuple(pair[1 - place] for pair in ALIKE for place in (0, 1) if pair[place] == number)
