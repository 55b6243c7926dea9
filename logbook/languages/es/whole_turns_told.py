"""Spanish turns of a story: stuff that ran out halfway, work set right afterwards, hot air in a piece. Without accents. Not reviewed by a native speaker."""

from __future__ import annotations

from fractions import Fraction

from logbook.languages.es.whole_turns_sides import NO_MORE
from logbook.languages.es.whole_turns_words import ACT_VERBS
from logbook.languages.turns_of_words import Turn

_ROLLED = r"cinta|tape|teip|rollo"
_TAPE = rf"(?:{_ROLLED}|foil)"
_STAPLES = r"(?:grapas|staples)"
_RAN_OUT = r"se (?:me |nos |les? )?(?:acab|termin)(?:o|aron) (?:ya )?(?:la |el |las |los )?"
_HALFWAY = r"(?:a (?:la )?(?:mitad|media|medio|medias)|en medio|por la mitad|antes de (?:llegar|terminar|acabar|cerrar|completar)(?:l[oa])?)\b"
_WENT_ON = r"\b(?:fui|fuimos|traje|trajeron|consegui|conseguimos|otro rollo|otra caja|mas cinta|mas grapas|segui|seguimos|complet\w+|termine|terminamos|acabe|acabamos)\b"
_THE_REST = r"(?:la otra (?:mitad|parte|punta)|el otro (?:pedazo|tramo|extremo|lado)|lo demas|el resto|de ahi (?:para|en) adelante)"
_SEAMS = r"(?:costuras|juntas|uniones)"
_BARE = r"(?:sin nada|pelad[oa]|pelon\w*|a pelo|en blanco|sin (?:cinta|grapas?|tape|teip))"
_OFF = r"(?:quit|arranqu|despegu|jal|pel|saqu|retir)(?:e|amos)"
_STUFFS = r"cintas?|tape|teip|grapas?|staples|aletas|vanes|lados?|costuras?|juntas?"
_OFF_IT = r"(?:quit|arranc|despeg|jal|pel|sac|retir|desmont)ar(?:l[oae]s?|sel[oa]s?)?"
_HAD_TO = r"(?:tuve que|tuvimos que|hubo que|me toco|nos toco|me hicieron|nos hicieron|nos mandaron(?: a)?|me mandaron(?: a)?)"
_ON = r"(?:puse|pusimos|pegue|pegamos|eche|echamos|meti|metimos|di|lleva|va|volvi a poner|volvi a pegar)"
_AIR = r"(?:aire|calefaccion|horno|calor|quemador|caldera|boiler|furnace)"
_GIVES = r"(?:sale|entra|llega|va|anda|corre|pasa|avienta|sopla|tira|echa|manda|viene|da|mide|marca|esta|mete|jala)"
_DEGREES = r"(?P<m>(?:\d{2,3}|(?:ciento?|doscientos|trescientos|cuatrocientos)(?: (?:diez|veinte|treinta|cuarenta|cincuenta|sesenta|setenta|ochenta|noventa)(?: y \w+)?)?) grados)"

_HEATED = r"(?:(?:le|la|lo|les) )+(?:di|dimos|pase|pasamos|meti|metimos|eche|echamos) (?:con )?(?:la |el |un poco de |tantito )?(?:pistola de(?:l)? calor|pistola de aire caliente|heat gun|secadora(?: de pelo)?|calor(?:cito)?)"
_NOT_SO = r"\b(?:no|ni|nunca|si|sin|tampoco|hay que|tengo que)\b"

_MEANT_TO = r"(?:quede|quedamos|tenia|teniamos|debia|debiamos|pensaba|pensabamos|queria|queriamos|quise|quisimos|(?:me|nos) tocaba|prometi|prometimos|tocaba)"
_NO_CHANCE = r"no (?:(?:me|nos|se|lo|la|le|las|los) )*(?:dio (?:tiempo|chance)|alcanz\w+|pud\w+|hice|hicimos|quedo|hubo (?:tiempo|chance|modo)|llegue|llegamos|tuve tiempo|tuvimos tiempo|hizo|logr\w+)"
_DAY_WENT = r"se (?:me|nos) (?:(?:fue|acabo|paso|hizo) (?:el dia|el tiempo|la hora|tarde|la tarde)|paso\b|olvido\b)"

TOLD_SO: tuple[Turn, ...] = (
    # "quedé de tallar ayer el 102 y no me dio tiempo"
    *(
        Turn(r"\b(?:qued(?:e|amos) de|tenia|teniamos|debia|debiamos|pensaba|pensabamos|queri|quis[ei]|tocaba|prometi)", rf"\b{_MEANT_TO} (?:de |que |a )?{act}(?:l[oae]s?|se l[oa]s?)?\b[^.;]{{0,60}}?(?:,| y| pero| mas)+ (?:ya |pues |la verdad |al final |de plano |siempre |hoy |ayer )*(?:{_NO_CHANCE}|{_DAY_WENT})", ((name, False),), unless=r"\b(?:otr[oa]|cada|con|a (?:dos|tres|\d)|ya (?:l[oa]|la|le) \w+e)\b", asked=True)
        for name, act, _, _, _ in ACT_VERBS
    ),
    # "se acabaron las grapas a medio camino", "a media recta se me terminó el rollo"
    *(
        Turn(r"\bse (?:me |nos |les? )?(?:acab|termin)", rf"\b{_RAN_OUT}{stuff}(?: \w+)? {_HALFWAY}|\b{stuff} (?:ya )?se (?:me |nos |les? )?(?:acab|termin)(?:o|aron) {_HALFWAY}|{_HALFWAY}(?: \w+){{0,4}} {_RAN_OUT}{stuff}\b", ((fact, False),), unless=_WENT_ON, beside=rf"^(?!.*{_WENT_ON})")
        for fact, stuff in (("taped", _TAPE), ("stapled", _STAPLES))
    ),
    # "le puse un chin de tape nada más", "un pedacito de cinta en un lado"
    *(
        Turn(r"\b(?:poc[oa]|poquit[oa]|pedacit[oa]|pedazo|cachit[oa]|tirita|tira|chin)\b", rf"\b(?:puse|pusimos|eche|echamos|di|meti|lleva|tiene|trae|va con)(?: (?P<o>nada mas|nomas|solo|solamente))? una? (?:poc[oa]|poquit[oa]|pedacit[oa]|pedazo|cachit[oa]|tirita|tira|chin) de {stuff}(?(o)|(?: (?:nada mas|nomas|solamente)|,? en un(?: solo)? lado))\b", ((fact, False),), unless=r"\b(?:no|ni|hoyo|hueco|roto|rotura|raj\w+|rasg\w+|golpe|foil|parche)\b", beside=r"^(?!.*\b(?:parch|remend|repar|hoyo|hueco|rotura|raj[oa]|rasg))")
        for fact, stuff in (("taped", r"(?:cinta|tape|teip)"), ("stapled", r"grapas"))
    ),
    # "encinté tres costuras y para la cuarta no me alcanzó el rollo"
    *(
        Turn(r"\bno (?:me |nos |le |se )*(?:alcanz|hubo|habia|hay|dio|qued|lleg|ajust)", rf"\b{act}\w* (?:un[oa]|dos|tres) (?:costuras?|juntas?|orillas?)[^.;]{{0,30}}?(?:,|;| y| pero)+ {NO_MORE}", ((fact, False),), unless=_WENT_ON)
        for fact, act in (("taped", r"(?:encint|tape|teip)"), ("stapled", r"(?:en)?grap"))
    ),
    # "la otra mitad va sin nada", of what the sentence tells
    *(
        Turn(rf"\b{_THE_REST}\b", rf"\b{_THE_REST} (?:va|van|quedo|queda|esta|sigue|se quedo|lo deje|la deje)(?: \w+)? {_BARE}(?= *(?:$|[,;.]))", ((fact, False),), beside=rf"\b{stuff}\b", unless=other)
        for fact, stuff, other in (("taped", r"(?:cinta|tape|teip|rollo|encint\w+)", r"\bgrap\w+|engrap\w+"), ("stapled", r"(?:grapas?|staples?|(?:en)?grap\w+)", r"\bcinta|encint"))
    ),
    # "quité la cinta de tela y le puse de la listada": the old one came off, and another is on
    Turn(rf"\b{_OFF}\b", rf"\b(?P<a>{_OFF} (?:toda )?(?:la |el )?(?:cinta|tape|teip)(?: (?:de \w+|gris|vieja|mala|corriente|que \w+))?)[^.;]*?(?P<w>(?:,| y|;)+ (?:luego |despues |ya |ahora )*(?:le |la |se la )?{_ON} (?:cinta |tape |teip |una |otra |la )*(?:nueva|buena|otra|de aluminio|de foil|de la (?:listada|buena|de aluminio|de foil|otra|ul)|listada|foil|ul|181\S*))", (("taped", True),), unless=r"\bno (?:le|la|se)\b"),
    # "el tape lo tuvimos que arrancar", "hubo que quitarle la cinta": and none since
    *(
        Turn(rf"\b{_OFF_IT}", rf"\b{stuff},? (?:(?:se )?l[oa]s? )?{_HAD_TO} {_OFF_IT}|\b{_HAD_TO} {_OFF_IT} (?:tod[oa]s? )?(?:el |la |las |los ){stuff}\b", ((fact, False),), unless=r"\bno (?:\w+ )?(?:tuve|tuvimos|hubo)|\b(?:papel|plastico|forro) de", beside=rf"^(?!.*\b(?:puse|pusimos|pegue|eche|echamos|meti|metimos|lleva|va|di|clave) (?:el |la |las |los )?(?:{stuff} )?(?:otr|nuev))(?!.*\bvolv(?:i|imos) a )")
        for fact, stuff in (("taped", r"(?:cinta|tape|teip)"), ("stapled", r"(?:grapas|staples)"), ("vanes", r"(?:aletas|vanes)"))
    ),
    # "el tape se le arrancó y no lleva ninguno": none of what was told of last
    *(
        Turn(r"\bningun[oa]s?\b", rf"\b{stuff}\b(?:(?!\b(?:{_STUFFS})\b)[^.;])*?(?:,| y| pero)+ (?:(?:por ahora|ahora|ahorita|hoy|ya|asi|de momento|por el momento|todavia) )*no (?:lleva|llevan|tiene|tienen|trae|traen|le queda|le quedo) {none}(?= *(?:$|[,;.]| y | porque ))", ((fact, False),), unless=r"\b(?:arrug|burbuj|bolsa|hueco|golpe|dañ|falla|problem)\w*")
        for fact, stuff, none in (("taped", r"(?:tape|teip)", r"ningunos?"), ("taped", r"cintas?", r"ningunas?"), ("stapled", r"(?:grapas|staples)", r"ningunas?"), ("vanes", r"(?:aletas|vanes)", r"ningun[oa]s?"))
    ),
    # "le di con la pistola de calor primero y luego la cinta"
    Turn(r"\b(?:calor|heat gun|secadora)\b", rf"\b{_HEATED}(?: primero| antes| bien)*(?:,| y)+ (?:luego|despues|ya|ya luego|enseguida)(?: (?:ya|le puse|puse|se|va|fue|eche|le eche))* (?:la |el )?(?:cinta|tape|teip)(?= *(?:$|[,;.]))", (("preheated", True), ("taped", True)), unless=_NOT_SO),
    Turn(r"\b(?:calor|heat gun|secadora)\b", rf"\b{_HEATED}(?: bien| tantito| a todo)* (?:primero|antes)(?: (?:de|que) (?:la |el |poner(?:le)? (?:la |el )?|pegar(?:le)? (?:la |el )?)?(?:cinta|tape|teip|encintar\w*))?(?= *(?:$|[,;.]| y))", (("preheated", True),), unless=_NOT_SO),
    # "le di con la plancha antes y ya después pegué la cinta": the iron before the tape heats the facing
    Turn(r"\bplancha\b", r"\b(?:(?:le|la|lo) )+(?:di|dimos|pase|pasamos|meti|metimos|arrime) (?:con )?la plancha(?: (?:primero|antes|bien|tantito|un rato))*(?:,| y| de)+ (?:(?:ya|luego|despues|entonces|enseguida) )+(?:(?:le|la|yo) )*(?:pegue|pegamos|puse|pusimos|encinte|encintamos|eche|corri|fue)(?: (?:la|el|su|mi) (?:cinta|tape|teip))?(?= *(?:$|[,;.]))", (("preheated", True), ("taped", True)), unless=_NOT_SO),
    # "pegado con el 17, con las grapas para afuera"
    *(
        Turn(r"\bcon (?:las |los )?(?:grapas?|staples?)\b", rf"\bcon (?:las |los )?(?:grapas?|staples?) (?:todas |bien |dobladas )*(?:para|hacia|pa'?) ?a?{way}(?= *(?:$|[,;.]| y| cada))", (("staple_clinch", value), ("stapled", True)), unless=_NOT_SO)
        for way, value in (("dentro", "inward"), ("fuera", "outward"))
    ),
    # "el aire sale a trescientos grados", "la calefacción avienta ciento cuarenta grados"
    Turn(rf"\b{_AIR}\b", rf"\b{_AIR}\b(?: (?!no\b|ni\b|afuera\b)[\w-]+){{0,8}}? {_GIVES} (?:como |casi |hasta |unos |a |en |al menos )*{_DEGREES}", (("air_temperature", "m"),), unless=r"\b(?:no|ni|aguanta|limite|maximo|permitido|cinta|plancha|pistola|atico)\b"),
    Turn(r"\b(?:floj|suelt|levantad|mal pegad)", rf"\b(?:{_ROLLED}|(?<=de )foil) (?:(?:la|lo|se|me|ya|como|medio|algo|un poco) )*(?:deje|dejamos|quedo|esta|anda|sigue) (?:medio |algo |un poco |muy )?(?:floj|suelt|levantad|mal pegad)[oa]\b", (("taped", False),), beside=r"^(?!.*\b(?:la|lo|las|se la) (?:volvi|volvimos|pegue|arregle|aprete|puse|cambie|asente|talle)\b)", unless=r"\b(?:no|ni|nunca)\b"),
    # a tape that does not reach over the joint, and one that bears no number
    Turn(r"\bno (?:tapa|cubre|alcanza|tapo|cubrio)", rf"\b{_TAPE}\b[^.;]{{0,40}}? no (?:tapa|cubre|tapo|cubrio|alcanza a (?:tapar|cubrir))(?: bien)? (?:tod[oa] )?(?:la |el |las )?(?:juntas?|costuras?|union|orilla|esquinas?)\b", (("taped", False),)),
    Turn(r"\bno (?:trae|tiene|dice)", r"\b(?:cinta|tape|teip)(?: (?:del?|de la|en la|en el) (?:\w+ )?\d+)? (?:que|es|era|fue)\b[^.;]{3,60}?,? (?:y )?no (?:trae|tiene|dice) (?:ningun )?(?:numeros?|letras?|marca|sello|listado)(?= *(?:$|[,;.]| por))", (("closure", "other_tape"), ("taped", True)), unless=r"\b(?:grapas?|aletas|vanes)\b"),
    # harmed, and used as it is or made anew
    Turn(r"\basi\b", r"\b(?:la|lo) (?:vamos|voy) a (?:usar|dejar|colgar|subir|montar|poner|mandar) asi\b", (("damage_repaired", False),), beside=r"\b(?:hoyo|rot[oa]s?\b|rasg|raj|agujer|pique|ponch|golpe|aplast|despeg|abollad|sumi|moj|rompi|cay)", unless=r"\b(?:no lo|no la)\b"),
    Turn(r"\botr[oa]\b", r"\b(?:la|lo) (?:tire|tiramos|deseche|bote|botamos)(?: a la basura)? y (?:corte|cortamos|hice|hicimos|arme|armamos) otr[oa]\b", (("damage_repaired", True), ("repair_method", "replaced")), beside=r"\b(?:moj|rasg|raj|aplast|golpe|rompi|rot[oa]\b|hoyo|empap|sumi)", unless=r"\b(?:no|ni)\b"),
    # "solo engrapada y abierta en las costuras": nothing is on them, where no tape and no mastic is told of
    Turn(
        r"\babiert[oa]s?\b|\bsin (?:nada|tapar|cerrar|sellar|cubrir)\b",
        rf"\babiert[oa]s? (?:en|de|por) (?:(?:las|sus|todas|los) )+{_SEAMS}\b|\b{_SEAMS}(?: (?:van|quedaron|estan|siguen|todavia|todas|aun|se|quedan|asi))* (?:abiertas|sin nada(?: encima| arriba)?|sin (?:tapar|cerrar|sellar|cubrir))(?! (?:a|de|en|como|un|una|casi|media)\b)",
        (("taped", False),),
        beside=rf"^(?!.*\b(?:{_TAPE}|encint\w*|teipead\w+|con masti\w+|sellad\w+|gap|hueco|abertura|octavos?|cuarto|dieciseis\w+|milimetros?)\b).*\b(?:en)?grap",
        unless=r"\b(?:no|nunca) (?:me |se )?(?:quedo|quedaron|esta|estan|van?|hay|deje)|\bya no\b",
    ),
)

# screws that hold by their heads alone
NO_WASHER = (
    r"(?:sin|no (?:hay|habia|hubo|lleva|llevan|tiene|tienen|trae|traen|(?:le|les) (?:puse|pusimos|meti)|traia|tenia)(?: ni)?|ni) (?:una? |una sola |ninguna |nada de |las |sus )*(?:rondanas?|arandelas?|roldanas?|washers?)\b",
    r"(?:se (?:me |nos |les? )?(?:acabaron|terminaron)|(?:le |les )?faltan|(?:le )?faltaron|me quede sin) (?:todas )?(?:las )?(?:rondanas|arandelas|roldanas|washers)\b",
)
NO_WASHER_SIZE = Fraction(0)
