"""Spanish that tells how a thing is before it names it, or what is told of the next without a stop: "seis pulgadas de largo tienen las tiras cruzadas",
"el izquierdo entra cuatro en doce los demás derechos", "144 recta cortada a medida".

Put in the order, or parted, as the other patterns know it. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, FRAC, KIND, MARK
from logbook.languages.plainer import Plainer

_FAR = rf"(?:{COUNT}|{FRAC})(?: y (?:medi[ao]|un cuarto|tres cuartos))?(?: pulgadas?)?"
_ONE = rf"(?:{KIND} )?(?:numero )?{MARK}"
_STRIPS = r"(?:(?:las|los) )?(?:tiras cruzadas|tabs cruzados|cross tabs|tabs)"
_MOVES = r"(?:entra|sale|baja|sube|cierra|abre|se mete|se abre)"
_OTHERS = r"(?:l[oa]s (?:demas|otr[oa]s(?: tres| dos)?)|(?:el|la) otr[oa](?: lado)?|lo demas|(?:el |la )?(?:lado )?(?:izquierd[oa]|derech[oa])|(?:el |la )?(?:de )?(?:arriba|abajo))"
_LEVEL = r"(?:(?:va|van|queda|quedan|quedo|es|son|esta|estan|todos?) )*(?:derech[oa]s?|rect[oa]s?|plan[oa]s?|parej[oa]s?|a nivel|niveladas?|nivelados?)"
_HAS = r"(?:(?:ya|no|si|todavia|tambien|nomas) )*(?:tiene|lleva|trae|va|quedo|esta)"

SPANISH_FRONTED = (
    # --- "seis pulgadas de largo tienen las tiras cruzadas de la recta 71"
    Plainer((" tiras ", " tabs"), rf"(?P<x>(?P<n>{_FAR})(?: de largo)? (?:tienen|miden|traen|son)(?: de largo)? (?P<t>{_STRIPS}))(?![\w'])", (("x", r"\g<t> de \g<n> de largo"),)),
    # --- "los tabs cruzados del codo 73 los corté de cinco pulgadas"
    *(
        Plainer((" corte ", " hice ", " deje ", " saque ", " cortamos ", " hicimos ", " quedaron "), rf"(?P<x>{_STRIPS}{whose} (?:(?:las|los) (?:corte|cortamos|hice|hicimos|deje|saque)|(?:me )?quedaron) (?:como |nomas )?(?:de|a) (?P<n>{_FAR}))(?! (?:de largo|una de|entre|de separacion))(?= *(?:$|[,;.]| (?:y|cada|porque|un[oa])\b))", (("x", means),), beside=("tiras ", "tabs"))
        for whose, means in ((rf" (?:del?|de la|en el|en la) (?P<q>{_ONE})", r"\g<q> lleva tiras cruzadas de \g<n> de largo"), ("", r"lleva tiras cruzadas de \g<n> de largo"))
    ),
    # --- "con cross tabs, pero los hice de cinco pulgadas, uno cada doce": how long they are
    Plainer((" hice ", " corte ", " deje ", " saque ", " cortamos ", " hicimos "), rf"{_STRIPS}\b[^.;]{{0,24}}?(?P<x>,? (?:(?:pero|y|nomas que|solo que),? )*l[oa]s (?:corte|cortamos|hice|hicimos|deje|saque) (?:como |nomas |solo )?(?:de|a) (?P<n>{_FAR})(?: de largo)?)(?! (?:de largo|una de|entre|de separacion|de distancia))(?= *(?:$|[,;.]| (?:y|cada|porque|para|pa|un[oa])\b))", (("x", r" de \g<n> de largo"),), beside=("tiras ", "tabs")),
    # --- "la pestaña no me dejaba doblar": it is there, and in the way
    Plainer((" dejaba", " dejo ", " permitia"), r"\b(?:pestaña|solapa|flap|ceja)(?P<x> no (?:(?:me|nos|las|los|se) )*(?:dejaba|dejo|permitia|dejaban|deja) (?:doblar|abrir|voltear|meter|clavar|grapar|engrapar|poner)(?:l[oa]s?)?(?: bien)?)(?= *(?:$|[,;.]| y ))", (("x", " estorbaba"),)),
    # --- "me puse a medir desde la punta macho", "todas las medidas salieron del macho"
    *(
        Plainer((f" {verb}r",), rf"(?P<x>\b(?:me puse|nos pusimos|empece|empezamos|comence|comenzamos|arranque|arrancamos|tuve que|tuvimos que|me toco|termine|acabe)(?: a| por)? {verb}r(?:l[oa])?)(?= (?:todo )?(?:desde|por|de|del|a partir)\b)", (("x", did),), unless=r"\b(?:no|ni) (?:me puse|empece)")
        for verb, did in (("medi", "medí"), ("traza", "tracé"), ("marca", "marqué"))
    ),
    Plainer((" por ",), r"\b(?:medi|medimos|medir(?:l[oa])?|marque|marcamos|marcar(?:l[oa])?) (?P<x>por)(?= (?:el |la )?(?:lado |punta |extremo |parte )?(?:del? )?(?:macho|hembra)\b)", (("x", "desde"),)),
    Plainer(("midiendo ", "trazando ", "marcando ", "empezando "), r"(?P<x>\b(?:l[oa] )?(?:saque|hice|arme|corte|sacamos|hicimos|armamos) (?:midiendo|trazando|marcando|empezando)(?:l[oa])? (?:desde el|desde la|desde|por el|por la|por|del|de la|de))(?= (?:lado |punta |extremo )?(?:del? )?macho\b)", (("x", "tracé desde el"),)),
    Plainer((" sacar", " hacer", " armar"), r"(?P<x>\b(?:me toco|nos toco|tuve que|tuvimos que|me puse a|hubo que|me vi obligado a) (?:sacar|hacer|armar)(?:l[oa])? (?:empezando )?(?:desde el|desde la|desde|por el|por la|por|del|de la|de))(?= (?:lado |punta |extremo )?(?:del? )?macho\b)", (("x", "tracé desde el"),)),
    Plainer(("medidas ",), r"(?P<x>(?:todas )?(?:las |mis )?medidas (?:(?:me|todas|las) )*(?:salieron|vienen|son|fueron|salen|saque|sacamos|tome|tomamos|agarre) )(?=(?:de|del|desde) (?:la |el )?(?:punta |lado |extremo )?(?:macho|hembra)\b)", (("x", "medí "),)),
    # --- "tiras cruzadas: largo siete, separación doce"
    Plainer((" largo ",), rf"{_STRIPS}(?P<x>[:,]? (?:de )?largo (?:de )?){_FAR}(?P<y>,? (?:y )?(?:de )?(?:separacion|distancia|espaciado) (?:de )?)(?={_FAR})", (("x", " de "), ("y", " de largo a cada ")), beside=("tiras ", "tabs")),
    Plainer((" miden ",), rf"tiras cruzadas[^.;]{{0,80}}? (?:una|uno) de (?:la )?otr[oa](?P<x>,? (?:y )?miden )(?={_FAR} de largo)", (("x", ", las tiras cruzadas de "),)),
    # --- "entra cuatro en doce los demás derechos": over what length, and then the sides that stay
    Plainer((" demas ", " otro", " otra", " izquierd", " derech", " arriba", " abajo"), rf"{_MOVES} {_FAR} en {_FAR}(?P<x> )(?={_OTHERS} {_LEVEL}(?![\w']))", (("x", ", "),)),
    # --- "presión de media pulgada tabla 800": of the air, and no board is so thick
    Plainer(("presion",), rf"presion (?:de |estatica de |a )?{_FAR}(?: de agua)?(?P<x> )(?=(?:tabla|board|tablero|lamina|panel) (?:de (?:la )?|tipo )?(?:475|800|1400)(?!\d))", (("x", ", "),)),
    # --- why others were not used: "no había engrapadora de las que abren hacia afuera así que…"
    Plainer(("engrapadora",), r"(?P<x>(?:como |porque )?(?:ya )?no (?:habia|hay|hubo|tenia|traia|encontre|llego|tuve) (?:la |el |una? |otra )?engrapadora(?: buena| correcta)?(?: (?:de |para )?l[oa]s? que \w+(?: (?:las patas|las grapas))?(?: (?:hacia|para|pa) \w+)?)?,? (?:asi que|y|por eso|entonces|pues) )", (("x", ""),)),
    # --- "cero aletas tiene el noventa 112"
    Plainer((" el noventa ", " el 90 "), rf"(?:tiene|lleva|trae|quedo|va|puse|quedaron) (?P<x>el (?:noventa|90) )(?=(?:numero )?{MARK} *(?:$|[,;.]))", (("x", "el codo de noventa "),)),
    # --- "144 recta cortada a medida": its number ahead
    Plainer(tuple(str(n) for n in range(10)), rf"(?:^|(?<=[.;] ))(?P<x>)(?=(?!(?:90|45) )\d{{2,3}} {KIND} (?!de (?:\d|{COUNT} por)|\d))", (("x", "la "),), beside=("recta ", "recto ", "codo ", "tapa ", "transicion ", "reduccion ", "tramo ", "te ", "derivacion ", "plenum ", "offset ")),
    # --- "la 145 lleva cinta gris y la 146 la 181A-P": each its own
    Plainer((" y la ", " y el "), rf"(?:la|el) {MARK} (?:lleva|tiene|trae) (?:cinta|tape|teip|foil|duct|masking)\b[^.;,]{{0,40}}?(?P<x> y )(?:la|el) {MARK}(?P<y> )(?=(?:la |con )?(?:181|cinta|tape|teip|foil|duct))", (("x", ". "), ("y", " lleva "))),
    # --- "la recta no tiene grapa ni cinta el codo ya tiene": the one and the other by their kinds
    Plainer((" el ", " la "), rf"(?:el|la) {KIND} {_HAS} (?:ni )?(?:grapas?|cinta|tape|teip|aletas|vanes|con|sin|engrapad|encintad|bien)[^.;,]{{0,50}}?(?P<x> )(?=(?:el|la) {KIND} {_HAS}\b)", (("x", ". "),)),
)
