"""Spanish words that take an act back, in part or whole, or set it right again, without naming it a second time.

Written without accents: the words they are read against lose theirs. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.turns import Turns

_NOT_CLOSED = "".join(f"(?<!{no} )" for no in ("no", "ni", "nunca", "tampoco", "jamás", "sin que", "no se", "no me", "no le"))  # "un hueco en la junta y no lo cerré"
_SOME = r"(?:(?:nomas |solo |como |solamente |nada mas )?(?:un|una|uno|dos|tres|cuatro|cinco|un par|unos?|unas|unos cuantos|unas cuantas|algunos|algunas|varios|varias|la mitad|un pedazo|un pedacito|un cacho|un cachito|un tramo|otro|otra|el ultimo|la ultima|los ultimos|las ultimas|el resto|la mayoria|los demas|las demas|los otros|las otras)(?: de (?:ellos|ellas|los|las))?)"
_SPOT = (
    r"(?:esquinas?|esquinitas?|orillas?|puntas?|lados?|partes?|caras?|costados?|pedazos?|pedacitos?|cachos?|cachitos?|tramos?|juntas?|costuras?|uniones|union|arriba|abajo|atras|adelante|enfrente|izquierda|derecha|izquierdo|derecho|"
    r"fondo|techo|piso|ramal|ramales|rama|hembra|macho|resto|traslape|medio|centro|pulgadas?|pies?|ultimas?|ultimos?|otras?|otros?|aletas?|grapas?|lenguetas?|pestanas?|pestañas?|tabs?)"
)

_TAPE = r"(?:cinta|tape|teip)"
_CREASED = r"(?:inflad[oa]s?|arrugad[oa]s?)"
_HAS_CREASES = r"(?<!no )(?<!no le )(?<!no se )(?<!ni )(?:con|tiene|trae|hizo|hicieron|hace|qued(?:o|aron)|salieron|le ven|hay) (?:\w+ ){0,2}?(?:burbujas?|burbujitas?|arrugas?|arruguitas?|bolsas?(?: de aire)?|bolsitas?|globos?|globitos?|ampollas?|pliegues?|dobleces)"
_LAID = r"(?:cintas?|tape|teip|taip|grapas?|aletas?|lenguetas?|pestañas?|tabs?)"

# what he did before he put it on anew: "la quité, limpié bien y …"
_OFF_FIRST = (
    r"(?:(?:l[oa]s?|se l[oa]s?|le|se le) (?:tuve que |tuvimos que )?(?:quit|arranqu|arranc|despegu|saqu|sac|pel|jal|tumb)\w*(?: (?:tod[oa]|la cinta|el tape|el teip|las grapas|la vieja|esa|bien))*"
    r"|(?:la |lo |le )?(?:limpie|limpiamos|seque|sacudi|raspe)(?: (?:bien|otra vez|todo|la superficie|el foil|la cara|de nuevo|el polvo))*|le pase (?:un |el )?trapo|lo empuje|la empuje|(?:l[oa] )?(?:acomode|ajuste|abri)(?: bien| otra vez)*)"
)

# what takes a note back, said to one or to several
_DROP = (
    r"borr[ae]|b[oó]rr[ae](?:me|le|nos)|borren|b[oó]rrenme|olvid[ae]|olv[ií]d[ae](?:te|se) de|olviden|cancel[ae]n?|ignor[ae]n?|elimin[ae]n?|quit[ae]n?|qu[ií]t[ae]n?(?:me|le)|tir[ae]n?|descart[ae]n?|anul[ae]n?|tach[ae]n?"
    r"|(?:no |(?<=no ))(?:le |les )?hag(?:a|an|as) caso (?:a|de)|(?:no |(?<=no ))tom(?:e|en|es) en cuenta|h[aá]gan? caso omiso (?:a|de)"
)

# a lack that was, and a deed left undone
_WAS_SO = r"\b(?:falta(?:ban?|ron)|falto|(?:tenia|traia|habia|tuvo|llevaba|estaba|andaba|quedaba|venia|iba|era)(?:n|mos)?|antes|ayer|primero|al principio|en la mañana|hace rato|crei|creia|pense|pensaba|dice[ns]?|dijo|dijeron)\b"
_WAS_OPEN = r"\b(?:faltaban?|(?:habia|habian) (?:faltado|olvidado)|estaban? sin)\b"
_ONE_THING = r"\b(?:cinta|teip|tape|taip|teipe|huincha|grapa|flap|solapa|ceja|malla|tira)\b"
_UNDONE = rf"{_WAS_SO}|\b(?:falta|faltan|hay que|tengo que|tenemos que|olvid\w+|pendiente)\b.*\b\w+[aei]r(?:l[oa]s?|les?|sel[oa]s?)?\b|\b(?:he|hemos|ha|han) \w+[oa]\b"

SPANISH_TURNS = Turns(
    beside=frozenset(
        "el la los las un una unos unas lo le les se me nos te su sus mi es esta está estan están son fue quedo quedaron anda andan va van hay tiene trae ya todavia aun"
        " poco poquito poca medio bien muy nada mas mas nomas solo solamente casi como que de del en por con al a y pero aunque para atras adelante arriba abajo otra otro otras otros"
        " dos tres cuatro cinco par unas unos cuantas cuantos algunas algunos varias varios mitad ultimo ultima ultimos ultimas primera primer mayoria resto demas"
        " esquina esquinas esquinita orilla orillas punta puntas lado lados parte partes cara caras costado costados pedazo pedacito cacho cachito tramo junta juntas costura costuras union uniones"
        " izquierda derecha izquierdo derecho fondo techo piso traslape centro pulgada pulgadas pie pies extremo extremos"
        " cinta teip tape cintas grapa grapas aleta aletas lengueta lenguetas pestaña pestañas tab tabs panel tapa ahi alla aqui entonces luego hoy desde donde cual cada una"
        " siento veo creo parece".split()
    ),
    nouns=((r"(?:lenguetas?|pestañas?|tabs?|tiras?|tiritas|tirillas)(?: de (?:cinta|tape|teip))?", "cross_tabs"), (r"cintas?|teip|tape|taip", "taped"), (r"grapas?|estaples", "stapled"), (r"aletas?|venas?|vanes", "vanes"), (r"panel", "panel_seated")),
    faults=(
        (r"despegad[oa]s?|despegandose|despegando|levantad[oa]s?|levantandose|levantando|se (?:le )?(?:esta |anda )?(?:despeg|levant)\w+|pelad[oa]s?|pelandose|descubiert[oa]s?|sin cubrir|abiert[oa]s? (?:la|una|de)|sin pegar|mal pegad[oa]s?", ("taped", "cross_tabs")),
        (rf"{_TAPE}\b(?: (?!no\b|ni\b|sin\b|nunca\b)\w+){{0,4}}? (?:{_CREASED}|{_HAS_CREASES})|{_HAS_CREASES} en (?:la|el) {_TAPE}|con (?:\w+ )?(?:burbujas|burbujitas|arrugas|bolsas|bolsas de aire|globos|ampollas)", ("rubbed_down",)),  # it is on, and not down; one alone, with no tape beside it, is of the facing
        (r"botad[oa]s?|se (?:le |me |nos )?bot(?:o|aron)|saltad[oa]s?|se (?:le |me |nos )?salt(?:o|aron)|zafad[oa]s?|se (?:le |me |nos )?zaf(?:o|aron)|salid[oa]s?|(?:qued(?:o|aron)|andan?|estan?|van?) volando|volad[oa]s?|se (?:le |me |nos )?salieron|se (?:le |me |nos )?salio|arrancad[oa]s?", ("stapled", "taped", "vanes", "tabs_bent", "cross_tabs")),
        (r"floj[oa]s?|(?<!panel )(?<!tapa )(?<!pieza )suelt[oa]s?|se (?:le |me |nos )?(?:esta |estan |anda |andan |han )?(?:cay\w+|soltando|solto|soltaron|afloj\w+|ladea\w+|tuerc\w+|torc\w+|mueven?|movieron)|colgando|parad[oa]s?|(?<!quedo )(?<!salio )(?<!esta )(?<!anda )chueco|chuec(?:a|as|os)|mal puest[oa]s?|sin asentar|sin doblar|sin apretar", ()),
        (rf"{_LAID}\b(?: \w+){{0,4}} (?:rot[oa]s?|quebrad[oa]s?)|(?:rot[oa]s?|quebrad[oa]s?)(?: \w+){{0,3}} {_LAID}", ()),  # a corner or a board that is broken is harm
        (r"no (?:esta|estan|quedo|quedaron)(?: muy| bien| tan| del todo)* (?:apretad[oa]s?|pegad[oa]s?|firmes?|parej[oa]s?|planas?|derechas?)", ("tabs_bent", "vanes", "panel_seated", "taped", "cross_tabs")),
    ),
    alone=(
        r"^(?:pero |y )?(?:nomas|solo|solamente|nada mas|unicamente|apenas) (?:en |por |de )?(?:las? |los? |el |un[oa]? )?(?:pur[oa]s? )?(?:esquinas?|orillas?|puntas?|extremos?|centro|medio|pedacitos?|cachitos?|tramos?|arriba|abajo|(?:un|dos|tres) (?:lados?|caras?)|(?:parte|cara|lado) de (?:arriba|abajo|atras|adelante))$",
    ),
    unhappened=(
        (r"no (?:me |le |nos |se )?(?:qued[ao]n?|cup\w+|cabe\w*(?! (?:la |el |mi |las )?(?:mano|manos|brazo|herramienta|pistola|engrapadora|grapadora|rodillo|espatula|dedos?|cabeza|cuerpo|taladro))|entra\w*|entro|entraron|encaja\w*|encajo)(?: bien)?", ("vanes", "panel_seated")),
        (r"no (?:me |le |nos |se )?(?:queria |quieren? |quiso )?(?:peg(?:a|an|o|aron|ar)|agarr(?:a|an|o|aron|ar)|prend(?:e|en|io|ieron)|aguant(?:a|an|o|aron)|qued(?:a|an|o|aron) (?:bien )?(?:pegad|firme|fij)\w*|entr(?:a|an|o|aron)|asient(?:a|an)|asent(?:o|aron))(?: bien| parej\w)?", ()),
    ),
    # "un lado engrapado, el otro todavía no", "la otra mitad mañana"
    left_to_do=(
        rf"^(?!lo (?:demas|otro))(?:(?:y|pero|por|en|a|al|del?|el|la|los|las|lo|un|una|otr[oa]s?|ultim[oa]s?) )*(?:{_SPOT}|otr[oa]s?|demas|resto|mitad)(?: (?:de|del|la|el|lado|parte|y|e|{_SPOT}))* (?:(?:ya|pues|ahi|se|lo|la|los|las|le|me|nos|queda|quedo|quedan|va|van|esta|hasta|para|todavia|aun|deje|dejo|dejamos|hago|pongo|termino|sigue|siguen|toca|ponemos) )*(?:todavia no|aun no|no todavia|(?:(?:todavia|aun|nomas|ya|solo) )*falta(?:n)?|pendientes?|mañana|al rato|luego|despues|el lunes|mas tarde|para despues|por hacer|otro dia)$",
    ),
    missed=(
        rf"^(?:(?:pero|y|mas|nomas|solo|que|por|en|a|al|del?|el|la|los|las|lo|un|una|otr[oa]s?|ultim[oa]s?) )*(?:{_SPOT}|otr[oa]s?|demas|resto|mitad)(?: (?:de|del|la|el|lado|parte|y|e|{_SPOT}))*,? (?:(?:ya|pues|ahi|quedo|va|esta|quedaron|van|lleva|tiene|trae) )*(?:no|nada|nadita|nel|cero|ninguna|ni madres|no (?:(?:le|lo|la|las|los|se|les|me|ya|todavia) )*(?:(?:alcance|alcanzamos|pude|pudimos|llegue|llegamos)(?: a)?(?: \w+[aei]r(?:l[oae]s?)?)?|puse|pusimos|hice|hicimos|di|meti|eche|pase|lleva|tiene|trae|toque|quedo)|sin nada|pelon\w*|pelad[oa]|encuerad[oa])$",
        rf"(?:por|en|de) (?:el |la |los |las )?{_SPOT}(?: de (?:arriba|abajo|atras|adelante))? (?:ya |todavia )?no (?:la |lo |le |se |me )*(?:alcance|alcanzo|alcanzamos|pude|pudimos|llegue|llego|pudo|cupo|dio|dejo)\b",
        rf"(?:por|en|de|del|al|a) (?:(?:la|el|las|los|un|una|parte|lado) |de )*{_SPOT}(?: de (?:(?:la|el|los|las) )?(?:arriba|abajo|atras|adelante|derecha|izquierda|lado))? (?:todavia |aun |ya )?no$",
        rf"(?:la|el|lo|las|los) (?:de )?(?:la |el )?{_SPOT}(?: de (?:arriba|abajo|atras))? no (?:la |lo |le |las |los )?(?:alcance|alcanzo|pude|llegue|encinte|engrape|talle|hice|toque|grape)\b",
        rf"(?:se me (?:paso|pasaron|fue|fueron|olvido|olvidaron)|me salte|no (?:le |lo |la )?(?:alcance(?: a)?|llegue(?: a)?|pude|alcanzo|alcanzamos|pudimos)(?: (?:llegar|encintar|engrapar|tallar|cubrir|doblar|meter|tapar|grapar|poner|alcanzar|hacer)\w*)?(?: a| hasta)?|me brinque|deje (?:sin|de)|(?:deje|dejamos) (?:fuera)?)"
        rf" (?:(?:por|en|de|del|al|a|hasta|toda|todo) )*(?:el |la |los |las |un |una |su |ese |esa )*(?:{_SOME}|(?:ultim[oa]s? |otr[oa]s? |mer[oa] |mism[oa] )*{_SPOT}|ahi|alla)\b",
    ),
    ran_short=(
        r"(?:ya casi )?(?:todavia )?(?:le |me |nos )?falt(?:a|o|an|aron) (?:nomas |solo |nada mas )?(?:la|el|las|los)(?: ultim[oa]s?| otr[oa]s?| pura| mer[oa])? (?:esquinas?|orillas?|puntas?|lados?|partes?|juntas?|costuras?|pedazos?|pedacitos?|tramos?|de (?:arriba|abajo|atras))(?: de (?:atras|arriba|abajo|la izquierda|la derecha|un lado))?$",
        r"(?:todavia )?(?:le |me |nos )?falt(?:a|o|an|aron) (?:como )?(?:un|una|dos|tres|medio|media|unas|unos)(?: pedacito| pedazo| cachito)?(?: pedazo| pedacito| cacho| cachito| lado| esquina| orilla| tramo| parte| pulgada| pulgadas| pie| pies)(?: de atras| de arriba| de abajo| nomas)?$",
        r"se (?:me |nos |les? )?(?:acabo|termino|acabaron|terminaron)(?: (?:la|el|las)(?: \w+)?)? (?:antes|a la mitad|a medio|en|por|llegando|como|faltando)\b",
        r"no (?:me |nos )?alcanzo(?: la cinta| el teip| la)? (?:para|en|a|por)\b",
    ),
    extents=(
        r"(?:asi )?(?:nomas )?(?:medio )?por encimita|(?:asi )?nomas por encima|por encim(?:it)?a (?:nomas|nada mas)|a la ligera|de pasad(?:it)?a|tantito|poquito|no mucho|no muy bien|no tan bien|no del todo|a como (?:pude|se pudo)|medio nomas",
        r"(?:(?:nomas|solo|solamente|nada mas|como) )?(?:un|una|dos|tres|cuatro|unas|algunas|la mitad|varias|unas cuantas)(?: de)?(?: las| los)? (?:lenguetas?|pestañas?|tabs|aletas|grapas)",
        r"(?:la )?(?:mitad|mayor parte|mayoria)\b|(?:una |la otra )?(?:mitad|parte)(?: nomas| nada mas)?$|en parte|por partes|(?:por|a|en) (?:puros? )?(?:pedazos|pedacitos|cachos|cachitos|tramos)|a medias|hasta (?:la mitad|el medio|donde)",
        r"(?:hasta )?(?:donde|lo que|todo lo que|adonde|lo mas que) (?:pude|pudimos|alcance|alcanzamos|se pudo|se alcanzo|llegue|alcanzo)",
        r"(?:nomas|solo|solamente|nada mas) (?:en |de )?(?:las |la |los )?(?:esquinas?|orillas?|puntas?|extremos?)(?: nomas)?|(?:las|en las|por las) (?:esquinas|puntas|orillas) nomas",
        r"(?:de )?mientras|provisional(?:mente)?|nomas (?:para|pa) que (?:aguante|agarre|no se caiga)|por mientras|temporal(?:mente)?|(?:y )?(?:lo demas|el resto|las demas|los demas|las otras|los otros|otras|otros) no\b|(?:aqui y alla|en partes|a ratos)",
    ),
    sides_only=(r"(?:nomas |solo |solamente )?(?:de|por|en) (?:solo |nomas )?(?:un|una|dos|tres) (?:lados?|caras?)",),
    anew=(  # "se mojó, la tiré y la hice de nuevo"
        _NOT_CLOSED + r"l[oa] (?:volv[ií] a (?:hacer|armar)(?! (?:la|el|un) )|hice (?:otra vez|de nuevo|nuev[oa])|arm[eé] (?:otra vez|de nuevo)|rehice|hicimos (?:otra vez|de nuevo|nuev[oa]))",
    ),
    closes=(_NOT_CLOSED + r"(?:(?<!as[ií] )(?:lo|la|le) (?:cerr[eé]|apret[eé]|junt[eé]|pegu[eé]|empuj[eé]|sell[eé]|tap[eé](?! con (?:la |pura |una )?(?:cinta|teip|tape))|rellen[eé])(?: bien| todo)?|(?:ya|as[ií]|luego|con eso|y) (?:s[ií] )?(?:me |se )?(?:cerr[oó]|junt[oó]|peg[oó] bien|sell[oó]|quedó? (?:bien )?(?:justo|justa|cerrad[oa]|apretad[oa]))\b|(?:lo|la) (?:volv[ií] a (?:cerrar|juntar|apretar))|ya (?:s[ií] )?(?:cierra|junta|empata|casa|embona|asienta|topa)n?\b|ya (?:est[aá] |qued[oó] )?(?:cerrad[oa]|apretad[oa]|junt[oa]|sin hueco|bien pegad[oa]))",),
    fractions=(
        r"(?<!pulgada y )(?<!pulgadas y )(?<!un[oa] y )(?<!dos y )(?<!tres y )(?<!cuatro y )(?<!\d y )(?:la mitad|la mayoria|una parte|parte|la mayor parte|mas de la mitad|menos de la mitad|un tercio|dos tercios|tres cuartos|unas|unas cuantas|algunas|algunos|varias|casi todas|casi todos|casi toda|casi todo|no todas|no todos|(?:el )?\w+ por ciento)(?: de(?: el| la| los| las|l)?| del)?",
    ),
    degrees=(
        r"(?:nomas |solo )?(?:l[oa] )?(?:presente|presentamos|puntee|punteamos) con|(?:nomas |solo )?(?:unos|dos|dos tres|tres) (?:cachitos|cachos|parches|parchecitos|puntos) de",
        r"(?:unos|unas|unas cuantas|unos cuantos|algunos|un pedazo|unos pedazos|pedacitos|tramos|puros tramos)(?: pedazos| pedacitos)? de",
        r"(?:apenas )?(?:empece|empezamos|comence|voy empezando|apenas empece)(?: a)?|(?:voy|ando|vamos|estoy) (?:a la mitad|a medias|en)|a mitad de|a media",
        r"(?:(?<!pulgada y )(?<!pulgadas y )(?<!una y )(?<!uno y )(?<!dos y )(?<!tres y )(?<!cuatro y )(?<!1 y )(?<!2 y )(?<!3 y )(?:medio|media)|casi|apenas|mal|a medias|parcialmente|no del todo|no todo|no todas|mas o menos)",
    ),
    excepts=(
        rf"(?:menos|excepto|salvo|a excepcion de|quitando|faltando|nomas falto|fuera de|pero no|sin contar)(?: por| en| de)?(?: el| la| los| las| un| una| ese| esa)*"
        rf" (?:(?:ultim[oa]s? |otr[oa]s? |de |mism[oa] )*{_SPOT}|{_SOME})\b(?: que (?:no|se|me|le|les|ya|nomas|todavia)\b[^,.;]*)?",
    ),
    on_the_way=r"(?:pero |y |ya |luego |despues )*",
    tab_word="lengueta",
    mends_only=(
        (r"(?:(?:l[oa]s?) )?(?:encint|en?grap|grap)\w+ (?:(?:l[oa]s?) )?(?:demas|otr|falta)\w*", ("taped", "stapled", "tabs_bent", "cross_tabs", "gap")),
        (r"(?:l[oa]s? )?(?:en)?grap\w+", ("stapled", "gap")), (r"(?:l[oa]s? )?encint\w+", ("taped", "damage_repaired", "gap")),
    ),
    mended=(
        rf"(?:{_OFF_FIRST}(?:,| y| e| luego| despues)+ (?:(?:ya|luego|despues|entonces) )*)+(?:(?:se|le|la|lo) )*(?:puse|pusimos|meti|metimos|eche|echamos|di|corri|pegue|encinte|engrape|grape|tapee|teipee|cerre|volvi a \w+)\b(?! nada| ningun).*",
        r"(?:ya )?(?:lo|la|los|las|le|se lo|se la) (?:volvi a|arregle|acomode|pegue|apreté|aprete|repase|cambie|puse(?<!\ble puse)|presione|doble|asente|compuse|corregi|hice otra vez|hice de nuevo|termine|complete|baje|clave)\b.*|volvi a (?:pegar|poner|engrapar|grapar|encintar|tallar|doblar|hacer)\w*.*|"
        r"(?:le )?(?:puse|meti|eche|di) (?:otr[oa]s?|mas|nuev[oa]s?|una nueva|unas nuevas)\b.*|ya (?:esta|estan|quedo|quedaron)(?: todo| todas| bien)? (?:bien|list[oa]s?|arreglad[oa]s?|firmes?|pegad[oa]s?|apretad[oa]s?|parej[oa]s?|complet[oa]s?|doblad[oa]s?)|regrese (?:y|a)\b.*|ya (?:lo|la|las|los) (?:arregle|pegue|acomode|doble|puse|complete|termine|aprete)",
    ),
    besides=r" (?:y|e|asi que) ",
    formerly=(r"(?:yo |te |le |les |ya )*(?:dije|habia dicho|anote|reporte|apunte|habia puesto)\b", r"^no (?:a |de a )?cada\b"),
    # how it was at first, where the words behind tell how it is by now
    used_to=(r"(?:antes|al principio|primero|de primero|ayer|en la mañana|hace rato|de entrada|cuando llegue|cuando lo agarre) (?:me |le |se |nos |no |ya |la |lo )*(?:tenian?|traian?|estaban?|habian?|quedaban?|iban?|eran?|faltaban?|llevaban?|sobraban?|andaban?|salian?|pegaban?|agarraban?|cerraban?|cabian?|entraban?|doblaban?|queria)\b", r"(?:yo )?(?:iba|ibamos) a \w+r(?:les?|l[oa]s?)?\b"),
    by_now=(
        r"(?:pero |y |es[oa]s? |est[eao]s? |ahora |ahorita |ya |hoy |luego |despues |entonces )*(?:ahora|ahorita|ya|hoy|luego|despues)\b(?!.*\b(?:no|ni|sin|falta\w*)\b)",
        r"(?!.*\b(?:no|ni|sin|falta\w*)\b).*\by (?:ahora|ahorita|ya|asi ya|con eso ya)\b", r"pero (?:mejor|al final|siempre|luego|despues|al ultimo)\b(?!.*\b(?:no|ni|sin|falta\w*)\b)",
    ),
    only_so_many=r"(?<!\w)(?:nomas|solo|solamente|nada mas|unicamente) (?:a |en )?(?:l[oa]s?|el) (?:(?P<n>dos|tres|cuatro|[234]) )?(?:(?P<first>primer[oa]?s?)|ultim[oa]s?)(?!\w)(?! (?:dos |tres )?(?:lados?|caras?|costuras?|grapas?|juntas?|pedazos?|parte|orillas?|vuelta|pulgadas?))",
    so_many=("un[oa]?|1", "dos|2", "tres|3", "cuatro|4"),
    others_of_them=r"(?:y |pero |ya |nomas |a )*(?:l[oa]s (?:otr[oa]s|demas|rest\w+)(?: (?:dos|tres|cuatro|cinco|\d))?|el resto)",
    untrue=r"\b(?:cierto|verdad|mentira)\b",
    thought=(r"(?:yo )?(?:pense|crei|creia|pensaba|segun yo|juraba|jure|dije|le dije|les dije|habia dicho|supuse|pensabamos|creiamos)\b",),
    said_so=(r"(?:es[oae]|est[oae]|ell[oa]s?|el|la|ya|el mio|la mia|los mios|las mias|el nuestro|la nuestra|este|esta)",),
    affirms=(
        r"(?:{who} )?(?:ya )?si(?: (?:esta|estan|quedo|quedaron|lo esta|lo estan|las? (?:tiene|trae|lleva)|los? (?:tiene|trae|lleva)|la tiene|las tiene|las trae|las lleva|la lleva|la trae|tiene|trae|lleva|va|van|tenian?|traian?|llevaban?|estaban?|(?:las?|los?) (?:tenia|traia|llevaba|habia puesto)|le habia puesto|habia|hay))?(?: (?:ya|bien|ahora|tod[oa]s?))*",
        r"(?:{who} )?ya (?:esta|estan|quedo|quedaron|la tiene|las tiene|lo tiene|las trae|la trae|las puse|la puse|lo puse|se la puse|se las puse|se lo puse|lo hice|la hice|va|van)(?: (?:ya|ahora|bien|list[oa]s?|hech[oa]s?))*",
    ),
    closers=(
        (r"(?:(?:y|bueno|pues|entonces|asi|asi que|eso|es todo) )*(?:(?:ya )?si|ya (?:esta|estan|quedo|quedaron|va|van)(?: (?:ya|bien|list[oa]s?))*)", _WAS_SO, _WAS_OPEN),
        (r"(?:(?:y|bueno|pues) )*ya (?:lo|la) hice(?: (?:ya|bien))*", _UNDONE, _UNDONE),
        (r"(?:(?:y|bueno|pues) )*ya l[oa] (?:puse|pusimos|meti|metimos)(?: (?:ya|bien|arriba))*", _ONE_THING, _ONE_THING),  # the vanes are many: what he put up is the piece
    ),
    room=(
        r"(?:nom[aá]s|s[oó]lo|solamente|nada m[aá]s|apenas) (?:(?:me|nos|le|se|ya) )*(?:quedaron|quedaban|sobraron|sobraban|alcanz[oó]|alcanzaba|hab[ií]a|hay|hubo|ten[ií]a(?:mos)?|tuve|tuvimos|tengo|quedaba|qued[oó]|cab[ií]an?|cupieron|dio|dieron|dej[oó]|dejaba|dejaron|di|dimos)\b",
        r"no (?:(?:me|nos|le|ya) )*(?:hab[ií]a|hubo|hay|ten[ií]a|tuve|dio|daba|alcanz[oó]|cab[ií]a|di|qued[oó]|dej[oó])(?: para| por| lugar| espacio)* m[aá]s (?:que|de)\b",
        r"(?:la|mi) (?:l[ií]nea|raya|marca) (?:(?:la|me|se|de|atr[aá]s|ya) )*(?:puse|tir[eé]|qued[oó]|est[aá]|va|marqu[eé]|ray[eé]|saqu[eé]|trac[eé]) (?:como )?a\b", r"(?:todo )?el (?:espacio|lugar|tramo|campo) (?:que )?(?:hab[ií]a|hay|ten[ií]a|tengo|me dejaron|qued[oó]) (?:era|es|fue|eran|son)",
        r"(?:la viga|la pared|el muro|el tubo|el techo|el espacio|la columna|el plaf[oó]n) (?:nom[aá]s |s[oó]lo )?(?:me|nos) (?:dio|dej[oó]|daba|dejaba|dejaron)", r"(?:debí|deb[ií]a|ten[ií]a que) (?:darle|dejarle|ir|ser).* pero (?:nom[aá]s |s[oó]lo |yo |nada m[aá]s )*(?:le )?(?:di|dej[eé]|puse)\b",
    ),
    too_much=r"\b(?:fibras?|lana|aislante|aislamiento|vidrio|sobrante|exceso|excedente|rebabas?|polvo|mugre|tierra|basura|papel|plastico|pellejo|lo que sobraba)\b",
    out_again=(r"(?<!no )(?:(?:se )?(?:las|los|la|lo) )?(?:tuve que|tuvimos que|hubo que|me hicieron|nos hicieron|me mandaron(?: a)?|me toco|fui y) (?:quitar|sacar|arrancar|desprender)(?:sel[oa]s?|l[oa]s?)?(?: (?:porque|ya que|pues|por) .*)?", r"(?<!no )(?<!no se )(?<!ni )(?<!ni se )(?<!nunca )(?<!nunca se )(?<!tampoco )(?<!tampoco se )(?<!jamas )(?<!jamas se )(?:las|los|la|lo|se las|se los|se la|se lo) (?:volvi a )?(?:quite|quitamos|saque|sacamos|quitar|sacar|arranque)(?: otra vez| de nuevo| despues)*",),
    in_after_all=(r"(?<!no )(?<!no se )(?<!ni )(?<!ni se )(?<!nunca )(?<!nunca se )(?<!tampoco )(?<!tampoco se )(?<!jamas )(?<!jamas se )(?:despues |luego |ya |pero |y )*(?:(?:se )?(?:las|los|la|lo)|(?<=ya )les?|(?<=ayer )les?|(?<=hoy )les?|(?<=tarde )les?|(?<=luego )les?|(?<=despues )les?) (?:puse|pusimos|meti|metimos|instale|coloque)(?: despues| luego| ya| al final| adentro| todas| todos| toda| todo)*",),
    past_is_plain=r"(?!.*\b(?:casi|creo|crei|creí|si|sé|seguro|según|segun|supongo|pienso|quiz[aá]s?|tal vez|a lo mejor|capaz|parece|por poco|mañana)\b)",
    one_was_put=r"(?<!se )\bl[oa] (?:puse|pusimos|meti|metimos|instale|coloque)\b",
    of_his_deed=r"\b(?:puse|pusimos|meti|metimos|hice|hicimos|di|eche|pude|alcance)\b",
    denies=(
        r"(?:nomas |solo |pero |menos |y )*(?:al?|a la|el|la) (?:(?:codo|recto|recta|tramo|ducto|pieza|tapa|te) )?(?:del? )?\w+ (?:no|tampoco) (?:se )?(?:(?:le|l[oa]s?) )+(?:puse|pusimos|meti|metimos|hice|hicimos|di|eche|pude|alcance|tiene|trae|lleva)(?: (?:nada|ningun[oa]|poner\w*|meter\w*))?",
        r"(?:{who} )?(?:pero )?(?:no|tampoco)(?: (?:lo )?(?:esta|estan|quedo|quedaron|va|van|era|fue)| (?:la|las|lo|los) (?:tiene|tienen|trae|lleva|puse|hice)| tiene| trae| lleva| hay| es cierto| es verdad| del todo| todavia| aun| completamente)+(?: (?:todavia|aun|nada|ningun[oa]?|del todo|bien|complet[oa]))*|{who} (?:no|tampoco)",
        r"(?:{who} )?(?:todavia|aun) no(?: (?:esta|estan|lo esta|la tiene|las tiene))?|(?:va|quedo|se fue|esta) sin (?:nada|ell[oa]s?)",
    ),
    leads=r"(?:(?:luego |ya |pero |y )*(?:fui|fuimos|volvi|regrese|subi|baje|cheque|checamos|revise|revisamos|la revise|lo revise|lo cheque|la cheque|me fije|me asome|mire|vi)(?: a (?:ver|checar|revisar|mirar|ver bien|asomarme))?(?: bien| otra vez)? (?:y |que )|pero |y |hoy |ahorita |que |bueno |pues |ah |ay |espera |si |no (?=ya |si |ahora |espera|perdon|en realidad)|ahora |ya |luego |entonces |perdon |en realidad |la verdad |resulta que |nomas |solo |nada mas |aunque )*",
    waiting=((r"cinta|teip|encintado|encintada", "taped"), (r"grapas|engrapado|grapa", "stapled"), (r"aletas", "vanes"), (r"tallada|tallado|frotada", "rubbed_down"), (r"tabs|pestañas|tiras", "cross_tabs")),
    waits=(
        r"(?:la |el |las |lo de la |lo del |lo de las )?(?:{act}) (?:va |van |viene |vienen |es |queda |quedan |se queda |para |sera |seria )?(?:al rato|despues|luego|mañana|para mañana|al ultimo|pendientes?|para al rato|para despues|para luego|mas tarde|otro dia|el lunes|para el lunes|al final|en la tarde|hasta mañana)(?: nomas)?",
        r"(?:lo unico|lo que|nada mas lo que|nomas lo que|ya lo unico) (?:que )?(?:me |nos |le )?(?:falta|queda)(?: (?:es|son|por hacer))*(?: la| el| las)? (?:{act})",
        r"(?:deje|dejamos|dejo|dejare) (?:la |el |las )?(?:{act}) (?:para|hasta)\b.*",
        r"(?:a )?(?:la |las |el )?(?:{act}) (?:todavia|aun) no(?: (?:va|esta|estan|van))?",
        r"(?:espero|esperando|estamos esperando|estoy esperando) (?:la |el |las |mas )?(?:{act})(?: .*)?",
    ),
    mends=(
        r"(?:nom[aá]s |s[oó]lo |nada m[aá]s |ah[ií] )?(?:le|se la|se lo|lo|la) (?:di|dimos|cubr[ií]|tap[eé]|cerr[eé]|dej[eé]) con (?:puro |pura |un pedazo de |la |el )*(?:cinta|tape|teip|mastique|m[aá]stic)",
        r"(?:tapad[oa]|cubiert[oa]|resanad[oa]|pegad[oa]|forrad[oa]) con (?:un pedazo de |un parche de |puro |pura |la |el )*(?:cinta|tape|teip|mastique|mastic|m[aá]stic)",
        r"(?:(?:lo|la|los|las|le|ya|ahí|se lo|se la|nom[aá]s|despu[eé]s|luego|y) )*(?:volv[ií] a (?:pegar|cerrar|sellar|asegurar|juntar)(?:l[oa])?|repegu[eé]|pegu[eé]|pegamos|peg[oó]|cerr[eé]|sell[eé]|sellamos|compuse|compusimos|asegur[eé]|forr[eé])(?: el hoyo| la rotura| todo| bien| ahí)*,? con (?:puro |pura |un pedazo de |un pedacito de |un cachito de |un parchecito de |una tirita de |una tira de |un parche de |un poco de |tantit[oa] |poquit[oa] |su |una |el |la |un )*(?:cinta|tape|teip|mastique|mastic|m[aá]stic|mástique|fabric|tela|malla)(?:,? y (?:ya|listo|ya est[aá]|se acab[oó]))?",
        r"(?:nom[aá]s |s[oó]lo |nada m[aá]s |ah[ií] )?(?:le|se le) (?:puse|puso|pusimos|ech[eé]|echamos|met[ií]|pegu[eé]|di|unt[eé]) (?:un pedazo de |un pedacito de |un cachito de |un parchecito de |una tirita de |una tira de |un parche de |un poco de |tantit[oa] |poquit[oa] |su |una |el |la |un )?(?:(?:cinta|tape|teip)(?: 181\S*)?|mastique|m[aá]stic|mastic|(?:tela|malla|fabric)(?: de (?:fibra|vidrio|fibra de vidrio))?)(?: (?:con|y) (?:malla|tela|mastique|m[aá]stic|mastic|fabric))?(?: encima| arriba| por encima| ah[ií])*(?:,? y (?:ya|listo|ya est[aá]|se acab[oó]))?",
    ),
    earlier=r"que (?:le |te |les )?(?:dije|mand[eé]|report[eé]|anot[eé]|pas[eé]|di|hice|hicimos|grab[eé]|platiqu[eé]) (?:en la mañana|hace rato|hace ratito|ayer|antes|temprano|al rato|antier|el otro d[ií]a|la otra vez|antes del lonche|hace una hora)|de (?:hace rato|hace ratito|la mañana|ayer|antes|antier)\b",
    takes_back=(
        ("last", r"(?:(?:eso|lo|la nota|esa nota)(?: ultimo| último)? )?(?:que |de )(?:te |le |les |yo )?(?:dije|mandé|mande|grabé|grabe|anoté|anote|reporté|reporte)(?: \w+){0,4}?,? (?:ya )?(?:bórr[ea]l[oa]|borr[ea]l[oa]|bórrenl[oa]|borrenl[oa]|quíten?l[oa]|quitenl[oa]|quital[oa]|tách[ea]n?l[oa]|tach[ea]n?l[oa]|olvíd[ea]n?l[oa]|olvidal[oa]|cancél[ea]n?l[oa]|cancelal[oa]|elimín[ea]n?l[oa]|ignór[ea]n?l[oa])"),
        ("this", r"esta (?:nota|grabación|grabacion) no (?:cuenta|vale|va|sirve)\b"),
        ("last", r"(?:eso|lo|esa nota) (?:último|ultimo|anterior|de ahorita|de hace rato)? ?(?:que (?:dije|mandé|grabé) )?no (?:lo|la|me lo|me la) (?:apuntes|apunten|anotes|anoten|registres|registren|cuentes|guardes|tomes en cuenta)"),
        ("mark", r"(?:no |(?<=no ))(?:le |les )?hag(?:a|an|as) caso (?:a la |al |a el |a la nota (?:de la |del ))(?=(?:\w+ )?(?:\w+)[,;.]|(?:\w+ )?\w+$)"),
        ("mark", rf"(?:{_DROP}) (?:eso|lo|todo lo) (?:que (?:(?:te|le|les|yo) )*(?:dije|mandé|mande|anoté|anote|reporté|reporte|grabé|grabe) )?(?:de la |de las |de los |del |de el |sobre la |sobre el )"),
        ("last", r"(?:no |(?<=no ))(?:me |nos |te )?(?:apuntes|apunten|anotes|anoten|registres|registren|guardes|guarden|cuentes|cuenten|tomes en cuenta|tomen en cuenta) (?:lo último|lo ultimo|la última(?: nota)?|la ultima(?: nota)?|la nota anterior|lo anterior|el último mensaje|eso último)"),
        ("last", r"(?:copia |cancela |borra |bórrame |quita |olvida |ignora |elimina |tira )?(?:lo último|la última(?: nota)?|la nota anterior|el último mensaje) y (?:bórralo|bórrala|bórrenlo|bórrenla|borralo|borrala|cancélalo|cancelalo|quítalo|quitalo|olvídalo|olvidalo|elimínalo|eliminalo)"),
        ("last", rf"(?:{_DROP}) (?:lo|la nota|el mensaje|la grabación) que (?:acabo de|te acabo de|les acabo de) (?:decir|mandar|grabar|decirte|mandarte)"),
        ("last", r"(?:no,? |mejor,? |oye,? |ay,? |perdón,? |perdon,? )+(?:borra|bórrame|borrame|borren|bórrele|borrele|olvida|cancela|ignora|elimina|quita|tira|descarta|anula) (?:eso|esto|todo eso)(?: último| ultimo| de ahorita)?(?=[,.;!]|$)"),
        ("mark", r"(?:borra|bórrame|borren|olvida|olvídate de|olviden|cancela|ignora|elimina|quita|tira|descarta|anula) (?:la|esa) (?:nota|grabación|entrada) (?:de la |del |de el |de |sobre la |sobre el )"),
    ),
    fault_ahead=r"(?:(?:y|pero|tambien|tenia|traia|hay|habia|un|una|el|la) )*(?:rendijas?|rajadas?|rajaduras?|hoyos?|agujeros?|golpes?|abolladuras?|rasgones|rasgon)\b",
    regardless=r"\b(?:de todos modos|de todas (?:formas|maneras)|asi y todo|aun asi)\b",
    forgets=r"no (?:me acuerdo|recuerdo|se|estoy seguro|estoy segura|sabria decir(?:le)?)(?: bien| ya)?(?: de)? si",
    tells=(r"no (?:vaya|vayan|vayas) a (?:pensar|creer|decir)(?: que)?|no (?:piense|pienses|piensen) que", r"no (?:es|soy|somos|son|era) de l[oa]s que\b", r"(?:que )?(?:ya )?no (?:me|nos) (?:vengan|vengas|anden|andes) (?:a|con) (?:decir|que)(?: que)?", r"no (?:digo|estoy diciendo) que", r"no me (?:digan|digas|preguntes|pregunten|recuerdes)(?! que no)(?: si| que| de)?|que no (?:te|les) digan"),
)
