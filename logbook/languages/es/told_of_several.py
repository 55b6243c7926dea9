"""Spanish of two or three pieces named one behind the other without a stop: "hice dos rectos el veinte y el veintiuno", "pero al catorce no le puse aletas".

Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import MARK, PUT
from logbook.languages.plainer import Plainer

_KINDS = r"(?:rectos|tramos|codos|tes|tees|tapas|transiciones|reducciones|offsets|plenums|plenos|collarines|ramales|derivaciones|piezas|secciones|ductos|pantalones|straights|wyes)"
_MASCULINE = r"(?:rectos|tramos|codos|offsets|plenums|plenos|collarines|ramales|ductos|pantalones|straights)"
_FEMININE = r"(?:tes|tees|tapas|transiciones|reducciones|derivaciones|piezas|secciones|rectas|cajas|mangas)"
_ON_THEM = r"(?:(?:bien )?(?:en)?grapad[oa]s|(?:bien )?encintad[oa]s|teipead[oa]s|tallad[oa]s|frotad[oa]s|limpi[oa]s|reforzad[oa]s|(?:con|sin) (?:las |sus |ni )?(?:grapas|cinta|teip|tape|tablero|aletas|vanes|refuerzo|tallar|encintar|engrapar|malla)\b)"
_THINGS = r"(?:(?:las )?grapas|(?:la )?cinta|teip|tape|tablero)"


def _alike(kinds: str, article: str):
    """ "Dos rectos, engrapados cada tres. El 73 es de …; el 74 es de …": what is told ahead of their numbers is told of each of them."""
    later = rf"(?=[^.]*\. (?:el|la) (?:numero )?{MARK}\b)"
    for put, means in ((_ON_THEM, ""), (_THINGS, "con ")):
        yield Plainer(("dos ", "tres ", "cuatro ", "2 ", "3 "), rf"(?:^|(?<=[.;] ))(?:(?:hoy|ayer|ya|ahi|hice|hicimos|puse|pusimos|arme|armamos|van|son|quedaron|tengo|hay) )*(?P<n>dos|tres|cuatro|2|3) {kinds}(?P<x>,? )(?={put}){later}", (("x", rf", {article} \g<n> {means}"),))


SPANISH_TOLD_OF_SEVERAL = (
    *_alike(_MASCULINE, "los"),
    *_alike(_FEMININE, "las"),
    # --- "dos rectos el veinte y el veintiuno": their numbers, and none of them told alone
    Plainer(
        (" dos ", " tres ", "dos ", "tres "),
        rf"(?P<x>(?:dos|tres|2|3)) {_KINDS}(?P<y> (?:el|la) ){MARK}(?P<z>,? y (?:el|la) ){MARK}(?= (?!por |x |pulgadas?|grados|lados?|y media|y el |y la ))",
        (("x", "los"), ("y", " "), ("z", " y ")),
    ),
    Plainer(
        ("tres ", "3 "),
        rf"(?P<x>(?:tres|3)) {_KINDS}(?P<y> (?:el|la) ){MARK}(?P<w>,? (?:el|la) ){MARK}(?P<z>,? y (?:el|la) ){MARK}(?= (?!por |x |pulgadas?|grados|lados?|y media|y el |y la ))",
        (("x", "los"), ("y", " "), ("w", " "), ("z", " y ")),
    ),
    # --- "engrapados y encintados pero al catorce no le puse aletas"
    Plainer((" pero al ", " pero a la "), rf"\w*[ao]d[oa]s,? pero (?P<x>al|a la) {MARK} (?:todavia |aun |ya )*no (?P<y>(?:le|les) {PUT}) (?=(?:(?:la|las|el|los|ni) )?(?:cinta|teip|tape|grapas|staples|aletas|vanes|guias)\b)", (("x", "el"), ("y", "lleva"))),
    # --- "al 48 le froté el tape y al 49 no": the same act of the other
    *(
        Plainer((" y al ", " y a la ", ", al "), rf"(?:al|a la) {MARK} (?:si |ya )*le {stem}e (?:bien )?(?:la |el )(?:cinta|teip|tape)(?:,| y| pero)+ (?:al|a la) {MARK} (?P<x>(?:todavia |aun |ya )*no)(?= *(?:$|[,;.]| porque | pues | ya que ))", (("x", f"no le {stem}é la cinta"),))
        for stem in ("frot", "tall", "planch", "alis")
    ),
)
