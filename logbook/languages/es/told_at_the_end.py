"""Spanish that tells a lack at the end of good work, or good work with a word too many: "todo bien encintado menos tallado", "tallado, pendiente", "le pasé bien la espátula".

Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, STOP
from logbook.languages.plainer import Plainer

_ACT = r"(?:tall|frot|planch|restreg|alis|encint|teipe|tape|engrap|grap)"
_THING = r"(?:cinta|teip|tape|grapas|staples|aletas|vanes|venas|guias|direccionales|tallada|frotada|limpieza)"
_TOOL = r"(?:espatula|cuña|paleta|tarjeta|rodillo|squeegee|plancha fria|regla|llana|tallador)"
_FEET = rf"{COUNT} pies?(?: y medi[oa])?"

SPANISH_TOLD_AT_THE_END = (
    # --- "todo bien grapado, todo bien encintado menos tallado", "quedó completo menos encintado"
    Plainer(
        (" menos ",),
        rf"\b(?:{_ACT}ad[oa]s?|complet[oa]|list[oa]|hech[oa]|todo)\b(?:,? (?!no\b|ni\b|nada\b|mas\b|al\b|lo\b)[\w]+){{0,6}}?(?P<x>,? (?:pero |y )?menos )(?P<t>(?P<s>{_ACT})ad[oa]s?){STOP}",
        (("x", ", sin "), ("t", r"\g<s>ar")),
    ),
    # --- "tallado, pendiente", "frotado por hacer": behind other acts with their stops
    Plainer((", pendiente",), rf"(?:^|(?<=[,;.] ))(?:(?:el|la|las) )?(?:{_ACT}ad[oa]|{_THING})(?P<x>, )(?=(?:todavia )?pendientes?{STOP})", (("x", " "),)),
    Plainer((" por hacer", " por poner", " por dar"), rf"(?:^|(?<=[,;.] )|(?<= y ))(?:(?:el|la|las) )?(?:{_ACT}ad[oa]|{_THING})(?P<x>,? (?:(?:esta|queda|quedo|todavia|aun) )*por (?:hacer|poner|dar))(?:se|le)?{STOP}", (("x", " pendiente"),)),
    # --- "el lunes van las aletas": they are not there yet
    Plainer(
        (" van ", " va "),
        rf"(?:^|(?<=[,;.] )|(?<= y ))(?P<x>(?:ya )?(?P<d>(?:(?:hasta )?el (?:lunes|martes|miercoles|jueves|viernes|sabado)|la (?:otra|proxima) semana)(?: que viene| temprano| primero dios)?) (?:ya )?(?:le )?(?P<v>van?) (?P<t>(?:la|las|el|su|sus) {_THING})){STOP}",
        (("x", r"\g<t> \g<v> el lunes"),),
    ),
    # --- "le pasé bien la espátula", "le di bien con la espátula"
    Plainer((" bien ", " parejo ", " fuerte ", " duro "), rf"\b(?:pase|pasamos|di|dimos|repase)(?P<x>(?: (?:muy|bien|parejo|fuerte|duro|toda|rebien|bastante))+)(?= (?:con )?(?:la|el|una|un) {_TOOL}\b)", (("x", ""),)),
    # --- "la limpieza, no"
    Plainer((", no",), rf"(?:^|(?<=[,;.] )|(?<= y )|(?<=pero ))(?P<x>(?:eso de |lo de )?la (?:limpieza|limpiada|trapeada)(?: de la superficie)?, (?:todavia |aun )?no){STOP}", (("x", "no la limpie"),)),
    # --- "igual pero de dos pies": how long the next one is
    Plainer((" igual", " lo mismo"), rf"\bpies?\b[^;]{{0,90}}? (?:igual(?:it[oa])?|lo mismo),? (?:pero|nomas que|solo que) (?:mas (?:cort|larg)[oa],? )?(?:de|mide) {_FEET}(?P<x>){STOP}", (("x", " de largo"),), unless=r"\bde largo *(?:$|[,;.])[^.]*$"),
    # --- "pensé que me iba a faltar cinta pero alcanzó": it did not lack
    Plainer(
        (" faltar", " alcanzar", " ajustar", " faltab", " acabar"),
        r"(?:^|(?<=[,;.] )|(?<= y ))(?P<x>(?:(?:yo|ya) )*(?:pense|pensaba|pensamos|crei|creia|creiamos) que (?:(?:no|me|nos|se|le|les|ya) )*(?:(?:iban?|ibamos) a (?:(?:faltar|alcanzar|ajustar|acabar)(?:me|nos|le|se)?)|faltaban?|faltaria) ?(?:(?:la|las|el) )?(?:cinta|teip|tape|grapas|rollo|masti(?:que|c))?,? (?:(?:y|pero)) (?:(?:si|siempre|al final|me|nos|por suerte|bien|que) )*(?:alcanzo|alcanzaron|ajusto|ajustaron|rindio|hubo|sobro|no falto|no faltaron|si|no))(?= *(?:$|[,;.])| (?:y|el|la) )[,;.]?",
        (("x", "bueno"),),
    ),
    # --- "yo no lo veo grapado"
    Plainer((" veo ", " miro ", " vemos "), rf"(?P<x>no l[oa] (?:veo|miro|vemos)) (?={_ACT}ad[oa]\b)", (("x", "no esta"),)),
    # --- "tallado sin arrugas ni burbujas": one fault and another that there is none of
    Plainer((" ni ",), r"\bsin (?:arrugas|burbujas|bolsas|pliegues|globos)(?P<x>,? ni (?:arrugas|burbujas|bolsas|pliegues|globos)(?: de aire)?)\b", (("x", ""),)),
)
