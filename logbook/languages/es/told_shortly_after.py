"""Spanish of what is told shortly after its thing: the usual tape behind strips of it, the tape over it at the end of a list.

Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_TAPE = r"(?:cinta|tape|teip|teipe|foil)"
_USUAL = r"(?:normal|de siempre|comun|corriente|de costumbre)"
_USUAL_CUES = (" normal", "de siempre", " comun", " corriente", "de costumbre")
_STRIPS = rf"\b(?:tiras?|tiritas|pestañas?|tabs|lenguetas|pedazos) (?:de {_TAPE} )?(?:atravesad|cruzad|cada )"
_THEN = r"(?:luego|despues|encima|arriba|al final)"

SPANISH_TOLD_SHORTLY_AFTER = (
    # --- "tiras de cinta atravesadas, luego la cinta normal": the one that always goes there, and no other
    Plainer(
        _USUAL_CUES,
        rf"{_STRIPS}[^.;]*?[,.;]? (?:(?:y|ya) )*{_THEN}(?P<x> (?:y )?(?:la|el) {_TAPE} {_USUAL})(?! (?:de|gris|negra|plateada)\b)",
        (("x", " le puse cinta"),),
    ),
    Plainer(
        _USUAL_CUES,
        rf"{_STRIPS}[^.;]*?[,.;]? (?:(?:y|ya) )*(?:{_THEN} )?(?:(?:le|ya) )*(?:puse|eche|pase|meti|corri|va|fue) (?:la|el) {_TAPE}(?P<x> {_USUAL})(?! (?:de|gris|negra|plateada)\b)",
        (("x", ""),),
    ),
    # --- "grapas cada dos, tape encima y bien frotado": taped, and rubbed
    Plainer(
        ("encima y ", "encima, ", "arriba y "),
        rf"(?:^|(?<=[,;.] )|(?<= y ))(?P<x>(?:(?:su|el|la|con|y) )*{_TAPE} (?:por )?(?:encima|arriba))(?=,? (?:y |todo )*(?:muy |bien |ya )*(?:frotad|tallad|planchad|alisad|restregad)[oa])",
        (("x", "encintado"),),
        unless=r"\b(?:hoyo|agujer|raja|rasg|raspon|rotur|piquete|golpe|parche|falt|sin |no )",
    ),
)
