"""The air side, small: area, velocity, velocity pressure, equivalent diameter, leakage allowance.

Inch-pound units as the trade uses them: inches, cfm, fpm, in. w.g., ft². Results are floats rounded by whoever prints
them: no verdict compares them except velocity and leakage, whose limits are whole numbers. Sources, with the ids of the
project's reference sheet: V = Q / A (AS-01) and De = 1.30 (ab)^0.625 / (a + b)^0.25 (AS-04, Huebscher 1948) from the
ASHRAE Handbook, Fundamentals 2021, chapter 21; the 4005 of velocity pressure (AS-02) is the usual form for standard
air of 0.075 lb/ft³; leakage F = C_L P^0.65 per 100 ft² from SMACNA's leakage test manual.
"""

from __future__ import annotations

from fractions import Fraction

SQUARE_INCHES = 144  # in a square foot
STANDARD_AIR = 4005  # fpm whose velocity pressure is 1 in. w.g. in standard air
LEAK_EXPONENT = 0.65
PER_AREA = 100  # ft² that a leakage class speaks of

Size = tuple[Fraction, Fraction]


def area(size: Size) -> Fraction:
    """The inside area of a size in inches, in ft²."""
    return size[0] * size[1] / SQUARE_INCHES


def velocity(cfm: Fraction, size: Size) -> Fraction:
    """Mean velocity in fpm."""
    return cfm / area(size)


def velocity_pressure(fpm: Fraction | float) -> float:
    """Velocity pressure of standard air in in. w.g."""
    return (float(fpm) / STANDARD_AIR) ** 2


def equivalent_diameter(size: Size) -> float:
    """The round duct of the same friction at the same flow; in the unit of the size."""
    a, b = (float(side) for side in size)
    return 1.30 * (a * b) ** 0.625 / (a + b) ** 0.25


def aspect_ratio(size: Size) -> Fraction:
    """The long side over the short one."""
    return max(size) / min(size)


def leakage_allowed(leakage_class: Fraction | float, pressure: Fraction | float, square_feet: Fraction | float) -> float:
    """The flow in cfm that a leakage class allows at a pressure (in. w.g., either sign) over a duct surface (ft²)."""
    return float(leakage_class) * abs(float(pressure)) ** LEAK_EXPONENT * float(square_feet) / PER_AREA


def surface(size: Size, feet: Fraction | float) -> float:
    """The duct surface in ft² of a length in feet, by its inside sizes."""
    return 2 * float(size[0] + size[1]) / 12 * float(feet)
