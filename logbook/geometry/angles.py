"""Plain trigonometry on exact lengths: the one place where a length passes through a float.

A slant is irrational; it comes back as the nearest 1/1024 in., sixteen times finer than the 1/64 in. that a
folded fitting is held to.
"""

from __future__ import annotations

from fractions import Fraction
from math import atan, cos, degrees, hypot, radians, tan

FINENESS = 1024


def near(value: float) -> Fraction:
    return Fraction(round(value * FINENESS), FINENESS)


def slope_angle(by: Fraction, back: Fraction) -> Fraction:
    """Degrees of a side that moves `by` over `back`, to a thousandth."""
    return Fraction(round(degrees(atan(by / back)), 3)).limit_denominator(1000)


def slant(*legs: Fraction) -> Fraction:
    """Length of the diagonal over legs that stand square to each other."""
    return near(hypot(*map(float, legs)))


def short_by(by: Fraction, back: Fraction) -> Fraction:
    """How far a panel of length `back`, laid on the slant, ends short along the duct: back x (1 - cos)."""
    return near(float(back) * (1 - cos(atan(by / back))))


def across(length: Fraction, angle: Fraction) -> Fraction:
    """length x tan(angle in degrees)."""
    return near(float(length) * tan(radians(float(angle))))


def arc(radius: Fraction, angle: Fraction) -> Fraction:
    """Length of an arc of `angle` degrees."""
    return near(float(radius) * radians(float(angle)))
