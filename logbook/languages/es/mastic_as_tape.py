"""Spanish mastic told of as tape is."""

from __future__ import annotations

from logbook.languages.mastic_as_tape import MasticAsTape

SPANISH_MASTIC_AS_TAPE = MasticAsTape(
    words=((r"(?:mastique|enmastic)ad[oa]s?", "encintado"), (r"mastique[eé]|enmastiqu[eé]", "encinté"), (r"m[aá]stique|mastik|m[aá]stic|masilla", "teip")),
    beside=r"\b(?:en)?cint\w*|\b(?:tape|teip|taip|teipe)\w*|\b181 ?a? ?-? ?[ph]\b|\b(?:parch|repar|tapon)\w*|\b(?:sec[ao]|seque|fresc[ao]|mojad[ao]|floj[ao]s?)\b|\b(?:mastique|mastic|masilla) (?:ni|no)\b|\b(?:sin|no|ni|en (?:vez|lugar) de) (?:\w+ )?(?:mastique|mastic|masilla)\b",
)
