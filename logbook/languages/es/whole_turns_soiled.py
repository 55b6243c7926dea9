"""Spanish turns of what lay on the facing: "traía aceite y no me di cuenta hasta que ya le había puesto la cinta". Without accents. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.es.plainer import KIND, MARK
from logbook.languages.turns_of_words import Turn

_DIRT = r"(?:polvo|polvito|polvadera|tierra|mugre|grasa|aceite|humedad|rocio|suciedad|aserrin|yeso|cochambre|lodo)"
_HAD = r"(?:tenia|traia|tiene|trae|estaba (?:con|llen[oa] de)|esta (?:con|llen[oa] de)|quedo (?:con|llen[oa] de)|venia (?:con|llen[oa] de)|habia)"
_SOME = r"(?: (?:un poco de|poquit[oa]|tantit[oa]|mucho|mucha|algo de|bastante|todo el|toda la|puro|pura|el|la))?"
_ON_WHAT = rf"(?:superficie|foil|forro|facing|papel|aluminio|cara|carton|{KIND} (?:numero )?{MARK})"
_NEVER_CLEANED = r"^(?!.*\b(?:limpi|sacud|quit|sequ|sec[oa]\b|trap|sopl|franela|estopa|lij))"
_TAPED = r"(?:encint|cinta|tape|teip|foil)"

SOILED: tuple[Turn, ...] = (
    # he found out once it was taped
    Turn(rf"\b{_DIRT}\b", rf"\b(?P<w>{_HAD}{_SOME} {_DIRT})\b[^;]{{0,40}}? (?:no )?(?:me|nos) di(?:mos)? cuenta (?:hasta|sino|cuando|despues|ya)\b[^;]{{0,40}}?{_TAPED}\w*", (("surface_clean", False),), beside=_NEVER_CLEANED),
    # it lay there, and nobody took it off
    Turn(rf"\b{_DIRT}\b", rf"\b{_ON_WHAT} (?:ya |si |todavia )?{_HAD}{_SOME} {_DIRT}\b", (("surface_clean", False),), beside=_NEVER_CLEANED, unless=r"\b(?:no|ni|sin|nada|nunca)\b"),
)
