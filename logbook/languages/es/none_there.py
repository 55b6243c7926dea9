"""Spanish for vanes and cross tabs that are not there, told by what ran out or is owed: "se me acabaron las aletas", "quedé debiendo tiras cruzadas".

All are read as "no lleva aletas", or as lacking where they are yet to come. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_SINCE = r"trajer|consegu|fui por|fuimos por|otr[ao]s? (?:caja|paquete|juego|rollo)|(?:luego|despues|al rato|ya) (?:se )?(?:las |los )?(?:puse|meti|coloque|pusimos|metimos|van)|para (?:el|la|los|las) (?:que sigue|siguiente|otr[oa]s?)|habia mas|de repuesto"
_ANY = r"(?:las |los |unas |unos |mas |mis |sus )?"
_THINGS = r"(?:aletas|vanes|alabes|guias|direccionales|tiras cruzadas|crucetas|(?:cross )?tabs|tiritas|tirillas|lenguetas de cinta|pestañas de cinta|mastique|mastic)"
_NOT = r"(?<!no )(?<!no se )(?<!no se me )(?<!no me )(?<!ni )(?<!nunca )(?<!casi )"
_END = r"(?= *(?:$|[,;.!]| (?:y|pero|asi|porque|entonces|por eso|hoy|ahorita|para|en|del|de la|a media)\b))"
_BY_THEN = r"(?:(?:se )?(?:(?:me|nos) )?(?:acabe|acabamos|acabaron|acabo|terminaron|agotaron)|(?:me|nos) (?:acabe|acabamos|termine)|no (?:pude|pudimos|alcance a|alcanzamos a|logre) (?:poner|meter|colocar|ponerle|meterle|colocarle|instalar)(?: (?:ni|nada de))?|no (?:encontre|encontramos|halle|hallamos|consegui|conseguimos))"
_TO_COME = r"(?:(?:le |me |la |nos )?qued(?:e|amos|o) debiendo(?:le)?|ocupa|ocupan|ocupo|pide todavia|requiere todavia)"

_BIT = r"vuelta|vueltecita|tira|tirita|pedazo|pedacito|cacho|cachito|tramo|tramito|pasada|capa|rollo|pulgada|pizca|metro"
_TAPE = r"(?:cinta|tape|teip|foil|cinta de foil)"
_MARK = r"(?: (?:de la |de |del )?(?:ul )?(?:181|ciento ochenta y uno|uno ochenta y uno|one eighty[- ]one)(?:[- ]?a(?:[- ]?[ph]| pe| hache)?)?(?![\w-]))"
_NO_TAPE = r"(?:(?:no|nunca|tampoco) (?:se )?(?:l[ae] |me |nos )?(?:puse|pusimos|meti|metimos|eche|lleva|trae|tiene|traia|tenia|hay|hubo|habia|use|encontre|alcanzo|quedaba|quedo)|ni lleva|sin|(?:me |le |nos |hace |hacia )*falt(?:a|o|aba)|(?:se )?(?:me |nos )?(?:acabe|acabo|acabamos|termino)|(?:se )?(?:me |nos )?olvido(?: la| el| poner(?:le)?)?|(?:se )?acabaron|nada de|ocupa|cero|debiendo(?:le)?|ya no (?:hay|habia|tenia|traia))"
_NOT_SO = r"(?: (?:ya |todavia |aun )?(?:no (?:se )?(?:l[aeo]s? |me |nos )?(?:puse|pusimos|meti|metimos|eche|lleva|trae|tiene|hay|hubo|habia|use|usamos|llego|llegaron|alcanzo|quedo|pegue)|nunca|tampoco|(?:se )?(?:me|nos) (?:acab|olvid|termin)\w+|(?:me|le|nos) (?:hace |hacia )?falt\w+|hace falta|pendientes?|quedan? pendientes?|quedo pendiente|qued(?:e|o|an)? (?:para|pendiente)|l[ao]s? (?:deje|dejamos) para|esta(?:n)? por llegar|nada\b|(?:le )?hacen? falta|mañana|para mañana|quede debiendo|se l[ao]s? (?:pongo|voy)))"
_OTHER_TAPE = r"sino|en (?:vez|lugar)|duct|gris|de tela|mastique|masking|(?<!no )(?<!no le )(?<!no se la )(?<!nunca le )(?:lleva|puse|use|usamos|pusimos|va con)(?: de)? (?:la |una |el |del |de )?(?:181|ciento ochenta|otr[ao])"

_NO_PATCH_AHEAD = r"(?:(?:se )?(?:me |nos )?olvid(?:o|aron|e)(?: poner(?:le)?)?|de|cero|nada de|qued(?:e|o|amos) debiendo(?:le)?|(?:se )?(?:me |nos )?(?:acabe|acabo|acabaron)|no (?:encontre|halle|alcance a poner(?:le)?|pude poner(?:le)?))"
_NO_PATCH_BEHIND = r"(?:(?:no|nunca|tampoco) (?:se )?(?:l[eo] |me |nos )?(?:puse|pusimos|meti|metimos|eche|lleva|trae|tiene|hay|hubo|habia|use|hice)|(?:se )?(?:me |nos )olvid(?:o|aron)|(?:queda |quedo |esta )?pendientes?|qued(?:e|o) debiendo|tampoco|nada|no llego|se l[oa] (?:pongo|voy a poner) mañana|(?:para )?mañana)"

SPANISH_NONE_THERE = (
    # "el paquete de aletas está sin abrir en el andamio"
    Plainer(("paquete de ", "caja de ", "bolsa de ", "juego de ", "bulto de "), rf"(?P<x>(?:(?:el|la|mi|todo el|toda la) )?(?:paquete|caja|bolsa|juego|bulto) de (?P<t>aletas|vanes|alabes|guias) (?:(?:todavia|aun|ya|se) )*(?:esta|sigue|quedo|anda)(?: (?:todavia|aun|tod[oa]|ahi|alla))* (?:sin (?:abrir|usar|tocar)|cerrad[oa]|enter[oa]|(?:en|sobre|arriba de) (?:el|la|mi) \w+)(?: (?:en|sobre|arriba de|abajo en) (?:el|la|mi) \w+)?)(?= *(?:$|[,;.]| y | pero | porque ))", (("x", r"no lleva \g<t>"),), unless=_SINCE),
    # the mend
    Plainer(("parche",), rf"{_NOT}(?P<x>\b{_NO_PATCH_AHEAD} (?:el |un |los |unos )?)(?=parches?(?: nada)?{_END})", (("x", "no le puse "),), unless=_SINCE),
    Plainer(("parche",), rf"(?<!el )(?<!un )(?<!con )(?P<x>\b(?:el |un |los )?parches?,? (?:todavia |aun |ya )?{_NO_PATCH_BEHIND}){_END}", (("x", "no le puse parche"),), unless=_SINCE),
    # "el mayordomo se llevó las vanes y no se las puse"
    Plainer(("llev", "agarr", "quit", "perdi", "escond", "gan", "romp", "tir", "olvid"), rf"(?P<x>(?:(?:el|la|los|mi|otro|un|don) [a-zñ]+ )?(?:ya )?(?:se |me |nos |les? )*(?:llevo|llevaron|agarro|agarraron|quito|quitaron|perdio|perdieron|escondio|escondieron|gano|ganaron|rompio|rompieron|tiro|tiraron) (?P<t>(?:las |los |mis |unas )?{_THINGS}),? (?:(?:y|pero|asi que|por eso|entonces|ya),? )*(?:no|nunca) (?:se |le )?l[oa]s? (?:puse|pusimos|meti|metimos|coloque|instale|pude (?:poner|meter)\w*|alcance a (?:poner|meter)\w*)){_END}", (("x", r"no le puse \g<t>"),)),
    # tape by its mark is read as tape, of which so much more is known
    Plainer(("181", "ochenta y uno", "eighty one", "eighty-one"), rf"\b{_NO_TAPE} (?:la |el |de |nada de |mas )*{_TAPE}(?P<x>{_MARK})", (("x", ""),), unless=_OTHER_TAPE),
    Plainer(("181", "ochenta y uno", "eighty one", "eighty-one"), rf"\b{_TAPE}(?P<x>{_MARK})(?={_NOT_SO})", (("x", ""),), unless=_OTHER_TAPE),
    Plainer(("acab", "termin", "agot", "pud", "alcan", "logre", "encontr", "hall", "consegu"), rf"{_NOT}(?P<x>\b{_BY_THEN} {_ANY})(?={_THINGS}{_END})", (("x", "no lleva "),), unless=_SINCE),
    Plainer(("debiendo", "ocup", "pide", "requiere"), rf"{_NOT}(?P<x>\b{_TO_COME} {_ANY})(?={_THINGS}{_END})", (("x", "le faltan "),), unless=_SINCE),
    # --- "la cinta, ni una vuelta le di", "ni una tira de cinta le puse", "encintado, ni una grapa le metí"
    Plainer((" ni un", "ni un"), rf"(?:^|(?<=[.;,] )|(?<= y ))(?P<x>(?:la |el )?(?P<t>{_TAPE})(?:,| y|:)? (?:pero )?ni (?:un|una|medio|media) (?:sol[oa] )?(?:{_BIT}) (?:se )?le (?P<v>di|dimos|puse|pusimos|eche|echamos|meti|metimos|pegue|corri|pase))(?= *(?:$|[,;.]| y | porque | pues ))", (("x", r"no le puse \g<t>"),)),
    Plainer(("ni un", "ni medi"), rf"(?P<x>\bni (?:un|una|medio|media) (?:sol[oa] )?(?:{_BIT})(?: de)? (?P<t>{_TAPE}) (?:se )?(?:le|lleva|trae|tiene)(?: (?:di|dimos|puse|pusimos|eche|echamos|meti|metimos|pegue|corri))?)(?= *(?:$|[,;.]| y | porque | pues ))", (("x", r"no le puse \g<t>"),)),
    Plainer((" ni una ", " ni un "), r"(?:\b(?:encint|teip|tape|tall|frot|cinta)\w*)[^.;]{0,40}?(?P<x>,? (?:y |pero )?ni (?:una|un) (?:sol[oa] )?(?P<t>grapa|staple|estaple) (?:se )?le (?P<v>puse|pusimos|meti|metimos|eche|echamos|di|clave|tire))(?= *(?:$|[,;.]| y | porque | pues ))", (("x", r", no le \g<v> grapas"),)),
)
