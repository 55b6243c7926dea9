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

_DID = r"(?<!no )\b(?:(?:en)?cint(?:e|amos|ado|ada)|teip(?:ie|ee|e)|(?:en)?grap(?:e|amos|ado|ada)|tall(?:e|amos|ado|ada)|frot(?:e|amos|ado|ada)|limpi(?:e|amos|ado|ada)|puse (?:la |el )?(?:cinta|teip|tape|mastique|grapas) (?:a|en)|(?:cinta|teip|tape|mastique|grapas)(?: puestas?)? (?:a|en))"
_SKIN = r"(?:el |la )(?:foil|papel|forro|facing|cubierta|piel|aluminio)\b"
_SHARES = r"(?:casi (?:todo|toda|todos|todas)(?! (?:el|la|los|las) (?:dia|mañana|tarde|rato|tiempo|rollo|caja))|(?:una )?(?:buena|gran|mayor|la mayor) parte|(?:una tercera|dos terceras|tres cuartas) partes?|lo (?:mas )?que (?:pude|se pudo|alcance|alcanzo)|(?:nomas |solo )?un (?:pedazo|pedacito|cacho|cachito|tramo|tramito))(?: de (?:la (?:costura|junta)|ella|eso))?"

SPANISH_TOLD_SHORTLY_AFTER = (
    # --- "me pasé con el cuchillo, atravesé el foil"
    Plainer(("atraves", "traspas"), rf"(?<!no )(?<!grapas )(?<!sin )(?P<x>(?:atraves|traspas)(?P<v>e|o|amos)(?: (?:todo|toda|tantito|poquito|sin querer))*) (?={_SKIN}(?! con (?:las? )?(?:grapas?|patas?)))", (("x", r"rasgue"),), unless=r"grapas?[^.;]{0,20} atraves|tornillo"),
    Plainer(("navaja", "cuchillo", "cutter", "sin querer"), rf"(?:(?:se me (?:paso|fue|resbalo|safo|zafo) (?:la |el )?(?:navaja|cuchillo|cutter)|me pase con (?:la |el )?(?:navaja|cuchillo|cutter)|sin querer)(?: (?:y|que))?,? )(?P<x>(?:le )?(?:cort|pic|raj)(?:e|o)) (?={_SKIN})", (("x", "rasgue"),)),
    # --- "encinté casi todo", "tallé lo que pude": no such share is all of it
    Plainer(("casi tod", " parte", "que pude", "que se pudo", "que alcanc", " pedazo", " pedacito", " cach", " tram"), rf"{_DID}(?: (?:nomas|solo|apenas|como|ya))* (?P<x>{_SHARES})(?=[.,;]|$| (?:y|pero|con)\b)", (("x", "la mitad"),)),
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
