"""So many sides and not the others, in Spanish: "un lado grapado, los otros tres no", "grapé tres lados y me faltó uno". Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.turns_of_words import Turn

_N = r"(?P<n>tres|dos|un[oa]?|[123])"
_SIDES = r"(?:lados?|caras?|costados?)"
_ACTS = (
    ("stapled", r"(?:(?:en)?grap(?!adora)\w*|staples?|stapled)"),
    ("taped", r"(?:encint\w+|cintas?|teip\w*|tape\w*)"),
    ("rubbed_down", r"(?:tall|frot|planch|restreg|alis)(?:e|amos|ad[oa]s?|aron|o)\b"),
)
_SMALL = r"(?: (?!no\b|ni\b|sin\b|cada\b|y\b)\w+){0,3}?"
# what is said of the others: none of it, or that they were missed; of this act and no other
_OTHERS = r"(?:(?:en|de|por|a|al) )?(?:el |los |la |las )?(?:otr[oa]s?|demas|resto|ultim[oa]s?|cuart[oa]|tercer[oa]|que (?:falta|queda)|un[oa])(?: (?:un[oa]|dos|tres|[123]|lados?|caras?|costados?))*"
_NOT = r"(?:(?:todavia|aun|pues|la verdad|la neta|ya|se|le|les|l[oa]s?|me|(?:se )?(?:quedo|quedaron|va|van|esta|estan)) )*(?:no|tampoco|nada|sin (?:nada|grapas?|cinta|teip|tape|grapar|engrapar|encintar|tallar|frotar)|pelon\w*|nel|ningun[oa])\b"
_MISSED = r"(?:(?:pero|y|me|nos|le|les|nomas|solo|todavia) )*falt(?:o|aron) (?:nomas |solo )?(?:un[oa]|dos|tres|[123]|el (?:otro|ultimo|de)|la (?:otra|ultima|de)|los otros|las otras)\b(?! (?:grapas?|pulgadas?|tornill\w+|aletas?|pedaz\w+|pedacit\w+|cach\w+))"

# "para la cuarta no me alcanzó el rollo": there was no more for the others
NO_MORE = r"(?:para|en|a|al) (?:(?:el|la|los|las) )?(?:otr[oa]s?|demas|resto|ultim[oa]s?|cuart[oa]|tercer[oa]|de (?:arriba|abajo|atras|adelante|al lado))(?: (?:un[oa]|dos|tres|[123]|lados?|caras?|costados?|costuras?))* (?:ya |de plano )*no (?:(?:me|nos|le|les|se) )*(?:alcanz\w+|hubo|habia|hay|dio|qued\w+|lleg\w+|ajust\w+)\b(?: (?:mas|ya|la|el|las|cinta|rollo|teip|tape|grapas?|para|nada|tira|caja))*"


def _rest(act: str) -> str:
    others = "|".join(words for name, words in _ACTS if name != act)
    return rf"(?:,|;| y| pero| mas)+ ?(?:(?:y|pero) )*(?:{_OTHERS},? {_NOT}|{_MISSED}|{NO_MORE})(?![^,.;]*\b(?:{others}))[^,.;]*"


def _turns(act: str, words: str) -> tuple[Turn, ...]:
    states = (("rubbed_down", False),) if act == "rubbed_down" else ((f"sides_{act}", "n"), (act, True))
    return tuple(
        Turn(r"\b(?:otr[oa]s?|demas|resto|ultim[oa]s?|cuart[oa]|tercer[oa]|falt\w+|un[oa] (?:no|sin|quedo|va))\b", told, states, beside=_SIDES, unless=r"^(?:no|si)\b|\b(?:pide|piden|plano|dibujo|su)\b", asked=True)
        for told in (rf"(?<!cada )\b{_N} {_SIDES}{_SMALL} {words}{_SMALL}{_rest(act)}", rf"\b{words}{_SMALL} {_N} {_SIDES}{_SMALL}{_rest(act)}")
    )


# "por arriba sí lleva cinta, por abajo no"
_WHERE = r"(?:(?:por|de|en|a|del?) )?(?:(?:el|la|los|las) )?(?:lado (?:de )?)?(?:arriba|abajo|atras|adelante|lados?|izquierd[ao]|derech[ao]|fondo|pared|otro(?: lado)?|otra(?: cara)?)"
_ONE_BUT_NOT = tuple(
    Turn(r"\bsi\b", rf"\b{_WHERE} si (?:l[oa]s? |le |se )*(?:lleva|trae|tiene|va con|quedo con|puse|meti|eche|di|pude) (?:la |el |las |su |sus )?(?:{words}),? (?:y |pero )?{_WHERE} (?:todavia |aun |ya )?no\b(?= *(?:$|[,;.]))", ((act, False),))
    for act, words in (("stapled", r"grapas?|staples?"), ("taped", r"cintas?|teip|tape"))
)

# "la cinta de abajo no la alcancé a poner": none on that part
_OF_A_PART = r" (?:del?|por|en)(?: (?:el|la|las|los))?(?: (?:en|lado|cara|costura|junta|orilla|costado|parte)(?: (?:del?|la|el))*)* ?(?:medio|arriba|abajo|atras|adelante|enfrente|izquierd[ao]|derech[ao]|fondo|garganta|talon|esquina|costura|junta|orilla|costado|otro lado|adentro|afuera|pared)"
_COULD = r"(?:(?:alcance|alcanzamos|llegue|llegamos) a|pude|pudimos|logre|logramos) (?:poner|meter|pegar|echar|hacer|colocar|pasar|correr)"
_NOT_THERE = tuple(
    Turn(r"\bno (?:se )?(?:l[oae]s? )", rf"\b(?:{things}){_OF_A_PART},? (?:la verdad |todavia |aun |ya )?no (?:se )?(?:l[oae]s? )(?:{_COULD}|(?:puse|pusimos|meti|metimos|pegue|pegamos|eche|echamos|coloque|he puesto)(?! yo\b))(?:l[oae]s?)?\b(?! (?:mal|chuec))", ((act, False),))
    for act, things in (("taped", r"cintas?|teip|tape"), ("stapled", r"grapas?|staples?"), ("vanes", r"aletas?|vanes?|venas|guias|direccionales"))
)

# "encinté tres nada más, al de atrás no le entra la mano", where sides were counted
_FEW = r"(?:nada mas|nomas|no mas|solo|solamente|unicamente|apenas)"
_OF_SIDES = r"\b(?:lados|caras|costados)\b"
_SO_MANY = tuple(
    Turn(
        rf"\b{_FEW}\b|\b(?:al|a la|el|la|del) (?:otr|de|cuart|ultim)",
        rf"\b{did},? (?:{_FEW} )?(?:a |en |por )?{_N}(?: {_FEW}(?= *(?:$|[,;.]))|(?=,? (?:y |pero )?(?:al|a la|el|la|en el|del) (?:otr[oa]|cuart[oa]|ultim[oa]|de (?:atras|abajo|arriba|adelante|al lado|la pared|la viga))\b))",
        ((f"sides_{act}", "n"), (act, True)),
        beside=rf"{_OF_SIDES}",
        unless=r"^(?:no|si)\b|\b(?:tramos|codos|piezas|rectos|tapas|juntas)\b",
    )
    for act, did in (("stapled", r"(?:(?:en)?grap(?:e|amos|ad[oa]s?)|(?:puse|pusimos|meti|metimos|di) (?:las |la )?grapas?)"), ("taped", r"(?:encint(?:e|amos|ad[oa]s?)|teip(?:ie|ee|eamos|ead[oa]s?)|tape(?:e|amos|ad[oa]s?)|(?:puse|pusimos|eche|echamos|pegue) (?:el |la )?(?:cinta|tape|teip))"))
)

# "las grapas van a cinco y a un lado no le pusimos ninguna"
_ONE_BARE = r"(?:a|en|de|por) (?:un|otro|ese|el) lado(?: (?:de |que )?(?:atras|abajo|arriba|adelante|enfrente|la pared|la viga|da a \w+ \w+))?|al (?:lado (?:de (?:atras|abajo|arriba|adelante|enfrente|la \w+)|izquierdo|derecho)|otro lado|de (?:atras|abajo|arriba|adelante))"
_BARE_OF = tuple(
    Turn(
        r"\bno (?:les?|l[oa]s?|lleva|llevan|tiene|trae|se)\b",
        rf"\b{stuff}\b(?:(?!\b(?:{other})\b)[^.;])*?(?:,| y| pero| mas)+ (?P<w>(?:{_ONE_BARE}),? (?:la verdad |ya |todavia )*no (?:se )?(?:(?:les?|l[oa]s?) )?(?:puse|pusimos|meti|metimos|eche|echamos|pude poner|alcance a poner|lleva|llevan|tiene|trae)(?: (?:ningun[oa]s?|nada|ni un[oa]))?(?= *(?:$|[,;.]| porque | por )))",
        ((f"sides_{act}", 3),),
        unless=r"\b(?:tornill|aleta|vane|mastique)\w*",
    )
    for act, stuff, other in (("stapled", r"(?:grapas?|staples?|(?:en)?grapad[oa])", r"cinta|tape|teip|encintad[oa]"), ("taped", r"(?:cinta|tape|teip|encintad[oa])", r"grapas?|staples?|(?:en)?grapad[oa]"))
)

# "el tape le cubre solo la mitad", "la cinta nada más cubre tres lados"
_COVERS = r"(?:cubr(?:e|io|ia)|tap(?:a|o|aba)|agarr(?:a|o)|alcanz(?:a|o)(?: (?:a|para) (?:cubrir|tapar))?|lleg(?:a|o) a)"
_ONLY = r"(?:(?:solo|nomas|nada mas|apenas|solamente|unicamente|como) )"
_LYING = rf"\b(?:cinta|tape|teip),? (?:(?:le|la|lo|me|se|les) )*{_ONLY}*(?:(?:le|la|lo|me|se|les) )*{_COVERS} "
_COVERED = (
    Turn(r"\bmitad\b|\bun[oa]? |\bmedia\b|\bparte\b", rf"{_LYING}{_ONLY}*(?:a )?(?:(?:la )?mitad|media (?:junta|costura|vuelta|pieza)|una? (?:solo |sola )?(?:pedazo|cacho|parte|esquina|orilla|lado|cara)|parte)\b", (("taped", False),), unless=r"\b(?:no|ni|hoyo|hueco|roto|rajad\w+|rasg\w+|golpe)\b"),
    Turn(r"\b(?:lados|caras|costados)\b", rf"{_LYING}{_ONLY}*(?:en )?(?:los )?(?P<n>dos|tres|[23]) (?:de los )?(?:lados|caras|costados)", (("sides_taped", "n"), ("taped", True)), unless=r"\b(?:no|ni)\b"),
)

SIDES = (*_SO_MANY, *_BARE_OF, *_COVERED, *_ONE_BUT_NOT, *_NOT_THERE, *(turn for act, words in _ACTS for turn in _turns(act, words)))
