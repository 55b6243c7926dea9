"""Spanish that names the piece in the middle of what it tells of it: "las patas de las grapas en la recta 31 van hacia adentro"."""

from __future__ import annotations

from logbook.languages.named_ahead import NamedAhead

_GOES_ON = r" (?!(?:y|o|a|al|hasta|del?|en|por|con)(?![\w']))[a-zñáéíóú]"

SPANISH_NAMED_AHEAD = NamedAhead(
    turns=(
        (r"(?<![\w'])(?!(?:junto|lado|pegad[oa]|llegu[eé]|regres[eéo]|vuelvo|voy|fui|pas[eéo]|sigo|sigue|cerca|frente|igual|hasta|después|despues|antes) )[a-zñáéíóú]+(?P<drops> (?:del?|al?|en|con|para|por)) $", _GOES_ON),
        (r"(?:^|[.,;:!?] (?:y |pero |entonces |también |pues )*|(?<![\w'])(?:y|pero) )(?P<drops>(?:en|con|a|al|para) )$", _GOES_ON),
        (r"(?<![\w'])(?!(?:junto|lado|pegad[oa]|igual|sigo|sigue) )[a-zñáéíóú]+(?P<drops> en) $", r" *(?:[.,;!]|$)"),
    ),
    names=r"(?:(?:la|el|esa|ese|esta|este|mi|pieza|número|numero|#) ?)*$",
)
