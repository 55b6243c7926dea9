"""Spanish words of forms and tags, and everyday words that bear a piece's number. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.es import taken_for as es_taken_for
from logbook.languages.language import Forms

_OFF = r"(?:(?:le|les|se|la|lo|las|los|me|nos|ya) )*(?:(?:tuve que|tuvimos que|hubo que|hicieron|mandaron(?: a)?|hizo) )?(?:quit|saq|sac|arranq|arranc|despeg|pel|rasp|remov|jal|tumb|bot|vol|desprend)(?:[eé]|u[eé]|[ií]|amos|imos|ar|arle|arlas?|er|erle)"
_ON = r"(?:(?:le|les|se|la|lo|las|los|ya|ahora|mejor|luego|después|despues|entonces) )*(?:puse|pusimos|met[ií]|metimos|ech[eé]|di|peg[uú]?[eé]|us[eé]|clav[eé]|tir[eé]|corr[ií]|va con|cerr[eé] con|volv[ií] a (?:poner|meter|cerrar con)|lleva|quedó con|quedo con|va|van)"
_OLD = r"(?:(?:la|el|las|los|de|que|toda|todas|todo|esa|ese|esas|tra[ií]a|ten[ií]a|le|hab[ií]a|puesto|puse|vieja|viejas|primera|primeras|gris|plateada|ancho|pulgadas?|mal|chuecas|estaban?|iban?|pata) )*?"
_NEW = r"(?:(?:la|el|las|los|una|unas|de|otra|otras|nueva|nuevas|ahora|cinta|tape|teip|grapas?|grapa|que|es|son|a) )*?"
_THEN = r"(?:[,.] |(?:y|pero|luego|despu[eé]s|entonces|mejor|ya|ah[ií]|en su lugar) )+"
_NOUN = r"(?:(?:la|el|las|los|toda la|todas las) )?(?P<noun>cinta|tape|teip|grapas|grapa|tabs|tiras|pestañas|la(?= de <m>)|las(?= de <m>))"

SPANISH_FORMS = Forms(
    thought=es_taken_for.THOUGHT,
    thought_so=es_taken_for.THOUGHT_SO,
    found_by=es_taken_for.FOUND_BY,
    beyond=r"(?<!\w)(?<!\bno )(?<!\bni )(?<!nunca )(?:(?:un |una )?(?:poco|poquito|pelito|pelo|cachito|tantito|pizca) (?:m[áa]s|arriba|menos) de|m[áa]s de|arriba de|pasad[oa]s? de)$",
    and_more=r"(?:,? (?:y|o) (?:pico|cacho|feria|algo|tantito|un (?:pelito|poquito|poco|cachito)(?: m[áa]s)?|m[áa]s)|,? (?:pasadit|corrid)[oa]s)(?= de separaci[óo]n| entre|[,.;]|$)",
    swap_verbs=r"(?:quit|sac|saq|arranc|arranq|despeg|pel|rasp|remov|jal|tumb|bot|vol|desprend|cambi|reempla|sustitu)\w*",
    swap_nouns=(("TAPED", frozenset(("cinta", "tape", "teip", "la"))), ("STAPLES", frozenset(("grapas", "grapa", "las"))), ("TABS", frozenset(("tabs", "tiras", "pestañas")))),
    swaps=(
        rf"(?P<off>{_OFF} {_NOUN} ){_OLD}(?:cada )?(?P<old><m>) {_OLD}(?P<link>{_THEN}{_ON} ){_NEW}(?:cada )?(?P<new><m>)",
        rf"(?P<off>(?:(?:le|les|se) )*(?:cambi|reemplac|sustitu)(?:[eé]|amos|[ií]) {_NOUN} ){_OLD}(?:cada )?(?P<old><m>) (?P<link>(?:por|a|con) ){_NEW}(?:cada )?(?P<new><m>)",
        rf"(?P<old><m>) {_OLD}(?P<link>{_THEN}{_OFF} (?:(?![.<])\S+ ){{0,10}}?(?:ahora )?{_ON} ){_NEW}(?P<new><m>)",
        rf"(?P<off>{_OFF} ){_OLD}(?P<old><c>) {_OLD}(?P<link>{_THEN}{_ON} ){_NEW}(?P<new><c>)",
        rf"(?P<off>(?:(?:le|les|se) )*(?:cambi|reemplac|sustitu)(?:[eé]|amos|[ií]) ){_OLD}(?P<old><c>) {_OLD}(?P<link>(?:por|a|con) ){_NEW}(?P<new><c>)",
        rf"(?P<old><c>) {_OLD}(?P<link>{_THEN}{_OFF} {_THEN}{_ON} ){_NEW}(?P<new><c>)",
    ),
    lettered={"Y": "K_WYE", "T": "K_TEE"},
    same_noun=(("el", r"(?:o|et|[ií]n|um|ap[oó]n)$"), ("la", r"(?:a|ci[oó]n|te)$")),
    before_lettered=frozenset(("la", "una")),
    first=(("K_BRANCH", frozenset(("toma",))), ("K_TRANSITION", frozenset(("tr", "trn", "trs"))), ("K_ELBOW", frozenset(("cod", "cd"))), ("K_COLLAR", frozenset(("coll", "clr")))),
    numbered=(("K_HANGER", frozenset(("soporte", "colgador", "colgante"))),),
    before_measure=(("K_HANGER", frozenset(("soporte", "colgador", "colgante"))),),
    everyday=(
        ("FITTING", frozenset(("ducto", "conducto"))), ("K_BRANCH", frozenset(("derivación", "derivacion"))), ("K_EQUIPMENT_CONNECTION", frozenset(("conexión", "conexion"))),
        ("K_DAMPER_SLEEVE", frozenset(("manguito",))),
    ),
    not_begun=frozenset("empezado comenzado hecho armado tocado cortado iniciado agarrado trazado".split()),
)
