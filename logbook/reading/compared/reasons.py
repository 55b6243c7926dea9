"""Why it is so: "staples every four because not much staple". What there was too little of is told as a reason, and denies no act that was told before it."""

from __future__ import annotations

import re

from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row

_WHY = re.compile(r"\b(?:because|cause|cuz|since|on account of|porque|por falta de)\b")
_NOUNS = {"stapled": ("STAPLES", "STAPLE"), "taped": ("TAPE",)}
_NO_DEED = ("FILLER", "DET", "NO", "NOT", "NOT_DONE", "MISSING", "I", "HAVE", "BE", "WORD", "STAPLES", "STAPLE", "TAPE", "OF", "IT", "MORE", "HEDGE", "ENOUGH", "ALL", "DAMAGE", "THERE")


def without_reasons(row: Row, claims: list[Claim]) -> list[Claim]:
    text = row.text.lower()
    whys = [match.start() for match in _WHY.finditer(text)]
    if not whys:
        return claims
    return [one for one in claims if not (one.value is False and one.name in _NOUNS and _is_why(row, one, whys, claims))]


def _is_why(row: Row, one: Claim, whys: list[int], claims: list[Claim]) -> bool:
    """Whether the claim is read off the noun alone, behind the word that tells why, where the act was told as done before it in the sentence."""
    begin = row.items[row.sentence_start(one.first)].start
    why = next((at for at in reversed(whys) if begin <= at <= row.items[one.last - 1].start), None)
    if why is None or one.opens or not any(row.items[at].concept in _NOUNS[one.name] for at in range(one.first, one.last)):
        return False
    behind = [row.items[at].concept for at in range(one.first, one.last) if row.items[at].start >= why]
    if not all(concept in _NO_DEED for concept in behind):
        return False
    return any(other.value is True and other.name == one.name and begin <= row.items[other.first].start < why for other in claims)
