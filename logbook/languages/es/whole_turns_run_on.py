"""Turns that take an act back in part or whole without a stop before them, in Spanish: "encintado espérate no no lo encinté", "engrapada menos el ramal". Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.turns_of_words import Turn

_VERBS = (
    ("stapled", r"(?:en)?grap(?:e|amos)|estaple(?:e|amos)", r"(?:en)?grapen"),
    ("taped", r"encint(?:e|amos)|teip(?:e|ie|ee|amos)", r"encinten|teipeen"),
    ("rubbed_down", r"(?:tall|frot|planch|restreg|alis)(?:e|ue|amos)", r"(?:tall|frot|planch|restregu|alis)en"),
    ("surface_clean", r"limpi(?:e|amos)", r"limpien"),
)
_DONE = (
    ("stapled", r"(?:en)?grapad[oa]s?"),
    ("taped", r"encintad[oa]s?|teipead[oa]s?"),
    ("rubbed_down", r"(?:tall|frot|planch|restreg|alis)ad[oa]s?"),
)
_THINGS = (("stapled", r"grapas?"), ("taped", r"cintas?|teip|tape"), ("vanes", r"aletas|guias|vanes"), ("cross_tabs", r"tabs"))
_PART = r"(?:ramal|derivacion|rama|toma|brazo|boca|salida|cuello|esquina|orilla|costura|junta|tapa|lado|cara|union|punta|extremo|cabeza|parte|panel)"
_SOON = r"(?:al rato|luego|despues|mañana|mas tarde|ahorita|en la tarde)"
_A_BIT = r"(?:un|otro|el ultimo|ese|todavia un) (?:pedaz\w+|cach\w+|tram(?:o|ito)\b|tantito|poquito|pedacit\w+)"
_LACKS = r"(?<!no )(?<!no le )(?<!no me )(?:(?:le|me|nos) )?(?:hace falta|hacia falta|queda pendiente|quedo pendiente|quedo faltando|esta pendiente)"
_TOLD = r"\b(?:encintad|engrapad|grapad|teipead|cintas?\b|tape\b|teip\b|grapas?\b|(?<!alguien )l[oa] (?:encinte|engrape|grape)\b)"  # a wish alone tells nothing of the piece: "Recta 4, que alguien la talle."

RUN_ON = (
    # a word that sets right, and then a plain denial: the second "no" is of the act
    *(Turn(r"\bno \w", rf"\b(?:esperate|espera|esperame|perdon|miento|mentira)(?: no)* no (?:(?:l[oa]s?|le|les) )?(?:{said})\b", ((name, False),)) for name, said, _ in _VERBS),
    *(Turn(r"\b(?:menos|salvo|excepto)\b", rf"\b(?:{done})(?: (?:toda|todo|bien|completa|completo))?,? (?:menos|salvo|excepto) (?:por |en |de )?(?:el|la|los|las|un|una) (?:lado (?:de |del )?)?{_PART}(?:es|s)?\b", ((name, False),)) for name, done in _DONE),
    *(Turn(r"\b(?:falta|pendiente|faltando)\b", rf"\b(?:{done})(?: (?:toda|todo|bien))?,? (?:(?:y|pero|nomas|solo|todavia|aun) )*{_LACKS} (?:nomas |solo |todavia )?{_A_BIT}", ((name, False),)) for name, done in _DONE),
    # "aletas no lleva al rato voy a ponérselas"
    *(Turn(r"\bno (?:lleva|trae|tiene|puse|l[eo]s? puse)", rf"\b(?:{noun}),? (?:todavia |aun |ahorita )?no (?:(?:le|les|se|l[oa]s?) )*(?:lleva|trae|tiene|llevan|traen|puse|pusimos|meti)(?=,? (?:{_SOON}|voy|vamos)\b)", ((name, False),)) for name, noun in _THINGS),
    # "tiene todo solamente que las aletas"
    *(Turn(r"\btodo,? (?:solamente|nomas|solo|nada mas)\b", rf"\b(?:tiene|lleva|trae|esta|va|quedo|ya) (?:ya )?todo,? (?:solamente|nomas|solo|nada mas) (?:que )?(?:las|la|el|los) (?:{noun})(?= *(?:$|[,;.]))", ((name, False),)) for name, noun in _THINGS),
    # what he asks others to do
    *(Turn(r"\bque \w", rf"(?:^|(?<=[,;:] )|\b(?:nomas|solo|solamente|nada mas|falta|ya) )(?:ya )?que (?:(?:me|nos|ya|l[oa]s?|le|les) )*(?:{theirs})\b", ((name, False),)) for name, _, theirs in _VERBS),
    *(Turn(r"\bque (?:alguien|otro|el ayudante|el chalan)\b", rf"\bque (?:alguien|otro|el ayudante|el chalan)(?: (?:me|nos|ya|l[oa]s?|le|les))* (?:{theirs.replace('n|', 'n?|') + '?'})\b", ((name, False),), beside=_TOLD, unless=r"\b(?:dij|dic|quer|quier|pid)\w*", asked=True) for name, _, theirs in _VERBS),
)
