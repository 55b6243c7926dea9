"""Spanish turns that each tell one fact by themselves: a state, a lack, a thing in another's place. Without accents. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.es_whole_turns_words import ACT_VERBS, ALONE, CL, HAS, NONE, PUT, SKIPPED, SLIPPED, UNTIL
from logbook.languages.turns_of_words import Turn

_LEG = r"(?:las? |los? |con las? |su |sus )?(?:patas?|patitas?|puntas?|puntitas?|piernas?|piernitas?|uñas?|colas?|clinche?|remache|doblez)(?: de (?:las? |cada )?(?:grapas?|staples?))?"
_GO = (
    r"(?:(?:(?:se )?(?:me |le |les |nos )?(?:doblaron|doblo|cerraron|cerro|voltearon|volteo|fueron|fue|metieron|metio|abrieron|abrio|clavaron|clavo|remacharon|quedaron|quedo|doblan|dobla|cierran|cierra|voltean|abren|abre|van|va|miran|mira|apuntan|apunta|jalan|jala|ven|ve|dan|da|salen|sale|estan|esta|entran|entra|apuntando)"
    r"|dobladas?|doblando|volteadas?|cerradas?|abiertas?|remachadas?|viendo|mirando|apuntando|jalando|clavadas?|bien|todas|las|les|le|doble|doblamos|voltee|cerre|abri) )*"
)
_TO_IN = r"(?:para|hacia|pa|por|al|a|del lado de|rumbo a|en direccion a)?(?:'|’)? ?(?:el |la )?(?:lado de )?(?:a ?dentro|dentro|interior)(?: del? (?:ducto|panel|conducto|caja|tubo|flujo))?"
_TO_OUT = r"(?:para|hacia|pa|por|al|a|del lado de|rumbo a|en direccion a)?(?:'|’)? ?(?:el |la )?(?:lado de )?(?:a ?fuera|fuera|exterior)(?: del? (?:ducto|panel|conducto|caja|tubo|flujo))?"
_STEP = r"(?:escalon(?:cito)?(?: (?:bajo|de abajo|del rebaje|del shiplap))*|low step|lado bajo|parte baja|paso bajo|filo bajo|step)(?: (?:del|de la|de el) (?:rebaje|shiplap|ranura|panel|traslape))?"
_LOOKS = r"(?:,? (?:(?:a|hacia|para|pa) la (?:calle|intemperie)|con el shiplap|iba a (?:quedar|ir|mirar|salir|dar) (?:(?:para|hacia|pa) )?a?(?:fuera|dentro)|(?:l[oa] )?(?:volvi|volvimos) a (?:cortar|hacer)(?:l[oa])?|me|nos|se|le|lo|la|que|y|ya|quedo|queda|deje|dejamos|puse|puso|mira|mirando|ve|viendo|da|dando|apunta|apuntando|va|esta|volteado|recortado|cortado|corte|recorte|cayo|todo|rehecho|dejo|hice|quedando))*"

_OVER = r"(?:polvo|polvito|polvadera|tierra|mugre|grasa|aceite|humedad|agua|rocio|pelusa|suciedad|aserrin|yeso|cochambre|sudor)"
_SKIN = r"(?:superficie|foil|forro|facing|papel|aluminio|cara|panel|junta|fibra)"
_SOILED = r"(?:humed[oa]s?|mojad[oa]s?|suci[oa]s?|polvos[oa]s?|polvorient[oa]s?|empolvad[oa]s?|grasos[oa]s?|aceitos[oa]s?|enlodad[oa]s?|terros[oa]s?|llen[oa]s? de \w+|sudad[oa]s?|mugros[oa]s?|con polvo|con grasa|con tierra|sin limpiar|sin secar|sin sacudir|sin desempolvar|sin pasarle (?:el |un )?trapo|sin trapear)"
_STUCK = r"(?:encint|teipe|tape|pegu?|puse|sell|cerr|cubr|avent|plant)\w*"
_REST = r"(?:(?:el |la |lo |su |del |al )?(?:sobrante|exceso|fibra|insulation|aislante|aislamiento|lana|pelusa|pedazo|material|board)(?: (?:que (?:le )?(?:sobra|sobraba|sobro|queda|quedaba|salia|cuelga|colgaba)|sobrante|de mas|extra|de sobra))+|(?:el |su )?(?:sobrante|exceso|excedente)(?: de (?:la |el )?(?:fibra|insulation|aislante|aislamiento|lana))?|lo que (?:sobra|sobraba|sobro)|lo de mas|(?:la |el )?(?:fibra|insulation|aislante|aislamiento|lana)(?! de vidrio))(?: (?:en|de|del) (?:el |la )?(?:corte|orilla|canto|punta))*"
CUT_AWAY = r"(?:recort|quit|cort|rebaj|rasur|emparej|trime|trim|saqu|limpi)(?:e|amos|o|aron)"
_TABS = r"(?:lenguetas?|tabs?|pestañas?|orejas?|orejitas?|dientes?|dedos|uñas|patitas)"

_BUY = r"pedir|encargar|comprar|traer|surtir|ordenar|conseguir|recoger|ir por|ir a traer|mandar traer|mandar pedir"
_SENT = r"(?: que (?:me |nos |le )*(?:llegaron|llego|trajeron|trajo|mandaron|mando|dieron|dio|habia|traia|traian|traigo|compraron|surtieron|vinieron|vino|tenia|teniamos|hicieron|cortaron|prestaron)(?: (?!no\b)\w+){0,3}?)?"
_NO_GOOD = r"(?:no (?:me |nos |le )*(?:servian?|sirven?|sirvieron|sirvio|eran?|quedaban?|quedaron|quedo|dieron|cabian?|caben?|entraban?|pegaban?|agarraban?|funcionaban?|venian? bien)|(?:venian?|estaban?|llegaron|llego|salieron|salio|vienen|eran|son) (?:todas |todos |muy |bien )?(?:mal|malas?|malos?|chuec\w+|doblad\w+|rot\w+|chic\w+|grande\w*|cort[oa]s?|larg\w+|equivocad\w+|de otr\w+|del otro|oxidad\w+|defectuos\w+|mojad\w+|sec[oa]s?|vencid\w+))(?: (?!y\b|asi\b|por\b|no\b)\w+){0,4}?"
_SO_NOT = rf"(?:,|;| y| asi que| por eso| entonces| y por eso)+ (?:yo |mejor |pues |ya )*no {CL}{PUT}{NONE}{ALONE}"
_STUFF = (
    ("vanes", r"(?:aletas?(?! (?:de|para) (?:en)?grap)|vanes?|guias|alabes|paletas|deflectores)"),
    ("stapled", r"(?:grapas|staples)"),
    ("taped", r"(?:cinta|tape|teip)"),
    ("cross_tabs", r"(?:tabs|tiras|tiritas)"),
)

# "se me acabó el teip y así se quedó": the stuff was at an end, and that was that
_AT_AN_END = r"(?:se (?:me |nos )?(?:acabo|acabaron|termino|terminaron)|(?:me|nos) (?:quede|quedamos) sin|(?:ya )?no (?:me |nos )?(?:hubo|habia|hay|alcanzo|alcanzaron|llego|llegaron|quedaba|quedaban))"
_LEFT_AT_THAT = r"(?:,| y| asi que| pues| entonces)+ (?:pues |ya |nomas |ni modo,? )*(?:asi|ahi|hasta ahi|asi nomas|asi mero) (?:nomas |mero |pues )*(?:se |lo |la |le |me )*(?:quedo|quede|deje|dejamos|va|fue|cerre|cerramos|colgue|colgamos|subi|subimos|monte|entregue|esta)\b"
_NOTHING_DONE = r"(?:hecho|armado|empezado|tocado|terminado|avanzado|engrapado|encintado)"

# an act as what one does, still to do or never done
_INFINITIVES = tuple((name, act) for name, act, *_ in ACT_VERBS)
# whose work is left to others or to another day
_OTHER_DAY = r"(?:mañana|pasado mañana|al rato|luego|despues|mas tarde|en la (?:tarde|mañana|noche)|el (?:lunes|martes|miercoles|jueves|viernes|sabado)|(?:el|la|los) (?:otr[oa]|siguiente|ayudante|turno|de la (?:tarde|noche)|muchach\w+|chalan|compa\w*|de \w+)\b|mi (?:compa\w*|ayudante|primo|hermano|chalan))"
_AND_NOT = r"(?:,|;| pero| y| nomas que)+ (?:yo |la verdad |ya |pues |de plano |ahi )*(?:no|ni|nunca) (?:(?:lo|la|le|los|las|se|me|nos) )*(?:hice|hicimos|hubo|dio|alcanc\w+|pude|pudimos|quise|se pudo|tuve|tuvimos|habia|traia|fui|regrese|llegue|toque|hubo)\b(?: (?:tiempo|chance|modo|con que|manera|nada|ya|todavia|mas|como))*"
_NEVER_DID = rf"(?:(?:me |nos )?(?:l[oa]s? )?(?:{SKIPPED})\b|(?:no|ni|nunca) (?:(?:lo|la|le|los|las|se|me|ya) )*(?:hice|hicimos|alcance|pude|toque|quise|hubo|dio|llegue)\b(?: a? ?(?:hacer\w*|tiempo|nada))?|se (?:me|nos) (?:{SLIPPED})\b|(?:lo |la )?(?:deje|dejamos|quedo|queda) (?:pendiente|para (?:{UNTIL})|sin hacer)|ni (?:hablar|pensarlo|de chiste))"

FACTS: tuple[Turn, ...] = (
    # not a thought of the rubbing: "de tallar la cinta ni me acordé"
    *(
        Turn(r"\b(?:acord|preocup|ocup|olvid|moleste|hice|paso)", rf"\bde {inf}(?:l[oa]s?|le)?(?: (?:bien|toda)?(?: ?(?:la|el|las|los|ese|esa|su) \w+)?)?,? (?:(?:ni|no|nunca|tampoco) (?:siquiera )?(?:me |nos )*(?:acord|preocup|ocup|molest)\w+|(?:me|nos) olvid\w+|se (?:me|nos) (?:olvido|paso|fue))|(?:ni|no|nunca) (?:me |nos )*(?:acorde|acordamos|preocupe|ocupe|moleste) (?:de|en|por) {inf}(?:l[oa]s?|le)?\b|(?<!\bno )(?:me|nos) olvid(?:e|amos) de {inf}(?:l[oa]s?|le)?\b", ((name, False),))
        for name, inf in _INFINITIVES
    ),
    # "lo de calentar me lo brinqué", "lo de tallar no lo hice"
    *(Turn(r"\blo de(?:l)? \w+r(?:l[oa]s?|le)?\b", rf"\blo del? {inf}(?:l[oa]s?|le)?(?: (?:la|el|las|los) \w+)?,? (?:ya |ahi |la verdad |pues |de plano |tambien )*{_NEVER_DID}", ((name, False),)) for name, inf in _INFINITIVES),
    # told to do it, or meant to, and no time, no tool, no strength for it
    *(Turn(r"\bno\b", rf"\b(?:me |nos )?(?:pidieron|pidio|dijeron|dijo|mandaron|mando|encargaron|encargo|ordenaron|tocaba|queria|iba a|quise) (?:(?:que|a) )*(?:l[oae]s? )?(?:{inf}(?:l[oa]s?|le)?|{told})\b(?: (?:la|el|las|los|bien|todo|toda|tambien) ?(?:cinta|teip|tape|foil|grapas|lados)?)*{_AND_NOT}", ((name, False),), unless=r"\bno (?:me|nos) (?:pidi|dij|mand)", asked=True) for name, inf, told, _, _ in ACT_VERBS),
    *(Turn(r"\bcon que\b", rf"\bno (?:tenia|tenemos|teniamos|traia|traigo|traiamos|habia|hubo|hay|encontre|halle|me dieron) con que {inf}(?:l[oa]s?|le)?\b", ((name, False),)) for name, inf in _INFINITIVES),
    *(Turn(r"\bhubier", rf"\b(?:l[oae]s? )?(?:hubiera|hubieramos|habria) {done}\b[^.;]{{0,40}}?(?:,| pero)+ (?:pero )?(?:ya|no|el|la|se|me|nos|habia|hubo|estaba|tenia)\b", ((name, False),), unless=r"\bno (?:l[oae]s? )?(?:hubiera|habria)|^si ") for name, _, _, done, _ in ACT_VERBS),
    *(Turn(r"\bhabia \w+d[oa]", rf"\b(?:crei|creia|pense|pensaba|pensamos|juraba|segun yo|se me hacia)(?: que)? (?:ya |si )*(?:lo |la |le |los |las )?habia(?:mos)? (?P<w>{done}),? (?:y |pero |mas )+(?:que )?(?:no|ni|nel|nada)\b(?: (?:es cierto|estaba|lo habia|la habia|fue asi))*", ((name, False),)) for name, _, _, done, _ in ACT_VERBS),
    # ready for it, so it is not done yet
    *(Turn(r"\blist[oa]s? (?:para|pa)\b", rf"\blist[oa]s? (?:para|pa) (?:que (?:l[oa]s? )?{told}\b|{inf}(?:l[oa]s?|le)?\b)(?!,? y )", ((name, False),), beside=rf"^(?!.*\b{sort}(?:e|ad[oa]s?|amos)\b)", unless=r"\bno esta") for (name, inf, told, _, _), sort in zip(ACT_VERBS, (r"(?:tall|frot|restregu?|planch|alis|sob)", r"(?:encint|teip|teipe|tape|taip)", r"(?:(?:en)?grap|(?:en)?grape|estaple)", r"(?:limpi|sec|sequ)", r"calent", r"(?:dobl|volte)", r"(?:recort|rebaj)"))),
    # another does it, another day
    *(Turn(r"\bl[oa]s? \w+n?\b", rf"(?<!no )\bl[oa]s? (?:{does}) (?:ya |hasta |pues )?{_OTHER_DAY}", ((name, False),), unless=r"\b(?:si|cuando|siempre|que) l[oa]s?\b") for name, _, _, _, does in ACT_VERBS),
    *(Turn(r"\bpara que\b", rf"\bpara que (?:el|ella|ellos|otro|mañana|luego|despues|mi \w+|[a-z]+)? ?(?:ya )?l[oa]s? (?:{told})\b", ((name, False),), unless=r"\bno (?:l[oa]|se l[oa])\b") for name, _, told, _, _ in ACT_VERBS),
    # no tool for it
    Turn(r"\b(?:en)?grapadora\b|\bpistola de grapas", r"\b(?:(?:en)?grapadora|pistola de (?:las )?grapas)(?: (?:ya |hoy |ahi |de plano |la |me |se |le )*)? ?(?:no (?:la )?(?:traia|traje|traiamos|habia|hubo|tenia|servia|sirve|prendia|prendio|jalo|jalaba|funciono|funcionaba|disparaba|llego)|(?:se )?(?:me )?(?:descompuso|trabo|atoro|rompio|quebro|quedo en|quedo abajo))\b(?: (?:en la \w+|bien|ya|hoy))*", (("stapled", False),), beside=r"^(?!.*\b(?:en)?grap(?:e|ad[oa]s?|eado|amos)\b)(?!.*\bgrapas? (?:a |cada|puestas))"),
    # nothing but staples
    Turn(r"\bpur[oa]s? ", r"\b(?:(?:se )?quedo|quedaron|se fue|va|deje|esta|anda) (?:asi )?(?:nomas |solo |a |con |en )*(?:las |la )?pur[oa]s? (?:grapas?|staples?)(?= *(?:$|[,;:.]| nomas| y ya| y el| y la))|\b(?:con|en) (?:las |la )?pur[oa]s? (?:grapas?|staples?) (?:se )?(?:quedo|va|fue|deje|esta)", (("taped", False), ("stapled", True)), unless=r"\bno "),
    # the roll ran out, and no other came
    Turn(r"\brollo\b", r"\brollo(?: de (?:cinta|tape|teip))? (?:ya )?se (?:me |nos )?(?:acabo|termino)\b(?: (?:a (?:media|la mitad)(?: (?:de la )?\w+)?|antes|en la \w+|llegando \w+|faltando \w+ \w+|ahi|y ya))*", (("taped", False),), beside=r"^(?!.*\b(?:otro rollo|traje (?:otro|mas)|fui por (?:otro|mas)|abri otro|con otro|termine con|cambie|use otro|puse otro|uno nuevo))", unless=r"\bno se\b"),
    # bare joints
    Turn(r"\b(?:pelon|pelad|encuerad|desnud|descubiert|sin nada)", r"\b(?:juntas?|costuras?|uniones|union|esquinas?)(?: de \w+(?: \w+)?)? (?:se )?(?:me )?(?:quedo|quedaron|va|van|esta|estan|se fue|anda|sigue|la deje|las deje) (?:asi |toda |todas |todavia )*(?:pelon\w*|pelad[oa]s?|encuerad[oa]s?|desnud[oa]s?|sin nada(?: encima)?|descubiert[oa]s?)", (("taped", False),), unless=r"\bno (?:va|quedo|esta)"),
    # three of them, and the fourth as it was
    *(Turn(r"\by (?:la|el|las|los) (?:otr|cuart|tercer|ultim|demas)", rf"\b{act}(?:e|amos|ue)\b(?: (?!no\b|ni\b)\w+){{0,5}},? (?:y|pero) (?:la|el|las|los|a la|al) (?:otr|cuart|tercer|ultim)[oa]s?(?: (?:lado|cara|costura|junta|esquina|orilla|de (?:atras|abajo|arriba)))? (?:se )?(?:quedo|quedaron|va|van|l[oa]s? deje|l[oa]s? dejamos|esta|estan) (?:asi|sin nada|pelon\w*|igual|abiert\w+|pendiente\w*|para \w+|suelt\w+)", ((name, False),)) for name, act in (("taped", r"(?:encint|teip|teipe|tape|taip)"), ("stapled", r"(?:(?:en)?grap|(?:en)?grape)"), ("rubbed_down", r"(?:tall|frot|planch|restreg)"))),
    # closed before they were in
    *(Turn(r"\bantes de \w+", rf"\b(?:cerre|cerramos|encinte|encintamos|selle|tape|colgue|colgamos|subi|subimos|monte|montamos|termine)(?: \w+)? antes de (?:meter|poner|colocar|instalar)(?:le|les|l[oa]s)? ?(?:las |los |sus |la )?{noun}", ((name, False),), beside=r"^(?!.*\b(?:lo|la) (?:volvi a abrir|abri|destape)\b)", unless=r"\bno ") for name, noun in _STUFF[:2]),
    # stuck on by hand
    Turn(r"\b(?:mano|palma|dedos?|guante)\b", r"\b(?:cinta|tape|teip),? (?:(?:nomas|solo|nada mas|apenas|la|le|lo|yo|solamente) )+(?:pegue|puse|asente|presione|pase|di|aplaste) (?:con )?(?:la |el |los |las |pura |puro )*(?:mano|palma|dedos?|guante)s?\b(?: y ya| nomas| nada mas)*", (("rubbed_down", False), ("taped", True)), unless=r"\b(?:no|ni) "),
    Turn(r"\b(?:mano|palma|dedos?|guante)\b", r"(?:^|(?<=[,;] ))(?:y |pero )?(?:nomas|solo|nada mas|apenas|solamente) (?:le |la |lo )*(?:pase|di|aprete|presione|asente|pegue|aplaste) (?:con )?(?:la |el |los |las |un |pura |puro )*(?:mano|palma|dedos?|guante)s?\b(?: y ya| nomas| nada mas)*", (("rubbed_down", False),), beside=r"\b(?:cinta|tape|teip|encint)"),
    # laid and not pressed, whatever it is pressed with
    Turn(r"\bsin \w+", r"\b(?:cinta|tape|teip) (?:(?:la |lo |ya |nomas |nada mas |solo |esta |quedo |deje |va |asi |apenas |se )+)(?:puest|pegad|tirad|tendid|encimad)[oa](?: nomas| nada mas| encima| y ya)*,? (?:y |pero )?sin (?:apretar|presionar|asentar|tallar|frotar|planchar|alisar|darle|pasarle)\w*", (("rubbed_down", False), ("taped", True))),
    Turn(r"\bsin \w+", r"\bsin (?:haber(?:le|la)? )?(?:darle|pasarle|meterle|echarle|dar|pasar|dado|pasado|usar)(?: (?:con|nada de|ni))? ?(?:la |el |su |un |una |ni )*(?:plastiquit[oa]|plastico|paleta|espatula|squeegee|tarjeta|cuña|rodillo|tallada|tallon|tallador|frotada|restregada)", (("rubbed_down", False),), beside=r"\b(?:cinta|tape|teip|encint|181)"),
    Turn(r"\b(?:plastiquit[oa]|espatula|squeegee|rodillo|cuña|paleta|tarjeta|tallador)\b", r"\b(?:plastiquit[oa]|espatula|squeegee|rodillo|cuña|paleta|tarjeta|tallador),? (?:(?:se )?(?:me )?(?:quedo|perdio|cayo|rompio)|l[oa] (?:deje|perdi|traia|tenia|traiga|trae|tiene|llevo)|no l[oa] (?:traia|traje|tenia|halle|encontre|subi)|no (?:habia|hubo|subio))\b[^.;]{0,30}?(?:,| y| asi que)+ (?:pues |ya |asi )*(?:no|ni) (?:le |la |lo )*(?:pase|di|hice|talle|frote|puse|aprete)\b(?: nada)?", (("rubbed_down", False),), beside=r"\b(?:cinta|tape|teip|encint|181)"),
    # cold, and no heat
    Turn(r"\b(?:calor|plancha|pistola|calentador|secadora?|heat gun|soplete)\b", r"\b(?:ni|no) (?:siquiera )?(?:le |la |lo |se la |se le )?(?:saque|use|usamos|prendi|agarre|conecte|traje|baje|subi|ocupe|traia|di con|dimos con|pase)? ?(?:con )?(?:la |el |una |un )?(?:plancha|pistola(?: de (?:calor|aire))?|calentador|secadora?|heat gun|soplete)\b(?: (?:saque|use|prendi|agarre|conecte|traje|baje|subi|le di|le pase|traia|habia|hubo))?(?=[^.]*)", (("preheated", False),), beside=r"\b(?:grados|frio|helad|congel|termometro)", unless=r"\b(?:de grapas|grapa\w*|de planchar|tall\w+|frot\w+)\b"),
    Turn(r"\bsin \w+", r"\bsin (?:haber(?:le|la|lo)? )?(?:darle|meterle|echarle|ponerle|dar|dado|metido|nada de)(?: nada de| tantito| ni tantito)? ?(?:calor|plancha|pistola|la plancha|la pistola|heat gun)\b", (("preheated", False),), beside=r"\b(?:grados|frio|helad|congel|termometro)"),
    Turn(r"\bno (?:le |la |lo )?(?:pre)?calent", r"\bno (?:le |la |lo )?(?:pre)?calent(?:e|amos) (?:nada|ni \w+)(?: antes(?: de (?:pegar|poner|encintar)\w*)?)?", (("preheated", False),)),
    # taped over what was wet or dirty
    Turn(rf"\b{_STUCK}", r"\b(?:lo |la |le )?(?:encint|teip|tape|pegu|selle|puse|eche|cerre)\w*(?: (?:la |el )?(?:cinta|tape|teip)| todo| asi)* (?:sobre|encima de|arriba de) (?:lo |el |la |puro |pura )?(?:mojado|humedo|sucio|empolvado|polvo|polvito|tierra|grasa|mugre|agua|aceite)\b", (("surface_clean", False), ("taped", True)), unless=r"\b(?:no|nunca|sin) "),
    Turn(rf"{_SOILED}", rf"\b(?:estaba|estaban|venia|andaba|seguia) (?:tod[oa] |muy |bien |medi[oa] |algo |tantito |un poco |todavia )*{_SOILED}(?: (?:del?|por|con) (?:el |la )?\w+)? (?:cuando|al) (?:(?:l[oae]s?|yo|se|la) )*(?:pegue|puse|encinte|selle|pegar|encintar|poner|eche)(?:l[ae]|le)?\b(?: (?:la|el)? ?(?:cinta|tape|teip))?", (("surface_clean", False),), unless=r"\b(?:no|ni)\b"),
    Turn(rf"\b{_OVER}\b", rf"\b(?:habia|hay|tenia|traia|quedo|quedaba|llevaba) (?:\w+ )?{_OVER}\b(?: (?!no\b|ni\b|limpi\w+|sacud\w+)[\w]+){{0,6}},? (?:y |pero )?(?:asi |la |el |se |le |ya )*(?:cinta|tape|teip)? ?(?:(?:la |le |se )*(?:quedo|va|fue|puse|pegue|eche|pusimos)) (?:asi |la |el )*(?:cinta |tape |teip )?(?:encima|arriba|asi|igual|de todos modos)", (("surface_clean", False),)),
    Turn(rf"\b{_OVER}\b", rf"\b{_OVER}(?: (?!no\b|ni\b)\w+){{0,4}} (?:debajo|abajo|atrapad[oa]|entre|por debajo) (?:de |del )?(?:la |el )?(?:cinta|tape|teip)", (("surface_clean", False),), unless=r"\b(?:no|ni|sin|nada)\b"),
    # some tabs of a collar, not all
    Turn(r"\buna si\b", r"\b(?:una|la una) si,? (?:y )?(?:una|la otra|otra) no\b", (("tabs_bent", False),), beside=r"collar|spin|boot|bota|cuello|salida redonda"),
    Turn(r"\b(?:nomas|solo|nada mas|solamente)\b", rf"\b(?:nomas|solo|nada mas|solamente) (?:le |me |se )?(?:doble|doblamos|voltee|aplaste|aprete|cerre) (?:las|los|unas|dos|tres|cuatro|la mitad|algunas)(?: (?:{_TABS}))?(?: (?:de |que |mas )[^,.;]{{2,30}})?", (("tabs_bent", False),), beside=r"collar|spin|boot|bota|cuello|salida redonda"),
    Turn(r"\bcasi tod[oa]s\b", rf"\b(?:{_TABS}) (?:\w+ ){{0,3}}casi tod[oa]s\b(?:,? (?:nomas |pero |y |me |le )*falt\w+ [^.;]{{2,30}})?", (("tabs_bent", False),), beside=r"collar|spin|boot|bota|cuello|salida redonda"),
    Turn(r"\bmano\b", r"\bno (?:me |nos )?(?:cupo|cabia|cabe|entro|entraba|entra) la mano (?:para|pa) (?:doblar|voltear|apretar|aplastar|cerrar)(?:l[oa]s)?(?: (?:las|todas|los)(?: de)?(?: (?:arriba|abajo|atras|adentro|la otra))?)?", (("tabs_bent", False),), beside=r"collar|spin|boot|bota|cuello|salida redonda"),
    # tape bought at the corner, or of no listing
    Turn(r"\b(?:compr|consegu|ferreteria|tlapaleria|tienda|esquina|tiendita)", r"\b(?:cinta|tape|teip)(?: (?!no\b|181)\w+){0,4}? (?:que (?:me |nos )?(?:compre|compramos|compro|consegui|consiguio|prestaron|presto)|de la (?:ferreteria|tlapaleria|tienda|tiendita))\b(?: en (?:la|el) \w+)?", (("closure", "other_tape"), ("taped", True)), unless=r"\b(?:no (?:es|use|era)|181)"),
    Turn(r"\b181", r"\bno (?:es|era|fue|use|usamos|traia|puse) (?:la |de la |con la )?(?P<a>181\S*)(?!.*181)(?:,? (?:es|sino|use|le puse|era|fue) (?:una |de |la |otra |pura )+(?:cinta |tape |teip )?(?:\w+ ){0,3}\w+)?(?= *(?:$|[,;.]))", (("closure", "other_tape"), ("taped", True)), beside=r"^(?!.*181.*181).*\b(?:es|era|fue|use|puse|sino) (?:una |de |la |otra |pura )"),
    Turn(r"\brollo\b", r"\brollo(?: que (?:traia|use|habia|me dieron|puse))?,? (?:es|era|venia|esta|viene|traia) (?:(?:de (?:la|el|un[oa]|l) |del )?(?:generic[oa]|corriente|pirata|chafa)|sin (?:marca|listar|sello|listado|letras?|numero|nombre|etiqueta|impresion))(?:,? (?:de(?:l| la| los)? )?(?:generic[oa]|corriente|chafa|pirata)s?)?", (("closure", "other_tape"),), unless=r"\bno (?:es|era)"),
    # harm left as it was
    Turn(r"\bque (?:l[oa]s? )?(?:dej|qued|falt|no)", r"\b(?:rajad\w+|rasg\w+|rotur\w+|hoy[oi]\w*|agujer\w+|ponchad\w+|golpe|abolladura|desgarr\w+|corte|picad\w+|perforaci\w+)(?: (?!no\b|ni\b)\w+){0,5}? (?P<w>que (?:l[oa]s? )?(?:deje|dejamos|queda|quedo|dejo|falta|esta) (?:para \w+(?: \w+)?|asi|sin (?:tapar|reparar|parchar|arreglar)|pendiente|por (?:reparar|tapar|parchar|arreglar)))", (("damage_repaired", False),)),
    Turn(r"\bno (?:le )?(?:hice|hicimos|puse|movi)", r"(?:,| y| pero|;)+ (?:yo )?no (?:le |l[oa] )?(?:hice|hicimos|puse|pusimos|movi) nada(?= *(?:$|[,;.]))", (("damage_repaired", False),), beside=r"\b(?:foil|papel|forro|aluminio|facing|board|panel)\b.*\b(?:despeg|rasg|raj|romp|rot[oa]|hoyo|agujer|ponch|golpe|aplast|abollad|apachurr|separ|pel)"),
    # a panel that does not lie
    Turn(r"\btapa\b", r"\b(?:la )?(?P<a>tapa)(?: suelta| libre| de arriba)? (?:quedo|esta|anda|se quedo|sigue|queda) (?:\w+ )?(?:bailando|floj[oa]|suelt[oa]|levantad[oa]|brincando|sin asentar|chuec[oa]|parad[oa]|volando) (?:en|del?|sobre|fuera de) ?(?:el |la |su )?(?:rebaje|shiplap|ranura|escalon|traslape)", (("panel_seated", False),), unless=r"\bno "),
    Turn(r"\b(?:shiplap|rebaje)\b", r"\b(?:shiplap|rebaje)(?: \w+){0,2} con (?:el )?(?:paso|lado bajo|escalon|step|filo)(?: bajo)? (?:(?:me |se |le )?(?:quedo|va|dando|mirando|volteado|viendo) )?(?:hacia|para|pa|al|por)(?: el)? ?(?:a?fuera|exterior)", (("groove_step", "outside"),), unless=r"\bno "),
    # where the air comes in it does not go out (that it goes out by the right end is never taken from that)
    Turn(r"\baire\b", r"\baire (?:le |me |se )?(?:entra|entraba|viene|llega|va entrando) (?:por|en|del|de) (?:el |la |lado )*hembra\b", (("air_leaves_by", "male"),), unless=r"\bno "),
    # the legs look into the stream
    Turn(r"\b(?:patas?|patitas?|puntas?|puntitas?|piernas?)\b", r"\b(?:patas?|patitas?|puntas?|puntitas?|piernas?)(?: de las grapas)?(?: (?!no\b|ni\b)\w+){0,3} (?:mirando|viendo|dando|apuntando|volteadas|miran|dan|apuntan|ven) (?:al (?:flujo(?: de aire)?|aire|ducto|hueco)|a la corriente)", (("staple_clinch", "inward"), ("stapled", True)), beside=r"\bgrap|\bengrap"),
    Turn(r"\bal reves\b", r"\bal reves (?:me |se )?(?:quedaron|van|salieron|se doblaron|estan) (?:las )?(?:patas?|patitas?|puntas?|puntitas?|grapas)\b(?:,? (?:para |hacia |pa )?a?dentro(?: en (?:vez|lugar) de (?:para |hacia |pa )?a?fuera)?)?", (("staple_clinch", "inward"), ("stapled", True)), beside=r"\bgrap|\bengrap", unless=r"\bno "),
    # staples, by the measure between them
    Turn(r"\bgrapas? (?:y|a) (?:la )?(?:otra|grapa)|\bentre (?:las )?grapas", r"\b(?:entre|de) (?:una |las |cada )?grapas?(?: (?:y|a) (?:la )?(?:otra|grapa))? (?:(?:me|le|nos|les) )*(?:hay|van|va|quedo|quedaron|deje|dejamos|son|mide|miden|tienen|tengo|queda|quedan)\b", (("stapled", True),), unless=r"\b(?:debe|deben|pide|plano|si|no|sin)\b"),
    # the legs, where the staples are named before
    *(
        Turn(r"\b(?:abr|dobl|cerr|volte|remach|clinch|fueron|metieron|clav)\w*", rf"\b(?:se |me |nos |les )*(?:abrieron|abren|doblaron|doblan|cerraron|cierran|voltearon|remacharon|remachan|clincharon|clavaron|metieron) (?:todas )?{way}(?: todas)?(?= *(?:$|[,;:.]| y | todas))", (("staple_clinch", value), ("stapled", True)), beside=r"\b(?:grapas?|staples?)\b", unless=r"\b(?:no|ni|nunca|sin|si|lados?|panel|aletas?|lenguetas?|pestañas?|tabs|solapa|flap|esquinas?)\b")
        for way, value in ((_TO_IN, "inward"), (_TO_OUT, "outward"))
    ),
    # what is to be done once something has come
    Turn(r"\bcuando ", r"\b(?:(?:ya|la|lo|las|los|le|se|ahi|nomas|luego) )+\w+(?:mos|o) (?:(?:en )?cuando|hasta que|en cuanto|nomas que) (?!\w*(?:aba|aban|ia|ian|aron|ieron)\b)(?:(?:me|nos|se|ya|el|la|le|lo|los|las|\w+) ){0,3}?\w+(?:en|an|e|a)(?= |$|[.,;])", (), beside=r"\b(?:la|lo|las|los) (?:sub|colg|mont|pon|bajam|cerram|instal)\w*"),
    # without them at first
    *(Turn(r"\bsin \w+", rf"\bsin (?:las |los |la |el )?{noun} (?:primero|al principio|de primero|de entrada)(?:,| y| pero)+ (?:ya |luego |despues |al final |ahora |yo |mejor )+(?:se |le )?l[oa]s? {PUT}\b", ((name, True),)) for name, noun in _STUFF),
    *(Turn(r"\bsin \w+|primero", rf"\bsin (?:las |los |la |el )?{noun} (?:primero|al principio|de primero|de entrada)\b|\b(?:primero|al principio|de primero) (?:(?!no\b)\w+ ){{0,3}}sin (?:las |los |la |el )?{noun}\b", (), beside=rf"\b(?:le|les|se) (?:l[oa]s? )?{PUT} (?:las |los |la |el |sus )?{noun}\b") for _, noun in _STUFF),
    # there, and had to come off
    *(Turn(r"\b(?:sac|quit|arranc)", rf"\b{noun}(?: (?!no\b|ni\b)\w+){{0,2}}(?:,| y| pero)+ (?:ya |luego |despues )*(?:se |me |le )*l[oa]s? (?:tuve que|tuvimos que|hubo que|(?:me |nos )?(?:hicieron|hizo|mandaron|mando))(?: a)? (?:quitar|sacar|arrancar)(?! (?:un[oa]\b|dos|la ultima|y ))(?!.*\b(?:volvi|volvimos|{PUT}))", ((name, False),)) for name, noun in _STUFF),
    # it would not go in well, and was done over: the doing over tells
    Turn(r"\bvolv(?:i|imos) a ", r"\bno (?:me |nos |le )?(?:agarr|peg|entr|prend|clav|qued|sent|met)\w* (?:muy )?bien (?:la |las |el |los |una |un )?(?:grapas?|cinta|tape|teip|aletas?|guias?)\b[^.;]{0,40}?(?=(?:,| y) (?:ya |asi que |entonces |pero )*(?:l[oa]s? |le |se l[oa]s? )?volv(?:i|imos) a )", ()),
    Turn(r"\bmasti", r"\b(?:mastique|mastic) (?:ya )?no (?:me |nos |le )(?:quedaba|quedaban|quedo|alcanzaba|alcanzo|sobraba|habia quedado)\b", ()),
    # rubbed on some of its sides, or not at all
    Turn(r"\b(?:tall|frot|restreg|alis|planch|repas)", r"(?<!no )(?<!no la )(?<!no lo )\b(?:tall|frot|restreg|alis|planch|repas)(?:ad[oa]s?|e|amos|ue)(?: (?:la cinta|el teip|el tape|bien|nomas|solo|nada mas|solamente))* (?:por|en|de) (?:nomas |solo )?(?:l[oa]s )?(?:un|una|dos|tres|1|2|3) (?:lados?|caras?|costuras?|orillas?)\b", (("rubbed_down", False),)),
    Turn(r"\bnada (?:a la|al)\b", r"\bno {CL}(?:pase|pasamos|di|dimos|hice) nada (?:a la cinta|al (?:tape|teip))\b".replace("{CL}", CL), (("rubbed_down", False), ("taped", True))),
    Turn(r"\b(?:por|en|para) ", r"\b(?:cinta|tape|teip)(?: (?:nomas|solo|nada mas|solamente|unicamente|apenas|me|nos|alcanzo|alcanzaron|llego))* (?:por|en|para) (?:l[oa]s )?(?P<n>cuatro|tres|dos) (?:lados|caras|costuras|orillas|juntas|uniones)", (("sides_taped", "n"), ("taped", True))),
    Turn(r"\b(?:por|en|para) ", r"\b(?:grapas?|staples?)(?: (?:nomas|solo|nada mas|solamente|unicamente|apenas|me|nos|alcanzo|alcanzaron|llego))* (?:por|en|para) (?:l[oa]s )?(?P<n>cuatro|tres|dos) (?:lados|caras|costuras|orillas|juntas|uniones)", (("sides_stapled", "n"), ("stapled", True))),
    Turn(r"\bparche (?:de|del)\b", r"\b(?:parche|tapon|injerto|pedazo) (?:de|del) (?:mismo |otro |puro )?(?:tablero|board|panel|ductboard|duct board|fibra)\b", (("repair_method", "plug"), ("damage_repaired", True)), beside=r"\b(?:puse|pusimos|meti|metimos|hice|lleva|con|corte)\b", unless=r"\b(?:no|falta\w*|sin|voy|hay que|mañana) "),
    Turn(r"\b181", r"(?<!no )(?<!no le )(?<!no la )\b(?:le |la |se la )?(?:puse|pusimos|meti|eche|corri|pegue) (?:otr[oa]|una|nueva|de la)(?: nueva| vuelta de| tira de)?(?= 181)", (("taped", True),)),
    Turn(r"\b(?:nomas|solo|nada mas|pura|puro)\b", r"(?<!no )\b(?:lleva|va con|quedo con|le puse|trae|tiene) (?:nomas|solo|nada mas|solamente|pur[oa]) (?:la |el )?(?:cinta|tape|teip)(?= *(?:$|[,;:.]| y ya))", (("taped", True),)),
    # "se me acabaron las grapas, nada más lleva cinta"
    Turn(r"\b(?:acab|termin)\w+ (?:ya )?(?:las |mis )?(?:grapas|staples)", r"\b(?:acab|termin)(?:aron|o|aban) (?:ya )?(?:las |mis )?(?:grapas|staples)\b", (("stapled", False),), beside=r"\b(?:nada mas|nomas|solo|solamente|unicamente|pur[oa]|sola) (?:(?:lleva|va|quedo|le puse|puse|con|tiene|trae|a|de|pura|la) )*(?:cinta|tape|teip)\b|\b(?:lleva|va con|quedo con|le puse|trae|con) (?:pur[oa] |solo |nomas |nada mas |la )*(?:cinta|tape|teip) (?:nomas|nada mas|solamente|sola|y ya)\b", unless=r"\b(?:no se|ya casi)\b|\b(?:engrap|grap)\w*(?:e|ado|ada|amos)\b"),
    # others put in, by their leg alone
    Turn(r"\bde (?:media|\w+ octavos|\d/\d)", rf"\b{PUT} (?:otras |unas |las )?(?:nuevas )?de (?:media|tres octavos|cinco octavos|\d/\d)\b", (("stapled", True),), beside=r"\b(?:grapas|staples)\b", unless=r"\b(?:no|ni|si|sin|cinta|tape|teip|board|tabla|panel)\b"),
    # what made it come off is on no facing
    Turn(rf"\b{_OVER}\b", "|".join(rf"(?<={stem} )(?:con|por|de) (?:el |la |tanta |tanto )?{_OVER}\b" for stem in ("levanto", "levantaron", "despego", "despegaron", "solto", "soltaron", "cayo", "cayeron", "inflo", "aflojo", "hincho", "levantando", "despegando", "levanta", "despega", "despegada", "levantada", "suelta", "despegado")), ()),
    # the flap that came off
    Turn(r"\b(?:flap|solapa|ceja|pestaña)\b", r"\b(?:flap|solapa|ceja|pestaña)(?: (?:se |me |le |nos |yo )*(?:la|lo)?)? ?(?:se )?(?:me |le |nos )?(?:corte|vole|quite|moche|arranque|troce|trozo|rompi|rompio|arranco|mordi|comi|lleve|perdio|cayo|desprendio)\b(?: (?:sin querer|por error|de mas))*", (("staple_flap", False),), unless=r"\bno (?:se |me |le |la |lo )*(?:corte|quite|moche|vole|rompi|rompio|arranco)"),
    # a vane short
    Turn(r"\bfalt", r"\b(?:aletas?|vanes?|guias?|alabes|paletas),? (?:pero |y |nomas |ya |solo |nada mas )*(?:me |le |nos |les )*falt(?:o|aron|a|an) (?:una|dos|tres|un par|la ultima|las ultimas|unas)(?: (?:de ellas|mas|que [^,.;]{2,30}))?(?= *(?:$|[,;:.]))", (("vanes", False),)),
    # wiped, and dusty all the same
    Turn(rf"\b{_OVER}\b", rf"\b(?:seguia|sigue|siguio|le quedo|se quedo|quedo|quedaba)(?: todavia)? (?:con |teniendo )?(?:tantit[oa]|poquit[oa]|un poco de|un poquito de|algo de|poc[oa]|restos de) {_OVER}\b", (("surface_clean", False),), unless=r"\b(?:no|ni|sin|nada)\b"),
    # held by tape alone
    Turn(r"\b(?:aguant|sostien|agarr|detien|mantien|une|cierra|amarr|carg)", r"\b(?:la|lo|las|los) (?:aguantan?|sostienen?|agarran?|detienen?|mantienen?|unen?|cierran?|amarran?|cargan?)(?: (?:nomas|solo|solita|pura|puro|la|el|nada mas|a|con))* (?:cinta|tape|teip)\b(?: (?:sola|solita|nomas|nada mas))?", (("taped", True),), unless=r"\b(?:no|ni|si|sin) \w+ (?:cinta|tape|teip)"),
    # not all of them
    Turn(r"\b(?:aletas?|vanes?|guias?|alabes|paletas)\b", r"\b(?:aletas?|vanes?|guias?|alabes|paletas),? (?:nomas|solo|nada mas|solamente|apenas) (?:le |me |se )*(?:PUT|cupieron|alcanzaron|trae|lleva|quedaron|entraron|hay) (?:un[oa]|dos|tres|cuatro|cinco|la mitad|un par)(?: de l[oa]s (?:dos|tres|cuatro|cinco|seis|siete|ocho)| de \w+)?\b(?! vece)|\b(?:PUT|trae|lleva) (?:nomas |solo |nada mas )?(?:un[oa]|dos|tres|cuatro|cinco) (?:aletas?|vanes?|guias?|alabes|paletas) de (?:las )?(?:dos|tres|cuatro|cinco|seis|siete|ocho)\b".replace("PUT", PUT), (("vanes", False),), unless=r"\bno \w+ (?:las )?aletas"),
    # hollow: an elbow with nothing in it
    Turn(r"\b(?:huec[oa]|vaci[oa]|pelon|pelona)\b", r"\b(?:va|quedo|esta|anda|se fue|salio|lo deje|es|lo arme|lo cerre|asi)(?: (?:asi|todo|bien|completamente|nomas|puro))* (?:huec[oa]|vaci[oa])(?= *(?:$|[,;:.]| y | sin | por dentro| de adentro))", (("vanes", False),), beside=r"\b(?:codo|elbow|ell|noventa|90)\b", unless=r"\b(?:no|junta|esquina|lado|costura|union)\b"),
    # the moist facing, and taped all the same
    Turn(rf"{_SOILED}", rf"\b(?:estaba|estaban|venia|andaba|traia|seguia|esta|quedo|tenia) (?:tod[oa] |muy |bien |medi[oa] |algo |tantito |un poco |poquito )*{_SOILED} (?:todavia |aun )?(?:el |la |todo el |toda la )?{_SKIN}\b(?:(?:,| y| pero| cuando| al| cuando yo| asi que)+ (?:asi |ya |yo |de todos modos |aun asi |ni modo |igual |como quiera |nomas |mero |mismo |y )*(?:se |le |l[oa] |la )*{_STUCK}(?: (?:la|el|encima) ?(?:cinta|tape|teip)?)?)?(?![^.]{{0,50}}\b(?:limpie|limpiamos|sequ|sacud|trape|pase (?:un|el) trapo))", (("surface_clean", False), ("taped", True)), beside=rf"\b{_STUCK}", unless=r"\b(?:sequ|limpi(?:e|amos)|no estaba|no esta)\b"),
    Turn(rf"\b{_OVER}\b", rf"\b(?:cinta|tape|teip)(?: (?:quedo|quedaron|va|fue|esta|se fue|asi|toda|(?:se )?la (?:puse|pegue|eche|tire)))* (?:encima|arriba|sobre|por encima) (?:del?|de la|la|el|todo el|toda la|puro|pura)? ?{_OVER}\b", (("surface_clean", False), ("taped", True)), unless=r"\bno\b"),
    Turn(rf"\b{_OVER}\b", rf"(?:quedo |va |fue |esta |puse |le puse |pegue |le pegue )(?:la |el )?(?:cinta|tape|teip)(?: \w+)? (?:encima|arriba|sobre|por encima) (?:del?|de la|la|el|todo el|toda la|puro|pura)? ?{_OVER}\b", (("surface_clean", False), ("taped", True))),
    # the end that looks where the air goes
    *(
        Turn(r"\b(?:macho|hembra)\b", rf"\b(?:el |la |con el |con la )?{end}(?: (?:\w+ )?)?(?:para|hacia|pa|del lado|por|en|al lado|a) (?:por )?(?:de )?donde (?:sale|va|tira|corre|camina|avienta|se va|escapa)(?: el)? aire|\b{end} (?:para|hacia|del lado de|en|a) (?:la salida(?: del aire)?|aguas abajo|corriente abajo|downstream)", (("air_leaves_by", value),), unless=r"\bno (?:va|sale|es|por)\b")
        for end, value in (("macho", "male"), ("hembra", "female"))
    ),
    *(
        Turn(r"\b(?:macho|hembra)\b", rf"\b(?:el |la |con el |con la )?{end}(?: (?:\w+ )?)?(?:para|hacia|pa|del lado|por|en|al lado|a) (?:por )?(?:de )?donde (?:entra|viene|llega|pega|sopla|le entra|le llega)(?: el)? aire", (("air_leaves_by", value),), unless=r"\bno (?:va|es|por)\b")
        for end, value in (("macho", "female"), ("hembra", "male"))
    ),
    *(
        Turn(r"\baire\b", rf"\b(?:el )?aire,? (?:(?:por|para|hacia|pal|al|a) )(?:el |la |lado )*{end}\b(?!,? no\b)", (("air_leaves_by", value),), unless=r"\b(?:entra|viene|llega|recibe|no)\b")
        for end, value in (("macho", "male"), ("hembra", "female"))
    ),
    # tabs of a collar that some stand
    Turn(rf"\b{_TABS}\b", rf"\b{_TABS}(?: (?:\w+ ){{0,2}}?)?(?:a medio (?:doblar|apretar|voltear|cerrar|aplastar)|a medias|medio (?:dobladas|apretadas))", (("tabs_bent", False),), beside=r"collar|spin|boot|bota|cuello|salida redonda|collarin"),
    Turn(r"\bsin (?:doblar|voltear|apretar|cerrar)|\bparad[oa]s", r"\b(?:un[oa]s?|dos|tres|cuatro|cinco|algun[oa]s|vari[oa]s|un par)(?: de ell[oa]s)?(?: (?:se|me|le|nos|quebraron|rompieron|trozaron|zafaron|torcieron|que|y|ya|todavia|ahi))* (?:quedaron|quedo|siguen|andan|estan|deje|dejamos|se quedaron|van) (?:ahi |todavia |asi )*(?:sin (?:doblar|voltear|apretar|cerrar)|parad[oa]s?|levantad[oa]s?|derech[oa]s?|suelt[oa]s?)", (("tabs_bent", False),), beside=r"lenguet|tabs?\b|pestañ|collar|spin|boot|bota|cuello|salida redonda"),
    # over at the cut, and not taken off
    Turn(r"\bsobr[oa]", r"\b(?:le |me |ahi |nos )?(?:sobro|sobra|sobraba|sobran|quedo|quedaba) (?:algo de |tantita |tantito |poquita |mucha |un poco de |un pedazo de |una tira de )?(?:fibra|lana|insulation|aislante|aislamiento|pelusa|material|board)(?: (?:en|de|del|por|al) (?:el |la )?(?:corte|orilla|canto|punta|lado))*(?:,| y| pero| que)+ (?:yo |ya |ahi |asi )*(?:no|nunca|tampoco|ni) {CL}(?:{CUT}|he \w+|alcance a \w+|pude \w+)\b".replace("{CL}", CL).replace("{CUT}", CUT_AWAY), (("trimmed", False),)),
    # not every three but every two
    Turn(r"\bno \w+ (?:las |la )?grapas?\b", rf"\bno {CL}(?:{HAS}|estan|quedaron|puse|pusimos|meti) (?:las |la )?(?:grapas?|staples?) (?:a )?cada \w+(?: y medi[ao])?(?: pulgadas?)?(?: como [^,;.]*)?(?=,? (?:(?:sino|pero|si no|las|van|son|es|estan|esta|quedaron) ))", ()),
    Turn(r"\b(?:las|la) \w+ (?:a )?cada\b", r"\blas? (?:tiene|trae|lleva|puse|pusimos|meti|di|deje|eche) (?:a |de a )?cada\b", (("stapled", True),), beside=r"\b(?:grapas?|staples?)\b", unless=r"\b(?:no|ni|si|tabs|tornillos|pijas)\b"),
    *(Turn(r"\bas[ií]\b|\bahi\b", rf"\b{_AT_AN_END} (?:ya )?(?:el |la |las |los |mas )?{noun}(?: (?:buen[oa]|que \w+))?{_LEFT_AT_THAT}", ((name, False),), unless=r"\b(?:a la mitad|lados?|esquinas?|antes de|llegando)\b") for name, noun in _STUFF),
    # instead of staples
    Turn(r"\b(?:en (?:lugar|vez) de|a falta de) ", r"\b(?:en (?:lugar|vez) de|a falta de) (?:las? |poner(?:le)? )?(?:grapas?|staples?|(?:en)?grapar(?:l[oa])?)\b(?!.*\b(?:tabs|tiras|tiritas|pestañas|tornillos)\b)", (("stapled", False),), unless=r"\b(?:mas|largas|otras) grapas|\bdos\b"),
    # nothing at all has been done
    Turn(r"\bnada\b", rf"\b(?:todavia |aun )?(?:no|ni) (?:he|hemos|hay|tengo|tenemos|llevo|llevamos) (?:{_NOTHING_DONE} nada|nada {_NOTHING_DONE})(?: (?:hoy|todavia|aun|aqui|de nada|del run \w+))*", ()),
    Turn(r"\b(?:porque|por ?que|pues|ya que|es que) ", rf"\b(?:porque|por ?que|pues|ya que|es que) (?:de (?:la |las |los |el )?\w+(?: \w+)? )?(?:ya |aqui |ahorita |hoy )*no (?:habia|hubo|hay|tenia|teniamos|traia|traiamos|tengo|me dieron|me alcanzaron|llegaron|llego|alcanzaron|alcanzo|trajeron|surtieron)(?: (?:mas|de otra|de otras|de (?:la |las )?(?:media|tres|dos|cuatro|buen\w+|larg\w+|anch\w+)|nada|otra|otras|buena|de la buena|de la larga))*{ALONE}", ()),
    # none was there, why he did not: what stands behind is told anew
    Turn(r"\bno (?:habia|hubo|hay|tenia|teniamos|traia|traiamos|llegaron|llego)\b", r"\b(?:porque|por ?que|pues|ya que|como|es que) (?:ya |aqui |ahorita |hoy )*no (?:habia|hubo|hay|tenia|teniamos|traia|traiamos|tengo|me dieron|me alcanzaron|llegaron|llego|alcanzaron|alcanzo|trajeron|surtieron)(?: (?:en (?:la|el) \w+|mas|ni una|ninguna|aqui|hoy|ahorita|todavia|nada))*(?= (?:y )?(?:lo |la |va |quedo |esta |ya )*(?:(?:en)?grap|encint|teip|tape|tall|frot|sell|cerr)\w+)", (), beside=r"\b(?:no|sin|ni)\b.*\b(?:porque|por ?que|pues|ya que|como|es que)\b"),
    # the stuff was no good: not used, or nothing said of it
    # "la cinta no agarraba, la arranqué y le puse otra"
    *(Turn(rf"\b{noun} no\b", rf"\b{noun} no (?:me |se |nos |le )*(?:queria(?:n)? |quiso |quisieron )?(?:peg|agarr|prend|qued|serv|entr|detuv|aguant)\w*(?: bien| derech\w+| parej\w+)?(?=[^.]*?[, ](?:quite|quitamos|arranque|arrancamos|saque|sacamos|despegue|jale|cambie|tumbe)\b[^.]*?[, ](?:(?<!no le )(?<!no se la )(?<!no )(?:puse|pusimos|meti|metimos|eche|echamos|di|corri|pegue|encinte|engrape|grape)|volvi a)\b(?! nada| ningun))", ()) for name, noun in _STUFF),
    *(Turn(rf"\b{noun}\b", rf"\b{noun}{_SENT} {_NO_GOOD}{_SO_NOT}", ((name, False),)) for name, noun in _STUFF),
    *(Turn(rf"\b{noun}\b", rf"\b{noun}{_SENT} {_NO_GOOD}(?=,| y | asi que | por eso |$)(?![^.]*\b(?:otr[oa]s?|cambi\w+|nuev[oa]s?|buen[oa]s?)\b)", ()) for _, noun in _STUFF[:2]),
    # no air, no staples: how it is, not what he did; and what is to be bought
    Turn(r"\bsin (?:aire|compresor|luz|corriente|manguera|pistola|engrapadora|grapadora|electricidad|plancha|material)\b", r"\bsin (?:el |la )?(?:aire|compresor|luz|corriente|manguera|pistola|engrapadora|grapadora|electricidad|plancha|material) no (?:hay|salen?|se puede|puedo|podemos|entran?|hay como|hay manera)\b(?: (?:poner|meter|de|hacer|echar|engrapar|grapar|encintar|la|las|el|los|grapas?|cinta|tape|teip|staples|que|nada|ni))*", ()),
    Turn(r"\b(?:pedir|encargar|comprar|traer|surtir|ordenar|conseguir|recoger|ir por)", rf"^(?:oye |ojo |ah |y |nomas |solo |todavia |me |nos |ya )*(?:faltan?|falto|hay que|tengo que|tenemos que|queda|toca|acuerdame de|recuerdame|apunta|urge) (?:que )?(?:{_BUY})\b[^.]*", (), beside=rf"^\W*(?:oye |ojo |ah |y |nomas |solo |todavia |me |nos |ya )*(?:faltan?|falto|hay que|tengo que|tenemos que|queda|toca|acuerdame de|recuerdame|apunta|urge) (?:que )?(?:{_BUY})"),
    # the one is taped, the other is not
    *(
        Turn(r"\b(?:primer|otr|un[oa]|est[ea])", rf"\b(?:(?:el|la|las|los|un[oa]?) )?(?:primer[oa]?s?|un[oa]|junta|costura|lado|cara|union)(?: (?:junta|costura|lado|cara|union|si|ya|va|esta|quedo|de \w+))* {done},? (?:y |pero )?(?:(?:a|en) )?(?:el|la|las|los) (?:segund[oa]|otr[oa]|ultim[oa]|tercer[oa]?|demas|otr[oa]s)(?: (?:junta|costura|lado|cara|union|todavia|aun|ya|pues))* no\b(?= *(?:$|[,;:.]))", ((name, False),), one=True)
        for name, done in (("taped", r"(?:encint|teipe|tape)ad[oa]s?"), ("stapled", r"(?:engrap|grap)ad[oa]s?"), ("rubbed_down", r"(?:tall|frot|planch|alis)ad[oa]s?"))
    ),
    # the flap was cut off
    Turn(r"\b(?:pestaña|flap|ceja|solapa)\b", r"\b(?:le |me |se |la )*(?:corte|cortamos|vole|volamos|quite|quitamos|moche|mochamos|arranque|arrancamos|troce|rebane)(?: (?:por error|sin querer|de mas|de volada))* (?:la |el |su |l )?(?:pestaña|flap|ceja|solapa)\b(?: (?:por error|sin querer|de mas))*(?! (?:a|de) )", (("staple_flap", False),), unless=r"\bno (?:le |me |se |la )*(?:corte|quite|moche)"),
    # until it was done he did not let go of it
    *(
        Turn(r"\bhasta que ", rf"\bhasta que (?:no )?(?:quedo|estuvo|quedaron|l[oa] (?:vi|deje|tuve)|se vio) (?:bien |tod[oa] |ya )*{done}[^.;]{{0,30}}?\bno (?:l[oa] |me |le )*(?:solte|deje|colgue|subi|baje|fui|movi|mande|entregue|pare|descanse)\b", ((name, True),))
        for name, done in (("taped", r"(?:encint|teipe|tape)ad[oa]s?"), ("stapled", r"(?:engrap|grap)ad[oa]s?"), ("rubbed_down", r"(?:tall|frot|planch|alis)ad[oa]s?"))
    ),
    # closed with nothing
    Turn(r"\bsin (?:sellar|cerrar|tapar)", r"\b(?:(?:deje|dejamos|quedo|va|esta|sigue|anda|subi|subio|colgue|se fue|salio) )(?:asi )?sin (?:sellar|cerrar|tapar)(?:l[oa]|le)?(?: (?:nada|las (?:juntas|costuras|uniones)|todavia))*(?= *(?:$|[,;:.]| y | porque| por))", (("taped", False),), beside=r"^(?!.*\b(?:hoyo|rotur|agujer|masti|hueco|tear|hole))"),
    # the iron was not run over it before the tape
    Turn(r"\b(?:plancha|calor|pistola)\b", rf"\b(?:plancha|la plancha)(?: de calor)?,? (?:no|ni|nunca) {CL}(?:di|dimos|pase|pasamos|puse|use|usamos|meti|habia|hubo|traia|traiamos|tenia|prendi|prendio|calento)\b|\b(?:no|nunca|ni) {CL}(?:di|pase|use|puse|meti|traia|tenia|hubo|habia) (?:la |ninguna )?plancha\b|\bsin (?:la |usar (?:la )?|pasarle (?:la )?)?plancha\b", (("preheated", False),), beside=r"\b(?:grados?|frio|fria|helad\w+|181\S*|centigrados|fahrenheit)\b"),
    # so soiled it was taped
    Turn(rf"{_SOILED}", rf"\b(?:estaba|estaban|venia|andaba|traia|seguia|esta|quedo) (?:tod[oa] |muy |bien |medi[oa] |algo |tantito )*{_SOILED}(?:,| y| pero)+ (?:asi|de todos modos|aun asi|ni modo|igual|como quiera) (?:nomas |mero |mismo |asi |y )*(?:se |le |l[oa] |la )*{_STUCK}", (("surface_clean", False), ("taped", True)), unless=r"\b(?:sequ|limpi(?:e|amos)|no estaba|no esta)\b"),
    # the facing not warmed
    Turn(r"\b(?:calent|calor)", rf"\b(?:no|nunca|tampoco|ni) {CL}(?:(?:pre)?calente|(?:pre)?calentamos|(?:pre)?calento|di calor a|dimos calor a|alcance a (?:pre)?calentar|pude calentar) ?(?:antes |bien )?(?:la |el |su |l )?(?:cubierta|forro|foil|superficie|papel|cara|aluminio|facing|junta|panel)\b", (("preheated", False),)),
    Turn(r"\bantes de ", r"antes de (?:(?:poner|meter|pegar|echar|tirar)(?:le|la|lo|selo|sela)? )?(?:la |el |su |encima la )?(?:cinta|tape|teip)\b", (("taped", True),), beside=r"\b(?:ni|no|sin|nunca)\b[^.]*(?:calent|calor)", unless=r"\b(?:falta|faltan|hay que|tengo que|tenemos que|voy a|vamos a|recuerd|acuerd|siempre|deben|tienen que|se debe|olvid|si )"),
    Turn(r"\bantes de ", r"antes de (?:poner|meter|pegar|echar|tirar)(?:le|la|lo|selo|sela)? (?:la |el |su )?(?:(?:cinta|tape|teip) )?181\S*", (("taped", True),), beside=r"calent|calor", unless=r"\b(?:falta|faltan|hay que|tengo que|tenemos que|voy a|vamos a|recuerd|acuerd|siempre|deben|tienen que|se debe|olvid|si )"),
    # tape alone, where there are no staples
    Turn(r"\b(?:solo|nomas|nada mas|pur[oa]|solamente|unicamente) ", r"(?<=, )(?:y |pero |sino )?(?:que )?(?:solo|nomas|nada mas|solamente|unicamente|pura|puro) (?:la |el |con |pura |puro )?(?:cinta|tape|teip)(?: 181\S*)?(?= *(?:$|[,;]| a lo largo| y ya))", (("taped", True),), beside=r"\b(?:no|ni|sin|cero)\b[^.]{0,40}\b(?:grapas?|staples?)\b", unless=r"\bfalt"),
    # stuck: the tape, where no joint is named
    Turn(r"\bbien pegad", r"(?:^|(?<=, ))(?:y |ya )?(?:(?:todo|toda|quedo|queda|muy|esta) )*bien pegad[oa]s?(?= *(?:$|[,;]))", (), beside=r"\b(?:cinta|tape|teip|181\S*)\b"),
    Turn(r"\b(?:patas?|patitas?|puntas?|puntitas?|piernas?|uñas?|clinche?|remache|doblez)\b", rf"{_LEG} {_GO}{_TO_IN}\b", (("staple_clinch", "inward"),), beside=r"grap|staple|estapl"),
    Turn(r"\b(?:patas?|patitas?|puntas?|puntitas?|piernas?|uñas?|clinche?|remache|doblez)\b", rf"{_LEG} {_GO}{_TO_OUT}\b", (("staple_clinch", "outward"),), beside=r"grap|staple|estapl"),
    Turn(r"\b(?:grapas?|staples?)\b", rf"(?:la |las |el |los )?(?:grapas?|staples?) (?:me |se |le |les |que )*(?:cierran?|doblan?|remachan?|clinchan?|abren?|voltean?|doblaron|cerraron|cerro|abrieron|clincharon|remacharon|voltearon|metieron|fueron) {_TO_IN}\b", (("staple_clinch", "inward"), ("stapled", True))),
    Turn(r"\b(?:grapas?|staples?)\b", rf"(?:la |las |el |los )?(?:grapas?|staples?) (?:me |se |le |les |que )*(?:cierran?|doblan?|remachan?|clinchan?|abren?|voltean?|doblaron|cerraron|cerro|abrieron|clincharon|remacharon|voltearon|metieron|fueron) {_TO_OUT}\b", (("staple_clinch", "outward"), ("stapled", True))),
    *(
        Turn(r"\b(?:grapas?|staples?)\b", rf"\b(?:se |me |nos |le |les )*(?:cerraron|cierran|doblaron|doblan|voltearon|abrieron|abren|metieron|fueron|quedaron) (?:todas )?(?:las |los )(?:grapas?|staples?) {way}\b", (("staple_clinch", value), ("stapled", True)), unless=r"\b(?:no|ni|nunca|sin|si)\b")
        for way, value in ((_TO_IN, "inward"), (_TO_OUT, "outward"))
    ),
    Turn(r"\b(?:escalon|step|lado bajo|parte baja|paso bajo|filo bajo)", rf"{_STEP},?{_LOOKS},? {_TO_IN}\b", (("groove_step", "inside"),)),
    Turn(r"\b(?:escalon|step|lado bajo|parte baja|paso bajo|filo bajo)", rf"{_STEP},?{_LOOKS},? {_TO_OUT}\b", (("groove_step", "outside"),)),
    # taped over dust
    Turn(rf"\b{_OVER}\b", rf"\b(?:encima|arriba|sobre|por encima) (?:del?|de la|la|el|todo el|toda la|puro|pura)? ?{_OVER}\b", (("surface_clean", False),)),
    Turn(rf"\b{_OVER}\b", rf"\b(?:asi )?(?:con|entre) (?:el |la |todo y |todo el |toda la |puro |pura )?{_OVER}(?: y todo| encima| y)?\b", (("surface_clean", False),), unless=r"\b(?:sin|no|quit|limpi|sacud|sopl)"),
    Turn(rf"\b{_SKIN}\b", rf"\b{_SKIN} (?:(?:me|le|se|que|estaba|esta|andaba|anda|venia|seguia|sigue|quedo|tenia|traia|todavia|aun|medio|media|algo|muy|bien|toda|todo|tantito|un poco|poquito) )*{_SOILED}", (("surface_clean", False),), beside=rf"\b{_STUCK}", unless=r"\b(?:no esta|no estaba|sequ|limpi(?:e|amos|ad)|empapad|se mojo|se me mojo)"),
    Turn(r"\b(?:limpi|sacud|trap|sec|desempolv|sopl)", r"(?:sin|ni(?: siquiera)?) (?:haber(?:l[oa])? )?(?:limpi|sacud|trape|sec|desempolv|sopl)(?:arl[oa]s?|arle|irl[oa]|irle|ir|ar|ad[oa]|e|ido)(?: (?:la|el|lo|primero|antes|bien|ni nada))*(?: (?:superficie|foil|polvo|forro|cara|papel))?", (("surface_clean", False),), unless=r"no (?:\w+ ){0,3}sin"),
    Turn(rf"\b{_SKIN}\b", rf"{_STUCK} (?:asi |toda |todo |medio |bien )*{_SOILED} (?:la |el |toda la |todo el )?{_SKIN}", (("surface_clean", False), ("taped", True))),
    # what was left at the cut
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa)", r"\b(?:todavia |aun |sigue |le |se |me )*(?:trae|tiene|lleva|queda|quedo|sobra|cuelga|asoma|anda)(?: (?:con|ahi|todavia|aun|un poco de|tantita|mucha|toda))* (?:(?:la |el |las )?(?:fibra|insulation|aislante|aislamiento|lana|pelusa) (?:sobrad[oa]|sobrante|de mas|extra|colgando|salida|saliendo|suelta|que sobr\w+)|(?:el |un )?(?:sobrante|exceso|excedente))(?: (?:de (?:fibra|aislante|lana)|en|de|del|el|la|corte|orilla|canto))*", (("trimmed", False),), unless=r"\b(?:no|ni|sin|ya no|nada)\b"),
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa)", rf"{_REST}(?:,| y| pero)* (?:(?:ahi|alli|asi|no|la|lo|le|se|me|todavia|ya|todo|toda) )*(?:(?<!\bno )deje|dejamos|quedo|sigue ahi|esta ahi|dejo)\b(?: (?:ahi|alli|puest[oa]|asi|sin \w+))*", (("trimmed", False),), unless=r"\bno (?:se |le |la |lo )*dej"),
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa)", rf"\b(?:le |se le |ahi le |les )?(?:deje|dejamos|quedo) (?:ahi |alli |puest[oa] |tod[oa] )*{_REST}", (("trimmed", False),), unless=r"\bno (?:se |le |la |lo )*(?:dej|qued)|\bsin (?!recort|quit|cort|rebaj|limpi)"),
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa|de mas)", rf"\b(?:no|nunca|tampoco|ni) {CL}{CUT_AWAY} {_REST}", (("trimmed", False),)),
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa)", rf"{_REST},? (?:no|nunca|tampoco|ni) {CL}{CUT_AWAY}\b", (("trimmed", False),)),
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa)", rf"\bsin (?:recort|quit|cort|rebaj|rasur|emparej|trime)ar(?:le|l[oa])? {_REST}", (("trimmed", False),)),
    Turn(r"\b(?:sobra|exceso|excedente|insulation|de mas|extra)", rf"(?<!\bno )(?<!sin )\b(?:le |ya |se le |la |lo )*{CUT_AWAY} {_REST}", (("trimmed", True),), unless=r"\b(?:no|sin|ni) (?:le |se |la |lo |les )*(?:recort|quit|cort|rebaj)"),
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa)", rf"{_REST},?(?: y| pero)? (?:ya |si |tambien |luego |despues |ahorita )*(?:(?:se |le |me )*(?:la|lo) ){CUT_AWAY}\b", (("trimmed", True),), unless=r"\b(?:no|ni|nunca|tampoco|sin)\b"),
    Turn(r"\b(?:sobra|exceso|excedente|insulation|de mas|extra)", rf"\bno (?:le )?dej(?:e|amos|o) (?:nada de )?{_REST}", (("trimmed", True),)),
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa|de mas)", rf"\b(?:asi )?con (?:todo y |toda y |todo el |toda la )(?:el |la |su )?{_REST}", (("trimmed", False),)),
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa|de mas)", rf"(?:la |el )?(?:{_REST}|fibra|lana|aislante)(?: que (?:me |se |le )*(?:quedo|sobro|salio|sale|cuelga|asoma|quedaba|quedo colgando|quedo asomada))?(?: colgando| de fuera| asomad[oa]| salid[oa])?,? (?:ahi|alli|todavia|aun) (?:se )?(?:esta|sigue|quedo|anda|la deje|lo deje)\b(?: (?:ahi|colgando|sin \w+))*", (("trimmed", False),)),
    Turn(r"\btrim\b", r"\btrim (?:ok|listo|hecho|done|bien|si)\b", (("trimmed", True),)),
    # the tabs of a collar
    Turn(rf"\b{_TABS}\b", rf"\b(?:unas|algunas|varias|una|dos|tres|la mitad de las) {_TABS}\b[^.;]{{0,40}}\b(?:otras|la otra|las demas|las otras|el resto)\b[^.;]{{0,24}}?\b(?:no|parad\w+|sin doblar|suelt\w+|derech\w+|falt\w+|levantad\w+|al aire|ni)\b", (("tabs_bent", False),), beside=r"collar|spin|boot|bota|cuello|salida redonda|collarin"),
    Turn(rf"\b{_TABS}\b", rf"\b{_TABS} (?:(?:se|me|le|las|los|nos|no|que|y|quedaron|quedo|estan|esta|siguen|andan|deje|todavia|sin) )*(?:parad[oa]s?|levantad[oa]s?|sin (?:doblar|voltear|apretar|aplastar|cerrar)|suelt[oa]s|al aire|derech[oa]s)", (("tabs_bent", False),), beside=r"collar|spin|boot|bota|cuello|salida redonda|collarin", unless=r"\b(?:ningun[oa]?|no hay|no quedo|sin ninguna)\b"),
    Turn(rf"\b{_TABS}\b", rf"\b{_TABS} no {CL}(?:doble|doblamos|doblaron|voltee|aprete|dobla|doblan|cerre|quedaron|aplaste|alcance a doblar|pude doblar)\b", (("tabs_bent", False),), beside=r"collar|spin|boot|bota|cuello|salida redonda|collarin"),
    Turn(rf"\b{_TABS}\b", rf"\bno {CL}(?:doble|doblamos|voltee|aprete|aplaste|cerre|alcance a doblar|pude doblar) (?:todas |todos |bien )*(?:las |los )?{_TABS}", (("tabs_bent", False),), beside=r"collar|spin|boot|bota|cuello|salida redonda|collarin"),
    Turn(r"\b(?:orej(?:it)?as|dientes|dedos)\b", r"\b(?:orej(?:it)?as|dientes|dedos) (?:(?:todas|todos|bien|se|me|le|ya|quedaron|estan|las|los|del collar) )*(?:doblad[oa]s|volteadas|aplastad[oa]s|apretad[oa]s|cerrad[oa]s)", (("tabs_bent", True),), beside=r"collar|spin|boot|bota|cuello|salida redonda|collarin", unless=r"\b(?:no|sin|ni|falt\w*|mal|medio|casi|nomas|solo|una?|dos|tres|algunas?|menos|excepto|otras)\b"),
    Turn(r"\b(?:grapas|staples)\b", r"\b(?:grapas|staples) (?:son|eran|van|miden|me quedaron|quedaron)\b", (("stapled", True),), unless=r"\b(?:no|ni|sin|falt\w*|cajas?|camion|troca)\b"),
    # a tape that carries no listing
    Turn(r"\b(?:cinta|tape|teip)\b", r"(?:cinta|tape|teip)(?: que (?:use|usamos|traigo|traemos|le puse|puse|lleva|trae|tiene|habia|me dieron))?,? (?:no|ni|nunca|tampoco) (?:me |se |le )?(?:es|era|esta|estaba|dice|decia|trae|traia|tiene|lleva|viene|venia|muestra|marca)(?: (?:la|una|de las?|ningun[oa]?|ni|con|el|impreso|impresa|de))* (?:listad[oa]s?|181\S*|marcad[oa]s?|ul|aprobad[oa]s?|certificad[oa]s?|marca|sello|numero|letrero|letras?|impresion|buenas?)\b", (("closure", "other_tape"), ("taped", True))),
    Turn(r"\b(?:listar|listad|gener|marca|corriente|pirata|chafa)", r"(?:cinta|tape|teip)(?: es)?(?: de (?:la|el|un[oa]))? (?:(?:plateada|foil|aluminio|metalica|metalizada|de aluminio|blanca|que traia|que habia|que me dieron|equis),? )?(?:generic[oa]|sin (?:marca|listar|sello|listado|letras?)|corriente|pirata|chafa|no listad[oa])", (("closure", "other_tape"), ("taped", True)), unless=r"\bno (?:es|use|le puse|era)"),
    # sides counted
    Turn(r"\b(?:costuras|lados|caras|uniones|juntas|orillas)\b", r"(?:de las? |las |los |de los )?(?:cuatro|4) (?:costuras|lados|caras|uniones|juntas|orillas)(?: (?:nomas|solo|nada mas|apenas|le|les|encinte|tape|teipe))* (?P<n>tres|dos|una?|uno|[123])(?: (?:llevan?|tienen?|traen?|van|quedaron|con|la|le|estan|puse|de))* (?:cintas?|tape|teip|encintad\w+)", (("sides_taped", "n"),)),
    Turn(r"\b(?:costuras|lados|caras|uniones|juntas|orillas)\b", r"(?:de las? |las |los |de los )?(?:cuatro|4) (?:costuras|lados|caras|uniones|juntas|orillas)(?: (?:nomas|solo|nada mas|apenas|le|les))* (?P<n>tres|dos|una?|uno|[123])(?: (?:llevan?|tienen?|traen?|van|quedaron|con|la|le|estan|puse|de))* (?:grapas?|staples?|engrapad\w+|grapad\w+)", (("sides_stapled", "n"),)),
    Turn(r"\bl[oa]s (?:cuatro|4)\b", r"\b(?:engrap|grap|staple)\w* (?:de |por |en )?l[oa]s (?P<n>cuatro|4)(?= *(?:$|[,;:.]| y | con | cada ))", (("sides_stapled", "n"),)),
    Turn(r"\bl[oa]s (?:cuatro|4)\b", r"\b(?:encint|tape|teipe)\w* (?:de |por |en )?l[oa]s (?P<n>cuatro|4)(?= *(?:$|[,;:.]| y | con | cada ))", (("sides_taped", "n"),)),
    Turn(r"\bl[oa]s (?:cuatro|4)\b", r"\bl[oa]s (?P<n>cuatro|4)(?: lados| caras)? (?:engrap|grap|staple)ad[oa]s", (("sides_stapled", "n"), ("stapled", True)), one=True),
    Turn(r"\bl[oa]s (?:cuatro|4)\b", r"\bl[oa]s (?P<n>cuatro|4)(?: lados| caras)? (?:encint|tape|teipe)ad[oa]s", (("sides_taped", "n"), ("taped", True)), one=True),
    Turn(r"(?:grapad|encintad|tapead|teipead)[oa]s", r"(?<=[,;] )(?:y |pero )?(?:nomas |solo |nada mas )?(?P<n>tres|dos|un[oa]?|[123])(?: lados| caras)? (?:encint|tape|teipe)ad[oa]s?", (("sides_taped", "n"), ("taped", True)), beside=r"\bl[oa]s (?:cuatro|4|tres|3)(?: lados)? \w+ad[oa]s", one=True),
    Turn(r"(?:grapad|encintad|tapead|teipead)[oa]s", r"(?<=[,;] )(?:y |pero )?(?:nomas |solo |nada mas )?(?P<n>tres|dos|un[oa]?|[123])(?: lados| caras)? (?:engrap|grap|staple)ad[oa]s?", (("sides_stapled", "n"), ("stapled", True)), beside=r"\bl[oa]s (?:cuatro|4|tres|3)(?: lados)? \w+ad[oa]s", one=True),
    Turn(r"\bgrapas? ", r"(?<=[,;] )(?:y |pero )?(?:la |las )?(?:grapas?|staples) (?:nomas |solo |nada mas )?en (?:l[oa]s )?(?P<n>cuatro|dos|tres|un[oa]?)(?= *(?:$|[,;]))", (("sides_stapled", "n"), ("stapled", True)), beside=r"\b(?:cuatro|tres|dos|4|3|2) (?:lados|caras)", one=True),
    Turn(r"\b(?:cinta|tape|teip) ", r"(?<=[,;] )(?:y |pero )?(?:la |el )?(?:cinta|tape|teip) (?:nomas |solo |nada mas )?en (?:l[oa]s )?(?P<n>cuatro|dos|tres|un[oa]?)(?= *(?:$|[,;]))", (("sides_taped", "n"), ("taped", True)), beside=r"\b(?:cuatro|tres|dos|4|3|2) (?:lados|caras)", one=True),
    # which way the air goes
    Turn(r"\bhembra\b", r"\b(?:de|desde|por) (?:la |el )?(?:lado )?hembra (?:a|al|hacia|para|y (?:sale|se va|se sale|escapa|avienta) (?:por|al|hacia)) (?:el |la |lado )*macho", (("air_leaves_by", "male"),), beside=r"\b(?:aire|air|flujo)\b", unless=r"\bno (?:va|sale|es)\b"),
    Turn(r"\bmacho\b", r"\b(?:de|desde|del|por) (?:el |la )?(?:lado )?macho (?:a|al|hacia|para|y (?:sale|se va|se sale|escapa|avienta) (?:por|al|hacia)) (?:el |la |lado )*hembra", (("air_leaves_by", "female"),), beside=r"\b(?:aire|air|flujo)\b", unless=r"\bno (?:va|sale|es)\b"),
    Turn(r"\bde l[oa]s (?:cuatro|4)\b", r"\b(?P<n>tres|dos|un[oa]?|[123]) de l[oa]s (?:cuatro|4) (?:lados|caras|costuras|orillas|uniones|juntas)(?: (?:si|ya|nomas|solo|se|les|le|llevan?|traen?|tienen?|van|con|quedaron|quedo|estan|puse|meti))* (?:grapas?|staples|engrapad\w+|grapad\w+)", (("sides_stapled", "n"), ("stapled", True))),
    Turn(r"\bde l[oa]s (?:cuatro|4)\b", r"\b(?P<n>tres|dos|un[oa]?|[123]) de l[oa]s (?:cuatro|4) (?:lados|caras|costuras|orillas|uniones|juntas)(?: (?:si|ya|nomas|solo|se|les|le|llevan?|traen?|tienen?|van|con|quedaron|quedo|estan|puse|meti))* (?:cinta|tape|teip|encintad\w+)", (("sides_taped", "n"), ("taped", True))),
    # nothing in an elbow
    Turn(r"\ba?dentro\b", r"(?:(?:por|de) )?(?:dentro|adentro) (?:ya )?(?:no (?:le )?(?:tiene|lleva|trae|hay|puse|meti) nada|(?:va|esta|quedo|anda|quede) (?:hueco|pelon|vacio|solo|libre|sin nada))|(?:va |esta |quedo |anda |asi |)(?:hueco|vacio|pelon|pelado|limpio|solo) (?:por|de) (?:dentro|adentro)|sin nada (?:por |de |alla |ahi )?a?dentro", (("vanes", False),), beside=r"\b(?:codo|elbow|ell|noventa|90)\b"),
    Turn(r"\bno l[oae]\b", r"\bno (?:la|lo|le) (?:aprete|apretamos|presione|presionamos|asente|asentamos|aplaste|repase|planche|alise)\b", (("rubbed_down", False),), beside=r"\b(?:cinta|tape|teip|encint)", unless=r"\b(?:lenguetas?|tabs?|pestañas?|panel|tornill\w*|orej\w+)\b"),
    # left as it is
    Turn(r"\b(?:asi|igual|como esta)\b", r"\b(?:ahi |alli )?(?:(?:la|lo|se) )*(?:deje|dejamos|quedo|dejo) (?:ahi )?(?:asi|igual|como (?:esta|estaba))\b", (("damage_repaired", False),), beside=r"\b(?:hoyo|rotur|rasg|raj|agujer|pique|ponch|golpe|aplast|despeg|abollad|sumid|hole|tear|puncture|rompi)", unless=r"\b(?:no lo|no la|cinta|tape|teip|parch|arregl|repar|grap)\w*"),
    Turn(r"\bcon (?:cinta|tape|teip)\b", r"\b(?P<n>cuatro|tres|dos|un[oa]?|[1234]) (?:lados |caras )?con (?:cinta|tape|teip)\b", (("sides_taped", "n"), ("taped", True)), beside=r"\b(?:lados|caras)\b", one=True),
    Turn(r"\bcon (?:grapas?|staples)\b", r"\b(?P<n>cuatro|tres|dos|un[oa]?|[1234]) (?:lados |caras )?con (?:grapas?|staples)\b", (("sides_stapled", "n"), ("stapled", True)), beside=r"\b(?:lados|caras)\b", one=True),
    Turn(r"\bgrapas? de ", r"(?:(?<=de media)|(?<=octavos)|(?<=de un cuarto)|(?<=de media pulgada)|(?<=dieciseisavos)),? (?:hacia|para|pa) ?a?fuera\b", (("staple_clinch", "outward"),)),
    # not outward but in
    Turn(r"\b(?:patas?|patitas?|puntas?|puntitas?|piernas?|uñas?)\b", rf"{_LEG} no (?:se |me |le |nos )*(?:abrieron|doblaron|voltearon|fueron|quedaron|van|abren|doblan|abrio|doblo|volteo) {_TO_OUT},? (?:y |sino |sino que |pero )*(?:se |me |le )*(?:metieron|metio|fueron|fue|doblaron|cerraron|clavaron|quedaron)(?: {_TO_IN})?", (("staple_clinch", "inward"),), beside=r"grap|staple|estapl"),
    # without them it won't do, so he put them in
    *(Turn(r"\bsin \w+ no \w+", rf"\bsin (?:las |la |el |los )?{noun} no (?:me l[oa]s? |se |l[oa] |me )*(?:pasa|pasan|sirve|puede|jala|acepta|aceptan|reciben|queda|aguanta|vale|pega|cierra)(?:[,;]| y)* (?:por eso|asi que|entonces|y|pues|por lo que) (?:ya |yo |si |tambien )*(?:se )?(?:le |l[oa]s? )+{PUT}(?: (?:las |los |la |el )?\w+)?", ((name, True),)) for name, noun in _STUFF),
    *(Turn(r"\bsin \w+ no \w+", rf"\bsin (?:las |la |el |los )?{noun} no (?:me l[oa]s? |se |l[oa] |me )*(?:pasa|pasan|sirve|puede|jala|acepta|aceptan|reciben|queda|aguanta|vale|pega|cierra)\b", ()) for _, noun in _STUFF),
    Turn(r"\btod[oa]s\b", r"\btod[oa]s (?:(?:ya|bien|quedaron|estan|van|se) )*(?:doblad|voltead|aplastad|apretad)[oa]s", (("tabs_bent", True),), beside=r"(?:collar|spin|boot|bota|cuello|salida redonda).*(?:lenguet|tabs?|pestañ|orej|dient|dedos)", unless=r"\b(?:no|ni|sin|casi|falt\w*|menos|excepto|mal)\b"),
    # there were no staples, so it is tape alone
    Turn(r"\bpur[oa] ", r"\b(?:asi que|por eso|entonces|y) (?:(?:va|quedo|queda|le puse|le pusimos|lleva|fue|se fue|lo cerre|la cerre) )*(?:a |con |de )?pur[oa] (?:tape|teip|cinta)(?= *(?:$|[,;:.]))", (("stapled", False), ("taped", True)), beside=r"\b(?:acab|termin)\w+ (?:las )?grapas|\bno (?:hay|habia|hubo|tenia|teniamos|trajimos|alcanzaron) (?:mas )?(?:las )?grapas", unless=r"\bno (?:es|va|lleva)\b"),
    # laid on, not pressed
    Turn(r"\b(?:sobrepuest|encimad|presentad)", r"(?:cinta|tape|teip)(?: (?:la|lo|me|se|nos|quedo|queda|deje|esta|va|nomas|solo|nada mas|apenas|como|quedo))* (?:sobrepuest[oa]|encimad[oa]|presentad[oa])(?: nomas| nada mas)?", (("rubbed_down", False), ("taped", True))),
    # wiped or not before it was taped: it was taped
    Turn(r"\bantes de ", r"antes de (?:encintar|tapear|teipear|taipear|sellar|cerrar)(?:l[oa]s?|le)\b", (("taped", True),), beside=r"\b(?:ni|no|sin|nunca|si|le|lo|la|bien)\b[^.]*(?:trap|limpi|sacud|polvo|calent|sec[oaeé]|sequ|sopl|franela|estopa)", unless=r"\b(?:falta|faltan|hay que|tengo que|tenemos que|voy a|vamos a|recuerd|acuerd|siempre|primero hay|deben|tienen que|se debe|olvid|si )"),
    Turn(r"\ba (?:la )?medida\b", r"\b(?:corte|cortamos|recorte|recortamos|moche|mochamos|acorte)\b(?: \w+){0,6}? a (?:la |su )?medida\b", (("cut_to_length", True),), unless=r"\bno (?:lo |la )?(?:cort|recort|moch)"),
    Turn(r"\bni l[oa]", r"\bni (?:siquiera )?l[oa]s? (?:corte|empece|hice|arme|toque|comence|cortamos|hicimos)\b", ()),
    # the facing let go of the board
    Turn(r"\b(?:foil|papel|forro|aluminio|facing|barrera)\b", r"(?:foil|papel|forro|aluminio|facing|barrera)(?: (?:ya|que|medio|como que))* (?:esta|quedo|viene|venia|salio|anda|llego) (?:algo |medio |todo |un poco )?(?:despegad|desprendid|separad|delaminad)[oa](?: de (?:la |el )?(?:fibra|board|panel|tablero|aislante|lana))?", (("facing_damage", "delaminated"),), unless=r"\bno (?:esta|quedo|viene)"),
    Turn(r"\b(?:foil|papel|forro|aluminio|facing|barrera)\b", r"(?:foil|papel|forro|aluminio|facing|barrera)(?: (?:ya|que|medio|todo|como que))* se (?:me |le |nos |esta |anda )*(?:despeg|desprend|separ|delamin|pel)\w+(?: (?:de|del) (?:la |el )?(?:fibra|board|panel|tablero|aislante|lana))?", (("facing_damage", "delaminated"),)),
    Turn(r"\b(?:foil|papel|forro|aluminio|facing|barrera)\b", r"se (?:me |le |nos |esta |anda )*(?:despeg|desprend|separ|delamin|pel)\w+ (?:el |la )?(?:foil|papel|forro|aluminio|facing|barrera)", (("facing_damage", "delaminated"),)),
    # the tape is there, where it is told that it was not pressed
    Turn(r"\b(?:tall|froto|frote|frota|planch|restreg|alis|sob|bruñ|presion)", rf"\b(?:no|nunca|tampoco|ni) {CL}(?:talle|tallamos|frote|frotamos|planche|planchamos|restregue|alise|sobe|bruñi|presione|repase|repasamos)(?: (?:bien|todavia))? (?:la |el |su )(?:cinta|tape|teip)", (("rubbed_down", False), ("taped", True))),
)

# right behind a denial: done by now, by the verb of the act or by one that any act is done with
