"""Spanish that tells the same of all pieces of a note in a sentence behind them: "a los dos les falta tallar", "ninguno está tallado", "no les puse grapas".

Their numbers are put in its place: two pieces or three, each named in a sentence of its own. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import KIND, MARK
from logbook.languages.plainer import Plainer

_NAMED = rf"{KIND} (?:numero )?"
_TELLS = rf"[,:]? (?:(?!\b{KIND}\b|\b(?:el|la|al) (?:numero )?\d)[^.;?!])+[.;] "  # a sentence that names no other
_CUES = (" les ", " l", " ningun", " amb", " el par", " ni ", " estan ", " quedaron ", " tod", " las dos", " llevan ", " tienen ", ". les ", ". no les", ". estan ", ". quedaron ", ". ningun", ". tod", ". amb", ". a ", ". hay que ", ". me falta ", ". no l")
_ACTED = r"(?:he|hemos|alcance|pude|talle|frote|encinte|engrape|grape|limpie|planche)"
_IS = r"(?:esta|quedo|va|lleva|trae|tiene|fue)n?"


def _of(count: str, pieces: str, dative: str, nominative: str) -> tuple[Plainer, ...]:
    """For so many pieces, as `count` has them."""
    led = rf"^{pieces}(?:(?:y|pero|bueno|ah) )?"
    group = rf"(?:l[oa]s {count}(?: piezas)?|amb[oa]s(?: piezas)?|tod[oa]s)"
    return (
        Plainer(_CUES, rf"{led}(?P<x>(?:a {group},? )?)(?=(?:todavia |aun |tambien )?(?:no )?les (?:falt\w+|hace falta|puse|pusimos|meti|metimos|eche|echamos|di|dimos|pase|pasamos|hice|hicimos|queda)\b)", (("x", f"{dative} "),)),
        Plainer(_CUES, rf"{led}(?P<x>(?:ningun[oa](?: de (?:l[oa]s {count}|ell[oa]s))?|ni (?:el |la )?un[oa] ni (?:el |la )?otr[oa])) (?={_IS} )", (("x", f"{nominative} no"),)),
        Plainer(_CUES, rf"{led}(?P<x>(?:l[oa]s {count} piezas|est[oa]s(?: {count})?(?: piezas)?|tod[oa]s|el par|amb[oa]s piezas)) (?=(?:todavia |aun )?(?:no )?(?:{_IS}|falta)\b)", (("x", nominative),)),
        Plainer(_CUES, rf"{led}(?P<x>)(?=(?:todavia |aun )?(?:no )?(?:estan|quedaron|van|llevan|tienen|traen) (?:sin|tallad|encintad|(?:en)?grapad|frotad|grapas|cinta))", (("x", f"{nominative} "),)),
        Plainer(_CUES, rf"{led}(?P<x>)(?=(?:todavia |aun )?no l[oa]s {_ACTED}\b)", (("x", f"{nominative} "),)),
        Plainer(_CUES, rf"{led}(?P<x>)(?=(?:todavia |aun )?(?:(?:hay|tengo|tenemos) que|(?:me |nos )?falta) \w+[aei]r(?:l[oa]s|les)\b)", (("x", f"{dative} "),)),
    )


_TWO = rf"(?:el |la |un |una )?{_NAMED}(?P<a>{MARK}){_TELLS}(?:y |el |la |un |una )*{_NAMED}(?P<b>{MARK}){_TELLS}"
_THREE = rf"{_TWO}(?:y |el |la |un |una )*{_NAMED}(?P<c>{MARK}){_TELLS}"

SPANISH_OF_ALL_OF_THEM = (
    *_of("dos", _TWO, r"al \g<a> y al \g<b>", r"el \g<a> y el \g<b>"),
    *_of("tres", _THREE, r"al \g<a>, al \g<b> y al \g<c>", r"el \g<a>, el \g<b> y el \g<c>"),
)
