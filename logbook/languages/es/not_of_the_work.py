"""Spanish that names a thing of the work and means another: the channel of a radio, a television or a stranger's videos ("suscríbete al canal" is what a
recogniser hears in silence), a gutter; all of them reinforce nothing. Rows like those of `plainer.py`. Not reviewed by a native speaker.
"""

from __future__ import annotations

from logbook.languages.es.plainer import COUNT
from logbook.languages.plainer import Plainer

_ITS = r"(?:el|al|del|un|otro|este|ese|mi|nuestro|su|tu|ningun|cualquier|mismo)"
_SHOWN = r"(?:suscri\w+|bienvenid\w+|gracias por \w+|visit\w+|siguenos|sigueme|video\w*|comparte|compartan|apoy\w+|dale like|like)"
_AIRED = r"(?:radio|tele|televisor|television|teve|partido|juego|noticias?|novela|noticiero|pasaban|pasando|frecuencia|walkie|youtube|programa|estacion)"

SPANISH_NOT_OF_THE_WORK = (
    Plainer((" canal", "canal "), rf"\b{_SHOWN}\b[^.!?]{{0,40}}? (?P<x>{_ITS} canal)\b", (("x", "el programa"),)),
    Plainer((" canal", "canal "), rf"(?P<x>\b(?:{_ITS} )?canal) (?:(?:numero )?{COUNT} )?(?:de |del |en |por )(?:(?:la|el|las|mi|los) )?(?:{_AIRED}|deportes|peliculas|musica|videos)\b", (("x", "el programa"),)),
    Plainer((" canal",), rf"\b(?:en|por|al|del) (?P<x>(?:el )?canal)(?= (?:numero )?{COUNT}\b(?! (?:pulgadas|por)\b))", (("x", "programa"),), beside=("radio", "tele", "partido", "juego", "noticia", "novela", "frecuencia", "pasaban", "pasando", "pasate", "pasense", "walkie", "program", "estacion", "dijeron", "cambi")),
    Plainer((" canal",), rf"\b{_AIRED}\b[^.;!?]{{0,30}}? (?P<x>(?:{_ITS} )?canal(?: {COUNT})?)(?= *(?:$|[,;.!?]| que | y | pero | de | dijer| dec| estab))", (("x", "el programa"),)),
    Plainer((" canal", " canales"), r"(?P<x>\b(?:el|al|del|un|los|las|la) canal(?:es)?)(?= (?:de (?:la )?(?:lluvia|riego|desague|agua|agua de lluvia)|del? (?:el |la )?(?:techo|azotea|rio|calle|banqueta|patio))\b)", (("x", "la zanja"),)),
)
