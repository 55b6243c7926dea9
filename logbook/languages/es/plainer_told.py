"""More of Spanish said in a roundabout way: forgotten, come off, set right, counted. Rows like those of `es_plainer.py`. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, FRAC, KIND, MARK, PUT, STAPLES, STOP, TAPE
from logbook.languages.plainer import Plainer

_VANES = r"(?:aletas?|vanes?|guias?)"
_THING = rf"(?:{_VANES}|{TAPE}|{STAPLES}|mastique|tabs)"
_ART = r"(?:el |la |las |los |sus? |unas? |un )?"
_AT = r"(?:cada |a cada |a |de a |en )"
_FAR = rf"{COUNT}(?: y (?:medi[ao]|un cuarto))?"

_NOW_I = r"(?:tallo|encinto|engrapo|grapo|froto|plancho|recorto|rebajo|teipeo|tapeo)"
_AND_DONE = r"(?: bien)?(?: y|,) (?:ya(?: queda| quedo| estuvo| acabo| termino)?|acabo|termino|queda(?: lista| listo)?|listo|me voy|nos vamos|vamonos)"
_SOME_PIECE = rf"(?:el |la |al )?(?:{KIND} )?(?:numero )?{MARK}"
_DEED = r"(?:tallar|encintar|engrapar|grapar|frotar|recortar|limpiar|teipear|tapear|doblar)"
_PUT_IN = r"(?:encint|tape|teip|grap|engrap|tall|frot|limpi|puse|meti|cerr)\w*"

_SORT = r"(?:gris|plateada|de tela|de lona|masking|duct tape|de ducto|canela|de aluminio|de papel|181 ?-?a(?: ?-?p)?)"
_IS = r"(?:es|son|era|eran|van?|iban?|quedo|quedaron|anda|andan|mide|miden)"
_BY_WAY = r"(?:(?:a cada|de a|cada|a|de|la|las|el) )*"
_DOES = r"(?:va|lleva|tiene|trae|esta|quedo|deje|no lleva|no tiene|no trae|no deje|no encinte|no engrape|no talle|no \w+e|le falt\w+|le puse)"

_HOLDER = r"(?:hanger|soporte|colgante|colgador|strap|fleje|trapecio)"

TOLD = (
    # --- "de hanger a hanger en la recta 328 hay once pies"
    Plainer((" a hanger", " a soporte", " a colgante", " a colgador", " a strap", " a fleje"), rf"(?P<x>(?P<a>de {_HOLDER} a {_HOLDER}) (?P<b>(?:en|de) (?:la |el )(?:{KIND} )?(?:numero )?{MARK})) (?=hay|son|quedan|quedaron|tengo|tenemos|mide)", (("x", r"\g<b> \g<a>"),)),
    # --- not so much but so much: "la cinta de la 361 no es de dos, es de tres"
    Plainer((" no es ", " no son ", " no va ", " no van ", " no era ", " no eran ", " no mide ", " no miden ", " no anda", " no iba"), rf"(?:{TAPE}|{STAPLES}|patas?)(?: (?:de|en|del|de la|en la|en el) ?(?:{KIND} )?(?:numero )?{MARK})?(?: que \w+(?: \w+)?)?(?P<x>,? no {_IS} {_BY_WAY}(?:{_FAR}|{FRAC}|{_SORT})(?: pulgadas?)?,? (?:sino (?:que )?)?)(?={_IS} {_BY_WAY}(?:{_FAR}|{FRAC}|{_SORT}))", (("x", " "),)),
    # --- not the one but the other: "no es la 359, es la 360 la que va sin cinta"
    Plainer((" que ",), rf"(?P<x>\bno (?:es|fue|era|son) (?:el |la )?(?:{KIND} )?(?:numero )?{MARK},? (?:sino |es |fue |era |y |pero )*(?:que )?)(?P<p>(?:el |la )(?:{KIND} )?(?:numero )?{MARK})(?P<y>,? (?:la|el) que) (?={_DOES}\b)", (("x", ""), ("y", "")), beside=("no es ", "no fue ", "no era ")),
    Plainer((" que ",), rf"(?P<x>\bno (?:es|fue|era) (?:el |la )?(?P<k>{KIND} )?(?:numero )?{MARK},? (?:la|el) que (?P<c>{_DOES} [^.;,]{{2,40}}?),? (?:sino |es |fue |era |y |pero )+(?P<a>el |la )(?P<m>{MARK})){STOP}", (("x", r"\g<a>\g<k>\g<m> \g<c>"),), beside=("no es ", "no fue ", "no era ")),
    Plainer((" que ",), rf"(?:la|el) que {_DOES} [^.;,]{{2,40}}?(?P<x>,? no (?:es|fue|era) (?:el |la )?(?:{KIND} )?(?:numero )?{MARK},? (?:sino |es |fue |era |y |pero )+)(?P<p>(?:el |la )(?:{KIND} )?{MARK}){STOP}", (("x", " es "),), beside=(" no es ", " no fue ", " no era ")),
    # --- to each its own thing: "le puse cinta a la 355, grapas a la 356 y a la 357 nada"
    Plainer((" puse ", " pusimos ", "puse ", " meti ", " eche ", " metimos "), rf"(?P<v>(?:le |les )?{PUT}) {_ART}{_THING} (?:al|a la|en el|en la|a el) (?:{KIND} )?(?:numero )?{MARK}(?P<x>,? y |, )(?={_ART}{_THING} (?:al|a la|en el|en la) (?:{KIND} )?{MARK}\b)", (("x", r". \g<v> "),)),
    Plainer((" a la ", " al "), rf"(?:al|a la) (?:{KIND} )?(?:numero )?{MARK} (?P<v>le {PUT}) {_ART}{_THING}(?P<x>,? (?:y )?)(?=(?:al|a la) )(?:al|a la) (?:{KIND} )?(?:numero )?{MARK}(?P<y> )(?={_ART}{_THING}{STOP})", (("x", ". "), ("y", r" \g<v> "))),
    Plainer((" lleva ", " trae ", " tiene "), rf"(?:el |la )?(?:{KIND} )?(?:numero )?{MARK} (?P<v>lleva|trae|tiene) {_ART}{_THING}(?:,? (?:y )?)(?:el|la) (?:{KIND} )?(?:numero )?{MARK}(?P<y> )(?={_ART}{_THING}{STOP})", (("y", r" \g<v> "),)),
    Plainer((" nada",), rf"(?P<x>(?:y |pero )?(?:al|a la) (?:{KIND} )?(?:numero )?{MARK} nada){STOP}", (("x", ""),)),
    # --- "a ver si mañana la encinto": not done, and to come
    Plainer(("a ver si ",), rf"(?P<x>a ver si )(?=(?:ya )?(?:mañana|al rato|luego|despues|ahorita|en la tarde|mas tarde) (?:ya |si )?(?:l[ao] |le )?{_NOW_I}\b)", (("x", ""),)),
    # --- what he does and is done: "ya nomás tallo la 267 y acabo"
    Plainer(("nomas ", "nada mas ", "solo "), rf"(?:^|(?<=[,.;:] ))(?P<x>(?:ya )?(?:nomas|nada mas|solo)) (?:l[ao] |le )?{_NOW_I}\b(?! (?:con|a mano|asi))", (("x", "ahorita"),)),
    Plainer((" y ya", " y acabo", " y queda", " y listo", " y me voy", ", listo", ", y ya", " y termino", " y nos vamos"), rf"{_SOME_PIECE},? (?P<x>)(?:l[ao] |le ){_NOW_I}{_AND_DONE}{STOP}", (("x", "ahorita "),)),
    # --- there was not enough for the other: "encinté la 247 pero no alcanzó para la 248"
    Plainer((" no ",), rf"{_PUT_IN}[^.;]{{0,60}}?(?P<x>,? (?:pero |y |mas )?(?:ya )?no (?:me |nos )?(?:alcanzo|alcanzaron|hubo|dio tiempo|dio|llegue|llegamos)(?: (?:la |las |mas |el )?(?:{TAPE}|{STAPLES}|tiempo))? (?:para|pa|con|de|a)(?: hacer| encintar| engrapar| tallar)? ?(?:la|el|al)) (?:{KIND} )?(?:numero )?{MARK}(?P<y>){STOP}", (("x", ", la"), ("y", " no")), beside=("alcanz", " hubo", " dio tiempo", " llegue", " llegamos")),
    # --- of two pieces each lacks its own: "faltan las grapas de la 265 y la cinta de la 266"
    Plainer((" y la", " y el", " y su", " y cinta", " y grapa", " y aletas", " y vanes", " y tape"), rf"(?:(?:me|le|les|nos|todavia|aun|ya) )*faltan? {_ART}{_THING} (?:de|en|a|para) ?(?:la |el |l )?{_SOME_PIECE}(?P<x>,? y )(?={_ART}{_THING} (?:del?|al?|en|para) {_SOME_PIECE}{STOP})", (("x", ". Falta "),), beside=("falta",)),
    Plainer((" y a la ", " y al "), rf"(?:al|a la) (?:{KIND} )?(?:numero )?{MARK} (?:todavia )?le faltan? {_ART}{_THING}(?P<x>,? y )(?:al|a la) (?:{KIND} )?(?:numero )?{MARK}(?P<y> )(?={_ART}{_THING}{STOP})", (("x", ". "), ("y", " le falta "))),
    Plainer((" y ",), rf"(?:(?:me|nos|todavia|ya) )*(?:falta|tengo que|tenemos que|hay que) {_DEED} {_SOME_PIECE}(?P<x>,? y )(?={_DEED} {_SOME_PIECE}{STOP})", (("x", ". Falta "),), beside=(" encintar ", " tallar ", " engrapar ", " grapar ", " frotar ")),
    # --- a list of thumbs: "grapas 2 cinta 3 tallada"
    Plainer(("grapas 2", "grapas 3", "grapas 4", "grapa 2", "grapa 3", "grapas 1"), r"\bgrapas?(?P<x> )(?=(?:1|2|3|4|1\.5|2\.5)(?! (?:lados?|caras?|costuras?|x|por|octavos|dieciseis|y )|/|\.)(?: |,|$))", (("x", " cada "),)),
    Plainer(("cinta 2", "cinta 3", "tape 2", "tape 3", "teip 2", "teip 3"), r"\b(?:cinta|tape|teip)(?P<x> )(?=(?:2|3|2\.5)(?! (?:lados?|caras?|costuras?|x|por|veces|vueltas|rollos?)|/)(?:$|[ ,]))", (("x", " de "),)),
    # --- "nomás me queda tallarle la cinta a la 85": still to do
    Plainer((" me queda ", " nos queda ", "me queda ", "le queda "), r"\b(?:me|nos|le) (?P<x>queda(?: por| de)?) (?=(?:encint|tall|engrap|grap|recort|limpi|frot|dobl|colg|pon|met|tap|parch|teip|tape|calent|rebaj|sell|atornill)(?:ar|er|ir)(?:l[oae]s?|sel[oa]s?)?\b)", (("x", "falta"),)),
    # --- "no la toqué después de encintarla": not rubbed
    Plainer((" toque ", " toque,", "no toque", " tocamos ", " volvi a tocar"), rf"(?P<x>\b(?:ya )?no (?:(?:la|lo|le|las|los) )?(?:toque|tocamos|volvi a tocar)(?: mas| nada| para nada)? (?:la {TAPE} )?(?:ya )?(?:despues de|luego de|una vez) (?:que (?:la|lo) )?(?:encint\w+|teip\w+|tape\w+|(?:poner|pegar|dar|ponerle|pegarle|darle) (?:la |el )?{TAPE}))", (("x", "no la talle"),)),
    # --- "se me fue tallarlo": forgotten
    Plainer(("e me fue ", "e nos fue ", "e me fueron ", "e nos fueron "), r"(?<!no )\bse (?:me|nos) (?P<x>fue(?:ron)?) (?=[a-zñ]{2,}(?:ar|er|ir)(?:l[oae]s?|sel[oa]s?)?\b)", (("x", "olvido"),)),
    # --- "olvidé meterle las vanes", "me olvidé de la cinta"
    Plainer(("olvid",), rf"(?P<x>(?:me |nos )?olvid(?:e|amos)(?: de)? (?:(?:poner|meter|echar|dar|pasar|instalar|colocar)(?:le|les|sel[oa]s?)? )?)(?={_ART}{_THING}\b)", (("x", "olvide "),), unless=r"\bno (?:se )?(?:me |nos )?olvid"),
    # --- came off with the heat; "el teip se bota"
    Plainer((" con el ", " por el ", " con la ", " por la "), rf"se (?:le )?(?:levant|despeg|cay|solt|abri|pel|zaf)\w* {_ART}{TAPE}(?: (?:de|en|por) \w+(?: \w+)?)?(?P<x> (?:con|por) (?:el|la) (?:calor|frio|sol|aire|viento|humedad|lluvia)){STOP}", (("x", ""),)),
    Plainer((" se ",), rf"(?:{TAPE}) (?:ya |ahi |me )?se (?P<x>bota|boto|zafa|zafo|pela|pelo|abrio|abre|descarapelo|desprende|desprendio){STOP}", (("x", "despega"),)),
    Plainer(("abrio la cinta", "abrio el teip", "abrio el tape", "boto la cinta", "boto el teip", "boto el tape", "zafo la cinta", "zafo el teip", "zafo el tape", "pelo la cinta", "pelo el teip"), rf"se le (?P<x>abrio|boto|zafo|pelo) (?:la|el) {TAPE}\b", (("x", "despego"),)),
    # --- it ran out on one side, and so it stayed
    Plainer(("se me acabo", "se acabo", "se me termino", "se nos acabo"), rf"{TAPE}\b[^.;]*?(?:en|por|de) (?:la|el|un|una) (?:cara|lado|costado|orilla|costura|junta|parte)(?: de \w+)? (?P<x>se (?:me |nos |les? )?(?:acabo|termino))(?= *(?:$|[,;.]| y\b))", (("x", "no lleva cinta"),)),
    # --- the same, less one thing
    Plainer(("lo mismo menos", "igual menos", "lo mismo pero menos", "igual excepto", "lo mismo excepto", "igual salvo", "lo mismo salvo", "mismo, menos", "igual, menos"), rf"(?:lo mismo|igual)(?P<x>,? (?:pero )?(?:menos|excepto|salvo) )(?={_ART}{_THING}\b)", (("x", " pero sin "),)),
    # --- "sin vanes. Ah, sí le puse"; "con vanes. Ah no, ese es el 75, el 74 no lleva"
    Plainer((" si le ", " si se "), rf"(?:sin|no lleva|no trae|no tiene|no le puse) {_ART}(?P<t>{_THING})[,;.] (?P<x>(?:(?:ah|ay|no|perdon|espera|esperate|digo|mentira),? )*si (?:se )?(?:le|les|las?|los?)(?: l[oa]s?)? (?P<d>{PUT}))(?= *(?:$|[,;.]| perdon))", (("x", r"no, ya le \g<d> \g<t>"),)),
    Plainer(("ese es el", "esa es la", "ese era el", "esa era la"), rf"(?P<x>(?P<k>{KIND}) (?P<n>{MARK}) (?:con|lleva|trae|tiene) {_ART}(?P<t>{_THING})[,;.] (?:(?:ah|ay|digo|perdon|bueno|miento),? )*(?:no,? )?es[ea] (?:es|era) (?:el|la) (?P<m>{MARK}),? (?:y )?(?:el|la) (?P=n) no(?: lleva| trae| tiene)?(?: nada| ningun[oa])?){STOP}", (("x", r"\g<k> \g<n> sin \g<t>, \g<k> \g<m> con \g<t>"),)),
    # --- tape that comes off again by his own hand
    Plainer(("la voy a", "lo voy a", "la vamos a", "lo vamos a"), rf"{TAPE}\b[^.;]*?,? (?:pero|y|asi que) (?P<x>l[oa] (?:voy|vamos) a (?:quitar|arrancar|volver a poner|despegar|rehacer|hacer de nuevo))\b", (("x", "la tengo que cambiar"),)),
    Plainer(("casi tod",), rf"(?P<x>casi tod[oa] (?:la |el )?{TAPE} (?P<a>(?:tall|frot|planch|alis)ad[oa]))", (("x", r"\g<a> a medias"),)),
    # --- bare where the others have it: "con aletas, el 42 va pelón"
    Plainer(("pelon", "pelad", "encuerad"), rf"(?:con|llevan?|traen?|tienen?) (?P<t>{_THING})[^.;]*?(?:el|la) (?:{KIND} )?{MARK} (?P<x>(?:va|quedo|esta|se fue|anda|salio) (?:pelon|pelona|pelado|pelada|encuerad[oa])){STOP}", (("x", r"no lleva \g<t>"),)),
    Plainer(("pelon", "pelad"), r"(?P<x>no (?:va|quedo|esta) (?:pelon|pelona|pelado|pelada)[,;.]? )(?=(?:si |ya )?(?:trae|lleva|tiene)\b)", (("x", ""),)),
    # --- "el 65 es el que no"
    Plainer(("que no",), rf"(?P<v>lleva|tiene|trae) (?P<t>{_THING}),? (?:y |pero )?(?:el|la) (?:{KIND} )?{MARK} (?P<x>es (?:el|la) que no){STOP}", (("x", r"no \g<v> \g<t>"),)),
    Plainer((" si lleva", " si trae", " si tiene"), rf"(?:el|la) (?:{KIND} )?{MARK} (?P<x>si )(?=(?:lleva|trae|tiene) {_ART}{_THING}\b[^.;]*?(?:el|la) (?:{KIND} )?{MARK} (?:es (?:el|la) que )?no)", (("x", ""),)),
    # --- "no está encintado, digo no está tallado"
    Plainer((" digo", "perdon", "miento", "mas bien"), r"(?P<x>no (?:esta|quedo|va) \w+ad[oa],? (?:digo|perdon|miento|mas bien),? (?:que )?)(?=no (?:esta|quedo|va) \w+ad[oa])", (("x", ""),)),
    # --- how far apart, the one and not the other: "no es a dos es a tres la grapa"
    Plainer((" es a ", " son a ", " van a ", " va a "), rf"(?P<x>no (?:es|son|va|van|eran|era) {_AT}{_FAR},? (?:sino |si no |pero |mas bien )?(?:es |son |va |van |era |eran )?{_AT}(?P<n>{_FAR}),? (?:la|las) {STAPLES}){STOP}", (("x", r"grapas cada \g<n>"),)),
    Plainer((" es a ", " son a ", " van a ", " va a "), rf"(?P<x>(?:es|son|va|van) {_AT}(?P<n>{_FAR}) (?:la|las) {STAPLES}[,;.]? no {_AT}{_FAR}){STOP}", (("x", r"grapas cada \g<n>"),)),
    Plainer(("hay partes", "hay lugares", "hay pedazos", "hay tramos", "hay lados", "en partes", "en lugares"), rf"{STAPLES}[^.;]*?(?P<x>,? (?:y |pero )?(?:hay|en) (?:partes|lugares|pedazos|tramos|lados)(?: (?:donde|que|en que|con|estan|quedaron|van|andan|hasta))* {_AT})(?={_FAR})", (("x", " cada "),)),
    # --- tape of which is told what it is not
    Plainer(("no use", "no puse", "no le puse", "no usamos"), rf"(?P<x>no (?:le |les )?(?:use|usamos|puse|pusimos) {_ART}(?:{TAPE} )?(?:buen[oa]|del 181|181\w*|de 181\w*|correct[oa]|especial|que (?:va|es|pide\w*))[,;.]? (?:sino |pero |mas bien )?)(?=(?:le )?(?:use|usamos|puse|pusimos|fue) )", (("x", ""),)),
    Plainer(("del que usan", "de la que usan"), rf"{TAPE} (?:\w+ ){{0,4}}?(?P<x>(?:es |era |fue )?(?:del|de la) que usan (?:los )?(?:plomeros|electricos|electricistas|pintores|empacadores)){STOP}", (("x", "es de tela"),)),
    Plainer(("en lo que", "mientras"), rf"(?P<x>(?:en lo que|mientras(?: que)?) (?:me |nos )?(?:llegan?|traen|vienen?|hay|consigo|mandan|surten) [^.,;]*){STOP}", (("x", ""),)),
    # --- an open joint
    Plainer(("abierta una", "abierta la", "abiertas las"), r"(?P<x>(?:(?:se |me |le )?(?:quedo|quedaron|esta|sigue|deje) )?abiertas? (?:una|la|las) (?P<w>junta|esquina|union|costura|orilla)s?)(?=[ ,;.]|$)", (("x", r"tiene gap en la \g<w>"),), unless=r"\bno (?:quedo|esta|va|sigue|deje) abiert"),
    # --- over dirt
    Plainer(("encima de", "sobre "), r"(?:encint|tall|teip|tape)\w*(?P<x>[,;.]? pero (?:asi )?(?:por )?(?:encima de|sobre) (?:pur[oa] |la |el |tod[oa] (?:el |la )?)?(?:polvo|tierra|mugre|grasa|polvadera)|[,;.]? pero (?:por )?encima del polvo)(?=[ ,;.]|$)", (("x", ", puse la cinta encima del polvo"),)),
    # --- vanes counted
    Plainer((" lleva", " son", " van", " pide", " necesita"), rf"(?P<x>una(?: sola)?|nomas una|solo una) {_VANES}(?P<y>(?:,| y| pero)+) (?=(?:lleva|son|van|necesita|pide) (?:dos|tres|cuatro|cinco|seis|[2-9])\b)", (("x", "1"), ("y", ","))),
    Plainer((" y lleva", " y son", " y van"), rf"(?:un[ao]|dos|tres|[1-4]) {_VANES}(?P<x> y) (?=(?:lleva|son|van|necesita|pide) (?:dos|tres|cuatro|cinco|seis|[2-9])\b)", (("x", ","),)),
    Plainer((" son ", " eran "), rf"(?:dos|tres|cuatro|cinco|una|1|[2-5]) {_VANES}(?P<x>(?:,| y| pero)+ (?:son|eran)) (?=(?:dos|tres|cuatro|cinco|seis|siete|[2-9]){STOP})", (("x", ", lleva"),)),
    Plainer((" de ",), rf"(?:nomas|solo|apenas|nada mas) (?:(?:le|me|se|yo) )*(?:cupieron|entraron|quedaron|puse|meti|pude|van|trae|lleva|tiene|hay) (?:dos|tres|cuatro|cinco|[2-5]) {_VANES}(?P<x> de(?: las)?) (?=(?:tres|cuatro|cinco|seis|siete|[3-9]){STOP})", (("x", ", lleva"),)),
    # --- tape that was only held on, or does not reach
    Plainer(("nomas", "solo ", "apenas", "nada mas"), rf"(?P<x>{_ART}{TAPE},? (?:(?:la|lo) )?(?:nomas|solo|apenas|nada mas) (?:la |lo )?(?:presente|presentamos|sobrepuse|puntee|punteamos|deje (?:sobre)?puest[oa]|esta (?:sobrepuesta|presentada|punteada))){STOP}", (("x", "sin cinta"),)),
    Plainer(("pedazos de", "pedacitos de", "cachos de", "puntos de", "puntitos de", "cachitos de"), rf"(?P<x>(?:(?:agarrad|sostenid|detenid|amarrad|presentad|puntead)[oa] (?:nomas |solo )?con|nomas|solo|nada mas|puros) (?:unos |puros |dos |tres )?(?:pedazos|pedacitos|cachos|cachitos|puntos|puntitos) de {TAPE}(?: nomas| nada mas)?){STOP}", (("x", "sin encintar"),), unless=r"atraves|cruz|\btabs?\b|\bflap|\bceja|solapa"),
    Plainer(("no junta", "no llega", "no alcanza", "no cierra", "no da ", "no alcanzo", "no llego", "no tapa", "no cubre"), rf"(?P<x>no (?P<v>junta|llega|alcanza|alcanzo|llego|cierra|da|tapa|cubre) (?P<t>(?:la |el ){TAPE}))(?= (?:en|hasta|a|la|el|por|de)\b| *(?:$|[,;.]))", (("x", r"\g<t> no llega"),)),
    # --- "le pegó el lift y se abolló": it was hit; nothing is going to be stuck on
    Plainer(("le pego ",), r"(?P<x>le pego) (?=(?:el|la|un|una|los) (?:lift|escalera|andamio|carro|troca|tubo|viga|forklift|montacargas|puerta|scissor|electrico|plomero|patin|diablito|caja|fierro|polin|desarmador|taladro|pistola)\b)", (("x", "lo golpeo"),)),
    # --- laid out from; the low step; what it hangs on; how cold the board was
    Plainer(("macho", "hembra", " male", "female"), r"(?P<x>(?:hech|marcad|sacad|empezad|medid|cortad)[oa]) (?=(?:desde|del|a partir de|por) (?:(?:el|la|lado|punta|extremo|del|de) )*(?:macho|hembra|male|female)\b)", (("x", "trazado"),)),
    Plainer(("lo bajo",), r"(?:shiplap|ranura|rebaje|traslape)[^.;]{0,24} (?P<x>con lo bajo|lo bajo)(?= (?:hacia|para|pa|por|mirando|viendo)\b)", (("x", "con el escalon bajo"),)),
    Plainer(("strut",), r"(?P<x>(?:el |los |puse |con )?(?:uni)?struts?) (?=(?:a )?cada )", (("x", "colgantes"),)),
    Plainer((" a ",), r"(?:foil|board|tablero|superficie|facing|panel) (?:(?:estaba|andaba|esta|como|apenas|ya|frio|helado) )*a (?:(?:[1-9]\d)|(?:veinte|treinta|cuarenta|cincuenta|sesenta|setenta)(?: y \w+)?)(?P<y>)(?= *(?:$|[,;.]))", (("y", " grados"),)),
    # --- "si había vanes, se las metí"
    Plainer(("si habia", "si hubo", "si llego", "si trajeron", "si llegaron"), rf"(?P<x>si (?:habia|hubo|llego|llegaron|trajeron|tenia) {_ART}(?P<t>{_THING}),? (?:y )?(?:si )?(?:ya )?se (?:la|lo|las|los) (?P<d>{PUT})){STOP}", (("x", r"le \g<d> \g<t>"),)),
    # --- what sticks out at the cut
    Plainer(("rebajad", "recortad", "cortad", "quitad", "rebaj", "recort"), r"(?P<x>(?:le |me )?(?:sobra|sobro|sale|salio|quedo|tiene|trae|hay) (?:la )?(?:fibra|lana|aislante)[^.;]{0,24}?(?:,| y| pero)+ (?:todavia |aun |y )?no (?:la|lo|se) (?:he |ha )?(?:rebajado|recortado|cortado|quitado|rebaje|recorte|corte|quite))(?=[ ,;.]|$)", (("x", "no he recortado la fibra"),)),
    # --- mended with nothing but tape
    Plainer((" pur",), rf"(?:raja|rasg|rotur|hoyo|corta|piquete|raspon|rayon)\w*[^.;]*?(?:le |la |lo )(?:{PUT}|tape|parche|cubri)(?: con)?(?P<x> pur[oa]) {TAPE}\b", (("x", ""),)),
    # --- told to the staple gun's box: "le puse de las de un cuarto"
    Plainer(("de las de", "de las cortas", "de las chicas"), rf"{STAPLES}(?P<x>,? (?:pero |fueron |son |eran |puse |use )?de las (?:cortas|chicas|chiquitas|que habia),? (?:de |las de )?)(?={FRAC}\b)", (("x", " de "),)),
)
