"""Spanish words for a part of a piece that a measure is told of."""

from __future__ import annotations

from logbook.languages.es.stretches import STRETCH
from logbook.languages.told import PartsTold

_WORD = "arriba|abajo|fondo|techo|lados?|costados?|caras?|costuras?|juntas?|uniones|uni[oó]n|esquinas?|orillas?|puntas?|extremos?|tapas?|atr[aá]s|frente|centro|tal[oó]n|garganta|(?:la |las |el |los )?(?:otr[oa]s?|dem[aá]s|resto|[uú]ltim[oa]s?)|unas|unos|algunas|algunos"

SPANISH_PARTS_TOLD = PartsTold(
    word=rf"(?<![\w'])(?:{_WORD})(?![\w'])",
    named=rf"{STRETCH}|(?<![\w'])(?:en|de|por|a) (?:el|la|los|las|un|una|otro|otra) (?:otro |otra )?(?:lado|costado|cara|costura|junta|esquina|orilla|punta|extremo|tapa|frente|centro|fondo|tal[oó]n|garganta)s?(?![\w'])",
    unlike=r"(?<![\w'])(?:traslap\w*|encim\w+|solap\w*|a cada lado|centrada)(?![\w'])",
    by_now=r"(?<![\w'])(?:ahora|luego|despu[eé]s|arregl\w+|correg\w+|cambi\w+|quit[eéó]\w*|agregu?[eé]|otra vez|de nuevo|volv[ií]\w*|antes|primero|plano|dibujo|deb[ií]an?)(?![\w'])",
)
