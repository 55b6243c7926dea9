"""Spanish turns that tell how much, where no frame of concepts finds what the number is of: "las mías van a tres", "la engrapada me quedó a tres".

Without accents. The group `m` is the measure that counts, `a` the one that somebody asks for. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es_whole_turns_words import CL, PUT
from logbook.languages.turns_of_words import Turn

_FEW = r"(?:un[oa]?|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|once|doce)"
_AND = r"(?: y (?:medi[oa]|(?:un |tres )?cuartos?|(?:un |tres |cinco |siete )?octavos?|pico))?"
_PART = r"(?:(?:un |tres )?cuartos?|(?:un |tres |cinco |siete )octavos?|(?:un |tres |cinco |siete |nueve )?dieciseisavos?|medi[oa]|\d+/\d+)"
_UNIT = r"(?: ?(?:pulgad(?:it)?as?|\"|''|in\b|plg|milimetros|mm\b|centimetros|cm\b))?"
_HOW_FAR = rf"(?:\d+(?:[. ]\d+(?:/\d+)?)?|{_FEW}){_AND}{_UNIT}"
M = rf"(?P<m>{_HOW_FAR})\b(?! (?:y medi|lados?|caras?|costuras?|por|x|pies?|esquinas|de l[oa]s|del? (?:la|el|pared|ancho|largo|alto)|grados|libras|tramos?|piezas?|rect[oa]s?|codos?|grapas?|veces|minutos|horas|cajas?)\b)"
_ASKED_M = rf"(?P<a>{_HOW_FAR})"
_AT = r"(?:(?:como|casi|mas o menos|ya|todas|bien|nomas|asi|mas bien|aproximadamente) )*(?:a cada|de a cada|de a|a|en|cada|hasta|por l[ao]s) (?:como |casi |mas o menos )?"
_LIE = r"(?:quedaron|quedan|quedo|van|iban|va|andan|andaban|salieron|salen|estan|estaban|son|fueron|dieron|daban|cayeron|vienen)"
_LAY = rf"(?:{_LIE}|{PUT}|me fui|nos fuimos|engrape|grape|engrapamos|abri|espacie|separe|deje)"

# whose staples are spoken of, and nothing else of which one asks how far apart it is
_STAPLES = r"^(?!.*\b(?:tornill|pijas?\b|soporte|colga|cuelg|trapecio|tabs?\b|tiras|tiritas|pestañ|lenguet|rondana)).*(?:grap|staple|estapl)"
_ME = r"(?:las mias|las nuestras|a mi|yo|nosotros)"
_WHO = r"(?:en la (?:vida real|practica|realidad|pieza)|las mias|las nuestras|a mi|yo|nosotros|aqui|aca|en (?:este|esta|ese|esa)|est[ea]|es[ea]|las de (?:este|esta|aqui|aca)|las que (?:yo )?(?:le )?(?:puse|meti|eche|clave|tire|di))"
_ASKS = r"(?:pide|piden|dice|dicen|manda|mandan|quiere|quieren|marca|exige|exigen|es|son|van|deben ir|deberian ir)"
_BOOK = r"(?:libro|regla|norma|manual|spec|especificacion|plano|foreman|mayordomo|capataz|jefe|patron|inspector|codigo|contrato|papel)"
_WARM = r"(?:treinta|cuarenta|veinte|cincuenta)(?: y (?:un[oa]?|dos|tres|cuatro|cinco|seis|siete|ocho|nueve))?|veinti\w+"
_ODD = r"(?:aletas?|lados?|tapas?|cinta(?! metrica)|teip|tape|panel|tabla|board|huec|abert|junta|scrim|lineas?|rayas?|garganta|entra|baja|sube|sale|presion)"

_NO_OTHER = r"\b(?:no|ni|nunca|si fuera|deb\w+|plan[oe]\w*|queria|iba a|iban a|hay que|voy a|vamos a|mañana)\b"

MEASURED: tuple[Turn, ...] = (
    # "las mías van a tres", "yo cada tres", "a mí en el recto doce me quedaron como a tres"
    Turn(r"\b(?:mi|mias?|yo|nosotros|nuestras)\b", rf"(?:^|(?<=[,;:] )|(?<=pero )|(?<=y ))(?:y |pero |pues |ya )*{_ME}(?:,? (?!no\b|ni\b|lados?\b|tapa\b|cinta\b)\w+){{0,6}}?(?: {_LAY})? {_AT}{M}", (("staple_spacing", "m"), ("stapled", True)), beside=_STAPLES, unless=rf"{_ODD}|\b(?:no|ni|sin|dijo|dijeron) ", asked=True),
    Turn(r"\b(?:mi|mias?|yo|nosotros|nuestras|aqui|aca|est[ea]|es[ea]|que)\b", rf"(?:^|(?<=[,;:] )|(?<=pero )|(?<=y ))(?:y |pero |pues |ya )*{_WHO}(?:,? (?!no\b|ni\b|lados?\b|tapa\b|cinta\b)\w+){{0,6}}?(?: {_LAY})? {_AT}{M}", (("staple_spacing", "m"), ("stapled", True)), beside=_STAPLES, unless=rf"{_ODD}|\b(?:no|ni|sin)\b"),
    # "…, andan en tres pulgadas", "me quedaron a tres", right behind what tells of the staples
    Turn(rf"\b{_LIE}\b", rf"(?:^|(?<=[,;:] )|(?<=pero )|(?<=y )|(?<=que ))(?:y |pero |pues |ya |asi que )*(?:(?:las |mis )?grapas (?:ya |todas |me |se )*)?{CL}{_LIE} {_AT}{M}", (("staple_spacing", "m"), ("stapled", True)), beside=_STAPLES, unless=rf"{_ODD}|\b(?:no|ni|deben|debian|plano|pide\w*)\b"),
    # "las grapas no me quedaron a dos, me quedaron a tres", "no van cada dos sino cada tres"
    Turn(r"\bno \w+", rf"\bno {CL}(?:{_LAY}|es|son|eran) (?:{_AT})?{_ASKED_M},? (?:sino |si no |pero |mas bien |que )*{CL}(?:{_LAY} )?(?:{_AT})?{M}", (("staple_spacing", "m"), ("stapled", True)), beside=_STAPLES),
    # "en vez de cada dos lo engrapé cada tres"
    Turn(r"\ben (?:vez|lugar) de (?:a |cada|que|ir|poner)", rf"\ben (?:vez|lugar) de (?:ir |que fueran |poner(?:las)? )?(?:a cada|cada|a) {_ASKED_M},? (?:las? |lo |le |me |se |yo )*{_LAY} (?:las grapas )?{_AT}{M}", (("staple_spacing", "m"), ("stapled", True)), beside=_STAPLES),
    Turn(r"\ben (?:vez|lugar) de (?:a |cada|dos|las)", rf"{_AT}{M},? en (?:vez|lugar) de (?:a cada |cada |a |las )?{_ASKED_M}(?= *(?:$|[,;:.]))", (("staple_spacing", "m"),), beside=_STAPLES, unless=_ODD),
    # "cada dos según el libro. Yo cada tres"
    Turn(rf"\b{_BOOK}\b", rf"^(?:(?:las )?grapas? )?(?:a cada|cada|a) {_HOW_FAR},? (?:segun|dice|pide|manda|como dice|como pide|es lo que (?:dice|pide)) (?:el|la|mi) {_BOOK}", (), beside=rf"\b(?:yo|las mias|aqui|a mi|pero|est[ea])\b(?:(?!\.).)*\b(?:a|cada|en) {_FEW}"),
    Turn(rf"\b{_BOOK}\b", rf"(?:^|(?<=[,;:] ))(?:el|la|mi) {_BOOK} {_ASKS}(?: las grapas| grapas| que)* (?:a cada |cada |a )?{_HOW_FAR}(?: entre grapas| de separacion| entre una y otra)?(?=,? (?:pero|y yo|las mias|yo|a mi)|;)", (), beside=_STAPLES),
    # "ralas, a tres y media", "más separadas de lo que piden: tres pulgadas"
    Turn(r"\b(?:ral[ao]|ralit|separad|abiert|espaciad|retirad|esparcid|distanciad|apartad)", rf"\bgrap\w*(?: \w+){{0,5}}? (?:ral(?:it)?as?|(?:muy |mas |medio |bien |bastante )?(?:separad|abiert|espaciad|retirad|esparcid|distanciad|apartad)(?:it)?as)(?: (?:de lo que (?:piden?|va|van|deben?|dice)|de la cuenta|una de otra|que de costumbre|ahi|todas))?[,:;]? (?:van |andan |quedaron |son |estan )?(?:como )?(?:a cada |cada |a |en |de )?(?:como |casi )?{M}", (("staple_spacing", "m"), ("stapled", True)), unless=r"\b(?:no|ni|sin)\b"),
    # measured, and so much it is
    Turn(r"\b(?:medi|mido|conte|revise|cheque|metrica|regla|metro)\b", rf"\b(?:salieron|salio|dieron|dio|daba|marco|vi que (?:iban|van|estaban|quedaron)|resulto que (?:iban|van|estaban)|hay|habia|eran|son|miden)(?: (?:como|casi|a|en|de a|cada|mas o menos))* {M}", (("staple_spacing", "m"), ("stapled", True)), beside=_STAPLES, unless=rf"{_ODD}|\b(?:no|ni)\b"),
    Turn(r"\bgrapas? ", rf"\bentre (?:una |cada |las )?grapas? y (?:la )?(?:otra|siguiente|que sigue|de al lado|grapa)(?: (?:te|me|le|se|nos))* (?:caben|cabe|hay|quedan|queda|quedo|quedaron|son|dan|tienes|tengo|mide|miden) (?:como |casi |unas )?{M}", (("staple_spacing", "m"), ("stapled", True)), unless=r"\b(?:no|ni|deben?)\b"),
    Turn(r"\b(?:grapa|una) a (?:la )?(?:grapa|otra)|\bentre ", rf"\b(?:son|hay|quedan|quedaron|deje|tengo|caben) (?:como |casi )?{M} (?:las que|lo que|que|es lo que)? ?(?:hay |queda |quedo |deje |quedaron )?(?:de grapa a grapa|de una grapa a (?:la )?otra|entre (?:cada )?grapas?(?: y grapa)?|entre una grapa y (?:la )?otra)", (("staple_spacing", "m"), ("stapled", True)), unless=r"\b(?:no|ni|deben?)\b"),
    # "quise ir cada dos y terminé yendo cada tres"
    Turn(r"\b(?:quise|queria|iba|ibamos|trate|tratamos|pense|empece|empezamos)\b", rf"\b(?:quise|queria|iba a|ibamos a|trate de|tratamos de|pense|pensaba|empece|empezamos)(?: (?:ir|irme|irnos|ponerlas|meterlas|engrapar\w*|grapar\w*|hacerl[oa]s?|dejarlas|las grapas|con las grapas|a))* {_AT}{_ASKED_M}[^.;]{{0,14}}?(?:,| y| pero) (?:al final |ya |luego |despues )*{CL}(?:termine|terminamos|acabe|acabamos|segui|seguimos|{_LAY})(?: (?:yendo|poniendo\w*|metiendo\w*|engrapando|con las grapas|las grapas))* {_AT}{M}", (("staple_spacing", "m"), ("stapled", True)), beside=_STAPLES, asked=True),
    Turn(r"\bhasta (?:la mitad|el medio|medio|ahi|la esquina)", rf"\b(?:grap|engrap)\w+ {_AT}{_ASKED_M} (?:hasta|en|para) (?:la mitad|el medio|medio \w+|ahi|la esquina)(?:,| y| luego| despues| pero| de ahi| en adelante)+ (?:(?:ya|me|nos|le|para|alla|las) )*(?:segui|seguimos|fui|fuimos|abri|puse|pase|termine|van|va|quedaron)? ?{_AT}{M}", (("staple_spacing", "m"), ("stapled", True)), asked=True),
    Turn(r"\b(?:me|nos) (?:fui|fuimos|segui|abri|pase)", rf"\b(?:me|nos) (?:fui|fuimos|segui|seguimos|abri|abrimos|pase) (?:con las grapas )?{_AT}{M}(?: (?:con|en|de) (?:las|la) (?:grapas?|engrapada|grapado))?", (("staple_spacing", "m"), ("stapled", True)), beside=_STAPLES, unless=rf"{_ODD}|\bno (?:me|nos)\b"),
    Turn(r"\b(?:separacion|distancia|espacio)\b", rf"{M} (?:es |fue |de |era )?(?:la |de )?(?:separacion|distancia|espacio)(?: de| entre| que \w+| en)* (?:las |cada )?grapas", (("staple_spacing", "m"), ("stapled", True)), unless=r"\b(?:no|ni|deben?|pide\w*)\b"),
    Turn(r"\bcada (?:palma|mano|cuarta|dedo|tres dedos|cuatro dedos)", rf"\b(?:grap|engrap)\w* (?:a )?cada (?:palma|mano|cuarta|tres dedos|cuatro dedos)(?: de \w+)?,? (?:como |unas |o sea |digamos |casi |que son |son |mas o menos )*(?:de )?{M}", (("staple_spacing", "m"), ("stapled", True)), unless=r"\b(?:no|ni)\b"),
    Turn(r"\botras (?:a|cada) ", rf"\bunas (?:a cada|a|cada) {_ASKED_M},? (?:y |pero )?(?:las )?otras (?:a cada|a|cada) {M}", (("staple_spacing", "m"), ("stapled", True)), beside=_STAPLES),
    # "la engrapada me quedó a tres"
    Turn(r"\b(?:engrapad[oa]|grapead[oa]|grapad[oa])\b", rf"\b(?:la|el|mi) (?:engrapad[oa]|grapead[oa]|grapad[oa])(?: (?!no\b|ni\b)\w+){{0,5}}? {_LIE} {_AT}{M}", (("staple_spacing", "m"), ("stapled", True))),
    # "las puso a tres y yo no lo corregí"
    Turn(r"\blas (?:\w+) ", rf"(?<!no )\blas (?:puse|pusimos|eche|echamos|meti|metimos|tire|deje|abri|espacie|separe|clave|di) {_AT}{M}", (("staple_spacing", "m"), ("stapled", True)), beside=_STAPLES, unless=_NO_OTHER),
    # another put them so, and he left it at that
    Turn(r"\blas (?:puso|pusieron|echo|echaron|metio|metieron|tiro|dejo|dejaron|abrio|espacio|dio)\b", rf"\blas (?:puso|pusieron|echo|echaron|metio|metieron|tiro|dejo|dejaron|abrio|espacio|dio) {_AT}{M}[^.;]{{0,20}}? (?:y |pero |y yo )+(?:ya |asi |ni |yo )*(?:no )?(?:(?:las?|los?|se) )*(?:corregi|quite|movi|abri|toque|cambie|deje|quise \w+|pude \w+|regrese|quedaron|quedo|volvi)\b", (("staple_spacing", "m"), ("stapled", True)), beside=_STAPLES, unless=r"\b(?:y|pero) (?:yo )?(?:las|los|lo) (?:quite|cambie|corregi)", asked=True),
    # asked and answered: "¿Las grapas? A tres"
    Turn(r"^(?:pues |ahi |ya )*(?:como )?(?:a|cada) ", rf"^(?:pues |ahi |ya )*(?:como )?(?:a|cada) {M}", (("staple_spacing", "m"), ("stapled", True)), beside=r"\bgrap\w*\?+ (?:pues |ahi |ya )*(?:como )?(?:a|cada) "),
    # at two here, at three there
    Turn(r"\ba \w+", rf"(?<=[,;] )(?:y |pero )*(?:ya )?a {M} (?:en|por) (?:el|la|los|las) (?:centro|medio|mitad|esquinas|puntas|orillas|lados?|otr[oa]s?|largo|tramos?|parte|fondo|rincon\w*|curva)", (("staple_spacing", "m"),), beside=r"\b(?:grap|engrap)\w*(?: \w+){0,4} (?:a|cada) \w+ (?:en|por) "),
    # how long the legs are
    Turn(r"\bgrap", r"\bgrapas?(?: (?!no\b)\w+){0,4}?,? (?:de )?(?:(?:la |de )?(?:pata|patita|pierna) )?(?:cort|cortit|chic|chiquit|pequeñ)[oa]s?,? (?:(?:la|las|son|es|eran) )?(?:de )?(?P<m>(?:tres octavos|un cuarto|cinco dieciseisavos|3/8|1/4|5/16))\b", (("staple_leg", "m"), ("stapled", True)), unless=r"\b(?:no|ni|sin|nunca)\b"),
    Turn(r"\bgrap", r"\bgrapas? (?:que (?:yo )?(?:me |le |nos |se )*(?:quedaban?|traia|traigo|traiamos|habia|tenia|tengo|use|usamos|puse|pusimos|hay|meti|dieron|quedo) )?(?:eran|son|es|era|miden|mide)(?: (?:chicas|chiquitas|cortas|nomas|nada mas|puras?|las|todas|la|casi)),?(?: (?:de|las|la))* (?P<m>(?:tres octavos|un cuarto|cinco dieciseisavos|3/8|1/4|5/16))\b", (("staple_leg", "m"), ("stapled", True)), unless=r"\b(?:no|ni|sin|nunca)\b"),
    Turn(r"\bgrap", r"\bgrapas? que (?:yo )?(?:me |le |nos |se )*(?:quedaban?|traia|traigo|traiamos|habia|tenia|tengo|use|usamos|puse|pusimos|hay|meti|dieron|quedo) (?:(?:eran|son|es|era|miden|mide) )?(?:de )?(?P<m>(?:tres octavos|un cuarto|cinco dieciseisavos|3/8|1/4|5/16))\b(?: y (?:con )?es[ao]s (?:lo |la |le )?(?:cerre|engrape|puse|use|meti))?", (("staple_leg", "m"), ("stapled", True)), unless=r"\b(?:no|ni|sin|nunca)\b"),
    # how long the tabs are
    Turn(r"\b(?:tabs|tiras|tiritas|pestañas|cintas cruzadas)\b", rf"\b(?:cort|recort|hic|dej|trim|saqu)(?:e|amos|imos)(?: (?:todas|yo|ya))? (?:las |los |mis )?(?:tabs|tiras|tiritas|pestañas|cintas cruzadas)(?: de cinta)? {_AT}{M}", (("cross_tab_length", "m"), ("cross_tabs", True)), unless=r"\b(?:no|ni|collar\w*)\b"),
    Turn(r"\b(?:tabs|tiras|tiritas|pestañas|cintas cruzadas)\b", rf"\b(?:tabs|tiras|tiritas|pestañas|cintas cruzadas)(?: (?!no\b|ni\b|cada\b)\w+){{0,4}}? (?:quedaron|salieron|son|eran|estan|miden|midieron|las corte|las hice|las deje) (?:cort(?:it)?as,? )?(?:de |a )?(?:como )?{M}(?= de largo| de larg| nomas| y (?:piden|debe)|,? (?:no|en vez))", (("cross_tab_length", "m"), ("cross_tabs", True)), unless=r"\b(?:no|ni|collar\w*)\b"),
    # how wide the tape is
    Turn(r"\bno \w+", rf"\b(?:181\S*|cinta|tape|teip)(?: \w+)? de {M} (?:porque|por ?que|pues|ya que),? (?:la )?(?:de |otra )?(?:{_HOW_FAR} )?(?:ya )?no (?:habia|hubo|hay|quedaba|alcanzo|llego|tenia|traia|me dieron)", (("tape_width", "m"), ("taped", True)), unless=r"\b(?:no|ni)\b (?:es|puse|use|lleva)"),
    Turn(r"\brollo\b", rf"\b(?:el )?(?:rollo|rollito)(?: que (?:traia|traigo|habia|tengo|use|me dieron|puse|quedaba))?,? (?:es|era|mide|media|venia|trae)(?: (?:nomas|nada mas|solo|apenas|el|uno|un))* (?:de )?{M}(?: de ancho)?(?= *(?:$|[,;:.]| y | de ancho| nomas))", (("tape_width", "m"),), unless=r"\b(?:no|ni|pies|largo)\b"),
    Turn(r"\b(?:angost|delgad|flac|flaquit|chiquit|ancha|finit)", rf"\b(?:cinta|tape|teip|181\S*)(?: \w+){{0,3}}?,? (?:la |es |era |mas |la mas |puse la |use la |de la )*(?:angost|delgad|flac|flaquit|chiquit|ancha|finit|angostit)[oa],? (?:(?:la|es|era|una) )?(?:de )?{M}", (("tape_width", "m"),), unless=r"\b(?:no|ni|sin)\b"),
    Turn(r"\b(?:piden|pide|debe|dice|manda|toca|quieren)", rf"\b(?:piden|pide|debe ser|debia ser|dice|mandan?|toca|quieren|va) (?:la |cinta |tape |teip |una )*(?:de )?{_ASKED_M}(?: de ancho)?[,;:]? (?:(?:pero|y|yo|nomas|solo|aqui|la verdad) )+(?:le |la |se la )*(?:traia|traigo|tenia|tengo|use|usamos|puse|pusimos|eche|habia) (?:(?:la|una|pura|nomas|solo) )*(?:de )?{M}", (("tape_width", "m"), ("taped", True)), beside=r"\b(?:181|cinta|tape|teip)", unless=r"\bgrap"),
    Turn(r"\b181", rf"\b181\S*,? (?:que (?:me |nos )?(?:dieron|traia|traigo|habia|use|tenia|quedaba|mandaron|llego|trajeron),? (?:es|era|fue) |(?:es|era|fue) |la |pura )(?:la |nomas |solo )*(?:de )?{M}(?= *(?:$|[,;.]| nomas| de ancho| pulgadas| nada mas| y ))", (("tape_width", "m"), ("taped", True)), unless=r"\b(?:no|ni)\b"),
    # how cold it was
    Turn(r"\b(?:marc|dec|daba|termometro|le[ií]|indic)", rf"\b(?:marcaba|marco|decia|dijo|daba|indicaba|lei|leia|tenia|traia) (?:como |unos |apenas |nomas |a )*(?P<m>\d+|{_WARM}) grados", (("surface_temperature", "m"),), unless=r"\b(?:codo|vuelta|giro|noventa|aire adentro|por dentro)\b"),
    Turn(r"\b(?:termometro|sensor|laser|medidor|infrarrojo)\b", rf"\b(?:termometro|sensor|laser|medidor|infrarrojo)(?: (?:del?|de la|que)? ?\w+){{0,4}}? (?:marcaba|marca|marco|decia|dice|dijo|daba|da|indicaba|leia) (?:como |unos |apenas |nomas )*(?P<m>\d+|{_WARM})\b(?! (?:lados|pulgadas|por))", (("surface_temperature", "m"),)),
    # how wide a joint stands
    Turn(r"\b(?:abr|abiert|separ)", rf"\b(?:junta|costura|union|esquina|paneles|orillas?|puntas|bordes|extremos|tapas?|caras?|piezas?)\b(?: (?!no\b|ni\b|grap\w*|cinta\b)[\w,]+){{0,6}}?(?: no (?:topan?|llegan?|pegan?|cierran?|juntan?|toparon|cerraron),?)? (?<!no )(?:se )?(?:me |le |nos )?(?:abrio|abrieron|separo|separaron|(?:quedo|quedaron|quedan|esta|estan|anda|va|van|queda) (?:medio |algo |un poco |todavia )?(?:abiert|separad)[oa]s?)(?: (?:como|unos|un poco|casi|por|mas de))* (?P<m>{_PART}|{_FEW})(?: de pulgada| pulgadas?)?\b(?! (?:lados|caras|grados|y ))(?:,? y (?:asi|ya) (?:l[oa] )?(?:tape|encinte|deje|cerre|selle|cubri|dejamos))?", (("gap", "m"),), unless=r"\bgrap"),
    Turn(r"\babiert", rf"(?:^|(?<=[,;:] )|(?<=pero )|(?<=y ))(?:y |pero |porque )*(?:(?:por )?(?:debajo|abajo|arriba|atras|adentro|dentro|ahi) )?(?:sigue|esta|quedo|queda|quedan) (?:todavia )?abiert[oa]s? (?:como |casi |por )?(?P<m>{_PART})(?: de pulgada| pulgadas?)?\b", (("gap", "m"),), beside=r"\b(?:junta|costura|union|esquina|panel|orilla)", unless=r"\b(?:no|ni|grap\w*)\b"),
    Turn(r"\bno (?:l[eo] |la |me |se )*(?:lleg|alcanz|topa|toca|cierr|cerr|peg|junt)", rf"\b(?:por|le faltan?|le falto|faltando) (?:como |casi )?(?P<m>{_PART})(?: de pulgada| pulgadas?)? (?:para (?:llegar|topar|cerrar)|(?:que )?no (?:l[eo] |la |me |se )*(?:llega|llego|alcanza|alcanzo|topa|topo|toca|cierra|cerro|pega|pego|junta|junto))", (("gap", "m"),)),
    Turn(r"\bno (?:me |se |le )?(?:empat|top|embon|junt|cierr|cerr|peg)", rf"\bno (?:me |se |le )?(?:empatan?|topan?|embonan?|juntan?|cierran?|pegan?|empato|cerro|cerraron|embono)(?: bien)?(?: (?:los|las|el|la) \w+)?,? (?:y |pues |porque |ahi )*(?:hay|queda|quedan|quedo|dejan?|sobra|falta) (?:como )?(?P<m>{_PART})(?: de pulgada| pulgadas?)?\b", (("gap", "m"),), unless=r"\bgrap"),
    Turn(r"\bentre (?:l[oa]s )?(?:dos )?(?:paneles|piezas|orillas|puntas|tapas)", rf"\bentre (?:l[oa]s )?(?:dos )?(?:paneles|piezas|orillas|puntas|tapas) (?:se (?:me |le )?ve|hay|queda|quedo|quedan) (?:como )?(?P<m>{_PART})(?: de pulgada| pulgadas?)?\b", (("gap", "m"),), unless=r"\b(?:no|ni)\b"),
    Turn(r"\b(?:cort|chic)[oa]\b", rf"\b(?P<a>tapa|panel|lado|orilla|cara)(?: de \w+)? (?:me |le |nos )?(?:quedo|salio|quedaba|esta|fue) (?:como |casi )?(?P<m>{_PART})(?: de pulgada| pulgadas?)? (?:mas )?(?:cort|chic)[oa]\b(?!,? (?:y|pero|asi que) (?:ya )?(?:l[oa] )?(?:volvi|volvimos|cambie|hice otr|rehice|saque otr|corte otr))", (("gap", "m"),), unless=r"\b(?:no|ni)\b"),
    Turn(r"\bde (?:cerrar|topar|juntar|pegar)", rf"\b(?:quedo|queda|quedaron|esta|estan|va) a (?:como )?(?P<m>{_PART})(?: de pulgada| pulgadas?)? de (?:cerrar|topar|juntar|juntarse|pegar)", (("gap", "m"),), unless=r"\bno "),
    Turn(r"\bse (?:me |le )?(?:abr|separ)", rf"\bse (?:me |le )?(?:abre|abrio|abren|abrieron|separa|separo|separan|separaron) (?:como |casi |unos )?(?P<m>{_PART})(?: de pulgada| pulgadas?)? (?:en|por|de) (?:la|el|una|un) (?:esquina|junta|costura|union|lado|punta|orilla|parte)", (("gap", "m"),), unless=r"\bno |\bgrap"),
    Turn(r"\bno (?:l[eo] |la |me |se )*(?:qued|cerr|cierr|junt|sell|embon)", rf"\bno (?:l[eo] |la |me |se )*(?:quedo|queda|quedaron|cerro|cierra|junto|junta|embono|sello) (?:muy |bien |tan |del todo )*(?:(?:justa|cerrada|pegada|apretada|justo|cerrado|juntas?|pegadas?) )?(?:la |el |las )?(?:ultima |otra |primera )?(?:junta|costura|union|esquina|tapa)?(?: de \w+)?,? (?:y |pues |porque |ahi |le |me )*(?:hay|queda|quedo|tiene|falta|trae|dejo|se ve) (?:como )?(?P<m>{_PART})(?: de pulgada| pulgadas?)?\b(?! de (?:cinta|teip))", (("gap", "m"),), unless=r"\bgrap"),
)
