"""Counts of sides in Spanish, wherever in their sentence they stand: "de los cuatro lados encinté dos", "de cinta lleva tres". Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.es.unfinished import UNFINISHED, UNFINISHED_LOOKS
from logbook.languages.language import ActWords

_SIDES = r"(?:lados?|caras?|costados?|costuras?|orillas?|juntas?|uniones|union)"
_OF_4 = rf"(?: de (?:l[oa]s )?(?:cuatro|4)(?: {_SIDES})?| ?/ ?4(?! ?(?:\"|''|”|″|in\b|pulg|de pulg|de pata)))"
_ALL_4 = rf"(?:de )?(?:l[oa]s )?(?:cuatro|4) {_SIDES}"
_VERB = r"(?:(?:nomas|solo|nada mas|apenas|le|les|se|ya|yo|si|lo|la) )*(?:(?:en)?grap\w+|encint\w+|teip\w+|tape\w+|llevan?|tienen?|traen?|puse|pusimos|hice|hicimos|cerre|selle|(?:alcance|alcanzamos)(?: a \w+r)?|van|quedaron|cubri|di|dimos|pude(?: \w+r)?|pudimos \w+r|logre \w+r)(?: (?:nomas|solo|nada mas|apenas|cinta|grapas?|teip|tape|en|a|por|con))*"
# an act and then, past the piece, on how many sides: no measure stands between
_NOT_OF_IT = "".join(rf"(?<!{verb} )(?<!{verb} la )(?<!{verb} el )" for verb in "poner ponerle meter meterle talle tallamos frote frotamos alise planche restregue sobe limpie".split())  # "tallé la cinta por tres lados": not laid on three
_DONE_ON = rf"(?<!\w){_NOT_OF_IT}(?:(?:(?:en)?grap|encint|teipe|tapee|estaple)\w*|cintas?|teip|tape|grapas?)(?: (?!(?:cada|van|no|ni|sin|tall\w+|frot\w+|limpi\w+)\b)(?!a (?:un[oa]?|dos|tres|cuatro|cinco|\d)\b)[\w-]+){{1,6}}? (?:en|por) (?:nomas |nada mas |solo |solamente )?(?:l[oa]s )?"
_PARTS = r"(?:esquina|esquinita|orilla|lado|boca|junta|costura|union|punta|tapa|panel|rebaje|hembra|macho|escalon|ceja|flap|solapa|hueco|abertura|hoyo|rotura|resto|extremo|corte|cuello|empaque|ranura|costado|cara)s?"
_OF_ITS_OWN = r"(?:etiquetas?|letreros?|rotulos?|agujeros?|hoyos?|perforaci(?:on|ones)|sensor(?:es)?|compuertas?|damper|registros?|rejillas?|difusor(?:es)?|collar(?:in|ines)?|boquillas?|puertas?(?: de acceso)?|parches?|refuerzos?|varillas?|codo de aire|tapas?)"
_HOLDERS = r"(?:colgantes?|colgador(?:es)?|colgaderas?|soportes?|trapecios?|flejes?|varillas?|abrazaderas?|hangers?|straps?|strut|taquetes?)"
_SOME_OF = r"(?:el|la|los|las|un|una|sus?|otr[oa]s?|ultim[oa]s?|mas|dos|tres|cuatro)"
_TELL = r"(?:avis|dec|pregunt|habl|llam|ped|pag|compr|cont|mand|marc|report|coment|enseñ|prest|cobr|deb|ayud|esper|confirm|explic|apunt|anot|escrib|recog|recib|record|entreg)"
_SOON = r"(?:mañana|pasado mañana|al rato|luego|despues|mas tarde|ahorita|en la tarde|otro dia|el (?:lunes|martes|miercoles|jueves|viernes|sabado))"
_COUNTS = ((1, r"un(?:[oa])?|1"), (2, "dos|2|un par de"), (3, "tres|3"), (4, "cuatro|4"))

SPANISH_ACTS = ActWords(
    needless="(?!)",
    topic_over=r"(?:no|nel|nada|ninguna?|cual|que|quien|donde|como|ya no|se fue|ya se sec|no hay|no habia)\b(?! (?:l[oae]s? )?(?:he|hemos|ha|han|arregl|tap|parch|repar|compus|toqu))",
    says_no=(r"(?:no|nel|nop|nones|nanay|tampoco|nada|nadita|para nada|jam[aá]s|nunca|ningun[oa]|ning[uú]n[oa]s?|ja(?:,? ja)*|nel pastel|ni sus luces|ni se[nñ]as|ni rastro|ni de broma|ni por error|ni por asomo|nada de nada|ni la toqu[eé]|ni lo toqu[eé]|ni que (?:fuera|fuese|estuviera)\b.*|ni loc[oa]|qu[eé] va|qu[eé] esperanzas?|ni pensarlo|ni en sueños|ni so[nñ]ando|(?:te|se|les) las? (?:debo|quedo debiendo)|bien gracias|de d[oó]nde|ojal[aá]|ni (?:un[oa]|una sola|madres|de chiste|una pura)|cero|todav[ií]a no|a[uú]n no|ah[ií] s[ií] no|eso s[ií] no|de eso nada)(?: (?:nada|todav[ií]a|jefe|patr[oó]n|compa))?",),
    says_yes=(r"(?:s[ií]|sip|sim[oó]n|claro(?: que s[ií])?|ya|list[oa]s?|puest[oa]s?|por supuesto|obvio|afirmativo|correcto|a huevo|tambi[eé]n)(?: (?:ya|jefe|patr[oó]n|compa|todas?|todos?|tambi[eé]n))?",),
    hints="(?!)",
    # "de los cuatro lados encinté dos", "lleva tres de cuatro lados", "la cinta lleva tres" where sides were spoken of
    sides=(
        *((n, False, rf"{_ALL_4},? {_VERB} (?:{words})(?! (?:veces|vueltas|capas|pulgadas|tiras|grapas))") for n, words in _COUNTS),
        *((n, False, rf"(?:{words}){_OF_4}") for n, words in _COUNTS),
        *((n, False, rf"{_DONE_ON}(?P<on>(?:{words}) (?:lados|caras|costados))(?! (?:del?|al?|van|quedaron|cada|con)\b(?! (?:afuera|l[oa]s (?:cuatro|4))))") for n, words in _COUNTS[1:]),
        *((n, False, rf"(?<!\w){_NOT_OF_IT}(?:tall|frot|restreg|alis|planch|sob|bruñ|brun|limpi)u?(?:e|o|i|io|amos|imos|aron|ieron)(?: (?:nomas|nada mas|solo|solamente|bien|muy bien))* (?P<on>(?:l[oa]s (?=tres|3))?(?:{words}) (?:lados|caras|costados))(?! (?:del?|cada|con)\b)") for n, words in _COUNTS[1:]),
        *((n, True, rf"(?:lleva|trae|tiene|va en|hay en|le puse en|puse en|nomas|nada mas|solo|en) (?:nomas |nada mas |solo )?(?:{words})(?= *$)") for n, words in _COUNTS),
    ),
    numbers=(("una", 1), ("un", 1), ("dos", 2), ("1", 1), ("2", 2)),
    of_the_piece=(
        rf"\b(?<!iba a )(?<!ibamos a )(?!{_TELL})\w{{2,}}(?:[aei]r)(?:les?|sel[oa]s?)\b(?! (?:a|al|que|de comer|paso|duro|ganas)\b)(?! (?:{_SOME_OF} )*{_HOLDERS}\b)"
        rf"|\b(?<!iba a )(?<!ibamos a )(?!{_TELL})\w{{2,}}[aei]r (?:ese?a? |el |las? |los |una? |otr[oa] |bien |ultim[oa] )+(?:otr[oa] |ultim[oa] )?{_PARTS}\b"
        r"|\bvolver(?:l[oa]s?|le)? a (?:poner|pegar|meter|hacer|echar|cerrar|sellar|clavar|tapar)(?:l[oa]s?|le)?\b|\brepetir(?:l[oa]s?)?\b"
        rf"|\b(?:cerrar|terminar|acabar|rematar|sellar|ajustar|cuadrar|emparejar|enderezar|corregir|tapar|componer)l[oa]s?\b"
        rf"|\b(?:mañana|al rato|luego|despues|ahorita) (?:se )?(?:le |l[oa] |se )+\w+[eio]?o (?:el |la |los |las |una? |otr[oa] )+{_PARTS}\b"
        rf"|\b(?<!iba a )(?<!ibamos a )(?:cambiar|reemplazar|reponer|rehacer)(?:l[oa]s?|le)?\b(?! (?:de|la ropa|la llanta|el turno|turno|la camisa|la bateria|la manguera))"
        rf"|\bl[oa]s? (?:voy|vamos) a (?:cerrar|terminar|acabar|rematar|sellar|encintar|engrapar|grapar|tallar|completar|tapar|componer)\b"
        rf"|\blo de \w+(?:[aei]r)(?:l[oa]s?|les?)?\b"
        rf"|^(?:y |pero )?(?:(?:mañana|al rato|luego|despues|ahorita) )?(?:se )?(?:(?:le|l[oa]s?) )+(?!{_TELL}|llev|tra[ie]|pas|chec|ve[oa]|cuelg|sub|mont)\w+[^aeiou]o (?:al rato|mañana|luego|despues|mas tarde|ahorita)$"
        rf"|^(?:y |pero |ya )?(?:pasado mañana|mañana|al rato|luego|despues|ahorita) (?:ya )?(?:se )?(?:(?:le|l[oa]s?) )+(?!{_TELL}|llev|tra[ie]|pas|chec|ve[oa]|cuelg|sub|mont|dig)\w+o$"
        r"|\bfaltan? (?:(?:un|una|el|los|dos|tres|otro|su|sus|mas|por poner|poner(?:le)?) )*(?:hangers?|colgantes?|colgadores?|colgador|soportes?|flejes?|straps?|trapecios?|cuelgues?|abrazaderas?|colgaderas?)\b"
        r"|\bfaltan? (?:(?:todavia|aun|poner|ponerle|hacerle) )*(?:(?:la|el|las|los|una?|su|sus|otr[oa]s?|dos|toda) )+(?:tapa|tapon|fondo|cara|costado|lado|base|collar|collarin|cuello|cachete)s?\b"
        r"|\b(?:es|era|son|seria) lo (?:unico|ultimo) (?:(?:que (?:le |me |nos )?(?:falta|queda)|pendiente|por hacer)\b|que (?:esta|queda|quedo|dejo|deje) pendiente)"
        rf"|\bfaltan? (?:todavia |aun )?(?:es[eao]s?|est[eao]s?) (?:mism[oa] )?{_PARTS}\b"
        rf"|\b(?:{_SOON}|despues del? \w+|en (?:la tarde|la mañana|un rato)) (?:(?:ya|yo|si|mismo) )*(?:(?:se|le|les|l[oa]s?) )*(?!{_TELL}|llev|tra[ie]|chec)(?:pongo|ponemos|hago|hacemos|abro|abrimos|corto|cortamos|saco|instalo|meto|pego|marco|coloco|monto|voy a (?:poner|hacer|abrir|cortar|instalar|meter|pegar|marcar|sacar)(?:le)?|vamos a (?:poner|hacer|abrir|cortar|instalar|meter|pegar|marcar)(?:le)?) (?:el |la |los |las |un |una |su |sus )+{_OF_ITS_OWN}\b(?! (?:en|al?|del?) (?:la |el )?(?:[a-z]+ )?\d)"
        r"|^(?:y |pero )?(?:es[oae]s?|est[oae]s?) (?:si |todavia |aun |ya |nomas |es lo que )*(?:me |le |nos )?falta(?:n|ba)?$"
        rf"|\b(?:el|las?|los|otr[oa]s?) {_PARTS} (?:todavia|aun) no (?:se |le |l[oa]s? |he |esta |queda )"
        r"|^(?:(?:se|me|nos|todo|ya|todavia|aun|asi) )*(?:queda|quedo|esta|sigue|se queda) pendiente$|\b(?:el resto|lo demas|lo otro|el otro lado|la otra (?:mitad|parte|punta|esquina)|un detalle|unos detalles|detallar\w*|el acabado)\b"
    ),
    over=r"\bfalt(?:aba|aban|o|aron)\b.*(?:,| y| pero)+ (?:(?:ya|luego|despues|ahorita|al final|hoy|por fin|se|l[oa]s?|le) )+(?:quedo|quedaron|esta|estan|hice|hicimos|termine|arregle|complete|puse|cerre|acabe|corregi)\b",
    ran_out=r"(?:(?:y|pero|porque|pues|luego) )*(?:ya )?(?:(?:se (?:me |nos |les? )?(?:acabo|termino) (?:la |el |todo el )?(?:cinta|teip|tape|rollo)(?: de cinta)?)|(?:me|nos) (?:quede|quedamos|acabe) sin (?:cinta|teip|tape)|no (?:me |nos )?alcanzo (?:la |el )?(?:cinta|teip|tape))(?: (?:ahi|hoy|para este|para esta|ya|en ese|a media|por hoy))*",
    fetched=r"\b(?:traje|trajeron|fui|fuimos|consegui|saque|agarre|preste|prestaron|otr[oa]|mas|nuev[oa]|abri|segui|seguimos)\b",
    of_any_plan=True,
    of_all=r"de(?: l[oa]s)?",
    stands_for_act=r"\b(?:lleva|llevan|trae|traen|tiene|tienen|van|va|quedo|quedaron|puse|pusimos|hice|di|nomas|nada mas|solo|en)\b",
    because=r"\b(?:porque|ya que|pues)\b.*",
    tells_why=r" (?=(?:porque|debido a|por (?:falta|culpa|causa) de|por lo (?!menos|general|pronto|tanto|visto|mientras|regular|largo|ancho|alto|que)[a-z]{4,}|por (?:la lluvia|el fr[ií]o|el viento|el agua|la prisa|las prisas|flojera|el espacio|el calor|el polvo))\b)",
    denied_side=r"\b(?:no|ni|sin|falt\w+|menos|nada(?! mas)|nunca|tampoco|excepto|salvo|pendientes?|olvid\w+)\b",
    unfinished_looks=UNFINISHED_LOOKS,
    unfinished=UNFINISHED,
    does=r"(?!bien|tambien|lleg)\w{2,}(?:[aei]n|aron|ieron|aban|ian)$",
    a_side=rf"\b{_SIDES}\b",
    side_waits=rf"(?:(?:y|pero|luego|ya|nomas|pues) )*(?:(?:el|la|l[oa]s) (?:otr[oa]s?|cuart[oa]|ultim[oa]s?|tercer[oa]?|rest[oa]|que (?:falta|queda))(?: (?:un[oa]|dos|tres|[123]))?(?: (?:{_SIDES}|de (?:arriba|abajo|atras|adelante)))? (?:(?:l[oa]s?|le|les|se|va|van|queda|quedan|para|hasta|viene|ya|pues|voy a|vamos a|\w+o|\w+amos) )*{_SOON}|{_SOON} (?:(?:ya|pues|si|mismo) )*(?:(?:le|les|l[oa]s?|se) )+(?:(?:voy|vamos) a \w+|(?!di|llev|tra|che)\w+(?:o|emos|amos))\b|(?:(?:le|les|l[oa]s?|se) )+(?:(?:voy|vamos) a \w+|(?!llev|tra|che)\w+(?:o|emos|amos)) (?:(?:el|la) (?:otr[oa]|cuart[oa]|ultim[oa]|rest[oa]) )?{_SOON})",
)
