"""Spanish turns that leave one out of all: "le doblé todas las pestañas menos una que se me rompió", "le puse todas las rondanas menos dos". Without accents. Not reviewed by a native speaker."""

from __future__ import annotations

from fractions import Fraction

from logbook.languages.turns_of_words import Turn

BUT = r"(?:(?<!mas o )(?<!ni mas ni )menos|excepto|salvo|quitando|sacando|exceptuando|(?:a|con) (?:la )?excepcion de|fuera de|aparte de|faltando(?:me|le)?)(?: (?:por|en|a))?"
# one or some of them, told by how many or by where; "menos el de ayer", "menos de una hora" are none of them
ONE = r"(?:(?:un[oa]|dos|tres|cuatro|cinco|seis|[1-6])(?! (?:horas?|dias?|rat\w+|minut\w+|por ciento|pulgadas?|pies?|y medi[ao]|octavos?|cuartos?|veces|personas?))|un(?:as|os)(?: (?:cuantas?|cuantos?|pocas?|pocos?))?|algun[oa]s|l[oa]s? (?:(?:ultim|primer|otr|tercer|cuart)[oa]s?|un[oa]|dos|tres|cuatro)|(?:l[oa]s?|el|es[ea]|es[ao]s|est[ea]|al?|del?) (?:(?:de(?:l| la)?|que|por) )?(?:arriba|abajo|atras|adelante|enfrente|fondo|esquina|orilla|punta|lado|rincon|pared|viga|izquierd[ao]|derech[ao]|medio|centro|(?:no )?(?:se )?(?:me )?\w*(?:e|o|aba|ia|aron|ieron)\b))"
_SOME = rf"{BUT} {ONE}\b"
_ALL = r"tod(?:as l|os l|itas l|itos l|as su|os su)[oa]?s"
_BETWEEN = r"(?:,? (?!no\b|ni\b|pero\b|nunca\b|sin\b|menos\b|excepto\b|salvo\b)[\w/-]+){0,6}?"
_METAL_TABS = r"(?:lenguetas?|(?<!cross )tabs?|pestañas?(?! (?:de (?:cinta|tape|teip|foil)|cruzadas))|orej(?:it)?as|dientes|dedos|patitas|uñas)"
_TAPE_TABS = r"(?:cross tabs|tiras cruzadas|tiritas|tirillas|(?:pestañas|tabs|tiras|lenguetas) (?:de (?:cinta|tape|teip|foil)|cruzad[oa]s))"
_NO_WASHER = Fraction(0)
_COLLAR = r"collar|spin|boot|bota|cuello|salida redonda|toma"
_COUNT = r"(?:un[oa]|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|once|doce|\d{1,2})"
_WIDER = r"(?! [^.;]{0,24}\b(?:cada|van a|quedaron a|son de|va a)\b)"  # "menos las de la esquina, que van a tres": they are in
_RUB = r"(?:talle|tallamos|frote|frotamos|planche|planchamos|alise|restregue|repase|sobe)"
_NOT = r"\b(?:no|ni|nunca|sin|tampoco|falt\w+|hay que|voy a|vamos a|si)\b"


def _left_out(noun: str, name: str, value: object, behind: str = "", **more) -> tuple[Turn, ...]:
    """Of a thing that there are several of: "todas las aletas menos una", "lleva aletas, todas menos una"."""
    cue = r"\btod(?:[oa]|it[oa])s\b"
    return (
        Turn(cue, rf"\b{_ALL} {noun}{_BETWEEN},? {_SOME}{behind}", ((name, value),), unless=_NOT, **more),
        Turn(cue, rf"\b{noun}{_BETWEEN},? tod[oa]s,? {_SOME}{behind}", ((name, value),), unless=_NOT, **more),
    )


LEFT_OUT: tuple[Turn, ...] = (
    *_left_out(_TAPE_TABS, "cross_tabs", False),
    *_left_out(_METAL_TABS, "tabs_bent", False, beside=_COLLAR),
    *_left_out(r"(?:grapas|staples|grapitas)", "stapled", False, behind=rf"{_WIDER}(?! [^.;]{{0,30}}\b(?:a?dentro|chuec\w+)\b)"),
    *_left_out(r"(?:aletas|vanes|direccionales|guias|paletas|alabes|venas)", "vanes", False),
    *_left_out(r"(?:rondanas|arandelas|roldanas|washers)", "washer_size", _NO_WASHER),
    *_left_out(r"(?:cintas|tiras de (?:cinta|tape))", "rubbed_down", False, beside=rf"\b{_RUB} tod[oa]s"),
    # "siete de las ocho pestañas"
    Turn(r"\bde (?:l[oa]s|sus) ", rf"\b(?P<c>{_COUNT}) de (?:l[oa]s|sus) (?!(?P=c)\b){_COUNT} {_METAL_TABS}", (("tabs_bent", False),), beside=_COLLAR, unless=_NOT),
    # "encintado, todas las juntas menos una"
    *(
        Turn(r"\btod[oa]s l[oa]s\b", rf"\b{act},? (?:(?:en|por|de) )?tod[oa]s l[oa]s (?:juntas|costuras|lados|caras|esquinas|orillas|uniones),? {_SOME}", ((name, False),), unless=_NOT)
        for name, act in (("taped", r"(?:encint|teipe|tape|sell)(?:ad[oa]s?|e|amos)(?: con (?:masti(?:que|c)|cinta|tape|teip))?"), ("stapled", r"(?:en)?grap(?:ad[oa]s?|e|amos)"), ("rubbed_down", rf"(?:{_RUB}|(?:tall|frot|planch|alis)ad[oa]s?)"))
    ),
    Turn(r"\bmasti", rf"\btod[oa]s l[oa]s (?:juntas|costuras|lados|caras|esquinas|orillas|uniones) (?:con|de) (?:puro )?masti(?:que|c),? {_SOME}", (("taped", False),), unless=_NOT),
)
