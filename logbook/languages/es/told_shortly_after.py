"""Spanish of what is told shortly after its thing: the usual tape behind strips of it, the tape over it at the end of a list.

Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, STOP
from logbook.languages.plainer import Plainer

_TAPE = r"(?:cinta|tape|teip|teipe|foil)"
_USUAL = r"(?:normal|de siempre|comun|corriente|de costumbre|corrida|a lo largo(?: de (?:toda )?la (?:junta|union|costura))?|continua|completa)"
_USUAL_CUES = (" normal", "de siempre", " comun", " corriente", "de costumbre", " corrida", "a lo largo", " continua", " completa")
_STRIPS = rf"\b(?:tiras?|tiritas|tirillas|pestañas?|tabs|lenguetas|pedazos) (?:de {_TAPE} )?(?:de {COUNT} (?:pulgadas )?)?(?:de {_TAPE} )?(?:atravesad|cruzad|cada )"
_THEN = r"(?:luego|despues|encima|arriba|al final|sobre (?:los|las) (?:tabs|tiras|pestañas)|por encima|encima de (?:los|las|eso|ell[oa]s)(?: (?:tabs|tiras|pestañas))?)"

_DID = r"(?<!no )\b(?:(?:en)?cint(?:e|amos|ado|ada)|teip(?:ie|ee|e)|(?:en)?grap(?:e|amos|ado|ada)|tall(?:e|amos|ado|ada)|frot(?:e|amos|ado|ada)|limpi(?:e|amos|ado|ada)|(?:recort|quit)(?:e|amos) la fibra|puse (?:la |el )?(?:cinta|teip|tape|mastique|grapas) (?:a|en)|(?:cinta|teip|tape|mastique|grapas)(?: puestas?)? (?:a|en))"
_FRONTS = ("frente", "adelante", "la cara", "donde se ve", "donde se mira")
_ONLY = r"(?:nomas|solo|solamente|nada mas|unicamente|puro|pura)"
_ACTED = r"(?:encintad[oa]|teipead[oa]|(?:en)?grapad[oa]|tallad[oa]|frotad[oa]|limpi(?:ad)?[oa]|cinta|teip|tape|grapas|encinte|grape|engrape|talle|frote|limpie)"
_PUT_ON = (("cinta|teip|tape", "encintada"), ("grapas", "grapada"))
_PUTS = ("puse ", "pusimos ", "eche ", "di ", "meti ")
_SKIN = r"(?:el |la )(?:foil|papel|forro|facing|cubierta|piel|aluminio)\b"
_SHARES = r"(?:casi (?:todo|toda|todos|todas)(?! (?:el|la|los|las) (?:dia|mañana|tarde|rato|tiempo|rollo|caja))|(?:una )?(?:buena|gran|mayor|la mayor) parte|(?:una tercera|dos terceras|tres cuartas) partes?|lo (?:mas )?que (?:pude|se pudo|alcance|alcanzo)|(?:nomas |solo )?un (?:pedazo|pedacito|cacho|cachito|tramo|tramito))(?: de (?:la (?:costura|junta)|ella|eso))?"


def _put_only(thing: str) -> tuple[str, str]:
    put = rf"(?:le )?(?:puse|pusimos|eche|di|meti) (?:la |las |el )?(?:{thing})"
    return rf"{_ONLY} {put}", rf"{put} {_ONLY}"


SPANISH_TOLD_SHORTLY_AFTER = (
    # --- "me pasé con el cuchillo, atravesé el foil"
    Plainer(("atraves", "traspas"), rf"(?<!no )(?<!grapas )(?<!sin )(?P<x>(?:atraves|traspas)(?P<v>e|o|amos)(?: (?:todo|toda|tantito|poquito|sin querer))*) (?={_SKIN}(?! con (?:las? )?(?:grapas?|patas?)))", (("x", r"rasgue"),), unless=r"grapas?[^.;]{0,20} atraves|tornillo"),
    Plainer(("navaja", "cuchillo", "cutter", "sin querer"), rf"(?:(?:se me (?:paso|fue|resbalo|safo|zafo) (?:la |el )?(?:navaja|cuchillo|cutter)|me pase con (?:la |el )?(?:navaja|cuchillo|cutter)|sin querer)(?: (?:y|que))?,? )(?P<x>(?:le )?(?:cort|pic|raj)(?:e|o)) (?={_SKIN})", (("x", "rasgue"),)),
    # --- "encintada nomás por enfrente", "nomás encinté el frente": one side, by another name
    Plainer(_FRONTS, rf"{_ACTED}(?: \w+){{0,3}}? (?P<x>{_ONLY}(?: (?:va|esta|quedo|fue))? (?:(?:por|en|de|a) )?(?:(?:el |la |del |al )?(?:lado de )?(?:frente|enfrente|adelante|cara)|donde se (?:ve|mira)))(?=[.,;]|$| (?:y|pero)\b)", (("x", "nomas de un lado"),)),
    Plainer(_FRONTS, rf"{_ACTED}(?: \w+){{0,2}}? (?P<x>(?:por|en|de|del|a|al) (?:el )?(?:frente|enfrente|adelante) {_ONLY})(?=[.,;]|$| (?:y|pero)\b)", (("x", "nomas de un lado"),)),
    Plainer(_FRONTS, rf"{_ONLY} (?:(?:le|lo|la|yo) )*(?:(?:encint|grap|engrap|tall|frot|limpi|teip)\w*) (?P<x>(?:(?:por|en|a) )?(?:el |la |al )?(?:lado de )?(?:frente|enfrente|adelante))(?=[.,;]|$| (?:y|pero)\b)", (("x", "de un lado"),)),
    *(
        Plainer(_PUTS, rf"(?P<x>{one} (?:a|en|por|de)) (?=(?:un|dos|tres) lados?(?:[.,;]|$| (?:y|pero)\b))", (("x", f"{done} nomas de"),))
        for thing, done in _PUT_ON
        for one in _put_only(thing)
    ),
    *(
        Plainer(_PUTS, rf"(?P<x>{one} (?:(?:en|por|de) el|al) (?:frente|lado de enfrente))(?=[.,;]|$| (?:y|pero)\b)", (("x", f"{done} nomas de un lado"),))
        for thing, done in _PUT_ON
        for one in _put_only(thing)
    ),
    # --- "cada dos, la última a tres", "cada seis pies menos el último que quedó a nueve"
    Plainer((" ultim",), rf"\bcada [^.;]{{1,30}}?(?P<x>(?:,| y| pero| menos| excepto| salvo)+ (?:el|la|los|las) ultim[oa]s?(?: \w+)?(?:,? que)?(?: (?:esta|estan|quedo|quedaron|va|van|anda|me quedo))?(?: como)?) (?=a {COUNT}\b)", (("x", ", unas quedaron"),)),
    # --- "le puse parche pero se está despegando"
    Plainer(("parche",), r"(?<!sin )\bparche(?P<x>,? (?:pero|y|aunque|nomas que)(?: ya)?) (?=se (?:le |me )?(?:esta|anda|viene|quiere|despeg|levant|solto|suelta|cae|cayo))", (("x", ". el parche"),)),
    # --- "encinté casi todo", "tallé lo que pude": no such share is all of it
    Plainer(("casi tod", " parte", "que pude", "que se pudo", "que alcanc", " pedazo", " pedacito", " cach", " tram"), rf"{_DID}(?: (?:nomas|solo|apenas|como|ya))* (?P<x>{_SHARES})(?=[.,;]|$| (?:y|pero|con)\b)", (("x", "la mitad"),)),
    # --- "tiras de cinta atravesadas, luego la cinta normal": the one that always goes there, and no other
    Plainer(
        (" cinta", " tape", " teip"),
        rf"{_STRIPS}[^.;]*?[,.;]? (?:(?:y|ya) )*{_THEN}(?P<x> (?:ya )?(?:con )?(?:la|el|su) {_TAPE}){STOP}",
        (("x", " le puse cinta"),),
        beside=("tabs", "tira", "pestaña", "lengueta", "pedazos"),
    ),
    Plainer(
        _USUAL_CUES,
        rf"{_STRIPS}[^.;]*?[,.;]? (?:(?:y|ya) )*{_THEN}(?P<x> (?:y )?(?:ya )?(?:(?:con )?(?:la|el|su) )?{_TAPE} {_USUAL})(?! (?:de|gris|negra|plateada)\b)",
        (("x", " le puse cinta"),),
    ),
    Plainer(
        _USUAL_CUES,
        rf"{_STRIPS}[^.;]*?[,.;]? (?:(?:y|ya) )*(?:{_THEN} )?(?:(?:le|ya) )*(?:puse|eche|(?P<v>pase|corri|pegue)|meti|va|fue) (?:(?:la|el|su) )?{_TAPE}(?P<x> {_USUAL})(?! (?:de|gris|negra|plateada)\b)",
        (("v", "puse"), ("x", "")),
    ),
    # --- "le pasé la mano nada más al teip": by hand alone, and not rubbed
    Plainer((" la mano ", " la pura mano "), rf"(?<!no )(?P<x>(?:(?:nomas|solo|nada mas) )?\ble (?:pase|di|pasamos|dimos) (?:con )?(?:la pura mano(?: nomas| nada mas)?|la mano (?:nomas|nada mas|solamente)|(?<=nomas le pase )la mano|(?<=solo le pase )la mano) (?:al|a la) {_TAPE})\b", (("x", "no tallé la cinta"),)),
    # --- "no traía flap, así que la cinta va encima": taped
    Plainer(
        (" va encima", " va por encima", " va arriba"),
        rf"(?:^|(?<=[,;.] )|(?<= y )|(?<= que )|(?<= entonces ))(?P<x>(?:(?:su|el|la|con) )*{_TAPE} va (?:por )?(?:encima|arriba)(?: de (?:la|las|el) (?:junta|juntas|costura|costuras|union|flap|solapa|pestaña))?)(?= *(?:$|[,;.]| y ))",
        (("x", "lleva cinta"),),
        unless=r"\b(?:hoyo|agujer|raja|rasg|raspon|rotur|piquete|golpe|parche|falt|mañana|despues|luego|al rato)",
    ),
    # --- "grapas cada dos, tape encima y bien frotado": taped, and rubbed
    Plainer(
        ("encima y ", "encima, ", "arriba y "),
        rf"(?:^|(?<=[,;.] )|(?<= y ))(?P<x>(?:(?:su|el|la|con|y) )*{_TAPE} (?:por )?(?:encima|arriba))(?=,? (?:y |todo )*(?:muy |bien |ya )*(?:frotad|tallad|planchad|alisad|restregad)[oa])",
        (("x", "encintado"),),
        unless=r"\b(?:hoyo|agujer|raja|rasg|raspon|rotur|piquete|golpe|parche|falt|sin |no )",
    ),
)
