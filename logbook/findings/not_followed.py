"""What becomes of a rule's answer where something was said of its matter and nobody understood it.

Such words may be the very departure ("all it's got is tape round the frame"), so neither silence nor a "meets" stands
beside them: the rule that owns the matter is `unclear`, quotes them and asks for its fact. What departs anyway departs.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from logbook.findings import Finding, Outcome, Rule
from logbook.job import Job
from logbook.piece import Piece

NOT_UNDERSTOOD = "not-understood"
# A fact and the one rule that asks for it; the other rules that read it have their own matter.
OWNERS: Mapping[str, str] = MappingProxyType(
    {
        "stapled": "fastened",
        "staple_spacing": "staple-spacing",
        "staple_leg": "staple-leg",
        "staple_clinch": "staple-clinch",
        "cross_tabs": "cross-tabs",
        "taped": "taped",
        "closure": "closure-listed",
        "tape_width": "tape-width",
        "surface_temperature": "tape-cold",
        "rubbed_down": "rubbed-down",
        "surface_clean": "surface-clean",
        "trimmed": "trimmed",
        "vanes": "elbow-vanes",
        "groove_step": "groove-step",
        "side_moves": "transition-slope",
        "gap": "joint-tight",
        "facing_damage": "damage-repaired",
        "screw_spacing": "metal-fastening",
        "washer_size": "metal-fastening",
        "tabs_bent": "tabs-bent",
        "hanger_spacing": "hanger-spacing",
        "leak_flow": "leak-test",
        "air_temperature": "air-temperature",
        "static_pressure": "static-pressure",
    }
)


def answer(rule: Rule, piece: Piece, job: Job, outcome: Outcome | None) -> Outcome | None:
    """The rule's answer, unclear where words about its matter were not understood and nothing departs.

    Whoever a silence would bother is bothered by such words too.
    """
    if not piece.unread or (outcome is not None and outcome.verdict in ("departs", "unclear")):
        return outcome
    mine = [(one.words, name) for one in piece.unread for name in one.about if OWNERS.get(name) == rule.id]
    if not mine:
        return outcome
    words = tuple(dict.fromkeys(words for words, _ in mine))
    silence = None if outcome is None or outcome.verdict != "unsaid" else job.silence.get(rule.id) or outcome.silent or rule.silent
    facts = () if outcome is None else outcome.facts
    return Outcome(
        NOT_UNDERSTOOD, "unclear", facts=facts, asks=mine[0][1], evidence=words, tells={"words": '"; "'.join(words)}, departs_as_heard=silence == "flag"
    )


def quotes(finding: Finding, words: str) -> bool:
    """Whether a finding tells these words as not understood."""
    return finding.case == NOT_UNDERSTOOD and words in finding.evidence
