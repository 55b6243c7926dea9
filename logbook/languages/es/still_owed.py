"""Spanish of what a piece is still owed or no longer lacks: "todavía debe el mástique", "le debo la segunda mano", "ya no faltan ni las vanes ni las grapas".

What is owed is read as lacking, and a second coat as the piece that is to be gone on with. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import KIND, MARK, SOON
from logbook.languages.plainer import Plainer

_MASTIC = r"(?:mastique|mastic|masilla)"
_THE = r"(?:la |el |las |los |su |sus |un |una |unas |lo del |lo de la )?"
_STILL = r"(?:(?:todavia|aun|nomas|solo|nada mas|hoy|ya|pues|ahorita|sigue|siguen) )*"
_OWES = r"(?:(?:se )?(?:le |les |l[oa]s? )?(?:debo|debemos|adeudo)|debe|deben|(?:le )?(?:quedo|quede|quedamos) (?:a deber|debiendo)(?:le|les)?)"
_COAT = r"(?:mano|manita|capa|pasada|untada|embarrada|aplicacion)"
_MORE = r"(?:segunda|otra|ultima|tercera|2da|2a)"
_WAITS = r"(?:(?:esta|queda|quedo|sigue|anda|va|dejo|lo deje|lo dejo|se queda) )?(?:(?:todavia|aun) )?(?:pendiente|por poner|por echar|por hacer|en espera|para (?:mañana|al rato|luego|despues|la tarde|el (?:lunes|martes|miercoles|jueves|viernes|sabado)))"
_COMES = r"(?:(?:todavia |aun )?no (?:ha llegado|llega|me (?:ha llegado|llega)|l[oa] (?:traen|trajeron|han traido|surten|mandan))|(?:me |nos )?l[oa] traen|llega|viene) (?:hasta )?(?:el )?"
_ENDS = r"(?= *(?:$|[,;.:]| (?:y|pero|porque|pues|para|a|al|en|de|ya|esta|mañana|la|el|hasta|todavia|aun|engrapad\w+|encintad\w+|lo demas|numero|rect[oa]|codo|tapa|te|plenum)\b))"
_NO_LACK = r"(?:ya )?no (?:(?:le|les|me|nos|se) )*faltan?(?: ya)?"
_THINGS = r"(?:las |los |la |el |sus )?(?:\w+)(?: (?:de giro|cruzadas|de cinta))?"

SPANISH_STILL_OWED = (
    # --- "le debo la segunda mano de mástique", "falta la otra capa": one is on, and it is not done
    *(
        Plainer(
            tuple(f" {coat}" for coat in ("mano", "manita", "capa", "pasada", "untada", "embarrada", "aplicacion")),
            rf"(?<!no )(?<!ya no le )(?<!no me )(?P<x>{_STILL}(?:{_OWES}|(?:(?:me|nos|le) )?falt(?:a|o)(?: (?:darle|ponerle|echarle|dar|poner))?|hay que (?:darle|ponerle|echarle)|(?:mañana|al rato|luego) (?:le |se le )?(?:doy|damos|pongo|echo|va)) (?:la |el |su |una? )?{_MORE} {_COAT}(?: (?:del? |al? )?{_MASTIC}| del sellador| de sellador)?{whose}){_ENDS}",
            (("x", means),),
            beside=("mastique", "mastic", "masilla", "sellador", "181a-m", "181-m"),
        )
        for whose, means in ((rf" (?:a|en|de)(?:l| la| el)? (?P<p>(?:{KIND} )?(?:numero )?{MARK})", r"\g<p> lleva mastique y quedo pendiente. "), ("", ". lleva mastique y quedo pendiente. "))
    ),
    Plainer((" mano ", " capa ", " pasada "), rf"(?P<x>(?:la |su )?{_MORE} {_COAT} de {_MASTIC} (?:{_WAITS}|(?:todavia |aun )?(?:le )?falta)){_ENDS}", (("x", "lleva mastique y quedo pendiente. "),)),
    # --- "todavía debe el mástique"
    Plainer(("debo ", "debe ", "deben ", "debemos ", "adeudo ", "deber", "debiendo"), rf"(?<!no )(?<!no le )(?P<x>{_STILL}{_OWES} {_STILL}{_THE}{_MASTIC}(?: todavia| aun)?){_ENDS}", (("x", "falta el mastique"),)),
    Plainer(("todavia debe", "aun debe", "debe todavia", "deben todavia", "sigue debiendo", "siguen debiendo"), rf"(?P<x>(?:(?:todavia|aun) deben?|deben? (?:todavia|aun)|siguen? debiendo) )(?={_THE}(?:cinta|teip|tape|grapas?|staples|aletas|vanes|tallada|tiras cruzadas)\b)", (("x", "le falta "),)),
    # --- "el mástique está pendiente, mañana traen la cubeta", "el mástique mañana se lo pongo"
    Plainer((" pendiente", " por poner", " por echar", " por hacer", " en espera", " para ", " no ha llegado", " no llega", " traen", " llega ", " viene "), rf"(?<!sin )(?<!con )(?P<x>(?:el |lo del |la )?{_MASTIC},? {_STILL}(?:{_WAITS}|{_COMES}{SOON}|(?:todavia |aun )?no (?:ha llegado|llega))){_ENDS}", (("x", "falta el mastique"),), beside=("mastique", "mastic", "masilla"), unless=r"\bmasti\w+ para (?:mañana|el (?:lunes|martes))[^.;]* ya "),
    # --- "ya no faltan ni las vanes ni las grapas": all of them are there
    Plainer((" ni ",), rf"{_NO_LACK}(?P<x> ni ){_THINGS}(?P<y>,? ni )(?={_THINGS})", (("x", " "), ("y", " y "))),
    Plainer((" ni ",), rf"{_NO_LACK} {_THINGS}(?P<y>,? ni )(?={_THINGS}(?: *(?:$|[,;.])))", (("y", " y "),)),
)
