"""Spanish words that are written like the name of a piece and mean something else, or are the name of one in another word: "el tape le tapa solo la mitad"
caps nothing, "bota el aire" is no boot, "los ganchos cada seis pies" are hangers, "riser 75" is a piece by its number.

Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, FRAC, KIND, MARK
from logbook.languages.plainer import Plainer

_COVERS = r"(?:le|les|se|lo|los|me|nos|no|ya|que|solo|nomas|apenas|casi|mas|cinta|tape|teip|foil|mastique|sellador|viga|tubo|pared|bandeja|losa)"
_COVERED = r"(?:solo|nomas|nada|apenas|casi|bien|toda?s?|la|el|los|las|complet[oa]|por|parte|media|mitad|un lado|una (?:parte|esquina|cara|junta))"
_BLOWN = r"(?:(?:(?:todo|mucho|un poco de|el|mucha|poco) )*(?:aire|viento|agua|polvo|calor|fibra))"
_PIECE = rf"(?:(?:el|la) )?(?:tramo|recto|recta|codo|ducto|pieza|seccion|ramal|transicion|reduccion|offset|plenum|pleno) (?:numero )?{MARK}"

_THING = r"(?:peso|moneda|peseta|centavo|dolar|quarter|peni|chavo|vellon|dedos?|puño|mano|huevo|pelota|naranja|limon|lapiz|lapicero|clavo|tornillo|tapita|chapa|tapa de \w+|uña|boton|pulgar|cabeza)"
_TOOL = r"(?:la |el |una? |mi )?(?:paleta|paletita|espatula|squeegee|rodillo|cuña|tarjeta|tallador|plastiquito|plastico|regla|llana)"
_JOINED = r"(?:en|por|entre) (?:la|las|el|una) (?:junta|union|costura|esquina|traslape|empate|conexion)"
_CUT_OUT = r"\b(?:corte|cortamos|abri|abrimos|hice|hicimos|marque|trace) (?:el|un) (?:hueco|huequito|boquete)|\b(?:hueco|boquete) (?:para|del?) (?:el|la|un|una)? ?(?:ramal|toma|salida|cable|tubo|collar\w*|registro|puerta|damper|rejilla|difusor)"

_KIN = ("hermano", "hermana", "primo", "compadre", "hijo", "ayudante", "compa", "carnal", "pana", "amigo", "jefe", "socio", "cuate", "viejo", "inge")
_AS_BIG = rf"(?:(?:como )?de (?:{COUNT}|{FRAC}|media)(?: pulgadas?)?(?: y (?:medi[ao]|cuarto|un cuarto))?(?: pulgadas?)?(?: de (?:ancho|largo))?|chic[oa]|chiquit[oa]|grande|larg[oa])"
_FACE = r"(?:foil|aluminio|papel|forro|facing|cara|barrera|costado|orilla|esquina|lado|recubrimiento)"

SPANISH_OTHER_SENSES = (
    # --- "el tape le tapa solo la mitad": it covers
    Plainer((" tapa",), rf"\b{_COVERS} (?P<x>tapan?)(?= {_COVERED}\b)", (("x", "cubre"),)),
    # --- "bota mucho aire por la esquina": it leaks there
    Plainer(("aire",), r"\b(?<!no )(?<!no le )(?P<x>(?:(?:se )?(?:me |le )?(?:sale|escapa|fuga|va|salia)|tira|tiraba|bota|botaba|echa|echaba|avienta|aventaba|pierde|perdia|deja escapar|suelta) (?:(?:todo|toda|el|mucho|muchisimo|bastante|un poco de|un chorro de|un monton de|demasiado|tantito|algo de|puro) )*)(?=aire(?: \w+)? (?:por|en|de|entre) (?:la|las|una|el|los|un|toda la|esa|ese) (?:esquina|junta|costura|union|orilla|costado|lado|traslape|tapa|empate|parte|punta|cinta))", (("x", "tira "),), unless=r"\b(?:se sello|ya no (?:se sale|tira|bota|escapa)|ya (?:la|lo|las) (?:selle|cerre|tape))"),
    # --- "bota el aire por el macho"
    Plainer(("bota ", "botan ", "botando "), rf"\b(?P<x>bota(?:ndo|n)?)(?= {_BLOWN}\b)", (("x", "tira"),)),
    # --- "la plancha chupó agua": wet
    Plainer((" agua", " humedad"), r"\b(?P<x>(?:se )?(?:chupo|chuparon|absorbio|agarro|jalo|tomo|trago|recogio|cogio) (?:(?:mucha|bastante|toda el|algo de|un poco de|tantita) )*(?:agua|humedad))(?= *(?:$|[,;.]| (?:y|de|en|por|del|desde|cuando|ayer|anoche|con|porque|pero|todo|toda|el|la)\b))", (("x", "se mojó"),), unless=r"\b(?:aspiradora|vac|esponja|trapos?|toallas?|bomba|franela|jerga|mopa|manguera|no (?:se )?(?:chupo|absorbio|agarro|jalo|tomo))\b"),
    # --- "ya no había malla", "no traíamos malla ni mástique": the fabric of a mend, and no scrim that does not show through the tape
    Plainer((" malla", "malla"), r"\b(?P<v>no (?:me |nos |se |le )*(?:habia|hubo|hay|traia|traiamos|traigo|trajeron|trajo|tenia|teniamos|tengo|tenemos|quedaba|quedo|alcanzo|encontre|encontramos|halle|llego|dieron|mandaron)(?: (?:mas|ya|nada de|ni|suficiente|bastante|la|de la|aqui|a la mano))*|(?:se )?(?:me |nos )?(?:acabo|termino|agoto)(?: la)?|(?:me |nos )?falto(?: la)?|sin (?:tener|traer)|por falta de|a falta de) (?:(?:mastique|mastic),? (?:ni|y) (?:la |de )?)?(?P<x>malla)(?: de vidrio| de fibra)?\b(?! (?:a la vista|visible|por ningun|en ningun|marcada|abajo|que se))", (("x", "material"),), unless=r"\bmalla (?:no )?(?:se (?:ve|vea|alcanza|nota|mira)|visible|a la vista)|\b(?:ver|vea|vi|veo) (?:la )?malla"),
    # --- hooks that bear the duct
    Plainer(("ganchos",), rf"\b(?P<x>ganchos)(?= [^.;]{{0,48}}?\b(?:a )?cada (?:{COUNT})(?: y medi[oa])? pies?\b)", (("x", "colgantes"),)),
    # --- a riser by its number
    Plainer(("riser ", "montante ", "bajante "), rf"(?:^|(?<=[.;,] )|(?<=el )|(?<=al ))(?P<x>riser|montante|bajante)(?= (?:numero )?(?!(?:un|una|dos|tres|cuatro|cinco|seis|[1-6])\b){MARK}(?! (?:pisos?|niveles|plantas|pies|pulgadas?|por|x|grados|y)\b))", (("x", "pieza"),), beside=("piso", "nivel", "planta")),
    # --- what hangs on which piece: "damper de ochenta libras en el tramo 80"
    Plainer((" del tramo ",), rf"\b(?:damper|compuerta|humidificador|silenciador|serpentin|coil|calentador|motor|ventilador|valvula|actuador|difusor)\b[^.;]{{0,40}}? del (?P<x>tramo)(?= (?:numero )?{MARK}\b)", (("x", "recto"),), beside=("libras", "lbs", "kilos", "soporte", "colgante propio", "colgo aparte", "pesa")),
    Plainer((" libras en ", " libras sobre ", " lbs en "), rf"(?P<x>(?:(?:hay|va|puse|pusimos|lleva|tenemos) )?(?:un |el )?(?P<t>damper|motor|difusor|actuador|calentador|coil|serpentin) de (?P<w>{COUNT}) (?:libras|lbs) (?:en|sobre) (?P<p>{_PIECE}))(?= )", (("x", r"\g<p> tiene un \g<t> de \g<w> libras,"),)),
    # --- a hole in the board as big as some thing, which is no gap of a joint; one that nobody has closed
    Plainer(("hueco ", "huequito ", "boquete "), rf"\b(?P<x>hueco|huequito|boquete)(?= (?:(?:como|casi|mas o menos|que es|mas grande que) )*(?:(?:del?|de) (?:el )?(?:tamaño|porte|grueso|grosor) de|(?:como )?de) (?:una?|mi|dos) {_THING}\b(?!.{{0,12}} {_JOINED}))", (("x", "hoyo"),), unless=_CUT_OUT),
    Plainer(("boquete",), rf"\b(?P<x>boquete)(?![^.;]{{0,24}} {_JOINED})", (("x", "hoyo"),), unless=_CUT_OUT, beside=("sin reparar", "sin tapar", "sin parchar", "sin arreglar", "no lo repar", "no lo tap", "no lo he repar", "no lo he tap", "asi lo deje", "asi se quedo")),
    # --- "se le hundió un lado …, hay que cambiarle el pedazo": the harm is to be mended
    Plainer(
        ("cambiar", "arreglar", "sustituir", "reemplazar", "parchar", "remendar"),
        r"\b(?:hay que|habra que|tengo que|tenemos que|toca|falta|habria que) (?P<x>(?:cambi|arregl|sustitu|reemplaz|parch|remend)[aei]r(?:le|les)? (?:el|ese|la|esa|un|una|otro) (?:pedazo|pedacito|lado|esquina|panel|lamina|plancha|cacho|parte|tabla|cara|orilla))(?= *(?:$|[,;.]| y | que | porque | mañana| luego| despues| (?:las|los|el|la) (?:grapas|cinta|tape|teip|aletas|resto|demas)| grapad| encintad))",
        (("x", "repararlo"),),
        beside=("hundi", "aplast", "raj", "rasg", "rompi", "moj", "abolla", "sumi", "quebr", "golpe", "parti", "machuc"),
    ),
    # --- "al tape no le hemos pasado la paleta": it is not rubbed yet
    Plainer((" pasado ", " dado "), rf"\b(?P<x>no (?:se )?(?:les?|la|lo) (?P<h>he|ha|hemos|han) (?:pasado|dado) (?:con )?{_TOOL}(?: (?:al|a la) (?:cinta|tape|teip))?)\b", (("x", r"no lo \g<h> frotado"),), beside=("cinta", "tape", "teip", "encint")),
    Plainer((" paso ", " pasamos ", " doy ", " damos "), rf"\b(?P<x>(?P<y>todavia|aun) no (?:se )?(?:les?|la|lo) (?:paso|pasamos|doy|damos) (?:con )?{_TOOL}(?: (?:al|a la) (?:cinta|tape|teip))?)\b", (("x", r"\g<y> no lo he frotado"),), beside=("cinta", "tape", "teip", "encint")),
    # --- "no le pusimos nada al tape": it was not rubbed
    Plainer((" puse n", " pusimos n", " eche n", " echamos n", " meti n", " pase n", " pasamos n"), r"\bno (?:se )?les? (?P<x>(?:puse|pusimos|eche|echamos|meti|pase|pasamos) (?:nada|na'?)) (?=(?:al?|a la) (?:cinta|tape|teip)\b)", (("x", "hice nada"),)),
    # --- holes that stay open are not mended
    Plainer((" abiert", " destapad", " al aire", " descubiert"), r"\b(?:piquetes?|hoyos?|hoyitos?|agujeros?|agujeritos?|raj(?:ada|on|a)s?|rasgon(?:es)?|rasgaduras?|roturas?|perforacion(?:es)?|boquetes?|ponchaduras?|golpes?)\b(?: (?!no\b|ni\b|junta|union|grap)\w+){0,6}? (?P<x>(?P<v>quedo|quedaron|sigue|siguen|esta|estan|anda|dejamos|deje|se quedo|se quedaron) (?:(?:asi|todavia|aun|tod[oa]s|ahi) )*(?:abiert[oa]s?|destapad[oa]s?|al aire|descubiert[oa]s?))(?= *(?:$|[,;.]| en | porque | y | pues ))", (("x", r"\g<v> sin reparar"),)),
    # --- "mi hermano, el codo nueve …": he speaks to him, and it is no work of his
    Plainer(
        tuple(f"mi {one}," for one in _KIN),
        rf"(?:^|(?<=oye )|(?<=oiga )|(?<=mira )|(?<=mire )|(?<=bueno )|(?<=pues )|(?<=[.;,] ))(?P<x>(?:oye |oiga |mira |mire |bueno |pues )?mi (?:{'|'.join(_KIN)}), )(?=(?:(?:te|le|les) (?:cuento|digo|reporto|informo|aviso|platico)\b|mir[ae]\b|oye\b|oiga\b|fijate|fijese|ahi (?:te|le) va|ya (?:quedo|esta|termine|acabe)|(?:(?:ya|aqui|ahi) )*(?:(?:el|la|al|a la|los|las|en el|en la|para el|para la) )?(?:{KIND}|{MARK})\b))",
        (("x", ""),),
        unless=r"\b(?:l[oa]s?|le) (?:hizo|armo|(?:en)?grapo|encinto|tallo|puso|termino|corto|colgo|dejo|saco)\b",
    ),
    # --- "ele de noventa": an elbow
    Plainer(("ele ",  "ele, "), rf"\b(?P<x>(?:una |la )?ele)(?= (?:de|a) (?:noventa|cuarenta y cinco|treinta|90|45|30)\b|,? (?:de )?{COUNT} (?:por|x) {COUNT}\b|,? (?:noventa|cuarenta y cinco|90|45) grados)", (("x", "codo"),)),
    # --- "una cortada de una pulgada de ancho en el aluminio": the foil is cut there, and no piece to its length
    Plainer((" cortad", " corte", "cortada ", "cortadita "), rf"\b(?:hay|tiene|trae|traia|tenia|quedo|hizo|hice|hicimos|hicieron|dio|di|ve|vi|encontre|halle|con|pego|lleva) (?P<x>(?:(?:una|un|otra|otro) )?(?:cortad(?:a|ita|on)|corte(?:cito)?)(?: de (?:navaja|cuchillo|cutter))?)(?= (?:{_AS_BIG} ){{0,2}}(?:(?:en|sobre|por|a) (?:el|la|un|una)|al) {_FACE}\b)", (("x", "una rajada"),)),
    Plainer((" cortad",), rf"\b(?:hay|tiene|trae|traia|tenia|quedo|hizo) (?P<x>(?:una|otra) cortad(?:a|ita))(?= {_AS_BIG} *(?:$|[,;.]))", (("x", "una rajada"),), beside=("foil", "aluminio", "papel", "forro", "facing", "de ancho", "parch", "repar", "remend")),
    Plainer((" raya", " abertura", " rendija", " raspada", " zanja"), rf"\b(?P<x>(?:se (?:me |nos )?le|se (?:me|nos)|le|me le) (?:abrio|hizo|abrieron|hicieron|quedo) una (?:raya|rayada|abertura|rendija|raspada|zanja))(?= (?:{_AS_BIG} ){{0,2}}(?:(?:en|sobre|por|a) (?:el|la)|al) (?:foil|aluminio|papel|forro|facing|barrera|recubrimiento)\b)", (("x", "trae una rajada"),)),
    # --- "lo metí en el hoyo": the opening that a collar goes into
    Plainer(
        ("hoyo", "agujero"),
        rf"\b(?:(?:met|entr|encaj|puse|pusimos|coloqu|coloc|asent|embon|ajust|present|pas|instal)\w* (?:(?:just[oa]|justit[oa]|bien|parej[oa]|a presion|derecho) )*(?:en|por|al?|dentro de|adentro de) ?(?:el|su|l|mi)|(?:abri|abrimos|hice|hicimos|corte|cortamos|trace|trazamos|marque|saque) (?:el|su|mi|un)|(?:el|su)) (?P<x>hoyo|agujero)(?= (?:l[oa] (?:hice|hicimos|corte|abri|trace|marque|saque|deje)|es de|mide|me quedo de|para (?:el|la|su)|del collar|de {COUNT}\b|en el (?:ducto|tronco|trunk|panel|lado)|del (?:ducto|tronco))|[,;.]| y |$)",
        (("x", "sitio"),),
        beside=("collar", "spin", "starting", "bota ", "boot", "cuello", "toma ", "salida redonda", "takeoff"),
        unless=r"\b(?:hoyo|agujero)\b[^.;]{0,40}(?:sin (?:repar|parch|tapar)|parch|repar|de mas|por error|de navaja|desarmador|foil|forro)|\b(?:parch|repar|tap)\w+ (?:el|un) (?:hoyo|agujero)",
    ),
    # --- "al aire libre y sin nada que lo tape": nothing over it, and no harm unmended
    Plainer((" tape", " cubra", " proteja"), r"(?P<x>,? ?(?:y )?(?:sin|no (?:hay|tiene|lleva)) (?:nada|techo|ningun techo|una? \w+) (?:que )?(?:l[oa]s? )?(?:tape|cubra|proteja)(?: (?:del? |la |el )*(?:sol|lluvia|agua|aire))*)(?= *(?:$|[,;.]| y ))", (("x", ""),), unless=r"\bque (?:le )?tape (?:la|el|las|los) (?:junta|costura|hoyo|union|esquina|orilla)"),
    Plainer((" tape la", " tape las", " tapen la"), r"\b(?P<x>no (?:hay|tiene|lleva|habia|le puse|le pusimos) nada que (?:l[oae]s? )?tapen? (?:la|las|todas las) (?:juntas?|costuras?|uniones|union)(?: todavia| aun)?)(?= *(?:$|[,;.]| y ))", (("x", "no lleva cinta"),)),
    # --- "las aletas las tengo montadas": the vanes are in, and no piece hangs
    Plainer((" montad",), r"\b(?:aletas|vanes|alabes|guias)(?: (?:ya|las|los|todas|tengo|estan|quedaron|van|me|bien|si))* (?P<x>montad[oa]s)\b", (("x", "puestas"),)),
    # --- "le pusimos teip sobre lo aplastado": over the harm
    *(
        Plainer((" lo aplast", " lo golpe", " lo hund", " lo sumid", " lo aboll", " lo machuc", " lo rot", " lo rasg", " lo raj", " lo cort", " lo romp"), rf"\b(?P<x>(?:sobre|encima de|arriba de|por encima de|en|a) lo (?:{harmed}))(?= *(?:$|[,;.]| y | pero | asi ))", (("x", means),))
        for harmed, means in (("aplastado|golpeado|hundido|sumido|abollado|machucado", "encima del golpe"), ("roto|rasgado|rajado|cortado", "encima de la rajada"))
    ),
    # --- "me equivoqué con la cinta": what he did wrong, and not what he did
    Plainer(("me equivoque con", "nos equivocamos con", "regue con", "regamos con", "falle con", "error con", "la pata con"), r"\b(?:me equivoque|nos equivocamos|la regue|la regamos|falle|(?:hubo|cometi|hice) un error|meti la pata) (?P<x>con)(?= (?:la |las |el |los )?(?:cinta|teip|tape|grapas?|staples|aletas|vanes|mastique|medida|tallada)\b)", (("x", "en"),)),
    Plainer(("me equivoque con", "me equivoque en", "nos equivocamos con", "nos equivocamos en"), rf"\b(?P<x>(?:me equivoque|nos equivocamos) (?:con|en)) (?=(?:la|el) {KIND} (?:numero )?{MARK},? (?:(?:que )?(?:no )?(?:es|era|son|lleva|va|tiene|mide)\b|la medida))", (("x", "perdón,"),)),
    *(
        Plainer((f"equivoque de {cue}", f"equivocamos de {cue}"), rf"(?P<x>\b(?:me equivoque|nos equivocamos) de (?:{said}),? (?:y |porque |pues )*(?:le |les )?(?:puse|use|meti|agarre|eche|pusimos) (?:(?:las|unas|la|el|una) )?)(?=de (?:{FRAC}|{COUNT})\b)", (("x", f"le puse {said.split('|')[0]} "),))
        for cue, said in (("grapa", "grapas|grapa"), ("cinta", "cinta"), ("teip", "teip"), ("tape", "tape"))
    ),
    # --- "me equivoqué, no es de veinte por doce, es de veinte por diez": set right
    Plainer(("me equivoque,", "nos equivocamos,", "me equivoque:", "la regue,", "me equivoque no ", "me equivoque es "), r"(?:^|(?<=[,;.] )|(?<=es que )|(?<=y ))(?P<x>(?:me equivoque|nos equivocamos|la regue)[,:;]? )(?=(?:(?:la|las|el|los) \w+ )?(?:no (?:es|era|son|eran|van?|llevan?|tienen?|mide|miden)\b|es (?:de )?\d|es de |son |mide |eran? ))", (("x", "perdón, "),)),
    # --- "al codo 90 le di el ángulo de noventa": its number, where the turn is told beside it
    Plainer(("codo 90", "codo noventa", "codo 45", "codo cuarenta y cinco"), r"\b(?:el|al|del|un) codo(?P<x>) (?:90|45|noventa|cuarenta y cinco)(?! grados)\b(?=[^.;]{0,60}?\b(?:angulo|vuelta|giro|quiebre|a noventa|a cuarenta y cinco|a 90|a 45|noventa grados|90 grados|45 grados|cuarenta y cinco grados)\b)", (("x", " número"),)),
    # --- a panel that is wet, where tape is told of too: the board, and not only its face
    Plainer(("mojad", "empapad"), r"\b(?:panel|lamina|tablero|tabla|board|plancha)(?P<x> (?:(?:me|se|nos|ya|todo|medio|bien) )*(?:esta|quedo|viene|vino|llego|anda|amanecio|salio) (?:(?:todo|toda|medio|bien|algo) )*(?:mojad|empapad)[oa])(?= (?:de|en|por|con) (?:una|un|la|el|l|las|los|toda|todo|abajo|arriba|agua)\b| *(?:$|[.;]))", (("x", " se mojó"),), unless=r"\b(?:seque|secamos|seco|no (?:esta|quedo|viene)|cambi\w+|encinte con el panel)\b"),
)
