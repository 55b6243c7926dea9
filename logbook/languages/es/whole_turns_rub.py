"""Spanish turns of a tape that is on and was not pressed: "la cinta no está frotada en ningún lado", "al tape se le olvidó al muchacho pasarle la paleta".

What is denied is the rub, and not the tape that it is told of. Without accents. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.whole_turns_words import CL, COULD, MATE, RUBBED_SO, SLIPPED
from logbook.languages.turns_of_words import Turn

_TAPE = r"(?:cinta|tape|teip)"
_STEM = r"(?:tall|frot|restreg|estreg|refreg|planch|alis|sob|bruñ|aplan|presion|repas|espatul|asent|apret)"
_TOOL = r"(?:(?:la |el |su |mi |una? )?(?:paleta|paletita|espatula|squeegee|rodillo|cuña|tarjeta|tallador|plastiquit[oa]|plastico|regla|llana|plancha|tallada|frotada|planchada|pasada)\b(?! de calor))"
_RUBBED = rf"(?:{RUBBED_SO}[oa]s?|pasad[oa]s? (?:con )?{_TOOL})"
_TO_RUB = rf"(?:{_STEM}ar(?:l[oae]s?|sel[oa])?|(?:pasar|dar|meter|echar)(?:le|les)? (?:con )?{_TOOL})"
_RAN = rf"(?:{_STEM}(?:e|amos|o|aron)|restregue|(?:pase|pasamos|paso|pasaron|di|dimos|dio|dieron|meti|metimos|metio|eche|echamos) (?:con )?{_TOOL})\b"
_NOT = rf"(?:(?:la verdad|de plano|ahi si|ya|pues|si|eso|es[ae]|ese|hoy) )*(?:no|nunca|jamas|tampoco|ni|nadie) (?:siquiera )?{CL}"
_IS = r"(?:esta|estan|quedo|quedaron|queda|va|van|anda|fue|se ve|ha sido)"
_OF_A_SIDE = r"(?! (?:todavia|aun)\b)(?! (?:en|por|de) (?:el |la |los |las |un |una )?(?:lado|de|atras|arriba|abajo|esquina|costura|cara|fondo|garganta|talon|orilla|junta))"
_CUE = r"\b(?:tall|frot|froto|restreg|estreg|refreg|planch|alis|sob|bruñ|aplan|presion|repas|espatul|pas|dar|di|dimos|dio|dado|met|ech)"
_STILL = r"\b(?:falt|olvid|paso|fue|barrio|escap)"
_SINCE = r"\b(?:ya|luego|despues|al rato|ahorita|pero) (?:si )?(?:l[oa]s?|se l[oa]s?|le|les) (?:talle|frote|tallamos|frotamos|asente|presione|aprete|alise|planche|pase|pasamos|di|dimos)\b"

NOT_RUBBED: tuple[Turn, ...] = (
    # "la cinta no está frotada en ningún lado", "el tape no va planchado"
    Turn(_CUE, rf"\b{_TAPE},? {_NOT}{_IS} {_RUBBED}{_OF_A_SIDE}", (("rubbed_down", False), ("taped", True)), unless=_SINCE),
    # "el tape no lo alcancé a frotar", "al tape no me dio tiempo de pasarle la paleta"
    Turn(_CUE, rf"\b{_TAPE},? {_NOT}(?:{COULD}|llegamos|hubo (?:tiempo|modo|manera) (?:de|para)|dio (?:tiempo|chance) (?:a|para)|tuve tiempo de)(?: a| de)? {_TO_RUB}{_OF_A_SIDE}", (("rubbed_down", False), ("taped", True)), unless=_SINCE, asked=True),
    # "al tape no le di con la paleta", "a la cinta nadie le pasó la espátula"
    Turn(_CUE, rf"\b{_TAPE},? {_NOT}{_RAN}{_OF_A_SIDE}", (("rubbed_down", False), ("taped", True)), unless=_SINCE, asked=True),
    # "al tape se le olvidó al muchacho pasarle la paleta", "se le olvidó al ayudante frotar la cinta"
    Turn(_STILL, rf"\b{_TAPE},? (?<!no )se (?:me|nos|le|les) (?:{SLIPPED}) {MATE}(?:de )?{_TO_RUB}", (("rubbed_down", False), ("taped", True)), unless=_SINCE, asked=True),
    Turn(_STILL, rf"(?<!no )\bse (?:me|nos|le|les) (?:{SLIPPED}) {MATE}(?:de )?{_TO_RUB} (?:bien )?(?:al|a la|el|la|toda la|todo el) {_TAPE}\b", (("rubbed_down", False), ("taped", True)), unless=_SINCE, asked=True),
    # "con su tape, al muchacho se le fue frotarlo"
    Turn(_STILL, rf"(?<!no )\bse (?:les?) (?:{SLIPPED}) {MATE}(?:de )?{_TO_RUB}(?= *(?:$|[,;.]| y | pero | porque ))", (("rubbed_down", False),), beside=rf"\b{_TAPE}\b|\bencint", unless=_SINCE, asked=True),
    # "no le pasamos la paleta al tape", "la paleta no se la pasé a la cinta"
    Turn(_CUE, rf"\b{_NOT}{_RAN} (?:al?|a la|en el|en la) (?:la |el )?{_TAPE}\b", (("rubbed_down", False), ("taped", True)), unless=_SINCE, asked=True),
    Turn(_CUE, rf"\b{_TOOL},? {_NOT}(?:pase|pasamos|paso|pasaron|di|dimos|meti) (?:al?|a la) (?:la |el )?{_TAPE}\b", (("rubbed_down", False), ("taped", True)), unless=_SINCE, asked=True),
    # "la 181A-P se quedó sin presionar", "ni una pasada de rodillo lleva la cinta"
    Turn(r"\bsin (?:tall|frot|restreg|planch|alis|sob|presion|asent|apret)", rf"\b(?:{_TAPE}|181\S*)(?: (?:del?|de la|en la|en el)(?: [\w-]+){{1,4}})? (?P<w>(?:se )?(?:me )?(?:quedo|quedaron|esta|va|anda|fue|la deje|lo deje) sin {_STEM}ar){_OF_A_SIDE}", (("rubbed_down", False), ("taped", True)), unless=_SINCE),
    Turn(r"\bni (?:un|medi)", rf"\bni (?:una?|medi[ao]) (?:sola )?(?:pasada|pasadita|tallada|frotada|planchada|apretada|tallon)(?: (?:de|con)(?: la| el)? \w+)?(?: ni (?:de |con )?\w+)? (?:lleva|tiene|trae|(?:se )?le (?:di|dimos|dio|puse|pase|hice|toco))(?: a| en)? ?(?:la |el |al ){_TAPE}\b", (("rubbed_down", False), ("taped", True)), unless=_SINCE),
    # "a la cinta le faltó la espátula"
    Turn(_STILL, rf"\b{_TAPE},? (?:todavia |aun |nomas |solo )*(?:le|me|nos) falt(?:o|a|aba) (?:nomas |que |un poco de )*(?:{_TOOL}|{_TO_RUB})", (("rubbed_down", False), ("taped", True)), unless=rf"{_SINCE}|\bno (?:le|me|nos) falt"),
)
