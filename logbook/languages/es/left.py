"""Spanish that tells that what is not done is still to come: "mañana le doy", "luego lo hago", "al rato se la pongo".

Without accents. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.left import Left

_DAY = (
    r"(?:ahorita|orita|al rato|al ratito|ratito|luego(?: luego)?|despues(?: de(?:l)? (?:comer|lonche|lunch|almuerzo|break|descanso))?|mas tarde|mas al rato|(?:hasta |para |pa |ya )?(?:mañana|pasado mañana)(?: temprano| a primera hora| en la mañana| mismo| sin falta| primero dios)*"
    r"|(?:hoy )?en (?:la tarde|la mañana|la noche|un rato|un ratito)|a la tarde|otro dia|(?:el |hasta el |para el )?(?:lunes|martes|miercoles|jueves|viernes|sabado)(?: que viene)?|la (?:otra|proxima) semana|en cuanto (?:pueda|tenga|llegue)\b[^,.;]{0,20}|cuando (?:pueda|tenga|regrese|vuelva|llegue)\b[^,.;]{0,20})"
)
_CL = r"(?:(?:se|me|nos|l[oa]s?|les?) )+"
_NOW = r"(?:doy|damos|hago|hacemos|entro|entramos|echo|echamos|meto|metemos|pongo|ponemos|paso|pasamos|sigo|seguimos|termin[oa](?:mos)?|acab[oa](?:mos)?|complet[oa](?:mos)?|cierro|cerramos|veo|vemos|arregl[oa](?:mos)?|recort[oa](?:mos)?|cort[oa](?:mos)?|quit[oa](?:mos)?|rebaj[oa](?:mos)?|tall[oa](?:mos)?|frot[oa](?:mos)?|encint[oa](?:mos)?|(?:en)?grap[oa](?:mos)?|dobl[oa](?:mos)?|parch[oa](?:mos)?|tap[oa](?:mos)?|compongo|encargo|encargamos)"
_DO = r"(?:dar|hacer|entrar|echar|meter|poner|pasar|seguir|terminar|acabar|completar|cerrar|ver|arreglar|recortar|cortar|quitar|rebajar|tallar|frotar|encintar|(?:en)?grapar|doblar|parchar|tapar|componer)"
_IT = r"(?:l[oa]s?|les?|sel[oa]s?)"
_TO_DO = rf"(?:{_CL}{_NOW}|(?:{_CL})?(?:voy|vamos|vengo|venimos|regreso|vuelvo) (?:a|y) {_DO}{_IT}|{_CL}(?:voy|vamos) a {_DO})"
_SURE = r"(?:(?:ya|yo|si|nosotros|mero|primero|nomas|creo|que|a ver si) )*"
_MEND = rf"{_CL}(?:{_NOW})|(?:voy|vamos) a (?:arreglar|parchar|tapar|componer|ver){_IT}"
_THAT = r"(?:eso|esa parte|ese paso|es[oa]s?)"
_WHO = r"(?:(?:mi|el|la|otr[oa]) )+[a-zñ]+"
_FALLS_TO = r"(?:(?:(?:ya|le|les|me|nos|lo|se) )*(?:toca|tocaria|va|sera|es|queda|quedo|queda pendiente|viene|entra|deje|dejamos)(?: (?:para|pa|hasta))? )"
# "eso le toca mañana", "eso va el lunes", "eso mañana", "eso lo ve mi compañero mañana"
_IN_ITS_TURN = rf"(?:{_THAT} {_FALLS_TO}?{_DAY}|{_DAY} (?:ya )?(?:le |me |nos )?toca(?= *$| *[,.;])|(?:ya )?(?:le|me|nos) toca {_DAY}|{_THAT} (?:ya )?l[oa]s? (?:ve|hace|pone|termina|acaba|cierra|echa|mete|sigue) {_WHO} {_DAY})"
_PROMISE = rf"(?:{_IN_ITS_TURN}|{_DAY} {_SURE}{_TO_DO}|(?<!no )(?<!nunca )(?<!siempre ){_TO_DO} {_SURE}{_DAY})"

SPANISH_LEFT = Left(
    beside=rf"\b{_PROMISE}\b",
    behind=rf"(?:(?:y|pero|pues|bueno|nomas que|entonces|ya|eso|ese|esa|esos|esas),? )*{_PROMISE}\b",
    mends=rf"\b(?:{_DAY} {_SURE}(?:{_MEND})|(?:{_MEND}) {_SURE}{_DAY})\b",
    others=r"\ba(?:l| la| los| las)? *$|\b(?:al|a la) (?:[a-z]+ )?\d|\b(?:cuelg\w*|colg\w*|sub[oi]\w*|mont[oe]\w*|instal\w*|dibujo|plano|(?:al?|con|en|por|de)(?:l| el| la| los| las) (?:otr[oa]s?|demas|siguientes?|proxim[oa]s?|que sigue\w*)|(?:l[oa]s? )?(?:otr[oa]s?|siguientes?) (?:pieza|codo|recto|recta|tramo|te|tapa|transicion|linea|run|corrida)s?)\b",
)  # fmt: skip
