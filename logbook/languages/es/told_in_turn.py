"""Spanish of two pieces of which the second is told by its number and its measure alone: "cinta de tres en la 404 y de dos en la 405".

The words that it shares with the first are put back beside it. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, FRAC, KIND, MARK, STOP
from logbook.languages.plainer import Plainer

_NOUN = r"(?:cinta|foil|tape|teip|grapas?|staples?|cross tabs|tabs|vanes|aletas|aspas)"
_FAR = rf"(?:{COUNT}|{FRAC})(?: y (?:medi[ao]|un cuarto|tres cuartos))?(?: pulgadas?)?"
_SORT = r"(?:de (?:tela|ducto|papel|lona|aluminio|pintor)|gris|masking|181a-[phm])"
_VALUE = rf"(?:(?:(?:de|a|cada|de a|con) )+{_FAR}|{_SORT})"
_ONE = rf"(?:{KIND} |end cap |manga |bajada )?(?:numero )?{MARK}"
_AT = r"(?:(?:en|a|de|para|por|con) (?:la|el)|al|del)"
_THEN = r"(?:,|;|\.| y| pero)+"
_IS = r"(?:es|son|va|van|quedo|quedaron|mide|miden|anda|andan|esta|estan|(?:se )?(?:me )?fue|(?:se )?(?:me )?fueron)"
_PUT = r"(?:(?:l[ea]s? )?(?:puse|pusimos|use|usamos|eche|meti|va|van|lleva|llevan) )?"
_NOUNS_CUES = ("cinta", "foil", "tape", "teip", "grapa", "staple", "tabs")
_ACT = r"(?:(?:en)?grapad[oa]s?|encintad[oa]s?|teipead[oa]s?|tallad[oa]s?|con (?:cinta|grapas?|tape|teip|foil)|(?:lleva|tiene|trae) (?:cinta|grapas?|tape|teip|foil))"
_SIDES = r"(?:lados?|caras?|costados?|costuras?)"
_SO_MANY = r"(?:un[oa]?|dos|tres|cuatro|[1-4])"
_PLACE = r"(?:enterrad[oa]|afuera|por fuera|bajo tierra|debajo|abajo de la|en (?:el|la|lo)|adentro|a la intemperie)"
_MOVES = r"(?:cierra|baja|abre|sube|entra|sale|se mete|se abre|cae)"
_APART = rf"(?:(?:a|cada|de a|a cada) {_FAR})"
_PART = r"(?:(?:la|el|las|los|una|un) )?(?:(?:garganta|costura|junta|esquina|union|orilla|cara|talon|ceja|solapa|lado|parte|punta|boca)s?(?: de (?:arriba|abajo|atras|adelante|enfrente|afuera|adentro|la \w+))?|arriba|abajo|atras|adelante)"

SPANISH_TOLD_IN_TURN = (
    # --- "noventa grados las aletas las tengo que poner todavía": what is told of stands ahead, and begins a clause
    Plainer(
        tuple(f" {thing} {it}" for thing in ("aletas", "guias", "vanes", "alabes", "direccionales", "grapas", "lenguetas") for it in ("las ", "los ", "no ", "me ", "se ", "todavia ", "aun ")) + tuple(f" {thing} {it}" for thing in ("cinta", "tape", "teip", "foil", "fibra") for it in ("la ", "lo ", "se ", "me ", "no la ", "no lo ", "todavia ")),
        r"(?:\d|grados|pulgadas|pies|ad[oa]s?|once|doce|trece|catorce|quince|seis|siete|ocho|nueve|diez|dos|tres|cuatro|cinco|veinte|treinta|cuarenta|noventa|bien|lados|run)(?P<x> )(?=(?:las aletas|las guias|los vanes|las vanes|los alabes|las direccionales|las grapas|las lenguetas|la cinta|el tape|el teip|el foil|la fibra) (?:todavia |aun |ya |no )?(?:se |me |nos )?(?:las|los|la|lo) (?!de\b|que\b|del\b|\w+ad[oa]s?\b))",
        (("x", ", "),),
    ),
    # --- the vanes that somebody has yet to bring
    Plainer(
        ("traer", "mandar", "surtir", "entregar", "enviar", "conseguir", "dar ", "llegar"),
        r"\b(?P<x>(?P<n>(?:las |los )?(?:aletas|guias|vanes|alabes|direccionales))(?: (?:todavia|aun|pues|esas|esos|siguen|apenas|ahorita))* (?:(?:me|nos) )?(?:las |los )?(?:(?:todavia|aun|apenas) )?(?:me |nos )?(?:tienen que|van a|quedaron de|iban a|estan por|deben de|hay que)(?: ir a)? (?:traer|mandar|surtir|entregar|enviar|conseguir|dar|llegar)(?:me|nos)?(?:las|los)?(?: (?:todavia|aun|mañana|manana|al rato|luego|hoy|el \w+|del? \w+))*)(?= *(?:$|[,;.]| y\b| pero\b| asi\b))",
        (("x", r"faltan \g<n>"),),
    ),
    # --- told without stops: "por tres lados encintada los cuatro", "el plano pide aletas ya se las puse", "pendiente arriba plana abajo"
    Plainer((" lados ", " lado "), r"por (?:los )?(?:un|dos|tres|cuatro|[1-4]) lados?(?P<x> )(?=(?:encintad|teipead|grapad|engrapad|tallad|frotad)[oa] )", (("x", ", "),)),
    Plainer(("aletas ya ", "vanes ya ", "alabes ya ", "grapas ya ", "cinta ya ", "mastique ya "), r"(?:pide|lleva|dice|marca|quiere)n? (?:las |los |la |el )?(?:aletas|vanes|alabes|grapas|cinta|mastique)(?P<x> )(?=ya (?:se )?(?:l[oa]s?|le|les) (?:puse|pusimos|di|meti|metimos|tiene|lleva))", (("x", ", "),)),
    Plainer(("arriba plan", "abajo plan", "izquierdo plan", "derecho plan"), r"(?:arriba|abajo|izquierd[oa]|derech[oa])(?P<x> )(?=plan[oa] (?:por |de )?(?:arriba|abajo|los? |lad|d))", (("x", ", "),)),
    Plainer(("da me falta", "do me falta", "da nos falta", "do nos falta", "da le falta", "do le falta"), rf"(?P<x>(?:la |el )?(?P<a>tall|encint|engrap|grap|frot|limpi)ad[oa] (?:me|nos|le) falta){STOP}", (("x", r"falta \g<a>ar"),)),
    Plainer((" va complet", " va tod", " va bien", " esta complet", " esta bien", " quedo complet", " quedo bien", " si va ", " si esta ", " si quedo "), r"(?!(?:con|toda|todo|pero|y|que|si|de|en|a)\b)\w+(?P<x> )(?=(?:la cinta|el teip|las grapas|los vanes|las aletas|la tallada|el tallado) (?:si )?(?:van?|estan?|quedo|quedaron) (?:si |toda |muy )*(?:complet[oa]s?|bien|tod[oa]s?|perfect[oa]s?|parej[oa]s?)\b)", (("x", ". "),), unless=r"(?:no se|a ver|saber|pregunt\w+|checa\w*|revis\w+) (?:si|que)"),
    Plainer((" lo ", " la "), r"\bel [\w]+ (?:si |no )?(?P<l>lo|la) (?P<v>tall|encint|engrap|grap|limpi)e(?P<x> )(?=el [\w]+ (?:si |no )(?P=l) (?P=v)e\b)", (("x", ", "),)),
    # --- "tiras cruzadas de cinta": the tabs across the joint, and not its tape
    Plainer(("cruzadas de cinta", "atravesadas de cinta", "cruzados de cinta", "cruzadas de tape", "cruzadas de teip"), r"(?:tiras?|tiritas|tirillas|pedazos|pestañas)(?P<x> (?P<c>cruzad[oa]s|atravesad[oa]s) de (?:cinta|tape|teip))\b", (("x", r" de cinta \g<c>"),)),
    # --- "tres en doce de pendiente": the slope, and nothing that waits
    Plainer((" de pendiente", " de caida", " de inclinacion"), rf"(?<!\w)(?P<x>(?P<a>{COUNT}) en (?P<b>{COUNT}) de (?:pendiente|caida|inclinacion))(?![\w'])", (("x", r"pendiente de \g<a> en \g<b>"),)),
    # --- "el izquierdo entra dos y el derecho entra dos, atrás los dos quince"
    Plainer(("los dos ", "ambos "), rf"(?P<s>(?:el )?(?:lado )?(?:izquierdo|derecho)) (?P<w>entra|sale) (?P<n>{COUNT})(?P<x>,? y el (?:lado )?(?:derecho|izquierdo) (?P=w) (?P=n)[,.]? (?:atras (?:los dos|ambos|en los dos)|los dos atras|los dos|ambos) )(?={COUNT}\b)", (("s", "los dos lados"), ("w", r"\g<w>n"), ("x", ", atras "))),
    # --- "noventa grados, con aletas": the turn, and not how warm it is
    Plainer((" grados",), r"(?<!de )(?<!a )(?<!esta )(?P<x>(?:noventa|cuarenta y cinco|90|45) grados)(?=,? (?:y )?(?:con |lleva |tiene |trae )(?:sus? |las |los )?(?:aletas|vanes|alabes|guias|direccionales))", (("x", r"codo de \g<x>"),), beside=("codo", "vuelta")),
    # --- "foil de dos y media en la 404 y de dos en la 405", "le puse cinta de tres al codo 5 y de dos al 6"
    Plainer(
        _NOUNS_CUES,
        rf"\b(?P<x>{_PUT}(?P<t>{_NOUN}) (?P<a>{_VALUE}) {_AT} (?P<p>{_ONE}){_THEN} (?:{_NOUN} )?(?P<b>{_VALUE}) {_AT} (?P<q>{_ONE}))(?= *(?:$|[,;.]| y\b| pero\b))",
        (("x", r"el \g<p> lleva \g<t> \g<a>. El \g<q> lleva \g<t> \g<b>"),),
    ),
    # --- "a la 18 le tocó cinta 181A-P de tres y a la 19 181A-P de dos"
    Plainer(
        _NOUNS_CUES,
        rf"\b(?P<x>(?:a la|al|en la|en el) (?P<p>{_ONE}),? (?:le |se le )?(?:toco|tocaron|puse|pusimos|meti|eche|di|va|lleva) (?P<t>{_NOUN})(?P<s>(?: 181a-[phm])?) (?P<a>(?:de|a|cada) {_FAR}){_THEN} (?:a la|al|en la|en el) (?P<q>{_ONE}),? (?:(?:le |se le )?(?:toco|tocaron|puse|pusimos|meti|eche|di|va|lleva) )?(?:{_NOUN} )?(?P<r>(?:181a-[phm] )?)(?P<b>(?:de|a|cada) {_FAR})(?:,? porque (?:ya )?(?:se (?:me |nos )?(?:acabo|termino|acabaron)|no (?:habia|hubo|alcanzo|quedaba)) (?:mas |de )*(?:la |las )?[a-z]+)?)(?= *(?:$|[,;.]| y\b| pero\b| porque\b| pues\b))",
        (("x", r". El \g<p> lleva \g<t>\g<s> \g<a>. El \g<q> lleva \g<t> \g<r>\g<b>"),),
    ),
    # --- "181A-H, la de calor, pero en dos pulgadas y media": how wide it is
    Plainer(("181a",), rf"181a-[ph](?P<y>(?:,? (?:la|el) de (?:calor|presion|plancha|planchar))?)(?P<x>,? (?:pero |nomas que |nomas |solo que |solo )*en (?:la medida de |medida de |el ancho de |ancho de |rollo de )?)(?={_FAR}(?:(?<=pulgadas)|(?<=y media)| de ancho)(?= *(?:$|[,;.]| y | engrap| encint| tall| frot| bien | limpi| de ancho)))", (("y", ""), ("x", " de ")), unless=r"\b181a-[ph][^.;]{0,30} en (?:la|las|el|los|un|una) \w+ en "),
    # --- a tape that is on no list
    Plainer(("list", "aprobad", "certificad", "clasificad"), r"(?:cinta|tape|teip)(?: \w+)?(?P<x>,? que no (?:esta|viene|va|sale|aparece|es)(?: de las?)? (?:listad[oa]s?|en (?:la|el) list\w+|aprobad[oa]|certificad[oa]|clasificad[oa]))(?![\w'])", (("x", " sin listar"),)),
    # --- "la cinta de la 404 es de tres y la de la 405 de dos"
    Plainer(
        _NOUNS_CUES,
        rf"\b(?P<x>(?:las?|los|el) (?P<t>{_NOUN}) {_AT} (?P<p>{_ONE}),? (?:{_IS} )?(?P<a>{_VALUE}){_THEN} (?:las?|los|el) (?:{_NOUN} )?{_AT} (?P<q>{_ONE}),? (?:{_IS} )?(?P<b>{_VALUE}))(?= *(?:$|[,;.]| y\b| pero\b))",
        (("x", r"el \g<p> lleva \g<t> \g<a>. El \g<q> lleva \g<t> \g<b>"),),
    ),
    # --- "el 77 va grapado a tres, el 78 a dos"
    Plainer(("grapad",), rf"\b{_ONE},? (?:(?:va|esta|quedo|lo deje|la deje) )?(?P<t>(?:en)?grapad[oa]s?) {_VALUE}{_THEN} (?:el|la) {_ONE},?(?P<y> (?:se me fue )?)(?={_VALUE}{STOP})", (("y", r" \g<t> "),)),
    Plainer((" de grapa",), rf"\b{_ONE},? (?P<x>(?:(?:me )?(?:va|esta|quedo|anda)|lleva) (?P<a>(?:a|cada|a cada) {_FAR}) de grapas?)\b", (("x", r"grapado \g<a>"),)),
    Plainer((" se me fue a ",), rf"\bgrapas?\b[^.]{{0,40}}{_THEN} (?:el|la) {_ONE},?(?P<y> se me fue )(?=a (?:cada )?{_FAR}(?: |$|[,;.]))", (("y", " grapado "),)),
    # --- "la 258 con cinta en las cuatro caras, la 259 en tres"
    Plainer(
        ("cinta", "grapa", "encintad", "tape", "teip", "foil"),
        rf"\b{_ONE},? (?:(?:va|esta|quedo) )?(?P<t>{_ACT}) (?:en|por|de) (?:l[oa]s )?{_SO_MANY} {_SIDES}{_THEN} (?:el|la|al|a la) {_ONE},?(?P<y> )(?:(?:nomas|solo|nada mas) )?(?:en|por|de|a) (?:l[oa]s )?{_SO_MANY}(?P<z>(?: {_SIDES})?){STOP}",
        (("y", r" \g<t> "), ("z", " lados")),
    ),
    # --- "el foil de la 300 trae su sello, en la 301 usé uno de tela"
    Plainer((" uno de ", " una de ", " uno gris", " una gris"), rf"\b(?:cinta|foil|tape|teip)\b[^.]{{0,60}}{_THEN} (?P<x>{_AT} (?P<q>{_ONE}) (?:(?:le|yo|nomas) )*(?:use|usamos|puse|pusimos|eche) un[ao]? (?P<b>{_SORT}))(?= *(?:$|[,;.]| y\b))", (("x", r"el \g<q> lleva cinta \g<b>"),)),
    # --- "por la 371 pasa aire a 140 y por la 372 a 265"
    Plainer(
        (" aire ",),
        rf"(?P<x>(?:por|en) (?:la|el) (?P<p>{_ONE}) (?:pasa|corre|va|sale|lleva) (?:el )?aire a (?P<a>\d{{2,3}})(?: grados)?{_THEN} (?:por|en) (?:la|el) (?P<q>{_ONE}) (?:(?:pasa|corre|va|sale|lleva) )?a (?P<b>\d{{2,3}})(?: grados)?)(?= *(?:$|[,;.]))",
        (("x", r"el \g<p> lleva aire a \g<a> grados. El \g<q> lleva aire a \g<b> grados"),),
    ),
    # --- "la 175 cierra cuatro en 24 y la 176 cinco", "... y la 176 cierra cinco en el mismo largo"
    Plainer(
        (" en el mismo", " en la misma", " en lo mismo", " y la ", " y el ", ", la ", ", el "),
        rf"\b{_ONE},? (?P<v>{_MOVES}) {_FAR} en (?P<n>{COUNT})(?: pulgadas)?{_THEN} (?:la|el) {_ONE},?(?P<y> (?:{_MOVES} )?)(?={_FAR})(?:{_FAR})(?P<z>(?: en (?:el mismo (?:largo|tramo)|lo mismo|la misma (?:distancia|medida)|{COUNT}))?)(?= *(?:$|[,;.]))",
        (("y", r" \g<v> "), ("z", r" en \g<n>")),
        beside=("cierra", "baja ", "abre ", "sube ", "entra ", "sale ", "mete ", "cae "),
    ),
    # --- "el 378 va en el ático y el 379 enterrado"
    Plainer((" enterrad", " afuera", " fuera", " tierra", " intemperie"), rf"\b{_ONE},? va {_PLACE}[^.;,]{{0,24}}?{_THEN} (?:el|la) {_ONE},?(?P<y> )(?={_PLACE}\b)", (("y", " va "),)),
    # --- "a dos en toda la transición menos en la costura de abajo, ahí van a cuatro", "y en la garganta a tres": of a part, and no piece's measure
    Plainer(
        ("grapa", "grapad"),
        rf"(?:\b(?:en)?grap\w*\b[^.;]{{0,60}}? {_APART}|\b{_APART} de grapas?)(?! (?:pies|lados)\b)[^.;]{{0,48}}?(?P<x>(?:,| y| pero| menos| excepto| salvo| nomas que| solo que)+ (?:l[oa]s? de )?(?:en |por )?{_PART},? (?:(?:que|donde|ahi|alli|en donde|y) )*(?:(?:se )?(?:me )?(?:van?|andan?|quedo|quedaron|fue|fueron|es|son|estan) )?)(?={_APART}(?: *(?:$|[,;.])| y\b| pero\b))",
        (("x", " y abajo grapado "),),
        beside=("garganta", "costura", "junta", "esquina", "union", "orilla", "cara ", "talon", "ceja", "solapa", "parte", "punta", "boca", "arriba", "abajo", "atras", "adelante"),
    ),
    # --- meant and done: "quería ponerle cinta de tres pero no había y le puse de dos"
    Plainer(
        (" puse de ", " poniendole de ", " use de ", " eche de ", " pusimos de ", " puse a ", " puse cada "),
        rf"(?P<x>(?:le |les )?(?:queria|quise|iba a|ibamos a|pensaba|tenia que|tocaba) (?:poner|usar|echar|meter|dar)(?:le|les)? (?P<t>{_NOUN}) {_VALUE} ?)[^.;,]{{0,40}}?(?P<z>(?:,| y| pero| nomas que| porque| ya| pues)* ?(?:no (?:habia|hubo|alcanzo|quedaba|tenia|traia|llego|me alcanzo)(?: \w+)?(?:,| y| asi que)+ )?(?:(?:acabe|termine) poniendole|(?:le |les )?(?:puse|use|eche|pusimos))) (?={_VALUE})",
        (("x", ""), ("z", r" le puse \g<t>")),
    ),
    Plainer((" acabaron ", " terminaron ", " quedaron ", " salieron ", " se fueron ", " acabo "), rf"(?P<x>(?:eran|iban|era|iba|tenian que|debian) (?:(?:pa|para|a|que) )?(?:ir |quedar |ser )?{_APART}(?:,| y| pero)+ (?:me |se |nos )*(?:acabaron|terminaron|quedaron|salieron|fueron|acabo)) (?={_APART})", (("x", "van"),)),
    # --- "los tabs del end cap 140 me quedaron de cinco de largo": of the tabs, and not of the piece
    Plainer((" de largo",), rf"(?P<x>(?:los |las )?(?P<t>(?:cross )?tabs) (?:del|de la|en el|en la) (?P<q>{_ONE}) (?:(?:me|nos|se) )?(?:quedaron|son|van|salieron|miden|estan)(?: de)? (?P<n>{COUNT}) de largo)(?= *(?:$|[,;.]| y\b))", (("x", r"el \g<q> lleva \g<t> de \g<n> de largo"),)),
    # --- "dos pulgadas justas mide la cinta del 304"
    Plainer((" mide la ", " mide el ", " midio la ", " midio el ", " tiene la cinta"), rf"(?P<x>(?P<n>{_FAR})(?: (?:justas|exactas|cerradas|nomas))? (?:mide|midio|tiene) (?P<t>la cinta|el foil|el tape|el teip) (?:del|de la|en el|en la) (?P<q>{_ONE}))(?= *(?:$|[,;.]| y\b))", (("x", r"el \g<q> lleva cinta de \g<n>"),)),
    # --- "codo cuadrado 31", "tallé el plenum 310 por tres lados": its number, and no size
    Plainer(("codo cuadrado ", "codo recto ", "codo de garganta cuadrada "), rf"(?P<x>codo (?P<s>cuadrado|recto|de garganta cuadrada) (?P<n>(?:numero )?{MARK}))(?= (?!por|x|pulg|grados|y media)|[,.;:]|$)", (("x", r"codo \g<n> \g<s>"),)),
    Plainer((" por tres lad", " por dos lad", " por un lad", " por los ", " por las ", " por tres car", " por dos car"), rf"\b{KIND} (?:numero )?{MARK}(?P<x> por) (?=(?:l[oa]s )?(?:un|dos|tres|cuatro|[1-4]) {_SIDES}\b)", (("x", " en"),)),
    # --- "le entra la navaja por la esquina de la junta": open
    Plainer(
        ("cabe ", "entra ", "cupo ", "entro "),
        r"(?<!no )(?<!no me )(?<!no le )(?<!ni )(?P<x>\b(?:le |me |se le )?(?:cabe|entra|cupo|entro) (?:la |el |una? )?(?:hoja de (?:la |mi |una )?)?(?:navaja|espatula|desarmador|pluma|tarjeta|dedo|uña|moneda|regla))(?= (?:en|por|entre) (?:la |una |las |el )?(?:junta|esquina|union|orilla|costura|rincon)\b)",
        (("x", "tiene gap"),),
    ),
    # --- tabs of which some stand: "las de arriba siguen paradas"
    Plainer(
        (" parad", " derech", " sin doblar", " ties", " levantad"),
        r"(?:tabs?|pestañas?|lenguetas?)\b[^.]{0,60}?(?P<x>(?:,|;|\.| y| pero)+ l[oa]s (?:otr[oa]s|demas|de (?:arriba|abajo|atras|adentro|afuera|enfrente|los lados|un lado|la izquierda|la derecha))(?:,? (?:un[oa]|dos|tres|cuatro|cinco|seis|\d))?,? (?:(?:todavia|aun|me|se|ahi|nomas|asi|pues) )*(?:siguen|quedaron|estan|andan|van) (?:parad[oa]s|derech[oa]s|sin doblar|ties[oa]s|levantad[oa]s))",
        (("x", ", unas quedaron sin doblar"),),
    ),
    Plainer((" parad", " derech", " ties"), r"(?P<x>(?:las|los) (?:pestañas|lenguetas|tabs)(?: de (?:adentro|arriba|abajo|afuera))?,? (?:(?:me|se|todas|todos) )*(?:quedaron|estan|siguen|andan) (?:todas |todos )?(?:parad|derech|ties)[oa]s(?:(?:,| y)+ ningun[oa] (?:esta |quedo )?doblad[oa])?)(?= *(?:$|[,;.]))", (("x", "no le doble los tabs"),), beside=("collar", "takeoff", "take off", "spin in", "toma", "cuello", "starter")),
    # --- "de los codos, el 15 quedó con aspas y el 16 sin aspas"
    Plainer(("de los ", "de las "), rf"(?:^|(?<=[.;] ))(?P<x>de l[oa]s (?:(?:dos|tres|cuatro) )?(?P<k>codo|recto|tramo|ramal|offset|transicion|reduccion|plenum|collar|manga|tapa)(?:e?s)?(?: que (?:hice|arme|hicimos|armamos))?,) (?P<a>el|la) (?={MARK}\b)", (("x", ""), ("a", r"\g<a> \g<k>"))),
)
