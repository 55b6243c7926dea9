"""The installation check list for fibrous glass duct, and what of it the rule book answers.

Its 26 questions are those of NAIMA's installation check list, in our own words (`checklist.<id>.asks`). Eleven of them
were read in the printed page, the others are from memory of the same list (`read` tells which). Each names the rules
that speak to it; `walk` means that somebody has to go and look, `lead` that the lead answers it from papers. Rules judge
what was said, so where only eyes can tell, `walk` stands beside the rule.
"""

from __future__ import annotations

from dataclasses import dataclass

WALK, LEAD = "walk", "lead"


@dataclass(frozen=True)
class Question:
    """One question of the list. `covered_by`: rule ids, `walk` or `lead`; `read`: seen in print, not from memory."""

    id: str
    covered_by: tuple[str, ...]
    read: bool = True

    @property
    def asks(self) -> str:
        """The key of its words."""
        return f"checklist.{self.id}.asks"


def _remembered(id: str, *covered_by: str) -> Question:
    return Question(id, covered_by, read=False)


CHECKLIST: tuple[Question, ...] = (
    # the whole system
    Question("g1", ("allowed-there", WALK)),
    Question("g2", ("static-pressure", "air-temperature", "velocity", LEAD)),
    Question("g3", ("damage-repaired", "damage-method", WALK)),
    Question("g4", (WALK,)),
    # the board
    Question("p1", (WALK,)),
    Question("p2", (WALK,)),
    Question("p3", ("damage-repaired", WALK)),
    # fittings and joints
    Question("f1", ("elbow-vanes", WALK)),
    Question("f2", ("metal-fastening", WALK)),
    Question("f3", ("damage-repaired", WALK)),
    Question("f4", (WALK,)),
    _remembered("f5", "fastened", "cross-tabs"),
    _remembered("f6", "joint-tight", WALK),
    _remembered("f7", "rubbed-down", WALK),
    _remembered("f8", "closure-listed", WALK),
    _remembered("f9", WALK),
    # reinforcement
    _remembered("r1", "span-unreinforced", LEAD),
    _remembered("r2", WALK),
    _remembered("r3", WALK),
    # hanging
    _remembered("h1", "hanger-spacing", WALK),
    _remembered("h2", "allowed-there", WALK),
    _remembered("h3", "accessory-hung", WALK),
    # what is built in, and the end
    _remembered("s1", WALK, LEAD),
    _remembered("s2", WALK),
    _remembered("s3", WALK),
    _remembered("s4", LEAD),
)
