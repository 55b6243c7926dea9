"""Spanish of what was only meant, of a fault that stands far from its piece, of the only one, of work that waits under a noun, of sides counted with their article, and of tape on a register. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, FRAC, KIND, MARK, SOON, STAPLES, TAPE
from logbook.languages.plainer import Plainer

_MEANT = r"(?:iba|ibamos|pensaba|pensabamos|queria|queriamos|quise|estaba por|andaba por)(?: a)?"
_TO_PUT = r"(?:echar|poner|meter|dar|untar|aplicar|pegar|sellar|cerrar|usar)(?:le|la|lo|les)?(?: con)?"
_AFTER_ALL = r"(?:al final|al ultimo|mejor|siempre|luego|despues|ya|de plano|a la mera hora|termine y|acabe y|por fin)"
_DID = r"(?:puse|pusimos|eche|echamos|meti|metimos|di|dimos|encinte|encintamos|pegue|pegamos|selle|sellamos|use|usamos)"
_SIDES = r"(?:lados|caras|costados)"
_HERE = r"(?:(?:va|van|quedo|quedaron|nomas|solo|nada mas|pero|si|la|le|puse|lleva|lleve) )*"
_SIDED = r"(?! (?:lados?|caras?|costados?|costuras?|orillas?|juntas?|pulgadas?|por|de|y media|y cuarto|pies|piezas|esquinas?)\b)"
_BESIDE = r"(?:,|;| y| pero| nomas)+ (?:(?:y|pero|nomas|solo|la|las|le puse|con|va|van) )*"
_DONE = r"(?:(?:en)?grap|encint|teipe|tape)(?:ad[oa]|e|amos|aron|o)"
_NO_MORE = r"(?:nomas|nada mas|solamente|solo|unicamente|y ya|y es todo|y hasta ahi)"
_WORK_NOUN = r"(?:colgada|colgadera|montada|subida|instalada|colgadita)"
_THING = rf"(?:{STAPLES}|{TAPE})"
_NAMED = rf"(?:{KIND} (?:numero )?{MARK})"
_BEGINS = r"(?:^|(?<=[.;] ))"
_WRONG = r"(?:(?:hay|tengo|tiene|tuve|veo|tenemos|hubo) )?(?:(?:un |unos |algun )?(?:problemas?|detalles?|broncas?) (?:con|en)|algo (?:anda |esta |quedo |va |salio |hay )?(?:mal|raro|chueco) (?:con|en))"
_POOR = r"(?:(?:estan?|quedo|quedaron|salio|salieron|van?|se ven?) (?:muy |bien |todas? |medio |re)?(?:mal|chuec[oa]s?|fe[oa]s?|de la fregada|horribles?|rar[oa]s?|torcid[oa]s?)|no (?:sirven?|estan? bien|quedo bien|quedaron bien))"
_ONLY = r"(?:(?:y|pero) )?(?:el|la) unic[oa](?: (?:de ellos|de ellas|de los tres|de las tres|de todos|de todas|pieza|recto|codo))?"


def _only_one(done: str, said: str, cues: tuple[str, ...]) -> tuple[Plainer, ...]:
    """ "El único con cinta es el 6", "el 6 es el único que lleva cinta": it alone."""
    has = rf" (?:(?:con|que (?:ya )?(?:lleva|tiene|trae|esta|quedo|va)|ya) )*(?:la |su |las |sus )?{said}(?: puest[oa]s?)?"
    piece = rf"(?P<a>el |la )(?:{KIND} )?(?:numero )?(?P<n>{MARK})"
    return tuple(
        Plainer((" unico ", " unica ", "el unico ", "la unica "), rf"{_BEGINS}(?P<x>{whole})(?= *(?:$|[,;.]))", (("x", rf"solo \g<a>\g<n> está {done}"),), beside=cues)
        for whole in (rf"{_ONLY}{has} (?:es|era|fue) {piece}", rf"{piece} (?:es|era|fue) {_ONLY}{has}")
    )


SPANISH_TOLD_PLAINLY = (
    # --- "el tablero de esa línea es de dos pulgadas": of this piece too
    Plainer(("tablero ", "board ", "tabla ", "lamina "), r"(?:tablero|board|tabla|lamina)(?P<x> (?:de|en|para) (?:esa|esta|toda esa|toda la|toda esta) (?:linea|corrida|tirada|run|pasada|zona))(?= (?:es|era|va|mide|tiene|fue)\b)", (("x", ""),)),
    # --- a complaint of the staples of a piece says that something is the matter, and no more
    *(
        row
        for thing, bad, cues in ((STAPLES, "las grapas dudosas", ("grapa", "staple")), (TAPE, "la cinta está mal", ("cinta", "teip", "tape")))
        for row in (
            Plainer(cues, rf"{_BEGINS}(?P<x>{_WRONG} (?:la |las |el |los )?{thing} (?:del|de la|en el|en la) (?P<p>{_NAMED}))(?= *(?:$|[,;.]))", (("x", rf"\g<p>, {bad}"),)),
            Plainer(cues, rf"{_BEGINS}(?P<x>(?:la |las |el |los )?{thing} (?:del|de la|en el|en la) (?P<p>{_NAMED}) {_POOR})(?= *(?:$|[,;.]))", (("x", rf"\g<p>, {bad}"),)),
            Plainer(cues, rf"(?:^|(?<=[.,;:] ))(?P<x>(?:{_WRONG} (?:la |las |el |los )?{thing}|(?:la |las |el |los ){thing} {_POOR}))(?= *(?:$|[,;.]))", (("x", bad),)),
        )
    ),
    # --- "tres de los cuatro lados encintados": three, and not four
    Plainer(
        (" de los cuatro ", " de las cuatro ", " de los 4 ", " de las 4 "),
        r"\b(?:un[oa]?|dos|tres|[123]) (?P<x>de (?:los|las) (?:cuatro|4)(?: (?:lados|caras|costados|costuras))?)(?= (?:(?:estan|van|quedaron|son|ya|bien|si) )*(?:encintad|tapead|teipead|(?:en)?grapad|grapead)[oa]s)",
        (("x", "lados"),),
    ),
    Plainer((" unico sin ", " unica sin "), rf"{_BEGINS}(?P<x>{_ONLY} sin (?P<t>{_THING}) (?:es|era) (?P<a>el |la )(?:{KIND} )?(?:numero )?(?P<n>{MARK}))(?= *(?:$|[,;.]))", (("x", r"\g<a>\g<n> va sin \g<t>"),)),
    # --- of two things each is on its own piece
    Plainer(("grapas en", "cinta en", "tape en", "teip en", "grapas al", "cinta al"), rf"{_BEGINS}(?P<x>(?P<a>{_THING}) (?:en el|en la|al|a la) (?P<p>{_NAMED}),? (?:y )?(?P<b>{_THING}) (?:en el|en la|al|a la) (?P<q>{_NAMED}))(?= *(?:$|[;.]))", (("x", r"\g<p> lleva \g<a>, \g<q> lleva \g<b>"),)),
    # --- it alone
    *_only_one("encintado", rf"(?:{TAPE}|encintad[oa])", ("cinta", "tape", "teip")),
    *_only_one("engrapado", rf"(?:{STAPLES}|(?:en)?grapad[oa])", ("grapa", "staple")),
    # --- "yo le iba a echar mastique, porque eso quería el foreman, pero al final le puse el tape"
    Plainer(
        (" mastique", " mastic", " masilla"),
        rf"(?P<x>(?:yo |nosotros )?(?:(?:le|les|la|lo|se la|se lo) )?{_MEANT} {_TO_PUT} (?:el |la |puro |pura )?(?:mastique|mastic|masilla)\b[^.;]{{0,80}}?,? (?:pero|y|mas) (?:yo )?(?:{_AFTER_ALL},? )*)(?=(?:le |les |la |lo |se |se la |se lo )*{_DID}\b)",
        (("x", ""),),
        beside=(" pero ", " y ", " mas "),
    ),
    # --- "la colgada queda para el lunes"
    Plainer(
        tuple(f"la {noun} " for noun in ("colgada", "colgadera", "montada", "subida", "instalada", "colgadita")),
        rf"(?:^|(?<=[,.;:] )|(?<= y )|(?<= pero ))(?P<x>(?:(?:y|pero|nomas|ya) )*la {_WORK_NOUN} (?:(?:ya|se|nos|me|la|lo) )*(?:queda|quedo|va|deja|dejo|dejamos|hace|hago|hacemos|falta|sera|es|toca|viene) (?:pendiente )?(?:(?:para|pa|hasta) )?(?:el |la )?(?:{SOON}|proxim[oa]\b|semana\b|que sigue\b)(?: que (?:viene|entra))?)(?= *(?:$|[,;.]| y\b| con\b))",
        (("x", "falta colgarlo"),),
    ),
    Plainer(
        tuple(f"la {noun} " for noun in ("colgada", "colgadera", "montada", "subida", "instalada", "colgadita")),
        rf"(?:^|(?<=[,.;:] )|(?<= y )|(?<= pero ))(?P<x>(?:(?:y|pero|nomas) )*(?:(?:todavia|aun|nomas) )?(?:falta|queda pendiente|esta pendiente|dejo pendiente) la {_WORK_NOUN})(?= *(?:$|[,;.]))",
        (("x", "falta colgarlo"),),
    ),
    # --- "grapada en los tres lados nomás"
    Plainer((" los tres lados", " los dos lados", " las tres caras", " las dos caras", " los 3 lados", " los 2 lados", " las tres costuras", " las dos costuras"), rf"\b{_DONE} (?:en|por|de) (?P<x>(?:los|las) )(?:dos|tres|2|3) (?:lados|caras|costuras) {_NO_MORE}(?= *(?:$|[,;.]))", (("x", ""),)),
    Plainer((" los tres lados", " los dos lados", " las tres caras", " las dos caras", " los 3 lados", " los 2 lados", " las tres costuras", " las dos costuras"), rf"\b{_DONE} {_NO_MORE} (?:en|por|de) (?P<x>(?:los|las) )(?:dos|tres|2|3) (?:lados|caras|costuras)(?= *(?:$|[,;.]))", (("x", ""),)),
    # --- tape that he put on a register is on it
    Plainer(("rejilla", "registro", "difusor"), rf"(?:rejilla|registro|difusor) (?:numero )?{MARK}\b[^.;]{{0,50}}?(?<!no )(?<!nunca )(?<!ni )(?P<x>le (?:puse|pusimos|eche|pegue|di) (?:la |su |una )?)(?={TAPE} (?:de|181)\b)", (("x", "la encinté con "),), unless=r"\b(?:recto|codo|tramo|plenum|te|tee|offset|transicion)\b"),
    # --- "no son cuarenta de largo, son treinta y seis": how long it is not
    Plainer((" largo,", " largo.", " largo;", " largo sino", " largo son", " largo es"), rf"(?P<x>\bno (?:son|es|mide|miden|eran|era|fueron) (?:{COUNT}|{FRAC})(?: (?:y media|pulgadas|y media pulgadas))? de largo[,.;]? (?:sino (?:que )?)?)(?P<s>(?:son|es|mide|miden|eran|era|fueron) )?(?P<n>{COUNT})(?P<y>(?: (?:y media|pulgadas))*)(?= *(?:$|[,;.]))", (("x", ""), ("y", r"\g<y> de largo"))),
    # --- "cinta en tres, grapa en los cuatro", "los cuatro con grapas, tres con cinta": of the sides
    *(
        Plainer(
            (" cuatro", " 4"),
            rf"\b(?:{STAPLES}|{TAPE}|{_DONE}) {_HERE}(?:(?:en|por) )?(?:l[oa]s )?(?:{one})(?:(?P<x>){_SIDED}| {_SIDES}){_BESIDE}(?:{STAPLES}|{TAPE}|{_DONE}) {_HERE}(?:(?:en|por) )?(?:l[oa]s )?(?:{other})(?:(?P<y>){_SIDED}| {_SIDES})(?= *(?:$|[,;.]| y | pero | nomas| nada mas| porque | pues ))",
            (("x", " lados"), ("y", " lados")),
        )
        for one, other in (("tres|dos|3|2", "cuatro|4"), ("cuatro|4", "tres|dos|3|2"))
    ),
    *(
        Plainer(
            ("cuatro", "4 "),
            rf"(?:^|(?<=[,;.] ))(?:l[oa]s )?(?:{one})(?P<x>){_SIDED} (?:(?:va|van|lleva|llevan|tiene|tienen|quedo|quedaron) )?con (?:la |las )?(?:{STAPLES}|{TAPE}){_BESIDE}(?:l[oa]s )?(?:{other})(?P<y>){_SIDED} (?:(?:va|van|lleva|llevan|tiene|tienen|quedo|quedaron) )?con (?:la |las )?(?:{STAPLES}|{TAPE})\b",
            (("x", " lados"), ("y", " lados")),
        )
        for one, other in (("tres|dos|3|2", "cuatro|4"), ("cuatro|4", "tres|dos|3|2"))
    ),
    # --- "a 44 grados así nomás": taped in the cold as it was
    Plainer((" grados asi", " grados, asi", " grados y asi", " grados nomas asi"), rf"\ba (?:{COUNT}) grados(?P<x>,? (?:y )?(?:nomas )?asi (?:nomas|no mas|en frio|frio|fria|como estaba|mero|pelon|sin mas))(?= *(?:$|[,;.]| y | porque | l[oa] ))", (("x", ", sin calentar"),), beside=("cinta", "tape", "teip", "encint", "181"), unless=r"\b(?:codo|angulo|giro|inclin\w*) (?:\w+ )?(?:de|a) \w+ grados|\b(?:calent|precalent)\w*"),
)
