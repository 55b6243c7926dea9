"""Spanish turns of what lay on the facing: "traía aceite y no me di cuenta hasta que ya le había puesto la cinta". Without accents. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.es.plainer import KIND, MARK
from logbook.languages.es.whole_turns_words import DIRT, SOILED_ENDS
from logbook.languages.turns_of_words import Turn

_DIRT = DIRT
_HAD = r"(?:tenia|traia|tiene|trae|estaba (?:con|llen[oa] de)|esta (?:con|llen[oa] de)|quedo (?:con|llen[oa] de)|venia (?:con|llen[oa] de)|habia)"
_SOME = r"(?: (?:un poco de|poquit[oa]|tantit[oa]|mucho|mucha|algo de|bastante|todo el|toda la|puro|pura|el|la))?"
_ON_WHAT = rf"(?:superficie|foil|forro|facing|papel|aluminio|cara|carton|{KIND} (?:numero )?{MARK})"
_NEVER_CLEANED = r"^(?!.*\b(?:limpi|sacud|quit|sequ|sec[oa]\b|trap|sopl|franela|estopa|lij))"
_TAPED = r"(?:encint|cinta|tape|teip|foil)"

SOILED: tuple[Turn, ...] = (
    # "estaba todo empolvado y así le puse la cinta"
    Turn(r"\basi\b", rf"\b(?P<w>(?:estaba|andaba|venia|quedo|esta|traia|tenia|seguia|salio) (?:(?:todo|toda|bien|muy|medio|lleno de|puro|pura) )*(?:{_DIRT}|{SOILED_ENDS}|hech[oa] un \w+|mojad[oa]|humed[oa]))\b[^;]{{0,40}}?\basi (?:mismo |nomas |mero |mismito )?(?:(?:le|la|lo|se la) )*(?:puse|pegue|encinte|tape|eche|selle|cerre|teipee)\w*", (("surface_clean", False),), beside=_NEVER_CLEANED, unless=r"\bno (?:estaba|andaba|venia|esta|traia|tenia)\b"),
    # "lo que le hallé fue grasa en la cara, debajo de la cinta"
    Turn(rf"\b{_DIRT}\b", rf"\b(?:le |les |se le |l[oa] que )*(?:halle|hallamos|encontre|encontramos|vi|note|salio|descubri|queda|quedo|habia|hay) (?:(?:al|a la|en el|en la|del) (?:{KIND} )?(?:numero )?{MARK} )?(?:(?:fue|era|es|puro|pura|un poco de|tantit[oa]|mucho|mucha|algo de) )*(?P<w>{_DIRT})\b[^;.]{{0,60}}?\b(?:debajo|abajo|atras|adentro|entre|bajo) (?:de )?(?:la |el )?{_TAPED}\b", (("surface_clean", False), ("taped", True)), unless=r"\b(?:no|ni|sin|nada de|nunca) "),
    # he found out once it was taped
    Turn(rf"\b{_DIRT}\b", rf"\b(?P<w>{_HAD}{_SOME} {_DIRT})\b[^;]{{0,40}}? (?:no )?(?:me|nos) di(?:mos)? cuenta (?:hasta|sino|cuando|despues|ya)\b[^;]{{0,40}}?{_TAPED}\w*", (("surface_clean", False),), beside=_NEVER_CLEANED),
    # "había lodo cuando encinté", "encinté con el foil todo manchado"
    Turn(rf"\b{_DIRT}\b", rf"\b(?P<w>(?:habia|hay|quedaba|le quedaba|tenia|traia){_SOME} {_DIRT})\b(?: (?!no\b|ni\b)\w+){{0,5}} (?:cuando|al) (?:(?:le|la|lo|yo|se la) )*(?:puse|pegue|encint\w+|tape\w*|eche|selle|cerre|teipe\w*)\b", (("surface_clean", False),), beside=_NEVER_CLEANED, unless=r"\bno "),
    Turn(r"\bni modo\b", rf"\b(?:{_ON_WHAT}) (?:andaba|estaba|venia|anda|esta) (?:(?:todo|toda|bien|muy|medio|algo) )*(?:{SOILED_ENDS}|empapad[oa]|mojad[oa]|humed[oa])\b", (("surface_clean", False),), beside=_TAPED, unless=r"\bno "),
    Turn(r"\bno \w*", r"\bno (?:(?:l[oa]s?|le|les|se) )*(?:sacudi(?:mos|o)?|trape(?:e|amos|o)|sopl(?:e|amos|o)|desempolv(?:e|amos|o)|sequ(?:e|o)|secamos)\b(?! (?:la mano|las manos|los lentes))", (("surface_clean", False),), beside=_TAPED),
    Turn(r"\ben mojado\b|\ben humedo\b|\bsobre mojado", r"\b(?:encint|tape|teip|pegu|selle|puse|cerr)\w*(?: (?:la|el)? ?(?:cinta|tape|teip))? (?:asi )?(?:en|sobre) (?:lo )?(?:mojado|humedo)\b", (("surface_clean", False), ("taped", True)), unless=r"\b(?:no|nunca) "),
    # it lay there, and nobody took it off
    Turn(rf"\b{_DIRT}\b", rf"\b{_ON_WHAT} (?:ya |si |todavia )?{_HAD}{_SOME} {_DIRT}\b", (("surface_clean", False),), beside=_NEVER_CLEANED, unless=r"\b(?:no|ni|sin|nada|nunca)\b"),
)
