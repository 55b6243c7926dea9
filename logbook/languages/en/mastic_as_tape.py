"""English mastic told of as tape is."""

from __future__ import annotations

from logbook.languages.mastic_as_tape import MasticAsTape

ENGLISH_MASTIC_AS_TAPE = MasticAsTape(
    words=((r"mastic(?:'d|'ed|ked|ed)|mudded", "taped"), (r"mastics?|masti[ck]k|mud", "tape")),
    beside=r"\btabs?\b|\btap(?:e|ed|es|ing)\b|\b181 ?a? ?-? ?[ph]\b|\b(?:patch|repair|plug|mend)\w*|\b(?:dry|dries|dried|wet|cur(?:e|es|ed|ing)|fresh|tacky|set up|loose|needs?)\b|\bno (?:\w+ )?(?:mastic|mud)\b|\b(?:not|without|instead of|rather than) (?:\w+ )?(?:mastic|mud)\b",
)
