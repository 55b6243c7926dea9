"""What Spanish thumbs and keyboards leave out, and the words that other countries have for the same things. Not reviewed by a native speaker.

A staple is a grapa, a corchete, a presilla or a grampa, and tape is cinta, huincha, teipe or tirro: the note is read with the words that the
patterns of this language are written with, so that what is known of one is known of all.
"""

from __future__ import annotations

from logbook.languages.es.other_names import SPANISH_OTHER_NAMES
from logbook.languages.thumbs import Short, Thumbs

# typed on a keyboard without ñ
_TILDE = {
    "manana": "mañana", "mananita": "mañanita", "pestana": "pestaña", "pestanas": "pestañas", "pestanita": "pestañita", "pestanitas": "pestañitas", "companero": "compañero", "companeros": "compañeros", "compania": "compañía",
    "dano": "daño", "danos": "daños", "danado": "dañado", "danada": "dañada", "dano'": "dañó", "tamano": "tamaño", "pequeno": "pequeño", "pequena": "pequeña", "diseno": "diseño", "senal": "señal", "senalado": "señalado", "bano": "baño", "anos": "años",
    "rasguno": "rasguño", "rasgunos": "rasguños", "rasgunado": "rasguñado", "aranazo": "arañazo", "punado": "puñado", "munon": "muñón", "otono": "otoño", "ensenar": "enseñar",
}

_ENDS = "é e amos ó o aron ado ada ados adas ar arla arlo arlas arlos arle ando".split()


def _verbs(stems: str, means: str) -> tuple[Short, ...]:
    return tuple(Short(f"{stem}{end}", f"{means}{end}", same=True) for stem in stems.split() for end in _ENDS)


def _things(words: str, means: str, before: str = "", after: str = "") -> tuple[Short, ...]:
    return tuple(Short(one.replace("_", " "), means, before=before, after=after, same=True) for one in words.split())


_NO_CLAMP = r"(?<!colgado con )(?<!colgada con )(?<!sujeto con )(?<!sujeta con )(?<!colgados con )$"
_NO_FAN = r"(?!\s+del? (?:el |la |los |las )?(?:ventilador|abanico|motor|extractor|fan))"

# as the word sounds, by hands that write as they speak
_PARTICIPLE = r"\s+(?:\w+[aei]d[oa]s?|puesto|hecho|echo|dicho|visto|abierto|roto)\b"
_BY_EAR = (
    *_things("sinta cinata sintas", "cinta"),
    *_things("tepe teipp teid", "teip", before=r"\b(?:el|sin|con|de|del|puro|le|falta|su|y|ni|poner|puse|cinta) $"),
    *_things("grapaz granpas grapss grappas", "grapas"),
    *_things("steiples steipls esteipols esteiples estaipols estaples esteipol steipels steipol estipols", "grapas"),
    *_things("banes benes beins veins vains veines bains vans", "aletas", before=r"\b(?:las|los|sin|con|sus|ni|y|de|habia|había|hay|hubo|puse|faltan|falta|no|lleva|llevan|trae|tiene|mis|unas) $", after=r"(?!\s+(?:de (?:la|los|el)|blancas|con (?:el|la) material))"),
    *_things("haletas alletas aletaz veletas veletillas", "aletas", after=_NO_FAN),
    *_things("veleta", "aleta", after=_NO_FAN),
    *_things("tornins turnins turning_veins turning_beins turning_banes", "aletas"),
    *_verbs("ensint sint encimt ensimt encit tepe teipi tayp taypi tapi", "encint"),
    *_verbs("steipl steiple esteiple esteipl steiplel estaiple estaipl estiple engrp engrrap emgrap engrab", "engrap"),
    *_things("ise ize hise hize", "hice"),
    *_things("asta", "hasta", before=r"(?<!el )(?<!un )(?<!la )$"),
    *_things("todabia toavia toabia tovia entodavia todvia", "todavía"),
    *_things("yeba yeva yebaba", "lleva"),
    *_things("yeban yevan", "llevan"),
    *_things("abia", "había"),
    *_things("kedo qedo kedó keda", "quedó"),
    *_things("aser acer aserle", "hacer", before=r"\b(?:por|falta|voy a|sin|de|que|va a) $"),
    *_things("fata", "falta"),
    *_things("e", "he", before=r"\b(?:no|nunca|tampoco|yo|ya|que|lo|la|le|les|los|las|me|se) $", after=_PARTICIPLE),
    *_things("a", "ha", before=r"\b(?:se|no se|no le|no lo|no la) $", after=_PARTICIPLE),
    *_things("emos", "hemos"),
    *_things("q k ke qe", "que", before=r"\b(?:hay|ay|tengo|tenemos|tiene|ya|para|pa|lo|la|el|los|las|dice|dijo|creo|por|mas|hasta|nomas|asi|igual|porque|es|tubo|tuve) $"),
    *_things("ay", "hay", before=r"\b(?:no|ya no|ya|si|todavía|todavia|le|nomas|aun no) $", after=r"\s+(?!\w*[,.;]|en la|esta|est[aá])"),
)

_NO_ORDER = r"(?<!y )(?<!y ya )(?<!primero )(?<!desde )(?<!que )$"
_DEED = r"(?:tall|frot|planch|alis|sob|restrieg|repas|bruñ|encint|teip|tape|engrap|grap|clav|dispar|coloc|acomod|instal|atornill|fij|arm|plant|aplic|limpi|parch|dobl|recort|termin|complet|sell|cierr|pong|met|ech|tir|corr|peg|remat|caliento|precalient)"
_STUFF = r"(?:aletas|vanes|grapas|cinta|tape|teip|mastique|tabs|pestañas|tiras|tallada)"

SPANISH_THUMBS = Thumbs(
    shorts=(
        *SPANISH_OTHER_NAMES,
        *_BY_EAR,
        # as it is said on the islands: "aletas no lleva na'", "un chin de tape"
        *_things("na na'", "nada", before=r"\b(?:no|ni|nunca)\b[^.,;]{0,30}$"),
        *_things("chin chinchín chinchin", "poco", before=r"\bun $"),
        # of a joint: "la junta no asienta"; a panel seats or does not
        *_things("no_cerró no_me_cerró no_nos_cerró no_le_cerró no_cerraron no_me_cerraron no_asienta no_asientan no_asentó no_embona no_embonan no_embonó no_encaja no_encajó no_ensambla no_pega_bien no_llega no_llegan no_alcanza no_quedó_apretada no_quedaron_apretadas", "no cierra", before=r"\b(?:juntas?|costuras?|uni[oó]n|uniones|esquinas?)(?: (?:de (?:abajo|arriba|atr[aá]s|en medio|un lado)|con (?:el|la) \w+))? $"),
        # not yet, told with "luego" and without an accent: "encintado, luego la tallo"
        *_things("luego", "al rato", before=r"(?<!y )(?<!primero )$", after=r"\s+(?:ya )?(?:se )?l[oae]s?\s+(?:tall|frot|encint|teip|teipe|tape|engrap|grap|grape|limpi|parch|dobl|recort|termin|acab|complet|cierr|pong|met|ech|d)\w*(?:o|oy)\b(?=\s*(?:$|[.,;]))"),
        # a deed told in the present behind "luego" or "ahorita", and what comes then: "después la plancho", "luego le coloco las aletas", "luego van las grapas"
        *_things("luego después despues ahorita orita", "al rato", before=_NO_ORDER, after=rf"\s+(?:ya )?(?:(?:se l[aeo]s?|l[aeo]s?)\s+{_DEED}\w*o\b(?!\s+que\b)|(?:va|van)\s+(?:la|las|el|los)\s+{_STUFF}\b(?=\s*(?:$|[.,;]))|(?:me |nos )(?:traen|llegan|mandan|surten)\b|llegan\s+(?:la|las|el|los)\s+{_STUFF}\b)"),
        *(Short(f"{the} rub", "la tallada", after=r"(?! ?-?down)", same=True) for the in ("el", "su")),
        *_things("raspado", "tallado", before=r"\b(?:encintad[oa]|tapead[oa]|teipead[oa]|cinta|tape|teip)(?: y|, ?y?|,) $"),
        *_things("raspada", "tallada", before=r"\b(?:encintad[oa]|tapead[oa]|teipead[oa]|cinta|tape|teip)(?: y|, ?y?|,) $"),
        # a mend still to come: "pendiente de parche", "ocupa un parche"
        *(Short(f"{asks} {one}parche", "falta parcharlo", same=True) for asks in ("pendiente de", "pendiente el", "ocupa", "requiere", "pide", "necesita", "le hace falta", "está para") for one in ("", "un ", "su ")),
        # the foil that is put on is tape
        *_things("la_foil", "la cinta", before=r"\b(?:falta|faltan|sin|puse|ponerle|poner|puesto|eché|metí|pendiente|corrí|pegué|pegar|lleva|trae|tiene|con) $"),
        *(Short(bare, meant, same=True) for bare, meant in _TILDE.items()),
        *_things("grampa presilla corchete", "grapa", before=_NO_CLAMP),
        *_things("el_corchete", "la grapa"),
        *_things("los_corchetes", "las grapas"),
        *_things("unos_corchetes", "unas grapas"),
        *_things("grampas presillas corchetes", "grapas", before=_NO_CLAMP),
        *_things("grampadora engrampadora presilladora corchetera corcheteadora", "engrapadora"),
        *_verbs("presill gramp engramp corchet corchete corcheti enpresill empresill", "engrap"),
        *_things("huincha tirro", "cinta"),
        *_things("huinchas tirros", "cintas"),
        *_things("teipe taipe taip teyp teype tey", "teip"),
        *_verbs("enhuinch huinch enteip enteipe taipe teype", "encint"),
        *_things("los_álabes los_alabes los_deflectores los_vanes", "las aletas"),
        *_things("unos_álabes unos_alabes unos_deflectores", "unas aletas"),
        *_things("álabes alabes venas deflectores aspas paletas guías guias turning_vanes álabes_guía", "aletas", after=_NO_FAN),
        Short("ele", "codo", after=r"\s+(?:n[uú]mero\s+|#\s*)?\d", same=True),
    ),
    slips=tuple("encintado encintada engrapado engrapada grapado grapada tallado tallada aletas grapas cinta pendiente falta faltan parchado transición reducción mastique pestañas tornillos rondanas".split()),
    true_words=frozenset("cita cita citas cinto pinta quinta tinta cinata talada talado tablado tablada callado callada hallado hallada fallado fallada talla tallas taller talar callar hallar fallar gapas capas tapas grasas grapa grapas aleta alertas atletas letras paletas alteas galletas paleta falla falda alta salta faltas faltar faltante faltara faltado fatal malta saltan faltaban galtan pestaña tornillo rondas rondana recorta recortes reporte recodo deporte resorte record parcado parado marchado pachado grabado grabada gradado raspado raspada rapado rapada trapado cinturas pendientes dependiente engranado engrasado engrasada encontrado encontrada encantado encantada rayado rayada tapado tapada pintado pintada tirada tirado tallador tallaron tallan tarado tasado encantar encontrar engrasar engrapas encintas encinta encinte engrape engrapo encinto encentar traslado mastiquen masique asaltan saltar engrapara engraparan encintara grapara tallara engrapaba encintaba grapaba tallaba parchara parchaba halla calla fallan hallan callan tallara".split()),
    keys="qwa wqeasd ewrsd retdf trygf ytuhg uyijh iuokj oiplk pol awsqz sawdezx dserfcx fdrtgvc gftyhbv hgyujnb jhuikmn kjiolm lkop zasx xzsdc cxdfv vcfgb bvghn nbhjm mnjk",
    yes=r"[✓✔✅☑👍]\ufe0f?|\[[xX✓✔vV]\]",
    no=r"[✗✘❌☒👎☐❎]\ufe0f?|\[[ _]?\]",
    ticked=r"\b(?:(?:en)?grap|encint|cint|te?ip|tape|tall|frot|plan?ch|alet|vane|limpi|trapo|tabs?|pestañ|lengüet|varill|refuerz|mast|flap|solapa|calent|precal|colg|rub)\w*(?: (?:de giro|de refuerzo|abajo|arriba|down))?\s*[:=(-]?\s*$",
    was_done=r"(?:\w+[aei]d[oa]s?|limpi[oa])\b",
    denials=("no", "sin"),
)
