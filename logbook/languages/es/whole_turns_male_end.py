"""Spanish turns of the male end of a transition and the glass in it: "le recorté el macho", "dejé una pulgada de fibra en el macho". Without accents. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.turns_of_words import Turn

_MALE = r"(?:el |la |su |del |al )?(?:lado |extremo |punta |parte )*(?:del? )?macho\b"
_GLASS = r"(?:la |toda la |tod[oa] |su |el |lo de )*(?:fibra|lana|aislante|aislamiento|insulation)(?: (?:de mas|extra|sobrante|que sobraba|que sobra))?"
_CUT = r"(?:recort|rebaj|trim|trime|emparej)(?:e|amos|o|aron)"
_CLEARED = r"(?:recort|quit|rebaj|saqu|limpi|trim|trime|rasur|raspe)(?:e|amos|o|aron)"
_SO_MUCH = r"(?:(?:como|casi|unas?|todavia|ahi|asi|un poco de|tantita|poquita|pulgada|pulgadas|media|dos|tres|un pedazo de|cuarto|de) )*"
_NOT = r"\b(?:no|ni|nunca|sin|tampoco|falt\w+|hay que|voy a|vamos a)\b"

_FROM = r"(?:desde|a partir del?|partiendo del?|empezando (?:por|desde|en))"
_THERE = r"(?: el| la)? (?:lado |extremo |punta |parte )?(?:del? )?"
_LAID_OUT = r"(?:trazo|trace|trazamos|marque|marco|marcamos|medi|midio|medimos|saque las lineas|tire las lineas|raye)"

OF_THE_MALE_END: tuple[Turn, ...] = (
    # "del lado macho se trazó la reducción 80", "el codo 82 lo marqué a partir del macho"
    *(
        Turn(rf"\b{end}\b", said, (("made_from", value),), unless=r"\b(?:no|ni|nunca|en (?:vez|lugar) de|sino)\b")
        for end, value in (("macho", "male"), ("hembra", "female"))
        for said in (
            rf"\b(?:{_FROM}{_THERE}|del (?:lado|extremo) (?:del? )?|de la punta (?:del? )?){end},? (?:se |l[oa] |me |yo )*{_LAID_OUT}\b(?! (?:[\w/]+ ){{1,3}}?pulgadas?)",
            rf"\b(?:{_LAID_OUT}|hech[oa]|trazad[oa]|marcad[oa]|medid[oa])(?: (?:el |la )?[a-z]+ (?:numero )?[\w-]*\d[\w-]*)? (?:desde|a partir del?|partiendo del?|empezando (?:por|desde|en)){_THERE}{end}\b",
        )
    ),
    Turn(r"\bmacho\b", rf"\b(?:no|ni|nunca) (?:(?:le|les|se|lo|la|me) )*(?:{_CUT}|{_CLEARED} {_GLASS} (?:al?|del?|en) {_MALE})(?: bien)?(?: {_MALE})?(?! (?:a|de) (?:\d|una?|dos|la medida|medida))", (("trimmed", False),), beside=r"\bmacho\b"),
    Turn(r"\bmacho\b", rf"\b(?:(?:le|se|lo|la|ya|si) )*{_CUT}(?: (?:bien|todo|tambien|muy bien))* {_MALE}(?! (?:a|de) (?:\d|una?|dos|la medida|medida))", (("trimmed", True),), unless=_NOT),
    Turn(r"\bmacho\b", rf"\b(?:(?:le|se|lo|la|ya|si) )*{_CLEARED} (?:bien )?{_GLASS} (?:al?|del?|en) {_MALE}", (("trimmed", True),), unless=_NOT),
    Turn(r"\bmacho\b", rf"\bmacho (?:(?:va|quedo|esta|bien|ya|todo) )*(?:limpio|libre|pelado|recortado|sin) (?:de )?{_GLASS}", (("trimmed", True),), unless=r"\b(?:no|ni|nunca|tampoco|falt\w+)\b"),
    Turn(r"\bmacho\b", rf"\b(?P<a>(?:deje|dejamos|quedo|quedaron|quedaba|sobra|sobro|tiene|trae|hay|esta|anda) {_SO_MUCH}{_GLASS})(?: (?:colgando|asomada|salida|ahi|todavia))* (?:en|del?|por|dentro de|adentro de) {_MALE}", (("trimmed", False),), unless=_NOT),
    Turn(r"\bmacho\b", rf"\bmacho (?:(?:le|se|me|todavia|aun|lo|la) )*(?:deje|quedo|trae|tiene|sobra|lleva) (?:con )?{_SO_MUCH}(?:fibra|lana|aislante|aislamiento|insulation)\b", (("trimmed", False),), unless=r"\b(?:no|ni|nunca|sin)\b"),
    # "fibra sobrante: sin quitar"
    Turn(r"\bsin (?:recort|quit|cort|rebaj)", r"\b(?:(?:fibra|lana|aislante|aislamiento|material) (?:sobrante|de mas|extra|de sobra)|(?:sobrante|exceso|excedente)(?: de (?:la |el )?(?:fibra|lana|aislante|aislamiento))?)(?: (?:en|de|por) (?:el |la |las )?(?:corte|cortes|orilla|orillas|boca|punta|canto)|del corte)?[,:]? (?:(?:todavia|aun|va|quedo|esta|sigue|se) )*sin (?:recort|quit|cort|rebaj|limpi)ar\b", (("trimmed", False),)),
    Turn(r"\b(?:sobr|qued)\w+ ", rf"\b(?P<a>(?:me |le |nos )*(?:sobro|sobra|quedo) {_SO_MUCH}{_GLASS}) (?:en|por) (?:la |el |una )(?:punta|boca|extremo|orilla|corte)\b", (("trimmed", False),), unless=_NOT),
)
