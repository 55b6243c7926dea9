"""Spanish of a joint that is not closed: "todavía no lo empato con el 65", "sin unir con el 65", "no quedó a tope", "tiene una ranura en la esquina".

The other piece is no piece of the note's work there. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import KIND, MARK, STOP
from logbook.languages.plainer import Plainer

_STEM = r"(?:un|empat|junt|conect|peg|amarr|acopl|ensambl|enchuf|empalm|embon|cerr)"
_OTHER = rf"(?:(?:al?|con|contra|junto al?)(?: (?:el|la|su))?|al|del|de la) (?:{KIND} )?(?:numero )?{MARK}"
_YET = r"(?:(?:todavia|aun|ya|de plano|tampoco) )*"
_ENDS = r"(?= *(?:todavia|aun)? *(?:$|[,;.]| (?:y|pero|porque|pues|hasta|todavia|aun|mañana|luego)\b))"
_NEXT = rf"(?:{_OTHER}|(?:al?|con)(?: el| la)? (?:siguiente|que sigue|proxim[oa]|anterior|de atras|de adelante)(?: (?:pieza|tramo|recto|seccion))?|al (?:siguiente|que sigue|proximo|anterior))"
_TIED = rf"(?:{_STEM}|cierr)(?:id[oa]|ad[oa]|imos|amos|[oeiay]|io|ir(?:l[oa])?|ar(?:l[oa])?)"
_CUES = tuple(f" {stem}" for stem in ("un", "empat", "junt", "conect", "peg", "amarr", "acopl", "ensambl", "enchuf", "empalm", "embon", "cierr", "cerr"))
_OPEN = "la junta todavia no la cierro"
_INSTEAD = r"(?!,? (?:sino|lo \w+(?:e|amos) (?:al|con)|va (?:al|con)))"
_SEAL = r"(?:cierr[oae]|cerr(?:e|amos|o|ad[oa])|sell(?:o|e|a|amos|ad[oa])|peg(?:o|ue|a|amos|ad[oa])|encint(?:o|e|a|amos|ad[oa])|teipe(?:o|e|a|amos|ad[oa])|engrap(?:o|e|a|amos|ad[oa])|termin(?:o|e|a|amos|ad[oa])|hag[oa]|hacemos|hice|hicimos|hizo|hech[oa]|tap(?:o|e|amos|ad[oa])|un(?:o|i|imos|id[oa])|amarr(?:o|e|amos)|remat(?:o|e|amos))"
_TO_SEAL = r"(?:cerrar|sellar|pegar|encintar|teipear|engrapar|terminar|hacer|tapar|unir|rematar|ponerle (?:cinta|teip|grapas|mastique) a)"
_JOINT = r"(?:(?:la|el|esa|ese) )?(?:union|junta|conexion|empate)"
_GOT_TO = r"(?:pude |pudimos |alcance a |alcanzamos a |llegue a |me dio tiempo de |dio tiempo de |he podido |voy a |vamos a )"
_HOLE = r"(?:ranur(?:a|ita)|abertur(?:a|ita)|separacion(?:cita)?)"

SPANISH_NOT_YET_JOINED = (
    # --- "todavía no lo empato con el 65", "no lo he unido al 65", "no está unido con el 65"
    Plainer(
        _CUES,
        rf"(?<!si )(?<!que )(?P<x>{_YET}no (?:se )?(?:l[oa] |me |le )?(?:he |hemos |ha |pude |alcance a |esta |quedo |va )?(?:(?:{_STEM}|cierr)(?:id[oa]|ad[oa]|imos|amos|[oeiay]|ir(?:l[oa])?|ar(?:l[oa])?)) (?:bien )?(?:{_YET})?{_OTHER}(?: todavia| aun)?){_INSTEAD}{_ENDS}",
        (("x", _OPEN),),
    ),
    # --- "falta unirlo al 65", "quedó sin unir con el 65"
    Plainer(
        _CUES,
        rf"(?P<x>(?:{_YET}(?:(?:nomas|solo|me|le|nos) )*falta |(?:(?:quedo|esta|va|sigue|lo deje|la deje) )?sin |(?:hay que|tengo que|queda por) ){_STEM}[ai]r(?:l[oa])? {_OTHER}){_ENDS}",
        (("x", _OPEN),),
    ),
    # --- "la unión con el 65 sigue abierta"
    Plainer(
        (" abiert", " pendiente", " sin cerrar", " no cierr", " no esta cerr"),
        rf"(?P<x>(?:(?:la|el) )?(?:union|junta|conexion|empate) {_OTHER} {_YET}(?:(?:quedo|esta|va|sigue|queda) )*(?:abiert[oa]|pendiente|sin cerrar|no cierra|no (?:esta )?cerrad[oa])){_ENDS}",
        (("x", _OPEN),),
    ),
    # --- "con el 65 no lo uní", "al siguiente no lo pegamos"
    Plainer(
        _CUES,
        rf"(?P<x>{_NEXT},? {_YET}no (?:se )?(?:l[oa] |me |le |se )?(?:he |hemos |ha |pude |pudimos |alcance a |alcanzamos a |esta |quedo |va )?{_TIED}(?: {_YET})?(?: todavia| aun)?){_ENDS}",
        (("x", _OPEN),),
        beside=(" no ",),
    ),
    # --- "la junta con el que sigue no está hecha", "la unión con el 65 no se hizo", "la junta con el 65 la dejé abierta"
    Plainer(
        ("junta ", "union ", "conexion ", "empate "),
        rf"(?P<x>(?:(?:la|el|esa|ese) )?(?:union|junta|conexion|empate) {_NEXT} {_YET}(?:no (?:se |la |lo )?(?:esta |quedo |ha |he |hemos |pude |alcance a |alcanzamos a )?(?:hecha|hecho|hizo|hice|hicimos|cerre|cerramos|cerro|cerrar|termine|terminamos|unida|pegada|cerrada|lista)|(?:la |lo )?(?:deje|dejamos|dejo|quedo|queda|va|sigue) (?:abiert[oa]|pendiente|sin (?:cerrar|hacer|unir|pegar)|para (?:mañana|luego|despues))|(?:la |lo )(?:cierro|hago|cerramos|hacemos|voy a (?:cerrar|hacer)|vamos a (?:cerrar|hacer)) (?:mañana|luego|despues))){_ENDS}",
        (("x", _OPEN),),
    ),
    # --- "mañana se cierra la junta con el 65", "falta cerrar la junta con el 65", "me falta la unión con el 65"
    Plainer(
        ("junta ", "union ", "conexion ", "empate "),
        rf"(?P<x>(?:mañana (?:se |la )?(?:cierra|cierro|cerramos|hace|hago|hacemos|voy a cerrar|vamos a cerrar)|(?:(?:todavia|aun|nomas|solo|me|nos|le) )*falta(?:n)?(?: por)?(?: (?:cerrar|hacer|terminar|pegar))?|(?:hay que|tengo que|tenemos que|queda por) (?:cerrar|hacer)|no (?:alcance|alcanzamos) a (?:cerrar|hacer)|se me olvido (?:cerrar|hacer)) (?:la|el|esa) (?:union|junta|conexion|empate) {_NEXT}){_ENDS}",
        (("x", _OPEN),),
    ),
    # --- "mañana lo uno al 65", "lo vamos a unir al 65 mañana", "se me olvidó unirlo al 65", "no se unió con el 65"
    Plainer(
        (" mañana", "mañana "),
        rf"(?P<x>mañana (?:l[oa] |se (?:l[oa] )?)?(?:uno|unimos|pego|pegamos|amarro|amarramos|conecto|conectamos|junto|juntamos|empato|voy a {_STEM}[aei]r|vamos a {_STEM}[aei]r|une|pega|conecta)(?:l[oa])? {_NEXT}|(?:l[oa] )?(?:voy|vamos|van) a {_STEM}[aei]r(?:l[oa])? {_NEXT} mañana|(?:l[oa] )(?:uno|unimos|pego|amarro|conecto|junto) {_NEXT} mañana){_ENDS}",
        (("x", _OPEN),),
    ),
    Plainer(
        ("olvido ", "alcance ", "alcanzamos ", " no se "),
        rf"(?<!no )(?P<x>(?:se (?:me|nos) olvido {_STEM}[aei]r(?:l[oa])?|no (?:alcance|alcanzamos|pude|pudimos)(?: a)? {_STEM}[aei]r(?:l[oa])?|no se (?:{_STEM}(?:io|o)|ha {_STEM}(?:ido|ado))) {_NEXT}(?: {_YET})?){_ENDS}",
        (("x", _OPEN),),
    ),
    # --- "todavía no sello la junta con la que sigue", "la junta con la 16 no la alcancé a pegar", "falta sellar la junta con la 13"
    *(
        Plainer(("junta ", "union ", "conexion ", "empate "), rf"(?<!si )(?<!que ){ahead}(?P<x>{pause}{joint}){_ENDS}", (("x", means),))
        for joint in (
            rf"{_YET}no (?:(?:se|le|me|nos|l[oa]) )*(?:(?:he |hemos |ha )?{_SEAL}|{_GOT_TO}{_TO_SEAL})(?: bien| todavia| aun)* {_JOINT}(?: del? lado)? {_NEXT}(?: todavia| aun)?",
            rf"{_JOINT} {_NEXT},? {_YET}(?:no (?:(?:se|le|me|nos|l[oa]) )*(?:(?:he |hemos |ha )?{_SEAL}|{_GOT_TO}{_TO_SEAL}(?:l[oa])?)|(?:me |nos |le )?falta(?: {_TO_SEAL}(?:l[oa])?)?|sin {_TO_SEAL})(?: todavia| aun)?",
            rf"(?:(?:todavia|aun|nomas|solo|me|nos|le) )*(?:falta|queda por|hay que|tengo que) {_TO_SEAL} {_JOINT} {_NEXT}",
        )
        for ahead, pause, means in ((r"(?!(?:y|pero|si|que|la|el|esa|ese|todavia|aun|me|nos|le|nomas|solo|a|de)\b)\w+", " ", f". {_OPEN}"), ("", "", _OPEN))
    ),
    # --- "no quedó a tope", "no entró hasta el tope"
    Plainer(
        (" tope", " hasta el fondo"),
        r"(?P<x>no (?:me |le |se |nos )*(?:quedo|llego|llega|entro|entra|cerro|cierra|topo|topa|junto|pego|asento|quedaron|entraron|esta|va) (?:(?:muy|bien|del|todo|parejo) )*(?:a tope|al tope|hasta (?:el )?(?:tope|fondo)))\b",
        (("x", "tiene una rendija"),),
        unless=r"\b(?:tornillos?|grapas?|pijas?|varillas?|costado de|canto)\b[^.;,]{0,30} no ",
    ),
    Plainer((" topa", " topo"), rf"(?P<x>no topa(?: muy)?(?: bien)?|no topo(?: muy)?(?: bien)?)(?= (?:la|el|con)\b|{STOP[3:-1]})", (("x", "tiene una rendija"),)),
    # --- "tiene una ranura en la esquina": no groove that was cut
    Plainer(
        (" ranur", " abertur", " separacion"),
        rf"(?<!no )(?<!no le )(?<!no se le )(?<!ni )(?P<x>(?:(?:se )?(?:le |me )*(?:tiene|trae|quedo|ve|hay|hizo|quedaba|nota|salio) )una {_HOLE})(?! (?:para|del? (?:shiplap|rebaje|traslape|macho|hembra)|hecha|cortada))",
        (("x", "tiene una rendija"),),
    ),
)
