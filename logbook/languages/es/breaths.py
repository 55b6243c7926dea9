"""Where a breath parts what Spanish ears write without a sign: "encintado y tallado no quedó nada suelto", "el cuatro sí lo tallé el cinco no".

A comma is put there. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, MARK, SOON
from logbook.languages.plainer import Plainer

_DONE = r"(?:(?:en)?grapad[oa]s?|encintad[oa]s?|teipead[oa]s?|tallad[oa]s?|frotad[oa]s?|limpi[oa]s?|sellad[oa]s?|aletas|vanes)"
_NOTHING = r"(?:nada|ni|ningun[oa]?|problemas?|bronca|detalles?|arrugas?|bolsas|huecos?|gaps?|falta de nada)"
_ACTS = ("tall", "encint", "engrap", "grap", "limpi", "sell")

SPANISH_BREATHS = (
    # --- nothing was the matter: of no act, and of no vanes
    Plainer((" no ",), rf"{_DONE}(?P<x> )(?=no (?:(?:me|le|se|nos|lo|la) )*(?:quedo|queda|quedaron|hay|hubo|tiene|tuve|trae|deje|batalle|tarde|costo|paso|vi|se ve|encontre|salio|dio) {_NOTHING}\b)", (("x", ", "),)),
    # --- what is only named as still to come: "y la cinta todavía"
    Plainer((" todavia", " aun"), rf"(?:{_DONE}|grapas),? (?:y )?(?:la|el) (?:tape|teip|cinta|foil|tallada)(?P<x> (?:todavia|aun))(?= *(?:$|[.;]))", (("x", " todavía no"),)),
    Plainer((" se me levant", " se nos levant"), r"(?P<x>se (?:me|nos) levant(?:o|aron|a|an))(?= (?:un|una|la|el|las|dos) (?:punta|orilla|esquina|pedazo|cacho|lado)s?\b)", (("x", "se levantó"),), beside=("cinta", "encint", "tape", "teip", "foil")),
    # --- the one and the other
    *(Plainer((" el ", " la "), rf"(?:^|(?<=[ ,]))(?:el|la) {MARK} (?P<y>si )?(?:no )?(?:lo|la) {stem}e(?P<x>,? )(?=(?:el|la) {MARK} (?:si|no)(?: *$| *[,;.]| porque))", (("y", ""), ("x", ", "))) for stem in _ACTS),
    # --- "engrapada el tape lo pone el de mañana": it is to come, and whose it is
    Plainer((" mañana", " al rato", " luego", " despues", " ahorita", " todavia", " lo pone", " la pone", " lo pongo", " la pongo", " lo echa", " la echa", " lo va a ", " la va a ", " lo voy a ", " la voy a ", " le toca"), rf"(?:{_DONE}|grapas|staples)(?P<x> )(?=(?:el|la) (?:tape|teip|cinta|foil|mastique|tallada) (?:ya |luego |despues |mañana )*(?:se )?(?:(?:lo|la) (?:pone|ponen|pongo|ponemos|echa|echo|da|van? a|voy a|vamos a)\b|le toca\b|todavia(?: no)?(?= *$| *[,;.])|(?:hasta |para |pa )?{SOON}(?: *$| *[,;.]| temprano| si | porque )))", (("x", ", "),)),
    Plainer((" mañana", " al rato", " luego", " mas tarde", " lunes", " martes"), rf"(?:{_DONE}|grapas|staples)(?P<x> )(?=(?:(?:las|los) )?(?:tape|teip|cinta|foil|mastique|grapas|staples|aletas|vanes|(?:en)?grapad[oa]|encintad[oa]|tallad[oa]|frotad[oa]) (?:hasta |para |pa )?(?!ahorita){SOON}(?: *$| *[,;.]| temprano| porque ))", (("x", ", "),)),
    # --- "no cada tres como dice el plano encintado"
    Plainer((" como dice ", " como pide ", " como marca "), rf"cada {COUNT}(?: y media)?(?: pulgadas?)?(?P<w> )no (?:a )?cada {COUNT}(?: y media)?(?: pulgadas)? como (?:dice|pide|marca) (?:el|la) \w+(?P<x> )(?=(?:(?:en)?grap|encint|tall|teip)[ae]?d?[oa]|con cinta|con grapas)", (("w", ", "), ("x", ", "))),
    # --- "… ahí está sin nada lo demás bien engrapado"
    Plainer((" lo demas ",), r"\w+(?P<x> )(?=lo demas (?:(?:va|esta|quedo|todo|muy|si|ya) )*(?:bien |ya )?(?:(?:en)?grapad|encintad|tallad|bien\b)[oa]?)", (("x", ", "),), unless=r"\b(?:y|pero|todo|con|en|para|de|a) lo demas"),
    # --- "no se pudo grapas los cuatro"
    Plainer((" no se pudo ", " no entraba ", " no cabia "), r"\bno (?:se pudo|me entraba la mano|entraba la mano|cabia la mano)(?P<x> )(?=(?:grapas|staples|cinta|tape|ya con|con|(?:en)?grapad[oa]|encintad[oa]|tallad[oa])\b)", (("x", ", "),)),
    Plainer((" sin doblar ",), r"sin doblar(?P<x> )(?=no (?:me )?(?:entraba|cabia|alcanzaba|llegaba))", (("x", ", "),)),
    # --- a "but" by another name; how the legs go; what the hole got; how wide the collar is
    Plainer(("nomas que no ", "nada mas que no ", "solo que no ", "nomas que me falt", "nomas que le falt", "nomas que se me olvid"), r"(?P<x>(?:nomas|nada mas|solo) que)(?= (?:no (?:l[aeo]s? |me |se )*(?:tall|frot|planch|encint|engrap|grap|limpi|puse|recort|dobl|alcanc|pude|cupo|cabia)|me falt|le falt|se me olvid))", (("x", ", pero"),)),
    Plainer((" para afuera", " para fuera", " hacia afuera", " pa afuera"), r"grapas?(?![\w'])[^.;]{0,40}?,? (?P<x>)(?=(?:para|hacia|pa) (?:a?fuera)(?: *$| *[,.;]))", (("x", "patas "),), unless=r"patas?|patitas|puntas|dobl|escalon|ranura|rebaje|solapa|flap"),
    Plainer((" le puse ", " le meti ", " le eche "), rf"(?:hoyo|agujero|rasgon|rotura|rajada|cortada|golpe|ponchadura)(?: (?:como )?de (?:{COUNT})(?: y media)?(?: pulgadas?)?)(?P<x> )(?=le (?:puse|meti|eche|pegue) (?:malla|tela|parche|mastique|cinta|un parche))", (("x", ", "),)),
    Plainer(("collarin de ", "collar de ", "spin in de "), rf"(?:collarin|collar|spin in) de (?:{COUNT})(?P<x>)(?= (?:numero|en el|en la|run|del run|sobre)\b)", (("x", " pulgadas,"),)),
)
