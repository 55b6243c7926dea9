"""Spanish in which the usual words stand askew: the worst of several told by one ("uno quedó a nueve"), what it was before and is by now ("lo había
grapado a cuatro … lo volví a grapar a dos"), the plain words for which are read instead. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, FRAC, KIND, MARK, STOP
from logbook.languages.plainer import Plainer

_ONE = rf"(?:{KIND} |t |codo |end cap |manga |sleeve |bajada )?(?:numero )?{MARK}"
_FAR = rf"(?:{COUNT}|{FRAC})(?: pulgadas?)?(?: y (?:medi[ao]|un cuarto|tres cuartos))?(?: pulgadas?)?"
_APART = rf"(?:(?:a|cada|de a|a cada) {_FAR})"
_TAPE = r"(?:cinta|foil|tape|teip)"
_STRAIGHT = r"(?:rect[oa]|tramo|ducto)"
_TABS = r"(?:pestañas|lenguetas|tabs)"
_STAND = r"(?:(?:todavia|aun|me|se) )*(?:siguen|quedaron|estan|andan|van|deje) (?:todas |todos )?(?:parad[oa]s|derech[oa]s|sin doblar|ties[oa]s|levantad[oa]s)"
_HOLDERS = r"(?:hangers?|colgantes?|colgadores?|soportes?|trapecios?|flejes?|straps?|tirantes?)"
_TO_IN = r"(?:(?:para|hacia|pa|por) )?a?dentro"
_TO_OUT = r"(?:(?:para|hacia|pa|por) )?a?fuera"
_FEET = (("cinco", "5"), ("seis", "6"), ("siete", "7"), ("ocho", "8"), ("nueve", "9"), ("diez", "10"), ("once", "11"), ("doce", "12"))


_BUT_ONE = r"(?:,| y| pero| nomas que| menos| excepto)+ (?:hay )?(?:un[oa]|dos)(?: de (?:ell[oa]s|l[oa]s \w+))?,? (?:(?:me|se|que|nos|lo|la|si) )*(?:quedo|quedaron|fue|fueron|va|van|esta|estan|anda|salio|salieron|puse|deje|tuve que poner) (?:a|hasta|como a)"


def _the_widest():
    """ "a ocho pies, pero uno quedó a nueve": the widest is the one that is told; one that is nearer than the others changes nothing."""
    cues = (" uno ", " una ", " dos ")
    for at, one in enumerate(_FEET):
        told = rf"\b{_HOLDERS}\b[^.;]{{0,60}}?\b(?P<n>{'|'.join(one)})(?= pies)[^.;]{{0,40}}?(?P<x>{_BUT_ONE})"
        wider = "|".join("|".join(other) for other in _FEET[at + 1 :])
        nearer = "|".join("|".join(other) for other in _FEET[: at + 1])
        if wider:
            yield Plainer(cues, rf"{told} (?P<w>{wider})\b(?! pulg)(?P<y>(?: pies)?)", (("n", r"\g<w>"), ("x", ""), ("w", ""), ("y", ",")))
        yield Plainer(cues, rf"{told}(?P<y> (?:{nearer})\b(?! pulg)(?: pies)?)", (("x", ""), ("y", ",")))


SPANISH_TOLD_ASKEW = (
    *_the_widest(),
    # --- "le falta la tapa del fondo al plenum 230": of the plenum, and no cap by itself
    *(
        Plainer(
            (" falta ", "falta "),
            rf"(?:^|(?<=[,;.:] )|(?<= y ))(?:(?:ya|nomas|todavia|aun) )*(?P<x>(?:le|me) falta (?:(?:la|el|una?|su|ponerle|poner|hacerle) )+(?:tapa|tapon|fondo|end cap|base|cara)(?: (?:(?:del? )?(?:fondo|arriba|abajo|atras|adelante|enfrente|la punta)|ciega|final))? (?:{of})) {_ONE}(?P<y>)(?= *(?:$|[,;.]| y\b| pero\b))",
            (("x", to), ("y", " le falta una cara")),
        )
        for of, to in (("al|del", "al"), ("a la|de la", "a la"))
    ),
    # --- "le faltó trapo": nobody wiped it
    Plainer((" falto ", " faltaron "), r"(?<!no )(?P<x>le falto (?:(?:pasarle|darle|el|un|una|su|mas) )*(?:trapo|trapito|trapazo|limpiada|limpiadita|limpieza|franela|estopa))(?!,? (?:y |pero |ya |luego |despues )*se l[oa] (?:pase|pasamos|di|hice))(?= *(?:$|[,;:.]| y | pero | antes))", (("x", "no le pase trapo"),)),
    # --- tabs of which some stand where others were bent: not bent
    Plainer(
        (" parad", " derech", " sin doblar", " ties", " levantad"),
        rf"(?P<x>(?:(?:le|me) )?(?:doble|doblamos|voltee|aprete) (?:(?:bien|nomas|solo|ya) )*(?:las|los) (?:{_TABS} )?(?:de \w+)(?: del collar)?(?:,|;|\.| y| pero)+ (?:las|los) (?:{_TABS} )?(?:otr[oa]s|demas|de (?:arriba|abajo|atras|adentro|afuera|enfrente|los lados|un lado|la izquierda|la derecha))(?:,? (?:un[oa]|dos|tres|cuatro|cinco|seis|\d))?,? {_STAND})(?= *(?:$|[,;.]| y\b| pero\b| porque\b))",
        (("x", "no le doble los tabs"),),
        beside=("pestañ", "lenguet", "tabs"),
    ),
    # --- "lo había engrapado a cuatro; le saqué todo y lo volví a engrapar a dos": the second stands
    Plainer(
        (" volvi a ", " volvimos a ", " de nuevo", " otra vez"),
        rf"(?P<x>\b(?:l[oa] |le )?(?:habia|habiamos|tenia|traia) (?:(?:en)?grapado|(?:en)?grapada|puesto (?:las )?grapas) {_APART}(?: pies)?)[,;.]?(?:[^.]{{0,60}}?)\b(?:(?:volvi|volvimos) a (?:en)?grapar(?:l[oa])?|l[oa] (?:en)?grape (?:de nuevo|otra vez)) {_APART}",
        (("x", ""),),
    ),
    Plainer((" volvi a ", " volvimos a ", " de nuevo", " otra vez"), r"(?P<x>le (?:saque|sacamos|quite|quitamos) (?:todo|todas|todas las grapas|las grapas|la grapa)(?:,| y)+) (?=(?:l[oa] )?(?:(?:volvi|volvimos) a (?:en)?grapar|(?:en)?grape (?:de nuevo|otra vez)))", (("x", ""),)),
    # --- "me dobló las patas hacia adentro en vez de abrirlas"
    *(
        Plainer(
            (" patas ", " patitas ", " puntas "),
            rf"(?P<x>\b(?:(?:me|nos|les?|se) )+(?:dobl|voltea?|cierr|cerr|met|mand|avent)(?:o|a|e|io|aba|an|aron)? (?:todas )?(?:las )?(?:patas|patitas|puntas)(?: de las grapas)? (?:todas )?{to}(?: (?:en (?:vez|lugar) de (?:abrir(?:las)?|(?:(?:para|hacia|pa|por) )?a?(?:fuera|dentro))))?)(?= *(?:$|[,;.]| y\b| pero\b| porque\b))",
            (("x", f"las patas de las grapas van {plain}"),),
            beside=("grap", "pistola", "staple"),
            unless=r"\bno (?:me|nos|les?|se) (?:dobl|volte|cerr|met|mand|avent)",
        )
        for to, plain in ((_TO_IN, "hacia adentro"), (_TO_OUT, "hacia afuera"))
    ),
    # --- "la cinta es de la de presión, la de tres": which tape, and how wide
    Plainer((" presion", " contacto", " calor"), rf"\b{_TAPE}(?P<x>(?: que (?:use|le puse|puse|lleva|trae|traigo|le eche))?,? (?:es|fue|era|va|lleva)(?: (?:de|la|del))+ (?=presion|contacto|calor))(?:presion|contacto|calor)\b(?P<y>,? (?:y )?(?:es )?(?:la |una )?de (?=(?:dos|tres|dos y media|2|3|2\.5)(?: pulgadas)?(?: de ancho)?{STOP}))?", (("x", " de "), ("y", " de ")), unless=r"\bno (?:es|fue|era|va|lleva)\b"),
    Plainer((" presion", " contacto"), rf"\b(?:la |el )?{_TAPE}(?P<x> no (?:es|fue|era) (?:(?:de|la|del) )+(?:presion|contacto)){STOP}", (("x", ""),)),
    # --- taken out to look: they are there
    Plainer(
        ("saque ", "sacamos ", "quite ", "quitamos ", "arranque ", "bote "),
        rf"(?P<x>(?:le |les )?(?:saque|sacamos|quite|quitamos|arranque|bote) (?:un[oa]s?|un par de|dos|tres|cuatro|algunas) (?:grapas?|staples?))(?: (?:al|a la|del|de la|en el|en la) {_ONE})?(?P<y> ?,?(?:nomas )?(?:para|pa|a) (?:ver|checar|revisar|medir|mirar)(?:l[oa]s?)?(?: (?:como (?:estaban|iban|quedaron|salieron|andan|vienen)|la pata|las patas|por dentro))?)",
        (("x", "revise las grapas"), ("y", "")),
    ),
    # --- "el 399 a medias, falta graparlo"
    Plainer((" a medias", " a la mitad"), rf"(?:^|(?<=[,;.] )|(?<=, y )|(?<= y ))(?:el|la) {_ONE}(?P<x> )(?=list[oa]s?\b)", (("x", " quedó "),)),
    Plainer((" a medias", " a la mitad"), rf"(?:^|(?<=[,;.] )|(?<=, y )|(?<= y ))(?:el|la) {_ONE}(?P<x> )a (?:medias|la mitad)(?:(?P<y>)(?!,? (?:y )?(?:le |me )?falt))?{STOP}", (("x", " quedó "), ("y", ", le falta terminarlo"))),
    Plainer(
        (" a medias", " a la mitad", " sin terminar", " sin acabar", " incomplet", " inconclus"),
        rf"(?:^|(?<=[,;.] )|(?<=, y )|(?<= y ))(?:el|la) {MARK} (?:(?:se|me|l[oa]|todavia|aun|ahi) )*(?:quedo|deje|dejamos|esta|va|sigue|anda) (?:a (?:medias|la mitad)|sin (?:terminar|acabar)|incomplet[oa]|inconclus[oa])(?P<y>)(?!,? (?:y )?(?:le |me )?falt){STOP}",
        (("y", ", le falta terminarlo"),),
    ),
    # --- "no mide cuarenta, mide cuarenta y seis": how long a straight is
    Plainer((" mide ", " midio "), rf"\b(?<!del )(?<!de la )(?<!al )(?<!a la )(?<!en el ){_STRAIGHT} (?:numero )?{MARK}(?P<x> no (?:mide|midio|es de) {COUNT}(?: y medi[ao])?(?: pulgadas)?(?: de largo)?(?:,| sino| si no| pero| es que)* )(?:(?:mide|midio|es de) )?{COUNT}(?: y medi[ao])?(?: pulgadas)?(?P<y>(?: de largo)?){STOP}", (("x", " "), ("y", " de largo"))),
    Plainer((" mide ", " midio "), rf"\b(?<!del )(?<!de la )(?<!al )(?<!a la )(?<!en el ){_STRAIGHT} (?:numero )?{MARK},? (?:(?:ya|si|me|nos|ahora) )*(?:mide|midio) {COUNT}(?: y medi[ao])?(?: pulgadas)?(?P<y>){STOP}", (("y", " de largo"),)),
    # --- "igual pero de cuarenta y cuatro", where a length was told before
    Plainer((" igual",), rf"\bde largo\b[^;]{{0,80}}? (?:igual(?:it[oa])?|lo mismo|misma medida),? (?:pero|nomas que|solo que) (?:(?:de|mide) )+(?:{COUNT})(?: y medi[ao])?(?: pulgadas)?(?P<y>){STOP}", (("y", " de largo"),)),
    # --- "grapas a dos. El 139 es igual pero a tres": of the staples
    Plainer((" igual", " lo mismo"), rf"\b(?:en)?grap\w* {_APART}[^;]{{0,60}}? (?:igual(?:it[oa])?|lo mismo),? (?:pero|nomas que|solo que)(?P<x> )(?=(?:a|cada) {_FAR}{STOP})", (("x", " con grapas "),)),
    # --- "te había dicho que abrían pa fuera, pero no: están pa dentro"
    Plainer(
        ("habia dicho", "habiamos dicho", "te dije", "les dije", "le dije"),
        rf"(?P<x>(?:ya )?(?:te|le|les|os) (?:habia|habiamos|dije|dijimos)(?: dicho)? que )las (?:patas|patitas|puntas)(?: de las grapas)? (?:del?|en) ?(?:el |la )?(?P<p>{_ONE}) (?:abrian|iban|van|abren|estaban|quedaron|salieron|doblaban) (?:{_TO_IN}|{_TO_OUT})(?P<y>,? (?:pero |y |pues )+(?:(?:siempre|resulta que|la verdad) )*(?:no|nel)(?: es cierto| era cierto| es asi)?[,:;.]? (?:(?:ya|hoy) )*(?:(?:l[oa] |le |las )?(?:voltee|cheque|revise|vi|mire|abri)(?: bien)?(?:,| y)+ )?)(?=(?:estan|van|quedaron|abren|doblan|se van|me quedaron) (?P<z>{_TO_IN}|{_TO_OUT}))",
        (("x", ""), ("y", r". En la pieza \g<p> las patas de las grapas ")),
    ),
    # --- "las patas de las grapas del 273 van pa dentro": its number
    Plainer((" grapas de", " patas de", " puntas de"), r"(?P<x>(?:las )?(?P<t>(?:patas|patitas|puntas|grapas)(?: de las grapas)?) (?:del|de la|de el) (?:numero )?(?!181)(?P<n>\d{2,4})) (?=(?:(?:me|se|ya|todas|si|por dentro|estan|y),? )*(?:estan|van|quedaron|abren|doblan|salieron|miran|dobladas|abiertas)\b)", (("x", r"en la pieza \g<n> las \g<t>"),)),
    # --- asked of its tape and answered by its sides: "¿la cinta de la T 119? Los dos lados nomás"
    *(
        Plainer((" lados", " costados", " caras"), rf"(?P<x>(?:la|el) {_TAPE} {of}){_ONE}(?P<y>\? (?:(?:pues|nomas|solo|en|de|por|a|le puse|va|lleva) )*(?:l[oa]s )?(?P<n>un|dos|tres|cuatro) (?:lados?|costados?|caras?)(?: (?:nomas|nada mas|solamente|y ya))*)(?= *(?:$|[,;.]))", (("x", to), ("y", r" lleva cinta en \g<n> lados")))
        for of, to in (("del ", ". el "), ("(?:de|en) la ", ". la "), ("en el ", ". el "))
    ),
    # --- there were no staples: "nomás la pegué con cinta"
    Plainer(("acab", "termin", "no habia grapa", "sin grapa"), rf"(?:(?:acab|termin)\w+ (?:la |las )?grapas?|no (?:habia|hubo|teniamos|quedaba) (?:mas )?grapas?)\b[^.]{{0,60}}?\b(?:nomas|solo|nada mas|solamente) (?:l[oa] )?(?:pegue|cerre|agarre|sujete|asegure|amarre)(?: \w+)? con (?:pur[oa] )?(?:la )?{_TAPE}(?P<y>){STOP}", (("y", ", sin grapas"),)),
    # --- how far apart cross tabs are: "los tabs a doce", "en la primera a doce, en la segunda a dieciocho"
    Plainer((" tabs",), rf"\b(?:cross )?tabs(?: de {COUNT}(?: pulgadas)?(?: de largo)?)?,? (?:(?:me|se|van|quedaron|estan|abiertos) )*(?P<x>a|de a) (?={COUNT}(?: pulgadas)?(?: *(?:$|[,;.])| y\b))", (("x", "cada"),)),
    Plainer(
        (" tabs",),
        rf"\b(?:cross )?tabs\b[^.]{{0,60}}?\ben (?:la|el) primer[oa],? (?:(?:me|se|van|quedaron|estan|abrieron|fueron) )*(?P<x>a|de a) {_FAR}(?:,|;| y| pero)+ en (?:la|el) (?:segund[oa]|otr[oa]),? (?P<y>(?:(?:me|se|van|quedaron|estan|abrieron|fueron) )*(?:a|de a)) (?={_FAR}{STOP})",
        (("x", "cada"), ("y", "cada")),
    ),
    # --- "cinco en veinte, eso es lo que cae el lado derecho de la transición 328"
    Plainer(
        (" lo que cae ", " lo que baja ", " lo que sube ", " lo que entra ", " lo que sale ", " lo que abre ", " lo que cierra "),
        rf"(?P<x>(?P<n>{_FAR} en {COUNT})(?: pulgadas)?,? (?:(?:eso|es|eso es) )*lo que (?P<v>cae|baja|sube|entra|sale|abre|cierra) (?P<s>(?:el lado (?:derecho|izquierdo|de (?:arriba|abajo))|la (?:derecha|izquierda)|arriba|abajo)) (?P<o>del|de la|en la|en el) (?P<p>{_ONE})){STOP}",
        (("x", r"\g<s> \g<o> \g<p> \g<v> \g<n>"),),
    ),
    # --- out in the sun and the rain
    Plainer((" sol", " lluvia", " intemperie"), r"\b(?:va|queda|esta|quedo|anda) (?:por |alla |aca )?(?P<x>afuera(?:,? en el techo|,? en la azotea|,? arriba)?,? (?:a|al|bajo el|bajo la) ?(?:puro |la )?(?:sol|lluvia|agua)(?: y (?:la |al? )?(?:sol|lluvia|agua))?)(?= *(?:$|[,;.]))", (("x", "a la intemperie"),)),
    # --- what the gauge showed of the line
    Plainer((" manometro",), rf"(?P<x>(?:el )?manometro (?:(?:me|nos|ya) )*(?:se fue|subio|llego|marco|marcaba|leyo|dio|daba|andaba|brinco) (?:(?:hasta|a|en) )?)(?={_FAR}(?: de (?:agua|columna))?{STOP})", (("x", "la presion es de "),), beside=("prend", "arranc", "abanico", "linea", "sistema", "ventilador", "ducto"), unless=r"\b(?:fuga|prueba|leak)"),
    # --- how long the legs are, behind the staples
    Plainer((" de pierna", " de pata", " de largo"), rf"\bgrapas\b[^.]{{0,60}}?(?P<x>(?:,| y)+ (?:tienen|traen|miden|son(?: de)?) (?P<n>{FRAC})(?: de pulgada| pulgada)? de (?:pierna|pata|patita))(?= *(?:$|[,;.]| y ))", (("x", r", la pata es de \g<n>"),), unless=r"\bno (?:tienen|traen|miden|son)"),
    Plainer((" son de ", " eran de ", " salieron de "), rf"\bgrapas\b[^.]{{0,80}}?(?P<x>(?:,| y| pero)+ (?:el largo (?:si |es lo que )?(?:esta|anda|salio|va) mal,? )?(?:(?:resulta|que|todas) )*(?:son|eran|salieron)) (?=de {FRAC}(?: de pulgada)?{STOP})", (("x", ", la pata es"),), unless=r"\bno (?:son|eran|salieron) de"),
    # --- "salieron tres: 240, 241 y 242": pieces by their numbers
    Plainer((": ",), rf"\b(?:salieron|hice|hicimos|saque|sacamos|arme|armamos|quedaron|acabe|acabamos) (?:dos|tres|cuatro|cinco|seis)(?P<x>: )(?=(?:la |el )?\d{{1,4}}(?:, (?:la |el )?\d{{1,4}})* y (?:la |el )?\d{{1,4}}{STOP})", (("x", " piezas, las piezas "),)),
    # --- joined to another
    Plainer((" pegue con", " pegamos con", " junte con", " peque con"), rf"\bl[oa] (?P<x>(?:pegue|pegamos|junte)) (?=con (?:la|el) (?:{KIND} )?(?:numero )?{MARK}{STOP})", (("x", "uní"),)),
    # --- "las grapas si van a dos", without its accent
    Plainer((" si van ", " si va ", " si estan ", " si esta ", " si quedo", " si llev", " si abren "), rf"\b(?:las|la|los|el) (?:grapas?|{_TAPE}|patas|aletas|vanes)(?P<x> si) (?=(?:van?|estan?|quedo|quedaron|llevan?|abren) )", (("x", ""),)),
    # --- "dos pies hay de tornillo a tornillo", "siete pies hay entre colgante y colgante": the measure ahead of what it is between
    *(
        Plainer(
            (" de tornillo", " de pija", " de grapa", " de colgante", " de colgador", " de hanger", " de soporte", " de fleje", " de strap", " entre ", " de uno a otro"),
            rf"(?:^|(?<=[,;.] )|(?<= y )|(?<=pero ))(?P<x>(?P<n>{_FAR}|{COUNT} pies?(?: y medi[oa])?) (?:(?:hay|quedaron|quedo|quedan|tienen|dejamos|deje|salieron|son|les di|van|mide|miden) )?(?:de|entre) {one} (?:a|y) {one})(?![\w])",
            (("x", rf"{plain} cada \g<n>"),),
        )
        for one, plain in (("(?:tornillo|pija)", "tornillos"), ("grapa", "grapas"), ("(?:colgante|colgador|hanger|soporte|fleje|strap|trapecio|tirante)", "colgantes"))
    ),
    # --- "los colgantes los tuvimos que abrir a cinco pies"
    Plainer(
        (" tuve que ", " tuvimos que ", " hubo que ", " toco ", " quiso "),
        rf"\b{_HOLDERS}\b[^.;]{{0,60}}? (?P<x>l[oa]s (?:tuve que|tuvimos que|hubo que|me toco|nos toco) (?:abrir|poner|separar|espaciar|dejar|distanciar|colgar|meter|mandar)(?:l[oa]s)? (?:hasta )?(?:a|cada|de a))(?= {COUNT} pies?\b)",
        (("x", "van cada"),),
    ),
    Plainer((" falto ", " faltaron ", "falto ", "faltaron "), rf"(?P<x>\b(?:(?:me|nos|les?|se) )*(?:falto|faltaron) (?:la |las |mas |tantita )?varillas?,? (?:(?:y|asi que|por eso|entonces|pues) )+)(?=(?:los )?{_HOLDERS}\b)", (("x", ""),)),
    # --- "hacia afuera quedó el escalón bajo"
    *(
        Plainer((" escalon", " low step", " lado bajo"), rf"(?:^|(?<=[,;.] )|(?<= y )|(?<=pero ))(?P<x>{way} (?:(?:me|se|nos|le|lo|ya) )*(?P<v>quedo|queda|va|esta|mira|deje|dejamos|salio|puse|ve|da) (?P<e>(?:el |mi |un )?(?:escalon(?:cito)?(?: bajo)?|low step|lado bajo)(?: del? (?:la |el )?(?:shiplap|rebaje|ranura|panel))?))(?![\w])", (("x", rf"\g<e> \g<v> {plain}"),))
        for way, plain in ((_TO_OUT, "hacia afuera"), (_TO_IN, "hacia adentro"))
    ),
    # --- "el fondo sube cuatro y lo hice en un pie", "arriba baja cinco y el retroceso lo marqué de veinticuatro": how far, and in how much
    Plainer(
        (" hice ", " marque ", " di ", " puse ", " trace ", " deje ", " corte ", " logre ", " saque ", " hicimos ", " marcamos ", " dimos ", " retroceso ", " quedo ", " salio "),
        rf"\b(?:sube|baja|entra|sale|cierra|abre|se mete|se abre|cae) {_FAR}(?P<x>,? (?:y |pero )?(?:(?:eso|todo|nomas) )*(?:l[oa] (?:hice|hicimos|marque|trace|di|dimos|corte|logre|saque|deje|puse|baje|subi|meti)|(?:y )?(?:el|su|con) retroceso,?(?: (?:(?:l[oa]|me|se|nos) )*(?:marque|marcamos|hice|hicimos|deje|puse|di|dimos|trace|es|fue|era|quedo|salio))?)(?: (?:nomas|solo|nada mas|apenas))? (?:en|de|a)) (?={_FAR}|un pie|{COUNT} pies)",
        (("x", " en"),),
    ),
    # --- what of the mend was a mistake is told behind: no mend yet
    Plainer(("me equivoque ", "nos equivocamos ", "la regue ", "la regamos ", "meti la pata ", "fallé ", "falle "), rf"(?:^|(?<=[,;.] ))(?P<x>(?:me equivoque|nos equivocamos|la regue|la regamos|meti la pata|falle) (?:con|en) (?:el parche|la reparacion|el remiendo|el arreglo) )(?P<y>del|de la) (?={KIND} (?:numero )?{MARK}\b)", (("x", ""), ("y", ""))),
    # --- "el tape lo arrancamos y le pusimos otro": another is on
    Plainer(
        (" otro", " otra", " nuev"),
        rf"(?P<x>\b(?:(?:el|la|ese|esa|toda la|todo el) )?{_TAPE}(?: (?:viej[oa]|mal[oa]|chuec[oa]|anterior|primer[oa]|que (?:traia|tenia|estaba mal)))?,? (?:ya )?(?:l[oa] |se l[oa] |le )?(?:arranqu|arranc|quit|despegu|despeg|jal|pel|saqu|sac|retir)(?:e|amos),? (?:y |luego |despues |ya |despues ya )*(?:(?:le|se|la|lo) )*)(?P<v>puse|pusimos|pegue|pegamos|eche|echamos|meti|metimos|di|dimos|volvi a poner|volvi a pegar)(?P<y> (?:un[oa] |el |la |de (?:la|lo) )?(?:otr[oa]|nuev[oa])(?: nuev[oa])?)(?= *(?:$|[,;.]| y | de | bien | que ))",
        (("x", "le "), ("y", " cinta")),
    ),
    Plainer(
        (" otro", " otra", " nuev"),
        rf"(?P<x>\b(?:le )?(?:arranqu|arranc|quit|despegu|despeg|jal|pel|saqu|sac|retir)(?:e|amos) (?:tod[oa] )?(?:el|la|ese|esa) {_TAPE}(?: (?:viej[oa]|mal[oa]|chuec[oa]|anterior|primer[oa]))?,? (?:y |luego |despues |ya )*(?:(?:le|se|la|lo) )*)(?P<v>puse|pusimos|pegue|pegamos|eche|echamos|meti|metimos|di|dimos|volvi a poner|volvi a pegar)(?P<y> (?:un[oa] |el |la |de (?:la|lo) )?(?:otr[oa]|nuev[oa])(?: nuev[oa])?)(?= *(?:$|[,;.]| y | de | bien | que ))",
        (("x", "le "), ("y", " cinta")),
    ),
    # --- tape on three, told with its rub, and none on the fourth
    Plainer((" tallad", " frotad", " planchad"), rf"\b{_TAPE}(?: 181a-[ph])?(?P<x>,? (?:bien )?(?P<d>tallad|frotad|planchad)(?P<g>[oa]),? (?P<s>(?:en|por) (?:nomas |solo )?(?:tres|dos|un|[123]) (?:lados?|caras?|costados?)))(?=[,;.] [^.]*\b(?:no lleva (?:cinta|tape|teip|nada)|sin (?:cinta|tape|teip)|no (?:le )?(?:puse|pusimos|cupo|entro)))", (("x", r" \g<s>, \g<d>\g<g>"),)),
    # --- rods that ran out: none in the piece
    Plainer(("acab", "termin", "agot"), r"(?P<x>\bse (?:me |nos )?(?:acabaron|terminaron|agotaron) (?:las |los )?)(?=(?:varillas|canales|refuerzos|tirantes de refuerzo)\b)", (("x", "no había "),), unless=r"\b(?:colg\w+|hangers?|soportes?|trapecios?|flejes?|straps?|traje(?:ron)?|fui por|fuimos por|consegu\w+|otr[oa]s? (?:varillas?|canales|refuerzos))\b"),
)
