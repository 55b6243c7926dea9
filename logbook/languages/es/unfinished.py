"""A piece that was left as it was or is to be gone on with, in Spanish: "lo dejé a medias", "ahorita lo termino", "hasta ahí llegué".

Without accents; `#` stands for the name and the number of the piece. Not reviewed by a native speaker.
"""

from __future__ import annotations

_CL = r"(?:(?:se|me|nos|l[oa]s?|les?) )*"
_IT = r"(?:(?:y|pero|la verdad|pues|ya|ahi|ahorita|hoy|nomas|nada mas|solo|todavia|aun|est[aeo]|es[aeo]|el|la|#+|asi|de plano|por ahora|por lo pronto|de momento|ahora|creo que|tambien|que|se|me|nos|l[oa]s?|les?) )*"
_SOON = r"(?:ahorita|orita|al rato|al ratito|luego|luego luego|despues|mas tarde|mañana|pasado mañana|enseguida|en (?:la tarde|la mañana|un rato|un ratito)|otro dia|a la tarde|despues (?:de|del) (?:comer|lonche|lunch|almuerzo|break|descanso)|(?:el )?(?:lunes|martes|miercoles|jueves|viernes|sabado)|la otra semana)"
_WHEN = rf"(?: (?:ya|si|mismo|temprano|a primera hora|primero dios|dios mediante|pues|o|{_SOON}))*"
_END = r"(?= *$| (?:hoy|ayer|todavia|aun|porque|por|pues|ya que|que|y|pero|es que|cuando|en cuanto|mañana|al rato|luego|hasta|ahorita|a tiempo|nomas|con (?:el |la )?(?:es[ea]|est[ea]|#)))"
_FINISH = r"(?:termin|acab|complet|conclu|remat|finaliz)"
_INF = rf"(?:{_FINISH}|cerr|jal|continu|segu|sac)[aei]r(?:l[oa]s?|les?)?"
_LEFT = r"(?:deje|dejamos|dejo|quedo|quede|quedaron|quedamos|esta|estan|estaba|va|van|anda|sigue|siguen|tengo|tenemos|llevo|llevamos|voy|vamos|ando|traigo)"
_HALF = r"(?:(?:a )?medias|a media|a la mitad|por la mitad|a mitad|(?:a )?medio (?:hacer|armar|terminar|camino|acabar|cerrar|palo)|a medio|medio (?:hech[oa]|armad[oa]|terminad[oa]|acabad[oa])|incomplet[oa]s?|sin (?:terminar|acabar|completar|rematar)(?:l[oa]s?)?|inconclus[oa]s?|en proceso|abandonad[oa]|(?:nomas |apenas |solo )?(?:empezad|comenzad|presentad|armad[oa] en seco)[oa]?s?|en veremos|pa(?:ra)? (?:mañana|al rato|luego|despues)|en pedazos)"

UNFINISHED_LOOKS = r"\b(?:termin|acab|complet|conclu|remat|finaliz|incomplet|inconclus|medi(?:as?|o)\b|mitad|pare\b|paramos|llegue|llegamos|pendiente|segui|sigo|seguimos|continu|retom|regres|vuelvo|casi|mer[oi]|deje|dejamos|proceso|trabaj|armando|todavia|aun|sigo|ando|estoy|junta|union|conexion|empate|empez|empec|comenz|apenas|abandon|presentad|veremos|falt|abiert|list[oa]s?\b|vuelta|rehac|afin|tapa\b|fin\b|unir|volver|puse)"

UNFINISHED: tuple[str, ...] = (
    # "no lo terminé", "todavía no está terminado", "no me dio tiempo de acabarlo"
    rf"{_IT}(?:no|tampoco|ni|nunca) {_CL}(?:he |hemos |ha |esta |estan |quedo |quedaron |alcance a |alcanzamos a |pude |pudimos |logre |dio tiempo de |dio tiempo para |dio chance de |dieron chance de |dejaron |hubo tiempo de |hubo chance de |tuve tiempo de |tuve chance de |llegue a )*(?:{_FINISH}(?:e|amos|o|ad[oa]s?|aron)\b|{_INF}){_END}",
    # "lo dejé a medias", "va a la mitad", "se quedó incompleto"
    rf"{_IT}(?:{_LEFT} )?(?:(?:nomas|todavia|aun|como|apenas|asi|medio|ahi|muy|algo|solo|nada mas|se|me) )*{_HALF}{_END}",
    # "hasta ahí llegué", "ahí le paré", "ya no le seguí"
    rf"{_IT}hasta (?:ahi|alli|aqui|alla|eso)(?: (?:nomas|mero|nada mas))? {_CL}(?:llegue|llegamos|quede|quedamos|quedo|deje|dejamos|hice|hicimos|pude|alcance|va|voy|vamos|pare)\b",
    rf"{_IT}(?:ahi|alli|aqui) {_CL}(?:pare|paramos|deje|dejamos|corte|cortamos|quede|quedamos|estanque)(?= *$| (?:hoy|porque|por|pues|ya que|y|cuando|mañana|ahorita|el|la|nomas))",
    rf"{_IT}no {_CL}(?:segui|seguimos|avance|avanzamos|continue|hice mas|hicimos mas|pude seguir){_END}",
    # "ahorita lo termino", "lo termino mañana", "luego regreso a terminarlo", "mañana continúo"
    rf"(?:{_IT})(?:{_SOON}{_WHEN} )+{_CL}(?:{_FINISH}o|cierro|sigo|seguimos|{_FINISH}amos|continuo|continuamos|retomo|retomamos|voy a {_INF}|vamos a {_INF}|(?:regreso|vuelvo|vengo|regresamos) (?:a|por|con) (?:{_INF}|el|ella|es[ea]|est[ea]|#+)|regreso|vuelvo)(?= *$| (?:con (?:es[ea]|est[ea])|por|porque|cuando|bien|ya|pues|si|y|#+|est[ea]|es[ea]))",
    rf"{_IT}(?:{_FINISH}o|sigo|seguimos|{_FINISH}amos|continuo|retomo|(?:voy|vamos) a {_INF}|(?:regreso|vuelvo|vengo) (?:a|por) (?:{_INF}|el|ella|es[ea]|est[ea]))(?: (?:con )?(?:#+|est[ea]|es[ea]))*{_WHEN} {_SOON}\b",
    rf"{_IT}(?:regreso|vuelvo|vengo|regresamos|me regreso|nos regresamos) a {_INF}\b",
    rf"{_IT}(?:hay que|tengo que|tenemos que|me falta|nos falta|falta|le falta|queda por|toca|me toca|quedo de) {_INF}{_END}",
    # "ya casi", "ya mero queda", "casi terminado"
    rf"{_IT}(?:ya )?(?:casi|casi casi|mero|merito|por poco)(?: (?:lo |la |se |me |esta |ya |que |queda |quedo )*(?:{_FINISH}o|{_FINISH}ad[oa]s?|{_FINISH}amos|list[oa]s?|queda|esta|acabo|sale|hech[oa]))(?= *$| (?:pero|nomas|y|por|porque))",
    # "la junta con el 115 todavía no la cierro"
    rf"{_IT}(?:junta|union|conexion|empate)(?: (?:con|a|al|del?) (?:(?:el|la) )?[\w#]+(?: [\w#]+)?)? (?:todavia |aun )?(?:no {_CL}(?:cierro|he cerrado|esta cerrad[oa]|quedo cerrad[oa]|la hago|he hecho)|sin (?:cerrar|hacer)|sigue abierta|esta abierta todavia|pendiente|queda pendiente)\b",
    # "trabajando en él todavía", "sigo en eso"
    rf"{_IT}(?:(?:ando|estoy|sigo|seguimos|estamos|andamos) )?(?:trabajando|trabajandole|armando|dandole|en eso|en el|con el|en ella|con ella)(?: (?:en |con )?(?:el|ella|es[eoa]|est[eoa]|l[oa]|#+))? (?:todavia|aun|apenas)\b",
    rf"{_IT}(?:ando|estoy|sigo|seguimos|estamos|andamos) (?:todavia |aun )?(?:trabajando |trabajandole |dandole )?(?:en (?:el|ella|es[eoa]|est[eoa])|con (?:el|ella|es[eoa]|est[eoa]))(?: (?:todavia|aun))?$",
    # "no está listo", "quedó abierto", "falta poquito", "no le puse la tapa"
    rf"{_IT}(?:todavia |aun )?no {_CL}(?:esta|estan|quedo|quedaron|anda) (?:muy |del todo )?(?:list[oa]s?|complet[oa]s?|hech[oa]s?){_END}",
    rf"{_IT}(?:{_LEFT} )(?:(?:todavia|aun|asi|ahi|medio|nomas) )*abiert[oa]s?{_END}",
    rf"{_IT}(?:(?:me|nos|le|les|ya|todavia|nomas|solo) )*falt(?:a|o|an|aba) (?:(?:como|nomas|un|una|unos|el|lo|la|darle|afinar|el puro) )*(?:poquito|poquita|poco|tantito|pelito|cachito|remate|final|ultimo|acabado|ratito|vuelta|afinarl[oa]|detallit[oa]s?|unirl[oa](?: (?:al|a la|con (?:el|la)) (?:siguiente|otr[oa]|#|que sigue))?|junta(?: con (?:el|la) (?:siguiente|otr[oa]|[\w#]+|que sigue))){_END}",
    rf"{_IT}(?:hay que|tengo que|tenemos que|toca|va a tener que|voy a tener que|quede de|quedamos de) (?:darle otra (?:vuelta|pasada)|volver a (?:el|ella)|rehacer(?:se|l[oa])|regresar(?: a (?:el|ella))?|afinarl[oa]|rematarl[oa]){_END}",
    rf"{_IT}no (?:le )?(?:puse|pusimos|he puesto|cerre) (?:la |el |su |una )?(?:tapa|tapon|fondo|cachete|#+)(?: de (?:arriba|abajo|atras|un lado))?{_END}",
    rf"{_IT}no le di(?:mos)? fin{_END}",
    # "apenas lo empecé"
    rf"{_IT}apenas {_CL}(?:empece|empezamos|comence|estoy empezando|voy empezando|empiezo|estoy armando|ando armando|estoy haciendo|ando haciendo|voy (?:a la mitad|en eso)|ando en eso)\b",
)
