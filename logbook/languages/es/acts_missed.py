"""Spanish frames of any act by its name: what he never got to, what comes next, what he was called away from. Not reviewed by a native speaker."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.es.acts import SPANISH_ACTS

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
        ("rubbed_down", r"(?:tallad[oa]|frotad[oa]|planchad[oa]|alisad[oa])", r"(?:tallar|frotar|planchar|alisar|restregar)(?:l[oa]s?|le)?(?: (?:la )?cinta)?", r"(?!)", r"(?!)"),
        ("surface_clean", r"(?:limpieza|limpiad[oa]|trapead[oa])", r"(?:limpiar|sacudir|pasar(?:le)? (?:el )?trapo)(?:l[oa]s?|le)?", r"(?!)", r"(?!)"),
        ("trimmed", r"(?:recorte|(?:el|al|del) recortado|la recortada)", r"(?:recortar|quitar(?:le)? (?:el )?sobrante)(?:l[oa]s?|le)?", r"(?!)", r"(?:recortad[oa]s?)"),
        ("vanes", r"(?:aletas(?: de giro)?|alabes|guias de aire)", r"(?:poner(?:le)?|meter(?:le)?|colocar(?:le)?|instalar(?:le)?) (?:las |sus )?(?:aletas|alabes)(?: de giro)?", r"(?!)", r"(?!)"),
    ),
    hints=r"lleg|alcanz|falt|menos|antes|pendiente|espera|sigue|mañana|despues|luego|tiempo|no |ni |tampoco|necesita|empec|comenc|medio|pude|sin |lunes|martes|miercoles|jueves|viernes|sabado|al rato|mas tarde",
    undone=(
        rf"{_NEVER}(?: (?:ni siquiera|ni|me|nos))* (?:llegue|llegamos|alcance|alcanzamos) (?:hasta |a )?{_THE}{{noun}}",
        rf"{_THE}{{noun}} (?:todavia |aun )?no (?:esta|estan|se (?:hizo|hicieron|puso|pusieron)|l[oa]s? (?:hice|hicimos|puse|pusimos)|quedo|quedaron|va|van|existen?)\b(?! (?:mal|chuec|floj|torcid|bien))",
        rf"\btodo(?: (?:list[oa]|hecho|ya|esta|quedo|bien|lo demas|terminado))* (?:menos|excepto|salvo) {_NOUN}",
        rf"{_CALLED}(?: [\w']+){{0,5}} antes de (?:que (?:pudiera|alcanzara a|terminara de) |poder |acabar de |terminar de )?{{verb}}",
        rf"no (?:me |nos )?(?:alcanzo|alcanza|dio|hubo|tuve|tuvimos|quedo)(?: el)? tiempo (?:para|de|a|ni para|ni de) (?:{{verb}}|{_NOUN})",
        rf"^(?:y |pero )?(?:ni|tampoco) {_NOUN}$",
        r"^(?:y |pero |ya )?no (?:le |se |l[oa] )?(?:trae|lleva|tiene|hice|hicimos|di|dimos) (?:ningun[oa]? )?{noun}$",
        r"(?:(?:todavia|aun|nunca|nadie)(?: no)?|no|sin) (?:(?:esta|estan|quedo|va|fue|se ha|se|l[oa]s? (?:he|ha|hemos)|l[oa]s?) )?{done}",
    ),
    partly=(
        rf"(?:empece|empezamos|comence|comenzamos|estaba empezando) a {{verb}}{_DROPPED}",
        r"(?:medio|a medias|mal) {done}",
        r"{done}(?: (?:nomas|solo|nada mas|de|por|en))* (?:un(?: solo)? lado|a medias)\b",
        r"{done} (?:menos|excepto|salvo) (?:el |la |por |atras|abajo|arriba)",
    ),
    to_do=(
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
    across=(("undone", r"(?:quise|queria|quisimos|trate de|tratamos de|intente|intentamos) {verb}(?:,| y| pero)+ (?:ya )?no (?:pude|se pudo|pudimos|me dejo|se dejo|hubo modo|hubo forma)\b(?![^.;]*\b(?:encint|engrap|tall|frot|limpi|recort|pus|met|sali)\w*[eo]\b)"),),
    waits_for="(?!)",
)
