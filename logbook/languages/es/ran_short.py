"""Spanish of what ran out: the reason why there is less of it ("cada tres, porque ya casi no traigo grapas"), the part for which there was none left
("en el ramal se me acabó la cinta"), and what was fetched or was enough after all.

Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, FRAC, STOP
from logbook.languages.plainer import Plainer

_STAPLES = r"(?:grapas|staples)"
_TAPE = r"(?:cinta|teip|tape|foil)"
_FAR = rf"(?:{COUNT}|{FRAC})(?: pulgadas?)?(?: y (?:medi[ao]|un cuarto|tres cuartos))?(?: pulgadas?)?"
_WHY = r"(?:porque|por que|pues|es que|ya que|que|como|y|por lo que)"
_HAD = r"(?:traigo|traemos|traia|traiamos|tengo|tenemos|tenia|teniamos|cargo|cargaba|hay|habia|hubo|queda|quedan|quedaba|quedaban|encontre|alcanzan|alcanzaban|alcanzaron)"
_BACK = r"\b(?:fui|fuimos|baje|bajamos|regrese|volvi|traje|trajeron|trajimos|consegui|conseguimos|prestaron|agarre|compre|saque|pedi|encontre|ya (?:la|lo|las|los|se) |(?:la|lo|las|los) termine)"
_PART = r"(?:ramal|boca|salida|toma|tapa|fondo|cuello|garganta|esquina|talon|orilla|ultim[oa]|costura(?: de \w+)?|junta(?: de \w+)?|lado(?: de \w+)?|parte de \w+)"
_LEFT_SO = r"(?:,? (?:y |pues )?(?:(?:ahi|asi|se|me|lo|la|ya|todo|toda|nomas) )*(?:quedo|deje|dejamos|esta|va|fue)(?: (?:asi|ahi|sin nada|sin cinta|sin grapas|pelon|pelona|pelad[oa]|al aire|pendiente|abiert[oa]))+)"
_FETCHED = r"(?:(?:fui|fuimos|baje|bajamos|corri|me fui) (?:por|a traer|a buscar|al camion por|a la troca por) (?:otr[oa]s?|mas)|(?:me|nos) (?:prestaron|trajeron|dieron|pasaron) (?:otr[oa]s?|mas|un[oa]?s?)|(?:traje|trajimos|consegui|conseguimos|agarre|agarramos|abri|abrimos|compre|saque) (?:otr[oa]s?|mas))(?: (?:rollo|caja|rollito|cajita|bote|cubeta))?(?: (?:del camion|de la troca|de la camioneta|de la traila|del gang box|al camion|a la troca))?"
_FINISHED = r"(?:(?:y|,|ya|le|ahi|luego|despues) ?)+(?:(?:la|lo|las|los|le) )?(?:termine|terminamos|acabe|acabamos|complete|completamos|segui|seguimos|remate)(?: (?:tod[oa]|bien|completa|completo))?"

SPANISH_RAN_SHORT = (
    # --- "se me acabó el rollo de teip": the tape
    Plainer((" rollo", " caja"), rf"\b(?:acabo|termino|agoto|acabe|falto|alcanzo)(?: ya)? (?P<x>(?:(?:el|mi|todo el|este) (?:rollo|rollito)|la caja) de (?:l[oa]s? )?)(?=(?:{_TAPE}|{_STAPLES})(?:,| y| pues| asi que| ya)* *(?:$|\.|(?:(?:y|pues|asi que) )?(?:ahi|asi|hasta ahi|mañana|al rato|luego|el lunes|ya no|no)\b))", (("x", "la "),)),
    # --- "llegaron grapas de tres octavos pero no las usé": none of his
    Plainer((" no las use", " no las puse", " no las quise", " no las usamos", " no las ocupe"), rf"(?P<x>(?:(?:me|nos) )?(?:llegaron|dieron|trajeron|mandaron|habia|traia|compraron) (?:(?:un|una|unas|las|puras|caja|paquete|de) )*{_STAPLES}[^.;,]{{0,40}},? (?:pero |y |aunque |esas )+(?:yo )?no las (?:use|puse|quise|usamos|ocupe)(?: usar| poner)?,?)(?=[ .;]|$)", (("x", ""),)),
    # --- "como el rollo era angosto, de dos": how wide the tape is
    Plainer((" rollo", "rollo"), r"\b(?P<x>(?:como |es que )?(?:el|mi|ese|este) rollo(?: que (?:traia|habia|me dieron|quedaba|tenia))? (?:era|es|estaba|venia|salio) (?:(?:mas |muy )?angost[oa],? )?)(?=de (?:dos|2)(?: pulgadas)?(?: y media)?(?: de ancho)? *(?:$|[,;.]))", (("x", "la cinta es "),), unless=r"\brollo[^.]*\bno (?:l[oa] )?(?:use|puse)"),
    # --- "nos dieron una caja de grapas de tres octavos, y con esas armé la tapa"
    Plainer((" caja de ",), rf"(?P<x>(?:un|una|la|otra|esa|otro) (?:caja|cajita|paquete|bolsa) de )(?=(?:las )?{_STAPLES}\b[^.;]{{0,50}}\b(?:con (?:es[ao]s?|ell[oa]s|puras? de es[ao]s)|es[ao]s?) )", (("x", ""),), unless=r"\bno (?:l[oa]s )?(?:use|usamos|puse|pusimos|quise)"),
    # --- "cada tres porque ya casi no traigo staples": why they are so far apart, and they are there
    Plainer(
        (" no ",),
        rf"\b(?:en)?(?:grap|staple)\w*(?: (?!no\b|sin\b|ni\b)\w+){{0,4}}? (?:(?:a )?cada|a|de a) {_FAR}(?P<x>,? (?:{_WHY} )+(?:(?:ya|casi|me|nos|le|se|apenas) )*no (?:(?:me|nos|le) )?{_HAD}(?: (?:mas|muchas|tantas|suficientes|casi|ya|de|las))* {_STAPLES}(?: (?:en (?:la|el) \w+|conmigo|en la bolsa|para (?:tanto|todo|mas)))?)(?= *(?:$|[,;.]| y | luego | pero | con ))",
        (("x", ""),),
    ),
    # --- "en el ramal se me acabó la cinta y quedó sin nada": of that part, unless more was fetched
    *(
        Plainer(
            (" acabo ", " acabaron ", " termino ", " terminaron ", " alcanzo ", " alcanzaron "),
            rf"\b(?:en|para|pa|al llegar a) (?P<p>(?:el|la) {_PART})(?P<y>,? (?:(?:ya|se|me|nos|no|de plano|todo|toda) )*(?:(?:acabo|termino|acabaron|terminaron)|(?<=no )(?:alcanzo|alcanzaron)|(?<=no me )(?:alcanzo|alcanzaron)|(?<=no nos )(?:alcanzo|alcanzaron)) (?:la |el |las )?(?:{thing}){_LEFT_SO}?)(?= *(?:$|[,;.]| y | pero | porque ))",
            (("y", f" no lleva {plain}"),),
            unless=_BACK,
        )
        for thing, plain in ((_TAPE, "cinta"), (_STAPLES, "grapas"))
    ),
    # --- "se acabó la 181A-P y la cerré con duct tape": which one was not used
    Plainer((" acabo ", " termino ", " agoto ", "acabo ", "termino "), rf"(?P<x>(?:como |ya |porque )*se (?:me |nos )?(?:acabo|termino|agoto) (?:la |el )?(?:{_TAPE} )?181a-[phm],? (?:(?:y|pero|asi que|entonces),? )*)(?=[^.;]{{0,60}}\b(?:con|use|usamos|puse|pusimos|lleva|va) (?:la |el |una? |pur[oa] )?(?:{_TAPE} )?(?:duct|masking|gris|de tela|platead[oa]|de empaque|de ducto|de electricista|de pintor|de lona|canela))", (("x", ""),)),
    # --- mastic of which there was none left: not closed
    Plainer(
        ("mastique",),
        r"(?P<x>(?:(?:,? ?pero|,? ?y) |, )?(?:(?:ya|me|nos|le) )*no (?:(?:me|nos|le) )?(?:alcanzo|hubo|habia|llego|quedaba|quedo) (?:(?:el|mas|suficiente) )?mastique(?: para (?:sellar\w*|ponerle|echarle|cerrar\w*|el collar\w*|las? juntas?))?|(?:ya )?se (?:me |nos )?(?:acabo|termino) el mastique(?: (?:antes de|y ya no (?:alcance|pude)(?: a)?) (?:sellar\w*|ponerle|echarle))?|me quede sin mastique|(?:el )?mastique (?:ya )?no (?:me |nos )?alcanzo)(?= *(?:$|[.]))",
        (("x", ", no está sellado"),),
        unless=rf"{_BACK}|\b(?:cinta|teip|tape|encint|teip)|con mastique|sellad",
    ),
    # --- "se me acabó la cinta a la mitad, fui por otro rollo y la terminé": done in the end
    *(
        Plainer(
            (" acabo ", " acabaron ", " termino ", " terminaron "),
            rf"(?P<x>(?:(?:ya|se|me|nos) )*se (?:me |nos )?(?:acabo|acabaron|termino|terminaron) (?:la |el |las )?(?:{thing})(?: (?:a la mitad|a medias|a medio camino|en la esquina|en el ultimo lado|casi al final|ya casi al final|antes de terminar))?(?:,| y| pero| entonces| asi que)+ {_FETCHED},? {_FINISHED}){STOP}",
            (("x", done),),
        )
        for thing, done in ((_TAPE, "le puse la cinta"), (_STAPLES, "le puse las grapas"), ("mastique", "le puse el mastique"))
    ),
    # --- "pensé que no iba a alcanzar la cinta pero sí alcanzó"
    Plainer(
        (" alcanzo", " alcanzaron"),
        rf"(?P<x>(?:pense|crei|pensaba|creia|pensamos|creimos|se me hacia|dije) (?:que )?(?:(?:ya|casi|se|me|nos) )*no (?:(?:me|nos|le|se) )*(?:iba a alcanzar|iban a alcanzar|alcanzaba|alcanzaban|alcanzaria)(?:me|nos)? (?:la |el |las )?(?P<t>{_TAPE}|{_STAPLES}|mastique),? (?:pero |y |al final |ya )*si (?:(?:me|nos) )?(?:alcanzo|alcanzaron)(?: (?:bien|justit[oa]|just[oa]|para todo))?)(?= *(?:$|[,;.]| y ))",
        (("x", r"con \g<t>"),),
    ),
)
