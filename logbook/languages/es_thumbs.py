"""What Spanish thumbs and keyboards leave out, and the words that other countries have for the same things. Not reviewed by a native speaker.

A staple is a grapa, a corchete, a presilla or a grampa, and tape is cinta, huincha, teipe or tirro: the note is read with the words that the
patterns of this language are written with, so that what is known of one is known of all.
"""

from __future__ import annotations

from logbook.languages.thumbs import Short, Thumbs

# typed on a keyboard without ñ
_TILDE = {
    "manana": "mañana", "mananita": "mañanita", "pestana": "pestaña", "pestanas": "pestañas", "pestanita": "pestañita", "pestanitas": "pestañitas", "companero": "compañero", "companeros": "compañeros", "compania": "compañía",
    "dano": "daño", "danos": "daños", "danado": "dañado", "danada": "dañada", "dano'": "dañó", "tamano": "tamaño", "pequeno": "pequeño", "pequena": "pequeña", "diseno": "diseño", "senal": "señal", "senalado": "señalado", "bano": "baño", "anos": "años",
    "rasguno": "rasguño", "rasgunos": "rasguños", "rasgunado": "rasguñado", "aranazo": "arañazo", "punado": "puñado", "munon": "muñón", "otono": "otoño", "ensenar": "enseñar",
}

_ENDS = "é amos ó aron ado ada ados adas ar arla arlo arlas arlos arle ando".split()


def _verbs(stems: str, means: str) -> tuple[Short, ...]:
    return tuple(Short(f"{stem}{end}", f"{means}{end}", same=True) for stem in stems.split() for end in _ENDS)


def _things(words: str, means: str, before: str = "", after: str = "") -> tuple[Short, ...]:
    return tuple(Short(one.replace("_", " "), means, before=before, after=after, same=True) for one in words.split())


_NO_CLAMP = r"(?<!colgado con )(?<!colgada con )(?<!sujeto con )(?<!sujeta con )(?<!colgados con )$"
_NO_FAN = r"(?!\s+del? (?:el |la |los |las )?(?:ventilador|abanico|motor|extractor|fan))"

SPANISH_THUMBS = Thumbs(
    shorts=(
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
    yes=r"[✓✔✅☑👍]\ufe0f?|\[[xX✓✔vV]\]",
    no=r"[✗✘❌☒👎☐❎]\ufe0f?|\[[ _]?\]",
    ticked=r"\b(?:(?:en)?grap|encint|cint|te?ip|tape|tall|frot|plan?ch|alet|vane|limpi|trapo|tabs?|pestañ|lengüet|varill|refuerz|mast|flap|solapa|calent|precal|colg|rub)\w*(?: (?:de giro|de refuerzo|abajo|arriba|down))?\s*[:=(-]?\s*$",
    was_done=r"(?:\w+[aei]d[oa]s?|limpi[oa])\b",
    denials=("no", "sin"),
)
