"""The air side, small: area, velocity, velocity pressure, equivalent diameter, leakage allowance.

Inch-pound units as the trade uses them: inches, cfm, fpm, in. w.g., ft². Results are floats rounded by whoever prints
them: no verdict compares them except velocity and leakage, whose limits are whole numbers. Sources, with the ids of the
project's reference sheet: V = Q / A (AS-01) and De = 1.30 (ab)^0.625 / (a + b)^0.25 (AS-04, Huebscher 1948) from the
ASHRAE Handbook, Fundamentals 2021, chapter 21; the 4005 of velocity pressure (AS-02) is the usual form for standard
air of 0.075 lb/ft³; leakage F = C_L P^0.65 per 100 ft² from SMACNA's leakage test manual.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from logbook.schedule import Row

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


# --- a row of the schedule, looked at once when it is read


@dataclass(frozen=True)
class End:
    """One end of a planned fitting: `round` in inches, `velocity` in fpm, `pressure` of that velocity in in. w.g."""

    name: str  # inlet or outlet
    size: Size
    area: Fraction  # ft²
    round: float
    ratio: Fraction
    velocity: Fraction | None  # None where the schedule says no airflow
    pressure: float | None


@dataclass(frozen=True)
class AirSide:
    """What a row of the schedule means for the air. `surface` in ft² and `leak` in cfm where length and pressure are planned."""

    ends: tuple[End, ...]
    surface: float | None
    leak: float | None
    fast: bool  # beyond the job's limit of velocity
    flat: bool  # beyond its limit of the aspect ratio


def side(row: Row, limit: Callable[[str], Fraction]) -> AirSide:
    """`limit` is `Job.limit`. A branch's share of the airflow is not on the schedule: nothing is said of its air."""
    ends = tuple(_end(name, size, row.airflow) for name, size in (("inlet", row.inlet), ("outlet", row.outlet)) if size is not None)
    own = surface(row.inlet, row.length / 12) if row.kind == "straight" and row.inlet is not None and row.length is not None else None
    leak = None if own is None or row.pressure_class is None else leakage_allowed(limit("leakage_class"), row.pressure_class, own)
    fast = any(end.velocity is not None and end.velocity > limit("velocity") for end in ends)
    return AirSide(ends, own, leak, fast, any(end.ratio > limit("aspect_ratio") for end in ends))


def _end(name: str, size: Size, airflow: Fraction | None) -> End:
    fpm = velocity(airflow, size) if airflow else None
    return End(name, size, area(size), equivalent_diameter(size), aspect_ratio(size), fpm, None if fpm is None else velocity_pressure(fpm))
