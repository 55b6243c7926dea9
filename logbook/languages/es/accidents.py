"""Spanish that tells what befell a piece and not what it did to it: "se me cayó la pieza", "le pegó el montacargas".

He may have looked it over and found nothing, or not have looked: it is asked, unless he tells of the facing himself. Plain letters, without accents. Not reviewed by a native speaker.
"""

from __future__ import annotations

_PIECE = r"(?:(?:la|el|toda la|todo el|esta|este) )?(?:pieza|ducto|tramo|codo|transicion|reduccion|offset|tee?|derivacion|collar|tapa|tabla|seccion|figura|fitting)"
_PART = r"(?:(?:en|contra|por|a|sobre) )?(?:la|el|una|un) (?:esquina|orilla|punta|lado|foil|facing|papel|macho|hembra|costado|pieza|ducto|tabla|codo)"
_RIG = r"(?:montacargas|forklift|lift|tijera|elevador|carrito|carro|diablito|patin|troca|camion|escalera|andamio|puerta|plafonero|tablaroquero|pintor|plomero|electricista|muchacho|ayudante|chalan)"
_NOT = r"(?<!no )(?<!ni )(?<!casi )(?<!por poco )"

SPANISH_ACCIDENTS: tuple[tuple[tuple[str, ...], str], ...] = (
    (("facing_damage",), rf"{_NOT}se (?:me |nos |le |les )?(?:cayo|callo|caio|volo|volteo|volco|resbalo|rodo)(?: (?:{_PIECE}|de (?:los burros|la mesa|la escalera|las manos|la tijera|el lift|l[oa]s? \w+)|del? (?:\w+)|al (?:piso|suelo)|encima|dos veces))*$"),
    (("facing_damage",), rf"{_NOT}(?:le|la|lo) (?:pego|pegaron|golpeo|golpearon|dio|dieron|choco|chocaron|atropello|atoro|agarro|agarraron|aventaron|tumbaron|tumbo|tiraron|tiro)(?: (?:un|el|la|una|con|los|unos|al|de))* (?:golpe|golpes|chingadazo|trancazo|{_RIG}|al piso|ratones?|ratas?|perro)\b.*"),
    (("facing_damage",), rf"{_NOT}(?:se|le) (?:recarg|apoy|sub|sent|par|hinc|tropez)(?:o|aron|ieron|io)(?: (?:un|una|el|la|l[oa]s|con))*(?: \w+)? ?(?:en|encima de|sobre|contra|con) (?:el|ella|{_PIECE}|{_PART})\b.*"),
    (("facing_damage",), rf"{_NOT}(?:recarg|apoy|pus|dej|avent)(?:o|aron|ieron|e|amos) (?:un|una|el|la|su|mi) (?:\w+ )?(?:escalera|herramienta|caja|taladro|tubo|andamio)(?: \w+)? (?:en|encima de|sobre|contra) (?:el|ella|{_PIECE}|{_PART})\b.*"),
    (("facing_damage",), rf"{_NOT}(?:el|la|un|una) {_RIG}(?: (?:me|se|ya))* (?:la |lo |le )(?:pego|golpeo|dio|choco|atoro|aplasto|raspo|rozo|tumbo|tiro)\b.*"),
    (("facing_damage",), rf"{_NOT}(?:(?:l[oa]s? )?(?:ratones|ratas|palomas|pajaros)|(?:el|un) (?:perro|raton|gato))(?: (?:me|nos|se|ya|la|lo|le))* (?:agarr|mordi|com|rasc|ro|mord|hici|met)\w*\b.*|(?:la|lo|le) (?:agarraron|mordieron|comieron|royeron|rascaron) (?:l[oa]s )?(?:ratones|ratas|palomas|pajaros)\b.*"),
)
