"""Spanish that tells of a lack or of a work in passing: "lo único que no limpié antes", "se me había olvidado tallarlo y ahí se quedó", "ni la uña cabe",
"me faltaban dos grapas pero ya se las puse", "le di con la pistola de calor al foil".

Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, FRAC, KIND, MARK, STOP
from logbook.languages.plainer import Plainer

_FAR = rf"(?:{COUNT}|{FRAC})(?: pulgadas?)?(?: y (?:medi[ao]|un cuarto|tres cuartos))?(?: pulgadas?)?"
_TAPE = r"(?:cinta|teip|tape|foil)"
_STAPLES = r"(?:grapas|staples)"
_DOINGS = r"(?:limpie|talle|encinte|teipee|engrape|grape|selle|recorte|frote|planche|calente|doble)"
_INWARD = r"(?:para|hacia|pa|por) a?dentro"
_MOVES = r"(?:baja|sube|entra|sale|mete|abre|cierra|cae)n?"
_SKIN = r"(?:foil|papel|aluminio|forro|facing|ducto|board|metal)"
_TAKEN = r"(?:llegue|llegamos|l[oa] (?:agarre|agarramos|recibi|recibimos|baje|bajamos|destape|saque)|me l[oa] (?:dieron|entregaron|pasaron))"
_WAS = r"(?:(?:ya|l[oa]|se) )*(?:traia|tenia|venia|estaba|vi|encontre|trae|viene)"
_OTHERS = r"(?:otr[oa] (?:muchacho|compañero|compa|señor|trabajador|ayudante|vato|cuadrilla|turno)|los otros|otros|los (?:de la otra cuadrilla|del otro turno|del turno de \w+|electricistas|plomeros)|el (?:del otro turno|muchacho de antes)|la otra cuadrilla)"
_FELL_TO = r"le (?:toco|tocaba|tocaban|tocaron)"
_SOMEBODY = r"(?:al|a(?: (?:mi|la|un|otro|los))?) (?:otro )?\w+"
_GAVE = r"(?:le |les )?(?:di|dimos|pase|pasamos|eche|echamos|arrime|meti|puse) (?:(?:con|la|el|un|una|tantito|poquito) )*"
_ON_SKIN = rf"(?:al?|a la|en el|en la|sobre el|sobre la) (?:{_SKIN}|superficie|lamina)"
_NO_WARMTH = r"\bplancha\b|181a-h|pistola de grapas"
_WHO = r"(?!(?:ayer|antier|hoy|bien|mal|toda|todo|completa|completo|de|en|con|por|y|pero|ya|despues|luego|encima|cada|cuando|sin|nomas|solo|a|al|hasta|para|pa|que|porque|tambien|como|la|el|yo|uno)\b)\w+"

SPANISH_TOLD_IN_PASSING = (
    # --- "lo único que no limpié antes": not done, and all else is
    Plainer(("lo unic",), rf"(?P<x>lo unic[oa](?: malo)?,? (?:(?:es|fue) )?que)(?P<y> no )(?={_DOINGS}\b)(?!\w+ (?:fue|es|era|el|la|los|las|un|una)\b)", (("x", "pero"), ("y", " no lo "))),
    # --- "se me había olvidado tallarlo y ahí se quedó"
    *(
        Plainer(
            (" olvid",),
            rf"(?P<x>se (?:me |nos )(?:(?:habia|ha) olvidado|olvido) {act}ar(?:l[oa]s?)?,? (?:(?:y|pues|ya|ahi|asi|se|lo|la|todo|toda|nomas) )*(?:quedo|fue|deje|dejamos|subio|subimos|colgamos|colgue))(?=[ ,;.]|$)",
            (("x", f"no lo {act}é"),),
            unless=r"\b(?:regrese|volvi|ya (?:l[oa] |se l[oa] )?(?:tall|encint|engrap|limpi|hice))",
        )
        for act in ("tall", "encint", "engrap", "limpi", "sell", "frot")
    ),
    # --- "le tocaba la cinta a Chuy y no se la puso"
    *(
        Plainer(
            (" toco", " tocaba"),
            rf"(?P<x>(?:(?:la |el |las )?{thing} {_FELL_TO} {_SOMEBODY}|{_FELL_TO} (?:la |el |las |ponerle |poner )*{thing} {_SOMEBODY}|{_FELL_TO} {_SOMEBODY} (?:la |el |las |ponerle |poner )*{thing})(?:,| y| pero)+ (?:(?:ya|nunca|el|ella|todavia) )*(?:no|nunca) (?:(?:se|le) )?(?:(?:la|las|lo|los) )?(?:puso|pego|hizo|echo|metio))(?= *(?:$|[,;.]| y | porque ))",
            (("x", plain),),
            beside=(told,),
        )
        for thing, told, plain in ((_TAPE, "cinta", "no lleva cinta"), (_STAPLES, "grapas", "no lleva grapas"), (r"(?:aletas|vanes)", "aletas", "no lleva aletas"))
    ),
    # --- "me faltaban dos grapas pero ya se las puse": they are there
    Plainer(
        (" falt", "falt"),
        r"(?<!que )(?P<x>(?:me|le|nos) falt(?:aban?|o|aron|an?) (?:(?:nomas|como|solo|unas|una|unos|un|dos|tres|cuatro|las|la|el|los|poner|ponerle|lado|de|pedazo|cachito|poca|poco|tantita) )*(?P<t>grapas?|staples|cinta|teip|tape|aletas?|vanes?|mastique)(?: (?:de (?:un lado|arriba|abajo|atras)|en (?:un lado|una esquina|la esquina)))?(?:,| y| pero)* ya (?:se |le )?(?:las|la|los|lo|le) (?:puse|pusimos|eche|metimos|meti|di|acabe|complete))(?= *(?:$|[,;.]| y | quedo | esta | va | en?grap| encint| tall| con ))",
        (("x", r"ya le puse \g<t>"),),
    ),
    # --- nothing was lacking
    Plainer(("falto nada", "faltaba nada", "hizo falta nada"), r"(?P<x>no (?:me |le |nos )?(?:falto|faltaba|hizo falta) nada)(?! (?:que|de|para|por|mas que|mas)\b)(?= *(?:$|[,;.]| \w))", (("x", "no le falta nada"),)),
    # --- first otherwise, and then over again: the second stands
    Plainer(
        (" volvi a ", " volvimos a ", " de nuevo", " otra vez", "reengrap"),
        rf"(?P<x>(?:(?:primero|antes|al principio|ya) )*\b(?:(?:yo|l[oa]s?|le) )*(?:(?:habia|habiamos|tenia|traia) (?:(?:en)?grapad[oa]|puesto (?:las )?grapas)|(?:en)?grape|engrapamos|puse las grapas) (?:(?:a )?cada|a|de a) {_FAR}(?:,|;| y| pero)+ (?:(?!no\b|sin\b|ni\b)[\w]+ ){{1,7}}?(?:y |,)?)(?=(?:l[oa] )?(?:volvi|volvimos) a (?:en)?grapar(?:l[oa])? (?:(?:a )?cada|a|de a)|(?:l[oa] )?reengrap(?:e|amos) (?:(?:a )?cada|a|de a))",
        (("x", ""),),
    ),
    Plainer(("reengrap",), r"(?P<x>(?:l[oa]s? )?reengrap(?:e|amos))(?![\w'])", (("x", "volví a engrapar"),)),
    # --- warmed before the tape, and what of it
    Plainer((" al foil", " al papel", " al aluminio", " al forro", " al facing", " al ducto", " al board", " la superficie", " la lamina"), rf"\b{_GAVE}calor(?P<x> {_ON_SKIN})(?= antes| primero| y |[,;.]|$)", (("x", ""),)),
    Plainer(("pistola", "heat gun", "soplete"), rf"\b(?<!no )(?P<x>{_GAVE}(?:pistola(?: de (?:calor|aire)(?: caliente)?)?|heat gun|soplete) {_ON_SKIN})(?= antes| primero| y |[,;.]|$)", (("x", "calenté el foil con la pistola"),), unless=_NO_WARMTH),
    Plainer(("pistola de calor", "heat gun"), rf"\b(?<!no )(?P<x>{_GAVE}(?:pistola de calor|heat gun)) antes de (?:pegar|poner|encintar|la cinta|echar)", (("x", "calenté el foil con la pistola"),), unless=_NO_WARMTH),
    # --- "cada dos las grapas": told with their measure ahead
    Plainer((" las grapas", " van grapas", " los staples"), rf"(?P<x>(?:a )?(?P<c>cada (?:pulgada(?: y (?:medi[ao]|un cuarto|tres cuartos))?|{_FAR})),? (?:van |le puse |puse |le eche |le meti )*(?:las |los )?{_STAPLES})(?= *(?:$|[,;.]| y ))", (("x", r"grapas \g<c>"),)),
    # --- the joint: "ni la uña cabe", "queda un cuarto abierto", "una rendija que después le echo mastique"
    Plainer((" cabe", " entra", " pasa"), r"(?P<x>(?:que )?ni (?:(?:la|el|una|un|mi) )?(?:uña|papel|tarjeta|hoja|navaja|pelo|aire)(?: de papel)? (?:le |se le |ahi )*(?:cabe|entra|pasa))(?= *(?:$|[,;.]| y | por | entre | en ))", (("x", "no cabe ni la uña"),)),
    Plainer((" abiert",), rf"(?P<x>(?:le |me |se )?(?:queda|quedo|quedan|hay|deja|dejo|tiene|trae) (?P<h>(?:como |casi |mas o menos )?)(?:un )?(?P<n>{FRAC}|{COUNT})(?: de)?(?P<u>(?: pulgadas?)?) abiert[oa]s?)(?= *(?:$|[,;.]| y | por | de | en | abajo| arriba| atras| del| entre))", (("x", r"tiene un gap de \g<h>\g<n>\g<u>"),), unless=r"\bno (?:queda|quedo|hay|deja) (?:nada|ningun)"),
    Plainer((" que despues ", " que luego ", " que al rato ", " que mañana ", " que mas tarde ", " que ahorita "), r"\b(?:rendija|hueco|gap|abertura|claro|luz|espacio|ranura|hoyo|hoyito|agujero|rasgon|raja|rajada)\b[^.;]{0,50}?(?P<x> que) (?=(?:despues|luego|al rato|mañana|mas tarde|ahorita) (?:le|lo|la) (?:echo|pongo|sello|tapo|relleno|doy|parcho|cubro|meto|echamos|ponemos)\b)", (("x", ", y"),)),
    # --- a side that stays
    Plainer(("se queda ", "se quedo ", "se mantiene ", "sigue "), r"(?:(?:el|la) (?:lado )?(?:izquierd[oa]|derech[oa]|otr[oa])|arriba|abajo|el fondo|la parte de (?:arriba|abajo)) (?P<x>(?:se queda|se quedo|se mantiene|sigue) (?:derech[oa]|rect[oa]|parej[oa]|plan[oa]|igual))(?= *(?:$|[,;.]| y ))", (("x", "queda recta"),)),
    Plainer((" un ojo", " un ojito", " un filito", " un clarito"), r"(?:quedo|tiene|hay|dejo|trae|deja) (?P<x>un (?:ojo|ojito|filito|clarito))(?= (?:como |casi )?de )", (("x", "un hueco"),)),
    # --- the step of the groove behind where it is
    Plainer((" escalon", " step"), r"(?P<x>(?:me |nos )?(?:quedo|va|esta) (?:(?:para|por|pa|hacia) )?a?(?P<d>fuera|dentro) (?:el|la) (?:escalon|escaloncito|step)(?: (?:bajo )?del? (?:groove|shiplap|rebaje|la ranura))?)(?= *(?:$|[,;.]| y | porque ))", (("x", r"el escalón me quedó por \g<d>"),), unless=r"\bno (?:me |nos )?(?:quedo|va|esta) "),
    # --- strips with their length behind how far apart they are; "nomás con grapas"
    Plainer(("tabs cada", "tiras cada", "tiritas cada", "pestañas cada"), rf"(?:tabs|tiras|tiritas|pestañas) (?P<x>(?P<c>cada {COUNT}(?: pulgadas)?) (?P<l>de {COUNT}(?: pulgadas)?))(?= *(?:$|[,;.]| y | con ))", (("x", r"\g<l> \g<c>"),)),
    Plainer((" con grapas", " con puras grapas"), r"(?<!no )(?P<x>(?:se fue|quedo|va|esta|se quedo|salio) (?:nomas|solo|nada mas|solamente|unicamente) con (?:puras )?grapas)(?= *(?:$|[,;.]| el | la | sin | y | falta))", (("x", "quedo engrapado,"),)),
    # --- how cold it was; what of the tape was enough
    Plainer(("estabamos como a ",), r"estabamos (?P<x>como a )(?=\w+)", (("x", "a como "),)),
    Plainer((" rollo", " cinta"), r"(?:ya )?casi se (?:me )?acababa (?:el rollo|la cinta)(?P<x>,? (?:pero )?si (?:me |nos )?alcanzo) (?=para (?:los )?(?:dos|tres|cuatro|todos))", (("x", ", la cinta me alcanzó"),)),
    # --- the foil that tore, and how much
    Plainer((" se me ", " se nos ", " se le "), r"(?P<x>(?:el )?(?P<s>foil|papel|forro|aluminio|facing) (?P<w>se (?:me|nos|le)) (?P<v>rompio|rajo|rasgo|desgarro)(?: (?:tantito|poquito|un poco|un poquito|feo))*)(?= *(?:$|[,;.]| en | de | como | media | un | y | \d))", (("x", r"\g<w> \g<v> el \g<s>"),)),
    Plainer((" medio ",), r"(?:quedo|salio|va|anda|esta|dejo|queda|ve|,) (?P<x>medio )(?=(?:chuec|fe[oa]\b|ladead|torcid|pandead|descuadrad|alt[oa]\b|baj[oa]\b|apretad))", (("x", ""),)),
    # --- but for one thing: what he did, and no part that is left out
    Plainer(("nomas que ", "nada mas que ", "solo que "), r"\w+[ao]d[oa],? (?P<x>nomas|nada mas|solo)(?P<y> que) (?=(?:(?:lo|la|le) (?:trace|hice|medi|puse|deje|arme|colgue|subi|corte|presente|volte[eo])|me (?:quedo|salio)|esta muy|se ve)\b)", (("x", "pero"), ("y", ""))),
    Plainer((" trace ",), r"(?P<x>(?:lo|la) trace (?:por el|del|desde el|por la|de la) )(?=(?:lado )?(?:macho|hembra)\b)", (("x", "trazado del "),)),
    # --- no time for the tool that rubs; both sides moved in
    Plainer(("pasarle la ", "darle con la ", "pasarle el ", "darle con el "), r"\b(?:no|ni) (?:(?:me|nos|ya) )*(?:tuve|tuvimos|hubo|dio|dieron|alcanzo|alcance|pude) ?(?:(?P<c>chanza|chanse|chanza|oportunidad|modo) (?:de|para|a) |(?:tiempo|chance|a) (?:de |para )?)?(?P<x>(?:pasarle|darle con) (?:la paleta|la llana|la espatula|el rodillo|la tarjeta|la cuña))(?![\w'])", (("x", "tallarlo"), ("c", "tiempo"))),
    Plainer(("meti los dos lados ", "meti ambos lados ", "metimos los dos lados "), rf"(?P<x>(?:meti|metimos) (?:los dos|ambos) lados) (?={COUNT}\b)", (("x", "los dos lados entran"),)),
    # --- the side behind its move: "baja dos arriba, sube dos abajo"
    Plainer((" arriba", " abajo"), rf"(?:^|(?<=[,;.:] )|(?<=[,;.:] y ))(?P<x>(?P<v>baja|sube|entra|sale|mete|abre|cierra) (?P<n>{COUNT}(?: pulgadas?)?) (?:(?:de|por) )?(?P<s>arriba|abajo))(?=[,;.]| y (?:baja|sube|entra|sale|mete|abre|cierra)\b)", (("x", r"\g<s> \g<v> \g<n>"),)),
    # --- several sides in one length: "todo en doce", "en dieciocho cada lado"
    Plainer((" todo en ", " todo eso en ", " todos en ", " todas en ", " los dos en ", " las dos en ", " ambos en ", " ambas en "), rf"\b{_MOVES} {COUNT}(?: pulgadas?)?(?: (?:de|los|cada|un[oa]|lados?|arriba|abajo)){{0,3}}(?P<x>,? (?:todo|todo eso|todos|todas) en |(?: y)? (?:los dos|las dos|ambos|ambas) en )(?={COUNT}(?: pulgadas?)?(?: *(?:$|[,;.])| y | l[oa]s | (?:en)?grap| encint| con ))", (("x", " los dos atras "),)),
    Plainer((" cada ",), rf"\b{_MOVES} {COUNT}(?: pulgadas?)?(?P<x>,? en (?P<n>{COUNT})(?: pulgadas)? cada (?:lado|un[oa])|,? cada (?:lado|un[oa]) en (?P<m>{COUNT})(?: pulgadas)?)(?= *(?:$|[,;.])| y | (?:en)?grap| encint| con )", (("x", r" los dos atras \g<n>\g<m>"),), unless=r"\bl[oa]s (?:dos )?lados entran"),
    Plainer((" tambien en ",), rf"\b{_MOVES} {COUNT}(?: pulgadas?)?(?: cada un[oa])?(?P<x>,? tambien) en {COUNT}\b", (("x", ""),)),
    # --- staples that he closed to the inside
    Plainer(
        ("cerre ", "cerraron ", "doble ", "cerramos ", "remache ", "cerradas ", "dobladas "),
        rf"(?P<x>(?:(?:las )?grapas )?(?:(?:me|se|las|todas|se me) )*(?:cerre|cerramos|cerraron|doble|remache|(?:quedaron|estan|fueron|salieron) (?:cerradas|dobladas)) {_INWARD})(?= *(?:$|[,;.]| y | porque | no ))",
        (("x", "me quedaron las grapas para adentro"),),
        beside=("grap", "staple"),
        unless=r"\b(?:pestañas|lenguetas|tabs)\b|\bno (?:me |se |las )*(?:cerr|dobl)",
    ),
    # --- the tape went on a wet or a soiled skin
    Plainer(("mojad", "humed", "suci", "empolvad"), rf"\b(?:{_TAPE}|encint\w+|teip\w+|puse|pegue|pegamos)\b[^.;]{{0,40}}? con (?P<x>(?:la|el) (?:lamina|hoja|aluminio|papel|forro|superficie|facing|ducto|metal)(?: (?:todo|toda|tod[oa]|medi[oa]|muy|bien))*) (?=mojad|humed|suci|empolvad)", (("x", "el foil"),)),
    # --- "el montacargas le aplastó un canto": harmed, whoever did it
    *(
        Plainer((f" {did} ",), rf"(?<!no )(?<!ni )(?<!nunca )(?P<x>(?:(?:el|la|un|una|otro) (?!no\b)\w+ )?(?:(?:me|nos) )?(?:le|me|nos) {did})(?= (?:un|una|el|la|toda la|todo el) (?:{where})\b)", (("x", means),), unless=rf"\b(?:no|casi) (?:(?:me|nos) )?(?:le|me|nos) {did}|\b(?:lenguetas|tabs|pestañas|patas)\b")
        for dids, where, means in (("aplasto abollo machuco apachurro sumio golpeo", "esquina|orilla|punta|canto|cara|costado|lado|panel|board|tablero|pedazo", "se aplastó"), ("rasgo rajo rompio desgarro", "foil|papel|forro|aluminio|facing|cara", "se rasgó"))
        for did in dids.split()
    ),
    # --- harm that was there when he came; tape drawn over it
    Plainer(("cuando ",), rf"(?:^|(?<=[.;,] ))(?P<x>cuando {_TAKEN},? )(?=(?:el|la) {KIND} (?:numero )?{MARK} {_WAS}\b)", (("x", ""),), beside=("rasg", "hoyo", "roto", "rota", "rotur", "golp", "aplast", "sumid", "raj", "agujer", "mojad", "cortad", "cortada", "piquete")),
    Plainer((" pase ", " pegue ", " pasamos ", " pegamos "), rf"(?P<x>\b(?<!no )le (?:pase|pegue|pasamos|pegamos) (?P<t>{_TAPE})(?: (?:por )?(?:encima|arriba))?)(?= *(?:$|[,;.]| y | por mientras| por lo pronto| nomas))", (("x", r"le puse \g<t>"),), beside=("aplast", "sumid", "rasg", "hoyo", "agujer", "golp", "raj", "rotur", "piquete")),
    # --- three of the sides, named without the word
    Plainer((" por tres", " por dos", " de tres", " de dos", " en tres", " en dos"), r"\b(?:en)?(?:grap|cint|teipe)ad[oa],? (?:(?:nomas|solo|nada mas|solamente|pero|va|quedo) )*(?:por|en) (?P<n>tres|dos)(?P<y>)(?= (?:el|la|los|las) (?:de |otr|que )| *(?:$|[,;.])| nada mas| nomas)", (("y", " lados,"),)),
    Plainer((" no mas ", "no mas "), r"(?P<x>no mas)(?= (?:(?:le|l[oa]) )?(?:puse|eche|di|pusimos|engrape|encinte|talle|engrapad[oa]|grapad[oa]|encintad[oa]|tallad[oa])\b)", (("x", "nomas"),)),
    Plainer((" puse de ", " eche de ", " puse por ", " puse en "), rf"(?:^|(?<=[,;.] )|(?<= y ))\w[^.;]{{0,60}}?\b(?P<t>{_STAPLES}|{_TAPE})\b[^.;]{{0,30}}?(?:nomas|no mas|solo|nada mas) (?:le )?(?P<v>puse|eche|pusimos)(?P<x>) (?:de|por|en) (?:un|dos|tres) lados?\b", (("x", r" \g<t>"),)),
    # --- others' work: told with him who did it behind it
    Plainer((" puso ", " pego ", " metio ", " pusieron ", " pegaron "), rf"(?P<x>(?P<t>(?:la|el|las|los) (?:{_TAPE}|{_STAPLES}|aletas|vanes|mastique|tabs)) (?:(?:ya|si) )*(?:se |me )?(?:la|las|lo|los) (?P<v>puso|pego|metio|pusieron|pegaron) (?P<w>(?:(?:mi|el|la|un|una|los|otro|don) )?{_WHO}))(?= *(?:$|[,;.]| y | pero | que | ayer| hoy| antier| en la | antes))", (("x", r"\g<w> le \g<v> \g<t>"),)),
    # --- others' work
    Plainer((" dejo ", " dejaron ", " hizo ", " hicieron "), rf"(?P<x>{_OTHERS} (?:(?:me|nos|ya) )*(?:dejo|dejaron|hizo|hicieron) (?:el|la) (?:{KIND} )?(?:numero )?{MARK} (?:sin|con puras?|a medias|mal)(?: \w+)?(?:,? (?:pero |y )?es[eao] no (?:es|fue) (?:mi[oa]|nuestr[oa]))?){STOP}", (("x", ""),), unless=r"\b(?:yo|ya|ahorita) (?:se |le )?l[oae] (?:encint|engrap|tall|puse|termin)"),
)
