"""Turns of Spanish that say an act was or was not done wherever its noun stands: "tabs no le puse", "me brinqué la engrapada".

Written without accents: the words they are read against lose theirs. `{acts}` stands for one noun of `NOUNS` or a list of
them. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import KIND, MARK
from logbook.languages.es.whole_turns_facts import CUT_AWAY, FACTS
from logbook.languages.es.whole_turns_left_out import LEFT_OUT
from logbook.languages.es.whole_turns_male_end import OF_THE_MALE_END
from logbook.languages.es.whole_turns_measured import MEASURED
from logbook.languages.es.whole_turns_rub import NOT_RUBBED
from logbook.languages.es.whole_turns_run_on import RUN_ON
from logbook.languages.es.whole_turns_sides import SIDES
from logbook.languages.es.whole_turns_site import SITE
from logbook.languages.es.whole_turns_soiled import SOILED
from logbook.languages.es.whole_turns_told import TOLD_SO
from logbook.languages.es.whole_turns_words import (
    ALONE,
    CL,
    COULD,
    DO,
    ENDS,
    HAS,
    LEFT,
    NONE,
    PP,
    PUT,
    SINCE,
    SKIPPED,
    SLIPPED,
    SOFT,
    TO_DO,
    UNTIL,
    WHEN_IT_WAS,
)
from logbook.languages.turns_of_words import WholeTurns

# a thing of the trade, and the fact that it was put on
NOUNS: tuple[tuple[str, str], ...] = (
    ("cross_tabs", r"(?:cross )?tabs(?: cruzad[oa]s| de (?:cinta|tape|teip))?|tiras (?:cruzadas|atravesadas)(?: de (?:cinta|tape|teip))?|tiras de (?:cinta|tape|teip)|tiras(?! de )|(?:tiritas|tirillas)(?: de (?:cinta|tape|teip))?|pestañas(?: de (?:cinta|tape|teip)| cruzadas)|cintas cruzadas|crucetas(?: de (?:cinta|tape|teip))?|cross-?tabs|(?:orejas|orejitas|lenguetas|pestañitas) de (?:cinta|tape|teip)"),
    ("taped", r"cintas?(?! (?:metrica|de medir))|cintitas?|teips?|teipcito|tape|tapecito|taip|teipe|taping"),
    ("stapled", r"grapas?|grapitas?|grapotas?|staples?|estaples?|grapadas?|estapleada"),
    ("vanes", r"(?:turning )?vanes?|direccionales|aletas?(?! (?:de|para) (?:la |las |el )?(?:en)?grap)(?: (?:de giro|guia|direccionales))?|alabes?|venas|guias(?: de(?:l)? (?:aire|giro|flujo))?|paletas(?: (?:direccionales|guia|de giro))?|deflectores|aspas"),
    ("reinforced", r"refuerzos?|tie[ -]?rods?|(?:varillas?|canal(?:es)?|tirantes?)(?: de refuerzo)?"),
    ("(mastic)", r"masti(?:que|c)s?|mastik"),  # beside the others: it closes, but is no tape
    ("staple_flap", r"flaps?|solapas?|ceja|(?:pestañas?|aletas?|orillas?) (?:para|de) (?:la |las |el )?(?:en)?grap(?:ar|ado|as?|eado)"),
)
# the act as a thing: "la engrapada", "el tallado", "un trapazo"
DEEDS: tuple[tuple[str, str], ...] = (
    ("stapled", r"engrapad[oa]|engrapadita|grapeado|grapeada|estapleado"),
    ("taped", r"encintad[oa]|encintadita|teipeado|teipeada|tapeado|tapeada"),
    ("rubbed_down", r"tallad[oa]s?|talladita|tallon|frotad[oa]|frotadita|restregad[oa]|sobada|alisad[oa]|bruñid[oa]|rubbing|rub[ -]?down|rub|planchada|planchado|squeegee|espatula|rodillo|cuña|la tarjeta|la plancha|pasada con la espatula"),
    ("surface_clean", r"trapo|trapito|trapazo|trapeada|franela|estopa|limpiada|limpiadita|limpieza|limpiado|sacudida"),
    ("preheated", r"precalentad[oa]|precalentamiento|precalenton|calentada|calentadita|calenton|pistola de calor|heat ?gun|preheat|calor"),
    ("trimmed", r"recortada|recorte|rebajada|trim|trimeada"),
    ("tabs_bent", r"doblez de las (?:lenguetas|pestañas)|doblada de (?:las )?(?:lenguetas|tabs|pestañas)"),
)

_HOLD = r"(?:tengo|tenemos|traigo|traemos|cargo|cargamos|tenia|traia)"
_AT_HAND = r"(?: (?:aqui|ahi|alla|conmigo|todavia|aun|todas|nomas|guardad[oa]s?|ya|mero))*"
_STORED_SO = r"(?:en|dentro de|adentro de|arriba de|abajo en) (?:el |la |mi |su |una |un )?(?:trocka|troca|camion|camioneta|caja(?: de herramienta)?|bolsa|bolsillo|mano|pickup|gangbox|gang box|bodega|taller|casa|shop|van|carro|banco|mesa|piso|suelo|bote|lift)"
_STORED = rf" {_STORED_SO}"
_TO_SET = r"(?:montar|montarl[oa]s|meter|meterl[oa]s|poner|ponerl[oa]s|colocar|colocarl[oa]s|instalar|instalarl[oa]s|clavar|fijar|usar|usarl[oa]s|abrir)"

_DENIED = (
    r"{acts} brillan? por su ausencia",
    r"{acts} ?[✗✘❌☒]",
    r"{acts},? (?:andamos|ando|estamos|quedo|quedamos|va|esta) en (?:ceros?|blanco)",
    # "no le pasé trapo", "no le alcancé a dar su tallada"
    rf"\b(?:no|nunca|jamas|tampoco|ni) {CL}{PUT} (?:ningun[oa]?s? |ni un[oa]? |un[oa]? |la |el )?{{any}}",
    rf"\b(?:no|nunca|jamas|tampoco|ni) {CL}(?:{COULD} )(?:a )?{DO} (?:la |el |un |una |su )?{{any}}",
    r"(?:(?<=, )|(?<=; )|(?<=\. )|^)no {deeds}",
    r"(?<!nada )\bsin (?:la |el |su |ningun |ninguna |usar |nada de )?{deeds}",
    # "lo único que no lleva son las aletas", "lo que no le hice fue la frotada"
    rf"\b(?:lo|la) (?:(?:unic[oa]|sol[oa]) (?:cosa )?)?que (?:{SOFT})?(?:no|nunca|tampoco) {CL}(?:{PUT}|{HAS}|{LEFT}|(?:{COULD}) (?:a )?{DO}|quise {DO})(?: (?:todavia|aun|yo|ahi|ya|bien))* (?:es|son|fue|fueron|era|eran|seria|serian)(?: {DO})? {{any}}",
    # "tabs no le puse", "las paletas no se las metí", "guías no trae ninguna", "precalentado no hubo"
    rf"{{acts}} {SOFT}(?:no|nunca|jamas|tampoco|ni) {CL}{PUT}(?! (?:yo|mal|chuec|de mas|al reves|donde|como))\b{{other}}{NONE}",
    rf"{{acts}}[,:] {SOFT}(?:no|nunca|jamas|tampoco|ni) {CL}{PUT}{NONE}{ALONE}",
    # "se llevó las vanes y no se las puse"
    rf"{{acts}},? (?:y|pero|asi que|entonces) {SOFT}(?:por eso |pues |yo )*(?:no|nunca|tampoco) (?:se )?(?:le |les |l[oa]s? )+(?:puse|pusimos|meti|metimos|coloque|colocamos|instale|(?:pude|alcance a) (?:poner|meter)\w*){NONE}{ALONE}",
    rf"{{acts}},? {SOFT}(?:no|nunca|jamas|tampoco|ni) {CL}{HAS}\b{NONE}{ALONE}",
    rf"{{acts}},? {SOFT}(?:no|nunca|jamas|tampoco|ni) {CL}{HAS}(?: ningun[oa]s?| ni un[oa]s?(?: sol[oa])?| nada){{other}}",
    rf"{{acts}},? {SOFT}nadie {CL}{PUT}",
    rf"{{acts}},? ni (?:siquiera )?{CL}(?:ocupe|ocupamos|preocupe|acorde|acordamos|moleste|toque|tocamos|saque|sacamos|empece|empezamos|abri|vi|pele|hice caso|intente|busque)\b",
    rf"\b(?:no|ni|nunca) {CL}{HAS} nada de {{acts}}",
    r"{acts},? (?:pues |y |todavia |ya )?(?:mucho )?menos(?= *(?:$|[,;:.]))",
    # "grapa ni una", "de vanes nada", "cinta: cero"
    rf"{{acts}},?:? (?:pues |ahi |la verdad )?(?:nada|nadita|ni (?:un[oa]s?(?: sol[oa])?|media|medio|madres|de chiste|hablar|pensarlo|señas|rastro|rastros|tantit[oa])|cero|nones|nel|ningun[oa]s?|tampoco){ENDS}",
    rf"(?:ni|cero|nada de) {{acts}},?(?: {CL}(?:{PUT}|{HAS}))",
    rf"ni (?:un|una|un solo|una sola|media|medio) {{acts}}(?: {CL}(?:{PUT}|{HAS}))?",
    rf"(?:^|(?<=[,;:] ))ni {{acts}}{ALONE}",
    rf"\bno {CL}(?:{PUT}|{HAS}|{SKIPPED}) ni (?:un[oa]? |un[oa]? sol[oa] |el |la |las |los )?{{acts}}",
    r"(?:cero|nada de) {acts}(?! de | y medi)",
    r"(?:cero|nada de) {deeds}(?! de | y medi)",
    r"\bno (?:hubo|hay|llevo|lleva|tuvo|tiene) (?:ningun[oa]? |nada de )?{deeds}",
    rf"(?<!todavia )(?<!aun )\b(?:no|nunca|tampoco) {CL}{HAS} {{acts}}{WHEN_IT_WAS}?{ALONE}",
    rf"\b(?:estaban?|tenia|traia|iban?|andaban?|deje|dejamos|quedo|quedaron) sin {{acts}}{WHEN_IT_WAS}{ALONE}",
    # "me brinqué la engrapada", "las staples me las ahorré", "se me fue el tallado"
    rf"(?<!\bno )(?:me|nos) (?:l[oa]s? )?{SKIPPED} {{acts}}",
    r"(?<!\bno )\b(?:omiti|omitimos|deje fuera|dejamos fuera|pase por alto|pasamos por alto|deje de lado) {acts}",
    rf"{{acts}},? (?:se )?(?:me|nos) (?:(?:la|lo|las|los) )?{SKIPPED}",
    r"{acts},? (?:la|lo|las|los) (?:omiti|omitimos|deje fuera|dejamos fuera|deje de lado|perdone|pase por alto|saque otra vez)",
    rf"{{acts}},? se (?:me|nos|le) {SLIPPED}{ENDS}",
    rf"(?<!\bno )se (?:me|nos|le) {SLIPPED} (?:hacer |dar |poner |meter |pasar |hacerle |darle |ponerle |meterle |pasarle )?{{acts}}(?! (?:(?:a |al )(?:suelo|piso)|chuec|torcid|arrugad|de lado|mal\\b))",
    # "las aletas me dio flojera ponerlas", "no me dieron ganas de tallarla"
    rf"{{acts}},? (?:me|nos) (?:dio|dieron|gano|daba|dan) (?:mucha |la |una |tanta )?(?:flojera|hueva|weba|weva|pereza|floje?ra|sueño|lata|pena|miedo|cosa)\b(?: {DO})?",
    rf"\b(?:me|nos) (?:dio|dieron|gano|daba) (?:mucha |la |una )?(?:flojera|hueva|weba|weva|pereza|sueño|lata) (?:de )?{DO} (?:las |la |los |el |sus |su )?{{any}}",
    rf"\bno (?:me|nos) (?:dieron|dio|daban) (?:la gana|ganas)(?: de)? {DO} (?:las |la |los |el |sus |su )?{{any}}",
    # "el tallado lo dejé sin hacer", "las vanes se quedaron en la troca"
    rf"{{acts}},? {CL}{LEFT} sin {TO_DO}",
    rf"(?:deje|dejamos|quedo|quedaron|dejo) sin {TO_DO} {{acts}}",
    rf"(?:sin|ni) {TO_DO}(?: (?:el|la|los|las|su|sus))? {{acts}}",
    rf"{{acts}},? {CL}(?:quede|quedamos|quedo|quedaron|deje|dejamos|olvide|dejo) (?:ahi |alla )?(?:en|arriba de|dentro de|adentro de) (?:el |la |mi |una |un )?(?:trocka|troca|camion|camioneta|caja|bolsa|pickup|gangbox|bodega|taller|casa|shop|van|carro|banco|piso de abajo|otro piso|bote|tienda|almacen)",
    # "las guías las tengo aquí en la caja todavía sin montar", "tengo las aletas pero no las he montado": in his hands, and not in the piece
    rf"{{acts}},? (?:ya |todavia |aun )?{CL}{_HOLD}{_AT_HAND}{_STORED}",
    rf"{{acts}},? {CL}(?:{_HOLD}|estan|siguen|andan)?{_AT_HAND}(?: {_STORED_SO})? (?:sin|por) {_TO_SET}",
    rf"{{acts}},? {CL}(?:quedaron|estan|siguen|andan|deje|dejamos|tengo)(?: (?:ahi|alla|todavia|aun))* (?:guardad|arrumbad|empacad|encajonad|colgad|apilad|amontonad)[oa]s (?:en|sobre|arriba de|abajo de)\b",
    rf"{{acts}},? (?:ya |todavia |aun )?{CL}{_HOLD}{_AT_HAND} (?:ya )?list[oa]s? (?:para|pa) {UNTIL}",
    rf"\b{_HOLD}{_AT_HAND} {{acts}},?{_AT_HAND}(?: {_STORED_SO})? (?:(?:pero|y|nomas que|todavia|aun) )*(?:sin {_TO_SET}|no {CL}(?:he|hemos) (?:{PP}|fijado|clavado))",
    rf"\b{_HOLD}{_AT_HAND} {{acts}},? (?:(?:pero|y|nomas que|todavia|aun),? )*(?:todavia|aun) no {CL}(?:meto|pongo|monto|instalo|coloco|clavo)\b",
    r"(?<!\bno )\bse (?:me |nos )?(?:quedaron|quedo) {acts} (?:ahi |alla )?(?:en|arriba de|adentro de) (?:el |la |mi |una |un )?(?:trocka|troca|camion|camioneta|caja|bolsa|pickup|gangbox|bodega|taller|casa|shop|van|carro|banco|otro piso|tienda|almacen)",
    r"(?:sin rastro de|pelon de|pelona de|pelones de|encuerad[oa] de|huerfan[oa] de|ayun[oa] de|limpi[oa] de|se fue sin|se quedo sin|quedo sin|va sin|anda sin|esta sin|salio sin|lo deje sin|la deje sin|le hace falta toda(?: la)?) {acts}(?! (?:tallar|frotar|doblar|apretar|pegar|recortar|planchar|alisar|sobar|asentar|de mas|en|por))",
)
_DAY = r"(?:mañana|pasado mañana|luego|al rato|en la tarde|la (?:otra|proxima) semana|(?:el |la |en )?(?:lunes|martes|miercoles|jueves|viernes|sabado)(?: que viene)?)"
# "grapada, todavía no está encintada", "grapada, todavía no la encinto": it is the act behind that waits
_OF_THE_NEXT = (
    r"(?! (?:estan?|van?|quedo|quedan?|quedaron) (?:muy |bien |del todo |todo |toda )*(?:con|encint|tall|grap|engrap|teip|tape|frot|restreg|refreg|limpi|recort|cerrad|sellad|pegad|alis|planch|espatul|colgad|doblad|rematad|parchad|unid|cubiert|sobad|apret|presion|aplan|bruñ|repas|asent|estreg)\w*)"
    r"(?! (?:l[oa]s? |se (?:l[oa]s? )?|l[oa]s? he |l[oa]s? hemos |se ha )(?:encint|tall|grap|engrap|teip|frot|limpi|recort|cerr|cierr|sell|peg|pong|puse|hice|hag|alis|planch|espatul|colg|cuelg|dobl|remat|parch)\w*)"
)

_STILL_TO_DO = (
    rf"\b(?:lo|la) (?:(?:unic[oa]|sol[oa]) (?:cosa )?)?que (?:{SOFT})?(?:le|les|me|nos) (?:falta|faltan|falto|faltaron|queda|quedo) (?:(?:por|de) \w+ )?(?:es|son|fue|fueron|era|seria)(?: {DO})? {{any}}",
    rf"{{acts}},? {CL}(?:llegan?|vienen?|traen|entregan|mandan|surten|van a (?:llegar|traer|entregar)) (?:hasta |para |por ahi )?{_DAY}",
    r"{acts},? (?:(?:ya|estan|esta|van|vienen|quedaron|andan) )*(?:pedid[oa]s?|encargad[oa]s?|ordenad[oa]s?|en camino|de camino|por llegar)\b",
    rf"{{acts}},? {SOFT}no {CL}(?:llegan?|han llegado|ha llegado|aparecen?|han traido|han surtido)\b",
    r"{acts},? (?:se )?l[oae]s? (?:dejo|deje|dejamos|encargo|encargue|paso|toca)(?: pendiente)? (?:al?|a la|a los|para el|para la|para los) (?!mi\b|lado|rato)\w+",
    rf"{{acts}},? {CL}(?:debo|debemos|quede a deber|quedamos a deber)\b",
    r"(?:quede|quedamos|quedo) (?:a deber|debiendo)(?:le|les)? {acts}",
    rf"{{acts}},? {CL}(?:quede|quedamos|quedo) debiendo(?:le|les)?\b",
    rf"{{acts}},? ni {CL}(?:he|hemos|ha|han) (?:ni )?\w+(?:ad[oa]|id[oa]|puesto|hecho|visto|abierto)\b",
    r"(?:le |les )?(?:debo|debemos) {acts}",
    rf"{{acts}},? {CL}(?:hago|hacemos|doy|damos|pongo|ponemos|meto|metemos|echo|echamos|dejo|dejamos|hare|pondre|paso|pasamos|vemos|termino|voy a hacer|voy a poner|voy a dar|voy a meter|va|van|toca)(?: ya| pues| nomas| mejor)* (?:ahorita|orita|para |hasta |ya hasta )?{UNTIL}",
    rf"{{acts}},? {SOFT}(?:no|nunca|tampoco) {CL}(?:he|ha|hemos|han) {PP}{NONE}",
    rf"{{acts}},? {CL}{LEFT} (?:pendientes?|por {TO_DO}|para {UNTIL}){NONE}",
    rf"{{acts}},?:? (?:(?:todavia|aun) no{_OF_THE_NEXT}|hasta {UNTIL}|pendientes?){ENDS}",
    rf"(?:todavia|aun) no {CL}(?:he|hemos|ha) {PP} {{acts}}",
    rf"\bno {CL}(?:he|hemos) {PP} {{acts}}",
    rf"(?:deje|dejamos|quedo|quedaron) (?:pendientes?|para {UNTIL}) {{acts}}",
)
_DONE = (
    # "puro teip le di", "le faltaba cinta y ya se la puse"
    rf"\bpur[oa]s? {{acts}} (?:fue lo que )?{CL}{PUT}\b",
    rf"{{acts}},? {CL}{PUT} (?:yo|nosotros|yo mismo){ALONE}",
    rf"(?:^|(?<=[,;:] )){{acts}},? (?:si |ya |yo |tambien )*(?:se |le |les )+{PUT}{ALONE}",
    rf"(?<!\bno )\b(?:(?:le|les|me|nos) )?(?:falt(?:aba|aban|o|aron)|habia faltado|hacia falta|hacian falta) {{acts}}(?: (?!no\b|ni\b)\w+){{0,3}}?(?:,| y| pero)+ {SINCE}{CL}{PUT}(?: (?:l[oa]s dos|ambas|ambos|todo|tod[oa]s?|bien|ya|hoy|ahorita|complet[oa]))*{ALONE}",
    r"{acts} ?[✓✔✅☑]",
    r"\bno (?:le|les|me|nos) falt(?:a|an|o|aron)(?: nada| ningun[oa])?,? (?:ni )?{acts}",
    r"\bno hay (?:ningun[oa] |ni un[oa] )?{acts} que no",
    rf"{{acts}},? no se {CL}(?:despega|cae|suelta|levanta|mueve|zafa|sale|quita|afloja|pela)n?\b(?: (?:ni|por|para|con)\b[^,.;]*)?",
    rf"{{acts}},? (?:ya )?(?:me |nos |le |se )?(?:quedo|quedaron|esta|estan|salio)(?: ya)?(?: (?:bien|list[oa]s?|hech[oa]s?|al (?:puro )?(?:cien|centavo|tiro)|perfect[oa]s?|complet[oa]s?|de lujo|chido)|(?<=ya quedo)|(?<=ya quedaron)|(?<=ya esta)|(?<=ya estan)){ALONE}",
    rf"{{acts}},? (?:ya|si|ahi si|esas si|esos si|eso si|tambien|todas?|todos?) {CL}(?:{PUT}|{HAS})\b(?! (?:a|cada|de a) (?:una?|dos|tres|cuatro|cinco|seis|\d|cada)){{other}}",
    rf"(?<!\bno )(?<!ni )(?:si|ya|tambien) {CL}(?:{PUT}|{HAS}) {{acts}}",
    rf"\bno (?:se )?(?:me|nos) (?:(?:la|lo|las|los) )?(?:{SKIPPED}|{SLIPPED}) (?:ni )?{{acts}}",
    rf"(?:{PUT}) {{acts}} que (?:le |me |nos |todavia |aun )*(?:falt(?:aba|aban|o|aron)|tenia pendiente|estaba pendiente|habia quedado pendiente|quedaba)",
    rf"{{acts}},? no (?:se )?(?:me|nos) (?:(?:la|lo|las|los) )?(?:{SKIPPED}|{SLIPPED}){ENDS}",
)
# a row of things that the piece has: "trae sus aletas y sus grapas", "le puse grapa y tape", "con grapas y cinta"
_BEARS = (
    r"(?:^|(?<=[,;:] ))(?:y |pero |hoy |ahorita |por ahora |de momento )*(?:nomas|solo|nada mas|solamente|puro|pura) (?:le puse |lleva |con |la |el )?{acts}(?= *(?:$|[,;:.]))",
    r"\b(?:a |con |va |es |lleva )*pur[oa]s? {acts}(?= *(?:$|[,;:.]| y | sin))",
    r"(?:^|(?<=[,;:] ))(?:y |ya )?(?:va |quedo |queda |cerrad[oa] |sellad[oa] )?con {acts}(?= *(?:$|[,;:.]| y (?:sin|todo|ya|bien|frot|tall)| pero | bien| cada))",
    r"(?<!\bno )(?<!ni )(?<!nunca )(?<!se )(?:le |les |ya |lo |la |se le )*(?:trae|lleva|tiene|puse|pusimos|meti|metimos|eche|echamos|di|dimos|va con|quedo con|cerre con|cerrad[oa] con|cerrad[oa] a puro|cerrad[oa] a pura) {acts}(?! (?:de|que|en (?:un|dos|tres|solo)|nomas|solo|mal|suelt|floj|despeg|levant|a medias|hasta|por (?:un|dos|tres|fuera)|encima|arriba|ahi|provisional|para))",
)
_LAID = (
    # "la tape se la tiré encima y ya", "grapas todas": told of the thing first, and nothing in it that takes it back
    rf"{{acts}},? (?:ya |si |tambien |yo |ahi )*(?:se |le |les )?(?:la|lo|las|los) {PUT}(?! (?:mal|chuec\w+|al reves|de mas|a medias|en (?:la|el|mi|un|una|dos|tres)|hasta|donde|por (?:un|una|dos|tres|fuera|mientras)|(?:nomas|solo|nada mas) (?:en|por|de|un|una|dos|tres)|provisional|sobre la mesa|otra vez en)\b)",
    rf"{{acts}} (?:por (?:tod[oa]s?(?: (?:los|las) (?:lados|caras|costuras|juntas|uniones|orillas)| lados| el contorno| alrededor)?|l[oa]s (?:cuatro|4)(?: (?:lados|caras|costuras|orillas|juntas))?)|alrededor|en tod[oa]s? (?:l[oa]s (?:lados|caras|costuras|juntas|uniones|orillas)|el contorno)){ALONE}",
    rf"(?:^|(?<=[,;:] )){{acts}} tod[oa]s?{ALONE}",
)
_TOO = (rf"{{acts}},? (?:tambien|igual(?:mente)?){ENDS}",)
_WIDE = r"(?: de (?:dos|tres|cuatro|dos y media|2|3|4|2 1/2|2\.5)(?: pulgadas?)?(?: de ancho)?)"
_OWN_WORDS = (  # the thing alone between two commas: "grapas cada 2, tape."
    r"{acts}(?: (?:bien|ok|ya|listos?|listas?|tambien|si|puest[oa]s?|encima|complet[oa]s?|alrededor))?(?= *(?:$|[,;.]))",
    rf"{{acts}}{_WIDE}(?: (?:bien|ok|ya|list[oa]s?|puest[oa]s?|complet[oa]s?|alrededor))?(?= *(?:$|[,;.]| y (?:bien |toda |todo |muy bien )?(?:tallad|frotad|planchad|alisad)))",
)

_PUT_ON = rf"(?!hi[cz]){PUT}"  # "le faltan las aletas. Ya lo hice": the piece, no vane is made so

_VERBS = (
    ("stapled", rf"(?:(?:en)?grap|grape|estapl|staple)\w*(?:e|amos)\b|(?<!\bl[ao] ){_PUT_ON}"),
    ("taped", rf"(?:encint|teip|tape|taip|peg)\w*(?:e|amos)\b|{_PUT_ON}"),
    ("rubbed_down", r"(?:tall|frot|restreg|planch|alis|sob|bruñ|presion|apret)\w*(?:e|amos)\b|(?:di|dimos|pase|pasamos|hice)(?! (?:cinta|grap))"),
    ("surface_clean", r"(?:limpi|sacud|desempolv|trape|sec|sequ)\w*(?:e|i|amos|imos)\b|(?:di|dimos|pase|pasamos)"),
    ("preheated", r"(?:pre)?calent\w*(?:e|amos)\b|(?:di|dimos)(?: su)? (?:calor|su calentada|calentada)"),
    ("trimmed", rf"{CUT_AWAY}\b"),
    ("vanes", rf"(?<!\bl[ao] ){_PUT_ON}"),
    ("cross_tabs", rf"(?<!\bl[ao] ){_PUT_ON}"),
    ("tabs_bent", r"(?:dobl|volte|aplast|apret|cerr)\w*(?:e|amos)\b"),
    ("damage_repaired", r"(?:parch|arregl|repar|tap|resan|remend|compus|cambi)\w*(?:e|amos|imos)\b"),
)
_AFTER_ALL = tuple((name, rf"{WHEN_IT_WAS}?[,;:.]? *{SINCE}{CL}(?:{verbs})(?: (?:bien|tod[oa]s?|ya|hoy|ahorita|tambien|yo|despues|luego|al final|las? que faltaban?|por completo))*{ALONE}") for name, verbs in _VERBS)

# whose words these are: plans and other pieces, to the end of their sentence
_PLANS = (
    # how it was done elsewhere and long ago
    r"(?:(?:hijo|mijo|mire|mira|joven|oiga|jefe|fijese|no),? )*(?:en mis tiempos|en mi (?:epoca|pueblo|tierra|rancho|pais|otro trabajo)|cuando (?:yo )?(?:empece|empezaba|era (?:joven|chavo|ayudante|chalan|nuevo))|en (?:(?:la )?otra (?:obra|chamba|compania)|(?:el )?otro (?:trabajo|job|edificio|jale|lado))|alla en \w+(?: \w+)?|antes|antiguamente)(?:,? (?:nosotros|yo|uno|todos|todo|se|l[oae]s?|siempre|las cosas|no))* (?:\w+(?:aba|aban|abamos|ia|ian|iamos))\b[^,;.]*",
    r"(?:estoy|estamos|ando|andamos|sigo|seguimos) esperando (?:a )?(?:que llegue )?(?:la|el|las|los|al) (?:transicion|recta|recto|codo|tapa|pieza|tee|te|reduccion|pleno|collarin|tramo|inspector|board|panel|lift|elevador)\b.*",
    r"(?:a las? \w+|al rato|luego|ahorita|hoy) (?:viene|vienen|llega|llegan|va a venir|pasa|pasan) (?:el|la|los|las|a) .*",
    r"(?:el|mi|nuestro) plan (?:es|era|sigue|para)\b.*|la (?:idea|intencion|meta) (?:es|era)\b.*|(?:se|lo) (?:planea|tiene pensado|tenemos pensado|tengo pensado)\b.*|(?:planeamos|planeo|pensamos|pienso|queremos|quiero|tenemos pensado|tengo pensado|esperamos) (?:hacer|armar|cortar|empezar|encintar|engrapar|terminar|montar|colgar|subir|ponerle|ponerl[oa]s|dejar|meter)\b.*",
    r"(?:mañana|pasado mañana|el (?:lunes|martes|miercoles|jueves|viernes|sabado)|la (?:otra|proxima|siguiente) semana|manana)(?: ya| si| temprano| en la mañana| a primera hora| nos| me| le| les| dios mediante| vamos a| voy a)* (?:cambi[ao]|us[ao]|usam|empez|empie|arranc|segu|sig[uo]|trabaj|toc|vien|lleg|tra[ie]|comenz|arm[ao]|cort[ao]|mov|pas[ao]|entr|(?:usar|cambiar|empezar|seguir|trabajar|arrancar|armar|cortar)\b)\w*.*",
    # "para el lunes vamos a armar la 388 con grapa de media"
    rf"(?:(?:para|el|la|ya|hoy|ahorita|al rato|luego|en la tarde|mañana|pasado|(?:otra|proxima) semana|despues|lunes|martes|miercoles|jueves|viernes|sabado|nosotros|yo),? )*(?:voy|vamos|van) a (?:armar|hacer|fabricar|construir)(?:l[oa]s?)? (?:(?:el|la|los|las|un|una|otr[oa]|dos|tres) )*(?:{KIND}(?:e?s)?\b|{MARK}\b).*",
    # "ni la recta 51 ni la recta 52 llevan grapas": which act of which piece is denied is not made out, and is asked
    rf"ni (?:el |la )?(?:{KIND} )?(?:numero )?{MARK},? ni (?:el |la )?(?:{KIND} )?(?:numero )?{MARK} (?:llevan?|tienen?|traen?|quedaron|quedo|estan?|van?)\b.*",
    r"(?:(?:yo |jefe |oiga )?(?:voy|vamos|va) a (?:querer|ocupar|necesitar)|me gustaria|quisiera|quisieramos) (?:que )?.*",  # "voy a querer que la 42 lleve grapa a cada dos"
    r"(?:ocupo|necesito|ocupamos|necesitamos|hace falta|quiero|urge|me urge|me urgen|urgen) (?:que (?:me|nos|le|les|alguien)?|(?:como )?(?:un|dos|tres|cuatro|cinco|mas|otr[oa]s?|unos|unas) (?:mas )?(?:rollos?|cajas?|paquetes?|botes?|cubetas?|cartuchos?)).*",
)
_ASKED = r"(?:(?:debi|debia|deberia|deberiamos|debimos|tenia que|teniamos que|habia que|tuve que haber|me tocaba|nos tocaba|tocaba|se supone que|dicen que hay que)(?: (?:haber(?:le|les|l[oa]s?)?|poner|meter|echar|dar|llevar|hacer|usar|puesto|metido|echado|dado|hecho)(?:le|les|l[oa]s?)?)*|pide|piden|pedia|pidio|marca|marcaba|quiere|quieren|queria|ordena|manda|(?:plano|dibujo|spec|especificacion|diseño)(?: \w+)? (?:lleva|llevaba|trae|dice|decia))"
_EVERY = r"(?: (?:a )?cada \w+(?: y (?:medi[ao]|cuarto))?(?: pulgadas?)?)?"
_ASKED_NOT = (rf"{_ASKED} {{acts}},? (?:y|pero|mas) (?:yo |la verdad |ahi )*(?:no|nunca) {CL}{PUT}",)
_ASKED_DONE = (rf"{_ASKED} {{acts}}{_EVERY},? (?:y|pero|asi que) (?:yo |ya |si |tambien )*{CL}{PUT}(?:{ALONE}|(?= (?:a |de a )?cada\b))",)
_SOMEBODY = r"(?:{name}|don \w+|mi (?!\w*(?:pieza|codo|tramo|recto|cinta|parte))\w+|otr[oa]s? (?:turno|cuadrilla|equipo|crew|gente|compa\w*|muchach\w+|pareja|gallo|vato|cuate|chav\w+|lado)|otros\b|ell[oa]s|la otra$|el otro$|los de \w+|los otros|turno\b|la noche|la cuadrilla|el (?:electrico|electricista|plomero|compa|ayudante|chalan|pintor)|compa\w*|compadre|al lado|junto)"
_NAMED = r"(?:(?:el|la|los|las|ese|esa|un|una) )?(?:rect[oa]|tramo|codo|te|tee|tapa|transicion|reduccion|plenum|pleno|offset|collarin|ramal|pieza|ducto)s?(?: (?:numero )?[\w-]*\d[\w-]*)?"
_UNTOUCHED = r"(?:toque|tocamos|empece|empezamos|comence|comenzamos|agarre|hice nada|hicimos nada|he tocado|hemos tocado|he empezado|hemos empezado|he visto|hemos visto|he ido a ver)(?: nada| hoy| ayer| todavia| aun| para nada)*(?= *$)"
_OTHERS = (
    # "la 142 no la toqué hoy", "hoy ni toqué el codo 3": nothing was done to it
    rf"(?:hoy |ayer )?(?:(?:el|la|al|a la) )?(?:{KIND} )?(?:numero )?{MARK},? (?:hoy |ayer |todavia |aun |ya |esa |ese )*(?:no|ni|nunca) (?:siquiera )?(?:la |lo |le )?{_UNTOUCHED}",
    rf"(?:hoy |ayer |ya |todavia |aun )*(?:no|ni|nunca) (?:siquiera )?(?:toque|tocamos|empece|empezamos|comence|agarre|he tocado|he empezado) (?:el |la |con el |con la )?(?:{KIND} )?(?:numero )?{MARK}(?: hoy| ayer| todavia| aun)*(?= *$)",
    rf"{_NAMED} (?:del?|de la|de los|de las) (?:el |la )?(?!mi (?:run|corrida|linea|lado|area|piso|tramo)|los de (?:\d|la\b|el\b|arriba|abajo|hoy|ayer|est[ea]|run|un\b|una\b|dos|tres|cuatro|cinco|seis|ocho|nueve|diez|once|doce|catorce|quince|dieci|veint|treinta|cuarenta|siempre|media)){_SOMEBODY}.*",
    rf"(?:(?:el|la|los|las|ese|esa|al|a la) )?(?:\w+ ){{1,2}}(?:del? (?:\w+ ){{1,3}})?(?:es|son|era|eran) (?:del?|de la|de los|de las|para) (?:el |la )?{_SOMEBODY}.*",
    rf"(?:(?:es[ae]|est[ae]|aquel|aquella) )?(?:ya )?(?:lo|la) (?:dejo|hizo|armo|empezo|monto|corto|colgo|trabajo|dejaron|hicieron|empezaron|armaron)(?: \w+){{0,2}} (?:el |la |los )?{_SOMEBODY}.*",
    rf"(?:(?:la|el|otra|otro) )?\w+ (?:siguiente|que sigue|proxim[oa]|de enfrente|de arriba|de abajo) (?:ya )?(?:le |se )?(?:la |lo )?(?:monta|arma|hace|pone|termina|cuelga|corta|arman|hacen|ponen|lleva|ve|toca|va a \w+|van a \w+|es|trae)\b.*\b{_SOMEBODY}.*",
    rf"(?:el|la|los|las) que (?:(?!le\b|yo\b)\w+ ).*\b(?:es|son) (?:el|la|los|las) (?:del?|de la|de los|que) (?:el |la )?{_SOMEBODY}.*",
    # "yo no la he visto, eso le toca a Beto"
    rf"(?:yo |nosotros |todavia |aun |la verdad )*(?:no|ni|nunca) (?:siquiera )?(?:la|lo|las|los) (?:he|hemos) visto(?: todavia| aun| ni nada)*(?= *$)",
    rf"(?:es[oa]|es[ae] (?:pieza|parte)|ese|{_NAMED}) (?:ya )?(?:le|les) toc(?:a|aba|o|an)(?: hacerl[oa])? (?:al?|a la|a los|a mi) (?!mi *$)(?:\w+ ?){{1,3}}(?= *$)",
    # "el turno de la noche dejó la 97 sin tallar", "dicen que en otro lado hacían los codos sin aletas"
    r"(?:el turno|los|la gente|la cuadrilla|el equipo|los muchachos) (?:del turno )?(?:de (?:la )?(?:noche|tarde|mañana)|de ayer|del (?:lunes|martes|miercoles|jueves|viernes|sabado|otro turno)|anterior(?:es)?|pasado)(?: (?:ya|nos|me|se|la|lo|le))* (?:dejo|dejaron|hizo|hicieron|puso|pusieron|armo|armaron|corto|cortaron|colgo|colgaron|encint\w+|engrap\w+|tall\w+|monto|montaron|no \w+)\b.*",
    r"(?:dicen|dice la gente|cuentan|platican|se dice|me (?:contaron|platicaron)|he oido)(?: \w+)? que (?:en otr[oa]s? \w+|alla|antes|por alla|en (?:el otro|la otra) \w+)\b.*",
    r".*\bno (?:es|son|fue|era) (?:mi[oa]s?|nuestr[oa]s?|de nosotros|trabajo mio|cosa mia)\b.*",
    r"(?:hay que|falta|toca|tienen que|tenemos que|tengo que|me toca|nos toca) \w+r(?:l[eoa]s?)? (?:l[oa]s?|el|todo lo) (?:\w+ ){0,2}que (?:\w+ ){0,1}(?:hizo|hicieron|armo|armaron|dejo|dejaron|monto|montaron|puso|pusieron|saco|sacaron)\b.*",
    r"(?:cheque|revise|vi|mire|checamos|revisamos|fui a ver|encontre) .*\b(?:de los otros|de la otra (?:cuadrilla|gente)|del otro (?:turno|equipo)|de otr[oa]s?|ajen[oa]s?|de los de)\b.*",
    r".*\b(?:la|lo) (?:hizo|armo|cerro|cerraron|dejo|saco|monto|termino|hicieron|armaron|(?:en)?grapo|encinto) (?:{name}|don \w+|mi \w+|los de \w+|el (?:compa|chalan|ayudante|otro|de \w+))\b.*",
    r"(?:ya )?(?:la|lo|las|los|le) \w+(?:aron|ieron|io|o) (?:los de|los del|el de|la de|los otros|el otro|mi (?:compañero|compa|ayudante|primo|hermano)|el (?:compa|chalan|ayudante)|la otra cuadrilla|otra gente|otros)\b.*",
    r"(?:la|el|las|los|esa|ese) (?:pieza |otra |otro |recta |tramo |codo |tapa )?(?:de al lado|de junto|de enseguida|vecin[oa]|que (?:hicieron|hizo|armaron|armo|dejaron|dejo|montaron|monto|sacaron|puso|pusieron|trajeron) (?:los|las|el|la|otr\w+|ell[oa]s|mi|don|ayer)).*",
)

SPANISH_WHOLE_TURNS = WholeTurns(
    cue=r"[✓✔✅☑✗✘❌☒]|\b(?:tengo|tenemos|traigo|traemos|cargo|menos|brilla|puse|pusimos|pur[oa]|falt|hac[ií]an? falta|pedid|encargad|ordenad|camino|llegar|pide|piden|plano|dibujo|marca|quiere|ordena|no|ni|nunca|jamas|tampoco|nadie|cero|nada|sin|si|ya|tambien|todavia|aun|pelon|pelona|hago|hacemos|toca|rato|luego|debo|debe|deber|debi|blanco|ceros|despues|mañana|lunes|pongo|alcanc|pude|pudimos|brinqu|salt|ahorr|comi|omit|dej|qued|vol|perdon|fue|pas[oe]|olvid|pendiente|brinc|rastro|encuerad|limpi|evit|chispo|flojera|hueva|we[bv]a|pereza|ganas|lata|sueño)",
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
    facts=(*NOT_RUBBED, *LEFT_OUT, *SIDES, *RUN_ON, *MEASURED, *TOLD_SO, *OF_THE_MALE_END, *FACTS, *SOILED, *SITE),
    after_all=_AFTER_ALL,
    plans=_PLANS,
    others=_OTHERS,
    another=(
        r"(?:al|a la|a los|a las) (?:otr[oa]s?|demas|de al lado|de junto|de enseguida|que sigue|siguiente)(?! (?:lado|cara|extremo|punta|orilla|esquina|junta|costado|borde|panel|costura|pieza|mitad)) (?:le|les|se|no|ya|todavia|aun)\b",
        r"(?:el|la|los|las) (?:otr[oa]s?|demas|de al lado|de junto|que sigue)(?! (?:lado|cara|extremo|punta|orilla|esquina|junta|costado|borde|panel|costura|mitad)) (?:no |ya |si |todavia |aun |nomas )*(?:trae|lleva|tiene|esta|estan|quedo|quedaron|va|van|es|son|se|le)\b",
    ),
    leads=r"(?:(?:nomas que|solo que|nada mas que|fijate que|resulta que|eso si|y|pero|pues|bueno|oye|ok|entonces|ya|nomas|ah|eh|este),? )*",
    own_again=r"(?:y |pero )?(?:ahora|ahorita|hoy|hoy en dia|aqui|aca)\b(?! (?:que|si|tambien))|(?:pero |y )?(?:la mia|el mio|yo|nosotros|la nuestra|esta si|este si)\b",
    was_so=r"\b(?:falt(?:aba|o)|tenia|traia|habia|llevaba|hubo|tuvo)",
    unless=r"\b(?:no es (?:que|cierto que|verdad que|asi que)|(?:es )?mentira que|no digo que|no crean que|no creas que|nadie (?:diga|puede decir|va a decir|le puede)|no vayan a (?:decir|creer)|no hay (?:\w+ ){0,3}que|no dej[eo]\w*|por si)\b",
)
