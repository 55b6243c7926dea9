"""Spanish of what was only meant, of work that waits under a noun, of sides counted with their article, and of tape on a register. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, FRAC, MARK, SOON, TAPE
from logbook.languages.plainer import Plainer

_MEANT = r"(?:iba|ibamos|pensaba|pensabamos|queria|queriamos|quise|estaba por|andaba por)(?: a)?"
_TO_PUT = r"(?:echar|poner|meter|dar|untar|aplicar|pegar|sellar|cerrar|usar)(?:le|la|lo|les)?(?: con)?"
_AFTER_ALL = r"(?:al final|al ultimo|mejor|siempre|luego|despues|ya|de plano|a la mera hora|termine y|acabe y|por fin)"
_DID = r"(?:puse|pusimos|eche|echamos|meti|metimos|di|dimos|encinte|encintamos|pegue|pegamos|selle|sellamos|use|usamos)"
_DONE = r"(?:(?:en)?grap|encint|teipe|tape)(?:ad[oa]|e|amos|aron|o)"
_NO_MORE = r"(?:nomas|nada mas|solamente|solo|unicamente|y ya|y es todo|y hasta ahi)"
_WORK_NOUN = r"(?:colgada|colgadera|montada|subida|instalada|colgadita)"

SPANISH_TOLD_PLAINLY = (
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
)
