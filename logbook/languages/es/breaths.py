"""Where a breath parts what Spanish ears write without a sign: "encintado y tallado no quedó nada suelto", "el cuatro sí lo tallé el cinco no".

A comma is put there. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.en.names import FIRST_NAMES
from logbook.languages.es.plainer import COUNT, INCH, KIND, MARK, SOON, STAPLES, TAPE
from logbook.languages.plainer import Plainer

_DONE = r"(?:(?:en)?grapad[oa]s?|encintad[oa]s?|teipead[oa]s?|tallad[oa]s?|frotad[oa]s?|limpi[oa]s?|sellad[oa]s?|aletas|vanes)"
_DID = r"(?:(?:en)?grapad[oa]s?|encintad[oa]s?|teipead[oa]s?|tallad[oa]s?|frotad[oa]s?|planchad[oa]s?)"
_NOTHING = r"(?:nada|ni|ningun[oa]?|problemas?|bronca|detalles?|arrugas?|bolsas|huecos?|gaps?|falta de nada)"
_ACTS = ("tall", "encint", "engrap", "grap", "limpi", "sell")

_MEASURE = rf"(?:(?:un|tres|cinco|siete) (?:cuartos?|octavos?|dieciseisavos?)|medi[ao]|{COUNT} (?:y medi[ao] )?pulgadas?|\d+/\d+|0?\.\d+)"
_CLASS = r"(?:475|800|1400|ochocientos|mil cuatrocientos|cuatrocientos setenta y cinco|cuatro siete cinco|cuatro setenta y cinco)"
_NAMES = "|".join(sorted(FIRST_NAMES))

SPANISH_BREATHS = (
    # --- nothing was the matter: of no act, and of no vanes
    Plainer((" no ",), rf"{_DONE}(?P<x> )(?=no (?:(?:me|le|se|nos|lo|la) )*(?:quedo|queda|quedaron|hay|hubo|tiene|tuve|trae|deje|batalle|tarde|costo|paso|vi|se ve|encontre|salio|dio) {_NOTHING}\b)", (("x", ", "),)),
    # --- what is only named as still to come: "y la cinta todavía"
    Plainer((" todavia", " aun"), rf"(?:{_DONE}|grapas),? (?:y )?(?:la|el) (?:tape|teip|cinta|foil|tallada)(?P<x> (?:todavia|aun))(?= *(?:$|[.;]))", (("x", " todavía no"),)),
    Plainer((" se me levant", " se nos levant"), r"(?P<x>se (?:me|nos) levant(?:o|aron|a|an))(?= (?:un|una|la|el|las|dos) (?:punta|orilla|esquina|pedazo|cacho|lado)s?\b)", (("x", "se levantó"),), beside=("cinta", "encint", "tape", "teip", "foil")),
    # --- the one and the other
    *(Plainer((" el ", " la "), rf"(?:^|(?<=[ ,]))(?:el|la) {MARK} (?P<y>si )?(?:no )?(?:lo|la) {stem}e(?P<x>,? )(?=(?:el|la) {MARK} (?:si|no)(?: *$| *[,;.]| porque))", (("y", ""), ("x", ", "))) for stem in _ACTS),
    # --- "engrapada el tape lo pone el de mañana": it is to come, and whose it is
    Plainer((" mañana", " al rato", " luego", " despues", " ahorita", " todavia", " lo pone", " la pone", " lo pongo", " la pongo", " lo echa", " la echa", " lo va a ", " la va a ", " lo voy a ", " la voy a ", " le toca"), rf"(?:{_DONE}|grapas|staples)(?P<x> )(?=(?:el|la) (?:tape|teip|cinta|foil|mastique|tallada) (?:ya |luego |despues |mañana )*(?:se )?(?:(?:lo|la) (?:pone|ponen|pongo|ponemos|echa|echo|da|van? a|voy a|vamos a)\b|le toca\b|todavia(?: no)?(?= *$| *[,;.])|(?:hasta |para |pa )?{SOON}(?: *$| *[,;.]| temprano| si | porque )))", (("x", ", "),)),
    Plainer((" mañana", " al rato", " luego", " mas tarde", " lunes", " martes"), rf"(?:{_DONE}|grapas|staples)(?P<x> )(?=(?:(?:las|los) )?(?:tape|teip|cinta|foil|mastique|grapas|staples|aletas|vanes|(?:en)?grapad[oa]|encintad[oa]|tallad[oa]|frotad[oa]) (?:hasta |para |pa )?(?!ahorita){SOON}(?: *$| *[,;.]| temprano| porque ))", (("x", ", "),)),
    # --- "no cada tres como dice el plano encintado"
    Plainer((" como dice ", " como pide ", " como marca "), rf"cada {COUNT}(?: y media)?(?: pulgadas?)?(?P<w> )no (?:a )?cada {COUNT}(?: y media)?(?: pulgadas)? como (?:dice|pide|marca) (?:el|la) \w+(?P<x> )(?=(?:(?:en)?grap|encint|tall|teip)[ae]?d?[oa]|con cinta|con grapas)", (("w", ", "), ("x", ", "))),
    # --- "… ahí está sin nada lo demás bien engrapado"
    Plainer((" lo demas ",), r"\w+(?P<x> )(?=lo demas (?:(?:va|esta|quedo|todo|muy|si|ya) )*(?:bien |ya )?(?:(?:en)?grapad|encintad|tallad|bien\b)[oa]?)", (("x", ", "),), unless=r"\b(?:y|pero|todo|con|en|para|de|a) lo demas"),
    # --- "no se pudo grapas los cuatro"
    Plainer((" no se pudo ", " no entraba ", " no cabia "), r"\bno (?:se pudo|me entraba la mano|entraba la mano|cabia la mano)(?P<x> )(?=(?:grapas|staples|cinta|tape|ya con|con|(?:en)?grapad[oa]|encintad[oa]|tallad[oa])\b)", (("x", ", "),)),
    Plainer((" sin doblar ",), r"sin doblar(?P<x> )(?=no (?:me )?(?:entraba|cabia|alcanzaba|llegaba))", (("x", ", "),)),
    # --- a "but" by another name; how the legs go; what the hole got; how wide the collar is
    Plainer(("nomas que no ", "nada mas que no ", "solo que no ", "nomas que me falt", "nomas que le falt", "nomas que se me olvid"), r"(?P<x>(?:nomas|nada mas|solo) que)(?= (?:no (?:l[aeo]s? |me |se )*(?:tall|frot|planch|encint|engrap|grap|limpi|puse|recort|dobl|alcanc|pude|cupo|cabia)|me falt|le falt|se me olvid))", (("x", ", pero"),)),
    Plainer((" para afuera", " para fuera", " hacia afuera", " pa afuera"), r"grapas?(?![\w'])[^.;]{0,40}?,? (?P<x>)(?=(?:para|hacia|pa) (?:a?fuera)(?: *$| *[,.;]))", (("x", "patas "),), unless=r"patas?|patitas|puntas|dobl|escalon|ranura|rebaje|solapa|flap"),
    Plainer(("collarin de ", "collar de ", "spin in de "), rf"(?:collarin|collar|spin in) de (?:{COUNT})(?P<x>)(?= (?:numero|en el|en la|run|del run|sobre)\b)", (("x", " pulgadas,"),)),
    # --- "sin calentar la superficie ni nada grapado cada 2", "sin 181A ni nada impreso lo froté bien": a word that closes the denial, and then what was done
    Plainer((" ni nada ",), rf"\w+(?P<x> ni nada )(?=(?:va |esta |quedo |bien )*(?:{_DID} (?:(?:a )?cada|a (?:dos|tres|\d)|y|bien|con|por|los|todo)\b|(?:las )?{STAPLES} (?:van )?(?:a )?cada\b|(?:el |la )?{TAPE} (?:va |esta |quedo |bien )*(?:frotad|tallad|planchad)))", (("x", ", "),)),
    Plainer((" ni nada",), r"\w+ ni nada(?: (?:impres[oa]|escrit[oa]|marcad[oa]|de eso|de nada|parecido))?(?P<x> )(?=(?:l[oa]s?|le|les) (?:tall|frot|planch|encint|engrap|grap|restreg|alis|limpi|puse|pusimos|meti|pase|di|cerr|sell)\w*(?:e|i|amos|imos)?\b)", (("x", ", "),)),
    Plainer((" ni nada ya ",), r"\w+ ni nada(?P<x> )(?=ya (?:(?:se|lo|la|le|me) )*(?:esta|estan|quedo|quedaron|va|van|tiene|lleva|\w+(?:e|amos))\b)", (("x", ", "),)),
    # --- "hay que cambiarle el pedazo las grapas van cada 2": what is to be done, and then what is there
    Plainer(
        ("hay que ", "tengo que ", "tenemos que ", "falta ", "toca ", "habra que "),
        rf"\b(?:hay que|habra que|tengo que|tenemos que|falta|toca|queda por) \w+[aei]r(?:l[oae]s?|sel[oa]s?)?(?! (?:las|los|el|la) (?:{STAPLES}|{TAPE}|aletas))(?: (?!(?:las|los|el|la) (?:{STAPLES}|{TAPE}|aletas)\b|y\b|ni\b|con\b|{STAPLES}\b|{TAPE}\b)\w+){{1,5}}(?P<x> )(?=(?:(?:las|los|el|la) (?:{STAPLES}|{TAPE}|aletas) (?:ya |si )*(?:van?|estan?|quedo|quedaron|son|frotad|tallad|planchad)|{_DID} (?:a )?cada\b|{_DID} y {_DID}))",
        (("x", ". "),),
    ),
    # --- "encintado y frotado el noventa y cuatro mismo tamaño grapado cada tres": the next one
    Plainer((" el ", " la "), rf"{_DID}(?P<x> )(?=(?:el|la) {MARK} (?:(?:es |va |del? |la |el )*mism[oa]s? (?:tamaño|medidas?)|igual(?:it[oa])?\b|tambien) ?)", (("x", ". "),)),
    # --- "los dos con tape al 48 se lo froté y al 49 no"
    Plainer((" al ", " a la "), rf"(?!(?:y|pero|que|en|solo|nomas)\b)\w+(?P<x> )(?=(?:al|a la) {MARK} (?:si |ya )*(?:se |le |l[oa]s? )+(?:\w+ ){{1,4}}y (?:al|a la) {MARK} (?:todavia |aun )?no\b)", (("x", ", "),)),
    # --- "los cuatro lados encintados, grapados dos": each with its own count of sides
    Plainer(
        (" lados ", " caras "),
        rf"\b(?:cuatro|tres|dos|[234]) (?P<s>lados|caras) {_DID}(?: (?:a )?cada (?:{COUNT}))?(?P<x>,? (?:y |pero )?)(?:nada mas |nomas |solo )?{_DID} (?:nada mas |nomas |solo )?(?:(?:l[oa]s )?(?:cuatro|dos|tres|[234]))(?P<y>(?: (?:lados|caras))?)(?= *(?:$|[,;.]| nada mas| nomas| solamente| porque))",
        (("x", ". "), ("y", r" \g<s>")),
    ),
    # --- the mend, and what else the piece got: "lo repare con cinta engrapado cada dos"
    Plainer((" repar", " parch", " arregl", " remend", " resan"), rf"\b(?:repar|parch|arregl|remend|resan)\w* (?:bien )?con (?:la |pura )?{TAPE}(?: (?:de (?:foil|aluminio|presion|calor)|181a-[ph]|de {INCH}(?: pulgadas)?))*(?: (?:bien )?(?:tallad|frotad|planchad)[oa])?(?P<x>)(?= (?:bien )?(?:(?:en)?grapad[oa]|(?:con )?(?:sus )?{STAPLES}|encintad[oa]|con aletas|con vanes)\b)", (("x", ","),)),
    # --- the one and not the other: "no le puse grapas nomas cinta"
    *(
        Plainer((" nomas ", " solo ", " nada mas ", " solamente ", " unicamente ", " puro ", " puras ", " puros "), rf"\b(?:no (?:le |les |se )*(?:puse|pusimos|lleva|llevan|trae|traen|tiene|tienen|use|usamos|eche|echamos|meti|metimos)|sin) (?:ni )?(?:las? |los? |un[oa]? |nada de )?{left}(?P<x>,? (?:y |pero |sino )?(?:nomas|solo|nada mas|solamente|unicamente|pur[oa]s?) (?:(?:le )?(?:puse|pusimos|lleva|llevan) )?(?:las? |los? |pur[oa]s? )?)(?={got}(?: *$| *[,;.]| 181a| (?:y )?(?:bien )?tallad| cada ))", (("x", ", lleva "),))
        for left, got in ((STAPLES, TAPE), (TAPE, STAPLES))
    ),
    # --- what another made, and behind it what he made himself
    Plainer((" yo ",), rf"\b(?:hizo|hicieron|armo|armaron|puso|pusieron|saco|monto|corto|encinto|engrapo|termino|colgo) (?:el|la) {KIND} (?:numero )?{MARK}(?: (?!que\b|como\b|cuando\b|yo\b)\w+){{0,6}}?(?P<x> )(?=yo (?:ya )?(?:hice|arme|puse|saque|monte|corte|encinte|engrape|termine|colgue) (?:el|la) {KIND}\b)", (("x", ", "),)),
    Plainer((" yo el ", " yo la "), rf"\b(?P<v>hizo|armo|saco|monto|corto|termino|colgo) (?:el|la) {KIND} (?:numero )?{MARK}(?P<x>,? (?:y )?yo)(?= (?:el|la) {KIND} (?:numero )?{MARK})", (("x", ", yo hice"),)),
    Plainer((" mi ", " el ", " otro "), rf"(?!(?:que|como|cuando|porque|donde|si|y|pero|mientras|despues|antes|segun|lo)\b)\w+(?P<x> (?:y |pero )?)(?=(?:mi|el|mi otro|el otro) (?:compa[nñ]ero|ayudante|primo|compadre|hermano|hijo|chalan|compa|muchacho) (?:ya |me )?(?:hizo|armo|puso|saco|monto|corto|encinto|engrapo|grapo|tallo|termino|colgo|limpio|sello) (?:el|la) {KIND} (?:numero )?{MARK}\b)", (("x", ", "),)),
    # --- where it stands: out and on the roof
    Plainer((" afuera", " por fuera"), r"(?<!no )\b(?:va|queda|esta|quedo|anda|l[oa] puse|l[oa] pusimos|l[oa] colgue|l[oa] monte|l[oa] instale|se quedo|(?P<y>l[oa] (?:deje|dejamos))) (?P<x>(?:alla |aca )?(?:afuera|por fuera),? (?:en|sobre|encima de|arriba de|arriba en) (?:el techo|la azotea|la losa)|(?:en|sobre) el techo,? (?:por )?(?:afuera|fuera))(?= *(?:$|[,;.]))", (("x", "a la intemperie"), ("y", "quedó")), unless=r"\b(?:grapas?|foil|papel|macho|cara|patas?|puntas|escalera|herramienta|camion|material|tornillos?|cinta|teip|tape|panel|rollo|andamio) [^.;]{0,24}(?:afuera|fuera)"),
    # --- "los hangers del run uno cada diez pies": the name of the run
    Plainer((" uno cada ", " una cada ", " uno a cada ", " una a cada "), r"\b(?:run|corrida|linea|ramal) (?:numero )?(?P<x>un[oa])(?= (?:a )?cada )", (("x", "1"),)),
    # --- "se aplasto", without its accent: of the piece, and no tab was pressed flat
    Plainer((" aplasto",), r"\bse (?P<x>aplasto)\b", (("x", "aplastó"),), unless=r"\b(?:tabs?|lenguetas?|pestanas?|grapas?|patas?|collar\w*|spin|cinta|teip|tape|tiras?) [^.;]{0,30}aplasto|aplasto (?:con|bien)\b"),
    # --- why there was none, and then what was done; the hand that does not fit is no panel
    Plainer((" porque no ",), r"porque (?:ya )?no (?:llegaron|llego|habia|hubo|hay|trajeron|tenia|teniamos|traia|alcanzaron|me dieron|encontre)(?P<x> )(?=(?:(?:en)?grapad|encintad|tallad|teipead|limpi|colgad)[oa]|todavia|grapas|cinta)", (("x", ", "),)),
    Plainer((" mano",), r"(?P<x>no (?:me |nos )?(?:cabe|cabia) (?:la|mi) mano)", (("x", "no alcanzo"),), unless="dobl", beside=("panel", "tabla", "board")),
    Plainer((" y ",), rf"(?P<x>(?<!,) ?y) (?=(?:{_NAMES}) (?:encinto|engrapo|grapo|tallo|limpio|colgo|hizo) (?:el|la) (?:recto|recta|codo|tee|tapa|transicion|reduccion|collarin|offset|plenum|pieza))", (("x", "."),)),
    # --- "tablero 475 un cuarto de pulgada de presión": which board, and then how much it bears
    Plainer((" tablero ", " board ", "tablero ", " clase ", " fibra "), rf"\b(?:tablero|board|fibra|clase)(?: (?:de|del|clase|tipo|ei))* {_CLASS}(?P<x> (?:con |a |y )?)(?={_MEASURE}\b)", (("x", ", "),)),
    # --- "cinta los cuatro lados, grapas en tres, así va la ye 32": what was told, and then of which piece
    Plainer((" asi va ", " asi quedo ", " asi esta ", " eso es ", " eso va ", " eso lleva ", " asi lleva ", " asi fue ", " asi se quedo ", " asi deje ", " asi sube "), rf"\w+(?P<x> )(?=(?:asi (?:va|quedo|esta|lleva|fue|se quedo|deje|sube)|eso (?:es|va|lleva)) (?:en |de |lo de |lo del )?(?:el |la )?(?:{KIND}|ye|caja|recta|manga|conexion|puerta) (?:numero )?{MARK}\b)", (("x", ", "),)),
    # --- "remendé el hoyo con cinta; después me seguí con la tapa 6": the next one
    Plainer((" segui ", " seguimos ", " fui ", " fuimos ", " pase ", " pasamos ", " brinque ", " brincamos "), rf"\w+(?P<x>[;,] )(?=(?:y )?(?:luego|despues|enseguida|ya luego|de ahi)(?: ya)? (?:me |nos |le )?(?:segui|seguimos|fui|fuimos|pase|pasamos|brinque|brincamos) (?:con|para|a) ?(?:el|la|l) (?:{KIND}|ye|caja|recta|manga) (?:numero )?{MARK}\b)", (("x", ". "),)),
    # --- "el 73 es de treinta y seis por catorce; el 74, de cuarenta por catorce": each its own size
    Plainer((" el ", " la "), rf"\b(?:el|la|{KIND}) (?:numero )?{MARK},? (?:(?:es|mide|va) )?(?:de )?{COUNT} (?:por|x) {COUNT}(?P<x>(?:;|,| y|, y)+ )(?:el|la) {MARK}(?P<y>,? (?:de )?)(?={COUNT} (?:por|x) {COUNT}\b)", (("x", ". "), ("y", " es de "))),
    # --- a side's harm has a place where it came about, and is the piece's all the same
    Plainer((" troca", " camioneta", " camion", " trailer", " traila", " elevador", " bodega", " viaje", " camino"), r"\bse (?:me |le |nos |me le )?(?:aplast|golpe|dobl|romp|raj|rasg|desgarr|moj|sum|aboll|maltrat|quebr|machuc|apachurr|ponch)\w*(?P<x> (?:en|arriba de|abajo de|durante) (?:la |el )(?:troca|camioneta|camion|trailer|traila|elevador|bodega|viaje|camino))\b", (("x", ""),)),
    Plainer((" todo", " toda"), r"\w+,? se (?:me |le |nos |me le )?(?:moj|empap|aplast|rasg|golpe|maltrat|sum|despeg|apachurr|machuc)(?:o|io)(?P<x> tod[oa])(?= *(?:$|[,;.]| y | con | por ))", (("x", ""),)),
    Plainer((" todo un ", " toda una "), r"\b(?:moj|empap|aplast|raj|rasg|golpe|maltrat|sum|pel|despeg)\w* (?P<x>tod[oa] )(?=una? (?:lado|costado|cara|pedazo|orilla|esquina|extremo)\b)", (("x", ""),)),
)
