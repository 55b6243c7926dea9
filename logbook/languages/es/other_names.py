"""Spanish things of many names, each in the one name that most of the patterns know: "álabes" are aletas, "crucetas de cinta" are tiras cruzadas.

What a thing is called says nothing of whether it is there: "se me acabaron las crucetas" is to be read as of any others. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.thumbs import Short

_VANES = "direccionales álabes alabes guías guias deflectores venas aletitas guiadores guiítas guiitas turning_blades air_guides"
_STRIPS = ("tabs", "tiras", "tiritas", "tirillas", "pestañas", "pestañitas", "cintas", "pedazos", "lengüetas", "lenguetas", "orejas", "orejitas", "crucetas")
_OF_TAPE = ("de cinta", "de tape", "de teip")
_ACROSS = ("cruzados", "cruzadas", "atravesados", "atravesadas", "en cruz", "de través", "al través", "transversales", "a lo ancho", "atravesaditas", "cruzaditas")
_OF_MANY_USES = ("tiras", "tiritas", "cintas", "pedazos")  # of tape: they close a joint for now, or mend


def _cross_tabs():
    for strip in _STRIPS:
        for across in _ACROSS:
            yield f"{strip} {across}"
            yield from (f"{strip} {tape} {across}" for tape in _OF_TAPE)
        if strip not in _OF_MANY_USES:
            yield from (f"{strip} {tape}" for tape in _OF_TAPE)
    yield from ("crucetas", "cross tabs", "cross-tabs", "crosstabs")


SPANISH_OTHER_NAMES = (
    *(Short(one.replace("_", " "), "aletas", same=True) for one in _VANES.split()),
    Short("canto", "esquina", before=r"\b(?:un|el|del|al|ese|otro) $", same=True),  # of a board; "pegó de canto" is how
    Short("aspas", "aletas", after=r"(?! de)", same=True),  # "las aspas del ventilador" are of a fan
    *(Short(one, "fibra", same=True) for one in ("insulación", "insulacion", "aislación", "aislacion")),
    *(Short(one, "tiras cruzadas", same=True) for one in _cross_tabs() if one != "tiras cruzadas"),
)
