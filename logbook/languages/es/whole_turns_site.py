"""Spanish turns of the men on site that each tell one fact: tape laid by hand, legs the wrong way, vanes the wrong way, wool left at the cut. Without accents. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.es.whole_turns_words import MATE, SLIPPED
from logbook.languages.turns_of_words import Turn

_CLAUSE = r"(?:^|(?<=[,;:] ))(?:pero |y |nomas que |la verdad )*"
_OVER = r"(?= *(?:$|[,;.]))"
_BESIDE_TAPE = r"\b(?:cinta|tape|teip|encint|181)"
_TABS = r"(?:lenguetas?|tabs?|pestañas?|orejas?|orejitas?|dientes?|dedos|uñas|patitas)"
_COLLAR = r"collar|spin|boot|bota|cuello|salida redonda"
_BLADES = r"(?:aletas?|vanes?|alabes|guias|paletas|deflectores|venas)"
_ARE = r"(?: (?:se |me |le |nos )*(?:quedaron|quedo|van|va|estan|fueron|salieron|puse|pusimos|meti|metimos|entraron))?"
_WOOL = r"(?:fibra|lana|insulation|insulacion|aislante|aislamiento|pelusa)"
_PUT_ON = r"(?:poner|meter|echar|pegar|colocar|correr)"
_CUT = r"(?:recort|cort|rebaj|rasur|emparej|trime|quit)"

SITE: tuple[Turn, ...] = (
    Turn(r"\bde mas\b", r"\b(?:quedo|quedaron|va|esta|fue|deje|dejamos) con (?:la |el |su )?(?:fibra|lana|aislante|aislamiento|insulacion|insulation) (?:de mas|que sobra)\b", (("trimmed", False),)),
    # "encintado, nomás con la mano": laid, not rubbed
    Turn(r"\b(?:nomas|solo|nada mas|solamente|apenas|pasadita|pasada)\b", rf"{_CLAUSE}(?:(?:la |lo |le )?(?:di|pase) )?(?:nomas|solo|nada mas|solamente|apenas|una pasadit?a)(?: (?:la|lo|le|bien|asi|medio))* (?:con (?:la |el |los |pura )?(?:mano|palma|dedos?|guante)|puest[oa]|encimad[oa]|sobrepuest[oa]|pegad[oa]|(?:la )?(?:pegue|encime|sobrepuse))(?: nomas| y ya)*{_OVER}", (("rubbed_down", False), ("taped", True)), beside=_BESIDE_TAPE, unless=r"\b(?:no|talle|frote|planche)\b"),
    Turn(r"\bsin \w+", rf"{_CLAUSE}sin (?:apretar|presionar|asentar|pulir|repasar|aplanar|alisar|planchar|espatulear)(?:l[oa])?(?: bien)?{_OVER}", (("rubbed_down", False), ("taped", True)), beside=_BESIDE_TAPE, unless=r"\b(?:lenguetas?|tabs|pestañas|tornillos?|pijas?|panel)\b"),
    # "las aletas quedaron al revés": as good as none
    Turn(r"\bal (?:reves|contrario)\b|\bvoltead", rf"\b{_BLADES}{_ARE} (?:todas |bien |puestas )?(?:al (?:reves|contrario)|volteadas)\b", (("vanes", False),), unless=r"\b(?:no|estaban|venian|volvi|ya las)\b"),
    # "las grapas quedaron al revés", "grapas hacia adentro"
    Turn(r"\bal (?:reves|contrario)\b", rf"\b(?:grapas?|staples?|patas?|patitas?)(?: de las grapas)?{_ARE} (?:todas |dobladas |volteadas )?al (?:reves|contrario)\b", (("staple_clinch", "inward"), ("stapled", True)), unless=r"\b(?:no|ni|ningun\w*|volvi|ya las)\b"),
    Turn(r"\ba?dentro\b", r"\b(?:grapas?|staples?|dientes de las? grapas?)(?: (?:todas|dobladas|volteadas|miran|quedaron|van|me quedaron|apuntan))* (?:hacia|para|pa) ?a?dentro\b", (("staple_clinch", "inward"),), unless=r"\b(?:no|ni|ningun\w*|nada|sin)\b"),
    # "pa'dentro se doblaron las grapas"
    *(
        Turn(rf"\ba?{way}\b", rf"\b(?:hacia|para|pa'? ?)[ ']?a?{way},? (?:(?:se|me|nos|le|todas) )*(?:doblaron|voltearon|cerraron|clavaron|quedaron|abrieron|van|salieron|miran|estan) (?:todas )?(?:las )?(?:(?:patas|patitas|puntas)(?: de las grapas)?|grapas)\b", (("staple_clinch", value), ("stapled", True)), unless=r"\b(?:no|ni|ningun\w*|nada|sin)\b")
        for way, value in (("dentro", "inward"), ("fuera", "outward"))
    ),
    Turn(r"\ba?dentro\b", r"\bse (?:me |nos |le )?(?:doblaron|voltearon|cerraron|clavaron) (?:hacia|para|pa) ?a?dentro las (?:patas|patitas|puntas)\b", (("staple_clinch", "inward"),), unless=r"\bno\b"),
    # tape of no listing
    Turn(r"\bsin (?:marca|sello|letras?|numeros?|etiqueta|nombre|listar|listado|ul)\b", r"\b(?:cinta|tape|teip|foil|aluminio)(?: (?:de aluminio|foil|corriente|plateada|que \w+))* sin (?:marca|sello|letras?|numeros?|etiqueta|nombre|listar|listado|ul)\b", (("closure", "other_tape"), ("taped", True)), unless=r"\b(?:no (?:use|puse|lleva)|tire|regrese|devolvi|board|panel)\b"),
    Turn(r"\bsin \w+", r"\b(?:cinta|tape|teip)(?: (?!con\b|trae\b|no\b|y\b|ni\b|mastique\b|frot|tall|planch)\w+){1,6}? sin (?:el |la |los |las )?(?:181(?:-?a)?(?:-?[ph])?|marca|sello|letras?|numeros?|etiqueta|impresion)\b(?: (?:ni|o|y) (?:nada|sello|marca|letras?|numeros?|181\S*))?(?: (?:impres|escrit|marcad)[oa]s?)?|\b(?:cinta|tape|teip) sin (?:el |la )?181(?:-?a)?(?:-?[ph])?\b(?: ni nada)?(?: (?:impres|escrit|marcad)[oa]s?)?", (("closure", "other_tape"), ("taped", True)), unless=r"\b(?:no (?:use|puse|lleva)|tire|regrese|devolvi|board|panel|masti\w+)\b"),
    # wool left at the cut
    Turn(rf"\b{_WOOL}\b|\bsobrante\b|\bexceso\b", rf"\b(?:(?:el |la )?{_WOOL}|sobrante|exceso)(?: (?:esta|quedo|va|se quedo|la deje|lo deje))? sin {_CUT}ar(?:l[oa])?\b", (("trimmed", False),), unless=r"\bno\b"),
    Turn(rf"\b{_WOOL}\b|\brebaba", rf"\b(?:le |me |se le )?(?:sobra|sobro|sobraba|quedo|quedaron|cuelga|cuelgan|quedo colgando|asoma)n? (?:colgando |con |algo de |tantita |mucha |la |su |pelos de |cachitos de )*(?:{_WOOL}|rebabas?)(?: (?:colgando|de fuera|salida|suelta|asomada))?{_OVER}", (("trimmed", False),), unless=r"\b(?:no|sin|nada|quite|recorte|corte|limpie)\b"),
    Turn(r"\bpelud|\bpelos de\b", r"\b(?:qued\w+|esta|salio) (?:muy |tod[oa] |medi[oa] |con )*(?:pelud[oa]s?|pelos de (?:fibra|lana))\b", (("trimmed", False),), beside=r"reduc|transic", unless=r"\bno\b"),
    Turn(r"\b(?:trim|recorte)\b", r"\b(?:falt(?:a|o|aba)|pendiente|queda|me falta) (?:el|su|hacerle el|darle su) (?:trim|recorte)\b", (("trimmed", False),), unless=r"\bno\b"),
    Turn(r"\bno (?:l[oa] |le )?trim", r"\bno (?:l[oa] |le )?trim(?:e|ee|eamos)\b", (("trimmed", False),)),
    # the tabs of a collar
    Turn(rf"\b{_TABS}\b", rf"\bse (?:me|nos) (?:{SLIPPED}) (?:doblar|voltear|bajar|aplastar|apretar|asentar)(?:l[oa]s|le)? (?:las |los |unas |unos )?{_TABS}", (("tabs_bent", False),), beside=_COLLAR, unless=r"\bno se\b"),
    Turn(rf"\b{_TABS}\b", rf"\bno (?:le |les )?(?:baje|bajamos|asente|asentamos|acoste|tumbe|cerre|remache) (?:bien )?(?:las |los |todas las |todos los )?{_TABS}", (("tabs_bent", False),), beside=_COLLAR),
    Turn(rf"\b{_TABS}\b", rf"\b(?:al rato|luego|mañana|ahorita|despues) (?:le |les |se )?(?:doblo|volteo|bajo|aplasto|aprieto|asiento) (?:las |los )?{_TABS}", (("tabs_bent", False),), beside=_COLLAR),
    Turn(r"\bdobl", r"\b(?:doble|doblamos|voltee|baje|aplaste) (?:nomas|solo|nada mas|solamente) (?:dos|tres|cuatro|cinco|seis|unas|la mitad|algunas|\d)\b", (("tabs_bent", False),), beside=_COLLAR, unless=r"\bno\b"),
    # "se le olvidó al ayudante ponerle el tape", "la cinta se nos olvidó ponerla"
    *(
        Turn(r"\bse (?:me|nos|les?) ", rf"(?<!\bno )(?:\b{things},? )?\bse (?:me|nos|le|les) (?:{SLIPPED}) {MATE}(?:de )?(?:{verb}(?:l[oa]s?|le)?\b|{_PUT_ON}(?:le|les)? (?:el |la |las |los |su |sus )?{things}\b)", ((name, False),), unless=rf"\bno se (?:me|nos|les?)|\bpero ya\b", asked=True)
        for name, things, verb in (("taped", r"(?:cinta|tape|teip)", r"encintar"), ("stapled", r"(?:grapas?|staples)", r"(?:en)?grapar"), ("vanes", r"(?:aletas|vanes)", r"(?!)"))
    ),
    *(
        Turn(r"\bse (?:me|nos|les?) ", rf"\b{things},? se (?:me|nos|le|les) (?:{SLIPPED}) {MATE}(?:de )?{_PUT_ON}{it}\b", ((name, False),), asked=True)
        for name, things, it in (("taped", r"(?:cinta|tape|teip)", r"(?:se)?l[oa]"), ("stapled", r"(?:grapas|staples)", r"(?:se)?l[oa]s"), ("vanes", r"(?:aletas|vanes)", r"(?:se)?l[oa]s"))
    ),
    # cold, and the warming slipped his mind
    Turn(r"\b(?:calent|entibi|calenton)", rf"\b(?:se (?:me|nos) (?:{SLIPPED}) |sin (?:haberl[oa] )?|no l[oa] |faltó |falto )(?:(?:pre)?calent|entibi|preheate)(?:arl[oae]|ar|ad[oa]|e|amos)\b", (("preheated", False),), beside=r"\b(?:grados|frio|helad|congel|termometro)", unless=r"\bno se (?:me|nos)\b"),
    Turn(r"\bsin \w+", r"\bsin (?:la |el |usar |prender )?(?:secadora?|soplete|heat gun|pistola de calor|calentador)\b", (("preheated", False),), beside=r"\b(?:grados|frio|helad|congel|termometro)"),
    Turn(r"\bcalentada\b|\bcalenton\b", r"(?<!\bno )\b(?:me|nos) (?:l[oa] )?(?:brinque|salte|ahorre|comi|brincamos|saltamos) (?:la|el|su) (?:calentada|calenton|precalentada)\b", (("preheated", False),), beside=r"\b(?:grados|frio|helad|congel|termometro)"),
)
