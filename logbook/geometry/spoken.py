"""The facts of one fitting as a drawing needs them: exact values and the short texts of its dimensions."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from logbook import measure, said
from logbook.wording import has, say

METRIC = ("mm", "cm", "m")


@dataclass(frozen=True)
class Spoken:
    """What was said of a fitting. `facts` hold the last word of each name; conflicting values stand side by side."""

    facts: tuple[said.Fact, ...]
    language: str = "en"
    planned: bool = False  # a row of the schedule: nobody said it

    def fact(self, name: str) -> said.Fact | None:
        return next((fact for fact in self.facts if fact.name == name), None)

    def value(self, name: str):
        found = self.fact(name)
        return None if found is None else found.value

    @property
    def against(self) -> bool:
        """Returns and exhausts are spoken from the unit outward, against the air."""
        return self.value("service") in ("return", "exhaust")

    def length(self, name: str) -> str | None:
        """The dimension text of a length, None where it was not said."""
        return self._texts(name, lambda value: value)

    def side(self, name: str, at: int) -> str | None:
        """The text of one number of a size."""
        return self._texts(name, lambda value: value[at])

    def _texts(self, name: str, pick) -> str | None:
        """Two values in conflict are both printed: the drawing takes no side."""
        told = dict.fromkeys(self.short(fact, pick(fact.value)) for fact in self.facts if fact.name == name)
        return f" {say('drawing.or', self.language)} ".join(told) or None

    def short(self, fact: said.Fact, value: Fraction) -> str:
        """12-1/2, or 200 mm where millimetres were said; hedged words keep their hedge."""
        if fact.said_unit in METRIC:
            text = f"{measure.printed(value / measure.UNITS[fact.said_unit])} {fact.said_unit}"
        else:
            text = measure.printed(value)
        return say("drawing.about", self.language, length=text) if fact.hedged else text

    def say(self, key: str, **values) -> str:
        planned = f"drawing.planned-{key}"
        return say(planned if self.planned and has(planned) else f"drawing.{key}", self.language, **values)


def spoken(found: Sequence[Mapping], language: str, planned: bool = False) -> Spoken:
    """From the fact documents of a note's fitting or of a piece."""
    return Spoken(tuple(said.fact_from_json(doc) for doc in found), language, planned)
