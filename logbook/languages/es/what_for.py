"""Spanish of what a thing was done for, and of what somebody wanted before it was done otherwise: "para no gastar tanta grapa", "para que rindiera la cinta",
"como no había masilla la tapé con pura cinta", "mi cuñado quería dejarla sin cinta, pero yo la encinté".

None of it tells how the piece is. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import KIND, MARK, STAPLES, TAPE
from logbook.languages.plainer import Plainer

_STUFF = rf"(?:{TAPE}|{STAPLES}|aletas|vanes|masti(?:que|c)|masilla|material|rollos?|tiempo)"
# what is spared, or kept away from, and tells of no work: "para no encintarla" is none of these
_SPARED = (
    r"(?:gastar|acabar|terminar|desperdiciar|malgastar|tirar|usar|ocupar|perder|batallar|atrasar|retrasar|tardar|demorar|esperar|parar|regresar|volver|subir|bajar|ir|venir|estorbar|molestar|andar|estar|quedar|complicar"
    r"|dañar|lastimar|romper|rasgar|rajar|maltratar|golpear|aplastar|mojar|ensuciar|rayar|arrugar|trabar|atorar|pelear|discutir|cansar|hacer ruido|hacer polvo|hacer cochinero|hacer tiradero|tener que \w+)(?:me|nos|le|se)?(?:l[oa]s?)?"
)
_MUCH = r"(?:(?:tant|much|mas|demasiad|toda|tod)(?:[oa]s?)?|(?:el|la|los|las|mi|otro|otra|un|una|de)|mas)"
_SPARED_THING = rf"(?: (?:{_MUCH} )*(?:{_STUFF}|foil|papel|aluminio|forro|board|panel|tablero|fibra|caja|rollo|polvo|dia|otra vez|abajo|arriba|aqui|ahi|alla|mas|dos veces|escalera|andamio|bodega|troca|camioneta|gente))*"
_FOR = r"(?:(?:nomas|mas que nada|solo|mejor) )?(?:para|pa|por)"

_TO_LAST = r"(?:(?:me |nos )?(?:rinda|rindiera|alcance|alcanzara|ajuste|ajustara|dure|durara|cunda|cundiera)|no se (?:me |nos )?(?:acabe|acabara|termine|terminara|gaste|gastara|vaya a acabar|fuera a acabar))n?"
_ONES = r"(?:(?:la|el|las|los|mas|lo que quedaba de|lo poco de|poca|mi) )*"

_WITH_WHAT = rf"(?:con|de|a) (?:(?:pur[oa]s?|la|el|un|una|nomas|solo) )*(?:{TAPE}|{STAPLES}|181|masti(?:que|c)|masilla|duct|foil|tela|silicon)"
_CLOSED_IT = r"(?:(?:se )?(?:l[oa]s?|le) (?:tape|cerre|selle|parche|repare|remende|arregle|resane|cubri|pegue|puse|eche|di|tapamos|cerramos|sellamos|parchamos|reparamos|cubrimos|pegamos|pusimos|echamos))"
_HAD_NONE = r"no (?:(?:me|nos|se) )?(?:habia|hubo|tenia|teniamos|traia|traiamos|hay|tengo|traje|trajeron|llego|encontre|quedaba|alcanzo|halle)"

_BUCKET = r"(?:bote|botecito|cubeta|balde|tambo|tarro|lata|tina|bidon|galon|cartucho|tubo)"
_DRY = r"(?:(?:ya|todo|toda|bien|muy|medio|casi|bastante|de plano) )*(?:sec[oa]|dur[oa]|ties[oa]|vaci[oa]|congelad[oa]|echad[oa] a perder|podrid[oa]|hech[oa] piedra|cuajad[oa]|petrificad[oa])"
_MASTIC = r"(?:masti(?:que|c)|masilla|sellador)"

_ASKED = r"(?:queria|querian|queriamos|quiso|quisieron|pensaba|pensaban|pensamos|iba a|iban a|pedia|pedian|pidio|pidieron|decia|decian|dijo|dijeron|mando|mandaron|insistia en|insistio en)"
_TO_LEAVE = r"(?:que )?(?:yo )?(?:(?:l[oa]s?|se|le) )*(?:deja(?:r|ra|ran|ramos)|manda(?:r|ra)|subi(?:r|era)|colga(?:r|ra)|cerra(?:r|ra)|entrega(?:r|ra)|quedara|quedar|fuera|se fuera|ir|meter|metiera|arma(?:r|ra)|hacer|hiciera)?(?:l[oa]s?)? ?(?:asi )?"
_WITHOUT = rf"sin (?:(?:la|las|el|los|ni|ponerle|meterle|darle) )*(?:{TAPE}|{STAPLES}|aletas|vanes|tallar\w*|tallada|espatula|masti(?:que|c)|refuerzo|nada|encintar\w*|engrapar\w*|grapar\w*|limpiar\w*)"
_WHO = r"(?:(?:mi|el|la|un|don|otro|los|mis) \w+ (?:ya )?)?(?:(?:yo|ya) )?"

SPANISH_WHAT_FOR = (
    # --- somebody wanted it without, and he did it
    Plainer(
        (" sin ",),
        rf"(?P<x>{_WHO}{_ASKED} {_TO_LEAVE}{_WITHOUT},? (?:pero|y|mas|aunque),? )(?=(?:(?:yo|mejor|siempre|al final|la verdad|si|ya|de todos modos|igual) )*(?:l[oa]s? )(?:encint|teip|tape|engrap|grap|tall|frot|limpi|sell|planch|deje)\w*(?:e|amos)\b)",
        (("x", ""),),
    ),
    # --- somebody wanted it without, and so it went
    Plainer((" y asi ", ", asi "), rf"(?P<x>{_WHO}{_ASKED} {_TO_LEAVE})(?={_WITHOUT},? (?:y |pues )?asi (?:(?:se|l[oa]|me|ya) )*(?:fue|quedo|deje|dejamos|va|subi|colgue|mande|entregue)\b)", (("x", ""),), unless=r"\bno (?:queria|quiso|iba)"),
    # --- the stuff that had gone dry in its bucket: there was none
    Plainer(
        tuple(f"{one} " for one in ("bote", "botecito", "cubeta", "balde", "tambo", "tarro", "lata", "tina", "bidon", "galon", "cartucho", "tubo")),
        rf"\b(?P<x>(?:el |la |ese |esa |mi )?{_BUCKET}(?: (?:de(?: la| el)?|del) {_MASTIC}(?: 181a-m)?)? (?:ya )?(?:(?:me|nos) )*(?:(?:andaba|venia|estaba|esta|salio|llego|tenia|vino|quedo) {_DRY}|se (?:me |nos )?(?:seco|habia secado|endurecio|hizo piedra)))(?= *(?:$|[,;.]| y | asi | entonces | por eso ))",
        (("x", "no había mastique"),),
        beside=("mastique", "mastic", "masilla", "sellador"),
    ),
    Plainer((" en el bote", " en la cubeta", " en el balde", " en la lata", " en el tubo", " en el tambo"), rf"\b(?P<x>(?:el |la )?{_MASTIC}(?: 181a-m)? (?:ya )?(?:se (?:me |nos )?(?:habia )?(?:seco|secado|endurecio|hizo piedra|echo a perder)|estaba {_DRY}|venia {_DRY}) (?:dentro |adentro )?en (?:el|la|su) {_BUCKET})(?= *(?:$|[,;.]| y | asi | entonces ))", (("x", "no había mastique"),)),
    Plainer(("mastique", "mastic", "masilla", "sellador"), rf"(?P<x>\b(?:(?:l[oa] )?(?:iba|ibamos|queria|queriamos|pensaba)(?: a)?(?: \w+r(?:l[oae]|les)?)? (?:con |el |la )*{_MASTIC}(?: 181a-m)?,? (?:pero|y) (?:ya )?(?:me )?(?:estaba|venia|andaba|salio|llego) {_DRY}))(?= *(?:$|[,;.]| y | asi | entonces | por eso ))", (("x", "no lleva mastique"),)),
    Plainer((" mastique", "mastique", "mastic", "masilla"), rf"(?P<x>(?:como |es que )?(?:el |la )?{_MASTIC}(?: 181a-m)? (?:ya )?(?:me )?(?:estaba|venia|andaba|salio|llego) {_DRY},? (?:(?:y|asi que|entonces|por eso|mejor),? )+)(?={_CLOSED_IT} (?:con|de) (?:(?:pur[oa]|la|el|una?) )*(?:{TAPE}|duct|foil))", (("x", ""),)),
    Plainer((" acabo ", " termino ", "acabo ", "termino "), rf"(?P<x>(?:ya )?se (?:me |nos )?(?:acabo|termino|agoto) (?:el|la) {_MASTIC})(?=,)", (("x", "no había mastique"),), unless=r"\b(?:con masti|sellad|cerrad[oa] con|fui por|traje|trajeron|consegui|otr[oa] (?:bote|cubeta)|abri otr|ya (?:la|lo) (?:habia|tenia)|termine|alcanzo)"),
    # --- why it was tape and no mastic: what there was none of, run into the act
    Plainer(("como no ", "pues no ", "ya que no ", "porque no "), rf"(?P<x>(?:y )?(?:como|pues|ya que) {_HAD_NONE} (?:(?:mas|la|el|ni|nada de|ya) )*{_STUFF}(?: (?:a la mano|ahi|aqui|en la troca|181a-[mph]))?,? )(?={_CLOSED_IT} {_WITH_WHAT})", (("x", ""),)),
    Plainer(("como el ", "como la "), rf"(?P<x>(?:y )?como (?:el|la) {_BUCKET}(?: (?:de(?: la| el)?|del) {_MASTIC}(?: 181a-m)?)? (?:ya )?(?:andaba|venia|estaba|esta|salio|llego|tenia) {_DRY},? )(?={_CLOSED_IT} {_WITH_WHAT})", (("x", ""),)),
    # --- what it was to spare, and what he did with it: the thing is told there alone
    Plainer(("para no ", "pa no ", "por no "), rf"(?P<x>\b{_FOR} no {_SPARED} (?:{_MUCH} )*{STAPLES},? )(?=(?:las?|les?) (?:(?:fui|fuimos|iba) )?\w)", (("x", "las grapas "),)),
    Plainer(("para no ", "pa no ", "por no "), rf"(?P<x>\b{_FOR} no {_SPARED} (?:{_MUCH} )*{TAPE},? (?:(?:mejor|ya|nomas) )*(?:le |la )?(?:use|usamos|puse|pusimos|di|eche|meti) (?:(?:con|la|el|una?|pura|puro) )+de )(?=(?:dos|tres|2|3)\b)", (("x", "le puse cinta de "),)),
    # --- "a falta de 181 le puse de la gris": with what, and nothing that waits
    Plainer(("a falta de ",), rf"(?P<x>a falta de (?:(?:la|el|otra|la buena|{TAPE}) )*181(?:a-[phm])?,? )(?=(?:le |la |lo |se )*(?:puse|use|eche|pusimos|usamos|cerre|selle|encinte|pegue)\b)", (("x", ""),)),
    # --- what it was to spare
    Plainer(("para no ", "pa no ", "por no "), rf"(?P<x>,? ?\b{_FOR} no {_SPARED}{_SPARED_THING}(?: (?:al|a la|a los|a las|a mi) (?!{MARK}\b|{KIND}\b)\w+)?,?)(?=[ .;]|$)", (("x", ","),)),
    Plainer(("para que ", "pa que "), rf"(?P<x>,? ?\b{_FOR} que {_TO_LAST}(?: {_ONES}{_STUFF})?,?)(?=[ .;]|$)", (("x", ","),)),
)
