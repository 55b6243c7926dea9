"""Spanish frames of any act by its name: what he never got to, what comes next, what he was called away from. Not reviewed by a native speaker."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.es.acts import SPANISH_ACTS
from logbook.languages.es.whole_turns_words import RUBBED_SO

_THE = r"(?:el |la |las |los |lo |al |del )?"
_NOUN = rf"(?:{_THE}{{noun}})"
_DAY = r"(?:mañana|pasado mañana|al rato|luego|despues|mas tarde|el (?:lunes|martes|miercoles|jueves|viernes|sabado)|la tarde|otro dia|otro rato|la proxima|la otra semana)"
_CALLED = r"(?:mandaron|llamaron|quitaron|movieron|sacaron|hablaron|cambiaron|jalaron|corrieron)"
_NEVER = r"(?:nunca|jamas|ya no|no|todavia no|aun no)"
_DROPPED = r"(?:(?:,| y| pero| ya)+ (?:ya )?no (?:acabe|termine|acabamos|terminamos|segui|le segui|alcance|pude))"

SPANISH_ACTS_MISSED = replace(
    SPANISH_ACTS,
    forms=(
        ("taped", r"(?:cinta|(?:el|al|del) encintado|la encintada|teip|tape)", r"(?:encintar|teipear|tapear|poner(?:le)? (?:la )?(?:cinta|teip|tape))(?:l[oa]s?)?", r"(?!)", r"(?!)"),
        ("stapled", r"(?:grapas|(?:el|al|del) (?:en)?grapado|la (?:en)?grapada)", r"(?:(?:en)?grapar|poner(?:le)? (?:las )?grapas)(?:l[oa]s?)?", r"(?!)", r"(?!)"),
        ("rubbed_down", r"(?:tallad[oa]|frotad[oa]|planchad[oa]|alisad[oa]|pasada (?:de|con)(?: la| el)? (?:espatula|rodillo|paleta|tarjeta))", r"(?:tallar|frotar|planchar|alisar|restregar)(?:l[oa]s?|le)?(?: (?:la )?cinta)?", r"(?!)", r"(?!)"),
        ("surface_clean", r"(?:limpieza|limpiad[oa]|trapead[oa]|sacudida|trapazo|pasada (?:de|con)(?: la| el)? trapo)", r"(?:limpiar|sacudir|pasar(?:le)? (?:el )?trapo)(?:l[oa]s?|le)?", r"(?!)", r"(?!)"),
        ("trimmed", r"(?:recorte|(?:el|al|del) recortado|la recortada)", r"(?:recortar|quitar(?:le)? (?:el )?sobrante)(?:l[oa]s?|le)?", r"(?!)", r"(?:recortad[oa]s?)"),
        ("vanes", r"(?:aletas(?: de giro)?|alabes|vanes|turning vanes|guias de aire|deflectores)", r"(?:poner(?:le)?|meter(?:le)?|colocar(?:le)?|instalar(?:le)?) (?:las |los |sus )?(?:aletas|alabes|vanes|turning vanes|deflectores)(?: de giro)?", r"(?!)", r"(?!)"),
    ),
    hints=r"debo|hizo|salte|brinque|dej|a lo |aventon|carrera|medi|empec|encim|falt|vio|debe|debi|ausen|carec|hice|huerfan|pelon|chispot|chispo|barr|omiti|perdon|saque|brill|ver(?:emos|las)|tintero|en el aire|nel|luces|señas|rastro|nada de|urge|ocupa|quede|promet|habr|valio|onda|avion|era de|cosa de|mitad|encimita|un lado|empezad|luz|lleg|alcanz|falt|menos|antes|pendiente|espera|sigue|mañana|despues|luego|tiempo|no |ni |tampoco|necesita|empec|comenc|medio|pude|sin |lunes|martes|miercoles|jueves|viernes|sabado|al rato|mas tarde",
    undone=(
        rf"{_THE}{{noun}},? (?:nel pastel|ni (?:sus luces|señas|rastro|pio|de chiste|de broma|por error)|nada de nada|para nada|cero)\b",
        rf"(?:de )?{_THE}{{noun}} (?:ni (?:sus luces|señas|rastro|pio)|nada de nada)\b",
        rf"\bni (?:sus luces|señas|rastro|pio) del? {_THE}{{noun}}",
        rf"\bme hice (?:el )?(?:guaje|güey|guey|pato|loco|tonto|menso|rosca|occiso) con {_THE}{{noun}}",
        rf"\b(?:le )?saque al? {_THE}{{noun}}",
        rf"{_THE}{{noun}} (?:l[oa]s? |me )*(?:quedo|quedaron|se quedo|se quedaron|anda|andan|esta|estan|sigue|siguen|deje) (?:a deber|debiendo|en el aire|en veremos|en el tintero|en el camion|en la troca|en la caja|en la bodega|ausentes?|de ausentes?|perdid[oa]s?)\b",
        rf"\b(?:carece|carecen|huerfan[oa]|pelon|pelona|escas[oa]) de {_THE}{{noun}}",
        rf"\bse (?:me |nos |le )?(?:chispoteo|chispotearon|chispo|chisparon|omitio|omitieron|barrio|barrieron|hizo tarde|hizo tarde para|escapo|escaparon|hizo bolas) {_NOUN}",
        rf"{_THE}{{noun}} (?:se|l[oa]s?|me|nos|le|les)(?: (?:se|l[oa]s?|me|nos|le|les))* (?:chispoteo|chispotearon|chispo|chisparon|omitio|omitieron|barrio|barrieron|hizo tarde|escapo|perdone|perdonamos|deje pasar|dejamos pasar)\b",
        rf"\best(?:a|an|uvo|uvieron) ausentes? {_NOUN}",
        rf"\b(?<!no )(?:le |les |me )?(?:perdone|salte|brinque) {_NOUN}",
        rf"\b(?:anda|andan|quedo|quedaron|sigue|siguen) faltando {_NOUN}",
        rf"{_NOUN} no l[oa]s? (?:traigo|trae|traen|lleva|llevan|alcance(?! a )|conoce|conocio)\b",
        rf"{_NOUN} ni l[oa]s? (?:vio|vi|vimos|toque|tocamos|conoce|conocio|olio|pele|pele siquiera|empece)\b",
        rf"\bno (?:hubo|hay|habia|me dio|dio|tuve) (?:chanza|chance|modo|manera|forma) (?:de|para) (?:{_NOUN}|{{verb}})",
        r"\bse (?:me|nos) (?:fue|barrio|chispoteo|chispo|paso|hizo bolas)(?: (?:el avion|la onda|el santo|la mano|completamente|por completo))?(?: (?:al cielo|de|para))* {verb}",
        r"\bme valio (?:(?:madre|madres|gorro|queso|un cacahuate|sombrilla|mauser) )?{verb}",
        r"\b(?:era|es) de {verb},? (?:y|pero) no\b",
        r"\b(?:debia|tenia que|habia que) {verb},? (?:y|pero) (?:no\b|ya no\b|se me)",
        r"\bse (?:me |nos )?hizo (?:muy )?(?:tarde|noche) (?:para|pa) {verb}",
        r"\bno (?:me )?(?:quiso|dio la gana(?: de)?|dieron ganas de|se me antojo) {verb}",
        r"\bni (?:le )?hice (?:por|la lucha (?:de|por|para)) {verb}",
        rf"{_NEVER}(?: (?:ni siquiera|ni|me|nos))* (?:llegue|llegamos|alcance|alcanzamos) (?:hasta |a )?{_THE}{{noun}}",
        rf"{_THE}{{noun}} (?:todavia |aun )?no (?:esta|estan|se (?:hizo|hicieron|puso|pusieron)|l[oa]s? (?:hice|hicimos|puse|pusimos)|quedo|quedaron|va|van|existen?)\b(?! (?:mal|chuec|floj|torcid|bien|{RUBBED_SO}))",
        rf"\btodo(?: (?:list[oa]|hecho|ya|esta|quedo|bien|lo demas|terminado))* (?:menos|excepto|salvo) {_NOUN}",
        rf"{_CALLED}(?: [\w']+){{0,5}} antes de (?:que (?:pudiera|alcanzara a|terminara de) |poder |acabar de |terminar de )?{{verb}}",
        rf"no (?:me |nos )?(?:alcanzo|alcanza|dio|hubo|tuve|tuvimos|quedo)(?: el)? tiempo (?:para|de|a|ni para|ni de) (?:{{verb}}|{_NOUN})",
        rf"^(?:y |pero )?(?:ni|tampoco) {_NOUN}$",
        r"^(?:y |pero |ya )?no (?:le |se |l[oa] )?(?:trae|lleva|tiene|hice|hicimos|di|dimos) (?:ningun[oa]? )?{noun}$",
        r"(?:(?:todavia|aun|nunca|nadie)(?: no)?|no|sin) (?:(?:esta|estan|quedo|va|fue|se ha|se|l[oa]s? (?:he|ha|hemos)|l[oa]s?) )?{done}",
    ),
    partly=(
        rf"{_THE}{{noun}} (?:(?:queda|quedan|quedo|quedaron|va|van|anda|andan|esta|estan|l[oa]s? deje|l[oa]s? dejamos|se|me|nomas|nada mas|solo|apenas) )+(?:a medias|a la mitad(?! de)|a medio (?:hacer|camino))\b",
        rf"{_THE}{{noun}} (?:a medias|por encimita|nomas por encimita|nada mas por encimita|l[oa]s? (?:deje|dejamos) (?:empezad|comenzad)[oa]s?|(?:nomas|nada mas|solo|apenas) (?:de un (?:solo |puro )?lado|la mitad))\b",
        rf"{_THE}{{noun}} (?:nomas |apenas |nada mas )?(?:no l[oa]s? (?:complete|termine|acabe|completamos|terminamos|acabamos)|(?:nomas|apenas|nada mas) l[oa]s? empece)\b",
        rf"\bno (?:complete|completamos|termine|termino|alcanzo) {_NOUN}",
        r"{done} (?:a lo (?:güey|guey|menso|loco|pendejo)|al aventon|a la carrera|a lo que salga|como (?:dios me dio a entender|pude|sea))\b",
        rf"(?:empece|empezamos|comence|comenzamos|estaba empezando) a {{verb}}{_DROPPED}",
        r"(?:medio|a medias|mal) {done}",
        r"{done}(?: (?:nomas|solo|nada mas|de|por|en))* (?:un(?: solo)? lado|a medias)\b",
        r"{done} (?:menos|excepto|salvo) (?:el |la |por |atras|abajo|arriba)",
    ),
    to_do=(
        r"\bhabr(?:a|ia) que {verb}",
        r"(?<!se )\b(?:urge|ocupa|necesita|precisa|amerita|prometi|promet[ei]mos|nada mas es cosa de|nomas es (?:cosa )?de|es cosa de|es nomas de|ya nomas es) {verb}",
        r"(?:mañana|al rato) {verb}",
        r"\b(?:anda|andan|quedo|quedaron|sigue) faltando {verb}",
        rf"\bfalt(?:a|an|o|aron|aba|aban)(?: (?:todavia|aun|nomas|nada mas|solo|todo|toda))* {_THE}{{noun}}(?<=[ao]d[ao])",
        rf"{_THE}{{noun}} (?:(?:es|son) )?(?:lo que )?siguen?(?: (?:ahora|despues|luego|ya))?(?=$|[.,;])",
        rf"^(?:y |pero |ya )?(?:lo que |ahora |ya )?sigue (?:{_NOUN}|{{verb}})$",
        rf"{_THE}{{noun}} (?:(?:es|son|va|van|queda|quedan|sera|seran|toca|tocan|para|hasta) )+{_DAY}\b",
        rf"^(?:y |pero )?{_THE}{{noun}} {_DAY}\b",
        rf"(?:estoy |estamos |sigo |seguimos |^)esperando (?:{_THE}{{noun}}|(?:para|a) {{verb}})",
        rf"pendientes? (?:de |por )?(?:{{verb}}|{_NOUN})",
        rf"(?:unico|unica|nada mas|nomas|solo|cosa)(?: (?:que|me|le|nos))* (?:falta|queda|resta)(?: (?:es|por hacer|por))* (?:{{verb}}|{_NOUN})",
        r"^(?:y |pero |todavia |aun )*necesita (?:una |su |buena )*{noun}$",
    ),
    across=(("undone", r"(?<!que )(?:debia|tenia que|habia que|era de|quede de) {verb}(?:,| y| pero)+ (?:ya )?no(?: (?:lo hice|la hice|se hizo|pude|alcance|hubo tiempo))?(?= *(?:$|[.;,]))"), ("undone", r"(?:quise|queria|quisimos|trate de|tratamos de|intente|intentamos) {verb}(?:,| y| pero)+ (?:ya )?no (?:pude|se pudo|pudimos|me dejo|se dejo|hubo modo|hubo forma)\b(?![^.;]*\b(?:encint|engrap|tall|frot|limpi|recort|pus|met|sali)\w*[eo]\b)"),),
    waits_for="(?!)",
)
