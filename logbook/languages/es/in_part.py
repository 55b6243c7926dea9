"""Spanish for work that went only so far, told behind it: "la encinté hasta el soporte", "doblé las pestañas, llegué a la mitad", "tallada en su mayoría".

However it is told, it is read as work done as far as he could reach: no such extent is the whole. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_NOT = r"(?<!el )(?<!del )(?<!al )(?<!no )(?<!no la )(?<!no lo )(?<!no le )(?<!ni )(?<!sin )(?<!falta )(?<!haber )(?<!hubiera )\b"
_DONE = r"(?:encint(?:e|amos|ad[oa]s?)|teip(?:ie|ee|eamos|ead[oa]s?)|(?:en)?grap(?:e|amos|ad[oa]s?)|tall(?:e|amos|ad[oa]s?)|frot(?:e|amos|ad[oa]s?)|limpi(?:e|amos|ad[oa]s?|[oa])|sell(?:e|amos|ad[oa]s?))"
_OF = r"(?:la |las |los |el |sus? )?"
_PUT = rf"(?:dobl(?:e|amos) {_OF}(?:pestañas|tabs|lenguetas|aletas)|(?:pestañas|tabs|lenguetas) dobladas|(?:le )?(?:puse|pusimos|meti|metimos) {_OF}(?:cinta|teip|tape|grapas|vanes|alabes|aletas|mastique)|(?:le )?(?:recort|quit|rebaj)(?:e|amos) {_OF}(?:fibra|sobrante|aislante)|fibra recortada)"
_FILL = r"(?: (?:la|el|lo|bien|ya|junta|costura|cinta|con|181a-p|181-p|foil|de aluminio|pieza))*"
_END = r"(?=[.,;!]|$| (?:y|pero|porque|asi|con|entonces)\b)(?!,? (?:y |me |le )*falta)"
_ONLY = r"(?:(?:nomas|solo|solamente|nada mas|unicamente|puro|pura|como|casi|pues|apenas) )*"
_PART = r"(?:abajo|arriba|atras|enfrente|adentro|(?:la |el |lo |por |de |en |los |las )+(?:abajo|arriba|atras|fondo|talon|garganta|esquinas?|orillas?|punta|parte de (?:atras|abajo|arriba|adentro)|lado de (?:atras|abajo|arriba|la pared|la viga)|donde esta la \w+|viga|rincon|espalda)(?: de (?:la|el) \w+)?|donde esta (?:la|el) \w+|un (?:pedazo|pedacito|cacho|cachito|lado|tramo|rincon)|una (?:parte|esquina|orilla|punta|pulgada|costura)|dos o tres|tantito|poquito)"
_STOPS = r"(?:soporte|colgador|hanger|viga|pared|tubo|esquina|columna|muro|rociador|plafon|losa)"

_WHERE = (
    rf"{_ONLY}(?:hasta )?(?:donde|adonde|a donde) (?:mas o menos )?(?:alcance|alcanzamos|llegue|llegamos|pude|pudimos|me dio|se pudo|alcanzo|alcanzaba|llego|dio|entro)(?: (?:la|el) (?:mano|brazo|cinta|rollo|pistola|espatula|escalera))?"
    rf"|{_ONLY}(?:hasta|llegando a) (?:la |el |ese |esa ){_STOPS}|{_ONLY}(?:por|en|a) (?:partes|pedazos|pedacitos|tramos|cachos)|{_ONLY}en (?:algunas|unas|ciertas|varias|unas cuantas) partes"
    rf"|{_ONLY}(?:(?:en|por|de) )?(?:los lados|las partes|las orillas|la parte) (?:faciles|facil|que se (?:ve|ven|puede|alcanza)|de encima|que alcance|que pude)|(?:nomas|solo|nada mas|puro|pura) (?:por |en |de |del |al |a )?(?:el |la |lo )?(?:frente|enfrente|adelante|cara|donde se (?:ve|mira))"
    rf"|{_ONLY}lo (?:mas )?que (?:pude|pudimos|se pudo|alcance|alcanzo|se dejo|se alcanza)|por un solo lado|de un (?:solo )?lado (?:nomas|nada mas)|de un lado si y del otro no"
)
_BUT = (
    rf"(?:menos|excepto|salvo|quitando|aparte de|fuera de|con excepcion de|a excepcion de|sin contar|sin) {_PART}"
    rf"|(?:pero|nomas que|aunque|y) (?:deje|dejamos|me salte|me brinque|no llegue|no alcance|no pude|me falto|nos falto|le falto|me quedo debiendo) (?:a |en )?{_PART}|(?:pero )?(?:por )?(?:atras|abajo|arriba|adentro) (?:ya )?no|me (?:falto|faltaron) (?:una|uno|un lado|dos|tres|poquito|tantito|un pedazo|un cacho)"
)
_DEGREE = (
    r"en su mayoria|en su mayor parte|en gran parte|parcialmente|incomplet[oa]s?|sin (?:acabar|terminar|completar)|(?:nomas |como |casi |un |el |al )*(?:cincuenta|sesenta|setenta|ochenta|noventa|noventa y cinco|[5-9]\d) ?(?:por ?ciento|%)"
    r"|casi (?:tod[oa]s?|complet[oa]s?|enter[oa]s?)(?: (?:la vuelta|el contorno|alrededor|la costura))?|no (?:toda la vuelta|complet[oa]|del todo|enter[oa]|tod[oa])|(?:nomas |solo )?(?:un poco|un poquito|poquito|tantito|un tantito|algo)|un[oa]s si y otr[oa]s no"
)
_SHORT = (
    r"(?:y |pero |hasta que )+(?:ya )?se (?:me |nos )?(?:acabo|termino)(?: (?:la cinta|el teip|el rollo|el tape|las grapas|el mastique))?(?: (?:a la mitad|a medias|en la esquina))?"
    rf"|(?:y |pero )*me (?:hablaron|llamaron|interrumpieron|sacaron|mandaron|quede|cortaron|pararon)(?: (?:a|en|por) (?:la mitad|media|medio camino|medias|(?:la |el ){_STOPS}))"
    rf"|(?:y |pero )*(?:nomas |apenas |solo )*(?:llegue|llegamos|voy|iba|me quede) (?:nomas |apenas |solo |como |ahi )*(?:a|por|en|hasta) (?:la mitad|mitad|media|medio|medias|mas de la mitad|(?:la |el ){_STOPS})(?: \w+)?|a la mitad"
)
_NAMED_SIDE = r"(?:(?:por|en|de|del|a) )?(?:arriba|abajo|atras|(?:el |la )?(?:lado|cara|costado|parte|orilla) de (?:arriba|abajo|atras)|(?:el|la) de (?:arriba|abajo|atras|adelante)|los (?:costados|lados)|las orillas|los de los lados)"
_ONE_SIDE = r"(?:(?:por|en|de|del|a|al) )?(?:(?:el|la) )?(?:(?:lado|cara|costado|parte|orilla) )?(?:del|de la|de el|de) (?:losa|pared|viga|trabe|muro|piso|techo|columna|tubo|tuberia|plafon)"
_REACHED_NOT = r"no (?:(?:me|se|le|nos|la|lo) )*(?:cabia|cupo|cabe|entro|entraba|entra|llego|llega|llegaba|llegue|alcance|alcanzo|alcanzaba|pude|pudo|pudimos|hubo|habia|hay|quiso)(?: (?:la|el|mi|a|como|modo|campo|lugar|espacio|manera|para|de|mano|brazo|pistola|grapadora|engrapadora|poner|ponerle|meter|meterle|meterla|meterlas|llegar|entrar|encintar|encintarla|engrapar|engraparla|cinta|cintas|grapas|bien|ya))*"
_LEFT_BARE = r"(?:(?:l[oa]s?|se|me) )*(?:deje|dejamos|quedaron|quedo|van?|estan?|siguen?|fueron|fue) (?:asi )?(?:pelon\w*|pelad[oa]s?|encuerad[oa]s?|desnud[oa]s?|sin nada(?: encima)?|en blanco|al aire)"
_CUES_REACH = (" no,", " no.", " no;", " no", " pelon", " pelad", " encuerad", " desnud", " sin nada", " en blanco", " al aire"," no cabia", " no me cabia", " no cupo", " no me cupo", " no cabe", " no me cabe", " no entr", " no le entr", " no me entr", " no lleg", " no me lleg", " no le lleg", " no alcan", " no le alcan", " no se pud", " no pud", " no hubo", " no habia", " no hay", " no se alcan", " no se quiso")
_CUES_WHERE = (" donde ", "adonde", " hasta ", " partes", " pedaz", " pedacit", " tramos", " cachos", " lados ", " orillas ", " la parte ", "frente", "adelante", " cara", " se ve", " se mira", " que pude", "que pudimos", "que se pudo", "que alcan", "que se dejo", " solo lado", " un lado ")
_CUES_BUT = ("menos ", "excepto", "salvo", "quitando", "aparte de", "fuera de", "excepcion", "sin contar", " sin ", "deje", "dejamos", "salte", "brinque", "llegue", "alcance", "no pude", "falto", "faltaron", "debiendo", "atras", "abajo", "arriba", "adentro")
_CUES_DEGREE = ("mayor", "gran parte", "parcial", "incomplet", "sin acabar", "sin terminar", "sin completar", "ciento", "%", "casi ", " no tod", " no complet", " no del todo", " no enter", " poco", "poquito", "tantito", " algo", " si y otr")
_CUES_SHORT = ("acabo", "termino", "hablaron", "llamaron", "interrumpieron", "sacaron", "mandaron", "quede", "cortaron", "pararon", "llegue", "llegamos", " voy ", " iba ", "la mitad")
_DONE_SINCE = r"(?:hice|hicimos|segui|encinte|tambien) (?:con )?(?:el resto|lo demas|lo que faltaba|lo otro)|\b(?:arriba|abajo|atras|enfrente|adentro|lados?) si\b|(?:la|lo|las|los) (?:acabe|termine|complete)|acabe (?:el|la) rest|(?:regrese|volvi|regresamos|volvimos)|(?:el|la) rest[oa] (?:tambien|despues|con|lo|la)|ya (?:quedo|esta) (?:toda|todo|completa|completo)|consegui (?:otro|mas)|traje (?:otro|mas)|agarre otro"

_EXTENTS = ((_CUES_WHERE, _WHERE), (_CUES_BUT, _BUT), (_CUES_DEGREE, _DEGREE), (_CUES_SHORT, _SHORT))
_STILL_HAS = (("cinta|teip|tape", "encintada"), ("grapas", "grapada"), ("vanes|alabes|aletas|guias", "le puse los vanes"))

SPANISH_IN_PART = (
    # "los tres lados que alcancé": so many, and those alone
    Plainer((" que alcance", " que pude", " que alcanzaba", " que se dejaron", " que alcanzamos"), r"\b(?:encint\w+|teip\w+|(?:en)?grap\w+|cinta|tape)\b[^.;]{0,16}?(?P<p> (?:(?:en|por) )?(?:l[oa]s )?)(?:un|dos|tres) (?:lados|caras|costados)(?P<x> que (?:(?:si|me|se|yo) )*(?:alcance|pude|alcanzaba|dejaron|alcanzamos))(?= *(?:$|[,;.]| y | pero ))", (("p", " en "), ("x", ""))),
    # "le puse cinta por los costados, arriba no cabía la mano": the side that he did not get at
    *(
        Plainer(
            _CUES_REACH,
            rf"\b(?:{did})\b[^.;]{{0,60}}?[,;.] (?:(?:y|pero|nomas que) )?(?P<s>{side})(?P<x>,? (?:ahi )?(?:ya )?(?:{_REACHED_NOT}|{_LEFT_BARE}{bare})){_END}",
            (*((("s", as_said),) if as_said else ()), ("x", f" sin {thing}")),
            unless=rf"{_DONE_SINCE}|\b(?:pero )?(?:si|ya) (?:l[oae]s? )?(?:puse|pude|alcance|metimos|pusimos)\b|espatula|paleta|squeegee|tallar|frotar",
        )
        for did, thing in ((r"encint\w+|teip\w*|cinta|tape", "cinta"), (r"(?:en)?grap\w+", "grapas"))
        for side, as_said, bare in ((_NAMED_SIDE, "", ""), (_ONE_SIDE, "el otro lado", r"|no(?= *(?:$|[,;.]))"))
    ),
    *(Plainer(cues, rf"{_NOT}(?:{_DONE}|{_PUT}){_FILL}(?P<x>,? (?:{extent})){_END}", (("x", " hasta donde alcancé"),), unless=_DONE_SINCE) for cues, extent in _EXTENTS),
    *(Plainer(cues, rf"{_NOT}(?P<x>(?:parch|tap|remend|repar|cubr)(?:e|i|amos|imos)(?: (?:con|el|la|todo|cinta|mastique|hoyo|rasgon|rotura))*,? (?:{extent}|a medias|mas o menos|la mitad|un lado|(?:dos|tres) lados|(?:nomas |solo |nada mas )?(?:en |por )?las (?:esquinas|orillas|puntas))){_END}", (("x", "no quedó parchada"),), unless=_DONE_SINCE, beside=("rasg", "rot", "hoyo", "agujer", "raj", "cort", "golpe", "aplast", "pich", "ponch", "desgarr", "daña", "pelad", "despeg")) for cues, extent in (*_EXTENTS, (("a medias", "mas o menos", "la mitad", " lado", "esquinas", "orillas", "puntas"), "a medias"))),
    *(Plainer(cues, rf"(?<!no )(?P<x>(?:ya )?(?:tiene|lleva|trae|va con) {_OF}(?:{thing}))(?P<y>,? (?:{extent})){_END}", (("x", done), ("y", " hasta donde alcancé")), unless=_DONE_SINCE) for cues, extent in _EXTENTS for thing, done in _STILL_HAS),
)
