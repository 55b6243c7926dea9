"""Spanish of what was wanted or asked for and did not happen ("ocupaba aletas y no se las puse", "le dije que lo tallara y no lo talló"), and of what was
left at first and is done by now ("ayer la había dejado sin cinta pero hoy se la puse").

Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_WANTED = r"(?:ocupab?a?n?|llevab?a?n?|necesitab?a?n?|requeria|le tocaban?|iba con|tenia que llevar|debia llevar|iba a llevar)"
_THING = r"(?P<t>aletas|vanes|guias|alabes|tie rods|varillas(?: de refuerzo)?|refuerzos?|tirantes|cinta|teip|tape|grapas|staples|tabs|mastique)"
_PUT = r"(?:puse|he puesto|pusimos|hemos puesto|puso|pusieron|meti|metimos|eche|di|traje|hice)"
_SINCE = r"(?:(?:hoy|ahorita|ya|ahora|esta mañana|al rato|temprano|luego|despues|regrese|volvi|y) )*"
_LEFT = r"(?:(?:ayer|antier|antes|el viernes|el sabado|el lunes|en la mañana|primero) )?(?:la|lo|las|los) (?:habia dejado|habiamos dejado|deje|dejamos|tenia|teniamos)"
_ALMOST = r"(?:(?:ya )?casi|por poco(?: y)?|ya mero) (?:(?:se|me|la|lo|que|ya|nos) )*(?:dejaba|dejo|deje|iba a dejar|iba|va|fue|olvidaba|olvida) (?:asi|sin \w+)"
_STEMS = (("encint", "encintado", "encinté"), ("engrap", "engrapado", "engrapé"), ("grap", "grapado", "grapé"), ("tall", "tallado", "tallé"), ("limpi", "limpio", "limpié"), ("sell", "sellado", "sellé"), ("frot", "frotado", "froté"))
_TOLD = r"(?:le|les) (?:dije|pedi|encargue|mande|dijimos|habia dicho|habia pedido) (?:al|a la|a mi|a los|a) (?:otro )?\w+ que (?:(?:me|nos|l[oa]s?) )*"

SPANISH_NOT_AFTER_ALL = (
    # --- wanted, and not put in
    Plainer((" no ",), rf"(?P<x>{_WANTED} (?:de )?(?:(?:sus|las|los|la|el|unas|unos|sus) )?{_THING}(?:,| y| pero| mas)+ (?:(?:yo|todavia|aun|ya|al final) )*(?:no|nunca) (?:(?:se|le|les) )?(?:(?:las|los|la|lo) )?{_PUT})(?= *(?:$|[,;.]| porque | y | pues | ya que | por que ))", (("x", r"no lleva \g<t>"),)),
    # --- wanted, and none came: "lleva aletas pero no llegaron", "iba con vanes pero no había"
    Plainer(
        (" no ", "quitaron"),
        rf"(?P<x>(?:{_WANTED}|con) (?:de )?(?:(?:sus|las|los|la|el|unas|unos) )?{_THING}(?:,| y| pero| nomas que)+ (?:(?:todavia|aun|ya|siempre|nomas|pues|de plano|al final|nada mas) )*(?:(?:no|nunca) (?:(?:me|nos|le|se) )*(?:(?:las|los|la|lo) )?(?:trajeron|llegaron|llego|habia|hubo|mandaron|dieron|surtieron|trajo|traia|traiamos|tenemos|teniamos|encontre|aparecieron|han (?:llegado|traido|mandado))|(?:se )?(?:me )?(?:las|los|la|lo) quitaron))(?! (?:a tiempo|hasta|completas?|todas|bien|mas|suficientes|problema)\b)(?= *(?:$|[,;.]| porque | y | (?:en)?grap| encint))",
        (("x", r"no lleva \g<t>"),),
        unless=r"\b(?:ya|si|luego|hoy|despues) (?:(?:me|nos|se|le) )*(?:(?:las|los|la|lo) )?(?:puse|pusimos|meti|metimos|tiene)",
    ),
    Plainer((" 181",), r"(?P<x>(?:iba|tenia que ir|debia ir) con (?:(?:la|el|cinta|tape) )*181-?a?-?[phm](?:,| y| pero)+ (?:ya )?no (?:(?:me|nos) )?(?:habia|hubo|llego|trajeron|alcanzo|traia))(?= *(?:$|[,;.]))", (("x", "no lleva cinta"),)),
    # --- told another to do it, who did not
    *(
        Plainer(
            (f"{stem}ara",),
            rf"(?P<x>{_TOLD}{stem}ara )(?P<r>[^.;,]{{0,30}}?)(?P<y>(?:,|y|pero)+ (?:(?:el|ella|todavia|nunca|ya|siempre|pero|y) )*(?:no|nunca) (?:(?:l[oa]|se|me) )*(?:hizo|quiso|pudo|{stem}o))(?= *(?:$|[,;.]| y | porque ))",
            (("x", ""), ("y", f" no está {done}")),
        )
        for stem, done, _ in _STEMS
    ),
    # --- left so at first, and done since
    *(
        Plainer(
            (" sin ",),
            rf"(?P<x>{_LEFT} sin (?:(?:la|el|las) )?(?:{thing})(?:,| y| pero)+ {_SINCE}(?:(?:se )?{it}|le) (?:puse|pusimos|eche|meti|metimos|di))(?= *(?:$|[,;.]| y | por | en | de | cada | con ))",
            (("x", put),),
        )
        for thing, it, put in (("cinta", "la", "ya le puse la cinta"), ("teip|tape", "lo", "ya le puse la cinta"), ("grapas", "las", "ya le puse las grapas"), ("aletas|vanes", "las", "ya le puse las aletas"))
    ),
    *(Plainer((f"sin {stem}ar",), rf"(?P<x>{_LEFT} sin {stem}ar(?:l[oa])?(?:,| y| pero)+ {_SINCE}(?:la|lo) {stem}e)(?= *(?:$|[,;.]| y | bien ))", (("x", f"lo {did}"),)) for stem, _, did in _STEMS),
    # --- the rub forgotten and made up for by now, told by another of its verbs: "se me olvidó asentar la cinta, ya se la asenté"
    Plainer(
        (" asente", " presione", " aprete"),
        r"(?:se (?:me|nos) (?:olvido|paso|fue)|\bsin|falto) (?:de )?(?:asent|presion|apret|tall|frot|planch|alis)ar(?:la|lo|le)?\b[^.;]{0,40}?(?:,| y| pero)+ (?:ya|luego|despues|al rato|ahorita) (?:si )?(?:se )?l[oae] (?P<x>asente|presione|aprete)(?= *(?:$|[,;.]| y | bien ))",
        (("x", "talle"),),
        beside=("cinta", "tape", "teip", "181"),
    ),
    # --- almost left so
    Plainer(("casi ", "por poco", "ya mero"), rf"(?P<x>{_ALMOST}(?:,| y| pero)+ (?:(?:regrese|volvi|me acorde|me devolvi|al final|siempre|si|y|ya|hoy|luego) )*)(?=(?:se )?(?:la|lo|las|los|le) (?:talle|encinte|engrape|grape|limpie|selle|frote|puse|eche|meti)\b)", (("x", ""),)),
)
