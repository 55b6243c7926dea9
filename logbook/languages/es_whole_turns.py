"""Turns of Spanish that say an act was or was not done wherever its noun stands: "tabs no le puse", "me brinqué la engrapada".

Written without accents: the words they are read against lose theirs. `{acts}` stands for one noun of `NOUNS` or a list of
them. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.turns_of_words import Turn, WholeTurns

# a thing of the trade, and the fact that it was put on
NOUNS: tuple[tuple[str, str], ...] = (
    ("cross_tabs", r"(?:cross )?tabs(?: cruzad[oa]s| de (?:cinta|tape|teip))?|tiras (?:cruzadas|atravesadas)(?: de (?:cinta|tape|teip))?|tiras de (?:cinta|tape|teip)|tiritas|pestañas(?: de (?:cinta|tape|teip)| cruzadas)|cintas cruzadas"),
    ("taped", r"cintas?(?! (?:metrica|de medir))|cintitas?|teips?|teipcito|tape|tapecito|taip|teipe|taping"),
    ("stapled", r"grapas?|grapitas?|grapotas?|staples?|estaples?|grapadas?|estapleada"),
    ("vanes", r"(?:turning )?vanes?|aletas?(?! (?:de|para) (?:la |las |el )?(?:en)?grap)(?: (?:de giro|guia|direccionales))?|alabes?|venas|guias(?: de(?:l)? (?:aire|giro|flujo))?|paletas(?: (?:direccionales|guia|de giro))?|deflectores|aspas"),
    ("reinforced", r"refuerzos?|tie[ -]?rods?|(?:varillas?|canal(?:es)?|tirantes?)(?: de refuerzo)?"),
    ("(mastic)", r"masti(?:que|c)s?|mastik"),  # beside the others: it closes, but is no tape
    ("staple_flap", r"flaps?|solapas?|ceja|(?:pestañas?|aletas?|orillas?) (?:para|de) (?:la |las |el )?(?:en)?grap(?:ar|ado|as?|eado)"),
)
# the act as a thing: "la engrapada", "el tallado", "un trapazo"
DEEDS: tuple[tuple[str, str], ...] = (
    ("stapled", r"engrapad[oa]|engrapadita|grapeado|grapeada|estapleado"),
    ("taped", r"encintad[oa]|encintadita|teipeado|teipeada|tapeado|tapeada"),
    ("rubbed_down", r"tallad[oa]s?|talladita|tallon|frotad[oa]|frotadita|restregad[oa]|sobada|alisad[oa]|bruñid[oa]|rubbing|rub|rub[ -]?down|planchada|planchado|squeegee|espatula|rodillo|cuña|la tarjeta|la plancha|pasada con la espatula"),
    ("surface_clean", r"trapo|trapito|trapazo|trapeada|franela|estopa|limpiada|limpiadita|limpieza|limpiado|sacudida"),
    ("preheated", r"precalentad[oa]|precalentamiento|precalenton|calentada|calentadita|calenton|pistola de calor|heat ?gun|preheat|calor"),
    ("trimmed", r"recortada|recorte|rebajada|trim|trimeada"),
    ("tabs_bent", r"doblez de las (?:lenguetas|pestañas)|doblada de (?:las )?(?:lenguetas|tabs|pestañas)"),
)

_CL = r"(?:(?:se|le|les|la|lo|las|los|me|nos|te) )*"
_SOFT = r"(?:(?:la verdad|la neta|pues|de plano|ahi si|esta vez|aqui|todavia|aun|ya|la mera verdad|si|eso|esos?|esas?|ahora|hoy|en est[ea]|a est[ea],?) )*"
_PUT = (
    r"(?:puse|pusimos|puso|pusieron|meti|metimos|metio|metieron|eche|echamos|echo|echaron|di|dimos|dio|dieron|hice|hicimos|hizo|hicieron|pase|pasamos|paso|pasaron|aplique|aplicamos|aplicaron|coloque|colocamos|coloco|instale|instalamos|instalo"
    r"|monte|montamos|agregue|agregamos|plante|plantamos|zampe|zampamos|avente|aventamos|clave|clavamos|pegue|pegamos|dispare|disparamos|tire|tiramos|corri|corrimos|use|usamos|ocupe|ocupamos|gaste|gastamos|alcance a (?:poner|meter|dar|hacer|pasar|echar)\w*|pude (?:poner|meter|dar|hacer|pasar|echar)\w*)"
)
_HAS = r"(?:trae|traen|traia|traian|trajo|tiene|tienen|tenia|tuvo|lleva|llevan|llevo|llevaba|hay|hubo|habia|va|van|fue|fueron|existe|existen|entro|entraron|cupieron|llego|llegaron|toco)"
_PP = r"(?:puesto|metido|echado|dado|hecho|pasado|aplicado|colocado|instalado|montado|tocado|empezado|usado|pegado)"
_NONE = r"(?:,? (?:ningun[oa]s?|nadit[ao]|nada|ni un[oa]s?(?: sol[oa])?|para nada|nunca|jamas|tampoco|todavia|aun|a est[ea]|a es[ea]|ahi|alli|en est[ea]|yo creo))*"
_ENDS = r"(?= *(?:$|[,;:.]|y\b|e\b|ni\b|pero\b|porque\b|por ?que\b|pues\b|que\b|ya que\b|asi que\b|de la\b|del\b|a(?:l| la| el| est[ea])\b|en\b|est[ea]\b|el\b|la\b|es de\b|por\b))"
_ALONE = r"(?= *(?:$|[,;:.]|y\b|e\b|pero\b|porque\b|por ?que\b|ya que\b|asi que\b))"
_SKIPPED = r"(?:brinque|brincamos|brinco|salte|saltamos|salto|comi|comimos|ahorre|ahorramos|perdone|omiti|omitimos|vole|volamos|evite|evitamos|deje fuera|deje afuera|dejamos fuera|deje de lado|pase por alto|pasamos por alto)"
_SLIPPED = r"(?:fue|fueron|paso|pasaron|olvido|olvidaron|chispo|barrio|escapo)"
_LEFT = r"(?:deje|dejamos|dejo|dejaron|quedo|quedaron|quede|quedamos|queda|quedan|esta|estan|anda|andan|sigue|siguen|va|van|fue|fueron)"
_TO_DO = r"(?:hacer|hacerle|poner|ponerle|meter|meterle|echar|echarle|dar|darle|aplicar|pasar|pasarle|hecho)"
_UNTIL = r"(?:mañana|pasado mañana|luego|despues|al rato|el rato|mas tarde|otro dia|la tarde|el (?:lunes|martes|miercoles|jueves|viernes|sabado)|cuando \w+|otro rato)"

_COULD = r"(?:alcance|alcanzamos|pude|pudimos|llegue|llegamos|logre|logramos|quise|hubo chance de|me dio tiempo de|dio tiempo de|nos dio tiempo de)"
_DO = r"(?:hacer|poner|meter|echar|dar|aplicar|pasar|usar|instalar|colocar)(?:le|les|la|lo|las|los|sela|selo|selas|selos)?"
_SINCE = r"(?:(?:ya|luego|despues|ahorita|al rato|al final|por fin|hoy|enseguida|pero|y|yo|mismo|ahi) )+"
_DENIED = (
    r"{acts} ?[✗✘❌☒]",
    r"{acts},? (?:andamos|ando|estamos|quedo|quedamos|va|esta) en (?:ceros?|blanco)",
    # "no le pasé trapo", "no le alcancé a dar su tallada"
    rf"\b(?:no|nunca|jamas|tampoco|ni) {_CL}{_PUT} (?:ningun[oa]?s? |ni un[oa]? |un[oa]? |la |el )?{{any}}",
    rf"\b(?:no|nunca|jamas|tampoco|ni) {_CL}(?:{_COULD} )(?:a )?{_DO} (?:la |el |un |una |su )?{{any}}",
    r"(?:(?<=, )|(?<=; )|(?<=\. )|^)no {deeds}",
    r"(?<!nada )\bsin (?:la |el |su |ningun |ninguna |usar |nada de )?{deeds}",
    # "tabs no le puse", "las paletas no se las metí", "guías no trae ninguna", "precalentado no hubo"
    rf"{{acts}} {_SOFT}(?:no|nunca|jamas|tampoco|ni) {_CL}{_PUT}(?! (?:yo|mal|chuec|de mas|al reves|donde|como))\b{{other}}{_NONE}",
    rf"{{acts}}, {_SOFT}(?:no|nunca|jamas|tampoco|ni) {_CL}{_PUT}{_NONE}{_ALONE}",
    rf"{{acts}},? {_SOFT}(?:no|nunca|jamas|tampoco|ni) {_CL}{_HAS}\b{_NONE}{_ALONE}",
    rf"{{acts}},? {_SOFT}(?:no|nunca|jamas|tampoco|ni) {_CL}{_HAS}(?: ningun[oa]s?| ni un[oa]s?(?: sol[oa])?| nada){{other}}",
    rf"{{acts}},? {_SOFT}nadie {_CL}{_PUT}",
    rf"{{acts}},? ni (?:siquiera )?{_CL}(?:ocupe|ocupamos|preocupe|acorde|acordamos|moleste|toque|tocamos|saque|sacamos|empece|empezamos|abri|vi|pele|hice caso|intente|busque)\b",
    rf"\b(?:no|ni|nunca) {_CL}{_HAS} nada de {{acts}}",
    r"{acts},? (?:pues |y |todavia |ya )?(?:mucho )?menos(?= *(?:$|[,;:.]))",
    # "grapa ni una", "de vanes nada", "cinta: cero"
    rf"{{acts}},?:? (?:pues |ahi |la verdad )?(?:nada|nadita|ni (?:un[oa]s?(?: sol[oa])?|media|medio|madres|de chiste|hablar|pensarlo|señas|rastro|rastros|tantit[oa])|cero|nones|nel|ningun[oa]s?|tampoco){_ENDS}",
    rf"(?:ni|cero|nada de) {{acts}},?(?: {_CL}(?:{_PUT}|{_HAS}))",
    rf"ni (?:un|una|un solo|una sola|media|medio) {{acts}}(?: {_CL}(?:{_PUT}|{_HAS}))?",
    rf"(?:^|(?<=[,;:] ))ni {{acts}}{_ALONE}",
    rf"\bno {_CL}(?:{_PUT}|{_HAS}|{_SKIPPED}) ni (?:un[oa]? |un[oa]? sol[oa] |el |la |las |los )?{{acts}}",
    r"(?:cero|nada de) {acts}(?! de | y medi)",
    rf"(?<!todavia )(?<!aun )\b(?:no|nunca|tampoco) {_CL}{_HAS} {{acts}}{_ALONE}",
    # "me brinqué la engrapada", "las staples me las ahorré", "se me fue el tallado"
    rf"(?<!\bno )(?:me|nos) (?:l[oa]s? )?{_SKIPPED} {{acts}}",
    r"(?<!\bno )\b(?:omiti|omitimos|deje fuera|dejamos fuera|pase por alto|pasamos por alto|deje de lado) {acts}",
    rf"{{acts}},? (?:se )?(?:me|nos) (?:(?:la|lo|las|los) )?{_SKIPPED}",
    r"{acts},? (?:la|lo|las|los) (?:omiti|omitimos|deje fuera|dejamos fuera|deje de lado|perdone|pase por alto|saque otra vez)",
    rf"{{acts}},? se (?:me|nos|le) {_SLIPPED}{_ENDS}",
    rf"(?<!\bno )se (?:me|nos|le) {_SLIPPED} (?:hacer |dar |poner |meter |pasar |hacerle |darle |ponerle |meterle |pasarle )?{{acts}}(?! (?:a |al )(?:suelo|piso))",
    # "el tallado lo dejé sin hacer", "las vanes se quedaron en la troca"
    rf"{{acts}},? {_CL}{_LEFT} sin {_TO_DO}",
    rf"(?:deje|dejamos|quedo|quedaron|dejo) sin {_TO_DO} {{acts}}",
    rf"(?:sin|ni) {_TO_DO}(?: (?:el|la|los|las|su|sus))? {{acts}}",
    rf"{{acts}},? {_CL}(?:quede|quedamos|quedo|quedaron|deje|dejamos|olvide|dejo) (?:ahi |alla )?(?:en|arriba de|dentro de|adentro de) (?:el |la |mi |una |un )?(?:trocka|troca|camion|camioneta|caja|bolsa|pickup|gangbox|bodega|taller|casa|shop|van|carro|banco|piso de abajo|otro piso|bote|tienda|almacen)",
    r"(?:sin rastro de|pelon de|pelona de|pelones de|encuerad[oa] de|huerfan[oa] de|ayun[oa] de|limpi[oa] de|se fue sin|se quedo sin|quedo sin|va sin|anda sin|esta sin|salio sin|lo deje sin|la deje sin|le hace falta toda(?: la)?) {acts}(?! (?:tallar|frotar|doblar|apretar|pegar|recortar|planchar|alisar|sobar|asentar|de mas|en|por))",
)
_DAY = r"(?:mañana|pasado mañana|luego|al rato|en la tarde|la (?:otra|proxima) semana|(?:el |la |en )?(?:lunes|martes|miercoles|jueves|viernes|sabado)(?: que viene)?)"
_STILL_TO_DO = (
    rf"{{acts}},? {_CL}(?:llegan?|vienen?|traen|entregan|mandan|surten|van a (?:llegar|traer|entregar)) (?:hasta |para |por ahi )?{_DAY}",
    r"{acts},? (?:(?:ya|estan|esta|van|vienen|quedaron|andan) )*(?:pedid[oa]s?|encargad[oa]s?|ordenad[oa]s?|en camino|de camino|por llegar)\b",
    rf"{{acts}},? {_SOFT}no {_CL}(?:llegan?|han llegado|ha llegado|aparecen?|han traido|han surtido)\b",
    rf"{{acts}},? {_CL}(?:debo|debemos|quede a deber|quedamos a deber)\b",
    r"(?:quede|quedamos|quedo) (?:a deber|debiendo)(?:le|les)? {acts}",
    rf"{{acts}},? {_CL}(?:quede|quedamos|quedo) debiendo(?:le|les)?\b",
    rf"{{acts}},? ni {_CL}(?:he|hemos|ha|han) (?:ni )?\w+(?:ad[oa]|id[oa]|puesto|hecho|visto|abierto)\b",
    r"(?:le |les )?(?:debo|debemos) {acts}",
    rf"{{acts}},? {_CL}(?:hago|hacemos|doy|damos|pongo|ponemos|meto|metemos|echo|echamos|dejo|dejamos|hare|pondre|paso|pasamos|vemos|termino|voy a hacer|voy a poner|voy a dar|voy a meter|va|van|toca)(?: ya| pues| nomas| mejor)* (?:ahorita|orita|para )?{_UNTIL}",
    rf"{{acts}},? {_SOFT}(?:no|nunca|tampoco) {_CL}(?:he|ha|hemos|han) {_PP}{_NONE}",
    rf"{{acts}},? {_CL}{_LEFT} (?:pendientes?|por {_TO_DO}|para {_UNTIL}){_NONE}",
    rf"{{acts}},?:? (?:todavia no|aun no|hasta {_UNTIL}|pendientes?){_ENDS}",
    rf"(?:todavia|aun) no {_CL}(?:he|hemos|ha) {_PP} {{acts}}",
    rf"\bno {_CL}(?:he|hemos) {_PP} {{acts}}",
    rf"(?:deje|dejamos|quedo|quedaron) (?:pendientes?|para {_UNTIL}) {{acts}}",
)
_DONE = (
    # "puro teip le di", "le faltaba cinta y ya se la puse"
    rf"\bpur[oa]s? {{acts}} (?:fue lo que )?{_CL}{_PUT}\b",
    rf"{{acts}},? {_CL}{_PUT} (?:yo|nosotros|yo mismo){_ALONE}",
    rf"(?<!\bno )\b(?:(?:le|les|me|nos) )?(?:falt(?:aba|aban|o|aron)|habia faltado|hacia falta|hacian falta) {{acts}}(?: (?!no\b|ni\b)\w+){{0,3}}?(?:,| y| pero)+ {_SINCE}{_CL}{_PUT}(?: (?:l[oa]s dos|ambas|ambos|todo|tod[oa]s?|bien|ya|hoy|ahorita|complet[oa]))*{_ALONE}",
    r"{acts} ?[✓✔✅☑]",
    r"\bno (?:le|les|me|nos) falt(?:a|an|o|aron)(?: nada| ningun[oa])?,? (?:ni )?{acts}",
    r"\bno hay (?:ningun[oa] |ni un[oa] )?{acts} que no",
    rf"{{acts}},? no se {_CL}(?:despega|cae|suelta|levanta|mueve|zafa|sale|quita|afloja|pela)n?\b(?: (?:ni|por|para|con)\b[^,.;]*)?",
    rf"{{acts}},? (?:ya )?(?:me |nos |le |se )?(?:quedo|quedaron|esta|estan|salio)(?: ya)?(?: (?:bien|list[oa]s?|hech[oa]s?|al (?:puro )?(?:cien|centavo|tiro)|perfect[oa]s?|complet[oa]s?|de lujo|chido)|(?<=ya quedo)|(?<=ya quedaron)|(?<=ya esta)|(?<=ya estan)){_ALONE}",
    rf"{{acts}},? (?:ya|si|ahi si|esas si|esos si|eso si|tambien|todas?|todos?) {_CL}(?:{_PUT}|{_HAS})",
    rf"(?<!\bno )(?<!ni )(?:si|ya|tambien) {_CL}(?:{_PUT}|{_HAS}) {{acts}}",
    rf"\bno (?:se )?(?:me|nos) (?:(?:la|lo|las|los) )?(?:{_SKIPPED}|{_SLIPPED}) {{acts}}",
    rf"(?:{_PUT}) {{acts}} que (?:le |me |nos |todavia |aun )*(?:falt(?:aba|aban|o|aron)|tenia pendiente|estaba pendiente|habia quedado pendiente|quedaba)",
    rf"{{acts}},? no (?:se )?(?:me|nos) (?:(?:la|lo|las|los) )?(?:{_SKIPPED}|{_SLIPPED}){_ENDS}",
)
# a row of things that the piece has: "trae sus aletas y sus grapas", "le puse grapa y tape", "con grapas y cinta"
_BEARS = (
    r"\b(?:a |con |va |es |lleva )*pur[oa]s? {acts}(?= *(?:$|[,;:.]| y | sin))",
    r"(?:^|(?<=[,;:] ))(?:y |ya )?(?:va |quedo |queda |cerrad[oa] |sellad[oa] )?con {acts}(?= *(?:$|[,;:.]| y (?:sin|todo|ya|bien|frot|tall)| pero | bien| cada))",
    r"(?<!\bno )(?<!ni )(?<!nunca )(?<!se )(?:le |les |ya |lo |la |se le )*(?:trae|lleva|tiene|puse|pusimos|meti|metimos|eche|echamos|di|dimos|va con|quedo con|cerre con|cerrad[oa] con|cerrad[oa] a puro|cerrad[oa] a pura) {acts}(?! (?:de|que|en (?:un|dos|tres|solo)|nomas|solo|mal|suelt|floj|despeg|levant|a medias|hasta|por (?:un|dos|tres|fuera)|encima|arriba|ahi|provisional|para))",
)
_LAID = (
    # "la tape se la tiré encima y ya", "grapas todas": told of the thing first, and nothing in it that takes it back
    rf"{{acts}},? (?:ya |si |tambien |yo |ahi )*(?:se |le |les )?(?:la|lo|las|los) {_PUT}(?! (?:mal|chuec\w+|al reves|de mas|a medias|en (?:la|el|mi|un|una|dos|tres)|hasta|donde|por (?:un|una|dos|tres|fuera|mientras)|(?:nomas|solo|nada mas) (?:en|por|de|un|una|dos|tres)|provisional|sobre la mesa|otra vez en)\b)",
    rf"{{acts}} (?:por (?:tod[oa]s?(?: (?:los|las) (?:lados|caras|costuras|juntas|uniones|orillas)| lados| el contorno| alrededor)?|l[oa]s (?:cuatro|4)(?: (?:lados|caras|costuras|orillas|juntas))?)|alrededor|en tod[oa]s? (?:l[oa]s (?:lados|caras|costuras|juntas|uniones|orillas)|el contorno)){_ALONE}",
    rf"(?:^|(?<=[,;:] )){{acts}} tod[oa]s?{_ALONE}",
)
_TOO = (rf"{{acts}},? (?:tambien|igual(?:mente)?){_ENDS}",)
_OWN_WORDS = (  # the thing alone between two commas: "grapas cada 2, tape."
    r"{acts}(?: (?:bien|ok|listos?|listas?|tambien|si|puest[oa]s?|encima|complet[oa]s?|alrededor))?(?= *(?:$|[,;.]))",
)

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
_CUT_AWAY = r"(?:recort|quit|cort|rebaj|rasur|emparej|trime|trim|saqu|limpi)(?:e|amos|o|aron)"
_TABS = r"(?:lenguetas?|tabs?|pestañas?|orejas?|orejitas?|dientes?|dedos|uñas|patitas)"

_BUY = r"pedir|encargar|comprar|traer|surtir|ordenar|conseguir|recoger|ir por|ir a traer|mandar traer|mandar pedir"
_SENT = r"(?: que (?:me |nos |le )*(?:llegaron|llego|trajeron|trajo|mandaron|mando|dieron|dio|habia|traia|traian|traigo|compraron|surtieron|vinieron|vino|tenia|teniamos|hicieron|cortaron|prestaron)(?: (?!no\b)\w+){0,3}?)?"
_NO_GOOD = r"(?:no (?:me |nos |le )*(?:servian?|sirven?|sirvieron|sirvio|eran?|quedaban?|quedaron|quedo|dieron|cabian?|caben?|entraban?|pegaban?|agarraban?|funcionaban?|venian? bien)|(?:venian?|estaban?|llegaron|llego|salieron|salio|vienen|eran|son) (?:todas |todos |muy |bien )?(?:mal|malas?|malos?|chuec\w+|doblad\w+|rot\w+|chic\w+|grande\w*|cort[oa]s?|larg\w+|equivocad\w+|de otr\w+|del otro|oxidad\w+|defectuos\w+|mojad\w+|sec[oa]s?|vencid\w+))(?: (?!y\b|asi\b|por\b|no\b)\w+){0,4}?"
_SO_NOT = rf"(?:,|;| y| asi que| por eso| entonces| y por eso)+ (?:yo |mejor |pues |ya )*no {_CL}{_PUT}{_NONE}{_ALONE}"
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
_INFINITIVES = (
    ("rubbed_down", r"(?:tall|frot|restreg|planch|alis|sob|bruñ|presion|aplan)ar"),
    ("taped", r"(?:encint|teip|teipe|tape|taip)ar"),
    ("stapled", r"(?:(?:en)?grap|(?:en)?grape|estaple)ar"),
    ("surface_clean", r"(?:limpi|sec|sacud|desempolv|trape)ar"),
    ("preheated", r"(?:pre)?calentar"),
    ("tabs_bent", r"(?:dobl|volte)ar"),
    ("trimmed", r"(?:recort|rebaj)ar"),
)
_FACTS: tuple[Turn, ...] = (
    # not a thought of the rubbing: "de tallar la cinta ni me acordé"
    *(
        Turn(r"\b(?:acord|preocup|ocup|olvid|moleste|hice|paso)", rf"\bde {inf}(?:l[oa]s?|le)?(?: (?:bien|toda)?(?: ?(?:la|el|las|los|ese|esa|su) \w+)?)?,? (?:(?:ni|no|nunca|tampoco) (?:siquiera )?(?:me |nos )*(?:acord|preocup|ocup|molest)\w+|(?:me|nos) olvid\w+|se (?:me|nos) (?:olvido|paso|fue))|(?:ni|no|nunca) (?:me |nos )*(?:acorde|acordamos|preocupe|ocupe|moleste) (?:de|en|por) {inf}(?:l[oa]s?|le)?\b|(?<!\bno )(?:me|nos) olvid(?:e|amos) de {inf}(?:l[oa]s?|le)?\b", ((name, False),))
        for name, inf in _INFINITIVES
    ),
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
    *(Turn(r"\bsin \w+", rf"\bsin (?:las |los |la |el )?{noun} (?:primero|al principio|de primero|de entrada)(?:,| y| pero)+ (?:ya |luego |despues |al final |ahora |yo |mejor )+(?:se |le )?l[oa]s? {_PUT}\b", ((name, True),)) for name, noun in _STUFF),
    *(Turn(r"\bsin \w+|primero", rf"\bsin (?:las |los |la |el )?{noun} (?:primero|al principio|de primero|de entrada)\b|\b(?:primero|al principio|de primero) (?:(?!no\b)\w+ ){{0,3}}sin (?:las |los |la |el )?{noun}\b", (), beside=rf"\b(?:le|les|se) (?:l[oa]s? )?{_PUT} (?:las |los |la |el |sus )?{noun}\b") for _, noun in _STUFF),
    # there, and had to come off
    *(Turn(r"\b(?:sac|quit|arranc)", rf"\b{noun}(?: (?!no\b|ni\b)\w+){{0,2}}(?:,| y| pero)+ (?:ya |luego |despues )*(?:se |me |le )*l[oa]s? (?:tuve que|tuvimos que|hubo que|(?:me |nos )?(?:hicieron|hizo|mandaron|mando))(?: a)? (?:quitar|sacar|arrancar)(?! (?:un[oa]\b|dos|la ultima|y ))(?!.*\b(?:volvi|volvimos|{_PUT}))", ((name, False),)) for name, noun in _STUFF),
    # it would not go in well, and was done over: the doing over tells
    Turn(r"\bvolv(?:i|imos) a ", r"\bno (?:me |nos |le )?(?:agarr|peg|entr|prend|clav|qued|sent|met)\w* (?:muy )?bien (?:la |las |el |los |una |un )?(?:grapas?|cinta|tape|teip|aletas?|guias?)\b[^.;]{0,40}?(?=(?:,| y) (?:ya |asi que |entonces |pero )*(?:l[oa]s? |le |se l[oa]s? )?volv(?:i|imos) a )", ()),
    Turn(r"\bmasti", r"\b(?:mastique|mastic) (?:ya )?no (?:me |nos |le )(?:quedaba|quedaban|quedo|alcanzaba|alcanzo|sobraba|habia quedado)\b", ()),
    Turn(r"\bpor ", r"\b(?:cinta|tape|teip) por (?:l[oa]s )?(?P<n>cuatro|tres|dos) (?:lados|caras|costuras|orillas|juntas|uniones)", (("sides_taped", "n"), ("taped", True))),
    Turn(r"\bpor ", r"\b(?:grapas?|staples?) por (?:l[oa]s )?(?P<n>cuatro|tres|dos) (?:lados|caras|costuras|orillas|juntas|uniones)", (("sides_stapled", "n"), ("stapled", True))),
    # others put in, by their leg alone
    Turn(r"\bde (?:media|\w+ octavos|\d/\d)", rf"\b{_PUT} (?:otras |unas |las )?(?:nuevas )?de (?:media|tres octavos|cinco octavos|\d/\d)\b", (("stapled", True),), beside=r"\b(?:grapas|staples)\b", unless=r"\b(?:no|ni|si|sin|cinta|tape|teip|board|tabla|panel)\b"),
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
    Turn(r"\bsobr[oa]", r"\b(?:le |me |ahi |nos )?(?:sobro|sobra|sobraba|sobran|quedo|quedaba) (?:algo de |tantita |tantito |poquita |mucha |un poco de |un pedazo de |una tira de )?(?:fibra|lana|insulation|aislante|aislamiento|pelusa|material|board)(?: (?:en|de|del|por|al) (?:el |la )?(?:corte|orilla|canto|punta|lado))*(?:,| y| pero| que)+ (?:yo |ya |ahi |asi )*(?:no|nunca|tampoco|ni) {CL}(?:{CUT}|he \w+|alcance a \w+|pude \w+)\b".replace("{CL}", _CL).replace("{CUT}", _CUT_AWAY), (("trimmed", False),)),
    # not every three but every two
    Turn(r"\bno \w+ (?:las |la )?grapas?\b", rf"\bno {_CL}(?:{_HAS}|estan|quedaron|puse|pusimos|meti) (?:las |la )?(?:grapas?|staples?) (?:a )?cada \w+(?: y medi[ao])?(?: pulgadas?)?(?: como [^,;.]*)?(?=,? (?:(?:sino|pero|si no|las|van|son|es|estan|esta|quedaron) ))", ()),
    Turn(r"\b(?:las|la) \w+ (?:a )?cada\b", r"\blas? (?:tiene|trae|lleva|puse|pusimos|meti|di|deje|eche) (?:a |de a )?cada\b", (("stapled", True),), beside=r"\b(?:grapas?|staples?)\b", unless=r"\b(?:no|ni|si|tabs|tornillos|pijas)\b"),
    *(Turn(r"\bas[ií]\b|\bahi\b", rf"\b{_AT_AN_END} (?:ya )?(?:el |la |las |los |mas )?{noun}(?: (?:buen[oa]|que \w+))?{_LEFT_AT_THAT}", ((name, False),), unless=r"\b(?:a la mitad|lados?|esquinas?|antes de|llegando)\b") for name, noun in _STUFF),
    # instead of staples
    Turn(r"\b(?:en (?:lugar|vez) de|a falta de) ", r"\b(?:en (?:lugar|vez) de|a falta de) (?:las? |poner(?:le)? )?(?:grapas?|staples?|(?:en)?grapar(?:l[oa])?)\b(?!.*\b(?:tabs|tiras|tiritas|pestañas|tornillos)\b)", (("stapled", False),), unless=r"\b(?:mas|largas|otras) grapas|\bdos\b"),
    # nothing at all has been done
    Turn(r"\bnada\b", rf"\b(?:todavia |aun )?(?:no|ni) (?:he|hemos|hay|tengo|tenemos|llevo|llevamos) (?:{_NOTHING_DONE} nada|nada {_NOTHING_DONE})(?: (?:hoy|todavia|aun|aqui|de nada|del run \w+))*", ()),
    Turn(r"\b(?:porque|por ?que|pues|ya que|es que) ", rf"\b(?:porque|por ?que|pues|ya que|es que) (?:de (?:la |las |los |el )?\w+(?: \w+)? )?(?:ya |aqui |ahorita |hoy )*no (?:habia|hubo|hay|tenia|teniamos|traia|traiamos|tengo|me dieron|me alcanzaron|llegaron|llego|alcanzaron|alcanzo|trajeron|surtieron)(?: (?:mas|de otra|de otras|de (?:la |las )?(?:media|tres|dos|cuatro|buen\w+|larg\w+|anch\w+)|nada|otra|otras|buena|de la buena|de la larga))*{_ALONE}", ()),
    # none was there, why he did not: what stands behind is told anew
    Turn(r"\bno (?:habia|hubo|hay|tenia|teniamos|traia|traiamos|llegaron|llego)\b", r"\b(?:porque|por ?que|pues|ya que|como|es que) (?:ya |aqui |ahorita |hoy )*no (?:habia|hubo|hay|tenia|teniamos|traia|traiamos|tengo|me dieron|me alcanzaron|llegaron|llego|alcanzaron|alcanzo|trajeron|surtieron)(?: (?:en (?:la|el) \w+|mas|ni una|ninguna|aqui|hoy|ahorita|todavia|nada))*(?= (?:y )?(?:lo |la |va |quedo |esta |ya )*(?:(?:en)?grap|encint|teip|tape|tall|frot|sell|cerr)\w+)", (), beside=r"\b(?:no|sin|ni)\b.*\b(?:porque|por ?que|pues|ya que|como|es que)\b"),
    # the stuff was no good: not used, or nothing said of it
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
    Turn(r"\b(?:plancha|calor|pistola)\b", rf"\b(?:plancha|la plancha)(?: de calor)?,? (?:no|ni|nunca) {_CL}(?:di|dimos|pase|pasamos|puse|use|usamos|meti|habia|hubo|traia|traiamos|tenia|prendi|prendio|calento)\b|\b(?:no|nunca|ni) {_CL}(?:di|pase|use|puse|meti|traia|tenia|hubo|habia) (?:la |ninguna )?plancha\b|\bsin (?:la |usar (?:la )?|pasarle (?:la )?)?plancha\b", (("preheated", False),), beside=r"\b(?:grados?|frio|fria|helad\w+|181\S*|centigrados|fahrenheit)\b"),
    # so soiled it was taped
    Turn(rf"{_SOILED}", rf"\b(?:estaba|estaban|venia|andaba|traia|seguia|esta|quedo) (?:tod[oa] |muy |bien |medi[oa] |algo |tantito )*{_SOILED}(?:,| y| pero)+ (?:asi|de todos modos|aun asi|ni modo|igual|como quiera) (?:nomas |mero |mismo |asi |y )*(?:se |le |l[oa] |la )*{_STUCK}", (("surface_clean", False), ("taped", True)), unless=r"\b(?:sequ|limpi(?:e|amos)|no estaba|no esta)\b"),
    # the facing not warmed
    Turn(r"\b(?:calent|calor)", rf"\b(?:no|nunca|tampoco|ni) {_CL}(?:(?:pre)?calente|(?:pre)?calentamos|(?:pre)?calento|di calor a|dimos calor a|alcance a (?:pre)?calentar|pude calentar) ?(?:antes |bien )?(?:la |el |su |l )?(?:cubierta|forro|foil|superficie|papel|cara|aluminio|facing|junta|panel)\b", (("preheated", False),)),
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
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa|de mas)", rf"\b(?:no|nunca|tampoco|ni) {_CL}{_CUT_AWAY} {_REST}", (("trimmed", False),)),
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa)", rf"{_REST},? (?:no|nunca|tampoco|ni) {_CL}{_CUT_AWAY}\b", (("trimmed", False),)),
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa)", rf"\bsin (?:recort|quit|cort|rebaj|rasur|emparej|trime)ar(?:le|l[oa])? {_REST}", (("trimmed", False),)),
    Turn(r"\b(?:sobra|exceso|excedente|insulation|de mas|extra)", rf"(?<!\bno )(?<!sin )\b(?:le |ya |se le |la |lo )*{_CUT_AWAY} {_REST}", (("trimmed", True),), unless=r"\b(?:no|sin|ni) (?:le |se |la |lo |les )*(?:recort|quit|cort|rebaj)"),
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa)", rf"{_REST},?(?: y| pero)? (?:ya |si |tambien |luego |despues |ahorita )*(?:(?:se |le |me )*(?:la|lo) ){_CUT_AWAY}\b", (("trimmed", True),), unless=r"\b(?:no|ni|nunca|tampoco|sin)\b"),
    Turn(r"\b(?:sobra|exceso|excedente|insulation|de mas|extra)", rf"\bno (?:le )?dej(?:e|amos|o) (?:nada de )?{_REST}", (("trimmed", True),)),
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa|de mas)", rf"\b(?:asi )?con (?:todo y |toda y |todo el |toda la )(?:el |la |su )?{_REST}", (("trimmed", False),)),
    Turn(r"\b(?:sobra|exceso|excedente|fibra|insulation|aislante|aislamiento|lana|pelusa|de mas)", rf"(?:la |el )?(?:{_REST}|fibra|lana|aislante)(?: que (?:me |se |le )*(?:quedo|sobro|salio|sale|cuelga|asoma|quedaba|quedo colgando|quedo asomada))?(?: colgando| de fuera| asomad[oa]| salid[oa])?,? (?:ahi|alli|todavia|aun) (?:se )?(?:esta|sigue|quedo|anda|la deje|lo deje)\b(?: (?:ahi|colgando|sin \w+))*", (("trimmed", False),)),
    Turn(r"\btrim\b", r"\btrim (?:ok|listo|hecho|done|bien|si)\b", (("trimmed", True),)),
    # the tabs of a collar
    Turn(rf"\b{_TABS}\b", rf"\b(?:unas|algunas|varias|una|dos|tres|la mitad de las) {_TABS}\b[^.;]{{0,40}}\b(?:otras|la otra|las demas|las otras|el resto)\b[^.;]{{0,24}}?\b(?:no|parad\w+|sin doblar|suelt\w+|derech\w+|falt\w+|levantad\w+|al aire|ni)\b", (("tabs_bent", False),), beside=r"collar|spin|boot|bota|cuello|salida redonda|collarin"),
    Turn(rf"\b{_TABS}\b", rf"\b{_TABS} (?:(?:se|me|le|las|los|nos|no|que|y|quedaron|quedo|estan|esta|siguen|andan|deje|todavia|sin) )*(?:parad[oa]s?|levantad[oa]s?|sin (?:doblar|voltear|apretar|aplastar|cerrar)|suelt[oa]s|al aire|derech[oa]s)", (("tabs_bent", False),), beside=r"collar|spin|boot|bota|cuello|salida redonda|collarin", unless=r"\b(?:ningun[oa]?|no hay|no quedo|sin ninguna)\b"),
    Turn(rf"\b{_TABS}\b", rf"\b{_TABS} no {_CL}(?:doble|doblamos|doblaron|voltee|aprete|dobla|doblan|cerre|quedaron|aplaste|alcance a doblar|pude doblar)\b", (("tabs_bent", False),), beside=r"collar|spin|boot|bota|cuello|salida redonda|collarin"),
    Turn(rf"\b{_TABS}\b", rf"\bno {_CL}(?:doble|doblamos|voltee|aprete|aplaste|cerre|alcance a doblar|pude doblar) (?:todas |todos |bien )*(?:las |los )?{_TABS}", (("tabs_bent", False),), beside=r"collar|spin|boot|bota|cuello|salida redonda|collarin"),
    Turn(r"\b(?:orej(?:it)?as|dientes|dedos)\b", r"\b(?:orej(?:it)?as|dientes|dedos) (?:(?:todas|todos|bien|se|me|le|ya|quedaron|estan|las|los|del collar) )*(?:doblad[oa]s|volteadas|aplastad[oa]s|apretad[oa]s|cerrad[oa]s)", (("tabs_bent", True),), beside=r"collar|spin|boot|bota|cuello|salida redonda|collarin", unless=r"\b(?:no|sin|ni|falt\w*|mal|medio|casi|nomas|solo|una?|dos|tres|algunas?|menos|excepto|otras)\b"),
    Turn(r"\b(?:grapas|staples)\b", r"\b(?:grapas|staples) (?:son|eran|van|miden|me quedaron|quedaron)\b", (("stapled", True),), unless=r"\b(?:no|ni|sin|falt\w*|cajas?|camion|troca)\b"),
    # a tape that carries no listing
    Turn(r"\b(?:cinta|tape|teip)\b", r"(?:cinta|tape|teip)(?: que (?:use|usamos|traigo|traemos|le puse|puse|lleva|trae|tiene|habia|me dieron))?,? (?:no|ni|nunca|tampoco) (?:me |se |le )?(?:es|era|esta|estaba|dice|decia|trae|traia|tiene|lleva|viene|venia|muestra|marca)(?: (?:la|una|de las?|ningun[oa]?|ni|con|el|impreso|impresa|de))* (?:listad[oa]s?|181\S*|marcad[oa]s?|ul|aprobad[oa]s?|certificad[oa]s?|marca|sello|numero|letrero|letras?|impresion|buenas?)\b", (("closure", "other_tape"), ("taped", True))),
    Turn(r"\b(?:listar|listad|gener|marca|corriente|pirata|chafa)", r"(?:cinta|tape|teip)(?: es)?(?: de (?:la|el|un[oa]))? (?:(?:plateada|foil|aluminio|metalica|metalizada|de aluminio|blanca|que traia|que habia|que me dieron|equis),? )?(?:generic[oa]|sin (?:marca|listar|sello|listado|letras?)|corriente|pirata|chafa|no listad[oa])", (("closure", "other_tape"), ("taped", True)), unless=r"\bno (?:es|use|le puse|era)"),
    # sides counted
    Turn(r"\b(?:costuras|lados|caras|uniones|juntas|orillas)\b", r"(?:de las? |las |los |de los )?(?:cuatro|4) (?:costuras|lados|caras|uniones|juntas|orillas)(?: (?:nomas|solo|nada mas|apenas|le|les|encinte|tape|teipe))* (?P<n>tres|dos|una?|uno|[123])(?: (?:llevan?|tienen?|traen?|van|quedaron|con|la|le|estan|puse|de))* (?:cintas?|tape|teip|encintad\w+)", (("sides_taped", "n"),)),
    Turn(r"\b(?:costuras|lados|caras|uniones|juntas|orillas)\b", r"(?:de las? |las |los |de los )?(?:cuatro|4) (?:costuras|lados|caras|uniones|juntas|orillas)(?: (?:nomas|solo|nada mas|apenas|le|les))* (?P<n>tres|dos|una?|uno|[123])(?: (?:llevan?|tienen?|traen?|van|quedaron|con|la|le|estan|puse|de))* (?:grapas?|staples?|engrapad\w+|grapad\w+)", (("sides_stapled", "n"),)),
    Turn(r"\bl[oa]s (?:cuatro|4)\b", r"\b(?:engrap|grap|staple)\w* (?:de |por |en )?l[oa]s (?P<n>cuatro|4)(?= *(?:$|[,;:.]| y ))", (("sides_stapled", "n"),)),
    Turn(r"\bl[oa]s (?:cuatro|4)\b", r"\b(?:encint|tape|teipe)\w* (?:de |por |en )?l[oa]s (?P<n>cuatro|4)(?= *(?:$|[,;:.]| y ))", (("sides_taped", "n"),)),
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
    *(Turn(r"\bsin \w+ no \w+", rf"\bsin (?:las |la |el |los )?{noun} no (?:me l[oa]s? |se |l[oa] |me )*(?:pasa|pasan|sirve|puede|jala|acepta|aceptan|reciben|queda|aguanta|vale|pega|cierra)(?:[,;]| y)* (?:por eso|asi que|entonces|y|pues|por lo que) (?:ya |yo |si |tambien )*(?:se )?(?:le |l[oa]s? )+{_PUT}(?: (?:las |los |la |el )?\w+)?", ((name, True),)) for name, noun in _STUFF),
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
    Turn(r"\b(?:tall|froto|frote|frota|planch|restreg|alis|sob|bruñ|presion)", rf"\b(?:no|nunca|tampoco|ni) {_CL}(?:talle|tallamos|frote|frotamos|planche|planchamos|restregue|alise|sobe|bruñi|presione|repase|repasamos)(?: (?:bien|todavia))? (?:la |el |su )(?:cinta|tape|teip)", (("rubbed_down", False), ("taped", True))),
)

# right behind a denial: done by now, by the verb of the act or by one that any act is done with
_VERBS = (
    ("stapled", rf"(?:(?:en)?grap|grape|estapl|staple)\w*(?:e|amos)\b|{_PUT}"),
    ("taped", rf"(?:encint|teip|tape|taip|peg)\w*(?:e|amos)\b|{_PUT}"),
    ("rubbed_down", r"(?:tall|frot|restreg|planch|alis|sob|bruñ|presion|apret)\w*(?:e|amos)\b|(?:di|dimos|pase|pasamos|hice)(?! (?:cinta|grap))"),
    ("surface_clean", r"(?:limpi|sacud|desempolv|trape|sec|sequ)\w*(?:e|i|amos|imos)\b|(?:di|dimos|pase|pasamos)"),
    ("preheated", r"(?:pre)?calent\w*(?:e|amos)\b|(?:di|dimos)(?: su)? (?:calor|su calentada|calentada)"),
    ("trimmed", rf"{_CUT_AWAY}\b"),
    ("vanes", rf"{_PUT}"),
    ("cross_tabs", rf"{_PUT}"),
    ("tabs_bent", r"(?:dobl|volte|aplast|apret|cerr)\w*(?:e|amos)\b"),
    ("damage_repaired", r"(?:parch|arregl|repar|tap|resan|remend|compus|cambi)\w*(?:e|amos|imos)\b"),
)
_AFTER_ALL = tuple((name, rf"[,;:.]? *{_SINCE}{_CL}(?:{verbs})(?: (?:bien|tod[oa]s?|ya|hoy|ahorita|tambien|yo|las? que faltaban?|por completo))*{_ALONE}") for name, verbs in _VERBS)

# whose words these are: plans and other pieces, to the end of their sentence
_PLANS = (
    r"(?:estoy|estamos|ando|andamos|sigo|seguimos) esperando (?:a )?(?:que llegue )?(?:la|el|las|los|al) (?:transicion|recta|recto|codo|tapa|pieza|tee|te|reduccion|pleno|collarin|tramo|inspector|board|panel|lift|elevador)\b.*",
    r"(?:a las? \w+|al rato|luego|ahorita|hoy) (?:viene|vienen|llega|llegan|va a venir|pasa|pasan) (?:el|la|los|las|a) .*",
    r"(?:el|mi|nuestro) plan (?:es|era|sigue|para)\b.*|la (?:idea|intencion|meta) (?:es|era)\b.*|(?:se|lo) (?:planea|tiene pensado|tenemos pensado|tengo pensado)\b.*|(?:planeamos|planeo|pensamos|pienso|queremos|quiero|tenemos pensado|tengo pensado|esperamos) (?:hacer|armar|cortar|empezar|encintar|engrapar|terminar|montar|colgar|subir|ponerle|ponerl[oa]s|dejar|meter)\b.*",
    r"(?:mañana|pasado mañana|el (?:lunes|martes|miercoles|jueves|viernes|sabado)|la (?:otra|proxima|siguiente) semana|manana)(?: ya| si| temprano| en la mañana| a primera hora| nos| me| le| les| dios mediante| vamos a| voy a)* (?:cambi[ao]|us[ao]|usam|empez|empie|arranc|segu|sig[uo]|trabaj|toc|vien|lleg|tra[ie]|comenz|arm[ao]|cort[ao]|mov|pas[ao]|entr|(?:usar|cambiar|empezar|seguir|trabajar|arrancar|armar|cortar)\\b)\w*.*",
    r"(?:ocupo|necesito|ocupamos|necesitamos|hace falta|quiero|urge|me urge|me urgen|urgen) (?:que (?:me|nos|le|les|alguien)?|(?:como )?(?:un|dos|tres|cuatro|cinco|mas|otr[oa]s?|unos|unas) (?:mas )?(?:rollos?|cajas?|paquetes?|botes?|cubetas?|cartuchos?)).*",
)
_ASKED = r"(?:(?:debi|debia|deberia|deberiamos|debimos|tenia que|teniamos que|habia que|tuve que haber|me tocaba|nos tocaba|tocaba|se supone que|dicen que hay que)(?: (?:haber(?:le|les|l[oa]s?)?|poner|meter|echar|dar|llevar|hacer|usar|puesto|metido|echado|dado|hecho)(?:le|les|l[oa]s?)?)*|pide|piden|pedia|pidio|marca|marcaba|quiere|quieren|queria|ordena|manda|(?:plano|dibujo|spec|especificacion|diseño)(?: \w+)? (?:lleva|llevaba|trae|dice|decia))"
_EVERY = r"(?: (?:a )?cada \w+(?: y (?:medi[ao]|cuarto))?(?: pulgadas?)?)?"
_ASKED_NOT = (rf"{_ASKED} {{acts}},? (?:y|pero|mas) (?:yo |la verdad |ahi )*(?:no|nunca) {_CL}{_PUT}",)
_ASKED_DONE = (rf"{_ASKED} {{acts}}{_EVERY},? (?:y|pero|asi que) (?:yo |ya |si |tambien )*{_CL}{_PUT}(?:{_ALONE}|(?= (?:a |de a )?cada\b))",)
_SOMEBODY = r"(?:{name}|don \w+|mi (?!\w*(?:pieza|codo|tramo|recto|cinta|parte))\w+|otr[oa]s? (?:turno|cuadrilla|equipo|crew|gente|compa\w*|muchach\w+|pareja|gallo|vato|cuate|chav\w+|lado)|otros\b|ell[oa]s|la otra$|el otro$|los de \w+|los otros|turno\b|la noche|la cuadrilla|el (?:electrico|electricista|plomero|compa|ayudante|chalan|pintor)|compa\w*|compadre|al lado|junto)"
_OTHERS = (
    rf"(?:(?:el|la|ese|esa|al|a la) )?(?:\w+ ){{1,2}}(?:es|son|era|eran) (?:del?|de la|de los|de las|para) (?:el |la )?{_SOMEBODY}.*",
    rf"(?:(?:es[ae]|est[ae]|aquel|aquella) )?(?:ya )?(?:lo|la) (?:dejo|hizo|armo|empezo|monto|corto|colgo|trabajo|dejaron|hicieron|empezaron|armaron)(?: \w+){{0,2}} (?:el |la |los )?{_SOMEBODY}.*",
    rf"(?:(?:la|el|otra|otro) )?\w+ (?:siguiente|que sigue|proxim[oa]|de enfrente|de arriba|de abajo) (?:ya )?(?:le |se )?(?:la |lo )?(?:monta|arma|hace|pone|termina|cuelga|corta|arman|hacen|ponen|lleva|ve|toca|va a \w+|van a \w+|es|trae)\b.*\b{_SOMEBODY}.*",
    rf"(?:el|la|los|las) que (?:(?!le\b|yo\b)\w+ ).*\b(?:es|son) (?:el|la|los|las) (?:del?|de la|de los|que) (?:el |la )?{_SOMEBODY}.*",
    r".*\bno (?:es|son|fue|era) (?:mi[oa]s?|nuestr[oa]s?|de nosotros|trabajo mio|cosa mia)\b.*",
    r"(?:hay que|falta|toca|tienen que|tenemos que|tengo que|me toca|nos toca) \w+r(?:l[eoa]s?)? (?:l[oa]s?|el|todo lo) (?:\w+ ){0,2}que (?:\w+ ){0,1}(?:hizo|hicieron|armo|armaron|dejo|dejaron|monto|montaron|puso|pusieron|saco|sacaron)\b.*",
    r"(?:cheque|revise|vi|mire|checamos|revisamos|fui a ver|encontre) .*\b(?:de los otros|de la otra (?:cuadrilla|gente)|del otro (?:turno|equipo)|de otr[oa]s?|ajen[oa]s?|de los de)\b.*",
    r".*\b(?:la|lo) (?:hizo|armo|dejo|saco|monto|hicieron|armaron|engrapo|encinto) (?:{name}|don \w+|mi \w+|los de \w+|el (?:compa|chalan|ayudante|otro|de \w+))\b.*",
    r"(?:ya )?(?:la|lo|las|los|le) \w+(?:aron|ieron|io|o) (?:los de|los del|el de|la de|los otros|el otro|mi (?:compañero|compa|ayudante|primo|hermano)|el (?:compa|chalan|ayudante)|la otra cuadrilla|otra gente|otros)\b.*",
    r"(?:la|el|las|los|esa|ese) (?:pieza |otra |otro |recta |tramo |codo |tapa )?(?:de al lado|de junto|de enseguida|vecin[oa]|que (?:hicieron|hizo|armaron|armo|dejaron|dejo|montaron|monto|sacaron|puso|pusieron|trajeron) (?:los|las|el|la|otr\w+|ell[oa]s|mi|don|ayer)).*",
)

SPANISH_WHOLE_TURNS = WholeTurns(
    cue=r"[✓✔✅☑✗✘❌☒]|\b(?:menos|puse|pusimos|pur[oa]|falt|hac[ií]an? falta|pedid|encargad|ordenad|camino|llegar|pide|piden|plano|dibujo|marca|quiere|ordena|no|ni|nunca|jamas|tampoco|nadie|cero|nada|sin|si|ya|tambien|todavia|aun|pelon|pelona|hago|hacemos|toca|rato|luego|debo|debe|deber|debi|blanco|ceros|despues|mañana|lunes|pongo|alcanc|pude|pudimos|brinqu|salt|ahorr|comi|omit|dej|qued|vol|perdon|fue|pas[oe]|olvid|pendiente|brinc|rastro|encuerad|limpi|evit|chispo)",
    nouns=NOUNS,
    deeds=DEEDS,
    before=r"(?:(?:el|la|los|las|del|su|sus|un|una|unos|unas|lo del?|lo de la|lo de las|puro|pura|mas|ese|esa|esos|esas|otro|toda la|todas las|todo el) )?",
    before_deeds=r"\b(?:el|la|su|un|una|del|lo del|lo de la|lo de el) ",
    joins=r" (?:y|e|ni|o|u) ",
    denied=_DENIED,
    open=_STILL_TO_DO,
    done=_DONE,
    bears=(*_BEARS, *_LAID, *_TOO),
    alone=_OWN_WORDS,
    asked_not=_ASKED_NOT,
    asked_done=_ASKED_DONE,
    instead=r"\b(?:en (?:lugar|vez) de|a falta de|en sustitucion de) ",
    faulty=r"chuec|suelt|floj|mal |despeg|levant|rot[oa]|parad|abiert|fuera|de mas|torcid|salid|saltad|botad|zafad|sin (?:doblar|pegar|tallar|frotar|clavar)|que no ",
    facts=_FACTS,
    after_all=_AFTER_ALL,
    plans=_PLANS,
    others=_OTHERS,
    another=(
        r"(?:al|a la|a los|a las) (?:otr[oa]s?|demas|de al lado|de junto|de enseguida|que sigue|siguiente)(?! (?:lado|cara|extremo|punta|orilla|esquina|junta|costado|borde|panel|costura|pieza|mitad)) (?:le|les|se|no|ya|todavia|aun)\b",
        r"(?:el|la|los|las) (?:otr[oa]s?|demas|de al lado|de junto|que sigue)(?! (?:lado|cara|extremo|punta|orilla|esquina|junta|costado|borde|panel|costura|mitad)) (?:no |ya |si |todavia |aun |nomas )*(?:trae|lleva|tiene|esta|estan|quedo|quedaron|va|van|es|son|se|le)\b",
    ),
    leads=r"(?:(?:nomas que|solo que|nada mas que|fijate que|resulta que|eso si|y|pero|pues|bueno|oye|ok|entonces|ya|nomas|ah|eh|este),? )*",
    own_again=r"(?:pero |y )?(?:la mia|el mio|yo|nosotros|la nuestra|esta si|este si)\b",
    unless=r"\b(?:no es que|no digo que|no crean que|no creas que|nadie (?:diga|puede decir|va a decir|le puede)|no vayan a (?:decir|creer)|no hay (?:\w+ ){0,3}que|no dej[eo]\w*|por si)\b",
)
