"""Spanish of what was let be, told with its reason: "el jefe dice que sin aletas jala y así lo cerré", "¿y las grapas?, esas las debo", "el 44 encintado, el 46
lo dejé así", "según yo eran dos pero medí y no"; and of what looks like it and is only talk ("total ni se ve", "mojado no pega").

Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, FRAC, KIND, MARK, STOP, TAPE
from logbook.languages.plainer import Plainer

_THING = r"(?:aletas?|vanes|guias|alabes|cinta|teip|tape|grapas?|staples?|tabs|mastique|tirantes|refuerzos?|varillas)"
_SAID = r"(?:dijo|dice|dijeron|dicen|opina|asegura|insiste|jura|juro)"
_WHO = r"(?:(?:me|nos) |(?:mi|el|un|otro|la) \w+ (?:me |nos )?|los de \w+ )"
_FINE = r"(?:(?:asi )?(?:jala|jalaba|trabaja|funciona|funcionaba|queda|quedaba|esta|estaba|sirve|servia|pasa|pasaba|aguanta|aguantaba|pega|pegaba|va|iba)(?: (?:igual|bien|lo mismo|mejor|perfecto|de todos modos))*)"
_SO = r"(?:asi (?:nomas |mero |mismo )?(?:l[oa]s? |me |se )*(?:deje|dejamos|cerre|cerramos|hice|hicimos|arme|armamos|quedo|quedaron|va|van|se fue|subi|subimos))"
_FAR = rf"(?:{COUNT}|{FRAC})(?: y (?:medi[oa]|un cuarto|cuarto))?(?: pulgadas?)?"
_LOOKED = r"(?:(?:ya |luego |pero |y |pues )*(?:fui a (?:ver|checar|revisar)(?:l[oa]s?)?|(?:l[oa]s? )?(?:medi|revise|cheque|vi|mire|conte|checamos|medimos)|me (?:fije|asome)|regrese a ver)(?: bien)? (?:y |que )+(?:no|nada|nel|siempre no|no es cierto|pura madre|que va))"
_DID = r"(?:engrapad[oa]s?|grapad[oa]s?|encintad[oa]s?|teipead[oa]s?|tallad[oa]s?)"
_LEFT_SO = r"(?:l[oa] deje|l[oa] dejamos|se quedo|quedo|ahi quedo) asi(?: nomas| mero)?|asi (?:nomas )?(?:l[oa] deje|l[oa] dejamos|se quedo|quedo)"
_SKIN = r"(?:foil|papel|aluminio|forro|facing|recubrimiento)"
_ODD = r"(?:pintor|empacar|empaque|aislar|electricista|plomero|plomeria|ferreteria|masking|oficina|tela|lona|paqueteria|carrocero)"

SPANISH_LET_BE = (
    # --- another said that it does without, and so he left it
    Plainer((" sin ",), rf"(?P<x>\b{_WHO}{_SAID} que (?:asi )?sin (?:las |la |los )?(?P<t>{_THING}) {_FINE}(?:,|;| y| pues| entonces)+ (?:(?:y|pues|entonces|ya|yo) )*{_SO})(?= *(?:$|[,;.]| y | con ))", (("x", r"no lleva \g<t>"),)),
    # --- asked aloud, and owed: "¿y las grapas?, esas las debo"
    Plainer((" debo", " debemos", " debiendo", " a deber", " pendientes", " despues", " mañana", "al rato"), rf"(?P<x>¿? ?(?:y )?(?P<t>(?:la|el|las|los) {_THING})\?,? (?:(?:pues|ah|no|uy|ay|esa|ese|esas|esos|todavia|si) ?,? )*(?:(?:se )?(?:la|lo|las|los) (?:debo|debemos|quede debiendo|quedo a deber|quedo debiendo)))(?= *(?:$|[,;.]| y | porque ))", (("x", r"debo \g<t>"),)),
    # --- asked aloud, and none there: "¿grapas?, nombre, se acabaron desde ayer"
    Plainer((" acab", " termin", " no hay", " no hab", " no hub", " no tra", " no lleg", " no tengo", " de donde", " que ojos"), rf"(?P<x>¿ ?(?:y )?(?:la |el |las |los )?(?P<t>{_THING})\?,? (?:(?:pues|ah|no|uy|ay|nombre|no hombre|ja|con que ojos|de donde|cuales|cual|esas|esa|esos|si),? )*(?:se (?:me |nos |le )?(?:acab|termin)(?:o|aron)|no (?:hay|habia|hubo|traia|traje|llegaron|llego|tengo|trajeron)))(?= *(?:$|[,;.]| y | porque | desde | ayer| hoy| en | por ))", (("x", r"no lleva \g<t>"),)),
    # --- taken off again, and no more of it there
    Plainer((" despeg", " quit", " arranq", " jal"), rf"(?P<x>\b(?:la|el) (?P<t>{TAPE}) (?:se )?l[oa] (?:despegue|quite|arranque|jale|quitamos|despegamos)\b[^.;]{{0,50}}? (?:y|pero|ya) (?:ya )?no (?:traigo|tengo|hay|traia|tenia|habia|quedo|queda|me quedo) (?:mas|otra|otro rollo|con que)(?: (?:cinta|tape|teip|rollo))?)(?= *(?:$|[,;.]| para | y ))", (("x", r"no lleva \g<t>"),)),
    # --- tape alone, where the staples were forgotten
    Plainer((" pur",), rf"\b(?:olvid|falt|acab|pas|termin)\w+ (?:poner(?:le)? )?(?:las |la )?(?:grapas?|staples?)(?P<x>(?:,|;|\.| y| asi que| pero)+ (?:(?:lleva|va con|tiene|le puse|trae|nomas|solo) )*pur[oa] {TAPE}(?: (?:lleva|trae|tiene|le puse|va))?)(?= *(?:$|[,;.]| y ))", (("x", ". Lleva cinta"),)),
    # --- wider on one side: "cada dos las grapas, menos del lado de la pared que van como a cuatro"
    Plainer(
        (" menos ", " excepto ", " salvo "),
        rf"\b(?:grap|engrap|staple)\w*[^.;]{{0,40}}?(?P<x>(?:,| y| pero)* (?:menos|excepto|salvo) (?:en |de |por )?(?:del |el |al |un )?(?P<s>(?!que\b|mal\b)[^.;,]{{2,30}}?),? (?:que|donde|ahi|ese|esa)(?: (?:van|quedaron|estan|son|me|se|fueron|iban|hay|le puse|quedo|como|casi|mas o menos|nomas))* (?:a|cada|de a) )(?={_FAR} *(?:$|[,;.]| porque | pues ))",
        (("x", r", \g<s> cada "),),
    ),
    # --- the one done, the other left so
    *(
        Plainer(cues, rf"\b(?:el|la|al|a la) (?:{KIND} )?{MARK} (?:(?:si|ya|quedo|esta|va|le puse|lo deje) )*{did}(?:,|;|\.| y| pero)+ (?:(?:y|pero) )?(?:el|la|al|a la) (?:{KIND} )?(?:numero )?{MARK}(?P<x> (?:{left}))(?= *(?:$|[,;.]| porque | pues | y ))", means)
        for cues, did, left, means in (
            ((" asi",), _DID, _LEFT_SO, (("x", " no"),)),
            ((" asi", " no", " sin"), rf"(?P<w>con) (?:sus |las |la )?(?P<c>{_THING})", rf"{_LEFT_SO}|no(?! (?:porque|pues) )|sin(?: {_THING})?", (("w", "lleva"), ("x", r" va sin \g<c>"))),
        )
    ),
    # --- "según yo eran dos pero medí y no": what he took it for
    Plainer(("segun yo", "segun nosotros", "yo decia", "yo juraba", "yo crei", "yo pense", "crei que", "pense que"), rf"(?P<x>,? ?\b(?:segun yo|segun nosotros|yo decia que|yo juraba que|(?:yo )?crei que|(?:yo )?pense que) (?:(?:eran?|iban?|estaban?|son|es|va|van) )?(?:a |cada |de )?{_FAR}(?:,|;| y| pero)+ {_LOOKED})(?= *(?:$|[,;.]))", (("x", ""),), beside=("cada", "cinta", "teip", "tape", "grapa")),
    # --- told before that it was done, and seen that it is not
    Plainer(
        ("dije que", "decia que", "segun yo", "juraba que", "crei que", "pense que", "dicho que", "creia que", "anote que", "reporte que"),
        rf"(?P<x>\b(?:(?:yo |te |les |le |ya )*(?:dije|decia|habia dicho|juraba|crei|creia|pense|anote|reporte)(?: ayer| hace rato)? que (?:ya )?|segun yo (?:ya )?)(?P<v>estaba|estaban|quedo|iba) (?P<a>\w+ad[oa]s?)(?:,|;|\.| y| pero)* {_LOOKED})(?= *(?:$|[,;.]))",
        (("x", r"no \g<v> \g<a>"),),
    ),
    # --- what another did, and what came of it: "el ayudante se fue, o sea que no hay cinta en el 34"
    Plainer(
        (" o sea", " asi que", " entonces", " por eso"),
        rf"\b(?:el|la|mi|los|las|un|otro|nadie|ninguno) \w+ [^.;!?]{{3,70}}?(?P<x>,? (?:y )?(?:o sea(?: que)?|asi que|entonces|por eso),? )(?=(?:(?:yo|todavia|aun|pues|mejor) )*(?:no (?:hay|tiene|lleva|trae|tienen|llevan|quedo|esta|le puse|se la puse|se las puse|la puse|las puse)|(?:va|quedo|se quedo|esta|lo deje|la deje|se va) sin|le falta)\b[^.;,]{{0,24}}\b{_THING}\b)",
        (("x", ". "),),
    ),
    # --- somebody took the tape off
    Plainer((" arranc", " quit", " jal", " despeg"), rf"(?P<x>\b(?:vino alguien y|vino un \w+ y|alguien|algun \w+|no se quien|quien sabe quien|un \w+|los \w+|el \w+) (?:vino y |paso y |llego y )?(?:(?:me|nos|se) )?(?:le|la) (?:arranc(?:o|aron)|quit(?:o|aron)|jal(?:o|aron)|despeg(?:o|aron)) (?:toda )?(?:la |un pedazo de |parte de la |media )?{TAPE})(?= *(?:$|[,;.]| del? | en | y | por | cuando ))", (("x", "me le arrancaron un pedazo de cinta"),), unless=r"\b(?:volvi|otra vez|de nuevo|nueva|repuse|(?:ya|luego|despues) (?:se )?(?:la|le) (?:volvi|puse))\b"),
    # --- fewer vanes than it takes: "de las dos aletas nomás entró una"
    Plainer(
        ("aletas", "vanes", "guias", "alabes"),
        r"(?P<x>\bde (?:las|sus) (?:dos|tres|cuatro|cinco) (?:aletas|vanes|guias|alabes),? (?:nomas|solo|solamente|nada mas|apenas) (?:(?:le|me|se) )?(?:entr(?:o|aron)|cup(?:o|ieron)|qued(?:o|aron)|llego|llegaron|alcanz(?:o|aron)|hubo|venia|venian) (?:una|dos|tres)(?: aletas?)?)(?= *(?:$|[,;.]| y | porque ))",
        (("x", "le faltan aletas"),),
    ),
    Plainer(
        ("aletas", "vanes", "guias", "alabes"),
        r"(?P<x>\b(?:lleva|llevaba|le tocan|le tocaban|ocupa|ocupaba|iba con) (?P<m>dos|tres|cuatro|cinco) (?:aletas|vanes|guias|alabes)(?:,| y| pero)+ (?:nomas|solo|solamente|nada mas|apenas) (?:(?:le|me|se) )?(?:entr(?:o|aron)|cup(?:o|ieron)|qued(?:o|aron)|llego|llegaron|alcanz(?:o|aron)|puse|pusimos|meti|trajeron|hubo|habia|venian?) (?!(?P=m)\b)(?:una|dos|tres|cuatro)(?: aletas?)?)(?= *(?:$|[,;.]| y | porque ))",
        (("x", "le faltan aletas"),),
    ),
    # --- tabs of a collar bent on the one side: "doblé las pestañas de abajo, las de arriba ahí siguen paradas"
    Plainer(
        (" parad", " derech", " sin doblar", " ties", " levantad", " de arriba no", " de abajo no"),
        r"(?P<x>\b(?:doble|doblamos) (?:l[oa]s )?(?:tabs?|pestañas?|lenguetas?) (?:de|del) (?:lado de )?(?:abajo|arriba|atras|adentro|afuera|enfrente|un lado|la izquierda|la derecha)(?:,|;|\.| y| pero)+ l[oa]s (?:otr[oa]s|demas|de (?:arriba|abajo|atras|adentro|afuera|enfrente|los lados|un lado|la izquierda|la derecha|otro lado)),? (?:(?:todavia|aun|me|se|ahi|nomas|asi|pues) )*(?:(?:siguen|quedaron|estan|andan|van) (?:parad[oa]s|derech[oa]s|sin doblar|ties[oa]s|levantad[oa]s)|no\b(?! hizo| hace)))",
        (("x", "doblé la mitad de las pestañas, las demás siguen derechas"),),
    ),
    # --- the facing opened: "le abrió el papel como una cuarta"
    Plainer(
        (" abrio", " abrieron"),
        rf"(?P<x>\b(?:se )?(?:me |nos )?le (?:abrio|abrieron) (?:el|todo el|tantito el) {_SKIN})(?= *(?:$|[,;.]| como | con | de (?:un|una|la|abajo|arriba)\b| en | por | unas? | y ))",
        (("x", "le rasgó el papel"),),
    ),
    # --- tape of a sort for something else: "cinta pero de la de pintor"
    Plainer((" de la de ", " del de "), rf"\b{TAPE}(?P<x>,? (?:pero |nomas que |aunque )?(?:es |era |fue )?(?:de la|del) de (?P<t>{_ODD}))\b", (("x", r" de \g<t>"),)),
    # --- "grapas... híjole, creo que no, no, no le puse": thought of and remembered
    Plainer(
        (" no ",),
        rf"(?:^|(?<=[,;.] ))(?P<x>(?:y |las |la |el )?(?P<t>{_THING})(?:\.\.\.|…|,|:)+ (?:(?:hijole|ah|ay|eh|mmm|este|a ver|pues|uy|chin|no|creo que no|nel|que crees|ya me acorde),? )+(?P<n>no (?:se )?(?:l[aeo]s? |les )+(?:puse|pusimos|meti|metimos|eche|di|trae|lleva)))(?= *(?:$|[,;.]| porque | y ))",
        (("x", r"no le puse \g<t>"),),
    ),
    # --- harm to which nothing was done: "no le he puesto nada"
    Plainer((" puesto nada", " pongo nada", " hago nada", " echado nada", " puse nada"), rf"(?P<x>\b(?P<s>todavia |aun )?no (?:se )?le (?:he|hemos) (?:puesto|echado) nada|(?:todavia|aun) no le (?:pongo|hago|echo|hacemos|ponemos) nada)(?= *(?:$|[,;.]| y | porque | ahi | todavia))", (("x", r"no lo he reparado"),), beside=("tajo", "hoyo", "raj", "rasg", "agujer", "cortad", "golpe", "hundi", "sumid", "abolla", "ponch", "piquete", "rot", "despeg", "aplast", "quebr", "desgarr", "abertura", "abrio"), unless=r"\bnada mas\b|\b(?:parch|repar|tape(?:e|amos) (?:el|la) (?:hoyo|raj))\w*"),
    Plainer((" ahi l", " asi l", " ahi se", " asi se"), r"\b(?:despeg|separ|delamin|desprend|ampoll|abomb)\w+ [^;]{0,60}?[,.] (?P<x>(?:ahi|asi) (?:(?:nomas|mero) )?(?:l[oa] (?:deje|dejamos)|se quedo|quedo))(?= *(?:$|[,;.]| y | porque ))", (("x", "no lo reparé"),), beside=("foil", "aluminio", "papel", "forro", "facing", "fibra")),
    # --- the wool that was over, left
    Plainer((" dentro", " adentro"), r"(?P<x>\b(?:la |el )?(?:fibra|lana|aislante|insulation|sobrante)(?: que (?:sobra|sobraba|sobro|salia|quedo))? (?:la|lo) (?:deje|dejamos) (?:ahi )?a?dentro)(?= *(?:$|[,;.]| y | porque ))", (("x", "la fibra que sobra ahí la dejé"),)),
    # --- a reason only: wet tape does not stick; for longer ones it was not enough; it does not show anyway
    Plainer(("mojad", "humed"), rf"(?:^|(?<=[,;.] )|(?<=porque )|(?<=pues )|(?<=que )|(?<=y ))(?P<x>(?:en |estando )?(?:mojad|humed)[oa] (?:asi )?no (?:(?:me|se|l[oa]|le) )?(?:pega|agarra|sirve|pegaba|agarraba|se puede)(?: (?:la |el )?(?:{TAPE}|nada|bien))?)(?= *(?:$|[,;.]| y | la | l[oa] ))", (("x", "está lloviendo"),), unless=r"\b(?:esta|quedo|viene|estaba|anda|sigue) (?:\w+ )?mojad"),
    Plainer((" mas larg", " mas grand", " mas anch"), rf"(?P<x>,? ?\b(?:porque )?(?:(?:la|el) )?{TAPE} no (?:me |nos )?(?:alcanzaba|alcanzo|alcanza|daba|dio|salia|ajustaba|rendia) (?:para|pa) (?:hacerl[oa]s |cortarl[oa]s |poner(?:l[ea]s)? )?mas (?:larg|grand|anch)[oae]+s?)(?= *(?:$|[,;.]))", (("x", ""),), beside=("tabs", "tiras", "cruzad", "lenguet", "pestañ")),
    Plainer((" ni se ve", " ni se nota", " ni se mira", " no se ve", " no se nota", "se va a ver", "que no se "), rf"(?P<x>,? ?\b(?:total|al cabo|al cabo que|al fin|al fin que|de todos modos|igual|ni quien vea|a fin de cuentas)(?: que)?,? (?:eso |ya |ahi |desde abajo )*(?:ni|no) se (?:ve|nota|mira|va a ver|va a notar)(?: (?:nada|alla arriba|desde abajo))?|(?:para|pa) que no se (?:vea|viera|note|notara|mire))(?: tanto| mucho)?{STOP}", (("x", ""),), unless=r"\b(?:malla|scrim|trama|cuadricula|hilos?)\b"),
)
