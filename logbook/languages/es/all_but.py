"""Spanish that sets a part of a piece apart from what was told of the whole: "cinta por los cuatro lados menos el de abajo".

Written without accents: the words they are read against lose theirs. Not reviewed by a native speaker.
"""

from __future__ import annotations

from types import MappingProxyType

from logbook.languages.all_but import AllBut

_WHERE = r"(?:arriba|abajo|atras|adelante|enfrente|adentro|afuera|izquierd[ao]|derech[ao]|fondo|techo|piso|pared|viga|plafon|columna|losa|suelo|muro|tubo|garganta|talon|cuello|lado|costado|esquina|esquinita|orilla|orillita|junta|costura|union|cara|tapa|punta|boca|ramal|cabeza|cachete|collar|collarin|espalda|vuelta|hembra|macho)"
_ART = r"(?:(?:el|la|los|las|al|del|un|una|ese|esa|su|mi) )"
_OF = r"(?:(?:por|en|de|a|junto|pegado|contra|hacia|que (?:da|pega|va|esta|queda|mira|ve|topa) (?:a|con|en|contra|para|hacia|pegad[oa] a)?) ?)"
_BUT = r"(?:menos|excepto|salvo|quitando|sacando|exceptuando|(?:a|con) (?:la )?excepcion de|fuera de|aparte de|faltando(?:le)?)"
# what was told of is the whole: all sides, the way around
_ALL = r"(?:lados|costados|caras|lados?|alrededor|vuelta|completit[oa]|completo|completa|todo|toda|todas partes|juntas|costuras|esquinas|orillas)"

SPANISH_ALL_BUT = AllBut(
    # "…, menos el de la pared", "excepto por donde pega la viga", "menos uno" of the sides
    apart=rf"(?<!mas o )(?<!ni mas ni )(?<!lo )(?<!nada )(?<!ni )\b{_BUT}(?:(?<=excepcion de)l|(?: (?:por|en|a|de|del|al))?) (?:{_ART}?(?:lado |costado |cara |junta |orilla |parte |union |costura )?(?:{_OF}{_ART}?){{0,2}}{_WHERE}\b(?! (?:numero|\d))|(?:por |a |en )?(?:ahi |alli )?donde (?:pega|topa|da|va|esta|queda|cuelga|pasa|entra|choca|toca|no)\b)"
    rf"|(?<=lados ){_BUT} uno\b(?! de (?:l[oa]s )?(?:tramos|rectos|codos|piezas))|(?<=costados ){_BUT} uno\b",
    cured=r"[^.?!]{0,60}?[.,;]? ?(?:pero |y |que |luego |despues |ya |al final )+(?:(?:ya|luego|despues|tambien|hoy|ahorita|al rato|si) )*(?:(?:se|le|l[oa]s?) )*(?:regrese|volvi|puse|pusimos|complete|termine|acabe|meti|eche|pegue|quedo|quedaron|arregle|(?P<taped>encinte|encintamos)|(?P<stapled>(?:en)?grape|(?:en)?grapamos)|(?P<rubbed_down>talle|frote))\b",
    numbers=MappingProxyType({"uno": 1, "dos": 2, "tres": 3, "1": 1, "2": 2, "3": 3}),
)
