"""Spanish that sets right which piece it is or of what kind, told behind other things of it: "grapas cada dos. Perdón, no es el 18, es el 19", "no es recto,
es codo". The words become those that are known to set right what stands last, and the numbers in them are no measure.

Rows like those of `plainer.py`; they are looked for before the pieces are told apart. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT, FRAC, KIND, MARK, STOP
from logbook.languages.plainer import Plainer

_KIND = rf"(?:{KIND}|desvio|desviacion|tapon|yee?|manguito|cuello|tuberia)"
_UM = r"(?:(?:no|ay|ah|eh|oye|espera|esperate|espereme|aguanta|aguantame|momento|mentira|perdon|perdoname|disculpa|disculpe|digo|bueno|este|corrijo|rectifico|me equivoque|la regue|me confundi|dije mal|mas bien|mejor dicho),? )"
_SORRY = r"(?:(?:perdon|perdoname|disculpa|disculpe|digo|corrijo|correccion|rectifico|mejor dicho|quise decir|quiero decir|mas bien|no,? mentira|mentira),? )"
_ERRED = r"(?:(?:me equivoque|nos equivocamos|la regue|me confundi|dije mal|lo dije mal|me trabe)(?: (?:de|en|con) (?:el )?numero)?,? (?:que |pues |porque )?)"
_PIECE = rf"(?:(?:el |la |los |las |un |una |l )?(?:(?:numero|pieza|{_KIND}) ){{0,2}})"
_IT = rf"(?:(?:el |la )(?:(?:numero|pieza|{_KIND}) ){{0,2}}|numero |pieza |{_KIND} )"
_OTHERS = rf"(?:(?!\b(?:{_KIND}|numero) (?:numero )?{MARK}\b(?! (?:por|x|pulgadas?|grados|pies)\b)).)"  # no other piece is named up to there
_NAMED = rf"(?:(?P<k>{_KIND}) (?:numero )?|(?:la|el) (?:numero )?)(?P<m>{MARK})\b(?! (?:por|x|pulgadas?|grados|pies|y)\b)"
_FAR = rf"(?:{COUNT}|{FRAC})(?: y (?:medi[oa]|un cuarto|cuarto|un octavo|tres cuartos))?(?: pulgadas?)?"
_ITS_NUMBER = r"perdón, pieza \g<n>"
_NUMBER_CUES = (" no es ", " no el ", " no la ", " no era ", "no es el ", "no es la ", "no el ", "no la ", "no era ")

SPANISH_SET_RIGHT = (
    # --- the number: "perdón, no es el 18, es el 19", "no la 18, la 19", "es la 19, no la 18"
    Plainer(
        _NUMBER_CUES,
        rf"{_NAMED}{_OTHERS}*?[,.;] (?P<x>{_UM}*no (?:es |era |fue )?{_IT}(?P=m)(?:,|;|\.| sino| si no| que)+ (?:(?:que|sino|si no) )?(?:es |era )?{_PIECE}(?P<n>{MARK})){STOP}",
        (("x", _ITS_NUMBER),),
    ),
    Plainer(
        _NUMBER_CUES,
        rf"{_NAMED}{_OTHERS}*?[,.;] (?P<x>{_UM}*(?:es |era )?{_IT}(?P<n>{MARK}),? (?:y )?no (?:es |era )?{_PIECE}(?P=m)){STOP}",
        (("x", _ITS_NUMBER),),
    ),
    # --- "digo, la 19", "perdón, es el 19", "me equivoqué, es la 19", where no other piece had that number
    Plainer(
        ("perdon", "disculp", "digo", "corrij", "correccion", "rectific", "mejor dicho", "quise decir", "quiero decir", "mas bien", "mentira", "equivo", "regue", "confundi", "dije mal", "trabe"),
        rf"{_NAMED}{_OTHERS}*?[,.;] (?P<x>(?:(?:no|ay|ah|eh|espera|esperate),? )*(?:{_SORRY}|{_ERRED})+(?:(?:es|era) )?(?:el numero es(?: el)? |la pieza es(?: la)? |(?:el|la) (?:(?:numero|pieza|(?P=k)) )?)(?P<n>(?!(?P=m)\b){MARK})){STOP}",
        (("x", _ITS_NUMBER),),
        unless=rf"\b(?:{_KIND}|el|la|y) (?:numero )?(?P<n>{MARK})\b.*[,.;] (?:{_SORRY}|{_ERRED})+(?:(?:es|era) )?(?:el|la) (?:\w+ ){{0,2}}(?P=n){STOP}",
    ),
    # --- the kind: "no, espérate, no es recto, es codo", "no es codo sino recto"
    Plainer(
        (" no es ", "no es ", " no era ", " no fue "),
        rf"\b(?P<k>{_KIND}) (?:numero )?{MARK}\b{_OTHERS}*?[,.;] (?P<x>{_UM}*no (?:es|era|fue) (?:el |la |un |una )?(?P=k)(?: \d+)?(?:,|;|\.| sino| si no| que)+ (?:(?:que|sino|si no) )?(?:(?:es|era) )?(?:el |la |un |una )?(?P<j>{_KIND}))(?= *(?:$|[,;.]| (?:de|con|a|numero|{MARK})\b))",
        (("x", r"digo, \g<j>"),),
    ),
    # --- "me equivoqué, es recto", "dije codo, es recto"
    Plainer(
        ("equivo", "regue", "confundi", "dije mal", "dije "),
        rf"\b(?P<k>{_KIND}) (?:numero )?{MARK}\b{_OTHERS}*?[,.;] (?P<x>(?:(?:no|ay|ah|eh|espera|esperate),? )*(?:{_ERRED}|dije (?P=k),? (?:pero |y )?)(?:es |era )(?:el |la |un |una )?(?P<j>(?!(?P=k)\b){_KIND})){STOP}",
        (("x", r"digo, \g<j>"),),
    ),
    # --- named anew by another kind: "recto 7, no, codo 7"
    Plainer(
        (" no, ", " no "),
        rf"\b(?P<k>{_KIND}) (?:numero )?(?P<m>{MARK}),? (?P<x>{_UM}*no,? {_UM}*(?:es )?(?:el |la |un |una )?)(?=(?!(?P=k)\b){_KIND} (?:numero )?(?P=m)\b)",
        (("x", "digo, "),),
    ),
    # --- how far apart, how wide: "cada dos, no, cada dos y cuarto", "cinta de tres, no, mentira, de dos"
    *(
        Plainer((f" {at} ",), rf"\b(?:grap|engrap|staple|tabs?|lengueta|tornillo|cinta|teip|tape|colgante|soporte)\w*[^.;]{{0,30}}? {at} {_FAR}(?P<x>(?:,|\.)? (?:no,? )?(?:no, |no,? (?:mentira|espera|esperate|perdon|¿?que (?:te )?digo\??|no es cierto|aguanta|a ver),? )(?:(?:mentira|espera|esperate|perdon|¿?que (?:te )?digo\??|no es cierto|aguanta|a ver),? )*)(?={at} {_FAR} *(?:$|[,;.]| y ))", (("x", ", digo, "),), beside=(" no",))
        for at in ("cada", "a", "de")
    ),
)
