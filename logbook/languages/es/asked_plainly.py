"""Spanish of a question that another put and of what he was told: "me preguntó si tallé la 24 y la verdad no". The answer is read as if it stood alone.

Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, FRAC, KIND, MARK, STAPLES, STOP, TAPE
from logbook.languages.plainer import Plainer

_WHO = r"(?:(?:el|la|los|mi|un|don|doña|ese|ahi) )?[^\W\d]\w+(?: de \w+)?"
_ASKS = rf"(?:(?:{_WHO} )?(?:(?:me|nos|le) )?(?:pregunt(?:o|aron|a|an|aba|aste|as)|(?:queria|querian|quiere) saber)(?: {_WHO})?|que)"
_ASKED = rf"(?:^|(?<=[,.;:] )){_ASKS}"
_THING = rf"(?:{TAPE}|{STAPLES}|aletas?|vanes?|aspas?|guias?|alabes?|paletas?|tabs?|lenguetas?|pestañas?|solapas?|flap|rondanas?|washers?|tallada|colgantes?|soportes?|hangers?)"
_OF_WHAT = rf"(?:(?:(?:las?|los|el) {_THING} (?:de la|del|de el) |a la |al |la |el )(?:{KIND} )?(?:numero )?{MARK},? (?:ya |si )?)?"
_SAID = r"(?:le |les )?(?:tuve que (?:decir|contestar|responder|confesar)(?:les?)?|dije|dijimos|conteste|contestamos|respondi|confese)(?: que)?"
_SO = rf"[,;.]? ?(?:(?:y|pero|pues|yo|bueno|ahi|la (?:mera |neta )?(?:verdad|neta)(?: es)?(?: que)?|{_SAID}),? )+"
_NO = r"(?:todavia |aun )?(?:no|nel|tampoco)"
_ENDS_NO = rf"(?P<y>{_SO}{_NO})(?: l[oae]s? \w+| \w+o| hay)?{STOP}"
_CUES = ("pregunt", "queria saber", "querian saber", "quiere saber")

SPANISH_ASKED_PLAINLY = (
    # --- "preguntó si la 3 llevaba aletas y le dije que no", "que si tallé la 24, y pues no"
    Plainer(_CUES, rf"(?P<x>{_ASKED} (?:que )?)(?P<n>si (?:ya |si )?)(?!no |sus? |(?:a la|al|la|el|las|los) )[^.;?]{{4,120}}?{_ENDS_NO}", (("x", ""), ("n", "no "), ("y", "."))),
    Plainer(_CUES, rf"(?P<x>{_ASKED} (?:que )?si (?:ya |si )?){_OF_WHAT}(?P<n>)(?!no |sus? )[^.;?]{{4,120}}?{_ENDS_NO}", (("x", ""), ("n", "no "), ("y", "."))),
    Plainer(_CUES, rf"(?P<x>{_ASKED} (?:que )?si (?:ya |si )?){_OF_WHAT}(?!no |sus? )[^.;?]{{4,120}}?(?P<y>{_SO}(?:si|claro|claro que si|ya|simon)){STOP}", (("x", ""), ("y", ""))),
    # --- "preguntó por las aletas del codo 5 y le tuve que decir que no trae"
    Plainer(
        _CUES,
        rf"(?P<x>{_ASKED} por )(?:las?|los|el) {_THING} (?P<z>de la |del |de el )(?:{KIND} )?(?:numero )?{MARK}(?:, que (?:es|va|esta) [^,.;?]{{3,40}})?(?P<y>,?{_SO}{_NO}(?: (?:le |les |la |las |lo |los )?(?:trae|lleva|tiene|hay|puse|pusimos|meti|metimos|traia|llevaba|tenia|van?|quedaron|alcanzo|alcanzaron))?(?: ningun[oa]s?| nada)?){STOP}",
        (("x", "no lleva "), ("y", "")),
    ),
    # --- "preguntó a cuánto corre la línea y le dije que a dos y media"
    Plainer(_CUES, rf"(?P<x>{_ASKED} (?:(?:a|de|por|en) )?(?:cada )?(?:cuant[oa]s?|que|como) (?P<v>es|esta|estan|van?|corre|son|quedo|quedaron|anda|andan|trae|lleva|mide|miden|trabaja|jala) )[^.;?]{{4,60}}?(?P<y>{_SO})(?=(?:(?:a|de|cada|a cada|en|es|son) )+(?:{COUNT}|{FRAC})\b)", (("x", ""), ("y", r" \g<v> "))),
)
